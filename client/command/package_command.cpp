#include "client/command/package_command.h"

#include <filesystem>
#include <fstream>
#include <ostream>
#include <stdexcept>

#include "client/book/sha256.h"
#include "client/command/document_file.h"
#include "client/gateway/read_package.h"
#include "client/gateway/stock_deeds.h"
#include "reports/certificate_package.h"
#include "reports/package_paper.h"
#include "reports/paint_session.h"
#include "reports/whole_file.h"

namespace heatkeep::command {
namespace {

Json Asked(const PackageOptions& options) {
  Json asked{{"without_files", options.without_files}};
  for (const auto& [key, word] : {std::pair{"order", &options.order}, {"note", &options.note}, {"shop", &options.shop}, {"rule", &options.rule}, {"additional", &options.additional}})
    if (!word->empty()) asked[key] = *word;
  return asked;
}

int Refuse(const BookCall& call, const Package& package, const std::vector<std::string>& against) {
  call.err << "no certificate package of " << PackageSubject(package) << ":\n";
  for (const std::string& words : against) call.err << "  " << words << '\n';
  call.err << "expected: nothing against it; quality lifts holds, accepts papers (heatkeep papers accept) and files documents (heatkeep certificate attach)\n";
  return 1;
}

}  // namespace

int RunCertificatePackage(const BookCall& call, const PackageOptions& options) {
  return WithBook(call, [&](Connection& connection) {
    if (std::filesystem::path(options.to).extension() != ".pdf") throw std::invalid_argument(options.to + ": a package is a PDF; expected a name that ends in .pdf");
    PaintSession();
    Json body = Asked(options);
    const Package package = ReadPackage(connection, body);
    std::vector<std::string> against = package.against;
    FilesBySha256 files;
    for (const PackageDocument& d : package.documents)
      if (!d.file_sha256.empty() && !files.contains(d.file_sha256)) files[d.file_sha256] = CheckedFile(connection, d.number, d.file_sha256);
    for (std::string& words : AgainstFiles(package, files)) against.push_back(std::move(words));
    if (!against.empty()) return Refuse(call, package, against);
    const MadePackage made = MakePackage(package, files, options.letter ? PaperSize::Letter : PaperSize::A4);
    const std::string sha256 = Sha256Hex(made.pdf);
    body.update({{"read", Sha256Hex(package.said)}, {"sha256", sha256}, {"pages", made.pages}});
    Json kept;
    // the file stands under its name only once the book has it, and the book only once the disk took it
    WriteWholeFile(options.to, [&](const std::string& temporary) {
      std::ofstream out(temporary, std::ios::binary);
      out.write(made.pdf.data(), static_cast<std::streamsize>(made.pdf.size()));
      out.close();
      if (!out) throw std::runtime_error(options.to + ": not written: the disk did not take all of it");
      kept = StockDeeds(connection).KeepPackage(NewRequest(), body);
    });
    call.out << "wrote " << options.to << ": " << made.pages << " pages, " << package.documents.size() << " documents, SHA-256 " << sha256 << "; "
             << (kept["kept_before"].get<bool>() ? "the same as package " : "kept as package ") << kept["package"] << '\n';
    return 0;
  });
}

}  // namespace heatkeep::command
