#include "client/command/cutlist_command.h"

#include <filesystem>
#include <ostream>

#include "client/gateway/deeds.h"
#include "client/gateway/readings.h"
#include "client/gateway/section_json.h"
#include "client/incoming/book_names.h"
#include "client/intake/cuts_file.h"
#include "client/intake/file_bytes.h"
#include "schema/terms/bad_text.h"
#include "schema/terms/counted.h"

namespace heatkeep::command {
namespace {

Json LineJson(const intake::CutsFileRow& row) {
  Json line = {{"order", row.order},
               {"line", row.line},
               {"customer", row.customer},
               {"section", SectionJson(row.section)},
               {"grade", row.grade},
               {"condition", row.condition},
               {"length_nm", row.length.nm},
               {"face_nm", row.face.nm},
               {"quantity", row.quantity},
               {"due", row.due},
               {"priority", row.priority},
               {"one_heat", row.one_heat},
               {"papers", PapersText(row.papers)},
               {"owner", row.owner}};
  if (row.tolerance) {
    line["tolerance_minus_nm"] = row.tolerance->minus.nm;
    line["tolerance_plus_nm"] = row.tolerance->plus.nm;
  }
  if (row.max_heats > 0) line["max_heats"] = row.max_heats;
  return line;
}

}  // namespace

int RunCutListAdd(const BookCall& call, const TableFile& file, const std::string& name) {
  return WithBook(call, [&](Connection& connection) {
    const std::string bytes = intake::FileBytes(file.path);
    const auto read = intake::ReadCutsFile(bytes, file.path, file.How());
    if (!read.Good()) return RefuseFile(call.err, read.problems);
    incoming::BookNames names(connection, file.path, read.facts);
    Json list = {{"name", name.empty() ? std::filesystem::path(file.path).stem().string() : name}, {"lines", Json::array()}};
    for (const auto& row : read.rows) {
      names.Grade(row.line_in_file, row.grade);
      names.Party(row.line_in_file, "customer", row.customer);
      names.Party(row.line_in_file, "owner", row.owner);
      if (!row.owner.empty() && row.owner != "ours" && row.owner != row.customer) {
        names.Problem(row.line_in_file, "owner: metal of " + Quoted(row.owner) + " is cut for nobody else",
                      "nobody (our metal) or the customer himself; metal of another is bought over first (heatkeep piece buy-over)");
      }
      list["lines"].push_back(LineJson(row));
    }
    if (!names.problems().empty()) return RefuseFile(call.err, names.problems());
    call.err << intake::ProblemsText(read.warnings);
    const Json answer = Deeds(connection).AddCutList(RequestOfFile(connection, "cutlist", file.Part(name), bytes), list);
    call.out << "cut list " << answer["name"].get<std::string>() << ": "
             << (answer.contains("again") ? "in the book already, nothing was added" : Counted(answer["lines"].get<int>(), "line")) << '\n';
    return 0;
  });
}

int RunCutListList(const BookCall& call, bool json) {
  return WithBook(call, [&](Connection& connection) {
    const std::vector<CutListRow> lists = ReadCutLists(connection);
    Json rows = Json::array();
    for (const CutListRow& l : lists) {
      if (json)
        rows.push_back({{"name", l.name},
                        {"lines", l.lines},
                        {"pieces", l.pieces},
                        {"cut", l.cut},
                        {"planned", l.planned},
                        {"open", l.open},
                        {"due", l.due}});
      else
        call.out << l.name << ": " << Counted(l.lines, "line") << ", " << Counted(l.pieces, "piece") << ", " << l.cut << " cut, "
                 << l.planned << " planned, " << l.open << " open" << (l.due.empty() ? "" : ", first due " + l.due) << '\n';
    }
    if (json) call.out << rows.dump(2) << '\n';
    else if (lists.empty()) call.out << "no cut lists yet; `heatkeep cutlist add FILE` brings one in\n";
    return 0;
  });
}

}  // namespace heatkeep::command
