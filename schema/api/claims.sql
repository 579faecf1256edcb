-- What came differently than it should have: decided, signed, and claimed in words.

-- {"supplier","note","line","keep":bool,"reason"}: bars more than the slip says; kept ones are free, others wait to go back.
create function api.decide_over(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('decide_over', p_request, p);
  l receipt_line;
  v_keep boolean := (p ->> 'keep')::boolean;
  v_why text;
begin
  if v_again is not null then return v_again; end if;
  v_why := guard.said(p, 'reason', 'why');
  perform guard.lock_rows('receipt', array(select receipt_id from receipt where supplier_id = guard.party(p ->> 'supplier') and note = p ->> 'note'));
  select n.* into l from receipt_line n join receipt r using (receipt_id)
    where r.supplier_id = guard.party(p ->> 'supplier') and r.note = p ->> 'note' and r.reversed_by is null and n.line = p ->> 'line';
  if l.receipt_line_id is null or l.over_count is null then
    raise exception using errcode = 'HK043', message = format('nothing came over on note %s line %s', p ->> 'note', p ->> 'line'),
      hint = '`heatkeep receipt list` says what came';
  elsif l.over_by is not null then
    raise exception using errcode = 'HK043', message = format('%s decided already to %s them', l.over_by, case when l.over_kept then 'keep' else 'return' end);
  elsif v_keep is null then
    raise exception using errcode = 'HK026', message = 'say whether they are kept', hint = 'keep: true or false';
  end if;
  perform guard.lock_pieces(array(select piece_id from piece where receipt_line_id = l.receipt_line_id));
  update receipt_line set over_kept = v_keep, over_by = session_user where receipt_line_id = l.receipt_line_id;
  update piece set quarantine = case when v_keep then null else 'more than was bought, to go back: ' || v_why end
    where receipt_line_id = l.receipt_line_id and quarantine = 'more than the slip says: the planner decides';
  return guard.end_deed(jsonb_build_object('bars', l.over_count, 'kept', v_keep));
end $$;

-- {"name"}: the opening balance is signed by the planner and by quality, each as who they are.
create function api.sign_opening(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('sign_opening', p_request, p);
  r receipt;
  v_as text := case when pg_has_role(session_user, 'heatkeep_quality', 'member') then 'quality' else 'planner' end;
begin
  if v_again is not null then return v_again; end if;
  perform guard.lock_rows('receipt', array(select receipt_id from receipt where kind = 'opening' and note = p ->> 'name'));
  select * into r from receipt where kind = 'opening' and note = p ->> 'name' and reversed_by is null;
  if r.receipt_id is null then
    raise exception using errcode = 'HK026', message = format('there is no opening balance "%s"', p ->> 'name'), hint = '`heatkeep receipt list` says what came';
  elsif r.received_by = session_user then
    raise exception using errcode = 'HK043', message = 'it was brought in by you: others sign it';
  end if;
  update receipt set signed_by_quality = case when v_as = 'quality' then coalesce(signed_by_quality, session_user) else signed_by_quality end,
    signed_by_planner = case when v_as = 'planner' then coalesce(signed_by_planner, session_user) else signed_by_planner end
    where receipt_id = r.receipt_id returning * into r;
  return guard.end_deed(jsonb_build_object('name', r.note, 'planner', r.signed_by_planner, 'quality', r.signed_by_quality));
end $$;

-- One line a receipt line: for the receiving station and the claim.
create view api.receipts as
  select r.kind::text, r.note, s.name as supplier, r.purchase_order, r.received_at, r.received_by, r.signed_by_planner, r.signed_by_quality, l.line, l.slip_line, l.order_line, m.name as mill, t.heat,
      g.designation as grade, x.label as section, t.condition, l.counted, l.slip_count, l.length_nm, l.theoretical_mass_g,
      l.weighed_mass_g, l.mismatch, l.stopped, l.over_count, l.over_kept, l.over_by, l.raw_text, r.reversed_by,
      r.reversed_words
    from book.receipt r left join book.party s on s.party_id = r.supplier_id join book.receipt_line l using (receipt_id)
    join book.lot t using (lot_id) left join book.party m on m.party_id = t.mill_id left join book.grade g using (grade_id)
    join book.section x using (section_id);

-- What is to be claimed of a supplier, a line each: what is short or over by the slip's lines, what weighs or is marked
-- otherwise. bars and mass by theory.
create view api.claims as
  with said as (
    select r.note, s.name as supplier, r.purchase_order, l.*, m.label as section, g.designation as grade
      from book.receipt r join book.party s on s.party_id = r.supplier_id join book.receipt_line l using (receipt_id) join book.lot t using (lot_id)
      join book.section m using (section_id) left join book.grade g using (grade_id) where r.kind = 'delivery' and r.reversed_by is null),
  counted as (
    select note, supplier, purchase_order, coalesce(slip_line, line) as slip_line, min(section) as section, min(grade) as grade, min(length_nm) as length_nm,
        sum(counted) as counted, max(slip_count) as slip_count, round(sum(theoretical_mass_g) / sum(counted))::bigint as each_g
      from said group by note, supplier, purchase_order, coalesce(slip_line, line))
  select supplier, note, purchase_order, slip_line as line, abs(slip_count - counted) as bars, abs(slip_count - counted) * each_g as mass_g,
      format('%s %s: the slip says %s bars %s %s of %s mm, %s came (%s kg by theory)', case when counted < slip_count then 'short' else 'over' end,
        abs(slip_count - counted), slip_count, section, grade, trim_scale(length_nm / 1e6::numeric), counted,
        to_char(abs(slip_count - counted) * each_g / 1000.0, 'FM999999990.00')) as words
    from counted where slip_count <> counted
  union all
  select supplier, note, purchase_order, line, counted, theoretical_mass_g, format('%s bars %s %s of %s mm not as ordered: %s (%s kg by theory)', counted, section,
      grade, trim_scale(length_nm / 1e6::numeric), stopped, to_char(theoretical_mass_g / 1000.0, 'FM999999990.00'))
    from said where stopped is not null;
