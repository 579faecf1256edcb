#include "client/command/section_command.h"

#include <nlohmann/json.hpp>
#include <optional>
#include <ostream>

#include "client/command/reference_files.h"
#include "client/intake/file_bytes.h"
#include "client/intake/grades_file.h"
#include "schema/terms/number_text.h"
#include "schema/terms/section.h"
#include "schema/terms/wide.h"

namespace heatkeep::command {
namespace {

struct Answer {
  Section section;
  std::optional<Grade> grade;
  Density density = kSteel;
  Area area;
  MassPerMetre per_metre;
  std::optional<Length> length;
  Mass mass;
};

Grade GradeOf(const SectionOptions& options) {
  const auto grades = intake::ReadGradesFile(intake::FileBytes(options.grades_file), options.grades_file);
  if (!grades.Good()) throw std::runtime_error(grades.problems.front().Text());
  return GradeCalled(grades.rows, options.grade);
}

Answer Compute(const SectionOptions& options) {
  Answer a;
  a.section = ReadSection(options.words);
  if (!options.grade.empty()) {
    a.grade = GradeOf(options);
    a.density = a.grade->density;
  }
  a.area = AreaOf(a.section);
  a.per_metre = MassPerMetreOf(a.section, a.density);
  if (!options.length.empty()) {
    a.length = ReadLength(options.length);
    if (a.length->nm == 0) throw BadText(Quoted(options.length) + " is no length", "a length over zero");
    a.mass = MassOf(a.section, a.density, *a.length);
  }
  return a;
}

// The nearest floating-point number to n / 10^places: the decimal's own.
double Decimals(std::int64_t n, int places) { return std::stod(WriteScaled(n, places)); }

std::string Json(const Answer& a) {
  nlohmann::ordered_json j;
  j["section"] = SectionText(a.section);
  if (a.grade) j["grade"] = a.grade->designation;
  j["density_kg_m3"] = a.density.kg_m3;
  j["area_mm2"] = Decimals(a.area.um2, 6);
  j["mass_kg_per_m"] = Decimals(a.per_metre.ng, 12);
  if (a.length) {
    j["length_nm"] = a.length->nm;
    j["mass_kg"] = Decimals(a.mass.g, 3);
  }
  return j.dump(2) + "\n";
}

std::string Words(const Answer& a) {
  const std::string inches = WriteInchDecimal(a.length.value_or(Length{}), 3);
  std::string text = "section   " + SectionText(a.section) + "\n";
  if (a.grade) text += "grade     " + a.grade->designation + "\n";
  text += "density   " + WriteWhole(a.density.kg_m3) + " kg/m3" +
      (a.grade ? "  (" + a.grade->density_source + ")" : "  (steel: no grade is given)") + "\n";
  text += "area      " + WriteScaled(a.area.um2, 6, true) + " mm2\n";
  const Wide milligrams = DivideHalfAway(a.per_metre.ng, 1'000'000);
  text += "mass      " + WriteScaled(static_cast<std::int64_t>(milligrams), 6, true) + " kg/m\n";
  if (!a.length) return text;
  text += "length    " + WriteMm(*a.length, Rounding::Nearest, true) + " mm  (" + inches + " in)\n";
  return text + "mass      " + WriteScaled(a.mass.g, 3, true) + " kg\n";
}

}  // namespace

int RunSection(const SectionOptions& options, std::ostream& out, std::ostream& err) {
  try {
    const Answer answer = Compute(options);
    out << (options.json ? Json(answer) : Words(answer));
    return 0;
  } catch (const std::exception& e) {
    err << "heatkeep: " << e.what() << "\n";
    return 2;
  }
}

}  // namespace heatkeep::command
