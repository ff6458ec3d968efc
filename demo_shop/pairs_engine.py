"""Pairs of engine parts in the written jobs: sensors, alternators, pump, meter, relay."""

from __future__ import annotations

from demo_shop.job_story import NEW_MAKER, REMAN, USED, Measured, PairStory
from demo_shop.people import HARBOUR, MILL, NORTH

M = Measured


def _sensor(length: str, **values: object) -> PairStory:
    measured = (
        M("body-length", "29.01; 29.00; 29.02", length),
        M("body-diameter", "17.90; 17.91; 17.90", "17.90; 17.89; 17.90"),
        M("hole-to-axis", "22.01; 22.00", "22.00; 22.02"),
        M("pins", "3", "3"),
        M("connector-key", "left", "left"),
    )
    return PairStory("crank-cam-sensor", measured=measured, supplier=HARBOUR,
                     number_on_box="HB-8802", seen_old=("weak when hot",),
                     **values)  # type: ignore[arg-type]  # fmt: skip


CRANK_SENSORS = (
    _sensor("32.01; 32.00; 32.02", verdict="stop and look", fitted=False, fate="sent back",
            note_new="Wrong part in the right box: the body is 3 mm longer.", views=("side",),
            old={"body-length": 29.0, "body-diameter": 17.9},
            new={"body-length": 32.0, "body-diameter": 17.9}),
    _sensor("29.00; 29.01; 29.02", verdict="fits"),
)  # fmt: skip


def _alternator(angle: str, **values: object) -> PairStory:
    measured = (
        M("ear-spacing", "182.0; 182.02; 182.01", "182.02; 182.0; 182.01"),
        M("grooves", "6", "6"),
        M("pulley-diameter", "56.01; 56.02; 56.00", "56.00; 56.01; 56.02"),
        M("pulley-line", "38.52; 38.50; 38.51", "38.50; 38.53; 38.51"),
        M("plug-angle", "60; 61; 60", angle),
        M("rated-current", "120", "120"),
    )
    return PairStory("alternator", measured=measured, origin=REMAN, supplier=MILL,
                     seen_old=("open diode",), **values)  # type: ignore[arg-type]  # fmt: skip


REMAN_ALTERNATORS = (
    _alternator("95; 95; 96", verdict="stop and look", fitted=False, fate="sent back",
                number_on_box="ML-R-220", note_new="Plug stands at 95° instead of 60°."),
    _alternator("60; 60; 61", verdict="fits", number_on_box="ML-R-220", lot="R-0316",
                fate="core sent back, 60.00 owed"),
)  # fmt: skip
SECOND_ALTERNATOR = (
    _alternator("61; 60; 60", verdict="fits", number_on_box="ML-R-220", lot="R-0429",
                fate="core credited"),
)  # fmt: skip

THERMOSTAT = (
    PairStory(
        "thermostat", "fits",
        (
            M("flange-diameter", "54.00; 54.02; 54.01", "54.01; 54.00; 54.02"),
            M("flange-thickness", "1.60; 1.61; 1.60", "1.61; 1.60; 1.60"),
            M("stamped-temperature", "88", "88"),
            M("jiggle-pin", "none", "12"),
        ),
        supplier=HARBOUR, number_removed="HB-4470", number_on_box="HB-4470-2",
        seen_old=("stuck open",),
        explained=(("jiggle-pin", "the number that follows it has a jiggle pin and another seal",
                    "Harbour's letter"),),
        views=("side",),
        old={"flange-diameter": 54.0, "lift-cold": 4.5},
        new={"flange-diameter": 54.0, "lift-cold": 0.0},
    ),
)  # fmt: skip

PUMP_MODULE = (
    PairStory(
        "fuel-pump", "fits",
        (
            M("height", "210; 210; 210", "210; 210; 210"),
            M("ports", "2", "2"),
            M("pins", "4", "4"),
            M("float-arm", "left", "left"),
        ),
        origin=NEW_MAKER, supplier=NORTH, number_on_box="N-70-020",
        seen_old=("check valve leaks",),
    ),
)  # fmt: skip

SWEET_HOSE = (
    PairStory(
        "coolant-hose", "fits",
        (
            M("bore-one", "32.1; 32.0; 32.0", "32.0; 32.1; 32.0"),
            M("bore-two", "32.0; 32.0; 32.1", "32.0; 32.0; 32.1"),
            M("length", "410; 411", "410; 410"),
            M("bends", "as drawn", "as drawn"),
            M("branches", "0", "0"),
        ),
        position="upper", supplier=MILL, number_on_box="ML-5580",
        seen_old=("pinhole",),
    ),
)  # fmt: skip


def _meter(**values: object) -> PairStory:
    measured = (
        M("tube-bore", "62.01; 62.00; 62.00", "62.00; 62.01; 62.00"),
        M("element-depth", "44.02; 44.00; 44.01", "44.01; 44.00; 44.02"),
        M("pins", "5", "5"),
        M("flow-arrow", "left", "left"),
    )
    return PairStory("maf-sensor", "fits", measured, seen_old=("reads low under load",),
                     **values)  # type: ignore[arg-type]  # fmt: skip


AIR_METER = (_meter(origin=USED, supplier=NORTH),)
SECOND_AIR_METER = (_meter(origin=NEW_MAKER, supplier=HARBOUR),)

PUMP_RELAY = (
    PairStory(
        "relay", "fits",
        (
            M("pins", "4", "4"),
            M("pin-layout", "30-85-86-87", "30-85-86-87"),
            M("coil-resistance", "82.1; 82.3; 82.2", "84.0; 84.1; 84.2"),
            M("contact-rating", "30", "30"),
            M("contact", "normally open", "normally open"),
            M("contact-drop", "0.90; 0.92; 0.89", "0.03; 0.03; 0.03"),
        ),
        supplier=MILL, number_on_box="ML-0115",
        seen_old=("burned contacts", "works when tapped"),
    ),
)  # fmt: skip

FILLER_SEAL = (
    PairStory(
        "gasket-seal-oring", "fits",
        (
            M("inner-diameter", "52.1; 52.0; 52.0", "52.0; 52.1; 52.0"),
            M("cord", "3.10; 3.11; 3.10", "3.50; 3.51; 3.50"),
            M("holes", "0", "0"),
        ),
        position="filler cap", supplier=MILL, seen_old=("flattened",),
    ),
)  # fmt: skip
VENT_VALVE = (
    PairStory(
        "gasket-seal-oring", "fits",
        (
            M("inner-diameter", "14.0; 14.0; 14.1", "14.0; 14.1; 14.0"),
            M("holes", "0", "0"),
        ),
        position="vent valve", origin=NEW_MAKER, supplier=HARBOUR,
    ),
)  # fmt: skip

INJECTOR = (
    PairStory(
        "injector", "fits",
        (
            M("ring-length", "62.50; 62.51; 62.50", "62.51; 62.50; 62.50"),
            M("upper-ring", "14.00; 14.01; 14.00", "14.01; 14.00; 14.00"),
            M("lower-ring", "7.60; 7.61; 7.60", "7.60; 7.60; 7.61"),
            M("coil-resistance", "1.8; 1.8; 1.8", "1.8; 1.8; 1.8"),
            M("connector", "two pins, flat", "two pins, flat"),
            M("code", "entered", "entered"),
        ),
        position="cylinder 2", origin=REMAN, supplier=NORTH, number_on_box="N-64-077",
        seen_old=("clogged",),
    ),
)  # fmt: skip
