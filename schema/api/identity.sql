-- Whose heat is it: metal without a mark, metal that is found again, identity regained by evidence, labels and photos.

-- Missing pieces that the found one might be: only a hint for quality, never merged by resemblance.
create function guard.found_hint(p_section bigint, p_length bigint) returns jsonb
language sql stable
return (select coalesce(jsonb_agg(jsonb_build_object('tag', tag, 'length_nm', length_nm) order by abs(length_nm - p_length), tag), '[]')
  from (select p.tag, p.length_nm from book.piece p join book.lot l using (lot_id)
    where p.state = 'missing' and p.length_nm > 0 and l.section_id = p_section and abs(p.length_nm - p_length) <= 20000000
    order by abs(p.length_nm - p_length), p.tag limit 3) h);

create function guard.book_found(p_section bigint, p_length bigint, p_doubt bigint, p_marks text, p_place bigint) returns book.piece
language plpgsql volatile as $$
declare
  v_lot bigint;
  v_receipt bigint;
  v_line bigint;
  v_id bigint := nextval('book.piece_piece_id_seq');
  e piece;
begin
  insert into lot (section_id, identity, papers_state) values (p_section, 'unknown', 'none') returning lot_id into v_lot;
  insert into receipt (kind, note, received_at, received_by)
    values ('found', 'found ' || v_id, coalesce(guard.note('true_at')::timestamptz, now()), session_user) returning receipt_id into v_receipt;
  insert into receipt_line (receipt_id, line, lot_id, counted, length_nm, theoretical_mass_g, mismatch)
    select v_receipt, '1', v_lot, 1, p_length, guard.mass_g(p_length, area_um2, null), 'found without a tag; marks: ' || coalesce(p_marks, 'none')
      from section where section_id = p_section returning receipt_line_id into v_line;
  insert into piece (piece_id, tag, kind, lot_id, path, receipt_line_id, made_length_nm, length_nm, doubt_nm, ends, mark_end, place_id, state, quarantine)
    overriding system value
    values (v_id, guard.new_tag((select site_id from place where place_id = p_place)), 'drop', v_lot, array[v_id], v_line, p_length, p_length, p_doubt, 0,
      'unknown', p_place, 'on rack', 'found without a tag: nobody knows its heat') returning * into e;
  return e;
end $$;

-- {"section":{},"length_nm","marks","place","doubt_nm"?,"measured_with"?}: by anyone. It is unknown metal in quarantine; the
-- hint names missing pieces it might be, and quality decides on evidence.
create function api.found_piece(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('found_piece', p_request, p);
  e piece;
  v_section bigint;
begin
  if v_again is not null then return v_again; end if;
  if jsonb_typeof(p -> 'section') is distinct from 'object' or coalesce((p ->> 'length_nm')::bigint, 0) <= 0 then
    raise exception using errcode = 'HK026', message = 'a found piece has a section and a length', hint = 'measure both';
  elsif coalesce(p ->> 'heat', '') <> '' then
    raise exception using errcode = 'HK026', message = 'a heat is not given to a found piece: write down the marks that can be seen',
      hint = 'quality decides on the evidence (heatkeep piece identity)';
  end if;
  v_section := guard.section(p -> 'section');
  e := guard.book_found(v_section, (p ->> 'length_nm')::bigint, guard.doubt_nm((p ->> 'doubt_nm')::bigint, p ->> 'measured_with'),
    guard.said(p, 'marks', 'what can be read on it, or "none"'), guard.place(guard.said(p, 'place', 'where it lies')));
  return guard.end_deed(jsonb_build_object('tag', e.tag, 'label', format('NO HEAT %s: not to be used', e.tag),
    'hint', guard.found_hint(v_section, e.length_nm)));
end $$;

-- {"tag","read","length_nm","place","doubt_nm"?,"measured_with"?}: a missing or written-off piece turns up; it is read and measured.
create function api.found_again(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('found_again', p_request, p || jsonb_build_object('reason', 'found again, read: ' || coalesce(p ->> 'read', '')));
  e piece;
  l lot;
  v_out metal_out;
  v_read text;
begin
  if v_again is not null then return v_again; end if;
  v_read := guard.said(p, 'read', 'the heat, or else the tag, as read on the metal now');
  perform guard.said(p, 'length_nm', 'the length as measured now');
  e := guard.piece_for_deed(guard.said(p, 'tag', 'the tag'));
  select * into l from lot where lot_id = e.lot_id;
  if e.state not in ('missing', 'written off') then
    raise exception using errcode = 'HK043', message = format('%s is not missing: it is %s', e.tag, e.state), hint = format('`heatkeep piece history %s` says what happened to it', e.tag);
  elsif v_read is distinct from l.heat and upper(v_read) <> e.tag and v_read is distinct from e.old_tag then
    raise exception using errcode = 'HK042', message = format('what is read on it (%s) is neither the tag %s nor the heat in the book', v_read, e.tag),
      hint = 'book it as found (heatkeep piece found): quality decides what it is';
  end if;
  if e.state = 'written off' then
    perform guard.end_trips(e.piece_id);  -- one that was written off on its way before leaving ended that
    select * into v_out from metal_out where piece_id = e.piece_id and class = 'unexplained' order by metal_out_id desc limit 1;
    insert into metal_out (piece_id, lot_id, owner_id, class, length_nm, reason, named, reverses_id)
      values (e.piece_id, e.lot_id, e.owner_id, 'unexplained', -v_out.length_nm, 'found again', session_user, v_out.metal_out_id);
    update piece set length_nm = v_out.length_nm, state = 'on rack' where piece_id = e.piece_id returning * into e;
  end if;
  perform guard.measure(e, p, 'measured when it was found again');
  update piece set state = 'on rack', place_id = guard.place(guard.said(p, 'place', 'where it is put')) where piece_id = e.piece_id;
  insert into heat_reading (lot_id, read_as, read_from, read_by) values (e.lot_id, v_read, (case when v_read = l.heat then 'metal' else 'tag' end)::read_from, session_user);
  return guard.end_deed(jsonb_build_object('tag', e.tag, 'difference_nm', (p ->> 'length_nm')::bigint - e.length_nm));
end $$;

-- {"tag","method":"mark|custody|analysis","result","as_tag"? | "lot"?:{"mill","heat","grade","section":{},"condition"} | "grade"?}:
-- what quality found out, and how. Analysis proves grade, never heat. as_tag: it is that missing piece. The metal goes on
-- under a new tag where its lot changes.
create function api.reestablish_identity(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('reestablish_identity', p_request, p);
  v_method text;
  v_result text;
  e piece;
  m piece;
  l lot;
  v_lot bigint;
  v_tag text;
begin
  if v_again is not null then return v_again; end if;
  v_method := guard.said(p, 'method', 'mark, custody or analysis');
  v_result := guard.said(p, 'result', 'what was found, in words');
  if v_method not in ('mark', 'custody', 'analysis') then
    raise exception using errcode = 'HK026', message = format('"%s" is no method', v_method), hint = 'expected mark, custody or analysis';
  elsif v_method = 'analysis' and (p ? 'as_tag' or p ? 'lot') then
    raise exception using errcode = 'HK042', message = 'an analysis proves the grade, not the heat', hint = 'give "grade"; a heat needs a mark or unbroken custody';
  end if;
  if p ? 'lot' then
    perform guard.lock_names();
  end if;
  e := guard.piece_of(guard.said(p, 'tag', 'the tag'));
  v_tag := guard.tag_form(p ->> 'as_tag');
  perform guard.lock_lots(array(select lot_id from lot where heat = p -> 'lot' ->> 'heat' union select lot_id from piece where tag in (e.tag, v_tag)), true);
  perform guard.lock_tags(array[e.tag, v_tag]);
  e := guard.piece_for_deed(e.tag);
  perform guard.free_to_change(e, 'given another identity');
  select * into l from lot where lot_id = e.lot_id;
  insert into piece_note (piece_id, kind, words, more) values (e.piece_id, 'identity', v_method || ': ' || v_result, p - 'tag');
  if p ? 'as_tag' then
    m := guard.piece_for_deed(p ->> 'as_tag');
    if m.state <> 'missing' or (select section_id from lot where lot_id = m.lot_id) <> l.section_id or l.identity = 'heat' then
      raise exception using errcode = 'HK042', message = format('%s cannot be %s: that one is %s', e.tag, m.tag, m.state), hint = 'only a missing piece of the same section';
    end if;
    perform guard.leave(e, 'passed on', 'passed on', format('it is %s (%s: %s)', m.tag, v_method, v_result));
    perform guard.measure(m, jsonb_build_object('length_nm', e.length_nm, 'doubt_nm', e.doubt_nm), format('found as %s (%s: %s)', e.tag, v_method, v_result));
    update piece set state = 'on rack', place_id = e.place_id where piece_id = m.piece_id;
    perform guard.hand_on_zones(e.piece_id, m.piece_id, e.made_length_nm - e.length_nm, e.made_length_nm);
    v_tag := m.tag;
  else
    if p ? 'lot' then
      v_lot := guard.lot(p -> 'lot' ->> 'mill', guard.said(p -> 'lot', 'heat', 'the heat as read'), 'metal', p -> 'lot' ->> 'grade', p -> 'lot' -> 'section',
        p -> 'lot' ->> 'condition', 'awaited');
    elsif l.identity <> 'unknown' or v_method <> 'analysis' then
      raise exception using errcode = 'HK042', message = format('%s is %s: say which heat it is', e.tag, l.identity), hint = 'as_tag or lot, with a mark or custody';
    else
      insert into lot (section_id, grade_id, condition, identity, papers_state)
        values (l.section_id, guard.grade(guard.said(p, 'grade', 'the grade that the analysis shows')), l.condition, 'grade only', 'none') returning lot_id into v_lot;
    end if;
    v_tag := guard.pass_on(e, v_lot, e.owner_id, e.place_id, v_method || ': ' || v_result);
  end if;
  update piece set quarantine = null where piece_id = e.piece_id and quarantine is not null;
  return guard.end_deed(jsonb_build_object('tag', v_tag, 'was', e.tag, 'judge', session_user));
end $$;

-- {"tag","why","old_destroyed":bool,"scanned"? | "photo_id"?}: only with the piece in front of one: its tag scanned or its mark photographed.
create function api.reprint_label(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('reprint_label', p_request, p);
  e piece;
begin
  if v_again is not null then return v_again; end if;
  e := guard.piece_for_deed(guard.said(p, 'tag', 'the tag'));
  if guard.tag_form(coalesce(p ->> 'scanned', '')) <> e.tag
     and not exists (select from photo where photo_id = (p ->> 'photo_id')::bigint and piece_id = e.piece_id and kind in ('mark', 'label')) then
    raise exception using errcode = 'HK042', message = format('a label of %s is printed again only at the piece', e.tag),
      hint = 'scan its tag, or photograph its mark (heatkeep piece photo) and give the photo''s number';
  elsif (p ->> 'old_destroyed')::boolean is not true then
    raise exception using errcode = 'HK026', message = format('destroy the old label of %s first: two labels are two pieces', e.tag);
  elsif e.length_nm = 0 then
    raise exception using errcode = 'HK043', message = format('%s is %s: it needs no label', e.tag, e.state);
  end if;
  insert into piece_note (piece_id, kind, words, more) values (e.piece_id, 'label', guard.said(p, 'why', 'why the label is needed again'), p - 'tag');
  insert into label_job (piece_id, kind, why, asked_by) values (e.piece_id, 'again', p ->> 'why', session_user);
  return guard.end_deed(jsonb_build_object('tag', e.tag, 'reprints', (select count(*) from piece_note where piece_id = e.piece_id and kind = 'label')));
end $$;

-- {"tag","kind":"mark|label|defect|damage|signature|other","words"?,"file_base64"}: JPEG or PNG, kept byte for byte.
create function api.add_photo(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('add_photo', p_request, p);
  e piece;
  v_bytes bytea := decode(p ->> 'file_base64', 'base64');
  v_most bigint := guard.setting('photo_bytes', '8000000')::bigint;
  v_media text;
  v_sha text;
  v_id bigint;
begin
  if v_again is not null then return v_again; end if;
  e := guard.piece_for_deed(guard.said(p, 'tag', 'the tag'));
  v_media := case when substr(v_bytes, 1, 3) = decode('ffd8ff', 'hex') then 'image/jpeg' when substr(v_bytes, 1, 8) = decode('89504e470d0a1a0a', 'hex') then 'image/png' end;
  if v_media is null then
    raise exception using errcode = 'HK026', message = 'the file is no picture that can be kept', hint = 'JPEG or PNG, told by its first bytes';
  elsif length(v_bytes) > v_most then
    raise exception using errcode = 'HK026', message = format('the picture has %s bytes; at most %s are kept', length(v_bytes), v_most), hint = 'the limit is the setting photo_bytes of the shop';
  elsif coalesce(p ->> 'kind', '') not in ('mark', 'label', 'defect', 'damage', 'signature', 'other') then
    raise exception using errcode = 'HK026', message = format('"%s" is no kind of photo', p ->> 'kind'), hint = 'mark, label, defect, damage, signature or other';
  end if;
  v_sha := guard.keep_file(v_bytes);
  insert into photo (piece_id, kind, media, sha256, words) values (e.piece_id, p ->> 'kind', v_media, v_sha, p ->> 'words')
    returning photo_id into v_id;
  return guard.end_deed(jsonb_build_object('tag', e.tag, 'photo_id', v_id, 'sha256', v_sha));
end $$;

-- A kept file, byte for byte; null where the book has no such one.
create function api.file_bytes(p_sha256 text) returns bytea
language sql stable security definer set search_path = book, pg_catalog, pg_temp
return (select bytes from book.document_file where sha256 = lower(btrim(p_sha256)));

create view api.photos as
  select f.photo_id, p.tag, f.kind, f.media, length(d.bytes) as bytes, f.sha256, f.words
    from book.photo f join book.piece p using (piece_id) join book.document_file d using (sha256);
create view api.piece_notes as
  select p.tag, n.kind, n.words, n.more from book.piece_note n join book.piece p using (piece_id);
