// gather_phrases OUT FILE...: writes the phrases of the sources (.sql, .cpp, .h) as C++ for client/models/phrase_book.h, where the
// translators' program finds them. A file named by a folder stands for its sources.
#include <filesystem>
#include <fstream>
#include <iostream>
#include <iterator>
#include <map>
#include <string>

#include "client/phrases/phrase.h"

namespace {

namespace fs = std::filesystem;
using heatkeep::phrases::Phrase;

using Kinds = std::map<std::string, std::string>;  // of a phrase's holes, by its words

// A hole that is a name in one place and words in another may be words.
void Add(Kinds& all, const Phrase& phrase) {
  const auto [it, added] = all.emplace(phrase.english, phrase.kinds);
  for (std::size_t i = 0; i < it->second.size(); ++i)
    if (it->second[i] == 'N' || (it->second[i] == 'C' && phrase.kinds[i] == 'W')) it->second[i] = phrase.kinds[i];
}

void AddPhrases(const fs::path& file, Kinds& all) {
  std::ifstream in(file, std::ios::binary);
  const std::string source{std::istreambuf_iterator<char>(in), {}};
  const auto drafts = file.extension() == ".sql" ? heatkeep::phrases::SqlSentences(source)
                                                 : heatkeep::phrases::CppSentences(source, file.stem().string().ends_with("_words"));
  for (const std::string& draft : drafts) {
    const Phrase phrase = heatkeep::phrases::PhraseOf(draft);
    if (!phrase.english.empty()) Add(all, phrase);
  }
}

std::string Quoted(const std::string& text) {
  std::string quoted = "\"";
  for (const char c : text) {
    if (c == '"' || c == '\\') quoted += '\\';
    quoted += c;
  }
  return quoted + "\"";
}

}  // namespace

int main(int count, char** arguments) {
  if (count < 3) {
    std::cerr << "gather_phrases OUT FILE...\n";
    return 2;
  }
  Kinds phrases;
  for (int i = 2; i < count; ++i) AddPhrases(arguments[i], phrases);
  std::ofstream out(arguments[1], std::ios::binary);
  out << "// Written by gather_phrases from the sources that speak to people.\n#include \"client/models/phrase_book.h\"\n\nnamespace heatkeep {\n\nconst std::vector<BookPhrase>& BookPhrases() {\n"
         "  static const std::vector<BookPhrase> phrases{\n";
  for (const auto& [english, kinds] : phrases)
    out << "      {" << (Phrase{english, kinds}.Counts() ? "QT_TRANSLATE_N_NOOP" : "QT_TRANSLATE_NOOP") << "(\"Book\", " << Quoted(english)
        << "), " << Quoted(kinds) << "},\n";
  out << "  };\n  return phrases;\n}\n\n}  // namespace heatkeep\n";
  out.flush();
  if (!out) std::cerr << arguments[1] << ": not written\n";
  return out ? 0 : 1;
}
