-- The ten-year book, part 3: the rows as they are at the end of the ten years.
insert into book.lot (lot_id, mill_id, heat, section_id, grade_id, condition, identity, papers, papers_state, chase_on) overriding system value
  select distinct on (lot_id) lot_id, mill_id, 'H' || 10000 + 7 * lot_id, section_id, grade_no, condition, 'heat', '3.1', 'here', at::date + 7 from ten_years.delivery order by lot_id, at;
insert into book.receipt (receipt_id, kind, supplier_id, note, received_at, received_by) overriding system value
  select distinct receipt_id, 'delivery'::book.receipt_kind, mill_id, 'N' || receipt_id, at, 'mara' from ten_years.delivery order by 1;
insert into book.receipt_line (receipt_line_id, receipt_id, line, lot_id, counted, slip_count, length_nm, theoretical_mass_g, cents_per_tonne, marked_grade) overriding system value
  select receipt_line_id, receipt_id, receipt_line_id::text, lot_id, n, n, bar_um * 1000, guard.mass_g(bar_um * 1000 * n, s.area_um2, g.density_kg_m3), 120000, g.designation
    from ten_years.delivery d join (select line_no, count(*)::integer as n from ten_years.piece where level = 0 group by 1) c using (line_no)
    join book.section s using (section_id) join book.grade g on g.grade_id = d.grade_no order by 1;
insert into book.heat_reading (heat_reading_id, lot_id, read_as, read_from, read_by) overriding system value
  select receipt_line_id, lot_id, heat, 'metal', 'mara' from book.receipt_line join book.lot using (lot_id) order by 1;
insert into book.document (document_id, issuer_id, number, type, issued_on, accepted_by, filed_by) overriding system value
  select lot_id, mill_id, 'C' || 50000 + lot_id, '3.1', chase_on - 9, 'ines', 'ines' from book.lot order by 1;
insert into book.document_lot (document_lot_id, document_id, lot_id) overriding system value select lot_id, lot_id, lot_id from book.lot order by 1;
insert into book.analysis (analysis_id, document_lot_id, kind, element, ppm_x100) overriding system value
  select 6 * lot_id + i, lot_id, 'heat', (array['C', 'Si', 'Mn', 'P', 'S', 'Cr'])[i + 1], 1000 + ten_years.dice(lot_id, 20 + i, 9000) from book.lot, generate_series(0, 5) i order by 1;
insert into book.mechanical_test (mechanical_test_id, document_lot_id, property, value_milli, unit) overriding system value
  select 3 * lot_id + i, lot_id, (array['Rm', 'Re', 'A'])[i + 1], (array[650000, 450000, 18000])[i + 1], (array['MPa', 'MPa', '%'])[i + 1] from book.lot, generate_series(0, 2) i order by 1;
insert into book.piece (piece_id, tag, kind, lot_id, parent_id, parent_made_length_nm, from_cut_id, path, receipt_line_id, made_length_nm, length_nm,
    doubt_nm, ends, mark_end, place_id, state, cents_per_tonne, version) overriding system value
  select p.piece_id, guard.tag_of('A', p.piece_id), (case p.level when 0 then 'bar' else 'drop' end)::book.piece_kind, d.lot_id, p.parent_id, p.parent_um * 1000, c.cut_id, p.path, d.receipt_line_id,
      p.made_um * 1000, case when used_at is null then p.made_um * 1000 else 0 end, case p.level when 0 then 0 else 1000000 end, least(p.level, 1),
      (case p.level when 0 then 'first' else 'none' end)::book.mark_end, case when used_at is null then rack_id end,
      (case when used_at is null then 'on rack' when was_cut then 'cut up' when fate = 'sold' then 'shipped' else 'scrapped' end)::book.piece_state,
      120000, 1 + (p.level = 0)::integer + (was_cut and fate = 'plan')::integer + (used_at is not null)::integer
    from (select piece.*, lag(piece_id) over chain as parent_id, lag(made_um) over chain as parent_um, array_agg(piece_id) over chain as path
      from ten_years.piece window chain as (partition by life / 8 order by level)) p
    join ten_years.delivery d using (line_no) left join (select piece_id as parent_id, cut_id from ten_years.cut) c using (parent_id) order by p.piece_id;
insert into book.label_job (label_job_id, piece_id, kind, why, asked_by, state, printer, printed_at) overriding system value
  select piece_id, piece_id, 'new', 'new tag', case level when 0 then 'mara' else 'piet' end, 'printed', 'L1',
      made_at + case level when 0 then interval '30 minutes' else interval '2 minutes' end from ten_years.piece order by 1;
insert into book.cut_list (cut_list_id, name, added_by) overriding system value
  select distinct cut_list_id, format('W%s-%s', lpad(period::text, 4, '0'), grp % 10), 'jonas' from ten_years.line order by 1;
insert into book.cut_line (cut_line_id, cut_list_id, order_no, line_no, customer_id, section_id, grade_id, condition, length_nm, tolerance_minus_nm, tolerance_plus_nm,
    quantity, due, papers, max_heats) overriding system value
  select cut_line_id, cut_list_id, format('W%s-%s', lpad(period::text, 4, '0'), grp % 10), line_no::text, customer_id, section_id, grade_no, condition, um * 1000, 0, 1000000,
      quantity, (ten_years.at(period) + interval '7 days')::date, (case when cut_line_id % 2 = 0 then '3.1' else 'none' end)::book.papers, case when cut_line_id % 20 = 0 then 60 end
    from ten_years.line join ten_years.grp using (grp) join ten_years.metal using (grade_no, condition) order by 1;
insert into book.plan (plan_id, state, aim, saw_id, kerf_nm, trim_nm, grip_nm, status, ended_by, proof, value, bound, made_by) overriding system value
  select plan_id, (case when period < periods then 'done' else 'live' end)::book.plan_state, 'least new metal', saw_id, kerf_um * 1000, 8000000, 50000000, 'optimal', 'proved', 'bound met',
      jsonb_build_array(layouts), jsonb_build_array(layouts), 'jonas' from ten_years.plan, ten_years.size order by 1;
insert into book.layout (layout_id, plan_id, layout_no, piece_id, place_id, state, length_nm, trim_nm, kerf_nm, left_nm, left_fate) overriding system value
  select layout_id, plan_id, layout_no, piece_id, rack_id, (case when was_cut then 'done' else 'promised' end)::book.layout_state, made_um * 1000, trim_um * 1000, kerf_um * 1000, rest_um * 1000,
      (case when rest_um = 0 then 'none' when rest_um >= 300000 then 'drop' else 'scrap' end)::book.left_fate from ten_years.layout order by 1;
insert into book.layout_cut (layout_cut_id, layout_id, seq, cut_line_id, count, length_nm) overriding system value
  select row_number() over (order by layout_id, part), layout_id, row_number() over (partition by layout_id order by part), cut_line_id, n, n_um * 1000 from (
    select l.layout_id, n.part, n.cut_line_id, case n.part when 'a' then l.a_count else l.b_count end as n, n.um as n_um
      from ten_years.layout l join ten_years.line n using (period, grp) where n.part = 'a' or (n.part = 'b' and l.b_count > 0)) x order by 1;
insert into book.promise (promise_id, piece_id, layout_id, words, promised_by, expires_at, state) overriding system value
  select layout_id, piece_id, layout_id, 'plan ' || plan_id, 'jonas', at + interval '876000 hours', (case when was_cut then 'kept' else 'live' end)::book.promise_state from ten_years.layout order by 1;
insert into book.cut (cut_id, piece_id, lot_id, owner_id, layout_id, saw_id, length_in_nm, rest_nm, closed) overriding system value
  select c.cut_id, c.piece_id, p.lot_id, 0, l.layout_id, c.saw_id, p.made_length_nm, 0, true from ten_years.cut c join book.piece p using (piece_id) left join ten_years.layout l using (piece_id) order by 1;
insert into book.shipment (shipment_id, note, customer_id, shipped_at, shipped_by) overriding system value select shipment_id, 'D' || shipment_id, customer_id, at, 'mara' from ten_years.shipment order by 1;
insert into book.shipment_line (shipment_line_id, shipment_id, cut_line_id) overriding system value
  select row_number() over (order by shipment_id, cut_line_id), shipment_id, cut_line_id from ten_years.shipment s join ten_years.line n using (period, cut_list_id, customer_id) where s.kind = 'order' and n.was_cut order by 1;
insert into book.stroke (stroke_id, cut_id, piece_id, lot_id, owner_id, seq, class, length_nm, kerf_nm, cut_line_id, shipment_line_id, saw_band_id) overriding system value
  select s.stroke_id, s.cut_id, s.piece_id, d.lot_id, 0, s.seq, s.class::book.stroke_class, s.um * 1000, s.kerf_um * 1000, s.cut_line_id, l.shipment_line_id, 4 * (s.period / 2) + s.saw_id
    from ten_years.stroke s join ten_years.delivery d using (line_no) left join book.shipment_line l using (cut_line_id) order by 1;
insert into book.metal_out (metal_out_id, piece_id, lot_id, owner_id, cut_id, class, length_nm, reason, named, shipment_id) overriding system value
  select row_number() over (order by used_at, piece_id), piece_id, lot_id, 0, cut_id, class::book.out_class, um * 1000, reason, named, shipment_id from (
    select p.used_at, p.piece_id, d.lot_id, c.cut_id, 'scrap' as class, p.rest_um as um, null as reason, null as named, null::bigint as shipment_id
      from ten_years.piece p join ten_years.delivery d using (line_no) join ten_years.cut c using (piece_id) where p.rest_um > 0 and not p.has_drop
    union all select p.used_at, p.piece_id, d.lot_id, null, p.fate, p.made_um, case p.fate when 'sold' then 'sold to ' || c.name || ', order S' || p.period else 'too short for any order' end,
        case p.fate when 'sold' then 'mara' end, s.shipment_id
      from ten_years.piece p join ten_years.delivery d using (line_no) left join ten_years.shipment s on p.fate = 'sold' and s.kind = 'sold' and s.at = p.used_at left join book.party c on c.party_id = s.customer_id
      where p.used_at is not null and not p.was_cut) x order by 1;
-- Holds on a heat: an hour in the night each, the last ones live.
insert into book.hold (hold_id, scope, mill_id, heat, reason, held_by, lifted_by, lifting_words) overriding system value
  select i, 'heat', mill_id, heat, 'a second analysis is asked for', 'ines', case when i < 40 then 'ines' end, case when i < 40 then 'the analysis is good' end
    from (select l.*, row_number() over (order by lot_id) as i from book.lot l where lot_id % greatest(1, (select count(*) from book.lot) / 44) = 0
      and not exists (select from ten_years.delivery d join ten_years.piece p using (line_no) where d.lot_id = l.lot_id and p.used_at is null and p.fate = 'plan' and p.period = (select periods from ten_years.size))) h where i <= 42;
