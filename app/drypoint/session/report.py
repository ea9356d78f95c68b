"""What a command tells people, as a few plain lines."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from typing import Any

from drypoint.session.sheet import clock

MOST_LISTED = 20
"""Findings of a kind that are written out."""
Found = Mapping[str, Any]


def report(verb: str, found: Found) -> str:
    """The lines for one command's values."""
    say: dict[str, Callable[[Found], list[str]]] = {
        "prepare": _prepared,
        "rehearse": _rehearsed,
        "export": _exported,
        "show": _shown,
        "demo": _demo,
        "bits": _bits,
        "check": _checked,
        "coupon": lambda found: [*found["files"], *found["facts"]],
        "burn-grid": lambda found: [*found["files"], *found["facts"]],
    }
    return "\n".join(say[verb](found))


def _prepared(found: Found) -> list[str]:
    board, cuts = found["board"], found["cuts"]
    nets = f"{board['nets']} nets (by {board['net_source']})" if board["nets"] else "no copper data"
    lines = [
        f"{board['name']}: {board['width_mm']:.1f} × {board['height_mm']:.1f} mm, {board['side']} copper, "
        f"{nets}, {board['holes']} holes, {board['slots']} slots",
        *_placed(board["placed"]),
        f"Grooves: {cuts['loops']} loops, {cuts['groove_length_mm']:.0f} mm, "
        f"{cuts['groove_width_mm']:.3f} mm wide; largest bite {cuts['max_bite_mm']:.3f} mm",
        *_two_bits(cuts),
        *_found_by(found["second_side"]),
        f"Drills: {', '.join(f'{n} × {name}' for name, n in found['holes_by_drill'].items()) or 'none'}",
        _check("Island check of the plan", found["island_check"]),
        f"Expected time: {clock(found['estimate_s'])}, without touches and changes of bit",
    ]
    if cuts["impossible"]:
        lines.append(f"Gaps too narrow to cut: {len(cuts['impossible'])}")
        lines += [
            f"  {' and '.join(one['nets'])} at {one['at'][0]:.2f}, {one['at'][1]:.2f}: "
            f"gap {one['gap_mm']:.3f} mm. {one['hint']}"
            for one in cuts["impossible"][:MOST_LISTED]
        ]
    for title, kind in (("Thinned traces", "thinned"), ("Too close for their voltage", "too_close")):
        lines += _listed(title, cuts[kind])
    lines += [f"Note: {text}" for text in found["warnings"]]
    return [*lines, f"Job file: {found['job']}"]


def _found_by(second: Found | None) -> list[str]:
    """How well the second side will be found; nothing where one side is milled."""
    if second is None:
        return []
    own, with_tooling = second["expected95_mm"]["own_holes"], second["expected95_mm"]["with_tooling_holes"]
    holes = second["tooling_holes"]
    drilled = "none" if not holes else ", ".join(f"{one['name']} ({one['drill']})" for one in holes)
    lines = [f"Tooling holes for the second side: {drilled}"]
    far = "Error expected at the far corner of the second side (95 %)"
    if own is None and with_tooling is None:
        return [*lines, "The second side cannot be found: there are fewer than two holes"]
    told = "no two holes of the board" if own is None else f"{own:.3f} mm by holes of the board"
    if with_tooling is None:
        return [*lines, f"{far}: {told}"]
    pays = "" if holes or not second["tooling_pays"] else "; tooling holes pay (--tooling always)"
    return [*lines, f"{far}: {told}, {with_tooling:.3f} mm with tooling holes{pays}"]


def _two_bits(cuts: Found) -> list[str]:
    """What the wide bit cuts, and whether it pays."""
    two = cuts.get("two_bits")
    if two is None:
        return []
    lengths = f"{two['bit']}: {two['wide_length_mm']:.0f} mm, V-bit: {two['fine_length_mm']:.0f} mm"
    one, both = clock(two["one_bit_s"]), clock(two["two_bits_s"])
    if not two["pays"]:
        return [f"{lengths}. It does not pay: {both} with changes of the bit, {one} with one bit."]
    return [f"{lengths}. {clock(two['saved_s'])} saved: {both} with changes of the bit, {one} with one bit."]


def _checked(found: Found) -> list[str]:
    check = found["island_check"]
    deep = "as deep as it says" if found["depth_mm"] is None else f"{found['depth_mm']:.3f} mm deep"
    lines = [_check(f"{found['paths']}, {deep}", check)]
    lines += [
        f"  at {one['at'][0]:.2f}, {one['at'][1]:.2f}: {one['what']}"
        for kind in ("shorts", "opens", "lost")
        for one in check[kind][:MOST_LISTED]
    ]
    if "parted_from_mm" in found:
        lines.append(f"All that can be parted is parted from {found['parted_from_mm']:.3f} mm on")
    return lines


def _listed(title: str, flaws: Sequence[Found]) -> list[str]:
    """How many flaws of a kind there are, and the first of them with nets and place."""
    if not flaws:
        return []
    return [
        f"{title}: {len(flaws)}",
        *(
            f"  {' and '.join(one['nets'])} at {one['at'][0]:.2f}, {one['at'][1]:.2f}: {one['what']}"
            for one in flaws[:MOST_LISTED]
        ),
    ]


def _placed(placed: Sequence[Found]) -> list[str]:
    """A line for each of several boards."""
    if len(placed) < 2:
        return []
    return [
        f"Board {number}: {one['name']}, {one['width_mm']:.1f} × {one['height_mm']:.1f} mm at "
        f"{one['x_mm']:g}, {one['y_mm']:g} mm" + (f", turned {one['turn_deg']:g}°" if one["turn_deg"] else "")
        for number, one in enumerate(placed, 1)
    ]


def _check(title: str, check: Found) -> str:
    if not check["possible"]:
        return f"{title}: not possible without copper data"
    kinds = (("shorts", "short"), ("opens", "open"), ("lost", "lost"))
    faults = [
        f"{len(check[more])} {one if len(check[more]) == 1 else more}" for more, one in kinds if check[more]
    ]
    words = ", ".join(faults) if faults else "every net is an island"
    islands = "1 island" if check["pieces"] == 1 else f"{check['pieces']} islands"
    nets = "1 net" if check["nets"] == 1 else f"{check['nets']} nets"
    return f"{title}: {islands} for {nets}; {words}"


def _rehearsed(found: Found) -> list[str]:
    surface, fit = found["surface"], found["fit"]
    lines = [
        f"Surface: {surface['touches']} touches, {surface['rms_um']:.1f} µm off along the grooves, "
        f"90 % band holds {surface['interval90'] * 100:.0f} %",
        *(f"  {text}" for text in surface["give"]),
    ]
    lines += _passes(found["passes"])
    if fit["residual_mm"] is not None:
        worst = fit["worst_error_mm"]
        expected = "" if worst is None else f", expected error at most {worst:.3f} mm (95 %)"
        lines.append(f"Reference: {fit['holes']} holes, residual {fit['residual_mm']:.3f} mm{expected}")
    run = found["run"]
    lines.append(f"Run: {run['lines']} lines in {clock(run['seconds_simulated'])} of simulated time")
    lines.append(_check("Island check of the carved copper", found["island_check"]))
    lines += [*_second_side(found["second_side"]), *_legend(found["legend"])]
    return [*lines, *(f"Note: {text}" for text in found.get("findings", ()))]


def _passes(passes: Sequence[Found]) -> list[str]:
    return [
        f"Pass {number}: {one['depth_mm']:.3f} mm deep, {one['length_mm']:.0f} mm; through: predicted "
        f"{one['predicted_through'] * 100:.1f} %, carved {one['actual_through'] * 100:.1f} %"
        for number, one in enumerate(passes, 1)
    ]


def _second_side(found: Found | None) -> list[str]:
    """The other side; nothing where there is none."""
    if found is None:
        return []
    surface, fit, off = found["surface"], found["fit"], found["registration"]
    lines = [
        f"Second side, {found['side']}: {surface['touches']} touches, {surface['rms_um']:.1f} µm off along "
        f"the grooves, 90 % band holds {surface['interval90'] * 100:.0f} %",
        f"Found by {fit['holes']} drilled holes, residual {fit['residual_mm']:.3f} mm",
    ]
    if off["holes"]:
        lines.append(
            f"Holes off their pads: expected at most {off['expected95_mm']:.3f} mm (95 %), on the bench "
            f"{off['actual95_mm']:.3f} mm, worst {off['worst_mm']:.3f} mm of {off['holes']}"
        )
    lines += _passes(found["passes"])
    return [*lines, _check("Island check of the second side", found["island_check"])]


def _legend(found: Found | None) -> list[str]:
    """The legend by laser; nothing where none was marked."""
    if found is None:
        return []
    fit, place, pads, beam = found["fit"], found["place"], found["pads"], found["beam"]
    expected = "" if fit["expected95_mm"] is None else f", expected {fit['expected95_mm']:.3f} mm"
    return [
        f"Legend by laser: {found['made']} of {found['planned']} marks, none farther than "
        f"{place['after_fit_mm']:.3f} mm from where the fit puts it; {pads['marked']} on pads or holes, "
        f"the nearest {pads['nearest_mm']:.2f} mm away",
        f"Marks off their place among the holes: {place['actual95_mm']:.3f} mm (95 %){expected}",
        f"Beam on for {beam['seconds']:.1f} s, planned {beam['planned_seconds']:.1f} s; "
        f"{clock(found['seconds_simulated'])} in all",
    ]


def _exported(found: Found) -> list[str]:
    lines = [f"{one['path']}: {one['bit']}, {one['lines']} lines" for one in found["files"]]
    return [*lines, *(f"Note: {text}" for text in found["notes"])]


def _shown(found: Found) -> list[str]:
    lines = _prepared(found)
    lines += [f"{one['name']}: {one['role']} ({one['why']})" for one in found["files"]]
    lines += [
        f"{one['name']}: {one['used_as']}; {tool['use']} with {tool['bit'] or 'no bit chosen'}, "
        f"{tool['depth_mm']:.3f} mm deep"
        for one in found["ready_made"]
        for tool in one["tools"]
    ]
    lines += [f"Link wire {one['net']}: {one['length_mm']:.1f} mm" for one in found["links"]]
    if not found["links"]:
        lines += [
            f"Join both sides at {one['at'][0]:.2f}, {one['at'][1]:.2f}: {one['net']}"
            for one in found["rivets"]
        ]
    lines += [f"Measured: {count} × {kind}" for kind, count in found["measured"].items()]
    return [*lines, *(f"Run {one['title']}: {one['reason'] or 'broken off'}" for one in found["runs"])]


def _bits(found: Found) -> list[str]:
    lines = [
        f"{name}: {one['length_mm'] / 1000:.1f} m, {one['holes']} holes, {one['worn'] * 100:.0f} % of life"
        for name, one in found["bits"].items()
    ]
    return [*(lines or ["No bit has cut anything yet."]), *(f"Note: {hint}" for hint in found["hints"])]


def _demo(found: Found) -> list[str]:
    return [
        *_prepared({**found, "island_check": found["plan_check"]}),
        *_rehearsed(found),
        f"Programs, setup sheet and pictures: {found['folder']}",
    ]
