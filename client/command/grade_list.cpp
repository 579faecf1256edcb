#include "client/command/grade_list.h"

#include <ostream>

#include "client/command/limit_rows.h"
#include "client/command/receive_command.h"
#include "client/command/reference_files.h"
#include "client/gateway/deeds.h"
#include "client/intake/file_bytes.h"
#include "client/intake/grades_file.h"
#include "schema/terms/counted.h"

namespace heatkeep::command {

std::string GradeListFile() { return ReferenceFile("grades.csv"); }

int AddGrades(Connection& connection, const TableFile& file) {
  const std::string bytes = intake::FileBytes(file.path);
  const auto read = intake::ReadGradesFile(bytes, file.path, file.How());
  if (!read.Good()) throw BadGradeList(read.problems);
  const auto or_null = [](const std::string& text) { return text.empty() ? Json() : Json(text); };
  Json grades = Json::array();
  for (const Grade& g : read.rows) {
    grades.push_back({{"designation", g.designation},
                      {"number", or_null(g.number)},
                      {"uns", or_null(g.uns)},
                      {"family", g.family},
                      {"standard", g.standard},
                      {"density_kg_m3", g.density.kg_m3},
                      {"density_source", g.density_source},
                      {"source", g.source},
                      {"evidence", g.evidence}});
  }
  const Json answer = Deeds(connection).DefineGrade(RequestOfFile(connection, "grades", file.Part(), bytes), grades);
  return answer.contains("again") ? 0 : answer["added"].get<int>();
}

int AddLimits(Connection& connection) {
  const Json limits = LimitRows(ReadReference());
  const Json answer = Deeds(connection).DefineLimits(RequestOfFile(connection, "limits", "", limits.dump()), limits);
  return answer.contains("again") ? 0 : answer["added"].get<int>();
}

int RunGradesLimits(const BookCall& call) {
  return WithBook(call, [&](Connection& connection) {
    call.out << Counted(AddLimits(connection), "limit") << " added\n";
    return 0;
  });
}

int RunGradesThatCome(const BookCall& call) {
  const int grades = RunGradesAdd(call, {GradeListFile(), {}});
  return grades == 0 ? RunGradesLimits(call) : grades;
}

int RunGradesAdd(const BookCall& call, const TableFile& file) {
  return WithBook(call, [&](Connection& connection) {
    try {
      call.out << AddGrades(connection, file) << " grades added\n";
      return 0;
    } catch (const BadGradeList& bad) { return RefuseFile(call.err, bad.problems); }
  });
}

}  // namespace heatkeep::command
