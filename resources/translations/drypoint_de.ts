<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE" sourcelanguage="en">
<context>
    <name>core</name>
    <message>
        <location filename="../../app/drypoint/board/gerber_state.py"/>
        <source> ({count} times)</source>
        <translation> ({count}-mal)</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/speeds.py"/>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source> and </source>
        <translation> und </translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/outline.py"/>
        <source> of board {number}</source>
        <translation> von Platine {number}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/program_cuts.py"/>
        <source> on board {number}</source>
        <translation> auf Platine {number}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/table.py"/>
        <source>'{cell}' is not a height or place in the table.</source>
        <translation>„{cell}“ ist in der Tabelle weder Höhe noch Ort.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/voltage_table.py"/>
        <source>'{text}' is no voltage.</source>
        <translation>„{text}“ ist keine Spannung.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/commands.py"/>
        <source>--at</source>
        <translation>--at</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/commands.py"/>
        <source>--both-sides</source>
        <translation>--both-sides</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/commands.py"/>
        <source>--cut-out</source>
        <translation>--cut-out</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/commands.py"/>
        <source>--touches</source>
        <translation>--touches</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/clear_options.py"/>
        <source>--wide</source>
        <translation>--wide</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/clearing.py"/>
        <source>/min</source>
        <translation>/min</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>1 V-bit, {drills}, 1 mill</source>
        <translation>V, {drills}, 1 Fräser</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>1/min</source>
        <translation>1/min</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/aperture_shapes.py"/>
        <source>3 to 12 are allowed.</source>
        <translation>3 bis 12 sind erlaubt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/laser_safety.py"/>
        <source>A beam can set things alight. Stay with it for as long as it is on; an extinguisher at hand, nothing that burns nearby. Stop here is a stop in software; the power switch is the one that counts.</source>
        <translation>Ein Strahl kann Dinge in Brand setzen. Bleiben Sie dabei, solange er an ist; Löscher zur Hand, nichts Brennbares in der Nähe. Stopp ist hier ein Halt durch Software; was zählt, ist der Netzschalter.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>A bit described wrongly cuts grooves of another width: nets lose copper, or stay joined in gaps.</source>
        <translation>Ein falsch beschriebenes Werkzeug schneidet Nuten anderer Breite: Netze verlieren Kupfer oder bleiben in Engstellen verbunden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/grooves.py"/>
        <source>A bit of the same angle with a tip of less than {tip:.3f} mm would do.</source>
        <translation>Ein Stichel desselben Winkels mit einer Spitze unter {tip:.3f} mm würde genügen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/sideways.py"/>
        <source>A bit of {bit:.2f} mm has no room in a hole of {hole:.2f} mm.</source>
        <translation>Ein Werkzeug von {bit:.2f} mm hat in einem Loch von {hole:.2f} mm keinen Platz.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/tooling.py"/>
        <source>A blank that is turned the wrong way may show holes wherever they are looked for.</source>
        <translation>Ein falsch gewendeter Zuschnitt kann überall dort Löcher zeigen, wo sie gesucht werden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_plotter.py"/>
        <source>A block aperture cannot draw lines.</source>
        <translation>Eine Blockblende kann keine Linien ziehen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>A block aperture ends that never began.</source>
        <translation>Eine Blockblende endet, die nie begann.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>A block aperture has no end.</source>
        <translation>Eine Blockblende hat kein Ende.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/fit.py"/>
        <source>A board is found from two holes at least.</source>
        <translation>Eine Platine wird aus mindestens zwei Löchern gefunden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/burn_grid.py"/>
        <source>A burn grid needs powers above 0 up to 100 %, dwells above 0 and a pitch above 0.</source>
        <translation>Ein Brennraster braucht Leistungen über 0 bis 100 %, Verweilzeiten über 0 und einen Abstand über 0.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/sideways.py"/>
        <source>A burr or a chip? Clean the hole, then touch it again.</source>
        <translation>Ein Grat oder ein Span? Loch säubern, dann erneut antasten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill_body.py"/>
        <source>A circle is not larger than its tool.</source>
        <translation>Ein Kreis ist nicht größer als sein Werkzeug.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>A clamp that is not entered is a clamp the bit may run into: bits break and pieces fly. Wear eye protection.</source>
        <translation>In einen Spanner, der nicht eingetragen ist, kann das Werkzeug fahren: Werkzeuge brechen, Teile fliegen. Augenschutz tragen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>A class too large plans moves past the ends of the axes, and the machine runs against its stops.</source>
        <translation>Eine zu große Klasse plant Wege über die Achsenenden hinaus, und die Maschine fährt gegen ihre Anschläge.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/electrical.py"/>
        <source>A coating that is counted on but not there leaves too little clearance.</source>
        <translation>Eine Beschichtung, mit der gerechnet wird und die fehlt, lässt zu wenig Abstand.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>A command lacks its coordinates.</source>
        <translation>Einem Befehl fehlen seine Koordinaten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>A command lacks its value.</source>
        <translation>Einem Befehl fehlt sein Wert.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>A command needs a whole number.</source>
        <translation>Ein Befehl braucht eine ganze Zahl.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/blocks.py"/>
        <source>A comment ends that did not begin.</source>
        <translation>Ein Kommentar endet, der nicht begann.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/blocks.py"/>
        <source>A comment is not closed.</source>
        <translation>Ein Kommentar ist nicht geschlossen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_format.py"/>
        <source>A coordinate has {size} digits.</source>
        <translation>Eine Koordinate hat {size} Ziffern.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/coupon.py"/>
        <source>A coupon needs depths above 0 and gaps of 0 or more.</source>
        <translation>Ein Prüfstück braucht Tiefen über 0 und Abstände von 0 oder mehr.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/depth_coupon.py"/>
        <source>A coupon needs depths above 0.</source>
        <translation>Ein Prüfstück braucht Tiefen über 0.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/centrelines.py"/>
        <source>A cut of {widest:.3f} mm or less would do, or a bite of {taken:.3f} mm.</source>
        <translation>Ein Schnitt von {widest:.3f} mm oder weniger würde genügen, oder ein Einbiss von {taken:.3f} mm.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/writer.py"/>
        <location filename="../../app/drypoint/program/check.py"/>
        <location filename="../../app/drypoint/program/imported.py"/>
        <source>A cutting move has no feed.</source>
        <translation>Ein Schnittweg hat keinen Vorschub.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>A drill that is listed but not there stops the run at its change of bit.</source>
        <translation>Ein Bohrer, der eingetragen, aber nicht da ist, hält den Lauf beim Werkzeugwechsel auf.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>A drilling cycle needs R and Z.</source>
        <translation>Ein Bohrzyklus braucht R und Z.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>A drilling cycle's Z lies above its R.</source>
        <translation>Das Z eines Bohrzyklus liegt über seinem R.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>A dwell needs P, its time in seconds.</source>
        <translation>Ein Verweilen braucht P, seine Zeit in Sekunden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>A feed cannot be negative.</source>
        <translation>Ein Vorschub kann nicht negativ sein.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>A feed move has no feed.</source>
        <translation>Ein Vorschubweg hat keinen Vorschub.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill_body.py"/>
        <source>A hole comes before any tool is chosen.</source>
        <translation>Ein Loch kommt, bevor ein Werkzeug gewählt ist.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/hole_nets.py"/>
        <source>A hole of {diameter:.2f} mm meets copper of {nets}.</source>
        <translation>Ein Loch von {diameter:.2f} mm trifft Kupfer von {nets}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>A limit switch was hit: the machine stopped at once and has lost its position.</source>
        <translation>Ein Endschalter wurde getroffen: Die Maschine hielt sofort an und hat ihre Position verloren.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/writer.py"/>
        <source>A line is {count} characters long; the controller takes {limit}.</source>
        <translation>Eine Zeile ist {count} Zeichen lang; die Steuerung nimmt {limit}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/blocks.py"/>
        <source>A line number must be a whole number.</source>
        <translation>Eine Zeilennummer muss eine ganze Zahl sein.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_interpreter.py"/>
        <source>A line such as %FSLAX46Y46*% is missing.</source>
        <translation>Eine Zeile wie %FSLAX46Y46*% fehlt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>A line to be stored is too long for the controller's store.</source>
        <translation>Eine zu speichernde Zeile ist zu lang für den Speicher der Steuerung.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/linear.py"/>
        <source>A line with its uncertainty needs three points at least.</source>
        <translation>Eine Gerade mit ihrer Unsicherheit braucht mindestens drei Punkte.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/faults.py"/>
        <source>A line, or the answer to it, was lost on the cable.</source>
        <translation>Eine Zeile oder die Antwort darauf ging auf dem Kabel verloren.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/macro_primitives.py"/>
        <location filename="../../app/drypoint/board/macro_template.py"/>
        <source>A macro primitive has too few parameters.</source>
        <translation>Ein Makroelement hat zu wenige Parameter.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser_check.py"/>
        <source>A mark from a place that is not known.</source>
        <translation>Eine Marke von einem Ort, der nicht bekannt ist.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser_check.py"/>
        <source>A mark has no feed.</source>
        <translation>Eine Marke hat keinen Vorschub.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/head.py"/>
        <source>A mark is needed to measure the head.</source>
        <translation>Um den Kopf zu vermessen, ist eine Marke nötig.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser_check.py"/>
        <source>A mark that goes nowhere.</source>
        <translation>Eine Marke, die nirgendwohin führt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>A move would have left the machine's travel; it was not made.</source>
        <translation>Ein Weg hätte den Verfahrbereich verlassen; er wurde nicht gefahren.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/electrical.py"/>
        <source>A name that no net has checks nothing.</source>
        <translation>Ein Name, den kein Netz trägt, prüft nichts.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>A number in the line is missing or malformed.</source>
        <translation>Eine Zahl in der Zeile fehlt oder ist fehlerhaft.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/expressions.py"/>
        <source>A number is expected, not “{found}”.</source>
        <translation>Eine Zahl wird erwartet, nicht „{found}“.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/expressions.py"/>
        <source>A number is too large.</source>
        <translation>Eine Zahl ist zu groß.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>A pad without a hole inside such an area is not told from it: it would be marked too.</source>
        <translation>Eine Lötfläche ohne Loch in einer solchen Fläche wird davon nicht unterschieden: Sie würde mit markiert.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/electrical.py"/>
        <source>A pair has its own entry where it is lower or higher than against all others.</source>
        <translation>Ein Paar bekommt einen eigenen Eintrag, wo sie niedriger oder höher ist als gegen alle anderen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/blocks.py"/>
        <source>A parameter is named but not set.</source>
        <translation>Ein Parameter ist genannt, aber nicht gesetzt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/expressions.py"/>
        <source>A parameter's number must be 1 to 5399.</source>
        <translation>Die Nummer eines Parameters muss 1 bis 5399 sein.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>A pass was run at {run}, after the touches of {touched}.</source>
        <translation>Ein Durchgang lief um {run}, nach dem Antasten von {touched}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>A place for each board by itself, turned if need be; columns and rows are not used then.</source>
        <translation>Für jede Platine ein eigener Ort, bei Bedarf gedreht; Spalten und Reihen gelten dann nicht.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill_body.py"/>
        <source>A place lies more than 10 m out.</source>
        <translation>Ein Ort liegt mehr als 10 m entfernt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>A place lies more than 100 m out.</source>
        <translation>Ein Ort liegt mehr als 100 m entfernt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/aperture_shapes.py"/>
        <source>A polygon aperture cannot have {values:g} corners.</source>
        <translation>Eine Vieleckblende kann nicht {values:g} Ecken haben.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser_check.py"/>
        <source>A power below zero.</source>
        <translation>Eine Leistung unter null.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/guard.py"/>
        <source>A program may not change the controller's settings.</source>
        <translation>Ein Programm darf die Einstellungen der Steuerung nicht ändern.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser_check.py"/>
        <source>A pulse at a place that is not known.</source>
        <translation>Ein Puls an einem Ort, der nicht bekannt ist.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser.py"/>
        <source>A pulse lasts more than 0 and at most {longest_pulse:g} s.</source>
        <translation>Ein Puls dauert mehr als 0 und höchstens {longest_pulse:g} s.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser_check.py"/>
        <source>A pulse lasts {seconds:g} s; allowed is up to {longest_pulse:g} s.</source>
        <translation>Ein Puls dauert {seconds:g} s; erlaubt sind bis zu {longest_pulse:g} s.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/check.py"/>
        <source>A rapid move goes below the clearance height {clearance:g} mm.</source>
        <translation>Ein Eilgang geht unter die Sicherheitshöhe {clearance:g} mm.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/check.py"/>
        <source>A rapid move goes sideways before the height is known.</source>
        <translation>Ein Eilgang geht seitwärts, bevor die Höhe bekannt ist.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/check.py"/>
        <source>A rapid move starts below the clearance height {clearance:g} mm.</source>
        <translation>Ein Eilgang beginnt unter der Sicherheitshöhe {clearance:g} mm.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>A rate is set so high that the steps come too fast.</source>
        <translation>Eine Geschwindigkeit ist so hoch eingestellt, dass die Schritte zu schnell kommen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/blocks.py"/>
        <source>A real-time command does not belong in a file.</source>
        <translation>Ein Echtzeitbefehl gehört nicht in eine Datei.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/clearing.py"/>
        <source>A second, wider bit that cuts open copper. The V-bit of the grooves then goes only where the wide one does not fit.</source>
        <translation>Ein zweiter, breiterer Fräser für freies Kupfer. Der V-Stichel der Nuten läuft dann nur noch dort, wo der breite nicht hineinpasst.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>A shape wider than this gets a hatch; a narrower one gets rows along its edges.</source>
        <translation>Eine Form, die breiter ist, wird schraffiert; eine schmalere bekommt Reihen längs ihrer Ränder.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>A spindle speed cannot be negative.</source>
        <translation>Eine Spindeldrehzahl kann nicht negativ sein.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>A step-and-repeat with no copies is impossible.</source>
        <translation>Eine Wiederholung ohne Kopien ist unmöglich.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/passes/depth.py"/>
        <source>A target of {target} is no probability.</source>
        <translation>Ein Ziel von {target} ist keine Wahrscheinlichkeit.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/copper.py"/>
        <source>A tie on purpose is drawn this way. Check that it is one.</source>
        <translation>Eine gewollte Verbindung wird so gezeichnet. Prüfen Sie, ob es eine ist.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill.py"/>
        <source>A tool has no diameter.</source>
        <translation>Ein Werkzeug hat keinen Durchmesser.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>A tool length offset is given for an axis that has none.</source>
        <translation>Eine Werkzeuglängenkorrektur ist für eine Achse angegeben, die keine hat.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>A tool's number must be a whole number.</source>
        <translation>Eine Werkzeugnummer muss eine ganze Zahl sein.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>A value is negative that may not be.</source>
        <translation>Ein Wert ist negativ, der es nicht sein darf.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/voltage_table.py"/>
        <source>A voltage is a net, the other net if it is one pair, and volts.</source>
        <translation>Eine Spannung ist ein Netz, bei einem Paar das andere Netz, und Volt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/ratings.py"/>
        <source>A voltage must be 0 or more.</source>
        <translation>Eine Spannung muss 0 oder mehr sein.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/proof.py"/>
        <source>A wire is held against</source>
        <translation>Ein Draht wird gehalten an</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>A word occurs twice in the line.</source>
        <translation>Ein Wort kommt in der Zeile zweimal vor.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>A word of the line lacks its letter.</source>
        <translation>Einem Wort der Zeile fehlt sein Buchstabe.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>A wrong diameter makes the board too large or too small by that much.</source>
        <translation>Ein falscher Durchmesser macht die Platine um so viel zu groß oder zu klein.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>A wrong name lets the values of another material be used.</source>
        <translation>Ein falscher Name lässt die Werte eines anderen Werkstoffs gelten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/placed_cuts.py"/>
        <source>A {value} has no depth.</source>
        <translation>Ein {value} hat keine Tiefe.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/expressions.py"/>
        <source>ATAN needs two values: ATAN[…]/[…].</source>
        <translation>ATAN braucht zwei Werte: ATAN[…]/[…].</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Above one spot the rows stay apart; far below it the fill chars.</source>
        <translation>Über einem Fleck bleiben die Reihen getrennt; weit darunter verkohlt die Füllung.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/holes.py"/>
        <source>Add a drill or a smaller end mill to make it to size.</source>
        <translation>Einen Bohrer oder kleineren Schaftfräser hinzufügen, damit es maßhaltig wird.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/holes.py"/>
        <source>Add a smaller bit.</source>
        <translation>Ein kleineres Werkzeug hinzufügen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_source.py"/>
        <source>Add it as G-code.</source>
        <translation>Als G-Code hinzufügen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_source.py"/>
        <source>Add it as a drill file.</source>
        <translation>Als Bohrdatei hinzufügen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_source.py"/>
        <source>Add it as a netlist.</source>
        <translation>Als Netzliste hinzufügen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/load.py"/>
        <source>Add it if there is one.</source>
        <translation>Hinzufügen, falls es eine gibt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/programs.py"/>
        <source>Add the copper's Gerber file to have the cuts checked.</source>
        <translation>Die Gerber-Datei des Kupfers hinzufügen, damit die Schnitte geprüft werden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/programs.py"/>
        <source>Add the outline's file, have the rectangle cut out (page Cuts, or --cut-out), or keep this.</source>
        <translation>Die Datei des Umrisses hinzufügen, das Rechteck ausfräsen lassen (Seite Schnitte oder --cut-out) oder es so lassen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/imported.py"/>
        <source>All that the programs cut lies below z = 0, as if that were on the copper.</source>
        <translation>Alles, was die Programme schneiden, liegt unter z = 0, als läge das auf dem Kupfer.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>All, root mean square</source>
        <translation>Alle, quadratisches Mittel</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/legend.py"/>
        <source>Allow a smaller clearance.</source>
        <translation>Einen kleineren Abstand erlauben.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/warp.py"/>
        <source>Allow at least {error:.1f} µm of chord error.</source>
        <translation>Mindestens {error:.1f} µm Sehnenfehler erlauben.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/passes/depth.py"/>
        <source>Allow more depth, or use a finer bit that stays narrow when it goes deeper.</source>
        <translation>Mehr Tiefe erlauben oder einen feineren Stichel nehmen, der auch tiefer schmal bleibt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/wave_words.py"/>
        <source>Along X, every {length:.1f} mm, {height:.0f} µm from crest to trough.</source>
        <translation>Entlang X, alle {length:.1f} mm, {height:.0f} µm von Berg bis Tal.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/wave_words.py"/>
        <source>Along Y, every {length:.1f} mm, {height:.0f} µm from crest to trough.</source>
        <translation>Entlang Y, alle {length:.1f} mm, {height:.0f} µm von Berg bis Tal.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Along an axis its play shows; across both it evens out.</source>
        <translation>Längs einer Achse zeigt sich ihr Spiel; quer über beide gleicht es sich aus.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/macro_expressions.py"/>
        <source>An aperture macro divides by zero.</source>
        <translation>Ein Blendenmakro teilt durch null.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/macro_template.py"/>
        <source>An aperture macro has no name.</source>
        <translation>Ein Blendenmakro hat keinen Namen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/aperture_shapes.py"/>
        <source>An aperture {kind} cannot have {count} parameters.</source>
        <translation>Eine Blende {kind} kann nicht {count} Parameter haben.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>An arc by radius needs an end.</source>
        <translation>Ein Bogen mit Radius braucht ein Ende.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>An arc has both a radius and a centre.</source>
        <translation>Ein Bogen hat sowohl Radius als auch Mittelpunkt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>An arc has neither end nor centre.</source>
        <translation>Ein Bogen hat weder Ende noch Mittelpunkt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill_body.py"/>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>An arc has neither radius nor centre.</source>
        <translation>Ein Bogen hat weder Radius noch Mittelpunkt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/check.py"/>
        <source>An arc has no centre.</source>
        <translation>Ein Bogen hat keinen Mittelpunkt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>An arc lacks coordinates in its plane.</source>
        <translation>Einem Bogen fehlen Koordinaten in seiner Ebene.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>An arc lacks its centre.</source>
        <translation>Einem Bogen fehlt sein Mittelpunkt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_plotter.py"/>
        <source>An arc reaches more than a kilometre away.</source>
        <translation>Ein Bogen reicht mehr als einen Kilometer weit.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/attributes.py"/>
        <source>An attribute has no usable name.</source>
        <translation>Ein Attribut hat keinen brauchbaren Namen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/electrical.py"/>
        <source>An effective value entered for a peak asks for too little clearance: 230 V of mains peak at 325 V.</source>
        <translation>Ein Effektivwert statt des Scheitelwerts verlangt zu wenig Abstand: 230 V Netzspannung haben 325 V Scheitelwert.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/expressions.py"/>
        <source>An expression is nested too deep.</source>
        <translation>Ein Ausdruck ist zu tief geschachtelt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/expressions.py"/>
        <source>An expression lacks its “]” or an operation.</source>
        <translation>Einem Ausdruck fehlt seine „]“ oder ein Rechenzeichen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/layers.py"/>
        <source>An opening in a drill file is not round.</source>
        <translation>Eine Öffnung in einer Bohrdatei ist nicht rund.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Angle between the two flanks.</source>
        <translation>Winkel zwischen den beiden Flanken.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Another batch or colour may need another grid.</source>
        <translation>Eine andere Charge oder Farbe kann ein anderes Raster brauchen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/outline.py"/>
        <source>Another closed shape lies outside the outline.</source>
        <translation>Eine weitere geschlossene Form liegt außerhalb des Umrisses.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/clearing.py"/>
        <source>Another place is cleared.</source>
        <translation>Es wird an anderer Stelle geräumt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>Aperture D{number} is defined again; both hold, each from its place on.</source>
        <translation>Blende D{number} wird noch einmal festgelegt; beide gelten, jede von ihrer Stelle an.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_interpreter.py"/>
        <source>Aperture D{number} is used but not defined.</source>
        <translation>Blende D{number} wird benutzt, ist aber nicht festgelegt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/play.py"/>
        <source>As many contacts made as broken are needed, two of each at least.</source>
        <translation>Es braucht ebenso viele geschlossene wie geöffnete Kontakte, mindestens je zwei.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/grooves.py"/>
        <source>At least one loop is needed.</source>
        <translation>Mindestens eine Schleife ist nötig.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/wave_words.py"/>
        <source>At {angle:.0f}° to X, every {length:.1f} mm, {height:.0f} µm from crest to trough.</source>
        <translation>{angle:.0f}° gegen X, alle {length:.1f} mm, {height:.0f} µm von Berg bis Tal.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/speeds.py"/>
        <source>At {reached:.0f} turns {name} cuts chips as thick as meant with a feed of {feed:.0f} mm/min; lower the others alike.</source>
        <translation>Bei {reached:.0f} Umdrehungen schneidet {name} mit einem Vorschub von {feed:.0f} mm/min so dicke Späne wie gemeint; die anderen ebenso senken.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/laser_safety.py"/>
        <source>Bare laminate under a laser is not acknowledged.</source>
        <translation>Blankes Laminat unter einem Laser ist nicht bestätigt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Bd</source>
        <translation>Bd</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source>Before anything turns</source>
        <translation>Bevor sich etwas dreht</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <source>Before laser light</source>
        <translation>Vor dem Laserlicht</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Believing it too good promises a better place than the legend gets.</source>
        <translation>Ihm zu viel zu glauben verspricht einen besseren Ort, als die Beschriftung bekommt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/play.py"/>
        <source>Beside a wall of copper, {upper}</source>
        <translation>Neben einer Wand aus Kupfer, {upper}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <location filename="../../app/drypoint/ui/machine_side/run_progress.py"/>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <location filename="../../app/drypoint/ui/machine_side/touching_off.py"/>
        <source>Bit</source>
        <translation>Werkzeug</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/contact.py"/>
        <source>Bit in the air, clip off. The other wire sits on the still bit or its collet: bearings conduct badly.</source>
        <translation>Werkzeug in der Luft, Klemme ab. Der andere Draht sitzt am stehenden Werkzeug oder an seiner Spannzange: Lager leiten schlecht.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/bit_change.py"/>
        <source>Bits are sharp; wear gloves or use a holder.</source>
        <translation>Werkzeuge sind scharf; Handschuhe tragen oder einen Halter benutzen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <location filename="../../app/drypoint/session/layout.py"/>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>Blank</source>
        <translation>Zuschnitt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/layout.py"/>
        <source>Blank: lower left of the board at {x:.1f}, {y:.1f} mm</source>
        <translation>Zuschnitt: Platine unten links bei {x:.1f}, {y:.1f} mm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/derive.py"/>
        <location filename="../../app/drypoint/session/export.py"/>
        <location filename="../../app/drypoint/ui/canvas/board_view.py"/>
        <location filename="../../app/drypoint/ui/machine_side/remapping.py"/>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>Board</source>
        <translation>Platine</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <source>Board and blank</source>
        <translation>Platine und Zuschnitt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/running.py"/>
        <source>Board clamped, clamps outside the path, extraction on: the dust of glass-fibre laminate irritates skin, eyes and airways.</source>
        <translation>Platine gespannt, Spanner nicht im Weg, Absaugung an: Staub von Glasfaserlaminat reizt Haut, Augen und Atemwege.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>Board on the blank</source>
        <translation>Platine auf dem Zuschnitt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/panel.py"/>
        <location filename="../../app/drypoint/session/boards.py"/>
        <location filename="../../app/drypoint/ui/design_side/imports.py"/>
        <source>Boards on the blank</source>
        <translation>Platinen auf dem Zuschnitt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/panel.py"/>
        <source>Boards on the blank: {columns} × {rows}</source>
        <translation>Platinen auf dem Zuschnitt: {columns} × {rows}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Boards that overlap or lie too close for the end mill are refused.</source>
        <translation>Platinen, die sich überlappen oder für den Schaftfräser zu dicht liegen, werden abgelehnt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/panel.py"/>
        <source>Boards {a} and {b} lie {near:.2f} mm apart; {gap:.2f} mm are needed.</source>
        <translation>Platinen {a} und {b} liegen {near:.2f} mm auseinander; {gap:.2f} mm sind nötig.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/panel.py"/>
        <source>Boards {a} and {b} overlap.</source>
        <translation>Platinen {a} und {b} überlappen sich.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/panel.py"/>
        <source>Boards {a} and {b} touch.</source>
        <translation>Platinen {a} und {b} berühren sich.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/placed_cuts.py"/>
        <source>Bored holes</source>
        <translation>Gefräste Löcher</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Bridges that hold the board in the blank until the end.</source>
        <translation>Stege, die die Platine bis zum Schluss im Zuschnitt halten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/sideways.py"/>
        <source>Bring it over the middle of the hole, or farther off the edge. Is it thinner than the hole?</source>
        <translation>Bringen Sie es über die Lochmitte oder weiter vom Rand weg. Ist es dünner als das Loch?</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/bit_change.py"/>
        <location filename="../../app/drypoint/machine/procedures/resuming.py"/>
        <location filename="../../app/drypoint/session/actions/pattern_run.py"/>
        <source>Bring the bit a few millimetres above the copper at the zero spot.</source>
        <translation>Bringen Sie das Werkzeug einige Millimeter über das Kupfer am Nullpunkt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/play.py"/>
        <source>Bring the bit beside an edge of the copper that lies towards larger {upper}, less than 2 mm off it and about 1 mm above the copper's height. Use a drill or an end mill.</source>
        <translation>Bringen Sie das Werkzeug neben eine Kante des Kupfers, die zu größerem {upper} hin liegt, weniger als 2 mm davor und etwa 1 mm über die Höhe des Kupfers. Einen Bohrer oder Schaftfräser nehmen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/find.py"/>
        <source>Bring the bit exactly over reference hole {label}, about 1 mm above it. Come from the left and from below at the end: play is taken up the same way at every hole then.</source>
        <translation>Bringen Sie das Werkzeug genau über Bezugsloch {label}, etwa 1 mm darüber. Kommen Sie zuletzt von links und von unten: So ist das Spiel an jedem Loch auf dieselbe Weise aufgehoben.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/play.py"/>
        <source>Bring the bit nearer to it, deep enough, and see that the clip is on this copper.</source>
        <translation>Bringen Sie das Werkzeug näher heran, tief genug, und sehen Sie nach, ob die Klemme auf diesem Kupfer sitzt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/play.py"/>
        <source>Bring the bit over clean copper, about 1 mm above it.</source>
        <translation>Bringen Sie das Werkzeug über sauberes Kupfer, etwa 1 mm darüber.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/measure.py"/>
        <source>Bring the bit over the copper {inset:g} mm in from the left and from the front edge of the blank, about 1 mm above it.</source>
        <translation>Bringen Sie das Werkzeug über das Kupfer, {inset:g} mm von der linken und von der vorderen Kante des Zuschnitts, etwa 1 mm darüber.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/touch_off.py"/>
        <source>Bring the bit over the middle of hole {label}, about 1 mm above it. It is then let down into the hole and feels for its rim.</source>
        <translation>Bringen Sie das Werkzeug über die Mitte von Loch {label}, etwa 1 mm darüber. Es wird dann in das Loch abgesenkt und fühlt nach dessen Rand.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/play.py"/>
        <source>Bring the bit over the middle of hole {label}, about 1 mm above it; it is then let down into the hole and touches its wall. Use a drill that is thinner than the hole.</source>
        <translation>Bringen Sie das Werkzeug über die Mitte von Loch {label}, etwa 1 mm darüber; es wird dann in das Loch abgesenkt und berührt dessen Wand. Einen Bohrer nehmen, der dünner als das Loch ist.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/touching.py"/>
        <source>Bring the bit to a few millimetres above the copper and try again.</source>
        <translation>Bringen Sie das Werkzeug auf wenige Millimeter über das Kupfer und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/bit_change.py"/>
        <source>Bring the bit well clear of board and clamps.</source>
        <translation>Bringen Sie das Werkzeug weit weg von Platine und Spannern.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/find.py"/>
        <source>Bring the light spot exactly over the middle of reference hole {label}. Come from the left and from below at the end: play is taken up the same way at every hole then.</source>
        <translation>Bringen Sie den Lichtpunkt genau über die Mitte von Bezugsloch {label}. Kommen Sie zuletzt von links und von unten: So ist das Spiel an jedem Loch auf dieselbe Weise aufgehoben.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/head.py"/>
        <source>Bring the {what} exactly over reference hole {label}.</source>
        <translation>Bringen Sie {what} genau über Bezugsloch {label}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/legend.py"/>
        <source>Burn a grid on it first.</source>
        <translation>Zuerst ein Raster darauf brennen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/burn.py"/>
        <source>Burn a new one.</source>
        <translation>Ein neues brennen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/burn.py"/>
        <location filename="../../app/drypoint/session/grid.py"/>
        <location filename="../../app/drypoint/session/legend.py"/>
        <location filename="../../app/drypoint/ui/legend_side/sheet.py"/>
        <source>Burn grid</source>
        <translation>Brennraster</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/legend.py"/>
        <location filename="../../app/drypoint/session/run_titles.py"/>
        <source>Burn grid on {material}</source>
        <translation>Brennraster auf {material}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/coupons.py"/>
        <source>Burn the grid from where the light spot stands, to its right and behind it.</source>
        <translation>Das Raster von dort aus brennen, wo der Lichtpunkt steht, nach rechts und nach hinten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/laser_safety.py"/>
        <source>Burnt glass-fibre or paper laminate gives off toxic and corrosive gases, and it can catch fire. It is not advised; a coating that its maker declares laser-safe is the better way.</source>
        <translation>Verbranntes Glasfaser- oder Papierlaminat setzt giftige und ätzende Gase frei und kann Feuer fangen. Davon wird abgeraten; eine Beschichtung, die ihr Hersteller für lasersicher erklärt, ist der bessere Weg.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Burnt laminate gives off toxic and corrosive gases and can catch fire.</source>
        <translation>Verbranntes Laminat setzt giftige und ätzende Gase frei und kann Feuer fangen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/registration.py"/>
        <source>Check that they are of one board, and the drill file's units.</source>
        <translation>Prüfen Sie, ob sie von einer Platine sind, und die Einheiten der Bohrdatei.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/aperture_shapes.py"/>
        <source>Check the aperture's parameters.</source>
        <translation>Prüfen Sie die Parameter der Blende.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bench/link.py"/>
        <location filename="../../app/drypoint/machine/channel.py"/>
        <location filename="../../app/drypoint/machine/serial_link.py"/>
        <source>Check the cable and the power, then connect again; the run can be resumed.</source>
        <translation>Kabel und Strom prüfen, dann neu verbinden; der Lauf kann fortgesetzt werden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/store.py"/>
        <source>Check the disk and the room on it; the job is as it was.</source>
        <translation>Das Laufwerk und seinen freien Platz prüfen; der Auftrag ist, wie er war.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/store.py"/>
        <source>Check the folder and its rights.</source>
        <translation>Den Ordner und seine Rechte prüfen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/store.py"/>
        <source>Check the folder, its rights and the room on the disk.</source>
        <translation>Den Ordner, seine Rechte und den Platz auf der Platte prüfen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/store.py"/>
        <source>Check the name, or prepare a new job.</source>
        <translation>Den Namen prüfen oder einen neuen Auftrag vorbereiten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/commands.py"/>
        <source>Check the name.</source>
        <translation>Den Namen prüfen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_source.py"/>
        <source>Check the path.</source>
        <translation>Den Pfad prüfen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser_check.py"/>
        <source>Checking the beam</source>
        <translation>Der Strahl wird geprüft</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/check.py"/>
        <source>Checking the lines</source>
        <translation>Die Zeilen werden geprüft</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/turn.py"/>
        <source>Chips lie under the board: clean bed and copper, or it lies askew and hollow.</source>
        <translation>Unter der Platine liegen Späne: Tisch und Kupfer säubern, sonst liegt sie schief und hohl.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/archive.py"/>
        <source>Choose Gerber and drill files.</source>
        <translation>Gerber- und Bohrdateien wählen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/schema.py"/>
        <location filename="../../app/drypoint/job/store.py"/>
        <source>Choose a .drypoint file.</source>
        <translation>Eine .drypoint-Datei wählen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>Choose a G-code file.</source>
        <translation>Eine G-Code-Datei wählen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_source.py"/>
        <source>Choose a Gerber layer file (often .gbr, .gtl, .gbl, .gko).</source>
        <translation>Eine Gerber-Lagendatei wählen (oft .gbr, .gtl, .gbl, .gko).</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/imported.py"/>
        <source>Choose a bit of the job for it.</source>
        <translation>Ein Werkzeug des Auftrags dafür wählen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/work.py"/>
        <source>Choose a larger machine, a smaller blank, or turn the board.</source>
        <translation>Eine größere Maschine oder einen kleineren Zuschnitt wählen, oder die Platine drehen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/work.py"/>
        <source>Choose a larger machine, or turn the board on the bed.</source>
        <translation>Eine größere Maschine wählen oder die Platine auf dem Tisch drehen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/outline.py"/>
        <source>Choose a smaller end mill.</source>
        <translation>Einen kleineren Schaftfräser wählen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/text_source.py"/>
        <source>Choose a text export of the design.</source>
        <translation>Eine Textausgabe des Entwurfs wählen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/rest.py"/>
        <source>Choose a wider bit, or more depth.</source>
        <translation>Einen breiteren Fräser wählen oder mehr Tiefe.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill.py"/>
        <source>Choose an Excellon or XNC file.</source>
        <translation>Eine Excellon- oder XNC-Datei wählen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/holes.py"/>
        <source>Choose an end mill of {diameter:.2f} mm or less.</source>
        <translation>Einen Schaftfräser von {diameter:.2f} mm oder weniger wählen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/coupon.py"/>
        <location filename="../../app/drypoint/session/actions/coupon_job.py"/>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>Choose another folder.</source>
        <translation>Einen anderen Ordner wählen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/program_cuts.py"/>
        <source>Choose another for the grooves.</source>
        <translation>Ein anderes für die Nuten wählen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/session.py"/>
        <source>Choose another name.</source>
        <translation>Einen anderen Namen wählen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/depth_check.py"/>
        <source>Choose another.</source>
        <translation>Ein anderes wählen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/program_cuts.py"/>
        <source>Choose its bits, choose another program, or none to cut the outline as planned here.</source>
        <translation>Seine Werkzeuge wählen, ein anderes Programm wählen, oder keines, um den Umriss wie hier geplant zu schneiden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/turn.py"/>
        <source>Choose its file, or turn the board over for the legend only.</source>
        <translation>Seine Datei wählen oder die Platine nur für die Beschriftung wenden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/layers.py"/>
        <source>Choose its role if it is needed.</source>
        <translation>Seine Rolle wählen, falls sie nötig ist.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/imported.py"/>
        <source>Choose one for every tool.</source>
        <translation>Für jedes Werkzeug eines wählen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/work.py"/>
        <source>Choose one of: {names}.</source>
        <translation>Eines von diesen wählen: {names}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/programs.py"/>
        <source>Choose other files.</source>
        <translation>Andere Dateien wählen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/archive.py"/>
        <source>Choose the board's folder.</source>
        <translation>Den Ordner der Platine wählen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/layers.py"/>
        <source>Choose the file that is the copper, or give it its role.</source>
        <translation>Die Datei wählen, die das Kupfer ist, oder ihr ihre Rolle geben.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/legend.py"/>
        <source>Choose the file that is the legend.</source>
        <translation>Die Datei wählen, die die Beschriftung ist.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/derive.py"/>
        <source>Choose the folder or files.</source>
        <translation>Den Ordner oder Dateien wählen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/load.py"/>
        <source>Choose the outline's file, or keep this.</source>
        <translation>Die Datei des Umrisses wählen oder diesen behalten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/layers.py"/>
        <source>Choose the right one by its role.</source>
        <translation>Die richtige nach ihrer Rolle wählen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/find.py"/>
        <source>Choose the way by hand wheel; or jog to the hole.</source>
        <translation>Den Weg mit Handrad wählen oder zum Loch joggen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/imported.py"/>
        <source>Choose what z = 0 is (page Cuts, or --program-zero): wrong, all is cut too high or too deep.</source>
        <translation>Wählen, was z = 0 ist (Seite Schnitte oder --program-zero): falsch wird alles zu hoch oder zu tief geschnitten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Chosen wrongly, everything is cut too high or too deep by the laminate's thickness.</source>
        <translation>Falsch gewählt wird alles um die Dicke des Laminats zu hoch oder zu tief geschnitten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/measure.py"/>
        <location filename="../../app/drypoint/session/rehearsal.py"/>
        <source>Clamp it there</source>
        <translation>Dort spannen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/give.py"/>
        <source>Clamp it there, then touch again.</source>
        <translation>Dort spannen, dann erneut antasten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/layout.py"/>
        <source>Clamp {number} is {gap:.1f} mm from the outline; {margin:.1f} mm were asked for. Move it outwards by {margin2:.1f} mm, or allow less.</source>
        <translation>Spanner {number} ist {gap:.1f} mm vom Umriss entfernt; {margin:.1f} mm waren verlangt. Um {margin2:.1f} mm nach außen rücken oder weniger erlauben.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>Clamped anew at {time}.</source>
        <translation>Neu gespannt um {time}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>Clamped anew at {time}: {note}.</source>
        <translation>Neu gespannt um {time}: {note}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <source>Clamps</source>
        <translation>Spanner</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/touching.py"/>
        <source>Clean the copper and the bit there, see that the board lies firmly, then set zero again.</source>
        <translation>Kupfer und Werkzeug dort säubern, nachsehen, ob die Platine fest liegt, dann Null neu setzen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/proof.py"/>
        <source>Clean the copper under the clip, look at the wire, then touch again.</source>
        <translation>Das Kupfer unter der Klemme säubern, den Draht ansehen, dann erneut antasten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/play.py"/>
        <source>Clean wall and bit; look at clip and wire. A chip may hang between them.</source>
        <translation>Wand und Werkzeug säubern; Klemme und Draht ansehen. Dazwischen kann ein Span hängen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/placed_cuts.py"/>
        <source>Clearing</source>
        <translation>Ausräumen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/place.py"/>
        <source>Clearing: {bit}</source>
        <translation>Ausräumen: {bit}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/contact.py"/>
        <source>Clip off</source>
        <translation>Klemme ab</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/export.py"/>
        <source>Clip off? Clamps tight? Eyes and lungs protected? Hand on the power switch.</source>
        <translation>Klemme ab? Spanner fest? Augen und Lunge geschützt? Hand am Netzschalter.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/contact.py"/>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>Clip on the copper</source>
        <translation>Klemme am Kupfer</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Close it and home again.</source>
        <translation>Schließen und neu referenzieren.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/store.py"/>
        <source>Close it there and try again.</source>
        <translation>Dort schließen und noch einmal versuchen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Close it, then resume.</source>
        <translation>Schließen, dann fortsetzen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/blocks.py"/>
        <source>Comments cannot be nested.</source>
        <translation>Kommentare können nicht geschachtelt werden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bench/link.py"/>
        <location filename="../../app/drypoint/bench/remote.py"/>
        <location filename="../../app/drypoint/bench/served.py"/>
        <source>Connect again.</source>
        <translation>Verbinden Sie noch einmal.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bench/remote.py"/>
        <source>Connect again: a bench with a new sheet is made.</source>
        <translation>Verbinden Sie noch einmal: Ein Prüfstand mit neuem Blech entsteht.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser_check.py"/>
        <source>Constant power is set by something other than a pulse: a dwell at rest.</source>
        <translation>Gleichbleibende Leistung wird von etwas anderem gesetzt als einem Puls: einem Verweilen in Ruhe.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/contact.py"/>
        <location filename="../../app/drypoint/ui/machine_side/jogging.py"/>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>Contact circuit</source>
        <translation>Kontaktkreis</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <source>Contact clip off before the spindle starts.</source>
        <translation>Kontaktklemme ab, bevor die Spindel anläuft.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/panel.py"/>
        <source>Copies must number 1 to {most}.</source>
        <translation>Kopien müssen 1 bis {most} sein.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/laser_safety.py"/>
        <source>Copper and other bright metal reflect the beam: none of it bare under the beam or at its side.</source>
        <translation>Kupfer und anderes blankes Metall werfen den Strahl zurück: nichts davon offen unter dem Strahl oder neben ihm.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Cut all grooves deeper and deeper in steps of 0.03 mm, in place of one careful pass at the depth that the copper's height asks for.</source>
        <translation>Alle Nuten in Stufen von 0,03 mm tiefer und tiefer schneiden, statt eines sorgfältigen Durchgangs in der Tiefe, die die Höhe des Kupfers verlangt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Cut the rectangle round everything that ready-made programs cut out at the end, with tabs, where there is no outline.</source>
        <translation>Wo es keinen Umriss gibt, wird am Ende das Rechteck um alles, was fertige Programme schneiden, mit Stegen ausgefräst.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/pattern_rehearsal.py"/>
        <source>Cutting the test pattern</source>
        <translation>Das Testmuster schneiden</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/marking.py"/>
        <location filename="../../app/drypoint/ui/legend_side/sheet.py"/>
        <source>Dark walk</source>
        <translation>Dunkler Rundgang</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/faults.py"/>
        <source>Declined: {what}.</source>
        <translation>Abgelehnt: {what}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/coupon_job.py"/>
        <source>Deeper than set</source>
        <translation>Tiefer als eingestellt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Deepest cut taken at once; the outline is cut in as many rounds as it takes.</source>
        <translation>Tiefster Schnitt auf einmal; der Umriss wird in so vielen Runden geschnitten, wie es braucht.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/clearing.py"/>
        <source>Deepest cut that an end mill takes at once.</source>
        <translation>Tiefster Schnitt, den ein Schaftfräser auf einmal nimmt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <location filename="../../app/drypoint/ui/design_side/depth_check.py"/>
        <source>Depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Depth of one peck; then the drill comes up and clears. 0 drills in one go.</source>
        <translation>Tiefe eines Hubs; dann kommt der Bohrer hoch und wirft Späne aus. 0 bohrt in einem Zug.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/clearing.py"/>
        <source>Depth of the wide bit below the touched copper, the same everywhere. Where that may not reach through, the V-bit cuts the same line again.</source>
        <translation>Tiefe des breiten Fräsers unter dem angetasteten Kupfer, überall gleich. Wo das vielleicht nicht hindurchreicht, schneidet der V-Stichel dieselbe Linie noch einmal.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/width_coupon.py"/>
        <source>Depths, widths and the copper's thickness must be above 0.</source>
        <translation>Tiefen, Breiten und die Dicke des Kupfers müssen über 0 liegen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <source>Design place</source>
        <translation>Ort im Entwurf</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/play.py"/>
        <source>Dial gauge along {upper}</source>
        <translation>Messuhr längs {upper}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Diameter of the drill.</source>
        <translation>Durchmesser des Bohrers.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Diameter of the end mill, measured.</source>
        <translation>Durchmesser des Schaftfräsers, gemessen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/clearing.py"/>
        <source>Diameter of the wide bit where it is an end mill.</source>
        <translation>Durchmesser des breiten Fräsers, wenn es ein Schaftfräser ist.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Diameter of what one pulse marks: measure it on a burn grid.</source>
        <translation>Durchmesser dessen, was ein Puls markiert: auf einem Brennraster messen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Direction of the rows of a filled shape.</source>
        <translation>Richtung der Reihen einer gefüllten Form.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Distance between the pulses of a row.</source>
        <translation>Abstand der Pulse einer Reihe.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Distance between the rows of a filled shape.</source>
        <translation>Abstand der Reihen einer gefüllten Form.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Distance kept between the edge of a mark and a pad or hole.</source>
        <translation>Abstand zwischen dem Rand einer Marke und einer Lötfläche oder einem Loch.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <source>Do not leave the machine alone while it moves.</source>
        <translation>Die Maschine nicht allein lassen, solange sie sich bewegt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/touching.py"/>
        <source>Does a chip hang between bit and copper, or is the wire shorted?</source>
        <translation>Hängt ein Span zwischen Werkzeug und Kupfer, oder ist der Draht kurzgeschlossen?</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/naming.py"/>
        <source>Drill {size:.1f}</source>
        <translation>Bohrer {size:.1f}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/naming.py"/>
        <source>Drill {size:.1f} mm</source>
        <translation>Bohrer {size:.1f} mm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/naming.py"/>
        <source>Drill {size:g} mm</source>
        <translation>Bohrer {size:g} mm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/holes.py"/>
        <source>Drilled with {diameter:.2f} mm only.</source>
        <translation>Nur mit {diameter:.2f} mm gebohrt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/preset.py"/>
        <source>Drypoint did not store it. If it moves the machine, remove it.</source>
        <translation>Drypoint hat sie nicht gespeichert. Wenn sie die Maschine bewegt, entfernen Sie sie.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/dust.py"/>
        <source>Dust in the grooves joins nets and lifts the bit: clean the board before it goes on.</source>
        <translation>Staub in den Nuten verbindet Netze und hebt das Werkzeug: die Platine säubern, bevor es weitergeht.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Dust left in grooves holds nets together, makes touches lie and lifts the next bit.</source>
        <translation>Staub in Nuten hält Netze zusammen, verfälscht Antastungen und hebt das nächste Werkzeug.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <source>Dust of glass-fibre laminate irritates skin, eyes and airways: extract it at the bit or collect it wet; do not blow it about. Wear a fine-dust mask if it gets into the air.</source>
        <translation>Staub von Glasfaserlaminat reizt Haut, Augen und Atemwege: am Werkzeug absaugen oder nass aufnehmen; nicht umherblasen. Eine Feinstaubmaske tragen, wenn er in die Luft gerät.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/dust.py"/>
        <source>Dust of glass-fibre laminate irritates skin, eyes and airways: suck it off or take it up damp, never blow it about. A fine-dust mask and eye protection help; nobody without them stays near.</source>
        <translation>Staub von Glasfaserlaminat reizt Haut, Augen und Atemwege: absaugen oder feucht aufnehmen, nie umherblasen. Feinstaubmaske und Augenschutz helfen; wer sie nicht trägt, bleibt fern.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Dwell of the field that looked best on the burn grid of this coating.</source>
        <translation>Verweilzeit des Felds, das auf dem Brennraster dieser Beschichtung am besten aussah.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Each line is sent only once the controller has answered the one before.</source>
        <translation>Jede Zeile wird erst gesendet, wenn die Steuerung die vorige beantwortet hat.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/head.py"/>
        <source>Each mark is needed once with the spindle and once with the other head.</source>
        <translation>Jede Marke wird einmal mit der Spindel und einmal mit dem anderen Kopf gebraucht.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/model.py"/>
        <source>Each needs x, y and z in millimetres.</source>
        <translation>Jeder braucht x, y und z in Millimetern.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/naming.py"/>
        <source>End mill {size:.1f}</source>
        <translation>Schaftfräser {size:.1f}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/naming.py"/>
        <source>End mill {size:.1f} mm</source>
        <translation>Schaftfräser {size:.1f} mm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/naming.py"/>
        <source>End mill {size:g} mm</source>
        <translation>Schaftfräser {size:g} mm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/width_coupon.py"/>
        <source>Enter a width or a test.</source>
        <translation>Eine Breite oder einen Test eingeben.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/work.py"/>
        <source>Enter yours.</source>
        <translation>Eigene eingeben.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/report.py"/>
        <source>Error expected at the far corner of the second side (95 %)</source>
        <translation>Erwarteter Fehler an der fernsten Ecke der zweiten Seite (95 %)</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/fit.py"/>
        <source>Every hole needs an uncertainty above zero.</source>
        <translation>Jedes Loch braucht eine Unsicherheit über null.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Every setting has to be entered again before the machine is moved.</source>
        <translation>Jede Einstellung muss neu eingegeben werden, bevor die Maschine bewegt wird.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/proof.py"/>
        <source>Every touch presses the bit's tip onto copper: use a blunt probe in its place if you have one, and set zero again after changing it.</source>
        <translation>Jedes Antasten drückt die Spitze aufs Kupfer: Nehmen Sie stattdessen einen stumpfen Taster, wenn Sie einen haben, und setzen Sie nach dem Wechsel Null neu.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <location filename="../../app/drypoint/machine/sender.py"/>
        <source>Export again with shorter lines.</source>
        <translation>Noch einmal mit kürzeren Zeilen ausgeben.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/load.py"/>
        <source>Export it again from the CAD program.</source>
        <translation>Noch einmal aus dem CAD-Programm ausgeben.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill.py"/>
        <source>Export it again with METRIC or INCH in its header.</source>
        <translation>Noch einmal mit METRIC oder INCH im Kopf ausgeben.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/text_source.py"/>
        <source>Export it again.</source>
        <translation>Noch einmal ausgeben.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/netlist.py"/>
        <source>Export it as IPC-D-356A.</source>
        <translation>Als IPC-D-356A ausgeben.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>Export one whole file instead.</source>
        <translation>Stattdessen eine ganze Datei ausgeben.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill_body.py"/>
        <source>Export the drill file with tools.</source>
        <translation>Die Bohrdatei mit Werkzeugen ausgeben.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/macro_expressions.py"/>
        <location filename="../../app/drypoint/board/macro_template.py"/>
        <source>Export the file again, or without aperture macros.</source>
        <translation>Die Datei noch einmal ausgeben oder ohne Blendenmakros.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/attributes.py"/>
        <location filename="../../app/drypoint/board/gerber_plotter.py"/>
        <location filename="../../app/drypoint/board/macro_primitives.py"/>
        <location filename="../../app/drypoint/board/macro_template.py"/>
        <source>Export the file again.</source>
        <translation>Die Datei noch einmal ausgeben.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_plotter.py"/>
        <source>Export the layer again with its unit, mm or inch.</source>
        <translation>Die Lage noch einmal mit ihrer Einheit ausgeben, mm oder Zoll.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_source.py"/>
        <source>Export the layer again.</source>
        <translation>Die Lage noch einmal ausgeben.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_interpreter.py"/>
        <source>Export with apertures in the file (RS-274X), not as a separate list.</source>
        <translation>Mit Blenden in der Datei ausgeben (RS-274X), nicht als getrennte Liste.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <source>Eye protection on. No loose sleeves, hair or jewellery near the spindle. Hands away while anything turns.</source>
        <translation>Augenschutz auf. Keine losen Ärmel, Haare oder Schmuck nahe der Spindel. Hände weg, solange sich etwas dreht.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/bit_change.py"/>
        <source>Eyes protected, no loose sleeves or hair near the spindle.</source>
        <translation>Augen geschützt, keine losen Ärmel oder Haare nahe der Spindel.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/feeds.py"/>
        <source>Feed is limited to {feed_max:.0f} mm/min: chips are thinner than asked.</source>
        <translation>Der Vorschub ist auf {feed_max:.0f} mm/min begrenzt: Die Späne sind dünner als verlangt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/speeds.py"/>
        <source>Feed it with {feed:.0f} mm/min or less (common practice).</source>
        <translation>Mit höchstens {feed:.0f} mm/min vorschieben (übliche Praxis).</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <source>Feed mm/min</source>
        <translation>Vorschub mm/min</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/legend.py"/>
        <source>Fills of the legend</source>
        <translation>Füllungen der Beschriftung</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/mark.py"/>
        <source>Find the board again and mark anew.</source>
        <translation>Die Platine wiederfinden und neu anreißen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/marking.py"/>
        <source>Find the board again.</source>
        <translation>Die Platine wiederfinden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Find the cause of the alarm, then unlock; positions may be lost.</source>
        <translation>Die Ursache des Alarms finden, dann entsperren; Positionen können verloren sein.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/marking.py"/>
        <location filename="../../app/drypoint/ui/legend_side/sheet.py"/>
        <source>Focus light</source>
        <translation>Fokuslicht</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Follow the maker of the bit. Wrong speeds break bits and throw pieces; wear eye protection.</source>
        <translation>Dem Hersteller des Werkzeugs folgen. Falsche Drehzahlen brechen Werkzeuge und schleudern Teile; Augenschutz tragen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/running.py"/>
        <source>Follow the maker's manual, local rules and qualified practice.</source>
        <translation>Handbuch des Herstellers, örtliche Vorschriften und fachkundige Praxis gehen vor.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/laser_safety.py"/>
        <source>Follow the manual of the laser's maker, local rules and qualified practice.</source>
        <translation>Handbuch des Laserherstellers, örtliche Vorschriften und fachkundige Praxis gehen vor.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/dust.py"/>
        <source>Follow the manuals of machine and material, local rules and qualified practice.</source>
        <translation>Handbücher von Maschine und Material, örtliche Vorschriften und fachkundige Praxis gehen vor.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/place.py"/>
        <source>Following the surface</source>
        <translation>Der Oberfläche wird gefolgt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/voltage_table.py"/>
        <source>For example GND,V+=24.</source>
        <translation>Zum Beispiel GND,V+=24.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/holes.py"/>
        <source>From how many times its own diameter in depth a drill counts as thin.</source>
        <translation>Ab welchem Vielfachen des eigenen Durchmessers an Tiefe ein Bohrer als dünn gilt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Front edge of the clamp, from the blank's lower left corner.</source>
        <translation>Vorderkante des Spanners, von der linken unteren Ecke des Zuschnitts.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/preset.py"/>
        <source>Full speed is set to {have:g} 1/min; the machine set up here has {high:g}.</source>
        <translation>Volle Drehzahl ist auf {have:g} 1/min eingestellt; die hier eingerichtete Maschine hat {high:g}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_source.py"/>
        <source>G-code for a machine</source>
        <translation>G-Code für eine Maschine</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/refused.py"/>
        <source>G10 changes the controller's coordinates.</source>
        <translation>G10 ändert die Koordinaten der Steuerung.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/refused.py"/>
        <source>G18 turns arcs into another plane; only the XY plane is supported.</source>
        <translation>G18 legt Bögen in eine andere Ebene; nur die XY-Ebene wird unterstützt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/refused.py"/>
        <source>G19 turns arcs into another plane; only the XY plane is supported.</source>
        <translation>G19 legt Bögen in eine andere Ebene; nur die XY-Ebene wird unterstützt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/refused.py"/>
        <source>G28 goes to a place this file does not know.</source>
        <translation>G28 fährt an einen Ort, den diese Datei nicht kennt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/refused.py"/>
        <source>G28.1 changes the controller's settings.</source>
        <translation>G28.1 ändert die Einstellungen der Steuerung.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/refused.py"/>
        <source>G30 goes to a place this file does not know.</source>
        <translation>G30 fährt an einen Ort, den diese Datei nicht kennt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/refused.py"/>
        <source>G30.1 changes the controller's settings.</source>
        <translation>G30.1 ändert die Einstellungen der Steuerung.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/refused.py"/>
        <source>G38.2 touches; a program to be cut must not.</source>
        <translation>G38.2 tastet an; ein Programm zum Schneiden darf das nicht.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/refused.py"/>
        <source>G41 (cutter radius compensation) is not supported.</source>
        <translation>G41 (Fräserradiuskorrektur) wird nicht unterstützt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/refused.py"/>
        <source>G42 (cutter radius compensation) is not supported.</source>
        <translation>G42 (Fräserradiuskorrektur) wird nicht unterstützt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/refused.py"/>
        <source>G43 (tool length) is not supported; the bit is touched off instead.</source>
        <translation>G43 (Werkzeuglänge) wird nicht unterstützt; stattdessen wird das Werkzeug angetastet.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/refused.py"/>
        <source>G43.1 (tool length) is not supported; the bit is touched off instead.</source>
        <translation>G43.1 (Werkzeuglänge) wird nicht unterstützt; stattdessen wird das Werkzeug angetastet.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/refused.py"/>
        <source>G53 moves in machine coordinates, which this file cannot know.</source>
        <translation>G53 fährt in Maschinenkoordinaten, die diese Datei nicht kennen kann.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>G83 needs Q, the depth of a peck.</source>
        <translation>G83 braucht Q, die Tiefe eines Hubs.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>G83 would make too many pecks.</source>
        <translation>G83 ergäbe zu viele Hübe.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/refused.py"/>
        <source>G90.1 (absolute arc centres) is not supported.</source>
        <translation>G90.1 (absolute Bogenmittelpunkte) wird nicht unterstützt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>G92 needs at least one axis.</source>
        <translation>G92 braucht mindestens eine Achse.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>Gaps too narrow to cut</source>
        <translation>Engstellen, zu schmal zum Schneiden</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/coupon_job.py"/>
        <source>Give --to DIR, --rehearse, or readings such as --width 0.10=0.16 --joined 0.03 --parted 0.05.</source>
        <translation>--to DIR angeben, --rehearse oder Ablesungen wie --width 0.10=0.16 --joined 0.03 --parted 0.05.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/coupon_job.py"/>
        <source>Give --to DIR, or --best ROW,COLUMN, counted from the lower left.</source>
        <translation>--to DIR angeben oder --best ROW,COLUMN, von unten links gezählt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/commands.py"/>
        <source>Give 0 or more.</source>
        <translation>0 oder mehr angeben.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/voltage_table.py"/>
        <source>Give NET=V, or a file that is there.</source>
        <translation>NETZ=V angeben, oder eine vorhandene Datei.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/store.py"/>
        <source>Give it a name.</source>
        <translation>Einen Namen geben.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/commands.py"/>
        <source>Give one place for each.</source>
        <translation>Für jede einen Ort angeben.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/voltage_table.py"/>
        <source>Give volts, direct or peak: 0 or more.</source>
        <translation>Volt angeben, Gleich- oder Scheitelwert: 0 oder mehr.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/clear_options.py"/>
        <location filename="../../app/drypoint/session/commands.py"/>
        <source>Give {least:g} to {most:g}.</source>
        <translation>{least:g} bis {most:g} angeben.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/holes.py"/>
        <source>Go less than {bed:.1f} mm past the blank.</source>
        <translation>Weniger als {bed:.1f} mm über den Zuschnitt hinausgehen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/placed_cuts.py"/>
        <location filename="../../app/drypoint/session/export.py"/>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <location filename="../../app/drypoint/ui/machine_side/run_tasks.py"/>
        <source>Grooves</source>
        <translation>Nuten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Grooves of another board leave nets joined; an outline without tabs lets the board come loose; what is left out is missing unless it is planned here.</source>
        <translation>Nuten einer anderen Platine lassen Netze verbunden; ein Umriss ohne Stege lässt die Platine los; was ausgelassen wird, fehlt, wenn es hier nicht geplant ist.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>Grooves of the second side</source>
        <translation>Nuten der zweiten Seite</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/place.py"/>
        <location filename="../../app/drypoint/session/run_titles.py"/>
        <source>Grooves, pass {number}</source>
        <translation>Nuten, Durchgang {number}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill_body.py"/>
        <source>G{code:02d} (a canned pattern) is not understood.</source>
        <translation>G{code:02d} (ein vorgefertigtes Muster) wird nicht verstanden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/blocks.py"/>
        <source>G{code:g} is not known.</source>
        <translation>G{code:g} ist nicht bekannt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/blocks.py"/>
        <source>G{g:g} and G{code:g} contradict each other.</source>
        <translation>G{g:g} und G{code:g} widersprechen sich.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>G{stated:g} and G{g:g} both want the line's words.</source>
        <translation>G{stated:g} und G{g:g} wollen beide die Wörter der Zeile.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/turn.py"/>
        <source>Have tooling holes drilled while the first side looks up.</source>
        <translation>Aufnahmebohrungen bohren lassen, solange die erste Seite oben liegt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/head.py"/>
        <source>Head</source>
        <translation>Kopf</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Height above the copper at which the bit moves across.</source>
        <translation>Höhe über dem Kupfer, in der das Werkzeug quer fährt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Height above the highest touched copper at which the bit goes from one place to the next where they lie near each other and no clamp is in the way. Only after the copper was touched; 0 goes up all the way every time.</source>
        <translation>Höhe über dem höchsten angetasteten Kupfer, in der das Werkzeug zur nächsten Stelle fährt, wenn sie nahe liegt und kein Spanner im Weg ist. Erst nachdem das Kupfer angetastet wurde; 0 fährt jedes Mal ganz hoch.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/clearing.py"/>
        <source>Height of the area.</source>
        <translation>Höhe der Fläche.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <location filename="../../app/drypoint/ui/heat/view.py"/>
        <source>Height of the copper</source>
        <translation>Höhe des Kupfers</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/surface_rows.py"/>
        <source>Height where touched</source>
        <translation>Höhe, wo angetastet</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/electrical.py"/>
        <source>Highest voltage between them, direct or peak of alternating.</source>
        <translation>Höchste Spannung zwischen ihnen, Gleichspannung oder Scheitelwert der Wechselspannung.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/find.py"/>
        <source>Hold the board, not the bit; spindle off and still.</source>
        <translation>Die Platine halten, nicht das Werkzeug; Spindel aus und still.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/contact.py"/>
        <source>Hold the clip against the bit.</source>
        <translation>Die Klemme ans Werkzeug halten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <location filename="../../app/drypoint/ui/machine_side/touching_off.py"/>
        <source>Hole</source>
        <translation>Loch</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/fit.py"/>
        <source>Hole positions must be pairs of finite numbers: {error}.</source>
        <translation>Lochorte müssen Paare endlicher Zahlen sein: {error}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/placed_cuts.py"/>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>Holes</source>
        <translation>Löcher</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Holes and outline run into it. Thinner than they reach means cutting into the machine's bed.</source>
        <translation>Löcher und Umriss laufen in sie hinein. Dünner, als sie reichen, heißt in den Maschinentisch schneiden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/turn.py"/>
        <source>Holes drilled through the margin of the blank while the first side looks up. The second side is found by them; they lie far apart, and so that a blank turned the wrong way is noticed.</source>
        <translation>Bohrungen durch den Rand des Zuschnitts, solange die erste Seite oben liegt. Nach ihnen wird die zweite Seite gefunden; sie liegen weit auseinander und so, dass ein falsch gewendeter Zuschnitt auffällt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/turn.py"/>
        <source>Holes of very thin drills wander and are hard to see; very large ones are hard to centre on by eye.</source>
        <translation>Löcher sehr dünner Bohrer verlaufen und sind schlecht zu sehen; bei sehr großen ist die Mitte mit dem Auge schwer zu treffen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/holes.py"/>
        <source>Holes would run through the backing into the bed.</source>
        <translation>Löcher gingen durch die Unterlage in den Tisch.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Home again.</source>
        <translation>Noch einmal Referenzfahrt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/resuming.py"/>
        <source>Home it, or look at its switches.</source>
        <translation>Referenzfahrt machen oder ihre Schalter ansehen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Homing found no second switch of an axis with two.</source>
        <translation>Die Referenzfahrt fand an einer Achse mit zweien keinen zweiten Schalter.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Homing found no switch.</source>
        <translation>Die Referenzfahrt fand keinen Schalter.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Homing is switched off in the controller.</source>
        <translation>Die Referenzfahrt ist in der Steuerung abgeschaltet.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/preset.py"/>
        <source>Homing is {word} in the controller, unlike the machine set up here.</source>
        <translation>Die Referenzfahrt ist in der Steuerung {word}, anders als bei der hier eingerichteten Maschine.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Homing was broken off by a reset.</source>
        <translation>Die Referenzfahrt wurde durch einen Neustart abgebrochen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/hover.py"/>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <location filename="../../app/drypoint/ui/pages/run.py"/>
        <source>Hover lap</source>
        <translation>Schweberunde</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>How exactly drilled holes lie where the design says, as a standard deviation. Thin drills wander by some 0.05 mm.</source>
        <translation>Wie genau gebohrte Löcher dort liegen, wo der Entwurf sagt, als Standardabweichung. Dünne Bohrer verlaufen um etwa 0,05 mm.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>How exactly the bit is set over a reference hole, as a standard deviation. Touch one hole five times: two thirds of the values lie within this of their mean.</source>
        <translation>Wie genau das Werkzeug über ein Bezugsloch gesetzt wird, als Standardabweichung. Ein Loch fünfmal antasten: Zwei Drittel der Werte liegen innerhalb davon um ihr Mittel.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/holes.py"/>
        <source>How far a drill may differ from its hole. A larger hole without such a drill is bored with the end mill.</source>
        <translation>Wie weit ein Bohrer von seinem Loch abweichen darf. Ein größeres Loch ohne solchen Bohrer wird mit dem Schaftfräser ausgefräst.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>How far a groove may eat into copper that belongs to a net where a gap is narrower than the bit.</source>
        <translation>Wie weit eine Nut in Kupfer eines Netzes beißen darf, wo eine Engstelle schmaler als das Werkzeug ist.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>How far above the expected copper each touch begins.</source>
        <translation>Wie weit über dem erwarteten Kupfer jedes Antasten beginnt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>How far below the expected copper a touch is given up.</source>
        <translation>Wie weit unter dem erwarteten Kupfer ein Antasten aufgegeben wird.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>How far drills and the outline go below the laminate, into the backing.</source>
        <translation>Wie weit Bohrer und Umriss unter das Laminat in die Unterlage gehen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>How far each axis can move. Unset: as the size class has it.</source>
        <translation>Wie weit jede Achse fahren kann. Nicht gesetzt: wie die Größenklasse.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>How far outside everything that is cut this rectangle lies.</source>
        <translation>Wie weit außerhalb von allem Geschnittenen dieses Rechteck liegt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>How far the bit is lifted, under load, by play and spring of the Z axis.</source>
        <translation>Wie weit das Werkzeug unter Last durch Spiel und Federn der Z-Achse angehoben wird.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>How far the position with the light spot over a mark differs from that with the bit over it.</source>
        <translation>Wie weit die Position mit dem Lichtpunkt über einer Marke von der mit dem Werkzeug darüber abweicht.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>How fast the bit goes down into the material.</source>
        <translation>Wie schnell das Werkzeug in das Material hinabgeht.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>How fast the bit moves through the material.</source>
        <translation>Wie schnell das Werkzeug durch das Material fährt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>How likely each spot should be through after a pass, as a share. Higher cuts deeper where the height is uncertain.</source>
        <translation>Wie wahrscheinlich jede Stelle nach einem Durchgang durch sein soll, als Anteil. Höher heißt tiefer, wo die Höhe ungewiss ist.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>How long the beam rests for one pulse.</source>
        <translation>Wie lange der Strahl für einen Puls ruht.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>How long the head waits at a place before the pulse.</source>
        <translation>Wie lange der Kopf vor dem Puls an einem Ort wartet.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/clearing.py"/>
        <source>How long you take to change the bit and to set its height. Counted when times are compared.</source>
        <translation>Wie lange ein Wechsel des Fräsers samt Einstellen der Höhe dauert. Zählt beim Vergleich der Zeiten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>How many boards lie side by side on the blank.</source>
        <translation>Wie viele Platinen nebeneinander auf dem Zuschnitt liegen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>How many places of the copper are touched before the first pass.</source>
        <translation>Wie viele Stellen des Kupfers vor dem ersten Durchgang angetastet werden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>How many rows of boards lie behind each other on the blank.</source>
        <translation>Wie viele Reihen von Platinen hintereinander auf dem Zuschnitt liegen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/turn.py"/>
        <source>How many tooling holes there are.</source>
        <translation>Wie viele Aufnahmebohrungen es gibt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/electrical.py"/>
        <source>How much warmer a thinned trace may get than its surroundings, for the current stated beside it.</source>
        <translation>Wie viel wärmer eine verdünnte Leiterbahn als ihre Umgebung werden darf, für den daneben genannten Strom.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>How much wider than its shape the turning bit cuts, because it does not turn quite centrally.</source>
        <translation>Wie viel breiter als seine Form das drehende Werkzeug schneidet, weil es nicht ganz rund läuft.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>How the bit is brought over a reference hole: sighted by eye with a lens (0.03 mm is usual), by the laser's light spot (0.1 mm), or by contacts with the hole's rim (0.015 mm).</source>
        <translation>Wie das Werkzeug über ein Bezugsloch gebracht wird: mit der Lupe nach Auge (0,03 mm ist üblich), mit dem Lichtpunkt des Lasers (0,1 mm) oder durch Kontakte mit dem Lochrand (0,015 mm).</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>How the bit is run. Start values are common practice, not a maker's figures.</source>
        <translation>Wie das Werkzeug gefahren wird. Anfangswerte sind übliche Praxis, keine Angaben eines Herstellers.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/clearing.py"/>
        <source>How the wide bit is run.</source>
        <translation>Wie der breite Fräser läuft.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>How well that is known, as a standard deviation.</source>
        <translation>Wie genau das bekannt ist, als Standardabweichung.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/clearing.py"/>
        <source>If the bit cuts wider than this it eats into nets; narrower, and threads of copper stay.</source>
        <translation>Schneidet der Fräser breiter als angegeben, frisst er Netze an; schmaler, und es bleiben Kupferfäden stehen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/find.py"/>
        <source>If there is no hole near, the blank was turned the wrong way: turn it again before you go on.</source>
        <translation>Ist kein Loch in der Nähe, wurde der Zuschnitt falsch gewendet: noch einmal wenden, bevor es weitergeht.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>If this is wrong the bit may turn when you do not expect it, or go down without turning. The power switch must be within reach.</source>
        <translation>Ist das falsch, kann sich das Werkzeug drehen, wenn Sie es nicht erwarten, oder stehend hinabgehen. Der Netzschalter muss in Reichweite sein.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>In a re-cut, places nearer together than this along a groove are cut in one go.</source>
        <translation>Beim Nachschneiden werden Stellen, die längs einer Nut näher beieinanderliegen, in einem Zug geschnitten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser.py"/>
        <source>In focus the head is {height:g} mm above zero, below the clearance of {clearance:g} mm.</source>
        <translation>Im Fokus steht der Kopf {height:g} mm über null, unter der Sicherheitshöhe von {clearance:g} mm.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/sideways.py"/>
        <source>Is the bit deep enough, the clip on this copper, and the wall where it was said to be?</source>
        <translation>Ist das Werkzeug tief genug, die Klemme auf diesem Kupfer und die Wand dort, wo gesagt?</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/checks.py"/>
        <source>Is the bit exactly over the mark, a millimetre or less above it? If not, bring it there.</source>
        <translation>Steht das Werkzeug genau über der Marke, höchstens einen Millimeter darüber? Sonst bringen Sie es dorthin.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Is the clip on the copper, is the bit over copper, and is the height right?</source>
        <translation>Ist die Klemme auf dem Kupfer, das Werkzeug über Kupfer und die Höhe richtig?</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/touching.py"/>
        <source>Is the clip still on, the bit still whole, and copper below it?</source>
        <translation>Ist die Klemme noch dran, das Werkzeug noch heil und Kupfer darunter?</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/serial_link.py"/>
        <source>Is the machine plugged in and switched on, and no other program using the port?</source>
        <translation>Ist die Maschine angesteckt und eingeschaltet, und benutzt kein anderes Programm den Anschluss?</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/greeting.py"/>
        <source>Is the machine switched on, and is this its port? Other ports are in the list.</source>
        <translation>Ist die Maschine eingeschaltet, und ist dies ihr Anschluss? Andere stehen in der Liste.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Is the switch connected, and does the search go the right way?</source>
        <translation>Ist der Schalter angeschlossen, und geht die Suche in die richtige Richtung?</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/touching.py"/>
        <source>Is zero set on the copper, and is nothing standing up from it?</source>
        <translation>Ist Null auf dem Kupfer gesetzt, und steht nichts davon ab?</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/plans.py"/>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <location filename="../../app/drypoint/ui/pages/proof.py"/>
        <source>Island check</source>
        <translation>Inselprüfung</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>Island check of the plan</source>
        <translation>Inselprüfung des Plans</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>Island check of the plan: {flaws}.</source>
        <translation>Inselprüfung des Plans: {flaws}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/proof.py"/>
        <location filename="../../app/drypoint/session/export.py"/>
        <location filename="../../app/drypoint/ui/machine_side/proving.py"/>
        <location filename="../../app/drypoint/ui/pages/passes.py"/>
        <source>Island touch</source>
        <translation>Inseltasten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_plotter.py"/>
        <source>It can only be flashed.</source>
        <translation>Es kann nur geblitzt werden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/archive.py"/>
        <source>It cannot be read: {strerror}.</source>
        <translation>Es lässt sich nicht lesen: {strerror}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/width_coupon.py"/>
        <source>It cuts {offset:.3f} ± {sigma:.3f} mm {which} than set.</source>
        <translation>Es schneidet {offset:.3f} ± {sigma:.3f} mm {which} als eingestellt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/two_bit_times.py"/>
        <source>It does not pay: two bits take {two:.0f} min, changes of the bit included; one takes {one:.0f} min.</source>
        <translation>Es lohnt sich nicht: zwei Werkzeuge brauchen {two:.0f} min samt Wechseln; eines braucht {one:.0f} min.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/bursts.py"/>
        <source>It holds {limit}.</source>
        <translation>Es enthält {limit}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/layers.py"/>
        <source>It is not clear what this file is.</source>
        <translation>Es ist nicht klar, was diese Datei ist.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/groups.py"/>
        <source>It is not plain which board this belongs to.</source>
        <translation>Es ist nicht klar, zu welcher Platine dies gehört.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/laser_safety.py"/>
        <source>It is not said that the maker of {coating!r} declares it safe for laser work.</source>
        <translation>Es ist nicht gesagt, dass der Hersteller von {coating!r} es für Laserarbeit als sicher erklärt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/laser_safety.py"/>
        <source>It is not said what the laser marks.</source>
        <translation>Es ist nicht gesagt, was der Laser markiert.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/gross.py"/>
        <source>It looks as if {named} were exchanged.</source>
        <translation>Es sieht aus, als seien {named} vertauscht.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/copper.py"/>
        <source>It may be a tie on purpose or a fault of the design. Check it there.</source>
        <translation>Es kann eine gewollte Verbindung oder ein Fehler des Entwurfs sein. Prüfen Sie es dort.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_interpreter.py"/>
        <source>It may be cut off. Copy or export it again; a whole file ends with M02*.</source>
        <translation>Sie ist vielleicht abgeschnitten. Noch einmal kopieren oder ausgeben; eine ganze Datei endet mit M02*.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>It must be above zero.</source>
        <translation>Es muss über null sein.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/netlist.py"/>
        <source>It needs a line such as “P  UNITS CUST 1”.</source>
        <translation>Sie braucht eine Zeile wie „P  UNITS CUST 1“.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>It needs no trust in the touched heights, and takes several times as long.</source>
        <translation>Es braucht kein Vertrauen in die angetasteten Höhen und dauert ein Mehrfaches.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/legend.py"/>
        <source>It needs {width:.0f} × {height:.0f} mm to the right of the spot and behind it.</source>
        <translation>Es braucht {width:.0f} × {height:.0f} mm rechts vom Lichtpunkt und dahinter.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_format.py"/>
        <source>It should look like FSLAX46Y46.</source>
        <translation>Es sollte wie FSLAX46Y46 aussehen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/table.py"/>
        <source>Its first line names x, y and z.</source>
        <translation>Ihre erste Zeile nennt x, y und z.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/islands_plan.py"/>
        <source>Its neighbours stay unproved; measure there by hand.</source>
        <translation>Ihre Nachbarn bleiben unbewiesen; dort von Hand messen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Jog the other way or by a smaller step.</source>
        <translation>In die andere Richtung joggen oder um einen kleineren Schritt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/load.py"/>
        <source>Joining copper to nets</source>
        <translation>Kupfer wird den Netzen zugeordnet</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/legend.py"/>
        <source>Judging the legend</source>
        <translation>Die Beschriftung wird beurteilt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>K belongs to arcs of another plane.</source>
        <translation>K gehört zu Bögen einer anderen Ebene.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/touching.py"/>
        <source>Keep fingers away from the bit while it moves.</source>
        <translation>Die Finger vom Werkzeug lassen, solange es sich bewegt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/hover.py"/>
        <source>Keep hands clear; Hold and Stop are at the bottom of the window.</source>
        <translation>Hände weg; Anhalten und Stopp sind unten im Fenster.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/store.py"/>
        <source>Keep it as it is and open a copy kept elsewhere.</source>
        <translation>Lassen Sie ihn, wie er ist, und öffnen Sie eine andernorts verwahrte Kopie.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <source>Keep the machine's power switch within reach. Stop in the program is a software stop; it is not an emergency stop.</source>
        <translation>Den Netzschalter der Maschine in Reichweite halten. Stopp im Programm ist ein Halt durch Software; er ist kein Not-Halt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Kept free all round every clamp, on top of its size.</source>
        <translation>Ringsum jeden Spanner frei gehalten, zusätzlich zu seiner Größe.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/library.py"/>
        <location filename="../../app/drypoint/session/clear_options.py"/>
        <source>Known bits: {known}.</source>
        <translation>Bekannte Werkzeuge: {known}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/commands.py"/>
        <location filename="../../app/drypoint/session/depth_check.py"/>
        <source>Known: {known}.</source>
        <translation>Bekannt: {known}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>L must be a whole number up to {max_repeats}.</source>
        <translation>L muss eine ganze Zahl bis {max_repeats} sein.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>LPD and LPC are possible.</source>
        <translation>LPD und LPC sind möglich.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>Largest bite</source>
        <translation>Größter Einbiss</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser.py"/>
        <location filename="../../app/drypoint/session/laser_safety.py"/>
        <location filename="../../app/drypoint/session/legend.py"/>
        <source>Laser</source>
        <translation>Laser</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/laser_safety.py"/>
        <source>Laser light harms eyes and skin, scattered light too. Eyewear for the wavelength, as the laser's maker states, on everybody in the room; best inside a closed housing with an interlock.</source>
        <translation>Laserlicht schadet Augen und Haut, auch gestreutes. Schutzbrillen für die Wellenlänge, wie der Hersteller des Lasers angibt, für alle im Raum; am besten in einem geschlossenen Gehäuse mit Verriegelung.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/preset.py"/>
        <source>Laser mode is on: a spindle would stop at every rapid move.</source>
        <translation>Der Lasermodus ist an: Eine Spindel würde bei jedem Eilgang anhalten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Laser mode needs a spindle output with variable power, which this controller lacks.</source>
        <translation>Der Lasermodus braucht einen Spindelausgang mit veränderlicher Leistung, der dieser Steuerung fehlt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/commands.py"/>
        <source>Leave it out, or give the file of that copper layer.</source>
        <translation>Auslassen oder die Datei dieser Kupferlage angeben.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/imported.py"/>
        <source>Leave out one that cuts the board out: it would come loose before it is turned over.</source>
        <translation>Eines weglassen, das die Platine ausfräst: sie käme vor dem Wenden frei.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/clearing.py"/>
        <source>Left edge of the area, from that of the board.</source>
        <translation>Linker Rand der Fläche, von dem der Platine aus.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Left edge of the clamp, from the blank's lower left corner.</source>
        <translation>Linke Kante des Spanners, von der linken unteren Ecke des Zuschnitts.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/legend.py"/>
        <location filename="../../app/drypoint/program/laser.py"/>
        <location filename="../../app/drypoint/program/placed_cuts.py"/>
        <location filename="../../app/drypoint/session/legend.py"/>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>Legend</source>
        <translation>Beschriftung</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/rehearsal_legend.py"/>
        <location filename="../../app/drypoint/ui/legend_side/legending.py"/>
        <location filename="../../app/drypoint/ui/legend_side/sheet.py"/>
        <source>Legend by laser</source>
        <translation>Beschriftung mit Laser</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/beside.py"/>
        <source>Legend by laser: marked</source>
        <translation>Beschriftung: markiert</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/beside.py"/>
        <source>Legend by laser: other side</source>
        <translation>Beschriftung: andere Seite</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/beside.py"/>
        <source>Legend by laser: to do</source>
        <translation>Beschriftung: offen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/legend.py"/>
        <location filename="../../app/drypoint/session/run_titles.py"/>
        <source>Legend on {material}</source>
        <translation>Beschriftung auf {material}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Length of each bridge along the outline.</source>
        <translation>Länge jedes Stegs längs des Umrisses.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Less than the copper is thick parts nothing; much more only makes grooves wider and dust.</source>
        <translation>Weniger, als das Kupfer dick ist, trennt nichts; viel mehr macht nur Nuten breiter und Staub.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Less than the radius of the largest bit and its collet lets them touch the clamp.</source>
        <translation>Weniger als der Radius des größten Werkzeugs und seiner Spannzange lässt sie den Spanner berühren.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser.py"/>
        <source>Lines of the legend</source>
        <translation>Linien der Beschriftung</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Longer than needed is light for nothing: it harms eyes as the full beam does.</source>
        <translation>Länger als nötig ist Licht für nichts: Es schadet Augen wie der volle Strahl.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Longest time the focus light stays on before it goes out by itself.</source>
        <translation>Längste Zeit, die das Fokuslicht an bleibt, bevor es von selbst ausgeht.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Look at both switches of that axis.</source>
        <translation>Beide Schalter dieser Achse ansehen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/sideways.py"/>
        <location filename="../../app/drypoint/machine/procedures/touching.py"/>
        <source>Look at clip, wire and bit.</source>
        <translation>Klemme, Draht und Werkzeug ansehen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/rehearsal.py"/>
        <source>Look at the board</source>
        <translation>Die Platine ansehen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Look at the controller's settings; nothing was moved.</source>
        <translation>Die Einstellungen der Steuerung ansehen; bewegt wurde nichts.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/prove.py"/>
        <source>Look at the cuts.</source>
        <translation>Die Schnitte ansehen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_picture.py"/>
        <source>Look for a step-and-repeat or a block aperture that repeats too often.</source>
        <translation>Nach einer Wiederholung oder Blockblende suchen, die zu oft wiederholt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/laser_safety.py"/>
        <source>Look it up in the maker's data sheet; else use another coating.</source>
        <translation>Im Datenblatt des Herstellers nachsehen; sonst eine andere Beschichtung nehmen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/programs.py"/>
        <source>Look whether its holes lie where they should.</source>
        <translation>Nachsehen, ob ihre Löcher dort liegen, wo sie sollen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Loops round copper run so that the chip gets thinner towards the copper that stays; off: the other way round. A groove that two nets share has no such side.</source>
        <translation>Bahnen um Kupfer laufen so, dass der Span zum stehenbleibenden Kupfer hin dünner wird; aus: andersherum. Eine Nut, die zwei Netze teilen, hat keine solche Seite.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/clearing.py"/>
        <source>Lower edge of the area, from that of the board.</source>
        <translation>Unterer Rand der Fläche, von dem der Platine aus.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Lower than a burr or a chip that stands up, and the bit scratches it. The saved time is shown with every program.</source>
        <translation>Niedriger als ein Grat oder ein hochstehender Span, und das Werkzeug streift ihn. Die gesparte Zeit steht bei jedem Programm.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Lower than a clamp or a bowed edge, and the bit runs into it. Higher only takes time.</source>
        <translation>Niedriger als ein Spanner oder eine gewölbte Kante, und das Werkzeug fährt hinein. Höher kostet nur Zeit.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Lower than the blank is bowed up, and the bit would run into the copper on its way.</source>
        <translation>Niedriger, als der Zuschnitt aufgewölbt ist, und das Werkzeug liefe unterwegs ins Kupfer.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/find.py"/>
        <source>Lower the bit to about 1 mm, then shift the board until hole {label} sits under it. Where another hole was set before, turn the board about that one. Clamp it.</source>
        <translation>Das Werkzeug auf etwa 1 mm absenken, dann die Platine schieben, bis Loch {label} darunter sitzt. Wo vorher ein anderes Loch gesetzt wurde, die Platine um dieses drehen. Spannen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Lower the highest rate in the settings.</source>
        <translation>Die höchste Geschwindigkeit in den Einstellungen senken.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill_body.py"/>
        <source>M02 repeats a pattern, but none was recorded.</source>
        <translation>M02 wiederholt ein Muster, aber keines wurde aufgezeichnet.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>MOMM and MOIN are possible.</source>
        <translation>MOMM und MOIN sind möglich.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <location filename="../../app/drypoint/session/work.py"/>
        <location filename="../../app/drypoint/ui/design_side/machine_settings.py"/>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>Machine</source>
        <translation>Maschine</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Machine coordinates go with straight moves only.</source>
        <translation>Maschinenkoordinaten gehen nur mit geraden Wegen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/work.py"/>
        <source>Machine: {name}</source>
        <translation>Maschine: {name}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>Made {now:%Y-%m-%d %H:%M}</source>
        <translation>Erstellt {now:%Y-%m-%d %H:%M}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/store.py"/>
        <source>Make room and try again; the job is as it was.</source>
        <translation>Platz schaffen und noch einmal versuchen; der Auftrag ist wie zuvor.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/marking.py"/>
        <source>Make the program anew.</source>
        <translation>Das Programm neu machen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/head.py"/>
        <source>Make the reference holes first.</source>
        <translation>Zuerst die Bezugslöcher machen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/laser_safety.py"/>
        <source>Mark only a coating that its maker declares safe for laser work; never one with chlorine in it.</source>
        <translation>Nur eine Beschichtung markieren, die ihr Hersteller für Laserarbeit als sicher erklärt; nie eine mit Chlor darin.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/tooling.py"/>
        <source>Mark the blank's front edge on both sides before you turn it.</source>
        <translation>Die Vorderkante des Zuschnitts vor dem Wenden auf beiden Seiten kennzeichnen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/coupon_job.py"/>
        <source>Marked from now on with {power:.0f} % for {dwell:.0f} ms.</source>
        <translation>Ab jetzt wird mit {power:.0f} % für {dwell:.0f} ms markiert.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/legend_export.py"/>
        <source>Marks of the legend lie within about {far:.2f} mm of their place (95 %).</source>
        <translation>Marken der Beschriftung liegen innerhalb von etwa {far:.2f} mm um ihren Ort (95 %).</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Mill the other side too, in this job: the board is turned over and found again by its holes.</source>
        <translation>Auch die andere Seite fräsen, in diesem Auftrag: Die Platine wird gewendet und an ihren Löchern wiedergefunden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/clearing.py"/>
        <source>More or less is cleared than was meant.</source>
        <translation>Es wird mehr oder weniger geräumt als gemeint.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/clearing.py"/>
        <source>More than is needed takes long, makes much dust and wears the bit.</source>
        <translation>Mehr als nötig dauert lange, macht viel Staub und nutzt den Fräser ab.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>More than the spot leaves dotted lines; much less burns every place several times.</source>
        <translation>Mehr als der Fleck hinterlässt gepunktete Linien; viel weniger brennt jede Stelle mehrmals.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/blocks.py"/>
        <source>More than {most_m_words} M words.</source>
        <translation>Mehr als {most_m_words} M-Wörter.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/gross.py"/>
        <source>Most likely {text} It may also be {rest}; a further hole would tell.</source>
        <translation>Am wahrscheinlichsten {text} Es kann auch {rest} sein; ein weiteres Loch würde es sagen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/imported.py"/>
        <source>Most of what the programs cut lies above z = 0, as if that were on the backing.</source>
        <translation>Das meiste, was die Programme schneiden, liegt über z = 0, als läge das auf der Unterlage.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser.py"/>
        <source>Mount the head higher, or allow less clearance.</source>
        <translation>Den Kopf höher anbringen oder weniger Sicherheitshöhe erlauben.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/panel.py"/>
        <source>Move one; the end mill that cuts them out needs {gap:.2f} mm between them.</source>
        <translation>Eine verschieben; der Schaftfräser, der sie ausschneidet, braucht {gap:.2f} mm dazwischen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/limits.py"/>
        <source>Move or turn the blank, or set the work's zero elsewhere.</source>
        <translation>Den Zuschnitt verschieben oder drehen, oder die Null des Werkstücks anderswo setzen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/layout.py"/>
        <source>Move the board, or centre it on the blank.</source>
        <translation>Die Platine verschieben oder auf dem Zuschnitt zentrieren.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/outline.py"/>
        <source>Move the clamp or the board on the blank.</source>
        <translation>Den Spanner oder die Platine auf dem Zuschnitt verschieben.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/limits.py"/>
        <source>Move the clamp, or raise the clearance above it.</source>
        <translation>Den Spanner verschieben oder die Sicherheitshöhe über ihn anheben.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/plan.py"/>
        <source>Move the clamps, or set the blank larger.</source>
        <translation>Die Spanner verschieben oder den Zuschnitt größer wählen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Moves ready-made programs backwards on the board.</source>
        <translation>Verschiebt fertige Programme auf der Platine nach hinten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Moves ready-made programs to the right on the board.</source>
        <translation>Verschiebt fertige Programme auf der Platine nach rechts.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/blocks.py"/>
        <source>M{code} contradicts another M word of the line.</source>
        <translation>M{code} widerspricht einem anderen M-Wort der Zeile.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/blocks.py"/>
        <source>M{value:g} is not known.</source>
        <translation>M{value:g} ist nicht bekannt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/clearing.py"/>
        <source>Name of the wide bit, as it is asked for at the machine.</source>
        <translation>Name des breiten Fräsers, wie er an der Maschine verlangt wird.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/laser_safety.py"/>
        <source>Name the coating, and that its maker declares it safe for laser work.</source>
        <translation>Die Beschichtung nennen, und dass ihr Hersteller sie für Laserarbeit als sicher erklärt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Narrower than the end mill, and it would cut into the neighbour; that is refused.</source>
        <translation>Schmaler als der Schaftfräser, und er schnitte in die Nachbarin; das wird abgelehnt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Narrowest copper that grooves may leave of a trace.</source>
        <translation>Schmalstes Kupfer, das Nuten von einer Leiterbahn übrig lassen dürfen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/coupon_job.py"/>
        <source>Neither a folder for the program nor a field that looks best.</source>
        <translation>Weder ein Ordner für das Programm noch ein Feld, das am besten aussieht.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/coupon_job.py"/>
        <source>Neither a folder for the program nor anything that was read.</source>
        <translation>Weder ein Ordner für das Programm noch etwas Abgelesenes.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>Nets and holes</source>
        <translation>Netze und Löcher</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/voltage_table.py"/>
        <source>Nets are, for example: {names}.</source>
        <translation>Netze sind zum Beispiel: {names}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>Nets too close for their voltage</source>
        <translation>Netze zu nah für ihre Spannung</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/turn.py"/>
        <source>Never: a board with fewer than two holes of its own cannot be found once it was turned over. Always: a minute of drilling, and a margin wide enough.</source>
        <translation>Nie: eine Platine mit weniger als zwei eigenen Löchern ist nach dem Wenden nicht zu finden. Immer: eine Minute Bohren und ein Rand, der breit genug ist.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>No arc of this radius joins the two places.</source>
        <translation>Kein Bogen mit diesem Radius verbindet die beiden Orte.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/report.py"/>
        <source>No bit has cut anything yet.</source>
        <translation>Noch hat kein Werkzeug etwas geschnitten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/imported.py"/>
        <source>No bit is chosen for tool {number} ({value}); the program is not run.</source>
        <translation>Für Werkzeug {number} ({value}) ist keines gewählt; das Programm läuft nicht.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/imported.py"/>
        <source>No bit is chosen for tool {tool}.</source>
        <translation>Für Werkzeug {tool} ist keines gewählt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/commands.py"/>
        <source>No bit named '{name}' has cut anything.</source>
        <translation>Kein Werkzeug namens '{name}' hat etwas geschnitten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/grooves.py"/>
        <source>No bit of this angle would do: it takes a steeper one.</source>
        <translation>Kein Stichel dieses Winkels würde genügen: Es braucht einen spitzeren.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/checks.py"/>
        <source>No contact at the zero spot: the bit is broken or slipped, or z lost steps.</source>
        <translation>Kein Kontakt am Nullpunkt: Das Werkzeug ist gebrochen oder gerutscht, oder z hat Schritte verloren.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/greeting.py"/>
        <source>No controller answers.</source>
        <translation>Keine Steuerung antwortet.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/touching.py"/>
        <source>No copper was met within {search:g} mm.</source>
        <translation>Innerhalb von {search:g} mm wurde kein Kupfer getroffen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/load.py"/>
        <source>No drill file with holes was found.</source>
        <translation>Keine Bohrdatei mit Löchern gefunden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/holes.py"/>
        <source>No drill or end mill fits this hole.</source>
        <translation>Kein Bohrer oder Schaftfräser passt zu diesem Loch.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/holes.py"/>
        <source>No end mill fits this slot.</source>
        <translation>Kein Schaftfräser passt zu diesem Langloch.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/layers.py"/>
        <source>No file is the copper of the {value}.</source>
        <translation>Keine Datei ist das Kupfer der {value}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/passes/recut.py"/>
        <source>No groove lies in what was painted.</source>
        <translation>Im Angemalten liegt keine Nut.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/prove.py"/>
        <source>No groove runs between these pieces.</source>
        <translation>Zwischen diesen Teilen läuft keine Nut.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/turn.py"/>
        <source>No holes were touched yet.</source>
        <translation>Noch keine Löcher angetastet.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/work.py"/>
        <source>No machine known here holds a blank of {width:.0f} × {height:.0f} mm.</source>
        <translation>Keine hier bekannte Maschine fasst einen Zuschnitt von {width:.0f} × {height:.0f} mm.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/voltage_table.py"/>
        <source>No net is called '{name}'.</source>
        <translation>Kein Netz heißt „{name}“.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>No pass is planned deeper than this below the copper's top.</source>
        <translation>Kein Durchgang wird tiefer unter der Oberseite des Kupfers geplant.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/passes/learning.py"/>
        <source>No pass went there yet.</source>
        <translation>Dort war noch kein Durchgang.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/programs.py"/>
        <source>No program cuts anything.</source>
        <translation>Kein Programm schneidet etwas.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/legend_export.py"/>
        <source>No program for the legend:</source>
        <translation>Kein Programm für die Beschriftung:</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/play.py"/>
        <source>No reading was given.</source>
        <translation>Es wurde nichts abgelesen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/pattern_look.py"/>
        <source>No test pattern was cut in this clamping.</source>
        <translation>In dieser Aufspannung wurde kein Testmuster geschnitten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/contact.py"/>
        <source>No touch is made before this is right.</source>
        <translation>Bevor das stimmt, wird nicht angetastet.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/legend.py"/>
        <source>No values are kept for {name!r}.</source>
        <translation>Für {name!r} sind keine Werte verwahrt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/play.py"/>
        <source>No wall was met within {farthest:.1f} mm.</source>
        <translation>Innerhalb von {farthest:.1f} mm wurde keine Wand getroffen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/sideways.py"/>
        <source>No wall was met within {farthest:.2f} mm.</source>
        <translation>Innerhalb von {farthest:.2f} mm wurde keine Wand getroffen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Nothing depends on it; empty takes the name of the design files.</source>
        <translation>Nichts hängt davon ab; leer nimmt den Namen der Entwurfsdateien.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Nothing else depends on it.</source>
        <translation>Sonst hängt nichts davon ab.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/faults.py"/>
        <source>Nothing further was done.</source>
        <translation>Weiter wurde nichts getan.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/through.py"/>
        <source>Nothing is plated in a milled board: {leads} leads are soldered on both sides, and {others} other holes take a rivet or a bit of wire soldered on both sides.</source>
        <translation>In einer gefrästen Platine ist nichts metallisiert: {leads} Anschlussdrähte werden auf beiden Seiten verlötet, in {others} andere Löcher kommt ein Niet oder ein beidseitig verlötetes Stück Draht.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/legend.py"/>
        <source>Nothing of the legend is left beside pads and holes.</source>
        <translation>Neben Lötflächen und Löchern bleibt von der Beschriftung nichts übrig.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/width_coupon.py"/>
        <source>Nothing was read from the coupon yet.</source>
        <translation>Vom Prüfstück wurde noch nichts abgelesen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/measure.py"/>
        <source>Nothing was touched in this clamping yet.</source>
        <translation>In dieser Aufspannung wurde noch nichts angetastet.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Off, the board stays in the blank unless a program cuts it out. On beside such a program, the edge is cut twice.</source>
        <translation>Aus: die Platine bleibt im Zuschnitt, wenn kein Programm sie ausfräst. An neben einem solchen Programm: der Rand wird zweimal gefräst.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/coupons.py"/>
        <source>On a piece of its own nothing is known of what lies around: look that it reaches no clamp.</source>
        <translation>Bei einem eigenen Stück ist nichts über die Umgebung bekannt: darauf achten, dass es keinen Spanner erreicht.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>One row along the middle of every stroke, instead of as many as cover it.</source>
        <translation>Eine Reihe längs der Mitte jedes Strichs, statt so vieler, wie ihn bedecken.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/width_coupon.py"/>
        <source>One width lies {misfit:.1f} standard deviations off: read it again, or the tip is broken.</source>
        <translation>Eine Breite liegt {misfit:.1f} Standardabweichungen daneben: noch einmal ablesen, oder die Spitze ist gebrochen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/refused.py"/>
        <source>Only G0–G4, G17, G20, G21, G54, G80–G83, G90–G94, G98 and G99 are understood.</source>
        <translation>Nur G0–G4, G17, G20, G21, G54, G80–G83, G90–G94, G98 und G99 werden verstanden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/blocks.py"/>
        <source>Only M0–M9, M30, M48, M49 and M60 are read.</source>
        <translation>Nur M0–M9, M30, M48, M49 und M60 werden gelesen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/table.py"/>
        <source>Only heights in work coordinates can be used.</source>
        <translation>Nur Höhen in Werkstückkoordinaten können benutzt werden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/layers.py"/>
        <source>Only round tools make holes and slots.</source>
        <translation>Nur runde Werkzeuge machen Löcher und Langlöcher.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/registration.py"/>
        <source>Only {on_copper} of {count} holes lie on copper: drill file and copper do not fit.</source>
        <translation>Nur {on_copper} von {count} Löchern liegen auf Kupfer: Bohrdatei und Kupfer passen nicht zusammen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/schema.py"/>
        <source>Open it with the newer program. Nothing was changed.</source>
        <translation>Mit dem neueren Programm öffnen. Nichts wurde geändert.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/legend.py"/>
        <source>Order of the legend</source>
        <translation>Reihenfolge der Beschriftung</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/plans.py"/>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <location filename="../../app/drypoint/session/two_bits.py"/>
        <source>Order of work</source>
        <translation>Arbeitsfolge</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>Other programs lie in this folder too; do not run them: {names}.</source>
        <translation>In diesem Ordner liegen noch andere Programme; nicht ausführen: {names}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Others may give off toxic or corrosive fumes, above all those with chlorine in them.</source>
        <translation>Andere können giftige oder ätzende Dämpfe abgeben, vor allem solche mit Chlor.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Out of focus the spots are wide and faint.</source>
        <translation>Außerhalb des Fokus sind die Flecke breit und blass.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/placed_cuts.py"/>
        <location filename="../../app/drypoint/session/plans.py"/>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <location filename="../../app/drypoint/ui/wizard/files.py"/>
        <source>Outline</source>
        <translation>Umriss</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/clearing.py"/>
        <source>Outside of them copper stays between the grooves: it can be touched by what lies on the board.</source>
        <translation>Außerhalb bleibt zwischen den Nuten Kupfer stehen; was auf der Platine liegt, kann es berühren.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/play.py"/>
        <location filename="../../app/drypoint/session/actions/touch_off.py"/>
        <source>Over hole {label}</source>
        <translation>Über Loch {label}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/find.py"/>
        <source>Over reference hole {label}</source>
        <translation>Über Bezugsloch {label}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/play.py"/>
        <source>Over the copper</source>
        <translation>Über dem Kupfer</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/measure.py"/>
        <source>Over the corner of the blank</source>
        <translation>Über der Ecke des Zuschnitts</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/checks.py"/>
        <source>Over the reference mark</source>
        <translation>Über der Bezugsmarke</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/bit_change.py"/>
        <location filename="../../app/drypoint/machine/procedures/resuming.py"/>
        <location filename="../../app/drypoint/session/actions/pattern_run.py"/>
        <source>Over the zero spot</source>
        <translation>Über dem Nullpunkt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>POS and NEG are possible.</source>
        <translation>POS und NEG sind möglich.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/holes.py"/>
        <source>Pads up to this size that no trace holds are drilled gently. 0 drills all alike.</source>
        <translation>Lötflächen bis zu dieser Größe, die keine Leiterbahn hält, werden sanft gebohrt. 0 bohrt alle gleich.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/passes/recut.py"/>
        <source>Paint across the grooves to cut again.</source>
        <translation>Über die Nuten malen, die nachgeschnitten werden sollen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <source>Pass</source>
        <translation>Durchgang</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <location filename="../../app/drypoint/ui/pages/passes.py"/>
        <source>Passes</source>
        <translation>Durchgänge</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/running.py"/>
        <source>Pause</source>
        <translation>Pause</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/explain.py"/>
        <source>Per metre, x is {values:+.0f} ± {u:.0f} µm and y {values2:+.0f} ± {u2:.0f} µm off; the axes are {values3:+.2f} ± {u3:.2f} mrad out of square.</source>
        <translation>Je Meter weicht x um {values:+.0f} ± {u:.0f} µm ab und y um {values2:+.0f} ± {u2:.0f} µm; die Achsen sind {values3:+.2f} ± {u3:.2f} mrad aus dem rechten Winkel.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/passes/learning.py"/>
        <source>Pick a place on a groove that has been cut.</source>
        <translation>Eine Stelle auf einer geschnittenen Nut wählen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <source>Pictures</source>
        <translation>Bilder</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/clearing.py"/>
        <source>Pieces of copper without net up to this area are taken away by the V-bit. 0 leaves them.</source>
        <translation>Kupferstücke ohne Netz bis zu dieser Fläche trägt der V-Stichel ab. 0 lässt sie stehen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Places that no bit may enter: clamps, screws, tape. Enter each with all that stands up from it.</source>
        <translation>Stellen, an die kein Werkzeug darf: Spanner, Schrauben, Klebeband. Jede mit allem eintragen, was davon absteht.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/placed_cuts.py"/>
        <source>Placing</source>
        <translation>Wird platziert</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/place.py"/>
        <source>Placing pass {number}</source>
        <translation>Durchgang {number} wird platziert</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/run.py"/>
        <location filename="../../app/drypoint/session/kept_program.py"/>
        <source>Plan the pass anew.</source>
        <translation>Den Durchgang neu planen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Play of x and y: how far the axis turns before the bed moves, when it changes direction.</source>
        <translation>Spiel von x und y: wie weit die Achse dreht, bevor sich der Tisch bewegt, wenn sie die Richtung ändert.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/explain.py"/>
        <source>Play of {text} would explain part of it.</source>
        <translation>Spiel von {text} würde einen Teil davon erklären.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Power and dwell that burn grids have settled, by material.</source>
        <translation>Leistung und Verweilzeit, die Brennraster ergeben haben, nach Werkstoff.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser_check.py"/>
        <source>Power is set on a line that is no mark: a straight feed move in x and y.</source>
        <translation>Leistung wird auf einer Zeile gesetzt, die keine Marke ist: einem geraden Vorschubweg in x und y.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser_check.py"/>
        <source>Power is set while the source is off.</source>
        <translation>Leistung wird gesetzt, während die Quelle aus ist.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Power of the beam as a share of its full power.</source>
        <translation>Leistung des Strahls als Anteil seiner vollen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Power of the field that looked best on the burn grid of this coating.</source>
        <translation>Leistung des Felds, das auf dem Brennraster dieser Beschichtung am besten aussah.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/guard.py"/>
        <source>Power that follows the speed is needed (M4), or pulses that are put out each by each.</source>
        <translation>Es braucht Leistung, die der Geschwindigkeit folgt (M4), oder Pulse, die einzeln ausgegeben werden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/give.py"/>
        <source>Press the board flat on its backing there.</source>
        <translation>Die Platine dort flach auf ihre Unterlage drücken.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <location filename="../../app/drypoint/ui/pages/proof.py"/>
        <source>Proof</source>
        <translation>Beweis</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Pulses mark evenly whatever the machine's acceleration, but take longer.</source>
        <translation>Pulse markieren gleichmäßig, wie auch immer die Maschine beschleunigt, dauern aber länger.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/groups.py"/>
        <source>Put all files of a board into one folder or zip.</source>
        <translation>Alle Dateien einer Platine in einen Ordner oder ein Zip legen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/bit_change.py"/>
        <location filename="../../app/drypoint/session/actions/measure.py"/>
        <source>Put in {name}</source>
        <translation>{name} einsetzen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/sideways.py"/>
        <location filename="../../app/drypoint/machine/procedures/touching.py"/>
        <source>Put the clip on and check the circuit first.</source>
        <translation>Zuerst die Klemme anbringen und den Kreis prüfen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/contact.py"/>
        <source>Put the clip on {where}; the bit stays in the air.</source>
        <translation>Setzen Sie die Klemme auf {where}; das Werkzeug bleibt in der Luft.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Puts the board into the middle of the blank.</source>
        <translation>Legt die Platine in die Mitte des Zuschnitts.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/load.py"/>
        <source>Putting the board together</source>
        <translation>Die Platine wird zusammengesetzt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Quicker, but strokes look thinner than drawn.</source>
        <translation>Schneller, aber Striche sehen dünner aus als gezeichnet.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/bit_change.py"/>
        <location filename="../../app/drypoint/machine/procedures/resuming.py"/>
        <source>Raise the bit</source>
        <translation>Das Werkzeug anheben</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/controller.py"/>
        <source>Raise the bit, check clip and wire; is the input inverted in the controller's settings?</source>
        <translation>Das Werkzeug anheben, Klemme und Draht prüfen; ist der Eingang in den Einstellungen der Steuerung umgekehrt?</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Raise the pull-off distance in the settings, or look at the switch.</source>
        <translation>Den Freifahrweg in den Einstellungen vergrößern oder den Schalter ansehen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <location filename="../../app/drypoint/session/pass_plan.py"/>
        <location filename="../../app/drypoint/ui/canvas/describe.py"/>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>Reach</source>
        <translation>Erreicht</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber.py"/>
        <source>Read it with a coarser tolerance.</source>
        <translation>Mit gröberer Toleranz lesen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/play.py"/>
        <source>Read the gauge, {upper} {came}, cycle {cycle}</source>
        <translation>Die Uhr ablesen, {upper} {came}, Zyklus {cycle}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/pattern.py"/>
        <source>Read widths with a loupe; test with a meter which lines part the copper.</source>
        <translation>Breiten mit der Lupe ablesen; mit dem Messgerät prüfen, welche Linien das Kupfer trennen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/layers.py"/>
        <source>Reading the drill files</source>
        <translation>Die Bohrdateien werden gelesen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/pattern_rehearsal.py"/>
        <source>Reading the test pattern</source>
        <translation>Das Testmuster ablesen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/layers.py"/>
        <source>Reading {copper}</source>
        <translation>{copper} wird gelesen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/layers.py"/>
        <source>Reading {name}</source>
        <translation>{name} wird gelesen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/play.py"/>
        <source>Readings from both sides are needed at every target.</source>
        <translation>An jedem Ziel braucht es Ablesungen von beiden Seiten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/imported.py"/>
        <location filename="../../app/drypoint/ui/forms/programs.py"/>
        <source>Ready-made programs</source>
        <translation>Fertige Programme</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/imported.py"/>
        <source>Ready-made programs are run while the first side looks up, and only then.</source>
        <translation>Fertige Programme laufen, solange die erste Seite oben liegt, und nur dann.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/clearing.py"/>
        <source>Rectangles of the board in which all copper without net is taken away.</source>
        <translation>Rechtecke der Platine, in denen alles Kupfer ohne Netz abgetragen wird.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/derive.py"/>
        <location filename="../../app/drypoint/ui/jog/reference.py"/>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <location filename="../../app/drypoint/ui/pages/reference.py"/>
        <source>Reference</source>
        <translation>Bezug</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>Reference holes</source>
        <translation>Bezugslöcher</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Reference holes made in the waste before anything else. The board is found again from them.</source>
        <translation>Bezugslöcher, vor allem anderen in den Abfall gemacht. An ihnen wird die Platine wiedergefunden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/placed_cuts.py"/>
        <source>Reference marks</source>
        <translation>Bezugsmarken</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/rehearsal.py"/>
        <source>Rehearsed</source>
        <translation>Geprobt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/blocks.py"/>
        <source>Remove it; settings are never sent from a file.</source>
        <translation>Entfernen; Einstellungen werden nie aus einer Datei gesendet.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/dust.py"/>
        <source>Remove the dust</source>
        <translation>Den Staub entfernen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/surface_rows.py"/>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>Repeat of a touch</source>
        <translation>Wiederholung</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Reset, unlock, jog clear of the switch, then set zero again and check a reference mark.</source>
        <translation>Neu starten, entsperren, vom Schalter weg joggen, dann Null neu setzen und eine Bezugsmarke prüfen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <location filename="../../app/drypoint/ui/jog/reference.py"/>
        <source>Residual</source>
        <translation>Restfehler</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Room between two boards. The end mill that cuts them out runs there.</source>
        <translation>Platz zwischen zwei Platinen. Dort läuft der Schaftfräser, der sie ausschneidet.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/legend.py"/>
        <source>Room for the legend</source>
        <translation>Platz für die Beschriftung</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Round every hole this much is taken for its pad, on the side that is marked.</source>
        <translation>Um jedes Loch gilt so viel als seine Lötfläche, auf der Seite, die markiert wird.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/coupon_job.py"/>
        <source>Row and column from the lower left; board x, y of the middle, mm; power; dwell</source>
        <translation>Zeile und Spalte von unten links; x, y der Mitte auf der Platine, mm; Leistung; Verweilzeit</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/run.py"/>
        <location filename="../../app/drypoint/session/derive.py"/>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <location filename="../../app/drypoint/ui/pages/run.py"/>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>Run</source>
        <translation>Lauf</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/pattern_look.py"/>
        <source>Run it first.</source>
        <translation>Es zuerst ausführen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/width_coupon.py"/>
        <source>Run-out {runout:.3f} ± {sigma:.3f} mm.</source>
        <translation>Rundlauffehler {runout:.3f} ± {sigma:.3f} mm.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/heights.py"/>
        <source>Sampling the surface</source>
        <translation>Die Oberfläche wird abgetastet</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/voltage_table.py"/>
        <source>Save it as UTF-8.</source>
        <translation>Als UTF-8 speichern.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/affine.py"/>
        <source>Scale and squareness are corrected from four holes at least.</source>
        <translation>Maßstab und Rechtwinkligkeit werden ab vier Löchern korrigiert.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/turn.py"/>
        <source>Second side</source>
        <translation>Zweite Seite</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/beside.py"/>
        <source>Second side: looks up now</source>
        <translation>Zweite Seite: liegt jetzt oben</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/beside.py"/>
        <source>Second side: to do</source>
        <translation>Zweite Seite: offen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>See clamps.</source>
        <translation>Siehe Spanner.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/imported.py"/>
        <source>Set F in the file.</source>
        <translation>F in der Datei setzen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/legend.py"/>
        <source>Set a wider stroke.</source>
        <translation>Einen breiteren Strich einstellen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/codec.py"/>
        <source>Set it again; the rest of the job is intact.</source>
        <translation>Neu setzen; der Rest des Auftrags ist heil.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/passes/depth.py"/>
        <source>Set it between 0.5 and 0.999.</source>
        <translation>Zwischen 0,5 und 0,999 setzen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/find.py"/>
        <source>Set it by hand wheel first, at a place you know: the corner, or this hole.</source>
        <translation>Zuerst mit dem Handrad setzen, an einem bekannten Ort: der Ecke oder diesem Loch.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/placed_cuts.py"/>
        <source>Set its depth; grooves are placed pass by pass.</source>
        <translation>Ihre Tiefe setzen; Nuten werden Durchgang für Durchgang platziert.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/writer.py"/>
        <source>Set the bit's feed.</source>
        <translation>Den Vorschub des Werkzeugs setzen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/play.py"/>
        <source>Set the gauge's foot on the bed and its tip against the head, along {upper}, free for {free:.1f} mm either way. The axis moves by itself between readings.</source>
        <translation>Den Fuß der Uhr auf den Tisch setzen und ihre Spitze gegen den Kopf, längs {upper}, nach beiden Seiten {free:.1f} mm frei. Die Achse bewegt sich zwischen den Ablesungen von selbst.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/running.py"/>
        <source>Set zero again at the known spot and check a reference mark first.</source>
        <translation>Zuerst Null an der bekannten Stelle neu setzen und eine Bezugsmarke prüfen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/faults.py"/>
        <source>Set zero again at the known spot, check a reference mark, then resume the run.</source>
        <translation>Null an der bekannten Stelle neu setzen, eine Bezugsmarke prüfen, dann den Lauf fortsetzen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Set zero by hand, or switch homing on in its settings.</source>
        <translation>Null von Hand setzen oder die Referenzfahrt in ihren Einstellungen einschalten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/axes.py"/>
        <source>Set zero by hand.</source>
        <translation>Null von Hand setzen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser.py"/>
        <source>Settling time, feed and the controller's full power must be above 0.</source>
        <translation>Beruhigungszeit, Vorschub und volle Leistung der Steuerung müssen über 0 liegen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>Setup sheet</source>
        <translation>Rüstblatt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>Setup sheet: {name}</source>
        <translation>Rüstblatt: {name}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/layers.py"/>
        <source>Several files are {value}: {names}. The first is used.</source>
        <translation>Mehrere Dateien sind {value}: {names}. Die erste wird benutzt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/legend.py"/>
        <source>Shapes of the legend</source>
        <translation>Formen der Beschriftung</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/clearing.py"/>
        <source>Share of its width by which a loop of clearing overlaps the next.</source>
        <translation>Anteil seiner Breite, um den ein Umlauf beim Räumen den nächsten überlappt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/electrical.py"/>
        <source>Share of its width that a trace may lose to the cut. One that loses more is listed with the current it carried and carries, as an estimate by IPC-2221; 0 lists none.</source>
        <translation>Anteil seiner Breite, den ein Leiterzug durch das Fräsen verlieren darf. Verliert er mehr, steht er in der Liste mit dem Strom, den er vorher trug und nachher trägt, als Schätzung nach IPC-2221; 0 listet keinen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/holes.py"/>
        <source>Share of the drill's feed and peck that is used in such pads. 1 is as usual.</source>
        <translation>Anteil von Vorschub und Hub des Bohrers, der an solchen Lötflächen gilt. 1 ist wie sonst.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/find.py"/>
        <source>Shift the board to reference hole {label}</source>
        <translation>Die Platine auf Bezugsloch {label} schieben</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>Shorts, opens, lost</source>
        <translation>Kurzschlüsse, Unterbrechungen, Verluste</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Size of the clamp along x.</source>
        <translation>Größe des Spanners längs x.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Size of the clamp along y.</source>
        <translation>Größe des Spanners längs y.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Size of the laminate along x. 0 takes the board with its margin all round.</source>
        <translation>Größe des Laminats längs x. 0 nimmt die Platine mit ihrem Rand ringsum.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Size of the laminate along y. 0 takes the board with its margin all round.</source>
        <translation>Größe des Laminats längs y. 0 nimmt die Platine mit ihrem Rand ringsum.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/placed_cuts.py"/>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>Slots</source>
        <translation>Langlöcher</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Slower on short moves, where the machine may stutter; safer where a cable loses lines.</source>
        <translation>Langsamer auf kurzen Wegen, wo die Maschine stottern kann; sicherer, wo ein Kabel Zeilen verliert.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/clearing.py"/>
        <source>Small ones may come off and join nets. Large areas take the fine bit long: clear those instead.</source>
        <translation>Kleine können sich lösen und Netze verbinden. Große Flächen dauern mit dem feinen Fräser lange: diese besser räumen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Smaller means more plunges and lifts; larger cuts more than it must.</source>
        <translation>Kleiner heißt mehr Eintauchen und Abheben; größer schneidet mehr als nötig.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/guard.py"/>
        <source>Something connects bit and copper: take the clip off, raise the bit.</source>
        <translation>Etwas verbindet Werkzeug und Kupfer: Klemme abnehmen, Werkzeug anheben.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_plotter.py"/>
        <source>Something is drawn before an aperture is chosen.</source>
        <translation>Etwas wird gezeichnet, bevor eine Blende gewählt ist.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber.py"/>
        <source>Something is drawn more than a kilometre away.</source>
        <translation>Etwas wird mehr als einen Kilometer entfernt gezeichnet.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Speed along continuous lines.</source>
        <translation>Geschwindigkeit längs durchgehender Linien.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/clearing.py"/>
        <source>Speed along the cut with the wide bit.</source>
        <translation>Vorschub des breiten Fräsers im Schnitt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/clearing.py"/>
        <source>Speed down into the copper with the wide bit.</source>
        <translation>Vorschub des breiten Fräsers nach unten ins Kupfer.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Speed of the first touch.</source>
        <translation>Geschwindigkeit des ersten Antastens.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Speed of the second touch, whose height counts.</source>
        <translation>Geschwindigkeit des zweiten Antastens, dessen Höhe zählt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Speed of the serial port, as the controller expects it.</source>
        <translation>Geschwindigkeit des seriellen Anschlusses, wie die Steuerung sie erwartet.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/clearing.py"/>
        <source>Speed of the spindle with the wide bit.</source>
        <translation>Spindeldrehzahl mit dem breiten Fräser.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <source>Spindle /min</source>
        <translation>Spindel 1/min</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/bit_change.py"/>
        <source>Spindle off</source>
        <translation>Spindel aus</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/turn.py"/>
        <source>Spindle off and still, bit raised well clear, before a hand goes near.</source>
        <translation>Spindel aus und still, Werkzeug weit oben, bevor eine Hand in die Nähe kommt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/play.py"/>
        <source>Spindle off. Keep hands off the head while it moves.</source>
        <translation>Spindel aus. Hände weg vom Kopf, solange er sich bewegt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/touching.py"/>
        <source>Spindle off. Lay paper on the copper and bring the bit down until the paper just drags.</source>
        <translation>Spindel aus. Papier auf das Kupfer legen und das Werkzeug absenken, bis das Papier gerade klemmt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/bit_change.py"/>
        <source>Spindle on</source>
        <translation>Spindel ein</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/placed_cuts.py"/>
        <source>Spot marks</source>
        <translation>Zentrierpunkte</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/surface_rows.py"/>
        <source>Spread on the grooves</source>
        <translation>Streuung auf den Nuten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/surface_rows.py"/>
        <source>Stale</source>
        <translation>Überholt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/companion.py"/>
        <source>Start it again; free some memory first if this computer is short of it.</source>
        <translation>Noch einmal starten; vorher Speicher frei machen, wenn dieser Rechner zu wenig davon hat.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/run.py"/>
        <source>Start the next piece of work.</source>
        <translation>Das nächste Stück Arbeit beginnen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/running.py"/>
        <source>Stay with the machine. Stop here is a stop in software; the power switch is the one that counts.</source>
        <translation>Bei der Maschine bleiben. Stopp ist hier ein Halt durch Software; was zählt, ist der Netzschalter.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <location filename="../../app/drypoint/ui/jog/position.py"/>
        <source>Step</source>
        <translation>Schritt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/faults.py"/>
        <source>Stopped.</source>
        <translation>Gestoppt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Stops with the bit raised so that dust can be removed: between passes, before drilling and before the island touch.</source>
        <translation>Hält mit angehobenem Werkzeug, damit Staub entfernt werden kann: zwischen Durchgängen, vor dem Bohren und vor dem Inseltasten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/legend.py"/>
        <source>Strokes cannot be narrower than the spot.</source>
        <translation>Striche können nicht schmaler als der Fleck sein.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/legend.py"/>
        <source>Strokes of the legend</source>
        <translation>Striche der Beschriftung</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/measure.py"/>
        <location filename="../../app/drypoint/session/derive.py"/>
        <location filename="../../app/drypoint/session/rehearsal_stage.py"/>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <location filename="../../app/drypoint/ui/heat/view.py"/>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <location filename="../../app/drypoint/ui/window.py"/>
        <source>Surface</source>
        <translation>Oberfläche</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/preset.py"/>
        <source>Switch it off before milling; leave it on for the legend by laser.</source>
        <translation>Vor dem Fräsen ausschalten; für die Beschriftung mit dem Laser anlassen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Switch it off to save laminate, and enter where the board lies.</source>
        <translation>Ausschalten, um Laminat zu sparen, und eintragen, wo die Platine liegt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Switch laser mode off in its settings.</source>
        <translation>Den Lasermodus in ihren Einstellungen ausschalten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/bit_change.py"/>
        <source>Switch the spindle off; let it run out.</source>
        <translation>Die Spindel ausschalten; auslaufen lassen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/bit_change.py"/>
        <source>Switch the spindle on, about {spindle:.0f} 1/min; wait until it is up to speed.</source>
        <translation>Die Spindel einschalten, etwa {spindle:.0f} 1/min; warten, bis sie ihre Drehzahl hat.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/outline.py"/>
        <source>Tabs must be lower than the cut is deep.</source>
        <translation>Stege müssen niedriger sein, als der Schnitt tief ist.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/layout.py"/>
        <source>Take a larger blank, or enter its real size.</source>
        <translation>Einen größeren Zuschnitt nehmen oder seine wirkliche Größe eingeben.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/sideways.py"/>
        <source>Take a thinner bit, or choose a wider hole.</source>
        <translation>Ein dünneres Werkzeug nehmen oder ein weiteres Loch wählen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/rehearsal.py"/>
        <source>Take it off and clamp it again.</source>
        <translation>Abnehmen und neu spannen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/boards.py"/>
        <source>Take its place away.</source>
        <translation>Seinen Ort wegnehmen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/guard.py"/>
        <source>Take the clip off and confirm it.</source>
        <translation>Die Klemme abnehmen und es bestätigen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/contact.py"/>
        <source>Take the clip off the copper and lay it aside.</source>
        <translation>Die Klemme vom Kupfer nehmen und beiseitelegen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/pattern_look.py"/>
        <location filename="../../app/drypoint/session/actions/pattern_run.py"/>
        <location filename="../../app/drypoint/session/pattern.py"/>
        <location filename="../../app/drypoint/ui/design_side/coupon.py"/>
        <location filename="../../app/drypoint/ui/design_side/coupon_sheet.py"/>
        <location filename="../../app/drypoint/ui/machine_side/patterns.py"/>
        <source>Test pattern</source>
        <translation>Testmuster</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>That the dangers of marking bare laminate, fumes and fire, are known and taken care of.</source>
        <translation>Dass die Gefahren beim Markieren von blankem Laminat, Dämpfe und Feuer, bekannt sind und für sie gesorgt ist.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/holes.py"/>
        <source>The V-bit marks the place of a thin drill first, so that the drill does not wander off.</source>
        <translation>Der V-Stichel markiert zuerst den Ort eines dünnen Bohrers, damit der Bohrer nicht verläuft.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/grooves.py"/>
        <source>The allowed bite and the least trace cannot be below 0.</source>
        <translation>Der erlaubte Einbiss und die schmalste Leiterbahn können nicht unter 0 liegen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>The aperture D{number} needs the macro {name}, which is not defined.</source>
        <translation>Die Blende D{number} braucht das Makro {name}, das nicht festgelegt ist.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>The aperture definition “{command}” cannot be understood.</source>
        <translation>Die Blendendefinition „{command}“ wird nicht verstanden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/macro_template.py"/>
        <source>The aperture macro {name} computes an impossible number.</source>
        <translation>Das Blendenmakro {name} errechnet eine unmögliche Zahl.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/macro_template.py"/>
        <source>The aperture macro {name} has an unknown primitive {values:g}.</source>
        <translation>Das Blendenmakro {name} hat ein unbekanntes Element {values:g}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/macro_template.py"/>
        <source>The aperture macro {name} is too large.</source>
        <translation>Das Blendenmakro {name} ist zu groß.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/macro_template.py"/>
        <source>The aperture macro {name} is too long.</source>
        <translation>Das Blendenmakro {name} ist zu lang.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>The aperture's parameters “{text}” are impossible.</source>
        <translation>Die Parameter „{text}“ der Blende sind unmöglich.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>The aperture's parameters “{text}” are not numbers.</source>
        <translation>Die Parameter „{text}“ der Blende sind keine Zahlen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>The arc's ends lie at {first:.4f} and {last:.4f} mm from its centre.</source>
        <translation>Die Enden des Bogens liegen {first:.4f} und {last:.4f} mm von seinem Mittelpunkt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>The arc's radius does not fit its ends.</source>
        <translation>Der Radius des Bogens passt nicht zu seinen Enden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill_body.py"/>
        <source>The arc's radius is too small for its ends.</source>
        <translation>Der Radius des Bogens ist zu klein für seine Enden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>The axes “{command}” are unknown.</source>
        <translation>Die Achsen „{command}“ sind unbekannt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/play.py"/>
        <source>The axis came to its target {came}. What does the gauge read? Towards larger {upper} counts as larger.</source>
        <translation>Die Achse kam {came} an ihr Ziel. Was zeigt die Uhr? Zu größerem {upper} hin gilt als größer.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/give.py"/>
        <source>The back left corner</source>
        <translation>Die Ecke hinten links</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/give.py"/>
        <source>The back long edge at its middle</source>
        <translation>Die hintere, lange Kante in der Mitte</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/give.py"/>
        <source>The back right corner</source>
        <translation>Die Ecke hinten rechts</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/give.py"/>
        <source>The back short edge at its middle</source>
        <translation>Die hintere, kurze Kante in der Mitte</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/marking.py"/>
        <source>The beam comes on at 1 % of full power for {seconds:g} s.</source>
        <translation>Der Strahl geht für {seconds:g} s mit 1 % der vollen Leistung an.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser_check.py"/>
        <source>The beam is on at rest and the next line does not just put it out (S0).</source>
        <translation>Der Strahl ist in Ruhe an, und die nächste Zeile löscht ihn nicht nur (S0).</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser_check.py"/>
        <source>The beam is switched on with power set; it must start at zero.</source>
        <translation>Der Strahl wird mit gesetzter Leistung eingeschaltet; er muss bei null beginnen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser.py"/>
        <source>The beam's power must be above 0 and at most 100 %.</source>
        <translation>Die Leistung des Strahls muss über 0 und höchstens 100 % sein.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bench/remote.py"/>
        <source>The bench has ended.</source>
        <translation>Der Prüfstand hat geendet.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>The bit for each tool of a ready-made program, where it is not plain what the tool is.</source>
        <translation>Das Werkzeug für jedes Werkzeug eines fertigen Programms, wo nicht klar ist, was es ist.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/hover.py"/>
        <source>The bit goes round the board {height:g} mm above it, spindle off. Watch clamps and cables.</source>
        <translation>Das Werkzeug fährt {height:g} mm darüber rund um die Platine, Spindel aus. Auf Spanner und Kabel achten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/resuming.py"/>
        <source>The bit may stand in the copper. Bring it straight up, well clear of board and clamps.</source>
        <translation>Das Werkzeug kann im Kupfer stehen. Bringen Sie es gerade hoch, weit weg von Platine und Spannern.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/sideways.py"/>
        <source>The bit met copper on its way down.</source>
        <translation>Das Werkzeug traf auf dem Weg nach unten Kupfer.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/running.py"/>
        <source>The bit stands clear and the spindle is off. It starts again as soon as you go on.</source>
        <translation>Das Werkzeug steht frei, und die Spindel ist aus. Sie läuft wieder an, sobald Sie weitermachen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/touching.py"/>
        <source>The bit touches something on its way across.</source>
        <translation>Das Werkzeug berührt unterwegs etwas.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/checks.py"/>
        <source>The bit was brought over the mark by hand wheel.</source>
        <translation>Das Werkzeug wurde mit dem Handrad über die Marke gebracht.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/find.py"/>
        <source>The bit was brought there by hand wheel: the controller saw nothing of it.</source>
        <translation>Das Werkzeug wurde mit dem Handrad dorthin gebracht: Die Steuerung sah davon nichts.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/library.py"/>
        <source>The bit's values cannot be read.</source>
        <translation>Die Werte des Werkzeugs lassen sich nicht lesen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/layout.py"/>
        <source>The blank ({width:.1f} × {height:.1f} mm) is smaller than the board ({width2:.1f} × {height2:.1f} mm).</source>
        <translation>Der Zuschnitt ({width:.1f} × {height:.1f} mm) ist kleiner als die Platine ({width2:.1f} × {height2:.1f} mm).</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <source>The blank is clamped flat and the clamps are where this sheet shows them.</source>
        <translation>Der Zuschnitt ist flach gespannt, und die Spanner sind, wo dieses Blatt sie zeigt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/commands.py"/>
        <source>The blank is too large for the usual machine; planned for: {name}.</source>
        <translation>Der Zuschnitt ist zu groß für die übliche Maschine; geplant für: {name}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/work.py"/>
        <source>The blank is {width:.0f} × {height:.0f} mm; the machine moves {travel:.0f} × {travel2:.0f} mm.</source>
        <translation>Der Zuschnitt ist {width:.0f} × {height:.0f} mm; die Maschine verfährt {travel:.0f} × {travel2:.0f} mm.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>The block aperture “{command}” cannot be understood.</source>
        <translation>Die Blockblende „{command}“ wird nicht verstanden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/burn.py"/>
        <source>The board lies elsewhere than when the grid was begun.</source>
        <translation>Die Platine liegt woanders als zu Beginn des Rasters.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/hover.py"/>
        <source>The board needs {size:.1f} mm in {value}, more than the machine's travel.</source>
        <translation>Die Platine braucht {size:.1f} mm in {value}, mehr als den Verfahrweg der Maschine.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>The board on its blank</source>
        <translation>Die Platine auf ihrem Zuschnitt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/layout.py"/>
        <source>The board reaches over the edge of the blank.</source>
        <translation>Die Platine ragt über den Rand des Zuschnitts.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/derive.py"/>
        <source>The board was moved since its height was touched.</source>
        <translation>Die Platine wurde bewegt, seit ihre Höhe angetastet wurde.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/derive.py"/>
        <source>The board was moved; where it lies now is not known.</source>
        <translation>Die Platine wurde bewegt; wo sie jetzt liegt, ist nicht bekannt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>The board would reach over the edge of the blank or under a clamp; Drypoint says so.</source>
        <translation>Die Platine ragte über den Rand des Zuschnitts oder unter einen Spanner; Drypoint sagt es.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/give.py"/>
        <source>The board's middle</source>
        <translation>Die Mitte der Platine</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/panel.py"/>
        <source>The boards on a blank must all be milled from one side.</source>
        <translation>Die Platinen auf einem Zuschnitt müssen alle von einer Seite gefräst werden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/grid.py"/>
        <source>The burn grid fits only turned by a quarter.</source>
        <translation>Das Brennraster passt nur um ein Viertel gedreht.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/coupon_job.py"/>
        <source>The burn grid lies where the test pattern is planned: this blank has room for one of them only.</source>
        <translation>Das Brennraster liegt, wo das Testmuster geplant ist: Auf diesem Zuschnitt ist nur für eines von beiden Platz.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/legend.py"/>
        <source>The burn grid would reach beyond the blank or over a clamp.</source>
        <translation>Das Brennraster würde über den Zuschnitt hinaus oder auf einen Spanner reichen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/proof.py"/>
        <source>The clip goes on</source>
        <translation>Die Klemme kommt dran</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>The coating these values were found for.</source>
        <translation>Die Beschichtung, für die diese Werte gefunden wurden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/check.py"/>
        <source>The command {min:g} has no place in a program.</source>
        <translation>Der Befehl {min:g} hat in einem Programm keinen Platz.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>The command “{command}” cannot be understood.</source>
        <translation>Der Befehl „{command}“ wird nicht verstanden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/sideways.py"/>
        <location filename="../../app/drypoint/machine/procedures/touching.py"/>
        <source>The contact circuit has not been checked.</source>
        <translation>Der Kontaktkreis wurde nicht geprüft.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>The contact circuit was not as expected before the touch: bit and copper touch already, or the input is inverted.</source>
        <translation>Der Kontaktkreis war vor dem Antasten nicht wie erwartet: Werkzeug und Kupfer berühren sich schon, oder der Eingang ist umgekehrt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/controller.py"/>
        <source>The contact input reads closed before the touch.</source>
        <translation>Der Kontakteingang ist vor dem Antasten geschlossen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/controller.py"/>
        <source>The contact input reads open before the bit leaves the wall.</source>
        <translation>Der Kontakteingang öffnet, bevor das Werkzeug die Wand verlässt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/touching.py"/>
        <source>The contact input stays closed with the bit lifted.</source>
        <translation>Der Kontakteingang bleibt bei angehobenem Werkzeug geschlossen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/controller.py"/>
        <source>The contact is not steady: clean wall and bit, look at clip and wire.</source>
        <translation>Der Kontakt ist nicht stetig: Wand und Werkzeug säubern, Klemme und Draht ansehen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/play.py"/>
        <source>The contact is not steady: it was not made again, or did not break.</source>
        <translation>Der Kontakt ist nicht stetig: Er schloss nicht wieder oder öffnete nicht.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/sideways.py"/>
        <source>The contacts lie on no circle: they miss it by up to {max:.3f} mm.</source>
        <translation>Die Kontakte liegen auf keinem Kreis: Sie verfehlen ihn um bis zu {max:.3f} mm.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/rim.py"/>
        <source>The contacts lie on one line, so they give no centre.</source>
        <translation>Die Kontakte liegen auf einer Geraden und ergeben keinen Mittelpunkt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>The controller could not read its store and went back to its defaults.</source>
        <translation>Die Steuerung konnte ihren Speicher nicht lesen und nahm ihre Grundeinstellungen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/controller.py"/>
        <source>The controller did not go into its check mode.</source>
        <translation>Die Steuerung ging nicht in ihren Prüfmodus.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/channel.py"/>
        <source>The controller does not answer.</source>
        <translation>Die Steuerung antwortet nicht.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/delivery.py"/>
        <location filename="../../app/drypoint/machine/greeting.py"/>
        <source>The controller does not come back after a reset.</source>
        <translation>Die Steuerung kommt nach einem Neustart nicht zurück.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>The controller does not know this command.</source>
        <translation>Die Steuerung kennt diesen Befehl nicht.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>The controller is locked after an alarm or is jogging.</source>
        <translation>Die Steuerung ist nach einem Alarm gesperrt oder joggt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/view.py"/>
        <source>The controller is locked until it is homed or unlocked.</source>
        <translation>Die Steuerung ist gesperrt, bis sie referenziert oder entsperrt wird.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/marking.py"/>
        <source>The controller is not in laser mode.</source>
        <translation>Die Steuerung ist nicht im Lasermodus.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>The controller locked itself (its alarm {code}).</source>
        <translation>Die Steuerung hat sich gesperrt (ihr Alarm {code}).</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>The controller refused the line (its error {code}).</source>
        <translation>Die Steuerung lehnte die Zeile ab (ihr Fehler {code}).</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/preset.py"/>
        <source>The controller reports positions in inches.</source>
        <translation>Die Steuerung meldet Positionen in Zoll.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/faults.py"/>
        <source>The controller restarted by itself.</source>
        <translation>Die Steuerung hat von selbst neu gestartet.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/preset.py"/>
        <source>The controller runs a stored line at every start: {line}</source>
        <translation>Die Steuerung führt bei jedem Start eine gespeicherte Zeile aus: {line}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/view.py"/>
        <source>The controller sleeps until it is reset.</source>
        <translation>Die Steuerung schläft, bis sie neu gestartet wird.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/resuming.py"/>
        <source>The controller stays locked.</source>
        <translation>Die Steuerung bleibt gesperrt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>The controller takes this only when the machine is at rest.</source>
        <translation>Die Steuerung nimmt dies nur, wenn die Maschine in Ruhe ist.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>The controller was reset while moving: steps may be lost.</source>
        <translation>Die Steuerung wurde in Bewegung neu gestartet: Schritte können verloren sein.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/marking.py"/>
        <source>The controller's full power is S{stated:g}, the program was made for S{scale:g}.</source>
        <translation>Die volle Leistung der Steuerung ist S{stated:g}, das Programm wurde für S{scale:g} gemacht.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/rehearsal_legend.py"/>
        <source>The controller's laser mode is on with the laser and off with the spindle.</source>
        <translation>Der Lasermodus der Steuerung ist mit dem Laser ein- und mit der Spindel ausgeschaltet.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/checks.py"/>
        <source>The copper at the zero spot reads {away:.3f} mm {where}: the bit broke or slipped, steps were lost, or the board has moved.</source>
        <translation>Das Kupfer am Nullpunkt misst {away:.3f} mm {where}: Das Werkzeug brach oder rutschte, Schritte gingen verloren, oder die Platine wurde bewegt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/load.py"/>
        <source>The copper layer is empty and there is no outline.</source>
        <translation>Die Kupferlage ist leer, und es gibt keinen Umriss.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/parts.py"/>
        <source>The copper of a net is not a shape.</source>
        <translation>Das Kupfer eines Netzes ist keine Form.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/registration.py"/>
        <source>The copper of the {label} lies off the holes; moved by about {dx:.1f}, {dy:.1f} mm it fits.</source>
        <translation>Das Kupfer der {label} liegt neben den Löchern; um etwa {dx:.1f}, {dy:.1f} mm verschoben passt es.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/registration.py"/>
        <source>The copper of the {label} seems to be mirrored against the holes.</source>
        <translation>Das Kupfer der {label} scheint gegen die Löcher gespiegelt zu sein.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/proof.py"/>
        <source>The copper that holds the clip shows no contact: the touches made prove nothing.</source>
        <translation>Das Kupfer mit der Klemme zeigt keinen Kontakt: Die gemachten Antastungen beweisen nichts.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>The copper that is milled. The bottom is shown as it lies on the machine: turned over, so mirrored.</source>
        <translation>Das Kupfer, das gefräst wird. Unten wird gezeigt, wie es auf der Maschine liegt: gewendet, also gespiegelt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/derive.py"/>
        <location filename="../../app/drypoint/session/rehearsal_stage.py"/>
        <source>The copper's height is not known.</source>
        <translation>Die Höhe des Kupfers ist nicht bekannt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/passes/depth.py"/>
        <source>The copper's thickness must be above 0 and the play of Z not below 0.</source>
        <translation>Die Dicke des Kupfers muss über 0 und das Spiel von Z nicht unter 0 liegen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/coupons.py"/>
        <source>The corner of the blank that the V-bit's test pattern lies nearest to.</source>
        <translation>Die Ecke des Zuschnitts, der das Testmuster des Gravierstichels am nächsten liegt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/coupons.py"/>
        <source>The corner of the blank that the laser's burn grid lies nearest to.</source>
        <translation>Die Ecke des Zuschnitts, der das Brennraster des Lasers am nächsten liegt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/clearing.py"/>
        <source>The cut is too narrow to clear this area.</source>
        <translation>Der Schnitt ist zu schmal, um diese Fläche zu räumen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/passes/depth.py"/>
        <source>The deepest cut allowed, {deepest:.3f} mm, does not pass the copper of {copper:.3f} mm.</source>
        <translation>Der tiefste erlaubte Schnitt, {deepest:.3f} mm, geht nicht durch das Kupfer von {copper:.3f} mm.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>The depth below the copper's top that widths are planned for. The depth really cut is chosen spot by spot when the copper has been touched.</source>
        <translation>Die Tiefe unter der Oberseite des Kupfers, für die Breiten geplant werden. Die wirklich geschnittene Tiefe wird Stelle für Stelle gewählt, wenn das Kupfer angetastet ist.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/depth_check.py"/>
        <source>The depth must lie within the laminate.</source>
        <translation>Die Tiefe muss im Laminat liegen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/commands.py"/>
        <source>The design has no copper on the {side}.</source>
        <translation>Der Entwurf hat kein Kupfer auf der {side}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/turn.py"/>
        <source>The design has no copper on the {value}.</source>
        <translation>Der Entwurf hat kein Kupfer auf der {value}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/store.py"/>
        <source>The disk is full.</source>
        <translation>Die Platte ist voll.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill.py"/>
        <source>The drill file does not state its units.</source>
        <translation>Die Bohrdatei nennt ihre Einheiten nicht.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/programs.py"/>
        <source>The drill file is taken to be in the coordinates of the programs.</source>
        <translation>Die Bohrdatei wird in den Koordinaten der Programme angenommen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/turn.py"/>
        <source>The drill that makes them. Left open, it is one that the board needs anyway.</source>
        <translation>Der Bohrer dafür. Offen gelassen, ist es einer, den die Platine ohnehin braucht.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>The drills in the box. Each hole takes the nearest one; a larger hole is bored with the end mill.</source>
        <translation>Die Bohrer im Kasten. Jedes Loch nimmt den nächsten; ein größeres Loch wird mit dem Schaftfräser ausgefräst.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/outline.py"/>
        <source>The end mill does not fit into a cut-out.</source>
        <translation>Der Schaftfräser passt nicht in einen Ausschnitt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>The end mill for outline, slots and holes without a drill.</source>
        <translation>Der Schaftfräser für Umriss, Langlöcher und Löcher ohne Bohrer.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>The engraving bit that parts the copper. Its groove is wider the deeper it goes.</source>
        <translation>Der Gravierstichel, der das Kupfer trennt. Seine Nut wird breiter, je tiefer er geht.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>The expected errors are those of another way then.</source>
        <translation>Die erwarteten Fehler sind dann die einer anderen Art.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>The faster, the coarser: at 60 mm/min the bit moves a micrometre each millisecond.</source>
        <translation>Je schneller, desto gröber: Bei 60 mm/min fährt das Werkzeug jede Millisekunde einen Mikrometer.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_source.py"/>
        <location filename="../../app/drypoint/board/text_source.py"/>
        <source>The file cannot be read: {reason}.</source>
        <translation>Die Datei lässt sich nicht lesen: {reason}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/export.py"/>
        <source>The file does not read back as the program.</source>
        <translation>Die Datei liest sich nicht als das Programm zurück.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_plotter.py"/>
        <source>The file does not state its unit.</source>
        <translation>Die Datei nennt ihre Einheit nicht.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_interpreter.py"/>
        <source>The file has no end.</source>
        <translation>Die Datei hat kein Ende.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/text_source.py"/>
        <source>The file is binary, not text.</source>
        <translation>Die Datei ist binär, kein Text.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_source.py"/>
        <location filename="../../app/drypoint/board/load.py"/>
        <location filename="../../app/drypoint/board/text_source.py"/>
        <source>The file is empty.</source>
        <translation>Die Datei ist leer.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/text_source.py"/>
        <source>The file is larger than {max_bytes} MB.</source>
        <translation>Die Datei ist größer als {max_bytes} MB.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/archive.py"/>
        <source>The file is larger than {max_file} MB.</source>
        <translation>Die Datei ist größer als {max_file} MB.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_source.py"/>
        <source>The file is too large for a Gerber layer.</source>
        <translation>Die Datei ist zu groß für eine Gerber-Lage.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill_body.py"/>
        <source>The file makes more than {max_hits} holes.</source>
        <translation>Die Datei macht mehr als {max_hits} Löcher.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_tokens.py"/>
        <source>The file may be cut off: export or copy it again.</source>
        <translation>Die Datei ist vielleicht abgeschnitten: noch einmal ausgeben oder kopieren.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber.py"/>
        <location filename="../../app/drypoint/board/gerber_compose.py"/>
        <location filename="../../app/drypoint/board/gerber_format.py"/>
        <location filename="../../app/drypoint/board/gerber_plotter.py"/>
        <source>The file may be damaged.</source>
        <translation>Die Datei ist vielleicht beschädigt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>The file may be damaged: export it again.</source>
        <translation>Die Datei ist vielleicht beschädigt: noch einmal ausgeben.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_interpreter.py"/>
        <source>The file states no coordinate format.</source>
        <translation>Die Datei nennt kein Koordinatenformat.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>The file wants to include another one ({command}).</source>
        <translation>Die Datei will eine andere einbinden ({command}).</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/coupon.py"/>
        <location filename="../../app/drypoint/session/actions/coupon_job.py"/>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>The files could not be written ({strerror}).</source>
        <translation>Die Dateien ließen sich nicht schreiben ({strerror}).</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/archive.py"/>
        <source>The files hold more than {max_total} MB.</source>
        <translation>Die Dateien enthalten mehr als {max_total} MB.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/check.py"/>
        <source>The first cutting move after a rapid has no feed.</source>
        <translation>Der erste Schnittweg nach einem Eilgang hat keinen Vorschub.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/marking.py"/>
        <source>The focus light is on for up to {longest_focus:g} s at a time.</source>
        <translation>Das Fokuslicht ist jeweils bis zu {longest_focus:g} s an.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/laser_safety.py"/>
        <source>The focus light is the same beam at 1 % of its power: just as much to be kept from the eyes.</source>
        <translation>Das Fokuslicht ist derselbe Strahl mit 1 % seiner Leistung: ebenso von den Augen fernzuhalten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_format.py"/>
        <source>The format statement “{statement}” cannot be understood.</source>
        <translation>Die Formatangabe „{statement}“ wird nicht verstanden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/give.py"/>
        <source>The front left corner</source>
        <translation>Die Ecke vorn links</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/give.py"/>
        <source>The front long edge at its middle</source>
        <translation>Die vordere, lange Kante in der Mitte</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/give.py"/>
        <source>The front right corner</source>
        <translation>Die Ecke vorn rechts</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/give.py"/>
        <source>The front short edge at its middle</source>
        <translation>Die vordere, kurze Kante in der Mitte</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/panel.py"/>
        <source>The gap between copies cannot be below 0.</source>
        <translation>Der Abstand zwischen Kopien kann nicht unter 0 liegen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/burn_grid.py"/>
        <source>The grid has no field in row {row}, column {column}.</source>
        <translation>Das Raster hat kein Feld in Reihe {row}, Spalte {column}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>The grooves changed since passes were run over them.</source>
        <translation>Die Nuten haben sich geändert, seit Durchgänge darüber liefen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/coupons.py"/>
        <source>The ground must carry the coating that the legend is marked on, or its values are of no use.</source>
        <translation>Dort muss die Beschichtung sein, auf der die Beschriftung markiert wird, sonst nützen die Werte nichts.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/marking.py"/>
        <source>The head goes once round what will be marked, beam off.</source>
        <translation>Der Kopf fährt einmal um das, was markiert wird, Strahl aus.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/laser_safety.py"/>
        <source>The head goes round with the beam off. Eyewear on all the same: the laser has power.</source>
        <translation>Der Kopf fährt mit ausgeschaltetem Strahl herum. Trotzdem Schutzbrille: Der Laser hat Strom.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/table.py"/>
        <source>The header names no column {missing}.</source>
        <translation>Die Kopfzeile nennt keine Spalte {missing}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/play.py"/>
        <location filename="../../app/drypoint/session/actions/touch_off.py"/>
        <source>The height of the bit is not known.</source>
        <translation>Die Höhe des Werkzeugs ist nicht bekannt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/table.py"/>
        <source>The heights are in the frame '{frame}', not in the machine's.</source>
        <translation>Die Höhen sind im Bezugssystem '{frame}', nicht in dem der Maschine.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/gross.py"/>
        <source>The holes do not agree, and no single one explains it. Touch them again.</source>
        <translation>Die Löcher stimmen nicht überein, und kein einzelnes erklärt es. Noch einmal antasten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>The image polarity “{command}” is unknown.</source>
        <translation>Die Bildpolarität „{command}“ ist unbekannt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>The image's scale is impossible.</source>
        <translation>Der Maßstab des Bilds ist unmöglich.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/library.py"/>
        <source>The included angle must lie between 0° and 180°.</source>
        <translation>Der Spitzenwinkel muss zwischen 0° und 180° liegen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/contact.py"/>
        <source>The input does not close: look at the wire, the plug and the clip.</source>
        <translation>Der Eingang schließt nicht: Draht, Stecker und Klemme ansehen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/contact.py"/>
        <source>The input reads closed although the bit is in the air: does the clip touch the bit?</source>
        <translation>Der Eingang ist geschlossen, obwohl das Werkzeug in der Luft ist: Berührt die Klemme das Werkzeug?</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/contact.py"/>
        <source>The input reads closed with the bit in the air: is it inverted, or the wire shorted?</source>
        <translation>Der Eingang ist geschlossen, mit dem Werkzeug in der Luft: Ist er umgekehrt oder der Draht kurzgeschlossen?</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/contact.py"/>
        <source>The input still reads closed: take the clip off, raise the bit.</source>
        <translation>Der Eingang ist noch geschlossen: Klemme abnehmen, Werkzeug anheben.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/store.py"/>
        <source>The job file cannot be opened for writing.</source>
        <translation>Die Auftragsdatei lässt sich nicht zum Schreiben öffnen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/store.py"/>
        <source>The job file could not be used ({text}).</source>
        <translation>Die Auftragsdatei ließ sich nicht benutzen ({text}).</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/store.py"/>
        <source>The job file could not be written ({strerror}).</source>
        <translation>Die Auftragsdatei ließ sich nicht schreiben ({strerror}).</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/store.py"/>
        <source>The job file is damaged.</source>
        <translation>Die Auftragsdatei ist beschädigt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/program_bits.py"/>
        <source>The job has no drill of {size:.3f} mm.</source>
        <translation>Der Auftrag hat keinen Bohrer von {size:.3f} mm.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/program_bits.py"/>
        <source>The job has no ready-made program.</source>
        <translation>Der Auftrag hat kein fertiges Programm.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/program_bits.py"/>
        <source>The job has: {names}.</source>
        <translation>Der Auftrag hat: {names}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/store.py"/>
        <source>The job is open in a window or in another program.</source>
        <translation>Der Auftrag ist in einem Fenster oder in einem anderen Programm offen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>The jog was not understood.</source>
        <translation>Das Joggen wurde nicht verstanden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>The jog would leave the machine's travel.</source>
        <translation>Das Joggen verließe den Verfahrbereich der Maschine.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/journal.py"/>
        <source>The journal of the run could not be written ({error}).</source>
        <translation>Das Protokoll des Laufs ließ sich nicht schreiben ({error}).</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_tokens.py"/>
        <source>The last command has no end.</source>
        <translation>Der letzte Befehl hat kein Ende.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_picture.py"/>
        <source>The layer would have more than {limit:,} {what}.</source>
        <translation>Die Lage hätte mehr als {limit:,} {what}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber.py"/>
        <source>The layer would have more than {vertex_limit:,} vertices.</source>
        <translation>Die Lage hätte mehr als {vertex_limit:,} Eckpunkte.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/give.py"/>
        <source>The left long edge at its middle</source>
        <translation>Die linke, lange Kante in der Mitte</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/give.py"/>
        <source>The left short edge at its middle</source>
        <translation>Die linke, kurze Kante in der Mitte</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/rehearsal.py"/>
        <source>The legend is not rehearsed:</source>
        <translation>Die Beschriftung wird nicht geprobt:</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/legend_export.py"/>
        <source>The legend is placed for the {side} up, the board turned over left over right into the same corner; hands turn it to about a millimetre. Find it by its holes before marking, and export again, for a better place.</source>
        <translation>Die Beschriftung ist für die {side} oben platziert, die Platine links über rechts in dieselbe Ecke gewendet; Hände wenden sie auf etwa einen Millimeter. Vor dem Markieren an ihren Löchern finden und neu ausgeben, für einen besseren Ort.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/find.py"/>
        <source>The light spot over reference hole {label}</source>
        <translation>Der Lichtpunkt über Bezugsloch {label}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser_check.py"/>
        <source>The line has a command with no place in a program for a laser.</source>
        <translation>Die Zeile hat einen Befehl, der in einem Laserprogramm keinen Platz hat.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>The line holds a command this controller does not know.</source>
        <translation>Die Zeile enthält einen Befehl, den diese Steuerung nicht kennt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/check.py"/>
        <location filename="../../app/drypoint/program/laser_check.py"/>
        <source>The line holds something other than words of a letter and a number.</source>
        <translation>Die Zeile enthält anderes als Wörter aus einem Buchstaben und einer Zahl.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>The line holds words that nothing uses.</source>
        <translation>Die Zeile enthält Wörter, die nichts benutzt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/sender.py"/>
        <source>The line is longer than the controller takes ({count} of {min}).</source>
        <translation>Die Zeile ist länger, als die Steuerung nimmt ({count} von {min}).</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser_check.py"/>
        <source>The line is longer than the controller takes ({limit}).</source>
        <translation>Die Zeile ist länger, als die Steuerung nimmt ({limit}).</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>The line is longer than the controller takes.</source>
        <translation>Die Zeile ist länger, als die Steuerung nimmt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/blocks.py"/>
        <source>The line is longer than {longest} characters.</source>
        <translation>Die Zeile ist länger als {longest} Zeichen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill.py"/>
        <source>The line is no text of a drill file.</source>
        <translation>Die Zeile ist kein Text einer Bohrdatei.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/check.py"/>
        <source>The line is {count} characters long; the controller takes {limit}.</source>
        <translation>Die Zeile ist {count} Zeichen lang; die Steuerung nimmt {limit}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/check.py"/>
        <source>The line moves before any kind of move is set.</source>
        <translation>Die Zeile bewegt, bevor eine Art von Weg gesetzt ist.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>The line number is out of range.</source>
        <translation>Die Zeilennummer ist außerhalb des Bereichs.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/sender.py"/>
        <source>The line “{line}” holds a character that the controller would act on at once.</source>
        <translation>Die Zeile „{line}“ enthält ein Zeichen, auf das die Steuerung sofort handeln würde.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/bursts.py"/>
        <source>The lines of a pulse take {max:.0f} bytes, more than the buffer holds.</source>
        <translation>Die Zeilen eines Pulses brauchen {max:.0f} Bytes, mehr als der Puffer fasst.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/run.py"/>
        <source>The lines of the broken run do not agree with its program.</source>
        <translation>Die Zeilen des abgebrochenen Laufs passen nicht zu seinem Programm.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bench/link.py"/>
        <location filename="../../app/drypoint/bench/remote.py"/>
        <location filename="../../app/drypoint/bench/served.py"/>
        <source>The link is closed.</source>
        <translation>Die Verbindung ist geschlossen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/serial_link.py"/>
        <source>The link is lost ({reason}).</source>
        <translation>Die Verbindung ist verloren ({reason}).</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bench/link.py"/>
        <source>The link is lost.</source>
        <translation>Die Verbindung ist verloren.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/library.py"/>
        <source>The list of bits cannot be read.</source>
        <translation>Die Liste der Werkzeuge lässt sich nicht lesen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>The machine did not come free of the switch after homing.</source>
        <translation>Die Maschine kam nach der Referenzfahrt nicht vom Schalter frei.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/axes.py"/>
        <source>The machine is busy.</source>
        <translation>Die Maschine ist beschäftigt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/journal.py"/>
        <source>The machine is held. Make room on the disk, then resume.</source>
        <translation>Die Maschine ist angehalten. Platz auf der Platte schaffen, dann fortsetzen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/greeting.py"/>
        <source>The machine is in the middle of something that was not started here.</source>
        <translation>Die Maschine ist mitten in etwas, das nicht hier begonnen wurde.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/preset.py"/>
        <source>The machine presets cannot be read.</source>
        <translation>Die Voreinstellungen der Maschine lassen sich nicht lesen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/streaming.py"/>
        <source>The machine reports a place {away:.2f} mm off the path</source>
        <translation>Die Maschine meldet einen Ort {away:.2f} mm neben der Bahn</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/streaming.py"/>
        <source>The machine runs at {feed:.0f} mm/min, faster than the program</source>
        <translation>Die Maschine läuft mit {feed:.0f} mm/min, schneller als das Programm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/speeds.py"/>
        <source>The machine runs slower, and takes longer than is told.</source>
        <translation>Die Maschine fährt langsamer und braucht länger als angegeben.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/explain.py"/>
        <source>The machine's distances are {value:+.0f} ± {u:.0f} µm per metre off.</source>
        <translation>Die Wege der Maschine weichen {value:+.0f} ± {u:.0f} µm je Meter ab.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <source>The manuals of machine and material, local rules and the advice of qualified people come first.</source>
        <translation>Handbücher von Maschine und Material, örtliche Vorschriften und der Rat fachkundiger Leute gehen vor.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/linear.py"/>
        <source>The measurements do not determine what is to be found.</source>
        <translation>Die Messungen bestimmen nicht, was gefunden werden soll.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>The mirroring “{command}” is unknown.</source>
        <translation>Die Spiegelung „{command}“ ist unbekannt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>The most passes that are planned by themselves.</source>
        <translation>Die meisten Durchgänge, die von selbst geplant werden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/electrical.py"/>
        <source>The net it is measured against; empty is every other net.</source>
        <translation>Das Netz, gegen das sie gemessen wird; leer heißt jedes andere Netz.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/electrical.py"/>
        <source>The net that carries the voltage.</source>
        <translation>Das Netz, das die Spannung führt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/netlist.py"/>
        <source>The netlist gives places before its units.</source>
        <translation>Die Netzliste nennt Orte vor ihren Einheiten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/netlist.py"/>
        <source>The netlist has more than {max_points} points.</source>
        <translation>Die Netzliste hat mehr als {max_points} Punkte.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/netlist.py"/>
        <source>The netlist has no points.</source>
        <translation>Die Netzliste hat keine Punkte.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/netlist_check.py"/>
        <source>The netlist says {given}, the copper {net}.</source>
        <translation>Die Netzliste sagt {given}, das Kupfer {net}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill_body.py"/>
        <source>The number format is wrong.</source>
        <translation>Das Zahlenformat ist falsch.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/outline.py"/>
        <source>The outline had a gap of {gap:.2f} mm, closed straight.</source>
        <translation>Der Umriss hatte eine Lücke von {gap:.2f} mm, gerade geschlossen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/layers.py"/>
        <source>The outline layer holds no closed loop.</source>
        <translation>Die Umrisslage enthält keine geschlossene Schleife.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/grooves.py"/>
        <source>The overlap must lie between 0 and 0.9.</source>
        <translation>Die Überlappung muss zwischen 0 und 0,9 liegen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/netlist.py"/>
        <source>The place lies more than 100 m out.</source>
        <translation>Der Ort liegt mehr als 100 m entfernt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/preset.py"/>
        <source>The plan may leave the travel, or use less than there is.</source>
        <translation>Der Plan kann den Verfahrbereich verlassen oder weniger nutzen, als da ist.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>The polarity “{command}” is unknown.</source>
        <translation>Die Polarität „{command}“ ist unbekannt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/serial_link.py"/>
        <source>The port cannot be opened ({reason}).</source>
        <translation>Der Anschluss lässt sich nicht öffnen ({reason}).</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>The position is kept. Reset and unlock; is zero set in the right place?</source>
        <translation>Die Position ist behalten. Neu starten und entsperren; ist Null am richtigen Ort gesetzt?</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/marking.py"/>
        <location filename="../../app/drypoint/machine/procedures/running.py"/>
        <location filename="../../app/drypoint/session/actions/find.py"/>
        <source>The position of {names} is not known.</source>
        <translation>Die Position von {names} ist nicht bekannt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/resuming.py"/>
        <source>The position was lost; it was set anew at the reference mark.</source>
        <translation>Die Position war verloren; sie wurde an der Bezugsmarke neu gesetzt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/run.py"/>
        <source>The position was set anew at the corner of the blank.</source>
        <translation>Die Position wurde an der Ecke des Zuschnitts neu gesetzt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/bit_change.py"/>
        <source>The power switch within reach.</source>
        <translation>Der Netzschalter in Reichweite.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser_check.py"/>
        <source>The power {power:g} is above full power, {scale:g}.</source>
        <translation>Die Leistung {power:g} liegt über der vollen, {scale:g}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/companion.py"/>
        <source>The process that worked on it has ended before it was done.</source>
        <translation>Der Prozess, der daran arbeitete, hat vorzeitig geendet.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/program_cuts.py"/>
        <source>The program chosen for the grooves is not among the files.</source>
        <translation>Das für die Nuten gewählte Programm ist nicht unter den Dateien.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/program_cuts.py"/>
        <source>The program chosen for the outline cannot be run.</source>
        <translation>Das für den Umriss gewählte Programm kann nicht laufen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser_check.py"/>
        <source>The program does not end with the beam off (M5 and S0).</source>
        <translation>Das Programm endet nicht mit ausgeschaltetem Strahl (M5 und S0).</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/limits.py"/>
        <source>The program goes {max:.2f} mm past the {end} end of {letter}.</source>
        <translation>Das Programm geht {max:.2f} mm über das {end} Ende von {letter} hinaus.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>The program has more than {max_moves} moves.</source>
        <translation>Das Programm hat mehr als {max_moves} Wege.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/recovery.py"/>
        <source>The program has {count} lines, not {first}.</source>
        <translation>Das Programm hat {count} Zeilen, nicht {first}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>The program is binary, not text.</source>
        <translation>Das Programm ist binär, kein Text.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>The program is empty.</source>
        <translation>Das Programm ist leer.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/work.py"/>
        <source>The program needs {size:.1f} mm of {letter}; the machine moves {travel:.0f} mm.</source>
        <translation>Das Programm braucht {size:.1f} mm von {letter}; die Maschine verfährt {travel:.0f} mm.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/kept_program.py"/>
        <source>The program of an earlier run cannot be read ({error}).</source>
        <translation>Das Programm eines früheren Laufs lässt sich nicht lesen ({error}).</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet_sides.py"/>
        <source>The programs of the second side are placed for the board turned left over right into the same corner; hands turn it to about a millimetre. Find it by its holes, touch its copper and export again before it is milled.</source>
        <translation>Die Programme der zweiten Seite sind für die Platine platziert, wie sie links über rechts in dieselbe Ecke gewendet liegt; Hände wenden sie auf etwa einen Millimeter. Vor dem Fräsen an ihren Löchern finden, das Kupfer antasten und neu ausgeben.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/netlist.py"/>
        <source>The record has no place (X and Y).</source>
        <translation>Der Eintrag hat keinen Ort (X und Y).</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/fit.py"/>
        <source>The reference holes are all at one place, so the board's angle cannot be found.</source>
        <translation>Die Bezugslöcher liegen alle an einem Ort, der Winkel der Platine lässt sich so nicht finden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/affine.py"/>
        <source>The reference holes lie on one line; scale and squareness need holes on both sides of it.</source>
        <translation>Die Bezugslöcher liegen auf einer Geraden; Maßstab und Rechtwinkligkeit brauchen Löcher auf beiden Seiten davon.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/checks.py"/>
        <source>The reference mark is {away:.2f} mm off: steps were lost, or it moved.</source>
        <translation>Die Bezugsmarke liegt {away:.2f} mm daneben: Schritte gingen verloren, oder sie wurde bewegt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/give.py"/>
        <source>The right long edge at its middle</source>
        <translation>Die rechte, lange Kante in der Mitte</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/give.py"/>
        <source>The right short edge at its middle</source>
        <translation>Die rechte, kurze Kante in der Mitte</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>The rotation “{command}” is not a number.</source>
        <translation>Die Drehung „{command}“ ist keine Zahl.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/faults.py"/>
        <source>The run can be resumed.</source>
        <translation>Der Lauf kann fortgesetzt werden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>The safety door opened during homing.</source>
        <translation>Die Schutztür öffnete sich während der Referenzfahrt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <location filename="../../app/drypoint/machine/view.py"/>
        <source>The safety door reads open.</source>
        <translation>Die Schutztür meldet offen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>The same for the reference holes pricked by the V-bit, which is stiff and does not wander.</source>
        <translation>Dasselbe für die Bezugslöcher, die der V-Stichel sticht; er ist steif und verläuft nicht.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>The scale “{command}” is impossible.</source>
        <translation>Der Maßstab „{command}“ ist unmöglich.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/rest.py"/>
        <source>The second bit must cut wider than the fine one, and both through the copper.</source>
        <translation>Der zweite Fräser muss breiter schneiden als der feine, und beide durch das Kupfer.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/report.py"/>
        <source>The second side cannot be found: there are fewer than two holes</source>
        <translation>Die zweite Seite ist nicht zu finden: es gibt weniger als zwei Löcher</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/turn.py"/>
        <source>The second side is found from at least two drilled holes.</source>
        <translation>Die zweite Seite wird aus mindestens zwei gebohrten Löchern gefunden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/sideways.py"/>
        <location filename="../../app/drypoint/machine/procedures/touching.py"/>
        <source>The second touch found no contact.</source>
        <translation>Das zweite Antasten fand keinen Kontakt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>The serial port of the controller. Empty: the bench, a simulated machine.</source>
        <translation>Der serielle Anschluss der Steuerung. Leer: der Prüfstand, eine simulierte Maschine.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_compose.py"/>
        <source>The shapes cannot be united.</source>
        <translation>Die Formen lassen sich nicht vereinigen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/weakened.py"/>
        <source>The share of its width that a trace may lose lies between 0 and 1.</source>
        <translation>Der Anteil seiner Breite, den ein Leiterzug verlieren darf, liegt zwischen 0 und 1.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>The size class of the machine: travel, speeds, what it has. All of it can be corrected below.</source>
        <translation>Die Größenklasse der Maschine: Verfahrweg, Geschwindigkeiten, was sie hat. Alles lässt sich unten korrigieren.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill_body.py"/>
        <source>The slots have too many points.</source>
        <translation>Die Langlöcher haben zu viele Punkte.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/guard.py"/>
        <source>The spindle is locked: the contact clip is not confirmed off.</source>
        <translation>Die Spindel ist gesperrt: Es ist nicht bestätigt, dass die Kontaktklemme ab ist.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/guard.py"/>
        <source>The spindle is locked: the contact input reads closed.</source>
        <translation>Die Spindel ist gesperrt: Der Kontakteingang ist geschlossen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/contact.py"/>
        <source>The spindle must stand still and stay off while the clip is on.</source>
        <translation>Die Spindel muss stillstehen und aus bleiben, solange die Klemme dran ist.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/bit_change.py"/>
        <location filename="../../app/drypoint/machine/procedures/resuming.py"/>
        <source>The spindle must stand still.</source>
        <translation>Die Spindel muss stillstehen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/dust.py"/>
        <source>The spindle must stand still. The board stays clamped: do not lean on it.</source>
        <translation>Die Spindel muss stillstehen. Die Platine bleibt gespannt: nicht darauf stützen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/proof.py"/>
        <source>The spindle stands still and stays off.</source>
        <translation>Die Spindel steht still und bleibt aus.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/preset.py"/>
        <source>The spindle will turn faster or slower than asked.</source>
        <translation>Die Spindel wird schneller oder langsamer drehen als verlangt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>The step pulse is set shorter than 3 µs.</source>
        <translation>Der Schrittpuls ist kürzer als 3 µs eingestellt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>The step-and-repeat “{command}” cannot be understood.</source>
        <translation>Die Wiederholung „{command}“ wird nicht verstanden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/preset.py"/>
        <source>The steps per mm of {axes} are {value:g}.</source>
        <translation>Die Schritte je mm von {axes} sind {value:g}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>The surface is stale.</source>
        <translation>Die Oberfläche ist überholt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/warp.py"/>
        <source>The surface is too rough to follow within {chord:.1f} µm.</source>
        <translation>Die Oberfläche ist zu rau, um ihr auf {chord:.1f} µm zu folgen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/table.py"/>
        <source>The table of touches is empty.</source>
        <translation>Die Tabelle der Antastungen ist leer.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/voltage_table.py"/>
        <source>The table of voltages cannot be read.</source>
        <translation>Die Tabelle der Spannungen ist nicht lesbar.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/voltage_table.py"/>
        <source>The table of voltages is no text.</source>
        <translation>Die Tabelle der Spannungen ist kein Text.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>The target cannot be reached as commanded: an impossible arc, or a touch that starts at its end.</source>
        <translation>Das Ziel ist so nicht erreichbar: ein unmöglicher Bogen oder ein Antasten, das an seinem Ende beginnt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_source.py"/>
        <source>The text is too large for a Gerber layer.</source>
        <translation>Der Text ist zu groß für eine Gerber-Lage.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>The tool number is larger than the controller allows.</source>
        <translation>Die Werkzeugnummer ist größer, als die Steuerung erlaubt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>The touch found no contact within its depth.</source>
        <translation>Das Antasten fand innerhalb seiner Tiefe keinen Kontakt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/affine.py"/>
        <source>The touched holes are mirrored against the design.</source>
        <translation>Die angetasteten Löcher sind gegen den Entwurf gespiegelt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/model.py"/>
        <source>The touches cannot be used: {error}.</source>
        <translation>Die Antastungen lassen sich nicht benutzen: {error}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/gross.py"/>
        <source>The two holes are {error:.3f} mm too {which}</source>
        <translation>Die beiden Löcher sind {error:.3f} mm zu {which}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/table.py"/>
        <source>The unit of column '{cell}' is not known.</source>
        <translation>Die Einheit der Spalte '{cell}' ist nicht bekannt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>The unit “{command}” is unknown.</source>
        <translation>Die Einheit „{command}“ ist unbekannt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_interpreter.py"/>
        <source>The unknown command “{block}” is passed over.</source>
        <translation>Der unbekannte Befehl „{block}“ wird übergangen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>The unknown command “{command}” is passed over.</source>
        <translation>Der unbekannte Befehl „{command}“ wird übergangen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>The whole legend is off by as much as this is wrong.</source>
        <translation>Die ganze Beschriftung liegt um so viel daneben, wie dies falsch ist.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>The wider the angle, the more an error of depth changes the width of the groove.</source>
        <translation>Je weiter der Winkel, desto mehr ändert ein Tiefenfehler die Breite der Nut.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/grooves.py"/>
        <source>The width of the cut must be more than 0.</source>
        <translation>Die Breite des Schnitts muss mehr als 0 sein.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/clearing.py"/>
        <source>The wrong bit is put in.</source>
        <translation>Es wird der falsche Fräser eingesetzt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/archive.py"/>
        <source>The zip cannot be read: {reason}.</source>
        <translation>Das Zip lässt sich nicht lesen: {reason}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/archive.py"/>
        <source>The zip holds more than {max_files} files.</source>
        <translation>Das Zip enthält mehr als {max_files} Dateien.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/archive.py"/>
        <source>The zip unpacks to too much data.</source>
        <translation>Das Zip entpackt sich zu zu vielen Daten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/legend.py"/>
        <source>The {bottom} looks up, the legend belongs on the other side.</source>
        <translation>Die {bottom} liegt oben, die Beschriftung gehört auf die andere Seite.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/gross.py"/>
        <source>The {count} holes agree.</source>
        <translation>Die {count} Löcher stimmen überein.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/outline.py"/>
        <source>The {label} would be cut through a clamp.</source>
        <translation>Der {label} würde durch einen Spanner geschnitten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>The {letter} axis does not exist on this machine.</source>
        <translation>Die Achse {letter} gibt es an dieser Maschine nicht.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/legend.py"/>
        <source>The {name} of the legend must be above 0.</source>
        <translation>{name} der Beschriftung muss über 0 liegen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/derive.py"/>
        <source>The {value} looks up; the {value2} is to be milled.</source>
        <translation>Die {value} liegt oben; die {value2} soll gefräst werden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/library.py"/>
        <source>The {what} must be more than 0.</source>
        <translation>{what} muss mehr als 0 sein.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/preset.py"/>
        <source>The {what} of {axes} is {have:g} {unit}; the machine set up here has {want:g}.</source>
        <translation>{what} von {axes} ist {have:g} {unit}; die hier eingerichtete Maschine hat {want:g}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/head.py"/>
        <source>The {what} over mark {label}</source>
        <translation>{what} über Marke {label}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Their cuts miss the pads and holes they were made for.</source>
        <translation>Ihre Schnitte verfehlen die Lötflächen und Löcher, für die sie gemacht wurden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>There are coordinates that no command wants.</source>
        <translation>Da sind Koordinaten, die kein Befehl will.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/archive.py"/>
        <source>There are more than {max_files} files.</source>
        <translation>Es sind mehr als {max_files} Dateien.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/derive.py"/>
        <source>There are no design files yet.</source>
        <translation>Es gibt noch keine Entwurfsdateien.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>There are places but no motion is chosen (G0, G1, G2 or G3).</source>
        <translation>Da sind Orte, aber keine Bewegung ist gewählt (G0, G1, G2 oder G3).</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/commands.py"/>
        <source>There are {boards} boards and {places} places.</source>
        <translation>Es sind {boards} Platinen und {places} Orte.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/model.py"/>
        <source>There are {count} touches but {size} values of give.</source>
        <translation>Es sind {count} Antastungen, aber {size} Werte des Nachgebens.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/program_bits.py"/>
        <source>There are: {names}.</source>
        <translation>Es gibt: {names}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/session.py"/>
        <source>There is a file of this name already.</source>
        <translation>Es gibt schon eine Datei dieses Namens.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/layers.py"/>
        <source>There is copper of the {value}: mill that, or choose another file.</source>
        <translation>Es gibt Kupfer der {value}: diese fräsen oder eine andere Datei wählen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/library.py"/>
        <location filename="../../app/drypoint/session/clear_options.py"/>
        <source>There is no bit named '{name}'.</source>
        <translation>Es gibt kein Werkzeug namens '{name}'.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/panel.py"/>
        <source>There is no board on the blank.</source>
        <translation>Auf dem Zuschnitt liegt keine Platine.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/boards.py"/>
        <source>There is no board “{name}” in the job.</source>
        <translation>Im Auftrag ist keine Platine „{name}“.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/burn.py"/>
        <source>There is no broken burn grid.</source>
        <translation>Es gibt kein abgebrochenes Brennraster.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/mark.py"/>
        <source>There is no broken run of these marks.</source>
        <translation>Es gibt keinen abgebrochenen Lauf dieser Marken.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/run.py"/>
        <source>There is no broken run.</source>
        <translation>Es gibt keinen abgebrochenen Lauf.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/depth_check.py"/>
        <source>There is no copper data, so nothing says what is to be parted.</source>
        <translation>Es gibt keine Kupferdaten; nichts sagt, was zu trennen ist.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/programs.py"/>
        <source>There is no copper data: nets are not known, so no check tells whether they are parted.</source>
        <translation>Es gibt keine Kupferdaten: Netze sind nicht bekannt, also sagt keine Prüfung, ob sie getrennt sind.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/archive.py"/>
        <source>There is no design file.</source>
        <translation>Es gibt keine Entwurfsdatei.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/library.py"/>
        <source>There is no kind of bit called '{kind}'.</source>
        <translation>Es gibt keine Werkzeugart namens '{kind}'.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/work.py"/>
        <source>There is no machine {preset!r}.</source>
        <translation>Es gibt keine Maschine {preset!r}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser.py"/>
        <source>There is no mark {mark} in this program.</source>
        <translation>In diesem Programm ist keine Marke {mark}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/programs.py"/>
        <source>There is no outline layer: the loop milled round everything is taken for the edge.</source>
        <translation>Es gibt keine Umrisslage: Die rings um alles gefräste Schleife gilt als Rand.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/load.py"/>
        <source>There is no outline layer; the size is the one the copper layer states in a comment.</source>
        <translation>Es gibt keine Umrisslage; die Größe ist die, die die Kupferlage in einem Kommentar nennt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/load.py"/>
        <source>There is no outline: a rectangle {margin:g} mm round the copper is used.</source>
        <translation>Es gibt keinen Umriss: Ein Rechteck {margin:g} mm um das Kupfer wird benutzt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/programs.py"/>
        <source>There is no outline: the rectangle round everything that is cut is used.</source>
        <translation>Es gibt keinen Umriss: Das Rechteck um alles Geschnittene wird benutzt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/programs.py"/>
        <source>There is no outline: the rectangle {margin:g} mm round all that programs cut is cut out.</source>
        <translation>Es gibt keinen Umriss: ausgefräst wird das Rechteck {margin:g} mm um alles, was Programme schneiden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/islands_plan.py"/>
        <source>There is no place to touch on {net}.</source>
        <translation>Auf {net} gibt es keine Stelle zum Antasten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/program_bits.py"/>
        <source>There is no program “{file}”.</source>
        <translation>Es gibt kein Programm „{file}“.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/holes.py"/>
        <source>There is no room for reference marks between the outline and the blank's edge.</source>
        <translation>Zwischen dem Umriss und dem Rand des Zuschnitts ist kein Platz für Bezugsmarken.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/tooling.py"/>
        <source>There is no room for tooling holes between the outline and the edge of the blank.</source>
        <translation>Zwischen dem Umriss und dem Rand des Zuschnitts ist kein Platz für Aufnahmebohrungen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/commands.py"/>
        <source>There is no such file or folder.</source>
        <translation>Es gibt keine solche Datei und keinen solchen Ordner.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/store.py"/>
        <source>There is no such job file.</source>
        <translation>Es gibt keine solche Auftragsdatei.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/depth_check.py"/>
        <source>There is no such program in the job.</source>
        <translation>Der Auftrag hat kein solches Programm.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser.py"/>
        <source>There is nothing to mark.</source>
        <translation>Es gibt nichts zu markieren.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/plan.py"/>
        <source>There is nowhere to touch: clamps, holes and edge leave no room.</source>
        <translation>Es gibt nichts anzutasten: Spanner, Löcher und Rand lassen keinen Platz.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/islands.py"/>
        <source>There must be one width, or one for every line.</source>
        <translation>Es muss eine Breite geben, oder eine für jede Linie.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/preset.py"/>
        <source>They are converted.</source>
        <translation>Sie werden umgerechnet.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>They must be equal; the program may have been rounded or shortened.</source>
        <translation>Sie müssen gleich sein; das Programm ist vielleicht gerundet oder gekürzt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/joined.py"/>
        <source>They touch in the design.</source>
        <translation>Sie berühren sich im Entwurf.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/holes.py"/>
        <source>Thickness and depth into the backing must be positive.</source>
        <translation>Dicke und Tiefe in die Unterlage müssen positiv sein.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Thickness of laminate left in each bridge.</source>
        <translation>Dicke des Laminats, das in jedem Steg bleibt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Thickness of the copper: 0.035 for one ounce per square foot, 0.0175 for half of that.</source>
        <translation>Dicke des Kupfers: 0,035 für eine Unze je Quadratfuß, 0,0175 für die Hälfte.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Thickness of the laminate with its copper; measure it, sheets differ by a tenth.</source>
        <translation>Dicke des Laminats mit seinem Kupfer; messen, Tafeln weichen um ein Zehntel ab.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Thickness of the sacrificial board under the laminate.</source>
        <translation>Dicke der Opferplatte unter dem Laminat.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/legend.py"/>
        <source>This board has no legend.</source>
        <translation>Diese Platine hat keine Beschriftung.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/guard.py"/>
        <source>This could leave the beam on when the machine stands still ({flaw}).</source>
        <translation>Das könnte den Strahl an lassen, wenn die Maschine stillsteht ({flaw}).</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/centrelines.py"/>
        <source>This cut would leave {left:.3f} mm of a trace; {least:.3f} mm is the least allowed. A cut of {widest:.3f} mm or less would do.</source>
        <translation>Dieser Schnitt ließe {left:.3f} mm einer Leiterbahn übrig; {least:.3f} mm ist das Mindeste. Ein Schnitt von {widest:.3f} mm oder weniger würde genügen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_source.py"/>
        <source>This is a binary file, not Gerber text.</source>
        <translation>Das ist eine Binärdatei, kein Gerber-Text.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/schema.py"/>
        <source>This is a database, but not a job file.</source>
        <translation>Das ist eine Datenbank, aber keine Auftragsdatei.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>This is a fault of the program sent: nothing is wrong with the machine. Make the program again.</source>
        <translation>Das ist ein Fehler des gesendeten Programms: An der Maschine fehlt nichts. Das Programm neu machen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/store.py"/>
        <source>This is a folder, not a job file.</source>
        <translation>Das ist ein Ordner, keine Auftragsdatei.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/blocks.py"/>
        <source>This is a settings or system line of a controller.</source>
        <translation>Das ist eine Einstell- oder Systemzeile einer Steuerung.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_source.py"/>
        <source>This is no Gerber file: no Gerber command is in it.</source>
        <translation>Das ist keine Gerber-Datei: Kein Gerber-Befehl ist darin.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/netlist.py"/>
        <source>This is no IPC-D-356 netlist.</source>
        <translation>Das ist keine IPC-D-356-Netzliste.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>This is no RS-274 program.</source>
        <translation>Das ist kein RS-274-Programm.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill.py"/>
        <source>This is no drill file.</source>
        <translation>Das ist keine Bohrdatei.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/drill_sizes.py"/>
        <source>This is no drill size known here.</source>
        <translation>Das ist keine hier bekannte Bohrergröße.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/store.py"/>
        <source>This is no name for a job file.</source>
        <translation>So kann keine Auftragsdatei heißen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/archive.py"/>
        <source>This is no regular file.</source>
        <translation>Das ist keine gewöhnliche Datei.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/store.py"/>
        <source>This is not a job file.</source>
        <translation>Das ist keine Auftragsdatei.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_source.py"/>
        <source>This is {kind}, not a Gerber file.</source>
        <translation>Das ist {kind}, keine Gerber-Datei.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_source.py"/>
        <source>This is {kind}, not a Gerber layer.</source>
        <translation>Das ist {kind}, keine Gerber-Lage.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/schema.py"/>
        <source>This job was saved by a newer Drypoint (format {version}; this one reads up to {version2}).</source>
        <translation>Dieser Auftrag wurde von einem neueren Drypoint gespeichert (Format {version}; dieses liest bis {version2}).</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/axes.py"/>
        <source>This machine has no homing.</source>
        <translation>Diese Maschine hat keine Referenzfahrt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/imported.py"/>
        <source>This program cuts nothing.</source>
        <translation>Dieses Programm schneidet nichts.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/depth_check.py"/>
        <location filename="../../app/drypoint/session/program_cuts.py"/>
        <source>This program engraves nothing.</source>
        <translation>Dieses Programm graviert nichts.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/imported.py"/>
        <source>This program is not used: {what}</source>
        <translation>Dieses Programm wird nicht benutzt: {what}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>This work coordinate system does not exist here.</source>
        <translation>Dieses Werkstückkoordinatensystem gibt es hier nicht.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/rim.py"/>
        <source>Three contacts with the rim are needed at least.</source>
        <translation>Mindestens drei Kontakte mit dem Rand sind nötig.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <source>Through, expected</source>
        <translation>Durch, erwartet</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/preset.py"/>
        <source>Times and rapid moves will differ.</source>
        <translation>Zeiten und Eilgänge werden anders sein.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/preset.py"/>
        <source>Times will differ; too high loses steps.</source>
        <translation>Zeiten werden anders sein; zu hoch verliert Schritte.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/coupon_job.py"/>
        <location filename="../../app/drypoint/ui/design_side/coupon_sheet.py"/>
        <source>Tip and run-out together</source>
        <translation>Spitze und Rundlauffehler zusammen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/width_coupon.py"/>
        <source>Tip and run-out together {both:.3f} ± {both_sigma:.3f} mm.</source>
        <translation>Spitze und Rundlauffehler zusammen {both:.3f} ± {both_sigma:.3f} mm.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/library.py"/>
        <source>Tip width and run-out cannot be below 0.</source>
        <translation>Spitzenbreite und Rundlauffehler können nicht unter 0 liegen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/width_coupon.py"/>
        <source>Tip {tip:.3f} ± {sigma:.3f} mm.</source>
        <translation>Spitze {tip:.3f} ± {sigma:.3f} mm.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <source>To know</source>
        <translation>Zu wissen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Too deep a peck packs the flutes and breaks thin drills.</source>
        <translation>Ein zu tiefer Hub verstopft die Nuten und bricht dünne Bohrer.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Too deep bends a small machine and breaks the mill; too shallow only takes time.</source>
        <translation>Zu tief biegt eine kleine Maschine und bricht den Fräser; zu flach kostet nur Zeit.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Too fast bends and breaks it and tears the copper; too slow rubs and dulls it.</source>
        <translation>Zu schnell biegt und bricht es und reißt das Kupfer; zu langsam reibt und stumpft es ab.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Too fast bends the tip before the machine has stopped.</source>
        <translation>Zu schnell biegt die Spitze, bevor die Maschine steht.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/clearing.py"/>
        <source>Too fast breaks the bit or tears the copper; too slow rubs and takes long.</source>
        <translation>Zu schnell bricht den Fräser oder reißt das Kupfer; zu langsam reibt und dauert lange.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/clearing.py"/>
        <source>Too fast breaks the bit.</source>
        <translation>Zu schnell bricht den Fräser.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Too fast breaks tips and pushes the laminate away.</source>
        <translation>Zu schnell bricht Spitzen und drückt das Laminat weg.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Too few leave doubtful spots for you to decide about; many only take time.</source>
        <translation>Zu wenige lassen zweifelhafte Stellen, über die Sie entscheiden; viele kosten nur Zeit.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Too few leave ripples unseen: more of the board is doubtful and cut again. Each takes some seconds.</source>
        <translation>Zu wenige lassen Wellen ungesehen: Mehr von der Platine ist zweifelhaft und wird nachgeschnitten. Jede dauert einige Sekunden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/linear.py"/>
        <source>Too few measurements for what is to be found.</source>
        <translation>Zu wenige Messungen für das, was gefunden werden soll.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Too large a hole eats the ring of copper round it; too small a one does not take the lead.</source>
        <translation>Ein zu großes Loch frisst den Kupferring darum; ein zu kleines nimmt den Anschlussdraht nicht auf.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Too large a value leaves gaps in fills; too small makes them dense and marks come near to pads.</source>
        <translation>Ein zu großer Wert lässt Lücken in Füllungen; ein zu kleiner macht sie dicht, und Marken kommen nahe an Lötflächen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Too large a value puts clamps and reference holes where there is no laminate.</source>
        <translation>Ein zu großer Wert setzt Spanner und Bezugslöcher dorthin, wo kein Laminat ist.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/holes.py"/>
        <source>Too large leaves thin drills without a mark; too small marks every hole and takes time.</source>
        <translation>Zu groß lässt dünne Bohrer ohne Marke; zu klein markiert jedes Loch und kostet Zeit.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Too large, and programs may run the axes against their stops; the position is lost then.</source>
        <translation>Zu groß, und Programme können die Achsen gegen ihre Anschläge fahren; die Position ist dann verloren.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Too little chars the edge of pads, and solder does not take there.</source>
        <translation>Zu wenig verkohlt den Rand von Lötflächen, und Lot haftet dort nicht.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Too little cuts into what the programs made; too much asks for a larger blank.</source>
        <translation>Zu wenig schneidet in das, was die Programme gemacht haben; zu viel braucht einen größeren Zuschnitt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Too little leaves burrs or a floor in the holes; more than the backing is thick cuts into the bed.</source>
        <translation>Zu wenig lässt Grate oder einen Boden in den Löchern; mehr als die Dicke der Unterlage schneidet in den Tisch.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/clearing.py"/>
        <source>Too little leaves much to be cut again; too much wears the bit and widens the cut of a V-bit.</source>
        <translation>Zu wenig lässt viel zum Nachschneiden übrig; zu viel nutzt den Fräser ab und verbreitert den Schnitt eines V-Stichels.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Too little leaves no room for clamps and for the reference holes.</source>
        <translation>Zu wenig lässt keinen Platz für Spanner und für die Bezugslöcher.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/clearing.py"/>
        <source>Too little leaves threads of copper that are cut one by one; too much takes long.</source>
        <translation>Zu wenig lässt Kupferfäden stehen, die einzeln geschnitten werden; zu viel dauert lange.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Too little leaves traces that lift or burn; too much calls narrow gaps impossible.</source>
        <translation>Zu wenig lässt Leiterbahnen, die abheben oder durchbrennen; zu viel nennt Engstellen unmöglich.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Too little marks where solder goes; too much leaves gaps in the legend.</source>
        <translation>Zu wenig markiert, wo Lot hinkommt; zu viel lässt Lücken in der Beschriftung.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Too long chars; too short leaves no mark.</source>
        <translation>Zu lang verkohlt; zu kurz hinterlässt keine Marke.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Too long makes wide, charred spots; too short leaves none. A burn grid tells.</source>
        <translation>Zu lang macht breite, verkohlte Flecke; zu kurz keine. Ein Brennraster sagt es.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Too low needs more passes; very near 1 cuts grooves wide wherever little is known.</source>
        <translation>Zu niedrig braucht mehr Durchgänge; sehr nahe 1 schneidet Nuten breit, wo wenig bekannt ist.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Too many do not fit; the blank then has to be larger than the machine can reach.</source>
        <translation>Zu viele passen nicht; der Zuschnitt muss dann größer sein, als die Maschine reicht.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/clearing.py"/>
        <source>Too much breaks it. Copper is thinner than any usual step.</source>
        <translation>Zu viel bricht ihn. Kupfer ist dünner als jede übliche Zustellung.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Too much breaks the tip on a spot that does not conduct; too little misses hollows.</source>
        <translation>Zu viel bricht die Spitze auf einer Stelle, die nicht leitet; zu wenig verfehlt Mulden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Too much burns through the coating and chars; too little leaves no mark. A burn grid tells.</source>
        <translation>Zu viel brennt durch die Beschichtung und verkohlt; zu wenig hinterlässt keine Marke. Ein Brennraster sagt es.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Too much chars; too little leaves no mark.</source>
        <translation>Zu viel verkohlt; zu wenig hinterlässt keine Marke.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/electrical.py"/>
        <source>Too much hides traces that get hot, too little lists every trace that is touched.</source>
        <translation>Zu viel verschweigt Leiterzüge, die heiß werden; zu wenig listet jeden, der nur berührt wird.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/holes.py"/>
        <source>Too much makes holes that leads do not pass or that wobble; too little bores many small holes.</source>
        <translation>Zu viel macht Löcher, durch die Drähte nicht gehen oder in denen sie wackeln; zu wenig fräst viele kleine Löcher aus.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/electrical.py"/>
        <source>Too much makes thin traces look fit for currents that scorch the board.</source>
        <translation>Zu viel lässt dünne Leiterbahnen tauglich aussehen für Ströme, die die Platine versengen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Too much thins tracks and rings; none leaves narrow gaps uncut, and they are listed.</source>
        <translation>Zu viel macht Bahnen und Ringe dünn; keiner lässt Engstellen ungeschnitten, und sie werden aufgeführt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/clearing.py"/>
        <source>Too narrow and solder bridges it easily; too wide takes long.</source>
        <translation>Zu schmal, und Lot überbrückt ihn leicht; zu breit dauert lange.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/clearing.py"/>
        <source>Too short and two bits seem to pay where they do not.</source>
        <translation>Zu kurz, und zwei Fräser scheinen sich zu lohnen, wo sie es nicht tun.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Too short breaks early; too long is hard to cut off.</source>
        <translation>Zu kurz bricht früh; zu lang ist schwer abzuschneiden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Too short smears the spots while the machine still shakes; longer only takes time.</source>
        <translation>Zu kurz verschmiert die Flecke, solange die Maschine noch zittert; länger kostet nur Zeit.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Too short, and the bit meets the copper while still slow, and breaks.</source>
        <translation>Zu kurz, und das Werkzeug trifft das Kupfer noch langsam und bricht.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Too slow breaks fine bits, too fast burns them. Keep to what the makers of bit and spindle allow.</source>
        <translation>Zu langsam bricht feine Werkzeuge, zu schnell verbrennt sie. Bleiben Sie bei dem, was die Hersteller von Werkzeug und Spindel erlauben.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Too slow burns too deep; too fast leaves a faint line. On short lines it is never reached.</source>
        <translation>Zu langsam brennt zu tief; zu schnell hinterlässt eine blasse Linie. Auf kurzen Linien wird sie nie erreicht.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/clearing.py"/>
        <source>Too slow tears the copper; too fast burns the laminate.</source>
        <translation>Zu langsam reißt das Kupfer; zu schnell verbrennt das Laminat.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Too small a value makes grooves wider than shown.</source>
        <translation>Ein zu kleiner Wert macht Nuten breiter als gezeigt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Too small a value makes grooves wider than shown; too large lets narrow gaps look impossible.</source>
        <translation>Ein zu kleiner Wert macht Nuten breiter als gezeigt; ein zu großer lässt Engstellen unmöglich aussehen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Too small a value makes the fit look surer than it is; too large hides a hole touched wrongly.</source>
        <translation>Ein zu kleiner Wert lässt die Einpassung sicherer aussehen, als sie ist; ein zu großer verbirgt ein falsch angetastetes Loch.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Too small a value promises cuts that are not through; too large cuts deeper than needed.</source>
        <translation>Ein zu kleiner Wert verspricht Schnitte, die nicht durch sind; ein zu großer schneidet tiefer als nötig.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Too small a value promises positions that are not met; measure it and enter what you found.</source>
        <translation>Ein zu kleiner Wert verspricht Positionen, die nicht getroffen werden; messen Sie und geben Sie ein, was Sie fanden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Too small and grooves that count as through still hold copper; too large and they are cut deeper and wider than they need to be.</source>
        <translation>Zu klein, und Nuten, die als durch gelten, halten noch Kupfer; zu groß, und sie werden tiefer und breiter geschnitten als nötig.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Too small and holes and outline do not come through; too large and they cut into the bed.</source>
        <translation>Zu klein, und Löcher und Umriss kommen nicht durch; zu groß, und sie schneiden in den Tisch.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/holes.py"/>
        <source>Too small and lone pads are torn off the laminate; too large only takes time.</source>
        <translation>Zu klein, und einzelne Lötflächen werden vom Laminat gerissen; zu groß kostet nur Zeit.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Too small and low spots are never reached; too large makes wide grooves and wears the tip on glass.</source>
        <translation>Zu klein, und tiefe Stellen werden nie erreicht; zu groß macht breite Nuten und stumpft die Spitze am Glas.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Too small hatches plain strokes; too large takes longer round corners.</source>
        <translation>Zu klein schraffiert einfache Striche; zu groß braucht um Ecken länger.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Too small leaves part of it unprotected.</source>
        <translation>Zu klein lässt einen Teil davon ungeschützt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Too thin breaks early; too thick is hard to cut off.</source>
        <translation>Zu dünn bricht früh; zu dick ist schwer abzuschneiden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill_body.py"/>
        <source>Tool T{number} is used but its diameter is not given.</source>
        <translation>Werkzeug T{number} wird benutzt, aber sein Durchmesser ist nicht angegeben.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/placed_cuts.py"/>
        <location filename="../../app/drypoint/session/tooling.py"/>
        <location filename="../../app/drypoint/ui/design_side/turning.py"/>
        <source>Tooling holes</source>
        <translation>Aufnahme­bohrungen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/fit.py"/>
        <source>Touch another hole, far away.</source>
        <translation>Ein weiteres Loch antasten, weit entfernt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/derive.py"/>
        <source>Touch it again before cutting.</source>
        <translation>Vor dem Schneiden erneut antasten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/affine.py"/>
        <source>Touch more holes, or keep the rigid fit.</source>
        <translation>Mehr Löcher antasten oder bei der starren Einpassung bleiben.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/play.py"/>
        <source>Touch off Z first.</source>
        <translation>Zuerst Z nullen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/touch_off.py"/>
        <source>Touch off Z first: the bit is let down by it.</source>
        <translation>Zuerst Z nullen: Danach wird das Werkzeug abgesenkt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/measure.py"/>
        <location filename="../../app/drypoint/session/derive.py"/>
        <source>Touch the copper first.</source>
        <translation>Zuerst das Kupfer antasten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/rim.py"/>
        <source>Touch the rim all round.</source>
        <translation>Den Rand ringsum antasten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/affine.py"/>
        <source>Touch them again.</source>
        <translation>Noch einmal antasten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/turn.py"/>
        <source>Touch two drilled holes, better three.</source>
        <translation>Zwei gebohrte Löcher antasten, besser drei.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/derive.py"/>
        <source>Touch two reference holes, better three.</source>
        <translation>Zwei Bezugslöcher antasten, besser drei.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <location filename="../../app/drypoint/session/surface_rows.py"/>
        <source>Touched</source>
        <translation>Angetastet</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>Traces that are thinned</source>
        <translation>Geschwächte Leiterzüge</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/preset.py"/>
        <source>Travel limits in software are on, but homing is off.</source>
        <translation>Fahrgrenzen in Software sind an, aber die Referenzfahrt ist aus.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Travel limits in software need homing, which is off.</source>
        <translation>Fahrgrenzen in Software brauchen die Referenzfahrt, die aus ist.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/turn.py"/>
        <source>Turn it {flip} and clamp it in the same corner of the bed, flat.</source>
        <translation>{flip} wenden und in dieselbe Ecke des Tischs spannen, flach.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/hover.py"/>
        <source>Turn the board on the bed, or use a larger machine.</source>
        <translation>Die Platine auf dem Tisch drehen oder eine größere Maschine nehmen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/turn.py"/>
        <location filename="../../app/drypoint/session/rehearsal_second.py"/>
        <location filename="../../app/drypoint/ui/machine_side/moving.py"/>
        <source>Turn the board over</source>
        <translation>Die Platine wenden</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/derive.py"/>
        <location filename="../../app/drypoint/session/legend.py"/>
        <source>Turn the board over first.</source>
        <translation>Zuerst die Platine wenden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet_sides.py"/>
        <source>Turn the board over, {side} up; find it by its holes</source>
        <translation>Platine wenden, {side} oben; an ihren Löchern finden</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Turns of the spindle in a minute.</source>
        <translation>Umdrehungen der Spindel in einer Minute.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Two are the least. With only two, a hole touched wrongly cannot be noticed.</source>
        <translation>Zwei sind das Mindeste. Mit nur zweien fällt ein falsch angetastetes Loch nicht auf.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Two coatings of one name share their values.</source>
        <translation>Zwei Beschichtungen eines Namens teilen sich ihre Werte.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Two commands in the line both want the coordinates.</source>
        <translation>Zwei Befehle in der Zeile wollen beide die Koordinaten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Two commands in the line exclude each other.</source>
        <translation>Zwei Befehle in der Zeile schließen sich aus.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/play.py"/>
        <source>Two cycles are needed at least; five are usual.</source>
        <translation>Mindestens zwei Zyklen sind nötig; fünf sind üblich.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/play.py"/>
        <source>Two readings from each side are needed at least.</source>
        <translation>Von jeder Seite sind mindestens zwei Ablesungen nötig.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/fit.py"/>
        <source>Uncertainties must be zero or more.</source>
        <translation>Unsicherheiten müssen null oder mehr sein.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser_check.py"/>
        <source>Under constant power every way must be a rapid.</source>
        <translation>Unter gleichbleibender Leistung muss jeder Weg ein Eilgang sein.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_compose.py"/>
        <source>Uniting copper</source>
        <translation>Kupfer wird vereinigt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill_statements.py"/>
        <source>Units are stated twice and differ ({units_from}; {source}).</source>
        <translation>Einheiten sind zweimal genannt und verschieden ({units_from}; {source}).</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Unlock, raise the bit, check clip and wire; the input must read open in the air.</source>
        <translation>Entsperren, Werkzeug anheben, Klemme und Draht prüfen; der Eingang muss in der Luft offen sein.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Unlock, set zero again and check a reference mark before cutting on.</source>
        <translation>Entsperren, Null neu setzen und eine Bezugsmarke prüfen, bevor weitergeschnitten wird.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/holes.py"/>
        <source>Use a blank that is {margin:.0f} mm larger on every side, or move the clamps.</source>
        <translation>Einen Zuschnitt nehmen, der auf jeder Seite {margin:.0f} mm größer ist, oder die Spanner verschieben.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/ground.py"/>
        <source>Use a larger blank, or a piece of its own.</source>
        <translation>Einen größeren Zuschnitt nehmen oder ein eigenes Stück.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/grid.py"/>
        <source>Use a larger blank, or burn it where the light spot stands.</source>
        <translation>Einen größeren Zuschnitt nehmen oder dort brennen, wo der Lichtpunkt steht.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/tooling.py"/>
        <source>Use a larger blank, or move the clamps: the second side could not be found by them.</source>
        <translation>Einen größeren Zuschnitt nehmen oder die Spanner versetzen: die zweite Seite ließe sich nach ihnen nicht finden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/clearing.py"/>
        <source>Use a wider bit.</source>
        <translation>Ein breiteres Werkzeug nehmen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/writer.py"/>
        <source>Use fewer decimals.</source>
        <translation>Weniger Nachkommastellen nehmen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/fit.py"/>
        <source>Use holes far apart.</source>
        <translation>Löcher weit auseinander nehmen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Use one of the six that every controller has.</source>
        <translation>Eines der sechs nehmen, die jede Steuerung hat.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/library.py"/>
        <source>Use one of: {kinds}.</source>
        <translation>Eines von diesen nehmen: {kinds}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/words.py"/>
        <source>Usual: {least:g} to {most:g}{unit}.</source>
        <translation>Üblich: {least:g} bis {most:g}{unit}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/words.py"/>
        <source>Usual: {most:g}{unit}.</source>
        <translation>Üblich: {most:g}{unit}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/naming.py"/>
        <source>V-bit {angle:g}° {tip:.1f}</source>
        <translation>V-Stichel {angle:g}° {tip:.1f}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/naming.py"/>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>V-bit {tip:g} mm {angle:g}°</source>
        <translation>V-Stichel {tip:g} mm {angle:g}°</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/clearing.py"/>
        <source>Values of another bit break this one or spoil its edge.</source>
        <translation>Werte eines anderen Fräsers brechen diesen oder verderben seine Schneide.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/holes.py"/>
        <source>Very slow drills rub and get hot; at full feed a lone pad may come off with the drill.</source>
        <translation>Sehr langsame Bohrer reiben und werden heiß; bei vollem Vorschub kann eine einzelne Lötfläche mit dem Bohrer abgehen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/electrical.py"/>
        <source>Voltages between nets. The clearance that is left after milling is checked against the table of IPC-2221.</source>
        <translation>Spannungen zwischen Netzen. Der Abstand, der nach dem Fräsen bleibt, wird gegen die Tabelle der IPC-2221 geprüft.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Wait after the spindle is switched on, until it turns at full speed.</source>
        <translation>Warten nach dem Einschalten der Spindel, bis sie mit voller Drehzahl läuft.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Wait for it to stop, or stop it.</source>
        <translation>Warten, bis es anhält, oder es anhalten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/axes.py"/>
        <source>Wait for it, or stop it.</source>
        <translation>Darauf warten oder es anhalten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/greeting.py"/>
        <source>Wait until it rests, or switch it off and on; then connect again.</source>
        <translation>Warten, bis sie ruht, oder aus- und einschalten; dann neu verbinden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/view.py"/>
        <source>Waiting for the controller.</source>
        <translation>Es wird auf die Steuerung gewartet.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/controller.py"/>
        <source>Was the line garbled on the cable? Try again, or run without the check.</source>
        <translation>Wurde die Zeile auf dem Kabel verstümmelt? Noch einmal versuchen oder ohne die Prüfung fahren.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Waste left round the board when the size of the laminate is not given.</source>
        <translation>Abfall rings um die Platine, wenn die Größe des Laminats nicht angegeben ist.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/surface_rows.py"/>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>Waves found</source>
        <translation>Gefundene Wellen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>What a ready-made program is taken for: run as it is; grooves, cut in passes here; the outline; or nothing.</source>
        <translation>Wofür ein fertiges Programm gehalten wird: laufen, wie es ist; Nuten, hier in Durchgängen geschnitten; der Umriss; oder nichts.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/electrical.py"/>
        <source>What covers the copper in use: the column of the table that is read.</source>
        <translation>Was das Kupfer im Betrieb bedeckt: die Spalte der Tabelle, die gelesen wird.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/laser_safety.py"/>
        <source>What is burnt gives off fumes: extraction on, to the outside or through the right filter.</source>
        <translation>Was verbrennt, gibt Dämpfe ab: Absaugung an, nach draußen oder durch den richtigen Filter.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/electrical.py"/>
        <source>What is not entered is not checked. For mains the safety standard of the device rules, not this table.</source>
        <translation>Was nicht eingetragen ist, wird nicht geprüft. Bei Netzspannung gilt die Sicherheitsnorm des Geräts, nicht diese Tabelle.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>What the bit is called on the setup sheet.</source>
        <translation>Wie das Werkzeug auf dem Rüstblatt heißt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>What the drill is called on the setup sheet.</source>
        <translation>Wie der Bohrer auf dem Rüstblatt heißt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>What the job is called on the setup sheet and in the programs.</source>
        <translation>Wie der Auftrag auf dem Rüstblatt und in den Programmen heißt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>What the laser marks: the name of the coating.</source>
        <translation>Was der Laser markiert: der Name der Beschichtung.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>What the mill is called on the setup sheet.</source>
        <translation>Wie der Fräser auf dem Rüstblatt heißt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/check.py"/>
        <source>What was cut there since the last check is in doubt: look at it, and at the bit, before cutting on. Put a whole bit in and set zero again; the mark has already been set anew.</source>
        <translation>Was dort seit der letzten Prüfung geschnitten wurde, ist zweifelhaft: Sehen Sie es und das Werkzeug an, bevor weitergeschnitten wird. Ein heiles Werkzeug einsetzen und Null neu setzen; die Marke ist schon neu gesetzt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/clearing.py"/>
        <source>Where gaps are narrow all over it saves nothing: two changes of the bit cost more.</source>
        <translation>Wo überall enge Abstände sind, spart er nichts: zwei Wechsel des Fräsers kosten mehr.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Where it pulls the bit into the copper because an axis has play, the other way leaves cleaner edges: try both on a test pattern.</source>
        <translation>Wo es das Werkzeug wegen des Spiels einer Achse ins Kupfer zieht, lässt die andere Richtung sauberere Kanten: beide an einem Testmuster probieren.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Where the lower left of the board lies, from the lower left corner of the blank, along x. Only used when the board is not centred.</source>
        <translation>Wo die Platine unten links liegt, von der linken unteren Ecke des Zuschnitts, längs x. Gilt nur, wenn die Platine nicht zentriert ist.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Where the lower left of the board lies, from the lower left corner of the blank, along y. Only used when the board is not centred.</source>
        <translation>Wo die Platine unten links liegt, von der linken unteren Ecke des Zuschnitts, längs y. Gilt nur, wenn die Platine nicht zentriert ist.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Where the programs have their z = 0: on top of the copper, or on the backing below the laminate.</source>
        <translation>Wo die Programme ihr z = 0 haben: oben auf dem Kupfer oder auf der Unterlage unter dem Laminat.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/coupons.py"/>
        <source>Where there is no room it moves along the edge; where there is none at all it is refused.</source>
        <translation>Wo kein Platz ist, rückt es am Rand entlang; wo gar keiner ist, wird es abgelehnt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Whether bare laminate is marked instead of a coating. It is not advised.</source>
        <translation>Ob blankes Laminat statt einer Beschichtung markiert wird. Davon wird abgeraten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Whether holes and marks are reached from smaller x and y always, so that the play of the axes is taken up the same way at each. Costs a tenth of a second a hole.</source>
        <translation>Ob Löcher und Marken immer von kleinerem x und y angefahren werden, sodass das Spiel der Achsen an jedem auf dieselbe Weise aufgehoben ist. Kostet eine Zehntelsekunde je Loch.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Whether large areas of copper may be marked, beside their holes.</source>
        <translation>Ob große Kupferflächen markiert werden dürfen, neben ihren Löchern.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Whether strokes are rows of separate pulses or continuous lines.</source>
        <translation>Ob Striche Reihen einzelner Pulse oder durchgehende Linien sind.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Whether the coating's maker declares it safe for laser work.</source>
        <translation>Ob der Hersteller der Beschichtung sie für Laserarbeit als sicher erklärt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Whether the controller has an input for the contact circuit of bit and copper. One wire sits on the still bit or its collet, the clip on the copper; contact through the bearings is unreliable.</source>
        <translation>Ob die Steuerung einen Eingang für den Kontaktkreis von Werkzeug und Kupfer hat. Ein Draht sitzt am stehenden Werkzeug oder an seiner Spannzange, die Klemme auf dem Kupfer; Kontakt durch die Lager ist unzuverlässig.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Whether the controller switches the spindle. If not, Drypoint asks you to do it.</source>
        <translation>Ob die Steuerung die Spindel schaltet. Wenn nicht, bittet Drypoint Sie darum.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Whether the machine finds its own zero with switches.</source>
        <translation>Ob die Maschine ihren Nullpunkt selbst mit Schaltern findet.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/clearing.py"/>
        <source>Which copper without net is taken away beside the grooves. Nets, text and pictures of the copper layer stay.</source>
        <translation>Welches Kupfer ohne Netz neben den Nuten abgetragen wird. Netze, Schrift und Bilder der Kupferlage bleiben.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/panel.py"/>
        <source>Widen the gap: the end mill that cuts them out runs between them.</source>
        <translation>Den Abstand vergrößern: Der Schaftfräser, der sie ausschneidet, läuft dazwischen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/clearing.py"/>
        <source>Width of the area.</source>
        <translation>Breite der Fläche.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/clearing.py"/>
        <source>Width of the band round every net from which copper is taken away.</source>
        <translation>Breite des Streifens um jedes Netz, aus dem Kupfer abgetragen wird.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Width of the flat at the very point. Cut a short groove and measure it rather than trust the label.</source>
        <translation>Breite der Fläche ganz an der Spitze. Lieber eine kurze Nut schneiden und messen, als dem Etikett zu trauen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/islands.py"/>
        <source>Widths must be 0 or more.</source>
        <translation>Breiten müssen 0 oder mehr sein.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>With a wrong one only rubbish arrives, and the controller is not recognised.</source>
        <translation>Mit einer falschen kommt nur Unsinn an, und die Steuerung wird nicht erkannt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>With another device's port nothing answers, or the wrong device does.</source>
        <translation>Am Anschluss eines anderen Geräts antwortet nichts, oder das falsche Gerät.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/marking.py"/>
        <source>With its laser mode off the beam would stay on while it moves. Switch it on (setting 32).</source>
        <translation>Bei ausgeschaltetem Lasermodus bliebe der Strahl in Bewegung an. Schalten Sie ihn ein (Einstellung 32).</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>With the wrong bit widths and depths come out wrong, and thin bits break.</source>
        <translation>Mit dem falschen Werkzeug werden Breiten und Tiefen falsch, und dünne brechen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>With the wrong side every part would have to sit on the wrong face of the board.</source>
        <translation>Mit der falschen Seite müsste jedes Bauteil auf der falschen Seite der Platine sitzen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/turn.py"/>
        <source>With two, a hole that was touched wrongly is not told from the others. More than four gain little.</source>
        <translation>Mit zweien ist ein falsch angefahrenes Loch nicht von den anderen zu unterscheiden. Mehr als vier bringen wenig.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Without extraction to the outside nobody should stay in the room.</source>
        <translation>Ohne Absaugung nach draußen sollte niemand im Raum bleiben.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Without it holes reached from both sides lie apart by the play. It cannot help where the cutting force pushes an axis across its play.</source>
        <translation>Ohne dies liegen Löcher, die von beiden Seiten angefahren werden, um das Spiel auseinander. Es hilft nicht, wo die Schnittkraft eine Achse durch ihr Spiel drückt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Without it the other layer's copper is replaced by link wires. With it, holes have no plated walls: leads or rivets must be soldered on both sides.</source>
        <translation>Ohne dies wird das Kupfer der anderen Lage durch Drahtbrücken ersetzt. Damit haben Löcher keine metallisierten Wände: Drähte oder Niete müssen beidseitig verlötet werden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/holes.py"/>
        <source>Without marks thin drills slide sideways on the copper, and holes miss their pads.</source>
        <translation>Ohne Marken rutschen dünne Bohrer seitwärts auf dem Kupfer, und Löcher verfehlen ihre Lötflächen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Without one heights cannot be touched and islands cannot be proved; z is set with paper.</source>
        <translation>Ohne einen lassen sich Höhen nicht antasten und Inseln nicht beweisen; z wird mit Papier gesetzt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Without switches such a move never ends by itself; leave it off if you are not sure.</source>
        <translation>Ohne Schalter endet eine solche Fahrt nie von selbst; lassen Sie es aus, wenn Sie nicht sicher sind.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Without them the board comes loose while the mill turns: it is thrown or jams. Keep at least three, or hold the board in another way.</source>
        <translation>Ohne sie löst sich die Platine, während der Fräser dreht: Sie wird geschleudert oder klemmt. Mindestens drei behalten oder die Platine anders halten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Work height of the head with the spot in focus. Empty: set by hand, and left.</source>
        <translation>Arbeitshöhe des Kopfs, bei der der Fleck scharf ist. Leer: von Hand gesetzt und so belassen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>Work zero</source>
        <translation>Werkstücknull</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/drill_sizes.py"/>
        <source>Write 0.8 for mm, 0.032 in, 1/32 in, #67 or letter C.</source>
        <translation>Schreiben Sie 0.8 für mm, 0.032 in, 1/32 in, #67 oder letter C.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/table.py"/>
        <source>Write it as in 'x [mm]'.</source>
        <translation>Schreiben Sie sie wie in 'x [mm]'.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/table.py"/>
        <source>Write it as in 'x [mm],y [mm],z [mm]'.</source>
        <translation>Schreiben Sie sie wie in 'x [mm],y [mm],z [mm]'.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/writer.py"/>
        <source>Writing the lines</source>
        <translation>Die Zeilen werden geschrieben</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/touching.py"/>
        <source>Zero by paper</source>
        <translation>Null mit Papier</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/roles.py"/>
        <source>a comment in it says plated</source>
        <translation>ein Kommentar darin sagt metallisiert</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/roles.py"/>
        <source>a comment in it says unplated</source>
        <translation>ein Kommentar darin sagt nicht metallisiert</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill.py"/>
        <source>a tool of {size:.3f} mm is out of the usual range</source>
        <translation>ein Werkzeug von {size:.3f} mm liegt außerhalb des Üblichen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>after the first pass</source>
        <translation>nach Durchgang 1</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/passes/depth.py"/>
        <location filename="../../app/drypoint/passes/reach.py"/>
        <source>asking the surface</source>
        <translation>die Oberfläche wird befragt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/explain.py"/>
        <source>axes</source>
        <translation>Achsen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>being laid</source>
        <translation>wird gelegt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>being planned</source>
        <translation>wird geplant</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bench/served.py"/>
        <location filename="../../app/drypoint/ui/machine_side/live.py"/>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>bench</source>
        <translation>Prüfstand</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/head.py"/>
        <source>bit</source>
        <translation>Werkzeug</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/grooves.py"/>
        <location filename="../../app/drypoint/ui/parts/sketches.py"/>
        <source>bite</source>
        <translation>Einbiss</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/library.py"/>
        <location filename="../../app/drypoint/session/commands.py"/>
        <source>bits</source>
        <translation>Werkzeuge</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/placed_cuts.py"/>
        <source>bored holes</source>
        <translation>gefräste Löcher</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/marks.py"/>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>bottom</source>
        <translation>Unterseite</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/burn_grid.py"/>
        <source>burn grid</source>
        <translation>Brennraster</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/coupon_job.py"/>
        <source>burn-grid</source>
        <translation>burn-grid</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>choose the design files</source>
        <translation>die Entwurfsdateien wählen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/load.py"/>
        <source>chosen by hand</source>
        <translation>von Hand gewählt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/pictures.py"/>
        <source>clamp {number}</source>
        <translation>Spanner {number}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/surface_rows.py"/>
        <source>clamped anew since then</source>
        <translation>seitdem neu gespannt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/ground.py"/>
        <source>clamps</source>
        <translation>Spanner</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/ratings.py"/>
        <source>clearance</source>
        <translation>Sicherheitshöhe</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/clearances.py"/>
        <source>clearances</source>
        <translation>Abstände</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/clearing.py"/>
        <location filename="../../app/drypoint/program/placed_cuts.py"/>
        <source>clearing</source>
        <translation>wird geräumt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/gross.py"/>
        <source>close</source>
        <translation>nah</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/pictures.py"/>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>copper of a net</source>
        <translation>Kupfer eines Netzes</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/islands.py"/>
        <source>copper of {name} is cut away</source>
        <translation>Kupfer von {name} wird weggeschnitten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>copper outside</source>
        <translation>Kupfer außen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/touching.py"/>
        <source>copper touched on the way to {x:.2f}, {y:.2f}</source>
        <translation>Kupfer berührt auf dem Weg nach {x:.2f}, {y:.2f}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/width_coupon.py"/>
        <location filename="../../app/drypoint/cuts/coupon.py"/>
        <location filename="../../app/drypoint/cuts/depth_coupon.py"/>
        <location filename="../../app/drypoint/session/actions/coupon_job.py"/>
        <source>coupon</source>
        <translation>Prüfstück</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/outline.py"/>
        <source>cut-out {number}{of}</source>
        <translation>Ausschnitt {number}{of}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/play.py"/>
        <source>cycle {cycle} of {cycles}</source>
        <translation>Zyklus {cycle} von {cycles}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/width_coupon.py"/>
        <source>deeper</source>
        <translation>tiefer</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>degrees</source>
        <translation>Grad</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/holes.py"/>
        <source>diameters</source>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/pictures.py"/>
        <location filename="../../app/drypoint/ui/canvas/describe.py"/>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <location filename="../../app/drypoint/ui/jog/reference.py"/>
        <location filename="../../app/drypoint/ui/pages/passes.py"/>
        <source>doubtful</source>
        <translation>zweifelhaft</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/ground.py"/>
        <source>earlier trial cuts</source>
        <translation>frühere Probeschnitte</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>every net is an island</source>
        <translation>jedes Netz ist eine Insel</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/gross.py"/>
        <source>far apart</source>
        <translation>weit auseinander</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/evidence.py"/>
        <location filename="../../app/drypoint/surface/model.py"/>
        <source>fitting the surface</source>
        <translation>Oberfläche wird angepasst</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/marking.py"/>
        <source>focus light</source>
        <translation>Fokuslicht</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/play.py"/>
        <source>from above</source>
        <translation>von oben</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/play.py"/>
        <source>from below</source>
        <translation>von unten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/grooves.py"/>
        <location filename="../../app/drypoint/ui/parts/sketches.py"/>
        <source>groove width</source>
        <translation>Nutbreite</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/pictures.py"/>
        <source>groove, {width:.2f} mm</source>
        <translation>Nut, {width:.2f} mm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/placed_cuts.py"/>
        <source>grooves</source>
        <translation>Nuten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/head.py"/>
        <source>head offset</source>
        <translation>Versatz des Kopfs</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/pictures.py"/>
        <source>hole that joins both sides</source>
        <translation>Loch, das beide Seiten verbindet</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/holes.py"/>
        <source>hole {diameter:.2f} mm</source>
        <translation>Loch {diameter:.2f} mm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/gross.py"/>
        <source>hole {i}</source>
        <translation>Loch {i}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/holes.py"/>
        <location filename="../../app/drypoint/program/placed_cuts.py"/>
        <location filename="../../app/drypoint/session/help/turn.py"/>
        <location filename="../../app/drypoint/ui/forms/wear.py"/>
        <source>holes</source>
        <translation>Löcher</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>holes made, board as laid</source>
        <translation>Löcher gemacht, Platine wie gelegt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/hover.py"/>
        <source>hover lap</source>
        <translation>Schweberunde</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/carve.py"/>
        <location filename="../../app/drypoint/cuts/enclosed.py"/>
        <location filename="../../app/drypoint/cuts/islands.py"/>
        <location filename="../../app/drypoint/session/depth_check.py"/>
        <source>island check</source>
        <translation>Inselprüfung</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/roles.py"/>
        <source>it holds IPC-D-356 records</source>
        <translation>sie enthält IPC-D-356-Einträge</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/roles.py"/>
        <source>it holds RS-274 moves</source>
        <translation>sie enthält RS-274-Wege</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/roles.py"/>
        <source>it is a drill file</source>
        <translation>sie ist eine Bohrdatei</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/roles.py"/>
        <source>it is a drill file; its name says plated</source>
        <translation>sie ist eine Bohrdatei; ihr Name sagt metallisiert</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/roles.py"/>
        <source>it is a drill file; its name says unplated</source>
        <translation>sie ist eine Bohrdatei; ihr Name sagt nicht metallisiert</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/archive.py"/>
        <source>it is damaged</source>
        <translation>es ist beschädigt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/archive.py"/>
        <source>it is locked</source>
        <translation>es ist verschlüsselt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/roles.py"/>
        <source>it lists the files of the board</source>
        <translation>sie zählt die Dateien der Platine auf</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/roles.py"/>
        <source>its .FileFunction is {match}</source>
        <translation>ihre .FileFunction ist {match}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/pattern.py"/>
        <source>its other half</source>
        <translation>seine andere Hälfte</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <location filename="../../app/drypoint/ui/design_side/coupon_sheet.py"/>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <location filename="../../app/drypoint/ui/machine_side/pair_words.py"/>
        <source>joined</source>
        <translation>verbunden</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/grooves.py"/>
        <source>joining</source>
        <translation>wird verbunden</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/rest.py"/>
        <source>joining fine and wide grooves</source>
        <translation>feine und breite Nuten verbinden</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/kept_program.py"/>
        <source>journal</source>
        <translation>Protokoll</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/bursts.py"/>
        <source>laser</source>
        <translation>Laser</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>laser head</source>
        <translation>Laserkopf</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser_check.py"/>
        <source>last line</source>
        <translation>letzte Zeile</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/passes/island_learning.py"/>
        <source>learning from the islands</source>
        <translation>lernt von den Inseln</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/linear.py"/>
        <source>least squares</source>
        <translation>kleinste Quadrate</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/placed_cuts.py"/>
        <source>legend</source>
        <translation>Beschriftung</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/drill_sizes.py"/>
        <source>letter {letter}</source>
        <translation>letter {letter}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/head.py"/>
        <source>light spot</source>
        <translation>Lichtpunkt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>line {feedless}: a cutting move comes before any feed</source>
        <translation>Zeile {feedless}: Ein Schnittweg kommt vor jedem Vorschub</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/faults.py"/>
        <location filename="../../app/drypoint/program/check.py"/>
        <location filename="../../app/drypoint/program/laser_check.py"/>
        <source>line {index}: {line}</source>
        <translation>Zeile {index}: {line}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/writer.py"/>
        <source>line {index}: {line}…</source>
        <translation>Zeile {index}: {line} …</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/imported.py"/>
        <source>line {line}</source>
        <translation>Zeile {line}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill_body.py"/>
        <source>line {line}: a cutting move with the tool up is left out</source>
        <translation>Zeile {line}: Ein Schnittweg mit angehobenem Werkzeug wird ausgelassen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill_body.py"/>
        <source>line {line}: cutter compensation is left out, the slot follows the path</source>
        <translation>Zeile {line}: Die Fräserkorrektur wird ausgelassen, das Langloch folgt der Bahn</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill_body.py"/>
        <source>line {line}: drilled text is left out</source>
        <translation>Zeile {line}: Gebohrter Text wird ausgelassen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill_body.py"/>
        <source>line {line}: the last slot is not closed by M16</source>
        <translation>Zeile {line}: Das letzte Langloch wird nicht mit M16 geschlossen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/sender.py"/>
        <location filename="../../app/drypoint/surface/table.py"/>
        <source>line {number}</source>
        <translation>Zeile {number}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/guard.py"/>
        <source>line {number}: {line}</source>
        <translation>Zeile {number}: {line}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_state.py"/>
        <source>line {number}: {text}</source>
        <translation>Zeile {number}: {text}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill.py"/>
        <location filename="../../app/drypoint/board/netlist.py"/>
        <source>line {number}: “{line}” is not understood and left out</source>
        <translation>Zeile {number}: „{line}“ wird nicht verstanden und ausgelassen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/delivery.py"/>
        <source>line {waiting}: {lines}</source>
        <translation>Zeile {waiting}: {lines}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/pictures.py"/>
        <source>link wire</source>
        <translation>Drahtbrücke</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/waves.py"/>
        <source>looking for waves</source>
        <translation>Wellen werden gesucht</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/grooves.py"/>
        <source>loops</source>
        <translation>Schleifen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/rest.py"/>
        <source>loops of the wide bit</source>
        <translation>Umläufe des breiten Fräsers</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>lower left of the board at x {x:.1f}, y {y:.1f} mm from the blank's corner</source>
        <translation>Platine unten links bei x {x:.1f}, y {y:.1f} mm von der Ecke des Zuschnitts</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/clearing.py"/>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>mm/min</source>
        <translation>mm/min</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/clearing.py"/>
        <source>mm²</source>
        <translation>mm²</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/writer.py"/>
        <source>move {index}</source>
        <translation>Weg {index}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/centrelines.py"/>
        <location filename="../../app/drypoint/cuts/gaps.py"/>
        <source>narrow gaps</source>
        <translation>Engstellen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/streaming.py"/>
        <source>near line {executed}</source>
        <translation>nahe Zeile {executed}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/copper.py"/>
        <source>net {number}</source>
        <translation>Netz {number}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>no clamps</source>
        <translation>0 Spanner</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/touching.py"/>
        <source>no contact at {x:.2f}, {y:.2f}</source>
        <translation>kein Kontakt bei {x:.2f}, {y:.2f}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>none entered: keep them outside the board and the reference holes</source>
        <translation>keine eingetragen: außerhalb von Platine und Bezugslöchern halten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>not every net is an island</source>
        <translation>nicht jedes Netz ist eine Insel</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>not made</source>
        <translation>nicht gemacht</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>not made since the last pass</source>
        <translation>seit dem letzten Durchgang nicht gemacht</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>not possible: there is no copper data</source>
        <translation>nicht möglich: Es gibt keine Kupferdaten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/pictures.py"/>
        <location filename="../../app/drypoint/ui/canvas/describe.py"/>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <location filename="../../app/drypoint/ui/pages/passes.py"/>
        <source>not through</source>
        <translation>nicht durch</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <location filename="../../app/drypoint/ui/machine_side/pair_words.py"/>
        <source>not touched</source>
        <translation>nicht angetastet</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>nothing run yet</source>
        <translation>noch nichts gefahren</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill.py"/>
        <source>number format not stated: read as {shape} ({format_from})</source>
        <translation>Zahlenformat nicht angegeben: gelesen als {shape} ({format_from})</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/drill_sizes.py"/>
        <source>number {number}</source>
        <translation>Nummer {number}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>of full power</source>
        <translation>der vollen Leistung</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/roles.py"/>
        <source>of its name</source>
        <translation>wegen ihres Namens</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/roles.py"/>
        <source>of its name it could be the outline, but {name} is a better one</source>
        <translation>wegen ihres Namens könnte sie der Umriss sein, aber {name} passt besser</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/roles.py"/>
        <source>of its name: copper layer {number} of {last}</source>
        <translation>wegen ihres Namens: Kupferlage {number} von {last}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/roles.py"/>
        <source>of its title “{titled}”</source>
        <translation>wegen ihres Titels „{titled}“</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/holes.py"/>
        <source>of the feed</source>
        <translation>des Vorschubs</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/clearing.py"/>
        <source>of the width</source>
        <translation>der Breite</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/copper.py"/>
        <source>other side {number}</source>
        <translation>andere Seite {number}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/placed_cuts.py"/>
        <location filename="../../app/drypoint/session/pictures.py"/>
        <location filename="../../app/drypoint/ui/forms/file_line.py"/>
        <location filename="../../app/drypoint/ui/parts/sketches.py"/>
        <source>outline</source>
        <translation>Umriss</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/outline.py"/>
        <source>outline{of}</source>
        <translation>Umriss{of}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/passes/reach.py"/>
        <source>over 99.5 %</source>
        <translation>über 99,5 %</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/grooves.py"/>
        <source>overlap</source>
        <translation>Überlappung</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>pass {number} planned, {depth:.3f} mm</source>
        <translation>{number}. Durchgang, {depth:.3f} mm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/running.py"/>
        <source>paused before line {line}</source>
        <translation>Pause vor Zeile {line}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/passes/depth.py"/>
        <source>planning the pass</source>
        <translation>der Durchgang wird geplant</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/passes/recut.py"/>
        <source>planning the re-cut</source>
        <translation>das Nachschneiden wird geplant</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/plan.py"/>
        <source>planning touches</source>
        <translation>das Antasten wird geplant</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/explain.py"/>
        <location filename="../../app/drypoint/ui/parts/sketches.py"/>
        <source>play</source>
        <translation>Spiel</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/play.py"/>
        <source>play of an axis</source>
        <translation>Spiel einer Achse</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/play.py"/>
        <location filename="../../app/drypoint/session/actions/play.py"/>
        <source>play of {axis}</source>
        <translation>Spiel von {axis}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/model.py"/>
        <source>predicting the surface</source>
        <translation>die Oberfläche wird vorhergesagt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/passes/reach.py"/>
        <source>reach</source>
        <translation>erreicht</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/passes/reach.py"/>
        <source>reading the passes' depths</source>
        <translation>die Tiefen der Durchgänge werden gelesen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/pictures.py"/>
        <source>reference hole</source>
        <translation>Bezugsloch</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/find.py"/>
        <source>reference hole {label}</source>
        <translation>Bezugsloch {label}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/affine.py"/>
        <location filename="../../app/drypoint/reference/fit.py"/>
        <location filename="../../app/drypoint/session/ground.py"/>
        <location filename="../../app/drypoint/ui/parts/sketches.py"/>
        <source>reference holes</source>
        <translation>Bezugslöcher</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/checks.py"/>
        <source>reference mark within {away:.2f} mm</source>
        <translation>Bezugsmarke auf {away:.2f} mm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/holes.py"/>
        <location filename="../../app/drypoint/program/placed_cuts.py"/>
        <source>reference marks</source>
        <translation>Bezugsmarken</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>residual {residual:.2f} mm</source>
        <translation>Restfehler {residual:.2f} mm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/sideways.py"/>
        <location filename="../../app/drypoint/reference/rim.py"/>
        <source>rim of a hole</source>
        <translation>Rand eines Lochs</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/touch_off.py"/>
        <source>rim of hole {label}</source>
        <translation>Rand von Loch {label}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/explain.py"/>
        <source>scale</source>
        <translation>Maßstab</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/width_coupon.py"/>
        <source>shallower</source>
        <translation>flacher</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/clearing.py"/>
        <source>slivers</source>
        <translation>Splitter</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/holes.py"/>
        <source>slot {diameter:.2f} mm</source>
        <translation>Langloch {diameter:.2f} mm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/placed_cuts.py"/>
        <source>slots</source>
        <translation>Langlöcher</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/placed_cuts.py"/>
        <source>spot marks</source>
        <translation>Zentrierpunkte</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <location filename="../../app/drypoint/ui/legend_side/sheet.py"/>
        <source>spots</source>
        <translation>Flecke</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>spread {spread:.0f} µm</source>
        <translation>Streuung {spread:.0f} µm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/linear.py"/>
        <source>straight line</source>
        <translation>Gerade</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/model.py"/>
        <source>surface fitted</source>
        <translation>Oberfläche angepasst</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/outline.py"/>
        <source>tabs</source>
        <translation>Stege</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill.py"/>
        <source>the M{text} command</source>
        <translation>der Befehl M{text}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/contact.py"/>
        <location filename="../../app/drypoint/machine/procedures/proof.py"/>
        <source>the copper of {net}</source>
        <translation>das Kupfer von {net}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/proof.py"/>
        <location filename="../../app/drypoint/ui/machine_side/proving.py"/>
        <source>the copper outside</source>
        <translation>das Kupfer außen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/ground.py"/>
        <source>the end of the machine's travel</source>
        <translation>das Ende des Verfahrwegs der Maschine</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/roles.py"/>
        <source>the job file says {jobs}</source>
        <translation>die Job-Datei sagt {jobs}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/grid.py"/>
        <source>the planned test pattern</source>
        <translation>das geplante Testmuster</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/ground.py"/>
        <source>the spot where z is zero</source>
        <translation>die Stelle, an der z null ist</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill_statements.py"/>
        <source>the {parts} line</source>
        <translation>die Zeile {parts}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/thinned.py"/>
        <location filename="../../app/drypoint/cuts/weakened.py"/>
        <source>thinned traces</source>
        <translation>verdünnte Leiterbahnen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/pictures.py"/>
        <location filename="../../app/drypoint/ui/canvas/describe.py"/>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <location filename="../../app/drypoint/ui/pages/passes.py"/>
        <source>through</source>
        <translation>durch</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill.py"/>
        <source>tool diameters only make sense in {other}: read so</source>
        <translation>Werkzeugdurchmesser ergeben nur in {other} Sinn: so gelesen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/placed_cuts.py"/>
        <source>tooling holes</source>
        <translation>Aufnahme­bohrungen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/marks.py"/>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>top</source>
        <translation>Oberseite</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/touching.py"/>
        <source>touch {index} of {count}</source>
        <translation>Antastung {index} von {count}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/proof.py"/>
        <source>touching {net}</source>
        <translation>{net} wird angetastet</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/rest.py"/>
        <source>two bits</source>
        <translation>zwei Werkzeuge</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/passes/reach.py"/>
        <source>under 0.5 %</source>
        <translation>unter 0,5 %</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill.py"/>
        <source>units not stated: read as {words}, {shape} ({units_from})</source>
        <translation>Einheiten nicht angegeben: gelesen als {words}, {shape} ({units_from})</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <location filename="../../app/drypoint/ui/machine_side/pair_words.py"/>
        <source>unproved</source>
        <translation>unbewiesen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/voltage_table.py"/>
        <source>voltages</source>
        <translation>Spannungen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>waits for the surface</source>
        <translation>wartet auf die Oberfläche</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/warp.py"/>
        <source>warp</source>
        <translation>Wölbung</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/plan.py"/>
        <source>weighing the next touches</source>
        <translation>die nächsten Antastungen werden abgewogen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/evidence.py"/>
        <source>weighing the surface's parameters</source>
        <translation>die Parameter der Oberfläche werden abgewogen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/passes/options.py"/>
        <source>weighing ways to cut</source>
        <translation>Wege zu schneiden werden abgewogen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/rest.py"/>
        <source>what is left for the fine bit</source>
        <translation>was für den feinen Fräser bleibt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/needed.py"/>
        <source>what the fine grooves part</source>
        <translation>was die feinen Nuten trennen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill.py"/>
        <source>which zeros are left out is not stated: read as {shape}</source>
        <translation>welche Nullen weggelassen sind, ist nicht angegeben: gelesen als {shape}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/pictures.py"/>
        <source>wide bit, {width:.2f} mm</source>
        <translation>breiter Fräser, {width:.2f} mm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/passes/learning.py"/>
        <source>x {at:.2f}, y {at2:.2f} mm</source>
        <translation>x {at:.2f}, y {at2:.2f} mm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/outline.py"/>
        <source>x {x:.1f} y {y:.1f}</source>
        <translation>x {x:.1f} y {y:.1f}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>x, y: lower left corner of the blank; z: on the copper, 3 mm in from that corner</source>
        <translation>x, y: linke untere Ecke des Zuschnitts; z: auf dem Kupfer, 3 mm einwärts von dieser Ecke</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/touching.py"/>
        <source>z {height:.2f}</source>
        <translation>z {height:.2f}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/sideways.py"/>
        <source>z {work:.2f}</source>
        <translation>z {work:.2f}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/checks.py"/>
        <source>zero spot within {away:.0f} µm</source>
        <translation>Nullpunkt auf {away:.0f} µm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/expressions.py"/>
        <source>{a:g} {operation} {b:g} cannot be computed.</source>
        <translation>{a:g} {operation} {b:g} lässt sich nicht berechnen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/registration.py"/>
        <source>{area:.1f} mm² of copper on the {label} lie outside the outline.</source>
        <translation>{area:.1f} mm² Kupfer der {label} liegen außerhalb des Umrisses.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/islands_plan.py"/>
        <source>{at:.2f}, {at2:.2f}</source>
        <translation>{at:.2f}, {at2:.2f}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/laser_safety.py"/>
        <source>{bare} If you mean to, say so in the settings of the laser.</source>
        <translation>{bare} Wenn Sie es so wollen, sagen Sie es in den Einstellungen des Lasers.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/boards.py"/>
        <source>{board}: {where}</source>
        <translation>{board}: {where}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/gross.py"/>
        <source>{called} lies {off:.2f} mm from where the others say.</source>
        <translation>{called} liegt {off:.2f} mm von dort, wo die anderen sagen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>{clock} of cutting, without touches and changes of bit</source>
        <translation>{clock} Schneiden, ohne Antasten und Werkzeugwechsel</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/imported.py"/>
        <source>{corner}; nothing of it lies on the board</source>
        <translation>{corner}; nichts davon liegt auf der Platine</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} broken</source>
        <translation>{count} unterbrochen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} clamp</source>
        <translation>{count} Spanner</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>{count} clamps</source>
        <translation>{count} Spanner</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} cut away</source>
        <translation>{count} weggeschnitten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} drill</source>
        <translation>{count} Bohrer</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} drills</source>
        <translation>{count} Bohrer</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} file, being read</source>
        <translation>{count} Datei wird gelesen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} files, being read</source>
        <translation>{count} Dateien werden gelesen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} hole</source>
        <translation>{count} Loch</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} hole to make first</source>
        <translation>{count} Loch zuerst zu machen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} hole touched</source>
        <translation>{count} Loch angetastet</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} holes</source>
        <translation>{count} Löcher</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/fit.py"/>
        <source>{count} holes in the design but {count2} touched.</source>
        <translation>{count} Löcher im Entwurf, aber {count2} angetastet.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/registration.py"/>
        <source>{count} holes lie outside the outline or in a cut-out.</source>
        <translation>{count} Löcher liegen außerhalb des Umrisses oder in einem Ausschnitt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} holes to make first</source>
        <translation>{count} Löcher zuerst zu machen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} holes touched</source>
        <translation>{count} Löcher angetastet</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} joined</source>
        <translation>{count} verbunden</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} loop</source>
        <translation>{count} Schleife</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} loops</source>
        <translation>{count} Schleifen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/netlist_check.py"/>
        <source>{count} more names differ from the netlist.</source>
        <translation>{count} weitere Namen weichen von der Netzliste ab.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/links.py"/>
        <location filename="../../app/drypoint/board/through.py"/>
        <source>{count} more nets stay in several pieces.</source>
        <translation>{count} weitere Netze bleiben in mehreren Stücken.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/limits.py"/>
        <source>{count} moves come closer than {margin:g} mm to {name}, the first near ({x:.1f}, {y:.1f}) at {lowest:.2f} mm height.</source>
        <translation>{count} Wege kommen {name} näher als {margin:g} mm, der erste nahe ({x:.1f}, {y:.1f}) in {lowest:.2f} mm Höhe.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} net</source>
        <translation>{count} Netz</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>{count} nets</source>
        <translation>{count} Netze</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/links.py"/>
        <source>{count} nets have copper on the other side that no hole reaches (parts soldered there); wires between holes cannot replace it.</source>
        <translation>{count} Netze haben auf der anderen Seite Kupfer, das kein Loch erreicht (dort gelötete Teile); Drähte zwischen Löchern können es nicht ersetzen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet_sides.py"/>
        <source>{count} nets, {count2} holes, {count3} link wires</source>
        <translation>{count} Netze, {count2} Löcher, {count3} Drahtbrücken</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet_sides.py"/>
        <source>{count} nets, {count2} holes, {count3} of them join both sides</source>
        <translation>{count} Netze, {count2} Löcher, davon verbinden {count3} beide Seiten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} of {all} pairs proved</source>
        <translation>{count} von {all} Paaren bewiesen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} of {all} touched</source>
        <translation>{count} von {all} angetastet</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} pair joined</source>
        <translation>{count} Paar verbunden</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} pair not proved.</source>
        <translation>{count} Paar nicht bewiesen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} pairs joined</source>
        <translation>{count} Paare verbunden</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} pairs not proved.</source>
        <translation>{count} Paare nicht bewiesen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>{count} pairs proved apart, {count2} joined, {count3} unproved</source>
        <translation>{count} Paare getrennt bewiesen, {count2} verbunden, {count3} unbewiesen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} pass</source>
        <translation>{count} Durchgang</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} pass run</source>
        <translation>{count} Durchgang gefahren</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} passes</source>
        <translation>{count} Durchgänge</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} passes run</source>
        <translation>{count} Durchgänge gefahren</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/surface_rows.py"/>
        <source>{count} place</source>
        <translation>{count} Stelle</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} place to touch</source>
        <translation>{count} Stelle anzutasten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/surface_rows.py"/>
        <source>{count} places</source>
        <translation>{count} Stellen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} places to touch</source>
        <translation>{count} Stellen anzutasten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/links.py"/>
        <source>{count} plated holes carry current to the other layer; on a milled board the link wires do, or a rivet or a soldered lead on both sides.</source>
        <translation>{count} metallisierte Löcher leiten Strom auf die andere Lage; auf einer gefrästen Platine tun es die Drahtbrücken, oder ein Niet oder ein beidseitig verlöteter Draht.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} program run</source>
        <translation>{count} Programm gefahren</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} programs run</source>
        <translation>{count} Programme gefahren</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} runs in doubt</source>
        <translation>{count} Läufe zweifelhaft</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} touch</source>
        <translation>{count} Antastung</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} touches</source>
        <translation>{count} Antastungen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>{deepest:.3f} mm</source>
        <translation>{deepest:.3f} mm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/depth_check.py"/>
        <source>{depth:g} mm</source>
        <translation>{depth:g} mm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/pictures.py"/>
        <source>{edges:.0f} to {edges2:.0f} µm</source>
        <translation>{edges:.0f} bis {edges2:.0f} µm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/program_bits.py"/>
        <source>{file} has no tool {tool}.</source>
        <translation>{file} hat kein Werkzeug {tool}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/clearances.py"/>
        <source>{gap:.2f} mm apart over copper without a net, {asked:.2f} mm are asked for. Take that copper away, or cut a wider moat.</source>
        <translation>{gap:.2f} mm Abstand über Kupfer ohne Netz, {asked:.2f} mm sind verlangt. Dieses Kupfer entfernen oder einen breiteren Graben fräsen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/clearances.py"/>
        <source>{gap:.2f} mm apart, {asked:.2f} mm are asked for by the voltage.</source>
        <translation>{gap:.2f} mm Abstand, die Spannung verlangt {asked:.2f} mm.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/proof.py"/>
        <source>{how} {where}; {count} pieces are touched, {count2} gaps proved.</source>
        <translation>{how} {where}; {count} Stücke werden angetastet, {count2} Abstände bewiesen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill.py"/>
        <source>{judged} the pads, {share:.0%} of the holes hit one</source>
        <translation>{judged} den Lötflächen, {share:.0%} der Löcher treffen eine</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{length:,.0f} mm</source>
        <translation>{length:,.0f} mm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>{length:.0f} mm</source>
        <translation>{length:.0f} mm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/blocks.py"/>
        <source>{letter} is there twice.</source>
        <translation>{letter} kommt zweimal vor.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/copper.py"/>
        <source>{listed} are one piece of copper.</source>
        <translation>{listed} sind ein Stück Kupfer.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/copper.py"/>
        <source>{listed} are tied in copper, as the design says.</source>
        <translation>{listed} sind im Kupfer verbunden, wie der Entwurf sagt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/surface_rows.py"/>
        <source>{low:+.0f} to {high:+.0f} µm</source>
        <translation>{low:+.0f} bis {high:+.0f} µm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/macro_primitives.py"/>
        <source>{lowest} to {highest} is possible.</source>
        <translation>{lowest} bis {highest} ist möglich.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>{max_bite:.3f} mm</source>
        <translation>{max_bite:.3f} mm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/marking.py"/>
        <source>{max} marks.</source>
        <translation>{max} Marken.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/surface_rows.py"/>
        <source>{middle:.0f} µm in the middle, {worst:.0f} µm at worst</source>
        <translation>{middle:.0f} µm im Mittel, {worst:.0f} µm schlimmstens</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/touching.py"/>
        <source>{misses} touches in a row found no contact.</source>
        <translation>{misses} Antastungen nacheinander fanden keinen Kontakt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/touching.py"/>
        <source>{most} touches at the zero spot do not agree within {agree:.0f} µm.</source>
        <translation>{most} Antastungen am Nullpunkt stimmen nicht auf {agree:.0f} µm überein.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/speeds.py"/>
        <source>{names}: {asked:.0f} turns a minute are asked for; the spindle does {low:.0f} to {high:.0f}.</source>
        <translation>{names}: verlangt sind {asked:.0f} Umdrehungen je Minute; die Spindel kann {low:.0f} bis {high:.0f}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/speeds.py"/>
        <source>{name} and {count} more</source>
        <translation>{name} und {count} weitere</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/feeds.py"/>
        <source>{name} asks for {feed:.0f} mm/min; the machine does {feed_max:.0f}.</source>
        <translation>{name} verlangt {feed:.0f} mm/min; die Maschine schafft {feed_max:.0f}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/feeds.py"/>
        <source>{name} asks for {spindle:.0f} turns a minute; the spindle does {spindle_min:.0f} to {spindle_max:.0f}.</source>
        <translation>{name} verlangt {spindle:.0f} Umdrehungen je Minute; die Spindel schafft {spindle_min:.0f} bis {spindle_max:.0f}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/speeds.py"/>
        <source>{name} cuts chips of {chip:.3f} mm at {turns:.0f} turns a minute; more than {most:.2f} mm breaks fine bits.</source>
        <translation>{name} schneidet bei {turns:.0f} Umdrehungen je Minute Späne von {chip:.3f} mm; mehr als {most:.2f} mm bricht feine Werkzeuge.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/islands.py"/>
        <source>{name} falls into {count} pieces</source>
        <translation>{name} zerfällt in {count} Stücke</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/give.py"/>
        <source>{name} gives {give:.2f} mm.</source>
        <translation>{name} gibt {give:.2f} mm nach.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/wear.py"/>
        <source>{name} has cut {length:.1f} m and {holes} holes: look at it, replace it if it leaves burrs.</source>
        <translation>{name} hat {length:.1f} m und {holes} Löcher geschnitten: ansehen, ersetzen, wenn es Grate lässt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/thinned.py"/>
        <source>{name} is about {wide:.2f} mm wide here: {current:.2f} A</source>
        <translation>{name} ist hier etwa {wide:.2f} mm breit: {current:.2f} A</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/weakened.py"/>
        <source>{name} narrows from {before:.2f} to {after:.2f} mm: {carried:.2f} A before, {carries:.2f} A after</source>
        <translation>{name} wird von {before:.2f} auf {after:.2f} mm schmaler: vorher {carried:.2f} A, nachher {carries:.2f} A</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/expressions.py"/>
        <source>{name} needs a value in brackets.</source>
        <translation>{name} braucht einen Wert in Klammern.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/feeds.py"/>
        <source>{name} plunges at {plunge:.0f} mm/min; the machine does {plunge_max:.0f}.</source>
        <translation>{name} taucht mit {plunge:.0f} mm/min ein; die Maschine schafft {plunge_max:.0f}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/feeds.py"/>
        <source>{name} should turn slower than this spindle can: expect heat.</source>
        <translation>{name} sollte langsamer drehen, als diese Spindel kann: Wärme ist zu erwarten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/through.py"/>
        <source>{name} stays in {left} pieces even with both sides joined.</source>
        <translation>{name} bleibt selbst mit verbundenen Seiten in {left} Stücken.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/links.py"/>
        <source>{name} stays in {left} pieces on the milled side even with the link wires.</source>
        <translation>{name} bleibt auf der gefrästen Seite selbst mit den Drahtbrücken in {left} Stücken.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/grooves.py"/>
        <source>{name} would do at {depth:.3f} mm deep.</source>
        <translation>{name} würde bei {depth:.3f} mm Tiefe genügen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/feeds.py"/>
        <source>{name} would like {wanted:.0f} turns a minute; this spindle reaches {spindle:.0f} ({share:.0%}). Feed is lowered to keep the chip load.</source>
        <translation>{name} hätte gern {wanted:.0f} Umdrehungen je Minute; diese Spindel erreicht {spindle:.0f} ({share:.0%}). Der Vorschub wird gesenkt, um den Zahnvorschub zu halten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_source.py"/>
        <source>{name}, line 1</source>
        <translation>{name}, Zeile 1</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill_body.py"/>
        <location filename="../../app/drypoint/board/gerber.py"/>
        <location filename="../../app/drypoint/board/gerber_source.py"/>
        <location filename="../../app/drypoint/board/layers.py"/>
        <location filename="../../app/drypoint/board/netlist.py"/>
        <source>{name}, line {line}</source>
        <translation>{name}, Zeile {line}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill.py"/>
        <location filename="../../app/drypoint/board/gerber_interpreter.py"/>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <location filename="../../app/drypoint/session/voltage_table.py"/>
        <source>{name}, line {number}</source>
        <translation>{name}, Zeile {number}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>{name}, {width:.1f} × {height:.1f} mm, {value} copper milled</source>
        <translation>{name}, {width:.1f} × {height:.1f} mm, Kupfer der {value} gefräst</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/pictures.py"/>
        <source>{name}: grooves</source>
        <translation>{name}: Nuten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/pictures.py"/>
        <source>{name}: height of the copper</source>
        <translation>{name}: Höhe des Kupfers</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/expressions.py"/>
        <source>{name}[{x:g}] cannot be computed.</source>
        <translation>{name}[{x:g}] lässt sich nicht berechnen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/surface_rows.py"/>
        <source>{noise:.1f} µm</source>
        <translation>{noise:.1f} µm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>{number}, done</source>
        <translation>{number}, fertig</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>{number}: {width:g} × {height:g} mm at {x:g}, {y:g}</source>
        <translation>{number}: {width:g} × {height:g} mm bei {x:g}, {y:g}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>{off:.3f} mm</source>
        <translation>{off:.3f} mm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/surface_rows.py"/>
        <source>{places}, {out} left out</source>
        <translation>{places}, {out} ausgelassen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>{preset}; moves across at {clearance:g} mm</source>
        <translation>{preset}; fährt quer in {clearance:g} mm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/two_bit_times.py"/>
        <source>{saved:.0f} min saved: two bits take {two:.0f} min, changes of the bit included; one takes {one:.0f} min.</source>
        <translation>{saved:.0f} min gespart: zwei Werkzeuge brauchen {two:.0f} min samt Wechseln; eines braucht {one:.0f} min.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/passes/reach.py"/>
        <source>{share:.0f} %</source>
        <translation>{share:.0f} %</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/passes/reach.py"/>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>{share:.1f} %</source>
        <translation>{share:.1f} %</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{share:.1f} % through</source>
        <translation>{share:.1f} % durch</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{share:.1f} % through so far</source>
        <translation>{share:.1f} % bisher durch</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet_sides.py"/>
        <source>{side} and then {other}</source>
        <translation>{side} und dann {other}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/drill_sizes.py"/>
        <source>{size:.4g} mm ({inch:.4f} in)</source>
        <translation>{size:.4g} mm ({inch:.4f} in)</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/drill_sizes.py"/>
        <source>{size:.4g} mm ({inch:.4f} in, {name})</source>
        <translation>{size:.4g} mm ({inch:.4f} in, {name})</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/doubts.py"/>
        <source>{sound}: looked at</source>
        <translation>{sound}: angesehen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/doubts.py"/>
        <source>{sound}: to be cut again</source>
        <translation>{sound}: nachzuschneiden</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/gross.py"/>
        <source>{text} Touch it again.</source>
        <translation>{text} Noch einmal antasten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/thinned.py"/>
        <location filename="../../app/drypoint/cuts/weakened.py"/>
        <source>{text} for {rise:.0f} K (estimate)</source>
        <translation>{text} bei {rise:.0f} K (Schätzung)</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/gross.py"/>
        <source>{text}, which their uncertainty explains.</source>
        <translation>{text}, was ihre Unsicherheit erklärt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/gross.py"/>
        <source>{text}: one of them is wrong. Touch a third.</source>
        <translation>{text}: Eines davon ist falsch. Ein drittes antasten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{title} in doubt</source>
        <translation>{title} zweifelhaft</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/running.py"/>
        <source>{title}, resumed</source>
        <translation>{title}, fortgesetzt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sides.py"/>
        <source>{title}, {side} up</source>
        <translation>{title}, {side} oben</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/ground.py"/>
        <source>{title}: it needs {width:.1f} × {height:.1f} mm of free copper; in the way: {words}.</source>
        <translation>{title}: es braucht {width:.1f} × {height:.1f} mm freies Kupfer; im Weg: {words}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/ground.py"/>
        <source>{title}: it needs {width:.1f} × {height:.1f} mm of free copper; the widest strip beside the board is {widest:.1f} mm.</source>
        <translation>{title}: es braucht {width:.1f} × {height:.1f} mm freies Kupfer; der breiteste Streifen neben der Platine misst {widest:.1f} mm.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/copper.py"/>
        <source>{touched} are joined by copper that belongs to no net.</source>
        <translation>{touched} sind durch Kupfer verbunden, das zu keinem Netz gehört.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/clear_options.py"/>
        <location filename="../../app/drypoint/session/commands.py"/>
        <source>{value:g} is no sensible value.</source>
        <translation>{value:g} ist kein sinnvoller Wert.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/macro_primitives.py"/>
        <source>{what} cannot be {value:g}.</source>
        <translation>{what} kann nicht {value:g} sein.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/aperture_shapes.py"/>
        <source>{what} of {value:g} mm is impossible.</source>
        <translation>{what} von {value:g} mm ist unmöglich.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/faults.py"/>
        <source>{what}: a line arrived garbled.</source>
        <translation>{what}: Eine Zeile kam verstümmelt an.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/placed_cuts.py"/>
        <location filename="../../app/drypoint/session/run_titles.py"/>
        <source>{what}: {bit}</source>
        <translation>{what}: {bit}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/errors.py"/>
        <location filename="../../app/drypoint/session/facts.py"/>
        <source>{where}: {what}</source>
        <translation>{where}: {what}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>{width:.1f} × {height:.1f} × {thickness:g} mm, copper {copper:.0f} µm, backing {backing:g} mm</source>
        <translation>{width:.1f} × {height:.1f} × {thickness:g} mm, Kupfer {copper:.0f} µm, Unterlage {backing:g} mm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{width:.4g} × {height:.4g} mm, {clamps}</source>
        <translation>{width:.4g} × {height:.4g} mm, {clamps}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{width:.4g} × {height:.4g} mm, {nets}</source>
        <translation>{width:.4g} × {height:.4g} mm, {nets}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>{words}: {pieces} pieces for {nets} nets</source>
        <translation>{words}: {pieces} Stücke für {nets} Netze</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/sideways.py"/>
        <location filename="../../app/drypoint/machine/procedures/touching.py"/>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>{x:.2f}, {y:.2f}</source>
        <translation>{x:.2f}, {y:.2f}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>{x:.3f}, {y:.3f}</source>
        <translation>{x:.3f}; {y:.3f}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill_body.py"/>
        <source>“T{text}” is no tool.</source>
        <translation>„T{text}“ ist kein Werkzeug.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/attributes.py"/>
        <source>“{command}” is not an attribute command.</source>
        <translation>„{command}“ ist kein Attributbefehl.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/blocks.py"/>
        <source>“{letter}” is no word of RS-274.</source>
        <translation>„{letter}“ ist kein Wort von RS-274.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill_body.py"/>
        <source>“{text}” is no code.</source>
        <translation>„{text}“ ist kein Code.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill_numbers.py"/>
        <source>“{text}” is no number.</source>
        <translation>„{text}“ ist keine Zahl.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/macro_expressions.py"/>
        <source>“{text}” is not an expression.</source>
        <translation>„{text}“ ist kein Ausdruck.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_format.py"/>
        <source>“{word}” is not a coordinate.</source>
        <translation>„{word}“ ist keine Koordinate.</translation>
    </message>
</context>
<context>
    <name>window</name>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source> or </source>
        <translation> oder </translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <source> {count} settings differ from the machine set up here.</source>
        <translation> {count} Einstellungen weichen von der hier eingerichteten Maschine ab.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source> {mm:.1f} mm were cut twice at the lead-in, no deeper.</source>
        <translation> {mm:.1f} mm wurden beim Ansetzen doppelt geschnitten, nicht tiefer.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/passes.py"/>
        <source>% of the groove length is through {after}</source>
        <translation>% der Nutlänge sind {after} durch</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;About Drypoint</source>
        <translation>&amp;Über Drypoint</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Arm the jog keys</source>
        <translation>Jog-Tasten &amp;scharf schalten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Bit is over this hole</source>
        <translation>&amp;Werkzeug steht über diesem Loch</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Cautions</source>
        <translation>&amp;Hinweise zur Sicherheit</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Colours</source>
        <translation>&amp;Farben</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Connect…</source>
        <translation>&amp;Verbinden …</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Dark</source>
        <translation>&amp;Dunkel</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Export programs…</source>
        <translation>Programme &amp;ausgeben …</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Fit</source>
        <translation>&amp;Alles zeigen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Hold</source>
        <translation>&amp;Anhalten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Island check</source>
        <translation>&amp;Inselprüfung</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Job</source>
        <translation>&amp;Auftrag</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Keys</source>
        <translation>&amp;Tasten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Language</source>
        <translation>&amp;Sprache</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Light</source>
        <translation>&amp;Hell</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Machine</source>
        <translation>&amp;Maschine</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Measure</source>
        <translation>&amp;Messen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Nets</source>
        <translation>&amp;Netze</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;New job…</source>
        <translation>&amp;Neuer Auftrag …</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Open…</source>
        <translation>Ö&amp;ffnen …</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Order</source>
        <translation>&amp;Abfolge</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Passes</source>
        <translation>&amp;Durchgänge</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Reach</source>
        <translation>E&amp;rreicht</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/editing.py"/>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Redo</source>
        <translation>&amp;Wiederherstellen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Rehearse on the bench</source>
        <translation>Auf dem Prüfstand &amp;proben</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Report…</source>
        <translation>Be&amp;richt …</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Resume</source>
        <translation>&amp;Fortsetzen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Settings of the machine…</source>
        <translation>&amp;Einstellungen der Maschine …</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Setup sheet…</source>
        <translation>&amp;Rüstblatt …</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Stop</source>
        <translation>&amp;Stopp</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/editing.py"/>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source>, and .</source>
        <translation>, und .</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>, planned</source>
        <translation>, geplant</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/wear.py"/>
        <source>0: never</source>
        <translation>0: nie</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/moving.py"/>
        <source>1  The bit goes up; you are asked to turn the board and to clamp it flat.</source>
        <translation>1  Das Werkzeug fährt hoch; Sie werden gebeten, die Platine zu wenden und flach zu spannen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/moving.py"/>
        <source>2  Heights, passes and the place of the board are stale from then on.</source>
        <translation>2  Höhen, Durchgänge und der Ort der Platine sind von da an überholt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/moving.py"/>
        <source>3  Touch two drilled holes, better three: the far ones are suggested.</source>
        <translation>3  Zwei gebohrte Löcher antasten, besser drei: die weit entfernten werden vorgeschlagen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/found.py"/>
        <source>3 holes, one to spare</source>
        <translation>3 Löcher, eines mehr als nötig</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/moving.py"/>
        <source>4  The fit is mirrored by itself. Re-map shows where everything has come to.</source>
        <translation>4  Die Einpassung wird von selbst gespiegelt. Umrechnen zeigt, wohin alles gekommen ist.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/moving.py"/>
        <source>5  Touch the copper again before grooves are cut on this side.</source>
        <translation>5  Das Kupfer erneut antasten, bevor auf dieser Seite Nuten geschnitten werden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/view.py"/>
        <source>95 % of expected error</source>
        <translation>95 % des Fehlers</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/reference.py"/>
        <source>A bit thinner than the hole; clip on its copper.</source>
        <translation>Ein Werkzeug dünner als das Loch; Klemme auf seinem Kupfer.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>A board of our own, ready to be rehearsed on the simulated machine.</source>
        <translation>Eine Platine von uns, bereit für einen Probelauf auf der simulierten Maschine.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/clearing.py"/>
        <source>A change of the bit takes</source>
        <translation>Ein Werkzeugwechsel dauert</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/machine.py"/>
        <source>A clip and the contact input are there</source>
        <translation>Klemme und Kontakteingang sind vorhanden</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/documents.py"/>
        <source>A copy was saved: {path}</source>
        <translation>Eine Kopie wurde gesichert: {path}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/play.py"/>
        <source>A dial gauge on the bed against the head. The axis comes to its place from both sides; you type what the gauge reads. Needed where there is no wall, and to check the other way.</source>
        <translation>Eine Messuhr auf dem Tisch gegen den Kopf. Die Achse fährt ihren Ort von beiden Seiten an; Sie tippen ein, was die Uhr zeigt. Nötig, wo keine Wand ist, und um das andere Verfahren zu prüfen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>A drill may differ by</source>
        <translation>Ein Bohrer darf abweichen um</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/desk.py"/>
        <source>A fault in Drypoint itself ended this. The machine was stopped; the job is safe.</source>
        <translation>Ein Fehler in Drypoint selbst hat dies beendet. Die Maschine wurde angehalten; der Auftrag ist sicher.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/rehearsing.py"/>
        <source>A fault in Drypoint itself.</source>
        <translation>Ein Fehler in Drypoint selbst.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/found.py"/>
        <source>A hole may be wrong</source>
        <translation>Ein Loch ist womöglich falsch</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>A machine on a serial port, or the bench: a simulated one.</source>
        <translation>Eine Maschine am seriellen Anschluss oder der Prüfstand: eine simulierte.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/wear.py"/>
        <source>A new {bit} was put in</source>
        <translation>Ein neues Werkzeug {bit} wurde eingesetzt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>A pass follows the copper's height: touch the copper first.</source>
        <translation>Ein Durchgang folgt der Höhe des Kupfers: zuerst das Kupfer antasten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/pausing.py"/>
        <source>A pause needs a planned program: touch the copper first.</source>
        <translation>Eine Pause braucht ein geplantes Programm: zuerst das Kupfer antasten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>A rim is felt with a drill or an end mill, and it is not known that one is in.</source>
        <translation>Ein Rand wird mit einem Bohrer oder Schaftfräser gefühlt, und es ist nicht bekannt, dass einer eingespannt ist.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/found.py"/>
        <source>A ring may be lost</source>
        <translation>Ein Restring geht womöglich verloren</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/closing.py"/>
        <source>A run</source>
        <translation>Ein Lauf</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/rehearsing.py"/>
        <source>A simulated machine mills a simulated sheet; your job is not changed.</source>
        <translation>Eine simulierte Maschine fräst ein simuliertes Blech; Ihr Auftrag wird nicht verändert.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/heat/profile.py"/>
        <source>A to B {length:.0f} mm, µm; band 95 %</source>
        <translation>A bis B {length:.0f} mm, µm; Band 95 %</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>A&amp;nswer what is asked</source>
        <translation>Antworten auf die &amp;Frage</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>Above each other</source>
        <translation>Übereinander</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/run.py"/>
        <source>Add</source>
        <translation>Hinzufügen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/run.py"/>
        <source>Add a pause</source>
        <translation>Pause hinzufügen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/voltages.py"/>
        <source>Add a voltage</source>
        <translation>Spannung hinzufügen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <source>Add clamp</source>
        <translation>Neu</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/files.py"/>
        <source>Add files…</source>
        <translation>Dateien …</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/boards.py"/>
        <location filename="../../app/drypoint/ui/wizard/files.py"/>
        <source>Add folder…</source>
        <translation>Ordner …</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/boards.py"/>
        <source>Add zip…</source>
        <translation>Zip dazu …</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/proof.py"/>
        <source>All</source>
        <translation>Alle</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/proof.py"/>
        <source>All  {count}</source>
        <translation>Alle  {count}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/passes.py"/>
        <source>All away</source>
        <translation>Alle weg</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/electrical.py"/>
        <source>An estimate by IPC-2221. For mains the safety standard of the device rules.</source>
        <translation>Eine Schätzung nach IPC-2221. Für Netzspannung gilt die Sicherheitsnorm des Geräts.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>An island touch proves it.</source>
        <translation>Ein Inseltasten beweist es.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/coupon_sheet.py"/>
        <source>Angle</source>
        <translation>Winkel</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/imports.py"/>
        <source>Another copy of a board</source>
        <translation>Noch eine Kopie einer Platine</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/boards.py"/>
        <source>Another copy of board {number}</source>
        <translation>Noch eine Kopie von Platine {number}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/window.py"/>
        <source>Area</source>
        <translation>Fläche</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/clearing.py"/>
        <source>Areas</source>
        <translation>Flächen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/clearing.py"/>
        <source>Areas: x y width height; …</source>
        <translation>Flächen: x y Breite Höhe; …</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/position.py"/>
        <source>Arrow keys move X and Y, Page Up and Page Down move Z. Esc disarms.</source>
        <translation>Pfeiltasten bewegen X und Y, Bild auf und Bild ab bewegen Z. Esc entschärft.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source>Arrow keys, Page Up, Page Down</source>
        <translation>Pfeiltasten, Bild auf, Bild ab</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/coupon_sheet.py"/>
        <source>As many as you have; 0 is not read.</source>
        <translation>So viele, wie Sie haben; 0 heißt nicht abgelesen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>As the &amp;system</source>
        <translation>Wie das &amp;System</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/found.py"/>
        <source>At H{number} the hole may break out of its pad. Touch another hole, or one more surely.</source>
        <translation>Bei H{number} kann das Loch aus seiner Lötfläche ausbrechen. Ein weiteres Loch antasten oder eines sicherer.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>At rest</source>
        <translation>In Ruhe</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/sketch.py"/>
        <source>At {depth:.2f} mm depth the groove is {width:.3f} mm wide</source>
        <translation>Bei {depth:.2f} mm Tiefe ist die Nut {width:.3f} mm breit</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/depth_check.py"/>
        <source>At {depth:.3f} mm deep: {what}</source>
        <translation>Bei {depth:.3f} mm Tiefe: {what}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/depth_check.py"/>
        <source>At {depth:.3f} mm every net is an island.</source>
        <translation>Bei {depth:.3f} mm ist jedes Netz eine Insel.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/machine.py"/>
        <source>Axes</source>
        <translation>Achsen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/jogging.py"/>
        <source>Axes turned by hand are not seen by the controller. Say where the bit stands on the work; the position is set to it, nothing moves. Leave an axis as it is to keep it.</source>
        <translation>Von Hand gedrehte Achsen sieht die Steuerung nicht. Sagen Sie, wo das Werkzeug auf dem Werkstück steht; die Position wird darauf gesetzt, nichts bewegt sich. Eine Achse unverändert lassen heißt sie behalten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/request_bar.py"/>
        <source>Axes were turned by hand: the position is not believed until it is set again.</source>
        <translation>Achsen wurden von Hand gedreht: Der Position wird nicht geglaubt, bis sie wieder gesetzt ist.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/play.py"/>
        <source>Axis</source>
        <translation>Achse</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>Back to 100 %</source>
        <translation>Zurück auf 100 %</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/touching_off.py"/>
        <source>Back, Y</source>
        <translation>Zurück, Y</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <source>Backing board under the blank</source>
        <translation>Unterlage unter dem Zuschnitt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/legend_side/sheet.py"/>
        <source>Bare laminate</source>
        <translation>Blankes Laminat</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/legend_side/sheet.py"/>
        <source>Bare laminate instead: not advised</source>
        <translation>Stattdessen blankes Laminat: nicht zu empfehlen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/machine.py"/>
        <source>Baud</source>
        <translation>Baud</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/legend_side/legending.py"/>
        <location filename="../../app/drypoint/ui/machine_side/rehearsed.py"/>
        <source>Beam on</source>
        <translation>Strahl an</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/machine.py"/>
        <source>Before anything moves</source>
        <translation>Bevor sich etwas bewegt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/run.py"/>
        <source>Before piece</source>
        <translation>Vor Teil</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/machine.py"/>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <source>Bench (simulated machine)</source>
        <translation>Prüfstand (simuliert)</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>Beside each other</source>
        <translation>Nebeneinander</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>Bit and trail</source>
        <translation>Werkzeug und Spur</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/programs.py"/>
        <source>Bit for tool {tool} of {file}</source>
        <translation>Werkzeug für Werkzeug {tool} von {file}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/reference.py"/>
        <source>Bit is over {name}</source>
        <translation>Werkzeug steht über {name}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/imports.py"/>
        <source>Bit of a program</source>
        <translation>Werkzeug eines Programms</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>Bite allowed</source>
        <translation>Erlaubter Einbiss</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>Bits</source>
        <translation>Werkzeuge</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>Blank and clamps</source>
        <translation>Zuschnitt, Spanner</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <location filename="../../app/drypoint/ui/wizard/files.py"/>
        <source>Bottom</source>
        <translation>Unten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/reference.py"/>
        <source>Bring it near</source>
        <translation>Annähern</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/touching_off.py"/>
        <source>Bring the bit down beside the edge and towards it until a slip of paper between them just drags. Nothing moves when you confirm; draw the bit off the edge then.</source>
        <translation>Bringen Sie das Werkzeug neben der Kante hinab und an sie heran, bis ein Papierstreifen dazwischen gerade klemmt. Beim Bestätigen bewegt sich nichts; ziehen Sie das Werkzeug danach von der Kante weg.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/passes.py"/>
        <source>Brush</source>
        <translation>Pinsel</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/legend_side/sheet.py"/>
        <source>Burn a grid</source>
        <translation>Ein Raster brennen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/play.py"/>
        <location filename="../../app/drypoint/ui/machine_side/touching_off.py"/>
        <source>By</source>
        <translation>Mittels</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>By its reach, nothing is left to cut again</source>
        <translation>Nach der Durchtrennung gibt es nichts mehr nachzuschneiden</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/passes.py"/>
        <source>By net</source>
        <translation>Nach Netz</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source>C, arrow keys</source>
        <translation>C, Pfeiltasten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/reference.py"/>
        <source>Came from right or above: go back a step, come again.</source>
        <translation>Von rechts oder oben gekommen: einen Schritt zurück und neu heranfahren.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/jogging.py"/>
        <location filename="../../app/drypoint/ui/machine_side/moving.py"/>
        <location filename="../../app/drypoint/ui/machine_side/rehearsing.py"/>
        <location filename="../../app/drypoint/ui/machine_side/touching_off.py"/>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <source>Centre the board on the blank</source>
        <translation>Platine zentrieren</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>Change files…</source>
        <translation>Dateien ändern …</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>Change the bit, then start</source>
        <translation>Wechseln, dann starten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/depth_check.py"/>
        <source>Check</source>
        <translation>Prüfen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>Check the contact c&amp;ircuit</source>
        <translation>Kontakt&amp;kreis prüfen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <source>Choose the port</source>
        <translation>Den Anschluss wählen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/moving.py"/>
        <source>Clamp again</source>
        <translation>Neu spannen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/describe.py"/>
        <source>Clamp {number}</source>
        <translation>Spanner {number}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <source>Clamp {number} is {far:.1f} mm from the outline</source>
        <translation>Spanner {number} ist {far:.1f} mm vom Umriss entfernt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/clamps.py"/>
        <source>Clamp {number}, {where}, {size}</source>
        <translation>Spanner {number}, {where}, {size}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/reference.py"/>
        <source>Clamped anew…</source>
        <translation>Neu gespannt …</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/coupon_sheet.py"/>
        <source>Clear</source>
        <translation>Leeren</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>Clip held against the bit</source>
        <translation>Klemme am Stichel</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>Clip off, bit in the air</source>
        <translation>Klemme ab, frei</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <location filename="../../app/drypoint/ui/machine_side/play.py"/>
        <location filename="../../app/drypoint/ui/machine_side/rehearsing.py"/>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/closing.py"/>
        <source>Close Drypoint</source>
        <translation>Drypoint schließen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/legend_side/sheet.py"/>
        <source>Coating</source>
        <translation>Beschichtung</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>Colour by net</source>
        <translation>Nach Netz färben</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/reference.py"/>
        <source>Come from the left and from below at the end.</source>
        <translation>Zuletzt von links und von unten kommen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/clearing.py"/>
        <source>Comparing…</source>
        <translation>Wird verglichen …</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <source>Connect</source>
        <translation>Verbinden</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/surface.py"/>
        <source>Connect a machine first; one thing at a time.</source>
        <translation>Zuerst eine Maschine verbinden; eins nach dem anderen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <source>Connect again</source>
        <translation>Neu verbinden</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <source>Connected to {name}</source>
        <translation>Verbunden mit {name}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <source>Connected to {name}.</source>
        <translation>Verbunden mit {name}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/machine.py"/>
        <source>Connection</source>
        <translation>Verbindung</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>Connect…</source>
        <translation>Verbinden …</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/position.py"/>
        <location filename="../../app/drypoint/ui/machine_side/play.py"/>
        <location filename="../../app/drypoint/ui/machine_side/touching_off.py"/>
        <source>Contact</source>
        <translation>Kontakt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/play.py"/>
        <source>Contact made and broken on one wall</source>
        <translation>Kontakt an einer Wand geschlossen und geöffnet</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/play.py"/>
        <source>Contact made and broken on the copper</source>
        <translation>Kontakt auf dem Kupfer geschlossen und geöffnet</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>Copies</source>
        <translation>Kopien</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <source>Copper</source>
        <translation>Kupfer</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/electrical.py"/>
        <source>Copper in use</source>
        <translation>Kupfer im Betrieb</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>Copper of the other side</source>
        <translation>Kupfer der anderen Seite</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>Copper of {nets} is cut away</source>
        <translation>Kupfer von {nets} wird weggeschnitten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/boards.py"/>
        <source>Copy</source>
        <translation>Kopieren</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source>Copy the text</source>
        <translation>Den Text kopieren</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/coupon.py"/>
        <location filename="../../app/drypoint/ui/design_side/coupon_sheet.py"/>
        <location filename="../../app/drypoint/ui/legend_side/sheet.py"/>
        <source>Corner of the blank</source>
        <translation>Ecke des Zuschnitts</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/coupon.py"/>
        <source>Corner of the test pattern</source>
        <translation>Ecke des Testmusters</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/reference.py"/>
        <source>Correct scale and squareness</source>
        <translation>Maßstab, Winkel korrigieren</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/passes.py"/>
        <source>Cut again by hand</source>
        <translation>Nachschneiden</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/proof.py"/>
        <source>Cut again here</source>
        <translation>Hier nachschneiden</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/run.py"/>
        <source>Cut it again</source>
        <translation>Nachschneiden</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/passes.py"/>
        <source>Cut its grooves again</source>
        <translation>Seine Nuten nachschneiden</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/programs.py"/>
        <source>Cut the rectangle round them out</source>
        <translation>Rechteck darum ausfräsen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>Cuts</source>
        <translation>Schnitte</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>Cutting</source>
        <translation>Schneidet</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/request_bar.py"/>
        <source>Decline</source>
        <translation>Ablehnen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>Deepest bite into copper</source>
        <translation>Tiefster Einbiss ins Kupfer</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/passes.py"/>
        <source>Deepest cut</source>
        <translation>Tiefster Schnitt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>Depth and reference</source>
        <translation>Tiefe und Bezug</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>Depth ladder, {n} passes over all</source>
        <translation>Tiefenleiter, {n} Durchgänge überall</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/clearing.py"/>
        <source>Depth of the wide bit</source>
        <translation>Tiefe des breiten Fräsers</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/describe.py"/>
        <source>Depth, planned</source>
        <translation>Tiefe, geplant</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/files.py"/>
        <source>Design files</source>
        <translation>Entwurfsdateien</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>Design files in place of the present</source>
        <translation>Entwurfsdateien anstelle der jetzigen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/play.py"/>
        <source>Dial gauge</source>
        <translation>Messuhr</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/describe.py"/>
        <source>Diameter</source>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/touching_off.py"/>
        <source>Diameter of the bit where it meets the copper</source>
        <translation>Durchmesser des Werkzeugs dort, wo es das Kupfer trifft</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/found.py"/>
        <source>Distance is off by</source>
        <translation>Der Abstand weicht ab um</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/proof.py"/>
        <source>Does the milled copper fall into exactly the nets of the design?</source>
        <translation>Zerfällt das gefräste Kupfer in genau die Netze des Entwurfs?</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/request_bar.py"/>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/editing.py"/>
        <source>Done again: {title}</source>
        <translation>Wiederhergestellt: {title}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/passes.py"/>
        <source>Drag over the grooves that are to be cut again; the next pass goes there too.</source>
        <translation>Über die Nuten ziehen, die nachgeschnitten werden sollen; der nächste Durchgang geht auch dorthin.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/repainting.py"/>
        <source>Drag over the grooves to be cut again; the middle button still pans.</source>
        <translation>Über die Nuten ziehen, die nachgeschnitten werden sollen; die mittlere Taste verschiebt weiterhin.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>Drag the board or a clamp. C chooses a clamp, arrow keys move it by 0.1 mm.</source>
        <translation>Die Platine oder einen Spanner ziehen. C wählt einen Spanner, Pfeiltasten bewegen ihn um 0,1 mm.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/legend_side/legending.py"/>
        <source>Drawn strokes covered</source>
        <translation>Von den Strichen bedeckt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/turning.py"/>
        <source>Drill for them</source>
        <translation>Bohrer dafür</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/reference.py"/>
        <source>Drill holes…</source>
        <translation>Löcher bohren …</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>Drilled holes</source>
        <translation>Gebohrte Löcher</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>Drilling</source>
        <translation>Bohren</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/bits.py"/>
        <source>Drills at hand, mm</source>
        <translation>Vorhandene Bohrer, mm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/bits.py"/>
        <source>Drills, depth of a peck</source>
        <translation>Bohrer, Tiefe eines Hubs</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/bits.py"/>
        <source>Drills, plunge</source>
        <translation>Bohrer, Vorschub nach unten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <location filename="../../app/drypoint/ui/window.py"/>
        <source>Drypoint</source>
        <translation>Drypoint</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source>Drypoint is named after the engraver's technique of scratching a picture into a copper plate with a hard point: dry, no acid.</source>
        <translation>Drypoint (Kaltnadel) heißt nach der Technik, mit einer harten Spitze ein Bild in eine Kupferplatte zu ritzen: trocken, ohne Säure.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source>Drypoint made a mistake</source>
        <translation>Drypoint hat einen Fehler gemacht</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>Drypoint was ended</source>
        <translation>Drypoint wurde beendet</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/legend_side/sheet.py"/>
        <source>Dwell of a pulse</source>
        <translation>Dauer eines Pulses</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <source>Each number is another sheet: its ripples, its loose edge, the play of the axes. Connecting again keeps the sheet as it is cut; another number brings a new one.</source>
        <translation>Jede Nummer ist eine andere Platte: ihre Wellen, ihr loser Rand, das Spiel der Achsen. Erneutes Verbinden behält die Platte, wie sie gefräst ist; eine andere Nummer bringt eine neue.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/touching_off.py"/>
        <source>Edge of the blank</source>
        <translation>Kante des Zuschnitts</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/bits.py"/>
        <source>End mill, deepest cut at once</source>
        <translation>Fräser, größte Tiefe auf einmal</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/bits.py"/>
        <source>End mill, diameter</source>
        <translation>Schaftfräser, Durchmesser</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/bits.py"/>
        <source>End mill, feed</source>
        <translation>Schaftfräser, Vorschub</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/bits.py"/>
        <source>End mill, plunge</source>
        <translation>Fräser, Vorschub nach unten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/desk.py"/>
        <source>Ended as asked.</source>
        <translation>Wie verlangt beendet.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/surface.py"/>
        <source>Enough: more touches do not pay</source>
        <translation>Genug: Mehr Antasten lohnt nicht</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source>Enter</source>
        <translation>Eingabe</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/coupon_sheet.py"/>
        <source>Enter what you read: a width or a test is enough to begin.</source>
        <translation>Geben Sie ein, was Sie ablesen: Eine Breite oder eine Prüfung genügt für den Anfang.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/side.py"/>
        <source>Every change is saved at once and can be undone.</source>
        <translation>Jede Änderung wird sofort gespeichert und kann rückgängig gemacht werden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>Every reference hole is touched.</source>
        <translation>Jedes Bezugsloch ist angetastet.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>Everything can be changed later.</source>
        <translation>Alles kann später geändert werden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>Everything here can be changed later in the traveller.</source>
        <translation>Alles hier kann später im Laufzettel geändert werden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>Everything is done.</source>
        <translation>Alles ist getan.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/turning.py"/>
        <source>Expected at the far corner of the second side: {own:.2f} mm off (95 %) by holes of the board, {tooling:.2f} mm with tooling holes.</source>
        <translation>An der fernsten Ecke der zweiten Seite zu erwarten: {own:.2f} mm daneben (95 %) nach Löchern der Platine, {tooling:.2f} mm mit Aufnahmebohrungen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/turning.py"/>
        <source>Expected at the far corner of the second side: {own:.2f} mm off (95 %) by holes of the board; the margin has no room for tooling holes.</source>
        <translation>An der fernsten Ecke der zweiten Seite zu erwarten: {own:.2f} mm daneben (95 %) nach Löchern der Platine; im Rand ist kein Platz für Aufnahmebohrungen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <location filename="../../app/drypoint/ui/machine_side/found.py"/>
        <source>Expected error</source>
        <translation>Erwarteter Fehler</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source>F1</source>
        <translation>F1</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/found.py"/>
        <source>Far apart is best: the turn is found more sharply.</source>
        <translation>Weit auseinander ist am besten: Die Drehung wird schärfer gefunden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>Faster by 10 %</source>
        <translation>10 % schneller</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/bits.py"/>
        <location filename="../../app/drypoint/ui/machine_side/run_progress.py"/>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>Feed</source>
        <translation>Vorschub</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>Feed
{percent} %</source>
        <translation>Vorschub
{percent} %</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/legend_side/sheet.py"/>
        <source>Feed of lines</source>
        <translation>Vorschub der Linien</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>Feed, rapid moves and spindle</source>
        <translation>Vorschub, Eilgänge und Spindel</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/bits.py"/>
        <source>Feeds and speeds are common practice for small engravers; the makers of bit and machine know better.</source>
        <translation>Vorschübe und Drehzahlen sind übliche Praxis für kleine Graviermaschinen; die Hersteller von Werkzeug und Maschine wissen es besser.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/touching_off.py"/>
        <source>Feel for the edge</source>
        <translation>Die Kante fühlen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/touching_off.py"/>
        <source>Feel the rim</source>
        <translation>Den Rand fühlen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/reference.py"/>
        <source>Feel the rim of {name}</source>
        <translation>Den Rand von {name} fühlen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>Files</source>
        <translation>Dateien</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/reference.py"/>
        <source>Find the board again from holes whose place in the design is known.</source>
        <translation>Die Platine aus Löchern wiederfinden, deren Ort im Entwurf bekannt ist.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>Find zero again, then resume</source>
        <translation>Null wiederfinden, dann fortsetzen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>First the design files.</source>
        <translation>Zuerst die Dateien des Entwurfs.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>First touch</source>
        <translation>Erstes Antasten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>Fit  0</source>
        <translation>Alles 0</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/view.py"/>
        <source>Fit, enlarged {times:.0f} times</source>
        <translation>Einpassung, {times:.0f}-fach vergrößert</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/play.py"/>
        <source>Five times from either side, read by you</source>
        <translation>Fünfmal von jeder Seite, von Ihnen abgelesen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/legend_side/sheet.py"/>
        <source>Focus light goes out after</source>
        <translation>Fokuslicht erlischt nach</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/coupon.py"/>
        <location filename="../../app/drypoint/ui/design_side/paper.py"/>
        <source>Folder for the programs</source>
        <translation>Ordner für die Programme</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/imports.py"/>
        <source>Folder of another board</source>
        <translation>Ordner einer weiteren Platine</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/files.py"/>
        <source>Folder of design files</source>
        <translation>Ordner der Entwurfsdateien</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/rehearsing.py"/>
        <source>Found again by {n} holes</source>
        <translation>Wiedergefunden aus {n} Löchern</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/reference.py"/>
        <source>Found by</source>
        <translation>Gefunden durch</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/clearing.py"/>
        <source>Four numbers for each area, in mm; a semicolon between areas.</source>
        <translation>Vier Zahlen je Fläche, in mm; ein Strichpunkt zwischen Flächen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source>Free under the MIT licence, without warranty. The manual of the machine's maker, local rules and qualified practice come first.</source>
        <translation>Frei unter der MIT-Lizenz, ohne Gewähr. Das Handbuch des Maschinenherstellers, örtliche Vorschriften und fachkundige Praxis gehen vor.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/boards.py"/>
        <source>From the front</source>
        <translation>Von vorn</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/boards.py"/>
        <source>From the left</source>
        <translation>Von links</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/moving.py"/>
        <source>Front over back</source>
        <translation>Vorn über hinten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/touching_off.py"/>
        <source>Front, Y</source>
        <translation>Vor, Y</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>Gap between copies</source>
        <translation>Abstand zwischen Kopien</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/heat/view.py"/>
        <source>Give</source>
        <translation>Nachgeben</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>Give up below it</source>
        <translation>Aufgeben darunter</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/closing.py"/>
        <source>Go on</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>Go on from here (Ctrl+R)</source>
        <translation>Von hier an weiter (Strg+R)</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/passes.py"/>
        <source>Go on to {name}</source>
        <translation>Weiter zu {name}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/reference.py"/>
        <source>Go to {name}, then shift the board</source>
        <translation>Zu {name} fahren, dann die Platine schieben</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/describe.py"/>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>Groove width</source>
        <translation>Nutbreite</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>Grooves are cut climbing</source>
        <translation>Nuten im Gleichlauf fräsen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>Halt and end the program (Ctrl+.). This is no emergency stop: it works only while the program, the cable and the controller do. Keep the power switch within reach.</source>
        <translation>Anhalten und das Programm beenden (Strg+.). Das ist kein Not-Halt: Es wirkt nur, solange Programm, Kabel und Steuerung wirken. Halten Sie den Netzschalter in Reichweite.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>Halt the axes where they are; nothing is lost (Pause or Ctrl+H)</source>
        <translation>Die Achsen anhalten, wo sie sind; nichts geht verloren (Pause oder Strg+H)</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/coupon_sheet.py"/>
        <source>Have the bench read it</source>
        <translation>Den Prüfstand es ablesen lassen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/scrubber.py"/>
        <source>Have the run pause before the piece shown: bit raised, spindle off, until you go on.</source>
        <translation>Den Lauf vor dem gezeigten Teil pausieren lassen: Werkzeug oben, Spindel aus, bis Sie weitermachen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>Height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/machine_settings.py"/>
        <source>Height of hops to the next place</source>
        <translation>Höhe kurzer Wege zur nächsten Stelle</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/machine_settings.py"/>
        <source>Height of moves across</source>
        <translation>Höhe der Querfahrten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/run_progress.py"/>
        <source>Height of the bit</source>
        <translation>Höhe des Werkzeugs</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/clamps.py"/>
        <source>Height of the clamp</source>
        <translation>Höhe des Spanners</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/found.py"/>
        <source>Heights were touched before the board was moved. Drilling and the outline carry them along; touch the copper again before the next pass.</source>
        <translation>Die Höhen wurden angetastet, bevor die Platine bewegt wurde. Bohrungen und Umriss nehmen sie mit; vor dem nächsten Durchgang das Kupfer erneut antasten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>Held</source>
        <translation>Angehalten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/parts/explain.py"/>
        <source>Help: {setting}</source>
        <translation>Hilfe: {setting}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/turning.py"/>
        <source>Here they pay.</source>
        <translation>Hier lohnen sie sich.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>Hold</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/reference.py"/>
        <source>Hole to find</source>
        <translation>Gesuchtes Loch</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>Hole {name}</source>
        <translation>Loch {name}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>Hole {name} is at x {x:.2f}, y {y:.2f} mm.</source>
        <translation>Loch {name} ist bei x {x:.2f}, y {y:.2f} mm.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/jogging.py"/>
        <source>Hole {name} is at…</source>
        <translation>Loch {name} ist bei …</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/describe.py"/>
        <source>Hole {number}</source>
        <translation>Loch {number}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/reference.py"/>
        <source>Hole, design place</source>
        <translation>Loch, Ort im Entwurf</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/play.py"/>
        <source>Holes and marks are reached from one side, so their play cancels. Grooves are cut both ways: islands lose up to the play, and a closed loop runs on past its start so that it closes. No software cures play that the cutting force pushes across: cut lighter, or mend the nut.</source>
        <translation>Löcher und Marken werden von einer Seite angefahren, sodass sich ihr Spiel aufhebt. Nuten werden in beide Richtungen geschnitten: Inseln verlieren bis zum Spiel, und eine geschlossene Schleife läuft über ihren Anfang hinaus, damit sie sich schließt. Keine Software heilt Spiel, das die Schnittkraft durchdrückt: leichter schneiden oder die Mutter instand setzen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/files.py"/>
        <source>Holes and slots</source>
        <translation>Löcher und Langlöcher</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>Holes are found</source>
        <translation>Löcher werden gefunden</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/machine_settings.py"/>
        <source>Holes from one side</source>
        <translation>Löcher von einer Seite</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/found.py"/>
        <source>Holes of different clampings</source>
        <translation>Löcher aus verschiedenen Aufspannungen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/rehearsed.py"/>
        <source>Holes off their pads (95 %), found by {n} holes</source>
        <translation>Löcher daneben (95 %), aus {n} gefunden</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/preparing.py"/>
        <source>Home</source>
        <translation>Referenzfahrt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/preparing.py"/>
        <source>Home the machine</source>
        <translation>Referenzfahrt der Maschine</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>Hover &amp;lap</source>
        <translation>&amp;Schweberunde</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/preparing.py"/>
        <source>Hover lap before the first cut</source>
        <translation>Erst eine Schweberunde</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>How deep a pass must go follows the copper's height: Surface comes first.</source>
        <translation>Wie tief ein Durchgang gehen muss, folgt der Höhe des Kupfers: zuerst die Oberfläche.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/legend_side/sheet.py"/>
        <source>How it is marked</source>
        <translation>Wie markiert wird</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>How it is reached, and what it can do.</source>
        <translation>Wie sie erreicht wird und was sie kann.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>How it is touched</source>
        <translation>Wie es angetastet wird</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>How sure</source>
        <translation>Wie sicher</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>How sure holes are</source>
        <translation>Wie sicher Löcher liegen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/passes.py"/>
        <source>How sure, how deep</source>
        <translation>Wie sicher, wie tief</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <location filename="../../app/drypoint/ui/pages/passes.py"/>
        <source>How to cut</source>
        <translation>Wie geschnitten wird</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/found.py"/>
        <source>H{number} at {x:.2f}, {y:.2f}</source>
        <translation>H{number} bei {x:.2f}, {y:.2f}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/legend_side/sheet.py"/>
        <source>I know of its fumes and fire, and have seen to both</source>
        <translation>Dämpfe und Brandgefahr sind bekannt, für beides ist gesorgt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/paper.py"/>
        <source>IN DOUBT since {when}: {why}</source>
        <translation>ZWEIFELHAFT seit {when}: {why}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source>In a setting: its help; F1 or Esc closes it</source>
        <translation>In einer Einstellung: ihre Hilfe; F1 oder Esc schließt sie</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/proof.py"/>
        <source>In doubt since a check failed: {titles}</source>
        <translation>Zweifelhaft, seit eine Prüfung fehlschlug: {titles}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/coupon_sheet.py"/>
        <source>In the waste, shown on the board</source>
        <translation>Im Abfall, auf der Platine gezeigt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/bits.py"/>
        <source>Included angle</source>
        <translation>Spitzenwinkel</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>Into the backing</source>
        <translation>In die Unterlage</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/depth_check.py"/>
        <source>Island check at any depth</source>
        <translation>Inselprüfung bei beliebiger Tiefe</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/proving.py"/>
        <source>Island touch: {p} pairs proved apart, {j} joined, {u} not proved yet.</source>
        <translation>Inseltasten: {p} Paare als getrennt bewiesen, {j} verbunden, {u} noch nicht bewiesen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/proof.py"/>
        <source>Islands</source>
        <translation>Inseln</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/rehearsed.py"/>
        <source>Islands / nets of the second side</source>
        <translation>Inseln / Netze der zweiten Seite</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/request_bar.py"/>
        <source>It drags</source>
        <translation>Es klemmt leicht</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>It goes over {length:.0f} mm: what is not surely through, was found joined or painted.</source>
        <translation>Er geht über {length:.0f} mm: was nicht sicher durch ist, verbunden gefunden oder angemalt wurde.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/legend_side/sheet.py"/>
        <source>It is burnt in the waste, on the same coating. Then choose the field that looks best: its values are kept with the coating.</source>
        <translation>Es wird in den Abfall gebrannt, auf derselben Beschichtung. Danach das Feld wählen, das am besten aussieht: seine Werte werden bei der Beschichtung aufbewahrt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/touching_off.py"/>
        <source>It is let down into the hole and touches the rim on four sides. The hole's centre then gets the coordinates where the hole should be.</source>
        <translation>Es wird in das Loch abgesenkt und berührt den Rand auf vier Seiten. Die Lochmitte bekommt dann die Koordinaten, wo das Loch sein soll.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/run.py"/>
        <source>It is sound</source>
        <translation>Er ist in Ordnung</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/request_bar.py"/>
        <source>It is there</source>
        <translation>Es ist dort</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/found.py"/>
        <source>It lowers the worst expected error from {now:.2f} to {then:.2f} mm.</source>
        <translation>Es senkt den schlimmsten erwarteten Fehler von {now:.2f} auf {then:.2f} mm.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source>It measures the copper, predicts where a groove is through, cuts only what still needs cutting, finds the board again from its own holes, and proves the result by touch.</source>
        <translation>Es vermisst das Kupfer, sagt voraus, wo eine Nut durch ist, schneidet nur, was noch geschnitten werden muss, findet die Platine an ihren eigenen Löchern wieder und beweist das Ergebnis durch Antasten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/request_bar.py"/>
        <source>It reads this</source>
        <translation>Es zeigt dies</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/request_bar.py"/>
        <source>It sits</source>
        <translation>Es sitzt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/found.py"/>
        <source>It was moved. Touch two reference holes, better three; nothing is run before.</source>
        <translation>Sie wurde bewegt. Zwei Bezugslöcher antasten, besser drei; vorher läuft nichts.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/coupon_sheet.py"/>
        <source>Its ground is touched first where the copper's height is not known well.</source>
        <translation>Wo die Höhe des Kupfers nicht gut bekannt ist, wird dort zuerst angetastet.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/legend_side/sheet.py"/>
        <source>Its maker declares it safe for laser work</source>
        <translation>Der Hersteller erklärt sie für lasergeeignet</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <source>Its settings are those of the machine set up here.</source>
        <translation>Ihre Einstellungen sind die der hier eingerichteten Maschine.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>Job</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/documents.py"/>
        <source>Jobs (*{suffix})</source>
        <translation>Aufträge (*{suffix})</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/reference.py"/>
        <source>Jog</source>
        <translation>Jog</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/jogging.py"/>
        <source>Jog is locked while a procedure runs.</source>
        <translation>Joggen ist gesperrt, solange ein Ablauf läuft.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/position.py"/>
        <source>Jog keys</source>
        <translation>Jog-Tasten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source>Jog, once the keys are armed; 1 to 4 choose the step, Esc disarms</source>
        <translation>Joggen, wenn die Tasten scharf sind; 1 bis 4 wählen den Schritt, Esc entschärft</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/passes.py"/>
        <source>Join gaps up to</source>
        <translation>Lücken verbinden bis</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <source>Keep away from clamps by</source>
        <translation>Abstand zu Spannern</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/play.py"/>
        <source>Keep {axis} with the machine</source>
        <translation>{axis} bei der Maschine behalten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/legend_side/sheet.py"/>
        <source>Kept free round pads and holes</source>
        <translation>Um Pads und Löcher frei</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/play.py"/>
        <source>Kept with the machine. Undo takes it back.</source>
        <translation>Bei der Maschine behalten. Rückgängig nimmt es zurück.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>L&amp;egend by laser…</source>
        <translation>B&amp;eschriftung mit Laser…</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/passes.py"/>
        <source>Last stroke away</source>
        <translation>Strich weg</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>Lay the cuts</source>
        <translation>Schnitte legen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/reference.py"/>
        <source>Leave {name} out</source>
        <translation>{name} auslassen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/clamps.py"/>
        <source>Left edge of the clamp</source>
        <translation>Linke Kante des Spanners</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/legend_side/legending.py"/>
        <source>Left free for pads and holes</source>
        <translation>Für Pads und Löcher ausgelassen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/moving.py"/>
        <source>Left over right</source>
        <translation>Links über rechts</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/touching_off.py"/>
        <source>Left, X</source>
        <translation>Links, X</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/rehearsed.py"/>
        <source>Legend by laser, {n} marks</source>
        <translation>Beschriftung mit Laser, {n} Marken</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/touching_off.py"/>
        <source>Less than 5 mm off it, above the copper's height; Z is touched off. The circuit is checked, then the bit goes 0.5 mm below the copper and feels for the edge, no farther.</source>
        <translation>Weniger als 5 mm davor, über der Höhe des Kupfers; Z ist angetastet. Der Kreis wird geprüft, dann geht das Werkzeug 0,5 mm unter das Kupfer und fühlt nach der Kante, nicht weiter.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <source>Let go</source>
        <translation>Loslassen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/request_bar.py"/>
        <source>Let the bench do it</source>
        <translation>Den Prüfstand es tun lassen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/run_progress.py"/>
        <source>Line</source>
        <translation>Zeile</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/machine_settings.py"/>
        <source>Line by line</source>
        <translation>Zeile für Zeile</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>Line {n} of {all} is the last one proven done ({why}). Resuming overlaps a little and never goes deeper. Or start the next piece instead.</source>
        <translation>Zeile {n} von {all} ist die letzte, die erwiesen getan ist ({why}). Fortsetzen überlappt ein wenig und geht nie tiefer. Oder stattdessen mit dem nächsten Teil beginnen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/legend_side/sheet.py"/>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>Lines</source>
        <translation>Linien</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/coupon.py"/>
        <source>Lines in the waste that show how wide and how deep the V-bit really cuts.</source>
        <translation>Linien im Abfall, die zeigen, wie breit und tief der Stichel wirklich schneidet.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>Link wires</source>
        <translation>Drahtbrücken</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/machine.py"/>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <source>Look again</source>
        <translation>Noch einmal suchen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/wear.py"/>
        <source>Look at it after</source>
        <translation>Ansehen nach</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/wear.py"/>
        <source>Look at it under a loupe; replace it if it leaves burrs.</source>
        <translation>Mit der Lupe ansehen; ersetzen, wenn Grate bleiben.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/describe.py"/>
        <source>Loop {number}</source>
        <translation>Schleife {number}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>Loops</source>
        <translation>Schleifen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/clearing.py"/>
        <source>Loops overlap by</source>
        <translation>Umläufe überlappen um</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/clamps.py"/>
        <source>Lower edge of the clamp</source>
        <translation>Untere Kante des Spanners</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/clamps.py"/>
        <source>Lower left</source>
        <translation>Unten links</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <source>Lower left of the board, x</source>
        <translation>Platine links, x</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <source>Lower left of the board, y</source>
        <translation>Platine vorn, y</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/live.py"/>
        <source>Machine, Connect…</source>
        <translation>Maschine, Verbinden …</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>Make the job</source>
        <translation>Auftrag anlegen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/documents.py"/>
        <source>Making the job</source>
        <translation>Der Auftrag wird angelegt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/legend_side/sheet.py"/>
        <source>Mark the legend</source>
        <translation>Beschriftung markieren</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/legend_side/sheet.py"/>
        <source>Marks</source>
        <translation>Marken</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/rehearsed.py"/>
        <source>Marks off their place (95 %)</source>
        <translation>Marken neben ihrem Ort (95 %)</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/heat/view.py"/>
        <source>Mean</source>
        <translation>Mittel</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <location filename="../../app/drypoint/ui/machine_side/play.py"/>
        <source>Measure</source>
        <translation>Messen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/reference.py"/>
        <source>Measure the play of the axes, with guidance.</source>
        <translation>Das Spiel der Achsen messen, mit Anleitung.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/voltages.py"/>
        <source>Measured against</source>
        <translation>Gemessen gegen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>Mill both sides, outline last</source>
        <translation>Beide Seiten, Umriss zuletzt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/moving.py"/>
        <source>Mill the copper of the other side</source>
        <translation>Das Kupfer der anderen Seite fräsen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/surface.py"/>
        <source>More touches pay</source>
        <translation>Mehr Antasten lohnt sich</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>Most passes</source>
        <translation>Höchstzahl der Durchgänge</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <source>Move clamp {number}</source>
        <translation>Spanner {number} verschieben</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/moving.py"/>
        <source>Move the board</source>
        <translation>Die Platine verschieben</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source>Move the picture; the wheel zooms at the cursor</source>
        <translation>Das Bild verschieben; das Rad zoomt am Zeiger</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/programs.py"/>
        <source>Moved backwards</source>
        <translation>Nach hinten verschoben</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/request_bar.py"/>
        <source>Moved by hand wheel</source>
        <translation>Mit dem Handrad bewegt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/programs.py"/>
        <source>Moved right</source>
        <translation>Nach rechts verschoben</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/machine_settings.py"/>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>Moving</source>
        <translation>Fährt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <location filename="../../app/drypoint/ui/wizard/files.py"/>
        <source>Name of the job</source>
        <translation>Name des Auftrags</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>Narrow places</source>
        <translation>Engstellen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/proof.py"/>
        <source>Needs a look</source>
        <translation>Ansehen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/proof.py"/>
        <source>Needs a look  {count}</source>
        <translation>Ansehen  {count}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>Needs you</source>
        <translation>Braucht Sie</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/describe.py"/>
        <source>Net</source>
        <translation>Netz</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/voltages.py"/>
        <source>Net that carries a voltage</source>
        <translation>Netz, das eine Spannung führt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/describe.py"/>
        <source>Net {name}</source>
        <translation>Netz {name}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <location filename="../../app/drypoint/ui/wizard/files.py"/>
        <source>Nets</source>
        <translation>Netze</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <location filename="../../app/drypoint/ui/wizard/files.py"/>
        <source>Nets are known from</source>
        <translation>Netze bekannt aus</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/nets.py"/>
        <source>Nets by their reach</source>
        <translation>Netze nach ihrer Durchtrennung</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/wear.py"/>
        <source>New bit</source>
        <translation>Neues Werkzeug</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>New job</source>
        <translation>Neuer Auftrag</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/side.py"/>
        <source>New job and Open are in the File menu.</source>
        <translation>Neuer Auftrag und Öffnen sind im Menü Datei.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>New job…</source>
        <translation>Neuer Auftrag …</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>Next run: {t}</source>
        <translation>Nächster Lauf: {t}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/proving.py"/>
        <source>Next: hold a wire to {net}</source>
        <translation>Als Nächstes: einen Draht an {net} halten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/proving.py"/>
        <source>Next: the clip on {net}</source>
        <translation>Als Nächstes: die Klemme auf {net}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/onward.py"/>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>Next: {page}</source>
        <translation>Weiter: {page}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/board_view.py"/>
        <source>No board yet</source>
        <translation>Noch keine Platine</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <source>No clamps yet.</source>
        <translation>Noch keine Spanner.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>No cuts are laid.</source>
        <translation>Es sind keine Schnitte gelegt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>No design files yet.</source>
        <translation>Noch keine Entwurfsdateien.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/files.py"/>
        <source>No files yet. Drop Gerber and drill files here, or a zip.</source>
        <translation>Noch keine Dateien. Gerber- und Bohrdateien oder ein Zip hierher ziehen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/found.py"/>
        <source>No further hole is needed</source>
        <translation>Kein weiteres Loch ist nötig</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/proving.py"/>
        <source>No groove of this width parts them: change the bit or the cuts.</source>
        <translation>Keine Nut dieser Breite trennt sie: das Werkzeug oder die Schnitte ändern.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/side.py"/>
        <source>No job</source>
        <translation>Kein Auftrag</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>No machine is connected</source>
        <translation>Keine Maschine ist verbunden</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/desk.py"/>
        <source>No machine is connected. Machine, Connect… finds one, or takes the bench.</source>
        <translation>Keine Maschine ist verbunden. Maschine, Verbinden … findet eine oder nimmt den Prüfstand.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>No pass can be planned</source>
        <translation>Kein Durchgang lässt sich planen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/passes.py"/>
        <source>No pass is planned yet.</source>
        <translation>Noch kein Durchgang geplant.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/coupon_sheet.py"/>
        <source>No room in that corner: it lies {corner}.</source>
        <translation>Kein Platz in dieser Ecke: es liegt {corner}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/heat/view.py"/>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>No touches yet.</source>
        <translation>Noch nichts angetastet.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/voltages.py"/>
        <source>No voltage is entered: clearances are not checked.</source>
        <translation>Keine Spannung eingetragen: Abstände werden nicht geprüft.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/run.py"/>
        <source>None. Add one here, at the scrubber, or by the menu on the canvas.</source>
        <translation>Keine. Hier eine hinzufügen, am Schieber oder im Menü auf dem Bild.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>Not connected</source>
        <translation>Nicht verbunden</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/jogging.py"/>
        <source>Not connected.</source>
        <translation>Nicht verbunden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/found.py"/>
        <source>Not needed while the board lies as it was laid and zero was set at its corner.</source>
        <translation>Nicht nötig, solange die Platine liegt, wie sie gelegt wurde, und Null an ihrer Ecke gesetzt wurde.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/proof.py"/>
        <source>Not touched</source>
        <translation>Nicht angetastet</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/proof.py"/>
        <source>Not touched  {count}</source>
        <translation>Nicht angetastet  {count}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/passes.py"/>
        <source>Nothing but what is painted</source>
        <translation>Nichts als das Angemalte</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/found.py"/>
        <source>Nothing but your word tells which is which. Use holes that lie unevenly, or look twice.</source>
        <translation>Nur Ihr Wort sagt, welches welches ist. Löcher nehmen, die ungleichmäßig liegen, oder zweimal hinsehen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/proof.py"/>
        <source>Nothing checked yet.</source>
        <translation>Noch nichts geprüft.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/run.py"/>
        <source>Nothing is cut there any more</source>
        <translation>Dort wird nichts mehr geschnitten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/app.py"/>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>Nothing to run</source>
        <translation>Nichts zu fahren</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <location filename="../../app/drypoint/ui/pages/run.py"/>
        <source>Nothing to run yet.</source>
        <translation>Noch nichts zu fahren.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/wear.py"/>
        <source>Nothing was cut at a machine yet. The bench wears no bits.</source>
        <translation>An einer Maschine wurde noch nichts geschnitten. Der Prüfstand nutzt keine Werkzeuge ab.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>Now the input reads</source>
        <translation>Eingang jetzt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/turning.py"/>
        <source>Number of them</source>
        <translation>Anzahl</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source>On the Blank page: choose a clamp, move it by 0.1 mm</source>
        <translation>Auf der Seite Zuschnitt: einen Spanner wählen, ihn um 0,1 mm bewegen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/preparing.py"/>
        <source>Once round the board above the copper, spindle off: are clamps and cables clear?</source>
        <translation>Einmal rund um die Platine über dem Kupfer, Spindel aus: Sind Spanner und Kabel frei?</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>Once round the board: nothing was in the way?</source>
        <translation>Einmal rund um die Platine: War nichts im Weg?</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/legend_side/legending.py"/>
        <source>Once round the legend: is it where it should be?</source>
        <translation>Einmal um die Beschriftung: Liegt sie, wo sie soll?</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>One careful pass, {share:.1f} % sure</source>
        <translation>Ein Durchgang, {share:.1f} % sicher</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/moving.py"/>
        <source>One copper side</source>
        <translation>Eine Kupferseite</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>One pass takes about</source>
        <translation>Ein Durchgang dauert etwa</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/proving.py"/>
        <source>One piece is touched, one gap proved: {a} – {b} of {gap:.2f} mm.</source>
        <translation>Ein Stück wird angetastet, ein Abstand bewiesen: {a} – {b} mit {gap:.2f} mm.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/legend_side/sheet.py"/>
        <source>One row for every stroke: quicker, thinner</source>
        <translation>Eine Reihe je Strich: schneller, dünner</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/passes.py"/>
        <source>Only what may still be joined is cut again.</source>
        <translation>Nur was noch verbunden sein kann, wird nachgeschnitten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/reference.py"/>
        <source>Only where four holes or more say so. A wrong touch is then partly taken for a wrong scale.</source>
        <translation>Nur wo vier oder mehr Löcher es sagen. Ein falsches Antasten wird sonst teils für einen falschen Maßstab gehalten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>Open &amp;recent</source>
        <translation>&amp;Zuletzt benutzt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/documents.py"/>
        <source>Open a job</source>
        <translation>Einen Auftrag öffnen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <source>Opening a port restarts most controllers. Drypoint reads what it is; it moves nothing.</source>
        <translation>Das Öffnen eines Anschlusses startet die meisten Steuerungen neu. Drypoint liest, was sie ist; es bewegt nichts.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <location filename="../../app/drypoint/ui/canvas/scrubber.py"/>
        <source>Order</source>
        <translation>Abfolge</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/scrubber.py"/>
        <source>Order of cutting</source>
        <translation>Reihenfolge der Schnitte</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/found.py"/>
        <source>Origin at</source>
        <translation>Ursprung bei</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/bits.py"/>
        <source>Outline and holes</source>
        <translation>Umriss und Löcher</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>Outline and tabs</source>
        <translation>Umriss und Stege</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/programs.py"/>
        <source>Outside of them by</source>
        <translation>Außerhalb um</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/jogging.py"/>
        <source>Over the corner spot</source>
        <translation>Über dem Eckpunkt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/paper.py"/>
        <source>PDF (*.pdf);;Web page (*.html)</source>
        <translation>PDF (*.pdf);;Webseite (*.html)</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>Pa&amp;ge</source>
        <translation>&amp;Seite</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <source>Pace of the bench</source>
        <translation>Tempo des Prüfstands</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/passes.py"/>
        <source>Paint on the board</source>
        <translation>Malen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/request_bar.py"/>
        <location filename="../../app/drypoint/ui/machine_side/touching_off.py"/>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/position.py"/>
        <source>Paper {thickness:.2f}</source>
        <translation>Papier {thickness:.2f}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>Pass {number}</source>
        <translation>Durchgang {number}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/run_tasks.py"/>
        <source>Pass {n}</source>
        <translation>Durchgang {n}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/rehearsed.py"/>
        <source>Pass {n}, {depth:.3f} mm, {length:.0f} mm long</source>
        <translation>Durchgang {n}, {depth:.3f} mm, {length:.0f} mm lang</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/depth_check.py"/>
        <source>Paths</source>
        <translation>Bahnen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/pausing.py"/>
        <source>Pause before this piece</source>
        <translation>Pause vor diesem Teil</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/scrubber.py"/>
        <source>Pause here</source>
        <translation>Pause hier</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>Pause to remove the dust</source>
        <translation>Pause zum Entfernen des Staubs</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/run.py"/>
        <source>Pauses</source>
        <translation>Pausen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/describe.py"/>
        <source>Piece {number}</source>
        <translation>Teil {number}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/run.py"/>
        <source>Piece {n} of {all}</source>
        <translation>Teil {n} von {all}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/legend_side/sheet.py"/>
        <source>Pitch of pulses</source>
        <translation>Abstand der Pulse</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/describe.py"/>
        <source>Place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/imports.py"/>
        <source>Place of a board</source>
        <translation>Ort einer Platine</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/imports.py"/>
        <source>Place of the programs</source>
        <translation>Ort der Programme</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/legend_side/legending.py"/>
        <source>Place, 95 %</source>
        <translation>Lage, 95 %</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/places.py"/>
        <source>Places to look at</source>
        <translation>Stellen zum Ansehen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/remapping.py"/>
        <source>Placing every path anew…</source>
        <translation>Jeder Weg wird neu platziert …</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>Plan &amp;touches</source>
        <translation>Antasten &amp;planen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/passes.py"/>
        <source>Plan the first pass</source>
        <translation>Den ersten Durchgang planen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>Plan the next &amp;pass</source>
        <translation>Den nächsten &amp;Durchgang planen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>Plan touches</source>
        <translation>Tastplan</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>Play of Z under load</source>
        <translation>Spiel von Z unter Last</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/play.py"/>
        <source>Play of the axes</source>
        <translation>Spiel der Achsen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/play.py"/>
        <source>Play of {axis}: {value:.3f} ± {sigma:.3f} mm.</source>
        <translation>Spiel von {axis}: {value:.3f} ± {sigma:.3f} mm.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/machine.py"/>
        <source>Play {axis}</source>
        <translation>Spiel {axis}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/reference.py"/>
        <source>Play…</source>
        <translation>Spiel …</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/bits.py"/>
        <source>Plunge</source>
        <translation>Eintauchen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/machine.py"/>
        <source>Port</source>
        <translation>Anschluss</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/position.py"/>
        <location filename="../../app/drypoint/ui/window.py"/>
        <source>Position</source>
        <translation>Position</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/legend_side/sheet.py"/>
        <source>Power</source>
        <translation>Leistung</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/legend_side/sheet.py"/>
        <source>Power upwards, dwell to the right</source>
        <translation>Leistung nach oben, Dauer nach rechts</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/rehearsing.py"/>
        <source>Prediction against what the simulated copper shows.</source>
        <translation>Vorhersage gegen das, was das simulierte Kupfer zeigt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>Pricked marks</source>
        <translation>Gestochene Marken</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/heat/profile.py"/>
        <source>Profile of the height</source>
        <translation>Höhenprofil</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>Progress</source>
        <translation>Fortschritt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <source>Protocol {version}, {bytes} bytes of buffer.</source>
        <translation>Protokoll {version}, {bytes} Bytes Puffer.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>Put it in by way of the Run page or touch Z with it, then try again.</source>
        <translation>Setzen Sie es über die Seite Lauf ein oder tasten Sie Z damit an, dann noch einmal versuchen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>Rapid moves at {percent} %</source>
        <translation>Eilgänge mit {percent} %</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>Re-&amp;map</source>
        <translation>&amp;Umrechnen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/reference.py"/>
        <source>Re-map</source>
        <translation>Umrechnen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/machine_settings.py"/>
        <source>Reach holes and marks from one side: play is taken up</source>
        <translation>Löcher von einer Seite anfahren, ohne Spiel</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>Read a table…</source>
        <translation>Tabelle lesen …</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/patterns.py"/>
        <source>Read the test pattern</source>
        <translation>Das Testmuster ablesen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/request_bar.py"/>
        <source>Read; go on</source>
        <translation>Abgelesen; weiter</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/request_bar.py"/>
        <source>Reading</source>
        <translation>Wird gelesen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/new_job.py"/>
        <source>Reading the files</source>
        <translation>Die Dateien werden gelesen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/imports.py"/>
        <source>Rectangle round the programs</source>
        <translation>Rechteck um die Programme</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/describe.py"/>
        <source>Reference hole {name}</source>
        <translation>Bezugsloch {name}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/rehearsing.py"/>
        <source>Rehearsal</source>
        <translation>Probelauf</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/rehearsing.py"/>
        <source>Rehearsal on the bench</source>
        <translation>Probelauf auf dem Prüfstand</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/passes.py"/>
        <location filename="../../app/drypoint/ui/pages/run.py"/>
        <source>Rehearse</source>
        <translation>Probelauf</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/preparing.py"/>
        <source>Rehearsed, nothing went wrong</source>
        <translation>Geprobt, nichts ging schief</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/preparing.py"/>
        <source>Rehearsing on the bench…</source>
        <translation>Probelauf auf dem Prüfstand …</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <location filename="../../app/drypoint/ui/forms/boards.py"/>
        <location filename="../../app/drypoint/ui/pages/run.py"/>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/boards.py"/>
        <source>Remove board {number}</source>
        <translation>Platine {number} entfernen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/run.py"/>
        <source>Remove the pause {where}</source>
        <translation>Die Pause {where} entfernen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/voltages.py"/>
        <source>Remove the voltage of {net}</source>
        <translation>Spannung von {net} entfernen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source>Report</source>
        <translation>Bericht</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source>Report of a fault</source>
        <translation>Bericht über einen Fehler</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/paper.py"/>
        <source>Report: {name}</source>
        <translation>Bericht: {name}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/proof.py"/>
        <source>Report…</source>
        <translation>Bericht …</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/request_bar.py"/>
        <source>Request</source>
        <translation>Bitte</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>Resume</source>
        <translation>Fortsetzen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>Resume the broken run</source>
        <translation>Den abgebrochenen Lauf fortsetzen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/play.py"/>
        <source>Reversal value, and repeatability from one side (ISO 230-2)</source>
        <translation>Umkehrspanne und Wiederholpräzision von einer Seite (ISO 230-2)</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/coupon_sheet.py"/>
        <source>Ridges between two lines</source>
        <translation>Stege zwischen zwei Linien</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/touching_off.py"/>
        <source>Right, X</source>
        <translation>Rechts, X</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/reference.py"/>
        <source>Rim</source>
        <translation>Rand</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/touching_off.py"/>
        <source>Rim of a hole</source>
        <translation>Rand eines Lochs</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/found.py"/>
        <source>Ring left, 95 %</source>
        <translation>Restring, 95 %</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/reference.py"/>
        <source>Ring left, worst</source>
        <translation>Kleinster Ring</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/file_line.py"/>
        <source>Role of {file}</source>
        <translation>Rolle von {file}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/legend_side/sheet.py"/>
        <source>Rows apart</source>
        <translation>Abstand der Reihen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/coupon_sheet.py"/>
        <source>Run it</source>
        <translation>Ausführen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/coupon.py"/>
        <source>Run it, read it…</source>
        <translation>Ausführen, ablesen…</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/run.py"/>
        <source>Run the exact lines of what comes next on the bench: do they go through, how long?</source>
        <translation>Genau die nächsten Zeilen auf dem Prüfstand fahren: Gehen sie durch, wie lange?</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/coupon_sheet.py"/>
        <location filename="../../app/drypoint/ui/forms/bits.py"/>
        <source>Run-out</source>
        <translation>Rundlauffehler</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>Save a &amp;copy…</source>
        <translation>Eine &amp;Kopie sichern …</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/documents.py"/>
        <source>Save a copy</source>
        <translation>Eine Kopie sichern</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/reference.py"/>
        <source>Say that the board was taken off, shifted or clamped anew: its place is not known then.</source>
        <translation>Sagen, dass die Platine abgenommen, verschoben oder neu gespannt wurde: Ihr Ort ist dann nicht bekannt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/found.py"/>
        <source>Scale, corrected</source>
        <translation>Maßstab, korrigiert</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/found.py"/>
        <source>Scale, not used</source>
        <translation>Maßstab, nicht benutzt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/rehearsed.py"/>
        <source>Second side, {n} touches</source>
        <translation>Zweite Seite, {n} Antastungen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>Second touch</source>
        <translation>Zweites Antasten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/proof.py"/>
        <source>See the Run page.</source>
        <translation>Siehe die Seite Lauf.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>Seen from the side being milled.</source>
        <translation>Gesehen von der Seite, die gefräst wird.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/machine_settings.py"/>
        <source>Send line by line: slower, safer on a bad cable</source>
        <translation>Zeile für Zeile senden, wenn das Kabel schlecht ist</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/jogging.py"/>
        <source>Set by hand wheel</source>
        <translation>Mit dem Handrad gesetzt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/position.py"/>
        <source>Set by hand wheel…</source>
        <translation>Handrad …</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/jogging.py"/>
        <source>Set the place</source>
        <translation>Den Ort setzen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/reference.py"/>
        <source>Set x, y here: bit is over {name}</source>
        <translation>x, y hier setzen: Werkzeug steht über {name}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>Share of feed in small pads</source>
        <translation>Anteil des Vorschubs in kleinen Pads</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/electrical.py"/>
        <source>Share of width a trace may lose</source>
        <translation>Zulässiger Anteil verlorener Breite</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <source>Sheet of copper</source>
        <translation>Kupferplatte</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/reference.py"/>
        <source>Shift</source>
        <translation>Schieben</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/proof.py"/>
        <source>Show</source>
        <translation>Zeigen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>Show as &amp;before re-mapping</source>
        <translation>Wie &amp;vor dem Umrechnen zeigen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>Show…</source>
        <translation>Zeige …</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/found.py"/>
        <location filename="../../app/drypoint/ui/wizard/files.py"/>
        <source>Side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>Side and outline</source>
        <translation>Seite und Umriss</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <location filename="../../app/drypoint/ui/wizard/files.py"/>
        <source>Side being milled</source>
        <translation>Seite, die gefräst wird</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>Sides being milled</source>
        <translation>Gefräste Seiten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <location filename="../../app/drypoint/ui/forms/clamps.py"/>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/machine.py"/>
        <source>Size of the machine</source>
        <translation>Größe der Maschine</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/bits.py"/>
        <source>Sizes in mm, or as 0.032 in, 1/32 in, #67, letter C.</source>
        <translation>Größen in mm oder wie 0.032 in, 1/32 in, #67, letter C.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>Skip this piece</source>
        <translation>Dieses Teil überspringen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/clearing.py"/>
        <source>Slivers go up to</source>
        <translation>Splitter weg bis</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>Slower by 10 %</source>
        <translation>10 % langsamer</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>Small pad, up to</source>
        <translation>Kleines Pad, bis</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/preparing.py"/>
        <source>Something went wrong</source>
        <translation>Etwas ging schief</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source>Space and drag</source>
        <translation>Leertaste und ziehen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/legend_side/sheet.py"/>
        <source>Spark rows</source>
        <translation>Pulsreihen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/bits.py"/>
        <location filename="../../app/drypoint/ui/machine_side/run_progress.py"/>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>Spindle</source>
        <translation>Spindel</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>Spindle back to 100 %</source>
        <translation>Spindel zurück auf 100 %</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/machine_settings.py"/>
        <source>Spindle comes up to speed in</source>
        <translation>Spindel erreicht die Drehzahl in</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>Spindle faster by 10 %</source>
        <translation>Spindel 10 % schneller</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/touching_off.py"/>
        <source>Spindle off. The bit holds the paper already</source>
        <translation>Spindel aus. Das Werkzeug hält das Papier schon</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/touching_off.py"/>
        <source>Spindle off. The bit is thinner than the hole</source>
        <translation>Spindel aus. Das Werkzeug ist dünner als das Loch</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/touching_off.py"/>
        <source>Spindle off. The bit stands beside the edge</source>
        <translation>Spindel aus. Das Werkzeug steht neben der Kante</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>Spindle slower by 10 %</source>
        <translation>Spindel 10 % langsamer</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/legend_side/sheet.py"/>
        <source>Spot</source>
        <translation>Brennfleck</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>Spot marks before thin drills</source>
        <translation>Anbohren vor dünnen Bohrern</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/heat/view.py"/>
        <source>Spread</source>
        <translation>Streuung</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/coupon_sheet.py"/>
        <source>Squares, tested with a meter</source>
        <translation>Quadrate, mit dem Messgerät geprüft</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/heat/view.py"/>
        <source>Stale: {reason}</source>
        <translation>Überholt: {reason}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <location filename="../../app/drypoint/ui/pages/run.py"/>
        <source>Start</source>
        <translation>Starten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>Start above the copper</source>
        <translation>Beginn über dem Kupfer</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/files.py"/>
        <source>Start over</source>
        <translation>Von vorn beginnen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/closing.py"/>
        <source>Stay here, held</source>
        <translation>Hier bleiben, angehalten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>Stop</source>
        <translation>Stopp</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/closing.py"/>
        <source>Stop and close</source>
        <translation>Stoppen und schließen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/machine.py"/>
        <source>Stop in this program is no emergency stop. Keep the power switch within reach, wear eye protection, and follow the manual of the machine's maker.</source>
        <translation>Stopp in diesem Programm ist kein Not-Halt. Den Netzschalter in Reichweite halten, Augenschutz tragen und dem Handbuch des Maschinenherstellers folgen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/live.py"/>
        <source>Stop: the axes slow down, then everything buffered is thrown away.</source>
        <translation>Stopp: Die Achsen bremsen, dann wird alles Gepufferte verworfen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/desk.py"/>
        <source>Stopped. Everything buffered was thrown away; the spindle output is off.</source>
        <translation>Gestoppt. Alles Gepufferte wurde verworfen; der Spindelausgang ist aus.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/legend_side/legending.py"/>
        <source>Stopped; the beam is off. The run can be taken up again.</source>
        <translation>Angehalten; der Strahl ist aus. Der Lauf kann wieder aufgenommen werden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>Summary</source>
        <translation>Übersicht</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/passes.py"/>
        <source>Sure at every spot</source>
        <translation>Sicher an jeder Stelle</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/found.py"/>
        <source>Surface and passes are stale</source>
        <translation>Oberfläche und Durchgänge sind überholt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>Surface, next &amp;aspect</source>
        <translation>Oberfläche, nächster &amp;Aspekt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/rehearsing.py"/>
        <source>Surface, {n} touches</source>
        <translation>Oberfläche, {n} Antastungen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>Tab height</source>
        <translation>Höhe der Stege</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>Tab width</source>
        <translation>Breite der Stege</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/tables.py"/>
        <source>Table of heights</source>
        <translation>Tabelle der Höhen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/tables.py"/>
        <source>Tables (*.csv)</source>
        <translation>Tabellen (*.csv)</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/tables.py"/>
        <source>Tables (*.csv);;All files (*)</source>
        <translation>Tabellen (*.csv);;Alle Dateien (*)</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>Tabs</source>
        <translation>Stege</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/imports.py"/>
        <source>Take a copy away</source>
        <translation>Eine Kopie wegnehmen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/clearing.py"/>
        <source>Take copper away</source>
        <translation>Kupfer abtragen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/moving.py"/>
        <source>Take it off, turn or clean it, clamp it again. Then its holes are touched.</source>
        <translation>Abnehmen, wenden oder säubern, neu spannen. Dann werden ihre Löcher angetastet.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/legend_side/sheet.py"/>
        <source>Take the broken run up</source>
        <translation>Abgebrochenen Lauf aufnehmen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/pausing.py"/>
        <source>Take the pause away</source>
        <translation>Die Pause wegnehmen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/editing.py"/>
        <source>Taken back: {title}</source>
        <translation>Zurückgenommen: {title}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/programs.py"/>
        <source>Taken for</source>
        <translation>Gehalten für</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>Test pattern of the &amp;V-bit…</source>
        <translation>Testmuster des &amp;V-Stichels…</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/patterns.py"/>
        <source>Test pattern {corner}</source>
        <translation>Testmuster {corner}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/coupon_reading.py"/>
        <source>The V-bit is used as its test pattern says. It can be undone.</source>
        <translation>Der V-Stichel wird so verwendet, wie sein Testmuster sagt. Das lässt sich rückgängig machen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/request_bar.py"/>
        <source>The bench does all that is asked</source>
        <translation>Der Prüfstand tut alles, worum gebeten wird</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/jogging.py"/>
        <source>The bit is at…</source>
        <translation>Das Werkzeug ist bei …</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/jogging.py"/>
        <source>The bit is there</source>
        <translation>Das Werkzeug ist dort</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>The bit touches the copper where the grooves will run.</source>
        <translation>Das Werkzeug tastet das Kupfer an, wo die Nuten laufen werden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <source>The blank is smaller than the board</source>
        <translation>Der Zuschnitt ist kleiner als die Platine</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/turning.py"/>
        <source>The board has fewer than two holes. Expected at the far corner of the second side: {tooling:.2f} mm off (95 %) by tooling holes.</source>
        <translation>Die Platine hat weniger als zwei Löcher. An der fernsten Ecke der zweiten Seite zu erwarten: {tooling:.2f} mm daneben (95 %) nach Aufnahmebohrungen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/files.py"/>
        <source>The board is shown as seen from that side.</source>
        <translation>Die Platine wird von dieser Seite gezeigt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/moving.py"/>
        <source>The board is turned over: touch two drilled holes, better three.</source>
        <translation>Die Platine ist gewendet: zwei gebohrte Löcher antasten, besser drei.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <source>The board is {w:.1f} × {h:.1f} mm.</source>
        <translation>Die Platine ist {w:.1f} × {h:.1f} mm.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/imports.py"/>
        <source>The board was added to the blank.</source>
        <translation>Die Platine wurde auf den Zuschnitt gelegt.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/moving.py"/>
        <source>The board was moved: touch two reference holes, better three.</source>
        <translation>Die Platine wurde bewegt: zwei Bezugslöcher antasten, besser drei.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/jogging.py"/>
        <source>The contact circuit works: open in the air, closed at the clip. The clip is off.</source>
        <translation>Der Kontaktkreis wirkt: offen in der Luft, geschlossen an der Klemme. Die Klemme ist ab.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/preparing.py"/>
        <source>The controller is free again. Check the zero before anything is cut.</source>
        <translation>Die Steuerung ist wieder frei. Prüfen Sie Null, bevor etwas geschnitten wird.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/machine.py"/>
        <source>The controller switches the spindle</source>
        <translation>Die Steuerung schaltet die Spindel</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>The copper is not touched yet</source>
        <translation>Das Kupfer ist noch nicht angetastet</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>The design files were read.</source>
        <translation>Die Entwurfsdateien wurden gelesen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/moving.py"/>
        <source>The design has no copper on the other side: only its legend can be marked.</source>
        <translation>Der Entwurf hat auf der anderen Seite kein Kupfer: Nur seine Beschriftung kann markiert werden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>The design, as seen from the side being milled.</source>
        <translation>Der Entwurf, gesehen von der Seite, die gefräst wird.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/legend_side/legending.py"/>
        <source>The focus light is out.</source>
        <translation>Das Fokuslicht ist aus.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>The gap is {gap:.3f} mm, {length:.1f} mm long. {hint}</source>
        <translation>Der Abstand ist {gap:.3f} mm, auf {length:.1f} mm Länge. {hint}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/legend_side/legending.py"/>
        <source>The grid is burnt: choose the field that looks best.</source>
        <translation>Das Raster ist gebrannt: das Feld wählen, das am besten aussieht.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/proving.py"/>
        <source>The ground between them is cut again in the next pass.</source>
        <translation>Der Grund dazwischen wird im nächsten Durchgang nachgeschnitten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>The laminate gives</source>
        <translation>Das Laminat gibt nach</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/app.py"/>
        <source>The language changes when Drypoint is started again.</source>
        <translation>Die Sprache wechselt, wenn Drypoint neu gestartet wird.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/legend_side/legending.py"/>
        <source>The legend is marked.</source>
        <translation>Die Beschriftung ist markiert.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/machine.py"/>
        <source>The machine has switches and finds its home</source>
        <translation>Hat Schalter, findet ihren Anfang</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/closing.py"/>
        <source>The machine is at work</source>
        <translation>Die Maschine arbeitet</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/preparing.py"/>
        <source>The machine is home. Set the zero of the work again, or find the reference holes.</source>
        <translation>Die Maschine ist referenziert. Die Null des Werkstücks neu setzen oder die Bezugslöcher finden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <source>The machine is let go.</source>
        <translation>Die Maschine ist losgelassen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source>The machine was told to hold, and a copy of the job was kept. Everything stored so far is intact. Please report the text below.</source>
        <translation>Die Maschine wurde zum Anhalten aufgefordert, und eine Kopie des Auftrags wurde verwahrt. Alles bisher Gespeicherte ist heil. Bitte melden Sie den Text unten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/pair_words.py"/>
        <source>The next pass cuts the ground between them again.</source>
        <translation>Der nächste Durchgang schneidet den Grund dazwischen noch einmal.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source>The order of cutting, a loop back or on; with Shift ten</source>
        <translation>Die Reihenfolge der Schnitte, eine Schleife zurück oder weiter; mit Umschalt zehn</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/touching_off.py"/>
        <source>The paper drags</source>
        <translation>Das Papier klemmt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/pausing.py"/>
        <source>The pause is taken away.</source>
        <translation>Die Pause ist weggenommen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/reference.py"/>
        <source>The position is set, not read; nothing moves.</source>
        <translation>Die Position wird gesetzt, nicht gelesen; nichts bewegt sich.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/jogging.py"/>
        <source>The position is set: x {x:.3f}, y {y:.3f}, z {z:.3f} mm.</source>
        <translation>Die Position ist gesetzt: x {x:.3f}, y {y:.3f}, z {z:.3f} mm.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/preparing.py"/>
        <location filename="../../app/drypoint/ui/machine_side/rehearsing.py"/>
        <source>The rehearsal ended early</source>
        <translation>Der Probelauf endete vorzeitig</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/pausing.py"/>
        <source>The run pauses before piece {n}: bit raised, spindle off.</source>
        <translation>Der Lauf pausiert vor Teil {n}: Werkzeug oben, Spindel aus.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/reference.py"/>
        <source>The second hole: turn the board about the first.</source>
        <translation>Das zweite Loch: die Platine um das erste drehen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/turning.py"/>
        <source>The second side cannot be found: the board has fewer than two holes.</source>
        <translation>Die zweite Seite ist nicht zu finden: die Platine hat weniger als zwei Löcher.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/paper.py"/>
        <source>The sheet could not be written ({reason}).</source>
        <translation>Das Blatt konnte nicht geschrieben werden ({reason}).</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>The surface is stale</source>
        <translation>Die Oberfläche ist überholt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/coupon.py"/>
        <source>The test pattern's program is written.</source>
        <translation>Das Programm des Testmusters ist geschrieben.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/coupon_reading.py"/>
        <location filename="../../app/drypoint/ui/legend_side/legending.py"/>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <location filename="../../app/drypoint/ui/machine_side/rehearsing.py"/>
        <source>There is no job yet.</source>
        <translation>Es gibt noch keinen Auftrag.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/found.py"/>
        <source>These holes look alike turned about</source>
        <translation>Diese Löcher sehen gedreht gleich aus</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>They are foretold between the touches too. A bent lead screw makes such waves.</source>
        <translation>Sie werden auch zwischen den Antastungen vorhergesagt. Eine krumme Gewindespindel macht solche Wellen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <source>Thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/touching_off.py"/>
        <source>Thickness of the paper</source>
        <translation>Dicke des Papiers</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>Thin from depth over diameter</source>
        <translation>Dünn ab Tiefe durch Durchmesser</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/run.py"/>
        <source>This evening</source>
        <translation>Heute Abend</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/reference.py"/>
        <source>Tightest hole</source>
        <translation>Engstes Loch</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/rehearsing.py"/>
        <source>Time at the machine</source>
        <translation>Zeit an der Maschine</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/passes.py"/>
        <source>Times without touching the copper.</source>
        <translation>Versuche ohne Berührung des Kupfers.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/coupon_sheet.py"/>
        <source>Tip</source>
        <translation>Spitze</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <source>To know before anything moves</source>
        <translation>Zu wissen, bevor sich etwas bewegt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/programs.py"/>
        <source>Tool {number}: drills, {depth:.2f} mm</source>
        <translation>Werkzeug {number}: bohrt, {depth:.2f} mm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/programs.py"/>
        <source>Tool {number}: engraves, {depth:.2f} mm</source>
        <translation>Werkzeug {number}: graviert, {depth:.2f} mm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/programs.py"/>
        <source>Tool {number}: mills, {depth:.2f} mm</source>
        <translation>Werkzeug {number}: fräst, {depth:.2f} mm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <location filename="../../app/drypoint/ui/wizard/files.py"/>
        <source>Top</source>
        <translation>Oben</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>Touch</source>
        <translation>Antasten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/proof.py"/>
        <source>Touch again</source>
        <translation>Erneut antasten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/surface.py"/>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>Touch more</source>
        <translation>Mehr antasten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/position.py"/>
        <source>Touch off</source>
        <translation>Nullen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/touching_off.py"/>
        <source>Touch off X and Y</source>
        <translation>X und Y nullen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/position.py"/>
        <source>Touch off X and Y at an edge of the blank, or by the rim of a hole.</source>
        <translation>X und Y an einer Kante des Zuschnitts nullen oder am Rand eines Lochs.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/position.py"/>
        <source>Touch off X and Y…</source>
        <translation>X und Y nullen …</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/position.py"/>
        <source>Touch off X, Y…</source>
        <translation>X, Y nullen …</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/position.py"/>
        <location filename="../../app/drypoint/ui/machine_side/jogging.py"/>
        <source>Touch off Z</source>
        <translation>Z nullen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>Touch plan</source>
        <translation>Tastplan</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/surface.py"/>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>Touch the copper</source>
        <translation>Kupfer antasten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>Touch the copper again before cutting grooves.</source>
        <translation>Vor dem Schneiden von Nuten das Kupfer erneut antasten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/surface.py"/>
        <source>Touch the edges first: does it give?</source>
        <translation>Erst die Ränder: Geben sie nach?</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/proof.py"/>
        <source>Touch the other {count}</source>
        <translation>Die anderen {count} antasten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/proof.py"/>
        <source>Touch the rest</source>
        <translation>Den Rest antasten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/reference.py"/>
        <source>Touch two holes at least; a third one tells errors.</source>
        <translation>Mindestens zwei Löcher antasten; ein drittes verrät Fehler.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>Touch {count} more</source>
        <translation>{count} weitere antasten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/found.py"/>
        <source>Touch {name} next</source>
        <translation>{name} als nächstes antasten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/surface.py"/>
        <source>Touched. {said} It was clamped before the touches were made.</source>
        <translation>Angetastet. {said} Gespannt wurde, bevor angetastet wurde.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/surface.py"/>
        <source>Touched; the laminate is held everywhere.</source>
        <translation>Angetastet; das Laminat ist überall gehalten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>Touches</source>
        <translation>Antastungen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/surface.py"/>
        <source>Touches along the edges of the blank tell where no clamp holds it, and ask for one.</source>
        <translation>Antastungen längs der Ränder des Zuschnitts verraten, wo kein Spanner ihn hält, und verlangen einen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>Touches left out</source>
        <translation>Ausgelassen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>Touching</source>
        <translation>Tastet</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>Touching takes about</source>
        <translation>Dauert etwa</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/electrical.py"/>
        <source>Traces may warm by</source>
        <translation>Erwärmung der Leiterbahnen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/machine.py"/>
        <source>Travel {axis}</source>
        <translation>Verfahrweg {axis}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/traveller.py"/>
        <source>Traveller</source>
        <translation>Laufzettel</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>Trial cuts</source>
        <translation>Probeschnitte</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>Try the &amp;demo board</source>
        <translation>Mit der &amp;Demo-Platine üben</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <location filename="../../app/drypoint/ui/wizard/files.py"/>
        <source>Try the demo board</source>
        <translation>Mit der Demo-Platine üben</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/boards.py"/>
        <source>Turn</source>
        <translation>Drehen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/moving.py"/>
        <source>Turn it</source>
        <translation>Drehen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/moving.py"/>
        <source>Turn it over now</source>
        <translation>Jetzt wenden</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/moving.py"/>
        <source>Turn over</source>
        <translation>Wenden</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/reference.py"/>
        <source>Turn over…</source>
        <translation>Wenden …</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/found.py"/>
        <source>Turned</source>
        <translation>Gedreht</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/boards.py"/>
        <source>Turned anticlockwise</source>
        <translation>Gegen den Uhrzeigersinn gedreht</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/reference.py"/>
        <source>Type the place…</source>
        <translation>Den Ort tippen …</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/preparing.py"/>
        <source>Unlock</source>
        <translation>Entsperren</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/coupon_sheet.py"/>
        <source>Use from now on</source>
        <translation>Ab jetzt verwenden</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>V-bit</source>
        <translation>V-Stichel</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/bits.py"/>
        <source>V-bit for grooves</source>
        <translation>V-Stichel für Nuten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source>Version {version}</source>
        <translation>Version {version}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>View</source>
        <translation>Ansicht</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/voltages.py"/>
        <source>Voltage</source>
        <translation>Spannung</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/electrical.py"/>
        <source>Voltage and current</source>
        <translation>Spannung und Strom</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/electrical.py"/>
        <source>Voltages</source>
        <translation>Spannungen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/play.py"/>
        <source>Wall</source>
        <translation>Wand</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/play.py"/>
        <source>Wall that is touched</source>
        <translation>Angetastete Wand</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/found.py"/>
        <source>Was {names} touched instead?</source>
        <translation>Wurde stattdessen {names} angetastet?</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>Wear</source>
        <translation>Abnutzung</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/imports.py"/>
        <source>What a program is taken for</source>
        <translation>Wofür ein Programm gehalten wird</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>What cuts, and how fast.</source>
        <translation>Was schneidet, und wie schnell.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/clearing.py"/>
        <source>What does a second bit save?</source>
        <translation>Was spart ein zweites Werkzeug?</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/play.py"/>
        <source>What follows from it</source>
        <translation>Was daraus folgt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/legend_side/sheet.py"/>
        <source>What is marked</source>
        <translation>Was markiert wird</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>What is taken for the machine</source>
        <translation>Was für die Maschine gilt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>What the design consists of.</source>
        <translation>Woraus der Entwurf besteht.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/reference.py"/>
        <source>What the fit says</source>
        <translation>Was die Einpassung sagt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/coupon_sheet.py"/>
        <source>What the test pattern shows</source>
        <translation>Was das Testmuster zeigt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/surface.py"/>
        <source>What was touched is kept; Touch the copper goes on from there.</source>
        <translation>Das Angetastete bleibt; Kupfer antasten macht von dort weiter.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/programs.py"/>
        <source>What {file} is taken for</source>
        <translation>Wofür {file} gehalten wird</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/reference.py"/>
        <source>Wheel</source>
        <translation>Rad</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/coupon_sheet.py"/>
        <source>Where it lies</source>
        <translation>Wo es liegt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/found.py"/>
        <source>Where the board lies is not known</source>
        <translation>Wo die Platine liegt, ist nicht bekannt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>Where the copper lies, and where the bit must not go.</source>
        <translation>Wo das Kupfer liegt, und wohin das Werkzeug nicht darf.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>Where the grooves run, and what they cannot part.</source>
        <translation>Wo die Nuten laufen, und was sie nicht trennen können.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/documents.py"/>
        <source>Where the job is kept</source>
        <translation>Wo der Auftrag liegt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/legend_side/sheet.py"/>
        <source>Where the light spot stands instead</source>
        <translation>Stattdessen dort, wo der Lichtpunkt steht</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>Which copper is milled, and how large it is.</source>
        <translation>Welches Kupfer gefräst wird, und wie groß es ist.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/depth_check.py"/>
        <source>Which nets would touch if everything were cut so deep, and no deeper.</source>
        <translation>Welche Netze sich berührten, wenn alles so tief gefräst würde und nicht tiefer.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/clearing.py"/>
        <source>Wide bit</source>
        <translation>Breiter Fräser</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/clearing.py"/>
        <source>Wide bit and clearing</source>
        <translation>Breiter Fräser und Ausräumen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/electrical.py"/>
        <source>Width every trace keeps</source>
        <translation>Breite, die jeder Leiterzug behält</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/clamps.py"/>
        <source>Width of the clamp</source>
        <translation>Breite des Spanners</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/clearing.py"/>
        <source>Width of the moat</source>
        <translation>Breite des Grabens</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/bits.py"/>
        <source>Width of the tip</source>
        <translation>Breite der Spitze</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/coupon_picture.py"/>
        <source>Width, mm</source>
        <translation>Breite, mm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/coupon_picture.py"/>
        <source>Widths read against the answer</source>
        <translation>Abgelesene Breiten neben der Antwort</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/coupon_sheet.py"/>
        <source>Widths, read with a loupe</source>
        <translation>Breiten, mit der Lupe abgelesen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/messages.py"/>
        <source>Working</source>
        <translation>Arbeitet</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>Worst spread on a groove</source>
        <translation>Schlimmste auf Nuten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>Write a table…</source>
        <translation>Tabelle schreiben …</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/coupon.py"/>
        <source>Write its program…</source>
        <translation>Sein Programm schreiben…</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/tables.py"/>
        <source>Write the heights to</source>
        <translation>Die Höhen schreiben nach</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/paper.py"/>
        <source>Write to</source>
        <translation>Schreiben nach</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/paper.py"/>
        <location filename="../../app/drypoint/ui/design_side/tables.py"/>
        <source>Written: {path}</source>
        <translation>Geschrieben: {path}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/touching_off.py"/>
        <source>X and Y are known from the rim of {name}, to {sigma:.3f} mm.</source>
        <translation>X und Y sind vom Rand von {name} bekannt, auf {sigma:.3f} mm.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <source>You asked for {wanted:.1f} mm.</source>
        <translation>Sie wollten {wanted:.1f} mm.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/play.py"/>
        <source>Z is touched off and the clip at hand. A nut held by a spring, or by the head's weight, shows little here and lifts only under the cutting load: what passes teach stays in force.</source>
        <translation>Z ist genullt und die Klemme zur Hand. Eine Mutter, die von einer Feder oder vom Gewicht des Kopfs gehalten wird, zeigt hier wenig und hebt erst unter der Schnittlast ab: Was Durchgänge lehren, gilt weiter.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/play.py"/>
        <source>Z is touched off, a drill thinner than the hole is in, the clip at hand. The bit goes down 0.5 mm and goes to and fro at one wall, never farther than 2 mm.</source>
        <translation>Z ist genullt, ein Bohrer dünner als das Loch ist eingespannt, die Klemme zur Hand. Das Werkzeug geht 0,5 mm hinab und an einer Wand hin und her, nie weiter als 2 mm.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/jogging.py"/>
        <source>Z is zero on the copper here.</source>
        <translation>Z ist hier null auf dem Kupfer.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/imports.py"/>
        <location filename="../../app/drypoint/ui/forms/programs.py"/>
        <source>Zero of Z in the programs</source>
        <translation>Null von Z in den Programmen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/imports.py"/>
        <source>Zip of another board</source>
        <translation>Zip einer weiteren Platine</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/imports.py"/>
        <source>Zips (*.zip)</source>
        <translation>Zips (*.zip)</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source>Zoom to what is chosen</source>
        <translation>Auf das Gewählte zoomen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>a clamp is too near</source>
        <translation>ein Spanner ist zu nah</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>after pass 1 (expected)</source>
        <translation>nach Durchgang 1 (erwartet)</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>after pass {number}</source>
        <translation>nach Durchgang {number}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>after that</source>
        <translation>danach</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/clearing.py"/>
        <source>all on the board</source>
        <translation>alles auf der Platine</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/voltages.py"/>
        <source>all other nets</source>
        <translation>alle anderen Netze</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/turning.py"/>
        <source>always</source>
        <translation>immer</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/play.py"/>
        <source>an edge of the copper</source>
        <translation>einer Kante des Kupfers</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/depth_check.py"/>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <source>and {count} more</source>
        <translation>und {count} weitere</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/position.py"/>
        <source>armed</source>
        <translation>scharf</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <source>as fast as it can</source>
        <translation>so schnell es kann</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/sketch.py"/>
        <source>at {depth:.2f} mm depth</source>
        <translation>in {depth:.2f} mm Tiefe</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <location filename="../../app/drypoint/ui/parts/page.py"/>
        <source>at {x:.2f}, {y:.2f} mm</source>
        <translation>bei {x:.2f}, {y:.2f} mm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/parts/sketches.py"/>
        <source>backing</source>
        <translation>Unterlage</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/electrical.py"/>
        <source>bare</source>
        <translation>blank</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/electrical.py"/>
        <source>bare, above 3050 m</source>
        <translation>blank, über 3050 m</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/parts/sketches.py"/>
        <source>board</source>
        <translation>Platine</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>broken</source>
        <translation>abgebrochen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/run_tasks.py"/>
        <source>broken off</source>
        <translation>abgebrochen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>by eye</source>
        <translation>nach Auge</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>by light spot</source>
        <translation>mit dem Lichtpunkt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>by the rim</source>
        <translation>am Rand</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/coupon_sheet.py"/>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <location filename="../../app/drypoint/ui/legend_side/sheet.py"/>
        <location filename="../../app/drypoint/ui/pages/passes.py"/>
        <location filename="../../app/drypoint/ui/pages/places.py"/>
        <location filename="../../app/drypoint/ui/pages/reference.py"/>
        <location filename="../../app/drypoint/ui/pages/run.py"/>
        <source>caution</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/passes.py"/>
        <source>chance to be cut off</source>
        <translation>Chance getrennt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/programs.py"/>
        <source>choose a bit</source>
        <translation>ein Werkzeug wählen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/clearing.py"/>
        <source>chosen areas</source>
        <translation>gewählte Flächen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/turning.py"/>
        <source>chosen by itself</source>
        <translation>selbst gewählt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/parts/sketches.py"/>
        <source>circle of the tip</source>
        <translation>Kreis der Spitze</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/parts/sketches.py"/>
        <source>clamp</source>
        <translation>Spanner</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/view.py"/>
        <source>clamped anew {time}</source>
        <translation>neu gespannt {time}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>clean, {count} nets</source>
        <translation>sauber, {count} Netze</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>closed</source>
        <translation>geschlossen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/electrical.py"/>
        <source>conformal coating</source>
        <translation>Schutzlack</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/file_line.py"/>
        <source>copper bottom</source>
        <translation>Kupfer unten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/file_line.py"/>
        <source>copper inner</source>
        <translation>Kupfer innen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/parts/sketches.py"/>
        <source>copper left of the trace</source>
        <translation>Kupfer, das bleibt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/file_line.py"/>
        <source>copper top</source>
        <translation>Kupfer oben</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/pair_words.py"/>
        <source>cut again next</source>
        <translation>wird als Nächstes nachgeschnitten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>cut away</source>
        <translation>weggeschnitten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>cut by then</source>
        <translation>bis dahin geschnitten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>cut in this pass</source>
        <translation>jetzt geschnitten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/coupon_sheet.py"/>
        <source>deeper than set</source>
        <translation>tiefer als eingestellt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/parts/sketches.py"/>
        <source>deepest</source>
        <translation>tiefster Schnitt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/passes.py"/>
        <location filename="../../app/drypoint/ui/parts/sketches.py"/>
        <source>depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/coupon_picture.py"/>
        <source>depth as set, mm; band: 95 %; dashed: as believed before</source>
        <translation>eingestellte Tiefe, mm; Band: 95 %; gestrichelt: zuvor</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/parts/sketches.py"/>
        <source>depth asked for</source>
        <translation>verlangte Tiefe</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/parts/sketches.py"/>
        <source>diameter</source>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/run_tasks.py"/>
        <location filename="../../app/drypoint/ui/parts/glyph.py"/>
        <source>done</source>
        <translation>fertig</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/parts/glyph.py"/>
        <source>doubt</source>
        <translation>Zweifel</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/file_line.py"/>
        <source>drill</source>
        <translation>Löcher</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/file_line.py"/>
        <source>drill plated</source>
        <translation>Löcher mit Hülse</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/file_line.py"/>
        <source>drill unplated</source>
        <translation>Löcher ohne Hülse</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>drills {list} mm</source>
        <translation>Bohrer {list} mm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>earlier pass</source>
        <translation>früher</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <location filename="../../app/drypoint/ui/machine_side/preparing.py"/>
        <location filename="../../app/drypoint/ui/pages/proof.py"/>
        <location filename="../../app/drypoint/ui/parts/glyph.py"/>
        <location filename="../../app/drypoint/ui/parts/page.py"/>
        <location filename="../../app/drypoint/ui/wizard/files.py"/>
        <source>error</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>expected</source>
        <translation>erwartet</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>expected; low hops save {time}</source>
        <translation>erwartet; niedrige Wege sparen {time}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>expected; the cable is the limit: so many short lines take longer than the moves</source>
        <translation>erwartet; das Kabel ist die Grenze: So viele kurze Zeilen dauern länger als die Wege</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/paper.py"/>
        <source>finished</source>
        <translation>fertig</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/file_line.py"/>
        <source>g-code</source>
        <translation>G-Code</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/parts/sketches.py"/>
        <source>gap</source>
        <translation>Abstand</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/parts/sketches.py"/>
        <source>gap as designed</source>
        <translation>Lücke im Entwurf</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/pair_words.py"/>
        <source>gap {gap:.2f} mm</source>
        <translation>{gap:.2f} mm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>getting ready</source>
        <translation>macht sich bereit</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/coupon_sheet.py"/>
        <source>give or take {sigma:.0f} µm</source>
        <translation>auf {sigma:.0f} µm genau</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/parts/sketches.py"/>
        <source>given up below</source>
        <translation>darunter aufgegeben</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/coupon_sheet.py"/>
        <source>gone</source>
        <translation>weg</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>groove</source>
        <translation>Nut</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/clearing.py"/>
        <source>grooves only</source>
        <translation>nur Nuten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/programs.py"/>
        <source>grooves, in passes</source>
        <translation>Nuten, in Durchgängen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/parts/sketches.py"/>
        <source>height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/run_progress.py"/>
        <source>held</source>
        <translation>angehalten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/found.py"/>
        <source>hole {name}</source>
        <translation>Loch {name}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/play.py"/>
        <source>hole {name}, {size:.1f} mm</source>
        <translation>Loch {name}, {size:.1f} mm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>impossible: no copper</source>
        <translation>unmöglich: kein Kupfer</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>in doubt</source>
        <translation>zweifelhaft</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/proving.py"/>
        <source>in the plan</source>
        <translation>im Plan</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/parts/sketches.py"/>
        <source>included angle</source>
        <translation>Spitzenwinkel</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/parts/sketches.py"/>
        <source>into the backing</source>
        <translation>in die Unterlage</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/rehearsing.py"/>
        <source>islands of the carved copper / nets of the design</source>
        <translation>Inseln des gefrästen Kupfers / Netze des Entwurfs</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>its attributes</source>
        <translation>ihre Attribute</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/file_line.py"/>
        <source>job</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/parts/sketches.py"/>
        <source>keep away</source>
        <translation>Abstand</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/parts/sketches.py"/>
        <source>laminate</source>
        <translation>Basismaterial</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/machine.py"/>
        <source>large, with homing</source>
        <translation>groß, mit Referenzfahrt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <source>left edge</source>
        <translation>linke Kante</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/run_progress.py"/>
        <source>left in this piece, done about {t}</source>
        <translation>übrig in diesem Teil, fertig um etwa {t}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/file_line.py"/>
        <source>legend bottom</source>
        <translation>Beschriftung unten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/file_line.py"/>
        <source>legend top</source>
        <translation>Beschriftung oben</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/parts/sketches.py"/>
        <source>length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/parts/sketches.py"/>
        <source>lifted by</source>
        <translation>angehoben um</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/legend_side/legending.py"/>
        <location filename="../../app/drypoint/ui/machine_side/run_progress.py"/>
        <source>line {n} of {all}</source>
        <translation>Zeile {n} von {all}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <source>lower edge</source>
        <translation>untere Kante</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/parts/corner_choice.py"/>
        <source>lower left</source>
        <translation>unten links</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/parts/corner_choice.py"/>
        <source>lower right</source>
        <translation>unten rechts</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/position.py"/>
        <source>machine</source>
        <translation>Maschine</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/machine.py"/>
        <source>medium</source>
        <translation>mittel</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/machine.py"/>
        <source>medium, spindle on and off</source>
        <translation>mittel, Spindel an und aus</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/position.py"/>
        <source>minus</source>
        <translation>Minus</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/found.py"/>
        <source>mirrored: seen from below</source>
        <translation>gespiegelt: von unten gesehen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>mm of groove</source>
        <translation>mm Nut</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/legend_side/legending.py"/>
        <source>mm of lines</source>
        <translation>mm Linien</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/reference.py"/>
        <source>mm residual, {spare}</source>
        <translation>mm Restfehler, {spare}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/clearing.py"/>
        <source>moat round every net</source>
        <translation>Graben um jedes Netz</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>must read</source>
        <translation>muss zeigen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/legend_side/sheet.py"/>
        <source>name of the coating</source>
        <translation>Name der Beschichtung</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/parts/sketches.py"/>
        <source>nearer: one cut</source>
        <translation>näher: ein Schnitt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/proving.py"/>
        <source>neighbouring pairs are proved apart by touch</source>
        <translation>benachbarte Paare sind durch Antasten als getrennt bewiesen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/proving.py"/>
        <source>neighbouring pairs proved apart by touch; the plan gives {n} islands</source>
        <translation>benachbarte Paare durch Antasten als getrennt bewiesen; der Plan ergibt {n} Inseln</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/file_line.py"/>
        <source>netlist</source>
        <translation>Netzliste</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>nets, each to be an island of its own</source>
        <translation>Netze, jedes soll eine eigene Insel sein</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/turning.py"/>
        <source>never</source>
        <translation>nie</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/reference.py"/>
        <source>next</source>
        <translation>als Nächstes</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>no copper data</source>
        <translation>keine Kupferdaten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/app.py"/>
        <source>no machine, no bench</source>
        <translation>keine Maschine, kein Prüfstand</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/clearing.py"/>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/paper.py"/>
        <source>not ended</source>
        <translation>nicht beendet</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/play.py"/>
        <source>not told apart from none</source>
        <translation>von keinem nicht zu unterscheiden</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/file_line.py"/>
        <location filename="../../app/drypoint/ui/forms/programs.py"/>
        <source>not used</source>
        <translation>nicht benutzt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/position.py"/>
        <source>off</source>
        <translation>aus</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/rehearsed.py"/>
        <location filename="../../app/drypoint/ui/machine_side/rehearsing.py"/>
        <source>off by {rms:.1f} µm; {share:.0f} % inside the 90 % band</source>
        <translation>{rms:.1f} µm daneben; {share:.0f} % im 90-%-Band</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/programs.py"/>
        <source>on the backing</source>
        <translation>auf der Unterlage</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/programs.py"/>
        <source>on the copper</source>
        <translation>auf dem Kupfer</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/depth_check.py"/>
        <source>our grooves</source>
        <translation>unsere Nuten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/pair_words.py"/>
        <source>outside</source>
        <translation>außen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>painted</source>
        <translation>angemalt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/coupon_sheet.py"/>
        <source>parted</source>
        <translation>getrennt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>pass {number}</source>
        <translation>Durchgang {number}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>pause</source>
        <translation>Pause</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>piece {number} of {all}</source>
        <translation>Teil {number} von {all}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/coupon_sheet.py"/>
        <location filename="../../app/drypoint/ui/machine_side/play.py"/>
        <location filename="../../app/drypoint/ui/machine_side/preparing.py"/>
        <location filename="../../app/drypoint/ui/machine_side/touching_off.py"/>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <location filename="../../app/drypoint/ui/pages/proof.py"/>
        <location filename="../../app/drypoint/ui/pages/reference.py"/>
        <source>plain</source>
        <translation>schlicht</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/position.py"/>
        <source>plus</source>
        <translation>Plus</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/pair_words.py"/>
        <source>proved apart</source>
        <translation>getrennt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/legend_side/legending.py"/>
        <source>pulses</source>
        <translation>Pulse</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>rapid {percent} %</source>
        <translation>Eilgang {percent} %</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/parts/glyph.py"/>
        <source>ready</source>
        <translation>bereit</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/view.py"/>
        <location filename="../../app/drypoint/ui/pages/reference.py"/>
        <source>residual</source>
        <translation>Restfehler</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/rehearsing.py"/>
        <source>residual {r:.3f} mm, worst place ± {w:.3f} mm</source>
        <translation>Restfehler {r:.3f} mm, schlimmster Ort ± {w:.3f} mm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <source>right edge</source>
        <translation>rechte Kante</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/found.py"/>
        <source>ring {r:.2f} mm</source>
        <translation>Ring {r:.2f} mm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/programs.py"/>
        <source>run as it is</source>
        <translation>laufen, wie es ist</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/moving.py"/>
        <source>said without a machine</source>
        <translation>ohne Maschine gesagt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/coupon_sheet.py"/>
        <source>shallower than set</source>
        <translation>flacher als eingestellt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/machine.py"/>
        <source>small</source>
        <translation>klein</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/machine.py"/>
        <source>small, spindle by hand</source>
        <translation>klein, Spindel von Hand</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/electrical.py"/>
        <source>solder mask</source>
        <translation>Lötstopplack</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>spindle {percent} %</source>
        <translation>Spindel {percent} %</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/heat/view.py"/>
        <source>spread {mid:.0f}, worst {worst:.0f} µm</source>
        <translation>Streuung {mid:.0f}, max. {worst:.0f} µm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/heat/view.py"/>
        <location filename="../../app/drypoint/ui/parts/glyph.py"/>
        <source>stale</source>
        <translation>überholt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>standard deviation</source>
        <translation>Standardabweichung</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/coupon_sheet.py"/>
        <source>stands</source>
        <translation>steht</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/parts/sketches.py"/>
        <source>starts above</source>
        <translation>Beginn darüber</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>still to cut</source>
        <translation>noch zu schneiden</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/parts/sketches.py"/>
        <source>tab</source>
        <translation>Steg</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/moving.py"/>
        <source>taken off and clamped again</source>
        <translation>abgenommen und neu gespannt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <source>the bench</source>
        <translation>der Prüfstand</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>the netlist</source>
        <translation>der Netzliste</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/programs.py"/>
        <source>the outline</source>
        <translation>Umriss</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/parts/sketches.py"/>
        <source>thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>this page</source>
        <translation>diese Seite</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/coupon_picture.py"/>
        <source>through from here</source>
        <translation>ab hier durch</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/nets.py"/>
        <source>through {share:.0f}, doubtful {d:.0f}, not {n:.0f} %</source>
        <translation>durch {share:.0f}, zweifelhaft {d:.0f}, nicht {n:.0f} %</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/rehearsed.py"/>
        <source>through: {p:.1f} % expected, {a:.1f} % found</source>
        <translation>durch: {p:.1f} % erwartet, {a:.1f} % gefunden</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/nets.py"/>
        <source>through; least {least} at a spot</source>
        <translation>durch; am wenigsten {least} an einer Stelle</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/parts/sketches.py"/>
        <source>to be cut again</source>
        <translation>wird nachgeschnitten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/parts/glyph.py"/>
        <source>to do</source>
        <translation>zu tun</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/run_tasks.py"/>
        <source>touch first</source>
        <translation>zuerst antasten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/reference.py"/>
        <source>touched</source>
        <translation>angetastet</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>trial cut</source>
        <translation>Probeschnitt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>trial cut, planned</source>
        <translation>Probeschnitt, geplant</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/run_tasks.py"/>
        <source>under way</source>
        <translation>läuft</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <source>upper edge</source>
        <translation>obere Kante</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/parts/corner_choice.py"/>
        <source>upper left</source>
        <translation>oben links</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/parts/corner_choice.py"/>
        <source>upper right</source>
        <translation>oben rechts</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/parts/sketches.py"/>
        <source>waste</source>
        <translation>Rand</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>what touches</source>
        <translation>was antastet</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/remapping.py"/>
        <source>where it lay before re-mapping</source>
        <translation>wo sie vor dem Umrechnen lag</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/turning.py"/>
        <source>where needed</source>
        <translation>wo nötig</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/parts/sketches.py"/>
        <source>width of the tip</source>
        <translation>Breite der Spitze</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/legend_side/legending.py"/>
        <source>within {far:.2f} mm</source>
        <translation>auf {far:.2f} mm genau</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/position.py"/>
        <source>work, mm</source>
        <translation>Werkstück, mm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/boards.py"/>
        <source>x</source>
        <translation>x</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/clearing.py"/>
        <source>x y width height; …</source>
        <translation>x y Breite Höhe; …</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>x {x:.2f}   y {y:.2f} mm</source>
        <translation>x {x:.2f}   y {y:.2f} mm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/boards.py"/>
        <source>y</source>
        <translation>y</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/rehearsed.py"/>
        <source>{a:.3f} mm</source>
        <translation>{a:.3f} mm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/rehearsed.py"/>
        <source>{a:.3f} mm; at most {p:.3f} mm expected</source>
        <translation>{a:.3f} mm; höchstens {p:.3f} mm erwartet</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/passes.py"/>
        <source>{area:.1f} mm² are painted; the next pass goes there.</source>
        <translation>{area:.1f} mm² sind angemalt; der nächste Durchgang geht dorthin.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/touching_off.py"/>
        <source>{axis} is known from the edge: it is at {at:.2f} mm.</source>
        <translation>{axis} ist von der Kante bekannt: Sie liegt bei {at:.2f} mm.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>{a} and {b} stay joined</source>
        <translation>{a} und {b} bleiben verbunden</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/rehearsed.py"/>
        <source>{a}, planned {p}</source>
        <translation>{a}, geplant {p}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/wear.py"/>
        <source>{bit} counts from nothing again.</source>
        <translation>{bit} zählt wieder von null.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/proof.py"/>
        <source>{count} computed</source>
        <translation>{count} berechnet</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>{count} files</source>
        <translation>{count} Dateien</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/tables.py"/>
        <source>{count} heights read.</source>
        <translation>{count} Höhen gelesen.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>{count} of {all} nets are not surely cut off all round: an island touch tells.</source>
        <translation>{count} von {all} Netzen sind nicht sicher ringsum getrennt: Ein Inseltasten sagt es.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/places.py"/>
        <source>{count} places to look at</source>
        <translation>{count} Stellen zum Ansehen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/paper.py"/>
        <source>{count} programs and the setup sheet are in {folder}</source>
        <translation>{count} Programme und das Rüstblatt sind in {folder}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/reference.py"/>
        <source>{count} touched</source>
        <translation>{count} angetastet</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/proof.py"/>
        <source>{count} touched with the bit</source>
        <translation>{count} mit dem Werkzeug angetastet</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/heat/view.py"/>
        <source>{count} touches   {low:+.0f} … {high:+.0f} µm</source>
        <translation>{count} Punkte   {low:+.0f} … {high:+.0f} µm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>{count}, {bits} bits</source>
        <translation>{count}, {bits} Werkzeuge</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>{count}, {sizes} sizes</source>
        <translation>{count}, {sizes} Größen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/pair_words.py"/>
        <source>{gap:.2f} mm, {chance} joined</source>
        <translation>{gap:.2f} mm, {chance} verbunden</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>{holes} holes, {slots} slots</source>
        <translation>{holes} Löcher, {slots} Langlöcher</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/preparing.py"/>
        <source>{lines} lines, all taken; {time} on the bench, {expected} expected.</source>
        <translation>{lines} Zeilen, alle genommen; {time} auf dem Prüfstand, {expected} erwartet.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/wear.py"/>
        <source>{metres:.1f} m cut, {holes} holes</source>
        <translation>{metres:.1f} m geschnitten, {holes} Löcher</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/found.py"/>
        <source>{names} was drilled in another clamping: between them stands the error of the fit then.</source>
        <translation>{names} wurde in einer anderen Aufspannung gebohrt: Dazwischen steht dann der Fehler der Einpassung.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/trials.py"/>
        <source>{name} as planned</source>
        <translation>{name} wie geplant</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/documents.py"/>
        <source>{name} is open</source>
        <translation>{name} ist offen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/found.py"/>
        <source>{name} would lower the worst expected error from {now:.3f} to {then:.3f} mm only.</source>
        <translation>{name} würde den schlimmsten erwarteten Fehler nur von {now:.3f} auf {then:.3f} mm senken.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/trials.py"/>
        <source>{name}, cut</source>
        <translation>{name}, geschnitten</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/live.py"/>
        <source>{name}, jog keys armed</source>
        <translation>{name}, Jog-Tasten scharf</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/live.py"/>
        <source>{name}, {feed:.0f} mm/min</source>
        <translation>{name}, {feed:.0f} mm/min</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/parts/fields.py"/>
        <source>{name}: from {least:g} to {most:g} {unit}</source>
        <translation>{name}: von {least:g} bis {most:g} {unit}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/parts/fields.py"/>
        <source>{name}: this is no number</source>
        <translation>{name}: das ist keine Zahl</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>{nets} are too close for their voltage</source>
        <translation>{nets} liegen zu nah für ihre Spannung</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>{nets} is broken in pieces</source>
        <translation>{nets} ist in Stücke zerbrochen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/board_view.py"/>
        <source>{nets} nets, {holes} holes; view: {view}</source>
        <translation>{nets} Netze, {holes} Löcher; Ansicht: {view}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>{nets} stay joined</source>
        <translation>{nets} bleiben verbunden</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>{net} is thinned</source>
        <translation>{net} ist verengt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>{net} is too close to {count} nets for its voltage</source>
        <translation>{net} liegt für seine Spannung zu nah an {count} Netzen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/nets.py"/>
        <source>{net}: of the {length:.0f} mm of groove beside it {through:.1f} mm are through, {doubtful:.1f} mm doubtful, {lacking:.1f} mm not through; least reach of a spot {least}</source>
        <translation>{net}: von {length:.0f} mm Nut daneben sind {through:.1f} mm durch, {doubtful:.1f} mm zweifelhaft, {lacking:.1f} mm nicht durch; geringste Durchtrennung einer Stelle {least}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/scrubber.py"/>
        <source>{now} of {all}</source>
        <translation>{now} von {all}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/found.py"/>
        <source>{n} holes, only their distance tells errors</source>
        <translation>{n} Löcher, nur ihr Abstand verrät Fehler</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/found.py"/>
        <source>{n} holes, {s} to spare</source>
        <translation>{n} Löcher, {s} mehr als nötig</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/surface.py"/>
        <source>{n} more would lower the doubtful groove from {before:.0f} to {after:.0f} mm: {saved} of cutting saved for {cost} of touching.</source>
        <translation>{n} weitere würden die zweifelhafte Nut von {before:.0f} auf {after:.0f} mm senken: {saved} Schneiden gespart für {cost} Antasten.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/run_progress.py"/>
        <source>{n} of {all}</source>
        <translation>{n} von {all}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/remapping.py"/>
        <source>{n} programs are placed anew: turned by {angle:+.2f}°, the outline moves by {mm:.2f} mm at most.</source>
        <translation>{n} Programme sind neu platziert: um {angle:+.2f}° gedreht, der Umriss verschiebt sich um höchstens {mm:.2f} mm.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <source>{pace:g} times real time</source>
        <translation>{pace:g}-fache Echtzeit</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/rehearsed.py"/>
        <source>{pads} on pads or holes, nearest {gap:.2f} mm away</source>
        <translation>{pads} auf Lötflächen oder Löchern, die nächste {gap:.2f} mm entfernt</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/legend_side/sheet.py"/>
        <source>{power:.0f} % for {dwell:.0f} ms</source>
        <translation>{power:.0f} % für {dwell:.0f} ms</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/run.py"/>
        <source>{program}: {n} pieces</source>
        <translation>{program}: {n} Teile</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>{share:.1f} % expected after pass {number}</source>
        <translation>{share:.1f} % erwartet nach Durchgang {number}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/coupon_sheet.py"/>
        <source>{size:.2f} mm deep</source>
        <translation>{size:.2f} mm tief</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/coupon_sheet.py"/>
        <source>{size:.2f} mm wide as planned</source>
        <translation>{size:.2f} mm breit geplant</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>{tabs} tabs, {depths} depths</source>
        <translation>{tabs} Stege, {depths} Tiefen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <source>{thickness:.0f} µm</source>
        <translation>{thickness:.0f} µm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>{time}; {through} of the length and {whole:.0f} % of the loops through; {width:.2f} mm wide, gap {gap:.2f} mm and more</source>
        <translation>{time}; {through} der Länge und {whole:.0f} % der Schleifen durch; {width:.2f} mm breit, Abstand {gap:.2f} mm und mehr</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/doubting.py"/>
        <source>{title} comes again.</source>
        <translation>{title} kommt noch einmal.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>{title} is done, {time}.</source>
        <translation>{title} ist fertig, {time}.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/run.py"/>
        <source>{title} is in doubt since {time}</source>
        <translation>{title} ist zweifelhaft seit {time}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>{title} is taken as done.</source>
        <translation>{title} gilt als getan.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/doubting.py"/>
        <source>{title} is taken as sound.</source>
        <translation>{title} gilt als in Ordnung.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>{title}: {reason} at line {n} of {all}. It can be resumed.</source>
        <translation>{title}: {reason} bei Zeile {n} von {all}. Er kann fortgesetzt werden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/proving.py"/>
        <source>{touches} pieces are touched, {gaps} gaps proved; first {a} – {b} of {gap:.2f} mm.</source>
        <translation>{touches} Stücke werden angetastet, {gaps} Abstände bewiesen; zuerst {a} – {b} mit {gap:.2f} mm.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/run_progress.py"/>
        <source>{t} left</source>
        <translation>{t} übrig</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>{t} was broken off</source>
        <translation>{t} wurde abgebrochen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/coupon_sheet.py"/>
        <source>{was:.3f} mm before</source>
        <translation>zuvor {was:.3f} mm</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/closing.py"/>
        <source>{what} is under way. The axes are held where they are; a spindle keeps turning. If you stop, everything buffered is thrown away and the spindle output is off; the job keeps how far the run was proven, and it can be resumed.</source>
        <translation>{what} ist im Gang. Die Achsen sind angehalten, wo sie sind; eine Spindel dreht weiter. Wenn Sie stoppen, wird alles Gepufferte verworfen, und der Spindelausgang ist aus; der Auftrag behält, bis wohin der Lauf erwiesen war, und er kann fortgesetzt werden.</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/boards.py"/>
        <source>{what} of board {number}</source>
        <translation>{what} von Platine {number}</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/paper.py"/>
        <source>{when}, {reason}, {count} lines</source>
        <translation>{when}, {reason}, {count} Zeilen</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/sketch.py"/>
        <source>{width:.3f} mm wide</source>
        <translation>{width:.3f} mm breit</translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>µm spread in the middle of all places</source>
        <translation>µm Streuung im Mittel aller Stellen</translation>
    </message>
</context>
</TS>
