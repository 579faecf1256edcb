-- The ten-year book, part 1: what everything is drawn with, and the shop itself.
-- Run by seed/ten-years as the keeper of a fresh book, with triggers and foreign keys at rest (session_replication_role = replica): what
-- the triggers would have written is written by parts 4 and 5, and `heatkeep book verify` says whether it is the same.
-- The setting ten_years.bars says how many bars come in; every draw is a hash of its own number, so the same size gives the same book.
create schema ten_years;

-- A throw of dice for this number: 0 to sides - 1.
create function ten_years.dice(p_key bigint, p_salt bigint, p_sides integer) returns integer
language sql immutable parallel safe
return ((hashint8extended(p_key, p_salt) & 9223372036854775807) % p_sides)::integer;

-- Ten years of 520 weeks, in periods: every period has its orders, plans and cuts. A small book has fewer groups and longer periods.
create unlogged table ten_years.size as
  select bars, case when bars > 50000 then 520 else 52 end as periods, case when bars > 50000 then 1 else 5 end as every_group
    from (select current_setting('ten_years.bars')::integer as bars) x;
do $$
begin
  execute format('create function ten_years.at(p_period integer) returns timestamptz language sql immutable parallel safe return timestamptz ''2016-01-04 06:00+00'' + p_period * interval %L',
    (select interval '3640 days' / periods from ten_years.size));
end $$;

-- Grades; then groups: section: shape, dims in um, bar length in mm
create temp table wanted as select * from (values
    ('42CrMo4', '1.7225', 'alloy steel', 7850, '+QT'), ('C45E', '1.1191', 'carbon steel', 7850, '+N'), ('S355J2', '1.0577', 'structural steel', 7850, '+AR'),
    ('16MnCr5', '1.7131', 'case hardening steel', 7850, '+A'), ('34CrNiMo6', '1.6582', 'alloy steel', 7850, '+QT'), ('4140', null, 'alloy steel', 7850, '+QT'),
    ('11SMnPb30', '1.0718', 'free cutting steel', 7850, '+C'), ('100Cr6', '1.3505', 'bearing steel', 7850, '+A'), ('X5CrNi18-10', '1.4301', 'stainless steel', 7900, '+AT'),
    ('X2CrNi18-9', '1.4307', 'stainless steel', 7900, '+AT'), ('X2CrNiMo17-12-2', '1.4404', 'stainless steel', 8000, '+AT'),
    ('X2CrNiMoN22-5-3', '1.4462', 'duplex steel', 7800, '+AT'), ('EN AW-6082', null, 'aluminium', 2700, 'T6'), ('CuZn39Pb3', 'CW614N', 'brass', 8470, 'R430')
  ) m (designation, number, family, density, condition);
insert into book.grade (designation, number, family, standard, density_kg_m3, density_source, source, evidence)
  select designation, number, family, 'as of the demo', density, 'common practice', 'invented shop', 'no source' from wanted on conflict do nothing;
create unlogged table ten_years.metal as select g.grade_id as grade_no, g.designation, g.family, condition from wanted w join book.grade g on w.designation = g.designation or w.number = g.number;
-- What was written down of the grades until now is written anew, with everything else, by parts 4 and 5.
truncate book.happening, book.chain_end, book.request restart identity;

create unlogged table ten_years.grp as
  select (row_number() over (order by n))::integer - 1 as grp, g.* from (
    select row_number() over () as n, v.designation, v.shape, v.sizes, v.thick, v.bar_mm, mm from (values
      ('42CrMo4', 'round', array[30,40,50,60,70,80,100,120,280], 0, 6000), ('C45E', 'round', array[25,30,40,50,60,80,100], 0, 6000), ('C45E', 'hex', array[36], 0, 3000),
      ('S355J2', 'round', array[50,80,120], 0, 6000), ('S355J2', 'square', array[50], 0, 6000), ('S355J2', 'flat', array[80,100], 20, 6000),
      ('16MnCr5', 'round', array[25,40,60,80], 0, 6000), ('34CrNiMo6', 'round', array[60,90,130,220], 0, 6000), ('4140', 'round', array[38,50,76,102], 0, 6000),
      ('11SMnPb30', 'round', array[12,20,30], 0, 3000), ('11SMnPb30', 'hex', array[19,24], 0, 3000), ('100Cr6', 'round', array[30,50,70], 0, 5000),
      ('X5CrNi18-10', 'round', array[20,30,50,80], 0, 6000), ('X2CrNi18-9', 'round', array[30,50], 0, 6000), ('X2CrNiMo17-12-2', 'round', array[20,40,60,90], 0, 6000),
      ('X2CrNiMo17-12-2', 'flat', array[60], 15, 4000), ('X2CrNiMoN22-5-3', 'round', array[50,80], 0, 6000), ('EN AW-6082', 'round', array[40,60], 0, 5000),
      ('EN AW-6082', 'flat', array[100], 20, 5000), ('CuZn39Pb3', 'round', array[25], 0, 3000), ('CuZn39Pb3', 'hex', array[27], 0, 3000)
    ) v (designation, shape, sizes, thick, bar_mm) cross join unnest(sizes) mm
  ) x (n, designation, shape, sizes, thick, bar_mm, mm), lateral (select m.grade_no, m.condition, x.shape::book.shape as shape, x.mm::bigint * 1000000 as dim1_nm,
      x.thick::bigint * 1000000 as dim2_nm, x.bar_mm::bigint * 1000 as bar_um, concat(x.shape, ' ', x.mm, case when x.thick > 0 then 'x' || x.thick end) as label
    from wanted w join ten_years.metal m using (condition) join book.grade b on b.grade_id = m.grade_no where w.designation = x.designation and (b.designation = w.designation or b.number = w.number)) g
  where x.n % (select every_group from ten_years.size) = 0;

insert into book.party (party_id, name, is_mill, is_supplier, is_customer) overriding system value
  select i, case when i <= 6 then 'Mill ' || chr(64 + i) else 'Customer ' || lpad((i - 6)::text, 2, '0') end, i <= 6, i <= 6, i > 6 from generate_series(1, 46) i;
insert into book.section (section_id, shape, dim1_nm, dim2_nm, label, area_um2) overriding system value
  select row_number() over (order by shape, dim1_nm, dim2_nm), x.*, guard.section_area_um2(shape, dim1_nm, dim2_nm, 0, null, null, null)
    from (select distinct shape, dim1_nm, dim2_nm, label from ten_years.grp) x;
alter table ten_years.grp add section_id bigint;
update ten_years.grp g set section_id = s.section_id from book.section s where s.label = g.label;
insert into book.site (site_id, name, letter, offline_letter) overriding system value values (1, 'main', 'A', 'B');
-- places 1 to 240: racks; 241 the gate; 242 to 245 the saws; 246 quarantine; 247 scrap
insert into book.place (place_id, name, site_id, kind, bay, level, walk, max_length_nm) overriding system value
  select i, format('B%s-%s', (i - 1) / 8 + 1, (i - 1) % 8 + 1), 1, 'rack'::book.place_kind, ((i - 1) / 8 + 1)::text, (i - 1) % 8 + 1, i, 7000000000 from generate_series(1, 240) i
  union all select 241, 'GATE', 1, 'gate', null, null, 0, null
  union all select 241 + i, 'SAW ' || i, 1, 'saw', null, null, 300 + i, null from generate_series(1, 4) i
  union all select 246, 'QUARANTINE', 1, 'quarantine', null, null, 310, null union all select 247, 'SCRAP', 1, 'scrap', null, null, 320, null;
create unlogged table ten_years.saw as select i as saw_id, (array[1300, 1600, 2200, 3000])[i] as kerf_um from generate_series(1, 4) i;
insert into book.saw (saw_id, name, place_id, max_section_nm) overriding system value select i, i::text, 241 + i, 400000000 from generate_series(1, 4) i;
-- a new band every second period
insert into book.saw_band (saw_band_id, saw_id, band, kerf_nm, fitted_from, reason, named) overriding system value
  select 4 * i + saw_id, saw_id, format('band %s-%s', saw_id, i + 1), kerf_um * 1000, ten_years.at(2 * i), case when i > 0 then 'worn' end, case when i > 0 then 'piet' end
    from ten_years.saw, generate_series(0, (select periods - 1 from ten_years.size) / 2) i order by 1;
insert into book.saw_grip (saw_grip_id, saw_id, bundled, grip_nm, trim_nm) overriding system value
  select 2 * i + b, i, b = 1, 50000000 + 30000000 * b, 8000000 from generate_series(1, 4) i, generate_series(0, 1) b;
insert into book.cutting_rate (cutting_rate_id, family, mm2_per_min, valid_from) overriding system value
  select row_number() over (order by family), family, 4000, ten_years.at(0) from (select distinct family from ten_years.metal) x;
insert into book.setting (setting_id, name, value, valid_from) overriding system value
  values (1, 'currency', 'EUR', ten_years.at(0)), (2, 'promise_hours', '876000', ten_years.at(0)), (3, 'lift_limit_g', '25000', ten_years.at(0));
insert into book.price (price_id, grade_id, cents_per_tonne, scrap_cents_per_tonne, valid_from) overriding system value
  select row_number() over (order by y, grade_no), grade_no, 120000 + 5000 * grade_no + 1000 * y, 25000, ten_years.at(0) + y * interval '1 year' from ten_years.metal, generate_series(0, 9) y;
insert into book.keep_rule (keep_rule_id, keep_nm, valid_from) overriding system value values (1, 300000000, ten_years.at(0));
