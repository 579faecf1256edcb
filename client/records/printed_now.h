// What a print of now is told: the server's time and the login.
#pragma once

#include "client/gateway/readings.h"
#include "reports/paper.h"

namespace heatkeep {

inline PrintOptions PrintedNow(Connection& connection) {
  PrintOptions print;
  print.printed_at = ReadServerTime(connection);
  print.author = connection.User();
  return print;
}

}  // namespace heatkeep
