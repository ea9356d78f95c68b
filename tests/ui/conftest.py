"""Fixtures of the window's tests: no screen is needed, and a warning from Qt fails the test."""

from __future__ import annotations

import os
import sys
from collections.abc import Callable, Iterator
from dataclasses import replace
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

import pytest
from PySide6.QtCore import QCoreApplication, QEvent, QMessageLogContext, QtMsgType, qInstallMessageHandler
from PySide6.QtWidgets import QApplication

from drypoint.bench.bench import Bench
from drypoint.session.planning import Planning
from drypoint.session.session import Session
from drypoint.session.station import make_bench
from drypoint.ui.app import Application
from drypoint.ui.design_side.remember import Remembered
from drypoint.ui.theme.theme import Theme

sys.path.insert(0, str(Path(__file__).parent))
from bystander import COPPER, OUTLINE, Bystander

UNSUPPORTED = "This plugin does not support"
"""Said by Qt's offscreen platform of itself: of any window with a least size, of any menu."""


@pytest.fixture(autouse=True)
def no_qt_warnings() -> Iterator[list[str]]:
    """Collects what Qt complains about and fails the test for it."""
    complaints: list[str] = []

    def collect(kind: QtMsgType, _context: QMessageLogContext, text: str) -> None:
        if text.startswith(UNSUPPORTED):
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


@pytest.fixture(scope="session")
def planning() -> Iterator[Planning]:
    """The process that plans, as in the real program; one serves all windows."""
    made = Planning()
    yield made
    made.close()


@pytest.fixture(scope="module")
def design(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("design")
    (folder / "top.gbr").write_text(COPPER)
    (folder / "outline.gbr").write_text(OUTLINE)
    return folder


@pytest.fixture
def job(design: Path, tmp_path: Path) -> Path:
    """A job of the small board with few touches and no other edges to feel."""
    session = Session.create(tmp_path / "small.drypoint")
    board = replace(session.settings.board, side=type(session.settings.board.side).TOP)
    session.change("Top side", board=board)
    session.import_files([design])
    session.change(
        "Few touches",
        surface=replace(session.settings.surface, touches=9),
        blank=replace(session.settings.blank, margin=7.0),
    )
    path = session.job.path
    session.close()
    return path


@pytest.fixture
def bench(job: Path) -> Bench:
    session = Session.open(job)
    made = make_bench(session.derived.layout(session.snapshot), session.settings, 3, loose=())
    session.close()
    return made


@pytest.fixture
def opened(
    light: Theme, qtbot, tmp_path: Path, job: Path, bench: Bench, planning: Planning
) -> Iterator[Callable[[], Bystander]]:
    """Opens the window on the job; may be called again once it was closed."""
    made: list[Application] = []

    def open_window() -> Bystander:
        application = Application(light, Remembered(tmp_path / "window.json"), planning=planning)
        made.append(application)
        who = Bystander(application, qtbot)
        who.side.connecting._bench = bench
        application.window.resize(1600, 1000)
        application.window.show()
        application.design.documents.open(job)
        who.rest()
        return who

    yield open_window
    for application in made:
        application.close()
        application.window.close()
        application.window.deleteLater()


@pytest.fixture
def who(opened: Callable[[], Bystander]) -> Bystander:
    return opened()
