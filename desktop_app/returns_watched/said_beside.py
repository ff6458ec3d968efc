"""What is said beside the judgement and the main cause: further kinds, helping causes."""

from __future__ import annotations

import json
from collections.abc import Iterable

from desktop_app.language import tr
from desktop_app.returns_watched.judgement import Judgement, return_cause
from desktop_app.shop_record.trouble import ShopTrouble


def also_kept(also: Iterable[Judgement], main: Judgement | None) -> str | None:
    """Return the further kinds of comeback as they are kept (JSON); None where there is none.

    They stand beside a comeback alone, and never repeat it.
    """
    if main is None or not main.is_comeback:
        return None
    chosen = set(also)
    return _listed(j.value for j in Judgement if j in chosen and j.is_comeback and j is not main)


def helping_kept(helping: Iterable[str], main: str | None) -> str | None:
    """Return the helping causes as they are kept (JSON), without the main one; else None."""
    return _listed(dict.fromkeys(one for one in helping if one != main))


def checked_also(also: Iterable[str], main: Judgement | None) -> tuple[Judgement, ...]:
    """Return further kinds as typed or pressed; a ShopTrouble where they cannot stand there."""
    kinds = [judgement.value for judgement in Judgement if judgement.is_comeback]
    wanted = tuple(also)
    for one in wanted:
        if one not in kinds:
            raise ShopTrouble(
                tr("“{typed}” is no kind of comeback.", typed=one),
                do=tr("Accepted: {kinds}.", kinds=_or(kinds)),
            )
    if wanted and (main is None or not main.is_comeback):
        raise ShopTrouble(
            tr("A further kind stands beside a comeback only."),
            kept=tr("Nothing was changed."),
            do=tr("Judge it first: {kinds}.", kinds=_or(kinds)),
        )
    return tuple(Judgement(one) for one in wanted)


def checked_helping(helping: Iterable[str]) -> tuple[str, ...]:
    """Return helping causes by their ids; a ShopTrouble where one is none of the fourteen."""
    wanted = tuple(helping)
    for one in wanted:
        if return_cause(one) is None:
            raise ShopTrouble(tr("“{typed}” is not one of the causes of a return.", typed=one))
    return wanted


def _listed(words: Iterable[str]) -> str | None:
    found = list(words)
    return json.dumps(found) if found else None


def _or(words: list[str]) -> str:
    return tr("{all_others} or {last}", all_others=", ".join(words[:-1]), last=words[-1])
