// What is known twice, in the book and in the program, is the same.
#include <fstream>
#include <random>
#include <set>

#include "client/book/schema_files.h"
#include "client/intake/piece_cells.h"
#include "schema/terms/papers.h"
#include "schema/terms/rows.h"
#include "schema/terms/section.h"
#include "schema/terms/tag.h"
#include "tests/schema/small_shop.h"

namespace heatkeep {
namespace {

struct Contract : testing::Test {
  static void SetUpTestSuite() { book = new TestBook; }
  static void TearDownTestSuite() { delete book; }
  std::vector<std::string> Enum(const std::string& type) {
    std::vector<std::string> words;
    for (const Row row : admin.Execute("select enumlabel::text as w from pg_enum where enumtypid = ('book.' "
                                       "|| $1)::regtype order by enumsortorder",
                                       {type}))
      words.push_back(row.Text("w"));
    return words;
  }
  inline static TestBook* book = nullptr;
  Connection admin = book->Admin();
};

using Words = std::vector<std::string>;
template <typename Kind>
Words TextsOf(std::string_view (*text)(Kind), int count) {
  Words words;
  for (int i = 0; i < count; ++i) words.emplace_back(text(static_cast<Kind>(i)));
  return words;
}

TEST_F(Contract, TheWordsOfTheBookAreTheWordsOfTheProgram) {
  EXPECT_EQ(Enum("papers"), TextsOf(PapersText, 5));  // and in the same order of strength
  EXPECT_EQ(Enum("shape"), TextsOf(ShapeText, 9));
  EXPECT_EQ(Enum("piece_kind"), TextsOf(intake::PieceKindText, 2));
  EXPECT_EQ(Enum("mark_end"), TextsOf(intake::MarkEndText, 5));
  // a file can say metal, tag, slip or none; certificate and analysis are the book's own findings
  Words read_from = TextsOf(intake::ReadFromText, 3);
  read_from.insert(read_from.end(), {"certificate", "analysis", std::string(intake::ReadFromText(intake::ReadFrom::None))});
  EXPECT_EQ(Enum("read_from"), read_from);
  EXPECT_EQ(Enum("left_fate"), (Words{"none", "drop", "scrap"}));                     // SheetBlock::fate
  EXPECT_EQ(Enum("layout_state"), (Words{"promised", "at saw", "done", "dropped"}));  // SheetBlock::state
}

std::set<std::string> CodesIn(const std::string& text) {
  std::set<std::string> codes;
  for (std::size_t at = text.find("HK"); at != std::string::npos; at = text.find("HK", at + 1)) {
    const std::string code = text.substr(at, 5);
    if (code.size() == 5 && code.find_first_not_of("0123456789", 2) == std::string::npos) codes.insert(code);
  }
  return codes;
}

TEST_F(Contract, EveryErrorCodeRaisedIsInTheListAndTheOtherWayRound) {
  std::string raised, listed;
  for (const auto& file : std::filesystem::recursive_directory_iterator(SchemaFolder())) {
    if (file.path().extension() != ".sql") continue;
    std::ifstream in(file.path());
    for (std::string line; std::getline(in, line);) {
      if (line.starts_with("--")) {
        if (file.path().filename() == "session.sql") listed += line + '\n';
      } else {
        raised += line + '\n';
      }
    }
  }
  EXPECT_EQ(CodesIn(raised), CodesIn(listed));
  EXPECT_GT(CodesIn(listed).size(), 20u);
}

TEST_F(Contract, TagsAreTheSameInTheBookAndInTheProgram) {
  for (const char site : {'A', 'M', 'Z'}) {
    const Result rows =
        admin.Execute("select n, guard.tag_of($1, n) as tag from generate_series(0, 999999, 373) n", {std::string(1, site)});
    ASSERT_GT(rows.size(), 2600);
    for (const Row row : rows) ASSERT_EQ(row.Text("tag"), MakeTag(site, row.Int("n")));
  }
}

TEST_F(Contract, CheckCharactersAreTheSameForAnyText) {
  std::mt19937_64 dice(4711);
  const std::string characters = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";
  Json bodies = Json::array();
  for (int i = 0; i < 3000; ++i) {
    std::string body;
    for (std::uint64_t n = 1 + dice() % 12; n > 0; --n) body += characters[dice() % 36];
    bodies.push_back(body);
  }
  for (const Row row : admin.Execute("select b, guard.tag_check(b) as c from jsonb_array_elements_text($1) b", {bodies.dump()}))
    ASSERT_EQ(row.Text("c"), std::string(1, CheckCharacter(row.Text("b"))));
}

struct Bar {
  Section section;
  std::int64_t density, length;
};

Json AsJson(const Bar& bar) {
  const bool tube = bar.section.shape == Shape::Tube;
  return {{"shape", ShapeText(bar.section.shape)},
          {"d1", bar.section.first.nm},
          {"d2", tube ? 0 : bar.section.second.nm},
          {"t", tube ? bar.section.second.nm : bar.section.third.nm},
          {"r1", bar.section.r1.nm},
          {"r2", bar.section.r2.nm},
          {"g", bar.section.named == nullptr ? 0 : bar.section.named->grams_per_metre},
          {"density", bar.density},
          {"length", bar.length}};
}

TEST_F(Contract, AreaAndMassAreTheSameToTheSquareMicrometreAndGram) {
  std::mt19937_64 dice(50);
  const auto upto = [&](std::int64_t n) { return 1 + static_cast<std::int64_t>(dice() % static_cast<std::uint64_t>(n)); };
  std::vector<Bar> bars;
  Json asked = Json::array();
  for (int i = 0; i < 5000; ++i) {
    Bar bar{{static_cast<Shape>(i % 7), {}, {}}, upto(20000), upto(12'000'000'000)};
    const std::int64_t grain = i % 3 == 0 ? 1 : i % 3 == 1 ? 396'875 : 500'000;  // nanometres, 1/64 in, half millimetres
    bar.section.first = {(1'000'000 + upto(500'000'000)) / grain * grain + grain};
    if (bar.section.shape == Shape::Flat) bar.section.second = {upto(bar.section.first.nm - 1)};
    if (bar.section.shape == Shape::Tube) bar.section.second = {upto((bar.section.first.nm - 1) / 2)};
    if (bar.section.shape == Shape::Angle || bar.section.shape == Shape::Box) {
      bar.section.second = {bar.section.first.nm / 2 + upto(bar.section.first.nm / 2)};
      bar.section.third = {upto(bar.section.second.nm / 8)};
      bar.section.r1 = {upto(3 * bar.section.third.nm)};
      bar.section.r2 = {upto(bar.section.third.nm)};
    }
    bars.push_back(bar);
    asked.push_back(AsJson(bar));
  }
  bars.push_back({{Shape::Square, {1'000'500}, {}}, 1, 1});  // area 1 001 000.25
  asked.push_back(AsJson(bars.back()));
  for (const char* words : {"channel UPN 100", "channel C4x5.4", "beam IPE 80", "beam W8x31"}) {
    bars.push_back({ReadSection(words), 7850, 6'000'000'000});
    asked.push_back(AsJson(bars.back()));
  }
  const Result rows = admin.Execute(
      "select a, guard.mass_g((b ->> 'length')::bigint, a, (b ->> 'density')::int) as g from "
      "jsonb_array_elements($1) with ordinality n (b, i)"
      " cross join lateral guard.section_area_um2((b ->> 'shape')::book.shape, (b ->> 'd1')::bigint, (b ->> "
      "'d2')::bigint, (b ->> 't')::bigint, (b ->> 'r1')::bigint, (b ->> 'r2')::bigint, (b ->> 'g')::bigint) a order by i",
      {asked.dump()});
  ASSERT_EQ(rows.size(), static_cast<int>(bars.size()));
  for (int i = 0; i < rows.size(); ++i) {
    const Bar& bar = bars[static_cast<std::size_t>(i)];
    ASSERT_EQ(rows[i].Int("a"), AreaOf(bar.section).um2) << SectionKey(bar.section);
    ASSERT_EQ(rows[i].Int("g"), MassOf(bar.section, {bar.density}, {bar.length}).g) << SectionKey(bar.section) << ' ' << bar.length;
  }
}

// A hair below half a gram: a quotient cut to some decimals and then rounded would go up.
TEST_F(Contract, MassIsRoundedOnceAHairBelowAndAtHalfAGram) {
  for (const auto& [length, area, density] : std::vector<std::array<std::int64_t, 3>>{{500'000'000, 1'000'000'000, 1},
                                                                                      {499'999'999, 1'000'000'001, 1},
                                                                                      {12'345'678'499, 1'000'000'000'000, 1},
                                                                                      {985'089'263'560'854, 1'015'644, 1},
                                                                                      {892'924'078'695'126, 1'120'476, 1}}) {
    const Row row = admin
                        .Execute(
                            "select guard.mass_g($1, $2, $3) as g, div($1::numeric * $2 * $3 * 2 + "
                            "1000000000000000000, 2000000000000000000)::bigint as exact",
                            {length, area, density})
                        .Only();
    EXPECT_EQ(row.Int("g"), row.Int("exact")) << length;
  }
}

}  // namespace
}  // namespace heatkeep
