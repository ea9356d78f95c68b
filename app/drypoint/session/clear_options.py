"""The wide bit and clearing as options of the command line."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

from drypoint.bits.library import default_library
from drypoint.bits.model import EndMill, VBit
from drypoint.errors import InputError
from drypoint.session.clear_settings import Clearing
from drypoint.session.session import Session
from drypoint.wording import say

WORDS = {"moat": Clearing.MOAT, "board": Clearing.BOARD}
"""What `clear` may be."""


@dataclass(frozen=True, slots=True)
class ClearOptions:
    """As given; None for what is left as it is. mm and mm².

    ``wide`` is the name of a bit of the usual ones, or the diameter of an end mill.
    """

    wide: str | None = None
    depth: float | None = None
    clear: str | None = None
    moat: float | None = None
    slivers: float | None = None


def choose_clearing(session: Session, given: ClearOptions) -> None:
    """Store them.

    Raises
    ------
    InputError
        If a value makes no sense or no bit has that name.
    """
    for option, value, least, most in (
        ("--wide-depth", given.depth, 0.01, 1.0),
        ("--moat", given.moat, 0.05, 50.0),
        ("--slivers", given.slivers, 0.0, 1000.0),
    ):
        if value is not None and not (math.isfinite(value) and least <= value <= most):
            raise InputError(
                say("{value:g} is no sensible value.", value=value),
                option,
                say("Give {least:g} to {most:g}.", least=least, most=most),
            )
    clearing = session.settings.clearing
    if given.wide is not None:
        clearing = replace(clearing, bit=wide_named(given.wide))
    if given.clear is not None or given.moat is not None:
        clearing = replace(clearing, what=WORDS[given.clear or "moat"])
    numbers = {"depth": given.depth, "moat": given.moat, "slivers": given.slivers}
    for name, value in numbers.items():
        if value is not None:
            clearing = replace(clearing, **{name: value})  # type: ignore[arg-type]
    session.change("Choose what is cleared", clearing=clearing)


def wide_named(text: str) -> VBit | EndMill:
    """The usual bit of that name, or the usual end mill of that diameter, mm.

    Raises
    ------
    InputError
        If there is none.
    """
    library = default_library()
    usual: tuple[VBit | EndMill, ...] = (*library.mills, *library.vbits)
    for bit in usual:
        if text == bit.name:
            return bit
    try:
        diameter = float(text)
    except ValueError:
        diameter = math.nan
    if not 0.2 <= diameter <= 6.0:
        known = ", ".join(bit.name for bit in usual)
        what = say("There is no bit named '{name}'.", name=text)
        raise InputError(what, "--wide", say("Known bits: {known}.", known=known))
    nearest = min(library.mills, key=lambda mill: abs(mill.diameter - diameter))
    return replace(nearest, name=f"End mill {diameter:.1f}", diameter=diameter, step=diameter / 4.0)
