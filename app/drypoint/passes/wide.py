"""Passes of two bits: the wide one over its loops at one depth, the fine one over the rest.

A wide loop is a closed curve: where it may not be through, the fine bit cuts along the same line and it
isolates all the same. Lines that only take copper away are not cut again: nothing is joined by them.
"""

from __future__ import annotations

from dataclasses import replace

import numpy as np

from drypoint.bits.model import VBit
from drypoint.cuts.model import CutKind, GroovePlan
from drypoint.passes.depth import uniform_pass
from drypoint.passes.model import Pass, ReachMap


def wide_pass(grooves: GroovePlan, bit: VBit, depth: float, *, number: int = 1) -> Pass:
    """All lines of the wide bit at one depth, mm below the copper's top."""
    flat = uniform_pass(grooves.lines[: grooves.wide], bit, depth, number=number)
    return replace(flat, kind=CutKind.CLEAR)


def on_fine_lines(work: Pass, grooves: GroovePlan) -> Pass:
    """A pass that was planned over the fine lines alone, as one over all lines."""
    return replace(work, runs=tuple(replace(run, groove=run.groove + grooves.wide) for run in work.runs))


def flat_passes(
    grooves: GroovePlan, fine: VBit, depth: float, wide: VBit | None, wide_depth: float
) -> tuple[Pass, ...]:
    """Every line once at the depth it is planned for, the wide bit first."""
    passes: list[Pass] = []
    if grooves.wide and wide is not None:
        passes.append(wide_pass(grooves, wide, wide_depth))
    lines = grooves.lines[grooves.wide :]
    if lines or not passes:
        flat = uniform_pass(lines, fine, depth, number=len(passes) + 1)
        passes.append(on_fine_lines(flat, grooves))
    return tuple(passes)


def to_isolate(reach: ReachMap, grooves: GroovePlan, *, loops_only: bool = False) -> ReachMap:
    """The reach, with spots taken for through on lines where it does not matter whether they are.

    ``loops_only``: on all but the wide loops; else only on lines that take copper away.
    """
    ignored = set(grooves.fill)
    if loops_only:
        ignored |= set(range(grooves.wide, len(grooves.lines)))
    if not ignored:
        return reach
    chances = tuple(
        np.ones_like(chance) if index in ignored else chance for index, chance in enumerate(reach.probability)
    )
    return replace(reach, probability=chances)
