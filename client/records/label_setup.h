// What the shop prints labels on and how: its settings label_paper, label_code and label_dpi.
#pragma once

#include <string>

#include "client/gateway/connection.h"
#include "reports/label_painter.h"

namespace heatkeep {

struct LabelSetup {
  std::string paper;  // as PaperCalled (reports/label_sheet.h) takes it
  LabelLook look;
};

// What is said (not empty, above 0) goes before the setting. Throws DbError.
LabelSetup ReadLabelSetup(Connection& connection, const std::string& paper = {}, const std::string& code = {}, int dpi = 0);

}  // namespace heatkeep
