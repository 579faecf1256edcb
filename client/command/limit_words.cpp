#include "client/command/limit_words.h"

#include <memory>
#include <ostream>

#include "client/command/limit_rows.h"
#include "client/command/receive_command.h"
#include "client/command/table_words.h"
#include "client/gateway/deeds.h"
#include "client/intake/file_bytes.h"
#include "schema/terms/counted.h"

namespace heatkeep::command {
namespace {

int RunLimits(const BookCall& call, const TableFile& file) {
  if (file.path.empty()) return RunGradesLimits(call);
  return WithBook(call, [&](Connection& connection) {
    const std::string bytes = intake::FileBytes(file.path);
    const LimitTable table = ReadLimitTable(bytes, file);
    if (!table.problems.empty()) return RefuseFile(call.err, table.problems);
    const Json answer = Deeds(connection).DefineLimits(RequestOfFile(connection, "limits", file.Part(), bytes), table.rows);
    call.out << Counted(answer.contains("again") ? 0 : answer["added"].get<int>(), "limit") << " added\n";
    return 0;
  });
}

int RunCorrection(const BookCall& call, const TableFile& file, const std::string& reason) {
  return WithBook(call, [&](Connection& connection) {
    const std::string bytes = intake::FileBytes(file.path);
    const LimitTable table = ReadLimitTable(bytes, file);
    if (!table.problems.empty()) return RefuseFile(call.err, table.problems);
    const Json answer = StockDeeds(connection)
                            .CorrectLimits(RequestOfFile(connection, "correct_limits", file.Part(reason), bytes),
                                           {{"reason", reason}, {"limits", table.rows}});
    if (answer.contains("again")) {
      call.out << "these limits were replaced before from this file, for this reason: nothing was changed\n";
      return 0;
    }
    call.out << Counted(answer["replaced"].get<int>(), "limit") << " replaced by " << answer["added"]
             << "; accepted under them: " << Counted(answer["documents"].get<int>(), "document") << " (`heatkeep grades look-again`)\n";
    return 0;
  });
}

}  // namespace

void AddLimitWords(CLI::App& root, const Later& later) {
  CLI::App& grades = Noun(root, "grades", "the grade list");
  CLI::App* limits = grades.add_subcommand(
      "limits",
      "put in limits of analyses, tests and product analyses: of a table, else those that come with the program; known ones stay");
  limits->footer("example: heatkeep grades limits ours.csv");
  auto added = std::make_shared<TableFile>();
  AddTableOptions(*limits, *added);
  limits->get_option("file")->required(false);
  limits->callback([later, added] { later([added](const BookCall& call) { return RunLimits(call, *added); }); });

  CLI::App* correct = grades.add_subcommand(
      "correct",
      "limits that were stored wrongly: those of the table take the place of what the book has for these sizes; the old ones stay and are shown");
  correct->footer("example: heatkeep grades correct ours.csv --reason \"the standard's sheet of May says 900\"");
  auto corrected = std::make_shared<TableFile>();
  auto reason = std::make_shared<std::string>();
  AddTableOptions(*correct, *corrected);
  correct->add_option("--reason", *reason, "how it is known that they were wrong")->required();
  correct->callback([later, corrected, reason] {
    later([corrected, reason](const BookCall& call) { return RunCorrection(call, *corrected, *reason); });
  });

  AddList(grades, later,
          {"list",
           "the grades the book knows, with the density masses are reckoned by",
           "grades",
           "designation",
           {"designation", "number", "uns", "family", "density_kg_m3", "standard"},
           "designation"});
  AddList(grades, later,
          {"standins",
           "which grade may stand in for which, and who signed it",
           "grade_standins",
           "asked offered",
           {"asked", "offered", "signed_by", "reason"},
           "asked"});
  AddDeed(grades, later,
          {"withdraw",
           "a limit that there is none of",
           "42CrMo4 --property Rm --condition +QT --over \"40 mm\" --upto \"100 mm\" --reason \"of another condition\"",
           &StockDeeds::CorrectLimits,
           {{"grade", "grade", "the grade"},
            {"--element", "element", "of an analysis: C, CEV, Cr+Mo+Ni", WordKind::Text, false},
            {"--property", "property", "of a test", WordKind::Text, false, {"Rm", "Re", "A"}},
            {"--condition", "condition", "of a test: +QT", WordKind::Text, false},
            {"--over", "over_nm", "sizes above this", WordKind::Length, false},
            {"--upto", "upto_nm", "up to and with this", WordKind::Length, false},
            {"--reason", "reason", "how it is known"}},
           "{replaced} limits withdrawn; accepted under them: {documents} documents",
           [](Json row) {
             Json body{{"reason", row["reason"]}};
             row.erase("reason");
             if (row.contains("element") == row.contains("property"))
               throw BadText("what is limited is not said", "--element or --property");
             body["limits"] = Json::array({std::move(row)});
             return body;
           }});
  AddList(grades, later,
          {"changed",
           "limits that were replaced: what they were, what they became, by whom and why",
           "limit_changes",
           "correction kind grade what over_at",
           {"kind", "grade", "condition", "what", "was", "became", "corrected_at", "corrected_by", "reason"},
           "grade"});
  AddList(grades, later,
          {"look-again",
           "documents accepted under a limit that was replaced since, and what the valid ones do not allow",
           "accepted_before",
           "correction issuer number version heat",
           {"issuer", "number", "version", "heat", "grade", "section", "condition", "what", "was", "became", "accepted_by", "wrong"},
           "grade"});
  AddList(grades, later,
          {"test-limits",
           "what mechanical tests are judged by now",
           "mechanical_limits",
           "grade condition property over_nm",
           {"grade", "condition", "over_nm", "upto_nm", "property", "least_millionths", "most_millionths", "unit", "source", "evidence"},
           "grade"});
  AddList(Noun(root, "papers", "papers that are awaited"), later,
          {"verdicts",
           "what the values of a document are judged as, by which limit",
           "document_verdicts",
           "issuer version heat section kind what",
           {"issuer", "number", "version", "heat", "kind", "what", "verdict", "source"},
           "number"});
}

}  // namespace heatkeep::command
