-- What is here is told by its state, not by its length: a stroke makes the piece shorter, and where no index asks for the length, none of them is written for it.
drop index book.piece_here, book.piece_state, book.piece_here_of_lot;
create index piece_here on book.piece (place_id) where place_id is not null;                  -- what lies where
create index piece_state on book.piece (state) where state in ('expected', 'at door', 'on rack', 'at saw', 'outside', 'in transit', 'missing');
create index piece_here_of_lot on book.piece (lot_id) where state in ('expected', 'at door', 'on rack', 'at saw', 'outside', 'in transit', 'missing');  -- the next best piece of a lot
