#include "client/gateway/cut_body.h"

#include <algorithm>
#include <utility>

#include "schema/terms/bad_text.h"
#include "schema/terms/wide.h"

namespace heatkeep {
namespace {

using Json = nlohmann::json;

Json Good(const SheetCut& cut, int count, Length kerf) {
  return {{"class", "good"}, {"order", cut.order}, {"line", cut.line}, {"count", count}, {"length_nm", cut.set.nm}, {"kerf_nm", kerf.nm}};
}

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

Length RestOf(const Json& strokes, Length start) {
  for (const Json& s : strokes)
    start -= Length{s["length_nm"].get<std::int64_t>() + s["kerf_nm"].get<std::int64_t>()} * s["count"].get<int>();
  return start;
}

// The last piece is not cut: what is left of `start` is the piece, whole.
void LeaveLastUncut(Json& strokes, Length start) {
  if (strokes.empty() || strokes.back()["class"] != "good")
    throw BadText("no piece is cut, so none can be left uncut", "a good piece as the last one");
  Json last = strokes.back();
  const int count = last["count"].get<int>();
  if (count > 1) strokes.back()["count"] = count - 1;
  else strokes.erase(strokes.size() - 1);
  last["count"] = 1;
  last["length_nm"] = RestOf(strokes, start).nm;
  last["kerf_nm"] = 0;
  strokes.push_back(std::move(last));
}

}  // namespace

SheetBlock RemainingOf(const SheetBlock& block) {
  if (!block.begun) return block;
  SheetBlock rest = block;
  rest.begun.reset();
  rest.length = *block.begun;
  rest.mass.g = static_cast<std::int64_t>(Wide{block.mass.g} * rest.length.nm / block.length.nm);
  if (block.trim.nm > 0) rest.kerf_all -= block.kerf_each;
  rest.trim = {};
  rest.cuts.clear();
  for (SheetCut cut : block.cuts) {
    rest.kerf_all -= block.kerf_each * cut.done;
    cut.count -= std::exchange(cut.done, 0);
    if (cut.count > 0) rest.cuts.push_back(cut);
  }
  if (rest.cuts.empty()) rest.kerf_all = {};
  return rest;
}

Json OpenCutBodyOf(const SheetBlock& whole, const DoneCounts& done, const std::string& saw) {
  const SheetBlock block = RemainingOf(whole);
  Json strokes = Json::array();
  for (const SheetCut& cut : block.cuts)
    if (const auto at = done.find(cut.order + "/" + cut.line); at != done.end() && at->second > 0)
      strokes.push_back(Good(cut, std::min(cut.count, at->second), block.kerf_each));
  if (!strokes.empty() && block.trim.nm > 0)
    strokes.insert(strokes.begin(), Json{{"class", "trim"}, {"count", 1}, {"length_nm", block.trim.nm}, {"kerf_nm", block.kerf_each.nm}});
  return {{"tag", block.tag}, {"saw", saw}, {"finish", false}, {"strokes", strokes}};
}

void AddDone(SheetBlock& block, const Json& strokes) {
  if (strokes.empty()) return;
  block.begun = RestOf(strokes, block.begun.value_or(block.length));
  for (const Json& s : strokes) {
    if (s["class"] != "good") continue;
    int count = s["count"].get<int>();
    for (SheetCut& cut : block.cuts)
      if (cut.order == s["order"] && cut.line == s["line"]) {
        const int more = std::min(count, cut.count - cut.done);
        cut.done += more;
        count -= more;
      }
  }
}

CutBody CutBodyOf(const SheetBlock& whole, const CutTold& told, const std::string& saw) {
  const SheetBlock block = RemainingOf(whole);
  CutBody cut{{{"tag", block.tag}, {"saw", saw}, {"finish", true}, {"strokes", StrokesOf(block, told.done)}}, {}};
  const Length start = told.measured.value_or(block.length);
  if (told.measured) {
    cut.body["measured_nm"] = start.nm;
    if (!told.measured_with.empty()) cut.body["measured_with"] = told.measured_with;
  }
  if (told.last_uncut) LeaveLastUncut(cut.body["strokes"], start);
  if (!told.reason.empty()) cut.body["reason"] = told.reason;
  cut.rest = RestOf(cut.body["strokes"], start);
  const bool scrap = told.scrap || (block.fate == LeftFate::Scrap && cut.rest <= block.left);
  Json& left = cut.body["left"] = {{"fate", "none"}};
  if (cut.rest.nm > 0 || told.rest) {
    left["fate"] = scrap ? "scrap" : "drop";
    if (!scrap) left["place"] = told.place.empty() ? block.place : told.place;
    if (told.rest) {
      left["length_nm"] = (cut.rest = *told.rest).nm;
      if (!scrap && !told.measured_with.empty()) left["measured_with"] = told.measured_with;
    }
  }
  return cut;
}

}  // namespace heatkeep
