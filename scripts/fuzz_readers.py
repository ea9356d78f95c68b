"""Feed the readers damaged files for as long as wanted, steered by what code each input reaches.

    python scripts/fuzz_readers.py [gerber|drill|netlist|program|board] [options of the fuzzer]

Needs ``atheris``, which is no part of the project's requirements: ``pip install atheris``. Options go
to its engine: ``-max_total_time=600`` ends after ten minutes, ``-runs=100000`` after that many inputs.
Inputs that are worth keeping are put in a folder under the system's temporary folder. Seeds are the
example board's files and a few lines of each language.

Whatever leaves a reader other than ``InputError`` is a fault, and so is an input that takes longer
than ten seconds (``-timeout=10``) or more than 2 GB (``-rss_limit_mb=2048``).
"""

from __future__ import annotations

import importlib
import importlib.util
import sys
import tempfile
from collections.abc import Callable
from pathlib import Path
from typing import Any

ROOT = Path(__file__).resolve().parents[1]
EXAMPLE = ROOT / "examples" / "hive-scale"

PROGRAM = (
    b"G21 G90 G17\nT1 M6\nS10000 M3\nF100\nG0 X1 Y1 Z1\nG1 Z-.1\nG2 X3 Y1 I1 J0\nG83 X4 Y4 Z-2 R1 Q.5\nM2\n"
)

READERS = {
    "gerber": ("drypoint.board.gerber", "read_gerber"),
    "drill": ("drypoint.board.drill", "read_drill"),
    "netlist": ("drypoint.board.netlist", "read_netlist"),
    "program": ("drypoint.gcode.reader", "read_gcode"),
    "board": ("drypoint.board.load", "load_board_from_bytes"),
}
"""Module and function by the name on the command line."""

Target = Callable[[bytes], object]


def target(name: str) -> Target:
    """One reader as a function of the damaged bytes."""
    module, function = READERS[name]
    read: Callable[..., Any] = getattr(importlib.import_module(module), function)
    if name == "gerber":
        return lambda data: read(data).nets()
    if name == "program":
        return lambda data: read(data.decode("latin-1"))
    if name == "board":  # the copper of the example board is replaced by the input
        files = {path.name: path.read_bytes() for path in EXAMPLE.iterdir()}
        return lambda data: read(files | {"hive-scale-copper-bottom.gbr": data})
    return read


SEEDS = {"gerber": "*.gbr", "board": "*copper-bottom.gbr", "drill": "*.drl", "netlist": "*.ipc"}


def seeds(name: str, folder: Path) -> Path:
    """A folder with what the fuzzer starts from."""
    into = folder / name
    into.mkdir(parents=True, exist_ok=True)
    for path in EXAMPLE.glob(SEEDS.get(name, "nothing")):
        (into / path.name).write_bytes(path.read_bytes())
    if name == "program":
        (into / "seed.nc").write_bytes(PROGRAM)
    return into


def main(arguments: list[str]) -> int:
    """Fuzz one reader until told to stop, or until a fault is found."""
    name = arguments[0] if arguments and not arguments[0].startswith("-") else "gerber"
    options = [one for one in arguments if one.startswith("-")]
    if name not in READERS:
        sys.stderr.write(f"There is no reader {name!r}: choose one of {', '.join(READERS)}.\n")
        return 2
    if importlib.util.find_spec("atheris") is None:
        sys.stderr.write("The fuzzer is not here. Get it with: pip install atheris\n")
        return 2
    atheris = importlib.import_module("atheris")
    with atheris.instrument_imports(include=["drypoint"]):
        read = target(name)
        refused = importlib.import_module("drypoint.errors").InputError

    def one_input(data: bytes) -> None:
        try:
            read(data)
        except refused:
            return

    corpus = seeds(name, Path(tempfile.gettempdir()) / "drypoint-fuzz")
    limits = ["-timeout=10", "-rss_limit_mb=2048"]
    atheris.Setup([sys.argv[0], str(corpus), *limits, *options], one_input)
    atheris.Fuzz()
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
