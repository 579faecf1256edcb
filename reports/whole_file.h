// A file that appears whole or not at all: `write` gets a temporary name in the same folder; when it returns,
// the file is flushed to disk and renamed over `path`. On any failure the temporary is removed, an older file
// at `path` is untouched, and std::runtime_error says the path and the reason.
#pragma once

#include <functional>
#include <string>

namespace heatkeep {

void WriteWholeFile(const std::string& path, const std::function<void(const std::string& temporary)>& write);

void WriteWholeBytes(const std::string& path, const char* bytes, std::size_t size);

}  // namespace heatkeep
