#include <algorithm>
#include <array>
#include <set>

#include "client/phrases/phrase.h"
#include "client/phrases/tokens.h"

namespace heatkeep::phrases {
namespace {

using At = std::size_t;
using Texts = std::vector<std::string>;

// Words between which one expression ends and another begins.
const std::set<std::string, std::less<>>& Breaks() {
  static const std::set<std::string, std::less<>> words{
      "select", "from",    "where",    "then",    "else",    "when",      "as",       "is",     "and",     "or",    "not",      "in",
      "return", "returns", "if",       "elsif",   "loop",    "begin",     "declare",  "using",  "perform", "into",  "values",   "set",
      "union",  "all",     "on",       "join",    "lateral", "cross",     "group",    "having", "order",   "by",    "limit",    "distinct",
      "exists", "default", "like",     "between", "raise",   "exception", "language", "end",    "for",     "query", "continue", "insert",
      "update", "create",  "function", "filter",  "with",    "similar",   "no",       "only",   "enum"};
  return words;
}

// Columns and variables that hold words of the book, not a name or a number.
bool HoldsWords(std::string_view name) {
  static const std::set<std::string, std::less<>> words{
      "state",       "class",   "kind",     "fate",   "why",        "what",  "verdict",    "over",    "wrong",
      "differences", "deed",    "identity", "papers", "process",    "cause", "v_no",       "w",       "v_answer",
      "v_next",      "v_fate",  "p_fate",   "p_what", "p_expected", "p_one", "p_more",     "sqlerrm", "answer",
      "p_state",     "p_cause", "p_deed",   "scope",  "way",        "says",  "quarantine", "reason",  "v_blocked"};
  return words.contains(name) || name.find("words") != std::string_view::npos || name.find("held") != std::string_view::npos ||
      name.find("wrong") != std::string_view::npos || name.find("refus") != std::string_view::npos ||
      name.find("stop") != std::string_view::npos || name.find("why") != std::string_view::npos;
}

bool Pattern(const std::string& text) {
  return text.find_first_of("^${}\\@[]|") != std::string::npos || text.find("%I") != std::string::npos ||
      text.find("%L") != std::string::npos;
}

// More than one word: a word alone may be a key.
bool Sentence(const std::string& text) { return text.find('\1') != std::string::npos || SeveralWords(text); }

class Gatherer : public Walk {
 public:
  explicit Gatherer(const Tokens& tokens) : Walk(tokens) {}

  Drafts All() {
    Enums();
    Deeds();
    Scan(0, t_.size());
    return said_;
  }

 private:
  bool Opens(At i) const override {
    return t_[i].Is("(") || t_[i].Is("[") || (t_[i].IsWord("case") && !(i > 0 && t_[i - 1].IsWord("end")));
  }
  // `end` of a case; that of a block has `if`, `loop`, `$$` or `;` behind it and no case before it.
  bool Closes(At i) const override {
    return t_[i].Is(")") || t_[i].Is("]") ||
        (t_[i].IsWord("end") && !(i + 1 < t_.size() && (t_[i + 1].IsWord("if") || t_[i + 1].IsWord("loop") || t_[i + 1].IsWord("case"))));
  }

  // create type x as enum ('a', 'b'): words of the book, each.
  void Enums() {
    for (At i = 0; i + 1 < t_.size(); ++i) {
      const bool enumerated = t_[i].IsWord("enum") && t_[i + 1].Is("(");
      const bool added = t_[i].IsWord("add") && t_[i + 1].IsWord("value");
      if (!enumerated && !added) continue;
      for (At k = i + 2; k < t_.size() && !t_[k].Is(")") && !t_[k].Is(";"); ++k)
        if (t_[k].kind == Token::Kind::Text) said_.insert(t_[k].text);
    }
  }

  // create function api.put_away(p_request ...): a deed, by its name in words.
  void Deeds() {
    for (At i = 0; i + 6 < t_.size(); ++i) {
      if (!t_[i].IsWord("create") || !t_[i + 1].IsWord("function") || !t_[i + 2].IsWord("api") || !t_[i + 6].IsWord("p_request")) continue;
      std::string name = t_[i + 4].text;
      std::replace(name.begin(), name.end(), '_', ' ');
      said_.insert(name);
    }
  }

  bool Break(At i) const override {
    if (t_[i].kind == Token::Kind::Word)
      return Breaks().contains(t_[i].text) && !(i + 1 < t_.size() && t_[i + 1].Is("(") && (t_[i].text == "left" || t_[i].text == "right"));
    static constexpr std::array<std::string_view, 14> signs{",", ";", "=", "<>", "<", ">", "<=", ">=", ":=", "~", "!~", "=>", "@?", "}"};
    return t_[i].kind == Token::Kind::Sign && std::find(signs.begin(), signs.end(), t_[i].text) != signs.end();
  }

  // `comment on`, for who reads the tables; `execute` of SQL that is put together ("grant execute on" is none).
  At Skipped(At i, At end) const override {
    if (i + 1 >= end || !(t_[i].IsWord("comment") ? t_[i + 1].IsWord("on") : t_[i].IsWord("execute") && !t_[i + 1].IsWord("on"))) return i;
    while (i < end && !t_[i].Is(";")) ++i;
    return i;
  }

  void Harvest(At i, At k) override {
    if (k == i + 1 && t_[i].kind == Token::Kind::Text && Compared(i)) return;
    for (const std::string& draft : Alternatives(i, k))
      if (Sentence(draft)) Say(draft);
  }

  bool Compared(At i) const {
    if (i < 2) return false;
    if (t_[i - 1].IsWord("interval") || t_[i - 1].IsWord("timestamptz")) return true;
    static const std::set<std::string, std::less<>> told{"message", "hint", "detail", "words", "reason", "why"};
    return (t_[i - 1].Is("=") && !told.contains(t_[i - 2].text)) || t_[i - 1].Is("<>") || t_[i - 1].Is("~") || t_[i - 1].Is("!~") ||
        t_[i - 1].IsWord("like");
  }

  // A format that is only named here has its holes filled elsewhere.
  void Say(std::string draft) {
    for (At at = draft.find("%s"); at != std::string::npos; at = draft.find("%s")) draft.replace(at, 2, Hole('N'));
    if (!Pattern(draft)) said_.insert(draft);
  }

  // The texts that an expression can be.
  Texts Alternatives(At i, At end) {
    Texts all{""};
    while (i < end) {
      At k = i;
      while (k < end && !t_[k].Is("||")) k = Opens(k) ? Behind(k, end) : k + 1;
      Texts operand = Operand(i, k);
      const bool optional = operand.size() > 1 && std::find(operand.begin(), operand.end(), "") != operand.end();
      if (optional && std::all_of(operand.begin(), operand.end(), [](const std::string& o) {
            return o.empty() || o.find_first_of(",;(-") == o.find_first_not_of(' ');
          })) {
        for (const std::string& tail : operand) Say(tail);  // a clause of its own
        operand = {""};
      }
      Texts chained = Chained(all, operand);
      if (chained.empty()) {
        for (const std::string& part : operand) Say(part);
        chained = Chained(all, {Hole('W')});
      }
      all = std::move(chained);
      i = k + 1;
    }
    return all;
  }

  Texts Operand(At i, At end) {
    while (end >= i + 3 && t_[end - 1].kind == Token::Kind::Word && t_[end - 2].Is("::")) end -= 2;
    if (i >= end) return {""};
    if (t_[i].Is("(") && Behind(i, end) == end) return t_[i + 1].IsWord("select") ? Selected(i + 2, end - 1) : Whole(i + 1, end - 1);
    if (end == i + 1 && t_[i].kind == Token::Kind::Text) return {t_[i].text};
    if (t_[i].IsWord("null") && end == i + 1) return {""};
    if (t_[i].IsWord("case") && Behind(i, end) == end) return Cases(i + 1, end - 1);
    At open = i;
    while (open < end && (t_[open].kind == Token::Kind::Word || t_[open].Is("."))) ++open;
    if (open > i && open < end && t_[open].Is("(") && Behind(open, end) == end) return Called(t_[open - 1].text, open + 1, end - 1);
    Inside(i, end);
    return {Hole(KindOf(i, end))};
  }

  // In brackets: one expression, or several that are scanned by themselves.
  Texts Whole(At i, At end) {
    for (At k = i; k < end; k = Opens(k) ? Behind(k, end) : k + 1) {
      if (!Break(k)) continue;
      Scan(i, end);
      return {Hole(KindOf(i, end))};
    }
    return Alternatives(i, end);
  }

  Texts Selected(At i, At end) {
    while (i < end && t_[i].IsWord("distinct")) ++i;
    At k = i;
    while (k < end && !Break(k)) k = Opens(k) ? Behind(k, end) : k + 1;
    Scan(k, end);
    return Alternatives(i, k);
  }

  Texts Cases(At i, At end) {
    Texts all;
    bool otherwise = false;
    for (At k = i; k < end;) {
      const bool branch = t_[k].IsWord("then") || t_[k].IsWord("else");
      otherwise = otherwise || t_[k].IsWord("else");
      At e = k + 1;
      if (branch) {
        while (e < end && !t_[e].IsWord("when") && !t_[e].IsWord("else")) e = Opens(e) ? Behind(e, end) : e + 1;
        const Texts one = Alternatives(k + 1, e);
        all.insert(all.end(), one.begin(), one.end());
      } else {
        while (e < end && !t_[e].IsWord("then") && !t_[e].IsWord("else")) e = Opens(e) ? Behind(e, end) : e + 1;
        Conditions(k, e);
      }
      k = e;
    }
    if (!otherwise) all.push_back("");
    return Once(all);
  }

  // A literal alone between case, when and then is compared with, not said.
  void Conditions(At i, At end) {
    while (i < end && !t_[i].Is("(")) ++i;
    if (i < end) Scan(i, end);
  }

  std::vector<std::pair<At, At>> Arguments(At i, At end) const {
    std::vector<std::pair<At, At>> arguments;
    At from = i;
    for (At k = i; k < end; k = Opens(k) ? Behind(k, end) : k + 1) {
      if (!t_[k].Is(",")) continue;
      arguments.emplace_back(from, k);
      from = k + 1;
    }
    if (from < end) arguments.emplace_back(from, end);
    return arguments;
  }

  Texts Called(const std::string& name, At i, At end) {
    const auto arguments = Arguments(i, end);
    if (name == "format" && !arguments.empty() && t_[arguments[0].first].kind == Token::Kind::Text) return {Formatted(arguments)};
    if (name == "coalesce") {
      Texts all;
      for (const auto& [from, to] : arguments) {
        for (std::string& text : Alternatives(from, to)) all.push_back(std::move(text));
      }
      return Once(all);
    }
    if ((name == "nullif" || name == "string_agg" || name == "min" || name == "max" || name == "concat") && !arguments.empty()) {
      At from = arguments[0].first;
      while (from < arguments[0].second && t_[from].IsWord("distinct")) ++from;
      if (name != "string_agg") return Alternatives(from, arguments[0].second);
      const Texts parts = Alternatives(from, FirstBreak(from, arguments[0].second));
      bool words = arguments.size() > 1 && t_[arguments[1].first].text == " and ";  // which the reader's language says
      for (const std::string& part : parts) {
        words = words || part != Hole('N');
        Say(part);
      }
      return {Hole(words ? 'W' : 'N')};
    }
    Scan(i, end);
    for (const auto& [from, to] : arguments)  // a number of them, by the word for one and for more
      if (name == "of_them" && t_[from].kind == Token::Kind::Text) Say(t_[from].text);
    bool words = name == "concat_ws" || name == "of_them" || name == "replace" || HoldsWords(name);
    for (const auto& [from, to] : arguments) {
      if (to == from + 1 && t_[from].kind == Token::Kind::Text) continue;
      words = words || KindOf(from, to) == 'W';
    }
    const char kind = words ? 'W' : KindOf(i, end);
    return {Hole(kind)};
  }

  At FirstBreak(At i, At end) const {
    while (i < end && !Break(i)) i = Opens(i) ? Behind(i, end) : i + 1;
    return i;
  }

  std::string Formatted(const std::vector<std::pair<At, At>>& arguments) {
    const std::string& format = t_[arguments[0].first].text;
    std::string draft;
    At next = 1;
    for (At i = 0; i < format.size(); ++i) {
      if (format[i] != '%' || i + 1 == format.size()) {
        draft += format[i];
      } else if (format[++i] == '%') {
        draft += '%';
      } else if (format[i] != 's') {
        draft += "%I";  // a statement, not words
      } else if (next < arguments.size()) {
        draft += Filled(arguments[next].first, arguments[next].second);
        ++next;
      }
    }
    return draft;
  }

  // What a hole is filled with; its own texts are said too.
  std::string Filled(At i, At end) {
    const Texts texts = Alternatives(i, end);
    if (texts.size() == 1 && texts[0].size() == 2 && texts[0][0] == '\1') return texts[0];
    const bool names = std::all_of(texts.begin(), texts.end(), [](const std::string& text) { return text.empty() || text == Hole('N'); });
    if (names) return Hole('N');
    const bool numbers = std::all_of(texts.begin(), texts.end(), [](const std::string& text) { return text.empty() || text == Hole('l'); });
    if (numbers) return Hole('l');
    for (const std::string& text : texts) Say(text);
    return Hole('W');
  }

  char KindOf(At i, At end) const {
    char kind = 'N';
    for (At k = i; k < end; ++k) {
      if (t_[k].IsWord("1e6")) return 'l';
      if (t_[k].kind == Token::Kind::Word && HoldsWords(t_[k].text) && !(k + 1 < end && (t_[k + 1].Is(".") || t_[k + 1].Is("="))))
        kind = 'W';
      if (t_[k].kind == Token::Kind::Text && k > i && (t_[k - 1].Is("->>") || t_[k - 1].Is("->")) && HoldsWords(t_[k].text)) kind = 'W';
    }
    return kind;
  }

  static Texts Once(const Texts& texts) {
    const std::set<std::string> once(texts.begin(), texts.end());
    return {once.begin(), once.end()};
  }

  Drafts said_;
};

}  // namespace

Drafts SqlSentences(std::string_view source) {
  const Tokens tokens = SqlTokens(source);
  return Gatherer(tokens).All();
}

}  // namespace heatkeep::phrases
