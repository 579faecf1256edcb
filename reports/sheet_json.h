// A sheet as JSON: {"plan", "saw", "due", "made_at", "made_by", "proof", "bundled", "kerf_nm", "trim_nm",
// "grip_nm", "blocks": [{"block", "place", "tag", "kind", "section", "grade", "condition", "mill", "heat",
// "papers", "owner", "state", "length_nm", "mass_g", "trim_nm", "kerf_nm", "left_nm", "left", "bundle" (bars cut
// together), "bundle_no" (0: alone), "strokes", "stroke_area_um2" and "stroke_milliseconds" (of one stroke through all of them), "cuts":
// [{"order", "line", "count", "set_nm", "nominal_nm"}], "stop", "risk" (where there is one)}], "short": [{"order", "line", "missing",
// "why"}]}. Keys do not change.
#pragma once

#include <nlohmann/json.hpp>

#include "schema/terms/rows.h"

namespace heatkeep {

nlohmann::ordered_json SheetJson(const Sheet& sheet);

}  // namespace heatkeep
