"""What a rehearsal found of the second side and of the legend, as rows of words and values."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from drypoint.session.rehearsal_legend import LegendOutcome
from drypoint.session.rehearsal_second import SecondSideOutcome
from drypoint.session.rehearsal_stage import PassOutcome
from drypoint.session.sheet import clock
from drypoint.ui.language.words import fill


def _say(text: str) -> str:
    return QCoreApplication.translate("rehearsed", text)


def pass_rows(passes: tuple[PassOutcome, ...]) -> list[tuple[str, str]]:
    """Every pass: what was expected of it, and what the simulated copper shows."""
    return [
        (
            fill(
                _say("Pass {n}, {depth:.3f} mm, {length:.0f} mm long"),
                n=one.number,
                depth=one.depth_mm,
                length=one.length_mm,
            ),
            fill(
                _say("through: {p:.1f} % expected, {a:.1f} % found"),
                p=100 * one.predicted_through,
                a=100 * one.actual_through,
            ),
        )
        for one in passes
    ]


def second_side_rows(found: SecondSideOutcome | None) -> list[tuple[str, str]]:
    """The other side after the turn; nothing where only one is milled."""
    if found is None:
        return []
    rows = [
        (
            _say("Second side, {n} touches").format(n=found.touches),
            fill(
                _say("off by {rms:.1f} µm; {share:.0f} % inside the 90 % band"),
                rms=found.rms_um,
                share=100 * found.interval90,
            ),
        ),
        *pass_rows(found.passes),
    ]
    if found.actual_error_mm is not None:
        rows.append(
            (
                _say("Holes off their pads (95 %), found by {n} holes").format(n=found.holes),
                fill(
                    _say("{a:.3f} mm; at most {p:.3f} mm expected"),
                    a=found.actual_error_mm,
                    p=found.expected_error_mm,
                ),
            )
        )
    pieces = found.check.pieces - (found.islands - found.check.nets)
    rows.append((_say("Islands / nets of the second side"), f"{pieces} / {found.check.nets}"))
    return rows


def legend_rows(found: LegendOutcome | None) -> list[tuple[str, str]]:
    """The legend by laser; nothing where none is marked."""
    if found is None:
        return []
    off = fill(_say("{a:.3f} mm"), a=found.actual_error_mm)
    if found.expected_error_mm is not None:
        off = fill(
            _say("{a:.3f} mm; at most {p:.3f} mm expected"),
            a=found.actual_error_mm,
            p=found.expected_error_mm,
        )
    return [
        (
            _say("Legend by laser, {n} marks").format(n=found.made),
            fill(
                _say("{pads} on pads or holes, nearest {gap:.2f} mm away"),
                pads=found.on_pads,
                gap=found.nearest_pad_mm,
            ),
        ),
        (_say("Marks off their place (95 %)"), off),
        (
            _say("Beam on"),
            fill(
                _say("{a}, planned {p}"),
                a=clock(found.beam_seconds),
                p=clock(found.planned_beam_seconds),
            ),
        ),
    ]
