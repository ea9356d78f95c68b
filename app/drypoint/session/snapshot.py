"""The job at one moment, frozen: what every computation starts from."""

from __future__ import annotations

import hashlib
import json
from collections.abc import Mapping
from dataclasses import dataclass, fields
from functools import cached_property
from typing import Any

from drypoint.board.model import Side
from drypoint.job.store import Job, Record, Source
from drypoint.session.codec import from_json, to_json
from drypoint.session.settings import SECTIONS, Settings

KINDS = (
    "setup",
    "touches",
    "touches part",
    "reference",
    "pass",
    "observation",
    "island touch",
    "zero",
    "coupon",
    "coupon touches",
    "trial cut",
    "tooling",
    "done",
    "dust",
    "pauses",
    "painted",
    "stretch",
    "play",
)
"""Kinds of record that computations read."""


@dataclass(frozen=True)
class Snapshot:
    """Inputs and measurements of a job at one moment."""

    sources: tuple[Source, ...]
    settings: Settings
    records: Mapping[str, tuple[Record, ...]]

    @cached_property
    def source_key(self) -> str:
        """Changes when a design file or its role does."""
        digest = hashlib.sha256()
        for source in self.sources:
            words = (source.name, source.role, source.board)
            for part in (*(word.encode() for word in words), source.content):
                digest.update(len(part).to_bytes(8, "big") + part)
        return digest.hexdigest()

    def key(self, *sections: str) -> str:
        """Changes when one of the named settings or kinds of record does; "source" is the files.

        A name that is both a section and a kind of record, as "reference", stands for both.
        """
        known = self._keys.get(sections)
        if known is None:
            known = self._keys[sections] = self._key(sections)
        return known

    @cached_property
    def _keys(self) -> dict[tuple[str, ...], str]:
        """Keys asked for before: the window asks for the same ones at every answer."""
        return {}

    def _key(self, sections: tuple[str, ...]) -> str:
        parts: list[Any] = []
        for section in sections:
            if section == "source":
                parts.append(self.source_key)
            if section in SECTIONS:
                parts.append(to_json(getattr(self.settings, section)))
            if section == "blank" and self.settings.board.side is not self.face(1):
                parts.append(self.turns(1)[-1:])  # the blank is seen turned over
            if section == "copies":
                parts.append(self.settings.board.side is self.face(1))  # else places are seen mirrored
            if section in self.records:
                parts.append([record.id for record in self.records[section]])
        return hashlib.sha256(json.dumps(parts).encode()).hexdigest()

    def face(self, setup: int | None = None) -> Side:
        """The side that looks up in a clamping, the present one if none is named."""
        number = self.setup if setup is None else setup
        turns = [
            (at, Side(record.data["face"]))
            for at, record in enumerate(self.records["setup"], 2)
            if "face" in record.data
        ]
        if not turns:
            return self.settings.board.side
        before = [face for at, face in turns if at <= number]
        return before[-1] if before else turns[0][1].other

    def turns(self, after: int) -> tuple[str, ...]:
        """Axes that the board was turned over about since the clamping ``after``."""
        setups = self.records["setup"][after - 1 :]
        return tuple(record.data["turned"] for record in setups if "turned" in record.data)

    def latest(self, kind: str) -> Record | None:
        """The newest record of a kind."""
        found = self.records[kind]
        return found[-1] if found else None

    @property
    def setup(self) -> int:
        """Number of the present clamping; 1 until the board was re-clamped."""
        return 1 + len(self.records["setup"])


def take_snapshot(job: Job) -> Snapshot:
    """Read a job."""
    stored = job.settings()
    settings = Settings(
        **{
            one.name: from_json(type(getattr(Settings(), one.name)), stored[one.name], one.name)
            for one in fields(Settings)
            if one.name in stored
        }
    )
    return Snapshot(job.sources(), settings, {kind: job.records(kind) for kind in KINDS})
