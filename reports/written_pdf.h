// What a PDF in the making is as bytes: every stream as it was, the same input the same bytes.
#pragma once

#include <string>

class QPDF;

namespace heatkeep {

std::string WrittenPdf(QPDF& pdf);

}  // namespace heatkeep
