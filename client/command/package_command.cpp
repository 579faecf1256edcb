#include "client/command/package_command.h"

#include <ostream>

#include "client/records/package_file.h"
#include "schema/terms/counted.h"

namespace heatkeep::command {
namespace {

using Json = nlohmann::json;

Json Asked(const PackageOptions& options) {
  Json asked{{"without_files", options.without_files}};
  for (const auto& [key, word] : {std::pair{"order", &options.order},
                                  {"note", &options.note},
                                  {"shop", &options.shop},
                                  {"rule", &options.rule},
                                  {"additional", &options.additional}})
    if (!word->empty()) asked[key] = *word;
  return asked;
}

int Refuse(const BookCall& call, const PackageFile& file) {
  call.err << "no certificate package of " << file.subject << ":\n";
  for (const std::string& words : file.against) call.err << "  " << words << '\n';
  call.err
      << "expected: nothing against it; quality lifts holds, accepts papers (heatkeep papers accept) and files documents (heatkeep certificate attach)\n";
  return 1;
}

}  // namespace

int RunCertificatePackage(const BookCall& call, const PackageOptions& options) {
  return WithBook(call, [&](Connection& connection) {
    const PackageFile file = WritePackage(connection, Asked(options), options.to, options.letter ? PaperSize::Letter : PaperSize::A4);
    if (!file.against.empty()) return Refuse(call, file);
    call.out << "wrote " << options.to << ": " << Counted(file.pages, "page") << ", " << Counted(file.documents, "document") << ", SHA-256 "
             << file.sha256 << "; " << (file.kept_before ? "the same as package " : "kept as package ") << file.package << '\n';
    return 0;
  });
}

}  // namespace heatkeep::command
