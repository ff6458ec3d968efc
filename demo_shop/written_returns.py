"""What was decided about the written returns: the judgement, why it came back, and the cost."""

from __future__ import annotations

from demo_shop.job_story import ReturnStory

RETURNS = (
    ReturnStory("2", "2-back", "foretold", "new",
                "Lead 3 was declined in writing and did what we had said.", "04-13 12:50"),
    ReturnStory("3", "3-back", "same part", "part-died-early",
                "The customer's own coil died; told and signed before.", "03-30 11:20", 4_500),
    ReturnStory("5", "5-back", "same part", "part-died-early",
                "The remanufactured alternator lost a diode after 47 days.", "05-05 16:20", 13_000,
                "Ripple is measured on every remanufactured alternator before it leaves."),
    ReturnStory("7", "7-later", "unrelated", "new",
                "Wiper blades; the heater works.", "04-21 12:45"),
    ReturnStory("8-first", "8", "foretold", "unknown",
                "Nothing was repaired the first time: told in writing that it would happen again.",
                "04-22 17:00"),
    ReturnStory("9b", "9b-back", "same symptom", "fitted-badly",
                "The clamp sat beside the bead of the new hose.", "04-13 13:40", 3_000,
                "A new hose is driven hot and looked at again before the car leaves."),
    ReturnStory("10", "10-back", "same symptom", "fitted-badly",
                "Rust left on the hub; run-out 0.09 mm.", "06-12 15:20", 29_500,
                "Hubs are cleaned and run-out is measured with every disc."),
    ReturnStory("10-back", "10-again", "same symptom", "wrong-place",
                "The discs were good this time; the arm bush was torn.", "07-14 17:10", 21_000),
    ReturnStory("10", "10-again", "same symptom", "wrong-place",
                "The same shake all along; it hangs on the repair between.", "07-14 17:15"),
    ReturnStory("12", "12-back", "same system", "sublet",
                "The specialist's seal was cut; they pay, tow and loan car are ours.",
                "07-17 16:30", 24_000),
    ReturnStory("13", "13-back", "same symptom", "not-the-whole",
                "Plug gap 1.5 mm left in; the coil had to reach too far.", "07-21 12:40", 8_800,
                "Plugs are measured whenever a coil is renewed."),
    ReturnStory("14", "14-back", "same part", "part-died-early",
                "The used air meter died early; distance unknown, the cluster was replaced.",
                "07-15 11:50", 5_400),
    ReturnStory("16", "16-back", "same symptom", "not-the-whole",
                "A second draw; left unproven: it was not measured again after sleep.",
                "06-09 16:40", 10_800, "Draw is measured again after an hour of rest."),
    ReturnStory("17", "17-back", "same symptom", "left-unproven",
                "The leak test had not run; the vent valve stayed open.", "06-09 14:30", 11_900),
    ReturnStory("18", "18-later", "other hands", "other-use",
                "Another shop set the toe on 20 July; paper seen.", "07-31 14:20"),
    ReturnStory("19", "19-back", "from our hands", "fitted-badly",
                "The lower ring was nicked when we fitted it.", "08-04 17:05", 31_000,
                "Rings go on with the fitting sleeve only."),
)  # fmt: skip

# The lines that were repaired and handed over, each with a window of its own.
ROOTS = (
    *("1", "2", "3", "4", "5", "6", "7", "8", "9a", "9b", "10", "11", "12", "13", "14", "15"),
    *("16", "17", "18", "19", "20"),
)
