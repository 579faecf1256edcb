#include "client/stations/all_stations.h"

#include "client/stations/counting_station.h"
#include "client/stations/papers_station.h"
#include "client/stations/plan_station.h"
#include "client/stations/rack_station.h"
#include "client/stations/receiving_station.h"
#include "client/stations/saw_station.h"
#include "client/stations/start_station.h"

namespace heatkeep {

std::vector<Station*> AllStations(Desk& desk) {
  return {new SawStation(desk),      new ReceivingStation(desk), new PlanStation(desk), new PapersStation(desk),
          new CountingStation(desk), new RackStation(desk),      new StartStation(desk)};
}

}  // namespace heatkeep
