#include "tests/schema/lock_watch.h"

namespace heatkeep {
namespace {

// Arguments: rung and name of what must be locked, the chain, the column with its number. A lot's own row needs the lot alone; what is written
// down under it (a heat as read) needs it at least shared.
constexpr const char* kWatch = R"sql(
create function book.watch_write() returns trigger language plpgsql as $$
declare
  v_id bigint := (to_jsonb(new) ->> tg_argv[3])::bigint;
  v_key text := format('%s %s %s', tg_argv[0], tg_argv[1], lpad(v_id::text, 18, '0'));
  v_held text[] := string_to_array(coalesce(current_setting('heatkeep.locked', true), ''), ',');
begin
  if v_key || ' alone' = any (v_held) or tg_table_name = 'heat_reading' and v_key || ' shared' = any (v_held) then
    return null;
  elsif (select h.request_id::text from book.happening h where h.chain = tg_argv[2] and h.chain_id = v_id and h.seq = 1) = current_setting('heatkeep.request', true) then
    return null;  -- the deed made it
  end if;
  raise exception using errcode = 'HK014', message = format('%s writes %s without having locked %s', current_setting('heatkeep.deed', true), tg_table_name, v_key);
end $$;
do $$
declare
  t record;
begin
  for t in select tbl, chain, chain_column, case chain when 'lot' then '3' when 'piece' then '4' when 'plan' then '5' end as rung, chain as name
      from guard.chronicled() where chain in ('lot', 'piece', 'plan')
      union all select 'cut_line', 'cut_list', 'cut_line_id', '6', 'cut_line' loop
    execute format('create trigger b_watch after insert or update on book.%I for each row execute function book.watch_write(%L, %L, %L, %L)',
      t.tbl, t.rung, t.name, t.chain, t.chain_column);
  end loop;
end $$;
-- a cut list is made with its lines
drop trigger b_watch on book.cut_line;
create trigger b_watch after update on book.cut_line for each row execute function book.watch_write('6', 'cut_line', 'cut_line', 'cut_line_id');
)sql";

}  // namespace

void WatchWrites(Connection& admin) { admin.ExecuteScript(kWatch); }

std::int64_t DeadlocksIn(Connection& admin) {
  return admin.Execute("select deadlocks::bigint as n from pg_stat_database where datname = current_database()").Only().Int("n");
}

}  // namespace heatkeep
