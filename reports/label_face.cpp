#include "reports/label_face.h"

#include "reports/bar_code.h"
#include "reports/piece_bar.h"
#include "reports/quantity_text.h"
#include "schema/terms/length_text.h"

namespace heatkeep {
namespace {

constexpr const char* kNoHeat = "NO HEAT";
constexpr double kLeast = 2.1, kLeastHeat = 3.2, kLeastTag = 3.6;

struct Heights {
  double tag, heat, what, papers, warning, side;
};
constexpr Heights kLarge{8, 11, 3.8, 2.9, 3.4, 2.5}, kSmall{5, 5.6, 2.7, 2.2, 2.4, 2.1};

const Heights& HeightsOf(LabelSize size) { return size == LabelSize::Large ? kLarge : kSmall; }

// What lies in the rack: never more than there is.
std::string WholeMm(Length length) { return WriteMm({length.nm - length.nm % kNmPerMm}); }
std::string WholeUnits(Length length) { return WholeMm(length) + " mm (" + InchText(length) + ")"; }

// The words that are there, a blank between.
std::string Together(const std::vector<std::string>& words, const std::string& between = " ") {
  std::string all;
  for (const std::string& word : words)
    if (!word.empty()) all += (all.empty() ? "" : between) + word;
  return all;
}

LabelLine Line(const std::string& text, double height, int lines = 2) {
  LabelLine line;
  line.text = text;
  line.height = height;
  line.lines = lines;
  return line;
}

LabelLine Key(const std::string& text, const std::string& caption, double height, double least, int lines) {
  LabelLine line = Line(text, height, lines);
  line.caption = caption;
  line.least = least;
  line.bold = line.mono = true;
  return line;
}

LabelLine HeatLine(const std::string& heat, const Heights& h) {
  return heat == kNoHeat || heat.empty() ? Key(kNoHeat, "", h.heat, kLeastHeat, 1) : Key(heat, "HEAT", h.heat, kLeastHeat, 3);
}

std::string PaperWords(const std::string& document) {
  if (document.empty() || document == "none") return "NO INSPECTION DOCUMENT";
  return document == "papers awaited" ? "PAPERS AWAITED" : document;
}

LabelLine Warning(const std::string& text, double height) {
  LabelLine line = Line(text, height, 3);
  line.bold = true;
  return line;
}

// Why it may not be used. The reason may be long; that it must not be used always has room.
LabelLine Stop(const std::string& blocked, double height) {
  LabelLine line = Warning("NOT TO BE USED: " + blocked, height);
  line.band = true;
  line.shorter = "NOT TO BE USED: see the book";
  return line;
}

void AddWarnings(LabelFace& face, const std::string& blocked, const std::string& owner, const std::string& limits, double height) {
  if (!blocked.empty()) face.lines.push_back(Stop(blocked, height));
  if (!owner.empty()) face.lines.push_back(Warning(owner, height));
  if (!limits.empty()) face.lines.push_back(Warning(limits, height));
}

std::string GradeWords(const std::string& grade, const std::string& condition, const std::string& number) {
  return grade.empty() ? "GRADE NOT KNOWN" : Together({grade, condition, number == grade ? "" : number});
}

}  // namespace

LabelFace FaceOf(const PieceLabel& label, LabelSize size, const std::string& printed_on, const std::string& printed_by) {
  const Heights& h = HeightsOf(size);
  const bool large = size == LabelSize::Large;
  LabelFace face;
  face.name = "the label of " + label.tag;
  face.lines = {Key(label.tag, label.kind == "drop" ? "DROP" : "BAR", h.tag, kLeastTag, 1), HeatLine(label.heat, h),
                Line(Together({GradeWords(label.grade, label.condition, label.number), label.section}, "  "), h.what, 4),
                Line(Together({WholeUnits(label.length), KgText(label.mass)}, "   "), h.what),
                Line(Together({label.mill, PaperWords(label.document)}, ", "), h.papers, 3)};
  face.lines[2].bold = true;
  const std::string reprint = label.reprint > 0 ? Together({"REPRINT " + std::to_string(label.reprint), label.reprint_on}, ", ") : "";
  AddWarnings(face, label.blocked, label.owner, Together({label.limits, label.from, reprint}, "; "), h.warning);
  if (const std::string limited = label.limits + label.from; !limited.empty())
    face.lines.back().shorter =
        Together({label.reprint > 0 ? "REPRINT " + std::to_string(label.reprint) : "", "LIMITED: see the book"}, "; ");
  face.side = {Line(label.place, h.side)};
  if (large && !label.parent.empty()) face.side.push_back(Line("of " + label.parent, h.side));
  face.side.push_back(Line(large ? Together({printed_on, printed_by}) : printed_on, h.side, large ? 2 : 1));
  if (label.place.empty()) face.side.erase(face.side.begin());
  face.fields = {{"S", label.tag}};
  if (label.heat != kNoHeat && !label.heat.empty()) face.fields.emplace_back("1T", label.heat);
  face.needed = face.fields.size();
  face.fields.emplace_back("1P", Together({label.grade, label.section}));
  face.fields.emplace_back("7Q", WholeMm(label.length) + "MM");
  face.linear = label.tag;
  StockRow row;
  row.kind = label.kind;
  row.section = label.section;
  row.length = label.length;
  face.bar = PieceBarOf(row);
  return face;
}

LabelFace FaceOf(const PlaceLabel& label, LabelSize size) {
  const bool large = size == LabelSize::Large;
  LabelFace face;
  face.name = "the label of place " + label.place;
  face.lines = {Key(label.place, "", large ? 20 : 11, 3.6, 3)};
  const std::string longest = label.longest.nm > 0 ? "to " + WholeUnits(label.longest) : "";
  const std::string heaviest = label.heaviest.g > 0 ? "to " + KgText(label.heaviest) : "";
  face.lines.push_back(Line(Together({label.kind, label.site}, ", "), large ? 3.4 : 2.4));
  if (const std::string limits = Together({longest, heaviest}, ", "); !limits.empty())
    face.lines.push_back(Warning(limits, large ? 4.4 : 2.6));
  face.fields = {{"L", label.place}};
  face.needed = 1;
  if (FitsCode128(label.place)) face.linear = label.place;
  return face;
}

LabelFace FaceOf(const BatchLabel& label, LabelSize size, const std::string& printed_on, const std::string& printed_by) {
  const Heights& h = HeightsOf(size);
  const std::string name = label.order + "/" + label.line;
  LabelFace face;
  face.name = "the label of " + name + ", heat " + label.heat;
  face.lines = {Key(name, "ORDER", h.tag * 0.8, kLeastTag, 2), HeatLine(label.heat, h),
                Line(std::to_string(label.count) + (label.count == 1 ? " piece of " : " pieces of ") + MmText(label.length) + " (" +
                         WriteInchDecimal(label.length) + " in)",
                     h.what),
                Line(Together({GradeWords(label.grade, label.condition, ""), label.section}, "  "), h.what, 4),
                Line(Together({label.mill, PaperWords(label.document)}, ", "), h.papers, 3)};
  face.lines[2].bold = true;
  if (!label.customer.empty()) face.lines.push_back(Line("for " + label.customer, h.papers));
  AddWarnings(face, label.blocked, label.owner, "", h.warning);
  face.side = {Line(size == LabelSize::Large ? Together({printed_on, printed_by}) : printed_on, h.side, size == LabelSize::Large ? 2 : 1)};
  face.fields = {{"K", label.order}, {"4K", label.line}};
  if (label.heat != kNoHeat && !label.heat.empty()) face.fields.emplace_back("1T", label.heat);
  face.fields.emplace_back("Q", std::to_string(label.count));
  face.needed = face.fields.size();
  face.fields.emplace_back("1P", Together({label.grade, label.section}));
  if (FitsCode128(name)) face.linear = name;
  return face;
}

}  // namespace heatkeep
