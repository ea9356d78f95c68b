"""Test pattern and burn grid without the window: files, readings, a rehearsal, the field that looks best."""

from __future__ import annotations

import math
import tempfile
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from drypoint.bits.width_coupon import Evaluation
from drypoint.errors import InputError, StoreError
from drypoint.progress import Progress
from drypoint.session.actions.coupon import adopt, export_coupon
from drypoint.session.actions.coupon_reading import Readings, evaluate_readings
from drypoint.session.actions.pattern_rehearsal import PatternRehearsal, rehearse_pattern
from drypoint.session.corner import Corner
from drypoint.session.grid import GridPlan, lay_grid, newest_grid, over_pattern
from drypoint.session.legend import burn_grid_program, with_best_cell
from drypoint.session.legend_export import legend_text
from drypoint.session.session import Session
from drypoint.session.whole_file import write_whole
from drypoint.wording import say

_ONE_ONLY = say(
    "The burn grid lies where the test pattern is planned: this blank has room for one of them only."
)


@dataclass(frozen=True, slots=True)
class Wanted:
    """What is to be done about a test pattern.

    Attributes
    ----------
    folder : where its program is written; None for nowhere
    corner : of the blank; None for the one that is set
    use : whether the answer of the readings is used from now on
    rehearse : whether it is cut and read on the bench, with that ``seed``
    """

    folder: Path | None = None
    corner: Corner | None = None
    use: bool = False
    rehearse: bool = False
    seed: int = 0


def coupon_job(job: Path, wanted: Wanted, read: Readings, progress: Progress | None = None) -> dict[str, Any]:
    """Write the pattern's program, say what readings tell, rehearse it on the bench: whatever is wanted.

    Raises
    ------
    InputError
        Nothing is wanted, or a value makes no sense.
    """
    if wanted.folder is None and not read.any and not wanted.rehearse:
        raise InputError(
            "Neither a folder for the program nor anything that was read.",
            "coupon",
            "Give --to DIR, --rehearse, or readings such as --width 0.10=0.16 --joined 0.03 --parted 0.05.",
        )
    with _opened(job) as session:
        files = [] if wanted.folder is None else export_coupon(session, wanted.folder, wanted.corner)
        found: dict[str, Any] = {"files": [str(path) for path in files], "facts": [], "used": False}
        if wanted.rehearse:
            with tempfile.TemporaryDirectory() as folder:
                made = rehearse_pattern(session, Path(folder), seed=wanted.seed, progress=progress)
            found |= {"rehearsed": _rehearsed(made), "facts": _in_words(made)}
        if read.any:
            answer = evaluate_readings(session, read)
            if wanted.use:
                adopt(session, answer)
            found |= {**_figures(answer), "facts": [*found["facts"], *answer.facts()], "used": wanted.use}
        return found


def grid_job(
    job: Path, folder: Path | None, corner: Corner | None, best: tuple[int, int] | None
) -> dict[str, Any]:
    """Write the burn grid's program into a folder, or keep the field that looks best, or both.

    Parameters
    ----------
    best : row and column of that field, from 1, counted from the lower left

    Raises
    ------
    InputError
        Neither is wanted, or there is no such field.
    PlanError
        The material is not acknowledged, or there is no room.
    """
    if folder is None and best is None:
        raise InputError(
            "Neither a folder for the program nor a field that looks best.",
            "burn-grid",
            "Give --to DIR, or --best ROW,COLUMN, counted from the lower left.",
        )
    with _opened(job) as session:
        snap = session.snapshot
        plan = lay_grid(session.derived, snap, corner=corner) if folder else newest_grid(snap)
        plan = plan or lay_grid(session.derived, snap, corner=corner)
        files = [] if folder is None else _write_grid(session, plan, folder)
        facts = [_ONE_ONLY] if files and over_pattern(session.derived, snap, plan) else []
        found: dict[str, Any] = {"files": [str(path) for path in files], "facts": facts, "chosen": None}
        if best is not None:
            chosen = with_best_cell(session.settings.laser, plan.grid, best[0] - 1, best[1] - 1)
            session.change("Values of the burn grid", laser=chosen)
            text = say(
                "Marked from now on with {power:.0f} % for {dwell:.0f} ms.",
                power=100 * chosen.power,
                dwell=1000 * chosen.dwell,
            )
            values = {"power": chosen.power, "dwell_ms": 1000 * chosen.dwell}
            found |= {"chosen": values, "facts": [*facts, text]}
        return found


def _write_grid(session: Session, plan: GridPlan, folder: Path) -> tuple[Path, ...]:
    """The program with its cautions, and a page that says which field is which."""
    program = burn_grid_program(session.derived, session.snapshot, plan.grid)
    settings = session.settings
    text = legend_text(program, settings.laser, job=settings.board.name)
    made = (folder / f"{program.name}.nc", folder / "burn-grid.txt")
    lines = ["Row and column from the lower left; board x, y of the middle, mm; power; dwell"]
    lines += [
        f"  {cell.row + 1},{cell.column + 1}  {cell.at[0]:7.2f}, {cell.at[1]:7.2f}  "
        f"{100 * cell.power:.0f} %  {1000 * cell.dwell:.0f} ms"
        for cell in plan.grid.cells
    ]
    try:
        folder.mkdir(parents=True, exist_ok=True)
        write_whole(made[0], text, "ascii")
        write_whole(made[1], "\n".join(lines) + "\n")
    except OSError as error:
        raise StoreError(
            say("The files could not be written ({strerror}).", strerror=error.strerror),
            str(folder),
            "Choose another folder.",
        ) from error
    return made


@contextmanager
def _opened(job: Path) -> Iterator[Session]:
    session = Session.open(job)
    try:
        yield session
    finally:
        session.close()


def _pairs(answer: Evaluation) -> dict[str, tuple[float, float]]:
    return {
        "tip_mm": (answer.tip, answer.sigma(0)),
        "runout_mm": (answer.runout, answer.sigma(1)),
        "tip_and_runout_mm": answer.together,
        "deeper_than_set_mm": (answer.offset, answer.sigma(2)),
    }


def _figures(answer: Evaluation) -> dict[str, Any]:
    figures: dict[str, Any] = {
        name: {"value": round(value, 4), "sigma": round(sigma, 4)}
        for name, (value, sigma) in _pairs(answer).items()
    }
    return figures | {"angle_deg": round(math.degrees(answer.angle), 2), "misfit": round(answer.misfit, 2)}


def _truths(made: PatternRehearsal) -> Sequence[float]:
    return made.tip, made.runout, made.tip + made.runout, made.offset


def _rehearsed(made: PatternRehearsal) -> dict[str, Any]:
    values = {
        name: {"value": round(value, 4), "sigma": round(sigma, 4), "true": round(true, 4)}
        for (name, (value, sigma)), true in zip(_pairs(made.found).items(), _truths(made), strict=True)
    }
    return {**values, "seconds_simulated": round(made.seconds, 1), "mishaps": list(made.mishaps)}


def _in_words(made: PatternRehearsal) -> list[str]:
    names = ("Tip", "Run-out", "Tip and run-out together", "Deeper than set")
    lines = [
        f"{name}: read {value:.3f} ± {sigma:.3f} mm, on the bench {true:.3f} mm."
        for name, (value, sigma), true in zip(names, _pairs(made.found).values(), _truths(made), strict=True)
    ]
    return [*lines, *made.mishaps]
