// The rack: is it money or clutter? What nobody used is said first; then the drops of a section and grade against what was asked for,
// where it all lies, what it is worth three ways side by side, and what the metal of each month became.
#pragma once

#include <QTimer>

#include "client/models/rack_work.h"
#include "client/stations/length_bars_view.h"
#include "client/stations/rack_map_view.h"
#include "client/stations/row_view.h"
#include "client/stations/station.h"
#include "client/stations/waiting_list.h"

namespace heatkeep {

class YieldView;

class RackStation : public Station {
  Q_OBJECT

 public:
  explicit RackStation(Desk& desk, QWidget* parent = nullptr);

  QString Name() const override { return tr("Rack"); }
  QStringList Deeds() const override { return {"add_cut_list", "set_rules"}; }
  void Refresh() override { work_.Read(); }
  void Changed(const QStringList& deeds) override;
  bool Take(const QString& scan) override;
  DeskPaper Paper() override;
  void Redress() override;

  const RackWork& work() const { return work_; }
  RowView* rows() const { return rows_; }

 private:
  void Show();
  void ChooseGroup(const RackGroup& group);
  void ShowGroups();
  void ShowRows();
  void ShowMore();
  void ShowWorth();
  static QString WhenEmpty();
  std::vector<TableColumn> Columns() const;
  TableRow RowOf(const RackPiece& piece) const;

  RackWork work_;
  RowTable table_;
  WaitingList* groups_;
  PlainWords *head_, *next_, *worth_;
  LengthBarsView* lengths_;
  RackMapView* map_;
  YieldView* yield_;
  RowView* rows_;
  bool unused_only_ = false;
  std::vector<const RackPiece*> to_show_;  // of work_.pieces(); shown_ of them are in the table
  std::size_t shown_ = 0;
  QTimer more_;
};

}  // namespace heatkeep
