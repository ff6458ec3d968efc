"""A large history in many people's words, for the search: few words common, most of them rare."""

from __future__ import annotations

import sqlite3
from itertools import product
from pathlib import Path

import numpy as np

from desktop_app.commands.shop_place import kinds_of, open_place
from desktop_app.shop_record.record_name import FILE_NAME
from desktop_app.symptom_search.stored_index import JobIndex
from tests.large_history import large_history

WORDS = 20_000
_MORE_WORDS = 14  # in the concern of each job
_FLATTENED = (
    2.7  # Zipf's law with Mandelbrot's correction; the figure is the usual one, from memory
)
_FRONT, _MIDDLE, _END = "bdfgklmnprstvz", "aeiou", "bdgklmnprst"


def told_words() -> list[str]:
    """Return invented words, the commonest first."""
    syllables = ["".join(parts) for parts in product(_FRONT, _MIDDLE, _END)]
    chance = np.random.default_rng(3)
    first, second = (chance.integers(0, len(syllables), WORDS * 2) for _ in range(2))
    words = dict.fromkeys(
        syllables[one] + syllables[other] for one, other in zip(first, second, strict=True)
    )
    return list(words)[:WORDS]


def told_history(folder: Path, jobs: int) -> None:
    """Fill a new folder with a shop whose customers tell each fault in words of their own."""
    large_history(folder, jobs, searchable=False)
    chance = np.random.default_rng(5)
    words = np.array(told_words(), dtype=object)
    common = 1 / (np.arange(len(words)) + _FLATTENED)
    raw = sqlite3.connect(folder / FILE_NAME)
    raw.execute("PRAGMA synchronous = OFF")
    for first in range(1, jobs + 1, 10_000):
        ids = range(first, min(first + 10_000, jobs + 1))
        drawn = chance.choice(len(words), (len(ids), _MORE_WORDS), p=common / common.sum())
        told = (" ".join(words[row]) for row in drawn)
        raw.executemany(
            "UPDATE job SET concern = concern || ', ' || ? WHERE id = ?",
            zip(told, ids, strict=True),
        )
    raw.commit()
    raw.close()
    record = open_place(folder)
    with record.deed("Write the search index") as deed:
        JobIndex(kinds_of()).rebuild(deed.connection)
    record.close()
