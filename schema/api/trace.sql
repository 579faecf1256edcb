-- Trace, both ways, by stored links; and the metal balance of a lot.

-- The tree lines of these pieces: each piece, what was cut off it and what left it otherwise. With an order only the
-- strokes for that order, and what is unexplained of the pieces they came from. It is planned once a session, in the order it is written:
-- planning it takes longer than most heats.
create function guard.trace_lines(p_pieces bigint[], p_order text)
  returns table (sort bigint[], depth integer, what text, name text, parent text, count bigint, length_nm bigint, mass_g bigint,
    mill text, heat text, grade text, section text, condition text, document text, receipt text, where_now text, at timestamptz,
    by text, held boolean, now_nm bigint, kerf_nm bigint)
language plpgsql stable set plan_cache_mode = force_generic_plan set join_collapse_limit = 1 as $$
#variable_conflict use_column
begin
  return query
  with paper as materialized (select d.lot_id, d.document from guard.lot_words d where d.lot_id in (select lot_id from book.piece where piece_id = any (p_pieces))),
  fact as (
    select e.piece_id, e.tag, e.kind, e.state, e.place_id, e.made_length_nm, e.length_nm, e.heat, e.condition, m.name as mill, g.designation as grade, x.label as section, n.document,
        x.area_um2, g.density_kg_m3, case r.kind when 'opening' then 'opening balance ' || r.note when 'found' then r.note || ' by ' || r.received_by else 'note ' || r.note || ' of ' || s.name end as receipt,
        (select tag from book.piece q where q.piece_id = coalesce(e.parent_id, e.before_id)) as parent_tag, coalesce(e.before_path, '{}') || e.path as line, e.held is not null as is_held
      from guard.metal e join paper n using (lot_id) left join book.party m on m.party_id = e.mill_id left join book.grade g using (grade_id)
      join book.section x using (section_id) left join book.receipt_line rl on rl.receipt_line_id = e.receipt_line_id
      left join book.receipt r using (receipt_id) left join book.party s on s.party_id = r.supplier_id
      where e.piece_id = any (p_pieces))
  select f.line, cardinality(f.line) - 1, f.kind::text, f.tag, f.parent_tag, 1, f.made_length_nm,
      guard.mass_g(f.made_length_nm, f.area_um2, f.density_kg_m3), f.mill, f.heat, f.grade, f.section, f.condition, f.document,
      f.receipt, case when f.length_nm > 0 then format('%s mm at %s (%s)', trim_scale(f.length_nm / 1e6::numeric), w.name, f.state) else f.state::text || coalesce((select guard.in_bundle_words(f.piece_id) where exists (select from book.saw_bundle_bar b where b.piece_id = f.piece_id)), '') end,
      h.true_at, h.who, f.is_held, f.length_nm, 0
    from fact f left join book.place w using (place_id)
    left join book.happening h on h.chain = 'piece' and h.chain_id = f.piece_id and h.seq = 1
  union all
  select f.line || array[-1, min(s.stroke_id)], cardinality(f.line), case s.class when 'good' then 'cut piece' else s.class::text end,
      coalesce(c.order_no || '/' || c.line_no, s.fault, s.class::text), f.tag, count(*), s.length_nm,
      guard.mass_g(s.length_nm * count(*), f.area_um2, f.density_kg_m3), f.mill, f.heat, f.grade, f.section, f.condition, f.document, f.receipt,
      case when s.class <> 'good' then s.class::text when sh.note is null then 'on site' else format('shipped to %s, note %s', cu.name, sh.note) end,
      min(h.true_at), min(h.who), bool_or(s.held) or f.is_held, 0, sum(s.kerf_nm)::bigint
    from fact f join book.stroke s on s.piece_id = f.piece_id and s.not_cut is null left join book.cut_line c using (cut_line_id)
    left join book.shipment_line sl on sl.shipment_line_id = s.shipment_line_id left join book.shipment sh using (shipment_id)
    left join book.party cu on cu.party_id = sh.customer_id
    left join book.happening h on h.tbl = 'stroke' and h.row_id = s.stroke_id and h.sets ? 'stroke_id'
    where p_order is null or c.order_no = p_order
    group by f.line, f.tag, s.class, c.order_no, c.line_no, s.fault, s.length_nm, f.area_um2, f.density_kg_m3, f.mill, f.heat, f.grade, f.section,
      f.condition, f.document, f.receipt, sh.note, cu.name, f.is_held
  union all
  select f.line || array[-2, o.metal_out_id], cardinality(f.line), o.class::text, coalesce(o.reason, o.class::text), f.tag, 1, o.length_nm,
      guard.mass_g(o.length_nm, f.area_um2, f.density_kg_m3), f.mill, f.heat, f.grade, f.section, f.condition, f.document, f.receipt,
      coalesce((select format('sold to %s, note %s', c.name, sh.note) from book.shipment sh join book.party c on c.party_id = sh.customer_id
        where sh.shipment_id = o.shipment_id), o.class::text), h.true_at, coalesce(o.named, h.who), f.is_held, 0, 0
    from fact f join book.metal_out o on o.piece_id = f.piece_id
    left join book.happening h on h.tbl = 'metal_out' and h.row_id = o.metal_out_id and h.sets ? 'metal_out_id'
    where p_order is null or o.class = 'unexplained';
end $$;

-- The pieces of a trace. Order: those its cut pieces came from and their ancestors. Heat: all of it, what it was before
-- under another tag and what it went on as. Piece: where it came from and all that came from it. Null where there is none.
create function guard.trace_pieces(p_kind text, p_name text, p_mill text) returns bigint[]
language plpgsql stable as $$
declare
  v_pieces bigint[];
begin
  if p_kind = 'order' then
    select array_agg(distinct a) into v_pieces from cut_line c join stroke s using (cut_line_id) join piece e on e.piece_id = s.piece_id,
      unnest(e.path || e.before_path) a where c.order_no = p_name;
  elsif p_kind = 'heat' then
    select array_agg(e.piece_id) into v_pieces from lot l join piece e using (lot_id) left join party m on m.party_id = l.mill_id
      where l.heat = p_name and (p_mill is null or m.name = p_mill);
    select array_agg(distinct a) into v_pieces from piece e, unnest(e.piece_id || e.before_path) a
      where e.piece_id = any (v_pieces) or e.before_path && v_pieces;
  elsif p_kind = 'piece' then
    select array_agg(distinct q.piece_id) into v_pieces from piece e join piece q
      on q.path @> array[e.piece_id] or q.before_path @> array[e.piece_id] or q.piece_id = any (e.path || e.before_path)
      where e.tag = upper(p_name) or e.old_tag = p_name;
  else
    raise exception using errcode = 'HK026', message = format('"%s" cannot be traced; expected order, heat or piece', p_kind);
  end if;
  return v_pieces;
end $$;

-- kind: 'order', 'heat' or 'piece'. Empty where there is none. Sorted by sort. length_nm as it came or was made, now_nm what
-- is left of it; kerf_nm what the cuts of a line cost besides.
create function api.trace(p_kind text, p_name text, p_mill text default null)
  returns table (sort bigint[], depth integer, what text, name text, parent text, count bigint, length_nm bigint, mass_g bigint,
    mill text, heat text, grade text, section text, condition text, document text, receipt text, where_now text, at timestamptz,
    by text, held boolean, now_nm bigint, kerf_nm bigint)
language sql stable security definer set search_path = book, pg_catalog, pg_temp
begin atomic
  select * from guard.trace_lines(guard.trace_pieces(p_kind, p_name, p_mill), case when p_kind = 'order' then p_name end) t order by t.sort;
end;

-- The lots of a heat, of a piece, or that an order was cut from.
create function guard.balance_lots(p_kind text, p_name text, p_mill text) returns bigint[]
language sql stable
return case p_kind
  when 'heat' then array(select l.lot_id from book.lot l left join book.party m on m.party_id = l.mill_id where l.heat = p_name and (p_mill is null or m.name = p_mill))
  when 'order' then array(select distinct s.lot_id from book.stroke s join book.cut_line c using (cut_line_id) where c.order_no = p_name)
  when 'piece' then array(select e.lot_id from book.piece e where e.tag = upper(p_name) or e.old_tag = p_name limit 1) end;

-- taken over and passed on: the same metal under another tag, in another lot or of another owner. Missing is unexplained.
-- The metal balance of every lot of a heat, or of the lots an order was cut from: what came in = where it is or went.
create function api.metal_balance(p_kind text, p_name text, p_mill text default null)
  returns table (lot_id bigint, mill text, heat text, grade text, section text, condition text, papers text, class text, is_in boolean,
    length_nm bigint, mass_g bigint)
language sql stable security definer set search_path = book, pg_catalog, pg_temp
begin atomic
  with wanted as (
    select l.*, m.name as mill, g.designation as grade, g.density_kg_m3, x.label as section, x.area_um2
      from book.lot l left join book.party m on m.party_id = l.mill_id left join book.grade g using (grade_id) join book.section x using (section_id)
      where l.lot_id = any (guard.balance_lots(p_kind, p_name, p_mill))),
  own as materialized (select e.* from book.piece e where e.lot_id = any (guard.balance_lots(p_kind, p_name, p_mill))),
  strokes as materialized (select s.* from book.stroke s where s.piece_id = any (array(select piece_id from own))),
  entry as (
    select lot_id, case when before_id is null then 'received' else 'taken over' end as class, true as is_in, made_length_nm as nm
      from own where parent_id is null
    union all select lot_id, case when state in ('at saw', 'outside', 'in transit') then state::text when state = 'missing' then 'unexplained' else 'on hand' end, false, length_nm
      from own where length_nm > 0
    union all select s.lot_id, case class when 'good' then case when shipment_line_id is null then 'on site' else 'shipped' end else class::text end,
        false, s.length_nm from strokes s where s.length_nm > 0
    union all select s.lot_id, 'kerf', false, s.kerf_nm from strokes s
    union all select o.lot_id, class::text, false, o.length_nm from book.metal_out o where o.piece_id = any (array(select piece_id from own))
    union all select distinct lot_id, 'unexplained', false, 0 from own)
  select w.lot_id, w.mill, w.heat, w.grade, w.section, w.condition, w.papers::text, t.class, t.is_in, sum(t.nm)::bigint,
      guard.mass_g(sum(t.nm)::bigint, w.area_um2, w.density_kg_m3)
    from wanted w join entry t using (lot_id)
    group by w.lot_id, w.mill, w.heat, w.grade, w.section, w.condition, w.papers, w.area_um2, w.density_kg_m3, t.class, t.is_in
    order by w.mill, w.heat, w.section, w.lot_id, t.is_in desc,
      array_position(array['received', 'taken over', 'shipped', 'on site', 'on hand', 'at saw', 'outside', 'in transit', 'kerf', 'trim', 'crop', 'reject', 'test slice', 'scrap',
        'sold', 'returned', 'passed on', 'reversed', 'unexplained'], t.class);
end;
