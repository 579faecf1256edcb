#include "tests/walk/walker.h"

#include <algorithm>
#include <array>
#include <iostream>

namespace heatkeep {
namespace {

constexpr std::array<const char*, 6> kPeople{"clerk", "planner", "saw", "quality", "owner", "all"};

std::string Shown(const std::vector<Argument>& arguments) {
  std::string text;
  for (const Argument& a : arguments) text += (text.empty() ? "" : " | ") + (a ? a->substr(0, 1500) : "null");
  return text;
}

Json WithoutAgain(Json answer) {
  if (answer.is_object()) answer.erase("again");
  return answer;
}

}  // namespace

void Add(Tally& to, const Tally& more) {
  for (const auto& [deed, codes] : more)
    for (const auto& [code, n] : codes) to[deed][code] += n;
}

void Print(std::ostream& out, const Tally& tally) {
  for (const auto& [deed, codes] : tally) {
    out << "  " << deed << ": ";
    const auto done = codes.find("");
    out << (done == codes.end() ? 0 : done->second) << " done";
    for (const auto& [code, n] : codes)
      if (!code.empty()) out << ", " << n << ' ' << code;
    out << '\n';
  }
}

Walker::Walker(const TestBook& book, std::uint64_t seed) : seed_(seed), dice_(seed), admin_(book.Admin()) {
  for (const char* who : kPeople) people_.emplace(who, book.As(who));
  for (const Row row : admin_.Execute(R"sql(
      select p.proname::text as name, coalesce((select string_agg(t::regtype::text, ',' order by n) from unnest(p.proargtypes) with ordinality a (t, n)), '') as types,
          (select string_agg(w, ',') from unnest(string_to_array($1, ',')) w where has_function_privilege('test_' || w, p.oid, 'execute')
            and has_schema_privilege('test_' || w, 'api', 'usage')) as may
        from pg_proc p where pronamespace = 'api'::regnamespace)sql",
                                      {"clerk,planner,saw,quality,owner,all"})) {
    const auto words = [](const std::string& text) {
      std::vector<std::string> list;
      for (std::size_t from = 0; !text.empty() && from <= text.size();) {
        const std::size_t to = std::min(text.find(',', from), text.size());
        list.push_back(text.substr(from, to - from));
        from = to + 1;
      }
      return list;
    };
    Function& f = functions_[row.Text("name")];
    f.types = words(row.Text("types"));
    f.request = !f.types.empty() && f.types[0] == "uuid";
    for (std::string& who : words(row.OptionalText("may").value_or(""))) f.may.insert(who);
  }
  for (const auto& moves : {DoorMoves(), RackMoves(), PlanMoves(), SawMoves(), QualityMoves(), ShopMoves()})
    for (const Move& move : moves) {
      moves_.push_back(move);
      weights_ += move.weight;
    }
  admin_.ExecuteScript(WordsSql());
  admin_.Execute("select setseed($1::float8)", {std::to_string(static_cast<double>(seed % 1000) / 1000)});
}

std::vector<std::string> Walker::Unmatched() const {
  std::set<std::string> names;
  std::vector<std::string> unmatched;
  for (const Move& move : moves_) {
    names.insert(move.deed);
    if (!functions_.contains(move.deed)) unmatched.push_back(std::string("no function for the move ") + move.deed);
  }
  for (const auto& [name, function] : functions_)
    if (!names.contains(name)) unmatched.push_back("no move for the function " + name);
  return unmatched;
}

std::vector<Argument> Walker::Draw(const Move& move, const Function& function) {
  std::vector<Argument> arguments;
  if (*move.pick != '\0') {
    const std::unique_ptr<PGresult, decltype(&PQclear)> drawn(PQexec(admin_.handle(), move.pick), PQclear);
    if (PQresultStatus(drawn.get()) != PGRES_TUPLES_OK)
      failures_.push_back(std::string("the pick of ") + move.deed + ": " + PQresultErrorMessage(drawn.get()));
    for (int i = 0; PQntuples(drawn.get()) > 0 && i < PQnfields(drawn.get()); ++i)
      arguments.push_back(PQgetisnull(drawn.get(), 0, i) ? Argument() : Argument(PQgetvalue(drawn.get(), 0, i)));
  }
  for (std::size_t at = arguments.size() + (function.request ? 1 : 0); at < function.types.size(); ++at)
    arguments.push_back(function.types[at].starts_with("timestamp") && Chance(15) ? Argument("2026-02-03 05:00:00+01") : Argument());
  return arguments;
}

// "" when it was done, else the code; "HK... answered" for a refusal in the answer.
std::string Walker::Try(const std::string& deed, const std::string& who, const std::vector<Argument>& arguments, Json* answer,
                        std::string* words) {
  const bool one = functions_.at(deed).request;
  std::string sql = "select " + std::string(one ? "(api." : "count(*) as n, max(x::text) as a from api.") + deed + "(";
  std::vector<Param> params;
  for (const Argument& a : arguments) {
    params.push_back(a);
    sql += (params.size() > 1 ? ", $" : "$") + std::to_string(params.size());
  }
  sql += one ? "))::text as a" : ") x";
  try {
    const std::string text = people_.at(who).Execute(sql, params).Only().OptionalText("a").value_or("null");
    if (!one) return "";
    *answer = Json::parse(text);
    if (!answer->is_object()) return "no object: " + text;
    if (answer->contains("refused")) told_.insert(answer->at("words").get<std::string>());
    return answer->contains("refused") ? answer->at("refused").get<std::string>() + " answered" : "";
  } catch (const DbError& error) {
    if (error.sqlstate.starts_with("HK")) told_.insert({error.message, error.detail, error.hint});
    *words = error.message + (error.constraint.empty() ? "" : " [" + error.constraint + "]") + " " + error.detail;
    return error.sqlstate.empty() ? "no code" : error.sqlstate;
  }
}

// The book is verified now and then, never by the way: that reads all of it.
void Walker::Verify(int number) {
  for (
      const Row row : people_.at("owner").Execute(
          "select \"check\" || ': ' || detail as w from (select * from api.verify_book() union all select * from api.verify_new()) v where not ok and \"check\" <> 'the server keeps what it says'"))
    failures_.push_back("seed " + std::to_string(seed_) + " step " + std::to_string(number) + ": the book is not whole: " + row.Text("w"));
  ++tally_["verify_book"][""];
}

void Walker::Step(int number) {
  const Move* move = nullptr;
  std::vector<Argument> arguments;
  do {  // nothing to do it with: mostly something else is done
    int at = static_cast<int>(dice_() % static_cast<std::uint64_t>(weights_));
    for (move = moves_.data(); (at -= move->weight) >= 0; ++move) continue;
    arguments = Draw(*move, functions_.at(move->deed));
  } while (*move->pick != '\0' && !arguments.empty() && !arguments[0] && Chance(85));
  const Function& function = functions_.at(move->deed);
  std::string deed = move->deed, who = kPeople[dice_() % kPeople.size()], expected;
  if (!Chance(12)) who = *std::next(function.may.begin(), static_cast<std::ptrdiff_t>(dice_() % function.may.size()));
  if (deed == "verify_book" && function.may.contains(who)) return;  // Walk does
  const int spoilt = Chance(35) ? 1 + static_cast<int>(dice_() % 2) : 0;
  const std::string other = spoilt == 0 || Chance(50)
      ? "A000001"
      : admin_.Execute("select coalesce(max(tag), 'A1') as t from (select tag from w_piece order by random() limit 1) x").Only().Text("t");
  const std::size_t first = function.request ? 1 : 0;
  for (int times = spoilt; times > 0 && !arguments.empty(); --times) {
    const std::size_t which = dice_() % arguments.size();
    arguments[which] = Spoil(dice_, function.types[which + first], arguments[which], other);
  }
  std::optional<Done> before;
  if (function.request) {
    arguments.insert(arguments.begin(), Chance(1) ? Argument() : Argument(NewRequest().text));
    if (!done_.empty() && Chance(8)) {
      before = done_[dice_() % done_.size()];
      if (Chance(60)) {  // the very same deed again
        deed = before->deed;
        who = before->who;
        arguments = before->arguments;
      } else {
        arguments[0] = before->arguments[0];
        if (deed != before->deed || who != before->who || arguments != before->arguments) {  // else it is the very same after all
          before.reset();
          expected = "HK012";
        }
      }
    }
  }
  Json answer;
  std::string words;
  const std::string code = Try(deed, who, arguments, &answer, &words);
  const bool may = functions_.at(deed).may.contains(who);
  ++tally_[deed][code];
  std::string wrong;
  if (!may != (code == "42501")) {
    wrong = may ? "may, and was forbidden" : "may not, and was not forbidden";
  } else if (code == "HK014" || (!code.empty() && code != "42501" && !code.starts_with("HK"))) {
    wrong = "refused in words that are not ours";
  } else if (before && (!code.empty() && !code.ends_with("answered"))) {
    wrong = "the same deed again was refused";
  } else if (before && (answer.value("again", false) != true || WithoutAgain(answer) != WithoutAgain(before->answer))) {
    wrong = "the same deed again answered otherwise than " + before->answer.dump();
  } else if (!expected.empty() && code.empty()) {
    wrong = "a request number was used for two deeds";
  }
  if (!wrong.empty())
    failures_.push_back("seed " + std::to_string(seed_) + " step " + std::to_string(number) + ": " + deed + " by " + who + ": " + wrong +
                        ": " + code + " " + words + "\n    (" + Shown(arguments) + ")");
  if (functions_.at(deed).request && !before && (code.empty() || code.ends_with("answered")))
    done_.push_back({deed, who, arguments, answer});
}

void Walker::Walk(int steps) {
  for (int i = 0; i < steps && failures_.size() < 5; ++i) {
    if (i % 40 == 0) admin_.ExecuteScript(LookSql());
    if (i % std::max(600, steps / 6) == 500) Verify(i);
    if (i > 0 && i % 5000 == 0) std::cout << "seed " << seed_ << ": " << i << " of " << steps << " steps\n" << std::flush;
    Step(i);
  }
}

}  // namespace heatkeep
