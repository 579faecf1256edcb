-- Defects found, and cuts that stopped half-way.

-- A zone of the piece as it is now, from the end that is cut first, kept from the end it had when it was made.
create function guard.mark_zone(e book.piece, p_from bigint, p_to bigint, p_kind text) returns void
language plpgsql volatile as $$
begin
  if p_from < 0 or p_to <= p_from or p_to > e.length_nm then
    raise exception using errcode = 'HK034', message = format('%s is %s mm long: a zone from %s to %s mm is not in it', e.tag, trim_scale(e.length_nm / 1e6::numeric),
      trim_scale(p_from / 1e6::numeric), trim_scale(p_to / 1e6::numeric)), hint = 'measure from the end that is cut first, or say which end';
  end if;
  insert into defect_zone (piece_id, from_nm, to_nm, kind)
    values (e.piece_id, e.made_length_nm - e.length_nm + p_from, e.made_length_nm - e.length_nm + p_to, p_kind);
end $$;

-- {"tag","kind","at_nm","to_nm","from_end"?: "first" (else "last"),"words"}: kind pipe, crack, seam, lap, bend, inclusion or other. The neighbours of its heat
-- are suspect: the answer names them, and none of them is pulled until the lead says cut on. Quality sees a conflict.
create function api.report_defect(p_request uuid, p jsonb, p_true_at timestamptz default null, p_device text default null) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('report_defect', p_request, p || jsonb_build_object('true_at', guard.utc(p_true_at)), p_true_at, p_device, p ->> 'words');
  e piece;
  v_end text := coalesce(p ->> 'from_end', 'first');
  v_at bigint := (p ->> 'at_nm')::bigint;
  v_to bigint := (p ->> 'to_nm')::bigint;
  v_report bigint;
begin
  if v_again is not null then return v_again; end if;
  if v_at is null or v_end not in ('first', 'last') or coalesce(btrim(p ->> 'words'), '') = ''
     or coalesce(p ->> 'kind', '') not in ('pipe', 'crack', 'seam', 'lap', 'bend', 'inclusion', 'other') then
    raise exception using errcode = 'HK026', message = 'a defect is told by its kind, where it is, from which end (first or last) and in words',
      hint = 'kind: pipe, crack, seam, lap, bend, inclusion or other';
  end if;
  e := guard.piece_of(p ->> 'tag');
  -- against pulls under way
  perform guard.lock_lots(array[e.lot_id], true);
  e := guard.piece_for_deed(e.tag);
  if v_to is not null then
    perform guard.mark_zone(e, case v_end when 'first' then v_at else e.length_nm - v_to end, case v_end when 'first' then v_to else e.length_nm - v_at end, p ->> 'kind');
  end if;
  insert into defect_report (piece_id, lot_id, kind, from_end, at_nm, words, reported_by)
    values (e.piece_id, e.lot_id, p ->> 'kind', v_end, v_at, p ->> 'words', session_user) returning defect_report_id into v_report;
  perform guard.raise_conflict('defect in the heat', e.piece_id, format('%s in %s at %s mm from the %s end: %s', p ->> 'kind', e.tag,
    trim_scale(v_at / 1e6::numeric), v_end, p ->> 'words'), v_report);
  return guard.end_deed(jsonb_build_object('report', v_report, 'tag', e.tag, 'suspect',
    (select coalesce(jsonb_agg(tag order by tag), '[]') from piece n where n.lot_id = e.lot_id and n.length_nm > 0 and n.piece_id <> e.piece_id)));
end $$;

-- The lead answers: "cut on" or "stop", in words. A stop stands until another answer says cut on; that closes the conflict of the report.
-- "open": what is still open of this heat, in words.
create function guard.open_of_defect(p_report bigint) returns text
language plpgsql stable as $$
begin
  return (select nullif(concat_ws('; ', guard.defect_words(d.lot_id),
    (select string_agg(format('conflict %s: %s', c.conflict_id, c.words), '; ' order by c.conflict_id) from book.conflict c left join book.piece e using (piece_id)
      where c.closed_by is null and (c.defect_report_id = d.defect_report_id or (c.kind = 'cut before the lead answered' and e.lot_id = d.lot_id)))), '')
  from book.defect_report d where d.defect_report_id = p_report);
end $$;

create function api.answer_defect(p_request uuid, p_report bigint, p_answer text, p_words text) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('answer_defect', p_request, jsonb_build_array(p_report, p_answer, p_words), null, null, p_words);
begin
  if v_again is not null then return v_again; end if;
  if p_answer not in ('cut on', 'stop') or coalesce(btrim(p_words), '') = '' then
    raise exception using errcode = 'HK026', message = 'the answer is cut on or stop, with the reason';
  end if;
  perform guard.lock_rows('conflict', array(select conflict_id from conflict where defect_report_id = p_report));
  perform guard.lock_pieces(array(select piece_id from defect_report where defect_report_id = p_report));
  update defect_report set answer = p_answer, answer_words = p_words, answered_by = session_user where defect_report_id = p_report and answer is distinct from 'cut on';
  if not found then
    raise exception using errcode = 'HK043', message = format('report %s does not wait for an answer', p_report), hint = '`heatkeep saw defects` names them';
  end if;
  update conflict set closed_by = session_user, closing_words = format('cut on: %s', p_words)
    where defect_report_id = p_report and closed_by is null and p_answer = 'cut on';
  return guard.end_deed(jsonb_build_object('report', p_report, 'answer', p_answer, 'open', guard.open_of_defect(p_report)));
end $$;

-- {"tag","saw","at_nm","kerf_nm","cause","words"}: cause "blade broke" or "bar slipped". The half cut lies at_nm from the end that is cut first and is as
-- wide as the kerf; nothing is planned across it, and the slice up to it is lost to facing anew (a crop, when it is cut).
create function api.report_half_cut(p_request uuid, p jsonb, p_true_at timestamptz default null, p_device text default null) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('report_half_cut', p_request, p || jsonb_build_object('true_at', guard.utc(p_true_at)), p_true_at, p_device, p ->> 'cause');
  e piece;
  v_at bigint := (p ->> 'at_nm')::bigint;
  v_kerf bigint := (p ->> 'kerf_nm')::bigint;
begin
  if v_again is not null then return v_again; end if;
  if coalesce(p ->> 'cause', '') not in ('blade broke', 'bar slipped') or v_at is null or coalesce(v_kerf, 0) <= 0 then
    raise exception using errcode = 'HK026', message = 'a half cut is told by its cause (blade broke or bar slipped), where it is and how wide';
  end if;
  e := guard.piece_for_deed(p ->> 'tag');
  perform guard.mark_zone(e, v_at, v_at + v_kerf, 'half cut');
  if e.state <> 'at saw' then
    perform guard.drop_promise(e.piece_id, p ->> 'cause');
  end if;
  return guard.end_deed(jsonb_build_object('tag', e.tag, 'crop_nm', v_at, 'kerf_nm', v_kerf, 'words',
    format('crop %s mm with a new face behind the half cut before the next piece%s', trim_scale((v_at + v_kerf) / 1e6::numeric),
      case p ->> 'cause' when 'blade broke' then format('; fit a band: power off and isolated, the coiled band springs open') else '; check the vice before you go on' end)));
end $$;

create view api.defects as
  select d.defect_report_id as report, e.tag, m.name as mill, l.heat, d.kind, d.from_end, d.at_nm, d.words, d.reported_by, d.answer, d.answer_words, d.answered_by
    from book.defect_report d join book.piece e using (piece_id) join book.lot l on l.lot_id = d.lot_id left join book.party m on m.party_id = l.mill_id;
create view api.defect_zones as
  select e.tag, z.kind, greatest(0, z.from_nm - (e.made_length_nm - e.length_nm)) as from_nm, z.to_nm - (e.made_length_nm - e.length_nm) as to_nm
    from book.defect_zone z join book.piece e using (piece_id) where e.length_nm > 0 and z.to_nm > e.made_length_nm - e.length_nm;
