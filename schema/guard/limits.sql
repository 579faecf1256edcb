-- Limits as they are put in and replaced. Three kinds, of one shape here: of an analysis (sizes in nm), of a test (sizes in nm), and
-- the deviation of a product analysis (limits in units of 0.000 001 %). A row is for all above over_at, up to and with upto_at.
create view guard.every_limit as
  select 'analysis' as kind, grade_limit_id as id, grade_id, '' as condition, element as what, over_nm as over_at, upto_nm as upto_at, least_ppm_x100 as least, least_places,
      most_ppm_x100 as most, most_places, '%' as unit, source, corrected_in, replaced_in from book.grade_limit
  union all select 'test', mechanical_limit_id, grade_id, condition, property, over_nm, upto_nm, least_millionths, least_places,
      most_millionths, most_places, unit, source, corrected_in, replaced_in from book.mechanical_limit
  union all select 'deviation', product_deviation_id, grade_id, standard, element, over_ppm_x100, upto_ppm_x100, below_ppm_x100, below_places,
      above_ppm_x100, above_places, '%', source, corrected_in, replaced_in from book.product_deviation;

-- "at least 235 MPa", "0.17 to 0.24 %", with the figures as printed; of a deviation "0.02 % below, 0.02 % above".
create function guard.range_words(p_kind text, p_least bigint, p_least_places smallint, p_most bigint, p_most_places smallint, p_unit text) returns text
language sql immutable
return (select case when p_kind = 'deviation' then coalesce(nullif(concat_ws(', ', a || ' % below', b || ' % above'), ''), 'none')
    when a is not null and b is not null then a || ' to ' || b || ' ' || p_unit else coalesce('at least ' || a, 'at most ' || b) || ' ' || p_unit end
  from (select round(p_least / 1000000.0, coalesce(p_least_places, 6))::text as a, round(p_most / 1000000.0, coalesce(p_most_places, 6))::text as b) x);

create function guard.ranges_meet(a_over bigint, a_upto bigint, b_over bigint, b_upto bigint) returns boolean
language sql immutable
return a_over < coalesce(b_upto, 9223372036854775807) and b_over < coalesce(a_upto, 9223372036854775807);

-- What rows as api.define_limits takes them are about; `says`: there is a limit in it.
create function guard.limits_asked(p jsonb) returns table (n jsonb, kind text, grade_id bigint, condition text, what text, over_at bigint, upto_at bigint, says boolean)
language sql stable
begin atomic
  select n, k.kind, case when k.kind <> 'deviation' or n ->> 'grade' is not null then guard.grade(n ->> 'grade') end,
      case k.kind when 'test' then coalesce(btrim(n ->> 'condition'), '') when 'deviation' then n ->> 'standard' else '' end, coalesce(n ->> 'property', n ->> 'element'),
      coalesce((n ->> 'over_nm')::bigint, (n ->> 'over')::bigint, 0), coalesce((n ->> 'upto_nm')::bigint, (n ->> 'upto')::bigint),
      k.kind = 'deviation' or coalesce(n ->> 'least', n ->> 'most') is not null
    from jsonb_array_elements(p) n cross join lateral (select case when n ? 'property' then 'test' when n ? 'standard' then 'deviation' else 'analysis' end as kind) k;
end;

-- Refuses what no limit can be about. One at a time from here on: nobody puts limits in, and no document is judged, beside it.
create function guard.limits_stand(p jsonb) returns void
language plpgsql volatile as $$
declare
  v_wrong text;
begin
  lock table limit_correction in share row exclusive mode;
  select coalesce(n ->> 'property', n ->> 'element', '') into v_wrong from jsonb_array_elements(p) n where case when n ? 'property' then n ->> 'property' not in ('Rm', 'Re', 'A')
    when n ? 'standard' then coalesce(n ->> 'element', '') !~ '^[A-Z][a-z]?$'
    else coalesce(n ->> 'element', '') !~ '^(CEV|[A-Z][a-z]?([+][A-Z][a-z]?)*|(each other|sum of others)( but [A-Z][a-z]?([+][A-Z][a-z]?)*)?)$' end limit 1;
  if v_wrong is not null then
    raise exception using errcode = 'HK026', message = format('"%s" is nothing an analysis or a test has', v_wrong),
      hint = 'expected an element, CEV, a sum like Cr+Mo+Ni, or others; of a test Rm, Re or A';
  end if;
end $$;

-- Puts the rows in, as made by this correction (null: none); answers how many. Two for the same sizes are refused.
create function guard.put_limits(p jsonb, p_correction bigint) returns integer
language plpgsql volatile as $$
declare
  v_count integer;
  v_all integer;
  v_twice text;
begin
  insert into grade_limit (grade_id, element, least_ppm_x100, most_ppm_x100, source, over_nm, upto_nm, least_places, most_places, note, evidence, corrected_in)
    select a.grade_id, a.what, (n ->> 'least')::bigint, (n ->> 'most')::bigint, n ->> 'source', a.over_at, a.upto_at, (n ->> 'least_places')::smallint, (n ->> 'most_places')::smallint,
      n ->> 'note', n ->> 'evidence', p_correction from guard.limits_asked(p) a where a.kind = 'analysis';
  get diagnostics v_all = row_count;
  insert into mechanical_limit (grade_id, condition, property, unit, least_millionths, most_millionths, source, over_nm, upto_nm, least_places, most_places, note, evidence, corrected_in)
    select a.grade_id, a.condition, a.what, n ->> 'unit', (n ->> 'least')::bigint, (n ->> 'most')::bigint, n ->> 'source', a.over_at, a.upto_at, (n ->> 'least_places')::smallint,
      (n ->> 'most_places')::smallint, n ->> 'note', n ->> 'evidence', p_correction from guard.limits_asked(p) a where a.kind = 'test';
  get diagnostics v_count = row_count;
  v_all := v_all + v_count;
  insert into product_deviation (standard, grade_id, element, over_ppm_x100, upto_ppm_x100, above_ppm_x100, below_ppm_x100, above_places, below_places, source, note, evidence, corrected_in)
    select a.condition, a.grade_id, a.what, a.over_at, a.upto_at, (n ->> 'above')::bigint, (n ->> 'below')::bigint, (n ->> 'above_places')::smallint, (n ->> 'below_places')::smallint,
      n ->> 'source', n ->> 'note', n ->> 'evidence', p_correction from guard.limits_asked(p) a where a.kind = 'deviation';
  get diagnostics v_count = row_count;
  select format('%s of %s', a.what, coalesce(a.n ->> 'grade', a.condition)) into v_twice from guard.limits_asked(p) a where 1 < (select count(*) from guard.every_limit l
    where l.kind = a.kind and l.grade_id is not distinct from a.grade_id and l.condition = a.condition and l.what = a.what and l.replaced_in is null
      and guard.ranges_meet(l.over_at, l.upto_at, a.over_at, a.upto_at)) limit 1;
  if v_twice is not null then
    raise exception using errcode = 'HK026', message = format('two limits for %s are for the same sizes', v_twice), hint = 'expected ranges that do not meet: more than the first, up to and with the second';
  end if;
  return v_all + v_count;
end $$;
