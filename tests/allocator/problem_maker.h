// Short ways to write problems in tests. Lengths in millimetres (doubles only here, rounded to the nanometre).
#pragma once

#include <cmath>
#include <string>

#include "client/allocator/allocate.h"
#include "client/allocator/check_plan.h"
#include "client/allocator/problem.h"

namespace heatkeep::allocator::test {

inline Length Mm(double mm) { return {std::llround(mm * 1e6)}; }

inline Piece MakePiece(const std::string& tag, PieceKind kind, double mm, std::optional<int> count = 1) {
  Piece p;
  p.tag = tag;
  p.kind = kind;
  p.section = "R80";
  p.grade = "42CrMo4";
  p.heat = "K3317";
  p.length = Mm(mm);
  p.square_ends = kind == PieceKind::Drop ? 1 : 0;
  p.count = count;
  return p;
}
inline Piece Bar(const std::string& tag, double mm, std::optional<int> count = 1) { return MakePiece(tag, PieceKind::Bar, mm, count); }
inline Piece Drop(const std::string& tag, double mm) { return MakePiece(tag, PieceKind::Drop, mm, 1); }

inline Line Cuts(const std::string& line, double mm, int quantity) {
  Line l;
  l.order = "O1";
  l.line = line;
  l.section = "R80";
  l.grade = "42CrMo4";
  l.nominal = Mm(mm);
  l.quantity = quantity;
  return l;
}

inline GroupRules Rules(double kerf, double trim, double grip, double keep) { return {Mm(kerf), Mm(trim), Mm(grip), Mm(keep)}; }

// A textbook problem: one stock length without kerf, trim or grip, as many as wanted.
inline Problem Textbook(double stock, const std::vector<std::pair<double, int>>& demand) {
  Problem problem;
  problem.aim = Aim::FewestBars;
  problem.pieces.push_back(Bar("S", stock, std::nullopt));
  for (const auto& [mm, quantity] : demand) problem.lines.push_back(Cuts(std::to_string(problem.lines.size() + 1), mm, quantity));
  return problem;
}

}  // namespace heatkeep::allocator::test
