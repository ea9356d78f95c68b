"""What lies under the cursor, in words."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from drypoint.passes.model import NOT_THROUGH, THROUGH
from drypoint.ui.canvas.hover import Card
from drypoint.ui.canvas.pick import Picked
from drypoint.ui.language.words import local


def reach_word(probability: float) -> str:
    """through, doubtful or not through."""
    if probability >= THROUGH:
        return QCoreApplication.translate("describe", "through")
    if probability < NOT_THROUGH:
        return QCoreApplication.translate("describe", "not through")
    return QCoreApplication.translate("describe", "doubtful")


def describe(found: Picked) -> Card:
    """A hover card from what the drawing itself knows."""
    say = QCoreApplication.translate
    title = {
        "groove": say("describe", "Loop {number}"),
        "run": say("describe", "Piece {number}"),
        "net": say("describe", "Net {name}"),
        "hole": say("describe", "Hole {number}"),
        "reference": say("describe", "Reference hole {name}"),
        "clamp": say("describe", "Clamp {number}"),
    }[found.kind]
    shown = found.index if found.kind == "clamp" else found.index + 1
    values = dict(found.values)
    rows = []
    if found.name and found.kind not in ("net", "reference"):
        rows.append((say("describe", "Net"), found.name))
    if "probability" in values:
        rows.append((say("describe", "Reach"), f"{100 * values['probability']:.0f} %"))
    if "depth" in values:
        rows.append((say("describe", "Depth, planned"), local(f"{values['depth']:.3f} mm")))
    if "width" in values:
        rows.append((say("describe", "Groove width"), local(f"{values['width']:.2f} mm")))
    if "diameter" in values:
        rows.append((say("describe", "Diameter"), local(f"{values['diameter']:.2f} mm")))
    rows.append((say("describe", "Place"), local(f"{found.at[0]:.2f}, {found.at[1]:.2f} mm")))
    state = reach_word(values["probability"]) if "probability" in values else ""
    return Card(title.format(number=shown, name=found.name), state, tuple(rows[:4]))
