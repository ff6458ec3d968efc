"""What changing a part kind does to the pairs that were judged by it before."""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping, Sequence

from desktop_app.parts_compared.comparison import PairVerdict

MOST_NAMED = 8  # jobs


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
        return "No pair of this kind is in the record yet."
    if not changed:
        return f"All {len(after)} pairs in the record come out as with the built-in kind."
    moves = Counter((before.get(pair, "not judged"), after[pair]) for pair in changed)
    said = "; ".join(f"{count} × “{old}” becomes “{new}”" for (old, new), count in moves.items())
    named = ", ".join(jobs[:MOST_NAMED])
    more = f" and {len(jobs) - MOST_NAMED} more" if len(jobs) > MOST_NAMED else ""
    return f"Of {len(after)} pairs in the record: {said}. Jobs: {named}{more}."
