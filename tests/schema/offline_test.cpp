// A saw off the network: what it did is sent later, each once and in its order; what clashes is a conflict for the lead,
// and no metal is booked twice.
#include "tests/schema/small_shop.h"

namespace heatkeep {
namespace {

struct Offline : ShopTest {
  void SetUp() override {
    Do(shop.owner, "define_shop",
       {Json({{"places", Json::array({{{"place", "SAW-4"}, {"site", "main"}, {"kind", "saw"}}})},
              {"saws",
               Json::array({{{"saw", "4"},
                             {"place", "SAW-4"},
                             {"max_section_nm", Mm(260)},
                             {"band", "34 x 1.1"},
                             {"kerf_nm", Mm(2)},
                             {"trim_nm", 0},
                             {"grip_nm", 0}}})}})
            .dump()});
    Do(shop.saw, "take_tag_block", {"saw-4", "main", 20});
    d240 = Drop(640);
    d244 = Drop(610);
    shop.AddLine({.length = 300, .quantity = 2, .order = "X"});
    shop.AddLine({.length = 580, .quantity = 1, .order = "Y"});
  }
  std::string Drop(std::int64_t mm) { return shop.ReceiveCertified({.length = mm, .kind = "drop", .ends = 2}).at(0); }
  Json Message(std::int64_t seq, const std::string& deed, Json body, const std::string& request = NewRequest().text) {
    return {{"device", "saw-4"},      {"seq", seq}, {"deed", deed}, {"request", request}, {"true_at", "2026-03-04T10:02:05Z"},
            {"body", std::move(body)}};
  }
  Json Send(const Json& message) { return Do(shop.saw, "send_offline", {message.dump()}); }
  Json FetchFor(const std::string& tag, const std::string& order, int count) {
    return {{"tag", tag}, {"saw", "4"}, {"order", order}, {"line", "10"}, {"count", count}};
  }
  Json CutOf(const std::string& tag, const std::string& order, std::int64_t mm) {
    return {{"tag", tag}, {"saw", "4"}, {"finish", true}, {"strokes", Json::array({Good(1, mm, "10", order)})}, {"left", ScrapLeft()}};
  }
  std::string d240, d244;
};

TEST_F(Offline, WhatWasDoneIsBookedOnceInItsOrderUnderItsLoginAndTrueTime) {
  const Json pull = Message(1, "pull_for_line", FetchFor(d244, "Y", 1)), cut = Message(2, "record_cut", CutOf(d244, "Y", 580));
  EXPECT_EQ(Code([&] { Send(cut); }), "HK409");  // number 1 is not here yet
  const std::string request = NewRequest().text;
  const auto send = [&] { return Answer(shop.saw, "api.send_offline($1, $2)", {request, pull.dump()}); };
  EXPECT_EQ(send().at("outcome"), "done");
  EXPECT_EQ(send().at("again"), true);
  EXPECT_EQ(Code([&] { Send(pull); }), "HK409");  // the same number again under another request
  EXPECT_EQ(Send(cut).at("answer").at("good"), 1);
  EXPECT_EQ(shop.Number("select count(*) as n from book.stroke where class = 'good'"), 1);
  EXPECT_EQ(shop.Word("select who || ' ' || device || ' ' || to_char(true_at at time zone 'UTC', 'HH24:MI:SS') as w from api.piece_history "
                      "where tag = $1 and deed = 'record_cut' limit 1",
                      {d244}),
            "test_saw saw-4 10:02:05");
  EXPECT_EQ(Code([&] { Send({{"device", "saw-9"}, {"seq", 1}}); }), "HK025");
}

// Saw 3 had D-0240 for X and cut it; saw 4, off the network, took the same tag for Y and says it cut 580 of it.
TEST_F(Offline, TheSamePieceTakenByTwoIsAConflictForTheLeadAndNoMetalIsBookedTwice) {
  shop.Promise(d240, {{.count = 2, .length = 300, .order = "X"}}, "3");
  ASSERT_EQ(shop.Pull(d240, "3").value("tag", ""), d240);
  shop.Record(d240, Good(2, 300, "10", "X"), ScrapLeft(), {{"saw", "3"}});
  EXPECT_EQ(Send(Message(1, "pull_for_line", FetchFor(d240, "Y", 1))).at("outcome"), "conflict");
  const Json cut = Send(Message(2, "record_cut", CutOf(d240, "Y", 580)));
  EXPECT_EQ(cut.at("outcome"), "conflict");
  EXPECT_EQ(cut.at("words"), d240 + " is cut up: nothing of it is left to cut");
  EXPECT_EQ(Send(Message(3, "pull_for_line", FetchFor(d244, "Y", 1))).at("outcome"), "done");
  EXPECT_EQ(shop.Word("select string_agg(seq || ' ' || outcome, ', ' order by seq) as w from api.offline_deeds"),
            "1 conflict, 2 conflict, 3 done");
  EXPECT_EQ(shop.planner.Execute("select * from api.conflicts where kind = 'off the network' and tag = $1", {d240}).size(), 2);
  EXPECT_EQ(shop.Balance("M2208", "on site"), Mm(600));
  EXPECT_EQ(shop.Balance("M2208", "received"), Mm(640 + 610));
  EXPECT_EQ(shop.Number("select open as n from api.cut_lines where order_no = 'Y'"), 0);  // it is at saw 4 for D-0244
}

// Saw 3 pulled it for X but has cut nothing yet: what saw 4 really cut is recorded, and the lead is told.
TEST_F(Offline, WhatWasReallyCutIsRecordedThoughAnotherSawHadThePiece) {
  shop.Promise(d240, {{.count = 2, .length = 300, .order = "X"}}, "3");
  ASSERT_EQ(shop.Pull(d240, "3").value("tag", ""), d240);
  EXPECT_EQ(Send(Message(1, "record_cut", CutOf(d240, "Y", 580))).at("outcome"), "done");
  EXPECT_EQ(shop.Number("select count(*) as n from api.conflicts where kind = 'cut at another saw'"), 1);
  EXPECT_EQ(shop.Word("select order_no || ' ' || missing || ' ' || why as w from api.open_pieces"), "X 2 cut off the network at saw-4");
  EXPECT_EQ(shop.Number("select open as n from api.cut_lines where order_no = 'X'"), 2);
  EXPECT_EQ(shop.Balance("M2208", "on site") + shop.Balance("M2208", "kerf") + shop.Balance("M2208", "scrap"), Mm(640));
}

TEST_F(Offline, DropsComeWithTagsOfTheDevicesBlockAndNobodyElses) {
  Json cut = CutOf(d244, "X", 300);
  cut["left"] = {{"fate", "drop"}, {"place", "B1-1"}, {"tag", shop.Word("select guard.tag_of('Q', 3) as w", {})}};
  const Json done = Send(Message(1, "record_cut", cut));
  EXPECT_EQ(done.at("answer").at("drop_tag"), cut["left"]["tag"]);
  cut["tag"] = d240;
  cut["left"]["tag"] = shop.Word("select guard.tag_of('Q', 21) as w", {});
  EXPECT_EQ(Send(Message(2, "record_cut", cut)).at("outcome"), "conflict");
  EXPECT_EQ(shop.LengthOf(d240), Mm(640));
}

// The rest was laid in a place whose count had begun meanwhile: it is booked beside it, with or without a tag of the device's own,
// and the count neither misses it nor moves it.
TEST_F(Offline, ADropLaidWhereACountHadBegunIsBookedBesideItAndAPersonIsTold) {
  Do(shop.planner, "freeze_place", {Json({{"place", "B1-1"}}).dump()});
  ASSERT_EQ(shop.Word("select string_agg(tag, ' ' order by tag) as w from book.piece where frozen"), d240 + " " + d244);
  Json cut = CutOf(d244, "X", 300);
  cut["left"] = {{"fate", "drop"}, {"place", "B1-1"}};
  const Json untagged = Send(Message(1, "record_cut", cut));
  ASSERT_EQ(untagged.at("outcome"), "done") << untagged;
  cut["tag"] = d240;
  cut["left"]["tag"] = shop.Word("select guard.tag_of('Q', 3) as w");
  const Json tagged = Send(Message(2, "record_cut", cut));
  ASSERT_EQ(tagged.at("outcome"), "done") << tagged;
  for (const auto& [from, done] : {std::pair{d244, untagged}, {d240, tagged}}) {
    const std::string drop = done.at("answer").at("drop_tag");
    EXPECT_EQ(shop.Word("select w.name || ' ' || frozen as w from book.piece join book.place w using (place_id) where tag = $1", {drop}),
              "B1-2 false");
    EXPECT_EQ(shop.Word("select words as w from api.conflicts where kind = 'put where it was counted' and tag = $1", {drop}),
              "a rest of " + from + " was put in B1-1 while that was counted: it is booked in B1-2");
  }
  Do(shop.clerk, "count_seen", {Json({{"place", "B1-1"}, {"done", true}, {"seen", Json::array()}}).dump()});
  EXPECT_EQ(Do(shop.owner, "approve_count", {Json({{"place", "B1-1"}, {"words", "looked"}}).dump()}).at("missing"), Json::array());
}

TEST_F(Offline, ADeedThatIsNotASawsIsKeptAsAConflictAndABadOneDoesNotStopTheNext) {
  EXPECT_EQ(Send(Message(1, "lift_hold", {{"hold", 1}})).at("words"), "\"lift_hold\" is not done off the network");
  EXPECT_EQ(Send(Message(2, "record_cut", {{"tag", d240}, {"saw", "4"}, {"strokes", "none"}})).at("outcome"), "conflict");
  EXPECT_EQ(Send(Message(3, "put_away", {{"tag", d240}, {"place", "B1-2"}})).at("outcome"), "done");
  EXPECT_EQ(shop.Number("select count(*) as n from api.conflicts where kind = 'off the network'"), 2);
}

}  // namespace
}  // namespace heatkeep
