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
  c := guard.line_named(p ->> 'order', p ->> 'line');
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

-- Why so many more pieces out of this one would be more than the customer took for the line of its grade, section or papers; null when they are not. Counted
-- are those cut and, from other metal than this piece, promised or at a saw; p_left: only those that have left.
create function guard.consent_over(p_piece bigint, p_line bigint, p_more bigint, p_left boolean default false) returns text
language plpgsql stable as $$
declare
  c cut_line;
  l lot;
  v_papers papers;
begin
  if not exists (select from consent where cut_line_id = p_line and count is not null) then
    return null;
  end if;
  select * into c from cut_line where cut_line_id = p_line;
  select n.* into l from piece join lot n using (lot_id) where piece_id = p_piece;
  v_papers := guard.papers_of(p_piece);
  return (with used as (select b.grade_id, b.section_id, guard.papers_of(u.piece_id) as papers, u.n from (
        select piece_id, lot_id, count(*) as n from stroke where cut_line_id = p_line and class = 'good' and (shipment_line_id is not null or not p_left) group by 1, 2
        union all
        select e.piece_id, e.lot_id, greatest(0, r.n - (select count(*) from stroke s join cut using (cut_id) where cut.piece_id = e.piece_id and not closed and s.cut_line_id = p_line and class = 'good'))
          from (select r.piece_id, r.expires_at, k.count as n from layout_cut k join promise r using (layout_id) where k.cut_line_id = p_line and r.state = 'live'
            union all select r.piece_id, r.expires_at, r.count from promise r where r.cut_line_id = p_line and r.state = 'live') r join piece e using (piece_id)
          where not p_left and e.piece_id <> p_piece and (r.expires_at > now() or e.state = 'at saw')) u join lot b using (lot_id)),
    agreed as (select sum(n.count) as count, p_more + (select coalesce(sum(u.n), 0) from used u where u.grade_id = l.grade_id) as all_of_it,
          format('the customer takes %s pieces of %s', sum(n.count), (select designation from grade where grade_id = l.grade_id)) as words
        from consent n where n.cut_line_id = p_line and n.grade_id = l.grade_id and n.signed_by is not null and l.grade_id <> c.grade_id
          and not exists (select from grade_standin where asked_grade_id = c.grade_id and offered_grade_id = l.grade_id) having bool_and(n.count is not null)
      union all
      select sum(n.count), p_more + (select coalesce(sum(u.n), 0) from used u where u.section_id = l.section_id),
          format('the customer takes %s pieces of %s', sum(n.count), (select label from section where section_id = l.section_id))
        from consent n where n.cut_line_id = p_line and n.section_id = l.section_id and l.section_id <> c.section_id
          and not exists (select from section_standin where asked_section_id = c.section_id and offered_section_id = l.section_id) having bool_and(n.count is not null)
      union all
      select sum(n.count), p_more + (select coalesce(sum(u.n), 0) from used u where u.papers < c.papers),
          format('the customer takes %s pieces with papers %s', sum(n.count), v_papers)
        from consent n where n.cut_line_id = p_line and n.papers <= v_papers and n.signed_by is not null and v_papers < c.papers having bool_and(n.count is not null))
    select a.words from agreed a where a.all_of_it > a.count limit 1);
end $$;

create view api.consents as
  select n.consent_id as consent, c.order_no, c.line_no, g.designation as grade, x.label as section, n.papers::text, n.count, n.agreed_by, n.writing, n.cost_cents,
      n.recorded_by, n.signed_by
    from book.consent n join book.cut_line c using (cut_line_id) left join book.grade g on g.grade_id = n.grade_id left join book.section x on x.section_id = n.section_id;
