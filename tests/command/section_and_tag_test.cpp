// The two commands that need no book.
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <sstream>

#include "client/command/section_command.h"
#include "client/command/tag_command.h"

namespace heatkeep::command {
namespace {

struct Ran {
  int code = 0;
  std::string out, err;
};

Ran Section(const std::string& words, const std::string& grade = "", const std::string& length = "", bool json = false) {
  std::ostringstream out, err;
  const int code = RunSection({words, grade, length, json, HEATKEEP_SEED_REFERENCE "/grades.csv"}, out, err);
  return {code, out.str(), err.str()};
}

Ran Tag(const std::string& text, bool json = false) {
  std::ostringstream out, err;
  const int code = RunTagCheck(text, json, out, err);
  return {code, out.str(), err.str()};
}

// 15.413 kg/m for round 50: printed by every table of steel bar at 7.85 kg/dm3 (EN 10060 prints 15.4).
TEST(SectionCommand, SaysThatItTookSteelWhenNoGradeIsGiven) {
  const Ran ran = Section("round 50");
  EXPECT_EQ(ran.code, 0);
  EXPECT_EQ(ran.out,
            "section   round 50\n"
            "density   7850 kg/m3  (steel: no grade is given)\n"
            "area      1 963.495408 mm2\n"
            "mass      15.413439 kg/m\n");
}

TEST(SectionCommand, TakesTheDensityOfTheGrade) {
  const auto j = nlohmann::json::parse(Section("round 50", "1.4404", "6 m", true).out);
  EXPECT_EQ(j.at("density_kg_m3"), 8000);
  EXPECT_EQ(j.at("section"), "round 50");
  EXPECT_EQ(j.at("length_nm"), 6'000'000'000);
  EXPECT_DOUBLE_EQ(j.at("area_mm2"), 1963.495408);
  EXPECT_DOUBLE_EQ(j.at("mass_kg_per_m"), 15.707963264);
  EXPECT_DOUBLE_EQ(j.at("mass_kg"), 94.248);
  EXPECT_EQ(j.size(), 7U);
  EXPECT_EQ(nlohmann::json::parse(Section("round 50", "", "", true).out).size(), 4U);
}

// EN 10219-2: corner radii of 10 and 5 for a wall of 5 (cold formed); EN 10056-1 prints 15.0 kg/m for 100x100x10.
TEST(SectionCommand, KnowsBoxesAnglesChannelsAndBeams) {
  const auto j = nlohmann::json::parse(Section("box 100x60x5 cold", "S355J2", "6m", true).out);
  EXPECT_EQ(j.at("section"), "box 100x60x5 cold");
  EXPECT_DOUBLE_EQ(j.at("area_mm2"), 1435.619449);  // 2 x 5 (160 - 10) - (4 - pi)(100 - 25)
  EXPECT_DOUBLE_EQ(j.at("mass_kg"), 67.618);
  EXPECT_NE(Section("angle 100x100x10").out.find("mass      15.036293 kg/m"), std::string::npos) << Section("angle 100x100x10").out;
  EXPECT_NE(Section("beam ipe 100").out.find("section   beam IPE 100\n"), std::string::npos);
  EXPECT_EQ(Section("box 100x60x5").code, 2);
}

TEST(SectionCommand, RefusesInWords) {
  const Ran grade = Section("round 50", "42CrMo");
  EXPECT_EQ(grade.code, 2);
  EXPECT_EQ(grade.out, "");
  EXPECT_EQ(grade.err, "heatkeep: unknown grade \"42CrMo\"; expected perhaps 42CrMo4\n");
  EXPECT_EQ(Section("angle 50x5").code, 2);
  EXPECT_EQ(Section("round 50", "", "1,100").code, 2);
  EXPECT_EQ(Section("round 50", "", "0").err, "heatkeep: \"0\" is no length; expected a length over zero\n");
}

TEST(TagCommand, SaysWhetherTheCheckCharacterIsRight) {
  EXPECT_EQ(Tag("a-004711-z").code, 0);
  EXPECT_EQ(Tag("a-004711-z").out, "A004711Z: the check character is right\n");
  EXPECT_EQ(Tag("A004711K").code, 1);
  EXPECT_EQ(Tag("A004711K").out, "A004711K: the check character is wrong; expected Z\n");
  EXPECT_EQ(Tag("A004711K", true).code, 1);
  EXPECT_EQ(nlohmann::json::parse(Tag("A004711K", true).out),
            (nlohmann::json{{"tag", "A004711K"}, {"valid", false}, {"is_tag", true}, {"expected_check_character", "Z"}}));
}

// A1-2425G-ABC1234002-M: published example of ISO/IEC 7064 MOD 37,36, from memory.
TEST(TagCommand, ChecksAnythingButSaysWhatIsNoTag) {
  EXPECT_EQ(Tag("A1-2425G-ABC1234002-M").code, 0);
  EXPECT_EQ(Tag("A1-2425G-ABC1234002-M").out,
            "A12425GABC1234002M: the check character is right (not built like a tag: a letter, six digits and a check "
            "character)\n");
  for (const char* text : {"", "A", "A_1", "A00471\u00C4"}) {
    EXPECT_EQ(Tag(text).code, 2) << text;
    EXPECT_NE(Tag(text).err, "") << text;
  }
}

}  // namespace
}  // namespace heatkeep::command
