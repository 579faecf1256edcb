-- What stands against metal leaving for what it was cut for: the one place where that is said.

-- The last return by a customer that a cut piece came back with; null where it never did.
create function guard.return_of(p_stroke bigint) returns bigint
language plpgsql stable as $$
begin
  return (select max(customer_return_id) from customer_return where p_stroke = any (stroke_ids));
end $$;

-- Why a cut piece is stopped by itself, whatever its metal is now: a customer had it, or else it was cut while its metal was held; null where it is not.
create function guard.stopped_words(p_stroke bigint) returns text
language plpgsql stable security definer set search_path = book, pg_catalog, pg_temp as $$
begin
  return (select coalesce((select format('returned by %s, note %s: %s', k.name, r.note, r.reason) from customer_return r join party k on k.party_id = r.customer_id
      where r.customer_return_id = guard.return_of(p_stroke)), 'cut while it was held') from stroke where stroke_id = p_stroke and held);
end $$;

-- Every reason against cut pieces of this piece going to their line's customer, the gravest first: up to rank 4 they are stopped, from 5 on they may not
-- serve the line. p_stopped: what guard.stopped_words says of them. None where nothing stands against them.
create function guard.reasons_against(p_piece bigint, p_lot bigint, p_owner bigint, p_line bigint, p_stopped text) returns table (rank integer, words text)
language sql stable security definer set search_path = book, pg_catalog, pg_temp
begin atomic
  select w.rank, w.words from book.lot l join book.cut_line c on c.cut_line_id = p_line cross join lateral guard.may_not_serve(p_lot, p_owner, c) m (words)
    cross join lateral (values
      (1, guard.hold_words(p_piece)),
      (2, guard.quarantine_words(p_piece)),
      (3, case when guard.hold_words(p_piece) is null then p_stopped end),
      (4, case when l.papers_state = 'awaited' then 'its papers are awaited' end),
      (5, case m.words when 'its papers are weaker than asked for' then case when l.papers_state <> 'awaited' then format('its papers are weaker than asked for (%s, not %s)', l.papers, c.papers) end
        else m.words end),
      (6, guard.limited_for(p_piece, c)),
      (7, case when p_owner <> 0 and p_owner = c.owner_id and p_owner is distinct from c.customer_id
        then format('it belongs to %s and serves nobody else', (select name from book.party where party_id = p_owner)) end)) w (rank, words)
    where l.lot_id = p_lot and w.words is not null;
end;

-- The same of many cut pieces, one row a reason: which line, how many pieces of which heat, cut from which tags.
create function guard.against_leaving(p_strokes bigint[]) returns table (rank integer, words text)
language sql stable
begin atomic
  with cut as (
    select s.piece_id, s.lot_id, s.owner_id, s.cut_line_id, case when s.held then guard.stopped_words(s.stroke_id) end as stopped, count(*) as n
      from book.stroke s where s.stroke_id = any (p_strokes) group by 1, 2, 3, 4, 5),
  why as (
    select c.order_no, c.line_no, k.n, e.tag, l.heat, w.rank, w.words
      from cut k join book.lot l using (lot_id) join book.cut_line c using (cut_line_id) join book.piece e using (piece_id)
      cross join lateral guard.reasons_against(k.piece_id, k.lot_id, k.owner_id, k.cut_line_id, k.stopped) w)
  select y.rank, format('order %s line %s, %s pieces of %s cut from %s: %s', y.order_no, y.line_no, sum(y.n), coalesce('heat ' || y.heat, 'no heat'),
      string_agg(distinct y.tag, ', ' order by y.tag), y.words)
    from why y group by y.order_no, y.line_no, y.heat, y.rank, y.words order by y.order_no, y.line_no, y.rank, y.heat, y.words;
end;
