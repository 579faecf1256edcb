#include "client/command/heat_lines.h"

#include <iomanip>
#include <ostream>

#include "client/papers/mechanical.h"

namespace heatkeep::command {
namespace {

using papers::Line;
using papers::Verdict;

Json BoundJson(const std::optional<Bound>& bound) { return bound ? NumberJson({bound->millionths, 1}) : Json(nullptr); }

bool IsTest(const Line& line) { return line.what == "Rm" || line.what == "Re" || line.what == "A"; }

std::string Limits(const Line& line) {
  if (line.least && line.most) return BoundText(*line.least) + " - " + BoundText(*line.most);
  if (line.least) return "at least " + BoundText(*line.least);
  return line.most ? "at most " + BoundText(*line.most) : "";
}

}  // namespace

Json NumberJson(const papers::Fraction& value) { return std::stod(papers::ValueText(value)); }

Json LinesJson(const std::vector<Line>& lines, const char* key) {
  Json all = Json::array();
  for (const Line& line : lines) {
    Json j{{key, line.what},
           {"value", line.value ? NumberJson(*line.value) : Json(nullptr)},
           {"min", BoundJson(line.least)},
           {"max", BoundJson(line.most)},
           {"verdict", papers::VerdictText(line.verdict)}};
    if (line.rounded) j["rounded"] = NumberJson({*line.rounded, 1});
    if (line.below) j["deviation_below"] = BoundJson(line.below);
    if (line.above) j["deviation_above"] = BoundJson(line.above);
    if (!line.words.empty()) j["words"] = line.words;
    if (!line.source.empty()) j["source"] = line.source;
    if (!line.note.empty()) j["note"] = line.note;
    if (!line.evidence.empty()) j["evidence"] = line.evidence;
    all.push_back(std::move(j));
  }
  return all;
}

void ShowLines(std::ostream& out, const std::vector<Line>& lines) {
  for (const Line& line : lines) {
    std::string limits = Limits(line);
    if (line.below) limits += " (-" + BoundText(*line.below) + ")";
    if (line.above) limits += " (+" + BoundText(*line.above) + ")";
    out << "  " << std::left << std::setw(10) << line.what << std::setw(10) << (line.value ? papers::ValueText(*line.value) : "-")
        << std::setw(26) << limits << std::setw(12) << papers::VerdictText(line.verdict);
    if (!line.source.empty()) out << line.source << " (" << line.evidence << ")";
    out << "\n";
  }
}

void SayWrong(std::ostream& out, const std::vector<Line>& lines, const std::vector<Line>& more) {
  for (const auto* list : {&lines, &more}) {
    for (const Line& line : *list) {
      if (line.verdict == Verdict::Ok || (line.verdict == Verdict::NotLimited && line.words.empty())) continue;
      out << papers::LineWords(line, IsTest(line) ? papers::UnitOf(line.what) : "%") << "\n";
    }
  }
}

}  // namespace heatkeep::command
