"""Pairs of neighbours as lines of the proof page: there are thousands, so words are looked up once."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, QObject

from drypoint.machine.islands_plan import OUTER, Neighbours
from drypoint.passes.reach import in_words
from drypoint.ui.language.words import fill, point
from drypoint.ui.pages.proof import IslandLine
from drypoint.ui.parts.glyph import Mark

ASKED = "asked"
"""State of a pair between which a person wants another cut."""

DOUBT = 0.01
"""From this chance on it is said that a pair may be joined."""

MARKS = {"proved": Mark.DONE, "joined": Mark.ERROR, "unproved": Mark.DOUBT, ASKED: Mark.READY}


class PairWords(QObject):
    """Words in the language of the moment."""

    def __init__(self) -> None:
        super().__init__()
        self._said = {
            "proved": self.tr("proved apart"),
            "joined": self.tr("joined"),
            "unproved": self.tr("unproved"),
            ASKED: self.tr("cut again next"),
            "": self.tr("not touched"),
        }
        self._gap = self.tr("gap {gap:.2f} mm").replace("{gap:.2f}", "{gap}")
        self._doubt = self.tr("{gap:.2f} mm, {chance} joined")
        self._advice = self.tr("The next pass cuts the ground between them again.")
        self._outside = outside()
        self._point = point()

    def line(self, pair: Neighbours, state: str) -> IslandLine:
        """The line of a pair; ``state`` as in `Standing`."""
        touched = state in ("proved", "joined")
        if pair.doubt >= DOUBT and not touched:
            detail = fill(self._doubt, gap=pair.gap, chance=in_words(pair.doubt))
        else:
            detail = self._gap.format(gap=f"{pair.gap:.2f}".replace(".", self._point))
        one, two = pair.nets
        nets = (self._outside if one == OUTER else one, self._outside if two == OUTER else two)
        advice = self._advice if state == "joined" else ""
        mark = MARKS.get(state, Mark.TO_DO)
        return IslandLine(nets, mark, self._said[state], detail, pair.at, touched=touched, advice=advice)


def outside() -> str:
    """What the copper outside all nets is called."""
    return QCoreApplication.translate("proof", "outside")
