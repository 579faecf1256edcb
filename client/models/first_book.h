// What a program that opens a desk can do for a first run, given to the desk by its main: models knows no clusters and no commands.
#pragma once

#include <QString>
#include <functional>

namespace heatkeep {

struct FirstBook {
  using Tell = std::function<void(int done, int all, const QString& words)>;

  bool own = false;   // the desk works on a private book
  bool demo = false;  // and it is the demo's
  // Makes the demo shop in a book of its own, or does nothing where that is done; takes about a minute, on any thread. Throws
  // std::exception that says what failed; called again it goes on where it was.
  std::function<void(const Tell& tell)> make_demo = {};
  // On the window's thread: the desk closes and opens again, on the demo's book or on the private one.
  std::function<void(bool demo)> open = {};
};

}  // namespace heatkeep
