"""Which things are one, as pairs of them are found joined."""

from __future__ import annotations


class Groups:
    """Which pieces of copper are one: union-find."""

    def __init__(self) -> None:
        self._parent: dict[str, str] = {}

    def of(self, net: str) -> str:
        """The net that stands for ``net``'s group."""
        while (parent := self._parent.setdefault(net, net)) != net:
            net = parent
        return net

    def join(self, a: str, b: str) -> None:
        """Make one group of two."""
        first, second = sorted((self.of(a), self.of(b)))
        self._parent[second] = first

    def several(self) -> tuple[frozenset[str], ...]:
        """Groups of two and more."""
        members: dict[str, set[str]] = {}
        for net in tuple(self._parent):
            members.setdefault(self.of(net), set()).add(net)
        return tuple(frozenset(group) for group in members.values() if len(group) > 1)
