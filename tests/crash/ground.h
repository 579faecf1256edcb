// The sawing works on bad ground: its server runs with bad_ground.cpp loaded, so that a test can take away the room on its disk and set its
// clock. Once that server has ended, the program starts an ordinary one.
#pragma once

#include "tests/crash/sawing_works.h"

namespace heatkeep {

class OnBadGround : public SawingWorks {
 protected:
  OnBadGround();

  void Full(const std::string& what);  // "data" or "all" of its files cannot grow; "": there is room again
  void ClockOff(long seconds);         // the server's clock is so much ahead; below 0: behind

 private:
  std::filesystem::path ground_;
};

}  // namespace heatkeep
