// verify_book passes after every kind of deed (every test of this folder asks it at its end), and finds what
// was changed behind the book's back: by the chains, by the replay, by the balances, and at last by comparing
// with a kept seal.
#include <cstdlib>
#include <filesystem>

#include "client/book/migrate.h"
#include "client/book/persons.h"
#include "client/book/private_cluster.h"
#include "client/book/schema_files.h"
#include "client/gateway/records.h"
#include "tests/schema/every_stock_deed.h"
#include "tests/schema/small_shop.h"

namespace heatkeep {
namespace {

struct Verify : ShopTest {
  void SetUp() override {
    bar = shop.ReceiveCertified({}).at(0);
    shop.AddLine({});
    drop = shop.Record(bar, {Trim(), Good(14, 290)}, DropLeft(1900)).at("drop_tag");
    spoilt = true;
  }
  // Each deed of the saw and of the lead about it, once.
  void EveryDeedOfTheSaw();
  using Checks = std::vector<std::string>;
  std::string bar, drop;
};

void Verify::EveryDeedOfTheSaw() {
  const auto tags = shop.ReceiveCertified({.heat = "S1", .count = 8});
  shop.AddLine({.quantity = 40, .order = "S"});
  const auto deed = [&](Connection& who, const char* name, const Json& body) { return Do(who, name, {body.dump()}); };
  const auto of = [&](const std::string& tag, Json more) {
    more.update({{"tag", tag}, {"saw", "1"}, {"order", "S"}, {"line", "10"}});
    return more;
  };
  deed(shop.owner, "set_saw", {{"saw", "1"}, {"stop_stroke_nm", Mm(500)}});
  deed(shop.owner, "define_bins", {{"bins", {{{"bin", "B"}, {"group", "steel"}}}}});
  deed(shop.saw, "fit_band", {{"saw", "1"}, {"width_nm", Mm(34)}, {"thickness_nm", 1'100'000}, {"kerf_nm", Mm(2)}, {"reason", "worn"}});
  deed(shop.planner, "reserve", of(tags[0], {{"count", 2}}));
  Do(shop.planner, "unreserve", {tags[0], "other bar"});
  Do(shop.planner, "lapse_promises", {});
  deed(shop.saw, "pull_for_line", of(tags[0], {{"count", 3}}));
  deed(shop.saw, "first_piece", of(tags[0], {{"measured_nm", Mm(290)}}));
  Json reject = Fault("reject", 280, "short");
  reject.update({{"order", "S"}, {"line", "10"}});
  const Json cut = shop.Record(tags[0], {Trim(), Good(3, 290, "10", "S"), reject});
  deed(shop.saw, "hand_over", of(tags[0], {{"words", "go on"}}));
  Do(shop.saw, "take_over", {"1"});
  shop.Record(tags[0], Good(1, 290, "10", "S"));
  deed(shop.saw, "not_cut", {{"tag", tags[0]}, {"reason", "pressed once more"}});
  deed(shop.saw, "report_half_cut", of(tags[0], {{"at_nm", Mm(5)}, {"kerf_nm", Mm(2)}, {"cause", "bar slipped"}}));
  shop.Record(tags[0], {Fault("crop", 7, "half cut")}, {{"fate", "scrap"}, {"bin", "B"}});
  const std::int64_t report = deed(shop.saw, "report_defect", of(tags[1], {{"kind", "seam"}, {"at_nm", 0}, {"words", "w"}})).at("report");
  Do(shop.planner, "answer_defect", {report, "cut on", "only the skin"});
  deed(shop.planner, "recut", of(tags[2], {{"reject", cut.at("rejects").at(0)}}));
  deed(shop.planner, "reuse_reject",
       {{"reject", cut.at("rejects").at(0)}, {"length_nm", Mm(280)}, {"place", "B1-2"}, {"heat", "S1"}, {"reason", "r"}});
  deed(shop.saw, "pieces_to_stock", of("", {{"count", 1}, {"place", "B1-2"}, {"reason", "one too many"}}));
  deed(
      shop.saw, "split_piece",
      of(tags[3],
         {{"kerf_nm", Mm(2)},
          {"parts",
           {{{"length_nm", Mm(3000)}, {"place", "B1-1"}, {"heat", "S1"}}, {{"length_nm", Mm(2998)}, {"place", "B1-1"}, {"heat", "S1"}}}}}));
  deed(shop.quality, "take_test_slice", of(tags[4], {{"length_nm", Mm(20)}, {"kerf_nm", Mm(2)}, {"lab", "7"}, {"place", "B1-1"}}));
  deed(shop.saw, "scrap_piece", of(tags[5], {{"bin", "B"}, {"reason", "bent"}}));
  deed(shop.planner, "scrap_ticket", {{"bin", "B"}, {"dealer", "Kestholm"}, {"ticket", "1"}, {"mass_g", 1000}, {"cents_per_tonne", 1}});
  EXPECT_EQ(Code([&] {
              deed(shop.planner, "scrap_ticket",
                   {{"bin", "B"}, {"dealer", "Kestholm"}, {"ticket", "2"}, {"mass_g", 2'000'000'000'000}, {"cents_per_tonne", 1}});
            }),
            "HK026")
      << "2 000 000 t are no scrap that was weighed, and would make every sum over the tickets fail";
  deed(shop.planner, "record_consent", of("", {{"papers", "2.2"}, {"agreed_by", "A"}, {"writing", "mail"}, {"cost_cents", 0}}));
  Do(shop.quality, "sign_consent", {1});
  deed(shop.planner, "change_order", of("", {{"quantity", 0}, {"place", "B1-2"}, {"reason", "cancelled"}}));
  const auto together = shop.ReceiveCertified({.heat = "S9", .count = 2});
  shop.AddLine({.quantity = 2, .order = "T"});
  Json both = shop.PlanFor(together[0], {{.order = "T"}});
  both["layouts"].push_back(shop.PlanFor(together[1], {{.order = "T"}})["layouts"][0]);
  deed(shop.planner, "commit_plan", both);
  deed(shop.saw, "make_up_bundle", {{"saw", "1"}, {"tags", together}});
  Json bars = Json::array();
  for (const std::string& one : together)
    bars.push_back({{"tag", one}, {"strokes", {Trim(), Good(1, 290, "10", "T")}}, {"left", DropLeft(5696)}});
  deed(shop.saw, "record_bundle", {{"saw", "1"}, {"finish", true}, {"bars", bars}});
  deed(
      shop.saw, "send_offline",
      {{"device", "s"}, {"seq", 1}, {"deed", "put_away"}, {"request", NewRequest().text}, {"body", {{"tag", tags[6]}, {"place", "B1-1"}}}});
}

constexpr const char *kChains = "chains of happenings", *kEnds = "ends of chains", *kReplay = "replay equals the present state",
                     *kPieces = "metal balance of every piece", *kCuts = "metal balance of every closed cut",
                     *kLots = "metal balance of every lot", *kSeals = "seals";

TEST_F(Verify, PassesAfterEveryKindOfDeed) {
  const auto tags = shop.ReceiveCertified({.heat = "K1", .count = 6});
  shop.Receive({.heat = "R1"});
  Do(shop.clerk, "put_away", {tags[0], "GATE"});
  Do(shop.clerk, "quarantine", {tags[1], "bent"});
  Do(shop.quality, "release", {tags[1], "straight enough"});
  Do(shop.quality, "allow_at_risk", {"Vandrek", "R1", "hurry"});
  Do(shop.quality, "allow_grade", {"C45E", "42CrMo4", "letter"});
  Do(shop.owner, "set_rules",
     {R"({"keep": [{"grade": "C45E", "keep_nm": 200000000}], "prices": [{"grade": "C45E", "cents_per_tonne": 9, "scrap_cents_per_tonne": 1}],
                                  "rates": [{"family": "steel", "mm2_per_min": 4000}]})"});
  shop.AddLine({.line = "2", .quantity = 30});
  const std::int64_t plan = shop.Promise(tags[2], {{.line = "2"}}).at("plan");
  const auto mended = shop.ReceiveCertified({.heat = "K3", .count = 2});
  shop.AddLine({.line = "4", .quantity = 14});
  Json anew = shop.PlanFor(mended[1], {{.count = 14, .line = "4"}});
  anew["plan"] = shop.Promise(mended[0], {{.count = 14, .line = "4"}}).at("plan");
  anew["drop"] = {1};
  Do(shop.saw, "report_missing", {mended[0], "not in its place"});
  EXPECT_EQ(Do(shop.saw, "replan", {anew.dump()}).at("layouts"), 1);
  shop.Pull(mended[1]);
  Do(shop.saw, "measure_at_saw", {mended[1], Mm(5999), "tape"});
  Do(shop.quality, "allow_section", {Round(80).dump(), Round(85).dump(), "turned down"});
  Do(shop.planner, "cancel_plan", {plan, "not needed"});
  shop.Fetch(tags[3], {{.count = 14, .line = "2"}});
  shop.Record(tags[3], {Trim(), Good(13, 290, "2"), Fault("reject", 280, "short"), Fault("crop", 50, "crack")}, ScrapLeft());
  Do(shop.saw, "correct_length", {tags[4], Mm(5990), Mm(2), "tape"});
  Do(shop.saw, "take_tag_block", {"s", "main", 5});
  const std::int64_t hold = shop.Hold("K1").at("hold_id");
  Do(shop.quality, "lift_hold", {hold, "second analysis"});
  shop.AddLine({.line = "3", .quantity = 1});
  shop.Record(tags[4], {Trim(), Good(2, 290, "3")}, ScrapLeft());
  Do(shop.quality, "close_conflict",
     {shop.Number("select max(conflict_id) as n from api.conflicts"), "one kept for the next order", false});
  Do(shop.quality, "correct_receipt", {tags[5], LineJson({.heat = "K2"}, "1").dump(), "Ister", "stencil"});
  EveryDeedOfTheSaw();
  shop.Ship("D1", 10);
  const std::string gone = shop.Word(
      "select d.number as w from book.document d join book.document_lot using (document_id) join book.stroke using (lot_id) "
      "where shipment_line_id is not null order by 1 limit 1");
  DoBody(shop.quality, "pass_on_document",
         {{"issuer", "Vandrek"}, {"number", gone}, {"note", "D1"}, {"rule", "EN 10204"}, {"form", "original"}});
  DoBody(shop.quality, "attach_file", {{"issuer", "Vandrek"}, {"number", gone}, {"file_base64", SmallPng()}});
  Json package{{"note", "D1"}, {"without_files", true}, {"sha256", std::string(64, 'a')}, {"pages", 3}};
  package["read"] = shop.Word("select encode(sha256(convert_to(api.package_of($1)::text, 'UTF8')), 'hex') as w", {package.dump()});
  DoBody(shop.quality, "keep_package", package);
  Json opening{{"name", "start"}, {"lines", Json::array({LineJson({.heat = "", .read_from = "none", .kind = "drop"}, "1")})}};
  Do(shop.clerk, "open_balance", {opening.dump()});
  DoEveryStockDeed(shop);
  const RecordSubject heat{"heat", "K1", ""};
  KeepRecord(shop.quality, heat, ProveRecord(shop.quality, heat, std::string(64, 'a')));
  Do(shop.quality, "seal_book", {});
  EXPECT_EQ(Failing(), Checks());
  // every deed there is was done here, or this test says which is missing
  std::vector<std::string> missing;
  for (const Row row : shop.admin.Execute("select distinct proname::text as n from pg_proc where "
                                          "pronamespace = 'api'::regnamespace and provolatile = 'v'"
                                          " and proname <> 'verify_book' and not exists (select from "
                                          "book.request where deed = proname) order by 1"))
    missing.push_back(row.Text("n"));
  EXPECT_EQ(missing, Checks());
}

TEST_F(Verify, OnePieceOneNanometreLonger) {
  Behind("update book.piece set length_nm = length_nm - 1 where tag = '" + drop + "'");
  EXPECT_EQ(Failing(), (Checks{kReplay, kPieces, kLots}));
}

TEST_F(Verify, ACutThatNoLongerAddsUp) {
  Behind("update book.cut set length_in_nm = length_in_nm - 1");
  EXPECT_EQ(Failing(), (Checks{kReplay, kCuts}));
}

TEST_F(Verify, ARowTakenAwayOrPutIn) {
  Behind("delete from book.stroke where seq = 2");
  EXPECT_EQ(Failing(), (Checks{kReplay, kPieces, kCuts, kLots}));
}

TEST_F(Verify, APromiseOfMetalThatIsGone) {
  Behind(
      "insert into book.promise (piece_id, words, promised_by, expires_at) select piece_id, 'w', 'p', now() "
      "from book.piece where tag = '" +
      bar + "'");
  EXPECT_EQ(Failing(), (Checks{kReplay, "promises are of metal that is there"}));
}

TEST_F(Verify, APlaceMovedInTheTableOnly) {
  Behind("update book.piece set place_id = 1 + place_id where tag = '" + drop + "'");
  EXPECT_EQ(Failing(), Checks{kReplay});
}

TEST_F(Verify, AHappeningThatSetSomethingElse) {
  Behind(
      "update book.happening set sets = sets || '{\"length_nm\": 1}' where tbl = 'piece' and deed = "
      "'receive_delivery'");
  const Checks failing = Failing();
  EXPECT_EQ(failing.at(0), kChains);
}

struct VerifyEach : Verify, testing::WithParamInterface<const char*> {};
TEST_P(VerifyEach, OneWordOfOneHappening) {
  Behind(std::string("update book.happening set ") + GetParam() +
         " where happening_id = (select max(happening_id) from book.happening where tbl = 'cut')");
  EXPECT_EQ(Failing().at(0), kChains);
}
INSTANTIATE_TEST_SUITE_P(Words, VerifyEach,
                         testing::Values("who = 'test_owner'", "at = at + interval '1 us'", "true_at = true_at - interval '1 us'",
                                         "reason = 'x'", "device = 'x'", "deed = 'x'", "request_id = gen_random_uuid()",
                                         "hash = sha256('x')"));

// The last happening of the drop's chain and what it did, as one who knows the book would take them away.
constexpr const char* kForget = R"(
  delete from book.happening where tbl = 'piece' and deed = 'put_away';
  update book.piece set place_id = before.place_id, version = 1 from (select place_id from book.place where name = 'B1-1') before where tag = '%';)";
constexpr const char* kMendEnd = R"(
  update book.chain_end e set seq = l.seq, hash = l.hash from (select distinct on (chain, chain_id) chain, chain_id, seq, hash
    from book.happening order by chain, chain_id, seq desc) l where l.chain = e.chain and l.chain_id = e.chain_id;)";

struct CutOff : Verify {
  void SetUp() override {
    Verify::SetUp();
    Do(shop.clerk, "put_away", {drop, "GATE"});
    seal = Do(shop.quality, "seal_book", {});
    ASSERT_EQ(Failing(), Checks());
    forget = kForget;
    forget.replace(forget.find('%'), 1, drop);
  }
  Json seal;
  std::string forget;
};

TEST_F(CutOff, TheLastHappeningOfAChainIsMissedAtTheChainsEnd) {
  Behind(forget);
  EXPECT_EQ(Failing(), (Checks{kEnds, kSeals}));
}

TEST_F(CutOff, WithTheEndMendedTooOnlyTheSealFindsIt) {
  Behind(forget + kMendEnd);
  EXPECT_EQ(Failing(), Checks{kSeals});
}

TEST_F(CutOff, WithTheSealTakenOutTooOnlyTheDigestKeptOutsideFindsIt) {
  Behind(forget + kMendEnd + "delete from book.seal;");
  EXPECT_EQ(Failing(), Checks());
  EXPECT_NE(shop.Word("select guard.digest_at($1) as w", {seal.at("last_happening").get<std::int64_t>()}),
            seal.at("digest").get<std::string>());
}

TEST_F(CutOff, TheDigestOfASealStaysTheSameWhateverIsDoneAfterIt) {
  shop.ReceiveCertified({.heat = "K1", .count = 3});
  Do(shop.clerk, "put_away", {drop, "B1-1"});
  EXPECT_EQ(shop.Word("select guard.digest_at($1) as w", {seal.at("last_happening").get<std::int64_t>()}),
            seal.at("digest").get<std::string>());
  EXPECT_NE(shop.quality.Execute("select digest from api.book_digest()").Only().Text("digest"), seal.at("digest").get<std::string>());
  EXPECT_EQ(Failing(), Checks());
}

// However many seals there are, each says what was written since the one before.
struct Seals : Verify {
  void SetUp() override {
    Verify::SetUp();
    for (const char* place : {"GATE", "B1-1", "GATE", "B1-1"}) {
      Do(shop.clerk, "put_away", {drop, place});
      Do(shop.quality, "seal_book", {});
    }
    Do(shop.quality, "seal_book", {});  // nothing was written since the last
    ASSERT_EQ(Failing(), Checks());
  }
  std::string SealsSaid() { return shop.Word("select detail as w from api.verify_book() where \"check\" = 'seals'"); }
};

TEST_F(Seals, AHappeningRewrittenBetweenTwoOfThemIsFoundByTheOneAfterIt) {
  Behind(
      "update book.happening set hash = sha256('x') where happening_id = (select last_happening_id from book.seal order by seal_id offset 2 limit 1)");
  EXPECT_EQ(SealsSaid(), "5 seals, 1 no longer agree");
}

TEST_F(Seals, OneThatIsChangedBreaksTheNextToo) {
  Behind(
      "update book.seal set digest = encode(sha256('x'), 'hex') where seal_id = (select seal_id from book.seal order by seal_id offset 1 limit 1)");
  EXPECT_EQ(SealsSaid(), "5 seals, 2 no longer agree");
}

TEST_F(Seals, OneThatIsTakenOutIsMissedByTheNext) {
  Behind("delete from book.seal where seal_id = (select seal_id from book.seal order by seal_id offset 2 limit 1)");
  EXPECT_EQ(SealsSaid(), "4 seals, 1 no longer agree");
}

TEST_F(Seals, TheEndsOfTheChainsAreInTheDigestToo) {
  Behind("update book.seal set ends = encode(sha256('x'), 'hex') where seal_id = (select min(seal_id) from book.seal)");
  EXPECT_EQ(SealsSaid(), "5 seals, 1 no longer agree");
}

// Until seals were linked, their digest was that of the ends of all chains.
TEST_F(Seals, AnOlderOneIsHeldAgainstTheEndsOfTheChainsAsTheyWereThen) {
  Behind(
      "update book.seal set linked = false, ends = null, digest = guard.ends_at(last_happening_id) where seal_id = (select min(seal_id) from book.seal);"
      "update book.seal s set digest = guard.seal_digest((select digest from book.seal order by seal_id limit 1), s.ends,"
      " guard.hashes_between((select last_happening_id from book.seal order by seal_id limit 1), s.last_happening_id)) where seal_id = (select seal_id from book.seal order by seal_id offset 1 limit 1);"
      "delete from book.seal where seal_id > (select seal_id from book.seal order by seal_id offset 1 limit 1)");
  EXPECT_EQ(SealsSaid(), "2 seals, 0 no longer agree");
  Behind(
      "update book.happening set hash = sha256('x') where happening_id = (select last_happening_id from book.seal order by seal_id limit 1)");
  EXPECT_EQ(SealsSaid(), "2 seals, 1 no longer agree");
}

TEST_F(CutOff, WhoKnowsHowRewritesAWholeChainAndIsStillFoundByTheSeal) {
  Behind(R"(do $$ declare h book.happening; v bytea; begin
      for h in select * from book.happening where chain = 'piece' and chain_id = (select chain_id from book.happening where deed = 'put_away') order by seq loop
        h.who := 'test_owner'; h.hash := guard.happening_hash(v, h); v := h.hash;
        update book.happening set who = h.who, hash = h.hash where happening_id = h.happening_id;
      end loop; end $$;)" +
         std::string(kMendEnd));
  EXPECT_EQ(Failing(), Checks{kSeals});
}

std::string ServerWords(Connection& quality, bool& ok) {
  const Row row = quality.Execute("select * from api.verify_book() where \"check\" = 'the server keeps what it says'").Only();
  ok = row.Bool("ok");
  return row.Text("detail");
}

TEST_F(Verify, SaysThatAServerWithFsyncOffDoesNotKeepWhatItSays) {
  bool ok = true;
  EXPECT_EQ(ServerWords(shop.quality, ok), "fsync off, full_page_writes off, data_checksums on");
  EXPECT_FALSE(ok);
}

// A cluster that is gone with the test, however it ends.
struct VerifyServer : testing::Test {
  static std::string NewFolder() {
    std::string folder = (std::filesystem::temp_directory_path() / "heatkeep-verify-XXXXXX").string();
    if (!mkdtemp(folder.data())) return {};
    std::filesystem::permissions(folder, std::filesystem::perms(0755));
    return folder;
  }
  void TearDown() override {
    cluster.Stop();
    std::filesystem::remove_all(folder);
  }
  const std::string folder = NewFolder();
  PrivateCluster cluster{{folder, {}, {}}};
};

TEST_F(VerifyServer, AFreshBookOfOnesOwnKeepsWhatItSays) {
  ASSERT_FALSE(folder.empty());
  cluster.Init();
  Connection admin = cluster.Admin();
  Migrate(admin, ReadSchemaFiles(SchemaFolder()));
  bool ok = false;
  EXPECT_EQ(ServerWords(admin, ok), "fsync on, full_page_writes on, data_checksums on");
  EXPECT_TRUE(ok);
}

}  // namespace
}  // namespace heatkeep
