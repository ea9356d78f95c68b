"""Wear: what each bit has cut over all jobs, and when to think of a new one."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace

from drypoint.wording import say

REPLACE_AT_MM = 20_000.0
"""mm a fine bit lasts in glass laminate before its cut widens (common practice, no source)."""
REPLACE_AT_HOLES = 1_500
"""Holes a small drill lasts (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class Use:
    """What one bit has done: mm cut and holes drilled, and after how much to look at it (0: never)."""

    length: float = 0.0
    holes: int = 0
    replace_at_mm: float = REPLACE_AT_MM
    replace_at_holes: int = REPLACE_AT_HOLES

    @property
    def worn(self) -> float:
        """Share of its life used: 1 and more means replace. A limit of 0 is none."""
        by_length = self.length / self.replace_at_mm if self.replace_at_mm > 0 else 0.0
        by_holes = self.holes / self.replace_at_holes if self.replace_at_holes > 0 else 0.0
        return max(by_length, by_holes)


@dataclass(frozen=True, slots=True)
class Wear:
    """Use by name of bit."""

    uses: Mapping[str, Use] = field(default_factory=dict)

    def of(self, name: str) -> Use:
        """Use of a bit; none yet if it is unknown."""
        return self.uses.get(name, Use())

    def after(self, name: str, *, length: float = 0.0, holes: int = 0) -> Wear:
        """The book with a run added."""
        use = self.of(name)
        new = replace(use, length=use.length + length, holes=use.holes + holes)
        return Wear({**self.uses, name: new})

    def limited(self, name: str, *, length: float | None = None, holes: int | None = None) -> Wear:
        """The book with other limits (mm, holes) for a bit."""
        use = self.of(name)
        new = replace(
            use,
            replace_at_mm=use.replace_at_mm if length is None else length,
            replace_at_holes=use.replace_at_holes if holes is None else holes,
        )
        return Wear({**self.uses, name: new})

    def renewed(self, name: str) -> Wear:
        """The book after a new bit of that name was put in."""
        return Wear({**self.uses, name: replace(self.of(name), length=0.0, holes=0)})

    def hints(self, share: float = 0.9) -> tuple[str, ...]:
        """Words for bits that have used ``share`` of their life."""
        return tuple(
            say(
                "{name} has cut {length:.1f} m and {holes} holes: look at it, replace it if it leaves burrs.",
                name=name,
                length=use.length / 1000.0,
                holes=use.holes,
            )
            for name, use in self.uses.items()
            if use.worn >= share
        )
