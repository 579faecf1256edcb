-- What is ordered and not here yet. It has no tag: nothing can be pulled or cut from it, and it is no stock.

-- {"purchase_order","supplier","lines":[{"line","section":{},"grade","condition","length_nm","quantity","due","papers"?}]}
create function api.expect_delivery(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('expect_delivery', p_request, p);
  v_order text;
  v_supplier bigint;
  n jsonb;
begin
  if v_again is not null then return v_again; end if;
  v_order := guard.said(p, 'purchase_order', 'the number of the purchase order');
  v_supplier := guard.party(guard.said(p, 'supplier', 'who delivers'));
  if jsonb_array_length(coalesce(p -> 'lines', '[]')) = 0 then
    raise exception using errcode = 'HK026', message = 'a purchase order has lines', hint = 'expected at least one line';
  end if;
  perform guard.lock_names();
  for n in select * from jsonb_array_elements(p -> 'lines') loop
    if exists (select from purchase_line where purchase_order = v_order and line = n ->> 'line') then
      raise exception using errcode = 'HK041', message = format('purchase order %s line %s is in the book already', v_order, n ->> 'line');
    end if;
    insert into purchase_line (purchase_order, line, supplier_id, section_id, grade_id, condition, length_nm, quantity, due, papers)
      values (v_order, guard.said(n, 'line', 'the line'), v_supplier, guard.section(n -> 'section'), guard.grade(n ->> 'grade'), coalesce(btrim(n ->> 'condition'), ''),
        guard.said(n, 'length_nm', 'the length ordered')::bigint, guard.said(n, 'quantity', 'how many')::integer, guard.said(n, 'due', 'a date')::date,
        coalesce(nullif(n ->> 'papers', ''), 'none')::papers);
  end loop;
  return guard.end_deed(jsonb_build_object('purchase_order', v_order, 'lines', jsonb_array_length(p -> 'lines')));
end $$;

create function guard.delivered(p_order text, p_line text) returns bigint
language sql stable security definer set search_path = book, pg_catalog, pg_temp
return (select coalesce(sum(l.counted), 0)::bigint from book.receipt_line l join book.receipt r using (receipt_id)
  where r.purchase_order = p_order and l.order_line = p_line and r.reversed_by is null);

-- {"purchase_order","purchase_line","order","line","bars"}: metal on its way is kept for a job.
create function api.promise_expected(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('promise_expected', p_request, p);
  e purchase_line;
  c cut_line;
  v_bars integer;
  v_left bigint;
begin
  if v_again is not null then return v_again; end if;
  perform guard.lock_rows('purchase_line', array(select purchase_line_id from purchase_line where purchase_order = p ->> 'purchase_order' and line = p ->> 'purchase_line'));
  select * into e from purchase_line where purchase_order = p ->> 'purchase_order' and line = p ->> 'purchase_line';
  if e.purchase_line_id is null then
    raise exception using errcode = 'HK027', message = format('no purchase order %s line %s is expected', p ->> 'purchase_order', p ->> 'purchase_line'),
      hint = '`heatkeep expected list` names them';
  end if;
  c := guard.line_named(p ->> 'order', p ->> 'line');
  v_bars := guard.said(p, 'bars', 'how many bars')::integer;
  v_left := e.quantity - guard.delivered(e.purchase_order, e.line) - (select coalesce(sum(bars), 0) from expected_promise where purchase_line_id = e.purchase_line_id);
  if e.section_id <> c.section_id or e.grade_id <> c.grade_id and not exists (select from grade_standin
      where asked_grade_id = c.grade_id and offered_grade_id = e.grade_id) or c.condition <> '' and c.condition <> e.condition then
    raise exception using errcode = 'HK042', message = format('what is expected there may not serve order %s line %s: another grade, section or condition', c.order_no, c.line_no);
  elsif v_bars < 1 or v_bars > v_left then
    raise exception using errcode = 'HK034', message = format('%s bars are still expected and free there, %s were asked for', greatest(0, v_left), v_bars);
  end if;
  insert into expected_promise (purchase_line_id, cut_line_id, bars, promised_by) values (e.purchase_line_id, c.cut_line_id, v_bars, session_user);
  return guard.end_deed(jsonb_build_object('words', format('not here yet: due %s, purchase order %s', e.due, e.purchase_order), 'due', e.due));
end $$;

create view api.expected as
  select e.purchase_order, e.line, s.name as supplier, x.label as section, g.designation as grade, e.condition, e.length_nm, e.quantity, e.due, e.papers::text,
      guard.delivered(e.purchase_order, e.line) as delivered,
      case when guard.delivered(e.purchase_order, e.line) < e.quantity then format('not here yet, due %s', e.due) else 'delivered' end as words,
      (select string_agg(format('%s bars for order %s line %s', q.bars, c.order_no, c.line_no), '; ' order by q.expected_promise_id)
        from book.expected_promise q join book.cut_line c using (cut_line_id) where q.purchase_line_id = e.purchase_line_id) as promised
    from book.purchase_line e join book.party s on s.party_id = e.supplier_id join book.section x using (section_id) join book.grade g using (grade_id);
