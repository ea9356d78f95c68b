"""A walk through the window that a person might take, for watching how long its turns last."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace
from pathlib import Path

from drypoint.ui.app import Application
from drypoint.ui.canvas.content import View

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
    yield "dark", lambda: application.theme.choose(True)
    yield "light", lambda: application.theme.choose(False)
    for width, height in ((1024, 700), (1600, 1000)):
        yield "size", lambda width=width, height=height: window.resize(width, height)


def _bite(application: Application) -> object:
    session = application.bridge.session
    assert session is not None
    return replace(session.settings.cuts, bite=session.settings.cuts.bite + 0.01)
