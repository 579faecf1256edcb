-- Papers after the metal: chased by date, replaced by their issuer, and what waits for them.

-- {"issuer","number","reason",...as file_document}: the issuer's corrected version. Both are kept; the answer lists the
-- pieces and shipments that the old one went with, and the holds that still stop its metal.
create function api.replace_document(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('replace_document', p_request, p);
  d document;
  v_new document;
begin
  if v_again is not null then return v_again; end if;
  perform guard.said(p, 'reason', 'why the issuer replaced it');
  d := guard.document_for_deed(p ->> 'issuer', p ->> 'number');
  if d.type < '3.1' and p ->> 'type' in ('3.1', '3.2') then
    raise exception using errcode = 'HK042', message = format('document %s is a %s: it never becomes a %s', d.number, d.type, p ->> 'type'),
      hint = 'specific inspection is stated in a document of its own, with its own number (EN 10204:2004 clauses 3 and 4)';
  end if;
  v_new := guard.file_document(p, d.version + 1, d.document_id);
  perform guard.accept(v_new.document_id);
  return guard.end_deed(jsonb_build_object('number', d.number, 'version', v_new.version,
    'holds', (select coalesce(jsonb_agg(jsonb_build_object('hold_id', h.hold_id, 'reason', h.reason) order by h.hold_id), '[]') from hold h
      where h.hold_id in (select t.hold_id from guard.hold_target t join document_lot n using (lot_id) where n.document_id in (d.document_id, v_new.document_id))),
    'pieces', (select coalesce(jsonb_agg(e.tag order by e.tag), '[]') from piece e join document_lot using (lot_id) where document_id = d.document_id),
    'shipments', (select coalesce(jsonb_agg(distinct h.note), '[]') from document_lot n join stroke s using (lot_id)
      join shipment_line using (shipment_line_id) join shipment h using (shipment_id) where n.document_id = d.document_id),
    'sold', (select coalesce(jsonb_agg(distinct h.note), '[]') from document_lot n join metal_out o using (lot_id) join shipment h using (shipment_id)
      where n.document_id = d.document_id)));
end $$;

-- {"mill","heat","chase_on","words"}: asked for again on that day.
create function api.chase_papers(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('chase_papers', p_request, p);
  v_count integer;
begin
  if v_again is not null then return v_again; end if;
  perform guard.lock_lots(array(select lot_id from lot where mill_id = guard.party(p ->> 'mill') and heat = p ->> 'heat'), true);
  update lot set chase_on = guard.said(p, 'chase_on', 'the day it is asked for next')::date, chase_words = guard.said(p, 'words', 'who was asked, and what was answered')
    where mill_id = guard.party(p ->> 'mill') and heat = p ->> 'heat' and papers_state = 'awaited';
  get diagnostics v_count = row_count;
  if v_count = 0 then
    raise exception using errcode = 'HK026', message = format('no lot of heat %s of %s waits for papers', p ->> 'heat', p ->> 'mill'),
      hint = '`heatkeep papers awaited` names those that do';
  end if;
  return guard.end_deed(jsonb_build_object('lots', v_count, 'chase_on', p ->> 'chase_on'));
end $$;

-- What waits for a lot's papers: pieces here, cut pieces on site, and open order lines it is cut for.
create view api.waiting_for_papers as
  with waits as (select l.*, m.name as mill from book.lot l left join book.party m on m.party_id = l.mill_id where l.papers_state = 'awaited')
  select w.mill, w.heat, p.kind::text as what, p.tag as name, 1::bigint as count, p.length_nm from waits w join book.piece p using (lot_id) where p.length_nm > 0
  union all
  select w.mill, w.heat, 'cut piece', c.order_no || '/' || c.line_no, count(*), s.length_nm
    from waits w join book.stroke s using (lot_id) join book.cut_line c using (cut_line_id)
    where s.class = 'good' and s.shipment_line_id is null group by w.mill, w.heat, c.order_no, c.line_no, s.length_nm
  union all
  select w.mill, w.heat, 'order line', c.order_no || '/' || c.line_no, 1, null
    from waits w join book.cut_line c on not c.cancelled and exists (select from book.stroke s where s.lot_id = w.lot_id and s.cut_line_id = c.cut_line_id
      and s.class = 'good' and s.shipment_line_id is null);

-- The lots whose papers are awaited, the day they are to be asked for first. What was never here as it was booked waits for none.
create view api.papers_awaited as
  select l.chase_on, current_date - l.chase_on as days_late, m.name as mill, l.heat, g.designation as grade, x.label as section, l.condition, l.chase_words, l.at_risk_by,
      (select count(*) from book.piece p where p.lot_id = l.lot_id and p.length_nm > 0) as pieces,
      (select coalesce(sum(length_nm), 0)::bigint from book.piece p where p.lot_id = l.lot_id) as length_nm,
      (select string_agg(distinct format('note %s of %s', r.note, s.name), ', ') from book.receipt_line n join book.receipt r using (receipt_id)
        left join book.party s on s.party_id = r.supplier_id where n.lot_id = l.lot_id and r.kind = 'delivery' and r.reversed_by is null) as receipts
    from book.lot l left join book.party m on m.party_id = l.mill_id left join book.grade g using (grade_id) join book.section x using (section_id)
    where l.papers_state = 'awaited' and exists (select from book.piece p where p.lot_id = l.lot_id and p.state::text <> 'reversed');
