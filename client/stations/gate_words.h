// What stands beside a line of a delivery note: the note against the metal, what was ordered, the heat as it came before, the papers the
// supplier owes, what becomes of what does not agree.
#pragma once

#include <QCoreApplication>
#include <QString>
#include <vector>

#include "client/models/delivery_line.h"

namespace heatkeep {

class GateWords {
  Q_DECLARE_TR_FUNCTIONS(heatkeep::GateWords)

 public:
  GateWords(const DoorFacts& facts, const ReadingUnits& units, bool may_reverse)
      : facts_(facts), units_(units), may_reverse_(may_reverse) {}

  QString OfLine(const TypedLine& line, const JudgedLine& judged, const QString& supplier, const std::vector<OwedPapersRow>& owed) const;
  QString Reversing() const;  // how a wrong receipt is taken back

 private:
  void AddNote(QStringList& words, const TypedLine& line, const JudgedLine& judged) const;
  void AddOrdered(QStringList& words, const TypedLine& line) const;
  void AddHeat(QStringList& words, const QString& heat) const;
  void AddOwed(QStringList& words, const QString& supplier, const std::vector<OwedPapersRow>& owed) const;

  const DoorFacts& facts_;
  const ReadingUnits& units_;
  bool may_reverse_;
};

}  // namespace heatkeep
