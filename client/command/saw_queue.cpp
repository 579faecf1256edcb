#include "client/command/saw_queue.h"

#include <ctime>
#include <filesystem>
#include <iostream>
#include <map>

#include "client/book/account.h"
#include "client/command/book_command.h"
#include "client/gateway/saw_deeds.h"
#include "client/queue/record_file.h"
#include "schema/terms/tag.h"

namespace heatkeep::command {
namespace {

using Json = nlohmann::json;

// A queue as it stands: its deeds in order, what became of them, and the tag numbers left.
struct SawQueue {
  RecordFile file;
  std::string device, letter;
  std::vector<Json> deeds;
  std::map<std::int64_t, Json> sent;
  std::vector<std::pair<std::int64_t, std::int64_t>> blocks;
  std::int64_t tags_used = 0;

  SawQueue(const std::string& path, std::ostream& err) : file(path) {
    if (const auto& torn = file.torn())
      err << path << ": the last record was torn at byte " << torn->offset << " (" << torn->bytes << " bytes, never acknowledged); they are kept in "
          << torn->kept.string() << '\n';
    for (const std::string& record : file.records()) Take(Json::parse(record));
  }
  void Take(const Json& record) {
    if (record.contains("block")) {
      const Json& block = record["block"];
      device = block.at("device");
      letter = block.at("letter");
      blocks.emplace_back(block.at("first").get<std::int64_t>(), block.at("last").get<std::int64_t>());
    } else if (record.contains("deed")) {
      deeds.push_back(record);
      tags_used += record.value("tags", 0);
    } else {
      sent[record.at("sent").get<std::int64_t>()] = record;
    }
  }
  void Append(const Json& record) {
    file.Append(record.dump());
    Take(record);
  }
  std::string TagNumber(std::int64_t nth) const {
    for (const auto& [first, last] : blocks) {
      if (nth <= last - first) return MakeTag(letter[0], first + nth);
      nth -= last - first + 1;
    }
    throw QueueError("the tag numbers of " + device + " are used up; take another block (heatkeep saw block) when the book can be reached");
  }
};

// Only `saw block` makes a queue: a mistyped name must not look like one with nothing in it.
void RequireQueue(const std::string& path) {
  if (!std::filesystem::exists(path)) throw QueueError(path + ": there is no such file; expected the queue that `heatkeep saw block` made");
}

std::string Now() {
  const std::time_t now = std::time(nullptr);
  std::tm utc{};
  gmtime_r(&now, &utc);
  char text[32];
  std::strftime(text, sizeof text, "%Y-%m-%dT%H:%M:%SZ", &utc);
  return text;
}

// The piece a deed is about; of bars cut together the first.
std::string TagIn(const Json& body) {
  if (body.contains("bars") && !body["bars"].empty()) return body["bars"][0].value("tag", "");
  if (body.contains("tags") && !body["tags"].empty()) return body["tags"][0];
  return body.value("tag", "");
}

// Gives every piece that the deed makes a tag of the block; answers them.
std::vector<std::string> GiveTags(const SawQueue& queue, const std::string& deed, Json& body) {
  std::vector<std::string> given;
  const auto next = [&] {
    given.push_back(queue.TagNumber(queue.tags_used + static_cast<std::int64_t>(given.size())));
    return given.back();
  };
  const auto give = [&](Json& cut) {
    if (cut.contains("strokes"))
      for (Json& stroke : cut["strokes"])
        if (stroke.at("class") == "stock")
          for (int i = 0; i < stroke.value("count", 1); ++i) stroke["tags"].push_back(next());
    if (cut.contains("left") && cut["left"].value("fate", "") == "drop") cut["left"]["tag"] = next();
  };
  give(body);
  if (body.contains("bars"))
    for (Json& bar : body["bars"]) give(bar);
  if (deed == "split_piece") {
    Json& parts = body.at("parts");
    for (std::size_t i = 0; i < parts.size(); ++i) {
      if (i + 1 < parts.size()) parts[i]["tags"] = Json::array({next()});
      else parts[i]["tag"] = next();
    }
  }
  return given;
}

int Explained(const BookCall& call, const std::exception& error) {
  call.err << "heatkeep: " << error.what() << '\n';
  return 2;
}

}  // namespace

int RunSawBlock(const BookCall& call, const std::string& device, const std::string& site, int size, const std::string& file) {
  return WithBook(call, [&](Connection& connection) {
    try {
      SawQueue queue(file, call.err);
      if (!queue.device.empty() && queue.device != device)
        throw std::invalid_argument(file + " is the queue of " + queue.device + ", not of " + device);
      Json block = SawDeeds(connection).TakeTagBlock(NewRequest(), {{"device", device}, {"site", site}, {"size", size}});
      block["device"] = device;
      queue.Append({{"block", block}});
      call.out << device << ": tags " << MakeTag(queue.letter[0], block["first"]) << " to " << MakeTag(queue.letter[0], block["last"]) << '\n';
      return 0;
    } catch (const QueueError& error) {
      return Explained(call, error);
    }
  });
}

int QueueDeed(const BookCall& call, const std::string& file, const std::string& deed, Json body, const std::string& login, bool json) {
  try {
    SawQueue queue(file, call.err);
    if (queue.device.empty())
      throw QueueError(file + ": no tag numbers were taken for this saw yet; expected `heatkeep saw block` while the book can be reached");
    const std::vector<std::string> tags = GiveTags(queue, deed, body);
    const auto seq = static_cast<std::int64_t>(queue.deeds.size()) + 1;
    queue.Append({{"deed", deed}, {"seq", seq}, {"device", queue.device}, {"login", login.empty() ? OwnAccount().name : login}, {"request", NewRequest().text},
                  {"send", NewRequest().text}, {"true_at", Now()}, {"tags", tags.size()}, {"body", body}});
    if (json) {
      call.out << Json{{"seq", seq}, {"tags", tags}}.dump(2) << '\n';
    } else {
      call.out << "kept as number " << seq << " of " << queue.device;
      for (const std::string& tag : tags) call.out << ", new tag " << tag;
      call.out << '\n';
    }
    return 0;
  } catch (const std::exception& error) {
    return Explained(call, error);
  }
}

int RunSawQueue(const BookCall& call, const std::string& file, bool json) {
  try {
    RequireQueue(file);
    const SawQueue queue(file, call.err);
    Json rows = Json::array();
    for (const Json& deed : queue.deeds) {
      const auto at = queue.sent.find(deed["seq"].get<std::int64_t>());
      const std::string state = at == queue.sent.end() ? "waits" : at->second["outcome"].get<std::string>();
      const std::string words = at == queue.sent.end() ? "" : at->second.value("words", "");
      rows.push_back({{"seq", deed["seq"]}, {"deed", deed["deed"]}, {"tag", TagIn(deed["body"])}, {"login", deed["login"]}, {"at", deed["true_at"]},
                      {"state", state}, {"words", words}});
      if (!json) call.out << deed["seq"] << ' ' << state << "  " << deed["deed"].get<std::string>() << ' ' << TagIn(deed["body"]) << " by "
                          << deed["login"].get<std::string>() << (words.empty() ? "" : ": " + words) << '\n';
    }
    if (json) call.out << rows.dump(2) << '\n';
    else if (rows.empty()) call.out << "nothing was done off the network\n";
    return 0;
  } catch (const std::exception& error) {
    return Explained(call, error);
  }
}

int RunSawSend(const BookCall& call, const std::string& file, bool json) {
  return WithBook(call, [&](Connection& connection) {
    try {
      RequireQueue(file);
      SawQueue queue(file, call.err);
      SawDeeds deeds(connection);
      Json done = Json::array();
      int code = 0;
      const std::vector<Json> all = queue.deeds;
      for (const Json& deed : all) {
        const auto seq = deed["seq"].get<std::int64_t>();
        if (queue.sent.contains(seq)) continue;
        if (deed["login"] != connection.User()) {
          call.err << "number " << seq << " was done by " << deed["login"].get<std::string>() << ", who sends it; you are " << connection.User() << '\n';
          code = 1;
          break;
        }
        const Json answer = deeds.SendOffline({deed["send"].get<std::string>()}, {{"device", deed["device"]}, {"seq", seq}, {"deed", deed["deed"]},
            {"request", deed["request"]}, {"true_at", deed["true_at"]}, {"body", deed["body"]}});
        queue.Append({{"sent", seq}, {"outcome", answer.at("outcome")}, {"words", answer.value("words", "")}});
        if (answer.at("outcome") == "conflict") code = 1;
        done.push_back({{"seq", seq}, {"outcome", answer["outcome"]}, {"words", answer.value("words", "")}});
        if (!json) {
          call.out << "number " << seq << (answer["outcome"] == "done" ? " is booked" : " is a conflict for the lead: " + answer.value("words", "")) << '\n';
          call.out.flush();
        }
      }
      if (json) call.out << done.dump(2) << '\n';
      else if (done.empty() && code == 0) call.out << "nothing waits to be sent\n";
      return code;
    } catch (const QueueError& error) {
      return Explained(call, error);
    }
  });
}

}  // namespace heatkeep::command
