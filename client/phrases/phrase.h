// A sentence with holes, as the book or the program puts it together.
#pragma once

#include <set>
#include <string>
#include <vector>

namespace heatkeep::phrases {

// In a draft a hole is '\1' and its kind: 'N' a name or number, left as it is; 'W' words, a sentence of its own or a computed quantity;
// 'l' a number of millimetres.
using Drafts = std::set<std::string>;

inline std::string Hole(char kind) { return {'\1', kind}; }

// The words with holes %1, %2, ... and the kind of each. A length or mass in the draft is its number and the unit behind it; here the
// unit belongs to the hole, so that the reader's own can stand there: 'L' "1018.5 mm", 'E' "1018500000 nm", 'T' "12.05 m" (a sum),
// 'M' "39.5 kg", 'l' millimetres without their unit. 'C' counts what stands behind it: "%1 pieces".
struct Phrase {
  std::string english;
  std::string kinds;

  bool Counts() const { return kinds.find('C') != std::string::npos; }
  auto operator<=>(const Phrase&) const = default;
};

// What of a draft is said by itself; blanks, separators and colons at its ends are dropped. english is empty where no word is left.
Phrase PhraseOf(const std::string& draft);

// More than one word: a word alone may be a key.
bool SeveralWords(const std::string& text);

// Drafts of a source: every text it puts together of literals, chains, formats and choices.
Drafts SqlSentences(std::string_view source);
// single_words: a word alone that is returned is said too (in files of words; elsewhere it is a key).
Drafts CppSentences(std::string_view source, bool single_words);

// Each begin with each end; no more than `most`, else nothing. What an end goes on from without a blank ("text + "words"") says its own
// words.
std::vector<std::string> Chained(const std::vector<std::string>& begins, const std::vector<std::string>& ends, std::size_t most = 64);

}  // namespace heatkeep::phrases
