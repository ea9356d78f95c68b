"""Axes of the heat view and its profile: quiet lines, few numbers, a true minus and the language's point."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import numpy as np
import pyqtgraph as pg

from drypoint.ui.language.words import local
from drypoint.ui.theme.tokens import Tokens
from drypoint.ui.theme.type import Text, font


def tick_words(values: Sequence[float], scale: float, spacing: float) -> list[str]:
    """The numbers beside the ticks, with as many decimals as their spacing needs."""
    decimals = max(0, int(np.ceil(-np.log10(spacing * scale) - 1e-9)))
    return [local(f"{value * scale:.{decimals}f}".replace("-", "−")) for value in values]


def dress_axis(axis: Any, tokens: Tokens, *, levels: int = 1) -> None:
    """Give an axis the window's look; ``levels`` more of ticks than the coarsest."""
    axis.setPen(pg.mkPen(tokens.line))
    axis.setTextPen(pg.mkPen(tokens.ink2))
    axis.setStyle(tickFont=font(Text.CAPTION), tickLength=4, tickTextOffset=3, maxTickLevel=levels)
    axis.tickStrings = tick_words
