"""The names under which a job counts: tidied, each once, and what a comparison came to."""

from __future__ import annotations

from collections.abc import Iterable

from desktop_app.language import marked
from desktop_app.returns_watched.honest_numbers.group_rates import NOT_SAID

NOT_COMPARED = marked("not compared")  # a word beside the verdicts, shown as they are
# The worst verdict of a job's pairs speaks for the job.
_WORST_FIRST = ("stop and look", "not enough measured", "fits")


def as_first_written(words: Iterable[str], shown: dict[str, str]) -> tuple[str, ...]:
    """Return names as they were first written; case and spaces make no other group.

    `shown` keeps how each was first written, and belongs to one grouping.
    """
    tidy = (" ".join(word.split()) for word in words)
    found = dict.fromkeys(shown.setdefault(word.casefold(), word) for word in tidy if word)
    return tuple(found) or (NOT_SAID,)


def compared_as(verdicts: Iterable[str]) -> str:
    """Return what the comparison of a job's parts said: the worst verdict of its pairs."""
    found = set(verdicts)
    return next((verdict for verdict in _WORST_FIRST if verdict in found), NOT_COMPARED)
