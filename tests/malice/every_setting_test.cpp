// Every setting that a person may turn in a session of their own, turned: the deeds do what they did.
#include "tests/malice/wild.h"
#include "tests/schema/every_stock_deed.h"

namespace heatkeep {
namespace {

// Those that only say how long a session waits or what the server writes down of it, or that make it refuse all writing.
constexpr const char* kOthers = R"sql(
  select name, case vartype when 'bool' then case setting when 'on' then 'off' else 'on' end else v end as value
    from pg_settings left join lateral unnest(enumvals) v on vartype = 'enum' and v <> setting
    where context = 'user' and vartype in ('bool', 'enum') and (vartype = 'bool' or v is not null)
      and name not in ('default_transaction_read_only', 'transaction_read_only', 'transaction_deferrable', 'default_transaction_isolation', 'transaction_isolation', 'exit_on_error', 'log_min_error_statement',
        'client_min_messages', 'zero_damaged_pages')
    order by name, value)sql";

struct Settings : ShopTest {
  // The guards of a deed that lean on reading texts: a day that is none, a setting that is no amount, a picture, a tag.
  void ExpectAsEver(Connection& all, const std::string& tag, const std::string& setting) {
    const auto code = [&](const std::string& deed, const Json& body) { return Code([&] { Do(all, deed, {body.dump()}); }); };
    EXPECT_EQ(code("record_damage", {{"tag", tag}, {"kind", "bent"}, {"usable", true}, {"words", " Infinity "}}), "HK026") << setting;
    EXPECT_EQ(code("record_damage", {{"tag", tag}, {"kind", "bent"}, {"usable", true}, {"words", "A\u202e73"}}), "HK026") << setting;
    EXPECT_EQ(code("set_rules", {{"settings", {{"lift_limit_g", "1x5"}}}}), "HK026") << setting;
    EXPECT_EQ(code("define_limits", Json::array({{{"grade", "42CrMo4"}, {"element", "C\\+Mn"}, {"most", 1}, {"source", "s"}}})), "HK026")
        << setting;
    EXPECT_EQ(code("add_photo", {{"tag", tag}, {"kind", "mark"}, {"file_base64", "R0lGODlh"}}), "HK026") << setting;
    EXPECT_EQ(code("add_photo", {{"tag", tag}, {"kind", "mark"}, {"file_base64", SmallPng()}}), "") << setting;
    EXPECT_EQ(Code([&] { Do(all, "put_away", {tag, "B1-1"}); }), "") << setting;
    EXPECT_EQ(Code([&] { Do(all, "put_away", {"A999999X", "B1-1"}); }), "HK024") << setting;
  }
};

TEST_F(Settings, EachTurnedAloneChangesNoAnswer) {
  const auto tags = shop.ReceiveCertified({.heat = "T1", .count = 1});
  int turned = 0;
  for (const Row row : shop.admin.Execute(kOthers)) {
    Connection all = shop.book.As("all");  // deeds are read anew, under this setting
    const std::string setting = row.Text("name") + " = " + row.Text("value");
    ASSERT_EQ(Code([&] { all.Execute("select set_config($1, $2, false)", {row.Text("name"), row.Text("value")}); }), "") << setting;
    ExpectAsEver(all, tags.at(0), setting);
    ++turned;
  }
  EXPECT_GT(turned, 60);
}

TEST_F(Settings, AllTurnedAtOnceEveryStockDeedIsDoneAndTheBookIsWhole) {
  for (Connection* person : {&shop.clerk, &shop.planner, &shop.saw, &shop.quality, &shop.owner}) {
    for (const Row row : shop.admin.Execute(kOthers)) {
      const std::string name = row.Text("name");
      if (name == "bytea_output" || name == "standard_conforming_strings" || name == "debug_deadlocks" || name.starts_with("enable_"))
        continue;
      person->Execute("select set_config($1, $2, false)", {name, row.Text("value")});
    }
    person->ExecuteScript(
        "set datestyle = 'SQL, DMY'; set timezone = 'Pacific/Kiritimati'; set intervalstyle = 'sql_standard'; set extra_float_digits = -15; set bytea_output = 'escape'");
    person->ExecuteScript(
        "set enable_seqscan = off; set enable_indexscan = off; set enable_bitmapscan = off; set enable_sort = off; set enable_hashjoin = off");
    person->ExecuteScript("set standard_conforming_strings = off");
  }
  DoEveryStockDeed(shop);
  EXPECT_EQ(shop.Broken(), std::vector<std::string>());
}

// What the deeds write down of themselves for the ledger is a setting too, and anybody may set it.
TEST_F(Settings, OurOwnSetByAPersonSayNothing) {
  const auto tags = shop.ReceiveCertified({.heat = "T2", .count = 2});
  shop.AddLine({.order = "T", .condition = "+QT"});
  for (const char* name : {"deed", "request", "true_at", "device", "reason", "told_later"})
    shop.saw.Execute("select set_config('heatkeep.' || $1, $2, false)", {name, NewRequest().text});
  shop.admin.ExecuteScript("update pg_database set datname = datname where false");
  shop.Fetch(tags.at(0), {{.count = 1, .order = "T"}});
  // B1-2 takes 1 m at most; what a saw off the network tells is booked where it lies, this is not.
  EXPECT_NE(Code([&] { shop.Record(tags.at(0), {Trim(), Good(1, 290, "10", "T")}, DropLeft(5696, "B1-2")); }), "");
  EXPECT_EQ(shop.Number("select count(*) as n from book.happening where deed like '%-%' or device like '%-%'"), 0);
}

// A text that is read when it first runs is read as the session says: with standard_conforming_strings off a backslash is gone, and the
// plan stays. So there is none.
TEST_F(Settings, NoTextThatIsReadWhenItRunsHoldsABackslash) {
  std::string found;
  for (
      const Row row : shop.admin.Execute(
          "select oid::regprocedure::text as f from pg_proc where pronamespace in ('api'::regnamespace, 'guard'::regnamespace) and prosqlbody is null"
          " and regexp_replace(prosrc, '--[^\\n]*', '', 'g') like '%' || chr(92) || chr(92) || '%'"))
    found += row.Text("f") + " ";
  EXPECT_EQ(found, "");
}

}  // namespace
}  // namespace heatkeep
