// What the rows themselves refuse, to the superuser and to the owner of the tables too. Every script claims a
// deed, so that it is the rule itself which refuses, not only "by a deed".
#include "tests/schema/small_shop.h"

namespace heatkeep {
namespace {

struct RowsRefuse : ShopTest {
  std::string bar = shop.ReceiveCertified({.count = 2}).at(0);
  std::string drop;

  void SetUp() override {
    shop.AddLine({});
    drop = shop.Record(bar, {Trim(), Good(3, 290)}, DropLeft(5112)).at("drop_tag");
  }
  std::string WhereTag(const std::string& tag) { return " where tag = '" + tag + "'"; }
  std::string OtherLot() { return "(select max(lot_id) from book.lot)"; }
};

TEST_F(RowsRefuse, LotAndOwnerOfAPieceAreNotEdited_HK031) {
  shop.Receive({.heat = "K3317"});
  for (const std::string& tag : {bar, drop}) {
    EXPECT_EQ(shop.Raw("update book.piece set lot_id = " + OtherLot() + WhereTag(tag)), "HK031");
    EXPECT_EQ(shop.Raw("update book.piece set owner_id = (select party_id from book.party where name = 'Ister')" + WhereTag(tag)), "HK031");
  }
  for (const char* table : {"cut", "stroke"})
    EXPECT_EQ(shop.Raw(std::string("update book.") + table + " set lot_id = " + OtherLot()), "HK031") << table;
}

TEST_F(RowsRefuse, ALotStaysWhatItIs_HK031) {
  for (const char* set :
       {"heat = 'M2209'", "grade_id = 2", "condition = '+A'", "mill_id = (select party_id from book.party where name = 'Kestholm')",
        "section_id = (select max(section_id) + 1 from book.section)"})
    EXPECT_EQ(shop.Raw(std::string("update book.lot set ") + set), "HK031") << set;
}

TEST_F(RowsRefuse, TagOriginAndMadeLengthAreNotEdited_HK031) {
  for (const char* set :
       {"tag = 'A999999X'", "made_length_nm = made_length_nm + 1", "parent_id = null", "path = array[1::bigint]", "from_cut_id = null"})
    EXPECT_EQ(shop.Raw(std::string("update book.piece set ") + set + WhereTag(drop)), "HK031") << set;
}

// What a drop gets, its parent has given: the drop adds up with itself, its parent no more.
TEST_F(RowsRefuse, ADropMadeLongerThanWhatItsParentGave_HK030) {
  EXPECT_EQ(shop.Raw("update book.piece set made_length_nm = made_length_nm + 1, length_nm = length_nm + 1" + WhereTag(drop), "not_cut"),
            "HK030");
}

// A drop inserted by hand under `parent`, with the given columns instead of the right ones.
std::string DropSql(const std::string& parent, const std::string& lot = "lot_id", const std::string& owner = "owner_id",
                    const std::string& length = "1000", const std::string& parent_length = "made_length_nm") {
  return "insert into book.piece (piece_id, tag, kind, lot_id, owner_id, parent_id, parent_made_length_nm, "
         "path, made_length_nm, length_nm, ends, state)"
         " overriding system value select 9999, 'X', 'drop', " +
      lot + ", " + owner + ", piece_id, " + parent_length + ", path || 9999::bigint, " + length + ", " + length +
      ", 1, 'on rack' from book.piece where tag = '" + parent + "'";
}

TEST_F(RowsRefuse, ADropOfAnotherLotOrOwnerThanItsParentByKey_23503) {
  shop.Receive({.heat = "K3317"});
  EXPECT_EQ(shop.Raw(DropSql(drop, OtherLot())), "23503");
  EXPECT_EQ(shop.Raw(DropSql(drop, "lot_id", "(select party_id from book.party where name = 'Ister')")), "23503");
}

TEST_F(RowsRefuse, ACutPieceOfAnotherLotOrOwnerThanWhatItWasCutFromByKey_23503) {
  shop.Receive({.heat = "K3317"});
  const std::string stroke =
      "insert into book.stroke (cut_id, piece_id, lot_id, owner_id, seq, class, length_nm, kerf_nm, "
      "cut_line_id)"
      " select cut_id, piece_id, %, 99, 'good', 1, 0, 1 from book.cut";
  for (const std::string& whose :
       {OtherLot() + ", owner_id", std::string("lot_id, (select party_id from book.party where name = 'Ister')")}) {
    std::string sql = stroke;
    EXPECT_EQ(shop.Raw(sql.replace(sql.find('%'), 1, whose)), "23503") << whose;
  }
}

TEST_F(RowsRefuse, APieceWithoutALotOrAnOwner_23502) {
  EXPECT_EQ(shop.Raw(DropSql(drop, "null")), "23502");
  EXPECT_EQ(shop.Raw(DropSql(drop, "lot_id", "null")), "23502");
}

TEST_F(RowsRefuse, ADropThatNamesOtherAncestorsThanItsParent_HK031) {
  std::string forgets = DropSql(drop);
  forgets.replace(forgets.find("path || 9999::bigint"), 20, "array[piece_id, 9999::bigint]");
  EXPECT_EQ(shop.Raw(forgets), "HK031");
}

TEST_F(RowsRefuse, APieceLongerThanItsParentByCheck_23514_AndAWrongParentLengthByKey_23503) {
  EXPECT_EQ(shop.Raw(DropSql(drop, "lot_id", "owner_id", "made_length_nm + 1")), "23514");
  EXPECT_EQ(shop.Raw(DropSql(drop, "lot_id", "owner_id", "made_length_nm + 1", "made_length_nm + 1")), "23503");
  EXPECT_EQ(shop.Raw(DropSql(drop, "lot_id", "owner_id", "1000", "null")), "23514");
}

TEST_F(RowsRefuse, ANewDropWithoutMetalTakenFromItsParentAtCommit_HK030) { EXPECT_EQ(shop.Raw(DropSql(drop)), "HK030"); }

TEST_F(RowsRefuse, ABalanceThatIsOneNanometreOffAtCommit_HK030) {
  for (const char* step : {"- 1", "- 1000000"})
    EXPECT_EQ(shop.Raw(std::string("update book.piece set length_nm = length_nm ") + step + WhereTag(drop)), "HK030");
  EXPECT_EQ(shop.Raw("update book.stroke set length_nm = length_nm + 1 where seq = 2"), "HK030");
  EXPECT_EQ(shop.Raw("update book.stroke set kerf_nm = kerf_nm - 1 where seq = 1"), "HK030");
  EXPECT_EQ(shop.Raw("insert into book.metal_out (piece_id, lot_id, owner_id, class, length_nm) select "
                     "piece_id, lot_id, owner_id, 'scrap', 1 from book.piece" +
                     WhereTag(drop)),
            "HK030");
}

// A stroke leaves the adding up to a piece that is written after it: in whatever order they come, and whatever was asked before the commit.
TEST_F(RowsRefuse, AStrokeWhosePieceIsWrittenAlongWithIt_HK030) {
  const std::string cut =
      "insert into book.cut (piece_id, lot_id, owner_id, saw_id, length_in_nm) select piece_id, lot_id, owner_id, 1, length_nm from book.piece" +
      WhereTag(drop) + "; ";
  const std::string stroke =
      "insert into book.stroke (cut_id, piece_id, lot_id, owner_id, seq, class, length_nm, kerf_nm)"
      " select cut_id, piece_id, lot_id, owner_id, (select count(*) + 1 from book.stroke s where s.cut_id = c.cut_id), 'trim', 5, 1"
      " from book.cut c where not closed; ";
  const std::string shorter = "update book.piece set length_nm = length_nm - 6" + WhereTag(drop) + "; ";
  const std::string written = "update book.piece set doubt_nm = doubt_nm + 1" + WhereTag(drop) + "; ";
  const std::string asked = "set constraints all immediate; set constraints all deferred; ",
                    kept = "set constraints all immediate; select 1 / 0";
  for (const std::string& right : {stroke + shorter, shorter + stroke, stroke + shorter + written, stroke + written + shorter,
                                   written + shorter + stroke, stroke + stroke + shorter + shorter,
                                   stroke + "savepoint s; " + shorter + "release s; ", "savepoint s; " + stroke + "release s; " + shorter,
                                   stroke + shorter + asked + written, stroke + shorter + asked + stroke + shorter})
    EXPECT_EQ(shop.Raw(cut + right + kept), "22012") << right;
  for (const std::string& wrong : {stroke, stroke + written, written + stroke, shorter + written, stroke + shorter + stroke,
                                   stroke + stroke + shorter, stroke + shorter + stroke + written, stroke + shorter + asked + stroke,
                                   stroke + shorter + asked + stroke + written, stroke + "savepoint s; " + shorter + "rollback to s; ",
                                   stroke + "savepoint s; " + written + "release s; ", "savepoint s; " + stroke + "release s; " + written,
                                   "savepoint s; " + stroke + written + "release s; ", stroke + shorter + shorter + written})
    EXPECT_EQ(shop.Raw(cut + wrong), "HK030") << wrong;
}

TEST_F(RowsRefuse, ACutThatDoesNotAddUpThoughItsPieceDoes_HK030) {
  // one nanometre more unexplained inside the cut, one less outside it: the piece adds up, the cut does not
  const std::string out =
      "insert into book.metal_out (piece_id, lot_id, owner_id, cut_id, class, length_nm, reason, named)"
      " select piece_id, lot_id, owner_id, %, 'unexplained', ^, 'r', 'n' from book.cut";
  const auto filled = [&](const std::string& cut, const std::string& nm) {
    std::string text = out;
    return text.replace(text.find('%'), 1, cut).replace(text.find('^'), 1, nm);
  };
  EXPECT_EQ(shop.Raw(filled("cut_id", "1") + "; " + filled("null", "-1")), "HK030");
  EXPECT_EQ(shop.Raw("update book.cut set length_in_nm = length_in_nm + 1"), "HK030");
}

TEST_F(RowsRefuse, MetalThatCameOffInTheCutOfAnotherPiece_HK031) {
  EXPECT_EQ(shop.Raw("insert into book.metal_out (piece_id, lot_id, owner_id, cut_id, class, length_nm) "
                     "select p.piece_id, p.lot_id, p.owner_id, c.cut_id, 'scrap', 1"
                     " from book.piece p, book.cut c where tag = '" +
                     drop + "'; update book.piece set length_nm = length_nm - 1" + WhereTag(drop)),
            "HK031");
}

TEST_F(RowsRefuse, MetalIsNotMovedFromOnePieceToAnother_HK031) {
  const std::string other = shop.ReceiveCertified({}).at(0);
  Do(shop.saw, "correct_length", {drop, Mm(5000), 0, "tape"});
  EXPECT_EQ(shop.Raw("update book.metal_out set piece_id = (select piece_id from book.piece where tag = '" + other +
                     "')"
                     "; update book.piece set length_nm = length_nm - 112000000" +
                     WhereTag(other)),
            "HK031");
  EXPECT_EQ(shop.Raw("update book.cut set piece_id = (select piece_id from book.piece where tag = '" + other + "')"), "HK031");
}

TEST_F(RowsRefuse, UnexplainedMetalWithoutReasonOrName_23514) {
  const std::string out =
      "insert into book.metal_out (piece_id, lot_id, owner_id, class, length_nm, reason, named) select "
      "piece_id, lot_id, owner_id, 'unexplained', 1, ";
  for (const char* words : {"null, 'somebody'", "' ', 'somebody'", "'a reason', null", "'a reason', ''"})
    EXPECT_EQ(shop.Raw(out + words + " from book.piece" + WhereTag(drop)), "23514") << words;
}

TEST_F(RowsRefuse, NegativeLengths_23514) {
  EXPECT_EQ(shop.Raw("update book.piece set length_nm = -1" + WhereTag(drop)), "23514");
  EXPECT_EQ(shop.Raw("update book.piece set doubt_nm = -1" + WhereTag(drop)), "23514");
  EXPECT_EQ(shop.Raw("update book.stroke set length_nm = -1 where seq = 2"), "23514");
  EXPECT_EQ(shop.Raw("update book.stroke set kerf_nm = -1 where seq = 2"), "23514");
  EXPECT_EQ(shop.Raw("update book.piece set length_nm = made_length_nm + 1" + WhereTag(drop)), "23514");
}

TEST_F(RowsRefuse, WhatIsCutUpDoesNotComeBackWithoutADeedThatSaysWhy_HK032) {
  EXPECT_EQ(shop.Raw("update book.piece set state = 'on rack', length_nm = 1" + WhereTag(bar)), "HK032");
  EXPECT_EQ(shop.Raw("update book.piece set state = 'on rack', length_nm = 1" + WhereTag(bar), "found_again"),
            "HK032");  // no reason
  EXPECT_EQ(shop.Raw("update book.piece set state = 'on rack'" + WhereTag(bar)), "23514");
  // even with the deed and a reason the metal must add up
  EXPECT_EQ(shop.Raw("select set_config('heatkeep.reason', 'found', true); update book.piece set state = 'on "
                     "rack', length_nm = 1" +
                         WhereTag(bar),
                     "found_again"),
            "HK030");
}

TEST_F(RowsRefuse, TwoLivePromisesOfOnePieceByKey_23505) {
  const std::string promise =
      "insert into book.promise (piece_id, words, promised_by, expires_at) select piece_id, 'w', 'p', now() "
      "+ interval '1 day' from book.piece" +
      WhereTag(drop);
  EXPECT_EQ(shop.Raw(promise + "; " + promise), "23505");
}

TEST_F(RowsRefuse, BarsOfTwoLotsUnderOneStrapByKey_23503) {
  shop.Receive({.heat = "K3317"});
  EXPECT_EQ(shop.Raw("insert into book.bundle (lot_id, name) select lot_id, 'strap' from book.lot where heat = 'K3317';"
                     "update book.piece set bundle_id = (select max(bundle_id) from book.bundle)" +
                     WhereTag(drop)),
            "23503");
}

TEST_F(RowsRefuse, NothingKeptIsDeletedOrTruncated_HK004) {
  int tables = 0;
  for (const Row row : shop.admin.Execute("select tbl from guard.chronicled()")) {
    const std::string table = row.Text("tbl");
    EXPECT_EQ(shop.Raw("truncate book." + table + " cascade"), table == "seal" || table == "happening" ? "HK003" : "HK004") << table;
    if (shop.Number("select count(*) as n from book." + table) == 0) continue;
    EXPECT_EQ(shop.Raw("delete from book." + table), "HK004") << table;
    ++tables;
  }
  EXPECT_GT(tables, 15);
}

TEST_F(RowsRefuse, NothingKeptChangesWithoutADeed_HK002) {
  int tables = 0;
  for (const Row row : shop.admin.Execute("select tbl, key_column from guard.chronicled()")) {
    const std::string table = "book." + row.Text("tbl");
    const std::string column = shop.Word(
        "select attname::text as w from pg_attribute where attrelid = $1::regclass and attnum > 0 and "
        "attname <> $2"
        " and atttypid in ('text'::regtype, 'bigint'::regtype, 'integer'::regtype) and attgenerated = '' "
        "order by attnum desc limit 1",
        {table, row.Text("key_column")});
    if (shop.Number("select count(*) as n from " + table) == 0) continue;
    const std::string code = shop.Raw("update " + table + " set " + column + " = " + column, "");
    EXPECT_EQ(code, "HK002") << table << '.' << column;
    ++tables;
  }
  EXPECT_GT(tables, 15);
}

}  // namespace
}  // namespace heatkeep
