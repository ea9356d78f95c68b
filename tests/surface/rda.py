"""Reads the numbers of an R data file: enough of R's serialisation for plain tables and grids.

Format: R Internals manual, section 1.8 "Serialization Formats" (XDR, version 2 and 3).
"""

from __future__ import annotations

import bz2
import gzip
import lzma
import struct

import numpy as np

_OPENERS = {b"\x1f\x8b": gzip.decompress, b"BZ": bz2.decompress, b"\xfd7": lzma.decompress}


def read_rda(file):
    """Objects by name; a table is a dict of columns, an S4 object a dict of slots."""
    raw = file.read_bytes()
    data = _OPENERS[raw[:2]](raw)
    assert data[:5] in (b"RDX2\n", b"RDX3\n")
    return _Reader(data[5:]).all()


class _Reader:
    def __init__(self, data):
        self.data, self.at, self.seen = data, 0, []

    def all(self):
        assert self.data[:2] == b"X\n"
        self.at = 2
        version, _, _ = (self.whole() for _ in range(3))
        if version == 3:
            size = self.whole()
            self.at += size
        return self.item()

    def whole(self):
        (value,) = struct.unpack_from(">i", self.data, self.at)
        self.at += 4
        return value

    def block(self, kind, size):
        count = self.whole()
        values = np.frombuffer(self.data, kind, count, self.at)
        self.at += count * size
        return values.astype(kind[1:])

    def item(self):
        flags = self.whole()
        kind, has_attributes = flags & 255, bool(flags & 512)
        if kind == 2:
            return self.pairs(flags)
        plain = {
            1: self.symbol, 9: self.text, 254: lambda: None, 253: lambda: None,
            255: lambda: self.seen[(flags >> 8 or self.whole()) - 1],
            10: lambda: self.block(">i4", 4), 13: lambda: self.block(">i4", 4),
            14: lambda: self.block(">f8", 8), 16: self.several, 19: self.several, 25: dict,
        }  # fmt: skip
        assert kind in plain, f"R type {kind} at {self.at}"
        value = plain[kind]()
        attributes = self.item() if has_attributes and kind in (10, 13, 14, 16, 19, 25) else {}
        if kind == 25:
            return attributes
        names = attributes.get("names") if isinstance(attributes, dict) else None
        if kind == 19 and names is not None:
            return dict(zip(names, value, strict=True))
        return value

    def pairs(self, flags):
        found = {}
        while flags & 255 == 2:
            if flags & 512:
                self.item()
            tag = self.item() if flags & 1024 else len(found)
            found[tag] = self.item()
            flags = self.whole()
        assert flags & 255 == 254
        return found

    def symbol(self):
        self.seen.append(self.item())
        return self.seen[-1]

    def text(self):
        size = self.whole()
        value = self.data[self.at : self.at + max(size, 0)].decode("latin-1")
        self.at += max(size, 0)
        return value

    def several(self):
        return [self.item() for _ in range(self.whole())]
