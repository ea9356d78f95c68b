"""The check of the final text refuses what could hurt, and nothing else."""

import pytest

from drypoint.errors import PlanError
from drypoint.program.check import check_lines

GOOD = ("G21", "G90", "G1Z2F600", "M3S9000", "G4P3", "G0X1Y1", "G1Z-0.1F60", "X5F300", "Y5", "Z2F600", "G0X0")


def test_a_good_program_passes():
    check_lines(GOOD, 2.0)
    check_lines(("G0Z2", "X1Y1", "G1Z0F60"), 2.0)


@pytest.mark.parametrize(
    ("line", "after", "part"),
    [
        ("G0Z1.9", 5, "below the clearance"),
        ("G0X3", 8, "below the clearance"),
        ("G0Z3", 8, "starts below"),
        ("G0X9Z1", 5, "below the clearance"),
        ("G1X2", 5, "no feed"),
        ("G2X2Y2F100", 6, "no centre"),
        ("G81X2Y2Z-1R1", 5, "81"),
        ("G20", 0, "20"),
        ("G91", 0, "91"),
        ("M6", 3, "6"),
        ("$H", 0, "something other"),
        ("G1X1 (note)", 6, "something other"),
        ("", 6, "something other"),
        ("G1X" + "1" * 80, 6, "characters"),
    ],
)
def test_each_rule(line, after, part):
    lines = (*GOOD[: after + 1], line, *GOOD[after + 1 :])
    with pytest.raises(PlanError, match=part) as caught:
        check_lines(lines, 2.0)
    assert f"line {after + 2}" in caught.value.where


def test_unknown_height():
    with pytest.raises(PlanError, match="sideways before the height is known"):
        check_lines(("G0X1Y1Z2",), 2.0)
    with pytest.raises(PlanError, match="below"):
        check_lines(("G0X1Y1",), 2.0)
    with pytest.raises(PlanError, match="kind of move"):
        check_lines(("X1",), 2.0)
    with pytest.raises(PlanError, match="no feed"):
        check_lines(("G1Z2",), 2.0)
