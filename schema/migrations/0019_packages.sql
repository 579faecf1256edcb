-- What a customer was given of papers: one file an order or a delivery note, kept by its digest.
create table book.certificate_package (
  certificate_package_id bigint generated always as identity,
  order_no text,
  shipment_id bigint references book.shipment on delete restrict,
  customer_id bigint references book.party on delete restrict,
  sha256 text not null,
  pages integer not null,
  without_files boolean not null,
  contents jsonb not null,
  made_by text not null,
  constraint certificate_package_pk primary key (certificate_package_id),
  constraint certificate_package_names_one check (order_no is not null or shipment_id is not null),
  constraint certificate_package_sha256 check (sha256 ~ '^[0-9a-f]{64}$'),
  constraint certificate_package_pages check (pages > 0)
);
comment on table book.certificate_package is 'Certificate packages made: which file (by its SHA-256) with which metal and documents';
comment on column book.certificate_package.contents is 'as api.package_of said when it was made';
create index certificate_package_order on book.certificate_package (order_no);
create index certificate_package_shipment on book.certificate_package (shipment_id);
create index certificate_package_customer on book.certificate_package (customer_id);
create index certificate_package_file on book.certificate_package (sha256);
create index stroke_shipped on book.stroke (shipment_line_id) where shipment_line_id is not null;    -- what left with a note
create index metal_out_shipped on book.metal_out (shipment_id) where shipment_id is not null;
