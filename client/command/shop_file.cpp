#include "client/command/shop_file.h"

#include <algorithm>
#include <map>
#include <vector>

#include "client/command/file_json.h"
#include "client/gateway/section_json.h"
#include "schema/terms/bad_text.h"
#include "schema/terms/date_text.h"
#include "schema/terms/length_text.h"
#include "schema/terms/mass_text.h"
#include "schema/terms/number_text.h"

namespace heatkeep::command {
namespace {

std::string Listed(const Names& names) {
  std::string text;
  for (const std::string& name : names) text += (text.empty() ? "" : ", ") + name;
  return text;
}

// "yes or no", "a4 or letter or 100x50".
std::string Either(const std::vector<std::string>& words) {
  std::string text;
  for (const std::string& word : words) text += (text.empty() ? "" : " or ") + word;
  return text;
}

// One list of the file, its rows turned into what the book reads. A wrong value is named by list, row and key.
class List {
 public:
  List(std::string file, const Json& shop, std::string name) : file_(std::move(file)), name_(std::move(name)) {
    rows_ = shop.value(name_, Json::array());
    if (!rows_.is_array()) throw BadText(file_ + ": " + name_ + " is no list", "[{...}, ...]");
  }

  // Replaces `from` by `to` with the value `read` makes of its text; an absent or null one stays away.
  template <class Read>
  List& Turn(const char* from, const char* to, Read read) {
    for (std::size_t i = 0; i < rows_.size(); ++i) {
      const auto at = rows_[i].find(from);
      if (at == rows_[i].end() || at->is_null()) continue;
      try {
        Json made = read(at->is_string() ? at->get<std::string>() : at->dump());
        rows_[i].erase(from);
        rows_[i][to] = std::move(made);
      } catch (const BadText& bad) {
        throw BadText(file_ + ": " + name_ + "[" + std::to_string(i) + "]." + from + ": " + bad.Wrong(), bad.Expected());
      }
    }
    return *this;
  }

  List& Need(std::initializer_list<const char*> keys) {
    for (std::size_t i = 0; i < rows_.size(); ++i) {
      for (const char* key : keys) {
        if (!rows_[i].is_object() || !rows_[i].contains(key) || rows_[i][key].is_null())
          throw BadText(file_ + ": " + name_ + "[" + std::to_string(i) + "]." + key + " is missing", "a value");
      }
    }
    return *this;
  }

  // The value of `key`, where there is one, must be one of `known`.
  List& Among(const char* key, const Names& known, const std::string& expected) {
    return Turn(key, key, [&](const std::string& text) -> Json {
      if (!known.contains(text)) throw BadText(Quoted(text) + " is not in the book or this file", expected);
      return text;
    });
  }

  // A key that is misspelt would be passed over in silence.
  List& Only(const Names& known) {
    for (std::size_t i = 0; i < rows_.size(); ++i) {
      if (!rows_[i].is_object()) continue;
      for (const auto& [key, value] : rows_[i].items()) {
        if (!known.contains(key))
          throw BadText(file_ + ": " + name_ + "[" + std::to_string(i) + "]." + key + " is not known", "one of " + Listed(known));
      }
    }
    return *this;
  }

  List& Dated(const char* key) {
    return Turn(key, key, [](const std::string& text) -> Json { return ReadIsoDateOrTime(text); });
  }

  List& Whole(std::initializer_list<const char*> keys) {
    for (const char* key : keys) Turn(key, key, [](const std::string& text) -> Json { return ReadWhole(text, 0, 1'000'000); });
    return *this;
  }

  List& Text(std::initializer_list<const char*> keys) {
    for (std::size_t i = 0; i < rows_.size(); ++i) {
      for (const char* key : keys) {
        if (rows_[i].contains(key) && !rows_[i][key].is_null() && !rows_[i][key].is_string())
          throw BadText(file_ + ": " + name_ + "[" + std::to_string(i) + "]." + key + ": " + rows_[i][key].dump() + " is no text",
                        "\"...\"");
      }
    }
    return *this;
  }

  List& YesOrNo(std::initializer_list<const char*> keys) {
    for (const char* key : keys)
      Turn(key, key, [](const std::string& text) -> Json {
        if (text != "true" && text != "false") throw BadText(Quoted(text) + " is neither", "true or false");
        return text == "true";
      });
    return *this;
  }

  // What the rows are called.
  Names All(const char* key) const {
    Names names;
    for (const Json& row : rows_) names.insert(row.value(key, std::string()));
    return names;
  }

  Json Rows() const { return rows_; }

 private:
  std::string file_, name_;
  Json rows_;
};

Json LengthNm(const std::string& text) { return ReadLength(text).nm; }
Json MassG(const std::string& text) { return ReadMass(text).g; }
Json Tonne(const std::string& text) { return CentsPerTonne({ReadScaled(text, 2)}); }
Json Mm2(const std::string& text) { return ReadWhole(text, 1, 1'000'000) * 100; }
Json SectionOf(const std::string& text) { return SectionJson(ReadSection(text)); }

// What the book has already and what the file brings.
Names Both(Names names, Names more) {
  names.merge(more);
  return names;
}

}  // namespace

Json ReadShop(const std::string& file, const std::string& bytes) {
  static const Names parts{"currency", "settings", "sites", "parties",  "places",          "saws",
                           "rates",    "prices",   "keep",  "standins", "section_standins"};
  Json shop = ReadFileJson(bytes, file, "a JSON object of lists");
  if (!shop.is_object()) throw BadText(file + ": the file is no JSON object", "{\"sites\": [...], \"places\": [...], ...}");
  for (const auto& [name, value] : shop.items()) {
    if (!parts.contains(name)) throw BadText(file + ": " + name + " is not known", "one of " + Listed(parts));
  }
  return shop;
}

Json ShopPart(const Known& known, const std::string& file, const Json& shop) {
  static const Names kinds{"rack", "yard", "saw", "gate", "quarantine", "scrap", "outside"};
  const List sites = List(file, shop, "sites")
                         .Only({"site", "letter", "offline_letter"})
                         .Need({"site", "letter", "offline_letter"})
                         .Text({"site", "letter", "offline_letter"});
  const List places = List(file, shop, "places")
                          .Only({"place", "site", "kind", "bay", "level", "walk", "max_length", "max_mass"})
                          .Need({"place", "site", "kind"})
                          .Text({"place", "site", "kind"})
                          .Among("site", Both(known.sites, sites.All("site")), "a site")
                          .Among("kind", kinds, "one of " + Listed(kinds))
                          .Whole({"level", "walk"})
                          .Turn("max_length", "max_length_nm", LengthNm)
                          .Turn("max_mass", "max_mass_g", MassG);
  return {{"parties",
           List(file, shop, "parties")
               .Only({"name", "mill", "supplier", "customer"})
               .Need({"name"})
               .Text({"name"})
               .YesOrNo({"mill", "supplier", "customer"})
               .Rows()},
          {"sites", sites.Rows()},
          {"places", places.Rows()},
          {"saws",
           List(file, shop, "saws")
               .Only({"saw", "name", "place", "max_section", "band", "kerf", "trim", "grip", "grip_bundle"})
               .Need({"saw", "place", "max_section", "band", "kerf", "trim", "grip"})
               .Text({"saw", "place", "band"})
               .Among("place", Both(known.places, places.All("place")), "a place")
               .Turn("max_section", "max_section_nm", LengthNm)
               .Turn("kerf", "kerf_nm", LengthNm)
               .Turn("trim", "trim_nm", LengthNm)
               .Turn("grip", "grip_nm", LengthNm)
               .Turn("grip_bundle", "grip_bundle_nm", LengthNm)
               .Rows()}};
}

Json RulesPart(const Known& known, const std::string& file, const Json& shop) {
  Json settings = Json::object();
  const Json given = shop.value("settings", Json::object());
  if (!given.is_object()) throw BadText(file + ": settings is no object", "{\"name\": value, ...}");
  static const std::vector<std::string> yes_or_no{"yes", "no"};
  static const std::map<std::string, std::vector<std::string>> words{{"heat_read_back", yes_or_no},
                                                                     {"judging_by_rounding", yes_or_no},
                                                                     {"two_person_release", yes_or_no},
                                                                     {"validators_named", yes_or_no},
                                                                     {"label_paper", {"100x50", "62x29", "a4", "letter"}},
                                                                     {"label_code", {"data-matrix", "qr"}},
                                                                     {"label_dpi", {"203", "300", "600"}}};
  const Names& grades = known.grades;
  const std::string grade = "a designation or number of the grade list";
  for (const auto& [name, value] : given.items()) {
    const std::string text = value.is_string() ? value.get<std::string>()
        : value.is_boolean()                   ? (value.get<bool>() ? "yes" : "no")
                                               : value.dump();
    try {
      const auto of = words.find(name);
      if (name == "time_zone") {
        if (!value.is_string() || text.empty())
          throw BadText(Quoted(text) + " is no time zone", "its name in the IANA list, \"Europe/Berlin\"");
      } else if (of == words.end()) ReadDecimal(text);
      else if (std::find(of->second.begin(), of->second.end(), text) == of->second.end())
        throw BadText(Quoted(text) + " is neither", Either(of->second));
    } catch (const BadText& bad) { throw BadText(file + ": settings." + name + ": " + bad.Wrong(), bad.Expected()); }
    settings[name] = text;
  }
  if (shop.contains("currency")) {
    const std::string text = shop["currency"].is_string() ? shop["currency"].get<std::string>() : shop["currency"].dump();
    if (text.size() != 3 || text.find_first_not_of("ABCDEFGHIJKLMNOPQRSTUVWXYZ") != std::string::npos)
      throw BadText(file + ": currency: " + Quoted(text) + " is no currency", "the three letters of ISO 4217, \"EUR\"");
    settings["currency"] = text;
  }
  return {{"settings", std::move(settings)},
          {"prices",
           List(file, shop, "prices")
               .Only({"grade", "section", "per_kg", "scrap_per_kg", "from"})
               .Need({"grade", "per_kg", "scrap_per_kg"})
               .Among("grade", grades, grade)
               .Dated("from")
               .Turn("section", "section", SectionOf)
               .Turn("per_kg", "cents_per_tonne", Tonne)
               .Turn("scrap_per_kg", "scrap_cents_per_tonne", Tonne)
               .Rows()},
          {"keep",
           List(file, shop, "keep")
               .Only({"grade", "section", "keep", "from"})
               .Need({"keep"})
               .Among("grade", grades, grade)
               .Dated("from")
               .Turn("section", "section", SectionOf)
               .Turn("keep", "keep_nm", LengthNm)
               .Rows()},
          {"rates",
           List(file, shop, "rates")
               .Only({"saw", "family", "cm2_per_min", "from"})
               .Need({"family", "cm2_per_min"})
               .Text({"family"})
               .Dated("from")
               .Turn("cm2_per_min", "mm2_per_min", Mm2)
               .Rows()}};
}

Json GradeStandins(const std::string& file, const Json& shop) {
  return List(file, shop, "standins")
      .Only({"asked", "offered", "reason", "signed_by"})
      .Need({"asked", "offered", "reason"})
      .Text({"asked", "offered", "reason"})
      .Rows();
}

Json SectionStandins(const std::string& file, const Json& shop) {
  return List(file, shop, "section_standins")
      .Only({"asked", "offered", "reason", "signed_by"})
      .Need({"asked", "offered", "reason"})
      .Text({"asked", "offered", "reason"})
      .Turn("asked", "asked", SectionOf)
      .Turn("offered", "offered", SectionOf)
      .Rows();
}

}  // namespace heatkeep::command
