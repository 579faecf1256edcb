// Every input that the fuzzer was given or has found goes through its door again, with the compiler of the program.
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>

#include "tests/fuzz/file_door.h"

namespace heatkeep::fuzz {
namespace {

void Replay(const std::string& door, void (*through)(std::string_view)) {
  int inputs = 0;
  for (const auto& entry : std::filesystem::directory_iterator(std::filesystem::path(HEATKEEP_FUZZ_CORPUS) / door)) {
    std::ifstream in(entry.path(), std::ios::binary);
    const std::string bytes{std::istreambuf_iterator<char>(in), {}};
    EXPECT_NO_THROW(through(bytes)) << entry.path();
    ++inputs;
  }
  EXPECT_GE(inputs, 3) << "the corpus of " << door << " is there";
}

TEST(FileDoor, EveryStockFileEndsQuietly) { Replay("stock", StockDoor); }
TEST(FileDoor, EveryCutsFileEndsQuietly) { Replay("cuts", CutsDoor); }
TEST(FileDoor, EveryRulesFileEndsQuietly) { Replay("rules", RulesDoor); }
TEST(FileDoor, EveryTableEndsQuietly) { Replay("csv", CsvDoor); }
TEST(FileDoor, EverySpreadsheetEndsQuietly) {
  Replay("xlsx", XlsxDoor);
  Replay("ods", OdsDoor);
}
TEST(FileDoor, EveryShopFileEndsQuietly) { Replay("shop", ShopDoor); }
TEST(FileDoor, EveryRecordEndsQuietly) { Replay("record", RecordDoor); }
TEST(FileDoor, EveryLengthSectionAndTagEndsQuietly) {
  Replay("lengths", LengthsDoor);
  Replay("sections", SectionsDoor);
  Replay("tags", TagsDoor);
}
TEST(FileDoor, AMillionBracketsAreRefused) {
  const std::string deep(1'000'000, '[');
  const std::string closed = deep + std::string(1'000'000, ']');
  for (const auto through : {RulesDoor, ShopDoor, RecordDoor}) {
    EXPECT_NO_THROW(through(deep));
    EXPECT_NO_THROW(through(closed));
    EXPECT_NO_THROW(through("{\"settings\":" + closed + "}"));
    EXPECT_NO_THROW(through("{\"proof\":{\"digest\":\"\",\"ends\":[]},\"a\":" + closed + "}"));
  }
}
TEST(FileDoor, EveryScanEndsQuietly) { Replay("scan", ScanDoor); }
TEST(FileDoor, EveryPlanPassesTheCheck) { Replay("plan", PlanDoor); }

}  // namespace
}  // namespace heatkeep::fuzz
