"""The written jobs of cars that came back: each return visit, repaired again, with a new window."""

from __future__ import annotations

from demo_shop.job_story import JobStory
from demo_shop.pairs_engine import SECOND_AIR_METER, SECOND_ALTERNATOR, VENT_VALVE
from demo_shop.pairs_ignition import COIL_OURS, LEFT_IN_PLUGS, SET_OF_LEADS
from demo_shop.pairs_running_gear import SECOND_DISCS

JOBS = (
    JobStory(
        "2-back", "estate", "04-11 09:30", "04-13 12:40", 165_170, 165_171,
        "Misses in the rain again, as you said it would.",
        "ignition", "Lead 3 open at the bracket where it was chafed.",
        "Set of leads renewed.", "Marek", 0.8, 13_800, 3, "Hosed down in the yard, then 11 miles.",
        11.0, happens=("rain",), codes=("P0303",), says_same=True, pairs=SET_OF_LEADS,
    ),
    JobStory(
        "3-back", "saloon-3", "03-28 08:50", "03-30 11:10", 91_940, 91_941,
        "Shakes like a tractor again, same as before.",
        "ignition", "The coil the customer had brought is dead after 19 days.",
        "Coil 3 renewed, this time one of ours.", "Marek", 0.7, 14_900, 3,
        "The misfire test ran and passed.", 20.0, codes=("P0303",), happens=("always",),
        says_same=True, unbilled=0.3, pairs=COIL_OURS,
    ),
    JobStory(
        "5-back", "suv", "05-02 10:00", "05-05 16:10", 79_290, 79_296,
        "Battery light at night, as before.",
        "charging", "A diode of the remanufactured alternator is open after 47 days.",
        "Alternator exchanged again under its supplier's promise; claim sent to Mill for the part "
        "and 2 hours: the part was paid, the labour refused. The core is credited.",
        "Marek", 2.0, 0, 3, "Night load drive; ripple 0.04 V.", 21.0, codes=("P0622",),
        happens=("lamps-on",), says_same=True, unbilled=2.0, pairs=SECOND_ALTERNATOR,
    ),
    JobStory(
        "7-later", "pickup-7", "04-21 12:00", "04-21 12:40", 103_560, 103_560,
        "Wiper blades smear; the heater is fine now.",
        "electrical", "Wiper blades hardened by age.", "Wiper blades renewed.",
        "Sanne", 0.2, 3_100, 1, "They wipe clean.", None, happens=("rain",),
    ),
    JobStory(
        "9b-back", "compact-9", "04-13 08:10", "04-13 13:30", 126_710, 126_711,
        "Sweet smell again and a puddle under the front.",
        "cooling", "The clamp of the new hose sits beside its bead.",
        "Clamp set behind the bead; the whole circuit looked at, pressed, then driven hot.",
        "Tuuli", 0.5, 0, 3, "Pressure held for 15 minutes, driven hot, looked at next day.", 16.0,
        happens=("hot",), unbilled=0.5,
    ),
    JobStory(
        "10-back", "family-van", "06-11 08:20", "06-12 15:10", 71_800, 71_806,
        "The wheel shakes when braking again, just like in spring.",
        "brakes", "Rust left on the hub behind the disc: run-out 0.09 mm, and the disc wore to it.",
        "Hubs cleaned and measured, new discs fitted, run-out 0.02 mm.",
        "Tuuli", 2.2, 0, 2, "Six gentle stops.", 6.0, happens=("braking", "high-speed"),
        says_same=True, unbilled=2.2, pairs=SECOND_DISCS,
    ),
    JobStory(
        "10-again", "family-van", "07-13 08:05", "07-14 17:00", 73_206, 73_215,
        "It still shakes when braking, third time now.",
        "suspension", "Rear bush of the left control arm torn; the discs are as they should be.",
        "Control arm bush renewed, both sides looked at, wheels aligned.",
        "Odile", 2.8, 0, 4, "The customer's own motorway exit, eight stops from 65.", 24.0,
        happens=("braking", "high-speed"), says_same=True, unbilled=2.8,
    ),
    JobStory(
        "12-back", "pickup-12", "07-08 09:00", "07-17 16:20", 154_800, 154_822,
        "Revs flare between second and third, hangs in gear; had it towed.",
        "transmission", "A seal of the rebuilt clutch pack was cut in assembly by the specialist.",
        "Sent back to the gearbox specialist, who paid; tow and loan car ours.",
        "Odile", 1.5, 0, 3, "22 miles hot, all shifts clean.", 22.0, codes=("P0731",),
        happens=("hot", "shifting"), unbilled=1.5, brought_by="towed",
    ),
    JobStory(
        "13-back", "city-car", "07-20 11:00", "07-21 12:30", 86_610, 86_610,
        "Bought it last month. It misses when pulling; I sent you a photo of the dash.",
        "ignition", "Plug gap 1.5 mm left in: the coil was right, but not the whole of it.",
        "Four spark plugs renewed and gapped, coils measured.",
        "Tuuli", 0.7, 0, 3, "The misfire test ran and passed with four aboard.", 14.0,
        codes=("P0302",), happens=("pulling", "passengers"), says_same=True, unbilled=0.7,
        customer="Ms Overbeck-Thrush", pairs=LEFT_IN_PLUGS,
    ),
    JobStory(
        "14-back", "diesel", "07-13 14:00", "07-15 11:40", 41_000, 41_031,
        "Gutless again, no poke uphill.",
        "intake", "The used air meter under-reads after 62 days.",
        "Air meter renewed, new from the vehicle's maker.",
        "Marek", 0.9, 12_500, 3, "Hill with full load.", 31.0, codes=("P0101",),
        happens=("pulling",), says_same=True, unbilled=0.9, pairs=SECOND_AIR_METER,
    ),
    JobStory(
        "16-back", "hybrid", "06-08 07:50", "06-09 16:30", 46_520, 46_522,
        "Dead again on Monday morning, needed a jump.",
        "charging", "The tow-bar module never goes to sleep: 0.22 A at rest, beside the lamp.",
        "Tow-bar module's supply put right; 0.02 A after 60 minutes of rest, measured twice.",
        "Marek", 1.8, 0, 4, "Started on the third morning by itself.", None,
        happens=("after-standing",), says_same=True, unbilled=1.8,
    ),
    JobStory(
        "17-back", "coupe", "06-08 09:40", "06-09 14:20", 100_030, 100_041,
        "The engine lamp is on again, I had filled up on Friday.",
        "evaporative", "The vent valve does not close: the cap was only a part of it.",
        "Vent valve renewed, the car's own leak test run after a cold soak.",
        "Marek", 1.2, 0, 3, "The leak test ran and passed on the second morning.", 11.0,
        pending=("P0442",), happens=("just-filled",), says_same=True, unbilled=1.2,
        pairs=VENT_VALVE,
    ),
    JobStory(
        "18-later", "hatch-18", "07-31 10:30", "07-31 14:15", 114_200, 114_204,
        "Pulls right on straight roads since another shop set the tracking.",
        "steering",
        "Toe re-set eleven days before by another shop, paper seen; our joint has no play.",
        "Toe set again, paid.", "Tuuli", 0.8, 6_900, 3, "Straight wheel on a crowned road.", 4.0,
        happens=("high-speed",),
    ),
    JobStory(
        "19-back", "direct-19", "08-03 09:15", "08-04 16:55", 76_630, 76_636,
        "Smells of petrol under the bonnet; I left it and had it towed.",
        "fuel", "The lower ring of injector 2 was nicked in fitting and leaks. Not driven.",
        "All lower rings renewed with the fitting sleeve, pressed and looked at for an hour.",
        "Tuuli", 2.4, 0, 3, "No trace of fuel after 30 miles and the next morning.", 30.0,
        happens=("hot",), unbilled=2.4, brought_by="towed",
    ),
)  # fmt: skip
