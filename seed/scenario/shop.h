// The shop itself: settings, people, places, saws, rates, prices, keep lengths, stand-ins.
#pragma once

#include <string>

namespace heatkeep::scenario {

std::string shop_file();    // shop.json
std::string people_file();  // people.csv

}  // namespace heatkeep::scenario
