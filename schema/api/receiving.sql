-- Receiving: what was counted, measured and read; never what the slip says. And the opening balance.

-- Before lots of these heats are booked to or made.
create function guard.lock_heats(p_heats text[]) returns void
language plpgsql volatile as $$
begin
  perform guard.lock_names();
  perform guard.lock_lots(array(select lot_id from lot where heat = any (p_heats)), true);
end $$;

-- The lot of mill + heat + section + condition; made where it is new. A heat is kept exactly as read. The caller has locked its heat.
-- Of another grade than in the book it is only where nothing stands on that grade. p_piece: the piece whose receipt is corrected.
create function guard.lot(p_mill text, p_heat text, p_read_from book.read_from, p_grade text, p_section jsonb,
                          p_condition text, p_papers_state book.papers_state, p_piece bigint default null) returns bigint
language plpgsql volatile as $$
declare
  v_mill bigint := case when coalesce(btrim(p_mill), '') <> '' then guard.party(p_mill) end;
  v_grade bigint := case when coalesce(btrim(p_grade), '') <> '' then guard.grade(p_grade) end;
  v_section bigint := guard.section(p_section);
  v_condition text := coalesce(btrim(p_condition), '');
  v_words text;
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
  select * into v_lot from lot where mill_id = v_mill and heat = p_heat and section_id = v_section and condition = v_condition;
  if v_lot.lot_id is not null and v_lot.grade_id <> v_grade then
    v_words := guard.stands_on_grade(v_lot.lot_id, p_piece);
    if v_words is not null then
      raise exception using errcode = 'HK026', message = format('heat %s of %s is %s in the book, not %s', p_heat, p_mill,
        (select designation from grade where grade_id = v_lot.grade_id), p_grade),
        hint = format('quarantine it and ask quality; where the book is wrong, quality corrects the receipt of its pieces as long as nothing more stands on that: %s', v_words);
    end if;
    update lot set grade_id = v_grade where lot_id = v_lot.lot_id;
  end if;
  if v_lot.lot_id is null then
    insert into lot (mill_id, heat, section_id, grade_id, condition, identity, papers_state)
      values (v_mill, p_heat, v_section, v_grade, v_condition, 'heat', p_papers_state)
      returning * into v_lot;
  end if;
  insert into heat_reading (lot_id, read_as, read_from, read_by) values (v_lot.lot_id, p_heat, p_read_from, session_user);
  return v_lot.lot_id;
end $$;

-- What stands on the grade that a lot was booked with, in words; null where nothing does. With the piece whose receipt is corrected its lot may
-- change as a whole: what came with the same receipt and lies here, unheld, and was cut for nobody stands on nothing.
create function guard.stands_on_grade(p_lot bigint, p_piece bigint default null) returns text
language plpgsql stable security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_receipt bigint := (select r.receipt_id from piece e join receipt_line r using (receipt_line_id) where e.piece_id = p_piece and e.lot_id = p_lot);
begin
  return (select string_agg(words, '; ') from (
    (select e.tag || ' ' || case
        when r.receipt_id is distinct from v_receipt then format('came with %s', coalesce(t.note, 'another receipt'))
        when e.state in ('at saw', 'outside', 'in transit', 'shipped', 'returned') then 'is ' || e.state
        when exists (select from stroke where piece_id = e.piece_id and class = 'good') then 'was cut for an order'
        when guard.hold_words(e.piece_id) is not null then 'is ' || guard.hold_words(e.piece_id)
        else 'went on under another tag' end as words
      from piece e left join receipt_line r using (receipt_line_id) left join receipt t using (receipt_id)
      where e.lot_id = p_lot and e.state <> 'reversed' and (r.receipt_id is distinct from v_receipt or e.state in ('at saw', 'outside', 'in transit', 'shipped', 'returned')
        or exists (select from stroke where piece_id = e.piece_id and class = 'good') or guard.hold_words(e.piece_id) is not null
        or exists (select from piece n where n.before_id = e.piece_id and n.lot_id <> p_lot))
      order by e.piece_id limit 3)
    union all (select format('document %s is filed for it', d.number) from document_lot n join document d using (document_id) where n.lot_id = p_lot order by d.document_id limit 3)) x);
end $$;

-- The same heat of the same mill as another grade in another lot; words or null. One melt is one grade, but it may be certified as two: only to warn.
create function guard.other_grades(p_lot bigint) returns text
language sql stable
return (select format('heat %s is %s in the book in another section or condition', l.heat, string_agg(distinct g.designation, ', ')) from book.lot l
  join book.lot o on o.heat = l.heat and o.mill_id = l.mill_id and o.grade_id <> l.grade_id join book.grade g on g.grade_id = o.grade_id
  where l.lot_id = p_lot and exists (select from book.piece e where e.lot_id = o.lot_id and e.state::text <> 'reversed') group by l.heat);

-- Heats in the book that an eye may take for this one: other, but the same when folded, as lot.heat_folded is. Null where there is none. Only to warn.
create function guard.heats_like(p_heat text) returns text
language sql stable
return (select string_agg(distinct heat, ', ') from book.lot
  where heat_folded = translate(upper(regexp_replace(p_heat, '[\s\-]', '', 'g')), 'OISB', '0158') and heat <> p_heat);

-- Heats of other lots that look alike when folded; words or null. Only to warn.
create function guard.look_alikes(p_lot bigint) returns text
language sql stable
return (select 'looks like heat ' || guard.heats_like(heat) from book.lot where lot_id = p_lot);

-- What was ordered against what is marked; null where they agree or nothing was ordered here.
create function guard.ordered_words(p_order text, p_line text, p_lot bigint) returns text
language sql stable
return (select format('ordered %s %s, marked %s %s', og.designation, ox.label, coalesce(g.designation, 'no grade'), x.label)
  from book.purchase_line o join book.grade og using (grade_id) join book.section ox on ox.section_id = o.section_id
  cross join book.lot l left join book.grade g on g.grade_id = l.grade_id join book.section x on x.section_id = l.section_id
  where o.purchase_order = p_order and o.line = p_line and l.lot_id = p_lot
    and (l.grade_id is distinct from o.grade_id or l.section_id <> o.section_id));

-- The heat as read here and there, where it is not the same everywhere; kept reading by reading.
create function guard.read_heats(p_lot bigint, p_receipt_line bigint, p_line jsonb) returns text
language plpgsql volatile as $$
declare
  v_words text;
begin
  insert into heat_reading (lot_id, read_as, read_from, read_by, receipt_line_id)
    select p_lot, value, split_part(key, '_', 1)::read_from, session_user, p_receipt_line from jsonb_each_text(p_line)
      where key in ('tag_heat', 'slip_heat', 'certificate_heat') and value <> '';
  select 'the heats disagree: ' || string_agg(format('%s %s', read_from, read_as), ', ' order by read_from) into v_words
    from (select distinct read_from, read_as from heat_reading where receipt_line_id = p_receipt_line
      union select (p_line ->> 'read_from')::read_from, p_line ->> 'heat' where coalesce(p_line ->> 'heat', '') <> '') r
    having count(distinct read_as) > 1;
  return v_words;
end $$;

-- One line: {"line","mill","heat","read_from","grade","section":{},"condition","length_nm","count","slip_count"?,
-- "weighed_g"?,"place","papers_state","cents_per_tonne"?,"owner"?,"ends","mark","doubt_nm"?,"kind"?,"old_tag"?,
-- "measured_with"?,"slip_line"?,"order_line"?,"tag_heat"?,"slip_heat"?,"certificate_heat"?,"bundle"?,"owner_ref"?,
-- "rests"?,"chips"?,"chase_on"?,"raw"?}; the slip's count is that of its slip_line (else of this line), a heat a line.
create function guard.receive_line(p_receipt bigint, p_line jsonb) returns jsonb
language plpgsql volatile as $$
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
  v_tags text[];
  v_doubt bigint := guard.doubt_nm((p_line ->> 'doubt_nm')::bigint, p_line ->> 'measured_with');
  v_words text;
  v_over integer;
  v_bundle bigint;
  v_owner bigint := guard.owner_party(p_line ->> 'owner');
begin
  if p_line ->> 'read_from' = 'slip' and coalesce(p_line ->> 'papers_state', 'awaited') = 'awaited' then
    raise exception using errcode = 'HK026', message = format('line %s: heat %s was read from the slip only, and this metal comes with papers',
      p_line ->> 'line', p_line ->> 'heat'), hint = 'read it on the metal or its tag; where nothing can be read, read_from is none: it waits in quarantine';
  elsif jsonb_typeof(p_line -> 'section') is distinct from 'object' or coalesce(p_line ->> 'heat', '') <> '' and coalesce(btrim(p_line ->> 'grade'), '') = '' then
    raise exception using errcode = 'HK026', message = format('line %s: a receipt has a section and a grade, as measured and marked', p_line ->> 'line');
  end if;
  if v_count > 10000 then
    raise exception using errcode = 'HK026', message = format('line %s: %s bars are no line of a delivery; expected 10000 or less', p_line ->> 'line', v_count);
  end if;
  v_lot := guard.lot(p_line ->> 'mill', p_line ->> 'heat', (p_line ->> 'read_from')::read_from, p_line ->> 'grade',
    p_line -> 'section', p_line ->> 'condition', coalesce(p_line ->> 'papers_state', 'awaited')::papers_state);
  v_theory := guard.lot_mass_g(v_lot, v_length * v_count);
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
  v_words := guard.ordered_words((select purchase_order from receipt where receipt_id = p_receipt), p_line ->> 'order_line', v_lot);
  if v_words is not null then
    v_stop := v_words;
    v_mismatch := v_mismatch || v_words;
  end if;
  v_mismatch := v_mismatch || guard.look_alikes(v_lot) || guard.other_grades(v_lot);
  -- bars more than the slip's line says, with those of the same slip line counted before
  v_over := nullif(least(v_count, greatest(0, v_count + (select coalesce(sum(counted), 0) from receipt_line where receipt_id = p_receipt
    and slip_line = p_line ->> 'slip_line') - (p_line ->> 'slip_count')::integer)), 0);
  insert into receipt_line (receipt_id, line, lot_id, counted, slip_count, length_nm, theoretical_mass_g, weighed_mass_g, cents_per_tonne,
      slip_line, order_line, marked_grade, owner_ref, rests_rule, chips_rule, raw_text, over_count)
    values (p_receipt, p_line ->> 'line', v_lot, v_count, (p_line ->> 'slip_count')::integer, v_length, v_theory, v_weighed,
            (p_line ->> 'cents_per_tonne')::bigint, nullif(p_line ->> 'slip_line', ''), nullif(p_line ->> 'order_line', ''), p_line ->> 'grade',
            nullif(p_line ->> 'owner_ref', ''), nullif(p_line ->> 'rests', ''), nullif(p_line ->> 'chips', ''), p_line ->> 'raw', v_over)
    returning receipt_line_id into v_line;
  v_words := guard.read_heats(v_lot, v_line, p_line);
  if v_words is not null then
    v_stop := v_words;
    v_mismatch := v_mismatch || v_words;
  end if;
  if v_over is not null then
    v_mismatch := v_mismatch || format('%s more than the slip says: the planner decides', v_over);
  end if;
  update receipt_line set mismatch = nullif(array_to_string(v_mismatch, '; '), ''), stopped = v_stop
    where receipt_line_id = v_line and (array_length(v_mismatch, 1) > 0 or v_stop is not null);
  update lot set chase_on = coalesce((p_line ->> 'chase_on')::date, current_date + guard.setting('chase_days', '7')::integer)
    where lot_id = v_lot and papers_state = 'awaited' and chase_on is null;
  if coalesce(p_line ->> 'bundle', '') <> '' then
    insert into bundle (lot_id, name, strapped, receipt_line_id) values (v_lot, btrim(p_line ->> 'bundle'), true, v_line) returning bundle_id into v_bundle;
  end if;
  select site_id into v_site from place where place_id = v_place;
  with bar as (select nextval('book.piece_piece_id_seq') as id, i from generate_series(1, v_count) i),
  fresh as (
    insert into piece (piece_id, tag, old_tag, kind, lot_id, owner_id, path, receipt_line_id, made_length_nm, length_nm, doubt_nm,
        ends, mark_end, place_id, state, quarantine, cents_per_tonne, bundle_id, measured_with)
      overriding system value
      select id, guard.tag_of((select letter from site where site_id = v_site), nextval('book.tag_number')), nullif(p_line ->> 'old_tag', ''), v_kind, v_lot, v_owner, array[id], v_line,
          v_length, v_length, v_doubt, (p_line ->> 'ends')::smallint,
          coalesce(nullif(p_line ->> 'mark', ''), 'unknown')::mark_end, v_place, 'on rack',
          coalesce(v_stop, case when i > v_count - coalesce(v_over, 0) then 'more than the slip says: the planner decides' end),
          (p_line ->> 'cents_per_tonne')::bigint, v_bundle, case when coalesce(p_line ->> 'measured_with', '') <> '' then guard.device(p_line ->> 'measured_with') end
        from bar order by i returning piece_id, tag)
  select array_agg(tag order by piece_id) into v_tags from fresh;
  return jsonb_build_object('line', p_line ->> 'line', 'count', v_count, 'theoretical_g', v_theory, 'tags', v_tags,
    'mismatch', nullif(array_to_string(v_mismatch, '; '), ''), 'quarantined', coalesce(v_stop, case when v_over > 0 then format('%s of them: more than the slip says', v_over) end),
    'warning', guard.device_words(p_line ->> 'measured_with'));
end $$;

-- All lines of a receipt, one after the other. A refusal names in its detail the line it is about, by the "line" it was told with.
create function guard.receive_lines(p_receipt bigint, p_lines jsonb) returns jsonb
language plpgsql volatile as $$
declare
  n jsonb;
  v_done jsonb[] := '{}';
  w_hint text; w_constraint text;
begin
  for n in select * from jsonb_array_elements(p_lines) loop
    v_done := v_done || guard.receive_line(p_receipt, n);
  end loop;
  return to_jsonb(v_done);
exception when others then
  if sqlstate not like 'HK%' then raise; end if;
  get stacked diagnostics w_hint = pg_exception_hint, w_constraint = constraint_name;
  raise exception using errcode = sqlstate, message = sqlerrm, detail = 'line ' || coalesce(n ->> 'line', '?'), hint = w_hint, constraint = w_constraint;
end $$;

-- {"note","supplier","purchase_order"?,"received_at"?,"lines":[...]}: a delivery note, counted and read. The answer
-- names the tags given, the theoretical mass and, in words, what does not agree; what does not fit is quarantined.
create function api.receive_delivery(p_request uuid, p jsonb, p_device text default null) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('receive_delivery', p_request, p, coalesce((p ->> 'true_at')::timestamptz, (p ->> 'received_at')::timestamptz), coalesce(p_device, p ->> 'device'));
  v_supplier bigint;
  v_receipt bigint;
  v_lines jsonb;
begin
  if v_again is not null then return v_again; end if;
  v_supplier := guard.party(p ->> 'supplier');
  if exists (select from receipt where supplier_id = v_supplier and note = p ->> 'note' and reversed_by is null) then
    raise exception using errcode = 'HK041', message = format('delivery note %s of %s was received before, with other lines',
      p ->> 'note', p ->> 'supplier'), hint = 'look at the receipt; a second lorry has its own note';
  end if;
  perform guard.lock_heats(array(select n ->> 'heat' from jsonb_array_elements(p -> 'lines') n));
  perform guard.lock_places(guard.places_named(p));
  insert into receipt (kind, supplier_id, note, purchase_order, received_at, received_by)
    values ('delivery', v_supplier, p ->> 'note', p ->> 'purchase_order', coalesce((p ->> 'received_at')::timestamptz, now()), session_user)
    returning receipt_id into v_receipt;
  v_lines := guard.receive_lines(v_receipt, p -> 'lines');
  return guard.end_deed(jsonb_build_object('receipt_id', v_receipt, 'note', p ->> 'note', 'lines', v_lines));
end $$;

-- {"name","lines":[...]}: the opening balance, with the shop's earlier marks in old_tag.
create function api.open_balance(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('open_balance', p_request, p, (p ->> 'true_at')::timestamptz, p ->> 'device');
  v_receipt bigint;
  v_lines jsonb;
  v_twice text;
begin
  if v_again is not null then return v_again; end if;
  select string_agg(tag, ', ' order by tag) into v_twice from (select n ->> 'old_tag' as tag from jsonb_array_elements(p -> 'lines') n
    where n ->> 'old_tag' <> '' group by 1 having count(*) > 1) x;
  if v_twice is not null then
    raise exception using errcode = 'HK041', message = format('more than once in this opening balance: %s', v_twice), hint = 'an old mark names one line; give the others their own, or none';
  end if;
  -- before the look at the book: two who open it at once come one after the other
  perform guard.lock_heats(array(select n ->> 'heat' from jsonb_array_elements(p -> 'lines') n));
  select string_agg(old_tag, ', ') into v_twice from piece
    where state <> 'reversed' and old_tag in (select n ->> 'old_tag' from jsonb_array_elements(p -> 'lines') n where n ->> 'old_tag' <> '');
  if v_twice is not null then
    raise exception using errcode = 'HK041', message = format('already in the book: %s', v_twice);
  end if;
  perform guard.lock_places(guard.places_named(p));
  insert into receipt (kind, supplier_id, note, received_at, received_by)
    values ('opening', null, p ->> 'name', now(), session_user) returning receipt_id into v_receipt;
  v_lines := guard.receive_lines(v_receipt, p -> 'lines');
  return guard.end_deed(jsonb_build_object('receipt_id', v_receipt, 'name', p ->> 'name', 'lines', v_lines));
end $$;
