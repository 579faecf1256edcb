-- The work: cut lists, plans with their layouts and promises, cuts stroke by stroke, metal that leaves another
-- way, holds, shipments, counts, blocks of tag numbers.
create table book.cut_list (
  cut_list_id bigint generated always as identity,
  name text not null,
  added_by text not null,
  constraint cut_list_pk primary key (cut_list_id),
  constraint cut_list_name_key unique (name)
);

create table book.cut_line (
  cut_line_id bigint generated always as identity,
  cut_list_id bigint not null references book.cut_list on delete restrict,
  order_no text not null,
  line_no text not null,
  customer_id bigint references book.party on delete restrict,
  section_id bigint not null references book.section on delete restrict,
  grade_id bigint not null references book.grade on delete restrict,
  condition text not null default '',
  length_nm bigint not null,
  face_nm bigint not null default 0,
  aim_nm bigint not null default 0,
  tolerance_minus_nm bigint not null default 0,
  tolerance_plus_nm bigint not null default 0,
  quantity integer not null,
  due date,
  priority integer not null default 5,
  one_heat text,
  max_heats integer,
  papers book.papers not null default 'none',
  owner_id bigint not null default 0 references book.party on delete restrict,
  cancelled boolean not null default false,
  constraint cut_line_pk primary key (cut_line_id),
  constraint cut_line_key unique (order_no, line_no),
  constraint cut_line_amounts check (length_nm > 0 and quantity > 0 and face_nm >= 0 and priority >= 1
    and max_heats >= 1 and tolerance_minus_nm >= 0 and tolerance_plus_nm >= 0
    and aim_nm between -tolerance_minus_nm and tolerance_plus_nm)
);
comment on column book.cut_line.length_nm is 'nominal; what is cut = nominal + face + aim';
create index cut_line_list on book.cut_line (cut_list_id);

create type book.plan_state as enum ('live', 'done', 'cancelled');
create table book.plan (
  plan_id bigint generated always as identity,
  state book.plan_state not null default 'live',
  aim text not null,
  saw_id bigint not null references book.saw on delete restrict,
  bundled boolean not null default false,
  kerf_nm bigint not null,
  trim_nm bigint not null,
  grip_nm bigint not null,
  status text not null,
  ended_by text not null,
  proof text not null,
  value jsonb not null,
  bound jsonb not null,
  made_by text not null,
  constraint plan_pk primary key (plan_id),
  constraint plan_lengths check (kerf_nm >= 0 and trim_nm >= 0 and grip_nm >= 0)
);

create type book.layout_state as enum ('promised', 'at saw', 'done', 'dropped');
create type book.left_fate as enum ('none', 'drop', 'scrap');
create table book.layout (
  layout_id bigint generated always as identity,
  plan_id bigint not null references book.plan on delete restrict,
  layout_no integer not null,
  piece_id bigint not null references book.piece on delete restrict,
  place_id bigint references book.place on delete restrict,
  state book.layout_state not null default 'promised',
  length_nm bigint not null,
  trim_nm bigint not null,
  kerf_nm bigint not null,
  left_nm bigint not null,
  left_fate book.left_fate not null,
  otherwise text,
  constraint layout_pk primary key (layout_id),
  constraint layout_no_key unique (plan_id, layout_no),
  constraint layout_lengths check (length_nm > 0 and trim_nm >= 0 and kerf_nm >= 0 and left_nm >= 0),
  constraint layout_left check ((left_fate = 'none') = (left_nm = 0))
);
comment on column book.layout.place_id is 'where the piece lay when it was promised';
create index layout_piece on book.layout (piece_id);

create table book.layout_cut (
  layout_cut_id bigint generated always as identity,
  layout_id bigint not null references book.layout on delete restrict,
  seq integer not null,
  cut_line_id bigint not null references book.cut_line on delete restrict,
  count integer not null,
  length_nm bigint not null,
  constraint layout_cut_pk primary key (layout_cut_id),
  constraint layout_cut_key unique (layout_id, seq),
  constraint layout_cut_amounts check (count > 0 and length_nm > 0)
);
create index layout_cut_line on book.layout_cut (cut_line_id);

create table book.plan_short (
  plan_short_id bigint generated always as identity,
  plan_id bigint not null references book.plan on delete restrict,
  cut_line_id bigint not null references book.cut_line on delete restrict,
  missing integer not null,
  why text not null,
  constraint plan_short_pk primary key (plan_short_id),
  constraint plan_short_key unique (plan_id, cut_line_id),
  constraint plan_short_amount check (missing > 0)
);

create type book.promise_state as enum ('live', 'kept', 'released', 'lapsed');
create table book.promise (
  promise_id bigint generated always as identity,
  piece_id bigint not null references book.piece on delete restrict,
  layout_id bigint references book.layout on delete restrict,
  words text not null,
  promised_by text not null,
  expires_at timestamptz not null,
  state book.promise_state not null default 'live',
  constraint promise_pk primary key (promise_id)
);
comment on table book.promise is 'A piece is promised to at most one live plan, by key';
create unique index promise_one_live on book.promise (piece_id) where state = 'live';
create index promise_layout on book.promise (layout_id);

create table book.cut (
  cut_id bigint generated always as identity,
  piece_id bigint not null,
  lot_id bigint not null,
  owner_id bigint not null,
  layout_id bigint references book.layout on delete restrict,
  saw_id bigint not null references book.saw on delete restrict,
  length_in_nm bigint not null,
  rest_nm bigint,
  closed boolean not null default false,
  constraint cut_pk primary key (cut_id),
  constraint cut_piece_key unique (cut_id, piece_id, lot_id, owner_id),
  constraint cut_source foreign key (piece_id, lot_id, owner_id)
    references book.piece (piece_id, lot_id, owner_id) on update cascade on delete restrict,
  constraint cut_length check (length_in_nm > 0 and rest_nm between 0 and length_in_nm),
  constraint cut_closed_has_rest check (closed = (rest_nm is not null))
);
comment on column book.cut.rest_nm is 'what stays on the piece, under its own tag, when the cut is closed; mostly nothing';
create index cut_piece on book.cut (piece_id);
create unique index cut_one_open on book.cut (piece_id) where not closed;

alter table book.piece add constraint piece_from_cut foreign key (from_cut_id) references book.cut on delete restrict;

create type book.stroke_class as enum ('trim', 'good', 'reject', 'crop', 'test slice');
create table book.stroke (
  stroke_id bigint generated always as identity,
  cut_id bigint not null,
  piece_id bigint not null,
  lot_id bigint not null,
  owner_id bigint not null,
  seq integer not null,
  class book.stroke_class not null,
  length_nm bigint not null,
  kerf_nm bigint not null,
  cut_line_id bigint references book.cut_line on delete restrict,
  fault text,
  held boolean not null default false,
  shipment_line_id bigint,
  constraint stroke_pk primary key (stroke_id),
  constraint stroke_seq_key unique (cut_id, seq),
  constraint stroke_source foreign key (cut_id, piece_id, lot_id, owner_id)
    references book.cut (cut_id, piece_id, lot_id, owner_id) on update cascade on delete restrict,
  constraint stroke_lengths check (length_nm >= 0 and kerf_nm >= 0 and length_nm + kerf_nm > 0),
  constraint stroke_good_has_line check (class <> 'good' or (cut_line_id is not null and length_nm > 0)),
  constraint stroke_fault check ((class in ('reject', 'crop')) = (fault is not null)),
  constraint stroke_ships_good check (shipment_line_id is null or class = 'good')
);
comment on table book.stroke is 'One cut off a piece: what fell off and the kerf it cost. A good one is a cut piece; its lot is its source''s, by key';
create index stroke_piece on book.stroke (piece_id);
create index stroke_line on book.stroke (cut_line_id) where cut_line_id is not null;

create type book.out_class as enum ('scrap', 'sold', 'returned', 'unexplained');
create table book.metal_out (
  metal_out_id bigint generated always as identity,
  piece_id bigint not null,
  lot_id bigint not null,
  owner_id bigint not null,
  cut_id bigint references book.cut on delete restrict,
  class book.out_class not null,
  length_nm bigint not null,
  reason text,
  named text,
  constraint metal_out_pk primary key (metal_out_id),
  constraint metal_out_source foreign key (piece_id, lot_id, owner_id)
    references book.piece (piece_id, lot_id, owner_id) on update cascade on delete restrict,
  constraint metal_out_sign check (length_nm <> 0 and (class = 'unexplained' or length_nm > 0)),
  constraint metal_out_unexplained_is_named check (class <> 'unexplained'
    or (btrim(reason) <> '' and reason is not null and btrim(named) <> '' and named is not null))
);
comment on table book.metal_out is 'Metal that left a piece otherwise than by a stroke or as a drop';
create index metal_out_piece on book.metal_out (piece_id);

create type book.hold_scope as enum ('heat', 'lot', 'piece');
create table book.hold (
  hold_id bigint generated always as identity,
  scope book.hold_scope not null,
  mill_id bigint references book.party on delete restrict,
  heat text,
  lot_id bigint references book.lot on delete restrict,
  piece_id bigint references book.piece on delete restrict,
  reason text not null,
  held_by text not null,
  lifted_by text,
  lifting_words text,
  constraint hold_pk primary key (hold_id),
  constraint hold_names_one check (
    (scope = 'heat') = (heat is not null) and (scope = 'lot') = (lot_id is not null)
    and (scope = 'piece') = (piece_id is not null) and (mill_id is null or scope = 'heat')),
  constraint hold_reason check (btrim(reason) <> ''),
  constraint hold_lifted check ((lifted_by is null) = (lifting_words is null))
);
comment on table book.hold is 'From that moment nothing of it is promised, pulled, cut or shipped; all descendants at once';
create index hold_live_heat on book.hold (heat) where lifted_by is null;
create index hold_live_lot on book.hold (lot_id) where lifted_by is null;
create index hold_live_piece on book.hold (piece_id) where lifted_by is null;

create table book.shipment (
  shipment_id bigint generated always as identity,
  note text not null,
  customer_id bigint not null references book.party on delete restrict,
  shipped_at timestamptz not null,
  shipped_by text not null,
  constraint shipment_pk primary key (shipment_id),
  constraint shipment_note_key unique (note)
);
create table book.shipment_line (
  shipment_line_id bigint generated always as identity,
  shipment_id bigint not null references book.shipment on delete restrict,
  cut_line_id bigint not null references book.cut_line on delete restrict,
  constraint shipment_line_pk primary key (shipment_line_id),
  constraint shipment_line_key unique (shipment_id, cut_line_id)
);
alter table book.stroke add constraint stroke_shipment foreign key (shipment_line_id)
  references book.shipment_line on delete restrict;

create table book.tag_block (
  tag_block_id bigint generated always as identity,
  device_id bigint not null references book.device on delete restrict,
  first_no bigint not null,
  last_no bigint not null,
  constraint tag_block_pk primary key (tag_block_id),
  constraint tag_block_order check (first_no > 0 and last_no >= first_no),
  constraint tag_block_apart exclude using gist (int8range(first_no, last_no, '[]') with &&)
);
comment on table book.tag_block is 'Tag numbers that a device may give out while it is off the network (with its site''s offline letter)';

create sequence book.tag_number as bigint start 1;
