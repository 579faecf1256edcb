#include "reports/piece_bar_layout.h"

#include <gtest/gtest.h>

#include <random>
#include <stdexcept>

#include "reports/leader_rows.h"
#include "schema/terms/length_text.h"

namespace heatkeep {
namespace {

using namespace literals;

PieceBar SevenCuts() {
  // 1900 = 7 x 240 + 7 x 2 + 206
  PieceBar bar;
  bar.length = 1900_mm;
  bar.kerf_each = 2_mm;
  bar.kerf_all = 14_mm;
  bar.grip = 60_mm;
  bar.left = 206_mm;
  bar.runs = {{240_mm, 7, 0, "A"}};
  bar.fate = LeftFate::Drop;
  return bar;
}

double Wide(const std::string& text) { return 0.55 * static_cast<double>(text.size()); }
std::string Text(Length l) { return WriteMm(l); }

BarBox Box(Length full, double width = 170) {
  BarBox box;
  box.x = 10;
  box.y = 5;
  box.width = width;
  box.height = 9;
  box.text = 1;
  box.full = full;
  return box;
}

void ExpectTiles(const PieceBar& bar) {
  Length at;
  for (const BarPart& part : BarParts(bar)) {
    EXPECT_EQ(part.from, at);
    EXPECT_GT(part.to, part.from);
    at = part.to;
  }
  EXPECT_EQ(at, bar.length);
}

TEST(PieceBar, PartsTileThePieceToTheNanometre) {
  ExpectTiles(SevenCuts());
  PieceBar bar = SevenCuts();
  bar.trim = 5_mm;
  bar.kerf_all = 16_mm;
  bar.length = 1907_mm;
  ExpectTiles(bar);
  EXPECT_EQ(BarParts(bar)[1].kind, PartKind::Kerf) << "a trim cut has its kerf";
}

TEST(PieceBar, LastCutMayNeedOnlyPartOfAKerf) {
  PieceBar bar;
  bar.length = 1_mm * 201;
  bar.kerf_each = 2_mm;
  bar.kerf_all = 1_mm;
  bar.runs = {{200_mm, 1, 0, "A"}};
  ExpectTiles(bar);
  EXPECT_EQ(BarParts(bar).back().kind, PartKind::Kerf);
}

TEST(PieceBar, LengthsThatDoNotAddUpAreRefused) {
  PieceBar bar = SevenCuts();
  bar.left += 1_nm;
  EXPECT_THROW(BarParts(bar), std::invalid_argument);
  bar = SevenCuts();
  bar.trim = -1_mm;
  bar.left += 1_mm;
  EXPECT_THROW(BarParts(bar), std::invalid_argument);
}

TEST(PieceBar, RectanglesAreToScaleAndSumToTheBar) {
  const BarLayout layout = LayOutBar(SevenCuts(), Box(6000_mm), Wide, Text);
  double sum = 0;
  for (const PlacedPart& part : layout.parts) {
    const double nm = static_cast<double>((part.part.to - part.part.from).nm);
    EXPECT_NEAR(part.rect.width, 170 * nm / 6000e6, 1e-9);
    sum += part.rect.width;
  }
  EXPECT_NEAR(sum, layout.outline.width, 1e-9);
  EXPECT_NEAR(layout.outline.width, 170.0 * 1900 / 6000, 1e-9);
  EXPECT_NEAR(layout.grip.x + layout.grip.width, layout.outline.x + layout.outline.width, 1e-9);
  EXPECT_NEAR(layout.grip.width, 170.0 * 60 / 6000, 1e-9);
}

TEST(PieceBar, TwoBarsOfAViewHaveOneScale) {
  PieceBar shorter;
  shorter.length = shorter.left = 950_mm;
  const BarLayout a = LayOutBar(SevenCuts(), Box(6000_mm), Wide, Text);
  const BarLayout b = LayOutBar(shorter, Box(6000_mm), Wide, Text);
  EXPECT_NEAR(a.outline.width, 2 * b.outline.width, 1e-9);
  EXPECT_THROW(LayOutBar(SevenCuts(), Box(1000_mm), Wide, Text), std::invalid_argument);
}

TEST(PieceBar, AWideCutHoldsItsLetterAndLengthANarrowRunGetsOneLeader) {
  const BarLayout wide = LayOutBar(SevenCuts(), Box(1900_mm), Wide, Text);
  EXPECT_TRUE(wide.leaders.empty());
  EXPECT_EQ(wide.parts[0].upper, "A");
  EXPECT_EQ(wide.parts[0].lower, "240");
  EXPECT_EQ(wide.parts.back().upper, "206 keep");
  const BarLayout narrow = LayOutBar(SevenCuts(), Box(60'000_mm), Wide, Text);
  ASSERT_EQ(narrow.leaders.size(), 2U);
  EXPECT_EQ(narrow.leaders[0].text, "A 7 \u00D7 240");
  EXPECT_EQ(narrow.leaders[1].text, "206 keep");
}

TEST(PieceBar, ATableCellLeavesOutWhatDoesNotFitAndSaysSo) {
  BarBox box = Box(60'000_mm);
  box.leader_rows = 0;
  const BarLayout layout = LayOutBar(SevenCuts(), box, Wide, Text);
  EXPECT_TRUE(layout.leaders.empty());
  EXPECT_FALSE(layout.all_labelled);
  EXPECT_DOUBLE_EQ(layout.bottom, box.y + box.height);
}

TEST(PieceBar, TextInsideNeverLeavesItsPart) {
  for (int full = 1900; full < 40'000; full += 700) {
    const BarLayout layout = LayOutBar(SevenCuts(), Box(1_mm * full), Wide, Text);
    for (const PlacedPart& part : layout.parts) {
      EXPECT_LE(Wide(part.upper), std::max(part.text.width, 0.0)) << full;
      EXPECT_LE(Wide(part.lower), std::max(part.text.width, 0.0)) << full;
    }
  }
}

// Labels of random runs: none over another, none over another's stem, all inside, in order.
TEST(PieceBar, LeaderLabelsNeverOverlap) {
  std::mt19937 random(20261125);
  for (int round = 0; round < 400; ++round) {
    const int n = 1 + static_cast<int>(random() % 25);
    std::vector<double> wanted;
    std::vector<double> widths;
    double x = 10;
    for (int i = 0; i < n; ++i) {
      x += static_cast<double>(random() % 100) / 20.0;
      widths.push_back(3 + static_cast<double>(random() % 100) / 10.0);
      wanted.push_back(x - widths.back() / 2);
    }
    const double gap = 0.5;
    const auto rows = FindLeaderRows(wanted, widths, 10, 180, gap, 30);
    ASSERT_TRUE(rows.has_value()) << "round " << round;
    for (std::size_t i = 0; i < wanted.size(); ++i) {
      EXPECT_GE(rows->start[i], 10 - 1e-6);
      EXPECT_LE(rows->start[i] + widths[i], 180 + 1e-6);
      for (std::size_t j = i + 1; j < wanted.size(); ++j) {
        EXPECT_GE(rows->start[j], rows->start[i] + gap - 1e-6) << "order";
        // Beside each other in one row, and clear of the stem of a deeper label on the right.
        if (rows->row[j] >= rows->row[i]) { EXPECT_GE(rows->start[j], rows->start[i] + widths[i] + gap - 1e-6); }
      }
    }
  }
}

TEST(PieceBar, LabelsThatCannotFitAtAllAreRefusedNotSqueezed) { EXPECT_FALSE(FindLeaderRows({0, 1}, {200, 5}, 0, 100, 1, 9).has_value()); }

}  // namespace
}  // namespace heatkeep
