// The parts of a zip file that is held in memory, inflated one at a time and never further than the limits.
#pragma once

#include <cstddef>
#include <map>
#include <memory>
#include <string>
#include <string_view>

struct zip;

namespace heatkeep::intake {

inline constexpr std::size_t kMostParts = 10'000;
inline constexpr std::size_t kLargestPart = std::size_t{128} * 1024 * 1024;   // one part inflated
inline constexpr std::size_t kLargestParts = std::size_t{256} * 1024 * 1024;  // all that are read

// Throws BadText: what is no whole zip file, more than kMostParts parts. `bytes` must outlive it. Nothing is written
// anywhere, and a part is only ever found by its whole name, so names that climb out of a folder lead nowhere.
class ZipParts {
 public:
  explicit ZipParts(std::string_view bytes);
  ~ZipParts();
  ZipParts(const ZipParts&) = delete;
  ZipParts& operator=(const ZipParts&) = delete;

  // Names are compared without case, as ISO/IEC 29500-2 does.
  bool Has(std::string_view name) const;

  // Inflated. Throws BadText: not there, there twice, locked, packed in an unusual way, larger than it says or than the
  // limits, damaged.
  std::string Read(std::string_view name);

 private:
  struct Place {
    std::size_t index = 0;
    bool twice = false;
  };

  std::unique_ptr<zip, void (*)(zip*)> zip_;
  std::map<std::string, Place, std::less<>> places_;
  std::size_t read_ = 0;
};

}  // namespace heatkeep::intake
