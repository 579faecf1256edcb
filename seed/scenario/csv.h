// Comma-separated lines, read and written as RFC 4180 has them, with \n as line end.
#pragma once

#include <cstdint>
#include <filesystem>
#include <map>
#include <string>
#include <vector>

namespace heatkeep::scenario {

using Fields = std::vector<std::string>;
using Record = std::map<std::string, std::string>;

// Fields that hold the delimiter, a quote or a line end are quoted.
std::string csv_line(const Fields& fields, char delimiter = ',');

// The records of a file with a header. Throws std::runtime_error "file:line: ..." on a wrong number of
// fields.
std::vector<Record> read_records(const std::filesystem::path& file);

// Writes the bytes as they are. Throws std::runtime_error when the file cannot be written.
void write_bytes(const std::filesystem::path& file, const std::string& bytes);

// 15000 with 4 digits after the point, 2 of them shown: "1.50". The rest is cut off, never rounded up.
std::string decimal(std::int64_t value, int digits, int shown);

}  // namespace heatkeep::scenario
