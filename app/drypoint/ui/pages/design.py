"""Pages of what is given: board, blank, bits, cuts."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QTimer, Signal
from PySide6.QtWidgets import QCheckBox, QLineEdit, QVBoxLayout

from drypoint.board.model import Finding, LayerFile, Side
from drypoint.cuts.model import Narrow
from drypoint.ui.forms.bits import BitsForm
from drypoint.ui.forms.blank import BlankForm
from drypoint.ui.forms.file_line import FileLine
from drypoint.ui.forms.values import BitValues, BlankValues
from drypoint.ui.forms.wear import WearForm
from drypoint.ui.language.words import fill, local, told
from drypoint.ui.pages.places import PlaceLine, PlaceList
from drypoint.ui.parts.blocks import Figure, button, empty, rule, words
from drypoint.ui.parts.explain import explain
from drypoint.ui.parts.fields import NumberField, Setting
from drypoint.ui.parts.page import Page
from drypoint.ui.parts.segments import Segments
from drypoint.ui.theme.sheet import give_look
from drypoint.ui.theme.theme import Theme
from drypoint.wording import strung


@dataclass(frozen=True, slots=True)
class BoardPageValues:
    """What the board page says; all in words ready to be shown but the counts."""

    nets: int = 0
    size: str = ""
    source: str = ""
    holes: str = ""
    slots: str = ""
    files: tuple[LayerFile, ...] = ()
    findings: tuple[Finding, ...] = ()


def _line(page: Page, finding: Finding) -> PlaceLine:
    """A place on the board is a link that zooms there; a file or line is only said."""
    if finding.at is None:
        said = strung(tuple(part for part in (finding.where, finding.hint) if part))
        return PlaceLine(told(finding.what), told(said), "", None, finding)
    where = told(finding.where) or _at(page, finding.at)
    return PlaceLine(told(finding.what), told(finding.hint), where, finding.at, finding)


def _at(page: Page, at: tuple[float, float]) -> str:
    return fill(page.tr("at {x:.2f}, {y:.2f} mm"), x=at[0], y=at[1])


class BoardPage(Page):
    """The design as it was read.

    Signals
    -------
    finding_chosen(object) : `Finding` to be shown on the canvas
    change_files() : open the files again
    name_changed(str), side_changed(object) : another name of the job, another `Side`
    both_changed(bool) : whether the other side is milled too
    role_changed(str, object) : file name and the `Role` chosen for it
    demo_wanted() : make a job of the demo's board

    Attributes
    ----------
    turning : QVBoxLayout
        Room for how the second side is found.
    """

    demo_wanted = Signal()
    finding_chosen = Signal(object)
    change_files = Signal()
    name_changed = Signal(str)
    side_changed = Signal(object)
    both_changed = Signal(bool)
    role_changed = Signal(str, object)

    def __init__(self, theme: Theme) -> None:
        super().__init__(theme, "")
        self.title.setText(self.tr("Board"))
        self.lead.setText(self.tr("The design, as seen from the side being milled."))
        self.lead.show()
        self._figure = Figure()
        self.add(self._figure)
        self._facts = self.add_facts(
            {
                "size": self.tr("Size"),
                "source": self.tr("Nets are known from"),
                "holes": self.tr("Holes"),
                "slots": self.tr("Slots"),
            }
        )
        self.section(self.tr("Settings"))
        self.name_field = QLineEdit()
        self.name_field.setFixedWidth(150)
        self.name_field.setAccessibleName(self.tr("Name of the job"))
        self.name_field.editingFinished.connect(lambda: self.name_changed.emit(self.name_field.text()))
        self.sides = Segments([self.tr("Top"), self.tr("Bottom")], self.tr("Side being milled"), chosen=1)
        self.sides.chosen.connect(lambda number: self.side_changed.emit(list(Side)[number]))
        explain(self.add(Setting(self.tr("Name of the job"), self.name_field)), "board.name")
        explain(self.add(Setting(self.tr("Side being milled"), self.sides)), "board.side")
        self.both = QCheckBox(self.tr("Mill both sides, outline last"))
        self.both.clicked.connect(self.both_changed)
        self.add(self.both)
        self.turning = QVBoxLayout()
        self.body.addLayout(self.turning)
        self.section(self.tr("Files"))
        self._values = BoardPageValues()
        self._files = QVBoxLayout()
        self.body.addLayout(self._files)
        self.places = PlaceList(theme, self._line)
        self.add(self.places)
        self.places.place_chosen.connect(lambda line: self.finding_chosen.emit(line.about))
        self.change_button = button(self.tr("Change files…"))
        self.add_actions(self.change_button)
        self.demo_button = button(self.tr("Try the demo board"))
        self.demo_button.setToolTip(
            self.tr("A board of our own, ready to be rehearsed on the simulated machine.")
        )
        self.demo_button.clicked.connect(self.demo_wanted)
        self.add_actions(self.demo_button)
        self.change_button.clicked.connect(self.change_files)

    def show_board(self, values: BoardPageValues) -> None:
        """Show a board."""
        if values.files:
            self._figure.show_figure(str(values.nets), self.tr("nets, each to be an island of its own"))
        else:
            self._figure.show_figure("–", self.tr("No design files yet."))
        for key, row in self._facts.items():
            row.show_value(getattr(values, key))
        before, self._values = self._values, values
        if values.files != before.files:
            QTimer.singleShot(0, self, self._list_files)  # a turn of its own: a dense board has many
        if values.findings != before.findings:
            self.places.show_places(values.findings)

    def _line(self, place: object) -> PlaceLine:
        assert isinstance(place, Finding)
        return _line(self, place)

    def _list_files(self) -> None:
        empty(self._files)
        for file in self._values.files:
            line = FileLine(file, narrow=True)
            line.role_changed.connect(self.role_changed)
            self._files.addWidget(line)

    def show_whether_new(self, new: bool) -> None:
        """Without a job the button begins one, and is what to press first."""
        self.change_button.setText(self.tr("New job…") if new else self.tr("Change files…"))
        give_look(self.change_button, "primary" if new else "")
        self.demo_button.setVisible(new)

    def show_settings(self, name: str, side: Side) -> None:
        """Name and side as they are set; no signal."""
        if not self.name_field.isModified() or not self.name_field.hasFocus():
            self.name_field.setText(name)
        self.sides.choose(list(Side).index(side))


class BlankPage(Page):
    """The blank and its clamps; ``form`` has the fields and signals."""

    def __init__(self, theme: Theme, values: BlankValues) -> None:
        super().__init__(theme, "")
        self.title.setText(self.tr("Blank"))
        self.lead.setText(self.tr("Where the copper lies, and where the bit must not go."))
        self.lead.show()
        self.form = BlankForm(theme, values)
        self.add(self.form)


class BitsPage(Page):
    """The bits at hand; ``form`` has the fields and signals."""

    def __init__(self, theme: Theme, values: BitValues) -> None:
        super().__init__(theme, "")
        self.title.setText(self.tr("Bits"))
        self.lead.setText(self.tr("What cuts, and how fast."))
        self.lead.show()
        self.form = BitsForm(theme, values)
        self.add(self.form)
        self.add(rule())
        self.add(words(self.tr("Wear"), "section"))
        self.wear = WearForm(theme)
        self.add(self.wear)


@dataclass(frozen=True, slots=True)
class CutsPageValues:
    """What the cuts page says. Lengths mm, times in words."""

    length: float = 0.0
    loops: int = 0
    time: str = ""
    narrow_length: float = 0.0
    max_bite: float = 0.0
    outline: str = ""
    holes: str = ""
    impossible: tuple[Narrow, ...] = ()
    check: str = ""
    """Result of the island check in words; empty if it was not done."""
    clean: bool = True
    findings: tuple[Finding, ...] = ()
    """Of the island check and of holes and outline."""


class CutsPage(Page):
    """Grooves, holes and outline.

    Signals
    -------
    edited(str, float) : "width", "bite", "tabs", "tab_width", "tab_height" and the new value
    plan() : lay the cuts
    place_chosen(object) : (x, y) to be shown on the canvas
    """

    edited = Signal(str, float)
    plan = Signal()
    place_chosen = Signal(object)

    def __init__(self, theme: Theme) -> None:
        super().__init__(theme, "")
        self.title.setText(self.tr("Cuts"))
        self.lead.setText(self.tr("Where the grooves run, and what they cannot part."))
        self.lead.show()
        self._figure = Figure()
        self.add(self._figure)
        self._facts = self.add_facts(
            {
                "loops": self.tr("Loops"),
                "time": self.tr("One pass takes about"),
                "narrow": self.tr("Narrow places"),
                "max_bite": self.tr("Deepest bite into copper"),
                "holes": self.tr("Holes"),
                "outline": self.tr("Outline"),
                "check": self.tr("Island check"),
            }
        )
        self.section(self.tr("Settings"))
        self.fields = {
            "width": NumberField(self.tr("Groove width"), "mm", decimals=3, least=0.05, most=2.0, step=0.01),
            "bite": NumberField(self.tr("Bite allowed"), "mm", decimals=2, least=0.0, most=0.5),
            "tabs": NumberField(self.tr("Tabs"), "", decimals=0, least=0.0, most=40.0),
            "tab_width": NumberField(self.tr("Tab width"), "mm", least=0.5, most=20.0),
            "tab_height": NumberField(self.tr("Tab height"), "mm", least=0.1, most=3.0),
        }
        for name, field in self.fields.items():
            field.edited.connect(lambda value, name=name: self.edited.emit(name, value))
            self.add(Setting(field.accessibleName(), field))
        self.places = PlaceList(theme, self._line)
        self.add(self.places)
        self.places.place_chosen.connect(lambda line: self.place_chosen.emit(line.at))
        self.plan_button = self.main_button = button(self.tr("Lay the cuts"), "primary")
        self.add_actions(self.plan_button)
        self.plan_button.clicked.connect(self.plan)

    def show_cuts(self, values: CutsPageValues) -> None:
        """Show what was laid."""
        none = values.loops == 0
        length = f"{values.length:,.0f}".replace(",", "\u202f")
        explained = self.tr("No cuts are laid.") if none else self.tr("mm of groove")
        self._figure.show_figure("–" if none else length, explained)
        texts = {
            "loops": str(values.loops),
            "time": values.time,
            "narrow": local(f"{values.narrow_length:.1f} mm") if values.narrow_length else self.tr("none"),
            "max_bite": local(f"{values.max_bite:.3f} mm") if values.max_bite else self.tr("none"),
            "holes": values.holes,
            "outline": values.outline,
            "check": values.check or "–",
        }
        for key, text in texts.items():
            self._facts[key].show_value("–" if none else text)
        self.places.show_places((*values.impossible, *values.findings))

    def _line(self, place: object) -> PlaceLine:
        """A finding, or a gap that the bit does not fit."""
        if isinstance(place, Finding):
            return _line(self, place)
        assert isinstance(place, Narrow)
        what = self.tr("{a} and {b} stay joined").format(a=place.nets[0], b=place.nets[1])
        text = fill(
            self.tr("The gap is {gap:.3f} mm, {length:.1f} mm long. {hint}"),
            gap=place.gap,
            length=place.length,
            hint=place.hint,
        )
        return PlaceLine(what, text, _at(self, place.at), place.at, place)
