"""Bridges put into grooves on purpose, and looked for by touch at the bench's machine.

    python tests/benchmarks/island_touch.py [BOARDS] [FIRST]

Every board is drawn from a seed: a dozen nets, most of them next to each other with one narrow groove
between, the rest with copper left standing around. Its grooves are cut but for up to four bridges: to the
copper outside, between neighbours, across narrow shared grooves. Which copper hangs together in truth is
asked of the carved copper itself. Then the clip goes to the copper outside, later wherever the plan wants
it. A bridge counts as found if its pair is called joined, as listed if it is called unproved; one that is
called proved is a lie.
"""

from __future__ import annotations

import itertools
import math
import sys
import time
from dataclasses import dataclass, field, replace

import numpy as np
import shapely
from shapely import box

from drypoint.bench.bench import Bench, BenchSetup
from drypoint.bench.shape import CutShape
from drypoint.bench.truth import Kind
from drypoint.bits.model import Speeds, VBit
from drypoint.cuts.grooves import plan_grooves
from drypoint.geometry.rigid import Rigid
from drypoint.machine.controller import Controller
from drypoint.machine.islands_plan import (
    OUTER,
    Neighbours,
    Sighting,
    Spot,
    conclude,
    lines_between,
    neighbours,
    next_clip,
    plan_clips,
    spots,
)
from drypoint.machine.operator import Request, RequestKind
from drypoint.machine.preset import MachinePreset, SpindleKind
from drypoint.machine.procedures.contact import check_contact, clip_off
from drypoint.machine.procedures.proof import island_touch
from drypoint.machine.procedures.touching import zero_at_spot
from drypoint.machine.procedures.workplace import Workplace
from drypoint.machine.standing import standing_copper

BIT = VBit("V 0.1 30°", 0.1, math.radians(30.0), Speeds(8000.0, 300.0, 100.0))
PRESET = MachinePreset(
    "small",
    (160.0, 100.0, 40.0),
    (1000.0, 1000.0, 600.0),
    (60.0, 60.0, 40.0),
    SpindleKind.VARIABLE,
    (0.0, 1e4),
)
WIDTH = 0.2
"""Of the grooves, mm."""
BRIDGE = 0.5
"""Length of groove that is left out, mm."""
REACH = 1.0
BLANK = (36.0, 28.0)
MOST_CLIPS = 40
KINDS = ("outside", "neighbours", "narrow")


@dataclass
class Found:
    """What became of one board."""

    seed: int
    kinds: tuple[str, ...] = ()
    """Kind of each bridge."""
    first: tuple[str, ...] = ()
    """What each bridge is called after the first clip: joined, unproved, proved."""
    last: tuple[str, ...] = ()
    """The same with all clip moves that were advised."""
    failed: int = 0
    """Bridges that join nothing in truth: another groove crosses them."""
    lies: int = 0
    """Pairs called proved that hang together in truth, or joined that do not."""
    pairs: int = 0
    clips: int = 0
    touches: int = 0
    again: bool = True
    """Whether the grooves to be cut again hold every bridge."""
    groups: bool = True
    """Whether the pieces found joined are those that hang together in truth."""


def nets_of(rng: np.random.Generator) -> dict[str, shapely.Geometry]:
    """A dozen nets in rows; gaps of 0.25 mm (one groove) or 0.9 mm (copper stands between)."""
    nets: dict[str, shapely.Geometry] = {}
    y = 6.0
    for row in range(3):
        height, x = float(rng.uniform(2.5, 4.5)), 6.0
        for column in range(4):
            width = float(rng.uniform(2.0, 4.5))
            part = box(x, y, x + width, y + height)
            if rng.random() < 0.5:  # a notch, so that shapes are no mere boxes
                part = part.difference(box(x + width * 0.4, y + height * 0.6, x + width * 0.7, y + height))
            nets[f"N{row}{column}"] = part
            x += width + (0.25 if rng.random() < 0.7 else 0.9)
        y += height + (0.25 if rng.random() < 0.6 else 0.9)
    return nets


@dataclass
class Board:
    """One board, carved on a bench with bridges."""

    seed: int
    nets: dict[str, shapely.Geometry] = field(init=False)
    pairs: tuple[Neighbours, ...] = field(init=False)
    places: dict[str, Spot] = field(init=False)
    bridges: tuple[Neighbours, ...] = field(init=False)
    kinds: tuple[str, ...] = field(init=False)

    def __post_init__(self) -> None:
        rng = np.random.default_rng((self.seed, 0x151A))
        self.nets = nets_of(rng)
        self.plan = plan_grooves(self.nets, WIDTH)
        self.bench = Bench(
            self.seed, BenchSetup(width=BLANK[0], height=BLANK[1], kind=Kind.FLAT, loose=(), tilt=(0.0, 0.0))
        )
        self.place = self._zeroed()
        swept = shapely.union_all([shapely.LineString(line).buffer(WIDTH / 2) for line in self.plan.lines])
        self.copper = copper = standing_copper(
            self.nets, swept, box(0.5, 0.5, BLANK[0] - 0.5, BLANK[1] - 0.5)
        )
        self.pairs = neighbours(copper, REACH)
        self.places = spots(copper, within=box(3.0, 3.0, BLANK[0] - 3.0, BLANK[1] - 3.0))
        self._choose(rng)
        self._carve()

    def _zeroed(self) -> Workplace:
        bench = self.bench
        controller = Controller(bench.link)
        controller.connect()
        place = Workplace(controller, bench.operator, PRESET)
        bench.operator.ask(Request(RequestKind.CHANGE_BIT, "bit", bit=BIT))
        place.ask(Request(RequestKind.JOG_TO, "Over the corner", "Bring the bit over the corner."))
        controller.set_work(x=3.0, y=3.0)
        check_contact(place)
        zero_at_spot(place)
        clip_off(place)
        return place

    def _choose(self, rng: np.random.Generator) -> None:
        outside = [pair for pair in self.pairs if OUTER in pair.nets]
        narrow = [pair for pair in self.pairs if OUTER not in pair.nets and pair.gap < 1.5 * WIDTH]
        sources = {"outside": outside, "narrow": narrow, "neighbours": self._wide()}
        chosen: dict[tuple[str, str], tuple[Neighbours, str]] = {}
        for _ in range(int(rng.integers(1, 5))):
            kind = KINDS[int(rng.integers(len(KINDS)))]
            if not sources[kind]:
                continue
            picked = sources[kind][int(rng.integers(len(sources[kind])))]
            for pair in picked if isinstance(picked, tuple) else (picked,):
                chosen[pair.nets] = (pair, kind)
        self.bridges = tuple(pair for pair, _ in chosen.values())
        self.kinds = tuple(kind for _, kind in chosen.values())

    def _wide(self) -> list[tuple[Neighbours, Neighbours]]:
        """Nets with copper standing between them: joined only if both grooves are bridged."""
        by_nets = {pair.nets: pair for pair in self.pairs}
        found = []
        for a, b in itertools.combinations(self.nets, 2):
            way = shapely.shortest_line(self.nets[a], self.nets[b])
            if not 2.0 * WIDTH < way.length < REACH:
                continue
            middle = way.interpolate(0.5, normalized=True)
            between = [name for name, shape in self.copper.items() if shape.distance(middle) < 1e-6]
            sides = [by_nets.get(tuple(sorted((net, between[0])))) for net in (a, b) if between]
            ends = [way.interpolate(WIDTH / 2.0), way.interpolate(-WIDTH / 2.0)]
            if len(sides) == 2 and all(sides):
                pairs = zip(sides, ends, strict=True)
                found.append(tuple(replace(one, at=(end.x, end.y)) for one, end in pairs))
        return found

    def _carve(self) -> None:
        """Cut every groove but for the bridges, right into the bench's copper."""
        copper, shape = self.bench.sheet.up, CutShape.of(BIT)
        depth = copper.thickness + (WIDTH - shape.tip) / shape.slope
        gaps = np.array([pair.at for pair in self.bridges])
        for line in self.plan.lines:
            fine = shapely.get_coordinates(shapely.segmentize(shapely.LineString(line), 0.05))
            near = np.hypot(*(fine[:, None] - gaps[None]).transpose(2, 0, 1)).min(axis=1) < BRIDGE / 2.0
            copper.carve(self.bench.board_to_sheet(fine), np.where(near, -1.0, depth), shape)

    def together(self) -> dict[str, int | None]:
        """Number of the piece of copper that each net's place is on, in truth."""
        pieces = self.bench.copper.pieces
        names = list(self.places)
        sheet = self.bench.board_to_sheet([self.places[name].at for name in names])
        return {
            name: pieces.label_near((float(x), float(y)), 0.05)
            for name, (x, y) in zip(names, sheet, strict=True)
        }

    def height(self, x: float, y: float) -> float:
        """Height of the copper, work z, as a good measurement has it."""
        space = self.bench.work_to_space((x, y))
        top = float(self.bench.sheet.top([space])[0])
        spot = float(self.bench.sheet.top([self.bench.work_to_space((3.0, 3.0))])[0])
        return top - spot


def one(seed: int) -> Found:
    """One board, all clip moves."""
    board = Board(seed)
    truth = board.together()
    real = [truth[a] == truth[b] for a, b in (pair.nets for pair in board.bridges)]
    bridges = [pair for pair, joins in zip(board.bridges, real, strict=True) if joins]
    kinds = tuple(kind for kind, joins in zip(board.kinds, real, strict=True) if joins)
    found = Found(seed, kinds, pairs=len(board.pairs), failed=real.count(False))
    seen: list[Sighting] = []
    step = plan_clips(board.pairs, board.places)[0]
    while step is not None and found.clips < MOST_CLIPS:
        seen += island_touch(board.place, step, Rigid(), board.height)
        found.clips += 1
        found.touches += len(step.touches)
        proof = conclude(board.pairs, seen)
        found.lies += sum(truth[a] == truth[b] for a, b in (pair.nets for pair in proof.proved))
        found.lies += sum(truth[a] != truth[b] for a, b in (pair.nets for pair in proof.joined))
        called = {pair.nets: "joined" for pair in proof.joined}
        called |= {pair.nets: "unproved" for pair in proof.unproved}
        named = tuple(called.get(pair.nets, "proved") for pair in bridges)
        found.first = found.first or named
        found.last = named
        step = next_clip(board.pairs, proof, board.places)
    again = {line for pair in proof.joined for line in lines_between(pair, board.plan.line_nets)}
    for pair in bridges:
        lines = [shapely.LineString(board.plan.lines[index]) for index in again]
        found.again &= any(shapely.distance(line, shapely.Point(pair.at)) < WIDTH for line in lines)
    found.groups = {frozenset(group) for group in proof.groups} == _groups(truth)
    if board.bench.mishaps:
        raise AssertionError(board.bench.mishaps)
    return found


def _groups(truth: dict[str, int | None]) -> set[frozenset[str]]:
    by_label: dict[int | None, set[str]] = {}
    for name, label in truth.items():
        by_label.setdefault(label, set()).add(name)
    return {frozenset(names) for names in by_label.values() if len(names) > 1}


def main() -> None:
    """Print a table."""
    boards = int(sys.argv[1]) if len(sys.argv) > 1 else 20
    first = int(sys.argv[2]) if len(sys.argv) > 2 else 0
    started = time.process_time()
    outcomes = [one(seed) for seed in range(first, first + boards)]
    head = f"{'bridges':<12}{'number':>7}{'after one clip: found':>23}{'listed':>8}{'lies':>6}"
    print(f"{head}{'all clips: found':>18}")
    for kind in KINDS:
        rows = [row for o in outcomes for row in zip(o.kinds, o.first, o.last, strict=True) if row[0] == kind]
        said, last = [row[1] for row in rows], [row[2] for row in rows]
        print(
            f"{kind:<12}{len(rows):>7}{said.count('joined'):>23}{said.count('unproved'):>8}"
            f"{said.count('proved'):>6}{last.count('joined'):>18}"
        )
    print(
        f"{boards} boards, {sum(o.pairs for o in outcomes)} pairs, {sum(o.clips for o in outcomes)} clips, "
        f"{sum(o.touches for o in outcomes)} touches; "
        f"{sum(o.failed for o in outcomes)} bridges that join nothing; "
        f"false words {sum(o.lies for o in outcomes)}; "
        f"pieces as in truth on {sum(o.groups for o in outcomes)}; "
        f"grooves to cut again hold all bridges on {sum(o.again for o in outcomes)}; "
        f"{(time.process_time() - started) / boards:.2f} s of CPU a board"
    )
    for o in outcomes:
        if o.lies or not o.groups or not o.again or set(o.last) - {"joined"}:
            print(o)


if __name__ == "__main__":
    main()
