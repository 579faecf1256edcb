#include "reports/pick_list_block.h"

#include <algorithm>

#include "reports/quantity_text.h"
#include "reports/sheet_words.h"

namespace heatkeep {
namespace {

constexpr double kKey = 11;       // em of place, tag and heat: capitals of DejaVu Sans Mono are 0.729 em = 8 mm
constexpr double kCaption = 2.4;  // em of captions
constexpr TextStyle kSmall{2.4};
constexpr TextStyle kBody{3.3};
constexpr TextStyle kBold{4.2, true};

// What the tag is on, and how far the block is when the sheet is printed again.
std::string TagCaption(const SheetBlock& block) {
  std::string words = block.kind == "drop" ? "TAG (drop" : "TAG (full bar";
  if (!block.state.empty() && block.state != "promised") words += ", " + block.state;
  return words + ")";
}

// Draws downwards; with no pen it only measures.
class Block {
 public:
  Block(Pen* pen, double y, const SheetBlock& block, const BlockLook& look, OrderLetters& letters)
      : pen_(pen), top_(y), y_(y), b_(block), look_(look), letters_(letters) {}

  double draw() {
    if (pen_ != nullptr) pen_->line(look_.x, y_, look_.x + look_.width, y_, 0.5);
    y_ += 1.4;
    keys();
    what();
    how();
    bar();
    cuts();
    left();
    ends();
    foot();
    return y_ + 1.2 - top_;
  }

 private:
  void text(double x, double width, const std::string& words, const TextStyle& style, double drop = 0) {
    if (pen_ != nullptr) pen_->text(x, y_ + drop, width, words, style);
  }
  // A text in a box as wide as its text, right edge at `right`; returns its left edge.
  double boxed(double right, const std::string& words, const TextStyle& style, double thick = 0.4) {
    const double width = std::min(TextWidthMm(words, style), look_.width * 0.45) + 2.4;
    if (pen_ != nullptr) pen_->box(right - width, y_ - 0.1, width, LineHeight(style) + 0.3, thick);
    text(right - width + 1.2, width - 2.4, words, style, 0.2);
    return right - width;
  }

  void keys() {
    const std::string heat = b_.heat.empty() ? "unknown" : HeatInGroups(b_.heat);
    const double disc = 13;
    const std::string values[3] = {b_.place, b_.tag, heat};
    const std::string captions[3] = {"PLACE", TagCaption(b_), "HEAT"};
    TextStyle key{kKey, true, true, false, Align::Left, true};
    const double gap = 6;
    const double room = look_.width - disc - 2 * gap - 2;
    double need[3];
    double sum = 0;
    for (int i = 0; i < 3; ++i) sum += need[i] = std::max(TextWidthMm(values[i], key), 16.0);
    if (sum > room) {  // long names: all three smaller, on one line
      const double scale = std::max(0.45, room / sum * 0.995);
      key.height *= scale;
      for (double& width : need) width = std::min(width * scale, room * 0.5);
      sum = need[0] + need[1] + need[2];
      if (sum > room)
        for (double& width : need) width *= room / sum;
    }
    if (pen_ != nullptr) {
      pen_->fill(look_.x, y_ + 0.2, 10.5, 12.6);
      const double em = b_.block < 100 ? 6.2 : 4.2;
      pen_->text(look_.x + 0.3, y_ + 6.4 - em * 0.61, 9.9, std::to_string(b_.block), {em, true, false, true, Align::Center});
    }
    double x = look_.x + disc;
    const double spread = sum < room ? (room - sum) / 2 : 0;
    for (int i = 0; i < 3; ++i) {
      text(x, need[i] + spread, captions[i], {kCaption, true});
      text(x, need[i] + 0.5, values[i], key, 2.1 + (kKey - key.height) * 0.75);
      x += need[i] + gap + spread;
    }
    y_ += 14.2;
  }

  void paragraph(double width, const std::string& words, const TextStyle& style) {
    if (pen_ != nullptr) pen_->paragraph(look_.x, y_, width, words, style);
    y_ += ParagraphHeight(words, width, style);
  }

  // Section, grade, papers, owner: one row, or as many as they need. What the metal is and whose is never
  // shortened.
  void what() {
    std::string words = b_.section + "  \u00B7  " + b_.grade;
    if (!b_.condition.empty()) words += "  " + b_.condition;
    std::string papers = b_.mill;
    if (!b_.papers.empty()) papers += (papers.empty() ? "" : ", ") + b_.papers;
    const std::string owner = IsOthersMetal(b_) ? "OWNER: " + b_.owner : "";
    const double wide = TextWidthMm(words, kBold) + 4;
    const double owner_wide = owner.empty() ? 0 : TextWidthMm(owner, {3.6, true}) + 6;
    if (wide + TextWidthMm(papers, kBody) * 0.8 + owner_wide > look_.width || owner_wide > look_.width * 0.44) {
      paragraph(look_.width, words, kBold);
      paragraph(look_.width, papers, kBody);
      if (!owner.empty()) paragraph(look_.width, owner, {3.6, true});
      return;
    }
    double right = look_.x + look_.width;
    if (!owner.empty()) right = boxed(right, owner, {3.6, true}) - 3;
    text(look_.x, wide, words, kBold);
    text(look_.x + wide, right - look_.x - wide, papers, {3.3, false, false, false, owner.empty() ? Align::Right : Align::Left}, 0.8);
    y_ += 5.7;
  }

  void how() {
    const double edge = boxed(look_.x + look_.width, "LIFT: " + HowToLift(b_.mass, b_.length, look_.lift_limit), {3.6, true});
    text(edge - 32, 29, KgText(b_.mass), {4.2, true, false, false, Align::Right});
    const std::string length = BothUnits(b_.length);
    const double wide = TextWidthMm(length, kBold) + 4;
    text(look_.x, wide, length, kBold);
    const std::string doubt = DoubtWords(b_);
    const bool tight = doubt.starts_with("TIGHT");
    text(look_.x + wide, edge - 30 - look_.x - wide, doubt, {3.3, tight}, 0.8);
    y_ += 5.7;
    const TextStyle stamp{3.9, true, true, false, Align::Left, true};
    const std::string heat = b_.heat.empty() ? "HEAT UNKNOWN" : b_.heat;
    const double right = look_.x + look_.width;
    const double stamp_width = std::min(TextWidthMm(heat, stamp), 60.0) + 0.5;
    text(right - stamp_width, stamp_width, heat, stamp, -0.5);
    text(right - stamp_width - 42, 40, "write on each piece:", {3.3, false, false, false, Align::Right});
    text(look_.x, right - stamp_width - 42 - look_.x, MarkWords(b_), kBody);
    y_ += 5;
  }

  void bar() {
    const double dots = pen_ != nullptr ? pen_->dots() : 100;
    const PieceBar piece = PieceBarOf(b_, letters_);
    BarView view = PaperView(look_.x * dots, y_ * dots, look_.width * dots, look_.full, dots);
    view.ruler = true;
    view.units = look_.units;
    view.symbol_width = look_.symbol_width * dots;
    const double height = pen_ != nullptr ? PaintPieceBar(pen_->painter(), piece, view) : PieceBarHeight(piece, view);
    y_ += height / dots + 0.8;
  }

  void cuts() {
    if (b_.cuts.empty()) return;
    if (b_.bundle > 1) {
      text(look_.x, look_.width, BundleWords(b_), {4.0, true});
      y_ += 5.4;
    }
    const double rows = static_cast<double>(b_.cuts.size());
    const double row = rows <= 6 ? 5.6 : std::max(2.4, std::min(5.0, 150 / rows));
    const double em = std::min(4.0, row * 0.72);
    const double right = look_.x + look_.width;
    for (const SheetCut& cut : b_.cuts) {
      const double drop = (row - em * 1.22) / 2;
      const double plain = std::min(3.3, em);
      text(look_.x, 8, OrderLetters::letter(letters_.index(cut.order)), {em, true}, drop);
      text(look_.x + 8, 13, std::to_string(cut.count) + " \u00D7", {em, true, false, false, Align::Right}, drop);
      text(look_.x + 23, 58, "STOP " + StopWords(cut, look_.units), {em, true}, drop);
      text(look_.x + 82.5, 24, ToleranceWords(cut), {plain}, drop + (em - plain) * 0.9);
      const std::string customer = std::string(cut.one_heat ? " ONE HEAT" : "") + (cut.customer.empty() ? "" : ", " + cut.customer);
      text(look_.x + 108, right - 40 - look_.x - 108, cut.order + "/" + cut.line + customer, {plain}, drop + (em - plain) * 0.9);
      if (pen_ != nullptr) {
        for (int i = 0; i < 2; ++i) {
          pen_->box(right - 38 + 20 * i, y_ + 0.4, 18, row - 0.8);
          pen_->text(right - 37.4 + 20 * i, y_ + 0.6, 14, i == 0 ? "good" : "reject", {std::min(2.0, em * 0.6)});
        }
      }
      y_ += row;
    }
  }

  void left() {
    y_ += 0.7;
    const double right = look_.x + look_.width;
    const std::string words = WhatIsLeft(b_, look_.units);
    const TextStyle style{4.6, true};
    const double wide = std::min(TextWidthMm(words, style) + 4, 98.0);
    if (pen_ != nullptr) {
      pen_->box(look_.x, y_, wide, 7.2, 0.6);
      pen_->text(look_.x + 2, y_ + 0.8, wide - 4, words, style);
    }
    if (b_.left.nm > 0) {
      text(look_.x + wide + 2, right - 49 - look_.x - wide - 2,
           KgText(b_.left_mass) + ", " + HowToLift(b_.left_mass, b_.left, look_.lift_limit), {3.0}, 1.8);
      for (int i = 0; i < 2 && pen_ != nullptr; ++i) {
        pen_->box(right - 46 + 24 * i, y_ + 0.2, 22, 6.8);
        pen_->text(right - 45.4 + 24 * i, y_ + 0.4, 20, i == 0 ? "rest measured" : "put away at", {2.0});
      }
    }
    y_ += 7.5;
  }

  void ends() {
    for (const std::string& warning : WarningWords(b_)) paragraph(look_.width, warning, {4.0, true});
    for (const std::string& words : EndWords(b_, look_.units)) {
      text(look_.x, look_.width, words, {3.0});
      y_ += 4.0;
    }
  }

  void foot() {
    const double right = look_.x + look_.width;
    const std::string otherwise = b_.otherwise.empty() ? "ask the planner" : b_.otherwise;
    const std::string words = "If it is not there: " + otherwise;
    const TextStyle style{3.0};
    if (pen_ != nullptr) pen_->paragraph(look_.x, y_ + 0.3, 100, words, style);
    text(look_.x + 103, right - 29 - look_.x - 103, LossWords(b_), {2.5}, 0.7);
    text(right - 29, 23, "pulled and cut", {2.4, false, false, false, Align::Right}, 0.8);
    if (pen_ != nullptr) pen_->box(right - 4, y_ + 0.4, 4, 4);
    y_ += 4.2 + std::max(0.0, ParagraphHeight(words, 100, style) - LineHeight(style));
  }

  Pen* pen_;
  double top_, y_;
  const SheetBlock& b_;
  const BlockLook& look_;
  OrderLetters& letters_;
};

}  // namespace

double DrawBlock(Pen* pen, double y, const SheetBlock& block, const BlockLook& look, OrderLetters& letters) {
  return Block(pen, y, block, look, letters).draw();
}

}  // namespace heatkeep
