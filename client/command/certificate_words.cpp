#include "client/command/certificate_words.h"

#include <memory>

#include "client/command/certificate_check.h"
#include "client/command/document_file.h"
#include "client/command/option_values.h"
#include "client/command/package_command.h"
#include "client/command/receive_command.h"
#include "client/command/table_words.h"

namespace heatkeep::command {
namespace {

void AddFiling(CLI::App& certificate, const Later& later, const std::string& verb, const std::string& help, CertificateDeed deed) {
  CLI::App* app = certificate.add_subcommand(verb, help);
  auto o = std::make_shared<CertificateFiling>();
  o->deed = deed;
  AddTableOptions(*app, o->file);
  app->add_option("--scan", o->scans,
                  "NUMBER=FILE: the paper itself (PDF, PNG, JPEG, TIFF), kept byte for byte; FILE alone where the table has one document")
      ->allow_extra_args(false);
  app->add_option("--validated-by", o->validated_by, "NAME, POSITION, manufacturer|independent|purchaser|official; several with ; between");
  if (deed == CertificateDeed::Replace) app->add_option("--reason", o->reason, "why the issuer replaced them")->required();
  app->callback([later, o] { later([o](const BookCall& call) { return RunCertificates(call, *o); }); });
}

CLI::App* AddChoice(CLI::App& certificate, const std::string& verb, const std::string& help, const std::shared_ptr<CertificateChoice>& o) {
  CLI::App* app = certificate.add_subcommand(verb, help);
  app->add_option("document", o->number, "its number")->required();
  app->add_option("--issuer", o->issuer, "where several issuers use that number");
  return app;
}

void AddLooks(CLI::App& certificate, const Later& later) {
  auto shown = std::make_shared<CertificateChoice>();
  CLI::App* show = AddChoice(certificate, "show", "what a filed document says, and its other versions", shown);
  show->add_option("--version", shown->version, "an earlier one; else the newest");
  show->add_flag("--json", shown->json, "as JSON");
  show->callback([later, shown] { later([shown](const BookCall& call) { return RunCertificateShow(call, *shown); }); });
  auto checked = std::make_shared<CertificateChoice>();
  CLI::App* check = AddChoice(certificate, "check", "every lot of a document against its grade", checked);
  check->add_option("--method", checked->method, "how values are compared with limits (`heatkeep heat check --help`)")
      ->capture_default_str()
      ->check(OneOf({"absolute", "rounding", "rounding-b"}));
  check->add_flag("--json", checked->json, "as JSON");
  check->callback([later, checked] { later([checked](const BookCall& call) { return RunCertificateCheck(call, *checked); }); });
}

void AddFiles(CLI::App& certificate, const Later& later) {
  auto typed = std::make_shared<CertificateChoice>();
  auto scan = std::make_shared<std::string>();
  CLI::App* attach = AddChoice(certificate, "attach",
                               "the file of a document that was typed without it: heatkeep certificate attach C1 --scan c1.pdf", typed);
  attach->add_option("--scan", *scan, "the paper itself, kept byte for byte")->required()->type_name(kScanFile);
  attach->callback(
      [later, typed, scan] { later([typed, scan](const BookCall& call) { return RunCertificateAttach(call, *typed, *scan); }); });
  auto wanted = std::make_shared<CertificateChoice>();
  auto to = std::make_shared<std::string>();
  CLI::App* take_out =
      AddChoice(certificate, "export", "the file of a document as it was filed: heatkeep certificate export C1 --to c1.pdf", wanted);
  take_out->add_option("--version", wanted->version, "an earlier one; else the newest");
  take_out->add_option("--to", *to, "where to")->required()->type_name(kAnyFile);
  take_out->add_flag("--json", wanted->json, "as JSON");
  take_out->callback(
      [later, wanted, to] { later([wanted, to](const BookCall& call) { return RunCertificateExport(call, *wanted, *to); }); });
}

void AddPass(CLI::App& certificate, const Later& later) {
  CLI::App* pass = certificate.add_subcommand("pass", "pass a document on with a shipment: heatkeep certificate pass C1 --note D1");
  auto o = std::make_shared<CertificatePass>();
  pass->add_option("document", o->number, "its number")->required();
  pass->add_option("--issuer", o->issuer, "where several issuers use that number");
  pass->add_option("--note", o->note, "our delivery note")->required();
  pass->add_option("--rule", o->rule, "by which standard")->capture_default_str()->check(OneOf({"EN 10204", "ISO 10474"}));
  pass->add_flag("--original", o->original, "the original goes, not a copy");
  pass->add_option("--additional", o->additional, "by ISO 10474: the number of our additional document");
  pass->callback([later, o] { later([o](const BookCall& call) { return RunCertificatePass(call, *o); }); });
}

void AddPackages(CLI::App& certificate, const Later& later) {
  CLI::App* package = certificate.add_subcommand(
      "package", "one PDF of all papers of an order or a delivery note, the mills' documents unchanged; refused with every reason");
  package->footer("example: heatkeep certificate package --order 26-1184 --note D-2041 --to package.pdf");
  auto o = std::make_shared<PackageOptions>();
  package->add_option("--order", o->order, "all good pieces cut for it");
  package->add_option("--note", o->note, "what left with this delivery note; of the order only, where both are named");
  package->add_option("--to", o->to, "where to")->required()->type_name(kPdfFile);
  package->add_option("--shop", o->shop, "who delivers, as the cover says it");
  package->add_option("--rule", o->rule, "else as the documents were passed on before, else EN 10204")
      ->check(OneOf({"EN 10204", "ISO 10474"}));
  package->add_option("--additional", o->additional, "by ISO 10474: the number of our additional document, which becomes a page");
  package->add_flag("--without-files", o->without_files, "also where of a document only typed values are here; the cover says so");
  package->add_flag("--letter", o->letter, "our own pages on Letter instead of A4");
  package->callback([later, o] { later([o](const BookCall& call) { return RunCertificatePackage(call, *o); }); });
  AddList(certificate, later,
          {"packages",
           "every package made, by whom, and the SHA-256 of its file",
           "certificate_packages",
           "package",
           {"package", "made_at", "made_by", "order_no", "note", "customer", "pages", "heats", "documents", "sha256"}});
}

}  // namespace

void AddCertificateWords(CLI::App& root, const Later& later) {
  CLI::App& certificate = Noun(root, "certificate", "inspection documents");
  AddFiling(certificate, later, "add", "file typed documents that quality has looked at", CertificateDeed::FileAndAccept);
  AddFiling(certificate, later, "file", "file typed documents; their lots wait until quality accepts them", CertificateDeed::File);
  AddFiling(certificate, later, "replace", "documents that their issuer has corrected; both versions are kept", CertificateDeed::Replace);
  AddLooks(certificate, later);
  AddFiles(certificate, later);
  AddPass(certificate, later);
  AddPackages(certificate, later);
}

}  // namespace heatkeep::command
