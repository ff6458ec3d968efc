"""The written jobs of June to August: a filler cap, a tie-rod end, an injector, crossed leads."""

from __future__ import annotations

from demo_shop.job_story import JobStory
from demo_shop.pairs_engine import FILLER_SEAL, INJECTOR
from demo_shop.pairs_ignition import COLD_MORNING_CAP_AND_ROTOR
from demo_shop.pairs_running_gear import TIE_ROD_END

JOBS = (
    JobStory(
        "17", "coupe", "06-02 10:00", "06-03 11:20", 99_868, 99_870,
        "Engine lamp comes on after filling up, drives fine.",
        "evaporative", "The seal of the filler cap is pressed flat.",
        "Filler cap renewed.",
        "Sanne", 0.3, 4_900, 1, "Cap seals by hand pump; the car's own leak test could not run.",
        None, "Left unproven, said in writing: the leak test needs a cold soak and half a tank.",
        happens=("just-filled",), codes=("P0442",), pairs=FILLER_SEAL,
    ),
    JobStory(
        "18", "hatch-18", "06-16 09:10", "06-17 15:50", 112_291, 112_300,
        "Wanders on straight roads, loose at the wheel.",
        "steering", "Outer tie-rod end right has 1.2 mm of play.",
        "Tie-rod end renewed, toe set; the sheet is with the papers.",
        "Tuuli", 1.3, 15_700, 3, "Straight wheel on a crowned road.", 9.0,
        happens=("high-speed",), findings=("Play 1.2 mm by dial",), pairs=TIE_ROD_END,
    ),
    JobStory(
        "19", "direct-19", "07-07 08:40", "07-08 17:15", 75_635, 75_650,
        "Rough idle, shakes at lights, smooth above that.",
        "fuel", "Injector 2 clogged: a third less than its neighbours.",
        "Injector 2 renewed by a remanufactured one, its code entered, lower ring renewed.",
        "Marek", 2.6, 36_400, 3, "The misfire test ran and passed.", 15.0,
        happens=("idle", "hot"), codes=("P0302",), pairs=INJECTOR,
        search_hours=0.8, searched="Tuuli",
    ),
    JobStory(
        "20", "compact-20", "08-21 08:05", "08-24 16:35", 131_018, 131_050,
        "It misses on cold mornings until it is warm.",
        "ignition",
        "Rotor tip burned and the cap's centre button worn away: a third gap in the spark's path.",
        "Rotor and cap renewed. Leads 2 and 4 were crossed at refit; it spat back through the "
        "intake at the first start, the firing order was checked and the leads put right.",
        "Tuuli", 1.7, 22_300, 4, "Two cold starts on two mornings, counters at zero.", 32.0,
        happens=("cold", "first-start", "damp"), never=("hot",), codes=("P0300",),
        findings=("Centre button gone", "Backfire at the first start in the bay: leads crossed"),
        unbilled=0.4, pairs=COLD_MORNING_CAP_AND_ROTOR,
        search_hours=0.5, refitted="Sanne", proved="Marek",
    ),
)  # fmt: skip
