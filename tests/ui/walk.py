"""A walk through the window that a person might take, for watching how long its turns last."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace
from pathlib import Path

from PySide6.QtCore import QEvent, Qt
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QApplication, QWidget

from drypoint.ui.app import Application
from drypoint.ui.canvas.content import Layer, View

Step = tuple[str, Callable[[], object]]


def walk(application: Application, job: Path) -> Iterator[Step]:
    """Steps by name; the event loop is to run after each until nothing is computed."""
    window = application.window
    panel = window.canvas
    yield "open", lambda: application.design.documents.open(job)
    for number in range(9):
        yield f"page {number + 1}", lambda number=number: window.choose_step(number)
    for view in View:
        yield f"view {view.value}", lambda view=view: panel.set_view(view)
    for share in (0.1, 0.5, 0.9):
        yield "scrub", lambda share=share: panel.scrub(share)
    yield "undoable change", lambda: application.design.editing.change("Bite", cuts=_bite(application))
    yield "undo", window.commands["undo"].trigger
    yield "redo", window.commands["redo"].trigger
    for factor in (3.0, 1.5, 0.2):
        yield "zoom", lambda factor=factor: panel.canvas.zoom(factor)
    for key in (Qt.Key.Key_Left, Qt.Key.Key_Up):
        yield "pan", lambda key=key: _press(panel.canvas, key)
    for layers in (frozenset({Layer.COPPER, Layer.HOLES}), frozenset()):
        yield "layers", lambda layers=layers: panel.canvas.set_hidden(layers)
    yield "dark", lambda: application.theme.choose(True)
    yield "light", lambda: application.theme.choose(False)
    for width, height in ((1024, 700), (1600, 1000)):
        yield "size", lambda width=width, height=height: window.resize(width, height)


def _press(canvas: QWidget, key: Qt.Key) -> None:
    for kind in (QEvent.Type.KeyPress, QEvent.Type.KeyRelease):
        QApplication.sendEvent(canvas, QKeyEvent(kind, key, Qt.KeyboardModifier.NoModifier))


def _bite(application: Application) -> object:
    session = application.bridge.session
    assert session is not None
    return replace(session.settings.cuts, bite=session.settings.cuts.bite + 0.01)
