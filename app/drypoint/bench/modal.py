"""The modal state a controller keeps between lines."""

from __future__ import annotations

from dataclasses import dataclass

INCH = 25.4
"""mm."""


@dataclass(frozen=True, slots=True)
class Modal:
    """Modal state; the defaults hold after power-up and every reset."""

    motion: float = 0
    place: int = 54
    plane: float = 17
    units: float = 21
    distance: float = 90
    feed_mode: float = 94
    flow: float | None = None
    spindle: float = 5
    coolant: float = 9
    tool: int = 0
    feed: float = 0.0
    """mm/min; under G93 the word's own value."""
    speed: float = 0.0

    def text(self) -> str:
        """The words of ``$G``."""
        parts = [_word("G", self.motion), f"G{self.place}", _word("G", self.plane)]
        parts += [_word("G", self.units), _word("G", self.distance), _word("G", self.feed_mode)]
        if self.flow is not None:
            parts.append(_word("M", self.flow))
        parts += [_word("M", self.spindle), _word("M", self.coolant), f"T{self.tool}"]
        shown = self.feed / INCH if self.units == 20 else self.feed
        return " ".join([*parts, f"F{shown:.0f}", f"S{self.speed:.0f}"])


def _word(letter: str, value: float) -> str:
    return f"{letter}{value:g}"
