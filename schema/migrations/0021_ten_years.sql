-- What a book of ten years is asked for by a key and had to read through for: every one of these was a scan of a big table.
create index piece_from_cut on book.piece (from_cut_id) where from_cut_id is not null;            -- what a cut made: asked at every cut
create index promise_piece on book.promise (piece_id);                                            -- all promises of a piece
create index stroke_reject on book.stroke (stroke_id) where class = 'reject';                     -- pieces cut wrong
create index metal_out_reverses on book.metal_out (reverses_id) where reverses_id is not null;    -- was it taken back
create index metal_out_unexplained on book.metal_out (metal_out_id) where class = 'unexplained';  -- who measured otherwise
create index mechanical_test_lot on book.mechanical_test (document_lot_id);                       -- the values of a document
create index receipt_note on book.receipt (note);                                                 -- a delivery note typed
create index lot_awaited on book.lot (lot_id) where papers_state = 'awaited';                     -- what waits for papers
create index heat_reading_line on book.heat_reading (receipt_line_id) where receipt_line_id is not null;   -- the heats read of a line: asked at every line received
create index document_number on book.document (number);                                           -- a certificate typed
