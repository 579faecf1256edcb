#include "client/command/paper_files.h"

#include <filesystem>
#include <ostream>
#include <stdexcept>
#include <utility>

#include "client/records/printed_now.h"
#include "reports/paint_session.h"
#include "reports/whole_file.h"

namespace heatkeep::command {
namespace {

std::string EndingOf(const std::string& file) { return std::filesystem::path(file).extension().string(); }

// ".pdf, .xlsx, .json or .csv", as far as there are writers
std::string EndingsOf(const PaperWriters& writers) {
  std::vector<std::string> known;
  for (const char* ending : {".pdf", ".xlsx", ".json", ".csv"})
    if (writers.contains(ending)) known.emplace_back(ending);
  std::string all;
  for (std::size_t i = 0; i < known.size(); ++i) all += (i == 0 ? "" : i + 1 < known.size() ? ", " : " or ") + known[i];
  return all;
}

}  // namespace

void AddPaperOptions(CLI::App& app, PaperOptions& options, const std::string& endings) {
  app.add_option("--to", options.files, "may be given several times; none: JSON here")
      ->allow_extra_args(false)
      ->type_name("FILE(" + endings + ")");
  app.add_flag("--json", options.json, "as JSON here, also where files are written");
  app.add_flag("--letter", options.letter, "Letter instead of A4");
  app.add_flag("--progress", options.progress, "say how far it is (as it does on a terminal)");
}

PrintOptions PrintFor(Connection& connection, const PaperOptions& options, WorkWatch* watch) {
  PrintOptions print = PrintedNow(connection);
  print.size = options.letter ? PaperSize::Letter : PaperSize::A4;
  if (watch) print.progress = [watch](const char* what, std::size_t done, std::size_t all) { watch->Count(what, done, all); };
  return print;
}

std::function<void(const std::string& path)> TextWriter(std::function<std::string()> text) {
  return [text = std::move(text)](const std::string& path) {
    const std::string whole = text() + "\n";
    WriteWholeBytes(path, whole.data(), whole.size());
  };
}

void CheckEndings(const std::vector<std::string>& files, const PaperWriters& writers) {
  for (const std::string& file : files)
    if (!writers.contains(EndingOf(file)))
      throw std::invalid_argument(file + ": the form is not known by its ending; expected " + EndingsOf(writers));
}

int WritePapers(const BookCall& call, const PaperOptions& options, const PaperWriters& writers, const std::function<std::string()>& text) {
  CheckEndings(options.files, writers);
  for (const std::string& file : options.files) {
    if (EndingOf(file) == ".pdf") PaintSession();
    writers.at(EndingOf(file))(file);
    if (!options.json) call.out << "wrote " << file << '\n';
  }
  if (options.files.empty() || options.json) call.out << text() << '\n';
  return 0;
}

}  // namespace heatkeep::command
