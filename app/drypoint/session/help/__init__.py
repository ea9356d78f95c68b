"""A few plain words for every setting: what it does, what is sensible, what happens if it is wrong.

Keys are "section.field" as in ``session/settings.py``; parts of a setting have a third word
("bits.vbit.tip"). Ranges are common practice for small engravers, no source: the manuals of machine,
bits and material go first.
"""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from drypoint.session.help.clearing import CLEAR_AREA, CLEARING, WIDE_BIT
from drypoint.session.help.coupons import COUPONS
from drypoint.session.help.electrical import ELECTRICAL
from drypoint.session.help.holes import HOLES
from drypoint.session.help.laser import LASER
from drypoint.session.help.material import BITS, BLANK, BOARD, CLAMP, COPIES, EDGE, IMPORTED
from drypoint.session.help.turn import TURN
from drypoint.session.help.words import Help
from drypoint.session.help.work import CUTS, MACHINE, PASSES, REFERENCE, SURFACE

__all__ = ["HELP", "Help"]


def _keyed(section: str, words: Mapping[str, Help]) -> dict[str, Help]:
    return {f"{section}.{name}": one for name, one in words.items()}


HELP: Mapping[str, Help] = MappingProxyType(
    {
        **_keyed("board", BOARD),
        **_keyed("turn", TURN),
        **_keyed("blank", BLANK),
        **_keyed("blank.clamps", CLAMP),
        **_keyed("copies", COPIES),
        **_keyed("bits", BITS),
        **_keyed("cuts", CUTS),
        **_keyed("clearing", CLEARING),
        **_keyed("clearing.areas", CLEAR_AREA),
        **_keyed("clearing.bit", WIDE_BIT),
        **_keyed("holes", HOLES),
        **_keyed("electrical", ELECTRICAL),
        **_keyed("imported", IMPORTED),
        **_keyed("edge", EDGE),
        **_keyed("surface", SURFACE),
        **_keyed("passes", PASSES),
        **_keyed("reference", REFERENCE),
        **_keyed("laser", LASER),
        **_keyed("coupons", COUPONS),
        **_keyed("machine", MACHINE),
    }
)
"""Help for every setting, by "section.field"."""
