// A backup of a book: one file, an ordinary tar archive of two parts, so that it can be opened without this program too.
//
//   book.dump      what pg_dump writes in its custom format
//   manifest.txt   "name: value" a line: what the book was at that moment, and the SHA-256 of book.dump
//
// It comes into being whole: written beside its name (NAME.part, mode 0600), put on the disk, then renamed. The manifest
// comes last, so a file that was cut off anywhere is known as such.
#pragma once

#include <cstdint>
#include <filesystem>
#include <string>
#include <string_view>

#include "client/book/persons.h"
#include "schema/terms/sha256.h"

namespace heatkeep {

struct BackupFacts {
  std::string made_at;          // ISO 8601, UTC
  std::string program;          // the version of Heatkeep that made it
  int schema = 0;               // of the book: its last migration
  int server = 0;               // of PostgreSQL, as 150020
  int dumped_by = 0;            // major version of the pg_dump that wrote it; 0 where it is the server's
  std::int64_t happenings = 0;  // in all chains, as api.book_digest counts them
  std::string digest;           // of the book, 64 hexadecimal digits
  std::int64_t dump_bytes = 0;
  std::string dump_sha256;
  std::vector<Person> persons;  // without their passwords
};

std::string ManifestText(const BackupFacts& facts);
// Throws BookError(BadInput) "what is wrong; what is expected".
BackupFacts ReadManifest(const std::string& text);

class BackupWriter {
 public:
  // Throws BookError(BadInput) when `file` is there already, std::system_error when it cannot be written.
  explicit BackupWriter(const std::filesystem::path& file);
  ~BackupWriter();  // takes away what was not finished
  BackupWriter(const BackupWriter&) = delete;
  BackupWriter& operator=(const BackupWriter&) = delete;

  void Append(std::string_view dump);  // throws std::system_error
  std::int64_t Bytes() const { return bytes_; }

  // Adds the manifest of `facts` with the dump's length and digest, and gives the file its name. Returns the facts so.
  BackupFacts Finish(BackupFacts facts);

 private:
  void Put(std::string_view bytes);

  std::filesystem::path file_, part_;
  int fd_ = -1;
  std::int64_t bytes_ = 0;
  Sha256 digest_;
};

class BackupReader {
 public:
  // Reads the manifest. Throws BookError(BadInput): is no backup, was cut off, is of a kind this program does not know.
  explicit BackupReader(const std::filesystem::path& file);
  ~BackupReader();
  BackupReader(const BackupReader&) = delete;
  BackupReader& operator=(const BackupReader&) = delete;

  const BackupFacts& facts() const { return facts_; }
  // The next bytes of the dump; empty at its end. Throws BookError(BadInput) there when they are not those of the manifest.
  std::string_view Next();
  void Rewind();
  std::int64_t Done() const { return done_; }

 private:
  std::filesystem::path file_;
  int fd_ = -1;
  BackupFacts facts_;
  std::int64_t done_ = 0;
  Sha256 digest_;
  std::string buffer_;
};

}  // namespace heatkeep
