#include "client/intake/file_format.h"

#include <algorithm>
#include <array>

#include "schema/terms/plain_text.h"

namespace heatkeep::intake {
namespace {

using namespace std::string_view_literals;

struct Signature {
  std::string_view bytes, what;
};

// The first bytes of formats people send by mistake (registrations of the media types, from memory).
constexpr std::array<Signature, 12> kSignatures{{{"%PDF-", "a PDF"},
                                                 {"\x1F\x8B", "a gzip file"},
                                                 {"7z\xBC\xAF\x27\x1C", "a 7z archive"},
                                                 {"Rar!\x1A\x07", "a rar archive"},
                                                 {"BZh", "a bzip2 file"},
                                                 {"\xFD"
                                                  "7zXZ",
                                                  "an xz file"},
                                                 {"\x89PNG\r\n", "a picture"},
                                                 {"\xFF\xD8\xFF", "a picture"},
                                                 {"GIF8", "a picture"},
                                                 {"{\\rtf", "a text document (RTF)"},
                                                 {"ID;P", "a SYLK file"},
                                                 {"SQLite format 3", "a database file"}}};

// A compound file holds its names as UTF-16.
bool HoldsName(std::string_view bytes, std::string_view name) {
  std::string wide;
  for (char c : name) wide += {c, '\0'};
  return bytes.find(wide) != std::string_view::npos;
}

std::string OfCompoundFile(std::string_view bytes) {
  if (HoldsName(bytes, "EncryptedPackage")) return "a spreadsheet locked with a password";
  if (HoldsName(bytes, "Workbook") || HoldsName(bytes, "Book")) return "an old binary spreadsheet (.xls)";
  return "an old binary office file";
}

// XML and HTML, which some programs save under a spreadsheet's name.
std::string OfMarkup(std::string_view bytes) {
  bytes = bytes.substr(0, 2048);
  if (bytes.starts_with("\xEF\xBB\xBF")) bytes.remove_prefix(3);
  bytes.remove_prefix(std::min(bytes.size(), bytes.find_first_not_of(" \t\r\n")));
  const std::string start = LowerCase(bytes);
  if (start.starts_with("<!doctype html") || start.starts_with("<html") || start.starts_with("<table")) return "a web page (HTML)";
  if (!start.starts_with("<?xml")) return "";
  if (start.find("urn:schemas-microsoft-com:office:spreadsheet") != std::string::npos) return "an XML spreadsheet of 2003";
  if (start.find("office:document") != std::string::npos) return "a flat OpenDocument file";
  return "an XML file";
}

}  // namespace

Recognised Recognise(std::string_view bytes) {
  if (bytes.starts_with("PK\x03\x04") || bytes.starts_with("PK\x05\x06"sv)) return {FileFormat::Zip, ""};
  if (bytes.starts_with("\xD0\xCF\x11\xE0\xA1\xB1\x1A\xE1")) return {FileFormat::Other, OfCompoundFile(bytes)};
  for (const Signature& s : kSignatures) {
    if (bytes.starts_with(s.bytes)) return {FileFormat::Other, std::string(s.what)};
  }
  if (std::string what = OfMarkup(bytes); !what.empty()) return {FileFormat::Other, std::move(what)};
  return {};
}

}  // namespace heatkeep::intake
