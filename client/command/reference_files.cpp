#include "client/command/reference_files.h"

#include <filesystem>
#include <stdexcept>

#include "client/book/schema_files.h"
#include "client/intake/file_bytes.h"
#include "client/intake/grades_file.h"
#include "client/intake/limits_file.h"

namespace heatkeep::command {
namespace {

template <class Row>
std::vector<Row> RowsOf(const std::string& name,
                        intake::FileRows<Row> (*read)(std::string_view, const std::string&, const intake::ReadingOptions&)) {
  const std::string path = ReferenceFile(name);
  intake::FileRows<Row> file = read(intake::FileBytes(path), path, {});
  if (!file.Good()) throw std::runtime_error(file.problems.front().Text());
  return std::move(file.rows);
}

// Beside the installed SQL files, or in the sources.
std::string FileThatComes(const char* folder, const std::string& name) {
  const std::filesystem::path schema = SchemaFolder(), installed = schema.parent_path() / folder / name;
  if (std::filesystem::exists(installed)) return installed.string();
  return (std::filesystem::weakly_canonical(schema).parent_path() / "seed" / folder / name)
      .string();  // of the sources, which HEATKEEP_SCHEMA may name
}

}  // namespace

std::string ReferenceFile(const std::string& name) { return FileThatComes("reference", name); }

std::string ScenarioFile(const std::string& name) { return FileThatComes("scenario", name); }

Reference ReadReference() {
  Reference r;
  r.grades = RowsOf<Grade>("grades.csv", intake::ReadGradesFile);
  r.known.limits = RowsOf<GradeLimit>("grade_limits.csv", intake::ReadLimitsFile);
  for (GradeLimit& sum : RowsOf<GradeLimit>("grade_sums.csv", intake::ReadSumsFile)) {
    papers::CheckWhat(sum.what);
    r.known.limits.push_back(std::move(sum));
  }
  r.known.deviations = RowsOf<ProductDeviation>("product_deviations.csv", intake::ReadDeviationsFile);
  r.mechanical = RowsOf<MechanicalLimit>("mechanical_limits.csv", intake::ReadMechanicalFile);
  return r;
}

const Grade& GradeCalled(const std::vector<Grade>& grades, const std::string& name) {
  if (const Grade* grade = intake::FindGrade(grades, name)) return *grade;
  std::string near;
  for (const std::string& other : intake::NearGrades(grades, name)) near += (near.empty() ? "" : ", ") + other;
  throw BadText("unknown grade " + Quoted(name),
                near.empty() ? "a designation, number or UNS number of the grade list" : "perhaps " + near);
}

}  // namespace heatkeep::command
