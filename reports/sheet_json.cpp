#include "reports/sheet_json.h"

#include "reports/sheet_words.h"

namespace heatkeep {
namespace {

using nlohmann::ordered_json;

const char* FateWord(LeftFate fate) { return fate == LeftFate::Drop ? "drop" : fate == LeftFate::Scrap ? "scrap" : "none"; }

ordered_json BlockJson(const SheetBlock& b) {
  ordered_json block = {{"block", b.block},
                        {"place", b.place},
                        {"tag", b.tag},
                        {"kind", b.kind},
                        {"section", b.section},
                        {"grade", b.grade},
                        {"condition", b.condition},
                        {"mill", b.mill},
                        {"heat", b.heat},
                        {"papers", b.papers},
                        {"owner", b.owner},
                        {"state", b.state},
                        {"length_nm", b.length.nm},
                        {"mass_g", b.mass.g},
                        {"trim_nm", b.trim.nm},
                        {"kerf_nm", b.kerf_all.nm},
                        {"left_nm", b.left.nm},
                        {"left", FateWord(b.fate)},
                        {"bundle", b.bundle},
                        {"bundle_no", b.bundle_no},
                        {"strokes", StrokeCount(b)},
                        {"stroke_area_um2", StrokeArea(b).um2}};
  const auto time = StrokeTime(b);
  block["stroke_milliseconds"] = time ? ordered_json(time->count()) : ordered_json(nullptr);
  if (!b.stop.empty()) block["stop"] = b.stop;
  if (!b.risk.empty()) block["risk"] = b.risk;
  if (const std::vector<std::string> ends = EndWords(b); !ends.empty()) block["ends"] = ends;
  block["cuts"] = ordered_json::array();
  for (const SheetCut& c : b.cuts)
    block["cuts"].push_back({{"order", c.order}, {"line", c.line}, {"count", c.count}, {"set_nm", c.set.nm}, {"nominal_nm", c.nominal.nm}});
  return block;
}

}  // namespace

ordered_json SheetJson(const Sheet& s) {
  ordered_json sheet = {{"plan", s.number}, {"saw", s.saw},         {"due", s.due},         {"made_at", s.made_at}, {"made_by", s.made_by},
                        {"proof", s.proof}, {"bundled", s.bundled}, {"kerf_nm", s.kerf.nm}, {"trim_nm", s.trim.nm}, {"grip_nm", s.grip.nm}};
  sheet["blocks"] = ordered_json::array();
  for (const SheetBlock& b : s.blocks) sheet["blocks"].push_back(BlockJson(b));
  sheet["short"] = ordered_json::array();
  for (const SheetShort& x : s.shorts)
    sheet["short"].push_back({{"order", x.order}, {"line", x.line}, {"missing", x.missing}, {"why", x.why}});
  return sheet;
}

}  // namespace heatkeep
