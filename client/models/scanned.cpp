#include "client/models/scanned.h"

#include "client/models/qt_words.h"
#include "schema/terms/bad_text.h"
#include "schema/terms/scan.h"
#include "schema/terms/tag.h"

namespace heatkeep {

Scanned ReadScanned(const QString& scan) {
  Scanned read;
  read.text = scan.trimmed();
  const std::string text = scan.toStdString();
  read.envelope = LooksLikeEnvelope(text);
  if (!read.envelope) {
    try {
      read.tag = ReadScan(read.text.toStdString()).Of("S");
      read.text = Q(*read.tag);
    } catch (const BadText& error) { read.no_tag = BookWords(std::string(error.what())); }
    return read;
  }
  try {
    const Scan said = ReadScan(text);
    if (const auto tag = said.Of("S")) read.tag = ReadTag(*tag);
    read.place = said.Of("L");
    read.heat = said.Of("1T");
    read.order = said.Of("K");
    read.line = said.Of("4K");
    for (const auto* names : {&read.tag, &read.place, &read.order, &read.heat})
      if (*names) {
        read.text = Q(**names);
        break;
      }
  } catch (const BadText& error) {
    read = {};
    read.envelope = true;
    read.wrong = BookWords(std::string(error.what()));
  }
  return read;
}

}  // namespace heatkeep
