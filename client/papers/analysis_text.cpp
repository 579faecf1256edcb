#include "client/papers/analysis_text.h"

#include "schema/terms/plain_text.h"

namespace heatkeep::papers {
namespace {

constexpr const char* kExpected = "an element, = and mass %, as C=0.41";

ElementContent ReadPart(const std::string& part) {
  const std::size_t at = part.find('=');
  if (at == std::string::npos || at == 0 || at + 1 == part.size()) throw BadText(Quoted(part) + " is no content of an element", kExpected);
  ElementContent content{part.substr(0, at), 0};
  const std::string number = part.substr(at + 1);
  if (!IsElement(content.element)) {
    for (const std::string_view symbol : kElements) {
      if (LowerCase(symbol) == LowerCase(content.element))
        throw BadText("unknown element " + Quoted(content.element), "the symbol " + std::string(symbol));
    }
    throw BadText("unknown element " + Quoted(content.element), "a chemical symbol as C, Mn or Cr");
  }
  if (number.find(',') != std::string::npos) throw BadText(content.element + ": a comma in " + Quoted(number), "a decimal point, as 0.41");
  if (number.front() == '-') throw BadText(content.element + ": " + Quoted(number) + " is negative", "mass %, 0 to 100");
  try {
    content.millionths = ReadContent(number);
  } catch (const BadText& e) { throw BadText(content.element + ": " + e.Wrong(), e.Expected()); }
  return content;
}

}  // namespace

Analysis ReadAnalysis(std::string_view text) {
  Analysis analysis;
  std::string plain = PlainText(text) + " ";
  std::string part;
  for (const char c : plain) {
    if (c != ' ' && c != ';') {
      part += c;
    } else if (!part.empty()) {
      const ElementContent content = ReadPart(part);
      if (ContentOf(analysis, content.element)) throw BadText(content.element + " stands twice", "each element once");
      analysis.push_back(content);
      part.clear();
    }
  }
  if (analysis.empty()) throw BadText("the analysis is empty", kExpected);
  CheckSum(analysis);
  return analysis;
}

}  // namespace heatkeep::papers
