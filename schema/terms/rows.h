// What the book's views and reading functions answer, one struct a row. The gateway fills them, the reports
// and screens take them. Times are ISO 8601 texts as the book wrote them, in the session's time zone.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "schema/terms/length.h"
#include "schema/terms/mass.h"
#include "schema/terms/sawing.h"

namespace heatkeep {

// api.stock_on_hand: one piece that is in the shop.
struct StockRow {
  std::string tag, kind;  // kind: "bar" or "drop"
  std::string grade, section, condition, mill, heat, papers, owner, place, state;
  std::string promised_to;  // "plan 3", "order 26-1184"; empty: it is free
  Length length, doubt;
  Mass mass;
};

// api.measured_lengths: a length that was measured otherwise than the book said.
struct MeasuredRow {
  std::string at, who, measured_with, told_by;  // measured_with: the tape or readout, "not said"; told_by: the device it was entered on
  std::string tag, kind, mill, heat, section, grade, reason;
  Length book, measured, difference;  // difference: measured less book
};

// One kind of cut in a layout: `count` equal pieces for one line of a cut list.
struct SheetCut {
  std::string order, line, customer;
  int count = 0;
  Length set;                              // what the stop is set to: nominal + facing allowance + aim inside the tolerance
  Length nominal;                          // as ordered
  Length face;                             // facing allowance
  Length tolerance_minus, tolerance_plus;  // both >= 0; the tolerance field is nominal + face - minus .. + plus
  bool one_heat = false;                   // all pieces of this line come from one heat
  int max_heats = 0;                       // or from at most so many; 0: any number
  int done = 0;                            // of `count`, cut already from a piece whose cut is open
};

// What becomes of the metal that is left after the last cut.
enum class LeftFate { None, Drop, Scrap };

// One piece to pull and how it is cut. trim + kerf + sum(count * set) + left = length, to the nanometre.
struct SheetBlock {
  int block = 0;  // number on the sheet, from 1, in walking order
  std::string place, tag, kind, section, grade, condition, mill, heat, papers, owner;
  std::string mark_end;   // which end carries the mill's mark: "first", "last", "both", "none", "unknown"
  std::string otherwise;  // the next-best source in words, or empty
  std::string state;      // "promised", "at saw", "done", "dropped"
  std::string stop;       // why nothing more is cut from a piece at the saw after the cut under way, or empty
  std::string risk;       // "cut at risk: papers awaited, do not ship", or empty
  Length length, doubt;
  Mass mass;
  Length trim, kerf_each, kerf_all, grip;
  Length stays;                     // what stays behind the blade at every cut: the grip, or with none a trim for a rough far end
  int bundle = 1;                   // bars cut together with this one, itself included
  int bundle_no = 0;                // which bundle of the sheet, from 1; 0: cut alone
  bool made_up = false;             // the bundle has been made up at the saw
  Area area;                        // of the section
  std::optional<CuttingRate> rate;  // nullopt: not known for its grade
  std::vector<SheetCut> cuts;       // in cutting order
  Length left;
  LeftFate fate = LeftFate::None;
  Mass left_mass;
  std::optional<Length> begun;  // what is in the vice of a piece of which something was cut already
};

struct SheetShort {
  std::string order, line, section, grade;
  int missing = 0;
  Length length;
  std::string why;
};

// The pick list and saw sheet of one plan.
struct Sheet {
  std::string number;  // the plan's number
  std::string saw;     // the saw's name, without the word saw
  std::string due;     // earliest due date of its lines, ISO, or empty
  std::string made_at, made_by;
  std::string proof;     // "opens 3 full bars, 18.3 m; no plan opens less (proved)"
  std::string one_heat;  // what the head's box says, or empty
  bool bundled = false;
  Length kerf, trim, grip;
  Mass lift_limit;  // above this a block says how to lift
  std::vector<SheetBlock> blocks;
  std::vector<SheetShort> shorts;
};

// One class of a metal balance. Classes: received, shipped, on site, on hand, at saw, kerf, trim, crop, reject,
// test slice, scrap, returned, sold, unexplained.
struct BalanceClass {
  std::string name;
  bool in = false;  // true: metal that came in; false: where it is or went
  Length length;
  Mass mass;
};

// api.heat_balance: the balance of one lot. Sum of `in` = sum of the others, to the nanometre.
struct HeatBalance {
  std::string mill, heat, grade, section, condition, papers;
  std::vector<BalanceClass> classes;
};

// One line of a trace, in tree order: `depth` 0 is the root.
struct TraceLine {
  int depth = 0;
  std::string what;    // "receipt", "bar", "drop", "cut piece", "reject", "crop", "test slice", "scrap", "unexplained"
  std::string name;    // tag, or "order/line"
  std::string parent;  // tag of the piece it came from, or empty
  int count = 1;
  Length length;  // of one
  Mass mass;      // of all
  std::string mill, heat, grade, section, condition;
  std::string document;   // "3.1 no. 88-1203", or "papers awaited", or "none"
  std::string receipt;    // delivery note and supplier of the first receipt
  std::string where_now;  // "place B3-2", "on site", "shipped to Pallant Hydraulics, note 118", ...
  std::string at, by;
  bool held = false;
  Length now;   // what is left of a piece
  Length kerf;  // what the cuts of this line cost besides
};

// What a printed record stands on (schema/api/records.sql): its own digest, the digest of what it says, the chains of happenings
// as they ended then. Empty: the record was not kept.
struct RecordProof {
  std::string digest, content;
  std::string ends;             // JSON: [chain, id, seq, hash] each
  std::int64_t happenings = 0;  // how many the chains hold
};

// api.order_heats: which heats went into an order, and what was looked at to say so.
struct OrderHeats {
  struct Heat {
    std::string mill, heat, identity;
    int cut_pieces = 0;
    std::vector<std::string> pieces;  // the tags they were cut from
  };
  bool one_heat = false;
  std::string statement, looked_at;
  std::vector<Heat> heats;
  std::vector<std::string> before;  // "A000001D, no heat": what some of it was before it went on under another tag
  std::vector<std::string> wrong;   // what was changed behind the book's back
};

// The trace record of an order, a heat or a piece.
struct TraceRecord {
  std::string kind;     // "order", "heat", "piece"
  std::string subject;  // its name
  std::string asked_at, asked_by;
  std::string digest;           // the book's digest at that moment, hex
  std::int64_t happenings = 0;  // how many happenings the digest covers
  std::vector<TraceLine> lines;
  std::vector<HeatBalance> balances;
  std::optional<OrderHeats> heats;  // of an order
  RecordProof proof;
};

}  // namespace heatkeep
