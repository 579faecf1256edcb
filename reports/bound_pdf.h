// Many PDFs bound into one, their pages unchanged: content streams are copied byte for byte, every page keeps
// its own size; bookmarks and page labels are added, and files are attached as they are. By libqpdf; the same
// input gives the same bytes.
#pragma once

#include <string>
#include <vector>

namespace heatkeep {

struct PdfLook {
  int pages = 0;
  std::string wrong;  // why it cannot be passed on unchanged; empty: it can
};

// Nothing is repaired: a PDF that can only be read by repair is damaged. Also refused: encrypted, with
// scripts or commands in it.
PdfLook LookAtPdf(const std::string& bytes);

struct BoundPart {
  std::string title;  // of its bookmark
  std::string label;  // of its page labels: "D1-" gives D1-1, D1-2, ...
  std::string pdf;
};

struct Attachment {
  std::string name, words, media, bytes;
};

struct Binding {
  std::string title;
  std::string made_at;  // ISO 8601, UTC; the PDF's creation date
  std::vector<BoundPart> parts;
  std::vector<Attachment> attachments;
};

// Throws std::runtime_error with the part's title when LookAtPdf has something against it.
std::string BindPdf(const Binding& binding);

}  // namespace heatkeep
