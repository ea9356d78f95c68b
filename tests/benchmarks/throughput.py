"""How much of a 115200 baud line the sender fills, and how fast a hold gets through.

    python tests/benchmarks/throughput.py

1. Real pyserial on a pty. At the far end, in a process of its own, sits a model of the serial line
   (8-N-1: 11520 bytes a second each way) with a receive buffer of 128 bytes that takes a line as soon
   as it is complete: the line alone is the limit. Reference in the same run: line by line, the other
   mode that the protocol's documentation describes.
2. The bench with its planner, in simulated time: 0.1 mm segments at rising feeds. Starved says how
   often the planner ran dry; a feed that needs more bytes than the line carries cannot be kept, nor
   one from which the machine could not stop within the 15 blocks ahead (column planner).
3. Time from the call of `hold` to the arrival of its byte, while streaming.
"""

from __future__ import annotations

import math
import multiprocessing
import os
import pty
import random
import select
import threading
import time
import tty

from drypoint.bench.bench import Bench
from drypoint.machine.controller import Controller
from drypoint.machine.sender import Flow, line_seconds
from drypoint.machine.serial_link import SerialLink
from drypoint.machine.state import Clip

CAPACITY = 11520.0  # bytes a second: 115200 baud, 10 bits a byte
BUFFER = 128
ACCELERATION = 500.0  # mm/s²
LATENCY = 0.001  # s, of a USB adapter, each way


def far_end(master: int, report) -> None:
    """A serial line and a controller that takes each line at once, in real time."""
    free_in = free_out = time.monotonic()
    line, used, worst = b"", 0, 0
    first = last = None
    taken = 0
    holds: list[float] = []
    out: list[tuple[float, bytes]] = []
    arriving: list[tuple[float, int]] = []
    while True:
        wait = 0.0005
        ready, _, _ = select.select([master], [], [], wait)
        now = time.monotonic()
        if ready:
            try:
                data = os.read(master, 4096)
            except OSError:
                break
            for value in data:  # handed over now, on the wire one after the other
                free_in = max(free_in, now + LATENCY) + 1.0 / CAPACITY
                arriving.append((free_in, value))
        done = 0
        for at, value in arriving:
            if at > now:
                break
            done += 1
            byte = bytes([value])
            if byte == b"!":
                holds.append(at)
            elif byte == b"~":
                pass
            elif byte == b"?":
                free_out = say(
                    out, free_out, at, b"<Run|MPos:0.000,0.000,0.000|FS:0,0|WCO:0.000,0.000,0.000>\r\n"
                )
            elif byte == b"\x18":
                free_out = say(out, free_out, at, b"\r\nGrbl 1.1f ['$' for help]\r\n")
                line, used = b"", 0
            elif byte == b"\n":
                worst = max(worst, used + 1)
                if line.startswith(b"X"):
                    first = first or at
                    last = at
                    taken += len(line) + 1
                elif line == b"$I":
                    free_out = say(out, free_out, at, b"[OPT:V,15,128]\r\n")
                elif line == b"END":
                    report.send((first, last, taken, worst, holds))
                    first, taken, holds, worst = None, 0, [], 0
                line, used = b"", 0
                free_out = say(out, free_out, at, b"ok\r\n")
            else:
                line += byte
                used += 1
        del arriving[:done]
        while out and out[0][0] <= time.monotonic():
            os.write(master, out.pop(0)[1])


def say(out, free: float, at: float, data: bytes) -> float:
    free = max(free, at) + len(data) / CAPACITY
    out.append((free + LATENCY, data))
    return free


def through_pty() -> None:
    master, slave = pty.openpty()
    tty.setraw(slave)
    here, there = multiprocessing.Pipe()
    process = multiprocessing.get_context("fork").Process(target=far_end, args=(master, there), daemon=True)
    process.start()
    os.write(slave, b"\x18")
    link = SerialLink(os.ttyname(slave))
    rng = random.Random(1)
    print("1. real pyserial on a pty, the line is the limit")
    print(f"{'flow':<20}{'lines':>7}{'bytes':>8}{'of capacity':>13}")
    for flow, count in ((Flow.COUNTED, 4000), (Flow.SINGLE, 800)):
        controller = Controller(link, flow=flow)
        link.write(b"\x18")
        controller.connect()
        lines = [f"X{rng.uniform(0, 99):.3f}Y{rng.uniform(0, 99):.3f}" for _ in range(count)]
        controller.stream(lines)
        controller.command("END")
        first, last, taken, worst, _ = here.recv()
        share = (taken - len(lines[0]) - 1) / (last - first) / CAPACITY
        print(f"{flow:<20}{count:>7}{taken:>8}{share:>12.1%}")
        assert worst <= BUFFER
    holds(link, here)
    process.terminate()
    process.join()
    link.close()
    os.close(master)
    os.close(slave)


def holds(link: SerialLink, here) -> None:
    controller = Controller(link)
    link.write(b"\x18")
    controller.connect()
    asked: list[float] = []
    done = threading.Event()

    def press() -> None:
        rng = random.Random(2)
        while not done.wait(rng.uniform(0.01, 0.05)):
            asked.append(time.monotonic())
            controller.hold()
            controller.resume()

    thread = threading.Thread(target=press)
    thread.start()
    controller.stream([f"X{i % 100}.123Y{i % 77}.456" for i in range(6000)])
    done.set()
    thread.join()
    controller.command("END")
    *_, arrived = here.recv()
    delays = sorted(1000.0 * (b - a) for a, b in zip(asked, arrived, strict=True))
    print("\n3. hold while streaming: call to arrival")
    print(f"{'holds':>7}{'median ms':>11}{'p99 ms':>9}{'worst ms':>10}")
    p99 = delays[math.ceil(0.99 * len(delays)) - 1]
    print(f"{len(delays):>7}{delays[len(delays) // 2]:>11.1f}{p99:>9.1f}{delays[-1]:>10.1f}")


def on_bench() -> None:
    print("\n2. bench, 0.1 mm segments, simulated time; acceleration 500 mm/s²")
    names = ("feed mm/min", "bytes/s", "of the line", "planner", "kept", "line used", "starved")
    print("".join(f"{name:>12}" for name in names))
    for feed in (300, 600, 1200, 2400, 4800):
        bench = Bench(1)
        bench.controller.memory.settings.update({110: 6000, 111: 6000, 120: ACCELERATION, 121: ACCELERATION})
        controller = Controller(bench.link)
        controller.connect()
        controller.clip = Clip.OFF
        controller.set_work(x=0.0, y=0.0, z=20.0)
        count = 3000
        points = [(20 + 15 * math.cos(i * 0.1 / 15), 20 + 15 * math.sin(i * 0.1 / 15)) for i in range(count)]
        lines = [f"X{x:.3f}Y{y:.3f}" for x, y in points]
        controller.move((*points[0], None))
        starved = bench.controller.starved
        start = controller.now()
        controller.stream([f"G1F{feed}", *lines])
        seconds = controller.now() - start
        ideal = count * 0.1 / feed * 60.0
        needed = line_seconds(lines) / ideal
        sent = sum(len(line) + 1 for line in lines)
        dry = bench.controller.starved - starved
        ahead = 60.0 * math.sqrt(2.0 * ACCELERATION * 15 * 0.1)  # can stop within the 15 blocks it knows
        print(
            f"{feed:>12}{sent / ideal:>12.0f}{needed:>12.0%}{min(1.0, ahead / feed):>12.0%}"
            f"{ideal / seconds:>12.1%}{sent / seconds / CAPACITY:>12.1%}{dry:>12}"
        )


if __name__ == "__main__":
    through_pty()
    on_bench()
