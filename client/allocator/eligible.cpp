#include "client/allocator/eligible.h"

namespace heatkeep::allocator {
namespace {

template <typename Table>
const typename Table::value_type* Allowed(const Table& table, const std::string& asked, const std::string& given,
                                          const std::string& order) {
  for (const auto& row : table)
    if (row.asked == asked && row.given == given && (row.order.empty() || row.order == order)) return &row;
  return nullptr;
}

}  // namespace

std::string NameOf(PaperType papers) {
  switch (papers) {
    case PaperType::None: return "none";
    case PaperType::Type21: return "2.1";
    case PaperType::Type22: return "2.2";
    case PaperType::Type31: return "3.1";
    case PaperType::Type32: return "3.2";
  }
  return {};
}

std::optional<std::string> WhyNot(const Problem& problem, const Piece& piece, const Line& line) {
  if (!piece.held.empty()) return piece.held;
  if (piece.section != line.section && !Allowed(problem.sections, line.section, piece.section, line.order))
    return "its section is " + piece.section + ", not " + line.section;
  if (piece.grade != line.grade && !Allowed(problem.grades, line.grade, piece.grade, line.order))
    return "its grade is " + piece.grade + ", not " + line.grade;
  if (!line.condition.empty() && piece.condition != line.condition)
    return "its condition is " + (piece.condition.empty() ? "not known" : piece.condition) + ", not " + line.condition;
  if (piece.owner != line.owner) {
    if (line.owner.empty()) return std::string("it is customer's own metal");
    return "it is not " + line.owner + "'s own metal";
  }
  if (piece.papers < line.papers) return "its papers are " + NameOf(piece.papers) + ", asked is " + NameOf(line.papers);
  if (piece.heat.empty() && (!line.one_heat.empty() || line.max_heats > 0))
    return std::string("its heat is not known, and the line says how many heats it may come from");
  for (const std::string& heat : line.refused_heats)
    if (heat == piece.heat) return "its heat is " + heat + ", which is refused for the line";
  return std::nullopt;
}

FineMoney SubstituteExtra(const Problem& problem, const Piece& piece, const Line& line) {
  FineMoney extra;
  if (piece.section != line.section)
    if (const auto* row = Allowed(problem.sections, line.section, piece.section, line.order)) extra.micro += row->extra_per_metre.micro;
  if (piece.grade != line.grade)
    if (const auto* row = Allowed(problem.grades, line.grade, piece.grade, line.order)) extra.micro += row->extra_per_metre.micro;
  return extra;
}

}  // namespace heatkeep::allocator
