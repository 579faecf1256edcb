// A program small enough to be run as another account, many at a time, and killed: works the private cluster
// in HEATKEEP_HOME. Usage: cluster_probe WORD, see below. Exit 0 done, 1 refused (said on stderr).
#include <chrono>
#include <cstdlib>
#include <exception>
#include <filesystem>
#include <iostream>
#include <string>
#include <thread>

#include "client/book/book_home.h"
#include "client/book/idle_watcher.h"
#include "client/book/persons.h"
#include "client/book/private_cluster.h"

namespace {

int Run(const std::string& word, const std::string& self) {
  using namespace heatkeep;
  const bool watched = std::getenv("HEATKEEP_IDLE_SECONDS") != nullptr;
  const bool hasty = std::getenv("PROBE_HASTY") != nullptr;  // spares the disk: a killed server loses nothing by it
  PrivateCluster cluster({HomeFolder(), watched ? std::vector<std::string>{self, "watch"} : std::vector<std::string>{},
                          hasty ? std::vector<std::string>{"fsync = off"} : std::vector<std::string>{}});
  if (word == "init") {
    cluster.Init();
    cluster.Admin().ExecuteScript("create table if not exists note (id bigint generated always as identity)");
  } else if (word == "make") {
    cluster.Init();
  } else if (word == "ensure") {
    cluster.EnsureRunning();
  } else if (word == "write") {
    cluster.Admin().ExecuteScript("insert into note default values");
  } else if (word == "count") {
    std::cout << cluster.Admin().Execute("select count(*) as n from note").Only().Int("n") << '\n';
  } else if (word == "hold") {  // a session of 4 s
    cluster.Admin().Execute("select pg_sleep(4)");
  } else if (word == "brief") {  // short sessions for 4 s
    for (int i = 0; i < 20; ++i) {
      cluster.Admin().Execute("select pg_sleep(0.01)");
      std::this_thread::sleep_for(std::chrono::milliseconds(190));
    }
  } else if (word == "busy") {  // a session that computes until it is killed
    cluster.Admin().Execute("select count(*) from generate_series(1, 1000000000000)");
  } else if (word.starts_with("admit=")) {
    Connection admin = cluster.Admin();
    AddPerson(admin, word.substr(6), {});
    cluster.Admit({word.substr(6)});
  } else if (word.starts_with("as=")) {
    std::cout << cluster.Connect(word.substr(3)).Execute("select session_user::text as u").Only().Text("u") << '\n';
  } else if (word == "settings") {
    const auto show = [&](const char* name) {
      std::cout << cluster.Admin().Execute("select current_setting($1) as s", {name}).Only().Text("s") << ' ';
    };
    for (const char* name : {"data_checksums", "fsync", "full_page_writes", "server_encoding"}) show(name);
    std::cout << "tcp='" << cluster.Admin().Execute("show listen_addresses").Only().Text("listen_addresses") << "'\n";
  } else if (word == "stop") {
    std::cout << (cluster.Stop() ? "stopped\n" : "was not running\n");
  } else if (word == "status") {
    std::cout << (cluster.Running() ? "running\n" : "not running\n");
  } else if (word == "watch") {
    RunWatcher(cluster.home());
  } else {
    std::cerr << "cluster_probe: unknown word '" << word << "'\n";
    return 2;
  }
  return 0;
}

}  // namespace

int main(int argc, char** argv) {
  if (argc != 2) return 2;
  try {
    return Run(argv[1], std::filesystem::read_symlink("/proc/self/exe"));
  } catch (const std::exception& error) {
    std::cerr << "cluster_probe: " << error.what() << '\n';
    return 1;
  }
}
