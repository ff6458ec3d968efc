"""The cars that are in the shop now: one half-way, one looked at, one perhaps a return."""

from __future__ import annotations

from demo_shop.job_story import JobStory, Measured, PairStory
from demo_shop.people import HARBOUR, MILL, NORTH

M = Measured

HALF_MEASURED_ROTOR = PairStory(
    "distributor-rotor", "not enough measured",
    (
        M("tip-radius", "26.71; 26.70; 26.72", "27.44; 27.46"),
        M("tip-protrusion", "3.92; 3.93", "4.65; 4.64"),
        M("bore", "12.70; 12.70", ""),
    ),
    origin=None, supplier=HARBOUR, number_on_box="HB-2041", seen_old=("burned tip",), fate="",
    views=("top",), on_card=("top",),
    old={"tip-radius": 26.71, "tip-protrusion": 3.92, "bore-diameter": 12.70},
    new={"tip-radius": 27.45, "tip-protrusion": 4.65, "bore-diameter": 12.70},
)  # fmt: skip

SQUEALING_BELT = PairStory(
    "serpentine-belt", "fits",
    (
        M("ribs", "6", "6"),
        M("length", "1735; 1735; 1735", "1735; 1735; 1735"),
        M("width", "20.5; 20.6; 20.5", "20.6; 20.5; 20.6"),
        M("rib-pitch", "3.56; 3.57", "3.56; 3.56"),
        M("rib-depth", "1.7; 1.7; 1.8", "2.3; 2.3; 2.3"),
    ),
    supplier=MILL, number_on_box="ML-6PK", seen_old=("glazed", "cracked ribs"),
    views=("ribs",), old={"ribs": 6, "rib-depth": 1.7}, new={"ribs": 6, "rib-depth": 2.3},
)  # fmt: skip

WORN_PADS = PairStory(
    "brake-pads", "not enough measured", origin=None, supplier=NORTH, number_on_box="N-44-090",
    position="front", seen_old=("worn to the plate",), fate="", views=("edge",),
    old={"lining-thickness": 1.4}, new={"lining-thickness": 11.0},
)  # fmt: skip

TIRED_BATTERY = PairStory(
    "battery", "fits",
    (
        M("length", "242; 242; 242", "242; 242; 242"),
        M("width", "175; 175; 175", "175; 175; 175"),
        M("height", "190; 190; 190", "190; 190; 190"),
        M("positive-side", "right", "right"),
        M("ledge", "long sides", "long sides"),
        M("type", "flooded", "flooded"),
        M("vent", "none", "none"),
    ),
    supplier=MILL, number_on_box="ML-B60", lot="M-0826", fate="sent back as scrap",
)  # fmt: skip

JOBS = (
    JobStory(
        "battery", "estate", "09-10 08:30", "09-10 11:40", 169_980, 169_980,
        "Turns slowly on the first start of the morning, nearly flat after a weekend.",
        "charging",
        "Battery at a third of its rating; draw at rest 0.02 A, alternator as it should be.",
        "Battery renewed, clock and window lift learned again.",
        "Sanne", 0.5, 14_800, 2, "Started three times, volts and draw measured.", 5.0,
        happens=("first-start", "after-standing"), pairs=(TIRED_BATTERY,),
        findings=("12.1 V after a night of rest", "A third of its rated current by the tester"),
    ),
    JobStory(
        "belt", "minivan-now", "08-20 08:15", "08-20 15:20", 96_402, 96_408,
        "Squeals from the front of the engine when it is cold, shrieks in the wet.",
        "belt-drive", "Belt glazed and cracked across the ribs.",
        "Belt renewed; the tensioner was looked at and left.",
        "Marek", 0.7, 8_900, 2, "6 miles and a wet start.", 6.0,
        happens=("cold", "rain"), pairs=(SQUEALING_BELT,),
    ),
    JobStory(
        "hatch-now", "hatch-now", "back2 09:10", "", 143_772, None,
        "It misses when it is damp, worst uphill, and it coughs before it is warm.",
        "ignition", technician="Tuuli", happens=("damp", "pulling", "cold"), never=("hot",),
        codes=("P0300",),
        findings=("Rotor tip burned back", "Cap looks clean; still to be measured"),
        pairs=(HALF_MEASURED_ROTOR, PairStory("distributor-cap", "not enough measured",
                                              origin=None, supplier=HARBOUR, fate="")),
    ),
    JobStory(
        "estate-now", "estate-now", "back1 08:20", "", 61_950, None,
        "Brakes squeal and it is metal on metal when I stop.",
        "brakes", technician="Marek", happens=("braking",), findings=("Front pads down to 1.4 mm",),
        pairs=(WORN_PADS,),
    ),
    JobStory(
        "minivan-now", "minivan-now", "back1 16:10", "", 97_390, None,
        "It squeals again when it is cold, you did the belt in summer.",
        "belt-drive", technician="", happens=("cold",), says_same=True,
    ),
)  # fmt: skip
