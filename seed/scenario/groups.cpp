#include "seed/scenario/groups.h"

namespace heatkeep::scenario {

namespace {

constexpr std::int64_t kInchUm = 25'400;

void rounds(std::vector<Group>& all, const std::string& grade, const std::string& condition, std::int64_t bar_mm,
            const std::vector<std::pair<std::int64_t, int>>& sizes) {
  for (const auto& [mm, demand] : sizes) {
    all.push_back({grade, "round " + std::to_string(mm), condition, Shape::Round, mm * 1000, 0, bar_mm, demand});
  }
}

std::vector<Group> table() {
  std::vector<Group> all;
  rounds(all, "42CrMo4", "+QT", 6000, {{30, 4}, {40, 5}, {50, 5}, {60, 5}, {70, 3}, {80, 5}, {100, 4}, {120, 3}, {280, 1}});
  rounds(all, "C45E", "+N", 6000, {{25, 3}, {30, 4}, {40, 5}, {50, 4}, {60, 4}, {80, 3}, {100, 2}});
  all.push_back({"C45E", "hex 36", "+C", Shape::Hexagon, 36'000, 0, 3000, 2});
  rounds(all, "S355J2", "+AR", 6000, {{50, 4}, {80, 3}, {120, 2}});
  all.push_back({"S355J2", "square 50", "+AR", Shape::Square, 50'000, 0, 6000, 3});
  all.push_back({"S355J2", "flat 80x20", "+AR", Shape::Flat, 80'000, 20'000, 6000, 3});
  all.push_back({"S355J2", "flat 100x30", "+AR", Shape::Flat, 100'000, 30'000, 6000, 2});
  rounds(all, "16MnCr5", "+A", 6000, {{25, 3}, {40, 4}, {60, 3}, {80, 2}});
  rounds(all, "34CrNiMo6", "+QT", 6000, {{60, 3}, {90, 2}, {130, 2}, {220, 1}});
  all.push_back({"4140", "round 1-1/2 in", "+QT", Shape::Round, kInchUm * 3 / 2, 0, 6096, 2});
  all.push_back({"4140", "round 2 in", "+QT", Shape::Round, kInchUm * 2, 0, 6096, 4});
  all.push_back({"4140", "round 3 in", "+QT", Shape::Round, kInchUm * 3, 0, 6096, 3});
  all.push_back({"4140", "round 4 in", "+QT", Shape::Round, kInchUm * 4, 0, 3658, 1});
  rounds(all, "11SMnPb30", "+C", 3000, {{12, 3}, {20, 4}, {30, 3}});
  all.push_back({"11SMnPb30", "hex 19", "+C", Shape::Hexagon, 19'000, 0, 3000, 3});
  all.push_back({"11SMnPb30", "hex 24", "+C", Shape::Hexagon, 24'000, 0, 3000, 2});
  rounds(all, "100Cr6", "+A", 5000, {{30, 3}, {50, 3}, {70, 2}});
  rounds(all, "X5CrNi18-10", "+AT", 6000, {{20, 3}, {30, 4}, {50, 3}, {80, 2}});
  rounds(all, "X2CrNi18-9", "+AT", 6000, {{30, 2}, {50, 2}});
  rounds(all, "X2CrNiMo17-12-2", "+AT", 6000, {{20, 3}, {40, 4}, {60, 4}, {90, 2}});
  all.push_back({"X2CrNiMo17-12-2", "flat 60x15", "+AT", Shape::Flat, 60'000, 15'000, 4000, 2});
  rounds(all, "X2CrNiMoN22-5-3", "+AT", 6000, {{50, 2}, {80, 1}});
  rounds(all, "EN AW-6082", "T6", 5000, {{40, 2}, {60, 2}});
  all.push_back({"EN AW-6082", "flat 100x20", "T6", Shape::Flat, 100'000, 20'000, 5000, 1});
  rounds(all, "CuZn39Pb3", "R430", 3000, {{25, 2}});
  all.push_back({"CuZn39Pb3", "hex 27", "R430", Shape::Hexagon, 27'000, 0, 3000, 1});
  return all;
}

// Area in um2. pi / 4 = 0.785398163397448 and sqrt(3) / 2 = 0.866025403784439, as whole parts in 1e9.
std::int64_t area_um2(const Group& g) {
  constexpr std::int64_t kQuarterPi = 785'398'163;
  constexpr std::int64_t kHalfRoot3 = 866'025'404;
  constexpr std::int64_t kParts = 1'000'000'000;
  const std::int64_t w = g.width_um / 10;  // in 10 um, so that the products stay inside 64 bits
  switch (g.shape) {
    case Shape::Round: return w * w * kQuarterPi / kParts * 100;
    case Shape::Hexagon: return w * w * kHalfRoot3 / kParts * 100;
    case Shape::Square: return g.width_um * g.width_um;
    case Shape::Flat: return g.width_um * g.height_um;
  }
  return 0;
}

}  // namespace

const std::vector<Group>& groups() {
  static const std::vector<Group> all = table();
  return all;
}

std::int64_t grams(const Group& g, const Grade& grade, std::int64_t length_mm) {
  // 1 um2 = 1e-12 m2, so a metre of it weighs 1e-12 kg = 1e-6 mg for each kg/m3.
  const std::int64_t mg_per_m = area_um2(g) / 1000 * grade.density_kg_m3 / 1000;
  return (mg_per_m * length_mm / 1000 + 500) / 1000;
}

}  // namespace heatkeep::scenario
