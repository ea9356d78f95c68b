"""What to do next: a page whose step is done has a button that goes on to the first step that is not."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QObject

from drypoint.session.traveller import Line, StepState
from drypoint.ui.parts.page import Page
from drypoint.ui.window import MainWindow


class Onward(QObject):
    """Keeps the buttons of the first pages in step with the traveller."""

    def __init__(self, window: MainWindow, pages: Sequence[Page]) -> None:
        super().__init__(window)
        self._window, self._pages = window, tuple(pages)
        self._shown: dict[Page, int | None] = {}
        for page in self._pages:
            page.onward.connect(lambda page=page: self._go(page))

    def show(self, lines: Sequence[Line], names: Sequence[str]) -> None:
        """What the traveller's lines say; ``names`` are those of the steps as the window shows them."""
        open_steps = [number for number, line in enumerate(lines) if line.state is not StepState.DONE]
        for number, page in enumerate(self._pages):
            done = number < len(lines) and lines[number].state is StepState.DONE
            later = next((step for step in open_steps if step > number), None) if done else None
            if self._shown.get(page) != later:
                self._shown[page] = later
                said = "" if later is None else self.tr("Next: {page}").format(page=names[later])
                page.show_onward(said)

    def _go(self, page: Page) -> None:
        step = self._shown.get(page)
        if step is not None:
            self._window.choose_step(step)
