// The reader's own units: how lengths and masses are shown to a person and read from what they type. What is stored is exact whatever
// they are. Material at hand and rests are rounded down (schema/terms/length_text.h).
#pragma once

#include <QString>

#include "reports/bar_ruler.h"
#include "schema/terms/length_text.h"
#include "schema/terms/mass.h"

namespace heatkeep {

struct ReadingUnits {
  enum class LengthAs { Mm, InchFraction, InchDecimal };
  enum class MassAs { Kg, Lb };
  LengthAs length = LengthAs::Mm;
  MassAs mass = MassAs::Kg;

  bool operator==(const ReadingUnits&) const = default;

  // "1018" / "40 1/16" / "40.079": without the unit, for table cells under a head that names it.
  QString Number(Length length, Rounding rounding = Rounding::Nearest) const;
  // The same with the unit: "1018 mm", "40 1/16 in".
  QString Words(Length length, Rounding rounding = Rounding::Nearest) const;
  // What a saw's stop is set to: "240.0 mm", "9.449 in" (a stop is not set to a fraction's rounding).
  QString Stop(Length length) const;
  // "418.6 m" / "1373.4 ft": sums of many pieces.
  QString Total(Length length) const;
  // From 10 m on as a total, else as it is: what is the sum of few pieces or of many.
  QString Sum(Length length) const;
  QString LengthUnitWord() const;  // "mm", "in"

  QString Number(Mass mass) const;  // "39.5"
  QString Words(Mass mass) const;   // "39.5 kg"
  QString MassUnitWord() const;     // "kg", "lb"

  // What a person typed; a number without a unit is in these units. Throws BadText.
  Length Read(const QString& text) const;
  Length ReadAboveZero(const QString& text) const;  // the same of what a piece measures
  Mass ReadWeighed(const QString& text) const;      // a mass

  Units Ruler() const;  // of a piece bar
};

}  // namespace heatkeep
