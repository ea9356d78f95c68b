"""The form of the machine."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QCheckBox, QVBoxLayout, QWidget

from drypoint.ui.forms.values import MachineValues
from drypoint.ui.parts.blocks import Note, button, rule, words
from drypoint.ui.parts.explain import explain
from drypoint.ui.parts.fields import Choice, NumberField, Setting
from drypoint.ui.theme.theme import Theme

BAUDS = (115200, 57600, 38400, 19200, 9600)


class MachineForm(QWidget):
    """Port, travel, play and what the controller switches.

    Signals
    -------
    edited(object) : the new `MachineValues`
    ports_wanted() : look for ports again
    """

    edited = Signal(object)
    ports_wanted = Signal()

    def __init__(self, theme: Theme, values: MachineValues, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._values = values
        self._classes: dict[str, MachineValues] = {}
        self.size_class = Choice(self.tr("Size of the machine"), 236)
        self._size_setting = Setting(self.tr("Size of the machine"), self.size_class)
        self.port = Choice(self.tr("Port"), 236)
        self.baud = Choice(self.tr("Baud"), 236)
        self.look_again = button(self.tr("Look again"))
        self._travel = [
            NumberField(self.tr("Travel {axis}").format(axis=axis), "mm", decimals=0, least=5.0, most=3000.0)
            for axis in "XYZ"
        ]
        self._play = [
            NumberField(
                self.tr("Play {axis}").format(axis=axis), "mm", decimals=3, least=0.0, most=1.0, step=0.005
            )
            for axis in "XY"
        ]
        self.contact = QCheckBox(self.tr("A clip and the contact input are there"))
        self.spindle = QCheckBox(self.tr("The controller switches the spindle"))
        self.homing = QCheckBox(self.tr("The machine has switches and finds its home"))
        self._build()
        self._connect()
        self.show_ports(())
        self.set_values(values)

    def _build(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(6)
        column.addWidget(words(self.tr("Connection"), "section"))
        for box, name in ((self.port, self.tr("Port")), (self.baud, self.tr("Baud"))):
            row = Setting(name, box)
            explain(row, "machine.port" if box is self.port else "machine.baud")
            column.addWidget(row)
        for baud in BAUDS:
            self.baud.addItem(str(baud), baud)
        column.addWidget(Setting("", self.look_again))
        column.addWidget(rule())
        column.addWidget(words(self.tr("Axes"), "section"))
        column.addWidget(self._size_setting)
        self._size_setting.hide()
        for field in (*self._travel, *self._play):
            row = Setting(field.accessibleName(), field)
            explain(row, "machine.travel" if field in self._travel else "machine.play")
            column.addWidget(row)
        column.addWidget(rule())
        for check, name in (
            (self.contact, "contact"),
            (self.spindle, "spindle_switched"),
            (self.homing, "homing"),
        ):
            explain(check, f"machine.{name}")
            column.addWidget(check)
        text = self.tr(
            "Stop in this program is no emergency stop. Keep the power switch within reach, wear eye "
            "protection, and follow the manual of the machine's maker."
        )
        column.addSpacing(6)
        column.addWidget(Note("plain", self.tr("Before anything moves"), text))
        column.addStretch(1)

    def _connect(self) -> None:
        self.size_class.activated.connect(lambda _: self._take_class(str(self.size_class.currentData())))
        self.port.activated.connect(lambda _: self._change(port=str(self.port.currentData())))
        self.baud.activated.connect(lambda _: self._change(baud=int(self.baud.currentData())))
        self.look_again.clicked.connect(self.ports_wanted)
        for field in self._travel:
            field.edited.connect(lambda _: self._change(travel=tuple(f.value for f in self._travel)))
        for field in self._play:
            field.edited.connect(lambda _: self._change(play=tuple(f.value for f in self._play)))
        self.contact.clicked.connect(lambda on: self._change(contact=on))
        self.spindle.clicked.connect(lambda on: self._change(spindle_switched=on))
        self.homing.clicked.connect(lambda on: self._change(homing=on))

    def show_classes(self, classes: Mapping[str, MachineValues]) -> None:
        """Offer machines by size class; choosing one sets travel and what the controller switches."""
        self._classes = dict(classes)
        words_of_class = self._class_words()
        self.size_class.clear()
        for name in classes:
            self.size_class.addItem(words_of_class.get(name, name), name)
        self._size_setting.setVisible(bool(classes))
        self.size_class.setCurrentIndex(self.size_class.findData(self._values.size_class))

    def _class_words(self) -> Mapping[str, str]:
        """The size classes that come with the program, in the language of the window."""
        return {
            "small": self.tr("small"),
            "small, spindle by hand": self.tr("small, spindle by hand"),
            "medium": self.tr("medium"),
            "medium, spindle on and off": self.tr("medium, spindle on and off"),
            "large, with homing": self.tr("large, with homing"),
        }

    def show_ports(self, ports: Sequence[tuple[str, str]]) -> None:
        """Offer ports: name and what is said of it; the bench is always there."""
        self.port.clear()
        self.port.addItem(self.tr("Bench (simulated machine)"), "")
        for name, what in ports:
            self.port.addItem(f"{name}  {what}".strip(), name)
        self._show_port()

    @property
    def values(self) -> MachineValues:
        """What is set."""
        return self._values

    def set_values(self, values: MachineValues) -> None:
        """Show other values; no signal."""
        self._values = values
        self._show_port()
        self.size_class.setCurrentIndex(self.size_class.findData(values.size_class))
        self.baud.setCurrentIndex(max(0, self.baud.findData(values.baud)))
        for field, value in zip((*self._travel, *self._play), (*values.travel, *values.play), strict=True):
            field.set_value(value)
        self.contact.setChecked(values.contact)
        self.spindle.setChecked(values.spindle_switched)
        self.homing.setChecked(values.homing)

    def _show_port(self) -> None:
        index = self.port.findData(self._values.port)
        if index < 0:
            self.port.addItem(self._values.port, self._values.port)
            index = self.port.count() - 1
        self.port.setCurrentIndex(index)

    def _take_class(self, name: str) -> None:
        usual = self._classes[name]
        self._change(
            size_class=name,
            travel=usual.travel,
            contact=usual.contact,
            spindle_switched=usual.spindle_switched,
            homing=usual.homing,
        )

    def _change(self, **changes: object) -> None:
        self.set_values(replace(self._values, **changes))  # type: ignore[arg-type]
        self.edited.emit(self._values)
