#include "tests/load/hands.h"

namespace heatkeep {
namespace {

Json WithoutAgain(Json answer) {
  answer.erase("again");
  return answer;
}

}  // namespace

Hands::Hands(const TestBook& book, std::string who, int number)
    : who_(std::move(who)), number_(number), session_(book.As(who_)), random_(static_cast<unsigned>(number)) {}

Json Hands::Ask(const std::string& deed, const RequestNumber& request, const std::vector<Param>& params) {
  std::vector<Param> all{request.text};
  std::string marks = "$1";
  for (const Param& p : params) {
    all.push_back(p);
    marks += ", $" + std::to_string(all.size());
  }
  return Json::parse(session_.Execute("select api." + deed + "(" + marks + ")::text as answer", all).Only().Text("answer"));
}

Json Hands::Do(const std::string& deed, const std::vector<Param>& params,
               const std::function<std::map<std::string, std::int64_t>(const Json&)>& rows) {
  const RequestNumber request = NewRequest();
  const auto start = std::chrono::steady_clock::now();
  try {
    const Json answer = Ask(deed, request, params);
    journal.milliseconds.push_back(std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count());
    const bool refused = answer.contains("refused") || answer.contains("taken");
    journal.done.push_back({who_, deed, request, answer, rows && !refused ? rows(answer) : std::map<std::string, std::int64_t>{}});
    if (refused) ++journal.refused[answer.value("refused", "HK409") + " answered"];
    if (Dice(1, 30) == 1) {
      ++journal.repeated;
      if (const Json again = Ask(deed, request, params); WithoutAgain(again) != answer)
        journal.wrong.push_back(deed + " asked again answered " + again.dump() + ", not " + answer.dump());
    }
    return refused ? Json() : answer;
  } catch (const DbError& error) {
    journal.milliseconds.push_back(std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count());
    if (error.sqlstate.starts_with("HK") && error.sqlstate != "HK014") ++journal.refused[error.sqlstate];
    else journal.wrong.push_back(deed + " by " + who_ + ": " + error.sqlstate + " " + error.message + " " + error.detail);
    return {};
  }
}

}  // namespace heatkeep
