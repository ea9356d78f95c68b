"""What is known of the board's place, computed for the page and the panel; and how it is put in words."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass, replace

import numpy as np
from PySide6.QtCore import QCoreApplication

from drypoint.cuts.model import Cut
from drypoint.reference import gross
from drypoint.reference.affine import LEAST_HOLES
from drypoint.reference.explain import explain
from drypoint.reference.fit import Fit, fit_rigid
from drypoint.reference.worth import Advice, Ring
from drypoint.session import holes
from drypoint.session.actions import find
from drypoint.session.holes import Candidate
from drypoint.session.session import Session
from drypoint.ui.canvas.describe import describe
from drypoint.ui.canvas.hover import Card
from drypoint.ui.canvas.pick import Picked
from drypoint.ui.jog.reference import HoleLine
from drypoint.ui.language.words import fill, local, told
from drypoint.ui.parts.glyph import Mark
from drypoint.wording import say

LITTLE = 0.01
"""A further hole that gains less than this is not worth its time, mm."""


@dataclass(frozen=True, slots=True, eq=False)
class Found:
    """What is known of the board's place.

    ``coming`` is the hole that helps most, ``advice`` what it gains; ``mixed`` are touched holes that
    were drilled in another clamping than the rest; ``turned_alike`` says that the touched holes fit
    themselves turned about. ``ring`` is the tightest of ``rings``, which go by the number of the hole.
    """

    all_holes: tuple[Candidate, ...]
    suggested: tuple[str, ...]
    touched: Mapping[str, tuple[float, float]]
    residuals: Mapping[str, float]
    fit: Fit | None
    setup: int
    ring: Ring | None
    rings: Mapping[int, Ring]
    check: gross.Check | None
    coming: str | None
    advice: Advice | None
    diagnosis: tuple[str, ...]
    mixed: tuple[str, ...]
    turned_alike: bool
    stale: bool

    def cut(self, name: str) -> Cut | None:
        """The hole of that name."""
        return next((one.cut for one in self.all_holes if one.label == name), None)


def look_at(session: Session) -> Found:
    """Everything the page and the panel say. Computes."""
    snap, derived = session.snapshot, session.derived
    known = holes.candidates(derived, snap)
    records = [one.data for one in snap.records["reference"] if one.data["setup"] == snap.setup]
    touched = {one["label"]: (one["touched"][0], one["touched"][1]) for one in records}
    facts = find.fit_facts(session, snap)
    fit, check = facts.fit, None
    residuals: dict[str, float] = {}
    diagnosis: tuple[str, ...] = ()
    if fit is not None:
        labels = [one["label"] for one in records]
        residuals = dict(zip(labels, (float(v) for v in fit.distances), strict=True))
        rigid = fit_rigid(fit.design, fit.touched, mirror=fit.mirror, sigma=fit.sigma)
        names = [say("hole {name}", name=label) for label in labels]
        check = gross.check(rigid, names=names, holes=[one.at for one in known])
        if len(labels) >= 3:
            approach = np.array([one.get("approach", (0, 0)) for one in records], dtype=np.float64)
            both = bool((np.ptp(np.sign(approach), axis=0) > 1).any())
            found = explain(rigid, approach if both else None)
            diagnosis = tuple(one.what for one in found if one.significant)
    coming, advice = holes.following(derived, snap, known, touched, fit)
    last = snap.latest("touches")
    return Found(
        all_holes=known,
        suggested=tuple(one.label for one in holes.suggested(derived, snap, known)),
        touched=touched,
        residuals=residuals,
        fit=fit,
        setup=snap.setup,
        ring=None if facts.worth is None else facts.worth.worst,
        rings={} if facts.worth is None else {ring.hole: ring for ring in facts.worth.rings},
        check=check,
        coming=None if coming is None else coming.label,
        advice=advice,
        diagnosis=diagnosis,
        mixed=holes.mixed(known, touched),
        turned_alike=fit is not None and len(fit.design) > 2 and bool(gross.symmetries(fit.design)),
        stale=last is not None and last.data["setup"] != snap.setup,
    )


def tr(text: str) -> str:
    """In the language of the window."""
    return QCoreApplication.translate("found", text)


def lines(found: Found, *, all_of_them: bool, coming: str | None) -> tuple[HoleLine, ...]:
    """Holes as they are listed: those touched and suggested, or all."""
    wanted = {*found.touched, *found.suggested, coming}
    shown = [one for one in found.all_holes if all_of_them or one.label in wanted]
    return tuple(_line(found, one, coming) for one in shown)


def _line(found: Found, one: Candidate, coming: str | None) -> HoleLine:
    state = Mark.DONE if one.label in found.touched else Mark.TO_DO
    if found.check is not None and one.label in named(found):
        state = Mark.ERROR
    elif one.label == coming and state is Mark.TO_DO:
        state = Mark.READY
    what = local(f"{one.cut.diameter:.1f} mm") if not one.mark else ""
    return HoleLine(one.label, one.at, found.residuals.get(one.label), state, what)


def named(found: Found) -> tuple[str, ...]:
    """Holes that the check names."""
    labels = list(found.residuals)
    return () if found.check is None else tuple(labels[k] for k in found.check.holes if k < len(labels))


def spare(touched: int) -> str:
    """What the holes leave to check by."""
    match touched:
        case 0 | 1 | 2:
            return tr("{n} holes, only their distance tells errors").format(n=touched)
        case 3:
            return tr("3 holes, one to spare")
        case _:
            return tr("{n} holes, {s} to spare").format(n=touched, s=touched - 2)


def needed(found: Found) -> bool:
    """Whether a further hole is worth its time."""
    gain, ring = found.advice, found.ring
    return gain is None or gain.gain >= LITTLE or (ring is not None and ring.left <= 0.0)


def advice_words(found: Found, coming: str | None) -> tuple[str, str]:
    """Whether to touch another, and what it gains."""
    if coming is None:
        return "", ""
    gain = found.advice
    if gain is None or coming != found.coming:
        if not found.touched and found.setup == 1:
            why = tr("Not needed while the board lies as it was laid and zero was set at its corner.")
        else:
            why = tr("Far apart is best: the turn is found more sharply.")
        return tr("Touch {name} next").format(name=coming), why
    values = {"name": coming, "now": gain.now, "then": gain.then}
    if not needed(found):
        text = tr("{name} would lower the worst expected error from {now:.3f} to {then:.3f} mm only.")
        return tr("No further hole is needed"), fill(text, **values)
    text = tr("It lowers the worst expected error from {now:.2f} to {then:.2f} mm.")
    return tr("Touch {name} next").format(name=coming), fill(text, **values)


def fit_rows(found: Found) -> tuple[tuple[str, str], ...]:
    """What the fit says, row by row."""
    fit = found.fit
    if fit is None:
        return ()
    spread = math.degrees(fit.angle_sigma())
    scale = tr("Scale, not used") if fit.stretch is None else tr("Scale, corrected")
    rows = [
        (tr("Turned"), local(f"{math.degrees(fit.angle):+.2f}° ± {spread:.2f}°")),
        (tr("Origin at"), local(f"{fit.offset[0]:.3f}, {fit.offset[1]:.3f} mm")),
        (scale, local(f"{fit.scale:.4f} ± {fit.scale_sigma:.4f}")),
    ]
    if fit.mirror:
        rows.append((tr("Side"), tr("mirrored: seen from below")))
    if found.check is not None and found.check.distance_error is not None:
        rows.append((tr("Distance is off by"), local(f"{found.check.distance_error:+.3f} mm")))
    return tuple((name, value.replace("-", "−")) for name, value in rows)


def worst_rows(found: Found) -> tuple[tuple[str, str], ...]:
    """The tightest hole, by name."""
    ring = found.ring
    if ring is None:
        return ()
    designed = fill(tr("ring {r:.2f} mm"), r=ring.designed)
    name = fill(tr("H{number} at {x:.2f}, {y:.2f}"), number=ring.hole + 1, x=ring.at[0], y=ring.at[1])
    return (
        (name, designed),
        (tr("Expected error"), local(f"{ring.expected:.3f} mm")),
        (tr("Ring left, 95 %"), local(f"{ring.left:.2f} mm").replace("-", "−")),
    )


def card(found: Found | None, thing: Picked) -> Card:
    """The hover card: at a hole, its expected error and the ring that is left."""
    plain = describe(thing)
    ring = None if found is None or thing.kind != "hole" else found.rings.get(thing.index)
    if ring is None:
        return plain
    rows = (
        (tr("Expected error"), local(f"{ring.expected:.3f} mm")),
        (tr("Ring left, 95 %"), local(f"{ring.left:.2f} mm").replace("-", "−")),
    )
    return replace(plain, rows=(*plain.rows[:2], *rows))


def may_stretch(found: Found) -> bool:
    """Whether there are holes enough to correct scale and squareness."""
    return found.fit is not None and len(found.fit.design) >= LEAST_HOLES


def trouble(found: Found) -> tuple[str, str]:
    """What is wrong, and what to do."""
    check = found.check
    if check is not None and check.verdict is not gross.Verdict.FITS:
        other = [found.all_holes[k].label for _, k in check.maybe[:3]]
        text = told(check.what)
        if other:
            text += " " + tr("Was {names} touched instead?").format(names=", ".join(other))
        return tr("A hole may be wrong"), text
    if found.fit is None and found.setup > 1:
        return tr("Where the board lies is not known"), tr(
            "It was moved. Touch two reference holes, better three; nothing is run before."
        )
    if found.ring is not None and found.ring.left <= 0.0:
        text = tr("At H{number} the hole may break out of its pad. Touch another hole, or one more surely.")
        return tr("A ring may be lost"), text.format(number=found.ring.hole + 1)
    if found.mixed:
        text = tr("{names} was drilled in another clamping: between them stands the error of the fit then.")
        return tr("Holes of different clampings"), text.format(names=", ".join(found.mixed))
    if found.turned_alike:
        return tr("These holes look alike turned about"), tr(
            "Nothing but your word tells which is which. Use holes that lie unevenly, or look twice."
        )
    if found.stale:
        return tr("Surface and passes are stale"), tr(
            "Heights were touched before the board was moved. Drilling and the outline carry them along; "
            "touch the copper again before the next pass."
        )
    return "", ""
