"""Pairs of ignition parts in the written jobs: caps, rotors, coils, plugs, leads."""

from __future__ import annotations

from demo_shop.job_story import CUSTOMERS, NEW_MAKER, Measured, PairStory
from demo_shop.people import HARBOUR, MILL, NORTH

M = Measured

FIRST_CAP_AND_ROTOR = (
    PairStory(
        "distributor-rotor", "fits",
        (
            M("tip-radius", "26.90; 26.91; 26.89", "27.45; 27.44; 27.46"),
            M("tip-protrusion", "4.10; 4.12; 4.11", "4.65; 4.66; 4.64"),
            M("bore", "12.70; 12.70", "12.70; 12.70"),
            M("seat-depth", "18.02; 18.04", "18.05; 18.03"),
            M("tip-height", "24.31; 24.28; 24.30", "24.33; 24.30; 24.32"),
            M("tip-angle", "90; 90; 90", "90; 90; 90"),
            M("fixing-holes", "0", "0"),
        ),
        supplier=HARBOUR, number_on_box="HB-2041", number_on_part="HB-2041",
        seen_old=("burned tip", "corroded terminal", "heat-browned"),
        note_old="The tip is burned back at its trailing edge.",
        views=("top", "side"),
        old={"tip-radius": 26.90, "tip-protrusion": 4.11, "bore-diameter": 12.70},
        new={"tip-radius": 27.45, "tip-protrusion": 4.65, "bore-diameter": 12.70},
    ),
    PairStory(
        "distributor-cap", "fits",
        (
            M("towers", "4", "4"),
            M("terminal-radius", "28.26; 28.24; 28.25", "28.25; 28.24; 28.26"),
            M("terminal-height", "22.42; 22.40; 22.41", "22.40; 22.43; 22.41"),
            M("button-length", "7.20; 7.22; 7.21", "8.62; 8.60; 8.61"),
            M("rim-diameter", "64.98; 65.00; 64.99", "65.00; 65.01; 64.99"),
            M("tower-one-angle", "30; 30; 30", "30; 30; 30"),
            M("vents", "1", "1"),
            M("tower-form", "female", "female"),
        ),
        supplier=HARBOUR, number_on_box="HB-1187", number_on_part="HB-1187",
        seen_old=("corroded terminal", "burned terminal"), views=("inside",),
        old={"terminal-inner-radius": 28.25, "spigot-diameter": 65.0,
             "centre-button-length": 7.21},
        new={"terminal-inner-radius": 28.25, "spigot-diameter": 65.0,
             "centre-button-length": 8.61},
    ),
)  # fmt: skip

TRACKED_CAP_AND_ROTOR = (
    PairStory(
        "distributor-cap", "fits",
        (
            M("towers", "4", "4"),
            M("terminal-radius", "29.51; 29.49; 29.50", "29.50; 29.52; 29.51"),
            M("terminal-height", "20.12; 20.10; 20.11", "20.10; 20.11; 20.13"),
            M("rim-diameter", "68.02; 68.00; 68.01", "68.01; 68.02; 68.00"),
            M("tower-one-angle", "45; 45; 45", "45; 45; 45"),
        ),
        supplier=MILL, number_on_box="ML-733", seen_old=("carbon tracking",),
        note_old="The track runs from tower 2 to tower 3.", views=("inside",),
        old={"terminal-inner-radius": 29.50, "spigot-diameter": 68.0},
        new={"terminal-inner-radius": 29.50, "spigot-diameter": 68.0},
    ),
    PairStory(
        "distributor-rotor", "fits",
        (
            M("tip-radius", "28.30; 28.31; 28.29", "28.70; 28.69; 28.71"),
            M("bore", "14.00; 14.00", "14.00; 14.00"),
            M("tip-height", "21.10; 21.12; 21.11", "21.12; 21.13; 21.10"),
            M("tip-angle", "120; 120; 120", "120; 120; 120"),
        ),
        supplier=MILL, number_on_box="ML-734", seen_old=("burned tip",),
    ),
)  # fmt: skip

TRACKED_CAP = (
    PairStory(
        "distributor-cap", "fits",
        (
            M("towers", "4", "4"),
            M("terminal-radius", "28.25; 28.26; 28.25", "28.26; 28.24; 28.25"),
            M("terminal-height", "22.41; 22.42; 22.40", "22.39; 22.41; 22.40"),
            M("button-length", "7.80; 7.82; 7.81", "8.60; 8.61; 8.62"),
            M("rim-diameter", "65.00; 64.99; 65.01", "65.01; 65.00; 64.99"),
            M("tower-one-angle", "30; 30; 30", "30; 30; 30"),
        ),
        supplier=NORTH, number_on_box="N-50-118",
        seen_old=("carbon tracking", "cracked"),
    ),
)  # fmt: skip

COLD_MORNING_CAP_AND_ROTOR = (
    PairStory(
        "distributor-rotor", "fits",
        (
            M("tip-radius", "26.62; 26.64; 26.63", "27.44; 27.45; 27.46"),
            M("tip-protrusion", "3.84; 3.86; 3.85", "4.66; 4.65; 4.65"),
            M("bore", "12.70; 12.70", "12.70; 12.70"),
            M("tip-height", "24.30; 24.32; 24.31", "24.31; 24.30; 24.33"),
            M("tip-angle", "90; 90; 90", "90; 90; 90"),
        ),
        supplier=HARBOUR, number_on_box="HB-2041",
        seen_old=("burned tip", "heat-browned"), views=("top",),
        old={"tip-radius": 26.63, "tip-protrusion": 3.85, "bore-diameter": 12.70},
        new={"tip-radius": 27.45, "tip-protrusion": 4.65, "bore-diameter": 12.70},
    ),
    PairStory(
        "distributor-cap", "fits",
        (
            M("towers", "4", "4"),
            M("terminal-radius", "28.25; 28.24; 28.26", "28.26; 28.25; 28.25"),
            M("terminal-height", "22.40; 22.41; 22.42", "22.41; 22.40; 22.42"),
            M("button-length", "5.10; 5.12; 5.11", "7.95; 7.96; 7.94"),
            M("rim-diameter", "65.00; 65.01; 65.00", "64.99; 65.00; 65.01"),
            M("tower-one-angle", "30.5; 30.5; 30.0", "31.0; 30.5; 31.0", "photo",
              ("30; 31", "32; 33", "protractor")),
        ),
        supplier=HARBOUR, number_on_box="HB-1187",
        seen_old=("worn button", "corroded terminal"),
        note_new="The mark of tower 1 is moulded beside it; the photo from above settled it.",
        views=("inside",),
        old={"terminal-inner-radius": 28.25, "spigot-diameter": 65.0,
             "centre-button-length": 5.11},
        new={"terminal-inner-radius": 28.25, "spigot-diameter": 65.0,
             "centre-button-length": 7.95},
    ),
)  # fmt: skip


def _coil(**values: object) -> PairStory:
    measured = (
        M("pins", "3", "3"),
        M("connector-key", "top", "top"),
        M("stem-length", "112.0; 112.0", "112.0; 112.0"),
        M("hole-centres", "28.02; 28.00", "28.01; 28.03"),
    )
    return PairStory("ignition-coil", "fits", measured, **values)  # type: ignore[arg-type]


COIL_CUSTOMERS_OWN = (
    _coil(position="cylinder 3", origin=CUSTOMERS, seen_old=("breaks down hot",),
          note_new="Date code unreadable.", views=("side",),
          old={"stem-length": 112.0}, new={"stem-length": 112.0}),
)  # fmt: skip
COIL_OURS = (
    _coil(position="cylinder 3", supplier=HARBOUR, number_on_box="HB-3310",
          seen_old=("breaks down hot",)),
)  # fmt: skip
CITY_COIL = (
    _coil(position="cylinder 2", supplier=NORTH, lot="L-2417", number_on_box="N-31-402",
          seen_old=("breaks down hot",)),
)  # fmt: skip

LEFT_IN_PLUGS = (
    PairStory(
        "spark-plug", "fits",
        (
            M("thread", "M14x1.25", "M14x1.25"),
            M("reach", "19.02; 19.00; 19.01", "19.00; 19.01; 19.02"),
            M("seat", "washer", "washer"),
            M("hex", "16.00; 15.98", "15.99; 16.00"),
            M("gap", "1.50; 1.50; 1.50", "1.00; 1.00; 1.00"),
            M("centre-electrode", "1.05; 1.06; 1.04", "1.60; 1.61; 1.60"),
            M("plugs", "4", "4"),
        ),
        position="all four", supplier=MILL, number_on_box="ML-9014",
        seen_old=("worn electrode",), views=("tip",),
        old={"gap": 1.5, "centre-electrode-length": 1.05},
        new={"gap": 1.0, "centre-electrode-length": 1.6},
    ),
)  # fmt: skip

SET_OF_LEADS = (
    PairStory(
        "plug-wire", "fits",
        (
            M("leads", "4", "4"),
            M("length", "520; 521", "520; 520"),
            M("plug-boot", "straight", "straight"),
            M("cap-boot", "elbow", "elbow"),
        ),
        position="set", origin=NEW_MAKER, supplier=HARBOUR, number_on_box="HB-6120",
        seen_old=("chafed", "open circuit"), views=("jacket",),
    ),
)  # fmt: skip
