"""Voltages from words and files: what they say, what is refused."""

from __future__ import annotations

from pathlib import Path

import pytest

from drypoint.errors import InputError
from drypoint.session.settings import Voltage
from drypoint.session.voltage_table import of_nets, read_voltages

NETS = ("GND", "L", "N", "MAINS_1", "MAINS_2", "V+")


def test_words_and_tables_say_the_same(tmp_path: Path) -> None:
    table = tmp_path / "classes.csv"
    table.write_text(
        "net,other,volts\n# from the mains\nL,,325\nL;N;320 V\nMAINS_*\t325\n\nV+, 24 # supply\n",
        encoding="utf-8",
    )
    words = read_voltages(["L=325", "L,N=320", "MAINS_*=325", "V+=24V"])
    assert read_voltages([str(table)]) == words
    assert words[:2] == (Voltage("L", "", 325.0), Voltage("L", "N", 320.0))


def test_a_pattern_stands_for_every_net_that_fits() -> None:
    found = of_nets(read_voltages(["MAINS_?=325", "MAINS_*,MAINS_*=230"]), NETS)
    assert found == (
        Voltage("MAINS_1", "", 325.0),
        Voltage("MAINS_2", "", 325.0),
        Voltage("MAINS_1", "MAINS_2", 230.0),
        Voltage("MAINS_2", "MAINS_1", 230.0),
    )


def test_what_is_said_later_of_a_net_holds() -> None:
    assert of_nets(read_voltages(["*=12", "L=325"]), ("L", "N")) == (
        Voltage("L", "", 325.0),
        Voltage("N", "", 12.0),
    )


@pytest.mark.parametrize("text", ["=5", "L=", "L=five", "L=-1", "L=nan", "L=inf", "A,B,C=3", "no-such-file"])
def test_what_makes_no_sense_is_refused(text: str) -> None:
    with pytest.raises(InputError):
        read_voltages([text])


@pytest.mark.parametrize("body", ["L\n", "L,N,M,4\n", "net,volts\nL,high\n"])
def test_a_bad_line_of_a_table_is_named(tmp_path: Path, body: str) -> None:
    table = tmp_path / "bad.csv"
    table.write_text(body, encoding="utf-8")
    with pytest.raises(InputError) as refused:
        read_voltages([str(table)])
    assert "line " in str(refused.value.where)


def test_an_unknown_net_is_refused_with_those_that_are_meant() -> None:
    with pytest.raises(InputError) as refused:
        of_nets(read_voltages(["MAINS1=325"]), NETS)
    assert "MAINS_1" in str(refused.value.hint)
