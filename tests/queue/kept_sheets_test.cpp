// The sheets of a saw on its own disk: every figure comes back as it was read.
#include "client/queue/kept_sheets.h"

#include <gtest/gtest.h>
#include <stdlib.h>

#include "client/queue/kept_file.h"
#include "client/queue/record_file.h"

namespace heatkeep {
namespace {

namespace fs = std::filesystem;

struct SheetsKept : testing::Test {
  SheetsKept() {
    std::string made = (fs::temp_directory_path() / "heatkeep-sheets-XXXXXX").string();
    folder = mkdtemp(made.data());
    path = folder / "saw-2.queue.sheets";
  }
  ~SheetsKept() override { fs::remove_all(folder); }
  fs::path folder, path;
};

TEST_F(SheetsKept, ComeBackToTheNanometre) {
  Sheet sheet{.number = "7",
              .saw = "2",
              .due = "2031-03-04",
              .made_at = "2031-03-01T06:00:00+01:00",
              .made_by = "planner",
              .proof = "opens no full bar",
              .one_heat = "ONE HEAT",
              .bundled = true,
              .kerf = {2'000'001},
              .trim = {10},
              .grip = {60},
              .lift_limit = {25'000},
              .blocks = {},
              .shorts = {{"O9", "10", "round 80", "42CrMo4", 4, {280}, "no papers"}}};
  SheetBlock block;
  block.block = 3;
  block.place = "B3-2";
  block.tag = "A000012K";
  block.heat = "07715";
  block.mark_end = "last";
  block.otherwise = "D-0107";
  block.state = "promised";
  block.stop = "STOP";
  block.risk = "RISK";
  block.length = {6'000'000'001};
  block.doubt = {1};
  block.mass = {236'748};
  block.stays = {61};
  block.bundle = 5;
  block.bundle_no = 1;
  block.made_up = true;
  block.area = {5'026'548'246};
  block.rate = CuttingRate{4'000};
  block.cuts = {{"O1", "10", "Pallant", 14, {290'500'000}, {290'000'000}, {1}, {2}, {3}, true, 2, 5}};
  block.left = {206'000'000};
  block.fate = LeftFate::Drop;
  block.left_mass = {8'128};
  block.begun = Length{4'536'000'000};
  sheet.blocks = {block, {}};
  KeepSheets(path,
             {.book = "7391/16384",
              .login = "saw",
              .actions = {"pull", "record_cut"},
              .saw = "2",
              .read_at_ms = 1'929'000'000'123,
              .stop_stroke = {500'000'000},
              .tape_doubt = {1'000'000},
              .devices = {{"tape 3", "tape", Length{500'000}, false}, {"saw 2", "readout", std::nullopt, true}},
              .places = {"B1-1"},
              .sheets = {sheet}});
  const auto kept = ReadKeptSheets(path);
  ASSERT_TRUE(kept);
  EXPECT_EQ(kept->book, "7391/16384");
  EXPECT_EQ(kept->login, "saw");
  EXPECT_EQ(kept->actions, (std::vector<std::string>{"pull", "record_cut"}));
  EXPECT_EQ(kept->read_at_ms, 1'929'000'000'123);
  EXPECT_EQ(kept->stop_stroke, Length{500'000'000});
  ASSERT_EQ(kept->devices.size(), 2U);
  EXPECT_EQ(kept->tape_doubt, Length{1'000'000});
  EXPECT_EQ(kept->devices[1].kind, "readout");
  EXPECT_EQ(kept->places, std::vector<std::string>{"B1-1"});
  EXPECT_EQ(kept->devices[0].doubt, Length{500'000});
  EXPECT_EQ(kept->devices[1].doubt, std::nullopt);
  EXPECT_TRUE(kept->devices[1].overdue);
  ASSERT_EQ(kept->sheets.size(), 1U);
  const Sheet& back = kept->sheets[0];
  EXPECT_EQ(back.due, "2031-03-04");
  EXPECT_EQ(back.kerf, Length{2'000'001});
  EXPECT_TRUE(back.bundled);
  EXPECT_EQ(back.lift_limit, Mass{25'000});
  EXPECT_EQ(back.shorts.at(0).missing, 4);
  ASSERT_EQ(back.blocks.size(), 2U);
  const SheetBlock& b = back.blocks[0];
  EXPECT_EQ(b.heat, "07715");
  EXPECT_EQ(b.length, Length{6'000'000'001});
  EXPECT_EQ(b.area, Area{5'026'548'246});
  ASSERT_TRUE(b.rate);
  EXPECT_EQ(b.rate->mm2_per_min, 4'000);
  EXPECT_EQ(b.fate, LeftFate::Drop);
  EXPECT_EQ(b.left_mass, Mass{8'128});
  EXPECT_TRUE(b.made_up);
  ASSERT_EQ(b.cuts.size(), 1U);
  EXPECT_EQ(b.cuts[0].set, Length{290'500'000});
  EXPECT_EQ(b.cuts[0].tolerance_plus, Length{3});
  EXPECT_TRUE(b.cuts[0].one_heat);
  EXPECT_EQ(b.cuts[0].done, 5);
  EXPECT_EQ(b.begun, Length{4'536'000'000});
  EXPECT_EQ(back.blocks[1].rate.has_value(), false);
}

TEST_F(SheetsKept, OfAnotherVersionAreRefusedInWords) {
  WriteKeptFile(path, "sheets", R"({"saw": "2"})");
  try {
    ReadKeptSheets(path);
    FAIL() << "was not refused";
  } catch (const QueueError& error) { EXPECT_NE(std::string(error.what()).find("another version"), std::string::npos) << error.what(); }
  EXPECT_EQ(ReadKeptSheets(folder / "none"), std::nullopt);
}

}  // namespace
}  // namespace heatkeep
