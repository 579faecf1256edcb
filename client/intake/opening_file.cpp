#include "client/intake/opening_file.h"

#include <map>

#include "schema/terms/condition_text.h"
#include "schema/terms/heat_text.h"

namespace heatkeep::intake {
namespace {

// Heats seen so far by their folded form.
class LookAlikes {
 public:
  explicit LookAlikes(const std::vector<std::string>& known) {
    for (const std::string& heat : known) seen_.emplace(FoldedHeat(heat), heat);
  }

  void Check(CheckedRows& file, const std::string& heat) {
    const auto [at, end] = seen_.equal_range(FoldedHeat(heat));
    for (auto it = at; it != end; ++it) {
      if (it->second == heat) return;
    }
    if (at != end) {
      file.Warn("heat " + Quoted(heat) + " looks like " + Quoted(at->second) + "; they are kept apart until somebody has looked");
    }
    seen_.emplace(FoldedHeat(heat), heat);
  }

 private:
  std::multimap<std::string, std::string> seen_;
};

OpeningFileRow ReadRow(CheckedRows& file, LookAlikes& look_alikes) {
  OpeningFileRow row;
  row.line_in_file = file.Line();
  row.raw = file.Typed();
  row.old_tag = file.Needed("old_tag", "the piece's name in the old list");
  if (!row.old_tag.empty()) file.Once("old_tag", row.old_tag);
  row.kind = KindCell(file);
  row.mill = file.Text("mill");
  row.heat = HeatCell(file);
  if (!file.Text("read_from").empty()) row.read_from = ReadFromCell(file);
  row.grade = file.Needed("grade", "a grade as the old list has it");
  row.section = SectionCell(file);
  row.condition = NormalCondition(file.Text("condition"));
  row.length = LengthCell(file);
  row.count = WholeCell(file, "count", 1, kMostPieces, 1);
  row.place = file.Text("place");
  row.papers = PapersCell(file);
  row.owner = file.Text("owner");
  row.ends = EndsCell(file, row.kind == PieceKind::Drop ? 1 : 0);
  row.doubt = DoubtCell(file, row.length);
  row.price_per_kg = PriceCell(file);
  if (!file.LineGood()) return row;
  if (row.heat.empty()) {
    file.Warn("no heat: not for certificated orders");
  } else {
    look_alikes.Check(file, row.heat);
  }
  return row;
}

}  // namespace

const std::vector<Column>& OpeningColumns() {
  static const std::vector<Column> columns{
      {"old_tag", true, "what the old list calls it, once in the file"},
      {"kind", true, "bar or drop"},
      {"mill", false, "who made it"},
      {"heat", false, "as it stands; empty: not known, and then it serves no order that asks for papers"},
      {"read_from", false, "metal, tag, slip or none; empty: the list does not say"},
      {"grade", true, "as marked or written: 42CrMo4, 1.4404, 4140"},
      {"section", true,
       "round 80, square 50, hex 27, flat 60x20, tube 60x5, angle 100x75x8, box 100x60x5, channel UPN 100, beam IPE 100; in inches: round 3 1/8 in",
       true, kLengthUnit},
      {"condition", false, "as delivered: +QT, +N, +A"},
      {"length", true, "of one piece", true, kLengthUnit},
      {"count", false, "how many alike; empty: 1"},
      {"place", false, "where it lies"},
      {"papers", false, "what it came with, to be typed from paper: 2.1, 2.2, 3.1, 3.2 or none (empty)"},
      {"owner", false, "whose metal it is; empty: the shop's own"},
      {"ends", false, "how many ends are square: 0, 1 or 2; empty: 0 of a bar, 1 of a drop"},
      {"doubt", false, "it may be this much shorter than written; empty: 0", true, kLengthUnit},
      {"price", false, "what was paid", true, "money a kg"}};
  return columns;
}

FileRows<OpeningFileRow> ReadOpeningFile(std::string_view bytes, const std::string& name, const ReadingOptions& how,
                                         const std::vector<std::string>& known_heats) {
  LookAlikes look_alikes(known_heats);
  return ReadCheckedRows<OpeningFileRow>(bytes, name, OpeningColumns(), how, [&](CheckedRows& file) { return ReadRow(file, look_alikes); });
}

}  // namespace heatkeep::intake
