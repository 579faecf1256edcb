<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en_US" sourcelanguage="en_US">
<context>
    <name>Book</name>
    <message numerus="yes">
        <source>%1 %2: the slip says %3 bars %4 %5 of %6, %7 came (%8 by theory)</source>
        <translation>
            <numerusform>%1 %2: the slip says %3 bar %4 %5 of %6, %7 came (%8 by theory)</numerusform>
            <numerusform>%1 %2: the slip says %3 bars %4 %5 of %6, %7 came (%8 by theory)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 bars</source>
        <translation>
            <numerusform>%1 bar</numerusform>
            <numerusform>%1 bars</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 bars %2 %3 of %4 not as ordered: %5 (%6 by theory)</source>
        <translation>
            <numerusform>%1 bar %2 %3 of %4 not as ordered: %5 (%6 by theory)</numerusform>
            <numerusform>%1 bars %2 %3 of %4 not as ordered: %5 (%6 by theory)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 bars are still expected and free there, %2 were asked for</source>
        <translation>
            <numerusform>%1 bar is still expected and free there, %2 were asked for</numerusform>
            <numerusform>%1 bars are still expected and free there, %2 were asked for</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 bars for order %2 line %3</source>
        <translation>
            <numerusform>%1 bar for order %2 line %3</numerusform>
            <numerusform>%1 bars for order %2 line %3</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 bars were cut together at saw %2: %3</source>
        <translation>
            <numerusform>%1 bar was cut at saw %2: %3</numerusform>
            <numerusform>%1 bars were cut together at saw %2: %3</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 chains, %2 with another end</source>
        <translation>
            <numerusform>%1 chain, %2 with another end</numerusform>
            <numerusform>%1 chains, %2 with another end</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 cuts cannot be served</source>
        <translation>
            <numerusform>%1 cut cannot be served</numerusform>
            <numerusform>%1 cuts cannot be served</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 cuts, %2 do not add up</source>
        <translation>
            <numerusform>%1 cut, %2 do not add up</numerusform>
            <numerusform>%1 cuts, %2 do not add up</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 happenings since, %2 broken links</source>
        <translation>
            <numerusform>%1 happening since, %2 broken links</numerusform>
            <numerusform>%1 happenings since, %2 broken links</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 happenings, %2 broken links</source>
        <translation>
            <numerusform>%1 happening, %2 broken links</numerusform>
            <numerusform>%1 happenings, %2 broken links</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 holds %2 for sure; %3 pieces need more</source>
        <translation>
            <numerusform>%1 holds %2 for sure; %3 piece needs more</numerusform>
            <numerusform>%1 holds %2 for sure; %3 pieces need more</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 live promises, %2 of metal that is gone</source>
        <translation>
            <numerusform>%1 live promise, %2 of metal that is gone</numerusform>
            <numerusform>%1 live promises, %2 of metal that is gone</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 lots, %2 do not add up</source>
        <translation>
            <numerusform>%1 lot, %2 do not add up</numerusform>
            <numerusform>%1 lots, %2 do not add up</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 pieces</source>
        <translation>
            <numerusform>%1 piece</numerusform>
            <numerusform>%1 pieces</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 pieces not: %2</source>
        <translation>
            <numerusform>%1 piece not: %2</numerusform>
            <numerusform>%1 pieces not: %2</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 pieces of it are on site, not %2</source>
        <translation>
            <numerusform>%1 piece of it is on site, not %2</numerusform>
            <numerusform>%1 pieces of it are on site, not %2</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 pieces of order %2 line %3 have been shipped; it cannot become %4</source>
        <translation>
            <numerusform>%1 piece of order %2 line %3 has been shipped; it cannot become %4</numerusform>
            <numerusform>%1 pieces of order %2 line %3 have been shipped; it cannot become %4</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 pieces, %2 do not add up</source>
        <translation>
            <numerusform>%1 piece, %2 do not add up</numerusform>
            <numerusform>%1 pieces, %2 do not add up</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 seals, %2 no longer agree</source>
        <translation>
            <numerusform>%1 seal, %2 no longer agree</numerusform>
            <numerusform>%1 seals, %2 no longer agree</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 strokes are not booked in one go; expected 100000 or less</source>
        <translation>
            <numerusform>%1 stroke is not booked in one go; expected 100000 or less</numerusform>
            <numerusform>%1 strokes are not booked in one go; expected 100000 or less</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 strokes cannot be booked; expected 1 or more</source>
        <translation>
            <numerusform>%1 stroke cannot be booked; expected 1 or more</numerusform>
            <numerusform>%1 strokes cannot be booked; expected 1 or more</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %2 pieces were shipped to %3, %4 are said to come back</source>
        <translation>
            <numerusform>%1: %2 piece was shipped to %3, %4 are said to come back</numerusform>
            <numerusform>%1: %2 pieces were shipped to %3, %4 are said to come back</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>All %1 pieces cut for order %2 are of heat %3 of %4; no other heat went into this order.</source>
        <translation>
            <numerusform>The %1 piece cut for order %2 is of heat %3 of %4; no other heat went into this order.</numerusform>
            <numerusform>All %1 pieces cut for order %2 are of heat %3 of %4; no other heat went into this order.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>All %1 pieces cut for order %2 are of heat %3 of %4; no other heat went into this order. %5 pieces are not cut yet.</source>
        <translation>
            <numerusform>The %1 piece cut for order %2 is of heat %3 of %4; no other heat went into this order. %5 pieces are not cut yet.</numerusform>
            <numerusform>All %1 pieces cut for order %2 are of heat %3 of %4; no other heat went into this order. %5 pieces are not cut yet.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>All %1 pieces cut for order %2 are of heat %3 of %4; no other heat went into this order. Before it was identified, some of the metal had no heat in the book; the tags are listed.</source>
        <translation>
            <numerusform>The %1 piece cut for order %2 is of heat %3 of %4; no other heat went into this order. Before it was identified, some of the metal had no heat in the book; the tags are listed.</numerusform>
            <numerusform>All %1 pieces cut for order %2 are of heat %3 of %4; no other heat went into this order. Before it was identified, some of the metal had no heat in the book; the tags are listed.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>All %1 pieces cut for order %2 are of heat %3 of %4; no other heat went into this order. Before it was identified, some of the metal had no heat in the book; the tags are listed. %5 pieces are not cut yet.</source>
        <translation>
            <numerusform>The %1 piece cut for order %2 is of heat %3 of %4; no other heat went into this order. Before it was identified, some of the metal had no heat in the book; the tags are listed. %5 pieces are not cut yet.</numerusform>
            <numerusform>All %1 pieces cut for order %2 are of heat %3 of %4; no other heat went into this order. Before it was identified, some of the metal had no heat in the book; the tags are listed. %5 pieces are not cut yet.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>BUNDLE %1: %2 bars cut together, %3 stroke</source>
        <translation>
            <numerusform>BUNDLE %1: %2 bar cut together, %3 stroke</numerusform>
            <numerusform>BUNDLE %1: %2 bars cut together, %3 stroke</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>BUNDLE %1: %2 bars cut together, %3 strokes</source>
        <translation>
            <numerusform>BUNDLE %1: %2 bar cut together, %3 strokes</numerusform>
            <numerusform>BUNDLE %1: %2 bars cut together, %3 strokes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>It is not so that one heat alone went into order %1: %2. %3 pieces are not cut yet.</source>
        <translation>
            <numerusform>It is not so that one heat alone went into order %1: %2. %3 piece is not cut yet.</numerusform>
            <numerusform>It is not so that one heat alone went into order %1: %2. %3 pieces are not cut yet.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Looked at: %1 strokes booked for the order at any time, in %2 cuts; %3 cut pieces now, from %4 pieces, which with all they came from are %5; %6 happenings in %7 chains, each hashed anew%8.</source>
        <translation>
            <numerusform>Looked at: %1 stroke booked for the order at any time, in %2 cuts; %3 cut pieces now, from %4 pieces, which with all they came from are %5; %6 happenings in %7 chains, each hashed anew%8.</numerusform>
            <numerusform>Looked at: %1 strokes booked for the order at any time, in %2 cuts; %3 cut pieces now, from %4 pieces, which with all they came from are %5; %6 happenings in %7 chains, each hashed anew%8.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Nothing is stated about the heats of order %1: the book was changed behind its back. %2 pieces are not cut yet.</source>
        <translation>
            <numerusform>Nothing is stated about the heats of order %1: the book was changed behind its back. %2 piece is not cut yet.</numerusform>
            <numerusform>Nothing is stated about the heats of order %1: the book was changed behind its back. %2 pieces are not cut yet.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>a record of %1 bytes cannot be kept</source>
        <translation>
            <numerusform>a record of %1 byte cannot be kept</numerusform>
            <numerusform>a record of %1 bytes cannot be kept</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>a scan of %1 bytes</source>
        <translation>
            <numerusform>a scan of %1 byte</numerusform>
            <numerusform>a scan of %1 bytes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>entered %1 days later by %2</source>
        <translation>
            <numerusform>entered %1 day later by %2</numerusform>
            <numerusform>entered %1 days later by %2</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>in a bundle of %1 bars</source>
        <translation>
            <numerusform>in a bundle of %1 bar</numerusform>
            <numerusform>in a bundle of %1 bars</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>line %1: %2 bars are no line of a delivery; expected 10000 or less</source>
        <translation>
            <numerusform>line %1: %2 bar is no line of a delivery; expected 10000 or less</numerusform>
            <numerusform>line %1: %2 bars are no line of a delivery; expected 10000 or less</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>order %1 line %2 has %3 pieces open, not %4</source>
        <translation>
            <numerusform>order %1 line %2 has %3 piece open, not %4</numerusform>
            <numerusform>order %1 line %2 has %3 pieces open, not %4</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>order %1 line %2 may come from %3 heats</source>
        <translation>
            <numerusform>order %1 line %2 may come from %3 heat</numerusform>
            <numerusform>order %1 line %2 may come from %3 heats</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>order %1 line %2 may come from %3 heats, and was cut from %4</source>
        <translation>
            <numerusform>order %1 line %2 may come from %3 heat, and was cut from %4</numerusform>
            <numerusform>order %1 line %2 may come from %3 heats, and was cut from %4</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>order %1 line %2, %3 pieces of %4 cut from %5: %6</source>
        <translation>
            <numerusform>order %1 line %2, %3 piece of %4 cut from %5: %6</numerusform>
            <numerusform>order %1 line %2, %3 pieces of %4 cut from %5: %6</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>order %1 line %2: %3 pieces are on site, %4 were to be shipped</source>
        <translation>
            <numerusform>order %1 line %2: %3 piece is on site, %4 were to be shipped</numerusform>
            <numerusform>order %1 line %2: %3 pieces are on site, %4 were to be shipped</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>saw %1 takes %2 bars at a time, not %3: make up bundles of %4 or fewer</source>
        <translation>
            <numerusform>saw %1 takes %2 bar at a time, not %3: make up bundles of %4 or fewer</numerusform>
            <numerusform>saw %1 takes %2 bars at a time, not %3: make up bundles of %4 or fewer</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>takes %1 drops</source>
        <translation>
            <numerusform>takes %1 drop</numerusform>
            <numerusform>takes %1 drops</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>the customer takes %1 pieces with papers %2</source>
        <translation>
            <numerusform>the customer takes %1 piece with papers %2</numerusform>
            <numerusform>the customer takes %1 pieces with papers %2</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>the file has %1 bytes</source>
        <translation>
            <numerusform>the file has %1 byte</numerusform>
            <numerusform>the file has %1 bytes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>the metal that may serve it is used up within %1 heats</source>
        <translation>
            <numerusform>the metal that may serve it is used up within %1 heat</numerusform>
            <numerusform>the metal that may serve it is used up within %1 heats</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>the picture has %1 bytes; at most %2 are kept</source>
        <translation>
            <numerusform>the picture has %1 byte; at most %2 are kept</numerusform>
            <numerusform>the picture has %1 bytes; at most %2 are kept</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>to buy for %1: %2 bars of at least %3</source>
        <translation>
            <numerusform>to buy for %1: %2 bar of at least %3</numerusform>
            <numerusform>to buy for %1: %2 bars of at least %3</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 heats</source>
        <translation>
            <numerusform>%1 heat</numerusform>
            <numerusform>%1 heats</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>ONE HEAT in %1 lines</source>
        <translation>
            <numerusform>ONE HEAT in %1 line</numerusform>
            <numerusform>ONE HEAT in %1 lines</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 files, %2 are not what was filed or are gone</source>
        <translation>
            <numerusform>%1 file, %2 are not what was filed or are gone</numerusform>
            <numerusform>%1 files, %2 are not what was filed or are gone</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>more than %1 bytes</source>
        <translation>
            <numerusform>more than %1 byte</numerusform>
            <numerusform>more than %1 bytes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 pieces of it are here: %2</source>
        <translation>
            <numerusform>%1 piece of it is here: %2</numerusform>
            <numerusform>%1 pieces of it are here: %2</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>order %1 line %2 asks for %3 pieces; %4 have left, and %5 more would be too many</source>
        <translation>
            <numerusform>order %1 line %2 asks for %3 piece; %4 have left, and %5 more would be too many</numerusform>
            <numerusform>order %1 line %2 asks for %3 pieces; %4 have left, and %5 more would be too many</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>order %1 line %2 may come from %3 heats, and is cut or planned from %4</source>
        <translation>
            <numerusform>order %1 line %2 may come from %3 heat, and is cut or planned from %4</numerusform>
            <numerusform>order %1 line %2 may come from %3 heats, and is cut or planned from %4</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>the customer takes %1 pieces of %2</source>
        <translation>
            <numerusform>the customer takes %1 piece of %2</numerusform>
            <numerusform>the customer takes %1 pieces of %2</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 strokes cannot be taken back; expected 1 or more</source>
        <translation>
            <numerusform>%1 stroke cannot be taken back; expected 1 or more</numerusform>
            <numerusform>%1 strokes cannot be taken back; expected 1 or more</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 strokes of that cut are booked, not %2</source>
        <translation>
            <numerusform>%1 stroke of that cut is booked, not %2</numerusform>
            <numerusform>%1 strokes of that cut are booked, not %2</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Planning</name>
    <message numerus="yes">
        <source>%n piece(s)</source>
        <translation>
            <numerusform>%n piece</numerusform>
            <numerusform>%n pieces</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n drop(s)</source>
        <translation>
            <numerusform>%n drop</numerusform>
            <numerusform>%n drops</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n full bar(s), %1</source>
        <translation>
            <numerusform>%n full bar, %1</numerusform>
            <numerusform>%n full bars, %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n rest(s) kept, %1</source>
        <translation>
            <numerusform>%n rest kept, %1</numerusform>
            <numerusform>%n rests kept, %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n set-up(s)</source>
        <translation>
            <numerusform>%n set-up</numerusform>
            <numerusform>%n set-ups</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1/%2, %3 %4: %n missing: %5</source>
        <translation>
            <numerusform>%1/%2, %3 %4: %n missing: %5</numerusform>
            <numerusform>%1/%2, %3 %4: %n missing: %5</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>heatkeep::CountingStation</name>
    <message numerus="yes">
        <source>%n tag(s)</source>
        <translation>
            <numerusform>%n tag</numerusform>
            <numerusform>%n tags</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n counted</source>
        <translation>
            <numerusform>%n counted</numerusform>
            <numerusform>%n counted</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n tag(s) were counted by %1. The differences are looked at by the planner or the owner; until then nothing moves here.</source>
        <translation>
            <numerusform>%n tag was counted by %1. The differences are looked at by the planner or the owner; until then nothing moves here.</numerusform>
            <numerusform>%n tags were counted by %1. The differences are looked at by the planner or the owner; until then nothing moves here.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n tag(s), %1 counted by %2; not found %3; in all %4, worth %5</source>
        <translation>
            <numerusform>%n tag, %1 counted by %2; not found %3; in all %4, worth %5</numerusform>
            <numerusform>%n tags, %1 counted by %2; not found %3; in all %4, worth %5</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>heatkeep::CountingWork</name>
    <message numerus="yes">
        <source>%1 is counted, %n piece(s): another person looks at the differences. To count it again, the planner gives this count up and freezes it anew</source>
        <translation>
            <numerusform>%1 is counted, %n piece: another person looks at the differences. To count it again, the planner gives this count up and freezes it anew</numerusform>
            <numerusform>%1 is counted, %n pieces: another person looks at the differences. To count it again, the planner gives this count up and freezes it anew</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>heatkeep::DocumentWork</name>
    <message numerus="yes">
        <source>document %1 is filed and accepted: %n lot(s) may be used with it</source>
        <translation>
            <numerusform>document %1 is filed and accepted: %n lot may be used with it</numerusform>
            <numerusform>document %1 is filed and accepted: %n lots may be used with it</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>heatkeep::GateWords</name>
    <message numerus="yes">
        <source>in the book: %n bar(s) of %1 %2, %3, note %4 of %5</source>
        <translation>
            <numerusform>in the book: %n bar of %1 %2, %3, note %4 of %5</numerusform>
            <numerusform>in the book: %n bars of %1 %2, %3, note %4 of %5</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>, %n day(s) late</source>
        <translation>
            <numerusform>, %n day late</numerusform>
            <numerusform>, %n days late</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1  %2, %n piece(s)%3</source>
        <translation>
            <numerusform>%1  %2, %n piece%3</numerusform>
            <numerusform>%1  %2, %n pieces%3</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>and %n more</numerusform>
            <numerusform>and %n more</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s) with this line</source>
        <translation>
            <numerusform>%n photo with this line</numerusform>
            <numerusform>%n photos with this line</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>heatkeep::OpeningPage</name>
    <message numerus="yes">
        <source>%1: %n row(s) can be booked, </source>
        <translation>
            <numerusform>%1: %n row can be booked, </numerusform>
            <numerusform>%1: %n rows can be booked, </numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s), %1</source>
        <translation>
            <numerusform>%n piece, %1</numerusform>
            <numerusform>%n pieces, %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source> and %n more</source>
        <translation>
            <numerusform> and %n more</numerusform>
            <numerusform> and %n more</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n name(s) are not in the book yet: %1%2. F3 enters them: places as racks, makers, owners. A name that is misspelt is better put right in the file.</source>
        <translation>
            <numerusform>%n name is not in the book yet: %1%2. F3 enters it: places as racks, makers, owners. A name that is misspelt is better put right in the file.</numerusform>
            <numerusform>%n names are not in the book yet: %1%2. F3 enters them: places as racks, makers, owners. A name that is misspelt is better put right in the file.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) are not booked: they stand in front, with what is wrong. Put them right in the file and choose it again, or book the others.</source>
        <translation>
            <numerusform>%n row is not booked: it stands in front, with what is wrong. Put it right in the file and choose it again, or book the others.</numerusform>
            <numerusform>%n rows are not booked: they stand in front, with what is wrong. Put them right in the file and choose it again, or book the others.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>heatkeep::PapersStation</name>
    <message numerus="yes">
        <source>%n day(s) late</source>
        <translation>
            <numerusform>%n day late</numerusform>
            <numerusform>%n days late</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>heatkeep::PapersWork</name>
    <message numerus="yes">
        <source>the package of %1 is in %2: %n page(s)</source>
        <translation>
            <numerusform>the package of %1 is in %2: %n page</numerusform>
            <numerusform>the package of %1 is in %2: %n pages</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s) left with note %1; Certificate package makes their papers</source>
        <translation>
            <numerusform>%n piece left with note %1; Certificate package makes its papers</numerusform>
            <numerusform>%n pieces left with note %1; Certificate package makes their papers</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>heatkeep::PlanBars</name>
    <message numerus="yes">
        <source>%n piece(s) of the plan</source>
        <translation>
            <numerusform>%n piece of the plan</numerusform>
            <numerusform>%n pieces of the plan</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>heatkeep::PlanStation</name>
    <message numerus="yes">
        <source>%n line(s), </source>
        <translation>
            <numerusform>%n line, </numerusform>
            <numerusform>%n lines, </numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s) to be cut</source>
        <translation>
            <numerusform>%n piece to be cut</numerusform>
            <numerusform>%n pieces to be cut</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %2 pieces open, %n line(s)</source>
        <translation>
            <numerusform>%1 of %2 pieces open, %n line</numerusform>
            <numerusform>%1 of %2 pieces open, %n lines</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 pieces of %n cut list(s), as one</source>
        <translation>
            <numerusform>%1 pieces of %n cut list, as one</numerusform>
            <numerusform>%1 pieces of %n cut lists, as one</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>at most %n heat(s)</source>
        <translation>
            <numerusform>at most %n heat</numerusform>
            <numerusform>at most %n heats</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>heatkeep::PlanWork</name>
    <message numerus="yes">
        <source>plan %1 is cancelled: %n piece(s) are free again; what is at the saw stays</source>
        <translation>
            <numerusform>plan %1 is cancelled: %n piece is free again; what is at the saw stays</numerusform>
            <numerusform>plan %1 is cancelled: %n pieces are free again; what is at the saw stays</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>heatkeep::RackMapView</name>
    <message numerus="yes">
        <source>%1: %n piece(s), %2</source>
        <translation>
            <numerusform>%1: %n piece, %2</numerusform>
            <numerusform>%1: %n pieces, %2</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>heatkeep::RackStation</name>
    <message numerus="yes">
        <source>%n piece(s) nobody used for a year: sell, use or bin</source>
        <translation>
            <numerusform>%n piece nobody used for a year: sell, use or bin</numerusform>
            <numerusform>%n pieces nobody used for a year: sell, use or bin</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n drop(s), %2, %3</source>
        <translation>
            <numerusform>%1: %n drop, %2, %3</numerusform>
            <numerusform>%1: %n drops, %2, %3</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s) of ours</source>
        <translation>
            <numerusform>%n piece of ours</numerusform>
            <numerusform>%n pieces of ours</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n drop(s), %1</source>
        <translation>
            <numerusform>%n drop, %1</numerusform>
            <numerusform>%n drops, %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s) have no price</source>
        <translation>
            <numerusform>%n piece has no price</numerusform>
            <numerusform>%n pieces have no price</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s). Enter: papers. Ctrl+E: keep as CSV</source>
        <translation>
            <numerusform>%n piece. Enter: papers. Ctrl+E: keep as CSV</numerusform>
            <numerusform>%n pieces. Enter: papers. Ctrl+E: keep as CSV</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>heatkeep::ReceivingStation</name>
    <message numerus="yes">
        <source>%n line(s) read</source>
        <translation>
            <numerusform>%n line read</numerusform>
            <numerusform>%n lines read</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n label(s) out: %1</source>
        <translation>
            <numerusform>%n label out: %1</numerusform>
            <numerusform>%n labels out: %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>heatkeep::ReceivingWork</name>
    <message numerus="yes">
        <source>Note %1: %n bar(s) received, %2 by theory</source>
        <translation>
            <numerusform>Note %1: %n bar received, %2 by theory</numerusform>
            <numerusform>Note %1: %n bars received, %2 by theory</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n bars</source>
        <translation>
            <numerusform>%n bar</numerusform>
            <numerusform>%n bars</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>the putting away of %n piece(s) at %1</source>
        <translation>
            <numerusform>the putting away of %n piece at %1</numerusform>
            <numerusform>the putting away of %n pieces at %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>bundle %1, %n bar(s), lies at %2</source>
        <translation>
            <numerusform>bundle %1, %n bar, lies at %2</numerusform>
            <numerusform>bundle %1, %n bars, lies at %2</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>heatkeep::RowView</name>
    <message numerus="yes">
        <source>%n row(s)</source>
        <translation>
            <numerusform>%n row</numerusform>
            <numerusform>%n rows</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>heatkeep::SawStation</name>
    <message numerus="yes">
        <source>%n piece(s) for %1/%2, %3</source>
        <translation>
            <numerusform>%n piece for %1/%2, %3</numerusform>
            <numerusform>%n pieces for %1/%2, %3</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>heatkeep::SawWork</name>
    <message numerus="yes">
        <source>%n piece(s) are short; the planner sees it</source>
        <translation>
            <numerusform>%n piece is short; the planner sees it</numerusform>
            <numerusform>%n pieces are short; the planner sees it</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>the book is back: %n deed(s) kept here are booked</source>
        <translation>
            <numerusform>the book is back: %n deed kept here is booked</numerusform>
            <numerusform>the book is back: %n deeds kept here are booked</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>heatkeep::StartWork</name>
    <message numerus="yes">
        <source>%n piece(s) are in the book, each with its tag; their labels wait to be printed</source>
        <translation>
            <numerusform>%n piece is in the book, with its tag; its label waits to be printed</numerusform>
            <numerusform>%n pieces are in the book, each with its tag; their labels wait to be printed</numerusform>
        </translation>
    </message>
</context>
</TS>
