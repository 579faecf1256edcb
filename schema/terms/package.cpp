#include "schema/terms/package.h"

namespace heatkeep {

std::string DocumentName(const PackageDocument& document) { return document.type + " no. " + document.number + " of " + document.issuer; }

}  // namespace heatkeep
