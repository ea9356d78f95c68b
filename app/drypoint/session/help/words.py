"""The form of a few plain words beside a setting."""

from __future__ import annotations

from dataclasses import dataclass

from drypoint.wording import reword, say, strung


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

    def __post_init__(self) -> None:
        reword(self, "does", "wrong")

    @property
    def usual(self) -> str:
        """The usual range as a phrase, or an empty string."""
        if self.least is None or self.most is None:
            return ""
        unit = f" {self.unit}" if self.unit else ""
        if self.least == self.most:
            return say("Usual: {most:g}{unit}.", most=float(self.most), unit=unit)
        return say(
            "Usual: {least:g} to {most:g}{unit}.", least=float(self.least), most=float(self.most), unit=unit
        )

    @property
    def text(self) -> str:
        """All of it as one paragraph."""
        return strung((self.does, self.usual, self.wrong))
