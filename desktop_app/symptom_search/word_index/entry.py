"""What the word index takes of one job: its texts, and its facts as marked terms."""

from __future__ import annotations

from hashlib import blake2b
from typing import NamedTuple

# The texts of a job in the order in which an entry has them.
FIELDS = ("concern", "cause", "correction", "conditions", "codes", "parts", "vehicle", "people")
# A term that is no word begins with this, so that no word can be taken for it.
_MARK = "\x01"

SYMPTOM, HAPPENS, NEVER, CODE = "symptom", "happens", "never", "code"
PART, SYSTEM, CAR = "part", "system", "car"
NOT_HANDED_OVER = -1
NEVER_SETTLED = 2**31 - 1


class JobEntry(NamedTuple):
    """One job as the index takes it.

    `texts` are folded words, one text for each of FIELDS; `facts` are marked terms. Days are
    proleptic ordinals: `came`, `left` (NOT_HANDED_OVER while it is here) and `settles`, the last
    day of its window (NEVER_SETTLED where that has no end). `course` are the bits of course.py,
    `seen` the last day on which its car was seen or said to be well (0: none). `fixes` are fix
    keys.
    """

    job: int
    texts: tuple[str, ...]
    facts: tuple[str, ...]
    came: int
    left: int
    settles: int
    course: int
    seen: int
    vehicle: int
    fixes: tuple[int, ...]


def marked(kind: str, value: str) -> str:
    """Return the term for a fact: the symptom group "rough-idle", the code "P0300" ..."""
    return f"{_MARK}{kind} {value}"


def fix_key(words: str) -> int:
    """Return the number under which a fix is counted: 63 bits of a hash of its words.

    Among a million different fixes two share a number once in twenty million histories.
    """
    return int.from_bytes(blake2b(words.encode(), digest_size=8).digest(), "little") >> 1
