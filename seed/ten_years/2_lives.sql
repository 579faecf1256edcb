-- The ten-year book, part 2: every piece's life, before it has a number. A bar makes at most one drop, which makes at most one drop:
-- life = 8 * bar + how many cuts went before. Lengths here are whole um.
-- A delivery line brings about 17 bars of one group; one to eight lines in a row of a group are of one heat.
create unlogged table ten_years.delivery as
  with line as (
    select i as line_no, floor(i::numeric * periods / n)::integer as period, g.*
      from (select *, greatest(1, bars / 17) as n from ten_years.size) z, generate_series(0, z.n - 1) i
      join ten_years.grp g on g.grp = ten_years.dice(i, 1, (select count(*) from ten_years.grp)::integer)),
  heat as (select line.*, (row_number() over (partition by grp order by line_no) - 1) / (array[1, 2, 4, 8])[1 + grp % 4] as heat_no from line)
  select row_number() over (order by period, mill_id, line_no) as receipt_line_id, dense_rank() over (order by period, mill_id) as receipt_id,
      dense_rank() over (order by first_line) as lot_id, d.*, ten_years.at(period) + interval '30 hours' + mill_id * interval '1 hour' as at
    from (select heat.*, min(line_no) over h as first_line, 1 + ten_years.dice(heat_no, grp, 6) as mill_id from heat window h as (partition by grp, heat_no)) d;
create index on ten_years.delivery (line_no);
analyze ten_years.delivery, ten_years.grp, ten_years.saw, ten_years.size;

create unlogged table ten_years.life (
  life bigint not null, level smallint not null, grp integer not null, line_no integer not null, made_um bigint not null, made_at timestamptz not null,
  fate text not null, period integer not null, used_at timestamptz, saw_id integer, kerf_um integer, trim_um integer, a_um integer, a_count integer,
  b_um integer, b_count integer, rest_um bigint);

do $$
declare
  v_rows bigint;
  v_level integer := 0;
begin
  create temp table made as
    select 8::bigint * i as life, d.grp, d.line_no, g.bar_um as made_um, d.at as made_at from ten_years.size z, generate_series(0, z.bars - 1) i
      join ten_years.delivery d on d.line_no = i / 17 join ten_years.grp g using (grp);
  loop
    analyze made;
    -- what becomes of it, and in which period: between a day and half a year later, some much later
    insert into ten_years.life
      with s as (select extract(epoch from ten_years.at(1) - ten_years.at(0))::integer as seconds, periods from ten_years.size),
      fate as (
        select m.*, s.*, case when dice < cut_by_plan then 'plan' when dice < cut_by_plan + cut_at_once then 'free' when made_um >= 1500000 then 'sold' else 'scrap' end as wanted,
            floor((extract(epoch from made_at - ten_years.at(0)) + 86400 * (1 + ten_years.dice(life, 3, 180)) * case when ten_years.dice(life, 4, 100) < 3 then 5 else 1 end)
              / seconds)::integer + 1 as period
          from (select made.*, ten_years.dice(life, 2, 1000) as dice, case v_level when 0 then 200 else 110 end as cut_by_plan,
            case v_level when 0 then 450 else 270 end as cut_at_once from made) m cross join s),
      work as (
        select f.*, w.saw_id, w.kerf_um, case when v_level = 0 and wanted = 'plan' then 8000 else 0 end as trim_um,
            5000 * (12 + ten_years.dice(job, case wanted when 'plan' then 5 else 6 end, 128)) as a_um, 5000 * (12 + ten_years.dice(job, 7, 60)) as b_um,
            case when v_level = 0 then 2 else 1 end as a_most, (v_level = 0 and wanted = 'plan')::integer as b_most
          from (select fate.*, grp * 1000003::bigint + fate.period as job from fate) f join ten_years.saw w on w.saw_id = 1 + ten_years.dice(job, 8, 4)),
      fits as (
        select work.*, case when wanted in ('plan', 'free') then greatest(0, least(a_most, (made_um - 60000 - (trim_um + kerf_um) * (trim_um > 0)::integer
            - b_most * (b_um + kerf_um)) / (a_um + kerf_um))) end as a_count from work)
      select life, v_level, grp, line_no, made_um, made_at, case when a_count = 0 then 'scrap' else wanted end, period,
          case when period >= periods then null when wanted = 'sold' then ten_years.at(period + 1) - interval '8 hours' + (grp % 5) * interval '1 minute'
            else ten_years.at(period) + (28800 + ten_years.dice(life, 9, seconds * 4 / 5)) * interval '1 second' + ten_years.dice(life, 10, 1000000) * interval '1 microsecond' end,
          saw_id, kerf_um, trim_um, a_um, nullif(a_count, 0), b_um, b_most,
          case when a_count > 0 then made_um - (trim_um + kerf_um) * (trim_um > 0)::integer - a_count * (a_um + kerf_um) - b_most * (b_um + kerf_um) end
        from fits;
    delete from made;
    insert into made
      select life + 1, grp, line_no, rest_um, used_at + interval '2 milliseconds' from ten_years.life where level = v_level and used_at is not null and rest_um >= 300000 and v_level < 7;
    get diagnostics v_rows = row_count;
    exit when v_rows = 0;
    v_level := v_level + 1;
  end loop;
end $$;

-- Numbers in the order in which they were made.
create unlogged table ten_years.piece as
  select l.*, row_number() over (order by made_at, life) as piece_id, l.rest_um >= 300000 and level < 7 and used_at is not null as has_drop,
      1 + ten_years.dice(life, 11, 240) as rack_id, used_at is not null and fate in ('plan', 'free') as was_cut
    from ten_years.life l;
drop table ten_years.life;
create unique index on ten_years.piece (life);
analyze ten_years.piece;

-- Plans: the planned cuts of a group in a period. What is planned for the time after the ten years is promised, and not cut.
create unlogged table ten_years.plan as
  select row_number() over (order by period, grp) as plan_id, * from (
    select period, grp, max(saw_id) as saw_id, max(kerf_um) as kerf_um, count(*) as layouts, max(used_at) as last_at, ten_years.at(period) - interval '4 hours' + grp * interval '1 minute' as at
      from ten_years.piece where fate = 'plan' and period <= (select periods from ten_years.size) group by period, grp) x;
create unlogged table ten_years.layout as
  select row_number() over (order by plan_id, piece_id) as layout_id, row_number() over (partition by plan_id order by piece_id) as layout_no, p.plan_id, p.at, e.*
    from ten_years.plan p join ten_years.piece e using (period, grp) where e.fate = 'plan';
create unique index on ten_years.layout (piece_id);
analyze ten_years.plan, ten_years.layout;

-- Order lines: a and b of a plan, f of what is cut without one; ten orders a period.
create unlogged table ten_years.line as
  with part as (
    select period, grp, 'a' as part, a_um as um, a_count as n, was_cut from ten_years.piece where fate = 'plan'
    union all select period, grp, 'b', b_um, b_count, was_cut from ten_years.piece where fate = 'plan' and b_count > 0
    union all select period, grp, 'f', a_um, a_count, was_cut from ten_years.piece where fate = 'free')
  select row_number() over (order by period, grp % 10, grp, part) as cut_line_id, dense_rank() over (order by period, grp % 10) as cut_list_id,
      row_number() over (partition by period, grp % 10 order by grp, part) as line_no, x.*, 7 + ((period * 10 + grp % 10) % 40) as customer_id,
      ten_years.at(period) - interval '6 hours' + (grp % 10) * interval '1 minute' as at
    from (select period, grp, part, um, sum(n)::integer as quantity, bool_or(was_cut) as was_cut from part
      where period <= (select periods from ten_years.size) group by period, grp, part, um) x;
create unique index on ten_years.line (period, grp, part);
analyze ten_years.line;

-- Cuts and their strokes.
create unlogged table ten_years.cut as select row_number() over (order by used_at, piece_id) as cut_id, e.* from ten_years.piece e where was_cut;
create unique index on ten_years.cut (piece_id);
analyze ten_years.cut;
create unlogged table ten_years.stroke as
  select row_number() over (order by c.cut_id, s.seq) as stroke_id, c.cut_id, c.piece_id, c.line_no, c.saw_id, c.used_at, c.period, c.grp, s.*, c.kerf_um, n.cut_line_id
    from ten_years.cut c
    cross join lateral (select row_number() over (order by o, i)::integer as seq, class, part, um from (
        select 0 as o, 1 as i, 'trim' as class, null as part, c.trim_um as um where c.trim_um > 0
        union all select 1, i, 'good', case c.fate when 'plan' then 'a' else 'f' end, c.a_um from generate_series(1, c.a_count) i
        union all select 2, i, 'good', 'b', c.b_um from generate_series(1, c.b_count) i) x) s
    left join ten_years.line n on n.period = c.period and n.grp = c.grp and n.part = s.part;

-- Shipments: an order leaves in the next period; whole pieces are sold by customer and period.
create unlogged table ten_years.shipment as
  select row_number() over (order by at, kind, customer_id) as shipment_id, x.* from (
    select distinct 'order' as kind, period, cut_list_id, customer_id, ten_years.at(period + 1) + interval '3 hours' + (grp % 10) * interval '1 minute' as at
      from ten_years.line where was_cut and period + 1 < (select periods from ten_years.size)
    union all select distinct 'sold', period, null::bigint, 7 + (period * 7 + grp % 5) % 40, ten_years.at(period + 1) - interval '8 hours' + (grp % 5) * interval '1 minute'
      from ten_years.piece where fate = 'sold' and used_at is not null) x;
analyze ten_years.stroke, ten_years.shipment;
