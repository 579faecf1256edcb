-- The rack: where pieces are, what may not be used, and what is put right.
create function api.put_away(p_request uuid, p_tag text, p_place text, p_true_at timestamptz default null,
                             p_device text default null) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('put_away', p_request, jsonb_build_array(p_tag, p_place, p_true_at), p_true_at, p_device);
  p piece;
begin
  if v_again is not null then return v_again; end if;
  p := guard.piece_for_deed(p_tag);
  if p.length_nm = 0 or p.state = 'at saw' then
    raise exception using errcode = 'HK043', message = format('%s is %s: it cannot be put away', p.tag, p.state);
  end if;
  update piece set place_id = guard.place(p_place), state = 'on rack' where piece_id = p.piece_id;
  return guard.end_deed(jsonb_build_object('tag', p.tag, 'place', p_place));
end $$;

create function api.quarantine(p_request uuid, p_tag text, p_reason text) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('quarantine', p_request, jsonb_build_array(p_tag, p_reason), null, null, p_reason);
  p piece;
begin
  if v_again is not null then return v_again; end if;
  if coalesce(btrim(p_reason), '') = '' then
    raise exception using errcode = 'HK026', message = 'a quarantine needs a reason';
  end if;
  p := guard.piece_for_deed(p_tag);
  -- the lot is locked against promises, pulls and cuts of what came from the piece
  perform from lot where lot_id = p.lot_id for update;
  update piece set quarantine = p_reason where piece_id = p.piece_id;
  perform guard.drop_promise(n.piece_id, 'quarantined: ' || p_reason) from piece n where n.path @> array[p.piece_id] and n.length_nm > 0;
  return guard.end_deed(jsonb_build_object('tag', p.tag));
end $$;

create function api.release(p_request uuid, p_tag text, p_evidence text) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('release', p_request, jsonb_build_array(p_tag, p_evidence), null, null, p_evidence);
  p piece;
begin
  if v_again is not null then return v_again; end if;
  p := guard.piece_for_deed(p_tag);
  if p.quarantine is null then
    raise exception using errcode = 'HK043', message = format('%s is not in quarantine', p.tag);
  elsif coalesce(btrim(p_evidence), '') = '' then
    raise exception using errcode = 'HK026', message = 'a release names its evidence';
  elsif guard.setting('two_person_release', 'no') = 'yes' and session_user = (select r.received_by from receipt_line
      join receipt r using (receipt_id) where receipt_line_id = (select receipt_line_id from piece where piece_id = p.path[1])) then
    raise exception using errcode = 'HK043', message = format('%s was received by you: another person releases it', p.tag);
  end if;
  update piece set quarantine = null where piece_id = p.piece_id;
  return guard.end_deed(jsonb_build_object('tag', p.tag));
end $$;

-- Holds a heat (of one mill or of all), or a piece with all that comes from it, from this moment. Live promises of it
-- fall; what is at a saw is named in the answer, to be stopped.
create function api.place_hold(p_request uuid, p_scope text, p_ref text, p_mill text, p_reason text) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('place_hold', p_request, jsonb_build_array(p_scope, p_ref, p_mill, p_reason), null, null, p_reason);
  v_mill bigint := case when coalesce(p_mill, '') <> '' then guard.party(p_mill) end;
  v_pieces bigint[];
  v_hold bigint;
  v_piece piece;
begin
  if v_again is not null then return v_again; end if;
  if p_scope = 'heat' then
    -- the lots are locked against promises, pulls and cuts under way
    perform from lot where heat = p_ref and (v_mill is null or mill_id = v_mill) order by lot_id for update;
    if not found then
      raise exception using errcode = 'HK026', message = format('no lot has heat "%s"', p_ref);
    end if;
    insert into hold (scope, heat, mill_id, reason, held_by) values ('heat', p_ref, v_mill, p_reason, session_user) returning hold_id into v_hold;
    select array_agg(piece_id) into v_pieces from piece join lot using (lot_id)
      where heat = p_ref and (v_mill is null or mill_id = v_mill) and length_nm > 0;
  elsif p_scope = 'piece' then
    v_piece := guard.piece_for_deed(p_ref);
    perform from lot where lot_id = v_piece.lot_id for update;
    insert into hold (scope, piece_id, reason, held_by) values ('piece', v_piece.piece_id, p_reason, session_user) returning hold_id into v_hold;
    select array_agg(piece_id) into v_pieces from piece where path @> array[v_piece.piece_id] and length_nm > 0;
  else
    raise exception using errcode = 'HK026', message = format('"%s" cannot be held; expected heat or piece', p_scope);
  end if;
  perform guard.drop_promise(n, 'held: ' || p_reason) from unnest(v_pieces) n;
  return guard.end_deed(jsonb_build_object('hold_id', v_hold, 'pieces', coalesce(cardinality(v_pieces), 0),
    'at_saw', (select coalesce(jsonb_agg(tag order by tag), '[]') from piece where piece_id = any (v_pieces) and state = 'at saw')));
end $$;

create function api.lift_hold(p_request uuid, p_hold bigint, p_evidence text) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('lift_hold', p_request, jsonb_build_array(p_hold, p_evidence), null, null, p_evidence);
begin
  if v_again is not null then return v_again; end if;
  if coalesce(btrim(p_evidence), '') = '' then
    raise exception using errcode = 'HK026', message = 'lifting a hold names its evidence';
  end if;
  update hold set lifted_by = session_user, lifting_words = p_evidence where hold_id = p_hold and lifted_by is null;
  if not found then
    raise exception using errcode = 'HK043', message = format('hold %s is not a live hold', p_hold);
  end if;
  return guard.end_deed(jsonb_build_object('hold_id', p_hold));
end $$;

-- A piece was booked to the wrong lot or owner at receipt: put right by name and reason, and all that was cut from it
-- follows by key. The piece is one that was received, not a drop.
create function api.correct_receipt(p_request uuid, p_tag text, p_lot jsonb, p_owner text, p_reason text) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('correct_receipt', p_request, jsonb_build_array(p_tag, p_lot, p_owner, p_reason), null, null, p_reason);
  p piece;
begin
  if v_again is not null then return v_again; end if;
  p := guard.piece_for_deed(p_tag);
  if p.parent_id is not null then
    raise exception using errcode = 'HK043', message = format('%s is a drop: correct the bar it came from, %s', p.tag,
      (select tag from piece where piece_id = p.path[1]));
  elsif coalesce(btrim(p_reason), '') = '' then
    raise exception using errcode = 'HK026', message = 'a correction names the error and the reason';
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

-- Measured again: the difference is named unexplained, with the cause and who measured.
create function api.correct_length(p_request uuid, p_tag text, p_length_nm bigint, p_doubt_nm bigint, p_cause text,
                                   p_device text default null) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('correct_length', p_request, jsonb_build_array(p_tag, p_length_nm, p_doubt_nm, p_cause), null, p_device, p_cause);
  p piece;
begin
  if v_again is not null then return v_again; end if;
  p := guard.piece_for_deed(p_tag);
  -- what is missing from a piece that is being cut belongs to that cut's balance
  perform guard.set_measured(p, p_length_nm, p_doubt_nm, (select cut_id from cut where piece_id = p.piece_id and not closed), p_cause);
  return guard.end_deed(jsonb_build_object('tag', p.tag, 'difference_nm', p_length_nm - p.length_nm));
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
  select * into c from conflict where conflict_id = p_conflict for update;
  if c.conflict_id is null or c.closed_by is not null then
    raise exception using errcode = 'HK043', message = format('conflict %s is not open', p_conflict);
  end if;
  if p_free and c.piece_id is not null then
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

create function guard.set_measured(p book.piece, p_length_nm bigint, p_doubt_nm bigint, p_cut bigint, p_cause text) returns void
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
begin
  if p_length_nm <= 0 or p_length_nm > p.made_length_nm or p.length_nm = 0 then
    raise exception using errcode = 'HK034', message = format('%s cannot measure %s mm: it is %s and was made %s mm long',
      p.tag, trim_scale(p_length_nm / 1e6::numeric), p.state, trim_scale(p.made_length_nm / 1e6::numeric)),
      hint = 'measure again; no piece is longer than it ever was';
  end if;
  if p_length_nm <> p.length_nm then
    insert into metal_out (piece_id, lot_id, owner_id, cut_id, class, length_nm, reason, named)
      values (p.piece_id, p.lot_id, p.owner_id, p_cut, 'unexplained', p.length_nm - p_length_nm, p_cause, session_user);
  end if;
  update piece set length_nm = p_length_nm, doubt_nm = coalesce(p_doubt_nm, doubt_nm) where piece_id = p.piece_id;
end $$;

-- Lets a live promise of a piece go; its layout is dropped from the plan. Nothing where there is none.
create function guard.drop_promise(p_piece bigint, p_why text) returns void
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_layout bigint;
begin
  update promise set state = 'released', words = words || '; ' || p_why where piece_id = p_piece and state = 'live'
    and not exists (select from piece where piece_id = p_piece and state = 'at saw')
    returning layout_id into v_layout;
  update layout set state = 'dropped' where layout_id = v_layout and state = 'promised';
end $$;

-- What is in the shop, one piece a row. Reports read it.
create view api.stock_on_hand as
  select p.tag, p.old_tag, p.kind::text, g.designation as grade, x.label as section, l.condition, m.name as mill, l.heat,
      l.papers::text, guard.document_words(l.lot_id) as document, o.name as owner, w.name as place, p.state::text,
      p.length_nm, p.doubt_nm, p.ends, p.mark_end::text, guard.mass_g(p.length_nm, x.area_um2, g.density_kg_m3) as mass_g,
      guard.blocked_words(p.piece_id) as blocked, (select f.plan_id from book.promise r join book.layout f using (layout_id)
        where r.piece_id = p.piece_id and r.state = 'live') as plan_id
    from book.piece p join book.lot l using (lot_id) left join book.grade g using (grade_id) join book.section x using (section_id)
    left join book.party m on m.party_id = l.mill_id join book.party o on o.party_id = p.owner_id
    left join book.place w using (place_id)
    where p.length_nm > 0;

-- One line a happening of a piece, oldest first by seq.
create view api.piece_history as
  select p.tag, h.seq, h.at, h.true_at, h.who, h.device, h.deed, h.tbl as about, h.reason, h.sets
    from book.happening h join book.piece p on h.chain = 'piece' and p.piece_id = h.chain_id;

create view api.holds as
  select h.hold_id, h.scope::text, coalesce(h.heat, p.tag) as ref, m.name as mill, h.reason, h.held_by, h.lifted_by, h.lifting_words
    from book.hold h left join book.party m on m.party_id = h.mill_id left join book.piece p using (piece_id);
create view api.conflicts as
  select c.conflict_id, c.kind, p.tag, c.words, c.closed_by, c.closing_words from book.conflict c left join book.piece p using (piece_id);
create view api.refusals as
  select at, who, deed, device, code, words from book.refusal;
