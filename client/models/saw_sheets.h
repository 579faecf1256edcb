// The live sheets of one saw: read from the book, or from the saw's own disk with what was done since.
#pragma once

#include <cstdint>
#include <functional>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <vector>

#include "client/gateway/connection.h"
#include "client/gateway/device_readings.h"
#include "client/gateway/saw_readings.h"
#include "client/queue/kept_sheets.h"
#include "schema/terms/rows.h"

namespace heatkeep {

struct SawSheets {
  std::vector<Sheet> sheets;  // that still have something to be cut, earliest due first
  Length stop_stroke;         // 0: not known
  std::vector<DeviceRow> devices;
  Length tape_doubt{1'000'000};
  std::vector<std::string> places;
  std::optional<HandoverRow> handover;  // the saw was handed over, and nobody has taken it yet
};
// Throws DbError.
SawSheets ReadSawSheets(Connection& book, const std::string& saw);

// Where the sheets of this queue are kept.
std::string SheetsFileOf(const std::string& queue_file);

// What a saw's queue says was done and is not in sheets read at `since_ms`, in order: waiting deeds, and sent ones that are not older.
void EachKeptSince(const std::string& queue_file, std::int64_t since_ms,
                   const std::function<void(const std::string& deed, const nlohmann::json& body)>& each);

}  // namespace heatkeep
