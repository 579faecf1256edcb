#include "client/command/label_command.h"

#include <algorithm>
#include <nlohmann/json.hpp>
#include <ostream>
#include <sstream>
#include <stdexcept>

#include "client/command/paper_files.h"
#include "client/gateway/read_labels.h"
#include "client/records/label_setup.h"
#include "reports/label_sheet.h"
#include "schema/terms/scan.h"
#include "schema/terms/tag.h"

namespace heatkeep::command {
namespace {

using Json = nlohmann::ordered_json;

struct ToPrint {
  std::vector<LabelFace> faces;
  std::vector<WaitingLabels::Job> jobs;  // of the queue
  Json said = Json::array();             // one object a label
};

// "A..,B.." and "A.. B.." are the same; a scan is one word, whatever is in it.
std::vector<std::string> Words(const std::vector<std::string>& texts) {
  std::vector<std::string> words;
  for (const std::string& text : texts) {
    if (LooksLikeEnvelope(text)) {
      words.push_back(text);
      continue;
    }
    std::istringstream parts(text);
    for (std::string word; std::getline(parts, word, ',');)
      if (!word.empty()) words.push_back(word);
  }
  return words;
}

ToPrint OfPieces(Connection& connection, const LabelOptions& options, LabelSize size, const std::string& day) {
  std::vector<std::string> tags;
  for (const std::string& word : Words(options.tags)) tags.push_back(ReadTag(TagOfScan(word)));
  const WaitingLabels waiting = ReadWaitingLabels(connection, tags);
  for (const std::string& tag : tags)
    if (std::none_of(waiting.labels.begin(), waiting.labels.end(), [&](const PieceLabel& l) { return l.tag == tag; }))
      throw std::invalid_argument("no label of " + tag +
                                  " waits; another one of the same piece is asked for at the piece: heatkeep piece relabel");
  ToPrint all;
  all.jobs = waiting.jobs;
  for (const PieceLabel& label : waiting.labels) {
    all.faces.push_back(FaceOf(label, size, day, connection.User()));
    all.said.push_back({{"job", label.job},
                        {"tag", label.tag},
                        {"heat", label.heat},
                        {"grade", label.grade},
                        {"section", label.section},
                        {"length_nm", label.length.nm},
                        {"owner", label.owner},
                        {"limits", label.limits},
                        {"blocked", label.blocked},
                        {"reprint", label.reprint}});
  }
  if (all.faces.empty()) throw std::invalid_argument("no label waits to be printed");
  return all;
}

ToPrint OfPlaces(Connection& connection, const LabelOptions& options, LabelSize size) {
  const std::vector<PlaceLabel> places = ReadPlaceLabels(connection);
  const std::vector<std::string> wanted = Words(options.places);
  const bool every = wanted == std::vector<std::string>{"all"};
  for (const std::string& name : wanted)
    if (!every && std::none_of(places.begin(), places.end(), [&](const PlaceLabel& p) { return p.place == name; }))
      throw std::invalid_argument("no place is called \"" + name + "\"; `heatkeep shop places` lists them");
  ToPrint all;
  for (const PlaceLabel& place : places) {
    if (!every && std::find(wanted.begin(), wanted.end(), place.place) == wanted.end()) continue;
    all.faces.push_back(FaceOf(place, size));
    all.said.push_back({{"place", place.place}});
  }
  return all;
}

ToPrint OfOrders(Connection& connection, const LabelOptions& options, LabelSize size, const std::string& day) {
  ToPrint all;
  for (const std::string& order : options.orders) {
    const std::vector<BatchLabel> batches = ReadBatchLabels(connection, order);
    if (batches.empty()) throw std::invalid_argument("no cut piece of order \"" + order + "\" is on site");
    for (const BatchLabel& batch : batches) {
      all.faces.push_back(FaceOf(batch, size, day, connection.User()));
      all.said.push_back(
          {{"order", batch.order}, {"line", batch.line}, {"heat", batch.heat}, {"count", batch.count}, {"blocked", batch.blocked}});
    }
  }
  return all;
}

// Takes out the labels that cannot be printed, and says what is wrong with each: they keep waiting.
std::vector<std::string> TakeOutWrong(ToPrint& all, const LabelPaper& paper, const LabelLook& look) {
  std::vector<std::string> wrong;
  ToPrint good;
  for (std::size_t i = 0; i < all.faces.size(); ++i) {
    std::string why = WrongWithLabel({0, 0, paper.across, paper.down}, all.faces[i], look);
    if (why.empty()) {
      good.faces.push_back(std::move(all.faces[i]));
      good.said.push_back(std::move(all.said[i]));
      continue;
    }
    std::erase_if(all.jobs, [&](const WaitingLabels::Job& job) { return job.tag == all.said[i].value("tag", ""); });
    wrong.push_back(std::move(why));
  }
  if (good.faces.empty() && !wrong.empty()) throw std::invalid_argument(wrong.front());
  good.jobs = std::move(all.jobs);
  all = std::move(good);
  return wrong;
}

}  // namespace

int RunLabelPrint(const BookCall& call, const LabelOptions& options) {
  return WithBook(call, [&](Connection& connection) {
    const auto [name, look] = ReadLabelSetup(connection, options.paper, options.code, options.dpi);
    LabelPaper paper = Divided(PaperCalled(name), options.grid, options.margins, options.gaps);
    paper.outline = options.cut_lines;
    const LabelSize size = SizeFor({0, 0, paper.across, paper.down});
    const PrintOptions print = PrintFor(connection, {});
    const std::string day = print.printed_at.substr(0, 10);
    if (!options.tags.empty() + !options.places.empty() + !options.orders.empty() > 1)
      throw std::invalid_argument("--tags, --place and --order do not go together; expected one of them");
    ToPrint all = !options.places.empty() ? OfPlaces(connection, options, size)
        : !options.orders.empty()         ? OfOrders(connection, options, size, day)
                                          : OfPieces(connection, options, size, day);
    const std::vector<std::string> wrong = TakeOutWrong(all, paper, look);
    WriteLabels(options.to, all.faces, paper, look, options.start, print);
    const int pages = PagesFor(paper, all.faces.size(), options.start);
    Json jobs = Json::array();
    for (const auto& job : all.jobs) jobs.push_back(job.number);
    for (const std::string& why : wrong) call.err << why << "; it still waits\n";
    const int next = (static_cast<int>(all.faces.size()) + options.start - 1) % paper.Boxes() + 1;
    if (options.json) {
      call.out << Json{{"file", options.to}, {"paper", name},      {"pages", pages},      {"next_start", next},
                       {"jobs", jobs},       {"labels", all.said}, {"not_printed", wrong}}
                      .dump(2)
               << '\n';
      return wrong.empty() ? 0 : 1;
    }
    call.out << "wrote " << options.to << ": " << all.faces.size() << (all.faces.size() == 1 ? " label" : " labels") << " on " << pages
             << (pages == 1 ? " page of " : " pages of ") << name;
    if (paper.Boxes() > 1) call.out << ", the next free position is " << next;
    call.out << '\n';
    if (jobs.empty()) return wrong.empty() ? 0 : 1;
    call.out << "when they are out and legible: heatkeep label printed";
    for (const auto& job : all.jobs) call.out << ' ' << job.number;
    call.out << " --printer NAME\n";
    return wrong.empty() ? 0 : 1;
  });
}

}  // namespace heatkeep::command
