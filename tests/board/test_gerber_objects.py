"""Objects, attributes and nets of a Gerber layer."""
# ruff: noqa: E501 - tables of one case a line

from __future__ import annotations

import pytest

from drypoint.board.gerber import GerberLayer, read_gerber
from drypoint.errors import InputError

HEAD = "%FSLAX46Y46*%\n%MOMM*%\n%ADD10C,1*%\n%ADD11R,4X4*%\nD10*\n"


def layer(*lines: str) -> GerberLayer:
    return read_gerber(HEAD + "\n".join(lines) + "\nM02*\n")


PADS = (
    "{0}TF.FileFunction,Copper,L1,Top{1}",
    "{0}TA.AperFunction,SMDPad,CuDef{1}", "%ADD20R,1X1*%", "{0}TD.AperFunction{1}",
    "D20*", "{0}TO.P,R1,1,A{1}", "{0}TO.N,GND{1}", "X0Y0D03*",
    "{0}TO.P,R1,2{1}", "{0}TO.N,a\\u002Cb{1}", "X3000000Y0D03*",
    "{0}TD{1}", "{0}TO.N,{1}", "X6000000Y0D03*", "{0}TD{1}", "{0}TO.C,U7{1}", "X9000000Y0D03*",
)  # fmt: skip


@pytest.mark.parametrize(("opening", "closing"), [("%", "*%"), ("G04 #@! ", "*")])
def test_attributes_as_commands_and_as_comments(opening: str, closing: str) -> None:
    read = layer(*(line.format(opening, closing) for line in PADS))
    assert read.attributes == {".FileFunction": ("Copper", "L1", "Top")}
    assert read.attributes["FileFunction"] == ("Copper", "L1", "Top")
    found = [(item.net, item.component, item.pin, item.function) for item in read.objects]
    assert found == [
        ("GND", "R1", "1", "SMDPad"), ("a,b", "R1", "2", "SMDPad"), (None, None, None, "SMDPad"), (None, "U7", None, "SMDPad"),
    ]  # fmt: skip
    assert read.objects[0].attributes[".P"] == ("R1", "1", "A")
    assert set(read.nets()) == {"GND", "a,b"}
    assert read.without_net().area == pytest.approx(2.0)


def test_a_region_takes_aperture_attributes_from_the_dictionary() -> None:
    read = layer(
        "%TO.N,GND*%", "%TA.AperFunction,Conductor*%", "G36*", "X0Y0D02*", "X1000000D01*", "Y1000000D01*", "X0Y0D01*", "G37*",
    )  # fmt: skip
    (region,) = read.objects
    assert (region.kind, region.net, region.function) == ("region", "GND", "Conductor")


def test_kinds_paths_and_lines() -> None:
    read = layer(
        "X0Y0D02*",
        "X5000000D01*",
        "D03*",
        "G75*",
        "G03*",
        "X5000000Y0I-1000000J0D01*",
        "%LPC*%",
        "D11*",
        "D03*",
    )
    assert [item.kind for item in read.objects] == ["draw", "flash", "arc", "flash"]
    assert [item.dark for item in read.objects] == [True, True, True, False]
    assert [item.diameter for item in read.objects] == [1.0, 1.0, 1.0, None]
    assert [item.line for item in read.objects] == [7, 8, 11, 14]
    draw, flash, arc, _ = (item.path for item in read.objects)
    assert draw.tolist() == [[0, 0], [5, 0]]
    assert flash.tolist() == [[5, 0]]
    assert arc[0].tolist() == arc[-1].tolist() == [5, 0]
    assert not arc.flags.writeable
    assert read.objects[0].shape.area == pytest.approx(5.785, abs=0.002)


def test_a_line_of_no_width_keeps_its_path() -> None:
    read = read_gerber("%FSLAX46Y46*%%MOMM*%%ADD10C,0*%D10*X0Y0D02*X5000000D01*M02*")
    assert read.shape.is_empty
    assert read.objects[0].path.tolist() == [[0, 0], [5, 0]]
    assert read.objects[0].diameter == 0.0


def test_nets_respect_polarity_in_file_order() -> None:
    read = layer(
        "%TO.N,plane*%", "D11*", "X0Y0D03*", "%LPC*%", "%ADD12R,2X2*%", "D12*", "X0Y0D03*", "%LPD*%",
        "%TO.N,pad*%", "D10*", "X0Y0D03*", "%TO.N,plane*%", "%ADD13R,1X4*%", "D13*", "X1500000Y0D03*",
    )  # fmt: skip
    nets = read.nets()
    assert nets["plane"].area == pytest.approx(16 - 4)
    assert nets["pad"].area == pytest.approx(0.785, abs=0.002)
    assert nets["plane"].disjoint(nets["pad"])
    assert read.shape.area == pytest.approx(sum(net.area for net in nets.values()))


def test_pads_alone_on_their_net_stay_apart() -> None:
    read = layer("%TO.N,N/C*%", "%TO.P,U1,3*%", "X0Y0D03*", "%TO.P,U1,4*%", "X3000000Y0D03*")
    assert set(read.nets()) == {"N/C U1-3", "N/C U1-4"}


def test_objects_of_a_block_keep_their_net_and_take_what_they_lack() -> None:
    read = layer(
        "%TO.N,inner*%", "%ABD30*%", "D10*", "X0Y0D03*", "%TD*%", "X2000000Y0D03*", "%AB*%",
        "%TO.N,outer*%", "D30*", "X0Y0D03*", "X0Y5000000D03*",
    )  # fmt: skip
    assert [item.net for item in read.objects] == ["inner", "outer", "inner", "outer"]


def test_no_attributes_no_nets() -> None:
    assert layer("X0Y0D03*").nets() == {}


def test_warnings_name_the_line_once() -> None:
    read = layer("%XXfoo*%", "X0Y0D03*", "%XXfoo*%")
    assert read.warnings == ("line 6: The unknown command “XXfoo” is passed over. (2 times)",)


def test_an_unstated_unit_is_refused_with_its_line() -> None:
    with pytest.raises(InputError, match="does not state its unit") as refused:
        read_gerber("%FSLAX24Y24*%\n%ADD10R,0.1X0.1*%\nD10*\nX0Y0D03*\nM02*")
    assert "line 2" in refused.value.where
