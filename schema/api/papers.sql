-- Inspection documents (EN 10204:2004). A document belongs to lots: issuer + heat + section + condition.

-- Whether this document still stands: accepted, and no corrected version of it is.
create function guard.stands(p_document bigint) returns boolean
language plpgsql stable security definer set search_path = book, pg_catalog, pg_temp as $$
begin
  return exists (select from guard.standing_document where document_id = p_document);
end $$;

-- The newest version of a document, locked for a deed.
create function guard.document_for_deed(p_issuer text, p_number text) returns book.document
language plpgsql volatile as $$
declare
  d document;
begin
  perform guard.lock_rows('document', array(select document_id from document where issuer_id = guard.party(p_issuer) and number = p_number));
  select * into d from document where issuer_id = guard.party(p_issuer) and number = p_number order by version desc limit 1;
  if d.document_id is null then
    raise exception using errcode = 'HK026', message = format('no document %s of %s is filed', p_number, p_issuer), hint = '`heatkeep certificate add` files the first';
  end if;
  return d;
end $$;

-- The bytes of a file, kept once; answers their SHA-256 in hex.
create function guard.keep_file(p_bytes bytea) returns text
language plpgsql volatile as $$
declare
  v_sha text := encode(sha256(p_bytes), 'hex');
begin
  insert into document_file (sha256, bytes) values (v_sha, p_bytes) on conflict do nothing;
  return v_sha;
end $$;

-- Papers of a lot as its documents say that stand.
create function guard.count_papers(p_lot bigint) returns void
language plpgsql volatile as $$
declare
  v_best papers;
  v_before papers;
begin
  select papers into v_before from lot where lot_id = p_lot;
  select max(d.type) into v_best from document_lot n join document d using (document_id) where n.lot_id = p_lot and guard.stands(d.document_id);
  update lot set papers = coalesce(v_best, 'none'), papers_state = (case when v_best is null then 'awaited' else 'here' end)::papers_state where lot_id = p_lot;
  -- what was promised for its papers is planned anew when they are weaker now, or, promised at risk, than what its line asks for
  if coalesce(v_best, 'none') < v_before then
    perform guard.drop_promise(piece_id, 'its papers are ' || coalesce(v_best::text, 'awaited') || ' now') from piece where lot_id = p_lot and length_nm > 0;
  elsif v_best is not null and v_before = 'none' then
    perform guard.drop_promise(e.piece_id, format('its papers are %s now', v_best)) from piece e join promise r on r.piece_id = e.piece_id and r.state = 'live'
      where e.lot_id = p_lot and exists (select from cut_line c where (c.cut_line_id = r.cut_line_id or c.cut_line_id in (select cut_line_id from layout_cut where layout_id = r.layout_id))
        and guard.piece_may_not_serve(e, c) is not null);
  end if;
end $$;

-- The document and what it says of its lots; heat, section, condition and grade must agree with the metal.
create function guard.file_document(p jsonb, p_version integer, p_replaces bigint) returns book.document
language plpgsql volatile as $$
declare
  v_issuer bigint := guard.party(p ->> 'issuer');
  v_doc document;
  v_lot lot;
  v_doc_lot bigint;
  v_bytes bytea := decode(p ->> 'file_base64', 'base64');
  v_sha text;
  n jsonb;
begin
  perform guard.document_stands(p);
  perform guard.lock_lots(array(select lot_id from lot where mill_id = v_issuer and heat in (select x ->> 'heat' from jsonb_array_elements(p -> 'lots') x)
    union select lot_id from document_lot where document_id = p_replaces), true);
  if v_bytes is not null then v_sha := guard.keep_file(v_bytes); end if;
  insert into document (issuer_id, number, type, issued_on, version, replaces_id, file_sha256, filed_by, reason, validated_by)
    values (v_issuer, p ->> 'number', (p ->> 'type')::papers, (p ->> 'issued_on')::date, p_version, p_replaces, v_sha, session_user, nullif(btrim(p ->> 'reason'), ''), p -> 'validated_by')
    returning * into v_doc;
  for n in select * from jsonb_array_elements(p -> 'lots') loop
    select * into v_lot from lot where mill_id = v_issuer and heat = n ->> 'heat' and section_id = guard.section(n -> 'section')
      and condition = coalesce(btrim(n ->> 'condition'), '');
    if v_lot.lot_id is null then
      raise exception using errcode = 'HK026', message = format('document %s names heat %s in %s (%s): there is no such lot of %s',
        p ->> 'number', n ->> 'heat', n -> 'section' ->> 'label', coalesce(n ->> 'condition', ''), p ->> 'issuer')
        || coalesce('; it looks like heat ' || guard.heats_like(n ->> 'heat'), ''),
        hint = 'the heat on the metal and on the paper must agree; if they do not, quarantine the metal';
    end if;
    if v_lot.grade_id <> guard.grade(n ->> 'grade') then
      raise exception using errcode = 'HK026', message = format('document %s says %s for heat %s, the metal was received as %s',
        p ->> 'number', n ->> 'grade', n ->> 'heat', (select designation from grade where grade_id = v_lot.grade_id));
    end if;
    insert into document_lot (document_id, lot_id) values (v_doc.document_id, v_lot.lot_id) returning document_lot_id into v_doc_lot;
    insert into analysis (document_lot_id, kind, element, ppm_x100)
      select v_doc_lot, k.kind, key, value::bigint from (values ('heat'::analysis_kind, n -> 'heat_analysis'), ('product', n -> 'product_analysis')) k (kind, said),
        jsonb_each_text(coalesce(k.said, '{}'));
    insert into mechanical_test (document_lot_id, property, value_milli, unit)
      select v_doc_lot, t ->> 'property', (t ->> 'value_milli')::bigint, t ->> 'unit' from jsonb_array_elements(coalesce(n -> 'tests', '[]')) t;
  end loop;
  return v_doc;
end $$;

-- Accepted: its lots are free to be used. Refused where its values are outside the grade's limits.
create function guard.accept(p_document bigint) returns bigint
language plpgsql volatile as $$
declare
  v_wrong text := guard.judge_document(p_document);
  v_lots bigint[] := array(select lot_id from document_lot where document_id = p_document
    union select n.lot_id from document_lot n join document d on d.replaces_id = n.document_id where d.document_id = p_document);
begin
  if v_wrong is not null then
    raise exception using errcode = 'HK042', message = format('the document is not accepted: %s', v_wrong),
      hint = 'nothing is released by it; ask its issuer, or hold the metal';
  end if;
  perform guard.lock_lots(v_lots, true);
  perform guard.lock_pieces(array(select piece_id from promise join piece using (piece_id) where lot_id = any (v_lots) and promise.state = 'live'), true);
  update document set accepted_by = session_user where document_id = p_document;
  perform guard.count_papers(n) from unnest(v_lots) n;
  return (select count(*) from document_lot where document_id = p_document);
end $$;

-- {"issuer","number","type","issued_on","lots":[{"heat","section":{},"condition","grade","heat_analysis":{element: units of
-- 0.000001 %},"product_analysis"?:{...},"tests":[{"property","value_milli","unit"}]}],"file_base64"?}: filed and accepted by quality
-- in one. "warning": tests that no limit is known of.
create function api.file_document(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('file_document', p_request, p, (p ->> 'true_at')::timestamptz, p ->> 'device');
  v_doc document;
begin
  if v_again is not null then return v_again; end if;
  perform guard.not_filed(p);
  v_doc := guard.file_document(p, 1, null);
  return guard.end_deed(jsonb_build_object('document_id', v_doc.document_id, 'number', v_doc.number, 'lots', guard.accept(v_doc.document_id),
    'warning', guard.unjudged_words(v_doc.document_id)));
end $$;

create function guard.not_filed(p jsonb) returns void
language plpgsql stable as $$
begin
  if exists (select from document where issuer_id = guard.party(p ->> 'issuer') and number = p ->> 'number') then
    raise exception using errcode = 'HK041', message = format('document %s of %s is already filed', p ->> 'number', p ->> 'issuer'),
      hint = 'a corrected one from its issuer is a new version, which takes the place of this one';
  end if;
end $$;

-- The same body, filed by the clerk: its lots wait until quality has accepted it.
create function api.file_papers(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('file_papers', p_request, p);
  v_doc document;
begin
  if v_again is not null then return v_again; end if;
  perform guard.not_filed(p);
  v_doc := guard.file_document(p, 1, null);
  return guard.end_deed(jsonb_build_object('document_id', v_doc.document_id, 'number', v_doc.number, 'accepted', false));
end $$;

-- {"issuer","number"}: quality has looked at it; one act frees all that waited for it. Where its values are outside the
-- grade's limits nothing is freed: its lots are held - once, however often it is tried - and the answer says {"refused","words","hold_id"}.
create function api.accept_document(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('accept_document', p_request, p);
  d document;
  h hold;
  v_wrong text;
begin
  if v_again is not null then return v_again; end if;
  perform guard.lock_rows('document', array(select document_id from document where issuer_id = guard.party(p ->> 'issuer') and number = p ->> 'number'));
  select * into d from document where issuer_id = guard.party(p ->> 'issuer') and number = p ->> 'number' order by version desc limit 1;
  if d.document_id is null or d.accepted_by is not null then
    raise exception using errcode = 'HK043', message = coalesce(format('document %s was accepted by %s already', d.number, d.accepted_by),
      format('no document %s of %s is filed', p ->> 'number', p ->> 'issuer')), hint = '`heatkeep papers list` names the documents';
  end if;
  v_wrong := guard.judge_document(d.document_id);
  if v_wrong is not null then
    h.document_id := d.document_id;
    perform guard.lock_lots(guard.held_lots(h), true);
    perform guard.lock_pieces(array(select piece_id from guard.held_pieces(h) n join piece using (piece_id) where length_nm > 0), true);
    select * into h from hold where document_id = d.document_id and reason = v_wrong and lifted_by is null order by hold_id limit 1;
    if h.hold_id is null then
      h.document_id := d.document_id;
      insert into hold (scope, document_id, reason, held_by) values ('certificate', d.document_id, v_wrong, session_user) returning * into h;
      perform guard.drop_promise(n.piece_id, 'held: ' || v_wrong) from guard.held_pieces(h) n join piece using (piece_id) where length_nm > 0;
    end if;
    v_wrong := format('the document is not accepted: %s; its metal is held by hold %s until that is lifted', v_wrong, h.hold_id);
    insert into refusal (who, deed, device, code, words) values (session_user, 'accept_document', guard.note('device'), 'HK042', v_wrong);
    return guard.end_deed(jsonb_build_object('refused', 'HK042', 'words', v_wrong, 'hold_id', h.hold_id));
  end if;
  return guard.end_deed(jsonb_build_object('number', d.number, 'lots', guard.accept(d.document_id), 'warning', guard.unjudged_words(d.document_id)));
end $$;

-- Quality allows cutting before the papers are here; nothing of it ships.
create function api.allow_at_risk(p_request uuid, p_mill text, p_heat text, p_reason text, p_true_at timestamptz default null,
                                  p_device text default null) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('allow_at_risk', p_request, jsonb_build_array(p_mill, p_heat, p_reason, guard.utc(p_true_at)), p_true_at, p_device, p_reason);
  v_count integer;
begin
  if v_again is not null then return v_again; end if;
  perform guard.lock_lots(array(select lot_id from lot where mill_id = guard.party(p_mill) and heat = p_heat), true);
  update lot set at_risk_by = session_user where mill_id = guard.party(p_mill) and heat = p_heat and papers_state = 'awaited';
  get diagnostics v_count = row_count;
  if v_count = 0 then
    raise exception using errcode = 'HK026', message = format('no lot of heat %s of %s waits for papers', p_heat, p_mill), hint = '`heatkeep papers awaited` names those that do';
  end if;
  return guard.end_deed(jsonb_build_object('lots', v_count));
end $$;

-- cut_before_accepted: good pieces cut from the lot before quality had accepted its document (cut at risk).
create view api.documents as
  select i.name as issuer, d.number, d.type::text, d.issued_on, d.version, d.accepted_by, d.file_sha256, d.filed_by, d.reason,
      exists (select from book.document o where o.replaces_id = d.document_id and o.accepted_by is not null) as replaced, l.heat,
      g.designation as grade, x.label as section, l.condition, r.at as accepted_at,
      (select count(*) from book.stroke s where s.lot_id = l.lot_id and s.class = 'good' and exists (select from book.happening h
        where h.tbl = 'stroke' and h.row_id = s.stroke_id and h.sets ? 'stroke_id' and h.true_at < r.at)) as cut_before_accepted
    from book.document d join book.party i on i.party_id = d.issuer_id join book.document_lot using (document_id)
    left join lateral (select min(h.true_at) as at from book.happening h where h.tbl = 'document' and h.row_id = d.document_id
      and h.sets ->> 'accepted_by' is not null) r on true
    join book.lot l using (lot_id) left join book.grade g using (grade_id) join book.section x using (section_id);
