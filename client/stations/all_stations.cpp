#include "client/stations/all_stations.h"

#include "client/stations/plan_station.h"
#include "client/stations/saw_station.h"

namespace heatkeep {

std::vector<Station*> AllStations(Desk& desk) { return {new PlanStation(desk), new SawStation(desk)}; }

}  // namespace heatkeep
