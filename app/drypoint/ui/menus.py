"""The menus: every command of the window with its words and its key, made in one place."""

from __future__ import annotations

from PySide6.QtCore import QObject, Qt
from PySide6.QtGui import QAction, QActionGroup, QKeySequence
from PySide6.QtWidgets import QMainWindow, QMenu


class Commands(QObject):
    """All commands by a short name: ``commands["open"].triggered.connect(…)``.

    Names: new, open, save_copy, setup_sheet, report, export, quit, undo, redo, step1…step9, nets,
    passes, reach, order, fit, measure, surface, page, light, dark, system,
    language_system, language_en, language_de, plan_touches,
    plan_pass, check_islands, rehearse, before, connect, machine, arm, over_hole, remap, hover_lap,
    contact_check, pattern, legend, hold, resume, stop, cautions, keys, about.
    """

    def __init__(self, window: QMainWindow) -> None:
        super().__init__(window)
        self._window = window
        self._actions: dict[str, QAction] = {}
        self.recent = QMenu(self.tr("Open &recent"), window)
        self._file()
        self._edit()
        self._view()
        self._job()
        self._machine()
        self._help()

    def __getitem__(self, name: str) -> QAction:
        return self._actions[name]

    def names(self) -> tuple[str, ...]:
        """All short names."""
        return tuple(self._actions)

    def _add(self, menu: QMenu, name: str, text: str, key: str = "", *, checkable: bool = False) -> QAction:
        action = QAction(text, self._window)
        action.setCheckable(checkable)
        if key:
            action.setShortcuts([QKeySequence(each) for each in key.split(" ")])
        menu.addAction(action)
        self._actions[name] = action
        return action

    def _menu(self, text: str) -> QMenu:
        return self._window.menuBar().addMenu(text)

    def _file(self) -> None:
        menu = self._menu(self.tr("&File"))
        self._add(menu, "new", self.tr("&New job…"), "Ctrl+N")
        self._add(menu, "open", self.tr("&Open…"), "Ctrl+O")
        menu.addMenu(self.recent)
        self._add(menu, "demo", self.tr("Try the &demo board"))
        self._add(menu, "save_copy", self.tr("Save a &copy…"), "Ctrl+Shift+S")
        menu.addSeparator()
        self._add(menu, "setup_sheet", self.tr("&Setup sheet…"), "Ctrl+P")
        self._add(menu, "report", self.tr("&Report…"))
        self._add(menu, "export", self.tr("&Export programs…"), "Ctrl+E")
        menu.addSeparator()
        self._add(menu, "quit", self.tr("&Quit"), "Ctrl+Q")

    def _edit(self) -> None:
        menu = self._menu(self.tr("&Edit"))
        self._add(menu, "undo", self.tr("&Undo"), "Ctrl+Z")
        self._add(menu, "redo", self.tr("&Redo"), "Ctrl+Shift+Z")

    def _view(self) -> None:
        menu = self._menu(self.tr("&View"))
        names = (
            self.tr("Board"),
            self.tr("Blank"),
            self.tr("Bits"),
            self.tr("Cuts"),
            self.tr("Surface"),
            self.tr("Passes"),
            self.tr("Reference"),
            self.tr("Run"),
            self.tr("Proof"),
        )
        for number, name in enumerate(names, start=1):
            self._add(menu, f"step{number}", name, f"Ctrl+{number}")
        menu.addSeparator()
        for name, text, key in (
            ("nets", self.tr("&Nets"), "N"),
            ("passes", self.tr("&Passes"), "P"),
            ("reach", self.tr("&Reach"), "R"),
            ("order", self.tr("&Order"), "O"),
        ):
            self._add(menu, name, text, key)
        menu.addSeparator()
        self._add(menu, "fit", self.tr("&Fit"), "0")
        self._add(menu, "measure", self.tr("&Measure"), "M", checkable=True)
        self._add(menu, "surface", self.tr("Surface, next &aspect"), "S")
        self._add(menu, "page", self.tr("Pa&ge"), "F4", checkable=True).setChecked(True)
        colours = menu.addMenu(self.tr("&Colours"))
        self._add(colours, "system", self.tr("As the &system"))
        self._add(colours, "light", self.tr("&Light"))
        self._add(colours, "dark", self.tr("&Dark"))
        self._language(menu.addMenu(self.tr("&Language")))

    def _language(self, menu: QMenu) -> None:
        """The languages by their own names, whatever is spoken."""
        one_of = QActionGroup(menu)
        for name, text in (
            ("language_system", self.tr("As the &system")),
            ("language_en", "English"),
            ("language_de", "Deutsch"),
        ):
            one_of.addAction(self._add(menu, name, text, checkable=True))

    def _job(self) -> None:
        menu = self._menu(self.tr("&Job"))
        self._add(menu, "plan_touches", self.tr("Plan &touches"))
        self._add(menu, "plan_pass", self.tr("Plan the next &pass"))
        self._add(menu, "check_islands", self.tr("&Island check"))
        menu.addSeparator()
        self._add(menu, "rehearse", self.tr("&Rehearse on the bench"))
        self._add(menu, "before", self.tr("Show as &before re-mapping"), checkable=True)

    def _machine(self) -> None:
        menu = self._menu(self.tr("&Machine"))
        self._add(menu, "connect", self.tr("&Connect…"))
        self._add(menu, "machine", self.tr("&Settings of the machine…"))
        self._add(menu, "contact_check", self.tr("Check the contact c&ircuit"))
        menu.addSeparator()
        self._add(menu, "arm", self.tr("&Arm the jog keys"), "J", checkable=True)
        self._add(menu, "over_hole", self.tr("&Bit is over this hole"), "B")
        self._add(menu, "hover_lap", self.tr("Hover &lap"))
        self._add(menu, "remap", self.tr("Re-&map"))
        self._add(menu, "pattern", self.tr("Test pattern of the &V-bit…"))
        self._add(menu, "legend", self.tr("L&egend by laser…"))
        menu.addSeparator()
        self._add(menu, "answer", self.tr("A&nswer what is asked"), "F6")
        self._add(menu, "hold", self.tr("&Hold"), "Pause Ctrl+H")
        self._add(menu, "resume", self.tr("&Resume"), "Ctrl+R")
        self._add(menu, "stop", self.tr("&Stop"), "Ctrl+.")

    def _help(self) -> None:
        menu = self._menu(self.tr("&Help"))
        self._add(menu, "cautions", self.tr("&Cautions"), "F1")
        self._add(menu, "keys", self.tr("&Keys"))
        self._add(menu, "about", self.tr("&About Drypoint"))


def keep_run_keys(dialog: QObject, commands: Commands) -> None:
    """Let a dialog have Hold, Resume and Stop too: a modal one would keep them from the window."""
    if hasattr(dialog, "addAction"):
        for name in ("hold", "resume", "stop"):
            source = commands[name]
            copy = QAction(source.text(), dialog)
            copy.setShortcuts(source.shortcuts())
            copy.setShortcutContext(Qt.ShortcutContext.WindowShortcut)
            copy.triggered.connect(source.trigger)
            dialog.addAction(copy)
