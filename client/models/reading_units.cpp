#include "client/models/reading_units.h"

#include "schema/terms/bad_text.h"
#include "schema/terms/mass_text.h"

namespace heatkeep {

QString ReadingUnits::Number(Length of, Rounding rounding) const {
  switch (length) {
    case LengthAs::Mm: return QString::fromStdString(WriteMm(of, rounding));
    case LengthAs::InchFraction: return QString::fromStdString(WriteInchFraction(of, 16, rounding));
    case LengthAs::InchDecimal: return QString::fromStdString(WriteInchDecimal(of, 3, rounding));
  }
  return {};
}

QString ReadingUnits::Words(Length of, Rounding rounding) const { return Number(of, rounding) + ' ' + LengthUnitWord(); }

QString ReadingUnits::Stop(Length of) const {
  if (length != LengthAs::Mm) return QString::fromStdString(WriteInchDecimal(of, 3)) + " in";
  QString number = QString::fromStdString(WriteMm(of));
  if (!number.contains('.')) number += ".0";
  return number + " mm";
}

QString ReadingUnits::Total(Length of) const {
  const bool metric = length == LengthAs::Mm;
  const double units = static_cast<double>(of.nm) / (metric ? 1e9 : 304'800'000.0);
  return QString::number(units, 'f', 1) + (metric ? " m" : " ft");
}

QString ReadingUnits::Sum(Length of) const {
  constexpr std::int64_t kLong = 10'000 * kNmPerMm;
  return of.nm < kLong && of.nm > -kLong ? Words(of) : Total(of);
}

QString ReadingUnits::LengthUnitWord() const { return length == LengthAs::Mm ? "mm" : "in"; }

QString ReadingUnits::Number(Mass of) const { return QString::fromStdString(mass == MassAs::Kg ? WriteKg(of) : WriteLb(of)); }

QString ReadingUnits::Words(Mass of) const { return Number(of) + ' ' + MassUnitWord(); }

QString ReadingUnits::MassUnitWord() const { return mass == MassAs::Kg ? "kg" : "lb"; }

Length ReadingUnits::Read(const QString& text) const {
  return ReadLength(text.trimmed().toStdString(), {length == LengthAs::Mm ? LengthUnit::Mm : LengthUnit::Inch, '.'});
}

Length ReadingUnits::ReadAboveZero(const QString& text) const {
  const Length read = Read(text);
  if (read.nm <= 0) throw BadText(Quoted(text.toStdString()) + " is no length", "a length over zero");
  return read;
}

Mass ReadingUnits::ReadWeighed(const QString& text) const {
  const QString typed = text.trimmed();
  const bool bare = !typed.isEmpty() && typed.back().isDigit();
  return ReadMass((bare && mass == MassAs::Lb ? typed + " lb" : typed).toStdString());
}

Units ReadingUnits::Ruler() const {
  return length == LengthAs::Mm ? Units::Metric : length == LengthAs::InchFraction ? Units::Inch : Units::InchDecimal;
}

}  // namespace heatkeep
