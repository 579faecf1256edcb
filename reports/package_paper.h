// Our own pages of a certificate package: cover list, statement, trace table; delivery note; additional
// documents of ISO 10474. They say what the book holds about our own work and never stand in for a mill's
// document.
#pragma once

#include <QByteArray>
#include <string>
#include <vector>

#include "reports/paper.h"
#include "schema/terms/package.h"

namespace heatkeep {

// Where a document of the package is to be found in the file.
struct DocumentPlace {
  int first_page = 0, pages = 0;  // 0: it has no page in this file
  std::string label;              // the label of its first page
  std::string attached_as;        // name of the attachment that is its file; empty: none
  std::string words;              // why it has no page
};

// Cover list, our statement, and which heat went into which pieces. `places` in the order of
// package.documents.
QByteArray PrintPackageCover(const Package& package, const std::vector<DocumentPlace>& places, const PrintOptions& options);

// Marks on the pieces, heat and quantity, a table a delivery note; and how the documents are passed on.
QByteArray PrintPackageDelivery(const Package& package, const PrintOptions& options);

// The additional documents of ISO 10474:2013 clause 6 that the package names, each once; empty where it names
// none.
struct AdditionalDocument {
  std::string number;
  QByteArray pdf;
};
std::vector<AdditionalDocument> PrintAdditionalDocuments(const Package& package, const PrintOptions& options);

// What we say of our own work, and what we do not say.
std::string PackageStatement(const Package& package);

// "21 of 25", "14": of what the line asks for.
std::string PackageCount(const PackageLine& line);
// "O1/10", or "sold whole".
std::string PackageLineName(const PackageLine& line);
// "round 80, 42CrMo4 +QT".
std::string PackageMetal(const PackageLine& line);
// "for Pallant  ·  from Ostrel".
std::string PackageParties(const Package& package);

// "order O1, note D1".
std::string PackageSubject(const Package& package);

}  // namespace heatkeep
