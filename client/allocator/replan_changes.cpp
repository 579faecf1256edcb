#include "client/allocator/replan_changes.h"

#include <algorithm>
#include <stdexcept>

#include "client/allocator/cut_arithmetic.h"

namespace heatkeep::allocator {
namespace {

std::size_t At(int i) { return static_cast<std::size_t>(i); }

void Refuse(const std::string& who, const std::string& wrong) { throw std::invalid_argument(who + ": " + wrong); }

class Disturbance {
 public:
  Disturbance(const Problem& problem, const Plan& plan, const std::vector<bool>& fixed) : now_{problem, {}} {
    for (std::size_t i = 0; i < plan.layouts.size(); ++i) {
      const Layout& layout = plan.layouts[i];
      Pulled one{layout.piece, {}, i < fixed.size() && fixed[i], layout.piece, {}};
      for (const Cut& cut : layout.cuts) one.cuts[cut.line] += cut.count;
      one.first = one.cuts;
      now_.pulled.insert(now_.pulled.end(), static_cast<std::size_t>(layout.repeat), one);
    }
  }

  void Apply(const Change& change) {
    if (change.what == Mishap::Rejected) return Reject(change);
    if (change.piece < 0 || At(change.piece) >= now_.problem.pieces.size()) Refuse("piece", "there is no such piece");
    const Piece before = now_.problem.pieces[At(change.piece)];
    std::vector<Piece> parts;
    if (change.what == Mishap::Shorter) {
      if (change.measured.nm <= 0) Refuse("piece " + before.tag, "its measured length is nothing; expected above 0");
      parts = {before};
      parts[0].length = change.measured;
      parts[0].doubt = change.doubt;
    } else if (change.what == Mishap::Defect) {
      parts = Parted(before, change);
    }
    Replace(change.piece, parts);
  }

  Disturbed Take() && { return std::move(now_); }

 private:
  void Reject(const Change& change) {
    if (change.line < 0 || At(change.line) >= now_.problem.lines.size()) Refuse("line", "there is no such line");
    if (change.count < 1) Refuse("line", "fewer than one piece is rejected");
    now_.problem.lines[At(change.line)].quantity += change.count;
  }

  static std::vector<Piece> Parted(const Piece& piece, const Change& zone) {
    if (zone.from.nm < 0 || zone.to <= zone.from || zone.from >= piece.length)
      Refuse("piece " + piece.tag, "the defect zone is not on it; expected 0 <= from < to, from within its length");
    std::vector<Piece> parts;
    if (zone.from.nm > 0) {
      parts.push_back(piece);
      parts.back().length = zone.from;
      parts.back().square_ends = piece.square_ends == 0 ? 1 : 2;  // the crop's end, and the one it is cut from
    }
    if (zone.to < piece.length) {
      parts.push_back(piece);
      parts.back().length = piece.length - zone.to;
      parts.back().square_ends = piece.square_ends == 2 ? 2 : 1;
    }
    if (parts.size() == 2) {
      parts[0].tag += " before the defect";
      parts[1].tag += " beyond the defect";
    }
    for (Piece& part : parts) {
      if (piece.doubt >= part.length) part.held = "its length is in doubt";
      part.kind = PieceKind::Drop;
    }
    return parts;
  }

  // One of the pieces at this index becomes these parts (none: it is gone); what was to be cut from it is cut from the
  // first part that holds the most of it.
  void Replace(int piece, const std::vector<Piece>& parts) {
    Piece& row = now_.problem.pieces[At(piece)];
    const bool only = row.count == 1;
    std::vector<int> indices;
    if (row.count) {
      if (*row.count <= 0) Refuse("piece " + row.tag, "there is none left of it");
      row.count = *row.count - 1;
    }
    for (const Piece& part : parts) {
      if (only && indices.empty()) {
        now_.problem.pieces[At(piece)] = part;
        now_.problem.pieces[At(piece)].count = 1;
        indices.push_back(piece);
        continue;
      }
      now_.problem.pieces.push_back(part);
      now_.problem.pieces.back().count = 1;
      indices.push_back(static_cast<int>(now_.problem.pieces.size()) - 1);
    }
    Pulled* pulled = Meant(piece, only);
    if (!pulled) return;
    const std::map<int, int> wanted = pulled->cuts;
    pulled->cuts.clear();
    int most = 0;
    for (const int index : indices) {
      std::map<int, int> kept = Kept(index, wanted);
      int count = 0;
      for (const auto& [line, n] : kept) count += n;
      if (count <= most) continue;
      most = count;
      pulled->piece = index;
      pulled->cuts = std::move(kept);
    }
  }

  // The one at the saw, if one of them is; else, if none is to spare, the last of them.
  Pulled* Meant(int piece, bool only) {
    Pulled* last = nullptr;
    std::int64_t used = 0;
    for (Pulled& p : now_.pulled) {
      if (p.piece != piece || p.cuts.empty()) continue;
      if (p.fixed) return &p;
      last = &p;
      ++used;
    }
    const std::optional<int>& count = now_.problem.pieces[At(piece)].count;
    return !only && (!count || *count >= used) ? nullptr : last;
  }

  std::map<int, int> Kept(int piece, std::map<int, int> cuts) const {
    const auto length = [&](int line) { return now_.problem.lines[At(line)].CutLength(); };
    while (!cuts.empty() && !StillHolds(now_.problem, piece, cuts)) {
      // The shortest cut without which the others fit, else the shortest of all.
      std::vector<int> lines;
      for (const auto& [line, count] : cuts) lines.push_back(line);
      std::stable_sort(lines.begin(), lines.end(), [&](int a, int b) { return length(a) < length(b); });
      int goes = lines.front();
      for (const int line : lines) {
        std::map<int, int> less = cuts;
        if (--less[line] == 0) less.erase(line);
        if (less.empty() || !StillHolds(now_.problem, piece, less)) continue;
        goes = line;
        break;
      }
      if (--cuts[goes] == 0) cuts.erase(goes);
    }
    return cuts;
  }

  Disturbed now_;
};

}  // namespace

bool StillHolds(const Problem& problem, int index, const std::map<int, int>& cuts) {
  const Piece& piece = problem.pieces[At(index)];
  if (!piece.held.empty()) return false;
  const GroupRules& rules = RulesFor(problem, piece);
  Length taken, longest;
  for (const auto& [line, count] : cuts) {
    const Length l = problem.lines[At(line)].CutLength();
    taken += (l + rules.kerf) * count;
    longest = std::max(longest, l);
  }
  return Fits(RoomOf(piece, rules), taken, longest);
}

Disturbed Disturb(const Problem& problem, const Plan& plan, const std::vector<bool>& fixed, const std::vector<Change>& changes) {
  Disturbance disturbance(problem, plan, fixed);
  for (const Change& change : changes) disturbance.Apply(change);
  return std::move(disturbance).Take();
}

}  // namespace heatkeep::allocator
