#include "schema/terms/sawing.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

#include "schema/terms/wide.h"

namespace heatkeep {
namespace {

Length Rounded(long double nm) { return {std::llround(nm)}; }

void Need(CuttingRate rate) {
  if (rate.mm2_per_min <= 0) throw std::invalid_argument("a cutting rate is above 0");
}

std::int64_t Narrow(Wide n) { return static_cast<std::int64_t>(n); }

}  // namespace

Contact ContactOf(const Section& section) {
  Contact contact{section.first, section.first, {}};
  if (section.shape == Shape::Hex) contact.widest = Rounded(2.0L * static_cast<long double>(section.first.nm) / std::sqrt(3.0L));
  if (section.shape == Shape::Flat) contact.height = section.second;
  if (section.shape == Shape::Angle || section.shape == Shape::Box || section.named != nullptr) {
    contact.height = std::min(section.first, section.second);
    contact.widest = WidestOf(section);
  }
  if (section.shape == Shape::Tube) {
    const auto wall = static_cast<long double>(section.second.nm), outside = static_cast<long double>(section.first.nm);
    contact.widest = Rounded(2.0L * std::sqrt(wall * (outside - wall)));
  }
  contact.mean = {Narrow(DivideHalfAway(Wide{AreaOf(section).um2} * 1'000'000, contact.height.nm))};  // um2 = 1e6 nm2
  return contact;
}

std::chrono::milliseconds CutTime(Area area, std::int64_t cuts, CuttingRate rate) {
  Need(rate);
  return std::chrono::milliseconds(Narrow(DivideHalfAway(Wide{area.um2} * cuts * 60'000, Wide{rate.mm2_per_min} * 1'000'000)));
}

FeedRate DownFeed(CuttingRate rate, Length contact) {
  Need(rate);
  if (contact.nm <= 0) throw std::invalid_argument("a contact length is above 0");
  return {Narrow(DivideHalfAway(Wide{rate.mm2_per_min} * 1'000'000'000, contact.nm))};  // mm2/min over nm, in um/min
}

Mass ChipMass(Area area, std::int64_t cuts, Length kerf, Density density) {
  // um2 x nm x kg/m3 = 1e-12 x 1e-9 kg = 1e-18 g
  return {Narrow(DivideHalfAway(Wide{area.um2} * cuts * kerf.nm * density.kg_m3, Wide{1'000'000'000} * 1'000'000'000))};
}

Money TimeCost(std::chrono::milliseconds time, Money per_hour) {
  return {Narrow(DivideHalfAway(Wide{time.count()} * per_hour.cents, 3'600'000))};
}

std::int64_t FeedStrokes(Length piece, Length stop_stroke) {
  return stop_stroke.nm <= 0 ? 1 : (piece.nm + stop_stroke.nm - 1) / stop_stroke.nm;
}

}  // namespace heatkeep
