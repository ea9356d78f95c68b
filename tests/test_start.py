"""The set-up script: one call from a fresh folder to a running program, and nothing half made.

The script runs for real, with a real ``venv`` and a real ``pip``, in a folder that holds a stand-in for the
project: its build needs no packages, so nothing here needs a network.
"""

from __future__ import annotations

import ast
import errno
import importlib.util
import io
import os
import re
import shutil
import signal
import subprocess
import sys
import tokenize
from pathlib import Path
from types import ModuleType
from typing import Any

import pytest

PROJECT = """\
[build-system]
requires = []
build-backend = "backend"
backend-path = ["build-tools"]

[project]
name = "drypoint"
version = "1.0"
dependencies = []
"""

BACKEND = """\
import os, zipfile

def get_requires_for_build_editable(settings=None):
    return []

def build_editable(folder, settings=None, metadata=None):
    doing = os.environ.get("STAND_IN_BUILD", "")
    if doing.startswith("say:"):
        raise SystemExit(doing[4:])
    if doing.startswith("wait:"):
        with open(doing[5:], "w") as pipe:
            pipe.write("waiting")
            pipe.flush()
            while True:
                os.read(os.pipe()[0], 1)
    here = os.path.dirname(os.path.dirname(os.path.abspath(__file__)))
    name = "drypoint-1.0-py3-none-any.whl"
    inside = "drypoint-1.0.dist-info/"
    scripts = "[console_scripts]\\ndrypoint = drypoint.__main__:main\\n"
    needs = os.environ.get("STAND_IN_NEEDS", "")
    with zipfile.ZipFile(os.path.join(folder, name), "w") as wheel:
        wheel.writestr("drypoint.pth", os.path.join(here, "app"))
        wheel.writestr(inside + "METADATA", "Metadata-Version: 2.1\\nName: drypoint\\nVersion: 1.0\\n"
                       + ("Requires-Dist: %s\\n" % needs if needs else ""))
        wheel.writestr(inside + "WHEEL", "Wheel-Version: 1.0\\nRoot-Is-Purelib: true\\nTag: py3-none-any\\n")
        wheel.writestr(inside + "entry_points.txt", scripts)
        wheel.writestr(inside + "RECORD", "")
    return name
"""

MAIN = """\
import sys

def main():
    print("stand-in", *sys.argv[1:])
    return 7 if "refuse" in sys.argv else 0

if __name__ == "__main__":
    sys.exit(main())
"""

posix_only = pytest.mark.skipif(os.name == "nt", reason="signals and pipes of POSIX")


@pytest.fixture(scope="module")
def script(root: Path) -> Path:
    return root / "app" / "start.py"


@pytest.fixture
def start(script: Path, tmp_path: Path) -> ModuleType:
    """The script as a module that works in an empty folder."""
    spec = importlib.util.spec_from_file_location("start_under_test", script)
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    module.ROOT = str(tmp_path)
    for name, folder in (("VENV", ".venv"), ("HALF", ".ven_"), ("OLD", ".ven-")):
        setattr(module, name, str(tmp_path / folder))
    (tmp_path / "pyproject.toml").write_text(PROJECT, encoding="utf-8")
    return module


class Tree:
    """A folder like a fresh checkout, and calls of its ``start.py``."""

    def __init__(self, folder: Path, script: Path) -> None:
        self.folder = folder
        (folder / "app" / "drypoint").mkdir(parents=True)
        (folder / "build-tools").mkdir()
        shutil.copy(script, folder / "app" / "start.py")
        (folder / "pyproject.toml").write_text(PROJECT, encoding="utf-8")
        (folder / "build-tools" / "backend.py").write_text(BACKEND, encoding="utf-8")
        (folder / "app" / "drypoint" / "__init__.py").touch()
        (folder / "app" / "drypoint" / "__main__.py").write_text(MAIN, encoding="utf-8")

    def environment(self, **more: str) -> dict[str, str]:
        """No index, no settings of this machine, no wheels from elsewhere."""
        kept = {
            name: value
            for name, value in os.environ.items()
            if not name.startswith(("PIP_", "COV_", "PYTEST_")) and name != "VIRTUAL_ENV"
        }
        return kept | {"PIP_CONFIG_FILE": os.devnull, "PIP_NO_INDEX": "1", "PIP_NO_CACHE_DIR": "1"} | more

    def command(self, *words: str) -> list[str]:
        return [sys.executable, str(self.folder / "app" / "start.py"), *words]

    def call(self, *words: str, **environment: str) -> subprocess.CompletedProcess[str]:
        return subprocess.run(
            self.command(*words),
            env=self.environment(**environment),
            capture_output=True,
            text=True,
            check=False,
            timeout=240,
        )

    def hidden(self) -> set[str]:
        return {path.name for path in self.folder.iterdir() if path.name.startswith(".")}

    def python(self) -> Path:
        return self.folder / ".venv" / ("Scripts/python.exe" if os.name == "nt" else "bin/python")


@pytest.fixture
def tree(tmp_path: Path, script: Path) -> Tree:
    return Tree(tmp_path / "a place with blanks", script)


def test_from_a_fresh_folder_to_a_moved_one(tree: Tree) -> None:
    pair = [_begin(tree, "show", "a job") for _ in range(2)]
    said = [child.communicate(timeout=240) for child in pair]
    assert [child.returncode for child in pair] == [0, 0], said
    assert [out for out, _ in said] == ["stand-in show a job\n"] * 2
    assert sorted("Setting up" in err for _, err in said) == [False, True]  # one waits for the other
    assert tree.hidden() == {".venv"}
    made = (tree.folder / ".venv" / "drypoint-ready").stat()

    second = tree.call("refuse")
    assert second.returncode == 7  # the command's own exit code
    assert second.stderr == ""  # nothing was set up, nothing said
    assert (tree.folder / ".venv" / "drypoint-ready").stat().st_ino == made.st_ino

    moved = tree.folder.with_name("moved")
    tree.folder.rename(moved)
    tree.folder = moved
    third = tree.call("show")
    assert (third.returncode, third.stdout) == (0, "stand-in show\n"), third.stderr
    assert "Setting up" in third.stderr
    assert tree.hidden() == {".venv"}
    launcher = tree.python().with_name("drypoint.exe" if os.name == "nt" else "drypoint")
    done = subprocess.run([launcher, "x"], capture_output=True, text=True, check=True, timeout=60)
    assert done.stdout == "stand-in x\n"
    inside = [path for path in tree.python().parent.iterdir() if path.is_file() and not path.is_symlink()]
    assert not [path.name for path in inside if b".ven_" in path.read_bytes()]


def _begin(tree: Tree, *words: str) -> subprocess.Popen[str]:
    pipe = subprocess.PIPE
    return subprocess.Popen(tree.command(*words), env=tree.environment(), stdout=pipe, stderr=pipe, text=True)


def test_a_failure_keeps_what_was_there_and_names_its_reason(tree: Tree) -> None:
    """A dead index stands for no network; the words after it are pip's own."""
    dead = {"PIP_NO_INDEX": "0", "PIP_INDEX_URL": "http://127.0.0.1:9/simple", "PIP_RETRIES": "1"}
    failed = tree.call("show", STAND_IN_NEEDS="no-such-part", **dead)
    assert failed.returncode == 1
    assert "no network, or a proxy in the way" in failed.stderr
    assert "Traceback" not in failed.stderr
    assert failed.stdout == ""
    assert tree.hidden() == set()

    (tree.folder / ".venv").mkdir()
    (tree.folder / ".venv" / "mine").touch()
    failed = tree.call("show", STAND_IN_BUILD="say:No space left on device")
    assert failed.returncode == 1
    assert "disk is full" in failed.stderr
    assert tree.hidden() == {".venv"}
    assert (tree.folder / ".venv" / "mine").exists()


@posix_only
def test_ended_half_way_leaves_nothing_and_no_child(tree: Tree) -> None:
    pipe = tree.folder / "pipe"
    os.mkfifo(pipe)
    child = subprocess.Popen(
        tree.command("show"), env=tree.environment(STAND_IN_BUILD=f"wait:{pipe}"), stderr=subprocess.PIPE
    )
    with pipe.open("rb") as end:  # blocks until pip's build is under way
        assert end.read(7) == b"waiting"
        assert ".ven_" in tree.hidden()
        child.send_signal(signal.SIGTERM)
        _, said = child.communicate(timeout=60)
        assert end.read() == b""  # the far end is closed: the build has ended too
    assert child.returncode == 130
    assert b"nothing was left half made" in said
    assert b"Traceback" not in said
    assert tree.hidden() == set()


@posix_only
def test_a_request_to_end_reaches_the_command(start: ModuleType, tmp_path: Path, script: Path) -> None:
    """The program that runs in the foreground is ended with the script."""
    pipe = tmp_path / "pipe"
    os.mkfifo(pipe)
    inner = f"import time; f = open({str(pipe)!r}, 'w'); f.write('here'); f.flush(); time.sleep(300)"
    outer = (
        "import runpy, sys; start = runpy.run_path(sys.argv[1]); start['stop_on_signals']();"
        "start['call'].__globals__['venv_python'] = lambda folder: sys.executable;"
        f"sys.exit(start['call'](['-c', {inner!r}]))"
    )
    child = subprocess.Popen([sys.executable, "-c", outer, str(script)])
    with pipe.open("rb") as end:
        assert end.read(4) == b"here"
        child.send_signal(signal.SIGTERM)
        assert child.wait(timeout=60) == 128 + signal.SIGTERM
        assert end.read() == b""


def test_what_a_killed_set_up_left_is_put_right(start: ModuleType, tmp_path: Path) -> None:
    """Killed between the two renames: the old environment waits beside the half-made one."""
    for name in (".ven-", ".ven_"):
        (tmp_path / name).mkdir()
        (tmp_path / name / "whose").write_text(name)
    start.restore()
    assert (tmp_path / ".venv" / "whose").read_text() == ".ven-"
    assert not (tmp_path / ".ven-").exists()
    assert not (tmp_path / ".ven_").exists()


def test_a_failed_second_rename_gives_the_old_one_back(start: ModuleType, tmp_path: Path) -> None:
    (tmp_path / ".venv").mkdir()
    (tmp_path / ".venv" / "mine").touch()
    with pytest.raises(OSError, match="ven_"):
        start.replace()  # there is no new one
    assert (tmp_path / ".venv" / "mine").exists()
    assert not (tmp_path / ".ven-").exists()


def test_an_environment_in_use_is_said_so(
    start: ModuleType, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def refuse(old: str, new: str) -> None:
        raise PermissionError(errno.EACCES, "in use", old)  # as Windows does

    (tmp_path / ".venv").mkdir()
    monkeypatch.setattr(start.os, "rename", refuse)
    with pytest.raises(start.Trouble, match="in use: close Drypoint"):
        start.replace()


@pytest.mark.parametrize(
    ("error", "words"),
    [
        (OSError(errno.ENOSPC, "No space left on device"), "disk is full"),
        (OSError(errno.EROFS, "Read-only file system"), "Read-only file system"),
    ],
)
def test_trouble_of_the_disk_is_for_people(
    start: ModuleType, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, error: OSError, words: str
) -> None:
    def build(command: list[str], extra: str) -> None:
        (tmp_path / ".ven_").mkdir()
        raise error

    monkeypatch.setattr(start, "build", build)
    with pytest.raises(start.Trouble, match=words):
        start.set_up("")
    assert not [path for path in tmp_path.iterdir() if path.name.startswith(".ven")]


@posix_only
def test_a_python_without_its_venv_part(
    start: ModuleType, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """The words are those of Debian's ``python3 -m venv`` where python3-venv is not installed."""
    half = _program(
        tmp_path / "python3.12",
        'case "$1" in -m) echo "The virtual environment was not created successfully because ensurepip is not'
        ' available."; exit 1;; *) echo 3.12;; esac',
    )
    monkeypatch.setattr(start, "find_python", lambda: [str(half)])
    monkeypatch.setattr(start, "stop_on_signals", lambda: None)
    assert start.main(["show"]) == 1
    said = capsys.readouterr().err
    assert "apt install python3.12-venv" in said
    assert "python3-venv" in said


@pytest.mark.parametrize("output", ["/usr/bin/python3: No module named venv", "Install python3-venv."])
def test_other_words_for_a_missing_venv(start: ModuleType, output: str) -> None:
    assert "apt install python3.11-venv" in start.explain_venv(output, "3.11")


def test_reasons_of_pip(start: ModuleType) -> None:
    """Lines as pip prints them."""
    retry = (
        "WARNING: Retrying (Retry(total=4, connect=None, read=None, redirect=None, status=None)) after"
        " connection broken by 'NewConnectionError(': Failed to establish a new connection: [Errno -3]"
        " Temporary failure in name resolution')': /simple/setuptools/\n"
        "ERROR: No matching distribution found for setuptools>=68"
    )
    assert "no network" in start.explain_pip(retry, "3.11")
    full = "ERROR: Could not install packages due to an OSError: [Errno 28] No space left on device"
    assert start.explain_pip(full + retry, "3.11") == start.DISK_FULL
    none = "ERROR: No matching distribution found for PySide6-Essentials>=6.8.3"
    assert "PySide6-Essentials is not to be had for Python 3.15" in start.explain_pip(none, "3.15")
    assert "pip said:\n    error: oh" in start.explain_pip("error: oh", "3.11")


def _program(path: Path, body: str) -> Path:
    path.parent.mkdir(exist_ok=True)
    path.write_text(f"#!/bin/sh\n{body}\n", encoding="utf-8")
    path.chmod(0o755)
    return path


@posix_only
def test_an_old_python_looks_for_a_newer_one(
    start: ModuleType, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(sys, "version_info", (3, 8, 10, "final", 0))
    monkeypatch.setenv("PATH", str(tmp_path / "bin"))
    with pytest.raises(start.Trouble, match=r"needs Python 3\.11 or newer; this is 3\.8") as told:
        start.find_python()
    assert "apt install python3 python3-venv" in str(told.value)
    _program(tmp_path / "bin" / "python3", "echo False")
    _program(tmp_path / "bin" / "python3.13", "echo broken >&2; exit 1")
    with pytest.raises(start.Trouble):
        start.find_python()
    _program(tmp_path / "bin" / "python3.12", "echo True")
    assert start.find_python() == ["python3.12"]


def test_windows_asks_its_launcher(start: ModuleType, monkeypatch: pytest.MonkeyPatch) -> None:
    asked = []

    def run(command: list[str], **more: Any) -> tuple[int, str]:
        asked.append(command[:2])
        return (
            (0, "True\r\n") if command[:2] == ["py", "-3.11"] else (103, "No suitable Python runtime found")
        )

    monkeypatch.setattr(sys, "version_info", (3, 10, 0, "final", 0))
    monkeypatch.setattr(start, "WINDOWS", True)
    monkeypatch.setattr(start, "run", run)
    assert start.find_python() == ["py", "-3.11"]
    assert asked == [["py", "-3.13"], ["py", "-3.12"], ["py", "-3.11"]]


def test_windows_paths(start: ModuleType, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(start, "WINDOWS", True)
    assert Path(start.venv_python("x")).parts == ("x", "Scripts", "python.exe")
    scripts = tmp_path / ".ven_" / "Scripts"
    scripts.mkdir(parents=True)
    launcher = b"MZ\x00\x00 a program \x00#!C:\\made\\.ven_\\Scripts\\python.exe\r\nPK\x03\x04 a zip"
    (scripts / "drypoint.exe").write_bytes(launcher)
    (tmp_path / ".ven_" / "pyvenv.cfg").write_text("command = python -m venv C:\\made\\.ven_\n")
    start.rename_inside(str(tmp_path / ".ven_"), "C:\\made\\.ven_", "C:\\made\\.venv")
    changed = (scripts / "drypoint.exe").read_bytes()
    assert changed == launcher.replace(b".ven_", b".venv")
    assert len(changed) == len(launcher)  # the zip at the end is found by its distance
    assert ".ven_" not in (tmp_path / ".ven_" / "pyvenv.cfg").read_text()
    assert start.has_screen()


def test_an_environment_whose_python_went_is_renewed(start: ModuleType, tmp_path: Path) -> None:
    """After an upgrade of the system the link leads nowhere, or to another version."""
    venv = tmp_path / ".venv"
    (venv / "bin").mkdir(parents=True)
    (venv / "drypoint-ready").write_text(start.fingerprint("test"))
    (venv / "pyvenv.cfg").write_text(f"home = {tmp_path}\n")
    system = tmp_path / "python3.11"
    system.touch()
    (venv / "bin" / "python").symlink_to(system)
    (venv / "lib" / "python3.11").mkdir(parents=True)
    assert start.fits("test")
    assert start.fits("")  # what has the tests' packages has the program's
    (tmp_path / "pyproject.toml").write_text(PROJECT + "# a change\n")
    assert not start.fits("test")
    (tmp_path / "pyproject.toml").write_text(PROJECT)
    newer = system.rename(tmp_path / "python3.12")
    assert not start.fits("test")
    (venv / "bin" / "python").unlink()
    (venv / "bin" / "python").symlink_to(newer)
    assert not start.fits("test")
    (venv / "lib" / "python3.12").mkdir()
    assert start.fits("test")
    (venv / "drypoint-ready").write_text(start.fingerprint(""))
    assert not start.fits("test")
    assert start.fits("")


def test_a_renewed_environment_keeps_the_tests_packages(
    start: ModuleType, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    built = []

    def build(command: list[str], extra: str) -> None:
        built.append(extra)
        (tmp_path / ".ven_").mkdir()
        (tmp_path / ".ven_" / "drypoint-ready").write_text(start.fingerprint(extra))

    monkeypatch.setattr(start, "build", build)
    for asked in ("", "test", ""):
        start.set_up(asked)
    assert built == ["", "test", "test"]


def test_settings_that_lead_pip_astray_are_left_out(
    start: ModuleType, monkeypatch: pytest.MonkeyPatch
) -> None:
    for name in ("PIP_USER", "PIP_TARGET", "PYTHONPATH", "PYTHONHOME"):
        monkeypatch.setenv(name, "1")
    monkeypatch.setenv("PIP_INDEX_URL", "https://mirror.invalid/simple")
    kept = start.clean_environment()
    assert not kept.keys() & {"PIP_USER", "PIP_TARGET", "PYTHONPATH", "PYTHONHOME"}
    assert kept["PIP_INDEX_URL"] == "https://mirror.invalid/simple"


def test_missing_libraries_of_qt_are_named_as_packages(start: ModuleType) -> None:
    """The first line is the dynamic linker's, as Python shows it."""
    output = (
        "ImportError: libEGL.so.1: cannot open shared object file: No such file or directory\n"
        "ImportError: libunknown-9.so.2: cannot open shared object file: No such file or directory"
    )
    missing = start.libraries_missing(output)
    assert missing == ["libEGL.so.1", "libunknown-9.so.2"]
    told = start.explain_qt(output, missing)
    assert "libunknown-9.so.2" in told
    assert told.endswith("apt install libegl1")
    assert "apt" not in start.explain_qt("", ["libunknown-9.so.2"])
    assert start.explain_qt("Aborted\n", []) == "Qt does not start here:\n    Aborted"


@posix_only
def test_the_window_plugin_is_asked_what_it_lacks(
    start: ModuleType, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Qt names no library when a plugin fails; the dynamic linker does."""
    plugin = tmp_path / ".venv/lib/python3.11/site-packages/PySide6/Qt/plugins/platforms/libqxcb.so"
    plugin.parent.mkdir(parents=True)
    plugin.touch()
    _program(
        tmp_path / "bin" / "ldd",
        'echo "\tlibxcb-cursor.so.0 => not found"; echo "\tlibc.so.6 => /lib/libc.so.6 (0x1)"',
    )
    monkeypatch.setenv("PATH", str(tmp_path / "bin"), prepend=os.pathsep)
    output = 'qt.qpa.plugin: Could not load the Qt platform plugin "xcb" in "" even though it was found.'
    assert start.libraries_missing(output) == ["libxcb-cursor.so.0"]
    assert "libxcb-cursor0" in start.explain_qt(output, ["libxcb-cursor.so.0"])


@pytest.fixture
def calls(start: ModuleType, monkeypatch: pytest.MonkeyPatch) -> list[tuple[list[str], dict[str, str]]]:
    """What would be run, instead of running it."""
    made: list[tuple[list[str], dict[str, str]]] = []

    def call(arguments: list[str], **environment: str) -> int:
        made.append((arguments, environment))
        return 0

    monkeypatch.setattr(start, "call", call)
    return made


@pytest.mark.parametrize(("ci", "code"), [("true", 1), ("", 0)])
def test_without_qt_the_windows_tests_are_skipped_loudly(
    start: ModuleType,
    calls: list[tuple[list[str], dict[str, str]]],
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
    ci: str,
    code: int,
) -> None:
    (tmp_path / "tests" / "ui" / "deep").mkdir(parents=True)
    (tmp_path / "tests" / "ui" / "test_a.py").write_text(
        "def test_1(): ...\nclass T:\n    def test_2(self): ...\n"
    )
    (tmp_path / "tests" / "ui" / "deep" / "test_b.py").write_text("def test_3(): ...\ndef helper(): ...\n")
    monkeypatch.chdir(tmp_path)
    monkeypatch.setenv("CI", ci)
    monkeypatch.setattr(start, "qt_trouble", lambda platform=None: "Qt needs this.")
    assert start.test([]) == code
    assert "*** SKIPPED: all 3 tests of the window (tests/ui).\n*** Qt needs this." in capsys.readouterr().err
    ((words, environment),) = calls
    assert "--ignore=tests/ui" in words
    assert environment == {"DRYPOINT_TEST_WITHOUT_QT": "1"}
    assert start.test(["tests/job"]) == 0
    assert calls[1][0][-1] == "tests/job"
    assert "no:pytest-qt" in calls[1][0]


def test_the_suite_runs_without_qt_and_then_the_window(
    start: ModuleType,
    calls: list[tuple[list[str], dict[str, str]]],
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.chdir(tmp_path)
    monkeypatch.setattr(start, "qt_trouble", lambda platform=None: "")
    assert start.test([]) == 0
    (without, blocked), (window, offscreen) = calls
    assert "--ignore=tests/ui" in without
    assert blocked == {"DRYPOINT_TEST_WITHOUT_QT": "1"}
    assert window[-1] == "tests/ui"
    assert offscreen == {"QT_QPA_PLATFORM": "offscreen"}


@pytest.mark.parametrize(
    ("screen", "trouble", "given", "headless"),
    [
        (True, "", [], False),
        (True, "", ["--headless"], True),
        (True, "Qt needs this.", [], True),
        (False, "", ["--to", "x"], True),
    ],
)
def test_the_demo_opens_the_window_where_it_can(
    start: ModuleType,
    calls: list[tuple[list[str], dict[str, str]]],
    monkeypatch: pytest.MonkeyPatch,
    screen: bool,
    trouble: str,
    given: list[str],
    headless: bool,
) -> None:
    monkeypatch.setattr(start, "has_screen", lambda: screen)
    monkeypatch.setattr(start, "qt_trouble", lambda platform=None: trouble)
    assert start.demo(given) == 0
    ((words, _),) = calls
    assert words[:3] == ["-m", "drypoint", "demo"]
    assert words.count("--headless") == headless
    assert [word for word in given if word != "--headless"] == words[3 + headless :]


def test_the_window_says_why_it_cannot_open(
    start: ModuleType, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setattr(start, "set_up", lambda extra: None)
    monkeypatch.setattr(start, "stop_on_signals", lambda: None)
    monkeypatch.setattr(start, "call", lambda arguments: 134)  # SIGABRT, as Qt ends
    monkeypatch.setattr(start, "qt_trouble", lambda: "Qt needs this.")
    for name in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"):
        monkeypatch.delenv(name, raising=False)
    monkeypatch.setattr(sys, "platform", "linux")
    monkeypatch.setattr(start, "WINDOWS", False)
    assert start.main([]) == 1
    assert "There is no screen here" in capsys.readouterr().err
    monkeypatch.setenv("DISPLAY", ":0")
    assert start.main(["my board.drypoint"]) == 134
    assert capsys.readouterr().err == "Qt needs this.\n"


@pytest.mark.parametrize(
    ("chosen", "display", "screen"),
    [
        ("", ":0", True),
        ("", "", False),
        ("offscreen", ":0", False),
        ("eglfs", "", True),
        ("minimal:x", "", False),
    ],
)
def test_what_counts_as_a_screen(
    start: ModuleType, monkeypatch: pytest.MonkeyPatch, chosen: str, display: str, screen: bool
) -> None:
    monkeypatch.setattr(start, "WINDOWS", False)
    monkeypatch.setattr(sys, "platform", "linux")
    monkeypatch.setenv("QT_QPA_PLATFORM", chosen)
    monkeypatch.setenv("DISPLAY", display)
    monkeypatch.delenv("WAYLAND_DISPLAY", raising=False)
    assert start.has_screen() is screen


def test_reads_on_old_pythons(script: Path) -> None:
    """No syntax newer than Python 2.7 and 3.4, so that an old interpreter can say what is missing."""
    text = script.read_text(encoding="utf-8")
    tree = ast.parse(text, feature_version=(3, 4))
    newer = (ast.JoinedStr, ast.AnnAssign, ast.NamedExpr, ast.AsyncFunctionDef, ast.Nonlocal, ast.YieldFrom)
    assert not [node for node in ast.walk(tree) if isinstance(node, newer)]
    assert not [node for node in ast.walk(tree) if isinstance(node, ast.Raise) and node.cause is not None]
    assert not [node for node in ast.walk(tree) if isinstance(node, ast.arguments) and node.kwonlyargs]
    strings = [
        token.string for token in tokenize.generate_tokens(io.StringIO(text).readline) if token.type == 3
    ]
    assert not [string for string in strings if re.match(r"(?i)rb", string)]  # Python 2 knows br only
    assert text.isascii()  # Python 2 takes no other letter without a declaration


def test_uses_only_the_standard_library(script: Path) -> None:
    tree = ast.parse(script.read_text(encoding="utf-8"))
    imported = {name.name for node in ast.walk(tree) if isinstance(node, ast.Import) for name in node.names}
    imported |= {node.module or "" for node in ast.walk(tree) if isinstance(node, ast.ImportFrom)}
    assert imported <= set(sys.stdlib_module_names)
