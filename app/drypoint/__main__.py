"""The command line: parses words, builds everything, passes it in.

Exit codes: 0 done, 1 refused with a clear error, 2 wrong usage.
"""

from __future__ import annotations

import argparse
import codecs
import io
import json
import logging
import math
import os
import signal
import sys
import tempfile
import threading
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path
from typing import Any

# small matrices: threads of the linear algebra library cost several times what they save
os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")
os.environ.setdefault("OMP_NUM_THREADS", "1")


@contextmanager
def _loading() -> Iterator[None]:
    """Until all is loaded the key that interrupts ends the program at once, with a word and no trace."""
    usual = signal.getsignal(signal.SIGINT)
    if usual is not signal.default_int_handler or threading.current_thread() is not threading.main_thread():
        yield
        return
    signal.signal(signal.SIGINT, lambda *_: (os.write(2, b"\nStopped.\n"), os._exit(1)))
    try:
        yield
    finally:
        signal.signal(signal.SIGINT, usual)


with _loading():
    from drypoint import __version__
    from drypoint.board.model import Side
    from drypoint.cuts.ratings import Surroundings
    from drypoint.errors import DrypointError, StoreError
    from drypoint.progress import Cancelled, Progress
    from drypoint.session import commands
    from drypoint.session.actions.coupon_job import Wanted, coupon_job, grid_job
    from drypoint.session.actions.coupon_reading import readings
    from drypoint.session.clear_options import WORDS, ClearOptions
    from drypoint.session.corner import Corner
    from drypoint.session.report import report
    from drypoint.session.settings import ZeroOfZ
    from drypoint.session.turn_settings import ToolingUse
    from drypoint.session.wear_book import usual_book

SURROUNDINGS = {kind.name.lower().replace("_", "-"): kind for kind in Surroundings}
"""What covers the copper, by the words of the command line."""
TOOLING = {use.name.lower(): use for use in ToolingUse}
"""When tooling holes are drilled, by the words of the command line."""
ZERO = {zero.name.lower(): zero for zero in ZeroOfZ}
"""What z = 0 of ready-made programs is, by the words of the command line."""
CLEAR = "\r\033[K"
"""Begins a line of a terminal anew."""


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(
        prog="drypoint", description="Mill circuit boards on a small engraver. Without a command: the window."
    )
    parser.add_argument("--version", action="version", version=f"drypoint {__version__}")
    parser.add_argument("--log", action="store_true", help="say on stderr what happens inside")
    verbs = parser.add_subparsers(dest="verb", metavar="command")
    one = verbs.add_parser("prepare", help="import design files, plan and check the cuts")
    one.add_argument(
        "paths",
        nargs="+",
        type=Path,
        metavar="PATH",
        help="folder, files or a zip; two or more folders or zips with the same copper are several boards",
    )
    one.add_argument("--job", required=True, type=Path, metavar="J", help="job file to make")
    one.add_argument("--side", choices=[side.value for side in Side], help="copper to mill")
    one.add_argument("--tip", type=float, metavar="MM", help="flat of the V-bit's tip")
    one.add_argument("--angle", type=float, metavar="DEG", help="included angle of the V-bit")
    one.add_argument("--depth", type=float, metavar="MM", help="nominal depth below the copper's top")
    _add_clearing(one)
    one.add_argument("--both-sides", action="store_true", help="mill the other side too, after turning over")
    one.add_argument(
        "--tooling",
        choices=TOOLING,
        help="holes in the margin to find the second side by; needed: where the board has fewer than two",
    )
    one.add_argument("--coating", default="", metavar="NAME", help="coating that a laser marks the legend on")
    one.add_argument(
        "--declared-safe", action="store_true", help="its maker declares that coating safe for laser work"
    )
    one.add_argument(
        "--at",
        action="append",
        type=_place,
        default=[],
        metavar="X,Y[,DEG]",
        help="place (mm) and turn of a board among the boards; once for each, or for each copy of one; "
        "--at=-5,0 where it begins with a minus",
    )
    one.add_argument(
        "--bit",
        action="append",
        default=[],
        metavar="FILE[:TOOL]=BIT",
        help="bit of the job, or size of its drill, for a tool of a ready-made program",
    )
    one.add_argument(
        "--program-zero",
        choices=ZERO,
        help="where programs have z = 0; on the copper if not given",
    )
    one.add_argument(
        "--cut-out",
        type=float,
        metavar="MM",
        help="without an outline, cut out the rectangle this far round everything that programs cut",
    )
    one.add_argument(
        "--volts",
        action="append",
        default=[],
        metavar="NET=V|FILE",
        help="voltage of a net against all others, or NET,OTHER=V of a pair, * for any characters; or a file "
        "of such lines: NET,V or NET,OTHER,V",
    )
    one.add_argument(
        "--surroundings", choices=SURROUNDINGS, help="what covers the copper in use, for the clearances"
    )
    one = verbs.add_parser("rehearse", help="run the whole job on the bench")
    one.add_argument("job", type=Path)
    one.add_argument("--seed", type=int, default=0, metavar="N", help="another blank, another machine")
    one.add_argument("--touches", type=int, metavar="N", help="places to touch")
    one = verbs.add_parser("export", help="write programs, setup sheet and pictures")
    one.add_argument("job", type=Path)
    one.add_argument("--to", required=True, type=Path, metavar="DIR")
    _check_words(verbs.add_parser("check", help="which nets stay joined, at any depth, by any paths"))
    one = verbs.add_parser("show", help="all facts about a job")
    one.add_argument("job", type=Path)
    _add_trials(verbs)
    one = verbs.add_parser("bits", help="what every bit has cut, over all jobs")
    one.add_argument("--renew", metavar="NAME", help="a new bit of that name was put in")
    for name, mark, what in (("limit", "NAME=MM", "mm"), ("limit-holes", "NAME=N", "holes")):
        told = f"after how many {what} a bit is to be looked at; 0 is never"
        one.add_argument(f"--{name}", action="append", default=[], type=_limit, metavar=mark, help=told)
    one = verbs.add_parser("demo", help="the example board, from files to proven copper")
    one.add_argument("--headless", action="store_true", help="without the window")
    one.add_argument("--to", type=Path, metavar="DIR", help="folder for what is made without the window")
    one.add_argument("--seed", type=int, default=0, metavar="N")
    one = verbs.add_parser("open", help="open a job in the window")
    one.add_argument("job", type=Path)
    for name, verb in verbs.choices.items():
        if name != "open":
            verb.add_argument("--json", action="store_true", help="one JSON object on stdout")
    return parser


def _add_trials(verbs: Any) -> None:
    """The commands for what is cut to learn something."""
    one = verbs.add_parser(
        "coupon", help="write the program of a test pattern for the V-bit, or say what was read from it"
    )
    one.add_argument("job", type=Path)
    one.add_argument("--to", type=Path, metavar="DIR", help="folder for the program")
    one.add_argument(
        "--corner",
        choices=[corner.value for corner in Corner],
        help="corner of the blank that it lies nearest to",
    )
    one.add_argument("--rehearse", action="store_true", help="cut it and read it on the bench")
    one.add_argument("--seed", type=int, default=0, metavar="N", help="another blank, another bit there")
    for name, mark, what in (
        ("width", "DEPTH=MM", "width read of the line at a depth"),
        ("parted", "DEPTH", "depth of a square that the meter finds parted"),
        ("joined", "DEPTH", "depth of a square that it finds joined"),
        ("stands", "GAP", "planned width of a ridge that still stands"),
        ("gone", "GAP", "planned width of a ridge that is gone"),
    ):
        kind = _reading if name == "width" else float
        one.add_argument(f"--{name}", action="append", default=[], type=kind, metavar=mark, help=what)
    one.add_argument("--use", action="store_true", help="use what was found from now on; it can be undone")
    one = verbs.add_parser(
        "burn-grid", help="write the program of the laser's burn grid, or keep the field that looks best"
    )
    one.add_argument("job", type=Path)
    one.add_argument("--to", type=Path, metavar="DIR", help="folder for the program")
    one.add_argument(
        "--corner", choices=[corner.value for corner in Corner], help="corner of the blank that it lies in"
    )
    one.add_argument(
        "--best", type=_field, metavar="ROW,COLUMN", help="field that looks best, from the lower left"
    )


def _check_words(one: argparse.ArgumentParser) -> None:
    one.add_argument("job", type=Path)
    one.add_argument("--depth", type=float, metavar="MM", help="depth below the copper's top")
    one.add_argument("--program", default="", metavar="FILE", help="a ready-made program of the job")
    one.add_argument("--find", action="store_true", help="look for the least depth that parts the nets, too")


def _add_clearing(one: argparse.ArgumentParser) -> None:
    """Options of the wide bit and of copper that is taken away."""
    one.add_argument("--wide", metavar="BIT", help="wide bit for open copper: its name, or MM of an end mill")
    one.add_argument("--wide-depth", type=float, metavar="MM", help="depth of the wide bit")
    one.add_argument("--clear", choices=sorted(WORDS), help="copper without net that is taken away")
    one.add_argument("--moat", type=float, metavar="MM", help="width of the moat round every net")
    one.add_argument("--slivers", type=float, metavar="MM2", help="pieces without net up to this go too")


def _numbers(text: str, between: str, form: str, *counts: int) -> list[float]:
    """Numbers as they are written on the command line, in the form that is told when they are not."""
    try:
        found = [float(part) for part in text.split(between)]
    except ValueError:
        found = []
    if len(found) not in counts or not all(map(math.isfinite, found)):
        raise argparse.ArgumentTypeError(f"{text!r} does not fit: give {form}")
    return found


def _place(text: str) -> tuple[float, float, float]:
    """Where a board lies."""
    x, y, *turn = _numbers(text, ",", "X,Y or X,Y,DEG", 2, 3)
    return x, y, turn[0] if turn else 0.0


def _limit(text: str) -> tuple[str, float]:
    """A bit and its limit."""
    name, _, limit = text.rpartition("=")
    (number,) = _numbers(limit if name else "", "=", "NAME=NUMBER", 1)
    return name, number


def _reading(text: str) -> tuple[float, float]:
    """Depth and width of a line."""
    depth, width = _numbers(text, "=", "DEPTH=WIDTH, both in mm", 2)
    return depth, width


def _field(text: str) -> tuple[int, int]:
    """Row and column of a field."""
    row, column = _numbers(text, ",", "ROW,COLUMN, both whole", 2)
    if not (row.is_integer() and column.is_integer()):
        raise argparse.ArgumentTypeError(f"{text!r} does not fit: give ROW,COLUMN, both whole")
    return int(row), int(column)


def _corner(text: str | None) -> Corner | None:
    return None if text is None else Corner(text)


def _headless(words: argparse.Namespace) -> Callable[[Progress], dict[str, Any]] | None:
    """The work of a command that needs no window; None for the window."""
    verb = words.verb
    if verb == "prepare":
        side = None if words.side is None else Side(words.side)
        return lambda told: commands.prepare(
            words.paths,
            words.job,
            side=side,
            tip=words.tip,
            angle_deg=words.angle,
            depth=words.depth,
            both_sides=words.both_sides,
            tooling=TOOLING.get(words.tooling),
            coating=words.coating,
            declared_safe=words.declared_safe,
            places=words.at,
            program_bits=words.bit,
            program_zero=ZERO.get(words.program_zero),
            cut_out=words.cut_out,
            clearing=ClearOptions(words.wide, words.wide_depth, words.clear, words.moat, words.slivers),
            voltages=words.volts,
            surroundings=SURROUNDINGS.get(words.surroundings),
            progress=told,
        )
    if verb == "rehearse":
        return lambda told: commands.rehearse_job(
            words.job, seed=words.seed, touches=words.touches, progress=told
        )
    if verb == "export":
        return lambda told: commands.export_job(words.job, words.to, told, usual_book().read())
    if verb == "check":
        return lambda told: commands.check_job(
            words.job, depth=words.depth, program=words.program, find=words.find, progress=told
        )
    if verb == "show":
        return lambda told: commands.show_job(words.job, told)
    if verb == "coupon":
        read = readings(words.width, words.parted, words.joined, words.stands, words.gone)
        wanted = Wanted(words.to, _corner(words.corner), words.use, words.rehearse, words.seed)
        return lambda told: coupon_job(words.job, wanted, read, told)
    if verb == "burn-grid":
        return lambda _told: grid_job(words.job, words.to, _corner(words.corner), words.best)
    if verb == "bits":
        limits = {"lengths": words.limit, "holes": words.limit_holes}
        return lambda _told: commands.worn(usual_book(), renew=words.renew, **limits)
    if verb == "demo" and (words.headless or words.json or words.to):
        folder = words.to or Path(tempfile.mkdtemp(prefix="drypoint-demo-"))
        return lambda told: commands.demo(folder, seed=words.seed, progress=told)
    return None


def _told(error: DrypointError | OSError) -> DrypointError:
    """What the system refuses (rights, a full disk) in the words of our own errors."""
    if isinstance(error, DrypointError):
        return error
    return StoreError(
        f"{error.strerror or error}.", str(error.filename or ""), "Check the place and its rights."
    )


def _run(work: Callable[[Progress], dict[str, Any]], words: argparse.Namespace) -> int:
    shown = sys.stderr.isatty()

    def tell(done: float, text: str) -> None:
        if shown:
            sys.stderr.write(f"{CLEAR}{done * 100:3.0f} % {text}")
            sys.stderr.flush()

    try:
        found = work(Progress(tell))
    except (DrypointError, OSError) as found_error:
        error = _told(found_error)
        if words.json:
            _print(json.dumps({"error": error.as_dict()}))
        sys.stderr.write(f"{CLEAR if shown else ''}drypoint: {error}\n")
        return 1
    except (KeyboardInterrupt, Cancelled):
        sys.stderr.write("\nStopped.\n")
        return 1
    if shown:
        sys.stderr.write(CLEAR)
    return _print(json.dumps(found) if words.json else report(words.verb, found))


def _print(text: str) -> int:
    """Text on stdout, whatever that is; the exit code."""
    try:
        print(text, flush=True)
    except OSError as error:
        # what is still to be written would fail once more at the end
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        if not isinstance(error, BrokenPipeError):  # who has read enough need not be told
            sys.stderr.write(f"drypoint: {_told(error)}\n")
        return 1
    return 0


def _show_all() -> None:
    """What a terminal or pipe cannot show is replaced there; names of files stay as they are."""
    for stream in (sys.stdout, sys.stderr):
        if isinstance(stream, io.TextIOWrapper):
            whole = codecs.lookup(stream.encoding).name == "utf-8"
            stream.reconfigure(errors="surrogateescape" if whole else "replace")


def _window(words: argparse.Namespace) -> int:
    try:
        from drypoint.ui.app import run_window  # noqa: PLC0415 - the rest runs where Qt is not installed
    except ImportError as error:
        sys.stderr.write(
            f"drypoint: The window cannot open: Qt does not load ({error}). The commands for scripts still "
            "run; see drypoint --help.\n"
        )
        return 1
    job = words.job if words.verb == "open" else None
    return run_window(sys.argv[:1], demo=words.verb == "demo", job=job)


def main(arguments: Sequence[str] | None = None) -> int:
    """Run one command."""
    _show_all()
    given = list(sys.argv[1:] if arguments is None else arguments)
    if len(given) == 1 and given[0].endswith(".drypoint"):
        given = ["open", given[0]]
    words = _parser().parse_args(given)
    if words.log or os.environ.get("DRYPOINT_LOG"):
        logging.basicConfig(level=logging.DEBUG, stream=sys.stderr)
    work = _headless(words)
    return _window(words) if work is None else _run(work, words)


if __name__ == "__main__":
    sys.exit(main())
