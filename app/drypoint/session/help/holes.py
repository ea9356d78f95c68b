"""Words beside the settings of holes."""

from __future__ import annotations

from drypoint.session.help.words import Help

HOLES = {
    "tolerance": Help(
        "How far a drill may differ from its hole. A larger hole without such a drill is bored with the end "
        "mill.",
        "Too much makes holes that leads do not pass or that wobble; too little bores many small holes.",
        0.02,
        0.2,
    ),
    "spots": Help(
        "The V-bit marks the place of a thin drill first, so that the drill does not wander off.",
        "Without marks thin drills slide sideways on the copper, and holes miss their pads.",
    ),
    "slender": Help(
        "From how many times its own diameter in depth a drill counts as thin.",
        "Too large leaves thin drills without a mark; too small marks every hole and takes time.",
        1,
        6,
        "diameters",
    ),
    "small_pad": Help(
        "Pads up to this size that no trace holds are drilled gently. 0 drills all alike.",
        "Too small and lone pads are torn off the laminate; too large only takes time.",
        0,
        5,
    ),
    "gentle": Help(
        "Share of the drill's feed and peck that is used in such pads. 1 is as usual.",
        "Very slow drills rub and get hot; at full feed a lone pad may come off with the drill.",
        0.2,
        1,
        "of the feed",
    ),
}
