#include "client/gateway/section_json.h"

namespace heatkeep {

nlohmann::json SectionJson(const Section& section) {
  const bool tube = section.shape == Shape::Tube;
  nlohmann::json json = {{"shape", ShapeText(section.shape)},
                         {"dim1_nm", section.first.nm},
                         {"dim2_nm", tube ? 0 : section.second.nm},
                         {"thickness_nm", tube ? section.second.nm : section.third.nm},
                         {"label", SectionText(section)}};
  if (section.shape == Shape::Angle || section.shape == Shape::Box) {
    json["r1_nm"] = section.r1.nm;
    json["r2_nm"] = section.r2.nm;
  }
  if (section.named != nullptr) {
    json["name"] = section.named->name;
    json["g_per_m"] = section.named->grams_per_metre;
  }
  return json;
}

}  // namespace heatkeep
