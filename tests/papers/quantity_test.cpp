// Reckoned quantities with the worked values of tests/reference/formulae.csv: F01 CEV (EN 10025-2:2019 7.2.3, seen), F02 CET
// (EN 1011-2 Annex C, from memory), F04 PREN (from memory). Pcm by its formula (F03, from memory), reckoned here by hand.
#include <gtest/gtest.h>

#include "client/papers/analysis_text.h"
#include "client/papers/verdict.h"

namespace heatkeep::papers {
namespace {

std::string Value(const char* what, const char* analysis) {
  const Reckoned r = Reckon(what, ReadAnalysis(analysis), {});
  if (!r.missing.empty()) return "missing " + r.missing.front();
  return ValueText(r.known);
}
Fraction Exact(const char* what, const char* analysis) { return Reckon(what, ReadAnalysis(analysis), {}).known; }

constexpr const char* kFirst = "C=.18 Mn=1.45 Cr=.08 Mo=.02 V=0 Ni=.07 Cu=.22";

TEST(Reckoned, CarbonEquivalentAsWorked) {
  EXPECT_EQ(RoundToPlaces(Exact("CEV", kFirst), 4, Tie::HalfEven), 461'000);
  EXPECT_EQ(RoundToPlaces(Exact("CEV", "C=.16 Mn=1.42 Cr=.06 Mo=.01 Ni=.06 Cu=.20 V=0"), 4, Tie::HalfEven), 428'000);
  EXPECT_EQ(Value("CEV", "C=.16 Mn=1.42 Cr=.06 Mo=.01 Ni=.06 Cu=.20"), "missing V");
}

TEST(Reckoned, CetAsWorked) { EXPECT_EQ(Exact("CET", kFirst), (Fraction{343'750, 1})); }

TEST(Reckoned, PrenAsWorked) {
  EXPECT_EQ(Value("PREN", "Cr=22.0 Mo=3.0 N=0.14"), "34.14");
  EXPECT_EQ(Exact("PREN", "Cr=22.5 Mo=3.2 N=0.17"), (Fraction{35'780'000, 1}));
  EXPECT_EQ(RoundToPlaces(Exact("PREN", "Cr=16.6 Mo=2.04 N=0.05"), 2, Tie::HalfAway), 24'130'000);
  EXPECT_EQ(Exact("PREW", "Cr=22.0 Mo=3.0 N=0.14 W=2"), (Fraction{37'440'000, 1}));
}

TEST(Reckoned, PcmByItsFormula) {
  // 0.06 + 0.30/30 + (1.20 + 0.20 + 0.10)/20 + 0.30/60 + 0.15/15 + 0.05/10 + 5 x 0.0002
  EXPECT_EQ(Value("Pcm", "C=0.06 Si=0.30 Mn=1.20 Cu=0.20 Cr=0.10 Ni=0.30 Mo=0.15 V=0.05 B=0.0002"), "0.166");
}

TEST(Reckoned, SumsWithCountsAndMinus) {
  EXPECT_EQ(Value("Cr+Mo+Ni", "Cr=0.3 Mo=0.05 Ni=0.3"), "0.65");
  EXPECT_EQ(Value("Ti-5C", "Ti=0.40 C=0.05"), "0.15");
  EXPECT_EQ(Value("Ti-5C", "Ti=0.20 C=0.05"), "-0.05");
  EXPECT_FALSE(Reckon("Ti-5C", ReadAnalysis("Ti=0.2"), {}).grows);
  for (const char* wrong : {"", "Xx", "Cr+", "+Cr", "Cr Mo", "each other but", "CEV+C", "5"})
    EXPECT_THROW(CheckWhat(wrong), BadText) << wrong;
}

TEST(AnalysisText, RefusesWhatCannotBeMeant) {
  const auto words = [](const char* text) {
    try {
      ReadAnalysis(text);
    } catch (const BadText& e) { return std::string(e.what()); }
    return std::string("was read");
  };
  EXPECT_EQ(words("C=0.41 Xx=1"), "unknown element \"Xx\"; expected a chemical symbol as C, Mn or Cr");
  EXPECT_EQ(words("MN=1"), "unknown element \"MN\"; expected the symbol Mn");
  EXPECT_EQ(words("C=0.41 C=0.41"), "C stands twice; expected each element once");
  EXPECT_EQ(words("C=0,41"), "C: a comma in \"0,41\"; expected a decimal point, as 0.41");
  EXPECT_EQ(words("C=101"), "C: \"101\" % is more than all of it; expected mass %, 0 to 100");
  EXPECT_EQ(words("C=-0.1"), "C: \"-0.1\" is negative; expected mass %, 0 to 100");
  EXPECT_EQ(words("Fe=99 Ni=3"), "the elements add up to 102 %; expected mass % that add up to 100 or less");
  for (const char* text : {"", "C", "C=", "=1", "C=nan", "C=inf", "C=1e-2", "C=0.1.2", "C=0.0000001", "0.41"})
    EXPECT_NE(words(text), "was read") << text;
  EXPECT_EQ(ReadAnalysis("C=0.41;Mn=0.86 ; P=0.011").size(), 3u);
}

}  // namespace
}  // namespace heatkeep::papers
