-- The certificate package of an order or a delivery note: which metal, from which heat, under which documents; refused with
-- every reason that stands against it; and kept by the digest of the file that was made.

-- Cut pieces (n of the same) and whole pieces sold that a package is about: good pieces cut for the order, that left with the
-- note; both where both are named.
create function guard.package_metal(p_order text, p_note text)
  returns table (stroke_ids bigint[], piece_id bigint, lot_id bigint, cut_line_id bigint, shipment_id bigint, length_nm bigint, n bigint)
language sql stable rows 100 security definer set search_path = book, pg_catalog, pg_temp
begin atomic
  with cut as (
    select s.*, sl.shipment_id from book.cut_line c join book.stroke s using (cut_line_id) left join book.shipment_line sl using (shipment_line_id) left join book.shipment h using (shipment_id)
      where c.order_no = p_order and s.class = 'good' and (p_note is null or h.note = p_note)
    union all
    select s.*, sl.shipment_id from book.shipment h join book.shipment_line sl using (shipment_id) join book.stroke s using (shipment_line_id)
      where p_order is null and h.note = p_note and s.class = 'good')
  select array_agg(s.stroke_id), s.piece_id, s.lot_id, s.cut_line_id, s.shipment_id, s.length_nm, count(*) from cut s group by s.piece_id, s.lot_id, s.cut_line_id, s.shipment_id, s.length_nm
  union all
  select null, o.piece_id, o.lot_id, null, o.shipment_id, o.length_nm, 1 from book.metal_out o join book.shipment h using (shipment_id)
    where p_order is null and h.note = p_note and o.class = 'sold';
end;

-- The documents of these lots that stand.
create function guard.lot_documents(p_lots bigint[]) returns setof book.document
language sql stable
begin atomic
  select d.* from book.document d where guard.stands(d.document_id)
    and exists (select from book.document_lot n where n.document_id = d.document_id and n.lot_id = any (p_lots));
end;

-- Every reason against the package, in words.
create function guard.against_package(p_order text, p_note text, p_without_files boolean) returns table (words text)
language sql stable
begin atomic
  with metal as (select * from guard.package_metal(p_order, p_note)),
  paper as (select d.* from guard.lot_documents(array(select lot_id from metal)) d)
  select a.words from guard.against_leaving(array(select unnest(stroke_ids) from metal)) a
  union all
  select format('%s, sold whole: %s', e.tag, w.words) from metal m join book.piece e using (piece_id) join book.lot l on l.lot_id = m.lot_id
    cross join lateral (values (guard.hold_words(m.piece_id)), (guard.quarantine_words(m.piece_id)), (case when l.papers_state = 'awaited' then 'its papers are awaited' end)) w (words)
    where m.cut_line_id is null and w.words is not null
  union all
  select format('document %s of %s has version %s of %s, which is not accepted yet', o.number, i.name, o.version, o.issued_on)
    from paper d join book.document o on o.replaces_id = d.document_id join book.party i on i.party_id = o.issuer_id where o.accepted_by is null
  union all
  select format('of document %s of %s only typed values are here, not the document itself', d.number, i.name)
    from paper d join book.party i on i.party_id = d.issuer_id where d.file_sha256 is null and not p_without_files
  union all
  select 'no inspection document of this metal is filed and accepted' where not exists (select from paper)
  union all
  select format('it is of several customers: %s', string_agg(distinct coalesce(p.name, 'none named'), ', ')) from metal left join book.cut_line c using (cut_line_id)
    left join book.shipment h using (shipment_id) left join book.party p on p.party_id = coalesce(h.customer_id, c.customer_id)
    having count(distinct coalesce(p.party_id, 0)) > 1;
end;

-- A document as a package has it, with the words it is passed on with: those said before (by this rule, where one is asked for),
-- else those said now.
create function guard.packaged(d book.document, p_order text, p_note text, p_rule text, p_more text) returns jsonb
language sql stable
return (select jsonb_build_object('issuer', i.name, 'number', (d).number, 'version', (d).version, 'type', (d).type, 'issued_on', (d).issued_on, 'file_sha256', (d).file_sha256,
    'media', (select guard.document_media(bytes) from book.document_file where sha256 = (d).file_sha256),
    'heats', (select jsonb_agg(distinct l.heat) from book.document_lot n join book.lot l using (lot_id) where n.document_id = (d).document_id and l.lot_id in (select lot_id from guard.package_metal(p_order, p_note))),
    'passed', coalesce((select jsonb_agg(coalesce(
        (select jsonb_build_object('note', h.note, 'rule', p.rule, 'additional', p.additional, 'words', p.words) from book.document_passed p
          where p.document_id = (d).document_id and p.shipment_id = h.shipment_id and (p_rule is null or (p.rule, p.additional) is not distinct from (p_rule, p_more))
          order by p.document_passed_id desc limit 1),
        jsonb_build_object('note', h.note, 'rule', coalesce(p_rule, 'EN 10204'), 'additional', p_more,
          'words', guard.passed_words(d, h, coalesce(p_rule, 'EN 10204'), 'copy', p_more))) order by h.note)
      from book.shipment h where (d).file_sha256 is not null and h.shipment_id in (select m.shipment_id from guard.package_metal(p_order, p_note) m join book.document_lot n using (lot_id) where n.document_id = (d).document_id)), '[]'))
  from book.party i where i.party_id = (d).issuer_id);

-- {"order"?,"note"?,"shop"?: who delivers,"without_files"?:bool,"rule"?,"additional"?}: what a package of it says, and under "against" every reason
-- why it is not made. The same book answers the same: "as_of" is when the last of it happened, not now.
create function api.package_of(p jsonb) returns jsonb
language plpgsql stable security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_order text := nullif(btrim(p ->> 'order'), '');
  v_note text := nullif(btrim(p ->> 'note'), '');
  v_rule text := nullif(p ->> 'rule', '');
  v_more text := nullif(btrim(p ->> 'additional'), '');
  v_as_of timestamptz;
begin
  if v_order is null and v_note is null then
    raise exception using errcode = 'HK026', message = 'a package is of an order or of a delivery note', hint = 'expected order, note or both';
  elsif coalesce(v_rule, 'EN 10204') not in ('EN 10204', 'ISO 10474') or coalesce(v_rule = 'ISO 10474', false) <> (v_more is not null) then
    raise exception using errcode = 'HK026', message = format('documents are not passed on by "%s"%s an additional document', coalesce(v_rule, 'EN 10204'), case when v_more is null then ' without' else ' with' end),
      hint = 'expected EN 10204, or ISO 10474 with the number of our additional document (its clause 6)';
  elsif not exists (select from guard.package_metal(v_order, v_note)) then
    raise exception using errcode = 'HK026', message = format('nothing %s%s', case when v_order is null then 'left' else 'was cut for order ' || v_order end,
        case when v_note is null then '' when v_order is null then ' with note ' || v_note else ' and left with note ' || v_note end),
      hint = '`heatkeep cutlist list` and `heatkeep report trace order` say what was cut';
  end if;
  select greatest(max(h.shipped_at), max(n.at)) into v_as_of from guard.package_metal(v_order, v_note) m left join shipment h using (shipment_id)
    left join happening n on n.tbl = 'stroke' and n.row_id = any (m.stroke_ids);
  v_as_of := greatest(v_as_of, (select max(n.at) from guard.lot_documents(array(select lot_id from guard.package_metal(v_order, v_note))) d
    join happening n on n.tbl = 'document' and n.row_id = d.document_id));
  return jsonb_build_object('shop', coalesce(btrim(p ->> 'shop'), ''), 'order', v_order, 'note', v_note, 'without_files', coalesce((p ->> 'without_files')::boolean, false), 'as_of', to_char(v_as_of at time zone 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS"Z"'),
    'customer', (select string_agg(distinct c.name, ', ') from guard.package_metal(v_order, v_note) m left join shipment h using (shipment_id) left join cut_line l using (cut_line_id)
      join party c on c.party_id = coalesce(h.customer_id, l.customer_id)),
    'heats', case when v_note is null then api.order_heats(v_order) ->> 'statement' end,
    'against', (select coalesce(jsonb_agg(a.words), '[]') from guard.against_package(v_order, v_note, coalesce((p ->> 'without_files')::boolean, false)) a),
    'lines', (select jsonb_agg(to_jsonb(x) order by x."order", x.line, x.heat, x.section, x.length_nm, x.note) from (
      select c.order_no as "order", c.line_no as line, c.quantity as ordered, g.designation as grade, s.label as section, l.condition, m.length_nm, sum(m.n) as count, guard.mass_g((m.length_nm * sum(m.n))::bigint, s.area_um2, g.density_kg_m3) as mass_g, b.name as mill, l.heat,
          h.note, array_agg(distinct e.tag order by e.tag) as tags,
          (select coalesce(jsonb_agg(jsonb_build_object('issuer', i.name, 'number', d.number, 'type', d.type) order by i.name, d.number), '[]')
            from guard.lot_documents(array[l.lot_id]) d join party i on i.party_id = d.issuer_id) as documents
        from guard.package_metal(v_order, v_note) m join lot l using (lot_id) join piece e using (piece_id) join section s on s.section_id = l.section_id left join grade g on g.grade_id = l.grade_id
        left join party b on b.party_id = l.mill_id left join cut_line c using (cut_line_id) left join shipment h using (shipment_id)
        group by c.cut_line_id, g.designation, g.density_kg_m3, s.label, s.area_um2, l.lot_id, m.length_nm, b.name, h.note) x),
    'documents', (select coalesce(jsonb_agg(x.doc order by x.doc ->> 'issuer', x.doc ->> 'number'), '[]')
      from (select guard.packaged(d, v_order, v_note, v_rule, v_more) as doc from guard.lot_documents(array(select lot_id from guard.package_metal(v_order, v_note))) d) x));
end $$;

-- {...as package_of, "read": SHA-256 of its answer's text, "sha256","pages" of the file made from it}: nothing stands against
-- it and nothing changed since; its documents are passed on with the shipments they went with. The same file is kept once.
create function api.keep_package(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('keep_package', p_request, p);
  v_says jsonb;
  v_lots bigint[];
  k certificate_package;
begin
  if v_again is not null then return v_again; end if;
  v_lots := array(select lot_id from guard.package_metal(nullif(btrim(p ->> 'order'), ''), nullif(btrim(p ->> 'note'), '')));
  perform guard.lock_rows('document', array(select document_id from guard.lot_documents(v_lots)));
  perform guard.lock_lots(v_lots, true);
  v_says := api.package_of(p);
  if v_says -> 'against' <> '[]' then
    raise exception using errcode = 'HK040', message = format('no package: %s', (select string_agg(w, '; ') from jsonb_array_elements_text(v_says -> 'against') w));
  elsif encode(sha256(convert_to(v_says::text, 'UTF8')), 'hex') is distinct from p ->> 'read' then
    raise exception using errcode = 'HK409', message = 'what the package says changed since it was read', hint = 'make it again';
  end if;
  select * into k from certificate_package where sha256 = p ->> 'sha256' and contents = v_says limit 1;
  if k.certificate_package_id is not null then
    return guard.end_deed(jsonb_build_object('package', k.certificate_package_id, 'kept_before', true));
  end if;
  insert into document_passed (document_id, shipment_id, rule, form, additional, words, passed_by)
    select d.document_id, h.shipment_id, w ->> 'rule', 'copy', w ->> 'additional', w ->> 'words', session_user
      from jsonb_array_elements(v_says -> 'documents') n join document d on d.issuer_id = guard.party(n ->> 'issuer') and d.number = n ->> 'number' and d.version = (n ->> 'version')::integer,
        jsonb_array_elements(n -> 'passed') w join shipment h on h.note = w ->> 'note'
      where not exists (select from document_passed p where p.document_id = d.document_id and p.shipment_id = h.shipment_id and p.words = w ->> 'words');
  insert into certificate_package (order_no, shipment_id, customer_id, sha256, pages, without_files, contents, made_by)
    values (v_says ->> 'order', (select shipment_id from shipment where note = v_says ->> 'note'), (select party_id from party where name = v_says ->> 'customer'),
      p ->> 'sha256', (p ->> 'pages')::integer, (v_says ->> 'without_files')::boolean, v_says, session_user) returning * into k;
  return guard.end_deed(jsonb_build_object('package', k.certificate_package_id, 'kept_before', false));
end $$;

create view api.certificate_packages as
  select k.certificate_package_id as package, n.at as made_at, k.made_by, k.order_no, h.note, c.name as customer, k.pages, k.sha256, k.without_files,
      (select string_agg(distinct format('%s no. %s of %s, version %s', d ->> 'type', d ->> 'number', d ->> 'issuer', d ->> 'version'), '; ') from jsonb_array_elements(k.contents -> 'documents') d) as documents,
      (select string_agg(distinct l ->> 'heat', ', ') from jsonb_array_elements(k.contents -> 'lines') l) as heats, k.contents
    from book.certificate_package k left join book.shipment h using (shipment_id) left join book.party c on c.party_id = k.customer_id
    join book.happening n on n.tbl = 'certificate_package' and n.row_id = k.certificate_package_id and n.seq = 1;
