// heatkeep shop set FILE: the shop as its owner describes it, from a JSON file: whom it deals with, sites, places, saws,
// settings, prices, keep lengths, cutting rates, and which grade may stand in for which.
//
//   {"settings": {"lift_limit_g": 25000}, "sites": [{"site", "letter", "offline_letter"}],
//    "parties": [{"name", "mill", "supplier", "customer"}],
//    "places": [{"place", "site", "kind", "bay", "level", "walk", "max_length": "6.5 m", "max_mass": "4000 kg"}],
//    "saws": [{"saw", "place", "max_section": "260 mm", "band", "kerf": "1.8 mm", "trim", "grip", "grip_bundle"}],
//    "rates": [{"family", "cm2_per_min"}], "prices": [{"grade", "section", "per_kg": "1.60", "scrap_per_kg", "from"}],
//    "keep": [{"grade", "section", "keep": "300 mm", "from"}], "standins": [{"asked", "offered", "reason"}],
//    "section_standins": [{"asked": "round 80", "offered": "round 85", "reason"}]}
//
// Everything is applied or nothing; what is there already stays. A wrong value is named by its path in the file.
#pragma once

#include <string>

#include "client/command/with_book.h"

namespace heatkeep::command {

int RunShopSet(const BookCall& call, const std::string& file);

// The stand-ins of both kinds alone, which quality signs (`heatkeep shop sign FILE`).
int RunShopSign(const BookCall& call, const std::string& file);

}  // namespace heatkeep::command
