#include "client/command/command_line.h"

#include <CLI/CLI.hpp>
#include <functional>
#include <iostream>
#include <memory>
#include <sstream>

#include "client/book/persons.h"
#include "client/command/allocate_command.h"
#include "client/command/backup_command.h"
#include "client/command/book_command.h"
#include "client/command/certificate_words.h"
#include "client/command/cut_command.h"
#include "client/command/cutlist_command.h"
#include "client/command/deed_command.h"
#include "client/command/examples.h"
#include "client/command/grade_list.h"
#include "client/command/heat_command.h"
#include "client/command/limit_words.h"
#include "client/command/look_command.h"
#include "client/command/option_values.h"
#include "client/command/plan_command.h"
#include "client/command/receive_command.h"
#include "client/command/record_check.h"
#include "client/command/replan_command.h"
#include "client/command/report_command.h"
#include "client/command/report_words.h"
#include "client/command/saw_words.h"
#include "client/command/section_command.h"
#include "client/command/shop_command.h"
#include "client/command/simulate_command.h"
#include "client/command/stock_command.h"
#include "client/command/table_words.h"
#include "client/command/tag_command.h"
#include "client/command/word_errors.h"
#include "client/intake/look.h"

namespace heatkeep::command {
namespace {

// The words being read: where a command's options live until it runs, and which one was asked for.
struct Words {
  std::istream& in;
  std::ostream& out;
  std::ostream& err;
  BookChoice where;
  std::function<int()> work;

  BookCall Call() { return {where, out, err}; }
  Later Registers() {
    return [this](std::function<int(const BookCall&)> run) { work = [this, run = std::move(run)] { return run(Call()); }; };
  }
};

// Options of one command, kept alive by its callback.
template <class Options>
std::shared_ptr<Options> Kept() {
  return std::make_shared<Options>();
}

void AddBookDeed(CLI::App& book, Words& words, const std::string& name, const std::string& help, BookDeed deed,
                 const std::function<void(CLI::App&, BookCommand&)>& options = {}) {
  CLI::App* app = book.add_subcommand(name, help);
  auto command = Kept<BookCommand>();
  if (options) options(*app, *command);
  if (deed == BookDeed::Watch) app->group("");
  app->callback([&words, command, deed] {
    words.work = [&words, command, deed] {
      command->where = words.where;
      if (!command->record.empty()) return RunRecordCheck(words.Call(), {command->record, command->json});
      const int done = RunBook(deed, *command, words.in, words.out, words.err);
      return deed == BookDeed::Init && done == 0 ? RunGradesThatCome(words.Call()) : done;
    };
  });
}

void AddBook(CLI::App& root, Words& words) {
  CLI::App* book = root.add_subcommand("book", "make, run and check a book, and its people")->require_subcommand(1);
  const auto json = [](CLI::App& app, BookCommand& c) { app.add_flag("--json", c.json, "as JSON"); };
  AddBookDeed(*book, words, "init", "make a book of one's own and fill in the grade list", BookDeed::Init);
  AddBookDeed(*book, words, "start", "start the server of one's own book", BookDeed::Start);
  AddBookDeed(*book, words, "stop", "stop it", BookDeed::Stop);
  AddBookDeed(*book, words, "status", "where the book is and whether it runs", BookDeed::Status, json);
  AddBookDeed(*book, words, "verify", "replay the ledger and check every rule", BookDeed::Verify, [](CLI::App& app, BookCommand& c) {
    app.add_flag("--json", c.json, "as JSON");
    app.add_flag("--new", c.only_new, "only what was written since the last seal, and that seal: for every day");
    app.add_option("--record", c.record, "instead: is what a printed record stands on unchanged? its file, or the digest from its foot")
        ->type_name("FILE(json|pdf|txt)");
  });
  AddBookDeed(*book, words, "migrate", "bring the book up to date", BookDeed::Migrate, [](CLI::App& app, BookCommand& c) {
    app.add_flag("--check", c.check, "only say what would be done");
    app.add_flag("--json", c.json, "as JSON");
  });
  const auto backup = [&](const char* name, const char* help, const char* file, int (*run)(const BookCall&, const BackupOptions&),
                          bool reads) {
    CLI::App* app = book->add_subcommand(name, help);
    auto options = Kept<BackupOptions>();
    app->add_option("file", options->file, file)->required()->type_name("FILE(tar)");
    app->add_flag("--json", options->json, "as JSON");
    if (reads) app->add_flag("--check", options->check, "only read the file through and say what is in it");
    app->callback([&words, options, run] { words.work = [&words, options, run] { return run(words.Call(), *options); }; });
  };
  backup("backup", "the whole book in one file, while people work; passwords are not in it", "the new file", RunBackup, false);
  backup("restore", "give a backup back into an empty place, compare and verify it", "the file of a backup", RunRestore, true);
  AddBookDeed(*book, words, "watch", "stop the server when nobody uses it", BookDeed::Watch);
  CLI::App* seal = book->add_subcommand("seal", "take the book's digest, to be kept outside it");
  seal->callback([&words] { words.work = [&words] { return RunSeal(words.Call()); }; });
  CLI::App* person = book->add_subcommand("person", "the people of the book")->require_subcommand(1);
  AddBookDeed(*person, words, "add", "a login with one or more roles", BookDeed::PersonAdd, [](CLI::App& app, BookCommand& c) {
    app.add_option("name", c.name, "the login")->required();
    app.add_option("--role", c.roles, "what they work as; may be given several times")
        ->required()
        ->allow_extra_args(false)
        ->check(OneOf(RoleNames()));
    app.add_flag("--password-stdin", c.password_stdin, "read a password from the input (a book on a server)");
  });
  AddBookDeed(*person, words, "list", "everybody and their roles", BookDeed::PersonList, json);
}

void AddSectionAndTag(CLI::App& root, Words& words) {
  CLI::App* section = root.add_subcommand("section", "area and mass of a section: heatkeep section \"round 50\" --length 6m");
  auto o = Kept<SectionOptions>();
  section
      ->add_option(
          "words", o->words,
          "round 50, square 50, hex 50, flat 100x20, tube 60.3x4, angle 100x75x8, box 100x60x5 cold, channel UPN 100, beam IPE 100, or in inches: round 2in")
      ->required();
  section->add_option("--grade", o->grade, "for its density: 1.4404");
  section->add_option("--length", o->length, "6m, 20ft, 13 7/8 in");
  section->add_flag("--json", o->json, "as JSON");
  section->callback([&words, o] {
    words.work = [&words, o] {
      if (!o->grade.empty()) o->grades_file = GradeListFile();
      return RunSection(*o, words.out, words.err);
    };
  });
  CLI::App* tag = root.add_subcommand("tag", "tag numbers")->require_subcommand(1);
  CLI::App* check = tag->add_subcommand("check", "is the check character right, and what does a scan say?");
  auto text = Kept<std::string>();
  auto json = Kept<bool>();
  check->add_option("tag", *text, "the tag, or the whole string a scanner gives")->required();
  check->add_flag("--json", *json, "as JSON");
  check->callback([&words, text, json] { words.work = [&words, text, json] { return RunTagCheck(*text, *json, words.out, words.err); }; });
}

void AddHeat(CLI::App& root, Words& words) {
  CLI::App* heat = root.add_subcommand("heat", "a heat's values")->require_subcommand(1);
  CLI::App* check =
      heat->add_subcommand("check", "against a grade's limits: heatkeep heat check --grade 4140 --analysis \"C=0.41 Mn=0.86\"");
  auto o = Kept<HeatCheckOptions>();
  check->add_option("--grade", o->grade, "designation, number or UNS number")->required();
  check->add_option("--analysis", o->analyses, "mass %: \"C=0.41 Mn=0.86\"; several of one product unit")
      ->required()
      ->allow_extra_args(false);
  check->add_flag("--product", o->product, "an analysis of the product: the standard's deviations are added");
  check->add_option("--method", o->method, "absolute, rounding (to the limit's figures, ties to even) or rounding-b (ties to the larger)")
      ->capture_default_str()
      ->check(OneOf({"absolute", "rounding", "rounding-b"}));
  check->add_option("--rm", o->rm, "tensile strength, MPa");
  check->add_option("--re", o->re, "yield or proof strength, MPa");
  check->add_option("--a", o->a, "elongation, %");
  check->add_option("--size", o->size, "diameter, across flats or thickness: 50mm, 2in");
  check->add_option("--condition", o->condition, "+QT, +A: which mechanical limits");
  check->add_flag("--json", o->json, "as JSON");
  check->callback([&words, o] { words.work = [&words, o] { return RunHeatCheck(*o, words.out, words.err); }; });
}

// A command with one file: heatkeep NAME FILE.
CLI::App* AddFileCommand(CLI::App& parent, Words& words, const std::string& name, const std::string& help,
                         const std::function<int(const std::string& file)>& run) {
  CLI::App* app = parent.add_subcommand(name, help);
  auto file = Kept<std::string>();
  app->add_option("file", *file, "the file (JSON)")->required()->type_name(kJsonFile);
  app->callback([&words, file, run] { words.work = [file, run] { return run(*file); }; });
  return app;
}

// A command with one table: heatkeep NAME FILE [--sheet NAME].
CLI::App* AddTableCommand(CLI::App& parent, Words& words, const std::string& name, const std::string& help,
                          const std::function<int(const TableFile& file)>& run) {
  CLI::App* app = parent.add_subcommand(name, help);
  auto file = Kept<TableFile>();
  AddTableOptions(*app, *file);
  app->callback([&words, file, run] { words.work = [file, run] { return run(*file); }; });
  return app;
}

void AddLook(CLI::App& root, Words& words) {
  CLI::App* look = root.add_subcommand("look", "what a file would be understood as; nothing is done with it");
  auto o = Kept<LookOptions>();
  AddTableOptions(*look, o->file);
  look->add_option("--as", o->as, "what it is a table of")->required()->check(OneOf(intake::TableKindWords()));
  look->add_option("--rows", o->rows, "how many are shown")->capture_default_str();
  look->add_flag("--json", o->json, "as JSON");
  look->callback([&words, o] { words.work = [&words, o] { return RunLook(*o, words.out, words.err); }; });
}

void AddFiles(CLI::App& root, Words& words) {
  auto json = Kept<bool>();
  AddTableCommand(root, words, "receive", "take in delivery notes", [&words, json](const TableFile& file) {
    return RunReceive(words.Call(), file, *json);
  })->add_flag("--json", *json, "as JSON");
  auto leave_out = Kept<bool>();
  CLI::App* opening =
      AddTableCommand(root, words, "opening", "take in the opening balance",
                      [&words, json, leave_out](const TableFile& file) { return RunOpening(words.Call(), file, *leave_out, *json); });
  opening->add_flag("--leave-out-bad", *leave_out, "take the good lines, name the bad ones");
  opening->add_flag("--json", *json, "as JSON");
  CLI::App* grades = root.add_subcommand("grades", "the grade list")->require_subcommand(1);
  AddTableCommand(*grades, words, "add", "add grades of a table, else those that come with the program; known ones stay",
                  [&words](const TableFile& file) {
                    return RunGradesAdd(words.Call(), file.path.empty() ? TableFile{GradeListFile(), {}} : file);
                  })
      ->get_option("file")
      ->required(false);
  CLI::App* shop = root.add_subcommand("shop", "places, saws, prices and rules")->require_subcommand(1);
  AddFileCommand(*shop, words, "set", "set the shop up from a file (JSON)",
                 [&words](const std::string& file) { return RunShopSet(words.Call(), file); });
  AddFileCommand(*shop, words, "sign", "sign which grade may stand in for which (JSON)",
                 [&words](const std::string& file) { return RunShopSign(words.Call(), file); });
  CLI::App* cutlist = root.add_subcommand("cutlist", "cut lists")->require_subcommand(1);
  auto name = Kept<std::string>();
  AddTableCommand(*cutlist, words, "add", "bring in a cut list", [&words, name](const TableFile& file) {
    return RunCutListAdd(words.Call(), file, *name);
  })->add_option("--name", *name, "its name in the book; else the file's");
  CLI::App* list = cutlist->add_subcommand("list", "what is open");
  list->add_flag("--json", *json, "as JSON");
  list->callback([&words, json] { words.work = [&words, json] { return RunCutListList(words.Call(), *json); }; });
}

void AddStock(CLI::App& root, Words& words) {
  CLI::App* stock = root.add_subcommand("stock", "what is in the shop");
  auto grade = Kept<std::string>(), section = Kept<std::string>();
  auto json = Kept<bool>();
  stock->add_option("--grade", *grade, "only this grade");
  stock->add_option("--section", *section, "only this section");
  stock->add_flag("--json", *json, "as JSON");
  stock->callback([&words, grade, section, json] {
    words.work = [&words, grade, section, json] { return RunStock(words.Call(), *grade, *section, *json); };
  });

  CLI::App* conflict = root.add_subcommand("conflict", "what was recorded against a rule, for a person to decide")->require_subcommand(1);
  CLI::App* list = conflict->add_subcommand("list", "open ones first");
  list->add_flag("--json", *json, "as JSON");
  list->callback([&words, json] { words.work = [&words, json] { return RunConflictList(words.Call(), *json); }; });
  CLI::App* close = conflict->add_subcommand("close", "decide one");
  auto which = Kept<std::int64_t>();
  auto decision = Kept<std::string>();
  auto free = Kept<bool>();
  close->add_option("conflict", *which, "its number")->required();
  close->add_option("--decision", *decision, "what was decided and why")->required();
  close->add_flag("--free", *free, "the pieces cut while blocked may go on");
  close->callback([&words, which, decision, free] {
    words.work = [&words, which, decision, free] { return RunConflictClose(words.Call(), *which, *decision, *free); };
  });
}

void AddAllocate(CLI::App& root, Words& words) {
  CLI::App* allocate = root.add_subcommand("allocate", "plan cut lists from the rack and promise the pieces");
  auto o = Kept<AllocateOptions>();
  allocate->add_option("cutlist", o->cut_lists, "names of cut lists")->required();
  allocate->add_option("--saw", o->saws, "which saw cuts it; several: each line on the first that takes its section")
      ->capture_default_str()
      ->allow_extra_args(false);
  allocate->add_flag("--bundled", o->bundled, "bars are cut in bundles (their grip)");
  allocate->add_option("--aim", o->aim, "what is best (`heatkeep plan --help` says each)")->capture_default_str()->check(OneOf(AimWords()));
  allocate->add_option("--seconds", o->seconds, "longest search")->capture_default_str()->check(Between(0.001, 86'400));
  allocate->add_option("--threads", o->threads, "how many work on it")->capture_default_str()->check(Between(1, 256));
  allocate->add_option("--seed", o->seed, "the same seed, the same plan")->capture_default_str();
  allocate->add_flag("--dry", o->dry, "show the plan, promise nothing");
  allocate->add_flag("--json", o->json, "as JSON");
  allocate->add_flag("--why", o->why, "why each piece and not another");
  allocate->add_option("--buy", o->buy, "lengths a supplier sells, for what is short: 6000mm,12000mm or 6000mm=378.80,12000mm=750");
  allocate->add_flag("--price-of-one-heat", o->price_of_one_heat, "what the wishes for one heat cost");
  allocate->callback([&words, o] { words.work = [&words, o] { return RunAllocate(words.Call(), *o); }; });
}

void AddPlan(CLI::App& root, Words& words) {
  CLI::App* plan = root.add_subcommand("plan", "plan from two files (--stock, --cuts, --json), or look at the book's plans");
  auto o = Kept<PlanOptions>();
  AddPlanFileOptions(*plan, *o);
  plan->require_subcommand(0, 1);
  plan->callback([&words, o, plan] {
    if (plan->get_subcommands().empty()) words.work = [&words, o] { return RunPlan(*o, words.out, words.err); };
  });
  auto number = Kept<std::int64_t>();
  auto json = Kept<bool>();
  auto reason = Kept<std::string>();
  CLI::App* show = plan->add_subcommand("show", "what a plan takes and cuts");
  show->add_option("plan", *number, "its number")->required();
  auto why = Kept<bool>();
  show->add_flag("--json", *json, "as JSON");
  show->add_flag("--why", *why, "what to take where a piece is not there");
  show->callback([&words, number, json, why] {
    words.work = [&words, number, json, why] { return RunPlanShow(words.Call(), *number, *json, *why); };
  });
  CLI::App* cancel = plan->add_subcommand("cancel", "let its pieces go");
  cancel->add_option("plan", *number, "its number")->required();
  cancel->add_option("--reason", *reason, "why")->required();
  cancel->callback(
      [&words, number, reason] { words.work = [&words, number, reason] { return RunPlanCancel(words.Call(), *number, *reason); }; });
  CLI::App* list = plan->add_subcommand("list", "all plans");
  list->add_flag("--json", *json, "as JSON");
  list->callback([&words, json] { words.work = [&words, json] { return RunPlanList(words.Call(), *json); }; });
}

void AddReplan(CLI::App& root, Words& words) {
  CLI::App* replan = root.add_subcommand("replan", "mend a plan at the saw: heatkeep replan 1 --measured A000001D=1018mm");
  auto o = Kept<ReplanOptions>();
  const auto each = [&](const std::string& name, std::vector<std::string>& texts, const std::string& help) {
    replan->add_option(name, texts, help + "; may be given several times")->allow_extra_args(false);
  };
  replan->add_option("plan", o->plan, "its number")->required();
  each("--measured", o->measured, "TAG=LENGTH, a piece of another length than written");
  replan->add_option("--measured-with", o->measured_with, "the tape or readout it was measured with");
  each("--missing", o->missing, "a tag that is not in its place");
  each("--bad", o->bad, "a tag not to be cut: it goes to quarantine");
  each("--unreadable", o->unreadable, "a tag whose mark cannot be read: it goes to quarantine");
  replan->add_option("--reason", o->reason, "what happened");
  replan->add_option("--seconds", o->seconds, "longest search")->capture_default_str()->check(Between(0.001, 86'400));
  replan->add_flag("--dry", o->dry, "show what would change, change nothing");
  replan->add_flag("--json", o->json, "as JSON");
  replan->callback([&words, o] { words.work = [&words, o] { return RunReplan(words.Call(), *o); }; });
}

void AddSawing(CLI::App& root, Words& words) {
  CLI::App* pull = root.add_subcommand("pull", "fetch a promised piece to the saw");
  auto tag = Kept<std::string>(), saw = Kept<std::string>();
  auto plan = Kept<std::int64_t>();
  pull->add_option("tag", *tag, "the tag")->required();
  pull->add_option("--saw", *saw, "which saw")->required();
  pull->add_option("--plan", *plan, "the plan that it is promised to")->required();
  auto heat_read = Kept<std::string>();
  pull->add_option("--heat-read", *heat_read, "the last 4 characters of the heat as read from the metal");
  pull->callback([&words, tag, saw, plan, heat_read] {
    words.work = [&words, tag, saw, plan, heat_read] { return RunPull(words.Call(), *tag, *saw, *plan, *heat_read); };
  });

  CLI::App* cut = root.add_subcommand("cut", "at the saw")->require_subcommand(1);
  CLI::App* record = cut->add_subcommand("record", "book what was really cut: heatkeep cut record --plan 1");
  auto o = Kept<CutOptions>();
  record->add_option("--plan", o->plan, "the plan's number")->required();
  record->add_option("--tag", o->tag, "only this piece, by itself; with --bundle the bar of it that differs");
  record->add_option("--bundle", o->bundle, "only this bundle of the sheet: --bundle 1 --tag A000001D --rest 248")
      ->check(Between(1, 1'000'000));
  record->add_option("--done", o->done, "ORDER/LINE=COUNT good pieces, where they differ; may be given several times")
      ->allow_extra_args(false);
  record
      ->add_option("--heat-read", o->heats_read, "TAG=LAST4: the heat as read from a piece that is fetched now; may be given several times")
      ->allow_extra_args(false);
  record->add_option("--measured", o->measured, "start length as measured");
  record->add_option("--measured-with", o->measured_with, "the tape or readout it was measured with");
  record->add_option("--rest", o->rest, "the rest as measured");
  record->add_option("--place", o->place, "where drops are put; else where the piece came from");
  record->add_flag("--last-uncut", o->last_uncut, "the last piece of --tag is left as it is, in its tolerance: the sheet's offer is taken");
  record->add_flag("--scrap", o->scrap, "the rest is scrap");
  record->add_option("--reason", o->reason, "why it differs");
  record->add_flag("--json", o->json, "as JSON");
  record->callback([&words, o] { words.work = [&words, o] { return RunCutRecord(words.Call(), *o); }; });

  CLI::App* ship = root.add_subcommand("ship", "cut pieces leave");
  auto note = Kept<std::string>(), customer = Kept<std::string>();
  auto lines = Kept<std::vector<std::string>>();
  ship->add_option("lines", *lines, "ORDER/LINE=COUNT, or ORDER/LINE=COUNT=HEAT,HEAT where several heats leave")->required();
  ship->add_option("--note", *note, "delivery note")->required();
  ship->add_option("--customer", *customer, "who gets them")->required();
  auto true_at = Kept<std::string>(), device = Kept<std::string>();
  ship->add_option("--true-at", *true_at, "when they really left, if earlier: 2026-03-04T22:15");
  ship->add_option("--device", *device, "where it is entered");
  ship->callback([&words, note, customer, lines, true_at, device] {
    words.work = [&words, note, customer, lines, true_at, device] {
      return RunShip(words.Call(), {*note, *customer, *true_at, *device, *lines});
    };
  });
}

void AddStockSide(CLI::App& root, Words& words) {
  const Later later = words.Registers();
  AddCertificateWords(root, later);
  AddDoorDeeds(root, later);
  AddLimitWords(root, later);
  AddStopDeeds(root, later);
  AddMendingDeeds(root, later);
  AddRackDeeds(root, later);
  AddPieceDeeds(root, later);
}

void AddSimulate(CLI::App& root, Words& words) {
  CLI::App* simulate = root.add_subcommand("simulate", "a seeded year in the rack: how much metal each policy buys");
  auto o = Kept<SimulateOptions>();
  simulate->add_option("--seed", o->seed, "same seed, same shop and lists")->capture_default_str();
  simulate->add_option("--lines", o->lines, "cut lines in the year")->capture_default_str()->check(Between(1, 1'000'000));
  simulate->add_option("--groups", o->groups, "sections and grades")->capture_default_str()->check(Between(1, 200));
  simulate->add_option("--days", o->days, "working days")->capture_default_str()->check(Between(1, 5000));
  simulate->add_option("--policy", o->policies, "several; none: all")
      ->check(OneOf({"new-bar", "from-memory", "plain", "drops-first", "least-money"}));
  simulate->add_option("--threads", o->threads, "how many work on it")->capture_default_str()->check(Between(1, 64));
  simulate->add_option("--iterations", o->iterations, "budget of one plan")->capture_default_str();
  simulate->add_option("--out", o->out, "for the pictures (SVG and PNG)")->type_name(kFolder);
  simulate->add_flag("--json", o->json, "as JSON, every day");
  simulate->callback([&words, o] { words.work = [&words, o] { return RunSimulate(*o, words.out, words.err); }; });
}

// Every command, with its options read into `words`.
void AddAll(CLI::App& root, Words& words) {
  root.require_subcommand(1);
  root.fallthrough();
  root.set_version_flag("--version", std::string(HEATKEEP_VERSION));
  root.add_option("--book", words.where.book, "a book on a server: connection string or service name (else one's own)");
  root.add_option("--person", words.where.person, "the login (else the account's name)");
  root.add_option("--home", words.where.home, "folder of a book of one's own")->type_name(kFolder);
  AddBook(root, words);
  AddSectionAndTag(root, words);
  AddHeat(root, words);
  AddFiles(root, words);
  AddLook(root, words);
  AddStock(root, words);
  AddAllocate(root, words);
  AddPlan(root, words);
  AddReplan(root, words);
  AddSawing(root, words);
  AddSaw(
      root, [&words] { return words.Call(); }, words.work);
  AddReports(root, words.Registers());
  AddRecall(root, words.Registers());
  AddStockSide(root, words);
  AddLabelPrint(root, words.Registers());
  AddSimulate(root, words);
  root.footer(
      "example: heatkeep opening rack.csv\n"
      "         heatkeep cutlist add monday.csv --name monday\n"
      "         heatkeep allocate monday --saw 1\n"
      "         heatkeep report sheet 1 --to sheet.pdf\n"
      "`heatkeep COMMAND --help` says what a command takes, with an example.");
  AddExamples(root);
}

constexpr const char* kAbout = "Heatkeep: bar stock and drops by grade, section and heat number";

}  // namespace

CommandPage AllCommands() {
  std::istringstream in;
  std::ostringstream nowhere;
  Words words{in, nowhere, nowhere, {}, {}};
  CLI::App root(kAbout, "heatkeep");
  AddAll(root, words);
  return PageOf(root);
}

std::string WrongWords(const std::vector<std::string>& words) {
  std::istringstream in;
  std::ostringstream nowhere, wrong;
  Words read{in, nowhere, nowhere, {}, {}};
  CLI::App root(kAbout, "heatkeep");
  AddAll(root, read);
  try {
    root.parse(std::vector<std::string>(words.rbegin(), words.rend()));  // it takes them from behind
  } catch (const CLI::ParseError& error) { SayWordError(root, error, words, wrong); }
  return wrong.str();
}

int RunCommandLine(int argc, const char* const* argv, std::istream& in, std::ostream& out, std::ostream& err) {
  CLI::App root(kAbout, "heatkeep");
  Words words{in, out, err, {}, {}};
  AddAll(root, words);
  try {
    root.parse(argc, argv);
  } catch (const CLI::Success& asked) {  // help or version
    return root.exit(asked, out, err);
  } catch (const CLI::ParseError& error) {
    SayWordError(root, error, {argv + 1, argv + argc}, err);
    return 2;
  }
  return words.work ? words.work() : 2;
}

}  // namespace heatkeep::command
