"""`find`: the shop's own past jobs by what a person would say."""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from desktop_app.commands.opened_shop import shop_of
from desktop_app.commands.outcome import Asked, Outcome
from desktop_app.commands.shop_place import kinds_of
from desktop_app.shop_record.trouble import ShopTrouble

if TYPE_CHECKING:
    from desktop_app.symptom_search.found import Found, Hit


def find(asked: Asked) -> Outcome:
    """Find past jobs and what was done in them."""
    from desktop_app.symptom_search.find import find as find_jobs
    from desktop_app.symptom_search.index_actions import renew_index
    from desktop_app.symptom_search.stored_shop_words import ShopWords

    if not 1 <= asked.limit <= 1000:
        raise ShopTrouble(
            f"--limit: {asked.limit} is too few or too many.", do="Accepted: 1 to 1000."
        )
    with shop_of(asked) as record:
        kinds = kinds_of(record)
        for _step in renew_index(record):
            pass  # only a long history without one waits here
        found = find_jobs(record, ShopWords(record)(), kinds, asked.text, asked.limit)
    return Outcome(found.as_json(), tuple(_lines(found)))


def _lines(found: Found) -> Iterator[str]:
    """Yield the answer as a person reads it."""
    yield f"Read as: {', '.join(piece.in_words() for piece in found.read_as) or 'nothing'}"
    yield from map(_line, found.hits)
    if not found.hits:
        yield "No past job is about that."
    if found.weak:
        yield "Only a word or two in common:"
        yield from map(_line, found.weak)
    yield from (f"What was done: {fix.name}: {fix.sentence()}" for fix in found.fixes)


def _line(hit: Hit) -> str:
    return f"{hit.number}  {hit.concern}  ({'; '.join(hit.why)})"
