#include "client/models/quantity_words.h"

#include <QRegularExpression>

namespace heatkeep {
namespace {

// 10^places of the unit's own parts: a number with up to so many decimals, in the smallest of them.
std::optional<std::int64_t> Exact(const QString& number, int places) {
  QString digits = number;
  digits.remove(' ');
  const qsizetype point = digits.indexOf('.');
  const qsizetype decimals = point < 0 ? 0 : digits.size() - point - 1;
  if (decimals > places) return std::nullopt;
  digits.remove('.');
  digits += QString(static_cast<qsizetype>(places) - decimals, '0');
  bool fits = false;
  const qlonglong parts = digits.toLongLong(&fits);
  if (!fits) return std::nullopt;
  return parts;
}

constexpr std::int64_t kSixteenth = kNmPerInch / 16;

QString Written(Length length, const ReadingUnits& units, bool fine) {
  const bool small = length.nm < kNmPerInch && length.nm % kSixteenth != 0;
  return fine || small ? units.Stop(length) : units.Words(length, Rounding::Down);
}

struct Kind {
  char name;
  const char* unit;  // with its blank
  int places;        // decimals of it that nanometres or grams can have
};
constexpr Kind kKinds[] = {{'L', " mm", 6}, {'l', "", 6}, {'E', " nm", 0}, {'T', " m", 9}, {'M', " kg", 3}};

}  // namespace

std::optional<QString> QuantityWords(const QString& text, char kind, const ReadingUnits& units, bool fine) {
  static const QRegularExpression number("^([-+\u00B1\u2212]?)((?:\\d{1,3}(?: \\d{3})+|\\d+)(?:\\.\\d+)?)$");
  for (const Kind& k : kKinds) {
    if (k.name != kind || !text.endsWith(QLatin1String(k.unit))) continue;
    const auto match = number.match(text.left(text.size() - static_cast<qsizetype>(qstrlen(k.unit))));
    const auto exact = match.hasMatch() ? Exact(match.captured(2), k.places) : std::nullopt;
    if (!exact) return std::nullopt;
    const QString sign = match.captured(1);
    const bool metric = units.length == ReadingUnits::LengthAs::Mm;
    switch (kind) {
      case 'L': return metric ? text : sign + Written({*exact}, units, fine);
      case 'l': return metric ? text : sign + Written({*exact}, units, fine).section(" in", 0, 0);
      case 'E': return sign + (metric ? QString::fromStdString(WriteMmExact({*exact})) + " mm" : Written({*exact}, units, fine));
      case 'T': return metric ? text : sign + units.Total({*exact});
      default: return units.mass == ReadingUnits::MassAs::Kg ? text : sign + units.Words(Mass{*exact});
    }
  }
  return std::nullopt;
}

std::optional<QString> AnyQuantityWords(const QString& text, const ReadingUnits& units) {
  for (const char kind : {'L', 'T', 'M'})
    if (auto words = QuantityWords(text, kind, units)) return words;
  return std::nullopt;
}

QString WithQuantities(const QString& text, const ReadingUnits& units) {
  static const QRegularExpression quantity("(?<![\\w.,/\\-]|\\d )[-+\u00B1\u2212]?\\d+(?:\\.\\d+)? (?:mm|m|kg)(?![\\w/\u00B2\u00B3])");
  QString written;
  qsizetype done = 0;
  for (auto matches = quantity.globalMatch(text); matches.hasNext();) {
    const auto match = matches.next();
    written += text.mid(done, match.capturedStart() - done);
    written += AnyQuantityWords(match.captured(), units).value_or(match.captured());
    done = match.capturedEnd();
  }
  return written + text.mid(done);
}

}  // namespace heatkeep
