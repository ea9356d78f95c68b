"""The traveller's lines: what each step of the job has come to, from what is known at this moment.

Nothing is computed here; what is not known yet is said to be to do.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum

from drypoint.errors import DrypointError
from drypoint.job.store import Record
from drypoint.reference.fit import Fit
from drypoint.session.peek import Peek
from drypoint.session.snapshot import Snapshot
from drypoint.wording import many, say, strung


class StepState(StrEnum):
    """What a step has come to."""

    TO_DO = "to do"
    READY = "ready"
    DONE = "done"
    STALE = "stale"
    DOUBT = "doubt"
    ERROR = "error"


class StepName(StrEnum):
    """The steps in order."""

    BOARD = "Board"
    BLANK = "Blank"
    BITS = "Bits"
    CUTS = "Cuts"
    SURFACE = "Surface"
    PASSES = "Passes"
    REFERENCE = "Reference"
    RUN = "Run"
    PROOF = "Proof"


@dataclass(frozen=True, slots=True)
class Line:
    """One line of the traveller; ``reason`` says why it is stale, in doubt or wrong."""

    name: StepName
    state: StepState
    fact: str = ""
    reason: str = ""


Errors = Mapping[StepName, DrypointError]


def traveller(
    snap: Snapshot, known: Peek, errors: Errors | None = None, doubts: Sequence[str] = ()
) -> tuple[Line, ...]:
    """All lines. ``errors`` are what computing a step ended in, ``doubts`` titles of runs in doubt."""
    found = errors or {}
    steps: dict[StepName, Callable[[Snapshot, Peek], Line]] = {
        StepName.BOARD: _board,
        StepName.BLANK: _blank,
        StepName.BITS: _bits,
        StepName.CUTS: _cuts,
        StepName.SURFACE: _surface,
        StepName.PASSES: _passes,
        StepName.REFERENCE: _reference,
        StepName.RUN: _run,
        StepName.PROOF: _proof,
    }
    lines = []
    for name, tell in steps.items():
        error = found.get(name)
        if error is None:
            lines.append(tell(snap, known))
        else:
            lines.append(Line(name, StepState.ERROR, error.what, strung((error.what, error.hint))))
    return tuple(_in_doubt(line, doubts) if line.name is StepName.RUN and doubts else line for line in lines)


def _in_doubt(line: Line, doubts: Sequence[str]) -> Line:
    """The line of the runs, some of which a check has put in doubt."""
    fact = say("{title} in doubt", title=doubts[0])
    if len(doubts) > 1:
        fact = say("{count} runs in doubt", count=len(doubts))
    return Line(line.name, StepState.DOUBT, fact, "What was cut since the last good check must be looked at.")


def clock_time(record: Record) -> str:
    """The time of day a record was made."""
    return datetime.fromisoformat(record.at).strftime("%H:%M")


def moved_at(snap: Snapshot) -> str:
    """When and why the board was last clamped anew, as a sentence; empty if never."""
    record = snap.latest("setup")
    if record is None:
        return ""
    note = str(record.data.get("note", "")).strip()
    if not note:
        return say("Clamped anew at {time}.", time=clock_time(record))
    return say("Clamped anew at {time}: {note}.", time=clock_time(record), note=note)


def metres(length: float) -> str:
    """A length in mm with thin spaces."""
    return say("{length:,.0f} mm", length=length)


def _passes_run(count: int) -> str:
    return many(count, "{count} pass run", "{count} passes run")


def _board(snap: Snapshot, known: Peek) -> Line:
    if not snap.sources:
        return Line(StepName.BOARD, StepState.READY, say("choose the design files"))
    board = known.board
    if board is None:
        return Line(
            StepName.BOARD,
            StepState.TO_DO,
            many(len(snap.sources), "{count} file, being read", "{count} files, being read"),
        )
    nets = many(len(board.nets), "{count} net", "{count} nets")
    fact = say("{width:.4g} × {height:.4g} mm, {nets}", width=board.width, height=board.height, nets=nets)
    return Line(StepName.BOARD, StepState.DONE, fact)


def _blank(snap: Snapshot, known: Peek) -> Line:
    layout = known.layout
    if layout is None:
        return Line(StepName.BLANK, StepState.TO_DO)
    count = len(layout.clamps)
    clamps = many(count, "{count} clamp", "{count} clamps") if count else say("no clamps")
    fact = say(
        "{width:.4g} × {height:.4g} mm, {clamps}", width=layout.width, height=layout.height, clamps=clamps
    )
    if layout.warnings:
        return Line(StepName.BLANK, StepState.DOUBT, fact, layout.warnings[0])
    return Line(StepName.BLANK, StepState.DONE, fact)


def _bits(snap: Snapshot, known: Peek) -> Line:
    bits = snap.settings.bits
    drills = many(len(bits.drills), "{count} drill", "{count} drills")
    fact = say("1 V-bit, {drills}, 1 mill", drills=drills)
    wide = snap.settings.clearing.bit
    if wide is not None:
        fact = strung((fact, wide.name), ", ")
    lacking = known.cuts.findings if known.cuts is not None else ()
    if lacking:
        first = lacking[0]
        return Line(StepName.BITS, StepState.DOUBT, fact, strung((first.what, first.hint)))
    return Line(StepName.BITS, StepState.DONE, fact)


def _cuts(snap: Snapshot, known: Peek) -> Line:
    cuts = known.cuts
    if cuts is None:
        return Line(StepName.CUTS, StepState.TO_DO, say("being laid") if known.board is not None else "")
    loops = many(len(cuts.grooves.lines), "{count} loop", "{count} loops")
    fact = strung((loops, metres(cuts.length)), ", ")
    check = cuts.check
    if not check.clean:
        parts = (
            say("{count} joined", count=len(check.shorts)) if check.shorts else "",
            say("{count} broken", count=len(check.opens)) if check.opens else "",
            say("{count} cut away", count=len(check.lost)) if check.lost else "",
        )
        reason = say("Island check of the plan: {flaws}.", flaws=strung(parts, ", "))
        return Line(StepName.CUTS, StepState.DOUBT, fact, reason)
    return Line(StepName.CUTS, StepState.DONE, fact)


def _surface(snap: Snapshot, known: Peek) -> Line:
    record, part = snap.latest("touches"), snap.latest("touches part")
    if record is None:
        state = StepState.TO_DO if known.cuts is None else StepState.READY
        if part is not None and part.data["setup"] == snap.setup:
            so_far = len(part.data["touches"]["touches"])
            said = say("{count} of {all} touched", count=so_far, all=snap.settings.surface.touches)
            return Line(StepName.SURFACE, state, said)
        said = many(snap.settings.surface.touches, "{count} place to touch", "{count} places to touch")
        return Line(StepName.SURFACE, state, said)
    count = len(record.data["touches"]["touches"])
    fact = many(count, "{count} touch", "{count} touches")
    if known.surface is not None:
        spread = say("spread {spread:.0f} µm", spread=1e3 * known.surface.summary.spread)
        fact = strung((fact, spread), ", ")
    if int(record.data["setup"]) != snap.setup:
        return Line(StepName.SURFACE, StepState.STALE, fact, moved_at(snap))
    return Line(StepName.SURFACE, StepState.DONE, fact)


def _passes(snap: Snapshot, known: Peek) -> Line:
    touches = snap.latest("touches")
    run = snap.records["pass"]
    if run and known.grooves_key is not None:
        old = [one for one in run if one.data["grooves"] != known.grooves_key]
        if len(old) == len(run):
            reason = say("The grooves changed since passes were run over them.")
            return Line(StepName.PASSES, StepState.STALE, _passes_run(len(run)), reason)
    if touches is None:
        return Line(StepName.PASSES, StepState.TO_DO, say("waits for the surface"))
    if int(touches.data["setup"]) != snap.setup:
        fact = _passes_run(len(run)) if run else ""
        reason = strung((say("The surface is stale."), moved_at(snap)))
        return Line(StepName.PASSES, StepState.STALE, fact, reason)
    plan = known.passes
    if plan is None:
        return Line(StepName.PASSES, StepState.TO_DO, say("being planned"))
    share = 100 * plan.reach_totals.expected
    if plan.next is None:
        passes = many(len(plan.done), "{count} pass", "{count} passes")
        fact = strung((passes, say("{share:.1f} % through", share=share)), ", ")
        return Line(StepName.PASSES, StepState.DONE, fact)
    number, depth = plan.next.number, plan.next.deepest
    fact = say("pass {number} planned, {depth:.3f} mm", number=number, depth=depth)
    reason = say("{share:.1f} % through so far", share=share) if plan.done else ""
    return Line(StepName.PASSES, StepState.READY, fact, reason)


def _reference(snap: Snapshot, known: Peek) -> Line:
    touched = sum(one.data["setup"] == snap.setup for one in snap.records["reference"])
    if isinstance(known.fit, Fit):
        holes = many(touched, "{count} hole", "{count} holes")
        fact = strung((holes, say("residual {residual:.2f} mm", residual=known.fit.rms)), ", ")
        return Line(StepName.REFERENCE, StepState.DONE, fact)
    if snap.setup > 1:
        fact = many(touched, "{count} hole touched", "{count} holes touched")
        return Line(StepName.REFERENCE, StepState.STALE, fact, moved_at(snap))
    made = is_made(snap, "reference-mark")
    if made:
        return Line(StepName.REFERENCE, StepState.DONE, say("holes made, board as laid"))
    if known.cuts is None:
        return Line(StepName.REFERENCE, StepState.TO_DO)
    fact = many(len(known.cuts.marks), "{count} hole to make first", "{count} holes to make first")
    return Line(StepName.REFERENCE, StepState.READY, fact)


def _run(snap: Snapshot, known: Peek) -> Line:
    ran = len({one.data["program"] for one in snap.records["done"]})
    fact = many(ran, "{count} program run", "{count} programs run")
    if is_made(snap, "outline"):
        return Line(StepName.RUN, StepState.DONE, fact)
    if ran:
        return Line(StepName.RUN, StepState.READY, fact)
    return Line(
        StepName.RUN, StepState.TO_DO if known.cuts is None else StepState.READY, say("nothing run yet")
    )


def _proof(snap: Snapshot, known: Peek) -> Line:
    record, last = snap.latest("island touch"), snap.latest("pass")
    if record is None:
        return Line(
            StepName.PROOF,
            StepState.TO_DO,
            say("after the first pass") if last is None else say("not touched"),
        )
    counts = [len(record.data[key]) for key in ("proved", "joined", "unproved")]
    fact = say("{count} of {all} pairs proved", count=counts[0], all=sum(counts))
    if last is not None and last.id > record.id:
        reason = say(
            "A pass was run at {run}, after the touches of {touched}.",
            run=clock_time(last),
            touched=clock_time(record),
        )
        return Line(StepName.PROOF, StepState.STALE, fact, reason)
    if counts[1]:
        return Line(
            StepName.PROOF,
            StepState.ERROR,
            many(counts[1], "{count} pair joined", "{count} pairs joined"),
            fact,
        )
    if counts[2]:
        reason = many(counts[2], "{count} pair not proved.", "{count} pairs not proved.")
        return Line(StepName.PROOF, StepState.DOUBT, fact, reason)
    return Line(StepName.PROOF, StepState.DONE, fact)


def is_made(snap: Snapshot, kind: str) -> bool:
    """Whether a program whose name holds ``kind`` was run to its end."""
    return any(kind in str(record.data["program"]) for record in snap.records["done"])
