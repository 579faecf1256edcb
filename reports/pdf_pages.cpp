#include "reports/pdf_pages.h"

#include <QBuffer>
#include <QHash>
#include <QPageLayout>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <cmath>
#include <cstdio>
#include <stdexcept>

#include "reports/paint_session.h"
#include "reports/told_time.h"

namespace heatkeep {
namespace {

constexpr int kDotsPerMm = 100;
constexpr int kDpi = 2540;
constexpr double kPointsPerMm = 72 / 25.4;

// Puts `text` in the place of the `size` bytes at `from`, no byte more or less: no offset in the file moves.
void PutInPlace(QByteArray& pdf, qsizetype from, qsizetype size, QByteArray text) {
  text.truncate(size);
  pdf.replace(from, size, text.leftJustified(size, ' '));
}

// Qt writes the present time; the told one takes its place.
void SetCreationDate(QByteArray& pdf, const std::string& told) {
  const QByteArray key("/CreationDate (D:");
  const qsizetype at = pdf.indexOf(key);
  if (at < 0) return;
  const qsizetype from = at + key.size();
  const qsizetype end = pdf.indexOf(')', from);
  if (end < 0 || end - from < 14) return;
  PutInPlace(pdf, from, end - from, QByteArray::fromStdString(DigitsOfTime(told)) + "+00'00'");
}

// Qt rounds a page to whole points, up to 0.18 mm off. Its page boxes have room for the decimals.
void SetPageBoxes(QByteArray& pdf, const PageForm& form) {
  const QByteArray key("/MediaBox [0 0 ");
  char box[64];
  std::snprintf(box, sizeof box, "%.6f %.6f", form.width * kPointsPerMm, form.height * kPointsPerMm);
  for (qsizetype at = pdf.indexOf(key); at >= 0; at = pdf.indexOf(key, at + 1)) {
    const qsizetype from = at + key.size(), end = pdf.indexOf(']', from);
    if (end < 0) return;
    PutInPlace(pdf, from, end - from, box);
  }
}

// Qt writes the fonts in the order of a hash, which is another one in every process unless it is told.
struct SameOrder {
  SameOrder() { QHashSeed::setDeterministicGlobalSeed(); }
  ~SameOrder() { QHashSeed::resetRandomGlobalSeed(); }
  SameOrder(const SameOrder&) = delete;
  SameOrder& operator=(const SameOrder&) = delete;
};

}  // namespace

QByteArray PaintPages(const PageForm& form, int pages, const PrintOptions& options, const std::function<void(Pen&, int)>& paint) {
  PaintSession();
  const SameOrder order;
  QBuffer buffer;
  buffer.open(QIODevice::WriteOnly);
  QPdfWriter writer(&buffer);
  writer.setResolution(kDpi);
  writer.setPageLayout(QPageLayout(QPageSize(QSizeF(form.width, form.height), QPageSize::Millimeter, QString(), QPageSize::ExactMatch),
                                   QPageLayout::Portrait, QMarginsF(0, 0, 0, 0)));
  writer.setTitle(QString::fromStdString(form.title));
  writer.setCreator(QStringLiteral("Heatkeep"));
  QPainter painter;
  if (!painter.begin(&writer)) throw std::runtime_error(form.title + ": the PDF cannot be painted");
  const double points = form.height * kPointsPerMm;
  const double down = (std::round(points) - points) / kPointsPerMm * kDotsPerMm;  // from Qt's page top to the true one
  Pen pen(painter, kDotsPerMm);
  for (int page = 1; page <= pages; ++page) {
    if (page > 1 && !writer.newPage()) throw std::runtime_error(form.title + ": no new page");
    painter.resetTransform();
    painter.translate(0, down);
    paint(pen, page);
  }
  if (!painter.end()) throw std::runtime_error(form.title + ": the PDF could not be finished");
  buffer.close();
  QByteArray pdf = buffer.data();
  SetCreationDate(pdf, options.printed_at);
  SetPageBoxes(pdf, form);
  return pdf;
}

}  // namespace heatkeep
