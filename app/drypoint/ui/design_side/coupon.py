"""The test pattern of the V-bit, on the page Bits: in which corner it lies, and its program."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QFileDialog

from drypoint.errors import DrypointError
from drypoint.progress import Progress
from drypoint.session.actions.coupon import export_coupon
from drypoint.session.corner import Corner
from drypoint.ui.bridge import Bridge
from drypoint.ui.design_side.messages import Messages
from drypoint.ui.design_side.words import place_and_hint
from drypoint.ui.language.words import told
from drypoint.ui.pages.design import BitsPage
from drypoint.ui.parts.blocks import button, rule, words
from drypoint.ui.parts.fields import Choice, Setting

COUPON = "coupon"


class CouponFiles(QObject):
    """Writes the pattern's program into a folder, in the background."""

    def __init__(self, page: BitsPage, bridge: Bridge, messages: Messages) -> None:
        super().__init__(page)
        self._page, self._bridge, self._messages = page, bridge, messages
        page.add(rule())
        page.add(words(self.tr("Test pattern"), "section"))
        text = self.tr("Lines in the waste that show how wide and how deep the V-bit really cuts.")
        page.add(words(text, "caption", wrap=True))
        self.corner = Choice(self.tr("Corner of the blank"), 132)
        for corner, name in (
            (Corner.LOWER_LEFT, self.tr("lower left")),
            (Corner.LOWER_RIGHT, self.tr("lower right")),
            (Corner.UPPER_LEFT, self.tr("upper left")),
            (Corner.UPPER_RIGHT, self.tr("upper right")),
        ):
            self.corner.addItem(name, corner.value)
        page.add(Setting(self.tr("Corner of the blank"), self.corner))
        self.write_button = button(self.tr("Write its program…"))
        self.write_button.clicked.connect(self._ask_folder)
        page.add(self.write_button)
        self.read_button = button(self.tr("What it shows…"))
        page.add(self.read_button)
        bridge.computed.connect(self._computed)
        bridge.failed.connect(self._failed)

    def write_to(self, folder: Path) -> None:
        """The program, and which line is which, into a folder."""
        session = self._bridge.session
        if session is None:
            return
        corner = Corner(str(self.corner.currentData()))

        def work(_progress: Progress) -> int:
            return len(export_coupon(session, folder, corner))

        self._bridge.ask(COUPON, work)

    def _ask_folder(self) -> None:
        if self._bridge.session is None:
            return
        name = QFileDialog.getExistingDirectory(self._page, self.tr("Folder for the programs"))
        if name:
            self.write_to(Path(name))

    def _computed(self, name: str, _value: object) -> None:
        if name == COUPON:
            self._page.show_trouble("")
            self._messages.say(self.tr("The test pattern's program is written."))

    def _failed(self, name: str, error: DrypointError) -> None:
        if name == COUPON:
            self._page.show_trouble(told(error.what), place_and_hint(error))
            self._messages.error(error)
