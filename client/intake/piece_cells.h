// The cells that several files share: what a piece of metal is said to be.
#pragma once

#include <optional>
#include <string>

#include "client/intake/checked_rows.h"
#include "schema/terms/money.h"
#include "schema/terms/papers.h"
#include "schema/terms/section.h"

namespace heatkeep::intake {

enum class PieceKind { Bar, Drop };

// What a heat number was read from; None: nothing readable.
enum class ReadFrom { Metal, Tag, Slip, None };

// Which end carries the mill's mark; First is the end that is cut first.
enum class MarkEnd { First, Last, Both, None, Unknown };

std::string_view PieceKindText(PieceKind kind);
std::string_view ReadFromText(ReadFrom from);
std::string_view MarkEndText(MarkEnd mark);

PieceKind KindCell(CheckedRows& file);                                  // column kind, needed
Section SectionCell(CheckedRows& file);                                 // column section, needed
Length LengthCell(CheckedRows& file);                                   // column length, needed, over 0
Length OptionalLengthCell(CheckedRows& file, std::string_view column);  // empty: 0
int WholeCell(CheckedRows& file, std::string_view column, int least, int most, int otherwise);
std::string HeatCell(CheckedRows& file,
                     std::string_view column = "heat");  // as it stands; what a spreadsheet made of it is refused, a number warned of
std::optional<Money> PriceCell(CheckedRows& file);       // column price: money per kg, at most 2 decimals
Papers PapersCell(CheckedRows& file);                    // column papers
int EndsCell(CheckedRows& file, int otherwise);          // column ends: 0, 1 or 2
Length DoubtCell(CheckedRows& file, Length length);      // column doubt: 0 or more, under `length`
ReadFrom ReadFromCell(CheckedRows& file);                // column read_from; empty: metal
MarkEnd MarkCell(CheckedRows& file);                     // column mark; empty: unknown

inline constexpr int kMostPieces = 1'000'000;  // in one line of a file

}  // namespace heatkeep::intake
