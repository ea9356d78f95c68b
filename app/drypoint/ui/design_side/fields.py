"""Plain numbers of the settings as fields of a page, each with its few words of help."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Any

from PySide6.QtCore import QObject

from drypoint.session.settings import Settings
from drypoint.ui.bridge import Bridge
from drypoint.ui.design_side.editing import Editing
from drypoint.ui.parts.explain import explain
from drypoint.ui.parts.fields import NumberField, Setting
from drypoint.ui.parts.page import Page


@dataclass(frozen=True, slots=True)
class Plain:
    """One number: its section and name in the settings, and how it is shown."""

    section: str
    name: str
    label: str
    unit: str = "mm"
    decimals: int = 2
    least: float = 0.0
    most: float = 100.0
    step: float | None = None

    @property
    def key(self) -> str:
        """Under which help is found."""
        return f"{self.section}.{self.name}"


class PlainFields(QObject):
    """A group of numbers on a page; every change is one action that can be undone."""

    def __init__(
        self, page: Page, title: str, fields: Sequence[Plain], bridge: Bridge, editing: Editing
    ) -> None:
        super().__init__(page)
        self._bridge, self._editing = bridge, editing
        self._fields: list[tuple[Plain, NumberField]] = []
        self._rows: dict[str, Setting] = {}
        if title:
            page.section(title)
        wide = any(len(plain.unit) > 3 for plain in fields)  # one column: the numbers end below each other
        for plain in fields:
            field = NumberField(
                plain.label,
                plain.unit,
                decimals=plain.decimals,
                least=plain.least,
                most=plain.most,
                step=plain.step,
                width=66 if wide else 74,
                unit_width=56 if wide else 30,
            )
            field.edited.connect(lambda value, plain=plain: self._change(plain, value))
            row = Setting(plain.label, field)
            explain(row, plain.key)
            page.add(row)
            self._rows[plain.name] = row
            self._fields.append((plain, field))

    def field(self, name: str) -> NumberField:
        """A field by its name in the settings."""
        return next(field for plain, field in self._fields if plain.name == name)

    def show_row(self, name: str, shown: bool) -> None:
        """Whether the row of a field is in sight: where it changes nothing it only takes room."""
        self._rows[name].setVisible(shown)

    def show(self, settings: Settings) -> None:
        """Fill all fields."""
        for plain, field in self._fields:
            field.set_value(float(getattr(getattr(settings, plain.section), plain.name)))

    def _change(self, plain: Plain, value: float) -> None:
        session = self._bridge.session
        if session is None:
            return
        before: Any = getattr(session.settings, plain.section)
        whole = isinstance(getattr(before, plain.name), int)
        changed = replace(before, **{plain.name: round(value) if whole else value})
        self._editing.change(plain.label, **{plain.section: changed})
