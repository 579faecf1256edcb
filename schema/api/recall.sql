-- Recall: where everything of a heat (or lot, piece, certificate, receipt) is now, and what a hold on it would stop.

create function guard.recall_pieces(p_scope text, p_ref text, p_mill text) returns bigint[]
language sql stable
return array(select piece_id from guard.held_pieces(guard.hold_asked(p_scope, p_ref, p_mill)));

-- One line what lies, or went, together. whereabouts: on rack, at door, at saw, outside, in transit, missing, on site, shipped, sold,
-- returned, scrap, reject, crop, trim, test slice, unexplained. length_nm is of all of a line. place: where to go; for what is
-- outside, who has it. Kerf is not listed: it is in the balance.
create function api.recall_list(p_scope text, p_ref text, p_mill text default null)
  returns table (whereabouts text, what text, tag text, count bigint, length_nm bigint, mass_g bigint, mill text, heat text, grade text, section text,
    condition text, owner text, site text, place text, walk integer, order_no text, line_no text, customer text, note text, gone_at timestamptz, words text, held boolean)
language sql stable security definer set search_path = book, pg_catalog, pg_temp
begin atomic
  with fact as (
    select e.piece_id, e.tag, e.kind, e.state, e.place_id, e.length_nm, e.heat, e.condition, e.quarantined, m.name as mill, g.designation as grade, x.label as section, x.area_um2, g.density_kg_m3, o.name as owner,
        e.held is not null as is_held
      from guard.metal e join book.section x using (section_id) join book.party o on o.party_id = e.owner_id
      left join book.party m on m.party_id = e.mill_id left join book.grade g using (grade_id)
      where e.piece_id = any (guard.recall_pieces(p_scope, p_ref, p_mill))),
  entry as (
    select f.piece_id, f.state::text as whereabouts, f.kind::text as what, 1::bigint as count, f.length_nm, i.name as site,
        case f.state when 'outside' then t.party when 'in transit' then 'on the way to ' || b.name else w.name end as place, coalesce(w.walk, 0) as walk,
        null::text as order_no, null::text as line_no, null::text as customer, coalesce(t.note, v.note) as note, null::timestamptz as gone_at,
        case when f.state = 'outside' then t.process else f.quarantined end as words, f.is_held as held
      from fact f left join book.place w using (place_id) left join book.site i using (site_id)
      left join book.outside_trip t on t.piece_id = f.piece_id and t.back_nm is null
      left join book.transfer v on v.piece_id = f.piece_id and v.received_nm is null left join book.site b on b.site_id = v.to_site_id
      where f.length_nm > 0
    union all
    select f.piece_id, case when s.class <> 'good' then s.class::text when h.note is null then 'on site' else 'shipped' end,
        case s.class when 'good' then 'cut piece' else s.class::text end, count(*), sum(s.length_nm)::bigint, case when h.note is null then i.name end,
        case when s.class = 'good' and h.note is null then w.name when s.class = 'test slice' then 'laboratory, reference ' || s.lab end, coalesce(w.walk, 0), c.order_no, c.line_no,
        k.name, h.note, h.shipped_at, s.fault, f.is_held or bool_or(s.held)
      from fact f join book.stroke s on s.piece_id = f.piece_id join book.cut u on u.cut_id = s.cut_id join book.saw a using (saw_id)
      join book.place w on w.place_id = a.place_id join book.site i using (site_id)
      left join book.cut_line c using (cut_line_id) left join book.shipment_line n on n.shipment_line_id = s.shipment_line_id
      left join book.shipment h using (shipment_id) left join book.party k on k.party_id = coalesce(h.customer_id, c.customer_id)
      where s.length_nm > 0
      group by f.piece_id, s.class, s.lab, s.fault, w.name, w.walk, i.name, c.order_no, c.line_no, k.name, h.note, h.shipped_at, f.is_held
    union all
    select f.piece_id, o.class::text, f.kind::text, 1, o.length_nm, null, b.name, 0, null, null, k.name, coalesce(h.note, case when t.ticket is not null then format('ticket %s of %s', t.ticket, d.name) end),
        h.shipped_at, o.reason, f.is_held
      from fact f join book.metal_out o on o.piece_id = f.piece_id left join book.scrap_bin b using (scrap_bin_id) left join book.scrap_ticket t using (scrap_ticket_id)
      left join book.party d on d.party_id = t.dealer_id left join book.shipment h on h.shipment_id = o.shipment_id left join book.party k on k.party_id = h.customer_id
      where o.class::text not in ('passed on', 'reversed') and o.reverses_id is null and not exists (select from book.metal_out r where r.reverses_id = o.metal_out_id))
  select n.whereabouts, n.what, f.tag, n.count, n.length_nm, guard.mass_g(n.length_nm, f.area_um2, f.density_kg_m3), f.mill, f.heat, f.grade, f.section,
      f.condition, f.owner, n.site, n.place, n.walk, n.order_no, n.line_no, n.customer, n.note, n.gone_at, n.words, n.held
    from entry n join fact f using (piece_id)
    order by array_position(array['at saw', 'on site', 'on rack', 'at door', 'expected', 'in transit', 'outside', 'missing', 'shipped', 'sold', 'returned', 'scrap', 'reject', 'crop', 'test slice', 'trim',
      'unexplained'], n.whereabouts), n.customer, n.gone_at, n.note, n.walk, n.place, f.tag, n.order_no, n.line_no;
end;

create function guard.of_them(p_count bigint, p_one text, p_more text default null) returns text
language sql immutable
return case p_count when 0 then null when 1 then '1 ' || p_one else p_count || ' ' || coalesce(p_more, p_one || 's') end;

-- "3 bars, 1 drop, 10 pieces still to cut at saw 2, 4 cut pieces that wait to be shipped, 2 customers have 12 pieces".
create function guard.preview_words(r jsonb) returns text
language sql stable
return coalesce(nullif(concat_ws(', ', guard.of_them((r ->> 'bars')::bigint, 'bar'), guard.of_them((r ->> 'drops')::bigint, 'drop'),
  (select string_agg(guard.of_them(n, 'piece', 'pieces') || ' still to cut at saw ' || saw, ', ' order by saw) from (select t ->> 'saw' as saw, sum((t ->> 'pieces')::bigint)::bigint n from jsonb_array_elements(r -> 'to_cut') t group by 1) x where n > 0),
  (select guard.of_them(sum((t ->> 'pieces')::bigint)::bigint, 'cut piece that waits to be shipped', 'cut pieces that wait to be shipped') from jsonb_array_elements(r -> 'waiting') t having count(*) > 0),
  (select case when count(*) = 1 then '1 customer has ' else count(*) || ' customers have ' end || guard.of_them(sum((t ->> 'pieces')::bigint)::bigint, 'piece', 'pieces') from jsonb_array_elements(r -> 'shipped') t having count(*) > 0)), ''), 'nothing that is here or was shipped');

-- What such a hold would stop, if it were placed now; nothing is changed. Counts, and the words of them.
create function api.preview_hold(p_scope text, p_ref text, p_mill text default null) returns jsonb
language plpgsql stable security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_pieces bigint[] := guard.recall_pieces(p_scope, p_ref, p_mill);
  v_like text := case p_scope when 'heat' then guard.heats_like(p_ref) end;
  r jsonb;
begin
  select jsonb_build_object(
    'bars', (select count(*) from piece where piece_id = any (v_pieces) and length_nm > 0 and kind = 'bar'),
    'drops', (select count(*) from piece where piece_id = any (v_pieces) and length_nm > 0 and kind = 'drop'),
    'at_saw', (select coalesce(jsonb_agg(jsonb_build_object('saw', a.name, 'tag', e.tag) order by a.name, e.tag), '[]')
      from piece e left join saw a using (place_id) where e.piece_id = any (v_pieces) and e.state = 'at saw'),
    -- good pieces that live plans would still cut from it
    'to_cut', (select coalesce(jsonb_agg(jsonb_build_object('saw', saw, 'plan', plan_id, 'bars', bars, 'pieces', pieces) order by plan_id), '[]') from (
      select a.name as saw, n.plan_id, count(distinct y.layout_id) as bars, sum(t.count) - coalesce((select count(*) from layout z join cut u using (layout_id) join stroke s using (cut_id)
          where z.plan_id = n.plan_id and z.piece_id = any (v_pieces) and z.state in ('promised', 'at saw') and s.class = 'good'), 0) as pieces
        from layout y join plan n using (plan_id) join saw a using (saw_id) join layout_cut t using (layout_id)
        where y.piece_id = any (v_pieces) and y.state in ('promised', 'at saw') and n.state = 'live' group by a.name, n.plan_id) x),
    'promised', (select count(*) from promise where piece_id = any (v_pieces) and state = 'live'),
    'waiting', (select coalesce(jsonb_agg(jsonb_build_object('order', order_no, 'line', line_no, 'customer', customer, 'pieces', n) order by order_no, line_no), '[]') from (
      select c.order_no, c.line_no, k.name as customer, count(*) n from stroke s join cut_line c using (cut_line_id) left join party k on k.party_id = c.customer_id
        where s.piece_id = any (v_pieces) and s.class = 'good' and s.length_nm > 0 and s.shipment_line_id is null group by 1, 2, 3) x),
    'shipped', (select coalesce(jsonb_agg(jsonb_build_object('customer', customer, 'pieces', n, 'notes', notes) order by customer), '[]') from (
      select k.name as customer, sum(n) as n, jsonb_agg(distinct h.note) as notes from (
          select l.shipment_id, count(*) n from stroke s join shipment_line l using (shipment_line_id) where s.piece_id = any (v_pieces) group by 1
          union all select o.shipment_id, count(*) from metal_out o where o.piece_id = any (v_pieces) and o.class = 'sold' and o.reverses_id is null
            and not exists (select from metal_out q where q.reverses_id = o.metal_out_id) group by 1) g
        join shipment h using (shipment_id) join party k on k.party_id = h.customer_id group by 1) x),
    'held_already', (select count(*) from guard.metal where piece_id = any (v_pieces) and length_nm > 0 and held is not null)) into r;
  return r || jsonb_build_object('look_alikes', v_like, 'words', guard.preview_words(r) || coalesce('; it looks like heat ' || v_like || ', which would not be stopped', ''));
end $$;
