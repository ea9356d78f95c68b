"""The page of the reference holes: where the board is now, and what that is worth."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QSignalBlocker, Signal
from PySide6.QtWidgets import QCheckBox, QVBoxLayout

from drypoint.ui.jog.reference import HoleLine
from drypoint.ui.language.words import local, told
from drypoint.ui.parts.blocks import Figure, Note, Row, button, empty, words
from drypoint.ui.parts.glyph import Mark
from drypoint.ui.parts.page import Page
from drypoint.ui.theme.theme import Theme


@dataclass(frozen=True, slots=True)
class ReferencePageValues:
    """What the reference page says; in words where mixed units stand together.

    ``holes`` are those touched and those suggested. ``stretch`` is None while scale and squareness
    cannot be corrected; ``leave_out`` names the touched hole that is chosen.
    """

    residual: float | None = None
    spare: str = ""
    holes: tuple[HoleLine, ...] = ()
    next_what: str = ""
    next_text: str = ""
    facts: tuple[tuple[str, str], ...] = ()
    diagnosis: tuple[str, ...] = ()
    worst: tuple[tuple[str, str], ...] = ()
    stale_what: str = ""
    stale_text: str = ""
    stretch: bool | None = None
    leave_out: str = ""


class ReferencePage(Page):
    """Where the board is now.

    Signals
    -------
    make_holes(), moved(), turn_over(), measure_play()
    stretch_chosen(bool) : correct scale and squareness, or no longer
    leave_out() : set the touch of the chosen hole aside
    """

    make_holes = Signal()
    moved = Signal()
    turn_over = Signal()
    measure_play = Signal()
    stretch_chosen = Signal(bool)
    leave_out = Signal()

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
        self.out_button = button("", "flat")
        self.add(self.out_button)
        self._next = Note("plain", "")
        self.add(self._next)
        self.section(self.tr("What the fit says"))
        self._facts = QVBoxLayout()
        self._facts.setSpacing(0)
        self.body.addLayout(self._facts)
        self._diagnosis = words("", "label", wrap=True)
        self.add(self._diagnosis)
        self.stretch = QCheckBox(self.tr("Correct scale and squareness"))
        self.stretch.setToolTip(
            self.tr(
                "Only where four holes or more say so. A wrong touch is then partly taken for a wrong scale."
            )
        )
        self.add(self.stretch)
        self.section(self.tr("Tightest hole"))
        self._worst = QVBoxLayout()
        self._worst.setSpacing(0)
        self.body.addLayout(self._worst)
        self._stale = self.note(Note("caution", ""))
        self.moved_button = button(self.tr("Clamped anew…"))
        self.moved_button.setToolTip(
            self.tr("Say that the board was taken off, shifted or clamped anew: its place is not known then.")
        )
        self.turn_button = button(self.tr("Turn over…"))
        self.play_button = button(self.tr("Play…"))
        self.play_button.setToolTip(self.tr("Measure the play of the axes, with guidance."))
        self.holes_button = button(self.tr("Drill holes…"))
        self.add_actions(self.moved_button, self.turn_button)
        self.add_actions(self.play_button, self.holes_button)
        for each, signal in (
            (self.holes_button, self.make_holes),
            (self.moved_button, self.moved),
            (self.turn_button, self.turn_over),
            (self.play_button, self.measure_play),
            (self.out_button, self.leave_out),
        ):
            each.clicked.connect(signal)
        self.stretch.clicked.connect(self.stretch_chosen)
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
            place = local(f"{hole.name}   {hole.design[0]:.2f}, {hole.design[1]:.2f}").replace("-", "−")
            self._holes.addWidget(Row(self.theme, place, left, mark=hole.mark))
        self.out_button.setVisible(bool(values.leave_out))
        self.out_button.setText(self.tr("Leave {name} out").format(name=values.leave_out))
        self._next.setVisible(bool(values.next_what))
        if values.next_what:
            self._next.say("plain", values.next_what, values.next_text)
        self._fill(self._facts, values.facts)
        self._diagnosis.setVisible(bool(values.diagnosis))
        self._diagnosis.setText("\n".join(map(told, values.diagnosis)))
        self._fill(self._worst, values.worst)
        self._stale.setVisible(bool(values.stale_what))
        if values.stale_what:
            self._stale.say("caution", values.stale_what, values.stale_text)
        with QSignalBlocker(self.stretch):
            self.stretch.setVisible(values.stretch is not None)
            self.stretch.setChecked(bool(values.stretch))

    def _fill(self, rows: QVBoxLayout, facts: Sequence[tuple[str, str]]) -> None:
        empty(rows)
        for name, value in facts or (("–", ""),):
            rows.addWidget(Row(self.theme, name, value))
