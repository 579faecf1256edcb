-- A document's values held against the limits of its lots' grades: what it is accepted or refused by.

-- A line a limited thing of every lot: an element or sum of its heat or product analysis, a mechanical test (also one that no limit is
-- known of). Figures in millionths of the unit; below and above: the deviation a product analysis may have.
create function guard.verdicts(p_document bigint)
  returns table (lot_id bigint, kind text, what text, value numeric, unit text, at_least bigint, at_most bigint, below bigint, above bigint, verdict text, source text)
language plpgsql stable security definer set search_path = book, pg_catalog, pg_temp as $$
#variable_conflict use_column
begin
  return query
  with lots as (select n.document_lot_id, l.lot_id, l.grade_id, l.condition, guard.size_nm(l.section_id) as size_nm
    from book.document_lot n join book.lot l using (lot_id) where n.document_id = p_document)
  select l.lot_id, k.kind::text, j.what, j.value, '%', j.at_least, j.at_most, j.below, j.above, j.verdict, j.source
    from lots l cross join unnest(enum_range(null::book.analysis_kind)) k (kind)
    cross join lateral (select jsonb_object_agg(element, ppm_x100) as said from book.analysis where document_lot_id = l.document_lot_id and kind = k.kind) a
    cross join lateral guard.judged(l.grade_id, l.size_nm, a.said, k.kind = 'product') j where a.said is not null
  union all
  select l.lot_id, 'test', j.what, j.value, case j.what when 'A' then '%' else 'MPa' end, j.at_least, j.at_most, null, null, j.verdict, j.source
    from lots l cross join lateral (select jsonb_agg(jsonb_build_object('property', property, 'value_milli', value_milli)) as said
      from book.mechanical_test where document_lot_id = l.document_lot_id) t
    cross join lateral guard.judged_tests(l.grade_id, l.condition, l.size_nm, t.said) j where t.said is not null;
end $$;

-- What a document's values do not keep to, in words; null when nothing.
create function guard.wrong_words(p_document bigint) returns text
language sql stable security definer set search_path = book, pg_catalog, pg_temp
return (select string_agg(format('heat %s: %s', heat, words), '; ' order by lot_id) from (
  select l.heat, v.lot_id, string_agg(format('%s%s %s %s, %s allows %s %s%s%s', case v.kind when 'product' then 'product analysis ' else '' end, v.what,
      trim_scale(round(v.value / 1000000, 6)), v.unit, concat_ws(' ', g.designation, case v.kind when 'test' then nullif(l.condition, '') end),
      case v.verdict when 'high' then 'at most' else 'at least' end, trim_scale(case v.verdict when 'high' then v.at_most else v.at_least end::numeric / 1000000),
      ' and ' || trim_scale(case v.verdict when 'high' then v.above else v.below end::numeric / 1000000) || ' more for a product analysis',
      case v.kind when 'heat' then '' else ' (' || v.source || ')' end), '; ' order by v.kind, v.what) as words
    from guard.verdicts(p_document) v join book.lot l using (lot_id) join book.grade g using (grade_id) where v.verdict in ('low', 'high') group by l.heat, v.lot_id) w);

-- The tests of a document that no limit is known of, in words; null when none.
create function guard.unjudged_words(p_document bigint) returns text
language sql stable
return (select 'no limit known: ' || string_agg(format('heat %s %s', heat, what), '; ' order by heat, what) from (
  select l.heat, string_agg(v.what, ', ' order by v.what) as what from guard.verdicts(p_document) v join book.lot l using (lot_id)
    where v.kind = 'test' and v.verdict = 'not limited' group by l.heat, v.lot_id) w);

-- The same as wrong_words, by limits that nobody replaces until this deed is done.
create function guard.judge_document(p_document bigint) returns text
language plpgsql volatile as $$
begin
  lock table limit_correction in share mode;
  return guard.wrong_words(p_document);
end $$;
