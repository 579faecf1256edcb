// The book re-checks every layout with arithmetic of its own (guard.layout_fits); the program checks with
// CheckPlan. On the layouts of a thousand seeded problems, as planned and spoilt in many ways, both must say
// the same.
#include <algorithm>
#include <iostream>
#include <map>
#include <random>

#include "client/allocator/allocate.h"
#include "client/allocator/check_plan.h"
#include "tests/allocator/random_problem.h"
#include "tests/schema/small_shop.h"

namespace heatkeep {
namespace {

using namespace allocator;

constexpr int kProblems = 1000;

// One layout on its own: what CheckPlan is given, and what it said about the layout itself (not about the
// whole plan).
struct Case {
  std::string kind;
  Problem problem;
  allocator::Layout layout;

  Piece& piece() { return problem.pieces[static_cast<std::size_t>(layout.piece)]; }
  GroupRules& rules() { return problem.rules; }
  std::int64_t Cuts() const {
    std::int64_t n = 0;
    for (const Cut& c : layout.cuts) n += c.count;
    return n;
  }
  std::int64_t Metal() const {
    std::int64_t sum = 0;
    for (const Cut& c : layout.cuts) sum += c.length.nm * c.count;
    return sum;
  }
};

std::vector<std::string> ProgramsFaults(Case& c) {
  c.layout.left_kind = c.layout.left.nm == 0 ? LeftKind::None : c.layout.left >= c.rules().keep ? LeftKind::Drop : LeftKind::Scrap;
  Plan plan;
  plan.layouts.push_back(c.layout);
  std::vector<std::string> faults;
  for (const std::string& f : CheckPlan(c.problem, plan))
    if (f.starts_with("layout 1: ")) faults.push_back(f);
  return faults;
}

Json ForTheBook(Case& c) {
  Json cuts = Json::array();
  for (const Cut& cut : c.layout.cuts)
    for (int i = 0; i < cut.count; ++i) cuts.push_back(cut.length.nm);
  return {{"s", c.piece().length.nm},
          {"d", c.piece().doubt.nm},
          {"e", c.piece().square_ends},
          {"t", c.rules().trim.nm},
          {"k", c.rules().kerf.nm},
          {"g", c.rules().grip.nm},
          {"cuts", cuts},
          {"trim", c.layout.trim.nm},
          {"kerf", c.layout.kerf.nm},
          {"left", c.layout.left.nm}};
}

class Spoiler {
 public:
  explicit Spoiler(std::uint64_t seed) : dice_(seed) {}

  std::vector<Case> All(const Problem& problem, const allocator::Layout& layout) {
    Case as_planned{"as planned", problem, layout};
    as_planned.layout.repeat = 1;
    as_planned.problem.rules = RulesFor(problem, as_planned.piece());
    as_planned.problem.exceptions.clear();
    std::vector<Case> cases{as_planned};
    const auto add = [&](const char* kind, auto&& spoil) {
      cases.push_back(as_planned);
      cases.back().kind = kind;
      spoil(cases.back());
    };
    const std::int64_t one = Upto(1) == 0 ? 1 : -1;
    add("left one nanometre off", [&](Case& c) { c.layout.left.nm += one; });
    add("kerf one nanometre off", [&](Case& c) { c.layout.kerf.nm += one; });
    add("trim one nanometre off", [&](Case& c) { c.layout.trim.nm += one; });
    add("a kerf left off", [&](Case& c) {
      c.layout.kerf -= c.rules().kerf;
      c.layout.left += c.rules().kerf;
    });
    add("a cut more, unsaid", [&](Case& c) { ++Any(c).count; });
    add("a cut more", [&](Case& c) { Add(c, 1); });
    add("a cut fewer", [&](Case& c) {
      if (c.Cuts() > 1) Add(c, -1);
    });
    add("other ends", [&](Case& c) { c.piece().square_ends = (c.piece().square_ends + 1 + Upto(1)) % 3; });
    add("a doubt", [&](Case& c) { c.piece().doubt.nm = Upto(static_cast<int>(c.layout.left.nm / 1'000'000) + 5) * 1'000'000LL; });
    add("a longer piece", [&](Case& c) {
      c.piece().length.nm += one;
      c.layout.left.nm += one;
    });
    add("a longer cut", [&](Case& c) { Lengthen(c, one); });
    add("another grip", [&](Case& c) { c.rules().grip.nm = std::max<std::int64_t>(0, c.layout.left.nm + Upto(2) - 1); });
    for (int i = 0; i < 3; ++i) add("an end to measure", [&](Case& c) { MeasuredEnd(c); });
    return cases;
  }

 private:
  int Upto(int n) { return static_cast<int>(dice_() % static_cast<std::uint64_t>(n + 1)); }
  Cut& Any(Case& c) { return c.layout.cuts[static_cast<std::size_t>(Upto(static_cast<int>(c.layout.cuts.size()) - 1))]; }

  // A cut more or fewer, with what an ordinary ending would then leave.
  void Add(Case& c, int step) {
    for (Cut& cut : c.layout.cuts)
      if (cut.count + step > 0) {
        cut.count += step;
        c.layout.kerf += step * c.rules().kerf;
        c.layout.left -= step * (cut.length + c.rules().kerf);
        return;
      }
  }

  // The line itself is that much longer, so that only the arithmetic is in question.
  void Lengthen(Case& c, std::int64_t nm) {
    const int line = Any(c).line;
    c.problem.lines[static_cast<std::size_t>(line)].nominal.nm += nm;
    for (Cut& cut : c.layout.cuts)
      if (cut.line == line) {
        cut.length.nm += nm;
        c.layout.left.nm -= nm * cut.count;
      }
  }

  // The piece is made just so long that X is left before the last kerf, for the X where the rule changes;
  // what is said of kerf and left is right for that X. Ends, grip, doubt and the order of the cuts vary.
  void MeasuredEnd(Case& c) {
    std::shuffle(c.layout.cuts.begin(), c.layout.cuts.end(), dice_);
    c.piece().square_ends = Upto(2);
    if (Upto(2) > 0) c.piece().doubt = {};
    if (Upto(1) == 0) c.rules().grip = {};
    if (Upto(5) == 0) c.rules().grip = {c.layout.cuts.back().length.nm + Upto(2) - 1};
    const std::int64_t k = c.rules().kerf.nm, g = c.rules().grip.nm, t = c.rules().trim.nm, d = c.piece().doubt.nm;
    const std::vector<std::int64_t> ends{0,         1,     k / 2,     k - 1,         k,     k + 1,     k + d,
                                         k + g - 1, k + g, k + g + d, k + g + d - 1, k + t, k + t - 1, k + t + d};
    const std::int64_t x = std::max<std::int64_t>(0, ends[static_cast<std::size_t>(Upto(static_cast<int>(ends.size()) - 1))]);
    const bool trimmed = c.piece().square_ends == 0 && t > 0;
    c.layout.trim.nm = trimmed ? t : 0;
    const std::int64_t kerf_before = (trimmed ? k : 0) + (c.Cuts() - 1) * k;
    c.piece().length.nm = c.layout.trim.nm + kerf_before + c.Metal() + x;
    c.layout.kerf.nm = kerf_before + std::min(x, k);
    c.layout.left.nm = x - std::min(x, k);
  }

  std::mt19937_64 dice_;
};

std::vector<Case> AllCases() {
  std::vector<Case> cases;
  for (std::uint64_t seed = 1; seed <= kProblems; ++seed) {
    Problem problem = allocator::test::RandomProblem(seed, {});
    problem.limits.seconds = seed % 10 == 0 ? 60 : 0;  // mostly the first heuristics, sometimes a short search
    problem.limits.iterations = 3;
    Spoiler spoiler(seed);
    const Plan plan = Allocate(problem);
    for (std::size_t i = 0; i < std::min<std::size_t>(2, plan.layouts.size()); ++i)
      for (Case& c : spoiler.All(problem, plan.layouts[i])) cases.push_back(std::move(c));
  }
  return cases;
}

TEST(PlanAgreement, TheBookAndTheProgramSayTheSameOfEveryLayout) {
  std::vector<Case> cases = AllCases();
  TestBook book;
  Connection admin = book.Admin();
  std::map<std::string, std::pair<int, int>> counts;  // kind -> accepted, refused
  int accepted = 0, refused = 0, apart = 0;
  constexpr std::size_t kBatch = 4000;
  for (std::size_t from = 0; from < cases.size(); from += kBatch) {
    const std::size_t to = std::min(cases.size(), from + kBatch);
    Json batch = Json::array();
    for (std::size_t i = from; i < to; ++i) batch.push_back(ForTheBook(cases[i]));
    const Result verdicts = admin.Execute(
        "select guard.layout_fits(s, d, e, t, k, g, cuts, trim, kerf, \"left\") as words from "
        "jsonb_array_elements($1) with ordinality n (b, i)"
        " cross join lateral jsonb_to_record(b) as x (s bigint, d bigint, e int, t bigint, k bigint, g "
        "bigint, cuts bigint[], trim bigint, kerf bigint, \"left\" bigint) order by i",
        {batch.dump()});
    ASSERT_EQ(static_cast<std::size_t>(verdicts.size()), to - from);
    for (std::size_t i = from; i < to; ++i) {
      const std::vector<std::string> faults = ProgramsFaults(cases[i]);
      const std::string words = verdicts[static_cast<int>(i - from)].OptionalText("words").value_or("");
      (faults.empty() ? accepted : refused)++;
      (faults.empty() ? counts[cases[i].kind].first : counts[cases[i].kind].second)++;
      if (faults.empty() != words.empty() && ++apart <= 10)
        ADD_FAILURE() << cases[i].kind << ": the program says \"" << (faults.empty() ? "right" : faults[0]) << "\", the book says \""
                      << (words.empty() ? "right" : words) << "\" of " << ForTheBook(cases[i]);
    }
  }
  for (const auto& [kind, n] : counts) std::cout << kind << ": " << n.first << " accepted, " << n.second << " refused\n";
  std::cout << cases.size() << " layouts of " << kProblems << " problems: " << accepted << " accepted and " << refused
            << " refused by both\n";
  EXPECT_EQ(apart, 0);
  EXPECT_GT(accepted, 5000);
  EXPECT_GT(refused, 5000);
  EXPECT_EQ(counts["as planned"].second, 0);
  for (const char* kind : {"other ends", "a doubt", "another grip", "an end to measure", "a cut more"}) {
    EXPECT_GT(counts[kind].first, 50) << kind;
    EXPECT_GT(counts[kind].second, 50) << kind;
  }
}

}  // namespace
}  // namespace heatkeep
