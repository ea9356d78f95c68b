"""Whether the machine can run the bits as they are set: turns, feeds and how thick the chips are."""

from __future__ import annotations

from collections.abc import Sequence

from drypoint.bits.feeds import TEETH, MachineLimits, check_speeds
from drypoint.bits.model import Bit, Drill, EndMill, VBit
from drypoint.board.model import Finding
from drypoint.errors import PlanError
from drypoint.machine.preset import MachinePreset
from drypoint.session.plans import CutPlan
from drypoint.session.settings import Settings
from drypoint.session.work import preset_of
from drypoint.wording import say

THICKEST = {VBit: 0.05, EndMill: 0.05, Drill: 0.06}
"""mm per cutting edge and turn, as thick as chips of such fine bits may be (common practice, no source)."""


def speed_findings(settings: Settings, cuts: CutPlan | None = None) -> tuple[Finding, ...]:
    """What is wrong with how the bits are run; of those that ``cuts`` uses, or of all.

    A spindle that is too slow is told once for all bits that ask the same of it, with the feed that
    keeps the chips as thick.
    """
    try:
        preset = preset_of(settings)
    except PlanError:
        return ()
    bits = _used(settings, cuts)
    return (*_turns(bits, preset), *_feeds(bits, preset), *_chips(bits, preset))


def _used(settings: Settings, cuts: CutPlan | None) -> tuple[Bit, ...]:
    bits = settings.bits
    every: tuple[Bit, ...] = (bits.vbit, *bits.drills, bits.mill)
    if cuts is None:
        return every
    wanted = {cut.bit.name for cut in (*cuts.holes, *cuts.tooling, *cuts.outline)} | {bits.vbit.name}
    return tuple(bit for bit in every if bit.name in wanted)


def _turns(bits: Sequence[Bit], preset: MachinePreset) -> list[Finding]:
    low, high = preset.spindle_range
    groups: dict[float, list[Bit]] = {}
    for bit in bits:
        if not low <= bit.speeds.spindle <= high:
            groups.setdefault(bit.speeds.spindle, []).append(bit)
    found = []
    for asked, group in groups.items():
        reached = min(max(asked, low), high)
        feed = group[0].speeds.feed * reached / asked if asked > 0.0 else group[0].speeds.feed
        what = say(
            "{names}: {asked:.0f} turns a minute are asked for; the spindle does {low:.0f} to {high:.0f}.",
            names=_names(group),
            asked=asked,
            low=low,
            high=high,
        )
        hint = say(
            "At {reached:.0f} turns {name} cuts chips as thick as meant with a feed of {feed:.0f} mm/min; "
            "lower the others alike.",
            reached=reached,
            name=group[0].name,
            feed=feed,
        )
        found.append(Finding("spindle", what, group[0].name, hint))
    return found


def _feeds(bits: Sequence[Bit], preset: MachinePreset) -> list[Finding]:
    """Feeds that the axes cannot reach."""
    limits = MachineLimits(0.0, float("inf"), max(preset.max_rate[:2]), preset.max_rate[2])
    return [
        Finding("feed", what, bit.name, "The machine runs slower, and takes longer than is told.")
        for bit in bits
        for what in check_speeds(bit, limits)
    ]


def _chips(bits: Sequence[Bit], preset: MachinePreset) -> list[Finding]:
    """Chips thicker than such a bit should cut, at the turns the spindle reaches."""
    found = []
    for bit in bits:
        turns = min(bit.speeds.spindle, preset.spindle_range[1])
        if turns <= 0.0:
            continue
        along = bit.speeds.plunge if isinstance(bit, Drill) else bit.speeds.feed
        chip = along / (turns * TEETH[type(bit)])
        most = THICKEST[type(bit)]
        if chip > most:
            what = say(
                "{name} cuts chips of {chip:.3f} mm at {turns:.0f} turns a minute; more than {most:.2f} mm "
                "breaks fine bits.",
                name=bit.name,
                chip=chip,
                turns=turns,
                most=most,
            )
            hint = say(
                "Feed it with {feed:.0f} mm/min or less (common practice).",
                feed=most * turns * TEETH[type(bit)],
            )
            found.append(Finding("chips", what, bit.name, hint))
    return found


def _names(bits: Sequence[Bit]) -> str:
    if len(bits) <= 2:
        return say(" and ").join(bit.name for bit in bits)
    return say("{name} and {count} more", name=bits[0].name, count=len(bits) - 1)
