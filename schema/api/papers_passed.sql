-- What a document must be to be filed, what its file is, and passing it on.

-- "application/pdf", "image/png", "image/jpeg", "image/tiff" by what is in the file; null: none of them.
create function guard.document_media(p_bytes bytea) returns text
language sql immutable
return case when substring(p_bytes from 1 for 5) = '\x255044462d' and position('\x2525454f46'::bytea in substring(p_bytes from greatest(length(p_bytes) - 1024, 1))) > 0 then 'application/pdf'
  when substring(p_bytes from 1 for 8) = '\x89504e470d0a1a0a' then 'image/png' when substring(p_bytes from 1 for 3) = '\xffd8ff' then 'image/jpeg'
  when substring(p_bytes from 1 for 4) in ('\x49492a00', '\x4d4d002a') then 'image/tiff' end;

-- EN 10204:2004: 2.1 has no results; 3.1 is validated by the maker's representative who is independent of production, 3.2 also
-- by the purchaser's or the official one (clauses 3 to 5). Names are asked for a 3.2, and for a 3.1 where the setting
-- validators_named is yes. The file: PDF, PNG, JPEG or TIFF, at most document_mb (20) MiB.
create function guard.document_stands(p jsonb) returns void
language plpgsql stable as $$
declare
  v_type text := p ->> 'type';
  v_bytes bytea := decode(p ->> 'file_base64', 'base64');
  v_most numeric := guard.setting('document_mb', '20')::numeric;
  v_for text[];
begin
  if v_bytes is not null and length(v_bytes) > v_most * 1048576 then
    raise exception using errcode = 'HK026', message = format('the file has %s bytes', length(v_bytes)), hint = format('expected at most %s MiB', v_most);
  elsif v_bytes is not null and guard.document_media(v_bytes) is null then
    raise exception using errcode = 'HK026', message = case when substring(v_bytes from 1 for 5) = decode('255044462d', 'hex') then 'the PDF is cut off: it has no end'
      else 'the file is none that a document can be' end, hint = 'expected a whole PDF, PNG, JPEG or TIFF file';
  end if;
  select coalesce(array_agg(v ->> 'for'), '{}') into v_for from jsonb_array_elements(coalesce(p -> 'validated_by', '[]')) v;
  if exists (select from jsonb_array_elements(coalesce(p -> 'validated_by', '[]')) v where coalesce(btrim(v ->> 'name'), '') = '' or coalesce(btrim(v ->> 'position'), '') = ''
      or coalesce(v ->> 'for', '') not in ('manufacturer', 'independent', 'purchaser', 'official')) then
    raise exception using errcode = 'HK026', message = 'who validated the document is not said whole',
      hint = 'expected name, position and for: manufacturer, independent (of production), purchaser or official';
  elsif v_type in ('3.1', '3.2') and not 'independent' = any (v_for) and (v_for <> '{}' or v_type = '3.2' or guard.setting('validators_named', 'no') = 'yes') then
    raise exception using errcode = 'HK042', message = format('a %s is validated by the manufacturer''s representative who is independent of production: none is named', v_type),
      hint = 'EN 10204:2004 clause 4; without that person it is no ' || v_type;
  elsif v_type = '3.2' and not (v_for && array['purchaser', 'official']) then
    raise exception using errcode = 'HK042', message = 'a 3.2 is validated by the purchaser''s representative or the official inspector as well: none is named',
      hint = 'EN 10204:2004 clause 4.2; with one validator it is no 3.2';
  elsif v_type = '2.1' and exists (select from jsonb_array_elements(p -> 'lots') n where coalesce(n -> 'heat_analysis', '{}') <> '{}'
      or coalesce(n -> 'product_analysis', '{}') <> '{}' or coalesce(n -> 'tests', '[]') <> '[]') then
    raise exception using errcode = 'HK042', message = 'a 2.1 states compliance only: it has no results', hint = 'results on other metal of the kind make it a 2.2 (EN 10204:2004 clause 3)';
  end if;
  if exists (select from jsonb_array_elements(p -> 'lots') n, jsonb_array_elements(coalesce(n -> 'tests', '[]')) t
      where coalesce(t ->> 'property', '') in ('Rm', 'Re', 'A') and t ->> 'unit' is distinct from case t ->> 'property' when 'A' then '%' else 'MPa' end
        or coalesce((t ->> 'value_milli')::numeric, -1) not between 0 and 100000000) then
    raise exception using errcode = 'HK026', message = 'a test value is out of range or in another unit', hint = 'expected Rm and Re in MPa, A in %; value_milli is a thousandth of it, 0 to 100 000 000';
  end if;
end $$;

-- The words that go with a document that is passed on with a shipment: what it is, which part of its metal left, by which rule.
-- A part of what an order asks for is said as such ("21 of 25"). Null where nothing of the shipment is of its metal.
create function guard.passed_words(d book.document, h book.shipment, p_rule text, p_form text, p_more text) returns text
language sql stable
return (select format('%s of %s no. %s version %s of %s, unaltered%s. Delivered under note %s: %s. %s', initcap(p_form), (d).type, (d).number, (d).version,
    (select name from book.party where party_id = (d).issuer_id), coalesce(' (file SHA-256 ' || (d).file_sha256 || ')', ''), (h).note, string_agg(x.words, '; ' order by x.words),
    case p_rule when 'EN 10204' then 'This part quantity stands in place of the quantity delivered first (EN 10204:2004 clause 6); the original can be seen on request.'
      else format('Nothing was changed or added; the new quantity and length stand in our additional document %s (ISO 10474:2013 clause 6).', p_more) end)
  from (
    select format('heat %s: %s pieces of %s mm (order %s line %s)', l.heat, case when count(*) < c.quantity then count(*) || ' of ' || c.quantity else count(*)::text end,
        trim_scale(s.length_nm / 1000000.0), c.order_no, c.line_no) as words
      from book.stroke s join book.shipment_line sl using (shipment_line_id) join book.cut_line c on c.cut_line_id = sl.cut_line_id join book.lot l using (lot_id)
      join book.document_lot n using (lot_id) where sl.shipment_id = (h).shipment_id and n.document_id = (d).document_id
      group by l.heat, s.length_nm, c.cut_line_id
    union all
    select format('heat %s: %s of %s mm, whole', l.heat, e.tag, trim_scale(o.length_nm / 1000000.0)) from book.metal_out o join book.piece e using (piece_id)
      join book.lot l on l.lot_id = o.lot_id join book.document_lot n on n.lot_id = o.lot_id where o.shipment_id = (h).shipment_id and n.document_id = (d).document_id) x
  having count(*) > 0);

-- {"issuer","number","note","rule":"EN 10204|ISO 10474","form":"original|copy","additional"?}: an accepted document goes with
-- a shipment, unaltered. EN 10204:2004 clause 6: on a copy the part quantity may stand for the first one; ISO 10474:2013
-- clause 6: nothing is changed, an additional document of ours says the new quantity and length. The answer has the words
-- to be printed.
create function api.pass_on_document(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('pass_on_document', p_request, p);
  d document;
  h shipment;
  v_rule text;
  v_form text;
  v_more text := nullif(btrim(p ->> 'additional'), '');
  v_words text;
begin
  if v_again is not null then return v_again; end if;
  v_rule := guard.said(p, 'rule', 'EN 10204 or ISO 10474');
  v_form := guard.said(p, 'form', 'original or copy');
  if v_rule not in ('EN 10204', 'ISO 10474') or v_form not in ('original', 'copy') then
    raise exception using errcode = 'HK026', message = format('a document is not passed on as "%s" by "%s"', v_form, v_rule), hint = 'expected original or copy, EN 10204 or ISO 10474';
  end if;
  perform guard.lock_rows('document', array(select document_id from document where issuer_id = guard.party(p ->> 'issuer') and number = p ->> 'number'));
  select * into d from document where issuer_id = guard.party(p ->> 'issuer') and number = p ->> 'number' order by version desc limit 1;
  select * into h from shipment where note = guard.said(p, 'note', 'our delivery note');
  if d.document_id is null or h.shipment_id is null then
    raise exception using errcode = 'HK026', message = case when h.shipment_id is null then format('no shipment has the note %s', p ->> 'note')
      else format('no document %s of %s is filed', p ->> 'number', p ->> 'issuer') end, hint = '`heatkeep papers list` names the documents';
  elsif d.accepted_by is null then
    raise exception using errcode = 'HK043', message = format('document %s is not accepted yet', d.number), hint = 'quality accepts it first';
  elsif v_form = 'copy' and d.file_sha256 is null then
    raise exception using errcode = 'HK043', message = format('of document %s only typed values are here: a copy is of its file', d.number), hint = 'file the document itself, or pass on the original';
  elsif v_rule = 'ISO 10474' and v_more is null then
    raise exception using errcode = 'HK026', message = 'the quantity and the length are changed: ISO 10474 clause 6 asks for an additional document', hint = 'expected additional: its number';
  end if;
  v_words := guard.passed_words(d, h, v_rule, v_form, v_more);
  if v_words is null then
    raise exception using errcode = 'HK042', message = format('nothing of shipment %s is of a heat that document %s is about', h.note, d.number),
      hint = 'a document goes only with the metal it is about';
  end if;
  insert into document_passed (document_id, shipment_id, rule, form, additional, words, passed_by) values (d.document_id, h.shipment_id, v_rule, v_form, v_more, v_words, session_user);
  return guard.end_deed(jsonb_build_object('number', d.number, 'words', v_words));
end $$;

create view api.documents_passed as
  select i.name as issuer, d.number, d.version, h.note, c.name as customer, p.rule, p.form, p.additional, p.words, p.passed_by
    from book.document_passed p join book.document d using (document_id) join book.party i on i.party_id = d.issuer_id
    join book.shipment h using (shipment_id) left join book.party c on c.party_id = h.customer_id;

-- A line a value of a document: which lot, analysis or test, and in which unit (analysis: 0.000 001 %; tests: a thousandth of it).
-- Nothing is edited: a later analysis is a later document's. Valid is what the last document that stands says of the lot, by the day of issue.
create view api.document_values as
  select i.name as issuer, d.number, d.version, d.type::text, d.accepted_by, d.validated_by, d.file_sha256, l.heat, g.designation as grade, x.label as section, guard.size_nm(x.section_id) as size_nm,
      l.condition, v.kind, v.what, v.value, v.unit, d.issued_on,
      guard.stands(d.document_id) and not exists (select from book.document_lot m join book.document o using (document_id)
        where m.lot_id = n.lot_id and (o.issued_on, o.document_id) > (d.issued_on, d.document_id) and guard.stands(o.document_id)
          and (exists (select from book.analysis a where a.document_lot_id = m.document_lot_id and a.kind::text = v.kind and a.element = v.what)
            or exists (select from book.mechanical_test t where t.document_lot_id = m.document_lot_id and v.kind = 'test' and t.property = v.what))) as valid
    from book.document d join book.party i on i.party_id = d.issuer_id join book.document_lot n using (document_id) join book.lot l using (lot_id)
    left join book.grade g using (grade_id) join book.section x using (section_id)
    left join lateral (select a.kind::text, a.element as what, a.ppm_x100 as value, '%' as unit from book.analysis a where a.document_lot_id = n.document_lot_id
      union all select 'test', t.property, t.value_milli, t.unit from book.mechanical_test t where t.document_lot_id = n.document_lot_id) v on true;

-- A line a limited value of a document, and what it is judged as: limits and figures in millionths of the unit.
create view api.document_verdicts as
  select i.name as issuer, d.number, d.version, l.heat, g.designation as grade, x.label as section, l.condition, v.kind, v.what, v.value, v.unit, v.at_least, v.at_most, v.below, v.above,
      case v.verdict when 'not limited' then 'no limit known' else v.verdict end as verdict, v.source
    from book.document d join book.party i on i.party_id = d.issuer_id cross join lateral guard.verdicts(d.document_id) v
    join book.lot l using (lot_id) left join book.grade g using (grade_id) join book.section x using (section_id);
