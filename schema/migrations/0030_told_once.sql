-- From here on what strokes take off a bar is told by them alone (guard.told_by_strokes): a program that does not know it would take the book for a broken one.
comment on table book.happening is 'The ledger: what happened to which row, append-only. Replaying sets in order gives the present state; the length of a piece is the one that was told last, less what strokes took off since.';
