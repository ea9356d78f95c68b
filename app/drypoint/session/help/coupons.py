"""Words beside the places of trial cuts."""

from __future__ import annotations

from drypoint.session.help.words import Help

COUPONS = {
    "pattern": Help(
        "The corner of the blank that the V-bit's test pattern lies nearest to.",
        "Where there is no room it moves along the edge; where there is none at all it is refused.",
    ),
    "grid": Help(
        "The corner of the blank that the laser's burn grid lies nearest to.",
        "The ground must carry the coating that the legend is marked on, or its values are of no use.",
    ),
    "grid_at_spot": Help(
        "Burn the grid from where the light spot stands, to its right and behind it.",
        "On a piece of its own nothing is known of what lies around: look that it reaches no clamp.",
    ),
}
