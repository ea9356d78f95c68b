"""The body of the machine: where the tip really is, what it cuts, and whether it makes contact.

The controller counts steps; the body knows play, lost steps, the bit's length, the sheet. Positions
of the controller are "counted"; positions of the tip are in "space".

Play of an axis is a dead zone: the carriage follows only once the screw has taken it up. The weight
of the head hangs on its nut, so Z touches true; a cutting load lifts the bit within that slack.
"""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
from numpy.typing import NDArray
from scipy.special import ndtr

from drypoint.bench.copper import STILL
from drypoint.bench.imperfect import Faults, Mishap, Path
from drypoint.bench.mishaps import look
from drypoint.bench.planner import Triple
from drypoint.bench.shape import CutShape
from drypoint.bench.sheet import Sheet
from drypoint.bench.wander import Wander
from drypoint.bits.model import Bit, Drill, VBit

Floats = NDArray[np.float64]

SAMPLE = 0.05
"""Longest step between samples of a cut, mm."""
NEAR_COPPER = 0.6
"""Above this height over the copper no touch is possible, whatever its noise, mm."""
PROBE_SAMPLE = 0.005
"""Step between samples of a probing move, mm."""
WALL = 17
"""Samples within such a step where a bit meets a wall sideways."""
FAST_TOUCH = 100.0 / 60.0
"""Speed (mm/s) whose push the sheet's spring is stated for."""


class Body:
    """A machine with a sheet on it. Implements what `BenchController` drives.

    Parameters
    ----------
    sheet : Sheet
    faults : Faults
    seed : int
    start : (x, y, z)
        Where the tip of a bit of nominal length stands at first, space.
    box : two triples, optional
        Mechanical ends of the axes, space.
    """

    def __init__(
        self,
        sheet: Sheet,
        faults: Faults,
        seed: int,
        start: Triple,
        box: tuple[Triple, Triple] | None = None,
        *,
        has_switches: bool = False,
    ) -> None:
        self.sheet = sheet
        self.faults = faults
        self.mishaps: list[Mishap] = []
        self.trail: list[Path] = []
        """Everything the machine did, for tests and pictures."""
        self.marks: list[tuple[Floats, float]] = []
        """What a laser has marked: (2, 2) sheet frame and dose (power over speed, s/mm)."""
        self.spot = (0.0, 0.0)
        """Where the beam of a laser head meets the sheet, less the place of the tip, mm."""
        self.turning = False
        self.hand_spindle: bool | None = None
        """State of a spindle that is switched by hand; None where the controller switches it."""
        self.bit: Bit | None = None
        self.bit_length = 0.0
        """How much farther than nominal the bit sticks out, mm."""
        self.blunt = 0.0
        self.clip: tuple[float, float] | None = None
        """Sheet place of the clip on the upper face; None: hanging free."""
        self.clip_at_bit = False
        self.probe_wire = True
        """Whether the contact wire is whole."""
        self.on_change: Callable[[], None] | None = None
        self._rng = np.random.default_rng((seed, 0xB0D7))
        self._offset = np.array(start, dtype=np.float64)
        self._box = box
        self._has_switches = has_switches
        self._last: Triple = (0.0, 0.0, 0.0)
        self._slack = np.zeros(3)
        """Where each carriage is within its play: counted plus this."""
        self._rows: list[tuple[float, float, float, bool, float, float]] = []
        self._wander = Wander(np.random.default_rng((seed, 0xD21F7)), faults.wander)
        self._load = self._rng.uniform(0.0, 2.0 * np.pi, (6, 3))

    # what the controller drives

    def moved(self, end: Triple, *, rapid: bool, power: float, speed: float) -> None:
        """A straight piece of path has been run."""
        self._rows.append((*end, rapid, power, speed))

    def spindle(self, speed: float) -> None:
        """The controller's spindle output."""
        if self.hand_spindle is None:
            self._turn(speed > 0.0)

    def switch_by_hand(self, on: bool) -> None:
        """The person switches the spindle."""
        self.hand_spindle = on
        self._turn(on)

    def _turn(self, on: bool) -> None:
        if on == self.turning:
            return
        self.flush()
        self.turning = on
        if on and (self.clip is not None or self.clip_at_bit):
            self._mishap("the spindle was started with the clip on", self.tip(self._last))

    def power_up(self) -> None:
        """The controller forgets: it now calls this place (0, 0, 0)."""
        self.home((0.0, 0.0, 0.0))

    def home(self, place: Triple) -> None:
        """The controller now calls this place ``place``."""
        self.flush()
        self._offset = self._offset + np.array(self._last) - np.array(place)
        self._last = place

    def switches(self, place: Triple) -> Triple | None:
        """Way to the homing switches at the positive ends, mm."""
        if not self._has_switches or self._box is None:
            return None
        self.flush()
        way = np.array(self._box[1]) - (np.array(place) + self._offset)
        return (float(way[0]), float(way[1]), float(way[2]))

    def contact(self, place: Triple) -> bool:
        """Whether the contact input is closed with the motors at ``place``."""
        if not self.probe_wire or self.bit is None:
            return False
        if self.clip_at_bit:
            return True
        if self.clip is None or self.sheet.up.thickness <= 0.0:
            return False
        self.flush()
        if place[2] + self._offset[2] + self._point > self.sheet.highest() + 0.2:
            return False
        tip = self._tips(np.array([place]))
        return bool(self._gap(tip)[0] <= 0.0)

    def contact_along(self, start: Triple, end: Triple, speed: float, *, away: bool) -> float | None:
        """Distance along a straight probing move at which the input changes; None: it does not."""
        if not self.probe_wire or self.bit is None or (self.clip is None and not self.clip_at_bit):
            return 0.0 if away else None
        if self.clip_at_bit:
            return None if away else 0.0
        self.flush()
        begin, way = np.array(start), np.array(end) - np.array(start)
        length = float(np.linalg.norm(way))
        count = max(2, int(length / PROBE_SAMPLE) + 2)
        share = np.linspace(0.0, 1.0, count)
        error = self._touch_error(self._tips(begin + way[None, :]), speed)

        def changed(shares: Floats) -> tuple[Floats, NDArray[np.int64]]:
            gap = self._gap(self._tips(begin + shares[:, None] * way)) - error
            return gap, np.flatnonzero((gap > 0.0) if away else (gap <= 0.0))

        gap, hit = changed(share)
        if not len(hit) or hit[0] == 0:
            return 0.0 if len(hit) else None
        at = int(hit[0])
        if np.isinf(gap[at - 1 : at + 1]).any():  # a wall: looked at more finely
            share = np.linspace(share[at - 1], share[at], WALL)
            gap, hit = changed(share)
            at = int(hit[0]) if len(hit) else WALL - 1
        a, b = gap[at - 1], gap[at]
        inner = a / (a - b) if np.isfinite(a) and np.isfinite(b) and a != b else 1.0
        return float((share[at - 1] + inner * (share[at] - share[at - 1])) * length)

    # what hands and faults do

    @property
    def _point(self) -> float:
        """Height of the point above where a bit of nominal length has it, mm."""
        return self.blunt - self.bit_length

    def change_bit(self, bit: Bit | None) -> None:
        """Put in a bit; its length beyond the collet is a little different every time."""
        self.flush()
        self.bit = bit
        self.blunt = 0.0
        self.bit_length = float(self._rng.normal(0.0, 0.6))

    def break_bit(self, loss: float = 0.4) -> None:
        """The point breaks off."""
        self.flush()
        self.blunt += loss

    def lose_steps(self, by: Triple) -> None:
        """The motors slip: the tip is ``by`` mm from where the controller thinks it is."""
        self.flush()
        self._offset = self._offset + np.array(by)

    def tip(self, counted: Triple) -> Triple:
        """Space place of the tip when the controller counts ``counted``."""
        self.flush()
        x, y, z = self._tips(np.array([counted]))[0]
        return (float(x), float(y), float(z))

    def counted(self, tip: Triple) -> Triple:
        """What the controller must count for the tip to be at ``tip``, play left aside."""
        z = tip[2] - self._point
        o = self._offset
        return (tip[0] - float(o[0]), tip[1] - float(o[1]), z - float(o[2]))

    def offset(self) -> Triple:
        """Space less counted, x, y and z of the nose, mm."""
        return (float(self._offset[0]), float(self._offset[1]), float(self._offset[2]))

    # contact

    def _shape(self) -> CutShape | None:
        """The bit as it stands still."""
        return None if self.bit is None else CutShape.of(self.bit, runout=self._wider, blunt=self.blunt)

    @property
    def _wider(self) -> float:
        """How much wider the bit is than is said, mm."""
        return self.faults.tip if isinstance(self.bit, VBit) else 0.0

    def _gap(self, tips: Floats) -> Floats:
        """(N,) how far the tip is above the height at which it touches the clip's copper, mm."""
        shape, clip = self._shape(), self.clip
        pieces = self.sheet.up.pieces
        label = None if clip is None else pieces.label_near(clip)
        if shape is None or label is None:
            return np.full(len(tips), np.inf)
        still = bool(np.ptp(tips[:, :2], axis=0).max() < 1e-9)
        spots = tips[:1, :2] if still else tips[:, :2]
        above = np.asarray(tips[:, 2] - self.sheet.top(spots), dtype=np.float64)
        low = above <= NEAR_COPPER  # higher up the bit is clear whatever lies below
        if not low.any():
            return above
        where = self.sheet.to_sheet(spots if still else spots[low])
        distance = pieces.distance(where, label, shape.shank / 2.0 + 0.1)
        if still:
            return np.asarray(above + shape.depth_to_reach(distance), dtype=np.float64)
        above[low] += shape.depth_to_reach(distance)
        return above

    def _touch_error(self, tips: Floats, speed: float) -> float:
        """How much higher than it is the copper seems to this touch (spring, noise, chips), mm."""
        faults = self.faults
        error = float(self._rng.normal(0.0, faults.noise))
        if self._rng.random() < faults.chips:
            error += float(self._rng.exponential(faults.chip))
        push = float(self.sheet.give(tips[-1:, :2])[0]) * min(1.5, speed / FAST_TOUCH)
        return error - push

    # motion

    def _tips(self, counted: Floats) -> Floats:
        """(N, 3) tips for counted places reached monotonically from the present one."""
        half = np.array(self.faults.play) / 2.0
        now = np.array(self._last) + self._slack
        at = np.clip(now, counted - half, counted + half) + self._offset
        at[:, 2] += self._point
        return np.asarray(at, dtype=np.float64)

    def flush(self) -> None:
        """Work out everything that was run since the last time."""
        if not self._rows:
            return
        rows, self._rows = self._rows, []
        table = np.array(rows, dtype=np.float64)
        path = Path(np.vstack((self._last, table[:, :3])), table[:, 3] > 0.5, table[:, 4], table[:, 5])
        self.trail.append(path)
        share, index = self._samples(path)
        counted = path.ends[index] + share[:, None] * (path.ends[index + 1] - path.ends[index])
        at = self._follow(counted)
        self._last = (float(table[-1, 0]), float(table[-1, 1]), float(table[-1, 2]))
        tips = at + self._offset
        tips = self._ends_of_travel(tips)
        tips[:, 2] += self._point
        self._cut(tips, index, path)
        if self.on_change is not None:
            self.on_change()

    def _samples(self, path: Path) -> tuple[Floats, NDArray[np.int64]]:
        """Where along which piece to sample: finely near the copper, else only the ends."""
        step = np.diff(path.ends, axis=0)
        length = np.sqrt((step**2).sum(axis=1))
        low = np.minimum(path.ends[:-1, 2], path.ends[1:, 2]) + self._offset[2] + self._point
        near = low < self.sheet.highest() + 0.3
        count = np.where(near, np.maximum(1, np.ceil(length / SAMPLE - 1e-9)), 1).astype(np.int64)
        first = np.concatenate(([0], np.cumsum(count)))
        index = np.repeat(np.arange(len(count)), count)
        share = (np.arange(first[-1]) - first[index] + 1) / count[index]
        share = np.concatenate(([0.0], share))
        return share, np.concatenate(([0], index))

    def _follow(self, counted: Floats) -> Floats:
        """(N, 3) carriage places: each axis with its dead zone."""
        at = np.empty_like(counted)
        for axis in range(3):
            half = self.faults.play[axis] / 2.0
            place = self._last[axis] + float(self._slack[axis])
            column = counted[:, axis].tolist()
            for i, wanted in enumerate(column):
                if place < wanted - half:
                    place = wanted - half
                elif place > wanted + half:
                    place = wanted + half
                column[i] = place
            at[:, axis] = column
            self._slack[axis] = place - counted[-1, axis]
        return at

    def _ends_of_travel(self, tips: Floats) -> Floats:
        """Stop at the mechanical ends; steps are lost there."""
        if self._box is None:
            return tips
        low, high = np.array(self._box[0]), np.array(self._box[1])
        held = np.clip(tips, low, high)
        lost = held - tips
        if np.abs(lost).max() > 1e-6:
            self._offset = self._offset + lost[int(np.abs(lost).sum(axis=1).argmax())]
            at = held[int(np.abs(lost).sum(axis=1).argmax())]
            self._mishap("an axis ran against its end", (float(at[0]), float(at[1]), float(at[2])))
        return held

    def _cut(self, tips: Floats, index: NDArray[np.int64], path: Path) -> None:
        if path.power.any():
            self._mark(tips, index, path)
        sheet, shape = self.sheet, self._shape()
        if shape is None:
            return
        low = tips[:, 2] < sheet.highest() + 0.05
        if not low.any():
            return
        at = np.flatnonzero(low)
        where = sheet.to_sheet(tips[at, :2])
        inside = (where >= 0.0).all(axis=1) & (where <= (sheet.width, sheet.height)).all(axis=1)
        depth = np.where(inside, sheet.top(tips[at, :2]) - tips[at, 2], -1.0)
        still = None if self.turning else CutShape.of(self._bit()).shank
        self.mishaps += look(sheet, tips, at, depth, path.rapid[index[at]], still)
        if self.turning and (depth > 0.0).any():
            depth = np.where(depth > 0.0, depth - self._yield(tips[at], where), depth)
            turning = CutShape.of(self._bit(), runout=self.faults.runout + self._wider, blunt=self.blunt)
            breaks = np.flatnonzero(np.diff(at) > 1) + 1
            for part in np.split(np.arange(len(at)), breaks):
                way = self._slipped(where[part])
                sheet.up.carve(way, depth[part], turning)
                below = depth[part] - sheet.board
                if sheet.down.thickness and (below > 0.0).any():
                    sheet.down.carve(way, np.where(below > 0.0, below, -1.0), turning)

    def _slipped(self, where: Floats) -> Floats:
        """(N, 2) where a stroke goes: a drill that goes straight down may have slipped."""
        if isinstance(self.bit, Drill) and float(np.ptp(where, axis=0).max()) < STILL:
            return where + self._wander.off(where[0])
        return where

    def _bit(self) -> Bit:
        if self.bit is None:
            raise AssertionError("no bit is in")
        return self.bit

    def _yield(self, tips: Floats, where: Floats) -> Floats:
        """(N,) how much shallower than meant a cutting load makes the cut, mm: evenly 0 to ``lift``
        over the sheet in smooth waves, and the sheet's own spring."""
        wave = np.zeros(len(where))
        norm = np.sqrt(len(self._load) / 2.0)
        for k, (phase, turn, stretch) in enumerate(self._load):
            size = 2.0 * np.pi / (4.0 + 2.5 * k + stretch)
            wave += np.sin(size * (where[:, 0] * np.cos(turn) + where[:, 1] * np.sin(turn)) + phase)
        give = self.sheet.give(tips[:, :2])
        return np.asarray(self.faults.lift * ndtr(wave / norm) + self.faults.push * give, dtype=np.float64)

    def _mark(self, tips: Floats, index: NDArray[np.int64], path: Path) -> None:
        where = self.sheet.to_sheet(tips[:, :2] + self.spot)
        power = path.power[index]
        for i in np.flatnonzero(power[1:] > 0.0) + 1:
            self.marks.append(
                (where[i - 1 : i + 1].copy(), float(power[i] / max(path.speed[index[i]], 1e-6)))
            )

    def _mishap(self, what: str, at: Triple) -> None:
        self.mishaps.append(Mishap(what, at))
