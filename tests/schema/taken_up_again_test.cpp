// What was cut and is taken up again: split for storage, rejects as drops, recuts, over-cuts, changed orders, slices for
// the laboratory, and scrap by its chemistry. Every balance is exact.
#include "tests/schema/small_shop.h"

namespace heatkeep {
namespace {

struct TakenUpAgain : ShopTest {
  void SetUp() override {
    bar = shop.ReceiveCertified({}).at(0);
    shop.AddLine({.quantity = 14});
  }
  // The bar cut to 13 good and one reject of 285; answers the reject's number.
  std::int64_t CutWithReject() {
    const Json reject{{"class", "reject"},    {"order", "O1"},    {"line", "10"},
                      {"length_nm", Mm(285)}, {"kerf_nm", Mm(2)}, {"fault", "out of square"}};
    const Json done = shop.Record(bar, {Trim(), Good(13, 290), reject}, DropLeft(1905));
    drop = done.at("drop_tag");
    return done.at("rejects").at(0);
  }
  void Bins() {
    const Json bins{{"groups", {{{"family", "steel"}, {"group", "Cr-Mo"}}}},
                    {"bins", {{{"bin", "BIN-2"}, {"group", "Cr-Mo"}}, {{"bin", "BIN-3"}, {"group", "stainless"}}}}};
    Do(shop.owner, "define_bins", {bins.dump()});
  }
  std::string bar, drop;
};

TEST_F(TakenUpAgain, ALongBarIsSplitForStorageWithTheHeatOnEveryPart) {
  const auto split = [&](const char* second_heat) {
    const auto part = [](std::int64_t mm, const char* heat) { return Json{{"length_nm", Mm(mm)}, {"place", "B1-1"}, {"heat", heat}}; };
    return Do(shop.clerk, "split_piece",
              {Json({{"tag", bar}, {"saw", "1"}, {"kerf_nm", Mm(2)}, {"parts", {part(3000, "M2208"), part(2998, second_heat)}}}).dump()});
  };
  EXPECT_EQ(Code([&] { split(""); }), "HK044");
  EXPECT_EQ(Code([&] { split("M2280"); }), "HK044");
  shop.Promise(bar, {{.count = 14}});
  EXPECT_EQ(Code([&] { split("M2208"); }), "HK040");
  Do(shop.planner, "unreserve", {bar, "too long for the rack"});
  const Json done = split("M2208");
  const std::string first = done.at("stock_tags").at(0), second = done.at("drop_tag");
  EXPECT_EQ(shop.LengthOf(first), Mm(3000));
  EXPECT_EQ(shop.LengthOf(second), Mm(2998));
  EXPECT_EQ(shop.Word("select string_agg(ends::text, ' ' order by piece_id) as w from book.piece where parent_id is not null"), "1 1");
  ExpectBalance("M2208", {{"received", 6000}, {"on hand", 5998}, {"kerf", 2}, {"unexplained", 0}});
  for (const std::string& tag : {bar, first, second}) EXPECT_GE(Happenings(tag, "split_piece"), 1) << tag;
  EXPECT_EQ(Code([&] { split("M2208"); }), "HK043");
}

TEST_F(TakenUpAgain, ADropsLabelSaysItsHeatAndAnotherHeatOnItIsRefused_HK044) {
  Json left = DropLeft(1900);
  left["heat"] = "M2280";
  EXPECT_EQ(Code([&] { shop.Record(bar, {Trim(), Good(14, 290)}, left); }), "HK044");
  left["heat"] = "";
  EXPECT_EQ(Code([&] { shop.Record(bar, {Trim(), Good(14, 290)}, left); }), "HK044");
  left["heat"] = "M2208";
  const Json label = shop.Record(bar, {Trim(), Good(14, 290)}, left).at("label");
  EXPECT_EQ(label.at("heat"), "M2208");
  EXPECT_EQ(label.at("parent"), bar);
  EXPECT_EQ(label.at("length_nm"), Mm(1900));
  const std::string nameless = shop.Receive({.heat = "", .read_from = "none", .length = 900, .papers_state = "none", .kind = "drop"}).at(0);
  EXPECT_EQ(shop.Word("select label ->> 'heat' as w from api.labels_to_print($1)", {nameless}), "NO HEAT");
}

TEST_F(TakenUpAgain, ARejectIsUsedAsADropUnderANewTag) {
  const std::int64_t reject = CutWithReject();
  const auto reuse = [&](std::int64_t mm, const char* heat = "M2208") {
    return Do(
        shop.planner, "reuse_reject",
        {Json({{"reject", reject}, {"length_nm", Mm(mm)}, {"place", "B1-2"}, {"heat", heat}, {"reason", "square enough for 250"}}).dump()});
  };
  EXPECT_EQ(Code([&] { reuse(290); }), "HK034");
  EXPECT_EQ(Code([&] { reuse(284, "M2209"); }), "HK044");
  const std::string tag = reuse(284).at("tag");
  EXPECT_NE(tag, bar);
  EXPECT_EQ(shop.LengthOf(tag), Mm(284));
  ExpectBalance(
      "M2208",
      {{"received", 6000}, {"on site", 13 * 290}, {"reject", 0}, {"on hand", 284 + 1905}, {"kerf", 30}, {"trim", 10}, {"unexplained", 1}});
  EXPECT_EQ(shop.Word("select reused_as as w from api.rejects"), tag);
  EXPECT_GE(Happenings(tag, "reuse_reject"), 1);
  EXPECT_EQ(Code([&] { reuse(284); }), "HK043");
}

TEST_F(TakenUpAgain, ARecutIsLinkedToItsReject) {
  const std::int64_t reject = CutWithReject();
  const auto recut = [&](const std::string& tag) { return Do(shop.planner, "recut", {Json({{"reject", reject}, {"tag", tag}}).dump()}); };
  EXPECT_EQ(recut(drop).at("line"), "10");
  EXPECT_EQ(Code([&] { recut(drop); }), "HK041");
  ASSERT_EQ(Do(shop.saw, "pull", {drop, "1"}).at("tag"), drop);
  Json good = Good(1, 290);
  good["recut_of"] = reject;
  shop.Record(drop, good, DropLeft(1613));
  EXPECT_EQ(shop.Number("select (recut is not null)::int as n from api.rejects where recut_asked"), 1);
  EXPECT_EQ(shop.Number("select cut as n from api.cut_lines"), 14);
  good["line"] = "11";
  shop.AddLine({.line = "11"});
  EXPECT_EQ(Code([&] { shop.Record(drop, good); }), "HK043");
}

TEST_F(TakenUpAgain, ARecutComesFromMetalThatIsThereAndLongEnough) {
  const std::int64_t reject = CutWithReject();
  const auto recut = [&](const std::string& tag) {
    return Code([&] { Do(shop.planner, "recut", {Json({{"reject", reject}, {"tag", tag}}).dump()}); });
  };
  EXPECT_EQ(recut(bar), "HK042") << "it is cut up";
  EXPECT_EQ(recut(shop.ReceiveCertified({.length = 280})[0]), "HK034") << "290 are asked for";
  EXPECT_EQ(
      shop.Number("select count(*) as n from book.promise r join book.piece p using (piece_id) where r.state = 'live' and p.length_nm = 0"),
      0);
}

TEST_F(TakenUpAgain, ARecutFromAnotherHeatNeedsTheCustomersWord_HK042) {
  shop.AddLine({.quantity = 2, .order = "S", .one_heat = "a"});
  const Json reject{{"class", "reject"}, {"order", "S"}, {"line", "10"}, {"length_nm", Mm(288)}, {"kerf_nm", Mm(2)}, {"fault", "short"}};
  const Json done = shop.Record(bar, {Trim(), Good(1, 290, "10", "S"), reject}, ScrapLeft());
  const std::string other = shop.ReceiveCertified({.heat = "K3317"}).at(0);
  Json body{{"reject", done.at("rejects").at(0)}, {"tag", other}};
  const DbError no = Refusal([&] { Do(shop.planner, "recut", {body.dump()}); });
  EXPECT_EQ(no.sqlstate, "HK042");
  EXPECT_NE(no.message.find("one heat is asked for order S line 10, and it was cut from M2208"), std::string::npos) << no.message;
  body["agreed"] = {{"who", "Ms Alder"}, {"writing", "mail of 4 March"}};
  EXPECT_EQ(Do(shop.planner, "recut", {body.dump()}).at("tag"), other);
  ASSERT_EQ(Do(shop.saw, "pull", {other, "1"}).value("refused", ""), "");
  shop.Record(other, {Trim(), Good(1, 290, "10", "S")}, DropLeft(5696));
  EXPECT_EQ(shop.Number("select count(*) as n from api.conflicts"), 0);
}

TEST_F(TakenUpAgain, AnOverCutPieceGoesToStockWithItsHeatAndIsNotShippedSilently) {
  shop.Record(bar, {Trim(), Good(15, 290)}, DropLeft(1608));
  EXPECT_EQ(shop.Word("select kind as w from api.conflicts"), "more cut than ordered");
  const auto stock = [&](int count, const char* reason) {
    return Do(shop.saw, "pieces_to_stock",
              {Json({{"order", "O1"}, {"line", "10"}, {"count", count}, {"place", "B1-2"}, {"reason", reason}}).dump()});
  };
  EXPECT_EQ(Code([&] { stock(1, ""); }), "HK026");
  EXPECT_EQ(Code([&] { stock(16, "all"); }), "HK034");
  const std::string extra = stock(1, "one too many").at("tags").at(0);
  EXPECT_EQ(shop.LengthOf(extra), Mm(290));
  EXPECT_EQ(shop.Word("select heat as w from api.stock_on_hand where tag = $1", {extra}), "M2208");
  ExpectBalance("M2208",
                {{"received", 6000}, {"on site", 14 * 290}, {"on hand", 290 + 1608}, {"kerf", 32}, {"trim", 10}, {"unexplained", 0}});
  EXPECT_EQ(Code([&] { shop.Ship("D1", 15); }), "HK034");
  shop.Ship("D1", 14);
}

TEST_F(TakenUpAgain, ACancelledOrdersPiecesBecomeStockAndItsPromisesAreFreed) {
  const std::string second = shop.ReceiveCertified({}).at(0), third = shop.ReceiveCertified({}).at(0);
  shop.AddLine({.quantity = 40, .order = "C"});
  for (const std::string& tag : {bar, second, third}) shop.Promise(tag, {{.count = 10, .order = "C"}});
  shop.Pull(bar);
  shop.Record(bar, {Trim(), Good(6, 290, "10", "C")});
  const auto change = [&](int quantity, const char* reason = "customer's mail") {
    return Do(shop.planner, "change_order",
              {Json({{"order", "C"}, {"line", "10"}, {"quantity", quantity}, {"place", "B1-2"}, {"reason", reason}}).dump()});
  };
  EXPECT_EQ(Code([&] { change(10, ""); }), "HK026");
  // 30 are cut or planned; 22 are wanted now: the last promise is more than that, and then so is the one before
  EXPECT_EQ(change(22).at("freed"), Json::array({third}));
  EXPECT_EQ(shop.Number("select count(*) as n from api.candidates where tag = $1", {third}), 1);
  shop.Ship("D1", 2, "10", "C");
  EXPECT_EQ(Code([&] { change(1); }), "HK043");
  const Json stopped = change(2);
  EXPECT_EQ(stopped.at("freed"), Json::array({second}));
  EXPECT_EQ(stopped.at("stock_tags").size(), 4u);
  EXPECT_EQ(stopped.at("at_saw"), Json::array({bar}));
  ExpectBalance(
      "M2208",
      {{"received", 18000}, {"shipped", 580}, {"on site", 0}, {"on hand", 4 * 290 + 12000}, {"kerf", 14}, {"trim", 10}, {"at saw", 4236}});
  shop.Record(bar, Json::array(), DropLeft(4236), {{"reason", "order changed"}});
  EXPECT_EQ(shop.Number("select open as n from api.cut_lines where order_no = 'C'"), 0);
}

TEST_F(TakenUpAgain, ATestSliceNamesItsLaboratoryAndNoLengthVanishes) {
  const auto slice = [&](const char* lab) {
    return Do(shop.quality, "take_test_slice",
              {Json({{"tag", bar},
                     {"saw", "1"},
                     {"length_nm", Mm(25)},
                     {"kerf_nm", Mm(2)},
                     {"lab", lab},
                     {"place", "B1-1"},
                     {"rest_nm", Mm(5973)}})
                   .dump()});
  };
  EXPECT_EQ(Code([&] { slice(""); }), "HK026");
  const std::string rest = slice("LAB 77").at("drop_tag");
  EXPECT_NE(rest, bar);
  ExpectBalance("M2208", {{"received", 6000}, {"test slice", 25}, {"kerf", 2}, {"on hand", 5973}, {"unexplained", 0}});
  EXPECT_EQ(shop.Word("select lab as w from book.stroke"), "LAB 77");
  EXPECT_EQ(Code([&] { slice("LAB 78"); }), "HK043");
}

TEST_F(TakenUpAgain, ScrapGoesToTheBinOfItsAlloyGroupWithItsMass) {
  Bins();
  const auto left = [](const char* bin) { return Json{{"fate", "scrap"}, {"bin", bin}}; };
  for (const char* bin : {"BIN-3", "BIN-9", ""}) EXPECT_NE(Code([&] { shop.Record(bar, {Trim(), Good(14, 290)}, left(bin)); }), "") << bin;
  const DbError mixed = Refusal([&] { shop.Record(bar, {Trim(), Good(14, 290)}, left("BIN-3")); });
  EXPECT_EQ(mixed.sqlstate, "HK042");
  EXPECT_EQ(mixed.message, "bin BIN-3 is for stainless; this is Cr-Mo");
  EXPECT_TRUE(mixed.hint.starts_with("it goes to BIN-2")) << mixed.hint;
  // 5 026.548 mm2 x 1 900 mm at 7.85 kg/dm3
  EXPECT_EQ(shop.Record(bar, {Trim(), Good(14, 290)}, left("BIN-2")).at("scrap_g"), 74971);
  EXPECT_EQ(shop.Number("select mass_g as n from api.scrap_bins where bin = 'BIN-2'"), 74971);
}

TEST_F(TakenUpAgain, AWholePieceGoesToNoBinThatNobodyDefined_HK026) {
  const auto scrap = [&](const char* bin) {
    return Refusal([&] { Do(shop.saw, "scrap_piece", {Json({{"tag", bar}, {"bin", bin}, {"reason", "bent"}}).dump()}); });
  };
  const DbError none = scrap("BIN-9");
  EXPECT_EQ(none.sqlstate, "HK026");
  EXPECT_EQ(none.message, "no scrap bin is called \"BIN-9\"");
  EXPECT_EQ(none.hint, "no bin is defined; the owner defines one for steel: heatkeep saw bins --bin \"NAME=steel\"");
  Bins();
  EXPECT_EQ(scrap("BIN-9").hint, "the bins are Cr-Mo: BIN-2; stainless: BIN-3; this metal goes to BIN-2");
}

TEST_F(TakenUpAgain, ABinIsSoldByTheDealersTicketAndHeldMetalStays_HK040) {
  Bins();
  const auto scrap = [&](const std::string& tag) {
    return Do(shop.saw, "scrap_piece", {Json({{"tag", tag}, {"bin", "BIN-2"}, {"reason", "bent"}}).dump()});
  };
  const std::string held = shop.ReceiveCertified({.heat = "H1"}).at(0), other = shop.ReceiveCertified({.heat = "K1"}).at(0);
  EXPECT_EQ(scrap(bar).at("mass_g"), 236750);  // 5 026.548 mm2 x 6 000 mm at 7.85 kg/dm3
  scrap(other);
  EXPECT_EQ(Code([&] { scrap(bar); }), "HK043");
  shop.Hold("H1");
  EXPECT_EQ(Code([&] { scrap(held); }), "HK040");
  const auto ticket = [&](std::int64_t grams) {
    return Do(shop.planner, "scrap_ticket",
              {Json({{"bin", "BIN-2"}, {"dealer", "Kestholm"}, {"ticket", "T-7"}, {"mass_g", grams}, {"cents_per_tonne", 25'000}}).dump()});
  };
  shop.Hold("K1");
  EXPECT_EQ(Code([&] { ticket(480'000); }), "HK040");
  Do(shop.quality, "lift_hold", {shop.Number("select max(hold_id) as n from api.holds"), "sound"});
  EXPECT_EQ(Code([&] { ticket(0); }), "HK026");
  const Json sold = ticket(480'000);
  EXPECT_EQ(sold.at("book_mass_g"), 2 * 236750);
  EXPECT_EQ(sold.at("other_g"), 480'000 - 2 * 236750);  // chips and what else lay in it
  EXPECT_EQ(sold.at("cents"), 12'000);                  // 0.48 t at 250.00
  EXPECT_EQ(Code([&] { ticket(480'000); }), "HK041");
  EXPECT_EQ(shop.Number("select mass_g as n from api.scrap_bins where bin = 'BIN-2'"), 0);
  EXPECT_EQ(shop.Balance("M2208", "scrap"), Mm(6000));
  EXPECT_EQ(Happenings(bar, "scrap_ticket"), 1);
}

TEST_F(TakenUpAgain, ACustomersMetalIsScrappedOnlyOnTheirWrittenInstruction_HK026) {
  const std::string theirs = shop.ReceiveCertified({.heat = "E1", .owner = "Ister"}).at(0);
  Json body{{"tag", theirs}, {"reason", "bent"}};
  EXPECT_EQ(Code([&] { Do(shop.planner, "scrap_piece", {body.dump()}); }), "HK026");
  body["instruction"] = "letter of 3 March";
  EXPECT_EQ(Do(shop.planner, "scrap_piece", {body.dump()}).at("tag"), theirs);
}

TEST_F(TakenUpAgain, ARecutMayComeFromMetalWhosePromiseRanOut) {
  const std::int64_t reject = CutWithReject();
  shop.AddLine({.line = "20", .quantity = 1});
  Do(shop.planner, "reserve", {Json({{"tag", drop}, {"order", "O1"}, {"line", "20"}, {"count", 1}}).dump()});
  const auto recut = [&] { return Code([&] { Do(shop.planner, "recut", {Json({{"reject", reject}, {"tag", drop}}).dump()}); }); };
  EXPECT_EQ(recut(), "HK042");
  ASSERT_EQ(shop.Raw("update book.promise set expires_at = now() - interval '1 s'", "commit_plan"), "");
  EXPECT_EQ(recut(), "");
}

}  // namespace
}  // namespace heatkeep
