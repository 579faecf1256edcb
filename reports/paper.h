// A page's drawing verbs in millimetres from the page's top left corner, and the flow of unsplittable items
// over pages. Black on white; 12 mm margins; nothing is clipped: a text that is too wide is first shrunk to
// 75 %, then broken into lines where asked, then ended with an ellipsis.
#pragma once

#include <QByteArray>
#include <functional>
#include <string>
#include <vector>

class QPainter;

namespace heatkeep {

enum class PaperSize { A4, Letter };

// What makes two prints of the same thing the same bytes: the time and author are told, never looked up.
struct PrintOptions {
  PaperSize size = PaperSize::A4;
  std::string printed_at;  // ISO 8601; its digits become the PDF's creation date
  std::string author;
  // Told how far a print is; what it throws stops it, and no file is left.
  std::function<void(const char* what, std::size_t done, std::size_t all)> progress = {};
};

inline constexpr double kMargin = 12;
double PageWidth(PaperSize size);
double PageHeight(PaperSize size);

enum class Align { Left, Center, Right };

struct TextStyle {
  double height = 3.2;  // of the font (em), in mm; 1 pt = 0.353 mm
  bool bold = false, mono = false, white = false;
  Align align = Align::Left;
  bool slashed = false;  // with mono: a stroke through every 0, so that nobody reads an O
};

class Pen {
 public:
  Pen(QPainter& painter, double dots_per_mm) : painter_(painter), dots_(dots_per_mm) {}

  // One line in `width`, shrunk to 75 % or ended with an ellipsis if it must be. y is the top of the line.
  void text(double x, double y, double width, const std::string& text, const TextStyle& style = {});
  // As many lines as needed; returns the height used.
  double paragraph(double x, double y, double width, const std::string& text, const TextStyle& style = {});
  void line(double x1, double y1, double x2, double y2, double thick = 0.15);
  void box(double x, double y, double width, double height, double thick = 0.25);
  void fill(double x, double y, double width, double height, int grey = 0);
  QPainter& painter() { return painter_; }
  double dots() const { return dots_; }

 private:
  QPainter& painter_;
  double dots_;
};

double TextWidthMm(const std::string& text, const TextStyle& style);
// The lines of a paragraph: words kept whole, but for one that is wider than the line.
std::vector<std::string> ParagraphLines(const std::string& text, double width, const TextStyle& style);
double ParagraphHeight(const std::string& text, double width, const TextStyle& style);
double LineHeight(const TextStyle& style);

// One thing that is never split over pages.
struct FlowItem {
  double height = 0;
  std::function<void(Pen&, double y)> paint;
  bool with_next = false;  // never the last on a page when something follows
  int head = -1;           // index of the repeated head that stands above it on a new page; -1: none
};

struct Flow {
  std::string title;                                    // the PDF's title
  double head_height = 0, next_head_height = 0;         // of the first and the other pages
  std::function<void(Pen&, int page, int pages)> head;  // painted from y = kMargin
  std::function<void(Pen&, double y)> foot;             // painted in the last 8 mm; may be empty
  std::string record;              // digest of a kept record: said again behind the PDF's end, for a program that is given the file
  std::vector<FlowItem> repeated;  // table heads, drawn again on a new page
  std::vector<FlowItem> items;
};

// The finished PDF, black on white, fonts embedded. Throws std::runtime_error when one item is higher than a
// page.
QByteArray PrintFlow(const Flow& flow, const PrintOptions& options);

// PrintFlow, written whole or not at all (whole_file.h).
void WriteFlow(const std::string& path, const Flow& flow, const PrintOptions& options);

}  // namespace heatkeep
