-- Reversing: a receipt that was booked wrongly as a whole, and which deed puts which right.

-- {"note","supplier" (none: an opening balance),"reason"}: as if it had not come. Every piece of it leaves under its reason and all that
-- happened stays; the note may be booked again. Refused where a piece has gone on, with what to do instead.
create function api.reverse_receipt(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('reverse_receipt', p_request, p);
  v_supplier bigint := case when coalesce(p ->> 'supplier', '') <> '' then guard.party(p ->> 'supplier') end;
  v_why text;
  v_words text;
  r receipt;
  e piece;
  v_tags text[] := '{}';
begin
  if v_again is not null then return v_again; end if;
  v_why := guard.said(p, 'reason', 'what was booked wrongly');
  perform guard.said(p, 'note', 'the delivery note, or the name of the opening balance');
  perform guard.lock_rows('receipt', array(select receipt_id from receipt where note = p ->> 'note' and supplier_id is not distinct from v_supplier));
  select * into r from receipt where note = btrim(p ->> 'note') and supplier_id is not distinct from v_supplier and kind <> 'found' and reversed_by is null;
  if r.receipt_id is null then
    raise exception using errcode = 'HK026', message = format('no receipt %s of %s is booked', p ->> 'note', coalesce(p ->> 'supplier', 'an opening balance')),
      hint = '`heatkeep receipt list` names them';
  end if;
  perform guard.lock_pieces(array(select piece_id from piece join receipt_line using (receipt_line_id) where receipt_id = r.receipt_id), true);
  select string_agg(format('%s %s', tag, words), '; ' order by tag) into v_words from (
    select q.tag, guard.gone_on_words(q) as words from piece q join receipt_line using (receipt_line_id)
      where receipt_id = r.receipt_id and q.parent_id is null and q.before_id is null) w where words is not null;
  if v_words is not null then
    raise exception using errcode = 'HK043', message = format('receipt %s is not reversed as a whole: %s', r.note, v_words),
      hint = 'put the others right one by one: heatkeep correct receipt for a wrong lot or owner, heatkeep return supplier for what goes back';
  end if;
  for e in select q.* from piece q join receipt_line using (receipt_line_id) where receipt_id = r.receipt_id order by q.piece_id loop
    perform guard.leave(e, 'reversed', 'reversed', format('receipt %s reversed: %s', r.note, v_why));
    v_tags := v_tags || e.tag;
  end loop;
  update receipt set reversed_by = session_user, reversed_words = v_why where receipt_id = r.receipt_id;
  return guard.end_deed(jsonb_build_object('note', r.note, 'pieces', cardinality(v_tags), 'tags', to_jsonb(v_tags)));
end $$;

-- What has become of a received piece that cannot be undone with its receipt; null while it lies here as it came.
create function guard.gone_on_words(p book.piece) returns text
language sql stable
return (select case
  when exists (select from book.cut where piece_id = p.piece_id) then 'has been cut'
  when p.length_nm = 0 then 'is ' || p.state
  when p.state <> 'on rack' then 'is ' || p.state
  when p.frozen then 'is being counted'
  when guard.hold_words(p.piece_id) is not null then 'is ' || guard.hold_words(p.piece_id)
  when exists (select from book.promise where piece_id = p.piece_id and state = 'live') then 'is promised: cancel that plan first'
  when p.length_nm <> p.made_length_nm then 'was measured otherwise since' end);

-- Which deed reverses this one, or why none does.
create function guard.put_right_words(p_deed text) returns text
language sql immutable
return case p_deed
  when 'receive_delivery' then 'reverse_receipt while nothing of it has gone on; correct_receipt for one bar'
  when 'open_balance' then 'reverse_receipt while nothing of it has gone on; correct_receipt for one piece'
  when 'put_away' then 'put_away, to where it lies'
  when 'quarantine' then 'release, with evidence'
  when 'record_damage' then 'release, with evidence'
  when 'release' then 'quarantine'
  when 'place_hold' then 'lift_hold, with evidence'
  when 'lift_hold' then 'place_hold'
  when 'correct_length' then 'correct_length, measured again'
  when 'correct_receipt' then 'correct_receipt, with the reason'
  when 'reserve' then 'unreserve'
  when 'commit_plan' then 'cancel_plan'
  when 'make_bundle' then 'open_bundle'
  when 'open_bundle' then 'make_bundle'
  when 'send_to_site' then 'receive_transfer, and send_to_site back'
  when 'send_outside' then 'back_from_outside'
  when 'write_off' then 'found_again, when it turns up'
  when 'sell' then 'customer_return, when it comes back'
  when 'ship' then 'customer_return, when they come back'
  when 'define_limits' then 'correct_limits, with the reason'
  when 'attach_file' then 'replace_document, with the file of the new version'
  when 'keep_package' then 'keep_package, made again; both stay'
  when 'freeze_place' then 'unfreeze_place'
  when 'pull' then 'record_cut with nothing cut, its rest the same piece'
  when 'pull_for_line' then 'record_cut with nothing cut, its rest the same piece'
  when 'make_up_bundle' then 'record_cut of each bar with nothing cut, its rest the same piece'
  when 'record_cut' then 'not_cut, where the last strokes were not made; metal that is cut stays cut: pieces_to_stock or reuse_reject take it up again'
  when 'not_cut' then 'record_cut'
  when 'record_bundle' then 'none: metal that is cut stays cut; pieces_to_stock or reuse_reject take it up again'
  when 'split_piece' then 'none: metal that is cut stays cut'
  when 'take_test_slice' then 'none: metal that is cut stays cut'
  when 'scrap_piece' then 'none: scrap does not come back'
  when 'reverse_receipt' then 'receive_delivery: the note may be booked again'
  else 'none: what happened stays; a later deed says what is true now' end;
