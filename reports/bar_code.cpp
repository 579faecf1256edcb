#include "reports/bar_code.h"

#include <zint.h>

#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>
#include <memory>

#include "reports/paper.h"
#include "schema/terms/bad_text.h"

namespace heatkeep {
namespace {

constexpr int kUtf8 = 26;

struct Free {
  void operator()(zint_symbol* symbol) const { ZBarcode_Delete(symbol); }
};
using Symbol = std::unique_ptr<zint_symbol, Free>;

bool IsAscii(const std::string& text) {
  return std::all_of(text.begin(), text.end(), [](char c) { return static_cast<unsigned char>(c) < 128; });
}

Symbol NewSymbol(int kind, const std::string& text) {
  Symbol symbol(ZBarcode_Create());
  if (!symbol) throw std::bad_alloc();
  symbol->symbology = kind;
  symbol->input_mode = UNICODE_MODE;
  if (!IsAscii(text)) symbol->eci = kUtf8;
  return symbol;
}

int Modules(float units, float unit) { return static_cast<int>(std::lround(units / unit)); }

BarCode Encoded(zint_symbol& symbol, const std::string& text) {
  const auto* bytes = reinterpret_cast<const unsigned char*>(text.data());
  if (text.empty() || ZBarcode_Encode_and_Buffer_Vector(&symbol, bytes, static_cast<int>(text.size()), 0) >= ZINT_ERROR)
    throw BadText("no code can carry " + Quoted(text) + (text.empty() ? "" : std::string(": ") + symbol.errtxt), "a shorter text");
  BarCode code;
  code.columns = symbol.width;
  code.rows = symbol.rows;
  const float unit = symbol.vector->width / static_cast<float>(symbol.width);
  for (const zint_vector_rect* r = symbol.vector->rectangles; r != nullptr; r = r->next)
    code.dark.push_back({Modules(r->x, unit), Modules(r->y, unit), Modules(r->width, unit), Modules(r->height, unit)});
  return code;
}

double OnDot(double mm, double dot) { return std::ceil(mm / dot - 1e-9) * dot; }

}  // namespace

BarCode DataMatrixOf(const std::string& message) {
  const Symbol symbol = NewSymbol(BARCODE_DATAMATRIX, message);
  symbol->option_3 = DM_SQUARE;
  BarCode code = Encoded(*symbol, message);
  code.quiet = 2;  // the standard asks for 1
  return code;
}

BarCode QrOf(const std::string& message) {
  const Symbol symbol = NewSymbol(BARCODE_QRCODE, message);
  symbol->option_1 = 2;
  BarCode code = Encoded(*symbol, message);
  code.quiet = 4;
  return code;
}

bool FitsCode128(const std::string& text) {
  return !text.empty() && text.size() <= 40 && std::all_of(text.begin(), text.end(), [](char c) { return c >= ' ' && c <= '~'; });
}

BarCode Code128Of(const std::string& text) {
  if (!FitsCode128(text)) throw BadText(Quoted(text) + " is no text for a linear code", "1 to 40 printable ASCII characters");
  const Symbol symbol = NewSymbol(BARCODE_CODE128, text);
  symbol->show_hrt = 0;
  BarCode code = Encoded(*symbol, text);
  code.linear = true;
  code.rows = 1;
  code.quiet = 10;
  for (BarCode::Dark& d : code.dark) d.y = 0, d.height = 1;
  return code;
}

double ModuleWidth(const BarCode& code, double room, double dot, double least, double most) {
  const double across = std::max(code.Across(), code.linear ? 0 : code.rows + 2 * code.quiet);
  const double module = std::floor(std::min(room / across, most) / dot + 1e-9) * dot;
  return module < least - 1e-9 ? 0 : module;
}

void PaintBarCode(Pen& pen, const BarCode& code, double x, double y, double module, double dot, double height) {
  const double left = OnDot(x, dot) + code.quiet * module, top = OnDot(y, dot) + (code.linear ? 0 : code.quiet * module);
  const double row = code.linear ? height : module, d = pen.dots();
  QPainterPath path;  // one path: neighbours have no seam, whatever draws it
  for (const BarCode::Dark& r : code.dark)
    path.addRect(QRectF((left + r.x * module) * d, (top + r.y * row) * d, r.width * module * d, r.height * row * d));
  path.setFillRule(Qt::WindingFill);
  pen.painter().save();
  pen.painter().setRenderHint(QPainter::Antialiasing, false);
  pen.painter().fillPath(path, Qt::black);
  pen.painter().restore();
}

}  // namespace heatkeep
