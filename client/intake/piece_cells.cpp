#include "client/intake/piece_cells.h"

#include <array>

#include "schema/terms/heat_text.h"
#include "schema/terms/number_text.h"

namespace heatkeep::intake {
namespace {

constexpr std::array<std::string_view, 2> kKinds{"bar", "drop"};
constexpr std::array<std::string_view, 4> kReadFrom{"metal", "tag", "slip", "none"};
constexpr std::array<std::string_view, 5> kMarks{"first", "last", "both", "none", "unknown"};

template <std::size_t N>
std::size_t IndexOf(const std::array<std::string_view, N>& words, const std::string& word) {
  for (std::size_t i = 0; i < N; ++i) {
    if (words[i] == word) return i;
  }
  return 0;
}

}  // namespace

std::string_view PieceKindText(PieceKind kind) { return kKinds[static_cast<std::size_t>(kind)]; }
std::string_view ReadFromText(ReadFrom from) { return kReadFrom[static_cast<std::size_t>(from)]; }
std::string_view MarkEndText(MarkEnd mark) { return kMarks[static_cast<std::size_t>(mark)]; }

PieceKind KindCell(CheckedRows& file) {
  if (file.Needed("kind", "bar or drop").empty()) return PieceKind::Bar;
  return static_cast<PieceKind>(IndexOf(kKinds, file.Word("kind", {"bar", "drop"})));
}

ReadFrom ReadFromCell(CheckedRows& file) {
  return static_cast<ReadFrom>(IndexOf(kReadFrom, file.Word("read_from", {"metal", "tag", "slip", "none"})));
}

MarkEnd MarkCell(CheckedRows& file) {
  return static_cast<MarkEnd>(IndexOf(kMarks, file.Word("mark", {"unknown", "first", "last", "both", "none"})));
}

Section SectionCell(CheckedRows& file) {
  return file.NeededValue<Section>("section", "for example round 50",
                                   [&file](const std::string& cell) { return ReadSection(cell, file.Lengths()); });
}

Length LengthCell(CheckedRows& file) {
  return file.NeededValue<Length>("length", "a length over zero", [&file](const std::string& cell) {
    const Length length = ReadLength(cell, file.Lengths());
    if (length.nm == 0) throw BadText(Quoted(cell) + " is no length", "a length over zero");
    return length;
  });
}

Length OptionalLengthCell(CheckedRows& file, std::string_view column) {
  return file.Value(column, Length{}, [&file](const std::string& cell) { return ReadLength(cell, file.Lengths()); });
}

int WholeCell(CheckedRows& file, std::string_view column, int least, int most, int otherwise) {
  return file.Value(column, otherwise, [=](const std::string& cell) { return static_cast<int>(ReadWhole(cell, least, most)); });
}

std::string HeatCell(CheckedRows& file, std::string_view column) {
  const CellKind kind = file.Kind(column);
  std::string heat = file.Value(column, std::string(), [kind](const std::string& cell) {
    const char* as_marked = "the heat as marked on the metal, in a column formatted as text";
    if (SpreadsheetAte(cell)) throw BadText(Quoted(cell) + " is a number a spreadsheet made of a heat like 123E3", as_marked);
    if (kind == CellKind::PaddedNumber)
      throw BadText(Quoted(cell) + " is a number that only its format shows with zeros in front", as_marked);
    if (kind == CellKind::Date || kind == CellKind::Boolean) throw BadText(Quoted(cell) + " is no text in the sheet", as_marked);
    return cell;
  });
  if (kind == CellKind::Number && !heat.empty()) {
    file.Warn("heat " + Quoted(heat) +
                  " is a number in the sheet: zeros in front of it would be lost; look at the metal, and format the column as text",
              column);
  }
  return heat;
}

std::optional<Money> PriceCell(CheckedRows& file) {
  return file.Value("price", std::optional<Money>(),
                    [&file](const std::string& cell) { return Money{ReadScaled(cell, 2, file.CellMark())}; });
}

Papers PapersCell(CheckedRows& file) { return file.Value("papers", Papers::None, ReadPapers); }

int EndsCell(CheckedRows& file, int otherwise) { return WholeCell(file, "ends", 0, 2, otherwise); }

Length DoubtCell(CheckedRows& file, Length length) {
  const Length doubt = OptionalLengthCell(file, "doubt");
  if (doubt.nm > 0 && doubt >= length && length.nm > 0) {
    file.Problem("doubt: as long as the piece itself", "a doubt shorter than the length");
  }
  return doubt;
}

}  // namespace heatkeep::intake
