// A printed record's digest, asked about later: what it stands on is unchanged, or what was changed behind the book's back is found.
#include "client/gateway/records.h"
#include "client/gateway/snapshot.h"
#include "tests/schema/small_shop.h"

namespace heatkeep {
namespace {

const std::string kSays(64, 'a');  // stands for the SHA-256 of what a record says

struct PrintedRecords : ShopTest {
  void SetUp() override {
    bar = shop.ReceiveCertified({}).at(0);
    shop.AddLine({});
    drop = shop.Record(bar, {Trim(), Good(14, 290)}, DropLeft(1900)).at("drop_tag");
  }
  RecordProof Print(const RecordSubject& subject) {
    Snapshot snapshot(shop.quality);
    const RecordProof proof = ProveRecord(shop.quality, subject, kSays);
    snapshot.End();
    KeepRecord(shop.quality, subject, proof);
    return proof;
  }
  std::string Verdict(const std::string& digest) { return CheckRecord(shop.quality, digest).at("verdict"); }
  std::string bar, drop;
};

TEST_F(PrintedRecords, AnHonestRecordIsUnchangedAndTellsWhatHappenedSince) {
  const RecordProof proof = Print({"heat", "M2208", ""});
  EXPECT_GT(proof.happenings, 20);
  Json answer = CheckRecord(shop.saw, proof.digest);
  EXPECT_EQ(answer.at("verdict"), "unchanged") << answer;
  EXPECT_EQ(answer.at("later"), Json::object());
  EXPECT_EQ(answer.at("printed_by"), "test_quality");
  shop.Ship("D1", 3);
  Do(shop.clerk, "put_away", {drop, "GATE"});
  answer = CheckRecord(shop.quality, proof.digest);
  EXPECT_EQ(answer.at("verdict"), "unchanged");
  EXPECT_EQ(answer.at("later").at("ship"), 3);
  EXPECT_EQ(answer.at("later").at("put_away"), 1);
  // the digest as people copy it
  EXPECT_EQ(Verdict("  " + proof.digest.substr(0, 32) + "\n" + proof.digest.substr(32)), "unchanged");
}

TEST_F(PrintedRecords, TheSameStateGivesTheSameDigestAndOneRow) {
  EXPECT_EQ(Print({"heat", "M2208", ""}).digest, Print({"heat", "M2208", ""}).digest);
  EXPECT_EQ(shop.Number("select count(*) as n from book.printed_record"), 1);
}

TEST_F(PrintedRecords, AHappeningEditedBehindTheBooksBackIsFound) {
  const RecordProof proof = Print({"heat", "M2208", ""});
  Behind("update book.happening set sets = sets || '{\"length_nm\": 1901000000}' where tbl = 'piece' and sets ->> 'tag' = '" + drop + "'");
  const Json answer = CheckRecord(shop.quality, proof.digest);
  EXPECT_EQ(answer.at("verdict"), "changed");
  EXPECT_NE(answer.at("wrong").at(0).get<std::string>().find("is not as it was written"), std::string::npos) << answer;
}

TEST_F(PrintedRecords, AChainWrittenAnewWithAllItsHashesIsFound) {
  const RecordProof proof = Print({"piece", drop, ""});
  Behind(
      "update book.happening set sets = sets || '{\"length_nm\": 1901000000}' where tbl = 'piece' and sets ->> 'tag' = '" + drop +
      "';"
      " do $$ declare h book.happening; v bytea; begin for h in select n.* from book.happening n join book.piece p on n.chain = 'piece' and n.chain_id = p.piece_id where p.tag = '" +
      drop +
      "' order by seq loop v := guard.happening_hash(v, h); update book.happening set hash = v where happening_id = h.happening_id;"
      " update book.chain_end set hash = v where chain = h.chain and chain_id = h.chain_id; end loop; end $$");
  EXPECT_EQ(
      shop.Number("select count(*) as n from api.verify_book() where \"check\" in ('chains of happenings', 'ends of chains') and not ok"),
      0);
  const Json answer = CheckRecord(shop.quality, proof.digest);
  EXPECT_EQ(answer.at("verdict"), "changed");
  EXPECT_NE(answer.at("wrong").at(0).get<std::string>().find("written anew"), std::string::npos) << answer;
}

TEST_F(PrintedRecords, ATailCutOffAndAKeptRowEditedAreFound) {
  const RecordProof first = Print({"piece", drop, ""});
  Behind("delete from book.happening where chain = 'piece' and seq > 1 and chain_id = (select piece_id from book.piece where tag = '" +
         bar + "')");
  const Json cut = CheckRecord(shop.quality, first.digest);
  EXPECT_EQ(cut.at("verdict"), "changed");
  EXPECT_NE(cut.at("wrong").at(0).get<std::string>().find("is gone"), std::string::npos) << cut;
  Behind("update book.printed_record set ends = '[]'");
  EXPECT_EQ(CheckRecord(shop.quality, first.digest).at("wrong").at(0), "what the book kept of this record was changed");
}

TEST_F(PrintedRecords, AFileThatSaysSomethingElseIsAlteredAndAForgedOneUnknown) {
  const RecordProof proof = Print({"heat", "M2208", ""});
  EXPECT_EQ(CheckRecord(shop.quality, proof.digest, kSays, proof.ends).at("verdict"), "unchanged");
  const std::string other(64, 'b');
  EXPECT_EQ(CheckRecord(shop.quality, proof.digest, other, proof.ends).at("verdict"), "altered");
  const std::string forged = shop.Word("select guard.record_digest($1, $2) as w", {other, proof.ends});
  EXPECT_EQ(CheckRecord(shop.quality, forged, other, proof.ends).at("verdict"), "unknown");
  EXPECT_EQ(Verdict(std::string(64, '0')), "unknown");
  EXPECT_EQ(Code([&] { Verdict("9f2c"); }), "HK026");
}

TEST_F(PrintedRecords, OnlyWhatTheLedgerSaysIsKeptAndKeptRowsStay) {
  const RecordProof proof = Print({"heat", "M2208", ""});
  Json body{{"kind", "heat"}, {"subject", "M2208"}, {"content", kSays}, {"ends", Json::parse(proof.ends)}};
  body["ends"][0][3] = std::string(64, '0');
  EXPECT_EQ(Code([&] { Do(shop.quality, "keep_record", {body.dump()}); }), "HK026");
  body["ends"] = "x";
  EXPECT_EQ(Code([&] { Do(shop.quality, "keep_record", {body.dump()}); }), "HK026");
  EXPECT_EQ(shop.Raw("update book.printed_record set subject = 'K1'"), "HK003");
  EXPECT_EQ(shop.Raw("delete from book.printed_record"), "HK003");
  EXPECT_EQ(Verdict(proof.digest), "unchanged");
}

}  // namespace
}  // namespace heatkeep
