// A list in its four forms: what each says, what only paper shows, and a print that is stopped.
#include "reports/list_report.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <nlohmann/json.hpp>
#include <stdexcept>

#include "reports/bar_chart.h"
#include "tests/reports/invented_sheet.h"
#include "tests/reports/read_back.h"

namespace heatkeep {
namespace {

using K = ListKind;

PrintOptions Told(PaperSize size = PaperSize::A4) { return {size, "2026-11-25T07:40:12", "Ostrel Shaftworks"}; }

// Every piece with its bar to scale; the ages of them drawn.
ListReport Pieces(int count) {
  ListReport list;
  list.what = "Stock, piece by piece";
  list.subject = "all";
  list.currency = "EUR";
  list.count_of = "pieces";
  list.columns = {{"tag", "tag", K::Mono, 1.4},
                  {"kind", "form", K::Text, 0.7},
                  {"section", "section", K::Text, 1.3},
                  {"grade", "grade", K::Text, 1.75},
                  {"heat", "heat", K::Mono, 1.3},
                  {"length_nm", "to scale", K::Bar, 1.8},
                  {"length_nm", "length", K::Length, 1, true},
                  {"mass_g", "mass", K::Mass, 1.1, true},
                  {"worth_cents", "as new", K::Money, 1.1, true},
                  {"seen", "seen", K::Text, 0.6, false, "[  ]"}};
  for (const StockRow& r : InventedStock(count))
    list.rows.push_back({r.tag, r.kind, r.section, r.grade, r.heat, r.length.nm, r.length.nm, r.mass.g, r.mass.g / 10, std::string()});
  list.chart = ListChart{"Mass by age",
                         {{"age", "age"}, {"mass_g", "mass", K::Mass}},
                         {{std::string("under 30 days"), std::int64_t{412'000}}, {std::string("a year and more"), std::int64_t{103'000}}},
                         {1}};
  return list;
}

TEST(List, EveryPieceIsOnThePaperInTheWorkbookAndInTheTable) {
  OwnFolder folder;
  const ListReport list = Pieces(70);
  WriteListXlsx(folder / "l.xlsx", list, Told());
  WriteListCsv(folder / "l.csv", list);
  const std::string sheet = OutputOf("xlsx2csv -n List '" + (folder / "l.xlsx") + "'"), csv = WholeFile(folder / "l.csv");
  for (const PaperSize size : {PaperSize::A4, PaperSize::Letter}) {
    WriteListPdf(folder / "l.pdf", list, Told(size));
    EXPECT_EQ(CrowdingOf(folder / "l.pdf", PageWidth(size), PageHeight(size)), "");
    const std::string text = TextOf(folder / "l.pdf");
    for (const ListRow& row : list.rows)
      for (const std::size_t i : {0U, 4U}) {
        EXPECT_NE(text.find(std::get<std::string>(row[i])), std::string::npos) << std::get<std::string>(row[i]);
        EXPECT_NE(sheet.find(std::get<std::string>(row[i])), std::string::npos);
        EXPECT_NE(csv.find(std::get<std::string>(row[i])), std::string::npos);
      }
    EXPECT_NE(text.find(CountLine(list)), std::string::npos) << text;
  }
}

TEST(List, WhatIsDrawnOrWrittenOnIsForPaperOnly) {
  OwnFolder folder;
  ListReport list = Pieces(3);
  list.blank_rows = 2;
  const auto json = ListJson(list);
  EXPECT_EQ(json["rows"].size(), 3U);
  EXPECT_TRUE(json["rows"][0]["seen"].is_null());
  WriteListCsv(folder / "l.csv", list);
  const std::string csv = WholeFile(folder / "l.csv");
  EXPECT_EQ(csv.find("to scale"), std::string::npos) << csv;
  EXPECT_EQ(csv.find("[  ]"), std::string::npos) << csv;
  WriteListPdf(folder / "l.pdf", list, Told());
  const std::string text = TextOf(folder / "l.pdf");
  EXPECT_NE(text.find("to scale"), std::string::npos);
  EXPECT_EQ(std::count(text.begin(), text.end(), '['), 5) << text;
}

TEST(List, AChartIsDrawnFromItsOwnSumsInEveryForm) {
  OwnFolder folder;
  ListReport list = Pieces(3);
  WriteListXlsx(folder / "l.xlsx", list, Told());
  const std::string chart = OutputOf("unzip -p '" + (folder / "l.xlsx") + "' xl/charts/chart1.xml");
  EXPECT_NE(chart.find("<c:barChart>"), std::string::npos) << chart;
  EXPECT_NE(chart.find("Chart!$B$2:$B$3"), std::string::npos) << chart;
  EXPECT_NE(OutputOf("xlsx2csv -n Chart '" + (folder / "l.xlsx") + "'").find("under 30 days,412"), std::string::npos);
  EXPECT_EQ(ListJson(list)["chart"]["rows"][1]["mass_g"], 103'000);
  WriteListPdf(folder / "l.pdf", list, Told());
  EXPECT_NE(TextOf(folder / "l.pdf").find("412.000 kg"), std::string::npos) << TextOf(folder / "l.pdf");
  list.chart->rows.pop_back();
  EXPECT_FALSE(ListJson(list).contains("chart")) << "one figure is no chart";
}

TEST(List, ABarIsAsLongAsItsValueAndSaysIt) {
  const ChartDrawing drawing = DrawBars({"t", {{"a", {40}, {"40 kg"}}, {"b", {10, 20}, {"booked 10 kg", "weighed 20 kg"}}}});
  std::vector<double> widths;
  for (const ChartStroke& s : drawing.strokes)
    if (s.width > 2) widths.push_back(s.points[1].first - s.points[0].first);
  ASSERT_EQ(widths.size(), 3U);
  EXPECT_NEAR(widths[1] / widths[0], 0.25, 1e-9);
  EXPECT_NEAR(widths[2] / widths[0], 0.5, 1e-9);
  for (const ChartText& text : drawing.texts) EXPECT_LT(text.y, BarChartHeight({"t", {{"a", {40}, {"40 kg"}}, {"b", {10, 20}, {"", ""}}}}));
}

TEST(List, APrintTellsHowFarItIsAndWhatStopsItLeavesTheOlderFile) {
  OwnFolder folder;
  const ListReport list = Pieces(200);
  WriteListPdf(folder / "l.pdf", list, Told());
  WriteListXlsx(folder / "l.xlsx", list, Told());
  const std::string pdf = WholeFile(folder / "l.pdf"), xlsx = WholeFile(folder / "l.xlsx");
  std::size_t laid_out = 0, pages = 0, of = 0, rows = 0;
  PrintOptions told = Told();
  told.progress = [&](const std::string& what, std::size_t done, std::size_t all) {
    if (what == "rows laid out") laid_out = done;
    if (what == "rows of a workbook written") rows += 1;
    if (what == "pages painted") pages = done, of = all;
  };
  WriteListPdf(folder / "l.pdf", list, told);
  WriteListXlsx(folder / "l.xlsx", list, told);
  EXPECT_EQ(laid_out, 200U);
  EXPECT_EQ(rows, 200U + 2U);
  EXPECT_EQ(pages, static_cast<std::size_t>(PagesOf(folder / "l.pdf")));
  EXPECT_EQ(of, pages);
  EXPECT_EQ(WholeFile(folder / "l.pdf"), pdf) << "telling changes nothing";
  for (const char* at : {"rows laid out", "pages painted", "rows of a workbook written"}) {
    told.progress = [&](const std::string& what, std::size_t done, std::size_t) {
      if (what == at && done == 2) throw std::runtime_error("enough");
    };
    const bool book = std::string(at).starts_with("rows of");
    EXPECT_THROW(book ? WriteListXlsx(folder / "l.xlsx", list, told) : WriteListPdf(folder / "l.pdf", list, told), std::runtime_error)
        << at;
  }
  EXPECT_EQ(WholeFile(folder / "l.pdf"), pdf);
  EXPECT_EQ(WholeFile(folder / "l.xlsx"), xlsx);
  EXPECT_EQ(std::distance(std::filesystem::directory_iterator(folder.path()), {}), 2) << "no half file is left";
}

}  // namespace
}  // namespace heatkeep
