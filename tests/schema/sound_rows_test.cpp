// The checks of pieces and strokes, which stand in one function a table (migration 0029): each refuses under its own name, whoever writes
// the row.
#include "tests/schema/small_shop.h"

namespace heatkeep {
namespace {

struct Wrong {
  const char* changes;  // of a good row, as an SQL expression of type jsonb; p or s is the row
  const char* constraint;
};

struct SoundRows : ShopTest {
  std::string bar = shop.ReceiveCertified({}).at(0);
  std::string drop;

  void SetUp() override {
    shop.AddLine({});
    drop = shop.Record(bar, {Trim(), Good(3, 290)}, DropLeft(5112)).at("drop_tag");
  }
  DbError Said(const std::string& sql) {
    return Refusal([&] { shop.admin.Execute(sql); });
  }
  DbError Piece(const std::string& changes) {
    return Said("select book.piece_is_sound(jsonb_populate_record(p, " + changes + ")) from book.piece p where tag = '" + drop + "'");
  }
  DbError Stroke(const std::string& changes) {
    return Said("select book.stroke_is_sound(jsonb_populate_record(s, " + changes +
                ")) from book.stroke s where class = 'good' and seq = 2");
  }
  void ExpectRefused(const DbError& error, const Wrong& wrong) {
    EXPECT_EQ(error.sqlstate, "23514") << wrong.changes << ": " << error.message;
    EXPECT_EQ(error.constraint, wrong.constraint) << wrong.changes;
  }
};

TEST_F(SoundRows, OfPiecesEachWrongIsRefusedByItsName) {
  EXPECT_EQ(Piece("'{}'").sqlstate, "");
  EXPECT_EQ(Piece("'{\"limit_papers\": \"2.2\", \"limit_words\": \"scratched\"}'").sqlstate, "");
  for (const Wrong& wrong : std::vector<Wrong>{
           {"'{\"length_nm\": -1}'", "piece_lengths"},
           {"'{\"made_length_nm\": 0, \"length_nm\": 0}'", "piece_lengths"},
           {"jsonb_build_object('length_nm', p.made_length_nm + 1)", "piece_lengths"},
           {"'{\"doubt_nm\": -1}'", "piece_lengths"},
           {"'{\"length_nm\": 0}'", "piece_gone_is_empty"},
           {"'{\"state\": \"cut up\"}'", "piece_gone_is_empty"},
           {"'{\"parent_made_length_nm\": null}'", "piece_no_longer_than_parent"},
           {"jsonb_build_object('parent_made_length_nm', p.made_length_nm - 1)", "piece_no_longer_than_parent"},
           {"'{\"ends\": 3}'", "piece_ends"},
           {"'{\"ends\": -1}'", "piece_ends"},
           {"'{\"piece_id\": 999999}'", "piece_path"},
           {"'{\"parent_id\": null}'", "piece_path"},
           {"jsonb_build_object('path', array[p.piece_id])", "piece_path"},
           {"jsonb_build_object('path', array[999999, p.piece_id])", "piece_path"},
           {"'{\"limit_papers\": \"2.2\"}'", "piece_limit"},
           {"'{\"limit_words\": \"scratched\"}'", "piece_limit"},
           {"jsonb_build_object('before_id', 7, 'before_path', array[7])", "piece_before"},
           {"jsonb_build_object('parent_id', null, 'path', array[p.piece_id], 'before_id', 7, 'before_path', array[8])", "piece_before"},
       })
    ExpectRefused(Piece(wrong.changes), wrong);
}

TEST_F(SoundRows, APieceIsEmptyInEveryStateThatIsNotHereAndInNoOther) {
  int here = 0, gone = 0;
  for (const Row row :
       shop.admin.Execute("select s::text as state, guard.is_here(s) as here from unnest(enum_range(null::book.piece_state)) s")) {
    const std::string state = row.Text("state");
    (row.Bool("here") ? here : gone)++;
    EXPECT_EQ(Piece("'{\"state\": \"" + state + "\"}'").constraint, row.Bool("here") ? "" : "piece_gone_is_empty") << state;
    EXPECT_EQ(Piece("'{\"length_nm\": 0, \"state\": \"" + state + "\"}'").constraint, row.Bool("here") ? "piece_gone_is_empty" : "")
        << state;
  }
  EXPECT_EQ(here, 7);
  EXPECT_EQ(gone, 7);
}

TEST_F(SoundRows, OfStrokesEachWrongIsRefusedByItsName) {
  EXPECT_EQ(Stroke("'{}'").sqlstate, "");
  EXPECT_EQ(
      Stroke("'{\"not_cut\": \"typed twice\", \"class\": \"trim\", \"length_nm\": 0, \"kerf_nm\": 0, \"cut_line_id\": null}'").sqlstate,
      "");
  EXPECT_EQ(Stroke("'{\"saw_bundle_id\": 1, \"saw_stroke\": 1, \"recut_of_id\": 1}'").sqlstate, "");
  for (
      const Wrong& wrong : std::vector<Wrong>{
          {"'{\"length_nm\": -1}'", "stroke_lengths"},
          {"'{\"kerf_nm\": -1}'", "stroke_lengths"},
          {"'{\"class\": \"trim\", \"length_nm\": 0, \"kerf_nm\": 0, \"cut_line_id\": null}'", "stroke_lengths"},
          {"'{\"cut_line_id\": null}'", "stroke_good_has_line"},
          {"'{\"length_nm\": 0}'", "stroke_good_has_line"},
          {"'{\"fault\": \"bent\"}'", "stroke_fault"},
          {"'{\"class\": \"reject\"}'", "stroke_fault"},
          {"'{\"class\": \"crop\"}'", "stroke_fault"},
          {"'{\"class\": \"trim\", \"shipment_line_id\": 1}'", "stroke_ships_good"},
          {"'{\"class\": \"reject\", \"fault\": \"bent\", \"reused_as_id\": 1}'", "stroke_reused_is_elsewhere"},
          {"'{\"lab\": \"L-1\"}'", "stroke_lab"},
          {"'{\"class\": \"trim\", \"recut_of_id\": 1}'", "stroke_recut_is_good"},
          {"'{\"saw_bundle_id\": 1}'", "stroke_together"},
          {"'{\"saw_stroke\": 1}'", "stroke_together"},
          {"'{\"saw_bundle_id\": 1, \"saw_stroke\": 0}'", "stroke_together"},
          {"'{\"saw_bundle_id\": 1, \"saw_stroke\": 1, \"kerf_nm\": 0}'", "stroke_together"},
          {"'{\"from_nm\": -1}'", "stroke_from"},
          {"'{\"not_cut\": \"typed twice\"}'", "stroke_not_cut"},
          {"'{\"not_cut\": \" \", \"class\": \"trim\", \"length_nm\": 0, \"kerf_nm\": 0, \"cut_line_id\": null}'", "stroke_not_cut"},
          {"'{\"not_cut\": \"typed twice\", \"class\": \"trim\", \"length_nm\": 1, \"kerf_nm\": 0, \"cut_line_id\": null}'",
           "stroke_not_cut"},
          {"'{\"not_cut\": \"typed twice\", \"class\": \"trim\", \"length_nm\": 0, \"kerf_nm\": 0}'", "stroke_not_cut"},
          {"'{\"not_cut\": \"typed twice\", \"class\": \"trim\", \"length_nm\": 0, \"kerf_nm\": 0, \"cut_line_id\": null, \"reused_as_id\": 1}'",
           "stroke_not_cut"},
      })
    ExpectRefused(Stroke(wrong.changes), wrong);
}

TEST_F(SoundRows, AreAskedOfEveryRowThatIsWritten) {
  for (const char* role : {"set local role heatkeep_book", "set local session_replication_role = replica"})
    for (const Wrong& wrong :
         std::vector<Wrong>{{"book.piece set ends = 3", "piece_ends"}, {"book.stroke set from_nm = -1", "stroke_from"}}) {
      const DbError error = Refusal([&] {
        Transaction all(shop.admin);
        shop.admin.ExecuteScript(std::string(role) + "; select set_config('heatkeep.deed', 'put_away', true); update " + wrong.changes);
      });
      ExpectRefused(error, wrong);
    }
  EXPECT_EQ(shop.Number("select count(*) as n from pg_constraint where conname in ('piece_is_sound', 'stroke_is_sound') and convalidated"),
            2);
}

}  // namespace
}  // namespace heatkeep
