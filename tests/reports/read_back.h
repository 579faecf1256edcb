// Reading reports back with other people's programs: poppler's pdftotext and pdfinfo, xlsx2csv, unzip.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace heatkeep {

// A folder of its own that is gone at the end.
class OwnFolder {
 public:
  OwnFolder();
  ~OwnFolder();
  OwnFolder(const OwnFolder&) = delete;
  OwnFolder& operator=(const OwnFolder&) = delete;
  std::string operator/(const std::string& name) const { return (path_ / name).string(); }
  const std::filesystem::path& path() const { return path_; }

 private:
  std::filesystem::path path_;
};

// Standard output of a shell command; throws when it fails.
std::string OutputOf(const std::string& command);

struct PdfWord {
  int page = 0;                                     // from 1
  double left = 0, top = 0, right = 0, bottom = 0;  // points from the top left corner
  std::string text;
};
std::vector<PdfWord> WordsOf(const std::string& pdf);
int PagesOf(const std::string& pdf);
// The text in reading order, blanks folded to one.
std::string TextOf(const std::string& pdf);
std::string WholeFile(const std::string& path);

// Words of a PDF that lie over each other or outside the 12 mm margins: "" when there are none.
std::string CrowdingOf(const std::string& pdf, double page_width_mm, double page_height_mm);

}  // namespace heatkeep
