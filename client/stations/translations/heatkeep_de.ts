<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE" sourcelanguage="en_US">
<context>
    <name>Planning</name>
    <message>
        <source>nothing left</source>
        <translation>nichts übrig</translation>
    </message>
    <message>
        <source>%1 kept</source>
        <translation>%1 behalten</translation>
    </message>
    <message>
        <source>%1 scrap</source>
        <translation>%1 Schrott</translation>
    </message>
    <message>
        <source>full bar</source>
        <translation>volle Stange</translation>
    </message>
    <message>
        <source>drop</source>
        <translation>Reststück</translation>
    </message>
    <message>
        <source>heat %1</source>
        <translation>Schmelze %1</translation>
    </message>
    <message>
        <source>owned by %1</source>
        <translation>gehört %1</translation>
    </message>
    <message>
        <source>at the saw</source>
        <translation>an der Säge</translation>
    </message>
    <message>
        <source>cut</source>
        <translation>gesägt</translation>
    </message>
    <message>
        <source>WHAT IS CUT</source>
        <translation>WAS GESÄGT WIRD</translation>
    </message>
    <message>
        <source>THE PIECE</source>
        <translation>DAS STÜCK</translation>
    </message>
    <message>
        <source>no heat</source>
        <translation>keine Schmelze</translation>
    </message>
    <message>
        <source>papers %1</source>
        <translation>Papiere %1</translation>
    </message>
    <message>
        <source>lies in %1</source>
        <translation>liegt auf %1</translation>
    </message>
    <message>
        <source>least money</source>
        <translation>geringste Kosten</translation>
    </message>
    <message>
        <source>fewest full bars</source>
        <translation>wenigste volle Stangen</translation>
    </message>
    <message>
        <source>least metres pulled</source>
        <translation>wenigste Meter entnommen</translation>
    </message>
    <message>
        <source>drops first</source>
        <translation>Reststücke zuerst</translation>
    </message>
    <message>
        <source>saw %1: nothing of it can be cut</source>
        <translation>Säge %1: nichts davon lässt sich sägen</translation>
    </message>
    <message>
        <source>saw %1: %2</source>
        <translation>Säge %1: %2</translation>
    </message>
    <message>
        <source>nothing is open that a saw here takes</source>
        <translation>nichts offen, was eine Säge hier nimmt</translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s)</source>
        <translation>
            <numerusform>%n Stück</numerusform>
            <numerusform>%n Stück</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n drop(s)</source>
        <translation>
            <numerusform>%n Reststück</numerusform>
            <numerusform>%n Reststücke</numerusform>
        </translation>
    </message>
    <message>
        <source>no full bar</source>
        <translation>keine volle Stange</translation>
    </message>
    <message numerus="yes">
        <source>%n full bar(s), %1</source>
        <translation>
            <numerusform>%n volle Stange, %1</numerusform>
            <numerusform>%n volle Stangen, %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n rest(s) kept, %1</source>
        <translation>
            <numerusform>%n Rest behalten, %1</numerusform>
            <numerusform>%n Reste behalten, %1</numerusform>
        </translation>
    </message>
    <message>
        <source>scrap %1</source>
        <translation>Schrott %1</translation>
    </message>
    <message numerus="yes">
        <source>%n set-up(s)</source>
        <translation>
            <numerusform>%n Umrüstung</numerusform>
            <numerusform>%n Umrüstungen</numerusform>
        </translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message numerus="yes">
        <source>%1/%2, %3 %4: %n missing: %5</source>
        <translation>
            <numerusform>%1/%2, %3 %4: %n fehlt: %5</numerusform>
            <numerusform>%1/%2, %3 %4: %n fehlen: %5</numerusform>
        </translation>
    </message>
    <message>
        <source>too large for the saws: %1</source>
        <translation>zu groß für die Sägen: %1</translation>
    </message>
    <message>
        <source>opens a full bar</source>
        <translation>bricht eine volle Stange an</translation>
    </message>
    <message>
        <source>%1 dearer</source>
        <translation>%1 teurer</translation>
    </message>
    <message>
        <source>%1 cheaper</source>
        <translation>%1 billiger</translation>
    </message>
    <message>
        <source>WHY NOT ANOTHER</source>
        <translation>WARUM KEIN ANDERES</translation>
    </message>
    <message>
        <source>nothing else that is free holds its cuts</source>
        <translation>kein anderes freies Stück fasst seine Schnitte</translation>
    </message>
    <message>
        <source>NOT THERE?</source>
        <translation>NICHT DA?</translation>
    </message>
    <message>
        <source>nothing else held its cuts</source>
        <translation>kein anderes Stück fasste seine Schnitte</translation>
    </message>
    <message>
        <source>THE PLAN</source>
        <translation>DER PLAN</translation>
    </message>
    <message>
        <source>way out: %1</source>
        <translation>Ausweg: %1</translation>
    </message>
    <message>
        <source>Saw %1   %2</source>
        <translation>Säge %1   %2</translation>
    </message>
</context>
<context>
    <name>heatkeep::BalanceBarView</name>
    <message>
        <source>metal balance: %1</source>
        <translation>Materialbilanz: %1</translation>
    </message>
</context>
<context>
    <name>heatkeep::CountingStation</name>
    <message>
        <source>Freeze this place</source>
        <translation>Platz einfrieren</translation>
    </message>
    <message>
        <source>Measured length of the next tag; empty: not measured</source>
        <translation>Gemessene Länge der nächsten Kennung; leer: nicht gemessen</translation>
    </message>
    <message>
        <source>measure it, type it, scan the tag</source>
        <translation>messen, eintippen, Kennung scannen</translation>
    </message>
    <message>
        <source>A piece without a tag: section</source>
        <translation>Stück ohne Kennung: Querschnitt</translation>
    </message>
    <message>
        <source>round 80</source>
        <translation>round 80</translation>
    </message>
    <message>
        <source>its length, measured</source>
        <translation>seine Länge, gemessen</translation>
    </message>
    <message>
        <source>marks seen on it</source>
        <translation>Kennzeichen darauf</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>Count it</source>
        <translation>Zählen</translation>
    </message>
    <message>
        <source>Scan a tag: it ticks in here. What should lie here is not shown; count what does.</source>
        <translation>Eine Kennung scannen: sie wird hier abgehakt. Was hier liegen sollte, wird nicht gezeigt; zählen, was da ist.</translation>
    </message>
    <message>
        <source>All is scanned</source>
        <translation>Alles gescannt</translation>
    </message>
    <message>
        <source>Nothing differs: what was counted is what the book says.</source>
        <translation>Keine Abweichung: gezählt ist, was das Buch sagt.</translation>
    </message>
    <message>
        <source>What the differences come from, or what was looked for</source>
        <translation>Woher die Abweichungen kommen, oder wonach gesucht wurde</translation>
    </message>
    <message>
        <source>looked under the rack; asked saw 2</source>
        <translation>unter dem Regal nachgesehen; Säge 2 gefragt</translation>
    </message>
    <message>
        <source>Approve the count</source>
        <translation>Zählung genehmigen</translation>
    </message>
    <message>
        <source>Give it up, count again</source>
        <translation>Verwerfen, neu zählen</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Kennung</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Measured %1</source>
        <translation>Gemessen %1</translation>
    </message>
    <message>
        <source>To be heeded</source>
        <translation>Zu beachten</translation>
    </message>
    <message>
        <source>Book %1</source>
        <translation>Buch %1</translation>
    </message>
    <message>
        <source>Counted %1</source>
        <translation>Gezählt %1</translation>
    </message>
    <message>
        <source>Off %1</source>
        <translation>Abw. %1</translation>
    </message>
    <message>
        <source>Worth</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Nothing is to be counted</source>
        <translation>Nichts zu zählen</translation>
    </message>
    <message>
        <source>Count %1?</source>
        <translation>%1 zählen?</translation>
    </message>
    <message>
        <source>A place that the planner freezes shows up here by itself.</source>
        <translation>Ein Platz, den die Planung einfriert, erscheint hier von selbst.</translation>
    </message>
    <message>
        <source>Once it is frozen nothing is taken from it or put in it, and plans leave it alone, until its count is approved or given up.</source>
        <translation>Ist er eingefroren, wird nichts entnommen oder eingelagert, und Pläne lassen ihn aus, bis seine Zählung genehmigt oder verworfen ist.</translation>
    </message>
    <message>
        <source>Being counted</source>
        <translation>Wird gezählt</translation>
    </message>
    <message>
        <source>To be approved</source>
        <translation>Zu genehmigen</translation>
    </message>
    <message>
        <source>frozen by %1</source>
        <translation>eingefroren von %1</translation>
    </message>
    <message>
        <source>counted by %1</source>
        <translation>gezählt von %1</translation>
    </message>
    <message numerus="yes">
        <source>%n tag(s)</source>
        <translation>
            <numerusform>%n Kennung</numerusform>
            <numerusform>%n Kennungen</numerusform>
        </translation>
    </message>
    <message>
        <source>Places</source>
        <translation>Plätze</translation>
    </message>
    <message>
        <source>No place is being counted.</source>
        <translation>Kein Platz wird gezählt.</translation>
    </message>
    <message>
        <source>Scan every tag that lies at %1</source>
        <translation>Jede Kennung scannen, die auf %1 liegt</translation>
    </message>
    <message numerus="yes">
        <source>%n counted</source>
        <translation>
            <numerusform>%n gezählt</numerusform>
            <numerusform>%n gezählt</numerusform>
        </translation>
    </message>
    <message>
        <source>no tag</source>
        <translation>keine Kennung</translation>
    </message>
    <message>
        <source>%1 is counted: look at what differs</source>
        <translation>%1 ist gezählt: Abweichungen ansehen</translation>
    </message>
    <message>
        <source>%1 is counted</source>
        <translation>%1 ist gezählt</translation>
    </message>
    <message numerus="yes">
        <source>%n tag(s) were counted by %1. The differences are looked at by the planner or the owner; until then nothing moves here.</source>
        <translation>
            <numerusform>%n Kennung wurde von %1 gezählt. Die Abweichungen sieht sich die Planung oder der Inhaber an; bis dahin bewegt sich hier nichts.</numerusform>
            <numerusform>%n Kennungen wurden von %1 gezählt. Die Abweichungen sieht sich die Planung oder der Inhaber an; bis dahin bewegt sich hier nichts.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n tag(s), %1 counted by %2; not found %3; in all %4, worth %5</source>
        <translation>
            <numerusform>%n Kennung, %1 gezählt von %2; nicht gefunden %3; insgesamt %4, Wert %5</numerusform>
            <numerusform>%n Kennungen, %1 gezählt von %2; nicht gefunden %3; insgesamt %4, Wert %5</numerusform>
        </translation>
    </message>
    <message>
        <source>not found</source>
        <translation>nicht gefunden</translation>
    </message>
    <message>
        <source>belongs elsewhere</source>
        <translation>gehört woandershin</translation>
    </message>
    <message>
        <source>other length</source>
        <translation>andere Länge</translation>
    </message>
    <message>
        <source>without a tag</source>
        <translation>ohne Kennung</translation>
    </message>
    <message>
        <source>A COUNT IS BLIND</source>
        <translation>GEZÄHLT WIRD BLIND</translation>
    </message>
    <message>
        <source>Whoever counts is not told what should lie there. Count what you see, also what belongs elsewhere or has no tag.</source>
        <translation>Wer zählt, erfährt nicht, was dort liegen sollte. Zählen, was zu sehen ist, auch was woandershin gehört oder keine Kennung hat.</translation>
    </message>
    <message>
        <source>NOTHING PUTS ITSELF RIGHT</source>
        <translation>NICHTS BERICHTIGT SICH SELBST</translation>
    </message>
    <message>
        <source>Differences change nothing until another person than the counter signs for them. Worth above %1 is signed by the owner.</source>
        <translation>Abweichungen ändern nichts, bis eine andere Person als der Zähler dafür unterschreibt. Ab einem Wert über %1 unterschreibt der Inhaber.</translation>
    </message>
    <message>
        <source>WHAT AN APPROVAL DOES</source>
        <translation>WAS EINE GENEHMIGUNG BEWIRKT</translation>
    </message>
    <message>
        <source>Not found: missing, its metal unexplained until it turns up. Belongs elsewhere: it lies here from now on. Other length: what was measured. Without a tag: unknown metal in quarantine, never taken for the missing one by its looks.</source>
        <translation>Nicht gefunden: fehlt, sein Material bleibt ungeklärt, bis es auftaucht. Gehört woandershin: liegt ab jetzt hier. Andere Länge: es gilt die gemessene. Ohne Kennung: unbekanntes Material in Quarantäne, nie nach dem Aussehen für das fehlende gehalten.</translation>
    </message>
    <message>
        <source>%1 is not frozen: the planner freezes a place before it is counted</source>
        <translation>%1 ist nicht eingefroren: die Planung friert einen Platz ein, bevor er gezählt wird</translation>
    </message>
    <message>
        <source>Counting</source>
        <translation>Zählung</translation>
    </message>
</context>
<context>
    <name>heatkeep::CountingWork</name>
    <message>
        <source>the answer got lost: it is asked again when the book is back, and is done once</source>
        <translation>die Antwort ging verloren: es wird erneut gefragt, sobald das Buch wieder da ist, und nur einmal ausgeführt</translation>
    </message>
    <message>
        <source>the book cannot be reached: nothing is counted; go on when it is back</source>
        <translation>das Buch ist nicht erreichbar: nichts wird gezählt; weitermachen, sobald es wieder da ist</translation>
    </message>
    <message>
        <source>%1 - what carries it is counted as a piece without a tag</source>
        <translation>%1. Was diese Kennung trägt, wird als Stück ohne Kennung gezählt</translation>
    </message>
    <message>
        <source>%1 is frozen: nothing is taken from it or put in it until its count is approved or given up</source>
        <translation>%1 ist eingefroren: nichts wird entnommen oder eingelagert, bis die Zählung genehmigt oder verworfen ist</translation>
    </message>
    <message>
        <source>free %1 again</source>
        <translation>%1 wieder freigeben</translation>
    </message>
    <message>
        <source>taken back at once</source>
        <translation>gleich wieder zurückgenommen</translation>
    </message>
    <message>
        <source>the book has no metal under this tag any more: quality looks at it</source>
        <translation>das Buch hat kein Material mehr unter dieser Kennung: die QS sieht es sich an</translation>
    </message>
    <message>
        <source>in the book it is %1: leave it here, it is noted</source>
        <translation>im Buch ist es %1: hier liegen lassen, es ist vermerkt</translation>
    </message>
    <message>
        <source>the book has it at %1; leave it here, it is noted</source>
        <translation>laut Buch liegt es auf %1; hier liegen lassen, es ist vermerkt</translation>
    </message>
    <message>
        <source>%1 counted</source>
        <translation>%1 gezählt</translation>
    </message>
    <message>
        <source>%1 counted; %2</source>
        <translation>%1 gezählt; %2</translation>
    </message>
    <message>
        <source>without a tag; marks: %1</source>
        <translation>ohne Kennung; Kennzeichen: %1</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>%1 without a tag is counted: it waits in quarantine once the count is approved</source>
        <translation>%1 ohne Kennung ist gezählt: es wartet in Quarantäne, sobald die Zählung genehmigt ist</translation>
    </message>
    <message numerus="yes">
        <source>%1 is counted, %n piece(s): another person looks at the differences. To count it again, the planner gives this count up and freezes it anew</source>
        <translation>
            <numerusform>%1 ist gezählt, %n Stück: eine andere Person sieht sich die Abweichungen an. Zum Nachzählen verwirft die Planung diese Zählung und friert den Platz neu ein</numerusform>
            <numerusform>%1 ist gezählt, %n Stück: eine andere Person sieht sich die Abweichungen an. Zum Nachzählen verwirft die Planung diese Zählung und friert den Platz neu ein</numerusform>
        </translation>
    </message>
    <message>
        <source>the count of %1 is approved and the place is free</source>
        <translation>die Zählung von %1 ist genehmigt und der Platz ist frei</translation>
    </message>
    <message>
        <source>%1 is missing: its metal stays unexplained until it turns up</source>
        <translation>%1 fehlt: sein Material bleibt ungeklärt, bis es auftaucht</translation>
    </message>
    <message>
        <source>what had no tag is %1, unknown, in quarantine</source>
        <translation>was keine Kennung hatte, ist jetzt %1, unbekannt, in Quarantäne</translation>
    </message>
    <message>
        <source>the count of %1 is given up: nothing was changed, and the place is free</source>
        <translation>die Zählung von %1 ist verworfen: nichts wurde geändert, und der Platz ist frei</translation>
    </message>
</context>
<context>
    <name>heatkeep::DeedButton</name>
    <message>
        <source>the login %1 may not do this</source>
        <translation>die Anmeldung %1 darf das nicht</translation>
    </message>
</context>
<context>
    <name>heatkeep::DeliveryForm</name>
    <message>
        <source>Delivery note</source>
        <translation>Lieferschein</translation>
    </message>
    <message>
        <source>Supplier</source>
        <translation>Lieferant</translation>
    </message>
    <message>
        <source>Bars counted</source>
        <translation>Stangen gezählt</translation>
    </message>
    <message>
        <source>note says</source>
        <translation>laut Schein</translation>
    </message>
    <message>
        <source>Heat as read</source>
        <translation>Schmelze, gelesen</translation>
    </message>
    <message>
        <source>read from</source>
        <translation>gelesen von</translation>
    </message>
    <message>
        <source>Weighed kg</source>
        <translation>Gewogen kg</translation>
    </message>
    <message>
        <source>metal</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>mill&apos;s tag</source>
        <translation>Werksetikett</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>nicht lesbar</translation>
    </message>
    <message>
        <source>Grade</source>
        <translation>Werkstoff</translation>
    </message>
    <message>
        <source>as marked</source>
        <translation>laut Kennzeichen</translation>
    </message>
    <message>
        <source>Section</source>
        <translation>Querschnitt</translation>
    </message>
    <message>
        <source>round 80, round 2 in</source>
        <translation>round 80, round 2 in</translation>
    </message>
    <message>
        <source>Length mm</source>
        <translation>Länge mm</translation>
    </message>
    <message>
        <source>of one bar, measured</source>
        <translation>einer Stange, gemessen</translation>
    </message>
    <message>
        <source>Condition</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>as rolled, +QT</source>
        <translation>as rolled, +QT</translation>
    </message>
    <message>
        <source>Mill</source>
        <translation>Werk</translation>
    </message>
    <message>
        <source>who made it</source>
        <translation>Hersteller</translation>
    </message>
    <message>
        <source>Papers</source>
        <translation>Papiere</translation>
    </message>
    <message>
        <source>awaited</source>
        <translation>erwartet</translation>
    </message>
    <message>
        <source>none come with it</source>
        <translation>keine dabei</translation>
    </message>
    <message>
        <source>Heat on note</source>
        <translation>Schmelze lt. Schein</translation>
    </message>
    <message>
        <source>where it says one</source>
        <translation>wo eine angegeben ist</translation>
    </message>
    <message>
        <source>Laid at</source>
        <translation>Abgelegt</translation>
    </message>
    <message>
        <source>the gate</source>
        <translation>am Tor</translation>
    </message>
    <message>
        <source>Owner</source>
        <translation>Eigentümer</translation>
    </message>
    <message>
        <source>ours</source>
        <translation>wir</translation>
    </message>
    <message>
        <source>Owner&apos;s ref.</source>
        <translation>Eigentümer-Ref.</translation>
    </message>
    <message>
        <source>of a customer&apos;s metal</source>
        <translation>bei Kundenmaterial</translation>
    </message>
    <message>
        <source>Bundle</source>
        <translation>Bund</translation>
    </message>
    <message>
        <source>name on the strap</source>
        <translation>Name am Band</translation>
    </message>
    <message>
        <source>Weighed %1</source>
        <translation>Gewogen %1</translation>
    </message>
    <message>
        <source>Length %1</source>
        <translation>Länge %1</translation>
    </message>
</context>
<context>
    <name>heatkeep::DeskWindow</name>
    <message>
        <source>%1: nothing here is called that</source>
        <translation>%1: so heißt hier nichts</translation>
    </message>
    <message>
        <source>scan or type: a tag, a heat, an order, a place</source>
        <translation>scannen oder tippen: Kennung, Schmelze, Auftrag, Platz</translation>
    </message>
    <message>
        <source>scan field</source>
        <translation>Scanfeld</translation>
    </message>
    <message>
        <source>Ctrl+%1</source>
        <translation>Strg+%1</translation>
    </message>
    <message>
        <source>logged in as %1</source>
        <translation>angemeldet als %1</translation>
    </message>
    <message>
        <source>the book can be reached again</source>
        <translation>das Buch ist wieder erreichbar</translation>
    </message>
    <message>
        <source>The book cannot be reached; what is shown may be old. It is tried again all the time. (%1)</source>
        <translation>Das Buch ist nicht erreichbar; die Anzeige kann veraltet sein. Es wird laufend neu versucht. (%1)</translation>
    </message>
    <message>
        <source>Undo: %1   Ctrl+Z</source>
        <translation>Rückgängig: %1   Strg+Z</translation>
    </message>
</context>
<context>
    <name>heatkeep::FamilyTreeView</name>
    <message>
        <source>family tree</source>
        <translation>Stammbaum</translation>
    </message>
    <message>
        <source>left</source>
        <translation>Rest</translation>
    </message>
    <message>
        <source>HELD, </source>
        <translation>GESPERRT, </translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source> from %1</source>
        <translation> aus %1</translation>
    </message>
    <message>
        <source>, heat %1 %2</source>
        <translation>, Schmelze %1 %2</translation>
    </message>
</context>
<context>
    <name>heatkeep::GateWords</name>
    <message>
        <source>THE NOTE AGAINST THE METAL</source>
        <translation>LIEFERSCHEIN GEGEN MATERIAL</translation>
    </message>
    <message>
        <source>bars: note %1, metal %2</source>
        <translation>Stangen: Lieferschein %1, Material %2</translation>
    </message>
    <message>
        <source>heat: note %1, metal %2</source>
        <translation>Schmelze: Lieferschein %1, Material %2</translation>
    </message>
    <message>
        <source>ORDERED</source>
        <translation>BESTELLT</translation>
    </message>
    <message>
        <source>%1 x %2 %3 %4, %5</source>
        <translation>%1 x %2 %3 %4, %5</translation>
    </message>
    <message>
        <source>%1 came before; due %2</source>
        <translation>bisher gekommen: %1; fällig %2</translation>
    </message>
    <message>
        <source>no papers ordered</source>
        <translation>keine Papiere bestellt</translation>
    </message>
    <message>
        <source>papers ordered: %1</source>
        <translation>Papiere bestellt: %1</translation>
    </message>
    <message>
        <source>kept for: %1</source>
        <translation>reserviert für: %1</translation>
    </message>
    <message>
        <source>HEAT %1</source>
        <translation>SCHMELZE %1</translation>
    </message>
    <message numerus="yes">
        <source>in the book: %n bar(s) of %1 %2, %3, note %4 of %5</source>
        <translation>
            <numerusform>im Buch: %n Stange %1 %2, %3, Lieferschein %4 vom %5</numerusform>
            <numerusform>im Buch: %n Stangen %1 %2, %3, Lieferschein %4 vom %5</numerusform>
        </translation>
    </message>
    <message>
        <source>came never before</source>
        <translation>noch nie gekommen</translation>
    </message>
    <message>
        <source>PAPERS AWAITED FROM %1</source>
        <translation>AUSSTEHENDE PAPIERE VON %1</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message numerus="yes">
        <source>, %n day(s) late</source>
        <translation>
            <numerusform>, %n Tag verspätet</numerusform>
            <numerusform>, %n Tage verspätet</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1  %2, %n piece(s)%3</source>
        <translation>
            <numerusform>%1  %2, %n Stück%3</numerusform>
            <numerusform>%1  %2, %n Stück%3</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>und noch %n</numerusform>
            <numerusform>und noch %n</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s) with this line</source>
        <translation>
            <numerusform>%n Foto zu dieser Position</numerusform>
            <numerusform>%n Fotos zu dieser Position</numerusform>
        </translation>
    </message>
    <message>
        <source>WHAT WAITS IN QUARANTINE</source>
        <translation>WAS IN QUARANTÄNE WARTET</translation>
    </message>
    <message>
        <source>It is received and tagged, kept apart, and cannot be promised or cut until quality looks at it.</source>
        <translation>Es ist angenommen und gekennzeichnet, liegt getrennt und kann weder zugesagt noch gesägt werden, bis die QS es sich ansieht.</translation>
    </message>
    <message>
        <source>A WRONG RECEIPT</source>
        <translation>FALSCHER WARENEINGANG</translation>
    </message>
    <message>
        <source>Ctrl+Z right after it reverses it, while nothing of it has gone on.</source>
        <translation>Strg+Z gleich danach storniert ihn, solange nichts davon weitergegangen ist.</translation>
    </message>
    <message>
        <source>is reversed by quality, with the reason; nothing is erased.</source>
        <translation>wird von der QS storniert, mit Begründung; gelöscht wird nichts.</translation>
    </message>
</context>
<context>
    <name>heatkeep::LengthBarsView</name>
    <message>
        <source>%1 drops by length; asked for: %2 pieces</source>
        <translation>%1 Reststücke nach Länge; gefragt: %2 Stück</translation>
    </message>
    <message>
        <source>No drops of it: what is left of a cut and long enough shows up here.</source>
        <translation>Keine Reststücke davon: was vom Sägen übrig und lang genug ist, erscheint hier.</translation>
    </message>
    <message>
        <source>- - asked for in the past, at most %1 of a class</source>
        <translation>- - bisher gefragt, höchstens %1 je Klasse</translation>
    </message>
    <message>
        <source>drops by length</source>
        <translation>Reststücke nach Länge</translation>
    </message>
    <message>
        <source>kept from %1</source>
        <translation>behalten ab %1</translation>
    </message>
</context>
<context>
    <name>heatkeep::LineJudge</name>
    <message>
        <source>theory %1, weighed %2</source>
        <translation>theoretisch %1, gewogen %2</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>%1 short</source>
        <translation>%1 zu leicht</translation>
    </message>
    <message>
        <source>%1 heavy</source>
        <translation>%1 zu schwer</translation>
    </message>
    <message>
        <source>%1: %2 - length or section is not what the note says</source>
        <translation>%1: %2 - Länge oder Querschnitt stimmt nicht mit dem Lieferschein überein</translation>
    </message>
    <message>
        <source>counted %1 + %2</source>
        <translation>gezählt %1 + %2</translation>
    </message>
    <message>
        <source>counted %1</source>
        <translation>gezählt %1</translation>
    </message>
    <message>
        <source>%1, the note says %2: %3 short</source>
        <translation>%1, der Lieferschein sagt %2: %3 zu wenig</translation>
    </message>
    <message>
        <source>%1, the note says %2: %3 more wait until the planner decides</source>
        <translation>%1, der Lieferschein sagt %2: %3 zu viel, zurückgestellt, bis die Planung entscheidet</translation>
    </message>
    <message>
        <source>its heat could not be read</source>
        <translation>die Schmelze war nicht lesbar</translation>
    </message>
    <message>
        <source>the heats disagree: %1 on the metal, %2 on the note</source>
        <translation>die Schmelzen widersprechen sich: %1 am Material, %2 auf dem Lieferschein</translation>
    </message>
    <message>
        <source>looks like heat %1, which is in the book: O or 0, I or 1, S or 5, B or 8? Read it again</source>
        <translation>sieht aus wie Schmelze %1, die im Buch steht: O oder 0, I oder 1, S oder 5, B oder 8? Noch einmal lesen</translation>
    </message>
    <message>
        <source>heat %1 of %2 is %3 in the book: read both again; where they stay so, say &quot;cannot be read&quot; and quality looks at it</source>
        <translation>Schmelze %1 von %2 ist im Buch %3: beides noch einmal lesen; bleibt es dabei, „nicht lesbar“ wählen, und die QS sieht es sich an</translation>
    </message>
    <message>
        <source>ordered %1 %2, marked %3 %4</source>
        <translation>bestellt %1 %2, gekennzeichnet %3 %4</translation>
    </message>
    <message>
        <source>ordered %1 long</source>
        <translation>bestellt mit Länge %1</translation>
    </message>
    <message>
        <source>how many bars are there? Count them; the note&apos;s number stands beside it</source>
        <translation>wie viele Stangen sind es? Zählen; die Zahl des Lieferscheins steht daneben</translation>
    </message>
    <message>
        <source>which heat is on the metal? Where nothing can be read, say &quot;cannot be read&quot;: it waits in quarantine</source>
        <translation>welche Schmelze steht auf dem Material? Wo nichts lesbar ist, „nicht lesbar“ wählen: es wartet in Quarantäne</translation>
    </message>
    <message>
        <source>which grade is marked?</source>
        <translation>welcher Werkstoff ist gekennzeichnet?</translation>
    </message>
    <message>
        <source>which mill made it? Two mills can use the same number</source>
        <translation>welches Werk hat es hergestellt? Zwei Werke können dieselbe Nummer verwenden</translation>
    </message>
    <message>
        <source>theory %1</source>
        <translation>theoretisch %1</translation>
    </message>
</context>
<context>
    <name>heatkeep::PapersStation</name>
    <message>
        <source>The book knows no tag, heat, order, place, document or note &quot;%1&quot;. Heats are kept exactly as read: O and 0 are two.</source>
        <translation>Das Buch kennt weder Kennung, Schmelze, Auftrag, Platz, Dokument noch Lieferschein „%1“. Schmelzen stehen da, wie sie gelesen wurden: O und 0 sind zweierlei.</translation>
    </message>
    <message>
        <source>%1: nothing in the book is called that</source>
        <translation>%1: so heißt nichts im Buch</translation>
    </message>
    <message>
        <source>lift the hold again</source>
        <translation>die Sperre wieder aufheben</translation>
    </message>
    <message>
        <source>placed by mistake</source>
        <translation>versehentlich gesetzt</translation>
    </message>
    <message>
        <source>HOLD ...</source>
        <translation>SPERREN ...</translation>
    </message>
    <message>
        <source>Lift the hold ...</source>
        <translation>Sperre aufheben ...</translation>
    </message>
    <message>
        <source>Certificate package</source>
        <translation>Bescheinigungspaket</translation>
    </message>
    <message>
        <source>package</source>
        <translation>bescheinigungen</translation>
    </message>
    <message>
        <source>Trace record</source>
        <translation>Herkunftsnachweis</translation>
    </message>
    <message>
        <source>trace</source>
        <translation>herkunft</translation>
    </message>
    <message>
        <source>For a decision</source>
        <translation>Zu entscheiden</translation>
    </message>
    <message>
        <source>conflict</source>
        <translation>Konflikt</translation>
    </message>
    <message>
        <source>Held</source>
        <translation>Gesperrt</translation>
    </message>
    <message>
        <source>Papers awaited</source>
        <translation>Papiere ausstehend</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) late</source>
        <translation>
            <numerusform>%n Tag verspätet</numerusform>
            <numerusform>%n Tage verspätet</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing waits for papers or a decision.</source>
        <translation>Nichts wartet auf Papiere oder eine Entscheidung.</translation>
    </message>
    <message>
        <source>What was decided, and why? It closes the conflict.</source>
        <translation>Was wurde entschieden, und warum? Das schließt den Konflikt.</translation>
    </message>
    <message>
        <source>Which heat, piece or order?</source>
        <translation>Welche Schmelze, welches Stück oder welcher Auftrag?</translation>
    </message>
    <message>
        <source>Type or scan anything: where it is from, its papers, where the rest of it is.</source>
        <translation>Irgendetwas tippen oder scannen: woher es kommt, seine Papiere, wo der Rest davon ist.</translation>
    </message>
    <message>
        <source>Heat</source>
        <translation>Schmelze</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Stück</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>HELD: %1 (%2)</source>
        <translation>GESPERRT: %1 (%2)</translation>
    </message>
    <message>
        <source>PAPERS</source>
        <translation>PAPIERE</translation>
    </message>
    <message>
        <source>%1 no. %2, %3</source>
        <translation>%1 Nr. %2, %3</translation>
    </message>
    <message>
        <source>replaced by a later version</source>
        <translation>durch eine spätere Fassung ersetzt</translation>
    </message>
    <message>
        <source>filed, not accepted yet</source>
        <translation>abgelegt, noch nicht angenommen</translation>
    </message>
    <message>
        <source>accepted by %1</source>
        <translation>angenommen von %1</translation>
    </message>
    <message>
        <source>typed, no file</source>
        <translation>getippt, keine Datei</translation>
    </message>
    <message>
        <source>file kept, SHA-256 %1...</source>
        <translation>Datei abgelegt, SHA-256 %1...</translation>
    </message>
    <message>
        <source>none in the book</source>
        <translation>keine im Buch</translation>
    </message>
    <message>
        <source>HOLD %1</source>
        <translation>SPERRE %1</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>von %1</translation>
    </message>
    <message>
        <source>ALSO CALLED THAT</source>
        <translation>HEISST AUCH SO</translation>
    </message>
    <message>
        <source>WHAT HAPPENED</source>
        <translation>WAS GESCHAH</translation>
    </message>
    <message>
        <source>This compares and reports what the book holds. It replaces neither the standard nor the person responsible.</source>
        <translation>Dies vergleicht und berichtet, was im Buch steht. Es ersetzt weder die Norm noch die verantwortliche Person.</translation>
    </message>
    <message>
        <source>Why is it held? Enter holds it at once, for everybody.</source>
        <translation>Warum wird gesperrt? Enter sperrt sofort, für alle.</translation>
    </message>
    <message>
        <source>What shows that %1 %2 may be used? (the hold was: %3)</source>
        <translation>Was zeigt, dass %1 %2 verwendet werden darf? (die Sperre war: %3)</translation>
    </message>
    <message>
        <source>To which file? It ends in .pdf</source>
        <translation>In welche Datei? Endung .pdf</translation>
    </message>
    <message>
        <source>expected a name that ends in .pdf</source>
        <translation>erwartet wird ein Name, der auf .pdf endet</translation>
    </message>
    <message>
        <source>Papers</source>
        <translation>Papiere</translation>
    </message>
    <message>
        <source>Ship ...</source>
        <translation>Versenden ...</translation>
    </message>
    <message>
        <source>Under which delivery note does all of %1 that is on site leave?</source>
        <translation>Mit welchem Lieferschein geht alles von %1, was im Haus ist?</translation>
    </message>
</context>
<context>
    <name>heatkeep::PapersWork</name>
    <message>
        <source>%1 %2 is held: nothing of it is promised, pulled or shipped from now on</source>
        <translation>%1 %2 ist gesperrt: ab jetzt wird nichts davon zugesagt, entnommen oder geliefert</translation>
    </message>
    <message>
        <source>the hold is lifted</source>
        <translation>die Sperre ist aufgehoben</translation>
    </message>
    <message>
        <source>the conflict is closed</source>
        <translation>der Konflikt ist geschlossen</translation>
    </message>
    <message>
        <source>no package of %1: %2</source>
        <translation>kein Paket zu %1: %2</translation>
    </message>
    <message numerus="yes">
        <source>the package of %1 is in %2: %n page(s)</source>
        <translation>
            <numerusform>das Paket zu %1 liegt in %2: %n Seite</numerusform>
            <numerusform>das Paket zu %1 liegt in %2: %n Seiten</numerusform>
        </translation>
    </message>
    <message>
        <source>the record is in %1</source>
        <translation>der Nachweis liegt in %1</translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s) left with note %1; Certificate package makes their papers</source>
        <translation>
            <numerusform>%n Stück ging mit Lieferschein %1; „Bescheinigungen“ erstellt seine Papiere</numerusform>
            <numerusform>%n Stück gingen mit Lieferschein %1; „Bescheinigungen“ erstellt ihre Papiere</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>heatkeep::PieceBarView</name>
    <message>
        <source>the piece, %1 long</source>
        <translation>das Stück, %1 lang</translation>
    </message>
    <message>
        <source>no piece</source>
        <translation>kein Stück</translation>
    </message>
    <message>
        <source>keep</source>
        <translation>behalten</translation>
    </message>
    <message>
        <source>scrap</source>
        <translation>Schrott</translation>
    </message>
</context>
<context>
    <name>heatkeep::PlanBars</name>
    <message numerus="yes">
        <source>%n piece(s) of the plan</source>
        <translation>
            <numerusform>%n Stück des Plans</numerusform>
            <numerusform>%n Stück des Plans</numerusform>
        </translation>
    </message>
    <message>
        <source>keep</source>
        <translation>behalten</translation>
    </message>
    <message>
        <source>scrap</source>
        <translation>Schrott</translation>
    </message>
</context>
<context>
    <name>heatkeep::PlanPane</name>
    <message>
        <source>%1 - in hand</source>
        <translation>%1 - gewählt</translation>
    </message>
    <message numerus="yes">
        <source>and %n more line(s)</source>
        <translation>
            <numerusform>und %n weitere Zeile</numerusform>
            <numerusform>und %n weitere Zeilen</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>heatkeep::PlanStation</name>
    <message>
        <source>Line</source>
        <translation>Position</translation>
    </message>
    <message>
        <source>Section</source>
        <translation>Querschnitt</translation>
    </message>
    <message>
        <source>Grade</source>
        <translation>Werkstoff</translation>
    </message>
    <message>
        <source>Length %1</source>
        <translation>Länge %1</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Offen</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Fällig</translation>
    </message>
    <message>
        <source>Papers</source>
        <translation>Papiere</translation>
    </message>
    <message>
        <source>It is being planned. Esc: the best so far</source>
        <translation>Wird geplant. Esc: das Beste bisher</translation>
    </message>
    <message>
        <source>It is being planned: %1. Esc: the best so far</source>
        <translation>Wird geplant: %1. Esc: das Beste bisher</translation>
    </message>
    <message>
        <source>saw to plan for</source>
        <translation>Säge, für die geplant wird</translation>
    </message>
    <message>
        <source>each line where it fits</source>
        <translation>jede Position, wo sie passt</translation>
    </message>
    <message>
        <source>Nothing is open here. A cut list that comes in shows up at the left by itself.</source>
        <translation>Hier ist nichts offen. Eine neue Zuschnittliste erscheint links von selbst.</translation>
    </message>
    <message numerus="yes">
        <source>%n line(s), </source>
        <translation>
            <numerusform>%n Position, </numerusform>
            <numerusform>%n Positionen, </numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s) to be cut</source>
        <translation>
            <numerusform>%n Stück zu sägen</numerusform>
            <numerusform>%n Stück zu sägen</numerusform>
        </translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Planen</translation>
    </message>
    <message>
        <source>Plan again</source>
        <translation>Neu planen</translation>
    </message>
    <message>
        <source>Promise it</source>
        <translation>Zusagen</translation>
    </message>
    <message>
        <source>Second aim</source>
        <translation>Zweites Ziel</translation>
    </message>
    <message>
        <source>The other</source>
        <translation>Anderer Plan</translation>
    </message>
    <message>
        <source>Not this piece</source>
        <translation>Dieses nicht</translation>
    </message>
    <message>
        <source>Another instead</source>
        <translation>Anderes dafür</translation>
    </message>
    <message>
        <source>Search a minute</source>
        <translation>1 Minute suchen</translation>
    </message>
    <message>
        <source>Pick list</source>
        <translation>Entnahmeliste</translation>
    </message>
    <message>
        <source>Cancel plan</source>
        <translation>Plan stornieren</translation>
    </message>
    <message>
        <source>Forget it</source>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <source>Best so far</source>
        <translation>Bestes bisher</translation>
    </message>
    <message>
        <source>due %1</source>
        <translation>fällig %1</translation>
    </message>
    <message>
        <source>To be planned</source>
        <translation>Zu planen</translation>
    </message>
    <message numerus="yes">
        <source>%1 of %2 pieces open, %n line(s)</source>
        <translation>
            <numerusform>%1 von %2 Stück offen, %n Position</numerusform>
            <numerusform>%1 von %2 Stück offen, %n Positionen</numerusform>
        </translation>
    </message>
    <message>
        <source>All that is open</source>
        <translation>Alles Offene</translation>
    </message>
    <message numerus="yes">
        <source>%1 pieces of %n cut list(s), as one</source>
        <translation>
            <numerusform>%1 Stück aus %n Zuschnittliste, zusammen</numerusform>
            <numerusform>%1 Stück aus %n Zuschnittlisten, zusammen</numerusform>
        </translation>
    </message>
    <message>
        <source>Promised</source>
        <translation>Zugesagt</translation>
    </message>
    <message>
        <source>Plan %1, saw %2</source>
        <translation>Plan %1, Säge %2</translation>
    </message>
    <message>
        <source>No cut list has anything open. `heatkeep cutlist add` takes one in.</source>
        <translation>Keine Zuschnittliste hat etwas offen. `heatkeep cutlist add` nimmt eine auf.</translation>
    </message>
    <message>
        <source>saw %1 only</source>
        <translation>nur Säge %1</translation>
    </message>
    <message>
        <source>Plan %1</source>
        <translation>Plan %1</translation>
    </message>
    <message>
        <source>Nothing waits to be planned</source>
        <translation>Nichts zu planen</translation>
    </message>
    <message>
        <source>Cut list %1</source>
        <translation>Zuschnittliste %1</translation>
    </message>
    <message>
        <source>%1 against %2: %3</source>
        <translation>%1 gegen %2: %3</translation>
    </message>
    <message>
        <source>saw %1: %2</source>
        <translation>Säge %1: %2</translation>
    </message>
    <message>
        <source>made by %1</source>
        <translation>erstellt von %1</translation>
    </message>
    <message>
        <source>made by %1, due %2</source>
        <translation>erstellt von %1, fällig %2</translation>
    </message>
    <message>
        <source>for %1</source>
        <translation>für %1</translation>
    </message>
    <message>
        <source>%1 cut, %2 promised, %3 open of %4</source>
        <translation>%1 gesägt, %2 zugesagt, %3 offen von %4</translation>
    </message>
    <message>
        <source>papers %1</source>
        <translation>Papiere %1</translation>
    </message>
    <message>
        <source>priority %1 (1 is highest)</source>
        <translation>Priorität %1 (1 ist die höchste)</translation>
    </message>
    <message>
        <source>condition %1</source>
        <translation>Zustand %1</translation>
    </message>
    <message>
        <source>all of one heat</source>
        <translation>alles aus einer Schmelze</translation>
    </message>
    <message numerus="yes">
        <source>at most %n heat(s)</source>
        <translation>
            <numerusform>höchstens %n Schmelze</numerusform>
            <numerusform>höchstens %n Schmelzen</numerusform>
        </translation>
    </message>
    <message>
        <source>from metal that %1 owns</source>
        <translation>aus Material, das %1 gehört</translation>
    </message>
    <message>
        <source>Why is %1 not to be taken?</source>
        <translation>Warum %1 nicht nehmen?</translation>
    </message>
    <message>
        <source>Which one instead of %1? Its number: %2</source>
        <translation>Welches anstelle von %1? Seine Nummer: %2</translation>
    </message>
    <message>
        <source>%1: expected a number from 1 to %2</source>
        <translation>%1: erwartet wird eine Zahl von 1 bis %2</translation>
    </message>
    <message>
        <source>Why %1 instead of %2?</source>
        <translation>Warum %1 anstelle von %2?</translation>
    </message>
    <message>
        <source>Why is plan %1 cancelled? What is at the saw stays.</source>
        <translation>Warum Plan %1 stornieren? Was an der Säge ist, bleibt.</translation>
    </message>
    <message>
        <source>the pick list of plan %1 is out: %2</source>
        <translation>die Entnahmeliste zu Plan %1 ist ausgegeben: %2</translation>
    </message>
    <message>
        <source>the pick list of plan %1 is not out: %2</source>
        <translation>die Entnahmeliste zu Plan %1 ist nicht ausgegeben: %2</translation>
    </message>
    <message>
        <source>cancel plan %1</source>
        <translation>Plan %1 stornieren</translation>
    </message>
    <message>
        <source>cancel these plans</source>
        <translation>diese Pläne stornieren</translation>
    </message>
    <message>
        <source>taken back after it was promised</source>
        <translation>nach der Zusage zurückgenommen</translation>
    </message>
</context>
<context>
    <name>heatkeep::PlanWork</name>
    <message>
        <source>plan %1 is promised: saw %2: %3</source>
        <translation>Plan %1 ist zugesagt: Säge %2: %3</translation>
    </message>
    <message>
        <source>%1. Planned again: look, and promise again</source>
        <translation>%1. Neu geplant: ansehen und erneut zusagen</translation>
    </message>
    <message numerus="yes">
        <source>plan %1 is cancelled: %n piece(s) are free again; what is at the saw stays</source>
        <translation>
            <numerusform>Plan %1 ist storniert: %n Stück ist wieder frei; was an der Säge ist, bleibt</numerusform>
            <numerusform>Plan %1 ist storniert: %n Stück sind wieder frei; was an der Säge ist, bleibt</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>heatkeep::RackMapView</name>
    <message>
        <source>rack map</source>
        <translation>Regalkarte</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n piece(s), %2</source>
        <translation>
            <numerusform>%1: %n Stück, %2</numerusform>
            <numerusform>%1: %n Stück, %2</numerusform>
        </translation>
    </message>
    <message>
        <source> of %1</source>
        <translation> von %1</translation>
    </message>
</context>
<context>
    <name>heatkeep::RackStation</name>
    <message>
        <source>Only what nobody used</source>
        <translation>Nur Ungenutztes</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Drucken</translation>
    </message>
    <message>
        <source>No drops. What is left of a cut, and is long enough to be kept, shows up here.</source>
        <translation>Keine Reststücke. Was vom Sägen übrig und lang genug zum Behalten ist, erscheint hier.</translation>
    </message>
    <message>
        <source>where it lies: load of each place, number of pieces</source>
        <translation>wo es liegt: Last je Platz, Anzahl der Stücke</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Kennung</translation>
    </message>
    <message>
        <source>Length %1</source>
        <translation>Länge %1</translation>
    </message>
    <message>
        <source>Mass %1</source>
        <translation>Masse %1</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>Days still</source>
        <translation>Liegetage</translation>
    </message>
    <message>
        <source>As scrap</source>
        <translation>Schrott</translation>
    </message>
    <message>
        <source>By use</source>
        <translation>Nutzung</translation>
    </message>
    <message>
        <source>As new</source>
        <translation>Neuwert</translation>
    </message>
    <message>
        <source>Grade</source>
        <translation>Werkstoff</translation>
    </message>
    <message>
        <source>Section</source>
        <translation>Querschnitt</translation>
    </message>
    <message>
        <source>To scale</source>
        <translation>Maßstäblich</translation>
    </message>
    <message>
        <source>The rack is being read ...</source>
        <translation>Das Regal wird gelesen ...</translation>
    </message>
    <message>
        <source>Everything was used within a year</source>
        <translation>Alles wurde innerhalb eines Jahres genutzt</translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s) nobody used for a year: sell, use or bin</source>
        <translation>
            <numerusform>%n Stück seit einem Jahr ungenutzt: verkaufen, verwenden oder verschrotten</numerusform>
            <numerusform>%n Stück seit einem Jahr ungenutzt: verkaufen, verwenden oder verschrotten</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n drop(s), %2, %3</source>
        <translation>
            <numerusform>%1: %n Reststück, %2, %3</numerusform>
            <numerusform>%1: %n Reststücke, %2, %3</numerusform>
        </translation>
    </message>
    <message>
        <source>Whole rack</source>
        <translation>Ganzes Regal</translation>
    </message>
    <message>
        <source>. What nobody used: %1, %2</source>
        <translation>. Ungenutzt: %1, %2</translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s) of ours</source>
        <translation>
            <numerusform>%n eigenes Stück</numerusform>
            <numerusform>%n eigene Stücke</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n drop(s), %1</source>
        <translation>
            <numerusform>%n Reststück, %1</numerusform>
            <numerusform>%n Reststücke, %1</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing of ours is in the rack.</source>
        <translation>Nichts Eigenes im Regal.</translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s); Enter shows the papers, Ctrl+E keeps the table as CSV</source>
        <translation>
            <numerusform>%n Stück; Enter zeigt die Papiere, Strg+E speichert die Tabelle als CSV</numerusform>
            <numerusform>%n Stück; Enter zeigt die Papiere, Strg+E speichert die Tabelle als CSV</numerusform>
        </translation>
    </message>
    <message>
        <source>DROPS ARE WORTH</source>
        <translation>WERT DER RESTSTÜCKE</translation>
    </message>
    <message>
        <source>DROPS ARE WORTH, %1</source>
        <translation>WERT DER RESTSTÜCKE, %1</translation>
    </message>
    <message>
        <source>as scrap %1</source>
        <translation>als Schrott %1</translation>
    </message>
    <message>
        <source>by expected use %1</source>
        <translation>nach erwarteter Nutzung %1</translation>
    </message>
    <message>
        <source>not known yet</source>
        <translation>noch nicht bekannt</translation>
    </message>
    <message>
        <source>as new %1</source>
        <translation>als Neuware %1</translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s) have no price</source>
        <translation>
            <numerusform>%n Stück hat keinen Preis</numerusform>
            <numerusform>%n Stück haben keinen Preis</numerusform>
        </translation>
    </message>
    <message>
        <source>AGE</source>
        <translation>ALTER</translation>
    </message>
    <message>
        <source>this quarter</source>
        <translation>dieses Quartal</translation>
    </message>
    <message>
        <source>one quarter</source>
        <translation>ein Quartal</translation>
    </message>
    <message>
        <source>two quarters</source>
        <translation>zwei Quartale</translation>
    </message>
    <message>
        <source>three quarters</source>
        <translation>drei Quartale</translation>
    </message>
    <message>
        <source>a year and more</source>
        <translation>ein Jahr und mehr</translation>
    </message>
    <message>
        <source>Print to a file</source>
        <translation>In eine Datei drucken</translation>
    </message>
    <message>
        <source>%1 cannot be written</source>
        <translation>%1 lässt sich nicht schreiben</translation>
    </message>
    <message>
        <source>printed to %1</source>
        <translation>gedruckt in %1</translation>
    </message>
    <message>
        <source>Rack</source>
        <translation>Regal</translation>
    </message>
    <message>
        <source>being worked out ...</source>
        <translation>wird ermittelt ...</translation>
    </message>
</context>
<context>
    <name>heatkeep::ReceivingStation</name>
    <message>
        <source>Photo of the mark</source>
        <translation>Foto des Kennzeichens</translation>
    </message>
    <message>
        <source>Photos (*.jpg *.jpeg *.png)</source>
        <translation>Fotos (*.jpg *.jpeg *.png)</translation>
    </message>
    <message>
        <source>Receive the note</source>
        <translation>Lieferschein buchen</translation>
    </message>
    <message>
        <source>Next line</source>
        <translation>Nächste Position</translation>
    </message>
    <message>
        <source>Change this line</source>
        <translation>Position ändern</translation>
    </message>
    <message>
        <source>scan or type the place</source>
        <translation>Platz scannen oder tippen</translation>
    </message>
    <message>
        <source>place</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>Put away</source>
        <translation>Einlagern</translation>
    </message>
    <message>
        <source>Labels that wait</source>
        <translation>Wartende Etiketten</translation>
    </message>
    <message>
        <source>PHOTO</source>
        <translation>FOTO</translation>
    </message>
    <message>
        <source>This note</source>
        <translation>Dieser Lieferschein</translation>
    </message>
    <message numerus="yes">
        <source>%n line(s) read</source>
        <translation>
            <numerusform>%n Position gelesen</numerusform>
            <numerusform>%n Positionen gelesen</numerusform>
        </translation>
    </message>
    <message>
        <source>no heat</source>
        <translation>keine Schmelze</translation>
    </message>
    <message>
        <source>%1 x %2 %3</source>
        <translation>%1 x %2 %3</translation>
    </message>
    <message>
        <source>To put away</source>
        <translation>Einzulagern</translation>
    </message>
    <message>
        <source>Expected</source>
        <translation>Erwartet</translation>
    </message>
    <message>
        <source>%1 / %2  %3</source>
        <translation>%1 / %2  %3</translation>
    </message>
    <message>
        <source>%1 x %2 %3, %4</source>
        <translation>%1 x %2 %3, %4</translation>
    </message>
    <message>
        <source>due %1</source>
        <translation>fällig %1</translation>
    </message>
    <message>
        <source>Something not ordered</source>
        <translation>Etwas nicht Bestelltes</translation>
    </message>
    <message>
        <source>read it as it is</source>
        <translation>lesen, wie es ist</translation>
    </message>
    <message>
        <source>Read for this note</source>
        <translation>Für diesen Lieferschein gelesen</translation>
    </message>
    <message>
        <source>What is it? Read it from the metal</source>
        <translation>Was ist es? Am Material ablesen</translation>
    </message>
    <message>
        <source>Order %1, line %2: count it, read its heat</source>
        <translation>Bestellung %1, Position %2: zählen, Schmelze lesen</translation>
    </message>
    <message>
        <source>Where does %1 lie?</source>
        <translation>Wo liegt %1?</translation>
    </message>
    <message>
        <source>Where do these %1 bars lie?</source>
        <translation>Wo liegen diese %1 Stangen?</translation>
    </message>
    <message>
        <source>%1 x %2 %3 %4   heat %5   %6, %7</source>
        <translation>%1 x %2 %3 %4   Schmelze %5   %6, %7</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>strapped as %1: it goes as one</source>
        <translation>gebündelt als %1: geht als Ganzes</translation>
    </message>
    <message>
        <source>The place alone: all of them. A tag, then the place: that one.</source>
        <translation>Nur der Platz: alle. Eine Kennung, dann der Platz: nur diese.</translation>
    </message>
    <message>
        <source>line %1 is read; F1 receives the whole note</source>
        <translation>Position %1 ist gelesen; F1 bucht den ganzen Lieferschein</translation>
    </message>
    <message>
        <source>which delivery note is it? Type its number</source>
        <translation>welcher Lieferschein ist es? Seine Nummer tippen</translation>
    </message>
    <message>
        <source>the photo is kept with this line, and with its first bar when the note is received</source>
        <translation>das Foto bleibt bei dieser Position, und bei ihrer ersten Stange, sobald der Lieferschein gebucht ist</translation>
    </message>
    <message>
        <source>%1: now its place</source>
        <translation>%1: jetzt den Platz</translation>
    </message>
    <message>
        <source>%1 is a place: choose first what is put there, or scan its tag</source>
        <translation>%1 ist ein Platz: zuerst wählen, was dorthin kommt, oder dessen Kennung scannen</translation>
    </message>
    <message>
        <source>heat %1 is from the mill&apos;s tag: does the metal say the same?</source>
        <translation>Schmelze %1 stammt vom Werksetikett: sagt das Material dasselbe?</translation>
    </message>
    <message>
        <source>the labels are not out: %1. They stay in the queue; F4 prints them again</source>
        <translation>die Etiketten sind nicht ausgegeben: %1. Alle bleiben in der Warteschlange; F4 druckt erneut</translation>
    </message>
    <message>
        <source>no label of these waits</source>
        <translation>kein Etikett davon wartet</translation>
    </message>
    <message numerus="yes">
        <source>%n label(s) out: %1</source>
        <translation>
            <numerusform>%n Etikett ausgegeben: %1</numerusform>
            <numerusform>%n Etiketten ausgegeben: %1</numerusform>
        </translation>
    </message>
    <message>
        <source>Receiving</source>
        <translation>Wareneingang</translation>
    </message>
</context>
<context>
    <name>heatkeep::ReceivingWork</name>
    <message>
        <source>the answer got lost: it is asked again when the book is back, and is done once</source>
        <translation>die Antwort ging verloren: es wird erneut gefragt, sobald das Buch wieder da ist, und nur einmal ausgeführt</translation>
    </message>
    <message>
        <source>the note under way is of %1, order %2: receive it first, then read order %3</source>
        <translation>der laufende Lieferschein ist von %1, Bestellung %2: diesen zuerst buchen, dann Bestellung %3 lesen</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>the book cannot be reached: what was typed stays here, do it when the book is back</source>
        <translation>das Buch ist nicht erreichbar: das Getippte bleibt hier; ausführen, sobald das Buch wieder da ist</translation>
    </message>
    <message>
        <source>no line of the note is read yet: pick a line, count the bars, read the heat</source>
        <translation>noch keine Position des Lieferscheins gelesen: Position wählen, Stangen zählen, Schmelze lesen</translation>
    </message>
    <message>
        <source>which delivery note is it? Type its number</source>
        <translation>welcher Lieferschein ist es? Seine Nummer tippen</translation>
    </message>
    <message>
        <source>who delivered? Type the supplier</source>
        <translation>wer hat geliefert? Lieferanten tippen</translation>
    </message>
    <message>
        <source>line %1: %2%3</source>
        <translation>Position %1: %2%3</translation>
    </message>
    <message>
        <source> - in quarantine</source>
        <translation> - in Quarantäne</translation>
    </message>
    <message numerus="yes">
        <source>Note %1: %n bar(s) received, %2 by theory</source>
        <translation>
            <numerusform>Lieferschein %1: %n Stange angenommen, theoretisch %2</numerusform>
            <numerusform>Lieferschein %1: %n Stangen angenommen, theoretisch %2</numerusform>
        </translation>
    </message>
    <message>
        <source>reverse the receipt of note %1</source>
        <translation>Wareneingang zu Lieferschein %1 stornieren</translation>
    </message>
    <message>
        <source>%1. Wrong? Quality reverses a receipt</source>
        <translation>%1. Falsch? Die QS storniert einen Wareneingang</translation>
    </message>
    <message>
        <source>taken back at the gate at once</source>
        <translation>am Tor gleich wieder zurückgenommen</translation>
    </message>
    <message>
        <source>the receipt of note %1 is reversed: it may be read anew</source>
        <translation>der Wareneingang zu Lieferschein %1 ist storniert: er kann neu gelesen werden</translation>
    </message>
    <message numerus="yes">
        <source>%n bars</source>
        <translation>
            <numerusform>%n Stange</numerusform>
            <numerusform>%n Stangen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 lies at %2</source>
        <translation>%1 liegt auf %2</translation>
    </message>
    <message>
        <source>%1 lie at %2</source>
        <translation>%1 liegen auf %2</translation>
    </message>
    <message>
        <source>back to %1</source>
        <translation>zurück nach %1</translation>
    </message>
    <message>
        <source>the photo %1 cannot be read: %2</source>
        <translation>das Foto %1 ist nicht lesbar: %2</translation>
    </message>
    <message>
        <source>the photo is kept with %1</source>
        <translation>das Foto ist bei %1 abgelegt</translation>
    </message>
    <message>
        <source>the photo of %1 is not kept: %2</source>
        <translation>das Foto von %1 ist nicht abgelegt: %2</translation>
    </message>
</context>
<context>
    <name>heatkeep::RowView</name>
    <message>
        <source>show only rows with these words</source>
        <translation>nur Zeilen mit diesen Wörtern zeigen</translation>
    </message>
    <message>
        <source>filter</source>
        <translation>Filter</translation>
    </message>
    <message numerus="yes">
        <source>%n row(s)</source>
        <translation>
            <numerusform>%n Zeile</numerusform>
            <numerusform>%n Zeilen</numerusform>
        </translation>
    </message>
    <message>
        <source>No row has these words.</source>
        <translation>Keine Zeile hat diese Wörter.</translation>
    </message>
    <message>
        <source>Keep as CSV</source>
        <translation>Als CSV speichern</translation>
    </message>
    <message>
        <source>Not kept</source>
        <translation>Nicht gespeichert</translation>
    </message>
</context>
<context>
    <name>heatkeep::SawStation</name>
    <message>
        <source>CUT AS PLANNED</source>
        <translation>WIE GEPLANT</translation>
    </message>
    <message>
        <source>NEXT STOP</source>
        <translation>NÄCHSTES MASS</translation>
    </message>
    <message>
        <source>REST</source>
        <translation>REST</translation>
    </message>
    <message>
        <source>FEWER</source>
        <translation>WENIGER</translation>
    </message>
    <message>
        <source>NOT THERE</source>
        <translation>NICHT DA</translation>
    </message>
    <message>
        <source>not in its place</source>
        <translation>nicht an seinem Platz</translation>
    </message>
    <message>
        <source>SHORT</source>
        <translation>ZU KURZ</translation>
    </message>
    <message>
        <source>BAD METAL</source>
        <translation>FEHLERHAFT</translation>
    </message>
    <message>
        <source>NO MARK</source>
        <translation>UNLESBAR</translation>
    </message>
    <message>
        <source>its mark cannot be read</source>
        <translation>sein Kennzeichen ist nicht lesbar</translation>
    </message>
    <message>
        <source>scan the piece first: %1</source>
        <translation>zuerst das Stück scannen: %1</translation>
    </message>
    <message>
        <source>Which saw is this?</source>
        <translation>Welche Säge ist das?</translation>
    </message>
    <message>
        <source>Say it in the settings: Ctrl+,</source>
        <translation>In den Einstellungen angeben: Strg+,</translation>
    </message>
    <message>
        <source>Nothing waits for saw %1</source>
        <translation>Nichts wartet auf Säge %1</translation>
    </message>
    <message>
        <source>A plan made for this saw shows up here by itself.</source>
        <translation>Ein Plan für diese Säge erscheint hier von selbst.</translation>
    </message>
    <message>
        <source>Where does %1 lie?</source>
        <translation>Wo liegt %1?</translation>
    </message>
    <message>
        <source>Scan its place; Enter: where the piece came from.</source>
        <translation>Seinen Platz scannen; Enter: wo das Stück herkam.</translation>
    </message>
    <message>
        <source>LEAVE IT THERE</source>
        <translation>DORT LASSEN</translation>
    </message>
    <message>
        <source>Plan %1</source>
        <translation>Plan %1</translation>
    </message>
    <message>
        <source>due %1</source>
        <translation>fällig %1</translation>
    </message>
    <message>
        <source>cut</source>
        <translation>gesägt</translation>
    </message>
    <message>
        <source>in the saw</source>
        <translation>in der Säge</translation>
    </message>
    <message>
        <source>No plan waits for this saw.</source>
        <translation>Kein Plan wartet auf diese Säge.</translation>
    </message>
    <message>
        <source>Cut %1</source>
        <translation>%1 sägen</translation>
    </message>
    <message>
        <source>Fetch %1 from %2</source>
        <translation>%1 von %2 holen</translation>
    </message>
    <message>
        <source>as the metal says</source>
        <translation>wie auf dem Material</translation>
    </message>
    <message>
        <source>%1  %2   heat %3   %4   %5, %6</source>
        <translation>%1  %2   Schmelze %3   %4   %5, %6</translation>
    </message>
    <message>
        <source>Stop at</source>
        <translation>Anschlag auf</translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s) for %1/%2, %3</source>
        <translation>
            <numerusform>%n Stück für %1/%2, %3</numerusform>
            <numerusform>%n Stück für %1/%2, %3</numerusform>
        </translation>
    </message>
    <message>
        <source>longer than the stop: feed %1 times, one cut</source>
        <translation>länger als der Anschlag: %1-mal vorschieben, ein Schnitt</translation>
    </message>
    <message>
        <source>WHAT IS CUT</source>
        <translation>WAS GESÄGT WIRD</translation>
    </message>
    <message>
        <source>MARK</source>
        <translation>KENNZEICHEN</translation>
    </message>
    <message>
        <source>PAPERS</source>
        <translation>PAPIERE</translation>
    </message>
    <message>
        <source>owned by %1</source>
        <translation>gehört %1</translation>
    </message>
    <message>
        <source>NOT THERE?</source>
        <translation>NICHT DA?</translation>
    </message>
    <message>
        <source>nothing else held its cuts</source>
        <translation>kein anderes Stück fasste seine Schnitte</translation>
    </message>
    <message>
        <source>THE PLAN</source>
        <translation>DER PLAN</translation>
    </message>
    <message>
        <source>How long is %1 really? (%2)</source>
        <translation>Wie lang ist %1 wirklich? (%2)</translation>
    </message>
    <message>
        <source>All is cut. How long is what is left? (%1)</source>
        <translation>Alles gesägt. Wie lang ist der Rest? (%1)</translation>
    </message>
    <message>
        <source>How many good pieces for %1 were cut, of %2? The piece is done then.</source>
        <translation>Wie viele gute Stücke für %1 wurden gesägt, von %2? Danach ist dieses Stück fertig.</translation>
    </message>
    <message>
        <source>expected a number from 0 to %1</source>
        <translation>erwartet wird eine Zahl von 0 bis %1</translation>
    </message>
    <message>
        <source>fewer cut than planned</source>
        <translation>weniger gesägt als geplant</translation>
    </message>
    <message>
        <source>What is wrong with %1?</source>
        <translation>Was stimmt nicht mit %1?</translation>
    </message>
    <message>
        <source>the label of %1 is not out: %2. It stays in the queue; write the tag on the metal</source>
        <translation>das Etikett von %1 ist nicht ausgegeben: %2. Es bleibt in der Warteschlange; Kennung auf das Material schreiben</translation>
    </message>
    <message>
        <source>the label of %1 is not out: %2</source>
        <translation>das Etikett von %1 ist nicht ausgegeben: %2</translation>
    </message>
    <message>
        <source>Saw</source>
        <translation>Säge</translation>
    </message>
</context>
<context>
    <name>heatkeep::SawWork</name>
    <message>
        <source>%1 is not on the sheets that were read before the book went away: take %2</source>
        <translation>%1 steht nicht auf den Blättern, die vor dem Ausfall des Buchs gelesen wurden: %2 nehmen</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keines</translation>
    </message>
    <message>
        <source>%1 is in the saw; kept here until the book is back</source>
        <translation>%1 ist in der Säge; hier aufbewahrt, bis das Buch wieder da ist</translation>
    </message>
    <message>
        <source>%1 is the right one: clamp it</source>
        <translation>%1 ist das richtige: spannen</translation>
    </message>
    <message>
        <source>%1 is cut</source>
        <translation>%1 ist gesägt</translation>
    </message>
    <message>
        <source>; what is left is %1, %2</source>
        <translation>; der Rest ist %1, %2</translation>
    </message>
    <message>
        <source>; kept here until the book is back</source>
        <translation>; hier aufbewahrt, bis das Buch wieder da ist</translation>
    </message>
    <message>
        <source>%1 lies at %2</source>
        <translation>%1 liegt auf %2</translation>
    </message>
    <message>
        <source>the book cannot be reached, so nothing can be planned anew: go on with another piece of the sheet</source>
        <translation>das Buch ist nicht erreichbar, also lässt sich nichts neu planen: mit einem anderen Stück des Blatts weitermachen</translation>
    </message>
    <message>
        <source>nothing is cut from %1: take it from the saw</source>
        <translation>aus %1 wird nichts gesägt: aus der Säge nehmen</translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s) are short; the planner sees it</source>
        <translation>
            <numerusform>%n Stück fehlt; die Planung sieht es</numerusform>
            <numerusform>%n Stück fehlen; die Planung sieht es</numerusform>
        </translation>
    </message>
    <message>
        <source>Planned anew: %1</source>
        <translation>Neu geplant: %1</translation>
    </message>
    <message>
        <source>nothing else changes</source>
        <translation>sonst ändert sich nichts</translation>
    </message>
    <message>
        <source>the answer got lost: it is asked again when the book is back, and is done once</source>
        <translation>die Antwort ging verloren: es wird erneut gefragt, sobald das Buch wieder da ist, und nur einmal ausgeführt</translation>
    </message>
    <message>
        <source>the book cannot be reached, and this desk keeps no deeds: note it down; the settings name a file for them</source>
        <translation>das Buch ist nicht erreichbar, und dieser Arbeitsplatz bewahrt keine Vorgänge auf: aufschreiben; die Einstellungen nennen eine Datei dafür</translation>
    </message>
    <message>
        <source>deeds that %1 did are still kept here: %1 logs in and sends them</source>
        <translation>Vorgänge von %1 sind hier noch aufbewahrt: %1 meldet sich an und sendet sie</translation>
    </message>
    <message numerus="yes">
        <source>the book is back: %n deed(s) kept here are booked</source>
        <translation>
            <numerusform>das Buch ist wieder da: %n hier aufbewahrter Vorgang ist gebucht</numerusform>
            <numerusform>das Buch ist wieder da: %n hier aufbewahrte Vorgänge sind gebucht</numerusform>
        </translation>
    </message>
    <message>
        <source>; for the lead: %1</source>
        <translation>; für den Vorarbeiter: %1</translation>
    </message>
</context>
<context>
    <name>heatkeep::SettingsPage</name>
    <message>
        <source>Settings of this desk</source>
        <translation>Einstellungen dieses Arbeitsplatzes</translation>
    </message>
    <message>
        <source>Lengths in</source>
        <translation>Längen in</translation>
    </message>
    <message>
        <source>millimetres</source>
        <translation>Millimeter</translation>
    </message>
    <message>
        <source>inches with fractions</source>
        <translation>Zoll mit Brüchen</translation>
    </message>
    <message>
        <source>inches with decimals</source>
        <translation>Zoll, dezimal</translation>
    </message>
    <message>
        <source>Masses in</source>
        <translation>Massen in</translation>
    </message>
    <message>
        <source>kilograms</source>
        <translation>Kilogramm</translation>
    </message>
    <message>
        <source>pounds</source>
        <translation>Pfund (lb)</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Aussehen</translation>
    </message>
    <message>
        <source>as the system</source>
        <translation>wie das System</translation>
    </message>
    <message>
        <source>light</source>
        <translation>hell</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>dunkel</translation>
    </message>
    <message>
        <source>Language (from the next start)</source>
        <translation>Sprache (ab dem nächsten Start)</translation>
    </message>
    <message>
        <source>This desk stands at saw</source>
        <translation>Dieser Arbeitsplatz steht an Säge</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keiner</translation>
    </message>
    <message>
        <source>Deeds kept while the book is away</source>
        <translation>Vorgänge aufbewahren, solange das Buch fehlt</translation>
    </message>
    <message>
        <source>a file that `heatkeep saw block` made</source>
        <translation>eine Datei, die `heatkeep saw block` angelegt hat</translation>
    </message>
    <message>
        <source>Label printer</source>
        <translation>Etikettendrucker</translation>
    </message>
    <message>
        <source>its name in the system; empty: labels as files</source>
        <translation>sein Name im System; leer: Etiketten als Dateien</translation>
    </message>
    <message>
        <source>Folder for labels as files</source>
        <translation>Ordner für Etiketten als Dateien</translation>
    </message>
    <message>
        <source>a folder</source>
        <translation>ein Ordner</translation>
    </message>
    <message>
        <source>Printer for sheets</source>
        <translation>Drucker für Blätter</translation>
    </message>
    <message>
        <source>its name in the system; empty: sheets as files</source>
        <translation>sein Name im System; leer: Blätter als Dateien</translation>
    </message>
    <message>
        <source>Folder for sheets as files</source>
        <translation>Ordner für Blätter als Dateien</translation>
    </message>
    <message>
        <source>The scanner sends first</source>
        <translation>Der Scanner sendet zuerst</translation>
    </message>
    <message>
        <source>nothing: a scan is known by its speed</source>
        <translation>nichts: ein Scan ist an seinem Tempo zu erkennen</translation>
    </message>
    <message>
        <source>Longest pause within a scan</source>
        <translation>Längste Pause innerhalb eines Scans</translation>
    </message>
    <message>
        <source>Set</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <source>Leave as it was</source>
        <translation>Lassen, wie es war</translation>
    </message>
</context>
<context>
    <name>heatkeep::StartStation</name>
    <message>
        <source>The book is being read ...</source>
        <translation>Das Buch wird gelesen ...</translation>
    </message>
    <message>
        <source>The book is ready for work</source>
        <translation>Das Buch ist bereit für die Arbeit</translation>
    </message>
    <message>
        <source>%1 of %2 steps to the first cut</source>
        <translation>%1 von %2 Schritten bis zum ersten Schnitt</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>Grades and their limits</source>
        <translation>Werkstoffe und ihre Grenzwerte</translation>
    </message>
    <message>
        <source>heatkeep grades add FILE
heatkeep grades limits

Grades by their standard&apos;s designation and number, with density. The limits that come with the program say their source.</source>
        <translation>heatkeep grades add DATEI
heatkeep grades limits

Werkstoffe mit Kurzname und Nummer der Norm und ihrer Dichte. Die mitgelieferten Grenzwerte nennen ihre Quelle.</translation>
    </message>
    <message>
        <source>The shop: saws, places, mills, customers</source>
        <translation>Der Betrieb: Sägen, Plätze, Werke, Kunden</translation>
    </message>
    <message>
        <source>What lies there: the opening balance</source>
        <translation>Was da liegt: der Anfangsbestand</translation>
    </message>
    <message>
        <source>heatkeep look bars.xlsx --as opening
heatkeep opening bars.xlsx

A spreadsheet of bars and drops, one row each or alike: grade, section, heat as read, length, place. The first command only shows what it would be understood as.</source>
        <translation>heatkeep look stangen.xlsx --as opening
heatkeep opening stangen.xlsx

Eine Tabelle der Stangen und Reststücke, eine Zeile je Stück oder je gleiche: Werkstoff, Querschnitt, Schmelze wie gelesen, Länge, Platz. Der erste Befehl zeigt nur, wie sie verstanden würde.</translation>
    </message>
    <message>
        <source>The first cut list</source>
        <translation>Die erste Zuschnittliste</translation>
    </message>
    <message>
        <source>heatkeep cutlist add list.csv

Then the planning station: F1 plans, F2 promises.</source>
        <translation>heatkeep cutlist add liste.csv

Dann die Planung: F1 plant, F2 sagt zu.</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personen</translation>
    </message>
    <message>
        <source>heatkeep book person add NAME --role clerk

A login a person; the roles are clerk, planner, saw, quality, owner.</source>
        <translation>heatkeep book person add NAME --role clerk

Je Person eine Anmeldung; die Rollen sind clerk, planner, saw, quality, owner.</translation>
    </message>
    <message>
        <source>heatkeep shop set shop.json

seed/scenario/shop.json is an example. Kerf and grip are what the shop measures, not what a table says.</source>
        <translation>heatkeep shop set betrieb.json

seed/scenario/shop.json ist ein Beispiel. Schnittfuge und Einspannlänge sind, was der Betrieb misst, nicht was eine Tabelle sagt.</translation>
    </message>
</context>
<context>
    <name>heatkeep::WaitingList</name>
    <message>
        <source>what waits</source>
        <translation>was wartet</translation>
    </message>
</context>
<context>
    <name>heatkeep::YieldView</name>
    <message>
        <source>no yield yet</source>
        <translation>noch keine Ausbeute</translation>
    </message>
    <message>
        <source>yield, last month %1 %</source>
        <translation>Ausbeute, letzter Monat %1 %</translation>
    </message>
    <message>
        <source>Yield by month: shown from the second month of cutting on.</source>
        <translation>Ausbeute je Monat: erscheint ab dem zweiten Sägemonat.</translation>
    </message>
    <message>
        <source>Yield by month</source>
        <translation>Ausbeute je Monat</translation>
    </message>
    <message>
        <source>month</source>
        <translation>Monat</translation>
    </message>
    <message>
        <source>good of used</source>
        <translation>gut von verbraucht</translation>
    </message>
</context>
</TS>
