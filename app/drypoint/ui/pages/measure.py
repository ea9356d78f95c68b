"""Pages of what is measured and planned: surface, passes, reference."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from drypoint.ui.canvas.legend import Sample, Swatch
from drypoint.ui.jog.reference import HoleLine
from drypoint.ui.language.words import local
from drypoint.ui.parts.blocks import Bar, Figure, Note, Row, button, empty, rule, words
from drypoint.ui.parts.fields import NumberField, Setting
from drypoint.ui.parts.glyph import Glyph, Mark
from drypoint.ui.parts.page import Page
from drypoint.ui.theme.theme import Theme


@dataclass(frozen=True, slots=True)
class SurfacePageValues:
    """What the surface page says; µm."""

    touches: int = 0
    low: float = 0.0
    high: float = 0.0
    spread: float = 0.0
    worst: float = 0.0
    noise: float = 0.0
    rejected: int = 0
    time: str = ""
    stale: str = ""
    give: tuple[str, ...] = ()


class SurfacePage(Page):
    """The copper's height.

    Signals
    -------
    count_changed(float), plan(), touch(), touch_more(), read_table()
    """

    count_changed = Signal(float)
    plan = Signal()
    touch = Signal()
    touch_more = Signal()
    read_table = Signal()

    def __init__(self, theme: Theme) -> None:
        super().__init__(theme, "")
        self.title.setText(self.tr("Surface"))
        self.lead.setText(self.tr("The bit touches the copper where the grooves will run."))
        self.lead.show()
        self._figure = Figure()
        self.add(self._figure)
        self._facts = {
            key: Row(theme, name)
            for key, name in (
                ("range", self.tr("Height")),
                ("worst", self.tr("Worst spread on a groove")),
                ("noise", self.tr("Repeat of a touch")),
                ("rejected", self.tr("Touches left out")),
                ("time", self.tr("Touching takes about")),
            )
        }
        for row in self._facts.values():
            self.add(row)
        self.section(self.tr("Touch plan"))
        self.count = NumberField(self.tr("Touches"), "", decimals=0, least=6.0, most=400.0, step=4.0)
        self.count.edited.connect(self.count_changed)
        self.add(Setting(self.tr("Touches"), self.count))
        self._notes = QVBoxLayout()
        self._notes.setSpacing(8)
        self.body.addLayout(self._notes)
        self.touch_button = button(self.tr("Touch the copper"), "primary")
        self.plan_button = button(self.tr("Plan touches"))
        self.more_button = button(self.tr("Touch more"))
        self.table_button = button(self.tr("Read a table…"), "flat")
        self.add_actions(self.touch_button)
        self.add_actions(self.plan_button, self.more_button)
        self.add_actions(self.table_button)
        for each, signal in (
            (self.touch_button, self.touch),
            (self.plan_button, self.plan),
            (self.more_button, self.touch_more),
            (self.table_button, self.read_table),
        ):
            each.clicked.connect(signal)
        self.show_surface(SurfacePageValues())

    def show_surface(self, values: SurfacePageValues) -> None:
        """Show a surface; no touches gives the empty state."""
        none = values.touches == 0
        figure = "–" if none else f"{values.spread:.0f}"
        text = self.tr("No touches yet.") if none else self.tr("µm spread in the middle of all places")
        self._figure.show_figure(figure, text)
        span = f"{values.low:+.0f} … {values.high:+.0f} µm".replace("-", "−")
        shown = {
            "range": span,
            "worst": f"{values.worst:.0f} µm",
            "noise": local(f"{values.noise:.1f} µm"),
            "rejected": str(values.rejected),
            "time": values.time or "–",
        }
        for key, row in self._facts.items():
            row.show_value("–" if none and key != "time" else shown[key])
        self.more_button.setEnabled(not none)
        empty(self._notes)
        if values.stale:
            note = Note("caution", self.tr("The surface is stale"), values.stale)
            self._notes.addWidget(note)
        for text in values.give:
            self._notes.addWidget(Note("caution", self.tr("The laminate gives"), text))


@dataclass(frozen=True, slots=True)
class PassLine:
    """One pass of the list: its state, depth (mm), length (mm) and share of all grooves."""

    name: str
    mark: Mark
    depth: float
    length: float
    share: float


@dataclass(frozen=True, slots=True)
class PassesPageValues:
    """What the passes page says; lengths mm, ``through_share`` 0..1."""

    through_share: float | None = None
    after: str = ""
    through: float = 0.0
    doubtful: float = 0.0
    not_through: float = 0.0
    passes: tuple[PassLine, ...] = ()
    note_what: str = ""
    note_text: str = ""
    next_name: str = ""


class PassesPage(Page):
    """How deep, how often, and what is through.

    Signals
    -------
    edited(str, float) : "target" (share), "deepest" (mm) or "join" (mm)
    plan(), island_touch(), rehearse()
    """

    edited = Signal(str, float)
    plan = Signal()
    island_touch = Signal()
    rehearse = Signal()

    def __init__(self, theme: Theme) -> None:
        super().__init__(theme, "")
        self.title.setText(self.tr("Passes"))
        self.lead.setText(self.tr("Only what may still be joined is cut again."))
        self.lead.show()
        self._figure = Figure()
        self.add(self._figure)
        self._states = self._state_rows()
        self.section(self.tr("Passes"), self.tr("depth"))
        self._passes = QVBoxLayout()
        self._passes.setSpacing(8)
        self.body.addLayout(self._passes)
        self.add(rule())
        self._add_settings()
        self._note = self.note(Note("caution", ""))
        self.plan_button = button("", "primary")
        self.touch_button = button(self.tr("Island touch"))
        self.rehearse_button = button(self.tr("Rehearse"))
        self.add_actions(self.plan_button)
        self.add_actions(self.touch_button, self.rehearse_button)
        self.plan_button.clicked.connect(self.plan)
        self.touch_button.clicked.connect(self.island_touch)
        self.rehearse_button.clicked.connect(self.rehearse)
        self.show_passes(PassesPageValues())

    def _state_rows(self) -> list[Row]:
        rows = []
        for sample, name in (
            (Sample.THROUGH, self.tr("through")),
            (Sample.DOUBTFUL, self.tr("doubtful")),
            (Sample.NOT_THROUGH, self.tr("not through")),
        ):
            line = QWidget()
            row = QHBoxLayout(line)
            row.setContentsMargins(0, 0, 0, 0)
            value = Row(self.theme, name)
            row.addWidget(Swatch(self.theme, sample))
            row.addWidget(value, 1)
            rows.append(value)
            self.add(line)
        return rows

    def _add_settings(self) -> None:
        self.fields = {
            "target": NumberField(
                self.tr("Sure at every spot"), "%", decimals=1, least=50.0, most=99.9, step=0.5
            ),
            "deepest": NumberField(
                self.tr("Deepest cut"), "mm", decimals=3, least=0.02, most=1.0, step=0.005
            ),
            "join": NumberField(self.tr("Join gaps up to"), "mm", decimals=1, least=0.0, most=20.0),
        }
        for name, field in self.fields.items():
            factor = 0.01 if name == "target" else 1.0
            field.edited.connect(lambda value, n=name, f=factor: self.edited.emit(n, value * f))
            self.add(Setting(field.accessibleName(), field))

    def show_passes(self, values: PassesPageValues) -> None:
        """Show plan and prediction."""
        if values.through_share is None:
            self._figure.show_figure("–", self.tr("No pass is planned yet."))
        else:
            text = self.tr("% of the groove length is through {after}").format(after=values.after)
            self._figure.show_figure(local(f"{100 * values.through_share:.1f}"), text)
        for row, length in zip(
            self._states, (values.through, values.doubtful, values.not_through), strict=True
        ):
            row.show_value(_length(length))
        empty(self._passes)
        for line in values.passes:
            self._passes.addWidget(_pass_line(self.theme, line))
        self._note.setVisible(bool(values.note_what))
        if values.note_what:
            self._note.say("caution", values.note_what, values.note_text)
        name = values.next_name or self.tr("the first pass")
        self.plan_button.setText(self.tr("Plan {name}").format(name=name))
        self.plan_button.setVisible(bool(values.next_name) or not values.passes)


def _pass_line(theme: Theme, line: PassLine) -> QWidget:
    made = QWidget()
    row = QHBoxLayout(made)
    row.setContentsMargins(0, 0, 0, 0)
    row.setSpacing(8)
    row.addWidget(Glyph(theme, line.mark))
    column = QVBoxLayout()
    column.setSpacing(3)
    head = QHBoxLayout()
    head.addWidget(words(line.name, "value"))
    head.addStretch(1)
    head.addWidget(words(local(f"{line.depth:.3f} mm"), "value", right=True))
    low = QHBoxLayout()
    low.setSpacing(8)
    bar = Bar(theme, line.share, accent=line.mark is Mark.READY)
    low.addWidget(bar, 1)
    length = words(_length(line.length), "caption", right=True)
    length.setMinimumWidth(74)
    low.addWidget(length)
    column.addLayout(head)
    column.addLayout(low)
    row.addLayout(column, 1)
    return made


def _length(value: float) -> str:
    return f"{value:,.0f} mm".replace(",", "\u202f")


@dataclass(frozen=True, slots=True)
class ReferencePageValues:
    """What the reference page says; in words where mixed units stand together."""

    residual: float | None = None
    spare: str = ""
    holes: tuple[HoleLine, ...] = ()
    next_what: str = ""
    next_text: str = ""
    facts: tuple[tuple[str, str], ...] = ()
    worst: tuple[tuple[str, str], ...] = ()
    stale_what: str = ""
    stale_text: str = ""


class ReferencePage(Page):
    """Where the board is now.

    Signals
    -------
    make_holes()
    """

    make_holes = Signal()

    def __init__(self, theme: Theme) -> None:
        super().__init__(theme, "")
        self.title.setText(self.tr("Reference"))
        self.lead.setText(self.tr("Find the board again from holes whose place in the design is known."))
        self.lead.show()
        self._figure = Figure()
        self.add(self._figure)
        self.section(self.tr("Hole, design place"), self.tr("residual"))
        self._holes = QVBoxLayout()
        self._holes.setSpacing(0)
        self.body.addLayout(self._holes)
        self._next = Note("plain", "")
        self.add(self._next)
        self.section(self.tr("What the fit says"))
        self._facts = QVBoxLayout()
        self._facts.setSpacing(0)
        self.body.addLayout(self._facts)
        self.section(self.tr("Tightest hole"))
        self._worst = QVBoxLayout()
        self._worst.setSpacing(0)
        self.body.addLayout(self._worst)
        self._stale = self.note(Note("caution", ""))
        self.holes_button = button(self.tr("Drill reference holes…"))
        self.add_actions(self.holes_button)
        self.holes_button.clicked.connect(self.make_holes)
        self.show_fit(ReferencePageValues())

    def show_fit(self, values: ReferencePageValues) -> None:
        """Show holes and fit."""
        if values.residual is None:
            self._figure.show_figure("–", self.tr("Touch two holes at least; a third one tells errors."))
        else:
            text = self.tr("mm residual, {spare}").format(spare=values.spare)
            self._figure.show_figure(local(f"{values.residual:.2f}"), text)
        empty(self._holes)
        for hole in values.holes:
            left = "–" if hole.residual is None else local(f"{hole.residual:.3f} mm")
            left = self.tr("next") if hole.mark is Mark.READY else left
            place = local(f"{hole.number}   {hole.design[0]:.2f}, {hole.design[1]:.2f}").replace("-", "−")
            self._holes.addWidget(Row(self.theme, place, left, mark=hole.mark))
        self._next.setVisible(bool(values.next_what))
        if values.next_what:
            self._next.say("plain", values.next_what, values.next_text)
        self._fill(self._facts, values.facts)
        self._fill(self._worst, values.worst)
        self._stale.setVisible(bool(values.stale_what))
        if values.stale_what:
            self._stale.say("caution", values.stale_what, values.stale_text)

    def _fill(self, rows: QVBoxLayout, facts: Sequence[tuple[str, str]]) -> None:
        empty(rows)
        for name, value in facts or (("–", ""),):
            rows.addWidget(Row(self.theme, name, value))
