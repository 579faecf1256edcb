#include "client/command/saw_strokes.h"

#include <map>

#include "schema/terms/bad_text.h"
#include "schema/terms/length_text.h"
#include "schema/terms/number_text.h"

namespace heatkeep::command {
namespace {

constexpr const char* kExpected =
    "\"trim 10\", \"good 9x300 ORDER/LINE\", \"reject 1x285 ORDER/LINE: fault\", \"crop 150: fault\", \"slice 25: laboratory\" or \"stock 3x200 PLACE\"";

std::string Trimmed(const std::string& text) {
  const auto first = text.find_first_not_of(' ');
  return first == std::string::npos ? "" : text.substr(first, text.find_last_not_of(' ') - first + 1);
}

}  // namespace

void ReadOrderLine(const std::string& text, nlohmann::json& into) {
  const auto slash = text.rfind('/');
  if (slash == std::string::npos || slash == 0 || slash + 1 == text.size())
    throw BadText(Quoted(text) + " names no line of an order", "ORDER/LINE");
  into["order"] = text.substr(0, slash);
  into["line"] = text.substr(slash + 1);
}

nlohmann::json ReadStroke(const std::string& words, Length kerf) {
  static const std::map<std::string, std::string> classes{{"trim", "trim"}, {"good", "good"},        {"reject", "reject"},
                                                          {"crop", "crop"}, {"slice", "test slice"}, {"stock", "stock"}};
  const auto colon = words.find(':');
  const std::string said = colon == std::string::npos ? "" : Trimmed(words.substr(colon + 1));
  const std::string rest = Trimmed(words.substr(0, colon));
  const auto blank = rest.find(' ');
  const auto known = classes.find(rest.substr(0, blank));
  if (known == classes.end() || blank == std::string::npos) throw BadText(Quoted(words) + " is no stroke", kExpected);
  nlohmann::json stroke{{"class", known->second}, {"kerf_nm", kerf.nm}};
  std::string amount = Trimmed(rest.substr(blank));
  const bool names = known->first == "good" || known->first == "reject" || known->first == "stock";
  if (names) {
    const auto last = amount.rfind(' ');
    if (last == std::string::npos) throw BadText(Quoted(words) + " does not say for which line, or where it is put", kExpected);
    const std::string name = Trimmed(amount.substr(last));
    amount = Trimmed(amount.substr(0, last));
    if (known->first == "stock") stroke["place"] = name;
    else ReadOrderLine(name, stroke);
  }
  const auto times = amount.find('x');
  stroke["count"] = times == std::string::npos ? 1 : ReadWhole(amount.substr(0, times), 1, 100'000);
  stroke["length_nm"] = ReadLength(times == std::string::npos ? amount : amount.substr(times + 1)).nm;
  if (known->first == "slice") stroke["lab"] = said;
  else if (known->first == "reject" || known->first == "crop") stroke["fault"] = said;
  if ((known->first == "slice" || known->first == "reject" || known->first == "crop") && said.empty())
    throw BadText(Quoted(words) + " does not say why", kExpected);
  return stroke;
}

}  // namespace heatkeep::command
