"""The sheets that stand beside the window, filled for their screenshots."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtWidgets import QDialog
from sample_words import spoken

from drypoint.bits.width_coupon import Parted, Ridge, Width, evaluate
from drypoint.cuts.burn_grid import plan_burn_grid
from drypoint.session.actions.coupon_reading import lines_of
from drypoint.session.settings import CouponSettings, LaserSection, MarkingMaterial, Settings
from drypoint.ui.design_side.coupon_sheet import CouponSheet
from drypoint.ui.legend_side.sheet import LegendFacts, LegendSheet
from drypoint.ui.window import MainWindow


def legend_sheet(window: MainWindow) -> QDialog:
    """The legend by laser with a burn grid made before."""
    sheet = LegendSheet(window.theme, window.commands, window)
    kept = MarkingMaterial("black spray paint", 0.3, 0.02)
    chosen = replace(LaserSection(coating=kept.name, declared_safe=True), power=0.3, dwell=0.02)
    sheet.show_settings(replace(chosen, materials=(kept,)), CouponSettings())
    rows = (
        ("Beam on", "0:41"),
        ("Drawn strokes covered", "99 %"),
        ("Left free for pads and holes", "3.1 %"),
        ("Place, 95 %", "within 0.09 mm"),
    )
    sheet.show_facts(*spoken(LegendFacts("2 046", "pulses", rows)))
    sheet.show_usable(True, True, False, False)
    sheet.show_grid(plan_burn_grid(), [(kept.power, kept.dwell)])
    sheet.resize(460, 1500)
    return sheet


def test_pattern(window: MainWindow) -> QDialog:
    """The test pattern as it is read from a worn bit in a machine that cuts 8 µm too deep."""
    settings = Settings()
    bit, copper = settings.bits.vbit, settings.blank.copper
    lines = lines_of(bit)
    sheet = CouponSheet(window.theme, window.commands, lines, window)
    scatter = (0.004, -0.006, 0.009, -0.003, 0.005)
    read = {d: round(w + 0.03 + s, 3) for (d, w), s in zip(lines.widths, scatter, strict=True)}
    for depth, width in read.items():
        sheet.widths[depth].set_value(width)
    parted = {depth: depth + 0.008 > copper for depth in lines.squares}
    for depth, through in parted.items():
        sheet.squares[depth].choose(2 if through else 1)
    stands = {gap: gap >= 0.05 for gap in lines.ridges}
    for gap, there in stands.items():
        sheet.ridges[gap].choose(2 if there else 1)
    found = evaluate(
        bit,
        [Width(*each) for each in read.items()],
        [Parted(*each) for each in parted.items()],
        [Ridge(lines.ridge_depth, *each) for each in stands.items()],
        copper=copper,
    )
    sheet.show_answer(found, copper)
    sheet.resize(480, 1340)
    return sheet
