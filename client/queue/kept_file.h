// A file that this machine keeps for itself: there whole or not at all, wherever the power went, and known by its kind. It is written under
// another name, made safe on the disk, then renamed. (What people get is written by reports/whole_file.h.)
//
//   "HEATKW1 KIND\n", length of the bytes (32 bits, little end first), their CRC-32 (the same), the bytes; nothing behind them
//
// What cannot be read whole is told and left as it is; it is never used in part.
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

namespace heatkeep {

// On the disk when it returns; until then what was there before. `kind`: one word, what is in it. Throws QueueError (record_file.h).
void WriteKeptFile(const std::filesystem::path& path, std::string_view kind, std::string_view bytes);

// Nothing where there is no such file. Throws QueueError: it cannot be read, is no such file or of another kind, is cut short or damaged.
std::optional<std::string> ReadKeptFile(const std::filesystem::path& path, std::string_view kind);

// Does nothing where there is none. Throws QueueError.
void RemoveKeptFile(const std::filesystem::path& path);

}  // namespace heatkeep
