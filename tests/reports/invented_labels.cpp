#include "tests/reports/invented_labels.h"

#include "schema/terms/tag.h"

namespace heatkeep {

using namespace literals;

PieceLabel PlainLabel() {
  PieceLabel label;
  label.job = 12;
  label.tag = "A000001D";
  label.kind = "drop";
  label.mill = "Vandrek";
  label.heat = "V20418";
  label.grade = "42CrMo4";
  label.number = "1.7225";
  label.condition = "+QT";
  label.section = "round 80";
  label.document = "3.1 no. 88-1203";
  label.parent = MakeTag('A', 17);
  label.place = "B3-2";
  label.length = {457'073'000};
  label.mass = {18'035};
  return label;
}

std::vector<PieceLabel> HardLabels() {
  std::vector<PieceLabel> all(8, PlainLabel());
  for (std::size_t i = 0; i < all.size(); ++i) all[i].tag = MakeTag('A', static_cast<std::int64_t>(4700 + i));
  all[1].owner = "OWNED BY OSMUND";
  all[1].kind = "bar";
  all[1].parent.clear();
  all[1].length = 6000_mm;
  all[1].mass = {236'750};
  all[2].blocked = "quarantined: crack seen at the marked end";
  all[2].limits = "not for 3.1";
  all[2].from = "from piped bar";
  all[3].heat = "NO HEAT";
  all[3].grade = all[3].condition = all[3].number = "";
  all[3].document = "none";
  all[4].heat = "HEAT-2026/00417-O0-STENCILLED";
  all[4].grade = "X2CrNiMoCuWN25-7-4 / X5CrNiCuNb16-4 dual";
  all[4].document = "3.2 no. 2026-118802, 3.1 no. 88-1203, 3.1 no. 88-1204";
  all[5].blocked =
      "held by ines: the laboratory found sulphur above the limit of the order in three of five bars of this heat and asks that nothing of it leaves before the mill has answered";
  all[5].owner = "OWNED BY DREWE CONVEYORS AND HANDLING EQUIPMENT (NORTHERN WORKS)";
  all[6].reprint = 2;
  all[6].reprint_on = "2026-11-25";
  all[6].heat = "O0715 \"B'";
  all[7].heat = "\u00C4\u0141-7715";
  all[7].section = "box 100x60x5 cold";
  all[7].owner = "OWNED BY ISTER MARINE";
  all[7].limits = "not for 3.1; only for order O17";
  all[7].blocked = "its papers are awaited";
  all[7].document = "papers awaited";
  all[7].reprint = 1;
  all[7].reprint_on = "2026-11-24";
  return all;
}

std::vector<PlaceLabel> InventedPlaces() {
  return {{"B3-2", "main", "rack", 6500_mm, {2'000'000}},
          {"GATE", "main", "gate", {}, {}},
          {"COLD STORE NORTH, BAY 17, LEVEL 3", "main", "rack", {}, {500'000}}};
}

std::vector<BatchLabel> InventedBatches() {
  return {{"O-4711", "10", "Pallant Hydraulics", "Vandrek", "V20418", "42CrMo4", "round 80", "+QT", "3.1 no. 88-1203", "", "", 7, 240_mm},
          {"ORDER-2026-118803-REPEAT",
           "120",
           "Drewe Conveyors",
           "Kestholm",
           "NO HEAT",
           "C45E",
           "flat 100x20",
           "",
           "none",
           "OWNED BY DREWE CONVEYORS",
           "held by ines: hardness",
           1,
           {1'000'125'000}}};
}

}  // namespace heatkeep
