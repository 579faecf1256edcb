-- The ten-year book, part 6: the next numbers, and what helped goes.
do $$
declare
  t record;
begin
  for t in select c.oid::regclass as tbl, a.attname as key from pg_class c join pg_attribute a on a.attrelid = c.oid where c.relnamespace = 'book'::regnamespace and a.attidentity <> '' loop
    execute format('select setval(pg_get_serial_sequence(%L, %L), coalesce(max(%I), 0) + 1, false) from %s', t.tbl, t.key, t.key, t.tbl);
  end loop;
  perform setval('book.tag_number', (select max(piece_id) from book.piece));
end $$;
drop schema ten_years cascade;
