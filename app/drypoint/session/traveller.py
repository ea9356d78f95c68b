"""The traveller's lines: what each step of the job has come to, from what is known at this moment.

Nothing is computed here; what is not known yet is said to be to do.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum

from drypoint.errors import DrypointError
from drypoint.job.store import Record
from drypoint.reference.fit import Fit
from drypoint.session.derive import Peek
from drypoint.session.snapshot import Snapshot


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


def traveller(snap: Snapshot, known: Peek, errors: Errors | None = None) -> tuple[Line, ...]:
    """All lines. ``errors`` are what computing a step ended in."""
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
            lines.append(Line(name, StepState.ERROR, error.what, f"{error.what} {error.hint}".strip()))
    return tuple(lines)


def clock_time(record: Record) -> str:
    """The time of day a record was made."""
    return datetime.fromisoformat(record.at).strftime("%H:%M")


def moved_at(snap: Snapshot) -> str:
    """When and why the board was last clamped anew, as a sentence; empty if never."""
    record = snap.latest("setup")
    if record is None:
        return ""
    note = str(record.data.get("note", "")).strip()
    return f"Clamped anew at {clock_time(record)}{f': {note}' if note else ''}."


def metres(length: float) -> str:
    """A length in mm with thin spaces."""
    return f"{length:,.0f} mm".replace(",", "\u202f")


def _many(count: int, one: str, more: str = "") -> str:
    return f"{count} {one if count == 1 else more or one + 's'}"


def _board(snap: Snapshot, known: Peek) -> Line:
    if not snap.sources:
        return Line(StepName.BOARD, StepState.READY, "choose the design files")
    board = known.board
    if board is None:
        return Line(StepName.BOARD, StepState.TO_DO, f"{_many(len(snap.sources), 'file')}, being read")
    fact = f"{board.width:.4g} × {board.height:.4g} mm, {_many(len(board.nets), 'net')}"
    return Line(StepName.BOARD, StepState.DONE, fact)


def _blank(snap: Snapshot, known: Peek) -> Line:
    layout = known.layout
    if layout is None:
        return Line(StepName.BLANK, StepState.TO_DO)
    clamps = len(layout.clamps)
    fact = f"{layout.width:.4g} × {layout.height:.4g} mm, {_many(clamps, 'clamp') if clamps else 'no clamps'}"
    if layout.warnings:
        return Line(StepName.BLANK, StepState.DOUBT, fact, layout.warnings[0])
    return Line(StepName.BLANK, StepState.DONE, fact)


def _bits(snap: Snapshot, known: Peek) -> Line:
    bits = snap.settings.bits
    fact = f"V-bit {bits.vbit.tip:g} mm, {_many(len(bits.drills), 'drill')}, 1 mill"
    lacking = known.cuts.findings if known.cuts is not None else ()
    if lacking:
        first = lacking[0]
        return Line(StepName.BITS, StepState.DOUBT, fact, f"{first.what} {first.hint}".strip())
    return Line(StepName.BITS, StepState.DONE, fact)


def _cuts(snap: Snapshot, known: Peek) -> Line:
    cuts = known.cuts
    if cuts is None:
        return Line(StepName.CUTS, StepState.TO_DO, "being laid" if known.board is not None else "")
    fact = f"{_many(len(cuts.grooves.lines), 'loop')}, {metres(cuts.length)}"
    check = cuts.check
    if not check.clean:
        parts = (
            (len(check.shorts), "joined"),
            (len(check.opens), "broken"),
            (len(check.lost), "cut away"),
        )
        said = ", ".join(f"{count} {word}" for count, word in parts if count)
        return Line(StepName.CUTS, StepState.DOUBT, fact, f"Island check of the plan: {said}.")
    return Line(StepName.CUTS, StepState.DONE, fact)


def _surface(snap: Snapshot, known: Peek) -> Line:
    record, part = snap.latest("touches"), snap.latest("touches part")
    if record is None:
        state = StepState.TO_DO if known.cuts is None else StepState.READY
        if part is not None and part.data["setup"] == snap.setup:
            so_far = len(part.data["touches"]["touches"])
            return Line(StepName.SURFACE, state, f"{so_far} of {snap.settings.surface.touches} touched")
        return Line(StepName.SURFACE, state, f"{_many(snap.settings.surface.touches, 'place')} to touch")
    count = len(record.data["touches"]["touches"])
    fact = _many(count, "touch", "touches")
    if known.surface is not None:
        fact += f", spread {1e3 * known.surface.summary.spread:.0f} µm"
    if int(record.data["setup"]) != snap.setup:
        return Line(StepName.SURFACE, StepState.STALE, fact, moved_at(snap))
    return Line(StepName.SURFACE, StepState.DONE, fact)


def _passes(snap: Snapshot, known: Peek) -> Line:
    touches = snap.latest("touches")
    run = snap.records["pass"]
    if run and known.grooves_key is not None:
        old = [one for one in run if one.data["grooves"] != known.grooves_key]
        if len(old) == len(run):
            reason = "The grooves changed since passes were run over them."
            return Line(StepName.PASSES, StepState.STALE, _many(len(run), "pass", "passes") + " run", reason)
    if touches is None:
        return Line(StepName.PASSES, StepState.TO_DO, "once the copper is touched")
    if int(touches.data["setup"]) != snap.setup:
        fact = f"{_many(len(run), 'pass', 'passes')} run" if run else ""
        return Line(StepName.PASSES, StepState.STALE, fact, f"The surface is stale. {moved_at(snap)}")
    plan = known.passes
    if plan is None:
        return Line(StepName.PASSES, StepState.TO_DO, "being planned")
    share = f"{100 * plan.reach_totals.expected:.1f} % through"
    if plan.next is None:
        return Line(StepName.PASSES, StepState.DONE, f"{_many(len(plan.done), 'pass', 'passes')}, {share}")
    fact = f"pass {plan.next.number} planned, {plan.next.deepest:.3f} mm"
    return Line(StepName.PASSES, StepState.READY, fact, f"{share} so far" if plan.done else "")


def _reference(snap: Snapshot, known: Peek) -> Line:
    touched = sum(one.data["setup"] == snap.setup for one in snap.records["reference"])
    if isinstance(known.fit, Fit):
        fact = f"{_many(touched, 'hole')}, residual {known.fit.rms:.2f} mm"
        return Line(StepName.REFERENCE, StepState.DONE, fact)
    if snap.setup > 1:
        return Line(StepName.REFERENCE, StepState.STALE, f"{_many(touched, 'hole')} touched", moved_at(snap))
    made = is_made(snap, "reference-mark")
    if made:
        return Line(StepName.REFERENCE, StepState.DONE, "holes made, board as laid")
    if known.cuts is None:
        return Line(StepName.REFERENCE, StepState.TO_DO)
    return Line(StepName.REFERENCE, StepState.READY, f"{_many(len(known.cuts.marks), 'hole')} to make first")


def _run(snap: Snapshot, known: Peek) -> Line:
    ran = len({one.data["program"] for one in snap.records["done"]})
    fact = f"{_many(ran, 'program')} run"
    if is_made(snap, "outline"):
        return Line(StepName.RUN, StepState.DONE, fact)
    if ran:
        return Line(StepName.RUN, StepState.READY, fact)
    return Line(StepName.RUN, StepState.TO_DO if known.cuts is None else StepState.READY, "nothing run yet")


def _proof(snap: Snapshot, known: Peek) -> Line:
    record, last = snap.latest("island touch"), snap.latest("pass")
    if record is None:
        return Line(
            StepName.PROOF, StepState.TO_DO, "after the first pass" if last is None else "not touched"
        )
    counts = [len(record.data[key]) for key in ("proved", "joined", "unproved")]
    fact = f"{counts[0]} of {sum(counts)} pairs proved"
    if last is not None and last.id > record.id:
        reason = f"A pass was run at {clock_time(last)}, after the touches of {clock_time(record)}."
        return Line(StepName.PROOF, StepState.STALE, fact, reason)
    if counts[1]:
        return Line(StepName.PROOF, StepState.ERROR, f"{_many(counts[1], 'pair')} joined", fact)
    if counts[2]:
        return Line(StepName.PROOF, StepState.DOUBT, fact, f"{_many(counts[2], 'pair')} not proved.")
    return Line(StepName.PROOF, StepState.DONE, fact)


def is_made(snap: Snapshot, kind: str) -> bool:
    """Whether a program whose name holds ``kind`` was run to its end."""
    return any(kind in str(record.data["program"]) for record in snap.records["done"])
