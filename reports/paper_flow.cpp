#include <stdexcept>

#include "reports/paint_session.h"
#include "reports/paper.h"
#include "reports/pdf_pages.h"
#include "reports/whole_file.h"

namespace heatkeep {
namespace {

constexpr double kFoot = 8;

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
  for (std::size_t j = i; flow.items[j].with_next && j + 1 < flow.items.size(); ++j) sum += flow.items[j + 1].height;
  return sum;
}

Pages Paginate(const Flow& flow, double page_end) {
  Pages pages(1);
  double y = kMargin + flow.head_height;
  bool fresh = true;  // nothing on this page yet
  for (std::size_t i = 0; i < flow.items.size(); ++i) {
    const FlowItem& item = flow.items[i];
    const auto head = [&] { return item.head >= 0 ? flow.repeated[static_cast<std::size_t>(item.head)].height : 0.0; };
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
      throw std::runtime_error(flow.title + ": item " + std::to_string(i + 1) + " needs " + std::to_string(static_cast<int>(item.height)) +
                               " mm, more than one page holds");
    pages.back().push_back({i, y, repeat ? item.head : -1, head_y});
    y += item.height;
    fresh = false;
  }
  return pages;
}

}  // namespace

double PageWidth(PaperSize size) { return size == PaperSize::A4 ? 210.0 : 215.9; }
double PageHeight(PaperSize size) { return size == PaperSize::A4 ? 297.0 : 279.4; }

QByteArray PrintFlow(const Flow& flow, const PrintOptions& options) {
  PaintSession();
  const Pages pages = Paginate(flow, PageHeight(options.size) - kMargin - (flow.foot ? kFoot : 0));
  const PageForm form{flow.title, PageWidth(options.size), PageHeight(options.size)};
  const int count = static_cast<int>(pages.size());
  QByteArray pdf = PaintPages(form, count, options, [&](Pen& pen, int page) {
    flow.head(pen, page, count);
    for (const Place& place : pages[static_cast<std::size_t>(page) - 1]) {
      if (place.repeated >= 0) flow.repeated[static_cast<std::size_t>(place.repeated)].paint(pen, place.head_y);
      flow.items[place.item].paint(pen, place.y);
    }
    if (options.progress) options.progress("pages painted", static_cast<std::size_t>(page), pages.size());
    if (flow.foot) flow.foot(pen, PageHeight(options.size) - kMargin - kFoot + 1);
  });
  if (!flow.record.empty()) pdf += "%record " + QByteArray::fromStdString(flow.record) + "\n";  // a comment
  return pdf;
}

void WriteFlow(const std::string& path, const Flow& flow, const PrintOptions& options) {
  const QByteArray pdf = PrintFlow(flow, options);
  WriteWholeBytes(path, pdf.constData(), static_cast<std::size_t>(pdf.size()));
}

}  // namespace heatkeep
