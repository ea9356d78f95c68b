"""A catalogue of translations as Qt's own tools write it (.ts), read as it is.

Nothing is compiled: the file that translators edit is the file that is shipped.
"""

from __future__ import annotations

import logging
from collections.abc import Mapping
from pathlib import Path
from xml.etree import ElementTree

from drypoint.shipped import shipped

_log = logging.getLogger(__name__)

FOLDER = shipped("resources") / "translations"


def read_catalogue(path: Path) -> Mapping[str, str]:
    """English text (or template) to the other language; what is not translated yet is left out.

    A missing or damaged file is an empty catalogue: the window then speaks English.
    """
    try:
        root = ElementTree.parse(path).getroot()
    except (OSError, ElementTree.ParseError) as error:
        _log.warning("no translations: %s", error)
        return {}
    found = {}
    for message in root.iter("message"):
        translation = message.find("translation")
        if translation is not None and translation.get("type") is None and translation.text:
            found[message.findtext("source") or ""] = translation.text
    return found
