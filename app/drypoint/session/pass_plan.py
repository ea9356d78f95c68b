"""The next pass over the grooves: the first over everything, later ones only where they must cut."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import shapely
from shapely import Geometry, unary_union

from drypoint.cuts.model import GroovePlan
from drypoint.passes.depth import plan_first_pass, uniform_pass
from drypoint.passes.island_learning import update_from_islands
from drypoint.passes.isolation import IslandAnswer, after_answers, net_chances
from drypoint.passes.learning import Belief
from drypoint.passes.model import Pass, ReachMap
from drypoint.passes.options import LADDER_START, LADDER_STEP, TARGETS, Choice, options
from drypoint.passes.reach import Totals, reach_map, totals
from drypoint.passes.recut import plan_recut, recut_painted
from drypoint.progress import Progress
from drypoint.session.islands import Joined
from drypoint.session.plans import Placing
from drypoint.session.settings import Settings
from drypoint.session.snapshot import Snapshot
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
        Ways to cut, each with its consequences; only before the first pass.
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
    expected = reach
    if following is not None:
        expected = planning.reach((*done, following), answers, 0.6)
    shown = reach if done else expected
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
        self._lines, self._fit, self._surface, self._progress = grooves.lines, fit, surface, progress
        self._wanted, self._bit = settings.passes, settings.bits.vbit
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
        """The next pass, and before the first one the ways to choose from."""
        wanted, lines, bit = self._wanted, self._lines, self._bit
        fit, surface, copper, belief = self._fit, self._surface, self._copper, self.belief
        play, target, deepest = wanted.play, wanted.target, wanted.deepest
        choices: tuple[Choice, ...] = ()
        if not done or wanted.ladder:
            choices = options(
                lines, fit, surface, bit, copper=copper, play=play, deepest=deepest,
                targets=sorted({*TARGETS, target}), belief=belief, ripple_length=surface.ripple_length,
            )  # fmt: skip
        if painted is not None and painted.only:
            found = recut_painted(
                lines, painted.area, done, fit, surface, bit,
                copper=copper, play=play, target=target, deepest=deepest, belief=belief,
            )  # fmt: skip
            return found, choices
        if wanted.ladder and len(done) < next((one.passes for one in choices if one.ladder), 0):
            depth = min(copper + LADDER_START + len(done) * LADDER_STEP, deepest)
            return uniform_pass(lines, bit, depth, number=len(done) + 1), choices if not done else ()
        if not done:
            first = plan_first_pass(
                lines, fit, surface, bit,
                copper=copper, play=play, target=target, deepest=deepest, belief=belief,
            )  # fmt: skip
            return first, choices
        areas = [one for one in (joined.area, None if painted is None else painted.area) if one is not None]
        again = plan_recut(
            lines, reach, done, fit, surface, bit,
            copper=copper, play=play, target=target, deepest=deepest, join=wanted.join,
            painted=unary_union(areas) if areas else None, grooves=joined.grooves, belief=belief,
        )  # fmt: skip
        return again, ()
