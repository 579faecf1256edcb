// What stands on a label, in reading order, and how far each line may shrink. Words only; label_painter.h paints them.
//
// A piece: tag, heat in large type (as it was read, never in groups; NO HEAT in words), grade, section, length in both units rounded
// down, mass, mill and inspection document, owner, limits of use, why it may not be used, which reprint it is. The code says tag, heat,
// grade and section, length (schema/terms/scan.h); the linear code is the tag alone.
// A place: its name, its limits; codes of the name. A batch: cut pieces of one line and heat; the code says order, line, heat, count.
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "reports/piece_bar_layout.h"
#include "schema/terms/label_rows.h"

namespace heatkeep {

// Large: 90 x 45 mm and more. Small: 59 x 28 mm and more.
enum class LabelSize { Large, Small };

struct LabelLine {
  std::string text;
  std::string caption;  // in small type before it
  double height = 3;    // em in mm; shrinks by steps down to `least`
  double least = 2.1;   // 6 pt: nothing on a label is smaller
  int lines = 1;        // so many at most
  bool bold = false, mono = false;
  bool band = false;    // white on black, with a stop sign
  std::string shorter;  // what is said instead where even the smallest type has no room for `text`
};

struct LabelFace {
  std::string name;                                         // for messages: "the label of A000001D"
  std::vector<LabelLine> lines;                             // beside the two-dimensional code, what must be heeded last
  std::vector<LabelLine> side;                              // under the two-dimensional code
  std::vector<std::pair<std::string, std::string>> fields;  // of the two-dimensional code; the first `needed` are always in it
  std::size_t needed = 2;
  std::string linear;  // of the linear code; empty: none
  std::optional<PieceBar> bar;
};

// printed_on (ISO day) and printed_by stand on the label.
LabelFace FaceOf(const PieceLabel& label, LabelSize size, const std::string& printed_on, const std::string& printed_by);
LabelFace FaceOf(const PlaceLabel& label, LabelSize size);
LabelFace FaceOf(const BatchLabel& label, LabelSize size, const std::string& printed_on, const std::string& printed_by);

}  // namespace heatkeep
