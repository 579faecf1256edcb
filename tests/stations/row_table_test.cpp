// The table behind every list: what a view expects of a model, sorting, filtering, keys that stay.
#include "client/models/row_table.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QPersistentModelIndex>

namespace heatkeep {
namespace {

using Mode = QAbstractItemModelTester::FailureReportingMode;

std::vector<TableRow> Drops() {
  const auto row = [](const char* tag, const char* grade, qint64 mm) {
    return TableRow{.key = tag, .cells = {{tag}, {grade}, {QString::number(mm), mm}}};
  };
  return {row("A3", "42CrMo4", 900), row("A1", "c45e", 1200), row("A2", "C45E", 90)};
}

QStringList Shown(const RowTable& table) {
  QStringList keys;
  for (int i = 0; i < table.rowCount(); ++i) keys.append(table.At(i).key);
  return keys;
}

class RowTableTest : public testing::Test {
 protected:
  RowTable table{{{.head = "Tag"}, {.head = "Grade"}, {.head = "Length mm", .number = true}}};
  QAbstractItemModelTester tester{&table, Mode::Fatal};
};

TEST_F(RowTableTest, SortsNumbersAsNumbersAndTextWithoutCase) {
  table.SetRows(Drops());
  table.sort(2, Qt::AscendingOrder);
  EXPECT_EQ(Shown(table), (QStringList{"A2", "A3", "A1"}));
  table.sort(2, Qt::DescendingOrder);
  EXPECT_EQ(Shown(table), (QStringList{"A1", "A3", "A2"}));
  table.sort(1, Qt::AscendingOrder);
  EXPECT_EQ(Shown(table), (QStringList{"A3", "A1", "A2"})) << "equal ones stay in their order";
}

TEST_F(RowTableTest, ShowsRowsThatHaveEveryWordAndStaysSorted) {
  table.SetRows(Drops());
  table.sort(0, Qt::AscendingOrder);
  table.SetFilter("c45");
  EXPECT_EQ(Shown(table), (QStringList{"A1", "A2"}));
  table.SetFilter("c45 90");
  EXPECT_EQ(Shown(table), QStringList{"A2"});
  table.SetFilter("");
  table.Append({{.key = "A0", .cells = {{"A0"}, {"C45E"}, {"5", 5}}}});
  EXPECT_EQ(Shown(table), (QStringList{"A0", "A1", "A2", "A3"}));
  EXPECT_EQ(table.RowOf("A2"), 2);
  EXPECT_EQ(table.RowOf("A9"), -1);
}

TEST_F(RowTableTest, AChosenRowStaysChosenWhenItIsSorted) {
  table.SetRows(Drops());
  const QPersistentModelIndex chosen = table.index(table.RowOf("A3"), 0);
  table.sort(0, Qt::AscendingOrder);
  EXPECT_EQ(chosen.data(RowTable::kKey).toString(), "A3");
  table.SetFilter("c45");
  EXPECT_FALSE(chosen.isValid());
}

}  // namespace
}  // namespace heatkeep
