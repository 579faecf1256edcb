#include "client/incoming/opening.h"

#include <algorithm>
#include <filesystem>
#include <set>

#include "client/gateway/readings.h"
#include "client/incoming/book_names.h"
#include "client/incoming/file_request.h"
#include "client/incoming/piece_json.h"
#include "client/intake/file_bytes.h"
#include "schema/terms/bad_text.h"

namespace heatkeep::incoming {
namespace {

Json LineOf(const intake::OpeningFileRow& row) {
  Json line = PieceJson(row);
  line["line"] = std::to_string(row.line_in_file);
  line["doubt_nm"] = row.doubt.nm;
  line["raw"] = row.raw;
  line["old_tag"] = row.old_tag;
  line["kind"] = intake::PieceKindText(row.kind);
  line["read_from"] = intake::ReadFromText(row.heat.empty() ? intake::ReadFrom::None : row.read_from.value_or(intake::ReadFrom::Tag));
  line["papers_state"] = row.papers == Papers::None ? "none" : "awaited";
  return line;
}

// Adds the words of `said` that the book does not know, each once.
class NewNames {
 public:
  explicit NewNames(const std::vector<std::string>& known) : seen_(known.begin(), known.end()) {}
  void Add(const std::string& said, std::vector<std::string>& to) {
    if (!said.empty() && seen_.insert(said).second) to.push_back(said);
  }

 private:
  std::set<std::string> seen_;
};

}  // namespace

OpeningLook LookAtOpening(Connection& connection, const TableFile& file) {
  OpeningLook look{file, intake::FileBytes(file.path), {}, {}, {}, {}, {}, {}};
  intake::ReadingOptions how = file.How();
  how.bad_lines = intake::BadLines::LeaveOut;
  auto read = intake::ReadOpeningFile(look.bytes, file.path, how);
  BookNames names(connection, file.path, read.facts);
  NewNames places(ReadNames(connection, "places", "place")), parties(ReadNames(connection, "parties", "name"));
  for (intake::OpeningFileRow& row : read.rows) {
    const std::size_t problems = names.problems().size();
    names.Party(row.line_in_file, "mill", row.mill);
    names.Party(row.line_in_file, "owner", row.owner);
    names.Grade(row.line_in_file, row.grade);
    names.Place(row.line_in_file, row.place);
    places.Add(row.place, look.new_places);
    parties.Add(row.mill, look.new_mills);
    parties.Add(row.owner, look.new_owners);
    if (!row.heat.empty() && row.mill.empty())
      names.Problem(row.line_in_file, "heat " + Quoted(row.heat) + " has no mill", "who made it, since two mills can use the same number");
    if (names.problems().size() > problems) continue;
    look.lines.push_back(LineOf(row));
    look.good.push_back(std::move(row));
  }
  look.problems = std::move(read.problems);
  look.problems.insert(look.problems.end(), names.problems().begin(), names.problems().end());
  std::ranges::stable_sort(look.problems, {}, &intake::FileProblem::line);
  look.warnings = std::move(read.warnings);
  return look;
}

Json BookOpening(Connection& connection, const OpeningLook& look) {
  const Json balance = {{"name", std::filesystem::path(look.file.path).filename().string()}, {"lines", look.lines}};
  return Deeds(connection).OpenBalance(RequestOfFile(connection, "opening", look.file.Part(), look.bytes), balance);
}

void EnterNames(Connection& connection, const RequestNumber& request, const OpeningLook& look) {
  Json shop = {{"parties", Json::array()}, {"sites", Json::array()}, {"places", Json::array()}, {"saws", Json::array()}};
  for (const std::string& mill : look.new_mills) shop["parties"].push_back({{"name", mill}, {"mill", true}});
  for (const std::string& owner : look.new_owners) shop["parties"].push_back({{"name", owner}, {"customer", true}});
  const std::vector<std::string> sites = ReadNames(connection, "places", "site");
  const std::string site = sites.empty() ? "Shop" : sites.front();
  if (sites.empty()) shop["sites"].push_back({{"site", site}, {"letter", "A"}, {"offline_letter", "B"}});
  for (const std::string& place : look.new_places) shop["places"].push_back({{"place", place}, {"site", site}, {"kind", "rack"}});
  Deeds(connection).DefineShop(request, shop);
}

}  // namespace heatkeep::incoming
