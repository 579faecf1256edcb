// One label on paper: every line whole, shrunk by steps or broken over lines; never under its least size, never cut off. Where words
// need the room, the strip with the linear code and the piece bar is left out: the two-dimensional code stays.
#pragma once

#include "reports/label_face.h"
#include "reports/paper.h"

namespace heatkeep {

enum class MatrixCode { DataMatrix, Qr };

struct LabelLook {
  MatrixCode code = MatrixCode::DataMatrix;
  int dpi = 203;  // of the printer: a module of a code is a whole number of its dots
};

struct LabelBox {
  double x = 0, y = 0, width = 0, height = 0;  // mm
};

// The size of faces that this box takes. Throws std::invalid_argument for a box under 59 x 28 mm.
LabelSize SizeFor(const LabelBox& box);

// Throws std::invalid_argument naming the label where its lines have no room at their least sizes, or where its code does not fit with
// modules of at least 0.33 mm (0.24 mm of the linear one).
void PaintLabel(Pen& pen, const LabelBox& box, const LabelFace& face, const LabelLook& look);

// What PaintLabel would throw, before anything is painted; empty where the label can be printed.
std::string WrongWithLabel(const LabelBox& box, const LabelFace& face, const LabelLook& look);

}  // namespace heatkeep
