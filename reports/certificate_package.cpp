#include "reports/certificate_package.h"

#include <QByteArray>
#include <algorithm>
#include <stdexcept>

#include "reports/bound_pdf.h"
#include "reports/package_paper.h"
#include "reports/scan_page.h"

namespace heatkeep {
namespace {

constexpr const char* kPdf = "application/pdf";

// A document's file as pages; empty where it can only be attached.
struct Shown {
  std::string pdf, words;
  int pages = 0;
  std::string wrong;
};

Shown ShowFile(const PackageDocument& d, const std::string& bytes) {
  if (d.media == kPdf) {
    const PdfLook look = LookAtPdf(bytes);
    return {bytes, {}, look.pages, look.wrong};
  }
  const ScanPage page = PageOfScan(bytes, d.media);
  if (page.damaged) return {{}, {}, 0, page.words};
  return {page.pdf, page.words, page.pdf.empty() ? 0 : 1, {}};
}

const std::string& FileOf(const PackageDocument& d, const FilesBySha256& files) {
  const auto found = files.find(d.file_sha256);
  if (found == files.end()) throw std::runtime_error(DocumentName(d) + ": its file was not read");
  return found->second;
}

// A name that every system takes: letters, digits, dot, dash and underline of ASCII.
std::string AttachmentName(std::size_t place, const PackageDocument& d) {
  std::string name = "D" + std::to_string(place + 1) + "_" + d.issuer + "_" + d.number + "_v" + std::to_string(d.version);
  for (char& c : name) {
    const bool plain = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-' || c == '_' || c == '.';
    if (!plain) c = '_';
  }
  name.resize(std::min<std::size_t>(name.size(), 100));
  return name + (d.media == kPdf ? ".pdf" : d.media == "image/png" ? ".png" : d.media == "image/jpeg" ? ".jpg" : ".tif");
}

std::string Bytes(const QByteArray& bytes) { return bytes.toStdString(); }

}  // namespace

std::vector<std::string> AgainstFiles(const Package& package, const FilesBySha256& files) {
  std::vector<std::string> against;
  for (const PackageDocument& d : package.documents) {
    if (d.file_sha256.empty()) continue;
    const Shown shown = ShowFile(d, FileOf(d, files));
    if (!shown.wrong.empty())
      against.push_back("document " + d.number + " of " + d.issuer + " cannot be passed on unchanged: " + shown.wrong);
  }
  return against;
}

MadePackage MakePackage(const Package& package, const FilesBySha256& files, PaperSize size) {
  const PrintOptions print{size, package.as_of, {}};
  std::vector<Shown> shown;
  std::vector<DocumentPlace> places;
  Binding binding{"Certificate package " + PackageSubject(package), package.as_of, {}, {}};
  for (std::size_t i = 0; i < package.documents.size(); ++i) {
    const PackageDocument& d = package.documents[i];
    shown.push_back(d.file_sha256.empty() ? Shown{} : ShowFile(d, FileOf(d, files)));
    if (!shown.back().wrong.empty()) throw std::runtime_error(DocumentName(d) + ": " + shown.back().wrong);
    places.push_back(
        {0, shown.back().pages, "D" + std::to_string(i + 1) + "-1", d.file_sha256.empty() ? "" : AttachmentName(i, d), shown.back().words});
    if (!d.file_sha256.empty())
      binding.attachments.push_back({places.back().attached_as, DocumentName(d) + ", SHA-256 " + d.file_sha256, d.media, FileOf(d, files)});
  }
  const std::string delivery = Bytes(PrintPackageDelivery(package, print));
  const std::vector<AdditionalDocument> more = PrintAdditionalDocuments(package, print);
  int before = LookAtPdf(delivery).pages;
  for (const AdditionalDocument& one : more) before += LookAtPdf(Bytes(one.pdf)).pages;
  // the cover says the pages of the documents, which stand behind it: printed until it is as long as it was
  // taken to be
  std::string cover;
  int cover_pages = 1;
  for (int tries = 0;; ++tries) {
    int page = cover_pages + before + 1;
    for (std::size_t i = 0; i < places.size(); ++i) {
      places[i].first_page = shown[i].pages > 0 ? page : 0;
      page += shown[i].pages;
    }
    cover = Bytes(PrintPackageCover(package, places, print));
    const int pages = LookAtPdf(cover).pages;
    if (pages == cover_pages) break;
    if (tries == 5) throw std::runtime_error("certificate package: the cover's length does not settle");
    cover_pages = pages;
  }
  binding.parts.push_back({"Cover list", "P-", cover});
  binding.parts.push_back({"Delivery note", "L-", delivery});
  for (std::size_t i = 0; i < more.size(); ++i)
    binding.parts.push_back({"Additional document " + more[i].number, "A" + std::to_string(i + 1) + "-", Bytes(more[i].pdf)});
  int all = cover_pages + before;
  for (std::size_t i = 0; i < places.size(); ++i) {
    if (shown[i].pages == 0) continue;
    binding.parts.push_back({DocumentName(package.documents[i]), "D" + std::to_string(i + 1) + "-", shown[i].pdf});
    all += shown[i].pages;
  }
  return {BindPdf(binding), all};
}

}  // namespace heatkeep
