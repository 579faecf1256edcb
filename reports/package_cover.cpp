#include <algorithm>
#include <map>

#include "reports/flow_parts.h"
#include "reports/package_paper.h"
#include "reports/paper_table.h"
#include "reports/quantity_text.h"
#include "reports/sheet_words.h"
#include "schema/terms/counted.h"

namespace heatkeep {
namespace {

using Rows = std::vector<std::vector<std::string>>;

constexpr std::size_t kTagsInRow = 24;

std::string Joined(const std::vector<std::string>& words, const char* between) {
  std::string all;
  for (const std::string& word : words) all += (all.empty() ? "" : between) + word;
  return all;
}

bool Is(const PackageDocument& d, const PackageLine::Paper& p) { return d.issuer == p.issuer && d.number == p.number; }

std::string PageWords(const DocumentPlace& place) {
  if (place.first_page == 0) return place.attached_as.empty() ? "not in this file" : "attached only";
  return std::to_string(place.first_page) + " (" + place.label + ")";
}

// One row a line and document, so that a document's page stands beside every line it is for.
Rows ListRows(const Package& package, const std::vector<DocumentPlace>& places) {
  Rows rows;
  for (const PackageLine& line : package.lines) {
    std::vector<std::string> row{PackageLineName(line), PackageCount(line), MmText(line.length), PackageMetal(line), line.heat, "", "", ""};
    if (line.papers.empty()) row[5] = "none asked for, none here";
    bool first = true;
    for (const PackageLine::Paper& paper : line.papers) {
      for (std::size_t i = 0; i < package.documents.size(); ++i) {
        if (!Is(package.documents[i], paper)) continue;
        if (!first) std::fill(row.begin(), row.end(), "");
        first = false;
        row[5] = paper.type + " no. " + paper.number;
        row[6] = paper.issuer;
        row[7] = PageWords(places[i]);
        rows.push_back(row);
      }
    }
    if (first) rows.push_back(row);
  }
  return rows;
}

Rows DocumentRows(const Package& package, const std::vector<DocumentPlace>& places) {
  Rows rows;
  for (std::size_t i = 0; i < package.documents.size(); ++i) {
    const PackageDocument& d = package.documents[i];
    std::string page = PageWords(places[i]);
    if (places[i].pages > 1) page += ", " + std::to_string(places[i].pages) + " pages";
    if (!places[i].words.empty()) page += ": " + places[i].words;
    rows.push_back({d.type + " no. " + d.number, d.issuer, d.issued_on, std::to_string(d.version), page,
                    places[i].attached_as.empty() ? "typed values only" : places[i].attached_as, d.file_sha256});
  }
  return rows;
}

// Which heat went into which pieces; many tags are spread over rows.
Rows TraceRows(const Package& package) {
  Rows rows;
  for (const PackageLine& line : package.lines) {
    std::vector<std::string> row{line.heat,
                                 line.mill,
                                 PackageLineName(line),
                                 PackageCount(line) + " \u00D7 " + MmText(line.length),
                                 "",
                                 line.note.empty() ? "not delivered yet" : "note " + line.note};
    for (std::size_t at = 0; at < line.tags.size() || at == 0; at += kTagsInRow) {
      const auto first = line.tags.begin() + static_cast<std::ptrdiff_t>(at);
      const auto last = line.tags.begin() + static_cast<std::ptrdiff_t>(std::min(at + kTagsInRow, line.tags.size()));
      row[4] = Joined({first, last}, ", ");
      rows.push_back(row);
      std::fill(row.begin(), row.end(), "");
    }
  }
  return rows;
}

std::string HeatsWords(const Package& package) {
  if (!package.heats_statement.empty()) return package.heats_statement;
  std::map<std::string, int> heats;
  for (const PackageLine& line : package.lines)
    heats[(line.heat.empty() ? "no heat known" : "heat " + line.heat) + (line.mill.empty() ? "" : " of " + line.mill)] += line.count;
  std::string words;
  for (const auto& [heat, count] : heats) words += (words.empty() ? "" : "; ") + heat + ": " + Counted(count, "piece");
  return words + ". No piece in this list is of another heat.";
}

}  // namespace

QByteArray PrintPackageCover(const Package& package, const std::vector<DocumentPlace>& places, const PrintOptions& options) {
  const double width = PageWidth(options.size) - 2 * kMargin;
  Flow flow;
  RecordHead head;
  head.what = "Certificate package";
  head.subject = PackageSubject(package);
  head.asked = PackageParties(package) + "  \u00B7  as the book stood at " + ShortTime(package.as_of) + " UTC";
  SetRecordHead(flow, head, width);
  flow.items.push_back(SectionHead(kMargin, width, "What is in this file"));
  AddTable(flow, width,
           {{"order/line", 21},
            {"pieces", 15, Align::Right},
            {"length", 18, Align::Right},
            {"metal"},
            {"heat", 20, Align::Left, true},
            {"document", 29},
            {"issuer", 18},
            {"page", 19}},
           ListRows(package, places));
  flow.items.push_back(SectionHead(kMargin, width, "The documents"));
  AddTable(flow, width,
           {{"document", 27},
            {"issuer", 17},
            {"issued", 18},
            {"version", 11},
            {"page in this file", 20},
            {"attached as", 34},
            {"SHA-256 of the file", 0, Align::Left, false, 2.4}},
           DocumentRows(package, places));
  flow.items.push_back(SectionHead(kMargin, width, "Our own work"));
  flow.items.push_back(TextRow(kMargin, width, PackageStatement(package), {3.0}, 2));
  flow.items.push_back(SectionHead(kMargin, width, "Which heat went into which pieces"));
  flow.items.push_back(TextRow(kMargin, width, HeatsWords(package), {3.2, true}, 1.5));
  flow.items.back().with_next = true;
  AddTable(flow, width,
           {{"heat", 22, Align::Left, true},
            {"mill", 22},
            {"order/line", 24},
            {"pieces", 40},
            {"cut from (tags)", 0, Align::Left, true, 2.8},
            {"delivered", 30}},
           TraceRows(package));
  return PrintFlow(flow, options);
}

}  // namespace heatkeep
