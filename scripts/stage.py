"""Sets the window up for each screenshot."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
from PySide6.QtGui import QPixmap
from PySide6.QtWidgets import QApplication, QWidget
from sample import CLAMPS, HEIGHT, WIDTH, sample
from sample_words import spoken
from sheets import legend_sheet, test_pattern

from drypoint.board.model import Finding, LayerFile, Role
from drypoint.ui.canvas.content import Clamp, Content, Spot, View
from drypoint.ui.canvas.legend import Sample as Pen
from drypoint.ui.forms.values import BitValues, BlankValues, SetupValues
from drypoint.ui.heat.picture import draw_heat
from drypoint.ui.heat.view import Aspect
from drypoint.ui.jog.position import Position
from drypoint.ui.jog.reference import FitFacts, HoleLine
from drypoint.ui.pages.design import (
    BitsPage,
    BlankPage,
    BoardPage,
    BoardPageValues,
    CutsPage,
    CutsPageValues,
)
from drypoint.ui.pages.measure import (
    SurfacePage,
    SurfacePageValues,
)
from drypoint.ui.pages.passes import PassesPage, PassesPageValues, PassLine
from drypoint.ui.pages.proof import IslandLine, ProofPage
from drypoint.ui.pages.reference import ReferencePage, ReferencePageValues
from drypoint.ui.pages.run import RunPage, Task
from drypoint.ui.parts.glyph import Mark
from drypoint.ui.run_strip import RunState
from drypoint.ui.theme.theme import Theme
from drypoint.ui.traveller import Step
from drypoint.ui.window import MainWindow
from drypoint.ui.wizard.wizard import BoardFacts, SetupWizard

NAMES = ("board", "blank", "bits", "cuts", "surface", "passes", "reference", "run", "proof")
FILES = (
    LayerFile("hive-scale-copper-bottom.gbr", Role.COPPER_BOTTOM, "says so itself: Copper,L2,Bot"),
    LayerFile("hive-scale-copper-top.gbr", Role.COPPER_TOP, "says so itself: Copper,L1,Top"),
    LayerFile("hive-scale-outline.gbr", Role.OUTLINE, "says so itself: Profile,NP"),
    LayerFile("hive-scale-legend-top.gbr", Role.LEGEND_TOP, "says so itself: Legend,Top"),
    LayerFile("hive-scale-plated.drl", Role.DRILL_PLATED, "says so itself: Plated,1,2,PTH"),
    LayerFile("hive-scale-unplated.drl", Role.DRILL_UNPLATED, "says so itself: NonPlated,1,2,NPTH"),
    LayerFile("hive-scale-netlist.ipc", Role.NETLIST, "records of IPC-D-356"),
)


class Stage:
    """The window with the sample in it."""

    def __init__(self, app: QApplication, dark: bool, width: int, height: int) -> None:
        self.app, self.size = app, (width, height)
        self.theme = Theme(app, dark)
        self.sample = sample()
        self.window = MainWindow(self.theme)
        self.fill()
        self.window.resize(width, height)
        self.window.show()
        self.window.canvas.canvas.setFocus()

    def scenes(self) -> list[str]:
        extra = ("empty", "held", "needs-you", "order", "legend-sheet", "test-pattern")
        return [*NAMES, *extra, *(f"wizard-{n}" for n in range(1, 7))]

    def close(self) -> None:
        self.window.close()

    def shoot(self, name: str) -> QPixmap:
        if name.startswith("wizard"):
            return self.wizard(int(name[-1]) - 1)
        if name in ("legend-sheet", "test-pattern"):
            sheet = (legend_sheet if name == "legend-sheet" else test_pattern)(self.window)
            sheet.show()
            self.settle()
            picture = sheet.grab()
            sheet.close()
            return picture
        target: QWidget = self.window
        getattr(self, f"set_{name.replace('-', '_')}", lambda: None)()
        self.settle()
        return target.grab()

    def settle(self) -> None:
        for _ in range(80):
            self.app.processEvents()
        while not self.theme.wardrobe.is_done:
            self.app.processEvents()

    def fill(self) -> None:
        window, data = self.window, self.sample
        window.show_name("hive-scale.drypoint")
        window.traveller.show_job(
            *spoken(
                "hive-scale", f"bottom, {WIDTH:g} × {HEIGHT:g} mm", "Saved 19:46. Every change can be undone."
            )
        )
        self.pages = {
            "board": BoardPage(self.theme),
            "blank": BlankPage(self.theme, BlankValues()),
            "bits": BitsPage(self.theme, BitValues()),
            "cuts": CutsPage(self.theme),
            "surface": SurfacePage(self.theme),
            "passes": PassesPage(self.theme),
            "reference": ReferencePage(self.theme),
            "run": RunPage(self.theme),
            "proof": ProofPage(self.theme),
        }
        for number, name in enumerate(NAMES):
            window.set_page(number, self.pages[name], wide=name == "proof")
        self.plain = replace(data.content, errors=(), references=data.content.references[:3])
        window.canvas.set_content(self.plain)
        window.canvas.set_run_time(370)
        plate = data.plate
        self.heat = draw_heat(
            plate.mean, plate.std, (0, 0, WIDTH, HEIGHT), plate.touches.points, plate.touches.give
        )
        window.heat.set_picture(self.heat)
        window.jog.position.show_position(Position((12.34, 8.115, 5.0), (-87.66, -41.885, -12.14)))
        window.jog.reference.show_holes(self.holes(), FitFacts(0.03, 0.21), "R4")
        window.strip.show_feed(100)
        self.fill_pages()
        self.rest()

    def holes(self) -> tuple[HoleLine, ...]:
        places = [((-3.2, 26.0), 0.032), ((77.2, 6.0), 0.024), ((77.2, 46.0), 0.025), ((4.5, 47.5), None)]
        return tuple(
            HoleLine(f"R{n}", at, left, Mark.READY if left is None else Mark.DONE)
            for n, (at, left) in enumerate(places, start=1)
        )

    def rest(self) -> None:
        strip = self.window.strip
        strip.show_state(*spoken(RunState.AT_REST, "engraver on ttyUSB0, position trusted"))
        strip.show_run(*spoken("Next: pass 2", "114 mm, V-bit 0.1 mm 30°", 0.0, "about 1 min"))
        done = "Pass 1 finished: 1 017 mm in 6 min 10 s. The reach map is up to date."
        strip.show_message(*spoken("19:46", done, "job saved"))
        self.window.heat.set_stale("")
        self.window.heat.set_aspect(Aspect.MEAN)
        self.window.heat.set_picture(self.heat)
        self.window.canvas.set_legend("", ())
        self.window.canvas.set_content(self.plain)
        self.window.canvas.canvas.set_bit(None)
        self.window.canvas.canvas.set_chosen(())
        self.window.canvas.canvas.set_cursor(None)
        self.window.heat.set_cursor(None)
        self.window.jog.reference.set_usable(True)
        self.window.jog.reference.emphasise(False)
        self.window.jog.position.set_usable(True)
        self.window.jog.position.show_position(Position((12.34, 8.115, 5.0), (-87.66, -41.885, -12.14)))
        self.window.jog.position.switch.setChecked(False)

    def steps(self, ready: int, stale: tuple[int, ...] = ()) -> None:
        facts = (
            f"{WIDTH:g} × {HEIGHT:g} mm, 24 nets",
            "90 × 68 mm, 4 clamps",
            "1 V-bit, 3 drills, 1 mill",
            "24 loops, 1 017 mm",
            "48 touches, spread 8 µm",
            "pass 2 planned, 0.088 mm",
            "3 holes, residual 0.03 mm",
            "1 of 3 passes run",
            "after the next pass",
        )
        names = [name.capitalize() for name in NAMES]
        steps = []
        for number, (name, fact) in enumerate(zip(names, facts, strict=True)):
            mark = Mark.DONE if number < ready else (Mark.READY if number == ready else Mark.TO_DO)
            mark = Mark.STALE if number in stale else mark
            reason = "The board was re-clamped at 19:42." if number in stale else ""
            steps.append(Step(name, mark, "re-clamped 19:42" if number in stale else fact, reason))
        self.window.traveller.show_steps(*spoken(steps))

    def page(self, name: str, stale: tuple[int, ...] = ()) -> None:
        self.rest()
        number = NAMES.index(name)
        self.steps(number, stale)
        self.window.choose_step(number)

    def fill_pages(self) -> None:
        pages = self.pages
        pages["board"].show_board(
            *spoken(
                BoardPageValues(
                    24,
                    f"{WIDTH:g} × {HEIGHT:g} mm",
                    "attributes",
                    "50 round, 2 drills",
                    "none",
                    FILES,
                    (
                        Finding(
                            "tie",
                            "CLK and GND touch at one place",
                            "x 31.20, y 14.75 mm",
                            "Joined in the design; kept as one island.",
                            (31.2, 14.75),
                        ),
                    ),
                )
            )
        )
        blank = BlankValues(WIDTH + 16, HEIGHT + 16, clamps=tuple(self.blank_clamps()))
        pages["blank"].form.set_values(blank)
        pages["blank"].form.set_board(WIDTH, HEIGHT)
        pages["cuts"].show_cuts(
            *spoken(
                CutsPageValues(
                    1017,
                    24,
                    "6:10",
                    12.4,
                    0.021,
                    "6 tabs, 2 depths",
                    "44 of 0.8, 4 of 3.2 mm",
                    (),
                    "24 islands of 24",
                )
            )
        )
        for name, value in (
            ("width", 0.2),
            ("bite", 0.03),
            ("tabs", 6),
            ("tab_width", 3),
            ("tab_height", 0.6),
        ):
            pages["cuts"].fields[name].set_value(value)
        pages["surface"].show_surface(
            *spoken(
                SurfacePageValues(
                    48,
                    -79,
                    49,
                    8,
                    14,
                    1.9,
                    1,
                    "6 min",
                    give=("The corner at upper right yields by 30 µm. Clamp it, or put tape under it.",),
                )
            )
        )
        pages["surface"].count.set_value(48)
        passes = (
            PassLine("Pass 1", Mark.DONE, 0.056, 1017, 1.0),
            PassLine("Pass 2, planned", Mark.READY, 0.088, 114, 0.12),
            PassLine("Pass 3, if needed", Mark.TO_DO, 0.110, 20, 0.02),
        )
        pages["passes"].show_passes(
            *spoken(
                PassesPageValues(
                    0.907,
                    "after pass 1",
                    922,
                    79,
                    15,
                    passes,
                    "4 islands may still be joined",
                    "IN, VCC, C0 and D0. Test them by island touch before pass 2, or plan pass 2 now.",
                    "pass 2",
                    nets=self.sample.nets,
                )
            )
        )
        for name, value in (("target", 95), ("deepest", 0.14), ("join", 1.5)):
            pages["passes"].fields[name].set_value(value)
        pages["reference"].show_fit(
            *spoken(
                ReferencePageValues(
                    0.03,
                    "3 holes, one to spare",
                    self.holes(),
                    "Touch R4 next",
                    "It lowers the worst expected error from 0.06 to 0.04 mm.",
                    (
                        ("Turned", "+0.42° ± 0.03°"),
                        ("Shifted", "+1.214, −0.382 mm"),
                        ("Scale, not used", "1.0003 ± 0.0006"),
                        ("Play explains it", "yes, 0.02 mm in x"),
                    ),
                    (),
                    (("J2.3, drill 1.0", "0.21 ± 0.04 mm"), ("copper left round the hole", "95 %")),
                    "Surface and passes are stale",
                    "The board was re-clamped at 19:42. Re-map before the next pass.",
                )
            )
        )

    def blank_clamps(self) -> list[Clamp]:
        return [replace(c, box=(c.box[0] + 8, c.box[1] + 8, c.box[2] + 8, c.box[3] + 8)) for c in CLAMPS]

    def set_board(self) -> None:
        self.page("board")
        self.pages["board"].show_whether_new(False)
        self.window.canvas.set_view(View.NETS)
        self.window.canvas.set_content(Content(board=self.plain.board))

    def set_blank(self) -> None:
        self.page("blank")
        self.window.canvas.set_view(View.NETS)
        self.window.canvas.set_content(replace(self.plain, grooves=None, references=()))

    def set_bits(self) -> None:
        self.page("bits")
        self.window.canvas.set_view(View.NETS)

    def set_cuts(self) -> None:
        self.page("cuts")
        self.window.canvas.set_view(View.NETS)

    def set_surface(self) -> None:
        self.page("surface")
        self.window.heat.set_aspect(Aspect.SPREAD)
        self.window.canvas.set_content(replace(self.plain, touches=self.sample.plate.touches.points[:, :2]))
        self.window.heat.set_cursor((43, 27))
        self.window.canvas.canvas.set_cursor((43, 27))

    def set_passes(self) -> None:
        self.page("passes")
        self.window.canvas.set_view(View.REACH)
        self.settle()
        self.window.canvas.canvas.show_card_at(*self.sample.reach.points[9][40])

    def set_reference(self) -> None:
        self.page("reference", (4, 5))
        self.window.jog.reference.emphasise(True)
        self.window.canvas.set_view(View.NETS)
        self.window.canvas.set_content(replace(self.sample.content, grooves=None))
        self.window.canvas.set_legend(
            *spoken(
                "Fit, enlarged 40 times", ((Pen.RESIDUAL, "residual"), (Pen.ERROR, "95 % of expected error"))
            )
        )
        self.window.heat.set_aspect(Aspect.SPREAD)
        self.window.heat.set_stale(*spoken("re-clamped 19:42"))
        self.window.canvas.canvas.set_bit((5.1, 44.6))
        self.window.jog.position.switch.setChecked(True)
        self.window.strip.show_run(*spoken("Nothing to run", "re-map the surface first", 0.0, ""))

    def running(self) -> None:
        self.page("run")
        canvas = self.window.canvas
        canvas.set_view(View.PASSES)
        current = self.plain.current
        assert current is not None
        done = 0.56 * current.length
        canvas.set_travelled(done)
        trail = np.array([current.place_at(d) for d in np.linspace(done - 5, done, 40)])
        canvas.canvas.set_bit(current.place_at(done), trail)
        tasks = (
            Task("Pass 1", Mark.DONE, "6:10"),
            Task("Pass 2, only 114 mm", Mark.READY, "1:10"),
            Task("Island touch", Mark.TO_DO, "2:00"),
            Task("Pass 3, if needed", Mark.TO_DO, "0:20"),
            Task("Drill 0.8 mm", Mark.TO_DO, "44 holes"),
            Task("Outline, 6 tabs", Mark.TO_DO, "4:20"),
        )
        rows = (
            ("Line", "346 of 618"),
            ("Piece", "5 of 9, net C0"),
            ("Depth below copper", "0.088 mm"),
            ("Surface here", "+14 ± 9 µm"),
            ("Spindle", "10 000 /min"),
        )
        words = ("Pass 2 of 3, V-bit 0.1 mm 30°", "0:31", "left in this pass, all done about 20:09")
        self.pages["run"].show_run(*spoken(*words, rows, tasks), running=True)
        self.pages["run"].show_note(
            *spoken(
                "Acknowledged for this run",
                "Eye protection on, blank clamped, power switch within reach. "
                "Stop in software is no emergency stop.",
            )
        )
        self.window.jog.reference.set_usable(False)
        self.window.jog.position.set_usable(
            *spoken(False, "Jog is locked while a program runs. Hold first, then arm the keys.")
        )

    def set_run(self) -> None:
        self.running()
        self.window.strip.show_state(*spoken(RunState.CUTTING, "engraver on ttyUSB0, 240 mm/min"))
        self.window.strip.show_run(*spoken("Pass 2 of 3", "piece 5 of 9, line 346 of 618", 0.56, "0:31 left"))

    def set_held(self) -> None:
        self.running()
        self.window.strip.show_state(*spoken(RunState.HELD, "spindle still turning"))
        self.window.strip.show_run(
            *spoken("Pass 2 of 3, held", "piece 5 of 9, line 346 of 618", 0.56, "0:31 left")
        )
        self.window.strip.show_message(
            *spoken(
                "20:01",
                "Held by you. Resume goes on from here; Stop ends the run.",
                "journal written to line 346",
            )
        )

    def set_needs_you(self) -> None:
        self.running()
        self.window.strip.show_state(*spoken(RunState.NEEDS_YOU, "waiting since 20:03"))
        self.window.strip.show_run(
            *spoken("Change the bit", "drill 0.8 mm, 44 holes next", 0.0, "about 4 min")
        )
        self.pages["run"].ask(
            *spoken(
                "bit",
                "Put in the drill 0.8 mm",
                "The spindle stands still. Clip on the bit, then touch off.",
                "The drill is in",
            )
        )

    def set_order(self) -> None:
        self.page("passes")
        self.window.canvas.set_view(View.ORDER)
        self.window.canvas.scrub(0.52)

    def set_proof(self) -> None:
        self.page("proof")
        canvas = self.window.canvas
        canvas.set_view(View.NETS)
        names = [net.name for net in self.plain.board.nets]
        lines = [
            IslandLine((n,), Mark.DONE, "proved", "computed and touched", touched=True) for n in names[4:]
        ]
        lines += [IslandLine((n,), Mark.DONE, "proved", "computed") for n in names[3:4]]
        at = self.sample.reach.points[9][40]
        lines.append(
            IslandLine(
                (names[0], names[1]),
                Mark.ERROR,
                "joined",
                "The groove between them is predicted not through for 2.1 mm.",
                (float(at[0]), float(at[1])),
                True,
            )
        )
        lines.append(
            IslandLine((names[2],), Mark.DOUBT, "unproved", "No touch has parted it from its neighbour.")
        )
        self.pages["proof"].show_islands(
            *spoken("22", f"of {len(names)} islands are proved, 1 pair joined, 1 unproved", lines)
        )
        self.pages["proof"].choose_net(names[0])
        canvas.canvas.set_chosen(names[:2], Spot((float(at[0]), float(at[1])), 2.0))
        canvas.set_legend("Chosen", ((Pen.FIRST_NET, f"net {names[0]}"), (Pen.SECOND_NET, f"net {names[1]}")))
        self.window.strip.show_run(
            *spoken("Next: touch 7 islands", "spindle off, bit as probe", 0.0, "about 2 min")
        )

    def set_empty(self) -> None:
        self.page("surface")
        self.window.canvas.set_content(Content())
        self.window.heat.set_picture(None)
        self.pages["surface"].show_surface(*spoken(SurfacePageValues()))
        self.window.jog.position.show_position(Position(None, None))
        self.window.jog.position.set_usable(*spoken(False, "Connect a machine, or the bench, first."))
        self.window.strip.show_state(*spoken(RunState.NOT_CONNECTED, "no machine, no bench"), usable=False)
        self.window.strip.show_run(*spoken("Nothing to run", "", 0.0, ""))
        self.window.strip.show_message("", "")

    def wizard(self, page: int) -> QPixmap:
        dialog = SetupWizard(
            self.theme,
            SetupValues(
                blank=BlankValues(WIDTH + 16, HEIGHT + 16, clamps=tuple(self.blank_clamps()), keep_away=4.0)
            ),
        )
        dialog.show_files(*spoken(FILES))
        dialog.show_board(
            *spoken(
                self.sample.content.board,
                BoardFacts(f"{WIDTH:g} × {HEIGHT:g} mm", "24 nets", "attributes", "50 holes, no slots"),
            )
        )
        dialog.resize(*self.size)
        dialog.show()
        dialog.go(page)
        self.settle()
        picture = dialog.grab()
        dialog.close()
        return picture
