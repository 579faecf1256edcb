-- What the tables keep to, held against what they were made with: a key, a check or an index that was taken away, or a trigger turned off,
-- changes no row, and everything that is checked from the rows would say nothing.

-- By name: how a definition is written differs from server to server (but for the functions that checks ask, whose text is kept as it was given), and from PostgreSQL 18 on a column that is not null is a constraint besides. An index that only makes questions quicker is anybody's own.
create function guard.schema_lines() returns setof text
language sql stable security definer set search_path = pg_catalog, pg_temp set quote_all_identifiers = off
begin atomic
  with tables as (select oid, relname from pg_class where relnamespace = 'book'::regnamespace and relkind in ('r', 'p'))
  select format('column %s.%s %s%s', t.relname, a.attname, format_type(a.atttypid, a.atttypmod), case when a.attnotnull then ' not null' end)
    from tables t join pg_attribute a on a.attrelid = t.oid where a.attnum > 0 and not a.attisdropped
  union all select format('constraint %s.%s%s', t.relname, k.conname, case when not k.convalidated then ' not valid' end)
    from tables t join pg_constraint k on k.conrelid = t.oid where k.contype in ('p', 'u', 'f', 'c', 'x')
  union all select format('function %s %s', proname, encode(sha256(convert_to(prosrc, 'UTF8')), 'hex')) from pg_proc where pronamespace = 'book'::regnamespace
  union all select format('unique index %s.%s', t.relname, i.relname)
    from tables t join pg_index x on x.indrelid = t.oid join pg_class i on i.oid = x.indexrelid where x.indisunique and x.indisvalid
  union all select format('trigger %s.%s', t.relname, g.tgname) from tables t join pg_trigger g on g.tgrelid = t.oid where not g.tgisinternal
  union all select format('turned off: trigger %s.%s', t.relname, g.tgname) from tables t join pg_trigger g on g.tgrelid = t.oid where not g.tgisinternal and g.tgenabled <> 'O'
  union all select distinct format('turned off: foreign key %s.%s', t.relname, k.conname)
    from pg_trigger g join pg_constraint k on k.oid = g.tgconstraint join tables t on t.oid = k.conrelid where g.tgisinternal and g.tgenabled <> 'O';
end;

-- As they are now that all of it has been made.
do $$
begin
  execute format('create function guard.schema_as_made() returns setof text language sql immutable begin atomic select unnest(%L::text[]); end',
    array(select guard.schema_lines()));
end $$;

-- "gone: unique index promise.promise_one_live", "turned off: trigger piece.balance", "new: column piece.x text".
create function guard.unlike_made() returns setof text
language sql stable security definer set search_path = book, pg_catalog, pg_temp
begin atomic
  select case when n.line is null then 'gone: ' || m.line when n.line like 'turned off: %' then n.line else 'new: ' || n.line end
    from (select guard.schema_as_made() as line) m full join (select guard.schema_lines() as line) n on n.line = m.line
    where n.line is null or m.line is null order by 1;
end;

create function guard.verify_made() returns table ("check" text, ok boolean, detail text)
language sql stable
begin atomic
  select 'tables keep to what they were made with', x.n = 0,
      case when x.n = 0 then format('%s columns, keys, checks and triggers', (select count(*) from guard.schema_as_made() m))
        else format('%s differ: %s%s', x.n, x.words, case when x.n > 20 then ' ...' end) end
    from (select count(*) as n, string_agg(u, '; ' order by i) filter (where i <= 20) as words from guard.unlike_made() with ordinality y (u, i)) x;
end;
