-- Seals are linked, each to the one before it, so that however many there are one reading of the ledger says whether they agree. Those that were taken
-- before are of the ends of all chains alone, and stay so.
alter table book.seal
  add column linked boolean not null default false,
  add column ends text,
  add constraint seal_ends check (ends is null or linked);
comment on column book.seal.digest is 'SHA-256, hex, over the digest of the seal before, ends, and the hashes of all happenings since; where it is not linked, over the ends of all chains';
comment on column book.seal.ends is 'SHA-256, hex, over the ends of all chains at the seal; null where they were not taken';
