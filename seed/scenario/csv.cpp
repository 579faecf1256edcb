#include "seed/scenario/csv.h"

#include <fstream>
#include <iterator>
#include <stdexcept>

namespace heatkeep::scenario {

std::string csv_line(const Fields& fields, char delimiter) {
  std::string line;
  for (std::size_t i = 0; i < fields.size(); ++i) {
    if (i > 0) line += delimiter;
    const std::string& f = fields[i];
    if (f.find_first_of(std::string("\"\n") + delimiter) == std::string::npos) {
      line += f;
      continue;
    }
    line += '"';
    for (const char c : f) {
      if (c == '"') line += '"';
      line += c;
    }
    line += '"';
  }
  return line + '\n';
}

namespace {

Fields split(const std::string& line) {
  Fields fields(1);
  bool quoted = false;
  for (std::size_t i = 0; i < line.size(); ++i) {
    const char c = line[i];
    if (quoted && c == '"' && i + 1 < line.size() && line[i + 1] == '"') {
      fields.back() += '"';
      ++i;
    } else if (c == '"') {
      quoted = !quoted;
    } else if (c == ',' && !quoted) {
      fields.emplace_back();
    } else {
      fields.back() += c;
    }
  }
  return fields;
}

}  // namespace

std::vector<Record> read_records(const std::filesystem::path& file) {
  std::ifstream in(file, std::ios::binary);
  if (!in) throw std::runtime_error(file.string() + ": cannot be read; a file with a header line is expected");
  std::string line;
  std::getline(in, line);
  const Fields header = split(line);
  std::vector<Record> records;
  for (int number = 2; std::getline(in, line); ++number) {
    const Fields fields = split(line);
    if (fields.size() != header.size()) {
      throw std::runtime_error(file.string() + ":" + std::to_string(number) + ": " + std::to_string(fields.size()) + " fields; " +
                               std::to_string(header.size()) + " are expected");
    }
    Record r;
    for (std::size_t i = 0; i < header.size(); ++i) r[header[i]] = fields[i];
    records.push_back(std::move(r));
  }
  return records;
}

void write_bytes(const std::filesystem::path& file, const std::string& bytes) {
  std::ofstream out(file, std::ios::binary | std::ios::trunc);
  out.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
  if (!out.flush()) throw std::runtime_error(file.string() + ": cannot be written");
}

std::string decimal(std::int64_t value, int digits, int shown) {
  std::string s = std::to_string(value < 0 ? -value : value);
  const auto d = static_cast<std::size_t>(digits);
  while (s.size() <= d) s.insert(s.begin(), '0');
  s.insert(s.size() - d, ".");
  s.resize(s.size() - static_cast<std::size_t>(digits - shown));
  if (shown == 0) s.pop_back();
  return value < 0 ? "-" + s : s;
}

}  // namespace heatkeep::scenario
