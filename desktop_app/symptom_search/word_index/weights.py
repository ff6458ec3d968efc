"""How much a word says: BM25 over fields, in whole numbers so that any order of adding agrees.

S. Robertson and H. Zaragoza, "The Probabilistic Relevance Framework: BM25 and Beyond",
Foundations and Trends in Information Retrieval 3 (2009), sections 3.5 (BM25) and 3.6 (BM25F).
"""

from __future__ import annotations

from collections.abc import Sequence
from math import log
from typing import Any

K1, B = 1.2, 0.75
# How much a word counts where it stands, in the order of entry.FIELDS; our own.
FIELD_WEIGHTS = (1.0, 0.8, 0.8, 0.7, 1.0, 0.9, 0.7, 0.6)
STEP = 100  # an impact is kept in hundredths; it never reaches 220
LEAST_RARITY = 0.05


def share_of_field(length: Any, mean_length: float) -> Any:
    """Return what one word of a field counts there for its length: 1 in a field of mean length.

    `length` is a number or an array of them, and so is what comes back. Where nobody had written
    anything into the field its mean length is 0, and any length counts as the usual one.
    """
    usual = length / mean_length if mean_length else length * 0 + 1
    return 1 / (1 - B + B * usual)


def impact(weighted_count: float) -> int:
    """Return what a word says of a job, in hundredths: 100 if it stands once in a usual field.

    `weighted_count` is the sum over the fields of weight, share of the field and count.
    """
    return max(1, round(STEP * (K1 + 1) * weighted_count / (K1 + weighted_count)))


def rarity(jobs: int, having: int) -> float:
    """Return how telling a word is that stands in so many of the jobs: its inverse frequency.

    With the 1 that is added inside the logarithm it is never negative.
    """
    having = min(having, jobs)
    return max(LEAST_RARITY, log(1 + (jobs - having + 0.5) / (having + 0.5)))


def word_weights(rarities: Sequence[float], points: float) -> tuple[int, ...]:
    """Share out the points among words by their rarity, in thousandths of a point."""
    whole = sum(rarities)
    return tuple(round(1000 * points * one / whole) for one in rarities)
