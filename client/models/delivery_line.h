// One line of a delivery note as it is typed at the gate, and what can be said of it before it is booked: mass by theory against mass
// weighed, count against the note, heats that look alike. The book decides by the same rules (schema/api/receiving.sql).
#pragma once

#include <QCoreApplication>
#include <QString>
#include <QStringList>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <vector>

#include "client/gateway/device_readings.h"
#include "client/gateway/door_readings.h"
#include "client/models/reading_units.h"

namespace heatkeep {

// What was read of the book for the gate.
struct DoorFacts {
  std::vector<ExpectedRow> expected;
  std::vector<AtGateRow> at_gate;
  std::vector<KnownHeatRow> heats;
  std::vector<GradeDensityRow> grades;
  std::vector<std::string> parties, places;
  std::vector<DeviceRow> devices;       // tapes and readouts
  Length tape_doubt{1'000'000};         // of a length where no device is said
  std::string tolerance_percent = "3";  // weighed against theory: setting mass_mismatch_percent

  const ExpectedRow* Expected(const QString& order, const QString& line) const;
};

// As typed; lengths and masses in the reader's units, sections as the book writes them (millimetres where no unit is said).
struct TypedLine {
  QString order, order_line;  // of the line that was picked; empty: not ordered
  QString count, slip_count, heat, slip_heat, weighed, grade, section, length, condition, mill, owner, owner_ref, place, bundle;
  QString read_from = "metal";  // metal, tag, none
  bool papers_awaited = true;
  QString measured_with;     // a tape or readout; empty: not said
  int square_ends = 0;       // of a bar as it came
  QString mark = "unknown";  // which end carries the mill's mark: first (cut first), last, both, none, unknown
  QStringList photos;        // files

  // Whether anything was counted or read.
  bool Begun() const { return !(count + heat + weighed + slip_count + slip_heat).trimmed().isEmpty() || !photos.isEmpty(); }
};

struct Remark {
  enum class Kind { Fine, Warning, Stops };  // Stops: it waits in quarantine
  Kind kind = Kind::Fine;
  QString words;
};

enum class LineField { None, Count, SlipCount, Heat, Weighed, Grade, Section, Length, Mill };

struct JudgedLine {
  std::optional<nlohmann::json> body;  // as receive_delivery takes it; none: `wrong` says why
  QString wrong;
  LineField field = LineField::None;  // where
  std::vector<Remark> remarks;
  std::int64_t count = 0, counted_before = 0;  // counted before: of the same line of the note
  std::optional<Mass> theory;

  bool Stops() const;
  bool Agrees() const { return remarks.empty() || (remarks.size() == 1 && remarks[0].kind == Remark::Kind::Fine); }
};

class LineJudge {
  Q_DECLARE_TR_FUNCTIONS(heatkeep::LineJudge)

 public:
  // `counted_before`: bars of earlier lines of the same line of the note.
  static JudgedLine Judge(const TypedLine& typed, const DoorFacts& facts, std::int64_t counted_before, const ReadingUnits& units);

  // "theory 236.8 kg, weighed 229.0 kg: 3.3 % short - length or section is not what the note says"
  static Remark WeighedRemark(Mass theory, Mass weighed, const std::string& tolerance_percent, const ReadingUnits& units);

 private:
  static void CountRemarks(JudgedLine& line, std::optional<std::int64_t> on_note);
  static void DeviceRemarks(JudgedLine& line, const TypedLine& typed, const DoorFacts& facts, const ReadingUnits& units);
  static void HeatRemarks(JudgedLine& line, const TypedLine& typed, const DoorFacts& facts);
  static void OrderRemarks(JudgedLine& line, const TypedLine& typed, const DoorFacts& facts, const std::string& section, Length length,
                           const ReadingUnits& units);
};

}  // namespace heatkeep
