#include "client/models/phrase_book.h"

#include <algorithm>
#include <tuple>

#include "client/models/quantity_words.h"

namespace heatkeep {
namespace {

constexpr int kLongestText = 4000;
constexpr std::size_t kMostWays = 400;  // of one phrase in one text
constexpr int kWeak = 7;                // a phrase of fewer letters holds no words that are not known themselves
constexpr int kLoose = 10;              // a number by itself before words: only where no phrase counts them
constexpr int kNamesWithBlanks = 8;     // a phrase of fewer letters, a quantity being worth four, has names of one word only

const char* const kSeparators[] = {"; ", ". ", ", ", ": ", " - ", "\n", " (", ") ", " x ", " \u00D7 ", QT_TRANSLATE_NOOP("Book", " and ")};

int SmallLetters(QStringView text) {
  return static_cast<int>(std::count_if(text.begin(), text.end(), [](QChar c) { return c.isLower(); }));
}

// A bit a sign, some signs sharing one.
quint64 SignsIn(QStringView text) {
  quint64 signs = 0;
  for (const QChar c : text) signs |= quint64{1} << (c.unicode() % 64);
  return signs;
}

int Signs(QStringView text) {
  return static_cast<int>(std::count_if(text.begin(), text.end(), [](QChar c) { return !c.isSpace(); }));
}

}  // namespace

PhraseBook::PhraseBook(const std::vector<BookPhrase>& phrases) {
  for (const BookPhrase& p : phrases) {
    Phrase phrase{p.english, p.kinds, {}};
    QString rest = QString::fromUtf8(p.english);
    for (qsizetype hole = 1; hole <= phrase.kinds.size(); ++hole) {
      const QString mark = '%' + QString::number(hole);
      const qsizetype at = rest.indexOf(mark);
      phrase.literals << rest.left(at);
      rest = rest.mid(at + mark.size());
    }
    phrase.literals << rest;
    for (const QString& literal : phrase.literals) {
      phrase.letters += Signs(literal);
      phrase.signs |= SignsIn(literal);
    }
    phrase.sure = phrase.letters;
    for (const char kind : phrase.kinds)
      if (kind != 'N' && kind != 'W') phrase.sure += 4, phrase.letters += 2;
    if (phrase.kinds.isEmpty()) whole_.insert(phrase.literals.front(), phrases_.size());
    phrases_.push_back(std::move(phrase));
  }
}

struct PhraseBook::Search {
  const PhraseBook& book;
  const ReadingUnits& units;
  QHash<QString, Reading> read[2];  // inside a hole, outermost

  // The holes of one way to find a phrase in a text.
  using Holes = QStringList;

  static bool Fits(const QString& text, char kind, bool blanks, const ReadingUnits& units) {
    switch (kind) {
      case 'N': return blanks || !(text.isEmpty() || text.contains(' '));
      case 'C': return !text.isEmpty() && std::all_of(text.begin(), text.end(), [](QChar c) { return c.isDigit(); });
      case 'W': return true;
      default: return QuantityWords(text, kind, units).has_value();
    }
  }

  void Ways(const Phrase& phrase, const QString& text, qsizetype hole, qsizetype from, Holes& holes, std::vector<Holes>& ways) const {
    if (ways.size() >= kMostWays) return;
    if (hole == phrase.kinds.size()) {
      if (from == text.size()) ways.push_back(holes);
      return;
    }
    const QString& behind = phrase.literals[hole + 1];
    const bool last = hole + 1 == phrase.kinds.size();
    for (qsizetype at = from; at <= text.size(); ++at) {
      at = last ? text.size() - behind.size() : text.indexOf(behind, at);
      if (at < from) return;
      if (QStringView(text).mid(at).startsWith(behind)) {
        const QString inside = text.mid(from, at - from);
        if (Fits(inside, phrase.kinds[hole], phrase.sure >= kNamesWithBlanks, units)) {
          holes.append(inside);
          Ways(phrase, text, hole + 1, at + behind.size(), holes, ways);
          holes.removeLast();
        }
      }
      if (last) return;
    }
  }

  std::vector<Holes> WaysOf(const Phrase& phrase, const QString& text) const {
    std::vector<Holes> ways;
    if (!text.startsWith(phrase.literals.front()) || !text.endsWith(phrase.literals.back())) return ways;
    qsizetype at = 0;
    for (const QString& literal : phrase.literals) {
      at = text.indexOf(literal, at);
      if (at < 0) return ways;
      at += literal.size();
    }
    Holes holes;
    Ways(phrase, text, 0, phrase.literals.front().size(), holes, ways);
    return ways;
  }

  QString Filled(const Phrase& phrase, const Holes& holes, const std::vector<Reading>& inner) const {
    const bool bought = QLatin1String(phrase.english).contains(QLatin1String("buy "));  // not a sixteenth less
    QStringList said;
    for (qsizetype i = 0; i < holes.size(); ++i) {
      const char kind = phrase.kinds[i] == 'W' && bought ? 'L' : phrase.kinds[i];
      if (auto quantity = QuantityWords(holes[i], kind, units, bought)) said << *quantity;
      else said << (phrase.kinds[i] == 'W' ? inner[static_cast<std::size_t>(i)].said : holes[i]);
    }
    for (qsizetype i = 0; i < holes.size(); ++i) {  // two lengths that differ do not read the same
      const char kind = phrase.kinds[i];
      if (kind != 'L' && kind != 'l' && kind != 'E') continue;
      const bool hidden =
          std::any_of(said.begin(), said.end(), [&](const QString& s) { return s == said[i] && holes[&s - said.data()] != holes[i]; });
      if (hidden)
        for (qsizetype k = 0; k < holes.size(); ++k)
          if (auto fine = phrase.kinds[k] == kind ? QuantityWords(holes[k], kind, units, true) : std::nullopt) said[k] = *fine;
    }
    const qsizetype counted = phrase.kinds.indexOf('C');
    const int n = counted < 0 ? -1 : holes[counted].toInt();
    const QString words = QCoreApplication::translate("Book", phrase.english, nullptr, n);
    QString filled;
    for (qsizetype i = 0; i < words.size(); ++i) {
      const int hole = words[i] == '%' && i + 1 < words.size() ? words[i + 1].digitValue() : -1;
      if (hole < 1 || hole > said.size()) {
        filled += words[i];
      } else {
        filled += said[hole - 1];
        ++i;
      }
    }
    return filled;
  }

  void Take(Reading& best, const Reading& other) const {
    if (std::tuple(-other.explained, other.left, other.inside) < std::tuple(-best.explained, best.left, best.inside)) best = other;
  }

  void ByPhrases(const QString& text, Reading& best) {
    const quint64 signs = SignsIn(text);
    for (const Phrase& phrase : book.phrases_) {
      if ((phrase.signs & ~signs) != 0) continue;
      for (const Holes& holes : WaysOf(phrase, text)) {
        Reading reading{phrase.letters, 0, 0, {}};
        bool persons = false;  // "crack found by Lund": somebody's own words around a word that phrases have too
        std::vector<Reading> inner(static_cast<std::size_t>(holes.size()));
        for (qsizetype i = 0; i < holes.size(); ++i) {
          if (phrase.kinds[i] != 'W') continue;
          Reading& words = inner[static_cast<std::size_t>(i)] = Read(holes[i], false);
          reading.explained += words.explained;
          reading.strange += words.strange;
          persons = persons || (phrase.sure < kWeak && words.strange > 0);
          reading.inside += words.inside + static_cast<int>(holes[i].size());
        }
        if (persons || reading.explained < best.explained) continue;
        reading.said = Filled(phrase, holes, inner);
        Take(best, reading);
      }
    }
  }

  void ByParts(const QString& text, bool outermost, Reading& best) {
    const auto joined = [&](const QString& begin, const QString& between, const QString& end) {
      const Reading a = Read(begin, outermost), b = Read(end, outermost);
      if (between.size() > 3 && (a.left > 0 || b.left > 0)) return;  // a word joins what is known, not words of a person
      Take(best,
           {a.explained + b.explained, a.left + b.left, a.inside + b.inside + (between == " " ? kLoose : 0), a.said + between + b.said,
            a.strange + b.strange});
    };
    for (const char* separator : kSeparators) {
      const QString between = QString::fromUtf8(separator), said = QCoreApplication::translate("Book", separator);
      for (qsizetype at = text.indexOf(between, 1); at > 0 && at + between.size() < text.size(); at = text.indexOf(between, at + 1))
        joined(text.left(at), said, text.mid(at + between.size()));
    }
    qsizetype digits = 0;
    while (digits < text.size() && text[digits].isDigit()) ++digits;
    if (digits > 0 && text.mid(digits).startsWith(' ')) joined(text.left(digits), " ", text.mid(digits + 1));
    if (text.endsWith(')') || text.endsWith(':') || text.endsWith('.')) joined(text.chopped(1), text.last(1), {});
  }

  Reading Read(const QString& text, bool outermost) {
    const QString core = text.trimmed();
    if (core.isEmpty()) return {0, 0, 0, text};
    if (core != text) {
      Reading reading = Read(core, outermost);
      const qsizetype at = text.indexOf(core);
      reading.said = text.left(at) + reading.said + text.mid(at + core.size());
      return reading;
    }
    QHash<QString, Reading>& before = read[outermost ? 1 : 0];
    if (const auto known = before.constFind(text); known != before.constEnd()) return *known;
    Reading best{0, SmallLetters(text), 0, outermost ? WithQuantities(text, units) : text, SmallLetters(text)};
    if (auto quantity = AnyQuantityWords(text, units)) {
      best = {1, 0, 0, *quantity};
    } else if (const auto whole = book.whole_.constFind(text); whole != book.whole_.constEnd()) {
      const Phrase& phrase = book.phrases_[*whole];
      best = {phrase.letters, 0, 0, Filled(phrase, {}, {})};
    } else {
      ByPhrases(text, best);
      ByParts(text, outermost, best);
    }
    before.insert(text, best);
    return best;
  }
};

QString PhraseBook::Said(const QString& english, const ReadingUnits& units) const {
  if (english.isEmpty() || english.size() > kLongestText) return english;
  return Search{*this, units, {}}.Read(english, true).said;
}

bool PhraseBook::Knows(const QString& english) const {
  const ReadingUnits units;
  const Reading reading = Search{*this, units, {}}.Read(english, true);
  return reading.explained > 0 && reading.left == 0;
}

}  // namespace heatkeep
