"""What led to a fix: what was looked at first, and the codes found, each with the jobs behind."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import NamedTuple


class Led(NamedTuple):
    """One finding or code, as it was last written, and the jobs that had it, the newest first."""

    words: str
    jobs: tuple[int, ...]


class LedThere(NamedTuple):
    """What led there: of `looked_at` jobs with a finding the first ones, of `coded` the codes."""

    first_looked: tuple[Led, ...]
    codes: tuple[Led, ...]
    looked_at: int
    coded: int


def count_led(
    looked: Mapping[int, str], codes: Mapping[int, Iterable[str]], most: int = 6
) -> LedThere:
    """Group the first finding and the codes of each job, the commonest first.

    Findings are one where they differ only in capitals, spaces and the stop at the end.
    """
    found: dict[str, list[tuple[int, str]]] = {}
    for job, words in looked.items():
        key = " ".join(words.casefold().split()).rstrip(" .;,")
        found.setdefault(key, []).append((job, words.strip()))
    read: dict[str, list[tuple[int, str]]] = {}
    for job, its in codes.items():
        for code in dict.fromkeys(its):
            read.setdefault(code, []).append((job, code))
    return LedThere(_commonest(found, most), _commonest(read, most), len(looked), len(codes))


def _commonest(grouped: Mapping[str, list[tuple[int, str]]], most: int) -> tuple[Led, ...]:
    newest_first = {key: sorted(ones, reverse=True) for key, ones in grouped.items()}
    keys = sorted(grouped, key=lambda key: (-len(grouped[key]), key))[:most]
    return tuple(
        Led(newest_first[key][0][1], tuple(job for job, _ in newest_first[key])) for key in keys
    )
