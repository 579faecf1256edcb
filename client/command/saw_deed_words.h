// The words of `heatkeep saw DEED ...`: which options a deed takes, and how they become its body.
#pragma once

#include <map>
#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "client/gateway/saw_deeds.h"

namespace heatkeep::command {

// What an option's text is read as. OrderLine fills "order" and "line"; from Stroke to Tags they may be given several times.
enum class WordKind {
  Text,
  Length,
  Whole,
  Mass,
  Cents,
  PerKg,
  OrderLine,
  Section,
  Stroke,
  Part,
  Open,
  Capacity,
  Bin,
  HeatRead,
  OfBar,
  Tags,
  Flag
};

struct SawWord {
  const char* option;  // "tag" (by position) or "--place"
  const char* key;     // in the body; "left.place" goes into "left"
  WordKind kind = WordKind::Text;
  bool required = false;
  const char* help = "";
  std::vector<std::string> choices = {};  // where there is a fixed set
};

struct SawDeedWords {
  const char* name;
  const char* help;  // with an example
  const char* deed;  // function of schema api
  nlohmann::json (SawDeeds::*method)(const RequestNumber&, const nlohmann::json&);
  bool off_network = false;  // may be queued on the saw's own disk
  std::vector<SawWord> words;
};

const std::vector<SawDeedWords>& AllSawDeeds();

// The body of the deed. Throws BadText, std::invalid_argument: it names the option.
nlohmann::json SawBody(const SawDeedWords& deed, const std::map<std::string, std::vector<std::string>>& given);

}  // namespace heatkeep::command
