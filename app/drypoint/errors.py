"""The errors a user may meet.

Every one says what is wrong, where, and what to do. Anything else that is raised is a bug.

    DrypointError
    ├── InputError    a file or value cannot be understood
    ├── PlanError     the job as set cannot be done
    ├── MachineError  the controller, the link or the contact circuit
    └── StoreError    the job file
"""

from __future__ import annotations

from drypoint.wording import as_text, say, strung


class DrypointError(Exception):
    """Something the user can act on.

    Parameters
    ----------
    what : str
        What is wrong, one sentence in plain words.
    where : str
        File and line, net, place or setting; empty if there is none.
    hint : str
        What to do about it; empty if there is nothing to advise.
    at : (x, y), optional
        Place on the board, mm in the board frame, where it can be shown. What reads one file alone
        gives it in the coordinates of that file.
    """

    def __init__(
        self, what: str, where: str = "", hint: str = "", *, at: tuple[float, float] | None = None
    ) -> None:
        super().__init__(what)
        self.at = at
        self.what = as_text(what)
        self.where = as_text(where)
        self.hint = as_text(hint)

    def __str__(self) -> str:
        return str(self.text)

    @property
    def text(self) -> str:
        """All of it in one line, which the window can say in another language."""
        first = say("{where}: {what}", where=self.where, what=self.what) if self.where else self.what
        return strung((first, self.hint))

    def as_dict(self) -> dict[str, str]:
        """The three parts, for scripts."""
        return {"what": self.what, "where": self.where, "hint": self.hint}


class InputError(DrypointError):
    """A file or a value that cannot be understood."""


class PlanError(DrypointError):
    """The job as set cannot be done."""


class MachineError(DrypointError):
    """The controller, the link to it, or the contact circuit."""


class StoreError(DrypointError):
    """The job file."""
