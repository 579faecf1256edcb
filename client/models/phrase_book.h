// What the book, the allocator and the shop's terms say in English, said to the desk's reader in their language and units.
//
// Every sentence they can say is a phrase with holes (client/phrases reads them from the sources themselves). A text is read as the phrases
// that explain most of it, letter by letter, parts between separators ("; ", ", ", ": ") by themselves; each is put into the reader's
// language by Qt's catalogue (context "Book"), and its holes are put in again: lengths and masses in the reader's units, words read in the
// same way, names as they are. What no phrase explains stays; only at the outermost a number with its unit is written anew.
// Lengths are read as whole nanometres, masses as whole grams.
#pragma once

#include <QCoreApplication>
#include <QHash>
#include <QString>
#include <QStringList>
#include <vector>

#include "client/models/reading_units.h"

namespace heatkeep {

// A phrase as client/phrases/phrase.h writes it: "%1 is %2 long", "NL".
struct BookPhrase {
  const char* english;
  const char* kinds;
};

// All phrases, as gathered from the sources while building.
const std::vector<BookPhrase>& BookPhrases();

class PhraseBook {
 public:
  explicit PhraseBook(const std::vector<BookPhrase>& phrases);

  QString Said(const QString& english, const ReadingUnits& units) const;
  // Whether phrases explain the text: some of it, and every small letter of it that does not stand in a hole (where a person's own words
  // may).
  bool Knows(const QString& english) const;

 private:
  struct Phrase {
    const char* english;
    QByteArray kinds;
    QStringList literals;  // one before, between and behind the holes
    int letters = 0, sure = 0;
    quint64 signs = 0;  // which signs the literals have: a text that lacks one is not this phrase
  };
  struct Reading {
    int explained = 0;  // letters and signs of phrases
    int left = 0;       // small letters that no phrase and no hole has: words, not tags or heats
    int inside = 0;     // how much stands in holes for words: of two readings the one that keeps closer to its phrases
    QString said;
    int strange = 0;  // small letters no phrase has, in its holes too: somebody's own words
  };
  struct Search;  // one text being read

  std::vector<Phrase> phrases_;
  QHash<QString, std::size_t> whole_;  // phrases without holes: a text that is one of them is read as that
};

}  // namespace heatkeep
