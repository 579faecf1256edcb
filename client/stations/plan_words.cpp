#include "client/stations/plan_words.h"

#include <QCoreApplication>
#include <QRegularExpression>
#include <algorithm>

#include "client/models/qt_words.h"
#include "reports/sheet_words.h"

namespace heatkeep {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(Planning)
};

QString LeftWords(Length left, LeftFate fate, ReadingUnits units) {
  if (fate == LeftFate::None || left.nm == 0) return Words::tr("nothing left");
  return fate == LeftFate::Drop ? Words::tr("%1 kept").arg(units.Words(left, Rounding::Down))
                                : Words::tr("%1 scrap").arg(units.Words(left, Rounding::Down));
}

Sign SignOf(const SheetBlock& block) {
  return block.state == "done"   ? Sign::Done
      : block.state == "dropped" ? Sign::Warning
      : block.state == "at saw"  ? Sign::Waiting
                                 : Sign::None;
}

PlanBar BarOf(const SheetBlock& block, ReadingUnits units, OrderLetters& letters) {
  QStringList beside;
  if (!block.place.empty()) beside << Q(block.place);
  beside << (block.kind == "bar" ? Words::tr("full bar") : Words::tr("drop")) << units.Words(block.length, Rounding::Down);
  if (!block.heat.empty()) beside << Words::tr("heat %1").arg(Q(HeatInGroups(block.heat)));
  if (IsOthersMetal(block)) beside << Words::tr("owned by %1").arg(Q(block.owner));
  QString right = LeftWords(block.left, block.fate, units);
  if (block.state == "at saw") right = Words::tr("at the saw");
  if (block.state == "done") right = Words::tr("cut");
  return {.key = Q(block.tag),
          .title = Q(block.tag),
          .beside = beside.join("   "),
          .right = right,
          .sign = SignOf(block),
          .bar = PieceBarOf(block, letters)};
}

void Into(std::vector<PlanBarGroup>& groups, const QString& head, PlanBar bar) {
  if (groups.empty() || groups.back().head != head) groups.push_back({head, {}});
  groups.back().bars.push_back(std::move(bar));
}

// Of a draft's or a sheet's line that lacks pieces.
template <typename Lacking>
QString MissingWords(const Lacking& s) {
  return Words::tr("%1/%2, %3 %4: %n missing: %5", nullptr, s.missing)
      .arg(Q(s.order), Q(s.line), Q(s.section), Q(s.grade), BookWords(s.why));
}

// What is to be bought, each metal on a line of its own.
QString LineByLine(QString bought) {
  static const QRegularExpression next("; (?=\\D{0,12}\\d+ x )");
  return bought.replace(next, ";\n");
}

void Cuts(const SheetBlock& block, ReadingUnits units, QStringList& words) {
  words << QString() << Words::tr("WHAT IS CUT");
  for (const SheetCut& c : block.cuts) words << QString("%1 x %2   %3/%4").arg(c.count).arg(units.Stop(c.set), Q(c.order), Q(c.line));
  words << LeftWords(block.left, block.fate, units);
}

void Metal(const SheetBlock& block, ReadingUnits units, Mass lift_limit, QStringList& words) {
  words << QString() << Words::tr("THE PIECE") << QString("%1  %2 %3").arg(Q(block.section), Q(block.grade), Q(block.condition)).trimmed();
  words << (block.heat.empty() ? Words::tr("no heat") : Words::tr("heat %1").arg(Q(HeatInGroups(block.heat))))
        << Words::tr("papers %1").arg(Q(block.papers));
  if (!block.place.empty()) words << Words::tr("lies in %1").arg(Q(block.place));
  if (block.mass.g > 0) words << QString("%1, %2").arg(units.Words(block.mass), BookWords(HowToLift(block.mass, block.length, lift_limit)));
  if (IsOthersMetal(block)) words << Words::tr("owned by %1").arg(Q(block.owner));
  if (!DoubtWords(block).empty()) words << BookWords(DoubtWords(block));
}

}  // namespace

QString AimWords(const std::string& aim) {
  if (aim == "least-money") return Words::tr("least money");
  if (aim == "fewest-bars") return Words::tr("fewest full bars");
  if (aim == "least-metres") return Words::tr("least metres pulled");
  return Words::tr("drops first");
}

QString ProofWords(const PlanProposal& proposal) {
  QStringList words;
  for (const planning::Draft& draft : proposal.drafts)
    words << (draft.plan.layouts.empty() ? Words::tr("saw %1: nothing of it can be cut").arg(Q(draft.question.saw))
                                         : Words::tr("saw %1: %2").arg(Q(draft.question.saw), BookWords(draft.proof)));
  return words.isEmpty() ? Words::tr("nothing is open that a saw here takes") : words.join('\n');
}

QString FiguresWords(const planning::DraftFigures& f, ReadingUnits units) {
  QStringList words{
      Words::tr("%n piece(s)", nullptr, f.pieces), Words::tr("%n drop(s)", nullptr, f.drops),
      f.bars == 0 ? Words::tr("no full bar") : Words::tr("%n full bar(s), %1", nullptr, f.bars).arg(units.Total(f.new_length))};
  if (f.kept > 0) words << Words::tr("%n rest(s) kept, %1", nullptr, f.kept).arg(units.Total(f.kept_length));
  if (f.scrap.nm > 0) words << Words::tr("scrap %1").arg(units.Total(f.scrap));
  words << Words::tr("%n set-up(s)", nullptr, f.set_ups);
  return words.join(Words::tr(", "));
}

QString ShortWords(const PlanProposal& proposal) {
  QStringList words;
  for (const planning::Draft& draft : proposal.drafts)
    if (draft.extras.buy && !draft.extras.buy->words.empty()) words << LineByLine(BookWords(draft.extras.buy->words));
  for (const planning::DraftShort& s : proposal.shorts) words << MissingWords(s);
  if (!proposal.too_large.empty()) {
    QStringList lines;
    for (const std::string& line : proposal.too_large) lines << BookWords(line);
    words << Words::tr("too large for the saws: %1").arg(lines.join(", "));
  }
  return words.join('\n');
}

QString ShortWords(const Sheet& sheet) {
  QStringList words;
  for (const SheetShort& s : sheet.shorts) words << MissingWords(s);
  return words.join('\n');
}

std::vector<NextWords> NextBestWords(const planning::DraftPiece& piece, ReadingUnits units) {
  std::vector<NextWords> all;
  for (const planning::NextBest& next : piece.next) {
    QStringList words{LeftWords(next.left, next.fate, units)};
    if (next.opens_bar) words << Words::tr("opens a full bar");
    if (next.dearer && next.dearer->cents != 0)
      words << (next.dearer->cents > 0 ? Words::tr("%1 dearer").arg(AmountWords(*next.dearer))
                                       : Words::tr("%1 cheaper").arg(AmountWords(Money{} - *next.dearer)));
    all.push_back(
        {next.place.empty() ? units.Words(next.length, Rounding::Down) : Q(next.place) + ", " + units.Words(next.length, Rounding::Down),
         words.join(", ")});
  }
  return all;
}

QString WhyWords(const planning::DraftPiece& piece, ReadingUnits units, Mass lift_limit) {
  QStringList words;
  Cuts(piece.block, units, words);
  for (const std::string& note : piece.notes) words << BookWords(note);
  Metal(piece.block, units, lift_limit, words);
  return words.join('\n');
}

QString WhyWords(const SheetBlock& block, ReadingUnits units, Mass lift_limit) {
  QStringList words{Words::tr("NOT THERE?"),
                    block.otherwise.empty() ? Words::tr("nothing else held its cuts") : BookWords(block.otherwise)};
  Cuts(block, units, words);
  for (const std::string& end : EndWords(block, units.Ruler())) words << BookWords(end);
  if (!BundleWords(block).empty()) words << BookWords(BundleWords(block));
  for (const std::string& warning : WarningWords(block)) words << BookWords(warning);
  Metal(block, units, lift_limit, words);
  return words.join('\n');
}

QString AboutWords(const PlanProposal& proposal) {
  QStringList words{Words::tr("THE PLAN")};
  for (const planning::Draft& draft : proposal.drafts) {
    if (!draft.extras.choice.words.empty()) words << BookWords(draft.extras.choice.words);
    for (const std::string& bar : draft.extras.bar_words) words << BookWords(bar);
    if (!draft.learned.empty()) words << BookWords(draft.learned);
  }
  words.removeDuplicates();
  if (!proposal.shorts.empty()) words << QString() << Words::tr("WAYS OUT");
  for (const planning::DraftShort& s : proposal.shorts)
    for (const std::string& way : s.ways_out) words << Q(s.order + "/" + s.line) + ": " + BookWords(way);
  return words.join('\n');
}

std::vector<PlanBarGroup> GroupsOf(const PlanProposal& proposal, ReadingUnits units, OrderLetters& letters) {
  std::vector<PlanBarGroup> groups;
  const bool several = proposal.drafts.size() > 1;
  for (std::size_t i = 0; i < proposal.pieces.size(); ++i)
    for (const planning::DraftPiece& piece : proposal.pieces[i]) {
      const QString metal = Q(piece.block.section + "  " + piece.block.grade);
      Into(groups, several ? Words::tr("Saw %1   %2").arg(Q(proposal.drafts[i].question.saw), metal) : metal,
           BarOf(piece.block, units, letters));
    }
  return groups;
}

std::vector<PlanBarGroup> GroupsOf(const Sheet& sheet, ReadingUnits units, OrderLetters& letters) {
  std::vector<SheetBlock> blocks = sheet.blocks;
  std::ranges::stable_sort(blocks, {}, [](const SheetBlock& b) { return std::pair(b.section, b.grade); });
  std::vector<PlanBarGroup> groups;
  for (const SheetBlock& block : blocks) Into(groups, Q(block.section + "  " + block.grade), BarOf(block, units, letters));
  return groups;
}

Length LongestOf(const PlanProposal& proposal) {
  Length longest;
  for (const auto& pieces : proposal.pieces)
    for (const planning::DraftPiece& piece : pieces) longest = std::max(longest, piece.block.length);
  return longest;
}

Length LongestOf(const Sheet& sheet) {
  Length longest;
  for (const SheetBlock& block : sheet.blocks) longest = std::max(longest, block.length);
  return longest;
}

}  // namespace heatkeep
