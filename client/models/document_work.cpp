#include "client/models/document_work.h"

#include "client/gateway/read_document.h"
#include "client/gateway/readings.h"
#include "client/gateway/stock_deeds.h"
#include "client/incoming/document_file.h"
#include "client/models/qt_words.h"

namespace heatkeep {
namespace {

using Json = nlohmann::json;

enum class Way { FileAndAccept, FileThenAccept, File };

}  // namespace

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
    emit Refused(BookWords(std::string(error.what())));
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
