#include "client/year/plain_plan.h"

#include <algorithm>
#include <numeric>
#include <optional>
#include <utility>
#include <vector>

#include "client/allocator/cut_arithmetic.h"
#include "client/allocator/value.h"

namespace heatkeep::year {
namespace {

using namespace allocator;

std::size_t At(int i) { return static_cast<std::size_t>(i); }

class ByHand {
 public:
  explicit ByHand(const Problem& problem) : problem_(problem), order_(problem.lines.size()) {
    std::iota(order_.begin(), order_.end(), 0);
    std::stable_sort(order_.begin(), order_.end(),
                     [&](int a, int b) { return problem.lines[At(a)].CutLength() > problem.lines[At(b)].CutLength(); });
    for (const Line& line : problem.lines) left_.push_back(line.quantity);
    for (const Piece& piece : problem.pieces) stock_.push_back(piece.count.value_or(1'000'000));
    given_up_.resize(problem.lines.size());
  }

  Plan Make(bool drops) {
    Plan plan;
    while (const std::optional<int> line = Longest()) {
      std::optional<int> piece;
      if (drops) piece = ShortestDrop(*line);
      if (!piece) piece = Bar(*line);
      if (!piece) {
        given_up_[At(*line)] = true;
        continue;
      }
      Cuts cuts = Fill(*piece);
      for (const auto& [l, count] : cuts) left_[At(l)] -= count;
      --stock_[At(*piece)];
      plan.layouts.push_back(MakeLayout(problem_, *piece, 1, cuts));
    }
    plan.value = ValueOf(problem_, plan.layouts);
    for (std::size_t i = 0; i < left_.size(); ++i)
      if (left_[i] > 0) plan.shorts.push_back({static_cast<int>(i), left_[i], "no piece on the rack gives it"});
    plan.status = plan.shorts.empty() ? Status::Feasible : Status::Short;
    return plan;
  }

 private:
  using Cuts = std::vector<std::pair<int, int>>;  // line, count

  std::optional<int> Longest() const {
    for (const int line : order_)
      if (left_[At(line)] > 0 && !given_up_[At(line)]) return line;
    return std::nullopt;
  }

  Room RoomOfPiece(int piece) const { return RoomOf(problem_.pieces[At(piece)], RulesFor(problem_, problem_.pieces[At(piece)])); }

  bool Gives(int piece, int line) const {
    if (stock_[At(piece)] < 1) return false;
    const Room room = RoomOfPiece(piece);
    const Length cut = problem_.lines[At(line)].CutLength();
    return Fits(room, cut + room.kerf, cut);
  }

  std::optional<int> ShortestDrop(int line) const {
    std::optional<int> best;
    for (int p = 0; p < static_cast<int>(problem_.pieces.size()); ++p) {
      const Piece& piece = problem_.pieces[At(p)];
      if (piece.kind == PieceKind::Drop && Gives(p, line) && (!best || piece.length < problem_.pieces[At(*best)].length)) best = p;
    }
    return best;
  }

  // The shortest bar that holds the rest of the list, else the longest.
  std::optional<int> Bar(int line) const {
    std::optional<int> whole, longest;
    for (int p = 0; p < static_cast<int>(problem_.pieces.size()); ++p) {
      const Piece& piece = problem_.pieces[At(p)];
      if (piece.kind != PieceKind::Bar || !Gives(p, line)) continue;
      if (!longest || piece.length > problem_.pieces[At(*longest)].length) longest = p;
      if (HoldsAll(p) && (!whole || piece.length < problem_.pieces[At(*whole)].length)) whole = p;
    }
    return whole ? whole : longest;
  }

  bool HoldsAll(int piece) const {
    const Room room = RoomOfPiece(piece);
    Length taken;
    for (std::size_t i = 0; i < left_.size(); ++i)
      if (!given_up_[i]) taken += (problem_.lines[i].CutLength() + room.kerf) * left_[i];
    return taken <= room.room;
  }

  Cuts Fill(int piece) const {
    const Room room = RoomOfPiece(piece);
    Cuts cuts;
    Length taken, longest;
    for (const int line : order_) {
      const Length cut = problem_.lines[At(line)].CutLength();
      int count = 0;
      while (count < left_[At(line)] && !given_up_[At(line)] && Fits(room, taken + cut + room.kerf, std::max(longest, cut))) {
        taken += cut + room.kerf;
        longest = std::max(longest, cut);
        ++count;
      }
      if (count > 0) cuts.emplace_back(line, count);
    }
    return cuts;
  }

  const Problem& problem_;
  std::vector<int> order_;
  std::vector<int> left_;
  std::vector<int> stock_;
  std::vector<bool> given_up_;
};

}  // namespace

Plan NewBarPlan(const Problem& problem) { return ByHand(problem).Make(false); }
Plan PlainPlan(const Problem& problem) { return ByHand(problem).Make(true); }

}  // namespace heatkeep::year
