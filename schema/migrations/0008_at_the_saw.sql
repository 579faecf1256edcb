-- At the saw: a promise of a piece to one line, metal taken up again from what was cut, recuts, defects, hand-overs,
-- open pieces explained, first pieces measured, scrap bins and tickets, consent, and deeds done off the network.
alter table book.promise add column cut_line_id bigint references book.cut_line on delete restrict;
alter table book.promise add column count integer;
alter table book.promise add constraint promise_line check ((cut_line_id is null) = (count is null)
  and (layout_id is null or cut_line_id is null) and count > 0);
comment on column book.promise.cut_line_id is 'promised to so many pieces of this line, without a plan';
create index promise_cut_line on book.promise (cut_line_id) where cut_line_id is not null;

create table book.scrap_bin (
  scrap_bin_id bigint generated always as identity,
  name text not null,
  alloy_group text not null,
  constraint scrap_bin_pk primary key (scrap_bin_id),
  constraint scrap_bin_name_key unique (name)
);
comment on table book.scrap_bin is 'Scrap is bought by its chemistry: one alloy group a bin';

create table book.alloy_group (
  alloy_group_id bigint generated always as identity,
  family text not null,
  alloy_group text not null,
  constraint alloy_group_pk primary key (alloy_group_id),
  constraint alloy_group_family_key unique (family)
);
comment on table book.alloy_group is 'Which families of grades may lie in one bin; a family not named is a group of its own';

create table book.scrap_ticket (
  scrap_ticket_id bigint generated always as identity,
  scrap_bin_id bigint not null references book.scrap_bin on delete restrict,
  dealer_id bigint not null references book.party on delete restrict,
  ticket text not null,
  mass_g bigint not null,
  book_mass_g bigint not null,
  cents_per_tonne bigint not null,
  named text not null,
  constraint scrap_ticket_pk primary key (scrap_ticket_id),
  constraint scrap_ticket_key unique (dealer_id, ticket),
  constraint scrap_ticket_amounts check (mass_g > 0 and book_mass_g >= 0 and cents_per_tonne >= 0)
);
comment on column book.scrap_ticket.mass_g is 'as weighed by the dealer';
comment on column book.scrap_ticket.book_mass_g is 'of the pieces in the bin by the book; chips are in none';

alter table book.metal_out add column scrap_bin_id bigint references book.scrap_bin on delete restrict;
alter table book.metal_out add column scrap_ticket_id bigint references book.scrap_ticket on delete restrict;
alter table book.metal_out add constraint metal_out_scrap check (class = 'scrap' or (scrap_bin_id is null and scrap_ticket_id is null));
create index metal_out_in_bin on book.metal_out (scrap_bin_id) where scrap_bin_id is not null and scrap_ticket_id is null;

alter table book.stroke add column saw_band_id bigint references book.saw_band on delete restrict;
alter table book.stroke add column lab text;
alter table book.stroke add column reused_as_id bigint references book.piece on delete restrict;
alter table book.stroke add column recut_of_id bigint references book.stroke on delete restrict;
alter table book.stroke drop constraint stroke_lengths;
alter table book.stroke add constraint stroke_lengths check (length_nm >= 0 and kerf_nm >= 0
  and (length_nm + kerf_nm > 0 or reused_as_id is not null));
alter table book.stroke add constraint stroke_reused_is_elsewhere check (reused_as_id is null or length_nm = 0);
alter table book.stroke add constraint stroke_lab check (class = 'test slice' or lab is null);
alter table book.stroke add constraint stroke_recut_is_good check (class = 'good' or reused_as_id is not null or recut_of_id is null);
comment on column book.stroke.saw_band_id is 'the band that cut it';
comment on column book.stroke.reused_as_id is 'what was cut is a piece of its own again, under this number; its length is there';
create index stroke_band on book.stroke (saw_band_id) where saw_band_id is not null;
create unique index stroke_recut_once on book.stroke (recut_of_id) where recut_of_id is not null;

create table book.recut (
  recut_id bigint generated always as identity,
  reject_id bigint not null references book.stroke on delete restrict,
  piece_id bigint not null references book.piece on delete restrict,
  cut_line_id bigint not null references book.cut_line on delete restrict,
  agreed_by text,
  writing text,
  asked_by text not null,
  constraint recut_pk primary key (recut_id),
  constraint recut_agreed check ((agreed_by is null) = (writing is null))
);
comment on column book.recut.agreed_by is 'who agreed to another heat';
create index recut_reject on book.recut (reject_id);

create table book.open_piece (
  open_piece_id bigint generated always as identity,
  layout_id bigint not null references book.layout on delete restrict,
  cut_line_id bigint not null references book.cut_line on delete restrict,
  missing integer not null,
  why text not null,
  said_by text not null,
  constraint open_piece_pk primary key (open_piece_id),
  constraint open_piece_amount check (missing > 0 and btrim(why) <> '')
);
comment on table book.open_piece is 'Pieces of a layout that were not cut when it was closed, and why';
create index open_piece_layout on book.open_piece (layout_id);

create table book.handover (
  handover_id bigint generated always as identity,
  saw_id bigint not null references book.saw on delete restrict,
  piece_id bigint references book.piece on delete restrict,
  length_nm bigint,
  done jsonb not null,
  open jsonb not null,
  words text not null,
  given_by text not null,
  taken_by text,
  constraint handover_pk primary key (handover_id),
  constraint handover_words check (btrim(words) <> ''),
  constraint handover_vice check ((piece_id is null) = (length_nm is null))
);
comment on table book.handover is 'What one shift leaves in the vice for the next';
create unique index handover_one_open on book.handover (saw_id) where taken_by is null;

create table book.first_piece (
  first_piece_id bigint generated always as identity,
  saw_id bigint not null references book.saw on delete restrict,
  cut_line_id bigint not null references book.cut_line on delete restrict,
  set_nm bigint not null,
  measured_nm bigint not null,
  good boolean not null,
  measured_by text not null,
  constraint first_piece_pk primary key (first_piece_id),
  constraint first_piece_lengths check (set_nm > 0 and measured_nm > 0)
);
create index first_piece_line on book.first_piece (cut_line_id);

create table book.defect_report (
  defect_report_id bigint generated always as identity,
  piece_id bigint not null references book.piece on delete restrict,
  lot_id bigint not null references book.lot on delete restrict on update cascade,
  kind text not null,
  from_end text not null,
  at_nm bigint not null,
  words text not null,
  reported_by text not null,
  answer text,
  answer_words text,
  answered_by text,
  constraint defect_report_pk primary key (defect_report_id),
  constraint defect_report_kind check (kind in ('pipe', 'crack', 'seam', 'lap', 'bend', 'inclusion', 'other')),
  constraint defect_report_end check (from_end in ('first', 'last') and at_nm >= 0),
  constraint defect_report_answer check (answer in ('cut on', 'stop')
    and (answer is null) = (answer_words is null) and (answer is null) = (answered_by is null))
);
comment on table book.defect_report is 'A defect found: nothing more of its heat is pulled until the lead says cut on';
create index defect_report_waiting on book.defect_report (lot_id) where answer is distinct from 'cut on';
create index defect_report_piece on book.defect_report (piece_id);

create table book.consent (
  consent_id bigint generated always as identity,
  cut_line_id bigint not null references book.cut_line on delete restrict,
  grade_id bigint references book.grade on delete restrict,
  section_id bigint references book.section on delete restrict,
  papers book.papers,
  count integer,
  agreed_by text not null,
  writing text not null,
  cost_cents bigint not null,
  recorded_by text not null,
  signed_by text,
  constraint consent_pk primary key (consent_id),
  constraint consent_says_what check (grade_id is not null or section_id is not null or papers is not null),
  constraint consent_words check (btrim(agreed_by) <> '' and btrim(writing) <> '' and count > 0)
);
comment on table book.consent is 'The customer takes other metal for this line, in writing; another grade or weaker papers count once quality has signed';
create index consent_line on book.consent (cut_line_id);

create table book.offline_deed (
  offline_deed_id bigint generated always as identity,
  device_id bigint not null references book.device on delete restrict,
  seq bigint not null,
  deed text not null,
  body jsonb not null,
  request_id uuid not null,
  outcome text not null,
  words text,
  constraint offline_deed_pk primary key (offline_deed_id),
  constraint offline_deed_key unique (device_id, seq),
  constraint offline_deed_outcome check (outcome in ('done', 'conflict') and seq > 0 and (outcome = 'conflict') = (words is not null))
);
comment on table book.offline_deed is 'What a device did off the network, in its own order; each once';
