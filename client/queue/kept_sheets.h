// The sheets of one saw as they were read last, kept on the saw's own disk beside its queue (whole_file.h), so that a desk that is
// started while the book cannot be reached can go on cutting. They say when they were read and by whom; what was done since is in the
// queue (saw_queue.h).
#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "schema/terms/rows.h"

namespace heatkeep {

// A tape or readout, and by how much a length read from it is in doubt.
struct KeptDevice {
  std::string device, kind;
  std::optional<Length> doubt;  // nullopt: it was never calibrated
  bool overdue = false;
};

struct KeptSheets {
  std::string book, login;           // which book they are of (client/gateway/readings.h, ReadBookIdentity), who read them
  std::vector<std::string> actions;  // the deeds that this login might do then
  std::string saw;
  std::int64_t read_at_ms = 0;  // since 1970-01-01 UTC, by this machine's clock
  Length stop_stroke;
  Length tape_doubt;  // where no device is said
  std::vector<KeptDevice> devices;
  std::vector<std::string> places;  // of the shop
  std::vector<Sheet> sheets;
};

// All that is kept, as one text: to see whether it is another one than before.
std::string TextOf(const KeptSheets& kept);

// Throw QueueError.
void KeepSheets(const std::filesystem::path& path, const KeptSheets& kept);
// Nothing where none were kept. Throws as well where they are of a version of this program that kept other things.
std::optional<KeptSheets> ReadKeptSheets(const std::filesystem::path& path);

}  // namespace heatkeep
