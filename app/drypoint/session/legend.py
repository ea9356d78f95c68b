"""The legend of a job as marks and as a program: plain functions of a snapshot."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import replace
from typing import Any

import numpy as np
import shapely
from shapely import MultiPoint

from drypoint.cuts.burn_grid import BurnGrid
from drypoint.errors import PlanError
from drypoint.geometry.rigid import Rigid
from drypoint.program.laser import LaserProgram, LaserSettings, line_program, pulse_program
from drypoint.program.settings import Motion
from drypoint.progress import Progress
from drypoint.reference.fit import Fit
from drypoint.reference.registration import turned
from drypoint.session.actions.find import SPOT
from drypoint.session.derive import Derived
from drypoint.session.laser_safety import require_material
from drypoint.session.marks import legend_face, side_words
from drypoint.session.plans import Placing
from drypoint.session.settings import LaserSection, MarkingMaterial, Settings
from drypoint.session.sides import prefix
from drypoint.session.snapshot import Snapshot
from drypoint.session.two_sides import fit_of_touched
from drypoint.session.work import preset_of
from drypoint.wording import say

NAME = "41-legend"
"""Of the program."""
GRID_NAME = "40-burn-grid"
"""Of the program of a burn grid."""


def laser_settings(settings: Settings, scale: float | None = None) -> LaserSettings:
    """How the beam is driven; ``scale`` is what the controller states as full power (its setting 30)."""
    chosen, preset = settings.laser, preset_of(settings)
    return LaserSettings(
        power=chosen.power,
        dwell=chosen.dwell,
        settle=chosen.settle,
        feed=chosen.feed,
        scale=preset.laser_scale if scale is None else scale,
        height=chosen.focus,
        rise_feed=min(300.0, preset.max_rate[2]),
        clearance=settings.machine.clearance,
    )


def legend_wanted(derived: Derived, snap: Snapshot) -> bool:
    """Whether the job has a legend and the laser's settings name what is marked."""
    chosen = snap.settings.laser
    return bool(chosen.coating.strip() or chosen.bare) and derived.board(snap).legend is not None


def legend_up(derived: Derived, snap: Snapshot) -> bool:
    """Whether the side that the legend belongs on looks up."""
    return snap.face() is legend_face(derived.board(snap))


def spot_fit(derived: Derived, snap: Snapshot) -> Rigid:
    """Board frame to where the head must go for its spot to be there, work coordinates.

    Raises
    ------
    PlanError
        If it is not known where the board lies.
    """
    placing: Placing = derived.fit(snap)
    rigid = placing.rigid if isinstance(placing, Fit) else placing
    return rigid.then(Rigid(0.0, snap.settings.laser.head))


def expected_fit(derived: Derived, snap: Snapshot, axis: str = "y") -> Rigid:
    """The same once the board will have been turned over about an axis of the bed into the same corner.

    To about a millimetre, as well as hands turn it: its holes tell better.
    """
    layout = derived.layout(snap)
    placing: Placing = derived.fit(snap)
    rigid = placing.rigid if isinstance(placing, Fit) else placing
    over = turned(layout.width, layout.height, axis)
    return rigid.then(over).then(Rigid(0.0, snap.settings.laser.head))


def spot_error(derived: Derived, snap: Snapshot) -> float | None:
    """Largest expected error of a mark at the board's corners, mm (root mean square); None without a fit.

    Where every hole was found by the light spot, the offset of the head drops out: what is marked is off
    by as much as the holes seemed to be.
    """
    fit = derived.fit(snap)
    if not isinstance(fit, Fit):
        return None
    head = snap.settings.laser.head_sigma
    here = [record.data for record in snap.records["reference"] if record.data["setup"] == snap.setup]
    if all(one.get("way") == SPOT for one in here):
        alone = [{**one, "sigma": _without_head(one, head)} for one in here]
        fit, head = fit_of_touched(snap, alone, snap.setup, derived.board(snap).width), 0.0
    x0, y0, x1, y1 = derived.board(snap).outline.bounds
    corners = fit.covariance_at([(x0, y0), (x1, y0), (x1, y1), (x0, y1)])
    worst = float(corners.trace(axis1=1, axis2=2).max())
    return math.sqrt(worst + 2.0 * head**2)


LEAST_SIGMA = 0.01
"""Nobody sees better than this where a spot lies in a hole, mm."""


def _without_head(touched: Mapping[str, Any], head: float) -> float:
    """Spread of a touch by the light spot itself: that of the head's offset is part of what is kept."""
    count = int(touched.get("touches", 1))
    own = float(touched["sigma"]) ** 2 * count - head**2
    return math.sqrt(max(own, LEAST_SIGMA**2) / count)


def legend_program(
    derived: Derived,
    snap: Snapshot,
    *,
    scale: float | None = None,
    fit: Rigid | None = None,
    progress: Progress | None = None,
) -> LaserProgram:
    """The program of the legend, checked line by line.

    Parameters
    ----------
    scale : what the controller states as full power; as the machine has it if not given
    fit : board frame to where the head must go; by the present fit if not given

    Raises
    ------
    PlanError
        The material is not acknowledged, the board's place is not known, another side than the
        legend's looks up, or nothing of the legend is left.
    """
    material = require_material(snap.settings.laser)
    marks = derived.legend(snap, progress)
    if fit is None and not legend_up(derived, snap):
        raise PlanError(
            say(
                "The {bottom} looks up, the legend belongs on the other side.", bottom=side_words(snap.face())
            ),
            "Legend",
            "Turn the board over first.",
        )
    placed, driven = fit or spot_fit(derived, snap), laser_settings(snap.settings, scale)
    preset = preset_of(snap.settings)
    motion = Motion(preset.max_rate, preset.acceleration, preset.junction_deviation)
    title = say("Legend on {material}", material=material)
    name = f"{prefix(snap, legend_face(derived.board(snap)))}{NAME}"
    if marks.pulses:
        return pulse_program(
            marks.rows, placed, driven, name=name, title=title, motion=motion, progress=progress
        )
    return line_program(marks.rows, placed, driven, name=name, title=title, progress=progress)


def burn_grid_program(
    derived: Derived, snap: Snapshot, grid: BurnGrid, *, scale: float | None = None
) -> LaserProgram:
    """The program of a burn grid, placed as the board is.

    Raises
    ------
    PlanError
        The material is not acknowledged, the board's place is not known, or the grid would lie beside
        the blank or on a clamp.
    """
    material = require_material(snap.settings.laser)
    _require_on_blank(derived, snap, grid)
    return pulse_program(
        grid.rows,
        spot_fit(derived, snap),
        laser_settings(snap.settings, scale),
        power=grid.power,
        dwell=grid.dwell,
        name=GRID_NAME,
        title=say("Burn grid on {material}", material=material),
    )


def _require_on_blank(derived: Derived, snap: Snapshot, grid: BurnGrid) -> None:
    """A beam beside the blank burns the bed, on a clamp it comes back.

    Clamps are known for the first clamping only.

    Raises
    ------
    PlanError
        If a pulse would fall there.
    """
    layout = derived.layout(snap)
    room = layout.workable if snap.setup == 1 else layout.blank
    pulses = MultiPoint(np.vstack(grid.rows))
    if not shapely.covers(room, shapely.buffer(pulses, snap.settings.laser.spot)):
        raise PlanError(
            "The burn grid would reach beyond the blank or over a clamp.",
            "Burn grid",
            say(
                "It needs {width:.0f} × {height:.0f} mm to the right of the spot and behind it.",
                width=math.ceil(grid.size[0]),
                height=math.ceil(grid.size[1]),
            ),
        )


def with_best_cell(chosen: LaserSection, grid: BurnGrid, row: int, column: int) -> LaserSection:
    """The settings with power and dwell of the field that looks best, kept with the material.

    Raises
    ------
    InputError
        There is no such field.
    PlanError
        The material is not acknowledged.
    """
    name, cell = require_material(chosen), grid.cell(row, column)
    others = tuple(one for one in chosen.materials if one.name != name)
    known = (*others, MarkingMaterial(name, cell.power, cell.dwell))
    return replace(chosen, power=cell.power, dwell=cell.dwell, materials=known)


def for_material(chosen: LaserSection, name: str) -> LaserSection:
    """The settings for a coating that a burn grid was made on before. Its safety is to be said anew.

    Raises
    ------
    PlanError
        If nothing is kept for it.
    """
    for one in chosen.materials:
        if one.name == name:
            return replace(
                chosen, coating=name, bare=False, declared_safe=False, power=one.power, dwell=one.dwell
            )
    raise PlanError(say("No values are kept for {name!r}.", name=name), "Laser", "Burn a grid on it first.")
