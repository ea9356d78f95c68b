"""Runs broken by a fault at a random moment, taken up again, and compared with the run that was not.

    python tests/benchmarks/fault_runs.py [RUNS] [FIRST] [--hop MM]

Every run has its own seed: the fault's kind and moment follow from it. A small bench cuts two closed
grooves, with ``--hop`` one and eight small ones with low ways between them; a fault strikes; what is
noticed is resumed from the job file as a person would: port opened anew, position found at a reference
mark, height at the zero spot, lead-in, rest. Then the copper is compared, sample by sample, with that of
an uninterrupted run on the same bench (the reference). Silent faults have to be caught by the checks
before the next cut, and the run marked suspect; runs without any fault must pass these checks. Columns
count runs; `copper` is right where nothing is skipped, nothing is cut elsewhere, nothing is deeper and
the copper falls into the same pieces.

Measured with 500 runs from seed 0 (a program of 75 lines):

kind             runs struck noticed again resumed suspect copper deeper mishaps good  aside mm  overlap
dropped line       63     63      63    16      63       0     63      0       0   63     0.093     2.00
garbled byte       50     50      50    16      50       0     50      0       0   50     0.065     2.00
reset              63     63      63    21      63       0     63      0       0   63     0.086     2.00
alarm              50     50      50    17      50       0     50      0       0   50     0.079     2.00
unplugged cable    62     62      62    20      62       0     62      0       0   62     0.087     2.00
lost steps         50     50       0     0       0      50      0      0       0   50     2.506     0.00
broken bit         62     62       0     0       0      62      0      0       0   62     0.000     0.00
power lost         50     50      50    17      50       0     50      0       0   50     0.093     2.00
stop pressed       25     25       0     0      25       0     25      0       0   25     0.028     2.00
none               25      0       0     0       0       0     25      0       0   25     0.000     0.00

With ``--hop 0.5`` (126 lines) all 500 are good too, struck, noticed and resumed as many; at most 0.112 mm
aside.
"""

from __future__ import annotations

import argparse
import functools
import math
import tempfile
import time
from collections import defaultdict
from dataclasses import dataclass, field, replace
from pathlib import Path

import numpy as np
from scipy.spatial import cKDTree

from drypoint.bench.bench import Bench, BenchSetup
from drypoint.bench.faults import SILENT, Fault, FaultKind, Injector, draw
from drypoint.bench.operator import BenchOperator
from drypoint.bench.truth import Kind
from drypoint.bits.model import Speeds, VBit
from drypoint.errors import MachineError
from drypoint.geometry.rigid import Rigid
from drypoint.job.journal import JobJournal, events, unfinished
from drypoint.job.store import Job
from drypoint.machine.controller import Controller
from drypoint.machine.operator import Request, RequestKind
from drypoint.machine.preset import MachinePreset, SpindleKind
from drypoint.machine.procedures.checks import check_between
from drypoint.machine.procedures.contact import check_contact, clip_off
from drypoint.machine.procedures.resuming import find_again, resume_program
from drypoint.machine.procedures.running import STOPPED, run_program
from drypoint.machine.procedures.touching import zero_at_spot
from drypoint.machine.procedures.workplace import Workplace
from drypoint.machine.state import Activity
from drypoint.passes.depth import uniform_pass
from drypoint.program.model import Program
from drypoint.program.place import place
from drypoint.program.settings import ProgramSettings

BIT = VBit("V 0.1 30°", 0.1, math.radians(30.0), Speeds(8000.0, 300.0, 100.0))
PRESET = MachinePreset(
    "small",
    (160.0, 100.0, 40.0),
    (1000.0, 1000.0, 600.0),
    (60.0, 60.0, 40.0),
    SpindleKind.VARIABLE,
    (0.0, 1e4),
)
SPOT, MARK, INSET = (3.0, 3.0), (6.0, 17.0), 3.0
BENCHES = 10
"""So many different sheets and machines; the reference of each is made once."""
ASIDE = 0.15
"""Farthest that a resumed cut may lie beside the old one, mm: a mark is found by eye to 0.05 mm and
the eye's spread is 0.03 mm in each axis."""
HEIGHT = 0.015
"""Depths that differ by less are equal, mm: two touches of the zero spot, spread 3 µm each, and play."""
TRIES = 4
STOP = "stop pressed"
LOUD = tuple(kind for kind in FaultKind if kind not in SILENT)


@dataclass
class Outcome:
    """What became of one run."""

    seed: int
    kind: FaultKind | str | None
    struck: bool = False
    noticed: bool = False
    by: str = ""
    resumed: bool = False
    twice: bool = False
    """Whether another fault struck during the resume."""
    skipped: float = 0.0
    """mm of groove that were not cut."""
    astray: float = 0.0
    """mm cut where nothing should be cut."""
    deeper: float = 0.0
    pieces: bool = True
    aside: float = 0.0
    mishaps: tuple[str, ...] = ()
    suspect: bool = False
    overlap: float = 0.0
    said: str = ""
    error: str = ""

    @property
    def copper(self) -> bool:
        """Whether the copper is that of the uninterrupted run."""
        return self.pieces and self.skipped == 0.0 and self.astray == 0.0 and self.deeper <= HEIGHT

    @property
    def good(self) -> bool:
        """Whether all is as it must be for this kind."""
        if self.kind is None or not self.struck:
            return not self.noticed and not self.suspect and not self.mishaps and self.copper
        if self.kind in SILENT:
            return self.suspect and not self.resumed
        if self.kind == STOP:
            return self.resumed and self.copper and not self.mishaps and not self.suspect and not self.noticed
        return self.noticed and self.resumed and self.copper and not self.mishaps and not self.suspect


class Level:
    """Copper as flat as the bench's."""

    def mean(self, points: np.ndarray) -> np.ndarray:
        """Height, mm, at (N, 2) points."""
        return np.zeros(len(points))


def squares() -> list[np.ndarray]:
    """Round eight squares and a circle, 88 mm in all."""
    square = np.array([(0.0, 0.0), (2.0, 0.0), (2.0, 2.0), (0.0, 2.0), (0.0, 0.0)])
    return [square + np.array((x, y)) for x in (9.5, 12.5, 15.5, 18.5) for y in (6.0, 10.0)] + grooves()[1:]


def grooves() -> list[np.ndarray]:
    """Round a comb of long lines and round a circle of short ones, about 90 mm in all."""
    x = np.repeat(np.arange(10.0, 17.0, 1.2), 2)
    y = 6.0 + 7.0 * (np.arange(len(x)) // 2 + np.arange(len(x)) % 2) % 2 * 0.8
    comb = np.vstack(
        (np.column_stack((x, 7.0 + y - 6.0)), [(x[-1], 14.0), (9.0, 14.0), (9.0, 5.5), (10.0, 5.5)])
    )
    t = np.linspace(0.0, 2.0 * np.pi, 41)
    return [np.vstack((comb, comb[:1])), np.column_stack((24.0 + 4.0 * np.cos(t), 10.0 + 4.0 * np.sin(t)))]


HOP: list[float] = []
"""Height of the ways between grooves above the copper, mm, if one is asked for."""


@functools.cache
def program(by_hand: bool = False) -> Program:
    """What is run, for a spindle that the controller switches or only a hand can."""
    hop = HOP[0] if HOP else 0.0
    settings = ProgramSettings(spindle_delay=1.0, park=None, spindle_control=not by_hand, hop=hop)
    work = uniform_pass(squares() if hop else grooves(), BIT, 0.1)
    (made,) = place([work], Rigid(), Level() if hop else None, settings=settings)
    return made


@dataclass
class Scene:
    """A bench, ready to cut: bit in, position and zero set, marks bored."""

    number: int
    bench: Bench = field(init=False)
    place: Workplace = field(init=False)
    before: int = 0

    def __post_init__(self) -> None:
        setup = BenchSetup(width=32.0, height=20.0, kind=Kind.FLAT, loose=(), hand_spindle=self.by_hand)
        self.bench = Bench(self.number, setup)
        self.connect()
        operator, controller = self.bench.operator, self.place.controller
        operator.ask(Request(RequestKind.CHANGE_BIT, "bit", bit=BIT))
        self.place.ask(Request(RequestKind.JOG_TO, "Over the corner", "Bring the bit over the corner."))
        controller.set_work(x=INSET, y=INSET)
        check_contact(self.place)
        zero_at_spot(self.place)
        clip_off(self.place)
        self.bench.body.switch_by_hand(True)
        controller.stream(["G0Z2", f"G0X{MARK[0]}Y{MARK[1]}", "G1Z-0.25F100", "G1Z2F600"])
        self.bench.body.switch_by_hand(False)
        if not self.by_hand:
            self.bench.body.hand_spindle = None
        self.before = len(self.bench.copper.sweeps)

    @property
    def by_hand(self) -> bool:
        """Whether only a hand switches this spindle."""
        return self.number % 3 == 2

    def connect(self) -> None:
        """Open the port anew."""
        controller = Controller(self.bench.connect())
        controller.connect()
        preset = replace(PRESET, spindle=SpindleKind.BY_HAND) if self.by_hand else PRESET
        self.place = Workplace(controller, self.bench.operator, preset)

    def hands(self, seed: int) -> None:
        """Other hands from now on: the same bench, other errors of the eye."""
        self.bench.operator = BenchOperator(self.bench, seed)
        self.place = replace(self.place, operator=self.bench.operator)

    def samples(self) -> np.ndarray:
        """(N, 3) sheet x, y and depth of all that was cut since the marks."""
        sweeps = self.bench.copper.sweeps[self.before :]
        return np.vstack(
            [np.zeros((0, 3)), *(np.column_stack((sweep.path, sweep.depth)) for sweep in sweeps)]
        )

    def pieces(self) -> int:
        """Pieces the copper falls into, crumbs left aside."""
        pieces = self.bench.copper.pieces
        areas: dict[int, float] = defaultdict(float)
        for polygon, label in zip(pieces.polygons, pieces.labels, strict=True):
            areas[int(label)] += polygon.area
        return sum(area > 0.05 for area in areas.values())


@functools.cache
def reference(number: int) -> tuple[np.ndarray, int]:
    """Samples and pieces of the uninterrupted run."""
    scene = Scene(number)
    with tempfile.TemporaryDirectory() as folder, Kept(Path(folder), scene) as kept:
        run_program(scene.place, kept.program, kept.journal(), check_first=False)
    if scene.bench.mishaps:
        raise AssertionError(scene.bench.mishaps)
    return scene.samples(), scene.pieces()


class Kept:
    """A job file."""

    def __init__(self, folder: Path, scene: Scene) -> None:
        self.program = program(scene.by_hand)
        self.job = Job(folder / "run.drypoint", create=True)

    def __enter__(self) -> Kept:
        return self

    def __exit__(self, *_: object) -> None:
        self.job.close()

    def journal(self) -> JobJournal:
        """The journal of a new run."""
        self.last = JobJournal(self.job, self.program.title, self.program.lines)
        return self.last


def fault_of(seed: int) -> Fault | None:
    """What strikes in the run with this seed; one in twenty is left alone, one stopped by the user."""
    if seed % 20 in (9, 19):
        return None
    kinds = tuple(FaultKind)
    fault = draw(seed, len(program().lines), (kinds[seed % len(kinds)],))
    if fault.kind is FaultKind.LOST_STEPS and seed % 3 == 0:
        return replace(fault, by=(0.0, 0.0, 0.3 * abs(fault.by[0]) + 0.05))
    return fault


def kind_of(seed: int) -> FaultKind | str | None:
    """What happens in the run with this seed."""
    fault = fault_of(seed)
    if fault is not None:
        return fault.kind
    return STOP if seed % 20 == 9 else None


def one(seed: int) -> Outcome:
    """One run."""
    fault = fault_of(seed)
    scene = Scene(seed % BENCHES)
    scene.hands(seed)
    found = Outcome(seed, kind_of(seed))
    with tempfile.TemporaryDirectory() as folder, Kept(Path(folder), scene) as kept:
        injector = Injector(scene.bench, [] if fault is None else [fault])
        if found.kind == STOP:
            press_stop(scene, seed)
        try:
            run_program(scene.place, kept.program, kept.journal(), check_first=seed % 5 == 0)
        except MachineError as error:
            found.noticed, found.by = True, type(error).__name__
        injector_done = bool(injector.done)
        injector.disarm()
        found.struck = injector_done
        if found.noticed:
            take_up(scene, kept, found)
        elif unfinished(kept.job) is not None:
            go_on(scene, kept, found)
        if not found.error:
            between(scene, kept, found)
    compare(scene, found)
    return found


def press_stop(scene: Scene, seed: int) -> None:
    """Somebody presses Stop at a random moment: no fault, the position is kept."""
    left = int(np.random.default_rng((seed, 0x570B)).integers(1, len(program(scene.by_hand).lines)))

    def arrives(piece: bytes) -> bytes:
        nonlocal left
        left -= 1
        if left == 0:
            scene.place.controller.stop()
        return piece

    scene.bench.controller.on_text = arrives


def go_on(scene: Scene, kept: Kept, found: Outcome) -> None:
    """After a stop: the rest, from where it is proven executed."""
    record = unfinished(kept.job)
    found.struck = record.reason == STOPPED
    result = run_program(scene.place, kept.program, kept.journal(), first=record.executed)
    found.resumed, found.overlap = result.finished, result.overlap


def take_up(scene: Scene, kept: Kept, found: Outcome) -> None:
    """Resume as a person would, more than once if need be: in every third run another fault strikes
    while the position is found again or the rest is cut."""
    if found.seed % 3 == 0:
        again = Injector(scene.bench, [draw(found.seed + 100_000, 120, LOUD)])
    for _ in range(TRIES):
        try:
            if scene.place.controller.state.activity is Activity.NOT_CONNECTED:
                scene.connect()
            record = unfinished(kept.job)
            if record is None:  # it struck before the first move
                find_again(scene.place, mark=MARK, spot=SPOT)
                result = run_program(scene.place, kept.program, kept.journal())
            else:
                result = resume_program(
                    scene.place, kept.program, kept.journal(), first=record.executed, mark=MARK, spot=SPOT
                )
            found.resumed, found.overlap, found.error = result.finished, result.overlap, ""
            break
        except MachineError as error:
            found.error = f"{type(error).__name__}: {error}"
    if found.seed % 3 == 0:
        found.twice = bool(again.done)
        again.disarm()


def between(scene: Scene, kept: Kept, found: Outcome) -> None:
    """The checks before the next cut."""
    journal = kept.last
    results = check_between(scene.place, spot=SPOT, mark=MARK, journal=journal)
    found.said = " / ".join(result.what for result in results)
    found.suspect = not all(result.good for result in results)
    noted = [text for _, text in events(kept.job, journal.run_id)]
    if found.suspect != any(text.startswith("suspect") for text in noted):
        found.error = "the job file does not say what is suspect"


def compare(scene: Scene, found: Outcome) -> None:
    """The copper against the reference."""
    wanted, pieces = reference(scene.number)
    cut = scene.samples()
    found.mishaps = tuple(mishap.what for mishap in scene.bench.mishaps)
    found.pieces = scene.pieces() == pieces
    step = 0.05
    if not len(cut):
        found.skipped = step * len(wanted)
        return
    near_wanted, near_cut = cKDTree(wanted[:, :2]), cKDTree(cut[:, :2])
    deep = [max(cut[at, 2], default=-1.0) for at in near_cut.query_ball_point(wanted[:, :2], ASIDE)]
    found.skipped = step * float((np.array(deep) < wanted[:, 2] - HEIGHT).sum())
    away = near_wanted.query(cut[:, :2])[0]
    found.astray = step * float((away > ASIDE).sum())
    found.aside = float(away.max())
    allowed = [max(wanted[at, 2], default=0.0) for at in near_wanted.query_ball_point(cut[:, :2], ASIDE)]
    found.deeper = float((cut[:, 2] - np.array(allowed))[away <= ASIDE].max(initial=0.0))


def table(outcomes: list[Outcome]) -> str:
    """By kind."""
    head = f"{'kind':<16}{'runs':>5}{'struck':>7}{'noticed':>8}{'again':>6}{'resumed':>8}{'suspect':>8}"
    head += f"{'copper':>7}{'deeper':>7}{'mishaps':>8}{'good':>5}{'most aside mm':>15}{'most overlap mm':>17}"
    rows = [head]
    for kind in (*FaultKind, STOP, None):
        some = [one for one in outcomes if one.kind is kind]
        if not some:
            continue
        counts = (
            len(some),
            sum(o.struck for o in some),
            sum(o.noticed for o in some),
            sum(o.twice for o in some),
            sum(o.resumed for o in some),
            sum(o.suspect for o in some),
            sum(o.copper for o in some),
            sum(o.deeper > HEIGHT for o in some),
            sum(bool(o.mishaps) for o in some),
            sum(o.good for o in some),
        )
        widths = (5, 7, 8, 6, 8, 8, 7, 7, 8, 5)
        row = f"{kind or 'none':<16}" + "".join(f"{c:>{w}}" for c, w in zip(counts, widths, strict=True))
        rows.append(f"{row}{max(o.aside for o in some):>15.3f}{max(o.overlap for o in some):>17.2f}")
    return "\n".join(rows)


def main() -> None:
    """Print a table, and every run that did not end as it must."""
    given = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawTextHelpFormatter)
    given.add_argument("runs", nargs="?", type=int, default=500)
    given.add_argument("first", nargs="?", type=int, default=0)
    given.add_argument("--hop", type=float)
    asked = given.parse_args()
    HOP.extend([] if asked.hop is None else [asked.hop])
    runs, first = asked.runs, asked.first
    started, outcomes = time.process_time(), []
    for seed in range(first, first + runs):
        outcomes.append(one(seed))
        if not outcomes[-1].good:
            print(outcomes[-1], flush=True)
    print(table(outcomes))
    print(f"{len(program().lines)} lines; {(time.process_time() - started) / runs:.2f} s of CPU a run")


if __name__ == "__main__":
    main()
