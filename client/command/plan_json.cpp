#include "client/command/plan_json.h"

#include <nlohmann/json.hpp>

namespace heatkeep::command {
namespace {

using Json = nlohmann::ordered_json;
using allocator::Key;

std::string StatusName(allocator::Status status) {
  switch (status) {
    case allocator::Status::Proved: return "proved";
    case allocator::Status::Feasible: return "feasible";
    case allocator::Status::Short: return "short";
  }
  return {};
}

std::string KeyName(Key key) {
  const bool length = key == Key::NewLength || key == Key::ConsumedLength || key == Key::LostWorth;
  return NameOf(key) + (length ? "_nm" : "");
}

// Millionths of a cent as units of the currency, to the cent, halves up.
double Units(std::int64_t micro) {
  const std::int64_t shifted = micro + 500'000;
  std::int64_t cents = shifted / 1'000'000;
  if (shifted < 0 && shifted % 1'000'000 != 0) --cents;
  return static_cast<double>(cents) / 100.0;
}

Json ByPriority(const std::map<int, int>& unmet) {
  Json j = Json::object();
  for (const auto& [priority, pieces] : unmet) j[std::to_string(priority)] = pieces;
  return j;
}

Json LayoutJson(const allocator::Problem& problem, const allocator::Layout& layout) {
  const allocator::Piece& piece = problem.pieces[static_cast<std::size_t>(layout.piece)];
  Json j;
  j["tag"] = piece.tag;
  j["kind"] = piece.kind == allocator::PieceKind::Bar ? "bar" : "drop";
  j["heat"] = piece.heat;
  j["repeat"] = layout.repeat;
  j["length_nm"] = piece.length.nm;
  j["trim_nm"] = layout.trim.nm;
  j["kerf_nm"] = layout.kerf.nm;
  j["cuts"] = Json::array();
  for (const allocator::Cut& cut : layout.cuts) {
    const allocator::Line& line = problem.lines[static_cast<std::size_t>(cut.line)];
    j["cuts"].push_back({{"order", line.order}, {"line", line.line}, {"count", cut.count}, {"length_nm", cut.length.nm}});
  }
  j["left_nm"] = layout.left.nm;
  j["left"] = layout.left_kind == allocator::LeftKind::Drop ? "drop" : layout.left_kind == allocator::LeftKind::Scrap ? "scrap" : "none";
  return j;
}

}  // namespace

std::string NameOf(allocator::EndedBy end) {
  switch (end) {
    case allocator::EndedBy::Proof: return "proof";
    case allocator::EndedBy::Budget: return "budget";
    case allocator::EndedBy::Clock: return "clock";
    case allocator::EndedBy::Stopped: return "stopped";
  }
  return {};
}

Json FiguresJson(const allocator::Value& value, allocator::Aim aim) {
  Json j;
  j["unmet_pieces"] = value.unmet_pieces;
  j["unmet_by_priority"] = ByPriority(value.unmet_by_priority);
  j["bars_opened"] = value.bars_opened;
  j["new_length_nm"] = value.new_length.nm;
  j["consumed_length_nm"] = value.consumed_length.nm;
  j["scrap_length_nm"] = value.scrap_length.nm;
  j["lost_worth_nm"] = value.lost_worth.nm;
  if (aim == allocator::Aim::LeastMoney) j["money"] = Units(value.money.micro);
  j["pieces_pulled"] = value.pieces_pulled;
  j["layouts"] = value.layouts;
  return j;
}

Json FiguresJson(const allocator::Bound& bound) {
  Json j = Json::object();
  if (bound.unmet_by_priority) {
    int sum = 0;
    for (const auto& [priority, pieces] : *bound.unmet_by_priority) sum += pieces;
    j["unmet_pieces"] = sum;
    j["unmet_by_priority"] = ByPriority(*bound.unmet_by_priority);
  }
  for (const auto& [key, figure] : bound.figures) {
    if (key == Key::Money) j[KeyName(key)] = Units(figure);
    else j[KeyName(key)] = figure;
  }
  return j;
}

std::string AimName(allocator::Aim aim) {
  switch (aim) {
    case allocator::Aim::DropsFirst: return "drops-first";
    case allocator::Aim::LeastMoney: return "least-money";
    case allocator::Aim::FewestBars: return "fewest-bars";
    case allocator::Aim::LeastMetres: return "least-metres";
  }
  return {};
}

std::string PlanJson(const allocator::Problem& problem, const allocator::Plan& plan, const PlanExtras* extras) {
  Json j;
  j["aim"] = AimName(problem.aim);
  j["seconds"] = plan.seconds;
  j["seed"] = plan.seed;
  j["status"] = StatusName(plan.status);
  j["value"] = FiguresJson(plan.value, problem.aim);
  j["bound"] = FiguresJson(plan.bound);
  j["proved"] = plan.proved;
  j["proved_keys"] = Json::array();
  for (const Key key : plan.proved_keys) j["proved_keys"].push_back(NameOf(key));
  j["ended_by"] = NameOf(plan.ended_by);
  j["layouts"] = Json::array();
  for (const allocator::Layout& layout : plan.layouts) j["layouts"].push_back(LayoutJson(problem, layout));
  j["short"] = Json::array();
  for (const allocator::Short& s : plan.shorts) {
    const allocator::Line& line = problem.lines[static_cast<std::size_t>(s.line)];
    j["short"].push_back({{"order", line.order}, {"line", line.line}, {"missing", s.missing}, {"why", s.why}});
  }
  if (extras) {
    j["by_hand"]["value"] = FiguresJson(extras->by_hand, problem.aim);
    AddExtras(j, problem, plan, *extras);
  }
  return j.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace heatkeep::command
