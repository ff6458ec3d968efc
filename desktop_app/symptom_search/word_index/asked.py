"""What is asked of the arrays: a question whose names, neighbours and words were looked up."""

from __future__ import annotations

from typing import NamedTuple

from desktop_app.symptom_search.points import WHOLE_FIT


class Way(NamedTuple):
    """One way for a word to stand in a job: all these terms, or one that begins so."""

    terms: tuple[str, ...]
    fit: int = WHOLE_FIT
    begins: bool = False


class AskedWord(NamedTuple):
    """A word and its ways, the best of which counts; `weight` in thousandths of a point."""

    word: str
    ways: tuple[Way, ...]
    jobs: int
    weight: int = 0


class Kept(NamedTuple):
    """The filters as the arrays know them: marked terms that a job must have, and its days."""

    terms: tuple[str, ...] = ()
    since: int | None = None
    until: int | None = None


class Asked(NamedTuple):
    """All of a question, by ids; `today` is a day's ordinal. Guessed groups are near ones too."""

    today: int
    groups: tuple[str, ...] = ()
    near_groups: tuple[str, ...] = ()
    guessed: tuple[str, ...] = ()
    codes: tuple[str, ...] = ()
    related: tuple[str, ...] = ()
    parts: tuple[str, ...] = ()
    conditions: tuple[str, ...] = ()
    words: tuple[AskedWord, ...] = ()
    numbered: tuple[int, ...] = ()
    vehicles: tuple[int, ...] = ()
    kept: Kept = Kept()
