// What heatkeep-desk is told on its command line: one list for the program and for its man page.
#pragma once

#include <array>

namespace heatkeep {

struct DeskOption {
  const char *name, *takes, *help;
};

inline constexpr std::array kDeskOptions{DeskOption{"book", "CONNINFO", "A shop's book: a libpq connection string or service name."},
                                         DeskOption{"person", "NAME", "The login."},
                                         DeskOption{"home", "FOLDER", "The folder of a book of one's own."},
                                         DeskOption{"settings", "FILE", "The file of this desk's settings."}};

}  // namespace heatkeep
