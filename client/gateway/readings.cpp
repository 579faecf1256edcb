#include "client/gateway/readings.h"

namespace heatkeep {
namespace {

Length Nm(const Row& row, const char* column) { return {row.Int(column)}; }

std::string OwnerWord(const Row& row) {
  const std::string owner = row.Text("owner");
  return owner == "ours" ? "" : owner;
}

}  // namespace

std::vector<StockRow> ReadStock(Connection& connection, const std::string& grade) {
  std::vector<StockRow> rows;
  const Result result = connection.Execute(
      "select * from api.stock_on_hand where $1 = '' or grade = $1 or grade in (select designation from api.grades where number = $1)"
      " order by section, grade, length_nm, tag",
      {grade});
  for (const Row row : result) {
    StockRow r;
    r.tag = row.Text("tag");
    r.kind = row.Text("kind");
    r.grade = row.TextOrNone("grade");
    r.section = row.Text("section");
    r.condition = row.Text("condition");
    r.mill = row.TextOrNone("mill");
    r.heat = row.TextOrNone("heat");
    r.papers = row.Text("papers");
    r.owner = OwnerWord(row);
    r.place = row.TextOrNone("place");
    r.state = row.OptionalText("blocked").value_or(row.Text("state"));
    if (row.IsNull("blocked") && !row.IsNull("risk")) r.state += "; " + row.Text("risk");
    r.promised_to = row.TextOrNone("promised_to");
    r.length = Nm(row, "length_nm");
    r.doubt = Nm(row, "doubt_nm");
    r.mass = {row.Int("mass_g")};
    rows.push_back(std::move(r));
  }
  return rows;
}

std::vector<MeasuredRow> ReadMeasured(Connection& connection, const std::string& from, const std::string& to, const std::string& heat) {
  std::vector<MeasuredRow> rows;
  const Result result = connection.Execute(
      "select *, to_char(at, 'YYYY-MM-DD\"T\"HH24:MI:SSOF') as at_text from api.measured_lengths where ($1 = '' or at >= nullif($1, '')::date)"
      " and ($2 = '' or at < nullif($2, '')::date + 1) and ($3 = '' or heat = $3) order by at, tag",
      {from, to, heat});
  for (const Row row : result)
    rows.push_back({row.Text("at_text"), row.Text("who"), row.Text("measured_with"), row.TextOrNone("told_by"), row.Text("tag"),
                    row.Text("kind"), row.TextOrNone("mill"), row.TextOrNone("heat"), row.Text("section"), row.TextOrNone("grade"),
                    row.TextOrNone("reason"), Nm(row, "book_nm"), Nm(row, "measured_nm"), Nm(row, "difference_nm")});
  return rows;
}

std::vector<PlanRow> ReadPlans(Connection& connection, Plans which) {
  std::vector<PlanRow> rows;
  const Result result = connection.Execute("select * from api.plans where $1::text is null or state = $1 order by plan_id",
                                           {which == Plans::Live ? Param("live") : Param(std::nullopt)});
  for (const Row row : result) {
    rows.push_back({row.Int("plan_id"), row.Text("state"), row.Text("aim"), row.Text("saw"), row.Text("proof"), row.Text("made_by"),
                    row.TextOrNone("made_at"), row.TextOrNone("due")});
  }
  return rows;
}

std::vector<CheckRow> VerifyBook(Connection& connection, bool only_new) {
  std::vector<CheckRow> checks;
  const Result rows = connection.Execute(only_new ? "select * from api.verify_new()" : "select * from api.verify_book()");
  for (const Row row : rows) checks.push_back({row.Text("check"), row.TextOrNone("detail"), row.Bool("ok")});
  if (checks.empty()) throw DbError(DbError::Kind::Bug, "", "the book's verification checked nothing");
  return checks;
}

std::int64_t ReadSchemaVersion(Connection& connection) {
  return connection.Execute("select api.schema_version() as version").Only().OptionalInt("version").value_or(0);
}

std::string ReadBookIdentity(Connection& connection) {
  return connection
      .Execute(
          "select c.system_identifier || '/' || d.oid as book from pg_control_system() c, pg_database d where d.datname = current_database()")
      .Only()
      .Text("book");
}

std::string ReadSetting(Connection& connection, const std::string& name, const std::string& otherwise) {
  return connection.Execute("select coalesce((select value from api.settings_now where name = $1), $2) as value", {name, otherwise})
      .Only()
      .Text("value");
}

std::string ReadServerTime(Connection& connection) {
  return connection.Execute("select to_char(now(), 'YYYY-MM-DD\"T\"HH24:MI:SSOF') as at").Only().Text("at");
}

std::string ReadCurrency(Connection& connection) { return ReadSetting(connection, "currency", ""); }

std::vector<ConflictRow> ReadConflicts(Connection& connection) {
  std::vector<ConflictRow> rows;
  const Result result = connection.Execute("select * from api.conflicts order by closed_by is not null, conflict_id");
  for (const Row row : result) {
    rows.push_back({row.Int("conflict_id"), row.Text("kind"), row.TextOrNone("tag"), row.Text("words"), row.TextOrNone("closed_by"),
                    row.TextOrNone("closing_words")});
  }
  return rows;
}

std::vector<CutListRow> ReadCutLists(Connection& connection) {
  std::vector<CutListRow> rows;
  const Result result = connection.Execute(
      "select cut_list, count(*) filter (where w) as lines, coalesce(sum(quantity) filter (where w), 0) as pieces, sum(cut) as cut, sum(planned) as planned,"
      " sum(open) as open, min(due) filter (where w) as due from api.cut_lines, lateral (select not cancelled as w) w group by cut_list order by cut_list");
  for (const Row row : result) {
    rows.push_back({row.Text("cut_list"), static_cast<int>(row.Int("lines")), row.Int("pieces"), row.Int("cut"), row.Int("planned"),
                    row.Int("open"), row.TextOrNone("due")});
  }
  return rows;
}

std::vector<std::string> ReadNames(Connection& connection, const std::string& view, const std::string& column) {
  std::vector<std::string> names;
  const std::string name = connection.QuoteName(column);
  const Result result = connection.Execute("select distinct " + name + " as name from api." + connection.QuoteName(view) + " where " +
                                           name + " is not null order by 1");
  for (const Row row : result) names.push_back(row.Text("name"));
  return names;
}

std::vector<std::string> ReadActions(Connection& connection) {
  std::vector<std::string> actions;
  for (const Row row : connection.Execute("select a as action from api.my_actions() a")) actions.push_back(row.Text("action"));
  return actions;
}

std::vector<std::string> RolesThatMay(Connection& connection, const std::string& door) {
  const Result result = connection.Execute(
      "select r.role from unnest(array['clerk', 'planner', 'saw', 'quality', 'owner']) with ordinality as r(role, n)"
      " where exists (select 1 from pg_proc p join pg_namespace s on s.oid = p.pronamespace where s.nspname = 'api' and p.proname = $1"
      "     and has_function_privilege('heatkeep_' || r.role, p.oid, 'execute'))"
      "   or exists (select 1 from pg_class c join pg_namespace s on s.oid = c.relnamespace where s.nspname = 'api' and c.relname = $1"
      "     and has_table_privilege('heatkeep_' || r.role, c.oid, 'select')) order by r.n",
      {door});
  std::vector<std::string> roles;
  for (const Row row : result) roles.push_back(row.Text("role"));
  return roles;
}

}  // namespace heatkeep
