#include "client/models/plan_work.h"

#include <algorithm>
#include <mutex>
#include <tuple>

#include "client/gateway/saw_readings.h"
#include "client/models/qt_words.h"
#include "client/planning/watched_search.h"

namespace heatkeep {
namespace {

constexpr double kLonger = 60;               // seconds
constexpr int kAsLongAsItTakes = 1'000'000;  // rounds: the clock ends the search, not they
constexpr int kLookEvery = 150;              // ms between two looks at a search
const std::vector<std::string> kAims{"drops-first", "least-money", "fewest-bars", "least-metres"};

struct Asked {
  std::vector<std::string> cut_lists;
  std::string saw;
  double seconds = 0;  // 0: by the number of lines
  std::vector<planning::Overrule> overruled;
};

struct PlanReading {
  std::vector<CutListRow> lists;
  std::vector<PlanRow> plans;
  std::vector<std::string> saws;
  std::vector<CutLineRow> lines;
  std::optional<Sheet> sheet;
  Mass lift_limit;
};

std::vector<std::string> SawsByWidth(Connection& book) {
  std::vector<SawRow> rows = ReadSaws(book);
  std::ranges::sort(rows, [](const SawRow& a, const SawRow& b) { return std::tie(a.widest, a.saw) < std::tie(b.widest, b.saw); });
  std::vector<std::string> saws;
  for (const SawRow& row : rows) saws.push_back(row.saw);
  return saws;
}

double SecondsFor(std::size_t lines) { return std::clamp(static_cast<double>(lines) / 30, 2.0, 45.0); }

void Add(const planning::DraftFigures& one, planning::DraftFigures& sum) {
  sum.pieces += one.pieces;
  sum.drops += one.drops;
  sum.bars += one.bars;
  sum.missing += one.missing;
  sum.set_ups += one.set_ups;
  sum.kept += one.kept;
  sum.kept_length = sum.kept_length + one.kept_length;
  sum.scrap = sum.scrap + one.scrap;
  sum.new_length = sum.new_length + one.new_length;
}

PlanProposal Propose(Connection& book, const Asked& asked, const std::string& aim, const planning::Searcher& searcher) {
  PlanProposal proposal;
  proposal.aim = aim;
  PlanQuestion question;
  question.cut_lists = asked.cut_lists;
  question.aim = AimNamed(aim);
  question.limits.threads = 2;
  question.limits.seconds = asked.seconds > 0 ? asked.seconds : SecondsFor(ReadOpenLines(book, asked.cut_lists).size());
  if (asked.seconds > 0) question.limits.iterations = kAsLongAsItTakes;
  planning::DraftWishes wishes;
  wishes.overruled = asked.overruled;
  std::vector<planning::NotHeeded> not_heeded;
  for (const std::string& saw : asked.saw.empty() ? SawsByWidth(book) : std::vector{asked.saw}) {
    question.saw = saw;
    planning::Draft draft = planning::MakeDraft(book, question, wishes, searcher);
    proposal.too_large = draft.asked.too_large;
    question.wider_than = std::max(question.wider_than, draft.asked.widest);
    if (draft.asked.problem.lines.empty()) continue;
    proposal.pieces.push_back(planning::PiecesOf(draft));
    const std::vector<planning::DraftShort> shorts = planning::ShortsOf(draft);
    proposal.shorts.insert(proposal.shorts.end(), shorts.begin(), shorts.end());
    Add(planning::FiguresOf(draft, proposal.pieces.back()), proposal.figures);
    not_heeded.insert(not_heeded.end(), draft.not_heeded.begin(), draft.not_heeded.end());
    proposal.requests.push_back(NewRequest());
    proposal.drafts.push_back(std::move(draft));
  }
  for (const planning::NotHeeded& n : not_heeded) {
    const auto heeds = [&](const planning::Draft& d) {
      return std::ranges::any_of(d.overruled, [&](const planning::Overrule& o) { return o.tag == n.tag && o.instead == n.instead; });
    };
    if (std::ranges::none_of(proposal.drafts, heeds) && std::ranges::find(proposal.not_heeded, n.why) == proposal.not_heeded.end())
      proposal.not_heeded.push_back(n.why);
  }
  return proposal;
}

}  // namespace

struct PlanWork::Watch {
  std::stop_source stop;
  std::mutex mutex;
  std::string words;

  planning::Searcher Searcher() {
    return planning::Watched(stop.get_token(), [this](const std::string& now) {
      const std::lock_guard lock(mutex);
      words = now;
    });
  }
  std::string Words() {
    const std::lock_guard lock(mutex);
    return words;
  }
};

bool PlanProposal::nothing_to_cut() const { return figures.pieces == 0; }

PlanWork::PlanWork(BookLink& link, QObject* parent) : QObject(parent), link_(link) {
  look_.setInterval(kLookEvery);
  connect(&look_, &QTimer::timeout, this, [this] {
    if (watch_) emit Progress(BookWords(watch_->Words()));
  });
}

PlanWork::~PlanWork() {
  if (watch_) watch_->stop.request_stop();
}

void PlanWork::Read() {
  if (!link_.ready()) {
    emit Shown();
    return;
  }
  std::vector<std::string> of;
  if (chosen_.startsWith("list:")) of.push_back(chosen_.mid(5).toStdString());
  link_.Ask(
      this,
      [of, all = chosen_ == "all", plan = chosen_plan()](Connection& book) {
        PlanReading read;
        for (CutListRow& row : ReadCutLists(book))
          if (row.open > 0) read.lists.push_back(std::move(row));
        std::ranges::stable_sort(read.lists, {}, [](const CutListRow& row) { return std::pair(row.due.empty(), row.due); });
        read.plans = ReadPlans(book, Plans::Live);
        std::ranges::stable_sort(read.plans, {}, [](const PlanRow& row) { return std::pair(row.due.empty(), row.due); });
        read.saws = SawsByWidth(book);
        if (all || !of.empty()) read.lines = ReadOpenLines(book, of);
        if (plan) read.sheet = ReadSheet(book, *plan);
        read.lift_limit = {std::stoll(ReadSetting(book, "lift_limit_g", "25000"))};
        return read;
      },
      [this, asked = chosen_](PlanReading read) {
        lists_ = std::move(read.lists);
        plans_ = std::move(read.plans);
        saws_ = std::move(read.saws);
        lift_limit_ = read.lift_limit;
        if (asked == chosen_) {
          lines_ = std::move(read.lines);
          sheet_ = std::move(read.sheet);
        }
        if (chosen_.isEmpty() && !lists_.empty()) Choose("list:" + Q(lists_.front().name));
        else emit Shown();
      },
      [this](const DbError& error) {
        if (error.kind != DbError::Kind::Unreachable) emit Refused(error);
      });
}

void PlanWork::Choose(const QString& key) {
  if (key == chosen_) return;
  StopSearch();
  chosen_ = key;
  proposals_.clear();
  overruled_.clear();
  lines_.clear();
  sheet_.reset();
  in_hand_ = 0;
  Read();
}

QStringList PlanWork::chosen_lists() const {
  if (chosen_.startsWith("list:")) return {chosen_.mid(5)};
  QStringList all;
  if (chosen_ == "all")
    for (const CutListRow& row : lists_) all.append(Q(row.name));
  return all;
}

std::optional<std::int64_t> PlanWork::chosen_plan() const {
  if (!chosen_.startsWith("plan:")) return std::nullopt;
  return chosen_.mid(5).toLongLong();
}

void PlanWork::Find(const QString& name) {
  link_.Ask(
      this, [name = name.toStdString()](Connection& book) { return ReadCutListCalled(book, name); },
      [this, name](const std::string& list) {
        if (list.empty()) emit NotFound(name);
        else Choose("list:" + Q(list));
      },
      [this](const DbError& error) { emit Refused(error); });
}

void PlanWork::SetSaw(const QString& saw) {
  saw_ = saw;
  if (!proposals_.empty()) Search(AimsShown(), in_hand_);
}

std::vector<std::string> PlanWork::AimsShown() const {
  std::vector<std::string> aims;
  for (const PlanProposal& p : proposals_) aims.push_back(p.aim);
  return aims.empty() ? std::vector{kAims.front()} : aims;
}

void PlanWork::Plan() { Search(AimsShown(), in_hand_); }

void PlanWork::PlanLonger() { Search(AimsShown(), in_hand_, kLonger); }

void PlanWork::PlanBeside() {
  std::vector<std::string> aims{proposals_.empty() ? kAims.front() : proposals_.front().aim};
  std::string second = proposals_.size() > 1 ? proposals_.back().aim : aims.front();
  do {
    second = kAims[(static_cast<std::size_t>(std::ranges::find(kAims, second) - kAims.begin()) + 1) % kAims.size()];
  } while (second == aims.front());
  aims.push_back(second);
  Search(aims, 0);
}

void PlanWork::TakeOther() {
  if (proposals_.size() > 1) in_hand_ = 1 - in_hand_;
  emit Shown();
}

void PlanWork::LeaveOut(const QString& tag, const QString& reason) {
  overruled_.push_back({tag.toStdString(), {}, reason.toStdString()});
  Plan();
}

void PlanWork::TakeInstead(const QString& tag, const QString& other, const QString& reason) {
  overruled_.push_back({tag.toStdString(), other.toStdString(), reason.toStdString()});
  Plan();
}

void PlanWork::Discard() {
  StopSearch();
  proposals_.clear();
  overruled_.clear();
  in_hand_ = 0;
  Read();
}

void PlanWork::StopSearch() {
  if (watch_) watch_->stop.request_stop();
}

void PlanWork::Search(const std::vector<std::string>& aims, std::size_t in_hand, double seconds) {
  if (busy() || !link_.ready() || chosen_lists().isEmpty()) return;
  Asked asked{{}, saw_.toStdString(), seconds, overruled_};
  for (const QString& list : chosen_lists()) asked.cut_lists.push_back(list.toStdString());
  searching_ = true;
  watch_ = std::make_shared<Watch>();
  look_.start();
  emit Shown();
  link_.Ask(
      this,
      [asked, aims, watch = watch_](Connection& book) {
        std::vector<PlanProposal> found;
        for (const std::string& aim : aims) found.push_back(Propose(book, asked, aim, watch->Searcher()));
        return found;
      },
      [this, in_hand, of = chosen_](std::vector<PlanProposal> found) {
        searching_ = false;
        look_.stop();
        watch_.reset();
        if (of == chosen_) Searched(std::move(found), in_hand);
        else emit Shown();
      },
      [this](const DbError& error) {
        searching_ = false;
        look_.stop();
        watch_.reset();
        emit Refused(error);
        emit Shown();
      },
      BookLink::Pace::Long);
}

void PlanWork::Searched(std::vector<PlanProposal> found, std::size_t in_hand) {
  proposals_ = std::move(found);
  in_hand_ = std::min(in_hand, proposals_.size() - 1);
  QStringList words;
  for (const std::string& w : proposal()->not_heeded) words.append(BookWords(w));
  for (const planning::Draft& d : proposal()->drafts)
    if (const std::string ended = planning::EndedWords(d.plan); !ended.empty() && !words.contains(BookWords(ended)))
      words.append(BookWords(ended));
  emit Shown();
  emit Proposed();
  if (!words.isEmpty()) emit Warned(words.join("; "));
}

QString PlanWork::difference() const {
  if (proposals_.size() < 2) return {};
  return BookWords(planning::DifferenceWords(proposals_[in_hand_].drafts, proposals_[1 - in_hand_].drafts));
}

void PlanWork::Promise() {
  const PlanProposal* const now = proposal();
  if (busy() || !now || now->nothing_to_cut()) return;
  struct Outcome {
    QStringList words, meanwhile;
    QList<qint64> plans;
  };
  deed_ = true;
  emit Shown();
  link_.Ask(
      this,
      [drafts = now->drafts, requests = now->requests](Connection& book) {
        Outcome outcome;
        for (std::size_t i = 0; i < drafts.size(); ++i) {
          if (drafts[i].plan.layouts.empty()) continue;
          const planning::Promised promised = planning::Promise(book, requests[i], drafts[i]);
          for (const std::string& words : promised.meanwhile) outcome.meanwhile.append(BookWords(words));
          if (!promised.plan) continue;
          outcome.plans.append(*promised.plan);
          outcome.words.append(
              tr("plan %1 is promised: saw %2: %3").arg(*promised.plan).arg(Q(drafts[i].question.saw), Q(drafts[i].proof)));
        }
        return outcome;
      },
      [this](const Outcome& outcome) {
        deed_ = false;
        if (!outcome.words.isEmpty()) emit Done(outcome.words.join("; "), outcome.plans);
        if (!outcome.meanwhile.isEmpty()) {
          emit Warned(tr("%1. Planned again: look, and promise again").arg(outcome.meanwhile.join("; ")));
          Plan();
          return;
        }
        Choose("plan:" + QString::number(outcome.plans.front()));
      },
      [this](const DbError& error) {
        deed_ = false;
        emit Refused(error);
        emit Shown();
      });
}

void PlanWork::Cancel(const QList<qint64>& plans, const QString& reason) {
  if (busy()) return;
  deed_ = true;
  emit Shown();
  std::vector<std::pair<qint64, RequestNumber>> asked;
  for (const qint64 plan : plans) {
    const auto before = std::ranges::find(cancelling_, plan, &std::pair<qint64, RequestNumber>::first);
    asked.emplace_back(plan, before == cancelling_.end() ? NewRequest() : before->second);
  }
  cancelling_ = asked;
  link_.Ask(
      this,
      [asked, reason = reason.toStdString()](Connection& book) {
        int released = 0;
        for (const auto& [plan, request] : asked)
          released += heatkeep::Deeds(book).CancelPlan(request, plan, reason)["released"].get<int>();
        return released;
      },
      [this, plans](int released) {
        deed_ = false;
        cancelling_.clear();
        QStringList numbers;
        for (const qint64 plan : plans) numbers.append(QString::number(plan));
        emit Done(
            tr("plan %1 is cancelled: %n piece(s) are free again; what is at the saw stays", nullptr, released).arg(numbers.join(", ")),
            {});
        if (const auto plan = chosen_plan(); plan && plans.contains(*plan)) {
          chosen_.clear();
          sheet_.reset();
        }
        Read();
      },
      [this](const DbError& error) {
        deed_ = false;
        if (error.kind != DbError::Kind::Unreachable) cancelling_.clear();
        emit Refused(error);
        emit Shown();
      });
}

}  // namespace heatkeep
