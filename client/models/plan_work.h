// What a planner does: cut lists that are due, a plan searched for them, laid beside a second one of another aim, overruled piece by
// piece with a reason, promised, taken back; and the live plans.
//
// Nothing is promised until Promise: a proposal is planned on what the book said when it was made. What somebody takes meanwhile is
// named and everything is planned again, to be looked at anew. What is at a saw is not free and stays as it is. A search is watched
// (Progress) and may be stopped: the best so far is shown then.
#pragma once

#include <QObject>
#include <QString>
#include <QStringList>
#include <QTimer>
#include <memory>
#include <optional>
#include <stop_token>
#include <string>
#include <utility>
#include <vector>

#include "client/gateway/cut_lines.h"
#include "client/gateway/readings.h"
#include "client/models/book_link.h"
#include "client/planning/draft_sheet.h"

namespace heatkeep {

// One aim's plan of what is chosen: a draft for every saw that has something to cut.
struct PlanProposal {
  std::string aim;
  std::vector<planning::Draft> drafts;
  std::vector<std::vector<planning::DraftPiece>> pieces;  // by draft
  std::vector<planning::DraftShort> shorts;
  planning::DraftFigures figures;       // of all drafts
  std::vector<std::string> too_large;   // open lines no saw asked for takes
  std::vector<std::string> not_heeded;  // overrules, and why
  std::vector<RequestNumber> requests;  // by draft: of its promising, made once

  bool nothing_to_cut() const;
};

class PlanWork : public QObject {
  Q_OBJECT

 public:
  explicit PlanWork(BookLink& link, QObject* parent = nullptr);
  ~PlanWork() override;

  void Read();  // lists, plans and what is chosen; Shown when they are here

  const std::vector<CutListRow>& lists() const { return lists_; }  // with something open, earliest due first
  const std::vector<PlanRow>& plans() const { return plans_; }     // live, earliest due first
  const std::vector<std::string>& saws() const { return saws_; }   // narrowest first
  Mass lift_limit() const { return lift_limit_; }

  // "all" (that is open), "list:NAME" or "plan:NUMBER".
  void Choose(const QString& key);
  const QString& chosen() const { return chosen_; }
  QStringList chosen_lists() const;  // empty: a plan is chosen, or nothing
  std::optional<std::int64_t> chosen_plan() const;
  const std::vector<CutLineRow>& lines() const { return lines_; }  // open, of what is chosen
  const std::optional<Sheet>& sheet() const { return sheet_; }     // of the plan chosen
  void Find(const QString& name);                                  // a cut list or an order: chooses it; NotFound where there is none

  // Plans for this saw only; empty: each line for the narrowest saw that takes it.
  void SetSaw(const QString& saw);
  const QString& saw() const { return saw_; }
  // A search takes 2 s up to 60 open lines, then a second every 30 lines, at most 45, and only so many rounds as keep it repeatable.
  void Plan();
  void PlanLonger();  // a minute, as many rounds as fit into it
  void PlanBeside();  // a second plan of the next aim
  void TakeOther();   // of two plans the other is the one in hand
  void LeaveOut(const QString& tag, const QString& reason);
  void TakeInstead(const QString& tag, const QString& other, const QString& reason);
  void Discard();
  void Promise();
  void Cancel(const QList<qint64>& plans, const QString& reason);  // what is at a saw stays

  bool searching() const { return searching_; }
  bool busy() const { return searching_ || deed_; }
  void StopSearch();  // the best so far is shown

  const std::vector<PlanProposal>& proposals() const { return proposals_; }  // none, one, or two side by side
  const PlanProposal* proposal() const { return proposals_.empty() ? nullptr : &proposals_[in_hand_]; }
  std::size_t in_hand() const { return in_hand_; }
  QString difference() const;  // of two: the one in hand less the other, in words
  const std::vector<planning::Overrule>& overruled() const { return overruled_; }

 signals:
  void Shown();
  void Proposed();  // a search is over, and its plans are shown
  void Progress(const QString& words);
  void Done(const QString& words, const QList<qint64>& promised);  // promised: plans that cancelling takes back
  void Warned(const QString& words);
  void Refused(const DbError& error);
  void NotFound(const QString& name);

 private:
  struct Watch;  // what a search says of itself, and its stop

  void Search(const std::vector<std::string>& aims, std::size_t in_hand, double seconds = 0);
  void Searched(std::vector<PlanProposal> found, std::size_t in_hand);
  void Replan(const std::string& words);
  std::vector<std::string> AimsShown() const;

  BookLink& link_;
  std::vector<CutListRow> lists_;
  std::vector<PlanRow> plans_;
  std::vector<std::string> saws_;
  Mass lift_limit_;
  std::vector<CutLineRow> lines_;
  std::optional<Sheet> sheet_;
  QString chosen_, saw_;
  std::vector<PlanProposal> proposals_;
  std::size_t in_hand_ = 0;
  std::vector<planning::Overrule> overruled_;
  bool searching_ = false, deed_ = false;
  std::vector<std::pair<qint64, RequestNumber>> cancelling_;  // asked, the answer not had yet
  std::shared_ptr<Watch> watch_;
  QTimer look_;
};

}  // namespace heatkeep
