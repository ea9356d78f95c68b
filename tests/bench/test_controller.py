"""The protocol, as its public interface documentation (version 1.1) describes it."""

from __future__ import annotations

import re

import pytest


def test_the_greeting_and_the_documented_modal_defaults(terminal):
    assert terminal.send("$G") == ["[GC:G0 G54 G17 G21 G90 G94 M5 M9 T0 F0 S0]", "ok"]


# the numbers of the interface documentation's error table
@pytest.mark.parametrize(
    ("line", "code"),
    [
        ("G1X", 2),
        ("1X2", 1),
        ("$7777=1", 3),
        ("$110=-5", 4),
        ("F-1", 4),
        ("$H", 5),
        ("$0=2", 6),
        ("$20=1", 10),
        ("G0X" + "1" * 90, 11),
        ("$J=G91X1", 22),
        ("$J=G91X1F100S3", 16),
        ("G83", 20),
        ("G5X1", 20),
        ("A1", 20),
        ("G0G1X1", 21),
        ("G1X1", 22),
        ("M3.5", 23),
        ("G10L2P1G1X1F1", 24),
        ("G0X1X2", 25),
        ("G92", 26),
        ("N99999999G0X1", 27),
        ("G4", 28),
        ("G10L2P9X1", 29),
        ("G53G38.2Z-1F10", 30),
        ("G80X1", 31),
        ("G2Z1I1F100", 32),
        ("G2X1Y1I5J5F100", 33),
        ("G2X10R1F100", 34),
        ("G2X1Y1F100", 35),
        ("G0X1P3", 36),
        ("G43.1X1", 37),
        ("T999", 38),
    ],
)
def test_a_bad_line_gets_its_documented_number(terminal, line, code):
    assert terminal.send(line)[-1] == f"error:{code}"
    assert terminal.place() == (0.0, 0.0, 0.0)


def test_every_line_gets_one_answer_and_pushed_lines_none(terminal):
    terminal.link.write(b"G21\n\n(only a comment)\nG90\nG4P0.01\n?")
    answers = terminal.read_all(2.0)
    assert answers.count("ok") == 5
    assert sum(line.startswith("<") for line in answers) == 1


def test_offsets_come_first_overrides_second_then_in_their_rhythm(terminal):
    reports = [terminal.status() for _ in range(25)]
    assert "WCO:" in reports[0]
    assert "Ov:" not in reports[0]
    assert "Ov:" in reports[1]
    assert "WCO:" not in reports[1]
    assert [i for i, report in enumerate(reports) if "WCO:" in report] == [0, 10, 20]


def test_a_new_offset_is_in_the_next_report(terminal):
    for _ in range(3):
        terminal.status()
    terminal.send("G92X5")
    assert "WCO:-5.000,0.000,0.000" in terminal.status()


# the jogging documentation's example: with G21 G90 active and WCO y = 2
def test_the_documented_jog_examples(terminal):
    terminal.send("G10L2P1Y2")
    terminal.send("$J=X10.0Y-1.5F1000")
    terminal.rest()
    assert terminal.place()[:2] == pytest.approx((10.0, 0.5), abs=2e-3)
    terminal.send("$J=G91G20X0.5F100")
    terminal.rest()
    assert terminal.place()[0] == pytest.approx(22.7, abs=2e-3)
    terminal.send("$J=G53Y5.0F1000")
    terminal.rest()
    assert terminal.place()[1] == pytest.approx(5.0, abs=2e-3)
    assert "G21" in terminal.send("$G")[0]


def test_a_jog_is_cancelled_and_its_queue_forgotten(terminal):
    for _ in range(3):
        terminal.send("$J=G91X20F600")
    terminal.link.clock.sleep(1.0)
    terminal.link.write(b"\x85")
    terminal.rest()
    assert 1.0 < terminal.place()[0] < 20.0
    assert terminal.send("G4P0.01") == ["ok"]
    assert terminal.place()[0] < 20.0


def test_code_is_refused_while_jogging(terminal):
    terminal.send("$J=G91X20F600")
    assert terminal.send("G0X1")[-1] == "error:9"


def test_an_error_does_not_stop_what_is_buffered(terminal):
    terminal.link.write(b"G91\nG0X1\nG77\nG0X1\n")
    answers = terminal.read_all(3.0)
    assert answers == ["ok", "ok", "error:20", "ok"]
    assert terminal.place()[0] == pytest.approx(2.0, abs=2e-3)


def test_bytes_are_lost_while_persistent_memory_is_written(terminal):
    terminal.link.write(b"G10L2P1X1\nG0X5\n")
    answers = terminal.read_all(3.0)
    assert answers.count("ok") == 1
    assert terminal.bench.controller.overruns > 0


def test_bytes_beyond_the_buffer_are_lost(terminal):
    terminal.link.write(b"G4P1\n" + b"G0X0.001Y0.001\n" * 20)
    terminal.read_all(5.0)
    assert terminal.bench.controller.overruns > 0


def test_a_counted_stream_never_overruns(terminal):
    lines = [f"G1X{i * 0.1:.1f}Y{(i % 7) * 0.1:.1f}F600\n".encode() for i in range(400)]
    waiting: list[int] = []
    answers, sent = "", 0
    while answers.count("ok") < len(lines):
        while sent < len(lines) and sum(waiting[answers.count("ok") :]) + len(lines[sent]) <= 127:
            terminal.link.write(lines[sent])
            waiting.append(len(lines[sent]))
            sent += 1
        answers += terminal.link.read(5.0).decode()
    assert terminal.bench.controller.overruns == 0
    assert "error" not in answers


def test_hold_stands_keeps_and_resume_goes_on(terminal):
    terminal.link.write(b"G91G1X10F300\n")
    terminal.link.clock.sleep(0.8)
    terminal.link.write(b"!")
    assert "<Hold:" in terminal.status()
    terminal.link.clock.sleep(2.0)
    assert "<Hold:0" in terminal.status()
    held = terminal.place()
    terminal.link.clock.sleep(5.0)
    assert terminal.place() == held
    assert 0.0 < held[0] < 10.0
    terminal.link.write(b"~")
    terminal.rest()
    assert terminal.place()[0] == pytest.approx(10.0, abs=2e-3)


def test_a_reset_at_rest_keeps_the_position_and_forgets_g92(terminal):
    terminal.send("G0X3")
    terminal.send("G92X0")
    terminal.rest()
    terminal.link.write(b"\x18")
    assert terminal.read_all(1.0)[-1].startswith("Grbl 1.1")
    assert terminal.place()[0] == pytest.approx(3.0, abs=2e-3)
    assert "[G92:0.000,0.000,0.000]" in terminal.send("$#")


def test_a_reset_after_a_hold_is_no_alarm_but_while_moving_it_is(terminal):
    terminal.link.write(b"G91G1X10F300\n")
    terminal.link.clock.sleep(1.0)
    terminal.link.write(b"!")
    terminal.link.clock.sleep(1.0)
    terminal.link.write(b"\x18")
    assert not any("ALARM" in line for line in terminal.read_all(1.0))
    terminal.link.write(b"G91G1X10F300\n")
    terminal.link.clock.sleep(1.0)
    terminal.link.write(b"\x18")
    assert "ALARM:3" in terminal.read_all(1.0)
    assert terminal.send("G0X1")[-1] == "error:9"
    assert terminal.send("$X") == ["[MSG:Caution: Unlocked]", "ok"]
    assert terminal.send("G0X1")[-1] == "ok"


def test_check_mode_reads_without_moving_and_leaving_it_resets(terminal):
    assert terminal.send("$C") == ["[MSG:Enabled]", "ok"]
    assert terminal.send("G1X50F100") == ["ok"]
    assert terminal.send("G38.2")[-1] == "error:26"
    assert terminal.place() == (0.0, 0.0, 0.0)
    terminal.send("$C")
    assert any(line.startswith("Grbl") for line in terminal.read_all(1.0))


def test_probing_without_contact_alarms_or_reports(terminal):
    assert terminal.send("G38.3Z-1F100") == ["[PRB:0.000,0.000,-1.000:0]", "ok"]
    answer = terminal.send("G38.2Z-2F100")
    assert "ALARM:5" in answer
    assert any(line.startswith("[PRB:") and line.endswith(":0]") for line in answer)


def test_probing_with_the_input_closed_alarms_without_motion(terminal, vbit):
    terminal.bench.put_in(vbit)
    terminal.bench.body.clip_at_bit = True
    assert "Pn:P" in terminal.status()
    assert "ALARM:4" in terminal.send("G38.2Z-1F100")
    assert terminal.place() == (0.0, 0.0, 0.0)


def test_overrides_change_speed_and_are_reported(terminal):
    terminal.status()
    terminal.link.write(b"G91G1X100F300\n")
    terminal.link.clock.sleep(2.0)
    for _ in range(2):
        terminal.link.write(b"\x91\x91\x91")  # equal ones in one turn count once
        terminal.link.clock.sleep(0.5)
    report = terminal.status()
    assert "FS:360" in report
    assert "Ov:120,100,100" in report


def test_an_arc_follows_its_circle(terminal):
    terminal.send("G1X10F900")
    terminal.send("G3X0Y10I-10F900")
    terminal.rest()
    bench = terminal.bench
    bench.body.flush()
    ends = bench.body.trail[-1].ends
    on_arc = ends[ends[:, 1] > 1e-6]
    assert len(on_arc) > 30
    assert abs((on_arc[:, 0] ** 2 + on_arc[:, 1] ** 2) ** 0.5 - 10.0).max() < 0.002 + 0.001


def test_settings_outlast_power_and_the_position_does_not(terminal):
    terminal.send("$110=777")
    terminal.send("G0X5")
    terminal.rest()
    terminal.bench.controller.power_off()
    terminal.link = terminal.bench.connect()
    terminal.read_all(2.0)
    assert "$110=777.000" in terminal.send("$$")
    assert terminal.place() == (0.0, 0.0, 0.0)


def test_startup_lines_run_after_a_reset(terminal):
    terminal.send("$N0=G55")
    terminal.link.write(b"\x18")
    assert ">G55:ok" in terminal.read_all(1.0)
    assert "G55" in terminal.send("$G")[0]


def test_homing_finds_the_switches_and_soft_limits_hold(make, terminal_of):
    terminal = terminal_of(make(switches=True))
    terminal.send("$22=1")
    assert terminal.send("$H") == ["ok"]
    assert terminal.place() == pytest.approx((-1.0, -1.0, -1.0), abs=2e-3)
    terminal.send("$20=1")
    assert terminal.send("$J=G53X50F500")[-1] == "error:15"
    terminal.link.write(b"G53G0X50\n")
    assert "ALARM:2" in terminal.read_all(2.0)
    terminal.link.write(b"?G0X0\n")  # only a reset helps
    assert terminal.read_all(1.0) == []
    terminal.link.write(b"\x18")
    terminal.read_all(1.0)
    assert terminal.place()[0] == pytest.approx(-1.0, abs=2e-3)


def test_laser_power_is_off_in_rapids_and_follows_speed(make, terminal_of):
    terminal = terminal_of(make(settings={30: 1000, 110: 3000, 111: 3000, 120: 200, 121: 200}))
    for line in ("$32=1", "M4S500", "G1X5F600", "G0X9", "G1X12", "M5"):
        terminal.send(line)
    bench = terminal.bench
    bench.body.flush()
    powers = [power for path in bench.body.trail for power in path.power]
    assert [bool(power) for power in powers] == [True, False, True]


def test_the_buffer_field_tells_free_blocks(terminal):
    terminal.send("$10=3")
    found = re.search(r"Bf:(\d+),(\d+)", terminal.status())
    assert found
    assert found.groups() == ("15", "128")
