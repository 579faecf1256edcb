// What a source can say, read from it: formats, chains, choices, lists; lengths and masses with their unit; and what is no sentence.
#include <gtest/gtest.h>

#include <map>

#include "client/phrases/phrase.h"

namespace heatkeep::phrases {
namespace {

using Said = std::map<std::string, std::string>;  // words, kinds of their holes

Said Of(const Drafts& drafts) {
  Said said;
  for (const std::string& draft : drafts) {
    const Phrase phrase = PhraseOf(draft);
    if (!phrase.english.empty()) said.emplace(phrase.english, phrase.kinds);
  }
  return said;
}

Said Sql(const std::string& source) { return Of(SqlSentences(source)); }
Said Cpp(const std::string& source, bool single_words = false) { return Of(CppSentences(source, single_words)); }

TEST(SqlSentences, TakeAFormatWithItsHolesAndAHint) {
  EXPECT_EQ(
      Sql("raise exception using errcode = 'HK042', message = format('%s is not promised to any plan', p.tag), hint = 'look at the rack again';"),
      (Said{{"%1 is not promised to any plan", "N"}, {"look at the rack again", ""}}));
}

TEST(SqlSentences, KeepTheUnitOfALengthAndAMassInTheHole) {
  EXPECT_EQ(Sql("v := format('%s takes up to %s mm, weighed %s kg', p.tag, trim_scale(n / 1e6::numeric), kg);"),
            (Said{{"%1 takes up to %2, weighed %3", "NLM"}}));
  EXPECT_EQ(Sql("v := format('a zone from %s to %s mm', trim_scale(a / 1e6), trim_scale(b / 1e6));"),
            (Said{{"a zone from %1 to %2", "lL"}}));
  EXPECT_EQ(Sql("v := format('the grip is %s nm', g);"), (Said{{"the grip is %1", "E"}}));
}

TEST(SqlSentences, TellWordsFromNamesByWhatAHoleHolds) {
  EXPECT_EQ(Sql("v := format('%s cannot be sold: %s', e.tag, guard.blocked_words(e.piece_id));"), (Said{{"%1 cannot be sold: %2", "NW"}}));
  EXPECT_EQ(Sql("v := format('%s is %s', e.tag, e.state);"), (Said{{"%1 is %2", "NW"}}));
}

TEST(SqlSentences, SayEveryBranchOfAChoiceAndEveryPartOfAChain) {
  EXPECT_EQ(Sql("return case when a then 'its papers are awaited' when b then 'held by ' || h.held_by end;"),
            (Said{{"held by %1", "W"}, {"its papers are awaited", ""}}));
  EXPECT_EQ(Sql("return 'no limit known: ' || string_agg(format('heat %s %s', heat, nothing), '; ');"),
            (Said{{"no limit known: %1", "W"}, {"heat %1 %2", "NN"}}));
}

TEST(SqlSentences, TakeAClauseThatMayBeMissingByItself) {
  EXPECT_EQ(Sql("return format('taken by saw %s', name) || coalesce(', order ' || c.order_no, '');"),
            (Said{{"taken by saw %1", "N"}, {"order %1", "N"}}));
}

TEST(SqlSentences, CountWhatStandsBehindANumber) {
  EXPECT_EQ(Sql("v := format('order %s has %s pieces open', no, n);"), (Said{{"order %1 has %2 pieces open", "NC"}}));
}

TEST(SqlSentences, LeaveOutKeysComparisonsPatternsCommentsAndStatements) {
  EXPECT_EQ(
      Sql("comment on table book.piece is 'one length of metal';\n-- 'not said at all'\nselect p ->> 'heat read', x from t where s = 'at saw' and y ~ '^a b$' and z @? '$[*] ? (@.c == \"good one\")';\n"
          "execute format('create trigger kept before delete on book.%I', t); v := interval '5 minutes';"),
      Said{});
}

TEST(SqlSentences, KnowTheWordsOfAnEnum) {
  EXPECT_EQ(Sql("create type book.piece_state as enum ('on rack', 'cut up');"), (Said{{"on rack", ""}, {"cut up", ""}}));
}

TEST(CppSentences, TakeAChainWithItsChoices) {
  EXPECT_EQ(Cpp("words += std::to_string(n) + (n == 1 ? \" piece\" : \" pieces\") + \" for \" + line.order;"),
            (Said{{"%1 piece for %2", "NN"}, {"%1 pieces for %2", "CN"}}));
  EXPECT_EQ(Cpp("return \"leaves \" + WriteMm(a.left) + (theirs ? \" mm\" : \" mm scrap\");"),
            (Said{{"leaves %1", "L"}, {"leaves %1 scrap", "L"}}));
  EXPECT_EQ(Cpp("throw BadText(Quoted(text) + \" is negative\", \"a number of \"\n \"zero or more\");"),
            (Said{{"%1 is negative", "N"}, {"a number of zero or more", ""}}));
}

TEST(CppSentences, LeaveOutSqlKeysAndSingleWords) {
  EXPECT_EQ(
      Cpp("#include \"a b.h\"\n// \"not this one\"\nx = R\"(select a b)\"; y = \"select a from b\"; z = \"key\"; return \"clock\"; if (s == \"at saw\") f('\"');"),
      Said{});
  EXPECT_EQ(Cpp("return \"CRANE\";", true), (Said{{"CRANE", ""}}));
}

}  // namespace
}  // namespace heatkeep::phrases
