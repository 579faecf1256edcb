#include "client/command/receive_command.h"

#include <algorithm>
#include <ostream>

#include "client/gateway/deeds.h"
#include "client/incoming/book_names.h"
#include "client/incoming/opening.h"
#include "client/incoming/piece_json.h"
#include "client/intake/delivery_file.h"
#include "client/intake/file_bytes.h"
#include "schema/terms/counted.h"
#include "schema/terms/mass_text.h"
#include "schema/terms/papers.h"

namespace heatkeep::command {
namespace {

Json DeliveryLine(const intake::DeliveryFileRow& row) {
  Json line = incoming::PieceJson(row);
  for (const auto& [key, text] : {std::pair{"slip_line", &row.slip_line},
                                  {"order_line", &row.order_line},
                                  {"tag_heat", &row.tag_heat},
                                  {"slip_heat", &row.slip_heat},
                                  {"certificate_heat", &row.certificate_heat},
                                  {"bundle", &row.bundle},
                                  {"owner_ref", &row.owner_ref},
                                  {"rests", &row.rests},
                                  {"chips", &row.chips},
                                  {"measured_with", &row.measured_with}})
    if (!text->empty()) line[key] = *text;
  if (row.doubt) line["doubt_nm"] = row.doubt->nm;
  line["line"] = row.line.empty() ? std::to_string(row.line_in_file) : row.line;
  line["read_from"] = intake::ReadFromText(row.read_from);
  line["papers_state"] = row.papers_awaited ? "awaited" : "none";
  line["mark"] = intake::MarkEndText(row.mark);
  if (row.slip_count) line["slip_count"] = *row.slip_count;
  if (row.weighed) line["weighed_g"] = row.weighed->g;
  return line;
}

// The notes of a file in order of appearance, each with its lines.
std::vector<Json> NotesOf(const std::vector<intake::DeliveryFileRow>& rows) {
  std::vector<Json> notes;
  for (const intake::DeliveryFileRow& row : rows) {
    auto at =
        std::find_if(notes.begin(), notes.end(), [&](const Json& n) { return n["note"] == row.note && n["supplier"] == row.supplier; });
    if (at == notes.end()) {
      Json note = {{"note", row.note}, {"supplier", row.supplier}, {"purchase_order", row.order}, {"lines", Json::array()}};
      if (!row.received.empty()) note["received_at"] = row.received;
      at = notes.insert(notes.end(), std::move(note));
    }
    (*at)["lines"].push_back(DeliveryLine(row));
  }
  return notes;
}

DbError AtRow(const DbError& error, const std::string& where) {
  DbError at(error.kind, error.sqlstate, where + ": " + error.message);
  at.hint = error.hint;
  at.constraint = error.constraint;
  return at;
}

// A refusal of the book about a line that it was told, with the row of the file: `line_of` gives its number, 0 where there is none.
template <class Do, class LineOf>
Json AtItsRow(const std::string& path, const Do& deed, const LineOf& line_of) {
  constexpr std::string_view kLine = "line ";
  try {
    return deed();
  } catch (const DbError& error) {
    const int line = error.detail.starts_with(kLine) ? line_of(error.detail.substr(kLine.size())) : 0;
    if (line == 0) throw;
    throw AtRow(error, path + ":" + std::to_string(line));
  }
}

struct Received {
  std::int64_t pieces = 0, mass_g = 0, quarantined = 0;
  bool again = false;
};

// Adds up one answer and says what does not agree.
void Say(std::ostream& out, const std::string& what, const Json& answer, Received& sum) {
  sum.again = sum.again || answer.contains("again");
  for (const Json& line : answer["lines"]) {
    sum.pieces += line["count"].get<std::int64_t>();
    sum.mass_g += line["theoretical_g"].get<std::int64_t>();
    if (line.contains("warning") && !line["warning"].is_null()) out << what << ": " << line["warning"].get<std::string>() << '\n';
    if (!line["quarantined"].is_null()) sum.quarantined += line["count"].get<std::int64_t>();
    if (line["mismatch"].is_null()) continue;
    out << what << ", line " << line["line"].get<std::string>() << ": " << line["mismatch"].get<std::string>()
        << (line["quarantined"].is_null() ? "" : " - QUARANTINED") << '\n';
  }
}

void SaySum(std::ostream& out, const Received& sum) {
  if (sum.again) {
    out << "this file was taken in before: nothing was added\n";
    return;
  }
  out << Counted(sum.pieces, "piece") << " taken in, " << WriteKg({sum.mass_g}, 0, true) << " kg by theory";
  if (sum.quarantined > 0) out << ", " << sum.quarantined << " of them quarantined";
  out << '\n';
}

int Finish(const BookCall& call, const Json& answers, const Received& sum, bool json) {
  if (json) call.out << answers.dump(2) << '\n';
  else SaySum(call.out, sum);
  return 0;
}

}  // namespace

int RunReceive(const BookCall& call, const TableFile& file, bool json) {
  return WithBook(call, [&](Connection& connection) {
    const std::string bytes = intake::FileBytes(file.path);
    const auto read = intake::ReadDeliveryFile(bytes, file.path, file.How());
    if (!read.Good()) return RefuseFile(call.err, read.problems);
    incoming::BookNames names(connection, file.path, read.facts);
    for (const auto& row : read.rows) {
      names.Party(row.line_in_file, "supplier", row.supplier);
      names.Party(row.line_in_file, "mill", row.mill);
      names.Party(row.line_in_file, "owner", row.owner);
      names.Grade(row.line_in_file, row.grade);
      names.Place(row.line_in_file, row.place);
    }
    if (!names.problems().empty()) return RefuseFile(call.err, names.problems());
    call.err << intake::ProblemsText(read.warnings);
    Deeds deeds(connection);
    Received sum;
    Json answers = Json::array();
    Transaction whole(connection);
    for (const Json& note : NotesOf(read.rows)) {
      const std::string name = note["note"];
      const RequestNumber request = RequestOfFile(connection, "receive", file.Part(name), bytes);
      answers.push_back(AtItsRow(
          file.path, [&] { return deeds.ReceiveDelivery(request, note); },
          [&](const std::string& line) {
            const auto row = std::find_if(read.rows.begin(), read.rows.end(), [&](const intake::DeliveryFileRow& r) {
              return r.note == name && r.supplier == note["supplier"] && DeliveryLine(r)["line"] == line;
            });
            return row == read.rows.end() ? 0 : row->line_in_file;
          }));
      Say(json ? call.err : call.out, "note " + name, answers.back(), sum);
    }
    whole.Commit();
    return Finish(call, answers, sum, json);
  });
}

int RunOpening(const BookCall& call, const TableFile& file, bool leave_out, bool json) {
  return WithBook(call, [&](Connection& connection) {
    const incoming::OpeningLook look = incoming::LookAtOpening(connection, file);
    if (!look.problems.empty() && !leave_out) return RefuseFile(call.err, look.problems);
    call.err << intake::ProblemsText(look.problems) << intake::ProblemsText(look.warnings);
    if (look.good.empty()) return RefuseFile(call.err, {{file.path, 0, "no line can be taken", "at least one good line"}});
    const Json answer = AtItsRow(
        file.path, [&] { return incoming::BookOpening(connection, look); },
        [&](const std::string& line) {
          const auto row = std::find_if(look.good.begin(), look.good.end(),
                                        [&](const intake::OpeningFileRow& r) { return std::to_string(r.line_in_file) == line; });
          return row == look.good.end() ? 0 : row->line_in_file;
        });
    Received sum;
    Say(json ? call.err : call.out, "opening balance", answer, sum);
    return Finish(call, answer, sum, json);
  });
}

}  // namespace heatkeep::command
