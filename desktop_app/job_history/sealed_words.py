"""What a sealed copy says of itself: its manifest, its history, its words to read first."""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from dataclasses import asdict, dataclass
from typing import Any

from desktop_app.figures_shown import figure
from desktop_app.job_history.told_entry import EntryTold
from desktop_app.language import tr
from desktop_app.part_photos.picture_kind import ENDINGS

FORM = 1


@dataclass(frozen=True, slots=True)
class PhotoSealed:
    """A photo of a sealed copy: its file there, what it was called, which entry names it.

    `in_job` is False where it was taken out of the job; `entry` is None where no entry that is
    shown names it.
    """

    file: str
    sha256: str
    name: str
    taken_at: str | None
    in_job: bool
    entry: int | None


@dataclass(frozen=True, slots=True)
class SealedFacts:
    """What the manifest says, apart from the checksums of the files.

    `first` and `head_number` are numbers of entries, `hash_before` the hash that the first was
    chained to, `hash_only` those of the job that are covered by their hash alone.
    """

    job: str
    shop: str
    made_at: str
    program: str
    first: int
    hash_before: str
    head_number: int
    head_hash: str
    shown: int
    photos: tuple[PhotoSealed, ...]
    missing_photos: tuple[str, ...]
    hash_only: tuple[int, ...]


def photo_file(sha256: str, media_type: str) -> str:
    """Return where a photo lies in a sealed copy; what somebody called it is only told."""
    return f"photos/{sha256}.{ENDINGS.get(media_type, 'bin')}"


def manifest_bytes(facts: SealedFacts, files: Mapping[str, str]) -> bytes:
    """Return the manifest; `files` are the SHA-256 of all other files by their names."""
    said: dict[str, Any] = {"sealed_copy_form": FORM, **asdict(facts)}
    head = {"number": said.pop("head_number"), "hash": said.pop("head_hash")}
    return json.dumps({**said, "head": head, "files": dict(files)}, indent=1).encode() + b"\n"


def history_text(number: str, oldest_first: Sequence[EntryTold]) -> str:
    """Return the history of a job as a text to be read, the oldest entry first."""
    said = [tr("The history of job {number}", number=number), ""]
    for entry in oldest_first:
        who = tr("{who} at {place}", who=entry.who, place=entry.place) if entry.place else entry.who
        said.append(f"{entry.seq}. {entry.when}, {who}: {entry.words}")
        said.append(f"    [{entry.state_words.split(maxsplit=1)[1]}]")
        said += [f"    {' '.join(line.split())}" for line in entry.lines]
        said.append("")
    return "\n".join(said)


def read_me(template: str, facts: SealedFacts) -> str:
    """Return the words to read first, from their template; they are English for strangers."""
    covered = facts.head_number - facts.first + 1 - facts.shown
    said = template
    for name, value in {
        "made": facts.made_at,
        "program": facts.program,
        "head": figure(facts.head_number, ","),
        "shown": f"{figure(facts.shown, ',')} of them",
        "covered": f"{figure(covered, ',')} of them",
        "hash_only": _hash_only(facts.hash_only),
        "missing": _missing(facts.missing_photos),
        "shop": " ".join(facts.shop.split()),
        "number": " ".join(facts.job.split()),  # last: what a shop typed is no template
    }.items():
        said = said.replace(f"{{{name}}}", value)
    return said


def _hash_only(numbers: Sequence[int]) -> str:
    if not numbers:
        return ""
    listed = ", ".join(map(str, numbers))
    return (
        f"Of this job's own, entry {listed} is shown by its hashes alone: it brought in or took "
        "out a whole table of jobs at once, and others' rows stand in it.\n"
    )


def _missing(photos: Sequence[str]) -> str:
    lines = (
        f"\nNot in this copy, because it is gone or damaged in the shop: photo {one}."
        for one in photos
    )
    return "".join(lines) + "\n" if photos else ""
