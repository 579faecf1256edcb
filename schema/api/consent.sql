-- Other metal than ordered, with the customer's consent in writing.

-- {"order","line","grade"?,"section"?,"papers"?,"count"?,"agreed_by","writing","cost_cents"}: the lead records it; another grade or weaker papers count once
-- quality has signed.
create function api.record_consent(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('record_consent', p_request, p, null, null, p ->> 'writing');
  c cut_line;
  v_id bigint;
begin
  if v_again is not null then return v_again; end if;
  select * into c from cut_line where cut_line_id = guard.line_for_cut(p ->> 'order', p ->> 'line');
  if coalesce(btrim(p ->> 'agreed_by'), '') = '' or coalesce(btrim(p ->> 'writing'), '') = '' or p ->> 'cost_cents' is null then
    raise exception using errcode = 'HK026', message = 'a substitution says who agreed, the customer''s writing, and what it costs more (0 where nothing)',
      hint = 'nothing is substituted silently';
  elsif coalesce(p ->> 'grade', p ->> 'papers', p -> 'section' ->> 'shape') is null then
    raise exception using errcode = 'HK026', message = 'say what the customer takes: another grade, another section or weaker papers';
  end if;
  insert into consent (cut_line_id, grade_id, section_id, papers, count, agreed_by, writing, cost_cents, recorded_by)
    values (c.cut_line_id, case when p ->> 'grade' is not null then guard.grade(p ->> 'grade') end,
      case when jsonb_typeof(p -> 'section') = 'object' then guard.section(p -> 'section') end, (p ->> 'papers')::papers, (p ->> 'count')::integer,
      p ->> 'agreed_by', p ->> 'writing', (p ->> 'cost_cents')::bigint, session_user) returning consent_id into v_id;
  return guard.end_deed(jsonb_build_object('consent', v_id, 'needs_quality', p ->> 'grade' is not null or p ->> 'papers' is not null));
end $$;

create function api.sign_consent(p_request uuid, p_consent bigint) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('sign_consent', p_request, jsonb_build_array(p_consent));
begin
  if v_again is not null then return v_again; end if;
  update consent set signed_by = session_user where consent_id = p_consent and signed_by is null;
  if not found then
    raise exception using errcode = 'HK043', message = format('consent %s does not wait for a signature', p_consent), hint = '`heatkeep saw consents` names them';
  end if;
  return guard.end_deed(jsonb_build_object('consent', p_consent));
end $$;

-- Why so many more pieces of the line would be more than the customer took with weaker papers; null when they are not.
create function guard.consent_over(p_lot bigint, p_line bigint, p_more integer) returns text
language sql stable security definer set search_path = book, pg_catalog, pg_temp
return (select format('the customer takes %s pieces with papers %s', k.count, l.papers)
  from book.lot l join book.cut_line c on c.cut_line_id = p_line
  join lateral (select sum(n.count) as count from book.consent n where n.cut_line_id = p_line and n.papers <= l.papers and n.signed_by is not null
    having bool_and(n.count is not null)) k on true
  where l.lot_id = p_lot and l.papers < c.papers and p_more
    + (select count(*) from book.stroke s join book.lot b using (lot_id) where s.cut_line_id = p_line and s.class = 'good' and b.papers < c.papers)
    + (select coalesce(sum(y.count), 0) from book.layout_cut y join book.layout f using (layout_id) join book.piece e using (piece_id) join book.lot b on b.lot_id = e.lot_id
        where y.cut_line_id = p_line and f.state = 'promised' and b.papers < c.papers) > k.count);

create view api.consents as
  select n.consent_id as consent, c.order_no, c.line_no, g.designation as grade, x.label as section, n.papers::text, n.count, n.agreed_by, n.writing, n.cost_cents,
      n.recorded_by, n.signed_by
    from book.consent n join book.cut_line c using (cut_line_id) left join book.grade g on g.grade_id = n.grade_id left join book.section x on x.section_id = n.section_id;
