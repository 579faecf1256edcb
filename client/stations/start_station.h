// What a new book needs before the first cut, step by step: what is there already, and the command for what is not. For the owner; a
// shop that works looks here never again.
#pragma once

#include "client/stations/plain_words.h"
#include "client/stations/station.h"
#include "client/stations/waiting_list.h"

namespace heatkeep {

class StartStation : public Station {
  Q_OBJECT

 public:
  explicit StartStation(Desk& desk, QWidget* parent = nullptr);

  QString Name() const override { return tr("Start"); }
  QStringList Deeds() const override { return {"define_shop"}; }
  void Refresh() override;
  void Changed(const QStringList& deeds) override;
  bool Take(const QString&) override { return false; }

  // Steps that are done, of all.
  int done() const;
  int steps() const { return static_cast<int>(counts_.size()); }

 private:
  struct Step {
    QString title, how;
  };
  static std::vector<Step> Steps();
  void Show();

  std::vector<std::int64_t> counts_;  // how much there is of each step
  WaitingList* list_;
  PlainWords *head_, *how_;
};

}  // namespace heatkeep
