"""The colours of the window by what they are for, light and dark. No Qt here."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Tokens:
    """One scheme. Every value is ``#RRGGBB``."""

    dark: bool
    window: str
    panel: str
    sunken: str
    line: str
    """Decoration only: never the sole mark of a control."""
    edge: str
    ink: str
    ink2: str
    off: str
    copper: str
    on_copper: str
    soft: str
    caution: str
    caution_ground: str
    error: str
    error_ground: str
    canvas: str
    blank: str
    net: str
    through: str
    doubtful: str
    not_through: str
    casing: str
    """Dark band under the two doubtful kinds of reach, so that both are seen on any copper."""
    reference: str
    pressed: str
    """Ground of a chosen segment."""
    on_pressed: str
    band: str
    """Uncertainty round a profile."""


LIGHT = Tokens(
    dark=False,
    window="#F1F0EE",
    panel="#FFFFFF",
    sunken="#E8E6E3",
    line="#D6D3CE",
    edge="#85817B",
    ink="#1E1C1A",
    ink2="#57534E",
    off="#8C8882",
    copper="#984516",
    on_copper="#FFFFFF",
    soft="#F6E9DF",
    caution="#6B4A00",
    caution_ground="#FBF0D6",
    error="#9A3412",
    error_ground="#FBE9E1",
    canvas="#F7F6F4",
    blank="#EFE4DA",
    net="#DFC3AC",
    through="#0072B2",
    doubtful="#F0E442",
    not_through="#D55E00",
    casing="#2A211A",
    reference="#00694D",
    pressed="#57534E",
    on_pressed="#FFFFFF",
    band="#B9D7EA",
)

DARK = Tokens(
    dark=True,
    window="#1A1918",
    panel="#242220",
    sunken="#121110",
    line="#3B3835",
    edge="#85807A",
    ink="#EFECE8",
    ink2="#B9B4AD",
    off="#7E7973",
    copper="#E59A68",
    on_copper="#1A1918",
    soft="#3A2A1F",
    caution="#F2CF7A",
    caution_ground="#372C12",
    error="#FF9E73",
    error_ground="#3B2117",
    canvas="#161514",
    blank="#2A231E",
    net="#674935",
    through="#56B4E9",
    doubtful="#F0E442",
    not_through="#D55E00",
    casing="#0C0B0A",
    reference="#3CCF9F",
    pressed="#B9B4AD",
    on_pressed="#1A1918",
    band="#23475C",
)

CATEGORIES = (
    "#0072B2",
    "#E69F00",
    "#009E73",
    "#CC79A7",
    "#56B4E9",
    "#D55E00",
    "#F0E442",
)
"""Okabe and Ito's palette for colour-blind readers, without black; drawn with ink outlines."""
