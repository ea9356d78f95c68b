"""The form of a few plain words beside a setting."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Help:
    """Words beside one setting.

    Attributes
    ----------
    does : str
        What the setting does.
    wrong : str
        What happens if it is wrong.
    least, most : float or None
        Ends of what is usual, in ``unit``; None where a range makes no sense.
    unit : str
    """

    does: str
    wrong: str
    least: float | None = None
    most: float | None = None
    unit: str = "mm"

    @property
    def usual(self) -> str:
        """The usual range as a phrase, or an empty string."""
        if self.least is None or self.most is None:
            return ""
        span = f"{self.least:g}" if self.least == self.most else f"{self.least:g} to {self.most:g}"
        return f"Usual: {span} {self.unit}".rstrip() + "."

    @property
    def text(self) -> str:
        """All of it as one paragraph."""
        return " ".join(part for part in (self.does, self.usual, self.wrong) if part)
