// The certificate package of a delivery: one PDF of our own pages (package_paper.h) and the mills' documents
// unchanged, with their files attached byte for byte. The same package and files give the same bytes.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "reports/paper.h"
#include "schema/terms/package.h"

namespace heatkeep {

using FilesBySha256 = std::map<std::string, std::string>;  // the bytes of each document's file

// Why a file cannot go into a package unchanged, a line each: "document C1 of Vandrek: it is encrypted".
// Empty: all can.
std::vector<std::string> AgainstFiles(const Package& package, const FilesBySha256& files);

struct MadePackage {
  std::string pdf;
  int pages = 0;
};

// Throws std::runtime_error when AgainstFiles has something to say, or a file of a document is not among
// `files`. No clock: the package says when the last of it happened.
MadePackage MakePackage(const Package& package, const FilesBySha256& files, PaperSize size = PaperSize::A4);

}  // namespace heatkeep
