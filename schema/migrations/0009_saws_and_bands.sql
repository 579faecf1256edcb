-- What a saw can take and does in one go, and its bands as fitted and measured.
alter table book.saw add column stop_stroke_nm bigint;
alter table book.saw add column bundle_bars integer;
alter table book.saw add column cents_per_hour bigint;
alter table book.saw add constraint saw_does check (stop_stroke_nm > 0 and bundle_bars > 0 and cents_per_hour >= 0);
comment on column book.saw.stop_stroke_nm is 'the farthest the length stop feeds in one stroke; a longer piece takes several strokes and one kerf';

create table book.saw_capacity (
  saw_capacity_id bigint generated always as identity,
  saw_id bigint not null references book.saw on delete restrict,
  shape book.shape not null,
  width_nm bigint not null,
  height_nm bigint not null,
  constraint saw_capacity_pk primary key (saw_capacity_id),
  constraint saw_capacity_key unique (saw_id, shape),
  constraint saw_capacity_amounts check (width_nm > 0 and height_nm > 0)
);
comment on table book.saw_capacity is 'The largest section of a shape; a shape that is not named is taken to the saw''s greatest section';

alter table book.saw_band add column width_nm bigint;
alter table book.saw_band add column thickness_nm bigint;
alter table book.saw_band add column mounting_id bigint references book.saw_band on delete restrict;
alter table book.saw_band add column reason text;
alter table book.saw_band add column named text;
alter table book.saw_band add constraint saw_band_size check ((width_nm is null) = (thickness_nm is null) and width_nm > thickness_nm and thickness_nm > 0);
comment on column book.saw_band.mounting_id is 'the row of the band''s fitting, when only its kerf was measured anew';
comment on column book.saw_band.reason is 'why the one before was taken off: worn, broke, other section, ...';

alter table book.cutting_rate add column source text not null default 'the shop''s own';
