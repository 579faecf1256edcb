// What to buy for what is short: which bars, and how many, from the lengths a supplier sells.
//
// For every metal that is short (section, grade, condition, papers at least as strong as asked) the lines that are short
// are planned on as many bars of the offered lengths as wanted, by Allocate itself. With a price for every length the
// price is least; without prices the length bought is least, then what is lost of its worth, then bars and set-ups.
// A bar is a mill bar (no square end) under its group's rules; its measured length may be short of the offered one by the
// greatest doubt of the bars of its group that are there. Customer's own metal is not bought.
// A line that keeps to one heat and has pieces from a heat already can only be served by more of that heat: said so.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "client/allocator/plan.h"
#include "client/allocator/problem.h"

namespace heatkeep::allocator {

struct Offer {
  Length length;                   // > 0
  std::optional<FineMoney> price;  // of one bar; of all offers or of none
};

// 3, 6 and 12 m, 12 and 20 ft (3.6576 m, 6.096 m) without prices: common mill lengths, common practice, no source.
std::vector<Offer> MillLengths();

struct Bought {
  std::string section, grade, condition;
  PaperType papers = PaperType::None;  // at least
  std::string heat;                    // only this heat will do; empty: any
  Length length;
  int count = 0;
  std::optional<FineMoney> price;  // of all of them
};

struct LeftOver {
  Length length;
  LeftKind kind = LeftKind::None;
  int count = 0;
};

struct Purchase {
  std::vector<Bought> bars;  // nothing to buy: empty
  Length length;             // of all bars
  std::optional<FineMoney> money;
  std::vector<LeftOver> left;     // longest first
  std::vector<Short> not_served;  // lines of the problem that no offered length serves, and why
  bool proved = false;            // no purchase from these lengths is less (by price, or by length)
  std::string words;
};

// `plan` is a plan of `problem`. Throws std::invalid_argument for an offer <= 0, or prices for some offers only.
Purchase WhatToBuy(const Problem& problem, const Plan& plan, const std::vector<Offer>& offers, double seconds = 2);

}  // namespace heatkeep::allocator
