#include "client/command/document_file.h"

#include <ostream>

#include "client/gateway/stock_deeds.h"
#include "client/incoming/document_file.h"
#include "client/records/document_bytes.h"
#include "reports/whole_file.h"

namespace heatkeep::command {

int RunCertificateAttach(const BookCall& call, const CertificateChoice& choice, const std::string& scan) {
  return WithBook(call, [&](Connection& connection) {
    const DocumentRecord d = MeantDocument(connection, choice);
    const Json body{{"issuer", d.issuer}, {"number", d.number}, {"file_base64", incoming::DocumentFileBase64(connection, scan)}};
    const Json answer =
        StockDeeds(connection).AttachFile(RequestOfFile(connection, "attach_file", d.issuer + " " + d.number, body.dump()), body);
    call.out << "document " << d.number << " of " << d.issuer << ", version " << answer["version"] << ": file of " << answer["bytes"]
             << " bytes, SHA-256 " << answer["file_sha256"].get<std::string>() << '\n';
    return 0;
  });
}

int RunCertificateExport(const BookCall& call, const CertificateChoice& choice, const std::string& to) {
  return WithBook(call, [&](Connection& connection) {
    const DocumentRecord d = MeantDocument(connection, choice);
    if (d.file_sha256.empty())
      throw BadText("document " + Quoted(d.number) + " version " + std::to_string(d.version) + " was typed without its file",
                    "`heatkeep certificate attach` first");
    const std::string bytes = CheckedFile(connection, d.number, d.file_sha256);
    WriteWholeBytes(to, bytes.data(), bytes.size());
    if (choice.json) call.out << Json{{"file", to}, {"bytes", bytes.size()}, {"sha256", d.file_sha256}}.dump(2) << '\n';
    else call.out << "wrote " << to << ": " << bytes.size() << " bytes, SHA-256 " << d.file_sha256 << '\n';
    return 0;
  });
}

}  // namespace heatkeep::command
