"""What is computed from a job, computed elsewhere: the same answers, kept here.

What a plan is made of and is quickly told from it is kept here too: pages show it (`Derived.peek`).
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any, TypeVar

from shapely import Geometry

from drypoint.board.model import Board
from drypoint.geometry.points import Points
from drypoint.progress import Progress
from drypoint.session.derive import Derived
from drypoint.session.imported import ReadyProgram
from drypoint.session.inputs import CUTS, PASSES, READ, READY, TOUCH_PLAN
from drypoint.session.pass_plan import PassPlan
from drypoint.session.plans import CutPlan
from drypoint.session.snapshot import Snapshot
from drypoint.surface.model import Surface

T = TypeVar("T")

Ask = Callable[[Callable[..., Any], Snapshot, Progress | None], Any]
"""Has ``work(derived, snap, progress)`` done elsewhere, with the `Derived` of the same job there."""


class DistantDerived(Derived):
    """As `Derived`, but what takes long is asked for.

    Parameters
    ----------
    ask : callable
        See `Ask`; raises as the work does.
    """

    def __init__(self, ask: Ask) -> None:
        super().__init__()
        self._ask = ask

    def run(self, work: Callable[..., T], snap: Snapshot, progress: Progress | None = None) -> T:
        """As `Derived.run`, elsewhere."""
        found: T = self._ask(work, snap, progress)
        return found

    def read(self, snap: Snapshot, progress: Progress | None = None) -> dict[str, Board]:
        """As `Derived.read`."""
        return self._take("designs", snap.key(*READ), Derived.read, snap, progress)

    def ready(self, snap: Snapshot) -> tuple[ReadyProgram, ...]:
        """As `Derived.ready`."""
        return self._take("ready", snap.key(*READY), _ready, snap, None)

    def cuts(self, snap: Snapshot, progress: Progress | None = None) -> CutPlan:
        """As `Derived.cuts`."""
        self.ready(snap)  # known also where no cuts can be laid
        self.layout(snap)
        return self._take("cuts", snap.key(*CUTS), Derived.cuts, snap, progress)

    def touch_plan(self, snap: Snapshot, progress: Progress | None = None) -> Points:
        """As `Derived.touch_plan`."""
        return self._take("touch plan", snap.key(*TOUCH_PLAN), Derived.touch_plan, snap, progress)

    def measured(self, snap: Snapshot, progress: Progress | None = None) -> Surface:
        """As `Derived.measured`."""
        return self._take("surface", snap.key("touches"), Derived.measured, snap, progress)

    def passes(self, snap: Snapshot, progress: Progress | None = None) -> PassPlan:
        """As `Derived.passes`."""
        found = self._take("passes", snap.key(*PASSES), Derived.passes, snap, progress)
        self.measured(snap)
        self.grooves_key(snap)
        self.fit(snap)
        return found

    def standing(self, snap: Snapshot, progress: Progress | None = None) -> dict[str, Geometry]:
        """As `Derived.standing`."""
        return self._take("standing", snap.key(*CUTS), Derived.standing, snap, progress)

    def _take(
        self, name: str, key: str, work: Callable[..., T], snap: Snapshot, progress: Progress | None
    ) -> T:
        return self._memo.get(name, key, lambda: self.run(work, snap, progress))


def _ready(derived: Derived, snap: Snapshot, _progress: Progress | None) -> tuple[ReadyProgram, ...]:
    return derived.ready(snap)
