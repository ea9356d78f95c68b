"""Writes a picture of every page and of the wizard, light and dark, into a folder.

``python scripts/screenshots.py FOLDER``: 1600 × 1000 px unless ``--size``
says otherwise; ``--scale 2`` draws everything at 200 %. The board is the demo's.
"""

from __future__ import annotations

import argparse
import os
import sys
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("folder", type=Path)
    parser.add_argument("--size", default="1600x1000", help="width x height, px")
    parser.add_argument("--scale", default="1", help="1 to 2")
    parser.add_argument("--only", default="", help="names that contain this")
    parser.add_argument("--scheme", default="both", choices=["light", "dark", "both"])
    parser.add_argument("--language", default="en", choices=["en", "de"])
    wanted = parser.parse_args()
    os.environ["QT_SCALE_FACTOR"] = wanted.scale
    wanted.folder.mkdir(parents=True, exist_ok=True)
    sys.path.insert(0, str(Path(__file__).parent))
    from PySide6.QtWidgets import QApplication  # noqa: PLC0415 - the scale is set first
    from stage import Stage  # noqa: PLC0415

    from drypoint.ui.language.speech import Language, Speech  # noqa: PLC0415

    width, height = (int(part) for part in wanted.size.split("x"))
    app = QApplication([])
    Speech(app).speak(Language(wanted.language))
    schemes = {"light": [False], "dark": [True], "both": [False, True]}[wanted.scheme]
    for dark in schemes:
        stage = Stage(app, dark, width, height)
        for name in stage.scenes():
            if wanted.only in name:
                picture = stage.shoot(name)
                picture.save(str(wanted.folder / f"{name}-{'dark' if dark else 'light'}.png"))
        stage.close()


if __name__ == "__main__":
    main()
