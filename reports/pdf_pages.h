// A PDF of pages of one size, to the hundredth of a millimetre: what every paper is made of.
#pragma once

#include <QByteArray>
#include <functional>
#include <string>

#include "reports/paper.h"

namespace heatkeep {

struct PageForm {
  std::string title;
  double width = 210, height = 297;  // mm
};

// `paint` draws page 1..pages in millimetres from the page's top left corner. The same input, the same bytes, fonts embedded.
// Throws std::runtime_error when it cannot be painted.
QByteArray PaintPages(const PageForm& form, int pages, const PrintOptions& options, const std::function<void(Pen&, int page)>& paint);

}  // namespace heatkeep
