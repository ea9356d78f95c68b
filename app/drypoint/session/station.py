"""A connected machine with somebody at it: the real one on a port, or the bench."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace

from drypoint.bench.bench import Bench, BenchSetup
from drypoint.bench.face import BenchFace
from drypoint.bench.remote import RemoteBench
from drypoint.machine.controller import Controller
from drypoint.machine.link import Link
from drypoint.machine.operator import Operator
from drypoint.machine.preset import MachinePreset, SpindleKind, compare
from drypoint.machine.procedures.workplace import TouchSettings, Workplace
from drypoint.machine.sender import Flow
from drypoint.session.layout import Layout
from drypoint.session.settings import Settings
from drypoint.session.wear_book import WearBook
from drypoint.session.work import preset_of

SPRING = 0.12
"""How far an edge of the bench's blank that no clamp holds yields to a fast touch, mm."""


@dataclass(frozen=True, slots=True)
class Station:
    """One connected machine.

    Attributes
    ----------
    findings : tuple of str
        How the controller's settings differ from the machine chosen.
    bench : BenchFace or None
        Set when the machine is the simulated one.
    book : WearBook or None
        Where what is cut here is counted; None on the bench, which wears nothing.
    """

    controller: Controller
    place: Workplace
    findings: tuple[str, ...]
    bench: BenchFace | None = None
    book: WearBook | None = None

    def close(self) -> None:
        """Let go of the link."""
        self.controller.close()


def connect(
    link: Link,
    operator: Operator,
    settings: Settings,
    *,
    note: Callable[[str], None] = lambda text: None,
    bench: BenchFace | None = None,
    book: WearBook | None = None,
) -> Station:
    """Open a machine on a link; sends no motion.

    Raises
    ------
    MachineError
        If nothing answers, or something else does.
    """
    preset = preset_of(settings)
    controller = Controller(link, flow=Flow.SINGLE if settings.machine.line_by_line else Flow.COUNTED)
    facts = controller.connect()
    touch = TouchSettings(
        fast=settings.surface.fast,
        slow=settings.surface.slow,
        deepest=settings.surface.lowest,
        low=settings.machine.hop or TouchSettings().hop,
    )
    place = Workplace(controller, operator, preset, touch, note)
    findings = tuple(f"{one.what} {one.hint}".strip() for one in compare(facts, preset))
    return Station(controller, place, findings, bench, book if bench is None else None)


def make_bench(
    layout: Layout, settings: Settings, seed: int, *, loose: tuple[str, ...] = ("top",), slip: float = 0.0
) -> Bench:
    """A bench with a blank of the job's size and a machine like the preset, in this process.

    ``slip`` is how far its drills slip before they bite, mm, standard deviation per axis.
    """
    setup = bench_setup(layout, settings, loose)
    return Bench(seed, replace(setup, faults=replace(setup.faults, wander=slip)))


def make_remote_bench(
    layout: Layout, settings: Settings, seed: int, *, loose: tuple[str, ...] = ("top",)
) -> RemoteBench:
    """The same in a process of its own, which must be closed."""
    return RemoteBench(seed, bench_setup(layout, settings, loose))


def bench_setup(layout: Layout, settings: Settings, loose: tuple[str, ...]) -> BenchSetup:
    """What stands on a bench for a job: a blank of its size, a machine like the preset."""
    preset = preset_of(settings)
    return BenchSetup(
        width=layout.width,
        height=layout.height,
        loose=loose,
        spring=SPRING,
        copper=settings.blank.copper,
        double=settings.board.both,
        settings=controller_settings(preset),
        hand_spindle=preset.spindle is SpindleKind.BY_HAND,
        switches=preset.homing,
    )


def controller_settings(preset: MachinePreset) -> dict[int, float]:
    """The numbered settings a controller of this machine holds."""
    values: dict[int, float] = {
        11: preset.junction_deviation,
        22: float(preset.homing),
        30: preset.spindle_range[1],
    }
    for axis in range(3):
        values[100 + axis] = 800.0
        values[110 + axis] = preset.max_rate[axis]
        values[120 + axis] = preset.acceleration[axis]
        values[130 + axis] = preset.travel[axis]
    return values
