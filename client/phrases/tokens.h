// Sources cut into tokens, as far as finding their sentences needs it: words and numbers, texts (the content of a literal, escapes taken
// back, neighbours joined) and signs. Comments, #-lines and raw strings (SQL inside C++) are left out; $$ of SQL is looked through.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace heatkeep::phrases {

struct Token {
  enum class Kind { Word, Text, Sign };
  Kind kind = Kind::Sign;
  std::string text;

  bool Is(std::string_view sign) const { return kind == Kind::Sign && text == sign; }
  bool IsWord(std::string_view word) const { return kind == Kind::Word && text == word; }
};

using Tokens = std::vector<Token>;

// Expressions in tokens: what opens and closes them differs from language to language, how they are walked does not.
class Walk {
 public:
  using At = std::size_t;
  virtual ~Walk() = default;

 protected:
  explicit Walk(const Tokens& tokens) : t_(tokens) {}
  virtual bool Opens(At i) const = 0;
  virtual bool Closes(At i) const = 0;
  virtual bool Break(At i) const = 0;               // between two expressions
  virtual At Skipped(At i, At) const { return i; }  // behind what says nothing, or `i`
  virtual void Harvest(At i, At k) = 0;             // an expression, from i to just before k

  // Harvests every expression from i to end.
  void Scan(At i, At end);

  // Just behind the bracket, or `end`, that closes what opens at `i`.
  At Behind(At i, At end) const;
  // Scans what is in the brackets of an expression that is no text itself.
  void Inside(At i, At end);

  const Tokens& t_;
};

Tokens SqlTokens(std::string_view source);
Tokens CppTokens(std::string_view source);

}  // namespace heatkeep::phrases
