-- Where a stroke began: a piece that is taken up again keeps what was marked on that stretch of the bar.
alter table book.stroke
  add column from_nm bigint,
  add constraint stroke_from check (from_nm >= 0);
comment on column book.stroke.from_nm is 'from the end that is cut first of the piece as it was made, as zones count; null where it was booked before that was kept';
