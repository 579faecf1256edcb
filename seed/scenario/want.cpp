#include "seed/scenario/want.h"

#include <set>

#include "seed/scenario/groups.h"

namespace heatkeep::scenario {

namespace {

constexpr std::int64_t kKerfUm = 2'600;
constexpr std::int64_t kGripUm = 160'000;
constexpr std::int64_t kDoubtUm = 2'000;
constexpr std::int64_t kTrimUm = 8'000 + kKerfUm;
constexpr int kMostPercent = 60;

}  // namespace

Rack::Rack(const Stock& stock) : whole_um_(groups().size(), 0), taken_um_(groups().size(), 0) {
  const auto add = [&](std::size_t group, std::size_t lot, bool bar, const std::string& owner, std::int64_t mm, int count) {
    const std::string& papers = stock.lots[lot].papers;
    if (papers.empty()) return;
    for (int i = 0; i < count; ++i) {
      sources_.push_back({group, lot, bar, papers, owner, mm * 1000 - kDoubtUm - (bar ? 2 * kTrimUm : 0)});
      if (owner.empty()) whole_um_[group] += mm * 1000;
    }
  };
  for (const OpeningLine& l : stock.opening) {
    if (l.lot != kNoLot) add(l.group, l.lot, !l.drop, l.owner, l.length_mm, l.count);
  }
  for (const DeliveryLine& l : stock.deliveries) {
    if (!l.odd) add(l.group, l.lot, true, l.owner, l.length_mm, l.count);
  }
}

bool Rack::may_use(const Source& s, const Want& want) const {
  return s.group == want.group && s.owner == want.owner && s.papers >= want.papers;  // "2.2" < "3.1"
}

bool Rack::place(const Want& want, std::size_t lot) {
  std::vector<Source> tried = sources_;
  for (int i = 0; i < want.quantity; ++i) {
    Source* best = nullptr;
    for (Source& s : tried) {
      if (!may_use(s, want) || (lot != kNoLot && s.lot != lot)) continue;
      if (s.left_um < want.length_um + kKerfUm + kGripUm) continue;
      const bool sooner = best == nullptr || s.bar < best->bar || (s.bar == best->bar && s.left_um < best->left_um);
      if (sooner) best = &s;
    }
    if (best == nullptr) return false;
    best->left_um -= want.length_um + kKerfUm;
  }
  sources_ = std::move(tried);
  return true;
}

bool Rack::serve(const Want& want) {
  const std::int64_t asked = want.length_um * want.quantity;
  if (want.owner.empty() && (taken_um_[want.group] + asked) * 100 > whole_um_[want.group] * kMostPercent) return false;
  bool served = false;
  if (want.one_heat) {
    std::set<std::size_t> lots;
    for (const Source& s : sources_) {
      if (may_use(s, want)) lots.insert(s.lot);
    }
    for (const std::size_t lot : lots) served = served || place(want, lot);
  } else {
    served = place(want, kNoLot);
  }
  if (served && want.owner.empty()) taken_um_[want.group] += asked;
  return served;
}

}  // namespace heatkeep::scenario
