#include "client/command/stock_command.h"

#include <iomanip>
#include <ostream>

#include "client/command/known_names.h"
#include "client/gateway/deeds.h"
#include "client/gateway/readings.h"
#include "schema/terms/counted.h"
#include "schema/terms/length_text.h"
#include "schema/terms/mass_text.h"
#include "schema/terms/section.h"

namespace heatkeep::command {
namespace {

Json RowJson(const StockRow& r) {
  return {{"tag", r.tag},
          {"kind", r.kind},
          {"grade", r.grade},
          {"section", r.section},
          {"condition", r.condition},
          {"mill", r.mill},
          {"heat", r.heat},
          {"papers", r.papers},
          {"owner", r.owner},
          {"place", r.place},
          {"state", r.state},
          {"promised_to", r.promised_to},
          {"length_nm", r.length.nm},
          {"doubt_nm", r.doubt.nm},
          {"mass_g", r.mass.g}};
}

void SayRow(std::ostream& out, const StockRow& r) {
  out << std::left << std::setw(10) << r.tag << std::setw(6) << r.kind << std::setw(18) << r.grade << std::setw(18) << r.section
      << std::setw(14) << r.heat << std::right << std::setw(9) << WriteMm(r.length, Rounding::Down) << " mm " << std::setw(8)
      << WriteKg(r.mass) << " kg  " << std::left << std::setw(8) << r.place << r.papers << "  " << r.state
      << (r.promised_to.empty() ? "" : ", promised to " + r.promised_to) << (r.owner.empty() ? "" : "  of " + r.owner) << '\n';
}

}  // namespace

int RunStock(const BookCall& call, const std::string& grade, const std::string& section, bool json) {
  return WithBook(call, [&](Connection& connection) {
    RequireGrade(connection, grade);
    std::vector<StockRow> rows = ReadStock(connection, grade);
    if (!section.empty()) {
      // by what it is, not by how it is written: round 2 in is round 50.8
      std::erase_if(rows, [wanted = ReadSection(section)](const StockRow& r) { return ReadSection(r.section) != wanted; });
    }
    Json all = Json::array();
    Length length;
    Mass mass;
    for (const StockRow& r : rows) {
      length += r.length;
      mass += r.mass;
      if (json) all.push_back(RowJson(r));
      else SayRow(call.out, r);
    }
    if (json) call.out << all.dump(2) << '\n';
    else if (rows.empty() && !(grade.empty() && section.empty())) call.out << "nothing like that is here\n";
    else if (rows.empty()) call.out << "nothing here yet; `heatkeep receive FILE` or `heatkeep opening FILE` brings metal in\n";
    else call.out << Counted(rows.size(), "piece") << ", " << WriteMm({length.nm / 1000}) << " m, " << WriteKg(mass, 0, true) << " kg\n";
    return 0;
  });
}

int RunConflictList(const BookCall& call, bool json) {
  return WithBook(call, [&](Connection& connection) {
    Json rows = Json::array();
    const std::vector<ConflictRow> conflicts = ReadConflicts(connection);
    for (const ConflictRow& c : conflicts) {
      if (json)
        rows.push_back({{"conflict", c.conflict},
                        {"kind", c.kind},
                        {"tag", c.tag},
                        {"words", c.words},
                        {"closed_by", c.closed_by},
                        {"decision", c.closing_words}});
      else
        call.out << c.conflict << (c.closed_by.empty() ? " OPEN  " : " closed  ") << c.words
                 << (c.closed_by.empty() ? "" : "; " + c.closed_by + ": " + c.closing_words) << '\n';
    }
    if (json) call.out << rows.dump(2) << '\n';
    else if (conflicts.empty()) call.out << "no conflicts: nothing was recorded against a rule\n";
    return 0;
  });
}

int RunConflictClose(const BookCall& call, std::int64_t conflict, const std::string& decision, bool free) {
  return WithBook(call, [&](Connection& connection) {
    const Json answer = Deeds(connection).CloseConflict(NewRequest(), conflict, decision, free);
    call.out << "conflict " << conflict << " is closed, " << answer["freed"] << " cut pieces are free\n";
    for (const Json& other : answer.value("stopped_by", Json::array())) call.out << "conflict " << other << " still stops pieces of it\n";
    return 0;
  });
}

}  // namespace heatkeep::command
