"""What is said of waves of the copper."""

from __future__ import annotations

from types import SimpleNamespace

import numpy as np
import pytest

from drypoint.session.wave_words import wave_words
from drypoint.surface.waves import Waves


def _surface(*waves):
    """Touches of waves given as length (mm), direction (°) and height from crest to trough (mm)."""
    places = np.random.default_rng(3).random((80, 2)) * (70.0, 50.0)
    lengths, turns, heights = np.array(waves, dtype=float).reshape(-1, 3).T
    angles = np.radians(turns)
    vectors = (2 * np.pi / lengths)[:, None] * np.column_stack((np.cos(angles), np.sin(angles)))
    z = 0.03 + 0.001 * places[:, 0] + (0.5 * heights * np.sin(places @ vectors.T)).sum(axis=1)
    found = Waves(vectors, np.zeros((len(lengths), 2, 2)))
    return SimpleNamespace(waves=found, touches=np.column_stack((places, z)))


@pytest.mark.parametrize(
    ("turn", "way"),
    [(0, "Along X"), (176, "Along X"), (90, "Along Y"), (-84, "Along Y"), (30, "At 30° to X")],
)
def test_length_way_and_height(turn, way):
    (said,) = wave_words(_surface((8.0, turn, 0.024)))
    assert said == f"{way}, every 8.0 mm, 24 µm from crest to trough."


def test_the_highest_wave_comes_first():
    said = wave_words(_surface((5.0, 0, 0.006), (8.0, 90, 0.020)))
    assert ["8.0 mm" in one for one in said] == [True, False]


def test_nothing_is_said_without_waves():
    assert wave_words(SimpleNamespace(waves=Waves.none(), touches=np.zeros((9, 3)))) == ()
