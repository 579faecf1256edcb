#include "client/command/list_specs.h"

#include <map>

#include "client/planning/expected_worth.h"

namespace heatkeep::command {
namespace {

using Json = nlohmann::json;
using K = ListKind;

const ListColumn kTag{"tag", "tag", K::Mono, 1.4}, kGrade{"grade", "grade", K::Text, 1.75}, kSection{"section", "section", K::Text, 1.3}, kHeat{"heat", "heat", K::Mono, 1.3},
    kPlace{"place", "place", K::Text, 0.9}, kLength{"length_nm", "length", K::Length, 1, true}, kMass{"mass_g", "mass", K::Mass, 1.1, true}, kPapers{"papers", "papers", K::Text, 0.9},
    kDays{"days", "days still", K::Count, 0.7};
const ListColumn kScrapWorth{"scrap_cents", "as scrap", K::Money, 1.1, true}, kNewWorth{"replacement_cents", "as new", K::Money, 1.2, true};

std::vector<Json> Drops(Connection& connection, std::vector<Json> rows, const ListChoice&, ListReport& list) {
  std::erase_if(rows, [](const Json& row) { return row["kind"] != "drop"; });
  const std::size_t worked_out = planning::AddExpectedWorth(connection, rows);
  list.note += worked_out == 0 ? " Expected use is not worked out: it needs 90 days and five lines of a section and grade in the book."
                               : " Expected use is worked out for " + std::to_string(worked_out) + " of " + std::to_string(rows.size()) + " drops, from the shop's own past.";
  return rows;
}

std::vector<Json> Unused(Connection&, std::vector<Json> rows, const ListChoice& choice, ListReport& list) {
  std::erase_if(rows, [&](const Json& row) { return row["days"].get<std::int64_t>() < choice.days; });
  list.subject += ", for " + std::to_string(choice.days) + " days or more";
  return rows;
}

// For each piece: seen, the heat as read, the measured length, all to be written by hand; then empty lines for metal without a tag.
std::vector<Json> CountSheet(Connection&, std::vector<Json> rows, const ListChoice&, ListReport& list) {
  list.least_row = 8;
  for (Json& row : rows) row.update({{"seen", "[  ]"}, {"heat_read", "........"}, {"measured", "..........."}});
  for (int i = 0; i < 6; ++i) rows.push_back({{"tag", ".........."}, {"section", "no tag"}, {"seen", "[  ]"}, {"heat_read", "........"}, {"measured", "..........."}});
  return rows;
}

// Months, or months of each section: masses added up, and good over used in tenths of a per cent.
std::vector<Json> Yield(Connection&, std::vector<Json> rows, const ListChoice& choice, ListReport& list) {
  std::map<std::vector<std::string>, Json> months;
  for (const Json& row : rows) {
    std::vector<std::string> key{row["month"].get<std::string>()};
    if (choice.by_section) key = {row["section"].get<std::string>(), row["grade"].is_null() ? "" : row["grade"].get<std::string>(), key[0]};
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
  if (choice.by_section) list.columns.insert(list.columns.begin() + 1, {kSection, kGrade});
  else list.charted = {list.columns.size() - 1};
  return put_together;
}

// The metal of open lines less what lies free and what is ordered; below zero there is enough of it, if not in the right lengths.
std::vector<Json> ToBuy(Connection&, std::vector<Json> rows, const ListChoice&, ListReport&) {
  for (Json& row : rows)
    row["missing_nm"] = std::max<std::int64_t>(0, row["cut_nm"].get<std::int64_t>() - row["free_nm"].get<std::int64_t>() - row["ordered_nm"].get<std::int64_t>());
  return rows;
}

ListColumn Summed(const char* key, const char* head, K kind, double share = 1) { return {key, head, kind, share, true}; }

}  // namespace

const std::vector<ListSpec>& AllLists() {
  static const std::vector<ListSpec> lists{
      {"drops", "our drops by age, worth as scrap, by expected use and as new, side by side", "--to drops.xlsx --to drops.pdf", "Drops by age and worth", "own_pieces", "days tag", "drops",
       "Days still: since it was sawn last, or made. As scrap and as new: today's prices. The accountant chooses one column and keeps to it.",
       {kTag, kGrade, kSection, kHeat, kPlace, kLength, kMass, kDays, kScrapWorth, {"expected_cents", "by use", K::Money, 1.1, true}, kNewWorth}, {"grade", "section"}, Drops},
      {"unused", "our metal that nobody has worked on for a year: sell it, use it or bin it", "--days 365 --to unused.pdf", "Unused metal", "own_pieces", "worked_on tag", "pieces",
       "Days still: since it was sawn last, or came. What is held or waits for papers says so.",
       {kTag, kGrade, kSection, kHeat, kPapers, kPlace, kLength, kMass, kDays, kScrapWorth, kNewWorth, {"blocked", "stopped", K::Text, 1.3}}, {"grade", "section", "days"}, Unused},
      {"yield", "what the metal of each month became", "--from 2026-01 --to yield.xlsx", "Yield by month", "yield_by_month", "month section grade", "months",
       "Yield: good pieces of all that was used up, by mass. Our own metal only; what went back to the rack is not used up.",
       {{"month", "month", K::Text, 0.9}, Summed("used_g", "used up", K::Mass, 1.2), Summed("good_g", "good", K::Mass, 1.2), Summed("kerf_g", "chips", K::Mass), Summed("trim_g", "trim", K::Mass),
        Summed("spoilt_g", "reject, crop, slice", K::Mass), Summed("scrap_g", "scrap", K::Mass), Summed("unexplained_g", "unexplained", K::Mass), {"yield_tenths", "yield", K::Percent, 0.8}},
       {"grade", "section", "from", "by-section"}, Yield},
      {"count", "a sheet to count a place with: what should lie there, without its lengths and heats", "B3-1 --to count.pdf", "Count sheet", "stock_on_hand", "tag", "lines",
       "Write what is read and measured, not what should be there. Secure bars against rolling; two people for long ones.",
       {kTag, {"kind", "kind", K::Text, 0.7}, kSection, kGrade, {"seen", "seen", K::Text, 0.6}, {"heat_read", "heat as read", K::Text, 1.1}, {"measured", "measured mm", K::Text, 1.2}}, {"place"}, CountSheet},
      {"buy", "open lines that nobody has planned, beside what lies free and what is ordered", "--to buy.pdf", "What to buy", "to_buy", "due section grade", "sections and grades",
       "Missing: cut lengths less free and ordered metal; kerf, trim and grip come on top. `heatkeep allocate --buy` says which bars.",
       {kSection, kGrade, {"condition", "condition", K::Text, 1.05}, kPapers, {"pieces", "pieces", K::Count, 0.85, true}, Summed("cut_nm", "cuts", K::Metres), {"longest_nm", "longest", K::Length, 1},
        {"free_nm", "free", K::Metres, 1}, {"ordered_nm", "ordered", K::Metres, 1}, Summed("missing_nm", "missing", K::Metres), {"due", "due", K::Text, 1.3}, {"orders", "orders", K::Text, 1.3}},
       {"grade", "section"}, ToBuy},
      {"scrap", "scrap by alloy group and month: booked, weighed by the dealer, paid", "--to scrap.xlsx", "Scrap by group of bin", "scrap_by_group", "alloy_group month", "lines",
       "Booked: by length and density, without chips. Weighed above booked is chips and what nobody booked. Open: in the bins now.",
       {{"alloy_group", "group", K::Text, 1.5}, {"month", "month", K::Text, 1}, {"tickets", "tickets", K::Count, 0.7, true}, Summed("book_g", "booked", K::Mass), Summed("weighed_g", "weighed", K::Mass),
        Summed("other_g", "weighed above booked", K::Mass), Summed("cents", "paid", K::Money)}, {}},
  };
  return lists;
}

}  // namespace heatkeep::command
