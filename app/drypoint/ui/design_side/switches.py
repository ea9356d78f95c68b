"""Plain yes-or-no settings as switches of a page, each with its few words of help."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Any

from PySide6.QtCore import QObject

from drypoint.session.settings import Settings
from drypoint.ui.bridge import Bridge
from drypoint.ui.design_side.editing import Editing
from drypoint.ui.parts.explain import explain
from drypoint.ui.parts.fields import Setting
from drypoint.ui.parts.page import Page
from drypoint.ui.parts.switch import Switch


class PlainSwitches(QObject):
    """Switches below each other; every change is one action that can be undone.

    ``flags`` are (section, name in it, words).
    """

    def __init__(
        self, page: Page, flags: Sequence[tuple[str, str, str]], bridge: Bridge, editing: Editing
    ) -> None:
        super().__init__(page)
        self._bridge, self._editing = bridge, editing
        self._switches: dict[tuple[str, str], Switch] = {}
        for section, name, label in flags:
            switch = Switch(page.theme, label)
            switch.clicked.connect(
                lambda on, section=section, name=name, label=label: self._change(section, name, label, on)
            )
            row = Setting(label, switch)
            explain(row, f"{section}.{name}")
            page.add(row)
            self._switches[section, name] = switch

    def switch(self, name: str) -> Switch:
        """A switch by the name of its setting."""
        return next(switch for (_, one), switch in self._switches.items() if one == name)

    def show(self, settings: Settings) -> None:
        """Turn all as they are set."""
        for (section, name), switch in self._switches.items():
            switch.setChecked(bool(getattr(getattr(settings, section), name)))

    def _change(self, section: str, name: str, label: str, on: bool) -> None:
        session = self._bridge.session
        if session is None:
            return
        before: Any = getattr(session.settings, section)
        self._editing.change(label, **{section: replace(before, **{name: on})})
