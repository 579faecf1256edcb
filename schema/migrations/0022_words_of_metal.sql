-- What is said of every piece on hand is looked up in what is small: the few pieces that are quarantined, and the few that are limited.
create index piece_quarantined on book.piece (piece_id) where quarantine is not null;
create index piece_limited on book.piece (piece_id) where limit_papers is not null;
-- How many of a line are cut, when a stroke was made, and which layouts are live, are read from the indexes alone.
drop index book.stroke_line;
create index stroke_line on book.stroke (cut_line_id, class) where cut_line_id is not null;
drop index book.happening_row;
create index happening_row on book.happening (tbl, row_id) include (true_at);
create index layout_live on book.layout (layout_id) where state in ('promised', 'at saw');
