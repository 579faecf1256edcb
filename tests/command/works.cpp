#include "tests/command/works.h"

#include <cstdlib>
#include <fstream>
#include <sstream>

#include "client/command/command_line.h"

namespace heatkeep::command {
namespace {

constexpr const char* kShop = R"json({
  "settings": {"lift_limit_g": 25000, "heat_read_back": "no"},
  "parties": [{"name": "Vandrek", "mill": true, "supplier": true}, {"name": "Kestholm", "mill": true, "supplier": true},
              {"name": "Pallant", "customer": true}, {"name": "Drewe", "customer": true}, {"name": "Ister", "customer": true}],
  "sites": [{"site": "main", "letter": "A", "offline_letter": "Q"}],
  "places": [{"place": "B1-1", "site": "main", "kind": "rack", "walk": 1}, {"place": "B1-2", "site": "main", "kind": "rack", "walk": 2},
             {"place": "GATE", "site": "main", "kind": "gate"}, {"place": "QUAR", "site": "main", "kind": "quarantine"},
             {"place": "SAW-1", "site": "main", "kind": "saw"}, {"place": "SAW-2", "site": "main", "kind": "saw"}],
  "saws": [{"saw": "1", "place": "SAW-1", "max_section": "260 mm", "band": "34 x 1.1", "kerf": "2 mm", "trim": "10 mm", "grip": "60 mm",
            "grip_bundle": "120 mm"},
           {"saw": "2", "place": "SAW-2", "max_section": "500 mm", "band": "54 x 1.6", "kerf": "2 mm", "trim": "10 mm", "grip": "60 mm",
            "grip_bundle": "120 mm"}],
  "keep": [{"keep": "150 mm"}, {"grade": "X2CrNiMo17-12-2", "keep": "600 mm"}]
})json";

std::filesystem::path FreshFolder() {
  std::string made = (std::filesystem::temp_directory_path() / "heatkeep-works-XXXXXX").string();
  if (!mkdtemp(made.data())) throw std::runtime_error(made + " cannot be made");
  return made;
}

}  // namespace

std::ostream& operator<<(std::ostream& out, const Ran& ran) {
  return out << "exit " << ran.code << "\nout: " << ran.out << "\nerr: " << ran.err;
}

Ran Heatkeep(const Words& words) {
  std::vector<const char*> argv{"heatkeep"};
  for (const std::string& word : words) argv.push_back(word.c_str());
  std::istringstream in;
  std::ostringstream out, err;
  const int code = RunCommandLine(static_cast<int>(argv.size()), argv.data(), in, out, err);
  return {code, out.str(), err.str()};
}

bool Has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

Works::Works() : admin(book.Admin()), folder_(FreshFolder()) {
  const Ran grades = As("owner", {"grades", "add", HEATKEEP_SEED "/reference/grades.csv"});
  EXPECT_EQ(grades.code, 0) << grades;
  const Ran shop = As("owner", {"shop", "set", File("shop.json", kShop)});
  EXPECT_EQ(shop.code, 0) << shop;
}

Works::~Works() {
  std::error_code ignored;
  std::filesystem::remove_all(folder_, ignored);
}

Ran Works::As(const std::string& who, const Words& words) const {
  Words all{"--book", book.Conninfo(who)};
  all.insert(all.end(), words.begin(), words.end());
  return Heatkeep(all);
}

Json Works::Asked(const std::string& who, Words words) const {
  words.push_back("--json");
  const Ran ran = As(who, words);
  EXPECT_EQ(ran.code, 0) << ran;
  return Json::parse(ran.out);
}

std::string Works::File(const std::string& name, const std::string& text) const {
  const std::string path = PathOf(name);
  std::ofstream(path, std::ios::binary) << text;
  return path;
}

void Works::TakeIn(const std::string& rows) {
  static int files = 0;
  const std::string name = "opening_" + std::to_string(++files) + ".csv";
  const Ran ran = As("clerk", {"opening", File(name, "old_tag,kind,mill,heat,grade,section,length,ends,papers,owner,doubt\n" + rows)});
  ASSERT_EQ(ran.code, 0) << ran;
}

void Works::Certify(const std::string& rows) {
  std::string dated;
  for (std::size_t at = 0, end = rows.find('\n'); end != std::string::npos; at = end + 1, end = rows.find('\n', at))
    dated += rows.substr(at, end - at) + ",2026-01-05\n";
  const Ran ran = As("quality", {"certificate", "add", File("certificates.csv", "number,type,issuer,heat,section,grade,issued\n" + dated)});
  ASSERT_EQ(ran.code, 0) << ran;
}

void Works::Want(const std::string& list, const std::string& rows) {
  const std::string head = "order,line,customer,section,grade,length,quantity,papers,one_heat,owner,tolerance\n";
  const Ran ran = As("planner", {"cutlist", "add", File(list + ".csv", head + rows)});
  ASSERT_EQ(ran.code, 0) << ran;
}

std::int64_t Works::Plan(const std::string& list, const Words& more) {
  const std::int64_t before = Number("select coalesce(max(plan_id), 0) as n from book.plan");
  Words words{"allocate", list, "--seconds", "2"};
  words.insert(words.end(), more.begin(), more.end());
  const Ran ran = As("planner", words);
  EXPECT_TRUE(ran.code == 0 || ran.code == 3) << ran;
  const std::int64_t after = Number("select coalesce(max(plan_id), 0) as n from book.plan");
  return after > before ? after : 0;
}

std::string Works::TagOf(const std::string& old_tag) { return Word("select tag as w from book.piece where old_tag = $1", {old_tag}); }
std::int64_t Works::Number(const std::string& sql, const std::vector<Param>& params) { return admin.Execute(sql, params).Only().Int("n"); }
std::string Works::Word(const std::string& sql, const std::vector<Param>& params) {
  return admin.Execute(sql, params).Only().OptionalText("w").value_or("");
}

std::int64_t Works::Balance(const std::string& heat, const std::string& name) const {
  const Ran ran = As("quality", {"report", "balance", heat});
  EXPECT_EQ(ran.code, 0) << ran;
  const Json balance = Json::parse(ran.out)["balance"];
  EXPECT_EQ(balance["difference_nm"], 0) << ran.out;
  for (const Json& c : balance["classes"])
    if (c["name"] == name) return c["length_nm"];
  return 0;
}

std::string Works::Broken() {
  return Word(
      "select string_agg(\"check\" || ': ' || detail, '; ') as w from api.verify_book() where not ok"
      " and \"check\" <> 'the server keeps what it says'");
}

}  // namespace heatkeep::command
