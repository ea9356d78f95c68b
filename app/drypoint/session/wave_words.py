"""Waves of the copper in plain words: how far from crest to crest, which way, how high."""

from __future__ import annotations

import numpy as np

from drypoint.surface.model import Surface
from drypoint.wording import say

ALONG_DEG = 15.0
"""A wave within this of an axis is said to run along it; the angle of a wave is not known better."""


def wave_words(surface: Surface) -> tuple[str, ...]:
    """A sentence for every wave found, the highest first."""
    waves = surface.waves
    if not len(waves):
        return ()
    heights = waves.heights(surface.touches)
    order = np.argsort(-heights)
    return tuple(_said(waves.vectors[n], waves.lengths[n], 1e3 * heights[n]) for n in order)


def _said(vector: np.ndarray, length: float, height: float) -> str:
    angle = float(np.degrees(np.arctan2(vector[1], vector[0]))) % 180.0
    values = {"length": float(length), "height": float(height)}
    if min(angle, 180.0 - angle) <= ALONG_DEG:
        return say("Along X, every {length:.1f} mm, {height:.0f} µm from crest to trough.", **values)
    if abs(angle - 90.0) <= ALONG_DEG:
        return say("Along Y, every {length:.1f} mm, {height:.0f} µm from crest to trough.", **values)
    return say(
        "At {angle:.0f}° to X, every {length:.1f} mm, {height:.0f} µm from crest to trough.",
        angle=angle,
        **values,
    )
