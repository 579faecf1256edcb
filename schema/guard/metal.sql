-- What is said of metal, set by set: every list reads these views, and what is asked of one piece or lot is asked of them too.

-- Metal that is in the shop, or that the shop waits for: of a piece, that its length is not 0 (constraint piece_gone_is_empty). Said by the state,
-- as the indexes of what is here say it.
create function guard.is_here(p_state book.piece_state) returns boolean
language sql immutable
return p_state in ('expected', 'at door', 'on rack', 'at saw', 'outside', 'in transit', 'missing');

-- The papers that stand: accepted, and not replaced by accepted ones.
create view guard.standing_document as
  select d.* from book.document d where d.accepted_by is not null
    and not exists (select from book.document o where o.replaces_id = d.document_id and o.accepted_by is not null);

-- The documents a lot's metal goes with, in words; what quality lets be cut before they are here: for lines that ask for any, and nothing of it leaves; and a defect that was found in metal of it and waits for the lead's answer, or was answered by stop.
create view guard.lot_words as
  select l.lot_id,
      coalesce((select string_agg(d.type || ' no. ' || d.number, ', ' order by d.type desc, d.number) from book.document_lot n join guard.standing_document d using (document_id)
        where n.lot_id = l.lot_id), case l.papers_state when 'awaited' then 'papers awaited' else 'none' end) as document,
      case when l.papers_state = 'awaited' and l.at_risk_by is not null then 'cut at risk: papers awaited, do not ship' end as risk,
      (select format('%s was found in %s of this heat (report %s by %s); %s', d.kind, e.tag, d.defect_report_id, d.reported_by,
          case when d.answer is null then 'the lead answers before more of it is cut' else 'the lead said stop: ' || d.answer_words end)
        from book.defect_report d join book.piece e using (piece_id) where d.lot_id = l.lot_id and d.answer is distinct from 'cut on' order by d.defect_report_id limit 1) as defect
    from book.lot l;

-- What the live holds name: lots (of a heat, with papers), lines of a receipt, pieces; open: nobody has condemned it. Kind by kind, so that who asks for
-- one of them finds it by its key.
create view guard.hold_target as
  select hold_id, lot_id, null::bigint as receipt_line_id, piece_id, condemned_by is null as open from book.hold where lifted_by is null and coalesce(lot_id, piece_id) is not null
  union all select h.hold_id, l.lot_id, null, null, h.condemned_by is null from book.hold h join book.lot l on l.heat = h.heat and (h.mill_id is null or h.mill_id = l.mill_id) where h.lifted_by is null
  union all select h.hold_id, d.lot_id, null, null, h.condemned_by is null from book.hold h join book.document_lot d using (document_id) where h.lifted_by is null
  union all select h.hold_id, null, r.receipt_line_id, null, h.condemned_by is null from book.hold h join book.receipt_line r using (receipt_id) where h.lifted_by is null;

create function guard.held_numbers(p_what text) returns bigint[]
language plpgsql stable security definer set search_path = book, pg_catalog, pg_temp as $$
begin
  return array(select n from (select case p_what when 'lot' then lot_id when 'receipt line' then receipt_line_id when 'piece' then piece_id end as n from guard.hold_target) t where n is not null);
end $$;

-- Asked of one piece, by its row: whether a live hold may be meant by it, and whether its papers are awaited and quality has not let it be cut before.
create function guard.metal_asked(p book.piece, out hold_meant boolean, out papers_awaited boolean)
language plpgsql stable as $$
begin
  select p.before_path is not null or exists (select from book.hold h where h.lifted_by is null
      and (h.lot_id = p.lot_id or h.heat = l.heat or h.piece_id = any (p.path) or h.scope::text in ('certificate', 'receipt'))),
      l.papers_state = 'awaited' and l.at_risk_by is null
    into hold_meant, papers_awaited from book.lot l where lot_id = p.lot_id;
end $$;

-- The first live hold on a piece, on what it came from or on the same metal under another tag; null where none is. p_open: of those that nobody has
-- condemned. What the holds name is looked up only where one may be meant.
create function guard.hold_on(p_piece bigint, p_open boolean) returns bigint
language plpgsql stable as $$
declare
  p book.piece;
  v_lots bigint[];
  v_lines bigint[];
begin
  select * into p from book.piece where piece_id = p_piece;
  if not (guard.metal_asked(p)).hold_meant then
    return null;
  end if;
  select array_agg(lot_id), array_agg(receipt_line_id) into v_lots, v_lines from book.piece where piece_id = any (p_piece || p.before_path);
  return (select min(hold_id) from guard.hold_target where (lot_id = any (v_lots) or receipt_line_id = any (v_lines) or piece_id = any (p.path || p.before_path)) and (open or not p_open));
end $$;

-- The same in words; null where no hold is on it.
create function guard.hold_words(p_piece bigint) returns text
language plpgsql stable security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_hold bigint := guard.hold_on(p_piece, false);
begin
  if v_hold is null then
    return null;
  end if;
  return (select case when condemned_by is null then format('held by %s: %s', held_by, reason) else format('condemned by %s: %s', condemned_by, condemned_words) end from hold where hold_id = v_hold);
end $$;

-- The hold for which a piece stays here as evidence, in words; null where none is on it or quality has closed the case: condemned metal leaves for good.
create function guard.evidence_words(p_piece bigint) returns text
language plpgsql stable as $$
begin
  return (select format('held by %s: %s', held_by, reason) from hold where hold_id = guard.hold_on(p_piece, true));
end $$;

-- What stops metal that no hold is on.
create function guard.stop_words(p_quarantined text, p_frozen boolean, p_papers_awaited boolean) returns text
language sql immutable
return coalesce(p_quarantined, case when p_frozen then 'its place is being counted' end, case when p_papers_awaited then 'its papers are awaited' end);

-- Every piece with what stands against its use: a live hold on it, on what it came from or on the same metal under another tag (so children inherit
-- the strictest, at once and later); a quarantine of any of these; its place being counted; its papers awaited. And the strongest papers it may
-- serve: its lot's, or less where it or what it came from was limited; and those that it may be cut for, which its papers may yet be. A null says that nothing stands against it. Holds are looked for piece by piece
-- only where one of them names its lot, line or path, or the metal had another tag before: few pieces are held.
create view guard.metal as
  select w.*, coalesce(w.held, w.stopped) as blocked, case when w.held is not null then 'held' when w.quarantined is not null then 'quarantined' when w.frozen then 'being counted'
        when w.stopped is not null then 'papers awaited' end as waits
    from (select w.*, guard.stop_words(w.quarantined, w.frozen, w.papers_state = 'awaited' and w.at_risk_by is null) as stopped
      from (select p.*, l.mill_id, l.heat, l.grade_id, l.section_id, l.condition, l.identity, l.papers_state, l.at_risk_by,
        case when p.lot_id = any ((select guard.held_numbers('lot'))::bigint[]) or p.receipt_line_id = any ((select guard.held_numbers('receipt line'))::bigint[])
          or p.path && (select guard.held_numbers('piece')) or p.before_path is not null then guard.hold_words(p.piece_id) end as held,
        (select n.risk from guard.lot_words n where n.lot_id = p.lot_id) as risk,
        (select n.document from guard.lot_words n where n.lot_id = p.lot_id) as document, (select n.defect from guard.lot_words n where n.lot_id = p.lot_id) as defect,
        (select 'quarantined: ' || q.quarantine from book.piece q where q.piece_id = any (p.path || p.before_path) and q.quarantine is not null order by q.piece_id limit 1) as quarantined,
        least(l.papers, (select min(q.limit_papers) from book.piece q where q.piece_id = any (p.path || p.before_path) and q.limit_papers is not null)) as good_for,
        least(case when l.papers_state = 'awaited' and l.at_risk_by is not null then '3.2' else l.papers end, (select min(q.limit_papers) from book.piece q where q.piece_id = any (p.path || p.before_path) and q.limit_papers is not null)) as cut_for,
        (select string_agg(distinct q.limit_words, '; ') from book.piece q where q.piece_id = any (p.path || p.before_path) and q.limit_papers is not null) as limits
      from book.piece p join book.lot l using (lot_id)) w) w;

create function guard.quarantine_words(p_piece bigint) returns text
language plpgsql stable security definer set search_path = book, pg_catalog, pg_temp as $$
begin
  return (select quarantined from guard.metal where piece_id = p_piece);
end $$;

-- guard.metal.blocked of one piece, by its row: a table is asked only for what the row does not say.
create function guard.blocked_words_of(p book.piece) returns text
language plpgsql stable as $$
declare
  n record := guard.metal_asked(p);
begin
  return coalesce(case when n.hold_meant then guard.hold_words(p.piece_id) end, guard.stop_words(
    case when cardinality(p.path || p.before_path) > 1 then guard.quarantine_words(p.piece_id) else 'quarantined: ' || p.quarantine end, p.frozen, n.papers_awaited));
end $$;

create function guard.blocked_words(p_piece bigint) returns text
language plpgsql stable security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  p piece;
begin
  select * into p from piece where piece_id = p_piece;
  return guard.blocked_words_of(p);
end $$;

create function guard.papers_of(p_piece bigint) returns book.papers
language plpgsql stable security definer set search_path = book, pg_catalog, pg_temp as $$
begin
  return (select good_for from guard.metal where piece_id = p_piece);
end $$;

create function guard.limit_words(p_piece bigint) returns text
language plpgsql stable security definer set search_path = book, pg_catalog, pg_temp as $$
begin
  return (select limits from guard.metal where piece_id = p_piece);
end $$;

create function guard.document_words(p_lot bigint) returns text
language plpgsql stable security definer set search_path = book, pg_catalog, pg_temp as $$
begin
  return (select document from guard.lot_words where lot_id = p_lot);
end $$;

create function guard.defect_words(p_lot bigint) returns text
language plpgsql stable security definer set search_path = book, pg_catalog, pg_temp as $$
begin
  return (select defect from guard.lot_words where lot_id = p_lot);
end $$;
