"""On the bench: its simulated eyes read the newest test pattern, as a person would with loupe and meter."""

from __future__ import annotations

from drypoint.bench.eyes import Seen, Sight
from drypoint.bench.face import BenchFace
from drypoint.errors import PlanError
from drypoint.geometry.points import as_points
from drypoint.session.actions.coupon_reading import Lines, Readings, lines_of
from drypoint.session.ground import KIND
from drypoint.session.pattern import WHAT
from drypoint.session.session import Session


def have_read(session: Session, bench: BenchFace) -> Readings:
    """What the bench's eyes read from the newest pattern of this clamping.

    Raises
    ------
    PlanError
        None was cut in this clamping.
    """
    known = lines_of(session.settings.bits.vbit)
    return _readings(known, bench.look_at(_sight(session, known)))


def _sight(session: Session, known: Lines) -> Sight:
    """The lines of the newest pattern where they lie on the machine; kept in the order of cutting."""
    snap = session.snapshot
    cut = [one for one in snap.records[KIND] if one.data["what"] == WHAT and one.data["setup"] == snap.setup]
    if not cut:
        raise PlanError("No test pattern was cut in this clamping.", "Test pattern", "Run it first.")
    fit = session.derived.fit(snap)
    lines = [fit.apply(as_points(line)) for line in cut[-1].data["lines"]]
    widths, pairs = len(known.widths), 2 * len(known.ridges)
    ridges = lines[widths : widths + pairs]
    return Sight(
        tuple(lines[:widths]),
        tuple(lines[widths + pairs :]),
        tuple(zip(ridges[::2], ridges[1::2], strict=True)),
    )


def _readings(known: Lines, seen: Seen) -> Readings:
    return Readings(
        {
            depth: width
            for (depth, _), width in zip(known.widths, seen.widths, strict=True)
            if width is not None
        },
        dict(zip(known.squares, seen.parted, strict=True)),
        dict(zip(known.ridges, seen.stands, strict=True)),
    )
