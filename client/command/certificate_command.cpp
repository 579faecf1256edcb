#include <algorithm>
#include <ostream>

#include "client/command/receive_command.h"
#include "client/gateway/section_json.h"
#include "client/gateway/stock_deeds.h"
#include "client/incoming/book_names.h"
#include "client/incoming/document_file.h"
#include "client/intake/certificates_file.h"
#include "client/intake/file_bytes.h"
#include "schema/terms/counted.h"

namespace heatkeep::command {
namespace {

Json Test(const char* property, std::int64_t milli, const char* unit) {
  return {{"property", property}, {"value_milli", milli}, {"unit", unit}};
}

// What a row says of its lot, added to what another row said.
void AddRow(const intake::CertificatesFileRow& row, Json& lots) {
  const Json section = SectionJson(row.section);
  auto lot = std::find_if(lots.begin(), lots.end(), [&](const Json& l) { return l["heat"] == row.heat && l["section"] == section; });
  if (lot == lots.end()) {
    lots.push_back({{"heat", row.heat},
                    {"section", section},
                    {"condition", row.condition},
                    {"grade", row.grade},
                    {"heat_analysis", Json::object()},
                    {"tests", Json::array()}});
    lot = std::prev(lots.end());
  }
  for (const ElementContent& e : row.chemistry) (*lot)[row.product ? "product_analysis" : "heat_analysis"][e.element] = e.millionths;
  if (row.rm_kpa) (*lot)["tests"].push_back(Test("Rm", *row.rm_kpa, "MPa"));
  if (row.re_kpa) (*lot)["tests"].push_back(Test("Re", *row.re_kpa, "MPa"));
  if (row.a_millipercent) (*lot)["tests"].push_back(Test("A", *row.a_millipercent, "%"));
}

Json ValidatorsJson(const std::vector<Validator>& validators) {
  Json list = Json::array();
  for (const Validator& v : validators) list.push_back({{"name", v.name}, {"position", v.position}, {"for", v.whom}});
  return list;
}

// Rows of one document follow each other or not: gathered by issuer and number, in order of appearance.
std::vector<Json> DocumentsOf(const std::vector<intake::CertificatesFileRow>& rows) {
  std::vector<Json> documents;
  for (const intake::CertificatesFileRow& row : rows) {
    auto at = std::find_if(documents.begin(), documents.end(),
                           [&](const Json& d) { return d["issuer"] == row.issuer && d["number"] == row.number; });
    if (at == documents.end()) {
      Json document = {{"issuer", row.issuer}, {"number", row.number}, {"type", PapersText(row.type)}, {"lots", Json::array()}};
      if (!row.issued.empty()) document["issued_on"] = row.issued;
      if (!row.validated_by.empty()) document["validated_by"] = ValidatorsJson(row.validated_by);
      at = documents.insert(documents.end(), std::move(document));
    }
    AddRow(row, (*at)["lots"]);
  }
  return documents;
}

// Files and validators that were told beside the table, to the documents they are of.
void AddTold(Connection& connection, const CertificateFiling& filing, std::vector<Json>& documents) {
  if (!filing.validated_by.empty()) {
    if (documents.size() != 1)
      throw BadText("--validated-by is of one document, the table has " + std::to_string(documents.size()),
                    "a column validated_by in the table");
    documents.front()["validated_by"] = ValidatorsJson(ReadValidators(filing.validated_by));
  }
  for (const std::string& told : filing.scans) {
    auto at = documents.end();
    std::string path = told;
    for (auto d = documents.begin(); d != documents.end(); ++d) {
      const std::string number = (*d)["number"].get<std::string>() + "=";
      if (!told.starts_with(number)) continue;
      at = d;
      path = told.substr(number.size());
    }
    if (at == documents.end() && documents.size() == 1) at = documents.begin();
    if (at == documents.end()) throw BadText("--scan " + Quoted(told) + " is of no document in the table", "NUMBER=FILE");
    if (at->contains("file_base64"))
      throw BadText("--scan: document " + Quoted((*at)["number"].get<std::string>()) + " has two files", "one file a document");
    (*at)["file_base64"] = incoming::DocumentFileBase64(connection, path);
  }
}

}  // namespace

int RunCertificates(const BookCall& call, const CertificateFiling& filing) {
  const TableFile& file = filing.file;
  const CertificateDeed deed = filing.deed;
  return WithBook(call, [&](Connection& connection) {
    const std::string bytes = intake::FileBytes(file.path);
    const auto read = intake::ReadCertificatesFile(bytes, file.path, file.How());
    if (!read.Good()) return RefuseFile(call.err, read.problems);
    incoming::BookNames names(connection, file.path, read.facts);
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
    std::size_t lots = 0, filed = 0, again = 0, unjudged = 0;
    std::vector<Json> documents = DocumentsOf(read.rows);
    AddTold(connection, filing, documents);
    Transaction whole(connection);
    for (Json& document : documents) {
      const std::string part = document["issuer"].get<std::string>() + " " + document["number"].get<std::string>();
      if (deed == CertificateDeed::Replace) document["reason"] = filing.reason;
      const RequestNumber request =
          RequestOfFile(connection, word, file.Part(part), bytes + document.value("file_base64", "") + filing.validated_by);
      const Json answer = deed == CertificateDeed::FileAndAccept ? deeds.FileDocument(request, document)
          : deed == CertificateDeed::File                        ? stock.FilePapers(request, document)
                                                                 : stock.ReplaceDocument(request, document);
      if (deed == CertificateDeed::Replace)
        call.out << part << ", version " << answer["version"] << ": went with " << Counted(answer["pieces"].size(), "piece") << ", "
                 << Counted(answer["shipments"].size() + answer["sold"].size(), "shipment") << "\n";
      for (const Json& hold : answer.value("holds", Json::array()))
        call.out << "its metal stays held by hold " << hold["hold_id"] << ": " << hold["reason"].get<std::string>()
                 << "; `heatkeep hold lift " << hold["hold_id"] << " --evidence ...` frees it\n";
      (answer.contains("again") ? again : filed) += 1;
      unjudged += answer.contains("warning") && !answer["warning"].is_null() ? 1U : 0U;
      lots += document["lots"].size();
    }
    whole.Commit();
    if (unjudged > 0)
      call.err << "heatkeep: no limit is known of tests of " << Counted(unjudged, "document")
               << "; `heatkeep certificate check` says which\n";
    if (again > 0) call.out << Counted(again, "document") << " filed before from this file: nothing was added\n";
    else
      call.out << Counted(filed, "document") << " filed for " << Counted(lots, "lot")
               << (deed == CertificateDeed::File ? "; they wait until quality accepts them" : "") << '\n';
    return 0;
  });
}

}  // namespace heatkeep::command
