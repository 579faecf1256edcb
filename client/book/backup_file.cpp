#include "client/book/backup_file.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <charconv>
#include <cstring>
#include <numeric>
#include <sstream>
#include <system_error>

#include "client/book/book_error.h"

namespace heatkeep {
namespace {

// POSIX ustar: a block of 512 bytes says name, mode, length; the content follows, filled up to whole blocks; two empty
// blocks end the archive. A length from 8 GiB on is written in base 256, as the common programs do.
constexpr std::int64_t kBlock = 512;
constexpr std::int64_t kLongestOctal = std::int64_t{1} << 33;
constexpr const char* kDump = "book.dump";
constexpr const char* kManifest = "manifest.txt";
constexpr std::int64_t kLongestManifest = std::int64_t{16} * 1024 * 1024;
constexpr const char* kFirstLine = "heatkeep backup: 1";

BookError Bad(const std::string& what) { return {BookError::Kind::BadInput, what}; }

std::int64_t Filled(std::int64_t bytes) { return (bytes + kBlock - 1) / kBlock * kBlock; }

std::string Octal(std::int64_t value, std::size_t digits) {
  std::string text(digits, '0');
  for (std::size_t i = digits; i-- > 0; value /= 8) text[i] = static_cast<char>('0' + value % 8);
  return text;
}

void SetSum(std::string& header) {
  header.replace(148, 8, "        ");
  const auto sum = std::accumulate(header.begin(), header.end(), 0, [](int s, char c) { return s + static_cast<unsigned char>(c); });
  header.replace(148, 8, Octal(sum, 6) + '\0' + ' ');
}

std::string Header(const std::string& name, std::int64_t bytes) {
  std::string header(static_cast<std::size_t>(kBlock), '\0');
  const auto put = [&](std::size_t at, const std::string& text) { header.replace(at, text.size(), text); };
  put(0, name);
  put(100, "0000600");
  put(108, "0000000");
  put(116, "0000000");
  if (bytes < kLongestOctal) {
    put(124, Octal(bytes, 11));
  } else {
    header[124] = '\x80';
    for (std::size_t i = 135; i > 124 && bytes > 0; --i, bytes /= 256) header[i] = static_cast<char>(bytes % 256);
  }
  put(136, Octal(0, 11));
  header[156] = '0';
  put(257, std::string("ustar\0", 6) + "00");
  SetSum(header);
  return header;
}

// The length of the part that `header` begins; throws unless it is the part called `name`.
std::int64_t LengthSaid(const std::string& header, const std::string& name) {
  std::string summed = header;
  if (header.size() == static_cast<std::size_t>(kBlock)) SetSum(summed);
  if (header.size() != static_cast<std::size_t>(kBlock) || summed != header || header.compare(0, name.size() + 1, name + '\0') != 0)
    return -1;
  std::int64_t bytes = 0;
  if (header[124] == '\x80') {
    for (std::size_t i = 128; i < 136; ++i) bytes = bytes * 256 + static_cast<unsigned char>(header[i]);
  } else {
    const auto [end, code] = std::from_chars(header.data() + 124, header.data() + 135, bytes, 8);
    if (code != std::errc{} || end != header.data() + 135) return -1;
  }
  return bytes;
}

std::int64_t Whole(const std::string& text, const std::string& name) {
  std::int64_t value = 0;
  const auto [end, code] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (code != std::errc{} || end != text.data() + text.size() || value < 0)
    throw Bad("its manifest says " + name + " \"" + text.substr(0, 40) + "\"; expected a whole number");
  return value;
}

std::string HexDigits(const std::string& text, const std::string& name) {
  if (text.size() != 64 || text.find_first_not_of("0123456789abcdef") != std::string::npos)
    throw Bad("its manifest says no " + name + "; expected 64 hexadecimal digits");
  return text;
}

}  // namespace

std::string ManifestText(const BackupFacts& facts) {
  std::ostringstream out;
  out << kFirstLine << "\nmade at: " << facts.made_at << "\nprogram: " << facts.program << "\nschema: " << facts.schema
      << "\nserver: " << facts.server << "\ndumped by: " << facts.dumped_by << "\nhappenings: " << facts.happenings
      << "\ndigest: " << facts.digest << "\ndump bytes: " << facts.dump_bytes << "\ndump sha256: " << facts.dump_sha256 << '\n';
  for (const Person& person : facts.persons) {
    out << "person: " << person.name;
    for (const std::string& role : person.roles) out << ' ' << role;
    out << '\n';
  }
  out << "end: of manifest\n";
  return out.str();
}

BackupFacts ReadManifest(const std::string& text) {
  std::istringstream in(text);
  std::string line;
  if (!std::getline(in, line) || line != kFirstLine)
    throw Bad("its manifest begins \"" + line.substr(0, 40) + "\"; expected \"" + kFirstLine + "\", which this program knows");
  BackupFacts facts;
  bool ended = false;
  while (std::getline(in, line)) {
    const std::size_t colon = line.find(": ");
    if (ended || colon == std::string::npos)
      throw Bad("its manifest has the line \"" + line.substr(0, 40) + "\"; expected \"name: value\"");
    const std::string name = line.substr(0, colon), value = line.substr(colon + 2);
    if (name == "made at") facts.made_at = value;
    else if (name == "program") facts.program = value;
    else if (name == "schema") facts.schema = static_cast<int>(std::min<std::int64_t>(Whole(value, name), 1'000'000));
    else if (name == "server") facts.server = static_cast<int>(std::min<std::int64_t>(Whole(value, name), 100'000'000));
    else if (name == "dumped by") facts.dumped_by = static_cast<int>(std::min<std::int64_t>(Whole(value, name), 10'000));
    else if (name == "happenings") facts.happenings = Whole(value, name);
    else if (name == "digest") facts.digest = HexDigits(value, name);
    else if (name == "dump bytes") facts.dump_bytes = Whole(value, name);
    else if (name == "dump sha256") facts.dump_sha256 = HexDigits(value, name);
    else if (name == "end") ended = true;
    else if (name == "person") {
      std::istringstream words(value);
      Person person;
      words >> person.name;
      if (const std::string wrong = WrongWithName(person.name); !wrong.empty()) throw Bad("its manifest names a person: " + wrong);
      for (std::string role; words >> role;) {
        if (std::find(RoleNames().begin(), RoleNames().end(), role) == RoleNames().end())
          throw Bad("its manifest gives " + person.name + " the role \"" + role.substr(0, 40) +
                    "\"; expected clerk, planner, saw, quality or owner");
        person.roles.push_back(role);
      }
      facts.persons.push_back(std::move(person));
    } else throw Bad("its manifest says \"" + name.substr(0, 40) + "\", which this program does not know");
  }
  if (!ended || facts.digest.empty() || facts.dump_sha256.empty() || facts.schema == 0 || facts.server == 0)
    throw Bad("its manifest is not whole; expected all that a backup says of itself");
  return facts;
}

BackupWriter::BackupWriter(const std::filesystem::path& file)
    : file_(std::filesystem::absolute(file).lexically_normal()), part_(file_.string() + ".part") {
  if (std::filesystem::symlink_status(file_).type() != std::filesystem::file_type::not_found)
    throw Bad(file_.string() + " is there already; expected a new name: a backup never takes the place of another");
  fd_ = open(part_.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_NOFOLLOW | O_CLOEXEC, 0600);
  if (fd_ < 0 && errno == EEXIST)
    throw Bad(part_.string() + " is there: another backup to this name is being made, or was broken off; expected it gone");
  if (fd_ < 0)
    throw Bad(part_.string() + " cannot be written: " + std::strerror(errno) + "; expected a folder that is there, with leave to write");
  try {
    Put(std::string(static_cast<std::size_t>(kBlock), '\0'));  // its header, once the length is known
  } catch (...) {
    close(fd_);
    unlink(part_.c_str());
    throw;
  }
}

BackupWriter::~BackupWriter() {
  if (fd_ < 0) return;
  close(fd_);
  unlink(part_.c_str());
}

void BackupWriter::Put(std::string_view bytes) {
  while (!bytes.empty()) {
    const ssize_t wrote = write(fd_, bytes.data(), bytes.size());
    if (wrote < 0 && errno != EINTR) throw std::system_error(errno, std::generic_category(), part_.string() + " cannot be written");
    if (wrote > 0) bytes.remove_prefix(static_cast<std::size_t>(wrote));
  }
}

void BackupWriter::Append(std::string_view dump) {
  Put(dump);
  digest_.Take(dump);
  bytes_ += static_cast<std::int64_t>(dump.size());
}

BackupFacts BackupWriter::Finish(BackupFacts facts) {
  facts.dump_bytes = bytes_;
  facts.dump_sha256 = digest_.Hex();
  const std::string manifest = ManifestText(facts);
  const auto said = static_cast<std::int64_t>(manifest.size());
  Put(std::string(static_cast<std::size_t>(Filled(bytes_) - bytes_), '\0'));
  Put(Header(kManifest, said));
  Put(manifest + std::string(static_cast<std::size_t>(Filled(said) - said + 2 * kBlock), '\0'));
  const std::string header = Header(kDump, bytes_);
  const bool placed = pwrite(fd_, header.data(), header.size(), 0) == static_cast<ssize_t>(header.size());
  if (!placed || fsync(fd_) != 0) throw std::system_error(errno, std::generic_category(), part_.string() + " cannot be put on the disk");
  // A link, unlike a rename, does not take the place of a file that came meanwhile.
  if (link(part_.c_str(), file_.c_str()) != 0 && (errno == EEXIST || rename(part_.c_str(), file_.c_str()) != 0))
    throw std::system_error(errno, std::generic_category(), file_.string() + " cannot be given its name");
  unlink(part_.c_str());
  close(fd_);
  fd_ = -1;
  const int folder = open(file_.parent_path().c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
  if (folder >= 0) {
    fsync(folder);
    close(folder);
  }
  return facts;
}

BackupReader::BackupReader(const std::filesystem::path& file) : file_(file) {
  fd_ = open(file.c_str(), O_RDONLY | O_CLOEXEC);
  struct stat info {};
  if (fd_ < 0 || fstat(fd_, &info) != 0 || !S_ISREG(info.st_mode)) {
    const int error = fd_ < 0 ? errno : EINVAL;
    if (fd_ >= 0) close(fd_);
    throw Bad(file.string() + " cannot be read (" + std::generic_category().message(error) +
              "); expected a file that `heatkeep book backup` made");
  }
  try {
    const auto block = [&](std::int64_t at, std::int64_t bytes) {
      std::string text(static_cast<std::size_t>(bytes), '\0');
      const ssize_t got = pread(fd_, text.data(), text.size(), at);
      text.resize(got < 0 ? 0 : static_cast<std::size_t>(got));
      return text;
    };
    const std::string cut = file.string() + " was cut off: it ends before its manifest; expected a whole backup";
    const std::int64_t dump = LengthSaid(block(0, kBlock), kDump);
    if (dump < 0 && info.st_size < kBlock)
      throw Bad(file.string() +
                " is no backup of a book, or was cut off at its beginning; expected a file that `heatkeep book backup` made");
    if (dump < 0) throw Bad(file.string() + " is no backup of a book; expected a file that `heatkeep book backup` made");
    const std::int64_t behind = kBlock + Filled(dump);
    if (dump > info.st_size || info.st_size < behind + kBlock) throw Bad(cut);
    const std::int64_t said = LengthSaid(block(behind, kBlock), kManifest);
    if (said < 0 || said > kLongestManifest) throw Bad(file.string() + " is damaged where its manifest should be");
    const std::string manifest = block(behind + kBlock, said);
    if (static_cast<std::int64_t>(manifest.size()) != said) throw Bad(cut);
    try {
      facts_ = ReadManifest(manifest);
    } catch (const BookError& wrong) { throw Bad(file.string() + ": " + wrong.what()); }
    if (facts_.dump_bytes != dump)
      throw Bad(file.string() + " is damaged: its manifest speaks of " + std::to_string(facts_.dump_bytes) + " bytes, the archive of " +
                std::to_string(dump));
    Rewind();
  } catch (...) {
    close(fd_);
    throw;
  }
}

BackupReader::~BackupReader() { close(fd_); }

void BackupReader::Rewind() {
  lseek(fd_, kBlock, SEEK_SET);
  done_ = 0;
  digest_ = {};
  buffer_.resize(std::size_t{256} * 1024);
}

std::string_view BackupReader::Next() {
  const auto want = std::min<std::int64_t>(static_cast<std::int64_t>(buffer_.size()), facts_.dump_bytes - done_);
  if (want == 0) {
    if (digest_.Hex() != facts_.dump_sha256)
      throw Bad(file_.string() + " is damaged: its bytes are not those that were written (SHA-256); expected another copy of it");
    return {};
  }
  ssize_t got = 0;
  while ((got = read(fd_, buffer_.data(), static_cast<std::size_t>(want))) < 0 && errno == EINTR) {}
  if (got <= 0) throw Bad(file_.string() + " cannot be read to its end; expected a whole backup");
  const std::string_view bytes(buffer_.data(), static_cast<std::size_t>(got));
  digest_.Take(bytes);
  done_ += got;
  return bytes;
}

}  // namespace heatkeep
