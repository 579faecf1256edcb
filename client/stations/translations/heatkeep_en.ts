<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en_US" sourcelanguage="en_US">
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
    <name>heatkeep::PlanPane</name>
    <message numerus="yes">
        <source>and %n more line(s)</source>
        <translation>
            <numerusform>and %n more line</numerusform>
            <numerusform>and %n more lines</numerusform>
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
        <source>%n piece(s); Enter shows the papers, Ctrl+E keeps the table as CSV</source>
        <translation>
            <numerusform>%n piece; Enter shows the papers, Ctrl+E keeps the table as CSV</numerusform>
            <numerusform>%n pieces; Enter shows the papers, Ctrl+E keeps the table as CSV</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s) have no price</source>
        <translation>
            <numerusform>%n piece has no price</numerusform>
            <numerusform>%n pieces have no price</numerusform>
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
</TS>
