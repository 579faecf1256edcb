// JSON files: the rules of a plan, the shop as its owner describes it, a record that is asked about.
#include <stdexcept>
#include <string>

#include "client/command/record_said.h"
#include "client/command/rules_file.h"
#include "client/command/shop_file.h"
#include "schema/terms/bad_text.h"
#include "tests/fuzz/file_door.h"
#include "tests/fuzz/promise.h"

namespace heatkeep::fuzz {

void RulesDoor(std::string_view bytes) {
  try {
    command::ReadRulesFile(std::string(bytes), "rules.json", {});
  } catch (const BadText& e) { Require(std::string(e.what()).starts_with("rules.json:"), "a refusal names the file"); }
}

void ShopDoor(std::string_view bytes) {
  const command::Known known{{"main"}, {"RACK-1", "SAW-1"}, {"42CrMo4", "1.7225", "C45E"}};
  try {
    const command::Json shop = command::ReadShop("shop.json", std::string(bytes));
    for (const command::Json& part : {command::ShopPart(known, "shop.json", shop), command::RulesPart(known, "shop.json", shop),
                                      command::GradeStandins("shop.json", shop), command::SectionStandins("shop.json", shop)})
      Require(!part.dump().empty(), "what goes to the book can be written");
  } catch (const BadText& e) { Require(std::string(e.what()).starts_with("shop.json:"), "a refusal names the file"); }
}

void RecordDoor(std::string_view bytes) {
  command::DigestsIn(std::string(bytes));
  try {
    const command::Said said = command::SaidByJson("record.json", std::string(bytes));
    Require(said.digests.size() == 1 && said.content && said.content->size() == command::kDigestDigits && said.ends,
            "a record says its digest, its words and its chains");
  } catch (const std::invalid_argument& e) { Require(std::string(e.what()).starts_with("record.json:"), "a refusal names the file"); }
}

}  // namespace heatkeep::fuzz
