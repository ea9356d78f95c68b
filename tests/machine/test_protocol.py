"""Lines of the protocol. Examples marked "documentation" are printed in the public interface
documentation of the GRBL 1.1 protocol (interface and commands pages)."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from drypoint.machine.protocol import (
    Alarm,
    Banner,
    ErrorReply,
    LineSplitter,
    Modal,
    Notice,
    Offset,
    Ok,
    Options,
    Phase,
    ProbeReport,
    Setting,
    StartupLine,
    StartupRun,
    Status,
    Unknown,
    Version,
    parse_line,
)


@pytest.mark.parametrize(
    ("text", "message"),
    [
        ("ok", Ok()),
        ("error:20", ErrorReply(20)),
        ("ALARM:2", Alarm(2)),
        ("Grbl 1.1f ['$' for help]", Banner("1.1f")),  # documentation
        ("[MSG:Reset to continue]", Notice("Reset to continue")),  # documentation
        ("[PRB:0.000,0.000,-1.492:1]", ProbeReport((0.0, 0.0, -1.492), True)),
        ("[PRB:0.000,0.000,0.000:0]", ProbeReport((0.0, 0.0, 0.0), False)),  # documentation
        ("[TLO:0.000]", Offset("TLO", (0.0,))),  # documentation
        ("[G54:4.000,0.000,0.000]", Offset("G54", (4.0, 0.0, 0.0))),  # documentation
        ("[VER:1.1f.20170131:My string]", Version("1.1f.20170131", "My string")),
        ("[OPT:VL,16,128]", Options("VL", 16, 128)),  # documentation
        ("[OPT:V]", Options("V", None, None)),
        ("$110=635.000", Setting(110, 635.0)),
        ("$100=250.000 (x, step/mm)", Setting(100, 250.0)),
        ("$N0=G54", StartupLine(0, "G54")),
        (">G54G20:ok", StartupRun("G54G20", True)),  # documentation
        (">G54G20:error:2", StartupRun("G54G20", False)),
        (
            "[GC:G0 G54 G17 G21 G90 G94 M5 M9 T0 F0.0 S0]",  # documentation
            Modal(("G0", "G54", "G17", "G21", "G90", "G94", "M5", "M9", "T0", "F0.0", "S0")),
        ),
        (
            "<Idle|MPos:3.000,2.000,0.000|FS:0,0>",
            Status(Phase.IDLE, machine=(3.0, 2.0, 0.0), feed=0.0, spindle=0.0),
        ),
        (
            "<Hold:1|WPos:1.000,2.000,3.000|Bf:15,128|F:500|WCO:0.000,1.000,-2.000|Pn:XYP|Ov:100,50,110|A:SF>",
            Status(
                Phase.HOLD,
                1,
                work=(1.0, 2.0, 3.0),
                offset=(0.0, 1.0, -2.0),
                feed=500.0,
                planner_free=15,
                receive_free=128,
                overrides=(100, 50, 110),
                pins=frozenset("XYP"),
                accessories="SF",
            ),
        ),
        (
            "<Run|MPos:1.000,2.000,3.000,4.000|New:7|Ln:99>",
            Status(Phase.RUN, machine=(1.0, 2.0, 3.0), line=99),
        ),
    ],
)
def test_every_kind_of_line(text, message):
    assert parse_line(text) == message


@pytest.mark.parametrize(
    "text",
    [
        "",
        "o",
        "okk",
        "error:",
        "error:x",
        "ALARM:",
        "<Idle>",
        "<Idle|MPos:1,2>",
        "<Bogus|MPos:1,2,3>",
        "<Idle|MPos:",
    ],
)
def test_what_is_garbled_is_unknown(text):
    assert parse_line(text) == Unknown(text)


@pytest.mark.parametrize("half", ["<Run|MPos:1.0", "o", "[MSG:Che", "err"])
def test_a_banner_after_a_cut_off_line_is_seen(half):
    assert parse_line(half + "Grbl 1.1f ['$' for help]") == Banner("1.1f")


@given(st.text())
def test_parsing_never_raises(text):
    parse_line(text)


@given(st.text(alphabet="<>|:,.-0123456789MPosWCOBfFSPnOvAIdleRunHold[]$=PRBGT"))
def test_parsing_never_raises_on_what_looks_right(text):
    parse_line("<Idle|MPos:" + text + ">")
    parse_line("[" + text + "]")


@given(st.lists(st.text("abc123:<>|", min_size=1)), st.lists(st.integers(1, 7)))
def test_lines_are_put_together_whatever_the_portions(lines, cuts):
    data = b"".join(line.encode() + b"\r\n" for line in lines)
    splitter, found, at = LineSplitter(), [], 0
    for size in [*cuts, len(data)]:
        found += splitter.feed(data[at : at + size])
        at += size
    assert found == lines


def test_noise_without_line_ends_is_bounded():
    splitter = LineSplitter()
    for _ in range(100):
        splitter.feed(b"\xff" * 1000)
    assert splitter.feed(b"\nok\n")[-1] == "ok"
