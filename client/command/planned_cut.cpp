#include "client/command/planned_cut.h"

#include "schema/terms/bad_text.h"
#include "schema/terms/number_text.h"

namespace heatkeep::command {
namespace {

using Json = nlohmann::json;

Json Good(const SheetCut& cut, int count, Length kerf) {
  return {{"class", "good"}, {"order", cut.order}, {"line", cut.line}, {"count", count}, {"length_nm", cut.set.nm}, {"kerf_nm", kerf.nm}};
}

}  // namespace

Json StrokesOf(const SheetBlock& block, const DoneCounts& done) {
  Json strokes = Json::array();
  const Length trim_kerf = block.trim.nm > 0 ? block.kerf_each : Length{};
  if (block.trim.nm > 0) strokes.push_back({{"class", "trim"}, {"count", 1}, {"length_nm", block.trim.nm}, {"kerf_nm", trim_kerf.nm}});
  int planned = 0, cut_now = 0;
  for (const SheetCut& cut : block.cuts) {
    const auto at = done.find(cut.order + "/" + cut.line);
    const int count = at == done.end() ? cut.count : at->second;
    planned += cut.count;
    cut_now += count;
    if (count > 0) strokes.push_back(Good(cut, count, block.kerf_each));
  }
  const Length last_kerf = block.kerf_all - trim_kerf - block.kerf_each * (planned - 1);
  if (cut_now == planned && last_kerf != block.kerf_each && cut_now > 0) {
    Json last = strokes.back();
    last["count"] = 1;
    last["kerf_nm"] = last_kerf.nm;
    strokes.back()["count"] = strokes.back()["count"].get<int>() - 1;
    if (strokes.back()["count"] == 0) strokes.erase(strokes.size() - 1);
    strokes.push_back(std::move(last));
  }
  return strokes;
}

void LeaveLastUncut(Json& strokes, Length start) {
  if (strokes.empty() || strokes.back()["class"] != "good") throw BadText("no piece is cut, so none can be left uncut", "a good piece as the last one");
  Json last = strokes.back();
  const int count = last["count"].get<int>();
  if (count > 1) strokes.back()["count"] = count - 1;
  else strokes.erase(strokes.size() - 1);
  last["count"] = 1;
  last["length_nm"] = RestOf(strokes, start).nm;
  last["kerf_nm"] = 0;
  strokes.push_back(std::move(last));
}

Length RestOf(const Json& strokes, Length start) {
  for (const Json& s : strokes)
    start -= Length{s["length_nm"].get<std::int64_t>() + s["kerf_nm"].get<std::int64_t>()} * s["count"].get<int>();
  return start;
}

std::pair<std::string, int> ReadDone(const std::string& text) {
  const auto equals = text.rfind('=');
  if (equals == std::string::npos || text.find('/') > equals)
    throw BadText(Quoted(text) + " does not name a line and a count", "ORDER/LINE=COUNT");
  return {text.substr(0, equals), static_cast<int>(ReadWhole(text.substr(equals + 1), 0, 1'000'000))};
}

}  // namespace heatkeep::command
