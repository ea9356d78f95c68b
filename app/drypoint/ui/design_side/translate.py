"""Settings of the job to and from the plain values of the forms. No Qt, nothing is computed."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import replace

from drypoint.bits.library import default_library
from drypoint.bits.model import Drill, EndMill, Speeds, VBit
from drypoint.machine.preset import MachinePreset, SpindleKind
from drypoint.session.settings import BitSettings, BlankSettings, Clamp, CutSettings, MachineSettings
from drypoint.ui.canvas.content import Clamp as DrawnClamp
from drypoint.ui.forms.values import BitValues, BlankValues, MachineValues

SAME = 1e-6
"""Values nearer than this are the same, mm."""


def blank_values(blank: BlankSettings, board: tuple[float, float]) -> BlankValues:
    """The form of the blank; ``board`` is the size of the board, mm."""
    width = blank.width or board[0] + 2 * blank.margin
    height = blank.height or board[1] + 2 * blank.margin
    centred = ((width - board[0]) / 2, (height - board[1]) / 2)
    x, y = centred if blank.centred else (blank.board_x, blank.board_y)
    return BlankValues(
        width=width,
        height=height,
        thickness=blank.thickness,
        copper=blank.copper,
        board_x=x,
        board_y=y,
        centred=blank.centred,
        clamps=tuple(
            DrawnClamp(number, (c.x, c.y, c.x + c.width, c.y + c.height))
            for number, c in enumerate(blank.clamps, 1)
        ),
        keep_away=blank.clamp_margin,
        backing=blank.backing,
    )


def blank_settings(values: BlankValues, before: BlankSettings, board: tuple[float, float]) -> BlankSettings:
    """What the form of the blank says; a size that follows the board goes on following it."""
    usual = (board[0] + 2 * before.margin, board[1] + 2 * before.margin)
    follows = before.width == 0.0 or before.height == 0.0
    same = abs(values.width - usual[0]) < SAME and abs(values.height - usual[1]) < SAME
    width, height = (0.0, 0.0) if follows and same else (values.width, values.height)
    return replace(
        before,
        width=width,
        height=height,
        thickness=values.thickness,
        copper=values.copper,
        board_x=before.board_x if values.centred else values.board_x,
        board_y=before.board_y if values.centred else values.board_y,
        centred=values.centred,
        clamps=tuple(Clamp(x0, y0, x1 - x0, y1 - y0) for x0, y0, x1, y1 in (c.box for c in values.clamps)),
        clamp_margin=values.keep_away,
        backing=values.backing,
    )


def bit_values(bits: BitSettings) -> BitValues:
    """The form of the bits."""
    vbit, mill = bits.vbit, bits.mill
    return BitValues(
        tip=vbit.tip,
        angle_deg=round(math.degrees(vbit.angle), 6),
        runout=vbit.runout,
        feed=vbit.speeds.feed,
        plunge=vbit.speeds.plunge,
        spindle=vbit.speeds.spindle,
        mill=mill.diameter,
        mill_feed=mill.speeds.feed,
        mill_plunge=mill.speeds.plunge,
        mill_step=mill.step,
        drill_plunge=_first(bits).speeds.plunge,
        drill_peck=_first(bits).peck,
        drills=tuple(drill.diameter for drill in bits.drills),
    )


def bit_settings(values: BitValues, before: BitSettings) -> BitSettings:
    """What the form of the bits says; bits that stay keep what the form does not show."""
    speeds = Speeds(values.spindle, values.feed, values.plunge)
    vbit = replace(
        before.vbit,
        name=f"V-bit {values.tip:g} mm {values.angle_deg:g}°",
        tip=values.tip,
        angle=math.radians(values.angle_deg),
        runout=values.runout,
        speeds=speeds,
    )
    milled = replace(before.mill.speeds, feed=values.mill_feed, plunge=values.mill_plunge)
    mill = replace(_mill(values.mill, before.mill), speeds=milled)
    if values.mill_step != before.mill.step:
        mill = replace(mill, step=values.mill_step)
    drills = tuple(
        _as_run(_drill(diameter, before.drills), values, _first(before)) for diameter in values.drills
    )
    if vbit == replace(before.vbit, name=vbit.name):
        vbit = before.vbit
    return BitSettings(vbit, drills, mill)


def _first(bits: BitSettings) -> Drill:
    """The drill whose speeds stand for all."""
    return bits.drills[0] if bits.drills else default_library().drills[0]


def _as_run(drill: Drill, values: BitValues, shown: Drill) -> Drill:
    """A drill with what was set for all of them; what was not set anew it keeps."""
    if values.drill_plunge != shown.speeds.plunge:
        drill = replace(drill, speeds=replace(drill.speeds, plunge=values.drill_plunge))
    return replace(drill, peck=values.drill_peck) if values.drill_peck != shown.peck else drill


def _mill(diameter: float, before: EndMill) -> EndMill:
    if abs(before.diameter - diameter) < SAME:
        return before
    usual = min(default_library().mills, key=lambda one: abs(one.diameter - diameter))
    step = usual.step * diameter / usual.diameter
    return EndMill(f"End mill {diameter:g} mm", diameter, before.speeds, round(step, 3))


def _drill(diameter: float, before: Sequence[Drill]) -> Drill:
    for drill in before:
        if abs(drill.diameter - diameter) < SAME:
            return drill
    usual = min(default_library().drills, key=lambda one: abs(one.diameter - diameter))
    return replace(usual, name=f"Drill {diameter:g} mm", diameter=diameter)


def machine_values(machine: MachineSettings, preset: MachinePreset) -> MachineValues:
    """The form of the machine; ``preset`` is the machine as it is set."""
    return MachineValues(
        size_class=machine.preset,
        port=machine.port,
        baud=machine.baud,
        travel=preset.travel,
        play=machine.play,
        contact=preset.contact_input,
        spindle_switched=preset.spindle is not SpindleKind.BY_HAND,
        homing=preset.homing,
    )


def machine_settings(
    values: MachineValues, before: MachineSettings, presets: Sequence[MachinePreset]
) -> MachineSettings:
    """What the form of the machine says; only what differs from its size class is kept."""
    name = values.size_class or before.preset
    usual = next((one for one in presets if one.name == name), None)
    if usual is None:
        return before
    switched = usual.spindle is not SpindleKind.BY_HAND
    other_class = name != before.preset
    return replace(
        before,
        preset=name,
        port=values.port,
        baud=values.baud,
        travel=None if values.travel == usual.travel else values.travel,
        play=values.play,
        contact=None if values.contact == usual.contact_input else values.contact,
        spindle_switched=None if values.spindle_switched == switched else values.spindle_switched,
        homing=None if values.homing == usual.homing else values.homing,
        clearance=usual.clearance if other_class else before.clearance,
        spindle_delay=usual.spindle_delay if other_class else before.spindle_delay,
    )


def groove_width(cuts: CutSettings, vbit: VBit) -> float:
    """Width of the grooves at the copper's top that the nominal depth gives, mm."""
    return vbit.width(cuts.depth)


def least_width(vbit: VBit, copper: float) -> float:
    """The narrowest groove that still goes through the copper, mm."""
    return vbit.width(copper)


def with_width(cuts: CutSettings, vbit: VBit, width: float, copper: float) -> CutSettings:
    """Cuts as deep as a groove of ``width`` mm needs, through the copper at least."""
    return replace(cuts, depth=round(max(vbit.depth(width), copper), 4))
