"""The form of voltages between nets."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from drypoint.session.settings import Voltage
from drypoint.ui.parts.blocks import button, empty, words
from drypoint.ui.parts.explain import explain
from drypoint.ui.parts.fields import Choice, NumberField

MOST = 5000.0
"""V."""


class VoltagesForm(QWidget):
    """A row for every voltage: the net, what it is measured against, how much.

    Signals
    -------
    edited(object) : the new tuple of `Voltage`
    """

    edited = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._nets: tuple[str, ...] = ()
        self._voltages: tuple[Voltage, ...] = ()
        self._shown: object = None
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(6)
        self._rows = QVBoxLayout()
        self._rows.setSpacing(10)
        column.addLayout(self._rows)
        self._none = words(
            self.tr("No voltage is entered: clearances are not checked."), "caption", wrap=True
        )
        column.addWidget(self._none)
        self.add_button = button(self.tr("Add a voltage"))
        self.add_button.clicked.connect(self._add)
        explain(self.add_button, "electrical.voltages")
        column.addWidget(self.add_button)

    def show_voltages(self, voltages: Sequence[Voltage], nets: Sequence[str]) -> None:
        """Show what is entered; no signal."""
        self._voltages, self._nets = tuple(voltages), tuple(sorted(nets))
        self.add_button.setEnabled(bool(self._nets))
        self._none.setVisible(not self._voltages)
        if self._shown == (self._voltages, self._nets):
            return
        self._shown = (self._voltages, self._nets)
        empty(self._rows)
        for number, voltage in enumerate(self._voltages):
            self._rows.addWidget(self._row(number, voltage))

    def _row(self, number: int, voltage: Voltage) -> QWidget:
        made = QWidget()
        column = QVBoxLayout(made)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(4)
        net = self._choice(self.tr("Net that carries a voltage"), voltage.net, self._nets)
        others = ("", *(name for name in self._nets if name != voltage.net))
        other = self._choice(self.tr("Measured against"), voltage.other, others)
        volts = NumberField(
            self.tr("Voltage"),
            "V",
            value=voltage.volts,
            decimals=0,
            least=0.0,
            most=MOST,
            width=58,
            unit_width=14,
        )
        remove = button("×", "flat")
        remove.setAccessibleName(self.tr("Remove the voltage of {net}").format(net=voltage.net))
        remove.setFixedWidth(28)
        for field, name in ((net, "net"), (other, "other"), (volts, "volts")):
            explain(field, f"electrical.voltages.{name}")
        net.activated.connect(lambda _, box=net: self._change(number, net=str(box.currentData())))
        other.activated.connect(lambda _, box=other: self._change(number, other=str(box.currentData())))
        volts.edited.connect(lambda value: self._change(number, volts=value))
        remove.clicked.connect(
            lambda: self._settle((*self._voltages[:number], *self._voltages[number + 1 :]))
        )
        for first, second in ((net, volts), (other, remove)):
            row = QHBoxLayout()
            row.setSpacing(8)
            row.addWidget(first)
            row.addStretch(1)
            row.addWidget(second)
            column.addLayout(row)
        return made

    def _choice(self, name: str, chosen: str, names: Sequence[str]) -> Choice:
        box = Choice(name, 160)
        for each in names if chosen in names else (*names, chosen):
            box.addItem(each or self.tr("all other nets"), each)
        box.setCurrentIndex(box.findData(chosen))
        return box

    def _add(self) -> None:
        taken = {one.net for one in self._voltages}
        free = next((name for name in self._nets if name not in taken), self._nets[0])
        self._settle((*self._voltages, Voltage(free, "", 24.0)))

    def _change(self, number: int, **changes: object) -> None:
        new = list(self._voltages)
        new[number] = replace(new[number], **changes)  # type: ignore[arg-type]
        self._settle(tuple(new))

    def _settle(self, voltages: tuple[Voltage, ...]) -> None:
        self.show_voltages(voltages, self._nets)
        self.edited.emit(voltages)
