#include "reports/sheet_words.h"

#include <algorithm>
#include <cctype>
#include <set>

#include "reports/quantity_text.h"
#include "schema/terms/last_piece.h"
#include "schema/terms/length_text.h"
#include "schema/terms/number_text.h"

namespace heatkeep {

std::string HeatInGroups(const std::string& heat) {
  const bool plain = std::all_of(heat.begin(), heat.end(), [](char c) { return std::isalnum(static_cast<unsigned char>(c)) != 0; });
  if (!plain || heat.size() <= 4) return heat;
  std::string text;
  for (std::size_t i = 0; i < heat.size(); ++i) {
    if (i > 0 && i % 3 == 0) text += ' ';
    text += heat[i];
  }
  return text;
}

std::string HowToLift(Mass mass, Length length, Mass limit) {
  if (limit.g <= 0) return "no limit set";
  if (mass.g > 2 * limit.g) return "CRANE";
  if (mass > limit) return "TWO PEOPLE";
  return length.nm > 3000 * kNmPerMm ? "hand, long: two people" : "hand";
}

namespace {

// Down to the millimetre, the sixteenth or the thousandth of an inch.
std::int64_t StepOf(Units units) { return units == Units::Metric ? kNmPerMm : units == Units::Inch ? kNmPerInch / 16 : kNmPerInch / 1000; }

std::string RestText(Length left, Units units) {
  if (units == Units::Metric) return MmText({left.nm - left.nm % kNmPerMm});
  return units == Units::Inch ? InchText(left) : WriteInchDecimal(left, 3, Rounding::Down) + " in";
}

}  // namespace

std::string WhatIsLeft(const SheetBlock& block, Units units) {
  const bool whole = block.left.nm % StepOf(units) == 0;
  const std::string length = RestText(block.left, units);
  if (block.left.nm <= 0) return "NOTHING LEFT";
  const bool about = block.doubt.nm > 0 || !whole;
  if (block.fate == LeftFate::Drop) return (about ? "LEFT \u2248 " : "LEFT ") + length + ": KEEP, label prints";
  if (block.fate == LeftFate::Scrap) return (about ? "LEFT \u2248 " : "LEFT ") + length + ": SCRAP";
  return (about ? "LEFT \u2248 " : "LEFT ") + length;
}

std::vector<std::string> WarningWords(const SheetBlock& block) {
  std::vector<std::string> words;
  for (const std::string& warning : {block.stop, block.risk})
    if (!warning.empty()) words.push_back(warning);
  return words;
}

std::vector<std::string> EndWords(const SheetBlock& block, Units units) {
  std::vector<std::string> words;
  if (block.cuts.empty()) return words;
  const auto text = [&](Length length) { return units == Units::Metric ? MmText(length) : WriteInchDecimal(length) + " in"; };
  const SheetCut& last = block.cuts.back();
  LastPiece end;
  end.last = last.set;
  end.kerf = block.kerf_all - (block.trim.nm > 0 ? block.kerf_each : Length{}) - block.kerf_each * (PieceCount(block) - 1);
  end.left = block.left;
  end.doubt = block.doubt;
  end.longest = last.nominal + last.face + last.tolerance_plus;
  end.good_far_end = block.left.nm == 0;  // else it would not have been planned to the end
  if (end.kerf.nm == 0 && block.left.nm == 0 && block.kerf_each.nm > 0)
    words.push_back(PieceCount(block) == 1 && block.trim.nm == 0 ? "NO CUT: issue it whole" : "LAST PIECE: no cut, it is what remains");
  if (const auto whole = LastUncut(end))
    words.push_back("OFFER: leave the last piece uncut at " + text(*whole) + ", in its tolerance; " + text(end.kerf) + " less to chips");
  if (IsThin(end))
    words.push_back("THIN LAST SLICE: " + (block.left.nm > 0 ? text(block.left) : std::string("nothing")) +
                    " behind the blade, it may wander");
  std::set<std::string> seen;
  for (const SheetCut& cut : block.cuts) {
    const int count = FurtherPieces(block.left, cut.set, block.kerf_each, block.doubt, std::max(block.grip, block.stays));
    if (count == 0 || !seen.insert(cut.order + "/" + cut.line).second) continue;
    words.push_back("OFFER: what is left would give " + std::to_string(count) + " more of " + cut.order + "/" + cut.line + ", then " +
                    RestText(block.left - (cut.set + block.kerf_each) * count, units) + " left; not taken, ask first");
  }
  return words;
}

std::string MarkWords(const SheetBlock& block) {
  if (block.mark_end == "first") return "MARK: on the end cut FIRST, copy it before cutting";
  if (block.mark_end == "last") return "MARK: on the end cut LAST, leave it on the rest";
  if (block.mark_end == "both") return "MARK: on both ends";
  if (block.mark_end == "none") return "MARK: none on the metal, go by the tag";
  return "MARK: end not known, look before clamping";
}

std::string DoubtWords(const SheetBlock& block) {
  if (block.doubt.nm <= 0) return "";
  const Length spare = block.left - std::min(block.grip, block.left);
  if (spare < block.doubt) return "TIGHT: measure before cutting (\u00B1" + MmText(block.doubt) + ")";
  return "length \u00B1" + MmText(block.doubt);
}

std::string StopWords(const SheetCut& cut, Units units) {
  const std::string mm = StopNumber(cut.set) + " mm";
  const std::string inch = WriteInchDecimal(cut.set) + " in";
  return units == Units::Metric ? mm + " (" + inch + ")" : inch + " (" + mm + ")";
}

std::string ToleranceWords(const SheetCut& cut) {
  if (cut.tolerance_minus.nm == 0 && cut.tolerance_plus.nm == 0) return "no tolerance";
  if (cut.tolerance_minus == cut.tolerance_plus) return "\u00B1" + MmText(cut.tolerance_plus);
  return "+" + MmNumber(cut.tolerance_plus) + "/\u2212" + MmText(cut.tolerance_minus);
}

std::string LossWords(const SheetBlock& block) {
  std::string text = block.trim.nm > 0 ? "trim " + MmNumber(block.trim) + ", " : "no trim, ";
  text += "kerf " + MmNumber(block.kerf_each) + " (" + MmNumber(block.kerf_all) + " in all), ";
  return text + "grip " + MmText(block.grip);
}

bool IsOthersMetal(const SheetBlock& block) { return !block.owner.empty() && block.owner != "ours"; }

int PieceCount(const SheetBlock& block) {
  int count = 0;
  for (const SheetCut& cut : block.cuts) count += cut.count;
  return count;
}

int StrokeCount(const SheetBlock& block) {
  if (block.kerf_each.nm > 0) return static_cast<int>((block.kerf_all.nm + block.kerf_each.nm - 1) / block.kerf_each.nm);
  return PieceCount(block) + (block.trim.nm > 0 ? 1 : 0);
}

Area StrokeArea(const SheetBlock& block) { return {block.area.um2 * block.bundle}; }

std::optional<std::chrono::milliseconds> StrokeTime(const SheetBlock& block) {
  if (!block.rate || block.area.um2 <= 0) return std::nullopt;
  return CutTime(block.area, block.bundle, *block.rate);
}

std::string BundleWords(const SheetBlock& block) {
  if (block.bundle < 2) return "";
  const int strokes = StrokeCount(block);
  std::string words = "BUNDLE " + std::to_string(block.bundle_no) + ": " + std::to_string(block.bundle) + " bars cut together, " +
      std::to_string(strokes) + (strokes == 1 ? " stroke" : " strokes");
  if (block.area.um2 > 0) words += " of " + WriteScaled((StrokeArea(block).um2 + 500'000) / 1'000'000, 2) + " cm\u00B2";
  if (const auto time = StrokeTime(block)) words += ", " + WriteScaled((time->count() + 3000) / 6000, 1) + " min each";
  return words;
}

std::string CautionWords() {
  return "Bars roll, straps spring: chock first, stand at the end. Slings and tongs rated, nothing lifted "
         "over people. "
         "Ends and burrs cut, chips are hot. Guards on, interlocks working. Isolate the power before a blade "
         "change. "
         "Gloves for handling, no gloves at a moving blade. Never hold a short rest by hand. Reminders only: "
         "local "
         "rules and trained people decide.";
}

std::string ShortTime(const std::string& iso) {
  std::string text = iso.substr(0, 16);
  if (text.size() > 10 && text[10] == 'T') text[10] = ' ';
  return text;
}

}  // namespace heatkeep
