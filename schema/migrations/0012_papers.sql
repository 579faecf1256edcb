-- Limits as the standards print them: by size, with the figures they are judged by. Documents: who validated them, and whom
-- they were passed on to.
alter table book.grade_limit
  add column over_nm bigint not null default 0,
  add column upto_nm bigint,
  add column least_places smallint,
  add column most_places smallint,
  add column note text,
  add column evidence text,
  drop constraint grade_limit_key,
  add constraint grade_limit_key unique (grade_id, element, over_nm),
  add constraint grade_limit_sizes check (over_nm >= 0 and upto_nm > over_nm),
  add constraint grade_limit_places check (least_places between 0 and 6 and most_places between 0 and 6);
comment on column book.grade_limit.element is 'an element, CEV, a sum like Cr+Mo+Ni, or others';
comment on column book.grade_limit.over_nm is 'for sizes above this, up to and with upto_nm: diameter, across flats or thickness';
comment on column book.grade_limit.most_places is 'figures behind the decimal mark as printed; null: six';

alter table book.document
  add column validated_by jsonb;
comment on column book.document.validated_by is 'array of {"name","position","for": manufacturer, independent, purchaser or official}';

create table book.document_passed (
  document_passed_id bigint generated always as identity,
  document_id bigint not null references book.document on delete restrict,
  shipment_id bigint not null references book.shipment on delete restrict,
  rule text not null,
  form text not null,
  additional text,
  words text not null,
  passed_by text not null,
  constraint document_passed_pk primary key (document_passed_id),
  constraint document_passed_rule check (rule in ('EN 10204', 'ISO 10474')),
  constraint document_passed_form check (form in ('original', 'copy'))
);
create index document_passed_document on book.document_passed (document_id);
create index document_passed_shipment on book.document_passed (shipment_id);
comment on table book.document_passed is 'Documents handed on unaltered (EN 10204:2004 clause 6; ISO 10474:2013 clause 6)';
