// The libFuzzer program of one door (FUZZ_DOOR is its function): tests/fuzz/run.
#include <cstddef>
#include <cstdint>
#include <string_view>

#include "tests/fuzz/file_door.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  heatkeep::fuzz::FUZZ_DOOR({reinterpret_cast<const char*>(data), size});
  return 0;
}
