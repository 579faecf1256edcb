-- Metal that goes out for heat treatment, peeling or a test, and comes back: another condition is another lot.

-- {"tag","party","process","note","mass_g"?}: process "test" may come back as it went; everything else changes it.
create function api.send_outside(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('send_outside', p_request, p);
  e piece;
begin
  if v_again is not null then return v_again; end if;
  e := guard.piece_for_deed(guard.said(p, 'tag', 'the tag'));
  perform guard.free_to_change(e, 'sent out');
  perform guard.drop_promise(e.piece_id, 'sent out: ' || (p ->> 'process'));
  insert into outside_trip (piece_id, party, process, note, out_nm, out_g)
    values (e.piece_id, guard.said(p, 'party', 'who does it'), guard.said(p, 'process', 'what is done, or test'), guard.said(p, 'note', 'the note it leaves with'),
      e.length_nm, (p ->> 'mass_g')::bigint);
  update piece set state = 'outside', place_id = null, bundle_id = null where piece_id = e.piece_id;
  return guard.end_deed(jsonb_build_object('tag', e.tag, 'length_nm', e.length_nm));
end $$;

-- {"tag","place","length_nm","condition","mass_g"?,"doubt_nm"?,"measured_with"?}: the new condition is a new lot that
-- waits for its own papers, under a new tag. A difference in length is named unexplained.
create function api.back_from_outside(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('back_from_outside', p_request, p);
  e piece;
  t outside_trip;
  l lot;
  n lot;
  v_place bigint;
  v_tag text;
begin
  if v_again is not null then return v_again; end if;
  e := guard.piece_of(guard.said(p, 'tag', 'the tag it went out with'));
  -- the lot that it may go on in
  perform guard.lock_names();
  perform guard.lock_lots(array(select e.lot_id union select m.lot_id from lot o join lot m using (mill_id, heat, section_id) where o.lot_id = e.lot_id), true);
  e := guard.piece_for_deed(e.tag);
  select * into t from outside_trip where piece_id = e.piece_id and back_nm is null;
  if t.outside_trip_id is null or e.state <> 'outside' then
    raise exception using errcode = 'HK043', message = format('%s is not outside: it is %s', e.tag, e.state), hint = '`heatkeep outside list` names what is';
  end if;
  perform guard.said(p, 'length_nm', 'the length as measured now');
  v_place := guard.place(guard.said(p, 'place', 'where it is put'));
  select * into l from lot where lot_id = e.lot_id;
  perform guard.measure(e, p, format('back from %s (%s), note %s', t.party, t.process, t.note));
  update piece set state = 'on rack', place_id = v_place where piece_id = e.piece_id returning * into e;
  if t.process = 'test' and coalesce(btrim(p ->> 'condition'), l.condition) = l.condition then
    v_tag := e.tag;
  elsif guard.said(p, 'condition', 'the condition it has now') = l.condition then
    raise exception using errcode = 'HK042', message = format('%s went out for %s: its condition is not %s any more', e.tag, t.process, l.condition),
      hint = 'say the new condition; it becomes a lot of its own with papers of its own';
  else
    select * into n from lot where mill_id = l.mill_id and heat = l.heat and section_id = l.section_id and condition = btrim(p ->> 'condition');
    if n.lot_id is null then
      insert into lot (mill_id, heat, section_id, grade_id, condition, identity, origin, papers_state)
        values (l.mill_id, l.heat, l.section_id, l.grade_id, btrim(p ->> 'condition'), l.identity, l.origin,
          (case when l.identity = 'heat' then 'awaited' else 'none' end)::papers_state) returning * into n;
    end if;
    v_tag := guard.pass_on(e, n.lot_id, e.owner_id, v_place, format('%s by %s, note %s', t.process, t.party, t.note));
  end if;
  update outside_trip set back_nm = (p ->> 'length_nm')::bigint, back_g = (p ->> 'mass_g')::bigint, back_tag = v_tag where outside_trip_id = t.outside_trip_id;
  return guard.end_deed(jsonb_build_object('tag', v_tag, 'was', e.tag, 'difference_nm', (p ->> 'length_nm')::bigint - t.out_nm,
    'papers', (select papers_state from lot join piece using (lot_id) where tag = v_tag), 'warning', guard.device_words(p ->> 'measured_with')));
end $$;

create view api.outside_trips as
  select p.tag, t.party, t.process, t.note, t.out_nm, t.out_g, t.back_nm, t.back_g, t.back_tag from book.outside_trip t join book.piece p using (piece_id);
