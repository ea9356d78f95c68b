"""The legend as a file for a machine that runs from a card, with its cautions in it."""

from __future__ import annotations

from drypoint.errors import PlanError
from drypoint.geometry.rigid import Rigid
from drypoint.program.laser import LaserProgram
from drypoint.program.laser_check import check_beam
from drypoint.progress import Progress
from drypoint.session.derive import Derived
from drypoint.session.laser_safety import cautions, require_material
from drypoint.session.legend import (
    expected_fit,
    legend_program,
    legend_up,
    legend_wanted,
    spot_error,
)
from drypoint.session.marks import legend_face, side_words
from drypoint.session.settings import LaserSection
from drypoint.session.snapshot import Snapshot
from drypoint.wording import say, strung

END = "M2"
"""End of program (RS-274/NGC, NISTIR 6556)."""
WIDTH = 76
"""Letters in a line of a remark."""


def legend_notes(derived: Derived, snap: Snapshot) -> tuple[str, ...]:
    """What to know about the legend's program, or why there is none; nothing where none is wanted."""
    if not legend_wanted(derived, snap):
        return ()
    if refused := unmarked(derived, snap):
        return refused
    if not legend_up(derived, snap):
        return (
            say(
                "The legend is placed for the {side} up, the board turned over left over right into the same "
                "corner; hands turn it to about a millimetre. Find it by its holes before marking, and "
                "export again, for a better place.",
                side=side_words(legend_face(derived.board(snap))),
            ),
        )
    error = spot_error(derived, snap)
    if error is None:
        return ()
    return (say("Marks of the legend lie within about {far:.2f} mm of their place (95 %).", far=2 * error),)


def unmarked(derived: Derived, snap: Snapshot) -> tuple[str, ...]:
    """Why a legend that is wanted cannot be marked; nothing where it can, or where none is wanted."""
    if not legend_wanted(derived, snap):
        return ()
    try:
        require_material(snap.settings.laser)
    except PlanError as refused:
        return (strung((say("No program for the legend:"), refused.what, refused.hint)),)
    return ()


def exported_legend(
    derived: Derived, snap: Snapshot, progress: Progress | None = None
) -> LaserProgram | None:
    """The legend's program where the job has one and its material is acknowledged.

    While the other side looks up, it is placed where the board is expected after it was turned over,
    left over right.
    """
    if not legend_wanted(derived, snap) or unmarked(derived, snap):
        return None
    fit: Rigid | None = None if legend_up(derived, snap) else expected_fit(derived, snap)
    return legend_program(derived, snap, fit=fit, progress=progress)


def legend_text(program: LaserProgram, chosen: LaserSection, *, job: str = "") -> str:
    """The whole file. The very lines that would be streamed, which are checked once more.

    Raises
    ------
    PlanError
        If a line breaks a rule of the beam.
    """
    check_beam(program.lines, scale=program.scale)
    said = [
        f"Drypoint: {program.title}",
        *([f"Job: {job}"] if job else []),
        f"Laser head. Laser mode, setting 32, must be on; full power, setting 30, is S{program.scale:g}.",
        *cautions(chosen),
    ]
    remarks = [f"({line})" for text in said for line in _wrapped(text)]
    return "\n".join((*remarks, *program.lines, END)) + "\n"


def _wrapped(text: str) -> list[str]:
    """A sentence as lines of ASCII, without brackets, that fit a remark."""
    plain = text.replace("(", "[").replace(")", "]").encode("ascii", "replace").decode()
    lines = [""]
    for word in plain.split():
        if len(lines[-1]) + len(word) + 1 > WIDTH:
            lines.append("")
        lines[-1] = f"{lines[-1]} {word}".strip()
    return lines
