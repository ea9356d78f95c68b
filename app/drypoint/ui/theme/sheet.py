# ruff: noqa: E501 - style rules and path data read best unbroken
"""The style sheet: flat, square panels, thin edges, one filled copper button.

Widgets say what they are through the property ``look`` (see `LOOKS`), never through colours.
"""

from __future__ import annotations

from string import Template

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QWidget

from drypoint.ui.theme.tokens import Tokens

LOOKS = frozenset(
    {
        "",  # as such widgets usually look
        "page",
        "section",
        "body",
        "label",
        "value",
        "caption",
        "quiet",
        "figure",
        "state",
        "state-small",
        "position",
        "primary",
        "run",
        "stop",
        "axis",
        "segment",
        "first-segment",
        "last-segment",
        "only-segment",
        "flat",
        "panel",
        "sunken",
        "row",
        "row-chosen",
        "note-plain",
        "note-caution",
        "note-error",
        "rule",
        "unit",
        "armed",
        "strip",
        "card",
        "help",
    }
)
"""Every value of the ``look`` property the sheet knows."""


def give_look(widget: QWidget, look: str) -> None:
    """Set or change what a widget looks like.

    Raises
    ------
    KeyError
        If there is no such look: a fault of the caller.
    """
    if look not in LOOKS:
        raise KeyError(look)
    widget.setProperty("look", look)
    if not widget.testAttribute(Qt.WidgetAttribute.WA_WState_Polished):
        return  # it will be, when it is shown
    style = widget.style()
    style.unpolish(widget)
    style.polish(widget)


def style_sheet(tokens: Tokens) -> str:
    """The whole style sheet for one scheme."""
    names = {name: getattr(tokens, name) for name in tokens.__slots__ if name != "dark"}
    return Template(_SHEET).substitute(names)


_SHEET = """
QToolTip { background: $panel; color: $ink; border: 1px solid $edge; padding: 4px 8px; font-size: 13px; }
QDialog { background: $window; }
QLabel { color: $ink; background: transparent; }
QLabel:disabled { color: $off; }
QLabel[look="page"] { font-size: 20px; font-weight: 600; }
QLabel[look="section"] { font-size: 16px; font-weight: 600; }
QLabel[look="body"] { font-size: 14px; }
QLabel[look="label"] { font-size: 13px; }
QLabel[look="value"] { font-size: 13px; font-weight: 600; }
QLabel[look="caption"] { font-size: 12px; color: $ink2; }
QLabel[look="quiet"] { font-size: 13px; color: $ink2; }
QLabel[look="unit"] { font-size: 13px; color: $ink2; }
QLabel[look="figure"] { font-size: 46px; font-weight: 600; }
QLabel[look="state"] { font-size: 24px; font-weight: 700; }
QLabel[look="state-small"] { font-size: 20px; font-weight: 700; }
QLabel[look="position"] { font-size: 32px; font-weight: 600; }
QLabel[look="armed"] { font-size: 13px; font-weight: 600; color: $copper; }

QWidget[look="panel"] { background: $panel; }
QWidget[look="sunken"] { background: $sunken; }
QWidget[look="strip"] { background: $panel; border-top: 1px solid $line; }
QFrame[look="rule"] { background: $line; border: none; max-height: 1px; min-height: 1px; }
QFrame[look="note-plain"] { background: $soft; border: none; border-left: 3px solid $copper; }
QFrame[look="note-caution"] { background: $caution_ground; border: none; border-left: 3px solid $caution; }
QFrame[look="note-error"] { background: $error_ground; border: none; border-left: 3px solid $error; }
QFrame[look="card"] { background: $panel; border: 1px solid $edge; border-radius: 5px; }
QFrame[look="card"]:focus { border: 2px solid $copper; }
QFrame[look="row"] { background: transparent; border: none; }
QFrame[look="row-chosen"] { background: $soft; border: none; }

QPushButton { background: $panel; color: $ink; border: 1px solid $edge; border-radius: 4px;
  padding: 4px 12px; min-height: 24px; font-size: 14px; }
QPushButton:hover { background: $window; }
QPushButton:pressed { background: $sunken; }
QPushButton:focus { border: 2px solid $copper; padding: 3px 11px; }
QPushButton:disabled { color: $off; border-color: $line; }
QPushButton[look="primary"] { background: $copper; color: $on_copper; border: 2px solid $copper;
  font-weight: 600; padding: 8px 16px; min-height: 26px; }
QPushButton[look="primary"]:focus { border: 2px solid $ink; padding: 8px 16px; }
QPushButton[look="primary"]:disabled { background: $sunken; color: $off; border-color: $line; }
QPushButton[look="run"] { font-weight: 600; font-size: 15px; min-height: 42px; min-width: 84px; padding: 2px 6px; }
QPushButton[look="run"]:focus { border: 2px solid $copper; padding: 1px 5px; }
QPushButton[look="run"][filled="true"] { background: $copper; color: $on_copper; border-color: $copper; }
QPushButton[look="run"][filled="true"]:focus { border: 2px solid $ink; }
QPushButton[look="stop"] { background: $ink; color: $panel; border: 2px solid $ink; font-weight: 700;
  font-size: 15px; min-height: 42px; min-width: 84px; padding: 1px 5px; }
QPushButton[look="stop"]:focus { border: 2px solid $copper; }
QPushButton[look="stop"]:pressed { background: $ink2; }
QPushButton[look="axis"] { min-width: 38px; min-height: 38px; max-width: 38px; max-height: 38px; padding: 0; font-size: 18px; }
QPushButton[look="axis"]:focus { padding: 0; min-width: 36px; min-height: 36px; max-width: 36px; max-height: 36px; }
QPushButton[look="help"] { border: 1px solid transparent; background: transparent; color: $ink2;
  padding: 0; min-height: 0; font-size: 13px; border-radius: 12px; }
QPushButton[look="help"]:hover { border-color: $edge; }
QPushButton[look="help"]:focus { border: 2px solid $copper; padding: 0; }
QPushButton[look="flat"] { border: 1px solid transparent; background: transparent; color: $copper;
  padding: 2px 4px; min-height: 20px; font-size: 13px; text-align: left; }
QPushButton[look="flat"]:hover { text-decoration: underline; }
QPushButton[look="flat"]:focus { border: 2px solid $copper; padding: 1px 3px; }
QPushButton[look$$="segment"] { border-radius: 0; border-left-width: 0; padding: 3px 11px; font-size: 13px; }
QPushButton[look="first-segment"] { border-left-width: 1px; border-top-left-radius: 4px; border-bottom-left-radius: 4px; }
QPushButton[look="last-segment"] { border-top-right-radius: 4px; border-bottom-right-radius: 4px; }
QPushButton[look="only-segment"] { border-left-width: 1px; border-radius: 4px; }
QPushButton[look$$="segment"]:checked { background: $pressed; color: $on_pressed; font-weight: 600; }
QPushButton[look$$="segment"]:checked:disabled { background: $line; color: $ink2; }
QPushButton[look$$="segment"]:focus { border: 2px solid $copper; padding: 2px 10px; }

QLineEdit, QSpinBox, QDoubleSpinBox, QComboBox, QPlainTextEdit { background: $panel; color: $ink;
  border: 1px solid $edge; border-radius: 4px; padding: 3px 8px; min-height: 22px; font-size: 14px;
  selection-background-color: $copper; selection-color: $on_copper; }
QLineEdit:focus, QComboBox:focus, QPlainTextEdit:focus { border: 2px solid $copper; padding: 2px 7px; }
QLineEdit:disabled, QComboBox:disabled { color: $off; border-color: $line; }
QLineEdit[wrong="true"] { border: 2px solid $error; background: $error_ground; padding: 2px 7px; }
QComboBox::drop-down { border: none; width: 22px; }
QComboBox QAbstractItemView { background: $panel; color: $ink; border: 1px solid $edge;
  selection-background-color: $soft; selection-color: $ink; outline: none; padding: 4px; }
QCheckBox, QRadioButton { color: $ink; font-size: 13px; spacing: 8px; padding: 3px; border: 2px solid transparent; border-radius: 4px; }
QCheckBox:focus, QRadioButton:focus { border-color: $copper; }
QCheckBox:disabled, QRadioButton:disabled { color: $off; }
QRadioButton::indicator { width: 14px; height: 14px; border: 1px solid $edge; border-radius: 8px; background: $panel; }
QRadioButton::indicator:checked { width: 6px; height: 6px; border: 5px solid $copper; border-radius: 8px; }
QRadioButton::indicator:disabled { border-color: $line; }

QMenuBar { background: $panel; color: $ink; border-bottom: 1px solid $line; padding: 2px 6px; font-size: 13px; }
QMenuBar::item { padding: 6px 10px; background: transparent; border-radius: 4px; font-size: 13px; }
QMenuBar::item:selected { background: $soft; }
QMenu { background: $panel; color: $ink; border: 1px solid $edge; padding: 4px; font-size: 13px; }
QMenu::item { padding: 6px 28px 6px 28px; border-radius: 4px; font-size: 13px; }
QMenu::item:selected { background: $soft; color: $ink; }
QMenu::item:disabled { color: $off; }
QMenu::separator { height: 1px; background: $line; margin: 4px 8px; }
QScrollArea { background: transparent; border: none; }
QScrollArea > QWidget > QWidget[look="panel"] { background: $panel; }
QScrollBar:vertical { background: transparent; width: 10px; margin: 0; }
QScrollBar::handle:vertical { background: $edge; min-height: 32px; border-radius: 3px; margin: 2px; }
QScrollBar:horizontal { background: transparent; height: 10px; margin: 0; }
QScrollBar::handle:horizontal { background: $edge; min-width: 32px; border-radius: 3px; margin: 2px; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; }
QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }
QTreeView, QListView, QTableView { background: $panel; color: $ink; border: 1px solid $line;
  outline: none; font-size: 13px; selection-background-color: $soft; selection-color: $ink; }
QTreeView:focus, QListView:focus, QTableView:focus { border: 2px solid $copper; }
QTreeView::item, QListView::item, QTableView::item { padding: 5px 6px; border: none; }
QTreeView::item:selected, QListView::item:selected, QTableView::item:selected { background: $soft; color: $ink; }
QHeaderView::section { background: $panel; color: $ink2; border: none; border-bottom: 1px solid $line;
  padding: 5px 6px; font-size: 12px; }
"""
