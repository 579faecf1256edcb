#include "client/year/shop.h"

#include <algorithm>
#include <array>
#include <stdexcept>

#include "client/year/dice.h"
#include "schema/terms/wide.h"

namespace heatkeep::year {
namespace {

// Price and scrap price in cents a kilogram, invented.
struct GradeRow {
  const char* grade;
  int density, price, scrap;
};
constexpr std::array kGrades{
    GradeRow{"S355J2", 7850, 110, 20},      GradeRow{"C45E", 7850, 120, 22},
    GradeRow{"42CrMo4", 7850, 160, 25},     GradeRow{"16MnCr5", 7850, 150, 24},
    GradeRow{"34CrNiMo6", 7850, 230, 32},   GradeRow{"11SMn30", 7850, 130, 20},
    GradeRow{"X5CrNi18-10", 7900, 360, 90}, GradeRow{"X2CrNiMo17-12-2", 8000, 480, 120},
    GradeRow{"S235JR", 7850, 100, 20},      GradeRow{"C60E", 7850, 130, 22},
    GradeRow{"18CrNiMo7-6", 7850, 210, 30}, GradeRow{"EN AW-6082", 2700, 520, 130},
};
constexpr std::array kDiameters{40, 60, 50, 80, 30, 100, 70, 25, 90, 120, 35, 140, 45, 160, 20, 110, 65};
constexpr int kPartsAGroup = 12;
constexpr std::int64_t kTenth = 100'000;                  // nm
constexpr std::int64_t kLongestLine = 36'000 * kNmPerMm;  // metal of one line: six long bars

Group MakeGroup(int index) {
  const GradeRow& row = kGrades[static_cast<std::size_t>(index) % kGrades.size()];
  const auto turn = static_cast<std::size_t>(index) / kGrades.size();
  const int d = kDiameters[(static_cast<std::size_t>(index) % kGrades.size() + 5 * turn) % kDiameters.size()];
  Group g;
  g.grade = row.grade;
  const Section section{Shape::Round, {d * kNmPerMm}, {}};
  g.section = SectionText(section);
  g.mass = MassPerMetreOf(section, Density{row.density});
  const auto money = [&](int cents_per_kg) {  // ng/m * cents/kg -> millionths of a cent a metre: / 1e12 * 1e6
    return allocator::FineMoney{static_cast<std::int64_t>(DivideHalfAway(Wide{g.mass.ng} * cents_per_kg, 1'000'000))};
  };
  g.price_per_metre = money(row.price);
  g.scrap_per_metre = money(row.scrap);
  for (const int mm : {3000, 4000, 6000, 6100}) g.bars.push_back({mm * kNmPerMm});
  g.rules = {{1'600'000}, {5'000'000}, {80'000'000}, {300'000'000}};
  return g;
}

// A length of 20..2500 mm at 0.1 mm.
Length AnyCut(Dice& dice) {
  const int mm = dice.Ratio(20, 2499);
  return {mm * kNmPerMm + dice.Between(0, 9) * kTenth};
}

class Orders {
 public:
  Orders(std::uint64_t seed, int groups) : dice_(seed), groups_(groups) {
    parts_.resize(static_cast<std::size_t>(groups));
    for (auto& parts : parts_)
      for (int i = 0; i < kPartsAGroup; ++i) parts.push_back(AnyCut(dice_));
  }

  // `lines` lines over the days first..first + days - 1; an order of 1 to 8 lines at a time, most for one group.
  void Add(Shop& shop, int first, int days, int lines) {
    std::vector<DayLine> made;
    while (static_cast<int>(made.size()) < lines) {
      const int day = first + dice_.Between(0, days - 1);
      const int size = std::min(1 + dice_.Skewed(8), lines - static_cast<int>(made.size()));
      const int main = dice_.Skewed(groups_);
      ++order_;
      for (int i = 0; i < size; ++i) {
        const int group = dice_.Percent(75) ? main : dice_.Skewed(groups_);
        made.push_back(MakeLine(day, group));
      }
    }
    std::stable_sort(made.begin(), made.end(), [](const DayLine& a, const DayLine& b) { return a.day < b.day; });
    shop.lines.insert(shop.lines.end(), made.begin(), made.end());
  }

 private:
  DayLine MakeLine(int day, int group) {
    const auto& parts = parts_[static_cast<std::size_t>(group)];
    DayLine line{day, group, order_, {}, 1};
    line.cut = dice_.Percent(60) ? parts[static_cast<std::size_t>(dice_.Skewed(kPartsAGroup))] : AnyCut(dice_);
    const auto most = static_cast<int>(std::clamp<std::int64_t>(kLongestLine / line.cut.nm, 1, 60));
    line.quantity = std::min(dice_.Ratio(1, 60), most);
    return line;
  }

  Dice dice_;
  int groups_;
  int order_ = 0;
  std::vector<std::vector<Length>> parts_;
};

}  // namespace

Shop MakeShop(std::uint64_t seed, const ShopSize& size) {
  if (size.groups < 1 || size.groups > 200) throw std::invalid_argument("groups: expected 1 to 200");
  if (size.lines < 1 || size.lines > 1'000'000) throw std::invalid_argument("lines: expected 1 to 1000000");
  if (size.days < 1 || size.days > 5000) throw std::invalid_argument("days: expected 1 to 5000");
  if (size.before < 0 || size.before > 5000) throw std::invalid_argument("days before: expected 0 to 5000");
  Shop shop;
  shop.days = size.days;
  shop.before = size.before;
  for (int g = 0; g < size.groups; ++g) shop.groups.push_back(MakeGroup(g));
  Orders orders(seed, size.groups);
  const auto before = static_cast<int>(std::int64_t{size.lines} * size.before / size.days);
  if (before > 0) orders.Add(shop, -size.before, size.before, before);
  orders.Add(shop, 0, size.days, size.lines);
  return shop;
}

Mass MassOf(const Group& group, Length length) {
  const Wide ng = Wide{group.mass.ng} * length.nm;  // ng/m x nm
  return {static_cast<std::int64_t>(DivideHalfAway(ng, Wide{1'000'000'000} * 1'000'000'000))};
}

}  // namespace heatkeep::year
