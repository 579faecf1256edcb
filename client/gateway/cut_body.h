// A block of a sheet as it was really cut: the body of the deed record_cut.
#pragma once

#include <map>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>

#include "schema/terms/rows.h"

namespace heatkeep {

// What is still to be cut of a block of which something was cut already: what is in the vice, no trim, the pieces that lack. Any other
// block as it is.
SheetBlock RemainingOf(const SheetBlock& block);

// Good pieces by "order/line" where they differ from the plan, those cut before not counted; lines not named were cut as planned.
using DoneCounts = std::map<std::string, int>;

// What a person says of the cut; as it stands, all went as planned.
struct CutTold {
  DoneCounts done = {};
  std::optional<Length> measured = {};  // start length as measured at the saw
  std::string measured_with = {};       // the tape or readout of both lengths; empty: not said
  std::optional<Length> rest = {};      // as measured; else by arithmetic
  bool last_uncut = false;              // the last piece is left as it is: the sheet's offer is taken
  bool scrap = false;                   // the rest is scrapped whatever the plan says
  std::string place = {};               // where the drop is put; empty: where the piece came from
  std::string reason = {};              // why it differs
};

struct CutBody {
  nlohmann::json body;  // of record_cut: "tag", "saw", "finish", "strokes", "left", ...
  Length rest;          // what is left: as measured, else start less trim, pieces and kerf
};

// The strokes are in cutting order: the trim with its kerf, every piece with a kerf. When all was cut as planned the last piece gets
// the kerf the layout gave it (less than a full one, or none, where the metal is used up). A rest that was too short to keep by plan
// is not kept when it is shorter still. Throws BadText where the last piece is said to be uncut and no good piece is cut.
CutBody CutBodyOf(const SheetBlock& block, const CutTold& told, const std::string& saw);

// What was cut so far, the cut left open: of each line at most as many as still lack, none where `done` does not name it. No strokes where
// nothing was cut.
nlohmann::json OpenCutBodyOf(const SheetBlock& block, const DoneCounts& done, const std::string& saw);
// The block after those strokes were booked.
void AddDone(SheetBlock& block, const nlohmann::json& strokes);

}  // namespace heatkeep
