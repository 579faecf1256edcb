// What a reading refused, as text; empty when it refused nothing.
#pragma once

#include <string>

#include "schema/terms/bad_text.h"

namespace heatkeep {

template <class Read>
std::string RefusalText(Read read) {
  try {
    read();
  } catch (const BadText& e) { return e.what(); }
  return "";
}

}  // namespace heatkeep
