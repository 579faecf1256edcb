#include "client/intake/file_rows.h"

namespace heatkeep::intake {

std::string FileProblem::Text() const {
  std::string text = file + ":";
  if (!cell.empty()) {
    text += cell + ":";
  } else if (line > 0) {
    text += std::to_string(line) + ":";
  }
  text += " " + wrong;
  return expected.empty() ? text : text + "; expected " + expected;
}

std::string ProblemsText(const std::vector<FileProblem>& problems) {
  std::string text;
  for (std::size_t i = 0; i < problems.size() && i < kMostProblemsShown; ++i) text += problems[i].Text() + "\n";
  if (problems.size() <= kMostProblemsShown) return text;
  return text + problems.front().file + ": " + std::to_string(problems.size() - kMostProblemsShown) + " more\n";
}

}  // namespace heatkeep::intake
