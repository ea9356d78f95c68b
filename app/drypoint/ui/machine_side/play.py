"""The play of the axes: what is needed, the measurement, what was found, and keeping it."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QDialog, QHBoxLayout, QVBoxLayout, QWidget

from drypoint.cuts.model import Cut
from drypoint.progress import Progress
from drypoint.session.actions import find, play
from drypoint.session.actions.play import PlayFound
from drypoint.session.holes import candidates
from drypoint.session.session import Session
from drypoint.session.station import Station
from drypoint.ui.language.words import fill, local
from drypoint.ui.machine_side.desk import Desk
from drypoint.ui.menus import Commands, keep_run_keys
from drypoint.ui.parts.blocks import Note, Row, button, words
from drypoint.ui.parts.fields import Choice, Setting
from drypoint.ui.parts.segments import Segments
from drypoint.ui.theme.theme import Theme

AXES = ("x", "y", "z")
CONTACT, GAUGE = range(2)
NO_HOLE = ""
"""Instead of a hole, an edge of the copper is the wall."""


class PlayDialog(QDialog):
    """Which axis, by contact or dial gauge; what was found so far.

    Signals
    -------
    wanted(str, int, str) : axis, CONTACT or GAUGE, name of the hole (empty: beside an edge)
    kept(str) : keep the play of this axis with the machine
    """

    wanted = Signal(str, int, str)
    kept = Signal(str)

    def __init__(self, theme: Theme, commands: Commands, parent: QWidget, holes: Sequence[Cut]) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("Play of the axes"))
        self.setMinimumWidth(480)
        self.resize(500, 620)
        self.axes = Segments(["X", "Y", "Z"], self.tr("Axis"))
        self.ways = Segments([self.tr("Contact"), self.tr("Dial gauge")], self.tr("By"))
        self.holes = Choice(self.tr("Wall"), 220)
        self.holes.addItem(self.tr("an edge of the copper"), NO_HOLE)
        for cut in holes:
            name = fill(self.tr("hole {name}, {size:.1f} mm"), name=cut.label, size=cut.diameter)
            self.holes.addItem(name, cut.label)
        if holes:  # the widest has most room for a drill
            self.holes.setCurrentIndex(1 + max(range(len(holes)), key=lambda k: holes[k].diameter))
        self._wall = Setting(self.tr("Wall that is touched"), self.holes)
        self._how = Note("plain", "")
        self._rows = {axis: Row(theme, axis.upper()) for axis in AXES}
        self.keep_button = button("")
        self.measure_button = button(self.tr("Measure"), "primary")
        close = button(self.tr("Close"))
        column = QVBoxLayout(self)
        column.setContentsMargins(20, 18, 20, 18)
        column.setSpacing(10)
        column.addWidget(words(self.tr("Play of the axes"), "section"))
        top = QHBoxLayout()
        top.addWidget(self.axes)
        top.addStretch(1)
        top.addWidget(self.ways)
        column.addLayout(top)
        column.addWidget(self._wall)
        column.addWidget(self._how)
        column.addWidget(
            words(self.tr("Reversal value, and repeatability from one side (ISO 230-2)"), "caption")
        )
        for row in self._rows.values():
            column.addWidget(row)
        column.addWidget(Note("plain", self.tr("What follows from it"), self._follows()))
        column.addStretch(1)
        foot = QHBoxLayout()
        foot.addWidget(self.keep_button)
        foot.addStretch(1)
        foot.addWidget(close)
        foot.addWidget(self.measure_button)
        column.addLayout(foot)
        keep_run_keys(self, commands)
        self._found: Mapping[str, PlayFound] = {}
        close.clicked.connect(self.reject)
        self.measure_button.clicked.connect(self._measure)
        self.keep_button.clicked.connect(lambda: self.kept.emit(self.axis))
        for each in (self.axes, self.ways):
            each.chosen.connect(lambda _: self._show())
        self._show()

    @property
    def axis(self) -> str:
        """The axis chosen."""
        return AXES[self.axes.choice]

    def show_found(self, found: Mapping[str, PlayFound]) -> None:
        """Show what was measured."""
        self._found = found
        for axis, row in self._rows.items():
            one = found.get(axis)
            row.show_value("–" if one is None else _words(one))
            row.show_detail("" if one is None or one.matters else self.tr("not told apart from none"))
        self._show()

    def _show(self) -> None:
        axis, gauge = self.axis, self.ways.choice == GAUGE
        self._wall.setVisible(not gauge and axis != "z")
        if gauge:
            what = self.tr("Five times from either side, read by you")
            text = self.tr(
                "A dial gauge on the bed against the head. The axis comes to its place from both sides; you "
                "type what the gauge reads. Needed where there is no wall, and to check the other way."
            )
        elif axis == "z":
            what = self.tr("Contact made and broken on the copper")
            text = self.tr(
                "Z is touched off and the clip at hand. A nut held by a spring, or by the head's weight, "
                "shows little here and lifts only under the cutting load: what passes teach stays in force."
            )
        else:
            what = self.tr("Contact made and broken on one wall")
            text = self.tr(
                "Z is touched off, a drill thinner than the hole is in, the clip at hand. The bit goes down "
                "0.5 mm and goes to and fro at one wall, never farther than 2 mm."
            )
        self._how.say("plain", what, text)
        one = self._found.get(axis)
        self.keep_button.setVisible(one is not None and axis != "z")
        self.keep_button.setText(self.tr("Keep {axis} with the machine").format(axis=axis.upper()))
        self.ways.setEnabled(axis != "z")
        if axis == "z" and gauge:
            self.ways.choose(CONTACT)
            self._show()

    def _follows(self) -> str:
        return self.tr(
            "Holes and marks are reached from one side, so their play cancels. Grooves are cut both ways: "
            "islands lose up to the play, and a closed loop runs on past its start so that it closes. No "
            "software cures play that the cutting force pushes across: cut lighter, or mend the nut."
        )

    def _measure(self) -> None:
        hole = "" if self.axis == "z" else str(self.holes.currentData())
        self.wanted.emit(self.axis, self.ways.choice, hole)


def _words(found: PlayFound) -> str:
    said = f"{1000 * found.value:.0f} ± {1000 * found.sigma:.0f} µm   R {1000 * found.repeatability:.0f} µm"
    return local(said).replace("-", "−")


class MeasuringPlay(QObject):
    """Wires the measurement of play."""

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._desk = desk
        self._holes: dict[str, Cut] = {}
        self.dialog: PlayDialog | None = None

    def open(self) -> None:
        """Look which holes there are, then show the dialog."""
        session = self._desk.bridge.session
        if session is not None:
            self._desk.ask(
                "walls",
                lambda _: tuple(
                    one.cut for one in candidates(session.derived, session.snapshot) if not one.mark
                ),
                self._show,
                self._desk.show_error,
            )

    def _show(self, found: object) -> None:
        session = self._desk.bridge.session
        if session is None or not isinstance(found, tuple):
            return
        self._holes = {cut.label: cut for cut in found}
        window = self._desk.window
        self.dialog = PlayDialog(window.theme, window.commands, window, found)
        self.dialog.show_found(play.newest(session))
        self.dialog.wanted.connect(self._measure)
        self.dialog.kept.connect(self._keep)
        # not modal: requests are answered in the window meanwhile
        self.dialog.setModal(False)
        self.dialog.show()

    def _measure(self, axis: str, way: int, hole: str) -> None:
        session = self._desk.bridge.session
        if session is None:
            return
        cut = self._holes.get(hole)

        def work(station: Station, progress: Progress) -> PlayFound:
            if way == GAUGE:
                return play.by_gauge(session, station, axis, progress=progress)
            return _by_contact(session, station, axis, cut, progress)

        self._desk.with_station(self.tr("Play of the axes"), work, self._measured)

    def _measured(self, found: object) -> None:
        session = self._desk.bridge.session
        if session is None or not isinstance(found, PlayFound):
            return
        said = fill(
            self.tr("Play of {axis}: {value:.3f} ± {sigma:.3f} mm."),
            axis=found.axis.upper(),
            value=found.value,
            sigma=found.sigma,
        )
        self._desk.say(said)
        if self.dialog is not None:
            self.dialog.show_found(play.newest(session))

    def _keep(self, axis: str) -> None:
        session = self._desk.bridge.session
        found = None if session is None else play.newest(session).get(axis)
        if session is not None and found is not None:
            play.use(session, found)
            self._desk.say(self.tr("Kept with the machine. Undo takes it back."))


def _by_contact(
    session: Session, station: Station, axis: str, cut: Cut | None, progress: Progress
) -> PlayFound:
    expected = None if cut is None else find.expected_place(session, cut)
    if axis == "z":
        layout = session.derived.layout(session.snapshot)
        x, y = find.likely(session).apply([layout.zero_spot])[0][:2]
        expected = (float(x), float(y))
    return play.by_contact(session, station, axis, hole=cut, expected=expected, progress=progress)
