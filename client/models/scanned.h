// What a scan names, read in one place for every station: a label of ours (its two-dimensional code or its bare tag), a place's label, a
// mill's label, an order's, or words that only the station knows (a place's name, a delivery note, a device).
#pragma once

#include <QString>
#include <optional>
#include <string>

namespace heatkeep {

struct Scanned {
  QString text;                    // what it names first: its tag, place, order or heat; else as it was scanned, without blanks at its ends
  std::optional<std::string> tag;  // its check character is right
  std::optional<std::string> place, heat, order, line;  // as an envelope says them (schema/terms/scan.h)
  bool envelope = false;                                // it was one; false: `text` may be anything that has a name
  QString wrong;   // an envelope that cannot be read: what is wrong and what is expected; nothing else is set then
  QString no_tag;  // why `text` is no tag: where a tag was expected
};

Scanned ReadScanned(const QString& scan);

}  // namespace heatkeep
