"""The proof page at work: what is computed, what the touches have shown, what to do about it."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QObject

from drypoint.machine.islands_plan import OUTER, ClipStep, Neighbours, conclude, net_of, next_clip
from drypoint.machine.islands_plan import Proof as TouchProof
from drypoint.progress import Progress
from drypoint.session.actions import prove
from drypoint.session.session import Session
from drypoint.session.station import Station
from drypoint.ui.canvas.content import Spot
from drypoint.ui.canvas.pick import Picked
from drypoint.ui.language.words import fill, local
from drypoint.ui.machine_side.desk import Desk
from drypoint.ui.machine_side.pair_words import ASKED, PairWords, outside
from drypoint.ui.pages.passes import PassesPage
from drypoint.ui.pages.proof import IslandLine, ProofPage
from drypoint.ui.parts.glyph import Mark

CLIPS = 2
"""Places of the clip in one go; more follow when asked for."""

CHANGES = frozenset({"opened", "closed", "source", "settings", "pass", "island touch"})


@dataclass(frozen=True, slots=True, eq=False)
class Standing:
    """What is known of every pair of neighbours.

    Attributes
    ----------
    pairs : tuple of (Neighbours, state)
        state: "proved", "joined", "unproved" or "" while nothing was touched since the last pass.
    flaws : tuple of (nets, at, words)
        What the island check of the plan finds wrong.
    islands : int
        Islands that the plan gives.
    step : ClipStep or None
        Where the clip goes next and what is touched then; None where nothing is left to prove.
    """

    pairs: tuple[tuple[Neighbours, str], ...]
    flaws: tuple[tuple[tuple[str, ...], tuple[float, float], str], ...]
    islands: int
    touched: bool
    step: ClipStep | None


def stand(session: Session) -> Standing:
    """What is known. Computes."""
    snap = session.snapshot
    check = session.derived.cuts(snap).check
    plan = prove.plan_proof(session)
    fresh = bool(prove.seen_before(session))
    record = snap.latest("island touch")
    states: dict[tuple[str, ...], str] = {}
    if fresh and record is not None:
        states |= {tuple(nets): "unproved" for nets in record.data["unproved"]}
        states |= {tuple(nets): "proved" for nets in record.data["proved"]}
        states |= {tuple(one["nets"]): "joined" for one in record.data["joined"]}
    states |= dict.fromkeys(prove.asked_again(session), ASKED)
    flaws = [
        *((one.nets, one.at, one.what) for one in check.shorts),
        *((one.nets, one.at, one.what) for one in check.opens),
        *((one.nets, one.at, one.what) for one in check.lost),
    ]
    pairs = tuple((pair, states.get(pair.nets, "unproved" if fresh else "")) for pair in plan.pairs)
    proof = conclude(plan.pairs, prove.seen_before(session))
    step = next_clip(plan.pairs, proof, plan.places)
    return Standing(pairs, tuple(flaws), check.nets, fresh, step)


class Proving(QObject):
    """Wires the proof page, the island touch of the passes page, and what is chosen on the canvas."""

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._desk = desk
        self.standing: Standing | None = None
        self.page = ProofPage(desk.window.theme)
        desk.window.set_page(8, self.page, wide=True)
        page = self.page
        page.touch_rest.connect(self.touch)
        page.touch_again.connect(lambda _line: self.touch(afresh=True))
        page.cut_again.connect(self.cut_again)
        page.check.connect(self.update_from_job)
        page.clip_wanted.connect(self._show_clip)
        page.line_chosen.connect(self._follow)
        page.line_opened.connect(self._zoom)
        passes = desk.window.pages.widget(5)
        if isinstance(passes, PassesPage):
            passes.island_touch.connect(self.touch)
        desk.window.canvas.canvas.picked.connect(self._picked)
        desk.changed.connect(self._judge)

    def job_changed(self, what: str) -> None:
        """The job changed: compute the proof anew, if it concerns it."""
        if what in CHANGES:
            self.update_from_job()

    def update_from_job(self) -> None:
        """Compute what is known anew and show it."""
        session = self._desk.bridge.session
        if session is None:
            self._show(None)
            return
        self._desk.ask("proof", lambda _: stand(session), self._show, lambda _: self._show(None))

    def touch(self, *, afresh: bool = False) -> None:
        """Island touch: go on with what is not proved yet, or all anew."""
        session = self._desk.bridge.session
        if session is None:
            return

        def work(station: Station, progress: Progress) -> TouchProof:
            return prove.prove(session, station, progress, clips=CLIPS, afresh=afresh)

        self._desk.with_station(self.tr("Island touch"), work, self._touched)

    def cut_again(self, line: object) -> None:
        """Cut the grooves between two pieces of copper again in the next pass."""
        session = self._desk.bridge.session
        if session is None or not isinstance(line, IslandLine) or len(line.nets) != 2:
            return
        first, second = sorted((_inner(line.nets[0]), _inner(line.nets[1])))
        at = line.at or (0.0, 0.0)

        def done(_: object) -> None:
            self._desk.say(self.tr("The ground between them is cut again in the next pass."))
            self._desk.window.choose_step(5)

        self._desk.ask(
            "cut again",
            lambda _: prove.cut_again(session, (first, second), at),
            done,
            self._desk.show_error,
        )

    def _touched(self, proof: object) -> None:
        assert isinstance(proof, TouchProof)
        text = self.tr("Island touch: {p} pairs proved apart, {j} joined, {u} not proved yet.").format(
            p=len(proof.proved), j=len(proof.joined), u=len(proof.unproved)
        )
        self._desk.say(text)

    # showing

    def _show(self, standing: object) -> None:
        found = standing if isinstance(standing, Standing) else None
        self.standing = found
        if found is None:
            self.page.show_islands("", "", ())
            self.page.show_next("", "", "")
            return
        words = PairWords()
        lines = [*(self._flaw(*flaw) for flaw in found.flaws), *(words.line(*pair) for pair in found.pairs)]
        proved = sum(state == "proved" for _, state in found.pairs)
        figure = f"{proved} / {len(found.pairs)}"
        if not found.touched:
            text = self.tr("neighbouring pairs proved apart by touch; the plan gives {n} islands").format(
                n=found.islands
            )
        else:
            text = self.tr("neighbouring pairs are proved apart by touch")
        self.page.show_islands(figure, text, lines)
        self._say_next(found.step)
        self._judge()

    def _say_next(self, step: ClipStep | None) -> None:
        """Where the clip goes next, and what it would prove."""
        if step is None:
            self.page.show_next("", "", "")
            return
        outside = step.clip.net == OUTER
        where = self.tr("the copper outside") if outside else step.clip.net
        holder = self.tr("Next: hold a wire to {net}") if step.by_hand else self.tr("Next: the clip on {net}")
        first = step.would_prove[0]
        several = self.tr(
            "{touches} pieces are touched, {gaps} gaps proved; first {a} – {b} of {gap:.2f} mm."
        )
        single = self.tr("One piece is touched, one gap proved: {a} – {b} of {gap:.2f} mm.")
        one = len(step.touches) == 1 and len(step.would_prove) == 1
        text = fill(
            single if one else several,
            touches=len(step.touches),
            gaps=len(step.would_prove),
            a=_outer(first.nets[0]),
            b=_outer(first.nets[1]),
            gap=first.gap,
        )
        place = local(f"x {step.clip.at[0]:.1f}, y {step.clip.at[1]:.1f} mm")
        self.page.show_next(holder.format(net=where), text, place)

    def _show_clip(self) -> None:
        step = None if self.standing is None else self.standing.step
        if step is not None:
            canvas = self._desk.window.canvas.canvas
            canvas.set_chosen([step.clip.net], Spot(step.clip.at))
            canvas.zoom_to_chosen()

    def _flaw(self, nets: tuple[str, ...], at: tuple[float, float], what: str) -> IslandLine:
        named = tuple(_outer(net) for net in nets)
        advice = self.tr("No groove of this width parts them: change the bit or the cuts.")
        return IslandLine(named, Mark.ERROR, self.tr("in the plan"), what, at, advice=advice)

    def _judge(self) -> None:
        usable = self._desk.station is not None and not self._desk.busy
        left = self.standing is not None and self.standing.step is not None
        self.page.rest_button.setEnabled(usable and left)

    # list and canvas

    def _follow(self, line: object) -> None:
        if not self._shown():
            return
        if isinstance(line, IslandLine):
            spot = None if line.at is None else Spot(line.at)
            self._desk.window.canvas.canvas.set_chosen([net_of(_inner(net)) for net in line.nets], spot)
        else:
            self._desk.window.canvas.canvas.set_chosen(())

    def _zoom(self, line: object) -> None:
        self._follow(line)
        self._desk.window.canvas.canvas.zoom_to_chosen()

    def _picked(self, picked: object) -> None:
        if self._shown() and isinstance(picked, Picked) and picked.name:
            self.page.choose_net(picked.name.split(", ", maxsplit=1)[0])

    def _shown(self) -> bool:
        return self._desk.window.pages.currentWidget() is self.page


def _outer(net: str) -> str:
    return outside() if net == OUTER else net


def _inner(net: str) -> str:
    return OUTER if net == outside() else net
