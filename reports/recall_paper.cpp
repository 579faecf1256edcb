#include <algorithm>
#include <functional>
#include <iterator>

#include "reports/flow_parts.h"
#include "reports/quantity_text.h"
#include "reports/recall_report.h"
#include "reports/sheet_words.h"

namespace heatkeep {
namespace {

constexpr double kRow = 9.4;
constexpr TextStyle kHeadLeft{2.6, true};
constexpr TextStyle kHeadRight{2.6, true, false, false, Align::Right};
constexpr TextStyle kRight{3.2, false, false, false, Align::Right};

// Columns of every list: a box to tick or nothing, where, what, count, length, mass, whose.
struct Columns {
  double where = 0, tag = 0, what = 0, count = 0, length = 0, mass = 0, more = 0, width = 0;
};
Columns ColumnsOf(double width) {
  Columns c;
  c.where = 7;
  c.tag = 35;
  c.what = 61;
  c.count = 99;
  c.length = 110;
  c.mass = 132;
  c.more = 152;
  c.width = width;
  return c;
}

FlowItem Head(const Columns& c, const std::string& where, const std::string& more) {
  return {5.6, [=](Pen& pen, double y) {
            pen.text(kMargin + c.where, y + 0.6, c.tag - c.where - 1, where, kHeadLeft);
            pen.text(kMargin + c.tag, y + 0.6, c.what - c.tag - 1, "tag", kHeadLeft);
            pen.text(kMargin + c.what, y + 0.6, c.count - c.what - 1, "what, section, heat", kHeadLeft);
            pen.text(kMargin + c.count, y + 0.6, 9, "count", kHeadRight);
            pen.text(kMargin + c.length, y + 0.6, 20, "length mm", kHeadRight);
            pen.text(kMargin + c.mass, y + 0.6, 17, "mass", kHeadRight);
            pen.text(kMargin + c.more, y + 0.6, c.width - c.more, more, kHeadLeft);
            pen.line(kMargin, y + 4.9, kMargin + c.width, y + 4.9, 0.3);
          }};
}

std::string OrderWords(const RecallLine& l) { return l.order.empty() ? "" : "order " + l.order + "/" + l.line; }

FlowItem Row(const RecallLine& l, const Columns& c, bool tick, int head) {
  std::string where = tick ? l.place : IsWithCustomer(l) ? "note " + l.note : l.place.empty() ? l.whereabouts : l.place;
  const std::string below = IsWithCustomer(l) ? ShortTime(l.gone_at).substr(0, 10)
      : tick                                  ? (l.whereabouts == "at saw" ? "AT A SAW: STOP" : l.whereabouts)
                                              : l.whereabouts;
  std::string more = OrderWords(l), second = l.words;
  if (!IsWithCustomer(l)) {
    if (!l.customer.empty()) second = l.customer + (second.empty() ? "" : ": " + second);
    if (!l.note.empty()) second = "note " + l.note + (second.empty() ? "" : ": " + second);
    if (!l.owner.empty() && l.owner != "ours") more += (more.empty() ? "" : ", ") + ("belongs to " + l.owner);
  }
  if (more.empty()) std::swap(more, second);
  FlowItem item{kRow, [=](Pen& pen, double y) {
                  if (tick) pen.box(kMargin + 0.6, y + 2, 4.4, 4.4, 0.3);
                  pen.text(kMargin + c.where, y + 0.9, c.tag - c.where - 1, where, {3.4, true});
                  pen.text(kMargin + c.where, y + 5.1, c.tag - c.where - 1, below, {2.6, l.whereabouts == "at saw"});
                  pen.text(kMargin + c.tag, y + 0.9, c.what - c.tag - 1, l.tag, {3.2, true, true, false, Align::Left, true});
                  pen.text(kMargin + c.tag, y + 5.1, c.what - c.tag - 1, l.held ? "HELD" : "not held", {2.6, l.held});
                  pen.text(kMargin + c.what, y + 0.9, c.count - c.what - 1, l.what + ", " + l.section, {3.1});
                  pen.text(kMargin + c.what, y + 5.1, c.count - c.what - 1,
                           l.heat.empty() ? "no heat" : "heat " + HeatInGroups(l.heat) + " " + l.mill, {2.6});
                  pen.text(kMargin + c.count, y + 0.9, 9, std::to_string(l.count), kRight);
                  pen.text(kMargin + c.length, y + 0.9, 20, MmNumber(l.length), kRight);
                  pen.text(kMargin + c.mass, y + 0.9, 17, KgText(l.mass), kRight);
                  pen.text(kMargin + c.more, y + 0.9, c.width - c.more, more, {2.9});
                  pen.text(kMargin + c.more, y + 5.1, c.width - c.more, second, {2.6});
                  pen.line(kMargin, y + kRow - 0.1, kMargin + c.width, y + kRow - 0.1, 0.1);
                }};
  item.head = head;
  return item;
}

std::string CountWords(const std::vector<RecallLine>& lines) {
  RecallRecord all;
  all.lines = lines;
  int pieces = 0;
  Length length;
  Mass mass;
  for (const RecallSum& sum : RecallSums(all)) {
    pieces += sum.pieces;
    length += sum.length;
    mass += sum.mass;
  }
  return std::to_string(pieces) + (pieces == 1 ? " piece, " : " pieces, ") + MetreText(length) + ", " + KgText(mass);
}

struct List {
  std::string title, where, more, none;
  bool tick = false;
};

void AddList(Flow& flow, const List& list, const std::vector<RecallLine>& lines, const Columns& c) {
  flow.items.push_back(SectionHead(kMargin, c.width, list.title + (lines.empty() ? "" : ": " + CountWords(lines))));
  if (lines.empty()) {
    flow.items.push_back(TextRow(kMargin, c.width, list.none, {3.2}, 1));
    return;
  }
  const int head = static_cast<int>(flow.repeated.size());
  flow.repeated.push_back(Head(c, list.where, list.more));
  flow.items.push_back(flow.repeated.back());
  flow.items.back().with_next = true;
  for (const RecallLine& line : lines) flow.items.push_back(Row(line, c, list.tick, head));
  flow.items.push_back({1.5, [](Pen&, double) {}});
}

std::vector<RecallLine> Only(const RecallRecord& record, const std::function<bool(const RecallLine&)>& wanted) {
  std::vector<RecallLine> lines;
  std::copy_if(record.lines.begin(), record.lines.end(), std::back_inserter(lines), wanted);
  return lines;
}

void AddSums(Flow& flow, const RecallRecord& record, double width) {
  const auto line = [width](const std::string& what, const std::string& pieces, const std::string& length, const std::string& mass,
                            bool bold) {
    return FlowItem{5.2, [=](Pen& pen, double y) {
                      const TextStyle right{3.2, bold, false, false, Align::Right};
                      pen.text(kMargin, y + 0.5, 60, what, {3.2, bold});
                      pen.text(kMargin + 60, y + 0.5, 25, pieces, right);
                      pen.text(kMargin + 90, y + 0.5, 40, length, right);
                      pen.text(kMargin + 135, y + 0.5, 40, mass, right);
                      pen.line(kMargin, y + 5, kMargin + width, y + 5, bold ? 0.3 : 0.1);
                    }};
  };
  flow.items.push_back(line("where it is now", "pieces", "length mm", "mass kg", true));
  for (const RecallSum& sum : RecallSums(record))
    flow.items.push_back(line(sum.whereabouts, std::to_string(sum.pieces), MmFull(sum.length), KgNumber(sum.mass), false));
}

void AddLaps(Flow& flow, const RecallRecord& record, double width) {
  if (record.laps.empty()) return;
  flow.items.push_back(SectionHead(kMargin, width, "Stopwatch"));
  for (const RecallRecord::Lap& lap : record.laps)
    flow.items.push_back({5, [=](Pen& pen, double y) {
                            pen.text(kMargin, y + 0.5, 80, lap.what, {3.2});
                            pen.text(kMargin + 80, y + 0.5, 30, std::to_string(lap.milliseconds) + " ms", kRight);
                          }});
  if (!record.digest_before.empty())
    flow.items.push_back(TextRow(kMargin, width,
                                 record.digest_before == record.digest_after
                                     ? "The drill was read only. The book's digest is the same before and after it: " + record.digest_before
                                     : "The drill was read only; somebody else worked meanwhile, so the book's digest moved on from " +
                                         record.digest_before + " to " + record.digest_after + ".",
                                 {3.0}, 1));
}

}  // namespace

void WriteRecallPdf(const std::string& path, const RecallRecord& record, const PrintOptions& options) {
  const double width = PageWidth(options.size) - 2 * kMargin;
  const Columns columns = ColumnsOf(width);
  Flow flow;
  const std::string subject = record.scope + " " + record.ref + (record.mill.empty() ? "" : " (" + record.mill + ")");
  const std::string asked = "asked " + ShortTime(record.asked_at) + " by " + record.asked_by + "  \u00B7  " + CountWords(record.lines);
  SetRecordHead(
      flow,
      {record.drill ? "DRILL, nothing has happened: recall of" : "Recall: where everything is now of", subject, asked, "", 0, record.proof},
      width);
  const auto near = Only(record, IsToVisit);
  const bool held = std::all_of(near.begin(), near.end(), [](const RecallLine& l) { return l.held; });
  if (!held)
    flow.items.push_back(TextRow(
        kMargin, width,
        "NOT ALL OF IT IS HELD: what is not can still be promised, cut and shipped. Hold it: heatkeep hold " + record.scope + " ...",
        {3.6, true}, 2));
  AddSums(flow, record, width);
  AddList(flow, {"Places to visit, saws first, then in walking order", "place", "for", "Nothing of it is in the shop.", true}, near,
          columns);
  if (!near.empty())
    flow.items.push_back(TextRow(
        kMargin, width,
        "Stop the saws named above first. Set every piece apart, in a place of its own, and tick it when it is there; what is not where the book says is "
        "reported missing. Heavy or long pieces are lifted by crane or by several people; local rules decide.",
        {2.9}, 1));
  AddList(flow, {"Outside, on the way, missing", "with whom", "what for", "Nothing of it."},
          Only(record,
               [](const RecallLine& l) {
                 return l.whereabouts == "outside" || l.whereabouts == "in transit" || l.whereabouts == "missing" ||
                     l.whereabouts == "expected";
               }),
          columns);
  for (const std::string& customer : RecallCustomers(record))
    AddList(flow, {"With " + customer, "delivery note", "order", ""},
            Only(record, [&](const RecallLine& l) { return IsWithCustomer(l) && l.customer == customer; }), columns);
  if (RecallCustomers(record).empty()) AddList(flow, {"With customers", "", "", "No customer got anything of it."}, {}, columns);
  AddList(flow, {"Gone as scrap, test slices, returned, unexplained", "where", "why", "Nothing of it."},
          Only(record,
               [](const RecallLine& l) {
                 return !IsToVisit(l) && !IsWithCustomer(l) && l.whereabouts != "outside" && l.whereabouts != "in transit" &&
                     l.whereabouts != "missing" && l.whereabouts != "expected";
               }),
          columns);
  AddLaps(flow, record, width);
  flow.items.push_back(TextRow(kMargin, width, OwnWorkStatement(), {3.0}, 1));
  WriteFlow(path, flow, options);
}

}  // namespace heatkeep
