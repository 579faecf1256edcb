// What was booked and is put right: lengths, receipts, cutting before the papers are here.
#include "client/command/deed_command.h"

namespace heatkeep::command {

void AddMendingDeeds(CLI::App& root, const Later& later) {
  const DeedWord tag{"tag", "tag", "the tag"}, reason{"--reason", "reason", "the error, and how it came"};
  CLI::App& correct = Noun(root, "correct", "put right what was booked; what was booked stays in the history");
  AddDeed(correct, later,
          {"length",
           "measured again; the difference is named unexplained",
           "A000001D --length \"5998 mm\" --cause \"first reading was of another bar\"",
           &StockDeeds::CorrectLength,
           {tag,
            {"--length", "length_nm", "as measured now", WordKind::Length},
            {"--cause", "cause", "why the first reading was wrong"},
            {"--measured-with", "measured_with", "the tape or readout", WordKind::Text, false},
            {"--doubt", "doubt_nm", "how far it may be off", WordKind::Length, false}},
           "{tag}: difference {difference_nm}, doubt {doubt_nm}"});
  AddDeed(correct, later,
          {"receipt",
           "a bar was booked to the wrong lot or owner, or too short; all that was cut from it follows",
           "A000001D --mill Vandrek --heat K3317 --read-from metal --grade 42CrMo4 --section \"round 80\" --condition +QT --reason misread",
           &StockDeeds::CorrectReceipt,
           {tag,
            {"--mill", "mill", "who made it"},
            {"--heat", "heat", "the heat as read"},
            {"--read-from", "read_from", "what the heat was read from", WordKind::Text, true, {"metal", "tag", "slip"}},
            {"--grade", "grade", "its grade"},
            {"--section", "section", "its section", WordKind::Section},
            {"--condition", "condition", "+QT", WordKind::Text, false},
            {"--owner", "owner", "whose it is; else ours", WordKind::Text, false},
            {"--length", "received_nm", "how long it came, where that is more than was booked and nothing was cut of it", WordKind::Length,
             false},
            reason},
           "{tag} is put right, with {follow} other pieces of the same metal",
           [](Json body) {
             Json lot = Json::object();
             for (const char* key : {"mill", "heat", "read_from", "grade", "section", "condition", "received_nm"}) {
               if (body.contains(key)) lot[key] = body[key];
               body.erase(key);
             }
             body["lot"] = std::move(lot);
             return body;
           }});
  AddDeed(Noun(root, "receipt", ""), later,
          {"reverse",
           "a receipt was booked wrongly as a whole, and nothing of it has gone on",
           "\"V 20418\" --supplier Vandrek --reason \"the slip of another lorry\"",
           &StockDeeds::ReverseReceipt,
           {{"note", "note", "the delivery note, or the name of the opening balance"},
            {"--supplier", "supplier", "whose note; none: an opening balance", WordKind::Text, false},
            reason},
           "receipt {note} is reversed, {pieces} pieces gone from the book's stock; the note may be booked again"});
  AddDeed(Noun(root, "papers", ""), later,
          {"at-risk",
           "quality allows cutting before the papers are here; nothing of it ships",
           "Vandrek K3317 --reason \"promised for Friday\"",
           &StockDeeds::AllowAtRisk,
           {{"mill", "mill", "whose heat"}, {"heat", "heat", "the heat"}, {"--reason", "reason", "why"}},
           "{lots} lots may be cut at risk; nothing of them ships"});
}

}  // namespace heatkeep::command
