#include "client/command/saw_queue.h"

#include <filesystem>

#include "client/book/account.h"
#include "client/command/book_command.h"
#include "client/gateway/saw_deeds.h"
#include "client/gateway/saw_readings.h"
#include "client/queue/saw_queue.h"

namespace heatkeep::command {
namespace {

using Json = nlohmann::json;

void SayTorn(const SawQueue& queue, const std::string& path, std::ostream& err) {
  if (const auto& torn = queue.torn())
    err << path << ": the last record was torn at byte " << torn->offset << " (" << torn->bytes
        << " bytes, never acknowledged); they are kept in " << torn->kept.string() << '\n';
}

// Only `saw block` makes a queue: a mistyped name must not look like one with nothing in it.
void RequireQueue(const std::string& path) {
  if (!std::filesystem::exists(path)) throw QueueError(path + ": there is no such file; expected the queue that `heatkeep saw block` made");
}

int Explained(const BookCall& call, const std::exception& error) {
  call.err << "heatkeep: " << error.what() << '\n';
  return 2;
}

}  // namespace

int RunSawBlock(const BookCall& call, const std::string& device, const std::string& site, int size, const std::string& file) {
  return WithBook(call, [&](Connection& connection) {
    try {
      SawQueue queue(file);
      SayTorn(queue, file, call.err);
      if (!queue.device().empty() && queue.device() != device)
        throw std::invalid_argument(file + " is the queue of " + queue.device() + ", not of " + device);
      Json block = SawDeeds(connection).TakeTagBlock(NewRequest(), {{"device", device}, {"site", site}, {"size", size}});
      block["device"] = device;
      queue.AddBlock(block);
      const auto [first, last] = queue.LastBlock();
      call.out << device << ": tags " << first << " to " << last << '\n';
      return 0;
    } catch (const QueueError& error) { return Explained(call, error); }
  });
}

int QueueDeed(const BookCall& call, const std::string& file, const std::string& deed, Json body, const std::string& login, bool json) {
  try {
    SawQueue queue(file);
    SayTorn(queue, file, call.err);
    const SawQueue::Kept kept =
        queue.Keep(deed, std::move(body), login.empty() ? OwnAccount().name : login, {NewRequest().text, NewRequest().text});
    if (json) {
      call.out << Json{{"seq", kept.seq}, {"tags", kept.tags}}.dump(2) << '\n';
    } else {
      call.out << "kept as number " << kept.seq << " of " << queue.device();
      for (const std::string& tag : kept.tags) call.out << ", new tag " << tag;
      call.out << '\n';
    }
    return 0;
  } catch (const std::exception& error) { return Explained(call, error); }
}

int RunSawQueue(const BookCall& call, const std::string& file, bool json) {
  try {
    RequireQueue(file);
    const SawQueue queue(file);
    SayTorn(queue, file, call.err);
    Json rows = Json::array();
    for (const SawQueue::Entry& entry : queue.Entries()) {
      const Json& deed = entry.deed;
      rows.push_back({{"seq", deed["seq"]},
                      {"deed", deed["deed"]},
                      {"tag", entry.tag},
                      {"login", deed["login"]},
                      {"at", deed["true_at"]},
                      {"state", entry.outcome},
                      {"words", entry.words}});
      if (!json)
        call.out << deed["seq"] << ' ' << entry.outcome << "  " << deed["deed"].get<std::string>() << ' ' << entry.tag << " by "
                 << deed["login"].get<std::string>() << (entry.words.empty() ? "" : ": " + entry.words) << '\n';
    }
    if (json) call.out << rows.dump(2) << '\n';
    else if (rows.empty()) call.out << "nothing was done off the network\n";
    return 0;
  } catch (const std::exception& error) { return Explained(call, error); }
}

int RunSawSend(const BookCall& call, const std::string& file, bool json) {
  return WithBook(call, [&](Connection& connection) {
    try {
      RequireQueue(file);
      SawQueue queue(file);
      SayTorn(queue, file, call.err);
      Json done = Json::array();
      int code = 0;
      const auto told = [&](const SawQueue::Sent& sent) {
        if (sent.outcome == "conflict") code = 1;
        done.push_back({{"seq", sent.seq}, {"outcome", sent.outcome}, {"words", sent.words}});
        if (json) return;
        call.out << "number " << sent.seq << (sent.outcome == "done" ? " is booked" : " is a conflict for the lead: " + sent.words) << '\n';
        call.out.flush();
      };
      if (const auto others = queue.Send(
              connection.User(), ReadLastKept(connection, queue.device()),
              [&](const Json& deed) { return SawDeeds(connection).SendKept(deed); }, told)) {
        call.err << "number " << others->deed["seq"] << " was done by " << others->deed["login"].get<std::string>()
                 << ", who sends it; you are " << connection.User() << '\n';
        code = 1;
      }
      if (json) call.out << done.dump(2) << '\n';
      else if (done.empty() && code == 0) call.out << "nothing waits to be sent\n";
      return code;
    } catch (const QueueError& error) { return Explained(call, error); }
  });
}

}  // namespace heatkeep::command
