"""A walk through the window that a person might take, for watching how long its turns last."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from pathlib import Path

import numpy as np
from PySide6.QtCore import QEvent, QPointF, Qt
from PySide6.QtGui import QKeyEvent, QMouseEvent
from PySide6.QtWidgets import QApplication, QWidget

from drypoint.machine.state import Activity
from drypoint.session.actions.measure import find_corner
from drypoint.surface.touch import Touch, Touches
from drypoint.ui.app import Application
from drypoint.ui.canvas.content import Layer, View
from drypoint.ui.design_side.new_job import NewJob
from drypoint.ui.heat.view import Aspect
from drypoint.ui.machine_side.wire import MachineSide
from drypoint.ui.run_strip import RunState
from drypoint.ui.wizard.wizard import SetupWizard


@dataclass(frozen=True, slots=True)
class Step:
    """What is done, by name; ``until`` says when it is over, besides that nothing is computed any more."""

    name: str
    act: Callable[[], object]
    until: Callable[[], bool] = lambda: True


def walk(application: Application, job: Path, files: Path) -> Iterator[Step]:
    """Through the window; ``files`` are those of the board that the job is of."""
    window, editing = application.window, application.design.editing
    panel = window.canvas
    yield Step("open", lambda: application.design.documents.open(job))
    for number in range(9):
        yield Step(f"page {number + 1}", lambda number=number: window.choose_step(number))
    for view in View:
        yield Step(f"view {view.value}", lambda view=view: panel.set_view(view))
    for share in (0.1, 0.5, 0.9):
        yield Step("scrub", lambda share=share: panel.scrub(share))
    yield from _pointing(application)
    yield Step("undoable change", lambda: editing.change("Bite", cuts=_bite(application)))
    yield Step("undo", window.commands["undo"].trigger)
    yield Step("redo", window.commands["redo"].trigger)
    for factor in (3.0, 1.5, 0.2):
        yield Step("zoom", lambda factor=factor: panel.canvas.zoom(factor))
    for key in (Qt.Key.Key_Left, Qt.Key.Key_Up):
        yield Step("pan", lambda key=key: _press(panel.canvas, key))
    for layers in (frozenset({Layer.COPPER, Layer.HOLES}), frozenset()):
        yield Step("layers", lambda layers=layers: panel.canvas.set_hidden(layers))
    yield Step("dark", lambda: application.theme.choose(True))
    yield Step("light", lambda: application.theme.choose(False))
    for width, height in ((1024, 700), (1600, 1000)):
        yield Step("size", lambda width=width, height=height: window.resize(width, height))
    yield from _surface(application)
    yield from _wizard(application.design.documents.new_job, files)


def _pointing(application: Application) -> Iterator[Step]:
    """The pointer moves over the canvas and rests, something is picked, and nothing again."""
    canvas = application.window.canvas.canvas

    def shown() -> bool:
        return not canvas._hover.isActive()

    for share in (0.3, 0.5, 0.7):
        at = (share, 0.45)
        yield Step("point", lambda at=at: _mouse(canvas, at, QEvent.Type.MouseMove), shown)
        yield Step("pick", lambda at=at: _click(canvas, at))
    yield Step("pick nothing", lambda: _click(canvas, (0.99, 0.02)))


def _surface(application: Application) -> Iterator[Step]:
    """Heights come, and the heat view is looked at."""
    heat = application.window.heat
    planner = application.design.planner
    yield Step("touched", lambda: _touched(application), lambda: planner.passes is not None)
    yield Step("page 5", lambda: application.window.choose_step(4))
    for aspect in (Aspect.SPREAD, Aspect.GIVE, Aspect.MEAN):
        yield Step(f"heat {aspect.value}", lambda aspect=aspect: heat.set_aspect(aspect))
    (ax, ay), (bx, by) = heat.section
    for share in (0.2, 0.4, 0.6):
        end = (ax + share * (bx - ax), by)
        yield Step("profile", lambda end=end: heat.set_profile(((ax, ay), end)))
        yield Step("linked cursor", lambda end=end: heat.cursor_moved.emit(end))
        yield Step(
            "linked cursor",
            lambda share=share: _mouse(
                application.window.canvas.canvas, (share, share), QEvent.Type.MouseMove
            ),
        )
    yield Step("page 6", lambda: application.window.choose_step(5))
    yield Step("view reach", lambda: application.window.canvas.set_view(View.REACH))


def _wizard(new_job: NewJob, files: Path) -> Iterator[Step]:
    def wizard() -> SetupWizard:
        assert new_job.wizard is not None
        return new_job.wizard

    def onward() -> None:
        wizard().next_button.click()

    def is_read() -> bool:
        return wizard().next_button.isEnabled()

    yield Step("wizard", new_job.start)
    yield Step("wizard, files", lambda: new_job.start([files]), is_read)
    for number in range(2, 7):
        yield Step(f"wizard {number}", onward)
    yield Step("wizard away", lambda: new_job.wizard and new_job.wizard.reject())


def bench_walk(application: Application) -> Iterator[Step]:
    """At the bench, with the copper touched and the marks made: run, hold, go on, stop."""
    window, strip = application.window, application.window.strip
    side = window.findChild(MachineSide)
    assert side is not None
    desk, running = side.desk, side.running

    def idle() -> bool:
        return desk.station is not None and not (desk.busy or desk._handlers or running._later.isActive())

    def connect() -> None:
        window.commands["connect"].trigger()
        dialog = side.connecting._dialog
        assert dialog is not None
        dialog.pace.setCurrentIndex(3)
        dialog.connect_button.click()

    def place() -> None:
        dialog = side.connecting._dialog
        assert dialog is not None
        dialog.reject()
        desk.operator.shown = 0.0
        desk.bar.automatic.setChecked(True)
        side.touching.survey.setChecked(False)
        side.preparing.lap_first.setChecked(False)
        session = application.bridge.session
        assert session is not None
        desk.with_station("place", lambda station, _: find_corner(session, station))

    def begin() -> None:
        desk.thread_.pace = 4.0
        running.page.start_button.click()

    def cutting() -> bool:
        newest = running.progress.newest
        return strip.state is RunState.CUTTING and newest is not None and newest.executed > 3

    yield Step("connect", connect, idle)
    yield Step("place", place, idle)
    yield Step("page 5", lambda: window.choose_step(4))
    yield Step("touch", side.touching.page.touch_button.click, idle)
    yield Step("page 8", lambda: window.choose_step(7), running.page.start_button.isEnabled)
    yield Step("start", begin, cutting)
    yield Step("hold", strip.hold_button.click, lambda: strip.state is RunState.HELD and desk.state.still)
    yield Step("resume", strip.resume_button.click, cutting)
    yield Step(
        "stop", window.commands["stop"].trigger, lambda: idle() and desk.state.activity is Activity.AT_REST
    )


def _press(canvas: QWidget, key: Qt.Key) -> None:
    for kind in (QEvent.Type.KeyPress, QEvent.Type.KeyRelease):
        QApplication.sendEvent(canvas, QKeyEvent(kind, key, Qt.KeyboardModifier.NoModifier))


def _click(canvas: QWidget, at: tuple[float, float]) -> None:
    for kind in (QEvent.Type.MouseButtonPress, QEvent.Type.MouseButtonRelease):
        _mouse(canvas, at, kind, Qt.MouseButton.LeftButton)


def _mouse(
    canvas: QWidget,
    at: tuple[float, float],
    kind: QEvent.Type,
    key: Qt.MouseButton = Qt.MouseButton.NoButton,
) -> None:
    """The pointer at a place, as shares of width and height."""
    place = QPointF(at[0] * canvas.width(), at[1] * canvas.height())
    event = QMouseEvent(
        kind, place, QPointF(canvas.mapToGlobal(place)), key, key, Qt.KeyboardModifier.NoModifier
    )
    QApplication.sendEvent(canvas, event)


def _touched(application: Application) -> None:
    """As after touching: gentle hills, and what the first touches gave."""
    session = application.bridge.session
    assert session is not None
    layout = session.derived.peek(session.snapshot).layout
    assert layout is not None
    xs, ys = np.linspace(4.0, layout.width - 4.0, 7), np.linspace(4.0, layout.height - 4.0, 6)
    touches = Touches(
        tuple(
            Touch(float(x), float(y), height, height + 0.002)
            for x in xs
            for y in ys
            for height in (0.02 * float(np.sin(0.1 * x) * np.cos(0.12 * y)),)
        )
    )
    session.keep("touches", {"setup": 1, "touches": touches})


def _bite(application: Application) -> object:
    session = application.bridge.session
    assert session is not None
    return replace(session.settings.cuts, bite=session.settings.cuts.bite + 0.01)
