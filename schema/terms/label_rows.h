// What the book says for labels, one struct a label. Lengths and masses as they are now.
#pragma once

#include <cstdint>
#include <string>

#include "schema/terms/length.h"
#include "schema/terms/mass.h"

namespace heatkeep {

// A piece: a full bar or a drop.
struct PieceLabel {
  std::int64_t job = 0;    // its number in the queue of labels
  std::string tag, kind;   // kind: "bar" or "drop"
  std::string mill, heat;  // the heat as read, or NO HEAT
  std::string grade, number, condition, section;
  std::string document;       // "3.1 no. 88-1203", "papers awaited" or "none"
  std::string owner;          // "OWNED BY OSMUND"; empty: ours
  std::string limits;         // what it may not be used for: "not for 3.1"
  std::string from;           // "from piped bar"
  std::string blocked;        // why it may not be used now, in words; empty: it may
  std::string parent, place;  // tag of the piece it was cut from
  std::string reprint_on;     // the day another label of it was asked for, ISO
  int reprint = 0;            // how many labels were printed for it before by such wishes, this one included; 0: the first
  Length length;
  Mass mass;
};

struct PlaceLabel {
  std::string place, site, kind;
  Length longest;  // 0: no limit
  Mass heaviest;   // 0: no limit
};

// Cut pieces of one line of an order and of one heat that are on site: they have no tags of their own.
struct BatchLabel {
  std::string order, line, customer, mill, heat, grade, section, condition, document, owner;
  std::string blocked;
  int count = 0;
  Length length;  // as ordered
};

}  // namespace heatkeep
