"""Fixtures of the window's tests: no screen is needed, and a warning from Qt fails the test."""

from __future__ import annotations

import os
from collections.abc import Iterator

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

import pytest
from PySide6.QtCore import QMessageLogContext, QtMsgType, qInstallMessageHandler
from PySide6.QtWidgets import QApplication

from drypoint.ui.theme.theme import Theme

UNSUPPORTED = "This plugin does not support propagateSizeHints()"
"""Said by Qt's offscreen platform of itself for any window with a least size."""


@pytest.fixture(autouse=True)
def no_qt_warnings() -> Iterator[list[str]]:
    """Collects what Qt complains about and fails the test for it."""
    complaints: list[str] = []

    def collect(kind: QtMsgType, _context: QMessageLogContext, text: str) -> None:
        if text == UNSUPPORTED:
            return
        if kind in (QtMsgType.QtWarningMsg, QtMsgType.QtCriticalMsg, QtMsgType.QtFatalMsg):
            complaints.append(text)

    before = qInstallMessageHandler(collect)
    yield complaints
    qInstallMessageHandler(before)
    assert not complaints, complaints


@pytest.fixture(params=[False, True], ids=["light", "dark"])
def theme(qapp: QApplication, request: pytest.FixtureRequest) -> Theme:
    return Theme(qapp, dark=request.param)


@pytest.fixture
def light(qapp: QApplication) -> Theme:
    return Theme(qapp, dark=False)
