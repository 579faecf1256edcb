#include "client/command/saw_command.h"

#include <algorithm>
#include <iomanip>
#include <map>
#include <ostream>

#include "client/command/deed_command.h"
#include "client/command/option_text.h"
#include "client/gateway/saw_readings.h"
#include "schema/terms/bad_text.h"
#include "schema/terms/length_text.h"
#include "schema/terms/mass_text.h"
#include "schema/terms/number_text.h"
#include "schema/terms/wide.h"

namespace heatkeep::command {
namespace {

using Json = nlohmann::json;
using std::chrono::milliseconds;

CuttingRate ReadRate(const std::string& text) {
  const std::int64_t mm2 = ReadScaled(text, 2);  // cm2 with two decimals is mm2
  if (mm2 <= 0) throw BadText("a rate of " + Quoted(text) + " cuts nothing", "cm2 a minute above 0");
  return {mm2};
}

std::string Minutes(milliseconds time) { return WriteScaled((time.count() + 3000) / 6000, 1); }

// A band that has begun to run out of square costs a bar when it goes on: two of the last twenty cuts (common practice, no source).
bool Worn(const SawRow& saw) { return saw.lately >= 2; }

// Sums over cuts of one plan, or of a saw's day. A cut is a stroke of the saw: one through bars cut together is one, through the area of
// all of them; `pieces` counts what comes off.
struct Sums {
  std::int64_t cuts = 0, strokes = 0, pieces = 0;
  Wide area_um2 = 0;
  milliseconds time{};
  Money cost;
  Mass chips;
  bool without_rate = false, priced = true;

  void Add(const SawingRow& row, std::optional<CuttingRate> typed) {
    pieces += row.count;
    if (row.leads) {
      cuts += row.count;
      strokes += row.count * FeedStrokes(row.set, row.stop_stroke);
    }
    area_um2 += Wide{row.area.um2} * row.count;
    chips += ChipMass(row.area, row.count, row.kerf, row.density);
    const auto rate = typed ? typed : row.rate;
    if (!rate) {
      without_rate = true;
      return;
    }
    const milliseconds t = CutTime(row.area, row.count, *rate);
    time += t;
    if (row.per_hour) cost = cost + TimeCost(t, *row.per_hour);
    else priced = false;
  }
  Json AsJson() const {
    Json j{{"cuts", cuts},
           {"pieces", pieces},
           {"feed_strokes", strokes},
           {"area_mm2", static_cast<std::int64_t>(area_um2 / 1'000'000)},
           {"milliseconds", time.count()},
           {"chips_g", chips.g},
           {"all_have_a_rate", !without_rate}};
    j["cost_cents"] = priced && !without_rate ? Json(cost.cents) : Json(nullptr);
    return j;
  }
  void Say(std::ostream& out) const {
    out << cuts << " cuts, ";
    if (pieces != cuts) out << pieces << " pieces and trims off them, ";
    out << WriteScaled(static_cast<std::int64_t>(area_um2 / 1'000'000), 2) << " cm2, " << Minutes(time) << " min in the metal"
        << (without_rate ? " (some have no rate)" : "") << ", chips " << WriteKg(chips, 2) << " kg";
    if (priced && !without_rate) out << ", cost " << WriteScaled(cost.cents, 2);
    if (strokes != cuts) out << ", " << strokes << " strokes of the stop";
    out << '\n';
  }
};

}  // namespace

int RunSawList(const BookCall& call, bool json) {
  return WithBook(call, [&](Connection& connection) {
    Json rows = Json::array();
    for (const SawRow& s : ReadSaws(connection)) {
      if (json) {
        rows.push_back({{"saw", s.saw},
                        {"band", s.band},
                        {"kerf_nm", s.kerf.nm},
                        {"grip_nm", s.grip.nm},
                        {"grip_bundled_nm", s.grip_bundled.nm},
                        {"trim_nm", s.trim.nm},
                        {"max_section_nm", s.widest.nm},
                        {"stop_stroke_nm", s.stop_stroke.nm},
                        {"fitted_from", s.fitted_from},
                        {"cuts_since", s.cuts},
                        {"area_since_mm2", s.area_mm2},
                        {"out_of_square", s.out_of_square},
                        {"out_of_square_of_last_20", s.lately},
                        {"worn", Worn(s)}});
        rows.back()["bundle_bars"] = s.bundle_bars == 0 ? Json(nullptr) : Json(s.bundle_bars);
        continue;
      }
      call.out << "saw " << s.saw << ": band " << s.band << ", kerf " << WriteMm(s.kerf) << " mm, trim " << WriteMm(s.trim) << " mm, grip "
               << WriteMm(s.grip) << " mm (" << WriteMm(s.grip_bundled) << " mm in a bundle"
               << (s.bundle_bars > 0 ? " of " + std::to_string(s.bundle_bars) + " bars at most" : "") << "), to " << WriteMm(s.widest)
               << " mm; " << s.cuts << " cuts, " << WriteScaled(s.area_mm2 / 100, 0) << " cm2 since the band was fitted, "
               << s.out_of_square << " out of square\n";
      if (Worn(s)) call.out << "  " << s.lately << " of its last 20 cuts were out of square: change the band before it costs a bar\n";
    }
    if (json) call.out << rows.dump(2) << '\n';
    return 0;
  });
}

int RunSawRates(const BookCall& call, bool json) {
  return WithBook(call, [&](Connection& connection) {
    Json rows = Json::array();
    for (const RateRow& r : ReadRates(connection)) {
      if (json)
        rows.push_back({{"saw", r.saw},
                        {"family", r.family},
                        {"mm2_per_min", r.rate.mm2_per_min},
                        {"source", r.source},
                        {"low_cm2", r.low_cm2},
                        {"high_cm2", r.high_cm2}});
      else
        call.out << std::left << std::setw(26) << r.family << std::right << std::setw(7) << WriteScaled(r.rate.mm2_per_min, 2)
                 << " cm2/min  " << (r.saw.empty() ? "" : "saw " + r.saw + ": ") << r.source << '\n';
    }
    if (json) call.out << rows.dump(2) << '\n';
    return 0;
  });
}

int RunSawLoad(const BookCall& call, bool json) {
  return WithBook(call, [&](Connection& connection) {
    std::map<std::pair<std::string, std::string>, Sums> days;
    std::map<std::int64_t, std::string> due_of_plan;  // a trim is due with its plan's first line
    const std::vector<SawingRow> all = ReadSawing(connection, 0);
    for (const SawingRow& row : all)
      if (std::string& due = due_of_plan[row.plan]; !row.due.empty() && (due.empty() || row.due < due)) due = row.due;
    for (const SawingRow& row : all)
      if (row.open) days[{row.saw, row.due.empty() ? due_of_plan[row.plan] : row.due}].Add(row, std::nullopt);
    Json rows = Json::array();
    for (const auto& [day, sums] : days) {
      if (json) {
        rows.push_back(sums.AsJson());
        rows.back().update({{"saw", day.first}, {"due", day.second}});
      } else {
        call.out << "saw " << day.first << ", " << (day.second.empty() ? "no date" : day.second) << ": ";
        sums.Say(call.out);
      }
    }
    if (json) call.out << rows.dump(2) << '\n';
    else if (days.empty()) call.out << "no live plan has anything to cut\n";
    return 0;
  });
}

int RunSawTime(const BookCall& call, std::int64_t plan, const std::string& rate, bool json) {
  return WithBook(call, [&](Connection& connection) {
    const std::optional<CuttingRate> typed = rate.empty() ? std::nullopt : std::optional(ReadOption("--rate", rate, ReadRate));
    const std::vector<SawingRow> all = ReadSawing(connection, plan);
    if (all.empty()) throw std::invalid_argument("plan " + std::to_string(plan) + " cuts nothing; `heatkeep plan list` names the plans");
    Sums sums;
    Json rows = Json::array();
    for (const SawingRow& row : all) {
      sums.Add(row, typed);
      const auto used = typed ? typed : row.rate;
      const Contact contact = ContactOf(ReadSection(row.section));
      Json j{{"what", row.what},
             {"order", row.order},
             {"line", row.line},
             {"count", row.count},
             {"section", row.section},
             {"set_nm", row.set.nm},
             {"bars", row.bars},
             {"bundle_no", row.bundle_no},
             {"leads", row.leads},
             {"feed_strokes", FeedStrokes(row.set, row.stop_stroke)},
             {"rate_source", typed ? "typed for this job" : row.rate_source}};
      if (used)
        j.update({{"mm2_per_min", used->mm2_per_min},
                  {"milliseconds_a_cut", CutTime(row.area, row.bars, *used).count()},
                  {"feed_widest_um_per_min", DownFeed(*used, contact.widest * row.bars).um_per_min},
                  {"feed_mean_um_per_min", DownFeed(*used, contact.mean * row.bars).um_per_min}});
      rows.push_back(j);
      if (json || !row.leads) continue;  // of bars cut together one says it for all
      call.out << row.count << " x " << (row.what == "trim" ? "trim " : row.order + "/" + row.line + " ") << WriteMm(row.set) << " mm, "
               << row.section;
      if (row.bars > 1) call.out << ", bundle " << row.bundle_no << " of " << row.bars << " bars";
      if (used)
        call.out << ": " << Minutes(CutTime(row.area, row.bars, *used)) << " min a cut, down-feed "
                 << WriteScaled(DownFeed(*used, contact.widest * row.bars).um_per_min / 100, 1) << " mm/min at the widest"
                 << (row.bars > 1 ? ", the bars side by side (" : " (") << (typed ? "typed for this job" : row.rate_source) << ")";
      else call.out << ": no rate for " << (row.family.empty() ? "an unknown grade" : row.family);
      call.out << '\n';
    }
    if (json) {
      Json whole = sums.AsJson();
      whole["rows"] = rows;
      call.out << whole.dump(2) << '\n';
    } else {
      sums.Say(call.out);
      call.out << "The saw's own manual goes before these figures.\n";
    }
    return 0;
  });
}

int RunSawEstimate(const BookCall& call, const SawEstimate& e, bool json) {
  try {
    const Section section = ReadSection(e.section);
    const CuttingRate rate = ReadOption("--rate", e.rate, ReadRate);
    const int bars = static_cast<int>(e.bars);
    const Area area{AreaOf(section).um2 * bars};
    Contact contact = ContactOf(section);
    contact.widest = contact.widest * bars;
    contact.mean = contact.mean * bars;
    const milliseconds time = CutTime(area, e.cuts, rate);
    const auto length = [](const std::string& words) { return ReadLength(words); };
    const Length kerf = e.kerf.empty() ? Length{} : ReadOption("--kerf", e.kerf, length);
    const std::int64_t strokes = e.length.empty() || e.stop.empty()
        ? 1
        : FeedStrokes(ReadOption("--length", e.length, length), ReadOption("--stop", e.stop, length));
    Json j{{"area_um2", area.um2},
           {"cuts", e.cuts},
           {"bars", bars},
           {"milliseconds", time.count()},
           {"feed_widest_um_per_min", DownFeed(rate, contact.widest).um_per_min},
           {"feed_mean_um_per_min", DownFeed(rate, contact.mean).um_per_min},
           {"height_nm", contact.height.nm},
           {"widest_nm", contact.widest.nm},
           {"chips_g", ChipMass(area, e.cuts, kerf, kSteel).g},
           {"feed_strokes", strokes},
           {"kerfs", 1}};
    if (!e.per_hour.empty())
      j["cost_cents"] =
          TimeCost(time, {ReadOption("--per-hour", e.per_hour, [](const std::string& words) { return ReadScaled(words, 2); })}).cents;
    if (json) {
      call.out << j.dump(2) << '\n';
      return 0;
    }
    call.out << e.cuts << (e.cuts == 1 ? " cut of " : " cuts of ");
    if (bars > 1) call.out << bars << " bars side by side, ";
    call.out << SectionText(section) << ": " << Minutes(time) << " min, down-feed "
             << WriteScaled(DownFeed(rate, contact.widest).um_per_min / 100, 1) << " mm/min at the widest (" << WriteMm(contact.widest)
             << " mm), " << WriteScaled(DownFeed(rate, contact.mean).um_per_min / 100, 1) << " on the whole way";
    if (kerf.nm > 0) call.out << ", chips " << WriteKg(ChipMass(area, e.cuts, kerf, kSteel), 3) << " kg of steel";
    if (strokes > 1) call.out << ", " << strokes << " strokes of the stop and one kerf a piece";
    if (bars > 1) call.out << "\nBundles are cut at a lower rate than one bar, by 20 to 50 % (common practice, no source).";
    call.out << "\nThe saw's own manual goes before these figures.\n";
    return 0;
  } catch (const std::invalid_argument& error) {
    call.err << "heatkeep: " << error.what() << '\n';
    return 2;
  }
}

void SaySawDeed(std::ostream& out, const std::string& name, const Json& answer) {
  if (answer.contains("refused")) return;
  out << name << ':';
  for (const auto& [key, value] : answer.items()) {
    if (value.is_null() || key == "label" || (value.is_array() && value.empty())) continue;
    if (key == "stop") {
      out << ' ' << value.get<std::string>() << ';';
      continue;
    }
    std::string word = key == "length_nm" && answer.contains("cut_id") ? "left by arithmetic" : key;
    for (const std::string unit : {"_nm", "_g"})
      if (word.ends_with(unit)) word.resize(word.size() - unit.size());
    std::replace(word.begin(), word.end(), '_', ' ');
    out << ' ' << word << ' ' << InWords(key, value) << ';';
  }
  out << '\n';
}

}  // namespace heatkeep::command
