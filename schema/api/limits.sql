-- What analyses and tests are judged by, how it is put in, and put right where it was stored wrongly.

-- Rows of three kinds. Of an analysis, in units of 0.000 001 %: {"grade","element","least"?,"most"?,"over_nm"?,"upto_nm"?,
-- "least_places"?,"most_places"?,"source","note"?,"evidence"?}; an element, CEV, a sum like Cr+Mo+Ni, "each other but Al",
-- "sum of others but Al". Of a test, in millionths of its unit: "property" (Rm, Re in MPa; A in %) and "unit" for the element, and
-- "condition"?. Of a product analysis, how far it may lie outside: {"standard","grade"?,"element","over"?,"upto"?,"above"?,"below"?,
-- "above_places"?,"below_places"?,...}. What the book has for the same or for some of the same sizes stays, also where it was replaced.
create function api.define_limits(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('define_limits', p_request, p);
  v_rows jsonb;
begin
  if v_again is not null then return v_again; end if;
  perform guard.limits_stand(p);
  if exists (select from guard.limits_asked(p) where not says) then
    raise exception using errcode = 'HK026', message = 'a limit says neither a minimum nor a maximum', hint = 'expected "least", "most" or both';
  end if;
  select coalesce(jsonb_agg(a.n), '[]') into v_rows from guard.limits_asked(p) a where not exists (select from guard.every_limit l where l.kind = a.kind
    and l.grade_id is not distinct from a.grade_id and l.condition = a.condition and l.what = a.what
    and (l.over_at = a.over_at or (l.replaced_in is null and guard.ranges_meet(l.over_at, l.upto_at, a.over_at, a.upto_at))));
  return guard.end_deed(jsonb_build_object('added', guard.put_limits(v_rows, null)));
end $$;

-- {"reason","limits":[rows as define_limits takes them]}: they take the place of what the book has for any of these sizes; a row
-- without minimum and maximum only takes the old one away. The old rows stay, and nothing is judged by them any more. No size that
-- was limited may be left out unsaid. "documents": how many were accepted under what is replaced (api.accepted_before).
create function api.correct_limits(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('correct_limits', p_request, p);
  v_id bigint;
  v_wrong text;
  v_count integer;
begin
  if v_again is not null then return v_again; end if;
  perform guard.said(p, 'reason', 'how it is known that the limit was wrong');
  perform guard.limits_stand(p -> 'limits');
  insert into limit_correction (reason, corrected_by) values (btrim(p ->> 'reason'), session_user) returning limit_correction_id into v_id;
  update grade_limit l set replaced_in = v_id from guard.limits_asked(p -> 'limits') a where a.kind = 'analysis' and l.replaced_in is null
    and l.grade_id = a.grade_id and l.element = a.what and guard.ranges_meet(l.over_nm, l.upto_nm, a.over_at, a.upto_at);
  update mechanical_limit l set replaced_in = v_id from guard.limits_asked(p -> 'limits') a where a.kind = 'test' and l.replaced_in is null
    and l.grade_id = a.grade_id and l.condition = a.condition and l.property = a.what and guard.ranges_meet(l.over_nm, l.upto_nm, a.over_at, a.upto_at);
  update product_deviation l set replaced_in = v_id from guard.limits_asked(p -> 'limits') a where a.kind = 'deviation' and l.replaced_in is null
    and l.standard = a.condition and l.grade_id is not distinct from a.grade_id and l.element = a.what
    and guard.ranges_meet(l.over_ppm_x100, l.upto_ppm_x100, a.over_at, a.upto_at);
  select count(*) into v_count from guard.every_limit where replaced_in = v_id;
  select format('%s of %s', a.what, coalesce(a.n ->> 'grade', a.condition)) into v_wrong from guard.limits_asked(p -> 'limits') a
    where not exists (select from guard.every_limit l where l.replaced_in = v_id and l.kind = a.kind and l.grade_id is not distinct from a.grade_id
      and l.condition = a.condition and l.what = a.what and guard.ranges_meet(l.over_at, l.upto_at, a.over_at, a.upto_at)) limit 1;
  if v_wrong is not null or v_count = 0 then
    raise exception using errcode = 'HK026', message = coalesce(format('the book has no limit for %s there', v_wrong), 'no limit is named'),
      hint = 'what is new is put in by `heatkeep grades limits FILE`';
  end if;
  select format('%s of %s', l.what, coalesce((select designation from grade g where g.grade_id = l.grade_id), l.condition)) into v_wrong
    from guard.every_limit l where l.replaced_in = v_id and exists (
      select from (select l.over_at as at union all select a.upto_at from guard.limits_asked(p -> 'limits') a where a.kind = l.kind and a.grade_id is not distinct from l.grade_id
          and a.condition = l.condition and a.what = l.what and a.upto_at > l.over_at and a.upto_at < coalesce(l.upto_at, 9223372036854775807)) e
        where not exists (select from guard.limits_asked(p -> 'limits') b where b.kind = l.kind and b.grade_id is not distinct from l.grade_id
          and b.condition = l.condition and b.what = l.what and b.over_at <= e.at and e.at < coalesce(b.upto_at, 9223372036854775807))) limit 1;
  if v_wrong is not null then
    raise exception using errcode = 'HK026', message = format('%s: some of the sizes that the old limit is for are left out', v_wrong),
      hint = 'expected rows for all of them; one without minimum and maximum where there is no limit';
  end if;
  return guard.end_deed(jsonb_build_object('replaced', v_count,
    'added', guard.put_limits((select coalesce(jsonb_agg(a.n), '[]') from guard.limits_asked(p -> 'limits') a where a.says), v_id),
    'documents', (select count(distinct (issuer, number, version)) from api.accepted_before where correction = v_id)));
end $$;

create view api.grade_limits as
  select g.designation as grade, l.element, l.over_nm, l.upto_nm, l.least_ppm_x100, l.most_ppm_x100, l.least_places, l.most_places, l.source, l.note, l.evidence
    from book.grade_limit l join book.grade g using (grade_id) where l.replaced_in is null;

create view api.mechanical_limits as
  select g.designation as grade, l.condition, l.over_nm, l.upto_nm, l.property, l.unit, l.least_millionths, l.most_millionths, l.least_places, l.most_places, l.source, l.note, l.evidence
    from book.mechanical_limit l join book.grade g using (grade_id) where l.replaced_in is null;

create view api.product_deviations as
  select l.product_deviation_id, l.standard, g.designation as grade, l.element, l.over_ppm_x100, l.upto_ppm_x100, l.above_ppm_x100, l.below_ppm_x100, l.above_places, l.below_places,
      l.source, l.note, l.evidence
    from book.product_deviation l left join book.grade g using (grade_id) where l.replaced_in is null;

-- A line a limit that was replaced: what it was, what came in its place, who found it wrong, when and why. Sizes of an analysis and of
-- a test in nm; of a deviation the limits it widens, in units of 0.000 001 %.
create view api.limit_changes as
  select c.limit_correction_id as correction, l.kind, l.id as limit_id, g.designation as grade, l.condition, l.what, l.over_at, l.upto_at,
      guard.range_words(l.kind, l.least, l.least_places, l.most, l.most_places, l.unit) as was, l.source as was_by,
      coalesce((select string_agg(guard.range_words(n.kind, n.least, n.least_places, n.most, n.most_places, n.unit), '; ' order by n.over_at) from guard.every_limit n
        where n.corrected_in = c.limit_correction_id and n.kind = l.kind and n.grade_id is not distinct from l.grade_id and n.condition = l.condition and n.what = l.what
          and guard.ranges_meet(n.over_at, n.upto_at, l.over_at, l.upto_at)), 'no limit') as became,
      c.reason, c.corrected_by, h.at as corrected_at
    from guard.every_limit l join book.limit_correction c on c.limit_correction_id = l.replaced_in left join book.grade g using (grade_id)
    join lateral (select min(at) as at from book.happening where tbl = 'limit_correction' and row_id = c.limit_correction_id) h on true;

-- A line a document and lot that was accepted while a limit was judged by that is replaced now: quality looks at them again. `stands`:
-- no later version has taken its place; `wrong`: what the limits that are valid now do not allow, null when nothing.
create view api.accepted_before as
  with c as materialized (select c.*, r.grade_id from api.limit_changes c join guard.every_limit r on r.kind = c.kind and r.id = c.limit_id)
  select c.correction, i.name as issuer, d.number, d.version, d.type::text, guard.stands(d.document_id) as stands, d.accepted_by, a.at as accepted_at, l.heat, c.grade, x.label as section,
      l.condition, c.kind, c.what, c.was, c.became, c.reason, c.corrected_by, c.corrected_at, guard.wrong_words(d.document_id) as wrong
    from c cross join lateral (select l.*, n.document_id, n.document_lot_id, guard.size_nm(l.section_id) as size_nm from book.lot l join book.document_lot n using (lot_id)
      where l.grade_id = c.grade_id or (c.grade_id is null and exists (select from book.grade_limit s where s.grade_id = l.grade_id and s.element = c.what and starts_with(s.source, c.condition)))
      offset 0) l
    join book.section x using (section_id) join book.document d using (document_id) join book.party i on i.party_id = d.issuer_id
    join lateral (select min(at) as at from book.happening where tbl = 'document' and row_id = d.document_id and sets ->> 'accepted_by' is not null) a on true
    join lateral (select min(at) as at from book.happening where tbl = case c.kind when 'analysis' then 'grade_limit' when 'test' then 'mechanical_limit' else 'product_deviation' end
      and row_id = c.limit_id and sets ? 'source') p on true
    where a.at > p.at and a.at < c.corrected_at
      and (c.kind = 'deviation' or l.size_nm is null or (l.size_nm > c.over_at and l.size_nm <= coalesce(c.upto_at, l.size_nm)))
      and case c.kind when 'test' then c.condition in ('', l.condition) and exists (select from book.mechanical_test t where t.document_lot_id = l.document_lot_id and t.property = c.what)
        else exists (select from book.analysis v where v.document_lot_id = l.document_lot_id and (c.kind = 'analysis' or v.kind = 'product') and (v.element = c.what or c.what !~ '^[A-Z][a-z]?$')) end;
