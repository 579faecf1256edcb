-- Values of an analysis against a grade's limits, as client/papers judges them (contract: tests/schema/judging_test.cpp).

-- n / d to the nearest whole number, a tie to the even one (ISO 80000-1:2009 Annex B rule A; ASTM E29 section 6). n >= 0, d > 0.
create function guard.round_even(n bigint, d bigint) returns bigint
language sql immutable
return n / d + case when 2 * (n % d) > d or (2 * (n % d) = d and (n / d) % 2 = 1) then 1 else 0 end;

-- The elements of a sum or of CEV = C + Mn/6 + (Cr+Mo+V)/5 + (Ni+Cu)/15 (EN 10025-2:2019 7.2.3), each with thirty times its factor.
create function guard.terms_of(p_what text) returns table (e text, n integer)
language sql immutable
begin atomic
  select v.e, v.n from (values ('C', 30), ('Mn', 5), ('Cr', 6), ('Mo', 6), ('V', 6), ('Ni', 2), ('Cu', 2)) v (e, n) where p_what = 'CEV'
  union all select s.e, 30 from unnest(string_to_array(p_what, '+')) s (e) where p_what <> 'CEV';
end;

-- Thirty times the millionths of a percent of what is limited, and whether all it needs is reported.
create function guard.reckoned(p_what text, p_values jsonb, p_named text[], out x30 bigint, out whole boolean)
language sql immutable
begin atomic
  select case when p_what like 'each other%' then coalesce(max(o.v), 0) * 30 when p_what like 'sum of others%' then coalesce(sum(o.v), 0)::bigint * 30
      else (select coalesce(sum(t.n * (p_values ->> t.e)::bigint), 0)::bigint from guard.terms_of(p_what) t) end,
    p_what ~ '^(each other|sum of others)' or (select bool_and(p_values ? t.e) from guard.terms_of(p_what) t)
  from (select value::bigint as v from jsonb_each_text(p_values)
    where key <> all (p_named) and key <> all (string_to_array(coalesce(substring(p_what from ' but (.*)$'), ''), '+'))) o;
end;

-- The size a standard's table means: diameter, side, across flats or thickness; null where the section does not say it.
create function guard.size_nm(p_section bigint) returns bigint
language sql stable security definer set search_path = book, pg_catalog, pg_temp
return (select case when shape in ('round', 'square', 'hex') then dim1_nm when shape = 'flat' then dim2_nm
  when shape in ('tube', 'angle', 'box') then thickness_nm end from book.section where section_id = p_section);

-- -1, 0, 1 as the value (thirty times it) is below, at or above the bound.
create function guard.beyond(p_x30 bigint, p_bound bigint, p_places smallint, p_rounds boolean) returns integer
language sql immutable
return sign(case when p_rounds and p_places < 6 then guard.round_even(p_x30, 30 * (10 ^ (6 - p_places))::bigint) * (10 ^ (6 - p_places))::bigint - p_bound
  else p_x30 - 30 * p_bound end)::integer;

-- The deviation that a bound of this limit falls into; a row of the grade itself goes before one of its standard.
create function guard.deviation(p_grade bigint, p_source text, p_element text, p_bound bigint) returns book.product_deviation
language sql stable strict
return (select d from book.product_deviation d where d.replaced_in is null and starts_with(p_source, d.standard) and d.element = p_element
  and coalesce(d.grade_id, p_grade) = p_grade and p_bound > d.over_ppm_x100 and p_bound <= coalesce(d.upto_ppm_x100, p_bound)
  order by d.grade_id is null, d.product_deviation_id limit 1);

-- One row a limited thing: "ok", "low", "high" or "missing". Absolute, or with the setting judging_by_rounding rounded to the
-- figures of the limit. Where the size is not known, wrong is what is wrong at every size. Of a product analysis the limits are
-- widened by the permissible deviations below and above.
create function guard.judged(p_grade bigint, p_size_nm bigint, p_values jsonb, p_product boolean default false)
  returns table (what text, value numeric, at_least bigint, at_most bigint, below bigint, above bigint, verdict text, source text)
language plpgsql stable security definer set search_path = book, pg_catalog, pg_temp as $$
#variable_conflict use_column
begin
  return query
  with valid as (select * from book.grade_limit l where l.grade_id = p_grade and l.replaced_in is null),
    limits as (select l.*, dl.below_ppm_x100 as below, dm.above_ppm_x100 as above,
        (l.least_ppm_x100 - coalesce(dl.below_ppm_x100, 0)) as least, (l.most_ppm_x100 + coalesce(dm.above_ppm_x100, 0)) as most,
        greatest(coalesce(l.least_places, 6::smallint), dl.below_places) as least_figures, greatest(coalesce(l.most_places, 6::smallint), dm.above_places) as most_figures
      from valid l cross join lateral guard.deviation(l.grade_id, l.source, l.element, case when p_product then l.least_ppm_x100 end) dl
      cross join lateral guard.deviation(l.grade_id, l.source, l.element, case when p_product then l.most_ppm_x100 end) dm
      where p_size_nm is null or (p_size_nm > l.over_nm and p_size_nm <= coalesce(l.upto_nm, p_size_nm))),
    named as (select coalesce(array_agg(distinct element), '{}') as elements from valid l where l.element ~ '^[A-Z][a-z]?$'),
    each as (select l.*, r.x30, r.whole, guard.setting('judging_by_rounding', 'no') = 'yes' as rounds
      from limits l cross join named cross join guard.reckoned(l.element, coalesce(p_values, '{}'), named.elements) r),
    said as (select e.*, case
        when e.most is not null and guard.beyond(e.x30, e.most, e.most_figures, e.rounds) > 0 then 'high'
        when not e.whole then 'missing'
        when e.least is not null and guard.beyond(e.x30, e.least, e.least_figures, e.rounds) < 0 then 'low' else 'ok' end as verdict from each e)
  select element, max(x30)::numeric / 30, min(least_ppm_x100), max(most_ppm_x100), max(said.below), max(said.above),
      case when count(distinct said.verdict) = 1 then min(said.verdict) else 'missing' end, min(said.source)
    from said group by element;
end $$;

-- [{"property","value_milli"}] against the limits of the grade in this condition at this size: one row a value, and one a limited
-- property that is not among them. "not limited": no limit of it is known. Values and limits in millionths of the unit. Limits of
-- the condition itself go before those of any condition; where they depend on a size that is not known, the verdict is missing.
create function guard.judged_tests(p_grade bigint, p_condition text, p_size_nm bigint, p_tests jsonb)
  returns table (what text, value bigint, at_least bigint, at_most bigint, verdict text, source text)
language plpgsql stable security definer set search_path = book, pg_catalog, pg_temp as $$
#variable_conflict use_column
begin
  return query
  with valid as (select * from book.mechanical_limit l where l.grade_id = p_grade and l.replaced_in is null and l.condition in ('', p_condition)),
    ours as (select * from valid l where l.condition = p_condition or not exists (select from valid o where o.property = l.property and o.condition = p_condition)),
    said as (select n ->> 'property' as property, (n ->> 'value_milli')::bigint * 1000 as value from jsonb_array_elements(p_tests) n),
    asked as (select coalesce(k.property, s.property) as property, s.value, k.property is not null as limited
      from (select distinct property from ours) k full join said s on s.property = k.property)
  select a.property, a.value, l.least_millionths, l.most_millionths, case when not a.limited then 'not limited'
      when l.property is null or a.value is null then 'missing'
      when guard.beyond(a.value * 30, l.least_millionths, coalesce(l.least_places, 6::smallint), r.rounds) < 0 then 'low'
      when guard.beyond(a.value * 30, l.most_millionths, coalesce(l.most_places, 6::smallint), r.rounds) > 0 then 'high' else 'ok' end, l.source
    from asked a cross join (select guard.setting('judging_by_rounding', 'no') = 'yes' as rounds) r
    left join ours l on l.property = a.property and case when p_size_nm is null then l.over_nm = 0 and l.upto_nm is null
      else p_size_nm > l.over_nm and p_size_nm <= coalesce(l.upto_nm, p_size_nm) end;
end $$;
