#include "client/book/schema_fingerprint.h"

#include <algorithm>
#include <iterator>

namespace heatkeep {
namespace {

constexpr const char* kQuery = R"sql(
with relation as (
  select c.oid, format('%I', c.relname) as name
  from pg_class c join pg_namespace n on n.oid = c.relnamespace
  where n.nspname = 'book' and c.relkind in ('r', 'p', 'v', 'm', 'f', 'c'))
select 'column ' || r.name || '.' || a.attname || ' ' || format_type(a.atttypid, a.atttypmod)
       || case when a.attnotnull then ' not null' else '' end as line
  from relation r join pg_attribute a on a.attrelid = r.oid
  where a.attnum > 0 and not a.attisdropped
union all
select 'default ' || r.name || '.' || a.attname || ' ' || a.attgenerated::text || ' ' || pg_get_expr(d.adbin, d.adrelid)
  from relation r join pg_attrdef d on d.adrelid = r.oid
  join pg_attribute a on a.attrelid = d.adrelid and a.attnum = d.adnum
union all
select 'constraint ' || coalesce(r.name, 'domain ' || format_type(k.contypid, null)) || '.' || k.conname || ' '
       || pg_get_constraintdef(k.oid)
  from pg_constraint k join pg_namespace n on n.oid = k.connamespace left join relation r on r.oid = k.conrelid
  where n.nspname = 'book' and k.contype <> 't'
union all
select 'index ' || r.name || ' ' || pg_get_indexdef(i.indexrelid)
  from relation r join pg_index i on i.indrelid = r.oid
)sql";

}  // namespace

std::vector<std::string> SchemaFingerprint(Connection& connection) {
  // Names are written out in full only when nothing is on the path.
  connection.Execute("set local search_path to pg_catalog");
  std::vector<std::string> lines;
  for (const Row row : connection.Execute(kQuery)) lines.push_back(row.Text("line"));
  connection.Execute("set local search_path to default");
  std::sort(lines.begin(), lines.end());
  return lines;
}

std::vector<std::string> Differences(const std::vector<std::string>& before, const std::vector<std::string>& after) {
  std::vector<std::string> gone, fresh, all;
  std::set_difference(before.begin(), before.end(), after.begin(), after.end(), std::back_inserter(gone));
  std::set_difference(after.begin(), after.end(), before.begin(), before.end(), std::back_inserter(fresh));
  for (const std::string& line : gone) all.push_back("- " + line);
  for (const std::string& line : fresh) all.push_back("+ " + line);
  return all;
}

}  // namespace heatkeep
