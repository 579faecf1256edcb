-- A receipt booked wrongly as a whole is reversed; every label that should exist is a job of the queue.
alter type book.piece_state add value 'reversed';
alter type book.out_class add value 'reversed';

alter table book.piece
  drop constraint piece_gone_is_empty,
  add constraint piece_gone_is_empty check (
    (state::text in ('cut up', 'shipped', 'scrapped', 'returned', 'written off', 'passed on', 'reversed')) = (length_nm = 0));

alter table book.receipt
  add column reversed_by text,
  add column reversed_words text,
  drop constraint receipt_key,
  add constraint receipt_reversed check ((reversed_by is null) = (reversed_words is null));
comment on column book.receipt.reversed_by is 'who took it back as booked wrongly as a whole; its note may then be booked again';
create unique index receipt_key on book.receipt (supplier_id, note) nulls not distinct where reversed_by is null;

create table book.label_job (
  label_job_id bigint generated always as identity,
  piece_id bigint not null references book.piece on delete restrict,
  kind text not null,
  why text not null,
  asked_by text not null,
  state text not null default 'waiting',
  printer text,
  printed_at timestamptz,
  words text,
  constraint label_job_pk primary key (label_job_id),
  constraint label_job_kind check (kind in ('new', 'again')),
  constraint label_job_state check (state in ('waiting', 'failed', 'printed') and (state = 'printed') = (printed_at is not null)
    and (state = 'waiting') = (printer is null) and (state = 'failed') = (words is not null))
);
comment on table book.label_job is 'A label that should exist: printed, or waiting to be; one that failed waits too, with the reason';
create index label_job_open on book.label_job (label_job_id) where state <> 'printed';
create index label_job_piece on book.label_job (piece_id);
