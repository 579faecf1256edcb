// Runs cluster_probe the way people's programs run: as an account of this machine, in a home of its own.
#pragma once

#include <sys/types.h>

#include <filesystem>
#include <memory>
#include <string>
#include <vector>

namespace heatkeep {

struct Said {
  int status = -1;
  std::string text;  // standard output and error
};

class Probe {
 public:
  // `account` empty: the account the tests run as. Else root must run them. Hasty: without fsync, which only
  // a power cut would miss.
  explicit Probe(const std::string& account, bool hasty = true);
  ~Probe();  // stops the server and removes the home
  Probe(const Probe&) = delete;
  Probe& operator=(const Probe&) = delete;

  Said Run(const std::string& word, const std::string& environment = "") const;
  std::vector<Said> RunAtOnce(const std::string& word, int times) const;
  FILE* Begin(const std::string& word, const std::string& environment = "") const;  // pclose it
  static Said End(FILE* begun);

  std::filesystem::path home() const { return folder_ / "home"; }
  std::filesystem::path data() const { return home() / "cluster"; }
  pid_t Postmaster() const;  // by postmaster.pid; 0 when there is none
  std::string ServerAccountName() const;
  uid_t ServerUid() const;

 private:
  std::string account_;
  bool hasty_;
  std::filesystem::path folder_;
};

// The accounts to try: the tests' own, and an ordinary user too when root runs them.
std::vector<std::string> AccountsToTry();

}  // namespace heatkeep
