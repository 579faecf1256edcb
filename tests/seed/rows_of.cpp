#include "tests/seed/rows_of.h"

#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

namespace heatkeep::seed_test {

namespace {

std::vector<std::string> cells(const std::string& line, char delimiter) {
  std::vector<std::string> out(1);
  bool quoted = false;
  for (std::size_t i = 0; i < line.size(); ++i) {
    if (line[i] == '"' && quoted && i + 1 < line.size() && line[i + 1] == '"') {
      out.back() += line[++i];
    } else if (line[i] == '"') {
      quoted = !quoted;
    } else if (line[i] == delimiter && !quoted) {
      out.emplace_back();
    } else {
      out.back() += line[i];
    }
  }
  return out;
}

// Windows-1252 above 0x9F is Latin-1: two bytes of UTF-8.
std::string utf8_of(const std::string& western) {
  std::string out;
  for (const char c : western) {
    const auto u = static_cast<unsigned char>(c);
    if (u < 0x80) {
      out += c;
    } else {
      EXPECT_GE(u, 0xA0) << "a Windows-1252 sign that these tests do not know";
      out += static_cast<char>(0xC0 | (u >> 6));
      out += static_cast<char>(0x80 | (u & 0x3F));
    }
  }
  return out;
}

}  // namespace

std::string bytes_of(const std::string& file) {
  std::ifstream in(std::string(HEATKEEP_SEED_FOLDER) + "/" + file, std::ios::binary);
  EXPECT_TRUE(in) << file << " cannot be read";
  std::ostringstream all;
  all << in.rdbuf();
  return all.str();
}

File rows_of(const std::string& file, bool western) {
  std::istringstream in(western ? utf8_of(bytes_of(file)) : bytes_of(file));
  File out;
  std::vector<std::string> names;
  std::string line;
  for (int number = 1; std::getline(in, line); ++number) {
    if (western && line.ends_with('\r')) line.pop_back();
    const std::vector<std::string> fields = cells(line, western ? ';' : ',');
    if (number == 1) {
      out.header = line;
      names = fields;
      continue;
    }
    if (fields.size() != names.size()) {
      ADD_FAILURE() << file << ":" << number << ": " << fields.size() << " fields, the header has " << names.size();
      continue;
    }
    Row row;
    for (std::size_t i = 0; i < names.size(); ++i) row[names[i]] = fields[i];
    out.rows.push_back(std::move(row));
  }
  return out;
}

GroupKey group_of(const Row& row) { return {row.at("grade"), SectionKey(ReadSection(row.at("section")))}; }

std::vector<Row> all_metal() {
  std::vector<Row> all = rows_of("scenario/opening.csv").rows;
  for (Row& r : rows_of("scenario/deliveries.csv").rows) all.push_back(std::move(r));
  return all;
}

Mass theory_of(const Row& row) {
  static const File grades = rows_of("reference/grades.csv");
  for (const Row& g : grades.rows) {
    if (g.at("designation") != row.at("grade")) continue;
    const Density density{std::stoll(g.at("density_kg_m3"))};
    const Length length = ReadLength(row.at("length")) * std::stoll(row.at("count"));
    return MassOf(ReadSection(row.at("section")), density, length);
  }
  ADD_FAILURE() << row.at("grade") << " is not in grades.csv";
  return {};
}

}  // namespace heatkeep::seed_test
