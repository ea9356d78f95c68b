"""The main window: arranges its areas by size, owns nothing of the job."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from PySide6.QtCore import QChildEvent, QEvent, Qt, Signal
from PySide6.QtGui import QCloseEvent, QDragEnterEvent, QDropEvent, QKeyEvent, QResizeEvent
from PySide6.QtWidgets import (
    QHBoxLayout,
    QMainWindow,
    QSplitter,
    QVBoxLayout,
    QWidget,
)

from drypoint.ui.canvas.content import View
from drypoint.ui.canvas.panel import CanvasPanel
from drypoint.ui.heat.view import Aspect, HeatView
from drypoint.ui.jog.panel import JogPanel
from drypoint.ui.menus import Commands
from drypoint.ui.parts.blocks import rule, words
from drypoint.ui.parts.segments import Segments
from drypoint.ui.parts.stack import PageStack
from drypoint.ui.run_strip import RunStrip
from drypoint.ui.theme.icons import app_icon
from drypoint.ui.theme.sheet import give_look
from drypoint.ui.theme.theme import Theme
from drypoint.ui.traveller import NARROW, WIDE, Step, Traveller

STEPS = 9
PAGE, PAGE_WIDE, PAGE_LARGE = 312, 430, 360
RIGHT, RIGHT_LARGE = 388, 480
LARGE, ONE_AREA, NARROW_TAG, OVER = 1900, 1360, 1345, 1240
"""Widths of the window at which the arrangement changes, px."""
COMPACT_STRIP = 1200
CANVAS_ONLY = frozenset({0, 1, 2, 3, 5})
"""Steps of the design: a narrow window shows the canvas beside them, and the right column on demand."""
LOW = 900
"""Height under which the right column holds one area, px."""


class MainWindow(QMainWindow):
    """Traveller, pages, canvas, right column, run strip.

    Signals
    -------
    step_chosen(int) : from 0
    files_dropped(list) : paths dropped on the window
    closing() : asked to close; call ``refuse_closing`` in a slot to stay
    """

    step_chosen = Signal(int)
    files_dropped = Signal(list)
    closing = Signal()

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self.theme = theme
        self.commands = Commands(self)
        self.traveller = Traveller(theme, STEPS)
        self.pages = PageStack(theme)
        self.canvas = CanvasPanel(theme)
        self._stage = QWidget()
        self.heat = HeatView(theme)
        self.jog = JogPanel(theme)
        self.strip = RunStrip(theme)
        self._areas = Segments([self.tr("Surface"), self.tr("Position")], self.tr("Area"))
        self._right = QWidget()
        self._body = QSplitter(Qt.Orientation.Horizontal)
        self._name = words("", "caption")
        self._over = False
        self._over_shown = True
        self._right_wanted = False
        self._stay = False
        self._regime: tuple[bool, ...] = ()
        self._wide_pages: set[int] = set()
        self._build()
        self._connect()
        self.setWindowIcon(app_icon())
        self.setMinimumSize(900, 620)
        self.setAcceptDrops(True)
        self.show_name("")
        names = [self.commands[f"step{number + 1}"].text() for number in range(STEPS)]
        self.traveller.show_steps([Step(name) for name in names])

    def _build(self) -> None:
        self.theme.dress(self.menuBar())
        for _ in range(STEPS):
            self.pages.addWidget(QWidget())
        give_look(self._right, "panel")
        self._right.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        column = QVBoxLayout(self._right)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        switch = QHBoxLayout()
        switch.setContentsMargins(16, 8, 16, 0)
        switch.addWidget(self._areas)
        switch.addStretch(1)
        column.addLayout(switch)
        column.addWidget(self.heat, 9)
        self._between = rule()
        column.addWidget(self._between)
        column.addWidget(self.jog, 10)
        stage = QVBoxLayout(self._stage)
        stage.setContentsMargins(0, 0, 0, 0)
        stage.addWidget(self.canvas)
        for area in (self.pages, self._stage, self._right):
            self._body.addWidget(area)
        self._body.setChildrenCollapsible(False)
        self._body.setHandleWidth(5)
        self._body.setStretchFactor(1, 1)
        self.pages.setMinimumWidth(PAGE)
        self._right.setMinimumWidth(RIGHT)
        upper = QHBoxLayout()
        upper.setContentsMargins(0, 0, 0, 0)
        upper.setSpacing(0)
        upper.addWidget(self.traveller)
        upper.addWidget(self._body, 1)
        whole = QWidget()
        outer = QVBoxLayout(whole)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.setSpacing(0)
        outer.addLayout(upper, 1)
        outer.addWidget(self.strip)
        self.setCentralWidget(whole)
        self._name.setContentsMargins(0, 0, 16, 0)
        self._name.setMinimumHeight(self.menuBar().sizeHint().height() - 2)
        self.menuBar().setCornerWidget(self._name, Qt.Corner.TopRightCorner)
        for area in (self.traveller, self.canvas, self._right, self.strip):
            self.theme.dress(area)

    def _connect(self) -> None:
        self.traveller.chosen.connect(self.choose_step)
        self._areas.chosen.connect(lambda _: self._arrange())
        self.jog.wants_changed.connect(self._arrange)
        for number in range(STEPS):
            self.commands[f"step{number + 1}"].triggered.connect(
                lambda _=False, n=number: self.choose_step(n)
            )
        for view in View:
            self.commands[view.value].triggered.connect(lambda _=False, v=view: self.canvas.set_view(v))
        commands = self.commands
        commands["fit"].triggered.connect(self.canvas.canvas.fit)
        commands["measure"].toggled.connect(self.canvas.measure_button.setChecked)
        self.canvas.measure_button.toggled.connect(commands["measure"].setChecked)
        commands["surface"].triggered.connect(self._next_aspect)
        commands["page"].toggled.connect(self.show_page)
        commands["light"].triggered.connect(lambda: self.theme.choose(False))
        commands["dark"].triggered.connect(lambda: self.theme.choose(True))
        commands["system"].triggered.connect(lambda: self.theme.choose(None))
        commands["quit"].triggered.connect(self.close)
        position = self.jog.position
        commands["arm"].toggled.connect(position.switch.setChecked)
        position.switch.toggled.connect(commands["arm"].setChecked)
        commands["over_hole"].triggered.connect(self.jog.reference.confirm)
        for name, signal in (
            ("hold", self.strip.hold),
            ("resume", self.strip.resume),
            ("stop", self.strip.stop),
        ):
            commands[name].triggered.connect(signal)
        self.canvas.canvas.cursor_moved.connect(self.heat.set_cursor)
        self.heat.cursor_moved.connect(self.canvas.canvas.set_cursor)

    # pages

    def set_page(self, number: int, page: QWidget, *, wide: bool = False) -> None:
        """Put the page of a step in its place."""
        old = self.pages.widget(number)
        shown = self.pages.currentIndex()
        self.theme.dress(page)
        self.pages.insertWidget(number, page)
        if old is not None:
            self.pages.removeWidget(old)
            old.deleteLater()
        self.pages.setCurrentIndex(shown)
        if wide:
            self._wide_pages.add(number)

    def choose_step(self, number: int) -> None:
        """Show the page of a step."""
        page = self.pages.widget(number)
        if page is not None:
            self.theme.dress(page)  # first, where the theme has just changed
        self._right_wanted = False
        self.traveller.choose(number)
        self.pages.setCurrentIndex(number)
        if self._over and not self._over_shown:
            self.show_page(True)
        self._arrange()
        self.step_chosen.emit(number)

    def show_position(self) -> None:
        """Where the right column holds one area only: the position, in place of the surface."""
        self._right_wanted = True
        self._areas.choose(1)
        self._arrange()

    def show_page(self, shown: bool) -> None:
        """Show or hide the page beside the traveller (F4)."""
        self._over_shown = shown
        self.commands["page"].setChecked(shown)
        self._arrange()

    def show_name(self, name: str) -> None:
        """The job's file name, in the menu bar and the title."""
        self._name.setText(name)
        self.menuBar().setCornerWidget(self._name, Qt.Corner.TopRightCorner)  # makes room for it
        title = self.tr("Drypoint")
        self.setWindowTitle(f"{name} – {title}" if name else title)

    def show_recent(self, names: Sequence[str]) -> None:
        """List recent jobs; each action carries its name as data."""
        self.commands.recent.clear()
        for name in names:
            self.commands.recent.addAction(name).setData(name)
        self.commands.recent.setEnabled(bool(names))

    def refuse_closing(self) -> None:
        """Stay open, called from a slot of ``closing``."""
        self._stay = True

    # arrangement

    def arrangement(self) -> dict[str, object]:
        """What to remember of the window: plain values, for `restore_arrangement`."""
        return {
            "size": [self.width(), self.height()],
            "widths": self._body.sizes(),
            "area": self._areas.choice,
            "page": self._over_shown,
        }

    def restore_arrangement(self, kept: Mapping[str, object]) -> None:
        """Arrange as it was kept; what does not fit is left as it is."""
        size, widths, area = kept.get("size"), kept.get("widths"), kept.get("area")
        if isinstance(size, list) and len(size) == 2:
            self.resize(int(size[0]), int(size[1]))
        if isinstance(area, int):
            self._areas.choose(area)
        self.show_page(bool(kept.get("page", True)))
        if isinstance(widths, list) and len(widths) == self._body.count():
            self._body.setSizes([int(width) for width in widths])

    def _arrange(self) -> None:
        width, height = self.width(), self.height()
        large = width >= LARGE
        wide = self.pages.currentIndex() in self._wide_pages
        one = width < ONE_AREA or height < LOW
        self.traveller.set_narrow(width < NARROW_TAG)
        self.strip.set_compact(width < COMPACT_STRIP)
        self._areas.setVisible(one)
        self.heat.show_title(not one)
        self.heat.setVisible(not one or self._areas.choice == 0)
        self.jog.setVisible(not one or self._areas.choice == 1)
        self._between.setVisible(not one)
        self.jog.setMinimumHeight(0 if one else self.jog.wanted_height())
        alone = width < OVER and self.pages.currentIndex() in CANVAS_ONLY and not self._right_wanted
        self._right.setVisible(not (wide and width < LARGE) and not alone)
        words = max(self._right.minimumSizeHint().width(), self.jog.wanted_width())
        least = max(RIGHT, words)  # another language has longer ones
        right = max(RIGHT_LARGE if large else RIGHT, least)
        self._right.setMinimumWidth(least)
        page = PAGE_WIDE if wide else (PAGE_LARGE if large else PAGE)
        self.pages.setMinimumWidth(page if not large else min(page, PAGE_LARGE))
        self._set_over(width < OVER)
        self.pages.setVisible(self._over_shown)
        self.canvas.set_covered(page if self._over and self._over_shown else 0)
        regime = (large, wide, one, alone, width < NARROW_TAG, self._over, self._over_shown)
        changed, self._regime = regime != self._regime, regime
        inner = width - (NARROW if width < NARROW_TAG else WIDE)
        if self._over:
            self._place_over(page)
        if changed and self._over:
            self._body.setSizes([inner - right, right])
        elif changed:  # else the user's own widths stay
            self._body.setSizes([page, inner - page - right, right])

    def _set_over(self, over: bool) -> None:
        """Take the page out of the row, to slide over the canvas; or put it back."""
        if over == self._over:
            return
        self._over = over
        if over:
            self.pages.setParent(self._stage)
            self.pages.setContentsMargins(0, 0, 1, 0)  # the line at its edge
            self._over_shown = True
        else:
            self.pages.setContentsMargins(0, 0, 0, 0)
            self._body.insertWidget(0, self.pages)
            self._body.setStretchFactor(0, 0)
            self._body.setStretchFactor(1, 1)
        self.pages.setVisible(self._over_shown)

    def _place_over(self, page: int) -> None:
        self.pages.setGeometry(0, 0, page, self._stage.height())
        self.pages.raise_()

    def _next_aspect(self) -> None:
        if not self.heat.isVisible():
            self._right_wanted = True
            self._areas.choose(0)
            self._arrange()
            return
        every = list(Aspect)
        self.heat.set_aspect(every[(self.heat.aspects.choice + 1) % len(every)])

    # events

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._arrange()

    def event(self, event: QEvent) -> bool:
        handled = super().event(event)
        if event.type() == QEvent.Type.LayoutRequest and self._over:
            self._place_over(self.pages.width())
        return handled

    def childEvent(self, event: QChildEvent) -> None:
        """Dresses dialogs, menus and cards before they are first shown."""
        child = event.child()
        polished = event.type() == QEvent.Type.ChildPolished
        if polished and isinstance(child, QWidget) and (child.isWindow() or child.property("look") == "card"):
            self.theme.dress(child)
        super().childEvent(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        ways = {Qt.Key.Key_Comma: -1, Qt.Key.Key_Period: 1, Qt.Key.Key_Semicolon: -10, Qt.Key.Key_Colon: 10}
        key = Qt.Key(event.key())
        far = 10 if event.modifiers() & Qt.KeyboardModifier.ShiftModifier else 1
        if key in ways and not event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            self.canvas.step(ways[key] * (far if abs(ways[key]) == 1 else 1))
        else:
            super().keyPressEvent(event)

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        if event.mimeData().hasUrls():
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:
        paths = [url.toLocalFile() for url in event.mimeData().urls() if url.isLocalFile()]
        if paths:
            event.acceptProposedAction()
            self.files_dropped.emit(paths)

    def closeEvent(self, event: QCloseEvent) -> None:
        self._stay = False
        self.closing.emit()
        if self._stay:
            event.ignore()
        else:
            super().closeEvent(event)
