// The bytes of a file, whole.
#pragma once

#include <cstddef>
#include <string>

namespace heatkeep::intake {

inline constexpr std::size_t kLargestFile = std::size_t{64} * 1024 * 1024;

// Throws std::runtime_error "path: what is wrong; what is expected": not there, a folder, unreadable, over 64 MiB.
std::string FileBytes(const std::string& path);

}  // namespace heatkeep::intake
