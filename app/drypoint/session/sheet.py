"""The setup sheet: the page that lies beside the machine. Plain HTML, prints on A4, no Qt."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from html import escape

from drypoint.session.svg import Speak
from drypoint.wording import as_text, say

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
    surface: tuple[tuple[str, str], ...] = ()
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
.caution { background: #FBF0D6; border-left: 4px solid #6B4A00; break-inside: avoid }
.caution td { border: 0; padding: .6em 1em }
.pictures { display: grid; grid-template-columns: 1fr 1fr; gap: 1em }
figure { margin: 0; break-inside: avoid }
figure svg { width: 100%; height: auto; border: 1px solid #D6D3CE } figcaption { color: #57534E }
td.box { font-size: 20px; line-height: 1 }
"""


_HYPHEN = re.compile(r"(?<![\w-])-(?=\d)")
"""Where a number is negative; in names and dates a hyphen stays one."""


class _Page:
    """Pieces of the page, said in one language."""

    def __init__(self, speak: Speak) -> None:
        self._speak = speak

    def words(self, text: str) -> str:
        """A text in the page's language, safe within HTML."""
        return escape(_HYPHEN.sub("−", self._speak(as_text(text))))

    def table(self, head: Sequence[str], rows: Sequence[Sequence[str]]) -> str:
        """A table as wide as the page; without a head its first column is the head of each row."""
        if not rows:
            return ""
        top = "".join(f"<th>{self.words(cell)}</th>" for cell in head)
        body = "".join(
            "<tr>"
            + "".join(self._cell(cell, bold=not head and n == 0) for n, cell in enumerate(row))
            + "</tr>"
            for row in rows
        )
        above = f"<thead><tr>{top}</tr></thead>" if head else ""
        return f'<table width="100%">{above}<tbody>{body}</tbody></table>'

    def _cell(self, text: str, *, bold: bool) -> str:
        return f'<th width="32%">{self.words(text)}</th>' if bold else f"<td>{self.words(text)}</td>"

    def section(self, title: str, content: str) -> str:
        """A heading and what is below it; nothing without content."""
        return f"<h2>{self.words(title)}</h2>{content}" if content else ""

    def list(self, items: Sequence[str]) -> str:
        """Items, each with a dot."""
        return f"<ul>{''.join(f'<li>{self.words(item)}</li>' for item in items)}</ul>" if items else ""

    def caution(self, title: str, items: Sequence[str]) -> str:
        """What must be read first, on its own ground."""
        if not items:
            return ""
        return (
            '<table class="caution" width="100%" cellpadding="10"><tr><td bgcolor="#FBF0D6">'
            f"<b>{self.words(title)}</b>{self.list(items)}</td></tr></table>"
        )

    def order(self, work: Sequence[WorkStep]) -> str:
        """The steps in order, each with a box to tick."""
        head = "".join(
            f'<th class="n" align="right" width="{share}%">{self.words(name)}</th>'
            for name, share in ((say("Spindle /min"), 14), (say("Feed mm/min"), 15), (say("Time"), 12))
        )
        rows = "".join(
            f'<tr><td class="box">&#9744;</td><td>{number}</td><td><b>{self.words(step.title)}</b>'
            f"{'<br>' + escape(step.note) if step.note else ''}</td><td>{self.words(step.bit)}</td>"
            + "".join(
                f'<td class="n" align="right">{self.words(cell)}</td>'
                for cell in (step.spindle, step.feed, step.minutes)
            )
            + "</tr>"
            for number, step in enumerate(work, 1)
        )
        return (
            f'<table width="100%"><thead><tr><th width="4%"></th><th width="5%"></th><th width="32%">'
            f"{self.words(say('Step'))}</th>"
            f'<th width="17%">{self.words(say("Bit"))}'
            f"</th>{head}</tr></thead><tbody>{rows}</tbody></table>"
        )

    def figures(self, pictures: Sequence[tuple[str, str]]) -> str:
        """Pictures with their words."""
        drawn = "".join(
            f"<figure>{picture}<figcaption>{self.words(words)}</figcaption></figure>"
            for words, picture in pictures
        )
        return f'<div class="pictures">{drawn}</div>' if drawn else ""


def setup_sheet(sheet: SheetFacts, speak: Speak = str) -> str:
    """The whole page; ``speak`` says its texts in the language of the reader."""
    page = _Page(speak)
    title = page.words(sheet.title)
    parts = [
        f"<h1>{title}</h1><p class='when'>{page.words(sheet.when)}</p>",
        page.caution(say("Before anything turns"), CAUTIONS),
        page.caution(say("Before laser light"), sheet.light),
        page.section(say("Board and blank"), page.table((), sheet.facts)),
        page.section(say("Order of work"), page.order(sheet.work)),
        page.section(say("Surface"), page.table((), sheet.surface)),
        page.section(
            say("Passes"),
            page.table((say("Pass"), say("Depth"), say("Length"), say("Through, expected")), sheet.passes),
        ),
        page.section(
            say("Reference holes"),
            page.table((say("Hole"), say("Design place"), say("Touched"), say("Residual")), sheet.reference),
        ),
        page.section(say("Proof"), page.table((), sheet.proof)),
        page.section(say("To know"), page.list(sheet.findings)),
        page.section(say("Pictures"), page.figures(sheet.pictures)),
    ]
    return (
        f'<!doctype html><html><head><meta charset="utf-8"><title>{title}</title>'
        f"<style>{_STYLE}</style></head><body>{''.join(parts)}</body></html>"
    )


def clock(seconds: float) -> str:
    """Minutes and seconds for people: "6:10", or "1:02:30"."""
    whole = round(seconds)
    hours, rest = divmod(whole, 3600)
    minutes, left = divmod(rest, 60)
    return f"{hours}:{minutes:02d}:{left:02d}" if hours else f"{minutes}:{left:02d}"
