"""The theme in force: follows the system's light or dark scheme unless told otherwise."""

from __future__ import annotations

from PySide6.QtCore import QObject, Qt, Signal
from PySide6.QtGui import QColor, QPalette
from PySide6.QtWidgets import QApplication, QWidget

from drypoint.ui.theme.sheet import style_sheet
from drypoint.ui.theme.style import BenchStyle
from drypoint.ui.theme.tokens import DARK, LIGHT, Tokens
from drypoint.ui.theme.type import Text, font
from drypoint.ui.theme.wardrobe import Wardrobe


class Theme(QObject):
    """Dresses the areas it is given; widgets that paint for themselves read ``tokens``.

    Parameters
    ----------
    app : QApplication
    dark : bool, optional
        Fixed scheme; None follows the system.
    """

    changed = Signal()

    def __init__(self, app: QApplication, dark: bool | None = None) -> None:
        super().__init__(app)
        self._app = app
        self._dark = dark
        self.tokens: Tokens = LIGHT
        self._dressed = False
        self.wardrobe = Wardrobe(self)
        self._style = BenchStyle(lambda: self.tokens)
        app.setStyle(self._style)
        app.styleHints().colorSchemeChanged.connect(self._system_changed)
        self._apply()

    @property
    def chosen(self) -> bool | None:
        """The scheme chosen; None while it follows the system."""
        return self._dark

    def choose(self, dark: bool | None) -> None:
        """Fix the scheme, or follow the system with None."""
        self._dark = dark
        self._apply()

    def dress(self, area: QWidget) -> None:
        """Have an area look as the theme does: all that is ever put into it."""
        self.wardrobe.dress(area)

    def colour(self, name: str) -> QColor:
        """The colour of a token by its name."""
        return QColor(getattr(self.tokens, name))

    def _system_changed(self) -> None:
        if self._dark is None:
            self._apply()

    def _apply(self) -> None:
        system = self._app.styleHints().colorScheme() == Qt.ColorScheme.Dark
        wanted = DARK if (system if self._dark is None else self._dark) else LIGHT
        if wanted is self.tokens and self._dressed:
            return
        self.tokens, self._dressed = wanted, True
        self._app.setPalette(palette(self.tokens))
        if self._app.font() != font(Text.BODY):  # else every widget would be told
            self._app.setFont(font(Text.BODY))
        self.wardrobe.change(style_sheet(self.tokens))
        self.changed.emit()


def palette(tokens: Tokens) -> QPalette:
    """The tokens as Qt's palette."""
    made = QPalette()
    role = QPalette.ColorRole
    for key, name in {
        role.Window: tokens.window,
        role.WindowText: tokens.ink,
        role.Base: tokens.panel,
        role.AlternateBase: tokens.window,
        role.Text: tokens.ink,
        role.PlaceholderText: tokens.off,
        role.Button: tokens.panel,
        role.ButtonText: tokens.ink,
        role.BrightText: tokens.on_copper,
        role.Highlight: tokens.copper,
        role.HighlightedText: tokens.on_copper,
        role.Link: tokens.copper,
        role.ToolTipBase: tokens.panel,
        role.ToolTipText: tokens.ink,
        role.Mid: tokens.line,
        role.Dark: tokens.edge,
        role.Light: tokens.panel,
        role.Accent: tokens.copper,
    }.items():
        made.setColor(key, QColor(name))
    for key in (role.WindowText, role.Text, role.ButtonText):
        made.setColor(QPalette.ColorGroup.Disabled, key, QColor(tokens.off))
    return made
