"""Keeps the catalogues in resources/translations in step with the texts of the program.

``python scripts/translate.py`` writes every text the window can show into ``drypoint_de.ts`` (Qt Linguist
opens it), keeps what is translated already and drops what is no longer said. ``--check`` changes nothing and
fails where something is missing, stale or has other fields than the English. ``--missing`` prints what
waits for a translation as JSON, and ``--take FILE`` puts such JSON, filled in, into the catalogue.
"""

from __future__ import annotations

import argparse
import ast
import json
import re
import sys
from collections.abc import Iterator
from pathlib import Path
from string import Formatter
from xml.etree import ElementTree
from xml.sax.saxutils import escape

ROOT = Path(__file__).resolve().parents[1]
CODE = ROOT / "app" / "drypoint"
CATALOGUE = ROOT / "resources" / "translations" / "drypoint_de.ts"

WINDOW_CALLS = {"tr", "_say", "say", "translate", "many"}
"""Calls of the window's code whose texts are shown."""
CORE_CALLS = {"say", "many"}
MADE_OF_TEXTS = {
    "InputError",
    "PlanError",
    "MachineError",
    "StoreError",
    "LinkLost",
    "LineLost",
    "Astray",
    "Finding",
    "Flaw",
    "Request",
    "Help",
    "LayerFile",
    "Check",
    "CheckResult",
    "MachineState",
    "Explanation",
    "_expect",
    "_ready",
    "step",
    "_section",
    "_table",
}
"""Classes and functions of the core whose plain strings are shown as they stand."""
SPOKEN = re.compile(r"[A-Za-z“].*[A-Za-z]")
SENTENCE = re.compile(r"^[A-Z“][^_{}<>=]*? [^_{}<>=]* ?[^_{}<>=]*[.!?:]?$")
NOT_SHOWN = re.compile(r"^(SELECT|INSERT|UPDATE|DELETE|CREATE|PRAGMA|BEGIN|ALTER)\b")
UNSPOKEN_LAYERS = ("bench", "__main__.py", "wording.py")
SPOKEN_FILES = {"bench/link.py", "bench/remote.py", "bench/served.py"}
"""Of the layers that are not spoken: what a person is told when the simulated machine has gone."""


def texts() -> dict[str, tuple[str, set[str]]]:
    """Every text, the context it belongs to ("window" or "core") and the files it is said in."""
    found: dict[str, tuple[str, set[str]]] = {}
    for path in sorted(CODE.rglob("*.py")):
        place = path.relative_to(CODE)
        if place.parts[0] in UNSPOKEN_LAYERS and place.as_posix() not in SPOKEN_FILES:
            continue
        window = place.parts[0] == "ui"
        tree = ast.parse(path.read_text(encoding="utf-8"))
        for text in _window_texts(tree) if window else _core_texts(tree):
            _, files = found.setdefault(text, ("window" if window else "core", set()))
            files.add(f"../../app/drypoint/{place.as_posix()}")
    return found


def _window_texts(tree: ast.AST) -> Iterator[str]:
    for call in _calls(tree, WINDOW_CALLS):
        name = _name(call)
        with_context = name == "translate" or (name == "say" and len(call.args) == 2)
        yield from _strings(call.args[1:2] if with_context else call.args)


def _core_texts(tree: ast.Module) -> Iterator[str]:
    for call in _calls(tree, CORE_CALLS):
        yield from _strings(call.args)
    for call in _calls(tree, MADE_OF_TEXTS | {"__init__"}):
        parts = [*call.args, *(word.value for word in call.keywords)]
        skip = _name(call) in {"Finding", "LayerFile"}  # their first word is for the program
        for text in _strings(parts[1:] if skip else parts):
            if SPOKEN.search(text):
                yield _literal(text)
    for node in ast.walk(tree):
        if isinstance(node, (ast.Assign, ast.AnnAssign, ast.Return)) and node.value is not None:
            for text in _strings([node.value]):
                if SENTENCE.match(text) and not NOT_SHOWN.match(text):
                    yield _literal(text)


def _literal(text: str) -> str:
    return text.replace("{", "{{").replace("}", "}}")


def _calls(tree: ast.AST, names: set[str]) -> Iterator[ast.Call]:
    for node in ast.walk(tree):
        if isinstance(node, ast.Call) and _name(node) in names:
            yield node


def _name(call: ast.Call) -> str:
    return call.func.attr if isinstance(call.func, ast.Attribute) else getattr(call.func, "id", "")


def _strings(nodes: list[ast.expr]) -> Iterator[str]:
    """Plain strings, also in choices, tuples and values of mappings."""
    for node in nodes:
        match node:
            case ast.Constant(value=str(text)) if text.strip():
                yield text
            case ast.IfExp(body=first, orelse=second):
                yield from _strings([first, second])
            case ast.BoolOp(values=values) | ast.Tuple(elts=values) | ast.List(elts=values):
                yield from _strings(values)
            case ast.Starred(value=value):
                yield from _strings([value])
            case ast.Dict(values=values):
                yield from _strings(values)


def fields(template: str) -> list[str]:
    """The fields of a template, sorted; ["?"] where it is no template."""
    try:
        return sorted({name for _, name, _, _ in Formatter().parse(template) if name})
    except ValueError:
        return ["?"]


def read() -> dict[str, str]:
    """What is translated."""
    if not CATALOGUE.exists():
        return {}
    found = {}
    for message in ElementTree.parse(CATALOGUE).getroot().iter("message"):
        translation = message.find("translation")
        if translation is not None and translation.get("type") is None and translation.text:
            found[message.findtext("source") or ""] = translation.text
    return found


def write(said: dict[str, tuple[str, set[str]]], known: dict[str, str]) -> None:
    """The catalogue, in the order of the alphabet so that two people's changes rarely meet."""
    rows = ['<?xml version="1.0" encoding="utf-8"?>', "<!DOCTYPE TS>"]
    rows.append('<TS version="2.1" language="de_DE" sourcelanguage="en">')
    for context in ("core", "window"):
        rows += ["<context>", f"    <name>{context}</name>"]
        for text in sorted(text for text, (where, _) in said.items() if where == context):
            rows.append("    <message>")
            rows += [f'        <location filename="{file}"/>' for file in sorted(said[text][1])]
            rows.append(f"        <source>{escape(text)}</source>")
            done = known.get(text)
            shown = f">{escape(done)}</translation>" if done else ' type="unfinished"></translation>'
            rows.append(f"        <translation{shown}")
            rows.append("    </message>")
        rows.append("</context>")
    rows.append("</TS>")
    CATALOGUE.parent.mkdir(parents=True, exist_ok=True)
    CATALOGUE.write_text("\n".join(rows) + "\n", encoding="utf-8")


def flaws(said: dict[str, tuple[str, set[str]]], known: dict[str, str]) -> list[str]:
    """What is wrong with the catalogue."""
    found = [f"not translated: {text!r} ({min(said[text][1])})" for text in sorted(set(said) - set(known))]
    found += [f"no longer said: {text!r}" for text in sorted(set(known) - set(said))]
    for text in sorted(set(said) & set(known)):
        if fields(text) != fields(known[text]):
            found.append(f"other fields: {text!r} / {known[text]!r}")
    return found


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawTextHelpFormatter)
    parser.add_argument("--check", action="store_true", help="change nothing; say what is wrong")
    parser.add_argument("--missing", action="store_true", help="print what is not translated, as JSON")
    parser.add_argument("--take", type=Path, help="JSON of English to German to put in")
    wanted = parser.parse_args()
    said, known = texts(), read()
    if wanted.check:
        found = flaws(said, known)
        sys.stdout.write("".join(f"{line}\n" for line in found))
        return 1 if found else 0
    if wanted.missing:
        rest = {text: "" for text in sorted(said) if text not in known}
        sys.stdout.write(json.dumps(rest, ensure_ascii=False, indent=0) + "\n")
        return 0
    if wanted.take is not None:
        for text, german in json.loads(wanted.take.read_text(encoding="utf-8")).items():
            if german and text in said and fields(text) == fields(german):
                known[text] = german
            elif german:
                sys.stderr.write(f"not taken: {text!r}\n")
    write(said, {text: german for text, german in known.items() if text in said})
    return 0


if __name__ == "__main__":
    sys.exit(main())
