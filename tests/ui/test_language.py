"""The window in German: words, numbers, Qt's own dialogs; and back."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtCore import QLocale
from PySide6.QtWidgets import QApplication, QDialogButtonBox

from drypoint.session.help import HELP
from drypoint.ui.language.speech import Language, Speech
from drypoint.ui.language.words import fill, local, told
from drypoint.ui.parts.blocks import Note
from drypoint.ui.parts.fields import NumberField
from drypoint.ui.theme.theme import Theme
from drypoint.ui.window import MainWindow


@pytest.fixture
def german(qapp: QApplication) -> Iterator[None]:
    speech, before = Speech(qapp), QLocale()
    assert speech.speak(Language.GERMAN) is Language.GERMAN
    yield
    speech.speak(Language.ENGLISH)
    QLocale.setDefault(before)


@pytest.mark.usefixtures("german")
def test_menus_helps_and_qts_own_words(qtbot, light: Theme) -> None:
    window = MainWindow(light)
    qtbot.addWidget(window)
    assert window.commands["open"].text().replace("&", "").startswith("Öffnen")
    assert window.commands["hold"].text().replace("&", "") != "Hold"
    does = HELP["cuts.depth"].does
    assert told(does) != does
    box = QDialogButtonBox(QDialogButtonBox.StandardButton.Cancel)
    qtbot.addWidget(box)
    assert box.buttons()[0].text() == "Abbrechen"


@pytest.mark.usefixtures("german")
def test_numbers_have_a_comma_and_both_signs_are_read(qtbot) -> None:
    field = NumberField("Tiefe", "mm", value=0.125, decimals=3, least=0.0, most=1.0)
    qtbot.addWidget(field)
    line = field.line_edit()
    assert line.text() == "0,125"
    for typed in ("0,25", "0.25"):
        field.set_value(0.125)
        line.setText(typed)
        line.editingFinished.emit()
        assert field.value == pytest.approx(0.25)
        assert line.text() == "0,250"
    assert local("1.25 × 3.50 mm") == "1,25 × 3,50 mm"
    assert fill("{a:.2f} / {b}", a=0.5, b="v1.2") == "0,50 / v1.2"


@pytest.mark.usefixtures("german")
def test_a_note_says_a_text_of_the_core_in_german(qtbot) -> None:
    help_ = HELP["surface.touches"]
    note = Note("plain", help_.does, help_.usual)
    qtbot.addWidget(note)
    assert note._what.text() == told(help_.does) != str(help_.does)
    assert note._text.text().startswith("Üblich")


def test_english_needs_no_catalogue(qapp: QApplication) -> None:
    assert Speech(qapp).speak(Language.ENGLISH) is Language.ENGLISH
    assert told(HELP["cuts.depth"].does) == HELP["cuts.depth"].does
    assert local("1.25 mm") == "1.25 mm"
