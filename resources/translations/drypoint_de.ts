<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de_DE" sourcelanguage="en">
<context>
    <name>core</name>
    <message>
        <location filename="../../app/drypoint/board/gerber_state.py"/>
        <source> ({count} times)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/outline.py"/>
        <source> of board {number}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/imported.py"/>
        <source> on board {number}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/table.py"/>
        <source>'{cell}' is not a height or place in the table.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>1/min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/aperture_shapes.py"/>
        <source>3 to 12 are allowed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/laser_safety.py"/>
        <source>A beam can set things alight. Stay with it for as long as it is on; an extinguisher at hand, nothing that burns nearby. Stop here is a stop in software; the power switch is the one that counts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>A bit described wrongly cuts grooves of another width: nets lose copper, or stay joined in gaps.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/grooves.py"/>
        <source>A bit of the same angle with a tip of less than {tip:.3f} mm would do.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/sideways.py"/>
        <source>A bit of {bit:.2f} mm has no room in a hole of {hole:.2f} mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_plotter.py"/>
        <source>A block aperture cannot draw lines.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>A block aperture ends that never began.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>A block aperture has no end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/fit.py"/>
        <source>A board is found from two holes at least.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/burn_grid.py"/>
        <source>A burn grid needs powers above 0 up to 100 %, dwells above 0 and a pitch above 0.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/sideways.py"/>
        <source>A burr or a chip? Clean the hole, then touch it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill_body.py"/>
        <source>A circle is not larger than its tool.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>A clamp that is not entered is a clamp the bit may run into: bits break and pieces fly. Wear eye protection.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>A class too large plans moves past the ends of the axes, and the machine runs against its stops.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>A command lacks its coordinates.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>A command lacks its value.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>A command needs a whole number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/blocks.py"/>
        <source>A comment ends that did not begin.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/blocks.py"/>
        <source>A comment is not closed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_format.py"/>
        <source>A coordinate has {size} digits.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/coupon.py"/>
        <source>A coupon needs depths above 0 and gaps of 0 or more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/depth_coupon.py"/>
        <source>A coupon needs depths above 0.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/centrelines.py"/>
        <source>A cut of {widest:.3f} mm or less would do, or a bite of {taken:.3f} mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/writer.py"/>
        <location filename="../../app/drypoint/program/check.py"/>
        <location filename="../../app/drypoint/program/imported.py"/>
        <source>A cutting move has no feed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>A drill that is listed but not there stops the run at its change of bit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>A drilling cycle needs R and Z.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>A drilling cycle's Z lies above its R.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>A dwell needs P, its time in seconds.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>A feed cannot be negative.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>A feed move has no feed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill_body.py"/>
        <source>A hole comes before any tool is chosen.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/hole_nets.py"/>
        <source>A hole of {diameter:.2f} mm meets copper of {nets}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>A limit switch was hit: the machine stopped at once and has lost its position.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/writer.py"/>
        <source>A line is {count} characters long; the controller takes {limit}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/blocks.py"/>
        <source>A line number must be a whole number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_interpreter.py"/>
        <source>A line such as %FSLAX46Y46*% is missing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>A line to be stored is too long for the controller's store.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/linear.py"/>
        <source>A line with its uncertainty needs three points at least.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/faults.py"/>
        <source>A line, or the answer to it, was lost on the cable.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/macro_primitives.py"/>
        <location filename="../../app/drypoint/board/macro_template.py"/>
        <source>A macro primitive has too few parameters.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser_check.py"/>
        <source>A mark from a place that is not known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser_check.py"/>
        <source>A mark has no feed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser_check.py"/>
        <source>A mark that goes nowhere.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>A move would have left the machine's travel; it was not made.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>A number in the line is missing or malformed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/expressions.py"/>
        <source>A number is expected, not “{found}”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/expressions.py"/>
        <source>A number is too large.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>A pad without a hole inside such an area is not told from it: it would be marked too.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/blocks.py"/>
        <source>A parameter is named but not set.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/expressions.py"/>
        <source>A parameter's number must be 1 to 5399.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>A pass was run at {run}, after the touches of {touched}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>A place for each board by itself, turned if need be; columns and rows are not used then.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill_body.py"/>
        <source>A place lies more than 10 m out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>A place lies more than 100 m out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/aperture_shapes.py"/>
        <source>A polygon aperture cannot have {values:g} corners.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser_check.py"/>
        <source>A power below zero.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/guard.py"/>
        <source>A program may not change the controller's settings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser_check.py"/>
        <source>A pulse at a place that is not known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser.py"/>
        <source>A pulse lasts more than 0 and at most {longest_pulse:g} s.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser_check.py"/>
        <source>A pulse lasts {seconds:g} s; allowed is up to {longest_pulse:g} s.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/check.py"/>
        <source>A rapid move goes below the clearance height {clearance:g} mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/check.py"/>
        <source>A rapid move goes sideways before the height is known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/check.py"/>
        <source>A rapid move starts below the clearance height {clearance:g} mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>A rate is set so high that the steps come too fast.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>A ready-made program that cuts the board out; no outline is planned then.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>A ready-made program whose engraved paths are cut in passes here, in place of planned grooves.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/blocks.py"/>
        <source>A real-time command does not belong in a file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>A shape wider than this gets a hatch; a narrower one gets rows along its edges.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>A spindle speed cannot be negative.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>A step-and-repeat with no copies is impossible.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/passes/depth.py"/>
        <source>A target of {target} is no probability.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/copper.py"/>
        <source>A tie on purpose is drawn this way. Check that it is one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill.py"/>
        <source>A tool has no diameter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>A tool length offset is given for an axis that has none.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>A tool's number must be a whole number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>A value is negative that may not be.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/ratings.py"/>
        <source>A voltage must be 0 or more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/proof.py"/>
        <source>A wire is held against</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>A word occurs twice in the line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>A word of the line lacks its letter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>A wrong diameter makes the board too large or too small by that much.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>A wrong name lets the values of another material be used.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/placed_cuts.py"/>
        <source>A {value} has no depth.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/expressions.py"/>
        <source>ATAN needs two values: ATAN[…]/[…].</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Above one spot the rows stay apart; far below it the fill chars.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/holes.py"/>
        <source>Add a drill or a smaller end mill to make it to size.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/holes.py"/>
        <source>Add a smaller bit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_source.py"/>
        <source>Add it as G-code.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_source.py"/>
        <source>Add it as a drill file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_source.py"/>
        <source>Add it as a netlist.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/load.py"/>
        <source>Add it if there is one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/legend.py"/>
        <source>Allow a smaller clearance.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/warp.py"/>
        <source>Allow at least {error:.1f} µm of chord error.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/passes/depth.py"/>
        <source>Allow more depth, or use a finer bit that stays narrow when it goes deeper.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Along an axis its play shows; across both it evens out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/macro_expressions.py"/>
        <source>An aperture macro divides by zero.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/macro_template.py"/>
        <source>An aperture macro has no name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/aperture_shapes.py"/>
        <source>An aperture {kind} cannot have {count} parameters.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>An arc by radius needs an end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>An arc has both a radius and a centre.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>An arc has neither end nor centre.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill_body.py"/>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>An arc has neither radius nor centre.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/check.py"/>
        <source>An arc has no centre.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>An arc lacks coordinates in its plane.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>An arc lacks its centre.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_plotter.py"/>
        <source>An arc reaches more than a kilometre away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/attributes.py"/>
        <source>An attribute has no usable name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/expressions.py"/>
        <source>An expression is nested too deep.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/expressions.py"/>
        <source>An expression lacks its “]” or an operation.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/layers.py"/>
        <source>An opening in a drill file is not round.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Angle between the two flanks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Another batch or colour may need another grid.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/outline.py"/>
        <source>Another closed shape lies outside the outline.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>Aperture D{number} is defined again; both hold, each from its place on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_interpreter.py"/>
        <source>Aperture D{number} is used but not defined.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/play.py"/>
        <source>As many contacts made as broken are needed, two of each at least.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/grooves.py"/>
        <source>At least one loop is needed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/laser_safety.py"/>
        <source>Bare laminate under a laser is not acknowledged.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Bd</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Believing it too good promises a better place than the legend gets.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/contact.py"/>
        <source>Bit in the air, clip off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/bit_change.py"/>
        <source>Bits are sharp; wear gloves or use a holder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/layout.py"/>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>Blank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/layout.py"/>
        <source>Blank: lower left of the board at {x:.1f}, {y:.1f} mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/derive.py"/>
        <location filename="../../app/drypoint/ui/canvas/canvas.py"/>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>Board</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <source>Board and blank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/running.py"/>
        <source>Board clamped, clamps outside the path, extraction on: the dust of glass-fibre laminate irritates skin, eyes and airways.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>Board on the blank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Boards that lie too close for the end mill are refused.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/panel.py"/>
        <source>Boards {a} and {b} lie {near:.2f} mm apart; {gap:.2f} mm are needed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Bridges that hold the board in the blank until the end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/sideways.py"/>
        <source>Bring it over the middle of the hole, or farther off the edge. Is it thinner than the hole?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/bit_change.py"/>
        <location filename="../../app/drypoint/machine/procedures/resuming.py"/>
        <source>Bring the bit a few millimetres above the copper at the zero spot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/find.py"/>
        <source>Bring the bit exactly over reference hole {label}, about 1 mm above it. Come from the left and from below at the end: play is taken up the same way at every hole then.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/play.py"/>
        <source>Bring the bit nearer to it, deep enough, and see that the clip is on this copper.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/measure.py"/>
        <source>Bring the bit over the copper {inset:g} mm in from the left and from the front edge of the blank, about 1 mm above it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/touching.py"/>
        <source>Bring the bit to a few millimetres above the copper and try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/bit_change.py"/>
        <source>Bring the bit well clear of board and clamps.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/legend.py"/>
        <source>Burn a grid on it first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/legend.py"/>
        <source>Burn grid on {material}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/laser_safety.py"/>
        <source>Burnt glass-fibre or paper laminate gives off toxic and corrosive gases, and it can catch fire. It is not advised; a coating that its maker declares laser-safe is the better way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Burnt laminate gives off toxic and corrosive gases and can catch fire.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/registration.py"/>
        <source>Check that they are of one board, and the drill file's units.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/aperture_shapes.py"/>
        <source>Check the aperture's parameters.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/channel.py"/>
        <location filename="../../app/drypoint/machine/serial_link.py"/>
        <source>Check the cable and the power, then connect again; the run can be resumed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/store.py"/>
        <source>Check the folder and its rights.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/commands.py"/>
        <source>Check the folder, its rights and the room on the disk.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/store.py"/>
        <source>Check the name, or prepare a new job.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/commands.py"/>
        <source>Check the name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_source.py"/>
        <source>Check the path.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/check.py"/>
        <source>Checking the lines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/turn.py"/>
        <source>Chips lie under the board: clean bed and copper, or it lies askew and hollow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/archive.py"/>
        <source>Choose Gerber and drill files.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/schema.py"/>
        <location filename="../../app/drypoint/job/store.py"/>
        <source>Choose a .drypoint file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>Choose a G-code file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_source.py"/>
        <source>Choose a Gerber layer file (often .gbr, .gtl, .gbl, .gko).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/imported.py"/>
        <source>Choose a bit of the job for it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/work.py"/>
        <source>Choose a larger machine, a smaller blank, or turn the board.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/work.py"/>
        <source>Choose a larger machine, or turn the board on the bed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/outline.py"/>
        <source>Choose a smaller end mill.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/text_source.py"/>
        <source>Choose a text export of the design.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill.py"/>
        <source>Choose an Excellon or XNC file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/holes.py"/>
        <source>Choose an end mill of {diameter:.2f} mm or less.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/store.py"/>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>Choose another folder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/imported.py"/>
        <source>Choose another for the grooves.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/session.py"/>
        <source>Choose another name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/imported.py"/>
        <source>Choose its bits, choose another program, or none to cut the outline as planned here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/turn.py"/>
        <source>Choose its file, or turn the board over for the legend only.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/layers.py"/>
        <source>Choose its role if it is needed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/imported.py"/>
        <source>Choose one for every tool.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/work.py"/>
        <source>Choose one of: {names}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/archive.py"/>
        <source>Choose the board's folder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/layers.py"/>
        <source>Choose the file that is the copper, or give it its role.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/legend.py"/>
        <source>Choose the file that is the legend.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/derive.py"/>
        <source>Choose the folder or files.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/load.py"/>
        <source>Choose the outline's file, or keep this.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/layers.py"/>
        <source>Choose the right one by its role.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/find.py"/>
        <source>Choose the way by hand wheel; or jog to the hole.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/measure.py"/>
        <location filename="../../app/drypoint/session/rehearsal.py"/>
        <source>Clamp it there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/give.py"/>
        <source>Clamp it there, then touch again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/layout.py"/>
        <source>Clamp {number} is {gap:.1f} mm from the outline; {margin:.1f} mm were asked for. Move it outwards by {margin2:.1f} mm, or allow less.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>Clamped anew at {time}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>Clamped anew at {time}: {note}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/touching.py"/>
        <source>Clean the copper and the bit there, see that the board lies firmly, then set zero again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/proof.py"/>
        <source>Clean the copper under the clip, look at the wire, then touch again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/play.py"/>
        <source>Clean wall and bit; look at clip and wire. A chip may hang between them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/contact.py"/>
        <source>Clip off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/export.py"/>
        <source>Clip off? Clamps tight? Eyes and lungs protected? Hand on the power switch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/contact.py"/>
        <source>Clip on the copper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Close it and home again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/store.py"/>
        <source>Close it there and try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Close it, then resume.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/blocks.py"/>
        <source>Comments cannot be nested.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser_check.py"/>
        <source>Constant power is set by something other than a pulse: a dwell at rest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/contact.py"/>
        <location filename="../../app/drypoint/ui/machine_side/jogging.py"/>
        <source>Contact circuit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <source>Contact clip off before the spindle starts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/panel.py"/>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>Copies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/panel.py"/>
        <source>Copies must number 1 to {most}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/panel.py"/>
        <source>Copies: {columns} × {rows}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/laser_safety.py"/>
        <source>Copper and other bright metal reflect the beam: none of it bare under the beam or at its side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/coupon.py"/>
        <source>Coupon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/marking.py"/>
        <source>Dark walk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/faults.py"/>
        <source>Declined: {what}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Deepest cut taken at once; the outline is cut in as many rounds as it takes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <source>Depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Depth of one peck; then the drill comes up and clears. 0 drills in one go.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/width_coupon.py"/>
        <source>Depths, widths and the copper's thickness must be above 0.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <source>Design place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Diameter of the drill.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Diameter of the end mill, measured.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Diameter of what one pulse marks: measure it on a burn grid.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Direction of the rows of a filled shape.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Distance between the pulses of a row.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Distance between the rows of a filled shape.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Distance kept between the edge of a mark and a pad or hole.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <source>Do not leave the machine alone while it moves.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/touching.py"/>
        <source>Does a chip hang between bit and copper, or is the wire shorted?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/turn.py"/>
        <source>Drill through reference holes in the waste first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/holes.py"/>
        <source>Drilled with {diameter:.2f} mm only.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/preset.py"/>
        <source>Drypoint did not store it. If it moves the machine, remove it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <source>Dust of glass-fibre laminate irritates skin, eyes and airways: extract it at the bit or collect it wet; do not blow it about. Wear a fine-dust mask if it gets into the air.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Dwell of the field that looked best on the burn grid of this coating.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/head.py"/>
        <source>Each mark is needed once with the spindle and once with the other head.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/model.py"/>
        <source>Each needs x, y and z in millimetres.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/width_coupon.py"/>
        <source>Enter a width or a test.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/work.py"/>
        <source>Enter yours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/fit.py"/>
        <source>Every hole needs an uncertainty above zero.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Every setting has to be entered again before the machine is moved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/proof.py"/>
        <source>Every touch presses the bit's tip onto copper: use a blunt probe in its place if you have one, and set zero again after changing it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <source>Expected through</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <location filename="../../app/drypoint/machine/sender.py"/>
        <source>Export again with shorter lines.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/load.py"/>
        <source>Export it again from the CAD program.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill.py"/>
        <source>Export it again with METRIC or INCH in its header.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/text_source.py"/>
        <source>Export it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/netlist.py"/>
        <source>Export it as IPC-D-356A.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>Export one whole file instead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill_body.py"/>
        <source>Export the drill file with tools.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/macro_expressions.py"/>
        <location filename="../../app/drypoint/board/macro_template.py"/>
        <source>Export the file again, or without aperture macros.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/attributes.py"/>
        <location filename="../../app/drypoint/board/gerber_plotter.py"/>
        <location filename="../../app/drypoint/board/macro_primitives.py"/>
        <location filename="../../app/drypoint/board/macro_template.py"/>
        <source>Export the file again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_plotter.py"/>
        <source>Export the layer again with its unit, mm or inch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_source.py"/>
        <source>Export the layer again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_interpreter.py"/>
        <source>Export with apertures in the file (RS-274X), not as a separate list.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <source>Eye protection on. No loose sleeves, hair or jewellery near the spindle. Hands away while anything turns.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/bit_change.py"/>
        <source>Eyes protected, no loose sleeves or hair near the spindle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/feeds.py"/>
        <source>Feed is limited to {feed_max:.0f} mm/min: chips are thinner than asked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/legend.py"/>
        <source>Fills of the legend</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/mark.py"/>
        <source>Find the board again and mark anew.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/marking.py"/>
        <source>Find the board again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Find the cause of the alarm, then unlock; positions may be lost.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/marking.py"/>
        <source>Focus light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Follow the maker of the bit. Wrong speeds break bits and throw pieces; wear eye protection.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/running.py"/>
        <source>Follow the maker's manual, local rules and qualified practice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/laser_safety.py"/>
        <source>Follow the manual of the laser's maker, local rules and qualified practice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/place.py"/>
        <source>Following the surface</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Front edge of the clamp, from the blank's lower left corner.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/preset.py"/>
        <source>Full speed is set to {have:g} 1/min; the machine set up here has {high:g}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_source.py"/>
        <source>G-code for a machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>G10 changes the controller's coordinates.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>G18 turns arcs into another plane; only the XY plane is supported.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>G19 turns arcs into another plane; only the XY plane is supported.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>G28 goes to a place this file does not know.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>G28.1 changes the controller's settings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>G30 goes to a place this file does not know.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>G30.1 changes the controller's settings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>G38.2 touches; a program to be cut must not.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>G41 (cutter radius compensation) is not supported.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>G42 (cutter radius compensation) is not supported.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>G43 (tool length) is not supported; the bit is touched off instead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>G43.1 (tool length) is not supported; the bit is touched off instead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>G53 moves in machine coordinates, which this file cannot know.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>G83 needs Q, the depth of a peck.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>G83 would make too many pecks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>G90.1 (absolute arc centres) is not supported.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>G92 needs at least one axis.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>Gaps too narrow to cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/commands.py"/>
        <source>Give {least:g} to {most:g}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/holes.py"/>
        <source>Go less than {bed:.1f} mm past the blank.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/place.py"/>
        <source>Grooves, pass {number}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill_body.py"/>
        <source>G{code:02d} (a canned pattern) is not understood.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/blocks.py"/>
        <source>G{code:g} is not known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/blocks.py"/>
        <source>G{g:g} and G{code:g} contradict each other.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>G{stated:g} and G{g:g} both want the line's words.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Height above the copper at which the bit moves across.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/find.py"/>
        <source>Hold the board, not the bit; spindle off and still.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/contact.py"/>
        <source>Hold the clip against the bit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <source>Hole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/fit.py"/>
        <source>Hole positions must be pairs of finite numbers: {error}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Holes and outline run into it. Thinner than they reach means cutting into the machine's bed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/holes.py"/>
        <source>Holes would run through the backing into the bed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Home again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/resuming.py"/>
        <source>Home it, or look at its switches.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Homing found no second switch of an axis with two.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Homing found no switch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Homing is switched off in the controller.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/preset.py"/>
        <source>Homing is {word} in the controller, unlike the machine set up here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Homing was broken off by a reset.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/hover.py"/>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <location filename="../../app/drypoint/ui/pages/run.py"/>
        <source>Hover lap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>How exactly drilled holes lie where the design says, as a standard deviation. Thin drills wander by some 0.05 mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>How exactly the bit is set over a reference hole, as a standard deviation. Touch one hole five times: two thirds of the values lie within this of their mean.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>How far a groove may eat into copper that belongs to a net where a gap is narrower than the bit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>How far above the expected copper each touch begins.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>How far below the expected copper a touch is given up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>How far drills and the outline go below the laminate, into the backing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>How far each axis can move. Unset: as the size class has it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>How far the bit is lifted, under load, by play and spring of the Z axis.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>How far the position with the light spot over a mark differs from that with the bit over it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>How fast the bit goes down into the material.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>How fast the bit moves through the material.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>How likely each spot should be through after a pass, as a share. Higher cuts deeper where the height is uncertain.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>How long the beam rests for one pulse.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>How long the head waits at a place before the pulse.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>How many boards lie side by side on the blank.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>How many places of the copper are touched before the first pass.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>How many rows of boards lie behind each other on the blank.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>How much wider than its shape the turning bit cuts, because it does not turn quite centrally.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>How the bit is brought over a reference hole: sighted by eye with a lens (0.03 mm is usual), by the laser's light spot (0.1 mm), or by contacts with the hole's rim (0.015 mm).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>How the bit is run. Start values are common practice, not a maker's figures.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>How well that is known, as a standard deviation.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>If it belongs to another board, the island check shows nets that stay joined.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>If it has no tabs, the board comes loose at the end of the cut.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>If this is wrong the bit may turn when you do not expect it, or go down without turning. The power switch must be within reach.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>In a re-cut, places nearer together than this along a groove are cut in one go.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser.py"/>
        <source>In focus the head is {height:g} mm above zero, below the clearance of {clearance:g} mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/sideways.py"/>
        <source>Is the bit deep enough, the clip on this copper, and the wall where it was said to be?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/checks.py"/>
        <source>Is the bit exactly over the mark, a millimetre or less above it? If not, bring it there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Is the clip on the copper, is the bit over copper, and is the height right?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/touching.py"/>
        <source>Is the clip still on, the bit still whole, and copper below it?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/serial_link.py"/>
        <source>Is the machine plugged in and switched on, and no other program using the port?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/greeting.py"/>
        <source>Is the machine switched on, and is this its port? Other ports are in the list.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Is the switch connected, and does the search go the right way?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/touching.py"/>
        <source>Is zero set on the copper, and is nothing standing up from it?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/plans.py"/>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <location filename="../../app/drypoint/ui/pages/proof.py"/>
        <source>Island check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>Island check of the plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>Island check of the plan: {flaws}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/proof.py"/>
        <location filename="../../app/drypoint/ui/machine_side/proving.py"/>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>Island touch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_plotter.py"/>
        <source>It can only be flashed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/archive.py"/>
        <source>It cannot be read: {strerror}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/width_coupon.py"/>
        <source>It cuts {offset:.3f} ± {sigma:.3f} mm {which} than set.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/bursts.py"/>
        <source>It holds {limit}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/layers.py"/>
        <source>It is not clear what this file is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/laser_safety.py"/>
        <source>It is not said that the maker of {coating!r} declares it safe for laser work.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/laser_safety.py"/>
        <source>It is not said what the laser marks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/gross.py"/>
        <source>It looks as if {named} were exchanged.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/copper.py"/>
        <source>It may be a tie on purpose or a fault of the design. Check it there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_interpreter.py"/>
        <source>It may be cut off. Copy or export it again; a whole file ends with M02*.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>It must be above zero.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/netlist.py"/>
        <source>It needs a line such as “P  UNITS CUST 1”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_format.py"/>
        <source>It should look like FSLAX46Y46.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/table.py"/>
        <source>Its first line names x, y and z.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/islands_plan.py"/>
        <source>Its neighbours stay unproved; measure there by hand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Jog the other way or by a smaller step.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/load.py"/>
        <source>Joining copper to nets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/legend.py"/>
        <source>Judging the legend</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>K belongs to arcs of another plane.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/touching.py"/>
        <source>Keep fingers away from the bit while it moves.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/hover.py"/>
        <source>Keep hands clear; Hold and Stop are at the bottom of the window.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/store.py"/>
        <source>Keep it as it is and open a copy kept elsewhere.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <source>Keep the machine's power switch within reach. Stop in the program is a software stop; it is not an emergency stop.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Kept free all round every clamp, on top of its size.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/library.py"/>
        <source>Known bits: {known}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>L must be a whole number up to {max_repeats}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>LPD and LPC are possible.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>Largest bite</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser.py"/>
        <location filename="../../app/drypoint/session/laser_safety.py"/>
        <location filename="../../app/drypoint/session/legend.py"/>
        <source>Laser</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/laser_safety.py"/>
        <source>Laser light harms eyes and skin, scattered light too. Eyewear for the wavelength, as the laser's maker states, on everybody in the room; best inside a closed housing with an interlock.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/preset.py"/>
        <source>Laser mode is on: a spindle would stop at every rapid move.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Laser mode needs a spindle output with variable power, which this controller lacks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Left edge of the clamp, from the blank's lower left corner.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/legend.py"/>
        <location filename="../../app/drypoint/program/laser.py"/>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>Legend</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/legend.py"/>
        <source>Legend on {material}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <source>Length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Length of each bridge along the outline.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Less than the copper is thick parts nothing; much more only makes grooves wider and dust.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Less than the radius of the largest bit and its collet lets them touch the clamp.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Longer than needed is light for nothing: it harms eyes as the full beam does.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Longest time the focus light stays on before it goes out by itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Look at both switches of that axis.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/sideways.py"/>
        <location filename="../../app/drypoint/machine/procedures/touching.py"/>
        <source>Look at clip, wire and bit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/rehearsal.py"/>
        <source>Look at the board</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Look at the controller's settings; nothing was moved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/prove.py"/>
        <source>Look at the cuts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_picture.py"/>
        <source>Look for a step-and-repeat or a block aperture that repeats too often.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/laser_safety.py"/>
        <source>Look it up in the maker's data sheet; else use another coating.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Lower than a clamp or a bowed edge, and the bit runs into it. Higher only takes time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Lower than the blank is bowed up, and the bit would run into the copper on its way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/find.py"/>
        <source>Lower the bit to about 1 mm, then shift the board until hole {label} sits under it. Where another hole was set before, turn the board about that one. Clamp it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Lower the highest rate in the settings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill_body.py"/>
        <source>M02 repeats a pattern, but none was recorded.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>MOMM and MOIN are possible.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/work.py"/>
        <location filename="../../app/drypoint/ui/design_side/machine_settings.py"/>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>Machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Machine coordinates go with straight moves only.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/work.py"/>
        <source>Machine: {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>Made {now:%Y-%m-%d %H:%M}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/store.py"/>
        <source>Make room and try again; the job is as it was.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/marking.py"/>
        <source>Make the program anew.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/laser_safety.py"/>
        <source>Mark only a coating that its maker declares safe for laser work; never one with chlorine in it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>More than the spot leaves dotted lines; much less burns every place several times.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/blocks.py"/>
        <source>More than {most_m_words} M words.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/gross.py"/>
        <source>Most likely {text} It may also be {rest}; a further hole would tell.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser.py"/>
        <source>Mount the head higher, or allow less clearance.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/limits.py"/>
        <source>Move or turn the blank, or set the work's zero elsewhere.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/layout.py"/>
        <source>Move the board, or centre it on the blank.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/outline.py"/>
        <source>Move the clamp or the board on the blank.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/limits.py"/>
        <source>Move the clamp, or raise the clearance above it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/plan.py"/>
        <source>Move the clamps, or set the blank larger.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Moves ready-made programs backwards on the board.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Moves ready-made programs to the right on the board.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/blocks.py"/>
        <source>M{code} contradicts another M word of the line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/blocks.py"/>
        <source>M{value:g} is not known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/laser_safety.py"/>
        <source>Name the coating, and that its maker declares it safe for laser work.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Narrower than the end mill, and it would cut into the neighbour; that is refused.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Narrowest copper that grooves may leave of a trace.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>Nets and holes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>No arc of this radius joins the two places.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/imported.py"/>
        <source>No bit is chosen for tool {number} ({value}); the program is not run.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/imported.py"/>
        <source>No bit is chosen for tool {tool}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/grooves.py"/>
        <source>No bit of this angle would do: it takes a steeper one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/checks.py"/>
        <source>No contact at the zero spot: the bit is broken or slipped, or z lost steps.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/greeting.py"/>
        <source>No controller answers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/touching.py"/>
        <source>No copper was met within {search:g} mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/load.py"/>
        <source>No drill file with holes was found.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/holes.py"/>
        <source>No drill or end mill fits this hole.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/holes.py"/>
        <source>No end mill fits this slot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/layers.py"/>
        <source>No file is the copper of the {value}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/passes/recut.py"/>
        <source>No groove lies in what was painted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/prove.py"/>
        <source>No groove runs between these pieces.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/turn.py"/>
        <source>No holes were touched yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/work.py"/>
        <source>No machine known here holds a blank of {width:.0f} × {height:.0f} mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>No pass is planned deeper than this below the copper's top.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/passes/learning.py"/>
        <source>No pass went there yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/play.py"/>
        <source>No reading was given.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/contact.py"/>
        <source>No touch is made before this is right.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/legend.py"/>
        <source>No values are kept for {name!r}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/play.py"/>
        <source>No wall was met within {farthest:.1f} mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/sideways.py"/>
        <source>No wall was met within {farthest:.2f} mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Nothing depends on it; empty takes the name of the design files.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Nothing else depends on it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/faults.py"/>
        <source>Nothing further was done.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/legend.py"/>
        <source>Nothing of the legend is left beside pads and holes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/store.py"/>
        <source>Nothing was lost; try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/width_coupon.py"/>
        <source>Nothing was read from the coupon yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/measure.py"/>
        <source>Nothing was touched in this clamping yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>One row along the middle of every stroke, instead of as many as cover it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/width_coupon.py"/>
        <source>One width lies {misfit:.1f} standard deviations off: read it again, or the tip is broken.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>Only G0–G4, G17, G20, G21, G54, G80–G83, G90–G94, G98 and G99 are understood.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/blocks.py"/>
        <source>Only M0–M9, M30, M48, M49 and M60 are read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/table.py"/>
        <source>Only heights in work coordinates can be used.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/layers.py"/>
        <source>Only round tools make holes and slots.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/registration.py"/>
        <source>Only {on_copper} of {count} holes lie on copper: drill file and copper do not fit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/schema.py"/>
        <source>Open it with the newer program. Nothing was changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/legend.py"/>
        <source>Order of the legend</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/plans.py"/>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <source>Order of work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Others may give off toxic or corrosive fumes, above all those with chlorine in them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Out of focus the spots are wide and faint.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/plans.py"/>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <location filename="../../app/drypoint/ui/wizard/files.py"/>
        <source>Outline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/find.py"/>
        <source>Over reference hole {label}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/measure.py"/>
        <source>Over the corner of the blank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/checks.py"/>
        <source>Over the reference mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/bit_change.py"/>
        <location filename="../../app/drypoint/machine/procedures/resuming.py"/>
        <source>Over the zero spot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>POS and NEG are possible.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/passes/recut.py"/>
        <source>Paint across the grooves to cut again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <source>Pass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>Passes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/running.py"/>
        <source>Pause</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/explain.py"/>
        <source>Per metre, x is {values:+.0f} ± {u:.0f} µm and y {values2:+.0f} ± {u2:.0f} µm off; the axes are {values3:+.2f} ± {u3:.2f} mrad out of square.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/passes/learning.py"/>
        <source>Pick a place on a groove that has been cut.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <source>Pictures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Places that no bit may enter: clamps, screws, tape. Enter each with all that stands up from it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/placed_cuts.py"/>
        <source>Placing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/place.py"/>
        <source>Placing pass {number}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/run.py"/>
        <location filename="../../app/drypoint/session/kept_program.py"/>
        <source>Plan the pass anew.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Play of x and y: how far the axis turns before the bed moves, when it changes direction.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/explain.py"/>
        <source>Play of {text} would explain part of it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Power and dwell that burn grids have settled, by material.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser_check.py"/>
        <source>Power is set on a line that is no mark: a straight feed move in x and y.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser_check.py"/>
        <source>Power is set while the source is off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Power of the beam as a share of its full power.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Power of the field that looked best on the burn grid of this coating.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/guard.py"/>
        <source>Power that follows the speed is needed (M4), or pulses that are put out each by each.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/give.py"/>
        <source>Press the board flat on its backing there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <location filename="../../app/drypoint/ui/pages/proof.py"/>
        <source>Proof</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Pulses mark evenly whatever the machine's acceleration, but take longer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/bit_change.py"/>
        <location filename="../../app/drypoint/session/actions/measure.py"/>
        <source>Put in {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/sideways.py"/>
        <location filename="../../app/drypoint/machine/procedures/touching.py"/>
        <source>Put the clip on and check the circuit first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/contact.py"/>
        <source>Put the clip on {where}; the bit stays in the air.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Puts the board into the middle of the blank.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/load.py"/>
        <source>Putting the board together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Quicker, but strokes look thinner than drawn.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/bit_change.py"/>
        <location filename="../../app/drypoint/machine/procedures/resuming.py"/>
        <source>Raise the bit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/controller.py"/>
        <source>Raise the bit, check clip and wire; is the input inverted in the controller's settings?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Raise the pull-off distance in the settings, or look at the switch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/plans.py"/>
        <location filename="../../app/drypoint/ui/canvas/describe.py"/>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>Reach</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber.py"/>
        <source>Read it with a coarser tolerance.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/play.py"/>
        <source>Read the gauge, {upper} {came}, cycle {cycle}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/layers.py"/>
        <source>Reading the drill files</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/layers.py"/>
        <source>Reading {copper}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/layers.py"/>
        <source>Reading {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/play.py"/>
        <source>Readings from both sides are needed at every target.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Ready-made programs that are not run.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/derive.py"/>
        <location filename="../../app/drypoint/ui/jog/reference.py"/>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>Reference</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>Reference holes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Reference holes made in the waste before anything else. The board is found again from them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/rehearsal.py"/>
        <source>Rehearsed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/blocks.py"/>
        <source>Remove it; settings are never sent from a file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Reset, unlock, jog clear of the switch, then set zero again and check a reference mark.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <location filename="../../app/drypoint/ui/jog/reference.py"/>
        <source>Residual</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Room between two boards. The end mill that cuts them out runs there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/legend.py"/>
        <source>Room for the legend</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Round every hole this much is taken for its pad, on the side that is marked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/run.py"/>
        <location filename="../../app/drypoint/session/derive.py"/>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <location filename="../../app/drypoint/ui/pages/run.py"/>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>Run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/width_coupon.py"/>
        <source>Run-out {runout:.3f} ± {sigma:.3f} mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/heights.py"/>
        <source>Sampling the surface</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/affine.py"/>
        <source>Scale and squareness are corrected from four holes at least.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/turn.py"/>
        <source>Second side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>See clamps.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/imported.py"/>
        <source>Set F in the file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/legend.py"/>
        <source>Set a wider stroke.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/codec.py"/>
        <source>Set it again; the rest of the job is intact.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/passes/depth.py"/>
        <source>Set it between 0.5 and 0.999.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/find.py"/>
        <source>Set it by hand wheel first, at a place you know: the corner, or this hole.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/placed_cuts.py"/>
        <source>Set its depth; grooves are placed pass by pass.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/writer.py"/>
        <source>Set the bit's feed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/running.py"/>
        <source>Set zero again at the known spot and check a reference mark first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/faults.py"/>
        <source>Set zero again at the known spot, check a reference mark, then resume the run.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Set zero by hand, or switch homing on in its settings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/axes.py"/>
        <source>Set zero by hand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser.py"/>
        <source>Settling time, feed and the controller's full power must be above 0.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>Setup sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>Setup sheet: {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/layers.py"/>
        <source>Several files are {value}: {names}. The first is used.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/legend.py"/>
        <source>Shapes of the legend</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/find.py"/>
        <source>Shift the board to reference hole {label}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>Shorts, opens, lost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Size of the clamp along x.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Size of the clamp along y.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Size of the laminate along x. 0 takes the board with its margin all round.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Size of the laminate along y. 0 takes the board with its margin all round.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Smaller means more plunges and lifts; larger cuts more than it must.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/guard.py"/>
        <source>Something connects bit and copper: take the clip off, raise the bit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_plotter.py"/>
        <source>Something is drawn before an aperture is chosen.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber.py"/>
        <source>Something is drawn more than a kilometre away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Speed along continuous lines.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Speed of the first touch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Speed of the second touch, whose height counts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Speed of the serial port, as the controller expects it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/bit_change.py"/>
        <source>Spindle off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/turn.py"/>
        <source>Spindle off and still, bit raised well clear, before a hand goes near.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/touching.py"/>
        <source>Spindle off. Lay paper on the copper and bring the bit down until the paper just drags.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/bit_change.py"/>
        <source>Spindle on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/run.py"/>
        <source>Start the next piece of work.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/running.py"/>
        <source>Stay with the machine. Stop here is a stop in software; the power switch is the one that counts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/faults.py"/>
        <source>Stopped.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/legend.py"/>
        <source>Strokes cannot be narrower than the spot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/legend.py"/>
        <source>Strokes of the legend</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/measure.py"/>
        <location filename="../../app/drypoint/session/derive.py"/>
        <location filename="../../app/drypoint/session/rehearsal.py"/>
        <location filename="../../app/drypoint/ui/heat/view.py"/>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <location filename="../../app/drypoint/ui/window.py"/>
        <source>Surface</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/preset.py"/>
        <source>Switch it off before milling; leave it on for the legend by laser.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Switch it off to save laminate, and enter where the board lies.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Switch laser mode off in its settings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/bit_change.py"/>
        <source>Switch the spindle off; let it run out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/bit_change.py"/>
        <source>Switch the spindle on, about {spindle:.0f} 1/min; wait until it is up to speed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/outline.py"/>
        <source>Tabs must be lower than the cut is deep.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/layout.py"/>
        <source>Take a larger blank, or enter its real size.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/sideways.py"/>
        <source>Take a thinner bit, or choose a wider hole.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/rehearsal.py"/>
        <source>Take it off and clamp it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/guard.py"/>
        <source>Take the clip off and confirm it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/contact.py"/>
        <source>Take the clip off the copper and lay it aside.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>That the dangers of marking bare laminate, fumes and fire, are known and taken care of.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/grooves.py"/>
        <source>The allowed bite and the least trace cannot be below 0.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>The aperture D{number} needs the macro {name}, which is not defined.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>The aperture definition “{command}” cannot be understood.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/macro_template.py"/>
        <source>The aperture macro {name} computes an impossible number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/macro_template.py"/>
        <source>The aperture macro {name} has an unknown primitive {values:g}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/macro_template.py"/>
        <source>The aperture macro {name} is too large.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/macro_template.py"/>
        <source>The aperture macro {name} is too long.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>The aperture's parameters “{text}” are impossible.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>The aperture's parameters “{text}” are not numbers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>The arc's ends lie at {first:.4f} and {last:.4f} mm from its centre.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>The arc's radius does not fit its ends.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill_body.py"/>
        <source>The arc's radius is too small for its ends.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>The axes “{command}” are unknown.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/play.py"/>
        <source>The axis came to its target {came}. What does the gauge read? Towards larger {upper} counts as larger.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/marking.py"/>
        <source>The beam comes on at 1 % of full power for {seconds:g} s.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser_check.py"/>
        <source>The beam is on at rest and the next line does not just put it out (S0).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser_check.py"/>
        <source>The beam is switched on with power set; it must start at zero.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser.py"/>
        <source>The beam's power must be above 0 and at most 100 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>The bit for each tool of a ready-made program, where it is not plain what the tool is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/hover.py"/>
        <source>The bit goes round the board {height:g} mm above it, spindle off. Watch clamps and cables.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/resuming.py"/>
        <source>The bit may stand in the copper. Bring it straight up, well clear of board and clamps.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/sideways.py"/>
        <source>The bit met copper on its way down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/running.py"/>
        <source>The bit stands clear and the spindle is off. It starts again as soon as you go on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/touching.py"/>
        <source>The bit touches something on its way across.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/checks.py"/>
        <source>The bit was brought over the mark by hand wheel.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/find.py"/>
        <source>The bit was brought there by hand wheel: the controller saw nothing of it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/library.py"/>
        <source>The bit's values cannot be read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/layout.py"/>
        <source>The blank ({width:.1f} × {height:.1f} mm) is smaller than the board ({width2:.1f} × {height2:.1f} mm).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <source>The blank is clamped flat and the clamps are where this sheet shows them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/commands.py"/>
        <source>The blank is too large for the usual machine; planned for: {name}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/work.py"/>
        <source>The blank is {width:.0f} × {height:.0f} mm; the machine moves {travel:.0f} × {travel2:.0f} mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>The block aperture “{command}” cannot be understood.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/hover.py"/>
        <source>The board needs {size:.1f} mm in {value}, more than the machine's travel.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>The board on its blank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/layout.py"/>
        <source>The board reaches over the edge of the blank.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/derive.py"/>
        <source>The board was moved since its height was touched.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/derive.py"/>
        <source>The board was moved; where it lies now is not known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>The board would reach over the edge of the blank or under a clamp; Drypoint says so.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/panel.py"/>
        <source>The boards on a blank must all be milled from one side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/proof.py"/>
        <source>The clip goes on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>The coating these values were found for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/check.py"/>
        <source>The command {min:g} has no place in a program.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>The command “{command}” cannot be understood.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/sideways.py"/>
        <location filename="../../app/drypoint/machine/procedures/touching.py"/>
        <source>The contact circuit has not been checked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>The contact circuit was not as expected before the touch: bit and copper touch already, or the input is inverted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/controller.py"/>
        <source>The contact input reads closed before the touch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/controller.py"/>
        <source>The contact input reads open before the bit leaves the wall.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/touching.py"/>
        <source>The contact input stays closed with the bit lifted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/controller.py"/>
        <source>The contact is not steady: clean wall and bit, look at clip and wire.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/play.py"/>
        <source>The contact is not steady: it was not made again, or did not break.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/sideways.py"/>
        <source>The contacts lie on no circle: they miss it by up to {max:.3f} mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/rim.py"/>
        <source>The contacts lie on one line, so they give no centre.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>The controller could not read its store and went back to its defaults.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/controller.py"/>
        <source>The controller did not go into its check mode.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/channel.py"/>
        <source>The controller does not answer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/delivery.py"/>
        <location filename="../../app/drypoint/machine/greeting.py"/>
        <source>The controller does not come back after a reset.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>The controller does not know this command.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>The controller is locked after an alarm or is jogging.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/view.py"/>
        <source>The controller is locked until it is homed or unlocked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/marking.py"/>
        <source>The controller is not in laser mode.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>The controller locked itself (its alarm {code}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>The controller refused the line (its error {code}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/preset.py"/>
        <source>The controller reports positions in inches.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/faults.py"/>
        <source>The controller restarted by itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/preset.py"/>
        <source>The controller runs a stored line at every start: {line}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/view.py"/>
        <source>The controller sleeps until it is reset.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/resuming.py"/>
        <source>The controller stays locked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>The controller takes this only when the machine is at rest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>The controller was reset while moving: steps may be lost.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/marking.py"/>
        <source>The controller's full power is S{stated:g}, the program was made for S{scale:g}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/checks.py"/>
        <source>The copper at the zero spot reads {away:.3f} mm {where}: the bit broke or slipped, steps were lost, or the board has moved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/load.py"/>
        <source>The copper layer is empty and there is no outline.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/parts.py"/>
        <source>The copper of a net is not a shape.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/registration.py"/>
        <source>The copper of the {label} lies off the holes; moved by about {dx:.1f}, {dy:.1f} mm it fits.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/registration.py"/>
        <source>The copper of the {label} seems to be mirrored against the holes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/proof.py"/>
        <source>The copper that holds the clip shows no contact: the touches made prove nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>The copper that is milled. The bottom is shown as it lies on the machine: turned over, so mirrored.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/coupon.py"/>
        <source>The copper's height is not known, so depths would mean nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/derive.py"/>
        <location filename="../../app/drypoint/session/rehearsal.py"/>
        <source>The copper's height is not known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/passes/depth.py"/>
        <source>The copper's thickness must be above 0 and the play of Z not below 0.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/store.py"/>
        <source>The copy could not be written ({strerror}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/clearing.py"/>
        <source>The cut is too narrow to clear this area.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/passes/depth.py"/>
        <source>The deepest cut allowed, {deepest:.3f} mm, does not pass the copper of {copper:.3f} mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>The depth below the copper's top that widths are planned for. The depth really cut is chosen spot by spot when the copper has been touched.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/turn.py"/>
        <source>The design has no copper on the {value}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/store.py"/>
        <source>The disk is full.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill.py"/>
        <source>The drill file does not state its units.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>The drills in the box. Each hole takes the nearest one; a larger hole is bored with the end mill.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/outline.py"/>
        <source>The end mill does not fit into a cut-out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>The end mill for outline, slots and holes without a drill.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>The engraving bit that parts the copper. Its groove is wider the deeper it goes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>The expected errors are those of another way then.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>The faster, the coarser: at 60 mm/min the bit moves a micrometre each millisecond.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_source.py"/>
        <location filename="../../app/drypoint/board/text_source.py"/>
        <source>The file cannot be read: {reason}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/export.py"/>
        <source>The file does not read back as the program.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_plotter.py"/>
        <source>The file does not state its unit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_interpreter.py"/>
        <source>The file has no end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/text_source.py"/>
        <source>The file is binary, not text.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_source.py"/>
        <location filename="../../app/drypoint/board/load.py"/>
        <location filename="../../app/drypoint/board/text_source.py"/>
        <source>The file is empty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/text_source.py"/>
        <source>The file is larger than {max_bytes} MB.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/archive.py"/>
        <source>The file is larger than {max_file} MB.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_source.py"/>
        <source>The file is too large for a Gerber layer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill_body.py"/>
        <source>The file makes more than {max_hits} holes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_tokens.py"/>
        <source>The file may be cut off: export or copy it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber.py"/>
        <location filename="../../app/drypoint/board/gerber_compose.py"/>
        <location filename="../../app/drypoint/board/gerber_format.py"/>
        <location filename="../../app/drypoint/board/gerber_plotter.py"/>
        <source>The file may be damaged.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>The file may be damaged: export it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_interpreter.py"/>
        <source>The file states no coordinate format.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>The file wants to include another one ({command}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>The files could not be written ({strerror}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/archive.py"/>
        <source>The files hold more than {max_total} MB.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/rest.py"/>
        <source>The fine cut must be narrower than the wide one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/check.py"/>
        <source>The first cutting move after a rapid has no feed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/marking.py"/>
        <source>The focus light is on for up to {longest_focus:g} s at a time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/laser_safety.py"/>
        <source>The focus light is the same beam at 1 % of its power: just as much to be kept from the eyes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_format.py"/>
        <source>The format statement “{statement}” cannot be understood.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/panel.py"/>
        <source>The gap between copies cannot be below 0.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/burn_grid.py"/>
        <source>The grid has no field in row {row}, column {column}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>The grooves changed since passes were run over them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/marking.py"/>
        <source>The head goes once round what will be marked, beam off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/laser_safety.py"/>
        <source>The head goes round with the beam off. Eyewear on all the same: the laser has power.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/table.py"/>
        <source>The header names no column {missing}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/table.py"/>
        <source>The heights are in the frame '{frame}', not in the machine's.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/gross.py"/>
        <source>The holes do not agree, and no single one explains it. Touch them again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>The image polarity “{command}” is unknown.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>The image's scale is impossible.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/library.py"/>
        <source>The included angle must lie between 0° and 180°.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/contact.py"/>
        <source>The input does not close: look at the wire, the plug and the clip.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/contact.py"/>
        <source>The input reads closed although the bit is in the air: does the clip touch the bit?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/contact.py"/>
        <source>The input reads closed with the bit in the air: is it inverted, or the wire shorted?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/contact.py"/>
        <source>The input still reads closed: take the clip off, raise the bit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/store.py"/>
        <source>The job file cannot be opened for writing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/store.py"/>
        <source>The job file could not be used ({text}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/commands.py"/>
        <source>The job file could not be written ({strerror}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/store.py"/>
        <source>The job file is damaged.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/store.py"/>
        <source>The job is open in another program.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>The jog was not understood.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>The jog would leave the machine's travel.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/journal.py"/>
        <source>The journal of the run could not be written ({error}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_tokens.py"/>
        <source>The last command has no end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_picture.py"/>
        <source>The layer would have more than {limit:,} {what}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber.py"/>
        <source>The layer would have more than {vertex_limit:,} vertices.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser_check.py"/>
        <source>The line has a command with no place in a program for a laser.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>The line holds a command this controller does not know.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/check.py"/>
        <location filename="../../app/drypoint/program/laser_check.py"/>
        <source>The line holds something other than words of a letter and a number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>The line holds words that nothing uses.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/sender.py"/>
        <source>The line is longer than the controller takes ({count} of {min}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser_check.py"/>
        <source>The line is longer than the controller takes ({limit}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>The line is longer than the controller takes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/blocks.py"/>
        <source>The line is longer than {longest} characters.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill.py"/>
        <source>The line is no text of a drill file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/check.py"/>
        <source>The line is {count} characters long; the controller takes {limit}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/check.py"/>
        <source>The line moves before any kind of move is set.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>The line number is out of range.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/sender.py"/>
        <source>The line “{line}” holds a character that the controller would act on at once.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/bursts.py"/>
        <source>The lines of a pulse take {max:.0f} bytes, more than the buffer holds.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/run.py"/>
        <source>The lines of the broken run do not agree with its program.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/serial_link.py"/>
        <source>The link is lost ({reason}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/library.py"/>
        <source>The list of bits cannot be read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>The machine did not come free of the switch after homing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/axes.py"/>
        <source>The machine is busy.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/journal.py"/>
        <source>The machine is held. Make room on the disk, then resume.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/greeting.py"/>
        <source>The machine is in the middle of something that was not started here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/preset.py"/>
        <source>The machine presets cannot be read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/streaming.py"/>
        <source>The machine reports a place {away:.2f} mm off the path</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/streaming.py"/>
        <source>The machine runs at {feed:.0f} mm/min, faster than the program</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/explain.py"/>
        <source>The machine's distances are {value:+.0f} ± {u:.0f} µm per metre off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <source>The manuals of machine and material, local rules and the advice of qualified people come first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/linear.py"/>
        <source>The measurements do not determine what is to be found.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>The mirroring “{command}” is unknown.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>The most passes that are planned by themselves.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/netlist.py"/>
        <source>The netlist gives places before its units.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/netlist.py"/>
        <source>The netlist has more than {max_points} points.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/netlist.py"/>
        <source>The netlist has no points.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/netlist_check.py"/>
        <source>The netlist says {given}, the copper {net}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill_body.py"/>
        <source>The number format is wrong.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/outline.py"/>
        <source>The outline had a gap of {gap:.2f} mm, closed straight.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/load.py"/>
        <source>The outline layer holds no closed loop.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/grooves.py"/>
        <source>The overlap must lie between 0 and 0.9.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/netlist.py"/>
        <source>The place lies more than 100 m out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/preset.py"/>
        <source>The plan may leave the travel, or use less than there is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>The polarity “{command}” is unknown.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/serial_link.py"/>
        <source>The port cannot be opened ({reason}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>The position is kept. Reset and unlock; is zero set in the right place?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/marking.py"/>
        <location filename="../../app/drypoint/machine/procedures/running.py"/>
        <location filename="../../app/drypoint/session/actions/find.py"/>
        <source>The position of {names} is not known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/resuming.py"/>
        <source>The position was lost; it was set anew at the reference mark.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/run.py"/>
        <source>The position was set anew at the corner of the blank.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/bit_change.py"/>
        <source>The power switch within reach.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser_check.py"/>
        <source>The power {power:g} is above full power, {scale:g}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/imported.py"/>
        <source>The program chosen for the grooves is not among the files.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/imported.py"/>
        <source>The program chosen for the outline cannot be run.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser_check.py"/>
        <source>The program does not end with the beam off (M5 and S0).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/limits.py"/>
        <source>The program goes {max:.2f} mm past the {end} end of {letter}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>The program has more than {max_moves} moves.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/recovery.py"/>
        <source>The program has {count} lines, not {first}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>The program is binary, not text.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>The program is empty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/work.py"/>
        <source>The program needs {size:.1f} mm of {letter}; the machine moves {travel:.0f} mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/kept_program.py"/>
        <source>The program of an earlier run cannot be read ({error}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/netlist.py"/>
        <source>The record has no place (X and Y).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/fit.py"/>
        <source>The reference holes are all at one place, so the board's angle cannot be found.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/affine.py"/>
        <source>The reference holes lie on one line; scale and squareness need holes on both sides of it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/checks.py"/>
        <source>The reference mark is {away:.2f} mm off: steps were lost, or it moved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>The rotation “{command}” is not a number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/faults.py"/>
        <source>The run can be resumed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>The safety door opened during homing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <location filename="../../app/drypoint/machine/view.py"/>
        <source>The safety door reads open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>The same for the reference holes pricked by the V-bit, which is stiff and does not wander.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>The scale “{command}” is impossible.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/turn.py"/>
        <source>The second side is found from at least two drilled holes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/sideways.py"/>
        <location filename="../../app/drypoint/machine/procedures/touching.py"/>
        <source>The second touch found no contact.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>The serial port of the controller. Empty: the bench, a simulated machine.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_compose.py"/>
        <source>The shapes cannot be united.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>The size class of the machine: travel, speeds, what it has. All of it can be corrected below.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill_body.py"/>
        <source>The slots have too many points.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/guard.py"/>
        <source>The spindle is locked: the contact clip is not confirmed off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/guard.py"/>
        <source>The spindle is locked: the contact input reads closed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/contact.py"/>
        <source>The spindle must stand still and stay off while the clip is on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/bit_change.py"/>
        <location filename="../../app/drypoint/machine/procedures/resuming.py"/>
        <source>The spindle must stand still.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/proof.py"/>
        <source>The spindle stands still and stays off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/preset.py"/>
        <source>The spindle will turn faster or slower than asked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>The step pulse is set shorter than 3 µs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>The step-and-repeat “{command}” cannot be understood.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/preset.py"/>
        <source>The steps per mm of {axes} are {value:g}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>The surface is stale.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/warp.py"/>
        <source>The surface is too rough to follow within {chord:.1f} µm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/table.py"/>
        <source>The table of touches is empty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>The target cannot be reached as commanded: an impossible arc, or a touch that starts at its end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_source.py"/>
        <source>The text is too large for a Gerber layer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>The tool number is larger than the controller allows.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>The touch found no contact within its depth.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/affine.py"/>
        <source>The touched holes are mirrored against the design.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/model.py"/>
        <source>The touches cannot be used: {error}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/gross.py"/>
        <source>The two holes are {error:.3f} mm too {which}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/table.py"/>
        <source>The unit of column '{cell}' is not known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>The unit “{command}” is unknown.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_interpreter.py"/>
        <source>The unknown command “{block}” is passed over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_extended.py"/>
        <source>The unknown command “{command}” is passed over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/coupon.py"/>
        <source>The waste round the board has no room for the coupon.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>The whole legend is off by as much as this is wrong.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>The wider the angle, the more an error of depth changes the width of the groove.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/grooves.py"/>
        <source>The width of the cut must be more than 0.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/archive.py"/>
        <source>The zip cannot be read: {reason}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/archive.py"/>
        <source>The zip holds more than {max_files} files.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/archive.py"/>
        <source>The zip unpacks to too much data.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/gross.py"/>
        <source>The {count} holes agree.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/outline.py"/>
        <source>The {label} would be cut through a clamp.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>The {letter} axis does not exist on this machine.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/legend.py"/>
        <source>The {name} of the legend must be above 0.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/derive.py"/>
        <source>The {value} looks up; the {value2} is to be milled.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/library.py"/>
        <source>The {what} must be more than 0.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/preset.py"/>
        <source>The {what} of {axes} is {have:g} {unit}; the machine set up here has {want:g}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Their cuts miss the pads and holes they were made for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>There are coordinates that no command wants.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/archive.py"/>
        <source>There are more than {max_files} files.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/derive.py"/>
        <source>There are no design files yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>There are places but no motion is chosen (G0, G1, G2 or G3).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/model.py"/>
        <source>There are {count} touches but {size} values of give.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/session.py"/>
        <source>There is a file of this name already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/layers.py"/>
        <source>There is copper of the {value}: mill that, or choose another file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/library.py"/>
        <source>There is no bit named '{name}'.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/panel.py"/>
        <source>There is no board on the blank.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/mark.py"/>
        <source>There is no broken run of these marks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/run.py"/>
        <source>There is no broken run.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/archive.py"/>
        <source>There is no design file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/library.py"/>
        <source>There is no kind of bit called '{kind}'.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/work.py"/>
        <source>There is no machine {preset!r}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser.py"/>
        <source>There is no mark {mark} in this program.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/load.py"/>
        <source>There is no outline layer; the size is the one the copper layer states in a comment.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/load.py"/>
        <source>There is no outline: a rectangle {margin:g} mm round the copper is used.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/islands_plan.py"/>
        <source>There is no place to touch on {net}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/holes.py"/>
        <source>There is no room for reference marks between the outline and the blank's edge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/commands.py"/>
        <source>There is no such file or folder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/store.py"/>
        <source>There is no such job file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser.py"/>
        <source>There is nothing to mark.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/plan.py"/>
        <source>There is nowhere to touch: clamps, holes and edge leave no room.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/islands.py"/>
        <source>There must be one width, or one for every line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/preset.py"/>
        <source>They are converted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>They must be equal; the program may have been rounded or shortened.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/holes.py"/>
        <source>Thickness and depth into the backing must be positive.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Thickness of laminate left in each bridge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Thickness of the copper: 0.035 for one ounce per square foot, 0.0175 for half of that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Thickness of the laminate with its copper; measure it, sheets differ by a tenth.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Thickness of the sacrificial board under the laminate.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/legend.py"/>
        <source>This board has no legend.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/guard.py"/>
        <source>This could leave the beam on when the machine stands still ({flaw}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/centrelines.py"/>
        <source>This cut would leave {left:.3f} mm of a trace; {least:.3f} mm is the least allowed. A cut of {widest:.3f} mm or less would do.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_source.py"/>
        <source>This is a binary file, not Gerber text.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/schema.py"/>
        <source>This is a database, but not a job file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>This is a fault of the program sent: nothing is wrong with the machine. Make the program again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/blocks.py"/>
        <source>This is a settings or system line of a controller.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_source.py"/>
        <source>This is no Gerber file: no Gerber command is in it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/netlist.py"/>
        <source>This is no IPC-D-356 netlist.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>This is no RS-274 program.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill.py"/>
        <source>This is no drill file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/archive.py"/>
        <source>This is no regular file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/store.py"/>
        <source>This is not a job file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_source.py"/>
        <source>This is {kind}, not a Gerber file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_source.py"/>
        <source>This is {kind}, not a Gerber layer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/job/schema.py"/>
        <source>This job was saved by a newer Drypoint (format {version}; this one reads up to {version2}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/axes.py"/>
        <source>This machine has no homing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/imported.py"/>
        <source>This program cuts nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/imported.py"/>
        <source>This program engraves nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/imported.py"/>
        <source>This program is not used: {what}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>This work coordinate system does not exist here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/rim.py"/>
        <source>Three contacts with the rim are needed at least.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/preset.py"/>
        <source>Times and rapid moves will differ.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/preset.py"/>
        <source>Times will differ; too high loses steps.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/width_coupon.py"/>
        <source>Tip and run-out together {both:.3f} ± {both_sigma:.3f} mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/library.py"/>
        <source>Tip width and run-out cannot be below 0.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/width_coupon.py"/>
        <source>Tip {tip:.3f} ± {sigma:.3f} mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/sheet.py"/>
        <source>To know</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Too deep a peck packs the flutes and breaks thin drills.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Too deep bends a small machine and breaks the mill; too shallow only takes time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Too fast bends and breaks it and tears the copper; too slow rubs and dulls it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Too fast bends the tip before the machine has stopped.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Too fast breaks tips and pushes the laminate away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Too few leave doubtful spots for you to decide about; many only take time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Too few leave ripples unseen: more of the board is doubtful and cut again. Each takes some seconds.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/linear.py"/>
        <source>Too few measurements for what is to be found.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Too large a hole eats the ring of copper round it; too small a one does not take the lead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Too large a value leaves gaps in fills; too small makes them dense and marks come near to pads.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Too large a value puts clamps and reference holes where there is no laminate.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Too large, and programs may run the axes against their stops; the position is lost then.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Too little chars the edge of pads, and solder does not take there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Too little leaves burrs or a floor in the holes; more than the backing is thick cuts into the bed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Too little leaves no room for clamps and for the reference holes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Too little leaves traces that lift or burn; too much calls narrow gaps impossible.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Too little marks where solder goes; too much leaves gaps in the legend.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Too long chars; too short leaves no mark.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Too long makes wide, charred spots; too short leaves none. A burn grid tells.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Too low needs more passes; very near 1 cuts grooves wide wherever little is known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Too many do not fit; the blank then has to be larger than the machine can reach.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Too much breaks the tip on a spot that does not conduct; too little misses hollows.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Too much burns through the coating and chars; too little leaves no mark. A burn grid tells.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Too much chars; too little leaves no mark.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Too much thins tracks and rings; none leaves narrow gaps uncut, and they are listed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Too short breaks early; too long is hard to cut off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Too short smears the spots while the machine still shakes; longer only takes time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Too short, and the bit meets the copper while still slow, and breaks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Too slow breaks fine bits, too fast burns them. Keep to what the makers of bit and spindle allow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Too slow burns too deep; too fast leaves a faint line. On short lines it is never reached.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Too small a value makes grooves wider than shown.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Too small a value makes grooves wider than shown; too large lets narrow gaps look impossible.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Too small a value makes the fit look surer than it is; too large hides a hole touched wrongly.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Too small a value promises cuts that are not through; too large cuts deeper than needed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Too small a value promises positions that are not met; measure it and enter what you found.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Too small and grooves that count as through still hold copper; too large and they are cut deeper and wider than they need to be.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Too small and holes and outline do not come through; too large and they cut into the bed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Too small and low spots are never reached; too large makes wide grooves and wears the tip on glass.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Too small hatches plain strokes; too large takes longer round corners.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Too small leaves part of it unprotected.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Too thin breaks early; too thick is hard to cut off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill_body.py"/>
        <source>Tool T{number} is used but its diameter is not given.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/fit.py"/>
        <source>Touch another hole, far away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/derive.py"/>
        <source>Touch it again before cutting.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/affine.py"/>
        <source>Touch more holes, or keep the rigid fit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/coupon.py"/>
        <location filename="../../app/drypoint/session/actions/measure.py"/>
        <location filename="../../app/drypoint/session/derive.py"/>
        <source>Touch the copper first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/rim.py"/>
        <source>Touch the rim all round.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/affine.py"/>
        <source>Touch them again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/turn.py"/>
        <source>Touch two drilled holes, better three.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/derive.py"/>
        <source>Touch two reference holes, better three.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/preset.py"/>
        <source>Travel limits in software are on, but homing is off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Travel limits in software need homing, which is off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/turn.py"/>
        <source>Turn it {flip} and clamp it in the same corner of the bed, flat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/hover.py"/>
        <source>Turn the board on the bed, or use a larger machine.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/turn.py"/>
        <source>Turn the board over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/derive.py"/>
        <source>Turn the board over first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Turns of the spindle in a minute.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Two are the least. With only two, a hole touched wrongly cannot be noticed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Two coatings of one name share their values.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Two commands in the line both want the coordinates.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Two commands in the line exclude each other.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/play.py"/>
        <source>Two cycles are needed at least; five are usual.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/play.py"/>
        <source>Two readings from each side are needed at least.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/fit.py"/>
        <source>Uncertainties must be zero or more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser_check.py"/>
        <source>Under constant power every way must be a rapid.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_compose.py"/>
        <source>Uniting copper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill_statements.py"/>
        <source>Units are stated twice and differ ({units_from}; {source}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Unlock, raise the bit, check clip and wire; the input must read open in the air.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Unlock, set zero again and check a reference mark before cutting on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/holes.py"/>
        <source>Use a blank that is {margin:.0f} mm larger on every side, or move the clamps.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/coupon.py"/>
        <source>Use a larger blank, or cut the coupon on a piece of its own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/clearing.py"/>
        <source>Use a wider bit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/writer.py"/>
        <source>Use fewer decimals.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/fit.py"/>
        <source>Use holes far apart.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Use one of the six that every controller has.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/library.py"/>
        <source>Use one of: {kinds}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/words.py"/>
        <source>Usual: {least:g} to {most:g}{unit}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/words.py"/>
        <source>Usual: {most:g}{unit}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>V-bit {tip:g} mm, {drills}, 1 mill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Wait after the spindle is switched on, until it turns at full speed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/explain.py"/>
        <source>Wait for it to stop, or stop it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/axes.py"/>
        <source>Wait for it, or stop it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/greeting.py"/>
        <source>Wait until it rests, or switch it off and on; then connect again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/view.py"/>
        <source>Waiting for the controller.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/controller.py"/>
        <source>Was the line garbled on the cable? Try again, or run without the check.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Waste left round the board when the size of the laminate is not given.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/laser_safety.py"/>
        <source>What is burnt gives off fumes: extraction on, to the outside or through the right filter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>What the bit is called on the setup sheet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>What the drill is called on the setup sheet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>What the job is called on the setup sheet and in the programs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>What the laser marks: the name of the coating.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>What the mill is called on the setup sheet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>What they were to make is missing unless it is planned here too.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/check.py"/>
        <source>What was cut there since the last check is in doubt: look at it, and at the bit, before cutting on. Put a whole bit in and set zero again; the mark has already been set anew.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Where the lower left of the board lies, from the lower left corner of the blank, along x. Only used when the board is not centred.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Where the lower left of the board lies, from the lower left corner of the blank, along y. Only used when the board is not centred.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Whether bare laminate is marked instead of a coating. It is not advised.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Whether holes and marks are reached from smaller x and y always, so that the play of the axes is taken up the same way at each. Costs a tenth of a second a hole.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Whether large areas of copper may be marked, beside their holes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Whether strokes are rows of separate pulses or continuous lines.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Whether the coating's maker declares it safe for laser work.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Whether the controller has an input for the contact circuit of bit and copper.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Whether the controller switches the spindle. If not, Drypoint asks you to do it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Whether the machine finds its own zero with switches.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/panel.py"/>
        <source>Widen the gap: the end mill that cuts them out runs between them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>Width of the flat at the very point. Cut a short groove and measure it rather than trust the label.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/islands.py"/>
        <source>Widths must be 0 or more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>With a wrong one only rubbish arrives, and the controller is not recognised.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>With another device's port nothing answers, or the wrong device does.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/marking.py"/>
        <source>With its laser mode off the beam would stay on while it moves. Switch it on (setting 32).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>With the wrong bit widths and depths come out wrong, and thin bits break.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>With the wrong side every part would have to sit on the wrong face of the board.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Without extraction to the outside nobody should stay in the room.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Without it holes reached from both sides lie apart by the play. It cannot help where the cutting force pushes an axis across its play.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Without one heights cannot be touched and islands cannot be proved; z is set with paper.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Without switches such a move never ends by itself; leave it off if you are not sure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>Without them the board comes loose while the mill turns: it is thrown or jams. Keep at least three, or hold the board in another way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>Work height of the head with the spot in focus. Empty: set by hand, and left.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>Work zero</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/table.py"/>
        <source>Write it as in 'x [mm]'.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/table.py"/>
        <source>Write it as in 'x [mm],y [mm],z [mm]'.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/writer.py"/>
        <source>Writing the lines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/touching.py"/>
        <source>Zero by paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/roles.py"/>
        <source>a comment in it says plated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/roles.py"/>
        <source>a comment in it says unplated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill.py"/>
        <source>a tool of {size:.3f} mm is out of the usual range</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>after the first pass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/passes/depth.py"/>
        <location filename="../../app/drypoint/passes/reach.py"/>
        <source>asking the surface</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/explain.py"/>
        <source>axes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>being laid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>being planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/grooves.py"/>
        <source>bite</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/library.py"/>
        <source>bits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/burn_grid.py"/>
        <source>burn grid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>choose the design files</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/load.py"/>
        <source>chosen by hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/ratings.py"/>
        <source>clearance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/clearing.py"/>
        <source>clearing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/gross.py"/>
        <source>close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/islands.py"/>
        <source>copper of {name} is cut away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/touching.py"/>
        <source>copper touched on the way to {x:.2f}, {y:.2f}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/width_coupon.py"/>
        <location filename="../../app/drypoint/cuts/coupon.py"/>
        <location filename="../../app/drypoint/cuts/depth_coupon.py"/>
        <source>coupon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/outline.py"/>
        <source>cut-out {number}{of}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/play.py"/>
        <source>cycle {cycle} of {cycles}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/width_coupon.py"/>
        <source>deeper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <source>degrees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/gross.py"/>
        <source>far apart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/evidence.py"/>
        <location filename="../../app/drypoint/surface/model.py"/>
        <source>fitting the surface</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/marking.py"/>
        <source>focus light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/grooves.py"/>
        <source>groove width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/pictures.py"/>
        <source>groove, {width:.2f} mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/head.py"/>
        <source>head offset</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/holes.py"/>
        <source>hole {diameter:.2f} mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/gross.py"/>
        <source>hole {i}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/holes.py"/>
        <source>holes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>holes made, board as laid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/hover.py"/>
        <source>hover lap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/carve.py"/>
        <location filename="../../app/drypoint/cuts/islands.py"/>
        <source>island check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/roles.py"/>
        <source>it holds IPC-D-356 records</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/roles.py"/>
        <source>it holds RS-274 moves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/roles.py"/>
        <source>it is a drill file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/roles.py"/>
        <source>it is a drill file; its name says plated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/roles.py"/>
        <source>it is a drill file; its name says unplated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/roles.py"/>
        <source>it lists the files of the board</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/roles.py"/>
        <source>its .FileFunction is {match}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/grooves.py"/>
        <source>joining</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/kept_program.py"/>
        <source>journal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/bursts.py"/>
        <source>laser</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/laser_check.py"/>
        <source>last line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/passes/island_learning.py"/>
        <source>learning from the islands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/linear.py"/>
        <source>least squares</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>line {feedless}: a cutting move comes before any feed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/faults.py"/>
        <location filename="../../app/drypoint/program/check.py"/>
        <location filename="../../app/drypoint/program/laser_check.py"/>
        <source>line {index}: {line}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/writer.py"/>
        <source>line {index}: {line}…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/imported.py"/>
        <source>line {line}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill_body.py"/>
        <source>line {line}: a cutting move with the tool up is left out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill_body.py"/>
        <source>line {line}: cutter compensation is left out, the slot follows the path</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill_body.py"/>
        <source>line {line}: drilled text is left out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill_body.py"/>
        <source>line {line}: the last slot is not closed by M16</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/sender.py"/>
        <location filename="../../app/drypoint/surface/table.py"/>
        <source>line {number}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/guard.py"/>
        <source>line {number}: {line}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_state.py"/>
        <source>line {number}: {text}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill.py"/>
        <location filename="../../app/drypoint/board/netlist.py"/>
        <source>line {number}: “{line}” is not understood and left out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/delivery.py"/>
        <source>line {waiting}: {lines}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/give.py"/>
        <source>long</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/grooves.py"/>
        <source>loops</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>lower left of the board at x {x:.1f}, y {y:.1f} mm from the blank's corner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <location filename="../../app/drypoint/session/help/material.py"/>
        <location filename="../../app/drypoint/session/help/work.py"/>
        <source>mm/min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/writer.py"/>
        <source>move {index}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/centrelines.py"/>
        <location filename="../../app/drypoint/cuts/gaps.py"/>
        <source>narrow gaps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/streaming.py"/>
        <source>near line {executed}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/copper.py"/>
        <source>net {number}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>no clamps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/touching.py"/>
        <source>no contact at {x:.2f}, {y:.2f}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <location filename="../../app/drypoint/ui/machine_side/proving.py"/>
        <source>not touched</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>nothing run yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill.py"/>
        <source>number format not stated: read as {shape} ({format_from})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>of full power</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/roles.py"/>
        <source>of its name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/roles.py"/>
        <source>of its name it could be the outline, but {name} is a better one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/roles.py"/>
        <source>of its name: copper layer {number} of {last}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/roles.py"/>
        <source>of its title “{titled}”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>once the copper is touched</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/copper.py"/>
        <source>other side {number}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/outline.py"/>
        <source>outline{of}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/grooves.py"/>
        <source>overlap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>pass {number} planned, {depth:.3f} mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/running.py"/>
        <source>paused before line {line}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/passes/depth.py"/>
        <source>planning the pass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/passes/recut.py"/>
        <source>planning the re-cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/plan.py"/>
        <source>planning touches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/explain.py"/>
        <source>play</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/play.py"/>
        <source>play of an axis</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/play.py"/>
        <source>play of {axis}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/model.py"/>
        <source>predicting the surface</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/passes/reach.py"/>
        <source>reach</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/passes/reach.py"/>
        <source>reading the passes' depths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/actions/find.py"/>
        <source>reference hole {label}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/affine.py"/>
        <location filename="../../app/drypoint/reference/fit.py"/>
        <source>reference holes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/checks.py"/>
        <source>reference mark within {away:.2f} mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/holes.py"/>
        <source>reference marks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>residual {residual:.2f} mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/rest.py"/>
        <source>rest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/sideways.py"/>
        <location filename="../../app/drypoint/reference/rim.py"/>
        <source>rim of a hole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/explain.py"/>
        <source>scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/width_coupon.py"/>
        <source>shallower</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/give.py"/>
        <source>short</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/clearing.py"/>
        <source>slivers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/holes.py"/>
        <source>slot {diameter:.2f} mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/help/laser.py"/>
        <source>spots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>spread {spread:.0f} µm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/linear.py"/>
        <source>straight line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/model.py"/>
        <source>surface fitted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/outline.py"/>
        <source>tabs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill.py"/>
        <source>the M{text} command</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/contact.py"/>
        <location filename="../../app/drypoint/machine/procedures/proof.py"/>
        <source>the copper of {net}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/proof.py"/>
        <source>the copper outside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/roles.py"/>
        <source>the job file says {jobs}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill_statements.py"/>
        <source>the {parts} line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/give.py"/>
        <source>the {side} {which} edge at its middle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/thinned.py"/>
        <source>thinned traces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill.py"/>
        <source>tool diameters only make sense in {other}: read so</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/touching.py"/>
        <source>touch {index} of {count}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>touched at {data:.3f}, {data2:.3f}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/proof.py"/>
        <source>touching {net}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/rest.py"/>
        <source>two bits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill.py"/>
        <source>units not stated: read as {words}, {shape} ({units_from})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/warp.py"/>
        <source>warp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/plan.py"/>
        <source>weighing the next touches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/evidence.py"/>
        <source>weighing the surface's parameters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/passes/options.py"/>
        <source>weighing ways to cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill.py"/>
        <source>which zeros are left out is not stated: read as {shape}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/passes/learning.py"/>
        <source>x {at:.2f}, y {at2:.2f} mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/outline.py"/>
        <source>x {x:.1f} y {y:.1f}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/touching.py"/>
        <source>z {height:.2f}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/sideways.py"/>
        <source>z {work:.2f}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/checks.py"/>
        <source>zero spot within {away:.0f} µm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/expressions.py"/>
        <source>{a:g} {operation} {b:g} cannot be computed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/registration.py"/>
        <source>{area:.1f} mm² of copper on the {label} lie outside the outline.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/islands_plan.py"/>
        <source>{at:.2f}, {at2:.2f}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/laser_safety.py"/>
        <source>{bare} If you mean to, say so in the settings of the laser.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/gross.py"/>
        <source>{called} lies {off:.2f} mm from where the others say.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>{clock} of cutting, without touches and changes of bit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/imported.py"/>
        <source>{corner}; nothing of it lies on the board</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} broken</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} clamp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>{count} clamps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} cut away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} drill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} drills</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} file, being read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} files, being read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} hole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} hole to make first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} hole touched</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} holes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/fit.py"/>
        <source>{count} holes in the design but {count2} touched.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/registration.py"/>
        <source>{count} holes lie outside the outline or in a cut-out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} holes to make first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <location filename="../../app/drypoint/ui/jog/reference.py"/>
        <source>{count} holes touched</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} joined</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} loop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} loops</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/netlist_check.py"/>
        <source>{count} more names differ from the netlist.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/links.py"/>
        <source>{count} more nets stay in several pieces.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/program/limits.py"/>
        <source>{count} moves come closer than {margin:g} mm to {name}, the first near ({x:.1f}, {y:.1f}) at {lowest:.2f} mm height.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} net</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>{count} nets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/links.py"/>
        <source>{count} nets have copper on the other side that no hole reaches (parts soldered there); wires between holes cannot replace it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>{count} nets, {count2} holes, {count3} link wires</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} of {all} pairs proved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} of {all} touched</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} pair joined</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} pair not proved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} pairs joined</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} pairs not proved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} pass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} pass run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} passes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} passes run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} place to touch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} places to touch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/links.py"/>
        <source>{count} plated holes carry current to the other layer; on a milled board the link wires do, or a rivet or a soldered lead on both sides.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} program run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} programs run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} touch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{count} touches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>{deepest:.3f} mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/pictures.py"/>
        <source>{edges:.0f} to {edges2:.0f} µm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/proof.py"/>
        <source>{how} {where}; {count} pieces are touched, {count2} gaps proved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill.py"/>
        <source>{judged} the pads, {share:.0%} of the holes hit one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{length:,.0f} mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>{length:.0f} mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/blocks.py"/>
        <source>{letter} is there twice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/copper.py"/>
        <source>{listed} are one piece of copper.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/copper.py"/>
        <source>{listed} are tied in copper, as the design says.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/macro_primitives.py"/>
        <source>{lowest} to {highest} is possible.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>{max_bite:.3f} mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/marking.py"/>
        <source>{max} marks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/touching.py"/>
        <source>{misses} touches in a row found no contact.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/touching.py"/>
        <source>{most} touches at the zero spot do not agree within {agree:.0f} µm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/feeds.py"/>
        <source>{name} asks for {feed:.0f} mm/min; the machine does {feed_max:.0f}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/feeds.py"/>
        <source>{name} asks for {spindle:.0f} turns a minute; the spindle does {spindle_min:.0f} to {spindle_max:.0f}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/islands.py"/>
        <source>{name} falls into {count} pieces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/surface/give.py"/>
        <source>{name} gives {give:.2f} mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/wear.py"/>
        <source>{name} has cut {length:.1f} m and {holes} holes: look at it, replace it if it leaves burrs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/thinned.py"/>
        <source>{name} is about {wide:.2f} mm wide here: {current:.2f} A</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/expressions.py"/>
        <source>{name} needs a value in brackets.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/feeds.py"/>
        <source>{name} plunges at {plunge:.0f} mm/min; the machine does {plunge_max:.0f}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/feeds.py"/>
        <source>{name} should turn slower than this spindle can: expect heat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/links.py"/>
        <source>{name} stays in {left} pieces on the milled side even with the link wires.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/grooves.py"/>
        <source>{name} would do at {depth:.3f} mm deep.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/bits/feeds.py"/>
        <source>{name} would like {wanted:.0f} turns a minute; this spindle reaches {spindle:.0f} ({share:.0%}). Feed is lowered to keep the chip load.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_source.py"/>
        <source>{name}, line 1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill_body.py"/>
        <location filename="../../app/drypoint/board/gerber.py"/>
        <location filename="../../app/drypoint/board/gerber_source.py"/>
        <location filename="../../app/drypoint/board/layers.py"/>
        <location filename="../../app/drypoint/board/netlist.py"/>
        <source>{name}, line {line}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill.py"/>
        <location filename="../../app/drypoint/board/gerber_interpreter.py"/>
        <location filename="../../app/drypoint/gcode/reader.py"/>
        <source>{name}, line {number}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>{name}, {width:.1f} × {height:.1f} mm, {value} copper milled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/expressions.py"/>
        <source>{name}[{x:g}] cannot be computed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>{number}, done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>{number}: {width:g} × {height:g} mm at {x:g}, {y:g}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>{preset}; moves across at {clearance:g} mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{share:.1f} % through</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{share:.1f} % through so far</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/doubts.py"/>
        <source>{sound}: looked at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/doubts.py"/>
        <source>{sound}: to be cut again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/gross.py"/>
        <source>{text} Touch it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/cuts/thinned.py"/>
        <source>{text} for {rise:.0f} K (estimate)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/gross.py"/>
        <source>{text}, which their uncertainty explains.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/reference/gross.py"/>
        <source>{text}: one of them is wrong. Touch a third.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/running.py"/>
        <source>{title}, resumed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/copper.py"/>
        <source>{touched} are joined by copper that belongs to no net.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/commands.py"/>
        <source>{value:g} is no sensible value.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/macro_primitives.py"/>
        <source>{what} cannot be {value:g}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/aperture_shapes.py"/>
        <source>{what} of {value:g} mm is impossible.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/faults.py"/>
        <source>{what}: a line arrived garbled.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/errors.py"/>
        <source>{where}: {what}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>{width:.1f} × {height:.1f} × {thickness:g} mm, copper {copper:.0f} µm, backing {backing:g} mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{width:.4g} × {height:.4g} mm, {clamps}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/traveller.py"/>
        <source>{width:.4g} × {height:.4g} mm, {nets}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/session/export.py"/>
        <source>{words}: {pieces} pieces for {nets} nets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/machine/procedures/sideways.py"/>
        <location filename="../../app/drypoint/machine/procedures/touching.py"/>
        <source>{x:.2f}, {y:.2f}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill_body.py"/>
        <source>“T{text}” is no tool.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/attributes.py"/>
        <source>“{command}” is not an attribute command.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/gcode/blocks.py"/>
        <source>“{letter}” is no word of RS-274.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill_body.py"/>
        <source>“{text}” is no code.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/drill_numbers.py"/>
        <source>“{text}” is no number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/macro_expressions.py"/>
        <source>“{text}” is not an expression.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/board/gerber_format.py"/>
        <source>“{word}” is not a coordinate.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>window</name>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source> and </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source> or </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <source> {count} settings differ from the machine set up here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source> {mm:.1f} mm were cut twice at the lead-in, no deeper.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>% of the groove length is through {after}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;About Drypoint</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Arm the jog keys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Bit is over this hole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Cautions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Colours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Connect…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Dark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Edit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Export programs…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;File</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Fit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Hold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Island check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Keys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Measure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Nets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;New job…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Open…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Passes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Quit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Reach</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/editing.py"/>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Redo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Rehearse on the bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Report…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Resume</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Settings of the machine…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Setup sheet…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/editing.py"/>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;Undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>&amp;View</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source>, and .</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>, planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>3 holes, one to spare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/view.py"/>
        <source>95 % of expected error</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/machine.py"/>
        <source>A clip and the contact input are there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/documents.py"/>
        <source>A copy was saved: {path}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/desk.py"/>
        <source>A fault in Drypoint itself ended this. The machine was stopped; the job is safe.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/rehearsing.py"/>
        <source>A fault in Drypoint itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>A hole may be wrong</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>A machine on a serial port, or the bench: a simulated one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>A pass follows the copper's height: touch the copper first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/pausing.py"/>
        <source>A pause needs a planned program: touch the copper first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/rehearsing.py"/>
        <source>A simulated machine mills a simulated sheet; your job is not changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/heat/profile.py"/>
        <source>A to B {length:.0f} mm, µm; band 95 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>Above each other</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/run.py"/>
        <source>Add a pause</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <source>Add clamp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/files.py"/>
        <source>Add files…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/files.py"/>
        <source>Add folder…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/proof.py"/>
        <source>All</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/proof.py"/>
        <source>All  {count}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>An island touch proves it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/window.py"/>
        <source>Area</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/position.py"/>
        <source>Arrow keys move X and Y, Page Up and Page Down move Z. Esc disarms.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source>Arrow keys, Page Up, Page Down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>As the &amp;system</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>At rest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/sketch.py"/>
        <source>At {depth:.2f} mm depth the groove is {width:.3f} mm wide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/machine.py"/>
        <source>Axes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/jogging.py"/>
        <source>Axes turned by hand are not seen by the controller. Say where the bit stands on the work; the position is set to it, nothing moves. Leave an axis as it is to keep it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/request_bar.py"/>
        <source>Axes were turned by hand: the position is not believed until it is set again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>Back to 100 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <source>Backing board under the blank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/machine.py"/>
        <source>Baud</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/machine.py"/>
        <source>Before anything moves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source>Before anything turns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/run.py"/>
        <source>Before piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/machine.py"/>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <source>Bench (simulated machine)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>Beside each other</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>Bit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>Bit and trail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/reference.py"/>
        <source>Bit is over hole {number}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>Bite allowed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>Bits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>Blank and clamps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <location filename="../../app/drypoint/ui/wizard/files.py"/>
        <source>Bottom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source>C, arrow keys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/jogging.py"/>
        <location filename="../../app/drypoint/ui/machine_side/rehearsing.py"/>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <source>Centre the board on the blank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>Change files…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>Change the bit, then start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>Check the contact c&amp;ircuit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <source>Choose the port</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>Clamp again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/describe.py"/>
        <source>Clamp {number}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <source>Clamp {number} is {far:.1f} mm from the outline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <source>Clamps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <location filename="../../app/drypoint/ui/machine_side/rehearsing.py"/>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>Colour by net</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <source>Connect</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/surface.py"/>
        <source>Connect a machine first; one thing at a time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <source>Connect again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <source>Connected to {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <source>Connected to {name}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/machine.py"/>
        <source>Connection</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>Connect…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/position.py"/>
        <source>Contact</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <source>Copper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>Copper of the other side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>Copper of {nets} is cut away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source>Copy the text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/proof.py"/>
        <source>Cut again here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>Cuts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>Cutting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/request_bar.py"/>
        <source>Decline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>Deepest bite into copper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>Deepest cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>Depth and reference</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/describe.py"/>
        <source>Depth, planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/files.py"/>
        <source>Design files</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>Design files in place of the present</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/describe.py"/>
        <source>Diameter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <source>Differs from the machine set up here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>Distance is off by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/proof.py"/>
        <source>Does the milled copper fall into exactly the nets of the design?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/request_bar.py"/>
        <source>Done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/editing.py"/>
        <source>Done again: {title}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>Drag the board or a clamp. C chooses a clamp, arrow keys move it by 0.1 mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>Drill reference holes…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/bits.py"/>
        <source>Drills at hand, mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <location filename="../../app/drypoint/ui/window.py"/>
        <source>Drypoint</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source>Drypoint is named after the engraver's technique of scratching a picture into a copper plate with a hard point: dry, no acid.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source>Drypoint made a mistake</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>Drypoint was ended</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/bits.py"/>
        <source>End mill, diameter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/bits.py"/>
        <source>End mill, feed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/desk.py"/>
        <source>Ended as asked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source>Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/side.py"/>
        <source>Every change is saved at once and can be undone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>Every reference hole is touched.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>Everything can be changed later.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>Everything here can be changed later in the traveller.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>Everything is done.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>Expected error</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>Explained by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>Far apart is best: the turn is found more sharply.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>Faster by 10 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/bits.py"/>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>Feed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>Feed {percent} %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/bits.py"/>
        <source>Feeds and speeds are common practice for small engravers; the makers of bit and machine know better.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>Files</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>Find the board again from holes whose place in the design is known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>Find zero again, then resume</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>First touch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>Fit  0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/view.py"/>
        <source>Fit, enlarged {times:.0f} times</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/paper.py"/>
        <source>Folder for the programs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/files.py"/>
        <source>Folder of design files</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/rehearsing.py"/>
        <source>Found again by {n} holes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source>Free under the MIT licence, without warranty. The manual of the machine's maker, local rules and qualified practice come first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>Gap between copies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/heat/view.py"/>
        <source>Give</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>Give up below it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>Go on from here (Ctrl+R)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/describe.py"/>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>Groove width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>Grooves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>Halt and end the program (Ctrl+.). This is no emergency stop: it works only while the program, the cable and the controller do. Keep the power switch within reach.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>Halt the axes where they are; nothing is lost (Pause or Ctrl+H)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/scrubber.py"/>
        <source>Have the run pause before the piece shown: bit raised, spindle off, until you go on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>Height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/machine_settings.py"/>
        <source>Height of moves across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>Height of the bit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/heat/view.py"/>
        <source>Height of the copper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>Heights were touched before the board was moved. Drilling and the outline carry them along; touch the copper again before the next pass.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>Held</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>Hold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/describe.py"/>
        <source>Hole {number}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>Hole {n}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>Hole {n} touched at x {x:.2f}, y {y:.2f} mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>Hole, design place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>Holes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/files.py"/>
        <source>Holes and slots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>Hover &amp;lap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>How deep a pass must go follows the copper's height: Surface comes first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>How it is reached, and what it can do.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>How it is touched</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/bits.py"/>
        <source>Included angle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>Into the backing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/proving.py"/>
        <source>Island touch: {p} pairs proved apart, {j} joined, {u} not proved yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/proof.py"/>
        <source>Islands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/request_bar.py"/>
        <source>It drags</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>It goes over {length:.0f} mm, only where the last may not be through.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/request_bar.py"/>
        <source>It is there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>It lowers the worst expected error from {now:.2f} to {then:.2f} mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source>It measures the copper, predicts where a groove is through, cuts only what still needs cutting, finds the board again from its own holes, and proves the result by touch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>It was moved. Touch two reference holes, better three; nothing is run before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <source>Its settings are those of the machine set up here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>Job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/documents.py"/>
        <source>Jobs (*{suffix})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/jogging.py"/>
        <source>Jog is locked while a procedure runs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/position.py"/>
        <source>Jog keys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source>Jog, once the keys are armed; 1 to 4 choose the step, Esc disarms</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>Join gaps up to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <source>Keep away from clamps by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source>Keys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>Lay the cuts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <source>Let go</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/request_bar.py"/>
        <source>Let the bench do it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>Line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>Line {n} of {all} is the last one proven done ({why}). Resuming overlaps a little and never goes deeper. Or start the next piece instead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>Lines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>Link wires</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/machine.py"/>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <source>Look again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/describe.py"/>
        <source>Loop {number}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>Loops</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <source>Lower left of the board, x</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <source>Lower left of the board, y</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/live.py"/>
        <source>Machine, Connect…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>Make the job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/documents.py"/>
        <source>Making the job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/heat/view.py"/>
        <source>Mean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>Measure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>Most passes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <source>Move clamp {number}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>Move the board</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source>Move the picture; the wheel zooms at the cursor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/request_bar.py"/>
        <source>Moved by hand wheel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/machine_settings.py"/>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>Moving</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <location filename="../../app/drypoint/ui/wizard/files.py"/>
        <source>Name of the job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>Narrow places</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/proof.py"/>
        <source>Needs a look</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/proof.py"/>
        <source>Needs a look  {count}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>Needs you</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/describe.py"/>
        <source>Net</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/describe.py"/>
        <source>Net {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <location filename="../../app/drypoint/ui/wizard/files.py"/>
        <source>Nets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <location filename="../../app/drypoint/ui/wizard/files.py"/>
        <source>Nets are known from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>New job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/side.py"/>
        <source>New job and Open are in the File menu.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>New job…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>Next: {page}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>Next: {t}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/canvas.py"/>
        <source>No board yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <source>No clamps yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>No cuts are laid.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>No design files yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/files.py"/>
        <source>No files yet. Drop Gerber and drill files here, or a zip.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/side.py"/>
        <source>No job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>No machine is connected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/desk.py"/>
        <source>No machine is connected. Machine, Connect… finds one, or takes the bench.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>No pass can be planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>No pass is planned yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/heat/view.py"/>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>No touches yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/run.py"/>
        <source>None. Add one here, at the scrubber, or by the menu on the canvas.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>Not connected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/jogging.py"/>
        <source>Not connected.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>Not needed while the board lies as it was laid and zero was set at its corner.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/proof.py"/>
        <source>Not touched</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/proof.py"/>
        <source>Not touched  {count}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/proof.py"/>
        <source>Nothing checked yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>Nothing is left to cut again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/app.py"/>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>Nothing to run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <location filename="../../app/drypoint/ui/pages/run.py"/>
        <source>Nothing to run yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source>On the Blank page: choose a clamp, move it by 0.1 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>Once round the board: nothing was in the way?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>One pass takes about</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>Only what may still be joined is cut again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>Open &amp;recent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/documents.py"/>
        <source>Open a job</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <source>Opening a port restarts most controllers. Drypoint reads what it is; it moves nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <location filename="../../app/drypoint/ui/canvas/scrubber.py"/>
        <source>Order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/scrubber.py"/>
        <source>Order of cutting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>Origin at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/bits.py"/>
        <source>Outline and holes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>Outline and tabs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/jogging.py"/>
        <source>Over the corner spot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/paper.py"/>
        <source>PDF (*.pdf);;Web page (*.html)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>Pa&amp;ge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <source>Pace of the bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/request_bar.py"/>
        <source>Paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/position.py"/>
        <source>Paper {thickness:.2f}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>Pass {number}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>Pass {n}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/rehearsing.py"/>
        <source>Pass {n}, {depth:.3f} mm, {length:.0f} mm long</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/pausing.py"/>
        <source>Pause before this piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/scrubber.py"/>
        <source>Pause here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/run.py"/>
        <source>Pauses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/describe.py"/>
        <source>Piece {number}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/describe.py"/>
        <source>Place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/remapping.py"/>
        <source>Placing every path anew…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>Plan &amp;touches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>Plan the next &amp;pass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>Plan touches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>Plan {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>Play of Z under load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/machine.py"/>
        <source>Play {axis}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/bits.py"/>
        <source>Plunge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/machine.py"/>
        <source>Port</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/position.py"/>
        <location filename="../../app/drypoint/ui/window.py"/>
        <source>Position</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/rehearsing.py"/>
        <source>Prediction against what the simulated copper shows.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/heat/profile.py"/>
        <source>Profile of the height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>Progress</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <source>Protocol {version}, {bytes} bytes of buffer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>Re-&amp;map</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/reference.py"/>
        <source>Re-map</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>Read a table…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/request_bar.py"/>
        <source>Read; go on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/new_job.py"/>
        <source>Reading the files</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/describe.py"/>
        <source>Reference hole {number}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/rehearsing.py"/>
        <source>Rehearsal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/rehearsing.py"/>
        <source>Rehearsal on the bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>Rehearse</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <location filename="../../app/drypoint/ui/pages/run.py"/>
        <source>Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/run.py"/>
        <source>Remove the pause {where}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>Repeat of a touch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source>Report</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source>Report of a fault</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/proof.py"/>
        <source>Report…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/request_bar.py"/>
        <source>Request</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>Resume</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>Resume the broken run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>Ring left, 95 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/reference.py"/>
        <source>Ring left, worst</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <location filename="../../app/drypoint/ui/wizard/files.py"/>
        <source>Role of {file}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>Save a &amp;copy…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/documents.py"/>
        <source>Save a copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>Say that it was taken off, turned or clamped anew: place and heights are stale then.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>Scale, not used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>Second touch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>Seen from the side being milled.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/jogging.py"/>
        <source>Set by hand wheel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/position.py"/>
        <source>Set by hand wheel…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/jogging.py"/>
        <source>Set the place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>Settings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/proof.py"/>
        <source>Show</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>Show as &amp;before re-mapping</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>Show…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/files.py"/>
        <source>Side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>Side and outline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <location filename="../../app/drypoint/ui/wizard/files.py"/>
        <source>Side being milled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>Size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/machine.py"/>
        <source>Size of the machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>Skip this piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>Slots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>Slower by 10 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source>Space and drag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/bits.py"/>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>Spindle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/machine_settings.py"/>
        <source>Spindle comes up to speed in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/heat/view.py"/>
        <source>Spread</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/heat/view.py"/>
        <source>Stale: {reason}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <location filename="../../app/drypoint/ui/pages/run.py"/>
        <source>Start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>Start above the copper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/files.py"/>
        <source>Start over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/position.py"/>
        <source>Step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>Stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/machine.py"/>
        <source>Stop in this program is no emergency stop. Keep the power switch within reach, wear eye protection, and follow the manual of the machine's maker.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/live.py"/>
        <source>Stop: the axes slow down, then everything buffered is thrown away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/desk.py"/>
        <source>Stopped. Everything buffered was thrown away; the spindle output is off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>Summary</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>Sure at every spot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>Surface and passes are stale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/menus.py"/>
        <source>Surface, next &amp;aspect</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/rehearsing.py"/>
        <source>Surface, {n} touches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>Tab height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>Tab width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>Table of heights</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>Tables (*.csv);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>Tabs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>Take it off, turn or clean it, clamp it again. Then its holes are touched.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/pausing.py"/>
        <source>Take the pause away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/editing.py"/>
        <source>Taken back: {title}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/request_bar.py"/>
        <source>The bench does all that is asked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/jogging.py"/>
        <source>The bit is at…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/jogging.py"/>
        <source>The bit is there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>The bit touches the copper where the grooves will run.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <source>The blank is smaller than the board</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/files.py"/>
        <source>The board is shown as seen from that side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <source>The board is {w:.1f} × {h:.1f} mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>The board was moved: touch two reference holes, better three.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>The board was moved…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/jogging.py"/>
        <source>The contact circuit works: open in the air, closed at the clip. The clip is off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/machine.py"/>
        <source>The controller switches the spindle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>The copper is not touched yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>The design files were read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>The design, as seen from the side being milled.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>The gap is {gap:.3f} mm, {length:.1f} mm long. {hint}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/proving.py"/>
        <source>The ground between them is cut again in the next pass.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>The laminate gives</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/machine.py"/>
        <source>The machine has switches and finds its home</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <source>The machine is let go.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source>The machine was told to hold, and a copy of the job was kept. Everything stored so far is intact. Please report the text below.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source>The order of cutting, a loop back or on; with Shift ten</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/pausing.py"/>
        <source>The pause is taken away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/jogging.py"/>
        <source>The position is set: x {x:.3f}, y {y:.3f}, z {z:.3f} mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/rehearsing.py"/>
        <source>The rehearsal ended early</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/pausing.py"/>
        <source>The run pauses before piece {n}: bit raised, spindle off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>The surface is stale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <location filename="../../app/drypoint/ui/machine_side/rehearsing.py"/>
        <source>There is no job yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <source>Thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/run.py"/>
        <source>This evening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>Tightest hole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/rehearsing.py"/>
        <source>Time at the machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <location filename="../../app/drypoint/ui/wizard/files.py"/>
        <source>Top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/proof.py"/>
        <source>Touch again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/reference.py"/>
        <source>Touch another hole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>Touch hole {n} next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/surface.py"/>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>Touch more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/position.py"/>
        <source>Touch off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/position.py"/>
        <location filename="../../app/drypoint/ui/machine_side/jogging.py"/>
        <source>Touch off Z</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>Touch plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/surface.py"/>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>Touch the copper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>Touch the copper again before cutting grooves.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/surface.py"/>
        <source>Touch the edges first: does it give?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/proof.py"/>
        <source>Touch the other {count}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/proof.py"/>
        <source>Touch the rest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>Touch two holes at least; a third one tells errors.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/surface.py"/>
        <source>Touched. {said} It was clamped before the touches were made.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/surface.py"/>
        <source>Touched; the laminate is held everywhere.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>Touches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/surface.py"/>
        <source>Touches along the edges of the blank tell where no clamp holds it, and ask for one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>Touches left out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/run_strip.py"/>
        <source>Touching</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>Touching takes about</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/machine.py"/>
        <source>Travel {axis}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/traveller.py"/>
        <source>Traveller</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>Turned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>V-bit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/bits.py"/>
        <source>V-bit for grooves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>V-bit {tip:g} mm {angle:g}°</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source>Version {version}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>View</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>What cuts, and how fast.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>What is taken for the machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>What the design consists of.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>What the fit says</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/surface.py"/>
        <source>What was touched is kept; Touch the copper goes on from there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>Where the board lies is not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>Where the copper lies, and where the bit must not go.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>Where the grooves run, and what they cannot part.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/documents.py"/>
        <source>Where the job is kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>Which copper is milled, and how large it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <source>Width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/bits.py"/>
        <source>Width of the tip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/messages.py"/>
        <source>Working</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>Worst spread on a groove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/paper.py"/>
        <source>Write to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/paper.py"/>
        <source>Written: {path}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <source>You asked for {wanted:.1f} mm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/jogging.py"/>
        <source>Z is zero on the copper here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/help.py"/>
        <source>Zoom to what is chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>a clamp is too near</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>after pass 1 (expected)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>after pass {number}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>after that</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/position.py"/>
        <source>armed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <source>as fast as it can</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/sketch.py"/>
        <source>at {depth:.2f} mm depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>at {x:.2f}, {y:.2f}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>at {x:.2f}, {y:.2f} mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/run.py"/>
        <source>before piece {n} of {all}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/live.py"/>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>bottom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>broken</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <location filename="../../app/drypoint/ui/pages/run.py"/>
        <source>caution</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/view.py"/>
        <source>clamped anew {time}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>clean, {count} nets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>copper of a net</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>cut away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>cut by then</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>cut in this pass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/parts/glyph.py"/>
        <source>done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/parts/glyph.py"/>
        <source>doubt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/describe.py"/>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>doubtful</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>drills {list} mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>earlier pass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <location filename="../../app/drypoint/ui/parts/glyph.py"/>
        <location filename="../../app/drypoint/ui/parts/page.py"/>
        <location filename="../../app/drypoint/ui/wizard/files.py"/>
        <source>error</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>expected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/proving.py"/>
        <source>gap {gap:.2f} mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>getting ready</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>groove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>held</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>hole {number}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/proving.py"/>
        <source>in the plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/rehearsing.py"/>
        <source>islands of the carved copper / nets of the design</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>its attributes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <location filename="../../app/drypoint/ui/machine_side/proving.py"/>
        <source>joined</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <source>left edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>left in this piece, done about {t}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>line {n} of {all}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <source>lower edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/position.py"/>
        <source>machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/position.py"/>
        <source>minus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>mm of groove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>mm residual, {spare}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/proving.py"/>
        <source>neighbouring pairs are proved apart by touch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/proving.py"/>
        <source>neighbouring pairs proved apart by touch; the plan gives {n} islands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>nets, each to be an island of its own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>no</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/app.py"/>
        <source>no machine, no bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/describe.py"/>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>not through</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/run.py"/>
        <source>nothing is cut there any more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/position.py"/>
        <source>off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/rehearsing.py"/>
        <source>off by {rms:.1f} µm; {share:.0f} % inside the 90 % band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/proving.py"/>
        <source>outside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>pass {number}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>piece {number} of {all}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>plain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/position.py"/>
        <source>plus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/proving.py"/>
        <source>proved apart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/parts/glyph.py"/>
        <source>ready</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/view.py"/>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>residual</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/rehearsing.py"/>
        <source>residual {r:.3f} mm, worst place ± {w:.3f} mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <source>right edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>ring {r:.2f} mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>said without a machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/heat/view.py"/>
        <source>spread {mid:.0f}, worst {worst:.0f} µm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/heat/view.py"/>
        <location filename="../../app/drypoint/ui/parts/glyph.py"/>
        <source>stale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>still to cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>taken off and clamped again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <source>the bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>the first pass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>the netlist</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>this page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/describe.py"/>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>through</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/rehearsing.py"/>
        <source>through: {p:.1f} % expected, {a:.1f} % found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/parts/glyph.py"/>
        <source>to do</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>touch first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/proving.py"/>
        <source>unproved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <source>upper edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>what touches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/jog/position.py"/>
        <source>work, mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/panel.py"/>
        <source>x {x:.2f}   y {y:.2f} mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/design.py"/>
        <source>{a} and {b} stay joined</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/proof.py"/>
        <source>{count} computed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/wizard/wizard.py"/>
        <source>{count} files</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/pages.py"/>
        <source>{count} heights read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/paper.py"/>
        <source>{count} programs and the setup sheet are in {folder}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/proof.py"/>
        <source>{count} touched with the bit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/heat/view.py"/>
        <source>{count} touches   {low:+.0f} … {high:+.0f} µm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>{count}, {bits} bits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>{count}, {sizes} sizes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>{holes} holes, {slots} slots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/documents.py"/>
        <source>{name} is open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/live.py"/>
        <source>{name}, jog keys armed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/live.py"/>
        <source>{name}, {feed:.0f} mm/min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/parts/fields.py"/>
        <source>{name}: from {least:g} to {most:g} {unit}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/parts/fields.py"/>
        <source>{name}: this is no number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>{nets} is broken in pieces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/canvas.py"/>
        <source>{nets} nets, {holes} holes; view: {view}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>{nets} stay joined</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/canvas/scrubber.py"/>
        <source>{now} of {all}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>{n} holes, only their distance tells errors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/reference.py"/>
        <source>{n} holes, {s} to spare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>{n} of {all}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/remapping.py"/>
        <source>{n} programs are placed anew: turned by {angle:+.2f}°, the outline moves by {mm:.2f} mm at most.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/connecting.py"/>
        <source>{pace:g} times real time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/run.py"/>
        <source>{program}: {n} pieces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>{share:.1f} % expected after pass {number}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/design_side/words.py"/>
        <source>{tabs} tabs, {depths} depths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/blank.py"/>
        <source>{thickness:.0f} µm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>{title} is done, {time}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>{title} is taken as done.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>{title}: {reason} at line {n} of {all}. It can be resumed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>{t} left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/machine_side/running.py"/>
        <source>{t} was broken off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/forms/sketch.py"/>
        <source>{width:.3f} mm wide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../app/drypoint/ui/pages/measure.py"/>
        <source>µm spread in the middle of all places</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
