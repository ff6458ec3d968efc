"""What changing a part kind does to the pairs that were judged by it before."""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping, Sequence

from desktop_app.language import marked, tr
from desktop_app.parts_compared.comparison import PairVerdict

MOST_NAMED = 8  # jobs
NOT_JUDGED = marked("not judged")


def pairs_judged_otherwise(
    before: Mapping[int, PairVerdict], after: Mapping[int, PairVerdict]
) -> tuple[int, ...]:
    """Return the ids of the pairs whose verdict is another one now."""
    return tuple(sorted(pair for pair, verdict in after.items() if before.get(pair) != verdict))


def effect_words(
    before: Mapping[int, PairVerdict], after: Mapping[int, PairVerdict], jobs: Sequence[str]
) -> str:
    """Say how many verdicts differ between the two forms of a kind, and in which jobs."""
    changed = pairs_judged_otherwise(before, after)
    if not after:
        return tr("No pair of this kind is in the record yet.")
    if not changed:
        return tr(
            "All {pairs} pairs in the record come out as with the built-in kind.", pairs=len(after)
        )
    moves = Counter((before.get(pair, NOT_JUDGED), after[pair]) for pair in changed)
    said = "; ".join(
        tr("{count} × “{old}” becomes “{new}”", count=count, old=tr(old), new=tr(new))
        for (old, new), count in moves.items()
    )
    named = ", ".join(jobs[:MOST_NAMED])
    if len(jobs) > MOST_NAMED:
        return tr(
            "Of {pairs} pairs in the record: {said}. Jobs: {named} and {more} more.",
            pairs=len(after),
            said=said,
            named=named,
            more=len(jobs) - MOST_NAMED,
        )
    return tr(
        "Of {pairs} pairs in the record: {said}. Jobs: {named}.",
        pairs=len(after),
        said=said,
        named=named,
    )
