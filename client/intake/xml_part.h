// One XML part of a spreadsheet, read from front to back. Names are given without their prefix.
#pragma once

#include <QByteArray>
#include <QXmlStreamReader>
#include <string>
#include <string_view>

namespace heatkeep::intake {

enum class XmlStep { Start, End, Text, Done };

// A document type is refused, so nothing can declare an entity or fetch one; so is a depth over 100.
class XmlPart {
 public:
  XmlPart(std::string bytes, std::string part);

  // Throws BadText where the part is no XML.
  XmlStep Next();

  bool Is(const char* local) const { return reader_.name() == QLatin1String(local); }
  // Empty when it is not there. `within`: a piece of the namespace, where the name alone is not enough.
  std::string Attribute(const char* local, const char* within = "") const;
  std::string Text() const { return reader_.text().toString().toStdString(); }
  int Depth() const { return depth_; }

  // From an element's start past its end.
  void Skip();

 private:
  std::string bytes_, part_;
  QXmlStreamReader reader_;
  int depth_ = 0;
};

// "1" or "true".
bool IsOn(std::string_view attribute);

}  // namespace heatkeep::intake
