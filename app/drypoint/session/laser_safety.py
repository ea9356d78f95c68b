"""Laser light: what to read before it, and what must be said of the material.

Own words; eyewear is chosen by what the laser's maker states. The program computes no protection.
"""

from __future__ import annotations

from drypoint.errors import PlanError
from drypoint.session.settings import LaserSection
from drypoint.wording import say

EYES = (
    "Laser light harms eyes and skin, scattered light too. Eyewear for the wavelength, as the laser's "
    "maker states, on everybody in the room; best inside a closed housing with an interlock."
)
SHINE = "Copper and other bright metal reflect the beam: none of it bare under the beam or at its side."
FIRE = (
    "A beam can set things alight. Stay with it for as long as it is on; an extinguisher at hand, "
    "nothing that burns nearby. Stop here is a stop in software; the power switch is the one that counts."
)
FUMES = "What is burnt gives off fumes: extraction on, to the outside or through the right filter."
COATING = "Mark only a coating that its maker declares safe for laser work; never one with chlorine in it."
BARE = (
    "Burnt glass-fibre or paper laminate gives off toxic and corrosive gases, and it can catch fire. It is "
    "not advised; a coating that its maker declares laser-safe is the better way."
)
RULES = "Follow the manual of the laser's maker, local rules and qualified practice."

FOCUS = (
    EYES,
    "The focus light is the same beam at 1 % of its power: just as much to be kept from the eyes.",
    RULES,
)
"""Before the focus light."""
DARK_WALK = ("The head goes round with the beam off. Eyewear on all the same: the laser has power.",)
"""Before the dark walk round the extent."""


def cautions(chosen: LaserSection) -> tuple[str, ...]:
    """What to read before the beam is used on the material that is set."""
    return (EYES, SHINE, FIRE, FUMES, BARE if chosen.bare else COATING, RULES)


BARE_NAME = "bare laminate"
"""What bare laminate is called where values are kept for it."""


def material_name(chosen: LaserSection) -> str:
    """What is marked, acknowledged or not; empty where it is not said."""
    return BARE_NAME if chosen.bare else chosen.coating.strip()


def require_material(chosen: LaserSection) -> str:
    """The material's name, once it is acknowledged.

    Raises
    ------
    PlanError
        Saying what has to be acknowledged first.
    """
    if chosen.bare:
        if not chosen.bare_accepted:
            raise PlanError(
                "Bare laminate under a laser is not acknowledged.",
                "Laser",
                say("{bare} If you mean to, say so in the settings of the laser.", bare=BARE),
            )
        return BARE_NAME
    if not chosen.coating.strip():
        raise PlanError(
            "It is not said what the laser marks.",
            "Laser",
            "Name the coating, and that its maker declares it safe for laser work.",
        )
    if not chosen.declared_safe:
        raise PlanError(
            say(
                "It is not said that the maker of {coating!r} declares it safe for laser work.",
                coating=chosen.coating.strip(),
            ),
            "Laser",
            "Look it up in the maker's data sheet; else use another coating.",
        )
    return chosen.coating.strip()
