#include "client/intake/file_rows.h"

namespace heatkeep::intake {

std::string FileProblem::Text() const {
  std::string text = file + ":";
  if (line > 0) text += std::to_string(line) + ":";
  text += " " + wrong;
  return expected.empty() ? text : text + "; expected " + expected;
}

std::string ProblemsText(const std::vector<FileProblem>& problems) {
  std::string text;
  for (const FileProblem& p : problems) text += p.Text() + "\n";
  return text;
}

}  // namespace heatkeep::intake
