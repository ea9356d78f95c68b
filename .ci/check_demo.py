"""Reads what the demo left and fails unless the board came out right."""

import json
import sys
from pathlib import Path


def main(folder: Path) -> int:
    result = json.loads((folder / "result.json").read_text(encoding="utf-8"))
    check = result["island_check"]
    wrong = []
    if check["shorts"] or check["opens"] or check["lost"]:
        wrong.append(f"carved copper is not the design: {check}")
    if check["nets"] < 25 or check["pieces"] != check["nets"]:
        wrong.append(f"{check['pieces']} pieces for {check['nets']} nets")
    for one in result["passes"]:
        if abs(one["predicted_through"] - one["actual_through"]) > 0.05:
            wrong.append(f"prediction is off: {one}")
    for pattern in ("*.svg", "setup-sheet.html", "*.gcode"):
        if not list(folder.rglob(pattern)):
            wrong.append(f"no {pattern} was written")
    for line in wrong:
        sys.stderr.write(f"demo: {line}\n")
    sys.stdout.write(f"demo: {'failed' if wrong else 'as it should be'}\n")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main(Path(sys.argv[1])))
