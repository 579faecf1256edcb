-- A stroke that was booked and never made stays, with nothing in it, and says how it came to be booked.
alter table book.stroke
  add column not_cut text,
  drop constraint stroke_lengths,
  add constraint stroke_lengths check (length_nm >= 0 and kerf_nm >= 0 and (length_nm + kerf_nm > 0 or reused_as_id is not null or not_cut is not null)),
  add constraint stroke_not_cut check (not_cut is null or btrim(not_cut) <> '' and class = 'trim' and length_nm + kerf_nm = 0 and cut_line_id is null
    and recut_of_id is null and reused_as_id is null and shipment_line_id is null);
comment on column book.stroke.not_cut is 'how it came to be booked though it was not made; null: it was made';
