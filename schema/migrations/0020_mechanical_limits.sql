-- Limits of the mechanical tests and the permissible deviations of product analyses, beside the limits of the chemistry; and
-- limits that were stored wrongly: a correction replaces rows by new ones, and the old ones stay.
create table book.limit_correction (
  limit_correction_id bigint generated always as identity,
  reason text not null,
  corrected_by text not null,
  constraint limit_correction_pk primary key (limit_correction_id)
);
comment on table book.limit_correction is 'Limits replaced together: what was stored wrongly, and why that is known';

create table book.mechanical_limit (
  mechanical_limit_id bigint generated always as identity,
  grade_id bigint not null references book.grade on delete restrict,
  condition text not null default '',
  over_nm bigint not null default 0,
  upto_nm bigint,
  property text not null,
  unit text not null,
  least_millionths bigint,
  most_millionths bigint,
  least_places smallint,
  most_places smallint,
  source text not null,
  note text,
  evidence text,
  corrected_in bigint references book.limit_correction on delete restrict,
  replaced_in bigint references book.limit_correction on delete restrict,
  constraint mechanical_limit_pk primary key (mechanical_limit_id),
  constraint mechanical_limit_sizes check (over_nm >= 0 and upto_nm > over_nm),
  constraint mechanical_limit_property check ((property in ('Rm', 'Re') and unit = 'MPa') or (property = 'A' and unit = '%')),
  constraint mechanical_limit_range check (coalesce(least_millionths, most_millionths) is not null
    and coalesce(least_millionths, 0) between 0 and coalesce(most_millionths, 100000000000) and coalesce(most_millionths, 0) <= 100000000000),
  constraint mechanical_limit_places check (least_places between 0 and 6 and most_places between 0 and 6)
);
create unique index mechanical_limit_key on book.mechanical_limit (grade_id, condition, property, over_nm) where replaced_in is null;
create index mechanical_limit_replaced on book.mechanical_limit (replaced_in) where replaced_in is not null;
comment on table book.mechanical_limit is 'What mechanical tests must keep to before their papers are accepted';
comment on column book.mechanical_limit.condition is 'the lot''s own; empty: any condition that has no rows of its own';
comment on column book.mechanical_limit.over_nm is 'for sizes above this, up to and with upto_nm: diameter, across flats or thickness';
comment on column book.mechanical_limit.least_millionths is 'of the unit: 235 MPa is 235 000 000';
comment on column book.mechanical_limit.most_places is 'figures behind the decimal mark as printed; null: six';

create table book.product_deviation (
  product_deviation_id bigint generated always as identity,
  standard text not null,
  grade_id bigint references book.grade on delete restrict,
  element text not null,
  over_ppm_x100 bigint not null default 0,
  upto_ppm_x100 bigint,
  above_ppm_x100 bigint,
  below_ppm_x100 bigint,
  above_places smallint,
  below_places smallint,
  source text not null,
  note text,
  evidence text,
  corrected_in bigint references book.limit_correction on delete restrict,
  replaced_in bigint references book.limit_correction on delete restrict,
  constraint product_deviation_pk primary key (product_deviation_id),
  constraint product_deviation_band check (over_ppm_x100 >= 0 and upto_ppm_x100 > over_ppm_x100),
  constraint product_deviation_range check (coalesce(above_ppm_x100, 0) between 0 and 100000000 and coalesce(below_ppm_x100, 0) between 0 and 100000000),
  constraint product_deviation_places check (above_places between 0 and 6 and below_places between 0 and 6)
);
create unique index product_deviation_key on book.product_deviation (standard, grade_id, element, over_ppm_x100) nulls not distinct where replaced_in is null;
create index product_deviation_replaced on book.product_deviation (replaced_in) where replaced_in is not null;
comment on table book.product_deviation is 'How far an analysis of the product may lie outside the limits of the heat';
comment on column book.product_deviation.standard is 'of the limits whose source begins with it';
comment on column book.product_deviation.grade_id is 'null: every grade of the standard that has no rows of its own';
comment on column book.product_deviation.over_ppm_x100 is 'for limits above this, up to and with upto_ppm_x100, in units of 0.000 001 %';
comment on column book.product_deviation.above_ppm_x100 is 'over the maximum; null: none that way';

alter table book.grade_limit
  add column corrected_in bigint references book.limit_correction on delete restrict,
  add column replaced_in bigint references book.limit_correction on delete restrict,
  drop constraint grade_limit_key;
create unique index grade_limit_key on book.grade_limit (grade_id, element, over_nm) where replaced_in is null;
create index grade_limit_replaced on book.grade_limit (replaced_in) where replaced_in is not null;
comment on column book.grade_limit.replaced_in is 'the correction since which it is not judged by';
