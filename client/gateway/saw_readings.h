// What people look at of the saws: bands and wear, rates, and the cuts that plans mean to make. Throws DbError.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "client/gateway/connection.h"
#include "schema/terms/length.h"
#include "schema/terms/money.h"
#include "schema/terms/sawing.h"

namespace heatkeep {

struct SawRow {
  std::string saw, band, fitted_from;
  Length kerf, grip, grip_bundled, trim, widest, stop_stroke;  // stop_stroke 0: not known
  int bundle_bars = 0;                                         // bars at a time at most; 0: not known
  std::optional<Money> per_hour;
  std::int64_t cuts = 0;  // strokes since the band was fitted; one through bars cut together counts once
  std::int64_t area_mm2 = 0;
  std::int64_t out_of_square = 0, lately = 0;  // rejects out of square, and among the last 20 cuts
};
std::vector<SawRow> ReadSaws(Connection& connection);

// The number of the last deed of this device that was told after it was done off the network; 0: none.
std::int64_t ReadLastKept(Connection& connection, const std::string& device);
// A saw that was handed over and is not taken yet.
struct HandoverRow {
  std::string tag, words, given_by;  // tag: what is in the vice; empty: nothing
};
std::optional<HandoverRow> ReadOpenHandover(Connection& connection, const std::string& saw);

// Equal cuts that a plan means to make; `what` is "piece" or "trim".
struct SawingRow {
  std::int64_t plan = 0;
  std::string state, saw, what, order, line, due, section, family, rate_source;
  bool open = false;  // not cut yet
  std::int64_t count = 0;
  int bars = 1, bundle_no = 0;  // cut together with it, itself included; 0: alone
  bool leads = true;            // its strokes are the saw's; of bars cut together only one row leads
  Length set, kerf, stop_stroke;
  Area area;
  Density density;
  std::optional<CuttingRate> rate;
  std::optional<Money> per_hour;
};
// Of one plan, or of all live plans (0).
std::vector<SawingRow> ReadSawing(Connection& connection, std::int64_t plan);

struct RateRow {
  std::string saw, family, source;  // saw empty: every saw of the shop
  CuttingRate rate;
  std::int64_t low_cm2 = 0, high_cm2 = 0;  // of those that ship
};
std::vector<RateRow> ReadRates(Connection& connection);

}  // namespace heatkeep
