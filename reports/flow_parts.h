// Parts of a flow that several reports use: a paragraph, a section's head, a plain head of a record's pages.
#pragma once

#include <string>

#include "reports/paper.h"
#include "schema/terms/rows.h"

namespace heatkeep {

FlowItem TextRow(double x, double width, const std::string& words, const TextStyle& style, double space = 0.6);
FlowItem SectionHead(double x, double width, const std::string& words);

// Head of a record: what it is, of what (empty: of all), when and for whom; on the other pages one line. Sets flow.head and
// its heights. The foot says the record's digest and the book's and how many happenings each covers, where there is one.
struct RecordHead {
  std::string what, subject, asked;
  std::string digest;
  std::int64_t happenings = 0;
  RecordProof proof = {};  // of the record itself; none: nothing about it in the foot
};
void SetRecordHead(Flow& flow, const RecordHead& head, double width);

// What a record of ours says and does not say.
std::string OwnWorkStatement();

}  // namespace heatkeep
