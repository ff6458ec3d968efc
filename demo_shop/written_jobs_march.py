"""The written jobs of March: ignition in the wet, a stopped part, a reman alternator, a bearing."""

from __future__ import annotations

from demo_shop.job_story import JobStory
from demo_shop.pairs_engine import CRANK_SENSORS, REMAN_ALTERNATORS, THERMOSTAT
from demo_shop.pairs_ignition import (
    COIL_CUSTOMERS_OWN,
    FIRST_CAP_AND_ROTOR,
    TRACKED_CAP_AND_ROTOR,
)
from demo_shop.pairs_running_gear import FRONT_BEARING

JOBS = (
    JobStory(
        "1", "compact-1", "02-27 08:20", "03-02 17:10", 118_389, 118_420,
        "It misses when it is damp and going uphill. Coughs and splutters, then it clears again.",
        "ignition",
        "Cap terminals crusted and rotor tip burned back: the spark had two gaps too many in the "
        "wet, shown by the counters 14/11/9/16 and the two old parts.",
        "Rotor and cap renewed, leads wiped and measured, shaft checked for wobble.",
        "Tuuli", 1.6, 21_400, 4,
        "Wet hill road, 31 miles, three pulls in high gear; counters stayed at zero.", 31.0,
        happens=("damp", "rain", "pulling"), never=("dry", "idle"), codes=("P0300",),
        findings=("White crust on all four cap terminals", "Rotor tip burned back and rounded",
                  "Misfire counters 14/11/9/16 on a wet road"),
        pairs=FIRST_CAP_AND_ROTOR,
    ),
    JobStory(
        "2", "estate", "03-04 09:05", "03-05 15:40", 164_036, 164_050,
        "Misses in the rain, worst on the first mile. I put a bag over it and that helped.",
        "ignition",
        "Carbon track inside the cap from tower 2 to tower 3; lead 3 is chafed at the bracket and "
        "will do the same next.",
        "Cap and rotor renewed. The leads were left as they are.",
        "Marek", 1.2, 17_900, 2, "Dry road, 14 miles.", 14.0,
        "Leads declined in writing: lead 3 is chafed and will miss in the rain within weeks.",
        happens=("rain", "first-minute"), never=("dry",), codes=("P0303",),
        findings=("Carbon track between two towers", "Lead 3 chafed to the core at the bracket"),
        pairs=TRACKED_CAP_AND_ROTOR,
    ),
    JobStory(
        "3", "saloon-3", "03-06 10:30", "03-09 12:15", 91_296, 91_300,
        "Shakes like a tractor, running on three, and the lamp blinks when I floor it.",
        "ignition",
        "Coil 3 breaks down under load: the fault moved with the coil to cylinder 1 and back.",
        "Coil 3 replaced by one the customer brought along.",
        "Tuuli", 0.8, 6_400, 3, "The misfire test ran and passed; nothing pending.", 22.0,
        "No promise on the part: the customer's own coil, date code unreadable, told and signed.",
        happens=("always", "pulling"), codes=("P0303",),
        findings=("Swapped coils 3 and 1: the fault moved; swapped back: it moved back",),
        pairs=COIL_CUSTOMERS_OWN,
    ),
    JobStory(
        "4", "van-14", "03-10 07:40", "03-12 18:05", 140_861, 140_880,
        "Dies hot on the delivery round, just shuts off with no warning. Starts after 20 minutes.",
        "engine-control",
        "Crankshaft sensor weak when hot: its signal fades above 80 °C, shown warm on the bench.",
        "Crankshaft sensor replaced. The first one from Harbour was 3 mm too long, in the right "
        "box; it was stopped before fitting and the right one came the same day.",
        "Marek", 1.4, 16_800, 4, "12 hot restarts after 10 to 30 minutes; every one at once.", 17.0,
        happens=("hot", "restart-hot", "random"), never=("cold",), codes=("P0335",),
        findings=("Signal 0.9 V cold, 0.2 V at 80 °C",),
        brought_by="one of five drivers of the fleet", pairs=CRANK_SENSORS,
    ),
    JobStory(
        "5", "suv", "03-13 11:20", "03-16 16:30", 77_232, 77_240,
        "Battery light comes on at night and the lights dim at idle.",
        "charging",
        "One open diode in the alternator: ripple 0.9 V with the night load on.",
        "Alternator exchanged. The first remanufactured one had its plug at 95° instead of 60° "
        "and was sent back; the second is like the old one. The old core is owed: 60.00.",
        "Tuuli", 2.1, 41_200, 3, "Night load drive of 25 miles; ripple 0.05 V.", 25.0,
        happens=("lamps-on", "idle"), codes=("P0622",),
        findings=("Ripple 0.9 V at 2,000 rpm with lamps and blower on",),
        pairs=REMAN_ALTERNATORS,
    ),
    JobStory(
        "6", "hatch-6", "03-20 09:00", "03-23 17:45", 58_877, 58_900,
        "Drones over 45 like an aeroplane, louder in left bends.",
        "wheels",
        "Right front wheel bearing growls under load; it gets louder when it carries the car.",
        "Bearing pressed in twice: the first time its magnetic face stood outboard, because that "
        "line of the comparison was skipped. The lamp in the bay showed it; face inboard.",
        "Marek", 3.4, 32_600, 3, "Quiet to 70, both bends; four wheel speeds alike.", 23.0,
        happens=("high-speed", "turning"), never=("braking",),
        findings=("Hub growls by hand, 0.05 mm play", "ABS lamp on in the bay after the first fit"),
        unbilled=1.1, pairs=FRONT_BEARING,
    ),
    JobStory(
        "7", "pickup-7", "03-26 08:10", "03-27 13:20", 102_686, 102_700,
        "Heater blows cold on the highway, the gauge stays low all winter.",
        "cooling",
        "Thermostat stuck open: it settles at 71 °C where 88 is stamped.",
        "Thermostat replaced by the number that follows it; another seal and a jiggle pin, as "
        "Harbour's letter says. Coolant filled and bled.",
        "Tuuli", 1.1, 14_300, 3, "Settles at 88 °C on the highway, heater hot.", 14.0,
        happens=("high-speed", "cold"), codes=("P0128",),
        findings=("Upper hose warm from the first minute",), pairs=THERMOSTAT,
    ),
)  # fmt: skip
