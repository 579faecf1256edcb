-- The shop: people it deals with, grades and sections, sites, devices, places, saws with band and grip,
-- settings, prices and keep rules from a date.
create type book.papers as enum ('none', '2.1', '2.2', '3.1', '3.2');
comment on type book.papers is 'EN 10204:2004 types, weakest first; none = no document';

create table book.party (
  party_id bigint generated always as identity,
  name text not null,
  is_mill boolean not null default false,
  is_supplier boolean not null default false,
  is_customer boolean not null default false,
  constraint party_pk primary key (party_id),
  constraint party_name_key unique (name),
  constraint party_name_filled check (btrim(name) <> '')
);
-- Number 0 is the shop itself: the owner of metal that is ours.
insert into book.party (party_id, name) overriding system value values (0, 'ours');

create table book.grade (
  grade_id bigint generated always as identity,
  designation text not null,
  number text,
  uns text,
  family text not null,
  standard text not null,
  density_kg_m3 integer not null,
  density_source text not null,
  source text not null,
  evidence text not null,
  constraint grade_pk primary key (grade_id),
  constraint grade_designation_key unique (designation),
  constraint grade_number_key unique (number),
  constraint grade_density_range check (density_kg_m3 between 500 and 25000)
);
comment on column book.grade.number is 'the standard''s number for the same grade; both words name it';

create table book.grade_standin (
  grade_standin_id bigint generated always as identity,
  asked_grade_id bigint not null references book.grade on delete restrict,
  offered_grade_id bigint not null references book.grade on delete restrict,
  signed_by text not null,
  reason text not null,
  constraint grade_standin_pk primary key (grade_standin_id),
  constraint grade_standin_once unique (asked_grade_id, offered_grade_id),
  constraint grade_standin_differs check (asked_grade_id <> offered_grade_id)
);
comment on table book.grade_standin is 'What may be cut in a grade''s place; one direction only';

create type book.shape as enum ('round', 'square', 'hex', 'flat', 'tube');
create table book.section (
  section_id bigint generated always as identity,
  shape book.shape not null,
  dim1_nm bigint not null,
  dim2_nm bigint not null default 0,
  thickness_nm bigint not null default 0,
  label text not null,
  area_um2 bigint not null,
  constraint section_pk primary key (section_id),
  constraint section_key unique (shape, dim1_nm, dim2_nm, thickness_nm),
  constraint section_dims check (dim1_nm > 0
    and (shape = 'flat') = (dim2_nm > 0)
    and (shape = 'tube') = (thickness_nm > 0)
    and 2 * thickness_nm < dim1_nm
    and area_um2 > 0)
);
comment on column book.section.dim1_nm is 'diameter, side, across flats, or width of a flat';
comment on column book.section.label is 'as first written: "round 80", "round 2 in"';
comment on column book.section.area_um2 is 'nominal area in square micrometres (1 mm2 = 1 000 000)';

create table book.section_standin (
  section_standin_id bigint generated always as identity,
  asked_section_id bigint not null references book.section on delete restrict,
  offered_section_id bigint not null references book.section on delete restrict,
  signed_by text not null,
  reason text not null,
  constraint section_standin_pk primary key (section_standin_id),
  constraint section_standin_once unique (asked_section_id, offered_section_id),
  constraint section_standin_differs check (asked_section_id <> offered_section_id)
);

create table book.site (
  site_id bigint generated always as identity,
  name text not null,
  letter text not null,
  offline_letter text not null,
  constraint site_pk primary key (site_id),
  constraint site_name_key unique (name),
  constraint site_letter_key unique (letter),
  constraint site_letters check (letter ~ '^[A-Z]$' and offline_letter ~ '^[A-Z]$' and letter <> offline_letter)
);
comment on column book.site.letter is 'first letter of the tags the book gives out here';
comment on column book.site.offline_letter is 'first letter of the tags that devices give out from their blocks';

create table book.device (
  device_id bigint generated always as identity,
  name text not null,
  site_id bigint not null references book.site on delete restrict,
  constraint device_pk primary key (device_id),
  constraint device_name_key unique (name)
);

create type book.place_kind as enum ('rack', 'yard', 'saw', 'gate', 'quarantine', 'scrap', 'outside');
create table book.place (
  place_id bigint generated always as identity,
  name text not null,
  site_id bigint not null references book.site on delete restrict,
  kind book.place_kind not null,
  bay text,
  level integer,
  walk integer not null default 0,
  max_length_nm bigint,
  max_mass_g bigint,
  constraint place_pk primary key (place_id),
  constraint place_name_key unique (name),
  constraint place_limits check (max_length_nm > 0 and max_mass_g > 0)
);
comment on column book.place.walk is 'walking order of the pick list';

create table book.saw (
  saw_id bigint generated always as identity,
  name text not null,
  place_id bigint not null references book.place on delete restrict,
  max_section_nm bigint not null,
  max_mass_g bigint,
  constraint saw_pk primary key (saw_id),
  constraint saw_name_key unique (name),
  constraint saw_limits check (max_section_nm > 0 and max_mass_g > 0)
);

create table book.saw_band (
  saw_band_id bigint generated always as identity,
  saw_id bigint not null references book.saw on delete restrict,
  band text not null,
  kerf_nm bigint not null,
  fitted_from timestamptz not null,
  constraint saw_band_pk primary key (saw_band_id),
  constraint saw_band_key unique (saw_id, fitted_from),
  constraint saw_band_kerf check (kerf_nm between 0 and 50000000)
);
comment on table book.saw_band is 'Kerf belongs to the band; the newest one fitted counts';

create table book.saw_grip (
  saw_grip_id bigint generated always as identity,
  saw_id bigint not null references book.saw on delete restrict,
  bundled boolean not null,
  grip_nm bigint not null,
  trim_nm bigint not null,
  constraint saw_grip_pk primary key (saw_grip_id),
  constraint saw_grip_key unique (saw_id, bundled),
  constraint saw_grip_range check (grip_nm >= 0 and trim_nm >= 0)
);
comment on table book.saw_grip is 'What the vice must hold and what a mill end loses, singly and in a bundle';

create table book.cutting_rate (
  cutting_rate_id bigint generated always as identity,
  saw_id bigint references book.saw on delete restrict,
  family text not null,
  mm2_per_min bigint not null,
  valid_from timestamptz not null,
  constraint cutting_rate_pk primary key (cutting_rate_id),
  constraint cutting_rate_key unique nulls not distinct (saw_id, family, valid_from),
  constraint cutting_rate_positive check (mm2_per_min > 0)
);

create table book.setting (
  setting_id bigint generated always as identity,
  name text not null,
  value text not null,
  valid_from timestamptz not null,
  constraint setting_pk primary key (setting_id),
  constraint setting_key unique (name, valid_from)
);

create table book.price (
  price_id bigint generated always as identity,
  grade_id bigint not null references book.grade on delete restrict,
  section_id bigint references book.section on delete restrict,
  cents_per_tonne bigint not null,
  scrap_cents_per_tonne bigint not null,
  valid_from timestamptz not null,
  constraint price_pk primary key (price_id),
  constraint price_key unique nulls not distinct (grade_id, section_id, valid_from),
  constraint price_range check (cents_per_tonne >= 0 and scrap_cents_per_tonne between 0 and cents_per_tonne)
);
comment on column book.price.cents_per_tonne is 'hundredths of the book''s currency; 1.60 a kilogram = 160 000';

create table book.keep_rule (
  keep_rule_id bigint generated always as identity,
  grade_id bigint references book.grade on delete restrict,
  section_id bigint references book.section on delete restrict,
  keep_nm bigint not null,
  valid_from timestamptz not null,
  constraint keep_rule_pk primary key (keep_rule_id),
  constraint keep_rule_key unique nulls not distinct (grade_id, section_id, valid_from),
  constraint keep_rule_range check (keep_nm >= 0)
);
comment on table book.keep_rule is 'A rest this long or longer goes back on the rack; the most particular rule counts';
