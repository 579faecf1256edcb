// An inspection document taken in at the desk: typed from the paper, its file with it, judged by the book against the metal and the grade's
// limits. What it contradicts is said, and nothing is released by it then.
#pragma once

#include <QObject>
#include <QString>
#include <QStringList>
#include <nlohmann/json.hpp>

#include "client/models/book_link.h"
#include "client/models/kept_deed.h"
#include "client/models/typed_document.h"

namespace heatkeep {

class DocumentWork : public QObject {
  Q_OBJECT

 public:
  DocumentWork(BookLink& link, const DeskSettings& settings, QObject* parent = nullptr);

  // What the fields offer; read once.
  void ReadNames();
  const QStringList& issuers() const { return issuers_; }
  const QStringList& grades() const { return grades_; }
  bool busy() const { return reading_ || deed_.busy(); }

  // Files it, and accepts it where this login may. A document that is in the book without its file gets the file.
  void File(const TypedDocument& typed);
  void Accept(const QString& issuer, const QString& number);
  // What it came with is held: the book's way back from a document that should not have been accepted.
  void Hold(const QString& issuer, const QString& number, const QString& reason);

 signals:
  void Shown();
  // `fully`: nothing is to be heeded. `reversible`: it was accepted, so a hold takes that back.
  void Done(const QString& issuer, const QString& number, const QString& words, bool fully, bool reversible);
  void Contradicts(const QString& words);  // the metal, the grade's limits or the standard of documents
  void Refused(const QString& words);

 private:
  void Do(const AskedDeed& deed, const QString& not_asked);
  void Refuse(const DbError& error, const QString& words);
  void After(const AskedDeed& deed, const nlohmann::json& answer, bool late);

  BookLink& link_;
  KeptDeed deed_;
  bool reading_ = false;
  QStringList issuers_, grades_;
};

}  // namespace heatkeep
