"""Axes of the heat view and its profile: quiet lines, few numbers, a true minus and the language's point."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import numpy as np
import pyqtgraph as pg

from drypoint.ui.language.words import local
from drypoint.ui.theme.tokens import Tokens
from drypoint.ui.theme.type import Text, font

ROOM = 26
"""Room that the number beside a tick needs, px."""


def tick_words(values: Sequence[float], scale: float, spacing: float) -> list[str]:
    """The numbers beside the ticks, with as many decimals as their spacing needs."""
    decimals = max(0, int(np.ceil(-np.log10(spacing * scale) - 1e-9)))
    return [local(f"{value * scale:.{decimals}f}".replace("-", "−")) for value in values]


def tick_spacing(low: float, high: float, px: float) -> list[tuple[float, float]]:
    """One level of ticks at 1, 2 or 5 times a power of ten, as close as numbers beside them allow."""
    least = max(high - low, 1e-9) * ROOM / max(px, ROOM)
    power = 10.0 ** np.floor(np.log10(least))
    return [(float(next(power * step for step in (1, 2, 5, 10) if power * step >= least * 0.999)), 0.0)]


def dress_axis(axis: Any, tokens: Tokens) -> None:
    """Give an axis the window's look."""
    axis.setPen(pg.mkPen(tokens.line))
    axis.setTextPen(pg.mkPen(tokens.ink2))
    axis.setStyle(tickFont=font(Text.CAPTION), tickLength=4, tickTextOffset=3, maxTickLevel=0)
    axis.tickStrings = tick_words
    axis.tickSpacing = tick_spacing
