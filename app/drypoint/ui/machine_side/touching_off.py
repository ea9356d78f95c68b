"""Touch off x and y: at an edge of the blank by paper or contact, or by the rim of a hole."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QDialog, QHBoxLayout, QVBoxLayout, QWidget

from drypoint.cuts.model import Cut
from drypoint.progress import Progress
from drypoint.session.actions import find
from drypoint.session.actions.touch_off import (
    Edge,
    edge_of,
    side_by_contact,
    side_by_paper,
    usual_diameter,
    zero_by_rim,
)
from drypoint.session.holes import candidates
from drypoint.session.session import Session
from drypoint.session.station import Station
from drypoint.ui.language.words import fill
from drypoint.ui.machine_side.desk import Desk
from drypoint.ui.machine_side.reference import bit_named
from drypoint.ui.menus import Commands, keep_run_keys
from drypoint.ui.parts.blocks import Note, button, words
from drypoint.ui.parts.fields import Choice, NumberField, Setting
from drypoint.ui.parts.segments import Segments

EDGES = ("left", "right", "front", "back")
PAPER, CONTACT, RIM = range(3)


class SidesDialog(QDialog):
    """Which edge or hole, with which bit, by paper, contact or rim.

    Signals
    -------
    edge_given(str, float, int, float) : edge, bit's diameter (mm), PAPER or CONTACT, paper (mm)
    rim_given(str, float) : name of the hole, bit's diameter (mm)
    """

    edge_given = Signal(str, float, int, float)
    rim_given = Signal(str, float)

    def __init__(
        self, commands: Commands, parent: QWidget, holes: Sequence[Cut], bit: float, paper: float
    ) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("Touch off X and Y"))
        self.setMinimumWidth(460)
        self.ways = Segments([self.tr("Paper"), self.tr("Contact"), self.tr("Rim of a hole")], self.tr("By"))
        self.edges = Segments(
            [self.tr("Left, X"), self.tr("Right, X"), self.tr("Front, Y"), self.tr("Back, Y")],
            self.tr("Edge of the blank"),
        )
        self.bit = NumberField(self.tr("Bit"), "mm", value=bit, decimals=3, least=0.05, most=12.0)
        self.paper = NumberField(self.tr("Paper"), "mm", value=paper, decimals=2, least=0.0, most=2.0)
        self.holes = Choice(self.tr("Hole"), 220)
        for cut in holes:
            self.holes.addItem(fill("{name}  {size:.1f} mm", name=cut.label, size=cut.diameter), cut.label)
        self._how = Note("plain", "")
        self.go_button = button("", "primary")
        cancel = button(self.tr("Cancel"))
        column = QVBoxLayout(self)
        column.setContentsMargins(20, 18, 20, 18)
        column.setSpacing(10)
        column.addWidget(words(self.tr("Touch off X and Y"), "section"))
        column.addWidget(self.ways)
        column.addWidget(self.edges)
        self._rows = {
            "bit": Setting(self.tr("Diameter of the bit where it meets the copper"), self.bit),
            "paper": Setting(self.tr("Thickness of the paper"), self.paper),
            "hole": Setting(self.tr("Hole"), self.holes),
        }
        for row in self._rows.values():
            column.addWidget(row)
        column.addWidget(self._how)
        foot = QHBoxLayout()
        foot.addStretch(1)
        foot.addWidget(cancel)
        foot.addWidget(self.go_button)
        column.addLayout(foot)
        keep_run_keys(self, commands)
        cancel.clicked.connect(self.reject)
        self.go_button.clicked.connect(self._give)
        self.ways.chosen.connect(lambda _: self._show())
        self._show()

    def _show(self) -> None:
        way = self.ways.choice
        self.edges.setVisible(way != RIM)
        self._rows["paper"].setVisible(way == PAPER)
        self._rows["hole"].setVisible(way == RIM)
        what, text, go = {
            PAPER: (
                self.tr("Spindle off. The bit holds the paper already"),
                self.tr(
                    "Bring the bit down beside the edge and towards it until a slip of paper between them "
                    "just drags. Nothing moves when you confirm; draw the bit off the edge then."
                ),
                self.tr("The paper drags"),
            ),
            CONTACT: (
                self.tr("Spindle off. The bit stands beside the edge"),
                self.tr(
                    "Less than 5 mm off it, above the copper's height; Z is touched off. The circuit is "
                    "checked, then the bit goes 0.5 mm below the copper and feels for the edge, no farther."
                ),
                self.tr("Feel for the edge"),
            ),
            RIM: (
                self.tr("Spindle off. The bit is thinner than the hole"),
                self.tr(
                    "It is let down into the hole and touches the rim on four sides. The hole's centre then "
                    "gets the coordinates where the hole should be."
                ),
                self.tr("Feel the rim"),
            ),
        }[way]
        self._how.say("plain", what, text)
        self.go_button.setText(go)
        self.go_button.setEnabled(way != RIM or self.holes.count() > 0)

    def _give(self) -> None:
        if self.ways.choice == RIM:
            self.rim_given.emit(str(self.holes.currentData()), self.bit.value)
        else:
            edge = EDGES[self.edges.choice]
            self.edge_given.emit(edge, self.bit.value, self.ways.choice, self.paper.value)
        self.accept()


class TouchingOff(QObject):
    """Wires touching off x and y."""

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._desk = desk
        self._holes: dict[str, Cut] = {}
        self.dialog: SidesDialog | None = None
        desk.window.jog.position.sides_wanted.connect(self.ask)

    def ask(self) -> None:
        """Look which holes there are, then ask."""
        session = self._desk.bridge.session
        if session is not None:
            self._desk.ask(
                "holes to touch",
                lambda _: tuple(one.cut for one in candidates(session.derived, session.snapshot)),
                self._open,
                self._desk.show_error,
            )

    def _open(self, found: object) -> None:
        session = self._desk.bridge.session
        if session is None or not isinstance(found, tuple):
            return
        self._holes = {cut.label: cut for cut in found}
        bit = usual_diameter(bit_named(session, self._desk.bit_in))
        window = self._desk.window
        paper = window.jog.position.paper
        self.dialog = SidesDialog(window.commands, window, found, bit or 1.0, paper)
        self.dialog.edge_given.connect(self._edge)
        self.dialog.rim_given.connect(self._rim)
        self.dialog.open()

    def _edge(self, name: str, bit: float, way: int, paper: float) -> None:
        def work(session: Session, station: Station) -> Edge:
            edge = edge_of(session, name, bit)
            if way == PAPER:
                side_by_paper(station, edge, paper)
            else:
                side_by_contact(station, edge)
            return edge

        said = self.tr("{axis} is known from the edge: it is at {at:.2f} mm.")
        self._start(work, lambda edge: fill(said, axis=edge.axis.upper(), at=edge.at))

    def _rim(self, name: str, bit: float) -> None:
        cut = self._holes[name]

        def work(session: Session, station: Station) -> float:
            return zero_by_rim(session, station, cut, find.expected_place(session, cut), bit).sigma

        said = self.tr("X and Y are known from the rim of {name}, to {sigma:.3f} mm.")
        self._start(work, lambda sigma: fill(said, name=name, sigma=sigma))

    def _start(self, work: Callable[[Session, Station], Any], words_: Callable[[Any], str]) -> None:
        session = self._desk.bridge.session
        if session is None:
            return

        def begin(station: Station, _progress: Progress) -> Any:
            return work(session, station)

        self._desk.with_station(
            self.tr("Touch off X and Y"), begin, lambda found: self._desk.say(words_(found))
        )
