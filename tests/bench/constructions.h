// Seeded problems to measure with. Items are millimetres; the same on every machine.
//
// From memory, since the papers are not at hand: the ranges of Falkenauer 1996 (uniform, triplets), of Scholl, Klein
// and Juergens 1997 (sets 1 to 3, hard), of Martello and Toth 1990 (wide), of Schwerin and Waescher 1997 (narrow), of
// Waescher and Gau 1996 (few thousand to 10,000), full bins after Delorme, Iori and Martello 2016, and the generator CUTGEN1 of Gau and
// Waescher 1995 (EJOR 84, 572-579): Lehmer's s' = 16807 s mod (2^31 - 1); lengths uniform in [v1 L, v2 L], demands from the shares of m
// uniform numbers in m x dbar. The ranges are theirs as remembered; the instances are not the published ones.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "client/allocator/problem.h"

namespace heatkeep::bench {

// One bar length without kerf, trim and grip, as few bars as possible.
allocator::Problem SingleLength(int capacity, const std::vector<int>& items);
allocator::Problem Uniform(std::uint64_t seed, int n, int capacity, int least, int most);
allocator::Problem Triplets(std::uint64_t seed, int bins);  // of 1000, filled exactly by three of 250..490
// Items within `percent` of capacity / share.
allocator::Problem AroundMean(std::uint64_t seed, int n, int capacity, int share, int percent);
allocator::Problem FullBins(std::uint64_t seed, int bins, int capacity);  // of three cuts each, nothing to spare
allocator::Problem CutGen1(std::int64_t seed, int kinds, int capacity, double v1, double v2, int average_demand);

// One group of our own: drops of 300 mm to `longest_drop_mm` with one square end, each there once, and lines of
// 20..2500 mm wanted 1..60 times, both at 0.1 mm; bars without end; kerf 1.5..3 mm and grip 60..120 mm, drawn anew for
// every problem, trim 5 mm, keep 300 mm.
struct Rack {
  int longest_drop_mm = 2500;
  std::vector<int> bars_mm = {3000, 4000, 6000, 6100};
};
allocator::Problem Stockroom(std::uint64_t seed, int drops, int lines, const Rack& rack);
// So many groups with 10 drops each.
allocator::Problem ManyGroups(std::uint64_t seed, int groups, int lines);

// The same single-length problem as an assignment model (a 0-1 variable a bar, a count an item and bar) given to CBC.
struct Peer {
  bool proved = false;
  int bars = -1;
  double seconds = 0;
};
Peer CompactModel(const allocator::Problem& problem, int enough_bars, double seconds);

}  // namespace heatkeep::bench
