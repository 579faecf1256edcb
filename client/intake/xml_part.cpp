#include "client/intake/xml_part.h"

#include "schema/terms/bad_text.h"

namespace heatkeep::intake {
namespace {

constexpr int kDeepest = 100;
constexpr const char* kWhole = "a whole spreadsheet, saved again";

}  // namespace

XmlPart::XmlPart(std::string bytes, std::string part)
    : bytes_(std::move(bytes)), part_(std::move(part)),
      reader_(QByteArray::fromRawData(bytes_.data(), static_cast<qsizetype>(bytes_.size()))) {}

XmlStep XmlPart::Next() {
  for (;;) {
    switch (reader_.readNext()) {
      case QXmlStreamReader::StartElement:
        if (++depth_ > kDeepest) throw BadText("part " + Quoted(part_) + " is nested too deeply", kWhole);
        return XmlStep::Start;
      case QXmlStreamReader::EndElement: --depth_; return XmlStep::End;
      case QXmlStreamReader::Characters: return XmlStep::Text;
      case QXmlStreamReader::DTD: throw BadText("part " + Quoted(part_) + " has a document type, which no spreadsheet needs", kWhole);
      case QXmlStreamReader::EntityReference: throw BadText("part " + Quoted(part_) + " names an entity of its own", kWhole);
      case QXmlStreamReader::EndDocument: return XmlStep::Done;
      case QXmlStreamReader::Invalid:
        throw BadText("part " + Quoted(part_) + " is not well-formed XML in line " + std::to_string(reader_.lineNumber()), kWhole);
      default: break;
    }
  }
}

std::string XmlPart::Attribute(const char* local, const char* within) const {
  for (const QXmlStreamAttribute& a : reader_.attributes()) {
    if (a.name() == QLatin1String(local) && a.namespaceUri().contains(QLatin1String(within))) return a.value().toString().toStdString();
  }
  return {};
}

void XmlPart::Skip() {
  const int outside = depth_ - 1;
  while (depth_ > outside) Next();
}

bool IsOn(std::string_view attribute) { return attribute == "1" || attribute == "true"; }

}  // namespace heatkeep::intake
