-- Who am I, what may I do, which book is this. And the list of our own error codes:
-- HK002 only by a deed · HK003 the ledger only grows · HK004 nothing is deleted · HK010 no request number ·
-- HK011 in the future · HK012 request number used for another deed · HK013 not in a read committed transaction · HK014 locked out of order, a fault of ours ·
-- HK020 party · HK021 grade · HK022 place · HK023 saw · HK024 tag · HK025 tag block · HK026 wrong or missing value · HK027 cut list or plan not known ·
-- HK030 metal balance · HK031 identity · HK032 gone stays gone · HK033 place limits · HK034 more than there is ·
-- HK040 held, quarantined, frozen or papers awaited · HK041 already there · HK042 does not fit or may not serve ·
-- HK043 wrong state for this deed · HK044 the heat read is another · HK045 a defect waits for the lead · HK409 somebody else was first: read again
create function api.schema_version() returns integer
language sql stable security definer set search_path = book, pg_catalog, pg_temp
return (select max(version) from book.migration);

create function api.whoami() returns text language sql stable
return session_user::text;

create function api.my_actions() returns setof text
language sql stable security definer set search_path = pg_catalog, pg_temp
begin atomic
  select distinct p.proname::text from pg_proc p join pg_namespace n on n.oid = p.pronamespace
    where n.nspname = 'api' and has_function_privilege(session_user, p.oid, 'execute') order by 1;
end;

-- What was done in the last two minutes, one row a deed: who looks at the book asks when it was told of a deed (notices of channel "heatkeep", sent by
-- clients after their deed: PostgreSQL lets those that send one with what they write commit only one after the other).
create view api.deeds_lately as
  select request_id, deed from book.request where at > now() - interval '2 minutes';
