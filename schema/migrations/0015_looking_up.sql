-- A conflict that a defect raised knows its report, so that the lead's answer closes it. And indexes for what every pull, promise
-- and cut looks up.
alter table book.conflict
  add column defect_report_id bigint references book.defect_report on delete restrict;
create index conflict_defect on book.conflict (defect_report_id) where defect_report_id is not null and closed_by is null;
create index hold_live on book.hold (hold_id) where lifted_by is null;                    -- is this held
create index piece_here_of_lot on book.piece (lot_id, length_nm) where length_nm > 0;    -- the next best piece of a lot
create index metal_out_cut on book.metal_out (cut_id) where cut_id is not null;
create index cut_layout on book.cut (layout_id) where layout_id is not null;              -- what is cut of a layout
create index stroke_lot on book.stroke (lot_id);                                          -- where a heat went
create index metal_out_lot on book.metal_out (lot_id);
create index lot_of_grade on book.lot (grade_id, section_id);
create index promise_lapsing on book.promise (expires_at) where state = 'live';
