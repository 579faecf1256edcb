#include "client/records/package_file.h"

#include <filesystem>
#include <fstream>
#include <stdexcept>

#include "client/gateway/read_package.h"
#include "client/gateway/stock_deeds.h"
#include "client/records/document_bytes.h"
#include "reports/package_paper.h"
#include "reports/paint_session.h"
#include "reports/whole_file.h"
#include "schema/terms/sha256.h"

namespace heatkeep {

PackageFile WritePackage(Connection& connection, nlohmann::json asked, const std::string& to, PaperSize size) {
  if (std::filesystem::path(to).extension() != ".pdf")
    throw std::invalid_argument(to + ": a package is a PDF; expected a name that ends in .pdf");
  PaintSession();
  const Package package = ReadPackage(connection, asked);
  PackageFile file{.subject = PackageSubject(package), .against = package.against};
  FilesBySha256 files;
  for (const PackageDocument& d : package.documents)
    if (!d.file_sha256.empty() && !files.contains(d.file_sha256)) files[d.file_sha256] = CheckedFile(connection, d.number, d.file_sha256);
  for (std::string& words : AgainstFiles(package, files)) file.against.push_back(std::move(words));
  if (!file.against.empty()) return file;
  const MadePackage made = MakePackage(package, files, size);
  file.pages = made.pages;
  file.documents = package.documents.size();
  file.sha256 = Sha256Hex(made.pdf);
  asked.update({{"read", Sha256Hex(package.said)}, {"sha256", file.sha256}, {"pages", made.pages}});
  WriteWholeFile(to, [&](const std::string& temporary) {
    std::ofstream out(temporary, std::ios::binary);
    out.write(made.pdf.data(), static_cast<std::streamsize>(made.pdf.size()));
    out.close();
    if (!out) throw std::runtime_error(to + ": not written: the disk did not take all of it");
    const nlohmann::json kept = StockDeeds(connection).KeepPackage(NewRequest(), asked);
    file.package = kept["package"];
    file.kept_before = kept["kept_before"].get<bool>();
  });
  return file;
}

}  // namespace heatkeep
