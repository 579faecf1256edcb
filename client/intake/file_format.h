// What kind of file the bytes are, from what stands in them.
#pragma once

#include <string>
#include <string_view>

namespace heatkeep::intake {

enum class FileFormat { Text, Zip, Other };

struct Recognised {
  FileFormat format = FileFormat::Text;
  std::string what;  // of Other: "an old binary spreadsheet (.xls)"
};

// Zip says nothing yet about what is packed in it.
Recognised Recognise(std::string_view bytes);

}  // namespace heatkeep::intake
