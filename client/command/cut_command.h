// What really happens at the saw, booked. Exit: 0 booked, 1 something was refused (the rest is booked and said), 2 bad
// input, 4 no book.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "client/command/with_book.h"

namespace heatkeep::command {

// heatkeep pull TAG --saw S --plan N --heat-read LAST4: fetches a promised piece to the saw. A refusal says why.
int RunPull(const BookCall& call, const std::string& tag, const std::string& saw, std::int64_t plan, const std::string& heat_read);

struct CutOptions {
  std::int64_t plan = 0;
  std::string tag;                      // only this piece of the plan, by itself; empty: all that are not done
  int bundle = 0;                       // only this bundle of the plan, `tag` being the bar of it that differs; 0: all
  std::vector<std::string> done;        // "ORDER/LINE=COUNT": good pieces where they differ from the plan
  std::vector<std::string> heats_read;  // "TAG=LAST4": the heat as read from the metal, for pieces not pulled yet
  std::string measured;                 // start length as measured at the saw
  std::string measured_with;            // the tape or readout; empty: not said
  std::string rest;                     // the rest as measured; empty: by arithmetic
  std::string place;                    // where drops are put; empty: where the piece came from
  bool last_uncut = false;              // the last piece is left as it is: the sheet's offer is taken
  bool scrap = false;                   // the rest is scrapped whatever the plan says
  std::string reason;                   // why it differs
  bool json = false;
};

// heatkeep cut record --plan N ...: pulls what is not pulled yet and books every piece as it went. Each piece, or each bundle of
// bars cut together, is one deed, and is said when it is booked; run again after a crash it goes on where it stopped. Pieces that are no
// longer promised to the plan (held, quarantined, cancelled) are named and not cut.
int RunCutRecord(const BookCall& call, const CutOptions& options);

// lines: "ORDER/LINE=COUNT" or, where pieces of several heats leave together, "ORDER/LINE=COUNT=HEAT,HEAT".
struct ShipOptions {
  std::string note, customer, true_at, device;
  std::vector<std::string> lines;
};

// heatkeep ship --note N --customer C LINES...
int RunShip(const BookCall& call, const ShipOptions& options);

}  // namespace heatkeep::command
