// The saw's station, readable at two metres and worked with gloves: a line that goes to plan is two scans and one key (the piece, Enter
// when it is cut, the place of what is left). What does not go to plan has a large button and a key each, and the shift ends with one, too.
#pragma once

#include <optional>

#include "client/models/saw_work.h"
#include "client/stations/asking_line.h"
#include "client/stations/deed_button.h"
#include "client/stations/piece_bar_view.h"
#include "client/stations/plain_words.h"
#include "client/stations/sign_line.h"
#include "client/stations/station.h"
#include "client/stations/stop_figure.h"
#include "client/stations/waiting_list.h"
#include "client/stations/words_pane.h"

namespace heatkeep {

class SawStation : public Station {
  Q_OBJECT

 public:
  explicit SawStation(Desk& desk, QWidget* parent = nullptr);

  QString Name() const override { return tr("Saw"); }
  QStringList Deeds() const override { return {"record_cut"}; }
  void Refresh() override { work_.Read(); }
  bool StartAway() override { return work_.StartAway(); }
  void Changed(const QStringList& deeds) override;
  bool Take(const QString& scan) override;
  void NotFound(const QString& words) override { sign_->Say(Sign::Warning, words); }
  DeskPaper Paper() override;
  void Confirm() override;
  bool Stop() override;
  void Redress() override;

  const SawWork& work() const { return work_; }
  const StopFigure& stop() const { return *stop_; }

 private:
  QWidget* BuildWork();
  QWidget* BuildWhy();
  void BuildButtons(QLayout* into);
  void Show();
  void ShowWaiting();
  void ShowPiece(const SheetBlock& block);
  void ShowWhy(const SheetBlock* block);
  void ShowAge();
  void Question(const QString& words, AskingLine::Take take);
  void AskLength(const QString& words, const std::function<void(Length)>& then);
  QString ReadWith() const;  // the tape or readout, with its doubt
  std::optional<Length> LengthIn(const QString& answer);
  std::optional<int> CountIn(const QString& answer, int least, std::optional<int> most = std::nullopt);

  void MeasuredShort();
  void RestMeasured();
  void FewerCut();
  void FewerAfterAll();
  void HandOver();
  void AskHandedOver(std::size_t cut, const DoneCounts& done);  // line by line
  void BadMetal();
  void Mishap(std::vector<std::string> planning::Mishaps::*of, const QString& reason);
  void PrintLabel(const QString& tag);

  SawWork work_;
  WaitingList* waiting_;
  PlainWords *head_, *what_, *stop_words_, *stop_for_, *age_, *read_with_;
  QWidget *lengths_, *buttons_;
  StopFigure* stop_;
  WordsPane* why_;
  PieceBarView* bar_;
  SignLine* sign_;
  AskingLine* asking_;
  DeedButton *confirm_, *next_run_, *not_there_, *short_, *bad_, *no_mark_, *rest_, *fewer_, *hand_over_, *device_;
  bool blind_ = false;  // the heat is being read back
  CutTold told_;
};

}  // namespace heatkeep
