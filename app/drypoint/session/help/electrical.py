"""Words beside the settings of currents and voltages."""

from __future__ import annotations

from drypoint.session.help.words import Help

ELECTRICAL = {
    "voltages": Help(
        "Voltages between nets. The clearance that is left after milling is checked against the table of "
        "IPC-2221.",
        "What is not entered is not checked. For mains the safety standard of the device rules, not this "
        "table.",
    ),
    "voltages.net": Help("The net that carries the voltage.", "A name that no net has checks nothing."),
    "voltages.other": Help(
        "The net it is measured against; empty is every other net.",
        "A pair has its own entry where it is lower or higher than against all others.",
    ),
    "voltages.volts": Help(
        "Highest voltage between them, direct or peak of alternating.",
        "An effective value entered for a peak asks for too little clearance: 230 V of mains peak at 325 V.",
        0,
        500,
        "V",
    ),
    "surroundings": Help(
        "What covers the copper in use: the column of the table that is read.",
        "A coating that is counted on but not there leaves too little clearance.",
    ),
    "rise": Help(
        "How much warmer a thinned trace may get than its surroundings, for the current stated beside it.",
        "Too much makes thin traces look fit for currents that scorch the board.",
        5,
        40,
        "K",
    ),
    "drop": Help(
        "Share of its width that a trace may lose to the cut. One that loses more is listed with the current "
        "it carried and carries, as an estimate by IPC-2221; 0 lists none.",
        "Too much hides traces that get hot, too little lists every trace that is touched.",
        0.1,
        0.5,
        "",
    ),
}
