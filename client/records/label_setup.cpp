#include "client/records/label_setup.h"

#include "client/gateway/readings.h"

namespace heatkeep {

LabelSetup ReadLabelSetup(Connection& connection, const std::string& paper, const std::string& code, int dpi) {
  const auto setting = [&](const std::string& said, const char* name, const char* otherwise) {
    return said.empty() ? ReadSetting(connection, name, otherwise) : said;
  };
  return {setting(paper, "label_paper", "100x50"),
          {setting(code, "label_code", "data-matrix") == "qr" ? MatrixCode::Qr : MatrixCode::DataMatrix,
           dpi > 0 ? dpi : std::stoi(ReadSetting(connection, "label_dpi", "203"))}};
}

}  // namespace heatkeep
