#include "tests/allocator/random_problem.h"

#include <random>
#include <string>

#include "tests/allocator/problem_maker.h"

namespace heatkeep::allocator::test {
namespace {

class Dice {
 public:
  explicit Dice(std::uint64_t seed) : engine_(seed) {}
  int Upto(int n) { return static_cast<int>(engine_() % static_cast<std::uint64_t>(n + 1)); }  // 0..n
  int Between(int a, int b) { return a + Upto(b - a); }
  bool OneIn(int n) { return Upto(n - 1) == 0; }
  template <typename T>
  T Of(std::initializer_list<T> list) {
    return *(list.begin() + Upto(static_cast<int>(list.size()) - 1));
  }

 private:
  std::mt19937_64 engine_;
};

Piece RandomPiece(Dice& dice, int i) {
  const bool bar = dice.OneIn(3);
  Piece p = bar ? Bar("B" + std::to_string(i), dice.Of({2000.0, 3000.0, 1524.0})) : Drop("D" + std::to_string(i), dice.Between(150, 1600));
  if (!bar && dice.OneIn(3)) p.length.nm += dice.Upto(999'999);
  if (bar) p.count = dice.OneIn(4) ? std::nullopt : std::optional<int>(dice.Between(1, 3));
  p.square_ends = dice.OneIn(3) ? dice.Upto(2) : p.square_ends;
  p.heat = dice.Of({"K3317", "M2208", "M2208", ""});
  p.papers = dice.OneIn(4) ? PaperType::Type22 : PaperType::Type31;
  if (dice.OneIn(8)) p.owner = "Osmund";
  if (dice.OneIn(12)) p.held = "held: in doubt";
  if (dice.OneIn(6)) p.doubt = Mm(dice.Between(1, 5));
  if (dice.OneIn(8)) p.grade = "C45E";
  if (dice.OneIn(8)) p.section = "R85";
  p.costs = {{dice.Between(1, 5) * 1'000'000'000LL},
             {dice.Upto(1) * 100'000'000LL},
             {dice.Upto(40) * 1'000'000LL},
             {dice.Upto(100) * 1'000'000LL}};
  return p;
}

Line RandomLine(Dice& dice, int i, int quantity, bool heats) {
  Line l = Cuts(std::to_string(i), dice.Between(60, 700), quantity);
  l.order = dice.Of({"O1", "O2"});
  if (dice.OneIn(3)) l.nominal.nm += dice.Upto(999'999);
  if (dice.OneIn(4)) l.face = Mm(2);
  if (dice.OneIn(6)) l.aim = Mm(-0.5);
  l.priority = dice.OneIn(3) ? dice.Between(1, 3) : 2;
  l.papers = dice.Of({PaperType::None, PaperType::Type22, PaperType::Type31});
  if (dice.OneIn(10)) l.owner = "Osmund";
  l.due = dice.Of({"", "2027-03-01", "2027-02-01"});
  if (heats && dice.OneIn(5)) l.one_heat = "H";
  if (heats && dice.OneIn(8)) l.max_heats = 1;
  return l;
}

}  // namespace

Problem RandomProblem(std::uint64_t seed, const Shape& shape) {
  Dice dice(seed);
  Problem problem;
  problem.aim = dice.Of({Aim::DropsFirst, Aim::LeastMoney, Aim::FewestBars, Aim::LeastMetres});
  problem.rules = Rules(dice.Of({0.0, 1.6, 2.0}), dice.Of({0.0, 5.0, 10.0}), dice.Of({0.0, 60.0, 80.0}), dice.Of({0.0, 150.0, 300.0}));
  if (dice.OneIn(6)) problem.exceptions.push_back({"R85", "", Rules(2.5, 10, 40, 100)});
  if (dice.OneIn(2)) problem.grades.push_back({"42CrMo4", "C45E", "", {dice.Upto(3) * 1'000'000'000LL}});
  if (dice.OneIn(3)) problem.sections.push_back({"R80", "R85", dice.Of({"", "O1"}), {dice.Upto(3) * 1'000'000'000LL}});
  if (dice.OneIn(2)) problem.per_setup = {dice.Upto(200) * 1'000'000LL};
  if (dice.OneIn(2)) problem.per_extra_heat = {dice.Upto(500) * 1'000'000LL};
  for (int n = dice.Between(1, shape.most_pieces), i = 0; i < n; ++i) problem.pieces.push_back(RandomPiece(dice, i));
  int left = dice.Between(1, shape.most_cuts);
  for (int i = 0; left > 0; ++i) {
    const int quantity = std::min(left, dice.Between(1, 4));
    problem.lines.push_back(RandomLine(dice, i, quantity, shape.heats));
    left -= quantity;
  }
  problem.limits.seconds = 60;
  problem.limits.iterations = 60;
  problem.limits.seed = seed;
  return problem;
}

}  // namespace heatkeep::allocator::test
