-- What stands against metal leaving for what it was cut for: the one place where that is said.

-- Every reason against these cut pieces, one row each: which line, how many pieces of which heat, cut from which tags. None
-- where nothing stands against them.
create function guard.against_leaving(p_strokes bigint[]) returns table (words text)
language sql stable security definer set search_path = book, pg_catalog, pg_temp
begin atomic
  with cut as (
    select s.piece_id, s.lot_id, s.owner_id, s.cut_line_id, s.held, count(*) as n from book.stroke s where s.stroke_id = any (p_strokes) group by 1, 2, 3, 4, 5),
  why as (
    select c.order_no, c.line_no, k.n, e.tag, l.heat, w.rank, w.words
      from cut k join book.lot l using (lot_id) join book.cut_line c using (cut_line_id) join book.piece e using (piece_id)
      cross join lateral (values
        (1, guard.hold_words(k.piece_id)),
        (2, guard.quarantine_words(k.piece_id)),
        (3, case when k.held then 'cut while it was stopped, and not freed since' end),
        (4, case when l.papers_state = 'awaited' then 'its papers are awaited' end),
        (5, case guard.may_not_serve(k.lot_id, k.owner_id, k.cut_line_id)
          when 'its papers are weaker than asked for' then case when l.papers_state <> 'awaited' then format('its papers are weaker than asked for (%s, not %s)', l.papers, c.papers) end
          else guard.may_not_serve(k.lot_id, k.owner_id, k.cut_line_id) end),
        (6, guard.limited_for(k.piece_id, k.cut_line_id))) w (rank, words)
      where w.words is not null)
  select format('order %s line %s, %s pieces of %s cut from %s: %s', y.order_no, y.line_no, sum(y.n), coalesce('heat ' || y.heat, 'no heat'),
      string_agg(distinct y.tag, ', ' order by y.tag), y.words)
    from why y group by y.order_no, y.line_no, y.heat, y.rank, y.words order by y.order_no, y.line_no, y.rank, y.heat, y.words;
end;
