// Sources cut into tokens, as far as finding their sentences needs it: words and numbers, texts (the content of a literal, escapes taken
// back, neighbours joined) and signs. Comments, #-lines and raw strings (SQL inside C++) are left out; $$ of SQL is looked through.
#pragma once

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

Tokens SqlTokens(std::string_view source);
Tokens CppTokens(std::string_view source);

}  // namespace heatkeep::phrases
