-- What the book said of a counted piece when it was counted: the count is compared with that, whatever has become of the piece since.
alter table book.count_line
  add column book_nm bigint,
  add column book_place_id bigint,
  add constraint count_line_book_place foreign key (book_place_id) references book.place on delete restrict,
  add constraint count_line_book check (book_nm is null or piece_id is not null and book_nm >= 0);
comment on column book.count_line.book_nm is 'its length in the book when it was counted; null where it was counted before the book kept that';
comment on column book.count_line.book_place_id is 'its place in the book when it was counted; null also where it had none';
