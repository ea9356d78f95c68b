"""Programs, setup sheet and report out of the job: into a folder, as HTML or as PDF, in the background."""

from __future__ import annotations

import tempfile
from dataclasses import replace
from pathlib import Path

from PySide6.QtCore import QEventLoop, QMarginsF, QObject, QUrl
from PySide6.QtGui import (
    QFont,
    QImage,
    QPageLayout,
    QPageSize,
    QPaintDevice,
    QPainter,
    QPdfWriter,
    QTextDocument,
)
from PySide6.QtSvg import QSvgRenderer
from PySide6.QtWidgets import QFileDialog

from drypoint.bits.wear import Wear
from drypoint.errors import DrypointError, StoreError
from drypoint.job.journal import RunRecord, runs
from drypoint.progress import Progress
from drypoint.session.doubts import suspects
from drypoint.session.export import export, sheet_facts, touched_rows, write_pictures
from drypoint.session.programs import programs
from drypoint.session.run_titles import run_title
from drypoint.session.session import Session
from drypoint.session.sheet import SheetFacts, setup_sheet
from drypoint.session.whole_file import write_whole
from drypoint.ui.bridge import Bridge
from drypoint.ui.design_side.messages import Messages
from drypoint.ui.design_side.pagination import print_sheets
from drypoint.ui.language.words import told
from drypoint.ui.window import MainWindow
from drypoint.wording import as_text, say

EXPORT, SHEET = "export", "setup sheet"

RESOLUTION = 150
"""Of the sheet's pictures and of the page, dots per inch."""
PICTURE_WIDTH, PICTURE_HEIGHT = 620, 460
"""The most a picture takes on paper, in 1/96 inch: two fit on a page."""


def paper_facts(
    session: Session, progress: Progress, *, report: bool, wear: Wear | None = None
) -> SheetFacts:
    """What stands on the setup sheet, or on the report: the same with what was run.

    Raises
    ------
    PlanError
        If the job cannot be planned.
    """
    made = programs(session, progress.part(0.0, 0.7))
    with tempfile.TemporaryDirectory() as folder:
        pictures = write_pictures(session, Path(folder), told)
    facts = sheet_facts(session, made, pictures, wear)
    if not report:
        return facts
    ran = tuple(
        (
            run_title(one.title),
            say(
                "{when}, {reason}, {count} lines",
                when=one.started[:16].replace("T", " "),
                reason=_how_ended(one),
                count=one.executed,
            ),
        )
        for one in runs(session.job)
    )
    doubtful = tuple(
        (
            one.title,
            say("IN DOUBT since {when}: {why}", when=one.at[:16].replace("T", " "), why=one.why),
        )
        for one in suspects(session)
    )
    title = say("Report: {name}", name=session.settings.board.name)
    return replace(facts, title=title, proof=(*doubtful, *facts.proof, *touched_rows(session.snapshot), *ran))


def _how_ended(run: RunRecord) -> str:
    if run.finished:
        return say("finished")
    return as_text(run.reason) if run.reason else say("not ended")


def write_paper(facts: SheetFacts, path: Path) -> None:
    """Write the sheet as PDF, or as HTML if the name says so.

    Raises
    ------
    StoreError
        If the file cannot be written.
    """
    try:
        path.parent.mkdir(parents=True, exist_ok=True)
        if path.suffix.lower() in (".html", ".htm"):
            write_whole(path, setup_sheet(facts, told))
            return
        with path.open("ab"):
            pass
    except OSError as error:
        raise StoreError(
            say("The sheet could not be written ({reason}).", reason=error.strerror or error),
            str(path),
            "Choose another folder.",
        ) from error
    _write_pdf(facts, path)


def _write_pdf(facts: SheetFacts, path: Path) -> None:
    writer = QPdfWriter(str(path))
    writer.setResolution(RESOLUTION)
    writer.setTitle(facts.title)
    writer.setPageLayout(
        QPageLayout(
            QPageSize(QPageSize.PageSizeId.A4),
            QPageLayout.Orientation.Portrait,
            QMarginsF(14, 14, 14, 14),
            QPageLayout.Unit.Millimeter,
        )
    )
    loop = QEventLoop()  # gives this thread the event dispatcher that laying out text wants
    pages = document(facts, writer)
    pages.setTextWidth(writer.width())
    print_sheets(pages, writer)
    del pages, loop


def document(facts: SheetFacts, device: QPaintDevice) -> QTextDocument:
    """The sheet laid out for a device, pictures on pages of their own, two on a page."""
    made = QTextDocument()
    made.documentLayout().setPaintDevice(device)
    made.setDefaultFont(QFont(made.defaultFont().family(), 10))
    html = setup_sheet(replace(facts, pictures=()), told).replace(" 14px/1.4 ", " 10pt ")
    figures = []
    for number, (words, picture) in enumerate(facts.pictures):
        name = f"picture:{number}"
        image = _image(picture)
        made.addResource(QTextDocument.ResourceType.ImageResource, QUrl(name), image)
        width = min(PICTURE_WIDTH, PICTURE_HEIGHT * image.width() // image.height())
        fresh = "" if number % 2 else ' style="page-break-before: always"'
        figures.append(f'<p{fresh}><b>{told(words)}</b><br><img src="{name}" width="{width}"></p>')
    made.setHtml(html.replace("</body>", f"{''.join(figures)}</body>"))
    return made


def _image(picture: str) -> QImage:
    """A picture of the core, drawn."""
    renderer = QSvgRenderer(picture.encode("utf-8"))
    size = renderer.defaultSize()
    width = 2 * PICTURE_WIDTH
    image = QImage(width, max(1, width * size.height() // max(1, size.width())), QImage.Format.Format_RGB32)
    image.fill(0xFFFFFFFF)
    painter = QPainter(image)
    renderer.render(painter)
    painter.end()
    return image


class Paper(QObject):
    """The commands Export programs, Setup sheet and Report."""

    def __init__(self, window: MainWindow, bridge: Bridge, messages: Messages) -> None:
        super().__init__(window)
        self._window, self._bridge, self._messages = window, bridge, messages
        commands = window.commands
        commands["export"].triggered.connect(self._ask_folder)
        commands["setup_sheet"].triggered.connect(lambda: self._ask_file(report=False))
        commands["report"].triggered.connect(lambda: self._ask_file(report=True))
        bridge.computed.connect(self._computed)
        bridge.failed.connect(self._failed)
        bridge.job_changed.connect(lambda _: self._enable())
        self._enable()

    def export_to(self, folder: Path) -> None:
        """Programs, pictures and setup sheet into a folder."""
        session = self._bridge.session
        if session is not None:

            def work(progress: Progress) -> str:
                written = export(session, folder, progress, wear=self._wear(), speak=told)
                return self.tr("{count} programs and the setup sheet are in {folder}").format(
                    count=len(written), folder=folder
                )

            self._bridge.ask(EXPORT, work)

    def write_sheet(self, path: Path, *, report: bool) -> None:
        """The setup sheet or the report into a file."""
        session = self._bridge.session
        if session is not None:

            def work(progress: Progress) -> str:
                write_paper(paper_facts(session, progress, report=report, wear=self._wear()), path)
                return self.tr("Written: {path}").format(path=path)

            self._bridge.ask(SHEET, work)

    def _wear(self) -> Wear | None:
        return None if self._bridge.book is None else self._bridge.book.read()

    def _ask_folder(self) -> None:
        name = QFileDialog.getExistingDirectory(self._window, self.tr("Folder for the programs"))
        if name:
            self.export_to(Path(name))

    def _ask_file(self, *, report: bool) -> None:
        session = self._bridge.session
        if session is None:
            return
        ending = "report" if report else "setup-sheet"
        usual = session.job.path.with_name(f"{session.job.path.stem}-{ending}.pdf")
        name, _ = QFileDialog.getSaveFileName(
            self._window, self.tr("Write to"), str(usual), self.tr("PDF (*.pdf);;Web page (*.html)")
        )
        if name:
            self.write_sheet(Path(name), report=report)

    def _computed(self, name: str, value: object) -> None:
        if name in (EXPORT, SHEET):
            self._messages.say(str(value))

    def _failed(self, name: str, error: DrypointError) -> None:
        if name in (EXPORT, SHEET):
            self._messages.error(error)

    def _enable(self) -> None:
        session = self._bridge.session
        usable = session is not None and bool(session.snapshot.sources)
        for name in ("export", "setup_sheet", "report"):
            self._window.commands[name].setEnabled(usable)
