"""The style sheet is put on area by area, one in a turn of the event loop, what is seen first.

One sheet for the whole application has Qt dress every widget of every page at once, which holds the window
up for a fifth of a second; so does taking a page with such a sheet into another parent. The window itself
wears none: a sheet reaches everything below the widget that wears it.
"""

from __future__ import annotations

from PySide6.QtCore import QObject, QTimer
from PySide6.QtWidgets import QWidget
from shiboken6 import isValid


class Wardrobe(QObject):
    """Dresses areas of windows.

    Parameters
    ----------
    parent : QObject
    """

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        self._sheet = ""
        self._areas: list[QWidget] = []
        self._waiting: list[QWidget] = []
        self._still: list[QWidget] = []
        self._timer = QTimer(self, interval=0)
        self._timer.timeout.connect(self._turn)

    def dress(self, area: QWidget) -> None:
        """Have an area wear the sheet from now on; one that waits for its turn gets it at once."""
        known = any(area is each for each in self._areas)
        if not known:
            self._areas = [each for each in self._areas if isValid(each)] + [area]
        waits = not known or any(area is each for each in self._waiting)
        if waits and area.styleSheet() != self._sheet:  # the same again would have it dressed anew
            area.setStyleSheet(self._sheet)
        if not known:
            self._wait([area])

    def change(self, sheet: str) -> None:
        """Another sheet for every area. A window in sight is painted again when all that is seen has it."""
        self._sheet = sheet
        self._areas = [each for each in self._areas if isValid(each)]
        self._keep_still()
        self._wait(self._areas)

    @property
    def is_done(self) -> bool:
        """Whether every area wears the newest sheet."""
        return not self._waiting

    def _wait(self, areas: list[QWidget]) -> None:
        known = {id(each) for each in self._waiting}
        self._waiting += [each for each in areas if id(each) not in known]
        self._timer.start()

    def _keep_still(self) -> None:
        for window in {id(each.window()): each.window() for each in self._areas if each.isVisible()}.values():
            if window.updatesEnabled():
                window.setUpdatesEnabled(False)
                self._still.append(window)

    def _turn(self) -> None:
        """Dress one area, or let go of the windows kept still once all that is seen is dressed."""
        self._waiting = [each for each in self._waiting if isValid(each)]
        seen = next((each for each in self._waiting if each.isVisible()), None)
        if seen is None and self._still:
            still, self._still = self._still, []
            for window in still:
                if isValid(window):
                    window.setUpdatesEnabled(True)
        elif not self._waiting:
            self._timer.stop()
        else:
            area = seen or self._waiting[0]
            self._waiting = [each for each in self._waiting if each is not area]
            if area.styleSheet() != self._sheet:
                area.setStyleSheet(self._sheet)
            if seen is None:
                _prepare(area)


def _prepare(area: QWidget) -> None:
    """Do now what a hidden area would do when it is first shown."""
    for each in (area, *area.findChildren(QWidget)):
        each.ensurePolished()
