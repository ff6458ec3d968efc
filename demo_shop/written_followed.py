"""What followed the written jobs: promises by part kind, customers asked, money owed."""

from __future__ import annotations

from demo_shop.return_story import AskedStory, OwedStory
from desktop_app.returns_watched.kind_windows import Promise

KIND_PROMISES = {
    "battery": Promise(months=24),
    "alternator": Promise(months=12, miles=12_000),
}
# Job -> days, miles, rule and calendar months of a window of its own: a rebuilt gearbox has a
# year, and so has the work on it when it came back.
OWN_WINDOWS = {"12": (None, 12_000, "first", 12), "12-back": (None, 12_000, "first", 12)}

ASKED = (
    AskedStory("3-back", "06-25 16:40", "not reached"),
    AskedStory("3-back", "06-26 12:10", "fine", 94_600, "Runs smoothly; thanks for asking."),
    AskedStory("2-back", "07-10 16:30", "fine", 168_240, "Goes well in any weather."),
    AskedStory("9b-back", "07-10 15:40", "fine", None, "No smell and no puddle."),
    AskedStory("10-back", "07-10 15:50", "same trouble", 73_150,
               "It shakes again when braking; it comes in on Monday."),
    AskedStory("5-back", "07-31 16:20", "not reached", None, "Rang twice, nobody at home."),
    AskedStory("15", "08-14 16:00", "not reached"),
    AskedStory("15", "08-17 12:00", "not reached", None, "The number is no longer in use."),
    AskedStory("17-back", "09-04 16:30", "fine", 102_050, "Filled up often; the lamp stays out."),
    AskedStory("16-back", "09-04 16:40", "car is gone", None, "Given in exchange for another car."),
    AskedStory("12-back", "09-24 15:30", "fine", 157_000, "Shifts cleanly."),
    AskedStory("19-back", "08-28 15:30", "same trouble", 77_460,
               "It smelled of petrol again on the motorway; a shop there renewed the upper rings.",
               paper=True, dangerous=True,
               judged=("same symptom", "not-the-whole", "Their bill: the upper rings. We had "
                       "renewed the lower ones alone.", "08-31 09:20")),
    AskedStory("20", "09-21 16:10", "same trouble", 132_400,
               "On two cold mornings it missed again; I can only come after the holiday."),
    AskedStory("14-back", "09-24 15:40", "other trouble", None,
               "It pulls as it should; now the radio crackles."),
)  # fmt: skip

OWED = (
    OwedStory("5", 1, "core", 6_000, "03-16 16:40", "The old core goes back with the next van.",
              (("04-01 10:20", "asked", "Mill looks at it first."),
               ("05-05 17:00", "paid", "Credited with the next one."))),
    OwedStory("5", 1, "claim", 28_000, "05-05 16:30", "Send the part and the sheet.",
              (("05-06 09:10", "asked", "Mill tests the alternator."),
               ("06-02 11:30", "paid", "The part was paid."))),
    OwedStory("5", 1, "claim", 13_000, "05-05 16:32", "Two hours of labour; send the job sheet.",
              (("05-06 09:12", "asked", "Mill asks its maker."),
               ("06-02 11:32", "refused", "Labour is never paid, says Mill."))),
    OwedStory("5-back", 0, "core", 6_000, "05-05 16:40", "The core goes back with the next van.",
              (("06-03 09:20", "asked", "Ring Mill: its van fetched it."),)),
    OwedStory("14", 0, "claim", None, "07-15 12:00", "Send the used meter back to North.",
              (("07-20 10:10", "asked", "North measures it; what it pays is open."),)),
    OwedStory("19", 0, "core", 4_500, "07-08 17:20", "It lies boxed under the bench; send it."),
)  # fmt: skip
