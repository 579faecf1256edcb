#include "client/phrases/tokens.h"

#include <array>
#include <cctype>

namespace heatkeep::phrases {
namespace {

bool InWord(char c) { return std::isalnum(static_cast<unsigned char>(c)) != 0 || c == '_'; }

std::string_view TakeWord(std::string_view& rest) {
  std::size_t n = 0;
  while (n < rest.size() && InWord(rest[n])) ++n;
  const std::string_view word = rest.substr(0, n);
  rest.remove_prefix(n);
  return word;
}

template <std::size_t N>
std::string_view TakeSign(std::string_view& rest, const std::array<std::string_view, N>& longer) {
  std::size_t n = 1;
  for (const std::string_view sign : longer)
    if (rest.starts_with(sign) && sign.size() > n) n = sign.size();
  const std::string_view sign = rest.substr(0, n);
  rest.remove_prefix(n);
  return sign;
}

void SkipTo(std::string_view& rest, std::string_view end) {
  const std::size_t at = rest.find(end);
  rest.remove_prefix(at == std::string_view::npos ? rest.size() : at + end.size());
}

void AppendUtf8(std::string& text, unsigned long code) {
  if (code < 0x80) {
    text += static_cast<char>(code);
  } else if (code < 0x800) {
    text += static_cast<char>(0xC0 | (code >> 6));
    text += static_cast<char>(0x80 | (code & 0x3F));
  } else {
    text += static_cast<char>(0xE0 | (code >> 12));
    text += static_cast<char>(0x80 | ((code >> 6) & 0x3F));
    text += static_cast<char>(0x80 | (code & 0x3F));
  }
}

// Behind the opening quote; takes the closing one.
std::string TakeCppText(std::string_view& rest) {
  std::string text;
  while (!rest.empty() && rest.front() != '"') {
    if (rest.front() != '\\' || rest.size() < 2) {
      text += rest.front();
      rest.remove_prefix(1);
      continue;
    }
    const char c = rest[1];
    if (c == 'u' && rest.size() >= 6) {
      AppendUtf8(text, std::stoul(std::string(rest.substr(2, 4)), nullptr, 16));
      rest.remove_prefix(6);
      continue;
    }
    text += c == 'n' ? '\n' : c == 't' ? '\t' : c == 'x' || c == '0' ? '\1' : c;
    rest.remove_prefix(2);
  }
  if (!rest.empty()) rest.remove_prefix(1);
  return text;
}

std::string TakeSqlText(std::string_view& rest) {
  std::string text;
  while (!rest.empty()) {
    if (rest.front() == '\'') {
      if (rest.size() < 2 || rest[1] != '\'') break;
      rest.remove_prefix(1);
    }
    text += rest.front();
    rest.remove_prefix(1);
  }
  if (!rest.empty()) rest.remove_prefix(1);
  return text;
}

}  // namespace

Tokens SqlTokens(std::string_view rest) {
  static constexpr std::array<std::string_view, 14> longer{
      "||", "->>", "->", "::", ":=", "<>", "<=", ">=", "!~", "#>>", "@?", "=>", "@>", ".."};
  Tokens tokens;
  while (!rest.empty()) {
    if (std::isspace(static_cast<unsigned char>(rest.front()))) rest.remove_prefix(1);
    else if (rest.starts_with("--")) SkipTo(rest, "\n");
    else if (rest.starts_with("/*")) SkipTo(rest, "*/");
    else if (rest.starts_with("$$")) rest.remove_prefix(2);
    else if (rest.starts_with("E'")) rest.remove_prefix(2), tokens.push_back({Token::Kind::Sign, TakeSqlText(rest)});  // a body, not words
    else if (rest.front() == '\'') rest.remove_prefix(1), tokens.push_back({Token::Kind::Text, TakeSqlText(rest)});
    else if (InWord(rest.front())) tokens.push_back({Token::Kind::Word, std::string(TakeWord(rest))});
    else tokens.push_back({Token::Kind::Sign, std::string(TakeSign(rest, longer))});
  }
  return tokens;
}

Tokens CppTokens(std::string_view rest) {
  static constexpr std::array<std::string_view, 12> longer{"+=", "::", "->", "<<", "==", "!=", "&&", "||", "<=", ">=", "++", "--"};
  Tokens tokens;
  while (!rest.empty()) {
    if (std::isspace(static_cast<unsigned char>(rest.front()))) {
      rest.remove_prefix(1);
    } else if (rest.starts_with("//") || rest.front() == '#') {
      SkipTo(rest, "\n");
    } else if (rest.starts_with("R\"")) {
      const std::size_t open = rest.find('(');
      const std::string end = ")" + std::string(rest.substr(2, open - 2)) + "\"";
      SkipTo(rest, end);
    } else if (rest.front() == '\'') {  // a character
      rest.remove_prefix(rest.size() > 1 && rest[1] == '\\' ? 2 : 1);
      rest.remove_prefix(1);
      SkipTo(rest, "'");
      tokens.push_back({Token::Kind::Word, "0"});
    } else if (rest.front() == '"') {
      rest.remove_prefix(1);
      std::string text = TakeCppText(rest);
      if (!tokens.empty() && tokens.back().kind == Token::Kind::Text) tokens.back().text += text;
      else tokens.push_back({Token::Kind::Text, text});
    } else if (InWord(rest.front())) {
      std::size_t n = 0;
      const bool number = std::isdigit(static_cast<unsigned char>(rest.front())) != 0;
      while (n < rest.size() && (InWord(rest[n]) || (number && (rest[n] == '\'' || rest[n] == '.')))) ++n;
      tokens.push_back({Token::Kind::Word, std::string(rest.substr(0, n))});
      rest.remove_prefix(n);
    } else {
      tokens.push_back({Token::Kind::Sign, std::string(TakeSign(rest, longer))});
    }
  }
  return tokens;
}

Walk::At Walk::Behind(At i, At end) const {
  int depth = 0;
  for (; i < end; ++i) {
    if (Opens(i)) ++depth;
    else if (Closes(i) && --depth == 0) return i + 1;
  }
  return end;
}

void Walk::Scan(At i, At end) {
  while (i < end) {
    i = Skipped(i, end);
    if (i == end || Break(i) || Closes(i)) {
      ++i;
      continue;
    }
    At k = i;
    while (k < end && !Break(k) && !Closes(k)) k = Opens(k) ? Behind(k, end) : k + 1;
    Harvest(i, k);
    i = k;
  }
}

void Walk::Inside(At i, At end) {
  while (i < end) {
    const At k = Opens(i) ? Behind(i, end) : i + 1;
    if (k > i + 1) Scan(i + 1, Closes(k - 1) ? k - 1 : k);
    i = k;
  }
}

}  // namespace heatkeep::phrases
