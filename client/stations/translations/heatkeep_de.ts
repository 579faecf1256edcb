<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE" sourcelanguage="en_US">
<context>
    <name>Planning</name>
    <message>
        <source>nothing left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 scrap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>full bar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>heat %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>owned by %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at the saw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>WHAT IS CUT</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>THE PIECE</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no heat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>papers %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lies in %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>least money</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fewest full bars</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>least metres pulled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drops first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>saw %1: nothing of it can be cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>saw %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing is open that a saw here takes</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n drop(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>no full bar</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n full bar(s), %1</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n rest(s) kept, %1</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>scrap %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n set-up(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>, </source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%1/%2, %3 %4: %n missing: %5</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>too large for the saws: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>opens a full bar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 dearer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cheaper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>WHY NOT ANOTHER</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing else that is free holds its cuts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>NOT THERE?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing else held its cuts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>THE PLAN</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>way out: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saw %1   %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>heatkeep::BalanceBarView</name>
    <message>
        <source>metal balance: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>heatkeep::CountingStation</name>
    <message>
        <source>Freeze this place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured length of the next tag; empty: not measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measure it, type it, scan the tag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A piece without a tag: section</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>round 80</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its length, measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>marks seen on it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Count it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scan a tag: it ticks in here. What should lie here is not shown; count what does.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All is scanned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing differs: what was counted is what the book says.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the differences come from, or what was looked for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>looked under the rack; asked saw 2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Approve the count</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give it up, count again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To be heeded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Book %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counted %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Off %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Worth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is to be counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Count %1?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A place that the planner freezes shows up here by itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Once it is frozen nothing is taken from it or put in it, and plans leave it alone, until its count is approved or given up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Being counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To be approved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>frozen by %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>counted by %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n tag(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Places</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No place is being counted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scan every tag that lies at %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n counted</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>no tag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is counted: look at what differs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n tag(s) were counted by %1. The differences are looked at by the planner or the owner; until then nothing moves here.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n tag(s), %1 counted by %2; not found %3; in all %4, worth %5</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>not found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>belongs elsewhere</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>other length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>without a tag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A COUNT IS BLIND</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whoever counts is not told what should lie there. Count what you see, also what belongs elsewhere or has no tag.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>NOTHING PUTS ITSELF RIGHT</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Differences change nothing until another person than the counter signs for them. Worth above %1 is signed by the owner.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>WHAT AN APPROVAL DOES</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not found: missing, its metal unexplained until it turns up. Belongs elsewhere: it lies here from now on. Other length: what was measured. Without a tag: unknown metal in quarantine, never taken for the missing one by its looks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is not frozen: the planner freezes a place before it is counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counting</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>heatkeep::CountingWork</name>
    <message>
        <source>the answer got lost: it is asked again when the book is back, and is done once</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the book cannot be reached: nothing is counted; go on when it is back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1. What carries it is counted as a piece without a tag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is frozen: nothing is taken from it or put in it until its count is approved or given up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>free %1 again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>taken back at once</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the book has no metal under this tag any more: quality looks at it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in the book it is %1: leave it here, it is noted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the book has it at %1; leave it here, it is noted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 counted; %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>without a tag; marks: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 without a tag is counted: it waits in quarantine once the count is approved</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%1 is counted, %n piece(s): another person looks at the differences. To count it again, the planner gives this count up and freezes it anew</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>the count of %1 is approved and the place is free</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is missing: its metal stays unexplained until it turns up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what had no tag is %1, unknown, in quarantine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the count of %1 is given up: nothing was changed, and the place is free</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>heatkeep::DeedButton</name>
    <message>
        <source>the login %1 may not do this</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>heatkeep::DeliveryForm</name>
    <message>
        <source>Delivery note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bars counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note says</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heat as read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weighed kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>metal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mill&apos;s tag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as marked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Section</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>round 80, round 2 in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of one bar, measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Condition</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as rolled, +QT</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>who made it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Papers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>awaited</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none come with it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heat on note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>where it says one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Laid at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the gate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Owner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Owner&apos;s ref.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of a customer&apos;s metal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bundle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>name on the strap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weighed %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>heatkeep::DeskWindow</name>
    <message>
        <source>%1: nothing here is called that</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>scan or type: a tag, a heat, an order, a place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>scan field</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+%1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>logged in as %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the book can be reached again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The book cannot be reached; what is shown may be old. It is tried again all the time. (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo: %1   Ctrl+Z</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>heatkeep::FamilyTreeView</name>
    <message>
        <source>family tree</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>HELD, </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> from %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, heat %1 %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>heatkeep::GateWords</name>
    <message>
        <source>THE NOTE AGAINST THE METAL</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bars: note %1, metal %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>heat: note %1, metal %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ORDERED</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 x %2 %3 %4, %5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 came before; due %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no papers ordered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>papers ordered: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kept for: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>HEAT %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>in the book: %n bar(s) of %1 %2, %3, note %4 of %5</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>came never before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PAPERS AWAITED FROM %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>, %n day(s) late</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1  %2, %n piece(s)%3</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s) with this line</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>WHAT WAITS IN QUARANTINE</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is received and tagged, kept apart, and cannot be promised or cut until quality looks at it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A WRONG RECEIPT</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Z right after it reverses it, while nothing of it has gone on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>is reversed by quality, with the reason; nothing is erased.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>heatkeep::LengthBarsView</name>
    <message>
        <source>%1 drops by length; asked for: %2 pieces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No drops of it: what is left of a cut and long enough shows up here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>- - asked for in the past, at most %1 of a class</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drops by length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kept from %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>heatkeep::LineJudge</name>
    <message>
        <source>theory %1, weighed %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 short</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 heavy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 - length or section is not what the note says</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>counted %1 + %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>counted %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, the note says %2: %3 short</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, the note says %2: %3 more wait until the planner decides</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its heat could not be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the heats disagree: %1 on the metal, %2 on the note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>looks like heat %1, which is in the book: O or 0, I or 1, S or 5, B or 8? Read it again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>heat %1 of %2 is %3 in the book: read both again; where they stay so, say &quot;cannot be read&quot; and quality looks at it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ordered %1 %2, marked %3 %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ordered %1 long</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how many bars are there? Count them; the note&apos;s number stands beside it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>which heat is on the metal? Where nothing can be read, say &quot;cannot be read&quot;: it waits in quarantine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>which grade is marked?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>which mill made it? Two mills can use the same number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>theory %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>heatkeep::PapersStation</name>
    <message>
        <source>The book knows no tag, heat, order, place, document or note &quot;%1&quot;. Heats are kept exactly as read: O and 0 are two.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: nothing in the book is called that</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lift the hold again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>placed by mistake</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>HOLD ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lift the hold ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Certificate package</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>package</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trace record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trace</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For a decision</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>conflict</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Held</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Papers awaited</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) late</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing waits for papers or a decision.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was decided, and why? It closes the conflict.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which heat, piece or order?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type or scan anything: where it is from, its papers, where the rest of it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>HELD: %1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PAPERS</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 no. %2, %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>replaced by a later version</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>filed, not accepted yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>accepted by %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>typed, no file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>file kept, SHA-256 %1...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none in the book</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>HOLD %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ALSO CALLED THAT</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>WHAT HAPPENED</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This compares and reports what the book holds. It replaces neither the standard nor the person responsible.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why is it held? Enter holds it at once, for everybody.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What shows that %1 %2 may be used? (the hold was: %3)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To which file? It ends in .pdf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>expected a name that ends in .pdf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Papers</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>heatkeep::PapersWork</name>
    <message>
        <source>%1 %2 is held: nothing of it is promised, pulled or shipped from now on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the hold is lifted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the conflict is closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no package of %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>the package of %1 is in %2: %n page(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>the record is in %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>heatkeep::PieceBarView</name>
    <message>
        <source>the piece, %1 long</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>keep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>scrap</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>heatkeep::PlanBars</name>
    <message numerus="yes">
        <source>%n piece(s) of the plan</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>keep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>scrap</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>heatkeep::PlanPane</name>
    <message>
        <source>%1 - in hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>and %n more line(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>heatkeep::PlanStation</name>
    <message>
        <source>Line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Section</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Due</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Papers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is being planned. Esc: the best so far</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is being planned: %1. Esc: the best so far</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>saw to plan for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>each line where it fits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is open here. A cut list that comes in shows up at the left by itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n line(s), </source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s) to be cut</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Promise it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Second aim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The other</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not this piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another instead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Search a minute</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pick list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cancel plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Forget it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Best so far</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>due %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To be planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%1 of %2 pieces open, %n line(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>All that is open</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%1 pieces of %n cut list(s), as one</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Promised</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan %1, saw %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No cut list has anything open. `heatkeep cutlist add` takes one in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>saw %1 only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing waits to be planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut list %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 against %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>saw %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>made by %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>made by %1, due %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cut, %2 promised, %3 open of %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>papers %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>priority %1 (1 is highest)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>condition %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all of one heat</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>at most %n heat(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>from metal that %1 owns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why is %1 not to be taken?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which one instead of %1? Its number: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: expected a number from 1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why %1 instead of %2?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why is plan %1 cancelled? What is at the saw stays.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the pick list of plan %1 is out: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the pick list of plan %1 is not out: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cancel plan %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cancel these plans</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>taken back after it was promised</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>heatkeep::PlanWork</name>
    <message>
        <source>plan %1 is promised: saw %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1. Planned again: look, and promise again</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>plan %1 is cancelled: %n piece(s) are free again; what is at the saw stays</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>heatkeep::RackMapView</name>
    <message>
        <source>rack map</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%1: %n piece(s), %2</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source> of %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>heatkeep::RackStation</name>
    <message>
        <source>Only what nobody used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No drops. What is left of a cut, and is long enough to be kept, shows up here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>where it lies: load of each place, number of pieces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mass %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days still</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As scrap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As new</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Section</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rack is being read ...</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Everything was used within a year</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s) nobody used for a year: sell, use or bin</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n drop(s), %2, %3</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Whole rack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>. What nobody used: %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s) of ours</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n drop(s), %1</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing of ours is in the rack.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s); Enter shows the papers, Ctrl+E keeps the table as CSV</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>DROPS ARE WORTH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>DROPS ARE WORTH, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as scrap %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by expected use %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as new %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s) have no price</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>AGE</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this quarter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one quarter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>two quarters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>three quarters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a year and more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print to a file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 cannot be written</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>printed to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rack</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>heatkeep::ReceivingStation</name>
    <message>
        <source>Photo of the mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos (*.jpg *.jpeg *.png)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Receive the note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change this line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>scan or type the place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Labels that wait</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PHOTO</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This note</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n line(s) read</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>no heat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 x %2 %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To put away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Expected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 / %2  %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 x %2 %3, %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>due %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something not ordered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read it as it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read for this note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is it? Read it from the metal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Order %1, line %2: count it, read its heat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where does %1 lie?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where do these %1 bars lie?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 x %2 %3 %4   heat %5   %6, %7</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>strapped as %1: it goes as one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The place alone: all of them. A tag, then the place: that one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line %1 is read; F1 receives the whole note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>which delivery note is it? Type its number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the photo is kept with this line, and with its first bar when the note is received</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: now its place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is a place: choose first what is put there, or scan its tag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>heat %1 is from the mill&apos;s tag: does the metal say the same?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the labels are not out: %1. They stay in the queue; F4 prints them again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no label of these waits</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n label(s) out: %1</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Receiving</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>heatkeep::ReceivingWork</name>
    <message>
        <source>the answer got lost: it is asked again when the book is back, and is done once</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the note under way is of %1, order %2: receive it first, then read order %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the book cannot be reached: what was typed stays here, do it when the book is back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no line of the note is read yet: pick a line, count the bars, read the heat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>which delivery note is it? Type its number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>who delivered? Type the supplier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line %1: %2%3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> - in quarantine</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Note %1: %n bar(s) received, %2 by theory</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>reverse the receipt of note %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1. Wrong? Quality reverses a receipt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>taken back at the gate at once</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the receipt of note %1 is reversed: it may be read anew</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n bars</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>%1 lies at %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 lie at %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>back to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the photo %1 cannot be read: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the photo is kept with %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the photo of %1 is not kept: %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>heatkeep::RowView</name>
    <message>
        <source>show only rows with these words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>filter</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n row(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>No row has these words.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep as CSV</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not kept</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>heatkeep::SawStation</name>
    <message>
        <source>CUT AS PLANNED</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>NEXT STOP</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>REST</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>FEWER</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>NOT THERE</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not in its place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>SHORT</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>BAD METAL</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>NO MARK</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its mark cannot be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>scan the piece first: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which saw is this?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say it in the settings: Ctrl+,</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing waits for saw %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A plan made for this saw shows up here by itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where does %1 lie?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scan its place; Enter: where the piece came from.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>LEAVE IT THERE</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>due %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in the saw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No plan waits for this saw.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fetch %1 from %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as the metal says</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1  %2   heat %3   %4   %5, %6</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop at</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s) for %1/%2, %3</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>longer than the stop: feed %1 times, one cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>WHAT IS CUT</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MARK</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PAPERS</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>owned by %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>NOT THERE?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing else held its cuts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>THE PLAN</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How long is %1 really? (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All is cut. How long is what is left? (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many good pieces for %1 were cut, of %2? The piece is done then.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>expected a number from 0 to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fewer cut than planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is wrong with %1?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the label of %1 is not out: %2. It stays in the queue; write the tag on the metal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the label of %1 is not out: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saw</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>heatkeep::SawWork</name>
    <message>
        <source>%1 is not on the sheets that were read before the book went away: take %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is in the saw; kept here until the book is back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is the right one: clamp it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; what is left is %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; kept here until the book is back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 lies at %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the book cannot be reached, so nothing can be planned anew: go on with another piece of the sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing is cut from %1: take it from the saw</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s) are short; the planner sees it</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Planned anew: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing else changes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the answer got lost: it is asked again when the book is back, and is done once</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the book cannot be reached, and this desk keeps no deeds: note it down; the settings name a file for them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deeds that %1 did are still kept here: %1 logs in and sends them</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>the book is back: %n deed(s) kept here are booked</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>; for the lead: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>heatkeep::SettingsPage</name>
    <message>
        <source>Settings of this desk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lengths in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>millimetres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inches with fractions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inches with decimals</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Masses in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kilograms</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as the system</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Language (from the next start)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This desk stands at saw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deeds kept while the book is away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a file that `heatkeep saw block` made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Label printer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its name in the system; empty: labels as files</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Folder for labels as files</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Printer for sheets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its name in the system; empty: sheets as files</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Folder for sheets as files</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The scanner sends first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing: a scan is known by its speed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Longest pause within a scan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave as it was</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>heatkeep::WaitingList</name>
    <message>
        <source>what waits</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>heatkeep::YieldView</name>
    <message>
        <source>no yield yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yield, last month %1 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yield by month: shown from the second month of cutting on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yield by month</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>month</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>good of used</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
