"""Titles of runs from the job file, said in another language."""

from __future__ import annotations

import pytest

from drypoint.session.run_titles import run_title
from drypoint.wording import told

GERMAN = {
    "Grooves, pass {number}": "Nuten, Durchgang {number}",
    "Holes": "Löcher",
    "bored holes": "gefräste Löcher",
    "Burn grid on {material}": "Brennraster auf {material}",
    "Legend on {material}": "Aufdruck auf {material}",
}


@pytest.mark.parametrize(
    ("stored", "said"),
    [
        ("Grooves, pass 2", "Nuten, Durchgang 2"),
        ("Holes: Drill 0.8 mm", "Löcher: Drill 0.8 mm"),
        ("Holes, bored holes: End mill 2.0 mm", "Löcher, gefräste Löcher: End mill 2.0 mm"),
        ("Burn grid on black paint", "Brennraster auf black paint"),
        ("Legend on tape {2}", "Aufdruck auf tape {2}"),
        ("my own {thing}", "my own {thing}"),
    ],
)
def test_a_stored_title_is_said_again(stored: str, said: str) -> None:
    assert run_title(stored) == stored
    assert told(run_title(stored), lambda text: GERMAN.get(text, text)) == said
