#include "client/allocator/replan_words.h"

#include <algorithm>
#include <map>
#include <utility>

#include "client/allocator/shortage.h"

namespace heatkeep::allocator {
namespace {

std::size_t At(int i) { return static_cast<std::size_t>(i); }

// Tags in the order the pieces are in, and how many of each line's cuts come from them.
struct Shares {
  std::vector<std::string> tags;
  std::map<std::pair<std::string, int>, int> cuts;
};

Shares SharesOf(const Problem& problem, const Plan& plan) {
  Shares shares;
  for (const Layout& layout : plan.layouts) {
    const std::string& tag = problem.pieces[At(layout.piece)].tag;
    if (std::find(shares.tags.begin(), shares.tags.end(), tag) == shares.tags.end()) shares.tags.push_back(tag);
    for (const Cut& cut : layout.cuts) shares.cuts[{tag, cut.line}] += cut.count * layout.repeat;
  }
  return shares;
}

// (tag, how many) of those whose share of the line grew from `a` to `b`.
std::vector<std::pair<std::string, int>> Grown(const Shares& a, const Shares& b, int line) {
  std::vector<std::pair<std::string, int>> grown;
  for (const std::string& tag : b.tags) {
    const auto now = b.cuts.find({tag, line}), then = a.cuts.find({tag, line});
    const int more = (now == b.cuts.end() ? 0 : now->second) - (then == a.cuts.end() ? 0 : then->second);
    if (more > 0) grown.emplace_back(tag, more);
  }
  return grown;
}

using Way = std::pair<std::string, std::vector<std::pair<int, int>>>;  // tag and length, cuts

std::map<Way, int> WaysOf(const Problem& problem, const Plan& plan) {
  std::map<Way, int> ways;
  for (const Layout& layout : plan.layouts) {
    const Piece& piece = problem.pieces[At(layout.piece)];
    std::map<int, int> cuts;
    for (const Cut& cut : layout.cuts) cuts[cut.line] += cut.count;
    ways[{piece.tag + "\n" + std::to_string(piece.length.nm), {cuts.begin(), cuts.end()}}] += layout.repeat;
  }
  return ways;
}

}  // namespace

void SayChanges(const Problem& problem, const Plan& before, Replanned& answer) {
  const Plan& after = answer.plan;
  const auto then = WaysOf(problem, before), now = WaysOf(answer.problem, after);
  answer.kept = 0;
  for (const auto& [way, count] : now)
    if (const auto it = then.find(way); it != then.end()) answer.kept += std::min(count, it->second);
  answer.planned_anew = after.value.pieces_pulled - answer.kept;

  const Shares old_shares = SharesOf(problem, before), shares = SharesOf(answer.problem, after);
  for (std::size_t i = 0; i < problem.lines.size(); ++i) {
    const int line = static_cast<int>(i);
    const Length length = problem.lines[i].CutLength();
    auto lost = Grown(shares, old_shares, line);
    for (auto [tag, more] : Grown(old_shares, shares, line)) {
      while (more > 0 && !lost.empty()) {
        const int n = std::min(more, lost.front().second);
        answer.words.push_back(tag + " instead of " + lost.front().first + " for " + std::to_string(n) + " x " + InMillimetres(length));
        more -= n;
        if ((lost.front().second -= n) == 0) lost.erase(lost.begin());
      }
      if (more > 0) answer.words.push_back(tag + " for " + std::to_string(more) + " x " + InMillimetres(length) + " more");
    }
    for (const auto& [tag, n] : lost) answer.words.push_back(std::to_string(n) + " x " + InMillimetres(length) + " no longer from " + tag);
  }
  for (const Layout& layout : after.layouts) {
    const Piece& piece = answer.problem.pieces[At(layout.piece)];
    if (layout.repeat > 1) continue;
    const auto same = std::any_of(before.layouts.begin(), before.layouts.end(),
                                  [&](const Layout& b) { return problem.pieces[At(b.piece)].tag == piece.tag && b.left == layout.left; });
    if (same) continue;
    answer.words.push_back(piece.tag + " leaves " +
                           (layout.left_kind == LeftKind::None
                                ? std::string("nothing")
                                : InMillimetres(layout.left) + (layout.left_kind == LeftKind::Drop ? ", kept" : ", scrap")));
  }
  for (const Short& s : after.shorts) {
    const Line& line = answer.problem.lines[At(s.line)];
    answer.words.push_back("short: order " + line.order + " line " + line.line + ", " + std::to_string(s.missing) + " missing: " + s.why);
  }
}

}  // namespace heatkeep::allocator
