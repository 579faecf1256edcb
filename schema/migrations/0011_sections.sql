-- Angles, boxes, channels and beams. The type is made anew, since a value added to one cannot be used in the same
-- transaction; what the new columns say of a section is null where its shape has none, so older happenings still replay.
alter table book.section drop constraint section_dims;
alter table book.section drop constraint section_key;
alter type book.shape rename to shape_before;
create type book.shape as enum ('round', 'square', 'hex', 'flat', 'tube', 'angle', 'box', 'channel', 'beam');
alter table book.section alter column shape type book.shape using shape::text::book.shape;
alter table book.saw_capacity alter column shape type book.shape using shape::text::book.shape;
drop type book.shape_before;

alter table book.section
  add column r1_nm bigint,
  add column r2_nm bigint,
  add column name text,
  add column g_per_m bigint,
  add constraint section_key unique nulls not distinct (shape, dim1_nm, dim2_nm, thickness_nm, r1_nm, r2_nm, name),
  add constraint section_dims check (dim1_nm > 0 and area_um2 > 0
    and (shape in ('flat', 'angle', 'box', 'channel', 'beam')) = (dim2_nm > 0)
    and (shape in ('tube', 'angle', 'box')) = (thickness_nm > 0)
    and 2 * thickness_nm < dim1_nm and (dim2_nm = 0 or 2 * thickness_nm < dim2_nm)),
  add constraint section_radii check ((shape in ('angle', 'box')) = (r1_nm is not null) and (r1_nm is null) = (r2_nm is null)
    and r1_nm >= 0 and r2_nm >= 0),
  add constraint section_name check ((shape in ('channel', 'beam')) = (name is not null) and (name is null) = (g_per_m is null)
    and g_per_m > 0);
comment on column book.section.dim1_nm is 'diameter, side, across flats, width of a flat, longer leg or side, height';
comment on column book.section.dim2_nm is 'thickness of a flat, shorter leg or side, width of a channel or beam';
comment on column book.section.thickness_nm is 'of a tube, angle or box';
comment on column book.section.r1_nm is 'root radius of an angle, outer corner radius of a box';
comment on column book.section.r2_nm is 'toe radius of an angle, inner corner radius of a box';
comment on column book.section.name is 'of a channel or beam: "UPN 100", "HE 100 A"';
comment on column book.section.g_per_m is 'of a channel or beam: tabulated grams a metre for 7850 kg/m3';
