-- The ledger and what every deed leans on: request numbers, happenings, their chains and seals, refusals that
-- must be remembered, conflicts for a person to decide.
create table book.request (
  request_id uuid not null,
  who text not null,
  deed text not null,
  digest text not null,
  answer jsonb,
  at timestamptz not null default clock_timestamp(),
  constraint request_pk primary key (request_id)
);
comment on table book.request is 'Every deed carries a request number: the same one twice does nothing twice and answers the same.';
comment on column book.request.digest is 'SHA-256, hex, of the deed''s arguments';

create table book.happening (
  happening_id bigint generated always as identity,
  chain text not null,
  chain_id bigint not null,
  seq integer not null,
  deed text not null,
  tbl text not null,
  row_id bigint not null,
  sets jsonb not null,
  at timestamptz not null,
  true_at timestamptz not null,
  who text not null,
  device text,
  reason text,
  request_id uuid,
  hash bytea not null,
  constraint happening_pk primary key (happening_id),
  constraint happening_chain_key unique (chain, chain_id, seq),
  constraint happening_hash_length check (octet_length(hash) = 32)
);
comment on table book.happening is 'The ledger: what happened to which row, append-only. Replaying sets in order gives the present state.';
comment on column book.happening.at is 'when it was entered';
comment on column book.happening.true_at is 'when it really happened, as far as was said';
comment on column book.happening.sets is 'the values the row got, by column; null means emptied';
create index happening_row on book.happening (tbl, row_id);           -- replay of one row
create index happening_at on book.happening (at);                     -- what happened lately

create table book.chain_end (
  chain text not null,
  chain_id bigint not null,
  seq integer not null,
  hash bytea not null,
  constraint chain_end_pk primary key (chain, chain_id)
);
comment on table book.chain_end is 'The last link of every chain; the book''s digest is taken over these.';

create table book.seal (
  seal_id bigint generated always as identity,
  last_happening_id bigint not null,
  digest text not null,
  at timestamptz not null default clock_timestamp(),
  who text not null,
  constraint seal_pk primary key (seal_id)
);
comment on table book.seal is 'Digests taken to be kept outside the book: what is changed behind its back after a seal is found by comparing.';

create table book.refusal (
  refusal_id bigint generated always as identity,
  at timestamptz not null default clock_timestamp(),
  who text not null,
  deed text not null,
  device text,
  code text not null,
  words text not null,
  constraint refusal_pk primary key (refusal_id)
);
comment on table book.refusal is 'Refused tries that must be remembered (a wrong tag at the saw).';

create table book.conflict (
  conflict_id bigint generated always as identity,
  kind text not null,
  piece_id bigint,
  words text not null,
  closed_by text,
  closing_words text,
  constraint conflict_pk primary key (conflict_id)
);
comment on table book.conflict is 'What the book had to record although a rule was against it; a person decides.';
create index conflict_open on book.conflict (conflict_id) where closed_by is null;
