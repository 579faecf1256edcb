// Every argument of every function of schema api, and every value inside the body of every deed, as nobody should give it: answered or
// refused cleanly, and whatever went through leaves a book that is whole.
#include <cstdlib>
#include <map>

#include "tests/malice/wild.h"
#include "tests/schema/every_stock_deed.h"
#include "tests/walk/moves.h"

namespace heatkeep {
namespace {

struct Function {
  std::string name;
  std::vector<std::string> types;
};

struct EveryParameter : ShopTest {
  EveryParameter() : all(shop.book.As("all")) {
    DoEveryStockDeed(shop);
    shop.ReceiveCertified({.heat = "W1", .count = 4});
    shop.AddLine({.order = "W"});
    for (
        const Row row : shop.admin.Execute(
            "select p.proname::text as name, array_to_json(array(select t::regtype::text from unnest(proargtypes) with ordinality a (t, n) order by n))::text as types"
            " from pg_proc p where pronamespace = 'api'::regnamespace order by proname"))
      functions.push_back({row.Text("name"), Json::parse(row.Text("types")).get<std::vector<std::string>>()});
  }

  // What the call was refused with; what went through is kept.
  std::string Call(const Function& f, const std::vector<std::optional<std::string>>& arguments) {
    std::string sql = "select count(*) from api." + f.name + "(";
    std::vector<Param> params;
    for (const auto& a : arguments) {
      params.push_back(a ? Param(*a) : Param(std::nullopt));
      sql += (params.size() > 1 ? ", $" : "$") + std::to_string(params.size()) + "::" + f.types[params.size() - 1];
    }
    const DbError error = Refusal([&] { all.Execute(sql + ")", params); });
    words = error.message;
    ++called;
    return error.sqlstate;
  }

  std::vector<std::optional<std::string>> Blank(const Function& f) {
    std::vector<std::optional<std::string>> arguments(f.types.size());
    if (!f.types.empty() && f.types[0] == "uuid") arguments[0] = NewRequest().text;
    return arguments;
  }

  Connection all;
  std::vector<Function> functions;
  std::string words;
  int called = 0;
};

TEST_F(EveryParameter, OfEveryFunctionAloneIsAnsweredOrRefusedCleanly) {
  for (const Function& f : functions) {
    for (std::size_t i = 0; i < f.types.size(); ++i) {
      for (const auto& value : WildValues(f.types[i])) {
        auto arguments = Blank(f);
        for (std::size_t other = 1; other < f.types.size(); ++other)
          if (f.types[other] == "text") arguments[other] = "A000001D";
        arguments[i] = value;
        const std::string code = Call(f, arguments);
        EXPECT_TRUE(IsClean(code)) << f.name << " argument " << i + 1 << " " << value.value_or("null").substr(0, 60) << ": " << code << " "
                                   << words;
      }
    }
  }
  EXPECT_GT(called, 1500);
}

// A body as a person would send it, each value of it in its turn replaced.
TEST_F(EveryParameter, InsideEveryBodyIsAnsweredOrRefusedCleanlyAndWhatCannotBeReadIsRefused) {
  std::map<std::string, Function> of;
  for (const Function& f : functions) of[f.name] = f;
  shop.admin.ExecuteScript(WordsSql());
  shop.admin.ExecuteScript(LookSql());
  shop.admin.Execute("select setseed(0.5)");
  int bodies = 0;
  const bool every_long =
      std::getenv("HEATKEEP_MALICE_LONG") != nullptr;  // the million characters in every place, not once a body; every kind of junk
  const auto attempt = [&](const Function& f, std::vector<std::optional<std::string>> arguments, const std::string& what,
                           bool must_be_refused) {
    if (f.types[0] == "uuid") arguments[0] = NewRequest().text;
    all.Execute("begin");
    std::string code = Call(f, arguments);
    if (code.empty()) code = Code([&] { all.Execute("set constraints all immediate"); });
    all.Execute("rollback");
    EXPECT_TRUE(IsClean(code) || code.starts_with("23")) << f.name << " " << what << ": " << code << " " << words;
    if (must_be_refused && f.types[0] == "uuid") {
      EXPECT_TRUE(code.starts_with("HK")) << f.name << " " << what << " was taken as it stands: " << code;
    }
  };
  for (const auto& moves : {DoorMoves(), RackMoves(), PlanMoves(), SawMoves(), QualityMoves(), ShopMoves()}) {
    for (const Move& move : moves) {
      const Function& f = of.at(move.deed);
      if (*move.pick == '\0' || f.types.empty()) continue;
      const std::unique_ptr<PGresult, decltype(&PQclear)> drawn(PQexec(shop.admin.handle(), move.pick), PQclear);
      ASSERT_EQ(PQresultStatus(drawn.get()), PGRES_TUPLES_OK) << move.deed << PQresultErrorMessage(drawn.get());
      auto arguments = Blank(f);
      const std::size_t first = f.types[0] == "uuid" ? 1 : 0;
      for (int i = 0; PQntuples(drawn.get()) > 0 && i < PQnfields(drawn.get()); ++i)
        if (PQgetisnull(drawn.get(), 0, i) == 0) arguments[static_cast<std::size_t>(i) + first] = PQgetvalue(drawn.get(), 0, i);
      for (std::size_t i = first; i < f.types.size(); ++i) {
        if (f.types[i] != "jsonb" || !arguments[i]) continue;
        const Json body = Json::parse(*arguments[i]);
        ++bodies;
        int leaves = 0;
        EachLeaf(body, [&](const Json::json_pointer& leaf) {
          const auto with = [&](const Json& value, const std::string& name, bool must_be_refused) {
            Json bent = body;
            bent[leaf] = value;
            auto with_it = arguments;
            with_it[i] = bent.dump();
            attempt(f, with_it, leaf.to_string() + " = " + name, must_be_refused);
          };
          const bool file = leaf.to_string().ends_with("file_base64");
          ++leaves;
          for (const WildText& wild : WildTexts())
            if (wild.text.size() < 10'000 || leaves == 1 || every_long) with(wild.text, wild.name, !wild.seen && !file);
          static const std::vector<Json> junk{nullptr, -1, 9'223'372'036'854'775'807, Json::array(), 0, 1.5e300, Json::object({{"a", 1}}),
                                              true,    ""};
          for (std::size_t k = 0; k < (every_long ? junk.size() : 4); ++k) with(junk[k], junk[k].dump(), false);
        });
      }
    }
  }
  EXPECT_GT(bodies, 40);
  EXPECT_GT(called, 3000);
}

TEST_F(EveryParameter, AZeroCharacterInsideABodyIsRefusedByTheTypeItself_22P05) {
  EXPECT_EQ(Code([&] {
              shop.clerk.Execute("select api.record_damage($1::uuid, $2::jsonb)", {NewRequest().text, R"({"tag": "A\u0000"})"});
            }),
            "22P05");
  EXPECT_EQ(Code([&] {
              shop.clerk.Execute("select api.record_damage($1::uuid, $2::jsonb)", {NewRequest().text, R"({"tag": "\ud800"})"});
            }),
            "22P02");
  EXPECT_EQ(Code([&] { shop.clerk.Execute("select api.look_up($1)", {std::string("A\xff\xfe")}); }), "22021") << "bytes that are no UTF-8";
}

}  // namespace
}  // namespace heatkeep
