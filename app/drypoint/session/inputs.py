"""What each computed value depends on: the settings and records whose change makes it be computed anew."""

from __future__ import annotations

from drypoint.session.pass_plan import PAINTED

READ = ("source", "board")
DESIGN = (*READ, "edge")
PLACED = (*DESIGN, "copies")
BOARD = (*PLACED, "bits")
READY = (*DESIGN, "bits", "imported", "blank")
LAYOUT = (*BOARD, "blank")
TOOLING = (*LAYOUT, "turn", "tooling", "cuts")
CUTS = (*TOOLING, "clearing", "holes", "electrical", "imported")
FIT = (*LAYOUT, "setup", "reference", "stretch")
SURFACE = (*FIT, "touches")
ASKED = ("pass", "observation", "island touch", "coupon", PAINTED)
TOUCH_PLAN = (*FIT, *TOOLING, "clearing", "imported", "surface")
PASSES = (*SURFACE, "bits", "cuts", "clearing", "imported", "passes", *ASKED)
