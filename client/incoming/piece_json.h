// What deliveries and opening balances share of a line's JSON, as the deeds take it.
#pragma once

#include "client/gateway/deeds.h"
#include "client/gateway/section_json.h"

namespace heatkeep::incoming {

template <class Row>
Json PieceJson(const Row& row) {
  Json line = {{"mill", row.mill},           {"heat", row.heat},
               {"grade", row.grade},         {"section", SectionJson(row.section)},
               {"condition", row.condition}, {"length_nm", row.length.nm},
               {"count", row.count},         {"place", row.place},
               {"owner", row.owner},         {"ends", row.ends}};
  if (row.price_per_kg) line["cents_per_tonne"] = CentsPerTonne(*row.price_per_kg);
  return line;
}

}  // namespace heatkeep::incoming
