#include "client/command/record_said.h"

#include <algorithm>
#include <cctype>
#include <nlohmann/json.hpp>
#include <stdexcept>

#include "client/command/file_json.h"
#include "reports/record_says.h"
#include "schema/terms/sha256.h"

namespace heatkeep::command {
namespace {
constexpr int kDeepestRecord = 64;
}

std::vector<std::string> DigestsIn(const std::string& text) {
  std::vector<std::string> found;
  std::string run;
  for (std::size_t i = 0; i <= text.size(); ++i) {
    const auto c = i < text.size() ? static_cast<unsigned char>(text[i]) : ' ';
    if (std::isalnum(c) != 0) {
      run += static_cast<char>(std::tolower(c));
      continue;
    }
    if (run.size() == kDigestDigits && run.find_first_not_of("0123456789abcdef") == std::string::npos &&
        std::find(found.begin(), found.end(), run) == found.end())
      found.push_back(run);
    run.clear();
  }
  return found;
}

Said SaidByJson(const std::string& file, const std::string& bytes) {
  const auto bad = [&](const std::string& why) {
    return std::invalid_argument(file + ": " + why + "; expected a record as `heatkeep report trace` writes it");
  };
  // Read as strictly as any file; kept in its own order, because that is what was digested.
  const auto record = ReadFileJson<nlohmann::ordered_json>(bytes, file, "a record as `heatkeep report trace` writes it", kDeepestRecord);
  if (!record.is_object() || !record.contains("proof") || !record["proof"].is_object()) throw bad("it has no proof");
  const auto& proof = record["proof"];
  if (!proof.contains("digest") || !proof["digest"].is_string() || !proof.contains("ends") || !proof["ends"].is_array())
    throw bad("its proof names no digest and no chains");
  for (const auto& end : proof["ends"])
    if (!end.is_array() || end.size() != 4 || !end[0].is_string() || !end[1].is_number_integer() || !end[2].is_number_integer() ||
        !end[3].is_string())
      throw bad("a chain of its proof is not [chain, id, seq, hash]");
  return {{proof["digest"].get<std::string>()}, Sha256Hex(RecordSays(record)), proof["ends"].dump()};
}

}  // namespace heatkeep::command
