#include "reports/package_paper.h"

namespace heatkeep {

std::string PackageSubject(const Package& package) {
  std::string order = package.order.empty() ? "" : "order " + package.order;
  if (package.note.empty()) return order;
  return order + (order.empty() ? "" : ", ") + "note " + package.note;
}

std::string PackageCount(const PackageLine& line) {
  const std::string count = std::to_string(line.count);
  return line.ordered > line.count ? count + " of " + std::to_string(line.ordered) : count;
}

std::string PackageLineName(const PackageLine& line) { return line.order.empty() ? "sold whole" : line.order + "/" + line.line; }

std::string PackageMetal(const PackageLine& line) {
  return line.section + ", " + line.grade + (line.condition.empty() ? "" : " " + line.condition);
}

std::string PackageParties(const Package& package) {
  return "for " + (package.customer.empty() ? "no customer named" : package.customer) +
      (package.shop.empty() ? "" : "  \u00B7  from " + package.shop);
}

std::string PackageStatement(const Package& package) {
  std::string words = "We state only our own work: the pieces listed here were sawn to length, measured and marked by us" +
      (package.shop.empty() ? std::string() : " (" + package.shop + ")") +
      ", from metal whose heat was kept with every piece from receipt on. Sawing changed nothing that the "
      "mills\u2019 documents specify but length. This cover is no inspection document: "
      "we issue none for this metal, and nothing here raises the type of a mill\u2019s document. The "
      "mills\u2019 documents follow unchanged, page for page, and their files are attached byte for "
      "byte; what they say is the mills\u2019 own. The originals are kept and can be seen on request (EN "
      "10204:2004 clause 6).";
  if (package.without_files)
    words +=
        " Of documents marked \u201Cnot in this file\u201D only values typed from paper are in our book; the "
        "document itself goes separately.";
  return words;
}

}  // namespace heatkeep
