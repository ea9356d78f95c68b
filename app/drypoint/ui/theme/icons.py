# ruff: noqa: E501 - style rules and path data read best unbroken
"""Line icons of our own: a grid of 20, strokes of 1.6 with round ends, no fill.

Each is the drawing of one thing of the trade, as path data in the notation of Scalable Vector
Graphics, and takes the colour of the text beside it.
"""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from PySide6.QtCore import QByteArray, QRectF, Qt
from PySide6.QtGui import QIcon, QPainter, QPixmap
from PySide6.QtSvg import QSvgRenderer

PATHS: Mapping[str, str] = MappingProxyType(
    {
        "blank": "M3 4H17V12L13 16H3Z M17 12H13V16",
        "v-bit": "M7.5 2.5V9L10 17.5L12.5 9V2.5Z M7.5 9H12.5",
        "drill": "M7.5 2.5V14.5L10 17.5L12.5 14.5V2.5 M7.5 8L12.5 5 M7.5 12L12.5 9 M8 15.3L12.5 12.6",
        "mill": "M7.5 2.5V16.5H12.5V2.5 M7.5 9L12.5 6 M7.5 13L12.5 10",
        "groove": "M2 7H7L10 13L13 7H18",
        "touch": "M2 15H18 M10 15V4 M7.5 11.5L10 14.5L12.5 11.5",
        "surface": "M2 8.5C4.5 4 7 4 10 8C13 12 15.5 11 18 7 M2 16H18",
        "spread": "M2 10C4.5 6 7 6 10 9.5C13 13 15.5 12 18 8.5 M2 4H4.5 M8 3.5H12 M15.5 3H18 M2 17H4.5 M8 17.3H12 M15.5 16.8H18",
        "pass": "M2 4H8L10 7L12 4H18 M2 10H7.5L10 13.5L12.5 10H18 M6.5 16.2L10 17.8L13.5 16.2",
        "reach": "M2 4H18 M2 10H5 M8.5 10H11.5 M15 10H18 M2 16H18 M5 14V18 M10 14V18 M15 14V18",
        "reference": "M10 5A5 5 0 1 1 10 15A5 5 0 1 1 10 5Z M10 1.5V8 M10 12V18.5 M1.5 10H8 M12 10H18.5",
        "fit": "M7.5 6A4.5 4.5 0 1 1 7.5 15A4.5 4.5 0 1 1 7.5 6Z M12.5 5A4.5 4.5 0 1 1 12.5 14A4.5 4.5 0 1 1 12.5 5Z",
        "residual": "M6 10A4 4 0 1 1 6 18A4 4 0 1 1 6 10Z M9 11L17 3 M11.5 3H17V8.5",
        "clamp": "M2 16H18 M5 16V11H15V7H9V4H3V8.5H9",
        "hover-lap": "M3 3H6.5 M9 3H11.5 M14 3H17V6.5 M17 9V11.5 M17 14V17H13.5 M11 17H8.5 M6 17H3V13.5 M3 11V8.5 M3 6V3",
        "rehearsal": "M5 2.5H2.5V17.5H5 M15 2.5H17.5V17.5H15 M6.5 6H13.5V14H6.5Z",
        "island": "M7 6H13L15.5 10L13 14H7L4.5 10Z M10 1.8H16L18.3 6V14L16 18.2H4L1.7 14V6L4 1.8H7",
        "short": "M2 6.5H7V13.5H2Z M13 6.5H18V13.5H13Z M7 10H13",
        "lost": "M5 4H8 M11 4H15V7.5 M15 10.5V13.5 M15 16H12 M9 16H5V12.5 M5 9.5V6.5",
        "legend": "M3 5H13L17 10L13 15H3Z M6.5 12.5L8.7 7.5L10.9 12.5 M7.4 10.8H10",
        "link-wire": "M3 17V10C3 4 17 4 17 10V17 M1.5 17H4.5 M15.5 17H18.5",
        "tab": "M3 17V8C3 5 5 3 8 3H9.5 M12.5 3H17 M9.5 1.2V4.8 M12.5 1.2V4.8",
        "hold": "M7 4V16 M13 4V16",
        "resume": "M4.5 4V16 M9 4L16.5 10L9 16Z",
        "stop": "M4.5 4.5H15.5V15.5H4.5Z",
        "measure": "M2 10H18 M2 6V14 M18 6V14 M6 10V7.5 M10 10V6.5 M14 10V7.5",
        "setup-sheet": "M4.5 2H15.5V18H4.5Z M7.5 6H12.5 M7.5 9.3H12.5 M7.5 12.6H10.5",
        "at-rest": "M5 4.5H15A1.5 1.5 0 0 1 15.8 6V14A1.5 1.5 0 0 1 15 15.5H5A1.5 1.5 0 0 1 4.2 14V6A1.5 1.5 0 0 1 5 4.5Z",
        "moving": "M2 10H16 M11.5 5L16.8 10L11.5 15",
        "needs-you": "M10 2.5L18 10L10 17.5L2 10Z M10 6.5V10.8 M10 13.2V13.4",
        "not-connected": "M2 10H6 M14 10H18 M6 6V14 M14 6V14 M8.3 8L11.7 12 M11.7 8L8.3 12",
    }
)

APP_ICON = """<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 64 64">
<path d="M14 4H56A4 4 0 0 1 60 8V56A4 4 0 0 1 56 60H8A4 4 0 0 1 4 56V14Z" fill="#984516"/>
<circle cx="15.5" cy="15.5" r="3.4" fill="#F1F0EE"/>
<path d="M10 44C20 34 26 54 37 44" fill="none" stroke="#E8B792" stroke-width="4" stroke-linecap="round"/>
<path d="M36 44H54" fill="none" stroke="#E8B792" stroke-width="1.8" stroke-linecap="round" stroke-dasharray="3 4"/>
<path d="M30.5 9H43.5V26L37 44L30.5 26Z" fill="#F1F0EE"/>
<path d="M30.5 26H43.5" stroke="#984516" stroke-width="2"/>
</svg>
"""
"""The tag of a traveller in copper, a bit and the groove it has scratched."""


def svg(name: str, colour: str) -> str:
    """One icon as an SVG document in one colour."""
    return (
        '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 20 20">'
        f'<path d="{PATHS[name]}" fill="none" stroke="{colour}" stroke-width="1.6" '
        'stroke-linecap="round" stroke-linejoin="round"/></svg>'
    )


def paint_icon(painter: QPainter, name: str, colour: str, place: QRectF) -> None:
    """Draw an icon into a square place."""
    QSvgRenderer(QByteArray(svg(name, colour).encode())).render(painter, place)


def _icon(document: str, sizes: tuple[int, ...]) -> QIcon:
    renderer = QSvgRenderer(QByteArray(document.encode()))
    made = QIcon()
    for size in sizes:
        picture = QPixmap(size, size)
        picture.fill(Qt.GlobalColor.transparent)
        painter = QPainter(picture)
        renderer.render(painter)
        painter.end()
        made.addPixmap(picture)
    return made


def icon(name: str, colour: str) -> QIcon:
    """An icon in one colour, sharp at 100 to 300 %."""
    return _icon(svg(name, colour), (20, 30, 40, 60))


def app_icon() -> QIcon:
    """The program's own icon."""
    return _icon(APP_ICON, (16, 24, 32, 48, 64, 128, 256))
