#include "seed/scenario/reference.h"

#include <algorithm>
#include <stdexcept>

#include "seed/scenario/csv.h"

namespace heatkeep::scenario {

namespace {

std::int64_t ten_thousandths(const std::string& text) {
  const std::size_t point = text.find('.');
  std::string digits = text.substr(0, point);
  std::string after = point == std::string::npos ? "" : text.substr(point + 1);
  if (after.size() > 4) throw std::runtime_error("limit '" + text + "': at most four decimals are expected");
  after.resize(4, '0');
  return std::stoll(digits + after);
}

int decimals_of(const std::string& text) {
  const std::size_t point = text.find('.');
  return point == std::string::npos ? 0 : static_cast<int>(text.size() - point - 1);
}

}  // namespace

std::map<std::string, Grade> read_reference(const std::filesystem::path& folder) {
  std::map<std::string, Grade> grades;
  for (const Record& r : read_records(folder / "grades.csv")) {
    grades[r.at("designation")].density_kg_m3 = std::stoll(r.at("density_kg_m3"));
  }
  for (const Record& r : read_records(folder / "grade_limits.csv")) {
    std::vector<Limit>& limits = grades.at(r.at("grade")).limits;
    const std::string& min = r.at("min_pct");
    const std::string& max = r.at("max_pct");
    Limit l{r.at("element"), min.empty() ? 0 : ten_thousandths(min), 0, std::clamp(std::max(decimals_of(min), decimals_of(max)), 2, 3)};
    l.most = max.empty() ? l.least + l.least / 2 : ten_thousandths(max);
    const auto known = std::find_if(limits.begin(), limits.end(), [&](const Limit& k) { return k.element == l.element; });
    if (known == limits.end()) {
      limits.push_back(l);
    } else {
      known->least = std::max(known->least, l.least);
      known->most = std::min(known->most, l.most);
    }
  }
  return grades;
}

}  // namespace heatkeep::scenario
