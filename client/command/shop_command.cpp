#include "client/command/shop_command.h"

#include <ostream>

#include "client/command/shop_file.h"
#include "client/gateway/deeds.h"
#include "client/gateway/readings.h"
#include "client/intake/file_bytes.h"

namespace heatkeep::command {
namespace {

Names Column(Connection& connection, const std::string& view, const std::string& column) {
  Names names;
  for (std::string& name : ReadNames(connection, view, column)) names.insert(std::move(name));
  return names;
}

Known KnownToBook(Connection& connection) {
  Names grades = Column(connection, "grades", "designation");
  grades.merge(Column(connection, "grades", "number"));
  return {Column(connection, "places", "site"), Column(connection, "places", "place"), std::move(grades)};
}

}  // namespace

int RunShopSet(const BookCall& call, const std::string& file) {
  return WithBook(call, [&](Connection& connection) {
    const std::string bytes = intake::FileBytes(file);
    const Json shop = ReadShop(file, bytes);
    Deeds deeds(connection);
    const Known known = KnownToBook(connection);
    const Json places = ShopPart(known, file, shop), rules = RulesPart(known, file, shop);
    Transaction whole(connection);
    const Json answer = deeds.DefineShop(RequestOfFile(connection, "shop", "shop", bytes), places);
    deeds.SetRules(RequestOfFile(connection, "shop", "rules", bytes), rules);
    whole.Commit();
    call.out << "the shop has " << answer["places"] << " places and " << answer["saws"] << (answer["saws"] == 1 ? " saw\n" : " saws\n");
    return 0;
  });
}

int RunShopSign(const BookCall& call, const std::string& file) {
  return WithBook(call, [&](Connection& connection) {
    const std::string bytes = intake::FileBytes(file);
    const Json shop = ReadShop(file, bytes);
    const Json standins = GradeStandins(file, shop), sections = SectionStandins(file, shop);
    Deeds deeds(connection);
    Transaction whole(connection);
    for (const Json& s : sections)
      deeds.AllowSection(RequestOfFile(connection, "sign", s["asked"].dump() + s["offered"].dump(), bytes), s["asked"], s["offered"],
                         s["reason"]);
    for (const Json& s : standins) {
      const std::string asked = s["asked"], offered = s["offered"];
      deeds.AllowGrade(RequestOfFile(connection, "sign", asked + " " + offered, bytes), asked, offered, s["reason"]);
    }
    whole.Commit();
    call.out << standins.size() + sections.size() << " stand-ins signed by " << connection.User() << '\n';
    return 0;
  });
}

}  // namespace heatkeep::command
