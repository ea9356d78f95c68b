"""What was cut since a check failed: listed, found sound by a person, or cut again."""

from __future__ import annotations

from dataclasses import dataclass

from drypoint.job.journal import note, notes_beginning
from drypoint.session.actions.check import SUSPECT
from drypoint.session.session import Session
from drypoint.wording import say

SOUND = "sound"
"""How the note at a run begins whose cut was looked at and found good, or is cut again."""


@dataclass(frozen=True, slots=True)
class Suspect:
    """A run whose cut is in doubt.

    Attributes
    ----------
    run : int
        Number of the run in the job.
    program, title : str
        Of what was run.
    why : str
        What the check said.
    at : str
        When the check was made, ISO 8601.
    pass_number : int
        0 if it was no pass over grooves.
    """

    run: int
    program: str
    title: str
    why: str
    at: str
    pass_number: int


def suspects(session: Session) -> tuple[Suspect, ...]:
    """Runs of the present clamping that are still in doubt, oldest first."""
    setup = session.snapshot.setup
    open_: dict[int, Suspect] = {}
    for one in notes_beginning(session.job, SUSPECT, SOUND):
        if one.setup != setup:
            continue
        if one.text.startswith(SOUND):
            open_.pop(one.run, None)
        else:
            why = one.text.removeprefix(SUSPECT).lstrip(": ")
            open_[one.run] = Suspect(one.run, one.program, one.title, why, one.at, one.pass_number)
    return tuple(open_[run] for run in sorted(open_))


def call_sound(session: Session, suspect: Suspect) -> None:
    """A person looked at what was cut and found it good."""
    note(session.job, suspect.run, say("{sound}: looked at", sound=SOUND))
    session.touched("run")


def have_cut_again(session: Session, suspect: Suspect) -> None:
    """Take the run as not made: its pass no longer counts, and its program comes again."""
    snap = session.snapshot
    done = [one.id for one in snap.records["done"] if one.data["program"] == suspect.program]
    passes = [one.id for one in snap.records["pass"] if one.data["pass"]["number"] == suspect.pass_number]
    session.job.set_aside("done", tuple(done))
    session.job.set_aside("pass", tuple(passes))
    note(session.job, suspect.run, say("{sound}: to be cut again", sound=SOUND))
    session.touched("pass")
