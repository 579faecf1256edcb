// A shop small enough to see at a glance, in a book of its own, and short verbs to work it; every verb is
// called by the role whose work it is, really logged in.
//
//   saws 1 (kerf 2, trim 10, grip 60, bundled 120, to 260) and 2 (the same, to 500) and 3 (grip 0, trim 0)
//   places B1-1 (to 6.5 m), B1-2 (to 1 m), B1-3 (to 100 kg), GATE, SAW-1, SAW-2, SAW-3, QUAR
//   mills Vandrek, Kestholm; supplier Vandrek; customers Pallant, Drewe, Ister
//   grades 42CrMo4 (1.7225), C45E (1.1191), X2CrNiMo17-12-2 (1.4404, density 8000); rests are kept from 150;
//   heats are not read back at the saw
// All in millimetres unless a name says otherwise. Verbs throw DbError when the book refuses.
#pragma once

#include <gtest/gtest.h>

#include <optional>
#include <string>
#include <vector>

#include "client/gateway/deeds.h"
#include "tests/fixture/test_book.h"

namespace heatkeep {

constexpr std::int64_t Mm(std::int64_t mm) { return mm * 1'000'000; }

// {"shape":"round","dim1_nm":..,"label":"round 80"}
Json Round(std::int64_t mm);

struct Bars {
  std::string heat = "M2208", mill = "Vandrek", grade = "42CrMo4", condition = "+QT", read_from = "metal";
  std::int64_t length = 6000;
  int count = 1;
  std::optional<int> slip_count = {};
  std::optional<std::int64_t> weighed_g = {};
  std::string place = "B1-1", papers_state = "awaited", owner = {}, kind = "bar", old_tag = {};
  int ends = 0;
  std::int64_t doubt = 0, round = 80;
};
Json LineJson(const Bars& bars, const std::string& line);

struct Wanted {
  std::string line = "10";
  std::int64_t length = 290;
  int quantity = 14;
  std::string order = "O1", customer = "Pallant", papers = "3.1", grade = "42CrMo4", condition = {}, owner = {}, one_heat = {};
  std::int64_t round = 80, minus = 0, plus = 0;
  std::optional<int> max_heats = {};
};

struct Cuts {
  int count = 1;
  std::int64_t length = 290;
  std::string line = "10", order = "O1";
};

// Strokes and what is left, as record_cut takes them.
Json Good(int count, std::int64_t length, const std::string& line = "10", const std::string& order = "O1", std::int64_t kerf = 2);
Json Trim();
Json Fault(const std::string& word, std::int64_t length, const std::string& fault, int count = 1, std::int64_t kerf = 2);
Json DropLeft(std::int64_t length, const std::string& place = "B1-1");
Json ScrapLeft();
Json SamePiece(const std::string& place = "B1-1");

// One statement that answers one JSON value.
Json Answer(Connection& who, const std::string& sql, const std::vector<Param>& params = {});
// One deed: "pull", its arguments after the request number (types are the book's). A fresh request number.
Json Do(Connection& who, const std::string& deed, const std::vector<Param>& params);

class SmallShop {
 public:
  SmallShop();

  TestBook book;
  Connection clerk, planner, saw, quality, owner, admin;

  Json Deliver(const std::string& note, const std::vector<Bars>& lines);
  std::vector<std::string> Receive(const Bars& bars);  // the tags, under a note of their own
  // PO-17 with Vandrek: lines 10, 20, ... of so many bars of 80 round, 6 000, 42CrMo4 +QT with a 3.1 each.
  Json Expect(const std::vector<int>& bars);
  Json Certify(const std::string& heat, const Bars& as = {}, const std::string& type = "3.1");
  std::vector<std::string> ReceiveCertified(const Bars& bars);
  Json AddLine(const Wanted& wanted);  // a cut list of one line
  Json AddLines(const std::vector<Wanted>& wanted);

  // The plan of one layout on saw 1 (or another), with the arithmetic of the ordinary ending; the answer of
  // commit_plan.
  Json PlanFor(const std::string& tag, const std::vector<Cuts>& cuts, const std::string& saw_name = "1");
  Json Promise(const std::string& tag, const std::vector<Cuts>& cuts, const std::string& saw_name = "1");
  Json Pull(const std::string& tag, const std::string& saw_name = "1");
  // Promise and pull, both of which must succeed.
  void Fetch(const std::string& tag, const std::vector<Cuts>& cuts);
  // One record_cut; finished when `left` is not null. `more` is merged into the body.
  Json Record(const std::string& tag, const Json& strokes, const Json& left = nullptr, const Json& more = Json::object());
  Json Hold(const std::string& heat);
  Json Ship(const std::string& note, int count, const std::string& line = "10", const std::string& order = "O1");

  // Looking behind the book's back.
  std::int64_t Number(const std::string& sql, const std::vector<Param>& params = {});
  std::string Word(const std::string& sql, const std::vector<Param>& params = {});
  std::int64_t LengthOf(const std::string& tag);  // nm
  std::int64_t Balance(const std::string& heat,
                       const std::string& word);  // nm of one class of the heat, 0 if none

  // Runs the script as the superuser and again as heatkeep_book, each in a transaction that claims the deed
  // (none when empty) and commits; answers "" when it went through, the SQLSTATE, or both with a slash where
  // they differ.
  std::string Raw(const std::string& script, const std::string& deed = "put_away");

  // The checks of verify_book that fail, without that of the server's settings.
  std::vector<std::string> Broken();
};

// Every test has a shop of its own, and after every test the book must be whole unless the test spoilt it
// itself.
class ShopTest : public testing::Test {
 protected:
  void TearDown() override;
  int Happenings(const std::string& tag, const std::string& deed);
  // As the superuser with every trigger off: what no role can do. The book need not be whole at the end then.
  void Behind(const std::string& sql);
  // The checks that fail of verify_book or verify_new, but for the server's own: that of the tests keeps nothing.
  std::vector<std::string> Failing(const std::string& verify = "verify_book");
  // Of a heat, class by class, in millimetres.
  void ExpectBalance(const std::string& heat, const std::vector<std::pair<std::string, std::int64_t>>& classes);
  SmallShop shop;
  bool spoilt = false;
};

// What `call` was refused with; an empty sqlstate when it was not.
template <typename Call>
DbError Refusal(Call&& call) {
  try {
    call();
  } catch (const DbError& error) { return error; }
  return {DbError::Kind::Bug, "", "was not refused"};
}
template <typename Call>
std::string Code(Call&& call) {
  return Refusal(call).sqlstate;
}

}  // namespace heatkeep
