#include "client/command/record_check.h"

#include <cctype>
#include <filesystem>
#include <nlohmann/json.hpp>
#include <ostream>
#include <stdexcept>
#include <vector>

#include "client/command/record_said.h"
#include "client/gateway/records.h"
#include "client/intake/file_bytes.h"

namespace heatkeep::command {
namespace {

using Json = nlohmann::json;

Said FromWords(const std::string& words) {
  std::error_code none;
  if (std::filesystem::is_regular_file(words, none)) {
    const std::string bytes = intake::FileBytes(words);
    if (bytes.starts_with('{')) return SaidByJson(words, bytes);
    if (const std::size_t at = bytes.rfind("\n%record "); bytes.starts_with("%PDF") && at != std::string::npos)
      return {DigestsIn(bytes.substr(at)), {}, {}};
    const std::vector<std::string> digests = DigestsIn(bytes);
    if (digests.empty())
      throw std::invalid_argument(words + ": no digest of 64 characters is in it; expected a record's JSON, PDF or text");
    return {digests, {}, {}};
  }
  std::string typed;
  for (const char c : words)
    if (std::isspace(static_cast<unsigned char>(c)) == 0) typed += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
  if (typed.size() != kDigestDigits || typed.find_first_not_of("0123456789abcdef") != std::string::npos)
    throw std::invalid_argument(
        "\"" + words.substr(0, 80) +
        "\" is neither a file nor a digest; expected a record's file, or the 64 characters 0-9 and a-f from its foot");
  return {{typed}, {}, {}};
}

std::string Word(const Json& of, const char* key) { return of.value(key, Json()).is_string() ? of[key].get<std::string>() : ""; }

void Tell(std::ostream& out, const Json& a) {
  const std::string verdict = Word(a, "verdict");
  std::string what = Word(a, "kind") + " " + Word(a, "subject") + (Word(a, "mill").empty() ? "" : " of " + Word(a, "mill"));
  if (a.value("kept", false) && !Word(a, "kind").empty())
    out << "record of " << what << ", first printed " << Word(a, "printed_at") << " by " << Word(a, "printed_by") << '\n';
  if (verdict == "unchanged") {
    out << "UNCHANGED: the " << a["happenings"] << " happenings in " << a["chains"]
        << " chains that it stands on are in the book as they were\n";
    if (a["later"].empty()) out << "nothing has happened to them since\n";
    else {
      out << "since then, and so not on the record:";
      std::string between = " ";
      for (const auto& [deed, count] : a["later"].items()) {
        out << between << deed << ' ' << count;
        between = ", ";
      }
      out << '\n';
    }
  } else if (verdict == "unknown") {
    out << "UNKNOWN: this book has kept no record with the digest " << Word(a, "digest")
        << "\n  it was mistyped, printed from another book, or its row was taken out\n";
  } else {
    out << (verdict == "altered" ? "ALTERED: " : "CHANGED: ") << "this record does not agree with the book\n";
  }
  for (const Json& wrong : a["wrong"]) out << "  " << wrong.get<std::string>() << '\n';
  out << "Claimed: only that the happenings the record was printed from are unchanged"
      << (a.value("with_file", false) ? ", and that the file says what was printed.\n" : ".\n")
      << "Not claimed: that what was entered was true; that a paper's words were not altered (compare them, or check its JSON); that today's\n"
         "tables agree with the happenings (heatkeep book verify); nor anything against one who changes the book and every paper and seal kept outside it.\n";
}

}  // namespace

int RunRecordCheck(const BookCall& call, const RecordCheckOptions& options) {
  return WithBook(call, [&](Connection& connection) {
    const Said said = FromWords(options.record);
    Json answer;
    for (const std::string& digest : said.digests) {
      answer = CheckRecord(connection, digest, said.content, said.ends);
      if (answer["verdict"] != "unknown") break;
    }
    answer["with_file"] = said.ends.has_value();
    if (options.json) call.out << answer.dump(2) << '\n';
    else Tell(call.out, answer);
    return answer["verdict"] == "unchanged" ? 0 : 1;
  });
}

}  // namespace heatkeep::command
