"""Words beside the settings of cuts, surface, passes, reference and machine."""

from __future__ import annotations

from drypoint.session.help.words import Help

CUTS = {
    "depth": Help(
        "The depth below the copper's top that widths are planned for. The depth really cut is chosen spot "
        "by spot when the copper has been touched.",
        "Less than the copper is thick parts nothing; much more only makes grooves wider and dust.",
        0.04,
        0.2,
    ),
    "bite": Help(
        "How far a groove may eat into copper that belongs to a net where a gap is narrower than the bit.",
        "Too much thins tracks and rings; none leaves narrow gaps uncut, and they are listed.",
        0,
        0.1,
    ),
    "least_trace": Help(
        "Narrowest copper that grooves may leave of a trace.",
        "Too little leaves traces that lift or burn; too much calls narrow gaps impossible.",
        0.05,
        0.4,
    ),
    "tabs": Help(
        "Bridges that hold the board in the blank until the end.",
        "Without them the board comes loose while the mill turns: it is thrown or jams. Keep at least three, "
        "or hold the board in another way.",
        3,
        8,
        "",
    ),
    "tab_width": Help(
        "Length of each bridge along the outline.",
        "Too short breaks early; too long is hard to cut off.",
        1.5,
        6,
    ),
    "tab_height": Help(
        "Thickness of laminate left in each bridge.",
        "Too thin breaks early; too thick is hard to cut off.",
        0.3,
        1.2,
    ),
    "through": Help(
        "How far drills and the outline go below the laminate, into the backing.",
        "Too little leaves burrs or a floor in the holes; more than the backing is thick cuts into the bed.",
        0.2,
        1,
    ),
    "marks": Help(
        "Reference holes made in the waste before anything else. The board is found again from them.",
        "Two are the least. With only two, a hole touched wrongly cannot be noticed.",
        3,
        6,
        "",
    ),
}

CUTS["climb"] = Help(
    "Loops round copper run so that the chip gets thinner towards the copper that stays; off: the other way "
    "round. A groove that two nets share has no such side.",
    "Where it pulls the bit into the copper because an axis has play, the other way leaves cleaner edges: "
    "try both on a test pattern.",
)
CUTS["dust_pause"] = Help(
    "Stops with the bit raised so that dust can be removed: between passes, before drilling and before the "
    "island touch.",
    "Dust left in grooves holds nets together, makes touches lie and lifts the next bit.",
)

SURFACE = {
    "touches": Help(
        "How many places of the copper are touched before the first pass.",
        "Too few leave ripples unseen: more of the board is doubtful and cut again. Each takes some seconds.",
        30,
        150,
        "",
    ),
    "highest": Help(
        "How far above the expected copper each touch begins.",
        "Lower than the blank is bowed up, and the bit would run into the copper on its way.",
        0.5,
        5,
    ),
    "lowest": Help(
        "How far below the expected copper a touch is given up.",
        "Too much breaks the tip on a spot that does not conduct; too little misses hollows.",
        0.3,
        3,
    ),
    "fast": Help(
        "Speed of the first touch.",
        "Too fast bends the tip before the machine has stopped.",
        30,
        150,
        "mm/min",
    ),
    "slow": Help(
        "Speed of the second touch, whose height counts.",
        "The faster, the coarser: at 60 mm/min the bit moves a micrometre each millisecond.",
        5,
        40,
        "mm/min",
    ),
}

PASSES = {
    "target": Help(
        "How likely each spot should be through after a pass, as a share. Higher cuts deeper where the "
        "height is uncertain.",
        "Too low needs more passes; very near 1 cuts grooves wide wherever little is known.",
        0.9,
        0.999,
        "",
    ),
    "deepest": Help(
        "No pass is planned deeper than this below the copper's top.",
        "Too small and low spots are never reached; too large makes wide grooves and wears the tip on glass.",
        0.08,
        0.25,
    ),
    "play": Help(
        "How far the bit is lifted, under load, by play and spring of the Z axis.",
        "Too small a value promises cuts that are not through; too large cuts deeper than needed.",
        0.005,
        0.06,
    ),
    "join": Help(
        "In a re-cut, places nearer together than this along a groove are cut in one go.",
        "Smaller means more plunges and lifts; larger cuts more than it must.",
        0.5,
        5,
    ),
    "ladder": Help(
        "Cut all grooves deeper and deeper in steps of 0.03 mm, in place of one careful pass at the depth "
        "that the copper's height asks for.",
        "It needs no trust in the touched heights, and takes several times as long.",
    ),
    "most": Help(
        "The most passes that are planned by themselves.",
        "Too few leave doubtful spots for you to decide about; many only take time.",
        1,
        8,
        "",
    ),
}

REFERENCE = {
    "way": Help(
        "How the bit is brought over a reference hole: sighted by eye with a lens (0.03 mm is usual), by the "
        "laser's light spot (0.1 mm), or by contacts with the hole's rim (0.015 mm).",
        "The expected errors are those of another way then.",
    ),
    "touch_sigma": Help(
        "How exactly the bit is set over a reference hole, as a standard deviation. Touch one hole five "
        "times: two thirds of the values lie within this of their mean.",
        "Too small a value makes the fit look surer than it is; too large hides a hole touched wrongly.",
        0.01,
        0.1,
    ),
    "hole_sigma": Help(
        "How exactly drilled holes lie where the design says, as a standard deviation. Thin drills wander "
        "by some 0.05 mm.",
        "Too small a value makes the fit look surer than it is; too large hides a hole touched wrongly.",
        0.01,
        0.1,
    ),
    "mark_sigma": Help(
        "The same for the reference holes pricked by the V-bit, which is stiff and does not wander.",
        "Too small a value makes the fit look surer than it is; too large hides a hole touched wrongly.",
        0.005,
        0.05,
    ),
}

MACHINE = {
    "preset": Help(
        "The size class of the machine: travel, speeds, what it has. All of it can be corrected below.",
        "A class too large plans moves past the ends of the axes, and the machine runs against its stops.",
    ),
    "port": Help(
        "The serial port of the controller. Empty: the bench, a simulated machine.",
        "With another device's port nothing answers, or the wrong device does.",
    ),
    "baud": Help(
        "Speed of the serial port, as the controller expects it.",
        "With a wrong one only rubbish arrives, and the controller is not recognised.",
        9600,
        250000,
        "Bd",
    ),
    "clearance": Help(
        "Height above the copper at which the bit moves across.",
        "Lower than a clamp or a bowed edge, and the bit runs into it. Higher only takes time.",
        1,
        10,
    ),
    "hop": Help(
        "Height above the highest touched copper at which the bit goes from one place to the next where "
        "they lie near each other and no clamp is in the way. Only after the copper was touched; 0 goes up "
        "all the way every time.",
        "Lower than a burr or a chip that stands up, and the bit scratches it. The saved time is shown with "
        "every program.",
        0.3,
        1.0,
    ),
    "line_by_line": Help(
        "Each line is sent only once the controller has answered the one before.",
        "Slower on short moves, where the machine may stutter; safer where a cable loses lines.",
    ),
    "spindle_delay": Help(
        "Wait after the spindle is switched on, until it turns at full speed.",
        "Too short, and the bit meets the copper while still slow, and breaks.",
        2,
        10,
        "s",
    ),
    "travel": Help(
        "How far each axis can move. Unset: as the size class has it.",
        "Too large, and programs may run the axes against their stops; the position is lost then.",
        40,
        600,
    ),
    "play": Help(
        "Play of x and y: how far the axis turns before the bed moves, when it changes direction.",
        "Too small a value promises positions that are not met; measure it and enter what you found.",
        0,
        0.1,
    ),
    "one_side": Help(
        "Whether holes and marks are reached from smaller x and y always, so that the play of the axes is "
        "taken up the same way at each. Costs a tenth of a second a hole.",
        "Without it holes reached from both sides lie apart by the play. It cannot help where the cutting "
        "force pushes an axis across its play.",
    ),
    "contact": Help(
        "Whether the controller has an input for the contact circuit of bit and copper. One wire sits on the "
        "still bit or its collet, the clip on the copper; contact through the bearings is unreliable.",
        "Without one heights cannot be touched and islands cannot be proved; z is set with paper.",
    ),
    "spindle_switched": Help(
        "Whether the controller switches the spindle. If not, Drypoint asks you to do it.",
        "If this is wrong the bit may turn when you do not expect it, or go down without turning. The power "
        "switch must be within reach.",
    ),
    "homing": Help(
        "Whether the machine finds its own zero with switches.",
        "Without switches such a move never ends by itself; leave it off if you are not sure.",
    ),
}
