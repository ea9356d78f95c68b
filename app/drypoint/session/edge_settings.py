"""What a person sets about the edge of a board that only ready-made programs are known of."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class EdgeSettings:
    """Without an outline the rectangle round everything that is cut stands for it.

    ``cut``: that rectangle, grown by ``margin`` mm on every side, is cut out with tabs at the end.
    """

    cut: bool = False
    margin: float = 2.0
