"""Small pieces of SVG: millimetre drawings with y upwards, pens in real millimetres."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from html import escape

import numpy as np
from numpy.typing import NDArray
from shapely import Geometry, MultiPolygon, Polygon, get_parts

from drypoint.geometry.points import Points
from drypoint.wording import as_text

Speak = Callable[[str], str]
"""Says a text in the language of the reader."""

INK = "#1E1C1A"
INK2 = "#57534E"
CANVAS = "#F7F6F4"
BLANK = "#EFE4DA"
COPPER = "#DFC3AC"
THROUGH = "#0072B2"
DOUBTFUL = "#F0E442"
NOT_THROUGH = "#D55E00"
CASING = "#2A211A"
REFERENCE = "#00694D"
FONT = "system-ui, 'DejaVu Sans', sans-serif"


def _rings(polygon: Polygon) -> Iterable[NDArray[np.float64]]:
    yield np.asarray(polygon.exterior.coords)[:, :2]
    for ring in polygon.interiors:
        yield np.asarray(ring.coords)[:, :2]


def path_data(points: Points | NDArray[np.float64], *, close: bool = False) -> str:
    """The ``d`` of one polyline."""
    text = " ".join(f"{x:.3f},{y:.3f}" for x, y in points[:, :2])
    return f"M{text}{'Z' if close else ''}"


def area(shape: Geometry, fill: str, more: str = "") -> str:
    """A filled (multi)polygon."""
    parts = [part for part in get_parts(shape) if isinstance(part, (Polygon, MultiPolygon))]
    data = "".join(path_data(ring, close=True) for part in parts for ring in _rings(part))  # type: ignore[arg-type]
    return f'<path d="{data}" fill="{fill}" fill-rule="evenodd" {more}/>' if data else ""


def lines(paths: Iterable[Points], colour: str, width: float, more: str = "", cap: str = "round") -> str:
    """Polylines of one pen, ``width`` in mm."""
    data = "".join(path_data(path) for path in paths if len(path) > 1)
    if not data:
        return ""
    return (
        f'<path d="{data}" fill="none" stroke="{colour}" stroke-width="{width}" '
        f'stroke-linecap="{cap}" stroke-linejoin="round" {more}/>'
    )


def ring(x: float, y: float, radius: float, fill: str, stroke: str, width: float) -> str:
    """A circle."""
    return (
        f'<circle cx="{x:.3f}" cy="{y:.3f}" r="{radius:.3f}" fill="{fill}" '
        f'stroke="{stroke}" stroke-width="{width}"/>'
    )


def text(x: float, y: float, words: str, size: float = 2.4, colour: str = INK, anchor: str = "start") -> str:
    """Upright words at a place of the drawing."""
    return (
        f'<text transform="translate({x:.3f} {y:.3f}) scale(1 -1)" font-size="{size}" fill="{colour}" '
        f'text-anchor="{anchor}">{escape(words)}</text>'
    )


def drawing(
    bounds: tuple[float, float, float, float],
    body: Sequence[str],
    title: str,
    legend: Sequence[tuple[str, str]],
    speak: Speak = str,
) -> str:
    """A whole SVG: ``body`` in mm with y upwards, then a strip with the legend.

    ``legend`` holds pairs of a sample (SVG drawn in a 10 × 4 box, y downwards) and its words; ``speak`` says
    them in the reader's language.
    """
    legend = [(sample, speak(as_text(words))) for sample, words in legend]
    x0, y0, x1, y1 = bounds
    margin, row, size = 3.0, 4.0, 2.1
    width, height = x1 - x0 + 2 * margin, y1 - y0 + 2 * margin
    longest = max((len(words) for _, words in legend), default=1)
    needed = 12.0 + 0.62 * size * longest + 2.0
    columns = max(1, min(len(legend), int((width - 2 * margin) / needed))) if legend else 1
    strip = 4.0 + row * -(-len(legend) // columns)
    rows = []
    for number, (sample, words) in enumerate(legend):
        x = margin + (number % columns) * (width - 2 * margin) / columns
        y = height + 1.5 + row * (number // columns)
        rows.append(
            f'<g transform="translate({x:.2f} {y:.2f}) scale(0.8)">{sample}'
            f'<text x="12" y="3" font-size="{size / 0.8:.2f}" fill="{INK}">{escape(words)}</text></g>'
        )
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {width:.2f} {height + strip:.2f}" '
        f'width="{width * 9:.0f}" height="{(height + strip) * 9:.0f}" font-family="{FONT}">'
        f"<title>{escape(speak(as_text(title)))}</title>"
        f'<rect width="100%" height="100%" fill="{CANVAS}"/>'
        f'<g transform="translate({margin - x0:.3f} {margin + y1:.3f}) scale(1 -1)">{"".join(body)}</g>'
        f"{''.join(rows)}</svg>"
    )


def sample_line(colour: str, width: float, more: str = "", casing: float = 0.0) -> str:
    """A legend's sample of a pen."""
    under = f'<path d="M0,2H10" stroke="{CASING}" stroke-width="{casing}" fill="none"/>' if casing else ""
    return f'{under}<path d="M0,2H10" stroke="{colour}" stroke-width="{width}" fill="none" {more}/>'


def sample_area(colour: str, more: str = "") -> str:
    """A legend's sample of a fill."""
    return f'<rect x="0" y="0" width="10" height="4" fill="{colour}" {more}/>'
