#include "client/stations/all_stations.h"

#include "client/stations/papers_station.h"
#include "client/stations/rack_station.h"
#include "client/stations/saw_station.h"

namespace heatkeep {

std::vector<Station*> AllStations(Desk& desk) { return {new SawStation(desk), new PapersStation(desk), new RackStation(desk)}; }

}  // namespace heatkeep
