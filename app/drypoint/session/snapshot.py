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
    "done",
    "stretch",
    "play",
