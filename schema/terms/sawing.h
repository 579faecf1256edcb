// What a saw cut takes: time, down-feed, chips and money, from the section, the band's kerf and a cutting rate.
//
//   time of n cuts      t = n A / q            A the section's area, q the cutting rate (area a minute)
//   down-feed           f = q / b              b the contact length: how much of the band is in the metal
//   chips of n cuts     m = n A k rho          k the kerf
//   feeding strokes     ceil(l / s)            s the stroke of the length stop; a long piece costs ONE kerf
//
// The contact length changes with depth, but area = height x mean contact for every shape, so that a cut fed at
// q / mean takes exactly t; where the band is widest in the metal the same rate allows only q / widest.
//   round d      height d   widest d                 hex s (on a flat)  height s   widest 2 s / sqrt 3 (across corners)
//   square a     height a   widest a                 flat b x t (lying) height t   widest b
//   tube D x t   height D   widest 2 sqrt(t (D - t)) (just above the bore)
//   angle, box, channel, beam, lying: height the smaller side, widest the larger (a leg, wall or web along the band)
// Rates that ship are common practice without a source; the saw's own manual goes before them.
#pragma once

#include <chrono>
#include <cstdint>

#include "schema/terms/money.h"
#include "schema/terms/section.h"

namespace heatkeep {

// Whole square millimetres a minute: 40 cm2/min = 4 000. Above 0.
struct CuttingRate {
  std::int64_t mm2_per_min = 0;
};

// Whole micrometres a minute: 1.5 mm/min = 1 500.
struct FeedRate {
  std::int64_t um_per_min = 0;
  constexpr auto operator<=>(const FeedRate&) const = default;
};

struct Contact {
  Length height;  // how far the band comes down
  Length widest, mean;
};
Contact ContactOf(const Section& section);

// Rounded once, halves away from zero. Throw std::invalid_argument for a rate of 0 or less.
std::chrono::milliseconds CutTime(Area area, std::int64_t cuts, CuttingRate rate);
FeedRate DownFeed(CuttingRate rate, Length contact);

Mass ChipMass(Area area, std::int64_t cuts, Length kerf, Density density);
Money TimeCost(std::chrono::milliseconds time, Money per_hour);

// How often the stop must feed for one piece: 1 where the stroke is not known (0).
std::int64_t FeedStrokes(Length piece, Length stop_stroke);

}  // namespace heatkeep
