// A small whole PDF that no mill issued: pages of one line of text each, uncompressed, with a right
// cross-reference table (ISO 32000-1, 7.5), so that what became of it can be found again byte for byte.
#pragma once

#include <cstdio>
#include <string>
#include <vector>

namespace heatkeep {

inline std::string InventedContent(const std::string& text) { return "BT /F1 14 Tf 40 90 Td (" + text + ") Tj ET"; }

// `more` stands in the catalogue: "/OpenAction << /S /JavaScript /JS (1) >>".
inline std::string InventedPdf(const std::vector<std::string>& pages, int width = 420, int height = 298, const std::string& more = {}) {
  std::vector<std::string> objects{"<< /Type /Catalog /Pages 2 0 R " + more + " >>", "",
                                   "<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica >>"};
  std::string kids;
  for (const std::string& text : pages) {
    const std::string content = InventedContent(text);
    kids += std::to_string(objects.size() + 1) + " 0 R ";
    objects.push_back("<< /Type /Page /Parent 2 0 R /Contents " + std::to_string(objects.size() + 2) +
                      " 0 R /Resources << /Font << /F1 3 0 R >> >> >>");
    objects.push_back("<< /Length " + std::to_string(content.size()) + " >>\nstream\n" + content + "\nendstream");
  }
  // the size is inherited from the page tree, as many programs write it
  objects[1] = "<< /Type /Pages /Kids [" + kids + "] /Count " + std::to_string(pages.size()) + " /MediaBox [0 0 " + std::to_string(width) +
      " " + std::to_string(height) + "] >>";
  std::string pdf = "%PDF-1.4\n", table;
  for (std::size_t i = 0; i < objects.size(); ++i) {
    char entry[32];
    std::snprintf(entry, sizeof entry, "%010zu 00000 n \n", pdf.size());
    table += entry;
    pdf += std::to_string(i + 1) + " 0 obj\n" + objects[i] + "\nendobj\n";
  }
  const std::string count = std::to_string(objects.size() + 1);
  return pdf + "xref\n0 " + count + "\n0000000000 65535 f \n" + table + "trailer\n<< /Size " + count + " /Root 1 0 R >>\nstartxref\n" +
      std::to_string(pdf.size()) + "\n%%EOF\n";
}

}  // namespace heatkeep
