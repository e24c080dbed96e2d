<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Yardwright</name>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>&amp;Approach up</source>
        <translation>Annä&amp;herung oben</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>&amp;Bring features in…</source>
        <translation>Objekte &amp;einlesen…</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>&amp;Check markers…</source>
        <translation>Marken &amp;prüfen…</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>&amp;Copy</source>
        <translation>&amp;Kopieren</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>&amp;Credit</source>
        <translation>Bild&amp;nachweis</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>&amp;Dates panel</source>
        <translation>Bedienfeld „Bild&amp;datum“</translation>
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
        <location filename="../../desk/toolbar.py"/>
        <source>&amp;Previous hole</source>
        <translation>&amp;Vorige Bahn</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>&amp;Refresh</source>
        <translation>&amp;Aktualisieren</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>&amp;Repair</source>
        <translation>&amp;Reparieren</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>&amp;Save</source>
        <translation>&amp;Speichern</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>&amp;Show on map</source>
        <translation>Auf &amp;Karte zeigen</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>&amp;Start a course…</source>
        <translation>Platz &amp;anlegen…</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>&amp;Taken on</source>
        <translation>&amp;Aufgenommen am</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>&amp;Tee sets</source>
        <translation>Abschlagse&amp;ts</translation>
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
        <location filename="../../desk/hole_panel.py"/>
        <source>(unnamed)</source>
        <translation>(ohne Namen)</translation>
    </message>
    <message>
        <location filename="../../desk/keeping.py"/>
        <source>, and {} more</source>
        <translation>, und {} weitere</translation>
    </message>
    <message>
        <location filename="../../processing/start_course.py"/>
        <source>A CSV file with the columns hole, par, stroke_index, name and one for each tee set, in yards; in metres where the heading is the tee set’s name followed by m. Empty: the course starts without holes.</source>
        <translation>Eine CSV-Datei mit den Spalten hole, par, stroke_index, name und einer je Abschlagset, in Yards; in Metern, wo auf den Namen des Abschlagsets ein m folgt. Leer: der Platz beginnt ohne Bahnen.</translation>
    </message>
    <message>
        <location filename="../../desk/hole_panel.py"/>
        <source>A double click takes the tool that draws it in hand.</source>
        <translation>Ein Doppelklick nimmt das Werkzeug, das es zeichnet, zur Hand.</translation>
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
        <location filename="../../desk/drawing_bar.py"/>
        <source>A smooth curve through the clicks</source>
        <translation>Eine glatte Kurve durch die Klicks</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>Above and below</source>
        <translation>Oben und unten</translation>
    </message>
    <message>
        <location filename="../../desk/hole_panel.py"/>
        <source>Add</source>
        <translation>Hinzufügen</translation>
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
        <location filename="../../desk/dates_panel.py"/>
        <source>Add {} to the project.</source>
        <translation>Zum Projekt hinzufügen: {}.</translation>
    </message>
    <message>
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
        <location filename="../../desk/figures.py"/>
        <source>Approach</source>
        <translation>Annäherung</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <location filename="../../desk/pointer.py"/>
        <source>Area</source>
        <translation>Fläche</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Aside</source>
        <translation>Seitlich</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>At</source>
        <translation>Bei</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Azimuth</source>
        <translation>Azimut</translation>
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
        <location filename="../../processing/export_windows.py"/>
        <source>Bring its features in first (importfeatures).</source>
        <translation>Zuerst seine Objekte einlesen (importfeatures).</translation>
    </message>
    <message>
        <location filename="../../processing/import_features.py"/>
        <source>Brings greens, tees, bunkers, lines of play and other features into a course: from OpenStreetMap (golf=*), or from any vector layer or file whose kind you name. Each feature is given to the holes it lies on. Importing the same source again adds nothing twice.</source>
        <translation>Liest Grüns, Abschläge, Bunker, Spiellinien und andere Objekte in einen Platz ein: aus OpenStreetMap (golf=*) oder aus einem beliebigen Vektorlayer oder einer Vektordatei, deren Art angegeben wird. Jedes Objekt wird den Bahnen zugeordnet, auf denen es liegt. Dieselbe Quelle erneut einzulesen fügt nichts doppelt hinzu.</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>Brought in: {}.</source>
        <translation>Eingelesen: {}.</translation>
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
        <location filename="../../processing/start_course.py"/>
        <source>CSV (*.csv *.txt)</source>
        <translation>CSV (*.csv *.txt)</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <location filename="../../desk/hole_panel.py"/>
        <source>Card</source>
        <translation>Scorekarte</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Carry</source>
        <translation>Carry</translation>
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
        <location filename="../../desk/editing.py"/>
        <source>Check that its file may be written to and is open in no other program.</source>
        <translation>Prüfen, ob in die Datei geschrieben werden darf und kein anderes Programm sie geöffnet hat.</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>Checks</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>Choose a folder for the tables</source>
        <translation>Ordner für die Tabellen wählen</translation>
    </message>
    <message>
        <location filename="../../processing/algorithm.py"/>
        <source>Choose a folder you may write to as OUTPUT.</source>
        <translation>Als OUTPUT einen Ordner wählen, in den geschrieben werden darf.</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>Choose a hole, or several with Ctrl or Shift; Ctrl+A chooses all.</source>
        <translation>Eine Bahn wählen, mehrere mit Strg oder Umschalt; Strg+A wählt alle.</translation>
    </message>
    <message>
        <location filename="../../desk/dates.py"/>
        <source>Choose a raster image that is not one of its dates yet.</source>
        <translation>Ein Rasterbild wählen, das noch kein Bilddatum des Platzes ist.</translation>
    </message>
    <message>
        <location filename="../../processing/import_features.py"/>
        <source>Choose a vector layer or a file as SOURCE.</source>
        <translation>Als SOURCE einen Vektorlayer oder eine Datei wählen.</translation>
    </message>
    <message>
        <location filename="../../processing/import_features.py"/>
        <source>Choose another layer or a file as SOURCE.</source>
        <translation>Als SOURCE einen anderen Layer oder eine Datei wählen.</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>Choose it and press “Make it a date”.</source>
        <translation>Auswählen und „Als Bilddatum aufnehmen“ drücken.</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>Choose something in the list first.</source>
        <translation>Zuerst etwas in der Liste wählen.</translation>
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
        <location filename="../../desk/dates_panel.py"/>
        <source>Click to see this date alone.</source>
        <translation>Klicken, um nur dieses Datum zu sehen.</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>Compare with</source>
        <translation>Vergleichen mit</translation>
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
        <location filename="../../desk/figures.py"/>
        <source>Counted from the tee</source>
        <translation>Vom Abschlag an gezählt</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <location filename="../../desk/toolbar.py"/>
        <location filename="../../processing/algorithm.py"/>
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
        <location filename="../../desk/dates_panel.py"/>
        <source>Credit</source>
        <translation>Nachweis</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>Cut the turned pictures of holes and greens out of an image</source>
        <translation>Gedrehte Bildausschnitte der Bahnen und Grüns aus einem Bild schneiden</translation>
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
        <location filename="../../desk/dates_panel.py"/>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>Dates</source>
        <translation>Bilddatum</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Depth</source>
        <translation>Tiefe</translation>
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
        <location filename="../../desk/figures.py"/>
        <source>Distances</source>
        <translation>Entfernungen</translation>
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
        <source>Dots per inch</source>
        <translation>Punkte je Zoll</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>Doubtful</source>
        <translation>Zweifelhaft</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>Draw its line of play from the back tee to the green.</source>
        <translation>Die Spiellinie vom hintersten Abschlag bis zum Grün zeichnen.</translation>
    </message>
    <message>
        <location filename="../../desk/turning.py"/>
        <source>Draw the green and give it this hole’s number.</source>
        <translation>Das Grün zeichnen und ihm die Nummer dieser Bahn geben.</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>Draw the line from tee to green in the layer “Line of play”, or bring features in.</source>
        <translation>Die Linie vom Abschlag zum Grün im Layer „Spiellinie“ zeichnen oder Objekte einlesen.</translation>
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
        <location filename="../../processing/import_features.py"/>
        <source>EXTENT encloses nothing.</source>
        <translation>EXTENT umschließt nichts.</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Ends</source>
        <translation>Ende</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Enter</source>
        <translation>Eintritt</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Error</source>
        <translation>Fehler</translation>
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
        <location filename="../../desk/hole_panel.py"/>
        <source>Figures</source>
        <translation>Maße</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>Find the distance markers that do not stand where they say</source>
        <translation>Die Entfernungsmarken finden, die nicht dort stehen, wo sie es angeben</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>Flip</source>
        <translation>Umschalten</translation>
    </message>
    <message>
        <location filename="../../processing/algorithm.py"/>
        <source>Folder for the results</source>
        <translation>Ordner für die Ergebnisse</translation>
    </message>
    <message>
        <location filename="../../desk/drawing_bar.py"/>
        <source>Follow the moving pointer: a click begins, a right click ends</source>
        <translation>Dem Mauszeiger folgen: Ein Klick beginnt, ein Rechtsklick beendet</translation>
    </message>
    <message>
        <location filename="../../processing/import_features.py"/>
        <source>For a source that does not name its own, such as DXF or a CSV with x and y.</source>
        <translation>Für eine Quelle, die ihres nicht nennt, etwa DXF oder eine CSV mit x und y.</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>For each window a rotated GeoTIFF and a PNG or JPEG with world file, named after hole and kind (hole_07.tif, green_07.png); the table placements with the place of every symbol in each picture, in millimetres and pixels from its top left; and the rectangles in the course’s layer of windows. Those of an earlier run are replaced.</source>
        <translation>Zu jedem Bildausschnitt ein gedrehtes GeoTIFF und ein PNG oder JPEG mit World-Datei, benannt nach Bahn und Art (hole_07.tif, green_07.png); die Tabelle placements mit dem Ort jedes Symbols in jedem Bild, in Millimetern und Pixeln von links oben; und die Rechtecke im Layer der Bildausschnitte des Platzes. Die eines früheren Laufs werden ersetzt.</translation>
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
        <location filename="../../desk/pointer.py"/>
        <source>From the tee</source>
        <translation>Ab Abschlag</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>From the tee, along the line of play</source>
        <translation>Vom Abschlag, entlang der Spiellinie</translation>
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
        <location filename="../../desk/dates.py"/>
        <source>Give it as year-month-day.</source>
        <translation>Als Jahr-Monat-Tag angeben.</translation>
    </message>
    <message>
        <location filename="../../desk/pointer.py"/>
        <source>Green</source>
        <translation>Grün</translation>
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
        <location filename="../../processing/export_windows.py"/>
        <source>Greens may be larger than 1:480</source>
        <translation>Grüns dürfen größer als 1:480 sein</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>Ground</source>
        <translation>Boden</translation>
    </message>
    <message>
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
        <location filename="../../desk/hole_panel.py"/>
        <location filename="../../desk/toolbar.py"/>
        <source>Hole</source>
        <translation>Bahn</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>Hole {number} cannot be shown: neither a line of play nor a tee and a green are drawn.</source>
        <translation>Bahn {number} lässt sich nicht zeigen: Weder eine Spiellinie noch ein Abschlag und ein Grün sind gezeichnet.</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>Hole {number} is not in the course.</source>
        <translation>Bahn {number} gibt es auf dem Platz nicht.</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>Hole {}</source>
        <translation>Bahn {}</translation>
    </message>
    <message>
        <location filename="../../desk/turning.py"/>
        <source>Hole {} has no green, so there is no approach to it.</source>
        <translation>Bahn {} hat kein Grün und damit keine Annäherung.</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>Hole {} has no line of play, so it cannot be looked at.</source>
        <translation>Bahn {} hat keine Spiellinie und lässt sich nicht zeigen.</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <location filename="../../processing/algorithm.py"/>
        <source>Holes</source>
        <translation>Bahnen</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>Holes listed</source>
        <translation>Aufgelistete Bahnen</translation>
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
        <location filename="../../desk/figures.py"/>
        <source>How much the line of play turns</source>
        <translation>Um wie viel die Spiellinie abknickt</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>How sure the figure is: one standard error</source>
        <translation>Wie sicher das Maß ist: ein Standardfehler</translation>
    </message>
    <message>
        <location filename="../../desk/drawing_bar.py"/>
        <source>How well what you draw is to be seen in the image</source>
        <translation>Wie gut das Gezeichnete im Bild zu sehen ist</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>Image</source>
        <translation>Bild</translation>
    </message>
    <message>
        <location filename="../../desk/comparing.py"/>
        <source>Image of {}</source>
        <translation>Bild vom {}</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>It may be &amp;printed</source>
        <translation>Darf ge&amp;druckt werden</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>It needs two dates of the course in the project.</source>
        <translation>Dazu müssen zwei Bilddaten des Platzes im Projekt sein.</translation>
    </message>
    <message>
        <location filename="../../processing/import_features.py"/>
        <source>Kind of the features</source>
        <translation>Art der Objekte</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Label</source>
        <translation>Name</translation>
    </message>
    <message>
        <location filename="../../desk/keeping.py"/>
        <source>Later</source>
        <translation>Später</translation>
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
        <location filename="../../desk/figures.py"/>
        <source>Leave</source>
        <translation>Austritt</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Left</source>
        <translation>Links</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>Left and right</source>
        <translation>Links und rechts</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>Left free on each side of the hole or green when no scale is given.</source>
        <translation>Bleibt auf jeder Seite der Bahn oder des Grüns frei, wenn kein Maßstab angegeben ist.</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <location filename="../../desk/hole_panel.py"/>
        <location filename="../../desk/map_figures.py"/>
        <location filename="../../desk/pointer.py"/>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Lengths</source>
        <translation>Längen</translation>
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
        <location filename="../../desk/hole_panel.py"/>
        <location filename="../../desk/toolbar.py"/>
        <source>Look at the hole before</source>
        <translation>Die vorige Bahn ansehen</translation>
    </message>
    <message>
        <location filename="../../desk/hole_panel.py"/>
        <location filename="../../desk/toolbar.py"/>
        <source>Look at the next hole</source>
        <translation>Die nächste Bahn ansehen</translation>
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
        <location filename="../../processing/start_course.py"/>
        <source>Made the course file {}</source>
        <translation>Platzdatei angelegt: {}</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>Make a new, empty course file and open it</source>
        <translation>Eine neue, leere Platzdatei anlegen und öffnen</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>Make the chosen raster layer one of the course’s dates</source>
        <translation>Den gewählten Rasterlayer als Bilddatum des Platzes aufnehmen</translation>
    </message>
    <message>
        <location filename="../../desk/dates.py"/>
        <location filename="../../desk/dates_panel.py"/>
        <source>Make “{}” a date</source>
        <translation>„{}“ als Bilddatum aufnehmen</translation>
    </message>
    <message>
        <location filename="../../processing/start_course.py"/>
        <source>Makes a course file: a GeoPackage with a layer for each kind of thing on a course, its forms and its symbols. With a scorecard it holds the holes, their pars and the tee sets from the start.</source>
        <translation>Legt eine Platzdatei an: ein GeoPackage mit einem Layer für jede Art von Objekt auf einem Platz, samt Formularen und Symbolen. Mit einer Scorekarte enthält sie von Anfang an die Bahnen, ihr Par und die Abschlagsets.</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>Margin (mm)</source>
        <translation>Rand (mm)</translation>
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
        <location filename="../../desk/figures.py"/>
        <source>Middle</source>
        <translation>Mitte</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>Missing</source>
        <translation>Fehlt</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Move (m)</source>
        <translation>Versetzen (m)</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>Moves the divider; on the map {}, {}, {} and {} do</source>
        <translation>Verschiebt den Teiler; auf der Karte tun es {}, {}, {} und {}</translation>
    </message>
    <message>
        <location filename="../../desk/hole_drawing.py"/>
        <source>N</source>
        <translation>N</translation>
    </message>
    <message>
        <location filename="../../processing/start_course.py"/>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <location filename="../../processing/import_features.py"/>
        <source>Name their KIND: {}.</source>
        <translation>Ihre Art als KIND angeben: {}.</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>Ne&amp;xt hole</source>
        <translation>&amp;Nächste Bahn</translation>
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
        <location filename="../../desk/hole_panel.py"/>
        <location filename="../../desk/toolbar.py"/>
        <source>No hole</source>
        <translation>Keine Bahn</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>No hole is chosen.</source>
        <translation>Keine Bahn ist gewählt.</translation>
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
        <location filename="../../desk/dates_panel.py"/>
        <source>No other date is in this project</source>
        <translation>Kein anderes Bilddatum im Projekt</translation>
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
        <location filename="../../desk/keeping.py"/>
        <source>Not put back: {}.</source>
        <translation>Nicht zurückgeholt: {}.</translation>
    </message>
    <message>
        <location filename="../../desk/hole_panel.py"/>
        <source>Note on hole {}</source>
        <translation>Notiz zu Bahn {}</translation>
    </message>
    <message>
        <location filename="../../desk/hole_panel.py"/>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>Nothing new was brought in.</source>
        <translation>Es wurde nichts Neues eingelesen.</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>Nothing of the kinds chosen above was found.</source>
        <translation>Von den oben gewählten Arten wurde nichts gefunden.</translation>
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
        <location filename="../../processing/export_windows.py"/>
        <source>Number of windows made</source>
        <translation>Anzahl der erstellten Bildausschnitte</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Of the fairway there, square to the line of play</source>
        <translation>Des Fairways an dieser Stelle, rechtwinklig zur Spiellinie</translation>
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
        <location filename="../../processing/algorithm.py"/>
        <source>Only these holes, such as 1,4,7-9. Empty: all holes.</source>
        <translation>Nur diese Bahnen, etwa 1,4,7-9. Leer: alle Bahnen.</translation>
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
        <location filename="../../desk/keeping.py"/>
        <source>Open it again to have them put back.</source>
        <translation>Ihn erneut öffnen, um sie zurückzuholen.</translation>
    </message>
    <message>
        <location filename="../../__init__.py"/>
        <source>Open the OSGeo4W Shell that came with QGIS and type “{command}”, then start QGIS again.</source>
        <translation>Die mit QGIS gelieferte OSGeo4W-Shell öffnen, „{command}“ eingeben und QGIS neu starten.</translation>
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
        <location filename="../../desk/toolbar.py"/>
        <source>OpenStreetMap</source>
        <translation>OpenStreetMap</translation>
    </message>
    <message>
        <location filename="../../processing/start_course.py"/>
        <source>Otherwise a scorecard with a bad row is refused. The rows left out are named in the log.</source>
        <translation>Sonst wird eine Scorekarte mit einer fehlerhaften Zeile abgelehnt. Die ausgelassenen Zeilen nennt das Protokoll.</translation>
    </message>
    <message>
        <location filename="../../desk/pointer.py"/>
        <source>Outline</source>
        <translation>Umriss</translation>
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
        <location filename="../../desk/figures.py"/>
        <location filename="../../desk/hole_panel.py"/>
        <source>Par</source>
        <translation>Par</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Par check</source>
        <translation>Par-Prüfung</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>Pixels of the picture per inch of the page.</source>
        <translation>Pixel des Bildes je Zoll der Seite.</translation>
    </message>
    <message>
        <location filename="../../desk/drawing_bar.py"/>
        <source>Place: {}</source>
        <translation>Setzen: {}</translation>
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
        <location filename="../../desk/figures.py"/>
        <source>Reach</source>
        <translation>Bis</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>Read the course again and measure anew. Edits are followed by themselves.</source>
        <translation>Den Platz erneut lesen und neu messen. Änderungen werden von selbst übernommen.</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>Remark: {}</source>
        <translation>Bemerkung: {}</translation>
    </message>
    <message>
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
        <source>Right</source>
        <translation>Rechts</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Run-out</source>
        <translation>Auslauf</translation>
    </message>
    <message>
        <location filename="../../desk/keeping.py"/>
        <source>Save often, and check that there is room on the disk.</source>
        <translation>Oft speichern und prüfen, ob auf dem Datenträger Platz ist.</translation>
    </message>
    <message>
        <location filename="../../desk/editing.py"/>
        <source>Save or undo what is being edited there, then try again.</source>
        <translation>Dortige Änderungen speichern oder rückgängig machen, dann erneut versuchen.</translation>
    </message>
    <message>
        <location filename="../../processing/start_course.py"/>
        <source>Say in which file the course is to be kept.</source>
        <translation>Angeben, in welcher Datei der Platz liegen soll.</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>Scale 1 :</source>
        <translation>Maßstab 1 :</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
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
        <location filename="../../desk/toolbar.py"/>
        <source>See the figures of a hole beside its drawing</source>
        <translation>Die Maße einer Bahn neben ihrer Zeichnung sehen</translation>
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
        <location filename="../../desk/dates.py"/>
        <source>Set its coordinate reference system in its properties, then try again.</source>
        <translation>In den Layereigenschaften das Koordinatenbezugssystem setzen, dann erneut versuchen.</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Short of green</source>
        <translation>Vor Grün</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>Show only</source>
        <translation>Nur zeigen</translation>
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
        <location filename="../../processing/import_features.py"/>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <location filename="../../processing/start_course.py"/>
        <source>Start a course</source>
        <translation>Platz anlegen</translation>
    </message>
    <message>
        <location filename="../../desk/in_hand.py"/>
        <source>Start a new one, or open one.</source>
        <translation>Einen neuen anlegen oder einen öffnen.</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Starts</source>
        <translation>Beginn</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>States</source>
        <translation>Angabe</translation>
    </message>
    <message>
        <location filename="../../desk/drawing_bar.py"/>
        <source>Straight sides from click to click</source>
        <translation>Gerade Seiten von Klick zu Klick</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>Swipe</source>
        <translation>Schieber</translation>
    </message>
    <message>
        <location filename="../../processing/algorithm.py"/>
        <source>Table {}</source>
        <translation>Tabelle {}</translation>
    </message>
    <message>
        <location filename="../../processing/start_course.py"/>
        <source>Take the good rows of a scorecard with bad ones</source>
        <translation>Von einer Scorekarte mit fehlerhaften Zeilen die guten übernehmen</translation>
    </message>
    <message>
        <location filename="../../desk/hole_panel.py"/>
        <source>Take the tool</source>
        <translation>Werkzeug nehmen</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Tee</source>
        <translation>Abschlag</translation>
    </message>
    <message>
        <location filename="../../desk/drawing_bar.py"/>
        <location filename="../../desk/hole_panel.py"/>
        <source>Tee set</source>
        <translation>Abschlagset</translation>
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
        <location filename="../../processing/export_windows.py"/>
        <source>The Rules of Golf (Rule 4.3a) do not allow the picture of a green larger than 1:480 to be used during a round. Say yes only for pictures that are not.</source>
        <translation>Die Golfregeln (Regel 4.3a) lassen nicht zu, dass während einer Runde das Bild eines Grüns benutzt wird, das größer als 1:480 ist. Nur für Bilder bejahen, die nicht dazu dienen.</translation>
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
        <source>The course</source>
        <translation>Der Platz</translation>
    </message>
    <message>
        <location filename="../../processing/algorithm.py"/>
        <source>The course file (.gpkg), or postgres:CONNECTION:SCHEMA for a course kept in a database.</source>
        <translation>Die Platzdatei (.gpkg) oder postgres:CONNECTION:SCHEMA für einen Platz in einer Datenbank.</translation>
    </message>
    <message>
        <location filename="../../processing/start_course.py"/>
        <source>The course file. Add it to a project, or bring features into it with “Bring features in”.</source>
        <translation>Die Platzdatei. Sie lässt sich einem Projekt hinzufügen oder mit „Objekte einlesen“ füllen.</translation>
    </message>
    <message>
        <location filename="../../desk/in_hand.py"/>
        <source>The course has no hole yet: draw its line of play, or bring features in.</source>
        <translation>Der Platz hat noch keine Bahn: ihre Spiellinie zeichnen oder Objekte einlesen.</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>The course has no holes.</source>
        <translation>Der Platz hat keine Bahnen.</translation>
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
        <location filename="../../desk/figures.py"/>
        <source>The feature; 4+5 is the middle between a pair</source>
        <translation>Das Objekt; 4+5 ist die Mitte zwischen einem Paar</translation>
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
        <location filename="../../processing/algorithm.py"/>
        <source>The folder “{}” cannot be made ({}).</source>
        <translation>Der Ordner „{}“ lässt sich nicht anlegen ({}).</translation>
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
        <location filename="../../desk/dates_panel.py"/>
        <source>The layer is not in the project any more.</source>
        <translation>Der Layer ist nicht mehr im Projekt.</translation>
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
        <location filename="../../desk/toolbar.py"/>
        <source>The log says more.</source>
        <translation>Mehr steht im Protokoll.</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>The map shows this date, and what is drawn is drawn from it.</source>
        <translation>Die Karte zeigt dieses Datum, und gezeichnet wird nach ihm.</translation>
    </message>
    <message>
        <location filename="../../processing/start_course.py"/>
        <source>The name of the course.</source>
        <translation>Der Name des Platzes.</translation>
    </message>
    <message>
        <location filename="../../processing/start_course.py"/>
        <source>The new course file (.gpkg). A file that exists is never overwritten.</source>
        <translation>Die neue Platzdatei (.gpkg). Eine vorhandene Datei wird nie überschrieben.</translation>
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
        <location filename="../../desk/figures.py"/>
        <source>The point of the green it states the distance to</source>
        <translation>Der Punkt des Grüns, bis zu dem sie die Entfernung angibt</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>The side of the line of play it lies on</source>
        <translation>Auf welcher Seite der Spiellinie es liegt</translation>
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
        <location filename="../../processing/measure_course.py"/>
        <source>The tables lengths, greens, distances, fairways, doglegs and layups. Distances are in the course’s unit, each with its standard error. What is doubtful stands as a remark beside the figure and in the log.</source>
        <translation>Die Tabellen lengths, greens, distances, fairways, doglegs und layups. Entfernungen stehen in der Einheit des Platzes, jede mit ihrem Standardfehler. Zweifelhaftes steht als Bemerkung neben dem Maß und im Protokoll.</translation>
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
        <location filename="../../desk/measure_dialog.py"/>
        <source>The tee sets whose figures are shown.</source>
        <translation>Die Abschlagsets, deren Maße gezeigt werden.</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>The true distance</source>
        <translation>Die wahre Entfernung</translation>
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
        <location filename="../../desk/keeping.py"/>
        <source>There already: {}.</source>
        <translation>Schon vorhanden: {}.</translation>
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
        <location filename="../../desk/measure_dialog.py"/>
        <source>There is nothing to remark on the course itself.</source>
        <translation>Zum Platz selbst ist nichts zu bemerken.</translation>
    </message>
    <message>
        <location filename="../../__init__.py"/>
        <source>This QGIS lacks {names}, without which nothing can be measured.</source>
        <translation>Diesem QGIS fehlt {names}; ohne das lässt sich nichts messen.</translation>
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
        <location filename="../../desk/figures.py"/>
        <source>To be past it; of a green its back</source>
        <translation>Um darüber hinaus zu sein; beim Grün bis zur Hinterkante</translation>
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
        <location filename="../../desk/figures.py"/>
        <source>To the green’s middle</source>
        <translation>Bis zur Mitte des Grüns</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>To the nearest point of it; of a green its front</source>
        <translation>Bis zum nächsten Punkt; beim Grün bis zur Vorderkante</translation>
    </message>
    <message>
        <location filename="../../processing/check_markers.py"/>
        <source>Tolerance (yards)</source>
        <translation>Toleranz (Yards)</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Towards</source>
        <translation>Richtung</translation>
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
        <location filename="../../desk/toolbar.py"/>
        <source>Turn the plugin “Processing” on in the list of plugins.</source>
        <translation>Die Erweiterung „Processing“ in der Liste der Erweiterungen einschalten.</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Turns</source>
        <translation>Knicke</translation>
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
        <location filename="../../desk/draw_tool.py"/>
        <source>Undo it, or move its corners with the vertex tool.</source>
        <translation>Rückgängig machen oder die Ecken mit dem Stützpunktwerkzeug verschieben.</translation>
    </message>
    <message>
        <location filename="../../processing/start_course.py"/>
        <source>Unit of tables and printed figures</source>
        <translation>Einheit der Tabellen und gedruckten Maße</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <location filename="../../desk/hole_panel.py"/>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>What a pixel covers on the ground</source>
        <translation>Was ein Pixel am Boden abdeckt</translation>
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
        <location filename="../../desk/figures.py"/>
        <source>What is measured to</source>
        <translation>Wohin gemessen wird</translation>
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
        <location filename="../../desk/figures.py"/>
        <source>What it states less what is true</source>
        <translation>Angabe minus wahre Entfernung</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>What remains to the green’s middle</source>
        <translation>Was bis zur Mitte des Grüns bleibt</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>What the checks found</source>
        <translation>Befunde der Prüfung</translation>
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
        <location filename="../../desk/dates_panel.py"/>
        <source>What was drawn from</source>
        <translation>Wonach gezeichnet wurde</translation>
    </message>
    <message>
        <location filename="../../processing/import_features.py"/>
        <source>What was left out, and why</source>
        <translation>Was ausgelassen wurde und warum</translation>
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
        <location filename="../../desk/figures.py"/>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
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
        <location filename="../../processing/import_features.py"/>
        <source>Write it as xmin,xmax,ymin,ymax, with [EPSG:4326] after it for degrees.</source>
        <translation>Als xmin,xmax,ymin,ymax schreiben, für Grad mit [EPSG:4326] dahinter.</translation>
    </message>
    <message>
        <location filename="../../desk/toolbar.py"/>
        <source>Write the figures of the hole on the map: to reach and clear, to the green, its size</source>
        <translation>Die Maße der Bahn auf die Karte schreiben: bis und über Hindernisse, zum Grün, seine Größe</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>Write the tables, with two decimals, to files in a folder.</source>
        <translation>Die Tabellen mit zwei Nachkommastellen in Dateien eines Ordners schreiben.</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>Wrong</source>
        <translation>Falsch</translation>
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
        <location filename="../../desk/figures.py"/>
        <source>across</source>
        <translation>quer</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>any date</source>
        <translation>jedem Datum</translation>
    </message>
    <message>
        <location filename="../../desk/hole_drawing.py"/>
        <source>at {}</source>
        <translation>bei {}</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>back</source>
        <translation>Hinterkante</translation>
    </message>
    <message>
        <location filename="../../desk/hole_drawing.py"/>
        <source>back {}</source>
        <translation>hinten {}</translation>
    </message>
    <message>
        <location filename="../../desk/drawing_bar.py"/>
        <source>clear</source>
        <translation>deutlich</translation>
    </message>
    <message>
        <location filename="../../desk/hole_drawing.py"/>
        <source>clear {}</source>
        <translation>über {}</translation>
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
        <location filename="../../desk/figures.py"/>
        <source>fits</source>
        <translation>passt</translation>
    </message>
    <message>
        <location filename="../../desk/drawing_bar.py"/>
        <source>from another source</source>
        <translation>aus anderer Quelle</translation>
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
        <location filename="../../desk/figures.py"/>
        <source>front</source>
        <translation>Vorderkante</translation>
    </message>
    <message>
        <location filename="../../desk/hole_drawing.py"/>
        <source>front {}</source>
        <translation>vorn {}</translation>
    </message>
    <message>
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
        <location filename="../../desk/hole_drawing.py"/>
        <source>leaves {}</source>
        <translation>Rest {}</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <location filename="../../desk/pointer.py"/>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <location filename="../../desk/hole_drawing.py"/>
        <source>measured {}</source>
        <translation>gemessen {}</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>middle</source>
        <translation>Mitte</translation>
    </message>
    <message>
        <location filename="../../desk/hole_drawing.py"/>
        <source>middle {}</source>
        <translation>Mitte {}</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>no date that is known ({})</source>
        <translation>keinem bekannten Datum ({})</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>off</source>
        <translation>weicht ab</translation>
    </message>
    <message>
        <location filename="../../desk/courses.py"/>
        <source>par {}</source>
        <translation>Par {}</translation>
    </message>
    <message>
        <location filename="../../desk/drawing_bar.py"/>
        <source>partly hidden</source>
        <translation>teilweise verdeckt</translation>
    </message>
    <message>
        <location filename="../../desk/hole_drawing.py"/>
        <source>play {}</source>
        <translation>{} spielen</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>png keeps every pixel as it is; jpeg makes smaller files, white where the image ends.</source>
        <translation>png behält jedes Pixel, wie es ist; jpeg ergibt kleinere Dateien, weiß, wo das Bild endet.</translation>
    </message>
    <message>
        <location filename="../../desk/hole_drawing.py"/>
        <source>reach {}</source>
        <translation>bis {}</translation>
    </message>
    <message>
        <location filename="../../desk/checks_panel.py"/>
        <source>repair</source>
        <translation>Reparatur</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <location filename="../../desk/pointer.py"/>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <location filename="../../desk/hole_drawing.py"/>
        <source>states {}</source>
        <translation>Angabe {}</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>stroke index {}</source>
        <translation>Stroke Index {}</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>tee</source>
        <translation>Abschlag</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>the tee</source>
        <translation>Abschlag</translation>
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
        <location filename="../../desk/dates_panel.py"/>
        <source>who is to be named beside it</source>
        <translation>wer daneben zu nennen ist</translation>
    </message>
    <message>
        <location filename="../../desk/dates.py"/>
        <source>without a day</source>
        <translation>ohne Tag</translation>
    </message>
    <message>
        <location filename="../../processing/start_course.py"/>
        <source>yd or m; it can be changed later.</source>
        <translation>yd oder m; lässt sich später ändern.</translation>
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
        <location filename="../../desk/map_figures.py"/>
        <source>{name} {0}</source>
        <translation>{name} {0}</translation>
    </message>
    <message>
        <location filename="../../processing/export_windows.py"/>
        <source>{name}: 1:{scale:g}, {up:.2f}° up</source>
        <translation>{name}: 1:{scale:g}, {up:.2f}° oben</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>{}
Its line of play is not drawn yet.</source>
        <translation>{}
Die Spiellinie ist noch nicht gezeichnet.</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>{} (not yet one of the course’s dates)</source>
        <translation>{} (noch kein Bilddatum des Platzes)</translation>
    </message>
    <message>
        <location filename="../../desk/dates_panel.py"/>
        <source>{} ({})</source>
        <translation>{} ({})</translation>
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
        <location filename="../../desk/dates_panel.py"/>
        <source>{} m</source>
        <translation>{} m</translation>
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
        <location filename="../../processing/measure_course.py"/>
        <source>{}: {} rows</source>
        <translation>{}: {} Zeilen</translation>
    </message>
    <message>
        <location filename="../../desk/figures.py"/>
        <source>±</source>
        <translation>±</translation>
    </message>
    <message>
        <location filename="../../desk/measure_dialog.py"/>
        <source>“{}” already holds tables: {}. Replace them?</source>
        <translation>„{}“ enthält schon Tabellen: {}. Ersetzen?</translation>
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
        <location filename="../../desk/dates.py"/>
        <source>“{}” is no date.</source>
        <translation>„{}“ ist kein Datum.</translation>
    </message>
    <message>
        <location filename="../../processing/import_features.py"/>
        <source>“{}” is not a vector layer that can be read.</source>
        <translation>„{}“ ist kein lesbarer Vektorlayer.</translation>
    </message>
</context>
</TS>
