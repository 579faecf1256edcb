// The palette's tones as Qt colours.
#pragma once

#include <QColor>

#include "reports/palette.h"

namespace heatkeep {

inline QColor ColorOf(Use use, Scheme scheme) {
  const Tone t = ToneOf(use, scheme);
  return {t.red, t.green, t.blue};
}

}  // namespace heatkeep
