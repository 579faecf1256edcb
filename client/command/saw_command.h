// What the saws are and what cutting takes: bands and wear, rates, time and chips of a plan, minutes a day.
// Exit: 0 said, 1 refused, 2 bad input, 4 no book. Rates that ship are common practice without a source and say so.
#pragma once

#include <cstdint>
#include <nlohmann/json.hpp>
#include <string>

#include "client/command/with_book.h"

namespace heatkeep::command {

int RunSawList(const BookCall& call, bool json);
int RunSawRates(const BookCall& call, bool json);

// Of every live plan what is not cut yet, by saw and due day.
int RunSawLoad(const BookCall& call, bool json);

// A plan's cuts; `rate` in cm2 a minute typed for this job, or empty.
int RunSawTime(const BookCall& call, std::int64_t plan, const std::string& rate, bool json);

struct SawEstimate {
  std::string section, rate, kerf, per_hour, length, stop;
  std::int64_t cuts = 1, bars = 1;  // bars cut together by every cut, lying side by side
};
int RunSawEstimate(const BookCall& call, const SawEstimate& estimate, bool json);  // without a book

// The answer of a deed in words.
void SaySawDeed(std::ostream& out, const std::string& name, const nlohmann::json& answer);

}  // namespace heatkeep::command
