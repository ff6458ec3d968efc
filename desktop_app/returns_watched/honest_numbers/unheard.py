"""What a rate is worth where nothing was heard of many cars, in one sentence."""

from __future__ import annotations

from collections.abc import Iterator

from desktop_app.language import tr
from desktop_app.returns_watched.honest_numbers.group_rates import anything_from, can_be_told
from desktop_app.returns_watched.honest_numbers.proportion import wilson


def silence(settled: int, unheard: int, back: int) -> Iterator[str]:
    """Yield how many of the settled jobs nothing was heard of, and what the others alone show.

    `unheard` are settled jobs that did not come back, and whose car nobody saw or asked about after
    its window.
    """
    if not unheard:
        return
    heard = settled - unheard
    if not heard:
        yield tr(
            "Nothing was heard of any of these {settled:,} since: no news is not good news.",
            settled=settled,
        )
        return
    low, high = wilson(back, heard)
    told = can_be_told(heard, low, high)
    rate = (
        tr("{rate:.1%}, {low:.1%} to {high:.1%}", rate=back / heard, low=low, high=high)
        if told
        else anything_from(low, high)
    )
    yield tr(
        "Of {unheard:,} of these {settled:,} nothing was heard since, and the rate "
        "takes them for well; among those heard of, {back} of {heard:,} came back "
        "({rate}). No news is not good news: the truth probably lies between the two.",
        unheard=unheard,
        settled=settled,
        back=back or tr("none"),
        heard=heard,
        rate=rate,
    )
