-- What the owner and the planner ask at month end: one view a list. Lengths in nm, masses in g, money in hundredths; what is
-- a customer's is in none of them. Months and days are the server's.

-- The pieces on hand, whose they are (null: ours), how long nobody has worked on them (sawn, or else came or was made), and what ours would fetch and cost.
create view guard.worth as
  select p.owner_id, p.tag, p.kind::text, g.designation as grade, x.label as section, p.condition, p.heat, p.good_for::text as papers, w.name as place,
      o.name as owner, p.length_nm, m.mass_g, a.at::date as worked_on, current_date - a.at::date as days,
      case when p.owner_id = 0 then round(m.mass_g::numeric / 1000000 * n.scrap_cents_per_tonne)::bigint end as scrap_cents,
      case when p.owner_id = 0 then round(m.mass_g::numeric / 1000000 * n.cents_per_tonne)::bigint end as replacement_cents,
      p.blocked
    from guard.metal p left join book.grade g using (grade_id) join book.section x using (section_id) left join guard.group_now n using (grade_id, section_id)
    left join book.place w using (place_id) left join book.party o on o.party_id = p.owner_id and p.owner_id <> 0
    cross join lateral (select guard.mass_g(p.length_nm, x.area_um2, g.density_kg_m3)) m (mass_g)
    cross join lateral (select coalesce(max(h.true_at) filter (where h.tbl = 'stroke'), min(h.true_at)) as at from book.happening h where h.chain = 'piece' and h.chain_id = p.piece_id) a
    where guard.is_here(p.state) and p.state <> 'missing';

create view api.stock_worth as
  select tag, kind, grade, section, condition, heat, papers, place, owner, length_nm, mass_g, worked_on, days, scrap_cents, replacement_cents, blocked from guard.worth;
create view api.own_pieces as
  select tag, kind, grade, section, condition, heat, papers, place, length_nm, mass_g, worked_on, days, scrap_cents, replacement_cents, blocked
    from guard.worth where owner_id = 0;

-- Metal that was used up, by month, grade and section: good pieces and everything else. Good over all of it is the yield.
create view api.yield_by_month as
  with used as (  -- read as wholes, side by side in the order of the rows: asking for each of a million strokes when it was made takes ten times as long
    select s.lot_id, s.class::text as class, s.length_nm, s.kerf_nm, h.at from book.stroke s
      join (select row_id, min(true_at) as at from book.happening where tbl = 'stroke' group by row_id) h on h.row_id = s.stroke_id where s.owner_id = 0
    union all
    select o.lot_id, o.class::text, o.length_nm, 0, h.at from book.metal_out o
      cross join lateral (select min(true_at) as at from book.happening where tbl = 'metal_out' and row_id = o.metal_out_id) h where o.owner_id = 0 and o.class in ('scrap', 'unexplained')),
  dated as (select date_trunc('month', u.at) as month, l.grade_id, l.section_id, u.class, u.length_nm, u.kerf_nm from used u join book.lot l using (lot_id)),
  summed as (
    select month, grade_id, section_id, sum(length_nm + kerf_nm)::bigint as used_nm,
        coalesce(sum(length_nm) filter (where class = 'good'), 0)::bigint as good_nm, sum(kerf_nm)::bigint as kerf_nm,
        coalesce(sum(length_nm) filter (where class = 'trim'), 0)::bigint as trim_nm,
        coalesce(sum(length_nm) filter (where class in ('reject', 'crop', 'test slice')), 0)::bigint as spoilt_nm,
        coalesce(sum(length_nm) filter (where class = 'scrap'), 0)::bigint as scrap_nm,
        coalesce(sum(length_nm) filter (where class = 'unexplained'), 0)::bigint as unexplained_nm
      from dated group by 1, 2, 3)
  select to_char(month, 'YYYY-MM') as month, g.designation as grade, x.label as section, used_nm, good_nm, kerf_nm, trim_nm, spoilt_nm, scrap_nm, unexplained_nm, m.*,
      m.good_g + m.kerf_g + m.trim_g + m.spoilt_g + m.scrap_g + m.unexplained_g as used_g
    from summed left join book.grade g using (grade_id) join book.section x using (section_id) cross join lateral (select guard.mass_g(good_nm, area_um2, density_kg_m3) as good_g, guard.mass_g(kerf_nm, area_um2, density_kg_m3) as kerf_g,
      guard.mass_g(trim_nm, area_um2, density_kg_m3) as trim_g, guard.mass_g(spoilt_nm, area_um2, density_kg_m3) as spoilt_g,
      guard.mass_g(scrap_nm, area_um2, density_kg_m3) as scrap_g, guard.mass_g(unexplained_nm, area_um2, density_kg_m3) as unexplained_g) m;

-- What is open and nobody has planned, by grade, section, condition and papers, beside what lies here free, what lies here and waits for
-- somebody's word (long enough for one piece), and what is ordered.
create view api.to_buy as
  with open as (
    select c.grade_id, c.section_id, c.condition, c.papers, sum(c.open)::bigint as pieces, sum(c.open * (c.length_nm + c.face_nm + c.aim_nm))::bigint as cut_nm,
        max(c.length_nm + c.face_nm + c.aim_nm) as longest_nm, min(c.length_nm + c.face_nm + c.aim_nm) as shortest_nm, min(c.due) as due, string_agg(distinct c.order_no, ', ' order by c.order_no) as orders
      from guard.line_now c where c.owner_id = 0 and c.open > 0 group by 1, 2, 3, 4)
  select g.designation as grade, x.label as section, o.condition, o.papers::text, o.pieces, o.cut_nm, guard.mass_g(o.cut_nm, x.area_um2, g.density_kg_m3) as cut_g, o.longest_nm, o.due, o.orders,
      (select coalesce(sum(p.length_nm), 0)::bigint from guard.metal p where p.grade_id = o.grade_id and p.section_id = o.section_id
        and p.owner_id = 0 and guard.is_here(p.state) and p.state <> 'missing' and p.cut_for >= o.papers and p.blocked is null
        and not exists (select from book.promise r where r.piece_id = p.piece_id and r.state = 'live')) as free_nm,
      (select string_agg(w.n || ' ' || w.waits, ', ' order by w.waits) from (select p.waits, count(*) as n from guard.metal p where p.grade_id = o.grade_id
        and p.section_id = o.section_id and o.condition in ('', p.condition) and p.owner_id = 0 and p.state = 'on rack' and p.length_nm >= o.shortest_nm
        and p.waits is not null and (p.papers_state = 'awaited' or p.good_for >= o.papers) group by 1) w) as waiting,
      (select coalesce(sum(e.length_nm * greatest(0, e.quantity - guard.delivered(e.purchase_order, e.line))), 0)::bigint from book.purchase_line e
        where e.grade_id = o.grade_id and e.section_id = o.section_id and e.papers >= o.papers) as ordered_nm
    from open o join book.grade g using (grade_id) join book.section x using (section_id);

-- Scrap by the alloy group of its bin and month: what the book put in since the last ticket ('open'), and what the dealer weighed.
create view api.scrap_by_group as
  select alloy_group, to_char(h.at, 'YYYY-MM') as month, count(*) as tickets, sum(t.mass_g)::bigint as weighed_g, sum(t.book_mass_g)::bigint as book_g,
      sum(t.mass_g - t.book_mass_g)::bigint as other_g, sum(round(t.mass_g::numeric * t.cents_per_tonne / 1000000))::bigint as cents
    from book.scrap_ticket t join book.scrap_bin b using (scrap_bin_id)
    cross join lateral (select min(true_at) as at from book.happening where tbl = 'scrap_ticket' and row_id = t.scrap_ticket_id) h group by 1, 2
  union all
  select alloy_group, 'open', 0, null, sum(mass_g)::bigint, null, null from api.scrap_bins group by 1;
