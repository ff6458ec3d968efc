"""Short visits that tell a repair has held: the car was here for something else, and well."""

from __future__ import annotations

from demo_shop.job_story import JobStory
from desktop_app.repair_jobs.who_did_what import Work


def _seen(
    key: str, car: str, day: str, odometer: int, words: str, done: str, work: Work = "maintenance"
) -> JobStory:
    return JobStory(
        key, car, f"{day} 09:00", f"{day} 10:10", odometer, odometer, words, "",
        "Nothing was wrong.", done, "Sanne", 0.4, 5_900, 1, "Looked over.", None, work=work,
    )  # fmt: skip


JOBS = (
    _seen("1-seen", "compact-1", "06-20", 121_600, "Here for the oil. It goes well in any weather.",
          "Oil and filter changed."),
    _seen("3-seen", "saloon-3", "07-22", 95_000,
          "Bulb and washers, please. About 95,000; the display is too dim to read.",
          "Lamp bulb renewed, washers filled."),
    _seen("4-seen", "van-14", "06-30", 144_950, "Yearly look-over for the fleet; no trouble since.",
          "Looked over, washers filled.", "inspection"),
    _seen("5-seen", "suv", "08-12", 38_400, "Here for the oil; no lamp at night any more.",
          "Oil and filter changed."),
    _seen("6-seen", "hatch-6", "07-01", 62_020, "Swapping the tyres for summer ones.",
          "Tyres swapped, bolts tightened and checked again."),
    _seen("8-seen", "saloon-8", "08-05", 135_800, "Wants the levels looked at before the holiday.",
          "Levels filled up."),
    _seen("9a-seen", "compact-9", "07-20", 129_700, "Wants the levels looked at; it goes well.",
          "Levels filled up."),
    _seen("17-seen", "coupe", "09-15", 102_400,
          "My son brings it for the oil; the mileage is on the note.",
          "Oil and filter changed."),
    JobStory(
        "11-seen", "saloon-11", "08-02 18:30", "08-03 10:30", 90_950, 90_950,
        "Keys through the letter box on Sunday: please do the oil. No more noise.", "",
        "Nothing was wrong.", "Oil and filter changed.", "Sanne", 0.4, 6_400, 1,
        "Looked over.", None, work="maintenance",
    ),
)  # fmt: skip
