"""The next pass over the grooves: the first over everything, later ones only where they must cut."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import shapely
from shapely import Geometry, unary_union

from drypoint.cuts.model import CutKind, GroovePlan
from drypoint.passes.depth import plan_first_pass, uniform_pass
from drypoint.passes.island_learning import update_from_islands
from drypoint.passes.isolation import IslandAnswer, after_answers, net_chances
from drypoint.passes.learning import Belief
from drypoint.passes.model import Pass, ReachMap
from drypoint.passes.options import LADDER_START, LADDER_STEP, TARGETS, Choice, options
from drypoint.passes.reach import Totals, reach_map, totals
from drypoint.passes.recut import plan_recut, recut_painted
from drypoint.passes.wide import on_fine_lines, to_isolate, wide_pass
from drypoint.progress import Progress
from drypoint.session.islands import Joined
from drypoint.session.plans import Placing
from drypoint.session.settings import Settings
from drypoint.session.snapshot import Snapshot
from drypoint.session.two_bits import wide_bit
from drypoint.surface.model import Surface

PAINTED = "painted"
"""Kind of the record that holds what was painted to be cut again."""


@dataclass(frozen=True, slots=True, eq=False)
class Painted:
    """What was painted on the board: an area, board frame, mm; ``only`` that is cut, or that too."""

    area: Geometry
    only: bool


@dataclass(frozen=True, slots=True, eq=False)
class PassPlan:
    """Passes done, the next one, and what they reach.

    Attributes
    ----------
    next : Pass or None
        None where nothing is left to cut.
    reach, expected : ReachMap
        After the passes done, what island touches have shown included; after the next one too.
    choices : tuple of Choice
        Ways to cut the fine grooves, each with its consequences; only before the first pass over them.
    by_net : dict of str to float
        Chance that every groove beside a net is through without a gap, after the passes done;
        before the first pass, after that.
    belief : Belief or None
        What coupon, answers and island touches have taught of the depth.
    """

    done: tuple[Pass, ...]
    next: Pass | None
    reach: ReachMap
    expected: ReachMap
    reach_totals: Totals
    expected_totals: Totals
    choices: tuple[Choice, ...]
    by_net: dict[str, float]
    belief: Belief | None
    then: Pass | None = None
    """The first pass over the fine grooves, while the wide bit's is the next; expected counts both."""
    through: float = 0.0
    """Expected share of the length of all lines that is through after the next pass alone."""


def painted_in(snap: Snapshot) -> Painted | None:
    """What was painted in this clamping, unless a pass was run since."""
    record, last = snap.latest(PAINTED), snap.latest("pass")
    if record is None or record.data["setup"] != snap.setup or (last is not None and last.id > record.id):
        return None
    areas = [shapely.from_wkt(text) for text in record.data["areas"]]
    return Painted(unary_union(areas), bool(record.data["only"])) if areas else None


def plan_passes(
    grooves: GroovePlan,
    done: Sequence[Pass],
    fit: Placing,
    surface: Surface,
    settings: Settings,
    belief: Belief | None,
    joined: Joined,
    painted: Painted | None,
    answers: Sequence[IslandAnswer],
    progress: Progress,
) -> PassPlan:
    """Plan the next pass.

    Parameters
    ----------
    belief : what a coupon and answers about single places taught
    joined : the ground that island touches found joined, to be cut again
    answers : what island touches said, of these passes and of those before
    """
    planning = _Planning(grooves, fit, surface, settings, belief, progress)
    planning.learn(answers, done)
    reach = planning.reach(done, answers, 0.2)
    following, choices = planning.following(done, reach, joined, painted)
    progress.step(0.6, "Reach")
    expected, then = reach, None
    if following is not None:
        expected = planning.reach((*done, following), answers, 0.6)
    alone = totals(expected)
    if following is not None and following.kind is CutKind.CLEAR:
        cut = (*done, following)
        then, choices = planning.following(cut, expected, joined, None)
        expected = expected if then is None else planning.reach((*cut, then), answers, 0.7)
    fine = [one for one in done if one.kind is not CutKind.CLEAR]
    shown = reach if fine else expected
    chances = net_chances(shown, grooves.line_nets, surface.ripple_length)
    return PassPlan(
        tuple(done),
        following,
        reach,
        expected,
        totals(reach),
        totals(expected),
        choices,
        chances,
        planning.belief,
        then,
        alone.expected,
    )


class _Planning:
    """What all steps of planning have in common."""

    def __init__(
        self,
        grooves: GroovePlan,
        fit: Placing,
        surface: Surface,
        settings: Settings,
        belief: Belief | None,
        progress: Progress,
    ) -> None:
        self.belief = belief
        self._grooves, self._lines = grooves, grooves.lines
        self._fit, self._surface, self._progress = fit, surface, progress
        self._wanted, self._bit = settings.passes, settings.bits.vbit
        self._wide, self._wide_depth = wide_bit(settings), settings.clearing.depth
        self._copper = settings.blank.copper

    def learn(self, answers: Sequence[IslandAnswer], done: Sequence[Pass]) -> None:
        """What island touches teach of the depth."""
        if answers:
            self.belief = update_from_islands(
                self.belief or Belief(),
                answers,
                self._lines,
                done,
                self._fit,
                self._surface,
                copper=self._copper,
                play=self._wanted.play,
                progress=self._progress.part(0.0, 0.2),
            )

    def reach(self, passes: Sequence[Pass], answers: Sequence[IslandAnswer], begun: float) -> ReachMap:
        """The reach of passes, with what island touches said that still holds after them."""
        found = reach_map(
            self._lines,
            passes,
            self._fit,
            self._surface,
            copper=self._copper,
            play=self._wanted.play,
            belief=self.belief,
            progress=self._progress.part(begun, begun + 0.3),
        )
        holding = [one for one in answers if one.isolated or one.after == len(passes)]
        return after_answers(found, holding, self._surface.ripple_length) if holding else found

    def following(
        self, done: Sequence[Pass], reach: ReachMap, joined: Joined, painted: Painted | None
    ) -> tuple[Pass | None, tuple[Choice, ...]]:
        """The next pass, and before the first one the ways to choose from; none where nothing is grooved."""
        wanted, lines, bit = self._wanted, self._lines, self._bit
        if not lines:
            return None, ()
        fit, surface, copper, belief = self._fit, self._surface, self._copper, self.belief
        play, target, deepest = wanted.play, wanted.target, wanted.deepest
        if painted is not None and painted.only:
            found = recut_painted(
                lines, painted.area, done, fit, surface, bit,
                copper=copper, play=play, target=target, deepest=deepest, belief=belief,
            )  # fmt: skip
            return found, self._choices(done)
        if self._grooves.wide and self._wide is not None and not done:
            return wide_pass(self._grooves, self._wide, self._wide_depth), ()
        fine = [one for one in done if one.kind is not CutKind.CLEAR]
        if not fine:
            return self._first(done, reach), self._choices(fine)
        choices = self._choices(fine)
        if wanted.ladder and len(fine) < next((one.passes for one in choices if one.ladder), 0):
            return self._rung(len(fine), done), ()
        areas = [one for one in (joined.area, None if painted is None else painted.area) if one is not None]
        again = plan_recut(
            lines, to_isolate(reach, self._grooves), done, fit, surface, bit,
            copper=copper, play=play, target=target, deepest=deepest, join=wanted.join,
            painted=unary_union(areas) if areas else None, grooves=joined.grooves, belief=belief,
        )  # fmt: skip
        return again, ()

    def _choices(self, fine: Sequence[Pass]) -> tuple[Choice, ...]:
        """The ways to cut the fine grooves, while they can be chosen or a ladder asks for them."""
        wanted, surface = self._wanted, self._surface
        if fine and not wanted.ladder:
            return ()
        return options(
            self._lines[self._grooves.wide :], self._fit, surface, self._bit,
            copper=self._copper, play=wanted.play, deepest=wanted.deepest,
            targets=sorted({*TARGETS, wanted.target}), belief=self.belief,
            ripple_length=surface.ripple_length,
        )  # fmt: skip

    def _rung(self, rung: int, done: Sequence[Pass]) -> Pass:
        """All fine grooves at the depth of a rung of the ladder, from 0."""
        depth = min(self._copper + LADDER_START + rung * LADDER_STEP, self._wanted.deepest)
        lines = self._lines[self._grooves.wide :]
        return on_fine_lines(uniform_pass(lines, self._bit, depth, number=len(done) + 1), self._grooves)

    def _first(self, done: Sequence[Pass], reach: ReachMap) -> Pass | None:
        """The first pass over the fine grooves, and over wide loops that may not be through."""
        wanted, grooves = self._wanted, self._grooves
        fit, surface, bit, copper, belief = self._fit, self._surface, self._bit, self._copper, self.belief
        play, target, deepest = wanted.play, wanted.target, wanted.deepest
        lines = self._lines[grooves.wide :]
        if wanted.ladder:
            first = self._rung(0, done)
        elif not lines:
            first = Pass(len(done) + 1, bit, ())
        else:
            flat = plan_first_pass(
                lines, fit, surface, bit,
                copper=copper, play=play, target=target, deepest=deepest, belief=belief,
            )  # fmt: skip
            first = on_fine_lines(replace(flat, number=len(done) + 1), grooves)
        if not grooves.wide:
            return first
        again = plan_recut(
            self._lines, to_isolate(reach, grooves, loops_only=True), done, fit, surface, bit,
            copper=copper, play=play, target=target, deepest=deepest, join=wanted.join, belief=belief,
        )  # fmt: skip
        runs = (*first.runs, *(() if again is None else again.runs))
        return replace(first, runs=runs) if runs else None
