#include "reports/flow_parts.h"

#include <vector>

namespace heatkeep {

FlowItem TextRow(double x, double width, const std::string& words, const TextStyle& style, double space) {
  return {ParagraphHeight(words, width, style) + space, [=](Pen& pen, double y) { pen.paragraph(x, y, width, words, style); }};
}

FlowItem SectionHead(double x, double width, const std::string& words) {
  return {9.5,
          [=](Pen& pen, double y) {
            pen.line(x, y + 2, x + width, y + 2, 0.5);
            pen.text(x, y + 3, width, words, {4.6, true});
          },
          true};
}

void SetRecordHead(Flow& flow, const RecordHead& head, double width) {
  flow.title = head.what + (head.subject.empty() ? "" : " " + head.subject);
  flow.head_height = 21;
  flow.next_head_height = 7;
  flow.head = [head, width](Pen& pen, int page, int pages) {
    const std::string count = "page " + std::to_string(page) + " of " + std::to_string(pages);
    pen.text(kMargin + width - 32, kMargin - 0.4, 32, count, {3.5, false, false, false, Align::Right});
    if (page > 1) {
      pen.text(kMargin, kMargin - 0.6, width - 34, head.what + "  " + head.subject, {3.8, true});
      return;
    }
    if (!head.subject.empty()) pen.text(kMargin, kMargin - 0.6, width - 34, head.what, {3.8, true});
    pen.text(kMargin, kMargin + 4.6, width, head.subject.empty() ? head.what : head.subject, {8, true});
    pen.text(kMargin, kMargin + 15, width, head.asked, {3.3});
  };
  flow.record = head.proof.digest;
  std::vector<std::string> lines;
  const auto add = [&](const char* whose, std::int64_t happenings, const std::string& digest) {
    if (!digest.empty()) lines.push_back(std::string(whose) + " over " + std::to_string(happenings) + " happenings: " + digest);
  };
  add("Record\u2019s digest", head.proof.happenings, head.proof.digest);
  add("Book\u2019s digest", head.happenings, head.digest);
  if (lines.empty()) return;
  flow.foot = [lines, width](Pen& pen, double y) {
    pen.line(kMargin, y, kMargin + width, y);
    for (std::size_t i = 0; i < lines.size(); ++i)
      pen.text(kMargin, y + 0.6 + 3.1 * static_cast<double>(i), width, lines[i], {2.5, false, true});
  };
}

std::string OwnWorkStatement() {
  return "This record compares what the book holds and states only our own work: receiving, sawing to "
         "length, "
         "measuring, marking and moving. It replaces neither the mill\u2019s inspection document nor the "
         "judgement of "
         "the person responsible.";
}

}  // namespace heatkeep
