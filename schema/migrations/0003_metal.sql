-- The metal: lots and how their heat was read, documents, receipts, pieces, what was cut off them and every
-- other way that metal leaves a piece. For every piece, always:
--   made_length_nm = length_nm + sum over strokes (length_nm + kerf_nm) + sum over drops made_length_nm
--                    + sum over metal_out length_nm        (guard/balance.sql, deferred to commit)
create type book.identity as enum ('heat', 'grade only', 'unknown');
create type book.papers_state as enum ('none', 'awaited', 'here');

create table book.lot (
  lot_id bigint generated always as identity,
  mill_id bigint references book.party on delete restrict,
  heat text,
  heat_folded text generated always as (translate(upper(regexp_replace(heat, '[\s\-]', '', 'g')), 'OISB', '0158')) stored,
  section_id bigint not null references book.section on delete restrict,
  grade_id bigint references book.grade on delete restrict,
  condition text not null default '',
  identity book.identity not null,
  origin text,
  papers book.papers not null default 'none',
  papers_state book.papers_state not null default 'awaited',
  at_risk_by text,
  constraint lot_pk primary key (lot_id),
  constraint lot_heat_needs check ((identity = 'heat') = (heat is not null and mill_id is not null)),
  constraint lot_heat_grade check (identity = 'unknown' or grade_id is not null),
  constraint lot_heat_filled check (btrim(heat) <> ''),
  constraint lot_unknown_is_uncertified check (identity = 'heat' or papers = 'none'),
  constraint lot_papers_here check ((papers_state = 'here') = (papers <> 'none')),
  constraint lot_key unique (mill_id, heat, section_id, condition)
);
comment on table book.lot is 'Issuer + heat + section + condition, with its grade: what a certificate belongs to. An unknown one is good for nothing certificated.';
comment on column book.lot.heat is 'exactly as read';
comment on column book.lot.heat_folded is 'only to warn of look-alikes, never to merge';
comment on column book.lot.at_risk_by is 'who allowed cutting before the papers came';
create index lot_heat on book.lot (heat);                -- a heat typed or scanned
create index lot_heat_folded on book.lot (heat_folded);  -- look-alikes

create type book.read_from as enum ('metal', 'tag', 'slip', 'certificate', 'analysis', 'none');
create table book.heat_reading (
  heat_reading_id bigint generated always as identity,
  lot_id bigint not null references book.lot on delete restrict,
  read_as text not null,
  read_from book.read_from not null,
  read_by text not null,
  constraint heat_reading_pk primary key (heat_reading_id)
);
create index heat_reading_lot on book.heat_reading (lot_id);

create table book.document_file (
  sha256 text not null,
  bytes bytea not null,
  constraint document_file_pk primary key (sha256),
  constraint document_file_unaltered check (encode(sha256(bytes), 'hex') = sha256)
);
comment on table book.document_file is 'Files kept byte for byte';

create table book.document (
  document_id bigint generated always as identity,
  issuer_id bigint not null references book.party on delete restrict,
  number text not null,
  type book.papers not null,
  issued_on date not null,
  version integer not null default 1,
  replaces_id bigint references book.document on delete restrict,
  file_sha256 text references book.document_file on delete restrict,
  accepted_by text,
  constraint document_pk primary key (document_id),
  constraint document_key unique (issuer_id, number, version),
  constraint document_has_type check (type <> 'none')
);

create table book.document_lot (
  document_lot_id bigint generated always as identity,
  document_id bigint not null references book.document on delete restrict,
  lot_id bigint not null references book.lot on delete restrict,
  constraint document_lot_pk primary key (document_lot_id),
  constraint document_lot_key unique (document_id, lot_id)
);
create index document_lot_lot on book.document_lot (lot_id);

create type book.analysis_kind as enum ('heat', 'product');
create table book.analysis (
  analysis_id bigint generated always as identity,
  document_lot_id bigint not null references book.document_lot on delete restrict,
  kind book.analysis_kind not null,
  element text not null,
  ppm_x100 bigint not null,
  constraint analysis_pk primary key (analysis_id),
  constraint analysis_key unique (document_lot_id, kind, element),
  constraint analysis_range check (ppm_x100 between 0 and 100000000)
);
comment on column book.analysis.ppm_x100 is 'mass fraction in units of 0.000 001 %';

create table book.mechanical_test (
  mechanical_test_id bigint generated always as identity,
  document_lot_id bigint not null references book.document_lot on delete restrict,
  property text not null,
  value_milli bigint not null,
  unit text not null,
  constraint mechanical_test_pk primary key (mechanical_test_id)
);

create type book.receipt_kind as enum ('delivery', 'opening', 'found');
create table book.receipt (
  receipt_id bigint generated always as identity,
  kind book.receipt_kind not null,
  supplier_id bigint references book.party on delete restrict,
  note text not null,
  purchase_order text,
  received_at timestamptz not null,
  received_by text not null,
  constraint receipt_pk primary key (receipt_id),
  constraint receipt_key unique nulls not distinct (supplier_id, note)
);

create table book.receipt_line (
  receipt_line_id bigint generated always as identity,
  receipt_id bigint not null references book.receipt on delete restrict,
  line text not null,
  lot_id bigint not null references book.lot on delete restrict,
  counted integer not null,
  slip_count integer,
  length_nm bigint not null,
  theoretical_mass_g bigint not null,
  weighed_mass_g bigint,
  cents_per_tonne bigint,
  mismatch text,
  constraint receipt_line_pk primary key (receipt_line_id),
  constraint receipt_line_key unique (receipt_id, line),
  constraint receipt_line_counted check (counted > 0 and length_nm > 0)
);
create index receipt_line_lot on book.receipt_line (lot_id);

create table book.bundle (
  bundle_id bigint generated always as identity,
  lot_id bigint not null references book.lot on delete restrict,
  name text not null,
  constraint bundle_pk primary key (bundle_id),
  constraint bundle_one_lot unique (bundle_id, lot_id)
);
comment on table book.bundle is 'Bars under one strap: one lot, by key';

create type book.piece_kind as enum ('bar', 'drop');
create type book.piece_state as enum ('expected', 'at door', 'on rack', 'at saw', 'outside', 'in transit',
  'cut up', 'shipped', 'scrapped', 'returned', 'missing', 'written off');
create type book.mark_end as enum ('first', 'last', 'both', 'none', 'unknown');

create table book.piece (
  piece_id bigint generated always as identity,
  tag text not null,
  old_tag text,
  kind book.piece_kind not null,
  lot_id bigint not null references book.lot on delete restrict,
  owner_id bigint not null default 0 references book.party on delete restrict,
  parent_id bigint,
  parent_made_length_nm bigint,
  from_cut_id bigint,
  path bigint[] not null,
  receipt_line_id bigint references book.receipt_line on delete restrict,
  bundle_id bigint,
  made_length_nm bigint not null,
  length_nm bigint not null,
  doubt_nm bigint not null default 0,
  ends smallint not null,
  mark_end book.mark_end not null default 'unknown',
  place_id bigint references book.place on delete restrict,
  state book.piece_state not null,
  quarantine text,
  frozen boolean not null default false,
  cents_per_tonne bigint,
  version integer not null default 1,
  constraint piece_pk primary key (piece_id),
  constraint piece_tag_key unique (tag),
  constraint piece_identity_key unique (piece_id, lot_id, owner_id),
  constraint piece_made_key unique (piece_id, made_length_nm),
  constraint piece_parent_identity foreign key (parent_id, lot_id, owner_id)
    references book.piece (piece_id, lot_id, owner_id) on update cascade on delete restrict,
  constraint piece_parent_length foreign key (parent_id, parent_made_length_nm)
    references book.piece (piece_id, made_length_nm) on delete restrict,
  constraint piece_bundle_lot foreign key (bundle_id, lot_id) references book.bundle (bundle_id, lot_id)
    on update cascade on delete restrict,
  constraint piece_no_longer_than_parent check (parent_id is null
    or (parent_made_length_nm is not null and made_length_nm <= parent_made_length_nm)),
  constraint piece_lengths check (made_length_nm > 0 and length_nm between 0 and made_length_nm and doubt_nm >= 0),
  constraint piece_gone_is_empty check (
    (state in ('cut up', 'shipped', 'scrapped', 'returned', 'written off')) = (length_nm = 0)),
  constraint piece_ends check (ends between 0 and 2),
  constraint piece_path check (path[cardinality(path)] = piece_id
    and (parent_id is null) = (cardinality(path) = 1)
    and (parent_id is null or path[cardinality(path) - 1] = parent_id))
);
comment on table book.piece is 'One physical length of metal with a tag: a full bar or a drop';
comment on column book.piece.made_length_nm is 'length when it came or was made; never changes';
comment on column book.piece.length_nm is 'length now, as measured less what was cut off; 0 when nothing is left of it here';
comment on column book.piece.doubt_nm is 'how much shorter it may be than written; plans use length less doubt';
comment on column book.piece.ends is 'how many ends are square: 0, 1 or 2';
comment on column book.piece.owner_id is '0: ours; else the customer it belongs to';
comment on column book.piece.quarantine is 'the reason, or null';
comment on column book.piece.path is 'the pieces it came from, oldest first, and itself: all its descendants are those whose path holds it';
create index piece_lot on book.piece (lot_id);                                       -- trace of a heat
create index piece_parent on book.piece (parent_id) where parent_id is not null;     -- children of a piece
create index piece_path_has on book.piece using gin (path);                          -- all descendants
create index piece_here on book.piece (place_id) where length_nm > 0;                -- what lies where
create index piece_receipt_line on book.piece (receipt_line_id);

create table book.defect_zone (
  defect_zone_id bigint generated always as identity,
  piece_id bigint not null references book.piece on delete restrict,
  from_nm bigint not null,
  to_nm bigint not null,
  kind text not null,
  constraint defect_zone_pk primary key (defect_zone_id),
  constraint defect_zone_order check (from_nm >= 0 and to_nm > from_nm)
);
comment on table book.defect_zone is 'Positions from the end that is cut first';
create index defect_zone_piece on book.defect_zone (piece_id);
