// Bar codes as dark rectangles on a grid of modules, encoded by libzint: Code 128 (ISO/IEC 15417), Data Matrix (ISO/IEC 16022,
// square, ECC 200) and QR (ISO/IEC 18004, level M). Text outside ASCII is carried as UTF-8 and says so (an extended channel
// interpretation, number 26).
#pragma once

#include <string>
#include <vector>

namespace heatkeep {

class Pen;

struct BarCode {
  struct Dark {
    int x = 0, y = 0, width = 0, height = 0;
  };
  int columns = 0, rows = 0;  // without the quiet zone
  int quiet = 0;              // modules that stay white on every side; of a linear code only left and right
  bool linear = false;        // rows is 1 and stands for any height
  std::vector<Dark> dark;

  int Across() const { return columns + 2 * quiet; }
};

// All throw BadText for what such a code cannot carry.
BarCode DataMatrixOf(const std::string& message);
BarCode QrOf(const std::string& message);
BarCode Code128Of(const std::string& text);

// Printable ASCII, 1 to 40 characters.
bool FitsCode128(const std::string& text);

// The width of a module: as many whole dots of `dot` mm as let the code with its quiet zone fit `room` mm; at most `most` mm.
// 0 where it would be below `least` mm.
double ModuleWidth(const BarCode& code, double room, double dot, double least, double most);

// Paints with the quiet zone's corner at x, y, moved to whole dots of the page. `height` is a linear code's.
void PaintBarCode(Pen& pen, const BarCode& code, double x, double y, double module, double dot, double height = 0);

}  // namespace heatkeep
