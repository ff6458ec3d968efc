"""The written jobs of April and May: not caught, two faults at once, discs, sublet, a used part."""

from __future__ import annotations

from demo_shop.job_story import JobStory
from demo_shop.pairs_engine import AIR_METER, PUMP_MODULE, PUMP_RELAY, SWEET_HOSE
from demo_shop.pairs_ignition import CITY_COIL, TRACKED_CAP
from demo_shop.pairs_running_gear import CONTROL_ARMS, DISC_AND_PADS

JOBS = (
    JobStory(
        "8-first", "saloon-8", "04-03 14:10", "04-04 11:30", 133_010, None,
        "Turns but won't catch after a fuel stop, maybe once a week. Then it starts as if nothing "
        "had happened.",
        "fuel", "Did not happen in 18 miles with two fuel stops; that is 93 % luck and no proof.",
        "", "Marek", 1.0, 0, 0, "18 miles, two restarts at the pump; it did not happen.", 18.0,
        "Told in writing: nothing was repaired and it will happen again. A recorder is lent.",
        happens=("just-filled", "restart-hot", "random"), caught=False,
        findings=("Recorder left in the car with the customer's consent",), search_hours=1.0,
    ),
    JobStory(
        "8", "saloon-8", "04-20 08:00", "04-22 16:50", 133_420, 133_470,
        "It did it again at the pump: turns but won't catch. Your recorder was running.",
        "fuel",
        "The check valve in the fuel pump leaks down: pressure gone ten minutes after switching "
        "off, shown by the recorder and by a gauge.",
        "Fuel pump module replaced.",
        "Marek", 2.3, 48_700, 4, "Ten restarts at the pump over two days.", 50.0,
        happens=("just-filled", "restart-hot"), codes=("P0087",), says_same=True,
        findings=("Pressure falls to 40 kPa in 10 minutes, both lines clamped",),
        pairs=PUMP_MODULE, search_hours=0.9, proved="Tuuli",
    ),
    JobStory(
        "9a", "compact-9", "04-06 09:20", "04-07 17:30", 126_488, 126_500,
        "It misses in the wet, mostly pulling away.",
        "ignition", "Cap tracked between two towers, a hairline crack beside it.",
        "Distributor cap renewed; the rotor is as it should be.",
        "Tuuli", 0.9, 9_800, 4, "Wet road and a hill, counters at zero.", 12.0,
        happens=("rain", "pulling"), codes=("P0300",),
        findings=("Carbon track and hairline crack in the cap",), pairs=TRACKED_CAP,
    ),
    JobStory(
        "9b", "compact-9", "04-06 09:20", "04-07 17:30", 126_488, 126_500,
        "There is a sweet smell too, and I have to add water.",
        "cooling", "Pinhole in the upper coolant hose, spraying onto the cap.",
        "Upper coolant hose renewed, coolant filled and bled.",
        "Sanne", 0.7, 7_900, 1, "Pressure held for five minutes cold; not driven hot.", None,
        happens=("hot",), findings=("Dried coolant on the cap and the hose",),
        same_visit="9a", pairs=SWEET_HOSE,
    ),
    JobStory(
        "10", "family-van", "04-13 08:30", "04-14 16:00", 69_308, 69_320,
        "The wheel shakes when braking from the motorway, pulsing pedal too.",
        "brakes", "Front discs differ by 0.06 mm around the face.",
        "Front discs and pads renewed.",
        "Marek", 2.0, 38_900, 2, "Twelve gentle stops on an empty road.", 12.0,
        happens=("braking", "high-speed"), never=("idle",),
        findings=("Thickness spread 0.06 mm at eight places",), pairs=DISC_AND_PADS,
    ),
    JobStory(
        "11", "saloon-11", "04-20 10:15", "04-21 15:25", 87_988, 88_000,
        "A clunk over bumps, front left, slow roads.",
        "suspension", "Lower ball joint left has 1.8 mm of play.",
        "Left control arm replaced. The first one lay in the left box but was a right one; it was "
        "stopped on the bench and the left one came the next day.",
        "Tuuli", 1.9, 26_300, 4, "Cobbles and bumps of the customer's own road; quiet.", 12.0,
        happens=("bump", "low-speed"), findings=("Play 1.8 mm at the joint by pry bar and dial",),
        pairs=CONTROL_ARMS,
    ),
    JobStory(
        "12", "pickup-12", "04-22 09:30", "04-28 17:00", 151_884, 151_900,
        "Slams from second to third when hot, hangs in gear before.",
        "transmission", "Clutch pack for third worn out; metal in the pan.",
        "Gearbox rebuilt by a gearbox specialist as sublet work; their promise is 12 months.",
        "Odile", 5.5, 214_000, 2, "16 miles with hot shifts.", 16.0,
        happens=("hot", "shifting"), codes=("P0731",),
        findings=("Clutch lining in the pan", "Pressure low in third"),
    ),
    JobStory(
        "13", "city-car", "05-05 08:50", "05-06 12:10", 84_401, 84_410,
        "It misses when pulling, worst with four of us in it.",
        "ignition", "Coil 2 breaks down under load, shown by the oscilloscope.",
        "Coil 2 renewed, lot L-2417.",
        "Marek", 0.6, 11_200, 2, "9 miles with two aboard.", 9.0,
        happens=("pulling", "passengers"), codes=("P0302",), pairs=CITY_COIL,
    ),
    JobStory(
        "14", "diesel", "05-11 13:00", "05-12 17:20", 197_574, 197_600,
        "Gutless up hills, no poke at all any more.",
        "intake", "Air meter under-reads at load: 18 g/s where 31 were reckoned.",
        "Air meter replaced by a used one as agreed.",
        "Tuuli", 1.0, 9_900, 3, "Hill with full load; the reading follows what was reckoned.", 26.0,
        happens=("pulling",), codes=("P0101",), pairs=AIR_METER,
    ),
    JobStory(
        "15", "saloon-15", "05-18 09:40", "05-19 14:00", None, None,
        "Dies on bumps, lost everything once, and then it catches again by itself.",
        "fuel", "Pump relay contacts burned: 0.9 V lost across them, more when tapped.",
        "Pump relay replaced, 0.03 V across the new one.",
        "Sanne", 0.8, 7_300, 3, "Rough road with all loads on, 15 miles by the map.", 15.0,
        happens=("bump", "rough"), codes=("P0230",), unread="display dead",
        findings=("Stalls when the relay is tapped",), pairs=PUMP_RELAY,
    ),
    JobStory(
        "16", "hybrid", "05-26 08:15", "05-27 16:40", 46_206, 46_210,
        "Dead in the morning every Monday, needs a jump start.",
        "charging", "0.35 A drawn at rest: the glove-box lamp stays lit. 12-volt side only.",
        "Lamp switch renewed.",
        "Marek", 1.5, 15_100, 1, "Lamp goes out; the draw was not measured again after sleep.",
        None, happens=("after-standing",),
        findings=("0.35 A after 40 minutes of rest", "High-voltage side not touched"),
    ),
)  # fmt: skip
