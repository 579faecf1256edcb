#include "reports/bound_pdf.h"

#include <memory>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFEFStreamObjectHelper.hh>
#include <qpdf/QPDFEmbeddedFileDocumentHelper.hh>
#include <qpdf/QPDFExc.hh>
#include <qpdf/QPDFFileSpecObjectHelper.hh>
#include <qpdf/QPDFPageDocumentHelper.hh>
#include <set>
#include <stdexcept>

#include "reports/told_time.h"
#include "reports/written_pdf.h"

namespace heatkeep {
namespace {

// `bytes` must live as long as the answer, and so must the answer until what was copied from it is written.
std::shared_ptr<QPDF> Opened(const std::string& bytes) {
  auto pdf = std::make_shared<QPDF>();
  pdf->setSuppressWarnings(true);
  pdf->setAttemptRecovery(false);
  pdf->processMemoryFile("PDF", bytes.data(), bytes.size());
  return pdf;
}

// Scripts, programs to start and other doers: what a paper has no need of. In this object and what stands
// inside it; what it only refers to is looked at as itself. (The reader refuses nesting of more than 500.)
std::string DoerIn(QPDFObjectHandle object) {
  if (object.isStream()) object = object.getDict();
  std::vector<QPDFObjectHandle> inside;
  if (object.isArray()) inside = object.getArrayAsVector();
  if (object.isDictionary())
    for (const auto& [key, value] : object.getDictAsMap()) inside.push_back(value);
  for (QPDFObjectHandle& one : inside) {
    if (one.isIndirect()) continue;
    std::string doer = DoerIn(one);
    if (!doer.empty()) return doer;
  }
  if (!object.isDictionary()) return {};
  if (object.hasKey("/JS")) return "a script";
  QPDFObjectHandle action = object.getKey("/S");
  static const std::set<std::string> doers{"/JavaScript", "/Launch", "/SubmitForm", "/ImportData", "/GoToE", "/Rendition"};
  if (action.isName() && doers.contains(action.getName())) return "a command (" + action.getName().substr(1) + ")";
  return {};
}

std::string InWords(const QPDFExc& error) {
  if (error.getErrorCode() == qpdf_e_password) return "it is encrypted and asks for a password";
  return "it is damaged: " + error.getMessageDetail();
}

std::string WrongOf(QPDF& pdf, int& pages) {
  if (pdf.isEncrypted()) return "it is encrypted";
  const auto all = QPDFPageDocumentHelper(pdf).getAllPages();
  pages = static_cast<int>(all.size());
  if (pages == 0) return "it has no page";
  for (const QPDFPageObjectHelper& page : all) {
    QPDFObjectHandle dictionary = page.getObjectHandle();
    if (dictionary.hasKey("/AA")) return "it has a command that runs when a page is opened";
  }
  for (const QPDFObjectHandle& object : pdf.getAllObjects()) {
    const std::string doer = DoerIn(object);
    if (!doer.empty()) return "it has " + doer + " in it";
  }
  if (pdf.anyWarnings()) return "it is damaged and could only be read by repair: " + pdf.getWarnings().front().getMessageDetail();
  return {};
}

QPDFObjectHandle Text(const std::string& words) { return QPDFObjectHandle::newUnicodeString(words); }

// ISO 32000-1, 12.3.3: a flat list of bookmarks, each to the first page of its part.
void AddBookmarks(QPDF& out, const std::vector<std::pair<std::string, QPDFObjectHandle>>& firsts) {
  QPDFObjectHandle root = out.makeIndirectObject(QPDFObjectHandle::newDictionary());
  std::vector<QPDFObjectHandle> items;
  for (const auto& [title, page] : firsts) {
    QPDFObjectHandle item = QPDFObjectHandle::newDictionary();
    QPDFObjectHandle to = QPDFObjectHandle::newArray();
    to.appendItem(page);
    to.appendItem(QPDFObjectHandle::newName("/Fit"));
    item.replaceKey("/Title", Text(title));
    item.replaceKey("/Parent", root);
    item.replaceKey("/Dest", to);
    items.push_back(out.makeIndirectObject(item));
  }
  for (std::size_t i = 0; i < items.size(); ++i) {
    if (i > 0) items[i].replaceKey("/Prev", items[i - 1]);
    if (i + 1 < items.size()) items[i].replaceKey("/Next", items[i + 1]);
  }
  root.replaceKey("/Type", QPDFObjectHandle::newName("/Outlines"));
  root.replaceKey("/First", items.front());
  root.replaceKey("/Last", items.back());
  root.replaceKey("/Count", QPDFObjectHandle::newInteger(static_cast<long long>(items.size())));
  out.getRoot().replaceKey("/Outlines", root);
  out.getRoot().replaceKey("/PageMode", QPDFObjectHandle::newName("/UseOutlines"));
}

void AddAttachments(QPDF& out, const std::vector<Attachment>& attachments) {
  QPDFEmbeddedFileDocumentHelper files(out);
  for (const Attachment& a : attachments) {
    auto stream = QPDFEFStreamObjectHelper::createEFStream(out, a.bytes);
    stream.setSubtype(a.media);
    auto spec = QPDFFileSpecObjectHelper::createFileSpec(out, a.name, stream);
    spec.setDescription(a.words);
    files.replaceEmbeddedFile(a.name, spec);
  }
}

}  // namespace

PdfLook LookAtPdf(const std::string& bytes) {
  PdfLook look;
  if (!bytes.starts_with("%PDF-")) return {0, "it is no PDF: it does not begin as one"};
  try {
    const std::shared_ptr<QPDF> pdf = Opened(bytes);
    look.wrong = WrongOf(*pdf, look.pages);
  } catch (const QPDFExc& error) { look.wrong = InWords(error); } catch (const std::exception& error) {
    look.wrong = std::string("it is damaged: ") + error.what();
  }
  return look;
}

std::string BindPdf(const Binding& binding) {
  QPDF out;
  out.emptyPDF();
  QPDFPageDocumentHelper pages(out);
  std::vector<std::shared_ptr<QPDF>> sources;
  std::vector<std::pair<std::string, QPDFObjectHandle>> firsts;
  QPDFObjectHandle labels = QPDFObjectHandle::newArray();
  long long page = 0;
  for (const BoundPart& part : binding.parts) {
    const PdfLook look = LookAtPdf(part.pdf);
    if (!look.wrong.empty()) throw std::runtime_error(part.title + ": " + look.wrong);
    sources.push_back(Opened(part.pdf));
    QPDFObjectHandle style = QPDFObjectHandle::newDictionary();
    style.replaceKey("/S", QPDFObjectHandle::newName("/D"));
    style.replaceKey("/P", Text(part.label));
    labels.appendItem(QPDFObjectHandle::newInteger(page));
    labels.appendItem(style);
    for (const QPDFPageObjectHelper& one : QPDFPageDocumentHelper(*sources.back()).getAllPages()) pages.addPage(one, false);
    firsts.emplace_back(part.title, pages.getAllPages().at(static_cast<std::size_t>(page)).getObjectHandle());
    page += look.pages;
  }
  AddBookmarks(out, firsts);
  QPDFObjectHandle numbers = QPDFObjectHandle::newDictionary();
  numbers.replaceKey("/Nums", labels);
  out.getRoot().replaceKey("/PageLabels", numbers);
  AddAttachments(out, binding.attachments);
  QPDFObjectHandle info = QPDFObjectHandle::newDictionary();
  info.replaceKey("/Title", Text(binding.title));
  info.replaceKey("/Creator", Text("Heatkeep"));
  info.replaceKey("/CreationDate", QPDFObjectHandle::newString("D:" + DigitsOfTime(binding.made_at) + "Z"));
  out.getTrailer().replaceKey("/Info", out.makeIndirectObject(info));
  return WrittenPdf(out);
}

}  // namespace heatkeep
