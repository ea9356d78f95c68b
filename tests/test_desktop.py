"""What a desktop is told of Drypoint: entry, kind of file, description, and their installation.

Sources: Desktop Entry Specification 1.5, Desktop Menu Specification 1.1 (categories), Shared MIME-info
Specification 0.21, AppStream 1.0, XDG Base Directory Specification 0.8, all of freedesktop.org; SQLite
"Database File Format" (header string, application id at offset 68).
"""

from __future__ import annotations

import configparser
import importlib.util
import sqlite3
import struct
from pathlib import Path
from types import ModuleType
from xml.etree import ElementTree as ET

import pytest

from drypoint import __version__
from drypoint.job.store import Job

NAME = "org.drypoint.Drypoint"
MIME = "application/vnd.drypoint.job+sqlite3"
SPACE = "{http://www.freedesktop.org/standards/shared-mime-info}"


def _entry(path: Path) -> configparser.SectionProxy:
    parser = configparser.RawConfigParser(delimiters=("=",), comment_prefixes=("#",), strict=True)
    parser.optionxform = str  # type: ignore[assignment,method-assign]  # keys are case sensitive
    parser.read(path, encoding="utf-8")
    assert parser.sections() == ["Desktop Entry"]
    return parser["Desktop Entry"]


@pytest.fixture(scope="module")
def installer(root: Path) -> ModuleType:
    spec = importlib.util.spec_from_file_location("install_desktop", root / "scripts" / "install_desktop.py")
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


def test_the_entry_has_what_a_menu_needs(root: Path) -> None:
    entry = _entry(root / "resources" / "desktop" / f"{NAME}.desktop")
    assert entry["Type"] == "Application"
    assert entry["Name"] == "Drypoint"
    assert entry["Exec"].split() == ["drypoint", "%f"]
    assert entry["Icon"] == NAME
    lists = {key: entry[key].split(";") for key in ("Categories", "Keywords", "Keywords[de]", "MimeType")}
    assert all(words[-1] == "" and all(words[:-1]) for words in lists.values())  # each ends with ";"
    assert lists["MimeType"][:-1] == [MIME]
    main = {"AudioVideo", "Development", "Education", "Game", "Graphics", "Network", "Office", "Science",
            "Settings", "System", "Utility"}  # fmt: skip
    assert set(lists["Categories"][:-1]) & main == {"Science"}  # exactly one place in the menu
    assert set(lists["Categories"][:-1]) <= main | {"Electronics", "Engineering"}
    assert {"Comment[de]", "GenericName[de]"} <= set(entry)


def test_the_kind_of_file_is_told_by_name_and_by_content(root: Path, tmp_path: Path) -> None:
    tree = ET.parse(root / "resources" / "mime" / f"{NAME}.xml")
    (kind,) = tree.getroot().findall(f"{SPACE}mime-type")
    assert kind.get("type") == MIME
    assert [one.get("pattern") for one in kind.findall(f"{SPACE}glob")] == ["*.drypoint"]
    outer = kind.find(f"{SPACE}magic/{SPACE}match")
    assert outer is not None
    inner = outer.find(f"{SPACE}match")
    assert inner is not None
    assert (inner.get("type"), inner.get("offset")) == ("big32", "68")
    Job(tmp_path / "a.drypoint", create=True).close()
    head = (tmp_path / "a.drypoint").read_bytes()[:72]
    assert outer.get("value") == r"SQLite format 3\0"
    assert head.startswith(b"SQLite format 3\0")
    value = inner.get("value")
    assert value is not None
    assert head[68:72] == struct.pack(">I", int(value, 16))
    other = sqlite3.connect(tmp_path / "other.db")
    other.execute("CREATE TABLE t (x)")
    other.close()
    assert (tmp_path / "other.db").read_bytes()[68:72] != head[68:72]


def test_the_description_agrees_with_the_entry(root: Path) -> None:
    tree = ET.parse(root / "resources" / "desktop" / f"{NAME}.metainfo.xml").getroot()
    assert tree.get("type") == "desktop-application"
    for tag in ("id", "metadata_license", "project_license", "name", "summary", "description"):
        assert tree.find(tag) is not None, tag
    assert tree.findtext("id") == NAME
    assert tree.findtext("launchable") == f"{NAME}.desktop"
    assert tree.findtext("provides/mediatype") == MIME
    entry = _entry(root / "resources" / "desktop" / f"{NAME}.desktop")
    assert tree.findtext("summary") == entry["Comment"]
    assert [one.text for one in tree.findall("categories/category")] == entry["Categories"].split(";")[:-1]
    newest = tree.find("releases/release")
    assert newest is not None
    assert newest.get("version") == __version__


def test_installed_and_removed_again(installer: ModuleType, tmp_path: Path) -> None:
    python = tmp_path / "a place" / "python"
    written = installer.install(tmp_path / "share", python)
    assert len(written) == 4
    entry = _entry(tmp_path / "share" / "applications" / f"{NAME}.desktop")
    assert entry["Exec"] == f'"{python}" -m drypoint %f'
    icons = list((tmp_path / "share" / "icons" / "hicolor").rglob("*.svg"))
    assert [path.stem for path in icons] == [entry["Icon"]]
    assert ET.parse(icons[0]).getroot().tag.endswith("svg")
    assert installer.remove(tmp_path / "share") == written
    assert not [path for path in (tmp_path / "share").rglob("*") if path.is_file()]


def test_words_of_a_command_are_quoted(installer: ModuleType) -> None:
    """The two examples of the Desktop Entry Specification, "The Exec key", and a field code."""
    assert installer.quoted("$") == r'"\\$"'
    assert installer.quoted("\\") == r'"\\\\"'
    assert installer.quoted("100 %") == '"100 %%"'


def test_the_folder_of_the_user(installer: ModuleType, tmp_path: Path) -> None:
    """Base Directory Specification: unset, empty or relative means the default."""
    default = Path.home() / ".local" / "share"
    assert installer.data_home({"XDG_DATA_HOME": str(tmp_path)}) == tmp_path
    assert [installer.data_home({"XDG_DATA_HOME": one}) for one in ("", "relative")] == [default] * 2
    assert installer.data_home({}) == default
