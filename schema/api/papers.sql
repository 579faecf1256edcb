-- Inspection documents (EN 10204:2004). A document belongs to lots: issuer + heat + section + condition.

-- {"issuer","number","type","issued_on","lots":[{"heat","section":{},"condition","grade","heat_analysis":{element: units
-- of 0.000001 %},"tests":[{"property","value_milli","unit"}]}],"file_base64"?}. Heat, section, condition and grade must
-- agree with the lot. Once it is accepted its lots are free to be used.
create function api.file_document(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('file_document', p_request, p);
  v_issuer bigint;
  v_doc document;
  v_lot lot;
  v_doc_lot bigint;
  v_bytes bytea := decode(p ->> 'file_base64', 'base64');
  v_sha text;
  n jsonb;
  v_free integer := 0;
begin
  if v_again is not null then return v_again; end if;
  v_issuer := guard.party(p ->> 'issuer');
  if v_bytes is not null then
    v_sha := encode(sha256(v_bytes), 'hex');
    insert into document_file (sha256, bytes) values (v_sha, v_bytes) on conflict do nothing;
  end if;
  if exists (select from document where issuer_id = v_issuer and number = p ->> 'number') then
    raise exception using errcode = 'HK041', message = format('document %s of %s is already filed', p ->> 'number', p ->> 'issuer');
  end if;
  insert into document (issuer_id, number, type, issued_on, file_sha256, accepted_by)
    values (v_issuer, p ->> 'number', (p ->> 'type')::papers, (p ->> 'issued_on')::date, v_sha, session_user) returning * into v_doc;
  for n in select * from jsonb_array_elements(p -> 'lots') loop
    select * into v_lot from lot where mill_id = v_issuer and heat = n ->> 'heat' and section_id = guard.section(n -> 'section')
      and condition = coalesce(btrim(n ->> 'condition'), '') for update;
    if v_lot.lot_id is null then
      raise exception using errcode = 'HK026', message = format('document %s names heat %s in %s (%s): there is no such lot of %s',
        p ->> 'number', n ->> 'heat', n -> 'section' ->> 'label', coalesce(n ->> 'condition', ''), p ->> 'issuer'),
        hint = 'the heat on the metal and on the paper must agree; if they do not, quarantine the metal';
    end if;
    if v_lot.grade_id <> guard.grade(n ->> 'grade') then
      raise exception using errcode = 'HK026', message = format('document %s says %s for heat %s, the metal was received as %s',
        p ->> 'number', n ->> 'grade', n ->> 'heat', (select designation from grade where grade_id = v_lot.grade_id));
    end if;
    insert into document_lot (document_id, lot_id) values (v_doc.document_id, v_lot.lot_id) returning document_lot_id into v_doc_lot;
    insert into analysis (document_lot_id, kind, element, ppm_x100)
      select v_doc_lot, 'heat', key, value::bigint from jsonb_each_text(coalesce(n -> 'heat_analysis', '{}'));
    insert into mechanical_test (document_lot_id, property, value_milli, unit)
      select v_doc_lot, t ->> 'property', (t ->> 'value_milli')::bigint, t ->> 'unit' from jsonb_array_elements(coalesce(n -> 'tests', '[]')) t;
    update lot set papers = greatest(papers, v_doc.type), papers_state = 'here' where lot_id = v_lot.lot_id;
    v_free := v_free + 1;
  end loop;
  return guard.end_deed(jsonb_build_object('document_id', v_doc.document_id, 'number', v_doc.number, 'lots', v_free));
end $$;

-- Quality allows cutting before the papers are here; nothing of it ships.
create function api.allow_at_risk(p_request uuid, p_mill text, p_heat text, p_reason text) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('allow_at_risk', p_request, jsonb_build_array(p_mill, p_heat, p_reason), null, null, p_reason);
  v_count integer;
begin
  if v_again is not null then return v_again; end if;
  update lot set at_risk_by = session_user where mill_id = guard.party(p_mill) and heat = p_heat and papers_state = 'awaited';
  get diagnostics v_count = row_count;
  if v_count = 0 then
    raise exception using errcode = 'HK026', message = format('no lot of heat %s of %s waits for papers', p_heat, p_mill);
  end if;
  return guard.end_deed(jsonb_build_object('lots', v_count));
end $$;

create view api.documents as
  select i.name as issuer, d.number, d.type::text, d.issued_on, d.version, d.accepted_by, d.file_sha256, l.heat,
      g.designation as grade, x.label as section, l.condition
    from book.document d join book.party i on i.party_id = d.issuer_id join book.document_lot using (document_id)
    join book.lot l using (lot_id) left join book.grade g using (grade_id) join book.section x using (section_id);

-- The document a lot's metal goes with, in words.
create function guard.document_words(p_lot bigint) returns text
language sql stable security definer set search_path = book, pg_catalog, pg_temp
return (select coalesce((select string_agg(d.type || ' no. ' || d.number, ', ' order by d.type desc, d.number)
      from book.document_lot n join book.document d using (document_id) where n.lot_id = l.lot_id),
    case l.papers_state when 'awaited' then 'papers awaited' else 'none' end) from book.lot l where l.lot_id = p_lot);
