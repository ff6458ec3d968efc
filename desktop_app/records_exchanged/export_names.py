"""What the files of an export are called: tables by plain names, photos by what they show."""

from __future__ import annotations

import re

from desktop_app.language import tr
from desktop_app.part_photos.picture_kind import ENDINGS

JOBS, PHOTO_FILES, HISTORY = "jobs.csv", "photo_files.csv", "history.csv"
IDS_GIVEN, READ_ME, CHECKSUMS = "ids_given.csv", "README.txt", "checksums.sha256"
# Said wherever the one table is taken for the whole.
JOBS_LACK = tr(
    "It lacks kinds of work, causes of returns, promises of a job's own, sold cars and what "
    "customers said, so that comebacks are counted otherwise."
)
TABLES, PHOTOS, PART_KINDS = "tables", "photos", "part_kinds"

# Each table of the record: its file's name without .csv, and what a row of it is.
TABLE_FILES: dict[str, tuple[str, str]] = {
    "vehicle": ("vehicles", "a vehicle"),
    "vehicle_event": ("vehicle_events", "an odometer replaced, a vehicle sold"),
    "customer": ("customers", "a customer"),
    "person": ("people", "someone of the shop"),
    "visit": ("visits", "a vehicle in the shop: when it came and left, its odometer"),
    "job": ("jobs_in_full", "a job with all that is kept of it"),
    "job_person": ("who_did_what", "who wrote up, searched, refitted or proved a job"),
    "job_symptom": ("symptoms", "a symptom group of a job's concern"),
    "job_condition": ("conditions", "when a fault happens (1) or never happens (0)"),
    "trouble_code": ("trouble_codes", "a trouble code that was read"),
    "job_check": ("checks", "something looked at or ticked"),
    "condition_met": ("conditions_met", "whether a condition was met on the proof drive"),
    "self_tests": ("self_tests_typed", "the four bytes of the car's own tests, as typed"),
    "self_test": ("self_tests_read", "one of the car's own tests, as a person read it"),
    "proof_step": ("proof_steps", "a step of the proof, and when it was done"),
    "caught_here": ("caught_here", "a proof that failed before the car left"),
    "answered": ("questions_answered", "a question about an odd entry, answered"),
    "instrument": ("instruments", "a measuring instrument"),
    "pair": ("pairs", "a removed part and its replacement"),
    "reading": ("readings", "a measured value, or a word"),
    "photo_reading": ("readings_from_photos", "which mark a reading was taken from"),
    "part_condition": ("part_conditions", "what somebody saw on a part"),
    "explanation": ("explanations", "why a difference is as it should be"),
    "maker_limit": ("makers_limits", "the maker's own limits of a dimension"),
    "pair_photo": ("photos_of_pairs", "which photo shows which side of a pair"),
    "gauge_study": ("gauge_studies", "repeated readings with one instrument"),
    "gauge_reading": ("gauge_readings", "one reading of a gauge study"),
    "kept_sum": ("bench_sums", "a bench sum of a job"),
    "own_kind": ("own_part_kinds", "a part kind of the shop's own making"),
    "photo": ("photos", "a photo of a job"),
    "mark": ("photo_marks", "something drawn on a photo"),
    "printed_card": ("printed_cards", "a bench card that was printed"),
    "photo_scale": ("photo_scales", "what gives a photo its millimetres"),
    "overlay": ("overlays", "how a new part's photo lies on the old one's"),
    "return_link": ("returns", "what was decided about an earlier and a later job"),
    "kind_window": ("windows_by_part_kind", "the shop's promise for a part kind"),
    "customer_asked": ("customers_asked", "a customer was asked how the car does"),
    "money_owed": ("money_owed", "what a supplier owes for a part"),
    "own_phrase": ("own_phrases", "what a phrase means in this shop"),
    "setting": ("house_rules", "a house rule that was changed"),
}

# Tables that came after the first form that was ever exported: an older export lacks them.
LATER_TABLES = ("job_person", "own_phrase")

# Names that some systems keep for devices, whatever stands behind their dot.
_DEVICE = re.compile(r"(?:con|prn|aux|nul|com[0-9]|lpt[0-9])(?:\..*)?", re.IGNORECASE)
_LONGEST = 40
SHORT_HASH = 12


def table_file(table: str) -> str:
    """Return where a table's rows are written."""
    return f"{TABLES}/{TABLE_FILES.get(table, (table, ''))[0]}.csv"


def photo_file(
    number: str,
    job: int,
    pair: int | None,
    kind: str,
    side: str,
    view: str,
    sha256: str,
    media: str,
) -> str:
    """Return where a photo is written: job, pair, side, view, the beginning of its hash.

    `pair` counts the pairs of the job from 1; None where the photo shows none.
    """
    shown = ["photo"] if pair is None else [f"pair-{pair}", kind, side, view]
    name = "_".join(word for word in map(_plain, shown) if word)
    ending = ENDINGS.get(media, "bin")
    return f"{PHOTOS}/{_folder(number, job)}/{name}_{sha256[:SHORT_HASH]}.{ending}"


def with_whole_hash(name: str, sha256: str) -> str:
    """Return a photo's name with the whole of its hash instead of the beginning."""
    shown, _, ending = name.rpartition(".")
    return f"{shown[:-SHORT_HASH]}{sha256}.{ending}"


def kind_file(name: str) -> str:
    """Return where one of the shop's own files of part kinds is written."""
    bare = re.sub(r"[^\w .-]+", "-", name.removesuffix(".toml")).strip("-. ")
    return f"{PART_KINDS}/{bare or 'kind'}.toml"


def _folder(number: str, job: int) -> str:
    plain = _plain(number)
    return plain if plain and not _DEVICE.fullmatch(plain) else f"job-{job}"


def _plain(text: str) -> str:
    """Return words that any system takes as the name of a file."""
    return re.sub(r"[^\w.-]+", "-", text).strip("-._ ")[:_LONGEST].rstrip("-._")
