"""Words beside the settings of board, blank and bits."""

from __future__ import annotations

from drypoint.session.help.words import Help

BOARD = {
    "side": Help(
        "The copper that is milled. The bottom is shown as it lies on the machine: turned over, so mirrored.",
        "With the wrong side every part would have to sit on the wrong face of the board.",
    ),
    "both": Help(
        "Mill the other side too, in this job: the board is turned over and found again by its holes.",
        "Without it the other layer's copper is replaced by link wires. With it, holes have no plated walls: "
        "leads or rivets must be soldered on both sides.",
    ),
    "name": Help(
        "What the job is called on the setup sheet and in the programs.",
        "Nothing depends on it; empty takes the name of the design files.",
    ),
}

BLANK = {
    "width": Help(
        "Size of the laminate along x. 0 takes the board with its margin all round.",
        "Too large a value puts clamps and reference holes where there is no laminate.",
        0,
        300,
    ),
    "height": Help(
        "Size of the laminate along y. 0 takes the board with its margin all round.",
        "Too large a value puts clamps and reference holes where there is no laminate.",
        0,
        300,
    ),
    "margin": Help(
        "Waste left round the board when the size of the laminate is not given.",
        "Too little leaves no room for clamps and for the reference holes.",
        5,
        20,
    ),
    "thickness": Help(
        "Thickness of the laminate with its copper; measure it, sheets differ by a tenth.",
        "Too small and holes and outline do not come through; too large and they cut into the bed.",
        0.4,
        3.2,
    ),
    "copper": Help(
        "Thickness of the copper: 0.035 for one ounce per square foot, 0.0175 for half of that.",
        "Too small and grooves that count as through still hold copper; too large and they are cut deeper "
        "and wider than they need to be.",
        0.009,
        0.105,
    ),
    "backing": Help(
        "Thickness of the sacrificial board under the laminate.",
        "Holes and outline run into it. Thinner than they reach means cutting into the machine's bed.",
        2,
        20,
    ),
    "board_x": Help(
        "Where the lower left of the board lies, from the lower left corner of the blank, along x. Only used "
        "when the board is not centred.",
        "The board would reach over the edge of the blank or under a clamp; Drypoint says so.",
        0,
        300,
    ),
    "board_y": Help(
        "Where the lower left of the board lies, from the lower left corner of the blank, along y. Only used "
        "when the board is not centred.",
        "The board would reach over the edge of the blank or under a clamp; Drypoint says so.",
        0,
        300,
    ),
    "centred": Help(
        "Puts the board into the middle of the blank.",
        "Switch it off to save laminate, and enter where the board lies.",
    ),
    "clamps": Help(
        "Places that no bit may enter: clamps, screws, tape. Enter each with all that stands up from it.",
        "A clamp that is not entered is a clamp the bit may run into: bits break and pieces fly. Wear eye "
        "protection.",
    ),
    "clamp_margin": Help(
        "Kept free all round every clamp, on top of its size.",
        "Less than the radius of the largest bit and its collet lets them touch the clamp.",
        1,
        10,
    ),
}

CLAMP = {
    "x": Help("Left edge of the clamp, from the blank's lower left corner.", "See clamps.", -50, 300),
    "y": Help("Front edge of the clamp, from the blank's lower left corner.", "See clamps.", -50, 300),
    "width": Help("Size of the clamp along x.", "Too small leaves part of it unprotected.", 1, 300),
    "height": Help("Size of the clamp along y.", "Too small leaves part of it unprotected.", 1, 300),
}

COPIES = {
    "columns": Help(
        "How many boards lie side by side on the blank.",
        "Too many do not fit; the blank then has to be larger than the machine can reach.",
        1,
        20,
        "",
    ),
    "rows": Help(
        "How many rows of boards lie behind each other on the blank.",
        "Too many do not fit; the blank then has to be larger than the machine can reach.",
        1,
        20,
        "",
    ),
    "gap": Help(
        "Room between two boards. The end mill that cuts them out runs there.",
        "Narrower than the end mill, and it would cut into the neighbour; that is refused.",
        2,
        10,
    ),
    "places": Help(
        "A place for each board by itself, turned if need be; columns and rows are not used then.",
        "Boards that overlap or lie too close for the end mill are refused.",
    ),
}

IMPORTED = {
    "uses": Help(
        "What a ready-made program is taken for: run as it is; grooves, cut in passes here; the outline; or "
        "nothing.",
        "Grooves of another board leave nets joined; an outline without tabs lets the board come loose; what "
        "is left out is missing unless it is planned here.",
    ),
    "zero": Help(
        "Where the programs have their z = 0: on top of the copper, or on the backing below the laminate.",
        "Chosen wrongly, everything is cut too high or too deep by the laminate's thickness.",
    ),
    "bits": Help(
        "The bit for each tool of a ready-made program, where it is not plain what the tool is.",
        "With the wrong bit widths and depths come out wrong, and thin bits break.",
    ),
    "x": Help(
        "Moves ready-made programs to the right on the board.",
        "Their cuts miss the pads and holes they were made for.",
        -300,
        300,
    ),
    "y": Help(
        "Moves ready-made programs backwards on the board.",
        "Their cuts miss the pads and holes they were made for.",
        -300,
        300,
    ),
}

EDGE = {
    "cut": Help(
        "Cut the rectangle round everything that ready-made programs cut out at the end, with tabs, where "
        "there is no outline.",
        "Off, the board stays in the blank unless a program cuts it out. On beside such a program, the edge "
        "is cut twice.",
    ),
    "margin": Help(
        "How far outside everything that is cut this rectangle lies.",
        "Too little cuts into what the programs made; too much asks for a larger blank.",
        0,
        50,
    ),
}

_SPEEDS = {
    "spindle": Help(
        "Turns of the spindle in a minute.",
        "Too slow breaks fine bits, too fast burns them. Keep to what the makers of bit and spindle allow.",
        5000,
        24000,
        "1/min",
    ),
    "feed": Help(
        "How fast the bit moves through the material.",
        "Too fast bends and breaks it and tears the copper; too slow rubs and dulls it.",
        30,
        800,
        "mm/min",
    ),
    "plunge": Help(
        "How fast the bit goes down into the material.",
        "Too fast breaks tips and pushes the laminate away.",
        20,
        300,
        "mm/min",
    ),
}

BITS = {
    "vbit": Help(
        "The engraving bit that parts the copper. Its groove is wider the deeper it goes.",
        "A bit described wrongly cuts grooves of another width: nets lose copper, or stay joined in gaps.",
    ),
    "vbit.name": Help("What the bit is called on the setup sheet.", "Nothing else depends on it."),
    "vbit.tip": Help(
        "Width of the flat at the very point. Cut a short groove and measure it rather than trust the label.",
        "Too small a value makes grooves wider than shown; too large lets narrow gaps look impossible.",
        0.05,
        0.5,
    ),
    "vbit.angle": Help(
        "Angle between the two flanks.",
        "The wider the angle, the more an error of depth changes the width of the groove.",
        10,
        90,
        "degrees",
    ),
    "vbit.runout": Help(
        "How much wider than its shape the turning bit cuts, because it does not turn quite centrally.",
        "Too small a value makes grooves wider than shown.",
        0,
        0.05,
    ),
    "drills": Help(
        "The drills in the box. Each hole takes the nearest one; a larger hole is bored with the end mill.",
        "A drill that is listed but not there stops the run at its change of bit.",
    ),
    "drills.name": Help("What the drill is called on the setup sheet.", "Nothing else depends on it."),
    "drills.diameter": Help(
        "Diameter of the drill.",
        "Too large a hole eats the ring of copper round it; too small a one does not take the lead.",
        0.3,
        3.2,
    ),
    "drills.peck": Help(
        "Depth of one peck; then the drill comes up and clears. 0 drills in one go.",
        "Too deep a peck packs the flutes and breaks thin drills.",
        0,
        2,
    ),
    "mill": Help(
        "The end mill for outline, slots and holes without a drill.",
        "A wrong diameter makes the board too large or too small by that much.",
    ),
    "mill.name": Help("What the mill is called on the setup sheet.", "Nothing else depends on it."),
    "mill.diameter": Help(
        "Diameter of the end mill, measured.",
        "A wrong diameter makes the board too large or too small by that much.",
        0.8,
        3.175,
    ),
    "mill.step": Help(
        "Deepest cut taken at once; the outline is cut in as many rounds as it takes.",
        "Too deep bends a small machine and breaks the mill; too shallow only takes time.",
        0.1,
        1.0,
    ),
    **{
        f"{bit}.speeds": Help(
            "How the bit is run. Start values are common practice, not a maker's figures.",
            "Follow the maker of the bit. Wrong speeds break bits and throw pieces; wear eye protection.",
        )
        for bit in ("vbit", "drills", "mill")
    },
    **{
        f"{bit}.speeds.{name}": words for bit in ("vbit", "drills", "mill") for name, words in _SPEEDS.items()
    },
}
