"""The application: builds everything, passes it in, runs until the window is closed."""

from __future__ import annotations

import gc
import importlib
import importlib.util
import itertools
import logging
import sys
import tempfile
import traceback
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path
from types import TracebackType

from platformdirs import user_data_path
from PySide6.QtCore import QObject
from PySide6.QtWidgets import QApplication

from drypoint import __version__
from drypoint.errors import DrypointError
from drypoint.job.store import SUFFIX
from drypoint.session.commands import EXAMPLE
from drypoint.session.planning import Planning
from drypoint.session.wear_book import WearBook, usual_book
from drypoint.ui.bridge import Bridge
from drypoint.ui.design_side.remember import Remembered, usual_place
from drypoint.ui.design_side.side import DesignSide
from drypoint.ui.language.speech import Language, Speech
from drypoint.ui.run_strip import RunState
from drypoint.ui.theme.icons import app_icon
from drypoint.ui.theme.theme import Theme
from drypoint.ui.window import MainWindow

_log = logging.getLogger(__name__)

MACHINE_SIDE = "drypoint.ui.machine_side.wire"
DEMO = "hive-scale"
SIZE = (1600, 1000)
"""Of the window when it is opened for the first time, px."""
SWITCH = 0.0001
"""How long a thread that computes may keep the window's waiting for Python, s."""


class Application(QObject):
    """The window with everything wired to it.

    Parameters
    ----------
    remembered : Remembered
        Recent jobs and arrangement.
    book : WearBook, optional
        Where the wear of bits is counted.
    planning : Planning, optional
        The process that plans; without it plans are computed in a thread of this one.
    """

    def __init__(
        self,
        theme: Theme,
        remembered: Remembered,
        book: WearBook | None = None,
        planning: Planning | None = None,
    ) -> None:
        super().__init__()
        self.remembered = remembered
        self.theme = theme
        self.window = MainWindow(theme)
        self.bridge = Bridge(self, book, planning)
        self._rest()
        self.design = DesignSide(self.window, self.bridge, remembered)
        self._wire_machine()
        self.window.resize(*SIZE)
        self.window.restore_arrangement(remembered.arrangement)
        self.design.begin()
        self.window.canvas.canvas.setFocus()
        self.window.closing.connect(self._closing)
        self.again = False
        """Whether the window was closed to be opened anew in another language."""
        self._offer_languages()
        self.window.commands["demo"].triggered.connect(lambda _=False: self.open_demo(usual_folder()))

    def _offer_languages(self) -> None:
        for language in Language:
            action = self.window.commands[f"language_{language.value}"]
            action.setChecked(language is self.remembered.language)
            action.triggered.connect(lambda _=False, language=language: self._choose_language(language))

    def _choose_language(self, language: Language) -> None:
        """Open the window anew in the language, unless a machine or the bench is connected."""
        if language is self.remembered.language:
            return
        self.remembered.choose_language(language)
        if self.window.strip.state is not RunState.NOT_CONNECTED:
            self.design.messages.say(self.tr("The language changes when Drypoint is started again."))
            return
        self.again = True
        self.window.close()

    def _rest(self) -> None:
        strip = self.window.strip
        strip.show_state(RunState.NOT_CONNECTED, self.tr("no machine, no bench"), usable=False)
        strip.show_run(self.tr("Nothing to run"), "", 0.0, "")

    def _wire_machine(self) -> None:
        if importlib.util.find_spec(MACHINE_SIDE) is not None:
            importlib.import_module(MACHINE_SIDE).wire_machine(self.window, self.bridge)

    def open_demo(self, folder: Path) -> None:
        """Make the demo's job in a folder, planned in the background."""
        try:
            folder.mkdir(parents=True, exist_ok=True)
        except OSError:
            folder = Path(tempfile.mkdtemp(prefix="drypoint-"))
        self.design.documents.make_demo(free_name(folder), EXAMPLE)

    def report(self, kind: type[BaseException], error: BaseException, trace: TracebackType | None) -> None:
        """What no one caught in the window's thread."""
        if issubclass(kind, KeyboardInterrupt):
            self.window.close()
            return
        if isinstance(error, DrypointError):
            self.design.messages.error(error)
            return
        text = "".join(traceback.format_exception(kind, error, trace))
        self.bridge.report_bug("the window", text)

    def close(self) -> None:
        """End threads and let go of the job."""
        self.bridge.close()

    def _closing(self) -> None:
        self.remembered.keep(self.window.arrangement(), self.theme.chosen)


def usual_folder() -> Path:
    """Where jobs made of the demo are kept."""
    return user_data_path("drypoint", appauthor=False)


def free_name(folder: Path) -> Path:
    """Where the demo's job goes: never over an earlier one, which somebody may have worked on."""
    names = (f"{DEMO}{f' {number}' if number > 1 else ''}{SUFFIX}" for number in itertools.count(1))
    return next(path for name in names if not (path := folder / name).exists())


def make_qt(arguments: Sequence[str]) -> QApplication:
    """Qt's application with its name and icon."""
    app = QApplication(list(arguments))
    app.setApplicationName("drypoint")
    app.setApplicationDisplayName("Drypoint")
    app.setApplicationVersion(__version__)
    app.setDesktopFileName("org.drypoint.Drypoint")
    app.setWindowIcon(app_icon())
    return app


@contextmanager
def undisturbed() -> Iterator[None]:
    """What is loaded by now is not searched for garbage while this lasts, and threads take turns quickly.

    A full search holds every thread up for some 0.3 s, whichever thread it comes in, and what it goes
    through is nearly all code and widgets that stay anyway. With Python's usual interval the window
    waits about twice as long for the threads that compute.
    """
    usual = sys.getswitchinterval()
    gc.freeze()
    sys.setswitchinterval(SWITCH)
    try:
        yield
    finally:
        sys.setswitchinterval(usual)
        gc.unfreeze()


def run_window(arguments: Sequence[str], *, demo: bool = False, job: Path | None = None) -> int:
    """Open the window and run until it is closed; the exit code."""
    qt = make_qt(arguments)
    remembered = Remembered(usual_place())
    theme, speech = Theme(qt, remembered.dark), Speech(qt)
    planning = Planning()
    while True:
        speech.speak(remembered.language)
        application = Application(theme, remembered, usual_book(), planning)
        sys.excepthook = application.report
        application.window.show()
        planning.start()
        if demo:
            application.open_demo(usual_folder())
        elif job is not None:
            application.design.documents.open(job)
        try:
            with undisturbed():
                code = int(qt.exec())
            session = application.bridge.session
            demo, job = False, None if session is None else session.job.path
        finally:
            sys.excepthook = sys.__excepthook__
            application.close()
        if not application.again:
            planning.close()
            return code
