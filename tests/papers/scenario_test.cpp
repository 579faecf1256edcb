// The invented certificates of the demo shop stay inside the program's limits, sums and mechanical values included.
#include <gtest/gtest.h>

#include "client/intake/certificates_file.h"
#include "client/intake/file_bytes.h"
#include "client/papers/mechanical.h"
#include "tests/papers/reference_rows.h"

namespace heatkeep::papers {
namespace {

TEST(DemoCertificates, ViolateNothing) {
  const Known known = ProgramLimits();
  const auto mechanical = ProgramMechanical();
  const std::string path = std::string(HEATKEEP_SEED_REFERENCE) + "/../scenario/certificates.csv";
  const auto file = intake::ReadCertificatesFile(intake::FileBytes(path), path);
  ASSERT_GT(file.rows.size(), 200u);
  int conform = 0;
  for (const auto& row : file.rows) {
    const std::optional<Length> size = row.section.second.nm == 0 ? row.section.first : row.section.second;
    const Answer answer = CheckHeat({row.grade, row.chemistry, false, size, Method::Absolute}, known);
    EXPECT_NE(answer.overall, Overall::Violates) << row.number;
    conform += answer.overall == Overall::Conforms ? 1 : 0;
    const TestQuestion tests{row.grade,
                             row.condition,
                             size,
                             {{"Rm", *row.rm_kpa * 1000}, {"Re", *row.re_kpa * 1000}, {"A", *row.a_millipercent * 1000}},
                             Method::Absolute};
    for (const Line& line : CheckTests(tests, mechanical))
      EXPECT_TRUE(line.verdict != Verdict::Low && line.verdict != Verdict::High) << row.number << " " << line.what;
  }
  EXPECT_GT(conform, 150);
}

}  // namespace
}  // namespace heatkeep::papers
