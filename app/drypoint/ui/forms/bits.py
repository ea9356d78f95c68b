"""The form of the bits at hand."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QLineEdit, QVBoxLayout, QWidget

from drypoint.bits.drill_sizes import drill_sizes, size_words
from drypoint.board.model import Finding
from drypoint.errors import InputError
from drypoint.ui.forms.sketch import VBitSketch
from drypoint.ui.forms.values import BitValues
from drypoint.ui.language.words import local, told
from drypoint.ui.parts.blocks import Note, empty, rule, words
from drypoint.ui.parts.explain import explain
from drypoint.ui.parts.fields import NumberField, Setting
from drypoint.ui.theme.theme import Theme

LARGEST_DRILL = 10.0
"""mm; what is larger is bored with the end mill."""

EXPLAINED = {
    "tip": "bits.vbit.tip",
    "angle_deg": "bits.vbit.angle",
    "runout": "bits.vbit.runout",
    "feed": "bits.vbit.speeds.feed",
    "plunge": "bits.vbit.speeds.plunge",
    "spindle": "bits.vbit.speeds.spindle",
    "mill": "bits.mill.diameter",
    "mill_feed": "bits.mill.speeds.feed",
    "mill_plunge": "bits.mill.speeds.plunge",
    "mill_step": "bits.mill.step",
    "drill_plunge": "bits.drills.speeds.plunge",
    "drill_peck": "bits.drills.peck",
}
"""Where the help of each field is found."""


class BitsForm(QWidget):
    """V-bit, end mill and drills.

    Signals
    -------
    edited(object) : the new `BitValues`
    """

    edited = Signal(object)

    def __init__(self, theme: Theme, values: BitValues, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._values = values
        self._sketch = VBitSketch(theme)
        table = (
            ("tip", self.tr("Width of the tip"), "mm", 2, 0.0, 3.0, 0.01),
            ("angle_deg", self.tr("Included angle"), "°", 0, 5.0, 120.0, 1.0),
            ("runout", self.tr("Run-out"), "mm", 3, 0.0, 0.2, 0.005),
            ("feed", self.tr("Feed"), "mm/min", 0, 1.0, 5000.0, 10.0),
            ("plunge", self.tr("Plunge"), "mm/min", 0, 1.0, 2000.0, 10.0),
            ("spindle", self.tr("Spindle"), "/min", 0, 0.0, 100000.0, 500.0),
            ("mill", self.tr("End mill, diameter"), "mm", 2, 0.2, 6.0, 0.1),
            ("mill_feed", self.tr("End mill, feed"), "mm/min", 0, 1.0, 5000.0, 10.0),
            ("mill_plunge", self.tr("End mill, plunge"), "mm/min", 0, 1.0, 2000.0, 10.0),
            ("mill_step", self.tr("End mill, deepest cut at once"), "mm", 2, 0.05, 3.0, 0.05),
            ("drill_plunge", self.tr("Drills, plunge"), "mm/min", 0, 1.0, 2000.0, 10.0),
            ("drill_peck", self.tr("Drills, depth of a peck"), "mm", 2, 0.0, 5.0, 0.1),
        )
        self.fields = {
            key: NumberField(
                name, unit, decimals=decimals, least=least, most=most, step=step, width=74, unit_width=58
            )
            for key, name, unit, decimals, least, most, step in table
        }
        self.drills = QLineEdit()
        self.drills.setAccessibleName(self.tr("Drills at hand, mm"))
        self._build()
        for name, field in self.fields.items():
            field.edited.connect(lambda value, name=name: self._change(**{name: value}))
        self.drills.editingFinished.connect(self._drills_settled)
        self.set_values(values)

    def _build(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(6)
        column.addWidget(words(self.tr("V-bit for grooves"), "section"))
        column.addWidget(self._sketch)
        for name in ("tip", "angle_deg", "runout", "feed", "plunge", "spindle"):
            column.addWidget(self._row(name))
        column.addWidget(rule())
        column.addWidget(words(self.tr("Outline and holes"), "section"))
        for name in ("mill", "mill_feed"):
            column.addWidget(self._row(name))
        self.drills.setMinimumWidth(158)
        drills = Setting(self.tr("Drills at hand, mm"), self.drills)
        explain(drills, "bits.drills.diameter")
        column.addWidget(drills)
        for name in ("drill_plunge", "drill_peck"):
            column.addWidget(self._row(name))
        caution = self.tr(
            "Feeds and speeds are common practice for small engravers; "
            "the makers of bit and machine know better."
        )
        column.addWidget(words(caution, "caption", wrap=True))
        self._notes = QVBoxLayout()
        self._notes.setSpacing(8)
        column.addLayout(self._notes)
        column.addStretch(1)

    def _show_findings(self, findings: Sequence[Finding]) -> None:
        """Say what is wrong with how the bits are run."""
        empty(self._notes)
        for one in findings:
            self._notes.addWidget(Note("caution", told(one.what), told(one.hint)))

    def _row(self, name: str) -> Setting:
        """A field with its help."""
        field = self.fields[name]
        made = Setting(field.accessibleName(), field)
        explain(made, EXPLAINED[name])
        return made

    @property
    def values(self) -> BitValues:
        """What is set."""
        return self._values

    def set_values(self, values: BitValues, findings: Sequence[Finding] | None = None) -> None:
        """Show other values, and what is wrong with them where that is known; no signal."""
        self._values = values
        if findings is not None:
            self._show_findings(findings)
        for name, field in self.fields.items():
            field.set_value(getattr(values, name))
        self.drills.setText("  ".join(local(f"{d:g}") for d in values.drills))
        self.drills.setCursorPosition(0)
        self._tell_drills(values.drills)
        self._sketch.show_bit(values.tip, values.angle_deg)

    def _change(self, **changes: object) -> None:
        self.set_values(replace(self._values, **changes))  # type: ignore[arg-type]
        self.edited.emit(self._values)

    def _drills_settled(self) -> None:
        try:
            read = drill_sizes(self.drills.text())
        except InputError as error:
            self.drills.setToolTip(f"{error.what} {error.hint}")
            return
        drills = tuple(size for size in read if size <= LARGEST_DRILL)
        self._tell_drills(drills)
        if drills != self._values.drills:
            self._change(drills=drills)

    def _tell_drills(self, drills: tuple[float, ...]) -> None:
        """What the drills are called, and how sizes can be written."""
        how = self.tr("Sizes in mm, or as 0.032 in, 1/32 in, #67, letter C.")
        told = "\n".join(size_words(size) for size in drills)
        self.drills.setToolTip(f"{how}\n{told}")
        self.drills.setAccessibleDescription(how)
