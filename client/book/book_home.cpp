#include "client/book/book_home.h"

#include <unistd.h>

#include <cstdlib>

#include "client/book/book_error.h"

namespace heatkeep {
namespace {

std::filesystem::path FromEnvironment(const char* name) {
  const char* value = std::getenv(name);
  if (!value || !*value) return {};
  std::filesystem::path path(value);
  if (!path.is_absolute())
    throw BookError(BookError::Kind::BadInput, std::string(name) + " is '" + value + "'; expected a path that starts with /");
  return path;
}

}  // namespace

std::filesystem::path HomeFolder() {
  if (auto home = FromEnvironment("HEATKEEP_HOME"); !home.empty()) return home;
  if (geteuid() == 0) return "/var/lib/heatkeep";
  if (auto data = FromEnvironment("XDG_DATA_HOME"); !data.empty()) return data / "heatkeep";
  if (auto home = FromEnvironment("HOME"); !home.empty()) return home / ".local/share/heatkeep";
  throw BookError(BookError::Kind::BadInput, "no place for the book: set HEATKEEP_HOME, XDG_DATA_HOME or HOME to a folder of yours");
}

}  // namespace heatkeep
