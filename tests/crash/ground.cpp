#include "tests/crash/ground.h"

#include <sys/stat.h>

#include <fstream>

#include "client/book/child_process.h"
#include "client/book/cluster_files.h"
#include "client/book/server_binaries.h"
#include "client/book/socket_folder.h"

namespace heatkeep {

OnBadGround::OnBadGround() : ground_(folder / "ground") {
  Run({"book", "stop"});
  std::filesystem::create_directory(ground_);
  const std::filesystem::path library = folder / "bad_ground.so";
  std::filesystem::copy_file(HEATKEEP_BAD_GROUND, library);
  for (const auto& path : {ground_, library}) chmod(path.c_str(), 0755);
  const Account server = ServerAccount();
  const std::filesystem::path sockets = MakeSocketFolder(server);
  ReplaceFile(std::filesystem::path(home) / "socket", sockets.string() + '\n', 0644, OwnAccount());
  ServerChild child({"/usr/bin/env", "LD_PRELOAD=" + library.string(), "HEATKEEP_BAD_GROUND=" + ground_.string(), "LC_ALL=C.UTF-8",
                     (FindServerBinaries({}).folder / "postgres").string(), "-D", cluster.data().string(), "-c",
                     "unix_socket_directories=" + sockets.string()},
                    server, cluster.log());
  for (int tries = 0; !cluster.Running(); ++tries) {
    if (tries > 400 || child.Ended()) throw std::runtime_error("the server on bad ground does not start");
    Sleep(50'000);
  }
}

void OnBadGround::Full(const std::string& what) {
  if (what.empty()) std::filesystem::remove(ground_ / "full");
  else std::ofstream(ground_ / "full") << what;
}

void OnBadGround::ClockOff(long seconds) { std::ofstream(ground_ / "clock") << seconds; }

}  // namespace heatkeep
