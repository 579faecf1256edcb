#include "tests/reports/invented_sheet.h"

#include <array>
#include <string>

namespace heatkeep {
namespace {

using namespace literals;

struct Stock {
  const char *section, *grade, *condition, *mill, *heat, *papers, *owner;
  std::int64_t grams_per_metre;
};

constexpr std::array kStock{Stock{"round 80", "42CrMo4", "+QT", "Vandrek", "M2208", "3.1 no. 88-1203", "ours", 39458},
                            Stock{"round 50", "C45E", "+N", "Mirrowby", "K70415", "3.1 no. 4471", "ours", 15413},
                            Stock{"hex 41", "11SMnPb30", "+C", "Kestholm", "H7731/2", "2.2", "ours", 11428},
                            Stock{"flat 100x20", "S355J2", "+AR", "Vandrek", "0O1I558B", "3.1 no. 90-0077", "Pallant Hydraulics", 15700},
                            Stock{"tube 60.3x5", "E355", "+SR", "Mirrowby", "T118402", "3.1 no. 5120", "ours", 6819},
                            Stock{"round 3 1/8 in", "4140", "Q+T", "Kestholm", "AX90 217", "3.1 no. 662", "ours", 38844},
                            Stock{"square 50", "1.4404", "+AT", "Vandrek", "88417003", "3.2 no. 17", "Ister Marine", 20000}};

constexpr std::array kCustomers{"Pallant Hydraulics", "Drewe Conveyors", "Ister Marine"};

Mass MassOfLength(const Stock& s, Length l) { return {l.nm / 1'000'000 * s.grams_per_metre / 1000}; }

// 7, 5 -> "00007": what the invented tags and orders are made of.
std::string Digits(int n, std::size_t width) {
  std::string text = std::to_string(n);
  return text.size() < width ? std::string(width - text.size(), '0') + text : text;
}

void AddCuts(SheetBlock& b, int i) {
  const Length inch{kNmPerInch};
  const std::array<Length, 6> sets{240_mm, 412_mm, 35_mm, 13 * inch + Length{inch.nm * 7 / 8}, 1250_mm, 88_mm};
  if (i == 0) {  // 7 x 240 out of a drop of 1900: 206 are left
    SheetCut cut;
    cut.order = "W-3300";
    cut.line = "1";
    cut.customer = kCustomers[0];
    cut.count = 7;
    cut.set = cut.nominal = 240_mm;
    cut.tolerance_plus = cut.tolerance_minus = 500_um;
    b.cuts.push_back(cut);
    return;
  }
  const int kinds = i % 9 == 8 ? 5 : 1 + i % 3;
  for (int k = 0; k < kinds; ++k) {
    SheetCut cut;
    const int pick = (i + k) % 6;
    cut.set = sets[static_cast<std::size_t>(pick)] + 1_mm;
    cut.nominal = sets[static_cast<std::size_t>(pick)];
    cut.tolerance_plus = Length{500'000};
    cut.tolerance_minus = k % 2 == 0 ? Length{500'000} : Length{0};
    cut.order = "W-" + Digits(3300 + (i * 7 + k * 3) % 11, 4);
    cut.line = std::to_string(1 + k);
    cut.customer = kCustomers[static_cast<std::size_t>((i + k) % 3)];
    cut.count = sets[static_cast<std::size_t>(pick)] > 1000_mm ? 2 : 1 + (i * 5 + k) % 4;
    b.cuts.push_back(cut);
  }
}

}  // namespace

Sheet InventedSheet(int blocks) {
  Sheet sheet;
  sheet.number = "0412";
  sheet.saw = "1";
  sheet.due = "2026-11-25T14:00:00+01:00";
  sheet.made_at = "2026-11-25T07:40:12+01:00";
  sheet.made_by = "planner (invented)";
  sheet.proof = "opens 3 full bars, 18.3 m; no plan opens less (proved). Uses 9 drops, 14.2 m; scrap 0.8 %.";
  sheet.one_heat = blocks == 1 ? "ONE HEAT" : "";
  sheet.kerf = 2_mm;
  sheet.trim = 5_mm;
  sheet.grip = 60_mm;
  sheet.lift_limit = {25'000};
  for (int i = 0; i < blocks; ++i) {
    const Stock& s = kStock[static_cast<std::size_t>(i) % kStock.size()];
    SheetBlock b;
    b.block = i + 1;
    b.place = "B" + Digits(1 + i / 8 % 8, 1) + "-" + Digits(1 + i % 5, 1);
    b.tag = Digits(10234 + i * 17, 5) + "-" + Digits(i % 10, 1);
    b.kind = i % 4 == 3 ? "bar" : "drop";
    b.section = s.section;
    b.grade = s.grade;
    b.condition = s.condition;
    b.mill = s.mill;
    b.heat = s.heat;
    b.papers = s.papers;
    b.owner = s.owner;
    b.mark_end = std::array{"first", "last", "none", "both", "unknown"}[static_cast<std::size_t>(i % 5)];
    b.otherwise = i % 3 == 2 ? "" : "drop " + Digits(20300 + i, 5) + "-" + Digits(i % 9, 1) + " in place C2-1, then a full bar";
    b.state = "promised";
    AddCuts(b, i);
    b.kerf_each = 2_mm;
    b.trim = b.kind == "bar" ? 5_mm : 0_mm;
    b.grip = 60_mm;
    Length used = b.trim;
    int strokes = b.trim.nm > 0 ? 1 : 0;
    for (const SheetCut& cut : b.cuts) {
      used += cut.set * cut.count;
      strokes += cut.count;
    }
    b.kerf_all = b.kerf_each * strokes;
    used += b.kerf_all;
    b.left = i % 3 == 0 ? 206_mm + Length{i * 31'000'000LL} : i % 3 == 1 ? 66_mm : 1480_mm;
    if (b.kind == "bar" && used + b.left < 6000_mm) b.left = 6000_mm - used;
    b.length = used + b.left;
    b.fate = b.left < 200_mm ? LeftFate::Scrap : LeftFate::Drop;
    b.doubt = i % 4 == 1 ? 10_mm : i % 2 == 0 ? 2_mm : 0_mm;
    b.mass = MassOfLength(s, b.length);
    b.left_mass = MassOfLength(s, b.left);
    sheet.blocks.push_back(b);
  }
  sheet.shorts.push_back({"W-3307", "4", "round 120", "34CrNiMo6", 3, 512_mm,
                          "no bar of round 120 in 34CrNiMo6 with a 3.1 certificate is free; the shortest bar to buy is 1.7 m"});
  return sheet;
}

Sheet HardSheet() {
  Sheet sheet = InventedSheet(4);
  SheetBlock& named = sheet.blocks[1];
  named.place = "YARD-NORTH-BAY-17-LEVEL-4";
  named.heat = "VKM2208A/0047-REMELT-19";
  named.grade = "X2CrNiMoCuN25-6-3 modified to customer drawing 4711-88";
  named.owner = "A customer with an extraordinarily long registered name, department of spare parts";
  named.mill = "A mill whose name fills half a line by itself";
  named.otherwise = std::string(300, 'w');
  named.cuts[0].customer = std::string(120, 'm');
  sheet.proof += " and so on " + std::string(400, 'x');
  SheetBlock& many = sheet.blocks[0];
  many.cuts.clear();
  many.left = 100_mm;
  many.trim = 0_mm;
  Length used = many.left;
  for (int i = 0; i < 40; ++i) {
    SheetCut cut;
    cut.order = "W-" + Digits(4000 + i, 4);
    cut.line = "1";
    cut.customer = "Drewe Conveyors";
    cut.count = 2;
    cut.set = cut.nominal = 31_mm + Length{i * kNmPerMm};
    cut.tolerance_plus = 1_mm;
    used += (cut.set + many.kerf_each) * cut.count;
    many.cuts.push_back(cut);
  }
  many.kerf_all = many.kerf_each * 80;
  many.length = used;
  many.fate = LeftFate::Scrap;
  return sheet;
}

Sheet BundledSheet() {
  Sheet sheet = InventedSheet(6);
  sheet.bundled = true;
  sheet.grip = 120_mm;
  const std::array sections{"angle 100x100x10", "box 100x60x5 hot", "channel UPE 100", "beam IPE 100", "round 30", "round 30"};
  for (std::size_t i = 0; i < sections.size(); ++i) {
    SheetBlock& b = sheet.blocks[i];
    b.section = sections[i];
    b.grip = 120_mm;
    b.area = AreaOf(ReadSection(b.section));
    b.bundle = i < 4 ? 1 : 2;
    b.bundle_no = i < 4 ? 0 : 1;
    b.rate = CuttingRate{5500};
  }
  SheetBlock twin = sheet.blocks[4];
  twin.block = 6;
  twin.tag = sheet.blocks[5].tag;
  sheet.blocks[5] = twin;
  return sheet;
}

std::vector<StockRow> InventedStock(int pieces) {
  std::vector<StockRow> rows;
  for (const SheetBlock& b : InventedSheet(pieces).blocks) {
    StockRow row;
    row.tag = b.tag;
    row.kind = b.kind;
    row.grade = b.grade;
    row.section = b.section;
    row.condition = b.condition;
    row.mill = b.mill;
    row.heat = b.heat;
    row.papers = b.papers;
    row.owner = b.owner;
    row.place = b.place;
    row.state = "free";
    row.length = b.length;
    row.doubt = b.doubt;
    row.mass = b.mass;
    rows.push_back(row);
  }
  return rows;
}

}  // namespace heatkeep
