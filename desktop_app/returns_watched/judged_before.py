"""What was decided about one return over time, read out of the history's entries."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Any

from desktop_app.language import tr
from desktop_app.returns_watched.judgement import return_cause

JUDGED_COLUMNS = ("judgement", "judged_by", "judged_at", "cause_class")
NOTHING_SAID: Mapping[str, Any] = {
    **{"judgement": None, "judged_by": "", "judged_at": None, "cause_class": None}
}


@dataclass(frozen=True, slots=True)
class JudgedOnce:
    """One decision: its word (None: taken back), who made it, and the day (ISO).

    Where it named another main cause and left the word, `cause` is that cause's id ("" for none).
    """

    judgement: str | None
    by: str
    on: str
    cause: str | None = None


@dataclass(frozen=True, slots=True)
class LinkChanged:
    """A history entry that touched one return: the row's columns before and after it.

    `before` is None where the entry added the row; `reverses` is the entry that it took back.
    """

    seq: int
    at: str
    who: str
    reverses: int | None
    before: Mapping[str, Any] | None
    after: Mapping[str, Any] | None


def judged_over_time(
    now: Mapping[str, Any], changes_newest_first: Iterable[LinkChanged]
) -> tuple[JudgedOnce, ...]:
    """Return the decisions about a return, oldest first; the last one is what holds now.

    What was undone is left out, together with its undo. Reading stops where the row began, so
    that the iterable may be lazy. `now` holds the JUDGED_COLUMNS of the row.
    """
    state = {name: now[name] for name in JUDGED_COLUMNS}
    undone: set[int] = set()
    found: list[JudgedOnce] = []
    for change in changes_newest_first:
        if change.seq in undone:
            continue
        if change.reverses is not None:
            undone.add(change.reverses)
            continue
        before = change.before
        was = NOTHING_SAID if before is None else {**state, **before}
        if any(was[name] != state[name] for name in ("judgement", "judged_by")):
            found.append(_decision(state, change))
        elif state["judgement"] is not None and _other_cause(was, state, change.who):
            cause = state["cause_class"] or ""
            found.append(JudgedOnce(state["judgement"], change.who, change.at[:10], cause))
        state = {name: was[name] for name in JUDGED_COLUMNS}
        if before is None:
            break
    if state["judgement"] is not None:  # decided before the first entry that was kept
        found.append(_decision(state, None))
    return tuple(reversed(found))


def _other_cause(was: Mapping[str, Any], now: Mapping[str, Any], who: str) -> bool:
    """Tell whether the cause was revised: a first one by who judged belongs to the judgement."""
    if (was["cause_class"] or "") == (now["cause_class"] or ""):
        return False
    return bool(was["cause_class"]) or who != now["judged_by"]


def told(decisions: Iterable[JudgedOnce]) -> str:
    """Return the decisions as one sentence, oldest first; empty where there is none."""
    said: list[str] = []
    before: str | None = None
    for one in decisions:
        if one.cause is not None:
            words = _cause_words(one.cause)
        elif one.judgement is None:
            words = tr("taken back") if before is not None else ""
        elif not said:
            words = tr("Judged “{judgement}”", judgement=tr(one.judgement))
        elif before is None:
            words = tr("judged “{judgement}”", judgement=tr(one.judgement))
        elif one.judgement == before:
            words = tr("judged the same")
        else:
            words = tr("revised to “{judgement}”", judgement=tr(one.judgement))
        before = one.judgement
        if words:
            said.append(words + _by_and_on(one))
    return f"{', '.join(said)}." if said else ""


def _cause_words(cause: str) -> str:
    known = return_cause(cause)
    return tr("cause “{cause}”", cause=known.words) if known is not None else tr("cause taken out")


def _by_and_on(one: JudgedOnce) -> str:
    return (tr(" by {by}", by=one.by) if one.by else "") + (
        tr(" on {on}", on=one.on) if one.on else ""
    )


def _decision(state: Mapping[str, Any], change: LinkChanged | None) -> JudgedOnce:
    """Return a decision; the row says who and when, else the entry that wrote it."""
    by = state["judged_by"] or ("" if change is None else change.who)
    at = state["judged_at"] or ("" if change is None else change.at)
    return JudgedOnce(state["judgement"], by, at[:10])
