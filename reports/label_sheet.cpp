#include "reports/label_sheet.h"

#include <stdexcept>
#include <tuple>

#include "reports/pdf_pages.h"
#include "reports/whole_file.h"
#include "schema/terms/length_text.h"
#include "schema/terms/number_text.h"

namespace heatkeep {
namespace {

// "5x10": both numbers of mm.
std::pair<double, double> TwoLengths(const std::string& text, const std::string& what) {
  const std::size_t x = text.find('x');
  if (x == std::string::npos) throw BadText(what + " " + Quoted(text) + " cannot be read", "two lengths in mm, as 5x10");
  const auto mm = [&](const std::string& part) { return static_cast<double>(ReadLength(part).nm) / 1e6; };
  return {mm(text.substr(0, x)), mm(text.substr(x + 1))};
}

LabelPaper TwoByFive(PaperSize size, double left, double top, double across, double down) {
  LabelPaper paper;
  paper.width = PageWidth(size);
  paper.height = PageHeight(size);
  paper.columns = 2;
  paper.rows = 5;
  paper.left = left;
  paper.top = top;
  paper.across = across;
  paper.down = down;
  return paper;
}

}  // namespace

LabelPaper PaperCalled(const std::string& name) {
  LabelPaper paper;
  if (name == "100x50") return paper;
  if (name == "62x29") {
    paper.width = paper.across = 62;
    paper.height = paper.down = 29;
    return paper;
  }
  if (name == "a4") return TwoByFive(PaperSize::A4, 5, 23.5, 100, 50);
  if (name == "letter") return TwoByFive(PaperSize::Letter, 6.35, 12.7, 101.6, 50.8);
  throw BadText("no label paper is called " + Quoted(name), "100x50, 62x29, a4 or letter");
}

LabelPaper Divided(LabelPaper sheet, const std::string& grid, const std::string& margins, const std::string& gaps) {
  if (grid.empty() && margins.empty() && gaps.empty()) return sheet;
  if (sheet.Boxes() == 1) throw BadText("a roll of labels has no grid", "--paper a4 or letter");
  if (!grid.empty()) {
    const std::size_t x = grid.find('x');
    if (x == std::string::npos) throw BadText("grid " + Quoted(grid) + " cannot be read", "columns and rows, as 2x5");
    sheet.columns = static_cast<int>(ReadWhole(grid.substr(0, x), 1, 10));
    sheet.rows = static_cast<int>(ReadWhole(grid.substr(x + 1), 1, 30));
  }
  if (!margins.empty()) std::tie(sheet.left, sheet.top) = TwoLengths(margins, "margins");
  if (!gaps.empty()) std::tie(sheet.gap_x, sheet.gap_y) = TwoLengths(gaps, "gaps");
  sheet.across = (sheet.width - 2 * sheet.left - sheet.gap_x * (sheet.columns - 1)) / sheet.columns;
  sheet.down = (sheet.height - 2 * sheet.top - sheet.gap_y * (sheet.rows - 1)) / sheet.rows;
  try {
    SizeFor({0, 0, sheet.across, sheet.down});
  } catch (const std::invalid_argument& small) {
    throw BadText("grid " + std::to_string(sheet.columns) + "x" + std::to_string(sheet.rows) + ": " + small.what(),
                  "fewer columns or rows, or narrower margins");
  }
  return sheet;
}

int PagesFor(const LabelPaper& paper, std::size_t count, int start) {
  return static_cast<int>((count + static_cast<std::size_t>(start) - 1 + static_cast<std::size_t>(paper.Boxes()) - 1) /
                          static_cast<std::size_t>(paper.Boxes()));
}

void WriteLabels(const std::string& path, const std::vector<LabelFace>& faces, const LabelPaper& paper, const LabelLook& look, int start,
                 const PrintOptions& options) {
  if (faces.empty()) throw std::invalid_argument("no label is to be printed");
  if (start < 1 || start > paper.Boxes())
    throw std::invalid_argument("the first label cannot go on position " + std::to_string(start) + "; expected 1 to " +
                                std::to_string(paper.Boxes()));
  const std::size_t before = static_cast<std::size_t>(start) - 1, boxes = static_cast<std::size_t>(paper.Boxes());
  const PageForm form{"Labels", paper.width, paper.height};
  const QByteArray pdf = PaintPages(form, PagesFor(paper, faces.size(), start), options, [&](Pen& pen, int page) {
    for (std::size_t i = 0; i < boxes; ++i) {
      const std::size_t at = (static_cast<std::size_t>(page) - 1) * boxes + i;
      if (at < before || at - before >= faces.size()) continue;
      const int column = static_cast<int>(i) % paper.columns, row = static_cast<int>(i) / paper.columns;
      const LabelBox box{paper.left + column * (paper.across + paper.gap_x), paper.top + row * (paper.down + paper.gap_y), paper.across,
                         paper.down};
      if (paper.outline) pen.box(box.x, box.y, box.width, box.height, 0.1);
      PaintLabel(pen, box, faces[at - before], look);
    }
  });
  WriteWholeBytes(path, pdf.constData(), static_cast<std::size_t>(pdf.size()));
}

}  // namespace heatkeep
