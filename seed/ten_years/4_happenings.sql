-- The ten-year book, part 4: what happened to every row, as guard/chronicle.sql would have written it: first the row as it was made (its end, less
-- what later happenings set), then what each of them set. Numbers and chains come in part 5.
-- A deed's number is a digest of its name and what it was done to; ord keeps the order within a deed.
create unlogged table ten_years.happening (
  at timestamptz not null, ord smallint not null, chain text not null, chain_id bigint not null, deed text not null, tbl text not null, row_id bigint not null,
  sets jsonb not null, who text not null, request_id uuid not null) partition by range (at);
do $$
declare
  v_parts integer := (select case when periods > 100 then 40 else 4 end from ten_years.size);
begin
  for i in 1 .. v_parts loop
    execute format('create unlogged table ten_years.happening_%s partition of ten_years.happening for values from (%s) to (%s)', i,
      case when i = 1 then 'minvalue' else quote_literal(timestamptz '2016-01-01 00:00+00' + (i - 1) * interval '3640 days' / v_parts) end,
      case when i = v_parts then 'maxvalue' else quote_literal(timestamptz '2016-01-01 00:00+00' + i * interval '3640 days' / v_parts) end);
  end loop;
end $$;
create function ten_years.request(p_deed text, p_key bigint) returns uuid
language sql immutable parallel safe
return md5(p_deed || ' ' || p_key)::uuid;

-- The shop, once.
do $$
declare
  t record;
begin
  for t in select * from guard.chronicled() where tbl in ('party', 'grade', 'grade_limit', 'mechanical_limit', 'product_deviation', 'section', 'site', 'place', 'saw', 'saw_band', 'saw_grip', 'cutting_rate', 'setting', 'price', 'keep_rule') loop
    execute format('insert into ten_years.happening select %s, 0, %L, t.%I, %L, %L, t.%I, jsonb_strip_nulls(to_jsonb(t)), %L, ten_years.request(%L, %s) from book.%I t %s order by t.%I',
      case when t.tbl = 'saw_band' then 'fitted_from' when t.tbl = 'price' then 'valid_from' else 'ten_years.at(0) - interval ''1 day''' end, t.chain, t.chain_column, case t.tbl when 'saw_band' then 'fit_band' when 'price' then 'set_rules' else 'define_shop' end, t.tbl, t.key_column,
      case t.tbl when 'saw_band' then 'piet' else 'osk' end, case t.tbl when 'saw_band' then 'fit_band' when 'price' then 'set_rules' else 'define_shop' end,
      case t.tbl when 'saw_band' then 'saw_band_id' when 'price' then 'extract(year from valid_from)::bigint' else '0' end, t.tbl, case t.tbl when 'party' then 'where party_id <> 0' else '' end, t.key_column);
  end loop;
end $$;

-- Received, labelled, put away; papers filed and accepted.
create temp table lot_came as select distinct on (lot_id) lot_id, receipt_id, at from ten_years.delivery order by lot_id, at;
insert into ten_years.happening
  select at, 0, 'receipt', t.receipt_id, 'receive_delivery', 'receipt', t.receipt_id, jsonb_strip_nulls(to_jsonb(t)), 'mara', ten_years.request('receive_delivery', t.receipt_id)
    from book.receipt t join (select distinct receipt_id, at from ten_years.delivery) d using (receipt_id)
  union all select at, 1, 'lot', t.lot_id, 'receive_delivery', 'lot', t.lot_id, jsonb_strip_nulls(to_jsonb(t) - 'chase_on' || '{"papers": "none", "papers_state": "awaited"}'), 'mara', ten_years.request('receive_delivery', receipt_id)
    from book.lot t join lot_came using (lot_id)
  union all select at, 2, 'lot', t.lot_id, 'receive_delivery', 'heat_reading', t.heat_reading_id, jsonb_strip_nulls(to_jsonb(t)), 'mara', ten_years.request('receive_delivery', d.receipt_id)
    from book.heat_reading t join ten_years.delivery d on d.receipt_line_id = t.heat_reading_id
  union all select at, 3, 'receipt', t.receipt_id, 'receive_delivery', 'receipt_line', t.receipt_line_id, jsonb_strip_nulls(to_jsonb(t)), 'mara', ten_years.request('receive_delivery', t.receipt_id)
    from book.receipt_line t join ten_years.delivery using (receipt_line_id)
  union all select at, 4, 'lot', t.lot_id, 'receive_delivery', 'lot', t.lot_id, jsonb_build_object('chase_on', t.chase_on), 'mara', ten_years.request('receive_delivery', receipt_id) from book.lot t join lot_came using (lot_id);
insert into ten_years.happening
  select at + interval '20 hours', 0, 'document', t.document_id, 'file_document', 'document', t.document_id, jsonb_strip_nulls(to_jsonb(t) - 'accepted_by'), 'ines', ten_years.request('file_document', lot_id)
    from book.document t join lot_came on lot_id = document_id
  union all select at + interval '20 hours', 1, 'document', t.document_id, 'file_document', 'document_lot', t.document_lot_id, jsonb_strip_nulls(to_jsonb(t)), 'ines', ten_years.request('file_document', t.lot_id)
    from book.document_lot t join lot_came using (lot_id)
  union all select at + interval '20 hours', 2 + analysis_id % 6, 'document_lot', t.document_lot_id, 'file_document', 'analysis', t.analysis_id, jsonb_strip_nulls(to_jsonb(t)), 'ines', ten_years.request('file_document', lot_id)
    from book.analysis t join lot_came on lot_id = document_lot_id
  union all select at + interval '20 hours', 8 + mechanical_test_id % 3, 'document_lot', t.document_lot_id, 'file_document', 'mechanical_test', t.mechanical_test_id, jsonb_strip_nulls(to_jsonb(t)), 'ines', ten_years.request('file_document', lot_id)
    from book.mechanical_test t join lot_came on lot_id = document_lot_id
  union all select at + interval '21 hours', 0, 'document', lot_id, 'accept_document', 'document', lot_id, '{"accepted_by": "ines"}', 'ines', ten_years.request('accept_document', lot_id) from lot_came
  union all select at + interval '21 hours', 1, 'lot', lot_id, 'accept_document', 'lot', lot_id, '{"papers": "3.1", "papers_state": "here"}', 'ines', ten_years.request('accept_document', lot_id) from lot_came;
insert into ten_years.happening
  select p.made_at, 4 + 2 * level, 'piece', t.piece_id, case level when 0 then 'receive_delivery' else 'record_cut' end, 'piece', t.piece_id,
      jsonb_strip_nulls(to_jsonb(t) || jsonb_build_object('length_nm', t.made_length_nm, 'state', 'on rack', 'version', 1, 'place_id', case level when 0 then 241 else rack_id end)),
      case level when 0 then 'mara' else 'piet' end, case level when 0 then ten_years.request('receive_delivery', d.receipt_id) else ten_years.request('record_cut', t.parent_id) end
    from book.piece t join ten_years.piece p using (piece_id) join ten_years.delivery d using (line_no);
insert into ten_years.happening
  select p.made_at, 5 + 2 * level, 'piece', t.piece_id, case level when 0 then 'receive_delivery' else 'record_cut' end, 'label_job', t.label_job_id,
      jsonb_strip_nulls(to_jsonb(t) - 'printer' - 'printed_at' || '{"state": "waiting"}'),
      case level when 0 then 'mara' else 'piet' end, case level when 0 then ten_years.request('receive_delivery', d.receipt_id) else ten_years.request('record_cut', e.parent_id) end
    from book.label_job t join ten_years.piece p using (piece_id) join ten_years.delivery d using (line_no) join book.piece e using (piece_id);
insert into ten_years.happening
  select t.printed_at, 0, 'piece', t.piece_id, 'label_printed', 'label_job', t.label_job_id, jsonb_build_object('state', 'printed', 'printer', 'L1', 'printed_at', t.printed_at),
      t.asked_by, ten_years.request('label_printed', case level when 0 then d.receipt_id else -t.piece_id end)
    from book.label_job t join ten_years.piece p using (piece_id) join ten_years.delivery d using (line_no);
insert into ten_years.happening
  select made_at + interval '2 hours' + piece_id % 3600 * interval '2 seconds', 0, 'piece', piece_id, 'put_away', 'piece', piece_id, jsonb_build_object('place_id', rack_id, 'version', 2), 'mara', ten_years.request('put_away', piece_id)
    from ten_years.piece where level = 0;

-- Orders, plans, promises.
insert into ten_years.happening
  select distinct n.at, 0, 'cut_list', t.cut_list_id, 'add_cut_list', 'cut_list', t.cut_list_id, jsonb_strip_nulls(to_jsonb(t)), 'jonas', ten_years.request('add_cut_list', t.cut_list_id)
    from book.cut_list t join ten_years.line n using (cut_list_id);
insert into ten_years.happening
  select n.at, n.line_no, 'cut_list', t.cut_list_id, 'add_cut_list', 'cut_line', t.cut_line_id, jsonb_strip_nulls(to_jsonb(t)), 'jonas', ten_years.request('add_cut_list', t.cut_list_id)
    from book.cut_line t join ten_years.line n using (cut_line_id);
insert into ten_years.happening
  select n.at, 0, 'plan', plan_id, 'commit_plan', 'plan', plan_id, jsonb_strip_nulls(to_jsonb(t) || '{"state": "live"}'), 'jonas', ten_years.request('commit_plan', plan_id) from book.plan t join ten_years.plan n using (plan_id)
  union all select n.at, 10 * layout_no, 'plan', t.plan_id, 'commit_plan', 'layout', layout_id, jsonb_strip_nulls(to_jsonb(t) || '{"state": "promised"}'), 'jonas', ten_years.request('commit_plan', t.plan_id) from book.layout t join ten_years.plan n using (plan_id)
  union all select n.at, 10 * layout_no + t.seq, 'layout', layout_id, 'commit_plan', 'layout_cut', layout_cut_id, jsonb_strip_nulls(to_jsonb(t)), 'jonas', ten_years.request('commit_plan', plan_id) from book.layout_cut t join ten_years.layout n using (layout_id)
  union all select n.at, 10 * layout_no + 5, 'piece', t.piece_id, 'commit_plan', 'promise', promise_id, jsonb_strip_nulls(to_jsonb(t) || '{"state": "live"}'), 'jonas', ten_years.request('commit_plan', plan_id) from book.promise t join ten_years.layout n using (layout_id);

-- Pulled and cut.
insert into ten_years.happening
  select used_at - interval '10 minutes', 0, 'piece', piece_id, 'pull', 'piece', piece_id, jsonb_build_object('state', 'at saw', 'place_id', 241 + saw_id, 'version', 2 + (level = 0)::integer), 'piet', ten_years.request('pull', piece_id) from ten_years.layout where was_cut
  union all select used_at - interval '10 minutes', 1, 'plan', plan_id, 'pull', 'layout', layout_id, '{"state": "at saw"}', 'piet', ten_years.request('pull', piece_id) from ten_years.layout where was_cut
  union all select used_at + interval '5 milliseconds', 2, 'piece', piece_id, 'record_cut', 'promise', layout_id, '{"state": "kept"}', 'piet', ten_years.request('record_cut', piece_id) from ten_years.layout where was_cut
  union all select used_at + interval '5 milliseconds', 3, 'plan', plan_id, 'record_cut', 'layout', layout_id, '{"state": "done"}', 'piet', ten_years.request('record_cut', piece_id) from ten_years.layout where was_cut
  union all select used_at + interval '5 milliseconds', 4, 'plan', plan_id, 'record_cut', 'plan', plan_id, '{"state": "done"}', 'piet', ten_years.request('record_cut', piece_id) from ten_years.layout join (select plan_id, last_at as used_at from ten_years.plan) n using (plan_id, used_at) where was_cut;
insert into ten_years.happening
  select n.used_at, 0, 'piece', t.piece_id, 'record_cut', 'cut', cut_id, jsonb_strip_nulls(to_jsonb(t) - 'rest_nm' || '{"closed": false}'), 'piet', ten_years.request('record_cut', t.piece_id) from book.cut t join ten_years.cut n using (cut_id)
  union all select used_at + interval '5 milliseconds', 1, 'piece', piece_id, 'record_cut', 'cut', cut_id, '{"closed": true, "rest_nm": 0}', 'piet', ten_years.request('record_cut', piece_id) from ten_years.cut
  union all select used_at + interval '5 milliseconds', 0, 'piece', piece_id, 'record_cut', 'piece', piece_id, jsonb_build_object('length_nm', 0, 'state', 'cut up', 'place_id', null, 'version', t.version), 'piet', ten_years.request('record_cut', piece_id)
    from book.piece t join ten_years.cut n using (piece_id);
insert into ten_years.happening
  select n.used_at + interval '1 millisecond', t.seq, 'piece', t.piece_id, 'record_cut', 'stroke', stroke_id, jsonb_strip_nulls(to_jsonb(t) - 'shipment_line_id'), 'piet', ten_years.request('record_cut', t.piece_id) from book.stroke t join ten_years.stroke n using (stroke_id);

-- Left: as scrap, sold, shipped.
insert into ten_years.happening
  select n.used_at + interval '3 milliseconds', (t.piece_id % 10000)::smallint, 'piece', t.piece_id, case when t.cut_id is not null then 'record_cut' when t.class = 'sold' then 'sell' else 'scrap_piece' end, 'metal_out', metal_out_id,
      jsonb_strip_nulls(to_jsonb(t)), case t.class when 'sold' then 'mara' else 'piet' end,
      case when t.cut_id is not null then ten_years.request('record_cut', t.piece_id) when t.class = 'sold' then ten_years.request('sell', t.shipment_id) else ten_years.request('scrap_piece', t.piece_id) end
    from book.metal_out t join ten_years.piece n using (piece_id)
  union all select n.used_at + interval '4 milliseconds', (n.piece_id % 10000)::smallint, 'piece', t.piece_id, case fate when 'sold' then 'sell' else 'scrap_piece' end, 'piece', t.piece_id,
      jsonb_build_object('length_nm', 0, 'state', t.state, 'place_id', null, 'version', t.version), case fate when 'sold' then 'mara' else 'piet' end,
      case fate when 'sold' then ten_years.request('sell', o.shipment_id) else ten_years.request('scrap_piece', t.piece_id) end
    from book.piece t join ten_years.piece n using (piece_id) join book.metal_out o on o.piece_id = t.piece_id where n.used_at is not null and not n.was_cut
  union all select n.at, 0, 'shipment', shipment_id, case n.kind when 'sold' then 'sell' else 'ship' end, 'shipment', shipment_id, jsonb_strip_nulls(to_jsonb(t)), 'mara', ten_years.request(case n.kind when 'sold' then 'sell' else 'ship' end, shipment_id)
    from book.shipment t join ten_years.shipment n using (shipment_id)
  union all select n.at + interval '1 millisecond', (t.shipment_line_id % 10000)::smallint, 'shipment', t.shipment_id, 'ship', 'shipment_line', shipment_line_id, jsonb_strip_nulls(to_jsonb(t)), 'mara', ten_years.request('ship', t.shipment_id)
    from book.shipment_line t join ten_years.shipment n using (shipment_id)
  union all select n.at + interval '2 milliseconds', (t.stroke_id % 10000)::smallint, 'piece', t.piece_id, 'ship', 'stroke', stroke_id, jsonb_build_object('shipment_line_id', t.shipment_line_id), 'mara', ten_years.request('ship', n.shipment_id)
    from book.stroke t join book.shipment_line l using (shipment_line_id) join ten_years.shipment n using (shipment_id);

-- Held for part of a night; the last ones since then.
create temp table held as
  select h.hold_id, max(d.period) as period from book.hold h join book.lot l using (heat, mill_id) join ten_years.delivery d on d.lot_id = l.lot_id group by 1;
insert into ten_years.happening
  select ten_years.at(period + 1) - interval '7 hours', (hold_id)::smallint, 'hold', hold_id, 'place_hold', 'hold', hold_id, jsonb_strip_nulls(to_jsonb(t) - 'lifted_by' - 'lifting_words'), 'ines', ten_years.request('place_hold', hold_id)
    from book.hold t join held using (hold_id)
  union all select ten_years.at(period + 1) - interval '6 hours 30 minutes', (hold_id)::smallint, 'hold', hold_id, 'lift_hold', 'hold', hold_id, jsonb_build_object('lifted_by', lifted_by, 'lifting_words', lifting_words), 'ines', ten_years.request('lift_hold', hold_id)
    from book.hold t join held using (hold_id) where lifted_by is not null;
