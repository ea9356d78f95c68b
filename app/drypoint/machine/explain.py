"""What the controller's error and alarm numbers mean, and what to do, in plain words.

The numbers are those of the protocol's public documentation; the words and the advice are ours.
"""

from __future__ import annotations

from dataclasses import dataclass

from drypoint.wording import say


@dataclass(frozen=True, slots=True)
class Explanation:
    """What happened and what to do about it."""

    what: str
    hint: str


_EXPORT = "This is a fault of the program sent: nothing is wrong with the machine. Make the program again."
_SETTING = "Look at the controller's settings; nothing was moved."

_ERRORS: dict[int, tuple[str, str]] = {
    1: ("A word of the line lacks its letter.", _EXPORT),
    2: ("A number in the line is missing or malformed.", _EXPORT),
    3: ("The controller does not know this command.", _SETTING),
    4: ("A value is negative that may not be.", _EXPORT),
    5: (
        "Homing is switched off in the controller.",
        "Set zero by hand, or switch homing on in its settings.",
    ),
    6: ("The step pulse is set shorter than 3 µs.", _SETTING),
    7: (
        "The controller could not read its store and went back to its defaults.",
        "Every setting has to be entered again before the machine is moved.",
    ),
    8: ("The controller takes this only when the machine is at rest.", "Wait for it to stop, or stop it."),
    9: (
        "The controller is locked after an alarm or is jogging.",
        "Find the cause of the alarm, then unlock; positions may be lost.",
    ),
    10: ("Travel limits in software need homing, which is off.", _SETTING),
    11: ("The line is longer than the controller takes.", "Export again with shorter lines."),
    12: ("A rate is set so high that the steps come too fast.", "Lower the highest rate in the settings."),
    13: ("The safety door reads open.", "Close it, then resume."),
    14: ("A line to be stored is too long for the controller's store.", _SETTING),
    15: ("The jog would leave the machine's travel.", "Jog the other way or by a smaller step."),
    16: ("The jog was not understood.", _EXPORT),
    17: (
        "Laser mode needs a spindle output with variable power, which this controller lacks.",
        "Switch laser mode off in its settings.",
    ),
    20: ("The line holds a command this controller does not know.", _EXPORT),
    21: ("Two commands in the line exclude each other.", _EXPORT),
    22: ("A feed move has no feed.", _EXPORT),
    23: ("A command needs a whole number.", _EXPORT),
    24: ("Two commands in the line both want the coordinates.", _EXPORT),
    25: ("A word occurs twice in the line.", _EXPORT),
    26: ("A command lacks its coordinates.", _EXPORT),
    27: ("The line number is out of range.", _EXPORT),
    28: ("A command lacks its value.", _EXPORT),
    29: ("This work coordinate system does not exist here.", "Use one of the six that every controller has."),
    30: ("Machine coordinates go with straight moves only.", _EXPORT),
    31: ("There are coordinates that no command wants.", _EXPORT),
    32: ("An arc lacks coordinates in its plane.", _EXPORT),
    33: (
        "The target cannot be reached as commanded: an impossible arc, or a touch that starts at its end.",
        _EXPORT,
    ),
    34: ("The arc's radius does not fit its ends.", _EXPORT),
    35: ("An arc lacks its centre.", _EXPORT),
    36: ("The line holds words that nothing uses.", _EXPORT),
    37: ("A tool length offset is given for an axis that has none.", _EXPORT),
    38: ("The tool number is larger than the controller allows.", _EXPORT),
}

_ALARMS: dict[int, tuple[str, str]] = {
    1: (
        "A limit switch was hit: the machine stopped at once and has lost its position.",
        "Reset, unlock, jog clear of the switch, then set zero again and check a reference mark.",
    ),
    2: (
        "A move would have left the machine's travel; it was not made.",
        "The position is kept. Reset and unlock; is zero set in the right place?",
    ),
    3: (
        "The controller was reset while moving: steps may be lost.",
        "Unlock, set zero again and check a reference mark before cutting on.",
    ),
    4: (
        "The contact circuit was not as expected before the touch: bit and copper touch already, or the "
        "input is inverted.",
        "Unlock, raise the bit, check clip and wire; the input must read open in the air.",
    ),
    5: (
        "The touch found no contact within its depth.",
        "Is the clip on the copper, is the bit over copper, and is the height right?",
    ),
    6: ("Homing was broken off by a reset.", "Home again."),
    7: ("The safety door opened during homing.", "Close it and home again."),
    8: (
        "The machine did not come free of the switch after homing.",
        "Raise the pull-off distance in the settings, or look at the switch.",
    ),
    9: (
        "Homing found no switch.",
        "Is the switch connected, and does the search go the right way?",
    ),
    10: (
        "Homing found no second switch of an axis with two.",
        "Look at both switches of that axis.",
    ),
}

CRITICAL_ALARMS = frozenset({1, 2})
"""Alarms after which the controller listens to nothing but a reset."""

POSITION_LOST = frozenset({1, 3, 6, 7, 8, 9, 10})
"""Alarms after which the controller's position is not to be believed."""


def explain_error(code: int) -> Explanation:
    """What error number ``code`` means."""
    what, hint = _ERRORS.get(
        code,
        (say("The controller refused the line (its error {code}).", code=code), "See the maker's manual."),
    )
    return Explanation(what, hint)


def explain_alarm(code: int) -> Explanation:
    """What alarm number ``code`` means."""
    what, hint = _ALARMS.get(
        code,
        (
            say("The controller locked itself (its alarm {code}).", code=code),
            "See the maker's manual before moving it.",
        ),
    )
    return Explanation(what, hint)
