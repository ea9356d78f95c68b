"""Which file is what: by what it says itself, then the job file, then its name; else it is asked."""

from __future__ import annotations

import json
import re
from collections.abc import Mapping
from dataclasses import replace

from drypoint.board.model import LayerFile, Role
from drypoint.board.role_names import layer_number, role_of_name, role_of_titles
from drypoint.wording import say

_HEAD = 20_000
_FUNCTION = re.compile(r"TF\.FileFunction\s*,([^*%\r\n]*)")
_GERBER = re.compile(r"%\s*(FS|MO|AD|AM|TF|LP|LN|IN)|[XY]-?\d+D0?[123]\*|G0?4[^*\r\n]*\*")
_DRILL = re.compile(r"^M48|^T\d+C[\d.]+|^;\s*T\d+\s+Holesize|^(METRIC|INCH)\b", re.MULTILINE)
_DRILL_PLACE = re.compile(r"^(G0?[01])?[XY][+-]?\d+\.?\d*(Y[+-]?\d+\.?\d*)?\s*$", re.MULTILINE)
_ROUTING = re.compile(r"^M1[567][ \t\r]*$", re.MULTILINE)
_NETLIST = re.compile(r"^[03][1267]7.{14}", re.MULTILINE)
_GCODE = re.compile(r"^[ \t]*(N\d+[ \t]*)?(G\d+|[XYZF])[^*\n]*\d", re.MULTILINE | re.IGNORECASE)
_GCODE_Z = re.compile(r"\bG0*[0-3]\b.*Z|^Z-?\.?\d|G0*[0-3][^\n]*Z-?\.?\d", re.MULTILINE | re.IGNORECASE)


def kind_of(data: bytes) -> str:
    """What a file is by its content: gerber, drill, netlist, g-code, job, binary, empty or other."""
    if not data.strip():
        return "empty"
    if b"\x00" in data[:4096]:
        return "binary"
    text = data[:_HEAD].decode("latin-1")
    if text.lstrip("\ufeff\u00ef\u00bb\u00bf \r\n").startswith("{"):
        return "job" if "FilesAttributes" in data.decode("latin-1") else "other"
    if "FileFunction,JobInfo" in text:
        return "job"
    if _NETLIST.search(data[:2_000_000].decode("latin-1")) and not _GERBER.search(text):
        return "netlist"
    return _kind_of_lines(text)


def _kind_of_lines(text: str) -> str:
    if _GERBER.search(text) and "*" in text:
        return "gerber"
    has_z = _GCODE_Z.search(text) is not None
    if _DRILL.search(text) or (_ROUTING.search(text) and not has_z):
        return "drill"
    if has_z or (_GCODE.search(text) and re.search(r"\bG(20|21|17|90)\b", text)):
        return "g-code"
    if len(_DRILL_PLACE.findall(text)) >= 3 and re.search(r"^T\d+\s*$", text, re.MULTILINE):
        return "drill"
    return "other"


def role_of_function(function: str) -> Role:
    """The role of a ``.FileFunction`` value."""
    parts = [part.strip() for part in function.split(",")]
    first, rest = parts[0].lower(), [part.lower() for part in parts[1:]]
    if first == "copper":
        for word, role in (("top", Role.COPPER_TOP), ("bot", Role.COPPER_BOTTOM), ("inr", Role.COPPER_INNER)):
            if word in rest:
                return role
    if first == "legend":
        return Role.LEGEND_BOTTOM if "bot" in rest else Role.LEGEND_TOP
    if first == "plated":
        return Role.DRILL_PLATED
    if first == "nonplated":
        return Role.DRILL_UNPLATED
    known = {"profile": Role.OUTLINE, "mixedplating": Role.DRILL, "jobinfo": Role.JOB}
    return known.get(first, Role.OTHER)


def recognise_files(files: Mapping[str, bytes]) -> tuple[LayerFile, ...]:
    """The role of every file and why it got it, in the order given."""
    kinds = {name: kind_of(data) for name, data in files.items()}
    jobs = _job_roles({name: files[name] for name, kind in kinds.items() if kind == "job"})
    found = [_recognise(name, files[name], kinds[name], jobs) for name in files]
    return tuple(_by_number(_one_each(found), kinds))


def _recognise(name: str, data: bytes, kind: str, jobs: Mapping[str, str]) -> LayerFile:
    text = data[:_HEAD].decode("latin-1")
    if kind == "netlist":
        return LayerFile(name, Role.NETLIST, "it holds IPC-D-356 records")
    if kind == "job":
        return LayerFile(name, Role.JOB, "it lists the files of the board")
    if kind == "g-code":
        return LayerFile(name, Role.GCODE, "it holds RS-274 moves")
    if kind not in ("gerber", "drill"):
        return LayerFile(name, Role.OTHER, _PLAIN.get(kind, "it holds no board data"))
    if match := _FUNCTION.search(text):
        role = role_of_function(match[1])
        return LayerFile(name, role, say("its .FileFunction is {match}", match=match[1].strip()))
    base = name.rsplit("/", 1)[-1].lower()
    if base in jobs:
        return LayerFile(name, role_of_function(jobs[base]), say("the job file says {jobs}", jobs=jobs[base]))
    if kind == "drill":
        return _drill(name, text)
    return _named(name, text)


_PLAIN = {"empty": "it is empty", "binary": "it is binary", "other": "it holds no board data"}


def _drill(name: str, text: str) -> LayerFile:
    if re.search(r"TYPE\s*=\s*NON_?PLATED|Contents\s*:.*Non-?Plated", text, re.IGNORECASE):
        return LayerFile(name, Role.DRILL_UNPLATED, "a comment in it says unplated")
    if re.search(r"TYPE\s*=\s*PLATED|Contents\s*:.*\bPlated", text, re.IGNORECASE):
        return LayerFile(name, Role.DRILL_PLATED, "a comment in it says plated")
    base = name.rsplit("/", 1)[-1].lower()
    if re.search(r"npth|non[-_ ]?plated|un[-_ ]?plated", base):
        return LayerFile(name, Role.DRILL_UNPLATED, "it is a drill file; its name says unplated")
    if re.search(r"pth|plated", base):
        return LayerFile(name, Role.DRILL_PLATED, "it is a drill file; its name says plated")
    return LayerFile(name, Role.DRILL, "it is a drill file")


ASKED = "neither its content nor its name says what it is"


def _named(name: str, text: str) -> LayerFile:
    role = role_of_name(name)
    if role is not None:
        return LayerFile(name, role, "of its name")
    titled = role_of_titles(text)
    if titled is not None:
        return LayerFile(name, titled[0], say("of its title “{titled}”", titled=titled[1][:40]))
    return LayerFile(name, Role.OTHER, ASKED)


def _job_roles(jobs: Mapping[str, bytes]) -> dict[str, str]:
    """File functions by lower-case file name, from job files in the Gerber job format."""
    roles: dict[str, str] = {}
    for data in jobs.values():
        try:
            entries = json.loads(data.decode("utf-8-sig"))["FilesAttributes"]
            for entry in entries:
                path = str(entry["Path"]).replace("\\", "/").rsplit("/", 1)[-1]
                roles[path.lower()] = str(entry["FileFunction"])
        except (ValueError, KeyError, TypeError, RecursionError):
            continue
    return roles


_OUTLINE_RANK = ("gko", "gm1", "gml")


def _one_each(found: list[LayerFile]) -> list[LayerFile]:
    """Where several files are outlines by name, the customary extension wins and the others say so."""
    named = [item for item in found if item.role is Role.OUTLINE and item.reason == "of its name"]
    sure = [item for item in found if item.role is Role.OUTLINE and item.reason != "of its name"]
    if len(named) + len(sure) < 2 or not named:
        return found
    ranked = sorted(named, key=lambda item: _rank(item.name))
    chosen = sure[0] if sure else ranked[0]
    drop = {item.name for item in named if item is not chosen}
    reason = say("of its name it could be the outline, but {name} is a better one", name=chosen.name)
    return [replace(i, role=Role.OTHER, reason=reason) if i.name in drop else i for i in found]


def _rank(name: str) -> int:
    extension = name.lower().rpartition(".")[2]
    return _OUTLINE_RANK.index(extension) if extension in _OUTLINE_RANK else -1


def _by_number(found: list[LayerFile], kinds: Mapping[str, str]) -> list[LayerFile]:
    """Layers named by number only: the first is the top, the last the bottom."""
    roles = {item.role for item in found}
    if Role.COPPER_BOTTOM in roles:
        return found
    open_roles = (Role.OTHER, Role.COPPER_TOP, Role.COPPER_INNER)
    numbers = {
        item.name: number
        for item in found
        if kinds[item.name] == "gerber"
        and item.role in open_roles
        and item.reason.startswith(("of its", ASKED))
        and (number := layer_number(item.name)) is not None
    }
    if len(numbers) < 2 or min(numbers.values()) != 1:
        return found
    last = max(numbers.values())
    out = []
    for item in found:
        number = numbers.get(item.name)
        if number is None:
            out.append(item)
            continue
        role = {1: Role.COPPER_TOP, last: Role.COPPER_BOTTOM}.get(number, Role.COPPER_INNER)
        out.append(
            LayerFile(
                item.name, role, say("of its name: copper layer {number} of {last}", number=number, last=last)
            )
        )
    return out
