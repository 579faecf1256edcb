#include "client/queue/kept_sheets.h"

#include <nlohmann/json.hpp>

#include "client/queue/kept_file.h"
#include "client/queue/record_file.h"

namespace heatkeep {
namespace {

using Json = nlohmann::json;

// One list of fields a struct, for writing and reading. It is taken apart by structured bindings: a struct that gets another field
// does not compile until the field is kept, too.
template <typename Each>
void Fields(SheetCut& c, Each&& each) {
  auto& [order, line, customer, count, set, nominal, face, minus, plus, one_heat, max_heats, done] = c;
  each("order", order), each("line", line), each("customer", customer), each("count", count), each("set", set), each("nominal", nominal),
      each("face", face), each("minus", minus), each("plus", plus), each("one_heat", one_heat), each("max_heats", max_heats),
      each("done", done);
}

template <typename Each>
void Fields(SheetBlock& b, Each&& each) {
  auto& [block, place, tag, kind, section, grade, condition, mill, heat, papers, owner, mark_end, otherwise, state, stop, risk, length,
         doubt, mass, trim, kerf_each, kerf_all, grip, stays, bundle, bundle_no, made_up, area, rate, cuts, left, fate, left_mass, begun] =
      b;
  each("block", block), each("place", place), each("tag", tag), each("kind", kind), each("section", section), each("grade", grade),
      each("condition", condition), each("mill", mill), each("heat", heat), each("papers", papers), each("owner", owner),
      each("mark_end", mark_end), each("otherwise", otherwise), each("state", state), each("stop", stop), each("risk", risk),
      each("length", length), each("doubt", doubt), each("mass", mass), each("trim", trim), each("kerf_each", kerf_each),
      each("kerf_all", kerf_all), each("grip", grip), each("stays", stays), each("bundle", bundle), each("bundle_no", bundle_no),
      each("made_up", made_up), each("area", area), each("rate", rate), each("cuts", cuts), each("left", left), each("fate", fate),
      each("left_mass", left_mass), each("begun", begun);
}

template <typename Each>
void Fields(SheetShort& s, Each&& each) {
  auto& [order, line, section, grade, missing, length, why] = s;
  each("order", order), each("line", line), each("section", section), each("grade", grade), each("missing", missing),
      each("length", length), each("why", why);
}

template <typename Each>
void Fields(Sheet& s, Each&& each) {
  auto& [number, saw, due, made_at, made_by, proof, one_heat, bundled, kerf, trim, grip, lift_limit, blocks, shorts] = s;
  each("number", number), each("saw", saw), each("due", due), each("made_at", made_at), each("made_by", made_by), each("proof", proof),
      each("one_heat", one_heat), each("bundled", bundled), each("kerf", kerf), each("trim", trim), each("grip", grip),
      each("lift_limit", lift_limit), each("blocks", blocks), each("shorts", shorts);
}

template <typename Each>
void Fields(KeptDevice& d, Each&& each) {
  auto& [device, kind, doubt, overdue] = d;
  each("device", device), each("kind", kind), each("doubt", doubt), each("overdue", overdue);
}

template <typename Each>
void Fields(KeptSheets& k, Each&& each) {
  auto& [book, login, actions, saw, read_at_ms, stop_stroke, tape_doubt, devices, places, sheets] = k;
  each("book", book), each("login", login), each("actions", actions), each("saw", saw), each("read_at_ms", read_at_ms),
      each("stop_stroke", stop_stroke), each("tape_doubt", tape_doubt), each("devices", devices), each("places", places),
      each("sheets", sheets);
}

// What is one value of JSON: texts, numbers, and the units by their whole number.
template <typename Value>
decltype(auto) One(Value& value) {
  if constexpr (requires { value.nm; }) return (value.nm);
  else if constexpr (requires { value.g; }) return (value.g);
  else if constexpr (requires { value.um2; }) return (value.um2);
  else if constexpr (requires { value.mm2_per_min; }) return (value.mm2_per_min);
  else return (value);
}

template <typename Value>
Json Written(Value& value) {
  if constexpr (requires {
                  value.emplace_back();
                  value.front();
                } &&
                !std::is_same_v<Value, std::string>) {
    Json all = Json::array();
    for (auto& each : value) all.push_back(Written(each));
    return all;
  } else if constexpr (requires { value.has_value(); }) {
    return value ? Written(*value) : Json();
  } else if constexpr (requires { Fields(value, [](const char*, auto&) {}); }) {
    Json all;
    Fields(value, [&](const char* name, auto& field) { all[name] = Written(field); });
    return all;
  } else if constexpr (std::is_enum_v<Value>) {
    return static_cast<int>(value);
  } else {
    return One(value);
  }
}

template <typename Value>
void Take(const Json& from, Value& value) {
  if constexpr (requires {
                  value.emplace_back();
                  value.front();
                } &&
                !std::is_same_v<Value, std::string>) {
    for (const Json& each : from) Take(each, value.emplace_back());
  } else if constexpr (requires { value.has_value(); }) {
    if (!from.is_null()) Take(from, value.emplace());
  } else if constexpr (requires { Fields(value, [](const char*, auto&) {}); }) {
    Fields(value, [&](const char* name, auto& field) { Take(from.at(name), field); });
  } else if constexpr (std::is_enum_v<Value>) {
    value = static_cast<Value>(from.get<int>());
  } else {
    One(value) = from.get<std::remove_cvref_t<decltype(One(value))>>();
  }
}

constexpr std::string_view kKind = "sheets";

}  // namespace

std::string TextOf(const KeptSheets& kept) {
  KeptSheets all = kept;
  return Written(all).dump();
}

void KeepSheets(const std::filesystem::path& path, const KeptSheets& kept) { WriteKeptFile(path, kKind, TextOf(kept)); }

std::optional<KeptSheets> ReadKeptSheets(const std::filesystem::path& path) {
  const std::optional<std::string> bytes = ReadKeptFile(path, kKind);
  if (!bytes) return std::nullopt;
  KeptSheets kept;
  try {
    Take(Json::parse(*bytes), kept);
  } catch (const Json::exception& error) {
    throw QueueError(path.string() + ": these sheets were kept by another version of this program (" + error.what() + ")");
  }
  return kept;
}

}  // namespace heatkeep
