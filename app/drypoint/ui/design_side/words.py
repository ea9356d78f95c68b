"""What the pages of the design say, put into words from what was computed."""

from __future__ import annotations

import math
from collections.abc import Sequence

from PySide6.QtCore import QCoreApplication

from drypoint.board.model import Board, Finding, Side
from drypoint.cuts.model import Cut, Flaw, IslandCheck
from drypoint.errors import DrypointError, InputError
from drypoint.passes.model import THROUGH, Pass
from drypoint.passes.options import Choice
from drypoint.passes.reach import in_words
from drypoint.session.plans import CutPlan
from drypoint.session.settings import PassSettings, Settings
from drypoint.session.sheet import clock
from drypoint.session.snapshot import Snapshot
from drypoint.session.traveller import moved_at
from drypoint.session.wave_words import wave_words
from drypoint.ui.design_side.heights import TouchPicture
from drypoint.ui.design_side.pictures import CutPicture, PassPicture
from drypoint.ui.language.words import fill, local, told
from drypoint.ui.pages.design import BoardPageValues, CutsPageValues
from drypoint.ui.pages.measure import SurfacePageValues
from drypoint.ui.pages.passes import ChoiceLine, PassesPageValues, PassLine
from drypoint.ui.parts.glyph import Mark
from drypoint.ui.wizard.wizard import BoardFacts

MICRO = 1e3
"""µm in a mm."""


def _say(text: str) -> str:
    return QCoreApplication.translate("words", text)


def place_and_hint(error: DrypointError) -> str:
    """Where an error is and what to do, below what is wrong."""
    said = ". ".join(told(part).rstrip(".") for part in (error.where, error.hint) if part)
    return f"{said}." if said and said[-1] not in "?!" else said


def trouble_of(error: DrypointError | None) -> tuple[str, str, tuple[float, float] | None]:
    """What a page says of an error: what, what to do, and its place, which is a link; "" for none."""
    if error is None:
        return "", "", None
    read = error.at is None or isinstance(error, InputError)  # a file and its line are said beside the place
    return error.what, place_and_hint(error) if read else told(error.hint), error.at


def side_of(side: Side) -> str:
    """The side that is milled."""
    return _say("bottom") if side is Side.BOTTOM else _say("top")


def size_of(board: Board) -> str:
    """Width × height."""
    return local(f"{board.width:.4g} × {board.height:.4g} mm")


def holes_of(board: Board) -> str:
    """Round holes by number of sizes."""
    sizes = len({round(hole.diameter, 3) for hole in board.holes})
    if not board.holes:
        return _say("none")
    return _say("{count}, {sizes} sizes").format(count=len(board.holes), sizes=sizes)


def slots_of(board: Board) -> str:
    """Slots in words."""
    return str(len(board.slots)) if board.slots else _say("none")


def source_of(board: Board) -> str:
    """Where the nets are known from."""
    return {
        "attributes": _say("its attributes"),
        "netlist": _say("the netlist"),
        "touching": _say("what touches"),
        "programs": _say("no copper data"),
    }.get(board.net_source, board.net_source)


def board_page(board: Board) -> BoardPageValues:
    """The board page."""
    return BoardPageValues(
        nets=len(board.nets),
        size=size_of(board),
        source=source_of(board),
        holes=holes_of(board),
        slots=slots_of(board),
        files=board.files,
        findings=board.findings,
    )


def board_facts(board: Board) -> BoardFacts:
    """The same for the wizard."""
    return BoardFacts(
        size=size_of(board),
        nets=_say("{count} nets").format(count=len(board.nets)),
        source=source_of(board),
        holes=_say("{holes} holes, {slots} slots").format(
            holes=len(board.holes) or _say("no"), slots=len(board.slots) or _say("no")
        ),
    )


def cuts_page(picture: CutPicture) -> CutsPageValues:
    """The cuts page."""
    cuts = picture.cuts
    return CutsPageValues(
        length=cuts.length,
        loops=len(cuts.grooves.lines),
        time=clock(picture.seconds),
        narrow_length=cuts.grooves.narrow_length,
        max_bite=cuts.grooves.max_bite,
        outline=_outline(cuts.outline),
        holes=_drilled(cuts),
        impossible=cuts.grooves.impossible,
        findings=(*_unsaid(cuts), *_flaws(cuts), *cuts.findings),
        check=_check(cuts.check),
        clean=cuts.check.clean,
    )


def _outline(outline: Sequence[Cut]) -> str:
    tabs = sum(0 if cut.tabs is None else len(cut.tabs) for cut in outline)
    depths = 0
    for cut in outline:
        step = getattr(cut.bit, "step", cut.depth) or cut.depth
        depths = max(depths, math.ceil(cut.depth / step - 1e-9))
    return _say("{tabs} tabs, {depths} depths").format(tabs=tabs, depths=depths) if outline else _say("none")


def _drilled(cuts: CutPlan) -> str:
    bits = cuts.drills()
    count = sum(bits.values())
    return _say("{count}, {bits} bits").format(count=count, bits=len(bits)) if count else _say("none")


def _check(check: IslandCheck) -> str:
    if not check.nets:
        return _say("impossible: no copper")
    if check.clean:
        return _say("clean, {count} nets").format(count=check.nets)
    parts = (
        (len(check.shorts), _say("joined")),
        (len(check.opens), _say("broken")),
        (len(check.lost), _say("cut away")),
    )
    return ", ".join(f"{count} {word}" for count, word in parts if count)


def _unsaid(cuts: CutPlan) -> tuple[Finding, ...]:
    """What the island check found beyond the gaps that are listed as too narrow."""
    said = {frozenset(place.nets) for place in cuts.grooves.impossible}
    return tuple(one for one in check_findings(cuts.check) if frozenset(one.nets) not in said)


def _flaws(cuts: CutPlan) -> tuple[Finding, ...]:
    """Nets too close for their voltage, and traces that the cut thins."""
    places: dict[tuple[str, str, tuple[float, float]], list[Flaw]] = {}
    for kind, flaws in (("close", cuts.close), ("thin", cuts.check.thinned)):
        for flaw in flaws:
            places.setdefault((kind, flaw.nets[0], flaw.at), []).append(flaw)
    return tuple(_flaw(kind, together) for (kind, _, _), together in places.items())


def _flaw(kind: str, together: Sequence[Flaw]) -> Finding:
    """Flaws of one net at one place as one finding: copper without a net is near to many others at once."""
    first = together[0]
    where = fill(_say("at {x:.2f}, {y:.2f} mm"), x=first.at[0], y=first.at[1])
    if kind == "thin":
        what = _say("{net} is thinned").format(net=first.nets[0])
    elif len(together) > 1:
        what = _say("{net} is too close to {count} nets for its voltage").format(
            net=first.nets[0], count=len(together)
        )
    else:
        what = _say("{nets} are too close for their voltage").format(nets=_say(" and ").join(first.nets[:2]))
    return Finding(kind, what, where, first.what, first.at, first.nets)


def check_findings(check: IslandCheck) -> tuple[Finding, ...]:
    """What the island check found, each with its place."""
    found = []
    for kind, flaws, what in (
        ("short", check.shorts, _say("{nets} stay joined")),
        ("open", check.opens, _say("{nets} is broken in pieces")),
        ("lost", check.lost, _say("Copper of {nets} is cut away")),
    ):
        for flaw in flaws:
            nets = _say(" and ").join(flaw.nets[:2])
            where = fill(_say("at {x:.2f}, {y:.2f} mm"), x=flaw.at[0], y=flaw.at[1])
            found.append(Finding(kind, what.format(nets=nets), where, flaw.what, flaw.at, flaw.nets))
    return tuple(found)


def surface_page(snap: Snapshot, picture: TouchPicture) -> SurfacePageValues:
    """The surface page."""
    time = clock(picture.seconds)
    if picture.heat is None or picture.surface is None:
        return SurfacePageValues(time=time)
    return SurfacePageValues(
        touches=len(picture.surface.touches),
        low=float(picture.heat.mean.min()),
        high=float(picture.heat.mean.max()),
        spread=MICRO * picture.median,
        worst=MICRO * picture.worst,
        noise=MICRO * picture.surface.noise,
        rejected=len(picture.surface.rejected),
        time=time,
        stale=f"{told(moved_at(snap))} {_say('Touch the copper again before cutting grooves.')}"
        if picture.stale
        else "",
        give=tuple(f"{told(one.what)} {told(one.hint)}" for one in picture.give[:3]),
        waves=wave_words(picture.surface),
    )


def passes_page(
    picture: PassPicture | None, touched: bool, settings: Settings | None = None
) -> PassesPageValues:
    """The passes page; ``touched`` is whether the copper was touched at all."""
    if picture is None:
        if touched:
            return PassesPageValues()
        return PassesPageValues(
            note_what=_say("The copper is not touched yet"),
            note_text=_say("How deep a pass must go follows the copper's height: Surface comes first."),
        )
    plan = picture.plan
    whole = sum(run.length for run in plan.done[:1]) or (plan.next.length if plan.next else 1.0)
    lines = [_pass_line(one, Mark.DONE, "", whole) for one in plan.done]
    if plan.next is not None:
        lines.append(_pass_line(plan.next, Mark.READY, _say(", planned"), whole))
    cut = bool(plan.done)
    totals = plan.reach_totals if cut else plan.expected_totals
    what = text = ""
    if cut and plan.next is not None:
        what = fill(
            _say("{share:.1f} % expected after pass {number}"),
            share=100 * plan.expected_totals.expected,
            number=plan.next.number,
        )
        text = _say(
            "It goes over {length:.0f} mm: what is not surely through, was found joined or painted."
        ).format(length=plan.next.length)
    elif cut:
        what = _say("By its reach, nothing is left to cut again")
        text = _say("An island touch proves it.")
        doubtful = sum(one.whole < THROUGH for one in picture.nets)
        if doubtful:
            text = fill(
                _say("{count} of {all} nets are not surely cut off all round: an island touch tells."),
                count=doubtful,
                all=len(picture.nets),
            )
    following = "" if plan.next is None else _say("pass {number}").format(number=plan.next.number)
    return PassesPageValues(
        through_share=totals.expected,
        after=_say("after pass {number}").format(number=len(plan.done))
        if cut
        else _say("after pass 1 (expected)"),
        through=totals.through,
        doubtful=totals.doubtful,
        not_through=totals.not_through,
        passes=tuple(lines),
        note_what=what,
        note_text=text,
        next_name=following,
        choices=tuple(_choice(one, settings.passes) for one in plan.choices) if settings is not None else (),
        nets=picture.nets,
    )


def _choice(one: Choice, wanted: PassSettings) -> ChoiceLine:
    """A way to cut with what follows from it."""
    name = (
        fill(_say("Depth ladder, {n} passes over all"), n=one.passes)
        if one.ladder
        else fill(_say("One careful pass, {share:.1f} % sure"), share=100 * one.target)
    )
    template = _say(
        "{time}; {through} of the length and {whole:.0f} % of the loops through; {width:.2f} mm wide, gap "
        "{gap:.2f} mm and more"
    )
    detail = fill(
        template,
        through=in_words(one.through),
        whole=100 * min(one.whole or 0.0, 0.99),
        width=one.width,
        gap=one.gap,
        time=clock(one.seconds),
    )
    chosen = wanted.ladder if one.ladder else not wanted.ladder and abs(one.target - wanted.target) < 1e-6
    return ChoiceLine(name, detail, chosen)


def _pass_line(one: Pass, mark: Mark, more: str, whole: float) -> PassLine:
    name = _say("Pass {number}").format(number=one.number) + more
    return PassLine(name, mark, one.deepest, one.length, one.length / whole)
