<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE" sourcelanguage="en_US">
<context>
    <name>Book</name>
    <message>
        <source>&quot;%1&quot; cannot be held; expected heat, lot, piece, certificate or receipt</source>
        <translation>„%1“ lässt sich nicht sperren; erwartet wird heat (Schmelze), lot (Los), piece (Stück), certificate (Zeugnis) oder receipt (Wareneingang)</translation>
    </message>
    <message>
        <source>&quot;%1&quot; cannot be traced; expected order, heat or piece</source>
        <translation>„%1“ lässt sich nicht verfolgen; erwartet wird order (Auftrag), heat (Schmelze) oder piece (Stück)</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no digest of a record</source>
        <translation>„%1“ ist keine Prüfsumme eines Nachweises</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no kind of photo</source>
        <translation>„%1“ ist keine Art von Foto</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no method</source>
        <translation>„%1“ ist kein Verfahren</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no type of inspection document</source>
        <translation>„%1“ ist keine Art von Prüfbescheinigung</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no way for a customer&apos;s metal</source>
        <translation>„%1“ ist kein Weg für Kundenmaterial</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a well formed tag</source>
        <translation>„%1“ ist keine richtig gebildete Kennung</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not done off the network</source>
        <translation>„%1“ wird ohne Netz nicht gemacht</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is nothing an analysis or a test has</source>
        <translation>„%1“ kommt in keiner Analyse und keiner Prüfung vor</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is nothing to downgrade to</source>
        <translation>„%1“ ist nichts, worauf herabgestuft werden kann</translation>
    </message>
    <message>
        <source>&quot;square&quot; and one dimension</source>
        <translation>„square“ und ein Maß</translation>
    </message>
    <message>
        <source>%1 % above</source>
        <translation>%1 % darüber</translation>
    </message>
    <message>
        <source>%1 % below</source>
        <translation>%1 % darunter</translation>
    </message>
    <message>
        <source>%1 % is more than all of it</source>
        <translation>%1 % ist mehr als alles</translation>
    </message>
    <message numerus="yes">
        <source>%1 %2: the slip says %3 bars %4 %5 of %6, %7 came (%8 by theory)</source>
        <translation>
            <numerusform>%1 %2: laut Lieferschein %3 Stange %4 %5 von %6, gekommen sind %7 (rechnerisch %8)</numerusform>
            <numerusform>%1 %2: laut Lieferschein %3 Stangen %4 %5 von %6, gekommen sind %7 (rechnerisch %8)</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 a kg, scrap %2</source>
        <translation>%1 je kg, Schrott %2</translation>
    </message>
    <message>
        <source>%1 ago</source>
        <translation>vor %1</translation>
    </message>
    <message>
        <source>%1 and %2 are not of one section, grade, condition and owner: cut them one after the other</source>
        <translation>%1 und %2 sind nicht von einem Querschnitt, Werkstoff, Zustand und Eigentümer: nacheinander sägen</translation>
    </message>
    <message>
        <source>%1 and %2 are not the same metal: %3</source>
        <translation>%1 und %2 sind nicht dasselbe Material: %3</translation>
    </message>
    <message>
        <source>%1 are left of %2: say whether they are a drop or scrap</source>
        <translation>%1 von %2 sind übrig: angeben, ob das ein Reststück oder Schrott ist</translation>
    </message>
    <message>
        <source>%1 are missing from the rest of %2: say why</source>
        <translation>%1 fehlen am Rest von %2: angeben, warum</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 bei %2</translation>
    </message>
    <message>
        <source>%1 at %2 (%3)</source>
        <translation>%1 bei %2 (%3)</translation>
    </message>
    <message>
        <source>%1 bar</source>
        <translation>%1 Stange</translation>
    </message>
    <message numerus="yes">
        <source>%1 bars</source>
        <translation>
            <numerusform>%1 Stange</numerusform>
            <numerusform>%1 Stangen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 bars %2 %3 of %4 not as ordered: %5 (%6 by theory)</source>
        <translation>
            <numerusform>%1 Stange %2 %3 von %4 nicht wie bestellt: %5 (rechnerisch %6)</numerusform>
            <numerusform>%1 Stangen %2 %3 von %4 nicht wie bestellt: %5 (rechnerisch %6)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 bars are still expected and free there, %2 were asked for</source>
        <translation>
            <numerusform>%1 Stange wird dort noch erwartet und ist frei, verlangt sind %2</numerusform>
            <numerusform>%1 Stangen werden dort noch erwartet und sind frei, verlangt sind %2</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 bars for order %2 line %3</source>
        <translation>
            <numerusform>%1 Stange für Auftrag %2 Position %3</numerusform>
            <numerusform>%1 Stangen für Auftrag %2 Position %3</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 bars were cut together at saw %2: %3</source>
        <translation>
            <numerusform>%1 Stange wurde an Säge %2 gesägt: %3</numerusform>
            <numerusform>%1 Stangen wurden zusammen an Säge %2 gesägt: %3</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 belongs to %2</source>
        <translation>%1 gehört %2</translation>
    </message>
    <message>
        <source>%1 belongs to %2: it goes back to its owner</source>
        <translation>%1 gehört %2: es geht an den Eigentümer zurück</translation>
    </message>
    <message>
        <source>%1 belongs to %2: name their written instruction</source>
        <translation>%1 gehört %2: dessen schriftliche Anweisung angeben</translation>
    </message>
    <message>
        <source>%1 belongs to %2: name their written instruction to scrap the rest</source>
        <translation>%1 gehört %2: dessen schriftliche Anweisung angeben, den Rest zu verschrotten</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <translation>%1 durch %2</translation>
    </message>
    <message>
        <source>%1 by %2, note %3</source>
        <translation>%1 durch %2, Lieferschein %3</translation>
    </message>
    <message>
        <source>%1 can be read two ways, %2%3 or %4%5</source>
        <translation>%1 lässt sich auf zwei Arten lesen, %2%3 oder %4%5</translation>
    </message>
    <message>
        <source>%1 cannot be %2: it is %3</source>
        <translation>%1 kann nicht %2 werden: es ist %3</translation>
    </message>
    <message>
        <source>%1 cannot be %2: its place is being counted</source>
        <translation>%1 kann nicht %2 werden: sein Platz wird gezählt</translation>
    </message>
    <message>
        <source>%1 cannot be %2: that one is %3</source>
        <translation>%1 kann nicht %2 werden: jenes ist %3</translation>
    </message>
    <message>
        <source>%1 cannot be cut in place of %2</source>
        <translation>%1 kann nicht an Stelle von %2 gesägt werden</translation>
    </message>
    <message>
        <source>%1 cannot be made safe on the disk</source>
        <translation>%1: lässt sich auf dem Datenträger nicht sichern</translation>
    </message>
    <message>
        <source>%1 cannot be moved: %2 is being counted</source>
        <translation>%1 kann nicht bewegt werden: %2 wird gezählt</translation>
    </message>
    <message>
        <source>%1 cannot be promised: %2</source>
        <translation>%1 kann nicht zugesagt werden: %2</translation>
    </message>
    <message>
        <source>%1 cannot be reserved: %2</source>
        <translation>%1 kann nicht reserviert werden: %2</translation>
    </message>
    <message>
        <source>%1 cannot be sold: %2</source>
        <translation>%1 kann nicht verkauft werden: %2</translation>
    </message>
    <message>
        <source>%1 cannot be used: %2</source>
        <translation>%1 kann nicht verwendet werden: %2</translation>
    </message>
    <message>
        <source>%1 cannot go on: %2</source>
        <translation>%1 kann nicht weitergehen: %2</translation>
    </message>
    <message>
        <source>%1 cannot have happened in the future (%2)</source>
        <translation>%1 kann nicht in der Zukunft geschehen sein (%2)</translation>
    </message>
    <message>
        <source>%1 cannot measure %2: it is %3 and was made %4 long</source>
        <translation>%1 kann nicht %2 messen: es ist %3 und war am Anfang %4 lang</translation>
    </message>
    <message>
        <source>%1 carries up to %2; with this piece it would be %3</source>
        <translation>%1 trägt bis zu %2; mit diesem Stück wären es %3</translation>
    </message>
    <message numerus="yes">
        <source>%1 chains, %2 with another end</source>
        <translation>
            <numerusform>%1 Kette, %2 mit anderem Ende</numerusform>
            <numerusform>%1 Ketten, %2 mit anderem Ende</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 changes only through the deeds of the trade</source>
        <translation>%1 ändert sich nur durch die Vorgänge des Betriebs</translation>
    </message>
    <message>
        <source>%1 cheaper</source>
        <translation>%1 billiger</translation>
    </message>
    <message>
        <source>%1 cut cannot be served</source>
        <translation>%1 Schnitt lässt sich nicht bedienen</translation>
    </message>
    <message numerus="yes">
        <source>%1 cuts cannot be served</source>
        <translation>
            <numerusform>%1 Schnitt lässt sich nicht bedienen</numerusform>
            <numerusform>%1 Schnitte lassen sich nicht bedienen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 cuts, %2 do not add up</source>
        <translation>
            <numerusform>%1 Schnitt, %2 gehen nicht auf</numerusform>
            <numerusform>%1 Schnitte, %2 gehen nicht auf</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 dearer</source>
        <translation>%1 teurer</translation>
    </message>
    <message>
        <source>%1 decided already to %2 them</source>
        <translation>%1 hat schon entschieden: %2</translation>
    </message>
    <message>
        <source>%1 does not say one lower and one upper limit</source>
        <translation>%1 nennt keine untere und obere Grenze</translation>
    </message>
    <message>
        <source>%1 does not say who validated it</source>
        <translation>%1 sagt nicht, wer es bestätigt hat</translation>
    </message>
    <message>
        <source>%1 fewer bar opened</source>
        <translation>%1 Stange weniger angebrochen</translation>
    </message>
    <message>
        <source>%1 fewer bars opened</source>
        <translation>%1 Stangen weniger angebrochen</translation>
    </message>
    <message>
        <source>%1 fewer cuts short</source>
        <translation>%1 Schnitte weniger fehlen</translation>
    </message>
    <message>
        <source>%1 fewer piece pulled</source>
        <translation>%1 Stück weniger entnommen</translation>
    </message>
    <message>
        <source>%1 fewer pieces pulled</source>
        <translation>%1 Stück weniger entnommen</translation>
    </message>
    <message>
        <source>%1 for %2 x %3 more</source>
        <translation>%1 für %2 x %3 mehr</translation>
    </message>
    <message>
        <source>%1 for %2, order %3 line %4</source>
        <translation>%1 für %2, Auftrag %3 Position %4</translation>
    </message>
    <message>
        <source>%1 full bar</source>
        <translation>%1 volle Stange</translation>
    </message>
    <message>
        <source>%1 full bars</source>
        <translation>%1 volle Stangen</translation>
    </message>
    <message>
        <source>%1 goes to an order with papers or of one heat: read the last 4 characters of the heat from the metal</source>
        <translation>%1 geht an einen Auftrag mit Zeugnis oder aus einer Schmelze: die letzten 4 Zeichen der Schmelze vom Material ablesen</translation>
    </message>
    <message numerus="yes">
        <source>%1 happenings since, %2 broken links</source>
        <translation>
            <numerusform>%1 Ereignis seither, %2 gebrochene Glieder</numerusform>
            <numerusform>%1 Ereignisse seither, %2 gebrochene Glieder</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 happenings, %2 broken links</source>
        <translation>
            <numerusform>%1 Ereignis, %2 gebrochene Glieder</numerusform>
            <numerusform>%1 Ereignisse, %2 gebrochene Glieder</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 has %2 characters</source>
        <translation>%1 hat %2 Zeichen</translation>
    </message>
    <message>
        <source>%1 has %2 decimal</source>
        <translation>%1 hat %2 Nachkommastelle</translation>
    </message>
    <message>
        <source>%1 has %2 decimals</source>
        <translation>%1 hat %2 Nachkommastellen</translation>
    </message>
    <message>
        <source>%1 has %2, not %3</source>
        <translation>%1 hat %2, nicht %3</translation>
    </message>
    <message>
        <source>%1 has been begun: it is finished by itself</source>
        <translation>%1 ist begonnen: es wird für sich fertig gesägt</translation>
    </message>
    <message>
        <source>%1 has too many places</source>
        <translation>%1 hat zu viele Stellen</translation>
    </message>
    <message numerus="yes">
        <source>%1 holds %2 for sure; %3 pieces need more</source>
        <translation>
            <numerusform>%1 hat sicher %2; %3 Stück braucht mehr</numerusform>
            <numerusform>%1 hat sicher %2; %3 Stück brauchen mehr</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 holds %2 for sure; the piece is longer</source>
        <translation>%1 hat sicher %2; das Stück ist länger</translation>
    </message>
    <message>
        <source>%1 holds %2; %3 cannot have been cut from it</source>
        <translation>%1 hat %2; %3 können nicht daraus gesägt sein</translation>
    </message>
    <message>
        <source>%1 in</source>
        <translation>%1 in</translation>
    </message>
    <message>
        <source>%1 in %2 at %3 from the %4 end: %5</source>
        <translation>%1 in %2 bei %3 vom Ende %4: %5</translation>
    </message>
    <message>
        <source>%1 in %2, %3</source>
        <translation>%1 auf %2, %3</translation>
    </message>
    <message>
        <source>%1 instead of %2 for %3 x %4</source>
        <translation>%1 statt %2 für %3 x %4</translation>
    </message>
    <message>
        <source>%1 instead of %2: %3</source>
        <translation>%1 statt %2: %3</translation>
    </message>
    <message>
        <source>%1 instead of %2: it does not hold its cuts, is taken otherwise, or may not serve them</source>
        <translation>%1 statt %2: es fasst die Schnitte nicht, ist anders vergeben oder darf sie nicht bedienen</translation>
    </message>
    <message>
        <source>%1 instead of %2: it is not free, or not of a metal that may serve</source>
        <translation>%1 statt %2: es ist nicht frei oder nicht aus Material, das dienen darf</translation>
    </message>
    <message>
        <source>%1 instead of %2: the plan does not take %3</source>
        <translation>%1 statt %2: der Plan nimmt %3 nicht</translation>
    </message>
    <message>
        <source>%1 is %2</source>
        <translation>%1 ist %2</translation>
    </message>
    <message>
        <source>%1 is %2 already</source>
        <translation>%1 ist schon %2</translation>
    </message>
    <message>
        <source>%1 is %2 long: a zone from %3 to %4 is not in it</source>
        <translation>%1 ist %2 lang: ein Bereich von %3 bis %4 liegt nicht darin</translation>
    </message>
    <message>
        <source>%1 is %2, not at a saw</source>
        <translation>%1 ist %2, nicht an einer Säge</translation>
    </message>
    <message>
        <source>%1 is %2: it cannot be %3</source>
        <translation>%1 ist %2: es kann nicht %3 werden</translation>
    </message>
    <message>
        <source>%1 is %2: it cannot be put away</source>
        <translation>%1 ist %2: es kann nicht eingelagert werden</translation>
    </message>
    <message>
        <source>%1 is %2: it cannot be returned</source>
        <translation>%1 ist %2: es kann nicht zurückgegeben werden</translation>
    </message>
    <message>
        <source>%1 is %2: it comes back only by a deed that says why</source>
        <translation>%1 ist %2: es kommt nur durch einen Vorgang zurück, der sagt, warum</translation>
    </message>
    <message>
        <source>%1 is %2: it needs no label</source>
        <translation>%1 ist %2: es braucht kein Etikett</translation>
    </message>
    <message>
        <source>%1 is %2: nothing of it is left to cut</source>
        <translation>%1 ist %2: davon ist nichts mehr zu sägen</translation>
    </message>
    <message>
        <source>%1 is %2: only a piece on the rack can be missing from it</source>
        <translation>%1 ist %2: nur ein Stück im Regal kann dort fehlen</translation>
    </message>
    <message>
        <source>%1 is %2: only what is missing is written off</source>
        <translation>%1 ist %2: nur was fehlt, wird ausgebucht</translation>
    </message>
    <message>
        <source>%1 is %2: say which heat it is</source>
        <translation>%1 ist %2: angeben, welche Schmelze es ist</translation>
    </message>
    <message>
        <source>%1 is a drop: correct the bar it came from, %2</source>
        <translation>%1 ist ein Reststück: die Stange berichtigen, aus der es kommt, %2</translation>
    </message>
    <message>
        <source>%1 is as thick as it is wide</source>
        <translation>%1 ist so dick wie breit</translation>
    </message>
    <message>
        <source>%1 is at %2 already</source>
        <translation>%1 ist schon auf %2</translation>
    </message>
    <message>
        <source>%1 is at another site than %2</source>
        <translation>%1 ist an einem anderen Standort als %2</translation>
    </message>
    <message>
        <source>%1 is at saw %2: say what is in the vice</source>
        <translation>%1 ist an Säge %2: angeben, was eingespannt ist</translation>
    </message>
    <message>
        <source>%1 is being counted already</source>
        <translation>%1 wird schon gezählt</translation>
    </message>
    <message>
        <source>%1 is cut otherwise than %2 by its layout: cut them one after the other</source>
        <translation>%1 wird nach seinem Plan anders gesägt als %2: nacheinander sägen</translation>
    </message>
    <message>
        <source>%1 is good for %2: to %3 is no downgrade</source>
        <translation>%1 ist gut für %2: auf %3 ist keine Herabstufung</translation>
    </message>
    <message>
        <source>%1 is in the book with another mass a metre than %2 g</source>
        <translation>%1 steht im Buch mit einer anderen Masse je Meter als %2 g</translation>
    </message>
    <message>
        <source>%1 is left over in %2</source>
        <translation>%1 bleibt auf %2 übrig</translation>
    </message>
    <message>
        <source>%1 is missing</source>
        <translation>%1 fehlt</translation>
    </message>
    <message>
        <source>%1 is negative</source>
        <translation>%1 ist negativ</translation>
    </message>
    <message>
        <source>%1 is no data identifier</source>
        <translation>%1 ist keine Datenkennung</translation>
    </message>
    <message>
        <source>%1 is no place for quarantine</source>
        <translation>%1 ist kein Quarantäneplatz</translation>
    </message>
    <message>
        <source>%1 is no reject of an order</source>
        <translation>%1 ist kein Ausschuss eines Auftrags</translation>
    </message>
    <message>
        <source>%1 is no reject that lies here</source>
        <translation>%1 ist kein Ausschuss, der hier liegt</translation>
    </message>
    <message>
        <source>%1 is no size of EN 10056-1</source>
        <translation>%1 ist keine Größe nach EN 10056-1</translation>
    </message>
    <message>
        <source>%1 is not a date</source>
        <translation>%1 ist kein Datum</translation>
    </message>
    <message>
        <source>%1 is not a date or time</source>
        <translation>%1 ist weder Datum noch Uhrzeit</translation>
    </message>
    <message>
        <source>%1 is not a number</source>
        <translation>%1 ist keine Zahl</translation>
    </message>
    <message>
        <source>%1 is not a whole number of nanometres</source>
        <translation>%1 ist keine ganze Zahl von Nanometern</translation>
    </message>
    <message>
        <source>%1 is not at saw %2; there is %3</source>
        <translation>%1 ist nicht an Säge %2; dort ist %3</translation>
    </message>
    <message>
        <source>%1 is not built like a tag</source>
        <translation>%1 ist nicht wie eine Kennung gebildet</translation>
    </message>
    <message>
        <source>%1 is not done in a transaction that looks at an older book</source>
        <translation>%1 geht nicht in einer Transaktion, die ein älteres Buch sieht</translation>
    </message>
    <message>
        <source>%1 is not edited while it is %2</source>
        <translation>%1 wird nicht geändert, solange es %2 ist</translation>
    </message>
    <message>
        <source>%1 is not in quarantine</source>
        <translation>%1 ist nicht in Quarantäne</translation>
    </message>
    <message>
        <source>%1 is not let go: %2</source>
        <translation>%1 wird nicht freigegeben: %2</translation>
    </message>
    <message>
        <source>%1 is not missing: it is %2</source>
        <translation>%1 fehlt nicht: es ist %2</translation>
    </message>
    <message>
        <source>%1 is not on its way: it is %2</source>
        <translation>%1 ist nicht unterwegs: es ist %2</translation>
    </message>
    <message>
        <source>%1 is not outside: it is %2</source>
        <translation>%1 ist nicht außer Haus: es ist %2</translation>
    </message>
    <message>
        <source>%1 is not promised to a plan: bars are cut together by one layout; cut it by itself</source>
        <translation>%1 ist keinem Plan zugesagt: zusammen gesägte Stangen haben eine Aufteilung; für sich sägen</translation>
    </message>
    <message>
        <source>%1 is not promised to any plan</source>
        <translation>%1 ist keinem Plan zugesagt</translation>
    </message>
    <message>
        <source>%1 is not promised to anybody</source>
        <translation>%1 ist niemandem zugesagt</translation>
    </message>
    <message>
        <source>%1 is not scrapped: %2</source>
        <translation>%1 wird nicht verschrottet: %2</translation>
    </message>
    <message>
        <source>%1 is not split: %2</source>
        <translation>%1 wird nicht geteilt: %2</translation>
    </message>
    <message>
        <source>%1 is of another heat: %2</source>
        <translation>%1 ist aus einer anderen Schmelze: %2</translation>
    </message>
    <message>
        <source>%1 is of heat %2; the label says %3</source>
        <translation>%1 ist aus Schmelze %2; auf dem Etikett steht %3</translation>
    </message>
    <message>
        <source>%1 is ours</source>
        <translation>%1 gehört uns</translation>
    </message>
    <message>
        <source>%1 is ours already</source>
        <translation>%1 gehört schon uns</translation>
    </message>
    <message>
        <source>%1 is out of range</source>
        <translation>%1 liegt außerhalb des Bereichs</translation>
    </message>
    <message>
        <source>%1 is outside the tolerance of order %2 line %3</source>
        <translation>%1 ist außerhalb der Toleranz von Auftrag %2 Position %3</translation>
    </message>
    <message>
        <source>%1 is promised to plan %2, not to plan %3</source>
        <translation>%1 ist Plan %2 zugesagt, nicht Plan %3</translation>
    </message>
    <message>
        <source>%1 is quarantined (%2): it is not put where metal is taken from</source>
        <translation>%1 ist in Quarantäne (%2): es kommt nicht dorthin, wo Material entnommen wird</translation>
    </message>
    <message>
        <source>%1 is still %2</source>
        <translation>%1 ist noch %2</translation>
    </message>
    <message>
        <source>%1 is strapped in bundle %2</source>
        <translation>%1 ist im Bund %2 gebunden</translation>
    </message>
    <message>
        <source>%1 is thicker than half of its smaller side</source>
        <translation>%1 ist dicker als die halbe kleinere Seite</translation>
    </message>
    <message>
        <source>%1 is told nothing</source>
        <translation>%1 bekommt keine Angaben</translation>
    </message>
    <message>
        <source>%1 is too heavy</source>
        <translation>%1 ist zu schwer</translation>
    </message>
    <message>
        <source>%1 is too large</source>
        <translation>%1 ist zu groß</translation>
    </message>
    <message>
        <source>%1 is too long</source>
        <translation>%1 ist zu lang</translation>
    </message>
    <message>
        <source>%1 itself is not in quarantine: %2 came before it and is</source>
        <translation>%1 selbst ist nicht in Quarantäne: %2 kam davor und ist es</translation>
    </message>
    <message>
        <source>%1 leaves %2, kept</source>
        <translation>%1 hinterlässt %2, behalten</translation>
    </message>
    <message>
        <source>%1 leaves %2, scrap</source>
        <translation>%1 hinterlässt %2, Schrott</translation>
    </message>
    <message>
        <source>%1 leaves nothing</source>
        <translation>%1 hinterlässt nichts</translation>
    </message>
    <message>
        <source>%1 less full bar</source>
        <translation>%1 volle Stange weniger</translation>
    </message>
    <message>
        <source>%1 lies in another place than %2, or is in a bundle already</source>
        <translation>%1 liegt auf einem anderen Platz als %2 oder ist schon in einem Bund</translation>
    </message>
    <message>
        <source>%1 lies where it is counted: the count says whether it is missing</source>
        <translation>%1 liegt, wo gezählt wird: die Zählung sagt, ob es fehlt</translation>
    </message>
    <message>
        <source>%1 limits its heats: %2 is of heat %3, %4 of heat %5; make up a bundle of each heat, or cut %6 by itself</source>
        <translation>%1 begrenzt seine Schmelzen: %2 ist aus Schmelze %3, %4 aus Schmelze %5; je Schmelze ein Bund bilden oder %6 für sich sägen</translation>
    </message>
    <message numerus="yes">
        <source>%1 live promises, %2 of metal that is gone</source>
        <translation>
            <numerusform>%1 laufende Zusage, %2 von Material, das weg ist</numerusform>
            <numerusform>%1 laufende Zusagen, %2 von Material, das weg ist</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 lots, %2 do not add up</source>
        <translation>
            <numerusform>%1 Los, %2 gehen nicht auf</numerusform>
            <numerusform>%1 Lose, %2 gehen nicht auf</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 may not serve it: %2</source>
        <translation>%1 darf nicht dafür verwendet werden: %2</translation>
    </message>
    <message>
        <source>%1 may not serve order %2 line %3: %4</source>
        <translation>%1 darf nicht für Auftrag %2 Position %3 verwendet werden: %4</translation>
    </message>
    <message>
        <source>%1 measures %2 (in doubt by %3) and %4 %5 (by %6)</source>
        <translation>%1 misst %2 (unsicher um %3) und %4 %5 (um %6)</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>%1 min each</source>
        <translation>je %1 min</translation>
    </message>
    <message>
        <source>%1 more bar opened</source>
        <translation>%1 Stange mehr angebrochen</translation>
    </message>
    <message>
        <source>%1 more bars opened</source>
        <translation>%1 Stangen mehr angebrochen</translation>
    </message>
    <message>
        <source>%1 more cuts short</source>
        <translation>%1 Schnitte mehr fehlen</translation>
    </message>
    <message>
        <source>%1 more full bar</source>
        <translation>%1 volle Stange mehr</translation>
    </message>
    <message>
        <source>%1 more piece pulled</source>
        <translation>%1 Stück mehr entnommen</translation>
    </message>
    <message>
        <source>%1 more pieces pulled</source>
        <translation>%1 Stück mehr entnommen</translation>
    </message>
    <message>
        <source>%1 names other ancestors than its parent</source>
        <translation>%1 nennt andere Vorfahren als sein Ausgangsstück</translation>
    </message>
    <message>
        <source>%1 needs a request number</source>
        <translation>%1 braucht eine Anforderungsnummer</translation>
    </message>
    <message>
        <source>%1 no. %2</source>
        <translation>%1 Nr. %2</translation>
    </message>
    <message>
        <source>%1 no. %2 of %3</source>
        <translation>%1 Nr. %2 von %3</translation>
    </message>
    <message>
        <source>%1 no. %2 of %3, version %4</source>
        <translation>%1 Nr. %2 von %3, Fassung %4</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>%1 of %2 no. %3 version %4 of %5, unaltered%6. Delivered under note %7: %8. %9</source>
        <translation>%1 von %2 Nr. %3 Fassung %4 von %5, unverändert%6. Geliefert mit Lieferschein %7: %8. %9</translation>
    </message>
    <message>
        <source>%1 of %2, cut from %3 of heat %4: %5</source>
        <translation>%1 von %2, gesägt aus %3 der Schmelze %4: %5</translation>
    </message>
    <message>
        <source>%1 of %2, note %3: %4</source>
        <translation>%1 von %2, Lieferschein %3: %4</translation>
    </message>
    <message>
        <source>%1 of %2, number %3 of %4: %5</source>
        <translation>%1 von %2, Nummer %3 von %4: %5</translation>
    </message>
    <message>
        <source>%1 of heat %2</source>
        <translation>%1 aus Schmelze %2</translation>
    </message>
    <message>
        <source>%1 of order %2 line %3</source>
        <translation>%1 von Auftrag %2 Position %3</translation>
    </message>
    <message>
        <source>%1 of them: more than the slip says</source>
        <translation>%1 davon: mehr, als der Lieferschein sagt</translation>
    </message>
    <message>
        <source>%1 only grows: nothing in it is changed or taken out</source>
        <translation>%1 wächst nur: nichts darin wird geändert oder entnommen</translation>
    </message>
    <message>
        <source>%1 piece not: %2</source>
        <translation>%1 Stück nicht: %2</translation>
    </message>
    <message numerus="yes">
        <source>%1 pieces</source>
        <translation>
            <numerusform>%1 Stück</numerusform>
            <numerusform>%1 Stück</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 pieces not: %2</source>
        <translation>
            <numerusform>%1 Stück nicht: %2</numerusform>
            <numerusform>%1 Stück nicht: %2</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 pieces of it are on site, not %2</source>
        <translation>
            <numerusform>%1 Stück davon ist im Haus, nicht %2</numerusform>
            <numerusform>%1 Stück davon sind im Haus, nicht %2</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 pieces of order %2 line %3 have been shipped; it cannot become %4</source>
        <translation>
            <numerusform>%1 Stück von Auftrag %2 Position %3 ist geliefert; es kann nicht %4 werden</numerusform>
            <numerusform>%1 Stück von Auftrag %2 Position %3 sind geliefert; es kann nicht %4 werden</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 pieces, %2 do not add up</source>
        <translation>
            <numerusform>%1 Stück, %2 gehen nicht auf</numerusform>
            <numerusform>%1 Stück, %2 gehen nicht auf</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 root %2 toe %3</source>
        <translation>%1 Wurzel %2 Spitze %3</translation>
    </message>
    <message>
        <source>%1 scrap</source>
        <translation>%1 Schrott</translation>
    </message>
    <message numerus="yes">
        <source>%1 seals, %2 no longer agree</source>
        <translation>
            <numerusform>%1 Siegel, %2 stimmen nicht mehr</numerusform>
            <numerusform>%1 Siegel, %2 stimmen nicht mehr</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 short</source>
        <translation>%1 fehlen</translation>
    </message>
    <message>
        <source>%1 stays here as evidence: %2</source>
        <translation>%1 bleibt als Beweis hier: %2</translation>
    </message>
    <message>
        <source>%1 still to cut at saw %2</source>
        <translation>noch %1 an Säge %2 zu sägen</translation>
    </message>
    <message numerus="yes">
        <source>%1 strokes are not booked in one go; expected 100000 or less</source>
        <translation>
            <numerusform>%1 Schnitt wird nicht auf einmal gebucht; erwartet werden höchstens 100000</numerusform>
            <numerusform>%1 Schnitte werden nicht auf einmal gebucht; erwartet werden höchstens 100000</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 strokes cannot be booked; expected 1 or more</source>
        <translation>
            <numerusform>%1 Schnitt lässt sich nicht buchen; erwartet wird 1 oder mehr</numerusform>
            <numerusform>%1 Schnitte lassen sich nicht buchen; erwartet wird 1 oder mehr</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 tables</source>
        <translation>%1 Tabellen</translation>
    </message>
    <message>
        <source>%1 takes lengths up to %2; this piece is %3</source>
        <translation>%1 nimmt Längen bis %2; dieses Stück ist %3 lang</translation>
    </message>
    <message>
        <source>%1 to %2 %3</source>
        <translation>%1 bis %2 %3</translation>
    </message>
    <message>
        <source>%1 was calibrated on %2 already</source>
        <translation>%1 wurde am %2 schon kalibriert</translation>
    </message>
    <message>
        <source>%1 was counted already</source>
        <translation>%1 ist schon gezählt</translation>
    </message>
    <message>
        <source>%1 was counted by you: another person approves it</source>
        <translation>%1 haben Sie selbst gezählt: eine andere Person genehmigt es</translation>
    </message>
    <message>
        <source>%1 was counted in %2; in the book it is %3</source>
        <translation>%1 wurde auf %2 gezählt; im Buch ist es %3</translation>
    </message>
    <message>
        <source>%1 was cut (%2, %3, and what followed) while %4</source>
        <translation>%1 wurde gesägt (%2, %3 und was folgte), während %4</translation>
    </message>
    <message>
        <source>%1 was cut at saw %2: %3</source>
        <translation>%1 wurde an Säge %2 gesägt: %3</translation>
    </message>
    <message>
        <source>%1 was cut for another order: %2</source>
        <translation>%1 wurde für einen anderen Auftrag gesägt: %2</translation>
    </message>
    <message>
        <source>%1 was cut: %2</source>
        <translation>%1 wurde gesägt: %2</translation>
    </message>
    <message>
        <source>%1 was found in %2 of this heat (report %3 by %4); %5</source>
        <translation>%1 wurde in %2 dieser Schmelze gefunden (Meldung %3 von %4); %5</translation>
    </message>
    <message>
        <source>%1 was never calibrated</source>
        <translation>%1 wurde nie kalibriert</translation>
    </message>
    <message>
        <source>%1 was not sold to %2: it is %3</source>
        <translation>%1 wurde nicht an %2 verkauft: es ist %3</translation>
    </message>
    <message>
        <source>%1 was received by you: another person releases it</source>
        <translation>%1 haben Sie selbst angenommen: eine andere Person gibt es frei</translation>
    </message>
    <message>
        <source>%1 was sent to %2; %3 is at another site</source>
        <translation>%1 ging nach %2; %3 ist an einem anderen Standort</translation>
    </message>
    <message>
        <source>%1 went out for %2: its condition is not %3 any more</source>
        <translation>%1 ging für %2 außer Haus: sein Zustand ist nicht mehr %3</translation>
    </message>
    <message>
        <source>%1 x %2</source>
        <translation>%1 x %2</translation>
    </message>
    <message>
        <source>%1 x %2 no longer from %3</source>
        <translation>%1 x %2 nicht mehr aus %3</translation>
    </message>
    <message>
        <source>%1 x %2 scrap</source>
        <translation>%1 x %2 Schrott</translation>
    </message>
    <message>
        <source>%1%2 %3 %4, %5 allows %6 %7%8%9</source>
        <translation>%1%2 %3 %4, %5 erlaubt %6 %7%8%9</translation>
    </message>
    <message>
        <source>%1, %2 cheaper</source>
        <translation>%1, %2 billiger</translation>
    </message>
    <message>
        <source>%1, %2 dearer</source>
        <translation>%1, %2 teurer</translation>
    </message>
    <message>
        <source>%1, as good in worth</source>
        <translation>%1, gleich im Wert</translation>
    </message>
    <message>
        <source>%1, costs the same</source>
        <translation>%1, kostet dasselbe</translation>
    </message>
    <message>
        <source>%1, heat %2</source>
        <translation>%1, Schmelze %2</translation>
    </message>
    <message>
        <source>%1, loses %2 less in worth</source>
        <translation>%1, verliert %2 weniger an Wert</translation>
    </message>
    <message>
        <source>%1, loses %2 more in worth</source>
        <translation>%1, verliert %2 mehr an Wert</translation>
    </message>
    <message>
        <source>%1, marks: %2</source>
        <translation>%1, Zeichen: %2</translation>
    </message>
    <message>
        <source>%1, no heat</source>
        <translation>%1, keine Schmelze</translation>
    </message>
    <message>
        <source>%1, or ask the customer, and give the name and the writing</source>
        <translation>%1, oder den Kunden fragen und Namen und Schreiben angeben</translation>
    </message>
    <message>
        <source>%1, sold whole: %2</source>
        <translation>%1, ganz verkauft: %2</translation>
    </message>
    <message>
        <source>%1: %2 is missing</source>
        <translation>%1: %2 fehlt</translation>
    </message>
    <message numerus="yes">
        <source>%1: %2 pieces were shipped to %3, %4 are said to come back</source>
        <translation>
            <numerusform>%1: %2 Stück ging an %3, zurückkommen sollen %4</numerusform>
            <numerusform>%1: %2 Stück gingen an %3, zurückkommen sollen %4</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: a package is a PDF; expected a name that ends in .pdf</source>
        <translation>%1: eine Zeugnismappe ist ein PDF; erwartet wird ein Name, der auf .pdf endet</translation>
    </message>
    <message>
        <source>%1: a text is too long</source>
        <translation>%1: ein Text ist zu lang</translation>
    </message>
    <message>
        <source>%1: a value cannot be read: %2</source>
        <translation>%1: ein Wert ist nicht lesbar: %2</translation>
    </message>
    <message>
        <source>%1: an amount or a word is out of range (%2)</source>
        <translation>%1: ein Betrag oder ein Wort liegt außerhalb des Erlaubten (%2)</translation>
    </message>
    <message>
        <source>%1: lot and owner of metal are not edited</source>
        <translation>%1: Los und Eigentümer von Material werden nicht geändert</translation>
    </message>
    <message>
        <source>%1: not written: the disk did not take all of it</source>
        <translation>%1: nicht geschrieben: der Datenträger hat nicht alles angenommen</translation>
    </message>
    <message>
        <source>%1: some of the sizes that the old limit is for are left out</source>
        <translation>%1: einige der Größen, für die die alte Grenze gilt, fehlen</translation>
    </message>
    <message>
        <source>%1: something is named that is not in the book</source>
        <translation>%1: etwas ist genannt, das nicht im Buch steht</translation>
    </message>
    <message>
        <source>%1: the same thing is named twice</source>
        <translation>%1: dasselbe ist zweimal genannt</translation>
    </message>
    <message>
        <source>%1: there is no such day or time</source>
        <translation>%1: diesen Tag oder diese Zeit gibt es nicht</translation>
    </message>
    <message>
        <source>%1: they are not of one length; cut them one after the other</source>
        <translation>%1: sie sind nicht gleich lang; nacheinander sägen</translation>
    </message>
    <message>
        <source>%1: this is in the book already</source>
        <translation>%1: das steht schon im Buch</translation>
    </message>
    <message>
        <source>%1: where a piece came from, its tag and how long it was made are not edited</source>
        <translation>%1: woher ein Stück kam, seine Kennung und seine Anfangslänge werden nicht geändert</translation>
    </message>
    <message>
        <source>%1: which piece metal came from and in which cut is not edited</source>
        <translation>%1: aus welchem Stück und welchem Schnitt Material kam, wird nicht geändert</translation>
    </message>
    <message>
        <source>%1; at most %2 from the best possible</source>
        <translation>%1; höchstens %2 vom Bestmöglichen</translation>
    </message>
    <message>
        <source>%1; how near the best it is was not worked out</source>
        <translation>%1; wie nah am Besten es ist, wurde nicht ermittelt</translation>
    </message>
    <message>
        <source>%1; now %2</source>
        <translation>%1; jetzt %2</translation>
    </message>
    <message>
        <source>%1; planned anew</source>
        <translation>%1; neu geplant</translation>
    </message>
    <message>
        <source>&apos;%1&apos; as the decimal mark</source>
        <translation>„%1“ als Dezimalzeichen</translation>
    </message>
    <message>
        <source>&apos;%1&apos; inside the number %2</source>
        <translation>„%1“ in der Zahl %2</translation>
    </message>
    <message>
        <source>(file SHA-256 %1)</source>
        <translation>(Datei SHA-256 %1)</translation>
    </message>
    <message>
        <source>+%1/−%2</source>
        <translation>+%1/−%2</translation>
    </message>
    <message>
        <source>0 to 999 999</source>
        <translation>0 bis 999 999</translation>
    </message>
    <message>
        <source>0-9 and A-Z</source>
        <translation>0-9 und A-Z</translation>
    </message>
    <message>
        <source>1 piece</source>
        <translation>1 Stück</translation>
    </message>
    <message>
        <source>12 inches or more behind the feet in %1</source>
        <translation>12 Zoll oder mehr hinter den Fuß in %1</translation>
    </message>
    <message>
        <source>2.1, 2.2, 3.1, 3.2 (EN 10204) or none</source>
        <translation>2.1, 2.2, 3.1, 3.2 (EN 10204) oder none</translation>
    </message>
    <message>
        <source>2026-03-04 or 2026-03-04T08:15</source>
        <translation>2026-03-04 oder 2026-03-04T08:15</translation>
    </message>
    <message>
        <source>3.1, 2.2, 2.1, none, grade only or unknown</source>
        <translation>3.1, 2.2, 2.1, none, grade only oder unknown</translation>
    </message>
    <message numerus="yes">
        <source>All %1 pieces cut for order %2 are of heat %3 of %4; no other heat went into this order.</source>
        <translation>
            <numerusform>Das %1 für Auftrag %2 gesägte Stück ist aus Schmelze %3 von %4; keine andere Schmelze ging in diesen Auftrag.</numerusform>
            <numerusform>Alle %1 für Auftrag %2 gesägten Stücke sind aus Schmelze %3 von %4; keine andere Schmelze ging in diesen Auftrag.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>All %1 pieces cut for order %2 are of heat %3 of %4; no other heat went into this order. %5 pieces are not cut yet.</source>
        <translation>
            <numerusform>Das %1 für Auftrag %2 gesägte Stück ist aus Schmelze %3 von %4; keine andere Schmelze ging in diesen Auftrag. %5 Stück sind noch nicht gesägt.</numerusform>
            <numerusform>Alle %1 für Auftrag %2 gesägten Stücke sind aus Schmelze %3 von %4; keine andere Schmelze ging in diesen Auftrag. %5 Stück sind noch nicht gesägt.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>All %1 pieces cut for order %2 are of heat %3 of %4; no other heat went into this order. Before it was identified, some of the metal had no heat in the book; the tags are listed.</source>
        <translation>
            <numerusform>Das %1 für Auftrag %2 gesägte Stück ist aus Schmelze %3 von %4; keine andere Schmelze ging in diesen Auftrag. Bevor es bestimmt war, hatte ein Teil des Materials im Buch keine Schmelze; die Kennungen sind aufgeführt.</numerusform>
            <numerusform>Alle %1 für Auftrag %2 gesägten Stücke sind aus Schmelze %3 von %4; keine andere Schmelze ging in diesen Auftrag. Bevor es bestimmt war, hatte ein Teil des Materials im Buch keine Schmelze; die Kennungen sind aufgeführt.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>All %1 pieces cut for order %2 are of heat %3 of %4; no other heat went into this order. Before it was identified, some of the metal had no heat in the book; the tags are listed. %5 pieces are not cut yet.</source>
        <translation>
            <numerusform>Das %1 für Auftrag %2 gesägte Stück ist aus Schmelze %3 von %4; keine andere Schmelze ging in diesen Auftrag. Bevor es bestimmt war, hatte ein Teil des Materials im Buch keine Schmelze; die Kennungen sind aufgeführt. %5 Stück sind noch nicht gesägt.</numerusform>
            <numerusform>Alle %1 für Auftrag %2 gesägten Stücke sind aus Schmelze %3 von %4; keine andere Schmelze ging in diesen Auftrag. Bevor es bestimmt war, hatte ein Teil des Materials im Buch keine Schmelze; die Kennungen sind aufgeführt. %5 Stück sind noch nicht gesägt.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>BUNDLE %1: %2 bars cut together, %3 stroke</source>
        <translation>
            <numerusform>BUND %1: %2 Stange gesägt, %3 Schnitt</numerusform>
            <numerusform>BUND %1: %2 Stangen zusammen gesägt, %3 Schnitt</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>BUNDLE %1: %2 bars cut together, %3 strokes</source>
        <translation>
            <numerusform>BUND %1: %2 Stange gesägt, %3 Schnitte</numerusform>
            <numerusform>BUND %1: %2 Stangen zusammen gesägt, %3 Schnitte</numerusform>
        </translation>
    </message>
    <message>
        <source>Bars roll, straps spring: chock first, stand at the end. Slings and tongs rated, nothing lifted over people. Ends and burrs cut, chips are hot. Guards on, interlocks working. Isolate the power before a blade change. Gloves for handling, no gloves at a moving blade. Never hold a short rest by hand. Reminders only: local rules and trained people decide.</source>
        <translation>Stangen rollen, Bänder springen: erst verkeilen, am Ende stehen. Anschlagmittel und Zangen mit Tragfähigkeit, nichts über Menschen heben. Enden und Grate schneiden, Späne sind heiß. Schutzhauben zu, Verriegelungen in Funktion. Vor dem Bandwechsel die Energie trennen. Handschuhe beim Handhaben, keine am laufenden Band. Nie einen kurzen Rest mit der Hand halten. Nur Erinnerungen: es gelten die örtlichen Regeln, es entscheiden unterwiesene Personen.</translation>
    </message>
    <message>
        <source>CRANE</source>
        <translation>KRAN</translation>
    </message>
    <message>
        <source>EN 10204</source>
        <translation>EN 10204</translation>
    </message>
    <message>
        <source>EN 10204 or ISO 10474</source>
        <translation>EN 10204 oder ISO 10474</translation>
    </message>
    <message>
        <source>EN 10204:2004 clause 4.2; with one validator it is no 3.2</source>
        <translation>EN 10204:2004 Abschnitt 4.2; mit nur einem Bestätigenden ist es kein 3.2</translation>
    </message>
    <message>
        <source>EN 10204:2004 clause 4; without that person it is no %1</source>
        <translation>EN 10204:2004 Abschnitt 4; ohne diese Person ist es kein %1</translation>
    </message>
    <message>
        <source>ISO 10474</source>
        <translation>ISO 10474</translation>
    </message>
    <message>
        <source>It is not so that one heat alone went into order %1: %2.</source>
        <translation>Es ist nicht so, dass nur eine Schmelze in Auftrag %1 ging: %2.</translation>
    </message>
    <message numerus="yes">
        <source>It is not so that one heat alone went into order %1: %2. %3 pieces are not cut yet.</source>
        <translation>
            <numerusform>Es ist nicht so, dass nur eine Schmelze in Auftrag %1 ging: %2. %3 Stück ist noch nicht gesägt.</numerusform>
            <numerusform>Es ist nicht so, dass nur eine Schmelze in Auftrag %1 ging: %2. %3 Stück sind noch nicht gesägt.</numerusform>
        </translation>
    </message>
    <message>
        <source>JPEG or PNG, told by its first bytes</source>
        <translation>JPEG oder PNG, an den ersten Bytes erkannt</translation>
    </message>
    <message>
        <source>LEFT %1</source>
        <translation>REST %1</translation>
    </message>
    <message>
        <source>LEFT %1: KEEP, label prints</source>
        <translation>REST %1: BEHALTEN, Etikett wird gedruckt</translation>
    </message>
    <message>
        <source>LEFT %1: SCRAP</source>
        <translation>REST %1: SCHROTT</translation>
    </message>
    <message>
        <source>LEFT ≈ %1</source>
        <translation>REST ≈ %1</translation>
    </message>
    <message>
        <source>LEFT ≈ %1: KEEP, label prints</source>
        <translation>REST ≈ %1: BEHALTEN, Etikett wird gedruckt</translation>
    </message>
    <message>
        <source>LEFT ≈ %1: SCRAP</source>
        <translation>REST ≈ %1: SCHROTT</translation>
    </message>
    <message numerus="yes">
        <source>Looked at: %1 strokes booked for the order at any time, in %2 cuts; %3 cut pieces now, from %4 pieces, which with all they came from are %5; %6 happenings in %7 chains, each hashed anew%8.</source>
        <translation>
            <numerusform>Angesehen: %1 je für den Auftrag gebuchter Schnitt, in %2 Sägevorgängen; jetzt %3 gesägte Stücke, aus %4 Stücken, mit allem, woraus sie kamen, %5; %6 Ereignisse in %7 Ketten, jedes neu gehasht%8.</numerusform>
            <numerusform>Angesehen: %1 je für den Auftrag gebuchte Schnitte, in %2 Sägevorgängen; jetzt %3 gesägte Stücke, aus %4 Stücken, mit allem, woraus sie kamen, %5; %6 Ereignisse in %7 Ketten, jedes neu gehasht%8.</numerusform>
        </translation>
    </message>
    <message>
        <source>MARK: end not known, look before clamping</source>
        <translation>ZEICHEN: Ende nicht bekannt, vor dem Spannen nachsehen</translation>
    </message>
    <message>
        <source>MARK: none on the metal, go by the tag</source>
        <translation>ZEICHEN: keines am Material, nach der Kennung gehen</translation>
    </message>
    <message>
        <source>MARK: on both ends</source>
        <translation>ZEICHEN: an beiden Enden</translation>
    </message>
    <message>
        <source>MARK: on the end cut FIRST, copy it before cutting</source>
        <translation>ZEICHEN: am Ende, das ZUERST gesägt wird, vor dem Sägen übertragen</translation>
    </message>
    <message>
        <source>MARK: on the end cut LAST, leave it on the rest</source>
        <translation>ZEICHEN: am Ende, das ZULETZT gesägt wird, auf dem Rest lassen</translation>
    </message>
    <message>
        <source>NO HEAT</source>
        <translation>KEINE SCHMELZE</translation>
    </message>
    <message>
        <source>NO HEAT %1: not to be used</source>
        <translation>KEINE SCHMELZE %1: nicht verwenden</translation>
    </message>
    <message>
        <source>NOTHING LEFT</source>
        <translation>KEIN REST</translation>
    </message>
    <message>
        <source>Nothing is stated about the heats of order %1: the book was changed behind its back.</source>
        <translation>Über die Schmelzen von Auftrag %1 wird nichts bescheinigt: das Buch wurde an ihm vorbei geändert.</translation>
    </message>
    <message numerus="yes">
        <source>Nothing is stated about the heats of order %1: the book was changed behind its back. %2 pieces are not cut yet.</source>
        <translation>
            <numerusform>Über die Schmelzen von Auftrag %1 wird nichts bescheinigt: das Buch wurde an ihm vorbei geändert. %2 Stück ist noch nicht gesägt.</numerusform>
            <numerusform>Über die Schmelzen von Auftrag %1 wird nichts bescheinigt: das Buch wurde an ihm vorbei geändert. %2 Stück sind noch nicht gesägt.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing was changed or added; the new quantity and length stand in our additional document %1 (ISO 10474:2013 clause 6).</source>
        <translation>Nichts wurde geändert oder hinzugefügt; die neue Menge und Länge stehen in unserem Zusatzdokument %1 (ISO 10474:2013 Abschnitt 6).</translation>
    </message>
    <message>
        <source>OFFER: leave the last piece uncut at %1, in its tolerance; %2 less to chips</source>
        <translation>ANGEBOT: das letzte Stück bei %1 ungesägt lassen, in seiner Toleranz; %2 weniger Späne</translation>
    </message>
    <message>
        <source>OFFER: what is left would give %1 more of %2/%3, then %4 left; not taken, ask first</source>
        <translation>ANGEBOT: aus dem Rest gingen noch %1 mehr von %2/%3, dann bleiben %4; nicht genommen, erst fragen</translation>
    </message>
    <message>
        <source>OWNED BY %1</source>
        <translation>GEHÖRT %1</translation>
    </message>
    <message>
        <source>QUARANTINE %1: %2</source>
        <translation>QUARANTÄNE %1: %2</translation>
    </message>
    <message>
        <source>STOP AFTER THIS CUT: %1</source>
        <translation>STOPP NACH DIESEM SCHNITT: %1</translation>
    </message>
    <message>
        <source>STOP: %1</source>
        <translation>STOPP: %1</translation>
    </message>
    <message>
        <source>STOP: no more is cut from %1: %2</source>
        <translation>STOPP: aus %1 wird nicht weiter gesägt: %2</translation>
    </message>
    <message>
        <source>THIN LAST SLICE: %1 behind the blade, it may wander</source>
        <translation>DÜNNE LETZTE SCHEIBE: %1 hinter dem Band, es kann verlaufen</translation>
    </message>
    <message>
        <source>THIN LAST SLICE: nothing behind the blade, it may wander</source>
        <translation>DÜNNE LETZTE SCHEIBE: nichts hinter dem Band, es kann verlaufen</translation>
    </message>
    <message>
        <source>TIGHT: measure before cutting (±%1)</source>
        <translation>KNAPP: vor dem Sägen messen (±%1)</translation>
    </message>
    <message>
        <source>TWO PEOPLE</source>
        <translation>ZWEI PERSONEN</translation>
    </message>
    <message>
        <source>This part quantity stands in place of the quantity delivered first (EN 10204:2004 clause 6); the original can be seen on request.</source>
        <translation>Diese Teilmenge steht an Stelle der zuerst gelieferten Menge (EN 10204:2004 Abschnitt 6); das Original kann auf Wunsch eingesehen werden.</translation>
    </message>
    <message>
        <source>YYYY-MM-DD HH24:MI</source>
        <translation>YYYY-MM-DD HH24:MI</translation>
    </message>
    <message>
        <source>`heatkeep bundle list` names them</source>
        <translation>`heatkeep bundle list` nennt sie</translation>
    </message>
    <message>
        <source>`heatkeep certificate add` files the first</source>
        <translation>`heatkeep certificate add` legt das erste ab</translation>
    </message>
    <message>
        <source>`heatkeep count freeze PLACE` begins one, `heatkeep count seen PLACE` tells what is there</source>
        <translation>`heatkeep count freeze PLACE` beginnt eine, `heatkeep count seen PLACE` sagt, was dort ist</translation>
    </message>
    <message>
        <source>`heatkeep cutlist list` and `heatkeep report trace order` say what was cut</source>
        <translation>`heatkeep cutlist list` und `heatkeep report trace order` sagen, was gesägt wurde</translation>
    </message>
    <message>
        <source>`heatkeep device list` names them, `heatkeep device add` enters one</source>
        <translation>`heatkeep device list` nennt sie, `heatkeep device add` trägt eines ein</translation>
    </message>
    <message>
        <source>`heatkeep expected list` names them</source>
        <translation>`heatkeep expected list` nennt sie</translation>
    </message>
    <message>
        <source>`heatkeep saw list` names them</source>
        <translation>`heatkeep saw list` nennt sie</translation>
    </message>
    <message>
        <source>`heatkeep saw rejects` lists them</source>
        <translation>`heatkeep saw rejects` führt sie auf</translation>
    </message>
    <message>
        <source>`heatkeep shop places` lists them; the owner adds one with `heatkeep shop set`</source>
        <translation>`heatkeep shop places` führt sie auf; der Inhaber ergänzt einen mit `heatkeep shop set`</translation>
    </message>
    <message>
        <source>a %1 is validated by the manufacturer&apos;s representative who is independent of production: none is named</source>
        <translation>ein %1 wird vom fertigungsunabhängigen Beauftragten des Herstellers bestätigt: keiner ist genannt</translation>
    </message>
    <message>
        <source>a %1 of %2 %3 is in the book from %4 on already</source>
        <translation>ein %1 von %2 %3 steht ab %4 schon im Buch</translation>
    </message>
    <message>
        <source>a 2.1 states compliance only: it has no results</source>
        <translation>ein 2.1 bescheinigt nur die Übereinstimmung: es hat keine Ergebnisse</translation>
    </message>
    <message>
        <source>a 3.2 is validated by the purchaser&apos;s representative or the official inspector as well: none is named</source>
        <translation>ein 3.2 wird auch vom Beauftragten des Bestellers oder vom amtlichen Abnehmer bestätigt: keiner ist genannt</translation>
    </message>
    <message>
        <source>a band is fitted with its width, its thickness, its kerf and the reason; a kerf is measured with the reason</source>
        <translation>ein Sägeband wird mit Breite, Dicke, Schnittfuge und Grund eingebaut; eine Schnittfuge wird mit Grund gemessen</translation>
    </message>
    <message>
        <source>a bar is named twice</source>
        <translation>eine Stange ist zweimal genannt</translation>
    </message>
    <message>
        <source>a block needs a known site and a size from 1 to 10000</source>
        <translation>ein Block braucht einen bekannten Standort und eine Größe von 1 bis 10000</translation>
    </message>
    <message>
        <source>a bundle has two bars or more</source>
        <translation>ein Bund hat zwei Stangen oder mehr</translation>
    </message>
    <message>
        <source>a calibration has a day that has been, a later day it is due again, and a doubt of 0 or more</source>
        <translation>eine Kalibrierung hat einen vergangenen Tag, einen späteren Tag der nächsten Fälligkeit und eine Unsicherheit von 0 oder mehr</translation>
    </message>
    <message>
        <source>a change says the new quantity (0: cancelled) and why</source>
        <translation>eine Änderung nennt die neue Menge (0: storniert) und den Grund</translation>
    </message>
    <message>
        <source>a character that is neither digit nor capital letter in %1</source>
        <translation>ein Zeichen, das weder Ziffer noch Großbuchstabe ist, in %1</translation>
    </message>
    <message>
        <source>a code cannot carry %1 behind %2</source>
        <translation>ein Code kann %1 hinter %2 nicht tragen</translation>
    </message>
    <message>
        <source>a contact length is above 0</source>
        <translation>eine Eingriffslänge ist über 0</translation>
    </message>
    <message>
        <source>a control character inside a field of the scan: %1</source>
        <translation>ein Steuerzeichen in einem Feld des Scans: %1</translation>
    </message>
    <message>
        <source>a corrected length names its cause</source>
        <translation>eine berichtigte Länge nennt ihre Ursache</translation>
    </message>
    <message>
        <source>a corrected one from its issuer is a new version, which takes the place of this one</source>
        <translation>eine vom Aussteller berichtigte ist eine neue Fassung und tritt an die Stelle dieser</translation>
    </message>
    <message>
        <source>a correction names the error and the reason</source>
        <translation>eine Berichtigung nennt den Fehler und den Grund</translation>
    </message>
    <message>
        <source>a count finds it missing first</source>
        <translation>erst stellt eine Zählung fest, dass es fehlt</translation>
    </message>
    <message>
        <source>a counted piece is at most 1 km long, and no more in doubt</source>
        <translation>ein gezähltes Stück ist höchstens 1 km lang und nicht unsicherer</translation>
    </message>
    <message>
        <source>a cut list named &quot;%1&quot; is already in the book, with other lines</source>
        <translation>eine Zuschnittliste „%1“ steht schon im Buch, mit anderen Positionen</translation>
    </message>
    <message>
        <source>a cutting rate is above 0</source>
        <translation>eine Schnittleistung ist über 0</translation>
    </message>
    <message>
        <source>a date</source>
        <translation>ein Datum</translation>
    </message>
    <message>
        <source>a decimal mark and a fraction together in %1</source>
        <translation>ein Dezimalzeichen und ein Bruch zugleich in %1</translation>
    </message>
    <message>
        <source>a defect is told by its kind, where it is, from which end (first or last) and in words</source>
        <translation>ein Fehler wird gemeldet mit Art, Stelle, von welchem Ende (first oder last) und in Worten</translation>
    </message>
    <message>
        <source>a device is called &quot;%1&quot; already</source>
        <translation>ein Gerät heißt schon „%1“</translation>
    </message>
    <message>
        <source>a dimension of zero in section %1</source>
        <translation>ein Maß von null im Querschnitt %1</translation>
    </message>
    <message>
        <source>a document goes only with the metal it is about</source>
        <translation>ein Dokument geht nur mit dem Material, von dem es handelt</translation>
    </message>
    <message>
        <source>a document is not passed on as &quot;%1&quot; by &quot;%2&quot;</source>
        <translation>ein Dokument wird nicht als „%1“ durch „%2“ weitergegeben</translation>
    </message>
    <message>
        <source>a field without a data identifier in the scan: %1</source>
        <translation>ein Feld ohne Datenkennung im Scan: %1</translation>
    </message>
    <message>
        <source>a file is never changed; a corrected one from its issuer is a new version</source>
        <translation>eine Datei wird nie geändert; eine vom Aussteller berichtigte ist eine neue Fassung</translation>
    </message>
    <message>
        <source>a found piece has a section and a length</source>
        <translation>ein gefundenes Stück hat einen Querschnitt und eine Länge</translation>
    </message>
    <message>
        <source>a fraction of one or more behind a whole number in %1</source>
        <translation>ein Bruch von eins oder mehr hinter einer ganzen Zahl in %1</translation>
    </message>
    <message>
        <source>a fraction too long in %1</source>
        <translation>ein zu langer Bruch in %1</translation>
    </message>
    <message>
        <source>a good piece as the last one</source>
        <translation>ein Gutstück als letztes</translation>
    </message>
    <message>
        <source>a half cut is told by its cause (blade broke or bar slipped), where it is and how wide</source>
        <translation>ein halber Schnitt wird gemeldet mit Ursache (Band gerissen oder Stange verrutscht), Stelle und Breite</translation>
    </message>
    <message>
        <source>a hand-over says how things stand</source>
        <translation>eine Übergabe sagt, wie es steht</translation>
    </message>
    <message>
        <source>a heat is not given to a found piece: write down the marks that can be seen</source>
        <translation>ein gefundenes Stück bekommt keine Schmelze: die sichtbaren Zeichen aufschreiben</translation>
    </message>
    <message>
        <source>a kerf of %1 is narrower than the band (%2)</source>
        <translation>eine Schnittfuge von %1 ist schmaler als das Band (%2)</translation>
    </message>
    <message>
        <source>a label of %1 is printed again only at the piece</source>
        <translation>ein Etikett von %1 wird nur am Stück neu gedruckt</translation>
    </message>
    <message>
        <source>a larger section of the same shape may</source>
        <translation>ein größerer Querschnitt derselben Form darf es</translation>
    </message>
    <message>
        <source>a layout has at least one cut, and every cut a length</source>
        <translation>eine Aufteilung hat mindestens einen Schnitt und jeder Schnitt eine Länge</translation>
    </message>
    <message>
        <source>a length like 6000, 6000mm, 20 ft, 13 7/8 in or 19&apos; 11-3/8&quot;</source>
        <translation>eine Länge wie 6000, 6000mm, 20 ft, 13 7/8 in oder 19&apos; 11-3/8&quot;</translation>
    </message>
    <message>
        <source>a length that is: for inches a fraction down to 1/64 or up to 5 decimals</source>
        <translation>eine Länge, die es gibt: bei Zoll ein Bruch bis 1/64 oder bis zu 5 Nachkommastellen</translation>
    </message>
    <message>
        <source>a length to buy is nothing; expected above 0</source>
        <translation>eine zu kaufende Länge ist null; erwartet wird über 0</translation>
    </message>
    <message>
        <source>a letter for the book&apos;s tags and one for devices&apos; tags are the same</source>
        <translation>ein Buchstabe für Kennungen des Buchs und einer für Kennungen der Geräte sind gleich</translation>
    </message>
    <message>
        <source>a letter, six digits and a check character</source>
        <translation>ein Buchstabe, sechs Ziffern und ein Prüfzeichen</translation>
    </message>
    <message>
        <source>a limit says neither a minimum nor a maximum</source>
        <translation>eine Grenze nennt weder ein Mindest- noch ein Höchstmaß</translation>
    </message>
    <message>
        <source>a mass like 2841, 2841.5 kg, 6263 lb or 2.8 t</source>
        <translation>eine Masse wie 2841, 2841.5 kg, 6263 lb oder 2.8 t</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>eine Zahl</translation>
    </message>
    <message>
        <source>a number of zero or more</source>
        <translation>eine Zahl von null oder mehr</translation>
    </message>
    <message>
        <source>a number without that mark, or thousands set apart by a blank</source>
        <translation>eine Zahl ohne dieses Zeichen oder Tausender mit Leerzeichen</translation>
    </message>
    <message>
        <source>a package is of an order or of a delivery note</source>
        <translation>eine Zeugnismappe gilt einem Auftrag oder einem Lieferschein</translation>
    </message>
    <message>
        <source>a piece for stock has a length</source>
        <translation>ein Stück für den Bestand hat eine Länge</translation>
    </message>
    <message>
        <source>a piece is at most 1 km long</source>
        <translation>ein Stück ist höchstens 1 km lang</translation>
    </message>
    <message>
        <source>a piece is bad, and no reason is given</source>
        <translation>ein Stück ist schlecht, und kein Grund ist genannt</translation>
    </message>
    <message>
        <source>a piece that is to be planned anew is being cut</source>
        <translation>ein Stück, das neu geplant werden soll, wird gerade gesägt</translation>
    </message>
    <message>
        <source>a place of kind quarantine, apart from the rest</source>
        <translation>ein Quarantäneplatz, abseits vom Übrigen</translation>
    </message>
    <message>
        <source>a plan by hand takes the same metal</source>
        <translation>ein Plan von Hand nimmt dasselbe Material</translation>
    </message>
    <message>
        <source>a price is 0 or more, and at most 10 000 000 000.00 a tonne</source>
        <translation>ein Preis ist 0 oder mehr und höchstens 10 000 000 000.00 je Tonne</translation>
    </message>
    <message>
        <source>a price is at most 10 000 000 000.00 a tonne</source>
        <translation>ein Preis ist höchstens 10 000 000 000.00 je Tonne</translation>
    </message>
    <message>
        <source>a promise that ends in the past holds nothing</source>
        <translation>eine Zusage, die in der Vergangenheit endet, hält nichts</translation>
    </message>
    <message>
        <source>a purchase order has lines</source>
        <translation>eine Bestellung hat Positionen</translation>
    </message>
    <message>
        <source>a quarantine needs a reason</source>
        <translation>eine Quarantäne braucht einen Grund</translation>
    </message>
    <message>
        <source>a record</source>
        <translation>ein Nachweis</translation>
    </message>
    <message>
        <source>a record names what it says and the chains it stands on</source>
        <translation>ein Nachweis nennt, was er sagt, und die Ketten, auf denen er steht</translation>
    </message>
    <message numerus="yes">
        <source>a record of %1 bytes cannot be kept</source>
        <translation>
            <numerusform>ein Satz von %1 Byte kann nicht aufbewahrt werden</numerusform>
            <numerusform>ein Satz von %1 Bytes kann nicht aufbewahrt werden</numerusform>
        </translation>
    </message>
    <message>
        <source>a reject is used again as it was measured, and why it may be is said</source>
        <translation>Ausschuss wird verwendet, wie er gemessen wurde, mit Angabe, warum das geht</translation>
    </message>
    <message>
        <source>a release names its evidence</source>
        <translation>eine Freigabe nennt ihren Beleg</translation>
    </message>
    <message>
        <source>a rest of %1 was put in %2 while that was counted: it is booked in %3</source>
        <translation>ein Rest von %1 kam auf %2, während dort gezählt wurde: er ist auf %3 gebucht</translation>
    </message>
    <message numerus="yes">
        <source>a scan of %1 bytes</source>
        <translation>
            <numerusform>ein Scan von %1 Byte</numerusform>
            <numerusform>ein Scan von %1 Bytes</numerusform>
        </translation>
    </message>
    <message>
        <source>a section is at most 3 m across</source>
        <translation>ein Querschnitt misst höchstens 3 m</translation>
    </message>
    <message>
        <source>a shipment needs the number of its delivery note</source>
        <translation>eine Lieferung braucht die Nummer ihres Lieferscheins</translation>
    </message>
    <message>
        <source>a smaller number</source>
        <translation>eine kleinere Zahl</translation>
    </message>
    <message>
        <source>a split has two parts or more</source>
        <translation>eine Teilung hat zwei Teile oder mehr</translation>
    </message>
    <message>
        <source>a strapped bundle is called %1 already</source>
        <translation>ein gebundenes Bund heißt schon %1</translation>
    </message>
    <message>
        <source>a substitution says who agreed, the customer&apos;s writing, and what it costs more (0 where nothing)</source>
        <translation>ein Ersatz nennt, wer zugestimmt hat, das Schreiben des Kunden und die Mehrkosten (0, wenn keine)</translation>
    </message>
    <message>
        <source>a test slice names where it went: the laboratory&apos;s reference</source>
        <translation>eine Probescheibe nennt, wohin sie ging: das Zeichen des Labors</translation>
    </message>
    <message>
        <source>a test value is out of range or in another unit</source>
        <translation>ein Prüfwert liegt außerhalb oder hat eine andere Einheit</translation>
    </message>
    <message>
        <source>a thickness under half of it</source>
        <translation>eine Dicke unter der Hälfte davon</translation>
    </message>
    <message>
        <source>a ticket has a number, a weighed mass and a price</source>
        <translation>ein Wiegeschein hat eine Nummer, eine gewogene Masse und einen Preis</translation>
    </message>
    <message>
        <source>a ticket of %1 g at %2 cents a tonne cannot be scrap that was weighed</source>
        <translation>ein Wiegeschein über %1 g zu %2 Cent je Tonne kann kein gewogener Schrott sein</translation>
    </message>
    <message>
        <source>a tolerance like -0/+1 or +-0.5</source>
        <translation>eine Toleranz wie -0/+1 oder +-0.5</translation>
    </message>
    <message>
        <source>a unit behind the last dimension</source>
        <translation>eine Einheit hinter dem letzten Maß</translation>
    </message>
    <message>
        <source>a wall under half the outside diameter</source>
        <translation>eine Wand unter dem halben Außendurchmesser</translation>
    </message>
    <message>
        <source>a whole number from %1 to %2</source>
        <translation>eine ganze Zahl von %1 bis %2</translation>
    </message>
    <message>
        <source>a wrong receipt is put right by correct_receipt, with the reason</source>
        <translation>ein falscher Wareneingang wird mit correct_receipt berichtigt, mit Grund</translation>
    </message>
    <message>
        <source>against the plan by hand: %1</source>
        <translation>gegen den Plan von Hand: %1</translation>
    </message>
    <message>
        <source>aim &quot;%1&quot; is not known; expected drops-first, least-money, fewest-bars or least-metres</source>
        <translation>das Ziel „%1“ ist nicht bekannt; erwartet wird drops-first, least-money, fewest-bars oder least-metres</translation>
    </message>
    <message>
        <source>alloy steel</source>
        <translation>legierter Stahl</translation>
    </message>
    <message>
        <source>alone %1</source>
        <translation>allein %1</translation>
    </message>
    <message>
        <source>already in the book: %1</source>
        <translation>schon im Buch: %1</translation>
    </message>
    <message>
        <source>an analysis proves the grade, not the heat</source>
        <translation>eine Analyse beweist den Werkstoff, nicht die Schmelze</translation>
    </message>
    <message>
        <source>an opening balance</source>
        <translation>ein Anfangsbestand</translation>
    </message>
    <message>
        <source>analysis</source>
        <translation>Analyse</translation>
    </message>
    <message>
        <source>and %1 more for a product analysis</source>
        <translation>und %1 mehr bei einer Stückanalyse</translation>
    </message>
    <message>
        <source>and left with note %1</source>
        <translation>und ging mit Lieferschein %1</translation>
    </message>
    <message>
        <source>and some of it was before: %1</source>
        <translation>und ein Teil davon war es vorher: %1</translation>
    </message>
    <message>
        <source>angle</source>
        <translation>Winkel</translation>
    </message>
    <message>
        <source>another condition</source>
        <translation>ein anderer Zustand</translation>
    </message>
    <message>
        <source>another grade</source>
        <translation>ein anderer Werkstoff</translation>
    </message>
    <message>
        <source>another length than ordered</source>
        <translation>eine andere Länge als bestellt</translation>
    </message>
    <message>
        <source>another one of the same piece, at the piece: heatkeep piece relabel</source>
        <translation>ein weiteres desselben Stücks, am Stück: heatkeep piece relabel</translation>
    </message>
    <message>
        <source>another owner</source>
        <translation>ein anderer Eigentümer</translation>
    </message>
    <message>
        <source>another plan or cut came first: plan again</source>
        <translation>ein anderer Plan oder Schnitt kam zuvor: neu planen</translation>
    </message>
    <message>
        <source>another program works with it; try again when it has ended</source>
        <translation>ein anderes Programm arbeitet damit; noch einmal versuchen, wenn es beendet ist</translation>
    </message>
    <message>
        <source>another section</source>
        <translation>ein anderer Querschnitt</translation>
    </message>
    <message>
        <source>as api.record_of answers them</source>
        <translation>so, wie api.record_of sie nennt</translation>
    </message>
    <message>
        <source>as set</source>
        <translation>wie eingestellt</translation>
    </message>
    <message>
        <source>as_tag or lot, with a mark or custody</source>
        <translation>as_tag oder lot, mit einem Zeichen oder lückenlosem Gewahrsam</translation>
    </message>
    <message>
        <source>ask the customer, and give the name and the writing</source>
        <translation>den Kunden fragen und Namen und Schreiben angeben</translation>
    </message>
    <message>
        <source>at another site</source>
        <translation>an einem anderen Standort</translation>
    </message>
    <message>
        <source>at door</source>
        <translation>am Tor</translation>
    </message>
    <message>
        <source>at least</source>
        <translation>mindestens</translation>
    </message>
    <message>
        <source>at least %1 %2</source>
        <translation>mindestens %1 %2</translation>
    </message>
    <message>
        <source>at least %1 is needed</source>
        <translation>mindestens %1 wird gebraucht</translation>
    </message>
    <message>
        <source>at least one character</source>
        <translation>mindestens ein Zeichen</translation>
    </message>
    <message>
        <source>at most</source>
        <translation>höchstens</translation>
    </message>
    <message>
        <source>at most %1 %2</source>
        <translation>höchstens %1 %2</translation>
    </message>
    <message>
        <source>at most 1 000 000</source>
        <translation>höchstens 1 000 000</translation>
    </message>
    <message>
        <source>at most 1 000 m</source>
        <translation>höchstens 1 000 m</translation>
    </message>
    <message>
        <source>at most 100 000 t</source>
        <translation>höchstens 100 000 t</translation>
    </message>
    <message>
        <source>at most 18 digits</source>
        <translation>höchstens 18 Ziffern</translation>
    </message>
    <message>
        <source>at most 4096</source>
        <translation>höchstens 4096</translation>
    </message>
    <message>
        <source>at most six behind the decimal mark</source>
        <translation>höchstens sechs hinter dem Dezimalzeichen</translation>
    </message>
    <message>
        <source>at saw</source>
        <translation>an der Säge</translation>
    </message>
    <message>
        <source>awaited</source>
        <translation>erwartet</translation>
    </message>
    <message>
        <source>away from the saw a length is corrected, with the reason</source>
        <translation>abseits der Säge wird eine Länge berichtigt, mit Grund</translation>
    </message>
    <message>
        <source>back from %1 (%2), note %3</source>
        <translation>zurück von %1 (%2), Lieferschein %3</translation>
    </message>
    <message>
        <source>bar</source>
        <translation>Stange</translation>
    </message>
    <message>
        <source>bar slipped</source>
        <translation>Stange verrutscht</translation>
    </message>
    <message>
        <source>bars cut together are two or more</source>
        <translation>zusammen gesägte Stangen sind zwei oder mehr</translation>
    </message>
    <message>
        <source>beam</source>
        <translation>Träger</translation>
    </message>
    <message>
        <source>bearing steel</source>
        <translation>Wälzlagerstahl</translation>
    </message>
    <message>
        <source>before the defect</source>
        <translation>vor dem Fehler</translation>
    </message>
    <message>
        <source>bent, corroded, dented, cracked or other</source>
        <translation>verbogen, verrostet, verbeult, gerissen oder anders</translation>
    </message>
    <message>
        <source>beyond the defect</source>
        <translation>hinter dem Fehler</translation>
    </message>
    <message>
        <source>bin %1 holds evidence: %2</source>
        <translation>Behälter %1 enthält Beweisstücke: %2</translation>
    </message>
    <message>
        <source>bin %1 is for %2; this is %3</source>
        <translation>Behälter %1 ist für %2; dies ist %3</translation>
    </message>
    <message>
        <source>blade broke</source>
        <translation>Band gerissen</translation>
    </message>
    <message>
        <source>book it as a reject, with the fault</source>
        <translation>als Ausschuss buchen, mit dem Fehler</translation>
    </message>
    <message>
        <source>book it as found (heatkeep piece found): quality decides what it is</source>
        <translation>als gefunden buchen (heatkeep piece found): die QS entscheidet, was es ist</translation>
    </message>
    <message>
        <source>both</source>
        <translation>beide</translation>
    </message>
    <message>
        <source>bought over</source>
        <translation>übernommen</translation>
    </message>
    <message>
        <source>bought over from %1: %2</source>
        <translation>von %1 übernommen: %2</translation>
    </message>
    <message>
        <source>bought over: %1</source>
        <translation>übernommen: %1</translation>
    </message>
    <message>
        <source>box</source>
        <translation>Kasten</translation>
    </message>
    <message>
        <source>bundle %1 cannot be put in %2: %3 is %4</source>
        <translation>Bund %1 kann nicht auf %2: %3 ist %4</translation>
    </message>
    <message>
        <source>buy %1 x %2 %3 %4</source>
        <translation>kaufen: %1 x %2 %3 %4</translation>
    </message>
    <message>
        <source>call the function of schema api that is named as the deed</source>
        <translation>die Funktion des Schemas api aufrufen, die als Vorgang genannt ist</translation>
    </message>
    <message>
        <source>cancel what is not at the saw and plan again</source>
        <translation>stornieren, was nicht an der Säge ist, und neu planen</translation>
    </message>
    <message>
        <source>cancelled</source>
        <translation>storniert</translation>
    </message>
    <message>
        <source>cannot be locked</source>
        <translation>lässt sich nicht sperren</translation>
    </message>
    <message>
        <source>cannot be opened</source>
        <translation>lässt sich nicht öffnen</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>lässt sich nicht lesen</translation>
    </message>
    <message>
        <source>cannot be written</source>
        <translation>lässt sich nicht schreiben</translation>
    </message>
    <message>
        <source>carbon steel</source>
        <translation>unlegierter Stahl</translation>
    </message>
    <message>
        <source>case-hardening steel</source>
        <translation>Einsatzstahl</translation>
    </message>
    <message>
        <source>certificate</source>
        <translation>Zeugnis</translation>
    </message>
    <message>
        <source>chains of happenings</source>
        <translation>Ketten von Ereignissen</translation>
    </message>
    <message>
        <source>changed meanwhile: %1</source>
        <translation>inzwischen geändert: %1</translation>
    </message>
    <message>
        <source>channel</source>
        <translation>U-Profil</translation>
    </message>
    <message>
        <source>check the vice before you go on</source>
        <translation>vor dem Weitermachen nachsehen, was eingespannt ist</translation>
    </message>
    <message>
        <source>choose a longer place</source>
        <translation>einen längeren Platz wählen</translation>
    </message>
    <message>
        <source>choose another place</source>
        <translation>einen anderen Platz wählen</translation>
    </message>
    <message>
        <source>closing a conflict says what was decided and why</source>
        <translation>wer einen Widerspruch abschließt, sagt, was entschieden wurde und warum</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>allgemeine Praxis, keine Quelle</translation>
    </message>
    <message>
        <source>common practice, no source; the saw&apos;s manual goes before it</source>
        <translation>allgemeine Praxis, keine Quelle; das Handbuch der Säge geht vor</translation>
    </message>
    <message>
        <source>condemned by %1: %2</source>
        <translation>verworfen von %1: %2</translation>
    </message>
    <message>
        <source>conflict %1 is not open</source>
        <translation>Widerspruch %1 ist nicht offen</translation>
    </message>
    <message>
        <source>conflict %1: %2</source>
        <translation>Widerspruch %1: %2</translation>
    </message>
    <message>
        <source>consent %1 does not wait for a signature</source>
        <translation>Zustimmung %1 wartet nicht auf eine Unterschrift</translation>
    </message>
    <message>
        <source>corner radii that fit its smaller side</source>
        <translation>Eckradien, die zur kleineren Seite passen</translation>
    </message>
    <message>
        <source>correct_length, measured again</source>
        <translation>correct_length, neu gemessen</translation>
    </message>
    <message>
        <source>correct_limits, with the reason</source>
        <translation>correct_limits, mit Grund</translation>
    </message>
    <message>
        <source>correct_receipt, with the reason</source>
        <translation>correct_receipt, mit Grund</translation>
    </message>
    <message>
        <source>costs %1</source>
        <translation>kostet %1</translation>
    </message>
    <message>
        <source>counted in %1: %2</source>
        <translation>auf %1 gezählt: %2</translation>
    </message>
    <message>
        <source>counted though it is not here</source>
        <translation>gezählt, obwohl es nicht hier ist</translation>
    </message>
    <message>
        <source>crop</source>
        <translation>Abschnitt</translation>
    </message>
    <message>
        <source>crop %1 with a new face behind the half cut before the next piece%2</source>
        <translation>%1 abtrennen, mit neuer Fläche hinter dem halben Schnitt vor dem nächsten Stück%2</translation>
    </message>
    <message>
        <source>customer_return, when it comes back</source>
        <translation>customer_return, wenn es zurückkommt</translation>
    </message>
    <message>
        <source>customer_return, when they come back</source>
        <translation>customer_return, wenn sie zurückkommen</translation>
    </message>
    <message>
        <source>cut at another saw</source>
        <translation>an einer anderen Säge gesägt</translation>
    </message>
    <message>
        <source>cut before the lead answered</source>
        <translation>gesägt, bevor die Leitung geantwortet hat</translation>
    </message>
    <message>
        <source>cut from another heat</source>
        <translation>aus anderer Schmelze gesägt</translation>
    </message>
    <message>
        <source>cut from the wrong metal</source>
        <translation>aus falschem Material gesägt</translation>
    </message>
    <message>
        <source>cut list</source>
        <translation>Zuschnittliste</translation>
    </message>
    <message>
        <source>cut off the network at %1</source>
        <translation>ohne Netz gesägt um %1</translation>
    </message>
    <message>
        <source>cut on</source>
        <translation>weiter sägen</translation>
    </message>
    <message>
        <source>cut on: %1</source>
        <translation>weiter sägen: %1</translation>
    </message>
    <message>
        <source>cut piece</source>
        <translation>gesägtes Stück</translation>
    </message>
    <message>
        <source>cut piece that waits to be shipped</source>
        <translation>gesägtes Stück, das auf die Lieferung wartet</translation>
    </message>
    <message>
        <source>cut pieces that wait to be shipped</source>
        <translation>gesägte Stücke, die auf die Lieferung warten</translation>
    </message>
    <message>
        <source>cut though promised</source>
        <translation>gesägt, obwohl zugesagt</translation>
    </message>
    <message>
        <source>cut together against a rule</source>
        <translation>gegen eine Regel zusammen gesägt</translation>
    </message>
    <message>
        <source>cut up</source>
        <translation>aufgesägt</translation>
    </message>
    <message>
        <source>cut while held</source>
        <translation>gesägt, während gesperrt</translation>
    </message>
    <message>
        <source>cut while it was held</source>
        <translation>gesägt, während es gesperrt war</translation>
    </message>
    <message>
        <source>defect in the heat</source>
        <translation>Fehler in der Schmelze</translation>
    </message>
    <message>
        <source>delivery</source>
        <translation>Anlieferung</translation>
    </message>
    <message>
        <source>delivery note %1 has left before</source>
        <translation>Lieferschein %1 ist schon abgegangen</translation>
    </message>
    <message>
        <source>delivery note %1 of %2 was received before, with other lines</source>
        <translation>Lieferschein %1 von %2 wurde schon gebucht, mit anderen Positionen</translation>
    </message>
    <message>
        <source>destroy that label; where the metal says so too, quarantine the piece</source>
        <translation>dieses Etikett vernichten; sagt es auch das Material, das Stück in Quarantäne stellen</translation>
    </message>
    <message>
        <source>destroy the old label of %1 first: two labels are two pieces</source>
        <translation>erst das alte Etikett von %1 vernichten: zwei Etiketten sind zwei Stücke</translation>
    </message>
    <message>
        <source>device &quot;%1&quot; belongs to another site than %2</source>
        <translation>Gerät „%1“ gehört zu einem anderen Standort als %2</translation>
    </message>
    <message>
        <source>digits and at most one decimal mark</source>
        <translation>Ziffern und höchstens ein Dezimalzeichen</translation>
    </message>
    <message>
        <source>do deeds in read committed transactions</source>
        <translation>Vorgänge in read-committed-Transaktionen tun</translation>
    </message>
    <message>
        <source>document %1 is a %2: it never becomes a %3</source>
        <translation>Dokument %1 ist ein %2: es wird nie ein %3</translation>
    </message>
    <message>
        <source>document %1 is not accepted yet</source>
        <translation>Dokument %1 ist noch nicht angenommen</translation>
    </message>
    <message>
        <source>document %1 names heat %2 in %3 (%4): there is no such lot of %5</source>
        <translation>Dokument %1 nennt Schmelze %2 in %3 (%4): ein solches Los von %5 gibt es nicht</translation>
    </message>
    <message>
        <source>document %1 of %2 has version %3 of %4, which is not accepted yet</source>
        <translation>Dokument %1 von %2 hat Fassung %3 von %4, die noch nicht angenommen ist</translation>
    </message>
    <message>
        <source>document %1 of %2 is already filed</source>
        <translation>Dokument %1 von %2 ist schon abgelegt</translation>
    </message>
    <message>
        <source>document %1 says %2 for heat %3, the metal was received as %4</source>
        <translation>Dokument %1 sagt %2 für Schmelze %3, das Material ist als %4 angenommen</translation>
    </message>
    <message>
        <source>document %1 version %2 has its file (SHA-256 %3)</source>
        <translation>Dokument %1 Fassung %2 hat seine Datei (SHA-256 %3)</translation>
    </message>
    <message>
        <source>document %1 was accepted by %2 already</source>
        <translation>Dokument %1 wurde schon von %2 angenommen</translation>
    </message>
    <message>
        <source>document %1: the file in the book is not the one that was filed (SHA-256 %2); expected `heatkeep book verify`, and a copy from its issuer</source>
        <translation>Dokument %1: die Datei im Buch ist nicht die abgelegte (SHA-256 %2); erwartet wird `heatkeep book verify` und eine Kopie vom Aussteller</translation>
    </message>
    <message>
        <source>documents are not passed on by &quot;%1&quot;%2 an additional document</source>
        <translation>Dokumente werden nicht durch „%1“%2 ein Zusatzdokument weitergegeben</translation>
    </message>
    <message>
        <source>done</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>downgraded to %1: %2</source>
        <translation>herabgestuft auf %1: %2</translation>
    </message>
    <message>
        <source>drop</source>
        <translation>Reststück</translation>
    </message>
    <message>
        <source>dropped</source>
        <translation>fallen gelassen</translation>
    </message>
    <message>
        <source>duplex stainless steel</source>
        <translation>Duplexstahl</translation>
    </message>
    <message>
        <source>else %1 (%2)</source>
        <translation>sonst %1 (%2)</translation>
    </message>
    <message>
        <source>en 10204</source>
        <translation>en 10204</translation>
    </message>
    <message>
        <source>ends of chains</source>
        <translation>Enden der Ketten</translation>
    </message>
    <message numerus="yes">
        <source>entered %1 days later by %2</source>
        <translation>
            <numerusform>%1 Tag später eingetragen von %2</numerusform>
            <numerusform>%1 Tage später eingetragen von %2</numerusform>
        </translation>
    </message>
    <message>
        <source>entered %1 h later by %2</source>
        <translation>%1 h später eingetragen von %2</translation>
    </message>
    <message>
        <source>every grade</source>
        <translation>jeder Werkstoff</translation>
    </message>
    <message>
        <source>expected</source>
        <translation>erwartet</translation>
    </message>
    <message>
        <source>expected &quot;least&quot;, &quot;most&quot; or both</source>
        <translation>erwartet wird „least“, „most“ oder beides</translation>
    </message>
    <message>
        <source>expected %1</source>
        <translation>erwartet: %1</translation>
    </message>
    <message>
        <source>expected 2.1, 2.2, 3.1 or 3.2 (EN 10204)</source>
        <translation>erwartet wird 2.1, 2.2, 3.1 oder 3.2 (EN 10204)</translation>
    </message>
    <message>
        <source>expected 3.1, 2.2, 2.1, none, grade only or unknown</source>
        <translation>erwartet wird 3.1, 2.2, 2.1, none, grade only oder unknown</translation>
    </message>
    <message>
        <source>expected EN 10204, or ISO 10474 with the number of our additional document (its clause 6)</source>
        <translation>erwartet wird EN 10204 oder ISO 10474 mit der Nummer unseres Zusatzdokuments (deren Abschnitt 6)</translation>
    </message>
    <message>
        <source>expected Rm and Re in MPa, A in %; value_milli is a thousandth of it, 0 to 100 000 000</source>
        <translation>erwartet werden Rm und Re in MPa, A in %; value_milli ist ein Tausendstel davon, 0 bis 100 000 000</translation>
    </message>
    <message>
        <source>expected a JSON body</source>
        <translation>erwartet wird ein JSON-Text</translation>
    </message>
    <message>
        <source>expected a JSON object</source>
        <translation>erwartet wird ein JSON-Objekt</translation>
    </message>
    <message>
        <source>expected a time from 1900 on, and no infinity in place of a day</source>
        <translation>erwartet wird eine Zeit ab 1900 und kein Unendlich an Stelle eines Tages</translation>
    </message>
    <message>
        <source>expected a whole PDF, PNG, JPEG or TIFF file</source>
        <translation>erwartet wird eine ganze PDF-, PNG-, JPEG- oder TIFF-Datei</translation>
    </message>
    <message>
        <source>expected additional: its number</source>
        <translation>erwartet wird additional: seine Nummer</translation>
    </message>
    <message>
        <source>expected an element, CEV, a sum like Cr+Mo+Ni, or others; of a test Rm, Re or A</source>
        <translation>erwartet wird ein Element, CEV, eine Summe wie Cr+Mo+Ni oder others; bei einer Prüfung Rm, Re oder A</translation>
    </message>
    <message>
        <source>expected at most %1 MiB</source>
        <translation>erwartet werden höchstens %1 MiB</translation>
    </message>
    <message>
        <source>expected at most 1000 t, and 10 000 000 a tonne</source>
        <translation>erwartet werden höchstens 1000 t und 10 000 000 je Tonne</translation>
    </message>
    <message>
        <source>expected each tag once</source>
        <translation>erwartet wird jede Kennung einmal</translation>
    </message>
    <message>
        <source>expected mark, custody or analysis</source>
        <translation>erwartet wird mark (Zeichen), custody (Gewahrsam) oder analysis (Analyse)</translation>
    </message>
    <message>
        <source>expected name, position and for: manufacturer, independent (of production), purchaser or official</source>
        <translation>erwartet werden Name, Stellung und für wen: manufacturer (Hersteller), independent (fertigungsunabhängig), purchaser (Besteller) oder official (amtlich)</translation>
    </message>
    <message>
        <source>expected order, note or both</source>
        <translation>erwartet wird order, note oder beides</translation>
    </message>
    <message>
        <source>expected original or copy, EN 10204 or ISO 10474</source>
        <translation>erwartet wird original oder copy, EN 10204 oder ISO 10474</translation>
    </message>
    <message>
        <source>expected ranges that do not meet: more than the first, up to and with the second</source>
        <translation>erwartet werden Bereiche, die sich nicht berühren: mehr als der erste Wert, bis einschließlich zum zweiten</translation>
    </message>
    <message>
        <source>expected rows for all of them; one without minimum and maximum where there is no limit</source>
        <translation>erwartet werden Zeilen für alle; eine ohne Mindest- und Höchstwert, wo es keine Grenze gibt</translation>
    </message>
    <message>
        <source>expected the 64 characters 0-9 and a-f from the record&apos;s foot</source>
        <translation>erwartet werden die 64 Zeichen 0-9 und a-f vom Fuß des Nachweises</translation>
    </message>
    <message>
        <source>feet that are not whole before inches in %1</source>
        <translation>Fuß, die nicht ganz sind, vor Zoll in %1</translation>
    </message>
    <message>
        <source>fewer than one piece is rejected</source>
        <translation>weniger als ein Stück ist Ausschuss</translation>
    </message>
    <message>
        <source>file the document itself, or pass on the original</source>
        <translation>das Dokument selbst ablegen oder das Original weitergeben</translation>
    </message>
    <message>
        <source>finish it first</source>
        <translation>erst fertig sägen</translation>
    </message>
    <message>
        <source>first</source>
        <translation>zuerst</translation>
    </message>
    <message>
        <source>fit a band: power off and isolated, the coiled band springs open</source>
        <translation>ein Sägeband einbauen: Energie aus und getrennt, das gerollte Band springt auf</translation>
    </message>
    <message>
        <source>flat</source>
        <translation>Flach</translation>
    </message>
    <message>
        <source>for example 6000 or 0.5</source>
        <translation>zum Beispiel 6000 oder 0.5</translation>
    </message>
    <message>
        <source>for example: measured again, the first reading was of another bar</source>
        <translation>zum Beispiel: neu gemessen, die erste Ablesung war von einer anderen Stange</translation>
    </message>
    <message>
        <source>format 06 of ISO/IEC 15434: data identifiers</source>
        <translation>Format 06 nach ISO/IEC 15434: Datenkennungen</translation>
    </message>
    <message>
        <source>found</source>
        <translation>gefunden</translation>
    </message>
    <message>
        <source>found %1</source>
        <translation>gefunden auf %1</translation>
    </message>
    <message>
        <source>found again</source>
        <translation>wiedergefunden</translation>
    </message>
    <message>
        <source>found again, read</source>
        <translation>wiedergefunden, gelesen</translation>
    </message>
    <message>
        <source>found again, read: %1</source>
        <translation>wiedergefunden, gelesen: %1</translation>
    </message>
    <message>
        <source>found as %1 (%2: %3)</source>
        <translation>gefunden als %1 (%2: %3)</translation>
    </message>
    <message>
        <source>found without a tag: nobody knows its heat</source>
        <translation>ohne Kennung gefunden: niemand kennt die Schmelze</translation>
    </message>
    <message>
        <source>found without a tag; marks: %1</source>
        <translation>ohne Kennung gefunden; Zeichen: %1</translation>
    </message>
    <message>
        <source>found without a tag; marks: none</source>
        <translation>ohne Kennung gefunden; Zeichen: keine</translation>
    </message>
    <message>
        <source>found_again, when it turns up</source>
        <translation>found_again, wenn es auftaucht</translation>
    </message>
    <message>
        <source>free-cutting steel</source>
        <translation>Automatenstahl</translation>
    </message>
    <message>
        <source>from a bar with %1</source>
        <translation>aus einer Stange mit %1</translation>
    </message>
    <message>
        <source>from piped bar</source>
        <translation>aus einer Stange mit Lunker</translation>
    </message>
    <message>
        <source>fsync %1, full_page_writes %2, data_checksums %3</source>
        <translation>fsync %1, full_page_writes %2, data_checksums %3</translation>
    </message>
    <message>
        <source>full bar %1 although drop %2, would do: the drop %3; what the bar leaves keeps nearly its worth</source>
        <translation>volle Stange %1, obwohl Reststück %2, reichen würde: das Reststück %3; was die Stange übrig lässt, behält fast seinen Wert</translation>
    </message>
    <message>
        <source>gate</source>
        <translation>Tor</translation>
    </message>
    <message>
        <source>give &quot;grade&quot;; a heat needs a mark or unbroken custody</source>
        <translation>„grade“ angeben; eine Schmelze braucht ein Zeichen oder lückenlosen Gewahrsam</translation>
    </message>
    <message>
        <source>give a time to come, or none: the end of the next shift</source>
        <translation>eine künftige Zeit angeben oder keine: das Ende der nächsten Schicht</translation>
    </message>
    <message>
        <source>give every site a letter, and an offline letter, that no other site has</source>
        <translation>jedem Standort einen Buchstaben und einen für ohne Netz geben, die kein anderer Standort hat</translation>
    </message>
    <message>
        <source>give the new one a later date; what was decided before it stays as it was</source>
        <translation>dem neuen ein späteres Datum geben; was davor entschieden wurde, bleibt</translation>
    </message>
    <message>
        <source>give the new one another name</source>
        <translation>dem neuen einen anderen Namen geben</translation>
    </message>
    <message>
        <source>give the reason with the cut; the pieces are open again for the planner</source>
        <translation>den Grund mit dem Schnitt angeben; die Stücke sind für die Planung wieder offen</translation>
    </message>
    <message>
        <source>give this one a note of its own</source>
        <translation>diesem eine eigene Nummer geben</translation>
    </message>
    <message>
        <source>give this one another name</source>
        <translation>diesem einen anderen Namen geben</translation>
    </message>
    <message>
        <source>give this one another name, or calibrate that one</source>
        <translation>diesem einen anderen Namen geben oder jenes kalibrieren</translation>
    </message>
    <message>
        <source>give this shipment a note of its own</source>
        <translation>dieser Lieferung einen eigenen Lieferschein geben</translation>
    </message>
    <message>
        <source>given another identity</source>
        <translation>andere Identität gegeben</translation>
    </message>
    <message>
        <source>given up</source>
        <translation>verworfen</translation>
    </message>
    <message>
        <source>good</source>
        <translation>gut</translation>
    </message>
    <message>
        <source>good piece across a defect</source>
        <translation>Gutstück über einem Fehler</translation>
    </message>
    <message>
        <source>grade &quot;%1&quot; is not in the book</source>
        <translation>Werkstoff „%1“ steht nicht im Buch</translation>
    </message>
    <message>
        <source>grade only</source>
        <translation>nur Werkstoff</translation>
    </message>
    <message>
        <source>group %1</source>
        <translation>Gruppe %1</translation>
    </message>
    <message>
        <source>half cut</source>
        <translation>halber Schnitt</translation>
    </message>
    <message>
        <source>hand</source>
        <translation>von Hand</translation>
    </message>
    <message>
        <source>hand, long: two people</source>
        <translation>von Hand, lang: zwei Personen</translation>
    </message>
    <message>
        <source>happening %1 (%2) of %3 %4 is not as it was written</source>
        <translation>Ereignis %1 (%2) von %3 %4 ist nicht, wie es geschrieben wurde</translation>
    </message>
    <message>
        <source>happening %1 of %2 %3 is gone</source>
        <translation>Ereignis %1 von %2 %3 ist weg</translation>
    </message>
    <message>
        <source>happenings are written by the book itself, under the login of the session</source>
        <translation>Ereignisse schreibt das Buch selbst, unter der Anmeldung der Sitzung</translation>
    </message>
    <message>
        <source>has been cut</source>
        <translation>ist gesägt</translation>
    </message>
    <message>
        <source>heat</source>
        <translation>Schmelze</translation>
    </message>
    <message>
        <source>heat %1</source>
        <translation>Schmelze %1</translation>
    </message>
    <message>
        <source>heat %1 %2</source>
        <translation>Schmelze %1 %2</translation>
    </message>
    <message>
        <source>heat %1 has no mill: two mills can use the same number</source>
        <translation>Schmelze %1 hat kein Werk: zwei Werke können dieselbe Nummer verwenden</translation>
    </message>
    <message>
        <source>heat %1 of %2</source>
        <translation>Schmelze %1 von %2</translation>
    </message>
    <message>
        <source>heat %1 of %2 is %3 in the book, not %4</source>
        <translation>Schmelze %1 von %2 ist im Buch %3, nicht %4</translation>
    </message>
    <message>
        <source>heat %1: %2</source>
        <translation>Schmelze %1: %2</translation>
    </message>
    <message>
        <source>heat %1: %2 of %3, whole</source>
        <translation>Schmelze %1: %2 von %3, ganz</translation>
    </message>
    <message>
        <source>heat %1: %2 pieces of %3 (order %4 line %5)</source>
        <translation>Schmelze %1: %2 Stück von %3 (Auftrag %4 Position %5)</translation>
    </message>
    <message>
        <source>held by %1: %2</source>
        <translation>gesperrt von %1: %2</translation>
    </message>
    <message>
        <source>held: %1</source>
        <translation>gesperrt: %1</translation>
    </message>
    <message>
        <source>here</source>
        <translation>hier</translation>
    </message>
    <message>
        <source>hex</source>
        <translation>Sechskant</translation>
    </message>
    <message>
        <source>hold %1 is not a live hold</source>
        <translation>Sperre %1 ist keine bestehende Sperre</translation>
    </message>
    <message>
        <source>hold %1 was condemned by %2: the metal is not used any more</source>
        <translation>Sperre %1 wurde von %2 verworfen: das Material wird nicht mehr verwendet</translation>
    </message>
    <message>
        <source>hot or cold behind it: their corners differ</source>
        <translation>warm oder kalt dahinter: ihre Ecken sind verschieden</translation>
    </message>
    <message>
        <source>how it is known that the limit was wrong</source>
        <translation>woher bekannt ist, dass die Grenze falsch war</translation>
    </message>
    <message>
        <source>how many</source>
        <translation>wie viele</translation>
    </message>
    <message>
        <source>how many bars</source>
        <translation>wie viele Stangen</translation>
    </message>
    <message>
        <source>how many pieces</source>
        <translation>wie viele Stück</translation>
    </message>
    <message numerus="yes">
        <source>in a bundle of %1 bars</source>
        <translation>
            <numerusform>in einem Bund von %1 Stange</numerusform>
            <numerusform>in einem Bund von %1 Stangen</numerusform>
        </translation>
    </message>
    <message>
        <source>in every section</source>
        <translation>in jedem Querschnitt</translation>
    </message>
    <message>
        <source>in tolerance; %1 off the stop</source>
        <translation>in der Toleranz; %1 neben dem Anschlagmaß</translation>
    </message>
    <message>
        <source>in transit</source>
        <translation>unterwegs</translation>
    </message>
    <message>
        <source>is %1</source>
        <translation>ist %1</translation>
    </message>
    <message>
        <source>is being counted</source>
        <translation>wird gezählt</translation>
    </message>
    <message>
        <source>is promised: cancel that plan first</source>
        <translation>ist zugesagt: erst diesen Plan stornieren</translation>
    </message>
    <message>
        <source>issued whole, no cut</source>
        <translation>ganz ausgegeben, kein Schnitt</translation>
    </message>
    <message>
        <source>it goes back to its owner: heatkeep return owner</source>
        <translation>es geht an den Eigentümer zurück: heatkeep return owner</translation>
    </message>
    <message>
        <source>it goes to %1; scrap is bought by its chemistry</source>
        <translation>es kommt in %1; Schrott wird nach seiner Chemie gekauft</translation>
    </message>
    <message>
        <source>it is %1</source>
        <translation>es ist %1</translation>
    </message>
    <message>
        <source>it is %1 (%2: %3)</source>
        <translation>es ist %1 (%2: %3)</translation>
    </message>
    <message>
        <source>it is customer&apos;s own metal</source>
        <translation>es ist Kundenmaterial</translation>
    </message>
    <message>
        <source>it is evidence until quality closes the case</source>
        <translation>es bleibt Beweisstück, bis die QS den Fall abschließt</translation>
    </message>
    <message>
        <source>it is not %1&apos;s own metal</source>
        <translation>es ist nicht das Material von %1</translation>
    </message>
    <message>
        <source>it is of several customers: %1</source>
        <translation>es ist von mehreren Kunden: %1</translation>
    </message>
    <message>
        <source>it is sent there and received here (heatkeep transfer): metal is never in two places</source>
        <translation>es wird dorthin geschickt und hier angenommen (heatkeep transfer): Material ist nie an zwei Orten</translation>
    </message>
    <message>
        <source>it is sold with %1: say that the document goes with it</source>
        <translation>es wird mit %1 verkauft: angeben, dass das Dokument mitgeht</translation>
    </message>
    <message>
        <source>it is strapped in bundle %1: open the bundle first</source>
        <translation>es ist im Bund %1 gebunden: erst das Bund öffnen</translation>
    </message>
    <message>
        <source>it takes %1</source>
        <translation>es nimmt %1</translation>
    </message>
    <message>
        <source>it was brought in by you: others sign it</source>
        <translation>Sie selbst haben es eingetragen: andere unterschreiben</translation>
    </message>
    <message>
        <source>it was changed since the plan was made</source>
        <translation>es wurde geändert, seit der Plan gemacht ist</translation>
    </message>
    <message>
        <source>it was cut %1 long and cannot measure %2</source>
        <translation>es wurde %1 lang gesägt und kann nicht %2 messen</translation>
    </message>
    <message>
        <source>it was sent before, as another request</source>
        <translation>es wurde schon gesendet, mit einer anderen Anforderung</translation>
    </message>
    <message>
        <source>its condition is %1, not %2</source>
        <translation>sein Zustand ist %1, nicht %2</translation>
    </message>
    <message>
        <source>its condition is not known, not %1</source>
        <translation>sein Zustand ist nicht bekannt, nicht %1</translation>
    </message>
    <message>
        <source>its folder cannot be made safe on the disk</source>
        <translation>der Ordner lässt sich auf dem Datenträger nicht sichern</translation>
    </message>
    <message>
        <source>its grade is %1, not %2</source>
        <translation>sein Werkstoff ist %1, nicht %2</translation>
    </message>
    <message>
        <source>its grade is not known</source>
        <translation>sein Werkstoff ist nicht bekannt</translation>
    </message>
    <message>
        <source>its heat could not be read</source>
        <translation>die Schmelze war nicht lesbar</translation>
    </message>
    <message>
        <source>its heat is %1, which is refused for the line</source>
        <translation>seine Schmelze ist %1, die für die Position abgelehnt ist</translation>
    </message>
    <message>
        <source>its heat is not known</source>
        <translation>seine Schmelze ist nicht bekannt</translation>
    </message>
    <message>
        <source>its heat is not known, and the line says how many heats it may come from</source>
        <translation>seine Schmelze ist nicht bekannt, und die Position sagt, aus wie vielen Schmelzen sie kommen darf</translation>
    </message>
    <message>
        <source>its length is another than the plan says</source>
        <translation>seine Länge ist eine andere, als der Plan sagt</translation>
    </message>
    <message>
        <source>its length is in doubt</source>
        <translation>seine Länge ist unsicher</translation>
    </message>
    <message>
        <source>its mark cannot be read</source>
        <translation>sein Zeichen ist nicht lesbar</translation>
    </message>
    <message>
        <source>its measured length is nothing; expected above 0</source>
        <translation>die gemessene Länge ist null; erwartet wird über 0</translation>
    </message>
    <message>
        <source>its name</source>
        <translation>sein Name</translation>
    </message>
    <message>
        <source>its papers are %1 now</source>
        <translation>seine Papiere sind jetzt %1</translation>
    </message>
    <message>
        <source>its papers are %1, asked is %2</source>
        <translation>seine Papiere sind %1, verlangt ist %2</translation>
    </message>
    <message>
        <source>its papers are awaited</source>
        <translation>seine Papiere stehen aus</translation>
    </message>
    <message>
        <source>its papers are awaited now</source>
        <translation>seine Papiere stehen jetzt aus</translation>
    </message>
    <message>
        <source>its papers are weaker than asked for</source>
        <translation>seine Papiere sind schwächer als verlangt</translation>
    </message>
    <message>
        <source>its papers are weaker than asked for (%1, not %2)</source>
        <translation>seine Papiere sind schwächer als verlangt (%1, nicht %2)</translation>
    </message>
    <message>
        <source>its place</source>
        <translation>sein Platz</translation>
    </message>
    <message>
        <source>its place is being counted</source>
        <translation>sein Platz wird gezählt</translation>
    </message>
    <message>
        <source>its root radius too, like angle 130x65x8 root 11</source>
        <translation>auch sein Wurzelradius, wie angle 130x65x8 root 11</translation>
    </message>
    <message>
        <source>its section is %1, not %2</source>
        <translation>sein Querschnitt ist %1, nicht %2</translation>
    </message>
    <message>
        <source>its supplier</source>
        <translation>sein Lieferant</translation>
    </message>
    <message>
        <source>its torn tail</source>
        <translation>das abgerissene Ende</translation>
    </message>
    <message>
        <source>its torn tail cannot be set aside</source>
        <translation>das abgerissene Ende lässt sich nicht beiseitelegen</translation>
    </message>
    <message>
        <source>its torn tail cannot be taken off</source>
        <translation>das abgerissene Ende lässt sich nicht abnehmen</translation>
    </message>
    <message>
        <source>its use is limited: %1</source>
        <translation>seine Verwendung ist eingeschränkt: %1</translation>
    </message>
    <message>
        <source>its use was limited</source>
        <translation>seine Verwendung wurde eingeschränkt</translation>
    </message>
    <message>
        <source>keep</source>
        <translation>behalten</translation>
    </message>
    <message>
        <source>keep rule</source>
        <translation>Behalteregel</translation>
    </message>
    <message>
        <source>keep: true or false</source>
        <translation>keep: true oder false</translation>
    </message>
    <message>
        <source>keep_package, made again; both stay</source>
        <translation>keep_package, neu gemacht; beide bleiben</translation>
    </message>
    <message>
        <source>kept</source>
        <translation>behalten</translation>
    </message>
    <message>
        <source>kerf %1 (%2 in all)</source>
        <translation>Schnittfuge %1 (zusammen %2)</translation>
    </message>
    <message>
        <source>kerf, trim or grip of saw %1 have changed</source>
        <translation>Schnittfuge, Anschnitt oder Einspannlänge von Säge %1 haben sich geändert</translation>
    </message>
    <message>
        <source>kerf, trim, grip and keep: one is out of range; expected 0 to 1 km</source>
        <translation>Schnittfuge, Anschnitt, Einspannlänge und Behaltelänge: eine liegt außerhalb; erwartet wird 0 bis 1 km</translation>
    </message>
    <message>
        <source>kind: bent, corroded, dented, cracked or other; usable: true or false</source>
        <translation>kind: bent (verbogen), corroded (verrostet), dented (verbeult), cracked (gerissen) oder other (anders); usable: true oder false</translation>
    </message>
    <message>
        <source>kind: pipe, crack, seam, lap, bend, inclusion or other</source>
        <translation>kind: pipe (Lunker), crack (Riss), seam (Naht), lap (Überwalzung), bend (Knick), inclusion (Einschluss) oder other (anders)</translation>
    </message>
    <message>
        <source>kind: tape, readout, scale, scanner or analyser</source>
        <translation>kind: tape (Bandmaß), readout (Anzeige), scale (Waage), scanner oder analyser (Analysator)</translation>
    </message>
    <message>
        <source>label %1 was printed at %2</source>
        <translation>Etikett %1 wurde um %2 gedruckt</translation>
    </message>
    <message>
        <source>laboratory, reference %1</source>
        <translation>Labor, Zeichen %1</translation>
    </message>
    <message>
        <source>lapsed</source>
        <translation>verfallen</translation>
    </message>
    <message>
        <source>last</source>
        <translation>zuletzt</translation>
    </message>
    <message>
        <source>layout %1 on %2: %3</source>
        <translation>Aufteilung %1 auf %2: %3</translation>
    </message>
    <message>
        <source>leaves %1</source>
        <translation>hinterlässt %1</translation>
    </message>
    <message>
        <source>leaves %1 scrap</source>
        <translation>hinterlässt %1 Schrott</translation>
    </message>
    <message>
        <source>leaves a drop of %1</source>
        <translation>hinterlässt ein Reststück von %1</translation>
    </message>
    <message>
        <source>leaves nothing</source>
        <translation>hinterlässt nichts</translation>
    </message>
    <message>
        <source>left</source>
        <translation>übrig</translation>
    </message>
    <message>
        <source>left out: %1</source>
        <translation>ausgelassen: %1</translation>
    </message>
    <message>
        <source>left over %1</source>
        <translation>übrig bleibt %1</translation>
    </message>
    <message>
        <source>length ±%1</source>
        <translation>Länge ±%1</translation>
    </message>
    <message>
        <source>lengths are whole nanometres, masses grams, money cents; the deed&apos;s own lines say what it takes</source>
        <translation>Längen sind ganze Nanometer, Massen Gramm, Geld Cent; die Zeilen des Vorgangs sagen, was er nimmt</translation>
    </message>
    <message>
        <source>lengths are whole nanometres, money is in cents: was a unit mistaken?</source>
        <translation>Längen sind ganze Nanometer, Geld ist in Cent: ist eine Einheit verwechselt?</translation>
    </message>
    <message>
        <source>let the promise go first</source>
        <translation>erst die Zusage aufheben</translation>
    </message>
    <message>
        <source>letting a promise go says why</source>
        <translation>wer eine Zusage aufhebt, sagt warum</translation>
    </message>
    <message>
        <source>lift the hold first</source>
        <translation>erst die Sperre aufheben</translation>
    </message>
    <message>
        <source>lift the hold or release the piece first</source>
        <translation>erst die Sperre aufheben oder das Stück freigeben</translation>
    </message>
    <message>
        <source>lift_hold, with evidence</source>
        <translation>lift_hold, mit Beleg</translation>
    </message>
    <message>
        <source>lifting a hold names its evidence</source>
        <translation>wer eine Sperre aufhebt, nennt den Beleg</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>Position %1</translation>
    </message>
    <message>
        <source>line %1/%2</source>
        <translation>Position %1/%2</translation>
    </message>
    <message numerus="yes">
        <source>line %1: %2 bars are no line of a delivery; expected 10000 or less</source>
        <translation>
            <numerusform>Position %1: %2 Stange ist keine Position einer Anlieferung; erwartet werden höchstens 10000</numerusform>
            <numerusform>Position %1: %2 Stangen sind keine Position einer Anlieferung; erwartet werden höchstens 10000</numerusform>
        </translation>
    </message>
    <message>
        <source>line %1: a receipt has a section and a grade, as measured and marked</source>
        <translation>Position %1: ein Wareneingang hat Querschnitt und Werkstoff, wie gemessen und gekennzeichnet</translation>
    </message>
    <message>
        <source>line %1: heat %2 was read from the slip only, and this metal comes with papers</source>
        <translation>Position %1: Schmelze %2 wurde nur vom Lieferschein gelesen, und dieses Material kommt mit Zeugnis</translation>
    </message>
    <message>
        <source>list every heat that leaves on the line, or ship fewer pieces, of one heat</source>
        <translation>jede Schmelze nennen, die auf der Position abgeht, oder weniger Stück aus einer Schmelze liefern</translation>
    </message>
    <message>
        <source>live</source>
        <translation>laufend</translation>
    </message>
    <message>
        <source>look at the rack again</source>
        <translation>noch einmal im Regal nachsehen</translation>
    </message>
    <message>
        <source>look at the receipt; a second lorry has its own note</source>
        <translation>den Wareneingang ansehen; ein zweiter Lkw hat seinen eigenen Lieferschein</translation>
    </message>
    <message>
        <source>looks like heat %1</source>
        <translation>sieht aus wie Schmelze %1</translation>
    </message>
    <message>
        <source>lot</source>
        <translation>Los</translation>
    </message>
    <message>
        <source>lot %1</source>
        <translation>Los %1</translation>
    </message>
    <message>
        <source>lot of %1</source>
        <translation>Los von %1</translation>
    </message>
    <message>
        <source>made up %1</source>
        <translation>aufgefüllt %1</translation>
    </message>
    <message>
        <source>make it again</source>
        <translation>noch einmal erstellen</translation>
    </message>
    <message>
        <source>mark, custody or analysis</source>
        <translation>Zeichen, Gewahrsam oder Analyse</translation>
    </message>
    <message>
        <source>mark, label, defect, damage, signature or other</source>
        <translation>Zeichen, Etikett, Fehler, Schaden, Unterschrift oder anderes</translation>
    </message>
    <message>
        <source>mass % that add up to 100 or less</source>
        <translation>Masse-%, die zusammen 100 oder weniger sind</translation>
    </message>
    <message>
        <source>mass %, 0 to 100</source>
        <translation>Masse-%, 0 bis 100</translation>
    </message>
    <message>
        <source>measure again</source>
        <translation>noch einmal messen</translation>
    </message>
    <message>
        <source>measure both</source>
        <translation>beide messen</translation>
    </message>
    <message>
        <source>measure from the end that is cut first, or say which end</source>
        <translation>vom Ende messen, das zuerst gesägt wird, oder angeben, von welchem</translation>
    </message>
    <message>
        <source>measure the kerf: thickness and set on both sides</source>
        <translation>die Schnittfuge messen: Dicke und Schränkung beider Seiten</translation>
    </message>
    <message>
        <source>measure the piece and say what it measured</source>
        <translation>das Stück messen und sagen, was es misst</translation>
    </message>
    <message>
        <source>measured at the hand-over</source>
        <translation>bei der Übergabe gemessen</translation>
    </message>
    <message>
        <source>measured at the saw</source>
        <translation>an der Säge gemessen</translation>
    </message>
    <message>
        <source>measured when it was found again</source>
        <translation>gemessen, als es wiedergefunden wurde</translation>
    </message>
    <message>
        <source>measured when it was pulled</source>
        <translation>gemessen, als es entnommen wurde</translation>
    </message>
    <message>
        <source>metal</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>metal as good as %1 of full bar less used up</source>
        <translation>Material im Wert von %1 voller Stange weniger verbraucht</translation>
    </message>
    <message>
        <source>metal as good as %1 of full bar more used up</source>
        <translation>Material im Wert von %1 voller Stange mehr verbraucht</translation>
    </message>
    <message>
        <source>metal balance of every closed cut</source>
        <translation>Materialbilanz jedes abgeschlossenen Sägevorgangs</translation>
    </message>
    <message>
        <source>metal balance of every lot</source>
        <translation>Materialbilanz jedes Loses</translation>
    </message>
    <message>
        <source>metal balance of every piece</source>
        <translation>Materialbilanz jedes Stücks</translation>
    </message>
    <message>
        <source>metal without a heat (%1)</source>
        <translation>Material ohne Schmelze (%1)</translation>
    </message>
    <message>
        <source>mill, heat, section, grade and condition of a lot are not edited</source>
        <translation>Werk, Schmelze, Querschnitt, Werkstoff und Zustand eines Loses werden nicht geändert</translation>
    </message>
    <message>
        <source>millimetres and inches in %1</source>
        <translation>Millimeter und Zoll in %1</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>fehlt</translation>
    </message>
    <message>
        <source>mm, cm, m, in or ft</source>
        <translation>mm, cm, m, in oder ft</translation>
    </message>
    <message>
        <source>more cut than ordered</source>
        <translation>mehr gesägt als bestellt</translation>
    </message>
    <message>
        <source>more than one mark in %1</source>
        <translation>mehr als ein Zeichen in %1</translation>
    </message>
    <message>
        <source>more than the slip says: the planner decides</source>
        <translation>mehr, als der Lieferschein sagt: die Planung entscheidet</translation>
    </message>
    <message>
        <source>more than was bought, to go back: %1</source>
        <translation>mehr als gekauft, geht zurück: %1</translation>
    </message>
    <message>
        <source>move the bundle, or open it first</source>
        <translation>das Bund umlagern oder erst öffnen</translation>
    </message>
    <message>
        <source>name its tag, or finish it first</source>
        <translation>seine Kennung nennen oder es erst fertig sägen</translation>
    </message>
    <message>
        <source>name their tags</source>
        <translation>ihre Kennungen nennen</translation>
    </message>
    <message>
        <source>name what is missing as unexplained, with a reason and a name</source>
        <translation>was fehlt, als ungeklärt benennen, mit Grund und Namen</translation>
    </message>
    <message>
        <source>new tag</source>
        <translation>neue Kennung</translation>
    </message>
    <message>
        <source>no %1 is in the scan %2</source>
        <translation>kein %1 im Scan %2</translation>
    </message>
    <message>
        <source>no bin is defined</source>
        <translation>kein Behälter ist angelegt</translation>
    </message>
    <message>
        <source>no count of %1 is %2</source>
        <translation>keine Zählung von %1 ist %2</translation>
    </message>
    <message>
        <source>no cut list is called &quot;%1&quot;; `heatkeep cutlist list` names them</source>
        <translation>keine Zuschnittliste heißt „%1“; `heatkeep cutlist list` nennt sie</translation>
    </message>
    <message>
        <source>no device is called &quot;%1&quot;</source>
        <translation>kein Gerät heißt „%1“</translation>
    </message>
    <message>
        <source>no digit after the decimal mark in %1</source>
        <translation>keine Ziffer hinter dem Dezimalzeichen in %1</translation>
    </message>
    <message>
        <source>no document %1 of %2 is filed</source>
        <translation>kein Dokument %1 von %2 ist abgelegt</translation>
    </message>
    <message>
        <source>no grade</source>
        <translation>kein Werkstoff</translation>
    </message>
    <message>
        <source>no heat</source>
        <translation>keine Schmelze</translation>
    </message>
    <message>
        <source>no inspection document of this metal is filed and accepted</source>
        <translation>keine Prüfbescheinigung dieses Materials ist abgelegt und angenommen</translation>
    </message>
    <message>
        <source>no label or mark without the heat: %1 is of heat %2</source>
        <translation>kein Etikett oder Zeichen ohne die Schmelze: %1 ist aus Schmelze %2</translation>
    </message>
    <message>
        <source>no length is in doubt by more than 1 km</source>
        <translation>keine Länge ist um mehr als 1 km unsicher</translation>
    </message>
    <message>
        <source>no length is written</source>
        <translation>keine Länge ist angegeben</translation>
    </message>
    <message>
        <source>no length to buy is named; expected at least one</source>
        <translation>keine zu kaufende Länge ist genannt; erwartet wird mindestens eine</translation>
    </message>
    <message>
        <source>no limit</source>
        <translation>keine Grenze</translation>
    </message>
    <message>
        <source>no limit is named</source>
        <translation>keine Grenze ist genannt</translation>
    </message>
    <message>
        <source>no limit known</source>
        <translation>keine Grenze bekannt</translation>
    </message>
    <message>
        <source>no limit known: %1</source>
        <translation>keine Grenze bekannt: %1</translation>
    </message>
    <message>
        <source>no limit set</source>
        <translation>keine Grenze eingestellt</translation>
    </message>
    <message>
        <source>no lot has heat &quot;%1&quot;</source>
        <translation>kein Los hat Schmelze „%1“</translation>
    </message>
    <message>
        <source>no lot of heat %1 of %2 waits for papers</source>
        <translation>kein Los der Schmelze %1 von %2 wartet auf Papiere</translation>
    </message>
    <message>
        <source>no mass is written</source>
        <translation>keine Masse ist angegeben</translation>
    </message>
    <message>
        <source>no mill, supplier or customer is called &quot;%1&quot;</source>
        <translation>kein Werk, Lieferant oder Kunde heißt „%1“</translation>
    </message>
    <message>
        <source>no more than 1 000 000 bars of a line are bought</source>
        <translation>mehr als 1 000 000 Stangen einer Position werden nicht gekauft</translation>
    </message>
    <message>
        <source>no more than 1 000 000 pieces of a line are ordered</source>
        <translation>mehr als 1 000 000 Stück einer Position werden nicht bestellt</translation>
    </message>
    <message>
        <source>no number below the fraction bar in %1</source>
        <translation>keine Zahl unter dem Bruchstrich in %1</translation>
    </message>
    <message>
        <source>no number in %1</source>
        <translation>keine Zahl in %1</translation>
    </message>
    <message>
        <source>no package: %1</source>
        <translation>keine Zeugnismappe: %1</translation>
    </message>
    <message>
        <source>no piece has the tag &quot;%1&quot;</source>
        <translation>kein Stück hat die Kennung „%1“</translation>
    </message>
    <message>
        <source>no piece is cut, so none can be left uncut</source>
        <translation>kein Stück wird gesägt, also kann keines ungesägt bleiben</translation>
    </message>
    <message>
        <source>no piece may serve it</source>
        <translation>kein Stück darf dafür verwendet werden</translation>
    </message>
    <message>
        <source>no piece that may serve it is long enough; the longest is %1</source>
        <translation>kein Stück, das dafür verwendet werden darf, ist lang genug; das längste ist %1</translation>
    </message>
    <message>
        <source>no place is called &quot;%1&quot;</source>
        <translation>kein Platz heißt „%1“</translation>
    </message>
    <message>
        <source>no plan costs less (proved)</source>
        <translation>kein Plan kostet weniger (bewiesen)</translation>
    </message>
    <message>
        <source>no plan opens less (proved)</source>
        <translation>kein Plan bricht weniger an (bewiesen)</translation>
    </message>
    <message>
        <source>no plan uses less (proved)</source>
        <translation>kein Plan verbraucht weniger (bewiesen)</translation>
    </message>
    <message>
        <source>no purchase order %1 line %2 is expected</source>
        <translation>keine Bestellung %1 Position %2 wird erwartet</translation>
    </message>
    <message>
        <source>no receipt %1 of %2 is booked</source>
        <translation>kein Wareneingang %1 von %2 ist gebucht</translation>
    </message>
    <message>
        <source>no saw is called &quot;%1&quot;</source>
        <translation>keine Säge heißt „%1“</translation>
    </message>
    <message>
        <source>no scrap bin is called &quot;%1&quot;</source>
        <translation>kein Schrottbehälter heißt „%1“</translation>
    </message>
    <message>
        <source>no section is written</source>
        <translation>kein Querschnitt ist angegeben</translation>
    </message>
    <message>
        <source>no separator behind the format number of the scan</source>
        <translation>kein Trennzeichen hinter der Formatnummer des Scans</translation>
    </message>
    <message>
        <source>no setting is called %1</source>
        <translation>keine Einstellung heißt %1</translation>
    </message>
    <message>
        <source>no shape in section %1</source>
        <translation>keine Form im Querschnitt %1</translation>
    </message>
    <message>
        <source>no shipment has the note %1</source>
        <translation>keine Lieferung hat den Lieferschein %1</translation>
    </message>
    <message>
        <source>no site is called &quot;%1&quot;</source>
        <translation>kein Standort heißt „%1“</translation>
    </message>
    <message>
        <source>no slice is taken from %1: %2</source>
        <translation>aus %1 wird keine Scheibe genommen: %2</translation>
    </message>
    <message>
        <source>no strapped bundle is called &quot;%1&quot;</source>
        <translation>kein gebundenes Bund heißt „%1“</translation>
    </message>
    <message>
        <source>no such site (%1) or kind (%2)</source>
        <translation>diesen Standort (%1) oder diese Art (%2) gibt es nicht</translation>
    </message>
    <message>
        <source>no such tag</source>
        <translation>diese Kennung gibt es nicht</translation>
    </message>
    <message>
        <source>no tag is named</source>
        <translation>keine Kennung ist genannt</translation>
    </message>
    <message>
        <source>no tag is written</source>
        <translation>keine Kennung ist angegeben</translation>
    </message>
    <message>
        <source>no tag numbers were taken for this saw yet; expected `heatkeep saw block` while the book can be reached</source>
        <translation>für diese Säge wurden noch keine Kennungen geholt; erwartet wird `heatkeep saw block`, solange das Buch erreichbar ist</translation>
    </message>
    <message>
        <source>no tape, readout or scanner is called &quot;%1&quot;</source>
        <translation>kein Bandmaß, keine Anzeige und kein Scanner heißt „%1“</translation>
    </message>
    <message>
        <source>no tolerance is written</source>
        <translation>keine Toleranz ist angegeben</translation>
    </message>
    <message>
        <source>no trim</source>
        <translation>kein Anschnitt</translation>
    </message>
    <message>
        <source>nobody</source>
        <translation>niemand</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>none broken, and the tables say the same</source>
        <translation>keine gebrochen, und die Tabellen sagen dasselbe</translation>
    </message>
    <message>
        <source>none costs less (proved)</source>
        <translation>keiner kostet weniger (bewiesen)</translation>
    </message>
    <message>
        <source>none is shorter (proved)</source>
        <translation>keiner ist kürzer (bewiesen)</translation>
    </message>
    <message>
        <source>none named</source>
        <translation>niemand genannt</translation>
    </message>
    <message>
        <source>none: metal that is cut stays cut</source>
        <translation>keiner: gesägtes Material bleibt gesägt</translation>
    </message>
    <message>
        <source>none: metal that is cut stays cut; pieces_to_stock or reuse_reject take it up again</source>
        <translation>keiner: gesägtes Material bleibt gesägt; pieces_to_stock oder reuse_reject nehmen es wieder auf</translation>
    </message>
    <message>
        <source>none: scrap does not come back</source>
        <translation>keiner: Schrott kommt nicht zurück</translation>
    </message>
    <message>
        <source>none: what happened stays; a later deed says what is true now</source>
        <translation>keiner: was geschehen ist, bleibt; ein späterer Vorgang sagt, was jetzt gilt</translation>
    </message>
    <message>
        <source>not above %1: %2</source>
        <translation>nicht über %1: %2</translation>
    </message>
    <message>
        <source>not cut from %1 though planned: %2; say why</source>
        <translation>aus %1 nicht gesägt, obwohl geplant: %2; angeben, warum</translation>
    </message>
    <message>
        <source>not found</source>
        <translation>nicht gefunden</translation>
    </message>
    <message>
        <source>not found when %1 was counted</source>
        <translation>nicht gefunden, als %1 gezählt wurde</translation>
    </message>
    <message>
        <source>not here in the book</source>
        <translation>im Buch nicht hier</translation>
    </message>
    <message>
        <source>not here yet, due %1</source>
        <translation>noch nicht hier, fällig %1</translation>
    </message>
    <message>
        <source>not here yet: due %1, purchase order %2</source>
        <translation>noch nicht hier: fällig %1, Bestellung %2</translation>
    </message>
    <message>
        <source>not in its place</source>
        <translation>nicht an seinem Platz</translation>
    </message>
    <message>
        <source>not limited</source>
        <translation>nicht begrenzt</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>nicht gesagt</translation>
    </message>
    <message>
        <source>note %1 of %2</source>
        <translation>Lieferschein %1 von %2</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>nothing %1%2</source>
        <translation>nichts %1%2</translation>
    </message>
    <message>
        <source>nothing behind the data identifier %1 of the scan</source>
        <translation>nichts hinter der Datenkennung %1 des Scans</translation>
    </message>
    <message>
        <source>nothing came over on note %1 line %2</source>
        <translation>auf Lieferschein %1 Position %2 kam nichts herüber</translation>
    </message>
    <message>
        <source>nothing cut from %1 is put in %2: it is being counted</source>
        <translation>aus %1 Gesägtes kommt nicht auf %2: dort wird gezählt</translation>
    </message>
    <message>
        <source>nothing is deleted from %1</source>
        <translation>aus %1 wird nichts gelöscht</translation>
    </message>
    <message>
        <source>nothing is in the scan</source>
        <translation>der Scan ist leer</translation>
    </message>
    <message>
        <source>nothing is left of %1: finish the cut</source>
        <translation>von %1 ist nichts übrig: den Sägevorgang abschließen</translation>
    </message>
    <message>
        <source>nothing is left over</source>
        <translation>nichts bleibt übrig</translation>
    </message>
    <message>
        <source>nothing is planned across %1; crop it first</source>
        <translation>nichts wird über %1 hinweg geplant; erst abtrennen</translation>
    </message>
    <message>
        <source>nothing is released by it; ask its issuer, or hold the metal</source>
        <translation>nichts wird damit freigegeben; den Aussteller fragen oder das Material sperren</translation>
    </message>
    <message>
        <source>nothing is substituted silently</source>
        <translation>nichts wird stillschweigend ersetzt</translation>
    </message>
    <message>
        <source>nothing is written</source>
        <translation>nichts ist angegeben</translation>
    </message>
    <message>
        <source>nothing longer than 1 km is bought</source>
        <translation>nichts über 1 km wird gekauft</translation>
    </message>
    <message>
        <source>nothing longer than 1 km is ordered</source>
        <translation>nichts über 1 km wird bestellt</translation>
    </message>
    <message>
        <source>nothing of shipment %1 is of a heat that document %2 is about</source>
        <translation>nichts von Lieferung %1 ist aus einer Schmelze, von der Dokument %2 handelt</translation>
    </message>
    <message>
        <source>nothing that is here or was shipped</source>
        <translation>nichts, was hier ist oder geliefert wurde</translation>
    </message>
    <message>
        <source>nothing to check</source>
        <translation>nichts zu prüfen</translation>
    </message>
    <message>
        <source>number %1 of %2 does not follow number %3, the last that is here</source>
        <translation>Nummer %1 von %2 folgt nicht auf Nummer %3, die letzte, die hier ist</translation>
    </message>
    <message>
        <source>of %1 cm²</source>
        <translation>zu %1 cm²</translation>
    </message>
    <message>
        <source>of document %1 of %2 only typed values are here, not the document itself</source>
        <translation>von Dokument %1 von %2 sind nur getippte Werte hier, nicht das Dokument selbst</translation>
    </message>
    <message>
        <source>of document %1 only typed values are here: a copy is of its file</source>
        <translation>von Dokument %1 sind nur getippte Werte hier: eine Kopie ist eine seiner Datei</translation>
    </message>
    <message>
        <source>of what it is</source>
        <translation>was es ist</translation>
    </message>
    <message>
        <source>off the network</source>
        <translation>ohne Netz</translation>
    </message>
    <message>
        <source>offered, not taken: what is left would give %1 more of %2 at %3, and leave %4</source>
        <translation>angeboten, nicht genommen: aus dem Rest gingen noch %1 mehr von %2 zu %3, es bleiben %4</translation>
    </message>
    <message>
        <source>offered: leave the last piece uncut at %1, in its tolerance; %2 less to chips</source>
        <translation>angeboten: das letzte Stück bei %1 ungesägt lassen, in seiner Toleranz; %2 weniger Späne</translation>
    </message>
    <message>
        <source>offered: leave the last piece uncut at %1, in its tolerance; %2 less to chips and waste</source>
        <translation>angeboten: das letzte Stück bei %1 ungesägt lassen, in seiner Toleranz; %2 weniger Späne und Abfall</translation>
    </message>
    <message>
        <source>on hand</source>
        <translation>vorhanden</translation>
    </message>
    <message>
        <source>on rack</source>
        <translation>im Regal</translation>
    </message>
    <message>
        <source>on site</source>
        <translation>im Haus</translation>
    </message>
    <message>
        <source>on the way to %1</source>
        <translation>auf dem Weg nach %1</translation>
    </message>
    <message>
        <source>one bundle is one heat, section, condition and owner</source>
        <translation>ein Bund ist eine Schmelze, ein Querschnitt, ein Zustand und ein Eigentümer</translation>
    </message>
    <message>
        <source>one decimal mark; thousands set apart by a blank</source>
        <translation>ein Dezimalzeichen; Tausender mit Leerzeichen</translation>
    </message>
    <message>
        <source>one heat</source>
        <translation>eine Schmelze</translation>
    </message>
    <message>
        <source>one heat %1</source>
        <translation>eine Schmelze %1</translation>
    </message>
    <message>
        <source>one heat is asked for %1</source>
        <translation>verlangt ist eine Schmelze für %1</translation>
    </message>
    <message>
        <source>one heat is asked for order %1 line %2, and it was cut from %3</source>
        <translation>für Auftrag %1 Position %2 ist eine Schmelze verlangt, und gesägt wurde aus %3</translation>
    </message>
    <message>
        <source>one label scanned at a time</source>
        <translation>ein Etikett auf einmal scannen</translation>
    </message>
    <message>
        <source>one letter from A to Z</source>
        <translation>ein Buchstabe von A bis Z</translation>
    </message>
    <message>
        <source>one of: round 50, square 50, hex 50, flat 100x20, tube 60.3x4, angle 100x75x8, box 100x60x5 cold, channel UPN 100, beam IPE 100 (or in inches: round 3 1/8 in)</source>
        <translation>eines von: round 50, square 50, hex 50, flat 100x20, tube 60.3x4, angle 100x75x8, box 100x60x5 cold, channel UPN 100, beam IPE 100 (oder in Zoll: round 3 1/8 in)</translation>
    </message>
    <message>
        <source>one unit for all its dimensions</source>
        <translation>eine Einheit für alle Maße</translation>
    </message>
    <message>
        <source>only %1 are sure to stay in the vice; the grip is %2</source>
        <translation>nur %1 bleiben sicher eingespannt; die Einspannlänge ist %2</translation>
    </message>
    <message>
        <source>only %1 are sure to stay of %2, and saw %3 holds bundles by %4: cut it by itself, or plan again for bundles</source>
        <translation>nur %1 von %2 bleiben sicher, und Säge %3 hält Bunde mit %4: für sich sägen oder neu für Bunde planen</translation>
    </message>
    <message>
        <source>only a missing piece of the same section</source>
        <translation>nur ein fehlendes Stück desselben Querschnitts</translation>
    </message>
    <message>
        <source>only inches can follow feet in %1</source>
        <translation>nur Zoll können auf Fuß folgen in %1</translation>
    </message>
    <message>
        <source>only of heat %1</source>
        <translation>nur aus Schmelze %1</translation>
    </message>
    <message>
        <source>only some of the lengths to buy have a price; expected a price for all, or for none</source>
        <translation>nur einige der zu kaufenden Längen haben einen Preis; erwartet wird ein Preis für alle oder für keine</translation>
    </message>
    <message>
        <source>opening</source>
        <translation>Anfang</translation>
    </message>
    <message>
        <source>opening balance %1</source>
        <translation>Anfangsbestand %1</translation>
    </message>
    <message>
        <source>opens %1, %2</source>
        <translation>bricht %1 an, %2</translation>
    </message>
    <message>
        <source>opens a full bar of %1</source>
        <translation>bricht eine volle Stange von %1 an</translation>
    </message>
    <message>
        <source>opens no full bar</source>
        <translation>bricht keine volle Stange an</translation>
    </message>
    <message>
        <source>or keep it as a drop of theirs</source>
        <translation>oder als Reststück des Kunden behalten</translation>
    </message>
    <message>
        <source>order %1</source>
        <translation>Auftrag %1</translation>
    </message>
    <message>
        <source>order %1 line %2</source>
        <translation>Auftrag %1 Position %2</translation>
    </message>
    <message>
        <source>order %1 line %2 (in %3)</source>
        <translation>Auftrag %1 Position %2 (in %3)</translation>
    </message>
    <message>
        <source>order %1 line %2 from %3: %4</source>
        <translation>Auftrag %1 Position %2 aus %3: %4</translation>
    </message>
    <message numerus="yes">
        <source>order %1 line %2 has %3 pieces open, not %4</source>
        <translation>
            <numerusform>Auftrag %1 Position %2 hat %3 Stück offen, nicht %4</numerusform>
            <numerusform>Auftrag %1 Position %2 hat %3 Stück offen, nicht %4</numerusform>
        </translation>
    </message>
    <message>
        <source>order %1 line %2 is not of %3</source>
        <translation>Auftrag %1 Position %2 ist nicht von %3</translation>
    </message>
    <message numerus="yes">
        <source>order %1 line %2 may come from %3 heats</source>
        <translation>
            <numerusform>Auftrag %1 Position %2 darf aus %3 Schmelze kommen</numerusform>
            <numerusform>Auftrag %1 Position %2 darf aus %3 Schmelzen kommen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>order %1 line %2 may come from %3 heats, and was cut from %4</source>
        <translation>
            <numerusform>Auftrag %1 Position %2 darf aus %3 Schmelze kommen und wurde aus %4 gesägt</numerusform>
            <numerusform>Auftrag %1 Position %2 darf aus %3 Schmelzen kommen und wurde aus %4 gesägt</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>order %1 line %2, %3 pieces of %4 cut from %5: %6</source>
        <translation>
            <numerusform>Auftrag %1 Position %2, %3 Stück aus %4, gesägt aus %5: %6</numerusform>
            <numerusform>Auftrag %1 Position %2, %3 Stück aus %4, gesägt aus %5: %6</numerusform>
        </translation>
    </message>
    <message>
        <source>order %1 line %2: %3 more than are open</source>
        <translation>Auftrag %1 Position %2: %3 mehr, als offen sind</translation>
    </message>
    <message>
        <source>order %1 line %2: %3 ordered, %4 cut</source>
        <translation>Auftrag %1 Position %2: %3 bestellt, %4 gesägt</translation>
    </message>
    <message numerus="yes">
        <source>order %1 line %2: %3 pieces are on site, %4 were to be shipped</source>
        <translation>
            <numerusform>Auftrag %1 Position %2: %3 Stück ist im Haus, %4 sollten geliefert werden</numerusform>
            <numerusform>Auftrag %1 Position %2: %3 Stück sind im Haus, %4 sollten geliefert werden</numerusform>
        </translation>
    </message>
    <message>
        <source>order %1 line %2: it is to be cut from %3&apos;s own metal, which is not bought</source>
        <translation>Auftrag %1 Position %2: zu sägen aus dem Material von %3, das nicht gekauft wird</translation>
    </message>
    <message>
        <source>order %1 line %2: no length offered is long enough</source>
        <translation>Auftrag %1 Position %2: keine angebotene Länge ist lang genug</translation>
    </message>
    <message>
        <source>order %1 line %2: the pieces are of several heats, %3</source>
        <translation>Auftrag %1 Position %2: die Stücke sind aus mehreren Schmelzen, %3</translation>
    </message>
    <message>
        <source>order line</source>
        <translation>Auftragsposition</translation>
    </message>
    <message>
        <source>ordered %1 %2, marked %3 %4</source>
        <translation>bestellt %1 %2, gekennzeichnet %3 %4</translation>
    </message>
    <message>
        <source>original or copy</source>
        <translation>original oder copy</translation>
    </message>
    <message>
        <source>other length</source>
        <translation>andere Länge</translation>
    </message>
    <message>
        <source>others keep taking the pieces: no plan was promised; try again in a moment</source>
        <translation>andere nehmen immer wieder die Stücke: kein Plan wurde zugesagt; gleich noch einmal versuchen</translation>
    </message>
    <message>
        <source>others keep taking the pieces: nothing was changed; try again in a moment</source>
        <translation>andere nehmen immer wieder die Stücke: nichts wurde geändert; gleich noch einmal versuchen</translation>
    </message>
    <message>
        <source>our delivery note</source>
        <translation>unser Lieferschein</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>außer Haus</translation>
    </message>
    <message>
        <source>outside the tolerance: move the stop by %1 and book the piece as a reject</source>
        <translation>außerhalb der Toleranz: den Anschlag um %1 verstellen und das Stück als Ausschuss buchen</translation>
    </message>
    <message>
        <source>over</source>
        <translation>vorbei</translation>
    </message>
    <message>
        <source>papers %1</source>
        <translation>Papiere %1</translation>
    </message>
    <message>
        <source>papers awaited</source>
        <translation>Papiere stehen aus</translation>
    </message>
    <message>
        <source>papers_sent: true</source>
        <translation>papers_sent: true</translation>
    </message>
    <message>
        <source>part ship: %1 of %2 can be cut and shipped now</source>
        <translation>Teillieferung: %1 von %2 können jetzt gesägt und geliefert werden</translation>
    </message>
    <message>
        <source>passed on</source>
        <translation>weitergegangen</translation>
    </message>
    <message>
        <source>piece</source>
        <translation>Stück</translation>
    </message>
    <message>
        <source>piece %1</source>
        <translation>Stück %1</translation>
    </message>
    <message>
        <source>pieces come back by a return, not by a change of the order</source>
        <translation>Stücke kommen mit einer Rücknahme zurück, nicht durch eine Auftragsänderung</translation>
    </message>
    <message>
        <source>pieces were cut from %1: the rest gets a tag of its own</source>
        <translation>aus %1 wurden Stücke gesägt: der Rest bekommt eine eigene Kennung</translation>
    </message>
    <message>
        <source>plan %1</source>
        <translation>Plan %1</translation>
    </message>
    <message>
        <source>plan %1 has no piece %2 that can still be planned anew; what is cut of it is booked first (`heatkeep cut record`)</source>
        <translation>Plan %1 hat kein Stück %2, das noch neu geplant werden kann; was davon gesägt ist, wird erst gebucht (`heatkeep cut record`)</translation>
    </message>
    <message>
        <source>plan %1 is %2</source>
        <translation>Plan %1 ist %2</translation>
    </message>
    <message>
        <source>plan %1 is cancelled; plan its cut list again</source>
        <translation>Plan %1 ist storniert; seine Zuschnittliste neu planen</translation>
    </message>
    <message>
        <source>plan %1 lacks %2: heatkeep replan %3</source>
        <translation>Plan %1 fehlt %2: heatkeep replan %3</translation>
    </message>
    <message>
        <source>plan %1 was made for another saw, kerf, trim or grip</source>
        <translation>Plan %1 wurde für andere Säge, Schnittfuge, Anschnitt oder Einspannlänge gemacht</translation>
    </message>
    <message>
        <source>plan again</source>
        <translation>neu planen</translation>
    </message>
    <message>
        <source>product</source>
        <translation>Stück</translation>
    </message>
    <message>
        <source>product analysis</source>
        <translation>Stückanalyse</translation>
    </message>
    <message>
        <source>promised</source>
        <translation>zugesagt</translation>
    </message>
    <message>
        <source>promised%1 by %2</source>
        <translation>zugesagt%1 von %2</translation>
    </message>
    <message>
        <source>promises are of metal that is there</source>
        <translation>Zusagen gelten Material, das da ist</translation>
    </message>
    <message>
        <source>purchase order %1 line %2 is in the book already</source>
        <translation>Bestellung %1 Position %2 steht schon im Buch</translation>
    </message>
    <message>
        <source>put a mistake right by a reversing deed</source>
        <translation>einen Fehler durch einen umkehrenden Vorgang berichtigen</translation>
    </message>
    <message>
        <source>put it in %1 beside it, or wait until the count is approved</source>
        <translation>daneben auf %1 einlagern oder warten, bis die Zählung genehmigt ist</translation>
    </message>
    <message>
        <source>put it in a place of kind quarantine; quality releases it</source>
        <translation>auf einen Quarantäneplatz legen; die QS gibt es frei</translation>
    </message>
    <message>
        <source>put it where nothing is counted, or wait until the count is approved</source>
        <translation>einlagern, wo nicht gezählt wird, oder warten, bis die Zählung genehmigt ist</translation>
    </message>
    <message>
        <source>put the bar aside; if the piece has been cut already, say so (&quot;already_cut&quot;): it is recorded as held</source>
        <translation>die Stange beiseitelegen; ist das Stück schon gesägt, das sagen („already_cut“): es wird als gesperrt gebucht</translation>
    </message>
    <message>
        <source>put the others right one by one: heatkeep correct receipt for a wrong lot or owner, heatkeep return supplier for what goes back</source>
        <translation>die anderen einzeln berichtigen: heatkeep correct receipt bei falschem Los oder Eigentümer, heatkeep return supplier für das, was zurückgeht</translation>
    </message>
    <message>
        <source>put where it was counted</source>
        <translation>eingelagert, wo gezählt wurde</translation>
    </message>
    <message>
        <source>put_away, to where it lies</source>
        <translation>put_away, dorthin, wo es liegt</translation>
    </message>
    <message>
        <source>quality accepts it first</source>
        <translation>erst nimmt die QS es an</translation>
    </message>
    <message>
        <source>quality decides on the evidence (heatkeep piece identity)</source>
        <translation>die QS entscheidet nach dem Beleg (heatkeep piece identity)</translation>
    </message>
    <message>
        <source>quality lifts the hold first, or condemns the metal</source>
        <translation>erst hebt die QS die Sperre auf oder verwirft das Material</translation>
    </message>
    <message>
        <source>quality lifts the hold or condemns the metal</source>
        <translation>die QS hebt die Sperre auf oder verwirft das Material</translation>
    </message>
    <message>
        <source>quality releases it first</source>
        <translation>erst gibt die QS es frei</translation>
    </message>
    <message>
        <source>quarantine</source>
        <translation>Quarantäne</translation>
    </message>
    <message>
        <source>quarantined: %1</source>
        <translation>in Quarantäne: %1</translation>
    </message>
    <message>
        <source>rack</source>
        <translation>Regal</translation>
    </message>
    <message>
        <source>radii that fit between root and toe</source>
        <translation>Radien, die zwischen Wurzel und Spitze passen</translation>
    </message>
    <message>
        <source>read at least the last 4 characters of the heat from the metal</source>
        <translation>mindestens die letzten 4 Zeichen der Schmelze vom Material ablesen</translation>
    </message>
    <message>
        <source>read it on the metal or its tag; where nothing can be read, read_from is none: it waits in quarantine</source>
        <translation>vom Material oder seinem Etikett ablesen; ist nichts lesbar, ist read_from none: es wartet in Quarantäne</translation>
    </message>
    <message>
        <source>receipt</source>
        <translation>Wareneingang</translation>
    </message>
    <message>
        <source>receipt %1 is not reversed as a whole: %2</source>
        <translation>Wareneingang %1 wird nicht als Ganzes storniert: %2</translation>
    </message>
    <message>
        <source>receipt %1 reversed: %2</source>
        <translation>Wareneingang %1 storniert: %2</translation>
    </message>
    <message>
        <source>receipt corrected</source>
        <translation>Wareneingang berichtigt</translation>
    </message>
    <message>
        <source>receive_delivery: the note may be booked again</source>
        <translation>receive_delivery: der Lieferschein darf noch einmal gebucht werden</translation>
    </message>
    <message>
        <source>receive_transfer, and send_to_site back</source>
        <translation>receive_transfer, und send_to_site zurück</translation>
    </message>
    <message>
        <source>record_cut of each bar with nothing cut, its rest the same piece</source>
        <translation>record_cut jeder Stange ohne Schnitt, ihr Rest ist dasselbe Stück</translation>
    </message>
    <message>
        <source>record_cut with nothing cut, its rest the same piece</source>
        <translation>record_cut ohne Schnitt, sein Rest ist dasselbe Stück</translation>
    </message>
    <message>
        <source>recut for order %1</source>
        <translation>Nachschnitt für Auftrag %1</translation>
    </message>
    <message>
        <source>reject</source>
        <translation>Ausschuss</translation>
    </message>
    <message>
        <source>reject %1 has a recut already</source>
        <translation>Ausschuss %1 hat schon einen Nachschnitt</translation>
    </message>
    <message>
        <source>reject %1 is no reject of order %2 line %3</source>
        <translation>Ausschuss %1 ist kein Ausschuss von Auftrag %2 Position %3</translation>
    </message>
    <message>
        <source>release that one</source>
        <translation>jenes freigeben</translation>
    </message>
    <message>
        <source>release, with evidence</source>
        <translation>release, mit Beleg</translation>
    </message>
    <message>
        <source>released</source>
        <translation>freigegeben</translation>
    </message>
    <message>
        <source>replace_document, with the file of the new version</source>
        <translation>replace_document, mit der Datei der neuen Fassung</translation>
    </message>
    <message>
        <source>replay equals the present state</source>
        <translation>Wiederholen ergibt den jetzigen Stand</translation>
    </message>
    <message>
        <source>report %1 does not wait for an answer</source>
        <translation>Meldung %1 wartet nicht auf eine Antwort</translation>
    </message>
    <message>
        <source>request %1 was used before for another deed (%2 by %3)</source>
        <translation>Anforderung %1 wurde schon für einen anderen Vorgang verwendet (%2 von %3)</translation>
    </message>
    <message>
        <source>reserve for pieces that are open</source>
        <translation>für offene Stücke reservieren</translation>
    </message>
    <message>
        <source>rest measured against arithmetic</source>
        <translation>Rest gemessen gegen gerechnet</translation>
    </message>
    <message>
        <source>results on other metal of the kind make it a 2.2 (EN 10204:2004 clause 3)</source>
        <translation>Ergebnisse an anderem Material der Art machen es zu einem 2.2 (EN 10204:2004 Abschnitt 3)</translation>
    </message>
    <message>
        <source>return</source>
        <translation>Rücknahme</translation>
    </message>
    <message>
        <source>returned</source>
        <translation>zurückgegeben</translation>
    </message>
    <message>
        <source>returned by %1, note %2: %3</source>
        <translation>zurück von %1, Lieferschein %2: %3</translation>
    </message>
    <message>
        <source>returned by a customer</source>
        <translation>von einem Kunden zurück</translation>
    </message>
    <message>
        <source>returned or scrapped</source>
        <translation>zurückgegeben oder verschrottet</translation>
    </message>
    <message>
        <source>returned or scrapped; or it is bought over in writing (heatkeep piece buy-over)</source>
        <translation>zurückgegeben oder verschrottet; oder es wird schriftlich übernommen (heatkeep piece buy-over)</translation>
    </message>
    <message>
        <source>returned to %1, note %2, claim %3: %4</source>
        <translation>zurück an %1, Lieferschein %2, Reklamation %3: %4</translation>
    </message>
    <message>
        <source>reverse_receipt while nothing of it has gone on; correct_receipt for one bar</source>
        <translation>reverse_receipt, solange nichts davon weitergegangen ist; correct_receipt für eine Stange</translation>
    </message>
    <message>
        <source>reverse_receipt while nothing of it has gone on; correct_receipt for one piece</source>
        <translation>reverse_receipt, solange nichts davon weitergegangen ist; correct_receipt für ein Stück</translation>
    </message>
    <message>
        <source>reversed</source>
        <translation>storniert</translation>
    </message>
    <message>
        <source>round</source>
        <translation>Rund</translation>
    </message>
    <message>
        <source>rows differ in %1</source>
        <translation>Zeilen weichen ab in %1</translation>
    </message>
    <message>
        <source>run heatkeep book verify</source>
        <translation>heatkeep book verify aufrufen</translation>
    </message>
    <message>
        <source>saw</source>
        <translation>Säge</translation>
    </message>
    <message numerus="yes">
        <source>saw %1 takes %2 bars at a time, not %3: make up bundles of %4 or fewer</source>
        <translation>
            <numerusform>Säge %1 nimmt %2 Stange auf einmal, nicht %3: Bunde von %4 oder weniger bilden</numerusform>
            <numerusform>Säge %1 nimmt %2 Stangen auf einmal, nicht %3: Bunde von %4 oder weniger bilden</numerusform>
        </translation>
    </message>
    <message>
        <source>saw %1 takes a %2 of %3 x %4</source>
        <translation>Säge %1 nimmt %2 bis %3 x %4</translation>
    </message>
    <message>
        <source>saw %1 takes sections to %2</source>
        <translation>Säge %1 nimmt Querschnitte bis %2</translation>
    </message>
    <message>
        <source>saw %1 was handed over and nobody has taken it yet</source>
        <translation>Säge %1 ist übergeben, und noch hat sie niemand übernommen</translation>
    </message>
    <message>
        <source>saw %1 was not handed over</source>
        <translation>Säge %1 ist nicht übergeben</translation>
    </message>
    <message>
        <source>say how many pieces become stock, and why</source>
        <translation>angeben, wie viele Stücke in den Bestand gehen und warum</translation>
    </message>
    <message>
        <source>say how many pieces of order %1 line %2 leave; expected 1 or more</source>
        <translation>angeben, wie viele Stücke von Auftrag %1 Position %2 abgehen; erwartet wird 1 oder mehr</translation>
    </message>
    <message>
        <source>say how many pieces of the line; expected 1 or more</source>
        <translation>angeben, wie viele Stücke der Position; erwartet wird 1 oder mehr</translation>
    </message>
    <message>
        <source>say the new condition; it becomes a lot of its own with papers of its own</source>
        <translation>den neuen Zustand angeben; es wird ein eigenes Los mit eigenen Papieren</translation>
    </message>
    <message>
        <source>say what is sent: tags is empty</source>
        <translation>angeben, was geschickt wird: tags ist leer</translation>
    </message>
    <message>
        <source>say what is sold: tags is empty</source>
        <translation>angeben, was verkauft wird: tags ist leer</translation>
    </message>
    <message>
        <source>say what kind of damage it is, and whether the piece is usable</source>
        <translation>angeben, welcher Schaden es ist und ob das Stück brauchbar ist</translation>
    </message>
    <message>
        <source>say what the customer takes: another grade, another section or weaker papers</source>
        <translation>angeben, was der Kunde nimmt: anderen Werkstoff, anderen Querschnitt oder schwächere Papiere</translation>
    </message>
    <message>
        <source>say what the first piece measures</source>
        <translation>angeben, was das erste Stück misst</translation>
    </message>
    <message>
        <source>say where it was looked for</source>
        <translation>angeben, wo gesucht wurde</translation>
    </message>
    <message>
        <source>say where the new piece of %1 is put</source>
        <translation>angeben, wohin das neue Stück von %1 kommt</translation>
    </message>
    <message>
        <source>say whether they are kept</source>
        <translation>angeben, ob sie behalten werden</translation>
    </message>
    <message>
        <source>say which labels: jobs is empty</source>
        <translation>angeben, welche Etiketten: jobs ist leer</translation>
    </message>
    <message>
        <source>scan it, or type it from the label</source>
        <translation>scannen oder vom Etikett abtippen</translation>
    </message>
    <message>
        <source>scan its tag, or photograph its mark (heatkeep piece photo) and give the photo&apos;s number</source>
        <translation>die Kennung scannen oder das Zeichen fotografieren (heatkeep piece photo) und die Nummer des Fotos angeben</translation>
    </message>
    <message>
        <source>scrap</source>
        <translation>Schrott</translation>
    </message>
    <message>
        <source>scrap it or return it to whom it came from</source>
        <translation>verschrotten oder an den zurückgeben, von dem es kam</translation>
    </message>
    <message>
        <source>scrapped</source>
        <translation>verschrottet</translation>
    </message>
    <message>
        <source>scrapping says why</source>
        <translation>wer verschrottet, sagt warum</translation>
    </message>
    <message>
        <source>seal %1 after happening %2%3</source>
        <translation>Siegel %1 nach Ereignis %2%3</translation>
    </message>
    <message>
        <source>section %1 does not say how it was made</source>
        <translation>Querschnitt %1 sagt nicht, wie er hergestellt ist</translation>
    </message>
    <message>
        <source>section %1 has %2 dimension, a %3 has %4</source>
        <translation>Querschnitt %1 hat %2 Maß, %3 hat %4</translation>
    </message>
    <message>
        <source>section %1 has %2 dimension, an %3 has %4</source>
        <translation>Querschnitt %1 hat %2 Maß, %3 hat %4</translation>
    </message>
    <message>
        <source>section %1 has %2 dimensions, a %3 has %4</source>
        <translation>Querschnitt %1 hat %2 Maße, %3 hat %4</translation>
    </message>
    <message>
        <source>section %1 has %2 dimensions, an %3 has %4</source>
        <translation>Querschnitt %1 hat %2 Maße, %3 hat %4</translation>
    </message>
    <message>
        <source>section %1 is larger than 2 m</source>
        <translation>Querschnitt %1 ist größer als 2 m</translation>
    </message>
    <message>
        <source>section %1: %2</source>
        <translation>Querschnitt %1: %2</translation>
    </message>
    <message>
        <source>sell it as what it is</source>
        <translation>als das verkaufen, was es ist</translation>
    </message>
    <message>
        <source>sell it, send it back to its supplier, or scrap it</source>
        <translation>verkaufen, an den Lieferanten zurückschicken oder verschrotten</translation>
    </message>
    <message>
        <source>send it back to its owner (heatkeep return owner), or buy it over in writing (heatkeep piece buy-over)</source>
        <translation>an den Eigentümer zurückschicken (heatkeep return owner) oder schriftlich übernehmen (heatkeep piece buy-over)</translation>
    </message>
    <message>
        <source>send what lies between first</source>
        <translation>erst senden, was dazwischen liegt</translation>
    </message>
    <message>
        <source>sent away</source>
        <translation>weggeschickt</translation>
    </message>
    <message>
        <source>sent out</source>
        <translation>außer Haus gegeben</translation>
    </message>
    <message>
        <source>sent out: %1</source>
        <translation>außer Haus gegeben: %1</translation>
    </message>
    <message>
        <source>sent to %1</source>
        <translation>nach %1 geschickt</translation>
    </message>
    <message>
        <source>setting %1</source>
        <translation>Einstellung %1</translation>
    </message>
    <message>
        <source>settings that cannot be: %1</source>
        <translation>Einstellungen, die nicht sein können: %1</translation>
    </message>
    <message>
        <source>ship what may serve; for the rest the customer agrees in writing, or other metal is cut</source>
        <translation>liefern, was dafür verwendet werden darf; für den Rest stimmt der Kunde schriftlich zu, oder anderes Material wird gesägt</translation>
    </message>
    <message>
        <source>shipped</source>
        <translation>geliefert</translation>
    </message>
    <message>
        <source>shipped to %1, note %2</source>
        <translation>an %1 geliefert, Lieferschein %2</translation>
    </message>
    <message>
        <source>short</source>
        <translation>fehlen</translation>
    </message>
    <message>
        <source>short: order %1 line %2, %3 missing: %4</source>
        <translation>es fehlt: Auftrag %1 Position %2, %3 fehlen: %4</translation>
    </message>
    <message>
        <source>site %1</source>
        <translation>Standort %1</translation>
    </message>
    <message>
        <source>slip</source>
        <translation>Lieferschein</translation>
    </message>
    <message>
        <source>sold</source>
        <translation>verkauft</translation>
    </message>
    <message>
        <source>sold to %1, note %2</source>
        <translation>an %1 verkauft, Lieferschein %2</translation>
    </message>
    <message>
        <source>sold to %1, order %2</source>
        <translation>an %1 verkauft, Auftrag %2</translation>
    </message>
    <message>
        <source>specific inspection is stated in a document of its own, with its own number (EN 10204:2004 clauses 3 and 4)</source>
        <translation>eine spezifische Prüfung wird in einem eigenen Dokument mit eigener Nummer bescheinigt (EN 10204:2004 Abschnitte 3 und 4)</translation>
    </message>
    <message>
        <source>square</source>
        <translation>Vierkant</translation>
    </message>
    <message>
        <source>stainless steel</source>
        <translation>nichtrostender Stahl</translation>
    </message>
    <message>
        <source>stands in: %1</source>
        <translation>springt ein: %1</translation>
    </message>
    <message>
        <source>still open on %1: %2; say why</source>
        <translation>auf %1 noch offen: %2; angeben, warum</translation>
    </message>
    <message>
        <source>tag</source>
        <translation>Kennung</translation>
    </message>
    <message>
        <source>tag %1 is not from a block of device &quot;%2&quot;</source>
        <translation>Kennung %1 ist nicht aus einem Block von Gerät „%2“</translation>
    </message>
    <message>
        <source>tag number %1 is out of range</source>
        <translation>Kennungsnummer %1 liegt außerhalb</translation>
    </message>
    <message>
        <source>take %1 at %2 (%3, %4 left)</source>
        <translation>%1 auf %2 nehmen (%3, übrig %4)</translation>
    </message>
    <message>
        <source>take a block of tag numbers with it first</source>
        <translation>erst einen Block Kennungen mitnehmen</translation>
    </message>
    <message>
        <source>take it out and keep it apart until quality closes the case</source>
        <translation>herausnehmen und abseits legen, bis die QS den Fall abschließt</translation>
    </message>
    <message>
        <source>taken by saw %1</source>
        <translation>von Säge %1 genommen</translation>
    </message>
    <message>
        <source>taken meanwhile: %1, %2</source>
        <translation>inzwischen genommen: %1, %2</translation>
    </message>
    <message>
        <source>taken over</source>
        <translation>übernommen</translation>
    </message>
    <message>
        <source>takes %1 drop</source>
        <translation>nimmt %1 Reststück</translation>
    </message>
    <message numerus="yes">
        <source>takes %1 drops</source>
        <translation>
            <numerusform>nimmt %1 Reststück</numerusform>
            <numerusform>nimmt %1 Reststücke</numerusform>
        </translation>
    </message>
    <message>
        <source>tape, readout, scale, scanner or analyser</source>
        <translation>Bandmaß, Anzeige, Waage, Scanner oder Analysator</translation>
    </message>
    <message>
        <source>test slice</source>
        <translation>Probescheibe</translation>
    </message>
    <message>
        <source>text without control characters</source>
        <translation>Text ohne Steuerzeichen</translation>
    </message>
    <message>
        <source>the %1 of %2 is not in the table</source>
        <translation>%1 von %2 steht nicht in der Tabelle</translation>
    </message>
    <message>
        <source>the PDF is cut off: it has no end</source>
        <translation>das PDF ist abgeschnitten: es hat kein Ende</translation>
    </message>
    <message>
        <source>the SHA-256 of what the record says</source>
        <translation>die SHA-256 dessen, was der Nachweis sagt</translation>
    </message>
    <message>
        <source>the answer is cut on or stop, with the reason</source>
        <translation>die Antwort ist cut on (weiter sägen) oder stop, mit Grund</translation>
    </message>
    <message>
        <source>the bins are %1</source>
        <translation>die Behälter sind %1</translation>
    </message>
    <message>
        <source>the book has no limit for %1 there</source>
        <translation>das Buch hat dort keine Grenze für %1</translation>
    </message>
    <message>
        <source>the book knows no %1 &quot;%2&quot; of %3</source>
        <translation>das Buch kennt kein %1 „%2“ von %3</translation>
    </message>
    <message>
        <source>the book&apos;s verification checked nothing</source>
        <translation>die Prüfung des Buchs hat nichts geprüft</translation>
    </message>
    <message>
        <source>the bytes of the file, base64</source>
        <translation>die Bytes der Datei, base64</translation>
    </message>
    <message>
        <source>the calibration of %1 ended on %2: calibrate it, then measure again</source>
        <translation>die Kalibrierung von %1 endete am %2: kalibrieren, dann noch einmal messen</translation>
    </message>
    <message>
        <source>the check character %1 of tag %2 is wrong</source>
        <translation>das Prüfzeichen %1 der Kennung %2 ist falsch</translation>
    </message>
    <message>
        <source>the check character is wrong: read the tag again</source>
        <translation>das Prüfzeichen ist falsch: die Kennung noch einmal lesen</translation>
    </message>
    <message>
        <source>the condition it has now</source>
        <translation>der Zustand, den es jetzt hat</translation>
    </message>
    <message>
        <source>the connection string of the book cannot be read; expected for example &apos;host=db.example dbname=heatkeep&apos;, postgresql://db.example/heatkeep, or a service name</source>
        <translation>die Verbindungsangabe zum Buch ist nicht lesbar; erwartet wird zum Beispiel &apos;host=db.example dbname=heatkeep&apos;, postgresql://db.example/heatkeep oder ein Dienstname</translation>
    </message>
    <message>
        <source>the cost of a set-up or a heat is below 0</source>
        <translation>die Kosten eines Rüstens oder einer Schmelze sind unter 0</translation>
    </message>
    <message numerus="yes">
        <source>the customer takes %1 pieces with papers %2</source>
        <translation>
            <numerusform>der Kunde nimmt %1 Stück mit Papieren %2</numerusform>
            <numerusform>der Kunde nimmt %1 Stück mit Papieren %2</numerusform>
        </translation>
    </message>
    <message>
        <source>the customer&apos;s order</source>
        <translation>der Auftrag des Kunden</translation>
    </message>
    <message>
        <source>the cut does not add up: %1 went in, %2 came off and %3 stay</source>
        <translation>der Sägevorgang geht nicht auf: %1 gingen hinein, %2 kamen ab und %3 bleiben</translation>
    </message>
    <message>
        <source>the cuts need %1 more than is sure</source>
        <translation>die Schnitte brauchen %1 mehr, als sicher ist</translation>
    </message>
    <message>
        <source>the cuts need %1 more than there is</source>
        <translation>die Schnitte brauchen %1 mehr, als da ist</translation>
    </message>
    <message>
        <source>the data identifier %1 comes twice in the scan</source>
        <translation>die Datenkennung %1 kommt im Scan zweimal vor</translation>
    </message>
    <message>
        <source>the database gave no answer</source>
        <translation>die Datenbank gab keine Antwort</translation>
    </message>
    <message>
        <source>the day it is asked for next</source>
        <translation>der Tag, für den danach gefragt wird</translation>
    </message>
    <message>
        <source>the delivery note, or the name of the opening balance</source>
        <translation>der Lieferschein oder der Name des Anfangsbestands</translation>
    </message>
    <message>
        <source>the differences of %1 are worth more than %2: the owner approves them</source>
        <translation>die Abweichungen von %1 sind mehr wert als %2: der Inhaber genehmigt sie</translation>
    </message>
    <message>
        <source>the document is not accepted: %1</source>
        <translation>das Dokument ist nicht angenommen: %1</translation>
    </message>
    <message>
        <source>the elements add up to %1 %</source>
        <translation>die Elemente ergeben zusammen %1 %</translation>
    </message>
    <message>
        <source>the evidence for it</source>
        <translation>der Beleg dafür</translation>
    </message>
    <message>
        <source>the far end is rough: at least the trim must be left of it</source>
        <translation>das ferne Ende ist roh: mindestens der Anschnitt muss davon bleiben</translation>
    </message>
    <message>
        <source>the file does not say what was printed under this digest</source>
        <translation>die Datei sagt nicht, was unter dieser Prüfsumme gedruckt wurde</translation>
    </message>
    <message numerus="yes">
        <source>the file has %1 bytes</source>
        <translation>
            <numerusform>die Datei hat %1 Byte</numerusform>
            <numerusform>die Datei hat %1 Bytes</numerusform>
        </translation>
    </message>
    <message>
        <source>the file is no picture that can be kept</source>
        <translation>die Datei ist kein Bild, das aufbewahrt werden kann</translation>
    </message>
    <message>
        <source>the file is none that a document can be</source>
        <translation>die Datei ist keine, die ein Dokument sein kann</translation>
    </message>
    <message>
        <source>the grade that the analysis shows</source>
        <translation>der Werkstoff, den die Analyse zeigt</translation>
    </message>
    <message>
        <source>the happenings of %1 %2 were written anew: they end otherwise than the record says</source>
        <translation>die Ereignisse von %1 %2 wurden neu geschrieben: sie enden anders, als der Nachweis sagt</translation>
    </message>
    <message>
        <source>the heat as read</source>
        <translation>die Schmelze, wie gelesen</translation>
    </message>
    <message>
        <source>the heat on the metal and on the paper must agree; if they do not, quarantine the metal</source>
        <translation>die Schmelze auf Material und Papier muss übereinstimmen; tut sie es nicht, das Material in Quarantäne stellen</translation>
    </message>
    <message>
        <source>the heat was read from the slip, not from the metal</source>
        <translation>die Schmelze wurde vom Lieferschein gelesen, nicht vom Material</translation>
    </message>
    <message>
        <source>the heat, or else the tag, as read on the metal now</source>
        <translation>die Schmelze, sonst die Kennung, wie jetzt vom Material gelesen</translation>
    </message>
    <message>
        <source>the heats disagree: %1</source>
        <translation>die Schmelzen stimmen nicht überein: %1</translation>
    </message>
    <message>
        <source>the kerf is measured in a test cut: it is wider than the band is thick</source>
        <translation>die Schnittfuge wird an einem Probeschnitt gemessen: sie ist breiter, als das Band dick ist</translation>
    </message>
    <message>
        <source>the label of a piece</source>
        <translation>das Etikett eines Stücks</translation>
    </message>
    <message>
        <source>the label of a place</source>
        <translation>das Etikett eines Platzes</translation>
    </message>
    <message>
        <source>the last dimension of %1 has no unit</source>
        <translation>das letzte Maß von %1 hat keine Einheit</translation>
    </message>
    <message>
        <source>the last piece is shorter than the grip</source>
        <translation>das letzte Stück ist kürzer als die Einspannlänge</translation>
    </message>
    <message>
        <source>the last piece is what remains, no cut for it</source>
        <translation>das letzte Stück ist, was übrig bleibt, kein Schnitt dafür</translation>
    </message>
    <message>
        <source>the last seal</source>
        <translation>das letzte Siegel</translation>
    </message>
    <message>
        <source>the layouts make no good plan: %1</source>
        <translation>die Aufteilungen ergeben keinen guten Plan: %1</translation>
    </message>
    <message>
        <source>the lead answers before more of it is cut</source>
        <translation>die Leitung antwortet, bevor mehr davon gesägt wird</translation>
    </message>
    <message>
        <source>the lead said stop: %1</source>
        <translation>die Leitung hat Stopp gesagt: %1</translation>
    </message>
    <message>
        <source>the ledger does not say what the record stands on: %1</source>
        <translation>das Hauptbuch sagt nicht, worauf der Nachweis steht: %1</translation>
    </message>
    <message>
        <source>the length as measured now</source>
        <translation>die Länge, wie jetzt gemessen</translation>
    </message>
    <message>
        <source>the length as measured on arrival</source>
        <translation>die Länge, wie bei der Ankunft gemessen</translation>
    </message>
    <message>
        <source>the length ordered</source>
        <translation>die bestellte Länge</translation>
    </message>
    <message>
        <source>the limit is the setting count_limit_cents of the shop</source>
        <translation>die Grenze ist die Einstellung count_limit_cents des Betriebs</translation>
    </message>
    <message>
        <source>the limit is the setting photo_bytes of the shop</source>
        <translation>die Grenze ist die Einstellung photo_bytes des Betriebs</translation>
    </message>
    <message>
        <source>the limit of heats</source>
        <translation>die Grenze der Schmelzen</translation>
    </message>
    <message>
        <source>the line</source>
        <translation>die Position</translation>
    </message>
    <message>
        <source>the line is cancelled</source>
        <translation>die Position ist storniert</translation>
    </message>
    <message>
        <source>the lines ask more than 1000000 cuts in all</source>
        <translation>die Positionen verlangen zusammen mehr als 1000000 Schnitte</translation>
    </message>
    <message>
        <source>the measured length</source>
        <translation>die gemessene Länge</translation>
    </message>
    <message>
        <source>the metal does not read as the heat of %1 in the book: put it aside and call quality</source>
        <translation>das Material liest sich nicht wie die Schmelze von %1 im Buch: beiseitelegen und die QS rufen</translation>
    </message>
    <message>
        <source>the metal of %1 does not add up: it was %2, %3 are there and %4 went</source>
        <translation>das Material von %1 geht nicht auf: es waren %2, %3 sind da und %4 gingen ab</translation>
    </message>
    <message>
        <source>the metal that may serve it is used up</source>
        <translation>das Material, das dafür verwendet werden darf, ist verbraucht</translation>
    </message>
    <message>
        <source>the metal that may serve it is used up within %1 heat</source>
        <translation>das Material, das dafür verwendet werden darf, ist innerhalb von %1 Schmelze verbraucht</translation>
    </message>
    <message numerus="yes">
        <source>the metal that may serve it is used up within %1 heats</source>
        <translation>
            <numerusform>das Material, das dafür verwendet werden darf, ist innerhalb von %1 Schmelze verbraucht</numerusform>
            <numerusform>das Material, das dafür verwendet werden darf, ist innerhalb von %1 Schmelzen verbraucht</numerusform>
        </translation>
    </message>
    <message>
        <source>the metal that may serve it is used up within one heat</source>
        <translation>das Material, das dafür verwendet werden darf, ist innerhalb einer Schmelze verbraucht</translation>
    </message>
    <message>
        <source>the name on the strap</source>
        <translation>der Name am Band des Bundes</translation>
    </message>
    <message>
        <source>the next shift takes it over first</source>
        <translation>erst übernimmt sie die nächste Schicht</translation>
    </message>
    <message>
        <source>the note it leaves with</source>
        <translation>der Lieferschein, mit dem es abgeht</translation>
    </message>
    <message>
        <source>the number in the queue of labels</source>
        <translation>die Nummer in der Etikettenreihe</translation>
    </message>
    <message>
        <source>the number of a live hold</source>
        <translation>die Nummer einer bestehenden Sperre</translation>
    </message>
    <message>
        <source>the number of the calibration certificate</source>
        <translation>die Nummer des Kalibrierscheins</translation>
    </message>
    <message>
        <source>the number of the claim</source>
        <translation>die Nummer der Reklamation</translation>
    </message>
    <message>
        <source>the number of the delivery note</source>
        <translation>die Nummer des Lieferscheins</translation>
    </message>
    <message>
        <source>the number of the purchase order</source>
        <translation>die Nummer der Bestellung</translation>
    </message>
    <message>
        <source>the number of the transfer note</source>
        <translation>die Nummer des Umlagerungsscheins</translation>
    </message>
    <message>
        <source>the order, or a tag</source>
        <translation>der Auftrag oder eine Kennung</translation>
    </message>
    <message>
        <source>the owner adds it to the shop first</source>
        <translation>erst trägt der Inhaber es im Betrieb ein</translation>
    </message>
    <message>
        <source>the owner defines one for %1: heatkeep saw bins --bin &quot;NAME=%2&quot;</source>
        <translation>der Inhaber legt einen für %1 an: heatkeep saw bins --bin &quot;NAME=%2&quot;</translation>
    </message>
    <message>
        <source>the owner sets up a bin for %1; scrap is bought by its chemistry</source>
        <translation>der Inhaber richtet einen Behälter für %1 ein; Schrott wird nach seiner Chemie gekauft</translation>
    </message>
    <message numerus="yes">
        <source>the picture has %1 bytes; at most %2 are kept</source>
        <translation>
            <numerusform>das Bild hat %1 Byte; höchstens %2 werden aufbewahrt</numerusform>
            <numerusform>das Bild hat %1 Bytes; höchstens %2 werden aufbewahrt</numerusform>
        </translation>
    </message>
    <message>
        <source>the pieces of a cut are counted from 1 on; more than 100000 are no plan</source>
        <translation>die Stücke eines Schnitts zählen ab 1; mehr als 100000 sind kein Plan</translation>
    </message>
    <message>
        <source>the place</source>
        <translation>der Platz</translation>
    </message>
    <message>
        <source>the plan by hand is taken: it costs %1 more, less than %2</source>
        <translation>der Plan von Hand wird genommen: er kostet %1 mehr, weniger als %2</translation>
    </message>
    <message>
        <source>the plan by hand is taken: it costs no more</source>
        <translation>der Plan von Hand wird genommen: er kostet nicht mehr</translation>
    </message>
    <message>
        <source>the plan by hand is taken: it is %1 cheaper</source>
        <translation>der Plan von Hand wird genommen: er ist %1 billiger</translation>
    </message>
    <message>
        <source>the plan by hand is taken: it is better than what was found in the time there was</source>
        <translation>der Plan von Hand wird genommen: er ist besser, als was in der Zeit gefunden wurde</translation>
    </message>
    <message>
        <source>the plan does not pass its own check: %1</source>
        <translation>der Plan besteht seine eigene Prüfung nicht: %1</translation>
    </message>
    <message>
        <source>the printer</source>
        <translation>der Drucker</translation>
    </message>
    <message>
        <source>the printer they came from</source>
        <translation>der Drucker, aus dem sie kamen</translation>
    </message>
    <message>
        <source>the program and the book have different tables of sections: use the same version</source>
        <translation>Programm und Buch haben verschiedene Querschnittstabellen: dieselbe Fassung verwenden</translation>
    </message>
    <message>
        <source>the promise of %1 lapsed at %2, and its order was planned anew since</source>
        <translation>die Zusage von %1 ist um %2 verfallen, und sein Auftrag wurde seither neu geplant</translation>
    </message>
    <message>
        <source>the quantity and the length are changed: ISO 10474 clause 6 asks for an additional document</source>
        <translation>Menge und Länge sind geändert: ISO 10474 Abschnitt 6 verlangt ein Zusatzdokument</translation>
    </message>
    <message>
        <source>the radii of %1 leave no leg</source>
        <translation>die Radien von %1 lassen keinen Schenkel</translation>
    </message>
    <message>
        <source>the record at byte %1 is damaged and is not the last; %2 before it are whole; copy the file and have a person look at it</source>
        <translation>der Satz bei Byte %1 ist beschädigt und nicht der letzte; %2 davor sind ganz; die Datei kopieren und jemanden ansehen lassen</translation>
    </message>
    <message>
        <source>the rest of %1 cannot measure %2: by the cuts it is %3</source>
        <translation>der Rest von %1 kann nicht %2 messen: nach den Schnitten ist er %3</translation>
    </message>
    <message>
        <source>the return note</source>
        <translation>der Rückgabeschein</translation>
    </message>
    <message>
        <source>the same metal</source>
        <translation>dasselbe Material</translation>
    </message>
    <message>
        <source>the saw books what it has cut, or puts it back</source>
        <translation>die Säge bucht, was sie gesägt hat, oder legt es zurück</translation>
    </message>
    <message>
        <source>the saw takes it with the cut (class &quot;test slice&quot;), or the planner lets the piece go first</source>
        <translation>die Säge nimmt sie mit dem Schnitt (Klasse „test slice“), oder die Planung gibt das Stück erst frei</translation>
    </message>
    <message>
        <source>the scan is of format %1</source>
        <translation>der Scan hat Format %1</translation>
    </message>
    <message>
        <source>the scanner has dropped the control characters, and no tag stands first in %1</source>
        <translation>der Scanner hat die Steuerzeichen weggelassen, und keine Kennung steht am Anfang von %1</translation>
    </message>
    <message>
        <source>the scanner set to send control characters, or the tag typed</source>
        <translation>der Scanner, auf Senden von Steuerzeichen eingestellt, oder die getippte Kennung</translation>
    </message>
    <message>
        <source>the search ended by the clock; more seconds may give a better plan</source>
        <translation>die Suche endete nach der Uhr; mehr Sekunden können einen besseren Plan ergeben</translation>
    </message>
    <message>
        <source>the search was stopped; this is the best it had found</source>
        <translation>die Suche wurde angehalten; dies ist das Beste, was sie gefunden hatte</translation>
    </message>
    <message>
        <source>the server keeps what it says</source>
        <translation>der Server bewahrt auf, was er sagt</translation>
    </message>
    <message>
        <source>the sheet is handed on with every open piece explained</source>
        <translation>das Blatt wird weitergegeben, wenn jedes offene Stück erklärt ist</translation>
    </message>
    <message>
        <source>the shop&apos;s own</source>
        <translation>eigene</translation>
    </message>
    <message>
        <source>the shortest bar to buy for %1 is %2</source>
        <translation>die kürzeste zu kaufende Stange für %1 ist %2</translation>
    </message>
    <message>
        <source>the signature or written instruction of its owner</source>
        <translation>die Unterschrift oder schriftliche Anweisung des Eigentümers</translation>
    </message>
    <message>
        <source>the site it goes to</source>
        <translation>der Standort, an den es geht</translation>
    </message>
    <message>
        <source>the site it is used at</source>
        <translation>der Standort, an dem es verwendet wird</translation>
    </message>
    <message>
        <source>the tables say otherwise of %1 than the happenings do</source>
        <translation>die Tabellen sagen über %1 etwas anderes als die Ereignisse</translation>
    </message>
    <message>
        <source>the tables say otherwise of a stroke of %1 than the happenings do</source>
        <translation>die Tabellen sagen über einen Schnitt von %1 etwas anderes als die Ereignisse</translation>
    </message>
    <message>
        <source>the tag</source>
        <translation>die Kennung</translation>
    </message>
    <message>
        <source>the tag is well formed: was it given out by another book?</source>
        <translation>die Kennung ist richtig gebildet: stammt sie aus einem anderen Buch?</translation>
    </message>
    <message>
        <source>the tag it went out with</source>
        <translation>die Kennung, mit der es ging</translation>
    </message>
    <message>
        <source>the tag numbers of %1 are used up; take another block (heatkeep saw block) when the book can be reached</source>
        <translation>die Kennungen von %1 sind aufgebraucht; einen weiteren Block holen (heatkeep saw block), wenn das Buch erreichbar ist</translation>
    </message>
    <message>
        <source>the tag read again, character by character</source>
        <translation>die Kennung, noch einmal Zeichen für Zeichen gelesen</translation>
    </message>
    <message>
        <source>the tag that is read</source>
        <translation>die Kennung, die gelesen wird</translation>
    </message>
    <message>
        <source>the wall of %1 is too thick for its corners</source>
        <translation>die Wand von %1 ist zu dick für seine Ecken</translation>
    </message>
    <message>
        <source>the wall of %1 leaves no bore</source>
        <translation>die Wand von %1 lässt keine Bohrung</translation>
    </message>
    <message>
        <source>there is no label number %1</source>
        <translation>Etikett Nummer %1 gibt es nicht</translation>
    </message>
    <message>
        <source>there is no metal of %1 %2</source>
        <translation>es gibt kein Material %1 %2</translation>
    </message>
    <message>
        <source>there is no metal of %1 %2 of %3</source>
        <translation>es gibt kein Material %1 %2 von %3</translation>
    </message>
    <message>
        <source>there is no opening balance &quot;%1&quot;</source>
        <translation>es gibt keinen Anfangsbestand „%1“</translation>
    </message>
    <message>
        <source>there is no order %1 line %2</source>
        <translation>Auftrag %1 Position %2 gibt es nicht</translation>
    </message>
    <message>
        <source>there is no plan %1</source>
        <translation>Plan %1 gibt es nicht</translation>
    </message>
    <message>
        <source>there is no plan %1; `heatkeep plan list` names them</source>
        <translation>Plan %1 gibt es nicht; `heatkeep plan list` nennt sie</translation>
    </message>
    <message>
        <source>there is no such line</source>
        <translation>diese Position gibt es nicht</translation>
    </message>
    <message>
        <source>there is no such piece</source>
        <translation>dieses Stück gibt es nicht</translation>
    </message>
    <message>
        <source>there is none left of it</source>
        <translation>davon ist keines mehr da</translation>
    </message>
    <message>
        <source>this is no queue of a saw; expected one, or a new name</source>
        <translation>dies ist keine Warteschlange einer Säge; erwartet wird eine oder ein neuer Name</translation>
    </message>
    <message>
        <source>this is the queue of %1, not of %2</source>
        <translation>dies ist die Warteschlange von %1, nicht von %2</translation>
    </message>
    <message>
        <source>this metal goes to %1</source>
        <translation>dieses Material kommt in %1</translation>
    </message>
    <message>
        <source>ticket %1 of %2</source>
        <translation>Wiegeschein %1 von %2</translation>
    </message>
    <message>
        <source>ticket %1 of %2 is in the book already</source>
        <translation>Wiegeschein %1 von %2 steht schon im Buch</translation>
    </message>
    <message numerus="yes">
        <source>to buy for %1: %2 bars of at least %3</source>
        <translation>
            <numerusform>zu kaufen für %1: %2 Stange von mindestens %3</numerusform>
            <numerusform>zu kaufen für %1: %2 Stangen von mindestens %3</numerusform>
        </translation>
    </message>
    <message>
        <source>to plan %1</source>
        <translation>für Plan %1</translation>
    </message>
    <message>
        <source>tolerance %1: %2</source>
        <translation>Toleranz %1: %2</translation>
    </message>
    <message>
        <source>too large for saw %1</source>
        <translation>zu groß für Säge %1</translation>
    </message>
    <message>
        <source>transfer %1: arrived shorter or longer than sent</source>
        <translation>Umlagerung %1: kürzer oder länger angekommen als abgegangen</translation>
    </message>
    <message>
        <source>trim</source>
        <translation>Anschnitt</translation>
    </message>
    <message>
        <source>trim %1</source>
        <translation>Anschnitt %1</translation>
    </message>
    <message>
        <source>trim, kerf and what is left should be %1, %2 and %3, not %4, %5 and %6</source>
        <translation>Anschnitt, Schnittfuge und Rest sollten %1, %2 und %3 sein, nicht %4, %5 und %6</translation>
    </message>
    <message>
        <source>tube</source>
        <translation>Rohr</translation>
    </message>
    <message>
        <source>two limits for %1 are for the same sizes</source>
        <translation>zwei Grenzen für %1 gelten für dieselben Größen</translation>
    </message>
    <message>
        <source>unexplained</source>
        <translation>ungeklärt</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>unknown papers %1</source>
        <translation>unbekannte Papiere %1</translation>
    </message>
    <message>
        <source>unknown shape %1 in section %2</source>
        <translation>unbekannte Form %1 im Querschnitt %2</translation>
    </message>
    <message>
        <source>unknown unit %1 in %2</source>
        <translation>unbekannte Einheit %1 in %2</translation>
    </message>
    <message>
        <source>up to three digits and a capital letter</source>
        <translation>bis zu drei Ziffern und ein Großbuchstabe</translation>
    </message>
    <message>
        <source>upwards only by evidence (heatkeep piece identity)</source>
        <translation>aufwärts nur mit Beleg (heatkeep piece identity)</translation>
    </message>
    <message>
        <source>use a designation or number of the grade list; the owner adds new ones</source>
        <translation>eine Bezeichnung oder Nummer der Werkstoffliste verwenden; neue trägt der Inhaber ein</translation>
    </message>
    <message>
        <source>use a new request number for a new deed</source>
        <translation>für einen neuen Vorgang eine neue Anforderungsnummer verwenden</translation>
    </message>
    <message>
        <source>uses %1</source>
        <translation>verbraucht %1</translation>
    </message>
    <message>
        <source>wait until the count is approved</source>
        <translation>warten, bis die Zählung genehmigt ist</translation>
    </message>
    <message>
        <source>wait: until metal for the other %1 is here</source>
        <translation>warten: bis Material für die anderen %1 hier ist</translation>
    </message>
    <message>
        <source>warning: the last cut parts off nothing, less than %1: the blade may wander</source>
        <translation>Vorsicht: der letzte Schnitt trennt nichts ab, weniger als %1: das Band kann verlaufen</translation>
    </message>
    <message>
        <source>warning: the last cut parts off only %1, less than %2: the blade may wander</source>
        <translation>Vorsicht: der letzte Schnitt trennt nur %1 ab, weniger als %2: das Band kann verlaufen</translation>
    </message>
    <message>
        <source>was cut for order %1</source>
        <translation>wurde für Auftrag %1 gesägt</translation>
    </message>
    <message>
        <source>was measured otherwise since</source>
        <translation>wurde seither anders gemessen</translation>
    </message>
    <message>
        <source>weaker papers: %1 from metal with %2, once the customer accepts that in writing for %3</source>
        <translation>schwächere Papiere: %1 aus Material mit %2, sobald der Kunde das schriftlich für %3 annimmt</translation>
    </message>
    <message>
        <source>weaker papers: %1 from metal with no papers, once the customer accepts that in writing for %2</source>
        <translation>schwächere Papiere: %1 aus Material ohne Papiere, sobald der Kunde das schriftlich für %2 annimmt</translation>
    </message>
    <message>
        <source>weighed %1, theory says %2</source>
        <translation>gewogen %1, rechnerisch %2</translation>
    </message>
    <message>
        <source>what came off in a cut came off the piece that was cut, not off another</source>
        <translation>was in einem Schnitt abkam, kam vom gesägten Stück, nicht von einem anderen</translation>
    </message>
    <message>
        <source>what can be read on it, or &quot;none&quot;</source>
        <translation>was darauf zu lesen ist, oder „none“</translation>
    </message>
    <message>
        <source>what is done, or test</source>
        <translation>was getan wird, oder test</translation>
    </message>
    <message>
        <source>what is expected there may not serve order %1 line %2: another grade, section or condition</source>
        <translation>was dort erwartet wird, darf nicht für Auftrag %1 Position %2 verwendet werden: anderer Werkstoff, Querschnitt oder Zustand</translation>
    </message>
    <message>
        <source>what is known of it</source>
        <translation>was davon bekannt ist</translation>
    </message>
    <message>
        <source>what is left (%1) is not %2</source>
        <translation>der Rest (%1) ist nicht %2</translation>
    </message>
    <message>
        <source>what is new is put in by `heatkeep grades limits FILE`</source>
        <translation>Neues wird mit `heatkeep grades limits FILE` eingetragen</translation>
    </message>
    <message>
        <source>what is paid</source>
        <translation>was gezahlt wird</translation>
    </message>
    <message>
        <source>what is read on it (%1) is neither the tag %2 nor the heat in the book</source>
        <translation>was darauf gelesen wird (%1), ist weder die Kennung %2 noch die Schmelze im Buch</translation>
    </message>
    <message>
        <source>what is seen, and where</source>
        <translation>was zu sehen ist und wo</translation>
    </message>
    <message>
        <source>what is wrong: no ribbon, jammed, not there</source>
        <translation>was nicht stimmt: kein Farbband, verklemmt, nicht da</translation>
    </message>
    <message>
        <source>what it is</source>
        <translation>was es ist</translation>
    </message>
    <message>
        <source>what it is called, as written on it</source>
        <translation>wie es heißt, wie darauf geschrieben</translation>
    </message>
    <message>
        <source>what shows that it is this metal</source>
        <translation>was zeigt, dass es dieses Material ist</translation>
    </message>
    <message>
        <source>what the book kept of this record was changed</source>
        <translation>was das Buch von diesem Nachweis aufbewahrt hat, wurde geändert</translation>
    </message>
    <message>
        <source>what the differences come from, or what was looked for</source>
        <translation>woher die Abweichungen kommen oder wonach gesucht wurde</translation>
    </message>
    <message>
        <source>what the owner wrote</source>
        <translation>was der Eigentümer geschrieben hat</translation>
    </message>
    <message>
        <source>what the package says changed since it was read</source>
        <translation>was sich laut Zeugnismappe geändert hat, seit sie gelesen wurde</translation>
    </message>
    <message>
        <source>what was booked wrongly</source>
        <translation>was falsch gebucht wurde</translation>
    </message>
    <message>
        <source>what was found, in words</source>
        <translation>was gefunden wurde, in Worten</translation>
    </message>
    <message>
        <source>what was shipped cannot become stock</source>
        <translation>was geliefert ist, kann nicht Bestand werden</translation>
    </message>
    <message>
        <source>where it is put</source>
        <translation>wohin es kommt</translation>
    </message>
    <message>
        <source>where it is put, apart</source>
        <translation>wohin es abseits kommt</translation>
    </message>
    <message>
        <source>where it lies</source>
        <translation>wo es liegt</translation>
    </message>
    <message>
        <source>who buys it</source>
        <translation>wer es kauft</translation>
    </message>
    <message>
        <source>who delivers</source>
        <translation>wer liefert</translation>
    </message>
    <message>
        <source>who does it</source>
        <translation>wer es macht</translation>
    </message>
    <message>
        <source>who had it meanwhile</source>
        <translation>wer es inzwischen hatte</translation>
    </message>
    <message>
        <source>who returns it</source>
        <translation>wer es zurückgibt</translation>
    </message>
    <message>
        <source>who validated the document is not said whole</source>
        <translation>wer das Dokument bestätigt hat, ist nicht ganz angegeben</translation>
    </message>
    <message>
        <source>who was asked, and what was answered</source>
        <translation>wer gefragt wurde und was die Antwort war</translation>
    </message>
    <message>
        <source>why it comes back</source>
        <translation>warum es zurückkommt</translation>
    </message>
    <message>
        <source>why the count is given up</source>
        <translation>warum die Zählung verworfen wird</translation>
    </message>
    <message>
        <source>why the issuer replaced it</source>
        <translation>warum der Aussteller es ersetzt hat</translation>
    </message>
    <message>
        <source>why the label is needed again</source>
        <translation>warum das Etikett noch einmal gebraucht wird</translation>
    </message>
    <message>
        <source>why, and for which orders it may still be used</source>
        <translation>warum, und für welche Aufträge es noch verwendet werden darf</translation>
    </message>
    <message>
        <source>with</source>
        <translation>mit</translation>
    </message>
    <message>
        <source>with note %1</source>
        <translation>mit Lieferschein %1</translation>
    </message>
    <message>
        <source>without</source>
        <translation>ohne</translation>
    </message>
    <message>
        <source>without %1: %2</source>
        <translation>ohne %1: %2</translation>
    </message>
    <message>
        <source>without a tag</source>
        <translation>ohne Kennung</translation>
    </message>
    <message>
        <source>without it there may be a better plan still</source>
        <translation>ohne das kann es noch einen besseren Plan geben</translation>
    </message>
    <message>
        <source>worth of rests: learned from %1 past lines, for %2 section and grade</source>
        <translation>Wert der Reste: aus %1 früheren Positionen gelernt, für %2 Querschnitt und Werkstoff</translation>
    </message>
    <message>
        <source>worth of rests: learned from %1 past lines, for %2 sections and grades</source>
        <translation>Wert der Reste: aus %1 früheren Positionen gelernt, für %2 Querschnitte und Werkstoffe</translation>
    </message>
    <message>
        <source>write the heat on label and metal, or NO HEAT where the book knows none</source>
        <translation>die Schmelze auf Etikett und Material schreiben oder NO HEAT, wo das Buch keine kennt</translation>
    </message>
    <message>
        <source>written off</source>
        <translation>ausgebucht</translation>
    </message>
    <message>
        <source>yard</source>
        <translation>Hof</translation>
    </message>
    <message>
        <source>year-month-day, like 2026-03-04</source>
        <translation>Jahr-Monat-Tag, wie 2026-03-04</translation>
    </message>
    <message>
        <source> and </source>
        <translation> und </translation>
    </message>
    <message>
        <source>%1  order %2: %3, %4</source>
        <translation>%1  Auftrag %2: %3, %4</translation>
    </message>
    <message>
        <source>%1  order %2: %3, HELD, %4</source>
        <translation>%1  Auftrag %2: %3, GESPERRT, %4</translation>
    </message>
    <message>
        <source>%1 costs more than %2: %3</source>
        <translation>%1 kostet mehr als %2: %3</translation>
    </message>
    <message>
        <source>%1 costs nothing more</source>
        <translation>%1 kostet nicht mehr</translation>
    </message>
    <message numerus="yes">
        <source>%1 heats</source>
        <translation>
            <numerusform>%1 Schmelze</numerusform>
            <numerusform>%1 Schmelzen</numerusform>
        </translation>
    </message>
    <message>
        <source>LAST PIECE: no cut, it is what remains</source>
        <translation>LETZTES STÜCK: kein Schnitt, es ist, was übrig bleibt</translation>
    </message>
    <message>
        <source>NO CUT: issue it whole</source>
        <translation>KEIN SCHNITT: ganz ausgeben</translation>
    </message>
    <message numerus="yes">
        <source>ONE HEAT in %1 lines</source>
        <translation>
            <numerusform>EINE SCHMELZE in %1 Position</numerusform>
            <numerusform>EINE SCHMELZE in %1 Positionen</numerusform>
        </translation>
    </message>
    <message>
        <source>ONE HEAT: %1</source>
        <translation>EINE SCHMELZE: %1</translation>
    </message>
    <message>
        <source>a free choice</source>
        <translation>eine freie Wahl</translation>
    </message>
    <message>
        <source>a name like IPE 100, HE 100 A, HE 100 B or W8x31</source>
        <translation>ein Name wie IPE 100, HE 100 A, HE 100 B oder W8x31</translation>
    </message>
    <message>
        <source>a name like UPN 100, UPE 100 or C4x5.4</source>
        <translation>ein Name wie UPN 100, UPE 100 oder C4x5.4</translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation>eine ganze Zahl</translation>
    </message>
    <message>
        <source>accept document</source>
        <translation>Dokument annehmen</translation>
    </message>
    <message>
        <source>add cut list</source>
        <translation>Zuschnittliste aufnehmen</translation>
    </message>
    <message>
        <source>add device</source>
        <translation>Gerät eintragen</translation>
    </message>
    <message>
        <source>add photo</source>
        <translation>Foto ablegen</translation>
    </message>
    <message>
        <source>allow at risk</source>
        <translation>Sägen auf Risiko erlauben</translation>
    </message>
    <message>
        <source>allow grade</source>
        <translation>Werkstoff zulassen</translation>
    </message>
    <message>
        <source>allow section</source>
        <translation>Querschnitt zulassen</translation>
    </message>
    <message>
        <source>answer defect</source>
        <translation>Fehlermeldung beantworten</translation>
    </message>
    <message>
        <source>approve count</source>
        <translation>Zählung genehmigen</translation>
    </message>
    <message>
        <source>at most %1 decimals</source>
        <translation>höchstens %1 Nachkommastellen</translation>
    </message>
    <message>
        <source>attach file</source>
        <translation>Datei anhängen</translation>
    </message>
    <message>
        <source>back from outside</source>
        <translation>zurück von außer Haus</translation>
    </message>
    <message>
        <source>bars</source>
        <translation>Stangen</translation>
    </message>
    <message>
        <source>buy over</source>
        <translation>übernehmen</translation>
    </message>
    <message>
        <source>calibrate device</source>
        <translation>Gerät kalibrieren</translation>
    </message>
    <message>
        <source>cancel plan</source>
        <translation>Plan stornieren</translation>
    </message>
    <message>
        <source>change order</source>
        <translation>Auftrag ändern</translation>
    </message>
    <message>
        <source>chase papers</source>
        <translation>Papiere anmahnen</translation>
    </message>
    <message>
        <source>close conflict</source>
        <translation>Widerspruch abschließen</translation>
    </message>
    <message>
        <source>commit plan</source>
        <translation>Plan zusagen</translation>
    </message>
    <message>
        <source>condemn hold</source>
        <translation>Sperre: verwerfen</translation>
    </message>
    <message>
        <source>correct length</source>
        <translation>Länge berichtigen</translation>
    </message>
    <message>
        <source>correct limits</source>
        <translation>Grenzen berichtigen</translation>
    </message>
    <message>
        <source>correct receipt</source>
        <translation>Wareneingang berichtigen</translation>
    </message>
    <message>
        <source>count seen</source>
        <translation>Zählung melden</translation>
    </message>
    <message>
        <source>crops</source>
        <translation>Abschnitte</translation>
    </message>
    <message>
        <source>customer return</source>
        <translation>Kundenrücknahme</translation>
    </message>
    <message>
        <source>cut pieces</source>
        <translation>gesägte Stücke</translation>
    </message>
    <message>
        <source>decide over</source>
        <translation>über Zuviel entscheiden</translation>
    </message>
    <message>
        <source>define bins</source>
        <translation>Behälter anlegen</translation>
    </message>
    <message>
        <source>define grade</source>
        <translation>Werkstoff anlegen</translation>
    </message>
    <message>
        <source>define limits</source>
        <translation>Grenzen eintragen</translation>
    </message>
    <message>
        <source>define shop</source>
        <translation>Betrieb einrichten</translation>
    </message>
    <message>
        <source>downgrade</source>
        <translation>herabstufen</translation>
    </message>
    <message>
        <source>drops</source>
        <translation>Reststücke</translation>
    </message>
    <message>
        <source>expect delivery</source>
        <translation>Lieferung erwarten</translation>
    </message>
    <message>
        <source>file document</source>
        <translation>Dokument ablegen</translation>
    </message>
    <message>
        <source>file papers</source>
        <translation>Papiere ablegen</translation>
    </message>
    <message>
        <source>first piece</source>
        <translation>erstes Stück</translation>
    </message>
    <message>
        <source>fit band</source>
        <translation>Sägeband einbauen</translation>
    </message>
    <message>
        <source>found piece</source>
        <translation>Fund buchen</translation>
    </message>
    <message>
        <source>freeze place</source>
        <translation>Platz einfrieren</translation>
    </message>
    <message>
        <source>hand over</source>
        <translation>übergeben</translation>
    </message>
    <message>
        <source>in %1 = out %2: balanced to the nanometre</source>
        <translation>herein %1 = hinaus %2: auf den Nanometer ausgeglichen</translation>
    </message>
    <message>
        <source>in %1 ≠ out %2: NOT BALANCED, difference %3</source>
        <translation>herein %1 ≠ hinaus %2: NICHT AUSGEGLICHEN, Unterschied %3</translation>
    </message>
    <message>
        <source>keep package</source>
        <translation>Zeugnismappe aufbewahren</translation>
    </message>
    <message>
        <source>keep record</source>
        <translation>Nachweis aufbewahren</translation>
    </message>
    <message>
        <source>label failed</source>
        <translation>Etikett nicht gedruckt</translation>
    </message>
    <message>
        <source>label printed</source>
        <translation>Etikett gedruckt</translation>
    </message>
    <message>
        <source>lapse promises</source>
        <translation>Zusagen verfallen lassen</translation>
    </message>
    <message>
        <source>lift hold</source>
        <translation>Sperre aufheben</translation>
    </message>
    <message>
        <source>make bundle</source>
        <translation>Bund bilden</translation>
    </message>
    <message>
        <source>make up bundle</source>
        <translation>Bund auffüllen</translation>
    </message>
    <message>
        <source>measure at saw</source>
        <translation>an der Säge messen</translation>
    </message>
    <message>
        <source>move bundle</source>
        <translation>Bund umlagern</translation>
    </message>
    <message>
        <source>nothing found</source>
        <translation>nichts gefunden</translation>
    </message>
    <message>
        <source>open balance</source>
        <translation>Anfangsbestand</translation>
    </message>
    <message>
        <source>open bundle</source>
        <translation>Bund öffnen</translation>
    </message>
    <message>
        <source>opens %1</source>
        <translation>bricht %1 an</translation>
    </message>
    <message>
        <source>pass on document</source>
        <translation>Dokument weitergeben</translation>
    </message>
    <message>
        <source>pieces to stock</source>
        <translation>Stücke in den Bestand</translation>
    </message>
    <message>
        <source>place hold</source>
        <translation>sperren</translation>
    </message>
    <message>
        <source>promise expected</source>
        <translation>Erwartetes zusagen</translation>
    </message>
    <message>
        <source>pull</source>
        <translation>entnehmen</translation>
    </message>
    <message>
        <source>pull for line</source>
        <translation>für Position entnehmen</translation>
    </message>
    <message>
        <source>put away</source>
        <translation>einlagern</translation>
    </message>
    <message>
        <source>receipts</source>
        <translation>Wareneingänge</translation>
    </message>
    <message>
        <source>receive delivery</source>
        <translation>Lieferung annehmen</translation>
    </message>
    <message>
        <source>receive transfer</source>
        <translation>Umlagerung annehmen</translation>
    </message>
    <message>
        <source>record bundle</source>
        <translation>Bund sägen</translation>
    </message>
    <message>
        <source>record consent</source>
        <translation>Zustimmung eintragen</translation>
    </message>
    <message>
        <source>record cut</source>
        <translation>sägen</translation>
    </message>
    <message>
        <source>record damage</source>
        <translation>Schaden melden</translation>
    </message>
    <message>
        <source>recut</source>
        <translation>Nachschnitt</translation>
    </message>
    <message>
        <source>reestablish identity</source>
        <translation>Identität feststellen</translation>
    </message>
    <message>
        <source>rejects</source>
        <translation>Ausschuss</translation>
    </message>
    <message>
        <source>release</source>
        <translation>freigeben</translation>
    </message>
    <message>
        <source>replace document</source>
        <translation>Dokument ersetzen</translation>
    </message>
    <message>
        <source>replan</source>
        <translation>neu planen</translation>
    </message>
    <message>
        <source>report defect</source>
        <translation>Fehler melden</translation>
    </message>
    <message>
        <source>report half cut</source>
        <translation>halben Schnitt melden</translation>
    </message>
    <message>
        <source>report missing</source>
        <translation>als fehlend melden</translation>
    </message>
    <message>
        <source>reprint label</source>
        <translation>Etikett neu drucken</translation>
    </message>
    <message>
        <source>reserve</source>
        <translation>reservieren</translation>
    </message>
    <message>
        <source>return to owner</source>
        <translation>Rückgabe an Eigentümer</translation>
    </message>
    <message>
        <source>return to supplier</source>
        <translation>Rückgabe an Lieferanten</translation>
    </message>
    <message>
        <source>reuse reject</source>
        <translation>Ausschuss verwenden</translation>
    </message>
    <message>
        <source>reverse receipt</source>
        <translation>Wareneingang stornieren</translation>
    </message>
    <message>
        <source>scrap piece</source>
        <translation>verschrotten</translation>
    </message>
    <message>
        <source>scrap ticket</source>
        <translation>Wiegeschein</translation>
    </message>
    <message>
        <source>seal book</source>
        <translation>Buch versiegeln</translation>
    </message>
    <message>
        <source>sell</source>
        <translation>verkaufen</translation>
    </message>
    <message>
        <source>send offline</source>
        <translation>ohne Netz Gebuchtes senden</translation>
    </message>
    <message>
        <source>send outside</source>
        <translation>außer Haus geben</translation>
    </message>
    <message>
        <source>send to site</source>
        <translation>an Standort schicken</translation>
    </message>
    <message>
        <source>set rules</source>
        <translation>Regeln setzen</translation>
    </message>
    <message>
        <source>set saw</source>
        <translation>Säge einrichten</translation>
    </message>
    <message>
        <source>ship</source>
        <translation>liefern</translation>
    </message>
    <message>
        <source>sign consent</source>
        <translation>Zustimmung unterschreiben</translation>
    </message>
    <message>
        <source>sign opening</source>
        <translation>Anfangsbestand unterschreiben</translation>
    </message>
    <message>
        <source>split piece</source>
        <translation>Stück teilen</translation>
    </message>
    <message>
        <source>take over</source>
        <translation>übernehmen</translation>
    </message>
    <message>
        <source>take tag block</source>
        <translation>Kennungen holen</translation>
    </message>
    <message>
        <source>take test slice</source>
        <translation>Probescheibe nehmen</translation>
    </message>
    <message>
        <source>takes %1</source>
        <translation>nimmt %1</translation>
    </message>
    <message>
        <source>test slices</source>
        <translation>Probescheiben</translation>
    </message>
    <message>
        <source>trims</source>
        <translation>Anschnitte</translation>
    </message>
    <message>
        <source>unfreeze place</source>
        <translation>Platz freigeben</translation>
    </message>
    <message>
        <source>unreserve</source>
        <translation>Reservierung aufheben</translation>
    </message>
    <message>
        <source>write off</source>
        <translation>ausbuchen</translation>
    </message>
    <message>
        <source>%1 cold</source>
        <translation>%1 kalt</translation>
    </message>
    <message>
        <source>%1 customers have %2</source>
        <translation>%1 Kunden haben %2</translation>
    </message>
    <message>
        <source>%1 hot</source>
        <translation>%1 warm</translation>
    </message>
    <message>
        <source>%1 more than the slip says: the planner decides</source>
        <translation>%1 mehr, als der Lieferschein sagt: die Planung entscheidet</translation>
    </message>
    <message>
        <source>1 customer has %1</source>
        <translation>1 Kunde hat %1</translation>
    </message>
    <message>
        <source>a cost is below 0; expected 0 or more</source>
        <translation>Kosten sind unter 0; erwartet wird 0 oder mehr</translation>
    </message>
    <message>
        <source>counted %1, the slip says %2</source>
        <translation>gezählt %1, laut Lieferschein %2</translation>
    </message>
    <message>
        <source>grip %1</source>
        <translation>Einspannlänge %1</translation>
    </message>
    <message>
        <source>its count is below 0; expected 0 or more, or unlimited</source>
        <translation>die Anzahl ist unter 0; erwartet wird 0 oder mehr oder unbegrenzt</translation>
    </message>
    <message>
        <source>its cut length is out of range; expected above 0 to 1 km</source>
        <translation>die Schnittlänge liegt außerhalb; erwartet wird über 0 bis 1 km</translation>
    </message>
    <message>
        <source>its doubt is out of range; expected 0 to below its length</source>
        <translation>die Unsicherheit liegt außerhalb; erwartet wird 0 bis unter die Länge</translation>
    </message>
    <message>
        <source>its length is out of range; expected above 0 to 1 km</source>
        <translation>die Länge liegt außerhalb; erwartet wird über 0 bis 1 km</translation>
    </message>
    <message>
        <source>its number of heats is below 0; expected 0 (any) or more</source>
        <translation>die Zahl der Schmelzen ist unter 0; erwartet wird 0 (beliebig) oder mehr</translation>
    </message>
    <message>
        <source>its quantity is out of range; expected 0 to 1000000</source>
        <translation>die Menge liegt außerhalb; erwartet wird 0 bis 1000000</translation>
    </message>
    <message>
        <source>pieces</source>
        <translation>Stück</translation>
    </message>
    <message>
        <source>square ends are %1; expected 0, 1 or 2</source>
        <translation>gerade Enden: %1; erwartet wird 0, 1 oder 2</translation>
    </message>
    <message>
        <source>no number where one should be in %1</source>
        <translation>keine Zahl, wo eine stehen sollte, in %1</translation>
    </message>
    <message>
        <source>%1 alone</source>
        <translation>%1 allein</translation>
    </message>
    <message numerus="yes">
        <source>%1 files, %2 are not what was filed or are gone</source>
        <translation>
            <numerusform>%1 Datei, %2 sind nicht, was abgelegt wurde, oder fehlen</numerusform>
            <numerusform>%1 Dateien, %2 sind nicht, was abgelegt wurde, oder fehlen</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 locks %2 after %3</source>
        <translation>%1 sperrt %2 nach %3</translation>
    </message>
    <message>
        <source>%1 shared</source>
        <translation>%1 gemeinsam</translation>
    </message>
    <message>
        <source>%1 that is whole, and this one is cut short</source>
        <translation>%1, das ganz ist, und dieses ist abgeschnitten</translation>
    </message>
    <message>
        <source>%1 that is whole, and this one is damaged</source>
        <translation>%1, das ganz ist, und dieses ist beschädigt</translation>
    </message>
    <message>
        <source>%1, and this is none</source>
        <translation>%1, und das ist keines</translation>
    </message>
    <message>
        <source>%1: a text cannot be read as it stands (%2)</source>
        <translation>%1: ein Text ist nicht lesbar, wie er dasteht (%2)</translation>
    </message>
    <message>
        <source>`heatkeep conflict list` names them</source>
        <translation>`heatkeep conflict list` nennt sie</translation>
    </message>
    <message>
        <source>`heatkeep plan list` names them</source>
        <translation>`heatkeep plan list` nennt sie</translation>
    </message>
    <message>
        <source>cannot be put in its place</source>
        <translation>kann nicht an seine Stelle gebracht werden</translation>
    </message>
    <message>
        <source>cannot be removed</source>
        <translation>kann nicht entfernt werden</translation>
    </message>
    <message>
        <source>character U+%1 in &quot;%2&quot;</source>
        <translation>Zeichen U+%1 in &quot;%2&quot;</translation>
    </message>
    <message>
        <source>does not agree with the ends of the chains, or with what was written since the seal before</source>
        <translation>stimmt nicht mit den Enden der Ketten überein oder nicht mit dem, was seit dem vorigen Siegel geschrieben wurde</translation>
    </message>
    <message>
        <source>expected a file of kept %1</source>
        <translation>erwartet wird eine Datei aufbewahrter %1</translation>
    </message>
    <message>
        <source>files byte for byte</source>
        <translation>Dateien Byte für Byte</translation>
    </message>
    <message>
        <source>it has %1 characters</source>
        <translation>er hat %1 Zeichen</translation>
    </message>
    <message>
        <source>look at it and change it again</source>
        <translation>ansehen und noch einmal ändern</translation>
    </message>
    <message>
        <source>order %1 line %2 was planned anew just now</source>
        <translation>Auftrag %1 Position %2 wurde eben neu geplant</translation>
    </message>
    <message>
        <source>receipt line</source>
        <translation>Wareneingangsposition</translation>
    </message>
    <message>
        <source>the connection string of the book holds a password, which everybody on this machine could read; expected it in ~/.pgpass (mode 0600), in a service file or in PGPASSWORD</source>
        <translation>die Verbindungsangabe des Buchs enthält ein Passwort, das jeder an diesem Rechner lesen könnte; erwartet wird es in ~/.pgpass (Modus 0600), in einer Service-Datei oder in PGPASSWORD</translation>
    </message>
    <message>
        <source>the disk of the book is full, and nothing of this was booked: make room there and do it again (%1)</source>
        <translation>die Platte des Buchs ist voll, und nichts davon wurde gebucht: dort Platz schaffen und noch einmal tun (%1)</translation>
    </message>
    <message>
        <source>the order is said in schema/guard/lock_order.sql</source>
        <translation>die Reihenfolge steht in schema/guard/lock_order.sql</translation>
    </message>
    <message>
        <source>these sheets were kept by another version of this program (%1)</source>
        <translation>diese Blätter hat eine andere Version dieses Programms aufbewahrt (%1)</translation>
    </message>
    <message>
        <source>expected at least one line</source>
        <translation>erwartet wird mindestens eine Position</translation>
    </message>
    <message>
        <source>%1 %2 %3 over %4</source>
        <translation>%1 %2 %3 über %4</translation>
    </message>
    <message>
        <source>%1 %2 is not in the book</source>
        <translation>%1 %2 steht nicht im Buch</translation>
    </message>
    <message>
        <source>%1 %2 over %3 %4</source>
        <translation>%1 %2 über %3 %4</translation>
    </message>
    <message>
        <source>%1 %2 stands in line %3 already</source>
        <translation>%1 %2 steht schon in Zeile %3</translation>
    </message>
    <message>
        <source>%1 a kg</source>
        <translation>%1 je kg</translation>
    </message>
    <message>
        <source>%1 as in the header</source>
        <translation>%1 wie in der Kopfzeile</translation>
    </message>
    <message>
        <source>%1 cell</source>
        <translation>%1 Zelle</translation>
    </message>
    <message>
        <source>%1 cells</source>
        <translation>%1 Zellen</translation>
    </message>
    <message>
        <source>%1 formula (%2): the values computed when the file was last saved are taken</source>
        <translation>%1 Formel (%2): genommen wird, was beim letzten Speichern berechnet war</translation>
    </message>
    <message>
        <source>%1 formulas (%2): the values computed when the file was last saved are taken</source>
        <translation>%1 Formeln (%2): genommen wird, was beim letzten Speichern berechnet war</translation>
    </message>
    <message>
        <source>%1 has no value</source>
        <translation>%1 hat keinen Wert</translation>
    </message>
    <message>
        <source>%1 holds the error %2</source>
        <translation>%1 enthält den Fehler %2</translation>
    </message>
    <message>
        <source>%1 is a number a spreadsheet made of a heat like 123E3</source>
        <translation>%1 ist eine Zahl, die die Tabelle aus einer Schmelze wie 123E3 gemacht hat</translation>
    </message>
    <message>
        <source>%1 is a number that only its format shows with zeros in front</source>
        <translation>%1 ist eine Zahl, die nur durch ihr Format führende Nullen zeigt</translation>
    </message>
    <message>
        <source>%1 is empty</source>
        <translation>%1 ist leer</translation>
    </message>
    <message>
        <source>%1 is no cell</source>
        <translation>%1 ist keine Zelle</translation>
    </message>
    <message>
        <source>%1 is no length</source>
        <translation>%1 ist keine Länge</translation>
    </message>
    <message>
        <source>%1 is no text in the sheet</source>
        <translation>%1 ist im Blatt kein Text</translation>
    </message>
    <message>
        <source>%1 is no type of document</source>
        <translation>%1 ist keine Art von Dokument</translation>
    </message>
    <message>
        <source>%1 is not known</source>
        <translation>%1 ist nicht bekannt</translation>
    </message>
    <message>
        <source>%1 is not said</source>
        <translation>%1 fehlt</translation>
    </message>
    <message>
        <source>%1 over %2 %3</source>
        <translation>%1 über %2 %3</translation>
    </message>
    <message>
        <source>%1 repetitions of a row or cell</source>
        <translation>%1 Wiederholungen einer Zeile oder Zelle</translation>
    </message>
    <message>
        <source>%1: %2; expected %3</source>
        <translation>%1: %2; erwartet: %3</translation>
    </message>
    <message>
        <source>%1: the file is empty; expected a whole PDF, PNG, JPEG or TIFF file</source>
        <translation>%1: die Datei ist leer; erwartet: eine ganze PDF-, PNG-, JPEG- oder TIFF-Datei</translation>
    </message>
    <message>
        <source>%1; expected %2</source>
        <translation>%1; erwartet: %2</translation>
    </message>
    <message>
        <source>2.1, 2.2, 3.1 or 3.2</source>
        <translation>2.1, 2.2, 3.1 oder 3.2</translation>
    </message>
    <message>
        <source>MPa for Rm and Re, % for A</source>
        <translation>MPa für Rm und Re, % für A</translation>
    </message>
    <message>
        <source>MPa or %</source>
        <translation>MPa oder %</translation>
    </message>
    <message>
        <source>Re is higher than Rm</source>
        <translation>Re ist höher als Rm</translation>
    </message>
    <message>
        <source>Rm and Re in MPa, A in %, as Rm 1028 Re 775 A 16</source>
        <translation>Rm und Re in MPa, A in %, wie Rm 1028 Re 775 A 16</translation>
    </message>
    <message>
        <source>Rm, Re or A</source>
        <translation>Rm, Re oder A</translation>
    </message>
    <message>
        <source>SQLite format 3</source>
        <translation>SQLite format 3</translation>
    </message>
    <message>
        <source>XLSX, ODS or CSV</source>
        <translation>XLSX, ODS oder CSV</translation>
    </message>
    <message>
        <source>a 7z archive</source>
        <translation>ein 7z-Archiv</translation>
    </message>
    <message>
        <source>a PDF</source>
        <translation>ein PDF</translation>
    </message>
    <message>
        <source>a SYLK file</source>
        <translation>eine SYLK-Datei</translation>
    </message>
    <message>
        <source>a byte that is a character neither in UTF-8 nor in Windows-1252</source>
        <translation>ein Byte, das weder in UTF-8 noch in Windows-1252 ein Zeichen ist</translation>
    </message>
    <message>
        <source>a bzip2 file</source>
        <translation>eine bzip2-Datei</translation>
    </message>
    <message>
        <source>a cell names shared string %1, which is not there</source>
        <translation>eine Zelle nennt den gemeinsamen Text %1, den es nicht gibt</translation>
    </message>
    <message>
        <source>a cell of the unknown type %1</source>
        <translation>eine Zelle der unbekannten Art %1</translation>
    </message>
    <message>
        <source>a chemical symbol</source>
        <translation>ein chemisches Zeichen</translation>
    </message>
    <message>
        <source>a closing quote</source>
        <translation>ein schließendes Anführungszeichen</translation>
    </message>
    <message>
        <source>a column without a name</source>
        <translation>eine Spalte ohne Namen</translation>
    </message>
    <message>
        <source>a database file</source>
        <translation>eine Datenbankdatei</translation>
    </message>
    <message>
        <source>a date from 1900 on</source>
        <translation>ein Datum ab 1900</translation>
    </message>
    <message>
        <source>a designation or number of the grade list</source>
        <translation>ein Kurzname oder eine Nummer der Werkstoffliste</translation>
    </message>
    <message>
        <source>a doubt shorter than the length</source>
        <translation>eine Unsicherheit, die kleiner ist als die Länge</translation>
    </message>
    <message>
        <source>a family like alloy steel</source>
        <translation>eine Familie wie alloy steel</translation>
    </message>
    <message>
        <source>a file saved as UTF-8</source>
        <translation>eine als UTF-8 gespeicherte Datei</translation>
    </message>
    <message>
        <source>a file that may be read</source>
        <translation>eine Datei, die gelesen werden darf</translation>
    </message>
    <message>
        <source>a flat OpenDocument file</source>
        <translation>eine flache OpenDocument-Datei</translation>
    </message>
    <message>
        <source>a formula that was never computed</source>
        <translation>eine Formel, die nie berechnet wurde</translation>
    </message>
    <message>
        <source>a grade as the old list has it</source>
        <translation>ein Werkstoff, wie er in der alten Liste steht</translation>
    </message>
    <message>
        <source>a grade like 42CrMo4</source>
        <translation>ein Werkstoff wie 42CrMo4</translation>
    </message>
    <message>
        <source>a grade of the list</source>
        <translation>ein Werkstoff der Liste</translation>
    </message>
    <message>
        <source>a grade&apos;s designation</source>
        <translation>der Kurzname eines Werkstoffs</translation>
    </message>
    <message>
        <source>a grade&apos;s name</source>
        <translation>der Name eines Werkstoffs</translation>
    </message>
    <message>
        <source>a gzip file</source>
        <translation>eine gzip-Datei</translation>
    </message>
    <message>
        <source>a header line and rows</source>
        <translation>eine Kopfzeile und Zeilen</translation>
    </message>
    <message>
        <source>a header with it</source>
        <translation>eine Kopfzeile, in der sie steht</translation>
    </message>
    <message>
        <source>a length over zero</source>
        <translation>eine Länge über null</translation>
    </message>
    <message>
        <source>a line number of the order</source>
        <translation>eine Positionsnummer des Auftrags</translation>
    </message>
    <message>
        <source>a name for the piece</source>
        <translation>ein Name für das Stück</translation>
    </message>
    <message>
        <source>a name that the owner has entered</source>
        <translation>ein Name, den der Inhaber eingetragen hat</translation>
    </message>
    <message>
        <source>a picture</source>
        <translation>ein Bild</translation>
    </message>
    <message>
        <source>a place of the shop</source>
        <translation>ein Platz des Betriebs</translation>
    </message>
    <message>
        <source>a product analysis without values</source>
        <translation>eine Stückanalyse ohne Werte</translation>
    </message>
    <message>
        <source>a quote that is opened here is never closed</source>
        <translation>ein Anführungszeichen, das hier beginnt, endet nirgends</translation>
    </message>
    <message>
        <source>a range</source>
        <translation>ein Bereich</translation>
    </message>
    <message>
        <source>a range of sizes</source>
        <translation>ein Bereich von Maßen</translation>
    </message>
    <message>
        <source>a rar archive</source>
        <translation>ein RAR-Archiv</translation>
    </message>
    <message>
        <source>a row of more than 1 MiB</source>
        <translation>eine Zeile von mehr als 1 MiB</translation>
    </message>
    <message>
        <source>a smaller file</source>
        <translation>eine kleinere Datei</translation>
    </message>
    <message>
        <source>a spreadsheet locked with a password</source>
        <translation>eine mit Kennwort gesperrte Tabelle</translation>
    </message>
    <message>
        <source>a spreadsheet of ordinary size</source>
        <translation>eine Tabelle gewöhnlicher Größe</translation>
    </message>
    <message>
        <source>a spreadsheet with a table</source>
        <translation>eine Datei mit einer Tabelle</translation>
    </message>
    <message>
        <source>a text document (RTF)</source>
        <translation>ein Textdokument (RTF)</translation>
    </message>
    <message>
        <source>a text file</source>
        <translation>eine Textdatei</translation>
    </message>
    <message>
        <source>a text file has no sheets</source>
        <translation>eine Textdatei hat keine Blätter</translation>
    </message>
    <message>
        <source>a tolerance smaller than the length</source>
        <translation>eine Toleranz, die kleiner ist als die Länge</translation>
    </message>
    <message>
        <source>a value</source>
        <translation>ein Wert</translation>
    </message>
    <message>
        <source>a web page (HTML)</source>
        <translation>eine Webseite (HTML)</translation>
    </message>
    <message>
        <source>a whole number, 1 or more</source>
        <translation>eine ganze Zahl ab 1</translation>
    </message>
    <message>
        <source>a whole spreadsheet</source>
        <translation>eine vollständige Tabelle</translation>
    </message>
    <message>
        <source>a whole spreadsheet, saved again</source>
        <translation>eine vollständige Tabelle, neu gespeichert</translation>
    </message>
    <message>
        <source>a whole text file</source>
        <translation>eine vollständige Textdatei</translation>
    </message>
    <message>
        <source>a yield strength below the tensile strength</source>
        <translation>eine Streckgrenze unter der Zugfestigkeit</translation>
    </message>
    <message>
        <source>a zero byte</source>
        <translation>ein Nullbyte</translation>
    </message>
    <message>
        <source>a zero character</source>
        <translation>ein Nullzeichen</translation>
    </message>
    <message>
        <source>an XML file</source>
        <translation>eine XML-Datei</translation>
    </message>
    <message>
        <source>an XML spreadsheet of 2003</source>
        <translation>eine XML-Tabelle von 2003</translation>
    </message>
    <message>
        <source>an old binary office file</source>
        <translation>eine alte binäre Bürodatei</translation>
    </message>
    <message>
        <source>an old binary spreadsheet (.xls)</source>
        <translation>eine alte binäre Tabelle (.xls)</translation>
    </message>
    <message>
        <source>an order number</source>
        <translation>eine Auftragsnummer</translation>
    </message>
    <message>
        <source>an xz file</source>
        <translation>eine xz-Datei</translation>
    </message>
    <message>
        <source>analysis: %1 is no element</source>
        <translation>Analyse: %1 ist kein Element</translation>
    </message>
    <message>
        <source>another grade, condition, type, date or validator than line %1 has of this document and heat</source>
        <translation>ein anderer Werkstoff oder Zustand, eine andere Art, ein anderes Datum oder ein anderer Prüfer, als Zeile %1 von diesem Dokument und dieser Schmelze hat</translation>
    </message>
    <message>
        <source>any number</source>
        <translation>irgendeine Zahl</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>höchstens %1</translation>
    </message>
    <message>
        <source>at most %1 columns</source>
        <translation>höchstens %1 Spalten</translation>
    </message>
    <message>
        <source>bar or drop</source>
        <translation>bar (Stange) oder drop (Reststück)</translation>
    </message>
    <message>
        <source>bytes that are not UTF-8 though the file says it is</source>
        <translation>Bytes, die nicht UTF-8 sind, obwohl die Datei es sagt</translation>
    </message>
    <message>
        <source>cannot be opened (%1)</source>
        <translation>lässt sich nicht öffnen (%1)</translation>
    </message>
    <message>
        <source>cannot be read to its end</source>
        <translation>lässt sich nicht bis zum Ende lesen</translation>
    </message>
    <message>
        <source>cell %1 is there twice or out of order</source>
        <translation>Zelle %1 kommt doppelt oder nicht an ihrer Stelle vor</translation>
    </message>
    <message>
        <source>cell %1 stands in row %2</source>
        <translation>Zelle %1 steht in Zeile %2</translation>
    </message>
    <message>
        <source>cell %1%2: %3</source>
        <translation>Zelle %1%2: %3</translation>
    </message>
    <message>
        <source>cell %1: %2</source>
        <translation>Zelle %1: %2</translation>
    </message>
    <message>
        <source>column %1 is missing</source>
        <translation>die Spalte %1 fehlt</translation>
    </message>
    <message>
        <source>column %1 stands twice</source>
        <translation>die Spalte %1 steht doppelt da</translation>
    </message>
    <message>
        <source>day number %1 is no date</source>
        <translation>die Tageszahl %1 ist kein Datum</translation>
    </message>
    <message>
        <source>document, heat and section</source>
        <translation>Dokument, Schmelze und Querschnitt</translation>
    </message>
    <message>
        <source>doubt: as long as the piece itself</source>
        <translation>Unsicherheit: so groß wie das Stück selbst</translation>
    </message>
    <message>
        <source>each %1 once</source>
        <translation>jede %1 einmal</translation>
    </message>
    <message>
        <source>each column once</source>
        <translation>jede Spalte einmal</translation>
    </message>
    <message>
        <source>elements with their mass %, as C 0.41 Si 0.26</source>
        <translation>Elemente mit ihrem Masse-%, wie C 0.41 Si 0.26</translation>
    </message>
    <message>
        <source>for example round 50</source>
        <translation>zum Beispiel round 50</translation>
    </message>
    <message>
        <source>from %1%2</source>
        <translation>von %1%2</translation>
    </message>
    <message>
        <source>half a UTF-16 character</source>
        <translation>ein halbes UTF-16-Zeichen</translation>
    </message>
    <message>
        <source>half a UTF-16 character at the end</source>
        <translation>ein halbes UTF-16-Zeichen am Ende</translation>
    </message>
    <message>
        <source>heat %1 has no mill</source>
        <translation>bei Schmelze %1 fehlt das Werk</translation>
    </message>
    <message>
        <source>heat %1 is a number in the sheet: zeros in front of it would be lost; look at the metal, and format the column as text</source>
        <translation>Schmelze %1 ist im Blatt eine Zahl: führende Nullen gingen verloren; am Material nachsehen und die Spalte als Text formatieren</translation>
    </message>
    <message>
        <source>heat %1 looks like %2; they are kept apart until somebody has looked</source>
        <translation>Schmelze %1 sieht aus wie %2; sie bleiben getrennt, bis jemand nachgesehen hat</translation>
    </message>
    <message>
        <source>heat is empty</source>
        <translation>die Schmelze ist leer</translation>
    </message>
    <message>
        <source>hidden columns (%1) are read like all others</source>
        <translation>ausgeblendete Spalten (%1) werden gelesen wie alle anderen</translation>
    </message>
    <message>
        <source>hidden rows (%1) are read like all others</source>
        <translation>ausgeblendete Zeilen (%1) werden gelesen wie alle anderen</translation>
    </message>
    <message>
        <source>how the row is known</source>
        <translation>wie die Zeile bekannt ist</translation>
    </message>
    <message>
        <source>its date</source>
        <translation>das Datum</translation>
    </message>
    <message>
        <source>mass % of an element at least</source>
        <translation>Masse-% mindestens eines Elements</translation>
    </message>
    <message>
        <source>merged cells (%1): only the first of them holds the value</source>
        <translation>verbundene Zellen (%1): nur die erste enthält den Wert</translation>
    </message>
    <message>
        <source>metal, tag, slip or none</source>
        <translation>metal (Material), tag (Werksanhänger), slip (Lieferschein) oder none (nicht lesbar)</translation>
    </message>
    <message>
        <source>more rows than a sheet has</source>
        <translation>mehr Zeilen, als ein Blatt hat</translation>
    </message>
    <message>
        <source>more than %1 MiB</source>
        <translation>mehr als %1 MiB</translation>
    </message>
    <message numerus="yes">
        <source>more than %1 bytes</source>
        <translation>
            <numerusform>mehr als %1 Byte</numerusform>
            <numerusform>mehr als %1 Bytes</numerusform>
        </translation>
    </message>
    <message>
        <source>more than %1 parts are packed in it</source>
        <translation>mehr als %1 Teile sind darin gepackt</translation>
    </message>
    <message>
        <source>more than 2 000 000 shared strings</source>
        <translation>mehr als 2 000 000 gemeinsame Texte</translation>
    </message>
    <message>
        <source>more than 64 MiB</source>
        <translation>mehr als 64 MiB</translation>
    </message>
    <message>
        <source>more than 64 MiB of text in one cell</source>
        <translation>mehr als 64 MiB Text in einer Zelle</translation>
    </message>
    <message>
        <source>more than 65 536 cell formats</source>
        <translation>mehr als 65 536 Zellformate</translation>
    </message>
    <message>
        <source>neither a minimum nor a maximum</source>
        <translation>weder ein Kleinst- noch ein Höchstwert</translation>
    </message>
    <message>
        <source>no --sheet, or a spreadsheet</source>
        <translation>kein --sheet, oder eine Tabelle</translation>
    </message>
    <message>
        <source>no heat, or what it was read from: metal, tag or slip</source>
        <translation>keine Schmelze, oder wovon sie gelesen wurde: metal (Material), tag (Werksanhänger) oder slip (Lieferschein)</translation>
    </message>
    <message>
        <source>no heat: not for certificated orders</source>
        <translation>keine Schmelze: nicht für Aufträge mit Zeugnis</translation>
    </message>
    <message>
        <source>nothing is in it</source>
        <translation>darin steht nichts</translation>
    </message>
    <message>
        <source>nothing is in sheet %1</source>
        <translation>in Blatt %1 steht nichts</translation>
    </message>
    <message>
        <source>one of them at least</source>
        <translation>mindestens eines davon</translation>
    </message>
    <message>
        <source>one of: %1</source>
        <translation>eines von: %1</translation>
    </message>
    <message>
        <source>one without a password</source>
        <translation>eine ohne Kennwort</translation>
    </message>
    <message>
        <source>only sheet %1 is read, the first of %2; --sheet NAME reads another</source>
        <translation>gelesen wird nur Blatt %1, das erste von %2; --sheet NAME liest ein anderes</translation>
    </message>
    <message>
        <source>only these columns: %1</source>
        <translation>nur diese Spalten: %1</translation>
    </message>
    <message>
        <source>or %1</source>
        <translation>oder %1</translation>
    </message>
    <message>
        <source>order and line</source>
        <translation>Auftrag und Position</translation>
    </message>
    <message>
        <source>owner is empty, and there is an owner&apos;s reference or rule</source>
        <translation>kein Eigentümer, aber eine Referenz oder Regel eines Eigentümers</translation>
    </message>
    <message>
        <source>part %1 has a document type, which no spreadsheet needs</source>
        <translation>Teil %1 hat einen Dokumenttyp, den keine Tabelle braucht</translation>
    </message>
    <message>
        <source>part %1 is damaged</source>
        <translation>Teil %1 ist beschädigt</translation>
    </message>
    <message>
        <source>part %1 is damaged or is not as large as it says</source>
        <translation>Teil %1 ist beschädigt oder nicht so groß, wie er angibt</translation>
    </message>
    <message>
        <source>part %1 is missing</source>
        <translation>Teil %1 fehlt</translation>
    </message>
    <message>
        <source>part %1 is nested too deeply</source>
        <translation>Teil %1 ist zu tief verschachtelt</translation>
    </message>
    <message>
        <source>part %1 is not as large as it says</source>
        <translation>Teil %1 ist nicht so groß, wie er angibt</translation>
    </message>
    <message>
        <source>part %1 is not well-formed XML in line %2</source>
        <translation>Teil %1 ist in Zeile %2 kein wohlgeformtes XML</translation>
    </message>
    <message>
        <source>part %1 is packed in an unusual way</source>
        <translation>Teil %1 ist ungewöhnlich gepackt</translation>
    </message>
    <message>
        <source>part %1 is there twice</source>
        <translation>Teil %1 kommt doppelt vor</translation>
    </message>
    <message>
        <source>part %1 names an entity of its own</source>
        <translation>Teil %1 nennt eine eigene Entität</translation>
    </message>
    <message>
        <source>part %1 unpacks to more than %2 MiB</source>
        <translation>Teil %1 wird entpackt größer als %2 MiB</translation>
    </message>
    <message>
        <source>product analysis of document, heat and section</source>
        <translation>Stückanalyse von Dokument, Schmelze und Querschnitt</translation>
    </message>
    <message>
        <source>read_from is none but there is a heat</source>
        <translation>read_from ist none (nicht lesbar), aber es steht eine Schmelze da</translation>
    </message>
    <message>
        <source>round 80</source>
        <translation>round 80</translation>
    </message>
    <message>
        <source>row with tests of document, heat and section</source>
        <translation>Zeile mit Prüfungen von Dokument, Schmelze und Querschnitt</translation>
    </message>
    <message>
        <source>rows as a person writes them; perhaps a quote is missing</source>
        <translation>Zeilen, wie ein Mensch sie schreibt; vielleicht fehlt ein Anführungszeichen</translation>
    </message>
    <message>
        <source>sheet %1 has no part in the file</source>
        <translation>Blatt %1 hat keinen Teil in der Datei</translation>
    </message>
    <message>
        <source>sheet %1 has something in cell %2</source>
        <translation>Blatt %1 hat etwas in Zelle %2</translation>
    </message>
    <message>
        <source>sheet %1 holds more than 4 000 000 cells</source>
        <translation>Blatt %1 enthält mehr als 4 000 000 Zellen</translation>
    </message>
    <message>
        <source>sheet %1 holds more than 64 MiB of text</source>
        <translation>Blatt %1 enthält mehr als 64 MiB Text</translation>
    </message>
    <message>
        <source>tests: %1 is not known here</source>
        <translation>Prüfungen: %1 ist hier nicht bekannt</translation>
    </message>
    <message>
        <source>text behind a closing quote</source>
        <translation>Text hinter einem schließenden Anführungszeichen</translation>
    </message>
    <message>
        <source>text: save it as CSV</source>
        <translation>Text: als CSV speichern</translation>
    </message>
    <message>
        <source>the date on the document, as 2026-03-04</source>
        <translation>das Datum auf dem Dokument, wie 2026-03-04</translation>
    </message>
    <message>
        <source>the delimiter there, or &quot;&quot; for a quote inside a quoted cell</source>
        <translation>dort das Trennzeichen, oder &quot;&quot; für ein Anführungszeichen in einer Zelle mit Anführungszeichen</translation>
    </message>
    <message>
        <source>the document&apos;s number</source>
        <translation>die Nummer des Dokuments</translation>
    </message>
    <message>
        <source>the document&apos;s own number</source>
        <translation>die eigene Nummer des Dokuments</translation>
    </message>
    <message>
        <source>the file is locked with a password</source>
        <translation>die Datei ist mit einem Kennwort gesperrt</translation>
    </message>
    <message>
        <source>the grade</source>
        <translation>der Werkstoff</translation>
    </message>
    <message>
        <source>the heat</source>
        <translation>die Schmelze</translation>
    </message>
    <message>
        <source>the heat as marked on the metal, in a column formatted as text</source>
        <translation>die Schmelze, wie sie auf dem Material steht, in einer als Text formatierten Spalte</translation>
    </message>
    <message>
        <source>the heat as marked, or read_from none when it cannot be read</source>
        <translation>die Schmelze, wie sie auf dem Material steht, oder read_from none, wenn sie nicht lesbar ist</translation>
    </message>
    <message>
        <source>the heat as the document has it</source>
        <translation>die Schmelze, wie sie im Dokument steht</translation>
    </message>
    <message>
        <source>the issuer</source>
        <translation>der Aussteller</translation>
    </message>
    <message>
        <source>the mill, as it is in the book</source>
        <translation>das Werk, wie es im Buch steht</translation>
    </message>
    <message>
        <source>the minimum is over the maximum</source>
        <translation>der Kleinstwert liegt über dem Höchstwert</translation>
    </message>
    <message>
        <source>the number</source>
        <translation>die Nummer</translation>
    </message>
    <message>
        <source>the path of a file</source>
        <translation>der Pfad einer Datei</translation>
    </message>
    <message>
        <source>the piece&apos;s name in the old list</source>
        <translation>der Name des Stücks in der alten Liste</translation>
    </message>
    <message>
        <source>the rows of sheet %1 are out of order</source>
        <translation>die Zeilen von Blatt %1 sind nicht in ihrer Ordnung</translation>
    </message>
    <message>
        <source>the same in both rows</source>
        <translation>in beiden Zeilen dasselbe</translation>
    </message>
    <message>
        <source>the section</source>
        <translation>der Querschnitt</translation>
    </message>
    <message>
        <source>the sheet stores %1 as a number</source>
        <translation>im Blatt ist %1 als Zahl gespeichert</translation>
    </message>
    <message>
        <source>the standard of the limits</source>
        <translation>die Norm der Grenzwerte</translation>
    </message>
    <message>
        <source>the time of day %1</source>
        <translation>die Uhrzeit %1</translation>
    </message>
    <message>
        <source>the type is not said</source>
        <translation>die Art fehlt</translation>
    </message>
    <message>
        <source>the workbook points outside of itself, to %1</source>
        <translation>die Mappe verweist aus sich hinaus, auf %1</translation>
    </message>
    <message>
        <source>the zip file is damaged (%1)</source>
        <translation>die ZIP-Datei ist beschädigt (%1)</translation>
    </message>
    <message>
        <source>there is no sheet %1</source>
        <translation>ein Blatt %1 gibt es nicht</translation>
    </message>
    <message>
        <source>there is no sheet of cells in it</source>
        <translation>darin ist kein Blatt mit Zellen</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation>eine solche Datei gibt es nicht</translation>
    </message>
    <message>
        <source>this is %1</source>
        <translation>das ist %1</translation>
    </message>
    <message>
        <source>this is a binary spreadsheet (.xlsb)</source>
        <translation>das ist eine binäre Tabelle (.xlsb)</translation>
    </message>
    <message>
        <source>this is a folder</source>
        <translation>das ist ein Ordner</translation>
    </message>
    <message>
        <source>this is a spreadsheet or zip file</source>
        <translation>das ist eine Tabelle oder ZIP-Datei</translation>
    </message>
    <message>
        <source>this is a zip file but no spreadsheet</source>
        <translation>das ist eine ZIP-Datei, aber keine Tabelle</translation>
    </message>
    <message>
        <source>this is an OpenDocument %1, no spreadsheet</source>
        <translation>das ist OpenDocument (%1), aber keine Tabelle</translation>
    </message>
    <message>
        <source>tolerance: the lower limit takes away the whole length</source>
        <translation>Toleranz: das untere Abmaß nimmt die ganze Länge weg</translation>
    </message>
    <message>
        <source>unit %1</source>
        <translation>Einheit %1</translation>
    </message>
    <message>
        <source>unknown column %1</source>
        <translation>unbekannte Spalte %1</translation>
    </message>
    <message>
        <source>unknown element %1</source>
        <translation>unbekanntes Element %1</translation>
    </message>
    <message>
        <source>unknown property %1</source>
        <translation>unbekannte Eigenschaft %1</translation>
    </message>
    <message>
        <source>upto_mm is not above over_mm</source>
        <translation>upto_mm ist nicht größer als over_mm</translation>
    </message>
    <message>
        <source>what is limited</source>
        <translation>was begrenzt ist</translation>
    </message>
    <message>
        <source>who delivered</source>
        <translation>wer geliefert hat</translation>
    </message>
    <message>
        <source>who issued the document</source>
        <translation>wer das Dokument ausgestellt hat</translation>
    </message>
    <message>
        <source>who made it, since two mills can use the same number</source>
        <translation>wer es hergestellt hat, denn zwei Werke können dieselbe Nummer verwenden</translation>
    </message>
    <message>
        <source>who made the metal</source>
        <translation>wer das Material hergestellt hat</translation>
    </message>
    <message>
        <source>whole kg/m3</source>
        <translation>ganze kg/m3</translation>
    </message>
    <message>
        <source>whose metal it is</source>
        <translation>wem das Material gehört</translation>
    </message>
    <message>
        <source>yes or no</source>
        <translation>ja oder nein</translation>
    </message>
    <message>
        <source>`heatkeep count seen` goes on with it, `heatkeep count give-up` ends it</source>
        <translation>`heatkeep count seen` zählt weiter, `heatkeep count give-up` bricht sie ab</translation>
    </message>
    <message>
        <source>`heatkeep cutlist list` names the open ones</source>
        <translation>`heatkeep cutlist list` nennt die offenen</translation>
    </message>
    <message>
        <source>`heatkeep hold list` names them</source>
        <translation>`heatkeep hold list` nennt sie</translation>
    </message>
    <message>
        <source>`heatkeep hold list` names what else stops metal</source>
        <translation>`heatkeep hold list` nennt, was Material sonst sperrt</translation>
    </message>
    <message>
        <source>`heatkeep label list` names them</source>
        <translation>`heatkeep label list` nennt sie</translation>
    </message>
    <message>
        <source>`heatkeep outside list` names what is</source>
        <translation>`heatkeep outside list` nennt, was außer Haus ist</translation>
    </message>
    <message>
        <source>`heatkeep papers awaited` names those that do</source>
        <translation>`heatkeep papers awaited` nennt die, die warten</translation>
    </message>
    <message>
        <source>`heatkeep papers list` names the documents</source>
        <translation>`heatkeep papers list` nennt die Zeugnisse</translation>
    </message>
    <message>
        <source>`heatkeep piece history %1` says what happened to it</source>
        <translation>`heatkeep piece history %1` sagt, was damit geschah</translation>
    </message>
    <message>
        <source>`heatkeep receipt list` names them</source>
        <translation>`heatkeep receipt list` nennt sie</translation>
    </message>
    <message>
        <source>`heatkeep receipt list` says what came</source>
        <translation>`heatkeep receipt list` sagt, was gekommen ist</translation>
    </message>
    <message>
        <source>`heatkeep saw consents` names them</source>
        <translation>`heatkeep saw consents` nennt sie</translation>
    </message>
    <message>
        <source>`heatkeep saw defects` names them</source>
        <translation>`heatkeep saw defects` nennt sie</translation>
    </message>
    <message>
        <source>`heatkeep saw handover` hands it over</source>
        <translation>`heatkeep saw handover` übergibt sie</translation>
    </message>
    <message>
        <source>`heatkeep saw scrap-bins` names them</source>
        <translation>`heatkeep saw scrap-bins` nennt sie</translation>
    </message>
    <message>
        <source>`heatkeep shop places` names the sites</source>
        <translation>`heatkeep shop places` nennt die Standorte</translation>
    </message>
    <message>
        <source>`heatkeep stock` names what is here, `heatkeep receipt list` what came, `heatkeep papers list` the documents</source>
        <translation>`heatkeep stock` nennt, was hier ist, `heatkeep receipt list`, was gekommen ist, `heatkeep papers list` die Zeugnisse</translation>
    </message>
    <message>
        <source>`heatkeep transfer list` names what is</source>
        <translation>`heatkeep transfer list` nennt, was unterwegs ist</translation>
    </message>
    <message>
        <source>lot queue</source>
        <translation>Losschlange</translation>
    </message>
    <message>
        <source>the one with %1 = %2 is there</source>
        <translation>Mit %1 = %2 gibt es das schon</translation>
    </message>
    <message>
        <source>there is no %1 with %2 = %3</source>
        <translation>%1 mit %2 = %3 gibt es nicht</translation>
    </message>
    <message>
        <source>this server of the book only answers questions (a standby, or set so), and nothing of this was booked: do it at the server that takes deeds</source>
        <translation>dieser Server des Buchs beantwortet nur Fragen (er folgt einem andern oder ist so eingestellt), und nichts davon wurde gebucht: an dem Server buchen, der Buchungen annimmt</translation>
    </message>
    <message>
        <source>%1 came with %2</source>
        <translation>%1 kam mit %2</translation>
    </message>
    <message>
        <source>%1 cannot be %2: a cut of it was begun at saw %3 and is open</source>
        <translation>%1 kann nicht %2 werden: an Säge %3 wurde ein Schnitt davon begonnen und ist offen</translation>
    </message>
    <message>
        <source>%1 columns, keys, checks and triggers</source>
        <translation>%1 Spalten, Schlüssel, Prüfungen und Auslöser</translation>
    </message>
    <message>
        <source>%1 differ: %2%3</source>
        <translation>%1 weichen ab: %2%3</translation>
    </message>
    <message>
        <source>%1 has too many decimals</source>
        <translation>%1 hat zu viele Nachkommastellen</translation>
    </message>
    <message>
        <source>%1 is at another site than saw %2</source>
        <translation>%1 ist an einem anderen Standort als Säge %2</translation>
    </message>
    <message>
        <source>%1 is free for use: it is not put in %2, where nothing is taken from</source>
        <translation>%1 ist frei verwendbar: es kommt nicht nach %2, wo nichts entnommen wird</translation>
    </message>
    <message>
        <source>%1 is not made longer: it was cut, had another tag, or is no bar that came</source>
        <translation>%1 wird nicht länger gemacht: das Stück wurde gesägt, hatte ein anderes Etikett oder ist keine angelieferte Stange</translation>
    </message>
    <message>
        <source>%1 piece of it is here: %2</source>
        <translation>%1 Stück davon ist hier: %2</translation>
    </message>
    <message numerus="yes">
        <source>%1 pieces of it are here: %2</source>
        <translation>
            <numerusform>%1 Stück davon ist hier: %2</numerusform>
            <numerusform>%1 Stück davon sind hier: %2</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 was booked %2 long when it came: %3 is no more</source>
        <translation>%1 wurde beim Eingang mit %2 gebucht: %3 ist nicht mehr</translation>
    </message>
    <message>
        <source>%1 was counted in %2 with %3; it has been cut, measured or moved since: look at it and measure it</source>
        <translation>%1 wurde in %2 mit %3 gezählt; seitdem wurde es gesägt, gemessen oder umgelagert: ansehen und messen</translation>
    </message>
    <message>
        <source>%1 was counted in %2; in the book it lies at another site, in %3, and was not sent</source>
        <translation>%1 wurde in %2 gezählt; im Buch liegt es an einem anderen Standort, in %3, und wurde nicht gesandt</translation>
    </message>
    <message>
        <source>%1 was cut at saw %2; in the book it lies at another site, in %3, and was not sent</source>
        <translation>%1 wurde an Säge %2 gesägt; im Buch liegt es an einem anderen Standort, in %3, und wurde nicht gesandt</translation>
    </message>
    <message>
        <source>%1 was cut for an order</source>
        <translation>%1 wurde für einen Auftrag gesägt</translation>
    </message>
    <message>
        <source>%1 was cut; in the book it is %2</source>
        <translation>%1 wurde gesägt; im Buch ist es %2</translation>
    </message>
    <message>
        <source>%1 went on under another tag</source>
        <translation>%1 ging unter einem anderen Etikett weiter</translation>
    </message>
    <message>
        <source>%1 went on under another tag, and that would stay what it is: %2</source>
        <translation>%1 ging unter einem anderen Etikett weiter, und das bliebe, was es ist: %2</translation>
    </message>
    <message>
        <source>%1: character %2 in %3</source>
        <translation>%1: Zeichen %2 in %3</translation>
    </message>
    <message>
        <source>a rest of %1 was put in %2, at another site: it is booked in %3</source>
        <translation>ein Rest von %1 wurde nach %2 gelegt, an einen anderen Standort: gebucht ist er in %3</translation>
    </message>
    <message>
        <source>an old mark names one line; give the others their own, or none</source>
        <translation>ein altes Kennzeichen benennt eine Zeile; den anderen ein eigenes geben oder keines</translation>
    </message>
    <message>
        <source>another receipt</source>
        <translation>einem anderen Eingang</translation>
    </message>
    <message>
        <source>being counted</source>
        <translation>wird gezählt</translation>
    </message>
    <message>
        <source>changed since it was counted</source>
        <translation>seit der Zählung geändert</translation>
    </message>
    <message>
        <source>column %1.%2 %3%4</source>
        <translation>Spalte %1.%2 %3%4</translation>
    </message>
    <message>
        <source>constraint %1.%2%3</source>
        <translation>Bedingung %1.%2%3</translation>
    </message>
    <message>
        <source>counted at another site</source>
        <translation>an einem anderen Standort gezählt</translation>
    </message>
    <message>
        <source>cut at another site</source>
        <translation>an einem anderen Standort gesägt</translation>
    </message>
    <message>
        <source>cut at risk: papers awaited, do not ship</source>
        <translation>auf Risiko gesägt: Papiere stehen aus, nicht versenden</translation>
    </message>
    <message>
        <source>cut though it is not here</source>
        <translation>gesägt, obwohl es nicht hier ist</translation>
    </message>
    <message>
        <source>cut while it was %1</source>
        <translation>gesägt, während es %1 war</translation>
    </message>
    <message>
        <source>document %1 is filed for it</source>
        <translation>Dokument %1 ist dafür abgelegt</translation>
    </message>
    <message>
        <source>expected an amount in its range, whole where the range counts 0, 1; currency three letters (ISO 4217), EUR; time_zone a name of the IANA list, Europe/Berlin; %1</source>
        <translation>erwartet wird eine Menge in ihrem Bereich, ganz, wo der Bereich 0, 1 zählt; die Währung mit drei Buchstaben (ISO 4217), EUR; time_zone ein Name der IANA-Liste, Europe/Berlin; %1</translation>
    </message>
    <message>
        <source>expected as owner nobody (our metal) or the customer himself; metal of another is bought over in writing first (heatkeep piece buy-over)</source>
        <translation>als Eigentümer wird niemand (unser Werkstoff) oder der Kunde selbst erwartet; Werkstoff eines anderen wird zuerst schriftlich gekauft (heatkeep piece buy-over)</translation>
    </message>
    <message>
        <source>expected one line of at most %1 characters, each of them seen, and none that turns the direction of writing</source>
        <translation>erwartet: eine Zeile aus höchstens %1 Zeichen, jedes sichtbar, und keines, das die Schreibrichtung dreht</translation>
    </message>
    <message>
        <source>finish the cut first, and say what is left of it (heatkeep saw cut)</source>
        <translation>zuerst den Schnitt abschließen und sagen, was davon übrig ist (heatkeep saw cut)</translation>
    </message>
    <message>
        <source>gone: %1</source>
        <translation>fehlt: %1</translation>
    </message>
    <message>
        <source>heat %1 is %2 in the book in another section or condition</source>
        <translation>Schmelze %1 ist im Buch in einem anderen Querschnitt oder Zustand %2</translation>
    </message>
    <message>
        <source>it belongs to %1 and serves nobody else</source>
        <translation>es gehört %1 und dient niemand anderem</translation>
    </message>
    <message>
        <source>it looks like heat %1</source>
        <translation>es sieht aus wie Schmelze %1</translation>
    </message>
    <message>
        <source>it looks like heat %1, which would not be stopped</source>
        <translation>es sieht aus wie Schmelze %1, die nicht gesperrt würde</translation>
    </message>
    <message>
        <source>its length now is put right by heatkeep correct length</source>
        <translation>die jetzige Länge stellt heatkeep correct length richtig</translation>
    </message>
    <message>
        <source>measure again; where it came longer than it was booked, quality puts its receipt right: heatkeep correct receipt, with the length</source>
        <translation>noch einmal messen; kam die Stange länger, als gebucht ist, stellt die Qualität ihren Eingang richtig: heatkeep correct receipt, mit der Länge</translation>
    </message>
    <message>
        <source>more than once in this opening balance: %1</source>
        <translation>mehr als einmal in dieser Eröffnung: %1</translation>
    </message>
    <message>
        <source>new: %1</source>
        <translation>neu: %1</translation>
    </message>
    <message>
        <source>no tolerance</source>
        <translation>keine Toleranz</translation>
    </message>
    <message>
        <source>not null</source>
        <translation>nie leer</translation>
    </message>
    <message>
        <source>not shipped: %1</source>
        <translation>nicht versandt: %1</translation>
    </message>
    <message>
        <source>not valid</source>
        <translation>nicht geprüft</translation>
    </message>
    <message>
        <source>nothing is free of %1 %2</source>
        <translation>nichts ist frei von %1 %2</translation>
    </message>
    <message>
        <source>nothing is free of %1 %2 of %3</source>
        <translation>nichts ist frei von %1 %2 von %3</translation>
    </message>
    <message>
        <source>on its way to %1, note %2</source>
        <translation>unterwegs nach %1, Schein %2</translation>
    </message>
    <message>
        <source>one heat is asked for order %1 line %2, and it is planned from %3</source>
        <translation>für Auftrag %1 Position %2 wird eine Schmelze verlangt, und geplant ist sie aus %3</translation>
    </message>
    <message>
        <source>one line of characters that can be seen</source>
        <translation>eine Zeile aus sichtbaren Zeichen</translation>
    </message>
    <message numerus="yes">
        <source>order %1 line %2 asks for %3 pieces; %4 have left, and %5 more would be too many</source>
        <translation>
            <numerusform>Auftrag %1 Position %2 verlangt %3 Stück; %4 sind ausgegangen, und %5 weitere wären zu viel</numerusform>
            <numerusform>Auftrag %1 Position %2 verlangt %3 Stück; %4 sind ausgegangen, und %5 weitere wären zu viel</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>order %1 line %2 may come from %3 heats, and is cut or planned from %4</source>
        <translation>
            <numerusform>Auftrag %1 Position %2 darf aus %3 Schmelze kommen und ist aus %4 gesägt oder geplant</numerusform>
            <numerusform>Auftrag %1 Position %2 darf aus %3 Schmelzen kommen und ist aus %4 gesägt oder geplant</numerusform>
        </translation>
    </message>
    <message>
        <source>order %1 line %2: %3</source>
        <translation>Auftrag %1 Position %2: %3</translation>
    </message>
    <message>
        <source>order %1 line %2: metal of %3 is cut for nobody else</source>
        <translation>Auftrag %1 Position %2: Werkstoff von %3 wird für niemand anderen geschnitten</translation>
    </message>
    <message>
        <source>outside at %1 for %2, note %3</source>
        <translation>außer Haus bei %1 zum %2, Schein %3</translation>
    </message>
    <message>
        <source>put at another site</source>
        <translation>an einen anderen Standort gelegt</translation>
    </message>
    <message>
        <source>put the newest of them right first, in the same way: heatkeep correct receipt with its tag</source>
        <translation>zuerst das neueste davon ebenso richtigstellen: heatkeep correct receipt mit seinem Etikett</translation>
    </message>
    <message>
        <source>quarantine it and ask quality; where the book is wrong, quality corrects the receipt of its pieces as long as nothing more stands on that: %1</source>
        <translation>in Quarantäne stellen und die Qualität fragen; ist das Buch falsch, stellt die Qualität den Eingang seiner Stücke richtig, solange darauf nichts weiter steht: %1</translation>
    </message>
    <message>
        <source>ship no more of it than was agreed; for the rest the customer agrees in writing, or other metal is cut</source>
        <translation>nicht mehr davon versenden als vereinbart; für den Rest stimmt der Kunde schriftlich zu, oder anderer Werkstoff wird geschnitten</translation>
    </message>
    <message>
        <source>sliced for the laboratory</source>
        <translation>für das Labor angeschnitten</translation>
    </message>
    <message>
        <source>tables keep to what they were made with</source>
        <translation>die Tabellen halten ein, womit sie gemacht wurden</translation>
    </message>
    <message numerus="yes">
        <source>the customer takes %1 pieces of %2</source>
        <translation>
            <numerusform>der Kunde nimmt %1 Stück aus %2</numerusform>
            <numerusform>der Kunde nimmt %1 Stück aus %2</numerusform>
        </translation>
    </message>
    <message>
        <source>the document is not accepted: %1; its metal is held by hold %2 until that is lifted</source>
        <translation>das Dokument ist nicht angenommen: %1; sein Material ist mit Sperre %2 gesperrt, bis diese aufgehoben wird</translation>
    </message>
    <message>
        <source>trigger %1.%2</source>
        <translation>Auslöser %1.%2</translation>
    </message>
    <message>
        <source>turned off: foreign key %1.%2</source>
        <translation>abgeschaltet: Fremdschlüssel %1.%2</translation>
    </message>
    <message>
        <source>turned off: trigger %1.%2</source>
        <translation>abgeschaltet: Auslöser %1.%2</translation>
    </message>
    <message>
        <source>unique index %1.%2</source>
        <translation>eindeutiger Index %1.%2</translation>
    </message>
    <message>
        <source>what is over becomes stock (heatkeep saw to-stock), or the order is changed first (heatkeep saw change)</source>
        <translation>was zu viel ist, wird Bestand (heatkeep saw to-stock), oder der Auftrag wird zuerst geändert (heatkeep saw change)</translation>
    </message>
    <message>
        <source>what is shorter than it was booked is put right by heatkeep correct length: the difference stays unexplained</source>
        <translation>was kürzer ist als gebucht, stellt heatkeep correct length richtig: die Differenz bleibt ungeklärt</translation>
    </message>
    <message>
        <source>where it ends</source>
        <translation>wo es endet</translation>
    </message>
    <message>
        <source>where something is wrong with it, say what: heatkeep quarantine, with the reason and the place</source>
        <translation>stimmt etwas nicht damit, sagen was: heatkeep quarantine, mit Grund und Platz</translation>
    </message>
    <message>
        <source>where the damage begins</source>
        <translation>wo der Schaden beginnt</translation>
    </message>
    <message>
        <source>line ?</source>
        <translation>Zeile ?</translation>
    </message>
    <message>
        <source>it was sent to another site: receive it there first (heatkeep transfer receive)</source>
        <translation>es ging an einen anderen Standort: dort zuerst in Empfang nehmen (heatkeep transfer receive)</translation>
    </message>
    <message>
        <source>receive it back first: heatkeep outside back</source>
        <translation>zuerst zurücknehmen: heatkeep outside back</translation>
    </message>
    <message>
        <source>where it turned up, look at it, read it and measure it: heatkeep piece found-again</source>
        <translation>wo es auftauchte: ansehen, ablesen und messen (heatkeep piece found-again)</translation>
    </message>
    <message>
        <source>%1 has been cut since: what was booked before it stays</source>
        <translation>%1 wurde seitdem gesägt: was davor gebucht wurde, bleibt</translation>
    </message>
    <message>
        <source>%1 in %2, %3, %4</source>
        <translation>%1 in %2, %3, %4</translation>
    </message>
    <message numerus="yes">
        <source>%1 strokes cannot be taken back; expected 1 or more</source>
        <translation>
            <numerusform>%1 Schnitt lässt sich nicht zurücknehmen; erwartet wird 1 oder mehr</numerusform>
            <numerusform>%1 Schnitte lassen sich nicht zurücknehmen; erwartet wird 1 oder mehr</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 strokes of that cut are booked, not %2</source>
        <translation>
            <numerusform>%1 Schnitt davon ist gebucht, nicht %2</numerusform>
            <numerusform>%1 Schnitte davon sind gebucht, nicht %2</numerusform>
        </translation>
    </message>
    <message>
        <source>a piece of order %1 line %2 that left the shop</source>
        <translation>ein Stück für Auftrag %1 Position %2, das den Betrieb verlassen hat</translation>
    </message>
    <message>
        <source>a piece with a tag of its own, or a cut across only</source>
        <translation>ein Stück mit eigenem Etikett oder nur ein Trennschnitt</translation>
    </message>
    <message>
        <source>a reject that is recut</source>
        <translation>ein Ausschuss, der neu gesägt wird</translation>
    </message>
    <message>
        <source>how it came to be booked</source>
        <translation>wie es dazu kam, dass es gebucht wurde</translation>
    </message>
    <message>
        <source>it is longer than the label says</source>
        <translation>es ist länger, als das Etikett sagt</translation>
    </message>
    <message>
        <source>made longer</source>
        <translation>länger gebucht</translation>
    </message>
    <message>
        <source>name the bar that is being cut, or the drop that was left of it: what is longer than the book has it</source>
        <translation>die Stange nennen, die gesägt wird, oder das Reststück, das davon blieb: das, was länger ist, als es im Buch steht</translation>
    </message>
    <message>
        <source>no cut of %1 is open, and it is not what a cut left</source>
        <translation>kein Schnitt von %1 ist offen, und es ist nicht das, was ein Schnitt übrig ließ</translation>
    </message>
    <message>
        <source>not cut</source>
        <translation>nicht gesägt</translation>
    </message>
    <message>
        <source>not_cut, where the last strokes were not made; metal that is cut stays cut: pieces_to_stock or reuse_reject take it up again</source>
        <translation>not_cut, wo die letzten Schnitte nicht gemacht wurden; was gesägt ist, bleibt gesägt: pieces_to_stock oder reuse_reject nehmen es wieder auf</translation>
    </message>
    <message>
        <source>of a bundle, cut with other bars</source>
        <translation>aus einem Bündel, mit anderen Stangen gesägt</translation>
    </message>
    <message>
        <source>only what was booked last is taken back</source>
        <translation>nur was zuletzt gebucht wurde, wird zurückgenommen</translation>
    </message>
    <message>
        <source>stroke %1 of that cut is %2: it was made</source>
        <translation>Schnitt %1 davon ist %2: er wurde gemacht</translation>
    </message>
    <message>
        <source>measure again; no piece is longer than it ever was. Where a piece was booked that was not cut before it, take it back: heatkeep saw take-back</source>
        <translation>noch einmal messen; kein Stück ist länger, als es je war. Wo davor ein Stück gebucht wurde, das nicht gesägt ist, dieses zurücknehmen: heatkeep saw take-back</translation>
    </message>
    <message>
        <source>measure again; where a piece was booked that was not cut, take it back first: heatkeep saw take-back</source>
        <translation>noch einmal messen; wo ein Stück gebucht wurde, das nicht gesägt ist, dieses zuerst zurücknehmen: heatkeep saw take-back</translation>
    </message>
    <message>
        <source>metal of it went to another lot just now: do it again</source>
        <translation>Metall davon kam eben in ein anderes Los: noch einmal versuchen</translation>
    </message>
    <message>
        <source>nothing of %1 is taken back: it is %2</source>
        <translation>nichts von %1 wird zurückgenommen: es ist %2</translation>
    </message>
    <message>
        <source>quality lifts the hold first</source>
        <translation>zuerst hebt die Qualität die Sperre auf</translation>
    </message>
    <message>
        <source>0, 1 or 2 square ends</source>
        <translation>0, 1 oder 2 gerade Enden</translation>
    </message>
    <message>
        <source>a beginning from 0</source>
        <translation>ein Anfang ab 0</translation>
    </message>
    <message>
        <source>a bundle with the number of its stroke, from 1, and a kerf</source>
        <translation>ein Bund mit der Nummer seines Schnitts, ab 1, und eine Schnittfuge</translation>
    </message>
    <message>
        <source>a fault for a reject or a crop, and only there</source>
        <translation>ein Fehler bei Ausschuss oder Abschnitt, und nur dort</translation>
    </message>
    <message>
        <source>a good piece with its line and a length</source>
        <translation>ein Gutstück mit seiner Position und einer Länge</translation>
    </message>
    <message>
        <source>a good piece, of what was cut instead of a reject</source>
        <translation>ein Gutstück, wenn es anstelle von Ausschuss gesägt wurde</translation>
    </message>
    <message>
        <source>a laboratory for test slices only</source>
        <translation>ein Labor nur bei Probescheiben</translation>
    </message>
    <message>
        <source>a length made above 0, a length now from 0 to that, a doubt from 0</source>
        <translation>eine Länge bei der Entstehung über 0, eine Länge jetzt von 0 bis dahin, eine Unsicherheit ab 0</translation>
    </message>
    <message>
        <source>a limit of use with its reason</source>
        <translation>eine Verwendungsgrenze mit ihrem Grund</translation>
    </message>
    <message>
        <source>a path that ends in the piece and leads there from its parent</source>
        <translation>ein Weg, der beim Stück endet und von dem Stück dorthin führt, aus dem es kam</translation>
    </message>
    <message>
        <source>a piece no longer than the one it came from</source>
        <translation>ein Stück, das nicht länger ist als das, aus dem es kam</translation>
    </message>
    <message>
        <source>a stroke with nothing in it that says how it came to be booked</source>
        <translation>ein Schnitt ohne Inhalt, der sagt, wie es zu seiner Buchung kam</translation>
    </message>
    <message>
        <source>function %1 %2</source>
        <translation>Funktion %1 %2</translation>
    </message>
    <message>
        <source>good pieces only, of what is shipped</source>
        <translation>nur Gutstücke, wenn etwas versandt ist</translation>
    </message>
    <message>
        <source>length 0 of what is a piece of its own again</source>
        <translation>Länge 0 bei dem, was wieder ein eigenes Stück ist</translation>
    </message>
    <message>
        <source>length 0 where the piece is gone, and only there</source>
        <translation>Länge 0, wo das Stück fort ist, und nur dort</translation>
    </message>
    <message>
        <source>length and kerf from 0, one of them above it</source>
        <translation>Länge und Schnittfuge ab 0, eines davon darüber</translation>
    </message>
    <message>
        <source>what it was before as the end of that path, and no parent</source>
        <translation>das frühere Stück als Ende jenes Wegs, und keines, aus dem es kam</translation>
    </message>
</context>
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
        <source>Saw %1   %2</source>
        <translation>Säge %1   %2</translation>
    </message>
    <message>
        <source>WAYS OUT</source>
        <translation>AUSWEGE</translation>
    </message>
</context>
<context>
    <name>ScreenPaper</name>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>About it</source>
        <translation>Dazu</translation>
    </message>
    <message>
        <source>When, how much</source>
        <translation>Wann, wie viel</translation>
    </message>
    <message>
        <source>keep</source>
        <translation>behalten</translation>
    </message>
    <message>
        <source>scrap</source>
        <translation>Schrott</translation>
    </message>
    <message>
        <source>Nothing to show.</source>
        <translation>Nichts zu zeigen.</translation>
    </message>
</context>
<context>
    <name>heatkeep::AskingLine</name>
    <message>
        <source>Enter: answer   Esc: leave it</source>
        <translation>Enter: antworten   Esc: lassen</translation>
    </message>
</context>
<context>
    <name>heatkeep::BalanceBarView</name>
    <message>
        <source>metal balance: %1</source>
        <translation>Materialbilanz: %1</translation>
    </message>
    <message>
        <source>kerf</source>
        <translation>Schnittfuge</translation>
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
    <message>
        <source>Count, what differs</source>
        <translation>Zählung, was abweicht</translation>
    </message>
    <message>
        <source>Count sheet</source>
        <translation>Zählblatt</translation>
    </message>
    <message>
        <source>Looked at, by whom: ................................   What it comes from: ................................</source>
        <translation>Angesehen, von wem: ................................   Woher es kommt: ................................</translation>
    </message>
    <message>
        <source>Write down every tag that lies here, as it is read, and what carries no tag. What should lie here is not on this sheet.</source>
        <translation>Jedes Etikett aufschreiben, das hier liegt, so wie es gelesen wird, und was keines trägt. Was hier liegen sollte, steht nicht auf diesem Blatt.</translation>
    </message>
    <message>
        <source>%1 is no tag: the label of a piece is scanned here, or a place</source>
        <translation>%1 ist keine Nummer: hier wird das Etikett eines Stücks gescannt, oder ein Platz</translation>
    </message>
</context>
<context>
    <name>heatkeep::CountingWork</name>
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
    <message>
        <source>the freezing of %1</source>
        <translation>das Einfrieren von %1</translation>
    </message>
    <message>
        <source>the count of %1</source>
        <translation>die Zählung von %1</translation>
    </message>
    <message>
        <source>the count of %1 without a tag</source>
        <translation>die Zählung von %1 ohne Kennung</translation>
    </message>
    <message>
        <source>the end of the count of %1</source>
        <translation>das Ende der Zählung von %1</translation>
    </message>
    <message>
        <source>the approval of the count of %1</source>
        <translation>die Genehmigung der Zählung von %1</translation>
    </message>
    <message>
        <source>the giving up of the count of %1</source>
        <translation>das Verwerfen der Zählung von %1</translation>
    </message>
    <message>
        <source>%1 has changed since it was counted and is left as it is: look at it</source>
        <translation>%1 hat sich seit der Zählung geändert und bleibt, wie es ist: ansehen</translation>
    </message>
</context>
<context>
    <name>heatkeep::DeedButton</name>
    <message>
        <source>the login %1 may not do this</source>
        <translation>die Anmeldung %1 darf das nicht</translation>
    </message>
    <message>
        <source>Ctrl</source>
        <translation>Strg</translation>
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
        <source>Heat as read</source>
        <translation>Schmelze, gelesen</translation>
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
    <message>
        <source>Measured with</source>
        <translation>Gemessen mit</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>nicht genannt</translation>
    </message>
    <message>
        <source>Ends</source>
        <translation>Enden</translation>
    </message>
    <message>
        <source>rough, from the mill</source>
        <translation>roh vom Werk</translation>
    </message>
    <message>
        <source>one sawn square</source>
        <translation>eines gerade gesägt</translation>
    </message>
    <message>
        <source>both sawn square</source>
        <translation>beide gerade gesägt</translation>
    </message>
    <message>
        <source>Mark on the bar</source>
        <translation>Zeichen auf der Stange</translation>
    </message>
    <message>
        <source>not looked at</source>
        <translation>nicht angesehen</translation>
    </message>
    <message>
        <source>on one end: that is cut last</source>
        <translation>an einem Ende: das wird zuletzt gesägt</translation>
    </message>
    <message>
        <source>on the end that is cut first</source>
        <translation>am Ende, das zuerst gesägt wird</translation>
    </message>
    <message>
        <source>on both ends</source>
        <translation>an beiden Enden</translation>
    </message>
    <message>
        <source>none on the metal</source>
        <translation>keines auf dem Metall</translation>
    </message>
    <message>
        <source>not said: ±%1</source>
        <translation>nicht genannt: ±%1</translation>
    </message>
    <message>
        <source>Note says</source>
        <translation>Laut Schein</translation>
    </message>
    <message>
        <source>Read from</source>
        <translation>Gelesen von</translation>
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
    <message>
        <source>as %1, who worked here last</source>
        <translation>als %1, wer hier zuletzt arbeitete</translation>
    </message>
    <message>
        <source>there is nothing on this screen to print</source>
        <translation>auf diesem Bildschirm ist nichts zu drucken</translation>
    </message>
    <message>
        <source>printed: %1</source>
        <translation>gedruckt: %1</translation>
    </message>
    <message>
        <source>not printed: %1</source>
        <translation>nicht gedruckt: %1</translation>
    </message>
    <message>
        <source>%1: this screen takes no such file; certificates go to Papers, an opening balance to Start</source>
        <translation>%1: dieser Bildschirm nimmt keine solche Datei; Zeugnisse gehören zu Papiere, ein Anfangsbestand zu Start</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Drucken</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
</context>
<context>
    <name>heatkeep::DeviceText</name>
    <message>
        <source>%1, ±%2</source>
        <translation>%1, ±%2</translation>
    </message>
    <message>
        <source>%1, its calibration is over</source>
        <translation>%1, die Kalibrierung ist abgelaufen</translation>
    </message>
</context>
<context>
    <name>heatkeep::DocumentForm</name>
    <message>
        <source>The document&apos;s file</source>
        <translation>Die Datei des Dokuments</translation>
    </message>
    <message>
        <source>Documents (*.pdf *.png *.jpg *.jpeg *.tif *.tiff)</source>
        <translation>Dokumente (*.pdf *.png *.jpg *.jpeg *.tif *.tiff)</translation>
    </message>
    <message>
        <source>File, as it came from the mill: choose it, drop it on the window, or type it</source>
        <translation>Datei, wie sie vom Werk kam: wählen, auf das Fenster ziehen oder eintippen</translation>
    </message>
    <message>
        <source>typed without its file</source>
        <translation>ohne Datei eingetippt</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Nummer</translation>
    </message>
    <message>
        <source>Issued by</source>
        <translation>Ausgestellt von</translation>
    </message>
    <message>
        <source>Date on it</source>
        <translation>Datum darauf</translation>
    </message>
    <message>
        <source>type, EN 10204</source>
        <translation>Art, EN 10204</translation>
    </message>
    <message>
        <source>Type, EN 10204</source>
        <translation>Art, EN 10204</translation>
    </message>
    <message>
        <source>Heat, as the document has it</source>
        <translation>Schmelze, wie sie im Dokument steht</translation>
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
        <source>Condition</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>Analysis of the heat, mass %</source>
        <translation>Schmelzenanalyse, Masse-%</translation>
    </message>
    <message>
        <source>Tests: Rm and Re in MPa, A in %</source>
        <translation>Prüfungen: Rm und Re in MPa, A in %</translation>
    </message>
    <message>
        <source>Validated by: name, position, for whom</source>
        <translation>Bestätigt von: Name, Stellung, für wen</translation>
    </message>
    <message>
        <source>A. Lund, laboratory, independent</source>
        <translation>A. Lund, Labor, independent</translation>
    </message>
    <message>
        <source>File it</source>
        <translation>Ablegen</translation>
    </message>
    <message>
        <source>Choose the file ...</source>
        <translation>Datei wählen ...</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Lassen</translation>
    </message>
    <message>
        <source>Values are compared with the published limits of the grade. That replaces neither the standard nor the judgement of the person responsible.</source>
        <translation>Werte werden mit den veröffentlichten Grenzen der Sorte verglichen. Das ersetzt weder die Norm noch das Urteil der verantwortlichen Person.</translation>
    </message>
    <message>
        <source>the file is chosen: what does it say?</source>
        <translation>die Datei ist gewählt: was steht darin?</translation>
    </message>
</context>
<context>
    <name>heatkeep::DocumentWork</name>
    <message>
        <source>the one before is not answered yet</source>
        <translation>das vorige ist noch nicht beantwortet</translation>
    </message>
    <message>
        <source>the book cannot be reached: nothing is filed; file it when it is back</source>
        <translation>das Buch ist nicht zu erreichen: nichts ist abgelegt; ablegen, wenn es wieder da ist</translation>
    </message>
    <message>
        <source>all that document %1 is of is held: nothing of it is promised, pulled or shipped until the hold is lifted</source>
        <translation>alles, wozu Dokument %1 gehört, ist gesperrt: nichts davon wird zugesagt, geholt oder versandt, bis die Sperre aufgehoben ist</translation>
    </message>
    <message>
        <source>the book cannot be reached: nothing is held</source>
        <translation>das Buch ist nicht zu erreichen: nichts ist gesperrt</translation>
    </message>
    <message>
        <source>it is filed, and what it is of is held: %1</source>
        <translation>es ist abgelegt, und wozu es gehört ist gesperrt: %1</translation>
    </message>
    <message>
        <source>document %1 was in the book without its file: the file is with it now</source>
        <translation>Dokument %1 stand ohne Datei im Buch: die Datei ist jetzt dabei</translation>
    </message>
    <message>
        <source>document %1 is filed; what it is of waits until quality has accepted it</source>
        <translation>Dokument %1 ist abgelegt; wozu es gehört wartet, bis die Qualität es angenommen hat</translation>
    </message>
    <message numerus="yes">
        <source>document %1 is filed and accepted: %n lot(s) may be used with it</source>
        <translation>
            <numerusform>Dokument %1 ist abgelegt und angenommen: %n Los darf damit verwendet werden</numerusform>
            <numerusform>Dokument %1 ist abgelegt und angenommen: %n Lose dürfen damit verwendet werden</numerusform>
        </translation>
    </message>
    <message>
        <source>the filing of document %1</source>
        <translation>das Ablegen von Dokument %1</translation>
    </message>
    <message>
        <source>the acceptance of document %1</source>
        <translation>die Annahme von Dokument %1</translation>
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
    <message>
        <source>other</source>
        <translation>anderes</translation>
    </message>
    <message>
        <source>Its family tree stands here: every piece to one scale under the piece it came from, and where it is now.</source>
        <translation>Hier steht der Stammbaum: jedes Stück in einem Maßstab unter dem Stück, aus dem es kam, und wo es jetzt ist.</translation>
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
    <name>heatkeep::KeptDeed</name>
    <message>
        <source>a deed whose answer is missing cannot be read again, look in the book whether it was done: %1</source>
        <translation>Eine Tat, deren Antwort fehlt, lässt sich nicht wieder lesen; sieh im Buch nach, ob sie getan ist: %1</translation>
    </message>
    <message>
        <source>the answer got lost: whether %1 was done is not known. It is asked again when the book is back, and is done once; do not close this window before, nothing could be kept in %2</source>
        <translation>Die Antwort ging verloren: ob %1 getan ist, ist nicht bekannt. Es wird wieder gefragt, wenn das Buch da ist, und geschieht nur einmal; schließ dieses Fenster nicht vorher, in %2 ließ sich nichts aufbewahren</translation>
    </message>
    <message>
        <source>the answer got lost: whether %1 was done is not known. It is asked again when the book is back, and is done once</source>
        <translation>Die Antwort ging verloren: ob %1 getan ist, ist nicht bekannt. Es wird wieder gefragt, wenn das Buch da ist, und geschieht nur einmal</translation>
    </message>
    <message>
        <source>whether %1 was done is not known: %2 asked for it, logs in here and has it asked again</source>
        <translation>Ob %1 getan ist, ist nicht bekannt: %2 hat es verlangt, meldet sich hier an und lässt wieder fragen</translation>
    </message>
    <message>
        <source>whether %1 was done is not known: it was asked of another book by %2, and is asked again when this desk works with that one</source>
        <translation>Ob %1 getan ist, ist nicht bekannt: %2 hat es von einem anderen Buch verlangt; es wird wieder gefragt, wenn dieser Platz mit jenem arbeitet</translation>
    </message>
    <message>
        <source>The missing answer is here: %1</source>
        <translation>Die fehlende Antwort ist da: %1</translation>
    </message>
    <message>
        <source>%1, whose answer was missing, is refused: %2</source>
        <translation>%1, deren Antwort fehlte, ist abgelehnt: %2</translation>
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
    <message>
        <source>measured with %1</source>
        <translation>gemessen mit %1</translation>
    </message>
</context>
<context>
    <name>heatkeep::NextBest</name>
    <message>
        <source>what else would do</source>
        <translation>was auch ginge</translation>
    </message>
    <message>
        <source>Nothing else that is free holds its cuts.</source>
        <translation>Nichts anderes Freies fasst seine Schnitte.</translation>
    </message>
</context>
<context>
    <name>heatkeep::OpeningPage</name>
    <message>
        <source>The spreadsheet of what lies there</source>
        <translation>Die Tabelle dessen, was da liegt</translation>
    </message>
    <message>
        <source>Tables (*.xlsx *.ods *.csv)</source>
        <translation>Tabellen (*.xlsx *.ods *.csv)</translation>
    </message>
    <message>
        <source>No file chosen yet. Choose one, or drop it on this window: every row is shown here with what is wrong with it, and nothing is booked before you say so.</source>
        <translation>Noch keine Datei gewählt. Eine wählen oder auf dieses Fenster ziehen: jede Zeile steht dann hier mit dem, was an ihr falsch ist, und nichts wird gebucht, bevor Sie es sagen.</translation>
    </message>
    <message>
        <source>Book the opening balance</source>
        <translation>Anfangsbestand buchen</translation>
    </message>
    <message>
        <source>Choose the spreadsheet ...</source>
        <translation>Tabelle wählen ...</translation>
    </message>
    <message>
        <source>Enter the new names</source>
        <translation>Neue Namen eintragen</translation>
    </message>
    <message>
        <source>Row</source>
        <translation>Zeile</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Etikett</translation>
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
        <source>How many</source>
        <translation>Wie viele</translation>
    </message>
    <message>
        <source>Heat</source>
        <translation>Schmelze</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>What is wrong with it</source>
        <translation>Was daran falsch ist</translation>
    </message>
    <message>
        <source>%1; expected %2</source>
        <translation>%1; erwartet: %2</translation>
    </message>
    <message>
        <source>NOT BOOKED: %1</source>
        <translation>NICHT GEBUCHT: %1</translation>
    </message>
    <message>
        <source>One row a piece, or alike pieces: XLSX, ODS or CSV, the heads in the first row, in any order.
Needed: old_tag (its name in the old list), kind (bar or drop), grade, section (round 80, flat 60 x 20), length (6000, 3.2 m, 13 7/8 in).
Where known: heat (as it stands on the metal) with mill, condition, place, count, papers, owner, ends (how many are sawn), doubt, price.
A heat is never guessed: a piece without one stays a piece without one.</source>
        <translation>Eine Zeile je Stück oder für gleiche Stücke: XLSX, ODS oder CSV, die Überschriften in der ersten Zeile, in beliebiger Reihenfolge.
Nötig: old_tag (der Name in der alten Liste), kind (bar oder drop), grade, section (round 80, flat 60 x 20), length (6000, 3.2 m, 13 7/8 in).
Wo bekannt: heat (wie sie auf dem Metall steht) mit mill, condition, place, count, papers, owner, ends (wie viele gesägt sind), doubt, price.
Eine Schmelze wird nie geraten: ein Stück ohne bleibt ein Stück ohne.</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n row(s) can be booked, </source>
        <translation>
            <numerusform>%1: %n Zeile kann gebucht werden, </numerusform>
            <numerusform>%1: %n Zeilen können gebucht werden, </numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s), %1</source>
        <translation>
            <numerusform>%n Stück, %1</numerusform>
            <numerusform>%n Stück, %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source> and %n more</source>
        <translation>
            <numerusform> und %n weiterer</numerusform>
            <numerusform> und %n weitere</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n name(s) are not in the book yet: %1%2. F3 enters them: places as racks, makers, owners. A name that is misspelt is better put right in the file.</source>
        <translation>
            <numerusform>%n Name steht noch nicht im Buch: %1%2. F3 trägt ihn ein: Plätze als Regale, Hersteller, Eigentümer. Ein verschriebener Name wird besser in der Datei berichtigt.</numerusform>
            <numerusform>%n Namen stehen noch nicht im Buch: %1%2. F3 trägt sie ein: Plätze als Regale, Hersteller, Eigentümer. Ein verschriebener Name wird besser in der Datei berichtigt.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) are not booked: they stand in front, with what is wrong. Put them right in the file and choose it again, or book the others.</source>
        <translation>
            <numerusform>%n Zeile wird nicht gebucht: sie steht vorn, mit dem, was falsch ist. In der Datei berichtigen und neu wählen, oder die anderen buchen.</numerusform>
            <numerusform>%n Zeilen werden nicht gebucht: sie stehen vorn, mit dem, was falsch ist. In der Datei berichtigen und neu wählen, oder die anderen buchen.</numerusform>
        </translation>
    </message>
    <message>
        <source>every row is as it should be</source>
        <translation>jede Zeile ist, wie sie sein soll</translation>
    </message>
    <message>
        <source>Row %1: </source>
        <translation>Zeile %1: </translation>
    </message>
    <message>
        <source>nothing is wrong with it</source>
        <translation>daran ist nichts falsch</translation>
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
    <message>
        <source>what waits</source>
        <translation>was wartet</translation>
    </message>
    <message>
        <source>What the book says</source>
        <translation>Was das Buch sagt</translation>
    </message>
    <message>
        <source>hold it again</source>
        <translation>wieder sperren</translation>
    </message>
    <message>
        <source>CONTRADICTS: %1</source>
        <translation>WIDERSPRICHT: %1</translation>
    </message>
    <message>
        <source>File a certificate</source>
        <translation>Zeugnis ablegen</translation>
    </message>
    <message>
        <source>Accept the document</source>
        <translation>Dokument annehmen</translation>
    </message>
    <message>
        <source>certificates are filed by the stockroom clerk or by quality</source>
        <translation>Zeugnisse legt das Lager oder die Qualität ab</translation>
    </message>
    <message>
        <source>hold what document %1 is of</source>
        <translation>sperren, wozu Dokument %1 gehört</translation>
    </message>
    <message>
        <source>accepted by mistake</source>
        <translation>irrtümlich angenommen</translation>
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
    <message numerus="yes">
        <source>%n piece(s) left with note %1; Certificate package makes their papers</source>
        <translation>
            <numerusform>%n Stück ging mit Lieferschein %1; „Bescheinigungen“ erstellt seine Papiere</numerusform>
            <numerusform>%n Stück gingen mit Lieferschein %1; „Bescheinigungen“ erstellt ihre Papiere</numerusform>
        </translation>
    </message>
    <message>
        <source>the book cannot be reached: do it when it is back</source>
        <translation>Das Buch ist nicht erreichbar: tu es, wenn es wieder da ist</translation>
    </message>
    <message>
        <source>the hold on %1 %2</source>
        <translation>die Sperre auf %1 %2</translation>
    </message>
    <message>
        <source>the lifting of hold %1</source>
        <translation>das Aufheben der Sperre %1</translation>
    </message>
    <message>
        <source>the closing of conflict %1</source>
        <translation>das Schließen von Widerspruch %1</translation>
    </message>
    <message>
        <source>the shipment under note %1</source>
        <translation>der Versand mit Lieferschein %1</translation>
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
    <message>
        <source>what it lacks</source>
        <translation>was ihm fehlt</translation>
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
    <message>
        <source>Proposed, not promised yet</source>
        <translation>Vorgeschlagen, noch nicht zugesagt</translation>
    </message>
    <message>
        <source>Open lines</source>
        <translation>Offene Zeilen</translation>
    </message>
    <message>
        <source>What else would do. Drag one onto a bar, or F6</source>
        <translation>Was auch ginge. Eines auf eine Stange ziehen, oder F6</translation>
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
    <name>heatkeep::PutAwayPage</name>
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
        <source>The place alone: all of them. A tag, then the place: that one.</source>
        <translation>Nur der Platz: alle. Eine Kennung, dann der Platz: nur diese.</translation>
    </message>
    <message>
        <source>%1: now its place</source>
        <translation>%1: jetzt den Platz</translation>
    </message>
    <message>
        <source>The strap is cut</source>
        <translation>Das Band ist geschnitten</translation>
    </message>
    <message>
        <source>Cutting a strap lets go what is under tension and bars roll: chock first, stand at the end, never in line with it.</source>
        <translation>Ein Band zu schneiden löst, was unter Spannung steht, und Stangen rollen: erst verkeilen, am Ende stehen, nie in seiner Richtung.</translation>
    </message>
    <message>
        <source>Strapped as %1: it goes as one. Cut the strap first where bars go to several places.</source>
        <translation>Gebündelt als %1: geht als eines. Schneide zuerst das Band, wenn Stangen an mehrere Plätze gehen.</translation>
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
        <source>Rack</source>
        <translation>Regal</translation>
    </message>
    <message>
        <source>being worked out ...</source>
        <translation>wird ermittelt ...</translation>
    </message>
    <message>
        <source>Rack and drops</source>
        <translation>Regal und Reststücke</translation>
    </message>
    <message>
        <source>whole rack</source>
        <translation>ganzes Regal</translation>
    </message>
    <message>
        <source>Lengths</source>
        <translation>Längen</translation>
    </message>
    <message>
        <source>Worth and age</source>
        <translation>Wert und Alter</translation>
    </message>
    <message>
        <source>Where it lies</source>
        <translation>Wo es liegt</translation>
    </message>
    <message>
        <source>Yield</source>
        <translation>Ausbeute</translation>
    </message>
    <message>
        <source>What nobody used</source>
        <translation>Was niemand brauchte</translation>
    </message>
    <message>
        <source>Drops</source>
        <translation>Reststücke</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Tage</translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s). Enter: papers. Ctrl+E: keep as CSV</source>
        <translation>
            <numerusform>%n Stück. Enter: Papiere. Strg+E: als CSV behalten</numerusform>
            <numerusform>%n Stück. Enter: Papiere. Strg+E: als CSV behalten</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing of it lay unused for a year.</source>
        <translation>Nichts davon lag ein Jahr lang ungenutzt.</translation>
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
        <translation>Bestellung %1, Pos. %2: zählen, Schmelze lesen</translation>
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
    <message>
        <source>Tag</source>
        <translation>Etikett</translation>
    </message>
    <message>
        <source>Heat</source>
        <translation>Schmelze</translation>
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
        <source>Place</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>To be heeded</source>
        <translation>Zu beachten</translation>
    </message>
    <message>
        <source>at the gate</source>
        <translation>am Tor</translation>
    </message>
    <message>
        <source>note %1 of %2</source>
        <translation>Lieferschein %1 von %2</translation>
    </message>
    <message>
        <source>Read from the metal</source>
        <translation>Vom Metall gelesen</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>Bars</source>
        <translation>Stangen</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Weighed</source>
        <translation>Gewogen</translation>
    </message>
    <message>
        <source>not ordered</source>
        <translation>nicht bestellt</translation>
    </message>
    <message>
        <source>At the gate, to be put away</source>
        <translation>Am Tor, einzulagern</translation>
    </message>
    <message>
        <source>What is awaited</source>
        <translation>Was erwartet wird</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>measured with %1</source>
        <translation>gemessen mit %1</translation>
    </message>
    <message>
        <source>due</source>
        <translation>fällig</translation>
    </message>
</context>
<context>
    <name>heatkeep::ReceivingWork</name>
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
    <message>
        <source>the book is still at the deed before; press again</source>
        <translation>Das Buch ist noch bei der Tat davor; drück noch einmal</translation>
    </message>
    <message>
        <source>bundle %1 is open: every bar is put away by itself or all to one place</source>
        <translation>Bund %1 ist offen: jede Stange wird einzeln eingelagert oder alle auf einen Platz</translation>
    </message>
    <message>
        <source>the receipt of note %1</source>
        <translation>der Eingang des Lieferscheins %1</translation>
    </message>
    <message>
        <source>line %1: %2</source>
        <translation>Zeile %1: %2</translation>
    </message>
    <message>
        <source>the reversing of note %1</source>
        <translation>die Umkehrung des Lieferscheins %1</translation>
    </message>
    <message numerus="yes">
        <source>the putting away of %n piece(s) at %1</source>
        <translation>
            <numerusform>das Einlagern von %n Stück auf %1</numerusform>
            <numerusform>das Einlagern von %n Stück auf %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>bundle %1, %n bar(s), lies at %2</source>
        <translation>
            <numerusform>Bund %1, %n Stange, liegt auf %2</numerusform>
            <numerusform>Bund %1, %n Stangen, liegt auf %2</numerusform>
        </translation>
    </message>
    <message>
        <source>the opening of bundle %1</source>
        <translation>das Öffnen von Bund %1</translation>
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
        <translation>NEUES MASS</translation>
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
        <translation>SCHLECHT</translation>
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
    <message>
        <source>What waits</source>
        <translation>Was wartet</translation>
    </message>
    <message>
        <source>ANOTHER</source>
        <translation>ANDERES</translation>
    </message>
    <message>
        <source>SHIFT ENDS</source>
        <translation>SCHICHTENDE</translation>
    </message>
    <message>
        <source>Lengths are read with %1</source>
        <translation>Längen werden abgelesen mit %1</translation>
    </message>
    <message>
        <source>%1 is a place: nothing waits for one now</source>
        <translation>%1 ist ein Platz: jetzt wartet nichts auf einen</translation>
    </message>
    <message>
        <source>%1 is no place of this shop: scan the label of the place where %2 is put</source>
        <translation>%1 ist kein Platz dieses Betriebs: scanne das Etikett des Platzes, an den %2 kommt</translation>
    </message>
    <message>
        <source>a tape that is not said, ±%1</source>
        <translation>einem nicht genannten Maßband, ±%1</translation>
    </message>
    <message>
        <source>TAKE OVER</source>
        <translation>ÜBERNEHMEN</translation>
    </message>
    <message>
        <source>Read with %1</source>
        <translation>Abgelesen mit %1</translation>
    </message>
    <message>
        <source>Sheets as of %1</source>
        <translation>Blätter von %1</translation>
    </message>
    <message>
        <source>: go on with them, what you do is kept here</source>
        <translation>: mach damit weiter, was du tust, wird hier aufbewahrt</translation>
    </message>
    <message>
        <source>%1 handed over: &quot;%2&quot;. F9 takes the saw over</source>
        <translation>%1 hat übergeben: „%2“. F9 übernimmt die Säge</translation>
    </message>
    <message>
        <source>LATE: was due %1</source>
        <translation>SPÄT: war fällig %1</translation>
    </message>
    <message>
        <source>due today</source>
        <translation>heute fällig</translation>
    </message>
    <message>
        <source>How do things stand at saw %1? The next one reads it.</source>
        <translation>Wie steht es an Säge %1? Der Nächste liest es.</translation>
    </message>
    <message>
        <source>How do things stand, and why is the rest open? The next one reads it.</source>
        <translation>Wie steht es, und warum ist der Rest offen? Der Nächste liest es.</translation>
    </message>
    <message>
        <source>How many good pieces for %1 are cut so far, of %2?</source>
        <translation>Wie viele gute Stücke für %1 sind bisher gesägt, von %2?</translation>
    </message>
    <message>
        <source>Scan its place; Enter: where the piece came from. Longer than its label says: FEWER.</source>
        <translation>Den Platz scannen; Enter: wo das Stück herkam. Länger, als das Etikett sagt: WENIGER.</translation>
    </message>
    <message>
        <source>How many strokes were confirmed and not made? %1 is that much longer.</source>
        <translation>Wie viele Schnitte wurden bestätigt und nicht gemacht? %1 ist um so viel länger.</translation>
    </message>
    <message>
        <source>fewer cut than confirmed</source>
        <translation>weniger gesägt als bestätigt</translation>
    </message>
    <message>
        <source>expected a number from %1 to %2</source>
        <translation>erwartet wird eine Zahl von %1 bis %2</translation>
    </message>
    <message>
        <source>expected a number from %1 on</source>
        <translation>erwartet wird eine Zahl ab %1</translation>
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
    <message>
        <source>%1, whose answer was missing, is refused: %2</source>
        <translation>%1, deren Antwort fehlte, ist abgelehnt: %2</translation>
    </message>
    <message>
        <source>Plan %1 came in and goes first, due %2: after the piece in the saw, %3 at %4</source>
        <translation>Plan %1 kam hinzu und geht vor, fällig %2: nach dem Stück in der Säge %3 auf %4</translation>
    </message>
    <message>
        <source>Plan %1 came in and goes first, due %2: now %3 at %4</source>
        <translation>Plan %1 kam hinzu und geht vor, fällig %2: jetzt %3 auf %4</translation>
    </message>
    <message>
        <source>the sheets cannot be kept for a start without the book: %1</source>
        <translation>Die Blätter können nicht für einen Start ohne das Buch aufbewahrt werden: %1</translation>
    </message>
    <message>
        <source>the sheets kept here are of saw %1, and this desk stands at saw %2: they are not used</source>
        <translation>Die hier aufbewahrten Blätter sind von Säge %1, und dieser Platz steht an Säge %2: sie werden nicht benutzt</translation>
    </message>
    <message>
        <source>the sheets kept here are not used: %1</source>
        <translation>Die hier aufbewahrten Blätter werden nicht benutzt: %1</translation>
    </message>
    <message>
        <source>. Write %1 and its heat on what is left: it gets its own tag when the book is back</source>
        <translation>. Schreib %1 und die Schmelze auf den Rest: er bekommt seine eigene Nummer, wenn das Buch wieder da ist</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 auf %2</translation>
    </message>
    <message>
        <source>%1 is on no sheet of saw %2: nothing is planned for it here</source>
        <translation>%1 steht auf keinem Blatt von Säge %2: hier ist nichts dafür geplant</translation>
    </message>
    <message>
        <source>the sheets are not read yet; scan again</source>
        <translation>Die Blätter sind noch nicht gelesen; noch einmal scannen</translation>
    </message>
    <message>
        <source>the fetching of %1</source>
        <translation>das Holen von %1</translation>
    </message>
    <message>
        <source>. In the saw is %1</source>
        <translation>. In der Säge ist %1</translation>
    </message>
    <message>
        <source>. On this sheet it is %1 at %2</source>
        <translation>. Auf diesem Blatt ist es %1 auf %2</translation>
    </message>
    <message>
        <source>the cut of %1</source>
        <translation>das Sägen von %1</translation>
    </message>
    <message>
        <source>: write that and the heat on it, its label prints when the book is back</source>
        <translation>: schreib das und die Schmelze darauf, das Etikett wird gedruckt, wenn das Buch wieder da ist</translation>
    </message>
    <message>
        <source>the putting away of %1</source>
        <translation>das Einlagern von %1</translation>
    </message>
    <message>
        <source>saw %1 is handed over: who comes takes it over here</source>
        <translation>Säge %1 ist übergeben: wer kommt, übernimmt sie hier</translation>
    </message>
    <message>
        <source>saw %1 is yours: %2 wrote &quot;%3&quot;</source>
        <translation>Säge %1 gehört dir: %2 schrieb „%3“</translation>
    </message>
    <message>
        <source>what was cut of %1</source>
        <translation>was von %1 gesägt wurde</translation>
    </message>
    <message>
        <source>the handing over of saw %1</source>
        <translation>die Übergabe von Säge %1</translation>
    </message>
    <message>
        <source>the taking over of saw %1</source>
        <translation>die Übernahme von Säge %1</translation>
    </message>
    <message>
        <source>the book cannot be reached: go on cutting, the saw is taken over when it is back</source>
        <translation>Das Buch ist nicht erreichbar: säg weiter, die Säge wird übernommen, wenn es wieder da ist</translation>
    </message>
    <message>
        <source>the book cannot be reached: write on %1 how long it is, and take back later what was not cut</source>
        <translation>das Buch ist nicht zu erreichen: auf %1 schreiben, wie lang es ist, und später zurücknehmen, was nicht gesägt wurde</translation>
    </message>
    <message>
        <source>what was not cut of %1</source>
        <translation>was von %1 nicht gesägt wurde</translation>
    </message>
    <message>
        <source>taken back: %1 is %2 long, and gets a label that says so</source>
        <translation>zurückgenommen: %1 ist %2 lang und bekommt ein Etikett, das es sagt</translation>
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
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Size of all that is shown (from the next start)</source>
        <translation>Größe von allem, was gezeigt wird (ab dem nächsten Start)</translation>
    </message>
    <message>
        <source>Lengths are read with</source>
        <translation>Längen werden abgelesen mit</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>nicht genannt</translation>
    </message>
    <message>
        <source>Choose ...</source>
        <translation>Wählen ...</translation>
    </message>
    <message>
        <source>choose: %1</source>
        <translation>wählen: %1</translation>
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
        <translation>Werkstoffe: mit ihren Grenzwerten</translation>
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
    <message>
        <source>heatkeep grades add FILE
heatkeep grades limits

Grades by their standard&apos;s designation and number, with density. The limits that come with the program say their source; a new private book has them.</source>
        <translation>heatkeep grades add DATEI
heatkeep grades limits

Werkstoffe mit Bezeichnung und Nummer ihrer Norm, mit Dichte. Die mitgelieferten Grenzwerte nennen ihre Quelle; ein neues eigenes Buch hat sie.</translation>
    </message>
    <message>
        <source>F2 brings in a spreadsheet of bars and drops, one row each or alike: tag, grade, section, length, and what is known of heat, place and owner. Every row is shown with what is wrong with it before anything is booked.

At the command line: heatkeep opening bars.xlsx</source>
        <translation>F2 liest eine Tabelle von Stangen und Reststücken ein, eine Zeile je Stück oder für gleiche: Etikett, Werkstoff, Querschnitt, Länge, und was von Schmelze, Platz und Eigentümer bekannt ist. Jede Zeile wird mit ihren Fehlern gezeigt, bevor etwas gebucht wird.

An der Befehlszeile: heatkeep opening stangen.xlsx</translation>
    </message>
    <message>
        <source>Back to the steps</source>
        <translation>Zurück zu den Schritten</translation>
    </message>
    <message>
        <source>the demo is being made: %1</source>
        <translation>die Vorführung wird angelegt: %1</translation>
    </message>
    <message>
        <source>Look around in the demo shop</source>
        <translation>In der Vorführung umsehen</translation>
    </message>
    <message>
        <source>Bring in what lies there</source>
        <translation>Bestand hereinholen</translation>
    </message>
    <message>
        <source>A new book</source>
        <translation>Ein neues Buch</translation>
    </message>
    <message>
        <source>The demo: Ostrel Shaftworks, an invented shop</source>
        <translation>Die Vorführung: Ostrel Shaftworks, ein erfundener Betrieb</translation>
    </message>
    <message>
        <source>An empty book of your own</source>
        <translation>Ein leeres eigenes Buch</translation>
    </message>
    <message>
        <source>Everything in it is invented. What you do here changes only the demo. Your own book is beside it, as you left it.</source>
        <translation>Alles darin ist erfunden. Was Sie hier tun, ändert nur die Vorführung. Ihr eigenes Buch liegt daneben, wie Sie es verlassen haben.</translation>
    </message>
    <message>
        <source>The demo is a shop with 900 bars and drops, their certificates and three cut lists, in a book of its own beside this one: it takes about a minute to make and changes nothing here.
Or begin with your own metal: a spreadsheet of what lies there becomes the opening balance.</source>
        <translation>Die Vorführung ist ein Betrieb mit 900 Stangen und Reststücken, ihren Zeugnissen und drei Schnittlisten, in einem eigenen Buch neben diesem: sie braucht etwa eine Minute und ändert hier nichts.
Oder mit eigenem Material beginnen: eine Tabelle dessen, was da liegt, wird der Anfangsbestand.</translation>
    </message>
    <message>
        <source>Back to your own book</source>
        <translation>Zurück zum eigenen Buch</translation>
    </message>
</context>
<context>
    <name>heatkeep::StartWork</name>
    <message>
        <source>the demo is not made: %1 - choose it again and it goes on where it was</source>
        <translation>die Vorführung ist nicht angelegt: %1 - noch einmal wählen, es geht weiter, wo es war</translation>
    </message>
    <message>
        <source>the names are entered; the file is looked at again</source>
        <translation>die Namen sind eingetragen; die Datei wird noch einmal angesehen</translation>
    </message>
    <message>
        <source>this file was booked before: nothing was added</source>
        <translation>diese Datei wurde schon gebucht: nichts kam hinzu</translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s) are in the book, each with its tag; their labels wait to be printed</source>
        <translation>
            <numerusform>%n Stück steht im Buch, mit seinem Etikett; das Etikett wartet auf den Druck</numerusform>
            <numerusform>%n Stück stehen im Buch, jedes mit seinem Etikett; die Etiketten warten auf den Druck</numerusform>
        </translation>
    </message>
    <message>
        <source>the answer got lost: do it again when the book is back; what is in the book already is not added twice</source>
        <translation>Die Antwort ging verloren: bitte noch einmal, wenn das Buch wieder da ist; was schon im Buch steht, kommt nicht zweimal hinzu</translation>
    </message>
</context>
<context>
    <name>heatkeep::StopFigure</name>
    <message>
        <source>stop at %1</source>
        <translation>Anschlag auf %1</translation>
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
