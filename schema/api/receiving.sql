-- Receiving: what was counted, measured and read; never what the slip says. And the opening balance.

-- The lot of mill + heat + section + condition; made where it is new. A heat is kept exactly as read.
create function guard.lot(p_mill text, p_heat text, p_read_from book.read_from, p_grade text, p_section jsonb,
                          p_condition text, p_papers_state book.papers_state) returns bigint
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_mill bigint := case when coalesce(btrim(p_mill), '') <> '' then guard.party(p_mill) end;
  v_grade bigint := case when coalesce(btrim(p_grade), '') <> '' then guard.grade(p_grade) end;
  v_section bigint := guard.section(p_section);
  v_condition text := coalesce(btrim(p_condition), '');
  v_lot lot;
begin
  if coalesce(btrim(p_heat), '') = '' or p_read_from = 'none' then
    insert into lot (mill_id, heat, section_id, grade_id, condition, identity, papers_state)
      values (v_mill, null, v_section, v_grade, v_condition, (case when v_grade is null then 'unknown' else 'grade only' end)::identity, 'none')
      returning * into v_lot;
    return v_lot.lot_id;
  end if;
  if v_mill is null then
    raise exception using errcode = 'HK026', message = format('heat %s has no mill: two mills can use the same number', p_heat);
  end if;
  select * into v_lot from lot where mill_id = v_mill and heat = p_heat and section_id = v_section and condition = v_condition for update;
  if v_lot.lot_id is not null and v_lot.grade_id <> v_grade then
    raise exception using errcode = 'HK026', message = format('heat %s of %s is %s in the book, not %s', p_heat, p_mill,
      (select designation from grade where grade_id = v_lot.grade_id), p_grade), hint = 'quarantine it and ask quality';
  end if;
  if v_lot.lot_id is null then
    insert into lot (mill_id, heat, section_id, grade_id, condition, identity, papers_state)
      values (v_mill, p_heat, v_section, v_grade, v_condition, 'heat', p_papers_state)
      on conflict on constraint lot_key do nothing returning * into v_lot;
    if v_lot.lot_id is null then  -- another clerk booked it just now
      return guard.lot(p_mill, p_heat, p_read_from, p_grade, p_section, p_condition, p_papers_state);
    end if;
  end if;
  insert into heat_reading (lot_id, read_as, read_from, read_by) values (v_lot.lot_id, p_heat, p_read_from, session_user);
  return v_lot.lot_id;
end $$;

-- Heats of other lots that look alike when folded; words or null. Only to warn.
create function guard.look_alikes(p_lot bigint) returns text
language sql stable security definer set search_path = book, pg_catalog, pg_temp
return (select 'looks like heat ' || string_agg(distinct o.heat, ', ') from book.lot l
  join book.lot o on o.heat_folded = l.heat_folded and o.heat <> l.heat where l.lot_id = p_lot);

-- One line: {"line","mill","heat","read_from","grade","section":{},"condition","length_nm","count","slip_count"?,
-- "weighed_g"?,"place","papers_state","cents_per_tonne"?,"owner"?,"ends","mark","doubt_nm","kind"?,"old_tag"?}
create function guard.receive_line(p_receipt bigint, p_line jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_kind piece_kind := coalesce(p_line ->> 'kind', 'bar');
  v_count integer := (p_line ->> 'count')::integer;
  v_length bigint := (p_line ->> 'length_nm')::bigint;
  v_lot bigint;
  v_line bigint;
  v_place bigint := guard.place(coalesce(nullif(p_line ->> 'place', ''), 'GATE'));
  v_site bigint;
  v_theory bigint;
  v_weighed bigint := (p_line ->> 'weighed_g')::bigint;
  v_mismatch text[] := '{}';
  v_stop text;
  v_tag text;
  v_id bigint;
  v_tags text[] := '{}';
begin
  v_lot := guard.lot(p_line ->> 'mill', p_line ->> 'heat', (p_line ->> 'read_from')::read_from, p_line ->> 'grade',
    p_line -> 'section', p_line ->> 'condition', coalesce(p_line ->> 'papers_state', 'awaited')::papers_state);
  select guard.mass_g(v_length * v_count, s.area_um2, g.density_kg_m3) into v_theory
    from lot join section s using (section_id) left join grade g using (grade_id) where lot_id = v_lot;
  if (p_line ->> 'slip_count')::integer <> v_count then
    v_mismatch := v_mismatch || format('counted %s, the slip says %s', v_count, p_line ->> 'slip_count');
  end if;
  if abs(v_weighed - v_theory) * 100 > v_theory * guard.setting('mass_mismatch_percent', '3')::numeric then
    v_stop := format('weighed %s kg, theory says %s kg', round(v_weighed / 1000.0, 1), round(v_theory / 1000.0, 1));
    v_mismatch := v_mismatch || v_stop;
  end if;
  if p_line ->> 'read_from' = 'slip' then
    v_stop := 'the heat was read from the slip, not from the metal';
    v_mismatch := v_mismatch || v_stop;
  elsif v_kind = 'bar' and (select identity from lot where lot_id = v_lot) <> 'heat' then
    v_stop := 'its heat could not be read';
    v_mismatch := v_mismatch || v_stop;
  end if;
  v_mismatch := v_mismatch || guard.look_alikes(v_lot);
  insert into receipt_line (receipt_id, line, lot_id, counted, slip_count, length_nm, theoretical_mass_g, weighed_mass_g, cents_per_tonne, mismatch)
    values (p_receipt, p_line ->> 'line', v_lot, v_count, (p_line ->> 'slip_count')::integer, v_length, v_theory, v_weighed,
            (p_line ->> 'cents_per_tonne')::bigint, nullif(array_to_string(v_mismatch, '; '), ''))
    returning receipt_line_id into v_line;
  select site_id into v_site from place where place_id = v_place;
  for i in 1 .. v_count loop
    v_tag := guard.new_tag(v_site);
    v_id := nextval(pg_get_serial_sequence('book.piece', 'piece_id'));
    insert into piece (piece_id, tag, old_tag, kind, lot_id, owner_id, path, receipt_line_id, made_length_nm, length_nm, doubt_nm,
        ends, mark_end, place_id, state, quarantine, cents_per_tonne)
      overriding system value
      values (v_id, v_tag, nullif(p_line ->> 'old_tag', ''), v_kind, v_lot, guard.owner_party(p_line ->> 'owner'), array[v_id], v_line,
        v_length, v_length, coalesce((p_line ->> 'doubt_nm')::bigint, 0), (p_line ->> 'ends')::smallint,
        coalesce(nullif(p_line ->> 'mark', ''), 'unknown')::mark_end, v_place, 'on rack', v_stop, (p_line ->> 'cents_per_tonne')::bigint);
    v_tags := v_tags || v_tag;
  end loop;
  return jsonb_build_object('line', p_line ->> 'line', 'count', v_count, 'theoretical_g', v_theory, 'tags', v_tags,
    'mismatch', nullif(array_to_string(v_mismatch, '; '), ''), 'quarantined', v_stop);
end $$;

-- {"note","supplier","purchase_order"?,"received_at"?,"lines":[...]}: a delivery note, counted and read. The answer
-- names the tags given, the theoretical mass and, in words, what does not agree; what does not fit is quarantined.
create function api.receive_delivery(p_request uuid, p jsonb, p_device text default null) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('receive_delivery', p_request, p, (p ->> 'received_at')::timestamptz, p_device);
  v_supplier bigint;
  v_receipt bigint;
  v_lines jsonb;
begin
  if v_again is not null then return v_again; end if;
  v_supplier := guard.party(p ->> 'supplier');
  if exists (select from receipt where supplier_id = v_supplier and note = p ->> 'note') then
    raise exception using errcode = 'HK041', message = format('delivery note %s of %s was received before, with other lines',
      p ->> 'note', p ->> 'supplier'), hint = 'look at the receipt; a second lorry has its own note';
  end if;
  insert into receipt (kind, supplier_id, note, purchase_order, received_at, received_by)
    values ('delivery', v_supplier, p ->> 'note', p ->> 'purchase_order', coalesce((p ->> 'received_at')::timestamptz, now()), session_user)
    returning receipt_id into v_receipt;
  select jsonb_agg(guard.receive_line(v_receipt, n)) into v_lines from jsonb_array_elements(p -> 'lines') n;
  return guard.end_deed(jsonb_build_object('receipt_id', v_receipt, 'note', p ->> 'note', 'lines', v_lines));
end $$;

-- {"name","lines":[...]}: the opening balance, with the shop's earlier marks in old_tag.
create function api.open_balance(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('open_balance', p_request, p);
  v_receipt bigint;
  v_lines jsonb;
  v_twice text;
begin
  if v_again is not null then return v_again; end if;
  select string_agg(old_tag, ', ') into v_twice from piece
    where old_tag in (select n ->> 'old_tag' from jsonb_array_elements(p -> 'lines') n where n ->> 'old_tag' <> '');
  if v_twice is not null then
    raise exception using errcode = 'HK041', message = format('already in the book: %s', v_twice);
  end if;
  insert into receipt (kind, supplier_id, note, received_at, received_by)
    values ('opening', null, p ->> 'name', now(), session_user) returning receipt_id into v_receipt;
  select jsonb_agg(guard.receive_line(v_receipt, n)) into v_lines from jsonb_array_elements(p -> 'lines') n;
  return guard.end_deed(jsonb_build_object('receipt_id', v_receipt, 'name', p ->> 'name', 'lines', v_lines));
end $$;

-- One line a receipt line: for the receiving station and the claim.
create view api.receipts as
  select r.kind::text, r.note, s.name as supplier, r.purchase_order, r.received_at, r.received_by, l.line, m.name as mill, t.heat,
      g.designation as grade, x.label as section, t.condition, l.counted, l.slip_count, l.length_nm, l.theoretical_mass_g,
      l.weighed_mass_g, l.mismatch
    from book.receipt r left join book.party s on s.party_id = r.supplier_id join book.receipt_line l using (receipt_id)
    join book.lot t using (lot_id) left join book.party m on m.party_id = t.mill_id left join book.grade g using (grade_id)
    join book.section x using (section_id);
