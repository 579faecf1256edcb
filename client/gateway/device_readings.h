// The devices that lengths are read from, with what their last calibration says. Throws DbError.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "client/gateway/connection.h"
#include "schema/terms/length.h"

namespace heatkeep {

struct DeviceRow {
  std::string device, kind;     // kind: "tape" or "readout"
  std::optional<Length> doubt;  // of a length read from it; nullopt: never calibrated, so the shop's own tape doubt counts
  bool overdue = false;         // its calibration is over, or it never had one
};
// Tapes and readouts, by name.
std::vector<DeviceRow> ReadLengthDevices(Connection& connection);

// The doubt of a length where no device is said, or one that was never calibrated.
Length ReadTapeDoubt(Connection& connection);

}  // namespace heatkeep
