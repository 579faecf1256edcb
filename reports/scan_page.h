// A scanned document as one PDF page: the picture's own data goes in unaltered, nothing is decoded and packed
// anew. JPEG (ISO/IEC 10918-1) as DCTDecode; PNG (ISO/IEC 15948) grey, RGB or palette, not interlaced, as
// FlateDecode with the PNG predictors (ISO 32000-1, 7.4.4). Of anything else the words say why there is no
// page; the file can still be attached.
#pragma once

#include <optional>
#include <string>

namespace heatkeep {

struct ScanPage {
  std::string pdf;       // one page as large as the picture at its own resolution (at most A4 where it says none);
                         // empty: no page
  std::string words;     // why there is none
  bool damaged = false;  // the file itself cannot be read
};

// media: "image/jpeg", "image/png", "image/tiff".
ScanPage PageOfScan(const std::string& bytes, const std::string& media);

}  // namespace heatkeep
