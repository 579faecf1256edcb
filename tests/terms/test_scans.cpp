// Envelope and control characters: ISO/IEC 15434, format 06; the message of the first test is the constructed example of the data
// identifiers S, 1T, 1P and 7Q of ANSI MH10.8.2 in that envelope, its bytes 5B 29 3E 1E 30 36 1D ... 1E 04.
#include <gtest/gtest.h>

#include <random>

#include "schema/terms/scan.h"

namespace heatkeep {
namespace {

using Fields = std::vector<std::pair<std::string, std::string>>;

const Fields kFields{{"S", "A000001D"}, {"1T", "A73H21"}, {"1P", "42CrMo4 round 60"}, {"7Q", "1480MM"}};
const std::string kMessage =
    "[)>\x1E"
    "06\x1D"
    "SA000001D\x1D"
    "1TA73H21\x1D"
    "1P42CrMo4 round 60\x1D"
    "7Q1480MM\x1E\x04";

std::string Replaced(std::string text, const std::string& from, const std::string& to) {
  for (std::size_t at = text.find(from); at != std::string::npos; at = text.find(from, at + to.size())) text.replace(at, from.size(), to);
  return text;
}

std::string Refused(const std::string& text) {
  try {
    ReadScan(text);
  } catch (const BadText& e) { return e.what(); }
  return "";
}

TEST(Scans, AreWrittenAndReadAsTheStandardsEnvelope) {
  EXPECT_EQ(WriteEnvelope(kFields), kMessage);
  const Scan scan = ReadScan(kMessage);
  EXPECT_EQ(scan.fields, kFields);
  EXPECT_TRUE(scan.whole);
  EXPECT_EQ(scan.Of("1T"), "A73H21");
  EXPECT_EQ(scan.Of("K"), std::nullopt);
  EXPECT_EQ(TagOfScan(kMessage), "A000001D");
}

TEST(Scans, AreReadHoweverTheScannerWritesTheControlCharactersOut) {
  for (const auto& [gs, rs, eot] :
       {std::tuple{"<GS>", "<RS>", "<EOT>"}, {"{GS}", "{RS}", "{EOT}"}, {"^]", "^^", "^D"}, {"\u241D", "\u241E", "\u2404"}}) {
    const std::string text = Replaced(Replaced(Replaced(kMessage, "\x1D", gs), "\x1E", rs), "\x04", eot);
    EXPECT_EQ(ReadScan(text).fields, kFields) << text;
    EXPECT_EQ(ReadScan("]d1" + text + "\r\n").fields, kFields) << text;
  }
  EXPECT_EQ(ReadScan(Replaced(kMessage, "\x1E", "")).Of("1T"), "A73H21");
}

TEST(Scans, WithoutControlCharactersGiveTheTagAndNothingGuessed) {
  const std::string bare = Replaced(Replaced(Replaced(kMessage, "\x1D", ""), "\x1E", ""), "\x04", "");
  EXPECT_EQ(bare, "[)>06SA000001D1TA73H211P42CrMo4 round 607Q1480MM");
  const Scan scan = ReadScan(bare);
  EXPECT_EQ(scan.fields, (Fields{{"S", "A000001D"}}));
  EXPECT_FALSE(scan.whole);
  EXPECT_EQ(TagOfScan(bare), "A000001D");
}

TEST(Scans, ThatBreakOffGiveNoPartOfAHeat) {
  const Scan scan = ReadScan(
      "[)>\x1E"
      "06\x1D"
      "SA000001D\x1D"
      "1TA73");
  EXPECT_EQ(scan.fields, (Fields{{"S", "A000001D"}}));
  EXPECT_FALSE(scan.whole);
  EXPECT_EQ(ReadScan("[)>\x1E"
                     "06\x1D"
                     "SA000001D")
                .Of("S"),
            "A000001D");
  EXPECT_NE(Refused("[)>\x1E"
                    "06\x1D"
                    "LB3-"),
            "");
}

TEST(Scans, OfATagAloneAreThatTag) {
  EXPECT_EQ(ReadScan("a000 001d").Of("S"), "A000001D");
  EXPECT_EQ(ReadScan("SA000001D").Of("S"), "A000001D");
  EXPECT_EQ(TagOfScan("OLD-7"), "OLD-7") << "what is no envelope stays as it was typed";
}

TEST(Scans, KeepAHeatByteForByte) {
  for (const std::string heat : {"00715", "O7715", "07715", "A \"7\"", "A'7", " lead", "trail ", "^]", "<GS>", "[)>06",
                                 "\xC3\x84\xC5\x81 7", "1T1T", "7Q5MM", "-", "a,b;c"}) {
    EXPECT_EQ(ReadScan(WriteEnvelope({{"S", "A000001D"}, {"1T", heat}})).Of("1T"), heat);
    // a reader that does not know the code's character set leaves its number as a character
    EXPECT_EQ(ReadScan(Replaced(WriteEnvelope({{"S", "A000001D"}, {"1T", heat}}), "\x1DS", "\x1D\x1AS")).Of("1T"), heat);
  }
}

TEST(Scans, ThatAreHostileAreRefusedInWords) {
  EXPECT_NE(Refused("[)>\x1E"
                    "05\x1D"
                    "21A1\x1E\x04")
                .find("format"),
            std::string::npos);
  EXPECT_NE(Refused("[)>").find("format"), std::string::npos);
  EXPECT_NE(Refused("[)>\x1E"
                    "06\x1D\x1E\x04")
                .find("without a data identifier"),
            std::string::npos);
  EXPECT_NE(Refused("[)>\x1E"
                    "06\x1E\x04"),
            "");
  EXPECT_NE(Refused("[)>06"), "");
  EXPECT_NE(Refused("[)>06SA000001E").find("no tag stands first"), std::string::npos);
  EXPECT_NE(Refused("[)>\x1E"
                    "06\x1D"
                    "SA000001E\x1E\x04")
                .find("check character"),
            std::string::npos);
  EXPECT_NE(Refused("[)>\x1E"
                    "06\x1D"
                    "1T\x1E\x04")
                .find("nothing behind"),
            std::string::npos);
  EXPECT_NE(Refused("[)>\x1E"
                    "06\x1D"
                    "1TA\x1D"
                    "1TB\x1E\x04")
                .find("comes twice"),
            std::string::npos);
  EXPECT_NE(Refused(kMessage + kMessage).find("control character"), std::string::npos);
  EXPECT_NE(Refused("[)>\x1E"
                    "06X"
                    "SA000001D\x1D"
                    "1TA\x1E\x04")
                .find("separator"),
            std::string::npos);
  EXPECT_NE(Refused(std::string(5000, '[')).find("4096"), std::string::npos);
  EXPECT_NE(Refused("").find("no tag"), std::string::npos);
  EXPECT_THROW(TagOfScan(WriteEnvelope({{"L", "B3-2"}})), BadText);
  EXPECT_EQ(PlaceOfScan(WriteEnvelope({{"L", "B3-2"}})), "B3-2");
  EXPECT_EQ(PlaceOfScan("B3-2"), "B3-2");
  EXPECT_THROW(WriteEnvelope({{"1T",
                               "A\x1D"
                               "B"}}),
               BadText);
  EXPECT_THROW(WriteEnvelope({{"1T", ""}}), BadText);
  EXPECT_THROW(WriteEnvelope({{"t", "A"}}), BadText);
}

TEST(Scans, OfRandomBytesAreReadOrRefusedNeverAnythingElse) {
  std::mt19937 random(7);
  const std::string alphabet =
      "[)>\x1E\x1D\x04"
      "06SA01D1T7Q^]<GS>{}\x1A \xC3\x84";
  int read = 0, refused = 0;
  for (int i = 0; i < 20000; ++i) {
    std::string text = random() % 2 ? "[)>\x1E"
                                      "06\x1D"
                                    : "[)>";
    for (auto n = random() % 40; n > 0; --n) text += alphabet[random() % alphabet.size()];
    if (random() % 2) text += "\x1E\x04";
    try {
      const Scan scan = ReadScan(text);
      ++read;
      ASSERT_FALSE(scan.fields.empty());
      for (const auto& [identifier, data] : scan.fields) ASSERT_FALSE(identifier.empty() || data.empty());
      // what was read is written and read again as the same
      ASSERT_EQ(ReadScan(WriteEnvelope(scan.fields)).fields, scan.fields);
    } catch (const BadText&) { ++refused; }
  }
  EXPECT_GT(read, 100);
  EXPECT_GT(refused, 100);
}

}  // namespace
}  // namespace heatkeep
