"""The passes page: what is through, how to cut, what is cut next."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import Signal
from PySide6.QtWidgets import (
    QButtonGroup,
    QCheckBox,
    QHBoxLayout,
    QRadioButton,
    QVBoxLayout,
    QWidget,
)

from drypoint.session.net_reach import NetReach
from drypoint.ui.canvas.legend import Sample, Swatch
from drypoint.ui.language.words import fill, local
from drypoint.ui.pages.nets import NetList
from drypoint.ui.parts.blocks import Bar, Elided, Figure, Note, Row, button, empty, rule, words
from drypoint.ui.parts.fields import NumberField, Setting
from drypoint.ui.parts.glyph import Glyph, Mark
from drypoint.ui.parts.page import Page
from drypoint.ui.theme.theme import Theme

BRUSH = 2.0
"""Usual width of the brush, mm."""


@dataclass(frozen=True, slots=True)
class PassLine:
    """One pass of the list: its state, depth (mm), length (mm) and share of all grooves."""

    name: str
    mark: Mark
    depth: float
    length: float
    share: float


@dataclass(frozen=True, slots=True)
class ChoiceLine:
    """A way to cut: what it is called, what follows from it, and whether it is the one chosen."""

    name: str
    detail: str
    chosen: bool


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
    choices: tuple[ChoiceLine, ...] = ()
    nets: tuple[NetReach, ...] = ()


class PassesPage(Page):
    """How deep, how often, and what is through.

    Signals
    -------
    edited(str, float) : "target" (share), "deepest" (mm) or "join" (mm)
    plan() : plan the first pass, or go to the run of the one planned
    island_touch(), rehearse()
    choice_chosen(int) : another way to cut, by its place in the list
    net_chosen(object) : `NetReach` or None; the canvas goes there
    painting_changed(float) : radius of the brush in mm, 0 when it is laid aside
    only_changed(bool) : whether nothing is cut but what is painted
    unpainted(bool) : take away the last stroke, or (True) all of them
    net_painted(object) : `NetReach` whose grooves are all cut again
    """

    edited = Signal(str, float)
    plan = Signal()
    island_touch = Signal()
    rehearse = Signal()
    choice_chosen = Signal(int)
    net_chosen = Signal(object)
    painting_changed = Signal(float)
    only_changed = Signal(bool)
    unpainted = Signal(bool)
    net_painted = Signal(object)

    def __init__(self, theme: Theme) -> None:
        super().__init__(theme, "")
        self.title.setText(self.tr("Passes"))
        self.lead.setText(self.tr("Only what may still be joined is cut again."))
        self.lead.show()
        self._figure = Figure()
        self.add(self._figure)
        self._states = self._state_rows()
        self._choices = QWidget()
        self._choice_rows = QVBoxLayout(self._choices)
        self._choice_rows.setContentsMargins(0, 0, 0, 0)
        self._choice_rows.setSpacing(6)
        self._choice_group = QButtonGroup(self)
        self.add(self._choices)
        self._pass_area, self._passes = self._area(self.tr("Passes"), self.tr("depth"))
        self._add_nets()
        self._add_painting()
        self.section(self.tr("How sure, how deep"))
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

    def _area(self, title: str, right: str) -> tuple[QWidget, QVBoxLayout]:
        """A section that can be hidden while there is nothing in it."""
        made = QWidget()
        column = QVBoxLayout(made)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(8)
        head = QHBoxLayout()
        head.addWidget(words(title, "value"))
        head.addStretch(1)
        head.addWidget(words(right, "caption"))
        column.addWidget(rule())
        column.addLayout(head)
        inner = QVBoxLayout()
        inner.setSpacing(8)
        column.addLayout(inner)
        self.add(made)
        return made, inner

    def _add_nets(self) -> None:
        self._net_area, column = self._area(self.tr("By net"), self.tr("chance to be cut off"))
        self.nets = NetList(self.theme)
        self.nets.net_chosen.connect(self.net_chosen)
        self.nets.net_chosen.connect(lambda _: self._judge())
        column.addWidget(self.nets)
        self.net_again = button(self.tr("Cut its grooves again"))
        self.net_again.clicked.connect(lambda: self.net_painted.emit(self.nets.current()))
        column.addWidget(self.net_again)

    def _add_painting(self) -> None:
        self.section(self.tr("Cut again by hand"))
        self.brush = NumberField(self.tr("Brush"), "mm", value=BRUSH, least=0.2, most=20.0, width=64)
        self.paint_button = button(self.tr("Paint on the board"))
        self.paint_button.setCheckable(True)
        self.back_button = button(self.tr("Last stroke away"))
        self.clear_button = button(self.tr("All away"))
        self.only = QCheckBox(self.tr("Nothing but what is painted"))
        self.painted = words("", "caption", wrap=True)
        row = QHBoxLayout()
        row.setSpacing(8)
        row.addWidget(self.paint_button, 1)
        row.addWidget(self.brush)
        away = QHBoxLayout()
        away.setSpacing(8)
        away.addWidget(self.back_button, 1)
        away.addWidget(self.clear_button, 1)
        self.body.addLayout(row)
        self.add(self.painted)
        self.body.addLayout(away)
        self.add(self.only)
        self.paint_button.toggled.connect(lambda _: self._paint())
        self.brush.edited.connect(lambda _: self._paint())
        self.only.toggled.connect(self.only_changed)
        self.back_button.clicked.connect(lambda: self.unpainted.emit(False))
        self.clear_button.clicked.connect(lambda: self.unpainted.emit(True))
        self.show_painted(0.0, only=False)

    def _paint(self) -> None:
        self.painting_changed.emit(0.5 * self.brush.value if self.paint_button.isChecked() else 0.0)

    def show_painted(self, area: float, *, only: bool) -> None:
        """How much is painted, mm²."""
        text = self.tr("Drag over the grooves that are to be cut again; the next pass goes there too.")
        if area > 0.0:
            text = fill(self.tr("{area:.1f} mm² are painted; the next pass goes there."), area=area)
        self.painted.setText(text)
        for each in (self.back_button, self.clear_button):
            each.setEnabled(area > 0.0)
        self.only.blockSignals(True)
        self.only.setChecked(only)
        self.only.blockSignals(False)

    def _show_choices(self, choices: Sequence[ChoiceLine]) -> None:
        """Ways to cut, before the first pass."""
        for each in self._choice_group.buttons():
            self._choice_group.removeButton(each)
        empty(self._choice_rows)
        self._choices.setVisible(bool(choices))
        if not choices:
            return
        self._choice_rows.addWidget(rule())
        self._choice_rows.addWidget(words(self.tr("How to cut"), "value"))
        for number, line in enumerate(choices):
            made = QRadioButton(line.name)
            made.setChecked(line.chosen)
            made.setAccessibleDescription(line.detail)
            made.clicked.connect(lambda _=False, number=number: self.choice_chosen.emit(number))
            self._choice_group.addButton(made)
            detail = words(line.detail, "caption", wrap=True)
            detail.setContentsMargins(30, 0, 0, 2)
            self._choice_rows.addWidget(made)
            self._choice_rows.addWidget(detail)
        self._choice_rows.addWidget(words(self.tr("Times without touching the copper."), "caption"))

    def choice_buttons(self) -> list[QRadioButton]:
        """The buttons of the ways to cut, in order."""
        return [one for one in self._choice_group.buttons() if isinstance(one, QRadioButton)]

    def _judge(self) -> None:
        self.net_again.setEnabled(self.nets.current() is not None)

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
        planned = self.tr("Go on to {name}").format(name=values.next_name)
        self.plan_button.setText(planned if values.next_name else self.tr("Plan the first pass"))
        self.plan_button.setVisible(bool(values.next_name) or not values.passes)
        self._show_choices(values.choices)
        self.nets.show_nets(values.nets)
        self._pass_area.setVisible(bool(values.passes))
        self._net_area.setVisible(bool(values.nets))
        self._judge()


def _pass_line(theme: Theme, line: PassLine) -> QWidget:
    made = QWidget()
    row = QHBoxLayout(made)
    row.setContentsMargins(0, 0, 0, 0)
    row.setSpacing(8)
    row.addWidget(Glyph(theme, line.mark))
    column = QVBoxLayout()
    column.setSpacing(3)
    head = QHBoxLayout()
    name = Elided("value")
    name.setText(line.name)
    head.addWidget(name, 1)
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
