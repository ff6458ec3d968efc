"""Making the sealed copy of a job: written beside its place, and put there when it is whole."""

from __future__ import annotations

import hashlib
import json
import os
import shutil
import zipfile
from collections.abc import Generator, Iterator, Mapping
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

from desktop_app.job_history.sealed_words import (
    PhotoSealed,
    SealedFacts,
    history_text,
    manifest_bytes,
    photo_file,
    read_me,
)
from desktop_app.job_history.stored_job_history import JobHistory, read_history
from desktop_app.language import tr
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.sheet import sheet_bytes
from desktop_app.parts_compared.sheet_facts import SheetFacts
from desktop_app.parts_compared.stored_sheet import read_sheet
from desktop_app.shop_record.own_program.own_version import made_by
from desktop_app.shop_record.own_program.resource_folder import resource_path
from desktop_app.shop_record.past.entries_kept import EntryKept, hash_before, oldest_first
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.trouble import ShopTrouble

WORDS = tr("Making the sealed copy")
SEAL, MANIFEST, ENTRIES = "seal.txt", "manifest.json", "entries.jsonl"


@dataclass(frozen=True, slots=True)
class SealedCopy:
    """A copy that was made: where it lies, the line of seal.txt, what its manifest says."""

    place: Path
    seal: str
    facts: SealedFacts


def proposed_name(number: str) -> str:
    """Return the name that is proposed for the copy of a job, one that any system takes."""
    plain = "".join(
        each if (each.isascii() and each.isalnum()) or each in "-_" else "-" for each in number
    )
    return f"sealed-copy-{plain[:40]}"


def make_sealed_copy(
    record: ShopRecord,
    job_id: int,
    kinds: Mapping[str, PartKind],
    symptoms: Mapping[str, str],
    to: Path,
) -> Generator[Step, None, SealedCopy]:
    """Write the sealed copy of a job into a new folder, or a new file where `to` ends in .zip.

    Not asking for the next step stops it, and nothing is left behind. Raises ShopTrouble where
    something lies there, the disk refuses, or the history is not whole.
    """
    with _told_of_disk(to), _beside(to) as folder:
        yield Step(0, 100, WORDS)
        sheet = read_sheet(record, job_id, kinds)
        writing = _Writing(folder)
        writing.put("comparison-sheet.pdf", sheet_bytes(sheet))
        history = yield from read_history(record, job_id, kinds, symptoms)
        facts = yield from _write(record, writing, sheet, history)
        seal = writing.finish(facts)
        if to.suffix.lower() == ".zip":
            _pack(folder, to, proposed_name(history.number))
        else:
            _clear_place(to)
            folder.rename(to)
    return SealedCopy(to, seal, facts)


class _Writing:
    """Puts files into the folder of a copy and remembers their checksums."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        self.files: dict[str, str] = {}

    def put(self, name: str, content: bytes) -> None:
        """Write a whole file."""
        place = self.folder / name
        place.parent.mkdir(exist_ok=True)
        place.write_bytes(content)
        self.files[name] = hashlib.sha256(content).hexdigest()

    def put_lines(self, name: str, lines: Iterator[bytes]) -> Iterator[None]:
        """Write a file line by line; a turn is given after each."""
        digest = hashlib.sha256()
        with (self.folder / name).open("wb") as file:
            for line in lines:
                file.write(line)
                digest.update(line)
                yield
        self.files[name] = digest.hexdigest()

    def finish(self, facts: SealedFacts) -> str:
        """Write what is read first, what verifies it, the manifest, its seal; return the seal."""
        template = resource_path("sealed_copy", "read_me.txt").read_text("utf-8")
        self.put("READ ME.txt", read_me(template, facts).encode())
        self.put("verify.py", resource_path("sealed_copy", "verify.py").read_bytes())
        manifest = manifest_bytes(facts, dict(sorted(self.files.items())))
        self.put(MANIFEST, manifest)
        seal = hashlib.sha256(manifest).hexdigest()
        self.put(SEAL, f"{seal}\n".encode())
        return seal


def _write(
    record: ShopRecord, writing: _Writing, sheet: SheetFacts, history: JobHistory
) -> Generator[Step, None, SealedFacts]:
    writing.put("history.txt", history_text(history.number, history.told[::-1]).encode())
    photos, missing = _photos(record, writing, history)
    whole = {entry.seq for entry in history.read if not entry.brings_others}
    links = (
        _line(entry, entry.seq in whole)
        for piece in oldest_first(record, history.first, history.head)
        for entry in piece
    )
    of = max(1, history.head - history.first + 1)
    for done, _ in enumerate(writing.put_lines(ENTRIES, links)):
        if done % 500 == 0:
            yield Step(done, of, WORDS)
    return SealedFacts(
        job=history.number,
        shop=sheet.shop_name,
        made_at=record.clock().isoformat(timespec="seconds"),
        program=made_by(),
        first=history.first,
        hash_before=hash_before(record, history.first),
        head_number=history.head,
        head_hash=hash_before(record, history.head + 1),
        shown=len(whole),
        photos=photos,
        missing_photos=missing,
        hash_only=tuple(sorted(entry.seq for entry in history.read if entry.seq not in whole)),
    )


def _line(entry: EntryKept, whole: bool) -> bytes:
    """Return an entry as it stands in the copy: whole, or with the hash of its body alone."""
    body = {"body": entry.body} if whole else {"inner": entry.inner_hash}
    return json.dumps({"number": entry.seq, "hash": entry.hash, **body}).encode() + b"\n"


def _photos(
    record: ShopRecord, writing: _Writing, history: JobHistory
) -> tuple[tuple[PhotoSealed, ...], tuple[str, ...]]:
    """Put the originals into the copy; return what they are, and those that are gone or damaged."""
    put: list[PhotoSealed] = []
    missing: dict[str, None] = {}
    for row, photo in sorted(history.rows.rows.items()):
        if row[0] != "photo":
            continue
        sha256 = str(photo["sha256"])
        if record.photos.is_whole(sha256) is not True:
            missing.setdefault(sha256)
            continue
        file = photo_file(sha256, str(photo["media_type"]))
        if file not in writing.files:
            writing.put(file, record.photos.read(sha256))
        named_by = history.entry_naming(sha256)
        here = row in history.rows.here
        put.append(PhotoSealed(file, sha256, photo["name"], photo["taken_at"], here, named_by))
    return tuple(put), tuple(missing)


@contextmanager
def _beside(to: Path) -> Iterator[Path]:
    """Give a folder beside the place, for what is not finished; it goes with the block."""
    _refuse_what_is_there(to)
    if not to.parent.is_dir():
        raise ShopTrouble(
            tr("There is no folder {folder}.", folder=to.parent),
            do=tr("Make it, or choose another one."),
        )
    folder = to.with_name(f".{to.name}.being-written-{os.getpid()}")
    folder.mkdir()
    try:
        yield folder
    finally:
        shutil.rmtree(folder, ignore_errors=True)


def _pack(folder: Path, to: Path, inside: str) -> None:
    """Put the folder into one file, everything below a folder of the copy's name."""
    part = folder.with_name(f"{folder.name}.part")
    try:
        with zipfile.ZipFile(part, "x", zipfile.ZIP_DEFLATED) as archive:
            for file in sorted(folder.rglob("*")):
                if file.is_file():
                    archive.write(file, f"{inside}/{file.relative_to(folder).as_posix()}")
        _clear_place(to)
        part.rename(to)
    finally:
        part.unlink(missing_ok=True)


def _refuse_what_is_there(to: Path) -> None:
    empty = to.is_dir() and not to.is_symlink() and not any(to.iterdir())
    if os.path.lexists(to) and not (empty and to.suffix.lower() != ".zip"):
        raise ShopTrouble(
            tr("{place} is there already.", place=to),
            kept=tr("It was left as it is."),
            do=tr("Name a new one."),
        )


def _clear_place(to: Path) -> None:
    _refuse_what_is_there(to)
    if to.is_dir():
        to.rmdir()


@contextmanager
def _told_of_disk(to: Path) -> Iterator[None]:
    try:
        yield
    except OSError as error:
        raise ShopTrouble(
            tr(
                "The sealed copy {place} was not made: {reason}.",
                place=to,
                reason=error.strerror or error,
            ),
            kept=tr("Nothing of it was left there."),
            do=tr("Make room or ask for the right to write, or choose another place."),
        ) from error
