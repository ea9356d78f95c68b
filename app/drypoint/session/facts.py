"""What is known of a job, as plain values for scripts."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from typing import Any

from drypoint.bits.drill_sizes import size_words
from drypoint.board.model import Board, Finding, Role
from drypoint.cuts.model import Flaw, Narrow
from drypoint.geometry.points import length
from drypoint.job.journal import events, runs
from drypoint.program.place import place
from drypoint.progress import Progress
from drypoint.session.actions.check import SUSPECT
from drypoint.session.boards import Placed
from drypoint.session.check_facts import check_dict, designed_islands
from drypoint.session.imported import ready_facts
from drypoint.session.plans import CutPlan
from drypoint.session.session import Session
from drypoint.session.speeds import speed_findings
from drypoint.session.two_bit_times import two_bit_times
from drypoint.session.two_bits import flat
from drypoint.session.work import later_work, marks_work, preset_of, program_settings, run_seconds
from drypoint.wording import say, strung


def board_facts(board: Board, placed: Sequence[Placed]) -> dict[str, Any]:
    """Size, nets, holes, which file is what, and which boards lie where."""
    layers: dict[str, str] = {}
    for file in board.files:
        if file.role is not Role.OTHER:
            layers.setdefault(file.role.value, file.name)
    return {
        "name": board.name,
        "width_mm": round(board.width, 3),
        "height_mm": round(board.height, 3),
        "side": board.side.value,
        "boards": len(board.outlines),
        "nets": len(board.nets),
        "net_source": board.net_source,
        "holes": len(board.holes),
        "slots": len(board.slots),
        "links": len(board.links),
        "holes_by_size": hole_sizes(board),
        "layers": layers,
        "placed": [_placed(one) for one in placed],
    }


def hole_sizes(board: Board) -> list[dict[str, Any]]:
    """How many holes there are of each size, and what that size is called."""
    counts = Counter(round(hole.diameter, 4) for hole in board.holes)
    return [
        {"diameter_mm": size, "count": count, "called": size_words(size)}
        for size, count in sorted(counts.items())
    ]


def _placed(one: Placed) -> dict[str, Any]:
    place = one.setting
    return {
        "name": one.place.board.name,
        "x_mm": round(place.x, 3),
        "y_mm": round(place.y, 3),
        "turn_deg": round(place.angle_deg, 3),
        "width_mm": round(one.width, 3),
        "height_mm": round(one.height, 3),
        "nets": len(one.place.board.nets),
        "holes": len(one.place.board.holes),
    }


def _narrow(one: Narrow) -> dict[str, Any]:
    return {
        "nets": list(one.nets),
        "at": [round(one.at[0], 3), round(one.at[1], 3)],
        "gap_mm": round(one.gap, 4),
        "bite_mm": round(one.bite, 4),
        "length_mm": round(one.length, 3),
        "hint": one.hint,
    }


def _flaw(one: Flaw) -> dict[str, Any]:
    at = [round(one.at[0], 3), round(one.at[1], 3)]
    return {"nets": list(one.nets), "at": at, "what": str(one.what)}


def cut_facts(cuts: CutPlan) -> dict[str, Any]:
    """Grooves: how long, how many, where they do not fit."""
    return {
        "groove_length_mm": round(cuts.length, 1),
        "groove_width_mm": round(cuts.width, 4),
        "loops": len(cuts.grooves.lines),
        "narrow_length_mm": round(cuts.grooves.narrow_length, 2),
        "max_bite_mm": round(cuts.grooves.max_bite, 4),
        "impossible": [_narrow(one) for one in cuts.grooves.impossible],
        "thinned": [_flaw(one) for one in cuts.check.thinned],
        "too_close": [_flaw(one) for one in cuts.close],
    }


def second_side_facts(session: Session) -> dict[str, Any] | None:
    """How the board is found once it was turned over, and how well; None where one side is milled."""
    snap, derived = session.snapshot, session.derived
    if not snap.settings.board.both:
        return None
    holes = [
        {"name": cut.label, "at": [round(float(v), 3) for v in cut.path[0]], "drill": cut.bit.name}
        for cut in derived.tooling(snap).cuts
    ]
    return {"tooling_holes": holes, **derived.foreseen(snap).as_dict()}


def two_bits_facts(session: Session, progress: Progress | None = None) -> dict[str, Any]:
    """What both bits cut, and what the second saves; nothing where one does all."""
    snap = session.snapshot
    bit, grooves = snap.settings.clearing.bit, session.derived.cuts(snap).grooves
    if bit is None:
        return {}
    (times,) = two_bit_times(session.derived, snap, progress, bits=[bit])
    wide = sum(length(line) for line in grooves.lines[: grooves.wide])
    fine = sum(length(line) for line in grooves.lines[grooves.wide :])
    return {**times.as_dict(), "wide_length_mm": round(wide, 1), "fine_length_mm": round(fine, 1)}


def prepared_facts(session: Session, progress: Progress | None = None) -> dict[str, Any]:
    """Everything that `prepare` tells."""
    snap = session.snapshot
    board = session.derived.board(snap, progress)
    cuts = session.derived.cuts(snap, progress)
    layout = session.derived.layout(snap)
    warnings = [*layout.warnings]
    speeds = speed_findings(snap.settings, cuts)
    warnings += [sentence(one) for one in (*board.findings, *cuts.findings, *speeds)]
    two = two_bits_facts(session, progress)
    return {
        "job": str(session.job.path),
        "board": board_facts(board, session.derived.placed(snap)),
        "cuts": cut_facts(cuts) | ({"two_bits": two} if two else {}),
        "island_check": check_dict(cuts.check, designed_islands(board)),
        "holes_by_drill": cuts.drills(),
        "second_side": second_side_facts(session),
        "estimate_s": round(estimate(session), 1),
        "warnings": warnings,
    }


def estimate(session: Session) -> float:
    """Expected time of the whole job with one pass over the grooves at the nominal depth, s."""
    snap = session.snapshot
    settings = snap.settings
    cuts = session.derived.cuts(snap)
    shared = program_settings(settings, preset_of(settings))
    grooves = place(flat(cuts.grooves, settings), session.derived.layout(snap).place, None, settings=shared)
    others = (*marks_work(session.derived, snap), *later_work(session.derived, snap))
    return sum(map(run_seconds, (*grooves, *(item.program for item in others))))


def shown_facts(session: Session, progress: Progress | None = None) -> dict[str, Any]:
    """Everything that `show` tells: the plan, the reasons, the measurements, the runs."""
    snap = session.snapshot
    facts = prepared_facts(session, progress)
    board = session.derived.board(snap)
    facts["files"] = [
        {"name": file.name, "role": file.role.value, "why": file.reason} for file in board.files
    ]
    facts["bits"] = {
        "vbit": snap.settings.bits.vbit.name,
        "mill": snap.settings.bits.mill.name,
        "drills": [drill.name for drill in snap.settings.bits.drills],
    }
    facts["links"] = [
        {"net": link.net, "length_mm": round(link.length, 2), "insulated": link.insulated}
        for link in board.links
    ]
    facts["ready_made"] = ready_facts(session.derived.ready(snap))
    facts["rivets"] = [
        {"net": hole.net, "at": [round(hole.x, 3), round(hole.y, 3)], "diameter_mm": hole.diameter}
        for hole in board.rivets
    ]
    facts["measured"] = {kind: len(records) for kind, records in snap.records.items() if records}
    facts["runs"] = [
        {
            "program": run.program,
            "title": run.title,
            "started": run.started,
            "ended": run.ended,
            "reason": run.reason,
            "lines": len(run.lines),
            "executed": run.executed,
            "suspect": any(text.startswith(SUSPECT) for _, text in events(session.job, run.id)),
        }
        for run in runs(session.job)
    ]
    return facts


def sentence(finding: Finding) -> str:
    """A finding as one line."""
    what = say("{where}: {what}", where=finding.where, what=finding.what) if finding.where else finding.what
    return strung((what, finding.hint))
