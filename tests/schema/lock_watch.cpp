#include "tests/schema/lock_watch.h"

namespace heatkeep {
namespace {

// Arguments: rung and name of what must be locked, the chain, the column with its number. A lot's own row needs the lot alone; what is
// written down under it (a heat as read) needs it at least shared.
constexpr const char* kWatch = R"sql(
create function book.check_write(p_table text, p_rung text, p_name text, p_chain text, p_id bigint) returns void language plpgsql as $$
declare
  v_key text := case p_name when 'lot' then format('3 lot queue %s', lpad(guard.lot_queue(p_id)::text, 18, '0')) else format('%s %s %s', p_rung, p_name, lpad(p_id::text, 18, '0')) end;
  v_held text[] := string_to_array(coalesce(current_setting('heatkeep.locked', true), ''), ',');
begin
  if v_key || ' alone' = any (v_held) or p_table = 'heat_reading' and v_key || ' shared' = any (v_held)
     or (select h.request_id::text from book.happening h where h.chain = p_chain and h.chain_id = p_id and h.seq = 1) = current_setting('heatkeep.request', true) then
    return;  -- locked, or the deed made it
  end if;
  raise exception using errcode = 'HK014', message = format('%s writes %s without having locked %s', current_setting('heatkeep.deed', true), p_table, v_key);
end $$;
create function book.watch_change() returns trigger language plpgsql as $$
begin
  perform book.check_write(tg_table_name, tg_argv[0], tg_argv[1], tg_argv[2], (to_jsonb(new) ->> tg_argv[3])::bigint);
  return null;
end $$;
-- after the ledger was told what the statement put in: triggers of a statement fire by their names
create function book.watch_fresh() returns trigger language plpgsql as $$
begin
  perform book.check_write(tg_table_name, tg_argv[0], tg_argv[1], tg_argv[2], (to_jsonb(n) ->> tg_argv[3])::bigint) from fresh n;
  return null;
end $$;
do $$
declare
  t record;
begin
  for t in select tbl, chain, chain_column, case chain when 'lot' then '3' when 'piece' then '4' when 'plan' then '5' end as rung, chain as name
      from guard.chronicled() where chain in ('lot', 'piece', 'plan')
      union all select 'cut_line', 'cut_list', 'cut_line_id', '6', 'cut_line' loop
    execute format('create trigger z_watch after update on book.%I for each row execute function book.watch_change(%L, %L, %L, %L)',
      t.tbl, t.rung, t.name, t.chain, t.chain_column);
    if t.tbl <> 'cut_line' then  -- a cut list is made with its lines
      execute format('create trigger z_watch_fresh after insert on book.%I referencing new table as fresh for each statement execute function book.watch_fresh(%L, %L, %L, %L)',
        t.tbl, t.rung, t.name, t.chain, t.chain_column);
    end if;
  end loop;
  -- the watch belongs to the book from now on: verifying it says nothing of these triggers
  execute format('create or replace function guard.schema_as_made() returns setof text language sql immutable begin atomic select unnest(%L::text[]); end',
    array(select guard.schema_lines()));
end $$;
)sql";

}  // namespace

void WatchWrites(Connection& admin) { admin.ExecuteScript(kWatch); }

std::int64_t DeadlocksIn(Connection& admin) {
  return admin.Execute("select deadlocks::bigint as n from pg_stat_database where datname = current_database()").Only().Int("n");
}

}  // namespace heatkeep
