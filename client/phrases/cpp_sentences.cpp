#include <algorithm>
#include <array>
#include <cctype>

#include "client/phrases/phrase.h"
#include "client/phrases/tokens.h"

namespace heatkeep::phrases {
namespace {

using At = std::size_t;
using Texts = std::vector<std::string>;

// SQL, markup, control marks: not words for people.
bool Code(const std::string& text) {
  if (text.find_first_of("<>{}$|\1\n") != std::string::npos && text.find("<= most") == std::string::npos) return true;
  static constexpr std::array<std::string_view, 10> statements{
      "select", "insert", "update", "set transaction", "set datestyle", "listen", "order by", "group by", "join", "where"};
  const std::string_view words = std::string_view(text).substr(std::min(text.size(), text.find_first_not_of(' ')));
  const auto begins = [&](std::string_view statement) {
    return words.starts_with(statement) && words.substr(statement.size()).starts_with(' ');
  };
  return words.starts_with("on w.") || text.find("::text") != std::string::npos || text.find("is not null") != std::string::npos ||
      std::any_of(statements.begin(), statements.end(), begins);
}

bool PlainWord(const std::string& text) {
  return text.size() > 2 && std::all_of(text.begin(), text.end(), [](char c) { return std::isalpha(static_cast<unsigned char>(c)) != 0; });
}

// What a table's columns are and what is in each, for the manual: `vector<Column> columns{...}`, `vector<Column>& StockColumns() {...}`.
At BehindColumns(const Tokens& t, At i) {
  if (!t[i].IsWord("Column") || i + 1 >= t.size() || !t[i + 1].Is(">")) return i;
  At k = i + 2;
  int open = 0;
  while (k < t.size() && open >= 0 && !t[k].Is("{") && !t[k].Is(";")) {
    if (t[k].Is("(")) ++open;
    if (t[k].Is(")")) --open;
    ++k;
  }
  if (open < 0 || k == t.size() || !t[k].Is("{")) return i;
  for (int depth = 0; k < t.size(); ++k) {
    if (t[k].Is("{")) ++depth;
    if (t[k].Is("}") && --depth == 0) return k + 1;
  }
  return k;
}

Tokens WithoutColumns(const Tokens& all) {
  Tokens rest;
  for (At i = 0; i < all.size();) {
    const At behind = BehindColumns(all, i);
    if (behind == i) rest.push_back(all[i++]);
    else i = behind;
  }
  return rest;
}

class Gatherer : public Walk {
 public:
  Gatherer(const Tokens& tokens, bool single) : Walk(tokens), single_(single) {}

  Drafts All() {
    Scan(0, t_.size());
    return said_;
  }

 private:
  bool Opens(At i) const override { return t_[i].Is("(") || t_[i].Is("["); }
  bool Closes(At i) const override { return t_[i].Is(")") || t_[i].Is("]"); }
  bool Break(At i) const override {
    if (t_[i].kind == Token::Kind::Word)
      return t_[i].text == "return" || t_[i].text == "case" || t_[i].text == "throw" || t_[i].text == "else";
    static constexpr std::array<std::string_view, 7> signs{",", ";", "{", "}", "=", "+=", "<<"};
    return t_[i].kind == Token::Kind::Sign && std::find(signs.begin(), signs.end(), t_[i].text) != signs.end();
  }

  void Harvest(At i, At k) override {
    const bool returned = i > 0 && t_[i - 1].IsWord("return");
    for (const std::string& draft : Alternatives(i, k)) {
      const bool lone = draft.find('\1') == std::string::npos;
      if (Code(WithoutHoles(draft)) || (lone && !SeveralWords(draft) && !(single_ && returned && PlainWord(draft)))) continue;
      said_.insert(draft);
    }
  }

  static std::string WithoutHoles(const std::string& draft) {
    std::string text;
    for (At i = 0; i < draft.size(); ++i) {
      if (draft[i] == '\1' && i + 1 < draft.size() && std::isalpha(static_cast<unsigned char>(draft[i + 1]))) ++i;
      else text += draft[i];
    }
    return text;
  }

  Texts Alternatives(At i, At end) {
    for (At k = i; k < end; k = Opens(k) ? Behind(k, end) : k + 1) {
      if (!t_[k].Is("?")) continue;
      const At colon = ColonOf(k, end);
      Inside(i, k);
      Texts all = Alternatives(k + 1, colon);
      const Texts otherwise = Alternatives(std::min(colon + 1, end), end);
      all.insert(all.end(), otherwise.begin(), otherwise.end());
      return all;
    }
    Texts all{""};
    while (i < end) {
      At k = i;
      while (k < end && !t_[k].Is("+")) k = Opens(k) ? Behind(k, end) : k + 1;
      const Texts operand = Operand(i, k);
      Texts chained = Chained(all, operand);
      if (chained.empty()) chained = Chained(all, {Hole('W')});
      all = std::move(chained);
      i = k + 1;
    }
    return all;
  }

  At ColonOf(At question, At end) const {
    int depth = 0;
    for (At k = question; k < end; k = Opens(k) ? Behind(k, end) : k + 1) {
      if (t_[k].Is("?")) ++depth;
      if (t_[k].Is(":") && --depth == 0) return k;
    }
    return end;
  }

  Texts Operand(At i, At end) {
    if (i >= end) return {""};
    if (end == i + 1 && t_[i].kind == Token::Kind::Text) return {t_[i].text};
    if (t_[i].Is("(") && Behind(i, end) == end) return Alternatives(i + 1, end - 1);
    if (t_[end - 1].Is(")")) {
      At open = i;
      while (open < end && !t_[open].Is("(")) ++open;
      if (open > i && Behind(open, end) == end) {
        if (t_[open - 1].IsWord("string")) return Alternatives(open + 1, end - 1);
        Scan(open + 1, end - 1);
        if (t_[open - 1].IsWord("MmNumber")) return {Hole('l')};
        return {Hole(t_[open - 1].IsWord("to_string") || t_[open - 1].IsWord("Quoted") ? 'N' : 'W')};
      }
    }
    Inside(i, end);
    return {Hole(KindOf(i, end))};
  }

  // What a member or variable holds: words by its name, else a name or a number.
  char KindOf(At i, At end) const {
    for (At k = i; k < end; ++k) {
      const std::string& name = t_[k].text;
      static constexpr std::array<std::string_view, 11> words{"words",  "why",  "reason", "what",      "held",     "each",
                                                              "amount", "left", "text",   "where_now", "kExpected"};
      if (t_[k].kind == Token::Kind::Word && std::find(words.begin(), words.end(), name) != words.end()) return 'W';
    }
    return 'N';
  }

  const bool single_;
  Drafts said_;
};

}  // namespace

Drafts CppSentences(std::string_view source, bool single_words) {
  const Tokens tokens = WithoutColumns(CppTokens(source));
  return Gatherer(tokens, single_words).All();
}

}  // namespace heatkeep::phrases
