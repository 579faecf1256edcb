// The stations of the desk, in their order.
#pragma once

#include <vector>

#include "client/stations/station.h"

namespace heatkeep {

std::vector<Station*> AllStations(Desk& desk);

}  // namespace heatkeep
