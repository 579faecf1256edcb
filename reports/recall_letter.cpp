#include <algorithm>
#include <stdexcept>

#include "reports/flow_parts.h"
#include "reports/quantity_text.h"
#include "reports/recall_report.h"
#include "reports/sheet_words.h"

namespace heatkeep {
namespace {

// The words of the letter in one language; %1: the metal.
struct Texts {
  std::string drill, to, from, date, subject, opening, reason, please, first, second, third, table, note, day, order, piece, count, length,
      heat, total, closing, own, sign;
};

const Texts& TextsOf(Language language) {
  static const Texts english{
      "DRILL: nothing has happened, this letter is not sent",
      "To",
      "From",
      "Date",
      "Metal we shipped to you",
      "We are looking into metal of which the pieces listed below were cut. By our records we shipped them to you.",
      "Reason: ",
      "Until you hear from us again, please:",
      "1.  set these pieces apart, and neither use nor process them nor pass them on;",
      "2.  keep their marks, labels and papers as they are;",
      "3.  tell us in writing where they are now, and which were used, or passed on and to whom.",
      "The pieces",
      "delivery note",
      "date",
      "your order / line",
      "our tag",
      "pieces",
      "length mm, of all",
      "heat",
      "in all",
      "This letter does not say that there is anything wrong with the pieces. It says what our book holds, so that they can be found.",
      "It states only our own work: receiving, sawing to length, measuring, marking and moving. It replaces no inspection document.",
      "Name and signature"};
  static const Texts german{
      "\u00DCBUNG: es ist nichts geschehen, dieser Brief wird nicht versandt",
      "An",
      "Von",
      "Datum",
      "An Sie geliefertes Material",
      "Wir pr\u00FCfen Material, aus dem die unten genannten St\u00FCcke ges\u00E4gt wurden. Nach unseren Aufzeichnungen haben wir sie an Sie geliefert.",
      "Grund: ",
      "Bitte, bis Sie wieder von uns h\u00F6ren:",
      "1.  legen Sie diese St\u00FCcke beiseite; verwenden und bearbeiten Sie sie nicht und geben Sie sie nicht weiter;",
      "2.  lassen Sie ihre Kennzeichen, Etiketten und Papiere, wie sie sind;",
      "3.  teilen Sie uns schriftlich mit, wo sie jetzt sind, welche verwendet wurden und welche weitergegeben wurden, und an wen.",
      "Die St\u00FCcke",
      "Lieferschein",
      "Datum",
      "Ihr Auftrag / Position",
      "unsere Nummer",
      "St\u00FCck",
      "L\u00E4nge mm, gesamt",
      "Schmelze",
      "zusammen",
      "Dieser Brief sagt nicht, dass mit den St\u00FCcken etwas nicht stimmt. Er sagt, was unser Buch enth\u00E4lt, damit sie gefunden werden.",
      "Er sagt nur etwas \u00FCber unsere eigene Arbeit: annehmen, auf L\u00E4nge s\u00E4gen, messen, kennzeichnen, bewegen. Er ersetzt keine Pr\u00FCfbescheinigung.",
      "Name und Unterschrift"};
  return language == Language::German ? german : english;
}

FlowItem Row(double width, const std::vector<std::string>& cells, bool bold, int head) {
  static const std::vector<double> at{0, 34, 56, 94, 122, 138, 166};
  FlowItem item{5.6, [=](Pen& pen, double y) {
                  for (std::size_t i = 0; i < cells.size(); ++i) {
                    const bool right = i == 4 || i == 5;
                    const double end = i + 1 < at.size() ? at[i + 1] : width;
                    pen.text(kMargin + at[i], y + 0.6, end - at[i] - 2, cells[i],
                             {bold ? 2.7 : 3.1, bold, i == 3 && !bold, false, right ? Align::Right : Align::Left, i == 3 && !bold});
                  }
                  pen.line(kMargin, y + 5.3, kMargin + width, y + 5.3, bold ? 0.3 : 0.1);
                }};
  item.head = head;
  return item;
}

FlowItem Addressed(double width, const std::string& what, const std::string& who) {
  return {6, [=](Pen& pen, double y) {
            pen.text(kMargin, y + 0.8, 20, what, {2.9});
            if (who.empty()) pen.line(kMargin + 20, y + 4.6, kMargin + 100, y + 4.6, 0.15);
            else pen.text(kMargin + 20, y + 0.4, width - 20, who, {3.6, true});
          }};
}

// Millimetres as the reader of the letter writes numbers: to a German 3171.825 is three million.
std::string Millimetres(Length length, Language language) {
  std::string text = MmNumber(length);
  if (language == Language::German) std::replace(text.begin(), text.end(), '.', ',');
  return text;
}

}  // namespace

void WriteRecallLetter(const std::string& path, const RecallRecord& record, const std::string& customer, const LetterWords& words,
                       const PrintOptions& options) {
  const double width = PageWidth(options.size) - 2 * kMargin;
  const Texts& t = TextsOf(words.language);
  Flow flow;
  flow.title = t.subject;
  flow.head_height = record.drill ? 14 : 6;
  flow.next_head_height = flow.head_height;
  flow.record = record.proof.digest;
  flow.head = [=](Pen& pen, int page, int pages) {
    pen.text(kMargin + width - 32, kMargin - 0.4, 32, std::to_string(page) + " / " + std::to_string(pages),
             {3.2, false, false, false, Align::Right});
    if (record.drill) pen.text(kMargin, kMargin + 3.6, width, t.drill, {4.6, true});
  };
  if (!record.proof.digest.empty())
    flow.foot = [=](Pen& pen, double y) {
      pen.line(kMargin, y, kMargin + width, y);
      pen.text(kMargin, y + 0.6, width, record.proof.digest, {2.5, false, true});
    };
  const auto say = [&](const std::string& text, const TextStyle& style, double space) {
    flow.items.push_back(TextRow(kMargin, width, text, style, space));
  };
  flow.items.push_back(Addressed(width, t.from, words.from));
  flow.items.push_back(Addressed(width, t.to, customer));
  flow.items.push_back(Addressed(width, t.date, record.asked_at.substr(0, 10)));
  say(" ", {3.4}, 3);
  flow.items.push_back(SectionHead(kMargin, width, t.subject));
  say(t.opening, {3.5}, 2);
  if (!words.reason.empty()) say(t.reason + words.reason, {3.5}, 2);
  say(t.please, {3.5, true}, 1);
  for (const std::string& step : {t.first, t.second, t.third}) flow.items.push_back(TextRow(kMargin + 4, width - 4, step, {3.5}, 1));
  say(t.closing, {3.5}, 2);
  flow.items.push_back(SectionHead(kMargin, width, t.table));
  flow.repeated.push_back(Row(width, {t.note, t.day, t.order, t.piece, t.count, t.length, t.heat}, true, -1));
  flow.items.push_back(flow.repeated[0]);
  flow.items.back().with_next = true;
  int pieces = 0;
  Length length;
  for (const RecallLine& l : record.lines) {
    if (!IsWithCustomer(l) || l.customer != customer) continue;
    pieces += l.count;
    length += l.length;
    flow.items.push_back(Row(width,
                             {l.note, ShortTime(l.gone_at).substr(0, 10), l.order.empty() ? "" : l.order + " / " + l.line, l.tag,
                              std::to_string(l.count), Millimetres(l.length, words.language), l.heat.empty() ? "-" : HeatInGroups(l.heat)},
                             false, 0));
  }
  if (pieces == 0) throw std::runtime_error(path + ": nothing of this was shipped to " + customer);
  flow.items.push_back(Row(width, {t.total, "", "", "", std::to_string(pieces), Millimetres(length, words.language), ""}, true, 0));
  say(t.own, {2.9}, 8);
  flow.items.push_back({14, [=](Pen& pen, double y) {
                          pen.line(kMargin, y + 8, kMargin + 80, y + 8, 0.15);
                          pen.text(kMargin, y + 9, 80, t.sign, {2.7});
                        }});
  WriteFlow(path, flow, options);
}

}  // namespace heatkeep
