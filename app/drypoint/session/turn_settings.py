"""What a person sets about turning the board over."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum


class ToolingUse(StrEnum):
    """When holes are drilled into the margin of the blank, to find the board by once it was turned."""

    NEEDED = "where the board has too few holes"
    ALWAYS = "always"
    NEVER = "never"


@dataclass(frozen=True, slots=True)
class TurnSettings:
    """How the second side is found."""

    tooling: ToolingUse = ToolingUse.NEEDED
    count: int = 3
    """Tooling holes."""
    drill: str = ""
    """Name of the drill for them; empty: one that the board needs anyway, not too thin to be seen."""
