"""What a second bit saves on boards of the corpus, and what planning for it costs.

Boards are read from the folder in DRYPOINT_CORPUS, or from a folder `shared/boards` beside the checkout.
Times are those of one pass over everything at the nominal depth, by the model of the controller's motion;
two changes of the bit of 90 s each are counted. With one bit, what is cleared is estimated from its area.

Run: python tests/benchmarks/two_bits.py [NAME of a board …]
"""

from __future__ import annotations

import os
import sys
import tempfile
import time
from pathlib import Path

from drypoint.bits.library import default_library
from drypoint.bits.model import EndMill
from drypoint.cuts.grooves import plan_grooves
from drypoint.cuts.rest import CutWidth, plan_rest, total
from drypoint.session.clear_settings import Clearing, ClearSettings
from drypoint.session.session import Session
from drypoint.session.two_bit_times import two_bit_times
from drypoint.session.two_bits import fine_width

BOARDS = ("fd1-mainboard", "fd1-keyboard", "emonpi2c")
MILL: EndMill = default_library().mills[0]
ASKED = (
    ("grooves only", ClearSettings()),
    ("moat of 1 mm", ClearSettings(what=Clearing.MOAT, moat=1.0)),
    ("all cleared", ClearSettings(what=Clearing.BOARD)),
)


def main() -> None:
    """Print a table."""
    beside = Path(__file__).resolve().parents[3] / "shared" / "boards"
    folder = Path(os.environ.get("DRYPOINT_CORPUS", beside))
    print(f"{'board':16} {'cut':14} {'one bit':>9} {'two bits':>9} {'saved':>9} {'ratio':>6}")
    for name in sys.argv[1:] or BOARDS:
        with tempfile.TemporaryDirectory() as scratch:
            session = Session.create(Path(scratch) / "bench.drypoint")
            try:
                session.import_files([folder / name])
                _times(name, session)
                _planning(name, session)
            finally:
                session.close()


def _times(name: str, session: Session) -> None:
    for words, clearing in ASKED:
        session.change("Clear", clearing=clearing)
        (times,) = two_bit_times(session.derived, session.snapshot, bits=[MILL])
        if times.trouble:
            print(f"{name:16} {words:14} {times.trouble}")
            continue
        one, two, saved = times.one / 60.0, times.two / 60.0, times.saved / 60.0
        print(f"{name:16} {words:14} {one:5.1f} min {two:5.1f} min {saved:5.1f} min {two / one:6.2f}")


def _planning(name: str, session: Session) -> None:
    """Lengths of both bits, and the time of planning against that of the fine grooves alone."""
    snap = session.snapshot
    nets, fine = session.derived.board(snap).nets, fine_width(snap.settings)
    begun = time.process_time()
    alone = plan_grooves(nets, fine.top, bite=snap.settings.cuts.bite)
    between = time.process_time()
    rest = plan_rest(nets, alone, CutWidth(MILL.diameter, MILL.diameter), fine)
    took = time.process_time() - between
    ratio = took / max(between - begun, 1e-3)
    print(
        f"{name:16} one bit {total(alone.lines):.0f} mm; wide {total(rest.wide.lines):.0f} mm, fine "
        f"{total(rest.fine.lines):.0f} mm; planning the rest {ratio:.1f} × the grooves"
    )


if __name__ == "__main__":
    main()
