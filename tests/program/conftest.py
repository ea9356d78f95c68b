"""Bits and a reading of lines that the tests of programs share."""

import math
import re

import numpy as np
import pytest

from drypoint.bits.model import Drill, EndMill, Speeds, VBit

WORD = re.compile(r"([A-Z])(-?[\d.]+)")


@pytest.fixture
def vbit():
    return VBit("V 30", 0.1, math.radians(30), Speeds(10000, 300, 60))


@pytest.fixture
def mill():
    return EndMill("mill 1.0", 1.0, Speeds(10000, 200, 60), 0.5)


@pytest.fixture
def bit08():
    return Drill("drill 0.8", 0.8, Speeds(10000, 100, 90), 0.7)


class Waves:
    """A smooth surface of known shape: a tilted plane with waves, mm."""

    def mean(self, points):
        p = np.asarray(points)
        return 0.03 * np.sin(p[:, 0] / 2.5) * np.cos(p[:, 1] / 3.0) + 0.004 * p[:, 0] + 0.05


@pytest.fixture
def waves():
    return Waves()


def _read(lines):
    mode, feed, place, found = None, None, [None, None, None], []
    for index, line in enumerate(lines):
        words = {}
        for letter, value in WORD.findall(line):
            if letter == "G" and float(value) <= 3:
                mode = int(float(value))
            words[letter] = float(value)
        feed = words.get("F", feed)
        for axis, letter in enumerate("XYZ"):
            place[axis] = words.get(letter, place[axis])
        if words.keys() & set("XYZ"):
            found.append((index, mode, tuple(place), feed, "F" in words))
    return found


@pytest.fixture
def read():
    """Lines to (line index, mode, end, feed, whether the line carries F) of every motion."""
    return _read
