// The shop's metal: heats, lots, what lay there when the book was opened, and what lorries have brought
// since. Everything but the grades and sections is invented.
#pragma once

#include <cstdint>
#include <map>
#include <string>
#include <vector>

#include "seed/scenario/reference.h"

namespace heatkeep::scenario {

struct Heat {
  std::string mill, number, grade;
  bool carried_on = false;  // it has a second section
  std::string made;         // ISO date, for the certificate
};

// A heat in one section: what a certificate belongs to.
struct Lot {
  std::size_t heat = 0, group = 0;
  std::string papers;  // "3.1", "2.2", or empty: awaited
};

inline constexpr std::size_t kNoLot = static_cast<std::size_t>(-1);

struct OpeningLine {
  std::string old_tag;  // R-0001: one drop; L-001: bars of one lot that lay together
  bool drop = false;
  std::size_t group = 0, lot = kNoLot;  // kNoLot: the heat is unknown
  std::int64_t length_mm = 0;
  int count = 1;
  std::string place, owner;  // owner empty: ours
  int ends = 0;
};

struct DeliveryLine {
  std::string note, supplier, order, received;
  int line = 0;
  std::size_t group = 0, lot = 0;
  std::string length;          // as written, mm or feet
  std::int64_t length_mm = 0;  // the same, rounded down
  int count = 0, slip_count = 0;
  std::int64_t weighed_g = 0, theory_g = 0;
  std::string place, owner, mark;
  bool odd = false;  // one bar short, or the mass is off: not counted on by the cut lists
};

struct Stock {
  std::vector<Heat> heats;
  std::vector<Lot> lots;
  std::vector<OpeningLine> opening;
  std::vector<DeliveryLine> deliveries;
};

Stock make_stock(const std::map<std::string, Grade>& grades);

// What the shop pays a kilogram, in cents, and gets for scrap, by grade.
struct Price {
  std::int64_t cents_per_kg = 0, scrap_cents_per_kg = 0;
};
const std::map<std::string, Price>& prices();

std::string opening_file(const Stock& stock);
std::string deliveries_file(const Stock& stock);
std::string certificates_file(const Stock& stock, const std::map<std::string, Grade>& grades);

}  // namespace heatkeep::scenario
