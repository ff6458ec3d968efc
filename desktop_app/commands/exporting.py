"""`export`: everything of a shop in a folder."""

from __future__ import annotations

import sys
from collections.abc import Generator
from typing import TYPE_CHECKING, TypeVar

from desktop_app.commands.named_file import at_home
from desktop_app.commands.opened_shop import shop_of
from desktop_app.commands.outcome import Asked, Outcome
from desktop_app.shop_record.counted_words import entries_counted, jobs_counted, photos_counted

if TYPE_CHECKING:
    from desktop_app.shop_record.step import Step

SAID_EACH = 20  # so many times at most it is said how far the work has come
_Told = TypeVar("_Told")


def export(asked: Asked) -> Outcome:
    """Write everything into a new or an empty folder."""
    from desktop_app.records_exchanged.export_files import export_everything

    to = at_home(asked.folder).absolute()
    with shop_of(asked) as record:
        told = walked(export_everything(record, to))
    lines = [
        f"Wrote {to}: {jobs_counted(told.jobs)}, {photos_counted(told.photos)}, "
        f"{entries_counted(told.history_entries)}, {told.bytes_written / 1e6:,.1f} MB.",
        f"README.txt says what is what. “import {to}” brings all of it back into a new shop, the "
        "history with it; into one that has jobs only jobs.csv.",
    ]
    lines += [f"Not written, because it is gone or damaged: {one}." for one in told.missing]
    return Outcome(told.as_json(), tuple(lines))


def walked(steps: Generator[Step, None, _Told]) -> _Told:
    """Walk through all steps, saying on standard error now and then how far they have come."""
    said = 0
    while True:
        try:
            step = next(steps)
        except StopIteration as end:
            told: _Told = end.value
            return told
        share = SAID_EACH * step.done // max(1, step.of)
        if share > said and sys.stderr.isatty():
            print(f"{100 * step.done // step.of} % {step.words}", file=sys.stderr)
        said = share
