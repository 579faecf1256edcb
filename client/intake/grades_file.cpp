#include "client/intake/grades_file.h"

#include <algorithm>
#include <numeric>

#include "client/intake/checked_rows.h"
#include "schema/terms/number_text.h"
#include "schema/terms/plain_text.h"

namespace heatkeep::intake {
namespace {

std::string Form(std::string_view text) {
  std::string form;
  for (char c : LowerCase(PlainText(text))) {
    if (c != ' ') form += c;
  }
  return form;
}

// Letters to change, add or leave out to make `b` of `a`.
std::size_t Distance(const std::string& a, const std::string& b) {
  std::vector<std::size_t> row(b.size() + 1);
  std::iota(row.begin(), row.end(), std::size_t{0});
  for (std::size_t i = 1; i <= a.size(); ++i) {
    std::size_t diagonal = row[0];
    row[0] = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const std::size_t change = diagonal + (a[i - 1] == b[j - 1] ? 0 : 1);
      diagonal = row[j];
      row[j] = std::min({change, row[j] + 1, row[j - 1] + 1});
    }
  }
  return row[b.size()];
}

Grade ReadRow(CheckedRows& file) {
  Grade grade;
  grade.designation = file.Needed("designation", "a grade's name");
  if (!grade.designation.empty()) file.Once("designation", grade.designation);
  grade.number = file.Text("number");
  grade.uns = file.Text("uns");
  grade.family = file.Needed("family", "a family like alloy steel");
  grade.standard = file.Text("standard");
  grade.density.kg_m3 =
      file.NeededValue<std::int64_t>("density_kg_m3", "whole kg/m3", [](const std::string& cell) { return ReadWhole(cell, 500, 25'000); });
  grade.density_source = file.Needed("density_source", "where the density is from");
  grade.source = file.Text("source");
  grade.evidence = file.Text("evidence");
  return grade;
}

}  // namespace

const std::vector<Column>& GradesColumns() {
  static const std::vector<Column> columns{{"designation", true, "its name, once in the file: 42CrMo4"},
                                           {"number", true, "its number: 1.7225"},
                                           {"uns", true, "its UNS number: G41400"},
                                           {"family", true, "alloy steel, stainless steel ..."},
                                           {"standard", true, "which standard it is of"},
                                           {"density_kg_m3", true, "whole, 500 to 25 000", false, "kg/m3"},
                                           {"density_source", true, "where the density is from"},
                                           {"source", true, "where the row is from"},
                                           {"evidence", true, "how it is known: seen, or from memory"}};
  return columns;
}

FileRows<Grade> ReadGradesFile(std::string_view bytes, const std::string& name, const ReadingOptions& how) {
  return ReadCheckedRows<Grade>(bytes, name, GradesColumns(), how, ReadRow);
}

const Grade* FindGrade(const std::vector<Grade>& grades, std::string_view text) {
  const auto find = [&grades](auto fits) -> const Grade* {
    const auto at = std::find_if(grades.begin(), grades.end(), fits);
    return at == grades.end() ? nullptr : &*at;
  };
  const std::string form = Form(text);
  if (form.empty()) return nullptr;
  if (const Grade* g = find([&](const Grade& x) { return x.designation == text; })) return g;
  if (const Grade* g = find([&](const Grade& x) { return Form(x.designation) == form; })) return g;
  if (const Grade* g = find([&](const Grade& x) { return Form(x.number) == form; })) return g;
  return find([&](const Grade& x) { return Form(x.uns) == form; });
}

std::vector<std::string> NearGrades(const std::vector<Grade>& grades, std::string_view text, std::size_t most) {
  const std::string form = Form(text);
  const std::size_t limit = std::max<std::size_t>(1, form.size() / 3);
  std::vector<std::pair<std::size_t, std::string>> near;
  for (const Grade& g : grades) {
    std::size_t nearest = Distance(form, Form(g.designation));
    for (const std::string& other : {g.number, g.uns}) {
      if (!other.empty()) nearest = std::min(nearest, Distance(form, Form(other)));
    }
    if (nearest <= limit) near.emplace_back(nearest, g.designation);
  }
  std::stable_sort(near.begin(), near.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
  std::vector<std::string> names;
  for (std::size_t i = 0; i < std::min(most, near.size()); ++i) names.push_back(near[i].second);
  return names;
}

}  // namespace heatkeep::intake
