-- Bars that are cut together at a saw: who made them up, and which strokes of theirs were one stroke of the saw.
create table book.saw_bundle (
  saw_bundle_id bigint generated always as identity,
  saw_id bigint not null references book.saw on delete restrict,
  made_by text not null,
  constraint saw_bundle_pk primary key (saw_bundle_id)
);
comment on table book.saw_bundle is 'Bars in the vice together; a supplier''s strap is book.bundle';

create table book.saw_bundle_bar (
  saw_bundle_bar_id bigint generated always as identity,
  saw_bundle_id bigint not null references book.saw_bundle on delete restrict,
  piece_id bigint not null references book.piece on delete restrict,
  layout_id bigint references book.layout on delete restrict,
  constraint saw_bundle_bar_pk primary key (saw_bundle_bar_id),
  constraint saw_bundle_bar_key unique (saw_bundle_id, piece_id)
);
create index saw_bundle_bar_piece on book.saw_bundle_bar (piece_id);
create index saw_bundle_bar_layout on book.saw_bundle_bar (layout_id) where layout_id is not null;

alter table book.stroke
  add column saw_bundle_id bigint,
  add column saw_stroke integer,
  add constraint stroke_bundle_bar foreign key (saw_bundle_id, piece_id)
    references book.saw_bundle_bar (saw_bundle_id, piece_id) on delete restrict,
  add constraint stroke_together check ((saw_bundle_id is null) = (saw_stroke is null) and (saw_stroke is null or (saw_stroke > 0 and kerf_nm > 0)));
comment on column book.stroke.saw_stroke is 'which stroke of the saw through the bundle, from 1; the same number in other bars is the same stroke';
create unique index stroke_together_key on book.stroke (saw_bundle_id, piece_id, saw_stroke) where saw_bundle_id is not null;
