#include "client/command/roff.h"

#include <sstream>

namespace heatkeep::command {
namespace {

std::string Upper(std::string text) {
  for (char& c : text) c = static_cast<char>(c >= 'a' && c <= 'z' ? c - 'a' + 'A' : c);
  return text;
}

}  // namespace

std::string Roff(const std::string& text) {
  std::string out;
  bool begin = true;
  for (const char c : text) {
    if (begin && (c == '.' || c == '\'')) out += "\\&";
    begin = c == '\n';
    if (c == '\\') out += "\\e";
    else if (c == '-') out += "\\-";
    else if (c == '\'') out += "\\(aq";
    else if (c == '`') out += "\\(ga";
    else if (c == '^') out += "\\(ha";
    else if (c == '~') out += "\\(ti";
    else out += c;
  }
  return out;
}

std::string Bold(const std::string& text) { return "\\fB" + Roff(text) + "\\fR"; }

std::string Italic(const std::string& text) { return "\\fI" + Roff(text) + "\\fR"; }

std::string Title(const std::string& name, int section, const ManEdition& edition) {
  return ".TH " + Roff(Upper(name)) + " " + std::to_string(section) + " " + edition.date + " \"Heatkeep " + edition.version +
      "\" \"Heatkeep Manual\"\n";
}

std::string AsTyped(const std::string& text) {
  std::string lines = ".PP\n.nf\n\\f(CW";
  std::istringstream in(text);
  bool first = true;
  for (std::string line; std::getline(in, line);) {
    if (!first) lines += '\n';
    first = false;
    lines += line.empty() ? "\\&" : Roff(line);
  }
  return lines + "\\fR\n.fi\n";
}

}  // namespace heatkeep::command
