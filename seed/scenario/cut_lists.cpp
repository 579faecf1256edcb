#include "seed/scenario/cut_lists.h"

#include <algorithm>
#include <stdexcept>

#include "seed/scenario/csv.h"
#include "seed/scenario/draw.h"
#include "seed/scenario/groups.h"
#include "seed/scenario/want.h"

namespace heatkeep::scenario {

namespace {

const std::vector<std::string> kCustomers{"Pallant Hydraulics", "Pallant Hydraulics", "Drewe Conveyors", "Ister Marine"};

// One line as it will be written, with what it takes from the rack.
struct Line {
  Fields fields;
  Want want;
};

class List {
 public:
  List(char name, std::vector<std::size_t> groups, char decimal_mark, Rack& rack)
      : name_(name), groups_(std::move(groups)), mark_(decimal_mark), rack_(rack), draw_(std::string("cut list ") + name) {}

  std::vector<Line> make(int lines, int first_order, int one_heats, int inches) {
    one_heats_ = one_heats;
    inches_ = inches;
    next_order_ = first_order;
    while (static_cast<int>(made_.size()) < lines) {
      start_order();
      const int in_order = std::min(static_cast<int>(draw_.from(2, 7)), lines - static_cast<int>(made_.size()));
      for (int i = 0; i < in_order; ++i) add_line();
    }
    return std::move(made_);
  }

  // A line of its own order that is written whatever the rack says.
  Line special(const std::string& customer, const std::string& grade, std::size_t group, const std::string& section, std::int64_t mm,
               int quantity, const std::string& papers, const std::string& owner) {
    start_order();
    // What cannot be served is never so urgent that it takes metal from what can.
    const std::string priority = owner.empty() ? "5" : "1";
    customer_ = customer;
    const Group& g = groups()[group];
    return {{order_, "10", customer, section, grade, std::to_string(mm) + " mm", std::to_string(quantity), "-0/+1", due_, priority, "", "",
             "", papers, owner, g.condition},
            {group, mm * 1000 + 1000, quantity, false, papers, owner}};
  }

 private:
  void start_order() {
    order_ = "26-" + std::to_string(next_order_++);
    line_ = 0;
    customer_ = draw_.one_of(kCustomers);
    const std::int64_t day = 26 + draw_.from(0, 15);
    due_ = day <= 30 ? "2026-11-" + std::to_string(day) : "2026-12-" + std::string(day < 40 ? "0" : "") + std::to_string(day - 30);
    priority_ = std::to_string(draw_.chance(15) ? 1 : draw_.from(2, 4));
  }

  std::int64_t length_um(const Group& g) {
    const std::int64_t r = draw_.from(1, 100);
    std::int64_t um = r <= 55 ? draw_.from(40, 320) : r <= 85 ? draw_.from(250, 1100) : draw_.from(1000, 2500);
    if (g.width_um > 150'000) um = draw_.from(60, 400);
    um = (um > 400 ? um / 5 * 5 : um) * 1000;
    return draw_.chance(20) ? um + 500 : um;  // a half millimetre now and then
  }

  void add_line() {
    for (int tries = 0; tries < 400; ++tries) {
      const std::size_t group = draw_.one_of(groups_);
      const Group& g = groups()[group];
      if (draw_.from(1, 5) > g.demand) continue;
      Want want{group, 0, 0, false, "", ""};
      std::string written;
      if (inches_ > 0 && (g.inch() || draw_.chance(4))) {
        const std::int64_t eighths = draw_.from(14, 240);
        want.length_um = eighths * 3175;
        written = std::to_string(eighths / 8) + (eighths % 8 == 0 ? "" : "-" + fraction(eighths % 8)) + "\"";
      } else {
        want.length_um = length_um(g);
        written = decimal(want.length_um, 3, want.length_um % 1000 == 0 ? 0 : 1) + " mm";
      }
      const std::int64_t nominal = want.length_um;
      const std::int64_t plus = nominal <= 400'000 && draw_.chance(30) ? 500 : draw_.chance(20) ? 2000 : 1000;
      const std::int64_t face = draw_.chance(12) ? 2000 : 0;
      want.length_um += plus + face;
      want.quantity = quantity(nominal);
      want.papers = name_ == 'A' || draw_.chance(45) ? "3.1" : draw_.chance(40) ? "2.2" : "";
      want.one_heat = one_heats_ > 0 && want.quantity > 1 && draw_.chance(25);
      for (; want.quantity > 0; want.quantity /= 2) {
        want.one_heat = want.one_heat && want.quantity > 1;
        if (rack_.serve(want)) break;
      }
      if (want.quantity == 0) continue;
      write(want, g, written, plus, face);
      return;
    }
    throw std::runtime_error(std::string("cut list ") + name_ + ": the stock is too small for another line");
  }

  void write(const Want& want, const Group& g, const std::string& length, std::int64_t plus, std::int64_t face) {
    std::string heat;
    if (want.one_heat) { heat = std::string(1, name_) + "-" + std::to_string(one_heats_--); }
    if (length.ends_with('"')) --inches_;
    line_ += 10;
    made_.push_back({{order_, std::to_string(line_), customer_, g.section, asked_grade(g), european(length), std::to_string(want.quantity),
                      european("-0/+" + short_mm(plus)), due_, priority_, heat, "", face == 0 ? "" : short_mm(face) + " mm", want.papers,
                      "", g.condition},
                     want});
  }

  // Some orders still ask for the grade that the shop serves by a stand-in.
  std::string asked_grade(const Group& g) {
    if (name_ != 'C' || !draw_.chance(20)) return g.grade;
    if (g.grade == "X2CrNi18-9") return "X5CrNi18-10";
    if (g.grade == "X2CrNiMo17-12-2") return "X5CrNiMo17-12-2";
    return g.grade == "C45E" ? "C45" : g.grade;
  }

  int quantity(std::int64_t length) {
    const std::int64_t most = length <= 320'000 ? 40 : length <= 1'100'000 ? 14 : 4;
    const std::int64_t first = draw_.from(1, most);
    return static_cast<int>(std::min(first, draw_.from(1, most) + most / 4));
  }

  static std::string fraction(std::int64_t eighths) {
    if (eighths % 4 == 0) return "1/2";
    if (eighths % 2 == 0) return std::to_string(eighths / 2) + "/4";
    return std::to_string(eighths) + "/8";
  }
  static std::string short_mm(std::int64_t um) { return decimal(um, 3, um % 1000 == 0 ? 0 : 1); }
  std::string european(std::string text) const {
    std::replace(text.begin(), text.end(), '.', mark_);
    return text;
  }

  char name_;
  std::vector<std::size_t> groups_;
  char mark_;
  Rack& rack_;
  Draw draw_;
  std::vector<Line> made_;
  int one_heats_ = 0, inches_ = 0, next_order_ = 0, line_ = 0;
  std::string order_, customer_, due_, priority_;
};

std::size_t group_of(const std::string& grade, const std::string& section) {
  for (std::size_t g = 0; g < groups().size(); ++g) {
    if (groups()[g].grade == grade && groups()[g].section == section) return g;
  }
  throw std::logic_error("no group " + grade + " " + section);
}

std::string file(const std::vector<Line>& lines, char delimiter) {
  std::string text = csv_line({"order", "line", "customer", "section", "grade", "length", "quantity", "tolerance", "due", "priority",
                               "one_heat", "max_heats", "face", "papers", "owner", "condition"},
                              delimiter);
  for (const Line& l : lines) text += csv_line(l.fields, delimiter);
  return text;
}

// "round 60" becomes the diameter sign of Windows-1252 and the number, as its spreadsheet users type it;
// lines end in \r\n.
std::string western(std::string text) {
  const std::string word = ";round ";
  for (std::size_t at = text.find(word); at != std::string::npos; at = text.find(word, at)) { text.replace(at, word.size(), ";\xD8 "); }
  for (std::size_t at = text.find('\n'); at != std::string::npos; at = text.find('\n', at + 2)) text.insert(at, "\r");
  return text;
}

}  // namespace

CutLists make_cut_lists(const Stock& stock) {
  Rack rack(stock);
  CutLists lists;
  List a('A',
         {group_of("42CrMo4", "round 40"), group_of("42CrMo4", "round 60"), group_of("42CrMo4", "round 80"), group_of("C45E", "round 40")},
         '.', rack);
  lists.a = file(a.make(20, 1184, 3, 0), ',');

  std::vector<std::size_t> metric, all;
  for (std::size_t g = 0; g < groups().size(); ++g) {
    all.push_back(g);
    if (!groups()[g].inch() && g % 3 != 1) metric.push_back(g);
  }
  List b('B', metric, ',', rack);
  lists.b = western(file(b.make(60, 1201, 3, 0), ';'));

  List c('C', all, '.', rack);
  std::vector<Line> lines = c.make(144, 1230, 5, 14);
  const std::size_t flange = group_of("X2CrNiMo17-12-2", "round 60");
  Line owned = c.special("Ister Marine", "X2CrNiMo17-12-2", flange, "round 60", 420, 8, "3.1", "Ister Marine");
  if (!rack.serve(owned.want)) throw std::runtime_error("the customer's own metal does not serve its order");
  lines.push_back(std::move(owned));
  // More than there is; not stocked at all; papers that brass of this kind never came with; too long for any
  // piece.
  lines.push_back(c.special("Drewe Conveyors", "34CrNiMo6", group_of("34CrNiMo6", "round 130"), "round 130", 2400, 40, "3.1", ""));
  lines.push_back(c.special("Drewe Conveyors", "100Cr6", group_of("100Cr6", "round 70"), "round 90", 160, 12, "", ""));
  lines.push_back(c.special("Pallant Hydraulics", "CuZn39Pb3", group_of("CuZn39Pb3", "round 25"), "round 25", 65, 30, "3.2", ""));
  lines.push_back(c.special("Pallant Hydraulics", "11SMnPb30", group_of("11SMnPb30", "round 30"), "round 30", 3500, 2, "", ""));
  lines.push_back(c.special("Ister Marine", "X2CrNiMoN22-5-3", group_of("X2CrNiMoN22-5-3", "round 80"), "round 80", 900, 60, "3.1", ""));
  lists.c = file(lines, ',');
  return lists;
}

}  // namespace heatkeep::scenario
