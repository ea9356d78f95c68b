"""Words beside the settings of the wide bit and of copper that is taken away."""

from __future__ import annotations

from drypoint.session.help.words import Help

CLEARING = {
    "bit": Help(
        "A second, wider bit that cuts open copper. The V-bit of the grooves then goes only where the wide "
        "one does not fit.",
        "Where gaps are narrow all over it saves nothing: two changes of the bit cost more.",
    ),
    "depth": Help(
        "Depth of the wide bit below the touched copper, the same everywhere. Where that may not reach "
        "through, the V-bit cuts the same line again.",
        "Too little leaves much to be cut again; too much wears the bit and widens the cut of a V-bit.",
        0.06,
        0.2,
    ),
    "what": Help(
        "Which copper without net is taken away beside the grooves. Nets, text and pictures of the copper "
        "layer stay.",
        "More than is needed takes long, makes much dust and wears the bit.",
    ),
    "moat": Help(
        "Width of the band round every net from which copper is taken away.",
        "Too narrow and solder bridges it easily; too wide takes long.",
        0.3,
        5,
    ),
    "areas": Help(
        "Rectangles of the board in which all copper without net is taken away.",
        "Outside of them copper stays between the grooves: it can be touched by what lies on the board.",
    ),
    "overlap": Help(
        "Share of its width by which a loop of clearing overlaps the next.",
        "Too little leaves threads of copper that are cut one by one; too much takes long.",
        0.1,
        0.6,
        "of the width",
    ),
    "slivers": Help(
        "Pieces of copper without net up to this area are taken away by the V-bit. 0 leaves them.",
        "Small ones may come off and join nets. Large areas take the fine bit long: clear those instead.",
        0,
        5,
        "mm²",
    ),
    "change": Help(
        "How long you take to change the bit and to set its height. Counted when times are compared.",
        "Too short and two bits seem to pay where they do not.",
        30,
        600,
        "s",
    ),
}

CLEAR_AREA = {
    "x": Help("Left edge of the area, from that of the board.", "Another place is cleared.", -50, 500),
    "y": Help("Lower edge of the area, from that of the board.", "Another place is cleared.", -50, 500),
    "width": Help("Width of the area.", "More or less is cleared than was meant.", 1, 500),
    "height": Help("Height of the area.", "More or less is cleared than was meant.", 1, 500),
}

WIDE_BIT = {
    "name": Help("Name of the wide bit, as it is asked for at the machine.", "The wrong bit is put in."),
    "diameter": Help(
        "Diameter of the wide bit where it is an end mill.",
        "If the bit cuts wider than this it eats into nets; narrower, and threads of copper stay.",
        0.3,
        3,
    ),
    "step": Help(
        "Deepest cut that an end mill takes at once.",
        "Too much breaks it. Copper is thinner than any usual step.",
        0.05,
        1,
    ),
    "speeds": Help("How the wide bit is run.", "Values of another bit break this one or spoil its edge."),
    "speeds.spindle": Help(
        "Speed of the spindle with the wide bit.",
        "Too slow tears the copper; too fast burns the laminate.",
        5000,
        30000,
        "/min",
    ),
    "speeds.feed": Help(
        "Speed along the cut with the wide bit.",
        "Too fast breaks the bit or tears the copper; too slow rubs and takes long.",
        50,
        1000,
        "mm/min",
    ),
    "speeds.plunge": Help(
        "Speed down into the copper with the wide bit.",
        "Too fast breaks the bit.",
        20,
        300,
        "mm/min",
    ),
}
