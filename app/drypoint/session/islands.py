"""What touching from island to island says of the grooves: where to fear bridges, what to cut again."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

import numpy as np
import shapely
from shapely import Geometry, unary_union

from drypoint.board.model import Board
from drypoint.job.store import Record
from drypoint.machine.islands_plan import Neighbours, lines_between, net_of
from drypoint.machine.standing import standing_copper
from drypoint.passes.isolation import IslandAnswer, island_answers, shares, uncut_rate
from drypoint.passes.model import ReachMap
from drypoint.session.layout import Layout
from drypoint.session.plans import CutPlan
from drypoint.session.snapshot import Snapshot

KIND = "island touch"
"""Kind of the records that hold what was touched."""

GROUND = 1.1
"""The ground beside a piece of copper reaches so many widths of a groove."""


@dataclass(frozen=True, slots=True, eq=False)
class Joined:
    """Where copper was found joined: an area (board frame) and grooves to be cut again whole."""

    area: Geometry | None
    grooves: tuple[int, ...]


def standing(board: Board, layout: Layout, cuts: CutPlan) -> dict[str, Geometry]:
    """All copper that must come apart, by name, with grooves of the width they are planned for."""
    lines = [shapely.LineString(line) for line in cuts.grooves.lines]
    swept = unary_union(shapely.buffer(lines, cuts.top / 2)) if lines else shapely.Polygon()
    return standing_copper(board.nets, swept, layout.blank)


def lines_beside(pair: tuple[str, ...], cuts: CutPlan) -> tuple[int, ...]:
    """Groove lines that run between two pieces of copper."""
    a, b = pair
    return lines_between(Neighbours((a, b), 0.0, (0.0, 0.0)), cuts.grooves.line_nets, cuts.grooves.wide)


def grounds(pairs: Sequence[tuple[str, ...]], copper: Mapping[str, Geometry], width: float) -> list[Geometry]:
    """The ground between the two of each pair; empty where one of them is not there."""
    names = sorted({name for pair in pairs for name in pair if name in copper})
    wide = dict(zip(names, shapely.buffer([copper[name] for name in names], GROUND * width), strict=True))
    nothing = shapely.Polygon()
    first = [wide.get(pair[0], nothing) for pair in pairs]
    second = [wide.get(pair[1], nothing) for pair in pairs]
    return list(shapely.intersection(first, second)) if pairs else []


def joined_places(
    copper: Mapping[str, Geometry],
    cuts: CutPlan,
    pairs: Sequence[tuple[str, ...]],
    again: Sequence[int],
) -> Joined:
    """The ground between pieces of copper that were found joined: only there is a groove cut again.

    ``again`` lists grooves asked for; those that do not run between ``pairs`` are cut again whole. So
    are those between copper farther apart than a fine groove is wide: wide ones lie there.
    """
    known = [pair for pair in pairs if pair[0] in copper and pair[1] in copper]
    ground = grounds(known, copper, cuts.width)
    near = [pair for pair, shape in zip(known, ground, strict=True) if not shapely.is_empty(shape)]
    far = {line for pair in known if pair not in near for line in lines_beside(pair, cuts)}
    between = {line for pair in near for line in lines_beside(pair, cuts)} - far
    whole = [line for line in (*again, *sorted(far.difference(again))) if line not in between]
    return Joined(unary_union(ground) if near else None, tuple(whole))


def as_cut(
    pairs: Sequence[Neighbours],
    copper: Mapping[str, Geometry],
    cuts: CutPlan,
    reach: ReachMap,
    under: float,
    ripple_length: float,
) -> tuple[Neighbours, ...]:
    """Neighbours with the gap that the passes are expected to have left, most to be feared first.

    Parameters
    ----------
    pairs : with gaps as planned
    reach : after the passes done, the lines of ``cuts``
    under : how much narrower a groove is at the copper's underside than at its top, mm
    ripple_length : length scale of the surface's ripple, mm

    Where the reach is doubtful the pair's place is the most doubtful spot.
    """
    if not pairs or not reach.points:
        return tuple(pairs)
    points = np.vstack(reach.points)
    chance, width = np.concatenate(reach.probability), np.concatenate(reach.width)
    length = np.concatenate([shares(np.asarray(line)) for line in reach.points])
    uncut = uncut_rate(chance, ripple_length) * length
    areas = np.array(grounds([pair.nets for pair in pairs], copper, cuts.width), dtype=object)
    tree = shapely.STRtree(np.asarray(shapely.points(points), dtype=object))
    owner, spot = tree.query(areas, predicate="intersects")
    found = []
    for index, pair in enumerate(pairs):
        own = spot[owner == index]
        if not len(own):
            found.append(pair)
            continue
        narrower = cuts.width - float(width[own].min()) + under
        doubt = float(-np.expm1(-uncut[own].sum()))
        worst = own[int(np.argmin(chance[own]))]
        at = (float(points[worst, 0]), float(points[worst, 1])) if chance[worst] < SURE else pair.at
        found.append(replace(pair, gap=max(pair.gap - narrower, 0.0), doubt=doubt, at=at))
    return tuple(sorted(found, key=lambda pair: (-pair.weight, pair.nets)))


SURE = 0.99
"""From this chance on a spot is no reason to look there."""


def touched_since_pass(snap: Snapshot) -> Record | None:
    """The newest touches, if no pass was run since: a pass makes them void."""
    record, last = snap.latest(KIND), snap.latest("pass")
    if record is None or (last is not None and last.id > record.id):
        return None
    return record


def to_cut_again(record: Record, cuts: CutPlan) -> tuple[list[tuple[str, ...]], list[int]]:
    """Pairs that were found joined and lines to cut again, by a record of touches.

    What the plan itself cannot part is not cut again and again.
    """
    lost = [set(flaw.nets) for flaw in cuts.check.shorts]
    asked = [tuple(nets) for nets in record.data.get("asked", ())]
    touched = [*(tuple(one["nets"]) for one in record.data["joined"]), *asked]
    vain = [pair for pair in touched if any({net_of(one) for one in pair} <= nets for nets in lost)]
    skipped = {line for pair in vain for line in lines_beside(pair, cuts)}
    pairs = [pair for pair in touched if pair not in vain]
    return pairs, [line for line in record.data["again"] if line not in skipped]


def answers_of(
    snap: Snapshot, grooves_key: str, copper: Mapping[str, Geometry], cuts: CutPlan
) -> tuple[IslandAnswer, ...]:
    """Every answer of the present clamping about the present grooves, oldest first.

    Of the touches between two passes the newest record holds all.
    """
    passes = [one.id for one in snap.records["pass"] if one.data["grooves"] == grooves_key]
    newest: dict[int, Record] = {}
    for record in snap.records[KIND]:
        after = sum(one < record.id for one in passes)
        if record.data["setup"] == snap.setup and after:
            newest[after] = record
    lost = [set(flaw.nets) for flaw in cuts.check.shorts]  # what the plan cannot part says nothing
    found: list[IslandAnswer] = []
    for after, record in sorted(newest.items()):
        joined = [tuple(one["nets"]) for one in record.data["joined"]]
        found += island_answers(
            cuts.grooves.lines,
            copper,
            GROUND * cuts.width,
            proved=[(a, b) for a, b in record.data["proved"]],
            joined=[(a, b) for a, b in joined if not any({net_of(a), net_of(b)} <= nets for nets in lost)],
            after=after,
        )
    return tuple(found)
