"""Contrast of two colours, W3C Web Content Accessibility Guidelines 2.2."""

from __future__ import annotations

TEXT = 4.5
"""Least contrast of text (success criterion 1.4.3)."""
GRAPHIC = 3.0
"""Least contrast of controls, graphics and large text (1.4.11, 1.4.3)."""


def luminance(colour: str) -> float:
    """Relative luminance of ``#RRGGBB``, 0 (black) to 1 (white); WCAG 2.2, section 6."""
    channels = [int(colour[i : i + 2], 16) / 255.0 for i in (1, 3, 5)]
    linear = [c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in channels]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def contrast(first: str, second: str) -> float:
    """Contrast ratio of two colours, 1 to 21; WCAG 2.2, section 6."""
    high, low = sorted((luminance(first), luminance(second)), reverse=True)
    return (high + 0.05) / (low + 0.05)
