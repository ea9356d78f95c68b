#!/usr/bin/env python3
"""Set Drypoint up and run it: ``start.py [demo | test | any drypoint command ...]``.

Needs nothing but a Python; makes ``.venv`` beside this folder on the first call and keeps it up to
date. Written so that even an old Python can read it and say what is missing.
"""

from __future__ import print_function

import hashlib
import os
import re
import shutil
import subprocess
import sys

ROOT = os.path.dirname(os.path.dirname(os.path.abspath(__file__)))
VENV = os.path.join(ROOT, ".venv")
# As long as ".venv", so that the path can be replaced inside scripts and launchers of any format.
HALF = os.path.join(ROOT, ".ven_")
WINDOWS = os.name == "nt"
OLDEST = (3, 11)
CANDIDATES = ("3.13", "3.12", "3.11", "3.14", "3.15")

# Libraries that Qt loads from the system, and the Debian/Ubuntu package of each.
QT_PACKAGES = {
    "libEGL.so.1": "libegl1",
    "libGL.so.1": "libgl1",
    "libxkbcommon.so.0": "libxkbcommon0",
    "libxkbcommon-x11.so.0": "libxkbcommon-x11-0",
    "libdbus-1.so.3": "libdbus-1-3",
    "libfontconfig.so.1": "libfontconfig1",
    "libfreetype.so.6": "libfreetype6",
    "libglib-2.0.so.0": "libglib2.0-0",
    "libxcb-cursor.so.0": "libxcb-cursor0",
    "libxcb-icccm.so.4": "libxcb-icccm4",
    "libxcb-image.so.0": "libxcb-image0",
    "libxcb-keysyms.so.1": "libxcb-keysyms1",
    "libxcb-render-util.so.0": "libxcb-render-util0",
    "libxcb-xinerama.so.0": "libxcb-xinerama0",
    "libxcb-xkb.so.1": "libxcb-xkb1",
    "libX11-xcb.so.1": "libx11-xcb1",
}


class Trouble(Exception):  # noqa: N818 - old Pythons read this file; the name is for people
    """Something the user has to mend; the text says what and how."""


def say(text):
    """Tell the user on stderr; stdout belongs to the command."""
    sys.stderr.write(text + "\n")
    sys.stderr.flush()


def run(command, **more):
    """Run quietly. Returns (exit code, output)."""
    try:
        child = subprocess.Popen(command, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, **more)
    except OSError as error:
        return 127, str(error)
    try:
        output, _ = child.communicate()
    except BaseException:
        child.kill()
        child.wait()
        raise
    return child.returncode, output.decode("utf-8", "replace")


def venv_python(folder):
    """The interpreter inside a virtual environment."""
    if WINDOWS:
        return os.path.join(folder, "Scripts", "python.exe")
    return os.path.join(folder, "bin", "python")


def is_new_enough(command):
    """Whether ``command`` runs a Python that Drypoint supports."""
    code, output = run(command + ["-c", "import sys; print(sys.version_info[:2] >= %r)" % (OLDEST,)])
    return code == 0 and output.strip().endswith("True")


def find_python():
    """The command of a Python that is new enough."""
    if sys.version_info[:2] >= OLDEST:
        return [sys.executable]
    for version in CANDIDATES:
        for command in (["py", "-" + version],) if WINDOWS else (["python" + version],):
            if is_new_enough(command):
                return command
    for command in (["python3"], ["python"]):
        if is_new_enough(command):
            return command
    raise Trouble(
        "Drypoint needs Python %d.%d or newer; this is %d.%d and no newer one was found.\n"
        "Install one (Debian, Ubuntu: apt install python3 python3-venv; Windows, macOS: the installer\n"
        "from the Python Software Foundation) and call this again." % (OLDEST + tuple(sys.version_info[:2]))
    )


def fingerprint(extra):
    """What the environment must fit: the project file, the interpreter's place, the extra."""
    with open(os.path.join(ROOT, "pyproject.toml"), "rb") as file:
        text = file.read()
    return "%s %s %s" % (hashlib.sha256(text).hexdigest(), ROOT, extra)


def fits(extra):
    """Whether ``.venv`` is whole and made for this project file."""
    try:
        with open(os.path.join(VENV, "drypoint-ready")) as file:
            made_for = file.read().strip()
    except (IOError, OSError):
        return False
    wanted = [fingerprint(extra)] + ([] if extra else [fingerprint("test")])
    return made_for in wanted and os.path.exists(venv_python(VENV))


def explain_venv(output):
    """Why a virtual environment could not be made."""
    if "ensurepip" in output or "python3-venv" in output:
        name = "python%d.%d-venv" % sys.version_info[:2]
        return (
            "This Python cannot make virtual environments: its venv part is not installed.\n"
            "Debian, Ubuntu: apt install %s   (or: apt install python3-venv)" % name
        )
    return "The virtual environment could not be made:\n" + tail(output)


def explain_pip(output):
    """Why packages could not be installed."""
    signs = ("NewConnectionError", "Temporary failure in name resolution", "ConnectionError", "getaddrinfo",
             "Network is unreachable", "Could not fetch URL", "Max retries exceeded", "ProxyError",
             "No matching distribution found for setuptools", "ReadTimeoutError")
    if any(sign in output for sign in signs):
        return (
            "The packages Drypoint needs could not be downloaded: no network, or a proxy in the way.\n"
            "Connect, or set the proxy for pip, and call this again. pip said:\n" + tail(output)
        )
    if "No space left" in output:
        return "The disk is full: Drypoint's packages take about 600 MB.\n" + tail(output)
    return "The packages Drypoint needs could not be installed. pip said:\n" + tail(output)


def tail(output, lines=8):
    """The last lines of an output, indented."""
    return "\n".join("    " + line for line in output.strip().splitlines()[-lines:])


def rename_inside(folder, old, new):
    """Write the final path into scripts and launchers that hold the path they were made at."""
    scripts = os.path.join(folder, "Scripts" if WINDOWS else "bin")
    paths = [os.path.join(scripts, name) for name in os.listdir(scripts)]
    paths.append(os.path.join(folder, "pyvenv.cfg"))
    for path in paths:
        if os.path.islink(path) or not os.path.isfile(path):
            continue
        with open(path, "rb") as file:
            held = file.read()
        changed = held.replace(old.encode("utf-8"), new.encode("utf-8"))
        if changed != held:
            with open(path, "wb") as file:
                file.write(changed)


def set_up(extra):
    """Make or renew ``.venv``. Either it is whole afterwards or it was not touched."""
    if fits(extra):
        return
    command = find_python()
    say("Setting up .venv (once; a few minutes on a slow line) ...")
    shutil.rmtree(HALF, ignore_errors=True)
    try:
        code, output = run(command + ["-m", "venv", HALF])
        if code != 0:
            raise Trouble(explain_venv(output))
        python = venv_python(HALF)
        target = ROOT + ("[%s]" % extra if extra else "")
        code, output = run(
            [python, "-m", "pip", "install", "--disable-pip-version-check", "-e", target], cwd=ROOT
        )
        if code != 0:
            raise Trouble(explain_pip(output))
        rename_inside(HALF, HALF, VENV)
        with open(os.path.join(HALF, "drypoint-ready"), "w") as file:
            file.write(fingerprint(extra))
        if os.path.exists(VENV):
            shutil.rmtree(VENV)
        os.rename(HALF, VENV)
    finally:
        shutil.rmtree(HALF, ignore_errors=True)


def has_screen():
    """Whether there is a screen to open a window on."""
    if WINDOWS or sys.platform == "darwin":
        return True
    return bool(os.environ.get("DISPLAY") or os.environ.get("WAYLAND_DISPLAY"))


def qt_trouble(platform=None):
    """Why Qt cannot start here, or an empty string. Asked in a child process: Qt aborts."""
    environment = dict(os.environ)
    if platform:
        environment["QT_QPA_PLATFORM"] = platform
    code, output = run(
        [venv_python(VENV), "-c", "from PySide6.QtWidgets import QApplication; QApplication([])"],
        env=environment,
    )
    if code == 0:
        return ""
    missing = sorted(set(re.findall(r"(lib[\w.+-]+\.so(?:\.\d+)*)", output)))
    packages = [QT_PACKAGES[name] for name in missing if name in QT_PACKAGES]
    if "xcb-cursor0" in output and "libxcb-cursor0" not in packages:
        packages.append("libxcb-cursor0")
    if packages:
        return "Qt needs system libraries. Debian, Ubuntu: apt install " + " ".join(packages)
    return "Qt does not start here:\n" + tail(output)


def call(arguments, **environment):
    """Run the environment's Python in the foreground and return its exit code."""
    merged = dict(os.environ)
    merged.update(environment)
    child = subprocess.Popen([venv_python(VENV)] + arguments, env=merged)
    while True:
        try:
            return child.wait()
        except KeyboardInterrupt:
            continue


def demo(arguments):
    """The window where it can open, else the whole job without it."""
    why = "" if has_screen() else "There is no screen here."
    why = why or qt_trouble()
    if not why and "--headless" not in arguments:
        return call(["-m", "drypoint", "demo"] + arguments)
    if why:
        say(why + "\nRunning the demo without the window.")
    rest = [word for word in arguments if word != "--headless"]
    return call(["-m", "drypoint", "demo", "--headless"] + rest)


def count_tests(folder):
    """Number of test functions below a folder, by reading the files."""
    total = 0
    for place, _, names in os.walk(folder):
        for name in names:
            if name.startswith("test_") and name.endswith(".py"):
                with open(os.path.join(place, name), "rb") as file:
                    total += len(re.findall(br"^\s*def test_", file.read(), re.M))
    return total


def test(arguments):
    """The suite: everything but the window with Qt blocked, then the window."""
    os.chdir(ROOT)
    base = ["-m", "pytest", "-n", "2", "--dist", "worksteal"]
    if arguments:
        return call(["-m", "pytest"] + arguments, QT_QPA_PLATFORM="offscreen")
    code = call(base + ["-p", "no:pytest-qt", "--ignore=tests/ui"], DRYPOINT_TEST_WITHOUT_QT="1")
    why = qt_trouble("offscreen")
    if why:
        say("\n*** SKIPPED: all %d tests of the window (tests/ui)." % count_tests("tests/ui"))
        say("*** " + why.replace("\n", "\n*** "))
        return code or (1 if os.environ.get("CI") else 0)
    return call(base + ["tests/ui"], QT_QPA_PLATFORM="offscreen") or code


def main(arguments):
    """Set up, then run what was asked for."""
    asked = arguments[0] if arguments else ""
    try:
        set_up("test" if asked == "test" else "")
    except Trouble as trouble:
        say("\n%s" % trouble)
        return 1
    except KeyboardInterrupt:
        say("\nStopped; nothing was left half made.")
        return 130
    if asked == "demo":
        return demo(arguments[1:])
    if asked == "test":
        return test(arguments[1:])
    return call(["-m", "drypoint"] + arguments)


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
