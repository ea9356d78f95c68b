"""Which language the window speaks, and Qt's way to it."""

from __future__ import annotations

from collections.abc import Mapping
from enum import StrEnum

from PySide6.QtCore import QCoreApplication, QLibraryInfo, QLocale, QObject, QTranslator

from drypoint.ui.language.catalogue import FOLDER, read_catalogue


class Language(StrEnum):
    """The choice in the menu."""

    SYSTEM = "system"
    ENGLISH = "en"
    GERMAN = "de"


class Catalogue(QTranslator):
    """Looks texts up whatever class asks: one English text has one translation."""

    def __init__(self, texts: Mapping[str, str], parent: QObject) -> None:
        super().__init__(parent)
        self._texts = texts

    def translate(  # None lets Qt ask the next one
        self, context: str, source: str, disambiguation: str | None = None, n: int = -1
    ) -> str | None:
        return self._texts.get(source)

    def isEmpty(self) -> bool:
        return not self._texts


class Speech:
    """Makes Qt speak a language; English needs nothing."""

    def __init__(self, app: QCoreApplication) -> None:
        self._app = app
        self._installed: list[QTranslator] = []

    def speak(self, choice: Language) -> Language:
        """Speak what was chosen from now on; widgets made before keep their words. What is spoken now."""
        for old in self._installed:
            self._app.removeTranslator(old)
        self._installed.clear()
        system = QLocale.system()
        spoken = choice
        if choice is Language.SYSTEM:
            german = system.language() == QLocale.Language.German
            spoken = Language.GERMAN if german else Language.ENGLISH
        if spoken is Language.GERMAN:
            german_here = system.language() == QLocale.Language.German
            QLocale.setDefault(system if german_here else QLocale(QLocale.Language.German))
            self._install(self._of_qt("de"))
            self._install(Catalogue(read_catalogue(FOLDER / "drypoint_de.ts"), self._app))
        else:
            QLocale.setDefault(QLocale(QLocale.Language.English))
        return spoken

    def _of_qt(self, code: str) -> QTranslator:
        """What Qt's own dialogs say."""
        made = QTranslator(self._app)
        made.load(f"qtbase_{code}", QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath))
        return made

    def _install(self, translator: QTranslator) -> None:
        self._app.installTranslator(translator)
        self._installed.append(translator)
