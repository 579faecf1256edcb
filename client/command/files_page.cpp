#include "client/command/files_page.h"

#include <array>
#include <vector>

#include "client/command/rules_file.h"
#include "client/intake/certificates_file.h"
#include "client/intake/cuts_file.h"
#include "client/intake/delivery_file.h"
#include "client/intake/grades_file.h"
#include "client/intake/limits_file.h"
#include "client/intake/opening_file.h"
#include "client/intake/stock_file.h"
#include "schema/terms/element.h"

namespace heatkeep::command {
namespace {

struct TablePage {
  const char* name;
  const char* about;
  const std::vector<intake::Column>& columns;
};

struct Key {
  const char* name;
  const char* says;
};

constexpr std::array kPlan{
    Key{"aim", "what was to be best"},
    Key{"seconds, seed", "how long it was searched, and from where"},
    Key{"status", "proved, feasible or short"},
    Key{"value",
        "what the plan comes to: unmet_pieces, unmet_by_priority, bars_opened, new_length_nm (of full bars), consumed_length_nm (of all pieces "
        "pulled, rests not taken off), scrap_length_nm, lost_worth_nm, pieces_pulled, layouts (set-ups), and money with least-money"},
    Key{"bound", "the same figures as no plan can better them; only those that were bounded"},
    Key{"proved", "true: no plan is better in what the aim names first after what is unmet"},
    Key{"proved_keys", "which figures, in the aim's order, are proved"},
    Key{"ended_by", "proof, budget, clock or stopped"},
    Key{"layouts",
        "how pieces are cut: tag, kind (bar, drop), heat, repeat (so many pieces alike), length_nm, trim_nm, kerf_nm (all of one piece), cuts "
        "(order, line, count, length_nm with its facing), left_nm, left (drop, scrap, none); trim, kerf, cuts and left add up to the length"},
    Key{"ends, further, last_uncut_nm, chips_saved_nm, thin_slice, whole, last_is_rest",
        "of a layout, where its end allows something: in words; pieces that would still come off; the last piece left as it is in its tolerance; a slice "
        "thinner than the blade likes; nothing to cut; the rest is the piece"},
    Key{"stands_in, bundle",
        "of a layout: for which lines its metal stands in for what was asked, with count, money and words; bars of one bundle have one number"},
    Key{"why", "of a layout: what else there was (tag, place, left_nm, left, lost_worth_nm, dearer, words)"},
    Key{"short", "what is not served: order, line, missing, why"},
    Key{"by_hand",
        "the plan a careful person makes: value, less_by_search (what the search gained, also mass_g), taken (true: it is the plan here), words"},
    Key{"bars_although_drops", "in words, why a full bar is opened where drops lie"},
    Key{"ways_out", "of what is short: order, line, way (part ship, wait, weaker papers), count, words"},
    Key{"buy",
        "with --buy: bars (section, grade, condition, papers, heat, length_nm, count, price), length_nm, price, left (length_nm, count, left), not_served, "
        "proved, words"},
    Key{"one_heat_costs", "with --price-of-one-heat: difference, heats, words"}};

constexpr std::array kShop{
    Key{"currency", "three letters of ISO 4217: EUR"},
    Key{"settings",
        "NAME: value. Yes or no: heat_read_back, judging_by_rounding, two_person_release, validators_named. label_paper (100x50, 62x29, a4, letter), "
        "label_code (data-matrix, qr), label_dpi (203, 300, 600). time_zone (Europe/Berlin): whose clock shifts end by. All others are numbers, as lift_limit_g: 25000"},
    Key{"sites", "site, letter (its tags begin with it), offline_letter (those given out off the network)"},
    Key{"parties", "name, and true or false: mill, supplier, customer"},
    Key{"places",
        "place, site, kind (rack, yard, saw, gate, quarantine, scrap, outside), and bay, level, walk (in which order one comes by), max_length, max_mass"},
    Key{"saws", "saw, name, place, max_section, band, kerf, trim, grip, grip_bundle"},
    Key{"rates", "cutting rates: saw, family (of grades), cm2_per_min, from"},
    Key{"prices", "grade, section, per_kg, scrap_per_kg, from; without grade or section for all"},
    Key{"keep", "from which length a rest is kept: grade, section, keep, from"},
    Key{"standins", "a grade for another, signed by quality: asked, offered, reason, signed_by"},
    Key{"section_standins", "the same of sections"}};

std::string Cells(const intake::Column& column) {
  std::string text(column.says);
  if (column.unit == intake::kLengthUnit) text += (text.empty() ? "" : "; ") + std::string("mm where no unit is written");
  else if (!column.unit.empty()) text += " (" + std::string(column.unit) + ")";
  if (!column.code.empty()) text += "; may be called " + std::string(column.code);
  return text;
}

std::string Table(const TablePage& table) {
  std::string text = ".SS " + Roff(table.name) + "\n" + Roff(table.about) + ".\n";
  for (const intake::Column& column : table.columns) {
    if (table.columns.size() > 40 && IsElement(std::string(column.name))) continue;  // said once, in its `about`
    text += ".TP\n" + Bold(std::string(column.name)) + (column.required ? "" : " (may be absent)") + "\n" + Roff(Cells(column)) + "\n";
  }
  return text;
}

template <std::size_t N>
std::string Object(const char* name, const char* about, const std::array<Key, N>& keys) {
  std::string text = std::string(".SS ") + Roff(name) + "\n" + Roff(about) + ".\n";
  for (const Key& key : keys) text += ".TP\n" + Bold(key.name) + "\n" + Roff(key.says) + "\n";
  return text;
}

std::string Tables() {
  const std::vector<TablePage> tables{
      {"stock.csv", "The pieces there are, for a plan without a book: heatkeep plan --stock", intake::StockColumns()},
      {"cuts.csv", "What is to be cut: heatkeep cutlist add, heatkeep plan --cuts", intake::CutsColumns()},
      {"opening.csv", "What lies on the rack on the first day: heatkeep opening", intake::OpeningColumns()},
      {"delivery.csv", "A delivery, a row for each line of the note and heat: heatkeep receive", intake::DeliveryColumns()},
      {"certificates.csv",
       "Documents typed from paper, a row for each document, heat and section: heatkeep certificate add. Besides these there may be a column for any "
       "chemical element by its symbol, in mass %, called by its field of EN 10168 too: C71 C. An empty cell is not reported, never zero",
       intake::CertificatesColumns()},
      {"grades.csv", "Grades: heatkeep grades add", intake::GradesColumns()},
      {"limits.csv", "Limits of analyses: heatkeep grades limits, heatkeep grades correct", intake::LimitsColumns()},
      {"sums.csv", "Limits of sums and carbon equivalents, by the same commands", intake::SumsColumns()},
      {"tests.csv", "Limits of mechanical tests, by the same commands", intake::MechanicalColumns()},
      {"deviations.csv", "How far an analysis of the product may lie outside, by the same commands", intake::DeviationColumns()}};
  std::string text;
  for (const TablePage& table : tables) text += Table(table);
  return text;
}

}  // namespace

std::string FilesManPage(const ManEdition& edition) {
  return Title("heatkeep-files", 5, edition) +
      ".SH NAME\nheatkeep\\-files \\- the files that heatkeep reads and writes\n.SH DESCRIPTION\n" +
      Roff("A bad file is answered with every bad line, as file:line: what is wrong; what is expected (of a spreadsheet file:sheet!cell), and nothing is "
           "changed. heatkeep look FILE --as KIND shows what a table would be understood as, and does nothing. The names of files are free.\n") +
      ".SS Tables\n" +
      Roff("CSV, XLSX or ODS. The first row names the columns, in any order; small and capital letters, blanks, _ and - are the same there. A column that is "
           "not known is refused. CSV is UTF-8, UTF-16 or Windows-1252, its cells parted by commas, semicolons, tabs or upright strokes, quoted by \" where they hold one; "
           "all of that is found out, and so is whether numbers have a decimal point or comma. Of a spreadsheet formulas count by their last value.\n") +
      ".SS Lengths, masses, days\n" +
      Roff("6000, 6000mm, 6 m, 20 ft, 19' 11-3/8\", 13 7/8 in: whole nanometres, exactly; a fraction without a unit is inches. 249 kg, 550 lb, 1.2 t. "
           "2026-03-04, or 2026-03-04T22:15.\n") +
      ".SH TABLES\n" + Tables() + ".SH JSON\n" + ".SS rules.json\n" +
      Roff("Prices and costs of a plan without a book: heatkeep plan --rules. Every part may be left out; a row without section or grade "
           "holds for any, and of several that fit the first counts. A price may be per_metre and scrap_per_metre instead, and say density_kg_m3; else it is 7850. "
           "What a group does not say is as the command has it.\n") +
      AsTyped(kRulesFileSample) +
      Object("shop.json",
             "The shop: heatkeep shop set; what is there already stays. Lists of objects; heatkeep shop sign reads the stand-ins alone",
             kShop) +
      Object("plan.json", "A plan, written by heatkeep plan --json. Lengths are whole nanometres, money has two decimals", kPlan) +
      ".SH FILES OF ITS OWN\n" +
      Roff("A backup (heatkeep book backup) and the queue of a saw off the network (heatkeep saw block --queue) are for the program alone.\n") +
      ".SH EXAMPLES\n" +
      AsTyped("heatkeep look rack.xlsx --as opening --sheet Rack\nheatkeep plan --stock stock.csv --cuts cuts.csv --json plan.json")
          .substr(4) +
      ".SH SEE ALSO\n.BR heatkeep (1),\n.BR heatkeep\\-look (1),\n.BR heatkeep\\-plan (1),\n.BR heatkeep\\-shop\\-set (1)\n";
}

}  // namespace heatkeep::command
