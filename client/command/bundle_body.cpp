#include "client/command/bundle_body.h"

#include "client/command/saw_strokes.h"
#include "schema/terms/bad_text.h"
#include "schema/terms/length_text.h"
#include "schema/terms/tag.h"

namespace heatkeep::command {

using Json = nlohmann::json;

void ReadBarWord(const std::string& text, Length kerf, Json& body) {
  constexpr const char* expected =
      "\"TAG: rest 248\", \"TAG: measured 5998\", \"TAG: left scrap\", \"TAG: place B1-2\" or \"TAG: good 18x300 ORDER/LINE\"";
  const auto colon = text.find(": ");
  if (colon == std::string::npos || colon == 0) throw BadText(Quoted(text) + " says nothing of a bar", expected);
  const std::string said = text.substr(colon + 2);
  const auto blank = said.find(' ');
  if (blank == std::string::npos) throw BadText(Quoted(text) + " says nothing of a bar", expected);
  const std::string what = said.substr(0, blank), value = said.substr(blank + 1);
  Json& bar = body["words"][TagForm(text.substr(0, colon))];
  if (what == "measured") bar["measured_nm"] = ReadLength(value).nm;
  else if (what == "rest") bar["left"]["length_nm"] = ReadLength(value).nm;
  else if (what == "left") bar["left"]["fate"] = value;
  else if (what == "place") bar["left"]["place"] = value;
  else bar["strokes"].push_back(ReadStroke(said, kerf));
}

Json BundleBody(Json told) {
  Json bars = Json::array();
  Json words = told.value("words", Json::object());
  for (const Json& tag : told.at("tags")) {
    Json bar{{"tag", tag}, {"strokes", told.value("strokes", Json::array())}};
    if (told.contains("left")) bar["left"] = told["left"];
    if (const auto own = words.find(TagForm(tag.get<std::string>())); own != words.end()) {
      if (own->contains("left") && !told.contains("left"))
        throw std::invalid_argument("the cut is not closed; expected --left, or nothing of a rest");
      bar.merge_patch(*own);
      words.erase(own);
    }
    bars.push_back(std::move(bar));
  }
  if (!words.empty()) throw std::invalid_argument("--bar names " + words.begin().key() + ", which is not among the bars");
  for (const char* key : {"tags", "strokes", "left", "words"}) told.erase(key);
  told["bars"] = std::move(bars);
  return told;
}

}  // namespace heatkeep::command
