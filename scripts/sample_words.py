"""What the invented sample says, in the language that the screenshots are taken in."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import fields, is_dataclass, replace
from typing import Any

from PySide6.QtCore import QCoreApplication, QLocale

from drypoint.ui.language.words import local


def spoken(*values: Any) -> list[Any]:
    """The values as they are in English; in German every string in them, however deep, translated."""
    german = QLocale().language() == QLocale.Language.German
    return [_german(value) for value in values] if german else list(values)


def _german(value: Any) -> Any:
    if type(value) is str:  # no Text of the core, which knows itself how to be said
        return GERMAN.get(value) or QCoreApplication.translate("core", local(value))
    if isinstance(value, (tuple, list)):
        return type(value)(_german(each) for each in value)
    if is_dataclass(value) and type(value).__module__.startswith(SHOWN):
        return replace(value, **_changed(value, (field.name for field in fields(value) if field.init)))
    return value


def _changed(value: Any, names: Iterable[str]) -> dict[str, Any]:
    given = {name: getattr(value, name) for name in names}
    return {name: _german(each) for name, each in given.items() if isinstance(each, (str, tuple))}


SHOWN = ("drypoint.ui.", "drypoint.board.model")
"""Where the values live that pages show."""

GERMAN = {
    "Board": "Platine",
    "Blank": "Zuschnitt",
    "Bits": "Werkzeuge",
    "Cuts": "Schnitte",
    "Surface": "Oberfläche",
    "Passes": "Durchgänge",
    "Reference": "Bezug",
    "Run": "Lauf",
    "Proof": "Beweis",
    "bottom, 70 × 50 mm": "Unterseite, 70 × 50 mm",
    "Saved 19:46. Every change can be undone.": "Gesichert 19:46. Jede Änderung lässt sich zurücknehmen.",
    "70 × 50 mm, 24 nets": "70 × 50 mm, 24 Netze",
    "90 × 68 mm, 4 clamps": "90 × 68 mm, 4 Spanner",
    "1 V-bit, 3 drills, 1 mill": "1 Stichel, 3 Bohrer, 1 Fräser",
    "24 loops, 1 017 mm": "24 Schleifen, 1 017 mm",
    "48 touches, spread 8 µm": "48 Punkte, Streuung 8 µm",
    "pass 2 planned, 0.088 mm": "Durchgang 2: 0,088 mm",
    "3 holes, residual 0.03 mm": "3 Löcher, Rest 0,03 mm",
    "1 of 3 passes run": "1 von 3 Durchgängen",
    "after the next pass": "nach dem nächsten Durchgang",
    "re-clamped 19:42": "neu gespannt 19:42",
    "The board was re-clamped at 19:42.": "Um 19:42 wurde neu gespannt.",
    "attributes": "Attributen",
    "50 round, 2 drills": "50 rund, 2 Bohrer",
    "none": "keine",
    "50 holes, no slots": "50 Löcher, keine Langlöcher",
    "says so itself: Copper,L2,Bot": "sagt es selbst: Copper,L2,Bot",
    "says so itself: Copper,L1,Top": "sagt es selbst: Copper,L1,Top",
    "says so itself: Profile,NP": "sagt es selbst: Profile,NP",
    "says so itself: Legend,Top": "sagt es selbst: Legend,Top",
    "says so itself: Plated,1,2,PTH": "sagt es selbst: Plated,1,2,PTH",
    "says so itself: NonPlated,1,2,NPTH": "sagt es selbst: NonPlated,1,2,NPTH",
    "records of IPC-D-356": "Zeilen nach IPC-D-356",
    "CLK and GND touch at one place": "CLK und GND berühren sich",
    "Joined in the design; kept as one island.": "Im Entwurf verbunden; bleibt eine Insel.",
    "6 tabs, 2 depths": "6 Stege, 2 Tiefen",
    "44 of 0.8, 4 of 3.2 mm": "44 mit 0,8, 4 mit 3,2 mm",
    "24 islands of 24": "24 Inseln von 24",
    "The corner at upper right yields by 30 µm. Clamp it, or put tape under it.": (
        "Die Ecke oben rechts gibt 30 µm nach. Spannen oder Klebeband unterlegen."
    ),
    "after pass 1": "nach Durchgang 1",
    "Pass 1": "Durchgang 1",
    "Pass 2, planned": "Durchgang 2, geplant",
    "Pass 3, if needed": "Durchgang 3, wenn nötig",
    "4 islands may still be joined": "4 Inseln können noch verbunden sein",
    "IN, VCC, C0 and D0. Test them by island touch before pass 2, or plan pass 2 now.": (
        "IN, VCC, C0 und D0. Vor Durchgang 2 durch Inseltasten prüfen, oder ihn jetzt planen."
    ),
    "pass 2": "Durchgang 2",
    "3 holes, one to spare": "3 Löcher, eins über",
    "Touch R4 next": "Als Nächstes R4",
    "It lowers the worst expected error from 0.06 to 0.04 mm.": (
        "Senkt den größten erwarteten Fehler von 0,06 auf 0,04 mm."
    ),
    "Turned": "Gedreht",
    "Shifted": "Verschoben",
    "Scale, not used": "Maßstab, nicht benutzt",
    "Play explains it": "Durch Spiel erklärt",
    "yes, 0.02 mm in x": "ja, 0,02 mm in x",
    "J2.3, drill 1.0": "J2.3, Bohrer 1,0",
    "copper left round the hole": "Kupfer bleibt ums Loch",
    "Surface and passes are stale": "Oberfläche und Durchgänge überholt",
    "The board was re-clamped at 19:42. Re-map before the next pass.": (
        "Um 19:42 wurde neu gespannt. Vor dem nächsten Durchgang umrechnen."
    ),
    "Fit, enlarged 40 times": "Einpassung, 40-fach",
    "residual": "Restfehler",
    "95 % of expected error": "95 % des Fehlers",
    "Nothing to run": "Nichts zu fahren",
    "re-map the surface first": "erst Oberfläche umrechnen",
    "Next: pass 2": "Nächstes: Durchgang 2",
    "114 mm, V-bit 0.1 mm 30°": "114 mm, Stichel 0,1 mm 30°",
    "about 1 min": "etwa 1 min",
    "about 2 min": "etwa 2 min",
    "about 4 min": "etwa 4 min",
    "engraver on ttyUSB0, position trusted": "Fräse an ttyUSB0, Ort gilt",
    "engraver on ttyUSB0, 240 mm/min": "Fräse an ttyUSB0, 240 mm/min",
    "Pass 1 finished: 1 017 mm in 6 min 10 s. The reach map is up to date.": (
        "Durchgang 1 fertig: 1 017 mm in 6 min 10 s. Was erreicht ist, steht im Bild."
    ),
    "job saved": "Auftrag gesichert",
    "Pass 2, only 114 mm": "Durchgang 2, nur 114 mm",
    "Island touch": "Inseltasten",
    "Drill 0.8 mm": "Bohren 0,8 mm",
    "44 holes": "44 Löcher",
    "Outline, 6 tabs": "Umriss, 6 Stege",
    "Line": "Zeile",
    "346 of 618": "346 von 618",
    "Piece": "Teil",
    "5 of 9, net C0": "5 von 9, Netz C0",
    "Depth below copper": "Tiefe unter Kupfer",
    "Surface here": "Oberfläche hier",
    "Spindle": "Spindel",
    "Pass 2 of 3, V-bit 0.1 mm 30°": "Durchgang 2 von 3, Stichel 0,1 mm 30°",
    "left in this pass, all done about 20:09": "noch in diesem Durchgang, alles fertig etwa 20:09",
    "Acknowledged for this run": "Für diesen Lauf bestätigt",
    "Eye protection on, blank clamped, power switch within reach. Stop in software is no emergency stop.": (
        "Schutzbrille auf, Zuschnitt gespannt, Netzschalter in Reichweite. Stopp ist kein Not-Halt."
    ),
    "Jog is locked while a program runs. Hold first, then arm the keys.": (
        "Während eines Laufs gesperrt. Erst anhalten, dann scharf schalten."
    ),
    "Pass 2 of 3": "Durchgang 2 von 3",
    "piece 5 of 9, line 346 of 618": "Teil 5 von 9, Zeile 346 von 618",
    "0:31 left": "noch 0:31",
    "spindle still turning": "Spindel dreht noch",
    "Pass 2 of 3, held": "Durchgang 2 von 3, angehalten",
    "Held by you. Resume goes on from here; Stop ends the run.": (
        "Von Ihnen angehalten. Fortsetzen geht hier weiter; Stopp beendet den Lauf."
    ),
    "journal written to line 346": "Protokoll bis Zeile 346",
    "waiting since 20:03": "wartet seit 20:03",
    "Change the bit": "Werkzeug wechseln",
    "drill 0.8 mm, 44 holes next": "Bohrer 0,8 mm, dann 44 Löcher",
    "Put in the drill 0.8 mm": "Bohrer 0,8 mm einsetzen",
    "The spindle stands still. Clip on the bit, then touch off.": (
        "Die Spindel steht. Klemme ans Werkzeug, dann antasten."
    ),
    "The drill is in": "Der Bohrer ist drin",
    "proved": "bewiesen",
    "joined": "verbunden",
    "unproved": "unbewiesen",
    "computed and touched": "berechnet und angetastet",
    "computed": "berechnet",
    "The groove between them is predicted not through for 2.1 mm.": (
        "Die Nut dazwischen ist auf 2,1 mm wohl nicht durch."
    ),
    "No touch has parted it from its neighbour.": "Noch nicht vom Nachbarn getrennt befunden.",
    "of 29 islands are proved, 1 pair joined, 1 unproved": (
        "von 29 Inseln bewiesen, 1 Paar verbunden, 1 unbewiesen"
    ),
    "Chosen": "Gewählt",
    "Next: touch 7 islands": "Nächstes: 7 Inseln antasten",
    "spindle off, bit as probe": "Spindel aus, Werkzeug als Taster",
    "no machine, no bench": "keine Maschine, kein Prüfstand",
    "Connect a machine, or the bench, first.": "Erst Maschine oder Prüfstand verbinden.",
    "pulses": "Pulse",
    "Beam on": "Strahl an",
    "Drawn strokes covered": "Striche bedeckt",
    "Left free for pads and holes": "Frei für Pads und Löcher",
    "Place, 95 %": "Lage, 95 %",
    "within 0.09 mm": "auf 0,09 mm",
}
