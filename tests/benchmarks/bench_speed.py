"""How fast a rehearsal runs: an hour of cutting and touching in seconds of computing.

    python tests/benchmarks/bench_speed.py

3 m of groove in 0.1 mm segments, warped in z, through the real sender and controller, then 50 touches
(two each), then the exact pieces of the carved copper. Reference in the same run: the shapely union of
the same grooves' buffers, which is the least that any exact account of the copper needs.
"""

from __future__ import annotations

import math
import time

import numpy as np
import shapely

from drypoint.bench.bench import Bench
from drypoint.bench.copper import swept
from drypoint.bits.model import Speeds, VBit
from drypoint.machine.controller import Controller
from drypoint.machine.operator import Request, RequestKind
from drypoint.machine.state import Clip

SEGMENT = 0.1


def program() -> list[str]:
    """Rows of arcs, 3 m in all, cut about 0.1 mm deep."""
    lines = ["G21G90", "M3S10000", "G0Z2"]
    t = np.arange(0.0, 60.0, SEGMENT)
    for row in range(50):
        x, y = 5.0 + t, 5.0 + row + 0.4 * np.sin(t / 4.0)
        z = -0.09 - 0.02 * np.sin(t / 9.0)
        lines += [f"G0X{x[0]:.3f}Y{y[0]:.3f}", f"G1Z{z[0]:.3f}F120", f"X{x[0]:.3f}F300"]
        lines += [f"X{a:.3f}Y{b:.3f}Z{c:.3f}" for a, b, c in zip(x[1:], y[1:], z[1:], strict=True)]
        lines.append("G0Z2")
    return [*lines, "M5"]


def main() -> None:
    """Print a table."""
    bench = Bench(3)
    controller = Controller(bench.link)
    controller.connect()
    bench.put_in(VBit("v", 0.1, math.radians(30), Speeds(10000, 300, 120)))
    x, y = bench.sheet.corner()
    tip = bench.tip()
    controller.trust("xyz")
    controller.jog(x - tip[0], y - tip[1], 0.0, 600)
    controller.settle()
    tip = bench.tip()
    top = float(bench.sheet.top([tip[:2]])[0])
    controller.set_work(x=0.0, y=0.0, z=tip[2] - top)
    lines = program()
    start, simulated = time.process_time(), bench.clock.now()
    controller.clip = Clip.OFF
    controller.stream(lines)
    ran = time.process_time()
    print(f"{len(lines)} lines, {bench.clock.now() - simulated:.0f} s simulated: {ran - start:.2f} s of CPU")
    bench.copper  # noqa: B018 - works out what was cut
    carved = time.process_time()
    print(f"carving: {carved - ran:.2f} s")
    polygons = bench.copper.pieces.polygons
    pieces = time.process_time()
    areas = [swept(groove) for groove in bench.copper.grooves()]
    middle = time.process_time()
    shapely.union_all(areas)
    union = time.process_time() - middle
    ours = pieces - carved
    print(f"{len(areas)} pieces of groove, {len(polygons)} polygons left: {ours:.2f} s")
    print(f"union of the same grooves: {union:.2f} s; ratio {ours / union:.2f}")
    bench.operator.ask(Request(RequestKind.CLIP_ON, ""))
    rng = np.random.default_rng(0)
    for px, py in rng.uniform((5, 5), (60, 50), (50, 2)):
        for text in (f"G0X{px:.3f}Y{py:.3f}", "G38.3Z-0.5F60", "G91G0Z0.3", "G90", "G38.3Z-0.5F15", "G0Z2"):
            bench.link.write(text.encode() + b"\n")
            got = b""
            while b"ok" not in got:
                got += bench.link.read(1.0)
    print(f"100 touches: {time.process_time() - middle - union:.2f} s")
    print("mishaps:", {mishap.what for mishap in bench.mishaps} or "none")
    middle = time.process_time()
    bench.picture()
    print(f"picture of 50 µm cells: {time.process_time() - middle:.2f} s")


if __name__ == "__main__":
    main()
