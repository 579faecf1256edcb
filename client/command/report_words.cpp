#include "client/command/report_words.h"

#include <memory>

#include "client/command/label_command.h"
#include "client/command/list_command.h"
#include "client/command/option_values.h"
#include "client/command/recall_command.h"
#include "client/command/report_command.h"

namespace heatkeep::command {

void AddReports(CLI::App& root, const Later& later) {
  CLI::App* report = root.add_subcommand("report", "papers out of the book, as PDF, XLSX, JSON or CSV")->require_subcommand(1);
  auto o = std::make_shared<PaperOptions>();
  const auto paper = [&](CLI::App& app, const char* endings = "pdf|xlsx|csv|json") { AddPaperOptions(app, *o, endings); };
  auto plan = std::make_shared<std::int64_t>();
  CLI::App* sheet = report->add_subcommand("sheet", "pick list and saw sheet of a plan");
  sheet->add_option("plan", *plan, "its number")->required();
  sheet->add_flag("--inch", o->inch, "the saw reads inches");
  paper(*sheet, "pdf|xlsx|json");
  sheet->callback([later, plan, o] { later([plan, o](const BookCall& call) { return RunReportSheet(call, *plan, *o); }); });

  auto kind = std::make_shared<std::string>(), name = std::make_shared<std::string>(), mill = std::make_shared<std::string>();
  CLI::App* trace = report->add_subcommand("trace", "trace record of an order, a heat or a piece");
  trace->add_option("kind", *kind, "order, heat or piece")->required()->check(OneOf({"order", "heat", "piece"}));
  trace->add_option("name", *name, "the order, the heat number or the tag")->required();
  trace->add_option("--mill", *mill, "of a heat: only this mill's");
  paper(*trace);
  trace->callback([later, kind, name, mill, o] {
    later([kind, name, mill, o](const BookCall& call) { return RunReportTrace(call, *kind, *name, *mill, *o); });
  });

  auto from = std::make_shared<std::string>(), to = std::make_shared<std::string>();
  CLI::App* measured = report->add_subcommand(
      "measured", "who measured what otherwise than written: heatkeep report measured --from 2026-03-01 --to measured.pdf");
  measured->add_option("--from", *from, "first day, 2026-03-01; else from the first");
  measured->add_option("--until", *to, "last day; else to this one");
  measured->add_option("--heat", *name, "of one heat");
  paper(*measured);
  measured->callback([later, from, to, name, o] {
    later([from, to, name, o](const BookCall& call) { return RunReportMeasured(call, {*from, *to, *name}, *o); });
  });

  CLI::App* balance = report->add_subcommand("balance", "metal balance of a heat");
  auto lot = std::make_shared<BalanceOfLot>();
  balance->add_option("heat", lot->heat, "the heat number")->required();
  balance->add_option("--mill", lot->mill, "only this mill's");
  balance->add_option("--section", lot->section, "only of this section: round 80");
  balance->add_option("--condition", lot->condition, "only in this condition: +QT; none: of which no condition is said");
  paper(*balance);
  balance->callback([later, lot, o] { later([lot, o](const BookCall& call) { return RunReportBalance(call, *lot, *o); }); });
  AddLists(*report, later);
}

void AddRecall(CLI::App& root, const Later& later) {
  CLI::App* recall = root.add_subcommand(
      "recall", "where everything of a heat is now, and letters to the customers: heatkeep recall heat K3317 --to recall.pdf");
  recall->footer("A recall stops nothing: `heatkeep hold heat K3317 --reason ...` does; with --preview it only says what it would stop.");
  auto o = std::make_shared<RecallOptions>();
  recall->add_option("scope", o->scope, "heat, lot or piece (by a tag), certificate or receipt")
      ->required()
      ->check(OneOf({"heat", "lot", "piece", "certificate", "receipt"}));
  recall->add_option("ref", o->ref, "the heat number, tag or number")->required();
  recall->add_option("--mill,--of", o->mill, "of a heat: only this mill's; of a certificate or receipt: its issuer or supplier");
  recall->add_option("--to", o->paper.files, "may be given several times; none: sums here")
      ->allow_extra_args(false)
      ->type_name("FILE(pdf|xlsx|json|csv)");
  recall->add_flag("--letter", o->paper.letter, "Letter instead of A4");
  recall->add_option("--letters", o->letters, "one letter a customer that got something of it, PDF")->type_name(kFolder);
  recall->add_option("--language", o->language, "of the letters: en or de")->check(OneOf({"en", "de"}))->capture_default_str();
  recall->add_option("--from", o->words.from, "who writes the letters");
  recall->add_option("--reason", o->words.reason, "said in the letters; none: no reason is given");
  recall->add_flag("--drill", o->drill, "a drill: timed, read only, DRILL on every page");
  recall->add_flag("--json", o->json, "as JSON here");
  recall->callback([later, o] { later([o](const BookCall& call) { return RunRecall(call, *o); }); });
}

void AddLabelPrint(CLI::App& root, const Later& later) {
  CLI::App* print = Noun(root, "label", "the queue of labels: every new tag has one that is to be printed")
                        .add_subcommand("print", "the labels that wait, as a PDF for the printer; nothing is marked printed");
  print->footer(
      "example: heatkeep label print --to labels.pdf --paper 62x29\n"
      "         heatkeep label print --to labels.pdf --paper a4 --start 4 --tags A000001D,A000002B\n"
      "         heatkeep label print --to places.pdf --place all\n"
      "         heatkeep label print --to order.pdf --order O-4711");
  auto o = std::make_shared<LabelOptions>();
  print->add_option("--to", o->to, "the PDF")->required()->type_name(kPdfFile);
  print->add_option("--tags", o->tags, "only these pieces: A000001D,A000002B");
  print->add_option("--place", o->places, "labels of these places, or of all, instead");
  print->add_option("--order", o->orders, "labels of the cut pieces of these orders that are on site, instead");
  print->add_option("--paper", o->paper, "else the shop's setting label_paper")->check(OneOf({"100x50", "62x29", "a4", "letter"}));
  print->add_option("--start", o->start, "the first free position of a part-used sheet")->capture_default_str();
  print->add_option("--code", o->code, "data-matrix or qr; else the shop's setting label_code")->check(OneOf({"data-matrix", "qr"}));
  print->add_option("--dpi", o->dpi, "of the printer; else the shop's setting label_dpi")->check(CLI::IsMember({203, 300, 600}));
  print->add_option("--grid", o->grid, "columns and rows of a sheet: 3x9");
  print->add_option("--margins", o->margins, "of a sheet, left and top in mm: 5x10");
  print->add_option("--gaps", o->gaps, "between the labels of a sheet in mm: 2.5x0");
  print->add_flag("--cut-lines", o->cut_lines, "a hairline around each, for plain paper");
  print->add_flag("--json", o->json, "as JSON");
  print->callback([later, o] { later([o](const BookCall& call) { return RunLabelPrint(call, *o); }); });
}

}  // namespace heatkeep::command
