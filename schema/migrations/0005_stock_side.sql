-- The stock side of the trade: what was ordered, read and signed at the door; limits of use; metal that passes on
-- under a new tag; devices that measure; notes and photos of a piece; papers that are chased; counts.
-- New columns have no default: what earlier happenings did not set stays empty, so that their replay is the table.
alter type book.piece_state add value 'passed on';
alter type book.out_class add value 'passed on';
alter type book.hold_scope add value 'certificate';
alter type book.hold_scope add value 'receipt';

alter table book.device
  add column kind text,
  add constraint device_kind check (kind in ('tape', 'readout', 'scale', 'scanner', 'analyser'));

create table book.calibration (
  calibration_id bigint generated always as identity,
  device_id bigint not null references book.device on delete restrict,
  calibrated_on date not null,
  due_on date not null,
  doubt_nm bigint not null,
  certificate text not null,
  constraint calibration_pk primary key (calibration_id),
  constraint calibration_key unique (device_id, calibrated_on),
  constraint calibration_range check (due_on > calibrated_on and doubt_nm >= 0)
);
comment on column book.calibration.doubt_nm is 'how far a length read from it may be off, either way';

alter table book.piece
  add column before_id bigint references book.piece on delete restrict,
  add column before_path bigint[],
  add column limit_papers book.papers,
  add column limit_words text,
  add column measured_with bigint references book.device on delete restrict,
  drop constraint piece_gone_is_empty,
  add constraint piece_gone_is_empty check (
    (state::text in ('cut up', 'shipped', 'scrapped', 'returned', 'written off', 'passed on')) = (length_nm = 0)),
  add constraint piece_limit check ((limit_papers is null) = (limit_words is null)),
  add constraint piece_before check (before_id is null
    or (parent_id is null and before_path[cardinality(before_path)] = before_id));
comment on column book.piece.before_id is 'the piece this same metal was under another tag, in another lot or of another owner';
comment on column book.piece.before_path is 'all pieces it was before, oldest first, with their ancestors: holds and traces follow them';
comment on column book.piece.limit_papers is 'the strongest papers it may serve, whatever its lot has; its descendants too';
create index piece_before on book.piece using gin (before_path) where before_path is not null;
create index piece_state on book.piece (state) where length_nm > 0;

alter table book.metal_out
  add column reverses_id bigint references book.metal_out on delete restrict,
  add column shipment_id bigint references book.shipment on delete restrict,
  drop constraint metal_out_sign,
  add constraint metal_out_sign check (length_nm <> 0 and (class = 'unexplained' or reverses_id is not null or length_nm > 0));
comment on column book.metal_out.reverses_id is 'the entry that this one takes back';

alter table book.lot
  add column chase_on date,
  add column chase_words text;
comment on column book.lot.chase_on is 'when its papers are asked for next';

alter table book.hold
  add column document_id bigint references book.document on delete restrict,
  add column receipt_id bigint references book.receipt on delete restrict,
  add column condemned_by text,
  add column condemned_words text,
  drop constraint hold_names_one,
  add constraint hold_names_one check (
    (scope::text = 'heat') = (heat is not null) and (scope::text = 'lot') = (lot_id is not null)
    and (scope::text = 'piece') = (piece_id is not null) and (scope::text = 'certificate') = (document_id is not null)
    and (scope::text = 'receipt') = (receipt_id is not null) and (mill_id is null or scope::text = 'heat')),
  add constraint hold_condemned check ((condemned_by is null) = (condemned_words is null)
    and (condemned_by is null or lifted_by is null));
comment on column book.hold.condemned_by is 'the metal is never used: it leaves as scrap or back to whom it came from';

alter table book.document
  add column reason text,
  add column filed_by text;
comment on column book.document.reason is 'why the issuer replaced the version before';

create table book.grade_limit (
  grade_limit_id bigint generated always as identity,
  grade_id bigint not null references book.grade on delete restrict,
  element text not null,
  least_ppm_x100 bigint,
  most_ppm_x100 bigint,
  source text not null,
  constraint grade_limit_pk primary key (grade_limit_id),
  constraint grade_limit_key unique (grade_id, element),
  constraint grade_limit_range check (coalesce(least_ppm_x100, 0) between 0 and coalesce(most_ppm_x100, 100000000))
);
comment on table book.grade_limit is 'What a heat analysis must keep to before its papers are accepted';

alter table book.receipt
  add column signed_by_planner text,
  add column signed_by_quality text;

alter table book.receipt_line
  add column slip_line text,
  add column order_line text,
  add column marked_grade text,
  add column owner_ref text,
  add column rests_rule text,
  add column chips_rule text,
  add column raw_text text,
  add column stopped text,
  add column over_count integer,
  add column over_kept boolean,
  add column over_by text,
  add constraint receipt_line_rests check (rests_rule in ('return', 'scrap', 'ask')),
  add constraint receipt_line_over check (over_count > 0 and (over_kept is null) = (over_by is null));
comment on column book.receipt_line.slip_line is 'the line of the slip it answers: several lines here may be one there';
comment on column book.receipt_line.raw_text is 'the row as it was typed';
comment on column book.receipt_line.over_count is 'bars more than the slip says: quarantined until the planner decides';

alter table book.heat_reading
  add column receipt_line_id bigint references book.receipt_line on delete restrict;

alter table book.bundle
  add column strapped boolean,
  add column receipt_line_id bigint references book.receipt_line on delete restrict;

create table book.photo (
  photo_id bigint generated always as identity,
  piece_id bigint not null references book.piece on delete restrict,
  kind text not null,
  media text not null,
  sha256 text not null references book.document_file on delete restrict,
  words text,
  constraint photo_pk primary key (photo_id),
  constraint photo_kind check (kind in ('mark', 'label', 'defect', 'damage', 'signature', 'other')),
  constraint photo_media check (media in ('image/jpeg', 'image/png'))
);
create index photo_piece on book.photo (piece_id);

create table book.piece_note (
  piece_note_id bigint generated always as identity,
  piece_id bigint not null references book.piece on delete restrict,
  kind text not null,
  words text not null,
  more jsonb,
  constraint piece_note_pk primary key (piece_note_id),
  constraint piece_note_words check (btrim(words) <> '')
);
comment on table book.piece_note is 'What was found out about a piece and changed none of its measures: damage, a label printed again, evidence';
create index piece_note_piece on book.piece_note (piece_id);

create table book.purchase_line (
  purchase_line_id bigint generated always as identity,
  purchase_order text not null,
  line text not null,
  supplier_id bigint not null references book.party on delete restrict,
  section_id bigint not null references book.section on delete restrict,
  grade_id bigint not null references book.grade on delete restrict,
  condition text not null,
  length_nm bigint not null,
  quantity integer not null,
  due date not null,
  papers book.papers not null,
  constraint purchase_line_pk primary key (purchase_line_id),
  constraint purchase_line_key unique (purchase_order, line),
  constraint purchase_line_amounts check (length_nm > 0 and quantity > 0)
);
comment on table book.purchase_line is 'What is ordered and not here yet: no piece, no stock, nothing to cut from';

create table book.expected_promise (
  expected_promise_id bigint generated always as identity,
  purchase_line_id bigint not null references book.purchase_line on delete restrict,
  cut_line_id bigint not null references book.cut_line on delete restrict,
  bars integer not null,
  promised_by text not null,
  constraint expected_promise_pk primary key (expected_promise_id),
  constraint expected_promise_bars check (bars > 0)
);

create table book.outside_trip (
  outside_trip_id bigint generated always as identity,
  piece_id bigint not null references book.piece on delete restrict,
  party text not null,
  process text not null,
  note text not null,
  out_nm bigint not null,
  out_g bigint,
  back_nm bigint,
  back_g bigint,
  back_tag text,
  constraint outside_trip_pk primary key (outside_trip_id)
);
create unique index outside_trip_open on book.outside_trip (piece_id) where back_nm is null;

create table book.transfer (
  transfer_id bigint generated always as identity,
  piece_id bigint not null references book.piece on delete restrict,
  from_site_id bigint not null references book.site on delete restrict,
  to_site_id bigint not null references book.site on delete restrict,
  note text not null,
  sent_nm bigint not null,
  received_nm bigint,
  constraint transfer_pk primary key (transfer_id),
  constraint transfer_apart check (from_site_id <> to_site_id)
);
create unique index transfer_open on book.transfer (piece_id) where received_nm is null;

create table book.customer_return (
  customer_return_id bigint generated always as identity,
  customer_id bigint not null references book.party on delete restrict,
  note text not null,
  what text not null,
  reason text not null,
  identity text not null,
  held_by text not null,
  stroke_ids bigint[],
  constraint customer_return_pk primary key (customer_return_id)
);
comment on column book.customer_return.held_by is 'who had it in hand while it was away';

create table book.stock_count (
  stock_count_id bigint generated always as identity,
  place_id bigint not null references book.place on delete restrict,
  state text not null,
  started_by text not null,
  counted_by text,
  approved_by text,
  words text,
  missing_nm bigint,
  difference_nm bigint,
  difference_cents bigint,
  constraint stock_count_pk primary key (stock_count_id),
  constraint stock_count_state check (state in ('open', 'counted', 'approved', 'given up'))
);
create unique index stock_count_one on book.stock_count (place_id) where state in ('open', 'counted');

create table book.count_line (
  count_line_id bigint generated always as identity,
  stock_count_id bigint not null references book.stock_count on delete restrict,
  piece_id bigint references book.piece on delete restrict,
  section_id bigint references book.section on delete restrict,
  length_nm bigint,
  doubt_nm bigint,
  marks text,
  constraint count_line_pk primary key (count_line_id),
  constraint count_line_once unique (stock_count_id, piece_id),
  constraint count_line_what check ((piece_id is null) = (section_id is not null)
    and (piece_id is not null or length_nm > 0))
);
