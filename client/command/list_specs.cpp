#include "client/command/list_specs.h"

#include <map>
#include <tuple>

#include "schema/terms/section.h"

#include "client/planning/expected_worth.h"

namespace heatkeep::command {
namespace {

using Json = nlohmann::json;
using K = ListKind;

const ListColumn kTag{"tag", "tag", K::Mono, 1.4}, kGrade{"grade", "grade", K::Text, 1.75}, kSection{"section", "section", K::Text, 1.35},
    kHeat{"heat", "heat", K::Mono, 1.3}, kPlace{"place", "place", K::Text, 0.9}, kLength{"length_nm", "length", K::Length, 1, true},
    kMass{"mass_g", "mass", K::Mass, 1.1, true}, kPapers{"papers", "papers", K::Text, 0.9}, kDays{"days", "days still", K::Count, 0.7};
const ListColumn kScrapWorth{"scrap_cents", "as scrap", K::Money, 1.1, true}, kNewWorth{"replacement_cents", "as new", K::Money, 1.2, true};

const ListColumn kForm{"kind", "form", K::Text, 0.7}, kOwner{"owner", "owner", K::Text, 1.1}, kStopped{"blocked", "stopped", K::Text, 1.3},
    kPieces{"pieces", "pieces", K::Count, 0.85, true};

ListColumn Summed(const char* key, const char* head, K kind, double share = 1) { return {key, head, kind, share, true}; }

std::string TextIn(const Json& row, const char* key) { return row[key].is_null() ? std::string() : row[key].get<std::string>(); }

// Adds what is known of these figures in `row` to those of `sum`.
void AddUp(Json& sum, const Json& row, std::initializer_list<const char*> keys) {
  for (const char* key : keys)
    if (const auto at = row.find(key); at != row.end() && !at->is_null())
      sum[key] = (sum.contains(key) ? sum[key].get<std::int64_t>() : 0) + at->get<std::int64_t>();
}

// By section (as it is, not as it is written), grade and form, and whose it is; or each piece.
std::vector<Json> Stock(Connection&, std::vector<Json> rows, const ListChoice& choice, ListReport& list) {
  std::map<std::tuple<Section, std::string, std::string, std::string>, std::vector<Json>> groups;
  for (Json& row : rows)
    groups[{ReadSection(TextIn(row, "section")), TextIn(row, "grade"), TextIn(row, "kind"), TextIn(row, "owner")}].push_back(
        std::move(row));
  rows.clear();
  for (auto& [key, pieces] : groups) {
    if (choice.pieces) {
      std::move(pieces.begin(), pieces.end(), std::back_inserter(rows));
      continue;
    }
    const Json& first = pieces.front();
    Json group{{"section", first["section"]},
               {"grade", first["grade"]},
               {"kind", first["kind"]},
               {"owner", first["owner"]},
               {"pieces", pieces.size()}};
    for (const Json& piece : pieces) AddUp(group, piece, {"length_nm", "mass_g", "scrap_cents", "replacement_cents"});
    rows.push_back(std::move(group));
  }
  if (!choice.pieces) return rows;
  list.what = "Stock, piece by piece";
  list.count_of = "pieces";
  list.columns = {kTag,    kForm, kSection,  kGrade,  kHeat, kPapers, kPlace, kOwner, {"length_nm", "to scale", K::Bar, 1.5},
                  kLength, kMass, kNewWorth, kStopped};
  list.columns[3].share = 2.25;  // beside so many others
  return rows;
}

// What lies there for how long: five ages, each with its sums.
ListChart AgesOf(const std::vector<Json>& drops) {
  const std::vector<std::pair<std::int64_t, const char*>> ages{
      {30, "under 30 days"}, {90, "30 to 89 days"}, {180, "90 to 179 days"}, {365, "180 to 364 days"}, {0, "365 days and more"}};
  std::vector<Json> sums;
  for (const auto& age : ages) sums.push_back({{"age", age.second}, {"drops", 0}, {"length_nm", 0}, {"mass_g", 0}});
  for (const Json& drop : drops) {
    std::size_t at = 0;
    while (ages[at].first > 0 && drop["days"].get<std::int64_t>() >= ages[at].first) ++at;
    sums[at]["drops"] = sums[at]["drops"].get<std::int64_t>() + 1;
    AddUp(sums[at], drop, {"length_nm", "mass_g", "scrap_cents", "expected_cents", "replacement_cents"});
  }
  ListChart chart{"Mass of drops by days still",
                  {{"age", "days still", K::Text, 1.6},
                   {"drops", "drops", K::Count},
                   {"length_nm", "length", K::Metres},
                   kMass,
                   kScrapWorth,
                   {"expected_cents", "by use", K::Money},
                   kNewWorth},
                  {},
                  {3}};
  for (const Json& sum : sums) chart.rows.push_back(CellsOf(sum, chart.columns));
  return chart;
}

std::vector<Json> Drops(Connection& connection, std::vector<Json> rows, const ListChoice&, ListReport& list) {
  std::erase_if(rows, [](const Json& row) { return row["kind"] != "drop"; });
  const std::size_t worked_out = planning::AddExpectedWorth(connection, rows);
  list.note += worked_out == 0 ? " Expected use is not worked out: it needs 90 days and five lines of a section and grade in the book."
                               : " Expected use is worked out for " + std::to_string(worked_out) + " of " + std::to_string(rows.size()) +
          " drops, from the shop's own past.";
  if (!rows.empty()) list.chart = AgesOf(rows);
  return rows;
}

std::vector<Json> Unused(Connection&, std::vector<Json> rows, const ListChoice& choice, ListReport& list) {
  std::erase_if(rows, [&](const Json& row) { return row["days"].get<std::int64_t>() < choice.days; });
  list.subject = (list.subject == "all" ? "" : list.subject + ", ") + "for " + std::to_string(choice.days) + " days or more";
  return rows;
}

// For each piece seen, the heat as read and the measured length are written by hand; then come empty lines for metal without a tag.
std::vector<Json> CountSheet(Connection&, std::vector<Json> rows, const ListChoice&, ListReport& list) {
  list.least_row = 8;
  list.blank_rows = 6;
  return rows;
}

// Months, or months of each section: masses added up, and good over used in tenths of a per cent.
std::vector<Json> Yield(Connection&, const std::vector<Json>& rows, const ListChoice& choice, ListReport& list) {
  std::map<std::tuple<Section, std::string, std::string>, Json> months;
  for (const Json& row : rows) {
    std::tuple<Section, std::string, std::string> key{{}, "", TextIn(row, "month")};
    if (choice.by_section) key = {ReadSection(TextIn(row, "section")), TextIn(row, "grade"), TextIn(row, "month")};
    Json& month = months.try_emplace(key, Json::object()).first->second;
    for (const auto& [name, value] : row.items()) {
      if (name.ends_with("_g")) month[name] = month.value(name, std::int64_t{0}) + value.get<std::int64_t>();
      else if (!name.ends_with("_nm")) month[name] = value;
    }
  }
  std::vector<Json> put_together;
  for (auto& [key, month] : months) {
    const auto used = month["used_g"].get<std::int64_t>();
    if (used > 0) month["yield_tenths"] = (month["good_g"].get<std::int64_t>() * 1000 + used / 2) / used;
    put_together.push_back(std::move(month));
  }
  if (choice.by_section) {
    list.count_of = "lines";
    list.columns.insert(list.columns.begin() + 1, {kSection, kGrade});
  } else {
    list.chart = ListChart{"Yield by month", {list.columns.front(), list.columns.back()}, {}, {1}, false};
    for (const Json& month : put_together) list.chart->rows.push_back(CellsOf(month, list.chart->columns));
  }
  return put_together;
}

// The metal of open lines less what lies free and what is ordered; below zero there is enough of it, if not in the right lengths.
std::vector<Json> ToBuy(Connection&, std::vector<Json> rows, const ListChoice&, ListReport&) {
  for (Json& row : rows)
    row["missing_nm"] = std::max<std::int64_t>(
        0, row["cut_nm"].get<std::int64_t>() - row["free_nm"].get<std::int64_t>() - row["ordered_nm"].get<std::int64_t>());
  return rows;
}

// A bar a group of bins for what was booked into it and what the dealer weighed of that.
std::vector<Json> Scrap(Connection&, std::vector<Json> rows, const ListChoice&, ListReport& list) {
  std::map<std::string, Json> groups;
  for (const Json& row : rows) {
    Json& group = groups.try_emplace(row["alloy_group"].get<std::string>(), Json{{"alloy_group", row["alloy_group"]}}).first->second;
    AddUp(group, row, {"book_g", "weighed_g", "cents"});
  }
  list.chart =
      ListChart{"Scrap by group of bin",
                {list.columns.front(), {"book_g", "booked", K::Mass}, {"weighed_g", "weighed", K::Mass}, {"cents", "paid", K::Money}},
                {},
                {1, 2}};
  for (const auto& [name, group] : groups) list.chart->rows.push_back(CellsOf(group, list.chart->columns));
  return rows;
}

}  // namespace

const std::vector<ListSpec>& AllLists() {
  static const std::vector<ListSpec> lists{
      {"stock",
       "what lies here by section, grade and form, with pieces, length, mass and worth; or piece by piece",
       "--to stock.xlsx --to stock.pdf\n         heatkeep report stock --pieces --section \"round 80\" --to pieces.pdf",
       "Stock",
       "stock_worth",
       "section grade length_nm tag",
       "sections, grades and forms",
       "What is missing is not in it. As scrap and as new: today's prices; a customer's metal has its owner and no worth.",
       {kSection, kGrade, kForm, kOwner, kPieces, Summed("length_nm", "length", K::Metres), kMass, kScrapWorth, kNewWorth},
       {"grade", "section", "pieces"},
       Stock,
       "section grade kind owner length_nm mass_g scrap_cents replacement_cents"},
      {"drops",
       "our drops by age, worth as scrap, by expected use and as new, side by side",
       "--to drops.xlsx --to drops.pdf",
       "Drops by age and worth",
       "own_pieces",
       "days tag",
       "drops",
       "Days still: since it was sawn last, or made. As scrap and as new: today's prices. The accountant chooses one column and keeps to it.",
       {kTag,
        kGrade,
        kSection,
        kHeat,
        kPlace,
        kLength,
        kMass,
        kDays,
        kScrapWorth,
        {"expected_cents", "by use", K::Money, 1.1, true},
        kNewWorth},
       {"grade", "section"},
       Drops},
      {"unused",
       "our metal that nobody has worked on for a year: sell it, use it or bin it",
       "--days 365 --to unused.pdf",
       "Unused metal",
       "own_pieces",
       "worked_on tag",
       "pieces",
       "Days still: since it was sawn last, or came. What is held or waits for papers says so.",
       {kTag, kGrade, kSection, kHeat, kPapers, kPlace, kLength, kMass, kDays, kScrapWorth, kNewWorth, kStopped},
       {"grade", "section", "days"},
       Unused},
      {"yield",
       "what the metal of each month became",
       "--from 2026-01 --to yield.xlsx",
       "Yield by month",
       "yield_by_month",
       "month section grade",
       "months",
       "Yield: good pieces of all that was used up, by mass. Our own metal only; what went back to the rack is not used up.",
       {{"month", "month", K::Text, 0.9},
        Summed("used_g", "used up", K::Mass, 1.2),
        Summed("good_g", "good", K::Mass, 1.2),
        Summed("kerf_g", "chips", K::Mass),
        Summed("trim_g", "trim", K::Mass),
        Summed("spoilt_g", "reject, crop, slice", K::Mass),
        Summed("scrap_g", "scrap", K::Mass),
        Summed("unexplained_g", "unexplained", K::Mass, 1.15),
        {"yield_tenths", "yield", K::Percent, 0.8}},
       {"grade", "section", "from", "by-section"},
       Yield},
      {"count",
       "a sheet to count a place with: what should lie there, without its lengths and heats",
       "B3-1 --to count.pdf",
       "Count sheet",
       "stock_on_hand",
       "tag",
       "lines",
       "Write what is read and measured, not what should be there. Secure bars against rolling; two people for long ones.",
       {{"tag", "tag", K::Mono, 1.4, false, ".........."},
        kForm,
        {"section", "section", K::Text, 1.3, false, "no tag"},
        kGrade,
        {"seen", "seen", K::Text, 0.6, false, "[  ]"},
        {"heat_read", "heat as read", K::Text, 1.1, false, "........"},
        {"measured", "measured mm", K::Text, 1.2, false, "..........."}},
       {"place"},
       CountSheet},
      {"buy",
       "open lines that nobody has planned, beside what lies free and what is ordered",
       "--to buy.pdf",
       "What to buy",
       "to_buy",
       "due section grade",
       "sections and grades",
       "Missing: cut lengths less free and ordered metal; kerf, trim and grip come on top. `heatkeep allocate --buy` says which bars.",
       {kSection,
        kGrade,
        {"condition", "condition", K::Text, 1.05},
        kPapers,
        kPieces,
        Summed("cut_nm", "cuts", K::Metres),
        {"longest_nm", "longest", K::Length, 1},
        {"free_nm", "free", K::Metres, 1},
        {"waiting", "here, not free", K::Text, 1.3},
        {"ordered_nm", "ordered", K::Metres, 1},
        Summed("missing_nm", "missing", K::Metres),
        {"due", "due", K::Text, 1.3},
        {"orders", "orders", K::Text, 1.3}},
       {"grade", "section"},
       ToBuy},
      {"scrap",
       "scrap by alloy group and month: booked, weighed by the dealer, paid",
       "--to scrap.xlsx",
       "Scrap by group of bin",
       "scrap_by_group",
       "alloy_group month",
       "lines",
       "Booked: by length and density, without chips. Weighed above booked is chips and what nobody booked. Open: in the bins now.",
       {{"alloy_group", "group", K::Text, 1.5},
        {"month", "month", K::Text, 1},
        {"tickets", "tickets", K::Count, 0.7, true},
        Summed("book_g", "booked", K::Mass),
        Summed("weighed_g", "weighed", K::Mass),
        Summed("other_g", "weighed above booked", K::Mass),
        Summed("cents", "paid", K::Money)},
       {},
       Scrap},
  };
  return lists;
}

}  // namespace heatkeep::command
