-- Cut lists: what is to be cut, for whom, from what, by when.

-- {"name","lines":[{"order","line","customer"?,"section":{},"grade","condition","length_nm","face_nm","aim_nm",
-- "tolerance_minus_nm","tolerance_plus_nm","quantity","due"?,"priority","one_heat"?,"max_heats"?,"papers","owner"?}]}
create function api.add_cut_list(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('add_cut_list', p_request, p);
  v_list bigint;
  v_twice text;
  v_theirs text;
  v_count integer;
begin
  if v_again is not null then return v_again; end if;
  if exists (select from cut_list where name = p ->> 'name') then
    raise exception using errcode = 'HK041', message = format('a cut list named "%s" is already in the book, with other lines', p ->> 'name'),
      hint = 'give the new one another name';
  end if;
  select string_agg(format('order %s line %s (in %s)', c.order_no, c.line_no, l.name), ', ' order by c.order_no, c.line_no) into v_twice
    from cut_line c join cut_list l using (cut_list_id) join jsonb_array_elements(p -> 'lines') n
      on n ->> 'order' = c.order_no and n ->> 'line' = c.line_no;
  if v_twice is not null then
    raise exception using errcode = 'HK041', message = format('already in the book: %s', v_twice);
  end if;
  select string_agg(format('order %s line %s: metal of %s is cut for nobody else', n ->> 'order', n ->> 'line', btrim(n ->> 'owner')), '; ') into v_theirs
    from jsonb_array_elements(p -> 'lines') n
    where guard.owner_party(n ->> 'owner') <> 0 and btrim(n ->> 'owner') is distinct from btrim(n ->> 'customer');
  if v_theirs is not null then
    raise exception using errcode = 'HK042', message = v_theirs,
      hint = 'expected as owner nobody (our metal) or the customer himself; metal of another is bought over in writing first (heatkeep piece buy-over)';
  end if;
  perform guard.lock_names();
  insert into cut_list (name, added_by) values (p ->> 'name', session_user) returning cut_list_id into v_list;
  insert into cut_line (cut_list_id, order_no, line_no, customer_id, section_id, grade_id, condition, length_nm, face_nm, aim_nm,
      tolerance_minus_nm, tolerance_plus_nm, quantity, due, priority, one_heat, max_heats, papers, owner_id)
    select v_list, n ->> 'order', n ->> 'line', case when coalesce(n ->> 'customer', '') <> '' then guard.party(n ->> 'customer') end,
        guard.section(n -> 'section'), guard.grade(n ->> 'grade'), coalesce(btrim(n ->> 'condition'), ''), (n ->> 'length_nm')::bigint,
        coalesce((n ->> 'face_nm')::bigint, 0), coalesce((n ->> 'aim_nm')::bigint, 0), coalesce((n ->> 'tolerance_minus_nm')::bigint, 0),
        coalesce((n ->> 'tolerance_plus_nm')::bigint, 0), (n ->> 'quantity')::integer, nullif(n ->> 'due', '')::date,
        coalesce((n ->> 'priority')::integer, 5), nullif(n ->> 'one_heat', ''), (n ->> 'max_heats')::integer,
        coalesce(nullif(n ->> 'papers', ''), 'none')::papers, guard.owner_party(n ->> 'owner')
      from jsonb_array_elements(p -> 'lines') n;
  get diagnostics v_count = row_count;
  return guard.end_deed(jsonb_build_object('cut_list_id', v_list, 'name', p ->> 'name', 'lines', v_count));
end $$;

create function guard.line_cut(p_line bigint) returns bigint
language plpgsql stable security definer set search_path = book, pg_catalog, pg_temp as $$
begin
  return (select count(*) from book.stroke where cut_line_id = p_line and class = 'good');
end $$;

-- What live plans still mean to cut of a line: promised layouts, less what an open cut has booked already; and what is
-- reserved for it without a plan. A promise whose time is over counts no more, whether it was freed yet or not.
create function guard.line_planned(p_line bigint) returns bigint
language plpgsql stable security definer set search_path = book, pg_catalog, pg_temp as $$
begin
  return (select coalesce(sum(greatest(0, k.count - case f.state when 'at saw' then (select count(*) from book.stroke s
      join book.cut c using (cut_id) where c.layout_id = f.layout_id and s.cut_line_id = p_line and s.class = 'good') else 0 end)), 0)
  from book.layout_cut k join book.layout f using (layout_id)
  where k.cut_line_id = p_line and (f.state = 'at saw' or (f.state = 'promised'
    and exists (select from book.promise r where r.layout_id = f.layout_id and r.state = 'live' and r.expires_at > now()))))::bigint
  + (select coalesce(sum(greatest(0, r.count - (select count(*) from book.stroke s join book.cut c using (cut_id)
      where c.piece_id = r.piece_id and not c.closed and s.cut_line_id = p_line and s.class = 'good'))), 0)
    from book.promise r join book.piece e using (piece_id) where r.cut_line_id = p_line and r.state = 'live'
      and (r.expires_at > now() or e.state = 'at saw'))::bigint;
end $$;

-- Every line with how many are cut, planned and open. Few lines are in a plan or reserved for: only what one of those means is summed up.
create view guard.line_now as
  select c.*, n.cut, n.planned, case when c.cancelled then 0 else greatest(0, c.quantity - n.cut - n.planned) end as open
    from book.cut_line c cross join lateral (select (select count(*) from book.stroke s where s.cut_line_id = c.cut_line_id and s.class = 'good') as cut,
      case when c.cut_line_id in (select k.cut_line_id from book.layout_cut k join book.layout f using (layout_id) where f.state in ('promised', 'at saw')
          union all select r.cut_line_id from book.promise r where r.state = 'live' and r.cut_line_id is not null)
        then guard.line_planned(c.cut_line_id) else 0 end as planned offset 0) n;

-- The planner reads them.
create view api.cut_lines as
  select l.name as cut_list, c.order_no, c.line_no, u.name as customer, g.designation as grade, g.family, x.label as section,
      x.shape::text, x.dim1_nm, x.dim2_nm, x.thickness_nm, x.area_um2, g.density_kg_m3, c.condition, c.length_nm, c.face_nm, c.aim_nm,
      c.tolerance_minus_nm, c.tolerance_plus_nm, c.quantity, c.due, c.priority, c.one_heat, c.max_heats, c.papers::text, o.name as owner,
      c.cancelled, c.cut, c.planned, c.open, guard.keep_nm(c.grade_id, c.section_id) as keep_nm
    from guard.line_now c join book.cut_list l using (cut_list_id) join book.grade g using (grade_id) join book.section x using (section_id)
    left join book.party u on u.party_id = c.customer_id join book.party o on o.party_id = c.owner_id;

-- What was asked for, a line a row: the history that a drop's worth is learned from. Days are counted from 2000-01-01; a line's day is
-- the one it was due, else the one its list came in.
create view api.past_lines as
  select c.order_no, c.line_no, g.designation as grade, x.label as section,
      coalesce(c.due, (select h.at::date from book.happening h where h.chain = 'cut_list' and h.chain_id = c.cut_list_id and h.seq = 1)) - date '2000-01-01' as day,
      current_date - date '2000-01-01' as today, c.length_nm + c.face_nm + c.aim_nm as cut_nm, c.quantity, c.papers::text,
      o.name as owner, c.one_heat is not null as one_heat
    from book.cut_line c join book.grade g using (grade_id) join book.section x using (section_id) join book.party o on o.party_id = c.owner_id
    where not c.cancelled;
