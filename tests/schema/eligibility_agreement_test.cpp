// What may be cut from what: guard.may_not_serve for the book, WhyNot for the allocator, on the same invented
// metal.
#include <iostream>
#include <random>

#include "client/allocator/eligible.h"
#include "tests/schema/small_shop.h"

namespace heatkeep {
namespace {

using allocator::PaperType;

class Eligibility : public ShopTest {
 protected:
  void SetUp() override {
    spoilt = true;  // the metal is put in by hand, without receipts
    script = "select set_config('heatkeep.deed', 'invented', true);";
    for (std::int64_t mm : {60, 80}) Script("select guard.section('" + Round(mm).dump() + "')");
    StandIns();
    for (int i = 0; i < 40; ++i) AddLot(i);
    for (int i = 0; i < 80; ++i) AddWanted(i);
    Connection admin = shop.book.Admin();
    Transaction all(admin);
    admin.ExecuteScript(script);
    all.Commit();
  }

  template <typename T>
  T Of(std::initializer_list<T> list) {
    return *(list.begin() + dice() % list.size());
  }
  void Script(const std::string& sql) { script += sql + ";\n"; }
  static std::string Grade(const std::string& name) { return "(select grade_id from book.grade where designation = '" + name + "')"; }
  static std::string SectionId(const std::string& label) { return "(select section_id from book.section where label = '" + label + "')"; }
  static std::string Party(const std::string& name) {
    return name.empty() ? "0" : "(select party_id from book.party where name = '" + name + "')";
  }

  void StandIns() {
    for (const auto& [asked, given] : {std::pair{"42CrMo4", "C45E"}, {"C45E", "X2CrNiMo17-12-2"}}) {
      problem.grades.push_back({asked, given, "", {}});
      Script(std::string("insert into book.grade_standin (asked_grade_id, offered_grade_id, signed_by, "
                         "reason) values (") +
             Grade(asked) + ", " + Grade(given) + ", 'q', 'r')");
    }
    problem.sections.push_back({"round 60", "round 80", "", {}});
    Script(
        "insert into book.section_standin (asked_section_id, offered_section_id, signed_by, reason) values "
        "(" +
        SectionId("round 60") + ", " + SectionId("round 80") + ", 'q', 'r')");
  }

  void AddLot(int i) {
    allocator::Piece p;
    p.grade = Of<std::string>({"42CrMo4", "42CrMo4", "C45E", "X2CrNiMo17-12-2", ""});
    p.section = Of<std::string>({"round 60", "round 80"});
    p.condition = Of<std::string>({"", "+QT", "+A"});
    p.heat = p.grade.empty() || Of({0, 0, 1}) == 1 ? "" : "H" + std::to_string(i);
    p.papers = p.heat.empty() ? PaperType::None
                              : Of({PaperType::None, PaperType::Type21, PaperType::Type22, PaperType::Type31, PaperType::Type32});
    const bool heat = !p.heat.empty();
    Script(
        "insert into book.lot (lot_id, mill_id, heat, section_id, grade_id, condition, identity, papers, "
        "papers_state) overriding system value values (" +
        std::to_string(i + 1) + ", " + (heat ? Party("Vandrek") + ", '" + p.heat + "'" : std::string("null, null")) + ", " +
        SectionId(p.section) + ", " + (p.grade.empty() ? "null" : Grade(p.grade)) + ", '" + p.condition + "', '" +
        (heat                  ? "heat"
             : p.grade.empty() ? "unknown"
                               : "grade only") +
        "', '" + NameOf(p.papers) + "', '" + (p.papers == PaperType::None ? "none" : "here") + "')");
    pieces.push_back(p);
  }

  void AddWanted(int i) {
    allocator::Line l;
    l.order = "O" + std::to_string(i);
    l.grade = Of<std::string>({"42CrMo4", "C45E", "X2CrNiMo17-12-2"});
    l.section = Of<std::string>({"round 60", "round 80"});
    l.condition = Of<std::string>({"", "", "+QT", "+A"});
    l.papers = Of({PaperType::None, PaperType::None, PaperType::Type21, PaperType::Type22, PaperType::Type31, PaperType::Type32});
    l.owner = Of<std::string>({"", "", "Ister", "Pallant"});
    l.one_heat = Of<std::string>({"", "", "a"});
    l.max_heats = Of({0, 0, 0, 2});
    Json n{{"order", l.order},
           {"line", "1"},
           {"section", {{"shape", "round"}, {"dim1_nm", Mm(std::stoi(l.section.substr(6)))}, {"label", l.section}}},
           {"grade", l.grade},
           {"condition", l.condition},
           {"length_nm", Mm(100)},
           {"quantity", 5},
           {"papers", NameOf(l.papers)},
           {"owner", l.owner},
           {"customer", l.owner},
           {"one_heat", l.one_heat}};
    if (l.max_heats > 0) n["max_heats"] = l.max_heats;
    Do(shop.planner, "add_cut_list", {Json({{"name", l.order}, {"lines", Json::array({n})}}).dump()});
    lines.push_back(l);
  }

  std::mt19937_64 dice{1722};
  std::string script;
  allocator::Problem problem;
  std::vector<allocator::Piece> pieces;
  std::vector<allocator::Line> lines;
};

TEST_F(Eligibility, TheBookAndTheAllocatorLetTheSameMetalServeTheSameLines) {
  int may = 0, may_not = 0;
  for (const std::string& owner : {std::string(), std::string("Ister"), std::string("Pallant")}) {
    const Result rows = shop.admin.Execute("select l.lot_id, order_no, guard.may_not_serve(l.lot_id, " + Party(owner) +
                                           ", c) as words"
                                           " from book.lot l, book.cut_line c");
    ASSERT_EQ(static_cast<std::size_t>(rows.size()), pieces.size() * lines.size());
    for (const Row row : rows) {
      allocator::Piece piece = pieces.at(static_cast<std::size_t>(row.Int("lot_id") - 1));
      piece.owner = owner;
      const allocator::Line& line = lines.at(std::stoul(row.Text("order_no").substr(1)));
      const auto program = WhyNot(problem, piece, line);
      EXPECT_EQ(row.IsNull("words"), !program.has_value())
          << "lot " << row.Int("lot_id") << " for " << line.order << ": the book says \"" << row.OptionalText("words").value_or("yes")
          << "\", the program says \"" << program.value_or("yes") << '"';
      (program ? may_not : may)++;
    }
  }
  std::cout << may << " may, " << may_not << " may not, by both\n";
  EXPECT_GT(may, 200);
  EXPECT_GT(may_not, 2000);
}

TEST_F(Eligibility, ACancelledLineIsServedByNothing) {
  Connection admin = shop.book.Admin();
  Transaction all(admin);
  admin.ExecuteScript("select set_config('heatkeep.deed', 'invented', true); update book.cut_line set cancelled = true");
  all.Commit();
  EXPECT_EQ(shop.Number("select count(*) as n from book.lot, book.cut_line c where guard.may_not_serve(lot_id, "
                        "c.owner_id, c) is null"),
            0);
}

}  // namespace
}  // namespace heatkeep
