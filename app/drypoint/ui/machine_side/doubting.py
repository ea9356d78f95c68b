"""What was cut since a check failed: shown on the pages Run and Proof, and what to do about it."""

from __future__ import annotations

from datetime import datetime

from PySide6.QtCore import QObject

from drypoint.errors import DrypointError
from drypoint.session.doubts import Suspect, call_sound, have_cut_again, suspects
from drypoint.ui.language.words import fill
from drypoint.ui.machine_side.desk import Desk
from drypoint.ui.pages.proof import ProofPage
from drypoint.ui.pages.run import RunPage, SuspectLine

CHANGES = frozenset({"opened", "closed", "source", "run", "pass", "done", "setup"})
"""Changes of the job after which something else may be in doubt."""


class Doubting(QObject):
    """Lists what is in doubt and takes what a person says of it."""

    def __init__(self, desk: Desk, run: RunPage, proof: ProofPage) -> None:
        super().__init__(desk)
        self._desk, self._run, self._proof = desk, run, proof
        self._known: tuple[Suspect, ...] = ()
        run.suspect_sound.connect(self._sound)
        run.suspect_again.connect(self._again)
        desk.changed.connect(lambda: run.allow_suspects(not desk.busy))

    def job_changed(self, what: str) -> None:
        """The job changed: look anew, if it concerns this."""
        if what not in CHANGES:
            return
        session = self._desk.bridge.session
        self._known = () if session is None else suspects(session)
        lines = [self._line(one) for one in self._known]
        self._run.show_suspects(lines)
        self._run.allow_suspects(not self._desk.busy)
        titles = ", ".join(one.title for one in self._known)
        why = self._known[-1].why if self._known else ""
        self._proof.show_doubt(titles, why)

    def _line(self, one: Suspect) -> SuspectLine:
        try:
            at = datetime.fromisoformat(one.at).strftime("%H:%M")
        except ValueError:
            at = one.at
        return SuspectLine(one.run, one.title, one.why, at)

    def _sound(self, line: SuspectLine) -> None:
        self._settle(line, again=False)

    def _again(self, line: SuspectLine) -> None:
        self._settle(line, again=True)

    def _settle(self, line: SuspectLine, *, again: bool) -> None:
        session = self._desk.bridge.session
        found = next((one for one in self._known if one.run == line.run), None)
        if session is None or found is None or self._desk.busy:
            return
        try:
            if again:
                have_cut_again(session, found)
            else:
                call_sound(session, found)
        except DrypointError as error:
            self._desk.show_error(error)
            return
        said = self.tr("{title} comes again.") if again else self.tr("{title} is taken as sound.")
        self._desk.say(fill(said, title=line.title))
