// A new book made ready: how far it is, the demo shop beside it, and an opening balance out of a spreadsheet, looked at row by row before
// it is booked.
#pragma once

#include <QObject>
#include <QString>
#include <QStringList>
#include <functional>
#include <nlohmann/json.hpp>
#include <optional>
#include <thread>
#include <vector>

#include "client/incoming/opening.h"
#include "client/models/book_link.h"
#include "client/models/first_book.h"

namespace heatkeep {

// No saw, no metal, nothing asked for: a book nobody works in yet. `counts`: of ReadStart.
bool NothingInIt(const std::vector<std::int64_t>& counts);

class StartWork : public QObject {
  Q_OBJECT

 public:
  StartWork(BookLink& link, const FirstBook& first, QObject* parent = nullptr);
  ~StartWork() override;

  void Read();
  const std::vector<std::int64_t>& counts() const { return counts_; }  // how much there is of each step (gateway/start_readings.h)
  bool empty() const { return NothingInIt(counts_); }

  const FirstBook& first() const { return first_; }
  void MakeDemo();  // Progress, then the desk opens it
  bool making() const { return making_; }

  void Look(const QString& file);  // Looked
  const std::optional<incoming::OpeningLook>& look() const { return look_; }
  void EnterNames();  // those of the file that the book does not know; looked at again then
  void Book();        // the good rows
  bool busy() const { return making_ || looking_ || asking_; }

 signals:
  void Shown();
  void Progress(int done, int all, const QString& words);
  void Looked();
  void Done(const QString& words);
  void Refused(const QString& words);

 private:
  // A deed that may be asked any number of times and is done once, by what the file says: where its answer is lost, people ask again.
  void Do(std::function<nlohmann::json(Connection&)> deed, std::function<void(const nlohmann::json&)> then);

  BookLink& link_;
  const FirstBook& first_;
  std::vector<std::int64_t> counts_;
  std::optional<incoming::OpeningLook> look_;
  bool making_ = false, looking_ = false, asking_ = false;
  std::jthread maker_;
};

}  // namespace heatkeep
