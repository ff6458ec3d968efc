"""The entries of a day at the counter, each done by a counted user, with the figure asked of it."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLineEdit, QPlainTextEdit

from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_record.record import create_shop
from tests.shop_stories.counted_user import CountedUser

MORNING = datetime(2026, 3, 2, 8, 0, tzinfo=UTC)
DAMP = "misses when damp and pulling uphill"
BEFORE = (DAMP, "misses in the rain", "brakes squeal", "clonks over bumps", "stalls when cold")
OTHER_MAKER = "new, from another maker"
CAP_POINTS = (
    "Ignition off, key out before a lead is touched.",
    "Leads moved over one at a time, or from a photo.",
    "Seal and vent are in place.",
    "Both clips snapped; screws started by fingers.",
    "Leads clear of the hot manifold and of the belt.",
)
ROTOR = (
    ("tip radius from the shaft axis", "26.62 26.64 26.63", "27.44 27.45 27.46"),
    ("bore diameter", "12.70 12.70 12.70", "12.70 12.70 12.70"),
    ("tip height above the seat", "24.30 24.32 24.31", "24.31 24.30 24.33"),
    ("tip angle from the key", "90 90 90", "90 90 90"),
)


def write_history(shop: Path) -> None:
    """Write the cars that were here 41 days ago; the first one missed in the damp."""
    record = create_shop(shop, lambda: MORNING - timedelta(days=41))
    actions.add_person(record, "Odile")
    for number, concern in enumerate(BEFORE):
        said = WriteUp(
            concern,
            plate=f"TH {1042 + number}",
            description="1.8-litre compact hatchback, 1990s",
            odometer=117_540,
            customer="A. Tester",
            phone="555 0100",
            symptoms=("misfire-random",) if "miss" in concern else (),
        )
        job = actions.write_up(record, said).made
        assert job is not None
        actions.name_cause(record, job, "tip burned back, shown by the gap")
        actions.write_correction(record, job, "rotor replaced")
        actions.hand_over(record, job, 117_540)
    record.close()


def places_of(side: str, kind: str) -> tuple[str, ...]:
    """Return where a photo of a side can be dropped: its tray, or its half of what is shown."""
    return f"photos of the {side}, {kind}", side.capitalize()


def read_the_watch(user: CountedUser) -> None:
    with user.entry("07:45", "who is under watch, whom to ring", 60, 2):
        user.click("Under Watch")
        user.click("Ask the customer")


def take_a_new_car_in(user: CountedUser) -> None:
    with user.entry("08:00", "a car that is new here is taken in", 45):
        user.shortcut(Qt.Key.Key_N)
        user.type_into(QLineEdit, "Plate", "TH 2001", enter=True)
        user.go_on("What kind of car")  # the VIN is not at hand
        user.type_into(QLineEdit, "What kind of car", "small van", enter=True)
        user.type_into(QLineEdit, "Odometer", "84210", enter=True)
        user.type_into(QPlainTextEdit, "What the customer says", "squeals when braking")
        user.go_on("Customer", Qt.Key.Key_Tab)
        user.type_into(QLineEdit, "Customer", "B. Tester", enter=True)
        user.type_into(QLineEdit, "Phone", "555 0101")
        user.shortcut(Qt.Key.Key_Return)
        user.at.bot.waitUntil(lambda: user.at.window.here() == "Job")


def take_a_known_car_in(user: CountedUser) -> None:
    with user.entry("08:00", "a car that was here before is taken in", 45):
        user.shortcut(Qt.Key.Key_N)
        user.type_into(QLineEdit, "Plate", "TH 1042", enter=True)
        assert user.at.reads("This car was here before")
        assert user.at.reads("41 days ago")
        user.type_into(QLineEdit, "Odometer", "118420", enter=True)
        user.type_into(QPlainTextEdit, "What the customer says", DAMP)
        user.shortcut(Qt.Key.Key_Return)
        user.at.bot.waitUntil(lambda: user.at.window.here() == "Job")


def say_it_is_the_same_trouble(user: CountedUser) -> None:
    with user.entry("08:03", "“it is the same trouble”, says the customer", 3, 1):
        user.shortcut(Qt.Key.Key_T)
    assert user.at.button("The customer says it is the same trouble as before").isChecked()


def see_the_earlier_job_beside_it(user: CountedUser) -> None:
    with user.entry("08:05", "it's back: the earlier job beside it", 5, 1):
        user.click("Is it J-101 again?")
        assert user.at.window.here() == "It's Back"
    assert user.at.reads("880 mi")


def save_the_codes(user: CountedUser) -> None:
    with user.entry("08:20", "it happened on the drive; codes are saved", 30):
        user.shortcut(Qt.Key.Key_2)
        user.type_into(QLineEdit, "Trouble codes, found", "P0300", enter=True)
        user.go_on("What was seen or tried")
        user.type_into(QLineEdit, "What was seen or tried", "happened, third gear", enter=True)
        user.shortcut(Qt.Key.Key_5)
        user.click("Step: Codes saved")


def ask_the_old_jobs(user: CountedUser) -> None:
    with user.entry("08:40", "the old jobs are asked in a customer's words", 40):
        user.shortcut(Qt.Key.Key_F)
        user.type_into(QLineEdit, "Ask the old jobs", DAMP)
        user.at.wait_for("What was done here before")


def photograph_the_cap(user: CountedUser, files: list[Path]) -> None:
    with user.entry("09:10", "leads before they are pulled, and both caps: three photos", 25):
        user.shortcut(Qt.Key.Key_L)
        user.type_into(QLineEdit, "Part kind", "distributor cap", enter=True)
        user.at.wait_for("not enough measured")
        for file, side in zip(files, ("removed part", "removed part", "replacement"), strict=True):
            user.drop(places_of(side, "distributor cap"), file)


def read_the_numbers(user: CountedUser) -> None:
    with user.entry("09:30", "number on box and on part, terminals counted", 60):
        user.type_into(QLineEdit, "towers, removed", "5", enter=True)
        user.type_into(QLineEdit, "towers, replacement", "5", enter=True)
        user.type_into(QLineEdit, "number on the box, distributor cap", "DC-40118", enter=True)
        user.type_into(QLineEdit, "number on the new part, distributor cap", "DC-40118")
        user.choose("origin of the new part, distributor cap", OTHER_MAKER)


def document_a_pair(user: CountedUser, files: list[Path]) -> None:
    with user.entry("09:35", "a pair: two photos, four readings of each part", 90, 12):
        user.shortcut(Qt.Key.Key_L)
        user.type_into(QLineEdit, "Part kind", "distributor rotor", enter=True)
        user.at.wait_for("Distributor rotor: not enough measured")
        for file, side in zip(files, ("removed part", "replacement"), strict=True):
            user.drop(places_of(side, "distributor rotor"), file)
        for label, old, new in ROTOR:
            user.type_into(QLineEdit, f"{label}, removed", old, enter=True)
            user.type_into(QLineEdit, f"{label}, replacement", new, enter=True)
        user.at.wait_for("Distributor rotor: fits")


def show_the_customer(user: CountedUser) -> None:
    with user.entry("09:40", "one sentence of cause, and the sheet to look at", 120):
        user.shortcut(Qt.Key.Key_2)
        user.type_into(QPlainTextEdit, "Cause", "tip burned back, shown by the gap")
        user.shortcut(Qt.Key.Key_P)
    assert user.at.close_what_lies_over() == "Sheet of job J-107"


def tick_the_refit_by_mouse(user: CountedUser) -> None:
    with user.entry("10:05", "what can go wrong on refitting the cap, by mouse: five points", 20):
        user.shortcut(Qt.Key.Key_4)
        for point in CAP_POINTS:
            user.click(f"{point}: done")
    for _ in CAP_POINTS:
        user.at.press("Undo")


def tick_the_refit(user: CountedUser) -> None:
    with user.entry("10:05", "the same of cap and rotor, by keys: ten points", 20):
        user.shortcut(Qt.Key.Key_4)
        user.go_on("Write as what was done", Qt.Key.Key_Tab)
        user.go_on("Ignition off", Qt.Key.Key_Tab)
        for _ in range(10):
            user.shortcut(Qt.Key.Key_Space, control=False)


def prove_it(user: CountedUser) -> None:
    with user.entry("10:20", "the drive: distance, conditions met, codes after, level", 30):
        user.shortcut(Qt.Key.Key_5)
        user.click("Step: Driven")
        user.click("Step: Pending read")
        user.type_into(QLineEdit, "Driven", "12", enter=True)
        user.click("pulling hard or uphill: not said")
        user.click("damp: not said")
        user.click("Proved: same conditions")


def hand_it_over(user: CountedUser) -> None:
    with user.entry("11:00", "what was done, the parts' origin, nothing declined, gone", 30):
        user.shortcut(Qt.Key.Key_4)
        user.go_on("Write as what was done: Distributor cap and", Qt.Key.Key_Tab)
        user.shortcut(Qt.Key.Key_Space, control=False)
        user.choose("origin of the new part, distributor rotor", OTHER_MAKER)
        user.shortcut(Qt.Key.Key_6)
        user.type_into(QLineEdit, "Odometer out", "118432", enter=True)
        user.click("Nothing was declined or left undone")
        user.click("Hand the car over")
        user.at.wait_for("Left on 2 March 2026")


def judge_the_return(user: CountedUser) -> None:
    with user.entry("15:00", "a return is judged, with who and why", 120):
        user.click("It's Back")
        user.click("Same symptom:")
        user.click("Odile")
        user.type_into(QPlainTextEdit, "Why", "same tower, same tip")


def write_the_week(user: CountedUser) -> None:
    with user.entry("Mon", "the weekly workbook", 300, 2):
        user.click("Monday Book")
        user.click("Write the week")
