"""The sheet of the legend by laser: what it marks, how the beam is driven, and the burn grid."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QCheckBox, QDialog, QGridLayout, QLineEdit, QPushButton, QVBoxLayout, QWidget

from drypoint.cuts.burn_grid import BurnGrid, Cell
from drypoint.session.laser_safety import BARE
from drypoint.session.settings import CouponSettings, LaserSection
from drypoint.ui.language.words import fill, told
from drypoint.ui.menus import Commands, keep_run_keys
from drypoint.ui.parts.blocks import Figure, Note, Row, button, empty
from drypoint.ui.parts.corner_choice import CornerChoice
from drypoint.ui.parts.explain import explain
from drypoint.ui.parts.fields import NumberField, Setting
from drypoint.ui.parts.page import Page
from drypoint.ui.parts.segments import Segments
from drypoint.ui.theme.theme import Theme


@dataclass(frozen=True, slots=True)
class LegendFacts:
    """What the sheet says of the legend; ``rows`` are names and values in words."""

    figure: str = "–"
    text: str = ""
    rows: tuple[tuple[str, str], ...] = ()
    what: str = ""
    hint: str = ""


class LegendSheet(QDialog):
    """Material, beam, rows, and what is done with them; stays open beside the work.

    Signals
    -------
    edited(str, object) : name of a setting of the laser, its new value
    placed(str, object) : name of a setting of the burn grid's place, its new value
    focus(), walk(), mark(), take_up(), burn() : wishes
    best(int, int) : row and column of the field that looks best
    """

    edited = Signal(str, object)
    placed = Signal(str, object)
    focus = Signal()
    walk = Signal()
    mark = Signal()
    take_up = Signal()
    burn = Signal()
    best = Signal(int, int)

    def __init__(self, theme: Theme, commands: Commands, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self.setWindowTitle(self.tr("Legend by laser"))
        self.resize(460, 780)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        self.page = Page(theme, self.tr("Legend by laser"))
        column.addWidget(self.page)
        self._figure = Figure()
        self.page.add(self._figure)
        self._rows = QVBoxLayout()
        self._rows.setSpacing(0)
        self.page.body.addLayout(self._rows)
        self._material()
        self._beam()
        self._grid_section()
        self._actions()
        keep_run_keys(self, commands)

    def _material(self) -> None:
        self.page.section(self.tr("What is marked"))
        self.coating = QLineEdit()
        self.coating.setAccessibleName(self.tr("Coating"))
        self.coating.setPlaceholderText(self.tr("name of the coating"))
        self.coating.editingFinished.connect(lambda: self.edited.emit("coating", self.coating.text().strip()))
        self.page.add(Setting(self.tr("Coating"), self.coating))
        self.boxes = {
            "declared_safe": QCheckBox(self.tr("Its maker declares it safe for laser work")),
            "bare": QCheckBox(self.tr("Bare laminate instead: not advised")),
            "bare_accepted": QCheckBox(self.tr("I know of its fumes and fire, and have seen to both")),
        }
        for name, box in self.boxes.items():
            explain(box, f"laser.{name}")
            box.clicked.connect(lambda on, name=name: self.edited.emit(name, bool(on)))
            self.page.add(box)
        self._bare = Note("caution", self.tr("Bare laminate"), told(BARE))
        self.page.add(self._bare)

    def _beam(self) -> None:
        self.page.section(self.tr("How it is marked"))
        self.kind = Segments([self.tr("Spark rows"), self.tr("Lines")], self.tr("Marks"))
        self.kind.chosen.connect(lambda number: self.edited.emit("pulses", number == 0))
        self.page.add(self.kind)
        self.single = QCheckBox(self.tr("One row for every stroke: quicker, thinner"))
        explain(self.single, "laser.single")
        self.single.clicked.connect(lambda on: self.edited.emit("single", bool(on)))
        self.page.add(self.single)
        self.fields: dict[str, tuple[NumberField, float]] = {}
        for name, label, unit, decimals, least, most, factor in (
            ("power", self.tr("Power"), "%", 1, 1.0, 100.0, 100.0),
            ("dwell", self.tr("Dwell of a pulse"), "ms", 1, 1.0, 500.0, 1000.0),
            ("pitch", self.tr("Pitch of pulses"), "mm", 3, 0.02, 2.0, 1.0),
            ("spot", self.tr("Spot"), "mm", 3, 0.02, 1.0, 1.0),
            ("hatch", self.tr("Rows apart"), self.tr("spots"), 2, 0.2, 4.0, 1.0),
            ("feed", self.tr("Feed of lines"), "mm/min", 0, 10.0, 5000.0, 1.0),
            ("clear", self.tr("Kept free round pads and holes"), "mm", 2, 0.0, 2.0, 1.0),
            ("focus_seconds", self.tr("Focus light goes out after"), "s", 0, 1.0, 60.0, 1.0),
        ):
            field = NumberField(
                label, unit, decimals=decimals, least=least, most=most, width=74, unit_width=60
            )
            field.edited.connect(lambda value, name=name, by=factor: self.edited.emit(name, value / by))
            row = Setting(label, field)
            explain(row, f"laser.{name}")
            self.page.add(row)
            self.fields[name] = (field, factor)

    def _grid_section(self) -> None:
        self.page.section(self.tr("Burn grid"))
        self.corner = CornerChoice(self.tr("Corner of the blank"))
        row = Setting(self.tr("Corner of the blank"), self.corner)
        explain(row, "coupons.grid")
        self.page.add(row)
        self.at_spot = QCheckBox(self.tr("Where the light spot stands instead"))
        explain(self.at_spot, "coupons.grid_at_spot")
        self.page.add(self.at_spot)
        self.corner.chosen.connect(lambda corner: self.placed.emit("grid", corner))
        self.at_spot.clicked.connect(lambda on: self.placed.emit("grid_at_spot", bool(on)))
        self._grid_note = Note(
            "plain",
            self.tr("Power upwards, dwell to the right"),
            self.tr(
                "It is burnt in the waste, on the same coating. Then choose the field that looks best: its "
                "values are kept with the coating."
            ),
        )
        self.page.add(self._grid_note)
        self.burn_button = button(self.tr("Burn a grid"))
        self.burn_button.clicked.connect(self.burn)
        self.page.add(self.burn_button)
        self._grid = QWidget()
        self._shown: tuple[Cell, ...] = ()
        self._fields: dict[tuple[float, float], QPushButton] = {}
        self._cells = QGridLayout(self._grid)
        self._cells.setSpacing(4)
        self.page.add(self._grid)
        self._grid.hide()

    def _actions(self) -> None:
        self._note = self.page.note(Note("caution", ""))
        self.mark_button = button(self.tr("Mark the legend"), "primary")
        self.take_up_button = button(self.tr("Take the broken run up"))
        self.walk_button = button(self.tr("Dark walk"))
        self.focus_button = button(self.tr("Focus light"))
        self.page.add_actions(self.mark_button)
        self.page.add_actions(self.walk_button, self.focus_button)
        self.page.add_actions(self.take_up_button)
        self.mark_button.clicked.connect(self.mark)
        self.take_up_button.clicked.connect(self.take_up)
        self.walk_button.clicked.connect(self.walk)
        self.focus_button.clicked.connect(self.focus)

    # showing

    def show_settings(self, chosen: LaserSection, place: CouponSettings) -> None:
        """Fill every field."""
        self.corner.show_corner(place.grid)
        self.corner.setEnabled(not place.grid_at_spot)
        self.at_spot.setChecked(place.grid_at_spot)
        if self.coating.text() != chosen.coating:
            self.coating.setText(chosen.coating)
        for name, box in self.boxes.items():
            box.setChecked(bool(getattr(chosen, name)))
        self.boxes["declared_safe"].setEnabled(not chosen.bare and bool(chosen.coating))
        self.boxes["bare_accepted"].setVisible(chosen.bare)
        self._bare.setVisible(chosen.bare)
        self.kind.choose(0 if chosen.pulses else 1)
        self.single.setChecked(chosen.single)
        for name, (field, factor) in self.fields.items():
            field.set_value(getattr(chosen, name) * factor)

    def show_facts(self, facts: LegendFacts) -> None:
        """What the legend comes to."""
        self._figure.show_figure(facts.figure, facts.text)
        empty(self._rows)
        for name, value in facts.rows:
            self._rows.addWidget(Row(self._theme, name, value))
        self._note.setVisible(bool(facts.what))
        self._note.say("caution", facts.what, facts.hint)

    def show_usable(self, connected: bool, marks: bool, broken: bool, grid: bool) -> None:
        """What can be done now; ``broken``: a run of the laser was broken off, ``grid``: that of a grid."""
        self.take_up_button.setVisible(broken)
        self.take_up_button.setEnabled(connected and (marks or grid))
        for each in (self.walk_button, self.mark_button):
            each.setEnabled(connected and marks)
        for each in (self.focus_button, self.burn_button):
            each.setEnabled(connected)

    def show_grid(self, grid: BurnGrid | None, kept: Sequence[tuple[float, float]] = ()) -> None:
        """The fields to choose from, as they lie; ``kept`` are (power, dwell) chosen before."""
        cells = () if grid is None else grid.cells
        if cells != self._shown:
            self._shown = cells
            self._lay(cells)
        self._grid.setVisible(bool(cells))
        for (power, dwell), each in self._fields.items():
            each.setChecked((power, dwell) in kept)

    def _lay(self, cells: Sequence[Cell]) -> None:
        """A button for every field, in the place it has on the blank."""
        for old in self._fields.values():
            self._cells.removeWidget(old)
            old.setParent(None)
            old.deleteLater()
        self._fields = {}
        rows = 1 + max((cell.row for cell in cells), default=0)
        for cell in cells:
            power, dwell = 100 * cell.power, 1000 * cell.dwell
            each = button(f"{power:.0f} %\n{dwell:.0f} ms", "only-segment")
            name = fill(self.tr("{power:.0f} % for {dwell:.0f} ms"), power=power, dwell=dwell)
            each.setAccessibleName(name)
            each.setToolTip(name)
            each.setCheckable(True)
            each.setStyleSheet("padding: 2px; min-width: 40px; min-height: 34px")
            each.clicked.connect(lambda _=False, c=cell: self.best.emit(c.row, c.column))
            self._cells.addWidget(each, rows - 1 - cell.row, cell.column)
            self._fields[cell.power, cell.dwell] = each
