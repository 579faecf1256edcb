-- Saws and bands: what a saw takes, the band on it with its kerf as measured, how fast it cuts what, and how worn it is.

-- Whether the saw takes the section, by its capacity for the shape, else by its greatest section; null when it does.
create function guard.too_large_words(p_saw book.saw, p_section book.section) returns text
language sql stable security definer set search_path = book, pg_catalog, pg_temp
return (select case
    when c.saw_capacity_id is not null and (greatest(p_section.dim1_nm, p_section.dim2_nm) > c.width_nm
      or case when p_section.dim2_nm > 0 then least(p_section.dim1_nm, p_section.dim2_nm) else p_section.dim1_nm end > c.height_nm)
      then format('saw %s takes a %s of %s x %s mm', p_saw.name, c.shape, trim_scale(c.width_nm / 1e6::numeric), trim_scale(c.height_nm / 1e6::numeric))
    when c.saw_capacity_id is null and greatest(p_section.dim1_nm, p_section.dim2_nm) > p_saw.max_section_nm
      then format('saw %s takes sections to %s mm', p_saw.name, trim_scale(p_saw.max_section_nm / 1e6::numeric)) end
  from (select 1) one left join book.saw_capacity c on c.saw_id = p_saw.saw_id and c.shape = p_section.shape);

-- {"saw","stop_stroke_nm"?,"bundle_bars"?,"cents_per_hour"?,"capacity": [{"shape","width_nm","height_nm"}]}: what is not named stays.
create function api.set_saw(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('set_saw', p_request, p);
  v_saw bigint := guard.saw(p ->> 'saw');
begin
  if v_again is not null then return v_again; end if;
  update saw set stop_stroke_nm = coalesce((p ->> 'stop_stroke_nm')::bigint, stop_stroke_nm), bundle_bars = coalesce((p ->> 'bundle_bars')::integer, bundle_bars),
    cents_per_hour = coalesce((p ->> 'cents_per_hour')::bigint, cents_per_hour) where saw_id = v_saw;
  insert into saw_capacity (saw_id, shape, width_nm, height_nm)
    select v_saw, (n ->> 'shape')::shape, (n ->> 'width_nm')::bigint, (n ->> 'height_nm')::bigint from jsonb_array_elements(p -> 'capacity') n
    on conflict (saw_id, shape) do update set width_nm = excluded.width_nm, height_nm = excluded.height_nm;
  return guard.end_deed(jsonb_build_object('saw', p ->> 'saw'));
end $$;

-- The band on the saw at a time.
create function guard.band_on(p_saw bigint, p_at timestamptz) returns book.saw_band
language sql stable security definer set search_path = book, pg_catalog, pg_temp
begin atomic
  select b.* from book.saw_band b where b.saw_id = p_saw and b.fitted_from <= p_at order by b.fitted_from desc limit 1;
end;

-- {"saw","width_nm"?,"thickness_nm"?,"kerf_nm","reason"}: another band is fitted (with width and thickness), or the kerf of the one that is on was measured
-- anew (without). Plans made with the old kerf are not pulled apart; new ones use the new one.
create function api.fit_band(p_request uuid, p jsonb, p_true_at timestamptz default null, p_device text default null) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('fit_band', p_request, p || jsonb_build_object('true_at', guard.utc(p_true_at)), p_true_at, p_device, p ->> 'reason');
  v_saw bigint := guard.saw(p ->> 'saw');
  v_width bigint := (p ->> 'width_nm')::bigint;
  v_thick bigint := (p ->> 'thickness_nm')::bigint;
  v_kerf bigint := (p ->> 'kerf_nm')::bigint;
  v_before saw_band := guard.band_on(v_saw, coalesce(p_true_at, now()));
  v_name text;
begin
  if v_again is not null then return v_again; end if;
  if coalesce(btrim(p ->> 'reason'), '') = '' or coalesce(v_kerf, 0) <= 0 or (v_width is null) <> (v_thick is null) then
    raise exception using errcode = 'HK026', message = 'a band is fitted with its width, its thickness, its kerf and the reason; a kerf is measured with the reason',
      hint = 'the kerf is measured in a test cut: it is wider than the band is thick';
  elsif v_kerf < coalesce(v_thick, v_before.thickness_nm, 0) then
    raise exception using errcode = 'HK026', message = format('a kerf of %s mm is narrower than the band (%s mm)', trim_scale(v_kerf / 1e6::numeric),
      trim_scale(coalesce(v_thick, v_before.thickness_nm) / 1e6::numeric)), hint = 'measure the kerf: thickness and set on both sides';
  end if;
  v_name := coalesce(trim_scale(v_width / 1e6::numeric) || ' x ' || trim_scale(v_thick / 1e6::numeric), v_before.band);
  insert into saw_band (saw_id, band, kerf_nm, fitted_from, width_nm, thickness_nm, mounting_id, reason, named)
    values (v_saw, v_name, v_kerf, coalesce(p_true_at, now()), coalesce(v_width, v_before.width_nm), coalesce(v_thick, v_before.thickness_nm),
      case when v_width is null then coalesce(v_before.mounting_id, v_before.saw_band_id) end, p ->> 'reason', session_user);
  return guard.end_deed(jsonb_build_object('saw', p ->> 'saw', 'band', v_name, 'kerf_nm', v_kerf, 'kerf_before_nm', v_before.kerf_nm,
    'live_plans', (select coalesce(jsonb_agg(plan_id order by plan_id), '[]') from plan where saw_id = v_saw and state = 'live' and kerf_nm <> v_kerf)));
end $$;

-- Every rate in force: a saw's own before the shop's, the shop's before the one that ships.
create view api.cutting_rates as
  select distinct on (saw_id, family) w.name as saw, r.family, r.mm2_per_min, r.source, r.valid_from, null::integer as low_cm2, null::integer as high_cm2
    from book.cutting_rate r left join book.saw w using (saw_id) where valid_from <= now() order by saw_id, family, valid_from desc;
create view api.shipped_rates as
  select family, low as low_cm2, middle as middle_cm2, high as high_cm2, 'common practice, no source; the saw''s manual goes before it'::text as source from guard.shipped_rates();

-- Every cut that plans mean, or meant, to make, with what time, cost, feed and chips are computed from (schema/terms/sawing.h); a trim is a cut too.
-- Of bars cut together every bar has its row, and the strokes of the saw are those of the one that leads.
create view api.plan_sawing as
  select p.plan_id, p.state::text, w.name as saw, p.bundled, f.layout_no, f.state::text as layout_state, k.what, c.order_no, c.line_no, c.due, k.count, k.length_nm as set_nm,
      x.label as section, x.area_um2, g.density_kg_m3, g.family, p.kerf_nm, r.mm2_per_min, r.source as rate_source, w.stop_stroke_nm, w.cents_per_hour,
      coalesce(b.bars, 1) as bars, b.bundle_no, coalesce(b.leads, true) as leads
    from book.plan p join book.saw w using (saw_id) join book.layout f using (plan_id) join book.piece e using (piece_id) join book.lot l using (lot_id)
    join book.section x using (section_id) left join book.grade g using (grade_id) left join lateral guard.rate(w.saw_id, g.family) r on true
    join lateral (select 'piece' as what, cut_line_id, count, length_nm from book.layout_cut where layout_id = f.layout_id
      union all select 'trim', null, 1, f.trim_nm where f.trim_nm > 0) k on true
    left join lateral (select * from guard.layout_bundle where plan_id = f.plan_id offset 0) b on b.layout_id = f.layout_id  -- plan by plan
    left join book.cut_line c on c.cut_line_id = k.cut_line_id;

-- Per saw: the band on it, and what it has cut since it was fitted. A stroke through bars cut together is one cut, through the area of all
-- of them. Out of square: cuts with a reject whose fault says so, and among the last twenty cuts.
create view api.saw_bands as
  select w.name as saw, b.band, b.width_nm, b.thickness_nm, n.kerf_nm, b.fitted_from, n.fitted_from as kerf_measured_at, b.reason, b.named,
      u.cuts, u.area_um2, u.out_of_square, u.area_to_first_um2, u.lately
    from book.saw w join lateral guard.band_on(w.saw_id, now()) n on true join book.saw_band b on b.saw_band_id = coalesce(n.mounting_id, n.saw_band_id)
    join lateral (select count(*) as cuts, coalesce(sum(area), 0)::numeric as area_um2, count(*) filter (where bad) as out_of_square,
        min(so_far) filter (where bad) as area_to_first_um2, count(*) filter (where bad and back <= 20) as lately
      from (select sum(x.area_um2) as area, coalesce(bool_or(s.class = 'reject' and s.fault ilike '%square%'), false) as bad, sum(sum(x.area_um2)) over (order by min(s.stroke_id)) as so_far,
          row_number() over (order by min(s.stroke_id) desc) as back
        from book.stroke s join book.lot l using (lot_id) join book.section x using (section_id)
        where s.kerf_nm > 0 and s.saw_band_id in (select saw_band_id from book.saw_band m where coalesce(m.mounting_id, m.saw_band_id) = b.saw_band_id)
        group by s.saw_bundle_id, s.saw_stroke, case when s.saw_bundle_id is null then s.stroke_id end) t) u on true;
-- Sections that a saw does not take.
create view api.sections_too_large as
  select w.name as saw, x.label as section, guard.too_large_words(w, x) as words
    from book.saw w cross join book.section x where guard.too_large_words(w, x) is not null;
create view api.saw_rules as
  select w.name as saw, w.max_section_nm, w.max_mass_g, w.stop_stroke_nm, w.bundle_bars, w.cents_per_hour from book.saw w;
