// heatkeep-files(5) against the readers and writers themselves: every column, every key of a JSON file that is read (as it is named where
// another is refused) or written.
#include "client/command/files_page.h"

#include <cstdio>

#include "client/command/man_page.h"
#include "client/command/rules_file.h"
#include "client/command/shop_file.h"
#include "client/intake/certificates_file.h"
#include "client/intake/cuts_file.h"
#include "client/intake/delivery_file.h"
#include "client/intake/grades_file.h"
#include "client/intake/limits_file.h"
#include "client/intake/opening_file.h"
#include "client/intake/stock_file.h"
#include "schema/terms/bad_text.h"
#include "tests/command/plan_files.h"

namespace heatkeep::command {
namespace {

// The page as words, without what makes them bold and the like.
std::string Page() {
  static const std::string page = [] {
    std::string text = FilesManPage({"0.1.0", "2026-11-26"}), words;
    for (std::size_t i = 0; i < text.size(); ++i) {
      if (text.compare(i, 2, "\\f") == 0) i += text[i + 2] == '(' ? 4U : 2U;
      else if (text[i] != '\\') words += text[i];
    }
    return words;
  }();
  return page;
}

bool Says(const std::string& word) {
  for (std::size_t at = Page().find(word); at != std::string::npos; at = Page().find(word, at + 1)) {
    const auto part = [](char c) { return std::isalnum(static_cast<unsigned char>(c)) || c == '_'; };
    if ((at == 0 || !part(Page()[at - 1])) && !part(Page()[at + word.size()])) return true;
  }
  return false;
}

TEST(FilesPage, IsSaidToBeGoodByGroff) {
  const std::filesystem::path file = std::filesystem::temp_directory_path() / ("heatkeep-files-" + std::to_string(::getpid()) + ".5");
  std::ofstream(file) << FilesManPage({"0.1.0", "2026-11-26"});
  FILE* pipe = popen(("groff -man -Tutf8 -ww -z " + file.string() + " 2>&1").c_str(), "r");
  std::string said;
  for (int c; pipe && (c = fgetc(pipe)) != EOF;) said += static_cast<char>(c);
  EXPECT_TRUE(pipe && pclose(pipe) == 0);
  EXPECT_EQ(said, "");
  std::filesystem::remove(file);
}

TEST(FilesPage, NamesEveryColumnThatIsReadAndSaysWhatIsInIt) {
  using namespace intake;
  for (const std::vector<Column>* columns : {&StockColumns(), &CutsColumns(), &DeliveryColumns(), &OpeningColumns(), &CertificatesColumns(),
                                             &GradesColumns(), &LimitsColumns(), &SumsColumns(), &MechanicalColumns(), &DeviationColumns()})
    for (const Column& column : *columns) {
      EXPECT_FALSE(column.says.empty()) << column.name;
      EXPECT_TRUE(column.says == "its content" || Says(std::string(column.name))) << column.name;
    }
}

// The names in "...; expected one of a, b, c".
std::vector<std::string> NamesExpected(const std::function<void()>& read) {
  std::vector<std::string> names;
  try {
    read();
    ADD_FAILURE() << "an unknown key was taken";
  } catch (const BadText& bad) {
    EXPECT_TRUE(bad.Expected().starts_with("one of ")) << bad.what();
    std::istringstream list(bad.Expected().substr(7));
    for (std::string name; std::getline(list >> std::ws, name, ',');) names.push_back(name);
  }
  return names;
}

TEST(FilesPage, NamesEveryKeyOfTheShopThatIsRead) {
  const auto shop = [](const char* part) { return Json{{part, {{{"zzz", 1}}}}}; };
  std::vector<std::vector<std::string>> all{NamesExpected([] { ReadShop("s.json", R"({"zzz": 1})"); })};
  for (const char* part : {"sites", "parties", "places", "saws"}) all.push_back(NamesExpected([&] { ShopPart({}, "s.json", shop(part)); }));
  for (const char* part : {"prices", "keep", "rates"}) all.push_back(NamesExpected([&] { RulesPart({}, "s.json", shop(part)); }));
  all.push_back(NamesExpected([&] { GradeStandins("s.json", shop("standins")); }));
  all.push_back(NamesExpected([&] { SectionStandins("s.json", shop("section_standins")); }));
  for (const std::vector<std::string>& names : all) {
    EXPECT_GE(names.size(), 3U);
    for (const std::string& name : names) EXPECT_TRUE(Says(name)) << name;
  }
}

TEST(FilesPage, NamesEveryKeyOfTheRulesAndItsSampleIsRead) {
  EXPECT_NO_THROW(ReadRulesFile(kRulesFileSample, "rules.json", {}));
  for (const char* text : {R"({"zzz": 1})", R"({"prices": [{"zzz": 1}]})", R"({"sawing": {"zzz": 1}})",
                           R"({"sawing": {"money_per_minute": 1, "rates": [{"zzz": 1}]}})", R"({"costs": {"zzz": 1}})",
                           R"({"grade_substitutes": [{"zzz": 1}]})", R"({"groups": [{"zzz": 1}]})"})
    for (const std::string& name : NamesExpected([&] { ReadRulesFile(text, "rules.json", {}); })) EXPECT_TRUE(Says(name)) << name;
}

void KeysOf(const Json& json, std::set<std::string>& keys) {
  for (const auto& [key, value] : json.items()) {
    if (json.is_object() && key.find_first_not_of("0123456789") != std::string::npos) keys.insert(key);
    if (value.is_structured()) KeysOf(value, keys);
  }
}

TEST_F(PlanCommand, WritesNoKeyThatThePageOfFilesDoesNotName) {
  PlanOptions options;
  options.aim = "least-money";
  options.rules = Put("rules.json", kRulesFileSample);
  options.buy = "6000mm=378.80,12000mm=750";
  options.price_of_one_heat = true;
  options.seconds = 1;
  ASSERT_EQ(
      Plan(
          "tag,kind,section,grade,heat,length,count,ends,place\nB1,bar,round 80,42CrMo4,K3317,6000mm,2,,R1\nD1,drop,round 80,42CrMo4,M2208,1900,1,,R2\n"
          "D2,drop,round 80,42CrMo4,M2208,2000,1,,R2\n",
          "order,line,section,grade,length,quantity,one_heat,priority\nA1,1,round 80,42CrMo4,240,9,H,1\nA1,2,round 80,42CrMo4,300,70,H,2\nA17,1,round 80,C45E,240,2,,1\n",
          options),
      3)
      << err_;
  std::set<std::string> keys;
  KeysOf(Read(), keys);
  EXPECT_GE(keys.size(), 40U);
  for (const std::string& key : keys) EXPECT_TRUE(Says(key)) << key;
}

}  // namespace
}  // namespace heatkeep::command
