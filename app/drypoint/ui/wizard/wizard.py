"""The setup wizard: files, side and outline, blank and clamps, bits, machine, summary."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from pathlib import Path

from PySide6.QtCore import QPointF, QRectF, Qt, Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QDialog, QHBoxLayout, QStackedWidget, QVBoxLayout, QWidget

from drypoint.board.model import Finding, LayerFile, Role, Side
from drypoint.ui.canvas.canvas import PathCanvas
from drypoint.ui.canvas.content import BoardDrawing, Clamp, Content, Layer, Spot
from drypoint.ui.forms.bits import BitsForm
from drypoint.ui.forms.blank import BlankForm
from drypoint.ui.forms.machine import MachineForm
from drypoint.ui.forms.values import SetupValues
from drypoint.ui.language.words import fill, local
from drypoint.ui.parts.blocks import button, rule, words
from drypoint.ui.parts.glyph import Mark, paint_mark
from drypoint.ui.theme.sheet import give_look
from drypoint.ui.theme.theme import Theme
from drypoint.ui.theme.type import Text, font
from drypoint.ui.wizard.files import FilesForm, SideForm, SummaryForm
from drypoint.ui.wizard.room import Room


@dataclass(frozen=True, slots=True)
class BoardFacts:
    """What the pages say about a board once it is read."""

    size: str = ""
    nets: str = ""
    source: str = ""
    holes: str = ""


class Rail(QWidget):
    """The steps of the wizard with their states, painted."""

    def __init__(self, theme: Theme, names: Sequence[str]) -> None:
        super().__init__()
        self._theme, self._names = theme, tuple(names)
        self._facts = [""] * len(names)
        self._current = 0
        self.setFixedWidth(236)
        theme.changed.connect(self.update)

    def show_step(self, current: int, facts: Sequence[str]) -> None:
        """Which page is shown, and one fact for each page done."""
        self._current, self._facts = current, list(facts)
        self.setAccessibleName(self._names[current])
        self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        tokens = self._theme.tokens
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.fillRect(self.rect(), QColor(tokens.sunken))
        left = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
        for number, name in enumerate(self._names):
            top = 24 + 66 * number
            here = number == self._current
            if here:
                painter.fillRect(QRectF(12, top - 8, self.width() - 12, 58), QColor(tokens.panel))
                painter.fillRect(QRectF(12, top - 8, 4, 58), QColor(tokens.copper))
            middle = QPointF(36, top + 11)
            if number < len(self._names) - 1:
                painter.setPen(QPen(QColor(tokens.edge), 1.4))
                painter.drawLine(QPointF(36, top + 23), QPointF(36, top + 54))
            mark = Mark.READY if here else (Mark.DONE if number < self._current else Mark.TO_DO)
            paint_mark(painter, mark, tokens, middle)
            painter.setFont(font(Text.BODY_BOLD))
            painter.setPen(QColor(tokens.ink))
            painter.drawText(QRectF(56, top, self.width() - 60, 22), left, name)
            painter.setFont(font(Text.CAPTION))
            painter.setPen(QColor(tokens.ink2))
            fact = self.tr("this page") if here else self._facts[number]
            painter.drawText(QRectF(56, top + 20, self.width() - 60, 20), left, fact)
        painter.end()


class SetupWizard(QDialog):
    """Asks for everything a new job needs; plain values out.

    The owner reads the files on ``files_changed``, ``role_changed`` and ``side_changed`` and answers
    with `show_files`, `show_board` or `show_trouble`. After ``accepted`` take `values`.

    Signals
    -------
    files_changed(list) : paths
    role_changed(str, object) : file name, `Role`
    side_changed(object) : `Side`
    ports_wanted()
    """

    files_changed = Signal(list)
    role_changed = Signal(str, object)
    side_changed = Signal(object)
    ports_wanted = Signal()

    def __init__(
        self, theme: Theme, values: SetupValues | None = None, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._theme = theme
        theme.dress(self)
        self._values = values or SetupValues()
        self._board: BoardDrawing | None = None
        self._facts = BoardFacts()
        self.setWindowTitle(self.tr("New job"))
        self.files = FilesForm(theme)
        self.side = SideForm(theme)
        self.blank = BlankForm(theme, self._values.blank)
        self.bits = BitsForm(theme, self._values.bits)
        self.machine = MachineForm(theme, self._values.machine)
        self.summary = SummaryForm(theme)
        self._pages = (
            (self.tr("Files"), self.tr("What the design consists of."), self.files),
            (self.tr("Side and outline"), self.tr("Which copper is milled, and how large it is."), self.side),
            (
                self.tr("Blank and clamps"),
                self.tr("Where the copper lies, and where the bit must not go."),
                self.blank,
            ),
            (self.tr("Bits"), self.tr("What cuts, and how fast."), self.bits),
            (self.tr("Machine"), self.tr("How it is reached, and what it can do."), self.machine),
            (self.tr("Summary"), self.tr("Everything can be changed later."), self.summary),
        )
        self.rail = Rail(theme, [name for name, _, _ in self._pages])
        self._rooms = tuple(Room() for _ in self._pages)
        self.stack = QStackedWidget()
        self.canvas = PathCanvas(theme)
        self.canvas.set_hidden(frozenset({Layer.OTHER_COPPER, Layer.LEGEND}))
        self._hint = words("", "quiet", wrap=True)
        self.cancel_button = button(self.tr("Cancel"))
        self.back_button = button(self.tr("Back"))
        self.next_button = button("", "primary")
        self._build()
        self._connect()
        self.resize(1320, 860)
        self.go(0)

    def _build(self) -> None:
        for room in self._rooms:
            self.stack.addWidget(room)
        self.stack.setFixedWidth(432)
        side = QWidget()
        give_look(side, "sunken")
        side.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        rail = QVBoxLayout(side)
        rail.setContentsMargins(0, 20, 0, 16)
        heading = words(self.tr("New job"), "page")
        heading.setContentsMargins(24, 0, 16, 8)
        rail.addWidget(heading)
        rail.addWidget(self.rail, 1)
        small = words(self.tr("Everything here can be changed later in the traveller."), "caption", wrap=True)
        small.setContentsMargins(24, 0, 16, 0)
        small.setFixedWidth(236)
        rail.addWidget(small)
        right = QVBoxLayout()
        right.setContentsMargins(0, 0, 0, 0)
        right.setSpacing(0)
        self._hint.setContentsMargins(48, 10, 16, 8)
        right.addWidget(self._hint)
        right.addWidget(self.canvas, 1)
        upper = QHBoxLayout()
        upper.setContentsMargins(0, 0, 0, 0)
        upper.setSpacing(0)
        upper.addWidget(side)
        upper.addWidget(self.stack)
        upper.addLayout(right, 1)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.setSpacing(0)
        whole.addLayout(upper, 1)
        whole.addWidget(rule())
        whole.addWidget(self._foot())

    def _foot(self) -> QWidget:
        foot = QWidget()
        give_look(foot, "panel")
        foot.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        row = QHBoxLayout(foot)
        row.setContentsMargins(20, 12, 20, 12)
        row.setSpacing(12)
        row.addWidget(self.cancel_button)
        row.addStretch(1)
        row.addWidget(self.back_button)
        row.addWidget(self.next_button)
        for each in (self.cancel_button, self.back_button):
            each.setMinimumHeight(42)
            each.setMinimumWidth(88)
        return foot

    def _connect(self) -> None:
        self.cancel_button.clicked.connect(self.reject)
        self.back_button.clicked.connect(lambda: self.go(self.page - 1))
        self.next_button.clicked.connect(self._next)
        self.next_button.setDefault(True)
        self.files.files_changed.connect(self._files)
        self.files.role_changed.connect(self.role_changed)
        self.side.side_changed.connect(self._side)
        self.side.name_changed.connect(lambda name: self._set(name=name))
        self.side.finding_chosen.connect(self._show_finding)
        self.blank.edited.connect(lambda _: self._show_blank())
        self.blank.clamp_chosen.connect(self.canvas.set_chosen_clamp)
        self.machine.ports_wanted.connect(self.ports_wanted)
        self.canvas.clamp_dragged.connect(self.blank.move_clamp)
        self.canvas.board_dragged.connect(self._board_dragged)
        self.canvas.picked.connect(self._picked)

    # answers of the owner

    def show_files(self, files: Sequence[LayerFile]) -> None:
        """What each file was taken for."""
        self.files.show_files(files)
        self._files_read = tuple(files)
        self._refresh()

    def show_board(
        self, board: BoardDrawing | None, facts: BoardFacts, findings: Sequence[Finding] = ()
    ) -> None:
        """The board read from the files; None while there is none."""
        self._board, self._facts = board, facts
        self.side.show_facts(facts.size, facts.nets, facts.source, facts.holes)
        self.side.show_findings(findings)
        self.files.show_trouble("")
        if board is not None:
            x0, y0, x1, y1 = board.bounds
            self.blank.set_board(x1 - x0, y1 - y0)
            if not self._values.name:
                self._set(name=board.name)
                self.side.name.setText(board.name)
        self._show_blank()
        self._refresh()

    def show_trouble(self, what: str, text: str = "") -> None:
        """The files cannot be read."""
        self._board = None
        self.files.show_trouble(what, text)
        self._show_blank()
        self._refresh()

    def show_busy(self, text: str) -> None:
        """What is being done in the background; empty when it is done."""
        self._busy = text
        self._say_hint()

    @property
    def values(self) -> SetupValues:
        """What was set."""
        return replace(
            self._values, blank=self.blank.values, bits=self.bits.values, machine=self.machine.values
        )

    @property
    def page(self) -> int:
        """Number of the page shown, from 0."""
        return self.stack.currentIndex()

    def go(self, page: int) -> None:
        """Show a page."""
        page = min(max(page, 0), len(self._pages) - 1)
        self._rooms[page].fill(*self._pages[page])
        self.stack.setCurrentIndex(page)
        self.canvas.set_editing(self._pages[page][2] is self.blank)
        self._say_hint()
        self._show_blank()
        self._refresh()
        self._pages[page][2].setFocus(Qt.FocusReason.OtherFocusReason)

    # inner

    _files_read: tuple[LayerFile, ...] = ()
    _busy = ""

    def _say_hint(self) -> None:
        usual = (
            self.tr("Drag the board or a clamp. C chooses a clamp, arrow keys move it by 0.1 mm.")
            if self._pages[self.page][2] is self.blank
            else self.tr("Seen from the side being milled.")
        )
        self._hint.setText(self._busy or usual)

    def _next(self) -> None:
        if self.page == len(self._pages) - 1:
            self.accept()
        else:
            self.go(self.page + 1)

    def _set(self, **changes: object) -> None:
        self._values = replace(self._values, **changes)  # type: ignore[arg-type]
        self._refresh()

    def _files(self, paths: list[Path]) -> None:
        self._set(files=tuple(paths))
        self.files_changed.emit(paths)

    def _side(self, side: Side) -> None:
        self._set(side=side)
        self.side_changed.emit(side)

    def set_role(self, name: str, role: Role) -> None:
        """Remember a role the user gave a file."""
        self._set(roles={**self._values.roles, name: role})

    def _picked(self, found: object) -> None:
        kind, index = getattr(found, "kind", ""), getattr(found, "index", None)
        if kind == "clamp" and self._pages[self.page][2] is self.blank:
            self.blank.choose_clamp(index)

    def _show_finding(self, finding: Finding) -> None:
        if finding.at is not None:
            self.canvas.set_chosen((), Spot(finding.at))
            self.canvas.zoom_to_chosen()

    def _board_dragged(self, dx: float, dy: float) -> None:
        self.blank.move_board(dx, dy)
        self.canvas.keep_blank_still(dx, dy)

    def _show_blank(self) -> None:
        values = self.blank.values
        blank = None
        clamps: tuple[Clamp, ...] = ()
        if self._board is not None and self.page >= 2:
            x, y = self._board.bounds[0] - values.board_x, self._board.bounds[1] - values.board_y
            blank = (x, y, x + values.width, y + values.height)
            clamps = tuple(
                replace(
                    clamp,
                    box=(clamp.box[0] + x, clamp.box[1] + y, clamp.box[2] + x, clamp.box[3] + y),
                    keep_away=values.keep_away,
                )
                for clamp in values.clamps
            )
        zero = (blank[0], blank[1]) if blank else None
        self.canvas.set_content(Content(board=self._board, blank=blank, clamps=clamps, zero=zero))

    def _refresh(self) -> None:
        last = self.page == len(self._pages) - 1
        ready = self._board is not None
        self.back_button.setEnabled(self.page > 0)
        self.next_button.setEnabled(ready)
        self.next_button.setToolTip("" if ready else self.tr("First the design files."))
        following = "" if last else self._pages[self.page + 1][0]
        self.next_button.setText(
            self.tr("Make the job") if last else self.tr("Next: {page}").format(page=following)
        )
        v = self.values
        files = self.tr("{count} files").format(count=len(self._files_read))
        blank = local(f"{v.blank.width:g} × {v.blank.height:g} mm, ") + self.tr("{count} clamps").format(
            count=len(v.blank.clamps)
        )
        bits = fill(self.tr("V-bit {tip:g} mm {angle:g}°"), tip=v.bits.tip, angle=v.bits.angle_deg)
        machine = v.machine.port or self.tr("bench")
        side = self.tr("bottom") if v.side is Side.BOTTOM else self.tr("top")
        facts = [files, f"{side}, {self._facts.size}" if self._facts.size else side, blank, bits, machine, ""]
        self.rail.show_step(self.page, facts)
        drills = ", ".join(local(f"{d:g}") for d in v.bits.drills)
        near = self.blank.too_near()
        rows = (
            (self.tr("Job"), v.name, files, bool(v.name)),
            (self.tr("Board"), self._facts.size, f"{self._facts.nets}, {self._facts.holes}", ready),
            (self.tr("Blank"), blank, self.tr("a clamp is too near") if near else "", near is None),
            (self.tr("V-bit"), bits, self.tr("drills {list} mm").format(list=drills), True),
            (
                self.tr("Machine"),
                machine,
                " × ".join(local(f"{t:g}") for t in v.machine.travel) + " mm",
                True,
            ),
        )
        self.summary.show_rows(rows)
