// What a saw did off the network, kept in a file that the power may tear at any byte, and sent to a book that may have lost its last.
#include "client/queue/saw_queue.h"

#include <gtest/gtest.h>
#include <stdlib.h>
#include <unistd.h>

#include <fstream>

#include "schema/terms/tag.h"

namespace heatkeep {
namespace {

namespace fs = std::filesystem;
using Json = nlohmann::json;

// A book for one device: every request once, in order.
struct Book {
  std::map<std::string, Json> done;
  std::int64_t last = 0;
  Json operator()(const Json& deed) {
    const auto seq = deed["seq"].get<std::int64_t>();
    if (!done.contains(deed["send"])) {
      if (seq != last + 1) throw std::runtime_error("number " + std::to_string(seq) + " does not follow " + std::to_string(last));
      done[deed["send"]] = deed["body"];
      last = seq;
    }
    return {{"seq", seq}, {"outcome", "done"}};
  }
};

struct TornSawQueue : testing::Test {
  TornSawQueue() {
    // in memory where there is any: every record of every try is made safe on the disk
    const fs::path memory = "/dev/shm";
    std::string made =
        ((access(memory.c_str(), W_OK | X_OK) == 0 ? memory : fs::temp_directory_path()) / "heatkeep-sawqueue-XXXXXX").string();
    folder = mkdtemp(made.data());
    path = folder / "saw-2.queue";
  }
  ~TornSawQueue() override { fs::remove_all(folder); }
  static void Send(SawQueue& queue, Book& book) {
    queue.Send("ann", book.last, std::ref(book), [](const SawQueue::Sent&) {});
  }
  static Json Cut(int n) { return {{"tag", "A00000" + std::to_string(n)}, {"strokes", Json::array()}, {"left", {{"fate", "drop"}}}}; }
  static void Keep(SawQueue& queue, int n) { queue.Keep("record_cut", Cut(n), "ann", {"r" + std::to_string(n), "s" + std::to_string(n)}); }
  std::string Bytes() const {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
  }
  fs::path folder, path;
};

// Two deeds sent, one more kept, that sent too: torn at every byte of all of it. What was on the disk is there, is in the book once, and
// the tags go on where they were.
TEST_F(TornSawQueue, AtAnyByteKeepsWhatWasOnTheDiskAndSendsItOnce) {
  std::vector<std::size_t> ends;  // of each record
  Book sent_to;
  {
    SawQueue queue(path);
    const auto note = [&] { ends.push_back(fs::file_size(path)); };
    queue.AddBlock({{"device", "saw-2"}, {"letter", "Q"}, {"first", 1}, {"last", 9}});
    note();
    Keep(queue, 1);
    note();
    Keep(queue, 2);
    note();
    Send(queue, sent_to);
    Keep(queue, 3);
    Send(queue, sent_to);
  }
  const std::string whole = Bytes();
  std::size_t torn = 0;
  for (std::size_t at = ends[0]; at <= whole.size(); ++at) {
    std::ofstream(path, std::ios::binary | std::ios::trunc) << whole.substr(0, at);
    Book book = sent_to;  // has all three, as the disk of the saw may not remember
    SawQueue queue(path);
    torn += queue.torn().has_value();
    const auto there = static_cast<std::int64_t>(queue.Entries().size());
    if (at < ends[2]) EXPECT_EQ(there, at < ends[1] ? 0 : 1) << at;
    else EXPECT_GE(there, 2) << at;
    Send(queue, book);
    EXPECT_EQ(book.done.size(), 3U) << at;
    EXPECT_EQ(queue.Waiting(), 0) << at;
    if (there == 3) {
      Keep(queue, 4);
      EXPECT_EQ(queue.Entries().back().deed["body"]["left"]["tag"], MakeTag('Q', 4));
    }
    for (const auto& file : fs::directory_iterator(folder))
      if (file.path() != path) fs::remove(file.path());
  }
  EXPECT_GT(torn, whole.size() / 2);
}

// The book's server was lost and another took its place that had not heard of the last: those are sent again, in order, the rest not.
TEST_F(TornSawQueue, WhatWasSentToAServerThatIsLostIsSentAgain) {
  SawQueue queue(path);
  queue.AddBlock({{"device", "saw-2"}, {"letter", "Q"}, {"first", 1}, {"last", 9}});
  Book first;
  for (int n = 1; n <= 4; ++n) Keep(queue, n);
  Send(queue, first);
  Book second;
  for (const auto& entry : queue.Entries())
    if (entry.deed["seq"] <= 2) second(entry.deed);
  Keep(queue, 5);
  std::vector<std::int64_t> told;
  queue.Send("ann", second.last, std::ref(second), [&](const SawQueue::Sent& sent) { told.push_back(sent.seq); });
  EXPECT_EQ(told, (std::vector<std::int64_t>{3, 4, 5}));
  EXPECT_EQ(second.last, 5);
  EXPECT_EQ(SawQueue(folder / "x").Waiting(), 0);
}

}  // namespace
}  // namespace heatkeep
