-- Words to rows. Every one answers the row or refuses in words with what is expected.
create function guard.party(p_name text) returns bigint
language plpgsql stable security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_id bigint;
begin
  select party_id into v_id from party where name = btrim(p_name);
  if v_id is null then
    raise exception using errcode = 'HK020', message = format('no mill, supplier or customer is called "%s"', p_name),
      hint = 'the owner adds it to the shop first';
  end if;
  return v_id;
end $$;

create function guard.owner_party(p_name text) returns bigint
language sql stable
return case when coalesce(btrim(p_name), '') in ('', 'ours') then 0 else guard.party(p_name) end;

-- A grade by its designation or by its standard's number; nothing is guessed.
create function guard.grade(p_name text) returns bigint
language plpgsql stable security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_id bigint;
begin
  select grade_id into v_id from grade where designation = btrim(p_name) or number = btrim(p_name);
  if v_id is null then
    raise exception using errcode = 'HK021', message = format('grade "%s" is not in the book', p_name),
      hint = 'use a designation or number of the grade list; the owner adds new ones';
  end if;
  return v_id;
end $$;

create function guard.place(p_name text) returns bigint
language plpgsql stable as $$
declare
  v_id bigint;
begin
  select place_id into v_id from place where name = btrim(p_name);
  if v_id is null then
    raise exception using errcode = 'HK022', message = format('no place is called "%s"', p_name),
      hint = '`heatkeep shop places` lists them; the owner adds one with `heatkeep shop set`';
  end if;
  return v_id;
end $$;

create function guard.saw(p_name text) returns bigint
language plpgsql stable as $$
declare
  v_id bigint;
begin
  select saw_id into v_id from saw where name = btrim(p_name);
  if v_id is null then
    raise exception using errcode = 'HK023', message = format('no saw is called "%s"', p_name),
      hint = '`heatkeep saw list` names them';
  end if;
  return v_id;
end $$;

-- A tag as it is kept, however it was typed.
create function guard.tag_form(p_tag text) returns text
language sql immutable
return upper(regexp_replace(p_tag, '[\s\-]', '', 'g'));

-- The piece with this tag.
create function guard.piece_of(p_tag text) returns book.piece
language plpgsql stable as $$
declare
  p piece;
  v_tag text := guard.tag_form(p_tag);
begin
  if coalesce(v_tag, '') = '' then
    raise exception using errcode = 'HK024', message = 'no tag is named', hint = 'scan it, or type it from the label';
  end if;
  select * into p from piece where tag = v_tag;
  if p.piece_id is null then
    raise exception using errcode = 'HK024', message = format('no piece has the tag "%s"', p_tag),
      hint = case when guard.tag_check(left(v_tag, -1)) = right(v_tag, 1) then 'the tag is well formed: was it given out by another book?'
             else 'the check character is wrong: read the tag again' end;
  end if;
  return p;
end $$;

-- The same, locked for the deed with its lot and its plan; p_family: with all that comes from it, the lots alone.
create function guard.piece_for_deed(p_tag text, p_family boolean default false) returns book.piece
language plpgsql volatile as $$
declare
  p piece := guard.piece_of(p_tag);
begin
  if p_family then
    perform guard.lock_family(p.piece_id);
    select * into p from piece where piece_id = p.piece_id;
    return p;
  end if;
  return guard.lock_piece(p);
end $$;

-- Nominal area in square micrometres, half up (geometry; hexagon across flats: sqrt(3)/2 s^2; angle EN 10056-1, r1 root, r2
-- toe; box EN 10210-2 and 10219-2, r1 outer, r2 inner; channel and beam: tabulated grams a metre over 7850 kg/m3).
create function guard.section_area_um2(p_shape book.shape, p_dim1 bigint, p_dim2 bigint, p_thickness bigint, p_r1 bigint, p_r2 bigint,
    p_g_per_m bigint) returns bigint
language sql immutable
return round(case p_shape
  when 'round' then 3.14159265358979323846264338327950288 * p_dim1::numeric * p_dim1 * 0.25
  when 'square' then p_dim1::numeric * p_dim1
  when 'hex' then 0.86602540378443864676372317075293618 * p_dim1::numeric * p_dim1
  when 'flat' then p_dim1::numeric * p_dim2
  when 'tube' then 3.14159265358979323846264338327950288 * p_thickness::numeric * (p_dim1 - p_thickness)
  when 'angle' then p_thickness::numeric * (p_dim1 + p_dim2 - p_thickness)
    + 0.21460183660255169038433915418012428 * (p_r1::numeric * p_r1 - 2 * p_r2::numeric * p_r2)
  when 'box' then 2 * p_thickness::numeric * (p_dim1 + p_dim2 - 2 * p_thickness)
    - 0.85840734641020676153735661672049711 * (p_r1::numeric * p_r1 - p_r2::numeric * p_r2)
  else p_g_per_m::numeric * 1000000000000000 / 7850
  end * 0.000001);  -- products of numerics are exact; the one quotient never ends in a half

-- The section of {"shape", "dim1_nm", "dim2_nm", "thickness_nm", "r1_nm"?, "r2_nm"?, "name"?, "g_per_m"?, "label"}; made where
-- it is new.
create function guard.section(p jsonb) returns bigint
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v section;
  v_id bigint;
begin
  v.shape := (p ->> 'shape')::shape;
  v.dim1_nm := (p ->> 'dim1_nm')::bigint;
  v.dim2_nm := coalesce((p ->> 'dim2_nm')::bigint, 0);
  v.thickness_nm := coalesce((p ->> 'thickness_nm')::bigint, 0);
  v.r1_nm := (p ->> 'r1_nm')::bigint;
  v.r2_nm := (p ->> 'r2_nm')::bigint;
  v.name := p ->> 'name';
  v.g_per_m := (p ->> 'g_per_m')::bigint;
  for i in 1..2 loop
    select section_id into v_id from section
      where (shape, dim1_nm, dim2_nm, thickness_nm) = (v.shape, v.dim1_nm, v.dim2_nm, v.thickness_nm)
        and (r1_nm, r2_nm, name, g_per_m) is not distinct from (v.r1_nm, v.r2_nm, v.name, v.g_per_m);
    exit when v_id is not null;
    insert into section (shape, dim1_nm, dim2_nm, thickness_nm, r1_nm, r2_nm, name, g_per_m, label, area_um2)
      values (v.shape, v.dim1_nm, v.dim2_nm, v.thickness_nm, v.r1_nm, v.r2_nm, v.name, v.g_per_m, p ->> 'label',
        guard.section_area_um2(v.shape, v.dim1_nm, v.dim2_nm, v.thickness_nm, v.r1_nm, v.r2_nm, v.g_per_m))
      on conflict on constraint section_key do nothing returning section_id into v_id;
    exit when v_id is not null;
  end loop;
  if v_id is null then
    raise exception using errcode = 'HK026', message = format('%s is in the book with another mass a metre than %s g', p ->> 'label', v.g_per_m),
      hint = 'the program and the book have different tables of sections: use the same version';
  end if;
  return v_id;
end $$;

-- Mass in grams of a length of a lot's bar: area x density x length, half up; 7850 kg/m3 where the grade is unknown.
create function guard.mass_g(p_length_nm bigint, p_area_um2 bigint, p_density_kg_m3 integer) returns bigint
language sql immutable
return round(p_length_nm::numeric * p_area_um2 * coalesce(p_density_kg_m3, 7850) * 0.000000000000000001);

-- Of a length of this lot's bar.
create function guard.lot_mass_g(p_lot bigint, p_length_nm bigint) returns bigint
language plpgsql stable as $$
begin
  return (select guard.mass_g(p_length_nm, x.area_um2, g.density_kg_m3) from lot join section x using (section_id) left join grade g using (grade_id) where lot_id = p_lot);
end $$;

create function guard.setting(p_name text, p_default text) returns text
language plpgsql stable as $$
begin
  return coalesce((select value from book.setting where name = p_name and valid_from <= now()
  order by valid_from desc limit 1), p_default);
end $$;

-- The most particular keep rule in force: grade and section, then either, then the shop's; else 300 mm.
create function guard.keep_nm(p_grade bigint, p_section bigint) returns bigint
language plpgsql stable security definer set search_path = book, pg_catalog, pg_temp as $$
begin
  return coalesce((select keep_nm from book.keep_rule
  where (grade_id is null or grade_id = p_grade) and (section_id is null or section_id = p_section) and valid_from <= now()
  order by (grade_id is not null)::int + (section_id is not null)::int desc, grade_id nulls last, valid_from desc limit 1),
  300000000);
end $$;

-- Hundredths a tonne of a lot's metal today, as new or as scrap; null where no price is set.
create function guard.price_now(p_grade bigint, p_section bigint, p_scrap boolean) returns bigint
language sql stable security definer set search_path = book, pg_catalog, pg_temp
return (select case when p_scrap then scrap_cents_per_tonne else cents_per_tonne end from book.price where grade_id = p_grade
  and (section_id is null or section_id = p_section) and valid_from <= now() order by section_id is null, valid_from desc limit 1);

-- What is so today for all metal of a grade and section there is: asked once for each of them, however many pieces a list has.
create view guard.group_now as
  select l.grade_id, l.section_id, guard.keep_nm(l.grade_id, l.section_id) as keep_nm, guard.price_now(l.grade_id, l.section_id, false) as cents_per_tonne,
      guard.price_now(l.grade_id, l.section_id, true) as scrap_cents_per_tonne, (select n.mm2_per_min from book.cutting_rate n where n.family = g.family and n.saw_id is null
        and n.valid_from <= now() order by n.valid_from desc limit 1) as mm2_per_min
    from (select distinct grade_id, section_id from book.lot where grade_id is not null) l join book.grade g using (grade_id) offset 0;
