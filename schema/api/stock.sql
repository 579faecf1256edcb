-- The rack: where pieces are, what may not be used, and what is put right.
-- A piece was booked to the wrong lot or owner at receipt: put right by name and reason, and all that was cut from it
-- follows by key. The piece is one that was received, not a drop.
create function api.correct_receipt(p_request uuid, p_tag text, p_lot jsonb, p_owner text, p_reason text,
                                    p_true_at timestamptz default null, p_device text default null) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('correct_receipt', p_request, jsonb_build_array(p_tag, p_lot, p_owner, p_reason, guard.utc(p_true_at)), p_true_at, p_device, p_reason);
  p piece;
begin
  if v_again is not null then return v_again; end if;
  perform guard.lock_names();
  p := guard.piece_of(p_tag);
  -- the lot it was booked to, the one it belongs to, and those of all that comes from it
  perform guard.lock_lots(array(select lot_id from lot where heat = p_lot ->> 'heat' union select lot_id from piece where piece_id = any (p.piece_id || guard.here_of(p.piece_id))), true);
  perform guard.lock_pieces(array(select p.piece_id union select piece_id from piece where path @> array[p.piece_id]), true);
  select * into p from piece where piece_id = p.piece_id;
  if p.parent_id is not null then
    raise exception using errcode = 'HK043', message = format('%s is a drop: correct the bar it came from, %s', p.tag,
      (select tag from piece where piece_id = p.path[1]));
  elsif coalesce(btrim(p_reason), '') = '' then
    raise exception using errcode = 'HK026', message = 'a correction names the error and the reason';
  elsif guard.hold_words(p.piece_id) is not null then
    raise exception using errcode = 'HK040', message = format('%s is not edited while it is %s', p.tag, guard.hold_words(p.piece_id)), hint = 'lift the hold first';
  end if;
  perform guard.drop_promise(n.piece_id, 'receipt corrected') from piece n where n.path @> array[p.piece_id];
  update piece set bundle_id = null,
      lot_id = guard.lot(p_lot ->> 'mill', p_lot ->> 'heat', (p_lot ->> 'read_from')::read_from, p_lot ->> 'grade',
        p_lot -> 'section', p_lot ->> 'condition', coalesce(p_lot ->> 'papers_state', 'awaited')::papers_state),
      owner_id = guard.owner_party(p_owner)
    where piece_id = p.piece_id;
  return guard.end_deed(jsonb_build_object('tag', p.tag, 'follow',
    (select count(*) - 1 from piece where path @> array[p.piece_id])));
end $$;

-- A person of quality decides what the book had to record against a rule. With p_free the pieces that were cut while
-- blocked may go on, once nothing blocks their metal any more.
create function api.close_conflict(p_request uuid, p_conflict bigint, p_words text, p_free boolean) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('close_conflict', p_request, jsonb_build_array(p_conflict, p_words, p_free), null, null, p_words);
  c conflict;
  v_blocked text;
  v_freed integer := 0;
begin
  if v_again is not null then return v_again; end if;
  if coalesce(btrim(p_words), '') = '' then
    raise exception using errcode = 'HK026', message = 'closing a conflict says what was decided and why';
  end if;
  perform guard.lock_rows('conflict', array[p_conflict]);
  select * into c from conflict where conflict_id = p_conflict;
  if c.conflict_id is null or c.closed_by is not null then
    raise exception using errcode = 'HK043', message = format('conflict %s is not open', p_conflict),
      hint = '`heatkeep conflict list` names them';
  end if;
  if p_free and c.piece_id is not null then
    perform guard.lock_pieces(array[c.piece_id]);
    v_blocked := guard.blocked_words(c.piece_id);
    if v_blocked is not null then
      raise exception using errcode = 'HK040', message = format('%s is still %s', (select tag from piece where piece_id = c.piece_id), v_blocked),
        hint = 'lift the hold or release the piece first';
    end if;
    select count(*) into v_freed from stroke where piece_id = c.piece_id and held and class = 'good';
    update stroke set held = false where piece_id = c.piece_id and held;
  end if;
  update conflict set closed_by = session_user, closing_words = p_words where conflict_id = p_conflict;
  return guard.end_deed(jsonb_build_object('conflict_id', p_conflict, 'freed', v_freed));
end $$;

-- What is in the shop, one piece a row. Reports read it.
create view api.stock_on_hand as
  select p.tag, p.old_tag, p.kind::text, g.designation as grade, x.label as section, p.condition, m.name as mill, p.heat,
      p.good_for::text as papers, p.document, p.limits, o.name as owner, w.name as place, p.state::text,
      p.length_nm, p.doubt_nm, p.ends, p.mark_end::text, guard.mass_g(p.length_nm, x.area_um2, g.density_kg_m3) as mass_g,
      p.blocked, b.name as bundle, (select f.plan_id from book.promise r join book.layout f using (layout_id)
        where r.piece_id = p.piece_id and r.state = 'live') as plan_id,
      (select r.words from book.promise r where r.piece_id = p.piece_id and r.state = 'live') as promised_to
    from guard.metal p left join book.grade g using (grade_id) join book.section x using (section_id)
    left join book.party m on m.party_id = p.mill_id join book.party o on o.party_id = p.owner_id
    left join book.place w using (place_id) left join book.bundle b on b.bundle_id = p.bundle_id and b.strapped
    where p.length_nm > 0;
