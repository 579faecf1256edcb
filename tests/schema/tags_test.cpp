// Tags given out by the book and by devices off the network never meet.
#include <future>
#include <set>

#include "tests/schema/small_shop.h"

namespace heatkeep {
namespace {

struct Tags : ShopTest {
  Json Block(Connection& who, const std::string& device, int size) { return Do(who, "take_tag_block", {device, "main", size}); }
};

TEST_F(Tags, ADropMayCarryATagFromTheDevicesOwnBlockOnly) {
  const std::string bar = shop.ReceiveCertified({}).at(0);
  shop.AddLine({});
  const Json block = Block(shop.saw, "scanner 4", 10);
  EXPECT_EQ(block, Json({{"letter", "Q"}, {"first", 1}, {"last", 10}}));
  Block(shop.saw, "scanner 5", 10);
  const auto record = [&](const std::string& tag, const std::string& device) {
    Json body{{"tag", bar}, {"saw", "1"}, {"strokes", {Trim(), Good(14, 290)}}, {"finish", true}, {"left", DropLeft(1900)}};
    body["left"]["tag"] = tag;
    return Do(shop.saw, "record_cut", {body.dump(), std::nullopt, device});
  };
  const auto tag = [&](const std::string& letter, int no) { return shop.Word("select guard.tag_of($1, $2) as w", {letter, no}); };
  EXPECT_EQ(Code([&] { record(tag("Q", 11), "scanner 4"); }), "HK025");  // scanner 5's
  EXPECT_EQ(Code([&] { record(tag("Q", 21), "scanner 4"); }), "HK025");  // nobody's
  EXPECT_EQ(Code([&] { record(tag("A", 3), "scanner 4"); }), "HK025");   // the book's letter
  std::string wrong = tag("Q", 3);
  wrong.back() = wrong.back() == '0' ? '1' : '0';
  EXPECT_EQ(Code([&] { record(wrong, "scanner 4"); }), "HK024");
  EXPECT_EQ(record(tag("Q", 3), "scanner 4").at("drop_tag"), tag("Q", 3));
}

TEST_F(Tags, ATagIsGivenOnce_HK041) {
  const auto bars = shop.ReceiveCertified({.count = 2});
  shop.AddLine({.quantity = 28});
  Block(shop.saw, "s", 5);
  const std::string tag = shop.Word("select guard.tag_of('Q', 3) as w");
  const auto record = [&](const std::string& bar) {
    Json body{{"tag", bar}, {"saw", "1"}, {"strokes", {Trim(), Good(14, 290)}}, {"finish", true}, {"left", DropLeft(1900)}};
    body["left"]["tag"] = tag;
    return Code([&] { Do(shop.saw, "record_cut", {body.dump(), std::nullopt, "s"}); });
  };
  EXPECT_EQ(record(bars[0]), "");
  EXPECT_EQ(record(bars[1]), "HK041");
}

TEST_F(Tags, BlocksTakenAtOnceNeverOverlap) {
  std::vector<std::future<std::vector<Json>>> devices;
  for (int d = 0; d < 4; ++d)
    devices.push_back(std::async(std::launch::async, [&, d] {
      Connection saw = shop.book.As("saw");
      std::vector<Json> blocks;
      for (int i = 0; i < 8; ++i) blocks.push_back(Block(saw, "scanner " + std::to_string(d), 1 + i * 7));
      return blocks;
    }));
  std::set<std::int64_t> seen;
  std::size_t given = 0;
  for (auto& device : devices)
    for (const Json& block : device.get())
      for (std::int64_t no = block.at("first"); no <= block.at("last").get<std::int64_t>(); ++no, ++given) seen.insert(no);
  EXPECT_EQ(seen.size(), given);
}

TEST_F(Tags, ABlockThatOverlapsAnotherIsRefusedByTheRow_23P01) {
  Block(shop.saw, "s", 10);
  EXPECT_EQ(shop.Raw("insert into book.tag_block (device_id, first_no, last_no) values (1, 10, 20)"), "23P01");
  EXPECT_EQ(shop.Raw("insert into book.tag_block (device_id, first_no, last_no) values (1, 20, 11)"), "23514");
}

TEST_F(Tags, LettersOfTheBookAndOfDevicesAreApartOnAllSites_HK041) {
  const auto site = [&](const char* name, const char* letter, const char* offline) {
    return Code([&] {
      Do(shop.owner, "define_shop",
         {Json({{"sites", Json::array({{{"site", name}, {"letter", letter}, {"offline_letter", offline}}})}}).dump()});
    });
  };
  EXPECT_EQ(site("second", "Q", "R"), "HK041");
  EXPECT_EQ(site("second", "B", "A"), "HK041");
  EXPECT_EQ(site("second", "B", "B"), "HK026");
  EXPECT_EQ(site("second", "B", "R"), "");
}

TEST_F(Tags, ADeviceTakesBlocksOfItsOwnSiteOnly_HK026) {
  Do(shop.owner, "define_shop", {R"({"sites": [{"site": "second", "letter": "B", "offline_letter": "R"}]})"});
  EXPECT_EQ(Block(shop.saw, "s", 5).at("letter"), "Q");
  EXPECT_EQ(Code([&] { Do(shop.saw, "take_tag_block", {"s", "second", 5}); }), "HK026");
  EXPECT_EQ(Do(shop.saw, "take_tag_block", {"t", "second", 5}), Json({{"letter", "R"}, {"first", 6}, {"last", 10}}));
}

TEST_F(Tags, ABlockHasAKnownSiteAndASensibleSize_HK026) {
  for (const int size : {0, -1, 10001}) EXPECT_EQ(Code([&] { Block(shop.saw, "s", size); }), "HK026") << size;
  EXPECT_EQ(Code([&] { Do(shop.saw, "take_tag_block", {"s", "elsewhere", 5}); }), "HK026");
}

}  // namespace
}  // namespace heatkeep
