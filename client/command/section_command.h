// heatkeep section WORDS [--grade G] [--length L] [--json]: area and mass of a section, without a book.
#pragma once

#include <iosfwd>
#include <string>

namespace heatkeep::command {

struct SectionOptions {
  std::string words;        // "round 50", "flat 4in x 3/4in"
  std::string grade;        // designation, number or UNS number; empty: steel of 7850 kg/m3, and the output says so
  std::string length;       // with unit or millimetres; empty: no mass of a length
  bool json = false;        // one object: section, grade, density_kg_m3, length_nm, area_mm2, mass_kg_per_m, mass_kg
  std::string grades_file;  // the list of grades to find `grade` in; read only when a grade is given
};

// 0, or 2 with what is wrong on `err` and nothing on `out`. An unknown grade names those that are near.
int RunSection(const SectionOptions& options, std::ostream& out, std::ostream& err);

}  // namespace heatkeep::command
