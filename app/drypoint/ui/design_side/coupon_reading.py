"""What the test pattern shows, from its sheet to the job: computed in the background, used when asked."""

from __future__ import annotations

from PySide6.QtCore import QObject

from drypoint.bits.width_coupon import Evaluation
from drypoint.errors import DrypointError
from drypoint.session.actions.coupon import adopt
from drypoint.session.actions.coupon_reading import evaluate_readings, lines_of
from drypoint.session.settings import Settings
from drypoint.ui.bridge import Bridge
from drypoint.ui.canvas.content import Layer
from drypoint.ui.design_side.coupon import CouponFiles
from drypoint.ui.design_side.coupon_sheet import CouponSheet
from drypoint.ui.design_side.messages import Messages
from drypoint.ui.design_side.planner import Planner
from drypoint.ui.language.words import told
from drypoint.ui.window import MainWindow

READING = "coupon reading"


class CouponReading(QObject):
    """Opens the sheet, evaluates what is entered, and puts the answer into the job."""

    def __init__(
        self, window: MainWindow, bridge: Bridge, planner: Planner, files: CouponFiles, messages: Messages
    ) -> None:
        super().__init__(window)
        self._window, self._bridge, self._planner, self._messages = window, bridge, planner, messages
        self.files = files
        self._found: Evaluation | None = None
        lines = lines_of(Settings().bits.vbit)
        self.sheet = CouponSheet(window.theme, window.commands, lines, window)
        self.sheet.changed.connect(self._evaluate)
        self.sheet.use.connect(self._use)
        self.sheet.corner.chosen.connect(files.choose)
        files.read_button.clicked.connect(self.open)
        window.commands["pattern"].triggered.connect(self.open)
        planner.changed.connect(self._show_place)
        bridge.computed.connect(self._computed)
        bridge.failed.connect(self._failed)
        bridge.job_changed.connect(lambda _: self._again())

    def open(self) -> None:
        """Show the sheet."""
        if self._bridge.session is None:
            self._messages.say(self.tr("There is no job yet."))
            return
        self._window.canvas.show_layer(Layer.TRIALS, True)
        self._show_place()
        self.sheet.show()
        self.sheet.raise_()
        self._evaluate()

    @property
    def _copper(self) -> float:
        session = self._bridge.session
        return (Settings() if session is None else session.settings).blank.copper

    def _show_place(self) -> None:
        session, trials = self._bridge.session, self._planner.trials
        if session is None or trials is None:
            return
        trouble = trials.trouble
        what, hint = ("", "") if trouble is None else (told(trouble.what), told(trouble.hint))
        self.sheet.show_place(session.settings.coupons.pattern, trials.nearest, what, hint)

    def _again(self) -> None:
        """The job changed: another bit or copper makes another answer."""
        if self._bridge.session is None:
            self.sheet.hide()
        elif self.sheet.isVisible():
            self._evaluate()

    def _evaluate(self) -> None:
        session, read = self._bridge.session, self.sheet.read
        if session is None or not read.any:
            self._bridge.cancel(READING)
            self._found = None
            self.sheet.show_answer(None, self._copper)
            return
        self._bridge.ask(READING, lambda _: evaluate_readings(session, read))

    def _computed(self, name: str, value: object) -> None:
        if name == READING and isinstance(value, Evaluation) and self.sheet.read.any:
            self._found = value
            self.sheet.show_answer(value, self._copper)

    def _failed(self, name: str, error: DrypointError) -> None:
        if name == READING:
            self._found = None
            self.sheet.show_answer(None, self._copper, told(error.what))

    def _use(self) -> None:
        session, found = self._bridge.session, self._found
        if session is None or found is None:
            return
        self._found = None
        self.sheet.clear()  # read again with the bit they made, they would count twice
        adopt(session, found)
        self._messages.say(self.tr("The V-bit is used as its test pattern says. It can be undone."))
