-- The rack: where pieces are, what may not be used, and what is put right.
-- A piece was booked to the wrong lot or owner at receipt: put right by name and reason, and all that was cut from it
-- follows by key, with the reports of defects in it. The piece is one that was received, not a drop; what went on under another tag is put right
-- before it. Where only the grade was wrong its lot changes as a whole, if nothing stands on that. p_lot with "received_nm": it came longer than it
-- was booked.
create function api.correct_receipt(p_request uuid, p_tag text, p_lot jsonb, p_owner text, p_reason text,
                                    p_true_at timestamptz default null, p_device text default null) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('correct_receipt', p_request, jsonb_build_array(p_tag, p_lot, p_owner, p_reason, guard.utc(p_true_at)), p_true_at, p_device, p_reason);
  p piece;
  v_lot bigint;
  v_grade bigint;
  v_words text;
begin
  if v_again is not null then return v_again; end if;
  perform guard.lock_names();
  p := guard.piece_of(p_tag);
  -- the lot it was booked to, the one it belongs to, and those of all that comes from it
  perform guard.lock_lots(array(select lot_id from lot where heat = p_lot ->> 'heat' union select lot_id from piece where piece_id = any (p.piece_id || guard.here_of(p.piece_id))), true);
  perform guard.lock_pieces(array(select p.piece_id union select piece_id from piece where path @> array[p.piece_id]
    or lot_id = (select lot_id from piece where piece_id = p.piece_id)), true);
  select * into p from piece where piece_id = p.piece_id;
  v_grade := (select grade_id from lot where lot_id = p.lot_id);
  if p.parent_id is not null then
    raise exception using errcode = 'HK043', message = format('%s is a drop: correct the bar it came from, %s', p.tag,
      (select tag from piece where piece_id = p.path[1]));
  elsif coalesce(btrim(p_reason), '') = '' then
    raise exception using errcode = 'HK026', message = 'a correction names the error and the reason';
  elsif guard.hold_words(p.piece_id) is not null then
    raise exception using errcode = 'HK040', message = format('%s is not edited while it is %s', p.tag, guard.hold_words(p.piece_id)), hint = 'lift the hold first';
  end if;
  perform guard.drop_promise(n.piece_id, 'receipt corrected') from piece n where n.path @> array[p.piece_id];
  if p_lot ->> 'received_nm' is not null then
    perform guard.received_longer(p, (p_lot ->> 'received_nm')::bigint, p_reason);
  end if;
  v_lot := guard.lot(p_lot ->> 'mill', p_lot ->> 'heat', (p_lot ->> 'read_from')::read_from, p_lot ->> 'grade',
    p_lot -> 'section', p_lot ->> 'condition', coalesce(p_lot ->> 'papers_state', 'awaited')::papers_state, p.piece_id);
  v_words := guard.gone_on_as(p.piece_id, v_lot);
  if v_words is not null then
    raise exception using errcode = 'HK043', message = format('%s went on under another tag, and that would stay what it is: %s', p.tag, v_words),
      hint = 'put the newest of them right first, in the same way: heatkeep correct receipt with its tag';
  end if;
  -- a bundle is one lot, by key
  update piece set bundle_id = null where path @> array[p.piece_id] and bundle_id is not null;
  update piece set lot_id = v_lot, owner_id = guard.owner_party(p_owner) where piece_id = p.piece_id;
  update defect_report set lot_id = v_lot where piece_id in (select piece_id from piece where path @> array[p.piece_id]) and lot_id <> v_lot;
  if (select grade_id from lot where lot_id = p.lot_id) is distinct from v_grade then
    perform guard.drop_promise(n.piece_id, 'receipt corrected') from piece n where n.lot_id = p.lot_id;
  end if;
  return guard.end_deed(jsonb_build_object('tag', p.tag, 'follow', (select count(*) - 1 from piece where path @> array[p.piece_id] or lot_id = p.lot_id
    and v_grade <> (select grade_id from lot where lot_id = p.lot_id)), 'warning', guard.other_grades(v_lot)));
end $$;

-- What this piece, or what came from it, went on as under other tags and is of its heat, grade or section still, though it is to be of another lot; in
-- words; null where nothing. Metal whose heat was found to be another says nothing of it.
create function guard.gone_on_as(p_piece bigint, p_lot bigint) returns text
language sql stable
return (select string_agg(format('%s is %s', e.tag, concat_ws(' ', g.designation, 'heat ' || l.heat)), ', ' order by e.piece_id desc)
  from book.piece e join book.lot l using (lot_id) left join book.grade g using (grade_id)
    join book.lot was on was.lot_id = (select lot_id from book.piece where piece_id = p_piece) join book.lot n on n.lot_id = p_lot
  where e.before_path @> array[p_piece] and e.parent_id is null and (l.heat is null or (l.mill_id, l.heat) = (was.mill_id, was.heat))
    and (l.heat is not null and (l.mill_id, l.heat) is distinct from (n.mill_id, n.heat) or l.grade_id = was.grade_id and l.grade_id is distinct from n.grade_id
      or l.section_id = was.section_id and l.section_id <> n.section_id));

-- A bar was longer when it came than it was booked. What was named unexplained of it before is taken back: it is as long as is said now.
create function guard.received_longer(p book.piece, p_length_nm bigint, p_reason text) returns void
language plpgsql volatile as $$
begin
  if not guard.as_received(p) then
    raise exception using errcode = 'HK043', message = format('%s is not made longer: it was cut, had another tag, or is no bar that came', p.tag),
      hint = 'its length now is put right by heatkeep correct length';
  elsif p_length_nm <= p.made_length_nm then
    raise exception using errcode = 'HK034', message = format('%s was booked %s mm long when it came: %s mm is no more', p.tag,
      trim_scale(p.made_length_nm / 1e6::numeric), trim_scale(p_length_nm / 1e6::numeric)), hint = 'what is shorter than it was booked is put right by heatkeep correct length: the difference stays unexplained';
  elsif p_length_nm > (select max_length_nm from place where place_id = p.place_id) then
    raise exception using errcode = 'HK033', message = format('%s takes lengths up to %s mm; this piece is %s mm', (select name from place where place_id = p.place_id),
      (select trim_scale(max_length_nm / 1e6::numeric) from place where place_id = p.place_id), trim_scale(p_length_nm / 1e6::numeric)), hint = 'choose a longer place';
  elsif p.length_nm <> p.made_length_nm then
    insert into metal_out (piece_id, lot_id, owner_id, class, length_nm, reason, named)
      values (p.piece_id, p.lot_id, p.owner_id, 'unexplained', p.length_nm - p.made_length_nm, p_reason, session_user);
  end if;
  update piece set made_length_nm = p_length_nm, length_nm = p_length_nm where piece_id = p.piece_id;
end $$;

-- A person of quality decides what the book had to record against a rule. With p_free the pieces that it stopped may go on, once nothing blocks their
-- metal any more: those that came back from a customer by the conflict of that, those cut while held by any other. An open conflict of the same kind on
-- the same piece keeps them; the answer names what still stops pieces of it.
create function api.close_conflict(p_request uuid, p_conflict bigint, p_words text, p_free boolean) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('close_conflict', p_request, jsonb_build_array(p_conflict, p_words, p_free), null, null, p_words);
  c conflict;
  v_kind text;
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
    v_kind := case when c.kind = 'returned by a customer' then c.kind else 'cut while held' end;
    if not exists (select from conflict where piece_id = c.piece_id and closed_by is null and conflict_id <> p_conflict and kind = v_kind) then
      with freed as (update stroke set held = false where piece_id = c.piece_id and held
        and (v_kind = 'returned by a customer') = (guard.return_of(stroke_id) is not null) returning class)
      select count(*) into v_freed from freed where class = 'good';
    end if;
  end if;
  update conflict set closed_by = session_user, closing_words = p_words where conflict_id = p_conflict;
  return guard.end_deed(jsonb_build_object('conflict_id', p_conflict, 'freed', v_freed, 'stopped_by',
    (select coalesce(jsonb_agg(o.conflict_id order by o.conflict_id), '[]') from conflict o
      where p_free and o.piece_id = c.piece_id and o.closed_by is null and o.kind in ('cut while held', 'returned by a customer'))));
end $$;

-- What is in the shop, one piece a row. Reports read it.
create view api.stock_on_hand as
  select p.tag, p.old_tag, p.kind::text, g.designation as grade, x.label as section, p.condition, m.name as mill, p.heat,
      p.good_for::text as papers, p.document, p.limits, p.risk, o.name as owner, w.name as place, p.state::text,
      p.length_nm, p.doubt_nm, p.ends, p.mark_end::text, guard.mass_g(p.length_nm, x.area_um2, g.density_kg_m3) as mass_g,
      p.blocked, p.waits, b.name as bundle, (select f.plan_id from book.promise r join book.layout f using (layout_id)
        where r.piece_id = p.piece_id and r.state = 'live') as plan_id,
      (select r.words from book.promise r where r.piece_id = p.piece_id and r.state = 'live') as promised_to
    from guard.metal p left join book.grade g using (grade_id) join book.section x using (section_id)
    left join book.party m on m.party_id = p.mill_id join book.party o on o.party_id = p.owner_id
    left join book.place w using (place_id) left join book.bundle b on b.bundle_id = p.bundle_id and b.strapped
    where guard.is_here(p.state);
