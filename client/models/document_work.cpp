#include "client/models/document_work.h"

#include "client/gateway/read_document.h"
#include "client/gateway/readings.h"
#include "client/incoming/document_file.h"
#include "client/models/papers_work.h"
#include "client/models/qt_words.h"

namespace heatkeep {
namespace {

using Json = nlohmann::json;

constexpr const char* kFileThenAccept = "file_papers+accept_document";

Json Named(const Json& document) { return {{"issuer", document.at("issuer")}, {"number", document.at("number")}}; }

// How it is filed by who may do what. A document that is in the book without its file gets the file.
AskedDeed Filing(Connection& book, const std::string& deed, Json document, const std::string& file) {
  const std::string bytes = file.empty() ? std::string() : incoming::DocumentFileBase64(book, file);
  if (!bytes.empty()) document["file_base64"] = bytes;
  if (const auto known = ReadDocument(book, document["number"], document["issuer"]);
      known.size() == 1 && known[0].file_sha256.empty() && !bytes.empty()) {
    Json attached = Named(document);
    attached["file_base64"] = bytes;
    return {"attach_file", {attached}};
  }
  if (deed == kFileThenAccept) return {deed, {{{"document", document}, {"accepting", NewRequest().text}}}};
  return {deed, {document}};
}

}  // namespace

DocumentWork::DocumentWork(BookLink& link, const DeskSettings& settings, QObject* parent)
    : QObject(parent), link_(link), deed_(link, settings, "documents") {
  connect(&deed_, &KeptDeed::Lost, this, [this](const AskedDeed&, const QString& words) { emit Refused(words); });
  connect(&deed_, &KeptDeed::Answered, this, &DocumentWork::After);
  connect(&deed_, &KeptDeed::Refused, this,
          [this](const AskedDeed& deed, const DbError& error, bool late) { Refuse(error, KeptDeed::RefusalOf(deed, error, late)); });
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

void DocumentWork::Refuse(const DbError& error, const QString& words) {
  emit Shown();
  if (error.sqlstate == "HK026" || error.sqlstate == "HK042") emit Contradicts(words);
  else emit Refused(words);
}

void DocumentWork::Do(const AskedDeed& deed, const QString& not_asked) {
  if (busy() || !deed_.Do(deed)) emit Refused(busy() ? tr("the one before is not answered yet") : not_asked);
  emit Shown();
}

void DocumentWork::File(const TypedDocument& typed) {
  Json document;
  try {
    document = DocumentBody(typed);
  } catch (const BadText& error) { return emit Refused(BookWords(std::string(error.what()))); }
  const QString not_asked = tr("the book cannot be reached: nothing is filed; file it when it is back");
  if (busy()) return emit Refused(tr("the one before is not answered yet"));
  if (!link_.ready()) return emit Refused(not_asked);
  const char* deed = link_.May("file_papers") && link_.May("accept_document") ? kFileThenAccept
      : link_.May("file_document")                                            ? "file_document"
                                                                              : "file_papers";
  reading_ = true;
  emit Shown();
  link_.Ask(
      this, [deed, document, file = typed.file.toStdString()](Connection& book) { return Filing(book, deed, document, file); },
      [this, not_asked, name = Named(document)](AskedDeed asked) {
        reading_ = false;
        asked.memo = name;
        asked.words = tr("the filing of document %1").arg(Q(name["number"]));
        Do(asked, not_asked);
      },
      [this](const DbError& error) {
        reading_ = false;
        Refuse(error, WordsOf(error));
      });
}

void DocumentWork::Accept(const QString& issuer, const QString& number) {
  const Json name = {{"issuer", issuer.toStdString()}, {"number", number.toStdString()}};
  Do({"accept_document", {name}, name, tr("the acceptance of document %1").arg(number)},
     tr("the book cannot be reached: nothing is filed; file it when it is back"));
}

void DocumentWork::Hold(const QString& issuer, const QString& number, const QString& reason) {
  AskedDeed hold = HoldOn("certificate", number.toStdString(), issuer.toStdString(), reason.toStdString(), "document");
  hold.memo = {{"issuer", issuer.toStdString()}, {"number", number.toStdString()}};
  Do(hold, tr("the book cannot be reached: nothing is held"));
}

void DocumentWork::After(const AskedDeed& deed, const Json& answer, bool late) {
  emit Shown();
  const QString number = Q(deed.memo["number"]);
  const auto done = [&](const QString& words, bool fully, bool reversible) {
    emit Done(Q(deed.memo["issuer"]), number, KeptDeed::Told(words, late), fully, reversible);
  };
  if (deed.deed == "place_hold")
    return done(tr("all that document %1 is of is held: nothing of it is promised, pulled or shipped until the hold is lifted").arg(number),
                true, false);
  if (answer.contains("refused"))
    return emit Contradicts(KeptDeed::Told(tr("it is filed, and what it is of is held: %1").arg(Q(answer["words"])), late));
  if (deed.deed == "attach_file")
    return done(tr("document %1 was in the book without its file: the file is with it now").arg(number), true, false);
  if (!answer.contains("lots"))
    return done(tr("document %1 is filed; what it is of waits until quality has accepted it").arg(number), true, false);
  const bool unjudged = answer.contains("warning") && !answer["warning"].is_null();
  done(tr("document %1 is filed and accepted: %n lot(s) may be used with it", nullptr, answer["lots"].get<int>()).arg(number) +
           (unjudged ? "; " + Q(answer["warning"]) : QString()),
       !unjudged, true);
}

}  // namespace heatkeep
