"""The test pattern of the V-bit, on the page Bits: in which corner it lies, and its program as a file."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QFileDialog

from drypoint.errors import DrypointError
from drypoint.progress import Progress
from drypoint.session.actions.coupon import export_coupon
from drypoint.session.corner import Corner
from drypoint.session.settings import Settings
from drypoint.ui.bridge import Bridge
from drypoint.ui.design_side.editing import Editing
from drypoint.ui.design_side.messages import Messages
from drypoint.ui.design_side.words import place_and_hint
from drypoint.ui.language.words import told
from drypoint.ui.pages.design import BitsPage
from drypoint.ui.parts.blocks import button, rule, words
from drypoint.ui.parts.corner_choice import CornerChoice
from drypoint.ui.parts.explain import explain
from drypoint.ui.parts.fields import Setting

COUPON = "coupon"


class CouponFiles(QObject):
    """Chooses the corner, and writes the pattern's program into a folder in the background."""

    def __init__(self, page: BitsPage, bridge: Bridge, editing: Editing, messages: Messages) -> None:
        super().__init__(page)
        self._page, self._bridge, self._editing, self._messages = page, bridge, editing, messages
        page.add(rule())
        page.add(words(self.tr("Test pattern"), "section"))
        text = self.tr("Lines in the waste that show how wide and how deep the V-bit really cuts.")
        page.add(words(text, "caption", wrap=True))
        self.corner = CornerChoice(self.tr("Corner of the blank"))
        row = Setting(self.tr("Corner of the blank"), self.corner)
        explain(row, "coupons.pattern")
        page.add(row)
        self.corner.chosen.connect(self.choose)
        self.read_button = button(self.tr("Run it, read it…"))
        page.add(self.read_button)
        self.write_button = button(self.tr("Write its program…"))
        self.write_button.clicked.connect(self._ask_folder)
        page.add(self.write_button)
        bridge.job_changed.connect(lambda _: self._show())
        bridge.computed.connect(self._computed)
        bridge.failed.connect(self._failed)

    def choose(self, corner: Corner) -> None:
        """Another corner, as one action that can be undone."""
        session = self._bridge.session
        if session is not None:
            coupons = replace(session.settings.coupons, pattern=corner)
            self._editing.change(self.tr("Corner of the test pattern"), coupons=coupons)

    def write_to(self, folder: Path) -> None:
        """The program, and which line is which, into a folder."""
        session = self._bridge.session
        if session is None:
            return

        def work(_progress: Progress) -> int:
            return len(export_coupon(session, folder))

        self._bridge.ask(COUPON, work)

    def _show(self) -> None:
        session = self._bridge.session
        self.corner.show_corner((Settings() if session is None else session.settings).coupons.pattern)

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
