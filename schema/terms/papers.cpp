#include "schema/terms/papers.h"

#include "schema/terms/plain_text.h"

namespace heatkeep {

std::string_view PapersText(Papers papers) {
  switch (papers) {
    case Papers::None: return "none";
    case Papers::P21: return "2.1";
    case Papers::P22: return "2.2";
    case Papers::P31: return "3.1";
    case Papers::P32: return "3.2";
  }
  return "none";
}

Papers ReadPapers(std::string_view text) {
  std::string word = LowerCase(PlainText(text));
  if (word.starts_with("en 10204 ")) word.erase(0, 9);
  if (word.empty()) return Papers::None;
  for (Papers p : {Papers::None, Papers::P21, Papers::P22, Papers::P31, Papers::P32}) {
    if (word == PapersText(p)) return p;
  }
  throw BadText("unknown papers " + Quoted(text), "2.1, 2.2, 3.1, 3.2 (EN 10204) or none");
}

}  // namespace heatkeep
