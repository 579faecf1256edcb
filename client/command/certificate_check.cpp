#include "client/command/certificate_check.h"

#include <optional>
#include <ostream>

#include "client/command/heat_lines.h"
#include "client/gateway/deeds.h"
#include "client/papers/check_heat.h"
#include "client/papers/mechanical.h"

namespace heatkeep::command {
namespace {

using papers::Overall;

Json HeadJson(const DocumentRecord& d) {
  Json j{{"issuer", d.issuer}, {"number", d.number},           {"version", d.version},
         {"type", d.type},     {"accepted_by", d.accepted_by}, {"file_sha256", d.file_sha256}};
  j["validated_by"] = d.validated_by.empty() ? Json::array() : Json::parse(d.validated_by);
  return j;
}

void SayHead(std::ostream& out, const DocumentRecord& d) {
  out << d.type << " no. " << d.number << " version " << d.version << " of " << d.issuer << ", "
      << (d.accepted_by.empty() ? "not accepted" : "accepted by " + d.accepted_by) << "\n";
  if (!d.file_sha256.empty()) out << "file SHA-256 " << d.file_sha256 << "\n";
  if (d.validated_by.empty()) return;
  for (const Json& by : Json::parse(d.validated_by)) {
    out << "validated by " << by["name"].get<std::string>() << ", " << by["position"].get<std::string>() << " ("
        << by["for"].get<std::string>() << ")\n";
  }
}

Json VersionsJson(const std::vector<DocumentVersion>& versions) {
  Json list = Json::array();
  for (const DocumentVersion& v : versions)
    list.push_back({{"version", v.version},
                    {"type", v.type},
                    {"issued_on", v.issued_on},
                    {"filed_by", v.filed_by},
                    {"accepted_by", v.accepted_by},
                    {"reason", v.reason},
                    {"file_sha256", v.file_sha256},
                    {"bytes", v.bytes},
                    {"media", v.media},
                    {"replaced_by", v.replaced_by}});
  return list;
}

void SayVersions(std::ostream& out, const std::vector<DocumentVersion>& versions) {
  if (versions.size() < 2) return;
  for (const DocumentVersion& v : versions) {
    out << "version " << v.version << ": " << v.type << " issued " << v.issued_on
        << (v.file_sha256.empty() ? ", no file" : ", file SHA-256 " + v.file_sha256);
    if (!v.reason.empty()) out << ", filed because: " << v.reason;
    if (v.replaced_by > 0) out << ", REPLACED by version " << v.replaced_by;
    out << "\n";
  }
}

std::string LotName(const DocumentLot& lot) {
  return "heat " + lot.heat + ", " + lot.grade + ", " + lot.section + (lot.condition.empty() ? "" : ", " + lot.condition);
}

struct LotCheck {
  std::optional<papers::Answer> heat, product;  // none: the document has no such analysis; without either, of an empty heat analysis
  std::vector<papers::Line> tests;
  Overall overall = Overall::Conforms;
};

LotCheck CheckLot(Connection& connection, const DocumentLot& lot, const std::vector<ProductDeviation>& deviations, papers::Method method) {
  const papers::Known known{ReadLimits(connection, lot.grade), deviations};
  LotCheck check;
  const auto judged = [&](const papers::Analysis& analysis, bool product) {
    papers::Answer answer = papers::CheckHeat({lot.grade, analysis, product, lot.size, method}, known);
    check.overall = papers::Worse(check.overall, answer.overall);
    return answer;
  };
  if (!lot.product_analysis.empty()) check.product = judged(lot.product_analysis, true);
  if (!lot.heat_analysis.empty() || !check.product) check.heat = judged(lot.heat_analysis, false);
  papers::TestQuestion q{lot.grade, lot.condition, lot.size, {}, method};
  for (const DocumentLot::Test& t : lot.tests) q.values.push_back({t.property, t.value_milli * 1000});
  if (q.values.empty()) return check;
  check.tests = papers::CheckTests(q, ReadMechanicalLimits(connection, lot.grade));
  check.overall = papers::Worse(check.overall, papers::OverallOfTests(check.tests));
  return check;
}

Json AnswerJson(const std::optional<papers::Answer>& answer) {
  if (!answer) return {{"elements", Json::array()}, {"sums", Json::array()}};
  Json j{{"elements", LinesJson(answer->elements, "element")}, {"sums", LinesJson(answer->sums, "what")}};
  if (!answer->open.empty()) j["open"] = answer->open;
  return j;
}

Json CheckJson(const DocumentLot& lot, const LotCheck& check) {
  Json one{{"heat", lot.heat},
           {"grade", lot.grade},
           {"section", lot.section},
           {"condition", lot.condition},
           {"overall", papers::OverallText(check.overall)},
           {"tests", LinesJson(check.tests, "property")}};
  one.update(AnswerJson(check.heat));
  if (check.product) one["product"] = AnswerJson(check.product);
  return one;
}

void SayAnswer(std::ostream& out, const papers::Answer& answer) {
  ShowLines(out, answer.elements);
  ShowLines(out, answer.sums);
  if (!answer.open.empty()) out << answer.open << "\n";
}

void SayCheck(std::ostream& out, const DocumentLot& lot, const LotCheck& check) {
  out << LotName(lot) << ": " << papers::OverallText(check.overall) << "\n";
  if (check.heat) SayAnswer(out, *check.heat);
  if (check.product) out << "product analysis\n";
  if (check.product) SayAnswer(out, *check.product);
  ShowLines(out, check.tests);
  if (check.heat) SayWrong(out, check.heat->elements, check.heat->sums);
  if (check.product) SayWrong(out, check.product->elements, check.product->sums);
  SayWrong(out, check.tests, {});
}

Json ContentsJson(const papers::Analysis& analysis) {
  Json values = Json::object();
  for (const ElementContent& e : analysis) values[e.element] = NumberJson({e.millionths, 1});
  return values;
}

void SayContents(std::ostream& out, const papers::Analysis& analysis) {
  for (const ElementContent& e : analysis) out << " " << e.element << " " << papers::ValueText({e.millionths, 1}) << "%";
}

}  // namespace

DocumentRecord MeantDocument(Connection& connection, const CertificateChoice& choice) {
  std::vector<DocumentRecord> found = ReadDocument(connection, choice.number, choice.issuer, choice.version);
  if (found.size() == 1) return std::move(found.front());
  std::string issuers;
  for (const DocumentRecord& d : found) issuers += (issuers.empty() ? "" : " or ") + d.issuer;
  if (found.empty())
    throw BadText(
        "no document " + Quoted(choice.number) + (choice.version > 0 ? " version " + std::to_string(choice.version) : "") + " is filed",
        "the number of a filed document (`heatkeep papers list` names them)");
  throw BadText("several documents have the number " + Quoted(choice.number), "--issuer " + issuers);
}

int RunCertificateShow(const BookCall& call, const CertificateChoice& choice) {
  return WithBook(call, [&](Connection& connection) {
    const DocumentRecord d = MeantDocument(connection, choice);
    const std::vector<DocumentVersion> versions = ReadVersions(connection, d.number, d.issuer);
    Json j = HeadJson(d);
    j["versions"] = VersionsJson(versions);
    if (!choice.json) SayHead(call.out, d);
    if (!choice.json) SayVersions(call.out, versions);
    for (const DocumentLot& lot : d.lots) {
      Json tests = Json::object();
      for (const DocumentLot::Test& t : lot.tests) tests[t.property] = NumberJson({t.value_milli * 1000, 1});
      j["lots"].push_back({{"heat", lot.heat},
                           {"grade", lot.grade},
                           {"section", lot.section},
                           {"condition", lot.condition},
                           {"heat_analysis", ContentsJson(lot.heat_analysis)},
                           {"product_analysis", ContentsJson(lot.product_analysis)},
                           {"tests", tests}});
      if (choice.json) continue;
      call.out << LotName(lot) << "\n ";
      SayContents(call.out, lot.heat_analysis);
      if (!lot.product_analysis.empty()) call.out << " product analysis";
      SayContents(call.out, lot.product_analysis);
      for (const DocumentLot::Test& t : lot.tests)
        call.out << " " << t.property << " " << papers::ValueText({t.value_milli * 1000, 1}) << " " << t.unit;
      call.out << "\n";
    }
    if (choice.json) call.out << j.dump(2) << "\n";
    return 0;
  });
}

int RunCertificateCheck(const BookCall& call, const CertificateChoice& choice) {
  return WithBook(call, [&](Connection& connection) {
    const papers::Method method = papers::ReadMethod(choice.method);
    const DocumentRecord d = MeantDocument(connection, choice);
    const std::vector<ProductDeviation> deviations = ReadDeviations(connection);
    Json j = HeadJson(d);
    j["lots"] = Json::array();
    j["states"] = kComparison;
    if (!choice.json) SayHead(call.out, d);
    bool all = true;
    for (const DocumentLot& lot : d.lots) {
      const LotCheck check = CheckLot(connection, lot, deviations, method);
      all = all && check.overall == Overall::Conforms;
      if (choice.json) j["lots"].push_back(CheckJson(lot, check));
      else SayCheck(call.out, lot, check);
    }
    if (choice.json) call.out << j.dump(2) << "\n";
    else call.out << kComparison << "\n";
    return all ? 0 : 1;
  });
}

int RunCertificatePass(const BookCall& call, const CertificatePass& pass) {
  return WithBook(call, [&](Connection& connection) {
    CertificateChoice choice;
    choice.number = pass.number;
    choice.issuer = pass.issuer;
    Json body{{"issuer", MeantDocument(connection, choice).issuer},
              {"number", pass.number},
              {"note", pass.note},
              {"rule", pass.rule},
              {"form", pass.original ? "original" : "copy"}};
    if (!pass.additional.empty()) body["additional"] = pass.additional;
    call.out << Deeds(connection)
                    .PassOnDocument(RequestOfFile(connection, "pass_on", pass.number, body.dump()), body)["words"]
                    .get<std::string>()
             << "\n";
    return 0;
  });
}

}  // namespace heatkeep::command
