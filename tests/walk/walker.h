// A seeded random walk of deeds by all roles in one book. Every step: a function of schema api, a login (mostly one
// that may), arguments drawn from what the book holds, often spoilt, sometimes a request number that was used before.
// A step may be done, or refused in our own codes (HK...), or for want of a right (42501, exactly where the catalogue
// says so). Anything else is a failure that names seed, step, deed and arguments.
#pragma once

#include <map>
#include <optional>
#include <ostream>
#include <set>

#include "tests/schema/small_shop.h"
#include "tests/walk/moves.h"
#include "tests/walk/spoil.h"

namespace heatkeep {

// Per deed: how often done (""), and refused by each code. "HK042 answered": refused in an answer, and logged.
using Tally = std::map<std::string, std::map<std::string, int>>;

void Add(Tally& to, const Tally& more);
void Print(std::ostream& out, const Tally& tally);

class Walker {
 public:
  Walker(const TestBook& book, std::uint64_t seed);

  void Walk(int steps);  // stops at the fifth failure

  const Tally& tally() const { return tally_; }
  const std::vector<std::string>& failures() const { return failures_; }
  const std::set<std::string>& told() const { return told_; }  // every word of a refusal
  // Functions of schema api that no move is for, and moves that no function is there for.
  std::vector<std::string> Unmatched() const;

 private:
  struct Function {
    std::vector<std::string> types;  // of its arguments, the request number too
    bool request = false;
    std::set<std::string> may;  // logins
  };
  struct Done {
    std::string deed, who;
    std::vector<Argument> arguments;
    Json answer;
  };

  void Step(int number);
  void Verify(int number);
  std::vector<Argument> Draw(const Move& move, const Function& function);
  std::string Try(const std::string& deed, const std::string& who, const std::vector<Argument>& arguments, Json* answer,
                  std::string* words);
  bool Chance(int in_hundred) { return static_cast<int>(dice_() % 100) < in_hundred; }

  std::uint64_t seed_;
  Dice dice_;
  Connection admin_;
  std::map<std::string, Connection> people_;
  std::map<std::string, Function> functions_;
  std::vector<Move> moves_;
  int weights_ = 0;
  std::vector<Done> done_;
  Tally tally_;
  std::vector<std::string> failures_;
  std::set<std::string> told_;
};

}  // namespace heatkeep
