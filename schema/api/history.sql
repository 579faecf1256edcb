-- What happened, as people read it.

-- One line a happening of a piece, oldest first by seq; entered: how late it was written down, and by whom; put_right: the deed
-- that reverses it, or why none does; together: the bundle and stroke of the saw that cut it with other bars.
create view api.piece_history as
  select p.tag, h.seq, h.at, h.true_at, guard.late_words(h.at, h.true_at, h.who) as entered, h.who, h.device, h.deed, h.tbl as about, h.reason, h.sets, guard.put_right_words(h.deed) as put_right,
      case when h.sets ? 'saw_bundle_id' then concat('bundle ', h.sets ->> 'saw_bundle_id', ', stroke ' || (h.sets ->> 'saw_stroke')) end as together
    from book.happening h join book.piece p on h.chain = 'piece' and p.piece_id = h.chain_id;

create view api.conflicts as
  select c.conflict_id, c.kind, p.tag, c.words, c.closed_by, c.closing_words from book.conflict c left join book.piece p using (piece_id);
create view api.refusals as
  select at, who, deed, device, code, words from book.refusal;

-- Heats that look alike when folded: only ever a warning.
create view api.look_alikes as
  select distinct a.heat, b.heat as looks_like, a.heat_folded as folded from book.lot a join book.lot b using (heat_folded) where a.heat < b.heat;
