"""Roles by file name and by the titles that programs write into comments: the last resort."""

from __future__ import annotations

import re

from drypoint.board.model import Role

_EXTENSIONS = {  # common practice, no source
    "gtl": Role.COPPER_TOP, "cmp": Role.COPPER_TOP, "top": Role.COPPER_TOP,
    "gbl": Role.COPPER_BOTTOM, "sol": Role.COPPER_BOTTOM, "bot": Role.COPPER_BOTTOM,
    "gto": Role.LEGEND_TOP, "plc": Role.LEGEND_TOP,
    "gbo": Role.LEGEND_BOTTOM, "pls": Role.LEGEND_BOTTOM,
    "gts": Role.OTHER, "gbs": Role.OTHER, "gtp": Role.OTHER, "gbp": Role.OTHER,
    "stc": Role.OTHER, "sts": Role.OTHER, "crc": Role.OTHER, "crs": Role.OTHER,
    "gko": Role.OUTLINE, "gm1": Role.OUTLINE, "gml": Role.OUTLINE, "oln": Role.OUTLINE, "dim": Role.OUTLINE,
}  # fmt: skip

_LEAD, _TAIL = r"(?<![a-z])", r"(?![a-z])"
_NOT_USED = re.compile(
    r"drill[-_ .]?(map|draw|leg|guide)|drl[-_ .]?map|drillmap|mask|paste|stencil|courtyard|adhes|glue|assembl"
    rf"|{_LEAD}(fab|stop|cream|sm[cst]|spt|spb|dwgs?|comments?|eco\d?|margin|drawing|notes|keepin){_TAIL}"
)
_OUTLINE = re.compile(
    rf"edge[-_ .]?cuts?|out?l+ine|profile"
    rf"|{_LEAD}(contour|border|dimensions?|board[-_ ]?edge|keep[-_ ]?out|route){_TAIL}"
)
_LEGEND = re.compile(r"silk|legend|overlay|nomenclature|placement|marking|bestueck")
_INNER = re.compile(
    rf"{_LEAD}(in(ner)?[-_ .]?\d+|mid[-_ ]?\d+|inner|plane|pwr\d*|gnd\d+){_TAIL}|{_LEAD}g[12345]$"
)
_TOP = re.compile(rf"top|front|{_LEAD}(f|component[-_ ]?side|comp|l1|layer[-_ ]?1|lyr[-_ ]?1){_TAIL}(?!\d)")
_BOTTOM = re.compile(rf"bot|back|{_LEAD}(b|solder[-_ ]?side|sold){_TAIL}")
_COPPER = re.compile(rf"copper|etch|signal|{_LEAD}(cu|layer|lyr)|cu{_TAIL}")
_NUMBERED = re.compile(rf"{_LEAD}(?:lyr|layer|l)[-_ ]?(\d+)(?!\d)")


def role_of_name(name: str) -> Role | None:
    """The role a name or title tells; None if it tells none."""
    base = re.sub(r"([a-z])([A-Z])", r"\1_\2", name.rsplit("/", 1)[-1]).lower()
    stem, _, extension = base.rpartition(".")
    stem = stem or extension
    if _NOT_USED.search(stem):
        return Role.OTHER
    if (by_extension := _EXTENSIONS.get(extension)) is not None:
        return by_extension
    return _by_words(stem)


def _by_words(stem: str) -> Role | None:
    if _OUTLINE.search(stem):
        return Role.OUTLINE
    top, bottom = _TOP.search(stem), _BOTTOM.search(stem)
    if top is not None and bottom is not None:  # the word nearest the end is the layer's
        top, bottom = (top, None) if top.start() > bottom.start() else (None, bottom)
    if _LEGEND.search(stem):
        return Role.LEGEND_BOTTOM if bottom else Role.LEGEND_TOP
    if _INNER.search(stem):
        return Role.COPPER_INNER
    if top is not None:
        return Role.COPPER_TOP
    return Role.COPPER_BOTTOM if bottom is not None else None


def layer_number(name: str) -> int | None:
    """The number of a copper layer named by number only, such as ``lyr10``."""
    base = re.sub(r"([a-z])([A-Z])", r"\1_\2", name.rsplit("/", 1)[-1]).lower().rpartition(".")[0]
    match = _NUMBERED.search(base)
    return int(match[1]) if match and not _NOT_USED.search(base) else None


_TITLES = (
    re.compile(r"%LN([^*%]+)\*"),
    re.compile(
        r"G0?4\s+(?:Layer|Title|Film Name|Layer_Physical|Layer Name)\s*:?\s*([^*\r\n]+)", re.IGNORECASE
    ),
)


def role_of_titles(text: str) -> tuple[Role, str] | None:
    """The role that titles in the file's own comments tell, and the title."""
    for pattern in _TITLES:
        for match in pattern.finditer(text[:4000]):
            title = match[1].strip()
            role = role_of_name(title.rsplit(",", 1)[-1].strip().replace(" ", "_") + ".x")
            if role is not None:
                return role, title
    return None
