// A heat's values against its grade's limits. Numbers are compared with published figures: it replaces neither the
// standard nor the judgement of the person responsible.
//
// A limit of the heat analysis is judged by the heat analysis (ISO 404:2013 7.2). For a product analysis the permissible
// deviation of the standard is added, by the band that each limit itself lies in: 1.4301 Ni 8.0-10.5 may be 7.90 to 10.65.
// Where the size is not said, a value is wrong only when it is wrong at every size there are limits for, and what differs
// from size to size is missing until the size is said. Nothing missing is zero.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "client/papers/quantity.h"
#include "client/papers/verdict.h"
#include "schema/terms/length.h"

namespace heatkeep::papers {

struct Question {
  std::string grade;  // its designation
  Analysis analysis;
  bool product = false;        // an analysis of the product, not of the heat
  std::optional<Length> size;  // diameter, across flats or thickness
  Method method = Method::Absolute;
};

struct Known {
  std::vector<GradeLimit> limits;  // of any grades
  std::vector<ProductDeviation> deviations;
};

struct Answer {
  std::vector<Line> elements;                 // limited ones in the table's order, then what was reported besides
  std::vector<Line> sums;                     // carbon equivalent, sums of elements, others
  std::string open;                           // why the answer is incomplete as a whole; empty else
  Overall composition = Overall::Incomplete;  // by the elements alone
  Overall overall = Overall::Incomplete;      // by both
};

// A grade without limits answers incomplete, and says so in `open`.
Answer CheckHeat(const Question& question, const Known& known);

// Designations of the grades whose limits these values all meet, in the order of `known`; where nothing is limited by
// size or the size is said, and that none of the elements they do not limit makes another steel of. It finds what a heat may
// be certified to; whoever certifies it answers for that.
std::vector<std::string> GradesMet(Question question, const Known& known);

// Several product analyses of one unit: elements that lie above the heat's range in one and below it in another, which
// EN 10088-2 does not allow (the deviation holds on one side only). Empty: none.
std::vector<std::string> BothSides(const std::vector<Answer>& answers);

}  // namespace heatkeep::papers
