"""Pairs of brakes, bearing, arms and joints in the written jobs."""

from __future__ import annotations

from demo_shop.job_story import Measured, PairStory
from demo_shop.people import HARBOUR, MILL, NORTH

M = Measured

FRONT_BEARING = (
    PairStory(
        "wheel-bearing-hub", "fits",
        (
            M("outer-diameter", "72.01; 72.00; 72.01", "72.00; 72.01; 72.00"),
            M("inner-diameter", "36.01; 36.00", "36.00; 36.01"),
            M("width", "34.02; 34.00; 34.01", "34.00; 34.01; 34.01"),
            M("encoder", "inboard", "inboard", first=("inboard", "outboard", "")),
            M("rim-play", "0.92; 0.90; 0.91", "0.04; 0.05; 0.04"),
        ),
        position="front right", supplier=NORTH, number_on_box="N-22-310",
        seen_old=("growls", "pitted race"),
        note_new="Pressed in the wrong way round first; the bay proof showed it.",
    ),
)  # fmt: skip


def _disc(old_thickness: str, spread: str, **values: object) -> PairStory:
    measured = (
        M("thickness", old_thickness, "28.000; 28.002; 28.001"),
        M("thickness-spread", spread, "0.004; 0.005; 0.004"),
        M("outer-diameter", "280; 280", "280; 280"),
        M("hat-height", "46.02; 46.00; 46.01", "46.01; 46.00; 46.02"),
        M("centre-bore", "64.01; 64.00; 64.01", "64.00; 64.01; 64.01"),
        M("bolt-holes", "5", "5"),
        M("vanes", "straight", "straight"),
    )
    return PairStory("brake-disc", "fits", measured, position="front left", supplier=MILL,
                     number_on_box="ML-4028", **values)  # type: ignore[arg-type]  # fmt: skip


DISC_AND_PADS = (
    _disc("25.101; 25.098; 25.104", "0.062; 0.060; 0.061", seen_old=("thickness variation",),
          views=("face",),
          old={"thickness": 25.1, "outside-diameter": 280.0, "hat-height": 46.0},
          new={"thickness": 28.0, "outside-diameter": 280.0, "hat-height": 46.0}),
    PairStory(
        "brake-pads", "fits",
        (
            M("lining-thickness", "4.02; 4.00; 4.03", "11.01; 11.00; 11.02"),
            M("plate-length", "104.0; 104.02; 104.01", "104.0; 104.01; 104.02"),
            M("plate-height", "52.0; 52.02; 52.01", "52.01; 52.0; 52.02"),
            M("ear-width", "12.01; 12.00; 12.00", "12.00; 12.01; 12.00"),
            M("pads", "4", "4"),
            M("wear-sensor", "none", "none"),
        ),
        position="front", supplier=MILL, number_on_box="ML-4029",
        seen_old=("glazed",), views=("edge",),
        old={"lining-thickness": 4.0, "pad-length": 104.0},
        new={"lining-thickness": 11.0, "pad-length": 104.0},
    ),
)  # fmt: skip
SECOND_DISCS = (
    _disc("27.702; 27.700; 27.701", "0.048; 0.050; 0.049", seen_old=("thickness variation",)),
)


def _arm(shape: str, **values: object) -> PairStory:
    measured = (
        M("taper", "16.51; 16.50; 16.50", "16.50; 16.51; 16.50"),
        M("thread", "M12x1.25", "M12x1.25"),
        M("bush-hole", "12.02; 12.01; 12.01", "12.01; 12.02; 12.01"),
        M("bush-to-joint", "342; 342; 342", "342; 342; 342"),
        M("shape", "bends left", shape),
        M("play", "1.80; 1.82; 1.79", "0.02; 0.01; 0.02"),
    )
    return PairStory("control-arm-ball-joint", measured=measured, position="front left",
                     supplier=NORTH, number_on_box="N-18-551-L",
                     seen_old=("loose joint", "torn boot"), **values)  # type: ignore[arg-type]  # fmt: skip


CONTROL_ARMS = (
    _arm("bends right", verdict="stop and look", fitted=False, fate="sent back",
         note_new="A right arm in the left box: it looks mirrored."),
    _arm("bends left", verdict="fits"),
)  # fmt: skip

TIE_ROD_END = (
    PairStory(
        "tie-rod-end", "fits",
        (
            M("thread", "M14x1.5 left", "M14x1.5 left"),
            M("length", "92; 92; 92", "92; 92; 92"),
            M("taper", "14.60; 14.61; 14.60", "14.61; 14.60; 14.60"),
            M("play", "1.20; 1.22; 1.21", "0.02; 0.01; 0.01"),
            M("pin-hole", "yes", "yes"),
        ),
        position="outer right", supplier=HARBOUR, number_on_box="HB-5507",
        seen_old=("loose", "torn boot"), views=("side",),
    ),
)  # fmt: skip
