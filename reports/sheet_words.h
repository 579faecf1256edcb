// The words of a pick list: pure, one place for paper, spreadsheet and the saw station.
// Cautions are reminders, common practice of saw shops (no source); the lift limit is the shop's setting
// (its default of 25 kg is the reference mass of ISO 11228-1 under ideal conditions).
#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <vector>

#include "reports/bar_ruler.h"
#include "schema/terms/rows.h"

namespace heatkeep {

// "M2208" -> "M22 08": groups of three for reading; a heat with its own spaces or signs stays as it was read.
std::string HeatInGroups(const std::string& heat);

// "hand", "hand, long: two people", "two people", "CRANE": up to the limit, up to twice the limit, above;
// long: over 3 m. With no limit set (0): "lift: no limit set".
std::string HowToLift(Mass mass, Length length, Mass limit);

// "LEFT ~ 206 mm: KEEP, label prints", "LEFT 66 mm: SCRAP", "NOTHING LEFT".
// Rounded down to the millimetre, or the sixteenth of an inch.
std::string WhatIsLeft(const SheetBlock& block, Units units = Units::Metric);

// What the end of the block offers and warns of (schema/terms/last_piece.h), a sentence each: no cut at all or none for the last
// piece, the last piece left uncut, a thin slice, further pieces of its lines. Lengths rounded down like WhatIsLeft.
std::vector<std::string> EndWords(const SheetBlock& block, Units units = Units::Metric);

// What whoever cuts the block must know of its metal first, a sentence each: why no more is cut of it, why nothing of it ships.
std::vector<std::string> WarningWords(const SheetBlock& block);

// What the mark at the metal's end asks of the operator.
std::string MarkWords(const SheetBlock& block);

// "" or "length +-2 mm: measure first" / "TIGHT: measure before cutting" when the doubt could spoil the plan.
std::string DoubtWords(const SheetBlock& block);

// "240.0 mm (9.449 in)"; first the unit of the saw's readout.
std::string StopWords(const SheetCut& cut, Units units = Units::Metric);
// "+0.5/-0 mm".
std::string ToleranceWords(const SheetCut& cut);

// "trim 5, kerf 2 each (16 in all), grip 60 mm".
std::string LossWords(const SheetBlock& block);

// Strokes of the saw for the block, its trim included; a last piece that is left uncut is none.
int StrokeCount(const SheetBlock& block);

// What one stroke goes through, all bars that are cut together included, and how long it is in the metal; nullopt: no rate is known.
Area StrokeArea(const SheetBlock& block);
std::optional<std::chrono::milliseconds> StrokeTime(const SheetBlock& block);

// "" or "BUNDLE 1: 5 bars cut together, 20 strokes of 35.34 cm2, 0.6 min each".
std::string BundleWords(const SheetBlock& block);

// Owner to be named: not empty and not "ours".
bool IsOthersMetal(const SheetBlock& block);

int PieceCount(const SheetBlock& block);

// The one caution text of a sheet.
std::string CautionWords();

// The date of an ISO time, "2026-11-24 14:00" without zone or seconds.
std::string ShortTime(const std::string& iso);

}  // namespace heatkeep
