#include "client/command/section_json.h"

namespace heatkeep::command {

nlohmann::json SectionJson(const Section& section) {
  return {{"shape", ShapeText(section.shape)},
          {"dim1_nm", section.first.nm},
          {"dim2_nm", section.shape == Shape::Flat ? section.second.nm : 0},
          {"thickness_nm", section.shape == Shape::Tube ? section.second.nm : 0},
          {"label", SectionText(section)}};
}

}  // namespace heatkeep::command
