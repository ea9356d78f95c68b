"""Every number of the protocol is explained; the lists are those of its documentation (error and
alarm code tables)."""

from __future__ import annotations

import pytest

from drypoint.machine.explain import explain_alarm, explain_error

ERRORS = [*range(1, 18), *range(20, 39)]
ALARMS = range(1, 10)


@pytest.mark.parametrize("code", ERRORS)
def test_every_error_has_its_own_words_and_advice(code):
    said = explain_error(code)
    assert said.what.endswith(".")
    assert said.hint
    assert "error" not in said.what
    assert [explain_error(other).what for other in ERRORS].count(said.what) == 1


@pytest.mark.parametrize("code", ALARMS)
def test_every_alarm_has_its_own_words_and_advice(code):
    said = explain_alarm(code)
    assert said.what.endswith(".")
    assert said.hint
    assert [explain_alarm(other).what for other in ALARMS].count(said.what) == 1


def test_unknown_numbers_are_still_named():
    assert "99" in explain_error(99).what
    assert "99" in explain_alarm(99).what
