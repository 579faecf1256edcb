#include "tests/crash/sawing_works.h"

#include <sys/stat.h>
#include <unistd.h>

#include <cstdlib>
#include <fstream>
#include <iostream>
#include <thread>

namespace heatkeep {
namespace {

constexpr int kBars = 60;

constexpr const char* kShop = R"json({
  "settings": {"heat_read_back": "no"},
  "parties": [{"name": "Vandrek", "mill": true, "supplier": true}, {"name": "Pallant", "customer": true}],
  "sites": [{"site": "main", "letter": "A", "offline_letter": "Q"}],
  "places": [{"place": "B1-1", "site": "main", "kind": "rack"}, {"place": "GATE", "site": "main", "kind": "gate"},
             {"place": "SAW-1", "site": "main", "kind": "saw"}],
  "saws": [{"saw": "1", "place": "SAW-1", "max_section": "260 mm", "band": "34 x 1.1", "kerf": "2 mm", "trim": "10 mm", "grip": "60 mm"}],
  "keep": [{"keep": "150 mm"}]
})json";

// A layout is done with all its cuts and its drop, or untouched.
constexpr const char* kHalfCut = R"sql(
  select count(*) as n from book.layout f join book.piece p using (piece_id)
    cross join lateral (select count(*) as cuts, count(*) filter (where closed) as closed from book.cut c where c.layout_id = f.layout_id) c
    cross join lateral (select count(*) as good from book.stroke s join book.cut c using (cut_id)
      where c.layout_id = f.layout_id and s.class = 'good') s
    cross join lateral (select sum(k.count) as planned from book.layout_cut k where k.layout_id = f.layout_id) k
    where not case f.state
      when 'done' then c.cuts = 1 and c.closed = 1 and s.good = k.planned and p.length_nm = 0
        and (select array_agg(d.made_length_nm) from book.piece d where d.parent_id = p.piece_id) = array[f.left_nm]
      else c.cuts = 0 and s.good = 0 and p.length_nm = f.length_nm end)sql";

// In memory where there is plenty: a killed process loses what it had not yet given to the system, wherever the system
// keeps it, and after a crash the server makes every file safe, which takes seconds on a busy disk. TMPDIR overrides it.
std::filesystem::path FreshFolder() {
  std::error_code none;
  const std::filesystem::path memory = "/dev/shm";
  const auto space = std::filesystem::space(memory, none);
  const bool plenty = !none && space.available > 2'000'000'000 && access(memory.c_str(), W_OK | X_OK) == 0 && !std::getenv("TMPDIR");
  std::string made = ((plenty ? memory : std::filesystem::temp_directory_path()) / "heatkeep-crash-XXXXXX").string();
  if (!mkdtemp(made.data())) throw std::runtime_error(made + " cannot be made");
  if (geteuid() == 0 && chmod(made.c_str(), 0755) != 0) throw std::runtime_error(made + " cannot be opened to the server");
  return made;
}

unsigned Seed() {
  const char* given = std::getenv("HEATKEEP_CRASH_SEED");
  const unsigned seed = given ? static_cast<unsigned>(std::stoul(given)) : std::random_device()();
  std::cout << "HEATKEEP_CRASH_SEED=" << seed << '\n';
  return seed;
}

}  // namespace

int Rounds(int rounds) {
  const char* given = std::getenv("HEATKEEP_CRASH_ROUNDS");
  return given ? std::stoi(given) : rounds;
}

SawingWorks::SawingWorks() : folder(FreshFolder()), home(folder / "home"), cluster({home, {}, {}}), random(Seed()) {
  Run({"book", "init"});
  Run({"shop", "set", RunFile("shop.json", kShop)});
}

SawingWorks::~SawingWorks() {
  WaitUntilQuiet();  // a server told to stop while it recovers may never end
  HeatkeepProcess(Words({"book", "stop"})).Finish();
  std::error_code ignored;
  std::filesystem::remove_all(folder, ignored);
}

std::vector<std::string> SawingWorks::Words(std::vector<std::string> words) const {
  words.insert(words.begin(), {"--home", home});
  return words;
}

void SawingWorks::Run(const std::vector<std::string>& words) {
  HeatkeepProcess process(Words(words));
  const int status = process.Finish();
  if (status != 0) throw std::runtime_error(words[0] + " answered " + std::to_string(status) + ": " + process.text());
}

std::string SawingWorks::RunFile(const std::string& name, const std::string& text) const {
  std::ofstream(folder / name) << text;
  return folder / name;
}

int SawingWorks::ToCut() {
  return plan.empty()
      ? 0
      : static_cast<int>(
            Number("select count(*) as n from book.layout where plan_id = $1::bigint and state in ('promised', 'at saw')", {plan}));
}

void SawingWorks::Refill(int least) {
  if (ToCut() >= least) return;
  if (ToCut() > 0) Run({"cut", "record", "--plan", plan});
  const std::string n = std::to_string(++lorries_), bars = std::to_string(kBars);
  Run({"receive",
       RunFile("delivery" + n + ".csv",
               "note,supplier,mill,heat,read_from,grade,section,length,count,ends,papers,place\nN" + n + ",Vandrek,Vandrek,K" + n +
                   ",metal,42CrMo4,round 80,1000," + bars + ",2,none,B1-1\n")});
  Run({"cutlist", "add",
       RunFile("L" + n + ".csv",
               "order,line,customer,section,grade,length,quantity\nO" + n + ",10,Pallant,round 80,42CrMo4,400," +
                   std::to_string(2 * kBars) + "\n")});
  Run({"allocate", "L" + n, "--seconds", "3"});
  plan = std::to_string(Number("select max(plan_id) as n from book.plan"));  // a server killed before leaves gaps
  ASSERT_EQ(ToCut(), kBars);
}

// A killed server process stays in the list until the server has noticed and started afresh; whoever asks before loses
// the connection and asks again.
void SawingWorks::WaitUntilQuiet() {
  std::string last = "a session of a killed program is still there";
  for (int tries = 0; tries < 1000; ++tries) {
    try {
      if (Number("select count(*) as n from pg_stat_activity where datname = 'heatkeep' and pid <> pg_backend_pid()"
                 " and backend_type = 'client backend'") == 0)
        return;
    } catch (const DbError& error) {
      if (error.kind != DbError::Kind::Unreachable) throw;
      last = error.what();
    }
    Sleep(20'000);
  }
  ADD_FAILURE() << "not quiet after 20 s: " << last;
}

void SawingWorks::ExpectWhole() {
  WaitUntilQuiet();
  EXPECT_EQ(Number("select count(*) as n from book.cut where not closed"), 0);
  EXPECT_EQ(Number(kHalfCut), 0);
  for (const auto& [bar, drop] : said)
    EXPECT_EQ(Number("select count(*) as n from book.piece d join book.piece p on p.piece_id = d.parent_id"
                     " where p.tag = $1 and d.tag = $2 and p.length_nm = 0",
                     {bar, drop}),
              1)
        << bar << " was said to be cut";
  HeatkeepProcess balance(Words({"report", "balance", "K" + std::to_string(lorries_)})), verify(Words({"book", "verify"}));
  ASSERT_EQ(balance.Finish(), 0) << balance.text();
  EXPECT_EQ(nlohmann::json::parse(balance.text())["balance"]["difference_nm"], 0) << balance.text();
  EXPECT_EQ(verify.Finish(), 0) << verify.text();
}

void SawingWorks::Remember(const HeatkeepProcess& process) {
  // "A000001D: 2 pieces, drop A000061F (196 mm) to B1-1"
  const std::string middle = ": 2 pieces, drop ", end = " (196 mm) to B1-1";
  for (const std::string& line : process.Lines()) {
    if (line.size() == 16 + middle.size() + end.size() && line.compare(8, middle.size(), middle) == 0 && line.ends_with(end))
      said.emplace(line.substr(0, 8), line.substr(8 + middle.size(), 8));
  }
}

std::int64_t SawingWorks::Number(const std::string& sql, const std::vector<Param>& params) {
  Connection admin = cluster.Admin();
  return admin.Execute(sql, params).Only().Int("n");
}

void SawingWorks::Sleep(int microseconds) const { std::this_thread::sleep_for(std::chrono::microseconds(microseconds)); }

}  // namespace heatkeep
