// A delivery: what `heatkeep receive` takes. One row is one line of the delivery note and one heat.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "client/intake/file_rows.h"
#include "client/intake/piece_cells.h"
#include "schema/terms/mass.h"

namespace heatkeep::intake {

struct DeliveryFileRow {
  int line_in_file = 0;
  std::string note, supplier, order, order_line, received, line, slip_line;
  std::string mill, heat;  // heat exactly as the file has it
  std::string tag_heat, slip_heat, certificate_heat;
  ReadFrom read_from = ReadFrom::Metal;
  std::string grade;
  Section section;
  std::string condition;  // normal form
  Length length;
  int count = 1;
  std::optional<int> slip_count;
  std::optional<Mass> weighed;
  std::string place, bundle;
  bool papers_awaited = true;
  std::optional<Money> price_per_kg;
  std::string owner;  // empty: the shop's own
  std::string owner_ref, rests, chips;
  int ends = 0;
  MarkEnd mark = MarkEnd::Unknown;
  std::optional<Length> doubt;  // none: not said, and what it was measured with tells
  std::string measured_with;
};

// What its header may be, and what each column says.
const std::vector<Column>& DeliveryColumns();

FileRows<DeliveryFileRow> ReadDeliveryFile(std::string_view bytes, const std::string& name, const ReadingOptions& how = {});

}  // namespace heatkeep::intake
