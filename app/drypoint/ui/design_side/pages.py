"""The pages of the design joined to the settings: each field one undoable action, each answer shown."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QFileDialog

from drypoint.board.model import Finding, Role, Side
from drypoint.errors import DrypointError
from drypoint.session.net_reach import NetReach
from drypoint.session.settings import Settings
from drypoint.session.speeds import speed_findings
from drypoint.session.traveller import StepName
from drypoint.ui.bridge import Bridge
from drypoint.ui.canvas.content import Spot
from drypoint.ui.design_side.coupon import CouponFiles
from drypoint.ui.design_side.coupon_reading import CouponReading
from drypoint.ui.design_side.editing import Editing
from drypoint.ui.design_side.electrical import Electrical
from drypoint.ui.design_side.fields import Plain, PlainFields
from drypoint.ui.design_side.imports import Imports
from drypoint.ui.design_side.messages import Messages
from drypoint.ui.design_side.planner import Planner
from drypoint.ui.design_side.switches import PlainSwitches
from drypoint.ui.design_side.translate import (
    bit_settings,
    bit_values,
    blank_settings,
    blank_values,
    groove_width,
    least_width,
    with_width,
)
from drypoint.ui.design_side.wear import WearOfBits
from drypoint.ui.design_side.words import board_page, cuts_page, passes_page, surface_page, trouble_of
from drypoint.ui.forms.values import BitValues, BlankValues
from drypoint.ui.pages.design import BitsPage, BlankPage, BoardPage, BoardPageValues, CutsPage, CutsPageValues
from drypoint.ui.pages.measure import SurfacePage, SurfacePageValues
from drypoint.ui.pages.passes import PassesPage
from drypoint.ui.parts.explain import explain
from drypoint.ui.parts.page import Page
from drypoint.ui.window import MainWindow

CHANGE_FILES = "change the files"


class DesignPages(QObject):
    """Pages Board to Passes, filled from the job and from what is planned."""

    def __init__(
        self,
        window: MainWindow,
        bridge: Bridge,
        planner: Planner,
        editing: Editing,
        messages: Messages,
    ) -> None:
        super().__init__(window)
        self._window, self._bridge, self._planner = window, bridge, planner
        self._editing, self._messages = editing, messages
        theme, defaults = window.theme, Settings()
        self.board = BoardPage(theme)
        self.blank = BlankPage(theme, blank_values(defaults.blank, (0.0, 0.0)))
        self.bits = BitsPage(theme, bit_values(defaults.bits))
        self.cuts = CutsPage(theme)
        self.surface = SurfacePage(theme)
        self.passes = PassesPage(theme)
        self._pages: dict[StepName, Page] = {
            StepName.BOARD: self.board,
            StepName.BLANK: self.blank,
            StepName.BITS: self.bits,
            StepName.CUTS: self.cuts,
            StepName.SURFACE: self.surface,
            StepName.PASSES: self.passes,
        }
        self.more = self._add_fields()
        self.switches = PlainSwitches(
            self.cuts,
            (
                ("holes", "spots", self.tr("Spot marks before thin drills")),
                ("cuts", "climb", self.tr("Grooves are cut climbing")),
                ("cuts", "dust_pause", self.tr("Pause to remove the dust")),
            ),
            bridge,
            editing,
        )
        self.electrical = Electrical(self.cuts, bridge, editing)
        self.wear = WearOfBits(self.bits, bridge, messages)
        self.coupon = CouponFiles(self.bits, bridge, editing, messages)
        self.coupon_reading = CouponReading(window, bridge, planner, self.coupon, messages)
        self.imports = Imports(self.blank, self.cuts, bridge, planner, editing, messages)
        for number, page in enumerate(self._pages.values()):
            page.place_wanted.connect(self._show_place)
            window.set_page(number, page)
        self._shown: Settings | None = None
        self._size: tuple[float, float] = (0.0, 0.0)
        self._filled: dict[str, object] = {}
        self._explain()
        self._connect()
        bridge.job_changed.connect(lambda _: self.show_settings())
        bridge.computed.connect(self._computed)
        bridge.failed.connect(self._failed)
        planner.changed.connect(self.show_plan)
        self.show_settings()
        self.show_plan()

    def _add_fields(self) -> tuple[PlainFields, ...]:
        """The numbers that the pages' own forms do not have."""
        bridge, editing = self._bridge, self._editing
        copies = (
            Plain("copies", "columns", self.tr("Beside each other"), "", 0, 1, 50),
            Plain("copies", "rows", self.tr("Above each other"), "", 0, 1, 50),
            Plain("copies", "gap", self.tr("Gap between copies"), "mm", 1, 0.0, 50.0),
        )
        cuts = (
            Plain("cuts", "through", self.tr("Into the backing"), "mm", 2, 0.0, 5.0, 0.1),
            Plain("cuts", "marks", self.tr("Reference holes"), "", 0, 2, 12),
        )
        holes = (
            Plain("holes", "tolerance", self.tr("A drill may differ by"), "mm", 2, 0.0, 0.5),
            Plain("holes", "slender", self.tr("Thin from depth over diameter"), "", 1, 0.5, 20.0, 0.5),
            Plain("holes", "small_pad", self.tr("Small pad, up to"), "mm", 1, 0.0, 10.0),
            Plain("holes", "gentle", self.tr("Share of feed in small pads"), "", 2, 0.1, 1.0, 0.1),
        )
        touch = (
            Plain("surface", "highest", self.tr("Start above the copper"), "mm", 1, 0.2, 20.0),
            Plain("surface", "lowest", self.tr("Give up below it"), "mm", 1, 0.2, 20.0),
            Plain("surface", "fast", self.tr("First touch"), "mm/min", 0, 5, 500, 5),
            Plain("surface", "slow", self.tr("Second touch"), "mm/min", 0, 1, 200, 1),
        )
        passes = (
            Plain("passes", "play", self.tr("Play of Z under load"), "mm", 3, 0.0, 0.2, 0.005),
            Plain("passes", "most", self.tr("Most passes"), "", 0, 1, 20),
        )
        return (
            PlainFields(self.blank, self.tr("Copies"), copies, bridge, editing),
            PlainFields(self.cuts, self.tr("Depth and reference"), cuts, bridge, editing),
            PlainFields(self.cuts, self.tr("Drilling"), holes, bridge, editing),
            PlainFields(self.surface, self.tr("How it is touched"), touch, bridge, editing),
            PlainFields(self.passes, self.tr("What is taken for the machine"), passes, bridge, editing),
        )

    def _connect(self) -> None:
        self.board.name_changed.connect(self._rename)
        self.board.side_changed.connect(self._change_side)
        self.board.both_changed.connect(self._change_both)
        explain(self.board.both, "board.both")
        self.board.role_changed.connect(self._change_role)
        self.board.change_files.connect(self._choose_files)
        self.board.demo_wanted.connect(self._window.commands["demo"].trigger)
        self.board.finding_chosen.connect(self._show_finding)
        self.blank.form.edited.connect(self._change_blank)
        self.bits.form.edited.connect(self._change_bits)
        self.cuts.edited.connect(self._change_cuts)
        self.cuts.plan.connect(self._planner.plan)
        self.cuts.place_chosen.connect(self._show_place)
        self.surface.count_changed.connect(self._change_touches)
        self.surface.plan.connect(self._planner.plan)
        self.passes.edited.connect(self._change_passes)
        self.passes.plan.connect(self._plan_pass)
        self.passes.choice_chosen.connect(self._choose_way)
        self.passes.net_chosen.connect(self._show_net)

    def _explain(self) -> None:
        """Help beside the fields of the pages' own forms."""
        for section, fields in (("cuts", self.cuts.fields), ("passes", self.passes.fields)):
            for name, field in fields.items():
                row = field.parentWidget()
                if row is not None:
                    explain(row, f"{section}.{'depth' if name == 'width' else name}")

    # settings out

    def show_settings(self) -> None:
        """Fill every field from the job, where the job says other than the fields."""
        session = self._bridge.session
        settings = session.settings if session is not None else Settings()
        if self._editing.pending or (settings == self._shown and self._size == self._board_size()):
            return
        self._shown, self._size = settings, self._board_size()
        self.board.show_settings(settings.board.name, settings.board.side)
        self.board.both.setChecked(settings.board.both)
        if self._size[0]:
            self.blank.form.set_board(*self._size)
        self.blank.form.set_values(blank_values(settings.blank, self._size))
        self.bits.form.set_values(bit_values(settings.bits), speed_findings(settings))
        cuts, vbit = settings.cuts, settings.bits.vbit
        fields = self.cuts.fields
        fields["width"].set_limits(round(least_width(vbit, settings.blank.copper) + 5e-4, 3), 2.0)
        for name, value in (
            ("width", groove_width(cuts, vbit)),
            ("bite", cuts.bite),
            ("tabs", float(cuts.tabs)),
            ("tab_width", cuts.tab_width),
            ("tab_height", cuts.tab_height),
        ):
            fields[name].set_value(value)
        self.surface.count.set_value(float(settings.surface.touches))
        for group in self.more:
            group.show(settings)
        self.switches.show(settings)
        passes = self.passes.fields
        passes["target"].set_value(100 * settings.passes.target)
        passes["deepest"].set_value(settings.passes.deepest)
        passes["join"].set_value(settings.passes.join)

    def _board_size(self) -> tuple[float, float]:
        board = self._planner.board
        return (0.0, 0.0) if board is None else (board.board.width, board.board.height)

    # settings in

    def _settings(self) -> Settings | None:
        return None if self._bridge.session is None else self._bridge.session.settings

    def _rename(self, name: str) -> None:
        settings = self._settings()
        if settings is not None and name.strip() and name.strip() != settings.board.name:
            self._editing.change(self.tr("Name"), board=replace(settings.board, name=name.strip()))

    def _change_side(self, side: Side) -> None:
        settings = self._settings()
        if settings is not None:
            self._editing.change(self.tr("Side being milled"), board=replace(settings.board, side=side))

    def _change_both(self, both: bool) -> None:
        settings = self._settings()
        if settings is not None:
            self._editing.change(self.tr("Sides being milled"), board=replace(settings.board, both=both))

    def _change_role(self, name: str, role: Role) -> None:
        session = self._bridge.session
        if session is not None:
            try:
                session.choose_role(name, role)
            except DrypointError as error:
                self._messages.error(error)

    def _change_blank(self, values: BlankValues, *, dragged: bool = False) -> None:
        settings = self._settings()
        if settings is None:
            return
        blank = blank_settings(values, settings.blank, self._size)
        if dragged:
            self._editing.change_soon(self.tr("Blank and clamps"), blank=blank)
        else:
            self._editing.change(self.tr("Blank and clamps"), blank=blank)

    def drag_clamp(self, number: int, dx: float, dy: float) -> None:
        """Move a clamp by dragging; stored once it has come to rest."""
        self._drag(lambda: self.blank.form.move_clamp(number, dx, dy))

    def drag_board(self, dx: float, dy: float) -> None:
        """Move the board on the blank by dragging."""
        self._drag(lambda: self.blank.form.move_board(dx, dy))

    def _drag(self, move: Callable[[], None]) -> None:
        form = self.blank.form
        blocked = form.blockSignals(True)
        move()
        form.blockSignals(blocked)
        self._change_blank(form.values, dragged=True)

    def _change_bits(self, values: BitValues) -> None:
        settings = self._settings()
        if settings is not None:
            self._editing.change(self.tr("Bits"), bits=bit_settings(values, settings.bits))

    def _change_cuts(self, name: str, value: float) -> None:
        settings = self._settings()
        if settings is None:
            return
        title = self.cuts.fields[name].accessibleName()
        if name == "width":
            cuts = with_width(settings.cuts, settings.bits.vbit, value, settings.blank.copper)
        elif name == "tabs":
            cuts = replace(settings.cuts, tabs=round(value))
        else:
            cuts = replace(settings.cuts, **{name: value})  # type: ignore[arg-type]
        self._editing.change(title, cuts=cuts)

    def _change_touches(self, value: float) -> None:
        settings = self._settings()
        if settings is not None:
            surface = replace(settings.surface, touches=round(value))
            self._editing.change(self.tr("Touches"), surface=surface)

    def _change_passes(self, name: str, value: float) -> None:
        settings = self._settings()
        if settings is not None:
            passes = replace(settings.passes, **{name: value})  # type: ignore[arg-type]
            self._editing.change(self.passes.fields[name].accessibleName(), passes=passes)

    # files

    def _choose_files(self) -> None:
        if self._bridge.session is None:
            self._window.commands["new"].trigger()
            return
        names, _ = QFileDialog.getOpenFileNames(self._window, self.tr("Design files in place of the present"))
        if names:
            self.import_files([Path(name) for name in names])

    def import_files(self, paths: list[Path]) -> None:
        """Put other design files in place of the present ones, in the background."""
        session = self._bridge.session
        if session is not None:
            self._bridge.ask(CHANGE_FILES, lambda progress: session.import_files(paths, progress=progress))

    def _computed(self, name: str, value: object) -> None:
        if name == CHANGE_FILES:
            self.board.show_trouble("")
            self._messages.say(self.tr("The design files were read."))

    def _failed(self, name: str, error: DrypointError) -> None:
        if name == CHANGE_FILES:
            self.board.show_trouble(*trouble_of(error))
            self._messages.error(error)

    # what is planned

    def show_plan(self) -> None:
        """Fill every figure from what is planned, and tell errors where they belong."""
        planner, session = self._planner, self._bridge.session
        self.show_settings()
        nets = () if planner.board is None else tuple(planner.board.board.nets)
        self.electrical.show(Settings() if session is None else session.settings, nets)
        self.wear.show()
        self.board.show_whether_new(session is None)
        if self._is_new("board", planner.board):
            board = planner.board
            self.board.show_board(BoardPageValues() if board is None else board_page(board.board))
        if self._is_new("cuts", planner.cuts):
            self.cuts.show_cuts(CutsPageValues() if planner.cuts is None else cuts_page(planner.cuts))
        touches = planner.touches
        if self._is_new("touches", touches):
            if touches is None or session is None:
                self.surface.show_surface(SurfacePageValues())
            else:
                self.surface.show_surface(surface_page(session.snapshot, touches))
        touched = touches is not None and touches.heat is not None
        wanted = None if session is None else session.settings.passes
        if self._is_new("passes", (planner.passes, touched, wanted)):
            self.passes.show_passes(passes_page(planner.passes, touched, self._settings()))
        for step, page in self._pages.items():
            page.show_trouble(*trouble_of(planner.errors.get(step)))

    def _plan_pass(self) -> None:
        """Plan the next pass, or say what must come first."""
        touches = self._planner.touches
        if self._planner.passes is None and (touches is None or touches.heat is None or touches.stale):
            self._window.choose_step(list(self._pages).index(StepName.SURFACE))
            self._messages.say(self.tr("A pass follows the copper's height: touch the copper first."))
        elif self._planner.passes is None:
            self._planner.plan()
        else:
            self._window.choose_step(list(StepName).index(StepName.RUN))

    def _choose_way(self, number: int) -> None:
        settings, passes = self._settings(), self._planner.passes
        if settings is None or passes is None or number >= len(passes.plan.choices):
            return
        choice = passes.plan.choices[number]
        changed = replace(settings.passes, ladder=choice.ladder)
        if not choice.ladder:
            changed = replace(changed, target=choice.target)
        self._editing.change(self.tr("How to cut"), passes=changed)

    def _show_net(self, line: NetReach | None) -> None:
        if line is not None:
            self._show_place(line.at, (line.net,))

    def _is_new(self, name: str, answer: object) -> bool:
        """Whether an answer is another one than the page shows: a page is not filled twice."""
        if name in self._filled and _identical(self._filled[name], answer):
            return False
        self._filled[name] = answer
        return True

    # places

    def _show_finding(self, finding: Finding) -> None:
        if finding.at is not None:
            self._show_place(finding.at, finding.nets)

    def _show_place(self, at: tuple[float, float], nets: tuple[str, ...] = ()) -> None:
        canvas = self._window.canvas.canvas
        canvas.set_chosen(nets, Spot(at))
        canvas.zoom_to_chosen()


def _identical(a: object, b: object) -> bool:
    """Whether two answers are one and the same, or pairs of such."""
    if isinstance(a, tuple) and isinstance(b, tuple):
        return all(map(_identical, a, b))
    return a is b
