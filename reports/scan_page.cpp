#include "reports/scan_page.h"

#include <QBuffer>
#include <QImageReader>
#include <algorithm>
#include <cstdint>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFPageDocumentHelper.hh>
#include <sstream>

#include "reports/written_pdf.h"

namespace heatkeep {
namespace {

constexpr double kPoint = 72, kA4Width = 595.276, kA4Height = 841.89;
constexpr int kMostMegabytes = 600;  // decoded, to see whether a picture is whole: A4 at 1200 dpi in colour

struct Picture {
  std::int64_t width = 0, height = 0;
  int bits = 8, colors = 0;     // colors: 1 grey or palette, 3 RGB, 4 CMYK
  double dpi_x = 0, dpi_y = 0;  // 0: it does not say
  bool palette = false, inverted = false;
  std::string table;  // of the palette, RGB each
  std::string data;   // as it goes into the page
  std::string words;  // why it cannot
};

class Reader {
 public:
  explicit Reader(const std::string& bytes) : bytes_(bytes) {}
  bool has(std::size_t at, std::size_t count) const { return at <= bytes_.size() && count <= bytes_.size() - at; }
  std::uint32_t byte(std::size_t at) const { return has(at, 1) ? static_cast<unsigned char>(bytes_[at]) : 0; }
  std::uint32_t two(std::size_t at) const { return byte(at) << 8 | byte(at + 1); }
  std::uint32_t four(std::size_t at) const { return two(at) << 16 | two(at + 2); }
  std::string text(std::size_t at, std::size_t count) const { return has(at, count) ? bytes_.substr(at, count) : std::string(); }

 private:
  const std::string& bytes_;
};

void ReadFrame(Picture& p, const Reader& r, std::size_t at) {
  p.bits = static_cast<int>(r.byte(at + 4));
  p.height = r.two(at + 5);
  p.width = r.two(at + 7);
  p.colors = static_cast<int>(r.byte(at + 9));
}

Picture Jpeg(const std::string& bytes) {
  Picture p;
  const Reader r(bytes);
  bool adobe = false;
  for (std::size_t at = 2; r.has(at, 4) && r.byte(at) == 0xFF;) {
    const std::uint32_t marker = r.byte(at + 1);
    if (marker == 0xFF) {
      ++at;
      continue;
    }
    if (marker == 0xDA) break;
    if (marker == 0xC0 || marker == 0xC1 || marker == 0xC2) ReadFrame(p, r, at);
    else if (marker >= 0xC3 && marker <= 0xCF && marker != 0xC4 && marker != 0xC8 && marker != 0xCC)
      p.words = "its kind of JPEG cannot be shown in a PDF";
    if (marker == 0xEE && r.text(at + 4, 5) == "Adobe") adobe = true;
    if (marker == 0xE0 && r.text(at + 4, 5) == std::string("JFIF\0", 5) && r.byte(at + 11) != 0) {
      const double to_inch = r.byte(at + 11) == 2 ? 2.54 : 1;
      p.dpi_x = r.two(at + 12) * to_inch;
      p.dpi_y = r.two(at + 14) * to_inch;
    }
    at += 2 + r.two(at + 2);
  }
  p.inverted = adobe && p.colors == 4;
  p.data = bytes;
  if (p.words.empty() && (p.bits != 8 || (p.colors != 1 && p.colors != 3 && p.colors != 4)))
    p.words = "its kind of JPEG cannot be shown in a PDF";
  return p;
}

Picture Png(const std::string& bytes) {
  Picture p;
  const Reader r(bytes);
  std::uint32_t kind = 9, interlaced = 0;
  bool transparent = false;
  for (std::size_t at = 8; r.has(at, 12);) {
    const std::size_t size = r.four(at);
    const std::string name = r.text(at + 4, 4);
    if (!r.has(at + 8, size)) break;
    if (name == "IHDR") {
      p.width = r.four(at + 8);
      p.height = r.four(at + 12);
      p.bits = static_cast<int>(r.byte(at + 16));
      kind = r.byte(at + 17);
      interlaced = r.byte(at + 20);
    } else if (name == "PLTE") {
      p.table = r.text(at + 8, size);
    } else if (name == "tRNS") {
      transparent = true;
    } else if (name == "pHYs" && r.byte(at + 16) == 1) {
      p.dpi_x = r.four(at + 8) * 0.0254;
      p.dpi_y = r.four(at + 12) * 0.0254;
    } else if (name == "IDAT") {
      p.data += r.text(at + 8, size);
    }
    at += 12 + size;
  }
  p.palette = kind == 3;
  p.colors = kind == 2 ? 3 : 1;
  if (kind == 4 || kind == 6 || transparent) p.words = "a see-through PNG cannot be shown unaltered";
  else if (interlaced != 0) p.words = "an interlaced PNG cannot be shown unaltered";
  return p;
}

// Whether Qt, whose reader is another one, can read all of it.
bool Whole(const std::string& bytes, const char* format) {
  QImageReader::setAllocationLimit(kMostMegabytes);
  QByteArray all = QByteArray::fromRawData(bytes.data(), static_cast<qsizetype>(bytes.size()));
  QBuffer buffer(&all);
  buffer.open(QIODevice::ReadOnly);
  QImageReader reader(&buffer, format);
  return !reader.read().isNull();
}

QPDFObjectHandle ColorSpace(QPDF& pdf, const Picture& p) {
  if (!p.palette) return QPDFObjectHandle::newName(p.colors == 1 ? "/DeviceGray" : p.colors == 3 ? "/DeviceRGB" : "/DeviceCMYK");
  QPDFObjectHandle space = QPDFObjectHandle::newArray();
  space.appendItem(QPDFObjectHandle::newName("/Indexed"));
  space.appendItem(QPDFObjectHandle::newName("/DeviceRGB"));
  space.appendItem(QPDFObjectHandle::newInteger(static_cast<long long>(p.table.size() / 3) - 1));
  space.appendItem(pdf.makeIndirectObject(QPDFObjectHandle::newString(p.table)));
  return space;
}

QPDFObjectHandle Image(QPDF& pdf, const Picture& p, bool jpeg) {
  QPDFObjectHandle image = QPDFObjectHandle::newStream(&pdf);
  QPDFObjectHandle d = image.getDict();
  d.replaceKey("/Type", QPDFObjectHandle::newName("/XObject"));
  d.replaceKey("/Subtype", QPDFObjectHandle::newName("/Image"));
  d.replaceKey("/Width", QPDFObjectHandle::newInteger(p.width));
  d.replaceKey("/Height", QPDFObjectHandle::newInteger(p.height));
  d.replaceKey("/BitsPerComponent", QPDFObjectHandle::newInteger(p.bits));
  d.replaceKey("/ColorSpace", ColorSpace(pdf, p));
  if (p.inverted) d.replaceKey("/Decode", QPDFObjectHandle::parse("[1 0 1 0 1 0 1 0]"));
  QPDFObjectHandle how = QPDFObjectHandle::newNull();
  if (!jpeg) {
    how = QPDFObjectHandle::newDictionary();
    how.replaceKey("/Predictor", QPDFObjectHandle::newInteger(15));
    how.replaceKey("/Colors", QPDFObjectHandle::newInteger(p.colors));
    how.replaceKey("/BitsPerComponent", QPDFObjectHandle::newInteger(p.bits));
    how.replaceKey("/Columns", QPDFObjectHandle::newInteger(p.width));
  }
  image.replaceStreamData(p.data, QPDFObjectHandle::newName(jpeg ? "/DCTDecode" : "/FlateDecode"), how);
  return image;
}

std::string Number(double value) {
  std::ostringstream out;
  out.imbue(std::locale::classic());
  out.precision(3);
  out << std::fixed << value;
  return out.str();
}

std::string OnePage(const Picture& p, bool jpeg) {
  const bool told = p.dpi_x >= 50 && p.dpi_y >= 50;
  const double fit = std::min(kA4Width / static_cast<double>(p.width), kA4Height / static_cast<double>(p.height));
  const std::string width = Number(static_cast<double>(p.width) * (told ? kPoint / p.dpi_x : fit));
  const std::string height = Number(static_cast<double>(p.height) * (told ? kPoint / p.dpi_y : fit));
  QPDF pdf;
  pdf.emptyPDF();
  QPDFObjectHandle page = pdf.makeIndirectObject(
      QPDFObjectHandle::parse("<< /Type /Page /MediaBox [0 0 " + width + " " + height + "] /Resources << /XObject << >> >> >>"));
  page.getKey("/Resources").getKey("/XObject").replaceKey("/Scan", Image(pdf, p, jpeg));
  page.replaceKey("/Contents", QPDFObjectHandle::newStream(&pdf, "q " + width + " 0 0 " + height + " 0 0 cm /Scan Do Q\n"));
  QPDFPageDocumentHelper(pdf).addPage(page, true);
  return WrittenPdf(pdf);
}

}  // namespace

ScanPage PageOfScan(const std::string& bytes, const std::string& media) {
  const bool jpeg = media == "image/jpeg";
  if (!jpeg && media != "image/png")
    return {{}, "a " + media.substr(media.find('/') + 1) + " file cannot be shown as a page unaltered", false};
  const std::string end = jpeg ? std::string("\xFF\xD9") : std::string("IEND");
  if (bytes.rfind(end) == std::string::npos || !Whole(bytes, jpeg ? "jpeg" : "png"))
    return {{}, "it is damaged: the picture cannot be read to its end", true};
  const Picture picture = jpeg ? Jpeg(bytes) : Png(bytes);
  if (!picture.words.empty()) return {{}, picture.words, false};
  if (picture.width < 1 || picture.height < 1 || picture.data.empty()) return {{}, "it is damaged: it has no picture in it", true};
  return {OnePage(picture, jpeg), {}, false};
}

}  // namespace heatkeep
