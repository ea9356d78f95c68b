"""Every hole that the board can be found by: reference marks, tooling holes and all holes of the board.

Holes made in one clamping lie to one another as the design says, but for their wander; between holes
of different clampings stands the error of the fit in between. So those of one clamping are suggested.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Collection, Sequence
from dataclasses import dataclass

from drypoint.bits.model import Bit
from drypoint.board.model import Board
from drypoint.cuts.model import Cut, CutKind
from drypoint.geometry.points import Points, as_points
from drypoint.program.placed_cuts import slug
from drypoint.reference.fit import Fit
from drypoint.reference.worth import Advice, choose_holes, next_hole
from drypoint.session.derive import Derived
from drypoint.session.snapshot import Snapshot
from drypoint.session.tooling import drilled_tooling


@dataclass(frozen=True, slots=True, eq=False)
class Candidate:
    """A hole that may be touched.

    Attributes
    ----------
    cut : Cut
        Its place (frame of the side being milled), diameter, the bit that makes it and its label:
        R1, R2… in the waste, H1, H2… on the board, T1, T2… tooling holes.
    mark : bool
        Whether it is a mark in the waste, pricked by the V-bit.
    setup : int or None
        The clamping it was made in; None if no program of this job has made it yet.
    """

    cut: Cut
    mark: bool
    setup: int | None

    @property
    def label(self) -> str:
        """R1, H12…"""
        return self.cut.label

    @property
    def tooling(self) -> bool:
        """Whether it was drilled into the margin to find the board by."""
        return self.cut.kind is CutKind.TOOLING

    @property
    def at(self) -> tuple[float, float]:
        """Board frame, mm."""
        return float(self.cut.path[0][0]), float(self.cut.path[0][1])


def candidates(derived: Derived, snap: Snapshot) -> tuple[Candidate, ...]:
    """Marks, then holes. Marks are pricked into one side: turned over they are not seen. Computes."""
    board, cuts = derived.board(snap), derived.cuts(snap)
    found: list[Candidate] = []
    if snap.face() is snap.settings.board.side:
        made = [made_in(snap, mark) for mark in cuts.marks]
        found += [Candidate(mark, True, at) for mark, at in zip(cuts.marks, made, strict=True)]
    cached: dict[tuple[CutKind, str], int | None] = {}
    for cut in _hole_cuts(board, cuts.holes, snap.settings.bits.vbit):
        key = (cut.kind, cut.bit.name)
        if key not in cached:
            cached[key] = made_in(snap, cut)
        found.append(Candidate(cut, False, cached[key]))
    drilled = drilled_tooling(snap)
    at = None if drilled is None else int(drilled["setup"])
    return (*found, *(Candidate(cut, False, at) for cut in cuts.tooling))


def _hole_cuts(board: Board, planned: Sequence[Cut], fallback: Bit) -> list[Cut]:
    """One cut per hole of the board, with the bit that makes it where one does."""
    by_place = {cut.path[:1].tobytes(): cut for cut in planned if cut.kind is CutKind.HOLE}
    bored = [cut for cut in planned if cut.kind is CutKind.BORE]
    found = []
    for k, hole in enumerate(board.holes):
        at = as_points([(hole.x, hole.y)])
        made = by_place.get(at.tobytes()) or _round(bored, hole.x, hole.y)
        kind, bit = (made.kind, made.bit) if made is not None else (CutKind.HOLE, fallback)
        nets = (hole.net,) if hole.net else ()
        found.append(Cut(kind, bit, at, nets, 0.0, hole.diameter, label=f"H{k + 1}"))
    return found


def _round(bored: Sequence[Cut], x: float, y: float) -> Cut | None:
    for cut in bored:
        low, high = cut.path.min(axis=0), cut.path.max(axis=0)
        if low[0] <= x <= high[0] and low[1] <= y <= high[1]:
            return cut
    return None


def made_in(snap: Snapshot, cut: Cut) -> int | None:
    """The newest clamping in which a program with this kind of cut and bit was run to its end."""
    kind, bit = cut.kind.value.replace(" ", "-"), slug(cut.bit.name)
    for record in reversed(snap.records["done"]):
        name, setup = str(record.data["program"]), int(record.data.get("setup", 1))
        if kind not in name or not name.endswith(bit):
            continue
        if cut.kind is not CutKind.MARK or snap.face(setup) is snap.settings.board.side:
            return setup
    return None


def together(found: Sequence[Candidate]) -> tuple[Candidate, ...]:
    """Those made in the one clamping that made most of them; if none was made yet, the marks, or all."""
    counts = Counter(one.setup for one in found if one.setup is not None)
    if counts:
        best = max(counts, key=lambda setup: (counts[setup], -setup))
        same = tuple(one for one in found if one.setup == best)
        if len(same) >= 2:
            return same
    marks = tuple(one for one in found if one.mark)
    return marks if len(marks) >= 2 else tuple(found)


def wanders(snap: Snapshot, found: Sequence[Candidate]) -> list[float]:
    """How far each may lie from its design, mm, standard deviation per axis."""
    believed = snap.settings.reference
    return [believed.mark_sigma if one.mark else believed.hole_sigma for one in found]


def targets(derived: Derived, snap: Snapshot) -> Points:
    """(N, 2) places that must be hit: all holes; corners of the board where there are fewer than two."""
    board = derived.board(snap)
    if len(board.holes) > 1:
        return as_points([(hole.x, hole.y) for hole in board.holes])
    return as_points([(0.0, 0.0), (board.width, 0.0), (board.width, board.height), (0.0, board.height)])


def suggested(
    derived: Derived, snap: Snapshot, found: Sequence[Candidate], count: int = 3
) -> tuple[Candidate, ...]:
    """Which to use: far apart, drilled in one clamping. Computes."""
    use = together(found)
    if not use:
        return ()
    chosen = choose_holes(
        [one.at for one in use],
        targets(derived, snap),
        count,
        sigma=snap.settings.reference.touch_sigma,
        hole_sigma=wanders(snap, use),
    )
    return tuple(use[k] for k in chosen)


def most_helpful(
    derived: Derived, snap: Snapshot, fit: Fit, rest: Sequence[Candidate]
) -> tuple[Candidate, Advice] | None:
    """The hole whose touch gains most, of those made together with most others. Computes."""
    use = together(rest)
    ranked = next_hole(
        fit,
        [one.at for one in use],
        targets(derived, snap),
        sigma=snap.settings.reference.touch_sigma,
        hole_sigma=wanders(snap, use),
    )
    return (use[ranked[0].hole], ranked[0]) if ranked else None


def following(
    derived: Derived, snap: Snapshot, found: Sequence[Candidate], touched: Collection[str], fit: Fit | None
) -> tuple[Candidate | None, Advice | None]:
    """Which to touch next, and what that gains where there is a fit. Computes."""
    rest = [one for one in found if one.label not in touched]
    if not rest:
        return None, None
    if fit is not None:
        best = most_helpful(derived, snap, fit, rest)
        return best if best is not None else (None, None)
    chosen = [one for one in suggested(derived, snap, found) if one.label not in touched]
    return (chosen or rest)[0], None


def mixed(found: Sequence[Candidate], touched: Collection[str]) -> tuple[str, ...]:
    """Labels of touched holes that were drilled in another clamping than most of the touched."""
    used = [one for one in found if one.label in touched and one.setup is not None]
    counts = Counter(one.setup for one in used)
    if len(counts) < 2:
        return ()
    most = max(counts, key=lambda setup: counts[setup])
    return tuple(one.label for one in used if one.setup != most)
