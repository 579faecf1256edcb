#include "reports/curves.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QXmlStreamReader>
#include <algorithm>
#include <filesystem>
#include <set>

#include "reports/chart_drawing.h"

namespace heatkeep {
namespace {

Chart Invented() {
  Chart chart{"Drops on the rack", "Cut & kept <2500 lines>", "drops", "working day", 0, {}, true};
  for (const auto& [name, slope] : {std::pair{"new-bar", 8.0}, {"plain", 1.3}, {"drops-first", 1.2}, {"least-money", 1.25}}) {
    Curve curve{name, {}, std::string(name) == "drops-first", -1};
    for (int day = 0; day < 250; ++day) curve.values.push_back(380 + slope * day);
    chart.curves.push_back(curve);
  }
  return chart;
}

struct Read {
  std::vector<std::string> texts;
  int lines = 0;
  std::set<std::string> dashes;
  std::string error;
};

Read ReadSvg(const std::string& svg) {
  Read read;
  QXmlStreamReader xml(QByteArray::fromStdString(svg));
  while (!xml.atEnd()) {
    xml.readNext();
    if (!xml.isStartElement()) continue;
    if (xml.name() == u"polyline") {
      ++read.lines;
      read.dashes.insert(xml.attributes().value(QLatin1String("stroke-dasharray")).toString().toStdString());
    }
    if (xml.name() == u"text") read.texts.push_back(xml.readElementText().toStdString());
  }
  if (xml.hasError()) read.error = xml.errorString().toStdString();
  return read;
}

bool Has(const Read& read, const std::string& text) { return std::find(read.texts.begin(), read.texts.end(), text) != read.texts.end(); }

TEST(Curves, AreWellFormedSvgWithEveryLabel) {
  const Read read = ReadSvg(ChartSvg(Invented()));
  EXPECT_EQ(read.error, "");
  for (const char* text : {"Drops on the rack", "Cut & kept <2500 lines>", "drops", "working day", "new-bar  2 372", "plain  704",
                           "drops-first  679", "least-money  691", "0", "500", "50", "250"})
    EXPECT_TRUE(Has(read, text)) << text;
}

TEST(Curves, DifferByDashNotOnlyByTone) {
  EXPECT_GE(ReadSvg(ChartSvg(Invented())).dashes.size(), 4U);  // solid and one for each other line
}

TEST(Curves, NamesNeverOverlap) {
  const ChartDrawing drawing = DrawChart(Invented());
  std::vector<double> at;
  for (const ChartText& text : drawing.texts)
    if (text.size == 13) at.push_back(text.y);
  ASSERT_EQ(at.size(), 4U);
  std::sort(at.begin(), at.end());
  for (std::size_t i = 1; i < at.size(); ++i) EXPECT_GE(at[i] - at[i - 1], 15);
  EXPECT_LE(at.back(), kChartHeight);
}

TEST(Curves, StayInsideThePicture) {
  Chart chart = Invented();
  chart.curves[0].values = {-5, 12.5, 3};
  chart.from_zero = false;
  for (const ChartStroke& stroke : DrawChart(chart).strokes)
    for (const auto& [x, y] : stroke.points) {
      EXPECT_GE(x, 0);
      EXPECT_LE(x, kChartWidth);
      EXPECT_GE(y, 0);
      EXPECT_LE(y, kChartHeight);
    }
}

TEST(Curves, OfOneValueAndOfNothingButZeroAreDrawn) {
  Chart chart{"t", "s", "u", "step", 1, {{"flat", {0, 0, 0}, false, -1}, {"one", {4}, false, -1}}, true};
  EXPECT_EQ(ReadSvg(ChartSvg(chart)).error, "");
  chart.curves = {{"flat", {0}, false, -1}};
  EXPECT_TRUE(Has(ReadSvg(ChartSvg(chart)), "flat  0.0"));
}

TEST(Curves, RefuseWhatCannotBeDrawn) {
  Chart chart = Invented();
  chart.curves[1].values[3] = std::nan("");
  EXPECT_THROW(ChartSvg(chart), std::invalid_argument);
  chart.curves[1].values.clear();
  EXPECT_THROW(ChartSvg(chart), std::invalid_argument);
  chart.curves.clear();
  EXPECT_THROW(ChartSvg(chart), std::invalid_argument);
}

TEST(Curves, ArePaintedAsThePictureToo) {
  const auto file = std::filesystem::temp_directory_path() / "heatkeep_curves_test.png";
  WriteChartPng(file.string(), Invented());
  const QImage image(QString::fromStdString(file.string()));
  std::filesystem::remove(file);
  ASSERT_EQ(image.width(), 2 * kChartWidth);
  std::set<QRgb> colours;
  for (int y = 0; y < image.height(); y += 2)
    for (int x = 0; x < image.width(); x += 2) colours.insert(image.pixel(x, y));
  EXPECT_TRUE(colours.contains(qRgb(0x2F, 0x6F, 0x5E)));  // the main line's
  EXPECT_TRUE(colours.contains(qRgb(0xFA, 0xFA, 0xF7)));  // the ground's
}

TEST(ChartNumber, GroupsThousandsAndKeepsDecimals) {
  EXPECT_EQ(ChartNumber(1234567, 0), "1 234 567");
  EXPECT_EQ(ChartNumber(12345.67, 1), "12 345.7");
  EXPECT_EQ(ChartNumber(0.04, 2), "0.04");
  EXPECT_EQ(ChartNumber(-0.001, 1), "0.0");
  EXPECT_EQ(ChartNumber(-12, 0), "\u221212");
}

}  // namespace
}  // namespace heatkeep
