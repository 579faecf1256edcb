#include "client/command/recall_command.h"

#include <chrono>
#include <filesystem>
#include <ostream>

#include "client/gateway/records.h"
#include "client/gateway/snapshot.h"
#include "client/records/proved_record.h"
#include "reports/paint_session.h"

namespace heatkeep::command {
namespace {

class Stopwatch {
 public:
  explicit Stopwatch(RecallRecord& record) : record_(record) {}
  void Lap(const std::string& what) {
    const auto since = std::chrono::duration_cast<std::chrono::milliseconds>(std::chrono::steady_clock::now() - start_);
    record_.laps.push_back({what, since.count()});
  }

 private:
  RecallRecord& record_;
  std::chrono::steady_clock::time_point start_ = std::chrono::steady_clock::now();
};

std::size_t WriteLetters(const BookCall& call, const RecallOptions& options, const RecallRecord& record, const PrintOptions& print) {
  if (options.letters.empty()) return 0;
  std::filesystem::create_directories(options.letters);
  PaintSession();
  LetterWords words = options.words;
  words.language = options.language == "de" ? Language::German : Language::English;
  const std::vector<std::string> customers = RecallCustomers(record);
  for (std::size_t i = 0; i < customers.size(); ++i) {
    const std::string file = (std::filesystem::path(options.letters) / LetterFileName(static_cast<int>(i) + 1, customers[i])).string();
    WriteRecallLetter(file, record, customers[i], words, print);
    call.out << "wrote " << file << '\n';
  }
  if (customers.empty()) call.out << "no letter: no customer got anything of it\n";
  return customers.size();
}

// Heats that an eye may take for the one recalled are named: they are not in the list.
void NameLookAlikes(const BookCall& call, Connection& connection, const RecallOptions& options) {
  if (options.scope != "heat") return;
  const nlohmann::json alike = PreviewHold(connection, options.scope, options.ref, options.mill).at("look_alikes");
  if (alike.is_string())
    call.err << "heatkeep: " << options.ref << " looks like heat " << alike.get<std::string>() << ", which is not in this recall\n";
}

}  // namespace

int RunRecall(const BookCall& call, const RecallOptions& options) {
  return WithBook(call, [&](Connection& connection) {
    RecallRecord record;
    WorkWatch seen(call.err);
    const PaperWriters writers{
        {".pdf", [&](const std::string& p) { WriteRecallPdf(p, record, PrintFor(connection, options.paper, &seen)); }},
        {".xlsx", [&](const std::string& p) { WriteRecallXlsx(p, record, PrintFor(connection, options.paper, &seen)); }},
        {".json", [&](const std::string& p) { WriteRecallJson(p, record); }},
        {".csv", [&](const std::string& p) { WriteRecallCsv(p, record); }}};
    CheckEndings(options.paper.files, writers);
    const RecordSubject subject{"recall " + options.scope, options.ref, options.mill};
    const std::string digest_before = options.drill ? ReadBookDigest(connection).digest : "";
    Stopwatch watch(record);
    Snapshot snapshot(connection);
    record = ReadRecall(connection, options.scope, options.ref, options.mill);
    record.drill = options.drill;
    watch.Lap("list of where everything is");
    if (!options.drill) record.proof = ProofOf(connection, subject, RecallSays(record));
    NameLookAlikes(call, connection, options);
    snapshot.End();
    if (!options.drill) KeepRecord(connection, subject, record.proof);
    const std::size_t letters = WriteLetters(call, options, record, PrintFor(connection, options.paper, &seen));
    if (letters > 0) watch.Lap(std::to_string(letters) + (letters == 1 ? " letter" : " letters"));
    if (options.drill) {
      // the papers are written once to be timed, and once more with the stopwatch on them
      for (const std::string& file : options.paper.files) writers.at(std::filesystem::path(file).extension().string())(file);
      if (!options.paper.files.empty()) watch.Lap("the list on paper");
      record.digest_before = digest_before;
      record.digest_after = ReadBookDigest(connection).digest;
    }
    if (options.json && options.paper.files.empty()) {
      call.out << RecallJson(record);
      return 0;
    }
    const int done = WritePapers(call, options.paper, writers, [&] {
      return (options.drill ? "DRILL: nothing has happened\n" : "") +
          ("recall of " + options.scope + " " + options.ref + ", where everything is now:\n") + RecallText(record);
    });
    for (const RecallRecord::Lap& lap : record.laps)
      if (options.drill) call.out << "stopwatch: " << lap.what << " after " << lap.milliseconds << " ms\n";
    if (options.drill)
      call.out << (record.digest_before == record.digest_after ? "the book is as it was before the drill: "
                                                               : "somebody else worked in the book during the drill: ")
               << record.digest_after << '\n';
    return done;
  });
}

}  // namespace heatkeep::command
