// The certificate package of an order or a delivery note, as api.package_of says it (schema/api/packages.sql).
#pragma once

#include <nlohmann/json.hpp>

#include "client/gateway/connection.h"
#include "schema/terms/package.h"

namespace heatkeep {

// `asked` is the JSON body that api.package_of describes. Throws DbError when there is nothing it could be about.
Package ReadPackage(Connection& connection, const nlohmann::json& asked);

}  // namespace heatkeep
