// A deed of the book that is done once, whatever becomes of the network or of this desk. Before it is asked it stands on the disk of the
// desk with its request number, and it stays there until its answer was taken. While the answer is missing it is asked again, as it was,
// as soon as the book is back, or when the desk is started again; the book does a request number once and answers the same.
//
// It is asked again only of the book, and under the login, it was asked of and by. One of another book or login waits and is told.
#pragma once

#include <QObject>
#include <QString>
#include <deque>
#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "client/gateway/request_number.h"
#include "client/models/book_link.h"
#include "client/models/desk_settings.h"

namespace heatkeep {

struct AskedDeed {
  std::string deed;                    // by its name (client/gateway/deed_by_name.h)
  std::vector<nlohmann::json> bodies;  // each a deed of its own; all of them or none
  nlohmann::json memo = {};            // what the asker needs when the answer comes
  QString words = {};                  // what it is, for people: "the receipt of note LS-901"
};

class KeptDeed : public QObject {
  Q_OBJECT

 public:
  // `name`: of the station, one word: its deeds are kept apart from those of others. `settings` must outlive it.
  KeptDeed(BookLink& link, const DeskSettings& settings, const QString& name, QObject* parent = nullptr);

  // False: one is under way, or the book cannot be reached; nothing was asked.
  bool Do(const AskedDeed& deed);
  bool busy() const { return asking_ || !missing_.empty(); }
  bool asking() const { return asking_; }  // and its answer is awaited
  // Whose answers are missing, in the order they were asked.
  std::vector<const AskedDeed*> Missing() const;

  // What is told when the answer came, and what when it is a refusal. `late`: it had been missing, and that is said.
  static QString Told(const QString& words, bool late);
  static QString RefusalOf(const AskedDeed& deed, const DbError& error, bool late);

 signals:
  void Lost(const AskedDeed& deed, const QString& words);
  // The answer of one body, or of several an array. `late`: it had been missing.
  void Answered(const AskedDeed& deed, const nlohmann::json& answer, bool late);
  void Refused(const AskedDeed& deed, const DbError& error, bool late);

 private:
  struct Asked {
    AskedDeed deed;
    std::vector<RequestNumber> requests;
    QString file;
    std::string book, login;
    bool late = false;
  };
  void TakeUp();  // what stands on the disk from before the desk was started: Lost for each, once the asker listens
  void Ask(const Asked& asked);
  void AskMissing();
  void Keep(Asked& asked);
  QString LostWords(const Asked& asked) const;
  static Asked Read(const QString& file);  // throws QueueError

  BookLink& link_;
  const DeskSettings& settings_;
  QString name_;
  bool asking_ = false;
  std::deque<Asked> missing_;
};

}  // namespace heatkeep
