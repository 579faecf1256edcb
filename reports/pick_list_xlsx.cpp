#include "reports/pick_list.h"
#include "reports/sheet_words.h"
#include "reports/workbook.h"

namespace heatkeep {
namespace {

std::string FateWord(LeftFate fate) { return fate == LeftFate::Drop ? "keep" : fate == LeftFate::Scrap ? "scrap" : ""; }

Table Pieces(const Sheet& sheet) {
  Table table{"Pieces",
              {{"no.", 6},           {"place", 10},          {"tag", 12},           {"kind", 8},
               {"section", 16},      {"grade", 14},          {"condition", 10},     {"mill", 14},
               {"heat", 14},         {"papers", 18},         {"owner", 18},         {"length mm", 12, 3},
               {"doubt mm", 10, 1},  {"mass kg", 10, 1},     {"lift", 20},          {"mark at end", 12},
               {"trim mm", 9, 1},    {"kerf each mm", 9, 2}, {"kerf all mm", 9, 2}, {"grip mm", 9, 1},
               {"cut pieces", 9},    {"left mm", 12, 3},     {"left kg", 9, 1},     {"becomes", 10},
               {"if not there", 34}, {"state", 10},          {"bundle of", 9},      {"strokes", 9}},
              {}};
  for (const SheetBlock& b : sheet.blocks)
    table.rows.push_back({std::int64_t{b.block},
                          b.place,
                          b.tag,
                          b.kind,
                          b.section,
                          b.grade,
                          b.condition,
                          b.mill,
                          b.heat,
                          b.risk.empty() ? b.papers : b.risk,
                          b.owner,
                          MmCell(b.length),
                          MmCell(b.doubt),
                          KgCell(b.mass),
                          HowToLift(b.mass, b.length, sheet.lift_limit),
                          b.mark_end,
                          MmCell(b.trim),
                          MmCell(b.kerf_each),
                          MmCell(b.kerf_all),
                          MmCell(b.grip),
                          std::int64_t{PieceCount(b)},
                          MmCell(b.left),
                          KgCell(b.left_mass),
                          FateWord(b.fate),
                          b.otherwise,
                          b.state,
                          std::int64_t{b.bundle},
                          std::int64_t{StrokeCount(b)}});
  return table;
}

Table Cuts(const Sheet& sheet) {
  Table table{"Cuts",
              {{"no.", 6},
               {"tag", 12},
               {"heat", 14},
               {"order", 14},
               {"line", 7},
               {"customer", 22},
               {"count", 8},
               {"stop mm", 12, 3},
               {"nominal mm", 12, 3},
               {"tolerance minus mm", 12, 2},
               {"tolerance plus mm", 12, 2}},
              {}};
  for (const SheetBlock& b : sheet.blocks)
    for (const SheetCut& cut : b.cuts)
      table.rows.push_back({std::int64_t{b.block}, b.tag, b.heat, cut.order, cut.line, cut.customer, std::int64_t{cut.count},
                            MmCell(cut.set), MmCell(cut.nominal), MmCell(cut.tolerance_minus), MmCell(cut.tolerance_plus)});
  return table;
}

Table Shorts(const Sheet& sheet) {
  Table table{"Short", {{"order", 14}, {"line", 7}, {"section", 16}, {"grade", 14}, {"missing", 9}, {"length mm", 12, 3}, {"why", 60}}, {}};
  for (const SheetShort& s : sheet.shorts)
    table.rows.push_back({s.order, s.line, s.section, s.grade, std::int64_t{s.missing}, MmCell(s.length), s.why});
  return table;
}

Table About(const Sheet& sheet) {
  return {"About",
          {{"what", 26}, {"value", 90}},
          {{std::string("sheet"), sheet.number},
           {std::string("saw"), sheet.saw},
           {std::string("due"), sheet.due},
           {std::string("made at"), sheet.made_at},
           {std::string("made by"), sheet.made_by},
           {std::string("plan"), sheet.proof},
           {std::string("heat"), sheet.one_heat},
           {std::string("kerf mm"), MmCell(sheet.kerf)},
           {std::string("trim mm"), MmCell(sheet.trim)},
           {std::string("grip mm"), MmCell(sheet.grip)},
           {std::string("lift limit kg"), KgCell(sheet.lift_limit)},
           {std::string("cut in bundles"), std::string(sheet.bundled ? "yes" : "no")},
           {std::string("caution"), CautionWords()}}};
}

}  // namespace

void WritePickListXlsx(const std::string& path, const Sheet& sheet, const PrintOptions& options) {
  WriteWorkbook(path, "Pick list and saw sheet " + sheet.number, {Pieces(sheet), Cuts(sheet), Shorts(sheet), About(sheet)}, options);
}

}  // namespace heatkeep
