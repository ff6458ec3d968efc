"""The history of one job, read beside the window: from the last entry back to the job's first."""

from __future__ import annotations

from collections.abc import Generator, Mapping
from dataclasses import dataclass, replace

from sqlalchemy import Connection

from desktop_app.job_history.job_rows import JobRows
from desktop_app.job_history.stored_entries_back import EntriesBack
from desktop_app.job_history.stored_job_rows import read_job_rows
from desktop_app.job_history.stored_names import names_pointed_to
from desktop_app.job_history.told_entry import EntryRead, EntryTold, tell
from desktop_app.job_history.value_words import ShopSpeech
from desktop_app.language import tr
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.shop_record.house_rules import read_rules
from desktop_app.shop_record.past.entries_kept import newest_first
from desktop_app.shop_record.past.history import last_number
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.step import Step

READING = tr("Reading the history")


@dataclass(frozen=True, slots=True)
class JobHistory:
    """The entries of one job, the newest first, as they are kept and as they are told.

    `head` is the number of the last entry of the shop when it was read.
    """

    number: str
    head: int
    read: tuple[EntryRead, ...]
    told: tuple[EntryTold, ...]
    rows: JobRows

    @property
    def first(self) -> int:
        """The number of the job's first entry; one after the head where it has none."""
        return self.read[-1].seq if self.read else self.head + 1

    def entry_naming(self, sha256: str) -> int | None:
        """Return the number of the first whole entry that says of a photo which file it is."""
        for entry in reversed(self.read):
            for change in entry.changes if not entry.brings_others else ():
                if change.table == "photo" and sha256 == (change.after or {}).get("sha256"):
                    return entry.seq
        return None


def read_history(
    record: ShopRecord, job_id: int, kinds: Mapping[str, PartKind], symptoms: Mapping[str, str]
) -> Generator[Step, None, JobHistory]:
    """Read the history of a job step by step; a ShopTrouble where there is no such job.

    `symptoms` are the names of the symptom groups. Writers wait for no more than one piece of it.
    """
    with record.reading() as connection:
        head = last_number(connection)
        rows = read_job_rows(connection, job_id)
    back = EntriesBack(rows)
    for piece in newest_first(record, head + 1):
        for entry in piece:
            back.take(entry)
            if back.whole:
                break
        if back.whole:
            break
        yield Step(head - piece[-1].seq + 1, head, READING)
    with record.reading() as connection:
        speech = _speech(connection, rows, kinds, symptoms)
        names = names_pointed_to(connection, back.found, rows, speech)
    number = str(rows.rows["job", job_id]["number"])
    told = tell(back.found, replace(speech, names=names))
    return JobHistory(number, head, tuple(back.found), told, rows)


def _speech(
    connection: Connection,
    rows: JobRows,
    kinds: Mapping[str, PartKind],
    symptoms: Mapping[str, str],
) -> ShopSpeech:
    rules = read_rules(connection)
    units = {row["odometer_unit"] for (table, _), row in rows.rows.items() if table == "vehicle"}
    return ShopSpeech(
        currency=rules.currency,
        odometer_unit="km" if "km" in units else "mi",
        distance_unit="km" if rules.distance_unit == "km" else "mi",
        kinds=kinds,
        symptoms=symptoms,
        rows=rows.rows,
    )
