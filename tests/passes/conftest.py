"""Surfaces of known spread and simple grooves."""

from __future__ import annotations

import numpy as np
import pytest

from drypoint.bits.model import Speeds, VBit
from drypoint.geometry.rigid import Rigid


class Known:
    """A surface of one spread, errors correlated over 3 mm."""

    def __init__(self, sigma):
        self.sigma = sigma

    def mean(self, points):
        return np.zeros(len(points))

    def std(self, points):
        return np.full(len(points), self.sigma)

    def covariance(self, a, b):
        gap = np.hypot(*(np.asarray(a)[:, None, :2] - np.asarray(b)[None, :, :2]).transpose(2, 0, 1))
        return self.sigma**2 * np.exp(-((gap / 3.0) ** 2))


@pytest.fixture
def known():
    return Known


@pytest.fixture
def bit():
    return VBit("V 30", 0.1, np.radians(30.0), Speeds(10000, 300, 60))


@pytest.fixture
def fit():
    return Rigid(0.02, (3.0, 4.0))


@pytest.fixture
def lines():
    angle = np.linspace(0.0, 2.0 * np.pi, 41)
    ring = np.column_stack((5 + 3 * np.cos(angle), 5 + 3 * np.sin(angle)))
    ring[-1] = ring[0]
    return [ring, np.array([(12.0, 0.0), (12.0, 20.0), (20.0, 20.0)])]
