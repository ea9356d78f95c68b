"""Words beside the settings of turning the board over."""

from __future__ import annotations

from drypoint.session.help.words import Help

TURN = {
    "tooling": Help(
        "Holes drilled through the margin of the blank while the first side looks up. The second side is "
        "found by them; they lie far apart, and so that a blank turned the wrong way is noticed.",
        "Never: a board with fewer than two holes of its own cannot be found once it was turned over. "
        "Always: a minute of drilling, and a margin wide enough.",
    ),
    "count": Help(
        "How many tooling holes there are.",
        "With two, a hole that was touched wrongly is not told from the others. More than four gain little.",
        2,
        6,
        "holes",
    ),
    "drill": Help(
        "The drill that makes them. Left open, it is one that the board needs anyway.",
        "Holes of very thin drills wander and are hard to see; very large ones are hard to centre on by eye.",
    ),
}
