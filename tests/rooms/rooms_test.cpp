// Who may include whom. The one place where the arrows of DEVELOPERS.md are written for the machine.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <map>
#include <regex>
#include <set>
#include <string>
#include <vector>

namespace {

namespace fs = std::filesystem;

// Room -> rooms it may include (itself always).
const std::map<std::string, std::set<std::string>>& Arrows() {
  static const std::map<std::string, std::set<std::string>> arrows{
      {"schema/terms", {}},
      {"reports", {"schema/terms"}},
      {"client/allocator", {"schema/terms"}},
      {"client/year", {"schema/terms", "client/allocator"}},
      {"client/intake", {"schema/terms"}},
      {"client/papers", {"schema/terms"}},
      {"client/phrases", {}},
      {"client/queue", {"schema/terms"}},
      {"client/gateway", {"schema/terms", "client/allocator"}},
      {"client/book", {"schema/terms", "client/gateway"}},
      {"client/planning", {"schema/terms", "client/gateway", "client/allocator", "client/year"}},
      {"client/records", {"schema/terms", "client/gateway", "reports"}},
      {"client/incoming", {"schema/terms", "client/gateway", "client/intake"}},
      {"client/models",
       {"client/records", "client/incoming", "schema/terms", "client/gateway", "client/queue", "client/planning", "reports"}},
      {"client/stations", {"schema/terms", "client/models", "client/gateway", "reports"}},
      {"client/command",
       {"schema/terms", "client/book", "client/gateway", "client/incoming", "client/intake", "client/papers", "client/allocator",
        "client/planning", "client/records", "client/year", "reports", "client/queue"}},
      {"client/app", {"client/command", "client/book", "client/models", "client/stations"}},
      {"seed/scenario", {}},
  };
  return arrows;
}

// What comes from outside -> the rooms that may use it.
const std::vector<std::pair<std::regex, std::set<std::string>>>& Outside() {
  static const std::vector<std::pair<std::regex, std::set<std::string>>> outside{
      {std::regex("libpq-fe\\.h|postgres.*"), {"client/gateway"}},
      {std::regex("QXmlStream\\w+|QByteArray"), {"reports", "client/intake", "client/models", "client/stations", "client/app"}},
      {std::regex("(?!QXmlStream|QByteArray)Q[A-Z]\\w+|Qt\\w+/.*"), {"reports", "client/models", "client/stations", "client/app"}},
      {std::regex("Clp.*|Cbc.*|Osi.*|Coin.*|coin/.*"), {"client/allocator"}},
      {std::regex("CLI/.*"), {"client/command"}},
      {std::regex("xlsxwriter\\.h|qpdf/.*"), {"reports"}},
      {std::regex("zip\\.h"), {"client/intake"}},
      {std::regex("zint\\.h"), {"reports"}},
      {std::regex("nlohmann/.*"),
       {"client/gateway", "client/incoming", "client/queue", "client/command", "client/models", "client/planning", "client/records",
        "client/stations", "reports"}},
  };
  return outside;
}

std::string RoomOf(const std::string& path) {
  for (const auto& [room, may] : Arrows()) {
    if (path.starts_with(room + "/")) return room;
  }
  return "";
}

struct Include {
  std::string file, name;
  bool ours = false;
};

std::vector<fs::path> Sources() {
  std::vector<fs::path> files;
  for (const char* top : {"schema", "reports", "client", "seed", "tests"}) {
    for (const auto& entry : fs::recursive_directory_iterator(fs::path(HEATKEEP_ROOT) / top)) {
      const std::string ending = entry.path().extension().string();
      if (entry.is_regular_file() && (ending == ".h" || ending == ".cpp" || ending == ".sql")) files.push_back(entry.path());
    }
  }
  return files;
}

std::string Relative(const fs::path& path) { return fs::relative(path, HEATKEEP_ROOT).generic_string(); }

std::vector<Include> IncludesOf(const fs::path& path) {
  static const std::regex include("^\\s*#\\s*include\\s+([<\"])([^>\"]+)[>\"]");
  std::vector<Include> found;
  std::ifstream in(path);
  std::smatch m;
  for (std::string line; std::getline(in, line);) {
    if (std::regex_search(line, m, include)) found.push_back({Relative(path), m[2], m[1] == "\""});
  }
  return found;
}

std::string Wrong(const Include& include) {
  const std::string from = RoomOf(include.file);
  if (from.empty()) return include.file.starts_with("tests/") ? "" : include.file + " is in no room";  // tests see all
  if (include.ours) {
    const std::string to = from == "seed/scenario" ? from : RoomOf(include.name);
    if (to.empty()) return include.file + " includes \"" + include.name + "\", which is in no room";
    if (to != from && !Arrows().at(from).contains(to)) return include.file + ": no arrow from " + from + " to " + to;
    return "";
  }
  for (const auto& [pattern, rooms] : Outside()) {
    if (std::regex_match(include.name, pattern) && !rooms.contains(from))
      return include.file + ": " + from + " may not use <" + include.name + ">";
  }
  return "";
}

TEST(Rooms, IncludeOnlyAlongTheArrowsAndUseEveryArrow) {
  std::map<std::string, std::set<std::string>> used;
  for (const fs::path& path : Sources()) {
    for (const Include& include : IncludesOf(path)) {
      EXPECT_EQ(Wrong(include), "");
      const std::string from = RoomOf(include.file), to = RoomOf(include.name);
      if (!from.empty() && !to.empty() && to != from) used[from].insert(to);
    }
  }
  for (const auto& [room, may] : Arrows()) EXPECT_EQ(used[room], may) << room;
}

// heatkeep::gateway in the CMakeLists.txt of a room: an arrow, too.
TEST(Rooms, LinkOnlyAlongTheArrows) {
  static const std::regex linked("heatkeep::(\\w+)");
  for (const auto& [room, may] : Arrows()) {
    std::ifstream in(fs::path(HEATKEEP_ROOT) / room / "CMakeLists.txt");
    const std::string text(std::istreambuf_iterator<char>(in), {});
    EXPECT_NE(text, "") << room;
    for (std::sregex_iterator at(text.begin(), text.end(), linked), end; at != end; ++at) {
      const std::string name = (*at)[1];
      const std::string to = name == "terms" ? "schema/terms" : name == "reports" ? name : "client/" + name;
      EXPECT_TRUE(to == room || may.contains(to)) << room << " links heatkeep::" << name;
    }
  }
}

TEST(Rooms, NoticeAForbiddenArrow) {
  EXPECT_NE(Wrong({"client/allocator/allocate.cpp", "client/gateway/deeds.h", true}), "");
  EXPECT_NE(Wrong({"schema/terms/length.cpp", "reports/paper.h", true}), "");
  EXPECT_NE(Wrong({"client/intake/csv.cpp", "libpq-fe.h", false}), "");
  EXPECT_NE(Wrong({"client/command/stock_command.cpp", "QWidget", false}), "");
  EXPECT_NE(Wrong({"client/intake/xml_part.h", "QWidget", false}), "");
  EXPECT_NE(Wrong({"client/allocator/allocate.cpp", "QByteArray", false}), "");
  EXPECT_NE(Wrong({"client/models/saw_work.h", "client/stations/station.h", true}), "");
  EXPECT_NE(Wrong({"client/elsewhere/new.h", "schema/terms/length.h", true}), "");
  EXPECT_EQ(Wrong({"client/intake/xml_part.h", "QXmlStreamReader", false}), "");
  EXPECT_EQ(Wrong({"client/command/stock_command.cpp", "client/gateway/deeds.h", true}), "");
}

TEST(Rooms, HaveNoCycle) {
  std::set<std::string> done;
  for (std::size_t before = SIZE_MAX; before != done.size();) {
    before = done.size();
    for (const auto& [room, may] : Arrows()) {
      if (std::includes(done.begin(), done.end(), may.begin(), may.end())) done.insert(room);
    }
  }
  EXPECT_EQ(done.size(), Arrows().size());
}

TEST(Rooms, HoldFilesOfAtMostFiveHundredLines) {
  for (const fs::path& path : Sources()) {
    std::ifstream in(path);
    const auto lines = std::count(std::istreambuf_iterator<char>(in), {}, '\n');
    EXPECT_LE(lines, path.extension() == ".sql" ? 300 : 500) << Relative(path);
  }
}

TEST(Rooms, KeepSqlTextInTheGatewayAndTheBook) {
  static const std::regex sql("\"(select|insert|update|delete|create|drop|alter) ", std::regex::icase);
  for (const fs::path& path : Sources()) {
    const std::string room = RoomOf(Relative(path));
    if (room.empty() || path.extension() == ".sql" || room == "client/gateway" || room == "client/book") continue;
    std::ifstream in(path);
    for (std::string line; std::getline(in, line);) EXPECT_FALSE(std::regex_search(line, sql)) << Relative(path) << ": " << line;
  }
}

}  // namespace
