#include <ostream>

#include "client/command/book_names.h"
#include "client/command/receive_command.h"
#include "client/command/section_json.h"
#include "client/gateway/stock_deeds.h"
#include "client/intake/certificates_file.h"
#include "client/intake/file_bytes.h"

namespace heatkeep::command {
namespace {

Json Test(const char* property, std::int64_t milli, const char* unit) {
  return {{"property", property}, {"value_milli", milli}, {"unit", unit}};
}

Json LotJson(const intake::CertificatesFileRow& row) {
  Json lot = {{"heat", row.heat}, {"section", SectionJson(row.section)}, {"condition", row.condition}, {"grade", row.grade},
              {"heat_analysis", Json::object()}, {"tests", Json::array()}};
  for (const ElementContent& e : row.chemistry) lot["heat_analysis"][e.element] = e.millionths;
  if (row.rm_kpa) lot["tests"].push_back(Test("Rm", *row.rm_kpa, "MPa"));
  if (row.re_kpa) lot["tests"].push_back(Test("Re", *row.re_kpa, "MPa"));
  if (row.a_millipercent) lot["tests"].push_back(Test("A", *row.a_millipercent, "%"));
  return lot;
}

// Rows of one document follow each other or not: gathered by issuer and number, in order of appearance.
std::vector<Json> DocumentsOf(const std::vector<intake::CertificatesFileRow>& rows) {
  std::vector<Json> documents;
  for (const intake::CertificatesFileRow& row : rows) {
    auto at = std::find_if(documents.begin(), documents.end(), [&](const Json& d) {
      return d["issuer"] == row.issuer && d["number"] == row.number;
    });
    if (at == documents.end()) {
      Json document = {{"issuer", row.issuer}, {"number", row.number}, {"type", PapersText(row.type)}, {"lots", Json::array()}};
      if (!row.issued.empty()) document["issued_on"] = row.issued;
      at = documents.insert(documents.end(), std::move(document));
    }
    (*at)["lots"].push_back(LotJson(row));
  }
  return documents;
}

}  // namespace

int RunCertificates(const BookCall& call, const TableFile& file, CertificateDeed deed, const std::string& reason) {
  return WithBook(call, [&](Connection& connection) {
    const std::string bytes = intake::FileBytes(file.path);
    const auto read = intake::ReadCertificatesFile(bytes, file.path, file.How());
    if (!read.Good()) return RefuseFile(call.err, read.problems);
    BookNames names(connection, file.path, read.facts);
    for (const auto& row : read.rows) {
      names.Party(row.line_in_file, "issuer", row.issuer);
      names.Grade(row.line_in_file, row.grade);
      if (row.issued.empty()) names.Problem(row.line_in_file, "issued is empty", "the date on the document, as 2026-03-04");
    }
    if (!names.problems().empty()) return RefuseFile(call.err, names.problems());
    call.err << intake::ProblemsText(read.warnings);
    Deeds deeds(connection);
    StockDeeds stock(connection);
    const std::string word = deed == CertificateDeed::FileAndAccept ? "certificate" : deed == CertificateDeed::File ? "papers" : "replaced";
    std::size_t lots = 0, filed = 0, again = 0;
    Transaction whole(connection);
    for (Json document : DocumentsOf(read.rows)) {
      const std::string part = document["issuer"].get<std::string>() + " " + document["number"].get<std::string>();
      const RequestNumber request = RequestOfFile(connection, word, file.Part(part), bytes);
      if (deed == CertificateDeed::Replace) document["reason"] = reason;
      const Json answer = deed == CertificateDeed::FileAndAccept ? deeds.FileDocument(request, document)
                          : deed == CertificateDeed::File        ? stock.FilePapers(request, document)
                                                                 : stock.ReplaceDocument(request, document);
      if (deed == CertificateDeed::Replace)
        call.out << part << ", version " << answer["version"] << ": went with " << answer["pieces"].size() << " pieces, " << answer["shipments"].size() + answer["sold"].size()
                 << " shipments\n";
      (answer.contains("again") ? again : filed) += 1;
      lots += document["lots"].size();
    }
    whole.Commit();
    if (again > 0) call.out << again << " documents were filed before from this file: nothing was added\n";
    else call.out << filed << " documents filed for " << lots << " lots" << (deed == CertificateDeed::File ? "; they wait until quality accepts them" : "") << '\n';
    return 0;
  });
}

}  // namespace heatkeep::command
