"""Pages of what is measured and planned: surface, passes, reference."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout

from drypoint.ui.jog.reference import HoleLine
from drypoint.ui.language.words import local
from drypoint.ui.parts.blocks import Figure, Note, Row, button, empty
from drypoint.ui.parts.fields import NumberField, Setting
from drypoint.ui.parts.glyph import Mark
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


@dataclass(frozen=True, slots=True)
class TouchAdvice:
    """Whether more touches pay: in words, and how many are proposed."""

    what: str
    text: str
    count: int


class SurfacePage(Page):
    """The copper's height.

    Signals
    -------
    count_changed(float), plan(), touch(), touch_more(), read_table(), write_table()
    """

    count_changed = Signal(float)
    plan = Signal()
    touch = Signal()
    touch_more = Signal()
    read_table = Signal()
    write_table = Signal()

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
        self._advice = Note("plain", "")
        self._advice.hide()
        self.add(self._advice)
        self._add_circuit()
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
        self.write_button = button(self.tr("Write a table…"), "flat")
        self.add_actions(self.table_button, self.write_button)
        for each, signal in (
            (self.touch_button, self.touch),
            (self.plan_button, self.plan),
            (self.more_button, self.touch_more),
            (self.table_button, self.read_table),
            (self.write_button, self.write_table),
        ):
            each.clicked.connect(signal)
        self.show_surface(SurfacePageValues())

    def _add_circuit(self) -> None:
        """The steps that the contact circuit is checked by, before the first touch."""
        self.section(self.tr("Contact circuit"), self.tr("must read"))
        steps = (
            (self.tr("Clip off, bit in the air"), self.tr("open")),
            (self.tr("Clip held against the bit"), self.tr("closed")),
            (self.tr("Clip on the copper"), self.tr("open")),
        )
        self._circuit = [Row(self.theme, text, value, mark=Mark.TO_DO) for text, value in steps]
        for step in self._circuit:
            self.add(step)
        self._input = Row(self.theme, self.tr("Now the input reads"))
        self.add(self._input)
        self.show_input(None)

    def show_circuit(self, done: int, *, going: bool = False) -> None:
        """How many of the steps are passed, and whether the next one is being made."""
        values = (self.tr("open"), self.tr("closed"), self.tr("open"))
        for number, (step, value) in enumerate(zip(self._circuit, values, strict=True)):
            ready = going and number == done
            step.show_value(value, mark=Mark.DONE if number < done else (Mark.READY if ready else Mark.TO_DO))

    def show_input(self, closed: bool | None) -> None:
        """What the contact input reads; None while no machine is connected."""
        self._input.show_value({None: "–", True: self.tr("closed"), False: self.tr("open")}[closed])

    def show_advice(self, advice: TouchAdvice | None) -> None:
        """Whether more touches pay; None hides it."""
        self._advice.setVisible(advice is not None)
        count = 0
        if advice is not None:
            self._advice.say("plain", advice.what, advice.text)
            count = advice.count
        text = self.tr("Touch {count} more").format(count=count) if count else self.tr("Touch more")
        self.more_button.setText(text)

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
        self.write_button.setEnabled(not none)
        empty(self._notes)
        if values.stale:
            note = Note("caution", self.tr("The surface is stale"), values.stale)
            self._notes.addWidget(note)
        for text in values.give:
            self._notes.addWidget(Note("caution", self.tr("The laminate gives"), text))


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
