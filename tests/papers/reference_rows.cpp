#include "tests/papers/reference_rows.h"

#include <stdexcept>

#include "client/intake/file_bytes.h"
#include "client/intake/limits_file.h"
#include "client/intake/table.h"

namespace heatkeep::papers {
namespace {

template <class T>
std::vector<T> Good(intake::FileRows<T> file) {
  if (!file.Good()) throw std::runtime_error(file.problems.front().Text());
  return std::move(file.rows);
}

std::string Seed(const std::string& name) { return std::string(HEATKEEP_SEED_REFERENCE) + "/" + name; }

}  // namespace

std::vector<Row> RowsOf(const std::string& file) {
  const std::string path = std::string(HEATKEEP_TEST_REFERENCE) + "/" + file;
  const intake::Table table = intake::ReadTable(intake::FileBytes(path), path);
  std::vector<Row> rows;
  for (std::size_t r = 1; r < table.rows.size(); ++r) {
    for (std::size_t c = 0; c < table.rows[0].cells.size(); ++c)
      rows.resize(r), rows[r - 1][table.rows[0].cells[c]] = table.rows[r].cells.at(c);
  }
  return rows;
}

Known ProgramLimits() {
  Known known{Good(intake::ReadLimitsFile(intake::FileBytes(Seed("grade_limits.csv")), "grade_limits.csv")),
              Good(intake::ReadDeviationsFile(intake::FileBytes(Seed("product_deviations.csv")), "product_deviations.csv"))};
  for (GradeLimit& sum : Good(intake::ReadSumsFile(intake::FileBytes(Seed("grade_sums.csv")), "grade_sums.csv")))
    known.limits.push_back(sum);
  return known;
}

std::vector<MechanicalLimit> ProgramMechanical() {
  return Good(intake::ReadMechanicalFile(intake::FileBytes(Seed("mechanical_limits.csv")), "mechanical_limits.csv"));
}

}  // namespace heatkeep::papers
