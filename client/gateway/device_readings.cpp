#include "client/gateway/device_readings.h"

#include "client/gateway/readings.h"

namespace heatkeep {

std::vector<DeviceRow> ReadLengthDevices(Connection& connection) {
  std::vector<DeviceRow> rows;
  for (const Row r :
       connection.Execute("select device, kind, doubt_nm, overdue from api.devices where kind in ('tape', 'readout') order by device")) {
    DeviceRow& d = rows.emplace_back();
    d.device = r.Text("device");
    d.kind = r.Text("kind");
    if (const auto doubt = r.OptionalInt("doubt_nm")) d.doubt = Length{*doubt};
    d.overdue = r.Bool("overdue");
  }
  return rows;
}

Length ReadTapeDoubt(Connection& connection) { return {std::stoll(ReadSetting(connection, "tape_doubt_nm", "1000000"))}; }

}  // namespace heatkeep
