#include <QBuffer>
#include <QHash>
#include <QPageLayout>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <cctype>
#include <stdexcept>

#include "reports/paint_session.h"
#include "reports/paper.h"
#include "reports/whole_file.h"

namespace heatkeep {
namespace {

constexpr int kDotsPerMm = 100;
constexpr int kDpi = 2540;
constexpr double kFoot = 5;

struct Place {
  std::size_t item;
  double y;
  int repeated;  // head to paint above, or -1
  double head_y;
};

using Pages = std::vector<std::vector<Place>>;

// Height that must follow item i on its page: the items it must not be parted from.
double BoundHeight(const Flow& flow, std::size_t i) {
  double sum = flow.items[i].height;
  for (std::size_t j = i; flow.items[j].with_next && j + 1 < flow.items.size(); ++j)
    sum += flow.items[j + 1].height;
  return sum;
}

Pages Paginate(const Flow& flow, double page_end) {
  Pages pages(1);
  double y = kMargin + flow.head_height;
  bool fresh = true;  // nothing on this page yet
  for (std::size_t i = 0; i < flow.items.size(); ++i) {
    const FlowItem& item = flow.items[i];
    const auto head = [&] {
      return item.head >= 0 ? flow.repeated[static_cast<std::size_t>(item.head)].height : 0.0;
    };
    if (!fresh && y + BoundHeight(flow, i) > page_end && y + item.height > kMargin) {
      const double top = kMargin + flow.next_head_height;
      const bool chain_fits = top + head() + BoundHeight(flow, i) <= page_end;
      if (chain_fits || y + item.height > page_end) {
        pages.emplace_back();
        y = top;
        fresh = true;
      }
    }
    const bool repeat = fresh && pages.size() > 1 && item.head >= 0;
    const double head_y = y;
    if (repeat) y += head();
    if (y + item.height > page_end && pages.size() == 1 && fresh) {  // too high for the first page's rest
      pages.emplace_back();
      y = kMargin + flow.next_head_height;
    }
    if (y + item.height > page_end + 1e-6)
      throw std::runtime_error(flow.title + ": item " + std::to_string(i + 1) + " needs " +
                               std::to_string(static_cast<int>(item.height)) +
                               " mm, more than one page holds");
    pages.back().push_back({i, y, repeat ? item.head : -1, head_y});
    y += item.height;
    fresh = false;
  }
  return pages;
}

// Qt writes the fonts in the order of a hash, which is another one in every process unless it is told.
struct SameOrder {
  SameOrder() { QHashSeed::setDeterministicGlobalSeed(); }
  ~SameOrder() { QHashSeed::resetRandomGlobalSeed(); }
  SameOrder(const SameOrder&) = delete;
  SameOrder& operator=(const SameOrder&) = delete;
};

// Qt writes the present time; the told time has the same number of digits, so no offset in the file moves.
void SetCreationDate(QByteArray& pdf, const std::string& told) {
  std::string digits;
  for (const char c : told)
    if (std::isdigit(static_cast<unsigned char>(c)) != 0 && digits.size() < 14) digits += c;
  digits.resize(14, '0');
  const QByteArray key("/CreationDate (D:");
  const qsizetype at = pdf.indexOf(key);
  if (at < 0) return;
  const qsizetype from = at + key.size();
  const qsizetype end = pdf.indexOf(')', from);
  QByteArray date = QByteArray::fromStdString(digits) + "+00'00'";
  if (end < 0 || end - from < 14) return;
  date.truncate(end - from);
  date = date.leftJustified(end - from, ' ');
  pdf.replace(from, end - from, date);
}

}  // namespace

double PageWidth(PaperSize size) { return size == PaperSize::A4 ? 210.0 : 215.9; }
double PageHeight(PaperSize size) { return size == PaperSize::A4 ? 297.0 : 279.4; }

QByteArray PrintFlow(const Flow& flow, const PrintOptions& options) {
  PaintSession();
  const SameOrder order;
  const Pages pages = Paginate(flow, PageHeight(options.size) - kMargin - (flow.foot ? kFoot : 0));
  QBuffer buffer;
  buffer.open(QIODevice::WriteOnly);
  QPdfWriter writer(&buffer);
  writer.setResolution(kDpi);
  writer.setPageLayout(
      QPageLayout(QPageSize(options.size == PaperSize::A4 ? QPageSize::A4 : QPageSize::Letter),
                  QPageLayout::Portrait, QMarginsF(0, 0, 0, 0)));
  writer.setTitle(QString::fromStdString(flow.title));
  writer.setCreator(QStringLiteral("Heatkeep"));
  QPainter painter;
  if (!painter.begin(&writer)) throw std::runtime_error(flow.title + ": the PDF cannot be painted");
  Pen pen(painter, kDotsPerMm);
  for (std::size_t page = 0; page < pages.size(); ++page) {
    if (page > 0 && !writer.newPage()) throw std::runtime_error(flow.title + ": no new page");
    flow.head(pen, static_cast<int>(page) + 1, static_cast<int>(pages.size()));
    for (const Place& place : pages[page]) {
      if (place.repeated >= 0)
        flow.repeated[static_cast<std::size_t>(place.repeated)].paint(pen, place.head_y);
      flow.items[place.item].paint(pen, place.y);
    }
    if (flow.foot) flow.foot(pen, PageHeight(options.size) - kMargin - kFoot + 1);
  }
  if (!painter.end()) throw std::runtime_error(flow.title + ": the PDF could not be finished");
  buffer.close();
  QByteArray pdf = buffer.data();
  SetCreationDate(pdf, options.printed_at);
  return pdf;
}

void WriteFlow(const std::string& path, const Flow& flow, const PrintOptions& options) {
  const QByteArray pdf = PrintFlow(flow, options);
  WriteWholeBytes(path, pdf.constData(), static_cast<std::size_t>(pdf.size()));
}

}  // namespace heatkeep
