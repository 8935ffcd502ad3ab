<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>correcting</name>
    <message>
        <source>Correct the row of the &amp;reference…</source>
        <translation>Zeile der &amp;Referenz berichtigen …</translation>
    </message>
    <message>
        <source>Correct the row of the &amp;candidate…</source>
        <translation>Zeile des &amp;Kandidaten berichtigen …</translation>
    </message>
    <message>
        <source>The file of corrections was changed and the comparison is made anew: %1</source>
        <translation>Die Datei der Berichtigungen wurde geändert, der Vergleich wird neu gemacht: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n correction(s) kept with this pair are not applied.</source>
        <translation>
            <numerusform>%n Berichtigung, die mit diesem Paar aufbewahrt ist, ist nicht angewandt.</numerusform>
            <numerusform>%n Berichtigungen, die mit diesem Paar aufbewahrt sind, sind nicht angewandt.</numerusform>
        </translation>
    </message>
    <message>
        <source>Apply</source>
        <translation>Anwenden</translation>
    </message>
</context>
<context>
    <name>exports</name>
    <message>
        <source>HTML report</source>
        <translation>HTML-Bericht</translation>
    </message>
    <message>
        <source>PDF report</source>
        <translation>PDF-Bericht</translation>
    </message>
    <message>
        <source>Text summary</source>
        <translation>Textzusammenfassung</translation>
    </message>
    <message>
        <source>All findings as JSON</source>
        <translation>Alle Befunde als JSON</translation>
    </message>
    <message>
        <source>All parameters as CSV</source>
        <translation>Alle Parameter als CSV</translation>
    </message>
    <message>
        <source>; choose another place, or make room</source>
        <translation>; wählen Sie einen anderen Ort, oder schaffen Sie Platz</translation>
    </message>
</context>
<context>
    <name>help</name>
    <message>
        <source>open a pair, choose variants, cell profile and circuit</source>
        <translation>ein Paar öffnen, Varianten, Zellprofil und Schaltung wählen</translation>
    </message>
    <message>
        <source>exchange reference and candidate</source>
        <translation>Referenz und Kandidat tauschen</translation>
    </message>
    <message>
        <source>read both documents again</source>
        <translation>beide Dokumente neu lesen</translation>
    </message>
    <message>
        <source>cancel reading</source>
        <translation>das Lesen abbrechen</translation>
    </message>
    <message>
        <source>go to a page of the desk</source>
        <translation>zu einer Seite des Tisches gehen</translation>
    </message>
    <message>
        <source>next and previous finding, from anywhere</source>
        <translation>nächster und voriger Befund, von überall</translation>
    </message>
    <message>
        <source>show the chosen row on the pages of both documents</source>
        <translation>die gewählte Zeile auf den Seiten beider Dokumente zeigen</translation>
    </message>
    <message>
        <source>decide on the finding; Tab goes on to the remark</source>
        <translation>über den Befund entscheiden; Tab führt zur Bemerkung</translation>
    </message>
    <message>
        <source>find in the list or on the page</source>
        <translation>in der Liste oder auf der Seite suchen</translation>
    </message>
    <message>
        <source>show all findings again</source>
        <translation>wieder alle Befunde zeigen</translation>
    </message>
    <message>
        <source>go round: sections, list, evidence, decision</source>
        <translation>reihum: Abschnitte, Liste, Belege, Entscheidung</translation>
    </message>
    <message>
        <source>export a report</source>
        <translation>einen Bericht ausgeben</translation>
    </message>
    <message>
        <source>print the report</source>
        <translation>den Bericht drucken</translation>
    </message>
    <message>
        <source>copy the chosen rows or text</source>
        <translation>die gewählten Zeilen oder den Text kopieren</translation>
    </message>
    <message>
        <source>whole screen</source>
        <translation>ganzer Bildschirm</translation>
    </message>
    <message>
        <source>quit</source>
        <translation>beenden</translation>
    </message>
    <message>
        <source>Working at the desk</source>
        <translation>Arbeiten am Tisch</translation>
    </message>
    <message>
        <source>What stands where</source>
        <translation>Was wo steht</translation>
    </message>
    <message>
        <source>At the top: both documents, the verdict, what was covered, and the counts by severity. At the left: the sections of both documents as they were paired; choosing one lists its findings. In the middle: the findings, gravest first. Below: where the chosen finding stands on both pages, what it means, and your decision.</source>
        <translation>Oben: beide Dokumente, das Urteil, was erfasst wurde, und die Zahlen nach Schwere. Links: die Abschnitte beider Dokumente, wie sie gepaart wurden; wer einen wählt, sieht dessen Befunde. In der Mitte: die Befunde, die schwersten zuerst. Unten: wo der gewählte Befund auf beiden Seiten steht, was er bedeutet, und Ihre Entscheidung.</translation>
    </message>
    <message>
        <source>Severity</source>
        <translation>Schwere</translation>
    </message>
    <message>
        <source>▲ hazard: could contribute to fire, venting or burns, or defeat a protective function. ■ function: the circuit may not work, may trip, may not recover. ● margin: works, with another margin. ▬ note: worth knowing. · editorial: no change of meaning. Hazard findings stay listed whatever the filter; what is hidden is counted.</source>
        <translation>▲ Gefahr: kann zu Brand, Gasaustritt oder Verbrennungen beitragen oder eine Schutzfunktion aufheben. ■ Funktion: die Schaltung arbeitet womöglich nicht, löst aus oder erholt sich nicht. ● Reserve: arbeitet, mit anderer Reserve. ▬ Hinweis: wissenswert. · redaktionell: Sinn unverändert. Gefahrenbefunde bleiben trotz jedem Filter in der Liste; was verborgen ist, wird gezählt.</translation>
    </message>
    <message>
        <source>The limit strip</source>
        <translation>Der Grenzstreifen</translation>
    </message>
    <message>
        <source>Both intervals on one axis: the reference as an open bracket above, the candidate as a solid bar below, typical values as ticks. A hatched end is a bound that is not stated. A flag is a limit of the cell profile and points to the side that holds. The arrow points to the hazardous side.</source>
        <translation>Beide Bereiche auf einer Achse: die Referenz oben als offene Klammer, der Kandidat unten als voller Balken, typische Werte als Striche. Ein schraffiertes Ende ist eine Grenze, die nicht angegeben ist. Eine Fahne ist eine Grenze des Zellprofils und zeigt zur zulässigen Seite. Der Pfeil zeigt zur gefährlichen Seite.</translation>
    </message>
    <message>
        <source>Decisions</source>
        <translation>Entscheidungen</translation>
    </message>
    <message>
        <source>Before you rely on it</source>
        <translation>Bevor Sie sich darauf verlassen</translation>
    </message>
    <message>
        <source>The comparison covers printed documents only. It is not a test and not an approval. The cell maker&apos;s limits, local codes and licensed practice come first. Look at the page before you rely on a value.</source>
        <translation>Der Vergleich umfasst nur gedruckte Dokumente. Er ist keine Prüfung und keine Freigabe. Die Grenzen des Zellherstellers, örtliche Vorschriften und zugelassene Fachpraxis gehen vor. Sehen Sie auf die Seite, bevor Sie sich auf einen Wert verlassen.</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>&lt;h3&gt;Standin desk %1&lt;/h3&gt;&lt;p&gt;Compares the datasheets of a reference part and a candidate part.&lt;/p&gt;&lt;p&gt;Licence: GPL-3.0-or-later. There is no warranty.&lt;/p&gt;&lt;p&gt;Made with Qt %2 (LGPL-3.0), Poppler (GPL-2.0-or-later), ICU (Unicode-3.0), Pango and Cairo (LGPL-2.1), fmt, nlohmann-json, CLI11, dtl, tl-expected and OpenSSL.&lt;/p&gt;&lt;p&gt;The comparison covers printed documents only. It is not a test and not an approval.&lt;/p&gt;</source>
        <translation>&lt;h3&gt;Standin-Tisch %1&lt;/h3&gt;&lt;p&gt;Vergleicht die Datenblätter eines Referenzbauteils und eines Ersatzkandidaten.&lt;/p&gt;&lt;p&gt;Lizenz: GPL-3.0-or-later. Ohne jede Gewährleistung.&lt;/p&gt;&lt;p&gt;Gebaut mit Qt %2 (LGPL-3.0), Poppler (GPL-2.0-or-later), ICU (Unicode-3.0), Pango und Cairo (LGPL-2.1), fmt, nlohmann-json, CLI11, dtl, tl-expected und OpenSSL.&lt;/p&gt;&lt;p&gt;Der Vergleich umfasst nur gedruckte Dokumente. Er ist keine Prüfung und keine Freigabe.&lt;/p&gt;</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Hilfe</translation>
    </message>
    <message>
        <source>About the desk</source>
        <translation>Über den Tisch</translation>
    </message>
    <message>
        <source>undo and redo decisions and corrections</source>
        <translation>Entscheidungen und Berichtigungen zurücknehmen und wiederholen</translation>
    </message>
    <message>
        <source>in the parameters: correct the chosen row of the reference, of the candidate</source>
        <translation>in den Parametern: die gewählte Zeile der Referenz, des Kandidaten berichtigen</translation>
    </message>
    <message>
        <source>on the pages: next and previous page</source>
        <translation>auf den Seiten: nächste und vorige Seite</translation>
    </message>
    <message>
        <source>on the pages: larger, smaller, fit the width, whole page, turn</source>
        <translation>auf den Seiten: größer, kleiner, Breite einpassen, ganze Seite, drehen</translation>
    </message>
    <message>
        <source>in the field above the pages: next and previous place that was found</source>
        <translation>im Feld über den Seiten: nächste und vorige Fundstelle</translation>
    </message>
    <message>
        <source>The pages, and what was misread</source>
        <translation>Die Seiten, und was falsch gelesen wurde</translation>
    </message>
    <message>
        <source>The places of findings are framed on the pages; those that change no meaning have a bar beside them. Click on a place to see what was read there; its partner in the other document comes into view. Drag to choose text. A row that was misread is corrected from there or from the list of parameters: the correction is written to a file that reports name, the comparison follows, and undo takes both back.</source>
        <translation>Die Stellen der Befunde sind auf den Seiten umrahmt; neben denen, die keinen Sinn ändern, steht ein Balken. Ein Klick auf eine Stelle zeigt, was dort gelesen wurde; ihr Gegenstück im anderen Dokument kommt in den Blick. Ziehen wählt Text. Eine falsch gelesene Zeile wird von dort oder aus der Liste der Parameter berichtigt: Die Berichtigung wird in eine Datei geschrieben, die Berichte nennen, der Vergleich folgt, und Zurücknehmen macht beides ungeschehen.</translation>
    </message>
    <message>
        <source>A decision and its remark are kept with this pair of documents on this computer. They are bound to the bytes of both files: a changed file starts without decisions. What quality assurance signs is kept on the page Record.</source>
        <translation>Eine Entscheidung und ihre Bemerkung werden mit diesem Paar von Dokumenten auf diesem Rechner aufbewahrt. Sie sind an die Bytes beider Dateien gebunden: eine geänderte Datei beginnt ohne Entscheidungen. Was die Qualitätssicherung unterschreibt, steht auf der Seite Protokoll.</translation>
    </message>
    <message>
        <source>The record</source>
        <translation>Das Protokoll</translation>
    </message>
    <message>
        <source>Make your key once, or choose it. Open a new record of the pair, or take up one that was begun; it is a file of its own, with every line that needs a decision. Choose a line, decide, give the reason, enter it. A hazard needs two persons: the second confirms with another key. When nothing is open, author and approver sign. Check tells whether the record holds and what is open or lapsed. Nothing that was entered can be taken back; enter another decision instead.</source>
        <translation>Machen Sie einmal Ihren Schlüssel, oder wählen Sie ihn. Eröffnen Sie ein neues Protokoll des Paares oder nehmen Sie ein begonnenes auf; es ist eine eigene Datei mit jeder Zeile, die eine Entscheidung braucht. Wählen Sie eine Zeile, entscheiden Sie, nennen Sie den Grund, tragen Sie ein. Eine Gefahr braucht zwei Personen: die zweite bestätigt mit einem anderen Schlüssel. Wenn nichts offen ist, unterschreiben Verfasser und Freigebender. „Prüfen“ sagt, ob das Protokoll hält und was offen oder hinfällig ist. Nichts Eingetragenes lässt sich zurücknehmen; tragen Sie eine andere Entscheidung ein.</translation>
    </message>
</context>
<context>
    <name>main</name>
    <message>
        <source>Compares the datasheets of a reference part and a candidate part in a window.</source>
        <translation>Vergleicht die Datenblätter eines Referenzbauteils und eines Ersatzkandidaten in einem Fenster.</translation>
    </message>
    <message>
        <source>datasheet of the part fitted or specified today</source>
        <translation>Datenblatt des heute verbauten oder vorgeschriebenen Bauteils</translation>
    </message>
    <message>
        <source>datasheet of the suspected equivalent</source>
        <translation>Datenblatt des vermuteten Ersatzes</translation>
    </message>
    <message>
        <source>cell profile</source>
        <translation>Zellprofil</translation>
    </message>
    <message>
        <source>circuit values</source>
        <translation>Schaltungswerte</translation>
    </message>
    <message>
        <source>system, light or dark, this time</source>
        <translation>system, light oder dark, nur dieses Mal</translation>
    </message>
    <message>
        <source>save a picture of the window and quit</source>
        <translation>ein Bild des Fensters speichern und enden</translation>
    </message>
    <message>
        <source>size of the window in pixels</source>
        <translation>Größe des Fensters in Pixeln</translation>
    </message>
    <message>
        <source>page of the desk to show, from 1</source>
        <translation>Seite des Tisches, ab 1</translation>
    </message>
</context>
<context>
    <name>places</name>
    <message>
        <source>parameter row</source>
        <translation>Parameterzeile</translation>
    </message>
    <message>
        <source>cell of a table</source>
        <translation>Tabellenzelle</translation>
    </message>
    <message>
        <source>sentence</source>
        <translation>Satz</translation>
    </message>
    <message>
        <source>heading</source>
        <translation>Überschrift</translation>
    </message>
    <message>
        <source>figure</source>
        <translation>Abbildung</translation>
    </message>
    <message>
        <source>lettering of a figure</source>
        <translation>Beschriftung einer Abbildung</translation>
    </message>
    <message>
        <source>running head or foot</source>
        <translation>Kopf- oder Fußzeile</translation>
    </message>
</context>
<context>
    <name>printing</name>
    <message>
        <source>cannot be printed: the printer did not start; check it and try again</source>
        <translation>kann nicht gedruckt werden: der Drucker ist nicht angelaufen; prüfen und noch einmal versuchen</translation>
    </message>
</context>
<context>
    <name>standin::ui::AskingDialog</name>
    <message>
        <source>Records (*.record);;All files (*)</source>
        <translation>Protokolle (*.record);;Alle Dateien (*)</translation>
    </message>
</context>
<context>
    <name>standin::ui::CellModel</name>
    <message>
        <source>✓ holds</source>
        <translation>✓ erfüllt</translation>
    </message>
    <message>
        <source>✗ violated</source>
        <translation>✗ verletzt</translation>
    </message>
    <message>
        <source>? open</source>
        <translation>? offen</translation>
    </message>
    <message>
        <source>Check or quantity</source>
        <translation>Prüfung oder Größe</translation>
    </message>
    <message>
        <source>Limit or formula</source>
        <translation>Grenze oder Formel</translation>
    </message>
    <message>
        <source>Reference</source>
        <translation>Referenz</translation>
    </message>
    <message>
        <source>Candidate</source>
        <translation>Kandidat</translation>
    </message>
    <message>
        <source>Outcome</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>What is missing or violated</source>
        <translation>Was fehlt oder verletzt ist</translation>
    </message>
    <message>
        <source>No cell profile was given: neither part was checked against a cell. Choose one under File, Open pair.</source>
        <translation>Kein Zellprofil angegeben: keines der Bauteile wurde gegen eine Zelle geprüft. Wählen Sie eines unter Datei, Paar öffnen.</translation>
    </message>
    <message>
        <source>Cell profile: %1</source>
        <translation>Zellprofil: %1</translation>
    </message>
    <message>
        <source>; circuit: %1</source>
        <translation>; Schaltung: %1</translation>
    </message>
</context>
<context>
    <name>standin::ui::CellPage</name>
    <message>
        <source>Checks against the cell</source>
        <translation>Prüfungen gegen die Zelle</translation>
    </message>
</context>
<context>
    <name>standin::ui::CorrectionDialog</name>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>&amp;Symbol</source>
        <translation>&amp;Symbol</translation>
    </message>
    <message>
        <source>&amp;Condition</source>
        <translation>&amp;Bedingung</translation>
    </message>
    <message>
        <source>M&amp;in</source>
        <translation>M&amp;in</translation>
    </message>
    <message>
        <source>&amp;Typ</source>
        <translation>&amp;Typ</translation>
    </message>
    <message>
        <source>M&amp;ax</source>
        <translation>M&amp;ax</translation>
    </message>
    <message>
        <source>&amp;Unit</source>
        <translation>&amp;Einheit</translation>
    </message>
    <message>
        <source>This is &amp;no parameter</source>
        <translation>Das ist &amp;kein Parameter</translation>
    </message>
    <message>
        <source>Correct a row that was misread</source>
        <translation>Eine falsch gelesene Zeile berichtigen</translation>
    </message>
    <message>
        <source>Put in a row that was not read</source>
        <translation>Eine nicht gelesene Zeile einfügen</translation>
    </message>
    <message>
        <source>%1, page %2</source>
        <translation>%1, Seite %2</translation>
    </message>
    <message>
        <source>Read: %1</source>
        <translation>Gelesen: %1</translation>
    </message>
    <message>
        <source>Write what is printed on the page; leave empty what has nothing printed.</source>
        <translation>Schreiben Sie, was auf der Seite gedruckt ist; leer bleibt, wo nichts gedruckt ist.</translation>
    </message>
    <message>
        <source>Corrected &amp;by</source>
        <translation>Berichtigt &amp;von</translation>
    </message>
    <message>
        <source>for example: the 3 was read as an 8</source>
        <translation>zum Beispiel: Die 3 wurde als 8 gelesen</translation>
    </message>
    <message>
        <source>&amp;Reason</source>
        <translation>&amp;Grund</translation>
    </message>
    <message>
        <source>Written to %1</source>
        <translation>Wird geschrieben nach %1</translation>
    </message>
    <message>
        <source>Correct and compare anew</source>
        <translation>Berichtigen und neu vergleichen</translation>
    </message>
    <message>
        <source>Nothing differs yet from what was read.</source>
        <translation>Noch weicht nichts vom Gelesenen ab.</translation>
    </message>
    <message>
        <source>A name or a symbol is needed.</source>
        <translation>Ein Name oder ein Symbol wird gebraucht.</translation>
    </message>
    <message>
        <source>A value is needed: min, typ or max.</source>
        <translation>Ein Wert wird gebraucht: Min, Typ oder Max.</translation>
    </message>
    <message>
        <source>Who corrects it is needed: it stands in every report.</source>
        <translation>Wer berichtigt, wird gebraucht: Es steht in jedem Bericht.</translation>
    </message>
    <message>
        <source>A reason is needed: it stands in every report.</source>
        <translation>Ein Grund wird gebraucht: Er steht in jedem Bericht.</translation>
    </message>
</context>
<context>
    <name>standin::ui::Corrections</name>
    <message>
        <source>the row is no longer there</source>
        <translation>die Zeile ist nicht mehr da</translation>
    </message>
    <message>
        <source>Not corrected. %1</source>
        <translation>Nicht berichtigt. %1</translation>
    </message>
    <message>
        <source>a row put in</source>
        <translation>eine eingefügte Zeile</translation>
    </message>
    <message>
        <source>correction of %1</source>
        <translation>Berichtigung von %1</translation>
    </message>
    <message>
        <source>The file of corrections was changed by somebody else and is left as it is: %1</source>
        <translation>Die Datei der Berichtigungen wurde von anderer Seite geändert und bleibt, wie sie ist: %1</translation>
    </message>
    <message>
        <source>The correction could not be saved. %1</source>
        <translation>Die Berichtigung konnte nicht gespeichert werden. %1</translation>
    </message>
    <message>
        <source>The file of corrections could not be removed: %1</source>
        <translation>Die Datei der Berichtigungen konnte nicht entfernt werden: %1</translation>
    </message>
</context>
<context>
    <name>standin::ui::CoverageModel</name>
    <message>
        <source>all</source>
        <translation>alle</translation>
    </message>
    <message>
        <source>Document</source>
        <translation>Dokument</translation>
    </message>
    <message>
        <source>Page</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>What was not compared</source>
        <translation>Was nicht verglichen wurde</translation>
    </message>
    <message>
        <source>As printed</source>
        <translation>Wie gedruckt</translation>
    </message>
    <message>
        <source>%1: %2 numbers printed; %3 in parameters, %4 in other tables, %5 in text, %6 in figures, %7 in running heads and page numbers, %8 unaccounted for</source>
        <translation>%1: %2 gedruckte Zahlen; %3 in Parametern, %4 in anderen Tabellen, %5 im Text, %6 in Bildern, %7 in Kopfzeilen und Seitenzahlen, %8 ohne Zuordnung</translation>
    </message>
    <message>
        <source>number without an owner</source>
        <translation>Zahl ohne Zuordnung</translation>
    </message>
    <message>
        <source>page without a text layer</source>
        <translation>Seite ohne Textebene</translation>
    </message>
    <message>
        <source>table that was not read</source>
        <translation>Tabelle, die nicht gelesen wurde</translation>
    </message>
    <message>
        <source>figure that was not read</source>
        <translation>Bild, das nicht gelesen wurde</translation>
    </message>
    <message>
        <source>pins that were not read</source>
        <translation>Anschlüsse, die nicht gelesen wurden</translation>
    </message>
    <message>
        <source>sign that is a drawing and was not read</source>
        <translation>Zeichen, das eine Zeichnung ist und nicht gelesen wurde</translation>
    </message>
    <message>
        <source>recognised from a picture</source>
        <translation>aus einem Bild erkannt</translation>
    </message>
    <message>
        <source>lettering of a picture that was not made out</source>
        <translation>Beschriftung eines Bildes, die nicht erkannt wurde</translation>
    </message>
    <message>
        <source>while reading</source>
        <translation>beim Lesen</translation>
    </message>
</context>
<context>
    <name>standin::ui::CoveragePage</name>
    <message>
        <source>What was not compared</source>
        <translation>Was nicht verglichen wurde</translation>
    </message>
</context>
<context>
    <name>standin::ui::Decisions</name>
    <message>
        <source>The decisions kept for this pair cannot be read. The file was set aside as %1.</source>
        <translation>Die für dieses Paar aufbewahrten Entscheidungen sind nicht lesbar. Die Datei wurde als %1 beiseitegelegt.</translation>
    </message>
    <message>
        <source>The decisions kept for this pair cannot be read: %1</source>
        <translation>Die für dieses Paar aufbewahrten Entscheidungen sind nicht lesbar: %1</translation>
    </message>
    <message>
        <source>The decision could not be saved to %1. It is kept until this window closes; make room and decide again.</source>
        <translation>Die Entscheidung konnte nicht in %1 gespeichert werden. Sie bleibt, bis das Fenster geschlossen wird; schaffen Sie Platz und entscheiden Sie noch einmal.</translation>
    </message>
</context>
<context>
    <name>standin::ui::DistributeDialog</name>
    <message>
        <source>Distribution</source>
        <translation>Verteilung</translation>
    </message>
    <message>
        <source>&amp;To</source>
        <translation>&amp;An</translation>
    </message>
    <message>
        <source>a person, a department, a list</source>
        <translation>eine Person, eine Abteilung, ein Verteiler</translation>
    </message>
    <message>
        <source>&amp;What</source>
        <translation>&amp;Was</translation>
    </message>
    <message>
        <source>With &amp;change</source>
        <translation>Mit Ä&amp;nderung</translation>
    </message>
    <message>
        <source>number of the change to drawing, parts list or work instruction</source>
        <translation>Nummer der Änderung an Zeichnung, Stückliste oder Arbeitsanweisung</translation>
    </message>
    <message>
        <source>&amp;Date</source>
        <translation>&amp;Datum</translation>
    </message>
    <message>
        <source>2031-05-06; none: today</source>
        <translation>2031-05-06; leer: heute</translation>
    </message>
    <message>
        <source>Say who was given it.</source>
        <translation>Angeben, wer es erhalten hat.</translation>
    </message>
    <message>
        <source>Say what was given.</source>
        <translation>Angeben, was übergeben wurde.</translation>
    </message>
    <message>
        <source>The date is no date such as 2031-05-06.</source>
        <translation>Das Datum ist keines wie 2031-05-06.</translation>
    </message>
</context>
<context>
    <name>standin::ui::DocumentCard</name>
    <message>
        <source> · variant %1</source>
        <translation> · Variante %1</translation>
    </message>
    <message>
        <source>%1
SHA-256 %2</source>
        <translation>%1
SHA-256 %2</translation>
    </message>
</context>
<context>
    <name>standin::ui::EvidenceView</name>
    <message>
        <source>Nothing of it stands in the %1.</source>
        <translation>Nichts davon steht hier (%1).</translation>
    </message>
    <message>
        <source>%1, page %2</source>
        <translation>%1, Seite %2</translation>
    </message>
</context>
<context>
    <name>standin::ui::FileLine</name>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>Wählen …</translation>
    </message>
    <message>
        <source>Choose a file: %1</source>
        <translation>Eine Datei wählen: %1</translation>
    </message>
</context>
<context>
    <name>standin::ui::FileSlot</name>
    <message>
        <source>Variant</source>
        <translation>Variante</translation>
    </message>
    <message>
        <source>Reference: the part fitted or specified today</source>
        <translation>Referenz: das heute verbaute oder vorgeschriebene Bauteil</translation>
    </message>
    <message>
        <source>Candidate: the suspected equivalent</source>
        <translation>Kandidat: der vermutete Ersatz</translation>
    </message>
    <message>
        <source>datasheet.pdf: choose it, or drop it here</source>
        <translation>datenblatt.pdf: wählen oder hier ablegen</translation>
    </message>
    <message>
        <source>File of the %1</source>
        <translation>Datei: %1</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>Wählen…</translation>
    </message>
    <message>
        <source>Choose the file of the %1</source>
        <translation>Datei wählen: %1</translation>
    </message>
    <message>
        <source>Variant of the %1</source>
        <translation>Variante: %1</translation>
    </message>
    <message>
        <source>none chosen</source>
        <translation>keine gewählt</translation>
    </message>
    <message>
        <source>Choose the datasheet of the reference</source>
        <translation>Das Datenblatt der Referenz wählen</translation>
    </message>
    <message>
        <source>Choose the datasheet of the candidate</source>
        <translation>Das Datenblatt des Kandidaten wählen</translation>
    </message>
    <message>
        <source>Datasheets (*.pdf *.json);;All files (*)</source>
        <translation>Datenblätter (*.pdf *.json);;Alle Dateien (*)</translation>
    </message>
</context>
<context>
    <name>standin::ui::FindingDelegate</name>
    <message>
        <source>  p %1</source>
        <translation>  S. %1</translation>
    </message>
    <message>
        <source>cannot be filtered away; %1</source>
        <translation>lässt sich nicht wegfiltern; %1</translation>
    </message>
    <message>
        <source>decided: %1</source>
        <translation>entschieden: %1</translation>
    </message>
</context>
<context>
    <name>standin::ui::FindingsFilter</name>
    <message>
        <source>hidden: %1</source>
        <translation>verborgen: %1</translation>
    </message>
</context>
<context>
    <name>standin::ui::FindingsModel</name>
    <message>
        <source>%1, page %2: %3</source>
        <translation>%1, Seite %2: %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>condition %1</source>
        <translation>Bedingung %1</translation>
    </message>
    <message>
        <source>decision: %1</source>
        <translation>Entscheidung: %1</translation>
    </message>
    <message>
        <source>No section</source>
        <translation>Kein Abschnitt</translation>
    </message>
</context>
<context>
    <name>standin::ui::FindingsPage</name>
    <message>
        <source>&amp;undecided only</source>
        <translation>n&amp;ur unentschiedene</translation>
    </message>
    <message>
        <source>Sho&amp;w all</source>
        <translation>Alle &amp;zeigen</translation>
    </message>
    <message>
        <source>Findings, gravest first</source>
        <translation>Befunde, die schwersten zuerst</translation>
    </message>
    <message>
        <source>Find in findings</source>
        <translation>In Befunden suchen</translation>
    </message>
    <message>
        <source>List findings that hold these words</source>
        <translation>Befunde mit diesen Wörtern auflisten</translation>
    </message>
    <message>
        <source>List findings of this kind</source>
        <translation>Befunde dieser Art auflisten</translation>
    </message>
    <message>
        <source>Order of the findings</source>
        <translation>Reihenfolge der Befunde</translation>
    </message>
    <message>
        <source>by severity</source>
        <translation>nach Schwere</translation>
    </message>
    <message>
        <source>by section</source>
        <translation>nach Abschnitt</translation>
    </message>
    <message>
        <source>by kind</source>
        <translation>nach Art</translation>
    </message>
    <message>
        <source>by name</source>
        <translation>nach Name</translation>
    </message>
    <message>
        <source>by decision</source>
        <translation>nach Entscheidung</translation>
    </message>
    <message>
        <source>every kind</source>
        <translation>jede Art</translation>
    </message>
    <message>
        <source>No finding is listed: all are hidden by the filter.</source>
        <translation>Kein Befund in der Liste: alle sind durch den Filter verborgen.</translation>
    </message>
    <message>
        <source>No difference found in what was compared.</source>
        <translation>Im Verglichenen wurde kein Unterschied gefunden.</translation>
    </message>
</context>
<context>
    <name>standin::ui::KeyDialog</name>
    <message>
        <source>New key</source>
        <translation>Neuer Schlüssel</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>of the person who signs</source>
        <translation>der Person, die unterschreibt</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>File of the new key</source>
        <translation>Datei des neuen Schlüssels</translation>
    </message>
    <message>
        <source>Keys (*.key);;All files (*)</source>
        <translation>Schlüssel (*.key);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>&amp;Passphrase</source>
        <translation>&amp;Passwort</translation>
    </message>
    <message>
        <source>none: whoever has the file can sign</source>
        <translation>keines: wer die Datei hat, kann unterschreiben</translation>
    </message>
    <message>
        <source>The same &amp;again</source>
        <translation>Noch &amp;einmal</translation>
    </message>
    <message>
        <source>Give the name of the person who signs.</source>
        <translation>Den Namen der Person angeben, die unterschreibt.</translation>
    </message>
    <message>
        <source>Say where the key is to be kept; only you will be able to read it.</source>
        <translation>Angeben, wo der Schlüssel liegen soll; nur Sie werden ihn lesen können.</translation>
    </message>
    <message>
        <source>The two passphrases differ.</source>
        <translation>Die beiden Passwörter sind verschieden.</translation>
    </message>
</context>
<context>
    <name>standin::ui::MainWindow</name>
    <message>
        <source>Standin desk</source>
        <translation>Standin-Tisch</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>reading, page %v of %m</source>
        <translation>liest, Seite %v von %m</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>All parameters</source>
        <translation>Alle Parameter</translation>
    </message>
    <message>
        <source>Wording</source>
        <translation>Wortlaut</translation>
    </message>
    <message>
        <source>Pins</source>
        <translation>Anschlüsse</translation>
    </message>
    <message>
        <source>Cell</source>
        <translation>Zelle</translation>
    </message>
    <message>
        <source>Pages</source>
        <translation>Seiten</translation>
    </message>
    <message>
        <source>Not compared</source>
        <translation>Nicht verglichen</translation>
    </message>
    <message>
        <source>The file of the %1 changed on disk; what is shown is as it was read: %2</source>
        <translation>Die Datei (%1) wurde auf dem Datenträger geändert; gezeigt wird, was gelesen wurde: %2</translation>
    </message>
    <message>
        <source>The file of the %1 is gone from disk; what is shown is as it was read: %2</source>
        <translation>Die Datei (%1) ist vom Datenträger verschwunden; gezeigt wird, was gelesen wurde: %2</translation>
    </message>
    <message>
        <source>Read again</source>
        <translation>Neu lesen</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Geschrieben: %1</translation>
    </message>
    <message>
        <source>Not written. %1</source>
        <translation>Nicht geschrieben. %1</translation>
    </message>
    <message>
        <source>Not read. %1</source>
        <translation>Nicht gelesen. %1</translation>
    </message>
    <message>
        <source>Open pair…</source>
        <translation>Paar öffnen…</translation>
    </message>
    <message>
        <source>%1 – %2 – Standin desk</source>
        <translation>%1 – %2 – Standin-Tisch</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>&amp;Open pair…</source>
        <translation>&amp;Paar öffnen…</translation>
    </message>
    <message>
        <source>Opened &amp;before</source>
        <translation>Zuletzt &amp;geöffnet</translation>
    </message>
    <message>
        <source>E&amp;xchange reference and candidate</source>
        <translation>Referenz und Kandidat &amp;tauschen</translation>
    </message>
    <message>
        <source>Ctrl+Shift+X</source>
        <translation>Ctrl+Shift+X</translation>
    </message>
    <message>
        <source>Read a&amp;gain</source>
        <translation>&amp;Neu lesen</translation>
    </message>
    <message>
        <source>&amp;Cancel reading</source>
        <translation>Lesen ab&amp;brechen</translation>
    </message>
    <message>
        <source>&amp;Export…</source>
        <translation>&amp;Ausgeben…</translation>
    </message>
    <message>
        <source>Ctrl+E</source>
        <translation>Ctrl+E</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Drucken…</translation>
    </message>
    <message>
        <source>&amp;Settings…</source>
        <translation>&amp;Einstellungen…</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <source>Ctrl+Q</source>
        <translation>Ctrl+Q</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Zurücknehmen</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Wiederholen</translation>
    </message>
    <message>
        <source>Ctrl+Shift+Z</source>
        <translation>Ctrl+Shift+Z</translation>
    </message>
    <message>
        <source>Ctrl+Y</source>
        <translation>Ctrl+Y</translation>
    </message>
    <message>
        <source>&amp;Decide on the finding</source>
        <translation>Über den Befund &amp;entscheiden</translation>
    </message>
    <message>
        <source>Ctrl+D</source>
        <translation>Ctrl+D</translation>
    </message>
    <message>
        <source>&amp;Find in findings</source>
        <translation>In Befunden &amp;suchen</translation>
    </message>
    <message>
        <source>Ctrl+F</source>
        <translation>Ctrl+F</translation>
    </message>
    <message>
        <source>Show &amp;all findings</source>
        <translation>&amp;Alle Befunde zeigen</translation>
    </message>
    <message>
        <source>Ctrl+Shift+F</source>
        <translation>Ctrl+Shift+F</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>&amp;Next finding</source>
        <translation>&amp;Nächster Befund</translation>
    </message>
    <message>
        <source>Ctrl+Down</source>
        <translation>Ctrl+Down</translation>
    </message>
    <message>
        <source>&amp;Previous finding</source>
        <translation>&amp;Voriger Befund</translation>
    </message>
    <message>
        <source>Ctrl+Up</source>
        <translation>Ctrl+Up</translation>
    </message>
    <message>
        <source>Show its p&amp;laces on the pages</source>
        <translation>Seine &amp;Stellen auf den Seiten zeigen</translation>
    </message>
    <message>
        <source>Ctrl+Return</source>
        <translation>Ctrl+Return</translation>
    </message>
    <message>
        <source>Go &amp;round the parts</source>
        <translation>&amp;Reihum durch die Teile</translation>
    </message>
    <message>
        <source>&amp;Whole screen</source>
        <translation>&amp;Ganzer Bildschirm</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>&amp;About the desk</source>
        <translation>Ü&amp;ber den Tisch</translation>
    </message>
    <message>
        <source>&amp;Forget these</source>
        <translation>Diese &amp;vergessen</translation>
    </message>
    <message>
        <source>Open pair</source>
        <translation>Paar öffnen</translation>
    </message>
    <message>
        <source>Export a report</source>
        <translation>Einen Bericht ausgeben</translation>
    </message>
    <message>
        <source>An export is under way; wait until it is done.</source>
        <translation>Eine Ausgabe läuft; warten Sie, bis sie fertig ist.</translation>
    </message>
    <message>
        <source>Writing %1 …</source>
        <translation>Schreibe %1 …</translation>
    </message>
    <message>
        <source>Not printed. %1</source>
        <translation>Nicht gedruckt. %1</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Protokoll</translation>
    </message>
</context>
<context>
    <name>standin::ui::MeaningPanel</name>
    <message>
        <source>What it means</source>
        <translation>Was es bedeutet</translation>
    </message>
    <message>
        <source>What the finding means</source>
        <translation>Was der Befund bedeutet</translation>
    </message>
    <message>
        <source>&amp;Decision</source>
        <translation>&amp;Entscheidung</translation>
    </message>
    <message>
        <source>Decision on the finding</source>
        <translation>Entscheidung über den Befund</translation>
    </message>
    <message>
        <source>Remark: why, under which condition, what to test</source>
        <translation>Bemerkung: warum, unter welcher Bedingung, was zu prüfen ist</translation>
    </message>
    <message>
        <source>Remark on the decision</source>
        <translation>Bemerkung zur Entscheidung</translation>
    </message>
    <message>
        <source>Caution:</source>
        <translation>Vorsicht:</translation>
    </message>
    <message>
        <source>Follows from it: %1</source>
        <translation>Daraus folgt: %1</translation>
    </message>
    <message>
        <source>%1, %2, %3; finding %4</source>
        <translation>%1, %2, %3; Befund %4</translation>
    </message>
    <message>
        <source>decision on “%1”</source>
        <translation>Entscheidung über „%1“</translation>
    </message>
</context>
<context>
    <name>standin::ui::NewRecordDialog</name>
    <message>
        <source>New record</source>
        <translation>Neues Protokoll</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>File of the new record</source>
        <translation>Datei des neuen Protokolls</translation>
    </message>
    <message>
        <source>&amp;Earlier record</source>
        <translation>&amp;Früheres Protokoll</translation>
    </message>
    <message>
        <source>Record whose decisions are carried over</source>
        <translation>Protokoll, dessen Entscheidungen übernommen werden</translation>
    </message>
    <message>
        <source>N&amp;umber</source>
        <translation>N&amp;ummer</translation>
    </message>
    <message>
        <source>of the record in your files</source>
        <translation>des Protokolls in Ihren Akten</translation>
    </message>
    <message>
        <source>&amp;Title</source>
        <translation>&amp;Titel</translation>
    </message>
    <message>
        <source>what it is about</source>
        <translation>worum es geht</translation>
    </message>
    <message>
        <source>&amp;Product</source>
        <translation>&amp;Produkt</translation>
    </message>
    <message>
        <source>product and assembly</source>
        <translation>Produkt und Baugruppe</translation>
    </message>
    <message>
        <source>P&amp;ositions</source>
        <translation>P&amp;ositionen</translation>
    </message>
    <message>
        <source>on the assembly</source>
        <translation>auf der Baugruppe</translation>
    </message>
    <message>
        <source>&amp;Scope</source>
        <translation>&amp;Geltung</translation>
    </message>
    <message>
        <source>which product, lot, quantity it holds for</source>
        <translation>für welches Produkt, Los, welche Menge</translation>
    </message>
    <message>
        <source>&amp;Valid until</source>
        <translation>Gü&amp;ltig bis</translation>
    </message>
    <message>
        <source>one a line; none: the usual ones</source>
        <translation>eines je Zeile; keines: die üblichen</translation>
    </message>
    <message>
        <source>What asks for a new review</source>
        <translation>Was eine neue Prüfung verlangt</translation>
    </message>
    <message>
        <source>&amp;Review again upon</source>
        <translation>&amp;Neu prüfen bei</translation>
    </message>
    <message>
        <source>Say where the record is to be written.</source>
        <translation>Angeben, wohin das Protokoll geschrieben werden soll.</translation>
    </message>
    <message>
        <source>The end of validity is no date such as 2032-01-31.</source>
        <translation>Das Ende der Gültigkeit ist kein Datum wie 2032-01-31.</translation>
    </message>
</context>
<context>
    <name>standin::ui::NoticeBar</name>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Close the message</source>
        <translation>Die Meldung schließen</translation>
    </message>
</context>
<context>
    <name>standin::ui::PackageDrawing</name>
    <message>
        <source>%1: package with its pins, as in the table below</source>
        <translation>%1: Gehäuse mit Anschlüssen, wie in der Tabelle darunter</translation>
    </message>
    <message>
        <source>No pins were read.</source>
        <translation>Es wurden keine Anschlüsse gelesen.</translation>
    </message>
</context>
<context>
    <name>standin::ui::PageCanvas</name>
    <message>
        <source>Pages of the %1</source>
        <translation>Seiten: %1</translation>
    </message>
    <message>
        <source>The pages cannot be shown. %1</source>
        <translation>Die Seiten können nicht gezeigt werden. %1</translation>
    </message>
    <message>
        <source>Page %1 cannot be drawn; what was read of it is listed all the same.</source>
        <translation>Seite %1 kann nicht gezeichnet werden; was von ihr gelesen wurde, ist trotzdem aufgeführt.</translation>
    </message>
</context>
<context>
    <name>standin::ui::PageCutting</name>
    <message>
        <source>Cutting of the %1</source>
        <translation>Ausschnitt: %1</translation>
    </message>
</context>
<context>
    <name>standin::ui::PageDrawer</name>
    <message>
        <source>This document was opened from what was read of it before; open its PDF to see the pages.</source>
        <translation>Dieses Dokument wurde aus einer früheren Lesung geöffnet; öffnen Sie sein PDF, um die Seiten zu sehen.</translation>
    </message>
</context>
<context>
    <name>standin::ui::PagesView</name>
    <message>
        <source>What was read here</source>
        <translation>Was hier gelesen wurde</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>Fit the width of the pages (W)</source>
        <translation>Breite der Seiten einpassen (W)</translation>
    </message>
    <message>
        <source>Whole page</source>
        <translation>Ganze Seite</translation>
    </message>
    <message>
        <source>Fit whole pages (G)</source>
        <translation>Ganze Seiten einpassen (G)</translation>
    </message>
    <message>
        <source>Smaller (-)</source>
        <translation>Kleiner (-)</translation>
    </message>
    <message>
        <source>Larger (+)</source>
        <translation>Größer (+)</translation>
    </message>
    <message>
        <source>Turn</source>
        <translation>Drehen</translation>
    </message>
    <message>
        <source>Turn the pages by a quarter (R)</source>
        <translation>Die Seiten um ein Viertel drehen (R)</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Find on the pages</source>
        <translation>Auf den Seiten suchen</translation>
    </message>
    <message>
        <source>Find in what was read of both documents</source>
        <translation>In dem suchen, was von beiden Dokumenten gelesen wurde</translation>
    </message>
    <message>
        <source>Found before (Shift+Enter)</source>
        <translation>Vorige Fundstelle (Umschalt+Eingabe)</translation>
    </message>
    <message>
        <source>Found next (Enter)</source>
        <translation>Nächste Fundstelle (Eingabe)</translation>
    </message>
    <message>
        <source>Page of the %1</source>
        <translation>Seite: %1</translation>
    </message>
    <message>
        <source>page</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>%1  %2</source>
        <translation>%1  %2</translation>
    </message>
    <message>
        <source>of %1</source>
        <translation>von %1</translation>
    </message>
    <message>
        <source>Click on a place to see what was read there; drag to choose text.</source>
        <translation>Ein Klick auf eine Stelle zeigt, was dort gelesen wurde; Ziehen wählt Text.</translation>
    </message>
    <message>
        <source>%1, page %2, %3: %4</source>
        <translation>%1, Seite %2, %3: %4</translation>
    </message>
    <message>
        <source>&amp;Correct this row…</source>
        <translation>Diese Zeile &amp;berichtigen …</translation>
    </message>
    <message>
        <source>&amp;Put a row in…</source>
        <translation>Zeile &amp;einfügen …</translation>
    </message>
    <message>
        <source>not found</source>
        <translation>nicht gefunden</translation>
    </message>
    <message>
        <source>%1 / %2</source>
        <translation>%1 / %2</translation>
    </message>
</context>
<context>
    <name>standin::ui::PairForm</name>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>Wählen…</translation>
    </message>
    <message>
        <source>Choose a file: %1</source>
        <translation>Eine Datei wählen: %1</translation>
    </message>
    <message>
        <source>C&amp;ompare</source>
        <translation>&amp;Vergleichen</translation>
    </message>
    <message>
        <source>⇅  E&amp;xchange reference and candidate</source>
        <translation>⇅  Referenz und Kandidat &amp;tauschen</translation>
    </message>
    <message>
        <source>Exchange reference and candidate</source>
        <translation>Referenz und Kandidat tauschen</translation>
    </message>
    <message>
        <source>JSON files (*.json);;All files (*)</source>
        <translation>JSON-Dateien (*.json);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Ce&amp;ll profile</source>
        <translation>Ze&amp;llprofil</translation>
    </message>
    <message>
        <source>C&amp;ircuit</source>
        <translation>Schalt&amp;ung</translation>
    </message>
    <message>
        <source>Own &amp;vocabulary</source>
        <translation>Eigenes Vo&amp;kabular</translation>
    </message>
    <message>
        <source>Correctio&amp;ns</source>
        <translation>Be&amp;richtigungen</translation>
    </message>
    <message>
        <source>Password of the documents</source>
        <translation>Kennwort der Dokumente</translation>
    </message>
    <message>
        <source>Pass&amp;word</source>
        <translation>Kenn&amp;wort</translation>
    </message>
</context>
<context>
    <name>standin::ui::ParametersModel</name>
    <message>
        <source>both intervals on one axis</source>
        <translation>beide Bereiche auf einer Achse</translation>
    </message>
    <message>
        <source>no common axis</source>
        <translation>keine gemeinsame Achse</translation>
    </message>
    <message>
        <source>%1  p %2</source>
        <translation>%1  S. %2</translation>
    </message>
    <message>
        <source>Parameter</source>
        <translation>Parameter</translation>
    </message>
    <message>
        <source>Condition</source>
        <translation>Bedingung</translation>
    </message>
    <message>
        <source>Reference  min / typ / max</source>
        <translation>Referenz  min / typ / max</translation>
    </message>
    <message>
        <source>Candidate  min / typ / max</source>
        <translation>Kandidat  min / typ / max</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Grenzen</translation>
    </message>
    <message>
        <source>Relation</source>
        <translation>Beziehung</translation>
    </message>
    <message>
        <source>Paired</source>
        <translation>Gepaart</translation>
    </message>
</context>
<context>
    <name>standin::ui::ParametersPage</name>
    <message>
        <source>All parameters, paired</source>
        <translation>Alle Parameter, gepaart</translation>
    </message>
    <message>
        <source>Find in parameters</source>
        <translation>In Parametern suchen</translation>
    </message>
    <message>
        <source>List parameters that hold these words</source>
        <translation>Parameter mit diesen Wörtern auflisten</translation>
    </message>
    <message>
        <source>&amp;only those that differ</source>
        <translation>&amp;nur verschiedene</translation>
    </message>
    <message numerus="yes">
        <source>%n pair(s)</source>
        <translation>
            <numerusform>%n Paar</numerusform>
            <numerusform>%n Paare</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>, %n hidden</source>
        <translation>
            <numerusform>, %n verborgen</numerusform>
            <numerusform>, %n verborgen</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>standin::ui::PinsModel</name>
    <message>
        <source>package not named</source>
        <translation>Gehäuse nicht benannt</translation>
    </message>
    <message>
        <source>differs</source>
        <translation>verschieden</translation>
    </message>
    <message>
        <source>Pin</source>
        <translation>Anschluss</translation>
    </message>
    <message>
        <source>Reference</source>
        <translation>Referenz</translation>
    </message>
    <message>
        <source>Function there</source>
        <translation>Funktion dort</translation>
    </message>
    <message>
        <source>Candidate</source>
        <translation>Kandidat</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Hinweis</translation>
    </message>
</context>
<context>
    <name>standin::ui::PinsPage</name>
    <message>
        <source>Pins of both packages, by number</source>
        <translation>Anschlüsse beider Gehäuse, nach Nummer</translation>
    </message>
    <message>
        <source>Package of the &amp;reference</source>
        <translation>Gehäuse der &amp;Referenz</translation>
    </message>
    <message>
        <source>Package of the &amp;candidate</source>
        <translation>Gehäuse des &amp;Kandidaten</translation>
    </message>
    <message>
        <source>Seen from above, not to scale; ≠ marks a pin that differs. Check the drawing of the package on its page.</source>
        <translation>Von oben gesehen, nicht maßstäblich; ≠ bezeichnet einen Anschluss, der abweicht. Prüfen Sie die Gehäusezeichnung auf ihrer Seite.</translation>
    </message>
</context>
<context>
    <name>standin::ui::RecordModel</name>
    <message>
        <source>needs no decision</source>
        <translation>braucht keine Entscheidung</translation>
    </message>
    <message>
        <source>%1 (carried)</source>
        <translation>%1 (übernommen)</translation>
    </message>
    <message>
        <source>author</source>
        <translation>Verfasser</translation>
    </message>
    <message>
        <source>reviewer</source>
        <translation>Prüfer</translation>
    </message>
    <message>
        <source>approver</source>
        <translation>Freigebender</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>second person missing</source>
        <translation>zweite Person fehlt</translation>
    </message>
    <message>
        <source>waiting</source>
        <translation>wartet</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>rejected</source>
        <translation>abgelehnt</translation>
    </message>
    <message>
        <source>draft</source>
        <translation>Entwurf</translation>
    </message>
    <message>
        <source>in review</source>
        <translation>in Prüfung</translation>
    </message>
    <message>
        <source>approved</source>
        <translation>freigegeben</translation>
    </message>
    <message>
        <source>approved with conditions</source>
        <translation>mit Bedingungen freigegeben</translation>
    </message>
    <message>
        <source>refused</source>
        <translation>abgelehnt</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>Severity</source>
        <translation>Schwere</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>Stufe</translation>
    </message>
    <message>
        <source>What differs</source>
        <translation>Was abweicht</translation>
    </message>
    <message>
        <source>No record is in hand. Open a new one for this pair, or take up one that was begun.</source>
        <translation>Kein Protokoll liegt vor. Ein neues für dieses Paar eröffnen oder ein begonnenes aufnehmen.</translation>
    </message>
    <message>
        <source>%1: %2; %3 of %4 lines open</source>
        <translation>%1: %2; %3 von %4 Zeilen offen</translation>
    </message>
    <message>
        <source>%1, level %2</source>
        <translation>%1, Stufe %2</translation>
    </message>
    <message>
        <source>Follows from it: %1</source>
        <translation>Folgt daraus: %1</translation>
    </message>
    <message>
        <source>Measured: %1</source>
        <translation>Gemessen: %1</translation>
    </message>
    <message>
        <source>Nobody has signed yet.</source>
        <translation>Noch niemand hat unterschrieben.</translation>
    </message>
    <message>
        <source>%1: %2; %3 of %4 lines open. It is about other documents than those shown here.</source>
        <translation>%1: %2; %3 von %4 Zeilen offen. Es handelt von anderen Dokumenten als den hier gezeigten.</translation>
    </message>
    <message>
        <source>How it stands</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>superseded</source>
        <translation>abgelöst</translation>
    </message>
    <message>
        <source>Superseded %1</source>
        <translation>Abgelöst %1</translation>
    </message>
    <message>
        <source>Given to: %1</source>
        <translation>Verteilt an: %1</translation>
    </message>
    <message>
        <source>Not yet told that it is superseded: %1</source>
        <translation>Von der Ablösung noch nicht unterrichtet: %1</translation>
    </message>
</context>
<context>
    <name>standin::ui::RecordPage</name>
    <message>
        <source>Lines of the record, gravest first</source>
        <translation>Zeilen des Protokolls, schwerste zuerst</translation>
    </message>
    <message>
        <source>What was done last</source>
        <translation>Was zuletzt geschah</translation>
    </message>
    <message>
        <source>Ne&amp;w record…</source>
        <translation>Ne&amp;ues Protokoll …</translation>
    </message>
    <message>
        <source>&amp;Take up…</source>
        <translation>Au&amp;fnehmen …</translation>
    </message>
    <message>
        <source>Take up a record that was begun</source>
        <translation>Ein begonnenes Protokoll aufnehmen</translation>
    </message>
    <message>
        <source>Chec&amp;k</source>
        <translation>&amp;Prüfen</translation>
    </message>
    <message>
        <source>Check whether the record holds</source>
        <translation>Prüfen, ob das Protokoll hält</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Weiteres</translation>
    </message>
    <message>
        <source>More commands on the record</source>
        <translation>Weitere Befehle zum Protokoll</translation>
    </message>
    <message>
        <source>Save its &amp;report…</source>
        <translation>&amp;Bericht speichern …</translation>
    </message>
    <message>
        <source>Enter a &amp;bench result…</source>
        <translation>&amp;Messergebnis eintragen …</translation>
    </message>
    <message>
        <source>&amp;Merge a second copy…</source>
        <translation>&amp;Zweite Kopie zusammenführen …</translation>
    </message>
    <message>
        <source>The line and what was decided on it</source>
        <translation>Die Zeile und was über sie entschieden wurde</translation>
    </message>
    <message>
        <source>Decision on the line</source>
        <translation>Entscheidung über die Zeile</translation>
    </message>
    <message>
        <source>Reason of the decision</source>
        <translation>Grund der Entscheidung</translation>
    </message>
    <message>
        <source>Why; always required</source>
        <translation>Warum; immer verlangt</translation>
    </message>
    <message>
        <source>Condition</source>
        <translation>Bedingung</translation>
    </message>
    <message>
        <source>what, how it is verified, where it is written</source>
        <translation>welche, wie geprüft, wo festgehalten</translation>
    </message>
    <message>
        <source>Asked</source>
        <translation>Gefragt</translation>
    </message>
    <message>
        <source>who is asked for a statement</source>
        <translation>wer um eine Aussage gebeten wird</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Fällig</translation>
    </message>
    <message>
        <source>Samples</source>
        <translation>Muster</translation>
    </message>
    <message>
        <source>how many of how many lots</source>
        <translation>wie viele aus wie vielen Losen</translation>
    </message>
    <message>
        <source>File that the decision relies on</source>
        <translation>Datei, auf die sich die Entscheidung stützt</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Alle Dateien (*)</translation>
    </message>
    <message>
        <source>&amp;Decision</source>
        <translation>&amp;Entscheidung</translation>
    </message>
    <message>
        <source>Reaso&amp;n</source>
        <translation>&amp;Grund</translation>
    </message>
    <message>
        <source>Evidence</source>
        <translation>Beleg</translation>
    </message>
    <message>
        <source>Enter the dec&amp;ision</source>
        <translation>Entscheidung e&amp;intragen</translation>
    </message>
    <message>
        <source>C&amp;onfirm</source>
        <translation>Be&amp;stätigen</translation>
    </message>
    <message>
        <source>Confirm the decision in force as a second person</source>
        <translation>Die geltende Entscheidung als zweite Person bestätigen</translation>
    </message>
    <message>
        <source>Your key</source>
        <translation>Ihr Schlüssel</translation>
    </message>
    <message>
        <source>Keys (*.key);;All files (*)</source>
        <translation>Schlüssel (*.key);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Make a new key</source>
        <translation>Einen neuen Schlüssel machen</translation>
    </message>
    <message>
        <source>Passphrase of the key</source>
        <translation>Passwort des Schlüssels</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>Passwort</translation>
    </message>
    <message>
        <source>Role in which you sign</source>
        <translation>Rolle, in der Sie unterschreiben</translation>
    </message>
    <message>
        <source>Note to the signature</source>
        <translation>Bemerkung zur Unterschrift</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>Si&amp;gn</source>
        <translation>Unte&amp;rschreiben</translation>
    </message>
    <message>
        <source>Sign as</source>
        <translation>Als</translation>
    </message>
    <message>
        <source>Not done. %1</source>
        <translation>Nicht getan. %1</translation>
    </message>
    <message>
        <source>Choose your key first, or make one.</source>
        <translation>Zuerst Ihren Schlüssel wählen oder einen machen.</translation>
    </message>
    <message>
        <source>Not done. &apos;%1&apos; is no date such as 2031-06-30.</source>
        <translation>Nicht getan. „%1“ ist kein Datum wie 2031-06-30.</translation>
    </message>
    <message>
        <source>Take up a record</source>
        <translation>Ein Protokoll aufnehmen</translation>
    </message>
    <message>
        <source>Save the report of the record</source>
        <translation>Den Bericht des Protokolls speichern</translation>
    </message>
    <message>
        <source>The second copy of this record</source>
        <translation>Die zweite Kopie dieses Protokolls</translation>
    </message>
    <message>
        <source>File of the merged record, a new one</source>
        <translation>Datei des zusammengeführten Protokolls, eine neue</translation>
    </message>
    <message>
        <source>New key…</source>
        <translation>Neuer Schlüssel …</translation>
    </message>
    <message>
        <source>Signatures and distribution</source>
        <translation>Unterschriften und Verteilung</translation>
    </message>
    <message>
        <source>Who was &amp;given it…</source>
        <translation>Verteilun&amp;g…</translation>
    </message>
    <message>
        <source>S&amp;uperseded by another record…</source>
        <translation>D&amp;urch anderes Protokoll abgelöst…</translation>
    </message>
</context>
<context>
    <name>standin::ui::ResultDialog</name>
    <message>
        <source>Bench result</source>
        <translation>Messergebnis</translation>
    </message>
    <message>
        <source>Test</source>
        <translation>Versuch</translation>
    </message>
    <message>
        <source>Limit that the values are held against</source>
        <translation>Grenze, an der die Werte gemessen werden</translation>
    </message>
    <message>
        <source>&amp;Test</source>
        <translation>&amp;Versuch</translation>
    </message>
    <message>
        <source>&amp;Limit</source>
        <translation>&amp;Grenze</translation>
    </message>
    <message>
        <source>&amp;Values</source>
        <translation>&amp;Werte</translation>
    </message>
    <message>
        <source>the extremes, or one a sample, parted by blanks</source>
        <translation>die Extreme, oder einer je Muster, durch Leerzeichen getrennt</translation>
    </message>
    <message>
        <source>&amp;Unit</source>
        <translation>&amp;Einheit</translation>
    </message>
    <message>
        <source>&amp;Condition</source>
        <translation>&amp;Bedingung</translation>
    </message>
    <message>
        <source>temperature, supply, load</source>
        <translation>Temperatur, Versorgung, Last</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>&amp;Samples</source>
        <translation>&amp;Muster</translation>
    </message>
    <message>
        <source>L&amp;ots</source>
        <translation>L&amp;ose</translation>
    </message>
    <message>
        <source>Number of samples</source>
        <translation>Anzahl der Muster</translation>
    </message>
    <message>
        <source>Number of lots</source>
        <translation>Anzahl der Lose</translation>
    </message>
    <message>
        <source>&amp;Instrument</source>
        <translation>&amp;Messgerät</translation>
    </message>
    <message>
        <source>and its uncertainty</source>
        <translation>und seine Unsicherheit</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>Be&amp;merkung</translation>
    </message>
    <message>
        <source>&amp;Evidence</source>
        <translation>Be&amp;leg</translation>
    </message>
    <message>
        <source>File with the measurements</source>
        <translation>Datei mit den Messungen</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Alle Dateien (*)</translation>
    </message>
    <message>
        <source>no limit is stated</source>
        <translation>keine Grenze ist angegeben</translation>
    </message>
    <message>
        <source>The record asks for no bench test.</source>
        <translation>Das Protokoll verlangt keinen Versuch.</translation>
    </message>
    <message>
        <source>Enter what was measured.</source>
        <translation>Eintragen, was gemessen wurde.</translation>
    </message>
</context>
<context>
    <name>standin::ui::SectionLadder</name>
    <message>
        <source>Sections, paired</source>
        <translation>Abschnitte, gepaart</translation>
    </message>
    <message>
        <source>Sections of both documents, paired</source>
        <translation>Abschnitte beider Dokumente, gepaart</translation>
    </message>
</context>
<context>
    <name>standin::ui::SectionsModel</name>
    <message>
        <source>All sections</source>
        <translation>Alle Abschnitte</translation>
    </message>
    <message numerus="yes">
        <source>%n finding(s)</source>
        <translation>
            <numerusform>%n Befund</numerusform>
            <numerusform>%n Befunde</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>, %n editorial</source>
        <translation>
            <numerusform>, %n redaktionell</numerusform>
            <numerusform>, %n redaktionell</numerusform>
        </translation>
    </message>
    <message>
        <source>All sections: %1</source>
        <translation>Alle Abschnitte: %1</translation>
    </message>
    <message>
        <source>no such section</source>
        <translation>kein solcher Abschnitt</translation>
    </message>
    <message>
        <source>reference: %1; candidate: %2; %3</source>
        <translation>Referenz: %1; Kandidat: %2; %3</translation>
    </message>
    <message numerus="yes">
        <source>Wording: %n sentence(s) differ in meaning</source>
        <translation>
            <numerusform>Wortlaut: %n Satz weicht im Sinn ab</numerusform>
            <numerusform>Wortlaut: %n Sätze weichen im Sinn ab</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>, %n in form only</source>
        <translation>
            <numerusform>, %n nur in der Form</numerusform>
            <numerusform>, %n nur in der Form</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>standin::ui::SettingsDialog</name>
    <message>
        <source>Settings</source>
        <translation>Einstellungen</translation>
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
        <source>&amp;Appearance</source>
        <translation>&amp;Aussehen</translation>
    </message>
    <message>
        <source>Size of &amp;text</source>
        <translation>Größe des &amp;Textes</translation>
    </message>
    <message>
        <source>&amp;Language (from the next start)</source>
        <translation>&amp;Sprache (ab dem nächsten Start)</translation>
    </message>
    <message>
        <source>Decisions are kept in</source>
        <translation>Entscheidungen liegen in</translation>
    </message>
</context>
<context>
    <name>standin::ui::SeverityCount</name>
    <message>
        <source>always listed; goes to the first</source>
        <translation>immer in der Liste; führt zum ersten</translation>
    </message>
    <message>
        <source>listed; press to hide</source>
        <translation>in der Liste; drücken verbirgt</translation>
    </message>
    <message>
        <source>hidden; press to list</source>
        <translation>verborgen; drücken zeigt</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1: %2
%3</source>
        <translation>%1: %2
%3</translation>
    </message>
    <message>
        <source>hidden</source>
        <translation>verborgen</translation>
    </message>
</context>
<context>
    <name>standin::ui::StartPage</name>
    <message>
        <source>Opened before</source>
        <translation>Zuletzt geöffnet</translation>
    </message>
    <message>
        <source>Which two parts?</source>
        <translation>Welche beiden Bauteile?</translation>
    </message>
    <message>
        <source>Standin reads both datasheets and shows every difference in numbers and wording with its place on the page. It covers printed documents only: it is not a test and not an approval.</source>
        <translation>Standin liest beide Datenblätter und zeigt jeden Unterschied in Zahlen und Wortlaut mit seiner Stelle auf der Seite. Es umfasst nur gedruckte Dokumente: es ist keine Prüfung und keine Freigabe.</translation>
    </message>
    <message>
        <source>Pairs that were opened before</source>
        <translation>Zuletzt geöffnete Paare</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>reading, page %v of %m</source>
        <translation>liest, Seite %v von %m</translation>
    </message>
    <message>
        <source>Progress of reading</source>
        <translation>Fortschritt des Lesens</translation>
    </message>
</context>
<context>
    <name>standin::ui::SupersedeDialog</name>
    <message>
        <source>Superseded</source>
        <translation>Abgelöst</translation>
    </message>
    <message>
        <source>&amp;By the record</source>
        <translation>&amp;Durch das Protokoll</translation>
    </message>
    <message>
        <source>Record that takes its place</source>
        <translation>Protokoll, das an seine Stelle tritt</translation>
    </message>
    <message>
        <source>&amp;Reason</source>
        <translation>&amp;Grund</translation>
    </message>
    <message>
        <source>why; always required</source>
        <translation>warum; immer verlangt</translation>
    </message>
    <message>
        <source>Choose the record that takes its place.</source>
        <translation>Das Protokoll wählen, das an seine Stelle tritt.</translation>
    </message>
    <message>
        <source>Say why.</source>
        <translation>Den Grund angeben.</translation>
    </message>
    <message>
        <source>Nothing is decided, measured or signed in this record afterwards.</source>
        <translation>In diesem Protokoll wird danach nichts mehr entschieden, gemessen oder unterschrieben.</translation>
    </message>
</context>
<context>
    <name>standin::ui::TitleStrip</name>
    <message>
        <source> (incomplete)</source>
        <translation> (unvollständig)</translation>
    </message>
    <message>
        <source>Verdict: %1. %2</source>
        <translation>Urteil: %1. %2</translation>
    </message>
</context>
<context>
    <name>standin::ui::WordingModel</name>
    <message>
        <source>%1: %2; reference: %3; candidate: %4</source>
        <translation>%1: %2; Referenz: %3; Kandidat: %4</translation>
    </message>
    <message>
        <source>page %1</source>
        <translation>Seite %1</translation>
    </message>
</context>
<context>
    <name>standin::ui::WordingPage</name>
    <message>
        <source>also those that differ in &amp;form only</source>
        <translation>auch die nur in der &amp;Form verschiedenen</translation>
    </message>
    <message>
        <source>Sentences that differ</source>
        <translation>Sätze, die abweichen</translation>
    </message>
    <message numerus="yes">
        <source>%n sentence(s) listed</source>
        <translation>
            <numerusform>%n Satz in der Liste</numerusform>
            <numerusform>%n Sätze in der Liste</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>, %n that differ in form only hidden</source>
        <translation>
            <numerusform>, %n nur in der Form verschiedener verborgen</numerusform>
            <numerusform>, %n nur in der Form verschiedene verborgen</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>words</name>
    <message>
        <source>hazard</source>
        <translation>Gefahr</translation>
    </message>
    <message>
        <source>function</source>
        <translation>Funktion</translation>
    </message>
    <message>
        <source>margin</source>
        <translation>Reserve</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>editorial</source>
        <translation>redaktionell</translation>
    </message>
    <message>
        <source>could contribute to fire, venting or burns, or defeat a protective function</source>
        <translation>kann zu Brand, Gasaustritt oder Verbrennungen beitragen oder eine Schutzfunktion aufheben</translation>
    </message>
    <message>
        <source>the circuit may not work, may trip, may not recover</source>
        <translation>die Schaltung arbeitet womöglich nicht, löst aus oder erholt sich nicht</translation>
    </message>
    <message>
        <source>works, with another margin, heat, run time or accuracy</source>
        <translation>arbeitet, mit anderer Reserve, Wärme, Laufzeit oder Genauigkeit</translation>
    </message>
    <message>
        <source>worth knowing</source>
        <translation>wissenswert</translation>
    </message>
    <message>
        <source>no change of meaning</source>
        <translation>Sinn unverändert</translation>
    </message>
    <message>
        <source>parameter</source>
        <translation>Parameter</translation>
    </message>
    <message>
        <source>table</source>
        <translation>Tabelle</translation>
    </message>
    <message>
        <source>wording</source>
        <translation>Wortlaut</translation>
    </message>
    <message>
        <source>pin</source>
        <translation>Anschluss</translation>
    </message>
    <message>
        <source>package</source>
        <translation>Gehäuse</translation>
    </message>
    <message>
        <source>ordering</source>
        <translation>Bestellung</translation>
    </message>
    <message>
        <source>mode</source>
        <translation>Betriebsart</translation>
    </message>
    <message>
        <source>figure</source>
        <translation>Bild</translation>
    </message>
    <message>
        <source>section</source>
        <translation>Abschnitt</translation>
    </message>
    <message>
        <source>document</source>
        <translation>Dokument</translation>
    </message>
    <message>
        <source>derived quantity</source>
        <translation>abgeleitete Größe</translation>
    </message>
    <message>
        <source>cell limit</source>
        <translation>Zellgrenze</translation>
    </message>
    <message>
        <source>not compared</source>
        <translation>nicht verglichen</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>accepted</source>
        <translation>angenommen</translation>
    </message>
    <message>
        <source>accepted with a condition</source>
        <translation>mit Bedingung angenommen</translation>
    </message>
    <message>
        <source>bench test</source>
        <translation>Labortest</translation>
    </message>
    <message>
        <source>supplier statement</source>
        <translation>Lieferantenaussage</translation>
    </message>
    <message>
        <source>not applicable</source>
        <translation>nicht zutreffend</translation>
    </message>
    <message>
        <source>rejected</source>
        <translation>abgelehnt</translation>
    </message>
    <message>
        <source>reference</source>
        <translation>Referenz</translation>
    </message>
    <message>
        <source>candidate</source>
        <translation>Kandidat</translation>
    </message>
    <message>
        <source>rev %1</source>
        <translation>Rev. %1</translation>
    </message>
    <message numerus="yes">
        <source>%n page(s)</source>
        <translation>
            <numerusform>%n Seite</numerusform>
            <numerusform>%n Seiten</numerusform>
        </translation>
    </message>
    <message>
        <source>page %1</source>
        <translation>Seite %1</translation>
    </message>
</context>
</TS>
