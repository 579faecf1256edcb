#include "client/models/book_link.h"

#include "client/gateway/listener.h"
#include "client/gateway/readings.h"

namespace heatkeep {
namespace {

constexpr std::chrono::milliseconds kHear{250}, kTryAgain{1000};

// Whatever keeps a book from being opened - its folder is gone, its server does not come up - it is away, and is asked for again.
BookLink::Opener AwayOrOpen(BookLink::Opener open) {
  return [open = std::move(open)] {
    try {
      return open();
    } catch (const DbError&) { throw; } catch (const std::exception& error) {
      throw DbError(DbError::Kind::Unreachable, "", error.what());
    }
  };
}

}  // namespace

BookLink::BookLink(Opener open, QObject* parent)
    : QObject(parent), open_(AwayOrOpen(std::move(open))), quick_(std::make_unique<Lane>(open_)), long_(std::make_unique<Lane>(open_)) {}

BookLink::~BookLink() {
  listening_.request_stop();
  if (listening_.joinable()) listening_.join();
  quick_.reset();
  long_.reset();
}

void BookLink::Start() {
  if (started_) return;
  started_ = true;
  listening_ = std::jthread([this](const std::stop_token& stop) { Listen(stop); });
}

void BookLink::Presume(const QString& who, const QSet<QString>& actions) {
  if (!book_.empty()) return;
  who_ = who;
  actions_ = actions;
}

void BookLink::Answered(QPointer<QObject> receiver, std::function<void()> answer) {
  QMetaObject::invokeMethod(
      this,
      [receiver = std::move(receiver), answer = std::move(answer)] {
        if (receiver) answer();
      },
      Qt::QueuedConnection);
}

void BookLink::Lost(const DbError& error) {
  const QString why = QString::fromStdString(error.message);
  if (!ready_ && why == away_) return;
  ready_ = false;
  look_again_ = true;
  away_ = why;
  emit Away(why);
}

// The one loop that notices that the book is away, by its own session, and that it is back.
void BookLink::Listen(const std::stop_token& stop) {
  while (!stop.stop_requested()) {
    try {
      Connection session = open_();
      const QString who = QString::fromStdString(session.User());
      const std::string book = ReadBookIdentity(session);
      QSet<QString> actions;
      for (const std::string& action : ReadActions(session)) actions.insert(QString::fromStdString(action));
      Listener listener(std::move(session));
      look_again_ = false;
      Answered(this, [this, who, book, actions] {
        who_ = who;
        book_ = book;
        actions_ = actions;
        ready_ = true;
        away_.clear();
        emit Ready();
      });
      while (!stop.stop_requested() && !look_again_) {
        QStringList deeds;
        for (const std::string& deed : listener.Wait(kHear)) deeds.append(QString::fromStdString(deed));
        if (!deeds.isEmpty()) Answered(this, [this, deeds] { emit Changed(deeds); });
      }
    } catch (const DbError& error) {
      Answered(this, [this, error] { Lost(error); });
      std::mutex mutex;
      std::condition_variable_any pause;
      std::unique_lock lock(mutex);
      pause.wait_for(lock, stop, kTryAgain, [] { return false; });
    }
  }
}

}  // namespace heatkeep
