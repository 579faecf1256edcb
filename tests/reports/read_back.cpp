#include "tests/reports/read_back.h"

#include <unistd.h>

#include <algorithm>
#include <array>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <sstream>
#include <stdexcept>

namespace heatkeep {
namespace {

std::string WithoutEntities(std::string text) {
  const std::pair<const char*, const char*> entities[] = {{"&lt;", "<"},   {"&gt;", ">"},  {"&quot;", "\""},
                                                          {"&apos;", "'"}, {"&#39;", "'"}, {"&amp;", "&"}};
  for (const auto& [from, to] : entities)
    for (std::size_t at = text.find(from); at != std::string::npos; at = text.find(from, at + 1))
      text.replace(at, std::string(from).size(), to);
  return text;
}

// The number of an attribute of a <word> line.
double Attribute(const std::string& line, const std::string& name) {
  const std::size_t at = line.find(name + "=\"");
  if (at == std::string::npos) throw std::runtime_error("pdftotext -bbox: no " + name + " in " + line);
  return std::stod(line.substr(at + name.size() + 2));
}

}  // namespace

OwnFolder::OwnFolder() {
  std::string pattern = (std::filesystem::temp_directory_path() / "heatkeep-reports-XXXXXX").string();
  if (mkdtemp(pattern.data()) == nullptr) throw std::runtime_error("no temporary folder");
  path_ = pattern;
}

OwnFolder::~OwnFolder() {
  std::error_code ignored;
  std::filesystem::remove_all(path_, ignored);
}

std::string OutputOf(const std::string& command) {
  std::FILE* pipe = popen(command.c_str(), "r");
  if (pipe == nullptr) throw std::runtime_error("cannot run: " + command);
  std::string out;
  std::array<char, 65536> buffer{};
  for (std::size_t n = 0; (n = fread(buffer.data(), 1, buffer.size(), pipe)) > 0;) out.append(buffer.data(), n);
  if (pclose(pipe) != 0) throw std::runtime_error("failed: " + command);
  return out;
}

std::vector<PdfWord> WordsOf(const std::string& pdf) {
  std::istringstream lines(OutputOf("pdftotext -bbox '" + pdf + "' -"));
  std::vector<PdfWord> words;
  int page = 0;
  for (std::string line; std::getline(lines, line);) {
    if (line.find("<page ") != std::string::npos) ++page;
    const std::size_t open = line.find("<word ");
    const std::size_t close = line.find("</word>");
    if (open == std::string::npos || close == std::string::npos) continue;
    const std::size_t text = line.find('>', open) + 1;
    words.push_back({page, Attribute(line, "xMin"), Attribute(line, "yMin"), Attribute(line, "xMax"), Attribute(line, "yMax"),
                     WithoutEntities(line.substr(text, close - text))});
  }
  return words;
}

int PagesOf(const std::string& pdf) {
  const std::string info = OutputOf("pdfinfo '" + pdf + "'");
  const std::size_t at = info.find("Pages:");
  return at == std::string::npos ? 0 : std::atoi(info.c_str() + at + 6);
}

std::string TextOf(const std::string& pdf) {
  std::istringstream words(OutputOf("pdftotext -layout '" + pdf + "' -"));
  std::string text;
  for (std::string word; words >> word;) text += (text.empty() ? "" : " ") + word;
  return text;
}

std::string WholeFile(const std::string& path) {
  std::ifstream in(path, std::ios::binary);
  std::ostringstream out;
  out << in.rdbuf();
  return out.str();
}

std::string CrowdingOf(const std::string& pdf, double page_width_mm, double page_height_mm) {
  const std::vector<PdfWord> words = WordsOf(pdf);
  const double mm = 72 / 25.4;
  std::string found;
  for (std::size_t i = 0; i < words.size(); ++i) {
    const PdfWord& a = words[i];
    const double slack = 0.3 * (a.bottom - a.top);  // a word's box is higher than its letters
    if (a.left < 12 * mm - 0.6 || a.right > (page_width_mm - 12) * mm + 0.6 || a.top + slack < 12 * mm - 3 ||
        a.bottom - slack > (page_height_mm - 12) * mm + 0.6)
      found += "page " + std::to_string(a.page) + ": in the margin: " + a.text + "\n";
    for (std::size_t j = i + 1; j < words.size() && words[j].page == a.page; ++j) {
      const PdfWord& b = words[j];
      const double other = 0.3 * (b.bottom - b.top);
      const bool across = std::min(a.right, b.right) - std::max(a.left, b.left) > 0.4;
      const bool down = std::min(a.bottom - slack, b.bottom - other) - std::max(a.top + slack, b.top + other) > 0.2;
      if (across && down) found += "page " + std::to_string(a.page) + ": over each other: " + a.text + " | " + b.text + "\n";
    }
  }
  return found;
}

}  // namespace heatkeep
