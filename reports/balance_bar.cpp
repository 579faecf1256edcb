#include <QPainter>
#include <algorithm>
#include <cmath>

#include "reports/balance_record.h"
#include "reports/leader_rows.h"

namespace heatkeep {
namespace {

constexpr double kBar = 9;
constexpr TextStyle kLetter{3, true};

struct Segment {
  std::string letter;
  double x = 0, width = 0;
};

std::vector<Segment> SegmentsOf(const HeatBalance& balance, double x, double width) {
  const BalanceSums sums = SumsOf(balance);
  Length positive;
  for (const BalanceClass& c : balance.classes)
    if (!c.in && c.length.nm > 0) positive += c.length;
  const Length full = std::max(sums.in, positive);
  std::vector<Segment> segments;
  double at = x;
  for (std::size_t i = 0; i < balance.classes.size(); ++i) {
    const BalanceClass& c = balance.classes[i];
    if (c.in || c.length.nm <= 0 || full.nm <= 0) continue;  // nothing, or metal found that nobody received
    const double wide = width * static_cast<double>(c.length.nm) / static_cast<double>(full.nm);
    segments.push_back({ClassLetter(balance, i), at, wide});
    at += wide;
  }
  return segments;
}

// Six fills that tell neighbours apart without colour.
void Fill(Pen& pen, const Segment& s, double y, std::size_t index) {
  pen.fill(s.x, y, s.width, kBar, index % 2 == 0 ? 255 : 228);
  if (index % 3 == 1) {
    QPainter& painter = pen.painter();
    painter.save();
    const double d = pen.dots();
    painter.setClipRect(QRectF(s.x * d, y * d, s.width * d, kBar * d));
    const int lines = static_cast<int>(std::ceil((s.width + kBar) / 2.2));
    for (int i = 0; i < lines; ++i) {
      const double x = s.x - kBar + 2.2 * i;
      pen.line(x, y + kBar, x + kBar, y, 0.12);
    }
    painter.restore();
  }
  pen.box(s.x, y, s.width, kBar, 0.2);
}

}  // namespace

double DrawBalanceBar(Pen* pen, double x, double y, double width, const HeatBalance& balance) {
  const std::vector<Segment> segments = SegmentsOf(balance, x, width);
  std::vector<double> wanted;
  std::vector<double> widths;
  std::vector<const Segment*> outside;
  for (std::size_t i = 0; i < segments.size(); ++i) {
    const Segment& s = segments[i];
    const double need = TextWidthMm(s.letter, kLetter);
    const bool fits = need + 1.4 <= s.width;
    if (pen != nullptr) {
      Fill(*pen, s, y, i);
      if (fits) {
        pen->fill(s.x + s.width / 2 - need / 2 - 0.4, y + 2.6, need + 0.8, 3.8, 255);
        pen->text(s.x, y + 2.7, s.width, s.letter, {3, true, false, false, Align::Center});
      }
    }
    if (fits) continue;
    outside.push_back(&s);
    wanted.push_back(s.x + s.width / 2 - need / 2);
    widths.push_back(need);
  }
  if (pen != nullptr) pen->box(x, y, width, kBar, 0.35);
  const auto rows = FindLeaderRows(wanted, widths, x, x + width, 1.2, 1);
  if (pen != nullptr && rows)
    for (std::size_t i = 0; i < outside.size(); ++i) {
      const double middle = outside[i]->x + outside[i]->width / 2;
      const double label = rows->start[i] + widths[i] / 2;
      pen->line(middle, y + kBar, label, y + kBar + 2, 0.15);
      pen->text(rows->start[i] - 0.1, y + kBar + 1.9, widths[i] + 0.3, outside[i]->letter, kLetter);
    }
  return kBar + (outside.empty() ? 1.0 : 6.5);
}

}  // namespace heatkeep
