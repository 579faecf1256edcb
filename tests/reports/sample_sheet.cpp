// Writes samples of every report, with invented data, into the folder named: sample_sheet FOLDER
#include <QImage>
#include <QPainter>
#include <algorithm>
#include <cstdio>
#include <exception>
#include <string>
#include <vector>

#include "reports/balance_record.h"
#include "reports/label_sheet.h"
#include "reports/paint_session.h"
#include "reports/pick_list.h"
#include "reports/piece_bar.h"
#include "reports/recall_report.h"
#include "reports/tone_color.h"
#include "reports/trace_report.h"
#include "tests/reports/invented_labels.h"
#include "tests/reports/invented_sheet.h"
#include "tests/reports/invented_trace.h"

namespace {

using namespace heatkeep;

// The screen sizes of the piece bar, light and dark: table cells above, saw stations below.
void PaintBars(const std::string& path, Scheme scheme, double factor) {
  const Sheet sheet = InventedSheet(9);
  Length full;
  for (const SheetBlock& block : sheet.blocks) full = std::max(full, block.length);
  QImage image(static_cast<int>(1000 * factor), static_cast<int>(700 * factor), QImage::Format_RGB32);
  image.fill(ColorOf(Use::Ground, scheme));
  QPainter painter(&image);
  painter.setRenderHint(QPainter::Antialiasing);
  OrderLetters letters;
  double y = 16 * factor;
  for (const SheetBlock& block : sheet.blocks) {
    BarView view = TableCellView(16 * factor, y, 420 * factor, full, factor);
    view.scheme = scheme;
    PaintPieceBar(painter, PieceBarOf(block, letters), view);
    y += 24 * factor;
  }
  std::vector<PieceBar> bars;
  for (std::size_t i = 1; i < 4; ++i) bars.push_back(PieceBarOf(sheet.blocks[i], letters));
  for (std::size_t i = 0; i < bars.size(); ++i) {
    BarView view = StationView(16 * factor, y, 960 * factor, full, factor);
    view.scheme = scheme;
    view.symbol_width = SymbolWidth(bars, view);
    PaintPieceBar(painter, bars[i], view, i == 1 ? 1 : -1);
    y += 140 * factor;
  }
  painter.end();
  image.save(QString::fromStdString(path));
}

// Bars as a tag printer of 203 dots an inch would show them.
void PaintTagBars(const std::string& path) {
  const Sheet sheet = InventedSheet(6);
  QImage image(680, 300, QImage::Format_RGB32);
  image.fill(Qt::white);
  QPainter painter(&image);
  OrderLetters letters;
  double y = 16;
  for (const SheetBlock& block : sheet.blocks) {
    PaintPieceBar(painter, PieceBarOf(block, letters), TagView(16, y, 640, block.length, 8));
    y += 46;
  }
  painter.end();
  image.save(QString::fromStdString(path));
}

// Every kind of label on every paper.
void PaintLabels(const std::string& folder, const PrintOptions& options) {
  for (const char* name : {"100x50", "62x29", "a4", "letter"}) {
    LabelPaper paper = PaperCalled(name);
    const LabelSize size = SizeFor({0, 0, paper.across, paper.down});
    std::vector<LabelFace> faces{FaceOf(PlainLabel(), size, "2026-11-25", "piet")};
    for (const PieceLabel& label : HardLabels()) faces.push_back(FaceOf(label, size, "2026-11-25", "piet"));
    for (const PlaceLabel& label : InventedPlaces()) faces.push_back(FaceOf(label, size));
    for (const BatchLabel& label : InventedBatches()) faces.push_back(FaceOf(label, size, "2026-11-25", "piet"));
    WriteLabels(folder + "labels_" + name + ".pdf", faces, paper, {}, paper.Boxes() > 1 ? 4 : 1, options);
    WriteLabels(folder + "labels_qr_" + name + ".pdf", faces, paper, {MatrixCode::Qr, 300}, 1, options);
  }
}

}  // namespace

int main(int argc, char** argv) {
  if (argc != 2) {
    std::fputs("usage: sample_sheet FOLDER\n", stderr);
    return 2;
  }
  try {
    const std::string folder = std::string(argv[1]) + "/";
    const PrintOptions a4{PaperSize::A4, "2026-11-25T07:40:12", "Ostrel Shaftworks"};
    const PrintOptions letter{PaperSize::Letter, "2026-11-25T07:40:12", "Ostrel Shaftworks"};
    WritePickListPdf(folder + "pick_list_a4.pdf", InventedSheet(8), a4);
    WritePickListPdf(folder + "pick_list_letter.pdf", InventedSheet(8), letter, Units::Inch);
    WritePickListPdf(folder + "pick_list_60.pdf", InventedSheet(60), a4);
    WritePickListPdf(folder + "pick_list_bundled.pdf", BundledSheet(), a4);
    WritePickListPdf(folder + "pick_list_hard.pdf", HardSheet(), a4);
    WritePickListXlsx(folder + "pick_list.xlsx", InventedSheet(8), a4);
    const TraceRecord trace = InventedTrace(5);
    WriteTracePdf(folder + "trace.pdf", trace, a4);
    WriteTracePdf(folder + "family.pdf", InventedFamily(12, 4), a4);
    WriteTraceXlsx(folder + "trace.xlsx", trace, a4);
    RecallRecord recall = InventedRecall();
    WriteRecallPdf(folder + "recall.pdf", recall, a4);
    recall.drill = true;
    recall.laps = {{"list of where everything is", 41}, {"2 letters", 380}};
    WriteRecallLetter(folder + "letter_de.pdf", recall, "Pallant Hydraulics", {"Ostrel Shaftworks", "", Language::German}, a4);
    recall.drill = false;
    WriteRecallLetter(folder + "letter.pdf", recall, "Drewe Conveyors", {"Ostrel Shaftworks", "a letter of the mill", Language::English},
                      a4);
    WriteTraceJson(folder + "trace.json", trace);
    WriteBalancePdf(folder + "balance.pdf", InventedBalance(), a4);
    WriteBalanceXlsx(folder + "balance.xlsx", InventedBalance(), a4);
    PaintLabels(folder, a4);
    PaintSession();
    PaintTagBars(folder + "bars_tag.png");
    PaintBars(folder + "bars_light_10.png", Scheme::Light, 1.0);
    PaintBars(folder + "bars_light_15.png", Scheme::Light, 1.5);
    PaintBars(folder + "bars_dark_10.png", Scheme::Dark, 1.0);
    PaintBars(folder + "bars_dark_15.png", Scheme::Dark, 1.5);
  } catch (const std::exception& error) {
    std::fprintf(stderr, "sample_sheet: %s\n", error.what());
    return 1;
  }
  return 0;
}
