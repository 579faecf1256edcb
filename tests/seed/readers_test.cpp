// The shop's files through the readers that the program itself uses: nothing refused, nothing lost.
#include <gtest/gtest.h>

#include "client/intake/certificates_file.h"
#include "client/intake/cuts_file.h"
#include "client/intake/delivery_file.h"
#include "client/intake/grades_file.h"
#include "client/intake/opening_file.h"
#include "tests/seed/rows_of.h"

namespace heatkeep::seed_test {
namespace {

TEST(Readers, TakeTheGradesWholly) {
  const auto read = intake::ReadGradesFile(bytes_of("reference/grades.csv"), "grades.csv");
  EXPECT_TRUE(read.Good()) << intake::ProblemsText(read.problems);
  EXPECT_EQ(read.rows.size(), rows_of("reference/grades.csv").rows.size());
  const Grade* by_number = intake::FindGrade(read.rows, "1.7225");
  ASSERT_NE(by_number, nullptr);
  EXPECT_EQ(by_number->designation, "42CrMo4");
}

TEST(Readers, TakeTheOpeningBalanceAndWarnOnlyOfTheUnreadHeats) {
  const auto read = intake::ReadOpeningFile(bytes_of("scenario/opening.csv"), "opening.csv");
  EXPECT_TRUE(read.Good()) << intake::ProblemsText(read.problems);
  const File own = rows_of("scenario/opening.csv");
  ASSERT_EQ(read.rows.size(), own.rows.size());
  std::size_t unread = 0;
  for (std::size_t i = 0; i < own.rows.size(); ++i) {
    EXPECT_EQ(read.rows[i].heat, own.rows[i].at("heat")) << "a heat keeps its leading zeros and its dash";
    unread += read.rows[i].heat.empty() ? 1U : 0U;
  }
  EXPECT_EQ(read.warnings.size(), unread) << intake::ProblemsText(read.warnings);
}

TEST(Readers, TakeTheDeliveries) {
  const auto read = intake::ReadDeliveryFile(bytes_of("scenario/deliveries.csv"), "deliveries.csv");
  EXPECT_TRUE(read.Good()) << intake::ProblemsText(read.problems);
  EXPECT_EQ(read.rows.size(), rows_of("scenario/deliveries.csv").rows.size());
}

TEST(Readers, TakeTheCertificates) {
  const auto read = intake::ReadCertificatesFile(bytes_of("scenario/certificates.csv"), "certificates.csv");
  EXPECT_TRUE(read.Good()) << intake::ProblemsText(read.problems);
  EXPECT_EQ(read.rows.size(), rows_of("scenario/certificates.csv").rows.size());
}

TEST(Readers, TakeTheCutListsAndFindOutHowTheSecondIsWritten) {
  for (const char name : {'a', 'b', 'c'}) {
    const std::string file = std::string("cutlist_") + name + ".csv";
    const auto read = intake::ReadCutsFile(bytes_of("scenario/" + file), file);
    EXPECT_TRUE(read.Good()) << intake::ProblemsText(read.problems);
    EXPECT_EQ(read.decimal_mark, name == 'b' ? ',' : '.');
    const File own = rows_of("scenario/" + file, name == 'b');
    ASSERT_EQ(read.rows.size(), own.rows.size());
    for (std::size_t i = 0; i < own.rows.size(); ++i) {
      const Length length = ReadLength(own.rows[i].at("length"), {LengthUnit::Mm, name == 'b' ? ',' : '.'});
      EXPECT_EQ(read.rows[i].length, length) << file << ": " << own.rows[i].at("length");
      EXPECT_EQ(read.rows[i].section, ReadSection(own.rows[i].at("section")));
    }
  }
}

}  // namespace
}  // namespace heatkeep::seed_test
