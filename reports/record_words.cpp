#include "reports/record_words.h"

#include <algorithm>
#include <utility>

#include "reports/balance_record.h"
#include "reports/quantity_text.h"

namespace heatkeep {
namespace {

std::string Counted(const std::string& what, int count) {
  if (what == "receipt") return count == 1 ? "receipt" : "receipts";
  if (what == "bar") return count == 1 ? "bar" : "bars";
  if (what == "drop") return count == 1 ? "drop" : "drops";
  if (what == "cut piece") return count == 1 ? "cut piece" : "cut pieces";
  if (what == "reject") return count == 1 ? "reject" : "rejects";
  if (what == "crop") return count == 1 ? "crop" : "crops";
  if (what == "trim") return count == 1 ? "trim" : "trims";
  if (what == "test slice") return count == 1 ? "test slice" : "test slices";
  return what;
}

}  // namespace

std::string BalanceCheckWords(const HeatBalance& balance) {
  const BalanceSums sums = SumsOf(balance);
  if (sums.balanced()) return "in " + MmFull(sums.in) + " mm = out " + MmFull(sums.out) + " mm: balanced to the nanometre";
  return "in " + MmFull(sums.in) + " mm \u2260 out " + MmFull(sums.out) + " mm: NOT BALANCED, difference " + MmFull(sums.difference()) +
      " mm";
}

std::string TraceCounts(const std::vector<TraceLine>& lines) {
  std::vector<std::pair<std::string, int>> counts;
  for (const TraceLine& l : lines) {
    const auto found = std::find_if(counts.begin(), counts.end(), [&](const auto& c) { return c.first == l.what; });
    if (found == counts.end()) counts.emplace_back(l.what, l.count);
    else found->second += l.count;
  }
  std::string text;
  for (const auto& [what, count] : counts) text += (text.empty() ? "" : ", ") + std::to_string(count) + " " + Counted(what, count);
  return text.empty() ? "nothing found" : text;
}

}  // namespace heatkeep
