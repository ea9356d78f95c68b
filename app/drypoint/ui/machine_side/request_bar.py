"""What the program asks of the person: above the run strip, on whatever page they are."""

from __future__ import annotations

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QCheckBox,
    QFrame,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from drypoint.machine.operator import Answer, AnswerKind, RequestKind
from drypoint.ui.language.words import told
from drypoint.ui.machine_side.hands import JOGGED, Asked
from drypoint.ui.parts.blocks import button, empty, words
from drypoint.ui.parts.fields import NumberField
from drypoint.ui.theme.sheet import give_look
from drypoint.ui.theme.theme import Theme

SETTLE = 350
"""A request takes no answer for so long, ms: the second click of a double click must not answer it."""


class RequestBar(QFrame):
    """One request with its cautions and its answers.

    Signals
    -------
    answered(int, object) : number of the request, `Answer`
    help_wanted(int) : the bench is to do it
    automatic_changed(bool) : the bench is to do everything asked
    """

    answered = Signal(int, object)
    help_wanted = Signal(int)
    automatic_changed = Signal(bool)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._asked: Asked | None = None
        self._title = words("", "section", wrap=True)
        self._text = words("", "body", wrap=True)
        self._cautions = QVBoxLayout()
        self._cautions.setSpacing(2)
        self.by_hand = QCheckBox(self.tr("Moved by hand wheel"))
        self.by_hand.setToolTip(
            self.tr("Axes were turned by hand: the position is not believed until it is set again.")
        )
        self.paper = NumberField(self.tr("Paper"), "mm", value=0.1, decimals=2, least=0.0, most=2.0)
        self.reading = NumberField(self.tr("Reading"), "mm", decimals=3, least=-100.0, most=100.0)
        self.automatic = QCheckBox(self.tr("The bench does all that is asked"))
        self.help_button = button(self.tr("Let the bench do it"))
        self.decline_button = button(self.tr("Decline"))
        self.done_button = button(self.tr("Done"), "primary")
        self._ready = QTimer(self, singleShot=True, interval=SETTLE)
        self._ready.timeout.connect(lambda: self._allow(True))
        self.setAccessibleName(self.tr("Request"))
        self._build()
        self.done_button.clicked.connect(self._done)
        self.decline_button.clicked.connect(lambda: self._answer(Answer(AnswerKind.DECLINED)))
        self.help_button.clicked.connect(self._help)
        self.automatic.toggled.connect(self.automatic_changed)
        give_look(self, "note-plain")
        theme.changed.connect(self.update)
        self.hide()

    def _build(self) -> None:
        said = QVBoxLayout()
        said.setSpacing(3)
        for label in (self._title, self._text):
            said.addWidget(label)
        said.addLayout(self._cautions)
        options = QHBoxLayout()
        options.setSpacing(16)
        for option in (self.by_hand, self.paper, self.reading, self.automatic):
            options.addWidget(option)
        options.addStretch(1)
        said.addLayout(options)
        row = QHBoxLayout(self)
        row.setContentsMargins(16, 10, 16, 10)
        row.setSpacing(10)
        row.addLayout(said, 1)
        for each in (self.decline_button, self.help_button, self.done_button):
            each.setMinimumHeight(42)
            row.addWidget(each, 0, Qt.AlignmentFlag.AlignVCenter)
        self.done_button.setMinimumWidth(132)

    @property
    def asked(self) -> Asked | None:
        """What is asked now."""
        return self._asked

    def show_request(self, asked: Asked | None) -> None:
        """Ask; None when it is over."""
        self._asked = asked
        self._ready.stop()
        if asked is None:
            self.hide()
            return
        request = asked.request
        self._title.setText(told(request.title) or str(request.kind))
        self._text.setText(told(request.text))
        self._text.setVisible(bool(request.text))
        empty(self._cautions)
        for caution in request.cautions:
            self._cautions.addWidget(_caution(caution))
        jogged = request.kind in JOGGED
        self.by_hand.setChecked(False)
        self.by_hand.setVisible(request.kind is RequestKind.JOG_TO)
        self.paper.setVisible(request.kind is RequestKind.PAPER)
        self.reading.setVisible(request.kind is RequestKind.READ)
        self.automatic.setVisible(asked.helper)
        self.help_button.setVisible(asked.helper and jogged)
        self.done_button.setText(self._word(request.kind))
        self.setAccessibleDescription(f"{told(request.title)}. {told(request.text)}")
        self._allow(False)
        self._ready.start()
        self.show()

    def _word(self, kind: RequestKind) -> str:
        match kind:
            case RequestKind.CONFIRM:
                return self.tr("Read; go on")
            case RequestKind.JOG_TO:
                return self.tr("It is there")
            case RequestKind.PAPER:
                return self.tr("It drags")
            case RequestKind.SHIFT:
                return self.tr("It sits")
            case RequestKind.READ:
                return self.tr("It reads this")
            case _:
                return self.tr("Done")

    def _allow(self, on: bool) -> None:
        for each in (self.done_button, self.decline_button, self.help_button):
            each.setEnabled(on)
        if on and self.isVisible() and not self._typing():
            self.take_focus()

    def take_focus(self) -> None:
        """To the answer, from wherever the keyboard is."""
        self.done_button.setFocus(Qt.FocusReason.ShortcutFocusReason)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Enter presses the button that has the focus, as Space does."""
        focused = self.focusWidget()
        entered = event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and not event.isAutoRepeat()
        if entered and isinstance(focused, QPushButton) and focused.isEnabled():
            focused.click()
        else:
            super().keyPressEvent(event)

    def _typing(self) -> bool:
        """Whether the keyboard is in a field: what is typed there must not answer anything."""
        return isinstance(self.window().focusWidget(), QLineEdit)

    def _done(self) -> None:
        request = None if self._asked is None else self._asked.request
        fields = {RequestKind.PAPER: self.paper, RequestKind.READ: self.reading}
        field = None if request is None else fields.get(request.kind)
        value = None if field is None else field.value
        self._answer(Answer(by_hand=self.by_hand.isVisible() and self.by_hand.isChecked(), value=value))

    def _help(self) -> None:
        if self._asked is not None:
            self._allow(False)
            self.help_wanted.emit(self._asked.number)

    def _answer(self, answer: Answer) -> None:
        if self._asked is not None:
            self._allow(False)
            self.answered.emit(self._asked.number, answer)


def _caution(text: str) -> QLabel:
    return words(f"▲  {told(text)}", "quiet", wrap=True)
