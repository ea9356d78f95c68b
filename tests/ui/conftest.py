"""Fixtures of the window's tests: no screen is needed, and a warning from Qt fails the test."""

from __future__ import annotations

import os
from collections.abc import Iterator

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

import pytest
from PySide6.QtCore import QCoreApplication, QEvent, QMessageLogContext, QtMsgType, qInstallMessageHandler
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
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)  # windows go with their test
    qInstallMessageHandler(before)
    assert not complaints, complaints


@pytest.fixture(scope="session")
def one_theme(qapp: QApplication) -> Theme:
    """Dressing the application is slow, so it is done once."""
    return Theme(qapp, dark=False)


@pytest.fixture(params=[False, True], ids=["light", "dark"])
def theme(one_theme: Theme, request: pytest.FixtureRequest) -> Theme:
    one_theme.choose(request.param)
    return one_theme


@pytest.fixture
def light(one_theme: Theme) -> Theme:
    one_theme.choose(False)
    return one_theme
