#include "client/command/document_file.h"

#include <ostream>
#include <stdexcept>

#include "client/command/base64.h"
#include "client/gateway/readings.h"
#include "client/gateway/stock_deeds.h"
#include "client/intake/file_bytes.h"
#include "client/records/document_bytes.h"
#include "reports/whole_file.h"

namespace heatkeep::command {

std::string DocumentFileBase64(Connection& connection, const std::string& path) {
  const double most = std::stod(ReadSetting(connection, "document_mb", "20")) * 1048576;
  const std::string bytes = intake::FileBytes(path, most < 1 ? 1 : static_cast<std::size_t>(most));
  if (bytes.empty()) throw std::runtime_error(path + ": the file is empty; expected a whole PDF, PNG, JPEG or TIFF file");
  return Base64(bytes);
}

int RunCertificateAttach(const BookCall& call, const CertificateChoice& choice, const std::string& scan) {
  return WithBook(call, [&](Connection& connection) {
    const DocumentRecord d = MeantDocument(connection, choice);
    const Json body{{"issuer", d.issuer}, {"number", d.number}, {"file_base64", DocumentFileBase64(connection, scan)}};
    const Json answer = StockDeeds(connection).AttachFile(RequestOfFile(connection, "attach_file", d.issuer + " " + d.number, body.dump()), body);
    call.out << "document " << d.number << " of " << d.issuer << ", version " << answer["version"] << ": file of " << answer["bytes"] << " bytes, SHA-256 " << answer["file_sha256"].get<std::string>() << '\n';
    return 0;
  });
}

int RunCertificateExport(const BookCall& call, const CertificateChoice& choice, const std::string& to) {
  return WithBook(call, [&](Connection& connection) {
    const DocumentRecord d = MeantDocument(connection, choice);
    if (d.file_sha256.empty()) throw BadText("document " + Quoted(d.number) + " version " + std::to_string(d.version) + " was typed without its file", "`heatkeep certificate attach` first");
    const std::string bytes = CheckedFile(connection, d.number, d.file_sha256);
    WriteWholeBytes(to, bytes.data(), bytes.size());
    if (choice.json) call.out << Json{{"file", to}, {"bytes", bytes.size()}, {"sha256", d.file_sha256}}.dump(2) << '\n';
    else call.out << "wrote " << to << ": " << bytes.size() << " bytes, SHA-256 " << d.file_sha256 << '\n';
    return 0;
  });
}

}  // namespace heatkeep::command
