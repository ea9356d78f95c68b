"""The one road for messages to the user: the line in the run strip."""

from __future__ import annotations

from datetime import datetime

from PySide6.QtCore import QObject, QTimer

from drypoint.errors import DrypointError
from drypoint.ui.bridge import Bridge
from drypoint.ui.language.words import told
from drypoint.ui.run_strip import RunStrip

PATIENCE = 400
"""Work that takes longer than this is shown as it goes on, ms."""

QUIET = ("plan: order",)
"""Requests that nobody waits for."""


class Messages(QObject):
    """Says one thing at a time; shows long work until it is done."""

    def __init__(self, strip: RunStrip, bridge: Bridge, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._strip = strip
        self._last = ("", "", "")
        self._going = ""
        self._patience = QTimer(self, singleShot=True, interval=PATIENCE)
        self._bridge = bridge
        bridge.progress.connect(self._progress)
        bridge.ended.connect(self._ended)

    def say(self, text: str, saved: str = "") -> None:
        """Another message."""
        self._last = (datetime.now().strftime("%H:%M"), text, saved)
        if not self._going:
            self._strip.show_message(*self._last)

    def error(self, error: DrypointError) -> None:
        """An error in one line."""
        self._going = ""
        self.say(error.text)

    def _progress(self, name: str, share: float, text: str) -> None:
        if name in QUIET:
            return
        if self._going != name:
            self._going = name
            self._patience.start()
        if not self._patience.isActive():
            doing = told(text) or self.tr("Working")
            self._strip.show_message(
                datetime.now().strftime("%H:%M"), f"{doing}: {100 * min(max(share, 0.0), 1.0):.0f} %"
            )

    def _ended(self, name: str) -> None:
        if self._going == name:
            shown = not self._patience.isActive()
            self._going = ""
            self._patience.stop()
            if shown:
                self._strip.show_message(*self._last)
