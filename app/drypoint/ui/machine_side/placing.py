"""Where the board lies, for everything in the window that must know it."""

from __future__ import annotations

from drypoint.errors import PlanError
from drypoint.geometry.rigid import Rigid
from drypoint.reference.fit import Fit
from drypoint.session.actions.find import likely
from drypoint.session.plans import Placing
from drypoint.session.session import Session


def rigid_of(placing: Placing) -> Rigid:
    """The motion alone."""
    return placing.rigid if isinstance(placing, Fit) else placing


def present_placing(session: Session) -> Rigid | None:
    """Board frame to work coordinates as far as is known; None before there is a board. Computes."""
    try:
        return rigid_of(likely(session))
    except PlanError:
        return None
