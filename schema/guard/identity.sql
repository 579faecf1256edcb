-- What no statement may do, whoever runs it: change whose or which metal a piece is, bring metal back without a
-- word, promise or pull what is held, overload a place.

-- Whether the strokes that a deed books tell all that is changed of the piece they come off: its length, which the metal balance holds to them. Then it
-- is not told again: the row keeps its version and has no happening of its own. guard.note('shortened') is the piece, named by the deed where strokes are
-- all that it takes off.
create function guard.told_by_strokes(p_was book.piece, p book.piece) returns boolean
language plpgsql stable as $$
begin
  if guard.note('shortened')::bigint is distinct from p.piece_id or guard.note('deed') is null then
    return false;
  end if;
  p.length_nm := p_was.length_nm;
  return p *= p_was;
end $$;

create function guard.identity_stays() returns trigger
language plpgsql as $$
begin
  if (new.lot_id, new.owner_id) is distinct from (old.lot_id, old.owner_id)
     and coalesce(guard.note('deed'), '') not in ('correct_receipt', 'buy_over', 'reestablish_identity') then
    raise exception using errcode = 'HK031', constraint = 'identity_stays',
      message = format('%s: lot and owner of metal are not edited', tg_table_name),
      hint = 'a wrong receipt is put right by correct_receipt, with the reason';
  end if;
  if tg_table_name = 'piece' then
    if (new.parent_id, new.path, new.tag, new.from_cut_id, new.before_id, new.before_path)
         is distinct from (old.parent_id, old.path, old.tag, old.from_cut_id, old.before_id, old.before_path)
       or new.made_length_nm < old.made_length_nm
       or new.made_length_nm > old.made_length_nm and not coalesce(guard.note('deed') = 'not_cut' or guard.note('deed') = 'correct_receipt' and guard.as_received(old), false) then
      raise exception using errcode = 'HK031', constraint = 'identity_stays',
        message = format('%s: where a piece came from, its tag and how long it was made are not edited', old.tag);
    end if;
    if old.length_nm = 0 and new.length_nm > 0 and (guard.note('reason') is null or coalesce(guard.note('deed'), '')
         not in ('correct_cut', 'customer_return', 'found_again', 'correct_receipt')) then
      raise exception using errcode = 'HK032', constraint = 'gone_stays_gone',
        message = format('%s is %s: it comes back only by a deed that says why', old.tag, old.state);
    end if;
    if not guard.told_by_strokes(old, new) then
      new.version := old.version + 1;
    end if;
  elsif (new.piece_id, new.cut_id) is distinct from (old.piece_id, old.cut_id) then
    raise exception using errcode = 'HK031', constraint = 'identity_stays',
      message = format('%s: which piece metal came from and in which cut is not edited', tg_table_name);
  end if;
  return new;
end $$;

create trigger identity before update on book.piece for each row execute function guard.identity_stays();
create trigger identity before update on book.cut for each row execute function guard.identity_stays();
create trigger identity before update on book.stroke for each row execute function guard.identity_stays();
create trigger identity before update on book.metal_out for each row execute function guard.identity_stays();

-- The ancestors of a drop are its parent's and its parent: holds and traces follow them.
create function guard.ancestors_are_the_parents() returns trigger
language plpgsql security definer set search_path = book, pg_catalog, pg_temp as $$
begin
  if new.path is distinct from (select path from piece where piece_id = new.parent_id) || new.piece_id then
    raise exception using errcode = 'HK031', constraint = 'identity_stays',
      message = format('%s names other ancestors than its parent', new.tag);
  end if;
  new.before_path := (select before_path from piece where piece_id = new.parent_id);
  return new;
end $$;
create trigger ancestors before insert on book.piece for each row when (new.parent_id is not null)
  execute function guard.ancestors_are_the_parents();

create function guard.a_lot_stays_what_it_is() returns trigger
language plpgsql as $$
begin
  if (new.mill_id, new.heat, new.section_id, new.grade_id, new.condition)
       is distinct from (old.mill_id, old.heat, old.section_id, old.grade_id, old.condition)
     and coalesce(guard.note('deed'), '') <> 'reestablish_identity'
     -- a wrong grade, where the receipt is corrected or all that stood on it was reversed
     and not ((new.mill_id, new.heat, new.section_id, new.condition) is not distinct from (old.mill_id, old.heat, old.section_id, old.condition)
       and (coalesce(guard.note('deed'), '') = 'correct_receipt' or guard.stands_on_grade(old.lot_id) is null)) then
    raise exception using errcode = 'HK031', constraint = 'identity_stays',
      message = 'mill, heat, section, grade and condition of a lot are not edited',
      hint = 'a wrong receipt is put right by correct_receipt, with the reason';
  end if;
  return new;
end $$;
create trigger identity before update on book.lot for each row execute function guard.a_lot_stays_what_it_is();

-- Holds stop promises, pulling and shipping at the row itself.
create function guard.nothing_blocked_is_promised() returns trigger
language plpgsql security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_words text;
begin
  if new.state = 'live' then
    v_words := guard.blocked_words(new.piece_id);
    if v_words is not null then
      raise exception using errcode = 'HK040', constraint = 'nothing_blocked_is_promised',
        message = format('%s cannot be promised: %s', (select tag from piece where piece_id = new.piece_id), v_words);
    end if;
  end if;
  return new;
end $$;
create trigger not_blocked before insert or update on book.promise
  for each row execute function guard.nothing_blocked_is_promised();

create function guard.nothing_blocked_moves_on() returns trigger
language plpgsql security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_words text;
begin
  if new.state is distinct from old.state and new.state in ('at saw', 'shipped') then
    v_words := guard.blocked_words(new.piece_id);
    if v_words is not null then
      raise exception using errcode = 'HK040', constraint = 'nothing_blocked_moves_on',
        message = format('%s cannot go on: %s', new.tag, v_words);
    end if;
  end if;
  return new;
end $$;
create trigger not_blocked before update of state on book.piece
  for each row execute function guard.nothing_blocked_moves_on();

-- Asked once for all that a statement ships.
create function guard.nothing_held_ships() returns trigger
language plpgsql security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_words text := (select words from guard.against_leaving(array(select n.stroke_id from fresh n join was o using (stroke_id)
    where n.shipment_line_id is not null and o.shipment_line_id is null)) limit 1);
begin
  if v_words is not null then
    raise exception using errcode = 'HK040', constraint = 'nothing_held_ships', message = 'not shipped: ' || v_words;
  end if;
  return null;
end $$;
create trigger not_blocked after update on book.stroke referencing new table as fresh old table as was for each statement execute function guard.nothing_held_ships();

-- Metal that is cut while it is held or quarantined is recorded all the same, flagged, and raises a conflict: one a cut. A deed that has asked already, with the piece
-- locked, notes that it is free.
create function guard.facts_are_recorded() returns trigger
language plpgsql security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_words text;
  s record;
begin
  if not exists (select from fresh where piece_id is distinct from guard.note('free')::bigint) then
    return null;
  end if;
  for s in select distinct on (cut_id, piece_id) cut_id, piece_id, class, length_nm from fresh order by cut_id, piece_id, stroke_id loop
    v_words := coalesce(guard.hold_words(s.piece_id), guard.quarantine_words(s.piece_id));
    continue when v_words is null;
    if not exists (select from stroke where cut_id = s.cut_id and held and guard.return_of(stroke_id) is null) then
      perform guard.raise_conflict('cut while held', s.piece_id, format('%s was cut (%s, %s mm, and what followed) while %s',
        (select tag from piece where piece_id = s.piece_id), s.class, trim_scale(s.length_nm / 1e6::numeric), v_words));
    end if;
    update stroke set held = true where stroke_id in (select stroke_id from fresh where cut_id = s.cut_id and piece_id = s.piece_id);
  end loop;
  return null;
end $$;
create trigger facts after insert on book.stroke referencing new table as fresh for each statement execute function guard.facts_are_recorded();

create function guard.at_another_site(p_place bigint, p_other bigint) returns boolean
language plpgsql stable as $$
begin
  return (select a.site_id <> b.site_id from place a, place b where a.place_id = p_place and b.place_id = p_other);
end $$;

-- Within its length and load, and at the site where the piece is. What is cut at a saw of another site is a fact: that is not refused here.
create function guard.place_can_take_it() returns trigger
language plpgsql security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v place;
  v_mass bigint;
begin
  -- what was taken out of a place that is counted is counted there no more
  if tg_op = 'UPDATE' and new.frozen and new.place_id is distinct from old.place_id then
    new.frozen := exists (select from stock_count where place_id = new.place_id and state in ('open', 'counted'));
  end if;
  if new.place_id is null or new.length_nm = 0
     or (tg_op = 'UPDATE' and new.place_id is not distinct from old.place_id) then
    return new;
  end if;
  select * into v from place where place_id = new.place_id;
  if tg_op = 'UPDATE' and new.state <> 'at saw' and guard.at_another_site(old.place_id, new.place_id) then
    raise exception using errcode = 'HK043', constraint = 'place_limits', message = format('%s is at another site than %s', new.tag, v.name),
      hint = 'it is sent there and received here (heatkeep transfer): metal is never in two places';
  end if;
  if new.length_nm > v.max_length_nm then
    raise exception using errcode = 'HK033', constraint = 'place_limits',
      message = format('%s takes lengths up to %s mm; this piece is %s mm', v.name, trim_scale(v.max_length_nm / 1e6::numeric), trim_scale(new.length_nm / 1e6::numeric)),
      hint = 'choose a longer place';
  end if;
  if v.max_mass_g is not null then
    perform guard.lock_places(array[v.place_id]);
    select sum(guard.mass_g(l.length_nm, s.area_um2, g.density_kg_m3)) into v_mass
      from (select piece_id, lot_id, length_nm from piece where place_id = new.place_id and length_nm > 0 and piece_id <> new.piece_id
            union all select new.piece_id, new.lot_id, new.length_nm) l
      join lot using (lot_id) join section s using (section_id) left join grade g using (grade_id);
    if v_mass > v.max_mass_g then
      raise exception using errcode = 'HK033', constraint = 'place_limits',
        message = format('%s carries up to %s kg; with this piece it would be %s kg', v.name, v.max_mass_g / 1000, v_mass / 1000),
        hint = 'choose another place';
    end if;
  end if;
  return new;
end $$;
create trigger place before insert or update of place_id on book.piece for each row execute function guard.place_can_take_it();
