"""Going on after a hold, in the moments in which it is easily lost or unwanted."""

from __future__ import annotations

import pytest

from drypoint.bench.bench import SMALL_ENGRAVER
from drypoint.machine.controller import Controller
from drypoint.machine.faults import Stopped
from drypoint.machine.state import Activity, Clip

SLUGGISH = SMALL_ENGRAVER | {110: 1500, 111: 1500, 120: 15, 121: 15}
"""A rapid move of 25 mm/s takes more than a second to slow down."""
LINES = ("G21G90G94", "G0X30Y0", "G0X60Y0")
PATIENCE = 60
"""Reports in a hold after which it is taken to last for ever."""


@pytest.fixture
def sluggish(make):
    bench = make(settings=SLUGGISH)
    controller = Controller(bench.link)
    controller.connect()
    controller.clip = Clip.OFF
    controller.trust("xyz")
    return bench, controller


class Hand:
    """Holds a move under way and presses more buttons as the reports come in."""

    def __init__(self, controller, *presses) -> None:
        self.controller = controller
        self.presses = list(presses)
        self.slowing = self.standing = 0
        self.held = False

    def __call__(self, event) -> None:
        state = event.state
        if not self.held and state.feed > 600.0:
            self.held = True
            self.controller.hold()
        elif state.activity is Activity.HELD:
            self.slowing += not state.still
            self.standing += state.still
            if self.presses:
                self.presses.pop(0)()
            elif self.slowing + self.standing > PATIENCE:
                self.controller.stop()


def test_to_go_on_while_it_still_slows_down_is_not_lost(sluggish):
    _, controller = sluggish
    hand = Hand(controller, controller.resume)
    controller.stream(LINES, on_progress=hand)
    assert hand.slowing > 0, "it was still slowing down when it was told to go on"
    assert controller.place()[0] == pytest.approx(60.0, abs=0.01)


def test_a_hold_takes_back_what_was_said_before(sluggish):
    _, controller = sluggish
    hand = Hand(controller, controller.resume, controller.hold)
    with pytest.raises(Stopped):
        controller.stream(LINES, on_progress=hand)
    assert hand.standing > PATIENCE / 2


def test_nothing_goes_on_after_a_stop(sluggish):
    _, controller = sluggish
    stood = []

    def stop_and_go_on() -> None:
        assert controller.state.still
        stood.append(controller.state.work)
        controller.stop()
        controller.resume()

    waiting = [lambda: None] * (PATIENCE // 2)
    with pytest.raises(Stopped):
        controller.stream(LINES, on_progress=Hand(controller, *waiting, stop_and_go_on))
    assert controller.place() == pytest.approx(stood[0], abs=1e-6)
    assert controller.known == {"x", "y", "z"}, "it was reset while it stood still"
    controller.move((60.0, 0.0, None))
    assert controller.place()[0] == pytest.approx(60.0, abs=0.01), "the next move is not held"
