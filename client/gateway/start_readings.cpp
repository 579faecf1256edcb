#include "client/gateway/start_readings.h"

namespace heatkeep {

std::vector<std::int64_t> ReadStart(Connection& connection) {
  const Row row =
      connection
          .Execute(
              "select (select count(*) from api.grades) as grades, (select count(*) from api.saws) as saws,"
              " (select count(*) from (select from api.stock_on_hand limit 1000) s) as pieces, (select count(*) from (select from api.cut_lines limit 1000) c) as lines,"
              " (select count(distinct m.member) from pg_auth_members m join pg_roles r on r.oid = m.roleid join pg_roles p on p.oid = m.member"
              "  where r.rolname like 'heatkeep\\_%' and p.rolcanlogin) as people")
          .Only();
  return {row.Int("grades"), row.Int("saws"), row.Int("pieces"), row.Int("lines"), row.Int("people")};
}

}  // namespace heatkeep
