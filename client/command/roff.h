// Texts as man(7) has them.
#pragma once

#include <string>

namespace heatkeep::command {

struct ManEdition {
  std::string version, date;  // "0.1.0", "2026-11-26"
};

// A text in a page: of backslashes, dashes and a leading dot.
std::string Roff(const std::string& text);

std::string Bold(const std::string& text);
std::string Italic(const std::string& text);

// The line a page begins with.
std::string Title(const std::string& name, int section, const ManEdition& edition);

// Lines as they stand: no filling, in one face.
std::string AsTyped(const std::string& text);

}  // namespace heatkeep::command
