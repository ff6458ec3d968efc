"""A job with a distributor rotor, measured and photographed, for the tests of the sheet."""

from __future__ import annotations

import functools
from dataclasses import dataclass
from io import BytesIO
from pathlib import Path

from PIL import Image

from desktop_app.part_photos.actions import add_photos, take_in
from desktop_app.part_photos.arrival import Arrival
from desktop_app.parts_compared import actions
from desktop_app.parts_compared.part_kinds.kind_shelf import load_kinds
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.sheet import sheet_bytes
from desktop_app.parts_compared.stored_sheet import read_sheet
from desktop_app.repair_jobs.stored import Job, JobCheck, JobCondition, Vehicle, Visit
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_record.own_program.resource_folder import resource_path
from desktop_app.shop_record.record import ShopRecord
from tests.part_photos.bench_pictures import encoded, exif, noisy

TOP, SIDE, UNDERSIDE = "top, key at twelve o'clock", "side, tip to the right", "underside"
# Invented readings of a rotor whose tip burned back: (removed, replacement) by dimension.
READINGS = {
    "tip-radius": ("33.41; 33.43; 33.42", "33.97; 33.98; 33.96"),
    "bore": ("14.02", "14.04"),
    "tip-height": ("27.10; 27.15; 27.12", "27.13; 27.12; 27.14"),
    "tip-angle": ("35; 35; 35", "35; 35; 35"),
    "fixing-holes": ("2", "2"),
    "resistance": ("5.2", "4.9"),
}


@functools.cache
def kinds() -> dict[str, PartKind]:
    """The part kinds that come with the program."""
    return load_kinds([resource_path("part_kinds")]).kinds


@dataclass(frozen=True, slots=True)
class RotorStory:
    """The job and its pair."""

    record: ShopRecord
    job: int
    pair: int

    def read(self, dimension: str, removed: str = "", replacement: str = "") -> None:
        """Write readings down, on one side or on both."""
        known = kinds()["distributor-rotor"].dimension(dimension)
        assert known is not None
        if removed:
            actions.write_readings(self.record, self.pair, known, "removed", removed)
        if replacement:
            actions.write_readings(self.record, self.pair, known, "replacement", replacement)

    def photograph(self, view: str, removed: bytes | None, replacement: bytes | None) -> None:
        """Put photos to both sides of the pair."""
        if removed is not None:
            photo = put_photo(self.record, self.job, removed)
            actions.show_in_pair(self.record, self.pair, [photo], "removed", view)
        if replacement is not None:
            photo = put_photo(self.record, self.job, replacement)
            actions.show_in_pair(self.record, self.pair, [photo], "replacement", view)

    def pdf(self) -> bytes:
        """The sheet as it would be written now."""
        return sheet_bytes(read_sheet(self.record, self.job, kinds()))


def a_job(record: ShopRecord, **changed: object) -> int:
    """Write the job J-104 as it was when the car left, with some answers changed."""
    answers: dict[str, object] = {
        "number": "J-104",
        "concern": "Stumbles when it's damp, worst pulling up the hill.",
        "system": "ignition",
        "cause_found": 1,
        "cause": "Rotor tip burned back.",
        "correction": "Rotor replaced.",
        "proof_level": 2,
        "proof_words": "Wet road, two hills.",
        "proof_distance": 7.5,
        "declined": "Plug wires, nine years old: it may misfire in rain again.",
        "left_at": "2026-11-13T16:00:00+00:00",
        "window_days": 90,
        "window_miles": 3000,
        "window_rule": "first",
    } | changed
    change_rule(record, "shop_name", "Tin Heron Garage")
    with record.deed("Take a car in") as deed:
        vehicle = deed.add(
            Vehicle,
            vin="1M8GDM9AXKP042788",  # the sample of 49 CFR 565.15(c)
            plate="TIN 04",
            plate_key="TIN04",
            description="1.8-litre compact hatchback, 1990s",
            odometer_unit="mi",
        )
        visit = deed.add(Visit, vehicle_id=vehicle, came_at="2026-11-12T08:00:00+00:00")
        job = deed.add(Job, visit_id=visit, **answers)
        deed.add(JobCondition, job_id=job, condition="damp", happens=1)
        deed.add(JobCondition, job_id=job, condition="hot", happens=0)
        ticked = "misfire counters at zero for 15 min from cold"
        deed.add(JobCheck, job_id=job, kind="proof", words=ticked, outcome="done")
    return job


def a_rotor(record: ShopRecord, **changed: object) -> RotorStory:
    """Lay the old and the new rotor of J-104 side by side and measure them."""
    job = a_job(record, **changed)
    pair = actions.lay_side_by_side(record, job, "distributor-rotor").made
    assert pair is not None
    story = RotorStory(record, job, pair)
    actions.say_origin(record, pair, "new, other maker's")
    for field, words in (
        ("supplier", "Counter Nine Parts"),
        ("number_on_box", "RT-2207"),
        ("number_on_part", "RT-2207 B"),
        ("note_removed", "Tip face pitted on the leading edge."),
    ):
        actions.write_about_pair(record, pair, field, words)
    for dimension, (removed, replacement) in READINGS.items():
        story.read(dimension, removed, replacement)
    actions.see_condition(record, pair, "removed", "burned tip", seen=True)
    return story


def put_photo(record: ShopRecord, job: int, content: bytes) -> int:
    """Take a photo in and add it to the job."""
    made = add_photos(record, job, [take_in(record, Arrival("part.jpg", content=content))]).made
    assert made is not None
    return made


def phone_photo(seed: int, orientation: int = 1) -> bytes:
    """A photo as a phone hands it over: four megapixels, held anyhow, with the place in it."""
    notes = exif(orientation, "2026:11:12 09:10:00")
    place = notes.get_ifd(0x8825)
    place[1], place[2] = "N", (51.0, 30.0, 0.0)
    return encoded(noisy(2304, 1728, seed), "JPEG", notes)


def jpegs_in(pdf: bytes) -> list[Image.Image]:
    """The photos that a PDF carries, as they lie in it."""
    from pypdf import PdfReader

    pages = PdfReader(BytesIO(pdf)).pages
    return [Image.open(BytesIO(found.data)) for page in pages for found in page.images]


def words_in(pdf: bytes) -> str:
    """The text of all pages on one line, with plain spaces."""
    from pypdf import PdfReader

    pages = PdfReader(BytesIO(pdf)).pages
    return " ".join(" ".join(page.extract_text() for page in pages).split())


def page_count(pdf: bytes) -> int:
    """How many pages it has."""
    from pypdf import PdfReader

    return len(PdfReader(BytesIO(pdf)).pages)


def saved(pdf: bytes, folder: Path) -> Path:
    """The PDF as a file, for programs that want one."""
    file = folder / "sheet.pdf"
    file.write_bytes(pdf)
    return file
