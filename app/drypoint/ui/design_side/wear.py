"""The wear of bits on the page Bits."""

from __future__ import annotations

from PySide6.QtCore import QObject

from drypoint.bits.naming import named
from drypoint.bits.wear import Wear
from drypoint.ui.bridge import Bridge
from drypoint.ui.design_side.messages import Messages
from drypoint.ui.language.words import fill
from drypoint.ui.pages.design import BitsPage


class WearOfBits(QObject):
    """Shows what the bits of the job have cut over all jobs, and takes new ones."""

    def __init__(self, page: BitsPage, bridge: Bridge, messages: Messages) -> None:
        super().__init__(page)
        self._page, self._bridge, self._messages = page, bridge, messages
        page.wear.renewed.connect(self._renew)
        page.wear.limited.connect(self._limit)

    def show(self) -> None:
        """Read the book again."""
        session, book = self._bridge.session, self._bridge.book
        if session is None or book is None:
            self._page.wear.show_wear(Wear(), ())
            return
        bits = session.settings.bits
        names = [bits.vbit.name, bits.mill.name, *(drill.name for drill in bits.drills)]
        self._page.wear.show_wear(book.read(), names)

    def _renew(self, name: str) -> None:
        if self._bridge.book is not None:
            self._bridge.book.renew(name)
            self.show()
            self._messages.say(fill(self.tr("{bit} counts from nothing again."), bit=named(name)))

    def _limit(self, name: str, length: float | None, holes: int | None) -> None:
        if self._bridge.book is not None:
            self._bridge.book.limit(name, length=length, holes=holes)
            self.show()
