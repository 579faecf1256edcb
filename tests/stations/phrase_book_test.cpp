// Sentences of the book and the allocator in the reader's language and units. Lengths: 1 in = 25.4 mm, 1 ft = 304.8 mm; masses:
// 1 lb = 0.45359237 kg (international yard and pound agreement, 1959).
#include "client/models/phrase_book.h"

#include <gtest/gtest.h>

#include <QRegularExpression>
#include <QSet>
#include <QTranslator>

#include "client/models/quantity_words.h"

namespace heatkeep {
namespace {

const ReadingUnits kMetric;
const ReadingUnits kInches{ReadingUnits::LengthAs::InchFraction, ReadingUnits::MassAs::Lb};
const ReadingUnits kDecimals{ReadingUnits::LengthAs::InchDecimal, ReadingUnits::MassAs::Kg};

const PhraseBook& Book() {
  static const PhraseBook book(BookPhrases());
  return book;
}

// As the program says them while this lives.
class In {
 public:
  explicit In(const QString& language) {
    EXPECT_TRUE(words_.load(":/translations/heatkeep_" + language));
    QCoreApplication::installTranslator(&words_);
  }
  ~In() { QCoreApplication::removeTranslator(&words_); }
  const QTranslator& words() const { return words_; }

 private:
  QTranslator words_;
};

std::string Said(const char* english, const ReadingUnits& units = kMetric) {
  return Book().Said(QString::fromUtf8(english), units).toStdString();
}

QStringList Holes(const QString& text) {
  static const QRegularExpression hole("%\\d");
  QSet<QString> holes;
  for (auto all = hole.globalMatch(text); all.hasNext();) holes.insert(all.next().captured());
  QStringList sorted = holes.values();
  sorted.sort();
  return sorted;
}

// A sentence that the book or the program can say and that nobody has put into German yet fails here, by its words.
TEST(PhraseBook, EverySentenceOfTheSourcesIsInGermanWithTheSameHoles) {
  const In german("de");
  ASSERT_GT(BookPhrases().size(), 1000U);
  for (const BookPhrase& phrase : BookPhrases()) {
    const bool counts = QByteArray(phrase.kinds).contains('C');
    for (const int n : {1, 2}) {
      const QString said = german.words().translate("Book", phrase.english, nullptr, counts ? n : -1);
      EXPECT_FALSE(said.isEmpty()) << "no German for: " << phrase.english
                                   << "; `ninja words` gathers it into client/stations/translations/heatkeep_de.ts";
      EXPECT_EQ(Holes(said), Holes(QString::fromUtf8(phrase.english))) << phrase.english << " => " << said.toStdString();
    }
  }
}

TEST(PhraseBook, ARefusalAtTheSawIsGermanAndInInches) {
  const In german("de");
  EXPECT_EQ(Said("S000123A is not promised to any plan; take S000124B at B1-3 (1016 mm, 254 mm left)", kInches),
            "S000123A ist keinem Plan zugesagt; S000124B auf B1-3 nehmen (40 in, übrig 10 in)");
  EXPECT_EQ(Said("S000123A: taken by saw 2, order A-7 and A-9, 5 min ago"),
            "S000123A: von Säge 2 genommen, Auftrag A-7 und A-9, vor 5 min");
}

// 3000 mm are 118.11 in: 118 1/16 in would be bought too short.
TEST(PhraseBook, NoBarOfAPurchaseIsAskedForShorterThanItMustBe) {
  EXPECT_EQ(Said("buy 1 x 3000 mm round 80 42CrMo4; buy 2 x 3000 mm round 60 C45E: 9.00 m", kInches),
            "buy 1 x 118.11 in round 80 42CrMo4; buy 2 x 118.11 in round 60 C45E: 29.5 ft");
}

TEST(PhraseBook, AProofIsReadPartByPart) {
  const In german("de");
  EXPECT_EQ(
      Said("2 cuts cannot be served; takes 1 drop, opens 3 full bars, 18.00 m, costs 12.05; no plan opens less (proved)", kInches),
      "2 Schnitte lassen sich nicht bedienen; nimmt 1 Reststück, bricht 3 volle Stangen an, 59.1 ft, kostet 12.05; kein Plan bricht weniger an (bewiesen)");
}

TEST(PhraseBook, AMassThatDoesNotFitIsInPounds) {
  const In german("de");
  EXPECT_EQ(Said("weighed 229.0 kg, theory says 236.8 kg", kInches), "gewogen 504.9 lb, rechnerisch 522.1 lb");
}

TEST(PhraseBook, TheWordsOfAHoleAreReadTooAndItsNamesAreNot) {
  const In german("de");
  EXPECT_EQ(Said("S000123A is not split: its place is being counted"), "S000123A wird nicht geteilt: sein Platz wird gezählt");
  EXPECT_EQ(Said("S000123A is cut up: nothing of it is left to cut"), "S000123A ist aufgesägt: davon ist nichts mehr zu sägen");
  EXPECT_EQ(Said("5 mm is not promised to any plan", kInches), "5 mm ist keinem Plan zugesagt") << "a tag is a tag, whatever it looks like";
  EXPECT_EQ(Said("no lot of heat 12 mm of 3 kg waits for papers", kInches), "kein Los der Schmelze 12 mm von 3 kg wartet auf Papiere");
  EXPECT_EQ(Said("its section is round 80 mm, not round 90 mm", kInches), "sein Querschnitt ist round 80 mm, nicht round 90 mm");
}

TEST(PhraseBook, InEnglishOnlyTheUnitsAndThePluralsChange) {
  const In english("en");
  EXPECT_EQ(Said("S000123A holds 1016 mm for sure; 4 pieces need more", kInches), "S000123A holds 40 in for sure; 4 pieces need more");
  EXPECT_EQ(Said("order A-7 line 10 has 1 pieces open, not 2"), "order A-7 line 10 has 1 piece open, not 2");
  EXPECT_EQ(Said("S000123A holds 1016 mm for sure; 4 pieces need more"), "S000123A holds 1016 mm for sure; 4 pieces need more");
}

TEST(PhraseBook, WhatNobodyKnowsStaysButForANumberBeforeItsUnit) {
  EXPECT_EQ(Said("the colour is off by 254 mm here", kInches), "the colour is off by 10 in here");
  EXPECT_EQ(Said("heat A254 mm, tag 25-254 mm, row 7 254 mm, 254 mmHg", kInches), "heat A254 mm, tag 25-254 mm, row 7 254 mm, 254 mmHg");
  EXPECT_EQ(Said(""), "");
  const In german("de");
  EXPECT_EQ(Said("crack found by Lund and others of us"), "crack found by Lund and others of us") << "a person's own words";
}

TEST(PhraseBook, TwoLengthsThatDifferDoNotReadTheSame) {
  EXPECT_EQ(Said("S1 takes lengths up to 6001 mm; this piece is 6002 mm", kInches),
            "S1 takes lengths up to 236.26 in; this piece is 236.299 in");
}

TEST(PhraseBook, KnowsWhatTheBookSaysAndNotWhatItDoesNot) {
  EXPECT_TRUE(Book().Knows("S000123A: held by quality: crack found"));
  EXPECT_FALSE(Book().Knows("the saw sings"));
}

TEST(QuantityWords, AreExactToTheNanometreAndKeepSignAndGroups) {
  EXPECT_EQ(QuantityWords("1 234.5 mm", 'L', kDecimals), QString("48.602 in"));
  EXPECT_EQ(QuantityWords("352.425 mm", 'L', kInches), QString("13 7/8 in"));
  EXPECT_EQ(QuantityWords("0.000001 mm", 'L', kDecimals), QString("0 in"));
  EXPECT_EQ(QuantityWords("\u00B10.5 mm", 'L', kInches), QString("\u00B10.02 in")) << "no sixteenth";
  EXPECT_EQ(QuantityWords("-25.4 mm", 'L', kInches), QString("-1 in"));
  EXPECT_EQ(QuantityWords("1018500000 nm", 'E', kMetric), QString("1018.5 mm"));
  EXPECT_EQ(QuantityWords("0.0000001 mm", 'L', kInches), std::nullopt) << "no whole nanometre";
  EXPECT_EQ(QuantityWords("99999999999999999999 mm", 'L', kInches), std::nullopt);
  EXPECT_EQ(QuantityWords("K3317", 'L', kInches), std::nullopt);
}

}  // namespace
}  // namespace heatkeep
