"""What a person reads from the coupon, in whatever order and as much as there is, and its use."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field

from drypoint.bits.model import VBit
from drypoint.bits.width_coupon import Evaluation, Parted, Ridge, Width
from drypoint.cuts.coupon import plan_coupon
from drypoint.cuts.depth_coupon import plan_depth_coupon
from drypoint.session.actions.coupon import read_coupon
from drypoint.session.session import Session


@dataclass(frozen=True, slots=True)
class Lines:
    """What can be read of the coupon of a bit, mm.

    Attributes
    ----------
    widths : depth and expected width of each line
    squares : depths of the squares
    ridges : planned widths of the ridges, all cut at ``ridge_depth``
    """

    widths: tuple[tuple[float, float], ...]
    squares: tuple[float, ...]
    ridges: tuple[float, ...]
    ridge_depth: float


def lines_of(bit: VBit) -> Lines:
    """The lines of the coupon as it is cut with a bit."""
    pattern = plan_coupon(bit)
    single = [cut for cut in pattern.cuts if cut.label.startswith("width")]
    paired = [cut for cut in pattern.cuts if cut.label.startswith("ridge")]
    gaps = dict.fromkeys(pattern.expected[cut.label] for cut in paired)
    return Lines(
        tuple((cut.depth, pattern.expected[cut.label]) for cut in single),
        tuple(cut.depth for cut in plan_depth_coupon(bit).cuts),
        tuple(gaps),
        paired[0].depth,
    )


@dataclass(frozen=True, slots=True)
class Readings:
    """What was read so far: width by depth; whether a square is parted; whether a ridge stands."""

    widths: Mapping[float, float] = field(default_factory=dict)
    squares: Mapping[float, bool] = field(default_factory=dict)
    ridges: Mapping[float, bool] = field(default_factory=dict)

    @property
    def any(self) -> bool:
        """Whether anything was read."""
        return bool(self.widths or self.squares or self.ridges)


def readings(
    widths: Sequence[tuple[float, float]] = (),
    parted: Sequence[float] = (),
    joined: Sequence[float] = (),
    stands: Sequence[float] = (),
    gone: Sequence[float] = (),
) -> Readings:
    """Readings from lists as they are typed."""
    return Readings(
        dict(widths),
        {**dict.fromkeys(parted, True), **dict.fromkeys(joined, False)},
        {**dict.fromkeys(stands, True), **dict.fromkeys(gone, False)},
    )


def evaluate_readings(session: Session, read: Readings) -> Evaluation:
    """What the readings say of the job's V-bit; nothing is changed.

    Raises
    ------
    InputError
        Nothing was read, or a value makes no sense.
    """
    deep = lines_of(session.settings.bits.vbit).ridge_depth
    return read_coupon(
        session,
        [Width(depth, width) for depth, width in read.widths.items()],
        [Parted(depth, through) for depth, through in read.squares.items()],
        [Ridge(deep, gap, stands) for gap, stands in read.ridges.items()],
    )
