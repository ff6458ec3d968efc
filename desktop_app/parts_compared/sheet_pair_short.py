"""One of several pairs on the customer's page: the same words as of one alone, in less room."""

from __future__ import annotations

from collections.abc import Iterator

from desktop_app.parts_compared.sheet_blocks import (
    Block,
    Listed,
    PairShort,
    PhotoRow,
    TwoLists,
    VerdictBox,
    Words,
)
from desktop_app.parts_compared.sheet_facts import PairPrinted
from desktop_app.parts_compared.sheet_pair import RESTORED_HEAD, pair_blocks, pair_name
from desktop_app.repair_jobs.job_view import JobView

LONGEST_BESIDE = 500  # characters; what is longer goes below, where it may go on overleaf
PHOTO_HIGH = 29.0  # mm; two pairs with the proof of repair then take one page of A4 or Letter


def short_pair(printed: PairPrinted, job: JobView) -> PairShort:
    """Return what the customer reads of one pair, its lists as running words.

    The photos are those of its first view.
    """
    verdict: VerdictBox | None = None
    photos: PhotoRow | None = None
    beside: list[tuple[str, str]] = []
    below: list[tuple[str, str]] = []
    for block in pair_blocks(printed, job, PHOTO_HIGH):
        if isinstance(block, VerdictBox):
            verdict = block
        elif isinstance(block, PhotoRow):
            photos = block
            if block.below:
                beside.append(("", block.below))
        elif isinstance(block, Words):
            beside.append((block.name, block.words))
        else:
            for head, words in _running(block):
                short = head == RESTORED_HEAD and len(words) <= LONGEST_BESIDE
                (beside if short else below).append((head, words))
    name = pair_name(printed.pair, printed.kind)
    return PairShort(name, verdict, photos, tuple(beside), tuple(below))


def _running(block: Block) -> Iterator[tuple[str, str]]:
    if isinstance(block, TwoLists):
        for head, items in zip(block.heads, block.items, strict=True):
            yield head, " ".join(items)
    elif isinstance(block, Listed):
        yield block.name, " ".join(block.items)
