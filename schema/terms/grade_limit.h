// What a standard prints about a grade: limits of its chemistry and of its mechanical properties, and how far an analysis
// of the product may lie outside the limits of the heat. The figures are kept as printed, because a value is rounded to
// the figures of the limit it is judged by.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "schema/terms/length.h"

namespace heatkeep {

// A printed number: "0.030" is 30 000 millionths with three places. MPa, % elongation: the same.
struct Bound {
  std::int64_t millionths = 0;
  int places = 0;  // figures behind the decimal mark, 0..6
  bool operator==(const Bound&) const = default;
};

// The text of a bound with its own places: "0.030".
std::string BoundText(const Bound& bound);
// A number of at most six places, at most 10^12. Throws BadText.
Bound ReadBound(std::string_view text, char mark = '.');

// Sizes a row is for: more than `over`, up to and with `upto`. Size is the diameter, the width across flats or the
// thickness, as the standard's table says.
struct SizeRange {
  Length over;
  std::optional<Length> upto;
  bool Holds(Length size) const { return size > over && (!upto || size <= *upto); }
  bool All() const { return over.nm == 0 && !upto; }
  bool operator==(const SizeRange&) const = default;
};

struct GradeLimit {
  std::string grade;  // its designation
  SizeRange sizes;
  std::string what;                  // "C"; or what is reckoned from several: quantity.h of client/papers
  std::optional<Bound> least, most;  // mass %
  std::string source, note, evidence;
};

struct MechanicalLimit {
  std::string grade, condition;  // condition in its normal form, empty: as delivered, whichever
  SizeRange sizes;
  std::string property;  // "Rm", "Re" in MPa; "A" in %
  std::optional<Bound> least, most;
  std::string source, note, evidence;
};

// Permissible deviation of a product analysis, for limits of the heat within over..upto (mass %).
struct ProductDeviation {
  std::string standard;  // as the limit's source names it: "ASTM A29/A29M Table 2"
  std::string grade;     // empty: every grade of the standard
  std::string element;
  Bound over;                         // limits above this ...
  std::optional<Bound> upto;          // ... up to and with this
  std::optional<Bound> above, below;  // how far over the maximum, under the minimum; none: no deviation that way
  std::string source, note, evidence;
};

}  // namespace heatkeep
