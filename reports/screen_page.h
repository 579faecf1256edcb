// What a screen shows, as paper: words, tables, bars to scale and drawings in the order they stand in there. For what has no report of
// its own; the words are the screen's, in the reader's units and language.
#pragma once

#include <QPicture>
#include <QSize>
#include <optional>
#include <string>
#include <vector>

#include "reports/paper.h"
#include "reports/piece_bar.h"

namespace heatkeep {

struct PageColumn {
  std::string head;  // with the unit
  double share = 1;  // of the paper's width, beside the others
  bool number = false, mono = false;
  bool bar = false;  // draws the row's bar
};

struct PageRow {
  std::vector<std::string> texts;  // one a column
  std::optional<PieceBar> bar = {};
};

struct PageBar {
  std::string title, beside, right;  // a tag; where, which heat, how long; what becomes of the rest
  PieceBar bar;
};

// In this order, what there is of it: head, words, drawing, table, bars.
struct PagePart {
  std::string head = {};
  std::vector<std::string> words = {};  // a paragraph each
  QPicture drawing = QPicture();
  QSize drawn = {};  // in the drawing's own units; empty: no drawing
  std::vector<PageColumn> columns = {};
  std::vector<PageRow> rows = {};
  std::vector<PageBar> bars = {};
};

struct ScreenPage {
  std::string what, subject;  // "Plan", "cut list 26-1184"
  std::vector<PagePart> parts;
  Length full;                  // the longest piece: one scale for all bars
  Units units = Units::Metric;  // of the bars' labels and rulers
  std::string keep_word = "keep", scrap_word = "scrap", empty_words = "Nothing to show.";
};

// Throws std::runtime_error with the path and the reason and leaves an older file as it was.
void WriteScreenPage(const std::string& path, const ScreenPage& page, const PrintOptions& options);

}  // namespace heatkeep
