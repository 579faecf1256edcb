#include <algorithm>
#include <set>

#include "reports/flow_parts.h"
#include "reports/package_paper.h"
#include "reports/paper_table.h"
#include "reports/quantity_text.h"

namespace heatkeep {
namespace {

RecordHead HeadOf(const Package& package, const std::string& what, const std::string& subject) {
  RecordHead head;
  head.what = what;
  head.subject = subject;
  head.asked = PackageParties(package);
  return head;
}

// Words of any length, in rows that a page can hold.
void AddWords(Flow& flow, double width, const std::string& words) {
  constexpr std::size_t kMost = 1500;
  for (std::size_t at = 0; at < words.size();) {
    std::size_t end = std::min(at + kMost, words.size());
    if (end < words.size())
      if (const std::size_t blank = words.rfind(' ', end); blank != std::string::npos && blank > at) end = blank + 1;
    flow.items.push_back(TextRow(kMargin, width, words.substr(at, end - at), {3.0}, end == words.size() ? 1.6 : 0));
    at = end;
  }
}

void AddNote(Flow& flow, double width, const Package& package, const std::string& note) {
  flow.items.push_back(SectionHead(kMargin, width, note.empty() ? "Here, not delivered yet" : "Delivery note " + note));
  std::vector<std::vector<std::string>> rows;
  for (const PackageLine& line : package.lines) {
    if (line.note != note) continue;
    std::string mark = line.heat.empty() ? "no heat" : line.heat;
    if (line.order.empty())
      for (const std::string& tag : line.tags) mark += ", " + tag;
    rows.push_back(
        {mark, line.mill, PackageLineName(line), PackageCount(line), MmText(line.length), PackageMetal(line), KgText(line.mass)});
  }
  AddTable(flow, width,
           {{"mark on the pieces: heat", 38, Align::Left, true, 3.2},
            {"mill", 20},
            {"order/line", 24},
            {"pieces", 16, Align::Right},
            {"length of one", 20, Align::Right},
            {"metal"},
            {"mass, reckoned", 23, Align::Right}},
           rows);
}

}  // namespace

QByteArray PrintPackageDelivery(const Package& package, const PrintOptions& options) {
  const double width = PageWidth(options.size) - 2 * kMargin;
  Flow flow;
  SetRecordHead(flow, HeadOf(package, "Delivery note", PackageSubject(package)), width);
  std::set<std::string> notes;
  for (const PackageLine& line : package.lines) notes.insert(line.note);
  for (const std::string& note : notes) AddNote(flow, width, package, note);
  flow.items.push_back(SectionHead(kMargin, width, "How the documents are passed on"));
  bool any = false;
  for (const PackageDocument& d : package.documents)
    for (const PackageDocument::Passed& p : d.passed) {
      AddWords(flow, width, p.words);
      any = true;
    }
  if (!any) AddWords(flow, width, "Nothing has been delivered under a note of ours that these documents went with.");
  return PrintFlow(flow, options);
}

std::vector<AdditionalDocument> PrintAdditionalDocuments(const Package& package, const PrintOptions& options) {
  const double width = PageWidth(options.size) - 2 * kMargin;
  std::set<std::string> numbers;
  for (const PackageDocument& d : package.documents)
    for (const auto& p : d.passed)
      if (p.rule == "ISO 10474") numbers.insert(p.additional);
  std::vector<AdditionalDocument> made;
  for (const std::string& number : numbers) {
    Flow flow;
    SetRecordHead(flow, HeadOf(package, "Additional document (ISO 10474:2013 clause 6)", number), width);
    AddWords(flow, width,
             "This additional document of ours states only the quantity and the length in which the metal was "
             "delivered. The inspection documents named here follow as they were issued: nothing in them was "
             "changed or added. It is no inspection document and states no inspection.");
    for (const PackageDocument& d : package.documents)
      for (const auto& p : d.passed) {
        if (p.rule != "ISO 10474" || p.additional != number) continue;
        flow.items.push_back(SectionHead(kMargin, width, DocumentName(d) + ", delivered under note " + p.note));
        std::vector<std::vector<std::string>> rows;
        for (const PackageLine& line : package.lines)
          for (const auto& paper : line.papers)
            if (line.note == p.note && paper.issuer == d.issuer && paper.number == d.number)
              rows.push_back({line.heat, PackageLineName(line), PackageCount(line), MmText(line.length), KgText(line.mass)});
        AddTable(flow, width,
                 {{"heat", 0, Align::Left, true},
                  {"order/line"},
                  {"new quantity", 34, Align::Right},
                  {"new length", 34, Align::Right},
                  {"mass, reckoned", 34, Align::Right}},
                 rows);
      }
    made.push_back({number, PrintFlow(flow, options)});
  }
  return made;
}

}  // namespace heatkeep
