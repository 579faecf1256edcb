// One piece: what it is, what it may be used for, and how it leaves.
#include "client/command/deed_command.h"

namespace heatkeep::command {

void AddPieceDeeds(CLI::App& root, const Later& later) {
  const DeedWord tag{"tag", "tag", "the tag"}, reason{"--reason", "reason", "why"}, place{"--place", "place", "where it is put"},
      note{"--note", "note", "the note it goes with"};
  const DeedWord measured{"--length", "length_nm", "as measured now", WordKind::Length},
      with{"--measured-with", "measured_with", "the tape or readout", WordKind::Text, false},
      doubt{"--doubt", "doubt_nm", "how far it may be off", WordKind::Length, false};

  CLI::App& piece = Noun(root, "piece", "one piece: what is known of it, and what is done with it");
  AddDeed(piece, later,
          {"damage",
           "bent, corroded, dented, cracked or other",
           "A000001D --kind bent --words \"3 mm in the middle\" --usable",
           &StockDeeds::RecordDamage,
           {tag,
            {"--kind", "kind", "what it is", WordKind::Text, true, {"bent", "corroded", "dented", "cracked", "other"}},
            {"--words", "words", "what is seen, and where"},
            {"--usable", "usable", "it may still be used; else it is quarantined", WordKind::Yes},
            {"--from", "from_nm", "from the first end", WordKind::Length, false},
            {"--to", "to_nm", "to", WordKind::Length, false}},
           "{tag}: damage noted; quarantined: {quarantined}[; {plans}]",
           [](Json body) {
             body["usable"] = body.contains("usable");
             return body;
           }});
  AddDeed(piece, later,
          {"found",
           "metal without a tag: unknown, in quarantine",
           "--section \"round 80\" --length \"638 mm\" --marks \"...3317\" --place QUAR",
           &StockDeeds::FoundPiece,
           {{"--section", "section", "round 80", WordKind::Section},
            measured,
            {"--marks", "marks", "what can be read, or none"},
            place,
            with,
            doubt},
           "{label}; it might be (quality decides): {hint}"});
  AddDeed(piece, later,
          {"found-again",
           "a missing piece turns up, read and measured",
           "A000001D --read K3317 --length \"638 mm\" --place B3-1",
           &StockDeeds::FoundAgain,
           {tag, {"--read", "read", "heat or tag as read on it now"}, measured, place, with, doubt},
           "{tag} is back; difference {difference_nm}"});
  AddDeed(piece, later,
          {"identity",
           "what it is, by evidence",
           "A000001D --method mark --result \"half a stencil ...3317\" --as-tag A000002B",
           &StockDeeds::ReestablishIdentity,
           {tag,
            {"--method", "method", "what it stands on", WordKind::Text, true, {"mark", "custody", "analysis"}},
            {"--result", "result", "what was found"},
            {"--as-tag", "as_tag", "the missing piece it is", WordKind::Text, false},
            {"--mill", "mill", "whose heat", WordKind::Text, false},
            {"--heat", "heat", "the heat as read", WordKind::Text, false},
            {"--grade", "grade", "its grade", WordKind::Text, false},
            {"--section", "section", "its section, with --heat", WordKind::Section, false},
            {"--condition", "condition", "+QT", WordKind::Text, false}},
           "{was} is {tag} now, by {judge}",
           [](Json body) {
             if (!body.contains("heat")) return body;
             Json lot = Json::object();
             for (const char* key : {"mill", "heat", "grade", "section", "condition"}) {
               if (body.contains(key)) lot[key] = body[key];
               body.erase(key);
             }
             body["lot"] = std::move(lot);
             return body;
           }});
  AddDeed(piece, later,
          {"downgrade",
           "to weaker papers, or to metal of no sure heat",
           "A000001D --to 2.2 --reason \"tests of another section\"",
           &StockDeeds::Downgrade,
           {tag, {"--to", "to", "to what", WordKind::Text, true, {"3.1", "2.2", "2.1", "none", "grade only", "unknown"}}, reason},
           "{tag} is downgraded to {to}; new tag: {new_tag}"});
  AddDeed(piece, later,
          {"photo",
           "keep a picture (JPEG or PNG) with it",
           "A000001D stencil.jpg --kind mark",
           &StockDeeds::AddPhoto,
           {tag,
            {"file", "file_base64", "the picture", WordKind::File},
            {"--kind", "kind", "what it shows", WordKind::Text, true, {"mark", "label", "defect", "damage", "signature", "other"}},
            {"--words", "words", "what it shows", WordKind::Text, false}},
           "photo {photo_id} of {tag}, SHA-256 {sha256}"});
  AddDeed(piece, later,
          {"relabel",
           "its label is printed again, at the piece",
           "A000001D --why torn --old-destroyed --scanned A000001D",
           &StockDeeds::ReprintLabel,
           {tag,
            {"--why", "why", "why"},
            {"--old-destroyed", "old_destroyed", "the old one is", WordKind::Yes},
            {"--scanned", "scanned", "the tag as scanned now", WordKind::Text, false},
            {"--photo", "photo_id", "or a photo of its mark", WordKind::Count, false}},
           "{tag}: label number {reprints} after the first"});
  AddDeed(piece, later,
          {"write-off",
           "lost or stolen; its millimetres stay unexplained",
           "A000001D --reason \"not found in a month\"",
           &StockDeeds::WriteOff,
           {tag, reason},
           "{tag} is written off: {unexplained_nm} unexplained"});
  AddDeed(piece, later,
          {"sell",
           "sold as it is",
           "A000001D --order X-7 --customer Pallant --note L-9 --papers 3.1 --papers-sent",
           &StockDeeds::Sell,
           {{"tags", "tags", "the pieces", WordKind::Texts},
            {"--order", "order", "the customer's order"},
            {"--customer", "customer", "who buys"},
            note,
            {"--papers", "papers", "sold with these", WordKind::Text, false, {"2.1", "2.2", "3.1", "3.2"}},
            {"--papers-sent", "papers_sent", "the document goes with it", WordKind::Yes, false}},
           "note {note}: {sold}"});
  AddDeed(piece, later,
          {"buy-over",
           "a customer's metal becomes ours, in writing",
           "A000001D --writing \"letter of 3 March\" --per-kg 0.90",
           &StockDeeds::BuyOver,
           {tag, {"--writing", "writing", "what its owner wrote"}, {"--per-kg", "cents_per_tonne", "what is paid", WordKind::PerKg}},
           "{was} is ours now, as {tag}"});
  AddList(piece, later,
          {"history",
           "what happened to it, and what was entered late",
           "piece_history",
           "tag seq",
           {"at", "deed", "about", "together", "who", "entered", "device", "reason"},
           "tag"});
  AddList(piece, later,
          {"photos", "its pictures", "photos", "tag photo_id", {"photo_id", "tag", "kind", "media", "sha256", "words"}, "tag"});
  AddList(piece, later, {"notes", "damage, labels, evidence", "piece_notes", "tag kind", {"tag", "kind", "words"}, "tag"});

  AddList(Noun(root, "shipment", "cut pieces that leave"), later,
          {"against",
           "what stands against shipping an order, or a package of its papers",
           "stands_against",
           "order_no line_no tag",
           {"order_no", "line_no", "pieces", "tag", "heat", "words"},
           "order_no",
           {},
           "cut_lines",
           "an order of a cut list",
           "nothing stands against what was cut for"});

  CLI::App& returned = Noun(root, "return", "metal that goes back, or comes back");
  AddDeed(returned, later,
          {"supplier",
           "to whom it came from, with a claim",
           "A000001D --note R-1 --claim C-9 --reason \"wrong chemistry\"",
           &StockDeeds::ReturnToSupplier,
           {tag, note, {"--claim", "claim", "number of the claim"}, reason},
           "{tag} {words}"});
  AddDeed(returned, later,
          {"owner",
           "a customer's metal, as they signed or wrote",
           "A000001D --note L-2 --writing \"signed by their driver\"",
           &StockDeeds::ReturnToOwner,
           {tag,
            note,
            {"--writing", "writing", "signature or instruction"},
            {"--scrapped", "fate", "it is scrapped for them", WordKind::Yes, false}},
           "{tag} {words}",
           [](Json body) {
             body["fate"] = body.contains("fate") ? "scrapped" : "returned";
             return body;
           }});
  AddDeed(returned, later,
          {"customer",
           "sold or cut pieces come back, to quarantine",
           "Pallant --note B-1 --reason \"too many\" --identity \"marked M2208\" --held-by Pallant --order O1 --line 10 --count 2",
           &StockDeeds::CustomerReturn,
           {{"customer", "customer", "who returns them"},
            note,
            reason,
            {"--identity", "identity", "what shows that it is this metal"},
            {"--held-by", "held_by", "who had it"},
            {"--tag", "tag", "a piece sold as it was", WordKind::Text, false},
            {"--length", "length_nm", "as measured now", WordKind::Length, false},
            {"--place", "place", "where it is put", WordKind::Text, false},
            {"--order", "order", "or cut pieces: the order", WordKind::Text, false},
            {"--line", "line", "its line", WordKind::Text, false},
            {"--count", "count", "how many", WordKind::Count, false}},
           "{what}: {words}; waits for quality"});
  AddList(returned, later,
          {"list",
           "what customers returned",
           "customer_returns",
           "customer note",
           {"customer", "note", "what", "reason", "identity", "held_by"},
           "customer"});

  CLI::App& outside = Noun(root, "outside", "metal that is out for a process or a test");
  AddDeed(outside, later,
          {"send",
           "it goes out",
           "A000001D --party \"Hardening works\" --process normalizing --note H-1",
           &StockDeeds::SendOutside,
           {tag,
            {"--party", "party", "who does it"},
            {"--process", "process", "what is done; test: it may come back as it was"},
            note,
            {"--mass", "mass_g", "as weighed", WordKind::Mass, false}},
           "{tag} is out"});
  AddDeed(outside, later,
          {"back",
           "it came back; another condition is another lot",
           "A000001D --place B1-1 --length \"5998 mm\" --condition +N",
           &StockDeeds::BackFromOutside,
           {tag,
            place,
            measured,
            {"--condition", "condition", "the condition it has now", WordKind::Text, false},
            {"--mass", "mass_g", "as weighed", WordKind::Mass, false},
            with,
            doubt},
           "{was} is back as {tag}, papers {papers}; difference {difference_nm}"});
  AddList(
      outside, later,
      {"list", "what is or was out", "outside_trips", "tag note", {"tag", "party", "process", "note", "out_nm", "back_nm", "back_tag"}});

  AddDeed(Noun(root, "hold", ""), later,
          {"condemn",
           "held metal is never used any more",
           "3 --reason \"second analysis\"",
           &StockDeeds::CondemnHold,
           {{"hold", "hold_id", "its number", WordKind::Count}, reason},
           "hold {hold_id}: {pieces} pieces condemned"});
  AddList(Noun(root, "hold", ""), later,
          {"list",
           "all holds",
           "holds",
           "hold_id",
           {"hold_id", "scope", "ref", "mill", "reason", "held_by", "lifted_by", "lifting_words", "condemned_by", "condemned_words"},
           {},
           {{"held_by", "held by {}"}, {"lifted_by", "LIFTED by {}:"}, {"condemned_by", "CONDEMNED by {}:"}}});
  AddList(Noun(root, "value", "what our metal is worth"), later,
          {"list",
           "by grade and section; customers' metal is in none of it",
           "stock_value",
           "grade section",
           {"grade", "section", "pieces", "length_nm", "mass_g", "cents"}});
  AddList(Noun(root, "property", "what customers have with us"), later,
          {"list",
           "their report",
           "customer_property",
           "owner tag",
           {"owner", "tag", "owner_ref", "grade", "section", "heat", "place", "length_nm", "mass_g", "rests_rule"},
           "owner"});
}

}  // namespace heatkeep::command
