-- Labels: what is printed for a piece, the queue of those that are to be printed, and what became of each.

-- What the label of a piece says. Never without a heat, or NO HEAT.
create function guard.label(p_piece bigint) returns jsonb
language plpgsql stable security definer set search_path = book, pg_catalog, pg_temp as $$
begin
  return (select jsonb_build_object('tag', e.tag, 'kind', e.kind, 'mill', m.name, 'grade', g.designation, 'number', g.number, 'condition', e.condition, 'section', x.label,
    'length_nm', e.length_nm, 'mass_g', guard.mass_g(e.length_nm, x.area_um2, g.density_kg_m3), 'heat', guard.heat_word(e.lot_id),
    'document', e.document, 'owner', case when e.owner_id <> 0 then 'OWNED BY ' || upper(o.name) end,
    'blocked', guard.blocked_words(e.piece_id), 'limits', e.limits, 'parent', (select tag from book.piece q where q.piece_id = e.parent_id),
    'place', w.name, 'from', (select string_agg(distinct case d.kind when 'pipe' then 'from piped bar' else 'from a bar with ' || d.kind end, ', ')
      from book.defect_report d where d.piece_id = any (e.path)))
  from guard.metal e left join book.grade g using (grade_id) join book.section x using (section_id) left join book.party m on m.party_id = e.mill_id
  join book.party o on o.party_id = e.owner_id left join book.place w using (place_id) where e.piece_id = p_piece);
end $$;

-- Every new tag is a label that should exist.
create function guard.new_tag_has_a_label() returns trigger
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
begin
  insert into label_job (piece_id, kind, why, asked_by) select piece_id, 'new', 'new tag', session_user from fresh order by piece_id;
  return null;
end $$;
create trigger label after insert on book.piece referencing new table as fresh for each statement execute function guard.new_tag_has_a_label();

-- {"jobs":[numbers],"printer"}: they came out of the printer and are legible.
create function api.label_printed(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('label_printed', p_request, p);
  v_printer text;
  v_job bigint;
  j label_job;
begin
  if v_again is not null then return v_again; end if;
  v_printer := guard.said(p, 'printer', 'the printer they came from');
  if jsonb_array_length(coalesce(p -> 'jobs', '[]')) = 0 then
    raise exception using errcode = 'HK026', message = 'say which labels: jobs is empty', hint = '`heatkeep label list` names them';
  end if;
  perform guard.lock_pieces(array(select piece_id from label_job where label_job_id in (select x::bigint from jsonb_array_elements_text(p -> 'jobs') x)));
  for v_job in select x::bigint from jsonb_array_elements_text(p -> 'jobs') x order by 1 loop
    j := guard.open_label(v_job);
    update label_job set state = 'printed', printer = v_printer, printed_at = coalesce((p ->> 'true_at')::timestamptz, now()), words = null where label_job_id = v_job;
  end loop;
  return guard.end_deed(jsonb_build_object('printed', jsonb_array_length(p -> 'jobs'), 'printer', v_printer,
    'waiting', (select count(*) from api.label_queue where state <> 'printed')));
end $$;

-- {"job","printer","reason"}: it did not come out; it stays in the queue.
create function api.label_failed(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('label_failed', p_request, p);
  j label_job;
begin
  if v_again is not null then return v_again; end if;
  perform guard.lock_pieces(array(select piece_id from label_job where label_job_id = guard.said(p, 'job', 'the number in the queue of labels')::bigint));
  j := guard.open_label((p ->> 'job')::bigint);
  update label_job set state = 'failed', printer = guard.said(p, 'printer', 'the printer'), words = guard.said(p, 'reason', 'what is wrong: no ribbon, jammed, not there')
    where label_job_id = j.label_job_id;
  return guard.end_deed(jsonb_build_object('job', j.label_job_id, 'tag', (select tag from piece where piece_id = j.piece_id)));
end $$;

-- Its piece is locked by the caller.
create function guard.open_label(p_job bigint) returns book.label_job
language plpgsql volatile as $$
declare
  j label_job;
begin
  select * into j from label_job where label_job_id = p_job;
  if j.label_job_id is null then
    raise exception using errcode = 'HK026', message = format('there is no label number %s', p_job), hint = '`heatkeep label list` names them';
  elsif j.state = 'printed' then
    raise exception using errcode = 'HK043', message = format('label %s was printed at %s', p_job, to_char(j.printed_at, 'YYYY-MM-DD HH24:MI')),
      hint = 'another one of the same piece, at the piece: heatkeep piece relabel';
  end if;
  return j;
end $$;

-- Labels asked for: those that wait and those that failed while their piece is here, and all that were printed.
create view api.label_queue as
  select j.label_job_id as job, p.tag, j.kind, j.why, j.asked_by, j.state, j.printer, j.printed_at, j.words, w.name as place, j.state = 'printed' as printed,
      (select count(*) from book.label_job a where a.piece_id = j.piece_id and a.kind = 'again' and a.label_job_id <= j.label_job_id and j.kind = 'again') as reprint, h.true_at as asked_at
    from book.label_job j join book.piece p using (piece_id) left join book.place w using (place_id)
    left join book.happening h on h.tbl = 'label_job' and h.row_id = j.label_job_id and h.sets ? 'label_job_id'
    where p.length_nm > 0 or j.state = 'printed';

-- What the labels say of those that wait: of these tags (a blank between; empty: of all), in the order they were asked for.
create function api.labels_to_print(p_tags text) returns table (job bigint, reprint bigint, asked_on date, label jsonb)
language sql stable security definer set search_path = book, pg_catalog, pg_temp
begin atomic
  select q.job, q.reprint, q.asked_at::date, guard.label(e.piece_id) from api.label_queue q join book.piece e using (tag)
    where not q.printed and (p_tags = '' or q.tag = any (string_to_array(p_tags, ' '))) order by q.job;
end;

-- Cut pieces on site, of one line and one lot a row: they have no tags, so a batch has a label.
create view api.cut_batches as
  select c.order_no as "order", c.line_no as line, cu.name as customer, m.name as mill, guard.heat_word(l.lot_id) as heat, g.designation as grade,
      x.label as section, l.condition, guard.document_words(l.lot_id) as document, case when s.owner_id <> 0 then 'OWNED BY ' || upper(o.name) end as owner,
      c.length_nm, s.count, s.blocked
    from book.cut_line c cross join lateral (select t.lot_id, t.owner_id, count(*), max(coalesce(guard.hold_words(t.piece_id), guard.quarantine_words(t.piece_id),
          case when t.held then guard.stopped_words(t.stroke_id) end)) as blocked
        from book.stroke t where t.cut_line_id = c.cut_line_id and t.class = 'good' and t.shipment_line_id is null and t.length_nm > 0 group by t.lot_id, t.owner_id) s
    left join book.party cu on cu.party_id = c.customer_id join book.lot l using (lot_id)
    left join book.party m on m.party_id = l.mill_id left join book.grade g on g.grade_id = l.grade_id join book.section x on x.section_id = l.section_id
    join book.party o on o.party_id = s.owner_id;
