"""The test pattern's program as a file, and what its readings teach about the V-bit."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import replace
from pathlib import Path

from drypoint.bits.model import VBit
from drypoint.bits.width_coupon import Evaluation, Parted, Ridge, Width, evaluate
from drypoint.errors import StoreError
from drypoint.program.export import file_name, file_text
from drypoint.session.actions.pattern_run import BIT, SPREAD, pattern_program
from drypoint.session.codec import from_json
from drypoint.session.corner import Corner
from drypoint.session.ground import KIND
from drypoint.session.pattern import WHAT, lay_pattern, legend
from drypoint.session.session import Session
from drypoint.session.whole_file import write_whole
from drypoint.session.work import require_reach, run_seconds
from drypoint.wording import say


def export_coupon(session: Session, folder: Path, corner: Corner | None = None) -> tuple[Path, ...]:
    """Write the pattern's program and a page that says which line is which.

    Where the copper was not touched it counts as flat at z = 0: for a machine that runs from a card.

    Raises
    ------
    PlanError
        If the waste has no room, or the program would leave the machine.
    StoreError
        If the folder cannot be written.
    """
    snap = session.snapshot
    pattern, surface = lay_pattern(session.derived, snap, corner), session.derived.surface(snap)
    program = pattern_program(session.derived, snap, pattern, surface)
    require_reach(session.settings, program)
    name = session.settings.board.name
    made = (folder / f"coupon-{file_name(program)}", folder / "coupon.txt")
    try:
        folder.mkdir(parents=True, exist_ok=True)
        write_whole(made[0], file_text(program, job=name, seconds=run_seconds(program)), "ascii")
        text = "\n".join(legend(pattern, touched=surface is not None)) + "\n"
        write_whole(made[1], text)
    except OSError as error:
        raise StoreError(
            say("The files could not be written ({strerror}).", strerror=error.strerror),
            str(folder),
            "Choose another folder.",
        ) from error
    return made


ROUGH = 0.006
"""Spread of the copper's height where nothing is known of it, mm (common practice, no source)."""


def before_reading(session: Session) -> tuple[VBit, float]:
    """The V-bit as it was believed to be when its newest pattern was cut, and how rough the copper was, mm.

    Readings made in two goes are then not counted twice. Without a pattern, the bit as it is.
    """
    bit = session.settings.bits.vbit
    for record in reversed(session.snapshot.records[KIND]):
        if record.data["what"] == WHAT and record.data[BIT]["name"] == bit.name:
            return from_json(VBit, record.data[BIT], WHAT), float(record.data[SPREAD])
    return bit, ROUGH


def read_coupon(
    session: Session,
    widths: Sequence[Width] = (),
    parted: Sequence[Parted] = (),
    ridges: Sequence[Ridge] = (),
) -> Evaluation:
    """What was read from a pattern says this of the V-bit; nothing is changed yet."""
    settings = session.settings
    bit, rough = before_reading(session)
    return evaluate(
        bit,
        widths,
        parted,
        ridges,
        copper=settings.blank.copper,
        play=settings.passes.play,
        rough=rough,
    )


def adopt(session: Session, found: Evaluation) -> None:
    """Use the answer from now on: tip and run-out for widths and bite, the offset for depth and reach.

    The offset counts as long as the bit has the shape it was read with, so that undoing the change of
    the bit takes it back too. The shape is rounded to 1 µm and 0.01°, as it can be typed.
    """
    bits, bit = session.settings.bits, found.bit
    angle = math.radians(round(math.degrees(bit.angle), 2))
    bit = replace(bit, tip=round(bit.tip, 3), runout=round(bit.runout, 3), angle=angle)
    shape = {"tip": bit.tip, "runout": bit.runout, "angle": bit.angle}
    session.keep("coupon", {"bit": bit.name, "offset": found.offset, "sigma": found.sigma(2), **shape})
    session.change("V-bit as its coupon says", bits=replace(bits, vbit=bit))
