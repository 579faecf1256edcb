#include "client/models/document_work.h"

#include <QRegularExpression>

#include "client/gateway/read_document.h"
#include "client/gateway/readings.h"
#include "client/gateway/section_json.h"
#include "client/gateway/stock_deeds.h"
#include "client/incoming/document_file.h"
#include "client/models/qt_words.h"
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

enum class Way { FileAndAccept, FileThenAccept, File };

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

DocumentWork::DocumentWork(BookLink& link, QObject* parent) : QObject(parent), link_(link), deed_(link) {
  connect(&deed_, &SureDeed::Lost, this, &DocumentWork::Refused);
}

void DocumentWork::ReadNames() {
  if (!issuers_.isEmpty() || !link_.ready()) return;
  link_.Ask(
      this,
      [](Connection& book) {
        return std::pair(heatkeep::ReadNames(book, "parties", "name"), heatkeep::ReadNames(book, "grades", "designation"));
      },
      [this](const std::pair<std::vector<std::string>, std::vector<std::string>>& names) {
        for (const std::string& name : names.first) issuers_.append(Q(name));
        for (const std::string& name : names.second) grades_.append(Q(name));
        emit Shown();
      });
}

void DocumentWork::Do(const SureDeed::Work& work, const QString& issuer, const QString& number) {
  const bool asked = deed_.Do(
      work, [this, issuer, number](const Json& answer) { Filed(answer, issuer, number); },
      [this](const DbError& error) {
        emit Shown();
        if (error.sqlstate == "HK026" || error.sqlstate == "HK042") emit Contradicts(WordsOf(error));
        else emit Refused(WordsOf(error));
      });
  if (!asked)
    emit Refused(deed_.busy() ? tr("the one before is not answered yet")
                              : tr("the book cannot be reached: nothing is filed; file it when it is back"));
  emit Shown();
}

void DocumentWork::File(const TypedDocument& typed) {
  Json body;
  try {
    body = DocumentBody(typed);
  } catch (const BadText& error) {
    emit Refused(Q(error.what()));
    return;
  }
  const Way way = link_.May("file_papers") && link_.May("accept_document") ? Way::FileThenAccept
      : link_.May("file_document")                                         ? Way::FileAndAccept
                                                                           : Way::File;
  Do(
      [body, way, file = typed.file.toStdString(), request = NewRequest(), accepting = NewRequest()](Connection& book) mutable -> Json {
        const Json name = {{"issuer", body["issuer"]}, {"number", body["number"]}};
        const std::string bytes = file.empty() ? std::string() : incoming::DocumentFileBase64(book, file);
        if (const auto known = ReadDocument(book, name["number"], name["issuer"]);
            known.size() == 1 && known[0].file_sha256.empty() && !bytes.empty()) {
          Json attached = name;
          attached["file_base64"] = bytes;
          Json answer = StockDeeds(book).AttachFile(request, attached);
          answer["attached"] = true;
          return answer;
        }
        if (!bytes.empty()) body["file_base64"] = bytes;
        if (way == Way::FileAndAccept) return Deeds(book).FileDocument(request, body);
        if (way == Way::File) return StockDeeds(book).FilePapers(request, body);
        Transaction whole(book);
        StockDeeds(book).FilePapers(request, body);
        Json answer = StockDeeds(book).AcceptDocument(accepting, name);
        whole.Commit();
        return answer;
      },
      typed.issuer.trimmed(), typed.number.trimmed());
}

void DocumentWork::Accept(const QString& issuer, const QString& number) {
  Do([body = Json{{"issuer", issuer.toStdString()}, {"number", number.toStdString()}},
      request = NewRequest()](Connection& book) { return StockDeeds(book).AcceptDocument(request, body); },
     issuer, number);
}

void DocumentWork::Hold(const QString& issuer, const QString& number, const QString& reason) {
  const Json body = {
      {"scope", "certificate"}, {"ref", number.toStdString()}, {"mill", issuer.toStdString()}, {"reason", reason.toStdString()}};
  const bool asked = deed_.Do(
      [body, request = NewRequest()](Connection& book) { return StockDeeds(book).PlaceHold(request, body); },
      [this, issuer, number](const Json&) {
        emit Done(
            issuer, number,
            tr("all that document %1 is of is held: nothing of it is promised, pulled or shipped until the hold is lifted").arg(number),
            true, false);
        emit Shown();
      },
      [this](const DbError& error) { emit Refused(WordsOf(error)); });
  if (!asked) emit Refused(tr("the book cannot be reached: nothing is held"));
}

void DocumentWork::Filed(const Json& answer, const QString& issuer, const QString& number) {
  emit Shown();
  if (answer.contains("refused")) {
    emit Contradicts(tr("it is filed, and what it is of is held: %1").arg(Q(answer["words"].get<std::string>())));
    return;
  }
  if (answer.contains("attached")) {
    emit Done(issuer, number, tr("document %1 was in the book without its file: the file is with it now").arg(number), true, false);
    return;
  }
  if (!answer.contains("lots")) {
    emit Done(issuer, number, tr("document %1 is filed; what it is of waits until quality has accepted it").arg(number), true, false);
    return;
  }
  const bool unjudged = answer.contains("warning") && !answer["warning"].is_null();
  emit Done(issuer, number,
            tr("document %1 is filed and accepted: %n lot(s) may be used with it", nullptr, answer["lots"].get<int>()).arg(number) +
                (unjudged ? "; " + Q(answer["warning"].get<std::string>()) : QString()),
            !unjudged, true);
}

}  // namespace heatkeep
