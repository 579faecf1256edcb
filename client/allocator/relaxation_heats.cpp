// The rows on heats of the relaxation (relaxation.h, "Rules on heats").
#include <CoinPackedVector.hpp>
#include <algorithm>
#include <map>
#include <string>

#include "client/allocator/relaxation_programme.h"

namespace heatkeep::allocator {
namespace {

std::size_t At(int i) { return static_cast<std::size_t>(i); }

}  // namespace

void Relaxation::HeatRows() {
  std::map<std::string, int> heats;
  heat_of_source_.assign(c_.sources.size(), 0);
  if (c_.units.empty()) return;
  for (std::size_t s = 0; s < c_.sources.size(); ++s)
    heat_of_source_[s] = heats.try_emplace(c_.sources[s].heat, static_cast<int>(heats.size())).first->second;
  heat_row_of_.assign(c_.items.size(), std::vector<int>(heats.size(), -1));
  ClpSimplex& clp = lp_->clp;
  for (std::size_t u = 0; u < c_.units.size(); ++u) {
    const HeatUnit& unit = c_.units[u];
    heat_column_.emplace_back(unit.heats.size(), -1);
    const int of_unit = clp.numberRows();
    const auto sure = std::count(unit.sure.begin(), unit.sure.end(), 1);
    clp.addRow(0, nullptr, nullptr, -COIN_DBL_MAX, static_cast<double>(unit.most - sure));
    for (std::size_t h = 0; h < unit.heats.size(); ++h) {
      const auto heat = heats.find(unit.heats[h]);
      if (unit.sure[h] || heat == heats.end()) continue;
      CoinPackedVector column;
      column.insert(of_unit, 1.0);
      for (int item : unit.items) {
        const Length l = c_.items[At(item)].length;
        std::int64_t most = 0;
        for (std::size_t s = 0; s < c_.sources.size() && most < demand_[At(item)]; ++s) {
          const Source& source = c_.sources[s];
          if (heat_of_source_[s] != heat->second || !c_.views[At(source.view)].may[At(item)]) continue;
          const std::int64_t gives = std::max<std::int64_t>({0, source.room.room.nm, source.room.exact.value_or(Length{}).nm});
          most += source.count * (gives / (l + source.room.kerf).nm);
        }
        const HeatRow row{u, h, At(item), std::min<std::int64_t>(most, demand_[At(item)]), clp.numberRows()};
        clp.addRow(0, nullptr, nullptr, -COIN_DBL_MAX, 0.0);
        column.insert(row.row, -static_cast<double>(row.most));
        heat_row_of_[At(item)][At(heat->second)] = static_cast<int>(heat_rows_.size());
        heat_rows_.push_back(row);
      }
      heat_column_[u][h] = clp.numberColumns();
      clp.addColumn(column.getNumElements(), column.getIndices(), column.getElements(), 0.0, 1.0, 0.0);
    }
  }
}

double Relaxation::ItemDual(std::size_t item, std::size_t source) const {
  if (heat_rows_.empty()) return item_dual_[item];
  const int row = heat_row_of_[item][At(heat_of_source_[source])];
  return row < 0 ? item_dual_[item] : item_dual_[item] - heat_dual_[At(row)];
}

std::vector<std::vector<double>> Relaxation::HeatUse() const {
  std::vector<std::vector<double>> use;
  const double* x = lp_->clp.primalColumnSolution();
  for (std::size_t u = 0; u < heat_column_.size(); ++u) {
    use.emplace_back(heat_column_[u].size(), 0.0);
    for (std::size_t h = 0; h < use[u].size(); ++h)
      if (heat_column_[u][h] >= 0) use[u][h] = x[heat_column_[u][h]];
  }
  return use;
}

}  // namespace heatkeep::allocator
