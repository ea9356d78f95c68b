"""Answers of the thread that computes, told in the window's."""

from __future__ import annotations

import threading

from PySide6.QtCore import QCoreApplication

from drypoint.progress import Progress
from drypoint.ui.bridge import Bridge


def test_answers_that_come_together_are_told_one_in_a_turn(qtbot) -> None:
    bridge = Bridge()
    told: list[object] = []
    bridge.computed.connect(lambda _name, value: told.append(value))
    both = threading.Event()

    def second(_progress: Progress) -> int:
        both.set()
        return 2

    bridge.ask("one", lambda _progress: 1)
    bridge.ask("two", second)
    try:
        assert both.wait(60.0)
        bridge._work.close()  # both have been handed over
        QCoreApplication.sendPostedEvents(bridge)
        assert told == []
        assert bridge.busy
        bridge._settle_next()
        assert told == [1]
        assert bridge.is_waiting("two")
        qtbot.waitUntil(lambda: told == [1, 2], timeout=60_000)
        assert not bridge.busy
    finally:
        bridge.close()
