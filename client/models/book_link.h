// The desk's link to the book: reads and deeds run on threads of their own, so that the windows never wait; their answers come back
// to the window's thread. When the book cannot be reached it says so once, keeps trying, and says when it is back.
//
//   link.Ask(this, [](Connection& book) { return ReadPlans(book); },
//            [this](std::vector<PlanRow> plans) { Show(plans); },
//            [this](const DbError& error) { Say(error); });
//
// `work` runs with a session of the lane, away from the window's thread: it may take nothing of the window by reference. `then` and
// `fail` run on the window's thread, in the order asked of one lane, and not at all once `receiver` is gone. A deed asked again after
// a lost answer must carry the same request number (client/gateway/deeds.h). An exception of `work` that is no DbError is a Bug.
#pragma once

#include <QObject>
#include <QPointer>
#include <QSet>
#include <QString>
#include <QStringList>
#include <atomic>
#include <chrono>
#include <functional>
#include <memory>
#include <optional>
#include <type_traits>

#include "client/gateway/connection.h"
#include "client/models/lane.h"

namespace heatkeep {

class BookLink : public QObject {
  Q_OBJECT

 public:
  // Opens a session; called on other threads, again after a loss. What it throws that is no DbError is taken as Unreachable.
  using Opener = std::function<Connection()>;
  enum class Pace { Quick, Long };  // Long: lists and searches that may take seconds; they do not hold up the quick ones

  explicit BookLink(Opener open, QObject* parent = nullptr);
  ~BookLink() override;

  // Opens, reads who this is and what they may do, and listens; then signals Ready or Away.
  void Start();

  template <typename Work, typename Then>
  void Ask(QObject* receiver, Work work, Then then, const std::function<void(const DbError&)>& fail = {}, Pace pace = Pace::Quick);

  bool ready() const { return ready_; }
  const QString& who() const { return who_; }
  // Which book it is (client/gateway/readings.h); empty until it answered for the first time.
  const std::string& book() const { return book_; }
  // Until the book has answered: who this was when it last did, and what they might do. For work that needs no book; what is done for
  // good is done under the login that the book knows.
  void Presume(const QString& who, const QSet<QString>& actions);
  // May this login do the deed of schema api (client/gateway/deeds.h)?
  bool May(const QString& deed) const { return actions_.contains(deed); }

 signals:
  void Ready();                            // the book can be reached, now or again: read what is shown
  void Away(const QString& why);           // it cannot; what is shown may be old; again where the reason is another one
  void Changed(const QStringList& deeds);  // somebody did these deeds

 private:
  void Answered(QPointer<QObject> receiver, std::function<void()> answer);
  void Lost(const DbError& error);
  void Listen(const std::stop_token& stop);

  Opener open_;
  bool started_ = false, ready_ = false;
  std::atomic<bool> look_again_ = false;  // a lane lost its session: the listening one is opened anew, too
  QString who_, away_;                    // away_: why it was said to be away last
  std::string book_;
  QSet<QString> actions_;
  std::unique_ptr<Lane> quick_, long_;
  std::jthread listening_;
};

template <typename Work, typename Then>
void BookLink::Ask(QObject* receiver, Work work, Then then, const std::function<void(const DbError&)>& fail, Pace pace) {
  using Answer = std::invoke_result_t<Work, Connection&>;
  const QPointer<QObject> to(receiver);
  const auto failed = [this, to, fail](const DbError& error) {
    Answered(to, [this, fail, error] {
      if (error.kind == DbError::Kind::Unreachable) Lost(error);
      if (fail) fail(error);
    });
  };
  (pace == Pace::Quick ? *quick_ : *long_)
      .Run(
          [this, to, work = std::move(work), then = std::move(then)](Connection& book) mutable {
            if constexpr (std::is_void_v<Answer>) {
              work(book);
              Answered(to, [then = std::move(then)]() mutable { then(); });
            } else {
              auto answer = std::make_shared<Answer>(work(book));
              Answered(to, [then = std::move(then), answer]() mutable { then(std::move(*answer)); });
            }
          },
          failed);
}

}  // namespace heatkeep
