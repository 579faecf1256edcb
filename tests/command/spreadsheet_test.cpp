// Spreadsheets brought to the book, and looking at files before anything is done.

#include "tests/command/works.h"
#include "tests/intake/packed.h"

namespace heatkeep::command {
namespace {

struct Spreadsheets : Works {
  // A workbook of text cells; one that begins with '#' is a number.
  std::string Sheet(const std::string& name, const std::vector<Words>& rows) {
    std::string xml;
    for (const Words& row : rows) {
      xml += "<row>";
      for (const std::string& cell : row)
        xml += cell.starts_with('#') ? "<c><v>" + cell.substr(1) + "</v></c>" : "<c t=\"str\"><v>" + cell + "</v></c>";
      xml += "</row>";
    }
    return File(name, intake::Xlsx(xml));
  }

  const Words head{"note", "supplier", "mill", "heat", "read_from", "grade", "section", "length", "count"};
};

TEST_F(Spreadsheets, AreReceivedLikeTextFilesAndOnlyOnce) {
  const std::string file = Sheet("note.xlsx", {head, {"N1", "Vandrek", "Vandrek", "07715", "metal", "42CrMo4", "round 80", "#6000", "#2"}});
  const Ran ran = As("clerk", {"receive", file});
  EXPECT_EQ(ran.code, 0) << ran;
  EXPECT_EQ(ran.out, "2 pieces taken in, 474 kg by theory\n");
  EXPECT_EQ(Word("select heat as w from book.lot"), "07715");
  const std::string before = Digest();
  EXPECT_TRUE(Has(As("clerk", {"receive", file}).out, "nothing was added"));
  EXPECT_EQ(Digest(), before);
}

TEST_F(Spreadsheets, NameTheCellOrTheRowOfWhatIsWrong) {
  const std::string before = Digest();
  const std::string file = Sheet("note.xlsx", {head, {"N1", "Vandrek", "Vandrek", "K1", "metal", "42CrMo4", "round 80", "six", "#2"}});
  const Ran ran = As("clerk", {"receive", file});
  EXPECT_EQ(ran.code, 2);
  EXPECT_TRUE(Has(ran.err, file + ":Rack!H2: length: ")) << ran;
  const std::string other = Sheet("other.xlsx", {head, {"N1", "Nobody", "Vandrek", "K1", "metal", "42CrMo4", "round 80", "#6000", "#2"}});
  EXPECT_TRUE(Has(As("clerk", {"receive", other}).err, other + ":Rack!2: supplier \"Nobody\" is not in the book")) << ran;
  EXPECT_TRUE(Has(As("clerk", {"receive", other, "--sheet", "Yard"}).err, "there is no sheet \"Yard\"; expected one of: \"Rack\""));
  EXPECT_EQ(Digest(), before);
}

TEST_F(Spreadsheets, LookShowsWhatWasUnderstoodAndDoesNothing) {
  const std::string file =
      File("cuts.csv", "Order;Line;Section;Grade;Length;Quantity\n4711;1;round 2in;C45E;352,4;14\n4711;1;round 50;C45E;100;2\n");
  const std::string before = Digest();
  const Ran ran = Heatkeep({"look", file, "--as", "cuts"});
  EXPECT_EQ(ran.code, 2);
  EXPECT_TRUE(Has(ran.out, "format    CSV, UTF-8, cells parted by semicolons, decimal comma\n")) << ran;
  EXPECT_TRUE(Has(ran.out, "column    E  \"Length\" is length, mm where no unit is written\n")) << ran;
  EXPECT_TRUE(Has(ran.out, "lines     2, good 1\nline 2\n  order         4711\n")) << ran;
  EXPECT_TRUE(Has(ran.out, "  length        352.4 mm\n")) << ran;
  EXPECT_TRUE(Has(ran.out, ":3: order and line \"4711 1\" stands in line 2 already")) << ran;
  EXPECT_TRUE(ran.out.ends_with("nothing was changed\n"));
  const Json json = Json::parse(Heatkeep({"look", file, "--as", "cuts", "--json", "--rows", "1"}).out);
  EXPECT_EQ(json["encoding"], "UTF-8");
  EXPECT_EQ(json["delimiter"], ";");
  EXPECT_EQ(json["decimal_mark"], ",");
  EXPECT_EQ(json["columns"][2]["is"], "section");
  EXPECT_EQ(json["rows"][0]["values"]["section"], "round 2 in");
  EXPECT_EQ(json["problems"][0]["line"], 3);
  EXPECT_EQ(Digest(), before);
  EXPECT_EQ(Heatkeep({"look", file, "--as", "apples"}).code, 2);
  EXPECT_EQ(Heatkeep({"look", PathOf("none.csv"), "--as", "cuts"}).code, 2);
}

TEST_F(Spreadsheets, LookNamesTheSheetAndItsCells) {
  const std::string file =
      Sheet("old.xlsx", {{"old_tag", "kind", "grade", "section", "length", "heat"}, {"1", "bar", "C45E", "round 50", "#6000", "#7715"}});
  const Json json = Json::parse(Heatkeep({"look", file, "--as", "opening", "--json"}).out);
  EXPECT_EQ(json["format"], "XLSX");
  EXPECT_EQ(json["sheet"], "Rack");
  EXPECT_EQ(json["good_lines"], 1);
  EXPECT_EQ(json["warnings"][0]["cell"], "Rack!F2");
}

}  // namespace
}  // namespace heatkeep::command
