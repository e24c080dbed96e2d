<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Yardwright</name>
    <message>
        <location filename="../../desk/tees_dialog.py"/>
        <source>&amp;Add a flight</source>
        <translation>Gruppe &amp;hinzufügen</translation>
    </message>
    <message>
        <location filename="../../desk/event_settings.py"/>
        <source>&amp;Add a round</source>
        <translation>Runde &amp;hinzufügen</translation>
    </message>
    <message>
        <location filename="../../desk/composing_dialog.py"/>
        <source>&amp;All holes</source>
        <translation>&amp;Alle Bahnen</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>&amp;Approach up</source>
        <translation>Annä&amp;herung oben</translation>
    </message>
    <message>
        <location filename="../../desk/registering_dialog.py"/>
        <source>&amp;Arrows: what is left at each spot, enlarged</source>
        <translation>P&amp;feile: was an jeder Stelle übrig bleibt, vergrößert</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>&amp;Audit…</source>
        <translation>&amp;Abgleichen…</translation>
    </message>
    <message>
        <location filename="../../desk/composing_dialog.py"/>
        <location filename="../../desk/registering_dialog.py"/>
        <source>&amp;Base</source>
        <translation>&amp;Grundbild</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>&amp;Bring features in…</source>
        <translation>Objekte &amp;einlesen…</translation>
    </message>
    <message>
        <location filename="../../desk/tees_dialog.py"/>
        <source>&amp;Bring lengths in…</source>
        <translation>Längen ein&amp;lesen…</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>&amp;Bring pins in…</source>
        <translation>Pins &amp;einlesen…</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>&amp;Check markers…</source>
        <translation>Marken &amp;prüfen…</translation>
    </message>
    <message>
        <location filename="../../desk/composing_dialog.py"/>
        <source>&amp;Compose</source>
        <translation>&amp;Zusammensetzen</translation>
    </message>
    <message>
        <location filename="../../desk/date_actions.py"/>
        <source>&amp;Compose one clean picture…</source>
        <translation>Ein sauberes Bild &amp;zusammensetzen…</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>&amp;Copy</source>
        <translation>&amp;Kopieren</translation>
    </message>
    <message>
        <location filename="../../desk/hidden_panel.py"/>
        <source>&amp;Correct it with the brush</source>
        <translation>Mit dem Pinsel &amp;berichtigen</translation>
    </message>
    <message>
        <location filename="../../desk/take_up_dialog.py"/>
        <source>&amp;Credit</source>
        <translation>Bild&amp;nachweis</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <source>&amp;Crop marks</source>
        <translation>&amp;Schnittmarken</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>&amp;Dates panel</source>
        <translation>Bedienfeld „Bild&amp;datum“</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>&amp;Decided by</source>
        <translation>&amp;Entschieden von</translation>
    </message>
    <message>
        <location filename="../../desk/ties.py"/>
        <source>&amp;Delete pair</source>
        <translation>Paar &amp;löschen</translation>
    </message>
    <message>
        <location filename="../../desk/hole_panel.py"/>
        <source>&amp;Description…</source>
        <translation>&amp;Beschreibung…</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <source>&amp;Event</source>
        <translation>W&amp;ettspiel</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>&amp;Export windows…</source>
        <translation>Bildausschnitte e&amp;xportieren…</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>&amp;Figures on the map</source>
        <translation>Maße auf der Karte &amp;zeigen</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>&amp;Flights and tees…</source>
        <translation>&amp;Gruppen und Abschläge…</translation>
    </message>
    <message>
        <location filename="../../desk/composing_dialog.py"/>
        <source>&amp;Folder</source>
        <translation>&amp;Ordner</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <source>&amp;Form</source>
        <translation>F&amp;orm</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <source>&amp;Grid over the greens</source>
        <translation>&amp;Raster über den Grüns</translation>
    </message>
    <message>
        <location filename="../../desk/propose_dialog.py"/>
        <source>&amp;Heights from</source>
        <translation>&amp;Höhen aus</translation>
    </message>
    <message>
        <location filename="../../desk/sheets_dialog.py"/>
        <source>&amp;Hole</source>
        <translation>B&amp;ahn</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>&amp;Hole panel</source>
        <translation>Bedienfeld „&amp;Bahn“</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>&amp;Holes</source>
        <translation>&amp;Bahnen</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <source>&amp;Image</source>
        <translation>&amp;Bild</translation>
    </message>
    <message>
        <location filename="../../desk/date_actions.py"/>
        <source>&amp;Images of the dates</source>
        <translation>&amp;Bilder der Daten</translation>
    </message>
    <message>
        <location filename="../../desk/description_dialog.py"/>
        <source>&amp;Keep</source>
        <translation>&amp;Behalten</translation>
    </message>
    <message>
        <location filename="../../desk/ties.py"/>
        <source>&amp;Leave it</source>
        <translation>&amp;Bleiben lassen</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>&amp;Leave open</source>
        <translation>Offen &amp;lassen</translation>
    </message>
    <message>
        <location filename="../../desk/take_up_dialog.py"/>
        <source>&amp;Licence</source>
        <translation>&amp;Lizenz</translation>
    </message>
    <message>
        <location filename="../../desk/description_dialog.py"/>
        <source>&amp;Look at the place</source>
        <translation>Den Ort an&amp;sehen</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>&amp;Make it a date…</source>
        <translation>Als &amp;Bilddatum aufnehmen…</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>&amp;Measure…</source>
        <translation>&amp;Messen…</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>&amp;Open course…</source>
        <translation>Platz ö&amp;ffnen…</translation>
    </message>
    <message>
        <location filename="../../desk/description_dialog.py"/>
        <source>&amp;Open the photograph</source>
        <translation>Das &amp;Foto öffnen</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <location filename="../../desk/sheets_dialog.py"/>
        <source>&amp;Page</source>
        <translation>&amp;Seite</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>&amp;Place on the map</source>
        <translation>Auf der Karte &amp;setzen</translation>
    </message>
    <message>
        <location filename="../../desk/propose_dialog.py"/>
        <source>&amp;Place them</source>
        <translation>&amp;Setzen</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>&amp;Previous hole</source>
        <translation>&amp;Vorige Bahn</translation>
    </message>
    <message>
        <location filename="../../desk/description_dialog.py"/>
        <source>&amp;Put it in</source>
        <translation>&amp;Einfügen</translation>
    </message>
    <message>
        <location filename="../../desk/hidden_panel.py"/>
        <source>&amp;Radius</source>
        <translation>&amp;Radius</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>&amp;Refresh</source>
        <translation>&amp;Aktualisieren</translation>
    </message>
    <message>
        <location filename="../../desk/registering_dialog.py"/>
        <source>&amp;Register</source>
        <translation>&amp;Einpassen</translation>
    </message>
    <message>
        <location filename="../../desk/date_actions.py"/>
        <source>&amp;Register dates…</source>
        <translation>Daten &amp;einpassen…</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>&amp;Rename…</source>
        <translation>&amp;Umbenennen…</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>&amp;Repair</source>
        <translation>&amp;Reparieren</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <location filename="../../desk/sheets_dialog.py"/>
        <source>&amp;Round</source>
        <translation>&amp;Runde</translation>
    </message>
    <message>
        <location filename="../../desk/hidden_panel.py"/>
        <location filename="../../desk/measure_dialog.py"/>
        <source>&amp;Save</source>
        <translation>&amp;Speichern</translation>
    </message>
    <message>
        <location filename="../../desk/sheets_dialog.py"/>
        <source>&amp;Sheet</source>
        <translation>&amp;Blatt</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>&amp;Show on map</source>
        <translation>Auf &amp;Karte zeigen</translation>
    </message>
    <message>
        <location filename="../../desk/tees_dialog.py"/>
        <source>&amp;Show the tee</source>
        <translation>Abschlag &amp;zeigen</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>&amp;Start a course…</source>
        <translation>Platz &amp;anlegen…</translation>
    </message>
    <message>
        <location filename="../../desk/composing_dialog.py"/>
        <location filename="../../desk/registering_dialog.py"/>
        <source>&amp;Stop</source>
        <translation>&amp;Halt</translation>
    </message>
    <message>
        <location filename="../../desk/take_up_dialog.py"/>
        <source>&amp;Taken on</source>
        <translation>&amp;Aufgenommen am</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>&amp;Tee sets</source>
        <translation>Abschlagse&amp;ts</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <source>&amp;Tees</source>
        <translation>A&amp;bschläge</translation>
    </message>
    <message>
        <location filename="../../desk/composing_dialog.py"/>
        <source>&amp;These:</source>
        <translation>D&amp;iese:</translation>
    </message>
    <message>
        <location filename="../../desk/ties.py"/>
        <source>&amp;Use these pairs</source>
        <translation>Diese Paare n&amp;utzen</translation>
    </message>
    <message>
        <location filename="../../desk/date_actions.py"/>
        <source>&amp;What hides the ground</source>
        <translation>&amp;Was den Boden verdeckt</translation>
    </message>
    <message>
        <location filename="../../desk/composing_dialog.py"/>
        <source>&amp;Whole course</source>
        <translation>Ganzer &amp;Platz</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>&amp;Yardwright</source>
        <translation>&amp;Yardwright</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>(no set named)</source>
        <translation>(kein Set genannt)</translation>
    </message>
    <message>
        <location filename="../../store/writing.py"/>
        <source>(none)</source>
        <translation>(keine)</translation>
    </message>
    <message>
        <location filename="../../desk/tees_dialog.py"/>
        <source>(the one of its own name)</source>
        <translation>(das ihres eigenen Namens)</translation>
    </message>
    <message>
        <location filename="../../desk/hole_panel.py"/>
        <source>(unnamed)</source>
        <translation>(ohne Namen)</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>+ not drawn</source>
        <translation>+ nicht gezeichnet</translation>
    </message>
    <message>
        <location filename="../../desk/keeping.py"/>
        <source>, and {} more</source>
        <translation>, und {} weitere</translation>
    </message>
    <message>
        <location filename="../../guide/windows.py"/>
        <source>1:{asked} is larger than the Rules of Golf allow for the picture of a green (Rule 4.3a): the green is shown at 1:{shown}</source>
        <translation>1:{asked} ist größer, als die Golfregeln für das Bild eines Grüns erlauben (Regel 4.3a): Das Grün wird in 1:{shown} gezeigt</translation>
    </message>
    <message>
        <location filename="../../guide/windows.py"/>
        <source>1:{asked} is larger than the Rules of Golf allow for the picture of a green (Rule 4.3a): the hole is shown at 1:{shown}</source>
        <translation>1:{asked} ist größer, als die Golfregeln für das Bild eines Grüns erlauben (Regel 4.3a): Die Bahn wird in 1:{shown} gezeigt</translation>
    </message>
    <message>
        <location filename="../../guide/green_panel.py"/>
        <location filename="../../guide/hole_page.py"/>
        <source>1:{scale}</source>
        <translation>1:{scale}</translation>
    </message>
    <message>
        <location filename="../../guide/sheet_cells.py"/>
        <source>1:{scale} is larger than the Rules of Golf allow for the picture of a green (Rule 4.3a).</source>
        <translation>1:{scale} ist größer, als die Golfregeln für das Bild eines Grüns erlauben (Regel 4.3a).</translation>
    </message>
    <message>
        <location filename="../../desk/tie_tool.py"/>
        <source>&lt;span style='color:#b57600'&gt;■&lt;/span&gt; on the date &amp;nbsp; &lt;span style='color:#0b7fc0'&gt;●&lt;/span&gt; on the base</source>
        <translation>&lt;span style='color:#b57600'&gt;■&lt;/span&gt; auf dem Datum &amp;nbsp; &lt;span style='color:#0b7fc0'&gt;●&lt;/span&gt; auf dem Grundbild</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>= agrees</source>
        <translation>= stimmt überein</translation>
    </message>
    <message>
        <location filename="../../processing/start_course.py"/>
        <source>A CSV file with the columns hole, par, stroke_index, name and one for each tee set, in yards; in metres where the heading is the tee set’s name followed by m. Empty: the course starts without holes.</source>
        <translation>Eine CSV-Datei mit den Spalten hole, par, stroke_index, name und einer je Abschlagset, in Yards; in Metern, wo auf den Namen des Abschlagsets ein m folgt. Leer: der Platz beginnt ohne Bahnen.</translation>
    </message>
    <message>
        <location filename="../../processing/set_tees.py"/>
        <source>A CSV file with the columns round, flight, hole and yards. A flight plays the tee set that the event says, else the one of its own name. Lengths the event had for the same round, flight and hole are replaced.</source>
        <translation>Eine CSV-Datei mit den Spalten round, flight, hole und yards. Ein Flight spielt das Abschlagset, das beim Wettspiel steht, sonst das seines eigenen Namens. Längen, die das Wettspiel für dieselbe Runde, denselben Flight und dieselbe Bahn hatte, werden ersetzt.</translation>
    </message>
    <message>
        <location filename="../../processing/committee.py"/>
        <source>A CSV file with the columns round, hole, on, off, from (left, right or centre) and perhaps green_depth, in the course’s unit; in metres or yards where a heading says so, as in “on m”.</source>
        <translation>Eine CSV-Datei mit den Spalten round, hole, on, off, from (left, right oder centre) und vielleicht green_depth, in der Einheit des Platzes; in Metern oder Yards, wo eine Überschrift es sagt, wie in „on m“.</translation>
    </message>
    <message>
        <location filename="../../processing/import_notes.py"/>
        <source>A GPX, GeoJSON or KML file, a JPEG with a position, or a folder of these. Photographs stay where they are.</source>
        <translation>Eine GPX-, GeoJSON- oder KML-Datei, ein JPEG mit Ort oder ein Ordner davon. Fotos bleiben, wo sie sind.</translation>
    </message>
    <message>
        <location filename="../../processing/event_sheets.py"/>
        <source>A PDF for each sheet, named after event, round or hole, and sheet, such as “Heron Cup_round_1_greens.pdf”; and the tables pins and tee_setting of the rounds. Those of an earlier run are replaced.</source>
        <translation>Eine PDF-Datei je Blatt, benannt nach Wettspiel, Runde oder Bahn und Blatt, etwa „Heron Cup_round_1_greens.pdf“; dazu die Tabellen pins und tee_setting der Runden. Die eines früheren Laufs werden ersetzt.</translation>
    </message>
    <message>
        <location filename="../../processing/make_guide.py"/>
        <source>A PDF: tall pages with bookmarks and links for a phone, single pages for a printer, or a booklet to be folded and stapled. The log says what the guide lacks. Pages that have not changed since an earlier guide are taken over as they were.</source>
        <translation>Ein PDF: hohe Seiten mit Lesezeichen und Verweisen fürs Telefon, einzelne Seiten für den Drucker oder ein Heft zum Falten und Klammern. Das Protokoll sagt, was dem Buch fehlt. Seiten, die sich seit einem früheren Buch nicht geändert haben, werden übernommen, wie sie waren.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_drawing.py"/>
        <source>A ball there lies in the {kind}: draw the margin of one of them anew.</source>
        <translation>Ein Ball dort liegt in: {kind}. Den Rand eines der beiden neu zeichnen.</translation>
    </message>
    <message>
        <location filename="../../store/writing.py"/>
        <source>A change of the layer “{kind}” was refused; nothing was changed.</source>
        <translation>Eine Änderung am Layer „{kind}“ wurde abgelehnt; nichts wurde geändert.</translation>
    </message>
    <message>
        <location filename="../../desk/drawing_bar.py"/>
        <source>A click inside a green, a bunker, a tee, a pond, a fairway or an apron finds its margin in the image that is shown. Enter, a right click or a second click inside takes it, Esc drops it, + and - make it wider and tighter; the vertex tool reshapes it afterwards.</source>
        <translation>Ein Klick in ein Grün, einen Bunker, einen Abschlag, einen Teich, ein Fairway oder ein Vorgrün findet dessen Rand im gezeigten Bild. Eingabetaste, Rechtsklick oder ein zweiter Klick darin übernimmt ihn, Esc verwirft ihn, + und - machen ihn weiter und enger; das Stützpunktwerkzeug formt ihn danach um.</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>A click on the green of the hole in hand places its pin. The lines show the depth, the square line through the pointer, and what is counted off.</source>
        <translation>Ein Klick auf das Grün der gewählten Bahn setzt ihre Lochposition. Die Linien zeigen die Tiefe, die Querlinie durch den Mauszeiger und was von ihr gezählt wird.</translation>
    </message>
    <message>
        <location filename="../../store/writing.py"/>
        <source>A course has no layer “{kind}”.</source>
        <translation>Ein Platz hat keinen Layer „{kind}“.</translation>
    </message>
    <message>
        <location filename="../../desk/description_dialog.py"/>
        <source>A double click puts the note into the description.</source>
        <translation>Ein Doppelklick fügt die Notiz in die Beschreibung ein.</translation>
    </message>
    <message>
        <location filename="../../desk/hole_panel.py"/>
        <source>A double click takes the tool that draws it in hand.</source>
        <translation>Ein Doppelklick nimmt das Werkzeug, das es zeichnet, zur Hand.</translation>
    </message>
    <message>
        <location filename="../../guide/drawn_item.py"/>
        <source>A drawn part</source>
        <translation>Ein gezeichneter Teil</translation>
    </message>
    <message>
        <location filename="../../store/writing.py"/>
        <source>A feature of kind “{kind}” cannot be given to holes {numbers}.</source>
        <translation>Ein Objekt der Art „{kind}“ kann nicht den Bahnen {numbers} zugeordnet werden.</translation>
    </message>
    <message>
        <location filename="../../store/writing.py"/>
        <source>A feature of kind “{kind}” has a coordinate that is not a number.</source>
        <translation>Ein Objekt der Art „{kind}“ hat eine Koordinate, die keine Zahl ist.</translation>
    </message>
    <message>
        <location filename="../../store/writing.py"/>
        <source>A feature of kind “{kind}” has no geometry.</source>
        <translation>Ein Objekt der Art „{kind}“ hat keine Geometrie.</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>A file…</source>
        <translation>Eine Datei…</translation>
    </message>
    <message>
        <location filename="../../desk/event_draft.py"/>
        <source>A flight has no name.</source>
        <translation>Eine Gruppe hat keinen Namen.</translation>
    </message>
    <message>
        <location filename="../../guide/green_panel.py"/>
        <source>A green does not fit into {width} x {height} mm.</source>
        <translation>Ein Grün passt nicht in {width} x {height} mm.</translation>
    </message>
    <message>
        <location filename="../../desk/event_settings.py"/>
        <source>A green is shown no larger than 1:480</source>
        <translation>Kein Grün ist größer als 1:480 gezeigt</translation>
    </message>
    <message>
        <location filename="../../guide/hole_page.py"/>
        <source>A hole does not fit a page of {width} x {height} mm.</source>
        <translation>Eine Bahn passt nicht auf eine Seite von {width} x {height} mm.</translation>
    </message>
    <message>
        <location filename="../../processing/outline_feature.py"/>
        <source>A layer with one polygon in the CRS of the image: its kind, area in square metres (area_m2), how plainly its margin is seen, 0 to 1 (sharpness), the share of its margin that had to be guessed (guessed), and what is doubtful of it (remark). Where no margin can be seen it says why and makes none.</source>
        <translation>Ein Layer mit einer Fläche im KBS des Bildes: ihre Art, die Fläche in Quadratmetern (area_m2), wie deutlich ihr Rand zu sehen ist, 0 bis 1 (sharpness), der Anteil ihres Randes, der geraten werden musste (guessed), und was an ihr zweifelhaft ist (remark). Wo kein Rand zu sehen ist, wird gesagt warum, und keine entsteht.</translation>
    </message>
    <message>
        <location filename="../../store/committee.py"/>
        <source>A line must read round,flight,hole,yards.</source>
        <translation>Eine Zeile muss round,flight,hole,yards lauten.</translation>
    </message>
    <message>
        <location filename="../../store/committee.py"/>
        <source>A line must read round,hole,on,off,from and may go on with green_depth.</source>
        <translation>Eine Zeile muss round,hole,on,off,from lauten; green_depth darf folgen.</translation>
    </message>
    <message>
        <location filename="../../guide/pdf_join.py"/>
        <source>A link on page {page} leads to “{to}”, which is not there.</source>
        <translation>Ein Verweis auf Seite {page} führt zu „{to}“, das es nicht gibt.</translation>
    </message>
    <message>
        <location filename="../../guide/windows.py"/>
        <source>A margin of {margin} mm leaves nothing of {width} x {height} mm.</source>
        <translation>Ein Rand von {margin} mm lässt von {width} x {height} mm nichts übrig.</translation>
    </message>
    <message>
        <location filename="../../processing/check_markers.py"/>
        <source>A marker further out than this many yards is off. Empty: the course’s own setting.</source>
        <translation>Eine Marke, die um mehr als so viele Yards danebenliegt, weicht ab. Leer: die Einstellung des Platzes.</translation>
    </message>
    <message>
        <location filename="../../desk/hole_panel.py"/>
        <source>A new note on this hole</source>
        <translation>Neue Notiz zu dieser Bahn</translation>
    </message>
    <message>
        <location filename="../../guide/page_design.py"/>
        <source>A page of {width} x {height} mm cannot be laid out.</source>
        <translation>Eine Seite von {width} x {height} mm lässt sich nicht gestalten.</translation>
    </message>
    <message>
        <location filename="../../guide/sheets.py"/>
        <source>A page of {width} x {height} mm cannot be made.</source>
        <translation>Eine Seite von {width} x {height} mm ist nicht möglich.</translation>
    </message>
    <message>
        <location filename="../../guide/sheet_cells.py"/>
        <source>A page of {width} x {height} mm is too small for these greens and their figures.</source>
        <translation>Eine Seite von {width} x {height} mm ist zu klein für diese Grüns und ihre Maße.</translation>
    </message>
    <message>
        <location filename="../../guide/sheets.py"/>
        <source>A page of {width} x {height} mm is too small for this green.</source>
        <translation>Eine Seite von {width} x {height} mm ist zu klein für dieses Grün.</translation>
    </message>
    <message>
        <location filename="../../processing/make_guide.py"/>
        <source>A page that breaks one of these rules stops the guide, unless it is named here. green_scale: a green is shown no larger than 1:480. page_size: a page with fewer than nine greens measures no more than 107.95 x 177.8 mm (both Rules of Golf, Rule 4.3a).</source>
        <translation>Eine Seite, die eine dieser Regeln bricht, hält das Buch auf, wenn die Regel nicht hier genannt ist. green_scale: Ein Grün wird nicht größer als 1:480 gezeigt. page_size: Eine Seite mit weniger als neun Grüns misst höchstens 107,95 x 177,8 mm (beide Golfregeln, Regel 4.3a).</translation>
    </message>
    <message>
        <location filename="../../desk/event_settings.py"/>
        <source>A page with a green measures no more than 107.95 × 177.8 mm</source>
        <translation>Eine Seite mit einem Grün misst höchstens 107,95 × 177,8 mm</translation>
    </message>
    <message>
        <location filename="../../guide/composites.py"/>
        <source>A patch wants {date}, which is not used; it was left out.</source>
        <translation>Ein Flicken verlangt {date}, was nicht verwendet wird; er wurde ausgelassen.</translation>
    </message>
    <message>
        <location filename="../../imagery/image.py"/>
        <source>A picture of {width} x {height} pixels does not fit into memory.</source>
        <translation>Ein Bild von {width} x {height} Pixeln passt nicht in den Arbeitsspeicher.</translation>
    </message>
    <message>
        <location filename="../../desk/event_settings.py"/>
        <source>A pin nearer to the green’s margin is remarked</source>
        <translation>Eine Lochposition näher am Rand des Grüns bekommt eine Bemerkung</translation>
    </message>
    <message>
        <location filename="../../desk/event_settings.py"/>
        <source>A pin on steeper ground is remarked</source>
        <translation>Eine Lochposition auf steilerem Grund bekommt eine Bemerkung</translation>
    </message>
    <message>
        <location filename="../../processing/outline_feature.py"/>
        <source>A place inside</source>
        <translation>Eine Stelle darin</translation>
    </message>
    <message>
        <location filename="../../processing/outline_feature.py"/>
        <source>A place well inside of what is to be outlined: x,y [EPSG:n]. Without a CRS it is that of the project, and where there is no project that of the image.</source>
        <translation>Eine Stelle deutlich innerhalb dessen, was zu umreißen ist: x,y [EPSG:n]. Ohne KBS gilt das des Projekts, und wo kein Projekt ist, das des Bildes.</translation>
    </message>
    <message>
        <location filename="../../processing/event_sheets.py"/>
        <source>A raster of heights, such as a digital terrain model. With it the sheets tell how the ground falls at the pins and rises to the greens. See first whether the Local Rules let players carry that.</source>
        <translation>Ein Raster mit Höhen, etwa ein digitales Geländemodell. Mit ihm sagen die Blätter, wie das Gelände an den Lochpositionen fällt und zu den Grüns ansteigt. Vorher nachsehen, ob die Platzregeln Spielern erlauben, das mitzuführen.</translation>
    </message>
    <message>
        <location filename="../../processing/measure_course.py"/>
        <source>A raster of heights, such as a digital terrain model. With it the table heights is written: how high tees, turn points and greens lie, and the length with the rise added (plays). No other figure changes.</source>
        <translation>Ein Raster mit Höhen, etwa ein digitales Geländemodell. Damit wird die Tabelle heights geschrieben: wie hoch Abschläge, Knickpunkte und Grüns liegen, und die Länge samt Anstieg (plays). Kein anderes Maß ändert sich.</translation>
    </message>
    <message>
        <location filename="../../processing/set_tees.py"/>
        <source>A raster of heights, such as a digital terrain model. With it the table says how much higher than the markers the green lies (rise_m). No other figure changes.</source>
        <translation>Ein Raster mit Höhen, etwa ein digitales Geländemodell. Mit ihm sagt die Tabelle, wie viel höher als die Abschlagmarken das Grün liegt (rise_m). Kein anderes Maß ändert sich.</translation>
    </message>
    <message>
        <location filename="../../processing/place_pins.py"/>
        <source>A raster of heights. With it the table tells how steep the ground is at each pin and where it falls to, and pins on ground steeper than the event allows are remarked on.</source>
        <translation>Ein Höhenraster. Mit ihm sagt die Tabelle, wie steil das Gelände an jeder Lochposition ist und wohin es fällt; Lochpositionen auf steilerem Gelände, als das Wettspiel erlaubt, erhalten eine Bemerkung.</translation>
    </message>
    <message>
        <location filename="../../processing/compose_image.py"/>
        <source>A recipe.json of an earlier run of this base: the same dates, patches and pictures again. HOLES, DATES, PIXEL_M and KEEP_M do not count then.</source>
        <translation>Eine recipe.json eines früheren Laufs mit dieser Grundlage: dieselben Aufnahmetage, Flicken und Bilder noch einmal. HOLES, DATES, PIXEL_M und KEEP_M gelten dann nicht.</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>A row a figure is about: a click shows it on the drawing and on the map, a click on a heading sorts. Point at a figure to read it unrounded with its uncertainty; rows in italics have a remark.</source>
        <translation>Eine Zeile je Objekt: ein Klick zeigt es auf der Zeichnung und der Karte, ein Klick auf eine Überschrift sortiert. Auf ein Maß zeigen, um es ungerundet mit seiner Unsicherheit zu lesen; kursive Zeilen haben eine Bemerkung.</translation>
    </message>
    <message>
        <location filename="../../guide/windows.py"/>
        <source>A scale of 1:{scale} means nothing.</source>
        <translation>Ein Maßstab von 1:{scale} ist nicht möglich.</translation>
    </message>
    <message>
        <location filename="../../desk/drawing_bar.py"/>
        <source>A smooth curve through the clicks</source>
        <translation>Eine glatte Kurve durch die Klicks</translation>
    </message>
    <message>
        <location filename="../../store/scorecard.py"/>
        <source>A tee set named “{name}” cannot stand in a scorecard file.</source>
        <translation>Ein Abschlagset namens „{name}“ kann nicht in einer Scorekartendatei stehen.</translation>
    </message>
    <message>
        <location filename="../../desk/page_designer.py"/>
        <source>A template is kept beside its course’s file.</source>
        <translation>Eine Vorlage wird neben der Datei ihres Platzes aufbewahrt.</translation>
    </message>
    <message>
        <location filename="../../desk/drawing_bar.py"/>
        <source>A thing of this kind has no margin that an image shows: draw it by hand.</source>
        <translation>Etwas dieser Art hat keinen Rand, den ein Bild zeigt: von Hand zeichnen.</translation>
    </message>
    <message>
        <location filename="../../guide/windows.py"/>
        <source>A window of {width} x {height} pixels cannot be made.</source>
        <translation>Ein Bildausschnitt von {width} x {height} Pixeln lässt sich nicht erzeugen.</translation>
    </message>
    <message>
        <location filename="../../guide/windows.py"/>
        <source>A window's width, height and dots per inch must be greater than 0.</source>
        <translation>Breite, Höhe und Punkte pro Zoll eines Bildausschnitts müssen größer als 0 sein.</translation>
    </message>
    <message>
        <location filename="../../store/writing.py"/>
        <source>A {geometry} cannot be a feature of kind “{kind}”.</source>
        <translation>Eine Geometrie vom Typ {geometry} kann kein Objekt der Art „{kind}“ sein.</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>A&amp;pply</source>
        <translation>An&amp;wenden</translation>
    </message>
    <message>
        <location filename="../../processing/import_notes.py"/>
        <source>ADDED: how many notes came in. KNOWN: how many were there already. The log names what was left out.</source>
        <translation>ADDED: wie viele Notizen hereinkamen. KNOWN: wie viele schon da waren. Das Protokoll nennt, was ausgelassen wurde.</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>Above and below</source>
        <translation>Oben und unten</translation>
    </message>
    <message>
        <location filename="../../desk/registering_dialog.py"/>
        <source>Acce&amp;pt what is ticked</source>
        <translation>Angehaktes über&amp;nehmen</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <location filename="../../desk/hole_panel.py"/>
        <source>Add</source>
        <translation>Hinzufügen</translation>
    </message>
    <message>
        <location filename="../../store/vector_source.py"/>
        <source>Add a column “{column}” that names the outline of each point, or choose another KIND.</source>
        <translation>Eine Spalte „{column}“ ergänzen, die zu jedem Punkt seinen Umriss nennt, oder eine andere Art (KIND) wählen.</translation>
    </message>
    <message>
        <location filename="../../desk/tees_dialog.py"/>
        <source>Add a flight, then type the lengths of its holes.</source>
        <translation>Eine Gruppe hinzufügen, dann die Längen ihrer Bahnen eintragen.</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <source>Add a page after the one chosen</source>
        <translation>Eine Seite nach der gewählten einfügen</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>Add a round</source>
        <translation>Runde hinzufügen</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>Add it, then try again.</source>
        <translation>Ihn hinzufügen, dann erneut versuchen.</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>Add its image to the project.</source>
        <translation>Sein Bild zum Projekt hinzufügen.</translation>
    </message>
    <message>
        <location filename="../../desk/ties.py"/>
        <source>Add their images to the project, then try again.</source>
        <translation>Ihre Bilder dem Projekt hinzufügen, dann erneut versuchen.</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>Add {} to the project.</source>
        <translation>Zum Projekt hinzufügen: {}.</translation>
    </message>
    <message>
        <location filename="../../desk/tees_dialog.py"/>
        <source>Adds a flight; give it a name and choose its tee set</source>
        <translation>Fügt eine Gruppe hinzu; Namen geben und Abschlagset wählen</translation>
    </message>
    <message>
        <location filename="../../desk/event_settings.py"/>
        <source>Adds the next round, on all holes of the course</source>
        <translation>Fügt die nächste Runde hinzu, über alle Bahnen des Platzes</translation>
    </message>
    <message>
        <location filename="../../desk/committee_figures.py"/>
        <location filename="../../desk/toolbar.py"/>
        <source>All files</source>
        <translation>Alle Dateien</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>All holes</source>
        <translation>Alle Bahnen</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <source>All rounds</source>
        <translation>Alle Runden</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>All {} features shown.</source>
        <translation>Alle {} Objekte werden gezeigt.</translation>
    </message>
    <message>
        <location filename="../../desk/pointer.py"/>
        <source>Along</source>
        <translation>Entlang</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Along the line of play to the green’s middle</source>
        <translation>Entlang der Spiellinie bis zur Mitte des Grüns</translation>
    </message>
    <message>
        <location filename="../../processing/import_features.py"/>
        <source>An OpenStreetMap file (.osm, .osm.pbf, or GeoJSON with golf tags), or any vector layer or file: shapefile, KML, GPX, DXF, GeoPackage, or a CSV of surveyed points with columns lon and lat, or x and y. In a CSV, the points of a line or an area name it in a column “feature”. Fields with the names of the course’s own fields are taken over.</source>
        <translation>Eine OpenStreetMap-Datei (.osm, .osm.pbf oder GeoJSON mit Golf-Tags) oder ein beliebiger Vektorlayer oder eine Vektordatei: Shapefile, KML, GPX, DXF, GeoPackage oder eine CSV vermessener Punkte mit den Spalten lon und lat oder x und y. In einer CSV nennen die Punkte einer Linie oder Fläche diese in einer Spalte „feature“. Felder mit den Namen der Felder des Platzes werden übernommen.</translation>
    </message>
    <message>
        <location filename="../../desk/page_editor.py"/>
        <source>An image or a PDF. It is copied into the course’s folder of the guide, to stay with it.</source>
        <translation>Ein Bild oder PDF. Es wird in den Ordner des Buchs beim Platz kopiert, damit es dabei bleibt.</translation>
    </message>
    <message>
        <location filename="../../processing/outline_feature.py"/>
        <source>Any raster layer that shows the ground in colours or greys, also tiles and map services. Their servers are asked for one window round the place.</source>
        <translation>Ein Rasterlayer, der den Boden in Farben oder Grautönen zeigt, auch Kacheln und Kartendienste. Von deren Servern wird ein Ausschnitt um die Stelle geholt.</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>Apart</source>
        <translation>Abstand</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Approach</source>
        <translation>Annäherung</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Approach from (yd before the green)</source>
        <translation>Annäherung ab (yd vor dem Grün)</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Approach is taken from here</source>
        <translation>Annäherung wird von hier genommen</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Apron</source>
        <translation>Vorgrün</translation>
    </message>
    <message>
        <location filename="../../processing/archive_event.py"/>
        <source>Archive</source>
        <translation>Archiv</translation>
    </message>
    <message>
        <location filename="../../processing/archive_event.py"/>
        <source>Archive an event</source>
        <translation>Ein Wettspiel archivieren</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <location filename="../../desk/pointer.py"/>
        <source>Area</source>
        <translation>Fläche</translation>
    </message>
    <message>
        <location filename="../../guide/expressions.py"/>
        <source>Arguments</source>
        <translation>Argumente</translation>
    </message>
    <message>
        <location filename="../../desk/slope_shading.py"/>
        <source>Arrows point downhill.</source>
        <translation>Die Pfeile zeigen bergab.</translation>
    </message>
    <message>
        <location filename="../../desk/description_dialog.py"/>
        <source>As it is printed</source>
        <translation>Wie es gedruckt wird</translation>
    </message>
    <message>
        <location filename="../../desk/hidden_panel.py"/>
        <source>As it was found</source>
        <translation>Wie gefunden</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>As measured, level: no height is in it</source>
        <translation>Wie gemessen, waagerecht: Keine Höhe steckt darin</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Aside</source>
        <translation>Seitlich</translation>
    </message>
    <message>
        <location filename="../../store/tables.py"/>
        <source>Ask for the tables as csv instead.</source>
        <translation>Die Tabellen stattdessen als csv ausgeben lassen.</translation>
    </message>
    <message>
        <location filename="../../desk/length_table.py"/>
        <location filename="../../guide/sheets.py"/>
        <source>Asked</source>
        <translation>Verlangt</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>At</source>
        <translation>Bei</translation>
    </message>
    <message>
        <location filename="../../guide/sheet_cells.py"/>
        <source>At 1:{scale} the greens do not fit; this page needs 1:{fits}.</source>
        <translation>Bei 1:{scale} passen die Grüns nicht; diese Seite braucht 1:{fits}.</translation>
    </message>
    <message>
        <location filename="../../desk/propose_dialog.py"/>
        <source>At work</source>
        <translation>Bei der Arbeit</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>Audit of the pins of “{}”</source>
        <translation>Abgleich der Lochpositionen von „{}“</translation>
    </message>
    <message>
        <location filename="../../desk/auditing.py"/>
        <location filename="../../processing/audit_pins.py"/>
        <source>Audit pins</source>
        <translation>Lochpositionen abgleichen</translation>
    </message>
    <message>
        <location filename="../../guide/event_sheets.py"/>
        <source>Audit sheet for the committee</source>
        <translation>Prüfblatt für die Spielleitung</translation>
    </message>
    <message>
        <location filename="../../desk/event_settings.py"/>
        <source>Audit: the same up to</source>
        <translation>Abgleich: gleich bis</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Azimuth</source>
        <translation>Azimut</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Azimuth that points up</source>
        <translation>Azimut, der nach oben zeigt</translation>
    </message>
    <message>
        <location filename="../../desk/pin_table.py"/>
        <location filename="../../desk/propose_dialog.py"/>
        <location filename="../../guide/sheets.py"/>
        <source>Back</source>
        <translation>Hinten</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Back (m)</source>
        <translation>Hinten (m)</translation>
    </message>
    <message>
        <location filename="../../desk/propose_dialog.py"/>
        <source>Balance</source>
        <translation>Ausgewogenheit</translation>
    </message>
    <message>
        <location filename="../../desk/propose_dialog.py"/>
        <source>Balance, before → after</source>
        <translation>Ausgewogenheit, vorher → nachher</translation>
    </message>
    <message>
        <location filename="../../imagery/image.py"/>
        <source>Band {number} of the image is tagged as opacity but holds a picture (often near infrared); it was left out.</source>
        <translation>Kanal {number} des Bildes ist als Deckkraft ausgewiesen, enthält aber ein Bild (oft nahes Infrarot); er wurde ausgelassen.</translation>
    </message>
    <message>
        <location filename="../../processing/register_images.py"/>
        <source>Base</source>
        <translation>Grundlage</translation>
    </message>
    <message>
        <location filename="../../processing/compose_image.py"/>
        <source>Base date</source>
        <translation>Aufnahmetag als Grundlage</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>Begin the line at the back tee, or give the tee to the hole that is played from it.</source>
        <translation>Die Linie am hintersten Abschlag beginnen oder den Abschlag der Bahn zuordnen, die von ihm gespielt wird.</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Begins</source>
        <translation>Beginnt am</translation>
    </message>
    <message>
        <location filename="../../desk/registering_dialog.py"/>
        <source>Being looked at…</source>
        <translation>Wird angesehen…</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <source>Booklet for print</source>
        <translation>Heft für den Druck</translation>
    </message>
    <message>
        <location filename="../../desk/ties.py"/>
        <source>Both {} and {} must be layers of this project.</source>
        <translation>{} und {} müssen beide Layer dieses Projekts sein.</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Boundary (out of bounds)</source>
        <translation>Platzgrenze (Aus)</translation>
    </message>
    <message>
        <location filename="../../guide/book_pages.py"/>
        <source>Boundary lines are drawn for orientation and have no legal force.</source>
        <translation>Grenzlinien sind zur Orientierung gezeichnet und haben keine rechtliche Wirkung.</translation>
    </message>
    <message>
        <location filename="../../processing/import_features.py"/>
        <source>Bring features in</source>
        <translation>Objekte einlesen</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>Bring features in from OpenStreetMap or another file or layer</source>
        <translation>Objekte aus OpenStreetMap oder einer anderen Datei oder einem Layer einlesen</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>Bring features in from a file</source>
        <translation>Objekte aus einer Datei einlesen</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>Bring it up to date? The old file is kept beside it.</source>
        <translation>Auf den neuen Stand bringen? Die alte Datei bleibt daneben erhalten.</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>Bring its features in first (importfeatures).</source>
        <translation>Zuerst seine Objekte einlesen (importfeatures).</translation>
    </message>
    <message>
        <location filename="../../processing/import_notes.py"/>
        <source>Bring notes in</source>
        <translation>Notizen hereinholen</translation>
    </message>
    <message>
        <location filename="../../processing/import_features.py"/>
        <source>Brings greens, tees, bunkers, lines of play and other features into a course: from OpenStreetMap (golf=*), or from any vector layer or file whose kind you name. Each feature is given to the holes it lies on. Importing the same source again adds nothing twice.</source>
        <translation>Liest Grüns, Abschläge, Bunker, Spiellinien und andere Objekte in einen Platz ein: aus OpenStreetMap (golf=*) oder aus einem beliebigen Vektorlayer oder einer Vektordatei, deren Art angegeben wird. Jedes Objekt wird den Bahnen zugeordnet, auf denen es liegt. Dieselbe Quelle erneut einzulesen fügt nichts doppelt hinzu.</translation>
    </message>
    <message>
        <location filename="../../processing/import_notes.py"/>
        <source>Brings notes from the ground into a course: waypoints of a GPX file, points of GeoJSON or KML with a text, and photographs that know where they were taken. Each is given to the hole it lies nearest to. The same notes brought in again are not doubled.</source>
        <translation>Holt Notizen vom Platz herein: Wegpunkte einer GPX-Datei, Punkte aus GeoJSON oder KML mit Text und Fotos, die ihren Ort kennen. Jede kommt zur nächsten Bahn. Dieselben Notizen noch einmal hereingeholt werden nicht verdoppelt.</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Brought in from</source>
        <translation>Übernommen aus</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>Brought in: {}.</source>
        <translation>Eingelesen: {}.</translation>
    </message>
    <message>
        <location filename="../../desk/hidden_panel.py"/>
        <source>Brush</source>
        <translation>Pinsel</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Bunker</source>
        <translation>Bunker</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>Burns the course’s distance markers into the pictures at the place where the distance each states is true, with that figure beside it.</source>
        <translation>Zeichnet die Entfernungsmarken des Platzes dort in die Bilder, wo die angegebene Entfernung stimmt, mit der Zahl daneben.</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>By</source>
        <translation>Um</translation>
    </message>
    <message>
        <location filename="../../processing/import_features.py"/>
        <source>COUNTS: how many features of each layer came in. COUNT: how many in all. LEFT_OUT: what was left out, and why. REMARKS: what was mended or is doubtful. The log says the same.</source>
        <translation>COUNTS: wie viele Objekte jedes Layers eingelesen wurden. COUNT: wie viele insgesamt. LEFT_OUT: was ausgelassen wurde und warum. REMARKS: was behoben wurde oder zweifelhaft ist. Das Protokoll sagt dasselbe.</translation>
    </message>
    <message>
        <location filename="../../desk/committee_figures.py"/>
        <location filename="../../processing/committee.py"/>
        <location filename="../../processing/start_course.py"/>
        <source>CSV (*.csv *.txt)</source>
        <translation>CSV (*.csv *.txt)</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <location filename="../../desk/propose_dialog.py"/>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <location filename="../../processing/archive_event.py"/>
        <source>Cancelled: no archive was written; what was there is as it was.</source>
        <translation>Abgebrochen: Es wurde kein Archiv geschrieben; was da war, ist wie zuvor.</translation>
    </message>
    <message>
        <location filename="../../processing/make_guide.py"/>
        <source>Cancelled: no guide was written; what was there is as it was.</source>
        <translation>Abgebrochen: Es wurde kein Buch geschrieben; was da war, ist, wie es war.</translation>
    </message>
    <message>
        <location filename="../../desk/hole_panel.py"/>
        <source>Card</source>
        <translation>Karte</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Carry</source>
        <translation>Carry</translation>
    </message>
    <message>
        <location filename="../../desk/propose_dialog.py"/>
        <location filename="../../guide/sheets.py"/>
        <source>Centre</source>
        <translation>Mitte</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>Change</source>
        <translation>Ändern</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <source>Change its look…</source>
        <translation>Aussehen ändern…</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>Chec&amp;ks panel</source>
        <translation>Bedienfeld „Prüfun&amp;g“</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>Check &amp;again</source>
        <translation>&amp;Erneut prüfen</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>Check HOLES against the course’s holes.</source>
        <translation>HOLES mit den Bahnen des Platzes vergleichen.</translation>
    </message>
    <message>
        <location filename="../../processing/event_sheets.py"/>
        <location filename="../../processing/make_guide.py"/>
        <source>Check ROUND; the event has {} rounds.</source>
        <translation>ROUND prüfen; das Wettspiel hat {} Runden.</translation>
    </message>
    <message>
        <location filename="../../desk/repairing.py"/>
        <source>Check again and look at what is found now.</source>
        <translation>Erneut prüfen und die neuen Befunde ansehen.</translation>
    </message>
    <message>
        <location filename="../../processing/check_markers.py"/>
        <source>Check distance markers</source>
        <translation>Entfernungsmarken prüfen</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>Check its figures against the committee’s.</source>
        <translation>Die Angaben mit denen der Spielleitung vergleichen.</translation>
    </message>
    <message>
        <location filename="../../processing/audit_pins.py"/>
        <source>Check its name, or place its pins first.</source>
        <translation>Den Namen prüfen oder zuerst seine Lochpositionen setzen.</translation>
    </message>
    <message>
        <location filename="../../processing/event_sheets.py"/>
        <location filename="../../processing/make_guide.py"/>
        <source>Check its name; the course has {}.</source>
        <translation>Den Namen prüfen; der Platz hat {}.</translation>
    </message>
    <message>
        <location filename="../../desk/masks.py"/>
        <source>Check its source in the layer “Image date”.</source>
        <translation>Seine Quelle im Layer „Bilddatum“ prüfen.</translation>
    </message>
    <message>
        <location filename="../../imagery/registration.py"/>
        <source>Check that both show this ground and lie within {far} m of it, or set tie points by hand.</source>
        <translation>Prüfen, ob beide dieses Gelände zeigen und höchstens {far} m daneben liegen, oder Passpunkte von Hand setzen.</translation>
    </message>
    <message>
        <location filename="../../desk/composites.py"/>
        <source>Check that it is there, and compose again.</source>
        <translation>Prüfen, ob es da ist, und erneut zusammensetzen.</translation>
    </message>
    <message>
        <location filename="../../desk/editing.py"/>
        <source>Check that its file may be written to and is open in no other program.</source>
        <translation>Prüfen, ob in die Datei geschrieben werden darf und kein anderes Programm sie geöffnet hat.</translation>
    </message>
    <message>
        <location filename="../../guide/rendered.py"/>
        <source>Check that its server answers and try again.</source>
        <translation>Prüfen, ob sein Server antwortet, und erneut versuchen.</translation>
    </message>
    <message>
        <location filename="../../imagery/composite_file.py"/>
        <location filename="../../imagery/hand_masks.py"/>
        <location filename="../../imagery/window.py"/>
        <source>Check that the disk has room and that you may write to the folder.</source>
        <translation>Prüfen, ob auf dem Datenträger Platz ist und im Ordner geschrieben werden darf.</translation>
    </message>
    <message>
        <location filename="../../imagery/composite_file.py"/>
        <source>Check that the disk has room; close programs that show the picture and run again.</source>
        <translation>Prüfen, ob der Datenträger Platz hat; Programme schließen, die das Bild zeigen, und erneut starten.</translation>
    </message>
    <message>
        <location filename="../../guide/pdf_objects.py"/>
        <source>Check that the file is there and that you may read it.</source>
        <translation>Prüfen, ob die Datei vorhanden ist und gelesen werden darf.</translation>
    </message>
    <message>
        <location filename="../../imagery/image.py"/>
        <location filename="../../imagery/reach.py"/>
        <location filename="../../imagery/terrain.py"/>
        <source>Check that the file is there and whole, and opens in QGIS as a raster layer.</source>
        <translation>Prüfen, ob die Datei vorhanden und vollständig ist und sich in QGIS als Rasterlayer öffnen lässt.</translation>
    </message>
    <message>
        <location filename="../../imagery/moved_file.py"/>
        <source>Check that the file is there and whole.</source>
        <translation>Prüfen, ob die Datei vorhanden und vollständig ist.</translation>
    </message>
    <message>
        <location filename="../../imagery/quiet.py"/>
        <source>Check that the file is whole and opens in QGIS, or choose another.</source>
        <translation>Prüfen, ob die Datei vollständig ist und sich in QGIS öffnen lässt, oder eine andere wählen.</translation>
    </message>
    <message>
        <location filename="../../store/field_notes.py"/>
        <source>Check that the file is whole, or save it anew.</source>
        <translation>Prüfen, ob die Datei ganz ist, oder sie neu speichern.</translation>
    </message>
    <message>
        <location filename="../../imagery/looking.py"/>
        <source>Check that the images of the dates lie where the course lies.</source>
        <translation>Prüfen, ob die Bilder der Daten dort liegen, wo der Platz liegt.</translation>
    </message>
    <message>
        <location filename="../../desk/page_editor.py"/>
        <location filename="../../guide/page_cache.py"/>
        <source>Check that there is room on the disk and that you may write there.</source>
        <translation>Prüfen, ob auf dem Datenträger Platz ist und ob dort geschrieben werden darf.</translation>
    </message>
    <message>
        <location filename="../../guide/page_painting.py"/>
        <location filename="../../guide/page_pictures.py"/>
        <location filename="../../guide/painted_sheets.py"/>
        <location filename="../../guide/pdf_join.py"/>
        <location filename="../../guide/registrations.py"/>
        <source>Check that there is room on the disk and try again.</source>
        <translation>Prüfen, ob auf dem Datenträger Platz ist, dann erneut versuchen.</translation>
    </message>
    <message>
        <location filename="../../guide/event_archive.py"/>
        <source>Check that there is room on the disk, and that all files named can be read.</source>
        <translation>Prüfen, ob auf dem Datenträger Platz ist und alle genannten Dateien lesbar sind.</translation>
    </message>
    <message>
        <location filename="../../guide/page_templates.py"/>
        <source>Check that there is room on the disk, and that you may write beside the course.</source>
        <translation>Prüfen, ob auf dem Datenträger Platz ist und ob neben dem Platz geschrieben werden darf.</translation>
    </message>
    <message>
        <location filename="../../store/course_file.py"/>
        <location filename="../../store/recovery.py"/>
        <source>Check that you may read it.</source>
        <translation>Prüfen, ob Leserechte bestehen.</translation>
    </message>
    <message>
        <location filename="../../guide/outlining.py"/>
        <source>Check the CRS of the image and of the place.</source>
        <translation>Das KBS des Bildes und der Stelle prüfen.</translation>
    </message>
    <message>
        <location filename="../../imagery/reach.py"/>
        <source>Check the CRS of the image.</source>
        <translation>Das KBS des Bildes prüfen.</translation>
    </message>
    <message>
        <location filename="../../guide/fetched.py"/>
        <source>Check the CRS of the layer and of the course.</source>
        <translation>Das KBS des Layers und das des Platzes prüfen.</translation>
    </message>
    <message>
        <location filename="../../guide/rendered.py"/>
        <source>Check the connection to its server and try again.</source>
        <translation>Die Verbindung zum Server prüfen und erneut versuchen.</translation>
    </message>
    <message>
        <location filename="../../store/course_file.py"/>
        <location filename="../../store/tables.py"/>
        <source>Check the folder and the disk.</source>
        <translation>Ordner und Datenträger prüfen.</translation>
    </message>
    <message>
        <location filename="../../store/course_file.py"/>
        <source>Check the number, or take the UTM zone of the course.</source>
        <translation>Die Nummer prüfen oder die UTM-Zone des Platzes nehmen.</translation>
    </message>
    <message>
        <location filename="../../store/committee.py"/>
        <location filename="../../store/scorecard.py"/>
        <source>Check the path of the CSV file.</source>
        <translation>Den Pfad der CSV-Datei prüfen.</translation>
    </message>
    <message>
        <location filename="../../store/course_file.py"/>
        <source>Check the path, or start a new course.</source>
        <translation>Den Pfad prüfen oder einen neuen Platz anlegen.</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>Checks</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <location filename="../../guide/sheet_cells.py"/>
        <source>Choose 1:{limit} or a smaller scale.</source>
        <translation>1:{limit} oder einen kleineren Maßstab wählen.</translation>
    </message>
    <message>
        <location filename="../../store/field_notes.py"/>
        <source>Choose a GPX, GeoJSON or KML file, photographs with a position, or a folder of these.</source>
        <translation>Eine GPX-, GeoJSON- oder KML-Datei, Fotos mit Ort oder einen Ordner davon wählen.</translation>
    </message>
    <message>
        <location filename="../../guide/pdf_objects.py"/>
        <source>Choose a PDF file, or make the page anew.</source>
        <translation>Eine PDF-Datei wählen oder die Seite neu erzeugen.</translation>
    </message>
    <message>
        <location filename="../../imagery/registration.py"/>
        <source>Choose a base that covers the course, and check the CRS of both images.</source>
        <translation>Eine Grundlage wählen, die den Platz zeigt, und das KBS beider Bilder prüfen.</translation>
    </message>
    <message>
        <location filename="../../store/course_file.py"/>
        <source>Choose a course file (.gpkg) instead.</source>
        <translation>Stattdessen eine Platzdatei (.gpkg) wählen.</translation>
    </message>
    <message>
        <location filename="../../store/course_file.py"/>
        <source>Choose a course file (.gpkg).</source>
        <translation>Eine Platzdatei (.gpkg) wählen.</translation>
    </message>
    <message>
        <location filename="../../store/course_file.py"/>
        <source>Choose a course file made with “Start a course”.</source>
        <translation>Eine Platzdatei wählen, die mit „Platz anlegen“ erstellt wurde.</translation>
    </message>
    <message>
        <location filename="../../store/field_notes.py"/>
        <source>Choose a file or a folder that is.</source>
        <translation>Eine Datei oder einen Ordner wählen, die es gibt.</translation>
    </message>
    <message>
        <location filename="../../processing/import_notes.py"/>
        <source>Choose a file or a folder.</source>
        <translation>Eine Datei oder einen Ordner wählen.</translation>
    </message>
    <message>
        <location filename="../../guide/event_archive.py"/>
        <source>Choose a file that is.</source>
        <translation>Eine Datei wählen, die es gibt.</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <location filename="../../desk/measure_dialog.py"/>
        <source>Choose a folder for the tables</source>
        <translation>Ordner für die Tabellen wählen</translation>
    </message>
    <message>
        <location filename="../../store/files.py"/>
        <source>Choose a folder that exists and that you may write to, and close the file in other programs.</source>
        <translation>Einen vorhandenen Ordner mit Schreibrecht wählen und die Datei in anderen Programmen schließen.</translation>
    </message>
    <message>
        <location filename="../../imagery/composing.py"/>
        <source>Choose a folder that exists and that you may write to.</source>
        <translation>Einen Ordner wählen, den es gibt und in den geschrieben werden darf.</translation>
    </message>
    <message>
        <location filename="../../processing/algorithm.py"/>
        <source>Choose a folder you may write to as OUTPUT.</source>
        <translation>Als OUTPUT einen Ordner wählen, in den geschrieben werden darf.</translation>
    </message>
    <message>
        <location filename="../../imagery/moved_file.py"/>
        <source>Choose a folder you may write to, and close the image in other programs.</source>
        <translation>Einen Ordner mit Schreibrecht wählen und das Bild in anderen Programmen schließen.</translation>
    </message>
    <message>
        <location filename="../../desk/composing_dialog.py"/>
        <source>Choose a folder you may write to.</source>
        <translation>Einen Ordner wählen, in den geschrieben werden darf.</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>Choose a hole, or several with Ctrl or Shift; Ctrl+A chooses all.</source>
        <translation>Eine Bahn wählen, mehrere mit Strg oder Umschalt; Strg+A wählt alle.</translation>
    </message>
    <message>
        <location filename="../../guide/sheet_cells.py"/>
        <source>Choose a larger page, fewer greens on a page or a smaller scale.</source>
        <translation>Eine größere Seite, weniger Grüns je Seite oder einen kleineren Maßstab wählen.</translation>
    </message>
    <message>
        <location filename="../../guide/sheet_cells.py"/>
        <source>Choose a larger page, or fewer greens on a page.</source>
        <translation>Eine größere Seite oder weniger Grüns je Seite wählen.</translation>
    </message>
    <message>
        <location filename="../../guide/green_panel.py"/>
        <location filename="../../guide/sheets.py"/>
        <source>Choose a larger page.</source>
        <translation>Eine größere Seite wählen.</translation>
    </message>
    <message>
        <location filename="../../guide/pdf_join.py"/>
        <source>Choose a larger sheet.</source>
        <translation>Einen größeren Bogen wählen.</translation>
    </message>
    <message>
        <location filename="../../store/course_file.py"/>
        <source>Choose a name that ends in .gpkg.</source>
        <translation>Einen Namen wählen, der auf .gpkg endet.</translation>
    </message>
    <message>
        <location filename="../../guide/hole_page.py"/>
        <source>Choose a page of 70 x 110 mm or larger.</source>
        <translation>Eine Seite von 70 x 110 mm oder größer wählen.</translation>
    </message>
    <message>
        <location filename="../../imagery/outline.py"/>
        <source>Choose a place that the image covers, or another image.</source>
        <translation>Eine Stelle wählen, die das Bild zeigt, oder ein anderes Bild.</translation>
    </message>
    <message>
        <location filename="../../processing/terrain.py"/>
        <source>Choose a raster file with one band of heights, such as a digital terrain model.</source>
        <translation>Eine Rasterdatei mit einem Höhenkanal wählen, etwa ein digitales Geländemodell.</translation>
    </message>
    <message>
        <location filename="../../desk/dates.py"/>
        <source>Choose a raster image that is not one of its dates yet.</source>
        <translation>Ein Rasterbild wählen, das noch kein Bilddatum des Platzes ist.</translation>
    </message>
    <message>
        <location filename="../../imagery/terrain.py"/>
        <source>Choose a raster with one band of heights, such as a digital terrain model.</source>
        <translation>Ein Raster mit einem Höhenkanal wählen, etwa ein digitales Geländemodell.</translation>
    </message>
    <message>
        <location filename="../../processing/compose_image.py"/>
        <source>Choose a recipe.json that was written beside composed pictures.</source>
        <translation>Eine recipe.json wählen, die neben zusammengesetzten Bildern geschrieben wurde.</translation>
    </message>
    <message>
        <location filename="../../guide/windows.py"/>
        <source>Choose a smaller margin or a larger window.</source>
        <translation>Einen kleineren Rand oder einen größeren Bildausschnitt wählen.</translation>
    </message>
    <message>
        <location filename="../../guide/rules.py"/>
        <source>Choose a smaller page, or say that the rule does not apply.</source>
        <translation>Eine kleinere Seite wählen oder sagen, dass die Regel nicht gilt.</translation>
    </message>
    <message>
        <location filename="../../imagery/image.py"/>
        <source>Choose a smaller panel or fewer dots per inch.</source>
        <translation>Ein kleineres Bildfeld oder weniger Punkte pro Zoll wählen.</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>Choose a terrain model</source>
        <translation>Ein Geländemodell wählen</translation>
    </message>
    <message>
        <location filename="../../processing/import_features.py"/>
        <source>Choose a vector layer or a file as SOURCE.</source>
        <translation>Als SOURCE einen Vektorlayer oder eine Datei wählen.</translation>
    </message>
    <message>
        <location filename="../../store/openstreetmap.py"/>
        <source>Choose an OpenStreetMap file (.osm, .osm.pbf or GeoJSON).</source>
        <translation>Eine OpenStreetMap-Datei (.osm, .osm.pbf oder GeoJSON) wählen.</translation>
    </message>
    <message>
        <location filename="../../store/vector_source.py"/>
        <source>Choose an existing file as SOURCE.</source>
        <translation>Eine vorhandene Datei als Quelle (SOURCE) wählen.</translation>
    </message>
    <message>
        <location filename="../../imagery/image.py"/>
        <source>Choose an image of the course's ground; if it is one, check its CRS.</source>
        <translation>Ein Bild wählen, das den Platz zeigt; zeigt es ihn, sein KBS prüfen.</translation>
    </message>
    <message>
        <location filename="../../guide/composites.py"/>
        <source>Choose another date as base, or change what the image dates say of this one.</source>
        <translation>Einen anderen Aufnahmetag als Grundlage wählen oder ändern, was die Aufnahmetage von diesem sagen.</translation>
    </message>
    <message>
        <location filename="../../imagery/composing.py"/>
        <source>Choose another date as base.</source>
        <translation>Einen anderen Aufnahmetag als Grundlage wählen.</translation>
    </message>
    <message>
        <location filename="../../store/vector_source.py"/>
        <source>Choose another file; a drawing has to be saved in a form QGIS opens, such as DXF or GeoPackage.</source>
        <translation>Eine andere Datei wählen; eine Zeichnung muss in einem Format gespeichert sein, das QGIS öffnet, etwa DXF oder GeoPackage.</translation>
    </message>
    <message>
        <location filename="../../imagery/window.py"/>
        <source>Choose another folder for the results, or another image.</source>
        <translation>Einen anderen Ordner für die Ergebnisse oder ein anderes Bild wählen.</translation>
    </message>
    <message>
        <location filename="../../store/tables.py"/>
        <source>Choose another folder.</source>
        <translation>Einen anderen Ordner wählen.</translation>
    </message>
    <message>
        <location filename="../../measure/frame.py"/>
        <source>Choose another for the course, for instance the UTM zone it lies in.</source>
        <translation>Ein anderes für den Platz wählen, zum Beispiel die UTM-Zone, in der er liegt.</translation>
    </message>
    <message>
        <location filename="../../guide/rules.py"/>
        <source>Choose another image, make a guide for the screen, or tick its leave to be printed.</source>
        <translation>Ein anderes Bild wählen, ein Buch für den Bildschirm machen oder ankreuzen, dass es gedruckt werden darf.</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>Choose another image, tick its leave to be printed, or say that the pictures are not to be printed (FOR_PRINT).</source>
        <translation>Ein anderes Bild wählen, ankreuzen, dass es gedruckt werden darf, oder sagen, dass die Bilder nicht gedruckt werden (FOR_PRINT).</translation>
    </message>
    <message>
        <location filename="../../store/writing.py"/>
        <source>Choose another kind.</source>
        <translation>Eine andere Art wählen.</translation>
    </message>
    <message>
        <location filename="../../processing/import_features.py"/>
        <source>Choose another layer or a file as SOURCE.</source>
        <translation>Als SOURCE einen anderen Layer oder eine Datei wählen.</translation>
    </message>
    <message>
        <location filename="../../store/course_file.py"/>
        <source>Choose another name for the new course, or move the old file away first.</source>
        <translation>Für den neuen Platz einen anderen Namen wählen oder zuerst die alte Datei verschieben.</translation>
    </message>
    <message>
        <location filename="../../store/events.py"/>
        <source>Choose another name.</source>
        <translation>Einen anderen Namen wählen.</translation>
    </message>
    <message>
        <location filename="../../guide/windows.py"/>
        <source>Choose another size in millimetres or other dots per inch.</source>
        <translation>Eine andere Größe in Millimetern oder andere Punkte pro Zoll wählen.</translation>
    </message>
    <message>
        <location filename="../../guide/pdf_join.py"/>
        <source>Choose at least one page.</source>
        <translation>Mindestens eine Seite wählen.</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>Choose it and press “Make it a date”.</source>
        <translation>Auswählen und „Als Bilddatum aufnehmen“ drücken.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>Choose its tee set in the form; several with commas between them.</source>
        <translation>Das Abschlagset im Formular wählen; mehrere mit Kommas dazwischen.</translation>
    </message>
    <message>
        <location filename="../../guide/pdf_objects.py"/>
        <source>Choose one of its {count} pages.</source>
        <translation>Eine der {count} Seiten wählen.</translation>
    </message>
    <message>
        <location filename="../../store/registering.py"/>
        <source>Choose one of the dates listed in its layer “Image date”.</source>
        <translation>Einen der Aufnahmetage aus dem Layer „Bilddatum“ wählen.</translation>
    </message>
    <message>
        <location filename="../../store/events.py"/>
        <source>Choose one of those there are.</source>
        <translation>Eines der vorhandenen wählen.</translation>
    </message>
    <message>
        <location filename="../../store/vector_source.py"/>
        <source>Choose one of {kinds}.</source>
        <translation>Eine dieser Arten wählen: {kinds}.</translation>
    </message>
    <message>
        <location filename="../../guide/sheets.py"/>
        <source>Choose one of {pages}, or give a width and a height in millimetres.</source>
        <translation>Eine von {pages} wählen oder Breite und Höhe in Millimetern angeben.</translation>
    </message>
    <message>
        <location filename="../../guide/book.py"/>
        <source>Choose one of {pages}, or say width x height in mm: 110 x 180.</source>
        <translation>Eine von {pages} wählen oder Breite x Höhe in mm angeben: 110 x 180.</translation>
    </message>
    <message>
        <location filename="../../guide/page_design.py"/>
        <source>Choose sides of {least} to {most} mm.</source>
        <translation>Seitenlängen von {least} bis {most} mm wählen.</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>Choose something in the list first.</source>
        <translation>Zuerst etwas in der Liste wählen.</translation>
    </message>
    <message>
        <location filename="../../desk/page_editor.py"/>
        <source>Choose the &amp;file…</source>
        <translation>&amp;Datei wählen…</translation>
    </message>
    <message>
        <location filename="../../imagery/grid.py"/>
        <location filename="../../imagery/terrain.py"/>
        <source>Choose the course's CRS as EPSG:n.</source>
        <translation>Das KBS des Platzes als EPSG:n wählen.</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>Choose the hole to look at; type its number, or use the arrow keys</source>
        <translation>Die Bahn wählen, die gezeigt wird; ihre Nummer tippen oder die Pfeiltasten benutzen</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Clear</source>
        <translation>Über</translation>
    </message>
    <message>
        <location filename="../../imagery/outline.py"/>
        <source>Click on open water, or draw it by hand: a brook is not seen whole under crowns.</source>
        <translation>Auf offenes Wasser klicken oder von Hand zeichnen: Ein Bach ist unter Kronen nicht ganz zu sehen.</translation>
    </message>
    <message>
        <location filename="../../desk/outline_tool.py"/>
        <source>Click on the course, or check the CRS of the project.</source>
        <translation>Auf den Platz klicken oder das KBS des Projekts prüfen.</translation>
    </message>
    <message>
        <location filename="../../desk/ties.py"/>
        <source>Click the same spot on the date and on the base.</source>
        <translation>Dieselbe Stelle auf dem Datum und auf dem Grundbild anklicken.</translation>
    </message>
    <message>
        <location filename="../../desk/registering_dialog.py"/>
        <source>Click the same spots on the date that is chosen and on the base, where it cannot be found</source>
        <translation>Dieselben Stellen auf dem gewählten Datum und auf dem Grundbild anklicken, wo es nicht gefunden wird</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>Click to see this composite alone.</source>
        <translation>Klicken, um nur dieses zusammengesetzte Bild zu sehen.</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>Click to see this date alone.</source>
        <translation>Klicken, um nur dieses Datum zu sehen.</translation>
    </message>
    <message>
        <location filename="../../imagery/outline.py"/>
        <source>Click well inside it, take an image in which it stands out, or draw it by hand.</source>
        <translation>Weit innen klicken, ein Bild nehmen, auf dem es sich abhebt, oder von Hand zeichnen.</translation>
    </message>
    <message>
        <location filename="../../guide/outlining.py"/>
        <source>Click well inside, away from the margin.</source>
        <translation>Deutlich innerhalb klicken, fern vom Rand.</translation>
    </message>
    <message>
        <location filename="../../guide/outlining.py"/>
        <source>Click well inside, choose an image in which it stands out, or draw it by hand.</source>
        <translation>Deutlich innerhalb klicken, ein Bild wählen, in dem es sich abhebt, oder von Hand zeichnen.</translation>
    </message>
    <message>
        <location filename="../../store/course_file.py"/>
        <source>Close it in other programs and try again; if that does not help, take a backup.</source>
        <translation>Sie in anderen Programmen schließen und erneut versuchen; hilft das nicht, eine Sicherungskopie nehmen.</translation>
    </message>
    <message>
        <location filename="../../imagery/window.py"/>
        <source>Close programs that show them (remove their layers in QGIS too) and run again.</source>
        <translation>Programme schließen, die sie anzeigen (auch ihre Layer in QGIS entfernen), und erneut ausführen.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_drawing.py"/>
        <source>Close the boundary</source>
        <translation>Platzgrenze schließen</translation>
    </message>
    <message>
        <location filename="../../store/writing.py"/>
        <source>Close the course in other programs, or save or discard edits to it, and try again.</source>
        <translation>Den Platz in anderen Programmen schließen oder Änderungen daran speichern oder verwerfen, dann erneut versuchen.</translation>
    </message>
    <message>
        <location filename="../../desk/hidden_panel.py"/>
        <source>Clouds</source>
        <translation>Wolken</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Colour</source>
        <translation>Farbe</translation>
    </message>
    <message>
        <location filename="../../store/scorecard.py"/>
        <source>Column {number} of the scorecard “{path}” has no heading.</source>
        <translation>Spalte {number} der Scorekarte „{path}“ hat keine Überschrift.</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>Compare with</source>
        <translation>Vergleichen mit</translation>
    </message>
    <message>
        <location filename="../../desk/composing.py"/>
        <location filename="../../desk/composing_dialog.py"/>
        <location filename="../../processing/compose_image.py"/>
        <source>Compose one clean picture</source>
        <translation>Ein sauberes Bild zusammensetzen</translation>
    </message>
    <message>
        <location filename="../../imagery/recipe.py"/>
        <source>Compose the pictures again.</source>
        <translation>Die Bilder erneut zusammensetzen.</translation>
    </message>
    <message>
        <location filename="../../desk/composing_dialog.py"/>
        <source>Compose what is asked for above</source>
        <translation>Zusammensetzen, was oben verlangt ist</translation>
    </message>
    <message>
        <location filename="../../desk/date_actions.py"/>
        <source>Compose…</source>
        <translation>Zusammensetzen…</translation>
    </message>
    <message>
        <location filename="../../desk/composites.py"/>
        <source>Composite on {}</source>
        <translation>Zusammengesetzt auf {}</translation>
    </message>
    <message>
        <location filename="../../processing/start_course.py"/>
        <source>Coordinate reference system</source>
        <translation>Koordinatenbezugssystem</translation>
    </message>
    <message>
        <location filename="../../processing/import_features.py"/>
        <source>Coordinate system of the source</source>
        <translation>Koordinatensystem der Quelle</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>Copy</source>
        <translation>Kopieren</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>Copy text</source>
        <translation>Text kopieren</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>Copy the rows chosen, or else the whole table, as shown (Ctrl+C).</source>
        <translation>Die gewählten Zeilen oder sonst die ganze Tabelle kopieren, wie gezeigt (Strg+C).</translation>
    </message>
    <message>
        <location filename="../../desk/committee_figures.py"/>
        <source>Copy the rows in the spreadsheet, with their headings, then paste.</source>
        <translation>Die Zeilen in der Tabelle mit ihren Überschriften kopieren, dann einfügen.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_rows.py"/>
        <source>Correct it in the table.</source>
        <translation>In der Tabelle berichtigen.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_rows.py"/>
        <source>Correct one of them: each index is given once.</source>
        <translation>Einen davon berichtigen: Jeder Stroke Index wird nur einmal vergeben.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>Correct the hole’s line, or its form.</source>
        <translation>Die Linie der Bahn oder ihr Formular berichtigen.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>Correct the name on the tee, or add the tee set to the table.</source>
        <translation>Den Namen am Abschlag berichtigen oder das Abschlagset in die Tabelle eintragen.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_rows.py"/>
        <source>Correct the number of one of them, or delete it.</source>
        <translation>Die Nummer einer der beiden berichtigen oder die Linie löschen.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_rows.py"/>
        <source>Correct the number, or draw that hole’s line of play.</source>
        <translation>Die Nummer berichtigen oder die Spiellinie dieser Bahn zeichnen.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_rows.py"/>
        <source>Correct the row in the attribute table, draw it anew, or delete it.</source>
        <translation>Die Zeile in der Attributtabelle berichtigen, neu zeichnen oder löschen.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_rows.py"/>
        <source>Correct the scorecard, or add the tee set.</source>
        <translation>Die Scorekarte berichtigen oder das Abschlagset eintragen.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_rows.py"/>
        <source>Correct the value in the attribute table or the form.</source>
        <translation>Den Wert in der Attributtabelle oder im Formular berichtigen.</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Corridor either side of play (yd)</source>
        <translation>Korridor beiderseits der Spiellinie (yd)</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Counted from the tee</source>
        <translation>Vom Abschlag an gezählt</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <location filename="../../desk/toolbar.py"/>
        <location filename="../../model/kinds.py"/>
        <location filename="../../processing/algorithm.py"/>
        <location filename="../../store/layer_group.py"/>
        <source>Course</source>
        <translation>Platz</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>Course ({})</source>
        <translation>Platz ({})</translation>
    </message>
    <message>
        <location filename="../../processing/start_course.py"/>
        <source>Course file</source>
        <translation>Platzdatei</translation>
    </message>
    <message>
        <location filename="../../processing/start_course.py"/>
        <source>Course file (*.gpkg)</source>
        <translation>Platzdatei (*.gpkg)</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <location filename="../../processing/algorithm.py"/>
        <source>Course file (*.gpkg);;All files (*)</source>
        <translation>Platzdatei (*.gpkg);;Alle Dateien (*)</translation>
    </message>
    <message>
        <location filename="../../store/course_file.py"/>
        <source>Courses in a shared database are not available in this version.</source>
        <translation>Plätze in einer gemeinsamen Datenbank gibt es in dieser Version nicht.</translation>
    </message>
    <message>
        <location filename="../../guide/page_design.py"/>
        <location filename="../../model/guide_pages.py"/>
        <source>Cover</source>
        <translation>Umschlag</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <location filename="../../model/kinds.py"/>
        <source>Credit</source>
        <translation>Nachweis</translation>
    </message>
    <message>
        <location filename="../../processing/make_guide.py"/>
        <source>Crop marks</source>
        <translation>Schnittmarken</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Crown radius (m)</source>
        <translation>Kronenradius (m)</translation>
    </message>
    <message>
        <location filename="../../desk/hidden_panel.py"/>
        <source>Crowns above</source>
        <translation>Kronen darüber</translation>
    </message>
    <message>
        <location filename="../../imagery/moved_file.py"/>
        <source>Cut out the part of it that shows the course, and take that as the date.</source>
        <translation>Den Teil ausschneiden, der den Platz zeigt, und diesen als Aufnahmetag nehmen.</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>Cut the turned pictures of holes and greens out of an image</source>
        <translation>Gedrehte Bildausschnitte der Bahnen und Grüns aus einem Bild schneiden</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_drawing.py"/>
        <source>Cut the {greater} out of the {lesser}</source>
        <translation>{greater} aus {lesser} ausschneiden</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>Cuts the picture of each hole and green out of an aerial image, turned so that play (on a green: the approach) points up, in the size of the page panel it is meant for.</source>
        <translation>Schneidet zu jeder Bahn und jedem Grün den Bildausschnitt aus einem Luftbild, so gedreht, dass die Spielrichtung (beim Grün die Annäherung) nach oben zeigt, in der Größe des Bildfelds der Seite, für das er bestimmt ist.</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>D&amp;ivider</source>
        <translation>T&amp;eiler</translation>
    </message>
    <message>
        <location filename="../../desk/composing_dialog.py"/>
        <location filename="../../desk/dates_panel.py"/>
        <location filename="../../desk/registering_dialog.py"/>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <location filename="../../processing/register_images.py"/>
        <source>Dates</source>
        <translation>Bilddatum</translation>
    </message>
    <message>
        <location filename="../../desk/registering_dialog.py"/>
        <source>Dates to register</source>
        <translation>Daten zum Einpassen</translation>
    </message>
    <message>
        <location filename="../../guide/event_page.py"/>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <location filename="../../model/kinds.py"/>
        <source>Decided</source>
        <translation>Entschieden</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Decided at</source>
        <translation>Entschieden am</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <location filename="../../model/kinds.py"/>
        <source>Decided by</source>
        <translation>Entschieden von</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>Decision</source>
        <translation>Entscheidung</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Decision on a pin</source>
        <translation>Entscheidung über eine Lochposition</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>Decisions on pins</source>
        <translation>Entscheidungen über Lochpositionen</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>Delete it and draw it from the back tee to the green.</source>
        <translation>Sie löschen und vom hintersten Abschlag zum Grün zeichnen.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_drawing.py"/>
        <source>Delete it, or draw it anew.</source>
        <translation>Löschen oder neu zeichnen.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_drawing.py"/>
        <source>Delete one of them. One feature may serve several holes, and one tee several tee sets.</source>
        <translation>Eines davon löschen. Ein Objekt kann zu mehreren Bahnen gehören, ein Abschlag zu mehreren Abschlagsets.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_rows.py"/>
        <source>Delete the empty row</source>
        <translation>Die leere Zeile löschen</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_drawing.py"/>
        <source>Delete the ring with the vertex tool or “Delete ring”.</source>
        <translation>Den Ring mit dem Stützpunktwerkzeug oder „Ring löschen“ entfernen.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_drawing.py"/>
        <source>Delete the {kind}</source>
        <translation>{kind} löschen</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_drawing.py"/>
        <source>Delete the {kind} that is not saved yet</source>
        <translation>{kind} löschen (noch nicht gespeichert)</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_drawing.py"/>
        <source>Delete the {kind} {number}</source>
        <translation>{kind} {number} löschen</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <location filename="../../guide/sheets.py"/>
        <source>Depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <location filename="../../desk/description_dialog.py"/>
        <location filename="../../model/kinds.py"/>
        <source>Description</source>
        <translation>Beschreibung</translation>
    </message>
    <message>
        <location filename="../../desk/description_dialog.py"/>
        <source>Description of hole {}</source>
        <translation>Beschreibung von Bahn {}</translation>
    </message>
    <message>
        <location filename="../../desk/description_dialog.py"/>
        <source>Description: {}</source>
        <translation>Beschreibung: {}</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Difference</source>
        <translation>Differenz</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Direction</source>
        <translation>Richtung</translation>
    </message>
    <message>
        <location filename="../../guide/drawn_item.py"/>
        <source>Distance ladder</source>
        <translation>Entfernungsleiter</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Distance marker</source>
        <translation>Entfernungsmarke</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>Distance markers are drawn where they are true, not where they stand.</source>
        <translation>Die Entfernungsmarken sind dort gezeichnet, wo sie stimmen, nicht wo sie stehen.</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Distance markers state to</source>
        <translation>Entfernungsmarken gelten bis</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Distances</source>
        <translation>Entfernungen</translation>
    </message>
    <message>
        <location filename="../../guide/book_pages.py"/>
        <source>Distances are measured on images and are no survey.</source>
        <translation>Entfernungen sind auf Bildern gemessen und keine Vermessung.</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>Distances in metres</source>
        <translation>Entfernungen in Metern</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>Distances in yards</source>
        <translation>Entfernungen in Yards</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>Divider</source>
        <translation>Teiler</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <location filename="../../processing/make_guide.py"/>
        <source>Dots per inch</source>
        <translation>Punkte je Zoll</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>Doubtful</source>
        <translation>Zweifelhaft</translation>
    </message>
    <message>
        <location filename="../../store/openstreetmap.py"/>
        <source>Download it again, or choose another file (.osm, .osm.pbf or GeoJSON).</source>
        <translation>Erneut herunterladen oder eine andere Datei (.osm, .osm.pbf oder GeoJSON) wählen.</translation>
    </message>
    <message>
        <location filename="../../guide/book.py"/>
        <source>Draw a hole’s line of play, its tee and its green first.</source>
        <translation>Zuerst von einer Bahn die Spiellinie, den Abschlag und das Grün zeichnen.</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>Draw distance markers where they are true</source>
        <translation>Entfernungsmarken dort zeichnen, wo sie stimmen</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_rows.py"/>
        <source>Draw it anew, or delete its row.</source>
        <translation>Neu zeichnen oder die Zeile löschen.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>Draw it from a sharper or better registered image, or one in which nothing hides it.</source>
        <translation>Nach einem schärferen oder besser eingepassten Bild zeichnen oder nach einem, in dem nichts die Sicht verdeckt.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>Draw it from the back tee over the turn points to the green.</source>
        <translation>Vom hintersten Abschlag über die Knickpunkte zum Grün zeichnen.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_drawing.py"/>
        <source>Draw its end on to where it belongs.</source>
        <translation>Das Ende bis dorthin weiterzeichnen, wo es hingehört.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>Draw its green.</source>
        <translation>Das Grün zeichnen.</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>Draw its line of play and its green first.</source>
        <translation>Zuerst ihre Spiellinie und ihr Grün zeichnen.</translation>
    </message>
    <message>
        <location filename="../../guide/hole_page.py"/>
        <location filename="../../guide/windows.py"/>
        <location filename="../../processing/export_windows.py"/>
        <source>Draw its line of play from the back tee to the green.</source>
        <translation>Die Spiellinie vom hintersten Abschlag bis zum Grün zeichnen.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>Draw its tees, or their permanent markers.</source>
        <translation>Die Abschläge oder ihre Abschlagplatten zeichnen.</translation>
    </message>
    <message>
        <location filename="../../desk/turning.py"/>
        <location filename="../../guide/sheets.py"/>
        <location filename="../../guide/windows.py"/>
        <source>Draw the green and give it this hole’s number.</source>
        <translation>Das Grün zeichnen und ihm die Nummer dieser Bahn geben.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>Draw the green anew.</source>
        <translation>Das Grün neu zeichnen.</translation>
    </message>
    <message>
        <location filename="../../guide/sheets.py"/>
        <source>Draw the greens and give them their holes’ numbers.</source>
        <translation>Die Grüns zeichnen und ihnen die Nummern ihrer Bahnen geben.</translation>
    </message>
    <message>
        <location filename="../../guide/sheets.py"/>
        <source>Draw the greens of its holes and place their pins first.</source>
        <translation>Zuerst die Grüns ihrer Bahnen zeichnen und deren Lochpositionen setzen.</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <location filename="../../desk/toolbar.py"/>
        <source>Draw the line from tee to green in the layer “Line of play”, or bring features in.</source>
        <translation>Die Linie vom Abschlag zum Grün im Layer „Spiellinie“ zeichnen oder Objekte einlesen.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>Draw the tee, or name the set on the tee it shares.</source>
        <translation>Den Abschlag zeichnen oder das Set an dem Abschlag nennen, den es mitbenutzt.</translation>
    </message>
    <message>
        <location filename="../../guide/composites.py"/>
        <source>Draw their lines of play, or leave HOLES empty.</source>
        <translation>Ihre Spiellinien zeichnen oder HOLES leer lassen.</translation>
    </message>
    <message>
        <location filename="../../desk/draw_tool.py"/>
        <location filename="../../desk/drawing_bar.py"/>
        <source>Draw: {}</source>
        <translation>Zeichnen: {}</translation>
    </message>
    <message>
        <location filename="../../desk/hole_drawing.py"/>
        <source>Drawing of the hole</source>
        <translation>Zeichnung der Bahn</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>Drawings and maps</source>
        <translation>Zeichnungen und Karten</translation>
    </message>
    <message>
        <location filename="../../desk/hole_panel.py"/>
        <source>Drawn</source>
        <translation>Gezeichnet</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>Drawn from</source>
        <translation>Gezeichnet nach</translation>
    </message>
    <message>
        <location filename="../../guide/book_pages.py"/>
        <source>Drawn from: {credits}</source>
        <translation>Gezeichnet nach: {credits}</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Drawn until then</source>
        <translation>Bis dahin gezeichnet</translation>
    </message>
    <message>
        <location filename="../../processing/make_guide.py"/>
        <source>Draws lines at every five yards over each green, or at every five metres, by the course’s unit.</source>
        <translation>Zeichnet über jedes Grün Linien alle fünf Yards oder alle fünf Meter, je nach Einheit des Platzes.</translation>
    </message>
    <message>
        <location filename="../../processing/make_guide.py"/>
        <source>Draws marks where pages are to be cut, and in a booklet where it is folded.</source>
        <translation>Zeichnet Marken, wo Seiten zu schneiden sind, und in einem Heft, wo es gefaltet wird.</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>Draws what was decided and logs each decision; it can be undone, and is not saved yet.</source>
        <translation>Zeichnet, was entschieden ist, und hält jede Entscheidung fest; lässt sich rückgängig machen und ist noch nicht gespeichert.</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>E&amp;vent panel</source>
        <translation>Bedienfeld „&amp;Wettspiel“</translation>
    </message>
    <message>
        <location filename="../../processing/import_features.py"/>
        <source>EXTENT encloses nothing.</source>
        <translation>EXTENT umschließt nichts.</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>Earlier decisions</source>
        <translation>Frühere Entscheidungen</translation>
    </message>
    <message>
        <location filename="../../desk/registering_dialog.py"/>
        <location filename="../../desk/ties.py"/>
        <source>East (m)</source>
        <translation>Ost (m)</translation>
    </message>
    <message>
        <location filename="../../desk/propose_dialog.py"/>
        <source>Easy</source>
        <translation>Leicht</translation>
    </message>
    <message>
        <location filename="../../processing/make_guide.py"/>
        <source>Edge the sheets are turned about</source>
        <translation>Kante, um die Bögen gewendet werden</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <location filename="../../model/kinds.py"/>
        <source>Ends</source>
        <translation>Ende</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Enter</source>
        <translation>Eintritt</translation>
    </message>
    <message>
        <location filename="../../desk/outline_tool.py"/>
        <source>Enter takes it, Esc drops it, + and - make it wider and tighter.</source>
        <translation>Die Eingabetaste übernimmt ihn, Esc verwirft ihn, + und - machen ihn weiter und enger.</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Error</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <location filename="../../desk/event_settings.py"/>
        <location filename="../../model/kinds.py"/>
        <location filename="../../processing/archive_event.py"/>
        <location filename="../../processing/committee.py"/>
        <location filename="../../processing/event_sheets.py"/>
        <location filename="../../processing/make_guide.py"/>
        <source>Event</source>
        <translation>Wettspiel</translation>
    </message>
    <message>
        <location filename="../../desk/propose_dialog.py"/>
        <source>Every hole of every round has a pin already: there is nothing to propose.</source>
        <translation>Jede Bahn jeder Runde hat schon eine Lochposition: Es gibt nichts vorzuschlagen.</translation>
    </message>
    <message>
        <location filename="../../guide/expressions.py"/>
        <source>Example</source>
        <translation>Beispiel</translation>
    </message>
    <message>
        <location filename="../../store/openstreetmap.py"/>
        <source>Export it again, or choose another file.</source>
        <translation>Erneut exportieren oder eine andere Datei wählen.</translation>
    </message>
    <message>
        <location filename="../../store/openstreetmap.py"/>
        <source>Export the features as GeoJSON (overpass-turbo or QGIS elsewhere) and bring that in.</source>
        <translation>Die Objekte als GeoJSON exportieren (overpass-turbo oder ein anderes QGIS) und das übernehmen.</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>Export windows</source>
        <translation>Bildausschnitte exportieren</translation>
    </message>
    <message>
        <location filename="../../processing/import_features.py"/>
        <source>Extent</source>
        <translation>Ausdehnung</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Fairway</source>
        <translation>Fairway</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Fairway widths every (yd)</source>
        <translation>Fairwaybreiten alle (yd)</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Fairways</source>
        <translation>Fairways</translation>
    </message>
    <message>
        <location filename="../../processing/import_features.py"/>
        <source>Features brought in</source>
        <translation>Eingelesene Objekte</translation>
    </message>
    <message>
        <location filename="../../processing/import_features.py"/>
        <source>Features brought in, by layer</source>
        <translation>Eingelesene Objekte je Layer</translation>
    </message>
    <message>
        <location filename="../../imagery/image.py"/>
        <source>Fetch the image again, or choose another one.</source>
        <translation>Das Bild erneut beschaffen oder ein anderes wählen.</translation>
    </message>
    <message>
        <location filename="../../imagery/terrain.py"/>
        <source>Fetch the terrain again, or choose another one.</source>
        <translation>Das Geländemodell erneut beschaffen oder ein anderes wählen.</translation>
    </message>
    <message>
        <location filename="../../desk/bring_pins.py"/>
        <location filename="../../desk/hole_panel.py"/>
        <location filename="../../desk/propose_dialog.py"/>
        <source>Figures</source>
        <translation>Maße</translation>
    </message>
    <message>
        <location filename="../../guide/book_pages.py"/>
        <location filename="../../guide/sheets.py"/>
        <source>Figures in metres.</source>
        <translation>Maße in Metern.</translation>
    </message>
    <message>
        <location filename="../../guide/book_pages.py"/>
        <location filename="../../guide/sheets.py"/>
        <source>Figures in yards.</source>
        <translation>Maße in Yards.</translation>
    </message>
    <message>
        <location filename="../../desk/description_dialog.py"/>
        <source>Figures of this hole, which follow what is measured</source>
        <translation>Zahlen dieser Bahn, die dem Gemessenen folgen</translation>
    </message>
    <message>
        <location filename="../../guide/drawn_item.py"/>
        <source>Figures over the hole’s picture</source>
        <translation>Maße über dem Bild der Bahn</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>File of the page</source>
        <translation>Datei der Seite</translation>
    </message>
    <message>
        <location filename="../../processing/import_notes.py"/>
        <source>File or folder</source>
        <translation>Datei oder Ordner</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_drawing.py"/>
        <source>Fill what was left open</source>
        <translation>Ausgespartes füllen</translation>
    </message>
    <message>
        <location filename="../../desk/registering_dialog.py"/>
        <source>Find how the dates that are ticked lie to the base</source>
        <translation>Finden, wie die angehakten Daten zum Grundbild liegen</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>Find the distance markers that do not stand where they say</source>
        <translation>Die Entfernungsmarken finden, die nicht dort stehen, wo sie es angeben</translation>
    </message>
    <message>
        <location filename="../../processing/register_images.py"/>
        <source>Finds by how much the picture of each date of the course must be moved to lie where that of the base lies, to a fraction of a pixel: a shift, a turn and stretch, or shifts from place to place, whichever the pictures ask for.</source>
        <translation>Findet auf Bruchteile eines Pixels, um wie viel das Bild jedes Aufnahmetags des Platzes verschoben werden muss, um auf dem der Grundlage zu liegen: eine Verschiebung, eine Drehung und Streckung oder Verschiebungen von Ort zu Ort, je nachdem, was die Bilder verlangen.</translation>
    </message>
    <message>
        <location filename="../../processing/outline_feature.py"/>
        <source>Finds the margin of a green, a bunker, a tee, a pond or a fairway in an image, from one place inside it: smooth, finer than a pixel, with few corners.</source>
        <translation>Findet in einem Bild den Rand eines Grüns, eines Bunkers, eines Abschlags, eines Teichs oder eines Fairways von einer Stelle darin aus: glatt, feiner als ein Pixel, mit wenigen Ecken.</translation>
    </message>
    <message>
        <location filename="../../processing/set_tees.py"/>
        <source>Finds the place on the tee from which a hole plays the length asked for in a round and a flight, with two club-lengths of tee behind it, and keeps the lengths with the event.</source>
        <translation>Findet die Stelle auf dem Abschlag, von der eine Bahn so lang ist, wie es für eine Runde und einen Flight gewünscht ist, mit zwei Schlägerlängen Abschlag dahinter, und bewahrt die Längen beim Wettspiel auf.</translation>
    </message>
    <message>
        <location filename="../../desk/event_dialog.py"/>
        <location filename="../../desk/event_settings.py"/>
        <source>First day</source>
        <translation>Erster Tag</translation>
    </message>
    <message>
        <location filename="../../desk/bring_lengths.py"/>
        <location filename="../../desk/tees_dialog.py"/>
        <location filename="../../guide/event_page.py"/>
        <location filename="../../guide/sheets.py"/>
        <location filename="../../model/kinds.py"/>
        <source>Flight</source>
        <translation>Gruppe</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Flight of an event</source>
        <translation>Gruppe eines Wettspiels</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <location filename="../../desk/tees_dialog.py"/>
        <location filename="../../guide/event_page.py"/>
        <source>Flights</source>
        <translation>Gruppen</translation>
    </message>
    <message>
        <location filename="../../desk/tees_dialog.py"/>
        <source>Flights and lengths</source>
        <translation>Gruppen und Längen</translation>
    </message>
    <message>
        <location filename="../../desk/tees_dialog.py"/>
        <source>Flights and tees of “{}”</source>
        <translation>Gruppen und Abschläge von „{}“</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>Flip</source>
        <translation>Umschalten</translation>
    </message>
    <message>
        <location filename="../../processing/algorithm.py"/>
        <location filename="../../processing/committee.py"/>
        <location filename="../../processing/register_images.py"/>
        <source>Folder for the results</source>
        <translation>Ordner für die Ergebnisse</translation>
    </message>
    <message>
        <location filename="../../processing/archive_event.py"/>
        <source>Folder of the guides made</source>
        <translation>Ordner der erstellten Bücher</translation>
    </message>
    <message>
        <location filename="../../desk/drawing_bar.py"/>
        <source>Follow the moving pointer: a click begins, a right click ends</source>
        <translation>Dem Mauszeiger folgen: Ein Klick beginnt, ein Rechtsklick beendet</translation>
    </message>
    <message>
        <location filename="../../guide/drawn_item.py"/>
        <source>Foot of the hole’s page</source>
        <translation>Fuß der Bahnseite</translation>
    </message>
    <message>
        <location filename="../../processing/import_features.py"/>
        <source>For a source that does not name its own, such as DXF or a CSV with x and y.</source>
        <translation>Für eine Quelle, die ihres nicht nennt, etwa DXF oder eine CSV mit x und y.</translation>
    </message>
    <message>
        <location filename="../../guide/sheets.py"/>
        <source>For checking by the committee, not for use during a round. Bold: the figures as they are given.</source>
        <translation>Zur Prüfung durch die Spielleitung, nicht zum Gebrauch während einer Runde. Fett: die Maße, wie sie angegeben sind.</translation>
    </message>
    <message>
        <location filename="../../processing/register_images.py"/>
        <source>For each date the shift, the kind of move and its error, found at places kept out of the fit (REGISTERED), or the reason why it was refused (REFUSED). With WRITE they are kept in the course, and what was drawn from a date goes along with its picture. With a folder: the tables registrations and residuals, and a plot of the residuals of each date (residuals_DATE.png).</source>
        <translation>Für jeden Aufnahmetag die Verschiebung, ihre Art und ihr Fehler, gefunden an Stellen, die zur Kontrolle zurückgehalten wurden (REGISTERED), oder der Grund, warum er abgelehnt wurde (REFUSED). Mit WRITE werden sie im Platz festgehalten, und was nach einem Aufnahmetag gezeichnet wurde, geht mit seinem Bild mit. Mit einem Ordner: die Tabellen registrations und residuals und je Aufnahmetag eine Darstellung der Restabweichungen (residuals_DATE.png).</translation>
    </message>
    <message>
        <location filename="../../processing/compose_image.py"/>
        <source>For each hole a picture (hole_07.tif) and beside it where each of its pixels is from (hole_07_source.tif); the table composites with the share of each date, of what was lightened and of what was invented; the table uncovered with what could not be made clear; and recipe.json, which makes the same pictures again. Those of an earlier run are replaced.</source>
        <translation>Für jede Bahn ein Bild (hole_07.tif) und daneben, woher jedes seiner Pixel stammt (hole_07_source.tif); die Tabelle composites mit dem Anteil jedes Aufnahmetags, des Aufgehellten und des Erfundenen; die Tabelle uncovered mit dem, was nicht freigelegt werden konnte; und recipe.json, womit dieselben Bilder noch einmal entstehen. Die eines früheren Laufs werden ersetzt.</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>For each window a rotated GeoTIFF and a PNG or JPEG with world file, named after hole and kind (hole_07.tif, green_07.png); the table placements with the place of every symbol in each picture, in millimetres and pixels from its top left; and the rectangles in the course’s layer of windows. Those of an earlier run are replaced.</source>
        <translation>Zu jedem Bildausschnitt ein gedrehtes GeoTIFF und ein PNG oder JPEG mit World-Datei, benannt nach Bahn und Art (hole_07.tif, green_07.png); die Tabelle placements mit dem Ort jedes Symbols in jedem Bild, in Millimetern und Pixeln von links oben; und die Rechtecke im Layer der Bildausschnitte des Platzes. Die eines früheren Laufs werden ersetzt.</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <source>For the phone</source>
        <translation>Für das Telefon</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <source>For the phone, or for print: single pages, or sheets to fold and staple.</source>
        <translation>Für das Telefon oder für den Druck: einzelne Seiten oder Bögen zum Falten und Heften.</translation>
    </message>
    <message>
        <location filename="../../processing/make_guide.py"/>
        <source>Form</source>
        <translation>Form</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>Form of the picture</source>
        <translation>Format des Bildes</translation>
    </message>
    <message>
        <location filename="../../processing/algorithm.py"/>
        <source>Forms of the tables</source>
        <translation>Formate der Tabellen</translation>
    </message>
    <message>
        <location filename="../../desk/pin_table.py"/>
        <location filename="../../guide/sheets.py"/>
        <source>From</source>
        <translation>Seite</translation>
    </message>
    <message>
        <location filename="../../desk/length_table.py"/>
        <source>From front</source>
        <translation>Ab Vorderkante</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>From front to back along the approach</source>
        <translation>Von der Vorder- zur Hinterkante in Richtung der Annäherung</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>From its far end to the green</source>
        <translation>Von seinem fernen Ende bis zum Grün</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>From its leftmost to its rightmost point</source>
        <translation>Vom äußersten linken zum äußersten rechten Punkt</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>From its nearest to its farthest point</source>
        <translation>Vom nächsten zum fernsten Punkt</translation>
    </message>
    <message>
        <location filename="../../desk/pointer.py"/>
        <source>From left</source>
        <translation>Von links</translation>
    </message>
    <message>
        <location filename="../../desk/pointer.py"/>
        <source>From right</source>
        <translation>Von rechts</translation>
    </message>
    <message>
        <location filename="../../guide/sheets.py"/>
        <source>From the front</source>
        <translation>Ab Vorderkante</translation>
    </message>
    <message>
        <location filename="../../guide/sheets.py"/>
        <source>From the front: back from the tee’s front edge along the line of play to the markers.</source>
        <translation>Ab Vorderkante: von der Vorderkante des Abschlags entlang der Spiellinie zurück bis zu den Markierungen.</translation>
    </message>
    <message>
        <location filename="../../desk/pin_table.py"/>
        <source>From the green’s front, along the approach</source>
        <translation>Von der Vorderkante des Grüns, entlang der Annäherung</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>From the line of play to it, square; 0 on the line</source>
        <translation>Rechtwinklig von der Spiellinie aus; 0 auf der Linie</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>From the line of play to the left edge</source>
        <translation>Von der Spiellinie bis zum linken Rand</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>From the line of play to the right edge</source>
        <translation>Von der Spiellinie bis zum rechten Rand</translation>
    </message>
    <message>
        <location filename="../../guide/sheets.py"/>
        <source>From the plate</source>
        <translation>Ab Abschlagplatte</translation>
    </message>
    <message>
        <location filename="../../desk/pointer.py"/>
        <source>From the tee</source>
        <translation>Ab Abschlag</translation>
    </message>
    <message>
        <location filename="../../guide/expressions.py"/>
        <source>From the tee along the line of play to the green’s middle, whole units of the course.</source>
        <translation>Vom Abschlag entlang der Spiellinie bis zur Mitte des Grüns, in ganzen Einheiten des Platzes.</translation>
    </message>
    <message>
        <location filename="../../guide/expressions.py"/>
        <source>From the tee along the line of play to where it enters what bears a label.</source>
        <translation>Vom Abschlag auf der Spiellinie bis dahin, wo sie in das so Benannte eintritt.</translation>
    </message>
    <message>
        <location filename="../../guide/expressions.py"/>
        <source>From the tee along the line of play to where it leaves what bears a label: what it must carry.</source>
        <translation>Vom Abschlag auf der Spiellinie bis dahin, wo sie das so Benannte verlässt: was zu überfliegen ist.</translation>
    </message>
    <message>
        <location filename="../../guide/expressions.py"/>
        <source>From the tee to the green’s back.</source>
        <translation>Vom Abschlag bis zum Ende des Grüns.</translation>
    </message>
    <message>
        <location filename="../../guide/expressions.py"/>
        <source>From the tee to the green’s front.</source>
        <translation>Vom Abschlag bis zum Anfang des Grüns.</translation>
    </message>
    <message>
        <location filename="../../guide/expressions.py"/>
        <source>From the tee to the green’s middle.</source>
        <translation>Vom Abschlag bis zur Mitte des Grüns.</translation>
    </message>
    <message>
        <location filename="../../guide/expressions.py"/>
        <source>From the tee to the nearest point of what bears a label.</source>
        <translation>Vom Abschlag bis zum nächsten Punkt dessen, was eine Beschriftung trägt.</translation>
    </message>
    <message>
        <location filename="../../guide/expressions.py"/>
        <source>From the tee to where one is past what bears a label.</source>
        <translation>Vom Abschlag bis hinter das, was eine Beschriftung trägt.</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>From the tee, along the line of play</source>
        <translation>Vom Abschlag, entlang der Spiellinie</translation>
    </message>
    <message>
        <location filename="../../desk/length_table.py"/>
        <source>From the tee’s front edge back to the markers, along the line of play</source>
        <translation>Von der Vorderkante des Abschlags zurück zu den Markierungen, entlang der Spiellinie</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>From the turn to the green’s middle</source>
        <translation>Vom Knick bis zur Mitte des Grüns</translation>
    </message>
    <message>
        <location filename="../../desk/pointer.py"/>
        <source>From {}</source>
        <translation>Ab {}</translation>
    </message>
    <message>
        <location filename="../../desk/hole_panel.py"/>
        <source>From {}: rise {} m to the green, plays {} {} (common practice; the length stays {})</source>
        <translation>Von {}: Anstieg {} m zum Grün, spielt sich wie {} {} (übliche Praxis; die Länge bleibt {})</translation>
    </message>
    <message>
        <location filename="../../desk/propose_dialog.py"/>
        <location filename="../../guide/sheets.py"/>
        <source>Front</source>
        <translation>Vorn</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Front (m)</source>
        <translation>Vorn (m)</translation>
    </message>
    <message>
        <location filename="../../store/course_file.py"/>
        <location filename="../../store/field_notes.py"/>
        <location filename="../../store/upgrade.py"/>
        <source>GDAL gave no reason</source>
        <translation>GDAL nannte keinen Grund</translation>
    </message>
    <message>
        <location filename="../../imagery/image.py"/>
        <source>Georeference it first (Raster, Georeferencer) and choose the georeferenced image.</source>
        <translation>Es zuerst georeferenzieren (Raster, Georeferenzierung) und das georeferenzierte Bild wählen.</translation>
    </message>
    <message>
        <location filename="../../imagery/terrain.py"/>
        <source>Georeference it first (Raster, Georeferencer) and choose the georeferenced terrain.</source>
        <translation>Es zuerst georeferenzieren (Raster, Georeferenzierung) und das georeferenzierte Geländemodell wählen.</translation>
    </message>
    <message>
        <location filename="../../guide/windows.py"/>
        <source>Give SCALE as its denominator, such as 480 for 1:480.</source>
        <translation>Den Maßstab (SCALE) als Nenner angeben, etwa 480 für 1:480.</translation>
    </message>
    <message>
        <location filename="../../store/course_file.py"/>
        <source>Give a CRS as EPSG:n.</source>
        <translation>Ein KBS als EPSG:n angeben.</translation>
    </message>
    <message>
        <location filename="../../guide/sheets.py"/>
        <source>Give a width and a height between {least} and {most} mm, such as 210 x 297.</source>
        <translation>Breite und Höhe zwischen {least} und {most} mm angeben, zum Beispiel 210 x 297.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>Give each green only the holes that are played to it.</source>
        <translation>Jedem Grün nur die Bahnen zuordnen, die auf es gespielt werden.</translation>
    </message>
    <message>
        <location filename="../../guide/pdf_join.py"/>
        <source>Give each page a name of its own.</source>
        <translation>Jeder Seite einen eigenen Namen geben.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>Give each tee the tee set that plays from it.</source>
        <translation>Jedem Abschlag das Abschlagset zuordnen, das von ihm spielt.</translation>
    </message>
    <message>
        <location filename="../../store/course_file.py"/>
        <location filename="../../store/events.py"/>
        <source>Give it a name.</source>
        <translation>Einen Namen vergeben.</translation>
    </message>
    <message>
        <location filename="../../store/scorecard.py"/>
        <source>Give it a row for each hole.</source>
        <translation>Für jede Bahn eine Zeile eintragen.</translation>
    </message>
    <message>
        <location filename="../../desk/dates.py"/>
        <source>Give it as year-month-day.</source>
        <translation>Als Jahr-Monat-Tag angeben.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_rows.py"/>
        <source>Give it its hole’s number; write “{practice}” in its note if it belongs to none.</source>
        <translation>Die Nummer der Bahn eintragen; „{practice}“ in die Notiz schreiben, wenn es zu keiner gehört.</translation>
    </message>
    <message>
        <location filename="../../store/writing.py"/>
        <source>Give it to one hole.</source>
        <translation>Einer einzigen Bahn zuordnen.</translation>
    </message>
    <message>
        <location filename="../../store/vector_source.py"/>
        <source>Give its coordinate system as SOURCE_CRS, such as EPSG:32630.</source>
        <translation>Ihr Koordinatensystem als SOURCE_CRS angeben, etwa EPSG:32630.</translation>
    </message>
    <message>
        <location filename="../../desk/composing.py"/>
        <source>Give numbers of holes, such as 1,4,7-9.</source>
        <translation>Nummern von Bahnen angeben, etwa 1,4,7-9.</translation>
    </message>
    <message>
        <location filename="../../desk/composing.py"/>
        <source>Give numbers of its holes.</source>
        <translation>Nummern seiner Bahnen angeben.</translation>
    </message>
    <message>
        <location filename="../../processing/compose_image.py"/>
        <source>Give that one as BASE, or leave RECIPE empty.</source>
        <translation>Diesen als BASE angeben oder RECIPE leer lassen.</translation>
    </message>
    <message>
        <location filename="../../store/openstreetmap.py"/>
        <source>Give the KIND of its features to bring it in as a plain vector file.</source>
        <translation>Die Art (KIND) der Objekte angeben, um sie als einfache Vektordatei zu übernehmen.</translation>
    </message>
    <message>
        <location filename="../../guide/composites.py"/>
        <source>Give the course its image dates first.</source>
        <translation>Dem Platz zuerst seine Aufnahmetage geben.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>Give the hole an approach distance.</source>
        <translation>Der Bahn eine Annäherungsentfernung geben.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>Give the hole another approach distance, or move the point it is taken from.</source>
        <translation>Der Bahn eine andere Annäherungsentfernung geben oder den Punkt verschieben, von dem sie genommen wird.</translation>
    </message>
    <message>
        <location filename="../../guide/sheets.py"/>
        <source>Give the lengths of its holes and set the tees first.</source>
        <translation>Zuerst die Längen ihrer Bahnen angeben und die Abschläge setzen.</translation>
    </message>
    <message>
        <location filename="../../guide/windows.py"/>
        <source>Give the size of the page panel in millimetres, such as 100 x 150 at 300.</source>
        <translation>Die Größe des Bildfelds in Millimetern angeben, etwa 100 x 150 bei 300.</translation>
    </message>
    <message>
        <location filename="../../store/scorecard.py"/>
        <source>Give the tee set another name.</source>
        <translation>Dem Abschlagset einen anderen Namen geben.</translation>
    </message>
    <message>
        <location filename="../../guide/pdf_join.py"/>
        <source>Give the thickness of one sheet; common paper has about 0.1 mm.</source>
        <translation>Die Dicke eines Bogens angeben; übliches Papier hat etwa 0,1 mm.</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Given by</source>
        <translation>Angegeben durch</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>Gives the event another name, or takes it out with all that belongs to it.</source>
        <translation>Gibt dem Wettspiel einen anderen Namen oder nimmt es mit allem heraus, was dazugehört.</translation>
    </message>
    <message>
        <location filename="../../desk/drawing_bar.py"/>
        <source>Goes into all that is drawn: the figures of what is partly hidden, or known from another source, are less sure, and that is said.</source>
        <translation>Gilt für alles, was gezeichnet wird: die Maße von teilweise Verdecktem oder aus anderer Quelle Bekanntem sind weniger sicher, und das wird gesagt.</translation>
    </message>
    <message>
        <location filename="../../desk/pointer.py"/>
        <location filename="../../guide/green_panel.py"/>
        <location filename="../../model/kinds.py"/>
        <source>Green</source>
        <translation>Grün</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Green (m)</source>
        <translation>Grün (m)</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>Green deep, theirs / ours</source>
        <translation>Grün tief, ihre / unsere</translation>
    </message>
    <message>
        <location filename="../../desk/hole_panel.py"/>
        <source>Green {} {} deep, {} wide; approach {}° ({})</source>
        <translation>Grün {} {} tief, {} breit; Annäherung {}° ({})</translation>
    </message>
    <message>
        <location filename="../../desk/hole_panel.py"/>
        <source>Green: not measured yet</source>
        <translation>Grün: noch nicht gemessen</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Greens</source>
        <translation>Grüns</translation>
    </message>
    <message>
        <location filename="../../guide/sheets.py"/>
        <source>Greens 1:{scale}, approach up.</source>
        <translation>Grüns 1:{scale}, Annäherung nach oben.</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>Greens may be larger than 1:480</source>
        <translation>Grüns dürfen größer als 1:480 sein</translation>
    </message>
    <message>
        <location filename="../../processing/make_guide.py"/>
        <source>Grid over the greens</source>
        <translation>Gitter über den Grüns</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>Ground</source>
        <translation>Boden</translation>
    </message>
    <message>
        <location filename="../../guide/drawn_item.py"/>
        <source>Ground of the cover</source>
        <translation>Grund des Umschlags</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Ground sample distance (m)</source>
        <translation>Bodenauflösung (m)</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <location filename="../../processing/make_guide.py"/>
        <source>Guide</source>
        <translation>Buch</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>H&amp;eights from</source>
        <translation>&amp;Höhen aus</translation>
    </message>
    <message>
        <location filename="../../desk/propose_dialog.py"/>
        <source>Hard</source>
        <translation>Schwer</translation>
    </message>
    <message>
        <location filename="../../desk/propose_dialog.py"/>
        <source>Hardness</source>
        <translation>Schwierigkeit</translation>
    </message>
    <message>
        <location filename="../../store/scorecard.py"/>
        <source>Head it with the name of its tee set, or delete it.</source>
        <translation>Sie mit dem Namen des Abschlagsets überschreiben oder löschen.</translation>
    </message>
    <message>
        <location filename="../../guide/drawn_item.py"/>
        <source>Head of the hole’s page</source>
        <translation>Kopf der Bahnseite</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <location filename="../../processing/export_windows.py"/>
        <source>Height (mm)</source>
        <translation>Höhe (mm)</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>Height of the page panel in millimetres.</source>
        <translation>Höhe des Bildfelds der Seite in Millimetern.</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Heights</source>
        <translation>Höhen</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <location filename="../../desk/propose_dialog.py"/>
        <source>Heights from</source>
        <translation>Höhen aus</translation>
    </message>
    <message>
        <location filename="../../desk/draw_tool.py"/>
        <source>Here a composite takes {}.</source>
        <translation>Hier nimmt ein zusammengesetztes Bild {}.</translation>
    </message>
    <message>
        <location filename="../../desk/hidden_panel.py"/>
        <source>Hidden: {}</source>
        <translation>Verdeckt: {}</translation>
    </message>
    <message>
        <location filename="../../desk/registering_dialog.py"/>
        <source>Hold {} on the map: it flips from the base to the date that is chosen above.</source>
        <translation>{} auf der Karte halten: sie schaltet vom Grundbild auf das oben gewählte Datum um.</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <location filename="../../desk/bring_lengths.py"/>
        <location filename="../../desk/bring_pins.py"/>
        <location filename="../../desk/figures.py"/>
        <location filename="../../desk/hole_panel.py"/>
        <location filename="../../desk/pin_table.py"/>
        <location filename="../../desk/propose_dialog.py"/>
        <location filename="../../desk/toolbar.py"/>
        <location filename="../../guide/book_pages.py"/>
        <location filename="../../guide/page_design.py"/>
        <location filename="../../guide/sheets.py"/>
        <location filename="../../model/kinds.py"/>
        <location filename="../../store/styling.py"/>
        <source>Hole</source>
        <translation>Bahn</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>Hole {hole}: no hole can be cut, for all ground {margin} from the margin is steeper than {slope} %.</source>
        <translation>Bahn {hole}: Es kann kein Loch gesetzt werden, denn aller Boden, der {margin} vom Rand entfernt ist, ist steiler als {slope} %.</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>Hole {hole}: no hole can be cut, for no place is {margin} from the green’s margin.</source>
        <translation>Bahn {hole}: Es kann kein Loch gesetzt werden, denn keine Stelle ist {margin} vom Rand des Grüns entfernt.</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>Hole {hole}: no hole can be cut, for what margin and slope leave lies within {apart} of holes of earlier rounds.</source>
        <translation>Bahn {hole}: Es kann kein Loch gesetzt werden, denn was Rand und Neigung übrig lassen, liegt näher als {apart} an Löchern früherer Runden.</translation>
    </message>
    <message>
        <location filename="../../guide/book.py"/>
        <location filename="../../guide/hole_page.py"/>
        <location filename="../../guide/sheets.py"/>
        <source>Hole {number}</source>
        <translation>Bahn {number}</translation>
    </message>
    <message>
        <location filename="../../guide/hole_page.py"/>
        <location filename="../../processing/export_windows.py"/>
        <source>Hole {number} cannot be shown: neither a line of play nor a tee and a green are drawn.</source>
        <translation>Bahn {number} lässt sich nicht zeigen: Weder eine Spiellinie noch ein Abschlag und ein Grün sind gezeichnet.</translation>
    </message>
    <message>
        <location filename="../../guide/sheets.py"/>
        <source>Hole {number} has no green to show.</source>
        <translation>Bahn {number} hat kein Grün, das sich zeigen lässt.</translation>
    </message>
    <message>
        <location filename="../../guide/windows.py"/>
        <source>Hole {number} has no green, so there is no window of it.</source>
        <translation>Bahn {number} hat kein Grün, deshalb gibt es davon keinen Bildausschnitt.</translation>
    </message>
    <message>
        <location filename="../../guide/book_figures.py"/>
        <source>Hole {number} has no green.</source>
        <translation>Bahn {number} hat kein Grün.</translation>
    </message>
    <message>
        <location filename="../../guide/expressions.py"/>
        <source>Hole {number} has no par.</source>
        <translation>Bahn {number} hat kein Par.</translation>
    </message>
    <message>
        <location filename="../../guide/expressions.py"/>
        <source>Hole {number} has no stroke index.</source>
        <translation>Bahn {number} hat keinen Stroke Index.</translation>
    </message>
    <message>
        <location filename="../../guide/book_figures.py"/>
        <source>Hole {number} has no tee set “{tee_set}”.</source>
        <translation>Bahn {number} hat kein Abschlagset „{tee_set}“.</translation>
    </message>
    <message>
        <location filename="../../guide/book.py"/>
        <location filename="../../guide/book_figures.py"/>
        <location filename="../../measure/course.py"/>
        <location filename="../../processing/export_windows.py"/>
        <source>Hole {number} is not in the course.</source>
        <translation>Bahn {number} gibt es auf dem Platz nicht.</translation>
    </message>
    <message>
        <location filename="../../guide/windows.py"/>
        <source>Hole {number} starts where it ends, so no direction of play is known.</source>
        <translation>Bahn {number} beginnt, wo sie endet, deshalb ist keine Spielrichtung bekannt.</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <location filename="../../desk/composing_dialog.py"/>
        <location filename="../../desk/length_table.py"/>
        <location filename="../../desk/propose_dialog.py"/>
        <source>Hole {}</source>
        <translation>Bahn {}</translation>
    </message>
    <message>
        <location filename="../../desk/slope_shading.py"/>
        <source>Hole {} has no green to be shaded.</source>
        <translation>Bahn {} hat kein Grün, das eingefärbt werden könnte.</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>Hole {} has no green to place a pin on.</source>
        <translation>Bahn {} hat kein Grün, auf das eine Lochposition gesetzt werden könnte.</translation>
    </message>
    <message>
        <location filename="../../desk/turning.py"/>
        <source>Hole {} has no green, so there is no approach to it.</source>
        <translation>Bahn {} hat kein Grün und damit keine Annäherung.</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <location filename="../../desk/toolbar.py"/>
        <source>Hole {} has no line of play, so it cannot be looked at.</source>
        <translation>Bahn {} hat keine Spiellinie und lässt sich nicht zeigen.</translation>
    </message>
    <message>
        <location filename="../../desk/composing.py"/>
        <source>Hole {} is not in the course.</source>
        <translation>Bahn {} gibt es auf dem Platz nicht.</translation>
    </message>
    <message>
        <location filename="../../desk/tees_dialog.py"/>
        <source>Hole {}, {}: asked for {} {}, plays {} {}. The markers stand {} {} from the tee’s front, with {} {} of tee behind them.</source>
        <translation>Bahn {}, {}: gewünscht {} {}, spielt {} {}. Die Markierungen stehen {} {} hinter der Vorderkante des Abschlags, dahinter bleiben {} {} Abschlag.</translation>
    </message>
    <message>
        <location filename="../../desk/tees_dialog.py"/>
        <source>Hole {}, {}: no length is asked for; the tee set plays {} {}.</source>
        <translation>Bahn {}, {}: Keine Länge gewünscht; das Abschlagset spielt {} {}.</translation>
    </message>
    <message>
        <location filename="../../desk/tees_dialog.py"/>
        <source>Hole {}, {}: the tee set has no length here.</source>
        <translation>Bahn {}, {}: Das Abschlagset hat hier keine Länge.</translation>
    </message>
    <message>
        <location filename="../../desk/tees_dialog.py"/>
        <source>Hole {}, {}: {} {} cannot be set.</source>
        <translation>Bahn {}, {}: {} {} ist nicht zu stecken.</translation>
    </message>
    <message>
        <location filename="../../desk/composing_dialog.py"/>
        <location filename="../../desk/measure_dialog.py"/>
        <location filename="../../guide/event_page.py"/>
        <location filename="../../model/guide_pages.py"/>
        <location filename="../../model/kinds.py"/>
        <location filename="../../processing/algorithm.py"/>
        <location filename="../../processing/event_sheets.py"/>
        <source>Holes</source>
        <translation>Bahnen</translation>
    </message>
    <message>
        <location filename="../../desk/propose_dialog.py"/>
        <source>Holes for which no place is proposed, and why; then the rest.</source>
        <translation>Bahnen, für die nichts vorgeschlagen wird, und der Grund; dann das Übrige.</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Holes from the margin (yd)</source>
        <translation>Löcher vom Rand (yd)</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Holes from those of earlier rounds (yd)</source>
        <translation>Löcher von denen früherer Runden (yd)</translation>
    </message>
    <message>
        <location filename="../../desk/event_settings.py"/>
        <location filename="../../model/kinds.py"/>
        <source>Holes in order of play</source>
        <translation>Bahnen in Spielreihenfolge</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>Holes listed</source>
        <translation>Aufgelistete Bahnen</translation>
    </message>
    <message>
        <location filename="../../guide/drawn_item.py"/>
        <source>Holes of the course</source>
        <translation>Bahnen des Platzes</translation>
    </message>
    <message>
        <location filename="../../desk/propose_dialog.py"/>
        <source>Holes {}</source>
        <translation>Bahnen {}</translation>
    </message>
    <message>
        <location filename="../../desk/event_settings.py"/>
        <location filename="../../guide/event_page.py"/>
        <location filename="../../model/kinds.py"/>
        <source>Host</source>
        <translation>Gastgeber</translation>
    </message>
    <message>
        <location filename="../../desk/registering_dialog.py"/>
        <source>How</source>
        <translation>Wie</translation>
    </message>
    <message>
        <location filename="../../guide/expressions.py"/>
        <source>How deep the green is along the approach.</source>
        <translation>Wie tief das Grün entlang der Annäherung ist.</translation>
    </message>
    <message>
        <location filename="../../guide/expressions.py"/>
        <source>How far a pin lies in from the side that pin_side gives.</source>
        <translation>Wie weit eine Lochposition von der Seite entfernt liegt, die pin_side nennt.</translation>
    </message>
    <message>
        <location filename="../../guide/expressions.py"/>
        <source>How far a pin lies on the green, from its front.</source>
        <translation>Wie weit eine Lochposition auf dem Grün liegt, von dessen Anfang.</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>How far a straight shot stays on the fairway</source>
        <translation>Wie weit ein gerader Schlag auf dem Fairway bleibt</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>How far it has to be moved to be true</source>
        <translation>Wie weit sie zu versetzen ist, damit sie stimmt</translation>
    </message>
    <message>
        <location filename="../../desk/registering_dialog.py"/>
        <source>How far its picture is moved to the east</source>
        <translation>Wie weit sein Bild nach Osten verschoben wird</translation>
    </message>
    <message>
        <location filename="../../desk/registering_dialog.py"/>
        <source>How far its picture is moved to the north</source>
        <translation>Wie weit sein Bild nach Norden verschoben wird</translation>
    </message>
    <message>
        <location filename="../../desk/ties.py"/>
        <source>How far the pair is off when all of them are fitted together</source>
        <translation>Wie weit das Paar danebenliegt, wenn alle zusammen eingepasst werden</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>How high the green’s back lies</source>
        <translation>Wie hoch die Hinterkante des Grüns liegt</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>How high the green’s front lies</source>
        <translation>Wie hoch die Vorderkante des Grüns liegt</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>How high the green’s middle lies</source>
        <translation>Wie hoch die Mitte des Grüns liegt</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>How high the tee lies, in metres</source>
        <translation>Wie hoch der Abschlag liegt, in Metern</translation>
    </message>
    <message>
        <location filename="../../guide/expressions.py"/>
        <source>How long the committee wants a hole to play for a flight in a round.</source>
        <translation>Wie lang eine Bahn nach Wunsch der Spielleitung für eine Gruppe in einer Runde sein soll.</translation>
    </message>
    <message>
        <location filename="../../desk/length_table.py"/>
        <source>How long the hole shall play. Empty: the tee set’s own length, shown in grey</source>
        <translation>Wie lang die Bahn spielen soll. Leer: die eigene Länge des Abschlagsets, grau gezeigt</translation>
    </message>
    <message>
        <location filename="../../desk/propose_dialog.py"/>
        <source>How many holes of each round, and of each nine of it, are cut where, and how hard they are: as the pins lie now, and with what is ticked below. What is more than one off is marked with an exclamation mark.</source>
        <translation>Wie viele Löcher jeder Runde, und jeder Neun darin, wo liegen und wie schwer sie sind: so wie die Lochpositionen jetzt liegen und mit dem, was unten angehakt ist. Was um mehr als eins abweicht, trägt ein Ausrufezeichen.</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>How much higher than the tee the green lies</source>
        <translation>Wie viel höher als der Abschlag das Grün liegt</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>How much the line of play turns</source>
        <translation>Um wie viel die Spiellinie abknickt</translation>
    </message>
    <message>
        <location filename="../../processing/compose_image.py"/>
        <source>How near to a hazard, the margin of a green or a tee nothing is filled from its surroundings.</source>
        <translation>Wie nah an einem Hindernis, dem Rand eines Grüns oder einem Abschlag nichts aus der Umgebung aufgefüllt wird.</translation>
    </message>
    <message>
        <location filename="../../processing/outline_feature.py"/>
        <source>How plainly the margin is seen</source>
        <translation>Wie deutlich der Rand zu sehen ist</translation>
    </message>
    <message>
        <location filename="../../desk/pin_table.py"/>
        <source>How steep the ground is there; the arrow points downhill, seen with the approach up</source>
        <translation>Wie steil das Gelände dort ist; der Pfeil zeigt bergab, mit der Annäherung nach oben gesehen</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>How strongly the drawn margins of greens, aprons, tees and bunkers are brought out by a change of tone inside and outside: 0 not at all, 0.5 well to be seen, 1 most.</source>
        <translation>Wie stark die gezeichneten Ränder von Grüns, Vorgrüns, Abschlägen und Bunkern durch einen Tonwechsel innen und außen hervorgehoben werden: 0 gar nicht, 0,5 gut sichtbar, 1 am stärksten.</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>How sure the figure is: one standard error</source>
        <translation>Wie sicher das Maß ist: ein Standardfehler</translation>
    </message>
    <message>
        <location filename="../../desk/sheets_dialog.py"/>
        <source>How the &amp;ground falls and rises</source>
        <translation>&amp;Gefälle und Anstieg des Geländes</translation>
    </message>
    <message>
        <location filename="../../imagery/moves.py"/>
        <source>How the date’s picture is moved cannot be read ({reason}).</source>
        <translation>Wie das Bild des Aufnahmetags verschoben ist, ist nicht lesbar ({reason}).</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>How well it lies on the base: its standard error, once it is registered</source>
        <translation>Wie gut es auf dem Grundbild liegt: sein Standardfehler, sobald es eingepasst ist</translation>
    </message>
    <message>
        <location filename="../../desk/drawing_bar.py"/>
        <source>How well what you draw is to be seen in the image</source>
        <translation>Wie gut das Gezeichnete im Bild zu sehen ist</translation>
    </message>
    <message>
        <location filename="../../guide/expressions.py"/>
        <source>How wide the green is across the approach.</source>
        <translation>Wie breit das Grün quer zur Annäherung ist.</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Id</source>
        <translation>Kennung</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_drawing.py"/>
        <source>If they are one piece of ground, draw the gap over with “Reshape”, or merge them.</source>
        <translation>Wenn beide eine Fläche sind, die Lücke mit „Objekte umformen“ überzeichnen oder beide verschmelzen.</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <location filename="../../processing/export_windows.py"/>
        <location filename="../../processing/make_guide.py"/>
        <location filename="../../processing/outline_feature.py"/>
        <source>Image</source>
        <translation>Bild</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Image date</source>
        <translation>Bilddatum</translation>
    </message>
    <message>
        <location filename="../../desk/comparing.py"/>
        <source>Image of {}</source>
        <translation>Bild vom {}</translation>
    </message>
    <message>
        <location filename="../../desk/page_editor.py"/>
        <source>Images and PDFs</source>
        <translation>Bilder und PDFs</translation>
    </message>
    <message>
        <location filename="../../processing/archive_event.py"/>
        <source>Images to go along</source>
        <translation>Bilder, die mitgehen</translation>
    </message>
    <message>
        <location filename="../../guide/event_archive.py"/>
        <source>Images:</source>
        <translation>Bilder:</translation>
    </message>
    <message>
        <location filename="../../model/guide_pages.py"/>
        <source>Imprint</source>
        <translation>Impressum</translation>
    </message>
    <message>
        <location filename="../../guide/book_pages.py"/>
        <source>In</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <location filename="../../desk/pin_table.py"/>
        <source>In from the margin, or right of the approach line</source>
        <translation>Vom Rand herein oder rechts der Annäherungslinie</translation>
    </message>
    <message>
        <location filename="../../guide/book_pages.py"/>
        <source>Index</source>
        <translation>Index</translation>
    </message>
    <message>
        <location filename="../../guide/hole_page.py"/>
        <source>Index {index}</source>
        <translation>Index {index}</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>It can be undone, and the course file keeps it until the layers are saved.</source>
        <translation>Es lässt sich rückgängig machen, und die Platzdatei behält es, bis die Layer gespeichert werden.</translation>
    </message>
    <message>
        <location filename="../../desk/registering.py"/>
        <source>It is bent: each place is moved by what is found there.</source>
        <translation>Es ist verzogen: jede Stelle wird um das verschoben, was dort gefunden wurde.</translation>
    </message>
    <message>
        <location filename="../../desk/composing_dialog.py"/>
        <source>It is fetched from its server.</source>
        <translation>Wird von seinem Server geholt.</translation>
    </message>
    <message>
        <location filename="../../store/recovery.py"/>
        <source>It is kept as “{path}”.</source>
        <translation>Sie bleibt als „{path}“ erhalten.</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>It is moved to lie on the ground; how well it lies there is not known.</source>
        <translation>Es ist an seinen Ort am Boden verschoben; wie gut es dort liegt, ist nicht bekannt.</translation>
    </message>
    <message>
        <location filename="../../guide/outlining.py"/>
        <source>It is not known where on Earth the place lies.</source>
        <translation>Es ist nicht bekannt, wo auf der Erde die Stelle liegt.</translation>
    </message>
    <message>
        <location filename="../../desk/registering.py"/>
        <source>It is turned by {}° and made {} % larger.</source>
        <translation>Es wird um {}° gedreht und um {} % vergrößert.</translation>
    </message>
    <message>
        <location filename="../../desk/registering.py"/>
        <source>It lay {} m too far to the {}.</source>
        <translation>Es lag {} m zu weit nach {}.</translation>
    </message>
    <message>
        <location filename="../../desk/registering.py"/>
        <source>It lies right as it is.</source>
        <translation>Es liegt richtig, wie es ist.</translation>
    </message>
    <message>
        <location filename="../../desk/take_up_dialog.py"/>
        <source>It may be &amp;printed</source>
        <translation>Darf ge&amp;druckt werden</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>It may be printed.</source>
        <translation>Es darf gedruckt werden.</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>It may not be printed: it is for looking at and drawing from only.</source>
        <translation>Es darf nicht gedruckt werden: nur zum Ansehen und Abzeichnen.</translation>
    </message>
    <message>
        <location filename="../../store/vector_source.py"/>
        <source>It needs a row of column names and a row for each point.</source>
        <translation>Nötig sind eine Zeile mit Spaltennamen und eine Zeile für jeden Punkt.</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>It needs two dates of the course in the project.</source>
        <translation>Dazu müssen zwei Bilddaten des Platzes im Projekt sein.</translation>
    </message>
    <message>
        <location filename="../../imagery/outline.py"/>
        <source>It runs on beyond the ground that was looked at.</source>
        <translation>Es reicht über den betrachteten Boden hinaus.</translation>
    </message>
    <message>
        <location filename="../../store/course_file.py"/>
        <source>It was made with a newer Yardwright: update the plugin.</source>
        <translation>Sie stammt von einem neueren Yardwright: die Erweiterung aktualisieren.</translation>
    </message>
    <message>
        <location filename="../../processing/register_images.py"/>
        <source>Its dates: {}.</source>
        <translation>Seine Aufnahmetage: {}.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_drawing.py"/>
        <source>Join the ends</source>
        <translation>Die Enden verbinden</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>Keep &amp;ours</source>
        <translation>U&amp;nsere behalten</translation>
    </message>
    <message>
        <location filename="../../desk/page_designer.py"/>
        <source>Keep as the Course’s Template</source>
        <translation>Als Vorlage des Platzes aufbewahren</translation>
    </message>
    <message>
        <location filename="../../processing/register_images.py"/>
        <source>Keep it in the course</source>
        <translation>Im Platz festhalten</translation>
    </message>
    <message>
        <location filename="../../desk/drawn_item_panel.py"/>
        <source>Keep its proportions</source>
        <translation>Seitenverhältnis beibehalten</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>Keep one permanent marker a tee set.</source>
        <translation>Je Abschlagset nur eine Abschlagplatte behalten.</translation>
    </message>
    <message>
        <location filename="../../imagery/registration.py"/>
        <source>Keep the course in a projected system, such as the UTM zone of its place.</source>
        <translation>Den Platz in einem projizierten System führen, etwa in der UTM-Zone seines Ortes.</translation>
    </message>
    <message>
        <location filename="../../guide/windows.py"/>
        <source>Keep the course in the UTM zone it lies in: start a new course there and bring the features in.</source>
        <translation>Den Platz in der UTM-Zone führen, in der er liegt: dort einen neuen Platz anlegen und die Objekte übernehmen.</translation>
    </message>
    <message>
        <location filename="../../guide/page_layouts.py"/>
        <source>Keep the page as the course’s template again, or take the built-in one.</source>
        <translation>Die Seite erneut als Vorlage des Platzes aufbewahren oder die eingebaute nehmen.</translation>
    </message>
    <message>
        <location filename="../../desk/hidden_panel.py"/>
        <source>Keep what was corrected beside the course. It is kept too when the brush is laid down; the image itself is never changed.</source>
        <translation>Das Berichtigte neben dem Platz aufheben. Aufgehoben wird es auch, wenn der Pinsel weggelegt wird; das Bild selbst wird nie verändert.</translation>
    </message>
    <message>
        <location filename="../../desk/page_designer.py"/>
        <source>Kept as the course’s template of “{kind}”: {path}.</source>
        <translation>Als Vorlage des Platzes für „{kind}“ aufbewahrt: {path}.</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <location filename="../../processing/outline_feature.py"/>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <location filename="../../processing/import_features.py"/>
        <source>Kind of the features</source>
        <translation>Art der Objekte</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <location filename="../../model/kinds.py"/>
        <source>Label</source>
        <translation>Name</translation>
    </message>
    <message>
        <location filename="../../desk/sheets_dialog.py"/>
        <source>Larger</source>
        <translation>Größer</translation>
    </message>
    <message>
        <location filename="../../desk/event_settings.py"/>
        <source>Last day</source>
        <translation>Letzter Tag</translation>
    </message>
    <message>
        <location filename="../../desk/keeping.py"/>
        <source>Later</source>
        <translation>Später</translation>
    </message>
    <message>
        <location filename="../../desk/ties.py"/>
        <source>Lay the date on the base by these pairs alone; so does Enter on the map</source>
        <translation>Das Datum allein nach diesen Paaren einpassen; das tut auch die Eingabetaste auf der Karte</translation>
    </message>
    <message>
        <location filename="../../desk/date_actions.py"/>
        <source>Lay the images of the dates one on another</source>
        <translation>Die Bilder der Daten aufeinander einpassen</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>Lay the other date beyond a divider; drag it by its handle</source>
        <translation>Das andere Datum jenseits eines Schiebers zeigen; am Griff ziehen</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Lay-ups</source>
        <translation>Vorlegen</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Lay-ups to leave (yd, with commas)</source>
        <translation>Vorlegen auf (yd, mit Kommas)</translation>
    </message>
    <message>
        <location filename="../../store/reading.py"/>
        <source>Layer {layer} lacks the fields {fields}; they count as empty.</source>
        <translation>Dem Layer {layer} fehlen die Felder {fields}; sie gelten als leer.</translation>
    </message>
    <message>
        <location filename="../../store/reading.py"/>
        <source>Layer {layer}, feature {number}: {reason}.</source>
        <translation>Layer {layer}, Objekt {number}: {reason}.</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Leave</source>
        <translation>Austritt</translation>
    </message>
    <message>
        <location filename="../../processing/make_guide.py"/>
        <source>Leave EVENT empty for a guide of the course alone.</source>
        <translation>EVENT für ein Buch des Platzes allein leer lassen.</translation>
    </message>
    <message>
        <location filename="../../store/writing.py"/>
        <source>Leave it empty or mend it.</source>
        <translation>Leer lassen oder berichtigen.</translation>
    </message>
    <message>
        <location filename="../../store/events.py"/>
        <source>Leave it out, or mend its figures.</source>
        <translation>Weglassen oder die Maße berichtigen.</translation>
    </message>
    <message>
        <location filename="../../store/writing.py"/>
        <source>Leave it out.</source>
        <translation>Weglassen.</translation>
    </message>
    <message>
        <location filename="../../store/events.py"/>
        <source>Leave one of them out.</source>
        <translation>Eine davon weglassen.</translation>
    </message>
    <message>
        <location filename="../../store/writing.py"/>
        <source>Leave that field out.</source>
        <translation>Dieses Feld weglassen.</translation>
    </message>
    <message>
        <location filename="../../processing/compose_image.py"/>
        <source>Leaves out dates that may not be printed. Say no for a picture that is only looked at.</source>
        <translation>Lässt Aufnahmetage aus, die nicht gedruckt werden dürfen. Nein für ein Bild, das nur angesehen wird.</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <location filename="../../desk/propose_dialog.py"/>
        <location filename="../../guide/sheets.py"/>
        <source>Left</source>
        <translation>Links</translation>
    </message>
    <message>
        <location filename="../../desk/ties.py"/>
        <source>Left (m)</source>
        <translation>Rest (m)</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>Left and right</source>
        <translation>Links und rechts</translation>
    </message>
    <message>
        <location filename="../../guide/sheets.py"/>
        <source>Left and right: to the green’s margin, square to the approach. Margin: to its nearest point.</source>
        <translation>Links und rechts: bis zum Rand des Grüns, quer zur Annäherung. Rand: bis zu dessen nächstem Punkt.</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>Left free on each side of the hole or green when no scale is given.</source>
        <translation>Bleibt auf jeder Seite der Bahn oder des Grüns frei, wenn kein Maßstab angegeben ist.</translation>
    </message>
    <message>
        <location filename="../../store/bring_in.py"/>
        <source>Left out ({count}), {why}: {things}</source>
        <translation>Ausgelassen ({count}), {why}: {things}</translation>
    </message>
    <message>
        <location filename="../../guide/drawn_item.py"/>
        <source>Legend, and lines for notes</source>
        <translation>Legende und Linien für Notizen</translation>
    </message>
    <message>
        <location filename="../../desk/bring_lengths.py"/>
        <location filename="../../desk/figures.py"/>
        <location filename="../../desk/hole_panel.py"/>
        <location filename="../../desk/map_figures.py"/>
        <location filename="../../desk/pointer.py"/>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Length and rise together: common practice, no rule</source>
        <translation>Länge und Anstieg zusammen: übliche Praxis, keine Regel</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Length for a flight</source>
        <translation>Länge für einen Flight</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <location filename="../../desk/figures.py"/>
        <location filename="../../desk/tees_dialog.py"/>
        <source>Lengths</source>
        <translation>Längen</translation>
    </message>
    <message>
        <location filename="../../desk/bring_lengths.py"/>
        <source>Lengths read</source>
        <translation>Gelesene Längen</translation>
    </message>
    <message>
        <location filename="../../guide/pdf_join.py"/>
        <source>Let it lead to a page of the book or to a web address (https://…).</source>
        <translation>Ihn zu einer Seite des Buchs oder zu einer Webadresse (https://…) führen lassen.</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Licence</source>
        <translation>Lizenz</translation>
    </message>
    <message>
        <location filename="../../desk/composing_dialog.py"/>
        <location filename="../../desk/dates_panel.py"/>
        <source>Lies</source>
        <translation>Lage</translation>
    </message>
    <message>
        <location filename="../../desk/committee_figures.py"/>
        <source>Line</source>
        <translation>Zeile</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Line of play</source>
        <translation>Spiellinie</translation>
    </message>
    <message>
        <location filename="../../processing/committee.py"/>
        <source>Line {}: {}; left out.</source>
        <translation>Zeile {}: {}; ausgelassen.</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <source>Lines every five yards or metres.</source>
        <translation>Linien alle fünf Yards oder Meter.</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>Lines that could not be read: {}. Pins that look as if nobody had asked for them are therefore not taken out with all the others.</source>
        <translation>Zeilen, die nicht gelesen werden konnten: {}. Lochpositionen, die nur deshalb nicht verlangt scheinen könnten, werden daher nicht mit allen anderen herausgenommen.</translation>
    </message>
    <message>
        <location filename="../../guide/drawn_item.py"/>
        <source>Lines to write on</source>
        <translation>Linien zum Beschreiben</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>List what is doubtful: look at it, it may be right</source>
        <translation>Zweifelhaftes auflisten: ansehen, es kann auch stimmen</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>List what is missing</source>
        <translation>Fehlendes auflisten</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>List what is wrong, doubtful or missing, and repair it</source>
        <translation>Auflisten, was falsch oder zweifelhaft ist oder fehlt, und es reparieren</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>List what is wrong: it must be mended before figures are right</source>
        <translation>Falsches auflisten: erst wenn es behoben ist, stimmen die Maße</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>List what was found on all holes, or on the hole in hand only</source>
        <translation>Befunde aller Bahnen auflisten oder nur die der aktuellen Bahn</translation>
    </message>
    <message>
        <location filename="../../model/guide_pages.py"/>
        <source>Local Rules</source>
        <translation>Platzregeln</translation>
    </message>
    <message>
        <location filename="../../desk/propose_dialog.py"/>
        <source>Locations</source>
        <translation>Lochpositionen</translation>
    </message>
    <message>
        <location filename="../../desk/propose_dialog.py"/>
        <source>Locations are being looked for.</source>
        <translation>Lochpositionen werden gesucht.</translation>
    </message>
    <message>
        <location filename="../../desk/propose_dialog.py"/>
        <source>Locations proposed</source>
        <translation>Vorgeschlagene Lochpositionen</translation>
    </message>
    <message>
        <location filename="../../desk/propose_dialog.py"/>
        <source>Locations proposed for “{}”</source>
        <translation>Vorschlag von Lochpositionen für „{}“</translation>
    </message>
    <message>
        <location filename="../../desk/propose_dialog.py"/>
        <source>Locations proposed: {}, ticked: {}. Nothing is written yet.</source>
        <translation>Vorgeschlagene Lochpositionen: {}, angehakt: {}. Noch ist nichts geschrieben.</translation>
    </message>
    <message>
        <location filename="../../desk/propose_dialog.py"/>
        <source>Look a&amp;gain</source>
        <translation>&amp;Neu suchen</translation>
    </message>
    <message>
        <location filename="../../desk/propose_dialog.py"/>
        <source>Look again</source>
        <translation>Neu suchen</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>Look again at its outline and at the approach.</source>
        <translation>Umriss und Annäherung noch einmal ansehen.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>Look at the green’s outline and approach.</source>
        <translation>Umriss und Annäherung des Grüns ansehen.</translation>
    </message>
    <message>
        <location filename="../../desk/hole_panel.py"/>
        <location filename="../../desk/toolbar.py"/>
        <source>Look at the hole before</source>
        <translation>Die vorige Bahn ansehen</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>Look at the length; if it is right, the par is the committee’s to decide.</source>
        <translation>Die Länge ansehen; stimmt sie, entscheidet die Spielleitung über das Par.</translation>
    </message>
    <message>
        <location filename="../../desk/hole_panel.py"/>
        <location filename="../../desk/toolbar.py"/>
        <source>Look at the next hole</source>
        <translation>Die nächste Bahn ansehen</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>Look at the tees, the turn points and the green; or correct the scorecard.</source>
        <translation>Abschläge, Knickpunkte und Grün ansehen oder die Scorekarte berichtigen.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>Look at where it was drawn, and at what it states.</source>
        <translation>Ansehen, wo sie gezeichnet wurde und was sie angibt.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>Look at where it was drawn. It would be true {distance} away, on a bearing of {bearing}°, at {x}, {y}.</source>
        <translation>Ansehen, wo sie gezeichnet wurde. Richtig stünde sie {distance} entfernt, in Richtung {bearing}°, bei {x}, {y}.</translation>
    </message>
    <message>
        <location filename="../../desk/keeping.py"/>
        <source>Look there, or open the course again.</source>
        <translation>Dort nachsehen oder den Platz erneut öffnen.</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>Look through the whole course once more</source>
        <translation>Den ganzen Platz noch einmal durchsehen</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_drawing.py"/>
        <source>Look whether it, or the boundary, was drawn in the wrong place.</source>
        <translation>Ansehen, ob eines von beiden an falscher Stelle gezeichnet wurde.</translation>
    </message>
    <message>
        <location filename="../../desk/propose_dialog.py"/>
        <source>Looking for locations…</source>
        <translation>Lochpositionen werden gesucht…</translation>
    </message>
    <message>
        <location filename="../../desk/masks.py"/>
        <source>Looking for what hides the ground…</source>
        <translation>Was den Boden verdeckt, wird gesucht…</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Looks towards (° from north)</source>
        <translation>Blickrichtung (° von Nord)</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>Ma&amp;ke the guide…</source>
        <translation>B&amp;uch erstellen…</translation>
    </message>
    <message>
        <location filename="../../processing/start_course.py"/>
        <source>Made the course file {}</source>
        <translation>Platzdatei angelegt: {}</translation>
    </message>
    <message>
        <location filename="../../guide/book_pages.py"/>
        <source>Made with Yardwright.</source>
        <translation>Gemacht mit Yardwright.</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>Make a new, empty course file and open it</source>
        <translation>Eine neue, leere Platzdatei anlegen und öffnen</translation>
    </message>
    <message>
        <location filename="../../guide/pdf_join.py"/>
        <source>Make a page of at least 2 and at most 5000 mm.</source>
        <translation>Eine Seite von mindestens 2 und höchstens 5000 mm erzeugen.</translation>
    </message>
    <message>
        <location filename="../../guide/pdf_join.py"/>
        <source>Make all pages of a booklet equally large.</source>
        <translation>Alle Seiten einer Broschüre gleich groß anlegen.</translation>
    </message>
    <message>
        <location filename="../../processing/register_images.py"/>
        <source>Make another image a date of the course first.</source>
        <translation>Zuerst ein weiteres Bild zu einem Aufnahmetag des Platzes machen.</translation>
    </message>
    <message>
        <location filename="../../guide/pdf_join.py"/>
        <source>Make it as large as the book’s pages, with the same bleed on all sides.</source>
        <translation>Sie so groß wie die Seiten des Buchs anlegen, mit gleicher Beschnittzugabe an allen Seiten.</translation>
    </message>
    <message>
        <location filename="../../store/course_file.py"/>
        <source>Make it first, or choose another folder.</source>
        <translation>Ihn zuerst anlegen oder einen anderen Ordner wählen.</translation>
    </message>
    <message>
        <location filename="../../desk/date_actions.py"/>
        <source>Make one picture of several dates, without shade and without what moves</source>
        <translation>Aus mehreren Daten ein Bild machen, ohne Schatten und ohne was sich bewegt</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>Make the chosen raster layer one of the course’s dates</source>
        <translation>Den gewählten Rasterlayer als Bilddatum des Platzes aufnehmen</translation>
    </message>
    <message>
        <location filename="../../processing/make_guide.py"/>
        <source>Make the guide</source>
        <translation>Buch machen</translation>
    </message>
    <message>
        <location filename="../../guide/pdf_objects.py"/>
        <source>Make the page anew, or take another copy of the file.</source>
        <translation>Die Seite neu erzeugen oder eine andere Kopie der Datei nehmen.</translation>
    </message>
    <message>
        <location filename="../../desk/dates.py"/>
        <location filename="../../desk/take_up_dialog.py"/>
        <source>Make “{}” a date</source>
        <translation>„{}“ als Bilddatum aufnehmen</translation>
    </message>
    <message>
        <location filename="../../processing/start_course.py"/>
        <source>Makes a course file: a GeoPackage with a layer for each kind of thing on a course, its forms and its symbols. With a scorecard it holds the holes, their pars and the tee sets from the start.</source>
        <translation>Legt eine Platzdatei an: ein GeoPackage mit einem Layer für jede Art von Objekt auf einem Platz, samt Formularen und Symbolen. Mit einer Scorekarte enthält sie von Anfang an die Bahnen, ihr Par und die Abschlagsets.</translation>
    </message>
    <message>
        <location filename="../../processing/compose_image.py"/>
        <source>Makes one clean picture of each hole out of the course’s image dates: what shade, clouds or people hide in one date is taken from another; what all of them shade is lightened.</source>
        <translation>Setzt aus den Aufnahmetagen des Platzes ein klares Bild jeder Bahn zusammen: Was Schatten, Wolken oder Leute an einem Tag verdecken, kommt von einem anderen; was an allen im Schatten liegt, wird aufgehellt.</translation>
    </message>
    <message>
        <location filename="../../processing/make_guide.py"/>
        <source>Makes the yardage guide of a course, and of an event where one is named: cover, scorecard, map of the course, a page for each hole with its picture, distance ladder and green, the pins of the rounds, pages for notes that fill a booklet, and an imprint with credits and cautions. Nothing in the course is changed.</source>
        <translation>Macht das Entfernungsbuch eines Platzes und, wo eines genannt ist, eines Wettspiels: Umschlag, Scorekarte, Platzplan, je Bahn eine Seite mit Bild, Entfernungsleiter und Grün, die Lochpositionen der Runden, Seiten für Notizen, die ein Heft füllen, und ein Impressum mit Nachweisen und Hinweisen. Am Platz wird nichts geändert.</translation>
    </message>
    <message>
        <location filename="../../desk/pin_table.py"/>
        <location filename="../../guide/sheets.py"/>
        <source>Margin</source>
        <translation>Rand</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>Margin (mm)</source>
        <translation>Rand (mm)</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>Margins made clear</source>
        <translation>Ränder verdeutlichen</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Mark figures less sure than (yd)</source>
        <translation>Maße bemerken, die unsicherer sind als (yd)</translation>
    </message>
    <message>
        <location filename="../../desk/page_editor.py"/>
        <source>Markdown: # before a heading, **bold**, *slanted*, - before the items of a list. What stands between [% and %] is worked out, such as [% hole_length(12, 'Black') %].</source>
        <translation>Markdown: # vor einer Überschrift, **fett**, *schräg*, - vor den Punkten einer Liste. Was zwischen [% und %] steht, wird ausgerechnet, etwa [% hole_length(12, 'Black') %].</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <location filename="../../desk/pointer.py"/>
        <source>Marker</source>
        <translation>Marke</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Markers</source>
        <translation>Marken</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Markers may be out by (yd)</source>
        <translation>Erlaubter Fehler der Marken (yd)</translation>
    </message>
    <message>
        <location filename="../../desk/event_settings.py"/>
        <source>Markers move across the tee to keep clear of the worn places of earlier rounds</source>
        <translation>Markierungen rücken quer über den Abschlag, um abgespielte Stellen früherer Runden zu meiden</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <source>Marks where pages are cut and folded.</source>
        <translation>Marken, wo Seiten geschnitten und gefaltet werden.</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>May be printed</source>
        <translation>Darf gedruckt werden</translation>
    </message>
    <message>
        <location filename="../../desk/composing_dialog.py"/>
        <source>May not be printed ({}).</source>
        <translation>Darf nicht gedruckt werden ({}).</translation>
    </message>
    <message>
        <location filename="../../desk/composing_dialog.py"/>
        <source>May not be printed.</source>
        <translation>Darf nicht gedruckt werden.</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Mean ellipsoidal height (m)</source>
        <translation>Mittlere ellipsoidische Höhe (m)</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>Measure</source>
        <translation>Messen</translation>
    </message>
    <message>
        <location filename="../../processing/measure_course.py"/>
        <source>Measure course</source>
        <translation>Platz messen</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>Measure: {}</source>
        <translation>Messen: {}</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Measured</source>
        <translation>Gemessen</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>Measured against the scorecard: {lengths}.</source>
        <translation>Gemessen gegenüber der Scorekarte: {lengths}.</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Measured from the tee's</source>
        <translation>Gemessen ab (Abschlag)</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Measured less scorecard</source>
        <translation>Gemessen minus Scorekarte</translation>
    </message>
    <message>
        <location filename="../../processing/measure_course.py"/>
        <source>Measures every hole from every tee set: length and par, the green’s depth and width, the distance to reach and to clear each bunker, water and tree, fairway widths, doglegs and lay-up points.</source>
        <translation>Misst jede Bahn von jedem Abschlagset: Länge und Par, Tiefe und Breite des Grüns, die Entfernung bis zu jedem Bunker, Wasser und Baum und darüber hinaus, Fairwaybreiten, Doglegs und Punkte zum Vorlegen.</translation>
    </message>
    <message>
        <location filename="../../processing/check_markers.py"/>
        <source>Measures from each distance marker to the point of the green it states its distance to, and proposes where a marker that is out should stand.</source>
        <translation>Misst von jeder Entfernungsmarke bis zu dem Punkt des Grüns, bis zu dem sie die Entfernung angibt, und schlägt vor, wo eine abweichende Marke stehen sollte.</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>Measuring the course…</source>
        <translation>Der Platz wird gemessen…</translation>
    </message>
    <message>
        <location filename="../../desk/repairing.py"/>
        <source>Mend it with QGIS’s own tools.</source>
        <translation>Mit den Werkzeugen von QGIS beheben.</translation>
    </message>
    <message>
        <location filename="../../desk/tees_dialog.py"/>
        <source>Mend it, then try again.</source>
        <translation>Berichtigen, dann erneut versuchen.</translation>
    </message>
    <message>
        <location filename="../../store/committee.py"/>
        <location filename="../../store/scorecard.py"/>
        <source>Mend these rows, or ask for the good rows only.</source>
        <translation>Diese Zeilen berichtigen oder nur die brauchbaren Zeilen übernehmen lassen.</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>Mends what is chosen, where that is safe, in one step that Undo takes back. Nothing is saved by it.</source>
        <translation>Repariert das Gewählte, wo das sicher ist, in einem Schritt, der sich rückgängig machen lässt. Gespeichert wird dabei nichts.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_drawing.py"/>
        <source>Merge them if they are one bunker; else draw the margin of one of them anew.</source>
        <translation>Beide verschmelzen, wenn sie ein Bunker sind; sonst den Rand eines der beiden neu zeichnen.</translation>
    </message>
    <message>
        <location filename="../../guide/book_pages.py"/>
        <location filename="../../guide/event_page.py"/>
        <source>Metres</source>
        <translation>Meter</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <location filename="../../desk/propose_dialog.py"/>
        <source>Middle</source>
        <translation>Mitte</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>Missing</source>
        <translation>Fehlt</translation>
    </message>
    <message>
        <location filename="../../desk/propose_dialog.py"/>
        <source>Moderate</source>
        <translation>Mittel</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Move (m)</source>
        <translation>Versetzen (m)</translation>
    </message>
    <message>
        <location filename="../../store/recovery.py"/>
        <source>Move it away yourself.</source>
        <translation>Die Datei selbst verschieben.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>Move its end to the middle of the green.</source>
        <translation>Ihr Ende auf die Mitte des Grüns verschieben.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_drawing.py"/>
        <source>Move its vertices with the vertex tool until it does not, or split it in two.</source>
        <translation>Stützpunkte mit dem Stützpunktwerkzeug verschieben, bis er das nicht mehr tut, oder das Objekt teilen.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>Move or delete its turn points.</source>
        <translation>Ihre Knickpunkte verschieben oder löschen.</translation>
    </message>
    <message>
        <location filename="../../store/recovery.py"/>
        <source>Move some of them away.</source>
        <translation>Einige davon verschieben.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>Move the end of the line to the middle of the green</source>
        <translation>Das Ende der Linie auf die Mitte des Grüns verschieben</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <source>Move the page down (Alt+Down)</source>
        <translation>Die Seite nach unten bewegen (Alt+Ab)</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <source>Move the page up (Alt+Up)</source>
        <translation>Die Seite nach oben bewegen (Alt+Auf)</translation>
    </message>
    <message>
        <location filename="../../desk/registering_dialog.py"/>
        <source>Move these dates, and with them what was drawn from them. It is saved by you, and can be undone.</source>
        <translation>Diese Daten verschieben, und mit ihnen, was daraus gezeichnet wurde. Gespeichert wird von Hand, und es lässt sich rückgängig machen.</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>Moves the divider; on the map {}, {}, {} and {} do</source>
        <translation>Verschiebt den Teiler; auf der Karte tun es {}, {}, {} und {}</translation>
    </message>
    <message>
        <location filename="../../desk/outline_tool.py"/>
        <source>Much of its margin is guessed, so that it is marked as partly hidden.</source>
        <translation>Viel von seinem Rand ist geraten, daher ist es als teilweise verdeckt vermerkt.</translation>
    </message>
    <message>
        <location filename="../../desk/hole_drawing.py"/>
        <location filename="../../guide/book_pages.py"/>
        <source>N</source>
        <translation>N</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <location filename="../../desk/event_dialog.py"/>
        <location filename="../../model/kinds.py"/>
        <location filename="../../processing/start_course.py"/>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <location filename="../../desk/composing_dialog.py"/>
        <source>Name one for the pictures.</source>
        <translation>Einen für die Bilder nennen.</translation>
    </message>
    <message>
        <location filename="../../processing/import_features.py"/>
        <source>Name their KIND: {}.</source>
        <translation>Ihre Art als KIND angeben: {}.</translation>
    </message>
    <message>
        <location filename="../../store/vector_source.py"/>
        <source>Name them lon and lat (degrees), or x and y (in SOURCE_CRS or the course’s coordinate system).</source>
        <translation>Sie lon und lat (Grad) nennen oder x und y (in SOURCE_CRS oder im Koordinatensystem des Platzes).</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>Ne&amp;xt hole</source>
        <translation>&amp;Nächste Bahn</translation>
    </message>
    <message>
        <location filename="../../desk/event_dialog.py"/>
        <source>New event</source>
        <translation>Neues Wettspiel</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>New event “{}”</source>
        <translation>Neues Wettspiel „{}“</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>New…</source>
        <translation>Neu…</translation>
    </message>
    <message>
        <location filename="../../desk/hole_panel.py"/>
        <source>Next, the fairway: click round its margin, or let the curve follow your clicks.</source>
        <translation>Als Nächstes das Fairway: seinen Rand entlang klicken oder die Kurve den Klicks folgen lassen.</translation>
    </message>
    <message>
        <location filename="../../desk/hole_panel.py"/>
        <source>Next, the green: click round its margin. A right click closes it.</source>
        <translation>Als Nächstes das Grün: seinen Rand entlang klicken. Ein Rechtsklick schließt es.</translation>
    </message>
    <message>
        <location filename="../../desk/hole_panel.py"/>
        <source>Next, the line of play: click at the back tee, at each turn and in the middle of the green. A right click ends it.</source>
        <translation>Als Nächstes die Spiellinie: am hintersten Abschlag, an jedem Knick und in der Mitte des Grüns klicken. Ein Rechtsklick beendet sie.</translation>
    </message>
    <message>
        <location filename="../../desk/hole_panel.py"/>
        <source>Next, the tees: click round each; its tee set is asked for once.</source>
        <translation>Als Nächstes die Abschläge: um jeden herum klicken; nach dem Abschlagset wird einmal gefragt.</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>No course</source>
        <translation>Kein Platz</translation>
    </message>
    <message>
        <location filename="../../processing/start_course.py"/>
        <source>No course file is named.</source>
        <translation>Es ist keine Platzdatei angegeben.</translation>
    </message>
    <message>
        <location filename="../../store/course_file.py"/>
        <source>No course was given.</source>
        <translation>Es wurde kein Platz angegeben.</translation>
    </message>
    <message>
        <location filename="../../processing/register_images.py"/>
        <source>No date could be registered.</source>
        <translation>Kein Aufnahmetag ließ sich einpassen.</translation>
    </message>
    <message>
        <location filename="../../desk/registering_dialog.py"/>
        <source>No date is ticked that could be laid on the base.</source>
        <translation>Kein Datum ist angehakt, das sich auf das Grundbild einpassen ließe.</translation>
    </message>
    <message>
        <location filename="../../imagery/looking.py"/>
        <source>No date of the course shows anything of it.</source>
        <translation>Kein Datum des Platzes zeigt etwas von ihm.</translation>
    </message>
    <message>
        <location filename="../../imagery/outline.py"/>
        <source>No even water can be seen round this place.</source>
        <translation>Um diese Stelle ist kein ebenes Wasser zu sehen.</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <source>No event</source>
        <translation>Kein Wettspiel</translation>
    </message>
    <message>
        <location filename="../../processing/algorithm.py"/>
        <source>No event is named.</source>
        <translation>Kein Wettspiel ist genannt.</translation>
    </message>
    <message>
        <location filename="../../desk/composing_dialog.py"/>
        <source>No folder is named.</source>
        <translation>Kein Ordner ist genannt.</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <source>No guide was written; what was there is as it was.</source>
        <translation>Es wurde kein Buch geschrieben; was da war, ist wie zuvor.</translation>
    </message>
    <message>
        <location filename="../../desk/hole_panel.py"/>
        <location filename="../../desk/toolbar.py"/>
        <source>No hole</source>
        <translation>Keine Bahn</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_rows.py"/>
        <source>No hole has a stroke index.</source>
        <translation>Keine Bahn hat einen Stroke Index.</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>No hole is chosen.</source>
        <translation>Keine Bahn ist gewählt.</translation>
    </message>
    <message>
        <location filename="../../desk/composing.py"/>
        <source>No hole is named.</source>
        <translation>Keine Bahn ist genannt.</translation>
    </message>
    <message>
        <location filename="../../guide/outlining.py"/>
        <source>No image on the map shows this place.</source>
        <translation>Kein Bild auf der Karte zeigt diese Stelle.</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>No layer of this project shows it.</source>
        <translation>Kein Layer dieses Projekts zeigt es.</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>No layer of this project shows the image of {}.</source>
        <translation>Kein Layer dieses Projekts zeigt das Bild vom {}.</translation>
    </message>
    <message>
        <location filename="../../guide/outlining.py"/>
        <location filename="../../imagery/outline.py"/>
        <source>No margin can be seen round this place.</source>
        <translation>Um diese Stelle ist kein Rand zu sehen.</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>No other date is in this project</source>
        <translation>Kein anderes Bilddatum im Projekt</translation>
    </message>
    <message>
        <location filename="../../desk/ties.py"/>
        <source>No pair is whole yet.</source>
        <translation>Noch ist kein Paar vollständig.</translation>
    </message>
    <message>
        <location filename="../../guide/sheets.py"/>
        <source>No plate is drawn for these tees: all is counted from their front.</source>
        <translation>Für diese Abschläge ist keine Abschlagplatte eingezeichnet: Alles zählt ab ihrer Vorderkante.</translation>
    </message>
    <message>
        <location filename="../../store/recovery.py"/>
        <source>No recovery copy can be written, neither beside the course nor at “{path}”.</source>
        <translation>Es lässt sich keine Sicherungskopie schreiben, weder neben dem Platz noch unter „{path}“.</translation>
    </message>
    <message>
        <location filename="../../desk/sheets_dialog.py"/>
        <source>No remarks on this sheet.</source>
        <translation>Keine Bemerkungen zu diesem Blatt.</translation>
    </message>
    <message>
        <location filename="../../processing/event_sheets.py"/>
        <source>No sheet was written. {whats}</source>
        <translation>Es wurde kein Blatt geschrieben. {whats}</translation>
    </message>
    <message>
        <location filename="../../processing/import_notes.py"/>
        <source>No source is named.</source>
        <translation>Es ist keine Quelle genannt.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>No tee is drawn for {names}, which the scorecard has.</source>
        <translation>Kein Abschlag gezeichnet für {names}, obwohl die Scorekarte Längen dafür hat.</translation>
    </message>
    <message>
        <location filename="../../guide/sheets.py"/>
        <source>No tee is set for round {number}.</source>
        <translation>Für Runde {number} ist kein Abschlag gesetzt.</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>No window was made. {whats}</source>
        <translation>Es wurde kein Bildausschnitt erstellt. {whats}</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>No&amp;rth up</source>
        <translation>No&amp;rden oben</translation>
    </message>
    <message>
        <location filename="../../desk/composing_dialog.py"/>
        <source>Nobody has said that it may be printed.</source>
        <translation>Es ist nicht angegeben, ob sie gedruckt werden darf.</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>Nobody has said that it may be printed: see to its licence before you print.</source>
        <translation>Es ist nicht angegeben, ob sie gedruckt werden darf: vor dem Drucken die Lizenz klären.</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>None</source>
        <translation>Keine</translation>
    </message>
    <message>
        <location filename="../../desk/propose_dialog.py"/>
        <source>None.</source>
        <translation>Keine.</translation>
    </message>
    <message>
        <location filename="../../desk/propose_dialog.py"/>
        <source>None: the slope is not looked at</source>
        <translation>Keine: Das Gefälle wird nicht beachtet</translation>
    </message>
    <message>
        <location filename="../../desk/registering_dialog.py"/>
        <location filename="../../desk/ties.py"/>
        <source>North (m)</source>
        <translation>Nord (m)</translation>
    </message>
    <message>
        <location filename="../../desk/registering_dialog.py"/>
        <source>Not looked at yet.</source>
        <translation>Noch nicht angesehen.</translation>
    </message>
    <message>
        <location filename="../../guide/book_figures.py"/>
        <source>Not measured on hole {number}: {reason}.</source>
        <translation>Auf Bahn {number} nicht gemessen: {reason}.</translation>
    </message>
    <message>
        <location filename="../../desk/keeping.py"/>
        <source>Not put back: {}.</source>
        <translation>Nicht zurückgeholt: {}.</translation>
    </message>
    <message>
        <location filename="../../desk/composing_dialog.py"/>
        <source>Not registered: it is taken as it lies.</source>
        <translation>Nicht eingepasst: wird genommen, wie es liegt.</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>Not registered: it lies as its file puts it.</source>
        <translation>Nicht eingepasst: es liegt, wie seine Datei es legt.</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Note from the ground</source>
        <translation>Notiz vom Platz</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Note on a hole</source>
        <translation>Notiz zu einer Bahn</translation>
    </message>
    <message>
        <location filename="../../desk/hole_panel.py"/>
        <source>Note on hole {}</source>
        <translation>Notiz zu Bahn {}</translation>
    </message>
    <message>
        <location filename="../../desk/hole_panel.py"/>
        <location filename="../../guide/book.py"/>
        <location filename="../../model/guide_pages.py"/>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <location filename="../../processing/import_notes.py"/>
        <source>Notes brought in</source>
        <translation>Hereingeholte Notizen</translation>
    </message>
    <message>
        <location filename="../../desk/description_dialog.py"/>
        <source>Notes on this hole</source>
        <translation>Notizen zu dieser Bahn</translation>
    </message>
    <message>
        <location filename="../../desk/hole_panel.py"/>
        <source>Notes on this hole, each with its day. They are kept in the course file, unsaved at first.</source>
        <translation>Notizen zu dieser Bahn, jede mit ihrem Tag. Sie stehen in der Platzdatei, zunächst ungespeichert.</translation>
    </message>
    <message>
        <location filename="../../processing/import_notes.py"/>
        <source>Notes that were there already</source>
        <translation>Notizen, die schon da waren</translation>
    </message>
    <message>
        <location filename="../../guide/book_pages.py"/>
        <source>Nothing here plans for the flight of balls or for safety.</source>
        <translation>Nichts hiervon plant den Flug von Bällen oder die Sicherheit.</translation>
    </message>
    <message>
        <location filename="../../processing/compose_image.py"/>
        <source>Nothing invented within (m)</source>
        <translation>Nichts erfunden im Umkreis von (m)</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>Nothing is decided on the rows chosen.</source>
        <translation>Über die gewählten Zeilen ist nichts entschieden.</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>Nothing is decided yet.</source>
        <translation>Noch ist nichts entschieden.</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <source>Nothing is missing.</source>
        <translation>Es fehlt nichts.</translation>
    </message>
    <message>
        <location filename="../../desk/propose_dialog.py"/>
        <source>Nothing is proposed.</source>
        <translation>Es wird nichts vorgeschlagen.</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>Nothing is read yet. Read the committee’s file, or copy its rows in a spreadsheet and take them: round, hole, on, off, from, and green_depth if they have it.</source>
        <translation>Noch ist nichts gelesen. Die Datei der Spielleitung lesen oder ihre Zeilen in der Tabellenkalkulation kopieren und übernehmen: round, hole, on, off, from und, wenn vorhanden, green_depth.</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <location filename="../../store/bring_in.py"/>
        <source>Nothing new was brought in.</source>
        <translation>Es wurde nichts Neues eingelesen.</translation>
    </message>
    <message>
        <location filename="../../guide/composites.py"/>
        <source>Nothing of hole {number} is drawn; it was left out.</source>
        <translation>Von Bahn {number} ist nichts gezeichnet; sie wurde ausgelassen.</translation>
    </message>
    <message>
        <location filename="../../guide/fetched.py"/>
        <source>Nothing of the course is drawn yet, and “{date}” has no end.</source>
        <translation>Vom Platz ist noch nichts gezeichnet, und „{date}“ hat kein Ende.</translation>
    </message>
    <message>
        <location filename="../../guide/composites.py"/>
        <source>Nothing of the holes asked for is drawn.</source>
        <translation>Von den verlangten Bahnen ist nichts gezeichnet.</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>Nothing of the kinds chosen above was found.</source>
        <translation>Von den oben gewählten Arten wurde nichts gefunden.</translation>
    </message>
    <message>
        <location filename="../../guide/book_figures.py"/>
        <source>Nothing on hole {number} is called “{label}”.</source>
        <translation>Auf Bahn {number} heißt nichts „{label}“.</translation>
    </message>
    <message>
        <location filename="../../desk/keeping.py"/>
        <source>Nothing was put back.</source>
        <translation>Nichts wurde zurückgeholt.</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>Nothing wrong found on 1 hole.</source>
        <translation>Auf 1 Bahn ist nichts zu beanstanden.</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>Nothing wrong found on hole {}, but on others.</source>
        <translation>Auf Bahn {} ist nichts zu beanstanden, auf anderen schon.</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>Nothing wrong found on hole {}.</source>
        <translation>Auf Bahn {} ist nichts zu beanstanden.</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>Nothing wrong found on {} holes.</source>
        <translation>Auf {} Bahnen ist nichts zu beanstanden.</translation>
    </message>
    <message>
        <location filename="../../model/guide_pages.py"/>
        <source>Notices to players</source>
        <translation>Hinweise für die Spieler</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Number</source>
        <translation>Nummer</translation>
    </message>
    <message>
        <location filename="../../processing/register_images.py"/>
        <source>Number of dates registered</source>
        <translation>Anzahl eingepasster Aufnahmetage</translation>
    </message>
    <message>
        <location filename="../../processing/archive_event.py"/>
        <source>Number of files</source>
        <translation>Anzahl der Dateien</translation>
    </message>
    <message>
        <location filename="../../processing/make_guide.py"/>
        <source>Number of pages</source>
        <translation>Zahl der Seiten</translation>
    </message>
    <message>
        <location filename="../../processing/make_guide.py"/>
        <source>Number of pages painted anew</source>
        <translation>Zahl der neu gemalten Seiten</translation>
    </message>
    <message>
        <location filename="../../processing/compose_image.py"/>
        <source>Number of pictures made</source>
        <translation>Anzahl der Bilder</translation>
    </message>
    <message>
        <location filename="../../processing/event_sheets.py"/>
        <source>Number of sheets written</source>
        <translation>Anzahl der geschriebenen Blätter</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>Number of windows made</source>
        <translation>Anzahl der erstellten Bildausschnitte</translation>
    </message>
    <message>
        <location filename="../../processing/archive_event.py"/>
        <source>OUTPUT: the ZIP. FILES: how many files are in it, beside the list of them with their checksums.</source>
        <translation>OUTPUT: das ZIP. FILES: wie viele Dateien darin sind, neben ihrer Liste mit Prüfsummen.</translation>
    </message>
    <message>
        <location filename="../../processing/make_guide.py"/>
        <source>Of a booklet: its inner pages are moved towards the fold by so much a sheet, for that is how far they stand out before the booklet is cut.</source>
        <translation>Bei einem Heft: Innere Seiten werden je Bogen um so viel zum Falz gerückt, denn so weit stehen sie hervor, bevor das Heft beschnitten wird.</translation>
    </message>
    <message>
        <location filename="../../processing/make_guide.py"/>
        <source>Of a booklet: the edge of the sheet about which the printer turns it for its other side.</source>
        <translation>Bei einem Heft: die Kante des Bogens, um die der Drucker ihn für die andere Seite wendet.</translation>
    </message>
    <message>
        <location filename="../../desk/composing_dialog.py"/>
        <source>Of it</source>
        <translation>Anteil</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Of the fairway there, square to the line of play</source>
        <translation>Des Fairways an dieser Stelle, rechtwinklig zur Spiellinie</translation>
    </message>
    <message>
        <location filename="../../desk/pin_table.py"/>
        <location filename="../../guide/sheets.py"/>
        <source>Off</source>
        <translation>Seitlich</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Off (yd)</source>
        <translation>Von der Seite (yd)</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Off from</source>
        <translation>Seite</translation>
    </message>
    <message>
        <location filename="../../desk/drawn_item_panel.py"/>
        <source>Off, the drawing is stretched to the item, as a picture beneath it would be.</source>
        <translation>Ausgeschaltet wird die Zeichnung auf das Element gestreckt wie ein Bild darunter.</translation>
    </message>
    <message>
        <location filename="../../desk/pin_table.py"/>
        <location filename="../../desk/pointer.py"/>
        <location filename="../../guide/sheets.py"/>
        <source>On</source>
        <translation>Von vorn</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>On (yd)</source>
        <translation>Ab Vorderkante (yd)</translation>
    </message>
    <message>
        <location filename="../../desk/take_up_dialog.py"/>
        <source>On the ground</source>
        <translation>Am Boden</translation>
    </message>
    <message>
        <location filename="../../desk/hidden_panel.py"/>
        <source>On the image of &lt;b&gt;{}&lt;/b&gt;, as it lies on the map:</source>
        <translation>Auf dem Bild vom &lt;b&gt;{}&lt;/b&gt;, wie es auf der Karte liegt:</translation>
    </message>
    <message>
        <location filename="../../desk/registering_dialog.py"/>
        <source>On the map</source>
        <translation>Auf der Karte</translation>
    </message>
    <message>
        <location filename="../../guide/sheets.py"/>
        <source>On: from the front of the green, along the approach. From left or right: in from the green’s margin, square to the approach.</source>
        <translation>Von vorn: ab der Vorderkante des Grüns entlang der Annäherung. Von links oder rechts: vom Rand des Grüns nach innen, quer zur Annäherung.</translation>
    </message>
    <message>
        <location filename="../../desk/keeping.py"/>
        <source>One thing</source>
        <translation>Ein Objekt</translation>
    </message>
    <message>
        <location filename="../../processing/import_features.py"/>
        <source>Only features that meet this extent, such as one of two courses in the same file.</source>
        <translation>Nur Objekte, die diese Ausdehnung berühren, etwa einen von zwei Plätzen in derselben Datei.</translation>
    </message>
    <message>
        <location filename="../../processing/make_guide.py"/>
        <source>Only the pins of this round. Empty: those of all rounds.</source>
        <translation>Nur die Lochpositionen dieser Runde. Leer: die aller Runden.</translation>
    </message>
    <message>
        <location filename="../../processing/event_sheets.py"/>
        <source>Only the sheets and rows of this round. Empty: all rounds that have pins, or tees to set.</source>
        <translation>Nur die Blätter und Zeilen dieser Runde. Leer: alle Runden, die Lochpositionen oder zu setzende Abschläge haben.</translation>
    </message>
    <message>
        <location filename="../../processing/algorithm.py"/>
        <source>Only these holes, such as 1,4,7-9. Empty: all holes.</source>
        <translation>Nur diese Bahnen, etwa 1,4,7-9. Leer: alle Bahnen.</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>Only what differs is listed otherwise.</source>
        <translation>Sonst wird nur aufgeführt, was abweicht.</translation>
    </message>
    <message>
        <location filename="../../desk/words.py"/>
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <location filename="../../__init__.py"/>
        <source>Open Terminal and type “{command}”, then start QGIS again.</source>
        <translation>Das Terminal öffnen, „{command}“ eingeben und QGIS neu starten.</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>Open a course</source>
        <translation>Platz öffnen</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>Open a course file in this project</source>
        <translation>Eine Platzdatei in diesem Projekt öffnen</translation>
    </message>
    <message>
        <location filename="../../guide/book_figures.py"/>
        <source>Open a course, or make a page of one.</source>
        <translation>Einen Platz öffnen oder eine Seite eines Platzes erstellen.</translation>
    </message>
    <message>
        <location filename="../../desk/keeping.py"/>
        <source>Open it again to have them put back.</source>
        <translation>Ihn erneut öffnen, um sie zurückzuholen.</translation>
    </message>
    <message>
        <location filename="../../store/course_file.py"/>
        <source>Open it in QGIS with “Open course…”, which brings it up to date and keeps the old file.</source>
        <translation>In QGIS mit „Platz öffnen…“ öffnen: Dabei wird sie auf den neuen Stand gebracht, die alte Datei bleibt erhalten.</translation>
    </message>
    <message>
        <location filename="../../__init__.py"/>
        <source>Open the OSGeo4W Shell that came with QGIS and type “{command}”, then start QGIS again.</source>
        <translation>Die mit QGIS gelieferte OSGeo4W-Shell öffnen, „{command}“ eingeben und QGIS neu starten.</translation>
    </message>
    <message>
        <location filename="../../store/layer_group.py"/>
        <source>Open the course again, or check that its file is still where it was.</source>
        <translation>Den Platz erneut öffnen oder prüfen, ob seine Datei noch an ihrem Ort ist.</translation>
    </message>
    <message>
        <location filename="../../desk/dates.py"/>
        <source>Open the course again, which brings it back.</source>
        <translation>Den Platz erneut öffnen, dann ist er wieder da.</translation>
    </message>
    <message>
        <location filename="../../desk/repairing.py"/>
        <source>Open the course again.</source>
        <translation>Den Platz erneut öffnen.</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <source>Open this page in QGIS’s layout designer. What is kept there as the course’s template is the look of all such pages.</source>
        <translation>Diese Seite in der Layoutgestaltung von QGIS öffnen. Was dort als Vorlage des Platzes behalten wird, ist das Aussehen aller solchen Seiten.</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>OpenStreetMap</source>
        <translation>OpenStreetMap</translation>
    </message>
    <message>
        <location filename="../../store/openstreetmap.py"/>
        <source>OpenStreetMap gives its length as {length}</source>
        <translation>OpenStreetMap gibt die Länge mit {length} an</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Order</source>
        <translation>Reihenfolge</translation>
    </message>
    <message>
        <location filename="../../desk/composing_dialog.py"/>
        <source>Other &amp;dates</source>
        <translation>Andere &amp;Daten</translation>
    </message>
    <message>
        <location filename="../../desk/composing_dialog.py"/>
        <location filename="../../processing/compose_image.py"/>
        <source>Other dates</source>
        <translation>Andere Daten</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>Others are registered on it.</source>
        <translation>Andere sind darauf eingepasst.</translation>
    </message>
    <message>
        <location filename="../../processing/committee.py"/>
        <source>Otherwise a file with a bad row is refused, and nothing is written. The rows left out are named in the log.</source>
        <translation>Sonst wird eine Datei mit einer fehlerhaften Zeile abgelehnt und nichts geschrieben. Ausgelassene Zeilen nennt das Protokoll.</translation>
    </message>
    <message>
        <location filename="../../processing/start_course.py"/>
        <source>Otherwise a scorecard with a bad row is refused. The rows left out are named in the log.</source>
        <translation>Sonst wird eine Scorekarte mit einer fehlerhaften Zeile abgelehnt. Die ausgelassenen Zeilen nennt das Protokoll.</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>Ours</source>
        <translation>Unsere</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>Ours for &amp;all</source>
        <translation>&amp;Überall unsere</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>Ours until then</source>
        <translation>Unsere bis dahin</translation>
    </message>
    <message>
        <location filename="../../guide/book_pages.py"/>
        <source>Out</source>
        <translation>Hin</translation>
    </message>
    <message>
        <location filename="../../desk/pointer.py"/>
        <location filename="../../processing/outline_feature.py"/>
        <source>Outline</source>
        <translation>Umriss</translation>
    </message>
    <message>
        <location filename="../../processing/outline_feature.py"/>
        <source>Outline a feature</source>
        <translation>Etwas umreißen</translation>
    </message>
    <message>
        <location filename="../../desk/drawing_bar.py"/>
        <source>Outline by one click inside: the margin follows the image</source>
        <translation>Mit einem Klick hinein umreißen: Der Rand folgt dem Bild</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Overall depth</source>
        <translation>Gesamttiefe</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Overall width</source>
        <translation>Gesamtbreite</translation>
    </message>
    <message>
        <location filename="../../guide/page_design.py"/>
        <source>Overview of the course</source>
        <translation>Übersicht des Platzes</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>P&amp;ropose…</source>
        <translation>&amp;Vorschlagen…</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <location filename="../../desk/sheets_dialog.py"/>
        <source>PDF</source>
        <translation>PDF</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <location filename="../../processing/make_guide.py"/>
        <source>PDF files (*.pdf)</source>
        <translation>PDF-Dateien (*.pdf)</translation>
    </message>
    <message>
        <location filename="../../processing/archive_event.py"/>
        <source>Packs all that belongs to an event into one ZIP: the course with this event alone, the pages and templates of its guide, masks of dates, the images named, photographs of notes, and the guides made. Unpacked anywhere, it opens as it was.</source>
        <translation>Packt alles, was zu einem Wettspiel gehört, in ein ZIP: den Platz mit nur diesem Wettspiel, Seiten und Vorlagen des Buchs, Masken der Aufnahmetage, die genannten Bilder, Fotos der Notizen und die erstellten Bücher. Irgendwo ausgepackt, öffnet es sich, wie es war.</translation>
    </message>
    <message>
        <location filename="../../processing/event_sheets.py"/>
        <location filename="../../processing/make_guide.py"/>
        <source>Page</source>
        <translation>Seite</translation>
    </message>
    <message>
        <location filename="../../guide/page_design.py"/>
        <source>Page for notes</source>
        <translation>Seite für Notizen</translation>
    </message>
    <message>
        <location filename="../../guide/page_design.py"/>
        <location filename="../../model/guide_pages.py"/>
        <source>Page of a sponsor</source>
        <translation>Seite eines Sponsors</translation>
    </message>
    <message>
        <location filename="../../guide/page_design.py"/>
        <location filename="../../model/guide_pages.py"/>
        <source>Page of text</source>
        <translation>Textseite</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Page of the guide</source>
        <translation>Seite des Buchs</translation>
    </message>
    <message>
        <location filename="../../guide/pdf_join.py"/>
        <source>Page {page} (“{path}”) measures {size} mm, the first page {first} mm.</source>
        <translation>Seite {page} („{path}“) misst {size} mm, die erste Seite {first} mm.</translation>
    </message>
    <message>
        <location filename="../../desk/leafing.py"/>
        <source>Page {} of {}</source>
        <translation>Seite {} von {}</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <source>Page {} of “{}”, as it is in the file.</source>
        <translation>Seite {} von „{}“, wie sie in der Datei ist.</translation>
    </message>
    <message>
        <location filename="../../desk/page_list.py"/>
        <source>Pages of the guide</source>
        <translation>Seiten des Buchs</translation>
    </message>
    <message>
        <location filename="../../desk/hidden_panel.py"/>
        <source>Paint it again</source>
        <translation>Ihn wieder malen</translation>
    </message>
    <message>
        <location filename="../../desk/hidden_panel.py"/>
        <source>Paint on the map what hides the ground there, or that it is seen for sure. [ and ], or Shift and the wheel, change the size; Ctrl+Z takes a stroke back; Esc ends.</source>
        <translation>Auf die Karte malen, was dort den Boden verdeckt oder dass er sicher zu sehen ist. [ und ] oder Umschalt und das Rad ändern die Größe; Strg+Z nimmt einen Strich zurück; Esc beendet.</translation>
    </message>
    <message>
        <location filename="../../desk/ties.py"/>
        <location filename="../../model/kinds.py"/>
        <source>Pair</source>
        <translation>Paar</translation>
    </message>
    <message>
        <location filename="../../desk/ties.py"/>
        <source>Pair {}: click a clear spot on {}. Enter when done.</source>
        <translation>Paar {}: eine deutliche Stelle auf {} anklicken. Am Ende die Eingabetaste.</translation>
    </message>
    <message>
        <location filename="../../desk/ties.py"/>
        <source>Pair {}: click the same spot on both, in either order. Enter when done.</source>
        <translation>Paar {}: dieselbe Stelle auf beiden anklicken, gleich in welcher Folge. Am Ende die Eingabetaste.</translation>
    </message>
    <message>
        <location filename="../../desk/ties.py"/>
        <source>Pair {}: click the same spot on {}.</source>
        <translation>Paar {}: dieselbe Stelle auf {} anklicken.</translation>
    </message>
    <message>
        <location filename="../../guide/pdf_join.py"/>
        <source>Paper of {creep} mm would move the innermost pages by {innermost} mm.</source>
        <translation>Papier von {creep} mm würde die innersten Seiten um {innermost} mm verschieben.</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <location filename="../../desk/hole_panel.py"/>
        <location filename="../../guide/book_pages.py"/>
        <location filename="../../measure/checklist.py"/>
        <location filename="../../model/kinds.py"/>
        <source>Par</source>
        <translation>Par</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Par check</source>
        <translation>Par-Prüfung</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Par lengths for</source>
        <translation>Par-Längen für</translation>
    </message>
    <message>
        <location filename="../../guide/hole_page.py"/>
        <location filename="../../guide/page_design.py"/>
        <source>Par {par}</source>
        <translation>Par {par}</translation>
    </message>
    <message>
        <location filename="../../desk/drawn_item_panel.py"/>
        <location filename="../../guide/drawn_item.py"/>
        <source>Part of a yardage guide</source>
        <translation>Teil eines Platzführers</translation>
    </message>
    <message>
        <location filename="../../imagery/outline.py"/>
        <source>Part of it lies in the shade.</source>
        <translation>Ein Teil davon liegt im Schatten.</translation>
    </message>
    <message>
        <location filename="../../desk/propose_dialog.py"/>
        <source>Part of the green</source>
        <translation>Teil des Grüns</translation>
    </message>
    <message>
        <location filename="../../imagery/image.py"/>
        <source>Part of the image cannot be read: {reason}.</source>
        <translation>Ein Teil des Bildes ist nicht lesbar: {reason}.</translation>
    </message>
    <message>
        <location filename="../../imagery/terrain.py"/>
        <source>Part of the terrain cannot be read: {reason}.</source>
        <translation>Ein Teil des Geländemodells ist nicht lesbar: {reason}.</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <location filename="../../desk/tees_dialog.py"/>
        <source>Pas&amp;te</source>
        <translation>Ein&amp;fügen</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Patch from another date</source>
        <translation>Stück aus anderem Bilddatum</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Path</source>
        <translation>Weg</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Penalty area</source>
        <translation>Penalty Area</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Permanent tee marker</source>
        <translation>Abschlagplatte</translation>
    </message>
    <message>
        <location filename="../../desk/description_dialog.py"/>
        <location filename="../../desk/words.py"/>
        <source>Phone</source>
        <translation>Telefon</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Photograph</source>
        <translation>Foto</translation>
    </message>
    <message>
        <location filename="../../desk/composing_dialog.py"/>
        <source>Picture</source>
        <translation>Bild</translation>
    </message>
    <message>
        <location filename="../../desk/composing.py"/>
        <source>Picture {} of {}</source>
        <translation>Bild {} von {}</translation>
    </message>
    <message>
        <location filename="../../desk/moved_layers.py"/>
        <source>Pictures cut from it are; draw from a date that lies right on the map.</source>
        <translation>Daraus geschnittene Bilder werden es; nach einem Aufnahmetag zeichnen, der auf der Karte richtig liegt.</translation>
    </message>
    <message>
        <location filename="../../desk/composing_dialog.py"/>
        <source>Pictures made and added to the project: {}.</source>
        <translation>Bilder gemacht und dem Projekt hinzugefügt: {}.</translation>
    </message>
    <message>
        <location filename="../../guide/book_pages.py"/>
        <source>Pictures: {credits}</source>
        <translation>Bilder: {credits}</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Pin (hole location)</source>
        <translation>Lochposition (Fahne)</translation>
    </message>
    <message>
        <location filename="../../measure/pins.py"/>
        <source>Pin of round {number}, hole {hole}: {reason}.</source>
        <translation>Lochposition Runde {number}, Bahn {hole}: {reason}.</translation>
    </message>
    <message>
        <location filename="../../desk/event_settings.py"/>
        <source>Pin to the margin, at least</source>
        <translation>Lochposition zum Rand, mindestens</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <location filename="../../desk/event_panel.py"/>
        <location filename="../../desk/propose_dialog.py"/>
        <location filename="../../model/guide_pages.py"/>
        <source>Pins</source>
        <translation>Löcher</translation>
    </message>
    <message>
        <location filename="../../processing/audit_pins.py"/>
        <source>Pins further apart than this many yards are told. Empty: the event’s own setting.</source>
        <translation>Lochpositionen, die um mehr als so viele Yards abweichen, werden genannt. Leer: die Einstellung des Wettspiels.</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Pins may be out by (yd)</source>
        <translation>Lochpositionen dürfen abweichen um (yd)</translation>
    </message>
    <message>
        <location filename="../../guide/drawn_item.py"/>
        <location filename="../../guide/page_design.py"/>
        <source>Pins of a round</source>
        <translation>Lochpositionen einer Runde</translation>
    </message>
    <message>
        <location filename="../../guide/event_sheets.py"/>
        <source>Pins of a round, as a table</source>
        <translation>Lochpositionen einer Runde, als Tabelle</translation>
    </message>
    <message>
        <location filename="../../guide/event_sheets.py"/>
        <source>Pins of a round, on small greens</source>
        <translation>Lochpositionen einer Runde, auf kleinen Grüns</translation>
    </message>
    <message>
        <location filename="../../guide/event_sheets.py"/>
        <source>Pins of all rounds on one green</source>
        <translation>Lochpositionen aller Runden auf einem Grün</translation>
    </message>
    <message>
        <location filename="../../desk/event_settings.py"/>
        <source>Pins of one green nearer are remarked</source>
        <translation>Nähere Lochpositionen eines Grüns bekommen eine Bemerkung</translation>
    </message>
    <message>
        <location filename="../../desk/event_settings.py"/>
        <source>Pins of two rounds apart, at least</source>
        <translation>Abstand der Lochpositionen zweier Runden, mindestens</translation>
    </message>
    <message>
        <location filename="../../desk/event_settings.py"/>
        <source>Pins so little apart count as the same</source>
        <translation>Lochpositionen mit so wenig Abstand gelten als gleich</translation>
    </message>
    <message>
        <location filename="../../guide/sheets.py"/>
        <source>Pins to check</source>
        <translation>Lochpositionen zur Prüfung</translation>
    </message>
    <message>
        <location filename="../../guide/book.py"/>
        <source>Pins, round {number}</source>
        <translation>Lochpositionen, Runde {number}</translation>
    </message>
    <message>
        <location filename="../../guide/event_page.py"/>
        <source>Pins: so far on from the green’s front, so far in from the side that is named.</source>
        <translation>Fahnen: so weit vom vorderen Rand des Grüns, so weit von der genannten Seite herein.</translation>
    </message>
    <message>
        <location filename="../../processing/compose_image.py"/>
        <source>Pixel (m)</source>
        <translation>Pixel (m)</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>Pixels of the picture per inch of the page.</source>
        <translation>Pixel des Bildes je Zoll der Seite.</translation>
    </message>
    <message>
        <location filename="../../processing/make_guide.py"/>
        <source>Pixels of the pictures per inch of the page. Empty: 200 for the screen, 300 for print.</source>
        <translation>Pixel der Bilder je Zoll der Seite. Leer: 200 für den Bildschirm, 300 für den Druck.</translation>
    </message>
    <message>
        <location filename="../../processing/event_sheets.py"/>
        <source>Place its pins first (placepins).</source>
        <translation>Zuerst seine Lochpositionen setzen (placepins).</translation>
    </message>
    <message>
        <location filename="../../processing/place_pins.py"/>
        <source>Place pins</source>
        <translation>Lochpositionen setzen</translation>
    </message>
    <message>
        <location filename="../../processing/event_sheets.py"/>
        <source>Place the event’s pins or set its tees first.</source>
        <translation>Zuerst die Lochpositionen des Wettspiels setzen oder seine Abschläge einrichten.</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>Place the pins of an event, round by round</source>
        <translation>Die Lochpositionen eines Wettspiels setzen, Runde für Runde</translation>
    </message>
    <message>
        <location filename="../../desk/bring_pins.py"/>
        <location filename="../../desk/propose_dialog.py"/>
        <source>Place them</source>
        <translation>Setzen</translation>
    </message>
    <message>
        <location filename="../../desk/drawing_bar.py"/>
        <source>Place: {}</source>
        <translation>Setzen: {}</translation>
    </message>
    <message>
        <location filename="../../imagery/registration.py"/>
        <source>Places of {date} lie off {base} each in another way: the one cannot be laid on the other.</source>
        <translation>Die Stellen von {date} liegen jede anders neben {base}: Das eine lässt sich nicht auf das andere legen.</translation>
    </message>
    <message>
        <location filename="../../processing/place_pins.py"/>
        <source>Places the hole locations of an event from the committee’s figures: so far on from the front of the green along the approach, so far in from the left or right margin or off the line of approach. A pin of the same event, round and hole that is there already is replaced.</source>
        <translation>Setzt die Lochpositionen eines Wettspiels nach den Angaben der Spielleitung: so weit von der Vorderkante des Grüns entlang der Annäherung, so weit vom linken oder rechten Rand herein oder von der Annäherungslinie. Eine schon vorhandene Lochposition für dasselbe Wettspiel, dieselbe Runde und Bahn wird ersetzt.</translation>
    </message>
    <message>
        <location filename="../../desk/propose_dialog.py"/>
        <source>Places the locations that are ticked.</source>
        <translation>Setzt die angehakten Lochpositionen.</translation>
    </message>
    <message>
        <location filename="../../desk/length_table.py"/>
        <source>Plate</source>
        <translation>Platte</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Play</source>
        <translation>Spielen</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>Play &amp;up</source>
        <translation>Spielrichtung &amp;oben</translation>
    </message>
    <message>
        <location filename="../../desk/event_settings.py"/>
        <location filename="../../model/kinds.py"/>
        <source>Played on</source>
        <translation>Gespielt am</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <location filename="../../guide/sheets.py"/>
        <source>Plays</source>
        <translation>Spielt</translation>
    </message>
    <message>
        <location filename="../../desk/description_dialog.py"/>
        <location filename="../../desk/words.py"/>
        <source>Pocket</source>
        <translation>Tasche</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>Points of a survey</source>
        <translation>Punkte einer Vermessung</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>Print</source>
        <translation>Druck</translation>
    </message>
    <message>
        <location filename="../../guide/pdf_objects.py"/>
        <source>Print it to a new PDF from the program that shows it, and choose that one.</source>
        <translation>Aus dem Programm, das die Datei anzeigt, in ein neues PDF drucken und dieses wählen.</translation>
    </message>
    <message>
        <location filename="../../desk/propose_dialog.py"/>
        <source>Proposes locations for the event and its greens as they are now.</source>
        <translation>Schlägt Lochpositionen für das Wettspiel und seine Grüns vor, wie sie jetzt sind.</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>Proposes locations for the holes and rounds that have none: fair, in balance, and apart from those of earlier rounds. You choose what is taken over.</source>
        <translation>Schlägt Lochpositionen für Bahnen und Runden vor, die noch keine haben: fair, ausgewogen und mit Abstand zu früheren Runden. Was übernommen wird, wird gewählt.</translation>
    </message>
    <message>
        <location filename="../../desk/description_dialog.py"/>
        <source>Put a figure in</source>
        <translation>Eine Zahl einfügen</translation>
    </message>
    <message>
        <location filename="../../desk/keeping.py"/>
        <source>Put back</source>
        <translation>Zurückholen</translation>
    </message>
    <message>
        <location filename="../../desk/keeping.py"/>
        <source>Put back what was not saved</source>
        <translation>Nicht Gespeichertes zurückholen</translation>
    </message>
    <message>
        <location filename="../../desk/keeping.py"/>
        <source>Put back, not saved yet: {}.</source>
        <translation>Zurückgeholt, noch nicht gespeichert: {}.</translation>
    </message>
    <message>
        <location filename="../../processing/audit_pins.py"/>
        <source>Puts the committee’s figures beside the pins that are drawn for an event: those further apart than the tolerance, those missing, those nobody asked for, and figures that no green can have. Nothing in the course is changed.</source>
        <translation>Stellt die Angaben der Spielleitung neben die gezeichneten Lochpositionen eines Wettspiels: solche, die um mehr als die Toleranz abweichen, fehlende, nicht verlangte und Angaben, die auf keinem Grün liegen können. Am Platz wird nichts geändert.</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>Puts the committee’s figures beside the pins that are drawn; theirs or ours is decided pin by pin, and the decision is kept.</source>
        <translation>Stellt die Angaben der Spielleitung neben die gezeichneten Lochpositionen; ihre oder unsere wird einzeln entschieden, und die Entscheidung wird festgehalten.</translation>
    </message>
    <message>
        <location filename="../../desk/bring_lengths.py"/>
        <source>Puts them into the table of lengths</source>
        <translation>Übernimmt sie in die Tabelle der Längen</translation>
    </message>
    <message>
        <location filename="../../guide/rendered.py"/>
        <source>QGIS could not draw the image: {reasons}.</source>
        <translation>QGIS konnte das Bild nicht darstellen: {reasons}.</translation>
    </message>
    <message>
        <location filename="../../desk/keeping.py"/>
        <source>QGIS ended before they were saved; the recovery copy “{}” has them.</source>
        <translation>QGIS endete, bevor sie gespeichert waren; die Sicherungskopie „{}“ enthält sie.</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>QGIS’s Processing is not there, and this needs it.</source>
        <translation>Die Verarbeitung von QGIS fehlt, wird hier aber gebraucht.</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>Re&amp;move…</source>
        <translation>&amp;Entfernen…</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Reach</source>
        <translation>Bis</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>Read a &amp;file…</source>
        <translation>&amp;Datei lesen…</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>Read the course again and measure anew. Edits are followed by themselves.</source>
        <translation>Den Platz erneut lesen und neu messen. Änderungen werden von selbst übernommen.</translation>
    </message>
    <message>
        <location filename="../../desk/tees_dialog.py"/>
        <source>Reads round, flight, hole and yards from a file; what is read is listed first</source>
        <translation>Liest round, flight, hole und yards aus einer Datei; das Gelesene wird zuerst aufgelistet</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>Reads rows that were copied from a spreadsheet, their headings with them.</source>
        <translation>Liest Zeilen, die aus einer Tabellenkalkulation kopiert wurden, mitsamt ihren Überschriften.</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>Reads the committee’s figures from a CSV file. Nothing is written.</source>
        <translation>Liest die Maße der Spielleitung aus einer CSV-Datei. Geschrieben wird nichts.</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>Reads the committee’s figures from a file. What is read is listed before anything is written.</source>
        <translation>Liest die Angaben der Spielleitung aus einer Datei. Was gelesen wurde, wird gezeigt, bevor etwas geschrieben wird.</translation>
    </message>
    <message>
        <location filename="../../processing/compose_image.py"/>
        <source>Recipe</source>
        <translation>Rezept</translation>
    </message>
    <message>
        <location filename="../../processing/compose_image.py"/>
        <source>Recipe (*.json);;All files (*)</source>
        <translation>Rezept (*.json);;Alle Dateien (*)</translation>
    </message>
    <message>
        <location filename="../../store/symbols.py"/>
        <source>Red stakes</source>
        <translation>Rote Pfähle</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>Refuses an image date of the course that may not be printed. Say no for pictures that are only looked at.</source>
        <translation>Weist einen Aufnahmetag des Platzes zurück, der nicht gedruckt werden darf. Nein für Bilder, die nur angesehen werden.</translation>
    </message>
    <message>
        <location filename="../../desk/registering_dialog.py"/>
        <source>Register dates</source>
        <translation>Daten einpassen</translation>
    </message>
    <message>
        <location filename="../../processing/register_images.py"/>
        <source>Register images</source>
        <translation>Bilder einpassen</translation>
    </message>
    <message>
        <location filename="../../imagery/moves.py"/>
        <source>Register the date again.</source>
        <translation>Den Aufnahmetag erneut einpassen.</translation>
    </message>
    <message>
        <location filename="../../desk/registering_dialog.py"/>
        <source>Registered before, with ± {} m.</source>
        <translation>Schon früher eingepasst, mit ± {} m.</translation>
    </message>
    <message>
        <location filename="../../desk/registering_dialog.py"/>
        <source>Registered before.</source>
        <translation>Schon früher eingepasst.</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>Registered: it lies on the base with a standard error of {} m.</source>
        <translation>Eingepasst: es liegt mit einem Standardfehler von {} m auf dem Grundbild.</translation>
    </message>
    <message>
        <location filename="../../desk/registering_dialog.py"/>
        <source>Registered; features that moved along: {}.</source>
        <translation>Eingepasst; mitverschobene Objekte: {}.</translation>
    </message>
    <message>
        <location filename="../../desk/date_actions.py"/>
        <source>Register…</source>
        <translation>Einpassen…</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Registration error (m)</source>
        <translation>Einpassfehler (m)</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <location filename="../../desk/composing_dialog.py"/>
        <location filename="../../desk/figures.py"/>
        <location filename="../../desk/registering_dialog.py"/>
        <source>Remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <location filename="../../store/bring_in.py"/>
        <source>Remark: {remark}</source>
        <translation>Bemerkung: {remark}</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>Remark: {}</source>
        <translation>Bemerkung: {}</translation>
    </message>
    <message>
        <location filename="../../desk/propose_dialog.py"/>
        <location filename="../../processing/import_features.py"/>
        <source>Remarks</source>
        <translation>Bemerkungen</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>Remarks on the course</source>
        <translation>Bemerkungen zum Platz</translation>
    </message>
    <message>
        <location filename="../../desk/sheets_dialog.py"/>
        <source>Remarks on this sheet</source>
        <translation>Bemerkungen zu diesem Blatt</translation>
    </message>
    <message>
        <location filename="../../desk/sheets_dialog.py"/>
        <source>Remarks on this sheet: {}</source>
        <translation>Bemerkungen zu diesem Blatt: {}</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <location filename="../../desk/guide_dialog.py"/>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>Remove the event “{}” with all that belongs to it?</source>
        <translation>Das Wettspiel „{}“ mit allem entfernen, was dazugehört?</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>Remove the event?</source>
        <translation>Wettspiel entfernen?</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>Remove “{}”</source>
        <translation>Entfernen: „{}“</translation>
    </message>
    <message>
        <location filename="../../store/committee.py"/>
        <location filename="../../store/scorecard.py"/>
        <source>Rename or delete one of them.</source>
        <translation>Eine davon umbenennen oder löschen.</translation>
    </message>
    <message>
        <location filename="../../desk/event_dialog.py"/>
        <source>Rename “{}”</source>
        <translation>Umbenennen: „{}“</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>Rename “{}” to “{}”</source>
        <translation>Umbenennen: „{}“ in „{}“</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>Replace the file?</source>
        <translation>Datei ersetzen?</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>Replace the tables?</source>
        <translation>Tabellen ersetzen?</translation>
    </message>
    <message>
        <location filename="../../processing/algorithm.py"/>
        <source>Result</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <location filename="../../desk/propose_dialog.py"/>
        <location filename="../../guide/sheets.py"/>
        <source>Right</source>
        <translation>Rechts</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <location filename="../../guide/sheets.py"/>
        <source>Rise (m)</source>
        <translation>Anstieg (m)</translation>
    </message>
    <message>
        <location filename="../../guide/sheets.py"/>
        <source>Rise: how much higher than the markers the green’s middle lies. No length counts it.</source>
        <translation>Anstieg: wie viel höher als die Abschlagmarken die Mitte des Grüns liegt. Er zählt in keiner Länge.</translation>
    </message>
    <message>
        <location filename="../../desk/description_dialog.py"/>
        <source>Room on the page</source>
        <translation>Raum auf der Seite</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Rough</source>
        <translation>Rough</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <location filename="../../desk/bring_lengths.py"/>
        <location filename="../../desk/bring_pins.py"/>
        <location filename="../../desk/event_panel.py"/>
        <location filename="../../desk/propose_dialog.py"/>
        <location filename="../../desk/tees_dialog.py"/>
        <location filename="../../guide/event_page.py"/>
        <location filename="../../guide/sheets.py"/>
        <location filename="../../model/kinds.py"/>
        <location filename="../../processing/event_sheets.py"/>
        <location filename="../../processing/make_guide.py"/>
        <location filename="../../store/styling.py"/>
        <source>Round</source>
        <translation>Runde</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Round of an event</source>
        <translation>Runde eines Wettspiels</translation>
    </message>
    <message>
        <location filename="../../guide/sheets.py"/>
        <source>Round {number}</source>
        <translation>Runde {number}</translation>
    </message>
    <message>
        <location filename="../../guide/sheets.py"/>
        <source>Round {number} has no green to show.</source>
        <translation>Runde {number} hat kein Grün, das sich zeigen lässt.</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <location filename="../../desk/event_settings.py"/>
        <location filename="../../desk/guide_dialog.py"/>
        <location filename="../../desk/propose_dialog.py"/>
        <location filename="../../desk/sheets_dialog.py"/>
        <location filename="../../desk/tees_dialog.py"/>
        <source>Round {}</source>
        <translation>Runde {}</translation>
    </message>
    <message>
        <location filename="../../desk/event_draft.py"/>
        <source>Round {} cannot be taken out, for it has pins: {}.</source>
        <translation>Runde {} kann nicht herausgenommen werden, denn sie hat Lochpositionen: {}.</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>Round {} does not play hole {}.</source>
        <translation>Runde {} spielt Bahn {} nicht.</translation>
    </message>
    <message>
        <location filename="../../desk/propose_dialog.py"/>
        <source>Round {}, holes {}</source>
        <translation>Runde {}, Bahnen {}</translation>
    </message>
    <message>
        <location filename="../../processing/set_tees.py"/>
        <source>Round {}, {}, hole {}: {}</source>
        <translation>Runde {}, {}, Bahn {}: {}</translation>
    </message>
    <message>
        <location filename="../../desk/event_dialog.py"/>
        <location filename="../../desk/event_panel.py"/>
        <location filename="../../desk/event_settings.py"/>
        <location filename="../../guide/event_page.py"/>
        <source>Rounds</source>
        <translation>Runden</translation>
    </message>
    <message>
        <location filename="../../desk/tees_dialog.py"/>
        <source>Rounds and limits</source>
        <translation>Runden und Grenzen</translation>
    </message>
    <message>
        <location filename="../../desk/event_dialog.py"/>
        <source>Rounds, flights, lengths and limits as in “{}”</source>
        <translation>Runden, Gruppen, Längen und Grenzen wie in „{}“</translation>
    </message>
    <message>
        <location filename="../../desk/event_settings.py"/>
        <source>Rules of Golf, Rule 4.3a. While it is ticked, no guide that breaks it is written.</source>
        <translation>Golfregeln, Regel 4.3a. Solange das angehakt ist, wird kein Buch geschrieben, das sie verletzt.</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Rules on pages that do not apply (with commas)</source>
        <translation>Regeln für Seiten, die nicht gelten (mit Kommas)</translation>
    </message>
    <message>
        <location filename="../../processing/make_guide.py"/>
        <source>Rules that do not apply</source>
        <translation>Regeln, die nicht gelten</translation>
    </message>
    <message>
        <location filename="../../desk/event_settings.py"/>
        <source>Rules that the guide keeps</source>
        <translation>Regeln, die das Buch einhält</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Run-out</source>
        <translation>Auslauf</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>S&amp;heets…</source>
        <translation>&amp;Blätter…</translation>
    </message>
    <message>
        <location filename="../../guide/page_design.py"/>
        <source>SI {index}</source>
        <translation>SI {index}</translation>
    </message>
    <message>
        <location filename="../../store/vector_source.py"/>
        <source>SOURCE_CRS was not used: {source} has its own, {crs}.</source>
        <translation>SOURCE_CRS wurde nicht verwendet: {source} hat ein eigenes, {crs}.</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>Save &amp;sheet…</source>
        <translation>&amp;Blatt speichern…</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <location filename="../../desk/sheets_dialog.py"/>
        <source>Save as P&amp;DF…</source>
        <translation>Als P&amp;DF speichern…</translation>
    </message>
    <message>
        <location filename="../../guide/sponsor_pages.py"/>
        <source>Save it anew as PNG or JPEG.</source>
        <translation>Neu als PNG oder JPEG speichern.</translation>
    </message>
    <message>
        <location filename="../../store/vector_source.py"/>
        <source>Save it as CSV in UTF-8 with a row of column names.</source>
        <translation>Als CSV in UTF-8 mit einer Zeile Spaltennamen speichern.</translation>
    </message>
    <message>
        <location filename="../../store/scorecard.py"/>
        <source>Save it as “CSV UTF-8” and try again.</source>
        <translation>Als „CSV UTF-8“ speichern und erneut versuchen.</translation>
    </message>
    <message>
        <location filename="../../desk/keeping.py"/>
        <source>Save often, and check that there is room on the disk.</source>
        <translation>Oft speichern und prüfen, ob auf dem Datenträger Platz ist.</translation>
    </message>
    <message>
        <location filename="../../store/recovery.py"/>
        <source>Save often, and check that these folders may be written to.</source>
        <translation>Oft speichern und prüfen, ob in diese Ordner geschrieben werden darf.</translation>
    </message>
    <message>
        <location filename="../../store/upgrade.py"/>
        <source>Save or discard the edits to it, close it in other programs, then try again.</source>
        <translation>Änderungen daran speichern oder verwerfen, die Datei in anderen Programmen schließen, dann erneut versuchen.</translation>
    </message>
    <message>
        <location filename="../../desk/editing.py"/>
        <location filename="../../store/recovery.py"/>
        <source>Save or undo what is being edited there, then try again.</source>
        <translation>Dortige Änderungen speichern oder rückgängig machen, dann erneut versuchen.</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>Save ta&amp;ble…</source>
        <translation>&amp;Tabelle speichern…</translation>
    </message>
    <message>
        <location filename="../../guide/event_archive.py"/>
        <source>Save the edits to it, and try again.</source>
        <translation>Die Änderungen daran speichern und noch einmal versuchen.</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <source>Save the guide</source>
        <translation>Das Buch speichern</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <location filename="../../desk/event_panel.py"/>
        <location filename="../../desk/registering_dialog.py"/>
        <source>Save the layers to keep it.</source>
        <translation>Die Layer speichern, damit es bleibt.</translation>
    </message>
    <message>
        <location filename="../../guide/pdf_objects.py"/>
        <source>Save the page you want as a PDF of its own.</source>
        <translation>Die gewünschte Seite als eigenes PDF speichern.</translation>
    </message>
    <message>
        <location filename="../../desk/sheets_dialog.py"/>
        <source>Save the sheet</source>
        <translation>Blatt speichern</translation>
    </message>
    <message>
        <location filename="../../store/committee.py"/>
        <source>Save the sheet as “CSV UTF-8”, or paste its cells.</source>
        <translation>Das Blatt als „CSV UTF-8“ speichern oder seine Zellen einfügen.</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>Saves the greens with their pins, as they are drawn now, as PDF for the committee.</source>
        <translation>Speichert die Grüns mit ihren Lochpositionen, wie sie jetzt gezeichnet sind, als PDF für die Spielleitung.</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>Saves the whole audit as pin_audit.csv in a folder.</source>
        <translation>Speichert den ganzen Abgleich als pin_audit.csv in einem Ordner.</translation>
    </message>
    <message>
        <location filename="../../processing/start_course.py"/>
        <source>Say in which file the course is to be kept.</source>
        <translation>Angeben, in welcher Datei der Platz liegen soll.</translation>
    </message>
    <message>
        <location filename="../../processing/algorithm.py"/>
        <source>Say its name as EVENT.</source>
        <translation>Seinen Namen als EVENT angeben.</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>Say who decided first.</source>
        <translation>Zuerst angeben, wer entschieden hat.</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <location filename="../../processing/export_windows.py"/>
        <source>Scale 1 :</source>
        <translation>Maßstab 1 :</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Schema version</source>
        <translation>Schemaversion</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <location filename="../../guide/book_pages.py"/>
        <location filename="../../guide/drawn_item.py"/>
        <location filename="../../guide/page_design.py"/>
        <location filename="../../model/guide_pages.py"/>
        <location filename="../../model/kinds.py"/>
        <location filename="../../processing/start_course.py"/>
        <source>Scorecard</source>
        <translation>Scorekarte</translation>
    </message>
    <message>
        <location filename="../../processing/start_course.py"/>
        <source>Scorecard, line {}: {}; left out.</source>
        <translation>Scorekarte, Zeile {}: {}; ausgelassen.</translation>
    </message>
    <message>
        <location filename="../../guide/book_pages.py"/>
        <source>Scorecard, round {number}</source>
        <translation>Scorekarte, Runde {number}</translation>
    </message>
    <message>
        <location filename="../../desk/date_actions.py"/>
        <source>See shade, crowns, clouds and what moves on a date, and correct it with a brush</source>
        <translation>Schatten, Kronen, Wolken und was sich bewegt auf einem Datum sehen und mit dem Pinsel berichtigen</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>See the figures of a hole beside its drawing</source>
        <translation>Die Maße einer Bahn neben ihrer Zeichnung sehen</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>See the guide page by page, order its pages, and save it for phone or print</source>
        <translation>Das Buch Seite für Seite ansehen, seine Seiten ordnen und es für Telefon oder Druck speichern</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>See the other date in a second view that moves, zooms and turns with the map</source>
        <translation>Das andere Datum in einer zweiten Ansicht zeigen, die sich mit der Karte bewegt, zoomt und dreht</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>See what of the hole is drawn, and its figures</source>
        <translation>Sehen, was von der Bahn gezeichnet ist, und ihre Maße</translation>
    </message>
    <message>
        <location filename="../../desk/hidden_panel.py"/>
        <source>Seen for sure</source>
        <translation>Sicher zu sehen</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Seen in image</source>
        <translation>Zu sehen im Bild</translation>
    </message>
    <message>
        <location filename="../../desk/registering_dialog.py"/>
        <source>Set &amp;ties by hand…</source>
        <translation>&amp;Passpunkte von Hand…</translation>
    </message>
    <message>
        <location filename="../../desk/dates.py"/>
        <source>Set its coordinate reference system in its properties, then try again.</source>
        <translation>In den Layereigenschaften das Koordinatenbezugssystem setzen, dann erneut versuchen.</translation>
    </message>
    <message>
        <location filename="../../imagery/registration.py"/>
        <source>Set one for a shift, two well apart for a turn, each in a place of its own.</source>
        <translation>Einen für eine Verschiebung setzen, zwei weit auseinander für eine Drehung, jeden an einer eigenen Stelle.</translation>
    </message>
    <message>
        <location filename="../../processing/set_tees.py"/>
        <source>Set tees</source>
        <translation>Abschläge stecken</translation>
    </message>
    <message>
        <location filename="../../guide/outlining.py"/>
        <source>Set the coordinate reference system of the image and of the place.</source>
        <translation>Das Koordinatenbezugssystem des Bildes und der Stelle angeben.</translation>
    </message>
    <message>
        <location filename="../../imagery/image.py"/>
        <location filename="../../imagery/moved_file.py"/>
        <location filename="../../imagery/terrain.py"/>
        <source>Set the layer's CRS in QGIS (Layer, Set CRS of Layer), or write it into the file.</source>
        <translation>Das KBS des Layers in QGIS setzen (Layer, Layer-KBS setzen) oder in die Datei schreiben.</translation>
    </message>
    <message>
        <location filename="../../store/course_file.py"/>
        <source>Set the system of its layers in QGIS, or start a new course and bring the features in.</source>
        <translation>Das System seiner Layer in QGIS setzen oder einen neuen Platz anlegen und die Objekte übernehmen.</translation>
    </message>
    <message>
        <location filename="../../imagery/registration.py"/>
        <source>Set tie points by hand, or take another image of that date.</source>
        <translation>Passpunkte von Hand setzen oder ein anderes Bild dieses Tages nehmen.</translation>
    </message>
    <message>
        <location filename="../../desk/hidden_panel.py"/>
        <source>Shade</source>
        <translation>Schatten</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>Shade the &amp;green by its slope</source>
        <translation>Das Grün nach Gefälle einfä&amp;rben</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>Shades the green of the hole in hand on the map by how steep it is, with arrows downhill. Ground steeper than the event’s limit is hatched. The project needs a terrain model for it.</source>
        <translation>Färbt das Grün der gewählten Bahn auf der Karte danach ein, wie steil es ist, mit Pfeilen bergab. Boden, der steiler ist, als das Wettspiel zulässt, ist schraffiert. Das Projekt braucht dafür ein Geländemodell.</translation>
    </message>
    <message>
        <location filename="../../processing/event_sheets.py"/>
        <source>Sheets</source>
        <translation>Blätter</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>Sheets for players, committee and ground staff, as PDF.</source>
        <translation>Blätter für Spieler, Spielleitung und Platzpflege, als PDF.</translation>
    </message>
    <message>
        <location filename="../../desk/sheets_dialog.py"/>
        <source>Sheets: {}</source>
        <translation>Blätter: {}</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Shift east (m)</source>
        <translation>Verschiebung nach Osten (m)</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Shift north (m)</source>
        <translation>Verschiebung nach Norden (m)</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Short of green</source>
        <translation>Vor Grün</translation>
    </message>
    <message>
        <location filename="../../desk/hidden_panel.py"/>
        <source>Show</source>
        <translation>Zeigen</translation>
    </message>
    <message>
        <location filename="../../guide/outlining.py"/>
        <source>Show an image of the course there, or draw it by hand.</source>
        <translation>Dort ein Bild des Platzes einblenden oder von Hand zeichnen.</translation>
    </message>
    <message>
        <location filename="../../guide/rules.py"/>
        <source>Show it smaller, or say that the rule does not apply.</source>
        <translation>Es kleiner zeigen oder sagen, dass die Regel nicht gilt.</translation>
    </message>
    <message>
        <location filename="../../desk/masks.py"/>
        <source>Show one date alone to see what hides the ground on it.</source>
        <translation>Ein Datum allein zeigen, um zu sehen, was auf ihm den Boden verdeckt.</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>Show only</source>
        <translation>Nur zeigen</translation>
    </message>
    <message>
        <location filename="../../desk/drawing_bar.py"/>
        <source>Show that date alone on the map, or beyond the divider, and draw the patch there.</source>
        <translation>Dieses Datum allein auf der Karte zeigen, oder jenseits des Teilers, und das Stück dort zeichnen.</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>Show the green with its approach upwards</source>
        <translation>Das Grün mit der Annäherung nach oben zeigen</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>Show the hole with play from the longest tee upwards</source>
        <translation>Die Bahn mit der Spielrichtung vom längsten Abschlag nach oben zeigen</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>Show the hole with the map not turned</source>
        <translation>Die Bahn mit ungedrehter Karte zeigen</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>Show the images of the course by date, and compare two of them</source>
        <translation>Die Bilder des Platzes nach Datum zeigen und zwei davon vergleichen</translation>
    </message>
    <message>
        <location filename="../../desk/sheets_dialog.py"/>
        <source>Show the page as wide as the window, to read it closely</source>
        <translation>Die Seite so breit wie das Fenster zeigen, um sie genau zu lesen</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>Show those that a&amp;gree too</source>
        <translation>A&amp;uch übereinstimmende zeigen</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Shown</source>
        <translation>Gezeigt</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Shows</source>
        <translation>Zeigt</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>Shows only what was drawn from one date. For the eye only: nothing is taken out of the course.</source>
        <translation>Zeigt nur, was nach einem Datum gezeichnet wurde. Nur für das Auge: aus dem Platz wird nichts entfernt.</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>Side by side</source>
        <translation>Nebeneinander</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <source>Single pages for print</source>
        <translation>Einzelne Seiten für den Druck</translation>
    </message>
    <message>
        <location filename="../../desk/pin_table.py"/>
        <location filename="../../desk/pointer.py"/>
        <location filename="../../guide/sheets.py"/>
        <source>Slope</source>
        <translation>Gefälle</translation>
    </message>
    <message>
        <location filename="../../desk/event_settings.py"/>
        <source>Slope at a pin, at most</source>
        <translation>Gefälle an einer Lochposition, höchstens</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>Slope at ours</source>
        <translation>Gefälle an unserer</translation>
    </message>
    <message>
        <location filename="../../desk/slope_shading.py"/>
        <source>Slope of the green, hole {}</source>
        <translation>Gefälle des Grüns, Bahn {}</translation>
    </message>
    <message>
        <location filename="../../guide/sheets.py"/>
        <source>Slope: how steep the ground is at the pin; the arrow points downhill, the approach up.</source>
        <translation>Gefälle: wie steil der Boden an der Lochposition ist; der Pfeil zeigt bergab, die Annäherung nach oben.</translation>
    </message>
    <message>
        <location filename="../../desk/pin_table.py"/>
        <source>Slope: {}</source>
        <translation>Gefälle: {}</translation>
    </message>
    <message>
        <location filename="../../guide/rules.py"/>
        <source>So do {count} other pages.</source>
        <translation>Ebenso {count} weitere Seiten.</translation>
    </message>
    <message>
        <location filename="../../desk/editing.py"/>
        <source>Something was changed or saved since: undo step by step in the layers themselves.</source>
        <translation>Seither wurde etwas geändert oder gespeichert: Schritt für Schritt in den Layern selbst rückgängig machen.</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <location filename="../../processing/import_features.py"/>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <location filename="../../desk/registering_dialog.py"/>
        <source>Spots</source>
        <translation>Stellen</translation>
    </message>
    <message>
        <location filename="../../desk/registering_dialog.py"/>
        <source>Spots that were found on both dates and count</source>
        <translation>Stellen, die auf beiden Daten gefunden wurden und zählen</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Stakes</source>
        <translation>Pfähle</translation>
    </message>
    <message>
        <location filename="../../store/symbols.py"/>
        <source>Stakes not known</source>
        <translation>Pfähle nicht bekannt</translation>
    </message>
    <message>
        <location filename="../../desk/event_settings.py"/>
        <location filename="../../guide/event_page.py"/>
        <location filename="../../model/kinds.py"/>
        <source>Start</source>
        <translation>Start</translation>
    </message>
    <message>
        <location filename="../../processing/start_course.py"/>
        <source>Start a course</source>
        <translation>Platz anlegen</translation>
    </message>
    <message>
        <location filename="../../store/course_file.py"/>
        <source>Start a new course and bring the features in.</source>
        <translation>Einen neuen Platz anlegen und die Objekte übernehmen.</translation>
    </message>
    <message>
        <location filename="../../store/writing.py"/>
        <source>Start a new course.</source>
        <translation>Einen neuen Platz anlegen.</translation>
    </message>
    <message>
        <location filename="../../desk/in_hand.py"/>
        <source>Start a new one, or open one.</source>
        <translation>Einen neuen anlegen oder einen öffnen.</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>Start an event, empty or as a copy of the one in hand</source>
        <translation>Ein Wettspiel anlegen, leer oder als Kopie des gewählten</translation>
    </message>
    <message>
        <location filename="../../desk/event_settings.py"/>
        <source>Start of round {}</source>
        <translation>Start der Runde {}</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Starts</source>
        <translation>Beginn</translation>
    </message>
    <message>
        <location filename="../../guide/fetched.py"/>
        <source>State a larger ground sample distance for the date, or take a smaller part of the course.</source>
        <translation>Für den Aufnahmetag eine gröbere Bodenauflösung angeben oder einen kleineren Teil des Platzes nehmen.</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>States</source>
        <translation>Angabe</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>States (m)</source>
        <translation>Angabe (m)</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>States (yd)</source>
        <translation>Angabe (yd)</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>States the distance to</source>
        <translation>Angabe gilt bis</translation>
    </message>
    <message>
        <location filename="../../desk/composing_dialog.py"/>
        <source>Stays hidden: {}. Click to go there.</source>
        <translation>Bleibt verdeckt: {}. Klicken, um dorthin zu gehen.</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Steepest ground at a hole (%)</source>
        <translation>Steilstes Gelände am Loch (%)</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <location filename="../../desk/composing_dialog.py"/>
        <source>Stopped; nothing was half written.</source>
        <translation>Angehalten; nichts wurde halb geschrieben.</translation>
    </message>
    <message>
        <location filename="../../desk/composing_dialog.py"/>
        <source>Stopping…</source>
        <translation>Wird angehalten…</translation>
    </message>
    <message>
        <location filename="../../desk/propose_dialog.py"/>
        <source>Stops the search and writes nothing.</source>
        <translation>Beendet die Suche und schreibt nichts.</translation>
    </message>
    <message>
        <location filename="../../desk/drawing_bar.py"/>
        <source>Straight sides from click to click</source>
        <translation>Gerade Seiten von Klick zu Klick</translation>
    </message>
    <message>
        <location filename="../../measure/checklist.py"/>
        <location filename="../../model/kinds.py"/>
        <source>Stroke index</source>
        <translation>Stroke Index</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_rows.py"/>
        <source>Stroke index {index} is hole {other}’s too.</source>
        <translation>Stroke Index {index} hat auch Bahn {other}.</translation>
    </message>
    <message>
        <location filename="../../desk/composing_dialog.py"/>
        <source>Such a picture may not be printed, and no page of a guide takes it.</source>
        <translation>Ein solches Bild darf nicht gedruckt werden, und keine Seite eines Buchs nimmt es.</translation>
    </message>
    <message>
        <location filename="../../desk/event_settings.py"/>
        <source>Such as 2026-05-02; it may be left empty</source>
        <translation>Etwa 2026-05-02; darf leer bleiben</translation>
    </message>
    <message>
        <location filename="../../processing/import_notes.py"/>
        <source>Such as course, professional, player or own visit.</source>
        <translation>Etwa Platz, Pro, Spieler oder eigener Besuch.</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>Swipe</source>
        <translation>Schieber</translation>
    </message>
    <message>
        <location filename="../../guide/expressions.py"/>
        <source>Syntax</source>
        <translation>Syntax</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>T&amp;heirs for all that can be</source>
        <translation>Übe&amp;rall die der Spielleitung, wo möglich</translation>
    </message>
    <message>
        <location filename="../../store/reading.py"/>
        <source>Table course_info has {count} rows instead of one; the first counts.</source>
        <translation>Die Tabelle course_info hat {count} Zeilen statt einer; die erste gilt.</translation>
    </message>
    <message>
        <location filename="../../store/reading.py"/>
        <source>Table course_info, layup_yd: {reason} {default} counts.</source>
        <translation>Tabelle course_info, layup_yd: {reason} Es gilt {default}.</translation>
    </message>
    <message>
        <location filename="../../store/reading.py"/>
        <source>Table course_info: {field} {value} was not used; {default} counts.</source>
        <translation>Tabelle course_info: {field} {value} wurde nicht verwendet; es gilt {default}.</translation>
    </message>
    <message>
        <location filename="../../store/reading.py"/>
        <source>Table course_info: {remark}.</source>
        <translation>Tabelle course_info: {remark}.</translation>
    </message>
    <message>
        <location filename="../../store/reading.py"/>
        <source>Table {table}, row {row}: {reason}.</source>
        <translation>Tabelle {table}, Zeile {row}: {reason}.</translation>
    </message>
    <message>
        <location filename="../../processing/algorithm.py"/>
        <source>Table {}</source>
        <translation>Tabelle {}</translation>
    </message>
    <message>
        <location filename="../../store/layer_group.py"/>
        <source>Tables</source>
        <translation>Tabellen</translation>
    </message>
    <message>
        <location filename="../../store/tables.py"/>
        <source>Tables cannot be written as “{form}”.</source>
        <translation>Tabellen können nicht als „{form}“ geschrieben werden.</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>Take &amp;out</source>
        <translation>Herausne&amp;hmen</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>Take &amp;theirs</source>
        <translation>Die der &amp;Spielleitung übernehmen</translation>
    </message>
    <message>
        <location filename="../../store/course_file.py"/>
        <source>Take a copy of the file from a backup, or start a new course and bring the features in.</source>
        <translation>Eine Sicherungskopie der Datei nehmen oder einen neuen Platz anlegen und die Objekte übernehmen.</translation>
    </message>
    <message>
        <location filename="../../guide/fetched.py"/>
        <source>Take a date as base that is a file, or draw the lines of play first.</source>
        <translation>Als Grundlage einen Aufnahmetag nehmen, der eine Datei ist, oder zuerst die Spiellinien zeichnen.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_drawing.py"/>
        <source>Take away the loop</source>
        <translation>Die Schleife entfernen</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>Take copied &amp;rows</source>
        <translation>&amp;Kopierte Zeilen übernehmen</translation>
    </message>
    <message>
        <location filename="../../desk/tees_dialog.py"/>
        <source>Take flight &amp;out</source>
        <translation>Gruppe h&amp;erausnehmen</translation>
    </message>
    <message>
        <location filename="../../imagery/registration.py"/>
        <source>Take images that cover more of the course, or set tie points by hand.</source>
        <translation>Bilder nehmen, die mehr vom Platz zeigen, oder Passpunkte von Hand setzen.</translation>
    </message>
    <message>
        <location filename="../../imagery/hand_masks.py"/>
        <source>Take it out of its folder, or put a copy of it back, then try again.</source>
        <translation>Sie aus ihrem Ordner nehmen oder eine Kopie zurücklegen, dann erneut versuchen.</translation>
    </message>
    <message>
        <location filename="../../desk/event_draft.py"/>
        <source>Take its pins out first, then the round.</source>
        <translation>Zuerst ihre Lochpositionen herausnehmen, dann die Runde.</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>Take one of its holes in hand, or change its holes under “Flights and tees”.</source>
        <translation>Eine ihrer Bahnen wählen, oder ihre Bahnen unter „Gruppen und Abschläge“ ändern.</translation>
    </message>
    <message>
        <location filename="../../store/events.py"/>
        <location filename="../../store/tables.py"/>
        <source>Take one of {forms}.</source>
        <translation>Eines davon nehmen: {forms}.</translation>
    </message>
    <message>
        <location filename="../../guide/composites.py"/>
        <source>Take one of {known}.</source>
        <translation>Einen von {known} nehmen.</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>Take pins out</source>
        <translation>Lochpositionen herausnehmen</translation>
    </message>
    <message>
        <location filename="../../desk/event_settings.py"/>
        <source>Take round &amp;out</source>
        <translation>Runde h&amp;erausnehmen</translation>
    </message>
    <message>
        <location filename="../../desk/page_designer.py"/>
        <source>Take the Built-in Page Again</source>
        <translation>Wieder die eingebaute Seite nehmen</translation>
    </message>
    <message>
        <location filename="../../store/course_file.py"/>
        <source>Take the UTM zone of the course.</source>
        <translation>Die UTM-Zone des Platzes nehmen.</translation>
    </message>
    <message>
        <location filename="../../processing/committee.py"/>
        <source>Take the good rows of a file with bad ones</source>
        <translation>Von einer Datei mit fehlerhaften Zeilen die guten übernehmen</translation>
    </message>
    <message>
        <location filename="../../processing/start_course.py"/>
        <source>Take the good rows of a scorecard with bad ones</source>
        <translation>Von einer Scorekarte mit fehlerhaften Zeilen die guten übernehmen</translation>
    </message>
    <message>
        <location filename="../../desk/hidden_panel.py"/>
        <source>Take the last stroke back</source>
        <translation>Den letzten Strich zurücknehmen</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <source>Take the page chosen out</source>
        <translation>Die gewählte Seite herausnehmen</translation>
    </message>
    <message>
        <location filename="../../desk/hole_panel.py"/>
        <source>Take the tool</source>
        <translation>Werkzeug nehmen</translation>
    </message>
    <message>
        <location filename="../../desk/bring_lengths.py"/>
        <source>Take them over</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <location filename="../../store/committee.py"/>
        <location filename="../../store/course_file.py"/>
        <source>Take yd or m.</source>
        <translation>yd oder m nehmen.</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Taken at (UTC, hh:mm)</source>
        <translation>Aufgenommen um (UTC, hh:mm)</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Taken on</source>
        <translation>Aufgenommen am</translation>
    </message>
    <message>
        <location filename="../../desk/tees_dialog.py"/>
        <source>Takes the flight chosen out, with its lengths in all rounds</source>
        <translation>Nimmt die gewählte Gruppe heraus, mit ihren Längen in allen Runden</translation>
    </message>
    <message>
        <location filename="../../desk/event_settings.py"/>
        <source>Takes the round chosen out, with its lengths</source>
        <translation>Nimmt die gewählte Runde heraus, mit ihren Längen</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Target</source>
        <translation>Zielpunkt</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <location filename="../../model/kinds.py"/>
        <source>Tee</source>
        <translation>Abschlag</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Tee (m)</source>
        <translation>Abschlag (m)</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Tee markers from earlier places (yd)</source>
        <translation>Abschlagmarkierungen von früheren Plätzen (yd)</translation>
    </message>
    <message>
        <location filename="../../desk/event_settings.py"/>
        <source>Tee markers of two rounds apart, at least</source>
        <translation>Abstand der Abschlagmarkierungen zweier Runden, mindestens</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>Tee not saved yet names no tee set.</source>
        <translation>Ein noch nicht gespeicherter Abschlag nennt kein Abschlagset.</translation>
    </message>
    <message>
        <location filename="../../desk/drawing_bar.py"/>
        <location filename="../../desk/hole_panel.py"/>
        <location filename="../../desk/tees_dialog.py"/>
        <location filename="../../model/kinds.py"/>
        <location filename="../../processing/make_guide.py"/>
        <source>Tee set</source>
        <translation>Abschlagset</translation>
    </message>
    <message>
        <location filename="../../desk/tees_dialog.py"/>
        <source>Tee set of the flight</source>
        <translation>Abschlagset der Gruppe</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>Tee sets</source>
        <translation>Abschlagsets</translation>
    </message>
    <message>
        <location filename="../../desk/drawing_bar.py"/>
        <source>Tee set…</source>
        <translation>Abschlagset…</translation>
    </message>
    <message>
        <location filename="../../guide/event_sheets.py"/>
        <source>Tee sheet for the ground staff</source>
        <translation>Abschlagblatt für die Platzpflege</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>Tee {numbers} names no tee set.</source>
        <translation>Abschlag {numbers} nennt kein Abschlagset.</translation>
    </message>
    <message>
        <location filename="../../guide/event_page.py"/>
        <source>Tees</source>
        <translation>Abschläge</translation>
    </message>
    <message>
        <location filename="../../desk/drawing_bar.py"/>
        <source>Tees and plates that are drawn belong to this tee set, and distances at the pointer and on the map begin at its tee; as long as none is chosen, at the longest.</source>
        <translation>Gezeichnete Abschläge und Abschlagplatten gehören zu diesem Abschlagset, und Entfernungen am Mauszeiger und auf der Karte beginnen an seinem Abschlag; solange keines gewählt ist, am längsten.</translation>
    </message>
    <message>
        <location filename="../../guide/sheets.py"/>
        <source>Tees, round {number}</source>
        <translation>Abschläge, Runde {number}</translation>
    </message>
    <message>
        <location filename="../../desk/sheets_dialog.py"/>
        <source>Tells how the ground falls at the pins and rises from tee to green. Local Rules may forbid players to carry such figures: their sheets are without them unless you wish it.</source>
        <translation>Sagt, wie das Gelände an den Lochpositionen fällt und vom Abschlag zum Grün ansteigt. Platzregeln können Spielern verbieten, solche Angaben mitzuführen: Ihre Blätter sind ohne sie, wenn nichts anderes gewünscht wird.</translation>
    </message>
    <message>
        <location filename="../../processing/terrain.py"/>
        <source>Terrain</source>
        <translation>Geländemodell</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Text</source>
        <translation>Text</translation>
    </message>
    <message>
        <location filename="../../desk/page_editor.py"/>
        <source>Text of the page</source>
        <translation>Text der Seite</translation>
    </message>
    <message>
        <location filename="../../guide/drawn_item.py"/>
        <source>Text that flows over pages</source>
        <translation>Text, der über Seiten läuft</translation>
    </message>
    <message>
        <location filename="../../store/writing.py"/>
        <source>That kind needs a {geometry}.</source>
        <translation>Diese Art braucht den Geometrietyp {geometry}.</translation>
    </message>
    <message>
        <location filename="../../store/course_file.py"/>
        <source>The GeoPackage “{path}” holds no course.</source>
        <translation>Das GeoPackage „{path}“ enthält keinen Platz.</translation>
    </message>
    <message>
        <location filename="../../processing/make_guide.py"/>
        <source>The PDF to be written. One that is there already stays as it is until the new one is whole.</source>
        <translation>Das PDF, das geschrieben wird. Eines, das schon da ist, bleibt, wie es ist, bis das neue ganz ist.</translation>
    </message>
    <message>
        <location filename="../../processing/archive_event.py"/>
        <source>The PDFs in this folder go along.</source>
        <translation>Die PDFs in diesem Ordner gehen mit.</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>The Rules of Golf (Rule 4.3a) do not allow the picture of a green larger than 1:480 to be used during a round. Say yes only for pictures that are not.</source>
        <translation>Die Golfregeln (Regel 4.3a) lassen nicht zu, dass während einer Runde das Bild eines Grüns benutzt wird, das größer als 1:480 ist. Nur für Bilder bejahen, die nicht dazu dienen.</translation>
    </message>
    <message>
        <location filename="../../processing/archive_event.py"/>
        <source>The ZIP to be written. One that is there already stays as it is until the new one is whole.</source>
        <translation>Das ZIP, das geschrieben wird. Eines, das schon da ist, bleibt, bis das neue ganz ist.</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>The aerial image: any raster layer or file, or a layer of web tiles or a map service.</source>
        <translation>Das Luftbild: ein beliebiger Rasterlayer oder eine Rasterdatei oder ein Layer aus Webkacheln oder einem Kartendienst.</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>The algorithm “{}” is not there.</source>
        <translation>Der Algorithmus „{}“ fehlt.</translation>
    </message>
    <message>
        <location filename="../../imagery/composing.py"/>
        <source>The base {date} shows nothing of this ground.</source>
        <translation>Die Grundlage {date} zeigt nichts von diesem Boden.</translation>
    </message>
    <message>
        <location filename="../../guide/pdf_join.py"/>
        <source>The book has no pages.</source>
        <translation>Das Buch hat keine Seiten.</translation>
    </message>
    <message>
        <location filename="../../store/writing.py"/>
        <source>The change could not be saved ({reason}).</source>
        <translation>Die Änderung konnte nicht gespeichert werden ({reason}).</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>The committee says nothing of these rounds, whose pins are left aside: {}.</source>
        <translation>Zu diesen Runden sagt die Spielleitung nichts, ihre Lochpositionen bleiben außer Betracht: {}.</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>The committee's figures</source>
        <translation>Angaben der Spielleitung</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>The committee’s figures and ours. The row that is clicked, or reached by keys, is shown on the map: both pins, and how far apart they are. Del leaves what is chosen open.</source>
        <translation>Die Maße der Spielleitung und unsere. Die Zeile, die angeklickt oder mit Tasten erreicht wird, zeigt die Karte: beide Lochpositionen und wie weit sie auseinanderliegen. Entf lässt das Gewählte offen.</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>The committee’s figures are to be drawn for the rows chosen.</source>
        <translation>Für die gewählten Zeilen sollen die Maße der Spielleitung gezeichnet werden.</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>The committee’s figures wherever a green can have them and nothing was decided before.</source>
        <translation>Die Maße der Spielleitung überall, wo ein Grün sie haben kann und noch nichts entschieden wurde.</translation>
    </message>
    <message>
        <location filename="../../desk/bring_lengths.py"/>
        <location filename="../../desk/tees_dialog.py"/>
        <location filename="../../processing/set_tees.py"/>
        <source>The committee’s lengths</source>
        <translation>Längen der Spielleitung</translation>
    </message>
    <message>
        <location filename="../../guide/book.py"/>
        <source>The committee’s notice at the course prevails over this page.</source>
        <translation>Der Aushang der Spielleitung auf dem Platz geht dieser Seite vor.</translation>
    </message>
    <message>
        <location filename="../../guide/book_pages.py"/>
        <source>The committee’s notices and the Local Rules prevail over all that stands here.</source>
        <translation>Aushänge der Spielleitung und die Platzregeln gehen allem vor, was hier steht.</translation>
    </message>
    <message>
        <location filename="../../guide/sheets.py"/>
        <source>The committee’s notices and the Local Rules prevail. Distances are measured on images and are no survey.</source>
        <translation>Die Aushänge der Spielleitung und die Platzregeln gehen vor. Die Entfernungen sind auf Bildern gemessen und keine Vermessung.</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <location filename="../../desk/bring_pins.py"/>
        <location filename="../../desk/event_panel.py"/>
        <location filename="../../processing/committee.py"/>
        <source>The committee’s pins</source>
        <translation>Lochpositionen der Spielleitung</translation>
    </message>
    <message>
        <location filename="../../measure/frame.py"/>
        <source>The coordinate reference system “{crs}” is not known here.</source>
        <translation>Das Koordinatenbezugssystem „{crs}“ ist hier nicht bekannt.</translation>
    </message>
    <message>
        <location filename="../../desk/keeping.py"/>
        <source>The copy is kept as “{}”.</source>
        <translation>Die Kopie bleibt als „{}“ erhalten.</translation>
    </message>
    <message>
        <location filename="../../desk/keeping.py"/>
        <source>The copy “{}” is no longer there, or another QGIS has it.</source>
        <translation>Die Kopie „{}“ ist nicht mehr da, oder ein anderes QGIS hat sie.</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <location filename="../../model/guide_pages.py"/>
        <source>The course</source>
        <translation>Der Platz</translation>
    </message>
    <message>
        <location filename="../../store/writing.py"/>
        <source>The course cannot be written to ({reason}).</source>
        <translation>In den Platz kann nicht geschrieben werden ({reason}).</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>The course does not say that the image of {} may be printed: see to its licence before you print.</source>
        <translation>Der Platz sagt nicht, dass das Bild von {} gedruckt werden darf: vor dem Druck die Lizenz klären.</translation>
    </message>
    <message>
        <location filename="../../processing/algorithm.py"/>
        <source>The course file (.gpkg), or postgres:CONNECTION:SCHEMA for a course kept in a database.</source>
        <translation>Die Platzdatei (.gpkg) oder postgres:CONNECTION:SCHEMA für einen Platz in einer Datenbank.</translation>
    </message>
    <message>
        <location filename="../../guide/event_archive.py"/>
        <source>The course file “{path}” cannot be read ({reason}).</source>
        <translation>Die Platzdatei „{path}“ ist nicht lesbar ({reason}).</translation>
    </message>
    <message>
        <location filename="../../store/upgrade.py"/>
        <source>The course file “{path}” could not be brought up to date ({reason}).</source>
        <translation>Die Platzdatei „{path}“ ließ sich nicht auf den neuen Stand bringen ({reason}).</translation>
    </message>
    <message>
        <location filename="../../store/course_file.py"/>
        <source>The course file “{path}” does not say which coordinate reference system it uses.</source>
        <translation>Die Platzdatei „{path}“ nennt ihr Koordinatenbezugssystem nicht.</translation>
    </message>
    <message>
        <location filename="../../store/course_file.py"/>
        <source>The course file “{path}” has version {version}, older than the version {known} used now.</source>
        <translation>Die Platzdatei „{path}“ hat Version {version}, älter als die jetzt verwendete Version {known}.</translation>
    </message>
    <message>
        <location filename="../../store/course_file.py"/>
        <source>The course file “{path}” has version {version}; this program knows version {known}.</source>
        <translation>Die Platzdatei „{path}“ hat Version {version}; dieses Programm kennt Version {known}.</translation>
    </message>
    <message>
        <location filename="../../store/course_file.py"/>
        <source>The course file “{path}” lacks these layers: {layers}.</source>
        <translation>Der Platzdatei „{path}“ fehlen diese Layer: {layers}.</translation>
    </message>
    <message>
        <location filename="../../processing/start_course.py"/>
        <source>The course file. Add it to a project, or bring features into it with “Bring features in”.</source>
        <translation>Die Platzdatei. Sie lässt sich einem Projekt hinzufügen oder mit „Objekte einlesen“ füllen.</translation>
    </message>
    <message>
        <location filename="../../desk/composing_dialog.py"/>
        <source>The course has no date yet.</source>
        <translation>Der Platz hat noch kein Bilddatum.</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>The course has no event “{}” any more, so there is nothing to compare. Undo its removal, or close this window.</source>
        <translation>Der Platz hat kein Wettspiel „{}“ mehr, also gibt es nichts zu vergleichen. Das Entfernen rückgängig machen oder dieses Fenster schließen.</translation>
    </message>
    <message>
        <location filename="../../desk/auditing.py"/>
        <location filename="../../desk/propose_dialog.py"/>
        <location filename="../../desk/sheets_dialog.py"/>
        <source>The course has no event “{}” any more.</source>
        <translation>Der Platz hat kein Wettspiel „{}“ mehr.</translation>
    </message>
    <message>
        <location filename="../../desk/tees_dialog.py"/>
        <source>The course has no event “{}” any more. OK writes it anew, without any pins.</source>
        <translation>Der Platz hat kein Wettspiel „{}“ mehr. OK schreibt es neu, ohne Lochpositionen.</translation>
    </message>
    <message>
        <location filename="../../processing/audit_pins.py"/>
        <location filename="../../processing/event_sheets.py"/>
        <location filename="../../processing/make_guide.py"/>
        <source>The course has no event “{}”.</source>
        <translation>Der Platz hat kein Wettspiel „{}“.</translation>
    </message>
    <message>
        <location filename="../../guide/sheets.py"/>
        <source>The course has no green to show.</source>
        <translation>Der Platz hat kein Grün, das sich zeigen lässt.</translation>
    </message>
    <message>
        <location filename="../../desk/in_hand.py"/>
        <source>The course has no hole yet: draw its line of play, or bring features in.</source>
        <translation>Der Platz hat noch keine Bahn: ihre Spiellinie zeichnen oder Objekte einlesen.</translation>
    </message>
    <message>
        <location filename="../../desk/event_draft.py"/>
        <source>The course has no hole {}.</source>
        <translation>Der Platz hat keine Bahn {}.</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>The course has no holes.</source>
        <translation>Der Platz hat keine Bahnen.</translation>
    </message>
    <message>
        <location filename="../../store/registering.py"/>
        <source>The course has no image date “{date}”.</source>
        <translation>Der Platz hat keinen Aufnahmetag „{date}“.</translation>
    </message>
    <message>
        <location filename="../../guide/composites.py"/>
        <source>The course has no image date “{name}”.</source>
        <translation>Der Platz hat keinen Aufnahmetag „{name}“.</translation>
    </message>
    <message>
        <location filename="../../processing/register_images.py"/>
        <source>The course has no image date “{}”.</source>
        <translation>Der Platz hat keinen Aufnahmetag „{}“.</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>The course has no images yet: add an aerial image to the project, then make it one of the course’s dates here.</source>
        <translation>Der Platz hat noch keine Bilder: ein Luftbild zum Projekt hinzufügen und es hier als Bilddatum des Platzes aufnehmen.</translation>
    </message>
    <message>
        <location filename="../../desk/dates.py"/>
        <source>The course has no layer “Image date”.</source>
        <translation>Dem Platz fehlt der Layer „Bilddatum“.</translation>
    </message>
    <message>
        <location filename="../../store/course_file.py"/>
        <source>The course has no name.</source>
        <translation>Der Platz hat keinen Namen.</translation>
    </message>
    <message>
        <location filename="../../store/writing.py"/>
        <source>The course has no row in its table course_info.</source>
        <translation>Der Platz hat keine Zeile in seiner Tabelle course_info.</translation>
    </message>
    <message>
        <location filename="../../desk/page_designer.py"/>
        <source>The course has no template of its own of “{kind}”.</source>
        <translation>Der Platz hat keine eigene Vorlage für „{kind}“.</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>The course in hand</source>
        <translation>Der aktuelle Platz</translation>
    </message>
    <message>
        <location filename="../../desk/keeping.py"/>
        <source>The course is no longer in this project.</source>
        <translation>Der Platz ist nicht mehr in diesem Projekt.</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>The course is up to date; the old file is kept as “{}”.</source>
        <translation>Der Platz ist auf dem neuen Stand; die alte Datei ist als „{}“ erhalten.</translation>
    </message>
    <message>
        <location filename="../../store/layer_group.py"/>
        <source>The course “{name}” lacks these layers: {layers}.</source>
        <translation>Dem Platz „{name}“ fehlen diese Layer: {layers}.</translation>
    </message>
    <message>
        <location filename="../../imagery/registration.py"/>
        <source>The course's CRS counts in degrees: pictures cannot be registered in it.</source>
        <translation>Das KBS des Platzes zählt in Grad: Darin lassen sich keine Bilder einpassen.</translation>
    </message>
    <message>
        <location filename="../../guide/windows.py"/>
        <source>The course’s coordinate reference system bends the ground of hole {number} too much for a picture.</source>
        <translation>Das Koordinatenbezugssystem des Platzes verzerrt das Gelände von Bahn {number} zu sehr für ein Bild.</translation>
    </message>
    <message>
        <location filename="../../processing/import_features.py"/>
        <source>The course’s layer the features belong to. Needed unless the source has OpenStreetMap’s golf tags; of an OpenStreetMap file, a kind takes only its features.</source>
        <translation>Der Layer des Platzes, zu dem die Objekte gehören. Nötig, wenn die Quelle keine Golf-Tags von OpenStreetMap hat; aus einer OpenStreetMap-Datei nimmt eine Art nur ihre Objekte.</translation>
    </message>
    <message>
        <location filename="../../desk/repairing.py"/>
        <source>The course’s layer “{}” is not in the project.</source>
        <translation>Der Layer „{}“ des Platzes ist nicht im Projekt.</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <source>The course’s list of pages.</source>
        <translation>Die Seitenliste des Platzes.</translation>
    </message>
    <message>
        <location filename="../../guide/expressions.py"/>
        <source>The course’s name.</source>
        <translation>Der Name des Platzes.</translation>
    </message>
    <message>
        <location filename="../../guide/page_templates.py"/>
        <source>The course’s own template “{path}” is not used: {reason}. The built-in page is taken.</source>
        <translation>Die eigene Vorlage des Platzes „{path}“ wird nicht verwendet: {reason}. Genommen wird die eingebaute Seite.</translation>
    </message>
    <message>
        <location filename="../../processing/register_images.py"/>
        <source>The date all others are laid on: its id, or its file. Take the one whose place is trusted most.</source>
        <translation>Der Aufnahmetag, auf den alle anderen gelegt werden: seine Kennung oder seine Datei. Den nehmen, dessen Lage am verlässlichsten ist.</translation>
    </message>
    <message>
        <location filename="../../desk/registering_dialog.py"/>
        <source>The date as it was &amp;found to lie, and not as it lies now</source>
        <translation>Das Datum, &amp;wie gefunden, und nicht, wie es jetzt liegt</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>The date that is compared with the one shown: while flipped, beyond the divider, beside it.</source>
        <translation>Das Datum, mit dem das gezeigte verglichen wird: umgeschaltet, jenseits des Teilers, daneben.</translation>
    </message>
    <message>
        <location filename="../../desk/registering_dialog.py"/>
        <source>The date that stays where it is; the others are laid on it</source>
        <translation>Das Datum, das bleibt, wo es ist; die anderen werden darauf eingepasst</translation>
    </message>
    <message>
        <location filename="../../desk/composing_dialog.py"/>
        <source>The date whose picture stays wherever it shows the ground</source>
        <translation>Das Datum, dessen Bild bleibt, wo immer es den Boden zeigt</translation>
    </message>
    <message>
        <location filename="../../desk/moved_layers.py"/>
        <source>The date {} comes from the web and cannot be moved on the map.</source>
        <translation>Der Aufnahmetag {} kommt aus dem Netz und lässt sich auf der Karte nicht verschieben.</translation>
    </message>
    <message>
        <location filename="../../desk/masks.py"/>
        <source>The date “{}” is not one of the course any more.</source>
        <translation>Das Datum „{}“ gehört nicht mehr zum Platz.</translation>
    </message>
    <message>
        <location filename="../../desk/composing.py"/>
        <source>The dates are being read…</source>
        <translation>Die Daten werden gelesen…</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>The dates of the course’s images, newest first. Click one to see it alone on the map.</source>
        <translation>Die Bilder des Platzes nach Datum, das neueste zuerst. Ein Klick zeigt eines allein auf der Karte.</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>The denominator of the scale, such as 480 for 1:480. Empty: the largest scale that holds the hole or the green with the margin.</source>
        <translation>Der Nenner des Maßstabs, etwa 480 für 1:480. Leer: der größte Maßstab, bei dem die Bahn oder das Grün samt Rand Platz hat.</translation>
    </message>
    <message>
        <location filename="../../guide/expressions.py"/>
        <source>The description of hole {number} asks for itself.</source>
        <translation>Die Beschreibung von Bahn {number} fragt nach sich selbst.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_drawing.py"/>
        <source>The ends of {one} and {other} are {distance} apart.</source>
        <translation>Die Enden liegen {distance} auseinander: {one} und {other}.</translation>
    </message>
    <message>
        <location filename="../../model/guide_pages.py"/>
        <source>The event</source>
        <translation>Das Wettspiel</translation>
    </message>
    <message>
        <location filename="../../store/events.py"/>
        <source>The event has no name.</source>
        <translation>Das Wettspiel hat keinen Namen.</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>The event has no round yet: add one.</source>
        <translation>Das Wettspiel hat noch keine Runde: eine hinzufügen.</translation>
    </message>
    <message>
        <location filename="../../desk/propose_dialog.py"/>
        <source>The event or its greens were changed since these locations were looked for, so they are not placed. Look again first.</source>
        <translation>Das Wettspiel oder seine Grüns wurden geändert, seit diese Lochpositionen gesucht wurden; deshalb werden sie nicht gesetzt. Erst neu suchen.</translation>
    </message>
    <message>
        <location filename="../../desk/tees_dialog.py"/>
        <source>The event was changed elsewhere since this window opened. OK writes what stands here.</source>
        <translation>Das Wettspiel wurde anderswo geändert, seit dieses Fenster offen ist. OK schreibt, was hier steht.</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <source>The event whose guide it is; its own list of pages, pins and lengths.</source>
        <translation>Das Wettspiel, dessen Buch es ist, mit eigener Seitenliste, Fahnen und Längen.</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>The event whose pins are shown and placed. Two events of a course never share a pin.</source>
        <translation>Das Wettspiel, dessen Lochpositionen gezeigt und gesetzt werden. Zwei Wettspiele eines Platzes teilen nie eine Lochposition.</translation>
    </message>
    <message>
        <location filename="../../processing/event_sheets.py"/>
        <location filename="../../processing/make_guide.py"/>
        <source>The event “{}” has no round {}.</source>
        <translation>Das Wettspiel „{}“ hat keine Runde {}.</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <source>The event’s own list of pages.</source>
        <translation>Die eigene Seitenliste des Wettspiels.</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>The feature; 4+5 is the middle between a pair</source>
        <translation>Das Objekt; 4+5 ist die Mitte zwischen einem Paar</translation>
    </message>
    <message>
        <location filename="../../store/course_file.py"/>
        <source>The file “{path}” already exists and was left as it is.</source>
        <translation>Die Datei „{path}“ gibt es schon; sie wurde nicht verändert.</translation>
    </message>
    <message>
        <location filename="../../store/committee.py"/>
        <location filename="../../store/course_file.py"/>
        <source>The file “{path}” cannot be read ({reason}).</source>
        <translation>Die Datei „{path}“ ist nicht lesbar ({reason}).</translation>
    </message>
    <message>
        <location filename="../../store/course_file.py"/>
        <source>The file “{path}” does not say which version of course file it is.</source>
        <translation>Die Datei „{path}“ nennt die Version der Platzdatei nicht.</translation>
    </message>
    <message>
        <location filename="../../store/course_file.py"/>
        <location filename="../../store/upgrade.py"/>
        <source>The file “{path}” is damaged or in use ({reason}).</source>
        <translation>Die Datei „{path}“ ist beschädigt oder in Gebrauch ({reason}).</translation>
    </message>
    <message>
        <location filename="../../store/course_file.py"/>
        <source>The file “{path}” is not a GeoPackage.</source>
        <translation>Die Datei „{path}“ ist kein GeoPackage.</translation>
    </message>
    <message>
        <location filename="../../store/committee.py"/>
        <source>The file “{path}” is not text.</source>
        <translation>Die Datei „{path}“ ist kein Text.</translation>
    </message>
    <message>
        <location filename="../../store/openstreetmap.py"/>
        <location filename="../../store/vector_source.py"/>
        <source>The file “{path}” is not there.</source>
        <translation>Die Datei „{path}“ ist nicht vorhanden.</translation>
    </message>
    <message>
        <location filename="../../imagery/window.py"/>
        <source>The files of “{name}” cannot be replaced ({reason}).</source>
        <translation>Die Dateien von „{name}“ können nicht ersetzt werden ({reason}).</translation>
    </message>
    <message>
        <location filename="../../store/scorecard.py"/>
        <source>The first line must read hole,par,stroke_index,name and then a column for each tee set.</source>
        <translation>Die erste Zeile muss hole,par,stroke_index,name lauten, danach folgt eine Spalte für jedes Abschlagset.</translation>
    </message>
    <message>
        <location filename="../../desk/event_settings.py"/>
        <source>The first line stands on the guide’s cover, all of it on the event’s page</source>
        <translation>Die erste Zeile steht auf dem Umschlag des Buchs, alles auf der Seite des Wettspiels</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>The flights, how long each hole is to play for them, and where the tee markers stand for it.</source>
        <translation>Die Gruppen, wie lang jede Bahn für sie sein soll und wo die Abschlagmarkierungen dafür stehen.</translation>
    </message>
    <message>
        <location filename="../../processing/register_images.py"/>
        <source>The folder for tables and plots. Empty: none are written.</source>
        <translation>Der Ordner für Tabellen und Darstellungen. Leer: keine werden geschrieben.</translation>
    </message>
    <message>
        <location filename="../../desk/keeping.py"/>
        <source>The folder of “{}” cannot be written to; its recovery copy is “{}”.</source>
        <translation>In den Ordner von „{}“ kann nicht geschrieben werden; die Sicherungskopie ist „{}“.</translation>
    </message>
    <message>
        <location filename="../../processing/algorithm.py"/>
        <source>The folder the results are written to; it is made if need be. Results of an earlier run are replaced.</source>
        <translation>Der Ordner, in den die Ergebnisse geschrieben werden; er wird bei Bedarf angelegt. Ergebnisse eines früheren Laufs werden ersetzt.</translation>
    </message>
    <message>
        <location filename="../../processing/committee.py"/>
        <source>The folder the table is written to; it is made if need be. Empty: no table.</source>
        <translation>Der Ordner, in den die Tabelle geschrieben wird; er wird bei Bedarf angelegt. Leer: keine Tabelle.</translation>
    </message>
    <message>
        <location filename="../../guide/page_cache.py"/>
        <location filename="../../store/tables.py"/>
        <source>The folder “{folder}” cannot be made ({reason}).</source>
        <translation>Der Ordner „{folder}“ kann nicht angelegt werden ({reason}).</translation>
    </message>
    <message>
        <location filename="../../desk/composing_dialog.py"/>
        <location filename="../../processing/algorithm.py"/>
        <source>The folder “{}” cannot be made ({}).</source>
        <translation>Der Ordner „{}“ lässt sich nicht anlegen ({}).</translation>
    </message>
    <message>
        <location filename="../../guide/drawn_item.py"/>
        <source>The green at a true scale</source>
        <translation>Das Grün in wahrem Maßstab</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>The green is {depth} deep along its approach, which is unusual.</source>
        <translation>Das Grün ist entlang der Annäherung {depth} tief, das ist ungewöhnlich.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>The green’s depth is uncertain by ± {size}.</source>
        <translation>Die Tiefe des Grüns ist auf ± {size} unsicher.</translation>
    </message>
    <message>
        <location filename="../../desk/pin_table.py"/>
        <source>The ground falls {}, seen with the approach up; that is towards {}°, clockwise from north</source>
        <translation>Das Gelände fällt {}, mit der Annäherung nach oben gesehen; das ist nach {}°, von Norden im Uhrzeigersinn</translation>
    </message>
    <message>
        <location filename="../../guide/book.py"/>
        <source>The guide has no hole to show. {whats}</source>
        <translation>Das Buch hat keine Bahn zu zeigen. {whats}</translation>
    </message>
    <message>
        <location filename="../../desk/page_designer.py"/>
        <source>The guide makes pages of “{kind}” from the built-in page again.</source>
        <translation>Der Platzführer macht Seiten für „{kind}“ wieder aus der eingebauten Seite.</translation>
    </message>
    <message>
        <location filename="../../desk/page_designer.py"/>
        <source>The guide makes such pages from it now.</source>
        <translation>Der Platzführer macht solche Seiten jetzt daraus.</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <source>The guide was saved: {}</source>
        <translation>Das Buch wurde gespeichert: {}</translation>
    </message>
    <message>
        <location filename="../../desk/slope_shading.py"/>
        <source>The heights do not reach the green of hole {}.</source>
        <translation>Die Höhen reichen nicht bis zum Grün von Bahn {}.</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>The hole as it is drawn, play upwards; a click on a thing finds its row in the table.</source>
        <translation>Die Bahn, wie sie gezeichnet ist, Spielrichtung oben; ein Klick auf ein Objekt findet seine Zeile in der Tabelle.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>The hole has no green.</source>
        <translation>Die Bahn hat kein Grün.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>The hole has no line of play.</source>
        <translation>Die Bahn hat keine Spiellinie.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>The hole has no par.</source>
        <translation>Die Bahn hat kein Par.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_rows.py"/>
        <source>The hole has no stroke index.</source>
        <translation>Die Bahn hat keinen Stroke Index.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>The hole has no tee.</source>
        <translation>Die Bahn hat keinen Abschlag.</translation>
    </message>
    <message>
        <location filename="../../desk/sheets_dialog.py"/>
        <source>The hole whose green is shown.</source>
        <translation>Die Bahn, deren Grün gezeigt wird.</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>The holes and tee sets chosen, as CSV…</source>
        <translation>Gewählte Bahnen und Abschlagsets, als CSV…</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>The holes and tee sets chosen, as XLSX…</source>
        <translation>Gewählte Bahnen und Abschlagsets, als XLSX…</translation>
    </message>
    <message>
        <location filename="../../processing/event_sheets.py"/>
        <source>The holes of which a sheet of one green is written, such as 1,4,7-9. Empty: all that have a pin.</source>
        <translation>Die Bahnen, von denen ein Blatt mit einem Grün geschrieben wird, etwa 1,4,7-9. Leer: alle, die eine Lochposition haben.</translation>
    </message>
    <message>
        <location filename="../../guide/expressions.py"/>
        <source>The hole’s lengths from all tee sets, each with its name, in the order of the sets.</source>
        <translation>Die Längen der Bahn von allen Abschlagsets, jede mit deren Namen, in der Reihenfolge der Sets.</translation>
    </message>
    <message>
        <location filename="../../guide/expressions.py"/>
        <source>The hole’s name.</source>
        <translation>Der Name der Bahn.</translation>
    </message>
    <message>
        <location filename="../../guide/expressions.py"/>
        <source>The hole’s par.</source>
        <translation>Das Par der Bahn.</translation>
    </message>
    <message>
        <location filename="../../guide/expressions.py"/>
        <source>The hole’s stroke index.</source>
        <translation>Der Stroke Index der Bahn.</translation>
    </message>
    <message>
        <location filename="../../processing/compose_image.py"/>
        <source>The id of the date that the picture is made of wherever it shows the ground.</source>
        <translation>Die Kennung des Aufnahmetags, aus dem das Bild besteht, wo immer er den Boden zeigt.</translation>
    </message>
    <message>
        <location filename="../../processing/compose_image.py"/>
        <source>The ids of the dates that may show what the base hides, separated by commas. Empty: all that are files; what lies on a server is fetched only where it is named.</source>
        <translation>Die Kennungen der Aufnahmetage, die zeigen dürfen, was die Grundlage verdeckt, durch Kommas getrennt. Leer: alle, die Dateien sind; was auf einem Server liegt, wird nur geholt, wo es genannt ist.</translation>
    </message>
    <message>
        <location filename="../../processing/register_images.py"/>
        <source>The ids of the dates to register, with commas between. Empty: all others.</source>
        <translation>Die Kennungen der einzupassenden Aufnahmetage, durch Kommas getrennt. Leer: alle anderen.</translation>
    </message>
    <message>
        <location filename="../../imagery/image.py"/>
        <location filename="../../imagery/reach.py"/>
        <source>The image cannot be used: {reason}.</source>
        <translation>Das Bild ist nicht verwendbar: {reason}.</translation>
    </message>
    <message>
        <location filename="../../imagery/image.py"/>
        <source>The image counts pure white as “no image”; it was kept, or white sand would drop out.</source>
        <translation>Das Bild wertet reines Weiß als „kein Bild“; es wurde behalten, sonst fiele weißer Sand heraus.</translation>
    </message>
    <message>
        <location filename="../../imagery/image.py"/>
        <location filename="../../imagery/moved_file.py"/>
        <source>The image does not say in which coordinate reference system it lies.</source>
        <translation>Das Bild nennt sein Koordinatenbezugssystem nicht.</translation>
    </message>
    <message>
        <location filename="../../imagery/image.py"/>
        <source>The image does not say where on the ground it lies.</source>
        <translation>Das Bild sagt nicht, wo im Gelände es liegt.</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>The image is the date {}: it is shown where it was registered.</source>
        <translation>Das Bild ist der Aufnahmetag {}: Es wird gezeigt, wo es eingepasst ist.</translation>
    </message>
    <message>
        <location filename="../../imagery/moved_file.py"/>
        <source>The image of a date cannot be shown moved: {reason}.</source>
        <translation>Das Bild eines Aufnahmetags lässt sich nicht verschoben zeigen: {reason}.</translation>
    </message>
    <message>
        <location filename="../../imagery/reach.py"/>
        <source>The image of {date} cannot be read: {reason}.</source>
        <translation>Das Bild von {date} kann nicht gelesen werden: {reason}.</translation>
    </message>
    <message>
        <location filename="../../imagery/reach.py"/>
        <source>The image of {date} lies outside the course's coordinate reference system.</source>
        <translation>Das Bild von {date} liegt außerhalb des Koordinatenbezugssystems des Platzes.</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>The image of {} may not be printed ({}).</source>
        <translation>Das Bild von {} darf nicht gedruckt werden ({}).</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>The image of {} may not be printed.</source>
        <translation>Das Bild von {} darf nicht gedruckt werden.</translation>
    </message>
    <message>
        <location filename="../../desk/masks.py"/>
        <source>The image of {} shows nothing of the course, or cannot be read.</source>
        <translation>Das Bild von {} zeigt nichts vom Platz oder ist nicht lesbar.</translation>
    </message>
    <message>
        <location filename="../../imagery/moved_file.py"/>
        <source>The image reaches beyond the course's coordinate reference system.</source>
        <translation>Das Bild reicht über das Koordinatenbezugssystem des Platzes hinaus.</translation>
    </message>
    <message>
        <location filename="../../imagery/outline.py"/>
        <source>The image shows nothing at this place.</source>
        <translation>Das Bild zeigt an dieser Stelle nichts.</translation>
    </message>
    <message>
        <location filename="../../imagery/image.py"/>
        <source>The image shows nothing of this window.</source>
        <translation>Das Bild zeigt nichts von diesem Bildausschnitt.</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <source>The image that the holes’ pictures are cut from.</source>
        <translation>Das Bild, aus dem die Bilder der Bahnen geschnitten werden.</translation>
    </message>
    <message>
        <location filename="../../processing/make_guide.py"/>
        <source>The image that the pictures of the holes are cut from: a date of the course, a composite of them, or any raster layer or file. It need not show the whole course.</source>
        <translation>Das Bild, aus dem die Bilder der Bahnen geschnitten werden: ein Aufnahmetag des Platzes, ein aus ihnen zusammengesetztes oder irgendein Rasterlayer oder eine Datei. Es muss nicht den ganzen Platz zeigen.</translation>
    </message>
    <message>
        <location filename="../../imagery/image.py"/>
        <source>The image “{image}” cannot be read: {reason}.</source>
        <translation>Das Bild „{image}“ ist nicht lesbar: {reason}.</translation>
    </message>
    <message>
        <location filename="../../guide/rules.py"/>
        <source>The image “{image}” may not be printed, and “{page}” shows it.</source>
        <translation>Das Bild „{image}“ darf nicht gedruckt werden, und „{page}“ zeigt es.</translation>
    </message>
    <message>
        <location filename="../../imagery/image.py"/>
        <source>The image “{image}” shows nothing of this window.</source>
        <translation>Das Bild „{image}“ zeigt nichts von diesem Bildausschnitt.</translation>
    </message>
    <message>
        <location filename="../../imagery/image.py"/>
        <source>The image's values were spread so that {low} is black and {high} white.</source>
        <translation>Die Werte des Bildes wurden so gespreizt, dass {low} schwarz und {high} weiß ist.</translation>
    </message>
    <message>
        <location filename="../../processing/archive_event.py"/>
        <source>The images that the guide’s pictures are cut from. See that their licence lets them be passed on.</source>
        <translation>Die Bilder, aus denen die Bilder des Buchs geschnitten sind. Darauf achten, dass ihre Lizenz die Weitergabe erlaubt.</translation>
    </message>
    <message>
        <location filename="../../desk/event_draft.py"/>
        <source>The last day lies before the first.</source>
        <translation>Der letzte Tag liegt vor dem ersten.</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>The layer is not in the project any more.</source>
        <translation>Der Layer ist nicht mehr im Projekt.</translation>
    </message>
    <message>
        <location filename="../../desk/propose_dialog.py"/>
        <source>The layer that says how steep a green is. Ground steeper than the event allows is left out, and a slope makes a location harder.</source>
        <translation>Der Layer, der sagt, wie steil ein Grün ist. Boden, der steiler ist, als das Wettspiel zulässt, bleibt außer Betracht, und Gefälle macht eine Lochposition schwerer.</translation>
    </message>
    <message>
        <location filename="../../processing/outline_feature.py"/>
        <source>The layer with the polygon.</source>
        <translation>Der Layer mit der Fläche.</translation>
    </message>
    <message>
        <location filename="../../store/writing.py"/>
        <source>The layer “{layer}” cannot be edited.</source>
        <translation>Der Layer „{layer}“ kann nicht bearbeitet werden.</translation>
    </message>
    <message>
        <location filename="../../guide/rendered.py"/>
        <source>The layer “{layer}” cannot be opened.</source>
        <translation>Der Layer „{layer}“ kann nicht geöffnet werden.</translation>
    </message>
    <message>
        <location filename="../../store/writing.py"/>
        <source>The layer “{layer}” cannot be written to.</source>
        <translation>In den Layer „{layer}“ kann nicht geschrieben werden.</translation>
    </message>
    <message>
        <location filename="../../guide/fetched.py"/>
        <source>The layer “{layer}” does not reach the course.</source>
        <translation>Der Layer „{layer}“ reicht nicht bis zum Platz.</translation>
    </message>
    <message>
        <location filename="../../store/writing.py"/>
        <source>The layer “{layer}” has no field “{field}”.</source>
        <translation>Der Layer „{layer}“ hat kein Feld „{field}“.</translation>
    </message>
    <message>
        <location filename="../../store/course_file.py"/>
        <source>The layer “{layer}” of the course file “{path}” cannot be read.</source>
        <translation>Der Layer „{layer}“ der Platzdatei „{path}“ ist nicht lesbar.</translation>
    </message>
    <message>
        <location filename="../../store/recovery.py"/>
        <source>The layer “{name}” did not take what was to be put back.</source>
        <translation>Der Layer „{name}“ hat nicht angenommen, was zurückgeholt werden sollte.</translation>
    </message>
    <message>
        <location filename="../../desk/editing.py"/>
        <source>The layer “{}” cannot be edited.</source>
        <translation>Der Layer „{}“ lässt sich nicht bearbeiten.</translation>
    </message>
    <message>
        <location filename="../../desk/editing.py"/>
        <source>The layer “{}” did not take the change.</source>
        <translation>Der Layer „{}“ hat die Änderung nicht angenommen.</translation>
    </message>
    <message>
        <location filename="../../desk/repairing.py"/>
        <source>The layer “{}” has no room for the repaired outline.</source>
        <translation>Der Layer „{}“ kann den reparierten Umriss nicht aufnehmen.</translation>
    </message>
    <message>
        <location filename="../../processing/terrain.py"/>
        <source>The layer “{}” is a picture from a server and holds no heights.</source>
        <translation>Der Layer „{}“ ist ein Bild von einem Server und enthält keine Höhen.</translation>
    </message>
    <message>
        <location filename="../../store/course_file.py"/>
        <source>The layers of the course file “{path}” are in different coordinate reference systems.</source>
        <translation>Die Layer der Platzdatei „{path}“ liegen in verschiedenen Koordinatenbezugssystemen.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>The length from {tees} is uncertain by ± {size}.</source>
        <translation>Die Länge ab {tees} ist auf ± {size} unsicher.</translation>
    </message>
    <message>
        <location filename="../../desk/hole_panel.py"/>
        <source>The length of the hole from each tee set, what the scorecard says, and whether the par fits the length. A row in italics has a remark: point at it.</source>
        <translation>Die Länge der Bahn von jedem Abschlagset, was die Scorekarte sagt und ob das Par zur Länge passt. Eine kursive Zeile hat eine Bemerkung: darauf zeigen.</translation>
    </message>
    <message>
        <location filename="../../guide/expressions.py"/>
        <source>The lengths of all holes from a tee set, as they are printed, added up.</source>
        <translation>Die Längen aller Bahnen von einem Abschlagset, wie sie gedruckt werden, zusammengezählt.</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>The limits stand under “Flights and tees”.</source>
        <translation>Die Grenzen stehen unter „Gruppen und Abschläge“.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>The line of play crosses itself.</source>
        <translation>Die Spiellinie kreuzt sich selbst.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>The line of play ends {distance} from the green.</source>
        <translation>Die Spiellinie endet {distance} vom Grün entfernt.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>The line of play has no two different points.</source>
        <translation>Die Spiellinie hat keine zwei verschiedenen Punkte.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>The line of play is drawn from green to tee.</source>
        <translation>Die Spiellinie ist vom Grün zum Abschlag gezeichnet.</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>The log says more.</source>
        <translation>Mehr steht im Protokoll.</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <source>The longest of each hole</source>
        <translation>Der längste jeder Bahn</translation>
    </message>
    <message>
        <location filename="../../desk/masks.py"/>
        <source>The map shows no place that the course’s system knows.</source>
        <translation>Die Karte zeigt keinen Ort, den das Bezugssystem des Platzes kennt.</translation>
    </message>
    <message>
        <location filename="../../desk/composing_dialog.py"/>
        <source>The map shows the composite; hold {} to see its base. Click a spot to go there.</source>
        <translation>Die Karte zeigt das zusammengesetzte Bild; {} halten, um sein Grundbild zu sehen. Ein Klick auf eine Stelle führt dorthin.</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>The map shows this composite; what is drawn counts as drawn from its base.</source>
        <translation>Die Karte zeigt dieses zusammengesetzte Bild; was gezeichnet wird, gilt als aus seinem Grundbild gezeichnet.</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>The map shows this date, and what is drawn is drawn from it.</source>
        <translation>Die Karte zeigt dieses Datum, und gezeichnet wird nach ihm.</translation>
    </message>
    <message>
        <location filename="../../guide/outlining.py"/>
        <source>The margin found leaves the place itself out.</source>
        <translation>Der gefundene Rand lässt die Stelle selbst aus.</translation>
    </message>
    <message>
        <location filename="../../imagery/hand_masks.py"/>
        <source>The mask corrected by hand cannot be read: {reason}.</source>
        <translation>Die von Hand berichtigte Maske ist nicht lesbar: {reason}.</translation>
    </message>
    <message>
        <location filename="../../imagery/hand_masks.py"/>
        <source>The mask corrected by hand cannot be written: {reason}.</source>
        <translation>Die von Hand berichtigte Maske lässt sich nicht schreiben: {reason}.</translation>
    </message>
    <message>
        <location filename="../../imagery/hand_masks.py"/>
        <source>The mask corrected by hand, “{name}”, cannot be read.</source>
        <translation>Die von Hand berichtigte Maske „{name}“ ist nicht lesbar.</translation>
    </message>
    <message>
        <location filename="../../processing/make_guide.py"/>
        <source>The name of an event of the course, whose flights, lengths and pins the guide shows. Empty: a guide of the course alone.</source>
        <translation>Der Name eines Wettspiels des Platzes, dessen Gruppen, Längen und Lochpositionen das Buch zeigt. Leer: ein Buch des Platzes allein.</translation>
    </message>
    <message>
        <location filename="../../processing/event_sheets.py"/>
        <source>The name of an event of the course.</source>
        <translation>Der Name eines Wettspiels des Platzes.</translation>
    </message>
    <message>
        <location filename="../../processing/start_course.py"/>
        <source>The name of the course.</source>
        <translation>Der Name des Platzes.</translation>
    </message>
    <message>
        <location filename="../../processing/archive_event.py"/>
        <source>The name of the event.</source>
        <translation>Der Name des Wettspiels.</translation>
    </message>
    <message>
        <location filename="../../processing/committee.py"/>
        <source>The name of the event; it is made if the course has none of this name.</source>
        <translation>Der Name des Wettspiels; es wird angelegt, wenn der Platz keines dieses Namens hat.</translation>
    </message>
    <message>
        <location filename="../../desk/tees_dialog.py"/>
        <source>The name of the flight; its lengths keep with it</source>
        <translation>Der Name der Gruppe; ihre Längen bleiben bei ihr</translation>
    </message>
    <message>
        <location filename="../../processing/start_course.py"/>
        <source>The new course file (.gpkg). A file that exists is never overwritten.</source>
        <translation>Die neue Platzdatei (.gpkg). Eine vorhandene Datei wird nie überschrieben.</translation>
    </message>
    <message>
        <location filename="../../desk/leafing.py"/>
        <source>The next page</source>
        <translation>Die nächste Seite</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>The other date of the pair</source>
        <translation>Das andere Bilddatum des Paars</translation>
    </message>
    <message>
        <location filename="../../desk/draw_tool.py"/>
        <source>The outline crosses itself, so that it cannot be measured as it is.</source>
        <translation>Der Umriss kreuzt sich selbst und lässt sich so nicht messen.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_drawing.py"/>
        <source>The outline of {thing} crosses or touches itself.</source>
        <translation>Der Umriss kreuzt oder berührt sich selbst: {thing}.</translation>
    </message>
    <message>
        <location filename="../../desk/page_view.py"/>
        <location filename="../../desk/sheets_dialog.py"/>
        <source>The page as it will be printed</source>
        <translation>Die Seite, wie sie gedruckt wird</translation>
    </message>
    <message>
        <location filename="../../desk/page_view.py"/>
        <location filename="../../desk/sheets_dialog.py"/>
        <source>The page as it will be printed; what is chosen on the left shows at once.</source>
        <translation>Die Seite, wie sie gedruckt wird; was links gewählt wird, zeigt sich sofort.</translation>
    </message>
    <message>
        <location filename="../../desk/leafing.py"/>
        <source>The page before</source>
        <translation>Die vorige Seite</translation>
    </message>
    <message>
        <location filename="../../guide/page_templates.py"/>
        <source>The page lacks {parts}.</source>
        <translation>Der Seite fehlt {parts}.</translation>
    </message>
    <message>
        <location filename="../../guide/pdf_join.py"/>
        <source>The page of “{path}” measures {size} mm with its bleed, not {wanted} mm.</source>
        <translation>Die Seite von „{path}“ misst mit Beschnittzugabe {size} mm, nicht {wanted} mm.</translation>
    </message>
    <message>
        <location filename="../../guide/pdf_join.py"/>
        <source>The page of “{path}” measures {size} mm.</source>
        <translation>Die Seite von „{path}“ misst {size} mm.</translation>
    </message>
    <message>
        <location filename="../../desk/page_list.py"/>
        <source>The pages of the guide in their order. Drag a page to move it; untick it to leave it out.</source>
        <translation>Die Seiten des Buchs in ihrer Reihenfolge. Ziehen, um eine Seite zu bewegen; Häkchen entfernen, um sie wegzulassen.</translation>
    </message>
    <message>
        <location filename="../../desk/page_editor.py"/>
        <source>The page’s file</source>
        <translation>Die Datei der Seite</translation>
    </message>
    <message>
        <location filename="../../desk/page_editor.py"/>
        <source>The page’s title, and that of its bookmark. Empty: the usual one.</source>
        <translation>Der Titel der Seite und ihres Lesezeichens. Leer: der übliche.</translation>
    </message>
    <message>
        <location filename="../../guide/fetched.py"/>
        <location filename="../../imagery/composite_file.py"/>
        <location filename="../../imagery/window.py"/>
        <source>The picture cannot be written: {reason}.</source>
        <translation>Das Bild kann nicht geschrieben werden: {reason}.</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>The pin of hole {} is not placed: {}.</source>
        <translation>Die Lochposition von Bahn {} ist nicht gesetzt: {}.</translation>
    </message>
    <message>
        <location filename="../../store/events.py"/>
        <source>The pin of round {round} on hole {hole} has no place.</source>
        <translation>Die Lochposition der Runde {round} auf Bahn {hole} hat keinen Ort.</translation>
    </message>
    <message>
        <location filename="../../processing/place_pins.py"/>
        <source>The pins in the course, and the table pins if a folder is named: the figures, how far to the right of the approach, to the nearest margin and to the back, the place in the course’s CRS, and remarks.</source>
        <translation>Die Lochpositionen im Platz und, wenn ein Ordner genannt ist, die Tabelle pins: die Angaben, wie weit rechts der Annäherung, bis zum nächsten Rand und zur Hinterkante, die Stelle im KBS des Platzes und Bemerkungen.</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>The pins of the round. Type how far on, how far off, and from which side: the pin is placed once all three are there. A row in italics has a remark, which stands below.</source>
        <translation>Die Lochpositionen der Runde. Eingeben, wie weit auf dem Grün, wie weit vom Rand und von welcher Seite: gesetzt wird, sobald alle drei da sind. Eine kursive Zeile hat eine Bemerkung, die unten steht.</translation>
    </message>
    <message>
        <location filename="../../guide/outlining.py"/>
        <source>The place lies outside its coordinate reference system.</source>
        <translation>Die Stelle liegt außerhalb ihres Koordinatenbezugssystems.</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>The point of the green it states the distance to</source>
        <translation>Der Punkt des Grüns, bis zu dem sie die Entfernung angibt</translation>
    </message>
    <message>
        <location filename="../../model/numbers.py"/>
        <source>The range of holes “{text}” runs backwards.</source>
        <translation>Der Bahnbereich „{text}“ läuft rückwärts.</translation>
    </message>
    <message>
        <location filename="../../processing/compose_image.py"/>
        <source>The recipe is one of the base {date}.</source>
        <translation>Das Rezept ist eines der Grundlage {date}.</translation>
    </message>
    <message>
        <location filename="../../imagery/recipe.py"/>
        <source>The recipe of the composite cannot be read ({reason}).</source>
        <translation>Das Rezept des zusammengesetzten Bildes ist nicht lesbar ({reason}).</translation>
    </message>
    <message>
        <location filename="../../processing/compose_image.py"/>
        <source>The recipe “{path}” cannot be read ({reason}).</source>
        <translation>Das Rezept „{path}“ ist nicht lesbar ({reason}).</translation>
    </message>
    <message>
        <location filename="../../store/recovery.py"/>
        <source>The recovery copy “{path}” cannot be read ({reason}).</source>
        <translation>Die Sicherungskopie „{path}“ lässt sich nicht lesen ({reason}).</translation>
    </message>
    <message>
        <location filename="../../store/recovery.py"/>
        <source>The recovery copy “{path}” is damaged or is none, and cannot be put back.</source>
        <translation>Die Sicherungskopie „{path}“ ist beschädigt oder keine; aus ihr lässt sich nichts zurückholen.</translation>
    </message>
    <message>
        <location filename="../../store/recovery.py"/>
        <source>The recovery copy “{path}” was written by a newer Yardwright.</source>
        <translation>Die Sicherungskopie „{path}“ stammt von einem neueren Yardwright.</translation>
    </message>
    <message>
        <location filename="../../desk/tees_dialog.py"/>
        <source>The round whose lengths are shown</source>
        <translation>Die Runde, deren Längen gezeigt werden</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>The round whose pins are shown and placed. On the map the pins of other rounds are smaller and paler, each with the number of its round; those of other events are paler still.</source>
        <translation>Die Runde, deren Lochpositionen gezeigt und gesetzt werden. Auf der Karte sind die Lochpositionen anderer Runden kleiner und blasser, jede mit der Nummer ihrer Runde; die anderer Wettspiele sind noch blasser.</translation>
    </message>
    <message>
        <location filename="../../desk/sheets_dialog.py"/>
        <source>The round whose pins or tees stand on the sheet.</source>
        <translation>Die Runde, deren Lochpositionen oder Abschläge auf dem Blatt stehen.</translation>
    </message>
    <message>
        <location filename="../../desk/event_settings.py"/>
        <source>The rounds. Holes in order of play such as 10-18,1-9; left empty all holes of the course are played in their own order. Only the holes of a round get pins, tees and a place on its sheets.</source>
        <translation>Die Runden. Bahnen in Spielfolge, etwa 10-18,1-9; bleibt das Feld leer, werden alle Bahnen des Platzes in ihrer eigenen Folge gespielt. Nur die Bahnen einer Runde bekommen Lochpositionen, Abschläge und einen Platz auf ihren Blättern.</translation>
    </message>
    <message>
        <location filename="../../store/vector_source.py"/>
        <source>The rows of “{file}” are points, and the layer {kind} holds none.</source>
        <translation>Die Zeilen von „{file}“ sind Punkte, der Layer {kind} enthält aber keine.</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>The same at the turns ahead</source>
        <translation>Dasselbe an den Knicken davor</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>The same of figures that were copied from a spreadsheet, their headings with them.</source>
        <translation>Dasselbe mit Angaben, die samt Überschriften aus einer Tabelle kopiert wurden.</translation>
    </message>
    <message>
        <location filename="../../desk/tees_dialog.py"/>
        <source>The same of rows copied from a spreadsheet, their headings with them</source>
        <translation>Dasselbe mit Zeilen aus einer Tabellenkalkulation, samt Überschriften kopiert</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_rows.py"/>
        <source>The scorecard names the tee set “{name}”, which is not in the table of tee sets.</source>
        <translation>Die Scorekarte nennt das Abschlagset „{name}“, das nicht in der Tabelle der Abschlagsets steht.</translation>
    </message>
    <message>
        <location filename="../../store/scorecard.py"/>
        <source>The scorecard “{path}” cannot be read ({reason}).</source>
        <translation>Die Scorekarte „{path}“ ist nicht lesbar ({reason}).</translation>
    </message>
    <message>
        <location filename="../../store/scorecard.py"/>
        <source>The scorecard “{path}” has no column “hole”.</source>
        <translation>Die Scorekarte „{path}“ hat keine Spalte „hole“.</translation>
    </message>
    <message>
        <location filename="../../store/scorecard.py"/>
        <source>The scorecard “{path}” has no hole.</source>
        <translation>Die Scorekarte „{path}“ hat keine Bahn.</translation>
    </message>
    <message>
        <location filename="../../store/scorecard.py"/>
        <source>The scorecard “{path}” has rows that cannot be used. {rows}.</source>
        <translation>Die Scorekarte „{path}“ hat unbrauchbare Zeilen. {rows}.</translation>
    </message>
    <message>
        <location filename="../../store/scorecard.py"/>
        <source>The scorecard “{path}” has two columns “{name}”.</source>
        <translation>Die Scorekarte „{path}“ hat zwei Spalten „{name}“.</translation>
    </message>
    <message>
        <location filename="../../store/scorecard.py"/>
        <source>The scorecard “{path}” is empty.</source>
        <translation>Die Scorekarte „{path}“ ist leer.</translation>
    </message>
    <message>
        <location filename="../../store/scorecard.py"/>
        <source>The scorecard “{path}” is not a CSV file ({reason}).</source>
        <translation>Die Scorekarte „{path}“ ist keine CSV-Datei ({reason}).</translation>
    </message>
    <message>
        <location filename="../../store/scorecard.py"/>
        <source>The scorecard “{path}” is not text in UTF-8.</source>
        <translation>Die Scorekarte „{path}“ ist kein Text in UTF-8.</translation>
    </message>
    <message>
        <location filename="../../store/scorecard.py"/>
        <source>The scorecard “{path}” is not text.</source>
        <translation>Die Scorekarte „{path}“ ist kein Text.</translation>
    </message>
    <message>
        <location filename="../../desk/dates.py"/>
        <source>The service does not say what a pixel covers on the ground.</source>
        <translation>Der Dienst sagt nicht, was ein Pixel am Boden abdeckt.</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>The sheet to check</source>
        <translation>Das Prüfblatt</translation>
    </message>
    <message>
        <location filename="../../desk/sheets_dialog.py"/>
        <source>The sheet was saved: {}</source>
        <translation>Das Blatt wurde gespeichert: {}</translation>
    </message>
    <message>
        <location filename="../../processing/compose_image.py"/>
        <source>The side of a pixel on the ground in metres. Empty: as the base has it.</source>
        <translation>Die Seite eines Pixels am Boden in Metern. Leer: wie bei der Grundlage.</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>The side of the line of play it lies on</source>
        <translation>Auf welcher Seite der Spiellinie es liegt</translation>
    </message>
    <message>
        <location filename="../../guide/expressions.py"/>
        <source>The side that a pin is counted from: left, right or centre.</source>
        <translation>Die Seite, von der aus eine Lochposition gezählt wird: links, rechts oder Mitte.</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <source>The size of a page.</source>
        <translation>Die Größe einer Seite.</translation>
    </message>
    <message>
        <location filename="../../desk/sheets_dialog.py"/>
        <source>The size of the page. A sheet of fewer than nine greens may be used during a round only up to 107.95 × 177.8 mm (Rules of Golf, Rule 4.3a).</source>
        <translation>Die Größe der Seite. Ein Blatt mit weniger als neun Grüns darf während einer Runde nur bis 107,95 × 177,8 mm verwendet werden (Golfregeln, Regel 4.3a).</translation>
    </message>
    <message>
        <location filename="../../processing/event_sheets.py"/>
        <source>The size of the pages. pocket: 107.95 x 177.8 mm, the largest that may show fewer than nine greens during a round (Rules of Golf, Rule 4.3a). phone: 90 x 195 mm. Empty: A4, and A6 for one green.</source>
        <translation>Die Größe der Seiten. pocket: 107,95 x 177,8 mm, die größte, die während einer Runde weniger als neun Grüns zeigen darf (Golfregeln, Regel 4.3a). phone: 90 x 195 mm. Leer: A4, und A6 für ein einzelnes Grün.</translation>
    </message>
    <message>
        <location filename="../../processing/make_guide.py"/>
        <source>The size of the pages: pocket (107.95 x 177.8 mm), phone (90 x 195 mm), A6, A5, A4, Letter, or width x height in mm, such as 100 x 160. Empty: phone for the screen, pocket for print.</source>
        <translation>Die Größe der Seiten: pocket (107,95 x 177,8 mm), phone (90 x 195 mm), A6, A5, A4, Letter oder Breite x Höhe in mm wie 100 x 160. Leer: phone für den Bildschirm, pocket für den Druck.</translation>
    </message>
    <message>
        <location filename="../../processing/import_features.py"/>
        <source>The source has no golf tags, so nothing tells what its features are.</source>
        <translation>Die Quelle hat keine Golf-Tags, so dass nichts sagt, was ihre Objekte sind.</translation>
    </message>
    <message>
        <location filename="../../processing/import_features.py"/>
        <source>The source is a layer of this very course.</source>
        <translation>Die Quelle ist ein Layer eben dieses Platzes.</translation>
    </message>
    <message>
        <location filename="../../desk/registering_dialog.py"/>
        <source>The standard error along one axis, at spots that had no part in the fit</source>
        <translation>Der Standardfehler in einer Richtung, an Stellen, die am Einpassen nicht beteiligt waren</translation>
    </message>
    <message>
        <location filename="../../processing/start_course.py"/>
        <source>The system all features are stored in, as EPSG:n; best the UTM zone of the course. Distances do not depend on it.</source>
        <translation>Das System, in dem alle Objekte gespeichert werden, als EPSG:n; am besten die UTM-Zone des Platzes. Die Entfernungen hängen nicht davon ab.</translation>
    </message>
    <message>
        <location filename="../../processing/check_markers.py"/>
        <source>The table markers: stated and measured distance, the error (stated less measured), the verdict “true” or “off”, and for a marker that is off the proposed place (in the course’s CRS), how far to move it and in which direction. A pair of posts has a row a post and one for the middle between them.</source>
        <translation>Die Tabelle markers: angegebene und gemessene Entfernung, der Fehler (Angabe minus gemessen), das Urteil „true“ (stimmt) oder „off“ (weicht ab) und für eine abweichende Marke der vorgeschlagene Ort (im KBS des Platzes), wie weit und in welche Richtung sie zu versetzen ist. Ein Pfostenpaar hat eine Zeile je Pfosten und eine für die Mitte dazwischen.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_rows.py"/>
        <source>The table of tee sets is empty, but {names} are used.</source>
        <translation>Die Tabelle der Abschlagsets ist leer, benutzt werden aber {names}.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_rows.py"/>
        <source>The table of tee sets is empty, but “{name}” is used.</source>
        <translation>Die Tabelle der Abschlagsets ist leer, benutzt wird aber „{name}“.</translation>
    </message>
    <message>
        <location filename="../../processing/audit_pins.py"/>
        <source>The table pin_audit: a row a round and hole with the figures given and drawn, how far they are apart, and the verdict same, apart, missing, extra or impossible.</source>
        <translation>Die Tabelle pin_audit: eine Zeile je Runde und Bahn mit den Angaben und dem Gezeichneten, dem Abstand und dem Urteil same, apart, missing, extra oder impossible.</translation>
    </message>
    <message>
        <location filename="../../processing/set_tees.py"/>
        <source>The table tee_setting: the length asked for and the length got, the place of the markers (in the course’s CRS), how far it lies from the tee’s front, from its back and from the plate, and the verdict “fits”, “nearest” (the nearest length the tee allows) or “impossible”.</source>
        <translation>Die Tabelle tee_setting: die gewünschte und die erreichte Länge, der Platz der Abschlagmarkierungen (im KBS des Platzes), sein Abstand von der Vorderkante des Abschlags, von der Hinterkante und von der Abschlagplatte, und das Urteil „fits“ (passt), „nearest“ (die nächste Länge, die der Abschlag zulässt) oder „impossible“ (unmöglich).</translation>
    </message>
    <message>
        <location filename="../../store/tables.py"/>
        <source>The table “{name}” cannot be written ({reason}).</source>
        <translation>Die Tabelle „{name}“ kann nicht geschrieben werden ({reason}).</translation>
    </message>
    <message>
        <location filename="../../store/tables.py"/>
        <source>The table “{name}” cannot be written as {form}.</source>
        <translation>Die Tabelle „{name}“ kann nicht als {form} geschrieben werden.</translation>
    </message>
    <message>
        <location filename="../../processing/measure_course.py"/>
        <source>The tables lengths, greens, distances, fairways, doglegs and layups, and with a terrain the table heights. Distances are in the course’s unit, each with its standard error, and always horizontal; heights are in metres. What is doubtful stands as a remark beside the figure and in the log.</source>
        <translation>Die Tabellen lengths, greens, distances, fairways, doglegs und layups, mit einem Geländemodell auch die Tabelle heights. Entfernungen stehen in der Einheit des Platzes, jede mit ihrem Standardfehler, und immer waagerecht; Höhen in Metern. Zweifelhaftes steht als Bemerkung neben dem Maß und im Protokoll.</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>The tee set played from</source>
        <translation>Das Abschlagset, von dem gespielt wird</translation>
    </message>
    <message>
        <location filename="../../desk/drawing_bar.py"/>
        <source>The tee set that is drawn and measured from</source>
        <translation>Das Abschlagset, für das gezeichnet und von dem gemessen wird</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <source>The tee set whose figures stand on the holes’ pictures.</source>
        <translation>Der Abschlagsatz, dessen Zahlen auf den Bildern der Bahnen stehen.</translation>
    </message>
    <message>
        <location filename="../../processing/make_guide.py"/>
        <source>The tee set whose figures stand on the holes’ pictures. Empty: the longest of each hole.</source>
        <translation>Der Abschlagsatz, dessen Zahlen auf den Bildern der Bahnen stehen. Leer: der längste jeder Bahn.</translation>
    </message>
    <message>
        <location filename="../../desk/tees_dialog.py"/>
        <source>The tee set whose tees the flight plays from</source>
        <translation>Das Abschlagset, von dessen Abschlägen die Gruppe spielt</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>The tee set “{name}” is not in the table of tee sets.</source>
        <translation>Das Abschlagset „{name}“ steht nicht in der Tabelle der Abschlagsets.</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>The tee sets whose figures are shown.</source>
        <translation>Die Abschlagsets, deren Maße gezeigt werden.</translation>
    </message>
    <message>
        <location filename="../../guide/page_layouts.py"/>
        <source>The template “{path}” cannot be used: {reason}.</source>
        <translation>Die Vorlage „{path}“ lässt sich nicht verwenden: {reason}.</translation>
    </message>
    <message>
        <location filename="../../imagery/terrain.py"/>
        <source>The terrain cannot be used: {reason}.</source>
        <translation>Das Geländemodell ist nicht brauchbar: {reason}.</translation>
    </message>
    <message>
        <location filename="../../imagery/terrain.py"/>
        <source>The terrain does not say in which coordinate reference system it lies.</source>
        <translation>Das Geländemodell nennt sein Koordinatenbezugssystem nicht.</translation>
    </message>
    <message>
        <location filename="../../imagery/terrain.py"/>
        <source>The terrain does not say in which unit its heights are: they are taken for metres.</source>
        <translation>Das Geländemodell nennt die Einheit seiner Höhen nicht: Sie gelten als Meter.</translation>
    </message>
    <message>
        <location filename="../../imagery/terrain.py"/>
        <source>The terrain does not say where on the ground it lies.</source>
        <translation>Das Geländemodell sagt nicht, wo im Gelände es liegt.</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>The terrain model that the table of heights is taken from. No other figure knows of it.</source>
        <translation>Das Geländemodell, aus dem die Tabelle der Höhen stammt. Kein anderes Maß weiß davon.</translation>
    </message>
    <message>
        <location filename="../../imagery/terrain.py"/>
        <source>The terrain states its heights in “{unit}”, which is not known here: they are taken for metres.</source>
        <translation>Das Geländemodell gibt seine Höhen in „{unit}“ an, was hier nicht bekannt ist: Sie gelten als Meter.</translation>
    </message>
    <message>
        <location filename="../../imagery/terrain.py"/>
        <source>The terrain “{terrain}” cannot be read: {reason}.</source>
        <translation>Das Geländemodell „{terrain}“ ist nicht lesbar: {reason}.</translation>
    </message>
    <message>
        <location filename="../../imagery/terrain.py"/>
        <source>The terrain “{terrain}” holds a picture and not heights.</source>
        <translation>Das Geländemodell „{terrain}“ enthält ein Bild und keine Höhen.</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>The true distance</source>
        <translation>Die wahre Entfernung</translation>
    </message>
    <message>
        <location filename="../../guide/expressions.py"/>
        <source>The unit of all figures: yd or m.</source>
        <translation>Die Einheit aller Maße: yd oder m.</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <source>The usual pages, until one is changed.</source>
        <translation>Die üblichen Seiten, bis eine geändert wird.</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>The whole course, as CSV…</source>
        <translation>Der ganze Platz, als CSV…</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>The whole course, as XLSX…</source>
        <translation>Der ganze Platz, als XLSX…</translation>
    </message>
    <message>
        <location filename="../../guide/event_archive.py"/>
        <source>The yardage guide of “{event}”: all that it is made from.</source>
        <translation>Das Entfernungsbuch von „{event}“: alles, woraus es gemacht ist.</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>Theirs</source>
        <translation>Spielleitung</translation>
    </message>
    <message>
        <location filename="../../desk/keeping.py"/>
        <source>There already: {}.</source>
        <translation>Schon vorhanden: {}.</translation>
    </message>
    <message>
        <location filename="../../desk/terrains.py"/>
        <source>There are no heights in this project: add a terrain model to it as a raster layer.</source>
        <translation>Dieses Projekt enthält keine Höhen: Ein Geländemodell als Rasterlayer hinzufügen.</translation>
    </message>
    <message>
        <location filename="../../imagery/registration.py"/>
        <source>There are too few places to keep some out as a check: the error is not known.</source>
        <translation>Es sind zu wenige Stellen, um einige zur Kontrolle zurückzuhalten: Der Fehler ist nicht bekannt.</translation>
    </message>
    <message>
        <location filename="../../desk/event_draft.py"/>
        <source>There are two flights “{}”.</source>
        <translation>Es gibt zwei Gruppen „{}“.</translation>
    </message>
    <message>
        <location filename="../../store/events.py"/>
        <source>There are two pins for round {round} on hole {hole}.</source>
        <translation>Für Runde {round} auf Bahn {hole} gibt es zwei Lochpositionen.</translation>
    </message>
    <message>
        <location filename="../../store/events.py"/>
        <source>There is an event “{name}” already.</source>
        <translation>Ein Wettspiel „{name}“ gibt es schon.</translation>
    </message>
    <message>
        <location filename="../../store/course_file.py"/>
        <source>There is no coordinate reference system {crs}.</source>
        <translation>Es gibt kein Koordinatenbezugssystem {crs}.</translation>
    </message>
    <message>
        <location filename="../../desk/in_hand.py"/>
        <source>There is no course in this project.</source>
        <translation>In diesem Projekt ist kein Platz.</translation>
    </message>
    <message>
        <location filename="../../desk/in_hand.py"/>
        <source>There is no course in this project: start a new one, or open one.</source>
        <translation>In diesem Projekt ist kein Platz: einen neuen anlegen oder einen öffnen.</translation>
    </message>
    <message>
        <location filename="../../guide/book_figures.py"/>
        <source>There is no course to look figures up in.</source>
        <translation>Es gibt keinen Platz, in dem Maße nachzuschlagen wären.</translation>
    </message>
    <message>
        <location filename="../../processing/register_images.py"/>
        <source>There is no date to be laid on the base.</source>
        <translation>Es gibt keinen Aufnahmetag, der auf die Grundlage zu legen wäre.</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>There is no event yet: start one.</source>
        <translation>Es gibt noch kein Wettspiel: eines anlegen.</translation>
    </message>
    <message>
        <location filename="../../guide/book_figures.py"/>
        <source>There is no event “{event}”.</source>
        <translation>Ein Wettspiel „{event}“ gibt es nicht.</translation>
    </message>
    <message>
        <location filename="../../store/events.py"/>
        <source>There is no event “{name}”.</source>
        <translation>Ein Wettspiel „{name}“ gibt es nicht.</translation>
    </message>
    <message>
        <location filename="../../store/course_file.py"/>
        <source>There is no file “{path}”.</source>
        <translation>Es gibt keine Datei „{path}“.</translation>
    </message>
    <message>
        <location filename="../../store/course_file.py"/>
        <source>There is no folder “{folder}”.</source>
        <translation>Es gibt keinen Ordner „{folder}“.</translation>
    </message>
    <message>
        <location filename="../../model/numbers.py"/>
        <source>There is no hole 0.</source>
        <translation>Es gibt keine Bahn 0.</translation>
    </message>
    <message>
        <location filename="../../store/vector_source.py"/>
        <source>There is no layer “{kind}”.</source>
        <translation>Es gibt keinen Layer „{kind}“.</translation>
    </message>
    <message>
        <location filename="../../desk/repairing.py"/>
        <source>There is no repair for this that is safe.</source>
        <translation>Hierfür gibt es keine sichere Reparatur.</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>There is no repair for this that is safe: mend it with QGIS’s own tools.</source>
        <translation>Hierfür gibt es keine sichere Reparatur: mit den Werkzeugen von QGIS beheben.</translation>
    </message>
    <message>
        <location filename="../../desk/sheets_dialog.py"/>
        <source>There is no sheet to save.</source>
        <translation>Es gibt kein Blatt zu speichern.</translation>
    </message>
    <message>
        <location filename="../../desk/committee_figures.py"/>
        <source>There is no text on the clipboard.</source>
        <translation>In der Zwischenablage ist kein Text.</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>There is nothing to remark on the course itself.</source>
        <translation>Zum Platz selbst ist nichts zu bemerken.</translation>
    </message>
    <message>
        <location filename="../../guide/book_figures.py"/>
        <source>There is {names}.</source>
        <translation>Es gibt {names}.</translation>
    </message>
    <message>
        <location filename="../../processing/make_guide.py"/>
        <source>Thickness of the paper (mm)</source>
        <translation>Dicke des Papiers (mm)</translation>
    </message>
    <message>
        <location filename="../../__init__.py"/>
        <source>This QGIS lacks {names}, without which nothing can be measured.</source>
        <translation>Diesem QGIS fehlt {names}; ohne das lässt sich nichts messen.</translation>
    </message>
    <message>
        <location filename="../../store/openstreetmap.py"/>
        <source>This QGIS was built without GDAL's OpenStreetMap driver.</source>
        <translation>Dieses QGIS wurde ohne den OpenStreetMap-Treiber von GDAL gebaut.</translation>
    </message>
    <message>
        <location filename="../../desk/editing.py"/>
        <source>This can no longer be undone from here.</source>
        <translation>Das lässt sich von hier aus nicht mehr rückgängig machen.</translation>
    </message>
    <message>
        <location filename="../../store/tables.py"/>
        <source>This computer's GDAL cannot write {form}.</source>
        <translation>Das GDAL dieses Rechners kann {form} nicht schreiben.</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>This hole</source>
        <translation>Diese Bahn</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>This is for the eye: features that are not shown stay in the course and in all figures.</source>
        <translation>Nur fürs Auge: Nicht gezeigte Objekte bleiben im Platz und in allen Maßen enthalten.</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>This is not drawn anywhere on the map.</source>
        <translation>Dies ist nirgends auf der Karte gezeichnet.</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>This is the first hole.</source>
        <translation>Dies ist die erste Bahn.</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>This is the last hole.</source>
        <translation>Dies ist die letzte Bahn.</translation>
    </message>
    <message>
        <location filename="../../desk/outline_tool.py"/>
        <source>This place lies outside the course’s coordinate reference system.</source>
        <translation>Diese Stelle liegt außerhalb des Koordinatenbezugssystems des Platzes.</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Through the middle, square to the approach</source>
        <translation>Durch die Mitte, rechtwinklig zur Annäherung</translation>
    </message>
    <message>
        <location filename="../../desk/keeping.py"/>
        <source>Throw away</source>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <location filename="../../desk/keeping.py"/>
        <source>Throw away what was drawn and not saved? It cannot be brought back.</source>
        <translation>Was gezeichnet und nicht gespeichert wurde, verwerfen? Es lässt sich nicht wiederherstellen.</translation>
    </message>
    <message>
        <location filename="../../desk/keeping.py"/>
        <source>Throw away…</source>
        <translation>Verwerfen…</translation>
    </message>
    <message>
        <location filename="../../desk/take_up_dialog.py"/>
        <source>Tick it only where the licence allows pictures on paper. Without, it is for looking at.</source>
        <translation>Nur anhaken, wo die Lizenz Bilder auf Papier erlaubt. Sonst ist es nur zum Ansehen.</translation>
    </message>
    <message>
        <location filename="../../desk/registering_dialog.py"/>
        <source>Tick one in the list.</source>
        <translation>Eines in der Liste anhaken.</translation>
    </message>
    <message>
        <location filename="../../imagery/registration.py"/>
        <source>Tie points of {date} are too few or lie on one another.</source>
        <translation>Die Passpunkte von {date} sind zu wenige oder liegen aufeinander.</translation>
    </message>
    <message>
        <location filename="../../desk/ties.py"/>
        <source>Ties by hand: {} on {}</source>
        <translation>Passpunkte von Hand: {} auf {}</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <location filename="../../desk/page_editor.py"/>
        <source>Title of the page</source>
        <translation>Titel der Seite</translation>
    </message>
    <message>
        <location filename="../../desk/composing_dialog.py"/>
        <source>To &amp;look at only: take dates that may not be printed too</source>
        <translation>&amp;Nur zum Ansehen: auch Daten nehmen, die nicht gedruckt werden dürfen</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>To be past it; of a green its back</source>
        <translation>Um darüber hinaus zu sein; beim Grün bis zur Hinterkante</translation>
    </message>
    <message>
        <location filename="../../processing/compose_image.py"/>
        <location filename="../../processing/export_windows.py"/>
        <source>To be printed</source>
        <translation>Zum Druck</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>To leave</source>
        <translation>Rest</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>To the</source>
        <translation>Bezug</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <location filename="../../desk/pointer.py"/>
        <source>To the green</source>
        <translation>Zum Grün</translation>
    </message>
    <message>
        <location filename="../../desk/pin_table.py"/>
        <source>To the green’s back, along the approach</source>
        <translation>Bis zur Hinterkante des Grüns, entlang der Annäherung</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>To the green’s middle</source>
        <translation>Bis zur Mitte des Grüns</translation>
    </message>
    <message>
        <location filename="../../desk/pointer.py"/>
        <source>To the margin</source>
        <translation>Bis zum Rand</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>To the nearest point of it; of a green its front</source>
        <translation>Bis zum nächsten Punkt; beim Grün bis zur Vorderkante</translation>
    </message>
    <message>
        <location filename="../../desk/pin_table.py"/>
        <source>To the nearest point of the green’s margin</source>
        <translation>Bis zum nächsten Punkt des Grünrands</translation>
    </message>
    <message>
        <location filename="../../processing/algorithm.py"/>
        <source>Tolerance (yards)</source>
        <translation>Toleranz (Yards)</translation>
    </message>
    <message>
        <location filename="../../store/recovery.py"/>
        <source>Too many copies lie beside “{path}”.</source>
        <translation>Neben „{path}“ liegen zu viele Kopien.</translation>
    </message>
    <message>
        <location filename="../../guide/book_pages.py"/>
        <source>Total</source>
        <translation>Gesamt</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Towards</source>
        <translation>Richtung</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Tree</source>
        <translation>Baum</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Trees</source>
        <translation>Gehölz</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>True direction of the approach</source>
        <translation>Rechtweisende Richtung der Annäherung</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>True direction to move it in</source>
        <translation>Rechtweisende Richtung, in die sie zu versetzen ist</translation>
    </message>
    <message>
        <location filename="../../desk/words.py"/>
        <source>Try again; if it happens again, report it with what the log of QGIS says under “Yardwright”.</source>
        <translation>Erneut versuchen; geschieht es wieder, mit dem melden, was im Protokoll von QGIS unter „Yardwright“ steht.</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Turn</source>
        <translation>Knick</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>Turn Yardwright off and on again in the list of plugins.</source>
        <translation>Yardwright in der Liste der Erweiterungen aus- und wieder einschalten.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>Turn it round: it leads from the back tee to the green.</source>
        <translation>Umkehren: Sie führt vom hintersten Abschlag zum Grün.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>Turn the line round</source>
        <translation>Die Linie umkehren</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>Turn the plugin “Processing” on in the list of plugins.</source>
        <translation>Die Erweiterung „Processing“ in der Liste der Erweiterungen einschalten.</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Turn, stretch and local shifts</source>
        <translation>Drehung, Streckung und örtliche Verschiebungen</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Turns</source>
        <translation>Knicke</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Turns (m)</source>
        <translation>Knicke (m)</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_rows.py"/>
        <source>Two lines of play have the number {number}: one is left out.</source>
        <translation>Zwei Spiellinien haben die Nummer {number}: Eine wird ausgelassen.</translation>
    </message>
    <message>
        <location filename="../../guide/pdf_join.py"/>
        <source>Two pages of the book are called “{name}”.</source>
        <translation>Zwei Seiten des Buchs heißen „{name}“.</translation>
    </message>
    <message>
        <location filename="../../guide/pdf_join.py"/>
        <source>Two pages of {page} mm do not fit on a sheet of {sheet} mm.</source>
        <translation>Zwei Seiten von {page} mm passen nicht auf einen Bogen von {sheet} mm.</translation>
    </message>
    <message>
        <location filename="../../desk/tees_dialog.py"/>
        <source>Type how long a hole shall play; empty, it plays the tee set’s own length, shown in grey. Beside it stand the markers: how far back from the tee’s front, where from the plate, and whether the tee allows the length. The place chosen is shown on the map.</source>
        <translation>Eintragen, wie lang eine Bahn spielen soll; leer spielt sie die eigene Länge des Abschlagsets, grau gezeigt. Daneben stehen die Markierungen: wie weit hinter der Vorderkante des Abschlags, wo von der Platte aus, und ob der Abschlag die Länge zulässt. Die gewählte Stelle ist auf der Karte zu sehen.</translation>
    </message>
    <message>
        <location filename="../../__init__.py"/>
        <source>Type “{command}” in a terminal, then start QGIS again.</source>
        <translation>In einem Terminal „{command}“ eingeben und QGIS neu starten.</translation>
    </message>
    <message>
        <location filename="../../desk/hole_panel.py"/>
        <source>Under the pointer</source>
        <translation>Unter dem Mauszeiger</translation>
    </message>
    <message>
        <location filename="../../desk/words.py"/>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <location filename="../../desk/draw_tool.py"/>
        <source>Undo it, or move its corners with the vertex tool.</source>
        <translation>Rückgängig machen oder die Ecken mit dem Stützpunktwerkzeug verschieben.</translation>
    </message>
    <message>
        <location filename="../../desk/auditing.py"/>
        <source>Undo its removal, or close the audit.</source>
        <translation>Das Entfernen rückgängig machen oder den Abgleich schließen.</translation>
    </message>
    <message>
        <location filename="../../desk/propose_dialog.py"/>
        <location filename="../../desk/sheets_dialog.py"/>
        <source>Undo its removal, or close this window.</source>
        <translation>Das Entfernen rückgängig machen oder dieses Fenster schließen.</translation>
    </message>
    <message>
        <location filename="../../desk/masks.py"/>
        <source>Undo what took it out of the layer “Image date”.</source>
        <translation>Rückgängig machen, was es aus dem Layer „Bilddatum“ genommen hat.</translation>
    </message>
    <message>
        <location filename="../../guide/page_templates.py"/>
        <source>Undo what took them away, or give other items these ids.</source>
        <translation>Rückgängig machen, was sie entfernt hat, oder anderen Elementen diese IDs geben.</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Unit of printed distances</source>
        <translation>Einheit gedruckter Entfernungen</translation>
    </message>
    <message>
        <location filename="../../processing/start_course.py"/>
        <source>Unit of tables and printed figures</source>
        <translation>Einheit der Tabellen und gedruckten Maße</translation>
    </message>
    <message>
        <location filename="../../guide/event_archive.py"/>
        <source>Unpack it into a folder and open the course file in QGIS with Yardwright.</source>
        <translation>In einen Ordner auspacken und die Platzdatei in QGIS mit Yardwright öffnen.</translation>
    </message>
    <message>
        <location filename="../../store/recovery.py"/>
        <source>Update the plugin, then open the course again.</source>
        <translation>Die Erweiterung aktualisieren, dann den Platz erneut öffnen.</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <source>Usual for the form</source>
        <translation>Wie für die Form üblich</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <location filename="../../desk/bring_lengths.py"/>
        <location filename="../../desk/figures.py"/>
        <location filename="../../desk/length_table.py"/>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>View</source>
        <translation>Sicht</translation>
    </message>
    <message>
        <location filename="../../desk/propose_dialog.py"/>
        <source>Wanted of nine holes: four left, one in the centre, four right. Of a round: a third each front, middle and back, and a third each easy, moderate and hard.</source>
        <translation>Gewünscht von neun Bahnen: vier links, eine in der Mitte, vier rechts. Von einer Runde: je ein Drittel vorn, in der Mitte und hinten, und je ein Drittel leicht, mittel und schwer.</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <location filename="../../desk/composing_dialog.py"/>
        <location filename="../../desk/figures.py"/>
        <location filename="../../desk/hole_panel.py"/>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <location filename="../../desk/pin_table.py"/>
        <source>What Off counts from</source>
        <translation>Wovon aus gezählt wird</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>What a pixel covers on the ground</source>
        <translation>Was ein Pixel am Boden abdeckt</translation>
    </message>
    <message>
        <location filename="../../desk/hole_panel.py"/>
        <source>What a yardage guide needs of this hole: a tick stands before what is drawn, a circle before what is missing. A double click takes the tool that draws it in hand.</source>
        <translation>Was ein Entfernungsbuch von dieser Bahn braucht: vor Gezeichnetem steht ein Haken, vor Fehlendem ein Kreis. Ein Doppelklick nimmt das Werkzeug, das es zeichnet, zur Hand.</translation>
    </message>
    <message>
        <location filename="../../desk/composing_dialog.py"/>
        <source>What came of it</source>
        <translation>Was daraus geworden ist</translation>
    </message>
    <message>
        <location filename="../../desk/date_actions.py"/>
        <source>What hides</source>
        <translation>Verdecktes</translation>
    </message>
    <message>
        <location filename="../../desk/hidden_panel.py"/>
        <source>What hides the ground</source>
        <translation>Was den Boden verdeckt</translation>
    </message>
    <message>
        <location filename="../../desk/masks.py"/>
        <source>What hides the ground on {}</source>
        <translation>Was auf {} den Boden verdeckt</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>What is &amp;partly hidden</source>
        <translation>Nur teilweise &amp;Verdecktes</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>What is doubtful about this row</source>
        <translation>Was an dieser Zeile zweifelhaft ist</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>What is drawn is to stay for the rows chosen; the log says so.</source>
        <translation>Für die gewählten Zeilen soll bleiben, was gezeichnet ist; das wird festgehalten.</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>What is drawn stays wherever it differs and nothing was decided before.</source>
        <translation>Was gezeichnet ist, bleibt überall, wo es abweicht und noch nichts entschieden wurde.</translation>
    </message>
    <message>
        <location filename="../../desk/residuals.py"/>
        <source>What is left, {} times enlarged</source>
        <translation>Was übrig bleibt, {}-fach vergrößert</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>What is measured to</source>
        <translation>Wohin gemessen wird</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <source>What is missing</source>
        <translation>Was fehlt</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <source>What is missing in the guide. Click a remark to look at its page.</source>
        <translation>Was im Buch fehlt. Eine Bemerkung anklicken, um ihre Seite anzusehen.</translation>
    </message>
    <message>
        <location filename="../../desk/sheets_dialog.py"/>
        <source>What is missing on this sheet, or to be known of it before it is used.</source>
        <translation>Was auf diesem Blatt fehlt oder vor seinem Gebrauch zu wissen ist.</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <source>What is missing, or to be known: {}</source>
        <translation>Was fehlt oder zu wissen ist: {}</translation>
    </message>
    <message>
        <location filename="../../desk/propose_dialog.py"/>
        <source>What is ticked is placed. A tick at a round holds for all its holes. The location chosen is shown on the map.</source>
        <translation>Was angehakt ist, wird gesetzt. Ein Haken an einer Runde gilt für alle ihre Bahnen. Die gewählte Lochposition zeigt die Karte.</translation>
    </message>
    <message>
        <location filename="../../desk/event_settings.py"/>
        <source>What is to be kept</source>
        <translation>Was einzuhalten ist</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>What is to be said of the course as a whole and of no single figure.</source>
        <translation>Was zum Platz als Ganzem und zu keinem einzelnen Maß zu sagen ist.</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>What is written on it</source>
        <translation>Was darauf steht</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>What it is called</source>
        <translation>Wie es heißt</translation>
    </message>
    <message>
        <location filename="../../processing/outline_feature.py"/>
        <source>What it is: how large such a thing is, and how sharp its margin, tells it from others.</source>
        <translation>Was es ist: Wie groß so etwas ist und wie scharf sein Rand, unterscheidet es von anderem.</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>What it states less what is true</source>
        <translation>Angabe minus wahre Entfernung</translation>
    </message>
    <message>
        <location filename="../../desk/hidden_panel.py"/>
        <source>What moves</source>
        <translation>Was sich bewegt</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>What remains to the green’s middle</source>
        <translation>Was bis zur Mitte des Grüns bleibt</translation>
    </message>
    <message>
        <location filename="../../desk/description_dialog.py"/>
        <source>What stands between [% and %] is worked out when the page is made, so that it stays true.</source>
        <translation>Was zwischen [% und %] steht, wird ausgerechnet, wenn die Seite entsteht, damit es wahr bleibt.</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>What the checks found</source>
        <translation>Befunde der Prüfung</translation>
    </message>
    <message>
        <location filename="../../guide/expressions.py"/>
        <source>What the course says of the hole; expressions between [% and %] in it are worked out.</source>
        <translation>Was der Platz über die Bahn sagt; Ausdrücke zwischen [% und %] darin werden ausgerechnet.</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>What the length says of the par</source>
        <translation>Was die Länge über das Par sagt</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>What the scorecard says</source>
        <translation>Was die Scorekarte sagt</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>What the windows show</source>
        <translation>Was die Bildausschnitte zeigen</translation>
    </message>
    <message>
        <location filename="../../desk/hole_panel.py"/>
        <source>What to draw next of a hole that is not complete, and the tool for it.</source>
        <translation>Was von einer unvollständigen Bahn als Nächstes zu zeichnen ist, und das Werkzeug dafür.</translation>
    </message>
    <message>
        <location filename="../../desk/hidden_panel.py"/>
        <source>What was corrected on {} is kept beside the course.</source>
        <translation>Was auf {} berichtigt wurde, ist neben dem Platz aufgehoben.</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>What was decided on this event’s pins, the last decision first.</source>
        <translation>Was über die Lochpositionen dieses Wettspiels entschieden wurde, die letzte Entscheidung zuerst.</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>What was drawn from</source>
        <translation>Wonach gezeichnet wurde</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>What was found in the course, by hole; it is looked through again after each edit. A double click shows the place on the map and selects the features. Below the list stands what to do.</source>
        <translation>Was im Platz gefunden wurde, nach Bahnen; nach jeder Änderung wird erneut geprüft. Ein Doppelklick zeigt die Stelle auf der Karte und wählt die Objekte aus. Unter der Liste steht, was zu tun ist.</translation>
    </message>
    <message>
        <location filename="../../processing/import_features.py"/>
        <source>What was left out, and why</source>
        <translation>Was ausgelassen wurde und warum</translation>
    </message>
    <message>
        <location filename="../../desk/bring_lengths.py"/>
        <source>What was read, line by line, and what the tee allows of it.</source>
        <translation>Was gelesen wurde, Zeile für Zeile, und was der Abschlag davon zulässt.</translation>
    </message>
    <message>
        <location filename="../../desk/repairing.py"/>
        <source>What was to be repaired has been changed or deleted since it was checked.</source>
        <translation>Was repariert werden sollte, wurde seit der Prüfung geändert oder gelöscht.</translation>
    </message>
    <message>
        <location filename="../../desk/keeping.py"/>
        <source>What you draw in “{}” has no recovery copy: {}</source>
        <translation>Was Sie in „{}“ zeichnen, hat keine Sicherungskopie: {}</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <location filename="../../desk/event_settings.py"/>
        <source>Where groups start; it changes no figure</source>
        <translation>Wo gestartet wird; ändert kein Maß</translation>
    </message>
    <message>
        <location filename="../../desk/outline_tool.py"/>
        <source>Where it is dashed the image shows no plain margin: look there, and reshape it.</source>
        <translation>Wo er gestrichelt ist, zeigt das Bild keinen deutlichen Rand: dort nachsehen und ihn umformen.</translation>
    </message>
    <message>
        <location filename="../../guide/sheets.py"/>
        <source>Where no plate is drawn, the tee’s front is named instead.</source>
        <translation>Wo keine Abschlagplatte eingezeichnet ist, steht statt ihrer die Vorderkante des Abschlags.</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Where the approach is taken from</source>
        <translation>Von wo die Annäherung genommen wird</translation>
    </message>
    <message>
        <location filename="../../desk/dates.py"/>
        <source>Where the course lies is not known yet.</source>
        <translation>Wo der Platz liegt, ist noch nicht bekannt.</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Where the line of play comes into it</source>
        <translation>Wo die Spiellinie hineinführt</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Where the line of play comes onto the fairway</source>
        <translation>Wo die Spiellinie auf das Fairway führt</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Where the line of play comes out of it</source>
        <translation>Wo die Spiellinie hinausführt</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Where the line of play leaves the fairway</source>
        <translation>Wo die Spiellinie das Fairway verlässt</translation>
    </message>
    <message>
        <location filename="../../desk/length_table.py"/>
        <source>Where the markers stand, seen from the tee set’s permanent plate</source>
        <translation>Wo die Markierungen stehen, von der Abschlagplatte des Abschlagsets aus</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Whether it has to be carried to go on</source>
        <translation>Ob man hinüberschlagen muss, um weiterzukommen</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>Whether it may be printed</source>
        <translation>Ob es gedruckt werden darf</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Whether it stands where it says</source>
        <translation>Ob sie dort steht, wo sie es angibt</translation>
    </message>
    <message>
        <location filename="../../desk/length_table.py"/>
        <source>Whether the tee allows the length asked for</source>
        <translation>Ob der Abschlag die gewünschte Länge zulässt</translation>
    </message>
    <message>
        <location filename="../../desk/drawing_bar.py"/>
        <source>Which date the patch is to show is not known.</source>
        <translation>Welches Datum das Stück zeigen soll, ist nicht bekannt.</translation>
    </message>
    <message>
        <location filename="../../desk/sheets_dialog.py"/>
        <source>Which of the event’s sheets is shown and saved.</source>
        <translation>Welches Blatt des Wettspiels gezeigt und gespeichert wird.</translation>
    </message>
    <message>
        <location filename="../../desk/drawing_bar.py"/>
        <source>Which tee set is it for? It is taken for the next ones too.</source>
        <translation>Für welches Abschlagset? Es gilt auch für die nächsten.</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>While held, the map shows the other date; so does the key {}</source>
        <translation>Solange gedrückt, zeigt die Karte das andere Datum; ebenso die Taste {}</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>Who decides; it stands in the log beside each decision.</source>
        <translation>Wer entscheidet; steht bei jeder festgehaltenen Entscheidung.</translation>
    </message>
    <message>
        <location filename="../../desk/event_settings.py"/>
        <source>Who invites, in a few lines</source>
        <translation>Wer einlädt, in wenigen Zeilen</translation>
    </message>
    <message>
        <location filename="../../desk/tees_dialog.py"/>
        <source>Who plays the same lengths, and the tee set whose tees they play from.</source>
        <translation>Wer dieselben Längen spielt, und das Abschlagset, von dessen Abschlägen.</translation>
    </message>
    <message>
        <location filename="../../processing/import_notes.py"/>
        <source>Who wrote them</source>
        <translation>Wer sie schrieb</translation>
    </message>
    <message>
        <location filename="../../desk/composing_dialog.py"/>
        <source>Whole course</source>
        <translation>Ganzer Platz</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <source>Whose pins stand in the guide.</source>
        <translation>Wessen Fahnen im Buch stehen.</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>Why no hole can be cut on the green of the hole in hand.</source>
        <translation>Warum auf dem Grün dieser Bahn kein Loch gesetzt werden kann.</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <location filename="../../processing/export_windows.py"/>
        <source>Width (mm)</source>
        <translation>Breite (mm)</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>Width of the page panel in millimetres.</source>
        <translation>Breite des Bildfelds der Seite in Millimetern.</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Window</source>
        <translation>Bildausschnitt</translation>
    </message>
    <message>
        <location filename="../../processing/set_tees.py"/>
        <source>Write a line round,flight,hole,yards for each length.</source>
        <translation>Für jede Länge eine Zeile round,flight,hole,yards schreiben.</translation>
    </message>
    <message>
        <location filename="../../processing/event_sheets.py"/>
        <source>Write event sheets</source>
        <translation>Wettspielblätter schreiben</translation>
    </message>
    <message>
        <location filename="../../store/course_file.py"/>
        <source>Write it as EPSG:n, such as EPSG:32630.</source>
        <translation>Als EPSG:n schreiben, etwa EPSG:32630.</translation>
    </message>
    <message>
        <location filename="../../processing/import_features.py"/>
        <source>Write it as xmin,xmax,ymin,ymax, with [EPSG:4326] after it for degrees.</source>
        <translation>Als xmin,xmax,ymin,ymax schreiben, für Grad mit [EPSG:4326] dahinter.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_rows.py"/>
        <source>Write it into the hole’s form.</source>
        <translation>Ins Formular der Bahn eintragen.</translation>
    </message>
    <message>
        <location filename="../../model/numbers.py"/>
        <source>Write numbers and ranges with commas between them, such as 1,4,7-9.</source>
        <translation>Nummern und Bereiche mit Kommas dazwischen schreiben, etwa 1,4,7-9.</translation>
    </message>
    <message>
        <location filename="../../model/numbers.py"/>
        <source>Write numbers with commas between them, such as 100,150,200.</source>
        <translation>Zahlen mit Kommas dazwischen schreiben, etwa 100,150,200.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>Write the distance it states into its form.</source>
        <translation>Die angegebene Entfernung in ihr Formular eintragen.</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>Write the figures of the hole on the map: to reach and clear, to the green, its size</source>
        <translation>Die Maße der Bahn auf die Karte schreiben: bis und über Hindernisse, zum Grün, seine Größe</translation>
    </message>
    <message>
        <location filename="../../desk/hole_panel.py"/>
        <source>Write the hole’s description beside its notes, and see it fit</source>
        <translation>Die Beschreibung der Bahn neben ihren Notizen schreiben und sehen, ob sie passt</translation>
    </message>
    <message>
        <location filename="../../processing/register_images.py"/>
        <source>Write the moves and their errors to the dates, and move what was drawn from them along. What was drawn from another source stays. Pins go along with their green.</source>
        <translation>Die Verschiebungen und ihre Fehler bei den Aufnahmetagen eintragen und mitnehmen, was nach ihnen gezeichnet wurde. Was nach anderer Quelle gezeichnet ist, bleibt. Lochpositionen gehen mit ihrem Grün mit.</translation>
    </message>
    <message>
        <location filename="../../desk/event_draft.py"/>
        <source>Write the numbers of its holes in the order of play, such as 10-18,1-9.</source>
        <translation>Die Nummern seiner Bahnen in Spielfolge schreiben, etwa 10-18,1-9.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>Write the par into the hole’s form: where the approach is taken from depends on it.</source>
        <translation>Das Par ins Formular der Bahn eintragen: Davon hängt ab, von wo die Annäherung genommen wird.</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>Write the tables, with two decimals, to files in a folder.</source>
        <translation>Die Tabellen mit zwei Nachkommastellen in Dateien eines Ordners schreiben.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_rows.py"/>
        <source>Write the tee sets into the table, in their order.</source>
        <translation>Die Abschlagsets in ihrer Reihenfolge in die Tabelle eintragen.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_rows.py"/>
        <source>Write them into the holes’ forms.</source>
        <translation>In die Formulare der Bahnen eintragen.</translation>
    </message>
    <message>
        <location filename="../../desk/event_draft.py"/>
        <source>Write year, month and day, such as 2026-05-02.</source>
        <translation>Jahr, Monat und Tag schreiben, etwa 2026-05-02.</translation>
    </message>
    <message>
        <location filename="../../desk/tees_dialog.py"/>
        <source>Writes all of it into the layers, for you to save</source>
        <translation>Schreibt alles in die Layer; gespeichert wird es von Ihnen</translation>
    </message>
    <message>
        <location filename="../../desk/sheets_dialog.py"/>
        <source>Writes the sheet as a PDF: lines and letters, sharp at any size, its fonts in the file.</source>
        <translation>Schreibt das Blatt als PDF: Linien und Buchstaben, scharf in jeder Größe, die Schriften in der Datei.</translation>
    </message>
    <message>
        <location filename="../../processing/event_sheets.py"/>
        <source>Writes the sheets of an event as PDF: the pins of a round on small greens or as a table, the pins of all rounds on one green, the sheet on which the committee checks them all, and where the ground staff set the tee markers. Nothing in the course is changed.</source>
        <translation>Schreibt die Blätter eines Wettspiels als PDF: die Lochpositionen einer Runde auf kleinen Grüns oder als Tabelle, die Lochpositionen aller Runden auf einem Grün, das Blatt, auf dem die Spielleitung alle prüft, und wo die Platzpflege die Abschlagmarkierungen setzt. Am Platz wird nichts geändert.</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>Written on</source>
        <translation>Geschrieben am</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>Wrong</source>
        <translation>Falsch</translation>
    </message>
    <message>
        <location filename="../../guide/book.py"/>
        <source>Yardage guide</source>
        <translation>Entfernungsbuch</translation>
    </message>
    <message>
        <location filename="../../guide/book_pages.py"/>
        <location filename="../../guide/event_page.py"/>
        <location filename="../../model/kinds.py"/>
        <source>Yards</source>
        <translation>Yards</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>Yardwright</source>
        <translation>Yardwright</translation>
    </message>
    <message>
        <location filename="../../processing/provider.py"/>
        <source>Yardwright (yardage guide of a golf course)</source>
        <translation>Yardwright (Entfernungsbuch eines Golfplatzes)</translation>
    </message>
    <message>
        <location filename="../../desk/words.py"/>
        <source>Yardwright could not do that: {}.</source>
        <translation>Yardwright konnte das nicht ausführen: {}.</translation>
    </message>
    <message>
        <location filename="../../desk/drawing_bar.py"/>
        <source>Yardwright: drawing</source>
        <translation>Yardwright: Zeichnen</translation>
    </message>
    <message>
        <location filename="../../desk/outline_tool.py"/>
        <source>Yardwright: outlining</source>
        <translation>Yardwright: Umriss wird gesucht</translation>
    </message>
    <message>
        <location filename="../../store/symbols.py"/>
        <source>Yellow stakes</source>
        <translation>Gelbe Pfähle</translation>
    </message>
    <message>
        <location filename="../../processing/archive_event.py"/>
        <source>ZIP files (*.zip)</source>
        <translation>ZIP-Dateien (*.zip)</translation>
    </message>
    <message>
        <location filename="../../desk/masks.py"/>
        <source>Zoom in: from this far what hides the ground cannot be told.</source>
        <translation>Näher heranzoomen: von so weit lässt sich nicht sagen, was den Boden verdeckt.</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>Zoom the map to it and select its features (Enter, or a double click)</source>
        <translation>Die Karte darauf zoomen und die Objekte auswählen (Eingabetaste oder Doppelklick)</translation>
    </message>
    <message>
        <location filename="../../desk/dates.py"/>
        <source>Zoom the map to the course, then try again.</source>
        <translation>Die Karte auf den Platz zoomen, dann erneut versuchen.</translation>
    </message>
    <message>
        <location filename="../../desk/masks.py"/>
        <source>Zoom to the course.</source>
        <translation>Auf den Platz zoomen.</translation>
    </message>
    <message>
        <location filename="../../desk/tees_dialog.py"/>
        <source>Zooms the map to the markers chosen</source>
        <translation>Zoomt die Karte auf die gewählten Markierungen</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>Zooms the map to what is chosen and selects its features.</source>
        <translation>Zoomt die Karte auf das Gewählte und wählt die Objekte aus.</translation>
    </message>
    <message>
        <location filename="../../imagery/composing.py"/>
        <source>a cloud, and no other date shows the ground</source>
        <translation>eine Wolke, und kein anderer Aufnahmetag zeigt den Boden</translation>
    </message>
    <message>
        <location filename="../../store/bring_in.py"/>
        <source>a coordinate of it is not a number</source>
        <translation>eine Koordinate ist keine Zahl</translation>
    </message>
    <message>
        <location filename="../../imagery/composing.py"/>
        <source>a crown hangs over on all dates</source>
        <translation>eine Krone hängt an allen Aufnahmetagen darüber</translation>
    </message>
    <message>
        <location filename="../../imagery/composing.py"/>
        <source>a hazard or a margin may be there</source>
        <translation>dort kann ein Hindernis oder ein Rand sein</translation>
    </message>
    <message>
        <location filename="../../imagery/composing.py"/>
        <source>a hazard, the margin of a green or a tee is near</source>
        <translation>ein Hindernis, der Rand eines Grüns oder ein Abschlag ist nah</translation>
    </message>
    <message>
        <location filename="../../store/bring_in.py"/>
        <source>a line</source>
        <translation>eine Linie</translation>
    </message>
    <message>
        <location filename="../../store/bring_in.py"/>
        <source>a mixture</source>
        <translation>eine Mischung</translation>
    </message>
    <message>
        <location filename="../../imagery/recipe.py"/>
        <source>a newer Yardwright wrote it</source>
        <translation>ein neueres Yardwright hat es geschrieben</translation>
    </message>
    <message>
        <location filename="../../guide/sheet_cells.py"/>
        <source>a page with fewer than nine greens may be no larger than 107.95 x 177.8 mm (4¼ x 7 in) to be used during a round (Rule 4.3a)</source>
        <translation>eine Seite mit weniger als neun Grüns darf höchstens 107,95 x 177,8 mm (4¼ x 7 in) groß sein, um während einer Runde benutzt zu werden (Regel 4.3a)</translation>
    </message>
    <message>
        <location filename="../../measure/checklist.py"/>
        <source>a par 3 may have none</source>
        <translation>ein Par 3 kann ohne sein</translation>
    </message>
    <message>
        <location filename="../../guide/pdf_objects.py"/>
        <source>a part of it is packed in an unusual way</source>
        <translation>ein Teil davon ist ungewöhnlich gepackt</translation>
    </message>
    <message>
        <location filename="../../guide/pdf_objects.py"/>
        <source>a part of it is too large</source>
        <translation>ein Teil davon ist zu groß</translation>
    </message>
    <message>
        <location filename="../../guide/pdf_objects.py"/>
        <source>a part of it lies in another file</source>
        <translation>ein Teil davon liegt in einer anderen Datei</translation>
    </message>
    <message>
        <location filename="../../measure/pins.py"/>
        <source>a pin needs two figures, on and off</source>
        <translation>eine Lochposition braucht zwei Maße: ab Vorderkante und seitlich</translation>
    </message>
    <message>
        <location filename="../../store/bring_in.py"/>
        <source>a point</source>
        <translation>ein Punkt</translation>
    </message>
    <message>
        <location filename="../../store/course_file.py"/>
        <source>a row was refused</source>
        <translation>eine Zeile wurde abgelehnt</translation>
    </message>
    <message>
        <location filename="../../store/styling.py"/>
        <source>a style was refused</source>
        <translation>ein Stil wurde abgelehnt</translation>
    </message>
    <message>
        <location filename="../../store/openstreetmap.py"/>
        <source>a yardage guide measures no buildings</source>
        <translation>ein Entfernungsbuch misst keine Gebäude</translation>
    </message>
    <message>
        <location filename="../../desk/slope_shading.py"/>
        <source>above {} %</source>
        <translation>über {} %</translation>
    </message>
    <message>
        <location filename="../../desk/slope_shading.py"/>
        <source>above {} %: steeper than the limit</source>
        <translation>über {} %: steiler als zugelassen</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>across</source>
        <translation>quer</translation>
    </message>
    <message>
        <location filename="../../measure/cutting.py"/>
        <source>all ground far enough from the margin is steeper than is asked</source>
        <translation>aller Grund, der weit genug vom Rand liegt, ist steiler als verlangt</translation>
    </message>
    <message>
        <location filename="../../measure/cutting.py"/>
        <source>all ground that is left lies too near to other rounds’ holes</source>
        <translation>aller verbliebene Grund liegt zu nahe an den Löchern anderer Runden</translation>
    </message>
    <message>
        <location filename="../../store/bring_in.py"/>
        <source>an area</source>
        <translation>eine Fläche</translation>
    </message>
    <message>
        <location filename="../../measure/findings.py"/>
        <source>an unsaved {kind}</source>
        <translation>{kind} (noch nicht gespeichert)</translation>
    </message>
    <message>
        <location filename="../../measure/course.py"/>
        <source>an unusual depth for a green: look again at its margin and approach</source>
        <translation>eine ungewöhnliche Tiefe für ein Grün: Rand und Annäherung noch einmal ansehen</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>any date</source>
        <translation>jedem Datum</translation>
    </message>
    <message>
        <location filename="../../measure/pin_audit.py"/>
        <source>apart</source>
        <translation>weicht ab</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>apron</source>
        <translation>Vorgrün</translation>
    </message>
    <message>
        <location filename="../../store/bring_in.py"/>
        <source>area</source>
        <translation>Fläche</translation>
    </message>
    <message>
        <location filename="../../store/bring_in.py"/>
        <source>areas</source>
        <translation>Flächen</translation>
    </message>
    <message>
        <location filename="../../imagery/composite_file.py"/>
        <source>as photographed</source>
        <translation>wie aufgenommen</translation>
    </message>
    <message>
        <location filename="../../measure/tee_setting.py"/>
        <source>asked for more than once</source>
        <translation>mehr als einmal gewünscht</translation>
    </message>
    <message>
        <location filename="../../guide/windows.py"/>
        <source>at 1:{scale} the green is cut off; it needs 1:{fits} with its margin</source>
        <translation>bei 1:{scale} ist das Grün abgeschnitten; mit Rand braucht es 1:{fits}</translation>
    </message>
    <message>
        <location filename="../../guide/windows.py"/>
        <source>at 1:{scale} the hole is cut off; it needs 1:{fits} with its margin</source>
        <translation>bei 1:{scale} ist die Bahn abgeschnitten; mit Rand braucht sie 1:{fits}</translation>
    </message>
    <message>
        <location filename="../../store/styling.py"/>
        <source>at least {limit}</source>
        <translation>mindestens {limit}</translation>
    </message>
    <message>
        <location filename="../../store/styling.py"/>
        <source>at most {limit}</source>
        <translation>höchstens {limit}</translation>
    </message>
    <message>
        <location filename="../../guide/sheets.py"/>
        <source>at the front</source>
        <translation>ganz vorn</translation>
    </message>
    <message>
        <location filename="../../desk/hole_drawing.py"/>
        <source>at {}</source>
        <translation>bei {}</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <location filename="../../model/kinds.py"/>
        <source>back</source>
        <translation>Hinterkante</translation>
    </message>
    <message>
        <location filename="../../measure/fair.py"/>
        <source>back third</source>
        <translation>hinteres Drittel</translation>
    </message>
    <message>
        <location filename="../../desk/hole_drawing.py"/>
        <source>back {}</source>
        <translation>hinten {}</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>base</source>
        <translation>Grundbild</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>before: {}</source>
        <translation>früher: {}</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>boundary</source>
        <translation>Platzgrenze</translation>
    </message>
    <message>
        <location filename="../../guide/hole_page.py"/>
        <location filename="../../model/kinds.py"/>
        <source>bunker</source>
        <translation>Bunker</translation>
    </message>
    <message>
        <location filename="../../measure/checklist.py"/>
        <source>by its {length} {unit} a par {likely}</source>
        <translation>mit {length} {unit} ein Par {likely}</translation>
    </message>
    <message>
        <location filename="../../guide/sheets.py"/>
        <source>cannot be set</source>
        <translation>lässt sich nicht setzen</translation>
    </message>
    <message>
        <location filename="../../desk/pin_table.py"/>
        <location filename="../../measure/fair.py"/>
        <location filename="../../model/event.py"/>
        <location filename="../../model/kinds.py"/>
        <source>centre</source>
        <translation>Mitte</translation>
    </message>
    <message>
        <location filename="../../desk/drawing_bar.py"/>
        <location filename="../../model/kinds.py"/>
        <source>clear</source>
        <translation>deutlich</translation>
    </message>
    <message>
        <location filename="../../desk/hole_drawing.py"/>
        <source>clear {}</source>
        <translation>über {}</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <location filename="../../model/notes.py"/>
        <source>course</source>
        <translation>Platz</translation>
    </message>
    <message>
        <location filename="../../desk/pointer.py"/>
        <source>crosses itself</source>
        <translation>kreuzt sich selbst</translation>
    </message>
    <message>
        <location filename="../../processing/algorithm.py"/>
        <source>csv (UTF-8), xlsx and gpkg: one or several.</source>
        <translation>csv (UTF-8), xlsx und gpkg: eines oder mehrere.</translation>
    </message>
    <message>
        <location filename="../../imagery/composite_file.py"/>
        <source>date</source>
        <translation>Aufnahmetag</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>decision on a pin</source>
        <translation>Entscheidung über eine Lochposition</translation>
    </message>
    <message>
        <location filename="../../guide/sheet_cells.py"/>
        <source>depth {depth}</source>
        <translation>Tiefe {depth}</translation>
    </message>
    <message>
        <location filename="../../guide/sheets.py"/>
        <source>depth {depth}, approach from {where}</source>
        <translation>Tiefe {depth}, Annäherung von: {where}</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>distance marker</source>
        <translation>Entfernungsmarke</translation>
    </message>
    <message>
        <location filename="../../guide/hole_page.py"/>
        <source>distance marker and what it says</source>
        <translation>Entfernungsmarke und was auf ihr steht</translation>
    </message>
    <message>
        <location filename="../../measure/checklist.py"/>
        <source>distances are measured from it</source>
        <translation>Entfernungen werden von ihm gemessen</translation>
    </message>
    <message>
        <location filename="../../measure/checklist.py"/>
        <source>distances end where the line of play ends</source>
        <translation>Entfernungen enden am Ende der Spiellinie</translation>
    </message>
    <message>
        <location filename="../../measure/checklist.py"/>
        <source>draw it from the back tee over the turns to the green</source>
        <translation>vom hintersten Abschlag über die Knicke zum Grün zeichnen</translation>
    </message>
    <message>
        <location filename="../../desk/registering.py"/>
        <source>east</source>
        <translation>Osten</translation>
    </message>
    <message>
        <location filename="../../measure/fair.py"/>
        <source>easy</source>
        <translation>leicht</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>event</source>
        <translation>Wettspiel</translation>
    </message>
    <message>
        <location filename="../../measure/pin_audit.py"/>
        <source>extra</source>
        <translation>überzählig</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>fairway</source>
        <translation>Fairway</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_drawing.py"/>
        <source>feature {number}</source>
        <translation>Objekt {number}</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>figures</source>
        <translation>Maße</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <location filename="../../desk/length_table.py"/>
        <location filename="../../measure/par.py"/>
        <source>fits</source>
        <translation>passt</translation>
    </message>
    <message>
        <location filename="../../desk/description_dialog.py"/>
        <source>fits, {} lines left</source>
        <translation>passt, {} Zeilen frei</translation>
    </message>
    <message>
        <location filename="../../guide/registrations.py"/>
        <source>fitted to</source>
        <translation>eingepasst</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>flight of an event</source>
        <translation>Gruppe eines Wettspiels</translation>
    </message>
    <message>
        <location filename="../../desk/drawing_bar.py"/>
        <location filename="../../model/kinds.py"/>
        <source>from another source</source>
        <translation>aus anderer Quelle</translation>
    </message>
    <message>
        <location filename="../../guide/sheet_cells.py"/>
        <source>from centre</source>
        <translation>von der Mitte</translation>
    </message>
    <message>
        <location filename="../../guide/sheet_cells.py"/>
        <source>from left</source>
        <translation>von links</translation>
    </message>
    <message>
        <location filename="../../desk/registering.py"/>
        <source>from place to place</source>
        <translation>von Ort zu Ort</translation>
    </message>
    <message>
        <location filename="../../guide/sheet_cells.py"/>
        <source>from right</source>
        <translation>von rechts</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>from the back of the tee</source>
        <translation>von der Hinterkante des Abschlags</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>from the centre of the tee</source>
        <translation>von der Mitte des Abschlags</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>from the front of the tee</source>
        <translation>von der Vorderkante des Abschlags</translation>
    </message>
    <message>
        <location filename="../../store/committee.py"/>
        <source>from “{value}” is none of {sides}</source>
        <translation>from „{value}“ ist keines von {sides}</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <location filename="../../guide/ladder.py"/>
        <location filename="../../model/kinds.py"/>
        <source>front</source>
        <translation>Vorderkante</translation>
    </message>
    <message>
        <location filename="../../measure/fair.py"/>
        <source>front third</source>
        <translation>vorderes Drittel</translation>
    </message>
    <message>
        <location filename="../../desk/hole_drawing.py"/>
        <source>front {}</source>
        <translation>vorn {}</translation>
    </message>
    <message>
        <location filename="../../measure/distances.py"/>
        <source>given to this hole but wholly outside its corridor</source>
        <translation>dieser Bahn zugeordnet, liegt aber ganz außerhalb ihres Korridors</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>green</source>
        <translation>Grün</translation>
    </message>
    <message>
        <location filename="../../measure/hole.py"/>
        <source>green {number} is too small to measure: distances end where the line of play ends</source>
        <translation>Grün {number} ist zum Messen zu klein: Entfernungen enden am Ende der Spiellinie</translation>
    </message>
    <message>
        <location filename="../../processing/event_sheets.py"/>
        <source>greens: the pins of a round, a small green a hole. table: the same as a table. hole: one green with the pins of all rounds. audit: every green with all its pins and their figures both ways, for the committee to check. tees: where the markers stand in a round.</source>
        <translation>greens: die Lochpositionen einer Runde, ein kleines Grün je Bahn. table: dasselbe als Tabelle. hole: ein Grün mit den Lochpositionen aller Runden. audit: jedes Grün mit allen Lochpositionen und ihren Maßen von beiden Seiten, zur Prüfung durch die Spielleitung. tees: wo die Abschlagmarkierungen in einer Runde stehen.</translation>
    </message>
    <message>
        <location filename="../../measure/cutting.py"/>
        <source>ground too thin for a hole is left out</source>
        <translation>Grund, der für ein Loch zu schmal ist, bleibt außen vor</translation>
    </message>
    <message>
        <location filename="../../desk/ties.py"/>
        <source>half set</source>
        <translation>halb gesetzt</translation>
    </message>
    <message>
        <location filename="../../measure/fair.py"/>
        <source>hard</source>
        <translation>schwer</translation>
    </message>
    <message>
        <location filename="../../measure/hole.py"/>
        <source>has no hole number, given to this hole by where it lies</source>
        <translation>ohne Bahnnummer, nach seiner Lage dieser Bahn zugeordnet</translation>
    </message>
    <message>
        <location filename="../../guide/hole_page.py"/>
        <source>head of hole {number}: no room for the lengths of {names}</source>
        <translation>Kopf von Bahn {number}: kein Platz für die Längen von {names}</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <location filename="../../store/scorecard.py"/>
        <source>hole</source>
        <translation>Bahn</translation>
    </message>
    <message>
        <location filename="../../guide/sheets.py"/>
        <source>hole {hole} is left out: round {round} does not play it</source>
        <translation>Bahn {hole} ist weggelassen: Runde {round} spielt sie nicht</translation>
    </message>
    <message>
        <location filename="../../measure/fair.py"/>
        <source>hole {hole} of round {round} is left out of the balance: {reason}</source>
        <translation>Bahn {hole} in Runde {round} fehlt in der Verteilung: {reason}</translation>
    </message>
    <message>
        <location filename="../../store/bring_in.py"/>
        <source>hole {number} already has a line</source>
        <translation>Bahn {number} hat schon eine Linie</translation>
    </message>
    <message>
        <location filename="../../store/reading.py"/>
        <source>hole {number} from {tee_set} is there twice; the first counts</source>
        <translation>Bahn {number} ab {tee_set} ist doppelt vorhanden; die erste gilt</translation>
    </message>
    <message>
        <location filename="../../guide/book.py"/>
        <source>hole {number} has no description</source>
        <translation>Bahn {number} hat keine Beschreibung</translation>
    </message>
    <message>
        <location filename="../../guide/sheets.py"/>
        <source>hole {number} has no green</source>
        <translation>Bahn {number} hat kein Grün</translation>
    </message>
    <message>
        <location filename="../../guide/green_panel.py"/>
        <source>hole {number} has no green to show</source>
        <translation>Bahn {number} hat kein Grün zu zeigen</translation>
    </message>
    <message>
        <location filename="../../guide/sheets.py"/>
        <source>hole {number} has no pin in this round</source>
        <translation>Bahn {number} hat in dieser Runde keine Lochposition</translation>
    </message>
    <message>
        <location filename="../../store/scorecard.py"/>
        <source>hole {number} stands in the scorecard twice</source>
        <translation>Bahn {number} steht doppelt in der Scorekarte</translation>
    </message>
    <message>
        <location filename="../../store/bring_in.py"/>
        <source>hole {number} stands twice in the source and the longest line was taken; limit the import with EXTENT if these are two courses</source>
        <translation>Bahn {number} steht doppelt in der Quelle, die längste Linie wurde genommen; den Import mit EXTENT begrenzen, falls es zwei Plätze sind</translation>
    </message>
    <message>
        <location filename="../../guide/green_panel.py"/>
        <source>hole {number}: figures of {count} pins find no room below the green</source>
        <translation>Bahn {number}: Maße von {count} Lochpositionen finden unter dem Grün keinen Platz</translation>
    </message>
    <message>
        <location filename="../../guide/book_making.py"/>
        <source>hole {number}: {error}</source>
        <translation>Bahn {number}: {error}</translation>
    </message>
    <message>
        <location filename="../../desk/guide_dialog.py"/>
        <location filename="../../processing/algorithm.py"/>
        <source>hole {}</source>
        <translation>Bahn {}</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>hole: the whole hole with play upwards. green: the green with the approach upwards. Or both.</source>
        <translation>hole: die ganze Bahn mit der Spielrichtung nach oben. green: das Grün mit der Annäherung nach oben. Oder beides.</translation>
    </message>
    <message>
        <location filename="../../imagery/composite_file.py"/>
        <source>how</source>
        <translation>wie</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>image date</source>
        <translation>Bilddatum</translation>
    </message>
    <message>
        <location filename="../../desk/length_table.py"/>
        <location filename="../../measure/pin_audit.py"/>
        <source>impossible</source>
        <translation>unmöglich</translation>
    </message>
    <message>
        <location filename="../../measure/fair.py"/>
        <source>in rounds {rounds} the hole is in the same part of the green</source>
        <translation>in den Runden {rounds} liegt das Loch im selben Teil des Grüns</translation>
    </message>
    <message>
        <location filename="../../imagery/composite_file.py"/>
        <source>invented</source>
        <translation>erfunden</translation>
    </message>
    <message>
        <location filename="../../desk/composing_dialog.py"/>
        <source>invented from what is about it</source>
        <translation>erfunden aus seiner Umgebung</translation>
    </message>
    <message>
        <location filename="../../store/guide_pages.py"/>
        <source>it does not say which kind of page it is</source>
        <translation>sie sagt nicht, welche Art Seite sie ist</translation>
    </message>
    <message>
        <location filename="../../store/reading.py"/>
        <source>it has a coordinate that is not a number</source>
        <translation>eine Koordinate ist keine Zahl</translation>
    </message>
    <message>
        <location filename="../../store/bring_in.py"/>
        <location filename="../../store/reading.py"/>
        <source>it has no geometry</source>
        <translation>ohne Geometrie</translation>
    </message>
    <message>
        <location filename="../../measure/proposal.py"/>
        <source>it has no green</source>
        <translation>sie hat kein Grün</translation>
    </message>
    <message>
        <location filename="../../measure/fair.py"/>
        <source>it has no green or no place</source>
        <translation>sie hat kein Grün oder keine Lochposition</translation>
    </message>
    <message>
        <location filename="../../store/reading.py"/>
        <source>it has no hole number and was left out</source>
        <translation>ohne Bahnnummer, wurde ausgelassen</translation>
    </message>
    <message>
        <location filename="../../store/reading.py"/>
        <source>it has no id</source>
        <translation>ohne Kennung</translation>
    </message>
    <message>
        <location filename="../../store/events.py"/>
        <source>it has no length</source>
        <translation>keine Länge angegeben</translation>
    </message>
    <message>
        <location filename="../../store/reading.py"/>
        <source>it has no name</source>
        <translation>ohne Namen</translation>
    </message>
    <message>
        <location filename="../../measure/pins.py"/>
        <source>it has no point</source>
        <translation>ohne Punkt</translation>
    </message>
    <message>
        <location filename="../../store/field_notes.py"/>
        <source>it has no position</source>
        <translation>es hat keinen Ort</translation>
    </message>
    <message>
        <location filename="../../store/field_notes.py"/>
        <source>it has no text</source>
        <translation>es hat keinen Text</translation>
    </message>
    <message>
        <location filename="../../store/events.py"/>
        <source>it has no {field}</source>
        <translation>{field} fehlt</translation>
    </message>
    <message>
        <location filename="../../store/reading.py"/>
        <location filename="../../store/vector_source.py"/>
        <source>it has too few points</source>
        <translation>zu wenige Punkte</translation>
    </message>
    <message>
        <location filename="../../imagery/terrain.py"/>
        <source>it holds no heights</source>
        <translation>es enthält keine Höhen</translation>
    </message>
    <message>
        <location filename="../../imagery/image.py"/>
        <source>it holds no picture</source>
        <translation>es enthält kein Bild</translation>
    </message>
    <message>
        <location filename="../../guide/pdf_objects.py"/>
        <source>it is locked</source>
        <translation>sie ist gesperrt</translation>
    </message>
    <message>
        <location filename="../../guide/page_templates.py"/>
        <source>it is made for pages of {own}, and these are {asked}</source>
        <translation>sie ist für Seiten von {own} gemacht, und diese haben {asked}</translation>
    </message>
    <message>
        <location filename="../../guide/page_templates.py"/>
        <source>it is no layout of QGIS</source>
        <translation>sie ist kein Layout von QGIS</translation>
    </message>
    <message>
        <location filename="../../store/recovery.py"/>
        <source>it is no longer in the course</source>
        <translation>es ist nicht mehr im Platz</translation>
    </message>
    <message>
        <location filename="../../guide/page_templates.py"/>
        <source>it is no whole XML file</source>
        <translation>sie ist keine vollständige XML-Datei</translation>
    </message>
    <message>
        <location filename="../../store/reading.py"/>
        <source>it is not a line of two points or more</source>
        <translation>keine Linie aus mindestens zwei Punkten</translation>
    </message>
    <message>
        <location filename="../../store/reading.py"/>
        <source>it is not a point</source>
        <translation>kein Punkt</translation>
    </message>
    <message>
        <location filename="../../store/reading.py"/>
        <source>it is not an area</source>
        <translation>keine Fläche</translation>
    </message>
    <message>
        <location filename="../../guide/book_figures.py"/>
        <source>it is not drawn</source>
        <translation>es ist nicht gezeichnet</translation>
    </message>
    <message>
        <location filename="../../guide/composites.py"/>
        <source>it is not marked as one that may be printed</source>
        <translation>er ist nicht als druckbar gekennzeichnet</translation>
    </message>
    <message>
        <location filename="../../store/bring_in.py"/>
        <source>it is {shape}, and its layer holds {shapes}</source>
        <translation>es ist {shape}, der Layer enthält aber {shapes}</translation>
    </message>
    <message>
        <location filename="../../store/vector_source.py"/>
        <source>it is {shape}, and {wanted} is wanted</source>
        <translation>es ist {shape}, verlangt ist {wanted}</translation>
    </message>
    <message>
        <location filename="../../store/reading.py"/>
        <source>it lacks hole or tee set and was left out</source>
        <translation>ohne Bahn oder Abschlagset, wurde ausgelassen</translation>
    </message>
    <message>
        <location filename="../../store/events.py"/>
        <source>it lacks round, hole or what was decided</source>
        <translation>Runde, Bahn oder die Entscheidung fehlt</translation>
    </message>
    <message>
        <location filename="../../guide/page_templates.py"/>
        <source>it lacks {parts}</source>
        <translation>ihr fehlt {parts}</translation>
    </message>
    <message>
        <location filename="../../guide/composites.py"/>
        <source>it lies on a server; it is fetched only where it is named</source>
        <translation>er liegt auf einem Server und wird nur geholt, wo er genannt ist</translation>
    </message>
    <message>
        <location filename="../../store/bring_in.py"/>
        <source>it lies outside the area the course’s coordinate system ({crs}) is made for</source>
        <translation>außerhalb des Gebiets, für das das Koordinatensystem des Platzes ({crs}) gemacht ist</translation>
    </message>
    <message>
        <location filename="../../measure/pins.py"/>
        <source>it lies {distance} off the green</source>
        <translation>liegt {distance} außerhalb des Grüns</translation>
    </message>
    <message>
        <location filename="../../measure/markers.py"/>
        <source>it stands where its distance ends: there is no bearing to move it along</source>
        <translation>sie steht, wo ihre Entfernung endet: Es gibt keine Richtung, in der sie zu versetzen wäre</translation>
    </message>
    <message>
        <location filename="../../store/recovery.py"/>
        <source>it was changed in the course meanwhile</source>
        <translation>es wurde inzwischen im Platz geändert</translation>
    </message>
    <message>
        <location filename="../../store/recovery.py"/>
        <source>it was to be deleted, but was changed in the course meanwhile</source>
        <translation>es sollte gelöscht werden, wurde aber inzwischen im Platz geändert</translation>
    </message>
    <message>
        <location filename="../../store/recovery.py"/>
        <source>its field “{name}” holds what a copy cannot keep</source>
        <translation>sein Feld „{name}“ enthält, was eine Kopie nicht halten kann</translation>
    </message>
    <message>
        <location filename="../../measure/pins.py"/>
        <source>its figures, {on} on and {off} from {side}, no longer fit its point, which is followed (was the green redrawn, or the point moved?)</source>
        <translation>die Maße, {on} ab Vorderkante und {off} ({side}), passen nicht mehr zum Punkt; der Punkt gilt (wurde das Grün neu gezeichnet oder der Punkt verschoben?)</translation>
    </message>
    <message>
        <location filename="../../store/bring_in.py"/>
        <source>its geometry has no extent</source>
        <translation>die Geometrie hat keine Ausdehnung</translation>
    </message>
    <message>
        <location filename="../../store/recovery.py"/>
        <source>its layer has no field “{name}”</source>
        <translation>sein Layer hat kein Feld „{name}“</translation>
    </message>
    <message>
        <location filename="../../store/recovery.py"/>
        <source>its layer is in another coordinate reference system now</source>
        <translation>sein Layer hat jetzt ein anderes Koordinatenbezugssystem</translation>
    </message>
    <message>
        <location filename="../../store/recovery.py"/>
        <source>its layer is not in the project</source>
        <translation>sein Layer ist nicht im Projekt</translation>
    </message>
    <message>
        <location filename="../../guide/composites.py"/>
        <source>its licence ({licence}) is not marked as one to print</source>
        <translation>seine Lizenz ({licence}) ist nicht als druckbar gekennzeichnet</translation>
    </message>
    <message>
        <location filename="../../store/reading.py"/>
        <source>its outline encloses nothing</source>
        <translation>der Umriss umschließt nichts</translation>
    </message>
    <message>
        <location filename="../../store/bring_in.py"/>
        <source>its outline is not closed</source>
        <translation>der Umriss ist nicht geschlossen</translation>
    </message>
    <message>
        <location filename="../../store/field_notes.py"/>
        <source>its place cannot be used</source>
        <translation>sein Ort ist nicht brauchbar</translation>
    </message>
    <message>
        <location filename="../../imagery/moves.py"/>
        <source>its shifts are no table</source>
        <translation>seine Verschiebungen sind keine Tabelle</translation>
    </message>
    <message>
        <location filename="../../measure/checklist.py"/>
        <source>its widths, and the way round a hazard, come from it</source>
        <translation>daraus kommen die Breiten und der Weg um ein Hindernis</translation>
    </message>
    <message>
        <location filename="../../guide/registrations.py"/>
        <source>kept out as a check</source>
        <translation>zur Kontrolle zurückgehalten</translation>
    </message>
    <message>
        <location filename="../../desk/residuals.py"/>
        <source>kept out, to check it</source>
        <translation>außen vor, zur Prüfung</translation>
    </message>
    <message>
        <location filename="../../guide/ladder.py"/>
        <source>ladder of hole {number}: no room for {figures}</source>
        <translation>Entfernungsleiter von Bahn {number}: kein Platz für {figures}</translation>
    </message>
    <message>
        <location filename="../../guide/hole_page.py"/>
        <source>landing zone and width of the fairway</source>
        <translation>Landezone und Breite des Fairways</translation>
    </message>
    <message>
        <location filename="../../desk/hole_drawing.py"/>
        <source>leaves {}</source>
        <translation>Rest {}</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <location filename="../../desk/pin_table.py"/>
        <location filename="../../desk/pointer.py"/>
        <location filename="../../measure/fair.py"/>
        <location filename="../../model/event.py"/>
        <location filename="../../model/kinds.py"/>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <location filename="../../guide/sheet_cells.py"/>
        <source>left of centre</source>
        <translation>links der Mitte</translation>
    </message>
    <message>
        <location filename="../../desk/bring_lengths.py"/>
        <location filename="../../desk/bring_pins.py"/>
        <source>left out: {}</source>
        <translation>ausgelassen: {}</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>length for a flight</source>
        <translation>Länge für einen Flight</translation>
    </message>
    <message>
        <location filename="../../desk/length_table.py"/>
        <source>level</source>
        <translation>auf Höhe</translation>
    </message>
    <message>
        <location filename="../../guide/sheets.py"/>
        <source>level with it</source>
        <translation>auf ihrer Höhe</translation>
    </message>
    <message>
        <location filename="../../guide/sheets.py"/>
        <location filename="../../measure/tee_setting.py"/>
        <source>level with the plate</source>
        <translation>auf Höhe der Abschlagplatte</translation>
    </message>
    <message>
        <location filename="../../imagery/composite_file.py"/>
        <source>lightened</source>
        <translation>aufgehellt</translation>
    </message>
    <message>
        <location filename="../../store/bring_in.py"/>
        <source>line</source>
        <translation>Linie</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>line of play</source>
        <translation>Spiellinie</translation>
    </message>
    <message>
        <location filename="../../store/committee.py"/>
        <source>line {line} has this one already</source>
        <translation>steht schon in Zeile {line}</translation>
    </message>
    <message>
        <location filename="../../store/separated.py"/>
        <source>line {line}: {reason}</source>
        <translation>Zeile {line}: {reason}</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>line {} of the committee’s: {}</source>
        <translation>Zeile {} der Spielleitung: {}</translation>
    </message>
    <message>
        <location filename="../../store/bring_in.py"/>
        <source>lines</source>
        <translation>Linien</translation>
    </message>
    <message>
        <location filename="../../measure/par.py"/>
        <source>long for par {par}</source>
        <translation>lang für Par {par}</translation>
    </message>
    <message>
        <location filename="../../measure/tee_setting.py"/>
        <source>longer than the tee allows: with two club-lengths behind it plays {distance} at most</source>
        <translation>länger, als der Abschlag zulässt: Mit zwei Schlägerlängen dahinter sind es höchstens {distance}</translation>
    </message>
    <message>
        <location filename="../../measure/hole.py"/>
        <source>marker</source>
        <translation>Entfernungsmarke</translation>
    </message>
    <message>
        <location filename="../../desk/hole_drawing.py"/>
        <source>measured {}</source>
        <translation>gemessen {}</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>men</source>
        <translation>Herren</translation>
    </message>
    <message>
        <location filename="../../guide/hole_page.py"/>
        <source>metres</source>
        <translation>Meter</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <location filename="../../model/kinds.py"/>
        <source>middle</source>
        <translation>Mitte</translation>
    </message>
    <message>
        <location filename="../../measure/markers.py"/>
        <source>middle between the pair of posts</source>
        <translation>Mitte zwischen dem Pfostenpaar</translation>
    </message>
    <message>
        <location filename="../../measure/fair.py"/>
        <source>middle third</source>
        <translation>mittleres Drittel</translation>
    </message>
    <message>
        <location filename="../../desk/hole_drawing.py"/>
        <source>middle {}</source>
        <translation>Mitte {}</translation>
    </message>
    <message>
        <location filename="../../measure/pin_audit.py"/>
        <source>missing</source>
        <translation>fehlt</translation>
    </message>
    <message>
        <location filename="../../measure/fair.py"/>
        <source>moderate</source>
        <translation>mittel</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>moved</source>
        <translation>verschoben</translation>
    </message>
    <message>
        <location filename="../../desk/tees_dialog.py"/>
        <source>name of the flight</source>
        <translation>Name der Gruppe</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <location filename="../../imagery/composing.py"/>
        <source>no date shows anything here</source>
        <translation>kein Aufnahmetag zeigt hier etwas</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>no date that is known ({})</source>
        <translation>keinem bekannten Datum ({})</translation>
    </message>
    <message>
        <location filename="../../measure/proposal.py"/>
        <source>no figures tell a place that is left</source>
        <translation>kein Maß nennt eine verbliebene Stelle</translation>
    </message>
    <message>
        <location filename="../../desk/page_editor.py"/>
        <source>no file yet</source>
        <translation>noch keine Datei</translation>
    </message>
    <message>
        <location filename="../../guide/page_layouts.py"/>
        <source>no font here has the letters {letters}</source>
        <translation>keine Schrift hier hat die Zeichen {letters}</translation>
    </message>
    <message>
        <location filename="../../guide/green_panel.py"/>
        <location filename="../../guide/sheet_cells.py"/>
        <location filename="../../guide/sheets.py"/>
        <source>no green drawn</source>
        <translation>kein Grün gezeichnet</translation>
    </message>
    <message>
        <location filename="../../measure/hole.py"/>
        <source>no green is drawn: distances end where the line of play ends</source>
        <translation>kein Grün gezeichnet: Entfernungen enden am Ende der Spiellinie</translation>
    </message>
    <message>
        <location filename="../../store/bring_in.py"/>
        <source>no hole number can be read from it</source>
        <translation>keine Bahnnummer daraus lesbar</translation>
    </message>
    <message>
        <location filename="../../guide/book.py"/>
        <source>no image is chosen: the holes have no picture</source>
        <translation>kein Bild ist gewählt: die Bahnen haben keine Abbildung</translation>
    </message>
    <message>
        <location filename="../../guide/book_making.py"/>
        <source>no image of this hole</source>
        <translation>kein Bild dieser Bahn</translation>
    </message>
    <message>
        <location filename="../../measure/tee_setting.py"/>
        <source>no length is asked for</source>
        <translation>keine Länge gewünscht</translation>
    </message>
    <message>
        <location filename="../../guide/book.py"/>
        <source>no length is measured: the guide has no scorecard</source>
        <translation>Keine Länge ist gemessen: Das Buch hat keine Scorekarte</translation>
    </message>
    <message>
        <location filename="../../guide/event_archive.py"/>
        <source>no licence is named</source>
        <translation>keine Lizenz ist genannt</translation>
    </message>
    <message>
        <location filename="../../desk/event_settings.py"/>
        <source>no limit</source>
        <translation>keine Grenze</translation>
    </message>
    <message>
        <location filename="../../measure/course.py"/>
        <location filename="../../measure/pins.py"/>
        <location filename="../../measure/tee_setting.py"/>
        <source>no line of play is drawn</source>
        <translation>keine Spiellinie gezeichnet</translation>
    </message>
    <message>
        <location filename="../../measure/hole.py"/>
        <source>no line of play is drawn: a straight one is taken</source>
        <translation>keine Spiellinie gezeichnet: Eine gerade wird angenommen</translation>
    </message>
    <message>
        <location filename="../../measure/par.py"/>
        <source>no par</source>
        <translation>kein Par</translation>
    </message>
    <message>
        <location filename="../../measure/hole.py"/>
        <source>no par: approach as on a par {par}, judged by its length</source>
        <translation>kein Par: Annäherung wie bei einem Par {par}, nach der Länge geschätzt</translation>
    </message>
    <message>
        <location filename="../../guide/sheet_cells.py"/>
        <location filename="../../guide/sheets.py"/>
        <source>no pin</source>
        <translation>keine Lochposition</translation>
    </message>
    <message>
        <location filename="../../measure/proposal.py"/>
        <source>no place is proposed on hole {hole} in round {rounds}: {reason}</source>
        <translation>auf Bahn {hole} wird in Runde {rounds} keine Lochposition vorgeschlagen: {reason}</translation>
    </message>
    <message>
        <location filename="../../measure/cutting.py"/>
        <source>no place on the green is as far from its margin as is asked</source>
        <translation>keine Stelle des Grüns liegt so weit vom Rand wie verlangt</translation>
    </message>
    <message>
        <location filename="../../measure/tee_setting.py"/>
        <source>no place on the tee leaves two club-lengths ({distance}) behind it</source>
        <translation>keine Stelle auf dem Abschlag lässt zwei Schlägerlängen ({distance}) hinter sich</translation>
    </message>
    <message>
        <location filename="../../measure/course.py"/>
        <location filename="../../measure/heights.py"/>
        <source>no tee is drawn</source>
        <translation>kein Abschlag gezeichnet</translation>
    </message>
    <message>
        <location filename="../../measure/tee_setting.py"/>
        <source>no tee lies where the asked length would be: the nearest is {distance}</source>
        <translation>wo die gewünschte Länge wäre, liegt kein Abschlag: Die nächste ist {distance}</translation>
    </message>
    <message>
        <location filename="../../measure/tee_setting.py"/>
        <source>no tee of the set “{name}” is drawn on this hole</source>
        <translation>auf dieser Bahn ist kein Abschlag des Sets „{name}“ gezeichnet</translation>
    </message>
    <message>
        <location filename="../../measure/course.py"/>
        <source>no tee of this set is drawn</source>
        <translation>kein Abschlag dieses Sets gezeichnet</translation>
    </message>
    <message>
        <location filename="../../store/writing.py"/>
        <source>no transaction</source>
        <translation>keine Transaktion</translation>
    </message>
    <message>
        <location filename="../../guide/event_archive.py"/>
        <source>nobody is named</source>
        <translation>niemand ist genannt</translation>
    </message>
    <message>
        <location filename="../../guide/book.py"/>
        <source>nobody is named for the image “{image}”</source>
        <translation>niemand genannt für das Bild „{image}“</translation>
    </message>
    <message>
        <location filename="../../processing/register_images.py"/>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <location filename="../../measure/checklist.py"/>
        <source>none of its own</source>
        <translation>keine eigenen</translation>
    </message>
    <message>
        <location filename="../../measure/checklist.py"/>
        <source>none of {tee_sets}</source>
        <translation>keiner für {tee_sets}</translation>
    </message>
    <message>
        <location filename="../../desk/registering.py"/>
        <source>north</source>
        <translation>Norden</translation>
    </message>
    <message>
        <location filename="../../desk/registering.py"/>
        <source>north-east</source>
        <translation>Nordosten</translation>
    </message>
    <message>
        <location filename="../../desk/registering.py"/>
        <source>north-west</source>
        <translation>Nordwesten</translation>
    </message>
    <message>
        <location filename="../../guide/registrations.py"/>
        <location filename="../../processing/register_images.py"/>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>not said</source>
        <translation>keine Angabe</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>note from the ground</source>
        <translation>Notiz vom Platz</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>note on a hole</source>
        <translation>Notiz zu einer Bahn</translation>
    </message>
    <message>
        <location filename="../../imagery/composing.py"/>
        <source>nothing like its surroundings is near</source>
        <translation>nichts, was der Umgebung gleicht, ist nah</translation>
    </message>
    <message>
        <location filename="../../desk/composing_dialog.py"/>
        <source>nothing stays hidden</source>
        <translation>nichts bleibt verdeckt</translation>
    </message>
    <message>
        <location filename="../../guide/sponsor_pages.py"/>
        <source>of “{file}”’s {count} pages the first {most} are taken</source>
        <translation>von den {count} Seiten von „{file}“ werden die ersten {most} genommen</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>off</source>
        <translation>weicht ab</translation>
    </message>
    <message>
        <location filename="../../measure/pins.py"/>
        <source>off counts from left, right or centre, not from “{side}”</source>
        <translation>seitlich zählt von links, von rechts oder von der Mitte, nicht „{side}“</translation>
    </message>
    <message>
        <location filename="../../store/committee.py"/>
        <source>off is 0, which is the margin itself</source>
        <translation>off ist 0, das ist der Rand selbst</translation>
    </message>
    <message>
        <location filename="../../guide/sheet_cells.py"/>
        <source>on</source>
        <translation>von vorn</translation>
    </message>
    <message>
        <location filename="../../guide/sheet_cells.py"/>
        <source>on centre</source>
        <translation>auf der Mitte</translation>
    </message>
    <message>
        <location filename="../../measure/tee_setting.py"/>
        <source>on tee {number}, one of {count} of this set</source>
        <translation>auf Abschlag {number}, einem von {count} dieses Sets</translation>
    </message>
    <message>
        <location filename="../../measure/tee_setting.py"/>
        <source>on the longest line of play over the tee, for its middle has no room</source>
        <translation>auf der längsten Spiellinie über den Abschlag, denn in der Mitte ist kein Platz</translation>
    </message>
    <message>
        <location filename="../../measure/hole.py"/>
        <source>one green for holes {numbers}</source>
        <translation>ein Grün für die Bahnen {numbers}</translation>
    </message>
    <message>
        <location filename="../../desk/description_dialog.py"/>
        <source>one line too long</source>
        <translation>eine Zeile zu lang</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_drawing.py"/>
        <source>one not saved yet</source>
        <translation>ein noch nicht gespeichertes</translation>
    </message>
    <message>
        <location filename="../../desk/event_settings.py"/>
        <location filename="../../model/event.py"/>
        <source>one tee</source>
        <translation>ein Abschlag</translation>
    </message>
    <message>
        <location filename="../../store/scorecard.py"/>
        <source>only {count} cells where the first line has {wanted}</source>
        <translation>nur {count} Zellen, die erste Zeile hat {wanted}</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <location filename="../../model/notes.py"/>
        <source>other</source>
        <translation>andere</translation>
    </message>
    <message>
        <location filename="../../measure/hole.py"/>
        <source>other greens of this hole are left aside: feature {numbers}</source>
        <translation>andere Grüns dieser Bahn bleiben außer Betracht: Objekt {numbers}</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <location filename="../../desk/map_marks.py"/>
        <location filename="../../model/kinds.py"/>
        <source>ours</source>
        <translation>unsere</translation>
    </message>
    <message>
        <location filename="../../model/notes.py"/>
        <source>own visit</source>
        <translation>eigener Besuch</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>page of the guide</source>
        <translation>Seite des Buchs</translation>
    </message>
    <message>
        <location filename="../../store/scorecard.py"/>
        <location filename="../../store/styling.py"/>
        <source>par</source>
        <translation>Par</translation>
    </message>
    <message>
        <location filename="../../desk/courses.py"/>
        <source>par {}</source>
        <translation>Par {}</translation>
    </message>
    <message>
        <location filename="../../desk/drawing_bar.py"/>
        <location filename="../../model/kinds.py"/>
        <source>partly hidden</source>
        <translation>teilweise verdeckt</translation>
    </message>
    <message>
        <location filename="../../store/committee.py"/>
        <source>pasted text</source>
        <translation>eingefügter Text</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>patch from another date</source>
        <translation>Stück aus anderem Bilddatum</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>path</source>
        <translation>Weg</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>penalty area</source>
        <translation>Penalty Area</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>penalty_area</source>
        <translation>Penalty Area</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>permanent tee marker</source>
        <translation>Abschlagplatte</translation>
    </message>
    <message>
        <location filename="../../guide/hole_overlay.py"/>
        <source>picture of hole {number}: no room for {labels}</source>
        <translation>Bild von Bahn {number}: kein Platz für {labels}</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>pin</source>
        <translation>Lochposition</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>plate</source>
        <translation>Abschlagplatte</translation>
    </message>
    <message>
        <location filename="../../desk/hole_drawing.py"/>
        <source>play {}</source>
        <translation>{} spielen</translation>
    </message>
    <message>
        <location filename="../../model/notes.py"/>
        <source>player</source>
        <translation>Spieler</translation>
    </message>
    <message>
        <location filename="../../desk/length_table.py"/>
        <source>plays {}</source>
        <translation>spielt {}</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>png keeps every pixel as it is; jpeg makes smaller files, white where the image ends.</source>
        <translation>png behält jedes Pixel, wie es ist; jpeg ergibt kleinere Dateien, weiß, wo das Bild endet.</translation>
    </message>
    <message>
        <location filename="../../measure/hole.py"/>
        <location filename="../../model/kinds.py"/>
        <location filename="../../store/bring_in.py"/>
        <source>point</source>
        <translation>Punkt</translation>
    </message>
    <message>
        <location filename="../../store/bring_in.py"/>
        <source>points</source>
        <translation>Punkte</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_rows.py"/>
        <source>practice</source>
        <translation>Übung</translation>
    </message>
    <message>
        <location filename="../../store/openstreetmap.py"/>
        <source>practice ground is not part of a hole</source>
        <translation>Übungsgelände gehört zu keiner Bahn</translation>
    </message>
    <message>
        <location filename="../../model/notes.py"/>
        <source>professional</source>
        <translation>Pro</translation>
    </message>
    <message>
        <location filename="../../desk/hole_drawing.py"/>
        <source>reach {}</source>
        <translation>bis {}</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>red</source>
        <translation>rot</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>repair</source>
        <translation>Reparatur</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <location filename="../../desk/pin_table.py"/>
        <location filename="../../desk/pointer.py"/>
        <location filename="../../measure/fair.py"/>
        <location filename="../../model/event.py"/>
        <location filename="../../model/kinds.py"/>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <location filename="../../guide/sheet_cells.py"/>
        <source>right of centre</source>
        <translation>rechts der Mitte</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>rough</source>
        <translation>Rough</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>round of an event</source>
        <translation>Runde eines Wettspiels</translation>
    </message>
    <message>
        <location filename="../../guide/book.py"/>
        <location filename="../../guide/sheets.py"/>
        <source>round {number} has no pin yet</source>
        <translation>Runde {number} hat noch keine Lochposition</translation>
    </message>
    <message>
        <location filename="../../guide/book.py"/>
        <source>round {round}: {remark}</source>
        <translation>Runde {round}: {remark}</translation>
    </message>
    <message>
        <location filename="../../desk/bring_lengths.py"/>
        <location filename="../../desk/bring_pins.py"/>
        <source>round {} does not play hole {}</source>
        <translation>in Runde {} wird Bahn {} nicht gespielt</translation>
    </message>
    <message>
        <location filename="../../measure/pin_audit.py"/>
        <source>same</source>
        <translation>gleich</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>scorecard</source>
        <translation>Scorekarte</translation>
    </message>
    <message>
        <location filename="../../processing/make_guide.py"/>
        <source>screen: for the phone, with bookmarks and links. pages: single pages with bleed for a printer. booklet: sheets with two pages a side, to be printed on both sides, folded and stapled.</source>
        <translation>screen: fürs Telefon, mit Lesezeichen und Verweisen. pages: einzelne Seiten mit Anschnitt für den Drucker. booklet: Bögen mit zwei Seiten je Seite, beidseitig zu drucken, zu falten und zu klammern.</translation>
    </message>
    <message>
        <location filename="../../guide/registrations.py"/>
        <source>set aside as an outlier</source>
        <translation>als Ausreißer verworfen</translation>
    </message>
    <message>
        <location filename="../../desk/residuals.py"/>
        <source>set aside: its neighbours say otherwise</source>
        <translation>beiseite: die Nachbarn sagen anderes</translation>
    </message>
    <message>
        <location filename="../../desk/residuals.py"/>
        <location filename="../../guide/registrations.py"/>
        <source>set by hand</source>
        <translation>von Hand gesetzt</translation>
    </message>
    <message>
        <location filename="../../measure/hole.py"/>
        <source>several plates of this set: feature {taken} is taken, not {others}</source>
        <translation>mehrere Abschlagplatten dieses Sets: Objekt {taken} wird genommen, nicht {others}</translation>
    </message>
    <message>
        <location filename="../../measure/hole.py"/>
        <source>several tees of this set: feature {taken} is taken, not {others}</source>
        <translation>mehrere Abschläge dieses Sets: Objekt {taken} wird genommen, nicht {others}</translation>
    </message>
    <message>
        <location filename="../../desk/composing_dialog.py"/>
        <source>shade lightened in place</source>
        <translation>Schatten an Ort und Stelle aufgehellt</translation>
    </message>
    <message>
        <location filename="../../imagery/composing.py"/>
        <source>shade that could not be lightened</source>
        <translation>Schatten, der nicht aufgehellt werden konnte</translation>
    </message>
    <message>
        <location filename="../../desk/registering.py"/>
        <location filename="../../guide/registrations.py"/>
        <source>shifted</source>
        <translation>verschoben</translation>
    </message>
    <message>
        <location filename="../../desk/registering.py"/>
        <source>shifted and turned</source>
        <translation>verschoben, gedreht</translation>
    </message>
    <message>
        <location filename="../../guide/registrations.py"/>
        <source>shifted from place to place</source>
        <translation>von Ort zu Ort verschoben</translation>
    </message>
    <message>
        <location filename="../../guide/registrations.py"/>
        <source>shifted, turned and stretched</source>
        <translation>verschoben, gedreht und gestreckt</translation>
    </message>
    <message>
        <location filename="../../measure/par.py"/>
        <source>short for par {par}</source>
        <translation>kurz für Par {par}</translation>
    </message>
    <message>
        <location filename="../../measure/tee_setting.py"/>
        <source>shorter than the tee allows: at its front it plays {distance}</source>
        <translation>kürzer, als der Abschlag zulässt: An seiner Vorderkante sind es {distance}</translation>
    </message>
    <message>
        <location filename="../../desk/event_settings.py"/>
        <location filename="../../model/event.py"/>
        <source>shotgun</source>
        <translation>Kanonenstart</translation>
    </message>
    <message>
        <location filename="../../guide/registrations.py"/>
        <source>so long: {metres} m still to be moved; at most {most} m</source>
        <translation>so lang: noch um {metres} m zu verschieben; höchstens {most} m</translation>
    </message>
    <message>
        <location filename="../../store/vector_source.py"/>
        <source>something else</source>
        <translation>etwas anderes</translation>
    </message>
    <message>
        <location filename="../../desk/registering.py"/>
        <source>south</source>
        <translation>Süden</translation>
    </message>
    <message>
        <location filename="../../desk/registering.py"/>
        <source>south-east</source>
        <translation>Südosten</translation>
    </message>
    <message>
        <location filename="../../desk/registering.py"/>
        <source>south-west</source>
        <translation>Südwesten</translation>
    </message>
    <message>
        <location filename="../../measure/hole.py"/>
        <source>start of the line</source>
        <translation>Beginn der Linie</translation>
    </message>
    <message>
        <location filename="../../measure/markers.py"/>
        <source>states no distance</source>
        <translation>gibt keine Entfernung an</translation>
    </message>
    <message>
        <location filename="../../desk/hole_drawing.py"/>
        <source>states {}</source>
        <translation>Angabe {}</translation>
    </message>
    <message>
        <location filename="../../desk/composing_dialog.py"/>
        <location filename="../../imagery/composite_file.py"/>
        <source>still hidden</source>
        <translation>noch verdeckt</translation>
    </message>
    <message>
        <location filename="../../store/scorecard.py"/>
        <source>stroke index</source>
        <translation>Stroke Index</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>stroke index {}</source>
        <translation>Stroke Index {}</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>target</source>
        <translation>Zielpunkt</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <location filename="../../guide/ladder.py"/>
        <location filename="../../measure/hole.py"/>
        <location filename="../../model/kinds.py"/>
        <source>tee</source>
        <translation>Abschlag</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>tee set</source>
        <translation>Abschlagset</translation>
    </message>
    <message>
        <location filename="../../measure/hole.py"/>
        <source>tee {number}</source>
        <translation>Abschlag {number}</translation>
    </message>
    <message>
        <location filename="../../measure/checklist.py"/>
        <source>the approach depends on it</source>
        <translation>davon hängt die Annäherung ab</translation>
    </message>
    <message>
        <location filename="../../measure/hole.py"/>
        <source>the approach line cuts the green in {count} pieces: {cuts} {unit}</source>
        <translation>die Annäherungslinie schneidet das Grün in {count} Stücken: {cuts} {unit}</translation>
    </message>
    <message>
        <location filename="../../measure/pins.py"/>
        <source>the approach line lies outside the green there: off counts in the nearest piece</source>
        <translation>die Annäherungslinie liegt dort außerhalb des Grüns: seitlich zählt das nächste Stück</translation>
    </message>
    <message>
        <location filename="../../measure/green.py"/>
        <source>the approach line's longest cut is taken, since none holds the green's anchor</source>
        <translation>der längste Schnitt der Annäherungslinie wird genommen, da keiner den Ankerpunkt des Grüns enthält</translation>
    </message>
    <message>
        <location filename="../../measure/green.py"/>
        <source>the approach point lies on the green</source>
        <translation>der Annäherungspunkt liegt auf dem Grün</translation>
    </message>
    <message>
        <location filename="../../measure/pin_audit.py"/>
        <source>the committee has the green {theirs} deep, it is {ours}</source>
        <translation>laut Spielleitung ist das Grün {theirs} tief, gemessen sind {ours}</translation>
    </message>
    <message>
        <location filename="../../measure/pin_audit.py"/>
        <source>the committee has {count} pins for this hole and round</source>
        <translation>die Spielleitung nennt {count} Lochpositionen für diese Bahn und Runde</translation>
    </message>
    <message>
        <location filename="../../store/bring_in.py"/>
        <source>the course already has it</source>
        <translation>der Platz hat es schon</translation>
    </message>
    <message>
        <location filename="../../guide/rules.py"/>
        <source>the course does not say whether the image “{image}” may be printed</source>
        <translation>der Platz sagt nicht, ob das Bild „{image}“ gedruckt werden darf</translation>
    </message>
    <message>
        <location filename="../../measure/pins.py"/>
        <location filename="../../measure/tee_setting.py"/>
        <location filename="../../store/committee.py"/>
        <source>the course has no hole {number}</source>
        <translation>der Platz hat keine Bahn {number}</translation>
    </message>
    <message>
        <location filename="../../guide/hole_page.py"/>
        <source>the credit on the page of hole {number} is cut short</source>
        <translation>der Bildnachweis auf der Seite von Bahn {number} ist gekürzt</translation>
    </message>
    <message>
        <location filename="../../guide/hole_page.py"/>
        <source>the description of hole {number} is too long for its place</source>
        <translation>die Beschreibung von Bahn {number} ist zu lang für ihren Platz</translation>
    </message>
    <message>
        <location filename="../../guide/page_templates.py"/>
        <source>the disk may be full</source>
        <translation>der Datenträger ist vielleicht voll</translation>
    </message>
    <message>
        <location filename="../../measure/pin_audit.py"/>
        <source>the drawn off counts from {side}</source>
        <translation>das gezeichnete seitliche Maß zählt ab: {side}</translation>
    </message>
    <message>
        <location filename="../../measure/tee_setting.py"/>
        <location filename="../../store/committee.py"/>
        <source>the event has no flight “{name}”</source>
        <translation>das Wettspiel hat keinen Flight „{name}“</translation>
    </message>
    <message>
        <location filename="../../measure/tee_setting.py"/>
        <source>the event has no flight “{name}”: the tee set of that name is taken</source>
        <translation>das Wettspiel hat keinen Flight „{name}“: Das Abschlagset dieses Namens wird genommen</translation>
    </message>
    <message>
        <location filename="../../measure/pins.py"/>
        <location filename="../../measure/tee_setting.py"/>
        <location filename="../../store/committee.py"/>
        <source>the event has no round {number}</source>
        <translation>das Wettspiel hat keine Runde {number}</translation>
    </message>
    <message>
        <location filename="../../measure/pin_audit.py"/>
        <location filename="../../measure/pins.py"/>
        <source>the event has {count} pins for this hole and round</source>
        <translation>das Wettspiel hat {count} Lochpositionen für diese Bahn und Runde</translation>
    </message>
    <message>
        <location filename="../../guide/expressions.py"/>
        <source>the event’s name</source>
        <translation>der Name des Wettspiels</translation>
    </message>
    <message>
        <location filename="../../imagery/image.py"/>
        <location filename="../../imagery/terrain.py"/>
        <source>the file seems damaged</source>
        <translation>die Datei scheint beschädigt</translation>
    </message>
    <message>
        <location filename="../../guide/sponsor_pages.py"/>
        <source>the file “{file}” is not there</source>
        <translation>die Datei „{file}“ ist nicht da</translation>
    </message>
    <message>
        <location filename="../../measure/tee_setting.py"/>
        <source>the flight names no tee set</source>
        <translation>der Flight nennt kein Abschlagset</translation>
    </message>
    <message>
        <location filename="../../measure/tee_setting.py"/>
        <source>the flight names no tee set: the one of its own name is taken</source>
        <translation>der Flight nennt kein Abschlagset: Das seines eigenen Namens wird genommen</translation>
    </message>
    <message>
        <location filename="../../guide/expressions.py"/>
        <source>the flight’s name</source>
        <translation>der Name der Gruppe</translation>
    </message>
    <message>
        <location filename="../../measure/pins.py"/>
        <source>the ground falls {slope} % here, more than {most} %</source>
        <translation>der Boden fällt hier um {slope} %, mehr als {most} %</translation>
    </message>
    <message>
        <location filename="../../measure/pins.py"/>
        <source>the heights do not reach here</source>
        <translation>für diese Stelle liegen keine Höhen vor</translation>
    </message>
    <message>
        <location filename="../../measure/markers.py"/>
        <location filename="../../measure/pins.py"/>
        <location filename="../../measure/tee_setting.py"/>
        <source>the hole has no green</source>
        <translation>die Bahn hat kein Grün</translation>
    </message>
    <message>
        <location filename="../../measure/pins.py"/>
        <source>the hole is not played in round {number}</source>
        <translation>die Bahn wird in Runde {number} nicht gespielt</translation>
    </message>
    <message>
        <location filename="../../measure/tee_setting.py"/>
        <source>the hole is not played in this round</source>
        <translation>die Bahn wird in dieser Runde nicht gespielt</translation>
    </message>
    <message>
        <location filename="../../store/openstreetmap.py"/>
        <source>the hole location is cut anew every day, so it is not kept with the course</source>
        <translation>die Lochposition wird täglich neu gesetzt und gehört deshalb nicht zum Platz</translation>
    </message>
    <message>
        <location filename="../../store/scorecard.py"/>
        <source>the hole's number is missing</source>
        <translation>die Nummer der Bahn fehlt</translation>
    </message>
    <message>
        <location filename="../../guide/expressions.py"/>
        <source>the hole’s number</source>
        <translation>die Nummer der Bahn</translation>
    </message>
    <message>
        <location filename="../../guide/book.py"/>
        <source>the image does not reach hole {number}</source>
        <translation>Das Bild reicht nicht bis Bahn {number}</translation>
    </message>
    <message>
        <location filename="../../guide/event_archive.py"/>
        <source>the image “{image}” is not in the archive</source>
        <translation>das Bild „{image}“ ist nicht im Archiv</translation>
    </message>
    <message>
        <location filename="../../guide/event_archive.py"/>
        <source>the image “{image}” may not be printed ({licence}): see that it may be passed on</source>
        <translation>das Bild „{image}“ darf nicht gedruckt werden ({licence}): darauf achten, dass es weitergegeben werden darf</translation>
    </message>
    <message>
        <location filename="../../model/guide_pages.py"/>
        <source>the imprint holds the cautions and the credits and comes last</source>
        <translation>das Impressum enthält die Hinweise und die Bildnachweise und steht zuletzt</translation>
    </message>
    <message>
        <location filename="../../store/course_file.py"/>
        <location filename="../../store/upgrade.py"/>
        <source>the last step failed</source>
        <translation>der letzte Schritt schlug fehl</translation>
    </message>
    <message>
        <location filename="../../store/scorecard.py"/>
        <source>the length {value} from {tee_set} is not between {low} and {high} yd</source>
        <translation>die Länge {value} ab {tee_set} liegt nicht zwischen {low} und {high} yd</translation>
    </message>
    <message>
        <location filename="../../store/committee.py"/>
        <source>the length {value} is not between {low} and {high} yd</source>
        <translation>die Länge {value} liegt nicht zwischen {low} und {high} yd</translation>
    </message>
    <message>
        <location filename="../../store/scorecard.py"/>
        <source>the length “{value}” from {tee_set} is not a number</source>
        <translation>die Länge „{value}“ ab {tee_set} ist keine Zahl</translation>
    </message>
    <message>
        <location filename="../../measure/hole.py"/>
        <source>the line is drawn from green to tee: it is turned round</source>
        <translation>die Linie ist vom Grün zum Abschlag gezeichnet: Sie wird umgekehrt</translation>
    </message>
    <message>
        <location filename="../../measure/fairways.py"/>
        <source>the line of play does not cross the fairway</source>
        <translation>die Spiellinie kreuzt das Fairway nicht</translation>
    </message>
    <message>
        <location filename="../../store/reading.py"/>
        <source>the line of play is in several parts; the longest was taken</source>
        <translation>die Spiellinie besteht aus mehreren Teilen; der längste wurde genommen</translation>
    </message>
    <message>
        <location filename="../../measure/hole.py"/>
        <source>the line of play is shorter than {distance} yd: the approach is taken from its start</source>
        <translation>die Spiellinie ist kürzer als {distance} yd: Die Annäherung wird von ihrem Beginn genommen</translation>
    </message>
    <message>
        <location filename="../../measure/fairways.py"/>
        <source>the line of play lies off the fairway here</source>
        <translation>die Spiellinie liegt hier neben dem Fairway</translation>
    </message>
    <message>
        <location filename="../../measure/pins.py"/>
        <source>the line square to the approach cuts the green in {count} pieces there</source>
        <translation>die Linie quer zur Annäherung schneidet das Grün dort in {count} Stücken</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>the middle of a pair of posts</source>
        <translation>die Mitte eines Pfostenpaars</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>the middle of a pair of posts (see post {number})</source>
        <translation>die Mitte eines Pfostenpaars (siehe Pfosten {number})</translation>
    </message>
    <message>
        <location filename="../../guide/expressions.py"/>
        <source>the name of a tee set</source>
        <translation>der Name eines Abschlagsets</translation>
    </message>
    <message>
        <location filename="../../guide/hole_page.py"/>
        <source>the name of hole {number} is cut short</source>
        <translation>der Name von Bahn {number} ist gekürzt</translation>
    </message>
    <message>
        <location filename="../../guide/sheets.py"/>
        <source>the nearest length this tee allows</source>
        <translation>die nächste Länge, die dieser Abschlag zulässt</translation>
    </message>
    <message>
        <location filename="../../guide/green_panel.py"/>
        <location filename="../../guide/sheets.py"/>
        <source>the number of round {round} finds no room on hole {number}</source>
        <translation>die Nummer der Runde {round} findet auf Bahn {number} keinen Platz</translation>
    </message>
    <message>
        <location filename="../../store/reading.py"/>
        <source>the outline crosses or touches itself and was mended</source>
        <translation>der Umriss kreuzt oder berührt sich selbst und wurde bereinigt</translation>
    </message>
    <message>
        <location filename="../../store/openstreetmap.py"/>
        <source>the outline of the property is not out of bounds everywhere; it only showed which water and trees lie on the course</source>
        <translation>der Umriss des Grundstücks ist nicht überall Aus; er zeigte nur, welche Gewässer und Gehölze auf dem Platz liegen</translation>
    </message>
    <message>
        <location filename="../../guide/event_archive.py"/>
        <source>the photograph “{file}” is not there</source>
        <translation>das Foto „{file}“ ist nicht da</translation>
    </message>
    <message>
        <location filename="../../guide/green_panel.py"/>
        <location filename="../../guide/sheets.py"/>
        <source>the pin of round {round} is not on or near the green of hole {hole}</source>
        <translation>die Lochposition der Runde {round} liegt nicht auf dem Grün von Bahn {hole} oder nahe daran</translation>
    </message>
    <message>
        <location filename="../../measure/markers.py"/>
        <source>the place proposed lies on the other side of a bend, where it measures {distance}</source>
        <translation>die vorgeschlagene Stelle liegt jenseits eines Knicks, dort misst sie {distance}</translation>
    </message>
    <message>
        <location filename="../../measure/pins.py"/>
        <source>the point drawn lies {distance} from its figures, which are followed (was the green redrawn, or the point moved?)</source>
        <translation>der gezeichnete Punkt liegt {distance} neben seinen Maßen; die Maße gelten (wurde das Grün neu gezeichnet oder der Punkt verschoben?)</translation>
    </message>
    <message>
        <location filename="../../measure/markers.py"/>
        <source>the posts state different distances, the first is taken</source>
        <translation>die Pfosten geben verschiedene Entfernungen an, die erste wird genommen</translation>
    </message>
    <message>
        <location filename="../../store/openstreetmap.py"/>
        <source>the range is not part of a hole</source>
        <translation>die Driving Range gehört zu keiner Bahn</translation>
    </message>
    <message>
        <location filename="../../guide/expressions.py"/>
        <source>the round’s number</source>
        <translation>die Nummer der Runde</translation>
    </message>
    <message>
        <location filename="../../measure/checklist.py"/>
        <source>the scorecard gives it</source>
        <translation>die Scorekarte nennt ihn</translation>
    </message>
    <message>
        <location filename="../../guide/sheets.py"/>
        <source>the slope at the pins helps to read the greens: see first whether the Local Rules let a player carry it</source>
        <translation>das Gefälle an den Lochpositionen hilft beim Lesen der Grüns: vorher nachsehen, ob die Platzregeln Spielern erlauben, es mitzuführen</translation>
    </message>
    <message>
        <location filename="../../measure/cutting.py"/>
        <source>the slope is not known on all of the green</source>
        <translation>die Neigung ist nicht auf dem ganzen Grün bekannt</translation>
    </message>
    <message>
        <location filename="../../measure/markers.py"/>
        <source>the stated distance ends past the bend: it cannot be moved along its bearing</source>
        <translation>die angegebene Entfernung endet hinter dem Knick: Sie kann nicht in ihrer Richtung versetzt werden</translation>
    </message>
    <message>
        <location filename="../../store/events.py"/>
        <source>the table event has no row for “{name}”</source>
        <translation>die Tabelle event hat keine Zeile für „{name}“</translation>
    </message>
    <message>
        <location filename="../../desk/hole_panel.py"/>
        <location filename="../../desk/measure_dialog.py"/>
        <location filename="../../measure/findings.py"/>
        <source>the tee</source>
        <translation>Abschlag</translation>
    </message>
    <message>
        <location filename="../../measure/tee_setting.py"/>
        <source>the tee holds the asked length about {distance} to the left</source>
        <translation>etwa {distance} links davon hat der Abschlag die gewünschte Länge</translation>
    </message>
    <message>
        <location filename="../../measure/tee_setting.py"/>
        <source>the tee holds the asked length about {distance} to the right</source>
        <translation>etwa {distance} rechts davon hat der Abschlag die gewünschte Länge</translation>
    </message>
    <message>
        <location filename="../../measure/hole.py"/>
        <source>the tee names no tee set</source>
        <translation>der Abschlag nennt kein Abschlagset</translation>
    </message>
    <message>
        <location filename="../../measure/heights.py"/>
        <source>the terrain does not reach every turn point</source>
        <translation>das Geländemodell reicht nicht bis zu jedem Knickpunkt</translation>
    </message>
    <message>
        <location filename="../../measure/heights.py"/>
        <source>the terrain does not reach the approach point</source>
        <translation>das Geländemodell reicht nicht bis zum Annäherungspunkt</translation>
    </message>
    <message>
        <location filename="../../measure/heights.py"/>
        <source>the terrain does not reach the end of the line of play</source>
        <translation>das Geländemodell reicht nicht bis zum Ende der Spiellinie</translation>
    </message>
    <message>
        <location filename="../../measure/heights.py"/>
        <source>the terrain does not reach the green</source>
        <translation>das Geländemodell reicht nicht bis zum Grün</translation>
    </message>
    <message>
        <location filename="../../measure/heights.py"/>
        <source>the terrain does not reach the tee</source>
        <translation>das Geländemodell reicht nicht bis zum Abschlag</translation>
    </message>
    <message>
        <location filename="../../measure/heights.py"/>
        <source>the terrain does not reach this hole</source>
        <translation>das Geländemodell reicht nicht bis zu dieser Bahn</translation>
    </message>
    <message>
        <location filename="../../measure/heights.py"/>
        <source>the terrain reaches only a part of the green</source>
        <translation>das Geländemodell erfasst nur einen Teil des Grüns</translation>
    </message>
    <message>
        <location filename="../../store/events.py"/>
        <location filename="../../store/reading.py"/>
        <source>the text in holes was not understood: {reason}</source>
        <translation>der Text in holes wurde nicht verstanden: {reason}</translation>
    </message>
    <message>
        <location filename="../../guide/page_layouts.py"/>
        <source>the text is one line too long</source>
        <translation>der Text ist eine Zeile zu lang</translation>
    </message>
    <message>
        <location filename="../../guide/page_layouts.py"/>
        <source>the text is {count} lines too long</source>
        <translation>der Text ist {count} Zeilen zu lang</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <location filename="../../desk/map_marks.py"/>
        <location filename="../../model/kinds.py"/>
        <source>theirs</source>
        <translation>ihre</translation>
    </message>
    <message>
        <location filename="../../store/reading.py"/>
        <source>there is another hole {number} (feature {kept}); this one was left out</source>
        <translation>es gibt eine andere Bahn {number} (Objekt {kept}); diese wurde ausgelassen</translation>
    </message>
    <message>
        <location filename="../../store/reading.py"/>
        <source>there is another image “{name}”</source>
        <translation>es gibt ein anderes Bild „{name}“</translation>
    </message>
    <message>
        <location filename="../../store/events.py"/>
        <source>there is another one for the same</source>
        <translation>es gibt schon eine Zeile für dasselbe</translation>
    </message>
    <message>
        <location filename="../../store/reading.py"/>
        <source>there is another tee set “{name}”</source>
        <translation>es gibt ein anderes Abschlagset „{name}“</translation>
    </message>
    <message>
        <location filename="../../store/openstreetmap.py"/>
        <source>there is no layer for golf={tag}</source>
        <translation>es gibt keinen Layer für golf={tag}</translation>
    </message>
    <message>
        <location filename="../../imagery/composing.py"/>
        <source>too large to be filled from its surroundings</source>
        <translation>zu groß, um aus der Umgebung aufgefüllt zu werden</translation>
    </message>
    <message>
        <location filename="../../desk/residuals.py"/>
        <source>took part in the fit</source>
        <translation>am Einpassen beteiligt</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>tree</source>
        <translation>Baum</translation>
    </message>
    <message>
        <location filename="../../guide/hole_page.py"/>
        <location filename="../../model/kinds.py"/>
        <source>trees</source>
        <translation>Gehölz</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>true</source>
        <translation>stimmt</translation>
    </message>
    <message>
        <location filename="../../desk/map_figures.py"/>
        <source>turn at {0}, {1} to go</source>
        <translation>Knick bei {0}, noch {1}</translation>
    </message>
    <message>
        <location filename="../../desk/hole_drawing.py"/>
        <source>turns at {}</source>
        <translation>Knick bei {}</translation>
    </message>
    <message>
        <location filename="../../desk/event_settings.py"/>
        <location filename="../../model/event.py"/>
        <source>two tees</source>
        <translation>zwei Abschläge</translation>
    </message>
    <message>
        <location filename="../../measure/accuracy.py"/>
        <source>uncertain: ± {figure} {unit}</source>
        <translation>unsicher: ± {figure} {unit}</translation>
    </message>
    <message>
        <location filename="../../imagery/composite_file.py"/>
        <location filename="../../imagery/window.py"/>
        <source>unknown reason</source>
        <translation>unbekannter Grund</translation>
    </message>
    <message>
        <location filename="../../store/vector_source.py"/>
        <source>unnamed</source>
        <translation>ohne Namen</translation>
    </message>
    <message>
        <location filename="../../desk/slope_shading.py"/>
        <source>up to {} %</source>
        <translation>bis {} %</translation>
    </message>
    <message>
        <location filename="../../store/openstreetmap.py"/>
        <source>water drawn as a line has no width: draw its banks as a penalty area</source>
        <translation>als Linie gezeichnetes Wasser hat keine Breite: die Ufer als Penalty Area zeichnen</translation>
    </message>
    <message>
        <location filename="../../guide/hole_page.py"/>
        <source>water, penalty area</source>
        <translation>Wasser, Penalty Area</translation>
    </message>
    <message>
        <location filename="../../desk/registering.py"/>
        <source>west</source>
        <translation>Westen</translation>
    </message>
    <message>
        <location filename="../../desk/take_up_dialog.py"/>
        <source>what its owner allows, and where that is written</source>
        <translation>was der Eigentümer erlaubt, und wo das steht</translation>
    </message>
    <message>
        <location filename="../../guide/expressions.py"/>
        <source>what the thing is called on the course</source>
        <translation>wie die Sache auf dem Platz heißt</translation>
    </message>
    <message>
        <location filename="../../guide/book.py"/>
        <source>whether the image “{image}” may be printed is not known: it is none of the course’s dates</source>
        <translation>Ob das Bild „{image}“ gedruckt werden darf, ist nicht bekannt: Es ist keiner der Aufnahmetage des Platzes</translation>
    </message>
    <message>
        <location filename="../../desk/take_up_dialog.py"/>
        <source>who is to be named beside it</source>
        <translation>wer daneben zu nennen ist</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>window</source>
        <translation>Bildausschnitt</translation>
    </message>
    <message>
        <location filename="../../desk/dates.py"/>
        <source>without a day</source>
        <translation>ohne Tag</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>women</source>
        <translation>Damen</translation>
    </message>
    <message>
        <location filename="../../guide/hole_page.py"/>
        <source>yards</source>
        <translation>Yards</translation>
    </message>
    <message>
        <location filename="../../processing/start_course.py"/>
        <source>yd or m; it can be changed later.</source>
        <translation>yd oder m; lässt sich später ändern.</translation>
    </message>
    <message>
        <location filename="../../desk/event_settings.py"/>
        <source>year-month-day</source>
        <translation>Jahr-Monat-Tag</translation>
    </message>
    <message>
        <location filename="../../model/kinds.py"/>
        <source>yellow</source>
        <translation>gelb</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <location filename="../../desk/figures.py"/>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <location filename="../../desk/map_figures.py"/>
        <source>{0} deep, {1} wide</source>
        <translation>{0} tief, {1} breit</translation>
    </message>
    <message>
        <location filename="../../desk/map_figures.py"/>
        <source>{0} measures {1}</source>
        <translation>{0} misst {1}</translation>
    </message>
    <message>
        <location filename="../../desk/map_figures.py"/>
        <source>{0} · {1} · {2}</source>
        <translation>{0} · {1} · {2}</translation>
    </message>
    <message>
        <location filename="../../desk/map_figures.py"/>
        <source>{0} – {1}</source>
        <translation>{0} – {1}</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>{:.2f} square {}</source>
        <translation>{:.2f} {}²</translation>
    </message>
    <message>
        <location filename="../../store/committee.py"/>
        <source>{column} is 0</source>
        <translation>{column} ist 0</translation>
    </message>
    <message>
        <location filename="../../store/committee.py"/>
        <source>{column} is missing</source>
        <translation>{column} fehlt</translation>
    </message>
    <message>
        <location filename="../../store/committee.py"/>
        <source>{column} {value} is below zero</source>
        <translation>{column} {value} liegt unter null</translation>
    </message>
    <message>
        <location filename="../../store/committee.py"/>
        <source>{column} “{value}” is not a number</source>
        <translation>{column} „{value}“ ist keine Zahl</translation>
    </message>
    <message>
        <location filename="../../store/openstreetmap.py"/>
        <source>{count} areas of water or trees were passed over: without a hole or the outline of the course in the same file nothing tells which of them lie on the course.</source>
        <translation>{count} Flächen mit Wasser oder Gehölz wurden übergangen: Ohne eine Bahn oder den Umriss des Platzes in derselben Datei ist nicht erkennbar, welche auf dem Platz liegen.</translation>
    </message>
    <message>
        <location filename="../../store/scorecard.py"/>
        <source>{count} cells where the first line has {wanted}</source>
        <translation>{count} Zellen, die erste Zeile hat {wanted}</translation>
    </message>
    <message>
        <location filename="../../store/committee.py"/>
        <source>{count} cells where the headings are {wanted}</source>
        <translation>{count} Zellen, wo es {wanted} Überschriften gibt</translation>
    </message>
    <message>
        <location filename="../../store/vector_source.py"/>
        <source>{count} features lie outside the extent and were passed over.</source>
        <translation>{count} Objekte liegen außerhalb der Ausdehnung und wurden übergangen.</translation>
    </message>
    <message>
        <location filename="../../store/openstreetmap.py"/>
        <source>{count} golf features lie outside the extent and were passed over.</source>
        <translation>{count} Golfobjekte liegen außerhalb der Ausdehnung und wurden übergangen.</translation>
    </message>
    <message>
        <location filename="../../guide/registrations.py"/>
        <source>{count} {role}</source>
        <translation>{count} {role}</translation>
    </message>
    <message>
        <location filename="../../store/course_file.py"/>
        <source>{crs} is not a system for places on a map.</source>
        <translation>{crs} ist kein System für Orte auf einer Karte.</translation>
    </message>
    <message>
        <location filename="../../imagery/registration.py"/>
        <source>{date} and {base} are not alike: of {seen} places compared, {found} could be told again.</source>
        <translation>{date} und {base} ähneln sich nicht: Von {seen} verglichenen Stellen waren {found} wiederzuerkennen.</translation>
    </message>
    <message>
        <location filename="../../imagery/registration.py"/>
        <source>{date} and {base} have too little ground in common to be registered.</source>
        <translation>{date} und {base} haben zum Einpassen zu wenig gemeinsames Gelände.</translation>
    </message>
    <message>
        <location filename="../../imagery/registration.py"/>
        <source>{date} and {base} show no common ground of the course.</source>
        <translation>{date} und {base} zeigen kein gemeinsames Gelände des Platzes.</translation>
    </message>
    <message>
        <location filename="../../guide/composites.py"/>
        <source>{date} cannot be the base: {reason}.</source>
        <translation>{date} kann nicht die Grundlage sein: {reason}.</translation>
    </message>
    <message>
        <location filename="../../imagery/composing.py"/>
        <source>{date} could not be used: {what}</source>
        <translation>{date} war nicht verwendbar: {what}</translation>
    </message>
    <message>
        <location filename="../../guide/composites.py"/>
        <source>{date} is not registered: what is taken from it may lie beside its place.</source>
        <translation>{date} ist nicht eingepasst: Was daraus kommt, kann neben seinem Ort liegen.</translation>
    </message>
    <message>
        <location filename="../../guide/composites.py"/>
        <source>{date} of the recipe is not used.</source>
        <translation>{date} des Rezepts wird nicht verwendet.</translation>
    </message>
    <message>
        <location filename="../../guide/registrations.py"/>
        <source>{date} on {base}</source>
        <translation>{date} auf {base}</translation>
    </message>
    <message>
        <location filename="../../imagery/composing.py"/>
        <source>{date} shows nothing of this ground.</source>
        <translation>{date} zeigt nichts von diesem Boden.</translation>
    </message>
    <message>
        <location filename="../../guide/composites.py"/>
        <source>{date} was left out: {reason}.</source>
        <translation>{date} wurde ausgelassen: {reason}.</translation>
    </message>
    <message>
        <location filename="../../imagery/composing.py"/>
        <source>{date}: {remark}</source>
        <translation>{date}: {remark}</translation>
    </message>
    <message>
        <location filename="../../guide/green_panel.py"/>
        <source>{depth} deep</source>
        <translation>{depth} tief</translation>
    </message>
    <message>
        <location filename="../../guide/green_panel.py"/>
        <source>{depth} deep · {width} wide</source>
        <translation>{depth} tief · {width} breit</translation>
    </message>
    <message>
        <location filename="../../guide/sheets.py"/>
        <source>{distance} L</source>
        <translation>{distance} L</translation>
    </message>
    <message>
        <location filename="../../guide/sheets.py"/>
        <source>{distance} R</source>
        <translation>{distance} R</translation>
    </message>
    <message>
        <location filename="../../guide/sheets.py"/>
        <source>{distance} ahead</source>
        <translation>{distance} davor</translation>
    </message>
    <message>
        <location filename="../../guide/sheets.py"/>
        <location filename="../../measure/tee_setting.py"/>
        <source>{distance} ahead of the plate</source>
        <translation>{distance} vor der Abschlagplatte</translation>
    </message>
    <message>
        <location filename="../../guide/sheets.py"/>
        <source>{distance} behind</source>
        <translation>{distance} dahinter</translation>
    </message>
    <message>
        <location filename="../../guide/sheets.py"/>
        <location filename="../../measure/tee_setting.py"/>
        <source>{distance} behind the plate</source>
        <translation>{distance} hinter der Abschlagplatte</translation>
    </message>
    <message>
        <location filename="../../guide/sheets.py"/>
        <source>{distance} from front</source>
        <translation>{distance} ab vorn</translation>
    </message>
    <message>
        <location filename="../../measure/pins.py"/>
        <source>{distance} from the margin, less than {least}</source>
        <translation>{distance} vom Rand, weniger als {least}</translation>
    </message>
    <message>
        <location filename="../../measure/tee_setting.py"/>
        <source>{distance} from the markers of round {rounds}: the tee is too narrow to stay clear of them</source>
        <translation>{distance} von den Abschlagmarkierungen der Runde {rounds}: Der Abschlag ist zu schmal, um von ihnen fernzubleiben</translation>
    </message>
    <message>
        <location filename="../../measure/pins.py"/>
        <source>{distance} from the pin of hole {hole} in round {number}, less than {least}</source>
        <translation>{distance} von der Lochposition der Bahn {hole} in Runde {number}, weniger als {least}</translation>
    </message>
    <message>
        <location filename="../../measure/pins.py"/>
        <source>{distance} from the pin of round {number}, less than {least}</source>
        <translation>{distance} von der Lochposition der Runde {number}, weniger als {least}</translation>
    </message>
    <message>
        <location filename="../../measure/course.py"/>
        <source>{distance} longer than the scorecard</source>
        <translation>{distance} länger als auf der Scorekarte</translation>
    </message>
    <message>
        <location filename="../../measure/course.py"/>
        <source>{distance} shorter than the scorecard</source>
        <translation>{distance} kürzer als auf der Scorekarte</translation>
    </message>
    <message>
        <location filename="../../measure/tee_setting.py"/>
        <source>{distance} to the left, clear of the markers of round {rounds}</source>
        <translation>{distance} nach links, fern von den Abschlagmarkierungen der Runde {rounds}</translation>
    </message>
    <message>
        <location filename="../../measure/tee_setting.py"/>
        <source>{distance} to the right, clear of the markers of round {rounds}</source>
        <translation>{distance} nach rechts, fern von den Abschlagmarkierungen der Runde {rounds}</translation>
    </message>
    <message>
        <location filename="../../measure/fair.py"/>
        <source>{easy} easy, {moderate} moderate, {hard} hard: a third of each is wanted</source>
        <translation>{easy} leicht, {moderate} mittel, {hard} schwer: erwünscht ist je ein Drittel</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_rows.py"/>
        <source>{feature} has no hole and lies near none: it is left out.</source>
        <translation>{feature} hat keine Bahn und liegt bei keiner: wird ausgelassen.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_rows.py"/>
        <source>{feature} has no outline: it is left out.</source>
        <translation>{feature} hat keinen Umriss: wird ausgelassen.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_rows.py"/>
        <source>{feature} names hole {numbers}, which is not there.</source>
        <translation>{feature} nennt Bahn {numbers}, die es nicht gibt.</translation>
    </message>
    <message>
        <location filename="../../store/styling.py"/>
        <source>{field} is needed</source>
        <translation>{field} ist nötig</translation>
    </message>
    <message>
        <location filename="../../store/styling.py"/>
        <source>{field} is needed: {limits}</source>
        <translation>{field} ist nötig: {limits}</translation>
    </message>
    <message>
        <location filename="../../store/reading.py"/>
        <source>{field} {value} is not at least {low}</source>
        <translation>{field} {value} ist kleiner als {low}</translation>
    </message>
    <message>
        <location filename="../../store/reading.py"/>
        <source>{field} {value} is not between {low} and {high}</source>
        <translation>{field} {value} liegt nicht zwischen {low} und {high}</translation>
    </message>
    <message>
        <location filename="../../store/events.py"/>
        <source>{field} {value} was not used</source>
        <translation>{field} {value} wurde nicht verwendet</translation>
    </message>
    <message>
        <location filename="../../store/reading.py"/>
        <source>{field} “{value}” is none of {values} and was left out</source>
        <translation>{field} „{value}“ ist keines von {values} und wurde ausgelassen</translation>
    </message>
    <message>
        <location filename="../../store/reading.py"/>
        <source>{field} “{value}” is not a number of its kind and was left out</source>
        <translation>{field} „{value}“ ist keine passende Zahl und wurde ausgelassen</translation>
    </message>
    <message>
        <location filename="../../store/styling.py"/>
        <source>{field}: {limits}</source>
        <translation>{field}: {limits}</translation>
    </message>
    <message>
        <location filename="../../store/vector_source.py"/>
        <source>{file} does not say what its coordinates mean; the course’s own coordinate system ({crs}) was taken. Name another as SOURCE_CRS if they are in that.</source>
        <translation>{file} sagt nicht, was die Koordinaten bedeuten; das Koordinatensystem des Platzes ({crs}) wurde genommen. Liegen sie in einem anderen, dieses als SOURCE_CRS angeben.</translation>
    </message>
    <message>
        <location filename="../../store/vector_source.py"/>
        <source>{file} line {line}</source>
        <translation>{file} Zeile {line}</translation>
    </message>
    <message>
        <location filename="../../measure/fair.py"/>
        <source>{front} front, {middle} middle, {back} back: a third of each is wanted</source>
        <translation>{front} vorn, {middle} in der Mitte, {back} hinten: erwünscht ist je ein Drittel</translation>
    </message>
    <message>
        <location filename="../../measure/findings.py"/>
        <source>{kind} {number}</source>
        <translation>{kind} {number}</translation>
    </message>
    <message>
        <location filename="../../measure/course.py"/>
        <source>{kind} {number} has no hole and lies near none: it is left out.</source>
        <translation>{kind} {number} hat keine Bahn und liegt bei keiner: wird ausgelassen.</translation>
    </message>
    <message>
        <location filename="../../measure/course.py"/>
        <source>{kind} {number} names hole {holes}, which is not there.</source>
        <translation>{kind} {number} nennt Bahn {holes}, die es nicht gibt.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_rows.py"/>
        <source>{kind} {number}: {reason}.</source>
        <translation>{kind} {number}: {reason}.</translation>
    </message>
    <message>
        <location filename="../../measure/findings.py"/>
        <source>{kind} “{name}”</source>
        <translation>{kind} „{name}“</translation>
    </message>
    <message>
        <location filename="../../store/openstreetmap.py"/>
        <source>{kind} “{name}” ({origin})</source>
        <translation>{kind} „{name}“ ({origin})</translation>
    </message>
    <message>
        <location filename="../../guide/registrations.py"/>
        <source>{kind}: {east} m east, {north} m north in the middle; error: {error}</source>
        <translation>{kind}: {east} m nach Osten, {north} m nach Norden in der Mitte; Fehler: {error}</translation>
    </message>
    <message>
        <location filename="../../store/bring_in.py"/>
        <source>{layer}: {count} brought in</source>
        <translation>{layer}: {count} übernommen</translation>
    </message>
    <message>
        <location filename="../../store/bring_in.py"/>
        <source>{layer}: {count} without a hole number, because no hole is near enough or more than three are.</source>
        <translation>{layer}: {count} ohne Bahnnummer, weil keine Bahn nahe genug liegt oder mehr als drei.</translation>
    </message>
    <message>
        <location filename="../../measure/fair.py"/>
        <source>{left} left, {centre} in the centre, {right} right: of nine holes four, one and four are wanted</source>
        <translation>{left} links, {centre} in der Mitte, {right} rechts: von neun Löchern sind vier, eines und vier erwünscht</translation>
    </message>
    <message>
        <location filename="../../guide/book_pages.py"/>
        <source>{length} m</source>
        <translation>{length} m</translation>
    </message>
    <message>
        <location filename="../../guide/book_pages.py"/>
        <source>{length} yd</source>
        <translation>{length} yd</translation>
    </message>
    <message>
        <location filename="../../store/course_file.py"/>
        <source>{longitude}, {latitude} is not a longitude and latitude in degrees.</source>
        <translation>{longitude}, {latitude} ist keine Länge und Breite in Grad.</translation>
    </message>
    <message>
        <location filename="../../guide/windows.py"/>
        <location filename="../../measure/hole.py"/>
        <source>{low} to {high}</source>
        <translation>{low} bis {high}</translation>
    </message>
    <message>
        <location filename="../../guide/hole_overlay.py"/>
        <location filename="../../guide/hole_page.py"/>
        <source>{low}–{high}</source>
        <translation>{low}–{high}</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>{marker} states no distance.</source>
        <translation>{marker} gibt keine Entfernung an.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>{marker} states {stated} to the green’s {point} but measures {measured}.</source>
        <translation>{marker} gibt {stated} an (bis {point} des Grüns), gemessen sind {measured}.</translation>
    </message>
    <message>
        <location filename="../../measure/hole.py"/>
        <location filename="../../model/words.py"/>
        <source>{most} and {last}</source>
        <translation>{most} und {last}</translation>
    </message>
    <message>
        <location filename="../../model/words.py"/>
        <source>{most} or {last}</source>
        <translation>{most} oder {last}</translation>
    </message>
    <message>
        <location filename="../../desk/page_designer.py"/>
        <source>{name} ({number})</source>
        <translation>{name} ({number})</translation>
    </message>
    <message>
        <location filename="../../guide/composites.py"/>
        <source>{name} was not made: {what}</source>
        <translation>{name} wurde nicht gemacht: {what}</translation>
    </message>
    <message>
        <location filename="../../desk/map_figures.py"/>
        <source>{name} {0}</source>
        <translation>{name} {0}</translation>
    </message>
    <message>
        <location filename="../../guide/hole_page.py"/>
        <source>{name} {length}</source>
        <translation>{name} {length}</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>{name}: 1:{scale:g}, {up:.2f}° up</source>
        <translation>{name}: 1:{scale:g}, {up:.2f}° oben</translation>
    </message>
    <message>
        <location filename="../../guide/composites.py"/>
        <source>{name}: {remark}</source>
        <translation>{name}: {remark}</translation>
    </message>
    <message>
        <location filename="../../guide/composites.py"/>
        <source>{name}: {shares}; {count} spots still hidden</source>
        <translation>{name}: {shares}; {count} Stellen noch verdeckt</translation>
    </message>
    <message>
        <location filename="../../guide/sheet_parts.py"/>
        <source>{number} / {count}</source>
        <translation>{number} / {count}</translation>
    </message>
    <message>
        <location filename="../../guide/book.py"/>
        <source>{number} {name}</source>
        <translation>{number} {name}</translation>
    </message>
    <message>
        <location filename="../../measure/pins.py"/>
        <source>{off} from {side} is the margin itself</source>
        <translation>{off} ({side}) ist der Rand selbst</translation>
    </message>
    <message>
        <location filename="../../measure/pins.py"/>
        <source>{off} from {side} lies outside the margin it counts from</source>
        <translation>{off} ({side}) liegt außerhalb des Randes, von dem aus gezählt wird</translation>
    </message>
    <message>
        <location filename="../../measure/pins.py"/>
        <source>{off} from {side} reaches the other margin: the green is {width} wide {on} on</source>
        <translation>{off} ({side}) reicht bis an den anderen Rand: das Grün ist {on} ab Vorderkante {width} breit</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_drawing.py"/>
        <source>{one} and {other} are only {distance} apart.</source>
        <translation>{one} und {other} liegen nur {distance} auseinander.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_drawing.py"/>
        <source>{one} and {other} overlap by {area}.</source>
        <translation>{one} und {other} überlappen sich um {area}.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_drawing.py"/>
        <source>{one} lies within {other}.</source>
        <translation>{one} liegt innerhalb von {other}.</translation>
    </message>
    <message>
        <location filename="../../measure/pins.py"/>
        <source>{on} on lies before the green’s front</source>
        <translation>{on} ab Vorderkante liegt vor dem Grün</translation>
    </message>
    <message>
        <location filename="../../measure/pins.py"/>
        <source>{on} on lies beyond the green’s back: the green is {depth} deep along its approach</source>
        <translation>{on} ab Vorderkante liegt hinter der Hinterkante: das Grün ist in Annäherungsrichtung {depth} tief</translation>
    </message>
    <message>
        <location filename="../../measure/pins.py"/>
        <source>{on} on the green has no margin to count from</source>
        <translation>{on} ab Vorderkante hat das Grün keinen Rand, von dem aus zu zählen wäre</translation>
    </message>
    <message>
        <location filename="../../guide/drawn_item.py"/>
        <source>{part}: drawn when the page is made</source>
        <translation>{part}: wird gezeichnet, wenn die Seite entsteht</translation>
    </message>
    <message>
        <location filename="../../store/reading.py"/>
        <source>{reason}; it was left out</source>
        <translation>{reason}; wurde ausgelassen</translation>
    </message>
    <message>
        <location filename="../../guide/registrations.py"/>
        <source>{rmse} m along an axis</source>
        <translation>{rmse} m je Achse</translation>
    </message>
    <message>
        <location filename="../../imagery/outline.py"/>
        <source>{share} % of its margin is not plainly seen and is guessed.</source>
        <translation>{share} % seines Randes sind nicht deutlich zu sehen und geschätzt.</translation>
    </message>
    <message>
        <location filename="../../guide/book_image.py"/>
        <source>{share} % of the picture lies outside the image.</source>
        <translation>{share} % des Ausschnitts liegen außerhalb des Bildes.</translation>
    </message>
    <message>
        <location filename="../../imagery/window.py"/>
        <source>{share} % of the window lies outside the image and is left clear.</source>
        <translation>{share} % des Bildausschnitts liegen außerhalb des Bildes und bleiben leer.</translation>
    </message>
    <message>
        <location filename="../../guide/event_sheets.py"/>
        <source>{sheet}, hole {number}</source>
        <translation>{sheet}, Bahn {number}</translation>
    </message>
    <message>
        <location filename="../../guide/event_sheets.py"/>
        <source>{sheet}, round {number}</source>
        <translation>{sheet}, Runde {number}</translation>
    </message>
    <message>
        <location filename="../../guide/sheet_cells.py"/>
        <source>{slope} %</source>
        <translation>{slope} %</translation>
    </message>
    <message>
        <location filename="../../measure/fall.py"/>
        <source>{slope} % to the back</source>
        <translation>{slope} % nach hinten</translation>
    </message>
    <message>
        <location filename="../../measure/fall.py"/>
        <source>{slope} % to the back left</source>
        <translation>{slope} % nach hinten links</translation>
    </message>
    <message>
        <location filename="../../measure/fall.py"/>
        <source>{slope} % to the back right</source>
        <translation>{slope} % nach hinten rechts</translation>
    </message>
    <message>
        <location filename="../../measure/fall.py"/>
        <source>{slope} % to the front</source>
        <translation>{slope} % nach vorn</translation>
    </message>
    <message>
        <location filename="../../measure/fall.py"/>
        <source>{slope} % to the front left</source>
        <translation>{slope} % nach vorn links</translation>
    </message>
    <message>
        <location filename="../../measure/fall.py"/>
        <source>{slope} % to the front right</source>
        <translation>{slope} % nach vorn rechts</translation>
    </message>
    <message>
        <location filename="../../measure/fall.py"/>
        <source>{slope} % to the left</source>
        <translation>{slope} % nach links</translation>
    </message>
    <message>
        <location filename="../../measure/fall.py"/>
        <source>{slope} % to the right</source>
        <translation>{slope} % nach rechts</translation>
    </message>
    <message>
        <location filename="../../measure/fall.py"/>
        <source>{slope} %, level</source>
        <translation>{slope} %, eben</translation>
    </message>
    <message>
        <location filename="../../guide/expressions.py"/>
        <source>{tee_set} {length}</source>
        <translation>{tee_set} {length}</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>{tee} lies {distance} behind the start of the line of play.</source>
        <translation>{tee} liegt {distance} hinter dem Beginn der Spiellinie.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>{tee} lies {distance} beside the line of play.</source>
        <translation>{tee} liegt {distance} neben der Spiellinie.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>{tee} {distance} longer</source>
        <translation>{tee} {distance} länger</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>{tee} {distance} shorter</source>
        <translation>{tee} {distance} kürzer</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_holes.py"/>
        <source>{tee}: {remark}.</source>
        <translation>{tee}: {remark}.</translation>
    </message>
    <message>
        <location filename="../../store/vector_source.py"/>
        <source>{thing} (“{label}”)</source>
        <translation>{thing} („{label}“)</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_drawing.py"/>
        <source>{thing} has 1 hole too small to be meant.</source>
        <translation>{thing} hat 1 Aussparung, die zu klein ist, um gewollt zu sein.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_drawing.py"/>
        <source>{thing} has {count} holes too small to be meant.</source>
        <translation>{thing} hat {count} Aussparungen, die zu klein sind, um gewollt zu sein.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_drawing.py"/>
        <source>{thing} is a sliver of {area}.</source>
        <translation>{thing} ist ein Splitter von {area}.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_drawing.py"/>
        <source>{thing} is drawn twice: {first} and {later}.</source>
        <translation>{thing} ist doppelt gezeichnet: {first} und {later}.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_drawing.py"/>
        <source>{thing} is not closed: its ends are {distance} apart.</source>
        <translation>{thing} ist nicht geschlossen: Die Enden liegen {distance} auseinander.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_drawing.py"/>
        <source>{thing} lies outside the course’s boundary.</source>
        <translation>{thing} liegt außerhalb der Platzgrenze.</translation>
    </message>
    <message>
        <location filename="../../store/bring_in.py"/>
        <source>{thing}, part {number}</source>
        <translation>{thing}, Teil {number}</translation>
    </message>
    <message>
        <location filename="../../store/bring_in.py"/>
        <source>{thing}: it was drawn from green to tee and has been turned round.</source>
        <translation>{thing}: war vom Grün zum Abschlag gezeichnet und wurde umgekehrt.</translation>
    </message>
    <message>
        <location filename="../../store/bring_in.py"/>
        <source>{thing}: its line crosses itself.</source>
        <translation>{thing}: Die Linie kreuzt sich selbst.</translation>
    </message>
    <message>
        <location filename="../../store/bring_in.py"/>
        <source>{thing}: its line ends where it starts.</source>
        <translation>{thing}: Die Linie endet, wo sie beginnt.</translation>
    </message>
    <message>
        <location filename="../../store/bring_in.py"/>
        <source>{thing}: its outline crossed itself; it was mended and became {count} areas.</source>
        <translation>{thing}: Der Umriss kreuzte sich selbst; er wurde bereinigt und ergab {count} Flächen.</translation>
    </message>
    <message>
        <location filename="../../store/bring_in.py"/>
        <source>{thing}: its outline crossed itself; it was mended.</source>
        <translation>{thing}: Der Umriss kreuzte sich selbst; er wurde bereinigt.</translation>
    </message>
    <message>
        <location filename="../../store/bring_in.py"/>
        <source>{thing}: the ends of its outline were {gap} m apart and have been joined.</source>
        <translation>{thing}: Die Enden des Umrisses lagen {gap} m auseinander und wurden verbunden.</translation>
    </message>
    <message>
        <location filename="../../store/openstreetmap.py"/>
        <source>{thing}: the map gives no {tag}.</source>
        <translation>{thing}: Die Karte nennt kein {tag}.</translation>
    </message>
    <message>
        <location filename="../../store/bring_in.py"/>
        <source>{thing}: {count} of its parts are no {shape} and were left out.</source>
        <translation>{thing}: {count} Teile haben die falsche Form (verlangt: {shape}) und wurden ausgelassen.</translation>
    </message>
    <message>
        <location filename="../../store/bring_in.py"/>
        <source>{thing}: {field} is {value} there and {own} in the course, which stays.</source>
        <translation>{thing}: {field} ist dort {value} und im Platz {own}; das bleibt.</translation>
    </message>
    <message>
        <location filename="../../store/vector_source.py"/>
        <source>{thing}: {field} “{value}” does not fit and was not taken.</source>
        <translation>{thing}: {field} „{value}“ passt nicht und wurde nicht übernommen.</translation>
    </message>
    <message>
        <location filename="../../store/vector_source.py"/>
        <source>{thing}: {field} “{value}” is no hole number and was not taken.</source>
        <translation>{thing}: {field} „{value}“ ist keine Bahnnummer und wurde nicht übernommen.</translation>
    </message>
    <message>
        <location filename="../../measure/checks_of_rows.py"/>
        <source>{thing}: {remark}.</source>
        <translation>{thing}: {remark}.</translation>
    </message>
    <message>
        <location filename="../../store/openstreetmap.py"/>
        <source>{thing}: {tag} “{value}” is not from {low} to {high} and was not taken.</source>
        <translation>{thing}: {tag} „{value}“ liegt nicht zwischen {low} und {high} und wurde nicht übernommen.</translation>
    </message>
    <message>
        <location filename="../../guide/book_making.py"/>
        <source>{title}: yardage guide</source>
        <translation>{title}: Entfernungsbuch</translation>
    </message>
    <message>
        <location filename="../../guide/hole_page.py"/>
        <source>{unit} from {name}</source>
        <translation>{unit} von {name}</translation>
    </message>
    <message>
        <location filename="../../guide/hole_page.py"/>
        <source>{unit} to the green’s front</source>
        <translation>{unit} bis zur Vorderkante</translation>
    </message>
    <message>
        <location filename="../../guide/event_page.py"/>
        <source>{unit}, round {number}</source>
        <translation>{unit}, Runde {number}</translation>
    </message>
    <message>
        <location filename="../../store/separated.py"/>
        <source>{what} {value} is not at least {low}</source>
        <translation>{what} {value} ist kleiner als {low}</translation>
    </message>
    <message>
        <location filename="../../store/separated.py"/>
        <source>{what} {value} is not between {low} and {high}</source>
        <translation>{what} {value} liegt nicht zwischen {low} und {high}</translation>
    </message>
    <message>
        <location filename="../../store/separated.py"/>
        <source>{what} “{value}” is not a whole number</source>
        <translation>{what} „{value}“ ist keine ganze Zahl</translation>
    </message>
    <message>
        <location filename="../../guide/page_templates.py"/>
        <source>{width} x {height} mm</source>
        <translation>{width} x {height} mm</translation>
    </message>
    <message>
        <location filename="../../guide/fetched.py"/>
        <source>{width} x {height} pixels are too many to fetch.</source>
        <translation>{width} x {height} Pixel sind zu viele, um sie zu holen.</translation>
    </message>
    <message>
        <location filename="../../store/vector_source.py"/>
        <source>{x} or {y} is not a number</source>
        <translation>{x} oder {y} ist keine Zahl</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>{}
Its line of play is not drawn yet.</source>
        <translation>{}
Die Spiellinie ist noch nicht gezeichnet.</translation>
    </message>
    <message>
        <location filename="../../desk/composing_dialog.py"/>
        <source>{} %</source>
        <translation>{} %</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>{} (not yet one of the course’s dates)</source>
        <translation>{} (noch kein Bilddatum des Platzes)</translation>
    </message>
    <message>
        <location filename="../../desk/hidden_panel.py"/>
        <source>{} ({} %)</source>
        <translation>{} ({} %)</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>{} ({})</source>
        <translation>{} ({})</translation>
    </message>
    <message>
        <location filename="../../desk/length_table.py"/>
        <source>{} ahead</source>
        <translation>{} davor</translation>
    </message>
    <message>
        <location filename="../../desk/length_table.py"/>
        <source>{} behind</source>
        <translation>{} dahinter</translation>
    </message>
    <message>
        <location filename="../../desk/hole_drawing.py"/>
        <source>{} deep</source>
        <translation>{} tief</translation>
    </message>
    <message>
        <location filename="../../desk/pointer.py"/>
        <source>{} deep, {} wide</source>
        <translation>{} tief, {} breit</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>{} doubtful</source>
        <translation>{} zweifelhaft</translation>
    </message>
    <message>
        <location filename="../../processing/archive_event.py"/>
        <source>{} files written to {}</source>
        <translation>{} Dateien nach {} geschrieben</translation>
    </message>
    <message>
        <location filename="../../desk/bring_lengths.py"/>
        <source>{} lengths can be taken over, {} lines cannot. Nothing is written yet.</source>
        <translation>{} Längen können übernommen werden, {} Zeilen nicht. Noch ist nichts geschrieben.</translation>
    </message>
    <message>
        <location filename="../../processing/set_tees.py"/>
        <source>{} lengths set: {} fit, {} nearest, {} impossible</source>
        <translation>{} Längen gesteckt: {} passen, {} nächste, {} unmöglich</translation>
    </message>
    <message>
        <location filename="../../desk/description_dialog.py"/>
        <source>{} lines too long</source>
        <translation>{} Zeilen zu lang</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <location filename="../../desk/residuals.py"/>
        <source>{} m</source>
        <translation>{} m</translation>
    </message>
    <message>
        <location filename="../../desk/take_up_dialog.py"/>
        <source>{} m a pixel</source>
        <translation>{} m je Pixel</translation>
    </message>
    <message>
        <location filename="../../processing/check_markers.py"/>
        <source>{} markers checked, {} of them off</source>
        <translation>Geprüfte Marken: {}, davon abweichend: {}</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>{} missing</source>
        <translation>{} fehlend</translation>
    </message>
    <message>
        <location filename="../../desk/registering_dialog.py"/>
        <source>{} more were set aside: their neighbours say otherwise.</source>
        <translation>{} weitere blieben beiseite: ihre Nachbarn sagen anderes.</translation>
    </message>
    <message>
        <location filename="../../processing/import_notes.py"/>
        <source>{} notes brought in, {} were there already</source>
        <translation>{} Notizen hereingeholt, {} waren schon da</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>{} of the committee’s were taken over, {} of ours kept.</source>
        <translation>{} der Spielleitung übernommen, {} von unseren behalten.</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>{} of {} features shown; figures count them all.</source>
        <translation>{} von {} Objekten gezeigt; die Maße zählen alle.</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>{} of {} features shown; figures count them all. These layers are drawn as one picture and show all: {}.</source>
        <translation>{} von {} Objekten gezeigt; die Maße zählen alle. Diese Layer werden als ein Bild gezeichnet und zeigen alle: {}.</translation>
    </message>
    <message>
        <location filename="../../desk/keeping.py"/>
        <source>{} of “{}” left unsaved, {}.</source>
        <translation>{} von „{}“ nicht gespeichert, {}.</translation>
    </message>
    <message>
        <location filename="../../desk/registering_dialog.py"/>
        <source>{} on {}</source>
        <translation>{} auf {}</translation>
    </message>
    <message>
        <location filename="../../desk/auditing.py"/>
        <location filename="../../desk/bring_pins.py"/>
        <location filename="../../desk/propose_dialog.py"/>
        <source>{} on, {} from {}</source>
        <translation>{} tief, {} von {}</translation>
    </message>
    <message>
        <location filename="../../processing/make_guide.py"/>
        <source>{} pages written to {}, {} of them painted anew</source>
        <translation>{} Seiten nach {} geschrieben, davon {} neu gemalt</translation>
    </message>
    <message>
        <location filename="../../processing/compose_image.py"/>
        <source>{} pictures made in {}</source>
        <translation>{} Bilder gemacht in {}</translation>
    </message>
    <message>
        <location filename="../../processing/audit_pins.py"/>
        <source>{} pins audited, {} of them as given</source>
        <translation>{} Lochpositionen abgeglichen, {} davon wie angegeben</translation>
    </message>
    <message>
        <location filename="../../desk/bring_pins.py"/>
        <source>{} pins can be placed, {} lines cannot. Nothing is written yet.</source>
        <translation>{} Lochpositionen lassen sich setzen, {} Zeilen nicht. Noch ist nichts geschrieben.</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>{} pins compared, {} differ. Nothing is written before Apply.</source>
        <translation>{} Lochpositionen verglichen, {} weichen ab. Vor „Anwenden“ wird nichts geschrieben.</translation>
    </message>
    <message>
        <location filename="../../processing/place_pins.py"/>
        <source>{} pins placed</source>
        <translation>{} Lochpositionen gesetzt</translation>
    </message>
    <message>
        <location filename="../../processing/event_sheets.py"/>
        <source>{} sheets written to {}</source>
        <translation>{} Blätter nach {} geschrieben</translation>
    </message>
    <message>
        <location filename="../../desk/composing_dialog.py"/>
        <source>{} spots stay hidden</source>
        <translation>{} Stellen bleiben verdeckt</translation>
    </message>
    <message>
        <location filename="../../desk/composing_dialog.py"/>
        <location filename="../../desk/pointer.py"/>
        <source>{} sq {}</source>
        <translation>{} {}²</translation>
    </message>
    <message>
        <location filename="../../desk/pointer.py"/>
        <source>{} stated, {} measured</source>
        <translation>Angabe {}, gemessen {}</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>{} tables were written to “{}”.</source>
        <translation>{} Tabellen wurden in „{}“ geschrieben.</translation>
    </message>
    <message>
        <location filename="../../desk/keeping.py"/>
        <source>{} things</source>
        <translation>{} Objekte</translation>
    </message>
    <message>
        <location filename="../../desk/hole_drawing.py"/>
        <source>{} to the green</source>
        <translation>{} zum Grün</translation>
    </message>
    <message>
        <location filename="../../desk/slope_shading.py"/>
        <source>{} to {} %</source>
        <translation>{} bis {} %</translation>
    </message>
    <message>
        <location filename="../../desk/hole_drawing.py"/>
        <source>{} wide</source>
        <translation>{} breit</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>{} windows made in {}</source>
        <translation>Erstellte Bildausschnitte: {}, in {}</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>{} wrong</source>
        <translation>{} falsch</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>{} {} from {}</source>
        <translation>{} {} ab {}</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>{}, not one of the dates ({})</source>
        <translation>{}, keines der Daten ({})</translation>
    </message>
    <message>
        <location filename="../../desk/pointer.py"/>
        <source>{}, {} from the back</source>
        <translation>{}, {} von der Hinterkante</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>{}, {} or its permanent marker. A row in italics has a remark; the mouse held over a figure shows it unrounded.</source>
        <translation>{}, {} oder von der Abschlagplatte. Kursive Zeilen haben eine Bemerkung; die Maus über einem Maß zeigt es ungerundet.</translation>
    </message>
    <message>
        <location filename="../../desk/pointer.py"/>
        <source>{}, {} {}</source>
        <translation>{}, {} {}</translation>
    </message>
    <message>
        <location filename="../../desk/words.py"/>
        <source>{}, {} × {} mm</source>
        <translation>{}, {} × {} mm</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>{}. Can be undone.</source>
        <translation>{}. Lässt sich rückgängig machen.</translation>
    </message>
    <message>
        <location filename="../../desk/drawing_bar.py"/>
        <source>{}. Each click sets a corner; a right click ends, Backspace takes one back, Esc gives up.</source>
        <translation>{}. Jeder Klick setzt eine Ecke; ein Rechtsklick beendet, die Rücktaste nimmt eine zurück, Esc bricht ab.</translation>
    </message>
    <message>
        <location filename="../../desk/composites.py"/>
        <source>{}: from which date</source>
        <translation>{}: aus welchem Datum</translation>
    </message>
    <message>
        <location filename="../../processing/register_images.py"/>
        <source>{}: lies where it lay, nothing was moved</source>
        <translation>{}: liegt, wo es lag; nichts wurde bewegt</translation>
    </message>
    <message>
        <location filename="../../desk/composites.py"/>
        <source>{}: lightened and invented</source>
        <translation>{}: aufgehellt und erfunden</translation>
    </message>
    <message>
        <location filename="../../processing/register_images.py"/>
        <source>{}: {:+.3f} m east, {:+.3f} m north ({}), error {}</source>
        <translation>{}: {:+.3f} m nach Osten, {:+.3f} m nach Norden ({}), Fehler {}</translation>
    </message>
    <message>
        <location filename="../../processing/register_images.py"/>
        <source>{}: {} features and {} pins moved along, at most {:.2f} m</source>
        <translation>{}: {} Objekte und {} Lochpositionen sind mitgegangen, höchstens {:.2f} m</translation>
    </message>
    <message>
        <location filename="../../processing/measure_course.py"/>
        <source>{}: {} rows</source>
        <translation>{}: {} Zeilen</translation>
    </message>
    <message>
        <location filename="../../processing/import_notes.py"/>
        <source>{}: {}; left out.</source>
        <translation>{}: {}; ausgelassen.</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>±</source>
        <translation>±</translation>
    </message>
    <message>
        <location filename="../../desk/registering_dialog.py"/>
        <source>± (m)</source>
        <translation>± (m)</translation>
    </message>
    <message>
        <location filename="../../desk/composing_dialog.py"/>
        <location filename="../../desk/dates_panel.py"/>
        <source>± {} m</source>
        <translation>± {} m</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>“Plays” adds the rise from tee to green to the length, as is common practice; no rule says so. It never takes the place of the measured length, which goes on the card and into every other figure.</source>
        <translation>„Spielt“ zählt den Anstieg vom Abschlag zum Grün zur Länge hinzu, wie es übliche Praxis ist; keine Regel sagt es. Es tritt nie an die Stelle der gemessenen Länge, die auf der Scorekarte steht und in jedem anderen Maß steckt.</translation>
    </message>
    <message>
        <location filename="../../imagery/grid.py"/>
        <location filename="../../imagery/terrain.py"/>
        <location filename="../../store/course_file.py"/>
        <source>“{crs}” is not a coordinate reference system.</source>
        <translation>„{crs}“ ist kein Koordinatenbezugssystem.</translation>
    </message>
    <message>
        <location filename="../../guide/book_figures.py"/>
        <source>“{event}” asks for no length of hole {hole} for “{flight}” in round {round}.</source>
        <translation>„{event}“ wünscht für Bahn {hole} keine Länge für „{flight}“ in Runde {round}.</translation>
    </message>
    <message>
        <location filename="../../guide/book_figures.py"/>
        <source>“{event}” has no pin of round {round} on hole {hole}.</source>
        <translation>„{event}“ hat auf Bahn {hole} keine Lochposition der Runde {round}.</translation>
    </message>
    <message>
        <location filename="../../guide/expressions.py"/>
        <source>“{expression}” cannot be worked out: {reason}</source>
        <translation>„{expression}“ lässt sich nicht ausrechnen: {reason}</translation>
    </message>
    <message>
        <location filename="../../store/vector_source.py"/>
        <source>“{file}” cannot be read as CSV ({reason}).</source>
        <translation>„{file}“ ist nicht als CSV lesbar ({reason}).</translation>
    </message>
    <message>
        <location filename="../../store/openstreetmap.py"/>
        <source>“{file}” cannot be read as GeoJSON ({reason}).</source>
        <translation>„{file}“ ist nicht als GeoJSON lesbar ({reason}).</translation>
    </message>
    <message>
        <location filename="../../store/openstreetmap.py"/>
        <source>“{file}” cannot be read as an OpenStreetMap file ({reason}).</source>
        <translation>„{file}“ ist nicht als OpenStreetMap-Datei lesbar ({reason}).</translation>
    </message>
    <message>
        <location filename="../../store/openstreetmap.py"/>
        <source>“{file}” cannot be read as an OpenStreetMap file.</source>
        <translation>„{file}“ ist nicht als OpenStreetMap-Datei lesbar.</translation>
    </message>
    <message>
        <location filename="../../imagery/composite_file.py"/>
        <location filename="../../imagery/window.py"/>
        <source>“{file}” cannot be written: {reason}.</source>
        <translation>„{file}“ kann nicht geschrieben werden: {reason}.</translation>
    </message>
    <message>
        <location filename="../../store/vector_source.py"/>
        <source>“{file}” has no columns of coordinates.</source>
        <translation>„{file}“ hat keine Spalten mit Koordinaten.</translation>
    </message>
    <message>
        <location filename="../../store/vector_source.py"/>
        <source>“{file}” has no rows.</source>
        <translation>„{file}“ hat keine Zeilen.</translation>
    </message>
    <message>
        <location filename="../../store/openstreetmap.py"/>
        <source>“{file}” holds no GeoJSON features.</source>
        <translation>„{file}“ enthält keine GeoJSON-Objekte.</translation>
    </message>
    <message>
        <location filename="../../store/vector_source.py"/>
        <source>“{file}” holds no vector layer that can be read.</source>
        <translation>„{file}“ enthält keinen lesbaren Vektorlayer.</translation>
    </message>
    <message>
        <location filename="../../guide/sponsor_pages.py"/>
        <source>“{file}” is none of {kinds}, or damaged</source>
        <translation>„{file}“ ist nichts von {kinds} oder beschädigt</translation>
    </message>
    <message>
        <location filename="../../store/openstreetmap.py"/>
        <source>“{file}” is not in longitude and latitude, as OpenStreetMap always is.</source>
        <translation>„{file}“ liegt nicht in geographischer Länge und Breite vor, wie es OpenStreetMap immer tut.</translation>
    </message>
    <message>
        <location filename="../../imagery/window.py"/>
        <source>“{file}” is to be read and replaced at once.</source>
        <translation>„{file}“ soll zugleich gelesen und ersetzt werden.</translation>
    </message>
    <message>
        <location filename="../../guide/sponsor_pages.py"/>
        <source>“{file}” is {wide} x {high} pixels large</source>
        <translation>„{file}“ ist {wide} x {high} Pixel groß</translation>
    </message>
    <message>
        <location filename="../../guide/sponsor_pages.py"/>
        <source>“{file}”: {reason}</source>
        <translation>„{file}“: {reason}</translation>
    </message>
    <message>
        <location filename="../../imagery/moved_file.py"/>
        <source>“{folder}” cannot be written to ({reason}).</source>
        <translation>In „{folder}“ kann nicht geschrieben werden ({reason}).</translation>
    </message>
    <message>
        <location filename="../../measure/findings.py"/>
        <source>“{name}”</source>
        <translation>„{name}“</translation>
    </message>
    <message>
        <location filename="../../guide/expressions.py"/>
        <source>“{name}” is empty.</source>
        <translation>„{name}“ ist leer.</translation>
    </message>
    <message>
        <location filename="../../guide/expressions.py"/>
        <source>“{name}” must be a whole number.</source>
        <translation>„{name}“ muss eine ganze Zahl sein.</translation>
    </message>
    <message>
        <location filename="../../model/guide_pages.py"/>
        <source>“{page}” has no text</source>
        <translation>„{page}“ hat keinen Text</translation>
    </message>
    <message>
        <location filename="../../model/guide_pages.py"/>
        <source>“{page}” holds the cautions and the credits and stays in</source>
        <translation>„{page}“ enthält die Hinweise und die Bildnachweise und bleibt darin</translation>
    </message>
    <message>
        <location filename="../../guide/book.py"/>
        <location filename="../../guide/sheets.py"/>
        <source>“{page}” is no size of a page.</source>
        <translation>„{page}“ ist keine Seitengröße.</translation>
    </message>
    <message>
        <location filename="../../guide/rules.py"/>
        <source>“{page}” measures {width} x {height} mm; a page with a green may have no more than 107.95 x 177.8 mm (4¼ x 7 in).</source>
        <translation>„{page}“ misst {width} x {height} mm; eine Seite mit einem Grün darf höchstens 107,95 x 177,8 mm (4¼ x 7 Zoll) haben.</translation>
    </message>
    <message>
        <location filename="../../model/guide_pages.py"/>
        <source>“{page}” names no file</source>
        <translation>„{page}“ nennt keine Datei</translation>
    </message>
    <message>
        <location filename="../../guide/rules.py"/>
        <source>“{page}” shows a green at 1:{scale}, larger than 1:480.</source>
        <translation>„{page}“ zeigt ein Grün im Maßstab 1:{scale}, größer als 1:480.</translation>
    </message>
    <message>
        <location filename="../../model/guide_pages.py"/>
        <source>“{page}” stands in the guide once; the second one is left out</source>
        <translation>„{page}“ steht im Buch nur einmal; das zweite wird weggelassen</translation>
    </message>
    <message>
        <location filename="../../guide/book.py"/>
        <source>“{page}”: no font here has the letters {letters}</source>
        <translation>„{page}“: keine Schrift hier hat die Zeichen {letters}</translation>
    </message>
    <message>
        <location filename="../../guide/book.py"/>
        <source>“{page}”: the picture “{file}” cannot be read</source>
        <translation>„{page}“: das Bild „{file}“ lässt sich nicht lesen</translation>
    </message>
    <message>
        <location filename="../../guide/book.py"/>
        <location filename="../../guide/book_making.py"/>
        <source>“{page}”: {told}</source>
        <translation>„{page}“: {told}</translation>
    </message>
    <message>
        <location filename="../../guide/page_layouts.py"/>
        <source>“{part}”: {told}</source>
        <translation>„{part}“: {told}</translation>
    </message>
    <message>
        <location filename="../../store/recovery.py"/>
        <source>“{path}” cannot be given another name ({reason}).</source>
        <translation>„{path}“ lässt sich nicht umbenennen ({reason}).</translation>
    </message>
    <message>
        <location filename="../../guide/pdf_objects.py"/>
        <source>“{path}” cannot be read ({reason}).</source>
        <translation>„{path}“ ist nicht lesbar ({reason}).</translation>
    </message>
    <message>
        <location filename="../../guide/sponsor_pages.py"/>
        <location filename="../../store/field_notes.py"/>
        <source>“{path}” cannot be read: {reason}.</source>
        <translation>„{path}“ lässt sich nicht lesen: {reason}.</translation>
    </message>
    <message>
        <location filename="../../guide/event_archive.py"/>
        <location filename="../../guide/page_templates.py"/>
        <location filename="../../imagery/composing.py"/>
        <location filename="../../imagery/composite_file.py"/>
        <location filename="../../imagery/hand_masks.py"/>
        <location filename="../../store/course_file.py"/>
        <location filename="../../store/files.py"/>
        <source>“{path}” cannot be written ({reason}).</source>
        <translation>„{path}“ kann nicht geschrieben werden ({reason}).</translation>
    </message>
    <message>
        <location filename="../../guide/page_painting.py"/>
        <location filename="../../guide/pdf_join.py"/>
        <source>“{path}” could not be written ({reason}).</source>
        <translation>„{path}“ ließ sich nicht schreiben ({reason}).</translation>
    </message>
    <message>
        <location filename="../../guide/page_pictures.py"/>
        <location filename="../../guide/painted_sheets.py"/>
        <location filename="../../guide/registrations.py"/>
        <source>“{path}” could not be written.</source>
        <translation>„{path}“ konnte nicht geschrieben werden.</translation>
    </message>
    <message>
        <location filename="../../guide/pdf_objects.py"/>
        <source>“{path}” has no page {number}.</source>
        <translation>„{path}“ hat keine Seite {number}.</translation>
    </message>
    <message>
        <location filename="../../guide/pdf_objects.py"/>
        <source>“{path}” has {count} pages where one is wanted.</source>
        <translation>„{path}“ hat {count} Seiten, gebraucht wird eine.</translation>
    </message>
    <message>
        <location filename="../../store/field_notes.py"/>
        <source>“{path}” holds no notes.</source>
        <translation>„{path}“ enthält keine Notizen.</translation>
    </message>
    <message>
        <location filename="../../guide/pdf_objects.py"/>
        <source>“{path}” is a kind of PDF that a book cannot take in: {reason}.</source>
        <translation>„{path}“ ist eine Art von PDF, die ein Buch nicht aufnehmen kann: {reason}.</translation>
    </message>
    <message>
        <location filename="../../guide/pdf_objects.py"/>
        <source>“{path}” is damaged: it is not whole, or was not written as a PDF is.</source>
        <translation>„{path}“ ist beschädigt: Die Datei ist unvollständig oder nicht so geschrieben, wie es PDF verlangt.</translation>
    </message>
    <message>
        <location filename="../../guide/pdf_objects.py"/>
        <source>“{path}” is no PDF.</source>
        <translation>„{path}“ ist kein PDF.</translation>
    </message>
    <message>
        <location filename="../../store/course_file.py"/>
        <source>“{path}” is no name for a course file.</source>
        <translation>„{path}“ ist kein Name für eine Platzdatei.</translation>
    </message>
    <message>
        <location filename="../../guide/event_archive.py"/>
        <location filename="../../store/field_notes.py"/>
        <source>“{path}” is not there.</source>
        <translation>„{path}“ ist nicht da.</translation>
    </message>
    <message>
        <location filename="../../store/vector_source.py"/>
        <source>“{source}” does not say what its coordinates mean.</source>
        <translation>„{source}“ sagt nicht, was die Koordinaten bedeuten.</translation>
    </message>
    <message>
        <location filename="../../store/committee.py"/>
        <source>“{source}” has no line with the headings {headings}.</source>
        <translation>„{source}“ hat keine Zeile mit den Überschriften {headings}.</translation>
    </message>
    <message>
        <location filename="../../store/committee.py"/>
        <source>“{source}” has rows that cannot be used. {rows}.</source>
        <translation>„{source}“ hat Zeilen, die nicht zu verwenden sind. {rows}.</translation>
    </message>
    <message>
        <location filename="../../store/committee.py"/>
        <source>“{source}” has two columns “{name}”.</source>
        <translation>„{source}“ hat zwei Spalten „{name}“.</translation>
    </message>
    <message>
        <location filename="../../store/committee.py"/>
        <source>“{source}” is not a CSV file ({reason}).</source>
        <translation>„{source}“ ist keine CSV-Datei ({reason}).</translation>
    </message>
    <message>
        <location filename="../../model/numbers.py"/>
        <source>“{text}” is not a distance.</source>
        <translation>„{text}“ ist keine Entfernung.</translation>
    </message>
    <message>
        <location filename="../../model/numbers.py"/>
        <source>“{text}” is not a hole number.</source>
        <translation>„{text}“ ist keine Bahnnummer.</translation>
    </message>
    <message>
        <location filename="../../store/committee.py"/>
        <location filename="../../store/course_file.py"/>
        <source>“{unit}” is not a unit of distances.</source>
        <translation>„{unit}“ ist keine Einheit für Entfernungen.</translation>
    </message>
    <message>
        <location filename="../../store/events.py"/>
        <location filename="../../store/writing.py"/>
        <source>“{value}” is no value for the field “{field}”.</source>
        <translation>„{value}“ ist kein Wert für das Feld „{field}“.</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>“{}” already holds tables: {}. Replace them?</source>
        <translation>„{}“ enthält schon Tabellen: {}. Ersetzen?</translation>
    </message>
    <message>
        <location filename="../../desk/page_editor.py"/>
        <source>“{}” cannot be copied into “{}” ({}).</source>
        <translation>„{}“ kann nicht nach „{}“ kopiert werden ({}).</translation>
    </message>
    <message>
        <location filename="../../desk/composites.py"/>
        <source>“{}” cannot be opened.</source>
        <translation>„{}“ lässt sich nicht öffnen.</translation>
    </message>
    <message>
        <location filename="../../desk/dates.py"/>
        <source>“{}” cannot become a date of the course.</source>
        <translation>„{}“ kann kein Bilddatum des Platzes werden.</translation>
    </message>
    <message>
        <location filename="../../desk/dates.py"/>
        <source>“{}” does not say where on Earth it lies.</source>
        <translation>„{}“ sagt nicht, wo auf der Erde es liegt.</translation>
    </message>
    <message>
        <location filename="../../processing/set_tees.py"/>
        <source>“{}” has no length in it.</source>
        <translation>In „{}“ steht keine Länge.</translation>
    </message>
    <message>
        <location filename="../../desk/dates.py"/>
        <source>“{}” is no date.</source>
        <translation>„{}“ ist kein Datum.</translation>
    </message>
    <message>
        <location filename="../../desk/length_table.py"/>
        <source>“{}” is no length of a hole.</source>
        <translation>„{}“ ist keine Länge einer Bahn.</translation>
    </message>
    <message>
        <location filename="../../desk/event_draft.py"/>
        <source>“{}” is not a day.</source>
        <translation>„{}“ ist kein Tag.</translation>
    </message>
    <message>
        <location filename="../../processing/import_features.py"/>
        <source>“{}” is not a vector layer that can be read.</source>
        <translation>„{}“ ist kein lesbarer Vektorlayer.</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>“{}” is now called “{}”.</source>
        <translation>„{}“ heißt jetzt „{}“.</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>“{}” is there already. Replace it?</source>
        <translation>„{}“ gibt es schon. Ersetzen?</translation>
    </message>
    <message>
        <location filename="../../desk/event_panel.py"/>
        <source>“{}” was removed.</source>
        <translation>„{}“ wurde entfernt.</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>“{}” was written.</source>
        <translation>„{}“ wurde geschrieben.</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>− not asked for</source>
        <translation>− nicht verlangt</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>≠ apart</source>
        <translation>≠ abweichend</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>✕ impossible</source>
        <translation>✕ unmöglich</translation>
    </message>
    <message>
        <location filename="../../desk/audit_dialog.py"/>
        <source>✕ not read</source>
        <translation>✕ nicht gelesen</translation>
    </message>
</context>
</TS>
