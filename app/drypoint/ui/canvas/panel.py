"""The canvas with its bar above, its legend and the order scrubber below."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import Signal
from PySide6.QtGui import QAction, QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QMenu, QVBoxLayout, QWidget

from drypoint.ui.canvas.canvas import PathCanvas
from drypoint.ui.canvas.content import Content, Layer, View
from drypoint.ui.canvas.legend import LegendStrip, Sample
from drypoint.ui.canvas.paths import PathSet
from drypoint.ui.canvas.pick import nearest
from drypoint.ui.canvas.scrubber import Scrubber
from drypoint.ui.language.words import fill
from drypoint.ui.parts.blocks import button, rule
from drypoint.ui.parts.segments import Segments
from drypoint.ui.theme.theme import Theme

PAUSE_REACH = 0.5
"""A pause this near to a path, mm, is shown on the order."""


LEAST, LEAST_BESIDE = 280, 180
"""Least width of the canvas, and beside a page that slides over it, px."""


@dataclass(frozen=True, slots=True, eq=False)
class Timing:
    """Length travelled (N,), mm, the time then (N,), s, and the time of everything."""

    travelled: NDArray[np.float64]
    times: NDArray[np.float64]
    seconds: float


class CanvasPanel(QWidget):
    """Everything about the board's picture.

    Signals
    -------
    scrubbed(float) : share of the order shown, 0..1
    pause_wanted(object, int, str) : place of the piece shown (x, y) mm, its number from 1, its label
    """

    scrubbed = Signal(float)
    pause_wanted = Signal(object, int, str)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.canvas = PathCanvas(theme)
        self._hidden: frozenset[Layer] = frozenset({Layer.OTHER_COPPER, Layer.LEGEND, Layer.TRIALS})
        self.layers: dict[Layer, QAction] = {}
        self._seconds = 0.0
        self._scrubbed = False
        self._timings: dict[View, Timing] = {}
        self._legend_override: tuple[str, tuple[tuple[Sample, str], ...]] | None = None
        self.views = Segments(
            [self.tr("Nets"), self.tr("Passes"), self.tr("Reach"), self.tr("Order")], self.tr("View")
        )
        self.view_button = button("", "only-segment")
        self.view_button.setAccessibleName(self.tr("View"))
        self.show_button = button(self.tr("Show…"), "only-segment")
        self.measure_button = button(self.tr("Measure"), "only-segment")
        self.measure_button.setCheckable(True)
        self.fit_button = button(self.tr("Fit  0"), "only-segment")
        self.legend = LegendStrip(theme)
        self.scrubber = Scrubber(theme)
        self._build()
        self.canvas.set_hidden(self._hidden)
        self.view_button.setText(self.views.buttons()[self.views.choice].text())
        self._show_legend()
        self.scrubber.hide()

    def _build(self) -> None:
        bar = self._bar = QHBoxLayout()
        bar.setContentsMargins(12, 8, 12, 8)
        bar.setSpacing(8)
        bar.addWidget(self.views)
        bar.addWidget(self.view_button)
        bar.addStretch(1)
        for each in (self.show_button, self.measure_button, self.fit_button):
            bar.addWidget(each)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addLayout(bar)
        column.addWidget(self.canvas, 1)
        column.addWidget(self.legend)
        column.addWidget(rule())
        column.addWidget(self.scrubber)
        self.show_button.setMenu(self._layer_menu())
        self.view_button.setMenu(self._view_menu())
        self.view_button.hide()
        self.views.chosen.connect(lambda number: self.set_view(list(View)[number]))
        self.measure_button.toggled.connect(self.canvas.set_measuring)
        self.fit_button.clicked.connect(self.canvas.fit)
        self.canvas.cursor_moved.connect(self._say_place)
        self.scrubber.moved.connect(self.scrub)
        self.scrubber.stepped.connect(self.step)
        self.scrubber.pause_wanted.connect(self._want_pause)

    def set_covered(self, left: int) -> None:
        """So many px at the left lie under something else; everything is shown beside that."""
        layout = self.layout()
        if layout is not None and layout.contentsMargins().left() != left:
            layout.setContentsMargins(left, 0, 0, 0)
            self.canvas.setMinimumWidth(LEAST_BESIDE if left else LEAST)
            self._fit_bar()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit_bar()

    def _fit_bar(self) -> None:
        """Where the bar is too narrow, what the View menu has too goes; the views become a menu last."""
        layout = self.layout()
        room = self.width() - (0 if layout is None else layout.contentsMargins().left()) - 24
        rest = (self.show_button, self.fit_button, self.measure_button)
        wide = {each: each.sizeHint().width() + 8 for each in rest}
        whole = self.views.sizeHint().width() + wide[self.show_button] <= room
        self.views.setVisible(whole)
        self.view_button.setVisible(not whole)
        room -= (self.views if whole else self.view_button).sizeHint().width()
        for each, needs in wide.items():
            each.setVisible(needs <= room)
            room -= needs

    def _view_menu(self) -> QMenu:
        menu = QMenu(self)
        for number, each in enumerate(self.views.buttons()):
            menu.addAction(each.text()).triggered.connect(
                lambda _=False, n=number: self.set_view(list(View)[n])
            )
        return menu

    def _layer_menu(self) -> QMenu:
        menu = QMenu(self)
        names = {
            Layer.COPPER: self.tr("Copper"),
            Layer.OTHER_COPPER: self.tr("Copper of the other side"),
            Layer.GROOVES: self.tr("Grooves"),
            Layer.HOLES: self.tr("Holes"),
            Layer.OUTLINE: self.tr("Outline and tabs"),
            Layer.LEGEND: self.tr("Legend"),
            Layer.LINKS: self.tr("Link wires"),
            Layer.TRIALS: self.tr("Trial cuts"),
            Layer.CLAMPS: self.tr("Clamps"),
            Layer.REFERENCES: self.tr("Reference holes"),
            Layer.ERRORS: self.tr("Expected error"),
            Layer.MACHINE: self.tr("Bit and trail"),
        }
        for layer, name in names.items():
            action = QAction(name, menu, checkable=True, checked=layer not in self._hidden)
            action.toggled.connect(lambda on, layer=layer: self.show_layer(layer, on))
            menu.addAction(action)
            self.layers[layer] = action
        menu.addSeparator()
        colours = QAction(self.tr("Colour by net"), menu, checkable=True)
        colours.toggled.connect(self.canvas.set_by_net)
        menu.addAction(colours)
        return menu

    def show_layer(self, layer: Layer, on: bool) -> None:
        """Show or hide a layer."""
        self._hidden = self._hidden - {layer} if on else self._hidden | {layer}
        self.canvas.set_hidden(self._hidden)
        self.layers[layer].setChecked(on)
        self._show_legend()

    def set_content(self, content: Content) -> None:
        """Show another content."""
        self.canvas.set_content(content)
        self._show_legend()
        self._show_moment()

    def set_view(self, view: View) -> None:
        """Show the grooves another way."""
        self.views.choose(list(View).index(view))
        self.view_button.setText(self.views.buttons()[list(View).index(view)].text())
        self._fit_bar()
        self.canvas.set_view(view)
        if self._scrubbed:  # the place shown was the scrubber's, not the machine's
            self._scrubbed = False
            self.canvas.set_bit(None)
        self._show_legend()
        self._show_moment()

    def set_run_time(self, seconds: float) -> None:
        """How long the whole order takes."""
        self._seconds = seconds
        self._show_moment()

    def set_timing(self, view: View, timing: Timing | None) -> None:
        """When each part of a view's order is cut: length travelled (mm) and time (s) at its vertices."""
        if timing is None:
            self._timings.pop(view, None)
        else:
            self._timings[view] = timing
        self._show_moment()

    def set_legend(self, title: str, samples: tuple[tuple[Sample, str], ...]) -> None:
        """A legend for a page of its own (the fit, chosen nets); no samples brings back the view's."""
        self._legend_override = (title, samples) if samples else None
        self._show_legend()

    def set_travelled(self, travelled: float) -> None:
        """How far the order or the current pass is cut, mm."""
        self.canvas.set_travelled(travelled)
        self._show_moment()

    def scrub(self, share: float) -> None:
        """Show the run at a share of its length."""
        paths = self.canvas.moving()
        if paths is not None:
            self.set_travelled(share * paths.length)
            self.canvas.set_bit(paths.place_at(share * paths.length))
            self._scrubbed = True
            self.scrubbed.emit(share)

    def step(self, loops: int) -> None:
        """Show the run some loops on or back."""
        paths = self.canvas.moving()
        if paths is None or not paths.length:
            return
        line = paths.line_at(self.canvas.travelled + 1e-6) + loops
        line = min(max(line, 0), len(paths.offsets) - 2)
        self.scrub(paths.starts_at(line) / paths.length)

    def _want_pause(self) -> None:
        paths = self.canvas.moving()
        if paths is not None and paths.length:
            line = paths.line_at(self.canvas.travelled + 1e-6)
            place = paths.place_at(0.5 * (paths.starts_at(line) + self._ends_at(paths, line)))
            label = paths.labels[line] if line < len(paths.labels) else ""
            number = line + 1
            if self.canvas.view is View.ORDER:  # several programs one after the other
                number = paths.labels[: line + 1].count(label)
            self.pause_wanted.emit(place, number, label)

    def _ends_at(self, paths: PathSet, line: int) -> float:
        """Length travelled when a path ends, mm."""
        return float(paths.levels[0].along[paths.offsets[line + 1] - 1])

    def _pause_shares(self, paths: PathSet) -> list[float]:
        """Where along the order the pauses are."""
        found = [nearest(paths, *pause.at, PAUSE_REACH) for pause in self.canvas.content.pauses]
        return [paths.starts_at(hit[0]) / paths.length for hit in found if hit is not None]

    def _show_moment(self) -> None:
        paths = self.canvas.moving()
        if paths is None or not paths.length:
            self.scrubber.hide()
            return
        self.scrubber.show()
        share = min(1.0, self.canvas.travelled / paths.length)
        line = paths.line_at(self.canvas.travelled)
        what = self.tr("piece {number} of {all}").format(number=line + 1, all=len(paths.offsets) - 1)
        timing = self._timings.get(self.canvas.view)
        if timing is None:
            now, whole = share * self._seconds, self._seconds
        else:
            now = float(np.interp(share * paths.length, timing.travelled, timing.times))
            whole = timing.seconds
        self.scrubber.show_moment(what, share, now, whole, self._pause_shares(paths))

    def _say_place(self, place: tuple[float, float] | None) -> None:
        text = "" if place is None else fill(self.tr("x {x:.2f}   y {y:.2f} mm"), x=place[0], y=place[1])
        self.legend.show_place(text.replace("-", "−"))

    def _show_legend(self) -> None:
        if self._legend_override is not None:
            self.legend.show_samples(*self._legend_override)
            return
        title, samples = self._legend_of_view()
        self.legend.show_samples(title, (*samples, *self._legend_of_marks()))

    def _legend_of_marks(self) -> tuple[tuple[Sample, str], ...]:
        """What a person put on the board, and what is in doubt, as far as it is there."""
        content = self.canvas.content
        trials = () if Layer.TRIALS in self._hidden else content.trials
        marks = (
            (bool(content.pauses), Sample.PAUSE, self.tr("pause")),
            (content.painted is not None, Sample.PAINTED, self.tr("painted")),
            (bool(content.suspect), Sample.SUSPECT, self.tr("in doubt")),
            (any(not one.begun for one in trials), Sample.TRIAL, self.tr("trial cut, planned")),
            (any(one.begun for one in trials), Sample.TRIAL_CUT, self.tr("trial cut")),
        )
        return tuple((sample, text) for there, sample, text in marks if there)

    def _legend_of_view(self) -> tuple[str, tuple[tuple[Sample, str], ...]]:
        match self.canvas.view:
            case View.REACH:
                return self.tr("Reach"), (
                    (Sample.THROUGH, self.tr("through")),
                    (Sample.DOUBTFUL, self.tr("doubtful")),
                    (Sample.NOT_THROUGH, self.tr("not through")),
                )
            case View.PASSES:
                return self.tr("Passes"), (
                    (Sample.EARLIER, self.tr("earlier pass")),
                    (Sample.CUT, self.tr("cut in this pass")),
                    (Sample.AHEAD, self.tr("still to cut")),
                )
            case View.ORDER:
                return self.tr("Order"), (
                    (Sample.CUT, self.tr("cut by then")),
                    (Sample.AHEAD, self.tr("after that")),
                )
            case View.NETS:
                return self.tr("Nets"), (
                    (Sample.COPPER, self.tr("copper of a net")),
                    (Sample.GROOVE, self.tr("groove")),
                )
