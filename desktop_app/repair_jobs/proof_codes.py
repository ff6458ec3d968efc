"""Codes before and after the repair: what went, what stayed, and what cannot be cleared."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from desktop_app.language import marked, tr
from desktop_app.repair_jobs.job_view import CodeRead

# A permanent code is erased by the vehicle's own monitor alone: 13 CCR 1968.2 (d)(2.5).
_STAYS = marked(
    "{codes} stays as a permanent code: it leaves only by the car's own passed self-test; "
    "no clearing takes it away."
)
_WAS = marked(
    "{codes} was a permanent code before: it leaves only by the car's own passed self-test; "
    "no clearing takes it away."
)


def codes_in_words(codes: Sequence[CodeRead], were_read_after: bool) -> tuple[str, ...]:
    """Return the codes before and after in a line each, for the sheet; nothing without any."""
    before, after = _of(codes, "found"), _of(codes, "after repair")
    said = [tr("Before: {codes}.", codes=_listed(before))] if before else []
    if after:
        said.append(tr("After: {codes}.", codes=_listed(after)))
    elif were_read_after:
        said.append(tr("After: read again, none is left."))
    elif before:
        said.append(tr("After: not written down."))
    return tuple(said)


def codes_said(
    codes: Sequence[CodeRead], were_read_after: bool, tests_wait: bool, cleared: bool
) -> tuple[str, ...]:
    """Return what has to be said about the codes.

    `tests_wait` is True where one of the car's own tests has not run after the repair; `cleared`
    where the clearing is ticked.
    """
    return tuple(_said(codes, were_read_after, tests_wait, cleared))


def _said(
    codes: Sequence[CodeRead], were_read_after: bool, tests_wait: bool, cleared: bool
) -> Iterator[str]:
    before, after = _of(codes, "found"), _of(codes, "after repair")
    was = {one.code for one in before}
    again = list(dict.fromkeys(c.code for c in after if c.code in was and c.kind != "permanent"))
    if again:
        yield tr("There before and there again: {codes}.", codes=", ".join(again))
    new = list(dict.fromkeys(one.code for one in after if one.code not in was))
    if new and before:
        yield tr("Not there before: {codes}.", codes=", ".join(new))
    permanent = [one.code for one in after if one.kind == "permanent"]
    if permanent:
        yield tr(_STAYS, codes=", ".join(permanent))
    elif not were_read_after and any(one.kind == "permanent" for one in before):
        gone = ", ".join(one.code for one in before if one.kind == "permanent")
        yield tr(_WAS, codes=gone)
    if permanent or tests_wait:
        yield tr("An emission test may refuse the car until its own tests have run.")
    elif cleared:
        yield tr(
            "Clearing set the car's own tests back: until they ran, an emission test may refuse."
        )


def pending_after(codes: Sequence[CodeRead]) -> tuple[str, ...]:
    """Return the codes that are pending or stored after the repair."""
    found = [one.code for one in _of(codes, "after repair") if one.kind != "permanent"]
    return tuple(dict.fromkeys(found))


def _of(codes: Sequence[CodeRead], stage: str) -> list[CodeRead]:
    return [one for one in codes if one.stage == stage]


def _listed(codes: Sequence[CodeRead]) -> str:
    return ", ".join(f"{one.code} {tr(one.kind)}" for one in codes)
