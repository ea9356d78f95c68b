"""The setup sheet: the page that lies beside the machine. Plain HTML, prints on A4, no Qt."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from html import escape

CAUTIONS = (
    "Keep the machine's power switch within reach. Stop in the program is a software stop; it is not an "
    "emergency stop.",
    "Eye protection on. No loose sleeves, hair or jewellery near the spindle. Hands away while anything "
    "turns.",
    "The blank is clamped flat and the clamps are where this sheet shows them.",
    "Contact clip off before the spindle starts.",
    "Dust of glass-fibre laminate irritates skin, eyes and airways: extract it at the bit or collect it wet; "
    "do not blow it about. Wear a fine-dust mask if it gets into the air.",
    "Do not leave the machine alone while it moves.",
    "The manuals of machine and material, local rules and the advice of qualified people come first.",
)


@dataclass(frozen=True, slots=True)
class WorkStep:
    """One line of the order of work."""

    title: str
    bit: str
    spindle: str
    feed: str
    minutes: str
    note: str = ""


@dataclass(frozen=True, slots=True)
class SheetFacts:
    """What stands on the sheet, as words."""

    title: str
    when: str
    facts: tuple[tuple[str, str], ...]
    work: tuple[WorkStep, ...]
    passes: tuple[tuple[str, ...], ...] = ()
    reference: tuple[tuple[str, ...], ...] = ()
    proof: tuple[tuple[str, str], ...] = ()
    findings: tuple[str, ...] = ()
    pictures: tuple[tuple[str, str], ...] = ()
    light: tuple[str, ...] = ()
    """Cautions for a step with laser light; none without one."""


_STYLE = """
@page { size: A4; margin: 14mm }
body { font: 14px/1.4 system-ui, 'DejaVu Sans', sans-serif; color: #1E1C1A; max-width: 60em;
       margin: 2em auto; padding: 0 1em; font-variant-numeric: tabular-nums }
h1 { font-size: 24px; margin: 0 }
h2 { font-size: 16px; margin: 1.6em 0 .4em; border-bottom: 1px solid #D6D3CE }
p.when { color: #57534E; margin: .2em 0 1em }
table { border-collapse: collapse; width: 100% } th, td { text-align: left; padding: .3em .8em .3em 0;
       border-bottom: 1px solid #E8E6E3; vertical-align: top } th { color: #57534E; font-weight: 600 }
td.n, th.n { text-align: right } ul { padding-left: 1.2em } li { margin: .25em 0 }
.caution { background: #FBF0D6; border-left: 4px solid #6B4A00; padding: .6em 1em; break-inside: avoid }
.pictures { display: grid; grid-template-columns: 1fr 1fr; gap: 1em }
figure { margin: 0; break-inside: avoid }
figure svg { width: 100%; height: auto; border: 1px solid #D6D3CE } figcaption { color: #57534E }
.box { display: inline-block; width: 1em; height: 1em; border: 1.5px solid #85817B; vertical-align: -0.15em }
"""


def _table(head: Sequence[str], rows: Sequence[Sequence[str]]) -> str:
    top = "".join(f"<th>{escape(cell)}</th>" for cell in head)
    body = "".join("<tr>" + "".join(f"<td>{escape(cell)}</td>" for cell in row) + "</tr>" for row in rows)
    return f"<table><thead><tr>{top}</tr></thead><tbody>{body}</tbody></table>"


def _section(title: str, content: str) -> str:
    return f"<h2>{escape(title)}</h2>{content}" if content else ""


def _list(items: Sequence[str]) -> str:
    return f"<ul>{''.join(f'<li>{escape(item)}</li>' for item in items)}</ul>" if items else ""


def setup_sheet(sheet: SheetFacts) -> str:
    """The whole page."""
    work = "".join(
        f'<tr><td><span class="box"></span></td><td>{number}</td><td><b>{escape(step.title)}</b>'
        f"{'<br>' + escape(step.note) if step.note else ''}</td><td>{escape(step.bit)}</td>"
        f'<td class="n">{escape(step.spindle)}</td><td class="n">{escape(step.feed)}</td>'
        f'<td class="n">{escape(step.minutes)}</td></tr>'
        for number, step in enumerate(sheet.work, 1)
    )
    order = (
        '<table><thead><tr><th></th><th></th><th>Step</th><th>Bit</th><th class="n">Spindle /min</th>'
        f'<th class="n">Feed mm/min</th><th class="n">Time</th></tr></thead><tbody>{work}</tbody></table>'
    )
    pictures = "".join(
        f"<figure>{picture}<figcaption>{escape(words)}</figcaption></figure>"
        for words, picture in sheet.pictures
    )
    parts = [
        f"<h1>{escape(sheet.title)}</h1><p class='when'>{escape(sheet.when)}</p>",
        f'<div class="caution"><b>Before anything turns</b>{_list(CAUTIONS)}</div>',
        *(
            [f'<div class="caution"><b>Before laser light</b>{_list(sheet.light)}</div>']
            if sheet.light
            else []
        ),
        _section("Board and blank", _table(("", ""), sheet.facts)),
        _section("Order of work", order),
        _section(
            "Passes",
            _table(("Pass", "Depth", "Length", "Expected through"), sheet.passes) if sheet.passes else "",
        ),
        _section(
            "Reference holes",
            _table(("Hole", "Design place", "Residual"), sheet.reference) if sheet.reference else "",
        ),
        _section("Proof", _table(("", ""), sheet.proof) if sheet.proof else ""),
        _section("To know", _list(sheet.findings)),
        _section("Pictures", f'<div class="pictures">{pictures}</div>' if pictures else ""),
    ]
    return (
        f'<!doctype html><html lang="en"><head><meta charset="utf-8"><title>{escape(sheet.title)}</title>'
        f"<style>{_STYLE}</style></head><body>{''.join(parts)}</body></html>"
    )


def clock(seconds: float) -> str:
    """Minutes and seconds for people: "6:10", or "1:02:30"."""
    whole = round(seconds)
    hours, rest = divmod(whole, 3600)
    minutes, left = divmod(rest, 60)
    return f"{hours}:{minutes:02d}:{left:02d}" if hours else f"{minutes}:{left:02d}"
