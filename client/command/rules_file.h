// The rules file of a plan made from files: prices, rates, costs and substitutes. One JSON object; every part may be
// left out, nothing else may be in it. Money in units of the currency (1.60), lengths as elsewhere ("1.6mm", or a
// number of millimetres), sections in words ("round 80"). A row without "section" or "grade" holds for any; of several
// rows that fit the first counts.
// In kRulesFileSample a price may be "per_metre" (and "scrap_per_metre") as well, and say "density_kg_m3"; pull_bar is of a full bar, else
// as pull. A substitute without "order" holds for every order. A group's missing length is the general one of the command. Density is 7850
// kg/m3 where no price row that fits says another; a price in the stock file comes before the rows here.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "client/allocator/problem.h"
#include "schema/terms/money.h"
#include "schema/terms/section.h"

namespace heatkeep::command {

using allocator::FineMoney;

// One with every part.
inline constexpr const char* kRulesFileSample =
    R"({"prices": [{"grade": "42CrMo4", "per_kg": 1.60, "scrap_per_kg": 0.25}],
 "sawing": {"money_per_minute": 0.70, "rates": [{"cm2_per_minute": 30}]},
 "costs": {"pull": 0.80, "pull_bar": 4.00, "setup": 2.00, "extra_heat": 5.00},
 "grade_substitutes": [{"asked": "C45E", "given": "42CrMo4", "order": "A17", "extra_per_metre": 3.00}],
 "section_substitutes": [{"asked": "round 80", "given": "round 85", "extra_per_metre": 6.20}],
 "groups": [{"section": "round 80", "grade": "42CrMo4", "kerf": "2mm", "trim": 5, "grip": 60, "keep": 150}]})";

struct RulesFile {
  struct Metal {  // which metal a row holds for
    std::optional<Section> section;
    std::string grade;
  };
  struct Price : Metal {
    Density density = kSteel;
    bool by_mass = true;  // money is per kg, else per metre
    FineMoney money, scrap;
  };
  struct Rate : Metal {
    std::int64_t mm2_per_minute = 0;  // > 0
  };
  struct Substitute {
    std::string asked, given, order;  // grades
    Section asked_section, given_section;
    FineMoney extra_per_metre;
  };
  struct Group : Metal {
    allocator::GroupRules rules;
  };
  std::vector<Price> prices;
  std::vector<Rate> rates;
  std::vector<Substitute> grades, sections;
  std::vector<Group> groups;
  FineMoney money_per_minute, pull, pull_bar, setup, extra_heat;

  Density DensityOf(const Section& section, const std::string& grade) const;

  // What a piece of this metal costs; `price_per_kg` of the stock file comes first.
  allocator::PieceCosts CostsOf(const Section& section, const std::string& grade, std::optional<Money> price_per_kg,
                                allocator::PieceKind kind) const;
};

// Throws BadText: "name:line: ..." for what is not JSON, "name: prices[0].per_kg: ..." for a wrong, unknown or missing key.
RulesFile ReadRulesFile(const std::string& bytes, const std::string& name, const allocator::GroupRules& general);

}  // namespace heatkeep::command
