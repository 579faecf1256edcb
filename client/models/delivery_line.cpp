#include "client/models/delivery_line.h"

#include <algorithm>
#include <cstdlib>

#include "client/gateway/section_json.h"
#include "client/models/device_words.h"
#include "client/models/qt_words.h"
#include "schema/terms/bad_text.h"
#include "schema/terms/heat_text.h"
#include "schema/terms/number_text.h"
#include "schema/terms/wide.h"

namespace heatkeep {
namespace {

using Json = nlohmann::json;
using Kind = Remark::Kind;

constexpr std::int64_t kMostBars = 10'000;

std::string S(const QString& text) { return text.trimmed().toStdString(); }

Density DensityOf(const QString& grade, const DoorFacts& facts) {
  for (const GradeDensityRow& row : facts.grades)
    if (Q(row.designation) == grade.trimmed() || (!row.number.empty() && Q(row.number) == grade.trimmed())) return row.density;
  return kSteel;
}

// Takes the first complaint; what else can be read is still read.
class Complaints {
 public:
  explicit Complaints(JudgedLine& line) : line_(line) {}
  void Add(LineField field, const QString& words) {
    if (line_.field != LineField::None) return;
    line_.field = field;
    line_.wrong = words;
  }
  template <typename Read>
  auto Try(LineField field, Read read) -> std::optional<decltype(read())> {
    try {
      return read();
    } catch (const BadText& error) {
      Add(field, BookWords(std::string(error.what())));
      return std::nullopt;
    }
  }

 private:
  JudgedLine& line_;
};

}  // namespace

const ExpectedRow* DoorFacts::Expected(const QString& order, const QString& line) const {
  for (const ExpectedRow& row : expected)
    if (Q(row.order) == order && Q(row.line) == line) return &row;
  return nullptr;
}

bool JudgedLine::Stops() const {
  return std::any_of(remarks.begin(), remarks.end(), [](const Remark& r) { return r.kind == Kind::Stops; });
}

Remark LineJudge::WeighedRemark(Mass theory, Mass weighed, const std::string& tolerance_percent, const ReadingUnits& units) {
  const std::int64_t off = std::abs((weighed - theory).g);
  const QString both = tr("theory %1, weighed %2").arg(units.Words(theory), units.Words(weighed));
  if (off == 0 || theory.g == 0) return {theory.g == 0 ? Kind::Stops : Kind::Fine, both};
  const std::int64_t permille = (off * 1000 + theory.g / 2) / theory.g;
  const QString percent = tr("%1 %").arg(Q(WriteScaled(permille, 1)));
  const QString by = weighed < theory ? tr("%1 short").arg(percent) : tr("%1 heavy").arg(percent);
  constexpr int kPlaces = 6;
  const std::int64_t tolerance = ReadScaled(tolerance_percent, kPlaces);  // millionths of a per cent
  if (Wide{off} * 100'000'000 <= Wide{theory.g} * tolerance) return {Kind::Fine, permille == 0 ? both : both + ": " + by};
  return {Kind::Stops, tr("%1: %2 - length or section is not what the note says").arg(both, by)};
}

void LineJudge::CountRemarks(JudgedLine& line, std::optional<std::int64_t> on_note) {
  if (!on_note || line.count == 0) return;
  const std::int64_t all = line.counted_before + line.count;
  const QString counted =
      line.counted_before > 0 ? tr("counted %1 + %2").arg(line.counted_before).arg(line.count) : tr("counted %1").arg(line.count);
  if (all < *on_note)
    line.remarks.push_back({Kind::Warning, tr("%1, the note says %2: %3 short").arg(counted).arg(*on_note).arg(*on_note - all)});
  if (all > *on_note)
    line.remarks.push_back({Kind::Stops,
                            tr("%1, the note says %2: %3 more wait until the planner decides")
                                .arg(counted)
                                .arg(*on_note)
                                .arg(std::min(line.count, all - *on_note))});
}

void LineJudge::HeatRemarks(JudgedLine& line, const TypedLine& typed, const DoorFacts& facts) {
  const QString heat = typed.heat.trimmed(), slip = typed.slip_heat.trimmed();
  if (typed.read_from == "none") {
    line.remarks.push_back({Kind::Stops, tr("its heat could not be read")});
    return;
  }
  if (heat.isEmpty()) return;
  if (!slip.isEmpty() && slip != heat)
    line.remarks.push_back({Kind::Stops, tr("the heats disagree: %1 on the metal, %2 on the note").arg(heat, slip)});
  QStringList alike;
  for (const KnownHeatRow& known : facts.heats)
    if (LookAlike(known.heat, heat.toStdString()) && !alike.contains(Q(known.heat))) alike.append(Q(known.heat));
  if (!alike.isEmpty())
    line.remarks.push_back(
        {Kind::Warning,
         tr("looks like heat %1, which is in the book: O or 0, I or 1, S or 5, B or 8? Read it again").arg(alike.join(", "))});
  for (const KnownHeatRow& known : facts.heats)
    if (Q(known.heat) == heat && Q(known.mill) == typed.mill.trimmed() && !typed.grade.isEmpty() && !known.grade.empty() &&
        Q(known.grade) != typed.grade.trimmed() && Q(known.section) == typed.section.trimmed()) {
      line.remarks.push_back(
          {Kind::Warning,
           tr("heat %1 of %2 is %3 in the book: read both again; where they stay so, say \"cannot be read\" and quality looks at it")
               .arg(heat, Q(known.mill), Q(known.grade))});
      break;
    }
}

void LineJudge::DeviceRemarks(JudgedLine& line, const TypedLine& typed, const DoorFacts& facts, const ReadingUnits& units) {
  for (const DeviceRow& device : facts.devices)
    if (Q(device.device) == typed.measured_with && device.overdue)
      line.remarks.push_back({Kind::Warning, tr("measured with %1").arg(DeviceWords(device, facts.tape_doubt, units))});
}

void LineJudge::OrderRemarks(JudgedLine& line, const TypedLine& typed, const DoorFacts& facts, const std::string& section, Length length,
                             const ReadingUnits& units) {
  const ExpectedRow* const expected = facts.Expected(typed.order, typed.order_line);
  if (!expected) return;
  if (typed.grade.trimmed() != Q(expected->grade) || section != expected->section)
    line.remarks.push_back(
        {Kind::Stops, tr("ordered %1 %2, marked %3 %4").arg(Q(expected->grade), Q(expected->section), typed.grade.trimmed(), Q(section))});
  if (length != expected->length) line.remarks.push_back({Kind::Warning, tr("ordered %1 long").arg(units.Words(expected->length))});
}

JudgedLine LineJudge::Judge(const TypedLine& typed, const DoorFacts& facts, std::int64_t counted_before, const ReadingUnits& units) {
  JudgedLine line;
  Complaints complain(line);
  const auto whole = [&](LineField field, const QString& text, const QString& missing) -> std::optional<std::int64_t> {
    if (text.trimmed().isEmpty()) {
      if (!missing.isEmpty()) complain.Add(field, missing);
      return std::nullopt;
    }
    return complain.Try(field, [&] { return ReadWhole(S(text), 1, kMostBars); });
  };
  const auto count = whole(LineField::Count, typed.count, tr("how many bars are there? Count them; the note's number stands beside it"));
  line.count = count.value_or(0);
  line.counted_before = counted_before;
  if (typed.read_from != "none" && typed.heat.trimmed().isEmpty())
    complain.Add(LineField::Heat,
                 tr("which heat is on the metal? Where nothing can be read, say \"cannot be read\": it waits in quarantine"));
  const auto on_note = whole(LineField::SlipCount, typed.slip_count, {});
  const auto weighed =
      typed.weighed.trimmed().isEmpty() ? std::nullopt : complain.Try(LineField::Weighed, [&] { return units.ReadWeighed(typed.weighed); });
  if (typed.grade.trimmed().isEmpty()) complain.Add(LineField::Grade, tr("which grade is marked?"));
  const auto section = complain.Try(LineField::Section, [&] { return ReadSection(S(typed.section)); });
  const auto length = complain.Try(LineField::Length, [&] { return units.ReadAboveZero(typed.length); });
  if (typed.read_from != "none" && typed.mill.trimmed().isEmpty())
    complain.Add(LineField::Mill, tr("which mill made it? Two mills can use the same number"));
  if (section && length && count) {
    line.theory = MassOf(*section, DensityOf(typed.grade, facts), Length{length->nm * *count});
    if (weighed) line.remarks.push_back(WeighedRemark(*line.theory, *weighed, facts.tolerance_percent, units));
    else line.remarks.push_back({Kind::Fine, tr("theory %1").arg(units.Words(*line.theory))});
  }
  CountRemarks(line, on_note);
  HeatRemarks(line, typed, facts);
  DeviceRemarks(line, typed, facts, units);
  if (section && length) OrderRemarks(line, typed, facts, SectionText(*section), *length, units);
  if (line.field != LineField::None) return line;

  Json body{{"mill", S(typed.mill)},
            {"heat", typed.read_from == "none" ? "" : S(typed.heat)},
            {"read_from", S(typed.read_from)},
            {"grade", S(typed.grade)},
            {"section", SectionJson(*section)},
            {"condition", S(typed.condition)},
            {"length_nm", length->nm},
            {"count", *count},
            {"place", S(typed.place)},
            {"papers_state", typed.papers_awaited ? "awaited" : "none"},
            {"owner", S(typed.owner)},
            {"ends", typed.square_ends},
            {"mark", S(typed.mark)}};
  if (on_note) body["slip_count"] = *on_note;
  if (weighed) body["weighed_g"] = weighed->g;
  for (const auto& [key, text] : {std::pair{"order_line", &typed.order_line},
                                  {"slip_line", &typed.order_line},
                                  {"slip_heat", &typed.slip_heat},
                                  {"bundle", &typed.bundle},
                                  {"owner_ref", &typed.owner_ref},
                                  {"measured_with", &typed.measured_with}})
    if (!text->trimmed().isEmpty()) body[key] = S(*text);
  line.body = std::move(body);
  return line;
}

}  // namespace heatkeep
