// The bytes of a file, whole.
#pragma once

#include <cstddef>
#include <string>

namespace heatkeep::intake {

inline constexpr std::size_t kLargestFile = std::size_t{64} * 1024 * 1024;

// Throws std::runtime_error "path: what is wrong; what is expected": not there, a folder, unreadable, larger than `most` (said
// before any of it is read, where the file tells its size).
std::string FileBytes(const std::string& path, std::size_t most = kLargestFile);

}  // namespace heatkeep::intake
