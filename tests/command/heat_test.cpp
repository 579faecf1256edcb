// `heatkeep heat check`: cases of tests/reference/heat_analysis_cases.csv (constructed, limits of ASTM A29).
#include "tests/command/works.h"

namespace heatkeep::command {
namespace {

Ran Check(Words more) {
  Words words{"heat", "check"};
  words.insert(words.end(), more.begin(), more.end());
  return Heatkeep(words);
}

TEST(HeatCheck, SaysValueLimitsAndVerdictOfEveryElement) {
  const Ran ran = Check({"--grade", "4140", "--analysis", "C=0.434 Mn=0.86 P=0.011 S=0.022 Si=0.26 Cr=0.98 Mo=0.19", "--json"});
  EXPECT_EQ(ran.code, 1) << ran;
  const Json j = Json::parse(ran.out);
  const Json& carbon = j.at("elements").at(0);
  EXPECT_EQ(carbon.at("element"), "C");
  EXPECT_EQ(carbon.at("value"), 0.434);
  EXPECT_EQ(carbon.at("min"), 0.38);
  EXPECT_EQ(carbon.at("max"), 0.43);
  EXPECT_EQ(carbon.at("verdict"), "high");
  EXPECT_EQ(carbon.at("source"), "ASTM A29/A29M Table 2");
  EXPECT_EQ(j.at("overall"), "violates");
  EXPECT_TRUE(Has(j.at("states"), "replaces neither the standard nor the judgement"));
}

TEST(HeatCheck, TheRoundingMethodShowsWhatItCompared) {
  const Ran ran = Check(
      {"--grade", "G41400", "--method", "rounding", "--analysis", "C=0.434 Mn=0.86 P=0.011 S=0.022 Si=0.26 Cr=0.98 Mo=0.19", "--json"});
  EXPECT_EQ(ran.code, 0) << ran;
  const Json j = Json::parse(ran.out);
  EXPECT_EQ(j.at("elements").at(0).at("rounded"), 0.43);
  EXPECT_EQ(j.at("overall"), "conforms");
  EXPECT_EQ(j.at("meets").at(0), "4140");
}

TEST(HeatCheck, SpeaksInWords) {
  const Ran ran = Check({"--grade", "1018", "--analysis", "C=0.25 Mn=0.74 P=0.009"});
  EXPECT_EQ(ran.code, 1);
  EXPECT_TRUE(Has(ran.out, "C 0.25 %, at most 0.20\nS: not reported\nviolates\n")) << ran;
}

TEST(HeatCheck, RefusesWhatCannotBeMeant) {
  const Words cases[]{{"--grade", "4140", "--analysis", "Xx=1"},
                      {"--grade", "4140", "--analysis", "C=0.4 C=0.4"},
                      {"--grade", "4140", "--analysis", "C=0,41"},
                      {"--grade", "4140", "--analysis", "C=101"},
                      {"--grade", "4140", "--analysis", "C=-0.1"},
                      {"--grade", "4140", "--analysis", "C=nan"},
                      {"--grade", "4140", "--analysis", ""},
                      {"--grade", "414O", "--analysis", "C=0.4"},
                      {"--grade", "25CrMo4", "--analysis", "C=0.4"},
                      {"--grade", "4140", "--analysis", "C=0.4", "--method", "kind"},
                      {"--grade", "4140", "--analysis", "C=0.4", "--rm", "1,0"},
                      {"--grade", "4140", "--analysis", "C=0.4", "--size", "0"},
                      {"--grade", "4140", "--analysis", "C=0.4", "--analysis", "C=0.4"},
                      {"--grade", "4140"}};
  for (const Words& words : cases) {
    const Ran ran = Check(words);
    EXPECT_EQ(ran.code, 2) << words.back();
    EXPECT_EQ(ran.out, "") << words.back();
    EXPECT_NE(ran.err, "") << words.back();
  }
}

}  // namespace
}  // namespace heatkeep::command
