"""Words beside the settings of the laser."""

from __future__ import annotations

from drypoint.session.help.words import Help

LASER = {
    "pulses": Help(
        "Whether strokes are rows of separate pulses or continuous lines.",
        "Pulses mark evenly whatever the machine's acceleration, but take longer.",
    ),
    "power": Help(
        "Power of the beam as a share of its full power.",
        "Too much burns through the coating and chars; too little leaves no mark. A burn grid tells.",
        0.05,
        1,
        "of full power",
    ),
    "dwell": Help(
        "How long the beam rests for one pulse.",
        "Too long makes wide, charred spots; too short leaves none. A burn grid tells.",
        0.002,
        0.2,
        "s",
    ),
    "settle": Help(
        "How long the head waits at a place before the pulse.",
        "Too short smears the spots while the machine still shakes; longer only takes time.",
        0.01,
        0.2,
        "s",
    ),
    "feed": Help(
        "Speed along continuous lines.",
        "Too slow burns too deep; too fast leaves a faint line. On short lines it is never reached.",
        50,
        3000,
        "mm/min",
    ),
    "pitch": Help(
        "Distance between the pulses of a row.",
        "More than the spot leaves dotted lines; much less burns every place several times.",
        0.05,
        0.3,
    ),
    "spot": Help(
        "Diameter of what one pulse marks: measure it on a burn grid.",
        "Too large a value leaves gaps in fills; too small makes them dense and marks come near to pads.",
        0.05,
        0.3,
    ),
    "hatch": Help(
        "Distance between the rows of a filled shape.",
        "Above one spot the rows stay apart; far below it the fill chars.",
        0.5,
        1.5,
        "spots",
    ),
    "hatch_angle": Help(
        "Direction of the rows of a filled shape.",
        "Along an axis its play shows; across both it evens out.",
        0,
        180,
        "degrees",
    ),
    "widest": Help(
        "A shape wider than this gets a hatch; a narrower one gets rows along its edges.",
        "Too small hatches plain strokes; too large takes longer round corners.",
        0.3,
        1,
    ),
    "single": Help(
        "One row along the middle of every stroke, instead of as many as cover it.",
        "Quicker, but strokes look thinner than drawn.",
    ),
    "clear": Help(
        "Distance kept between the edge of a mark and a pad or hole.",
        "Too little chars the edge of pads, and solder does not take there.",
        0.05,
        0.5,
    ),
    "ring": Help(
        "Round every hole this much is taken for its pad, on the side that is marked.",
        "Too little marks where solder goes; too much leaves gaps in the legend.",
        0.2,
        1,
    ),
    "planes": Help(
        "Whether large areas of copper may be marked, beside their holes.",
        "A pad without a hole inside such an area is not told from it: it would be marked too.",
    ),
    "head": Help(
        "How far the position with the light spot over a mark differs from that with the bit over it.",
        "The whole legend is off by as much as this is wrong.",
        -100,
        100,
    ),
    "head_sigma": Help(
        "How well that is known, as a standard deviation.",
        "Believing it too good promises a better place than the legend gets.",
        0.02,
        0.3,
    ),
    "focus": Help(
        "Work height of the head with the spot in focus. Empty: set by hand, and left.",
        "Out of focus the spots are wide and faint.",
    ),
    "focus_seconds": Help(
        "Longest time the focus light stays on before it goes out by itself.",
        "Longer than needed is light for nothing: it harms eyes as the full beam does.",
        5,
        60,
        "s",
    ),
    "coating": Help(
        "What the laser marks: the name of the coating.",
        "A wrong name lets the values of another material be used.",
    ),
    "declared_safe": Help(
        "Whether the coating's maker declares it safe for laser work.",
        "Others may give off toxic or corrosive fumes, above all those with chlorine in them.",
    ),
    "bare": Help(
        "Whether bare laminate is marked instead of a coating. It is not advised.",
        "Burnt laminate gives off toxic and corrosive gases and can catch fire.",
    ),
    "bare_accepted": Help(
        "That the dangers of marking bare laminate, fumes and fire, are known and taken care of.",
        "Without extraction to the outside nobody should stay in the room.",
    ),
    "materials": Help(
        "Power and dwell that burn grids have settled, by material.",
        "Another batch or colour may need another grid.",
    ),
    "materials.name": Help(
        "The coating these values were found for.",
        "Two coatings of one name share their values.",
    ),
    "materials.power": Help(
        "Power of the field that looked best on the burn grid of this coating.",
        "Too much chars; too little leaves no mark.",
        0.05,
        1,
        "of full power",
    ),
    "materials.dwell": Help(
        "Dwell of the field that looked best on the burn grid of this coating.",
        "Too long chars; too short leaves no mark.",
        0.002,
        0.2,
        "s",
    ),
}
