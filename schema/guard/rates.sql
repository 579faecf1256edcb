-- Cutting rates: a saw's own before the shop's, the shop's before the one that ships.

-- What ships with the book, square centimetres a minute: nobody's figures, and never against the saw's own manual.
create function guard.shipped_rates() returns table (family text, low integer, middle integer, high integer)
language sql immutable
begin atomic
  values ('carbon steel', 52, 55, 58), ('free-cutting steel', 97, 108, 120), ('alloy steel', 39, 45, 52), ('case-hardening steel', 45, 51, 58),
    ('bearing steel', 26, 29, 32), ('stainless steel', 20, 30, 40), ('duplex stainless steel', 15, 20, 25), ('aluminium', 200, 300, 500), ('brass', 120, 180, 250);
end;

create function guard.rate(p_saw bigint, p_family text) returns table (mm2_per_min bigint, source text)
language sql stable security definer set search_path = book, pg_catalog, pg_temp
begin atomic
  select mm2_per_min, source from (
    select r.mm2_per_min, r.source, (r.saw_id is null)::integer as n, r.valid_from from book.cutting_rate r
      where r.family = p_family and (r.saw_id is null or r.saw_id = p_saw) and r.valid_from <= now()
    union all select middle * 100, 'common practice, no source', 2, null from guard.shipped_rates() s where s.family = p_family) x
    order by n, valid_from desc nulls last limit 1;
end;
