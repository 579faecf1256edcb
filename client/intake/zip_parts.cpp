#include "client/intake/zip_parts.h"

#include <zip.h>

#include <algorithm>

#include "schema/terms/bad_text.h"
#include "schema/terms/plain_text.h"

namespace heatkeep::intake {
namespace {

constexpr const char* kWhole = "a whole spreadsheet, saved again";
constexpr std::size_t kBlock = std::size_t{256} * 1024;

// Entries of the directory at the end, counted before anything is set aside for them.
std::size_t DirectoryEntries(std::string_view bytes) {
  std::size_t n = 0;
  for (auto at = bytes.find("PK\x01\x02"); at != std::string_view::npos && n <= kMostParts; at = bytes.find("PK\x01\x02", at + 4)) ++n;
  return n;
}

[[noreturn]] void TooLarge(std::string_view name) {
  throw BadText("part " + Quoted(name) + " unpacks to more than " + std::to_string(kLargestPart >> 20) + " MiB",
                "a spreadsheet of ordinary size");
}

zip* Opened(std::string_view bytes) {
  if (DirectoryEntries(bytes) > kMostParts) {
    throw BadText("more than " + std::to_string(kMostParts) + " parts are packed in it", "a spreadsheet of ordinary size");
  }
  zip_error_t error;
  zip_error_init(&error);
  zip_source_t* source = zip_source_buffer_create(bytes.data(), bytes.size(), 0, &error);
  zip* opened = source == nullptr ? nullptr : zip_open_from_source(source, ZIP_RDONLY, &error);
  if (opened != nullptr) return opened;
  const std::string why = zip_error_strerror(&error);
  zip_error_fini(&error);
  if (source != nullptr) zip_source_free(source);
  throw BadText("the zip file is damaged (" + why + ")", kWhole);
}

void Close(zip* z) { zip_discard(z); }

}  // namespace

ZipParts::ZipParts(std::string_view bytes) : zip_(Opened(bytes), Close) {
  const zip_int64_t n = zip_get_num_entries(zip_.get(), 0);
  for (zip_int64_t i = 0; i < n; ++i) {
    const char* name = zip_get_name(zip_.get(), static_cast<zip_uint64_t>(i), 0);
    if (name == nullptr) continue;
    const auto [at, fresh] = places_.emplace(LowerCase(name), Place{static_cast<std::size_t>(i), false});
    if (!fresh) at->second.twice = true;
  }
}

ZipParts::~ZipParts() = default;

bool ZipParts::Has(std::string_view name) const { return places_.contains(LowerCase(name)); }

std::string ZipParts::Read(std::string_view name) {
  const auto place = places_.find(LowerCase(name));
  if (place == places_.end()) throw BadText("part " + Quoted(name) + " is missing", kWhole);
  if (place->second.twice) throw BadText("part " + Quoted(name) + " is there twice", kWhole);
  zip_stat_t stat;
  if (zip_stat_index(zip_.get(), place->second.index, 0, &stat) != 0) throw BadText("part " + Quoted(name) + " is damaged", kWhole);
  if (stat.encryption_method != ZIP_EM_NONE) throw BadText("the file is locked with a password", "one without a password");
  if (stat.comp_method != ZIP_CM_STORE && stat.comp_method != ZIP_CM_DEFLATE) {
    throw BadText("part " + Quoted(name) + " is packed in an unusual way", kWhole);
  }
  if (stat.size > kLargestPart) TooLarge(name);
  const std::unique_ptr<zip_file_t, int (*)(zip_file_t*)> file(zip_fopen_index(zip_.get(), place->second.index, 0), zip_fclose);
  if (!file) throw BadText("part " + Quoted(name) + " is damaged", kWhole);
  std::string out;
  std::string block(kBlock, '\0');
  for (;;) {
    const zip_int64_t n = zip_fread(file.get(), block.data(), block.size());
    if (n < 0) throw BadText("part " + Quoted(name) + " is damaged or is not as large as it says", kWhole);
    if (n == 0) break;
    out.append(block, 0, static_cast<std::size_t>(n));
    if (out.size() > kLargestPart || (read_ += static_cast<std::size_t>(n)) > kLargestParts) TooLarge(name);
  }
  if (out.size() != stat.size) throw BadText("part " + Quoted(name) + " is not as large as it says", kWhole);
  return out;
}

}  // namespace heatkeep::intake
