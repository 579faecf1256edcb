#include "client/command/saw_words.h"

#include <memory>
#include <ostream>

#include "client/command/option_values.h"
#include "client/command/saw_command.h"
#include "client/command/saw_deed_words.h"
#include "client/command/saw_queue.h"

namespace heatkeep::command {
namespace {

using Json = nlohmann::json;

struct Given {
  std::map<std::string, std::vector<std::string>> texts;
  std::map<std::string, bool> flags;
  std::string queue, login;
  bool json = false;
};

const char* TakesOf(WordKind kind) {
  switch (kind) {
    case WordKind::Length: return "LENGTH";
    case WordKind::Whole: return "NUMBER";
    case WordKind::Mass: return "MASS";
    case WordKind::Cents:
    case WordKind::PerKg: return "MONEY";
    case WordKind::OrderLine: return "ORDER/LINE";
    case WordKind::Section: return "SECTION";
    default: return "TEXT";
  }
}

int RunSawDeed(const BookCall& call, const SawDeedWords& deed, const Given& given) {
  std::map<std::string, std::vector<std::string>> texts;
  for (const auto& [option, values] : given.texts)
    if (!values.empty()) texts[option] = values;
  for (const auto& [option, set] : given.flags)
    if (set) texts[option] = {"yes"};
  Json body;
  try {
    body = SawBody(deed, texts);
  } catch (const std::invalid_argument& error) {
    call.err << "heatkeep: " << error.what() << '\n';
    return 2;
  }
  if (!given.queue.empty())
    return QueueDeed(call, given.queue, deed.deed, body, given.login.empty() ? call.where.person : given.login, given.json);
  return WithBook(call, [&](Connection& connection) {
    SawDeeds deeds(connection);
    const Json answer = (deeds.*deed.method)(NewRequest(), body);
    if (given.json) call.out << answer.dump(2) << '\n';
    else SaySawDeed(call.out, deed.name, answer);
    if (!answer.contains("refused")) return 0;
    if (!given.json) call.err << "refused: " << answer["words"].get<std::string>() << '\n';
    return 1;
  });
}

void AddDeed(CLI::App& saw, const SawDeedWords& deed, const std::function<BookCall()>& call, std::function<int()>& work) {
  CLI::App* app = saw.add_subcommand(deed.name, deed.help);
  auto given = std::make_shared<Given>();
  for (const SawWord& word : deed.words) {
    if (word.kind == WordKind::Flag) {
      app->add_flag(word.option, given->flags[word.option], word.help);
      continue;
    }
    CLI::Option* option = app->add_option(word.option, given->texts[word.option], word.help);
    const bool many = word.kind >= WordKind::Stroke;  // up to Tags; a flag was met above
    option->allow_extra_args(word.kind == WordKind::Tags)
        ->multi_option_policy(many ? CLI::MultiOptionPolicy::TakeAll : CLI::MultiOptionPolicy::Throw);
    if (!many) option->expected(1);
    if (word.required) option->required();
    option->type_name(TakesOf(word.kind));
    if (!word.choices.empty()) option->check(OneOf(word.choices));
  }
  app->add_flag("--json", given->json, "as JSON");
  if (deed.off_network) {
    app->add_option("--queue", given->queue, "off the network: keep it in this file of the saw, to be sent later")->type_name(kAnyFile);
    app->add_option("--login", given->login, "with --queue: who did it (else --person or the account)");
  }
  app->callback([&deed, given, call, &work] { work = [&deed, given, call] { return RunSawDeed(call(), deed, *given); }; });
}

}  // namespace

void AddSaw(CLI::App& root, const std::function<BookCall()>& call, std::function<int()>& work) {
  CLI::App* saw = root.add_subcommand("saw", "the saws: bands, times, every deed at a saw, work off the network")->require_subcommand(1);
  for (const SawDeedWords& deed : AllSawDeeds()) AddDeed(*saw, deed, call, work);

  auto json = std::make_shared<bool>(false);
  const auto simple = [&](const char* name, const char* help, const std::function<int(const BookCall&, bool)>& run) {
    CLI::App* app = saw->add_subcommand(name, help);
    app->add_flag("--json", *json, "as JSON");
    app->callback([json, call, run, &work] { work = [json, call, run] { return run(call(), *json); }; });
    return app;
  };
  simple("list", "every saw with its band, kerf as measured, and what the band has cut: heatkeep saw list", RunSawList);
  simple("rates", "cutting rates, the shop's own and those that ship: heatkeep saw rates", RunSawRates);
  simple("load", "minutes a saw and day of what live plans still cut: heatkeep saw load", RunSawLoad);
  auto plan = std::make_shared<std::int64_t>(0);
  auto rate = std::make_shared<std::string>();
  CLI::App* time = simple("time", "area, time, cost, feed and chips of a plan: heatkeep saw time 1 --rate 45",
                          [plan, rate](const BookCall& c, bool as_json) { return RunSawTime(c, *plan, *rate, as_json); });
  time->add_option("plan", *plan, "its number")->required();
  time->add_option("--rate", *rate, "cm2 a minute for this job; else the saw's, the shop's, or the one that ships");
  auto one = std::make_shared<SawEstimate>();
  CLI::App* estimate = simple("estimate", "one section: heatkeep saw estimate \"round 100\" --rate 40 --kerf 2.5 --cuts 10",
                              [one](const BookCall& c, bool as_json) { return RunSawEstimate(c, *one, as_json); });
  estimate->add_option("section", one->section, "round 100, square 50, hex 50, flat 100x20, tube 60.3x4")->required();
  estimate->add_option("--rate", one->rate, "cm2 a minute")->required();
  estimate->add_option("--kerf", one->kerf, "for the chips");
  estimate->add_option("--cuts", one->cuts, "how many")->capture_default_str()->check(Between(1, 1'000'000));
  estimate->add_option("--bars", one->bars, "bars cut together by each of them")->capture_default_str()->check(Between(1, 1000));
  estimate->add_option("--per-hour", one->per_hour, "what an hour of the saw costs: 45.00");
  estimate->add_option("--length", one->length, "of a piece, for the strokes of the stop");
  estimate->add_option("--stop", one->stop, "the stroke of the length stop");
  auto file = std::make_shared<std::string>();
  simple("queue", "what was done off the network: heatkeep saw queue saw-2.queue",
         [file](const BookCall& c, bool as_json) { return RunSawQueue(c, *file, as_json); })
      ->add_option("file", *file, "the saw's file")
      ->required()
      ->type_name(kAnyFile);
  simple("send", "send it, each deed once: heatkeep saw send saw-2.queue",
         [file](const BookCall& c, bool as_json) { return RunSawSend(c, *file, as_json); })
      ->add_option("file", *file, "the saw's file")
      ->required()
      ->type_name(kAnyFile);
  auto device = std::make_shared<std::string>(), site = std::make_shared<std::string>();
  auto size = std::make_shared<int>(50);
  CLI::App* block = saw->add_subcommand(
      "block", "tag numbers for a saw off the network: heatkeep saw block --device saw-2 --site main --queue saw-2.queue");
  block->add_option("--device", *device, "the saw's device")->required();
  block->add_option("--site", *site, "its site")->required();
  block->add_option("--size", *size, "how many")->capture_default_str()->check(Between(1, 10'000));
  block->add_option("--queue", *file, "the saw's file")->required()->type_name(kAnyFile);
  block->callback([=, &work] { work = [=] { return RunSawBlock(call(), *device, *site, *size, *file); }; });
}

}  // namespace heatkeep::command
