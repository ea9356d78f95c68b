"""Reads what the demo left and fails unless the board came out right.

It knows nothing of Drypoint's code: JSON and the final text of the programs are all it looks at.
"""

from __future__ import annotations

import json
import math
import re
import sys
from pathlib import Path
from typing import Any

WORD = re.compile(r"([A-Z])([-+]?(?:\d+\.?\d*|\.\d+))")
PLANE = re.compile(r"Rapid moves stay at Z ([\d.]+) or above")
LONGEST = 80
"""Bytes a controller takes in one line, its end included (Grbl 1.1: LINE_BUFFER_SIZE)."""
CLOSE = 0.05
"""Predicted and actual share of path that is through may differ by this."""


def outcome(result: dict[str, Any]) -> list[str]:
    """What is wrong with the carved copper and with what was foretold of it."""
    check = result["island_check"]
    wrong = []
    if check["shorts"] or check["opens"] or check["lost"]:
        wrong.append(f"carved copper is not the design: {check}")
    if not 25 <= check["nets"] <= 40 or check["pieces"] != check["nets"]:
        wrong.append(f"{check['pieces']} pieces for {check['nets']} nets")
    if not result["passes"]:
        wrong.append("no pass was run")
    for one in result["passes"]:
        shares = [one.get("predicted_through"), one.get("actual_through")]
        if not all(isinstance(share, float) and 0.0 <= share <= 1.0 for share in shares):
            wrong.append(f"a share is missing: {one}")
        elif abs(shares[0] - shares[1]) > CLOSE:
            wrong.append(f"prediction is off: {one}")
    return wrong


def program(path: Path) -> list[str]:
    """What is wrong with the text of a program, line by line."""
    text = path.read_bytes().decode("ascii")
    told = PLANE.search(text)
    if told is None:
        return [f"{path.name}: the height of rapid moves is not stated"]
    plane, mode, feed, z, turning = float(told.group(1)), None, None, math.nan, False
    wrong = []
    cutting = ended = False
    for number, line in enumerate(text.splitlines(), 1):
        if len(line) + 1 > LONGEST:
            wrong.append(f"{path.name}:{number}: {len(line)} characters")
        bare = re.sub(r"\([^()]*\)", "", line)
        words = WORD.findall(bare)
        if "".join(letter + value for letter, value in words) != bare:
            wrong.append(f"{path.name}:{number}: more than words of a letter and a number")
        codes = [float(value) for letter, value in words if letter == "G"]
        stops = [float(value) for letter, value in words if letter == "M"]
        values = {letter: float(value) for letter, value in words if letter not in "GM"}
        turning = (turning or 3.0 in stops or 4.0 in stops) and 5.0 not in stops
        ended = 2.0 in stops or 30.0 in stops
        mode = next((code for code in codes if code in (0.0, 1.0, 2.0, 3.0)), mode)
        if 4.0 in codes or not values.keys() & set("XYZ"):
            continue
        before, z = z, values.get("Z", z)
        if mode == 0.0:
            sideways = bool(values.keys() & set("XY"))
            if z < plane or before < plane or (sideways and math.isnan(before)):
                wrong.append(f"{path.name}:{number}: rapid move below {plane} mm")
            feed = None
        else:
            feed = values.get("F", feed)
            cutting = True
            if not feed:
                wrong.append(f"{path.name}:{number}: no feed on the first move after a rapid")
            if not turning and (z < plane or values.keys() & set("XY")):
                wrong.append(f"{path.name}:{number}: cuts while the spindle stands")
    if not cutting or not ended or turning:
        wrong.append(f"{path.name}: does not cut, does not end, or leaves the spindle on")
    return wrong


def files(folder: Path) -> list[str]:
    """What is wrong with the files that were left."""
    wrong = [
        f"no {pattern} was written"
        for pattern in ("board.svg", "grooves.svg", "carved.svg", "setup-sheet.html", "*.nc", "*.drypoint")
        if not list(folder.glob(pattern))
    ]
    for path in sorted(folder.glob("*.nc")):
        wrong += program(path)[:5]
    return wrong


def main(folder: Path) -> int:
    result = json.loads((folder / "result.json").read_text(encoding="utf-8"))
    wrong = outcome(result) + files(folder)
    for line in wrong:
        sys.stderr.write(f"demo: {line}\n")
    for number, one in enumerate(result["passes"], 1):
        shares = f"predicted {one['predicted_through']:.2%}, actual {one['actual_through']:.2%}"
        sys.stdout.write(f"demo: pass {number} through: {shares}\n")
    sys.stdout.write(f"demo: {'failed' if wrong else 'as it should be'}\n")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main(Path(sys.argv[1])))
