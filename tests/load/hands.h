// One connection at work: a person of one role, really logged in, who looks at the views and does the deeds of that role, one after the
// other without a pause, and writes down what was acknowledged.
#pragma once

#include <chrono>
#include <functional>
#include <random>

#include "tests/fixture/test_book.h"
#include "tests/load/journal.h"

namespace heatkeep {

class Hands {
 public:
  Hands(const TestBook& book, std::string who, int number);

  // One deed: a fresh request number and these arguments after it. Now and then it is asked again under the same number, as after a lost
  // answer; that must answer the same. Null when it was refused.
  Json Do(const std::string& deed, const std::vector<Param>& params,
          const std::function<std::map<std::string, std::int64_t>(const Json&)>& rows = {});
  Json DoBody(const std::string& deed, const Json& body, const std::function<std::map<std::string, std::int64_t>(const Json&)>& rows = {}) {
    return Do(deed, {body.dump()}, rows);
  }
  Result See(const std::string& sql, const std::vector<Param>& params = {}) { return session_.Execute(sql, params); }

  int Dice(int least, int most) { return std::uniform_int_distribution<int>(least, most)(random_); }
  std::string Word(const std::string& begin) { return begin + std::to_string(number_) + "-" + std::to_string(++words_); }
  const std::string& who() const { return who_; }
  Journal journal;

 private:
  Json Ask(const std::string& deed, const RequestNumber& request, const std::vector<Param>& params);

  std::string who_;
  int number_, words_ = 0;
  Connection session_;
  std::mt19937 random_;
};

// What a role does next; one deed, or a few that belong together.
void WorkAtTheDoor(Hands& hands);
void WorkAtThePlan(Hands& hands);
void WorkAtTheSaw(Hands& hands);
void WorkOfQuality(Hands& hands);
void WorkAtTheCount(Hands& hands);
void WorkAtTheRamp(Hands& hands);  // shipping, selling, scrapping

}  // namespace heatkeep
