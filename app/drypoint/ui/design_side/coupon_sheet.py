"""The sheet of the test pattern: what was read from it, and what that says of the V-bit."""

from __future__ import annotations

import math

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QDialog, QVBoxLayout, QWidget

from drypoint.bits.width_coupon import Evaluation
from drypoint.session.actions.coupon_reading import Lines, Readings
from drypoint.session.corner import Corner
from drypoint.ui.design_side.coupon_picture import CouponPicture
from drypoint.ui.language.words import fill, local, told
from drypoint.ui.menus import Commands, keep_run_keys
from drypoint.ui.parts.blocks import Figure, Note, Row, button, empty, words
from drypoint.ui.parts.corner_choice import CornerChoice, corner_word
from drypoint.ui.parts.explain import explain
from drypoint.ui.parts.fields import NumberField, Setting
from drypoint.ui.parts.page import Page
from drypoint.ui.parts.segments import Segments
from drypoint.ui.theme.theme import Theme

OPEN = 0
"""The segment of what was not read."""


class CouponSheet(QDialog):
    """Fields for every line of the pattern, and the answer; stays open beside the work.

    Signals
    -------
    changed() : another reading
    use() : the answer is to be used
    run(), look() : it is to be cut; the bench is to read it
    """

    changed = Signal()
    use = Signal()
    run = Signal()
    look = Signal()

    def __init__(self, theme: Theme, commands: Commands, lines: Lines, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._connected = self._room = False
        self.setWindowTitle(self.tr("Test pattern"))
        self.resize(480, 860)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        self.page = Page(theme, self.tr("What the test pattern shows"))
        column.addWidget(self.page)
        self._figure = Figure()
        self.page.add(self._figure)
        self.picture = CouponPicture(theme)
        self.page.add(self.picture)
        self._rows = QVBoxLayout()
        self._rows.setSpacing(0)
        self.page.body.addLayout(self._rows)
        self._place()
        self._widths(lines)
        self.squares = self._segments(
            self.tr("Squares, tested with a meter"),
            lines.squares,
            self.tr("{size:.2f} mm deep"),
            (self.tr("joined"), self.tr("parted")),
        )
        self.ridges = self._segments(
            self.tr("Ridges between two lines"),
            lines.ridges,
            self.tr("{size:.2f} mm wide as planned"),
            (self.tr("gone"), self.tr("stands")),
        )
        self._note = self.page.note(Note("caution", ""))
        self.use_button = button(self.tr("Use from now on"), "primary")
        self.clear_button = button(self.tr("Clear"))
        self.page.add_actions(self.use_button)
        self.page.add_actions(self.clear_button)
        self.use_button.clicked.connect(self.use)
        self.clear_button.clicked.connect(self.clear)
        keep_run_keys(self, commands)
        self.show_answer(None, 0.035)
        self.show_usable(connected=False, bench=False)

    def _place(self) -> None:
        self.page.section(self.tr("Where it lies"))
        self.corner = CornerChoice(self.tr("Corner of the blank"))
        row = Setting(self.tr("Corner of the blank"), self.corner)
        explain(row, "coupons.pattern")
        self.page.add(row)
        self.place_note = Note("plain", "")
        self.place_note.hide()
        self.page.add(self.place_note)
        self.run_button = button(self.tr("Run it"))
        self.look_button = button(self.tr("Have the bench read it"))
        self.look_button.hide()
        for each, wish in ((self.run_button, self.run), (self.look_button, self.look)):
            each.clicked.connect(wish)
            self.page.add(each)

    def show_place(self, corner: Corner, nearest: Corner | None, what: str = "", hint: str = "") -> None:
        """The corner that is set, the one it really lies nearest to, and why there is no room."""
        self.corner.show_corner(corner)
        self._room = nearest is not None
        self.place_note.show()
        if what:
            self.place_note.say("caution", what, hint)
        elif nearest is not None and nearest is not corner:
            text = fill(self.tr("No room in that corner: it lies {corner}."), corner=corner_word(nearest))
            self.place_note.say("caution", text)
        else:
            text = self.tr("Its ground is touched first where the copper's height is not known well.")
            self.place_note.say("plain", self.tr("In the waste, shown on the board"), text)
        self._judge()

    def show_usable(self, *, connected: bool, bench: bool, cut: bool = False) -> None:
        """Whether a machine is free, whether it is the bench, and whether there is a pattern to read."""
        self._connected = connected
        self.look_button.setVisible(bench)
        self.look_button.setEnabled(connected and cut)
        self._judge()

    def _judge(self) -> None:
        self.run_button.setEnabled(self._connected and self._room)

    def show_readings(self, read: Readings) -> None:
        """Fill in what was read by somebody else."""
        for depth, field in self.widths.items():
            field.set_value(read.widths.get(depth, 0.0))
        for found, segments in ((read.squares, self.squares), (read.ridges, self.ridges)):
            for size, one in segments.items():
                one.choose(OPEN if size not in found else 2 if found[size] else 1)
        self.changed.emit()

    def _widths(self, lines: Lines) -> None:
        self.page.section(self.tr("Widths, read with a loupe"))
        self.page.add(words(self.tr("As many as you have; 0 is not read."), "caption", wrap=True))
        self.widths: dict[float, NumberField] = {}
        for depth, _expected in lines.widths:
            name = fill(self.tr("{size:.2f} mm deep"), size=depth)
            field = NumberField(name, "mm", decimals=3, least=0.0, most=2.0, step=0.005)
            field.edited.connect(self.changed)
            self.page.add(Setting(name, field))
            self.widths[depth] = field

    def _segments(
        self, title: str, sizes: tuple[float, ...], label: str, choices: tuple[str, str]
    ) -> dict[float, Segments]:
        """A choice of not read, no and yes for each size."""
        self.page.section(title)
        made = {}
        for size in sizes:
            name = fill(label, size=size)
            choice = Segments(["–", *choices], name)
            choice.chosen.connect(lambda _: self.changed.emit())
            self.page.add(Setting(name, choice))
            made[size] = choice
        return made

    @property
    def read(self) -> Readings:
        """What was entered."""
        return Readings(
            {depth: field.value for depth, field in self.widths.items() if field.value > 0.0},
            {depth: one.choice == 2 for depth, one in self.squares.items() if one.choice != OPEN},
            {gap: one.choice == 2 for gap, one in self.ridges.items() if one.choice != OPEN},
        )

    def clear(self) -> None:
        """Nothing read."""
        for field in self.widths.values():
            field.set_value(0.0)
        for one in (*self.squares.values(), *self.ridges.values()):
            one.choose(OPEN)
        self.changed.emit()

    def show_answer(self, found: Evaluation | None, copper: float, trouble: str = "") -> None:
        """What the readings say; ``copper`` is its thickness, mm, ``trouble`` why they say nothing."""
        empty(self._rows)
        self.use_button.setEnabled(found is not None)
        self.clear_button.setEnabled(self.read.any)
        self.picture.show_readings(self.read, found, copper)
        self.picture.setVisible(found is not None)
        advice = [trouble] if trouble else []
        if found is None:
            self._figure.show_figure(
                "–", self.tr("Enter what you read: a width or a test is enough to begin.")
            )
        else:
            deeper = self.tr("deeper than set") if found.offset >= 0.0 else self.tr("shallower than set")
            spread = fill(self.tr("give or take {sigma:.0f} µm"), sigma=1e3 * found.sigma(2))
            self._figure.show_figure(f"{abs(1e3 * found.offset):.0f} µm", f"{deeper}, {spread}")
            self._tell(found)
            advice += [told(text) for text in found.facts()[4:]]
        self._note.setVisible(bool(advice))
        self._note.say("caution", advice[0] if advice else "")

    def _tell(self, found: Evaluation) -> None:
        before, both = found.before, found.together
        for name, value, sigma, was in (
            (self.tr("Tip"), found.tip, found.sigma(0), before.tip),
            (self.tr("Run-out"), found.runout, found.sigma(1), before.runout),
            (self.tr("Tip and run-out together"), *both, before.tip + before.runout),
        ):
            detail = fill(self.tr("{was:.3f} mm before"), was=was)
            self._rows.addWidget(
                Row(self._theme, name, local(f"{value:.3f} ± {sigma:.3f} mm"), detail=detail)
            )
        angle = local(f"{math.degrees(found.angle):.1f}°")
        self._rows.addWidget(Row(self._theme, self.tr("Angle"), angle))
