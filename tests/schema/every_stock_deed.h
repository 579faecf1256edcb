// Every deed of the stock side once, by the role whose work it is, in a shop that holds nothing yet; each must go through.
#pragma once

#include "tests/schema/small_shop.h"

namespace heatkeep {

// One deed whose body is a JSON object.
Json DoBody(Connection& who, const std::string& deed, const Json& body);

// A second site "van" (tags V) with a place VAN-1 there, a place OUT of kind outside and a rack B3.
void AddVanAndRack(SmallShop& shop);

// A small PNG, base64: eight bytes of signature and a few more.
std::string SmallPng();

void DoEveryStockDeed(SmallShop& shop);

}  // namespace heatkeep
