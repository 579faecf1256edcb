// A small works in a book of its own, worked only through the command line: every command is run as the person whose
// work it is, really logged in.
//
//   saws 1 (kerf 2, trim 10, grip 60, bundled 120, to 260) and 2 (the same, to 500); rests are kept from 150, those of
//   X2CrNiMo17-12-2 from 600; heats are not read back at the saw; places B1-1, B1-2, GATE, SAW-1, SAW-2, QUAR; mills and suppliers Vandrek,
//   Kestholm; customers Pallant, Drewe, Ister; the grades that come with the program
#pragma once

#include <gtest/gtest.h>

#include <filesystem>
#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "client/gateway/connection.h"
#include "tests/fixture/test_book.h"

namespace heatkeep::command {

using Json = nlohmann::json;
using Words = std::vector<std::string>;

constexpr std::int64_t kMm = 1'000'000;

struct Ran {
  int code = -1;
  std::string out, err;
};
std::ostream& operator<<(std::ostream& out, const Ran& ran);

// `heatkeep WORDS...` without a book.
Ran Heatkeep(const Words& words);

bool Has(const std::string& text, const std::string& part);

class Works : public testing::Test {
 protected:
  Works();
  ~Works() override;

  // `heatkeep --book ... WORDS...` as clerk, planner, saw, quality, owner, all or stranger.
  Ran As(const std::string& who, const Words& words) const;
  // The same, which must answer 0; what it printed as JSON ("--json" is added).
  Json Asked(const std::string& who, Words words) const;

  std::string File(const std::string& name, const std::string& text) const;  // written; its path
  std::string PathOf(const std::string& name) const { return (folder_ / name).string(); }

  // Rows for files with these columns; each must go through.
  //   old_tag,kind,mill,heat,grade,section,length,ends,papers,owner,doubt
  void TakeIn(const std::string& rows);
  //   number,type,issuer,heat,section,grade (issued on 2026-01-05)
  void Certify(const std::string& rows);
  //   order,line,customer,section,grade,length,quantity,papers,one_heat,owner,tolerance
  void Want(const std::string& list, const std::string& rows);
  // `allocate LIST` on saw 1 as the planner, whatever it answers; the plan's number, 0 if there is none.
  std::int64_t Plan(const std::string& list, const Words& more = {});
  // `plan show N --json`
  Json Sheet(std::int64_t plan) const { return Asked("planner", {"plan", "show", std::to_string(plan)}); }

  std::string TagOf(const std::string& old_tag);
  std::int64_t Number(const std::string& sql, const std::vector<Param>& params = {});
  std::string Word(const std::string& sql, const std::vector<Param>& params = {});
  // Changes with every happening.
  std::string Digest() { return Word("select digest as w from api.book_digest()"); }
  // Of a class in `report balance HEAT`, in nanometres; the balance must be even.
  std::int64_t Balance(const std::string& heat, const std::string& name) const;
  // The checks of verify_book that fail, but for the server's own settings.
  std::string Broken();

  TestBook book;
  Connection admin;

 private:
  std::filesystem::path folder_;
};

}  // namespace heatkeep::command
