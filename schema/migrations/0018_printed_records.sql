-- Records that were printed: what each stood on, so that the digest on the paper can be asked about later. And the strokes
-- that were ever booked for an order line, found in the happenings themselves.
create table book.printed_record (
  printed_record_id bigint generated always as identity,
  digest text not null,
  kind text not null,
  subject text not null,
  mill text,
  content text not null,
  ends jsonb not null,
  printed_at timestamptz not null default clock_timestamp(),
  printed_by text not null,
  constraint printed_record_pk primary key (printed_record_id),
  constraint printed_record_digests check (digest ~ '^[0-9a-f]{64}$' and content ~ '^[0-9a-f]{64}$'),
  constraint printed_record_ends check (jsonb_typeof(ends) = 'array')
);
comment on table book.printed_record is 'Append-only, not chronicled: a row a state of the book and a subject, however often it was printed';
comment on column book.printed_record.content is 'SHA-256, hex, of what the record says';
comment on column book.printed_record.ends is 'the chains it stands on, as they ended then: [chain, id, seq, hash] each';
create index printed_record_digest on book.printed_record (digest);  -- a digest typed from a paper

create index happening_stroke_line on book.happening ((sets ->> 'cut_line_id')) where tbl = 'stroke' and sets ? 'cut_line_id';  -- what was ever cut for an order line
create index piece_old_tag on book.piece (old_tag) where old_tag is not null;                   -- a piece by the number it had before
create index document_replaces on book.document (replaces_id) where replaces_id is not null;    -- is it the present version
