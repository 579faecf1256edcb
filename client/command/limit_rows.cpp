#include "client/command/limit_rows.h"

#include <algorithm>

#include "client/intake/limits_file.h"
#include "client/intake/table.h"
#include "client/papers/mechanical.h"
#include "client/papers/quantity.h"

namespace heatkeep::command {
namespace {

using Json = nlohmann::json;

void AddBound(Json& row, const std::string& key, const std::optional<Bound>& bound) {
  if (!bound) return;
  row[key] = bound->millionths;
  row[key + "_places"] = bound->places;
}

void AddSizes(Json& row, const SizeRange& sizes) {
  row["over_nm"] = sizes.over.nm;
  if (sizes.upto) row["upto_nm"] = sizes.upto->nm;
}

Json RowOf(const GradeLimit& l) {
  papers::CheckWhat(l.what);
  Json row{{"grade", l.grade}, {"element", l.what}, {"source", l.source}, {"note", l.note}, {"evidence", l.evidence}};
  AddSizes(row, l.sizes);
  AddBound(row, "least", l.least);
  AddBound(row, "most", l.most);
  return row;
}

Json RowOf(const MechanicalLimit& l) {
  Json row{{"grade", l.grade},   {"condition", l.condition}, {"property", l.property}, {"unit", papers::UnitOf(l.property)},
           {"source", l.source}, {"note", l.note},           {"evidence", l.evidence}};
  AddSizes(row, l.sizes);
  AddBound(row, "least", l.least);
  AddBound(row, "most", l.most);
  return row;
}

Json RowOf(const ProductDeviation& d) {
  Json row{{"standard", d.standard}, {"element", d.element}, {"over", d.over.millionths},
           {"source", d.source},     {"note", d.note},       {"evidence", d.evidence}};
  if (!d.grade.empty()) row["grade"] = d.grade;
  if (d.upto) row["upto"] = d.upto->millionths;
  AddBound(row, "above", d.above);
  AddBound(row, "below", d.below);
  return row;
}

template <class Row>
void AddRows(Json& all, const std::vector<Row>& rows) {
  for (const Row& row : rows) all.push_back(RowOf(row));
}

template <class Row>
LimitTable Taken(intake::FileRows<Row> file) {
  LimitTable table{Json::array(), std::move(file.problems)};
  if (table.problems.empty()) AddRows(table.rows, file.rows);
  return table;
}

}  // namespace

Json LimitRows(const Reference& reference) {
  Json all = Json::array();
  AddRows(all, reference.known.limits);
  AddRows(all, reference.mechanical);
  AddRows(all, reference.known.deviations);
  return all;
}

LimitTable ReadLimitTable(const std::string& bytes, const TableFile& file) {
  const intake::Table table = intake::ReadTable(bytes, file.path, file.sheet);
  const auto has = [&](const char* name) {
    return !table.rows.empty() &&
        std::find(table.rows.front().cells.begin(), table.rows.front().cells.end(), name) != table.rows.front().cells.end();
  };
  if (has("property")) return Taken(intake::ReadMechanicalFile(bytes, file.path, file.How()));
  if (has("standard")) return Taken(intake::ReadDeviationsFile(bytes, file.path, file.How()));
  return Taken(has("what") ? intake::ReadSumsFile(bytes, file.path, file.How()) : intake::ReadLimitsFile(bytes, file.path, file.How()));
}

}  // namespace heatkeep::command
