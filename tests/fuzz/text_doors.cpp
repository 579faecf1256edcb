// What a person types or scans: lengths, masses, tolerances, dates, sections, tags.
#include <optional>
#include <string>

#include "schema/terms/condition_text.h"
#include "schema/terms/date_text.h"
#include "schema/terms/heat_text.h"
#include "schema/terms/length_text.h"
#include "schema/terms/mass_text.h"
#include "schema/terms/number_text.h"
#include "schema/terms/plain_text.h"
#include "schema/terms/scan.h"
#include "schema/terms/section.h"
#include "schema/terms/tag.h"
#include "schema/terms/tolerance_text.h"
#include "tests/fuzz/file_door.h"
#include "tests/fuzz/promise.h"

namespace heatkeep::fuzz {
namespace {

// What read() gives; nothing where it refuses in words.
template <class Read>
auto Read1(Read read) -> std::optional<decltype(read())> {
  try {
    return read();
  } catch (const BadText& e) {
    Require(!e.Wrong().empty() && !e.Expected().empty(), "a refusal says what is wrong and what is expected");
    return std::nullopt;
  }
}

std::int64_t Apart(Length a, Length b) { return a < b ? b.nm - a.nm : a.nm - b.nm; }

void RequireWritten(Length length) {
  Require(length.nm >= 0 && length <= kLongestLength, "a length is in range");
  if (length + Length{kNmPerMm} > kLongestLength) return;  // rounded up it may be too long to be read
  Require(ReadLength(WriteMmExact(length)) == length, "millimetres with every decimal read back the same");
  Require(Apart(ReadLength(WriteMm(length)), length) <= 500, "millimetres with three decimals are the nearest");
  Require(length.nm - ReadLength(WriteMm(length, Rounding::Down)).nm >= 0, "rounded down is never more than there is");
  Require(Apart(ReadLength(WriteInchFraction(length, 64) + " in"), length) <= 198'438, "sixty-fourths are the nearest");
  Require(Apart(ReadLength(WriteInchDecimal(length, 3) + " in"), length) <= 12'700, "thousandths of an inch are the nearest");
}

}  // namespace

void LengthsDoor(std::string_view bytes) {
  for (const LengthReading how :
       {LengthReading{LengthUnit::Mm, '.'}, {LengthUnit::Mm, ','}, {LengthUnit::Inch, '.'}, {LengthUnit::Inch, ','}}) {
    if (const auto length = Read1([&] { return ReadWrittenLength(bytes, how); })) {
      Require(ReadLength(bytes, how) == length->length, "both readings of a length are one");
      RequireWritten(length->length);
    }
    if (const auto tolerance = Read1([&] { return ReadTolerance(bytes, how); }))
      Require(ReadTolerance(ToleranceText(*tolerance)) == *tolerance, "a tolerance is written and read again as the same");
    if (const auto mass = Read1([&] { return ReadMass(bytes, how.decimal_mark); })) {
      Require(mass->g >= 0 && mass->g <= 100'000'000'000, "a mass is in range");
      Require(ReadMass(WriteKg(*mass, 3)) == *mass, "kilograms with three decimals read back the same");
    }
    if (const auto number = Read1([&] { return ReadDecimal(bytes, how.decimal_mark); }))
      Require(number->digits >= 0 && number->places >= 0, "a number has no sign");
    Read1([&] { return ReadScaled(bytes, 6, how.decimal_mark); });
  }
  if (const auto whole = Read1([&] { return ReadWhole(bytes, 0, 1'000'000); }))
    Require(*whole >= 0 && *whole <= 1'000'000, "a count is in range");
  if (const auto day = Read1([&] { return ReadIsoDateOrTime(bytes); })) Require(IsIsoDateOrTime(*day), "a day that was read is one");
  const std::string plain = PlainText(bytes);
  Require(PlainText(plain) == plain, "plain text is plain");
  Require(NormalCondition(NormalCondition(bytes)) == NormalCondition(bytes), "a condition has one normal form");
  Require(LookAlike(bytes, std::string(bytes) + "-"), "a hyphen at the end is overlooked");
}

void SectionsDoor(std::string_view bytes) {
  for (const LengthReading how : {LengthReading{LengthUnit::Mm, '.'}, {LengthUnit::Mm, ','}, {LengthUnit::Inch, '.'}}) {
    const auto section = Read1([&] { return ReadSection(bytes, how); });
    if (!section) continue;
    Require(ReadSection(SectionText(*section)) == *section, "a section is written and read again as the same");
    Require(SectionKey(ReadSection(SectionText(*section))) == SectionKey(*section), "equal sections have one key");
    Require(AreaOf(*section).um2 >= 0 && WidestOf(*section).nm > 0, "a section has a size");
    Require(MassOf(*section, kSteel, kLongestLength).g >= 0 && MassPerMetreOf(*section, {23'000}).ng >= 0, "a bar has a mass");
  }
}

void TagsDoor(std::string_view bytes) {
  const auto form = Read1([&] { return TagForm(bytes); });
  const auto tag = Read1([&] { return ReadTag(bytes); });
  Require(tag.has_value() == IsValidTag(bytes), "a tag that is read is right");
  Require(!tag || (form && *tag == *form && HasRightCheckCharacter(*tag)), "a tag has its form and its check character");
  if (tag) {
    Require(MakeTag(tag->front(), std::stoll(tag->substr(1, 6))) == *tag, "a tag is made again as the same");
    Require(ReadTag(TagOfScan(*tag)) == *tag, "a bare tag is a scan");
  }
  Read1([&] { return CheckCharacter(bytes); });
  Read1([&] { return TagOfScan(bytes); });
  Read1([&] { return PlaceOfScan(bytes); });
}

}  // namespace heatkeep::fuzz
