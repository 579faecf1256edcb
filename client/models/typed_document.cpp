#include "client/models/typed_document.h"

#include <QRegularExpression>

#include "client/gateway/section_json.h"
#include "schema/terms/bad_text.h"
#include "schema/terms/condition_text.h"
#include "schema/terms/date_text.h"
#include "schema/terms/element.h"
#include "schema/terms/number_text.h"
#include "schema/terms/papers.h"

namespace heatkeep {
namespace {

using Json = nlohmann::json;

std::string Said(const QString& text, const char* what, const char* expected) {
  const QString trimmed = text.trimmed();
  if (trimmed.isEmpty()) throw BadText(std::string(what) + " is not said", expected);
  return trimmed.toStdString();
}

// "C 0.41, Si 0.26" as its names and numbers.
std::vector<std::pair<std::string, std::string>> Pairs(const QString& text, const char* example) {
  static const QRegularExpression between("[\\s;=:]+|,\\s+");
  const QStringList words = text.split(between, Qt::SkipEmptyParts);
  std::vector<std::pair<std::string, std::string>> pairs;
  for (qsizetype i = 0; i < words.size(); i += 2) {
    if (i + 1 == words.size()) throw BadText(Quoted(words[i].toStdString()) + " has no value", example);
    pairs.emplace_back(words[i].toStdString(), words[i + 1].toStdString());
  }
  return pairs;
}

Json AnalysisOf(const QString& text) {
  constexpr const char* kExample = "elements with their mass %, as C 0.41 Si 0.26";
  std::vector<ElementContent> contents;
  for (const auto& [element, content] : Pairs(text, kExample)) {
    if (!IsElement(element)) throw BadText("analysis: " + Quoted(element) + " is no element", kExample);
    contents.push_back({element, ReadContent(content)});
  }
  CheckSum(contents);
  Json analysis = Json::object();
  for (const ElementContent& c : contents) analysis[c.element] = c.millionths;
  return analysis;
}

Json TestsOf(const QString& text) {
  constexpr const char* kExample = "Rm and Re in MPa, A in %, as Rm 1028 Re 775 A 16";
  Json tests = Json::array();
  for (const auto& [property, value] : Pairs(text, kExample)) {
    if (property != "Rm" && property != "Re" && property != "A")
      throw BadText("tests: " + Quoted(property) + " is not known here", kExample);
    tests.push_back({{"property", property}, {"value_milli", ReadScaled(value, 3)}, {"unit", property == "A" ? "%" : "MPa"}});
  }
  return tests;
}

}  // namespace

Json DocumentBody(const TypedDocument& typed) {
  Json document = {{"issuer", Said(typed.issuer, "the issuer", "the mill, as it is in the book")},
                   {"number", Said(typed.number, "the number", "the document's own number")}};
  const Papers type = ReadPapers(typed.type.toStdString());
  if (type == Papers::None) throw BadText("the type is not said", "2.1, 2.2, 3.1 or 3.2");
  document["type"] = PapersText(type);
  document["issued_on"] = ReadIsoDate(Said(typed.issued, "its date", "the date on the document, as 2026-03-04"));
  Json lot = {{"heat", Said(typed.heat, "the heat", "the heat as the document has it")},
              {"section", SectionJson(ReadSection(Said(typed.section, "the section", "round 80")))},
              {"grade", Said(typed.grade, "the grade", "a grade of the list")},
              {"condition", NormalCondition(typed.condition.trimmed().toStdString())},
              {"heat_analysis", AnalysisOf(typed.analysis)},
              {"tests", TestsOf(typed.tests)}};
  document["lots"] = Json::array({std::move(lot)});
  if (const std::string by = typed.validated_by.trimmed().toStdString(); !by.empty()) {
    document["validated_by"] = Json::array();
    for (const Validator& v : ReadValidators(by))
      document["validated_by"].push_back({{"name", v.name}, {"position", v.position}, {"for", v.whom}});
  }
  return document;
}

}  // namespace heatkeep
