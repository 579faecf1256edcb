// A delivery: what `heatkeep receive` takes. One row is one line of the delivery note and one heat.
// Header: note,supplier,mill,heat,read_from,grade,section,length,count and perhaps
// order,order_line,received,line,slip_line,condition,slip_count,weighed,place,papers,price,owner,owner_ref,rests,chips,
// ends,mark,doubt,measured_with,tag_heat,slip_heat,certificate_heat,bundle.
//   heat        as marked; empty only when read_from is none (unreadable), and then it must be empty
//   read_from   metal, tag, slip or none              received    ISO date or date and time
//   count       counted on the lorry, 1 or more       slip_count  what the slip says, 0 or more
//   weighed     kg, lb or t; bare: kg; of the line    papers      awaited or none; empty: awaited
//   price       money per kg, at most 2 decimals      ends        square ends, 0, 1 or 2; empty: 0
//   mark        first, last, both, none, unknown      doubt       may be this much shorter; empty: 0, or the device's
//   slip_line   line of the slip it answers: two heats counted there are two rows here (empty: this line)
//   order_line  line of the purchase order            tag_heat, slip_heat, certificate_heat  the heat as it stands there;
//   bundle      name on the strap, one a row                      empty: nobody has looked
//   owner_ref   the owner's own reference             rests, chips  what becomes of them: return, scrap or ask (rests)
//   measured_with  tape or readout of the book
#pragma once

#include <optional>
#include <string>
#include <string_view>

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

FileRows<DeliveryFileRow> ReadDeliveryFile(std::string_view bytes, const std::string& name, ReadingOptions how = {});

}  // namespace heatkeep::intake
