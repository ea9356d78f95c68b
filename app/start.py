#!/usr/bin/env python3
"""Set Drypoint up and run it: ``start.py [demo | test | any drypoint command ...]``.

Needs nothing but a Python; makes ``.venv`` beside this folder on the first call and keeps it up to
date. Written so that even an old Python can read it and say what is missing.
"""

from __future__ import print_function

import contextlib
import errno
import hashlib
import os
import re
import shutil
import signal
import subprocess
import sys
import threading
import time

ROOT = os.path.dirname(os.path.dirname(os.path.abspath(__file__)))
VENV = os.path.join(ROOT, ".venv")
# As long as ".venv", so that the path can be replaced inside scripts and launchers of any format.
HALF = os.path.join(ROOT, ".ven_")
# Where the old environment waits until the new one is in its place.
OLD = os.path.join(ROOT, ".ven-")
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
    try:
        sys.stderr.write(text + "\n")
    except UnicodeError:
        sys.stderr.write(text.encode("ascii", "replace").decode("ascii") + "\n")
    sys.stderr.flush()


class Ended(KeyboardInterrupt):
    """The system asked this program to end."""


def stop_on_signals():
    """A polite request to end cleans up as the interrupt key does; cleaning is not interrupted again."""

    def ended(number, frame):
        signal.signal(number, signal.SIG_IGN)
        raise Ended

    for name in ("SIGTERM", "SIGHUP", "SIGBREAK"):
        if hasattr(signal, name):
            signal.signal(getattr(signal, name), ended)


def clean_environment():
    """The environment without what leads a set-up astray: other homes, paths and targets."""
    kept = dict(os.environ)
    for name in (
        "PYTHONHOME",
        "PYTHONPATH",
        "PIP_USER",
        "PIP_TARGET",
        "PIP_PREFIX",
        "PIP_REQUIRE_VIRTUALENV",
        "__PYVENV_LAUNCHER__",
    ):
        kept.pop(name, None)
    return kept


def run(command, limit=None, **more):
    """Run quietly, at most ``limit`` seconds. Returns (exit code, output)."""
    if not WINDOWS:
        more["preexec_fn"] = os.setpgrp  # a group of its own, so that all of it can be ended
    try:
        with open(os.devnull, "rb") as nothing:
            child = subprocess.Popen(
                command, stdin=nothing, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, **more
            )
    except OSError as error:
        return 127, str(error)
    timer = threading.Timer(limit, end, [child]) if limit else None
    try:
        if timer:
            timer.start()
        output, _ = child.communicate()
    except BaseException:
        end(child)
        child.wait()
        raise
    finally:
        if timer:
            timer.cancel()
    return child.returncode, output.decode("utf-8", "replace")


def end(child):
    """End a child with all that it started; it gets a moment to clean up."""
    try:
        if WINDOWS:
            subprocess.call(["taskkill", "/F", "/T", "/PID", str(child.pid)])
            return
        os.killpg(child.pid, signal.SIGINT)
        for _ in range(100):
            if child.poll() is not None:
                break
            time.sleep(0.03)
        os.killpg(child.pid, signal.SIGKILL)
    except OSError:
        pass  # it is gone


def venv_python(folder):
    """The interpreter inside a virtual environment."""
    if WINDOWS:
        return os.path.join(folder, "Scripts", "python.exe")
    return os.path.join(folder, "bin", "python")


def is_new_enough(command):
    """Whether ``command`` runs a Python that Drypoint supports."""
    asked = "import sys; print(sys.version_info[:2] >= %r)" % (OLDEST,)
    code, output = run(command + ["-c", asked], limit=30)
    return code == 0 and output.strip().endswith("True")


def find_python():
    """The command of a Python that is new enough."""
    if sys.version_info[:2] >= OLDEST:
        # from inside a virtual environment, which may be the one to renew: the one it was made from
        base = getattr(sys, "_base_executable", None)
        return [base if base and os.path.exists(base) else sys.executable]
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


def version_of(command):
    """The version of an interpreter as "3.11"."""
    code, output = run(command + ["-c", "import sys; print('%d.%d' % sys.version_info[:2])"], limit=30)
    return output.strip() if code == 0 else "3"


def fingerprint(extra):
    """What the environment must fit: the project file, this folder, the extra."""
    with open(os.path.join(ROOT, "pyproject.toml"), "rb") as file:
        digest = hashlib.sha256(file.read())
    digest.update(as_bytes(ROOT))
    return "%s %s" % (digest.hexdigest(), extra or "plain")


def as_bytes(path):
    """A path as the file system holds it."""
    if isinstance(path, bytes):
        return path
    return os.fsencode(path) if hasattr(os, "fsencode") else path.encode("utf-8")


def interpreter_stands(folder):
    """Whether the Python an environment was made from is still there, and still the same."""
    python = venv_python(folder)
    if not os.path.exists(python):  # also a link to one that is gone
        return False
    try:
        with open(os.path.join(folder, "pyvenv.cfg")) as file:
            home = re.search(r"^home\s*=\s*(.+?)\s*$", file.read(), re.M)
    except (IOError, OSError, ValueError):
        return False
    if home and not os.path.isdir(home.group(1)):
        return False
    real = re.match(r"python\d+\.\d+t?$", os.path.basename(os.path.realpath(python)))
    return WINDOWS or not real or os.path.isdir(os.path.join(folder, "lib", real.group(0)))


def made_for():
    """The fingerprint that ``.venv`` was made for, empty if there is none."""
    try:
        with open(os.path.join(VENV, "drypoint-ready")) as file:
            return file.read().strip()
    except (IOError, OSError):
        return ""


def fits(extra):
    """Whether ``.venv`` is whole and made for this project file."""
    wanted = [fingerprint(extra)] + ([] if extra else [fingerprint("test")])
    return made_for() in wanted and interpreter_stands(VENV)


def explain_venv(output, version):
    """Why a virtual environment could not be made."""
    if is_full(output):
        return DISK_FULL
    if "Permission denied" in output or "Read-only file system" in output:
        return "Nothing can be written to %s; Drypoint sets itself up there.\n%s" % (ROOT, tail(output, 2))
    if "ensurepip" in output or "python3-venv" in output or "No module named venv" in output:
        return (
            "This Python cannot make virtual environments: its venv part is not installed.\n"
            "Debian, Ubuntu: apt install python%s-venv   (or: apt install python3-venv)" % version
        )
    return "The virtual environment could not be made:\n" + tail(output)


DISK_FULL = "The disk is full: Drypoint's packages take 500 to 800 MB. Make room and call this again."
NO_NETWORK = (
    "NewConnectionError",
    "Temporary failure in name resolution",
    "ConnectionError",
    "getaddrinfo",
    "Network is unreachable",
    "Connection refused",
    "Could not fetch URL",
    "Max retries exceeded",
    "ProxyError",
    "ConnectTimeoutError",
    "ReadTimeoutError",
    "SSLError",
)


def is_full(output):
    """Whether a command ran out of disk."""
    return "No space left" in output or "Errno 28" in output or "not enough space on the disk" in output


def explain_pip(output, version):
    """Why packages could not be installed."""
    if is_full(output):
        return DISK_FULL
    cause = [line for line in output.splitlines() if any(sign in line for sign in NO_NETWORK)]
    if cause:
        return (
            "The packages Drypoint needs could not be downloaded: no network, or a proxy in the way.\n"
            "Connect, or set the proxy for pip, and call this again. pip said:\n" + tail(cause[-1])
        )
    nowhere = re.search(r"No matching distribution found for ([\w.-]+)", output)
    if nowhere:
        return (
            "The package %s is not to be had for Python %s on this machine. Drypoint needs a 64-bit\n"
            "Python from 3.11 on; one that came out a few weeks ago may be too new. pip said:\n%s"
            % (nowhere.group(1), version, tail(output))
        )
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
        changed = held.replace(as_bytes(old), as_bytes(new))
        if changed != held:
            with open(path, "wb") as file:
                file.write(changed)


def lock_on_windows(file):
    """Wait for the lock; Windows gives up by itself after ten seconds."""
    import msvcrt

    file.seek(1 << 30)  # beyond the text, so that it can still be read
    while True:
        try:
            return msvcrt.locking(file.fileno(), msvcrt.LK_LOCK, 1)
        except (IOError, OSError) as error:
            if error.errno != errno.EDEADLOCK:
                raise


@contextlib.contextmanager
def alone():
    """One set-up at a time: a second call waits for the first. The lock ends with its process."""
    with open(os.path.abspath(__file__), "rb") as file:
        try:
            if WINDOWS:
                lock_on_windows(file)
            else:
                import fcntl

                fcntl.flock(file, fcntl.LOCK_EX)
        except (ImportError, IOError, OSError):
            pass  # a file system without locks
        yield


def set_up(extra):
    """Make or renew ``.venv``. Either it is whole afterwards or it was not touched."""
    if fits(extra):
        return
    command = find_python()
    with alone():
        if fits(extra):
            return
        say("Setting up .venv (once; a few minutes on a slow line) ...")
        try:
            restore()
            # whoever has run the tests will run them again
            build(command, "test" if made_for().endswith(" test") else extra)
            replace()
        except (IOError, OSError) as error:
            if error.errno == errno.ENOSPC:
                raise Trouble(DISK_FULL)
            raise Trouble("The folder .venv could not be set up in %s: %s" % (ROOT, error))
        finally:
            shutil.rmtree(HALF, ignore_errors=True)


def build(command, extra):
    """Make a whole environment beside the place it will have."""
    version = version_of(command)
    quiet = clean_environment()
    code, output = run(command + ["-m", "venv", "--prompt", "drypoint", HALF], env=quiet)
    if code != 0:
        raise Trouble(explain_venv(output, version))
    target = ROOT + ("[%s]" % extra if extra else "")
    install = [venv_python(HALF), "-m", "pip", "install", "--disable-pip-version-check", "-e", target]
    code, output = run(install, cwd=ROOT, env=quiet)
    if code != 0:
        raise Trouble(explain_pip(output, version))
    rename_inside(HALF, HALF, VENV)
    with open(os.path.join(HALF, "drypoint-ready"), "w") as file:
        file.write(fingerprint(extra))


def restore():
    """Put right what a set-up left that was killed outright."""
    shutil.rmtree(HALF, ignore_errors=True)
    if os.path.exists(OLD) and not os.path.exists(VENV):
        os.rename(OLD, VENV)
    shutil.rmtree(OLD, ignore_errors=True)


def replace():
    """Put the new environment in the place of the old one, in two renames."""
    if os.path.lexists(VENV):
        try:
            os.rename(VENV, OLD)
        except OSError:
            raise Trouble("The folder .venv is in use: close Drypoint and call this again.")
    try:
        os.rename(HALF, VENV)
    except BaseException:
        if os.path.lexists(OLD) and not os.path.lexists(VENV):
            os.rename(OLD, VENV)
        raise
    shutil.rmtree(OLD, ignore_errors=True)


def has_screen():
    """Whether there is a screen to open a window on."""
    if WINDOWS or sys.platform == "darwin":
        return True
    chosen = os.environ.get("QT_QPA_PLATFORM", "").split(":")[0]
    if chosen:  # frame buffers and remote screens are screens too
        return chosen not in ("offscreen", "minimal")
    return bool(os.environ.get("DISPLAY") or os.environ.get("WAYLAND_DISPLAY"))


def qt_trouble(platform=None):
    """Why Qt cannot start here, or an empty string. Asked in a child process: Qt aborts."""
    environment = dict(os.environ)
    if platform:
        environment["QT_QPA_PLATFORM"] = platform
    code, output = run(
        [venv_python(VENV), "-c", "from PySide6.QtWidgets import QApplication; QApplication([])"],
        limit=60,
        env=environment,
    )
    return explain_qt(output, libraries_missing(output)) if code else ""


def libraries_missing(output):
    """The system libraries that Qt or its window plugin cannot find."""
    missing = set(re.findall(r"(lib[\w.+-]+\.so[.\d]*): cannot open shared object", output))
    if "platform plugin" in output and not WINDOWS:
        for place, _, names in os.walk(os.path.join(VENV, "lib")):
            if os.path.basename(place) == "platforms" and "libqxcb.so" in names:
                _, listed = run(["ldd", os.path.join(place, "libqxcb.so")], limit=30)
                missing.update(re.findall(r"(lib[\w.+-]+\.so[.\d]*) => not found", listed))
    return sorted(missing)


def explain_qt(output, missing):
    """What to install so that Qt starts."""
    if not missing:
        return "Qt does not start here:\n" + tail(output)
    text = "Qt needs system libraries that are missing here: " + ", ".join(missing) + "."
    packages = sorted({QT_PACKAGES[name] for name in missing if name in QT_PACKAGES})
    return text + ("\nDebian, Ubuntu: apt install " + " ".join(packages) if packages else "")


def call(arguments, **environment):
    """Run the environment's Python in the foreground and return its exit code."""
    merged = dict(os.environ)
    merged.update(environment)
    child = subprocess.Popen([venv_python(VENV)] + arguments, env=merged)
    while True:
        try:
            code = child.wait()
            return code if code >= 0 else 128 - code
        except Ended:
            stop_on_signals()
            child.terminate()
        except KeyboardInterrupt:
            continue  # the interrupt key reaches the child by itself


def demo(arguments):
    """The window where it can open, else the whole job without it."""
    if any(word in arguments for word in ("--headless", "--json", "--help", "-h")):
        return call(["-m", "drypoint", "demo"] + arguments)
    why = qt_trouble() if has_screen() else "There is no screen here."
    if not why:
        return call(["-m", "drypoint", "demo"] + arguments)
    say(why + "\nRunning the demo without the window.")
    return call(["-m", "drypoint", "demo", "--headless"] + arguments)


def window(arguments):
    """The window, or why it cannot open."""
    if not has_screen():
        say("There is no screen here to open the window on. See --help for the commands for scripts.")
        return 1
    code = call(["-m", "drypoint"] + arguments)
    if code > 2:  # Qt ends the process when it cannot start
        why = qt_trouble()
        if why:
            say(why)
    return code


def count_tests(folder):
    """Number of test functions below a folder, by reading the files."""
    total = 0
    for place, _, names in os.walk(folder):
        for name in names:
            if name.startswith("test_") and name.endswith(".py"):
                with open(os.path.join(place, name), "rb") as file:
                    text = file.read().decode("utf-8", "replace")
                total += len(re.findall(r"^\s*def test_", text, re.M))
    return total


def test(arguments):
    """The suite: everything but the window with Qt blocked, then the window."""
    os.chdir(ROOT)
    why = qt_trouble("offscreen")
    blocked = {"DRYPOINT_TEST_WITHOUT_QT": "1"}
    if arguments:
        if not why:
            return call(["-m", "pytest"] + arguments, QT_QPA_PLATFORM="offscreen")
        say(why)
        return call(["-m", "pytest", "-p", "no:pytest-qt", "--ignore=tests/ui"] + arguments, **blocked)
    base = ["-m", "pytest", "-n", "auto", "--maxprocesses=4", "--dist", "worksteal"]
    code = call(base + ["-p", "no:pytest-qt", "--ignore=tests/ui"], **blocked)
    if why:
        say("\n*** SKIPPED: all %d tests of the window (tests/ui)." % count_tests("tests/ui"))
        say("*** " + why.replace("\n", "\n*** "))
        return code or (1 if os.environ.get("CI") else 0)
    return call(base + ["tests/ui"], QT_QPA_PLATFORM="offscreen") or code


def main(arguments):
    """Set up, then run what was asked for."""
    asked = arguments[0] if arguments else ""
    stop_on_signals()
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
    if not asked or asked == "open" or asked.endswith(".drypoint"):
        return window(arguments)
    return call(["-m", "drypoint"] + arguments)


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
