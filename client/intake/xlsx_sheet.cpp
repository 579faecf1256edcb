#include <algorithm>
#include <charconv>
#include <optional>

#include "client/intake/xlsx.h"
#include "client/intake/xml_part.h"
#include "schema/terms/bad_text.h"

namespace heatkeep::intake {
namespace {

constexpr int kLastRow = 1'048'576;
constexpr std::size_t kLastColumn = 16'384;
constexpr const char* kWhole = "a whole spreadsheet, saved again";

// "C7" -> column 2, row 7.
struct CellPlace {
  std::size_t column = 0;
  int row = 0;
};

CellPlace ReadPlace(const std::string& ref) {
  std::size_t column = 0, i = 0;
  for (; i < ref.size() && i < 3 && ref[i] >= 'A' && ref[i] <= 'Z'; ++i) column = column * 26 + static_cast<std::size_t>(ref[i] - 'A') + 1;
  int row = 0;
  const auto [end, error] = std::from_chars(ref.data() + i, ref.data() + ref.size(), row);
  if (error != std::errc() || end != ref.data() + ref.size() || column == 0 || column > kLastColumn || row < 1 || row > kLastRow) {
    throw BadText(Quoted(ref) + " is no cell", kWhole);
  }
  return {column - 1, row};
}

// A cell as it is written, before it is known what it shows.
struct RawCell {
  CellPlace place;
  std::string type, value, inline_text;
  std::size_t style = 0;
  bool formula = false;
};

class SheetReader {
 public:
  SheetReader(std::string bytes, const std::string& part, const XlsxLook& look, SheetRows& rows)
      : xml_(std::move(bytes), part), look_(look), rows_(rows) {}

  void Read() {
    for (XmlStep step = xml_.Next(); step != XmlStep::Done; step = xml_.Next()) {
      if (step != XmlStep::Start) continue;
      if (xml_.Is("row")) {
        BeginRow();
      } else if (xml_.Is("c")) {
        Put(TakeCell());
      } else if (xml_.Is("mergeCell")) {
        rows_.NoteMerged(xml_.Attribute("ref").substr(0, 20));
      } else if (xml_.Is("col") && IsOn(xml_.Attribute("hidden"))) {
        NoteHiddenColumns();
      }
    }
  }

 private:
  static int Whole(const std::string& text, int least, int most) {
    int n = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), n);
    if (error != std::errc() || end != text.data() + text.size() || n < least || n > most) {
      throw BadText(Quoted(text) + " where the sheet counts", kWhole);
    }
    return n;
  }

  void BeginRow() {
    const std::string number = xml_.Attribute("r");
    row_ = number.empty() ? row_ + 1 : Whole(number, 1, kLastRow);
    if (row_ > kLastRow) throw BadText("more rows than a sheet has", kWhole);
    column_ = 0;
    if (IsOn(xml_.Attribute("hidden"))) rows_.HideRow(row_);
  }

  void NoteHiddenColumns() {
    const int first = Whole(xml_.Attribute("min"), 1, static_cast<int>(kLastColumn));
    const int last = std::min(Whole(xml_.Attribute("max"), first, static_cast<int>(kLastColumn)), kMostColumns);
    for (int c = first; c <= last; ++c) rows_.HideColumn(static_cast<std::size_t>(c) - 1);
  }

  RawCell TakeCell() {
    RawCell cell;
    const std::string ref = xml_.Attribute("r"), style = xml_.Attribute("s");
    cell.place = ref.empty() ? CellPlace{column_, row_} : ReadPlace(ref);
    if (cell.place.row != row_) throw BadText("cell " + Quoted(ref) + " stands in row " + std::to_string(row_), kWhole);
    column_ = cell.place.column + 1;
    cell.type = xml_.Attribute("t");
    if (!style.empty()) cell.style = static_cast<std::size_t>(Whole(style, 0, 65'536));
    TakeContent(cell);
    return cell;
  }

  void TakeContent(RawCell& cell) {
    const int outside = xml_.Depth() - 1;
    std::string* into = nullptr;
    while (xml_.Depth() > outside) {
      const XmlStep step = xml_.Next();
      if (step == XmlStep::Text) {
        if (into != nullptr) *into += xml_.Text();
      } else if (step == XmlStep::End) {
        into = nullptr;
      } else if (step == XmlStep::Start) {
        if (xml_.Is("f")) cell.formula = true;
        if (xml_.Is("v")) into = &cell.value;
        if (xml_.Is("t")) into = &cell.inline_text;
        if (xml_.Is("rPh")) xml_.Skip();
      }
    }
  }

  // What the cell shows; none when it is empty.
  std::optional<ShownCell> Shown(const RawCell& cell) const {
    if (cell.type == "inlineStr") return ShownCell{UnescapedXlsx(cell.inline_text), CellKind::Text};
    if (cell.formula && cell.value.empty() && cell.type != "str") {
      return ShownCell{"a formula that was never computed", CellKind::Error};
    }
    if (cell.value.empty()) return std::nullopt;
    if (cell.type == "s") {
      const auto at = static_cast<std::size_t>(Whole(cell.value, 0, 2'000'000));
      if (at >= look_.strings.size()) throw BadText("a cell names shared string " + cell.value + ", which is not there", kWhole);
      return ShownCell{look_.strings[at], CellKind::Text};
    }
    if (cell.type == "str") return ShownCell{UnescapedXlsx(cell.value), CellKind::Text};
    if (cell.type == "b") return ShownCell{IsOn(cell.value) ? "yes" : "no", CellKind::Boolean};
    if (cell.type == "e") return ShownCell{cell.value, CellKind::Error};
    if (cell.type == "d") return ShownCell{cell.value.substr(0, cell.value.find('.')), CellKind::Date};
    if (!cell.type.empty() && cell.type != "n") throw BadText("a cell of the unknown type " + Quoted(cell.type), kWhole);
    return ShowNumber(cell.value, cell.style < look_.formats.size() ? look_.formats[cell.style] : NumberFormat{}, look_.from_1904);
  }

  void Put(const RawCell& cell) {
    const std::string where = ColumnLetters(cell.place.column) + std::to_string(cell.place.row);
    try {
      std::optional<ShownCell> shown = Shown(cell);
      if (!shown) return;
      if (cell.formula && shown->kind != CellKind::Error) rows_.NoteFormula(cell.place.row, cell.place.column);
      rows_.Put(cell.place.row, cell.place.column, std::move(shown->text), shown->kind);
    } catch (const BadText& e) { throw BadText("cell " + where + ": " + e.Wrong(), e.Expected()); }
  }

  XmlPart xml_;
  const XlsxLook& look_;
  SheetRows& rows_;
  int row_ = 0;
  std::size_t column_ = 0;
};

}  // namespace

void ReadXlsxSheet(std::string part_bytes, const std::string& part, const XlsxLook& look, SheetRows& rows) {
  SheetReader(std::move(part_bytes), part, look, rows).Read();
}

}  // namespace heatkeep::intake
