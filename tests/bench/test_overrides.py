"""Overrides arrive at what was wanted, although equal bytes that come close together count once."""

from __future__ import annotations

from hypothesis import given, settings
from hypothesis import strategies as st

from drypoint.bench.bench import Bench, BenchSetup
from drypoint.machine.controller import Controller
from drypoint.machine.protocol import Realtime
from drypoint.machine.state import Clip

LONG = tuple(["G21G90G94", "G1F600"] + [f"G1X{60.0 - abs(60.0 - 0.5 * i):.1f}Y0" for i in range(160)])


def run(*presses):
    """Stream, and press at the given reports: the bench, the controller, the overrides of each report."""
    bench = Bench(1, BenchSetup())
    controller = Controller(bench.link)
    controller.connect()
    controller.clip = Clip.OFF
    controller.trust("xyz")
    seen, waiting = [], dict(presses)

    def watch(event) -> None:
        seen.append(event.state.overrides)
        waiting.pop(len(seen), lambda _: None)(controller)

    controller.stream(LONG, on_progress=watch)
    return bench, controller, seen


@settings(max_examples=12, deadline=None)
@given(feed=st.integers(10, 200), spindle=st.integers(10, 200), rapid=st.sampled_from((25, 50, 100)))
def test_any_percentage_is_reached_and_kept(feed, spindle, rapid):
    _, _, seen = run((3, lambda c: c.override(feed=feed, rapid=rapid, spindle=spindle)))
    assert seen[-1] == (feed, rapid, spindle)
    reached = seen.index((feed, rapid, spindle))
    assert set(seen[reached:]) == {(feed, rapid, spindle)}
    feeds = [percents[0] for percents in seen]
    assert feeds == sorted(feeds, reverse=feed < 100), "never away from what is wanted"


def test_quick_presses_add_up():
    def faster(controller) -> None:
        for _ in range(3):
            controller.override(feed=controller.overrides[0] + 10)

    _, _, seen = run((3, faster), (30, lambda c: c.override(feed=c.overrides[0] - 20)))
    assert (130, 100, 100) in seen
    assert seen[-1] == (110, 100, 100)


def test_what_cannot_be_is_the_nearest_that_can():
    _, _, seen = run((3, lambda c: c.override(feed=500, rapid=40, spindle=0)))
    assert seen[-1] == (200, 50, 10)


def test_a_stop_ends_what_was_wanted():
    bench, controller, _ = run((3, lambda c: c.override(feed=200)))
    controller.override(feed=30)
    controller.unlock()  # restarts it
    for _ in range(30):
        controller.poll(0.2)
    assert controller.overrides == (100, 100, 100)
    assert bench.controller.realtime.feed == 100


def test_a_controller_that_does_not_heed_is_left_alone(monkeypatch):
    bench, controller, _ = run()
    monkeypatch.setattr(bench.controller.realtime, "_override", bench.controller.realtime._steers.clear)
    sent = []
    whole = controller._channel.realtime
    monkeypatch.setattr(controller._channel, "realtime", lambda what: (sent.append(what), whole(what)))
    controller.override(feed=130)
    for _ in range(2000):
        controller.poll(0.2)
    steps = sent.count(Realtime.FEED_UP_10)
    for _ in range(500):
        controller.poll(0.2)
    assert 1 < steps < 100
    assert sent.count(Realtime.FEED_UP_10) == steps
