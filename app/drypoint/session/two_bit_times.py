"""What a second bit saves, told before it is chosen: the time of one bit against that of two."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Any

import numpy as np
import shapely

from drypoint.bits.model import EndMill, VBit
from drypoint.cuts.model import GroovePlan
from drypoint.errors import DrypointError
from drypoint.program.place import place
from drypoint.progress import Progress
from drypoint.session.derive import Derived
from drypoint.session.plans import plan_cuts
from drypoint.session.settings import Settings
from drypoint.session.snapshot import Snapshot
from drypoint.session.two_bits import area_to_clear, fine_width, flat, one_bit
from drypoint.session.two_sides import as_seen
from drypoint.session.work import preset_of, program_settings, run_seconds
from drypoint.wording import say

CHANGES = 2
"""Changes of the bit that the second one costs: after the reference holes, and back to the V-bit."""


@dataclass(frozen=True, slots=True)
class TwoBitTimes:
    """Time of one pass over everything with one bit and with two, s.

    Attributes
    ----------
    bit : str
        The wide bit.
    one : float
        The V-bit alone, what is to be cleared too.
    two : float
        Both bits, with the changes.
    change : float
        What the changes take of that.
    trouble : str
        Why it cannot be done with that bit; empty if it can.
    """

    bit: str
    one: float
    two: float
    change: float
    trouble: str = ""

    @property
    def saved(self) -> float:
        """s; negative where two bits take longer."""
        return self.one - self.two

    @property
    def pays(self) -> bool:
        """Whether two bits are quicker."""
        return not self.trouble and self.saved > 0.0

    def as_dict(self) -> dict[str, Any]:
        """For scripts."""
        if self.trouble:
            return {"bit": self.bit, "trouble": self.trouble}
        return {
            "bit": self.bit,
            "one_bit_s": round(self.one, 1),
            "two_bits_s": round(self.two, 1),
            "of_that_changes_s": round(self.change, 1),
            "saved_s": round(self.saved, 1),
            "pays": self.pays,
        }


def two_bit_times(
    derived: Derived, snap: Snapshot, progress: Progress | None = None, *, bits: Sequence[VBit | EndMill]
) -> tuple[TwoBitTimes, ...]:
    """One bit against two for each of ``bits``; the job is not changed. Computes."""
    told = progress or Progress()
    board, layout = derived.board(snap), derived.layout(snap)
    settings = as_seen(snap, board.width)
    share = 1.0 / (len(bits) + 1)
    alone = plan_cuts(board, layout, one_bit(settings), told.part(0.0, share))
    one = _seconds(alone.grooves, one_bit(settings), derived, snap) + _clearing(derived, snap, settings)
    found = []
    for number, bit in enumerate(bits, 1):
        wanted = replace(settings, clearing=replace(settings.clearing, bit=bit))
        change = CHANGES * wanted.clearing.change
        try:
            part = told.part(number * share, (number + 1) * share)
            cuts = plan_cuts(board, layout, wanted, part)
        except DrypointError as trouble:
            found.append(TwoBitTimes(bit.name, one, 0.0, change, trouble.text))
            continue
        two = _seconds(cuts.grooves, wanted, derived, snap)
        wide = change if cuts.grooves.wide else 0.0
        found.append(TwoBitTimes(bit.name, one, two + wide, wide))
    return tuple(found)


def _seconds(grooves: GroovePlan, settings: Settings, derived: Derived, snap: Snapshot) -> float:
    """Time of one pass over all lines, s."""
    shared = program_settings(settings, preset_of(settings))
    passes = [one for one in flat(grooves, settings) if one.runs]
    laid = derived.layout(snap).place
    return sum(map(run_seconds, place(passes, laid, None, settings=shared))) if passes else 0.0


def _clearing(derived: Derived, snap: Snapshot, settings: Settings) -> float:
    """About how long the V-bit takes to clear what is to be cleared, s: area over pitch and feed."""
    board, layout, clearing = derived.board(snap), derived.layout(snap), settings.clearing
    area = area_to_clear(board, layout, clearing)
    if shapely.is_empty(area):
        return 0.0
    width = fine_width(settings)
    copper = shapely.union_all(list(board.nets.values()))
    left = float(shapely.area(shapely.difference(area, shapely.buffer(copper, width.top))))
    return 60.0 * left / (width.under * (1.0 - clearing.overlap)) / settings.bits.vbit.speeds.feed


def in_words(times: TwoBitTimes) -> str:
    """One sentence: what both ways take, and whether the second bit pays."""
    if times.trouble:
        return times.trouble
    minutes = {"one": times.one / 60.0, "two": times.two / 60.0, "saved": abs(times.saved) / 60.0}
    if times.pays:
        return say(
            "{saved:.0f} min saved: two bits take {two:.0f} min, changes of the bit included; one takes "
            "{one:.0f} min.",
            **minutes,
        )
    return say(
        "It does not pay: two bits take {two:.0f} min, changes of the bit included; one takes {one:.0f} min.",
        **minutes,
    )


def candidates(settings: Settings, bits: Sequence[VBit | EndMill]) -> tuple[VBit | EndMill, ...]:
    """Of ``bits`` those that cut wider than the V-bit of the grooves; each size once."""
    least = fine_width(settings).top
    kept: dict[float, VBit | EndMill] = {}
    for bit in bits:
        width = bit.diameter if isinstance(bit, EndMill) else bit.width(settings.clearing.depth)
        if width > least * 1.5:
            kept.setdefault(float(np.round(width, 3)), bit)
    return tuple(kept[width] for width in sorted(kept))
