#include "client/models/kept_deed.h"

#include <QDir>
#include <QTimer>

#include "client/gateway/deed_by_name.h"
#include "client/models/qt_words.h"
#include "client/queue/kept_file.h"
#include "client/queue/record_file.h"

namespace heatkeep {
namespace {

using Json = nlohmann::json;

constexpr std::string_view kKind = "deed";

}  // namespace

KeptDeed::KeptDeed(BookLink& link, const DeskSettings& settings, const QString& name, QObject* parent)
    : QObject(parent), link_(link), settings_(settings), name_(name) {
  connect(&link, &BookLink::Ready, this, &KeptDeed::AskMissing);
  QTimer::singleShot(0, this, &KeptDeed::TakeUp);
}

std::vector<const AskedDeed*> KeptDeed::Missing() const {
  std::vector<const AskedDeed*> all;
  for (const Asked& asked : missing_) all.push_back(&asked.deed);
  return all;
}

bool KeptDeed::Do(const AskedDeed& deed) {
  if (busy() || !link_.ready()) return false;
  Asked asked{deed, {}, {}, link_.book(), link_.who().toStdString(), false};
  for (std::size_t i = 0; i < deed.bodies.size(); ++i) asked.requests.push_back(NewRequest());
  Keep(asked);
  Ask(asked);
  return true;
}

void KeptDeed::Keep(Asked& asked) {
  QDir().mkpath(settings_.kept_folder);
  Json kept{{"book", asked.book},          {"login", asked.login},    {"deed", asked.deed.deed},
            {"bodies", asked.deed.bodies}, {"memo", asked.deed.memo}, {"words", asked.deed.words.toStdString()}};
  for (const RequestNumber& request : asked.requests) kept["requests"].push_back(request.text);
  const QString file = QDir(settings_.kept_folder).filePath(name_ + '-' + Q(asked.requests.at(0).text));
  try {
    WriteKeptFile(file.toStdString(), kKind, kept.dump());
    asked.file = file;
  } catch (const QueueError&) {
    asked.file.clear();  // it is done all the same; LostWords says what that means where its answer is lost
  }
}

KeptDeed::Asked KeptDeed::Read(const QString& file) {
  try {
    const Json kept = Json::parse(ReadKeptFile(file.toStdString(), kKind).value_or(""));
    Asked asked{
        {kept.at("deed"), kept.at("bodies"), kept.at("memo"), Q(kept.at("words"))}, {}, file, kept.at("book"), kept.at("login"), true};
    for (const Json& request : kept.at("requests")) asked.requests.push_back({request});
    return asked;
  } catch (const Json::exception& error) {
    throw QueueError(file.toStdString() + ": this deed was kept by another version of this program (" + error.what() + ")");
  }
}

QString KeptDeed::Told(const QString& words, bool late) { return late ? tr("The missing answer is here: %1").arg(words) : words; }

QString KeptDeed::RefusalOf(const AskedDeed& deed, const DbError& error, bool late) {
  return late ? tr("%1, whose answer was missing, is refused: %2").arg(deed.words, WordsOf(error)) : WordsOf(error);
}

void KeptDeed::TakeUp() {
  const QFileInfoList files = QDir(settings_.kept_folder).entryInfoList({name_ + "-*"}, QDir::Files, QDir::Time | QDir::Reversed);
  for (const QFileInfo& file : files) {
    if (file.fileName().endsWith(".new")) continue;  // was being written when the power went: it was never asked
    try {
      missing_.push_back(Read(file.absoluteFilePath()));
      emit Lost(missing_.back().deed, LostWords(missing_.back()));
    } catch (const QueueError& error) {
      emit Lost({},
                tr("a deed whose answer is missing cannot be read again, look in the book whether it was done: %1").arg(Q(error.what())));
    }
  }
  if (link_.ready()) AskMissing();
}

QString KeptDeed::LostWords(const Asked& asked) const {
  if (asked.file.isEmpty())
    return tr("the answer got lost: whether %1 was done is not known. It is asked again when the book is back, and is done once; do not close this window before, nothing could be kept in %2")
        .arg(asked.deed.words, settings_.kept_folder);
  return tr("the answer got lost: whether %1 was done is not known. It is asked again when the book is back, and is done once")
      .arg(asked.deed.words);
}

// One after the other: those of the book and login of now.
void KeptDeed::AskMissing() {
  if (asking_) return;
  for (auto at = missing_.begin(); at != missing_.end(); ++at)
    if (at->book == link_.book() && at->login == link_.who().toStdString()) {
      Asked again = std::move(*at);
      missing_.erase(at);
      again.late = true;
      Ask(again);
      return;
    }
  for (auto at = missing_.begin(); at != missing_.end(); at = missing_.erase(at))
    emit Lost(
        {},
        at->book == link_.book()
            ? tr("whether %1 was done is not known: %2 asked for it, logs in here and has it asked again").arg(at->deed.words, Q(at->login))
            : tr("whether %1 was done is not known: it was asked of another book by %2, and is asked again when this desk works with that one")
                  .arg(at->deed.words, Q(at->login)));
}

void KeptDeed::Ask(const Asked& asked) {
  asking_ = true;
  const auto work = [deed = asked.deed.deed, bodies = asked.deed.bodies, requests = asked.requests](Connection& book) {
    if (bodies.size() == 1) return DeedByName(book, deed, requests[0], bodies[0]);
    Json answers = Json::array();
    Transaction whole(book);
    for (std::size_t i = 0; i < bodies.size(); ++i) answers.push_back(DeedByName(book, deed, requests[i], bodies[i]));
    whole.Commit();
    return answers;
  };
  const auto answered = [this](const Asked& of) {
    try {
      if (!of.file.isEmpty()) RemoveKeptFile(of.file.toStdString());
    } catch (const QueueError&) {
      // it is asked once more at the next start, and answers the same
    }
    if (link_.ready()) AskMissing();
  };
  link_.Ask(
      this, work,
      [this, asked, answered](const Json& answer) {
        asking_ = false;
        emit Answered(asked.deed, answer, asked.late);
        answered(asked);
      },
      [this, asked, answered](const DbError& error) {
        asking_ = false;
        if (error.kind == DbError::Kind::Unreachable) {
          missing_.push_front(asked);
          emit Lost(asked.deed, LostWords(asked));
        } else {
          emit Refused(asked.deed, error, asked.late);
          answered(asked);
        }
      });
}

}  // namespace heatkeep
