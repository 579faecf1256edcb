// What orders want, and a plain rack to see whether the metal on hand can serve it.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "seed/scenario/stock.h"

namespace heatkeep::scenario {

struct Want {
  std::size_t group = 0;
  std::int64_t length_um = 0;  // what is cut: nominal and facing allowance and the upper tolerance
  int quantity = 0;
  bool one_heat = false;
  std::string papers;  // "", "2.2", "3.1"
  std::string owner;   // empty: ours
};

// The metal on hand, lot by lot. It serves the shortest-that-fits way and with room to spare (kerf and grip
// of the coarser saw, the tape's doubt), so that what it can serve any sound plan can. Unread heats, papers
// awaited and deliveries that are not what their slip says do not count.
class Rack {
 public:
  explicit Rack(const Stock& stock);
  // Takes the metal and says true, or takes nothing and says false. Of each group at most 60 % is ever taken.
  bool serve(const Want& want);

 private:
  struct Source {
    std::size_t group, lot;
    bool bar;
    std::string papers, owner;
    std::int64_t left_um;
  };
  bool place(const Want& want, std::size_t lot);
  bool may_use(const Source& s, const Want& want) const;

  std::vector<Source> sources_;
  std::vector<std::int64_t> whole_um_, taken_um_;  // by group
};

}  // namespace heatkeep::scenario
