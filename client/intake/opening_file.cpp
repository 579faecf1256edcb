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

FileRows<OpeningFileRow> ReadOpeningFile(std::string_view bytes, const std::string& name, ReadingOptions how,
                                         const std::vector<std::string>& known_heats) {
  LookAlikes look_alikes(known_heats);
  return ReadCheckedRows<OpeningFileRow>(bytes, name,
                                         {{"old_tag", true},
                                          {"kind", true},
                                          {"mill"},
                                          {"heat"},
                                          {"read_from"},
                                          {"grade", true},
                                          {"section", true, true, kLengthUnit},
                                          {"condition"},
                                          {"length", true, true, kLengthUnit},
                                          {"count"},
                                          {"place"},
                                          {"papers"},
                                          {"owner"},
                                          {"ends"},
                                          {"doubt", false, true, kLengthUnit},
                                          {"price", false, true, "money a kg"}},
                                         how, [&](CheckedRows& file) { return ReadRow(file, look_alikes); });
}

}  // namespace heatkeep::intake
