"""Pages of what is measured and planned: surface, passes."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout

from drypoint.ui.language.words import local, told
from drypoint.ui.parts.blocks import Figure, Note, Row, button, empty
from drypoint.ui.parts.explain import explain
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
    waves: tuple[str, ...] = ()


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
        self._facts = self.add_facts(
            {
                "range": self.tr("Height"),
                "worst": self.tr("Worst spread on a groove"),
                "noise": self.tr("Repeat of a touch"),
                "rejected": self.tr("Touches left out"),
                "time": self.tr("Touching takes about"),
            }
        )
        self._waves = Row(theme, self.tr("Waves found"))
        self.add(self._waves)
        self._advice = Note("plain", "")
        self._advice.hide()
        self.add(self._advice)
        self._add_circuit()
        self.section(self.tr("Touch plan"))
        self.count = NumberField(
            self.tr("Touches"), "", decimals=0, least=6.0, most=400.0, step=4.0, width=66, unit_width=56
        )
        self.count.edited.connect(self.count_changed)
        explain(self.add(Setting(self.tr("Touches"), self.count)), "surface.touches")
        self._notes = QVBoxLayout()
        self._notes.setSpacing(8)
        self.body.addLayout(self._notes)
        self.touch_button = self.main_button = button(self.tr("Touch the copper"), "primary")
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
        self._waves.setVisible(bool(values.waves))
        self._waves.show_value(str(len(values.waves)))
        known = self.tr("They are foretold between the touches too. A bent lead screw makes such waves.")
        self._waves.show_detail("\n".join((*map(told, values.waves), known)) if values.waves else "")
        self.more_button.setEnabled(not none)
        self.write_button.setEnabled(not none)
        empty(self._notes)
        if values.stale:
            note = Note("caution", self.tr("The surface is stale"), values.stale)
            self._notes.addWidget(note)
        for text in values.give:
            self._notes.addWidget(Note("caution", self.tr("The laminate gives"), text))
