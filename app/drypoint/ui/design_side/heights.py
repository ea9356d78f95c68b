"""The copper's height as the window shows it. Nothing here knows Qt: it is done where plans are computed."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from drypoint.board.model import Finding
from drypoint.geometry.points import Points, resample
from drypoint.geometry.rigid import Rigid
from drypoint.progress import Progress
from drypoint.session.derive import Derived
from drypoint.session.snapshot import Snapshot
from drypoint.session.work import preset_of
from drypoint.surface.give import give_report
from drypoint.surface.model import Surface
from drypoint.ui.heat.picture import HeatPicture, draw_heat

PITCH = 1.0
"""Between places on the grooves at which the spread is looked at, mm."""
BACK = 0.4
"""How far the slow touch is taken to start above the copper when its time is estimated, mm."""


@dataclass(frozen=True, slots=True, eq=False)
class TouchPicture:
    """The copper's height, board frame.

    ``planned`` are the places to touch, ``median`` and ``worst`` the spread on the grooves, mm;
    ``seconds`` what touching the planned places takes. Without touches only the plan is known.
    """

    planned: Points
    seconds: float
    heat: HeatPicture | None = None
    surface: Surface | None = None
    median: float = 0.0
    worst: float = 0.0
    give: tuple[Finding, ...] = ()
    stale: bool = False


def draw_touched(derived: Derived, snap: Snapshot, progress: Progress) -> TouchPicture:
    """What was touched last, board frame of then.

    Raises
    ------
    PlanError
        If it is not known where the board lay.
    """
    found = derived.touches(snap)
    assert found is not None
    touches, setup = found
    surface, fit, layout = derived.measured(snap, progress), derived.fit_of(snap, setup), derived.layout(snap)
    back = (fit if isinstance(fit, Rigid) else fit.rigid).inverse()
    spots = back.apply(touches.points[:, :2])
    heat = draw_heat(
        lambda at: surface.mean(fit.apply(at)),
        lambda at: surface.std(fit.apply(at)),
        _board_and_touches(_box(derived.board(snap).outline.bounds), spots),
        spots,
        touches.give if any(one.first is not None for one in touches.touches) else None,
    )
    lines = [resample(line, PITCH) for line in derived.cuts(snap).grooves.lines]
    std = surface.std(fit.apply(np.vstack(lines))) if lines else np.zeros(1)
    loose = give_report(touches, (0.0, 0.0, layout.width, layout.height))
    return TouchPicture(
        planned=spots,
        seconds=touching_seconds(snap, touches.points),
        heat=heat,
        surface=surface,
        median=float(np.median(std)),
        worst=float(std.max()),
        give=tuple(_back_to_board(one, back) for one in loose),
        stale=setup != snap.setup,
    )


def touching_seconds(snap: Snapshot, places: Points) -> float:
    """Time of touching: the way down fast, a little slowly, and the ways between."""
    asked = snap.settings.surface
    rates = preset_of(snap.settings).max_rate
    down = asked.highest / asked.fast + BACK / asked.slow + 2 * asked.highest / rates[2]
    ways = np.sqrt((np.diff(places[:, :2], axis=0) ** 2).sum(axis=1)).sum() if len(places) > 1 else 0.0
    return float(60.0 * (len(places) * down + ways / min(rates[:2])))


def _board_and_touches(
    board: tuple[float, float, float, float], spots: Points
) -> tuple[float, float, float, float]:
    """The board and the places touched: beyond them heights are only guessed."""
    x0, y0, x1, y1 = board
    if len(spots):
        (a, b), (c, d) = spots.min(axis=0), spots.max(axis=0)
        x0, y0, x1, y1 = min(x0, a), min(y0, b), max(x1, c), max(y1, d)
    return float(x0), float(y0), float(x1), float(y1)


def _box(bounds: tuple[float, ...]) -> tuple[float, float, float, float]:
    x0, y0, x1, y1 = (float(value) for value in bounds)
    return x0, y0, x1, y1


def _back_to_board(finding: Finding, back: Rigid) -> Finding:
    if finding.at is None:
        return finding
    x, y = back.apply([finding.at])[0]
    return Finding(
        finding.kind, finding.what, finding.where, finding.hint, (float(x), float(y)), finding.nets
    )
