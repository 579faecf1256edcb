#include "client/models/start_work.h"

#include "client/gateway/start_readings.h"
#include "client/models/qt_words.h"

namespace heatkeep {

using Json = nlohmann::json;

bool NothingInIt(const std::vector<std::int64_t>& counts) {
  return counts.size() > 3 && counts[1] == 0 && counts[2] == 0 && counts[3] == 0;
}

StartWork::StartWork(BookLink& link, const FirstBook& first, QObject* parent) : QObject(parent), link_(link), first_(first) {}

StartWork::~StartWork() = default;

void StartWork::Read() {
  if (!link_.ready()) return;
  link_.Ask(
      this, [](Connection& book) { return ReadStart(book); },
      [this](std::vector<std::int64_t> counts) {
        counts_ = std::move(counts);
        emit Shown();
      });
}

void StartWork::MakeDemo() {
  if (making_ || !first_.make_demo) return;
  making_ = true;
  emit Shown();
  maker_ = std::jthread([this, make = first_.make_demo] {
    QString failed;
    try {
      make([this](int done, int all, const QString& words) {
        QMetaObject::invokeMethod(this, [this, done, all, words] { emit Progress(done, all, words); });
      });
    } catch (const std::exception& error) { failed = QString::fromStdString(error.what()); }
    QMetaObject::invokeMethod(this, [this, failed] {
      making_ = false;
      emit Shown();
      if (!failed.isEmpty()) emit Refused(tr("the demo is not made: %1 - choose it again and it goes on where it was").arg(failed));
      else if (first_.open) first_.open(true);
    });
  });
}

void StartWork::Look(const QString& file) {
  if (busy()) return;
  looking_ = true;
  emit Shown();
  const auto failed = [this](const DbError& error) {
    looking_ = false;
    look_.reset();
    emit Looked();
    emit Refused(WordsOf(error));
  };
  link_.Ask(
      this,
      [path = file.toStdString()](Connection& book) {
        return incoming::LookAtOpening(book, {path, {}});
      },
      [this](incoming::OpeningLook look) {
        looking_ = false;
        look_ = std::move(look);
        emit Looked();
      },
      failed, BookLink::Pace::Long);
}

void StartWork::Do(std::function<Json(Connection&)> deed, std::function<void(const Json&)> then) {
  asking_ = true;
  emit Shown();
  link_.Ask(
      this, std::move(deed),
      [this, then = std::move(then)](const Json& answer) {
        asking_ = false;
        then(answer);
        emit Shown();
      },
      [this](const DbError& error) {
        asking_ = false;
        emit Shown();
        emit Refused(error.kind == DbError::Kind::Unreachable
                         ? tr("the answer got lost: do it again when the book is back; what is in the book already is not added twice")
                         : WordsOf(error));
      });
}

void StartWork::EnterNames() {
  if (busy() || !look_ || !link_.ready()) return;
  Do(
      [look = *look_, request = NewRequest()](Connection& book) {
        incoming::EnterNames(book, request, look);
        return Json::object();
      },
      [this](const Json&) {
        emit Done(tr("the names are entered; the file is looked at again"));
        Look(QString::fromStdString(look_->file.path));
      });
}

void StartWork::Book() {
  if (busy() || !look_ || look_->good.empty() || !link_.ready()) return;
  Do([look = *look_](Connection& book) { return incoming::BookOpening(book, look); },
     [this](const Json& answer) {
       std::int64_t pieces = 0;
       for (const Json& line : answer.at("lines")) pieces += line.at("count").get<std::int64_t>();
       const bool again = answer.contains("again");
       look_.reset();
       emit Looked();
       emit Done(again ? tr("this file was booked before: nothing was added")
                       : tr("%n piece(s) are in the book, each with its tag; their labels wait to be printed", nullptr,
                            static_cast<int>(pieces)));
       Read();
     });
}

}  // namespace heatkeep
