"""The bits a user owns: defaults to start from, and the list as text in the job and settings."""

from __future__ import annotations

import json
import math
from dataclasses import asdict, dataclass, replace
from typing import Any

from drypoint.bits.model import Bit, Drill, EndMill, Speeds, VBit
from drypoint.errors import InputError
from drypoint.wording import say

SOURCE = "common practice"
"""What the default speeds rest on: there is no published table for such small spindles."""

DRILLS = (0.5, 0.6, 0.7, 0.8, 0.9, 1.0, 1.1, 1.2, 1.3, 1.5)
"""mm; sizes usually sold for boards (common practice, no source)."""
KINDS: dict[str, type[VBit] | type[EndMill] | type[Drill]] = {
    "v-bit": VBit,
    "end mill": EndMill,
    "drill": Drill,
}


@dataclass(frozen=True, slots=True)
class Library:
    """The bits at hand. ``speeds_source`` says what the speeds rest on."""

    vbits: tuple[VBit, ...]
    drills: tuple[Drill, ...]
    mills: tuple[EndMill, ...]
    speeds_source: str = SOURCE

    @property
    def bits(self) -> tuple[Bit, ...]:
        """All of them, V-bits first."""
        return (*self.vbits, *self.mills, *self.drills)

    def find(self, name: str) -> Bit:
        """The bit of that name.

        Raises
        ------
        InputError
            If there is none.
        """
        for bit in self.bits:
            if bit.name == name:
                return bit
        known = ", ".join(bit.name for bit in self.bits)
        raise InputError(
            say("There is no bit named '{name}'.", name=name),
            "bits",
            say("Known bits: {known}.", known=known),
        )

    def with_bit(self, bit: Bit) -> Library:
        """The library with a bit added, or the one of its name replaced."""
        rest = self.without(bit.name)
        if isinstance(bit, VBit):
            return replace(rest, vbits=(*rest.vbits, bit))
        if isinstance(bit, EndMill):
            return replace(rest, mills=tuple(sorted((*rest.mills, bit), key=lambda m: m.diameter)))
        return replace(rest, drills=tuple(sorted((*rest.drills, bit), key=lambda d: d.diameter)))

    def without(self, name: str) -> Library:
        """The library without the bit of that name."""
        return replace(
            self,
            vbits=tuple(bit for bit in self.vbits if bit.name != name),
            drills=tuple(bit for bit in self.drills if bit.name != name),
            mills=tuple(bit for bit in self.mills if bit.name != name),
        )


def default_library() -> Library:
    """Bits of the usual sizes with cautious speeds for a small engraver (common practice)."""
    vbits = tuple(
        VBit(
            f"V-bit {angle}° {tip:.1f}",
            tip,
            math.radians(angle),
            Speeds(spindle=10_000.0, feed=200.0, plunge=60.0),
            runout=0.02,
        )
        for angle, tip in ((30, 0.1), (20, 0.1), (45, 0.1), (60, 0.1), (30, 0.2))
    )
    drills = tuple(
        Drill(f"Drill {size:.1f}", size, Speeds(10_000.0, 60.0, 60.0), peck=0.0 if size > 0.7 else 0.8)
        for size in DRILLS
    )
    mills = tuple(
        EndMill(f"End mill {size:.1f}", size, Speeds(10_000.0, 120.0, 40.0), step=size / 4.0)
        for size in (0.8, 1.0, 1.5, 2.0)
    )
    return Library(vbits, drills, mills)


def bit_to_dict(bit: Bit) -> dict[str, Any]:
    """A bit as plain values; angles in radians, lengths in mm."""
    kind = next(word for word, cls in KINDS.items() if isinstance(bit, cls))
    return {"kind": kind, **asdict(bit)}


def bit_from_dict(values: dict[str, Any]) -> Bit:
    """The bit those values describe.

    Raises
    ------
    InputError
        If the kind is unknown or a value is missing, unknown or makes no sense.
    """
    rest = dict(values)
    kind = str(rest.pop("kind", ""))
    name = str(rest.get("name", kind))
    if kind not in KINDS:
        raise InputError(
            say("There is no kind of bit called '{kind}'.", kind=kind),
            name,
            say("Use one of: {kinds}.", kinds=", ".join(KINDS)),
        )
    try:
        speeds = Speeds(**{word: float(value) for word, value in dict(rest.pop("speeds")).items()})
        rest.pop("name", None)
        numbers: dict[str, Any] = {word: float(value) for word, value in rest.items()}
        bit = KINDS[kind](name=name, speeds=speeds, **numbers)
    except (KeyError, TypeError, ValueError) as fault:
        raise InputError("The bit's values cannot be read.", name, str(fault)) from fault
    check_bit(bit)
    return bit


def check_bit(bit: Bit) -> None:
    """Refuse a bit that cannot exist.

    Raises
    ------
    InputError
        If a size, angle or speed makes no sense.
    """
    sizes = {"feed": bit.speeds.feed, "plunge": bit.speeds.plunge, "spindle speed": bit.speeds.spindle}
    if isinstance(bit, VBit):
        if not 0.0 < bit.angle < math.pi:
            raise InputError("The included angle must lie between 0° and 180°.", bit.name)
        if not (bit.tip >= 0.0 and bit.runout >= 0.0):
            raise InputError("Tip width and run-out cannot be below 0.", bit.name)
    else:
        sizes["diameter"] = bit.diameter
    if isinstance(bit, EndMill):
        sizes["step"] = bit.step
    for what, value in sizes.items():
        if not (math.isfinite(value) and value > 0.0):
            raise InputError(say("The {what} must be more than 0.", what=what), bit.name)


def to_json(library: Library) -> str:
    """The library as JSON text."""
    return json.dumps(
        {"speeds_source": library.speeds_source, "bits": [bit_to_dict(bit) for bit in library.bits]}, indent=1
    )


def from_json(text: str) -> Library:
    """The library in a JSON text made by `to_json`.

    Raises
    ------
    InputError
        If the text is no such library.
    """
    try:
        values = json.loads(text)
        bits = [bit_from_dict(item) for item in values["bits"]]
        source = str(values.get("speeds_source", ""))
    except (json.JSONDecodeError, KeyError, TypeError, AttributeError) as fault:
        raise InputError("The list of bits cannot be read.", "bits", str(fault)) from fault
    return Library(
        tuple(bit for bit in bits if isinstance(bit, VBit)),
        tuple(bit for bit in bits if isinstance(bit, Drill)),
        tuple(bit for bit in bits if isinstance(bit, EndMill)),
        source,
    )
