"""Colours that can be read and icons that can be told apart."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import QSize
from PySide6.QtWidgets import QLabel

from drypoint.ui.theme.contrast import GRAPHIC, TEXT, contrast
from drypoint.ui.theme.icons import APP_ICON, PATHS, app_icon, icon
from drypoint.ui.theme.sheet import give_look, style_sheet
from drypoint.ui.theme.theme import Theme
from drypoint.ui.theme.tokens import DARK, LIGHT, Tokens

TEXT_PAIRS = [
    (text, ground)
    for text in ("ink", "ink2", "copper")
    for ground in ("window", "panel", "sunken", "canvas", "soft")
] + [
    ("on_copper", "copper"),
    ("on_pressed", "pressed"),
    ("caution", "caution_ground"),
    ("error", "error_ground"),
    ("ink", "caution_ground"),
    ("ink", "error_ground"),
    ("panel", "ink"),
    ("ink2", "line"),
    ("ink", "blank"),
    ("reference", "blank"),
    ("reference", "panel"),
    ("reference", "canvas"),
]
GRAPHIC_PAIRS = [
    ("edge", "panel"),
    ("edge", "window"),
    ("edge", "canvas"),
    ("copper", "blank"),
    ("through", "net"),
    ("through", "blank"),
    ("through", "panel"),
    ("doubtful", "casing"),
    ("not_through", "casing"),
    ("ink", "net"),
]


@pytest.mark.parametrize(
    ("first", "second", "ratio"),
    [
        # black on white is 21:1 (WCAG 2.2, definition of contrast ratio)
        ("#000000", "#FFFFFF", 21.0),
        ("#FFFFFF", "#FFFFFF", 1.0),
    ],
)
def test_contrast_at_its_ends(first: str, second: str, ratio: float) -> None:
    assert contrast(first, second) == pytest.approx(ratio)


def test_contrast_at_the_well_known_edge() -> None:
    # #767676 is the lightest grey that passes 4.5:1 on white; follows from the formula of WCAG 2.2
    assert contrast("#767676", "#FFFFFF") > TEXT > contrast("#777777", "#FFFFFF")


@pytest.mark.parametrize("tokens", [LIGHT, DARK], ids=["light", "dark"])
@pytest.mark.parametrize("pair", TEXT_PAIRS, ids="-on-".join)
def test_text_is_readable(tokens: Tokens, pair: tuple[str, str]) -> None:
    assert contrast(getattr(tokens, pair[0]), getattr(tokens, pair[1])) >= TEXT


@pytest.mark.parametrize("tokens", [LIGHT, DARK], ids=["light", "dark"])
@pytest.mark.parametrize("pair", GRAPHIC_PAIRS, ids="-on-".join)
def test_graphics_are_seen(tokens: Tokens, pair: tuple[str, str]) -> None:
    assert contrast(getattr(tokens, pair[0]), getattr(tokens, pair[1])) >= GRAPHIC


@pytest.mark.parametrize("tokens", [LIGHT, DARK], ids=["light", "dark"])
def test_every_colour_of_the_sheet_is_a_token(tokens: Tokens) -> None:
    import re

    known = {getattr(tokens, name).upper() for name in tokens.__slots__ if name != "dark"}
    assert {c.upper() for c in re.findall(r"#[0-9A-Fa-f]{6}", style_sheet(tokens))} <= known


def test_scheme_changes_and_says_so(light: Theme, qtbot) -> None:
    with qtbot.waitSignal(light.changed):
        light.choose(True)
    assert light.tokens is DARK


def test_unknown_look_is_refused(light: Theme, qtbot) -> None:
    label = QLabel()
    qtbot.addWidget(label)
    with pytest.raises(KeyError):
        give_look(label, "fancy")


def test_icons_are_drawn_and_differ(light: Theme) -> None:
    seen: dict[bytes, str] = {}
    for name in PATHS:
        image = icon(name, light.tokens.ink2).pixmap(QSize(40, 40)).toImage()
        data = bytes(image.constBits())
        assert any(data), name
        assert data not in seen, (name, seen.get(data))
        seen[data] = name


def test_app_icon_is_the_one_installed(light: Theme) -> None:
    assert not app_icon().isNull()
    installed = Path(__file__).parents[2] / "resources" / "icons" / "drypoint.svg"
    assert installed.read_text() == APP_ICON
