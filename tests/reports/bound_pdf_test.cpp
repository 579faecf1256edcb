// PDFs bound unchanged and pictures as pages, read again with qpdf and poppler; hostile files are refused in
// words.
#include "reports/bound_pdf.h"

#include <gtest/gtest.h>

#include <QBuffer>
#include <QImage>
#include <algorithm>
#include <fstream>
#include <nlohmann/json.hpp>

#include "reports/certificate_package.h"
#include "reports/scan_page.h"
#include "tests/reports/invented_pdf.h"
#include "tests/reports/read_back.h"

namespace heatkeep {
namespace {

using Json = nlohmann::json;

std::string In(const OwnFolder& folder, const std::string& name) { return (folder.path() / name).string(); }

std::string Written(const OwnFolder& folder, const std::string& name, const std::string& bytes) {
  const std::string path = In(folder, name);
  std::ofstream(path, std::ios::binary) << bytes;
  return path;
}

std::string BytesOf(const std::string& path) {
  std::ifstream in(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

std::string Picture(const QImage& image, const char* format) {
  QBuffer buffer;
  buffer.open(QIODevice::WriteOnly);
  EXPECT_TRUE(image.save(&buffer, format, 90));
  return buffer.data().toStdString();
}

QImage Checked(QImage::Format format) {
  QImage image(64, 48, QImage::Format_RGB888);
  for (int y = 0; y < 48; ++y)
    for (int x = 0; x < 64; ++x) image.setPixel(x, y, qRgb(x * 4, y * 5, (x * y) % 256));
  return image.convertToFormat(format);
}

const Binding& Sample() {
  static const Binding binding{
      "Papers of a test",
      "2026-03-01T10:20:30Z",
      {{"Ours", "P-", InventedPdf({"OURS"}, 595, 842)}, {"The mill's \u00E9", "D1-", InventedPdf({"MILL ONE", "MILL TWO"}, 420, 298)}},
      {{"mill.pdf", "the file", "application/pdf", InventedPdf({"MILL ONE", "MILL TWO"}, 420, 298)}}};
  return binding;
}

TEST(BoundPdf, KeepsContentStreamsByteForByteAndEveryPagesOwnSize) {
  const OwnFolder folder;
  const std::string bytes = BindPdf(Sample());
  const std::string path = Written(folder, "bound.pdf", bytes);
  for (const char* text : {"OURS", "MILL ONE", "MILL TWO"})
    EXPECT_EQ(OutputOf("grep -a -c '" + InventedContent(text) + "' '" + path + "'"), text == std::string("OURS") ? "1\n" : "2\n")
        << text;  // in its page; the mill's also in the file attached
  const std::string sizes = OutputOf("pdfinfo -f 1 -l 3 '" + path + "' | grep 'size:'");
  EXPECT_NE(sizes.find("Page    1 size:  595 x 842"), std::string::npos) << sizes;
  EXPECT_NE(sizes.find("Page    3 size:  420 x 298"), std::string::npos) << sizes;
  EXPECT_NE(OutputOf("pdftotext -f 3 -l 3 '" + path + "' -").find("MILL TWO"), std::string::npos);
  EXPECT_NE(OutputOf("qpdf --check '" + path + "'").find("No syntax or stream encoding errors"), std::string::npos);
}

TEST(BoundPdf, HasBookmarksPageLabelsAndTheFileItself) {
  const OwnFolder folder;
  const std::string path = Written(folder, "bound.pdf", BindPdf(Sample()));
  const Json j = Json::parse(OutputOf("qpdf --json=2 --json-key=outlines --json-key=pagelabels --json-key=attachments '" + path + "'"));
  ASSERT_EQ(j["outlines"].size(), 2U);
  EXPECT_EQ(j["outlines"][1]["title"], "The mill's \u00E9");
  EXPECT_EQ(j["outlines"][1]["destpageposfrom1"], 2);
  EXPECT_EQ(j["pagelabels"][1]["label"]["/P"], "u:D1-");
  EXPECT_TRUE(j["attachments"].contains("mill.pdf"));
  OutputOf("pdfdetach -save 1 -o '" + In(folder, "out.pdf") + "' '" + path + "'");
  EXPECT_EQ(BytesOf(In(folder, "out.pdf")), Sample().attachments[0].bytes);
  EXPECT_NE(OutputOf("TZ=UTC pdfinfo '" + path + "'").find("Sun Mar  1 10:20:30 2026"), std::string::npos);
}

TEST(BoundPdf, IsTheSameBytesEveryTime) { EXPECT_EQ(BindPdf(Sample()), BindPdf(Sample())); }

TEST(BoundPdf, RefusesWhatIsNotWholeOrNotPlain) {
  const OwnFolder folder;
  const std::string good = InventedPdf({"ONE", "TWO"});
  EXPECT_EQ(LookAtPdf(good).wrong, "");
  EXPECT_EQ(LookAtPdf(good).pages, 2);
  const auto wrong = [](const std::string& bytes) { return LookAtPdf(bytes).wrong; };
  EXPECT_EQ(wrong("GIF89a"), "it is no PDF: it does not begin as one");
  EXPECT_EQ(wrong(""), "it is no PDF: it does not begin as one");
  EXPECT_TRUE(wrong("%PDF-1.4\n%%EOF\n").starts_with("it is damaged")) << wrong("%PDF-1.4\n%%EOF\n");
  for (const std::size_t size : {good.size() / 4, good.size() / 2, good.size() - 30})
    EXPECT_TRUE(wrong(good.substr(0, size)).starts_with("it is damaged")) << size;
  std::string broken = good;  // the cross-reference table points beside the objects: a reader repairs it, we do not
  broken.replace(broken.find("0000000009 00000 n"), 10, "0000000099");
  EXPECT_TRUE(wrong(broken).starts_with("it is damaged")) << wrong(broken);
  std::string longer = good;  // a stream that says it is longer than it is
  longer.replace(longer.find("/Length 3"), 9, "/Length 9");
  EXPECT_TRUE(wrong(longer).starts_with("it is damaged")) << wrong(longer);
  const std::string plain = Written(folder, "plain.pdf", good);
  OutputOf("qpdf --encrypt '' owner 256 -- '" + plain + "' '" + In(folder, "owner.pdf") + "'");
  OutputOf("qpdf --encrypt user owner 256 -- '" + plain + "' '" + In(folder, "user.pdf") + "'");
  EXPECT_EQ(wrong(BytesOf(In(folder, "owner.pdf"))), "it is encrypted");
  EXPECT_EQ(wrong(BytesOf(In(folder, "user.pdf"))), "it is encrypted and asks for a password");
  EXPECT_EQ(wrong(InventedPdf({"ONE"}, 420, 298, "/OpenAction << /S /Launch /F (calc) >>")), "it has a command (Launch) in it");
  EXPECT_EQ(wrong(InventedPdf({"ONE"}, 420, 298, "/Names << /JavaScript << /Names [(a) << /S /JavaScript /JS (1) >>] >> >>")),
            "it has a script in it");
  EXPECT_EQ(wrong(InventedPdf({})), "it has no page");
  EXPECT_THROW(BindPdf({"t", "2026", {{"bad", "D1-", broken}}, {}}), std::runtime_error);
}

// The bytes of the file are the bytes in the page: taken out again with pdfimages -all they are the same
// file.
TEST(ScanPages, OfAJpegHoldItsOwnData) {
  const OwnFolder folder;
  for (const QImage::Format format : {QImage::Format_RGB888, QImage::Format_Grayscale8}) {
    const std::string jpeg = Picture(Checked(format), "jpeg");
    const ScanPage page = PageOfScan(jpeg, "image/jpeg");
    ASSERT_EQ(page.words, "");
    const std::string path = Written(folder, "page.pdf", page.pdf);
    OutputOf("pdfimages -all '" + path + "' '" + In(folder, "out") + "'");
    EXPECT_EQ(BytesOf(In(folder, "out-000.jpg")), jpeg);
    EXPECT_EQ(LookAtPdf(page.pdf).pages, 1);
  }
}

TEST(ScanPages, OfAPngShowTheSamePixels) {
  const OwnFolder folder;
  for (const QImage::Format format : {QImage::Format_RGB888, QImage::Format_Grayscale8, QImage::Format_Mono, QImage::Format_Indexed8}) {
    const QImage picture = Checked(format);
    const ScanPage page = PageOfScan(Picture(picture, "png"), "image/png");
    ASSERT_EQ(page.words, "") << format;
    const std::string path = Written(folder, "page.pdf", page.pdf);
    OutputOf("pdfimages -png '" + path + "' '" + In(folder, "out") + "'");
    const QImage read = QImage(QString::fromStdString(In(folder, "out-000.png"))).convertToFormat(QImage::Format_RGB888);
    EXPECT_EQ(read, picture.convertToFormat(QImage::Format_RGB888)) << format;
  }
}

TEST(ScanPages, SayWhyThereIsNone) {
  const std::string jpeg = Picture(Checked(QImage::Format_RGB888), "jpeg"), png = Picture(Checked(QImage::Format_RGB888), "png");
  EXPECT_EQ(PageOfScan(Picture(Checked(QImage::Format_ARGB32), "png"), "image/png").words, "a see-through PNG cannot be shown unaltered");
  EXPECT_EQ(PageOfScan("II*\0", "image/tiff").words, "a tiff file cannot be shown as a page unaltered");
  EXPECT_FALSE(PageOfScan("II*\0", "image/tiff").damaged);
  for (const auto& [bytes, media] : {std::pair{jpeg.substr(0, jpeg.size() / 2), "image/jpeg"},
                                     {png.substr(0, png.size() / 2), "image/png"},
                                     {png.substr(0, 40), "image/png"},
                                     {std::string("\xFF\xD8\xFF"), "image/jpeg"}})
    EXPECT_TRUE(PageOfScan(bytes, media).damaged) << media << " " << bytes.size();
}

Package SamplePackage(const std::string& bytes, const std::string& media) {
  Package p;
  p.order = "O1";
  p.customer = "Pallant Hydraulics";
  p.as_of = "2026-03-01T10:20:30Z";
  PackageLine line;
  line.order = "O1";
  line.line = "10";
  line.grade = "42CrMo4";
  line.section = "round 80";
  line.mill = "Vandrek";
  line.heat = "M2208";
  line.length = {290'000'000};
  line.count = 14;
  line.ordered = 20;
  for (int i = 0; i < 300; ++i) line.tags.push_back("A" + std::to_string(100000 + i) + "X");
  line.papers.push_back({"Vandrek", "C1", "3.1"});
  p.lines.push_back(line);
  p.documents.push_back({"Vandrek",
                         "C1",
                         "3.1",
                         "2026-01-05",
                         bytes.empty() ? "" : "abc",
                         media,
                         1,
                         {"M2208"},
                         {{"D1", "EN 10204", "", std::string(5000, 'w') + " end"}}});
  return p;
}

TEST(CertificatePackages, CountPagesBehindACoverOfSeveralPages) {
  const OwnFolder folder;
  const std::string mill = InventedPdf({"MILL ONE"});
  Package package = SamplePackage(mill, "application/pdf");
  for (int i = 0; i < 60; ++i) package.lines.push_back(package.lines.front());
  const MadePackage made = MakePackage(package, {{"abc", mill}});
  const std::string path = Written(folder, "p.pdf", made.pdf);
  EXPECT_NE(OutputOf("pdfinfo '" + path + "'").find("Pages:           " + std::to_string(made.pages)), std::string::npos);
  EXPECT_NE(OutputOf("pdftotext -f " + std::to_string(made.pages) + " '" + path + "' -").find("MILL ONE"), std::string::npos);
  EXPECT_NE(OutputOf("pdftotext -layout -l 1 '" + path + "' -").find(std::to_string(made.pages) + " (D1-1)"), std::string::npos);
}

TEST(CertificatePackages, AttachWhatCannotBeShownAndSayIt) {
  const OwnFolder folder;
  const std::string tiff("II*\0\x08\0\0\0", 8);
  const MadePackage made = MakePackage(SamplePackage(tiff, "image/tiff"), {{"abc", tiff}});
  const std::string path = Written(folder, "p.pdf", made.pdf);
  std::string cover = OutputOf("pdftotext -raw -l 1 '" + path + "' -");
  std::replace(cover.begin(), cover.end(), '\n', ' ');  // a narrow column breaks it
  EXPECT_NE(cover.find("attached only"), std::string::npos) << cover;
  OutputOf("pdfdetach -save 1 -o '" + In(folder, "out.tif") + "' '" + path + "'");
  EXPECT_EQ(BytesOf(In(folder, "out.tif")), tiff);
  EXPECT_EQ(AgainstFiles(SamplePackage("%PDF-1.4", "application/pdf"), {{"abc", "%PDF-1.4"}}).size(), 1U);
}

}  // namespace
}  // namespace heatkeep
