// A saw off the network: deeds written to the saw's own disk, in order, each with its request number, and sent later.
//
// The file (record_file.h) holds JSON records: {"block"} tag numbers and the device they were given to, {"deed"} what was done, by
// which login and when, {"sent"} what became of it. A deed is acknowledged when it is on the disk. Sending does each once, in the
// device's order and under the login that did it. What the book could not book as told is a conflict there, kept with its words.
#pragma once

#include <cstdint>
#include <functional>
#include <map>
#include <nlohmann/json.hpp>
#include <optional>
#include <ostream>
#include <string>
#include <utility>
#include <vector>

#include "client/queue/record_file.h"

namespace heatkeep {

class SawQueue {
 public:
  using Json = nlohmann::json;

  // Opens the file, or makes it. Throws QueueError (record_file.h).
  explicit SawQueue(const std::string& path);

  const std::string& device() const { return device_; }  // empty: no tag numbers were taken for it yet
  const std::optional<TornTail>& torn() const { return file_.torn(); }

  // {"device","letter","first","last"}: numbers that the book gave. Throws QueueError where the queue is another device's.
  void AddBlock(const Json& block);
  // "A000001D": the first and last tag of the block taken last.
  std::pair<std::string, std::string> LastBlock() const;

  struct Kept {
    std::int64_t seq = 0;
    std::vector<std::string> tags;  // of the pieces that the deed makes, in the order of its strokes
  };
  // Keeps a deed: on the disk when it returns. Drops and pieces of stock get their tags from the blocks. `requests`: of the deed itself
  // and of its sending. Throws QueueError: no block was taken, or its numbers are used up.
  Kept Keep(const std::string& deed, Json body, const std::string& login, const std::pair<std::string, std::string>& requests);

  struct Entry {
    Json deed;                   // as kept: "seq", "deed", "login", "true_at", "body"
    std::string tag;             // the piece it is about; of bars cut together the first
    std::string outcome, words;  // "waits", "done" or "conflict"
  };
  std::vector<Entry> Entries() const;
  int Waiting() const;  // not sent yet

  struct Sent {
    std::int64_t seq = 0;
    std::string outcome, words;
  };
  // Sends what waits, in order: `send` gives a deed to the book (api.send_offline) and answers it; what it throws goes through, and
  // what was sent stays so. `in_book` is the last number of this device that the book has: what was sent after it went to a server that
  // is lost, and is sent again to the one that took its place. `told` hears of each. Stops before the first deed of another login than
  // `login`, which it answers.
  std::optional<Entry> Send(const std::string& login, std::int64_t in_book, const std::function<Json(const Json& deed)>& send,
                            const std::function<void(const Sent&)>& told);

 private:
  void Take(const Json& record);
  void Append(const Json& record);
  std::string TagNumber(std::int64_t nth) const;
  std::vector<std::string> GiveTags(const std::string& deed, Json& body) const;

  RecordFile file_;
  std::string device_, letter_;
  std::vector<Json> deeds_;
  std::map<std::int64_t, Json> sent_;
  std::vector<std::pair<std::int64_t, std::int64_t>> blocks_;
  std::int64_t tags_used_ = 0;
};

}  // namespace heatkeep
