#include "client/intake/look.h"

#include <algorithm>

namespace heatkeep::intake {
namespace {

int LineOf(const StockFileRow& row) { return row.line; }
int LineOf(const Grade&) { return 0; }
template <class Row>
int LineOf(const Row& row) {
  return row.line_in_file;
}

template <class Row>
Look Shown(FileRows<Row> read, std::size_t most) {
  Look look;
  look.good = read.rows.size();
  for (std::size_t i = 0; i < std::min(most, read.rows.size()); ++i) {
    LookedRow row{LineOf(read.rows[i]), {}};
    const std::vector<ReadValue> values = ValuesOf(read.rows[i]);
    for (const MatchedColumn& column : read.facts.columns) {
      const auto at = std::find_if(values.begin(), values.end(), [&column](const ReadValue& v) { return v.column == column.name; });
      if (at != values.end()) row.values.push_back(*at);
    }
    look.rows.push_back(std::move(row));
  }
  look.facts = std::move(read.facts);
  look.decimal_mark = read.decimal_mark;
  look.problems = std::move(read.problems);
  look.warnings = std::move(read.warnings);
  return look;
}

}  // namespace

const std::vector<std::string>& TableKindWords() {
  static const std::vector<std::string> words{"stock", "cuts", "delivery", "opening", "certificates", "grades"};
  return words;
}

Look LookAt(TableKind kind, std::string_view bytes, const std::string& name, ReadingOptions how, std::size_t most) {
  how.bad_lines = BadLines::LeaveOut;
  switch (kind) {
    case TableKind::Stock: return Shown(ReadStockFile(bytes, name, how), most);
    case TableKind::Cuts: return Shown(ReadCutsFile(bytes, name, how), most);
    case TableKind::Delivery: return Shown(ReadDeliveryFile(bytes, name, how), most);
    case TableKind::Opening: return Shown(ReadOpeningFile(bytes, name, how), most);
    case TableKind::Certificates: return Shown(ReadCertificatesFile(bytes, name, how), most);
    case TableKind::Grades: return Shown(ReadGradesFile(bytes, name, how), most);
  }
  return {};
}

}  // namespace heatkeep::intake
