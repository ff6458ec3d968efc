"""What was found on the car and seen on the parts, in lines of the customer's page."""

from __future__ import annotations

from desktop_app.part_photos.signs import SIDE_SIGNS
from desktop_app.parts_compared.pair_view import PairView
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.reading import SIDES
from desktop_app.parts_compared.sheet_values import clipped, whole
from desktop_app.repair_jobs.job_view import JobView

LONGEST_SEEN = 400  # characters; a term can be a word that somebody typed
LINE_HIGH, LETTERS = 6.0, 95  # mm of a paragraph's line, and how many letters it holds


def found_words(job: JobView) -> str:
    """Return the findings of the job in one sentence, "" where there are none."""
    said = (whole(one.words).rstrip(".") for one in job.checks if one.kind == "inspection")
    found = "; ".join(words for words in said if words)
    return found and f"{found}."


def seen_words(pair: PairView, kind: PartKind) -> str:
    """Return what was seen on each part, "" where nothing was; what it means is for the file."""
    both = ((side, ", ".join(map(kind.term_words, pair.terms(side)))) for side in SIDES)
    seen = "; ".join(f"{SIDE_SIGNS[side]} {terms}" for side, terms in both if terms)
    return seen and f"{clipped(seen, LONGEST_SEEN)}."


def photos_give(*said: str) -> float:
    """Return how many mm the photos leave to these paragraphs, so that the page holds them all."""
    return LINE_HIGH * sum(-(-len(words) // LETTERS) for words in said)
