-- What every deed at the saw leans on: a piece of its own out of another, what the bins take, and what is left.

-- The place of what was cut from p_tag at a saw of this site. One that is being counted, or is at another site, takes nothing: refused with the place
-- beside; what was put there off the network (p_done) is booked beside it, and a person is told.
create function guard.place_for_child(p_tag text, p_site bigint, p_place text, p_length bigint, p_done boolean, p_child bigint) returns bigint
language plpgsql volatile as $$
declare
  v_place place;
  v_beside place;
begin
  select * into v_place from place where place_id = guard.place(p_place);
  if v_place.site_id = p_site and not exists (select from stock_count where place_id = v_place.place_id and state in ('open', 'counted')) then
    return v_place.place_id;
  end if;
  select * into v_beside from place w where w.site_id = p_site and w.kind in ('rack', 'yard', 'gate') and w.place_id <> v_place.place_id
    and (w.max_length_nm is null or w.max_length_nm >= p_length) and w.max_mass_g is null
    and not exists (select from stock_count where place_id = w.place_id and state in ('open', 'counted'))
    order by w.kind = 'gate', abs(w.walk - v_place.walk) nulls last, w.name limit 1;
  if v_place.site_id <> p_site and (not p_done or v_beside.place_id is null) then
    raise exception using errcode = 'HK043', message = format('%s is at another site than %s', p_tag, v_place.name),
      hint = 'it is sent there and received here (heatkeep transfer): metal is never in two places';
  elsif not p_done or v_beside.place_id is null then
    raise exception using errcode = 'HK040', message = format('nothing cut from %s is put in %s: it is being counted', p_tag, v_place.name),
      hint = coalesce('put it in ' || v_beside.name || ' beside it', 'put it where nothing is counted') || ', or wait until the count is approved';
  elsif v_place.site_id <> p_site then
    perform guard.raise_conflict('put at another site', p_child, format('a rest of %s was put in %s, at another site: it is booked in %s', p_tag, v_place.name, v_beside.name));
  else
    perform guard.raise_conflict('put where it was counted', p_child, format('a rest of %s was put in %s while that was counted: it is booked in %s', p_tag, v_place.name, v_beside.name));
  end if;
  return v_beside.place_id;
end $$;

-- The site where a cut was made: that of its saw.
create function guard.site_of_cut(p_cut bigint) returns bigint
language plpgsql stable as $$
begin
  return (select w.site_id from cut c join saw s using (saw_id) join place w on w.place_id = s.place_id where c.cut_id = p_cut);
end $$;

-- What is marked between two places of a piece (as zones count) is marked on the piece that this metal is from now on. Where that one measures
-- otherwise nobody knows which end differs: the zone grows by the difference. p_from null: from where it is was not kept, and all of it is suspect (greatest and least pass a null over).
create function guard.hand_on_zones(p_piece bigint, p_to_piece bigint, p_from bigint, p_to bigint) returns void
language plpgsql volatile as $$
begin
  if not exists (select from defect_zone where piece_id = p_piece) then
    return;
  end if;
  insert into defect_zone (piece_id, from_nm, to_nm, kind)
    select e.piece_id, e.made_length_nm - e.length_nm + greatest(0, z.from_nm - p_from - greatest(0, p_to - p_from - e.length_nm)),
        e.made_length_nm - e.length_nm + least(e.length_nm, z.to_nm - p_from + greatest(0, e.length_nm - (p_to - p_from))), z.kind
      from defect_zone z join piece e on e.piece_id = p_to_piece
      where z.piece_id = p_piece and (p_from is null or (z.to_nm > p_from and z.from_nm < p_to)) order by z.from_nm, z.defect_zone_id;
end $$;

-- A child of p, of its lot, owner, receipt and price, out of the stretch from p_from to p_to (as zones count); answers its number. A tag is
-- given where the device gave it out.
create function guard.new_child(p book.piece, p_cut bigint, p_from bigint, p_to bigint, p_length bigint, p_doubt bigint, p_ends integer, p_mark book.mark_end,
                                p_place text, p_tag text, p_device text) returns bigint
language plpgsql volatile as $$
declare
  v_id bigint := nextval('book.piece_piece_id_seq');
  v_place bigint;
begin
  if p_place is null then
    raise exception using errcode = 'HK026', message = format('say where the new piece of %s is put', p.tag);
  end if;
  v_place := guard.place_for_child(p.tag, guard.site_of_cut(p_cut), p_place, p_length, p_tag is not null or guard.told_later(), v_id);
  insert into piece (piece_id, tag, kind, lot_id, owner_id, parent_id, parent_made_length_nm, from_cut_id, path, receipt_line_id,
      made_length_nm, length_nm, doubt_nm, ends, mark_end, place_id, state, cents_per_tonne)
    overriding system value
    values (v_id, case when p_tag is not null then guard.offline_tag(p_tag, p_device)
        else guard.new_tag((select site_id from place where place_id = v_place)) end,
      'drop', p.lot_id, p.owner_id, p.piece_id, p.made_length_nm, p_cut, p.path || v_id, p.receipt_line_id,
      p_length, p_length, coalesce(p_doubt, guard.setting('tape_doubt_nm', '1000000')::bigint), p_ends, p_mark, v_place, 'on rack', p.cents_per_tonne);
  perform guard.hand_on_zones(p.piece_id, v_id, p_from, p_to);
  return v_id;
end $$;

-- The alloy group that scrap of this lot belongs to; what nobody knows goes with nothing else.
create function guard.alloy_group(p_lot bigint) returns text
language sql stable
return (select case when l.grade_id is null then 'unknown' else coalesce(a.alloy_group, g.family) end
  from book.lot l left join book.grade g using (grade_id) left join book.alloy_group a on a.family = g.family where l.lot_id = p_lot);

-- The bin of that name that may take the lot. A rest that was cut off in a shop without bins has none (null): what was said of it is
-- written down. A whole piece (p_whole) goes to no bin that nobody defined.
create function guard.bin_for(p_name text, p_lot bigint, p_whole boolean default false) returns bigint
language plpgsql stable as $$
declare
  b scrap_bin;
  v_group text := guard.alloy_group(p_lot);
  v_right text := (select string_agg(name, ' or ' order by name) from scrap_bin where alloy_group = v_group);
  v_all text := (select string_agg(words, '; ' order by words) from (select alloy_group || ': ' || string_agg(name, ', ' order by name) as words from scrap_bin group by alloy_group) x);
begin
  if v_all is null and (coalesce(btrim(p_name), '') = '' or not p_whole) then
    return null;
  end if;
  select * into b from scrap_bin where name = btrim(p_name);
  if b.scrap_bin_id is null then
    raise exception using errcode = 'HK026', message = format('no scrap bin is called "%s"', coalesce(p_name, '')),
      hint = format('%s; %s', coalesce('the bins are ' || v_all, 'no bin is defined'),
        coalesce('this metal goes to ' || v_right, format('the owner defines one for %s: heatkeep saw bins --bin "NAME=%s"', v_group, v_group)));
  elsif b.alloy_group <> v_group then
    raise exception using errcode = 'HK042', message = format('bin %s is for %s; this is %s', b.name, b.alloy_group, v_group),
      hint = coalesce('it goes to ' || v_right, 'the owner sets up a bin for ' || v_group) || '; scrap is bought by its chemistry';
  end if;
  return b.scrap_bin_id;
end $$;

-- What the label and the mark on the metal say. There is none without a heat, or the words NO HEAT.
create function guard.heat_word(p_lot bigint) returns text
language plpgsql stable security definer set search_path = book, pg_catalog, pg_temp as $$
begin
  return (select coalesce(heat, 'NO HEAT') from book.lot where lot_id = p_lot);
end $$;

create function guard.check_heat_on_label(p book.piece, p_heat text) returns void
language plpgsql stable as $$
begin
  if coalesce(btrim(p_heat), '') = '' then
    raise exception using errcode = 'HK044', message = format('no label or mark without the heat: %s is of heat %s', p.tag, guard.heat_word(p.lot_id)),
      hint = 'write the heat on label and metal, or NO HEAT where the book knows none';
  elsif btrim(p_heat) <> guard.heat_word(p.lot_id) then
    raise exception using errcode = 'HK044', message = format('%s is of heat %s; the label says %s', p.tag, guard.heat_word(p.lot_id), p_heat),
      hint = 'destroy that label; where the metal says so too, quarantine the piece';
  end if;
end $$;

-- Whether a zone of a defect, or of a half cut, is still ahead of the blade. Zones count from the end that is cut
-- first of the piece as it was made; with two lengths: whether one lies in what they enclose of the piece as it is now.
create function guard.zone_ahead(p book.piece, p_from bigint default 0, p_to bigint default null) returns text
language plpgsql stable security definer set search_path = book, pg_catalog, pg_temp as $$
begin
  if not exists (select from book.defect_zone where piece_id = p.piece_id) then
    return null;
  end if;
  return (select format('%s at %s mm', kind, trim_scale((from_nm - (p.made_length_nm - p.length_nm)) / 1e6::numeric)) from book.defect_zone
  where piece_id = p.piece_id and to_nm > p.made_length_nm - p.length_nm + p_from
    and from_nm < p.made_length_nm - p.length_nm + coalesce(p_to, p.length_nm) order by from_nm limit 1);
end $$;

-- Metal a line has: what was cut for it, and what a live promise means to cut, by a plan's layout or without one. A promise whose time is
-- over counts no more unless its metal is at the saw; nor does a recut that the customer agreed to, whose heat is another by agreement. To be asked
-- line by line (lateral): joined, all strokes would be read.
create view guard.line_metal as
  select u.* from (
    select s.cut_line_id, s.lot_id, s.piece_id, true as cut, null::bigint as plan_id, null::integer as layout_no from book.stroke s where s.class = 'good'
    union all
    select k.cut_line_id, e.lot_id, e.piece_id, false, f.plan_id, f.layout_no from book.layout_cut k join book.layout f using (layout_id)
      join book.promise r using (layout_id) join book.piece e on e.piece_id = r.piece_id where r.state = 'live' and (r.expires_at > now() or e.state = 'at saw')
    union all
    select r.cut_line_id, e.lot_id, e.piece_id, false, null, null from book.promise r join book.piece e using (piece_id)
      where r.cut_line_id is not null and r.state = 'live' and (r.expires_at > now() or e.state = 'at saw')) u
  where not exists (select from book.recut n where n.piece_id = u.piece_id and n.cut_line_id = u.cut_line_id and n.agreed_by is not null);

-- Other heats that the line, or its one-heat group, has metal of already, cut or (p_planned) promised; null where the lot fits.
create function guard.heat_rule_words(line book.cut_line, p_lot bigint, p_planned boolean default true) returns text
language plpgsql stable as $$
begin
  if coalesce(line.one_heat, line.max_heats::text) is null then
    return null;
  end if;
  return (with heat as (select coalesce(mill_id || ' ' || heat, 'lot ' || lot_id) as h from book.lot where lot_id = p_lot),
    used as (select distinct coalesce(l.mill_id || ' ' || l.heat, 'lot ' || l.lot_id) as h, coalesce(l.heat, 'no heat') as word, c.cut_line_id, s.cut
      from book.cut_line c
      join lateral (select * from guard.line_metal n where n.cut_line_id = c.cut_line_id offset 0) s on s.cut or p_planned join book.lot l on l.lot_id = s.lot_id
      where c.cut_line_id = line.cut_line_id or (line.one_heat is not null and c.cut_list_id = line.cut_list_id and c.one_heat = line.one_heat)),
    other as (select * from used where h <> (select h from heat)),
    own as (select * from used where cut_line_id = line.cut_line_id)
  select case
    when line.one_heat is not null and exists (select from other where cut) then format('one heat is asked for order %s line %s, and it was cut from %s',
      line.order_no, line.line_no, (select string_agg(distinct word, ', ') from other where cut))
    when line.one_heat is not null and exists (select from other) then format('one heat is asked for order %s line %s, and it is planned from %s',
      line.order_no, line.line_no, (select string_agg(distinct word, ', ') from other))
    when line.max_heats is not null and (select count(distinct h) from other where cut_line_id = line.cut_line_id) >= line.max_heats
      then case when (select bool_and(cut) from own) then format('order %s line %s may come from %s heats, and was cut from %s', line.order_no, line.line_no, line.max_heats,
        (select string_agg(distinct word, ', ') from own))
        else format('order %s line %s may come from %s heats, and is cut or planned from %s', line.order_no, line.line_no, line.max_heats,
        (select string_agg(distinct word, ', ') from own)) end end);
end $$;

-- Whether the customer agreed that a recut of this line comes from this piece though its heat is another.
create function guard.heat_agreed(p_piece bigint, p_line bigint) returns boolean
language plpgsql stable as $$
begin
  return (select exists (select from book.recut where piece_id = p_piece and cut_line_id = p_line and agreed_by is not null));
end $$;

-- Until when a promise holds: the hours the owner has set, else the end of the next shift. Shifts begin at shift_first_hour
-- (6) and every shift_hours (8) from there, on the clock on the wall of the shop: of time_zone, or, where none is set, of who asks.
create function guard.promise_until(p_now timestamptz) returns timestamptz
language sql stable security definer set search_path = book, pg_catalog, pg_temp
return (select case when s.hours is not null then p_now + s.hours::numeric * interval '1 hour'
    else (day + (floor(extract(epoch from wall - day) / 3600 / length) + 2) * length * interval '1 hour') at time zone zone end
  from (select w.*, guard.setting('promise_hours', null) as hours, guard.setting('shift_hours', '8')::numeric as length,
      date_trunc('day', wall) - interval '1 day' + guard.setting('shift_first_hour', '6')::numeric * interval '1 hour' as day
    from (select z.zone, p_now at time zone z.zone as wall from (select guard.setting('time_zone', current_setting('TimeZone')) as zone) z) w) s);

-- Lets go the promises of these pieces whose time is over, but of metal that is at a saw; answers how many.
create function guard.lapse_promises_of(p_pieces bigint[]) returns integer
language plpgsql volatile as $$
declare
  v_layouts bigint[];
begin
  with gone as (update promise r set state = 'lapsed' where piece_id = any (p_pieces) and state = 'live' and expires_at <= now()
    and exists (select from piece e where e.piece_id = r.piece_id and e.state <> 'at saw') returning layout_id)
  select array_agg(layout_id) into v_layouts from gone;
  update layout set state = 'dropped' where layout_id = any (v_layouts) and state = 'promised';
  return coalesce(cardinality(v_layouts), 0);
end $$;

-- The same for every piece.
create function guard.lapse_promises() returns integer
language plpgsql volatile as $$
declare
  v_pieces bigint[] := (select array_agg(piece_id) from promise where state = 'live' and expires_at <= now());
begin
  perform guard.lock_pieces(v_pieces);
  return guard.lapse_promises_of(v_pieces);
end $$;
