"""What the papers say of the copper's height as it was touched."""

from __future__ import annotations

from contextlib import suppress

import numpy as np

from drypoint.errors import PlanError
from drypoint.session.session import Session
from drypoint.session.wave_words import wave_words
from drypoint.wording import many, say, strung


def surface_rows(session: Session) -> tuple[tuple[str, str], ...]:
    """Touches, heights, spread on the grooves, waves; nothing before the copper was touched."""
    snap, derived = session.snapshot, session.derived
    found = derived.touches(snap)
    if found is None:
        return ()
    touches, setup = found
    with suppress(PlanError):  # where the board lies now may not be known; the heights are
        derived.surface(snap)
    surface = derived.peek(snap).surface
    if surface is None:
        return ()
    fit = derived.fit_of(snap, setup)
    lines = derived.cuts(snap).grooves.lines
    spread = 1e3 * surface.std(fit.apply(np.vstack(lines))) if lines else np.zeros(1)
    heights = 1e3 * touches.points[:, 2]
    count = many(len(surface.touches), "{count} place", "{count} places")
    out = len(surface.rejected)
    rows = [
        (say("Touched"), count if not out else say("{places}, {out} left out", places=count, out=out)),
        (
            say("Height where touched"),
            say("{low:+.0f} to {high:+.0f} µm", low=float(heights.min()), high=float(heights.max())),
        ),
        (
            say("Spread on the grooves"),
            say(
                "{middle:.0f} µm in the middle, {worst:.0f} µm at worst",
                middle=float(np.median(spread)),
                worst=float(spread.max()),
            ),
        ),
        (say("Repeat of a touch"), say("{noise:.1f} µm", noise=1e3 * surface.noise)),
    ]
    waves = wave_words(surface)
    if waves:
        rows.append((say("Waves found"), strung(waves)))
    if setup != snap.setup:
        rows.append((say("Stale"), say("clamped anew since then")))
    return tuple(rows)
