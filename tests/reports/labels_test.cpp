// Labels read back from the rendered page by other people's programs: dmtxread, zbarimg, pdftotext, pdftoppm.
#include <gtest/gtest.h>

#include <cmath>
#include <cstdio>
#include <random>
#include <sstream>

#include "reports/bar_code.h"
#include "reports/label_sheet.h"
#include "schema/terms/scan.h"
#include "schema/terms/tag.h"
#include "tests/reports/invented_labels.h"
#include "tests/reports/read_back.h"

namespace heatkeep {
namespace {

const PrintOptions kTold{PaperSize::A4, "2026-11-25T07:40:12", "Ostrel Shaftworks"};

LabelFace Face(const PieceLabel& label, const LabelPaper& paper) {
  return FaceOf(label, SizeFor({0, 0, paper.across, paper.down}), "2026-11-25", "piet");
}

std::vector<LabelFace> Faces(const std::vector<PieceLabel>& labels, const LabelPaper& paper) {
  std::vector<LabelFace> faces;
  for (const PieceLabel& label : labels) faces.push_back(Face(label, paper));
  return faces;
}

// A page as a picture, or a box of it, at so many dots an inch.
std::string Picture(const OwnFolder& folder, const std::string& pdf, int page, int dpi, const LabelPaper& paper, int box = -1) {
  std::string crop;
  if (box >= 0) {
    const auto dots = [&](double mm) { return std::to_string(static_cast<int>(mm / 25.4 * dpi)); };
    crop = " -x " + dots(paper.left + box % paper.columns * (paper.across + paper.gap_x)) + " -y " +
        dots(paper.top + box / paper.columns * (paper.down + paper.gap_y)) + " -W " + dots(paper.across) + " -H " + dots(paper.down);
  }
  const std::string name = folder / "picture";
  OutputOf("pdftoppm -singlefile -gray -r " + std::to_string(dpi) + " -f " + std::to_string(page) + crop + " '" + pdf + "' '" + name + "'");
  return name + ".pgm";
}

// The code stands at the right; what is left of it need not be searched.
std::string Matrix(const std::string& picture) { return OutputOf("dmtxread -N 1 -m 8000 -x 68% '" + picture + "' 2>&1 || true"); }

// Every code of that kind on the picture, one a line.
std::vector<std::string> Read(const std::string& picture, const std::string& kind) {
  std::istringstream lines(OutputOf("zbarimg -q --raw -Sdisable -S" + kind + ".enable '" + picture + "' 2>/dev/null || true"));
  std::vector<std::string> all;
  for (std::string line; std::getline(lines, line);) all.push_back(line);
  return all;
}

void ExpectSays(const std::string& read, const PieceLabel& label, const std::string& where) {
  try {
    const Scan scan = ReadScan(read);
    EXPECT_TRUE(scan.whole) << where;
    EXPECT_EQ(scan.Of("S"), label.tag) << where;
    EXPECT_EQ(scan.Of("1T").value_or("NO HEAT"), label.heat) << where;
  } catch (const BadText& bad) { ADD_FAILURE() << where << ": " << label.tag << ", heat " << label.heat << ": " << bad.what(); }
}

// Tags and heats as they come: leading noughts, O and 0, quotes, blanks, signs, letters of other alphabets, lengths from 1 to 24.
PieceLabel RandomLabel(std::mt19937& random) {
  static const std::vector<std::string> letters{"0", "O",  "1", "I", "7", "K", "B", "8",      "-",      "/",     ".",
                                                " ", "\"", "'", "a", "#", "^", "<", "\u00C4", "\u0141", "\u03A9"};
  PieceLabel label = PlainLabel();
  label.tag = MakeTag(static_cast<char>('A' + random() % 26), static_cast<std::int64_t>(random() % 1'000'000));
  label.heat = random() % 3 ? "0" : "K";
  for (auto n = random() % 24; n > 0; --n) label.heat += letters[random() % letters.size()];
  label.heat += "7";
  label.length = {static_cast<std::int64_t>(random() % 6'000'000'000) + 1};
  return label;
}

struct OnPaper : testing::TestWithParam<std::tuple<const char*, int>> {};

TEST_P(OnPaper, EveryCodeIsReadFromThePageAsItLeavesThePrinter) {
  const auto& [name, dpi] = GetParam();
  const LabelPaper paper = PaperCalled(name);
  OwnFolder folder;
  std::vector<PieceLabel> labels = HardLabels();
  std::mt19937 random(static_cast<unsigned>(dpi));
  for (int i = 0; i < 5; ++i) labels.push_back(RandomLabel(random));
  const std::string pdf = folder / "l.pdf";
  WriteLabels(pdf, Faces(labels, paper), paper, {MatrixCode::DataMatrix, dpi == 300 ? 300 : 203}, 1, kTold);
  const int boxes = paper.Boxes();
  int linear = 0;
  for (std::size_t i = 0; i < labels.size(); ++i) {
    const int at = static_cast<int>(i);
    const std::string picture = Picture(folder, pdf, at / boxes + 1, dpi, paper, boxes > 1 ? at % boxes : -1);
    ExpectSays(Matrix(picture), labels[i], std::string(name) + " at " + std::to_string(dpi));
    for (const std::string& code : Read(picture, "code128")) {
      EXPECT_EQ(code, labels[i].tag);
      ++linear;
    }
  }
  // only on a small label do words ever take the linear code's room
  EXPECT_GE(linear, paper.across < 90 ? 7 : static_cast<int>(labels.size()));
}

INSTANTIATE_TEST_SUITE_P(Label, OnPaper, testing::Combine(testing::Values("100x50", "62x29", "a4"), testing::Values(150, 203, 300)));

TEST(Label, QrCodesSayTheSameByAShopsSetting) {
  OwnFolder folder;
  for (const char* name : {"100x50", "62x29"}) {
    const LabelPaper paper = PaperCalled(name);
    const std::vector<PieceLabel> labels = HardLabels();
    WriteLabels(folder / "q.pdf", Faces(labels, paper), paper, {MatrixCode::Qr, 203}, 1, kTold);
    for (std::size_t i = 0; i < labels.size(); ++i) {
      const auto read = Read(Picture(folder, folder / "q.pdf", static_cast<int>(i) + 1, 203, paper), "qrcode");
      ASSERT_EQ(read.size(), 1U) << labels[i].tag;
      ExpectSays(read[0], labels[i], name);
    }
  }
}

TEST(Label, PlacesAndBatchesAreReadBackToo) {
  OwnFolder folder;
  for (const char* name : {"100x50", "62x29"}) {
    const LabelPaper paper = PaperCalled(name);
    const LabelSize size = SizeFor({0, 0, paper.across, paper.down});
    std::vector<LabelFace> faces;
    for (const PlaceLabel& place : InventedPlaces()) faces.push_back(FaceOf(place, size));
    for (const BatchLabel& batch : InventedBatches()) faces.push_back(FaceOf(batch, size, "2026-11-25", "piet"));
    WriteLabels(folder / "p.pdf", faces, paper, {}, 1, kTold);
    for (std::size_t i = 0; i < faces.size(); ++i) {
      const Scan scan = ReadScan(Matrix(Picture(folder, folder / "p.pdf", static_cast<int>(i) + 1, 203, paper)));
      for (std::size_t n = 0; n < faces[i].needed; ++n) EXPECT_EQ(scan.fields.at(n), faces[i].fields[n]) << faces[i].name;
    }
    EXPECT_EQ(Read(Picture(folder, folder / "p.pdf", 1, 203, paper), "code128"), std::vector<std::string>{"B3-2"});
    EXPECT_EQ(Read(Picture(folder, folder / "p.pdf", 4, 203, paper), "code128"), std::vector<std::string>{"O-4711/10"});
  }
}

TEST(Label, SaysWhatAPersonMustReadInPlainWords) {
  OwnFolder folder;
  const LabelPaper paper = PaperCalled("100x50");
  std::vector<PieceLabel> labels = HardLabels();
  WriteLabels(folder / "w.pdf", Faces(labels, paper), paper, {}, 1, kTold);
  const std::string text = TextOf(folder / "w.pdf");
  // the drop of 17.995 in is shown never longer than it is: 17 15/16 in, 457 mm
  for (const char* words : {"457 mm (17 15/16 in)", "6000 mm (236 3/16 in)", "OWNED BY OSMUND", "NO HEAT", "NO INSPECTION DOCUMENT",
                            "PAPERS AWAITED", "not for 3.1; from piped bar", "REPRINT 2, 2026-11-25", "O0715 \"B'", "\u00C4\u0141-7715",
                            "42CrMo4 +QT 1.7225", "round 80", "3.1 no. 88-1203", "B3-2", "HEAT-2026/00417-O0-STENCILLED"})
    EXPECT_NE(text.find(words), std::string::npos) << words;
  EXPECT_NE(text.find("NOT TO BE USED: quarantined: crack"), std::string::npos);
  EXPECT_EQ(text.find("\u2026"), std::string::npos) << "nothing is cut off";
}

TEST(Label, PagesHaveTheExactSizeAndNothingLeavesThem) {
  OwnFolder folder;
  for (const auto& [name, width, height] :
       {std::tuple{"100x50", 100.0, 50.0}, {"62x29", 62.0, 29.0}, {"a4", 210.0, 297.0}, {"letter", 215.9, 279.4}}) {
    const LabelPaper paper = PaperCalled(name);
    std::vector<PieceLabel> labels = HardLabels();
    WriteLabels(folder / "s.pdf", Faces(labels, paper), paper, {}, 1, kTold);
    double w = 0, h = 0;
    const std::string info = OutputOf("pdfinfo '" + (folder / "s.pdf") + "'");
    ASSERT_EQ(std::sscanf(info.c_str() + info.find("Page size:"), "Page size: %lf x %lf pts", &w, &h), 2) << info;
    EXPECT_NEAR(w * 25.4 / 72, width, 0.01);
    EXPECT_NEAR(h * 25.4 / 72, height, 0.01);
    EXPECT_EQ(PagesOf(folder / "s.pdf"), PagesFor(paper, labels.size(), 1));
    for (const PdfWord& word : WordsOf(folder / "s.pdf")) {
      EXPECT_GE(word.left, 2) << word.text;
      EXPECT_LE(word.right, w - 2) << word.text;
      // a word's box is 1.164 em high: DejaVu's ascent and descent
      EXPECT_GE((word.bottom - word.top) / 1.164 * 25.4 / 72, 2.09) << word.text << ": under 6 pt";
    }
  }
}

TEST(Label, APartUsedSheetGoesOnAtItsNextFreePlace) {
  OwnFolder folder;
  const LabelPaper paper = PaperCalled("a4");
  std::vector<PieceLabel> labels(9, PlainLabel());
  WriteLabels(folder / "a.pdf", Faces(labels, paper), paper, {}, 4, kTold);
  EXPECT_EQ(PagesOf(folder / "a.pdf"), 2) << "seven on the first, two on the next";
  int first = 0;
  for (const PdfWord& word : WordsOf(folder / "a.pdf")) {
    if (word.text != "A000001D") continue;
    if (first++ > 0) continue;
    EXPECT_TRUE(word.left * 25.4 / 72 > 105 && word.top * 25.4 / 72 > 73 && word.bottom * 25.4 / 72 < 123) << "second row, second column";
  }
  EXPECT_EQ(first, 9);
  EXPECT_THROW(WriteLabels(folder / "a.pdf", Faces(labels, paper), paper, {}, 11, kTold), std::invalid_argument);
  EXPECT_THROW(WriteLabels(folder / "a.pdf", Faces(labels, paper), paper, {}, 0, kTold), std::invalid_argument);
  EXPECT_THROW(WriteLabels(folder / "a.pdf", {}, paper, {}, 1, kTold), std::invalid_argument);
}

TEST(Label, WhatCannotBePrintedIsToldBeforeAnythingIsPainted) {
  const LabelBox box{0, 0, 100, 50};
  PieceLabel label = PlainLabel();
  EXPECT_EQ(WrongWithLabel(box, FaceOf(label, SizeFor(box), "2026-11-25", "piet"), {}), "");
  label.heat = "D1\n2";
  const std::string wrong = WrongWithLabel(box, FaceOf(label, SizeFor(box), "2026-11-25", "piet"), {});
  EXPECT_TRUE(wrong.starts_with("the label of " + label.tag + ": a code cannot carry \"D1?2\"")) << wrong;
}

TEST(Label, WhatHasNoRoomInLegibleTypeIsRefusedByName) {
  OwnFolder folder;
  PieceLabel label = PlainLabel();
  label.heat = std::string(120, 'K');
  const LabelPaper paper = PaperCalled("62x29");
  try {
    WriteLabels(folder / "x.pdf", {Face(label, paper)}, paper, {}, 1, kTold);
    ADD_FAILURE() << "a heat of 120 letters has room on 62 x 29 mm";
  } catch (const std::invalid_argument& refused) {
    EXPECT_NE(std::string(refused.what()).find("the label of A000001D: "), std::string::npos) << refused.what();
    EXPECT_NE(std::string(refused.what()).find("expected a larger label"), std::string::npos) << refused.what();
  }
  EXPECT_FALSE(std::filesystem::exists(folder / "x.pdf"));
}

TEST(Label, SheetsAreDividedAsTheShopHasThem) {
  const LabelPaper sheet = Divided(PaperCalled("a4"), "3x9", "5x10", "2.5x0");
  EXPECT_EQ(sheet.Boxes(), 27);
  EXPECT_NEAR(sheet.across, (210 - 10 - 5) / 3.0, 1e-9);
  EXPECT_NEAR(sheet.down, 277 / 9.0, 1e-9);
  EXPECT_THROW(Divided(PaperCalled("a4"), "4x9", "", ""), BadText);
  EXPECT_THROW(Divided(PaperCalled("62x29"), "2x2", "", ""), BadText);
  EXPECT_THROW(Divided(PaperCalled("a4"), "two", "", ""), BadText);
  EXPECT_THROW(PaperCalled("a5"), BadText);
}

TEST(Label, TheSameLabelsAreTheSameBytes) {
  OwnFolder folder;
  const LabelPaper paper = PaperCalled("62x29");
  for (const char* name : {"1.pdf", "2.pdf"}) WriteLabels(folder / name, Faces(HardLabels(), paper), paper, {}, 1, kTold);
  EXPECT_EQ(WholeFile(folder / "1.pdf"), WholeFile(folder / "2.pdf"));
}

TEST(BarCode, ModulesAreWholeDotsAndTheQuietZoneIsKept) {
  const BarCode matrix = DataMatrixOf(WriteEnvelope({{"S", "A000001D"}, {"1T", "V20418"}}));
  EXPECT_GE(matrix.quiet, 1);        // ISO/IEC 16022
  EXPECT_EQ(QrOf("B3-2").quiet, 4);  // ISO/IEC 18004
  const BarCode linear = Code128Of("A000001D");
  EXPECT_EQ(linear.quiet, 10);               // ISO/IEC 15417
  EXPECT_EQ((linear.columns - 13) % 11, 0);  // start, data and check of 11 modules, a stop of 13
  for (const double dot : {25.4 / 203, 25.4 / 300}) {
    const double module = ModuleWidth(matrix, 15.5, dot, 0.33, 1);
    EXPECT_NEAR(module / dot, std::round(module / dot), 1e-9);
    EXPECT_LE(module * matrix.Across(), 15.5 + 1e-9);
  }
  EXPECT_EQ(ModuleWidth(matrix, 5, 25.4 / 203, 0.33, 1), 0);
  EXPECT_THROW(Code128Of("\u00C4"), BadText);
  EXPECT_THROW(Code128Of(""), BadText);
  EXPECT_THROW(DataMatrixOf(std::string(4000, 'x')), BadText);
}

}  // namespace
}  // namespace heatkeep
