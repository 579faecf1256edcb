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

-- One row a limited thing: "ok", "low", "high" or "missing". Absolute, or with the setting judging_by_rounding rounded to the
-- figures of the limit. Where the size is not known, wrong is what is wrong at every size.
create function guard.judged(p_grade bigint, p_size_nm bigint, p_values jsonb)
  returns table (what text, value numeric, at_least bigint, at_most bigint, verdict text)
language sql stable security definer set search_path = book, pg_catalog, pg_temp
begin atomic
  with limits as (select * from book.grade_limit l where l.grade_id = p_grade and (p_size_nm is null or (p_size_nm > l.over_nm and p_size_nm <= coalesce(l.upto_nm, p_size_nm)))),
    named as (select coalesce(array_agg(distinct element), '{}') as elements from book.grade_limit l where l.grade_id = p_grade and l.element ~ '^[A-Z][a-z]?$'),
    each as (select l.*, r.x30, r.whole, guard.setting('judging_by_rounding', 'no') = 'yes' as rounds
      from limits l cross join named cross join guard.reckoned(l.element, coalesce(p_values, '{}'), named.elements) r),
    said as (select e.*, case
        when e.most_ppm_x100 is not null and guard.beyond(e.x30, e.most_ppm_x100, e.most_places, e.rounds) > 0 then 'high'
        when not e.whole then 'missing'
        when e.least_ppm_x100 is not null and guard.beyond(e.x30, e.least_ppm_x100, e.least_places, e.rounds) < 0 then 'low' else 'ok' end as verdict from each e)
  select element, max(x30)::numeric / 30, min(least_ppm_x100), max(most_ppm_x100),
      case when count(distinct said.verdict) = 1 then min(said.verdict) else 'missing' end
    from said group by element;
end;
