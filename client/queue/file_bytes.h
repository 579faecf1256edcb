// Numbers as bytes, and bytes made safe on the disk: what files that must survive a power cut share.
#pragma once

#include <cstdint>
#include <filesystem>
#include <string>
#include <string_view>

namespace heatkeep {

// 32 bits, little end first.
std::string NumberBytes(std::uint32_t n);
std::uint32_t NumberAt(std::string_view bytes, std::size_t at);

// False: not all of them could be written (errno says why).
bool WriteAll(int fd, std::string_view bytes);

// The names in the folder of this file are on the disk. False: they cannot be made so (errno says why).
bool SyncFolderOf(const std::filesystem::path& file);

}  // namespace heatkeep
