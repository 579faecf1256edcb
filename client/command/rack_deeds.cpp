// Places: bundles, other sites, counts, and what is measured with.
#include "client/command/deed_command.h"
#include "client/gateway/section_json.h"
#include "schema/terms/length_text.h"

namespace heatkeep::command {
namespace {

// TAG, TAG=LENGTH, or with --unmarked SECTION=LENGTH=MARKS.
Json SeenBody(Json body) {
  Json seen = Json::array();
  for (const std::string word : body.value("tags", Json::array())) {
    const std::size_t at = word.find('=');
    Json one{{"tag", word.substr(0, at)}};
    if (at != std::string::npos) one["length_nm"] = ReadLength(word.substr(at + 1)).nm;
    seen.push_back(std::move(one));
  }
  for (const std::string word : body.value("unmarked", Json::array())) {
    const std::size_t one = word.find('='), two = word.find('=', one + 1);
    if (one == std::string::npos || two == std::string::npos)
      throw BadText("--unmarked: " + Quoted(word) + " cannot be read", "SECTION=LENGTH=MARKS: \"round 80=638 mm=none\"");
    seen.push_back({{"section", SectionJson(ReadSection(word.substr(0, one)))},
                    {"length_nm", ReadLength(word.substr(one + 1, two - one - 1)).nm},
                    {"marks", word.substr(two + 1)}});
  }
  body.erase("tags");
  body.erase("unmarked");
  body["seen"] = std::move(seen);
  return body;
}

}  // namespace

void AddRackDeeds(CLI::App& root, const Later& later) {
  const DeedWord bundle{"bundle", "bundle", "the name on the strap"}, place{"place", "place", "the place"}, tag{"tag", "tag", "the tag"};
  const DeedWord measured{"--length", "length_nm", "as measured now", WordKind::Length},
      with{"--measured-with", "measured_with", "the tape or readout", WordKind::Text, false},
      doubt{"--doubt", "doubt_nm", "how far it may be off", WordKind::Length, false};

  CLI::App& bundles = Noun(root, "bundle", "bars under one strap");
  AddDeed(bundles, later,
          {"make",
           "strap bars of one heat together",
           "S-12 A000001D A000002B",
           &StockDeeds::MakeBundle,
           {bundle, {"tags", "tags", "the bars", WordKind::Texts}},
           "bundle {bundle} has {bars} bars"});
  AddDeed(bundles, later, {"open", "cut the strap", "S-12", &StockDeeds::OpenBundle, {bundle}, "bundle {bundle} is open: {tags}"});
  AddDeed(bundles, later,
          {"move", "move all of it", "S-12 B1-1", &StockDeeds::MoveBundle, {bundle, place}, "bundle {bundle} is in {place}"});
  AddList(bundles, later,
          {"list", "bundles and their bars", "bundles", "bundle", {"bundle", "heat", "place", "bars", "length_nm", "tags"}, "bundle"});

  CLI::App& transfer = Noun(root, "transfer", "metal on its way to another site");
  AddDeed(transfer, later,
          {"send",
           "it leaves for another site or van",
           "van A000001D --note T-7",
           &StockDeeds::SendToSite,
           {{"site", "site", "where to"}, {"tags", "tags", "the pieces", WordKind::Texts}, {"--note", "note", "the transfer note"}},
           "{sent} pieces on their way, note {note}"});
  AddDeed(transfer, later,
          {"receive",
           "it arrived and was measured",
           "A000001D VAN-1 --length \"5999 mm\"",
           &StockDeeds::ReceiveTransfer,
           {tag, place, measured, with, doubt},
           "{tag} is in {place}; difference {difference_nm}"});
  AddList(transfer, later,
          {"list",
           "what was sent and received",
           "transfers",
           "note tag",
           {"note", "tag", "from_site", "to_site", "sent_nm", "received_nm", "difference_nm"},
           "note"});

  CLI::App& count = Noun(root, "count", "counting a place: frozen, counted blind, approved by another person");
  AddDeed(count, later,
          {"freeze", "begin a count", "B3-1", &StockDeeds::FreezePlace, {place}, "{place} is frozen: nothing is taken from or put in it"});
  AddDeed(count, later,
          {"give-up",
           "end a count without any change",
           "B3-1 --reason \"tomorrow\"",
           &StockDeeds::UnfreezePlace,
           {place, {"--reason", "reason", "why"}},
           "{place} is free again; nothing was changed"});
  AddDeed(count, later,
          {"seen",
           "what is there: tags, and lengths where they were measured",
           "B3-1 A000001D \"A000002B=638 mm\" --unmarked \"round 80=638 mm=none\" --done",
           &StockDeeds::CountSeen,
           {place,
            {"tags", "tags", "TAG or TAG=LENGTH", WordKind::Texts, false},
            {"--unmarked", "unmarked", "SECTION=LENGTH=MARKS", WordKind::Texts, false},
            with,
            {"--done", "done", "that is all that is there", WordKind::Yes, false}},
           "{lines} pieces counted in {place}",
           SeenBody});
  AddDeed(count, later,
          {"approve",
           "look at the differences and sign for them",
           "B3-1 --words \"looked under the rack\"",
           &StockDeeds::ApproveCount,
           {place, {"--words", "words", "what the differences come from", WordKind::Text, false}},
           "{place}: missing {missing}; found without a tag {found}; left as it is, changed since {left}; difference {difference_nm}"});
  AddList(count, later,
          {"list",
           "counts, newest last",
           "counts",
           "count_id",
           {"place", "state", "counted_by", "approved_by", "tags", "counted_nm", "missing_nm", "difference_nm", "words"},
           "place"});
  AddList(count, later,
          {"differences",
           "of counts that wait for approval",
           "count_differences",
           "place what tag",
           {"place", "what", "tag", "length_nm", "counted_nm", "difference_nm", "cents"},
           "place"});

  CLI::App& label = Noun(root, "label", "the queue of labels: every new tag has one that is to be printed");
  AddDeed(label, later,
          {"printed",
           "they came out and are legible",
           "12 13 --printer gate",
           &StockDeeds::LabelPrinted,
           {{"jobs", "jobs", "their numbers", WordKind::Texts}, {"--printer", "printer", "which printer"}},
           "{printed} printed; {waiting} wait"});
  AddDeed(
      label, later,
      {"failed",
       "it did not come out; it stays in the queue",
       "12 --printer gate --reason \"no ribbon\"",
       &StockDeeds::LabelFailed,
       {{"job", "job", "its number", WordKind::Count}, {"--printer", "printer", "which printer"}, {"--reason", "reason", "what is wrong"}},
       "label {job} of {tag} waits"});
  AddList(label, later,
          {"list",
           "those that wait first",
           "label_queue",
           "printed job",
           {"job", "state", "tag", "kind", "why", "asked_by", "place", "printer", "printed_at", "words"},
           "tag"});

  CLI::App& device = Noun(root, "device", "tapes, readouts and scales, and their calibrations");
  AddDeed(device, later,
          {"add",
           "enter one",
           "\"tape 7\" --kind tape --site main",
           &StockDeeds::AddDevice,
           {{"name", "device", "as written on it"},
            {"--kind", "kind", "what it is", WordKind::Text, true, {"tape", "readout", "scale", "scanner", "analyser"}},
            {"--site", "site", "where it is used"}},
           "{device} is entered"});
  AddDeed(device, later,
          {"calibrate",
           "its new calibration",
           "\"tape 7\" --on 2026-03-04 --due 2027-03-04 --doubt \"1 mm\" --certificate K-77",
           &StockDeeds::CalibrateDevice,
           {{"name", "device", "its name"},
            {"--on", "calibrated_on", "the day", WordKind::Date},
            {"--due", "due_on", "when again", WordKind::Date},
            {"--doubt", "doubt_nm", "how far a reading may be off", WordKind::Length},
            {"--certificate", "certificate", "its number"}},
           "{device} is good until {due_on}"});
  AddList(device, later,
          {"list",
           "with the day they are due",
           "devices",
           "device",
           {"device", "kind", "site", "calibrated_on", "due_on", "doubt_nm", "overdue"}});
  CLI::App& shop = Noun(root, "shop", "places, saws, prices and rules");
  AddList(shop, later,
          {"places", "every place metal can be", "places", "walk place", {"place", "site", "kind", "max_length_nm", "max_mass_g"}});
  AddList(shop, later,
          {"parties",
           "mills, suppliers and customers the book knows",
           "parties",
           "name",
           {"name", "is_mill", "is_supplier", "is_customer"},
           "name"});
  AddList(shop, later,
          {"settings", "the settings in force, and since when", "settings_now", "name", {"name", "value", "valid_from"}, "name"});
  CLI::App& saw = Noun(root, "saw", "at the saw");
  AddList(saw, later,
          {"consents",
           "other metal that customers agreed to, and who signed it",
           "consents",
           "consent",
           {"consent", "order_no", "line_no", "grade", "section", "papers", "count", "agreed_by", "cost_cents", "signed_by"}});
  AddList(saw, later,
          {"defects",
           "defects found at the saws, and what the lead answered",
           "defects",
           "report",
           {"report", "tag", "mill", "heat", "kind", "from_end", "at_nm", "words", "answer", "answer_words"}});
  AddList(saw, later, {"scrap-bins", "what lies in every scrap bin", "scrap_bins", "bin", {"bin", "alloy_group", "pieces", "mass_g"}});
  AddList(saw, later,
          {"rejects",
           "pieces cut wrong, by number",
           "rejects",
           "reject",
           {"reject", "tag", "order_no", "line_no", "length_nm", "fault", "reused_as"}});
  AddList(saw, later,
          {"first-pieces",
           "first pieces that were measured, beside what the stop was set for",
           "first_pieces",
           "order_no line_no",
           {"saw", "order_no", "line_no", "set_nm", "measured_nm", "good", "measured_by"},
           "order_no"});
  AddList(saw, later,
          {"not-cut",
           "planned pieces that were not cut when their bar was ended, and why",
           "open_pieces",
           "plan_id layout_no",
           {"plan_id", "layout_no", "tag", "order_no", "line_no", "missing", "why", "said_by"},
           "order_no"});
  AddList(saw, later,
          {"bad-lengths",
           "where a piece has bad metal that no plan cuts pieces from, measured from the end that is cut first",
           "defect_zones",
           "tag from_nm",
           {"tag", "kind", "from_nm", "to_nm"},
           "tag"});
  AddList(saw, later,
          {"bundles",
           "bars cut together, and the strokes and cuts it took",
           "saw_bundles",
           "bundle",
           {"bundle", "saw", "plan_id", "bars", "tags", "strokes", "cuts", "made_by"}});
  AddList(saw, later,
          {"tickets",
           "what the scrap dealer weighed, ticket by ticket, beside what was booked",
           "scrap_tickets",
           "dealer ticket",
           {"ticket", "dealer", "bin", "alloy_group", "mass_g", "book_mass_g", "cents_per_tonne", "named"},
           "ticket"});
  AddList(Noun(root, "certificate", "inspection documents"), later,
          {"passed",
           "which document went with which delivery, to whom, and by which rule",
           "documents_passed",
           "issuer number version note",
           {"issuer", "number", "version", "note", "customer", "rule", "form", "additional", "words", "passed_by"},
           "number"});
}

}  // namespace heatkeep::command
