"""Texts that keep how they were made, and the catalogue that says them in German."""

from __future__ import annotations

import copy
import pickle
import sqlite3
import subprocess
import sys
from pathlib import Path

from drypoint.errors import PlanError
from drypoint.wording import Text, as_text, many, say, strung, told

GERMAN = {
    "{count} hole": "{count} Loch",
    "{count} holes": "{count} Löcher",
    "residual {mm:.2f} mm": "Rest {mm:.2f} mm",
    "{what}: {words}": "{words} – {what}",
    "No file": "Keine Datei",
}


def german(text: str) -> str:
    return told(text, lambda template: GERMAN.get(template, template), ",")


def test_it_is_an_english_string() -> None:
    text = say("{count} touches, spread {spread:.0f} µm", count=42, spread=6.4)
    assert text == "42 touches, spread 6 µm"
    assert isinstance(text, str)
    assert say("{length:,.0f} mm", length=12345.0) == "12\u202f345 mm"


def test_templates_and_texts_within_are_looked_up() -> None:
    holes = many(3, "{count} hole", "{count} holes")
    assert german(holes) == "3 Löcher"
    assert german(many(1, "{count} hole", "{count} holes")) == "1 Loch"
    whole = say("{what}: {words}", what=say("residual {mm:.2f} mm", mm=0.25), words=holes)
    assert whole == "residual 0.25 mm: 3 holes"
    assert german(whole) == "3 Löcher – Rest 0,25 mm"
    assert german(strung((holes, "", whole), "; ")) == "3 Löcher; 3 Löcher – Rest 0,25 mm"


def test_names_of_the_user_are_never_translated() -> None:
    assert german(say("{what}: {words}", what="No file", words="1.5 V")) == "1.5 V – No file"
    assert german("No file") == "No file", "a plain string is no text of ours"
    assert german(as_text("a {brace} and 1.5")) == "a {brace} and 1.5"


def test_errors_turn_what_they_are_given_into_texts() -> None:
    error = PlanError("No file", "x.gbr", "Choose one.")
    assert str(error) == "x.gbr: No file Choose one."
    assert german(error.what) == "Keine Datei"
    assert error.as_dict() == {"what": "No file", "where": "x.gbr", "hint": "Choose one."}


def test_stored_and_sent_it_is_a_plain_string() -> None:
    text = say("{count} holes", count=2)
    for there in (pickle.loads(pickle.dumps(text)), copy.deepcopy(text)):
        assert type(there) is str
        assert there == text
    with sqlite3.connect(":memory:") as base:
        base.execute("CREATE TABLE one (words TEXT)")
        base.execute("INSERT INTO one VALUES (?)", (text,))
        (found,) = base.execute("SELECT words FROM one").fetchone()
    base.close()
    assert type(found) is str
    assert found == "2 holes"
    assert isinstance(text, Text)


def test_everything_the_window_says_is_in_german_too(root: Path) -> None:
    """Nothing is missing, nothing stale, and every translation has the fields of its English."""
    done = subprocess.run(
        [sys.executable, "scripts/translate.py", "--check"],
        cwd=root,
        capture_output=True,
        text=True,
        encoding="utf-8",
        check=False,
    )
    assert done.returncode == 0, done.stdout + done.stderr
