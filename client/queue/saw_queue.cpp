#include "client/queue/saw_queue.h"

#include <ctime>

#include "schema/terms/tag.h"

namespace heatkeep {
namespace {

using Json = nlohmann::json;

std::string Now() {
  const std::time_t now = std::time(nullptr);
  std::tm utc{};
  gmtime_r(&now, &utc);
  char text[32];
  std::strftime(text, sizeof text, "%Y-%m-%dT%H:%M:%SZ", &utc);
  return text;
}

std::string TagIn(const Json& body) {
  if (body.contains("bars") && !body["bars"].empty()) return body["bars"][0].value("tag", "");
  if (body.contains("tags") && !body["tags"].empty()) return body["tags"][0];
  return body.value("tag", "");
}

}  // namespace

SawQueue::SawQueue(const std::string& path) : file_(path) {
  for (const std::string& record : file_.records()) Take(Json::parse(record));
}

void SawQueue::Take(const Json& record) {
  if (record.contains("block")) {
    const Json& block = record["block"];
    device_ = block.at("device");
    letter_ = block.at("letter");
    blocks_.emplace_back(block.at("first").get<std::int64_t>(), block.at("last").get<std::int64_t>());
  } else if (record.contains("deed")) {
    deeds_.push_back(record);
    tags_used_ += record.value("tags", 0);
  } else {
    sent_[record.at("sent").get<std::int64_t>()] = record;
  }
}

void SawQueue::Append(const Json& record) {
  file_.Append(record.dump());
  Take(record);
}

void SawQueue::AddBlock(const Json& block) {
  if (!device_.empty() && device_ != block.at("device"))
    throw QueueError("this is the queue of " + device_ + ", not of " + block.at("device").get<std::string>());
  Append({{"block", block}});
}

std::pair<std::string, std::string> SawQueue::LastBlock() const {
  return {MakeTag(letter_[0], blocks_.back().first), MakeTag(letter_[0], blocks_.back().second)};
}

std::string SawQueue::TagNumber(std::int64_t nth) const {
  for (const auto& [first, last] : blocks_) {
    if (nth <= last - first) return MakeTag(letter_[0], first + nth);
    nth -= last - first + 1;
  }
  throw QueueError("the tag numbers of " + device_ + " are used up; take another block (heatkeep saw block) when the book can be reached");
}

std::vector<std::string> SawQueue::GiveTags(const std::string& deed, Json& body) const {
  std::vector<std::string> given;
  const auto next = [&] {
    given.push_back(TagNumber(tags_used_ + static_cast<std::int64_t>(given.size())));
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

SawQueue::Kept SawQueue::Keep(const std::string& deed, Json body, const std::string& login,
                              const std::pair<std::string, std::string>& requests) {
  if (device_.empty())
    throw QueueError("no tag numbers were taken for this saw yet; expected `heatkeep saw block` while the book can be reached");
  const std::vector<std::string> tags = GiveTags(deed, body);
  const auto seq = static_cast<std::int64_t>(deeds_.size()) + 1;
  Append({{"deed", deed},
          {"seq", seq},
          {"device", device_},
          {"login", login},
          {"request", requests.first},
          {"send", requests.second},
          {"true_at", Now()},
          {"tags", tags.size()},
          {"body", std::move(body)}});
  return {seq, tags};
}

std::vector<SawQueue::Entry> SawQueue::Entries() const {
  std::vector<Entry> entries;
  for (const Json& deed : deeds_) {
    const auto at = sent_.find(deed["seq"].get<std::int64_t>());
    entries.push_back({deed, TagIn(deed["body"]), at == sent_.end() ? "waits" : at->second["outcome"].get<std::string>(),
                       at == sent_.end() ? "" : at->second.value("words", "")});
  }
  return entries;
}

int SawQueue::Waiting() const { return static_cast<int>(deeds_.size() - sent_.size()); }

std::optional<SawQueue::Entry> SawQueue::Send(const std::string& login, std::int64_t in_book,
                                              const std::function<Json(const Json& deed)>& send,
                                              const std::function<void(const Sent&)>& told) {
  for (const Entry& entry : Entries()) {
    if (entry.outcome != "waits" && entry.deed["seq"].get<std::int64_t>() <= in_book) continue;
    if (entry.deed["login"] != login) return entry;
    const Json answer = send(entry.deed);
    const Sent sent{entry.deed["seq"].get<std::int64_t>(), answer.at("outcome").get<std::string>(), answer.value("words", "")};
    Append({{"sent", sent.seq}, {"outcome", sent.outcome}, {"words", sent.words}});
    told(sent);
  }
  return std::nullopt;
}

}  // namespace heatkeep
