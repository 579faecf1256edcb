#include "client/intake/csv_encoding.h"

#include <algorithm>
#include <array>
#include <cstdint>

namespace heatkeep::intake {
namespace {

// Windows-1252, 0x80 to 0x9F; 0: no character. (The table of the encoding's registration, from memory.)
constexpr std::array<std::uint16_t, 32> kWindows1252{0x20AC, 0,      0x201A, 0x0192, 0x201E, 0x2026, 0x2020, 0x2021, 0x02C6, 0x2030, 0x0160,
                                                     0x2039, 0x0152, 0,      0x017D, 0,      0,      0x2018, 0x2019, 0x201C, 0x201D, 0x2022,
                                                     0x2013, 0x2014, 0x02DC, 0x2122, 0x0161, 0x203A, 0x0153, 0,      0x017E, 0x0178};

unsigned Byte(char c) { return static_cast<unsigned char>(c); }

void Append(std::string& out, std::uint32_t c) {
  const auto put = [&out](std::uint32_t byte) { out += static_cast<char>(static_cast<unsigned char>(byte)); };
  if (c < 0x80) {
    put(c);
  } else if (c < 0x800) {
    put(0xC0 | (c >> 6));
    put(0x80 | (c & 0x3F));
  } else if (c < 0x10000) {
    put(0xE0 | (c >> 12));
    put(0x80 | ((c >> 6) & 0x3F));
    put(0x80 | (c & 0x3F));
  } else {
    put(0xF0 | (c >> 18));
    put(0x80 | ((c >> 12) & 0x3F));
    put(0x80 | ((c >> 6) & 0x3F));
    put(0x80 | (c & 0x3F));
  }
}

int LineAt(std::string_view text, std::size_t at) {
  return 1 + static_cast<int>(std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(at), '\n'));
}

// The length of the character at the front, 0 when it is none (Unicode 15, table 3-7: well-formed byte sequences).
std::size_t Utf8Length(std::string_view rest) {
  const unsigned b = Byte(rest[0]);
  if (b < 0x80) return 1;
  const std::size_t n = b >= 0xC2 && b <= 0xDF ? 2 : b >= 0xE0 && b <= 0xEF ? 3 : b >= 0xF0 && b <= 0xF4 ? 4 : 0;
  if (n == 0 || rest.size() < n) return 0;
  const unsigned second = Byte(rest[1]);
  const unsigned low = b == 0xE0 ? 0xA0 : b == 0xF0 ? 0x90 : 0x80;
  const unsigned high = b == 0xED ? 0x9F : b == 0xF4 ? 0x8F : 0xBF;
  if (second < low || second > high) return 0;
  for (std::size_t i = 2; i < n; ++i) {
    if ((Byte(rest[i]) & 0xC0U) != 0x80) return 0;
  }
  return n;
}

std::size_t FirstNotUtf8(std::string_view bytes) {
  std::size_t at = 0;
  while (at < bytes.size()) {
    const std::size_t n = Utf8Length(bytes.substr(at));
    if (n == 0) return at;
    at += n;
  }
  return std::string_view::npos;
}

DecodedText Refused(std::string wrong, std::string expected, int line = 0) { return {"", "", std::move(wrong), std::move(expected), line}; }

DecodedText FromUtf16(std::string_view bytes, bool big_end) {
  if (bytes.size() % 2 != 0) return Refused("half a UTF-16 character at the end", "a whole text file");
  const auto unit = [&](std::size_t i) {
    const std::uint32_t a = Byte(bytes[i]), b = Byte(bytes[i + 1]);
    return big_end ? a << 8 | b : b << 8 | a;
  };
  DecodedText out;
  out.encoding = "UTF-16";
  for (std::size_t i = 0; i < bytes.size(); i += 2) {
    std::uint32_t c = unit(i);
    if (c >= 0xD800 && c <= 0xDFFF) {
      const bool pair = c < 0xDC00 && i + 2 < bytes.size() && unit(i + 2) >= 0xDC00 && unit(i + 2) <= 0xDFFF;
      if (!pair) return Refused("half a UTF-16 character", "a whole text file", LineAt(out.utf8, out.utf8.size()));
      c = 0x10000 + ((c - 0xD800) << 10) + (unit(i + 2) - 0xDC00);
      i += 2;
    }
    if (c == 0) return Refused("a zero character", "a text file", LineAt(out.utf8, out.utf8.size()));
    Append(out.utf8, c);
  }
  return out;
}

DecodedText FromWindows1252(std::string_view bytes) {
  DecodedText out;
  out.encoding = "Windows-1252";
  for (std::size_t i = 0; i < bytes.size(); ++i) {
    const unsigned b = Byte(bytes[i]);
    const std::uint32_t c = b < 0x80 || b > 0x9F ? b : kWindows1252[b - 0x80];
    if (c == 0) {
      return Refused("a byte that is a character neither in UTF-8 nor in Windows-1252", "a file saved as UTF-8", LineAt(bytes, i));
    }
    Append(out.utf8, c);
  }
  return out;
}

}  // namespace

bool IsUtf8(std::string_view bytes) { return FirstNotUtf8(bytes) == std::string_view::npos; }

DecodedText DecodeText(std::string_view bytes) {
  if (bytes.starts_with("PK\x03\x04")) return Refused("this is a spreadsheet or zip file", "text: save it as CSV");
  if (bytes.starts_with("\xFF\xFE")) return FromUtf16(bytes.substr(2), false);
  if (bytes.starts_with("\xFE\xFF")) return FromUtf16(bytes.substr(2), true);
  const bool marked = bytes.starts_with("\xEF\xBB\xBF");
  if (marked) bytes.remove_prefix(3);
  if (const auto at = bytes.find('\0'); at != std::string_view::npos) { return Refused("a zero byte", "a text file", LineAt(bytes, at)); }
  const std::size_t bad = FirstNotUtf8(bytes);
  if (bad == std::string_view::npos) return {std::string(bytes), "UTF-8", "", "", 0};
  if (marked) return Refused("bytes that are not UTF-8 though the file says it is", "a file saved as UTF-8", LineAt(bytes, bad));
  return FromWindows1252(bytes);
}

}  // namespace heatkeep::intake
