#include "client/command/rules_file.h"

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>

#include "client/command/file_json.h"
#include "schema/terms/bad_text.h"

namespace heatkeep::command {
namespace {

using Json = nlohmann::json;
__extension__ using Wide = __int128;

std::int64_t Divided(Wide a, Wide b) { return static_cast<std::int64_t>((a + b / 2) / b); }  // a, b >= 0; halves up

// One value of the file and the words that lead to it.
class Node {
 public:
  Node(const Json& json, std::string file, std::string path) : json_(json), file_(std::move(file)), path_(std::move(path)) {}

  [[noreturn]] void Refuse(const std::string& wrong, const std::string& expected) const {
    throw BadText(file_ + ": " + (path_.empty() ? "" : path_ + ": ") + wrong, expected);
  }
  void Only(std::initializer_list<const char*> keys) const {
    if (!json_.is_object()) Refuse("it is no object", "an object in braces");
    std::string all;
    for (const char* key : keys) all += (all.empty() ? "" : ", ") + std::string(key);
    for (const auto& [key, value] : json_.items())
      if (std::find_if(keys.begin(), keys.end(), [&, name = key](const char* k) { return name == k; }) == keys.end())
        At(key, value).Refuse("unknown key", "one of " + all);
  }
  bool Has(const char* key) const { return json_.contains(key); }
  Node operator[](const char* key) const {
    if (!Has(key)) Node(json_, file_, Path(key)).Refuse("it is missing", "a value");
    return At(key, json_.at(key));
  }
  std::vector<Node> Rows(const char* key) const {
    std::vector<Node> rows;
    if (!Has(key)) return rows;
    const Node list = (*this)[key];
    if (!list.json_.is_array()) list.Refuse("it is no list", "a list in brackets");
    for (std::size_t i = 0; i < list.json_.size(); ++i) rows.emplace_back(list.json_[i], file_, list.path_ + "[" + std::to_string(i) + "]");
    return rows;
  }
  double Number() const {
    if (!json_.is_number()) Refuse("it is no number", "a number of 0 or more");
    const double x = json_.get<double>();
    if (!(x >= 0) || x > 1e7) Refuse("it is out of range", "a number of 0 or more, up to 10 000 000");
    return x;
  }
  FineMoney Money() const { return {std::llround(Number() * 1e8)}; }
  FineMoney Money(const char* key) const { return Has(key) ? (*this)[key].Money() : FineMoney{}; }
  std::string Text() const {
    if (!json_.is_string() || json_.get<std::string>().empty()) Refuse("it is no text", "a text in quotes");
    return json_.get<std::string>();
  }
  std::string Text(const char* key) const { return Has(key) ? (*this)[key].Text() : std::string(); }
  Section SectionWords() const {
    return Reading([&] { return ReadSection(Text()); });
  }
  Length LengthOr(const char* key, Length otherwise) const {
    if (!Has(key)) return otherwise;
    const Node node = (*this)[key];
    if (node.json_.is_number()) return {std::llround(node.Number() * 1e6)};
    return node.Reading([&] { return ReadLength(node.Text()); });
  }
  RulesFile::Metal Metal() const {
    RulesFile::Metal metal;
    if (Has("section")) metal.section = (*this)["section"].SectionWords();
    metal.grade = Text("grade");
    return metal;
  }

 private:
  template <class Read>
  auto Reading(Read read) const -> decltype(read()) {
    try {
      return read();
    } catch (const BadText& e) {
      if (std::string(e.what()).rfind(file_ + ": ", 0) == 0) throw;
      Refuse(e.Wrong(), e.Expected());
    }
  }
  std::string Path(const std::string& key) const { return path_.empty() ? key : path_ + "." + key; }
  Node At(const std::string& key, const Json& value) const { return Node(value, file_, Path(key)); }

  const Json& json_;
  std::string file_, path_;
};

RulesFile::Price PriceRow(const Node& row) {
  row.Only({"section", "grade", "density_kg_m3", "per_kg", "scrap_per_kg", "per_metre", "scrap_per_metre"});
  RulesFile::Price price;
  static_cast<RulesFile::Metal&>(price) = row.Metal();
  const bool mass = row.Has("per_kg") || row.Has("scrap_per_kg"), metre = row.Has("per_metre") || row.Has("scrap_per_metre");
  if (mass == metre) row.Refuse("it must say one kind of price", "per_kg (and scrap_per_kg), or per_metre (and scrap_per_metre)");
  price.by_mass = mass;
  price.money = row.Money(mass ? "per_kg" : "per_metre");
  price.scrap = row.Money(mass ? "scrap_per_kg" : "scrap_per_metre");
  if (row.Has("density_kg_m3")) {
    price.density = {std::llround(row["density_kg_m3"].Number())};
    if (price.density.kg_m3 < 500 || price.density.kg_m3 > 25'000) row["density_kg_m3"].Refuse("it is out of range", "500 to 25 000 kg/m3");
  }
  return price;
}

RulesFile::Substitute SubstituteRow(const Node& row, bool sections) {
  row.Only({"asked", "given", "order", "extra_per_metre"});
  RulesFile::Substitute s;
  if (sections) {
    s.asked_section = row["asked"].SectionWords();
    s.given_section = row["given"].SectionWords();
  } else {
    s.asked = row["asked"].Text();
    s.given = row["given"].Text();
  }
  s.order = row.Text("order");
  s.extra_per_metre = row.Money("extra_per_metre");
  return s;
}

template <class Row>
const Row* Fitting(const std::vector<Row>& rows, const Section& section, const std::string& grade) {
  for (const Row& row : rows)
    if ((!row.section || *row.section == section) && (row.grade.empty() || row.grade == grade)) return &row;
  return nullptr;
}

}  // namespace

Density RulesFile::DensityOf(const Section& section, const std::string& grade) const {
  const Price* price = Fitting(prices, section, grade);
  return price ? price->density : kSteel;
}

allocator::PieceCosts RulesFile::CostsOf(const Section& section, const std::string& grade, std::optional<Money> price_per_kg,
                                         allocator::PieceKind kind) const {
  allocator::PieceCosts costs;
  const Price* price = Fitting(prices, section, grade);
  const Density density = DensityOf(section, grade);
  const auto by_mass = [&](FineMoney per_kg) {
    return FineMoney{Divided(Wide{per_kg.micro} * MassPerMetreOf(section, density).ng, Wide{1'000'000'000'000})};
  };
  if (price) {
    costs.per_metre = price->by_mass ? by_mass(price->money) : price->money;
    costs.scrap_per_metre = price->by_mass ? by_mass(price->scrap) : price->scrap;
  }
  if (price_per_kg) costs.per_metre = by_mass({price_per_kg->cents * 1'000'000});
  if (const Rate* rate = Fitting(rates, section, grade))  // um2 = 1e-6 mm2
    costs.per_cut = {Divided(Wide{AreaOf(section).um2} * money_per_minute.micro, Wide{rate->mm2_per_minute} * 1'000'000)};
  costs.per_pull = kind == allocator::PieceKind::Bar ? pull_bar : pull;
  return costs;
}

RulesFile ReadRulesFile(const std::string& bytes, const std::string& name, const allocator::GroupRules& general) {
  const Json json = ReadFileJson(bytes, name, "an object of rules in JSON, its numbers up to 10 000 000");
  const Node root(json, name, "");
  root.Only({"prices", "sawing", "costs", "grade_substitutes", "section_substitutes", "groups"});
  RulesFile rules;
  for (const Node& row : root.Rows("prices")) rules.prices.push_back(PriceRow(row));
  if (root.Has("sawing")) {
    const Node sawing = root["sawing"];
    sawing.Only({"money_per_minute", "rates"});
    rules.money_per_minute = sawing["money_per_minute"].Money();
    for (const Node& row : sawing.Rows("rates")) {
      row.Only({"section", "grade", "cm2_per_minute"});
      RulesFile::Rate rate;
      static_cast<RulesFile::Metal&>(rate) = row.Metal();
      rate.mm2_per_minute = std::llround(row["cm2_per_minute"].Number() * 100);
      if (rate.mm2_per_minute <= 0) row["cm2_per_minute"].Refuse("it is nothing", "a rate above 0");
      rules.rates.push_back(rate);
    }
  }
  if (root.Has("costs")) {
    const Node costs = root["costs"];
    costs.Only({"pull", "pull_bar", "setup", "extra_heat"});
    rules.pull = costs.Money("pull");
    rules.pull_bar = costs.Has("pull_bar") ? costs.Money("pull_bar") : rules.pull;
    rules.setup = costs.Money("setup");
    rules.extra_heat = costs.Money("extra_heat");
  }
  for (const Node& row : root.Rows("grade_substitutes")) rules.grades.push_back(SubstituteRow(row, false));
  for (const Node& row : root.Rows("section_substitutes")) rules.sections.push_back(SubstituteRow(row, true));
  for (const Node& row : root.Rows("groups")) {
    row.Only({"section", "grade", "kerf", "trim", "grip", "keep"});
    RulesFile::Group group;
    static_cast<RulesFile::Metal&>(group) = row.Metal();
    group.rules = {row.LengthOr("kerf", general.kerf), row.LengthOr("trim", general.trim), row.LengthOr("grip", general.grip),
                   row.LengthOr("keep", general.keep)};
    rules.groups.push_back(group);
  }
  return rules;
}

}  // namespace heatkeep::command
